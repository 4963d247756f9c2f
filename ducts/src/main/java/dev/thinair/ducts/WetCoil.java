package dev.thinair.ducts;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * The cooling coil as the air feels it: {@code dp = a Q + b (rho/rho0) Q^2}, dry or wet. Immutable.
 *
 * <p>One rated point and the exponent of the drop against flow fix a and b: at the rated flow the
 * local exponent is {@code 1 + b Q/(a + b Q)}. The default 1.6 is a least-squares fit of published
 * drops of a one-row, eight-fin dry coil from 400 to 700 ft/min (reference case DUCT-FILT-015:
 * 1.61).
 */
public final class WetCoil {

    private static final double USUAL_EXPONENT = 1.6;

    private final double flow;
    private final double dry;
    private final double wet;
    private final double exponent;
    private final boolean isWet;

    private WetCoil(double flow, double dry, double wet, double exponent, boolean isWet) {
        this.flow = flow;
        this.dry = dry;
        this.wet = wet;
        this.exponent = exponent;
        this.isWet = isWet;
    }

    /**
     * A wet coil from its rated drops with standard air.
     *
     * @param ratedFlow volume flow, above 0
     * @param dryDrop pressure drop at that flow when dry, above 0
     * @param wetDrop pressure drop at that flow when wet, at least the dry drop
     * @return the coil, wet
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static WetCoil of(
            Quantity<VolumeFlow> ratedFlow,
            Quantity<Pressure> dryDrop,
            Quantity<Pressure> wetDrop) {
        double q = Si.cubicMetresPerSecond(ratedFlow, "rated airflow of coil");
        double d = Si.pascals(dryDrop, "dry pressure drop of coil");
        double w = Si.pascals(wetDrop, "wet pressure drop of coil");
        Range.requireAbove("rated airflow of coil", q, 0, "m3/s");
        Range.requireAbove("dry pressure drop of coil", d, 0, "Pa");
        Range.require("wet pressure drop of coil", w, d, 2_500, "Pa");
        return new WetCoil(q, d, w, USUAL_EXPONENT, true);
    }

    /**
     * The same coil with another exponent of drop against flow.
     *
     * @param n exponent at the rated flow, in [1, 2]
     * @return changed copy
     * @throws IllegalArgumentException if the exponent is out of range
     */
    public WetCoil withExponent(double n) {
        Range.require("exponent of coil pressure drop", n, 1, 2, "");
        return new WetCoil(flow, dry, wet, n, isWet);
    }

    /**
     * The same coil running dry, as it does in heating and often in dry mountain air.
     *
     * @return changed copy
     */
    public WetCoil dry() {
        return new WetCoil(flow, dry, wet, exponent, false);
    }

    /**
     * The same coil running wet.
     *
     * @return changed copy
     */
    public WetCoil wet() {
        return new WetCoil(flow, dry, wet, exponent, true);
    }

    /**
     * The same coil with its passages narrowed by dirt or frost.
     *
     * @param multiplier factor on both drops, in [1, 20]
     * @return changed copy
     * @throws IllegalArgumentException if the factor is out of range
     */
    public WetCoil fouled(double multiplier) {
        Range.require("fouling of coil", multiplier, 1, 20, "");
        return new WetCoil(flow, dry * multiplier, wet * multiplier, exponent, isWet);
    }

    /**
     * Whether it is wet.
     *
     * @return true if condensate runs down its fins
     */
    public boolean isWet() {
        return isWet;
    }

    /**
     * Pressure drop with standard air.
     *
     * @param at volume flow, at least 0
     * @return drop, dry or wet as the coil is
     * @throws IllegalArgumentException if the flow is negative
     */
    public Quantity<Pressure> drop(Quantity<VolumeFlow> at) {
        double q = Si.cubicMetresPerSecond(at, "coil airflow");
        Range.require("coil airflow", q, 0, 100, "m3/s");
        return Units.pascals(dropSi(q, StandardAir.DENSITY));
    }

    double dropSi(double q, double density) {
        return (viscousSi() + quadraticSi() * density / StandardAir.DENSITY * q) * q;
    }

    double viscousSi() {
        return (2 - exponent) * (isWet ? wet : dry) / flow;
    }

    double quadraticSi() {
        return (exponent - 1) * (isWet ? wet : dry) / (flow * flow);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WetCoil c
                && c.flow == flow
                && c.dry == dry
                && c.wet == wet
                && c.exponent == exponent
                && c.isWet == isWet;
    }

    @Override
    public int hashCode() {
        return Objects.hash(flow, dry, wet, exponent, isWet);
    }

    @Override
    public String toString() {
        return (isWet ? "wet" : "dry")
                + " coil, "
                + (isWet ? wet : dry)
                + " Pa at "
                + flow
                + " m3/s";
    }
}
