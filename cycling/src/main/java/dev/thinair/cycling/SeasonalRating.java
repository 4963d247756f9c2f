package dev.thinair.cycling;

import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.cycling.kernel.SeasonalRatings;
import dev.thinair.cycling.kernel.UnitSeason;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;

/**
 * A seasonal cooling rating by the bin procedure, with its working.
 *
 * <p>The procedures and tables are from memory; see {@link SeasonalRatings} and {@link RatingBins}.
 * Immutable.
 */
public final class SeasonalRating {

    private static final String SOURCE =
            "AHRI 210/240 and 10 CFR 430 subpart B app. M/M1 section 4.1 (from memory)";

    private final String title;
    private final double[] tests;
    private final double degradation;
    private final double loadFactor;
    private final RatingBins bins;
    private final double value;

    private SeasonalRating(
            String title, double[] tests, double degradation, double loadFactor, RatingBins bins) {
        if (bins == null) {
            throw new IllegalArgumentException("bin table is missing");
        }
        Range.require("degradation coefficient", degradation, 0, 1, "1");
        this.title = title;
        this.tests = tests;
        this.degradation = degradation;
        this.loadFactor = loadFactor;
        this.bins = bins;
        this.value = UnitSeason.rating(tests, degradation, loadFactor, bins);
    }

    /**
     * Of a single-speed unit from its tests at 95 and 82 &deg;F.
     *
     * @param capacity95 net capacity at 95 &deg;F
     * @param power95 power at 95 &deg;F
     * @param capacity82 net capacity at 82 &deg;F
     * @param power82 power at 82 &deg;F
     * @param degradation degradation coefficient, in [0, 1]
     * @param bins cooling bins, {@link RatingBins#COOLING} or the user's own
     * @return the rating
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static SeasonalRating ofSingleSpeed(
            Quantity<Power> capacity95,
            Quantity<Power> power95,
            Quantity<Power> capacity82,
            Quantity<Power> power82,
            double degradation,
            RatingBins bins) {
        return new SeasonalRating(
                "seasonal rating, single speed",
                new double[] {
                    Si.watts(capacity95, "capacity at 95 degF"),
                    Si.watts(power95, "power at 95 degF"),
                    Si.watts(capacity82, "capacity at 82 degF"),
                    Si.watts(power82, "power at 82 degF")
                },
                degradation,
                1,
                bins);
    }

    /**
     * Of a unit of any staging as modelled, its faults left out: the tests are run on its model.
     *
     * @param unit the unit
     * @param degradation degradation coefficient of all stages, in [0, 1]
     * @param bins cooling bins, {@link RatingBins#COOLING} or the user's own
     * @return the rating
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static SeasonalRating of(CoolingUnit unit, double degradation, RatingBins bins) {
        if (unit == null) {
            throw new IllegalArgumentException("unit is missing");
        }
        CoolingUnit healthy = unit.withFaults(UnitFaults.none());
        return new SeasonalRating(
                "seasonal rating of " + unit.name(),
                UnitSeason.tests(
                        healthy.model(),
                        Si.watts(healthy.ratedIndoorFanPower(), "rated indoor fan power")),
                degradation,
                1,
                bins);
    }

    /**
     * The rating.
     *
     * @return heat over electricity; in Btu/(W h)
     */
    public Quantity<Dimensionless> ratio() {
        return Units.btuPerWattHour(inBtuPerWattHour());
    }

    /**
     * The rating as the trade prints it.
     *
     * @return Btu/(W h)
     */
    public double inBtuPerWattHour() {
        return value * Trade.BTU_PER_WATT_HOUR;
    }

    /**
     * The bins used.
     *
     * @return table with its edition
     */
    public RatingBins bins() {
        return bins;
    }

