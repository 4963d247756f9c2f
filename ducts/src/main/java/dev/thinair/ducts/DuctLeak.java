package dev.thinair.ducts;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * Leakage of part of a duct system into a place: {@code Q = c |dp|^n} with the sign of the pressure
 * difference. Immutable.
 */
public final class DuctLeak {

    private final double coefficient;
    private final double exponent;
    private final Place place;

    private DuctLeak(double coefficient, double exponent, Place place) {
        this.coefficient = coefficient;
        this.exponent = exponent;
        this.place = place;
    }

    /**
     * Leakage as a duct test at 25 Pa gives it, with exponent 0.6 (default of ANSI/ASHRAE 152, from
     * memory).
     *
     * @param flow volume flow at 25 Pa, above 0
     * @param place where it goes to, or comes from
     * @return the leak
     * @throws IllegalArgumentException if the flow is out of range or the place null
     */
    public static DuctLeak at25Pascals(Quantity<VolumeFlow> flow, Place place) {
        return at25Pascals(flow, 0.6, place);
    }

    /**
     * Leakage as a duct test at 25 Pa gives it, with its own exponent.
     *
     * @param flow volume flow at 25 Pa, above 0
     * @param exponent n, in [0.5, 1]
     * @param place where it goes to, or comes from
     * @return the leak
     * @throws IllegalArgumentException if a number is out of range or the place null
     */
    public static DuctLeak at25Pascals(Quantity<VolumeFlow> flow, double exponent, Place place) {
        double q = Si.cubicMetresPerSecond(flow, "duct leakage at 25 Pa");
        Range.requireAbove("duct leakage at 25 Pa", q, 0, "m3/s");
        Range.require("duct leakage at 25 Pa", q, 0, 5, "m3/s");
        Range.require("exponent of duct leakage", exponent, 0.5, 1, "");
        if (place == null) {
            throw new IllegalArgumentException("place of duct leakage is null");
        }
        return new DuctLeak(q / Math.pow(25, exponent), exponent, place);
    }

    /**
     * Where it goes to, or comes from.
     *
     * @return place
     */
    public Place place() {
        return place;
    }

    double coefficientSi() {
        return coefficient;
    }

    double exponent() {
        return exponent;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DuctLeak l
                && l.coefficient == coefficient
                && l.exponent == exponent
                && l.place == place;
    }

    @Override
    public int hashCode() {
        return Objects.hash(coefficient, exponent, place);
    }

    @Override
    public String toString() {
        return "leak of " + coefficient * Math.pow(25, exponent) + " m3/s at 25 Pa to " + place;
    }
}
