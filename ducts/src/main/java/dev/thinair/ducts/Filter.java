package dev.thinair.ducts;

import dev.thinair.ducts.kernel.FilterCurves;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;

/**
 * An air filter: {@code dp = x a Q + b (rho/rho0) Q^2}, with x how much the dirt has multiplied the
 * viscous part. Immutable.
 *
 * <p>The viscous part a belongs to the medium and does not fall with air density; the quadratic
 * part b belongs to the pleats and the rack and does. So a filter loses less in thin air than the
 * fan laws say, and a loaded one loses least.
 *
 * <p>The name, the MERV class and the depth put on by {@link #labelled} say nothing about the
 * pressure drop, which differs between makes of one class and should come from the maker's data or
 * a manometer; {@link #typical} gives a generic curve where neither is at hand.
 */
public final class Filter {

    private final String name;
    private final int merv;
    private final double depth;
    private final double viscous;
    private final double quadratic;
    private final double loading;

    private Filter(
            String name, int merv, double depth, double viscous, double quadratic, double loading) {
        this.name = name;
        this.merv = merv;
        this.depth = depth;
        this.viscous = viscous;
        this.quadratic = quadratic;
        this.loading = loading;
    }

    /**
     * A clean filter from one point of its curve with standard air.
     *
     * @param flow volume flow, above 0
     * @param drop clean pressure drop at that flow, above 0
     * @param viscousShare share of that drop which is viscous, in [0, 100 %]; about half for a flat
     *     panel at its rated flow, more for deep pleats (common practice, no source)
     * @return the filter
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Filter of(
            Quantity<VolumeFlow> flow,
            Quantity<Pressure> drop,
            Quantity<Dimensionless> viscousShare) {
        double q = Si.cubicMetresPerSecond(flow, "filter airflow");
        double p = Si.pascals(drop, "filter pressure drop");
        double s = Si.ratio(viscousShare, "viscous share of filter drop");
        Range.requireAbove("filter airflow", q, 0, "m3/s");
        Range.requireAbove("filter pressure drop", p, 0, "Pa");
        Range.require("filter pressure drop", p, 0, 2_500, "Pa");
        Range.require("viscous share of filter drop", s, 0, 1, "");
        return new Filter("filter", 0, 0, s * p / q, (1 - s) * p / (q * q), 1);
    }

    /**
     * A clean filter through two points of its curve with standard air.
     *
     * @param lowFlow smaller volume flow, above 0
     * @param lowDrop clean pressure drop there
     * @param highFlow larger volume flow
     * @param highDrop clean pressure drop there
     * @return the filter
     * @throws IllegalArgumentException if the points do not rise, or rise less than in proportion
     *     or more than with the square of the flow, so that no such curve passes through them
     */
    public static Filter through(
            Quantity<VolumeFlow> lowFlow,
            Quantity<Pressure> lowDrop,
            Quantity<VolumeFlow> highFlow,
            Quantity<Pressure> highDrop) {
        double q1 = Si.cubicMetresPerSecond(lowFlow, "smaller filter airflow");
        double p1 = Si.pascals(lowDrop, "filter pressure drop at the smaller airflow");
        double q2 = Si.cubicMetresPerSecond(highFlow, "larger filter airflow");
        double p2 = Si.pascals(highDrop, "filter pressure drop at the larger airflow");
        Range.requireAbove("smaller filter airflow", q1, 0, "m3/s");
        Range.requireAbove("larger filter airflow", q2, q1, "m3/s");
        Range.requireAbove("filter pressure drop at the smaller airflow", p1, 0, "Pa");
        double r = q2 / q1;
        Range.require(
                "ratio of filter pressure drops for an airflow ratio of " + r,
                p2 / p1,
                r,
                r * r,
                "");
        double b = (p2 / q2 - p1 / q1) / (q2 - q1);
        double a = p1 / q1 - b * q1;
        return new Filter("filter", 0, 0, Math.max(a, 0), Math.max(b, 0), 1);
    }

    /**
     * A clean filter by its coefficients for standard air.
     *
     * @param viscous a, Pa s/m3, at least 0
     * @param quadratic b, Pa s2/m6, at least 0
     * @return the filter
     * @throws IllegalArgumentException if a coefficient is out of range or both are 0
     */
    public static Filter ofCoefficients(double viscous, double quadratic) {
        Range.require("viscous coefficient of filter", viscous, 0, 1e6, "Pa s/m3");
        Range.require("quadratic coefficient of filter", quadratic, 0, 1e7, "Pa s2/m6");
        if (!(viscous + quadratic > 0)) {
            throw new IllegalArgumentException(
                    "a filter without any resistance: leave it out instead");
        }
        return new Filter("filter", 0, 0, viscous, quadratic, 1);
    }

