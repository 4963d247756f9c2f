package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Seasonal ratings, bins, degree-days, evaporation and tariffs against reference cases. */
class SeasonAndBillKernelTest {

    /** Btu/h in W; also Btu/(W h) in W/W. */
    private static final double BTU = 1055.05585262 / 3600;

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    @Test
    void bin_tables_add_up() {
        assertThat(RatingBins.COOLING.sum()).isCloseTo(1, within(1e-12));
        assertThat(RatingBins.HEATING_REGION_IV.sum()).isCloseTo(1, within(1e-12));
        assertThat(RatingBins.HEATING_REGION_IV_M1.sum()).isCloseTo(0.757, within(1e-12));
        assertThat(RatingBins.COOLING.kelvin(3)).isCloseTo(f(82), within(1e-12));
        assertThat(RatingBins.COOLING.name()).contains("from memory");
    }

    @Test
    void seer_single_speed() {
        // Reference cases CYC-SEER1-01 and CYC-SEERB-01.
        assertThat(SeasonalRatings.singleSpeedShort(38_000 * BTU, 2_700, 0.25) / BTU)
                .isCloseTo(12.3148148148, within(1e-9));
        assertThat(
                        SeasonalRatings.singleSpeed(
                                        36_000 * BTU,
                                        3_000,
                                        38_000 * BTU,
                                        2_700,
                                        0.25,
                                        RatingBins.COOLING)
                                / BTU)
                .isCloseTo(12.2758054034, within(1e-9));
    }

    private static double twoStage(double cd, double lockOut) {
        return SeasonalRatings.twoStage(
                        36_000 * BTU,
                        3_000,
                        38_000 * BTU,
                        2_700,
                        28_000 * BTU,
                        1_800,
                        30_000 * BTU,
                        1_500,
                        cd,
                        cd,
                        lockOut,
                        RatingBins.COOLING)
                / BTU;
    }

    @Test
    void seer_two_stage() {
        // Reference cases CYC-SEER2S-01, -02 and -04.
        assertThat(twoStage(0.20, Double.POSITIVE_INFINITY)).isCloseTo(14.3100320315, within(1e-9));
        assertThat(twoStage(0.25, Double.POSITIVE_INFINITY)).isCloseTo(14.0334823263, within(1e-9));
        assertThat(twoStage(0.20, f(90))).isCloseTo(14.1419097992, within(1e-9));
    }

    @Test
    void seer_variable_speed() {
        // Reference cases CYC-SEERV-01, -02 (older, quadratic form) and -03.
        double[] a = {
            36_000 * BTU,
            3_000,
            38_000 * BTU,
            2_700,
            16_000 * BTU,
            900,
            17_500 * BTU,
            700,
            25_000 * BTU,
            1_700
        };
        assertThat(
                        SeasonalRatings.variableSpeed(
                                        a[0],
                                        a[1],
                                        a[2],
                                        a[3],
                                        a[4],
                                        a[5],
                                        a[6],
                                        a[7],
                                        a[8],
                                        a[9],
                                        0.25,
                                        1,
                                        RatingBins.COOLING)
                                / BTU)
                .isCloseTo(16.2480429135, within(1e-9));
        assertThat(
                        SeasonalRatings.variableSpeedQuadratic(
                                        a[0],
                                        a[1],
                                        a[2],
                                        a[3],
                                        a[4],
                                        a[5],
                                        a[6],
                                        a[7],
                                        a[8],
                                        a[9],
                                        0.25,
                                        1,
                                        RatingBins.COOLING)
                                / BTU)
                .isCloseTo(16.2430125274, within(1e-9));
        assertThat(UnitSeason.rating(a, 0.25, 0.93, RatingBins.COOLING) / BTU)
                .isCloseTo(16.3388117658, within(1e-9));
    }

    @Test
    void hspf() {
        // Reference cases CYC-HSPF-01, -02 (cut-out) and CYC-HSPF2-01.
        assertThat(hspf(0.25, 35_000, -20, -15)).isCloseTo(8.36430011127, within(1e-9));
        assertThat(hspf(0.25, 35_000, 10, 20)).isCloseTo(7.44300559423, within(1e-9));
        assertThat(
                        SeasonalRatings.heatingM1(
                                        36_000 * BTU,
                                        3_000,
                                        30_000 * BTU,
                                        2_900,
                                        22_000 * BTU,
                                        2_600,
                                        0.25,
                                        36_000 * BTU,
                                        1.15,
                                        f(55),
                                        f(5),
                                        f(-20),
                                        f(-15),
                                        1,
                                        RatingBins.HEATING_REGION_IV_M1)
                                / BTU)
                .isCloseTo(7.49337979331, within(1e-9));
    }

