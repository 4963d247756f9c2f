package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Thermodynamic wet bulb: the temperature of adiabatic saturation, over liquid water or over ice.
 *
 * <p>Definition, in kJ/kg and degC with <var>W</var><sub>s</sub>* = 0.621945 <var>e</var>/(<var>p
 * </var> - <var>e</var>), <var>e</var> = <var>p</var><sub>ws</sub>(<var>t</var>*):
 *
 * <ul>
 *   <li>liquid bulb: <var>W</var> = [(2501 - 2.326 <var>t</var>*) <var>W</var><sub>s</sub>* - 1.006
 *       (<var>t</var> - <var>t</var>*)] / (2501 + 1.86 <var>t</var> - 4.186 <var>t</var>*)
 *   <li>ice bulb: <var>W</var> = [(2830 - 0.24 <var>t</var>*) <var>W</var><sub>s</sub>* - 1.006
 *       (<var>t</var> - <var>t</var>*)] / (2830 + 1.86 <var>t</var> - 2.1 <var>t</var>*)
 * </ul>
 *
 * <p><b>Rule at freezing.</b> Around 0 degC dry air can have two wet bulbs, one over liquid and one
 * over ice, up to about 0.5 K apart; both are correct. Here the liquid bulb is the answer wherever
 * it has a root at or above 0 degC, else the ice bulb. Following the humidity ratio down, the wet
 * bulb therefore jumps from 0 degC to an ice value. Where neither curve has a root (within 0.0013 K
 * of 0 degC at saturation, because the two saturation curves do not meet there) the answer is 0
 * degC.
 *
 * <p>Method: the residual is multiplied by <var>p</var> - <var>e</var> and by the denominator,
 * which leaves products of <var>e</var> with straight lines in <var>t</var>* and one root. One step
 * of Halley's method (two over ice) with a polynomial for <var>e</var> (own fit, eighth power of a
 * quartic or quintic, relative error below 1e-4) comes within 3 mK; one step with the exact
 * <var>e</var> finishes. No loop, so no case that does not end; one exponential and one logarithm
 * in all.
 *
 * <p>Accuracy: the root of the equation within 5e-12 K over the whole domain.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equations (33) and (35).
 */
public final class WetBulb {

    private static final double MASS_RATIO = IdealMoistAir.MASS_RATIO;

    private static final double LIQUID_AT_0 = Math.exp(Saturation.logOverLiquid(Domain.ICE_POINT));

    /** A state this close (relative) to the last liquid bulb counts as liquid: rounding. */
    private static final double SWITCH_ROUNDING = 1e-13;

    /** Excess of wet bulb over dry bulb, K, that is still rounding and not supersaturation. */
    private static final double SATURATION_ROUNDING = 1e-9;

    private WetBulb() {}

    /**
     * Thermodynamic wet bulb from dry bulb, humidity ratio and pressure.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10], not above saturation
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return thermodynamic wet bulb, K, at most the dry bulb (dry air of 173.15 K has one up to
     *     0.13 mK below the domain)
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     supersaturated (fog has no wet bulb of its own)
     */
    public static double temperature(double dryBulb, double humidityRatio, double pressure) {
        return solve(dryBulb, humidityRatio, pressure, null);
    }

