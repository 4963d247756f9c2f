package dev.thinair.loads;

import dev.thinair.units.Range;
import java.util.Arrays;

/**
 * Share of a gain that is there at each hour mark of the day, local standard time; linear between
 * marks where the load is reckoned. Immutable.
 */
public final class Schedule {

    private static final Schedule ALWAYS = between(0, 24);

    private final double[] shares;

    private Schedule(double[] shares) {
        this.shares = shares;
    }

    /**
     * All day.
     *
     * @return 24 ones
     */
    public static Schedule always() {
        return ALWAYS;
    }

    /**
     * A share for every hour.
     *
     * @param shares 24 values, each in [0, 1]
     * @return the schedule
     * @throws IllegalArgumentException if there are not 24 or one is NaN or outside its range
     */
    public static Schedule of(double... shares) {
        if (shares.length != 24) {
            throw new IllegalArgumentException(
                    "number of values of the schedule is " + shares.length + ", but must be 24");
        }
        for (int h = 0; h < 24; h++) {
            Range.require("share of the schedule at hour " + h, shares[h], 0, 1, "-");
        }
        return new Schedule(shares.clone());
    }

    /**
     * On at the marks from one hour up to, not including, another; past midnight if the second is
     * the smaller.
     *
     * @param from first hour on, in [0, 23]
     * @param to first hour off, in [0, 24]
     * @return the schedule
     * @throws IllegalArgumentException if an hour is outside its range
     */
    public static Schedule between(int from, int to) {
        Range.require("first hour of the schedule", from, 0, 23, "h");
        Range.require("last hour of the schedule", to, 0, 24, "h");
        double[] shares = new double[24];
        int length = Math.floorMod(to - from, 24);
        for (int i = 0; i < (length == 0 ? 24 : length); i++) {
            shares[(from + i) % 24] = 1;
        }
        return new Schedule(shares);
    }

    /**
     * Share at an hour mark.
     *
     * @param hour local standard hour, in [0, 23]
     * @return share, 0 to 1
     * @throws IllegalArgumentException if the hour is outside its range
     */
    public double at(int hour) {
        Range.require("hour", hour, 0, 23, "h");
        return shares[hour];
    }

    /**
     * Sum of the shares over the day.
     *
     * @return equivalent full hours
     */
    public double fullHours() {
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Schedule that && Arrays.equals(shares, that.shares);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(shares);
    }

    @Override
    public String toString() {
        return "schedule " + Arrays.toString(shares);
    }
}
