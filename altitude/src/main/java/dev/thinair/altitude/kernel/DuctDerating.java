package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;
import java.util.function.DoubleUnaryOperator;

/**
 * How much less (or more) the same ducts carry in thin air, on three bases that the trade mixes up.
 * Every function takes the density ratio <var>r</var> = site over sea level at the same air
 * temperature, and returns the <em>volume</em> flow over that at sea level; the mass flow, and the
 * heat at the same temperature difference, are <var>r</var> times that ({@link #mass}).
 *
 * <ul>
 *   <li><b>Same pressure drop</b>: the volume <em>rises</em>, by <var>r</var><sup>-1/2</sup> where
 *       the loss is proportional to density times velocity squared; the mass falls by
 *       <var>r</var><sup>1/2</sup>.
 *   <li><b>Same blower, same speed</b>: the volume stays, or falls by a few percent where friction
 *       grows with falling Reynolds number or a filter's viscous drop does not fall with density;
 *       the mass falls by <var>r</var>.
 *   <li><b>Same velocity</b>: the volume is the same by definition.
 * </ul>
 *
 * <p>So the trade's "20 to 30 percent less between 6000 and 8000 ft" (common practice, no source)
 * holds for mass and heat with the same blower or the same velocity, not for volume. Source:
 * Darcy's equation and the fan laws; full table in reference cases DUCT-ALT. All functions are
 * pure; those that take a friction law allocate nothing themselves.
 */
public final class DuctDerating {

    private static final int MOST_STEPS = 200;

    private DuctDerating() {}

