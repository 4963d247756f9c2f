package dev.thinair.loads;

import dev.thinair.loads.kernel.Resistance;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * An unventilated air gap between two layers. Its resistance is a sum of convection and radiation
 * in parallel, ISO 6946:2017 annex D (see {@link Resistance#airGap}); its heat capacity is
 * neglected. Immutable.
 */
public final class AirGap implements Layer {
    private final double thickness;
    private final HeatFlow flow;
    private final double innerEmissivity;
    private final double outerEmissivity;
    private final double resistance;

    private AirGap(
            double thickness, HeatFlow flow, double innerEmissivity, double outerEmissivity) {
        this.thickness = thickness;
        this.flow = flow;
        this.innerEmissivity = innerEmissivity;
        this.outerEmissivity = outerEmissivity;
        this.resistance =
                Resistance.airGap(
                        thickness, flow.ordinal(), innerEmissivity, outerEmissivity, 283.15);
    }

    /**
     * A gap between ordinary surfaces (emissivity 0.9 on both sides).
     *
     * @param thickness 0.1 mm to 300 mm, across the gap
     * @param flow direction of the heat flow
     * @return the gap
     * @throws IllegalArgumentException if the thickness is outside that range
     */
    public static AirGap of(Quantity<Length> thickness, HeatFlow flow) {
        return of(thickness, flow, Units.ratio(0.9), Units.ratio(0.9));
    }

    /**
     * A gap with given emissivities, for instance one side foil.
     *
     * @param thickness 0.1 mm to 300 mm, across the gap
     * @param flow direction of the heat flow
     * @param innerEmissivity hemispherical emissivity of the inner side, 0.01 to 1
     * @param outerEmissivity hemispherical emissivity of the outer side, 0.01 to 1
     * @return the gap
     * @throws IllegalArgumentException if a value is outside its range
     */
    public static AirGap of(
            Quantity<Length> thickness,
            HeatFlow flow,
            Quantity<Dimensionless> innerEmissivity,
            Quantity<Dimensionless> outerEmissivity) {
        double d = Si.metres(thickness, "air gap thickness");
        Range.require("air gap thickness", d, 1e-4, 0.3, "m");
        if (flow == null) {
            throw new NullPointerException("heat flow direction of the air gap is null");
        }
        double e1 = Si.ratio(innerEmissivity, "inner emissivity of the air gap");
        double e2 = Si.ratio(outerEmissivity, "outer emissivity of the air gap");
        Range.require("inner emissivity of the air gap", e1, 0.01, 1, "");
        Range.require("outer emissivity of the air gap", e2, 0.01, 1, "");
        return new AirGap(d, flow, e1, e2);
    }

    @Override
    public String name() {
        return String.format(Locale.ROOT, "air gap %.0f mm", thickness * 1000);
    }

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(resistance);
    }

    @Override
    public double squareMetreKelvinsPerWatt() {
        return resistance;
    }

    @Override
    public double joulesPerSquareMetreKelvin() {
        return 0;
    }

    /**
     * Thickness of the gap.
     *
     * @return thickness, given in m
     */
    public Quantity<Length> thickness() {
        return Units.metres(thickness);
    }

    /**
     * Direction of the heat flow assumed.
     *
     * @return direction
     */
    public HeatFlow flow() {
        return flow;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AirGap g
                && thickness == g.thickness
                && flow == g.flow
                && innerEmissivity == g.innerEmissivity
                && outerEmissivity == g.outerEmissivity;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(thickness) * 31 + flow.hashCode();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%s (R %.3f m2 K/W, heat flow %s)", name(), resistance, flow);
    }
}
