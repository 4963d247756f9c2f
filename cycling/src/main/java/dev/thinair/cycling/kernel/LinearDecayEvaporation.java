package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Moisture given back to the house when the fan runs on after the compressor stops: evaporation
 * that falls linearly with time.
 *
 * <p>At switch-off the coil holds <var>twet</var> seconds of steady latent capacity; evaporation
 * starts at <var>gamma</var> times the steady latent capacity and reaches zero at <code>2
 * twet/gamma</code>. The next on-period first refills what has evaporated; latent capacity rises as
 * <code>1 - exp(-t/tau)</code> all the while. This is a mass balance of our own on the concept of
 * Henderson and Rengarajan 1996 and Henderson and Shirey 2006; the 1996 paper's own ratio may treat
 * the latent capacity after the refill as already steady, and then differs.
 *
 * <p>With the fan on automatic no air moves over the coil while the unit is off: use <var>gamma
 * </var> = 0, or a small value for natural circulation. Parameters are inputs; none is measured
 * here.
 */
public final class LinearDecayEvaporation {

    private LinearDecayEvaporation() {}

    /**
     * Moisture evaporated in one off-period and refilled in the next on-period.
     *
     * <p>Formula: <code>min(gamma t - gamma^2 t^2 / (4 twet), twet)</code> with <code>t = min(toff,
     * 2 twet/gamma)</code>.
     *
     * @param offTime time off, s, not negative
     * @param wetTime moisture held, twet, as time of steady latent capacity, s, above 0
     * @param evaporationRatio gamma, in [0, 10]
     * @return moisture as time of steady latent capacity, s
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double refill(double offTime, double wetTime, double evaporationRatio) {
        Range.require("off-time", offTime, 0, Double.MAX_VALUE, "s");
        Range.requireAbove("moisture holding time", wetTime, 0, "s");
        Range.require("evaporation ratio", evaporationRatio, 0, 10, "1");
        if (evaporationRatio == 0) {
            return 0;
        }
        double t = Math.min(offTime, 2 * wetTime / evaporationRatio);
        return Math.min(
                evaporationRatio * t - evaporationRatio * evaporationRatio * t * t / (4 * wetTime),
                wetTime);
    }

    /**
     * Net latent capacity of the cycle over that of an on-period without re-evaporation: <code>
     * max(0,
     * 1 - refill / (ton - tau (1 - exp(-ton/tau))))</code>.
     *
     * @param timeConstant tau, s, not negative
     * @param onTime time on, s, above 0
     * @param offTime time off, s, not negative
     * @param wetTime moisture held, twet, s, above 0
     * @param evaporationRatio gamma, in [0, 10]
     * @return ratio, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double netLatentRatio(
            double timeConstant,
            double onTime,
            double offTime,
            double wetTime,
            double evaporationRatio) {
        double lost = refill(offTime, wetTime, evaporationRatio);
        if (lost == 0) {
            return 1;
        }
        return Math.max(
                0, 1 - lost / (onTime * PartLoad.startUpCapacityRatio(timeConstant, onTime)));
    }
}
