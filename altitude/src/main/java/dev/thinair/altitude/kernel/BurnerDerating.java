package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;

/**
 * Gas input that a burner is permitted at elevation: code and maker's rules, not a law of physics.
 *
 * <p><b>Safety.</b> The appliance maker's instructions and the local code come before any rule
 * here. A burner set too high for its air makes carbon monoxide, which kills. Setting orifices,
 * manifold pressure and input is work for licensed gas technicians with a combustion analyser; gas
 * sold at elevation may already be derated in heating value.
 *
 * <p>The common rule takes 4 percent per 1000 ft, and it is read in two ways: from sea level once
 * above 2000 ft (0.80 at 5000 ft), or from 2000 ft (0.88). Both are here by name. Air at constant
 * temperature thins by about 3.5 percent per 1000 ft. Sources with each function. All functions are
 * pure and allocation-free; elevations are in metres, [-500, 6000].
 */
public final class BurnerDerating {

    /** Where the 4 percent rule begins: 2000 ft, in m. */
    public static final double THRESHOLD = 609.6;

    private static final double THOUSAND_FEET = 304.8; // m
    private static final double FOUR_PERCENT = 0.04;

    private BurnerDerating() {}

    /**
     * Four percent per 1000 ft counted from <em>sea level</em>, once above 2000 ft: 1 up to and at
     * 2000 ft, then 1 - 0.04 <var>Z</var>/1000 ft, which steps to 0.92.
     *
     * <p>Source: ANSI Z223.1/NFPA 54, high-altitude rule (wording from memory).
     *
     * @param elevation elevation, m, in [-500, 6000]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if elevation is NaN or outside that range
     */
    public static double fourPercentFromSeaLevel(double elevation) {
        return fromSeaLevel(elevation, FOUR_PERCENT);
    }

    /**
     * Four percent per 1000 ft counted from <em>2000 ft</em>: 1 up to 2000 ft, then 1 - 0.04
     * (<var>Z</var> - 2000 ft)/1000 ft.
     *
     * <p>Source: the reading of some makers (common practice, no single source).
     *
     * @param elevation elevation, m, in [-500, 6000]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if elevation is NaN or outside that range
     */
    public static double fourPercentFromTwoThousandFeet(double elevation) {
        return fromThreshold(elevation, FOUR_PERCENT);
    }

    /**
     * As {@link #fourPercentFromSeaLevel}, with another share, for appliances listed otherwise (2
     * percent for some condensing ones: maker's instructions).
     *
     * @param elevation elevation, m, in [-500, 6000]
     * @param sharePerThousandFeet reduction per 1000 ft, in [0, 0.05]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double fromSeaLevel(double elevation, double sharePerThousandFeet) {
        requireElevation(elevation);
        requireShare(sharePerThousandFeet);
        return elevation > THRESHOLD ? 1.0 - sharePerThousandFeet * elevation / THOUSAND_FEET : 1.0;
    }

    /**
     * As {@link #fourPercentFromTwoThousandFeet}, with another share.
     *
     * @param elevation elevation, m, in [-500, 6000]
     * @param sharePerThousandFeet reduction per 1000 ft, in [0, 0.05]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double fromThreshold(double elevation, double sharePerThousandFeet) {
        requireElevation(elevation);
        requireShare(sharePerThousandFeet);
        return 1.0 - sharePerThousandFeet * Math.max(0.0, elevation - THRESHOLD) / THOUSAND_FEET;
    }

    /**
     * One reduction for a band of elevations: 1 below the band, 1 - reduction from its lower edge
     * (excluded) to its upper edge (included). Canadian practice has 10 percent from 2000 to 4500
     * ft (seen in a furnace manual, reference case PA-I087).
     *
     * @param elevation elevation, m, in [-500, 6000] and not above the band
     * @param low lower edge of the band, m
     * @param high upper edge of the band, m, above low
     * @param reduction share taken off in the band, in [0, 0.5]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if an argument is NaN or outside its range; above the band
     *     the rule says nothing, so that is refused too
     */
    public static double flatBand(double elevation, double low, double high, double reduction) {
        requireElevation(elevation);
        Range.requireAbove("upper edge of the band", high, low, "m");
        Range.require("reduction", reduction, 0, 0.5, "(ratio)");
        Range.require("elevation under this rule", elevation, -500, high, "m");
        return elevation > low ? 1.0 - reduction : 1.0;
    }

    /**
     * A maker's table, linear between its points. The maker's own way of reading it (the next
     * higher column, say) comes first.
     *
     * @param elevation elevation, m, within the table
     * @param elevations the table's elevations, m, rising, at least two
     * @param multipliers permitted input over rated input at each, in (0, 1.2]
     * @return permitted input over rated input
     * @throws IllegalArgumentException if the table is not as described, or elevation is NaN or
     *     outside it
     */
    public static double makersTable(double elevation, double[] elevations, double[] multipliers) {
        int n = elevations.length;
        if (n < 2 || multipliers.length != n) {
            throw new IllegalArgumentException(
                    "maker's table has "
                            + n
                            + " elevations and "
                            + multipliers.length
                            + " multipliers, but needs at least two of each");
        }
        for (int i = 0; i < n; i++) {
            Range.require(
                    "multiplier of the maker's table",
                    multipliers[i],
                    Double.MIN_NORMAL,
                    1.2,
                    "(ratio)");
            if (i > 0) {
                Range.requireAbove(
                        "elevation of the maker's table", elevations[i], elevations[i - 1], "m");
            }
        }
        Range.require(
                "elevation within the maker's table",
                elevation,
                elevations[0],
                elevations[n - 1],
                "m");
        int i = 1;
        while (i < n - 1 && elevation > elevations[i]) {
            i++;
        }
        double share = (elevation - elevations[i - 1]) / (elevations[i] - elevations[i - 1]);
        return multipliers[i - 1] + share * (multipliers[i] - multipliers[i - 1]);
    }

    private static void requireElevation(double elevation) {
        Range.require("elevation", elevation, -500, 6_000, "m");
    }

    private static void requireShare(double sharePerThousandFeet) {
        Range.require("reduction per 1000 ft", sharePerThousandFeet, 0, 0.05, "(ratio)");
    }
}
