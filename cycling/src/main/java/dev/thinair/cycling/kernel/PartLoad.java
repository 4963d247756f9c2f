package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Part load of an on-off unit: the rating standard's degradation coefficient, the thermostat
 * parabola, and the start-up model with its implicit part-load equation.
 *
 * <p>Words: cooling load factor <var>CLF</var> is load over steady capacity, run-time fraction
 * <var>X</var> is time on over total time, part-load factor <var>PLF</var> = <var>CLF</var>/<var>X
 * </var>.
 *
 * <p>Sources stand with the functions; what names none follows by algebra from those definitions.
 */
public final class PartLoad {

    private static final double SECONDS_PER_HOUR = 3600;

    private PartLoad() {}

    private static void requireBelowOne(String name, double value) {
        if (!(value >= 0 && value < 1)) {
            throw new IllegalArgumentException(
                    name + " is " + value + ", but must lie in [0.0, 1.0[");
        }
    }

    /**
     * Part-load factor by the standard, <code>PLF = 1 - Cd (1 - CLF)</code>.
     *
     * <p>A load factor above 1 counts as 1 (the unit runs without pause and the rest is unmet
     * load), as the standard prescribes: the bare formula would give factors above 1.
     *
     * <p>Source: AHRI 210/240 (2008, 2017, 2023) and 10 CFR 430 subpart B appendices M and M1, from
     * memory.
     *
     * @param degradation degradation coefficient Cd, in [0, 1]
     * @param loadFactor load over steady capacity, not negative
     * @return part-load factor, in [1 - Cd, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double partLoadFactor(double degradation, double loadFactor) {
        Range.require("degradation coefficient", degradation, 0, 1, "1");
        Range.require("load factor", loadFactor, 0, Double.MAX_VALUE, "1");
        return 1 - degradation * (1 - Math.min(1, loadFactor));
    }

    /**
     * Run-time fraction by the standard, <code>X = CLF / PLF</code>.
     *
     * @param degradation degradation coefficient Cd, in [0, 1]
     * @param loadFactor load over steady capacity, not negative; above 1 counts as 1
     * @return run-time fraction, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double runTimeFraction(double degradation, double loadFactor) {
        double plf = partLoadFactor(degradation, loadFactor);
        double clf = Math.min(1, loadFactor);
        return clf == 0 ? 0 : clf / plf;
    }

    /**
     * Degradation coefficient from a cyclic test, <code>Cd = (1 - EERcyc/EERss) / (1 - CLF)</code>;
     * a negative result is replaced by 0, as the standard prescribes.
     *
     * <p>Source: as {@link #partLoadFactor}.
     *
     * @param cyclicEfficiency efficiency over the cycle, above 0
     * @param steadyEfficiency steady efficiency in the same unit, above 0
     * @param loadFactor cyclic load factor, in [0, 1[; see {@link #cyclicLoadFactor}
     * @return degradation coefficient, in [0, 1] unless the load factor is near 1
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double degradationCoefficient(
            double cyclicEfficiency, double steadyEfficiency, double loadFactor) {
        Range.requireAbove("cyclic efficiency", cyclicEfficiency, 0, "W/W");
        Range.requireAbove("steady efficiency", steadyEfficiency, 0, "W/W");
        requireBelowOne("cyclic load factor", loadFactor);
        return Math.max(0, (1 - cyclicEfficiency / steadyEfficiency) / (1 - loadFactor));
    }

    /**
     * Load factor of a cyclic test, <code>CLF = q / (Q theta)</code>.
     *
     * @param cycleHeat heat delivered in one cycle, J, not negative
     * @param steadyCapacity steady capacity, W, above 0
     * @param cycleTime duration of the whole cycle, s, above 0
     * @return load factor
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double cyclicLoadFactor(
            double cycleHeat, double steadyCapacity, double cycleTime) {
        Range.require("heat of the cycle", cycleHeat, 0, Double.MAX_VALUE, "J");
        Range.requireAbove("steady capacity", steadyCapacity, 0, "W");
        Range.requireAbove("cycle time", cycleTime, 0, "s");
        return cycleHeat / (steadyCapacity * cycleTime);
    }

    /**
     * Cycle rate of the thermostat parabola, <code>N = 4 Nmax X (1 - X)</code>.
     *
     * <p>Source: NEMA DC 3, from memory; as used by Henderson and Rengarajan 1996.
     *
     * @param maximumRate cycles an hour at X = 1/2, above 0
     * @param runTimeFraction X, in [0, 1]
     * @return cycles an hour
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double cycleRate(double maximumRate, double runTimeFraction) {
        Range.requireAbove("maximum cycle rate", maximumRate, 0, "1/h");
        Range.require("run-time fraction", runTimeFraction, 0, 1, "1");
        return 4 * maximumRate * runTimeFraction * (1 - runTimeFraction);
    }

    /**
     * Time on per cycle on the parabola, <code>3600 / (4 Nmax (1 - X))</code>; its limit for X to 0
     * is the shortest possible time on.
     *
     * @param maximumRate cycles an hour at X = 1/2, above 0
     * @param runTimeFraction X, in [0, 1[
     * @return time on, s
     * @throws IllegalArgumentException if an argument is NaN or out of range (X = 1 never ends)
     */
    public static double onTime(double maximumRate, double runTimeFraction) {
        Range.requireAbove("maximum cycle rate", maximumRate, 0, "1/h");
        requireBelowOne("run-time fraction", runTimeFraction);
        return SECONDS_PER_HOUR / (4 * maximumRate * (1 - runTimeFraction));
    }

