package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * The course of the outdoor temperature through a design day, as fractions of the daily range below
 * the maximum: <code>T(h) = Tdesign - fraction(h) range</code>.
 *
 * <p>Two tables are in circulation, and the handbook reads its table in two ways: chapter 18 by
 * clock hour (index = local standard hour), chapter 14 (Example 9) by apparent solar time rounded
 * to the hour. For one site and day they give 23.2 and 24.7 C at the same clock time. Both are
 * here, by name: {@link #fraction} and {@link #fractionAtSolarTime}.
 *
 * <p>The same fractions serve the wet bulb with its own range, {@link #wetBulb}.
 */
public enum DailyProfile {

    /**
     * ASHRAE Handbook, Fundamentals, 2009 to 2021, chapter 14 (2021 SI: Table 6). Maximum at 14:00
     * and 15:00, minimum at 5:00, mean fraction 0.53625.
     */
    FUNDAMENTALS_2009_TO_2021(
            0.82, 0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05,
            0.00, 0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75),

    /**
     * The older table of the same handbook, editions to 2005 (from memory). Maximum at 15:00,
     * minimum at 5:00, mean fraction 0.5629.
     */
    FUNDAMENTALS_TO_2005(
            0.82, 0.87, 0.92, 0.96, 0.99, 1.00, 0.98, 0.93, 0.84, 0.71, 0.56, 0.39, 0.23, 0.11,
            0.03, 0.00, 0.03, 0.10, 0.21, 0.34, 0.47, 0.58, 0.68, 0.76);

    private final double[] fractions;
    private final double mean;

    DailyProfile(double... atMidnightAndAfter) {
        // The first value is that of hour 24, which is hour 0; the tables print hours 1 to 24.
        fractions = atMidnightAndAfter;
        double sum = 0;
        for (double f : fractions) {
            sum += f;
        }
        mean = sum / fractions.length;
    }

    /**
     * Fraction of the daily range below the maximum at a clock hour.
     *
     * @param hour local standard hour, in [0, 24]; 24 is 0
     * @return fraction, in [0, 1]
     * @throws IllegalArgumentException if hour is outside its range
     */
    public double fraction(int hour) {
        Range.require("hour", hour, 0, 24, "h");
        return fractions[hour % 24];
    }

    /**
     * Fraction read at apparent solar time rounded to the nearest hour, as chapter 14 does.
     *
     * @param apparentSolarTime s after solar midnight, in [-86400, 172800]
     * @return fraction, in [0, 1]
     * @throws IllegalArgumentException if the time is NaN or outside its range
     */
    public double fractionAtSolarTime(double apparentSolarTime) {
        Range.require("apparent solar time", apparentSolarTime, -86_400, 172_800, "s");
        return fractions[Math.floorMod(Math.round(apparentSolarTime / 3_600), 24)];
    }

    /**
     * Mean of the 24 fractions: the day's mean temperature is the design temperature less this
     * times the range.
     *
     * @return mean fraction
     */
    public double meanFraction() {
        return mean;
    }

    /**
     * Temperature at a clock hour: <code>T = Tdesign - fraction range</code>.
     *
     * @param design daily maximum, K, in [180, 340]
     * @param range daily range, K, in [0, 60]
     * @param hour local standard hour, in [0, 24]
     * @return K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double dryBulb(double design, double range, int hour) {
        Range.require("design dry bulb", design, 180, 340, "K");
        Range.require("daily range", range, 0, 60, "K");
        return design - fraction(hour) * range;
    }

    /**
     * Wet bulb at a clock hour: <code>min(Twb,design - fraction range, T)</code>; it cannot pass
     * the dry bulb of that hour, since air is not more than saturated.
     *
     * @param design coincident design wet bulb, K, in [180, 340]
     * @param range coincident daily range of the wet bulb, K, in [0, 60]
     * @param dryBulb dry bulb of that hour, K, in [180, 340]
     * @param hour local standard hour, in [0, 24]
     * @return K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double wetBulb(double design, double range, double dryBulb, int hour) {
        Range.require("design wet bulb", design, 180, 340, "K");
        Range.require("daily wet-bulb range", range, 0, 60, "K");
        Range.require("dry bulb", dryBulb, 180, 340, "K");
        return Math.min(design - fraction(hour) * range, dryBulb);
    }
}