    /**
     * A clean filter by a generic curve of its class, for use where the maker's is not known.
     *
     * @param mervClass minimum efficiency reporting value (ANSI/ASHRAE 52.2): 1 to 13 at 1 in., 5
     *     to 16 at 4 in.
     * @param nominalDepth nominal depth: about 1 in. (0.5 to 1.5) or about 4 in. (3.5 to 5)
     * @param face face area, above 0
     * @return the filter; its curve is common practice from memory and can be wrong by a factor of
     *     two: see {@link FilterCurves}
     * @throws IllegalArgumentException if the depth is neither, the class not usual at it, or the
     *     area out of range
     */
    public static Filter typical(
            int mervClass, Quantity<Length> nominalDepth, Quantity<Area> face) {
        double d = Si.metres(nominalDepth, "filter depth");
        double area = Si.squareMetres(face, "face area of filter");
        Range.require("face area of filter", area, 0.01, 10, "m2");
        boolean thin = d >= 0.0127 && d <= 0.0381;
        boolean deep = d >= 0.0889 && d <= 0.127;
        if (!thin && !deep) {
            throw new IllegalArgumentException(
                    "filter depth is "
                            + d
                            + " m, but generic curves are known for about 1 in. (0.0127 to 0.0381"
                            + " m) and about 4 in. (0.0889 to 0.127 m) only");
        }
        return ofCoefficients(
                        FilterCurves.viscous(mervClass, deep) / area,
                        FilterCurves.inertial(mervClass, deep) / (area * area))
                .labelled("filter of a generic curve", mervClass, nominalDepth);
    }

    /**
     * The same filter with labels.
     *
     * @param label name
     * @param mervClass minimum efficiency reporting value (ANSI/ASHRAE 52.2), in [1, 16]
     * @param nominalDepth nominal depth: 1 in., 4 in.
     * @return changed copy
     * @throws IllegalArgumentException if the name is blank, the class or the depth out of range
     */
    public Filter labelled(String label, int mervClass, Quantity<Length> nominalDepth) {
        if (label == null || label.isBlank()) {
            throw new IllegalArgumentException("the name of a filter is blank");
        }
        double d = Si.metres(nominalDepth, "filter depth");
        Range.require("MERV class of filter", mervClass, 1, 16, "");
        Range.require("filter depth", d, 0.005, 0.5, "m");
        return new Filter(label, mervClass, d, viscous, quadratic, loading);
    }

    /**
     * The same filter loaded with dust.
     *
     * @param multiplier factor on the viscous part, in [1, 50]; 1 is clean, the usual drop at
     *     change-out is about twice the clean one (common practice)
     * @return changed copy
     * @throws IllegalArgumentException if the factor is out of range
     */
    public Filter loaded(double multiplier) {
        Range.require("loading of filter", multiplier, 1, 50, "");
        return new Filter(name, merv, depth, viscous, quadratic, multiplier);
    }

    /**
     * The same filter loaded until its whole drop at a flow of standard air is a multiple of the
     * clean one.
     *
     * @param flow volume flow, above 0
     * @param times drop over clean drop, in [1, 20]; 2 is the usual change-out (common practice)
     * @return changed copy
     * @throws IllegalArgumentException if an argument is out of range, or the filter has no viscous
     *     part for dust to clog, or would need more than 50 times of it
     */
    public Filter loadedTo(Quantity<VolumeFlow> flow, double times) {
        double q = Si.cubicMetresPerSecond(flow, "filter airflow");
        Range.requireAbove("filter airflow", q, 0, "m3/s");
        return loaded(FilterCurves.loading(viscous, quadratic, q, times));
    }

    /**
     * The same filter clean.
     *
     * @return changed copy
     */
    public Filter cleaned() {
        return loaded(1);
    }

    /**
     * Several such filters side by side, each taking its share of the air.
     *
     * @param times how many times the face area, in [0.1, 20]
     * @return changed copy
     * @throws IllegalArgumentException if the factor is out of range
     */
    public Filter withFaceArea(double times) {
        Range.require("factor on filter face area", times, 0.1, 20, "");
        return new Filter(name, merv, depth, viscous / times, quadratic / (times * times), loading);
    }

    /**
     * Pressure drop with standard air.
     *
     * @param flow volume flow, at least 0
     * @return drop as the filter is loaded
     * @throws IllegalArgumentException if the flow is negative
     */
    public Quantity<Pressure> drop(Quantity<VolumeFlow> flow) {
        double q = Si.cubicMetresPerSecond(flow, "filter airflow");
        Range.require("filter airflow", q, 0, 100, "m3/s");
        return Units.pascals(dropSi(q, StandardAir.DENSITY));
    }

    double dropSi(double q, double density) {
        return (viscousSi() + quadratic * density / StandardAir.DENSITY * q) * q;
    }

    /** Viscous coefficient with loading, Pa s/m3. */
    double viscousSi() {
        return viscous * loading;
    }

    double quadraticSi() {
        return quadratic;
    }

    /**
     * What it is called.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Minimum efficiency reporting value.
     *
     * @return class, 0 if not given
     */
    public int merv() {
        return merv;
    }

    /**
     * Nominal depth.
     *
     * @return depth, 0 if not given
     */
    public Quantity<Length> depth() {
        return Units.metres(depth);
    }

    /**
     * Factor that dust has put on the viscous part.
     *
     * @return 1 for a clean filter
     */
    public double loading() {
        return loading;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Filter f
                && f.name.equals(name)
                && f.merv == merv
                && f.depth == depth
                && f.viscous == viscous
                && f.quadratic == quadratic
                && f.loading == loading;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, merv, depth, viscous, quadratic, loading);
    }

    @Override
    public String toString() {
        return name
                + (merv > 0 ? ", MERV " + merv : "")
                + (depth > 0 ? String.format(Locale.ROOT, ", %.3g in.", depth / 0.0254) : "")
                + (loading > 1 ? ", loaded " + loading + " times" : ", clean");
    }
}