    /**
     * Time off per cycle on the parabola, <code>3600 / (4 Nmax X)</code>.
     *
     * @param maximumRate cycles an hour at X = 1/2, above 0
     * @param runTimeFraction X, in ]0, 1]
     * @return time off, s
     * @throws IllegalArgumentException if an argument is NaN or out of range (X = 0 never begins)
     */
    public static double offTime(double maximumRate, double runTimeFraction) {
        Range.requireAbove("maximum cycle rate", maximumRate, 0, "1/h");
        Range.requireAbove("run-time fraction", runTimeFraction, 0, "1");
        Range.require("run-time fraction", runTimeFraction, 0, 1, "1");
        return SECONDS_PER_HOUR / (4 * maximumRate * runTimeFraction);
    }

    /**
     * Mean capacity of an on-period over steady capacity, for capacity rising as <code>1 -
     * exp(-t/tau)</code> from a cold start: <code>1 - (tau/ton) (1 - exp(-ton/tau))</code>.
     *
     * <p>Source: model of Katipamula and O'Neal 1991 and Henderson and Rengarajan 1996; own
     * integration.
     *
     * @param timeConstant tau, s, not negative
     * @param onTime duration of the on-period, s, above 0
     * @return ratio, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double startUpCapacityRatio(double timeConstant, double onTime) {
        Range.require("start-up time constant", timeConstant, 0, 1e6, "s");
        Range.requireAbove("on-time", onTime, 0, "s");
        return meanRatio(timeConstant / onTime);
    }

    /** 1 - z (1 - exp(-1/z)), without cancellation for large z. */
    private static double meanRatio(double z) {
        if (z == 0) {
            return 1;
        }
        if (z > 50) {
            // Series in u = 1/z: u/2 - u^2/6 + u^3/24 - u^4/120 + u^5/720, next term below 1e-12.
            double u = 1 / z;
            return u * (0.5 - u * (1.0 / 6 - u * (1.0 / 24 - u * (1.0 / 120 - u / 720))));
        }
        return 1 + z * Math.expm1(-1 / z);
    }

