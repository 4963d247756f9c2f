package dev.thinair.ducts;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * An elbow, boot, take-off or other part with a loss of its own: either a loss coefficient on the
 * velocity pressure of the duct it belongs to, or an equivalent length of that duct. Immutable.
 *
 * <p>An equivalent length from a table is only good near the velocity and friction rate for which
 * the table was made; a loss coefficient holds at any.
 */
public final class Fitting {

    private final String name;
    private final double coefficient;
    private final double length;
    private final String source;

    private Fitting(String name, double coefficient, double length, String source) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a fitting needs a name");
        }
        this.name = name;
        this.coefficient = coefficient;
        this.length = length;
        this.source = String.valueOf(source);
    }

    /**
     * A fitting by its loss coefficient.
     *
     * @param name what it is
     * @param coefficient C on the velocity pressure of the duct it is put in, in [-1, 1000];
     *     branches with regain can be negative
     * @param source where the coefficient comes from
     * @return the fitting
     * @throws IllegalArgumentException if the name is blank or the coefficient out of range
     */
    public static Fitting ofCoefficient(String name, double coefficient, String source) {
        Range.require("loss coefficient of " + name, coefficient, -1, 100_000, "");
        return new Fitting(name, coefficient, 0, source);
    }

    /**
     * A fitting by its equivalent length.
     *
     * @param name what it is
     * @param length length of the same duct with the same loss, in [0, 100 m]
     * @param source where the length comes from
     * @return the fitting
     * @throws IllegalArgumentException if the name is blank or the length out of range
     */
    public static Fitting ofEquivalentLength(String name, Quantity<Length> length, String source) {
        double l = Si.metres(length, "equivalent length of " + name);
        Range.require("equivalent length of " + name, l, 0, 100, "m");
        return new Fitting(name, 0, l, source);
    }

    /**
     * What it is.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Loss coefficient on the velocity pressure of its duct.
     *
     * @return C, 0 for a fitting given by length
     */
    public double coefficient() {
        return coefficient;
    }

    /**
     * Equivalent length.
     *
     * @return length, 0 for a fitting given by coefficient
     */
    public Quantity<Length> equivalentLength() {
        return Units.metres(length);
    }

    double lengthSi() {
        return length;
    }

    /**
     * Where its loss comes from.
     *
     * @return source
     */
    public String source() {
        return source;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fitting f
                && f.name.equals(name)
                && f.coefficient == coefficient
                && f.length == length
                && f.source.equals(source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, coefficient, length, source);
    }

    @Override
    public String toString() {
        return length > 0 ? name + " (" + length + " m)" : name + " (C = " + coefficient + ")";
    }
}
