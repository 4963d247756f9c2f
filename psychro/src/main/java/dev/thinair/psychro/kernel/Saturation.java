package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Saturation of pure water vapor over liquid water and over ice, after Hyland and Wexler.
 *
 * <p>Formula, with <var>T</var> in K and <var>p</var> in Pa:
 *
 * <ul>
 *   <li>over ice, 173.15 to 273.15 K: ln <var>p</var> = C<sub>1</sub>/<var>T</var> + C<sub>2</sub>
 *       + C<sub>3</sub> <var>T</var> + C<sub>4</sub> <var>T</var><sup>2</sup> + C<sub>5</sub>
 *       <var>T</var><sup>3</sup> + C<sub>6</sub> <var>T</var><sup>4</sup> + C<sub>7</sub> ln
 *       <var>T</var>;
 *   <li>over liquid water, 273.15 to 473.15 K: ln <var>p</var> = C<sub>8</sub>/<var>T</var> +
 *       C<sub>9</sub> + C<sub>10</sub> <var>T</var> + C<sub>11</sub> <var>T</var><sup>2</sup> +
 *       C<sub>12</sub> <var>T</var><sup>3</sup> + C<sub>13</sub> ln <var>T</var>.
 * </ul>
 *
 * <p><b>The gap at 0 degC.</b> The two curves do not meet there: ice gives 611.1536 Pa, liquid
 * 611.2129 Pa. At exactly 273.15 K the liquid curve is used. A vapor pressure between the two has
 * no temperature on either curve; {@link #temperature(double)} answers 273.15 K for all of them, an
 * error of at most 0.0013 K.
 *
 * <p>Accuracy against the IAPWS formulations (R14-08 over ice, IF97 over water): within 0.033 %
 * from -100 to 0 degC and within 0.027 % from 0 to 200 degC.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equations (5) and (6), which
 * credit Hyland and Wexler (1983b).
 */
public final class Saturation {

    // Fundamentals 2021 ch. 1 eq. (5), ice.
    private static final double C1 = -5.6745359e3;
    private static final double C2 = 6.3925247;
    private static final double C3 = -9.6778430e-3;
    private static final double C4 = 6.2215701e-7;
    private static final double C5 = 2.0747825e-9;
    private static final double C6 = -9.4840240e-13;
    private static final double C7 = 4.1635019;

    // Fundamentals 2021 ch. 1 eq. (6), liquid water.
    private static final double C8 = -5.8002206e3;
    private static final double C9 = 1.3914993;
    private static final double C10 = -4.8640239e-2;
    private static final double C11 = 4.1764768e-5;
    private static final double C12 = -1.4452093e-8;
    private static final double C13 = 6.5459673;

    // Edges of the two curves, computed by the formulas above.
    static final double ICE_AT_LOWEST = Math.exp(logOverIce(Domain.LOWEST_TEMPERATURE));

    /** Lowest pressure with a frost point in range; a rounding below the curve's end. */
    static final double LOWEST_PRESSURE = ICE_AT_LOWEST * (1 - 1e-13);

    private static final double ICE_AT_ICE_POINT = Math.exp(logOverIce(Domain.ICE_POINT));
    private static final double LIQUID_AT_ICE_POINT = Math.exp(logOverLiquid(Domain.ICE_POINT));
    private static final double LIQUID_AT_HIGHEST =
            Math.exp(logOverLiquid(Domain.HIGHEST_TEMPERATURE));

    // Pressures that answer 0 degC: between the curves, and a rounding more on either side, where
    // the last bit could otherwise put a dew point on the wrong one.
    private static final double MIDDLE_OF_GAP = (ICE_AT_ICE_POINT + LIQUID_AT_ICE_POINT) / 2;
    private static final double HALF_OF_GAP =
            (LIQUID_AT_ICE_POINT - ICE_AT_ICE_POINT) / 2 + LIQUID_AT_ICE_POINT * 1e-14;

    private Saturation() {}

    /**
     * Saturation pressure: over ice below 0 degC, over liquid water from 0 degC up.
     *
     * @param temperature temperature, K, in [173.15, 473.15]
     * @return saturation pressure of pure water, Pa
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double pressure(double temperature) {
        checkTemperature(temperature);
        return Math.exp(logPressure(temperature));
    }

    /**
     * Saturation pressure over liquid water.
     *
     * @param temperature temperature, K, in [273.15, 473.15]
     * @return saturation pressure, Pa
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double pressureOverLiquid(double temperature) {
        Range.require(
                "temperature of liquid water",
                temperature,
                Domain.ICE_POINT,
                Domain.HIGHEST_TEMPERATURE,
                "K");
        return Math.exp(logOverLiquid(temperature));
    }

    /**
     * Sublimation pressure over ice, 0 degC included.
     *
     * @param temperature temperature, K, in [173.15, 273.15]
     * @return sublimation pressure, Pa
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double pressureOverIce(double temperature) {
        Range.require(
                "temperature of ice",
                temperature,
                Domain.LOWEST_TEMPERATURE,
                Domain.ICE_POINT,
                "K");
        return Math.exp(logOverIce(temperature));
    }

    /**
     * Slope of the saturation pressure, the exact derivative of {@link #pressure(double)}: d<var>p
     * </var>/d<var>T</var> = <var>p</var> d(ln <var>p</var>)/d<var>T</var>.
     *
     * @param temperature temperature, K, in [173.15, 473.15]; at 273.15 the liquid's slope
     * @return slope, Pa/K
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double slope(double temperature) {
        checkTemperature(temperature);
        return Math.exp(logPressure(temperature)) * logSlope(temperature);
    }

    /**
     * Temperature at which water is saturated at a pressure: dew point of a vapor pressure from
     * 611.2129 Pa up, frost point below 611.1536 Pa, and 273.15 K in the gap between (see above).
     *
     * <p>Method: a polynomial of degree 6 in ln <var>p</var> on each of 167 intervals, made from
     * the two formulas above by reverting their Taylor series when the class is loaded.
     *
     * <p>Accuracy: {@code temperature(pressure(T))} returns T within 1e-12 K, gap apart.
     *
     * @param pressure vapor pressure, Pa, in [0.0014051, 1555073.7], the saturation pressures at
     *     173.15 and 473.15 K
     * @return saturation temperature, K
     * @throws IllegalArgumentException if pressure is NaN or outside that range
     */
    public static double temperature(double pressure) {
        Range.require(
                "vapor pressure", pressure, LOWEST_PRESSURE, LIQUID_AT_HIGHEST * (1 + 1e-13), "Pa");
        if (Math.abs(pressure - MIDDLE_OF_GAP) <= HALF_OF_GAP) {
            return Domain.ICE_POINT;
        }
        double found = SaturationInverse.temperature(Math.log(pressure));
        // The last bit of rounding must not leave the domain.
        return found < Domain.LOWEST_TEMPERATURE
                ? Domain.LOWEST_TEMPERATURE
                : found > Domain.HIGHEST_TEMPERATURE ? Domain.HIGHEST_TEMPERATURE : found;
    }

    private static void checkTemperature(double temperature) {
        Range.require(
                "temperature",
                temperature,
                Domain.LOWEST_TEMPERATURE,
                Domain.HIGHEST_TEMPERATURE,
                "K");
    }

    /** ln p without a domain check; solvers may look a hair outside. */
    static double logPressure(double t) {
        return t >= Domain.ICE_POINT ? logOverLiquid(t) : logOverIce(t);
    }

    static double logSlope(double t) {
        double inverse = 1 / t;
        return t >= Domain.ICE_POINT ? logSlopeOverLiquid(t, inverse) : logSlopeOverIce(t, inverse);
    }

    static double logOverIce(double t) {
        return C1 / t + C2 + t * (C3 + t * (C4 + t * (C5 + t * C6))) + C7 * Math.log(t);
    }

    /** The same with 1/T at hand: a division less, the last bit may differ. */
    static double logOverIce(double t, double inverse) {
        return C1 * inverse + C2 + t * (C3 + t * (C4 + t * (C5 + t * C6))) + C7 * Math.log(t);
    }

    static double logSlopeOverIce(double t, double inverse) {
        return inverse * (C7 - C1 * inverse) + C3 + t * (2 * C4 + t * (3 * C5 + t * (4 * C6)));
    }

    static double logBendOverIce(double t, double inverse) {
        return inverse * inverse * (2 * C1 * inverse - C7) + 2 * C4 + t * (6 * C5 + t * (12 * C6));
    }

    /** Coefficients of the powers 1 to {@code degree} of T - t in the series of ln p about t. */
    static double[] taylorOverIce(double t, int degree) {
        double[] a = taylor(t, C1, C7, degree);
        a[1] += C3 + t * (2 * C4 + t * (3 * C5 + t * (4 * C6)));
        a[2] += C4 + t * (3 * C5 + t * (6 * C6));
        a[3] += C5 + t * (4 * C6);
        a[4] += C6;
        return a;
    }

    /** The same over liquid water. */
    static double[] taylorOverLiquid(double t, int degree) {
        double[] a = taylor(t, C8, C13, degree);
        a[1] += C10 + t * (2 * C11 + t * (3 * C12));
        a[2] += C11 + t * (3 * C12);
        a[3] += C12;
        return a;
    }

    /** The series of c/T + k ln T. */
    private static double[] taylor(double t, double c, double k, int degree) {
        double[] a = new double[degree + 1];
        double power = 1;
        for (int n = 1; n <= degree; n++) {
            power /= -t;
            a[n] = (c / t - k / n) * power;
        }
        return a;
    }

    static double logOverLiquid(double t) {
        return C8 / t + C9 + t * (C10 + t * (C11 + t * C12)) + C13 * Math.log(t);
    }

    /** The same with 1/T at hand: a division less, the last bit may differ. */
    static double logOverLiquid(double t, double inverse) {
        return C8 * inverse + C9 + t * (C10 + t * (C11 + t * C12)) + C13 * Math.log(t);
    }

    static double logSlopeOverLiquid(double t, double inverse) {
        return inverse * (C13 - C8 * inverse) + C10 + t * (2 * C11 + t * (3 * C12));
    }

    static double logBendOverLiquid(double t, double inverse) {
        return inverse * inverse * (2 * C8 * inverse - C13) + 2 * C11 + t * (6 * C12);
    }
}
