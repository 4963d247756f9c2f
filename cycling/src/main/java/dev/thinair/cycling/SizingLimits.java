package dev.thinair.cycling;

/**
 * Sizing limits for cooling equipment: data that depend on the edition, not code.
 *
 * @param lowest lowest total capacity at design conditions over total load
 * @param highestSingleStage highest such ratio, single stage
 * @param highestTwoStage highest such ratio at the full stage, two stages
 * @param coldDryAllowance excess over the total cooling load allowed to a heat pump in a cold dry
 *     climate
 * @param coldDryDegreeDayRatio least ratio of heating degree-days (base 65 &deg;F) to cooling
 *     degree-days (base 50 &deg;F) of such a climate
 * @param coldDrySensibleRatio least sensible heat ratio of the design load in such a climate
 * @param olderColdHeatPump highest ratio for a heat pump in a cold climate in the older edition
 */
public record SizingLimits(
        Threshold lowest,
        Threshold highestSingleStage,
        Threshold highestTwoStage,
        Threshold coldDryAllowance,
        Threshold coldDryDegreeDayRatio,
        Threshold coldDrySensibleRatio,
        Threshold olderColdHeatPump) {

    private static final String SOURCE = "ANSI/ACCA 3 Manual S-2014 (from memory)";

    private static final SizingLimits STANDARD =
            new SizingLimits(
                    new Threshold("total capacity over total load, lowest", 0.90, "1", SOURCE),
                    new Threshold(
                            "total capacity over total load, highest, single stage",
                            1.15,
                            "1",
                            SOURCE),
                    new Threshold(
                            "total capacity over total load, highest, two-stage at full",
                            1.20,
                            "1",
                            SOURCE),
                    new Threshold(
                            "heat pump excess over total load, cold dry climate",
                            15_000,
                            "Btu/h",
                            SOURCE),
                    new Threshold("HDD65 over CDD50, cold dry climate", 2.0, "1", SOURCE),
                    new Threshold(
                            "design sensible heat ratio, cold dry climate", 0.95, "1", SOURCE),
                    new Threshold(
                            "total capacity over total load, heat pump, cold climate",
                            1.25,
                            "1",
                            "ACCA Manual S, 1995 edition (from memory)"));

    /**
     * Checks that nothing is missing.
     *
     * @param lowest as the component
     * @param highestSingleStage as the component
     * @param highestTwoStage as the component
     * @param coldDryAllowance as the component
     * @param coldDryDegreeDayRatio as the component
     * @param coldDrySensibleRatio as the component
     * @param olderColdHeatPump as the component
     * @throws IllegalArgumentException if a limit is missing
     */
    public SizingLimits {
        if (lowest == null
                || highestSingleStage == null
                || highestTwoStage == null
                || coldDryAllowance == null
                || coldDryDegreeDayRatio == null
                || coldDrySensibleRatio == null
                || olderColdHeatPump == null) {
            throw new IllegalArgumentException("a sizing limit is missing");
        }
    }

    /**
     * The limits of the 2014 edition, from memory; the edition in force may differ.
     *
     * @return 0.90 to 1.15 for a single stage, to 1.20 for two stages
     */
    public static SizingLimits standard() {
        return STANDARD;
    }

    /**
     * The upper limit for a staging.
     *
     * @param staging how the compressor adapts
     * @return limit; variable speed takes that of two stages
     * @throws IllegalArgumentException if the staging is missing
     */
    public Threshold highest(Staging staging) {
        if (staging == null) {
            throw new IllegalArgumentException("staging is missing");
        }
        return staging == Staging.SINGLE ? highestSingleStage : highestTwoStage;
    }
}