    /**
     * The steps: heat and electricity of each bin, and their ratio.
     *
     * @return working that ends with the rating in Btu/(W h)
     */
    public Working working() {
        Working.Builder w =
                Working.titled(title)
                        .given("C_d", "degradation coefficient", Units.ratio(degradation))
                        .given("Q_95", "net capacity at 95 degF", Units.watts(tests[0]))
                        .given("P_95", "power at 95 degF", Units.watts(tests[1]))
                        .given("Q_82", "net capacity at 82 degF", Units.watts(tests[2]))
                        .given("P_82", "power at 82 degF", Units.watts(tests[3]));
        if (tests.length > 4) {
            w.given("Q_82l", "net capacity at 82 degF, lowest stage", Units.watts(tests[4]))
                    .given("P_82l", "power at 82 degF, lowest stage", Units.watts(tests[5]))
                    .given("Q_67l", "net capacity at 67 degF, lowest stage", Units.watts(tests[6]))
                    .given("P_67l", "power at 67 degF, lowest stage", Units.watts(tests[7]));
        }
        if (tests.length > 8) {
            w.given("Q_87i", "net capacity at 87 degF, intermediate speed", Units.watts(tests[8]))
                    .given("P_87i", "power at 87 degF, intermediate speed", Units.watts(tests[9]));
        }
        List<String> heats = new ArrayList<>();
        List<String> energies = new ArrayList<>();
        for (int i = 0; i < bins.size(); i++) {
            double fahrenheit = bins.kelvin(i) * 1.8 - 459.67;
            double q = UnitSeason.binHeat(tests, loadFactor, bins, i);
            if (q == 0) {
                continue;
            }
            double ratio =
                    UnitSeason.rating(
                            tests,
                            degradation,
                            loadFactor,
                            RatingBins.of("one bin", new double[] {fahrenheit}, new double[] {1}));
            String name = String.format(Locale.ROOT, "bin %.0f degF", fahrenheit);
            String index = Integer.toString(i + 1);
            w.stepInWords(
                    "q_" + index,
                    "heat of " + name,
                    String.format(
                            Locale.ROOT,
                            "n min(BL, Q) with n = %.3f, BL = %.1f W",
                            bins.fraction(i),
                            SeasonalRatings.coolingLoad(bins.kelvin(i), tests[0], loadFactor)),
                    List.of("Q_95", "Q_82"),
                    Units.watts(q),
                    SOURCE);
            w.stepInWords(
                    "e_" + index,
                    "electricity of " + name,
                    tests.length == 4
                            ? "n P X with X = CLF/PLF, PLF = 1 - C_d (1 - CLF), CLF = BL/Q"
                            : "lowest stage cycling, stages between, or full stage, as the load"
                                    + " asks",
                    List.of("C_d"),
                    Units.watts(q / ratio),
                    SOURCE);
            heats.add("q_" + index);
            energies.add("e_" + index);
        }
        return w.step(
                        "seasonal ratio",
                        "r = ("
                                + String.join(" + ", heats)
                                + ") / ("
                                + String.join(" + ", energies)
                                + ")",
                        Units.ratio(value),
                        SOURCE)
                .step(
                        "seasonal rating in Btu/(W h)",
                        "SEER = 3600 r / 1055.05585262",
                        Units.btuPerWattHour(inBtuPerWattHour()),
                        "NIST SP 811 (Btu, International Table)")
                .note("Bins: " + bins.name() + ".")
                .note("Procedure and tables are from memory and not checked against the standards.")
                .build();
    }

    /**
     * Short form for a single-speed unit with a constant fan, <code>(1 - Cd/2) QB/PB</code>.
     *
     * @param capacity82 net capacity at 82 &deg;F
     * @param power82 power at 82 &deg;F
     * @param degradation degradation coefficient, in [0, 1]
     * @return rating in Btu/(W h)
     * @throws IllegalArgumentException if something is missing or out of range
     * @see PartLoad#partLoadFactor
     */
    public static Quantity<Dimensionless> shortForm(
            Quantity<Power> capacity82, Quantity<Power> power82, double degradation) {
        return Units.btuPerWattHour(
                Trade.BTU_PER_WATT_HOUR
                        * SeasonalRatings.singleSpeedShort(
                                Si.watts(capacity82, "capacity at 82 degF"),
                                Si.watts(power82, "power at 82 degF"),
                                degradation));
    }

    /**
     * For shells.
     *
     * @return title and rating
     */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s: %.2f Btu/(W h)", title, inBtuPerWattHour());
    }
}
