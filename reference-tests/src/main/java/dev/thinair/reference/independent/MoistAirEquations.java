package dev.thinair.reference.independent;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Moist air from the printed equations, unknowns found by Brent's method of Apache Commons Math.
 * Temperatures are in kelvins, pressures in pascals, humidity ratios in kg/kg.
 */
public final class MoistAirEquations {

    private static final double ICE_POINT = 273.15;

    private MoistAirEquations() {}

    /**
     * Natural logarithm of the saturation pressure as printed: ASHRAE Handbook - Fundamentals 2021
     * (SI), chapter 1, equation (5) over ice below 0 degC and (6) over liquid water from there up.
     */
    public static double logSaturationPressure(double t) {
        return t < ICE_POINT ? logOverIce(t) : logOverLiquid(t);
    }

    private static double logOverIce(double t) {
        return -5.6745359e3 / t
                + 6.3925247
                - 9.6778430e-3 * t
                + 6.2215701e-7 * Math.pow(t, 2)
                + 2.0747825e-9 * Math.pow(t, 3)
                - 9.4840240e-13 * Math.pow(t, 4)
                + 4.1635019 * Math.log(t);
    }

    private static double logOverLiquid(double t) {
        return -5.8002206e3 / t
                + 1.3914993
                - 4.8640239e-2 * t
                + 4.1764768e-5 * Math.pow(t, 2)
                - 1.4452093e-8 * Math.pow(t, 3)
                + 6.5459673 * Math.log(t);
    }

    /**
     * Saturation pressure over liquid water in the form of Wagner and Pruss: IAPWS SR1-86(1992),
     * equation (1). Another formulation than either of the library's.
     */
    public static double wagnerPrussPressure(double t) {
        double critical = 647.096;
        double tau = 1 - t / critical;
        return 22.064e6
                * Math.exp(
                        critical
                                / t
                                * (-7.85951783 * tau
                                        + 1.84408259 * Math.pow(tau, 1.5)
                                        - 11.7866497 * Math.pow(tau, 3)
                                        + 22.6807411 * Math.pow(tau, 3.5)
                                        - 15.9618719 * Math.pow(tau, 4)
                                        + 1.80122502 * Math.pow(tau, 7.5)));
    }

    /**
     * Sublimation pressure over ice, above 110 K: Murphy and Koop (2005), Q. J. R. Meteorol. Soc.
     * 131, 1539-1565, equation (7).
     */
    public static double murphyKoopPressure(double t) {
        return Math.exp(9.550426 - 5723.265 / t + 3.53068 * Math.log(t) - 0.00728332 * t);
    }

    /** The temperature at which water is saturated at a pressure, off the gap at 0 degC. */
    public static double saturationTemperature(double p) {
        double log = Math.log(p);
        boolean ice = log <= logOverIce(ICE_POINT);
        return new BrentSolver(1e-15, 1e-13)
                .solve(
                        200,
                        t -> (ice ? logOverIce(t) : logOverLiquid(t)) - log,
                        ice ? 173 : ICE_POINT,
                        ice ? ICE_POINT : 474);
    }

    /** Saturation humidity ratio, chapter 1, equation (20) with water vapor saturated. */
    public static double saturationHumidityRatio(double t, double p) {
        double vapor = Math.exp(logSaturationPressure(t));
        return 0.621945 * vapor / (p - vapor);
    }

    /**
     * Thermodynamic wet bulb, chapter 1, equations (33) and (35): the liquid bulb if its equation
     * has a root from 0 degC up, else the ice bulb.
     */
    public static double wetBulb(double dryBulb, double w, double p) {
        boolean liquid = dryBulb >= ICE_POINT && liquidExcess(dryBulb, ICE_POINT, w, p) <= 0;
        double low = liquid ? ICE_POINT : 160;
        double high = liquid ? dryBulb : Math.min(dryBulb, Math.nextDown(ICE_POINT));
        return new BrentSolver(1e-15, 1e-13)
                .solve(
                        300,
                        x -> liquid ? liquidExcess(dryBulb, x, w, p) : iceExcess(dryBulb, x, w, p),
                        low,
                        high);
    }

    private static double liquidExcess(double dryBulb, double bulb, double w, double p) {
        double t = dryBulb - ICE_POINT;
        double x = bulb - ICE_POINT;
        double vapor = Math.exp(logOverLiquid(bulb));
        double saturated = 0.621945 * vapor / (p - vapor);
        return (2501 - 2.326 * x) * saturated - 1.006 * (t - x) - w * (2501 + 1.86 * t - 4.186 * x);
    }

    private static double iceExcess(double dryBulb, double bulb, double w, double p) {
        double t = dryBulb - ICE_POINT;
        double x = bulb - ICE_POINT;
        double saturated = saturationHumidityRatio(bulb, p);
        return (2830 - 0.24 * x) * saturated - 1.006 * (t - x) - w * (2830 + 1.86 * t - 2.1 * x);
    }
}