    /**
     * Degradation coefficient that a unit of given time constant would show in a cyclic test.
     *
     * @param timeConstant tau, s, not negative
     * @param onTime time on, s, above 0; the standard test has 360 s
     * @param cycleTime whole cycle, s, longer than the time on; the standard test has 1800 s
     * @return degradation coefficient, in [0, 1[
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double degradationFromTimeConstant(
            double timeConstant, double onTime, double cycleTime) {
        double plf = startUpCapacityRatio(timeConstant, onTime);
        Range.requireAbove("cycle time", cycleTime, onTime, "s");
        return (1 - plf) / (1 - plf * onTime / cycleTime);
    }

    /**
     * Run-time fraction of a cycling unit with start-up losses under the thermostat parabola: the
     * root X of <code>X g(X) = CLF</code> with <code>g(X) = 1 - z (1 - exp(-1/z))</code>, <code>z =
     * k (1 - X)</code>, <code>k = 4 (tau/3600) Nmax</code>.
     *
     * <p>X g(X) rises with X, so the root is bracketed by [CLF, 1] and found there by bisection,
     * which never leaves the bracket (a fixed-point iteration on PLF would). Result to 1e-15.
     *
     * <p>Source: the form of Henderson, Parker and Huang 2000 (FSEC-PF-409-00), from memory and
     * re-derived.
     *
     * @param timeConstant tau, s, in [0, 3600]
     * @param maximumRate cycles an hour at X = 1/2, in ]0, 60]
     * @param loadFactor load over steady capacity, not negative; from 1 on the unit runs without
     *     pause
     * @return run-time fraction, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double implicitRunTimeFraction(
            double timeConstant, double maximumRate, double loadFactor) {
        double k = cyclingNumber(timeConstant, maximumRate);
        Range.require("load factor", loadFactor, 0, Double.MAX_VALUE, "1");
        if (loadFactor == 0) {
            return 0;
        }
        if (loadFactor >= 1) {
            return 1;
        }
        double low = loadFactor;
        double high = 1;
        // 60 halvings of an interval below 1 reach neighbouring doubles.
        for (int i = 0; i < 60; i++) {
            double mid = 0.5 * (low + high);
            if (mid * meanRatio(k * (1 - mid)) < loadFactor) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return high;
    }

    /**
     * Part-load factor that belongs to {@link #implicitRunTimeFraction}: <code>g(X)</code>. At zero
     * load it is g(0), the factor of the shortest on-period, and not 0; at full load it is 1.
     *
     * @param timeConstant tau, s, in [0, 3600]
     * @param maximumRate cycles an hour at X = 1/2, in ]0, 60]
     * @param loadFactor load over steady capacity, not negative
     * @return part-load factor, in ]0, 1]
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double implicitPartLoadFactor(
            double timeConstant, double maximumRate, double loadFactor) {
        double x = implicitRunTimeFraction(timeConstant, maximumRate, loadFactor);
        return meanRatio(cyclingNumber(timeConstant, maximumRate) * (1 - x));
    }

    private static double cyclingNumber(double timeConstant, double maximumRate) {
        Range.require("start-up time constant", timeConstant, 0, 3600, "s");
        Range.requireAbove("maximum cycle rate", maximumRate, 0, "1/h");
        Range.require("maximum cycle rate", maximumRate, 0, 60, "1/h");
        return 4 * timeConstant / SECONDS_PER_HOUR * maximumRate;
    }

    /**
     * Mean power over steady power of a cycling unit that draws a fraction of its power while off,
     * <code>X + pr (1 - X)</code>. Not zero at zero load: the efficiency there is zero.
     *
     * @param runTimeFraction X, in [0, 1]
     * @param offFraction off-cycle power over on-cycle power pr, in [0, 1]
     * @return ratio
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double averagePowerFraction(double runTimeFraction, double offFraction) {
        Range.require("run-time fraction", runTimeFraction, 0, 1, "1");
        Range.require("off-cycle power fraction", offFraction, 0, 1, "1");
        return runTimeFraction + offFraction * (1 - runTimeFraction);
    }

    /**
     * Run-time fraction of a unit that is oversized by a ratio, with start-up losses.
     *
     * @param sizeRatio capacity over design load, above 0
     * @param loadFraction load over design load, not negative
     * @param timeConstant tau, s, in [0, 3600]
     * @param maximumRate cycles an hour at X = 1/2, in ]0, 60]
     * @return run-time fraction
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double oversizedRunTimeFraction(
            double sizeRatio, double loadFraction, double timeConstant, double maximumRate) {
        Range.requireAbove("capacity over design load", sizeRatio, 0, "1");
        Range.require("load over design load", loadFraction, 0, Double.MAX_VALUE, "1");
        return implicitRunTimeFraction(timeConstant, maximumRate, loadFraction / sizeRatio);
    }

    /**
     * Cycling energy of an oversized unit over that of one of exactly the design load and the same
     * steady efficiency: <code>PLF(f) / PLF(f/r)</code>. Only the cycling loss; ducts and airflow
     * are not in it.
     *
     * @param sizeRatio capacity over design load r, above 0
     * @param loadFraction load over design load f, in ]0, 1]
     * @param timeConstant tau, s, in [0, 3600]
     * @param maximumRate cycles an hour at X = 1/2, in ]0, 60]
     * @return energy ratio, 1 for r = 1
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double oversizedEnergyRatio(
            double sizeRatio, double loadFraction, double timeConstant, double maximumRate) {
        Range.requireAbove("capacity over design load", sizeRatio, 0, "1");
        Range.requireAbove("load over design load", loadFraction, 0, "1");
        Range.require("load over design load", loadFraction, 0, 1, "1");
        return implicitPartLoadFactor(timeConstant, maximumRate, loadFraction)
                / implicitPartLoadFactor(timeConstant, maximumRate, loadFraction / sizeRatio);
    }

    /**
     * Part of a unit's size that removes an oversize: <code>1 - 1/(1 + o)</code>.
     *
     * @param oversize capacity over need less one, not negative
     * @return reduction over the present size
     * @throws IllegalArgumentException if the oversize is NaN or negative
     */
    public static double sizeReduction(double oversize) {
        Range.require("oversize", oversize, 0, 100, "1");
        return oversize / (1 + oversize);
    }
}
