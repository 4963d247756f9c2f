package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/** Degree-days and the energy they stand for. */
public final class DegreeDays {

    private static final double SECONDS_PER_DAY = 86_400;

    private DegreeDays() {}

    /**
     * Cooling degree-days of one day whose temperature is a sinusoid, by exact integration above
     * the base: <code>(1/pi) [d acos(-d/A) + sqrt(A^2 - d^2)]</code> with <code>d = Tm - Tb</code>;
     * d when the whole day lies above the base, 0 when it lies below.
     *
     * <p>The rule from the daily mean alone gives max(d, 0): it is 0 at d = 0, where the exact
     * value is A/pi. Own derivation.
     *
     * @param mean daily mean Tm, K, in [173.15, 373.15]
     * @param amplitude half the daily range A, K, in [0, 50]
     * @param base base temperature Tb, K, in [173.15, 373.15]
     * @return degree-days, K d
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double coolingOfSinusoidalDay(double mean, double amplitude, double base) {
        Range.require("daily mean temperature", mean, 173.15, 373.15, "K");
        Range.require("daily amplitude", amplitude, 0, 50, "K");
        Range.require("base temperature", base, 173.15, 373.15, "K");
        double d = mean - base;
        if (d >= amplitude) {
            return d;
        }
        if (d <= -amplitude) {
            return 0;
        }
        return (d * Math.acos(-d / amplitude) + Math.sqrt((amplitude - d) * (amplitude + d)))
                / Math.PI;
    }

    /**
     * Heating degree-days of such a day: the cooling degree-days less the mean excess.
     *
     * @param mean daily mean, K, in [173.15, 373.15]
     * @param amplitude half the daily range, K, in [0, 50]
     * @param base base temperature, K, in [173.15, 373.15]
     * @return degree-days, K d
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double heatingOfSinusoidalDay(double mean, double amplitude, double base) {
        return coolingOfSinusoidalDay(2 * base - mean, amplitude, base);
    }

    /**
     * Energy by the degree-day method, <code>86400 UA DD / COP</code> in SI (24 UA DD / EER in
     * inch-pound units).
     *
     * <p>Source: ASHRAE Fundamentals, energy estimating, from memory.
     *
     * @param conductance conductance of the house, W/K, not negative
     * @param degreeDays degree-days, K d, not negative
     * @param performance heat over electricity, W/W, above 0
     * @return energy, J
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double energy(double conductance, double degreeDays, double performance) {
        Range.require("conductance", conductance, 0, 1e6, "W/K");
        Range.require("degree-days", degreeDays, 0, 36_600, "K d");
        Range.requireAbove("performance", performance, 0, "W/W");
        return SECONDS_PER_DAY * conductance * degreeDays / performance;
    }
}
