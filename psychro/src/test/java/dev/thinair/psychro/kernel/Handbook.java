package dev.thinair.psychro.kernel;

import java.util.function.DoubleUnaryOperator;

/**
 * The handbook's equations typed a second time, in degC and kJ as printed, with plain bisection for
 * every inverse: what the kernel is held against. ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1.
 */
final class Handbook {

    private Handbook() {}

    static double ice(double t) {
        double k = t + 273.15;
        return Math.exp(
                -5.6745359e3 / k
                        + 6.3925247
                        - 9.6778430e-3 * k
                        + 6.2215701e-7 * k * k
                        + 2.0747825e-9 * Math.pow(k, 3)
                        - 9.4840240e-13 * Math.pow(k, 4)
                        + 4.1635019 * Math.log(k));
    }

    static double liquid(double t) {
        double k = t + 273.15;
        return Math.exp(
                -5.8002206e3 / k
                        + 1.3914993
                        - 4.8640239e-2 * k
                        + 4.1764768e-5 * k * k
                        - 1.4452093e-8 * Math.pow(k, 3)
                        + 6.5459673 * Math.log(k));
    }

    static double pressure(double t) {
        return t >= 0 ? liquid(t) : ice(t);
    }

    static double ratio(double vapor, double p) {
        return 0.621945 * vapor / (p - vapor);
    }

    static double enthalpy(double t, double w) {
        return 1.006 * t + w * (2501 + 1.86 * t);
    }

    static double ratioOverLiquid(double t, double wb, double p) {
        return ((2501 - 2.326 * wb) * ratio(liquid(wb), p) - 1.006 * (t - wb))
                / (2501 + 1.86 * t - 4.186 * wb);
    }

    static double ratioOverIce(double t, double wb, double p) {
        return ((2830 - 0.24 * wb) * ratio(ice(wb), p) - 1.006 * (t - wb))
                / (2830 + 1.86 * t - 2.1 * wb);
    }

    /** Wet bulb by the stated rule: liquid wherever it has a root at or above 0 degC, else ice. */
    static double wetBulb(double t, double w, double p) {
        if (t >= 0 && ratioOverLiquid(t, 0, p) <= w) {
            double boiling = bisect(x -> liquid(x) - p, -1, 200);
            return bisect(x -> ratioOverLiquid(t, x, p) - w, 0, Math.min(t, boiling * (1 - 1e-15)));
        }
        return bisect(x -> ratioOverIce(t, x, p) - w, -101, Math.min(t, 0));
    }

    /** Root of a rising function; the nearer end if there is no change of sign. */
    static double bisect(DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        for (int i = 0; i < 200; i++) {
            double c = (a + b) / 2;
            if (f.applyAsDouble(c) < 0) {
                a = c;
            } else {
                b = c;
            }
        }
        return (a + b) / 2;
    }
}
