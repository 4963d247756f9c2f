package dev.thinair.psychro.kernel;

/**
 * Second virial coefficients of dry air, water vapor and their interaction, m3/mol, and what they
 * do to enthalpy, B - T dB/dT. Fits and sources: {@link EnhancementFactor}.
 */
final class SecondVirial {

    private SecondVirial() {}

    static double air(double t) {
        double x = 100 / t;
        return 1e-6 * (35.6457 + x * (-68.6824 + x * (-255.1498 + x * (263.4750 + x * -155.5394))));
    }

    static double airEnthalpy(double t) {
        double x = 100 / t;
        return 1e-6
                * (35.6457
                        + x
                                * (2 * -68.6824
                                        + x
                                                * (3 * -255.1498
                                                        + x
                                                                * (4 * 263.4750
                                                                        + x * (5 * -155.5394)))));
    }

    static double cross(double t) {
        double log = Math.log(t / 100);
        return 1e-6
                * (66.5687 * Math.exp(-0.237 * log)
                        - 238.834 * Math.exp(-1.048 * log)
                        - 176.755 * Math.exp(-3.183 * log));
    }

    static double crossEnthalpy(double t) {
        double log = Math.log(t / 100);
        return 1e-6
                * (66.5687 * 1.237 * Math.exp(-0.237 * log)
                        - 238.834 * 2.048 * Math.exp(-1.048 * log)
                        - 176.755 * 4.183 * Math.exp(-3.183 * log));
    }

    static double vapor(double t) {
        return -1e-6 * Math.exp(vaporLog(100 / t));
    }

    static double vaporEnthalpy(double t) {
        double x = 100 / t;
        // T dB/dT = -B x d(ln|B|)/dx, because x = 100/T.
        double slope =
                x * (17.06734 + x * (2 * -25.47656 + x * (3 * 72.89767 + x * (4 * -59.33913))));
        return vapor(t) * (1 + slope);
    }

    private static double vaporLog(double x) {
        return 2.268974 + x * (17.06734 + x * (-25.47656 + x * (72.89767 + x * -59.33913)));
    }
}
