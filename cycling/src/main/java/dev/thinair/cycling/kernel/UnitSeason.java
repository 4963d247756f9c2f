package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Seasonal rating of a modelled unit: the rating procedure's tests run on {@link UnitModel}, then
 * put through {@link SeasonalRatings}.
 *
 * <p>All tests at the indoor air and the pressure of the unit's own rating point. Airflow follows
 * the displacement but not below half of rated, the indoor fan draws constant power per airflow,
 * the intermediate speed lies a third of the way from low to full (10 CFR 430 app. M1, from
 * memory); the first two are this model's assumptions.
 */
public final class UnitSeason {

    private static final double F67 = (67 + 459.67) / 1.8;
    private static final double F82 = (82 + 459.67) / 1.8;
    private static final double F87 = (87 + 459.67) / 1.8;
    private static final double F95 = (95 + 459.67) / 1.8;

    private UnitSeason() {}

    /**
     * The tests' net capacities and powers.
     *
     * @param unit the unit; use a healthy one for a rating
     * @param fanPower indoor fan power at rated airflow, W, not negative
     * @return capacity and power in W, alternating: single stage A, B; two stages A2, B2, B1, F1;
     *     variable speed A2, B2, B1, F1, E
     * @throws IllegalArgumentException if the fan power is NaN or out of range
     */
    public static double[] tests(UnitModel unit, double fanPower) {
        Range.require("indoor fan power", fanPower, 0, 1e5, "W");
        double low = unit.minimumStage();
        double[] out = new double[low == 1 ? 4 : unit.continuousStage() ? 10 : 8];
        double[] state = new double[UnitModel.RESULTS];
        test(unit, fanPower, F95, 1, state, out, 0);
        test(unit, fanPower, F82, 1, state, out, 2);
        if (low < 1) {
            test(unit, fanPower, F82, low, state, out, 4);
            test(unit, fanPower, F67, low, state, out, 6);
        }
        if (unit.continuousStage()) {
            test(unit, fanPower, F87, low + (1 - low) / 3, state, out, 8);
        }
        return out;
    }

    private static void test(
            UnitModel unit,
            double fanPower,
            double outdoor,
            double stage,
            double[] state,
            double[] out,
            int at) {
        RatingPoint r = unit.rating();
        double share = Math.max(0.5, stage);
        unit.steady(
                r.enteringDryBulb(),
                r.enteringHumidityRatio(),
                share * r.dryAirMassFlow(),
                outdoor,
                r.pressure(),
                stage,
                state);
        out[at] = state[UnitModel.TOTAL] - share * fanPower;
        out[at + 1] = state[UnitModel.POWER] + share * fanPower;
    }

    /**
     * Seasonal rating from the tests.
     *
     * @param tests as {@link #tests} returns them: 4, 8 or 10 numbers
     * @param degradation degradation coefficient of all stages, in [0, 1]
     * @param loadFactor factor V on the load line of variable speed; 1 else
     * @param bins cooling bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if the count is another one or a number is out of range
     */
    public static double rating(
            double[] tests, double degradation, double loadFactor, RatingBins bins) {
        double[] t = tests;
        return switch (t.length) {
            case 4 -> SeasonalRatings.singleSpeed(t[0], t[1], t[2], t[3], degradation, bins);
            case 8 ->
                    SeasonalRatings.twoStage(
                            t[0],
                            t[1],
                            t[2],
                            t[3],
                            t[4],
                            t[5],
                            t[6],
                            t[7],
                            degradation,
                            degradation,
                            Double.POSITIVE_INFINITY,
                            bins);
            case 10 ->
                    SeasonalRatings.variableSpeed(
                            t[0],
                            t[1],
                            t[2],
                            t[3],
                            t[4],
                            t[5],
                            t[6],
                            t[7],
                            t[8],
                            t[9],
                            degradation,
                            loadFactor,
                            bins);
            default ->
                    throw new IllegalArgumentException(
                            "tests have " + t.length + " numbers, but must have 4, 8 or 10");
        };
    }

    /**
     * Heat delivered in one bin: fractional hours times the smaller of load and full capacity.
     *
     * @param tests as {@link #tests} returns them
     * @param loadFactor factor V on the load line
     * @param bins cooling bins
     * @param bin index of the bin
     * @return heat, W times fractional hours
     */
    public static double binHeat(double[] tests, double loadFactor, RatingBins bins, int bin) {
        double t = bins.kelvin(bin);
        double full = tests[2] + (t - F82) / (F95 - F82) * (tests[0] - tests[2]);
        double load = Math.max(0, SeasonalRatings.coolingLoad(t, tests[0], loadFactor));
        return bins.fraction(bin) * Math.min(load, full);
    }
}