    /**
     * The same, counting work: {@code count[0]} grows by each residual evaluated with a polynomial
     * saturation pressure, {@code count[1]} by each evaluated exactly.
     */
    static double solve(double dryBulb, double humidityRatio, double pressure, int[] count) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
        double t = dryBulb - Domain.ICE_POINT;
        double heatAt0 = 1.006 * t + humidityRatio * (2501 + 1.86 * t);
        double found;
        if (heatAt0 * (pressure - LIQUID_AT_0)
                >= MASS_RATIO * 2501 * LIQUID_AT_0 * (1 - SWITCH_ROUNDING)) {
            double falling = 1.006 + 4.186 * humidityRatio;
            double x = liquidStart(heatAt0, falling, pressure);
            x = liquidPolynomialStep(x, heatAt0, falling, pressure, count);
            found = Math.max(liquidExactStep(x, heatAt0, falling, pressure, count), 0);
        } else {
            double iceHeatAt0 = 1.006 * t + humidityRatio * (2830 + 1.86 * t);
            double falling = 1.006 + 2.1 * humidityRatio;
            double x = Math.min(t, -5);
            x = icePolynomialStep(x, iceHeatAt0, falling, pressure, count);
            x = icePolynomialStep(x, iceHeatAt0, falling, pressure, count);
            found = Math.min(iceExactStep(x, iceHeatAt0, falling, pressure, count), 0);
        }
        if (found > t) {
            if (found > t + SATURATION_ROUNDING) {
                throw supersaturated(dryBulb, humidityRatio, pressure);
            }
            found = t;
        }
        return found + Domain.ICE_POINT;
    }

    /**
     * Humidity ratio from dry and wet bulb: the liquid bulb's equation from 0 degC up, the ice
     * bulb's below.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param wetBulb thermodynamic wet bulb, K, in [173.15, dry bulb]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, if the wet bulb
     *     is above the dry bulb, or if the pair implies a humidity ratio outside [0, 10]
     */
    public static double humidityRatio(double dryBulb, double wetBulb, double pressure) {
        return wetBulb >= Domain.ICE_POINT
                ? humidityRatioOverLiquid(dryBulb, wetBulb, pressure)
                : humidityRatioOverIce(dryBulb, wetBulb, pressure);
    }

    /**
     * Humidity ratio from dry bulb and the reading of a liquid bulb, equation (33).
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param wetBulb thermodynamic wet bulb over liquid water, K, in [273.15, dry bulb]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, if the wet bulb
     *     is above the dry bulb, or if the pair implies a humidity ratio outside [0, 10]
     */
    public static double humidityRatioOverLiquid(double dryBulb, double wetBulb, double pressure) {
        checkBulbs(dryBulb, wetBulb, Domain.ICE_POINT, pressure);
        double t = dryBulb - Domain.ICE_POINT;
        double bulb = wetBulb - Domain.ICE_POINT;
        double saturated =
                saturatedAtBulb(Math.exp(Saturation.logOverLiquid(wetBulb)), wetBulb, pressure);
        double ratio =
                ((2501 - 2.326 * bulb) * saturated - 1.006 * (t - bulb))
                        / (2501 + 1.86 * t - 4.186 * bulb);
        return checkRatio(ratio, dryBulb, wetBulb, pressure);
    }

    /**
     * Humidity ratio from dry bulb and the reading of an iced bulb, equation (35).
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param wetBulb thermodynamic wet bulb over ice, K, in [173.15, 273.15], not above dry bulb
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, if the wet bulb
     *     is above the dry bulb, or if the pair implies a humidity ratio outside [0, 10]
     */
    public static double humidityRatioOverIce(double dryBulb, double wetBulb, double pressure) {
        checkBulbs(dryBulb, wetBulb, Domain.LOWEST_TEMPERATURE, pressure);
        Range.require(
                "wet bulb over ice", wetBulb, Domain.LOWEST_TEMPERATURE, Domain.ICE_POINT, "K");
        double t = dryBulb - Domain.ICE_POINT;
        double bulb = wetBulb - Domain.ICE_POINT;
        double saturated =
                saturatedAtBulb(Math.exp(Saturation.logOverIce(wetBulb)), wetBulb, pressure);
        double ratio =
                ((2830 - 0.24 * bulb) * saturated - 1.006 * (t - bulb))
                        / (2830 + 1.86 * t - 2.1 * bulb);
        return checkRatio(ratio, dryBulb, wetBulb, pressure);
    }

    private static void checkBulbs(double dryBulb, double wetBulb, double lowest, double pressure) {
        Domain.dryBulb(dryBulb);
        Range.require("wet bulb (not above dry bulb)", wetBulb, lowest, dryBulb, "K");
        Domain.pressure(pressure);
    }

    private static double saturatedAtBulb(double vapor, double wetBulb, double pressure) {
        if (!(vapor < pressure)) {
            throw new IllegalArgumentException(
                    "wet bulb is "
                            + wetBulb
                            + " K, but must be below "
                            + Saturation.temperature(pressure)
                            + " K, the boiling point at an air pressure of "
                            + pressure
                            + " Pa");
        }
        return MASS_RATIO * vapor / (pressure - vapor);
    }

    private static double checkRatio(
            double ratio, double dryBulb, double wetBulb, double pressure) {
        if (ratio >= 0) {
            Range.require(
                    "humidity ratio implied by dry and wet bulb",
                    ratio,
                    0,
                    Domain.HIGHEST_HUMIDITY_RATIO,
                    "kg/kg");
            return ratio;
        }
        // Rounding of a wet bulb that was computed for dry air: one part in 1e13 of 1.006 t / 2501.
        if (ratio > -1e-13) {
            return 0;
        }
        throw new IllegalArgumentException(
                "wet bulb is "
                        + wetBulb
                        + " K, but must be at least "
                        + temperature(dryBulb, 0, pressure)
                        + " K at a dry bulb of "
                        + dryBulb
                        + " K and an air pressure of "
                        + pressure
                        + " Pa: the pair implies a humidity ratio of "
                        + ratio
                        + " kg/kg, drier than dry air");
    }

    private static IllegalArgumentException supersaturated(
            double dryBulb, double humidityRatio, double pressure) {
        return new IllegalArgumentException(
                "humidity ratio is "
                        + humidityRatio
                        + " kg/kg, but must not be above "
                        + IdealMoistAir.saturationHumidityRatio(dryBulb, pressure)
                        + " kg/kg, saturation at a dry bulb of "
                        + dryBulb
                        + " K and an air pressure of "
                        + pressure
                        + " Pa: fog has no wet bulb of its own");
    }

    /**
     * Within 1.8 K of the root from 20 to 200 kPa, by one division (own fit): a crude wet bulb, k h
     * / (1 + c h), says how much of the enthalpy is vapor, that gives a vapor pressure, and a ratio
     * of two parabolas in it the temperature; all multiplied through.
     */
    private static double liquidStart(double heatAt0, double falling, double pressure) {
        double scale = 1 + 0.0097048429 * heatAt0;
        double vapor = heatAt0 * (scale - 0.78182311 * falling);
        double all = MASS_RATIO * (2501 * scale - (2.326 * 0.78182311) * heatAt0) + vapor;
        double part = 1e-4 * pressure * vapor; // vapor pressure over 10 kPa is part / all
        double square = all * all;
        double cross = part * all;
        double partSquare = part * part;
        return (-4.0287541 * square + 214.20232 * cross + 97.836127 * partSquare)
                / (square + 5.095661 * cross + 0.66403516 * partSquare);
    }

    private static double liquidPolynomialStep(
            double x, double heatAt0, double falling, double pressure, int[] count) {
        if (count != null) {
            count[0]++;
        }
        // Evaluated in pairs of terms, which the processor can overlap.
        double xx = x * x;
        double q =
                (2.2298163694608504 + x * 0.020260294409207822)
                        + xx
                                * ((7.890361062102402e-06 + x * -1.4182600520342625e-07)
                                        + xx * 3.1457090881552844e-10);
        double q1 =
                (0.020260294409207822 + x * (2 * 7.890361062102402e-06))
                        + xx * (3 * -1.4182600520342625e-07 + x * (4 * 3.1457090881552844e-10));
        double q2 =
                (2 * 7.890361062102402e-06 + x * (6 * -1.4182600520342625e-07))
                        + xx * (12 * 3.1457090881552844e-10);
        double square = q * q;
        double fourth = square * square;
        double sixth = fourth * square;
        return halley(
                x,
                MASS_RATIO * (2501 - 2.326 * x),
                -2.326 * MASS_RATIO,
                heatAt0 - falling * x,
                falling,
                pressure,
                fourth * fourth,
                8 * sixth * q * q1,
                8 * sixth * (7 * q1 * q1 + q * q2));
    }

    private static double icePolynomialStep(
            double x, double heatAt0, double falling, double pressure, int[] count) {
        if (count != null) {
            count[0]++;
        }
        double xx = x * x;
        double q =
                (2.2298251016687325 + x * 0.02295803432847786)
                        + xx
                                * ((3.382981636287914e-05 + x * -1.4460786286703782e-07)
                                        + xx * (5.202089897997525e-10 + x * 2.893662219381747e-12));
        double q1 =
                (0.02295803432847786 + x * (2 * 3.382981636287914e-05))
                        + xx
                                * ((3 * -1.4460786286703782e-07 + x * (4 * 5.202089897997525e-10))
                                        + xx * (5 * 2.893662219381747e-12));
        double q2 =
                (2 * 3.382981636287914e-05 + x * (6 * -1.4460786286703782e-07))
                        + xx * (12 * 5.202089897997525e-10 + x * (20 * 2.893662219381747e-12));
        double square = q * q;
        double fourth = square * square;
        double sixth = fourth * square;
        return halley(
                x,
                MASS_RATIO * (2830 - 0.24 * x),
                -0.24 * MASS_RATIO,
                heatAt0 - falling * x,
                falling,
                pressure,
                fourth * fourth,
                8 * sixth * q * q1,
                8 * sixth * (7 * q1 * q1 + q * q2));
    }

    private static double liquidExactStep(
            double x, double heatAt0, double falling, double pressure, int[] count) {
        if (count != null) {
            count[1]++;
        }
        double temperature = x + Domain.ICE_POINT;
        double inverse = 1 / temperature;
        double e = Math.exp(Saturation.logOverLiquid(temperature, inverse));
        double slope = Saturation.logSlopeOverLiquid(temperature, inverse);
        return halley(
                x,
                MASS_RATIO * (2501 - 2.326 * x),
                -2.326 * MASS_RATIO,
                heatAt0 - falling * x,
                falling,
                pressure,
                e,
                e * slope,
                e * (slope * slope + Saturation.logBendOverLiquid(temperature, inverse)));
    }

    private static double iceExactStep(
            double x, double heatAt0, double falling, double pressure, int[] count) {
        if (count != null) {
            count[1]++;
        }
        double temperature = x + Domain.ICE_POINT;
        double inverse = 1 / temperature;
        double e = Math.exp(Saturation.logOverIce(temperature, inverse));
        double slope = Saturation.logSlopeOverIce(temperature, inverse);
        return halley(
                x,
                MASS_RATIO * (2830 - 0.24 * x),
                -0.24 * MASS_RATIO,
                heatAt0 - falling * x,
                falling,
                pressure,
                e,
                e * slope,
                e * (slope * slope + Saturation.logBendOverIce(temperature, inverse)));
    }

    /**
     * One step for F(x) = e (a + b) - p b, where a and b are straight lines in x with slopes a1 and
     * -falling, and e has derivatives e1, e2.
     */
    private static double halley(
            double x,
            double a,
            double a1,
            double b,
            double falling,
            double p,
            double e,
            double e1,
            double e2) {
        double sum = a + b;
        double sum1 = a1 - falling;
        double f = e * sum - p * b;
        double f1 = e1 * sum + e * sum1 + p * falling;
        double f2 = e2 * sum + 2 * e1 * sum1;
        return x - 2 * f * f1 / (2 * f1 * f1 - f * f2);
    }
}