    private static double hspf(double cd, double dhr, double off, double on) {
        return SeasonalRatings.heatingM(
                        36_000 * BTU,
                        3_000,
                        30_000 * BTU,
                        2_900,
                        22_000 * BTU,
                        2_600,
                        cd,
                        dhr * BTU,
                        f(5),
                        f(off),
                        f(on),
                        1,
                        RatingBins.HEATING_REGION_IV)
                / BTU;
    }

    /** Loads of the M line at 35000 Btu/h design requirement. */
    private static double[] loads() {
        double[] loads = new double[RatingBins.HEATING_REGION_IV.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] =
                    SeasonalRatings.heatingLoadM(
                            RatingBins.HEATING_REGION_IV.kelvin(i), f(5), 35_000 * BTU);
        }
        return loads;
    }

    private static final double[] HIGH = {
        36_000 * BTU, 3_000, 30_000 * BTU, 2_900, 22_000 * BTU, 2_600
    };

    private static double heatingTwoStage(double[] low, double lockOut, double cutOut) {
        return SeasonalRatings.heatingTwoStage(
                HIGH,
                low,
                0.25,
                0.25,
                lockOut,
                loads(),
                f(cutOut),
                f(cutOut + 5),
                1,
                RatingBins.HEATING_REGION_IV);
    }

    @Test
    void a_locked_out_low_stage_leaves_the_single_speed_rating() {
        double[] low = {
            24_000 * BTU, 1_400, 21_000 * BTU, 1_350, 17_000 * BTU, 1_300, 13_000 * BTU, 1_200
        };
        assertThat(heatingTwoStage(low, f(100), -20) / BTU)
                .isCloseTo(hspf(0.25, 35_000, -20, -15), within(1e-12));
        // In use, the more efficient low stage raises the rating.
        assertThat(heatingTwoStage(low, Double.NEGATIVE_INFINITY, -20) / BTU)
                .isGreaterThan(hspf(0.25, 35_000, -20, -15) + 0.3);
        // A compressor that never runs is resistance heat.
        assertThat(heatingTwoStage(low, Double.NEGATIVE_INFINITY, 100) / BTU)
                .isCloseTo(3.413, within(1e-9));
    }

    @Test
    void variable_speed_heating_between_low_and_full() {
        double[] low = {18_000 * BTU, 1_000, 15_000 * BTU, 950};
        double seasonal =
                SeasonalRatings.heatingVariableSpeed(
                        HIGH,
                        low,
                        20_000 * BTU,
                        1_700,
                        0.25,
                        loads(),
                        f(-20),
                        f(-15),
                        1,
                        RatingBins.HEATING_REGION_IV);
        assertThat(seasonal / BTU).isBetween(hspf(0.25, 35_000, -20, -15), 13.0);
        // One bin in the middle of the modulating range, by hand: at 35 degF the load of
        // 20000 Btu/h is the intermediate test itself.
        RatingBins one = RatingBins.of("one", new double[] {35}, new double[] {1});
        assertThat(
                        SeasonalRatings.heatingVariableSpeed(
                                HIGH,
                                low,
                                20_000 * BTU,
                                1_700,
                                0.25,
                                new double[] {20_000 * BTU},
                                f(-20),
                                f(-15),
                                1,
                                one))
                .isCloseTo(20_000 * BTU / 1_700, within(1e-12));
        refused(
                () ->
                        SeasonalRatings.heatingVariableSpeed(
                                HIGH,
                                low,
                                5_000 * BTU,
                                1_700,
                                0.25,
                                loads(),
                                f(-20),
                                f(-15),
                                1,
                                RatingBins.HEATING_REGION_IV),
                "intermediate heating capacity at 35 degF");
        refused(
                () ->
                        SeasonalRatings.heatingVariableSpeed(
                                HIGH,
                                HIGH,
                                5_000 * BTU,
                                1_700,
                                0.25,
                                loads(),
                                f(-20),
                                f(-15),
                                1,
                                RatingBins.HEATING_REGION_IV),
                "need 6, 4 and 15");
    }

    @Test
    void a_season_of_full_load_bins_is_the_steady_efficiency() {
        RatingBins hot = RatingBins.of("hot", new double[] {102}, new double[] {1});
        double seer = SeasonalRatings.singleSpeed(10_000, 3_000, 10_600, 2_700, 0.25, hot);
        double q = 10_000 - 600.0 * 7 / 13;
        double p = 3_000 + 300.0 * 7 / 13;
        assertThat(seer).isCloseTo(q / p, within(1e-12));
    }

    @Test
    void bin_method_delivers_capacity_and_no_more() {
        // Reference cases CYC-BINM-09 to -12.
        double[] t = {67, 72, 77, 82, 87, 92, 97, 102};
        double[] h = {700, 850, 800, 600, 380, 180, 60, 12};
        double[] out = new double[BinMethod.RESULTS];
        BinMethod.cooling(
                1_500 * BTU * 1.8,
                f(75),
                4_500 * BTU,
                f(95),
                36_000 * BTU,
                3_000,
                f(82),
                38_000 * BTU,
                2_700,
                0.20,
                Arrays.stream(t).map(SeasonAndBillKernelTest::f).toArray(),
                h,
                out);
        assertThat(out[BinMethod.BALANCE]).isCloseTo(f(72), within(1e-10));
        assertThat(out[BinMethod.DELIVERED] / 1055.05585262)
                .isCloseTo(31_510_615.3846, within(1e-3));
        assertThat(out[BinMethod.ENERGY] / 3.6e6).isCloseTo(2_577.29564019, within(1e-7));
        assertThat(out[BinMethod.UNMET] / 1055.05585262).isCloseTo(229_384.615385, within(1e-3));
    }

    @Test
    void degree_days_by_integration() {
        // Reference case CYC-CDD-03, and a plain sum over the day.
        assertThat(DegreeDays.coolingOfSinusoidalDay(f(60), 10 / 1.8, f(65)) * 1.8)
                .isCloseTo(1.08997781044, within(5e-12));
        double sum = 0;
        int n = 1_000_000;
        for (int i = 0; i < n; i++) {
            sum += Math.max(0, 293 + 7 * Math.cos(2 * Math.PI * (i + 0.5) / n) - 295);
        }
        assertThat(DegreeDays.coolingOfSinusoidalDay(293, 7, 295)).isCloseTo(sum / n, within(1e-9));
        // Reference case CYC-DDE-01.
        assertThat(DegreeDays.energy(600 * BTU * 1.8, 1_500 / 1.8, 12 * BTU) / 3.6e6)
                .isCloseTo(1_800, within(1e-9));
    }

    @Test
    void evaporation_refill_is_the_integral_of_its_rate() {
        double wet = 720;
        double gamma = 0.33;
        double off = 900;
        double sum = 0;
        int n = 100_000;
        for (int i = 0; i < n; i++) {
            double t = (i + 0.5) * off / n;
            sum += Math.max(0, gamma * (1 - t * gamma / (2 * wet))) * off / n;
        }
        assertThat(LinearDecayEvaporation.refill(off, wet, gamma)).isCloseTo(sum, within(1e-6));
        // Reference cases CYC-LAT-07 and CYC-LATR-01.
        assertThat(LinearDecayEvaporation.refill(PartLoad.offTime(3, 0.05), 300, 2))
                .isCloseTo(300, within(1e-9));
        assertThat(LinearDecayEvaporation.netLatentRatio(60, 600, 600, 720, 0.33))
                .isCloseTo(0.658543389123, within(1e-12));
    }

    @Test
    void tariffs() {
        double[] limits = {500, 1_000};
        double[] prices = {0.12, 0.15, 0.22};
        // Reference cases CYC-TAR (without their fixed 9.50) and CYC-TARD-01.
        assertThat(Tariffs.blockCharge(0, limits, prices)).isZero();
        assertThat(Tariffs.blockCharge(500, limits, prices)).isCloseTo(60, within(1e-12));
        assertThat(Tariffs.blockCharge(500.01, limits, prices)).isCloseTo(60.0015, within(1e-12));
        assertThat(Tariffs.blockCharge(1_350, limits, prices)).isCloseTo(212, within(1e-12));
        assertThat(Tariffs.timeOfUseCharge(220, 600, 4.2, 0.31, 0.11, 8))
                .isCloseTo(167.8, within(1e-12));
    }

    @Test
    void months_hold_the_whole_year() {
        double[] hourly = new double[8_760];
        for (int i = 0; i < hourly.length; i++) {
            hourly[i] = 1 + 0.001 * i;
        }
        double[] peak = new double[12];
        double[] other = new double[12];
        double[] highest = new double[12];
        Tariffs.months(hourly, 15, 20, 1, peak, other, highest);
        assertThat(Arrays.stream(peak).sum() + Arrays.stream(other).sum())
                .isCloseTo(Arrays.stream(hourly).sum(), within(1e-6));
        assertThat(highest[0]).isEqualTo(hourly[743]);
        assertThat(highest[11]).isEqualTo(hourly[8_759]);
        // A common year that begins on a Monday has 261 weekdays with five peak hours each.
        Arrays.fill(hourly, 1);
        Tariffs.months(hourly, 15, 20, 1, peak, other, highest);
        assertThat(Arrays.stream(peak).sum()).isEqualTo(261 * 5);
        Tariffs.months(hourly, 22, 6, 0, peak, other, highest);
        assertThat(Arrays.stream(peak).sum()).isEqualTo(365 * 8);
        assertThat(Tariffs.isPeak(23, 22, 6)).isTrue();
        assertThat(Tariffs.isPeak(6, 22, 6)).isFalse();
        assertThat(Tariffs.isPeak(5, 5, 5)).isFalse();
        assertThat(Tariffs.monthDays(1)).isEqualTo(28);
    }

    @Test
    void bad_input_is_named() {
        refused(
                () -> Tariffs.blockCharge(1, new double[] {5}, new double[] {1}),
                "needs one price more than limits");
        refused(
                () -> Tariffs.blockCharge(1, new double[] {5, 5}, new double[] {1, 1, 1}),
                "block limit is 5.0 kWh, but must be above 5.0 kWh");
        refused(
                () -> Tariffs.blockCharge(-1, new double[0], new double[] {1}),
                "energy is -1.0 kWh");
        refused(
                () ->
                        Tariffs.months(
                                new double[24],
                                0,
                                0,
                                0,
                                new double[12],
                                new double[12],
                                new double[12]),
                "8760 hours");
        refused(() -> DegreeDays.energy(100, 10, 0), "performance is 0.0 W/W");
        refused(() -> DegreeDays.coolingOfSinusoidalDay(290, -1, 290), "daily amplitude is -1.0 K");
        refused(() -> LinearDecayEvaporation.refill(-1, 1, 1), "off-time is -1.0 s");
        refused(() -> LinearDecayEvaporation.refill(1, 0, 1), "moisture holding time is 0.0 s");
        refused(
                () -> RatingBins.of("x", new double[] {67}, new double[] {1.5}),
                "fractional hours of bin 67.0 degF are 1.5");
        refused(
                () -> RatingBins.of("x", new double[] {67, 72}, new double[] {0.6, 0.6}),
                "add up to 1.2");
        refused(() -> RatingBins.of("x", new double[0], new double[0]), "at least one");
        refused(
                () -> RatingBins.of("x", new double[] {167}, new double[] {1}),
                "bin temperature is 167.0 degF");
        refused(
                () ->
                        SeasonalRatings.variableSpeed(
                                10_000,
                                3_000,
                                10_600,
                                2_700,
                                5_000,
                                900,
                                5_500,
                                700,
                                4_000,
                                900,
                                0.25,
                                1,
                                RatingBins.COOLING),
                "intermediate capacity at 87 degF is 4000.0 W");
        refused(
                () ->
                        SeasonalRatings.singleSpeed(
                                0, 3_000, 10_600, 2_700, 0.25, RatingBins.COOLING),
                "capacity at 95 degF is 0.0 W");
        refused(
                () -> UnitSeason.rating(new double[5], 0.25, 1, RatingBins.COOLING),
                "tests have 5 numbers");
        refused(() -> FieldRules.freezingReturn(-1), "return air less saturated suction is -1.0 K");
        refused(
                () ->
                        BinMethod.cooling(
                                0,
                                297,
                                0,
                                308,
                                1e4,
                                3e3,
                                301,
                                1e4,
                                3e3,
                                0.2,
                                new double[1],
                                new double[1],
                                new double[4]),
                "conductance is 0.0 W/K");
        refused(
                () ->
                        BinMethod.cooling(
                                100,
                                297,
                                0,
                                308,
                                1e4,
                                3e3,
                                301,
                                1e4,
                                3e3,
                                0.2,
                                new double[2],
                                new double[1],
                                new double[4]),
                "2 temperatures and 1 hours");
    }

    @Test
    void field_rules() {
        // Reference cases CYC-FRZ-02, -04 and -05.
        assertThat(FieldRules.suctionAfter(f(35), f(78), f(74))).isCloseTo(f(31), within(1e-10));
        assertThat(FieldRules.freezingReturn(35 / 1.8)).isCloseTo(f(67), within(1e-10));
        assertThat(FieldRules.RETURN_FLOOR).isCloseTo(f(64), within(1e-10));
    }

    private static void refused(
            org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }
}