    /**
     * Mass flow (and heat at the same temperature difference) that goes with a volume flow.
     *
     * @param volumeRatio volume flow over that at sea level, above zero
     * @param densityRatio site density over sea level, in (0, 2]
     * @return mass flow over that at sea level
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double mass(double volumeRatio, double densityRatio) {
        Range.requireAbove("volume ratio", volumeRatio, 0, "(ratio)");
        FanLaws.requireDensity(densityRatio);
        return volumeRatio * densityRatio;
    }

    /**
     * Same pressure drop, losses proportional to density times velocity squared (fittings, and
     * friction in the rough limit): <var>r</var><sup>-1/2</sup>.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @return volume flow over that at sea level
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double volumeAtSamePressureDrop(double densityRatio) {
        FanLaws.requireDensity(densityRatio);
        return 1.0 / Math.sqrt(densityRatio);
    }

    /**
     * Same pressure drop in a straight duct with a friction law: the root <var>x</var> of
     * <var>r</var> <var>x</var><sup>2</sup> f(<var>r</var> <var>x</var> Re) = f(Re). Viscosity is
     * taken as the same, as it is at the same temperature.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @param reynolds Reynolds number at sea level, in [1, 1e9]
     * @param frictionFactor friction factor as a function of Reynolds number, positive, such that
     *     Re<sup>2</sup> f rises with Re; must not jump between the two states
     * @return volume flow over that at sea level, to 1e-13
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     * @throws ArithmeticException if the friction law yields no root
     */
    public static double volumeAtSamePressureDrop(
            double densityRatio, double reynolds, DoubleUnaryOperator frictionFactor) {
        FanLaws.requireDensity(densityRatio);
        requireReynolds(reynolds);
        double seaLevel = frictionFactor.applyAsDouble(reynolds);
        double low = 1e-3;
        double high = 1e3 / densityRatio;
        for (int i = 0; i < MOST_STEPS && high - low > 1e-14 * high; i++) {
            double middle = bisect(low, high);
            double drop =
                    densityRatio
                            * middle
                            * middle
                            * frictionFactor.applyAsDouble(densityRatio * middle * reynolds);
            if (drop < seaLevel) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return root(low, high, 1e-3, 1e3 / densityRatio, "same pressure drop");
    }

    /**
     * Same blower at the same speed, all losses proportional to density times velocity squared: the
     * volume is unchanged.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @return 1
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double volumeWithSameBlowerAndSpeed(double densityRatio) {
        FanLaws.requireDensity(densityRatio);
        return 1.0;
    }

    /**
     * Same blower at the same speed, with a share of the drop that is viscous and does not fall
     * with density (a loaded filter): the positive root <var>x</var> of <var>r</var> (1 + k - k
     * <var>x</var><sup>2</sup>) = <var>r</var> (1 - s) <var>x</var><sup>2</sup> + s <var>x</var>.
     * The blower curve is taken as a parabola a - b Q<sup>2</sup> near the operating point.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @param viscousShare share s of the sea-level pressure drop that is viscous, in [0, 1]
     * @param curveSteepness k = b Q<sup>2</sup> over the pressure at the sea-level operating point,
     *     in [0, 100]: 0 for a flat curve, large for one that holds its volume
     * @return volume flow over that at sea level
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double volumeWithSameBlowerAndSpeed(
            double densityRatio, double viscousShare, double curveSteepness) {
        FanLaws.requireDensity(densityRatio);
        Range.require("viscous share of the pressure drop", viscousShare, 0, 1, "(ratio)");
        requireSteepness(curveSteepness);
        double square = densityRatio * (curveSteepness + 1.0 - viscousShare);
        double known = densityRatio * (1.0 + curveSteepness);
        // Rationalised, so that a purely viscous system on a flat curve (square = 0) works too.
        return 2.0
                * known
                / (viscousShare + Math.sqrt(viscousShare * viscousShare + 4.0 * square * known));
    }

    /**
     * Same blower at the same speed on a straight duct with a friction law: the root <var>x</var>
     * of 1 + k = <var>x</var><sup>2</sup> (k + f(<var>r</var> <var>x</var> Re)/f(Re)).
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @param curveSteepness k = b Q<sup>2</sup> over the pressure at the sea-level operating point
     *     of a blower curve a - b Q<sup>2</sup>, in [0, 100]
     * @param reynolds Reynolds number at sea level, in [1, 1e9]
     * @param frictionFactor friction factor as a function of Reynolds number, positive, such that
     *     Re<sup>2</sup> f rises with Re
     * @return volume flow over that at sea level, to 1e-13
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     * @throws ArithmeticException if the friction law yields no root
     */
    public static double volumeWithSameBlowerAndSpeed(
            double densityRatio,
            double curveSteepness,
            double reynolds,
            DoubleUnaryOperator frictionFactor) {
        FanLaws.requireDensity(densityRatio);
        requireSteepness(curveSteepness);
        requireReynolds(reynolds);
        double seaLevel = frictionFactor.applyAsDouble(reynolds);
        double low = 1e-3;
        double high = 1e3 / densityRatio;
        for (int i = 0; i < MOST_STEPS && high - low > 1e-14 * high; i++) {
            double middle = bisect(low, high);
            double friction =
                    frictionFactor.applyAsDouble(densityRatio * middle * reynolds) / seaLevel;
            if (middle * middle * (curveSteepness + friction) < 1.0 + curveSteepness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return root(low, high, 1e-3, 1e3 / densityRatio, "same blower and speed");
    }

    /**
     * Same velocity: the volume is the same by definition.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @return 1
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double volumeAtSameVelocity(double densityRatio) {
        FanLaws.requireDensity(densityRatio);
        return 1.0;
    }

    /**
     * Same heat at the same temperature difference, so the same mass: 1/<var>r</var>. Also the
     * actual airflow that carries what a standard airflow carries, per ton or in all.
     *
     * @param densityRatio site density over sea level (or over standard air), in (0, 2]
     * @return volume flow over that at sea level
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double volumeForSameHeat(double densityRatio) {
        FanLaws.requireDensity(densityRatio);
        return 1.0 / densityRatio;
    }

    /** Geometric while the bracket spans decades, arithmetic at the end, to reach the last bits. */
    private static double bisect(double low, double high) {
        return high > 2.0 * low ? Math.sqrt(low * high) : 0.5 * (low + high);
    }

    private static double root(
            double low, double high, double lowest, double highest, String what) {
        if (low == lowest || high == highest || !(high - low <= 1e-13 * high)) {
            throw new ArithmeticException(
                    "no volume ratio in ["
                            + lowest
                            + ", "
                            + highest
                            + "] for "
                            + what
                            + ": the friction law must be positive and Re^2 f must rise with Re");
        }
        return 0.5 * (low + high);
    }

    private static void requireReynolds(double reynolds) {
        Range.require("Reynolds number", reynolds, 1, 1e9, "(ratio)");
    }

    private static void requireSteepness(double curveSteepness) {
        Range.require("steepness of the blower curve", curveSteepness, 0, 100, "(ratio)");
    }
}
