package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Cooling energy by the temperature-bin method.
 *
 * <p>Load <code>UA (T - Tbal)</code> above the balance temperature <code>Tbal = Ti - Qg/UA</code>,
 * capacity and power linear in outdoor temperature through two points, cycling by {@link
 * PartLoad#partLoadFactor}. Load above capacity is unmet and not delivered.
 *
 * <p>Source: ASHRAE Fundamentals, energy estimating, bin method, from memory.
 */
public final class BinMethod {

    /** Index of the balance temperature, K. */
    public static final int BALANCE = 0;

    /** Index of the heat delivered (cooling), J. */
    public static final int DELIVERED = 1;

    /** Index of the electric energy, J. */
    public static final int ENERGY = 2;

    /** Index of the unmet load, J. */
    public static final int UNMET = 3;

    /** Length an output array must have at least. */
    public static final int RESULTS = 4;

    private BinMethod() {}

    /**
     * Sums the bins.
     *
     * @param conductance conductance of the house UA, W/K, above 0
     * @param indoor indoor temperature Ti, K, in [273.15, 323.15]
     * @param gains internal and solar gains Qg, W, not negative
     * @param warmTemperature outdoor temperature of the warmer point, K
     * @param warmCapacity capacity there, W, above 0
     * @param warmPower power there, W, above 0
     * @param mildTemperature outdoor temperature of the milder point, K, below the warmer
     * @param mildCapacity capacity there, W, above 0
     * @param mildPower power there, W, above 0
     * @param degradation degradation coefficient, in [0, 1]
     * @param temperatures bin temperatures, K
     * @param hours hours of each bin, not negative
     * @param out receives the results at the indices of this class
     * @throws IllegalArgumentException if an argument is out of range, the arrays differ in length,
     *     or capacity or power is not positive at a bin with load
     */
    public static void cooling(
            double conductance,
            double indoor,
            double gains,
            double warmTemperature,
            double warmCapacity,
            double warmPower,
            double mildTemperature,
            double mildCapacity,
            double mildPower,
            double degradation,
            double[] temperatures,
            double[] hours,
            double[] out) {
        Range.requireAbove("conductance", conductance, 0, "W/K");
        Range.require("indoor temperature", indoor, 273.15, 323.15, "K");
        Range.require("gains", gains, 0, 1e6, "W");
        Range.requireAbove("warm-point capacity", warmCapacity, 0, "W");
        Range.requireAbove("warm-point power", warmPower, 0, "W");
        Range.requireAbove("mild-point capacity", mildCapacity, 0, "W");
        Range.requireAbove("mild-point power", mildPower, 0, "W");
        Range.requireAbove("warm-point temperature", warmTemperature, mildTemperature, "K");
        Range.require("degradation coefficient", degradation, 0, 1, "1");
        if (temperatures.length != hours.length) {
            throw new IllegalArgumentException(
                    "bins have "
                            + temperatures.length
                            + " temperatures and "
                            + hours.length
                            + " hours, but must have as many of both");
        }
        double balance = indoor - gains / conductance;
        double delivered = 0;
        double energy = 0;
        double unmet = 0;
        for (int i = 0; i < temperatures.length; i++) {
            double t = temperatures[i];
            Range.require("bin temperature", t, 200, 350, "K");
            Range.require("bin hours", hours[i], 0, 8784, "h");
            double load = conductance * (t - balance);
            if (!(load > 0) || hours[i] == 0) {
                continue;
            }
            double along = (t - mildTemperature) / (warmTemperature - mildTemperature);
            double capacity = mildCapacity + along * (warmCapacity - mildCapacity);
            double power = mildPower + along * (warmPower - mildPower);
            Range.requireAbove("capacity at bin " + t + " K", capacity, 0, "W");
            Range.requireAbove("power at bin " + t + " K", power, 0, "W");
            double seconds = 3600 * hours[i];
            double factor = load / capacity;
            delivered += Math.min(load, capacity) * seconds;
            unmet += Math.max(0, load - capacity) * seconds;
            energy += power * PartLoad.runTimeFraction(degradation, factor) * seconds;
        }
        out[BALANCE] = balance;
        out[DELIVERED] = delivered;
        out[ENERGY] = energy;
        out[UNMET] = unmet;
    }
}
