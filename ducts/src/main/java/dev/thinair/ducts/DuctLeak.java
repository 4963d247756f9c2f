package dev.thinair.ducts;

import dev.thinair.ducts.kernel.Leakage;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

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
     * Leakage of a duct surface by its leakage class, {@code Q = C_L A p^0.65} with p in inches of
     * water and Q/A in cfm per 100 ft2.
     *
     * <p>Classes seen (SMACNA table 4-1, quoted in a test-instrument manual): 12 for round and 24
     * for rectangular metal at seal class C, 48 for unsealed rectangular metal, 30 for unsealed
     * flexible duct.
     *
     * @param leakageClass C_L, above 0 and up to 500
     * @param surface duct surface, above 0
     * @param place where it goes to, or comes from
     * @return the leak
     * @throws IllegalArgumentException if a number is out of range or the place null
     */
    public static DuctLeak ofLeakageClass(
            double leakageClass, Quantity<Area> surface, Place place) {
        double a = Si.squareMetres(surface, "duct surface");
        Range.requireAbove("duct surface", a, 0, "m2");
        Range.requireAbove("leakage class", leakageClass, 0, "");
        return at25Pascals(
                Units.quantity(Leakage.factor(leakageClass, 25) * a, Units.CUBIC_METRE_PER_SECOND),
                0.65,
                place);
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
