package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every branch of the staged ratings in a season of one temperature, reckoned here by hand from the
 * procedure's words: which stages run for how long, and what the backup makes up. Numbers invented
 * and round, in watts.
 */
class SeasonalRatingsBinTest {

    /** Resistance heat as the procedures print it, 3.413 Btu/(W h), over the exact figure. */
    private static final double BACKUP = 3600 / 1055.05585262 / 3.413;

    private static final double CD = 0.2;

    // Heating: Q47, P47, Q35, P35, Q17, P17 and Q62, P62, Q47, P47, Q35, P35, Q17, P17.
    private static final double[] HIGH = {12_000, 3_200, 9_000, 3_000, 7_200, 2_800};
    private static final double[] LOW = {9_000, 1_500, 7_500, 1_450, 5_400, 1_400, 4_500, 1_300};
    private static final double[] FULL = HIGH;
    private static final double[] SLOW = {6_000, 1_000, 4_500, 900};

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    private static RatingBins at(double fahrenheit) {
        return RatingBins.of("one", new double[] {fahrenheit}, new double[] {1});
    }

    /** Part of the time at which a stage of this load factor uses its power, standard's Cd. */
    private static double cycling(double clf) {
        return clf / (1 - CD * (1 - clf));
    }

    private static double twoStage(
            double degF, double load, double lockOut, double off, double on) {
        return SeasonalRatings.heatingTwoStage(
                HIGH, LOW, CD, CD, lockOut, new double[] {load}, f(off), f(on), 1, at(degF));
    }

    private static double variable(double degF, double load, double off, double on) {
        return SeasonalRatings.heatingVariableSpeed(
                FULL, SLOW, 6_000, 1_500, CD, new double[] {load}, f(off), f(on), 1, at(degF));
    }

    @ParameterizedTest
    @CsvSource({
        // degF, low capacity and power there: through 47 and 62 from 40 up,
        "52, 8000, 1466.6666666666667",
        "40, 6800, 1426.6666666666667",
        // through 17 and 35 from 17 to 40,
        "39.999999999999, 5650, 1427.7777777777778",
        "26, 4950, 1350",
        "17, 4500, 1300",
        // through 17 and 47 below.
        "7, 3500, 1250",
    })
    void low_stage_cycles(double degF, double capacity, double power) {
        double load = 0.6 * capacity;
        assertThat(twoStage(degF, load, f(-60), -30, -20))
                .isCloseTo(load / (power * cycling(0.6)), within(1e-9));
    }

    @Test
    void both_stages_alternate() {
        // 26 degF, halfway between 17 and 35: high 8100 W at 2900 W, low 4950 W at 1350 W.
        double load = 4_950 + 0.25 * (8_100 - 4_950);
        double power = 0.75 * 1_350 + 0.25 * 2_900;
        assertThat(twoStage(26, load, f(-60), -30, -20)).isCloseTo(load / power, within(1e-12));
    }

    @Test
    void locked_out_low_stage_lets_the_high_stage_cycle() {
        double load = 0.6 * 8_100;
        assertThat(twoStage(26, load, f(26), -30, -20))
                .isCloseTo(load / (2_900 * cycling(0.6)), within(1e-12));
        assertThat(twoStage(26, load, f(25.999), -30, -20))
                .isCloseTo(load / (1_350 * cycling(load / 4_950)), within(1e-12));
    }

    @Test
    void backup_makes_up_what_the_high_stage_cannot() {
        assertThat(twoStage(26, 10_000, f(-60), -30, -20))
                .isCloseTo(10_000 / (2_900 + 1_900 * BACKUP), within(1e-12));
    }

    @Test
    void backup_makes_up_a_compressor_that_is_off_or_half_the_time_off() {
        // Between cut-out and cut-in the compressor counts half; both limits belong to the colder
        // side.
        double load = 0.6 * 4_950;
        double half = 0.5 * 1_350 * cycling(0.6) + 0.5 * load * BACKUP;
        assertThat(twoStage(26, load, f(-60), 25, 26)).isCloseTo(load / half, within(1e-12));
        assertThat(twoStage(26, load, f(-60), 26, 27)).isCloseTo(1 / BACKUP, within(1e-12));
        assertThat(twoStage(26, 10_000, f(-60), 25, 26))
                .isCloseTo(10_000 / (0.5 * 2_900 + (10_000 - 0.5 * 8_100) * BACKUP), within(1e-12));
        double variableHalf = 0.5 * SLOW[3] * cycling(0.5) + 0.5 * 2_250 * BACKUP;
        assertThat(variable(47, 2_250, 46, 47)).isCloseTo(2_250 / variableHalf, within(1e-12));
        assertThat(variable(47, 2_250, 47, 48)).isCloseTo(1 / BACKUP, within(1e-12));
    }

    @Test
    void slow_speed_cycles_and_full_speed_leaves_the_rest_to_the_backup() {
        // 52 degF: a third of the way from 47 to 62.
        assertThat(variable(52, 2_500, -30, -20))
                .isCloseTo(2_500 / ((900 + 100 / 3.0) * cycling(0.5)), within(1e-12));
        assertThat(variable(26, 10_000, -30, -20))
                .isCloseTo(10_000 / (2_900 + 1_900 * BACKUP), within(1e-12));
    }

    @Test
    void efficiency_is_linear_in_heat_between_the_speeds() {
        // At 35 degF: slow 3300 W at 820 W, test speed 6000 W at 1500 W, full 9000 W at 3000 W.
        double slow = 3_300 / 820.0;
        double test = 6_000 / 1_500.0;
        double full = 9_000 / 3_000.0;
        assertThat(variable(35, 4_650, -30, -20)).isCloseTo(0.5 * (slow + test), within(1e-12));
        assertThat(variable(35, 7_500, -30, -20)).isCloseTo(0.5 * (test + full), within(1e-12));
        assertThat(variable(35, 6_000, -30, -20)).isCloseTo(test, within(1e-12));
    }

    @Test
    void the_test_speed_leans_between_slow_and_full() {
        // Away from 35 degF the test speed's lines rise by a mean of the other two lines' slopes,
        // weighted by where it stands between them: here 2700/5700 of the way in capacity and
        // 680/2180 in power. Slopes per degF: 100 and 100 W of capacity, 6.667 and 11.111 W of
        // power.
        double t = 26;
        double qv = 6_000 + 100 * (t - 35);
        double weight = 680 / 2_180.0;
        double pv = 1_500 + (100 / 15.0 * (1 - weight) + 200 / 18.0 * weight) * (t - 35);
        assertThat(variable(t, qv, -30, -20)).isCloseTo(qv / pv, within(1e-12));
        // The same with unlike slopes of capacity: full gets 8100 W at 17 degF, 50 W/degF.
        double[] full = FULL.clone();
        full[4] = 8_100;
        double lean = 2_700 / 5_700.0;
        qv = 6_000 + (100 * (1 - lean) + 50 * lean) * (t - 35);
        assertThat(
                        SeasonalRatings.heatingVariableSpeed(
                                full,
                                SLOW,
                                6_000,
                                1_500,
                                CD,
                                new double[] {qv},
                                f(-30),
                                f(-20),
                                1,
                                at(t)))
                .isCloseTo(qv / pv, within(1e-12));
    }

    @Test
    void load_lines() {
        // Appendix M line falls from 0.77 of the requirement at design to nothing at 65 degF.
        assertThat(SeasonalRatings.heatingLoadM(f(5), f(5), 10_000)).isCloseTo(7_700, within(1e-9));
        assertThat(SeasonalRatings.heatingLoadM(f(35), f(5), 10_000))
                .isCloseTo(3_850, within(1e-9));
        assertThat(SeasonalRatings.heatingLoadM(f(65), f(5), 10_000)).isCloseTo(0, within(1e-9));
        // Appendix M1 line from C times the cooling capacity to nothing at the zero-load point.
        assertThat(SeasonalRatings.heatingLoadM1(f(5), f(55), f(5), 1.15, 10_000))
                .isCloseTo(11_500, within(1e-9));
        assertThat(SeasonalRatings.heatingLoadM1(f(30), f(55), f(5), 1.15, 10_000))
                .isCloseTo(5_750, within(1e-9));
        assertThat(SeasonalRatings.heatingLoadM1(f(60), f(55), f(5), 1.15, 10_000)).isZero();
        // Cooling: full capacity over 1.1 at 95 degF.
        assertThat(SeasonalRatings.coolingLoad(f(95), 11_000, 1)).isCloseTo(10_000, within(1e-9));
        assertThat(SeasonalRatings.coolingLoad(f(80), 11_000, 0.93)).isCloseTo(4_650, within(1e-9));
    }

    @Test
    void frost_line_and_its_ends() {
        assertThat(SeasonalRatings.heatingLine(f(26), 12_000, 9_000, 7_200))
                .isCloseTo(8_100, within(1e-9));
        // At 45 degF and at 17 degF the frostless line through 17 and 47 holds.
        assertThat(SeasonalRatings.heatingLine(f(45), 12_000, 9_000, 7_200))
                .isCloseTo(12_000 - 2 * 160, within(1e-9));
        assertThat(SeasonalRatings.heatingLine(f(7), 12_000, 9_000, 7_200))
                .isCloseTo(7_200 - 10 * 160, within(1e-9));
    }

    @Test
    void a_heat_pump_weaker_than_resistance_heat_stays_off() {
        double weak =
                SeasonalRatings.heatingM(
                        12_000, 3_200, 9_000, 3_000, 2_000, 2_800, CD, 10_000, f(5), f(-30), f(-20),
                        1, at(17));
        assertThat(weak).isCloseTo(1 / BACKUP, within(1e-12));
    }

    @Test
    void single_speed_heating_cycles_or_runs_on() {
        double load = SeasonalRatings.heatingLoadM(f(26), f(5), 10_000);
        assertThat(
                        SeasonalRatings.heatingM(
                                12_000, 3_200, 9_000, 3_000, 7_200, 2_800, CD, 10_000, f(5), f(-30),
                                f(-20), 1.02, at(26)))
                .isCloseTo(1.02 * load / (2_900 * cycling(load / 8_100)), within(1e-12));
        double much = SeasonalRatings.heatingLoadM(f(26), f(5), 20_000);
        assertThat(
                        SeasonalRatings.heatingM(
                                12_000, 3_200, 9_000, 3_000, 7_200, 2_800, CD, 20_000, f(5), f(25),
                                f(26), 1, at(26)))
                .isCloseTo(much / (0.5 * 2_900 + (much - 4_050) * BACKUP), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {72, 80, 90, 97, 102})
    void cooling_two_stage_in_one_bin(double degF) {
        double load = (degF - 65) / 30 * 10_000 / 1.1;
        double q1 = 8_000 - (degF - 67) * 500 / 15;
        double p1 = 1_500 + (degF - 67) * 300 / 15;
        double q2 = 10_600 - (degF - 82) * 600 / 13;
        double p2 = 2_700 + (degF - 82) * 300 / 13;
        double share = (load - q1) / (q2 - q1);
        double power =
                load >= q2 ? p2 : load <= q1 ? p1 * cycling(load / q1) : p1 + share * (p2 - p1);
        assertThat(
                        SeasonalRatings.twoStage(
                                10_000,
                                3_000,
                                10_600,
                                2_700,
                                7_500,
                                1_800,
                                8_000,
                                1_500,
                                CD,
                                CD,
                                Double.POSITIVE_INFINITY,
                                at(degF)))
                .isCloseTo(Math.min(load, q2) / power, within(1e-12));
        // Locked out at and above: the high stage cycles.
        assertThat(
                        SeasonalRatings.twoStage(
                                10_000, 3_000, 10_600, 2_700, 7_500, 1_800, 8_000, 1_500, CD, CD,
                                f(degF), at(degF)))
                .isCloseTo(
                        Math.min(load, q2) / (p2 * cycling(Math.min(1, load / q2))), within(1e-12));
    }

    @Test
    void lines_that_cross_zero_at_a_bin_are_refused() {
        // 692 W less for each degF above 82: nothing is left long before 102.
        assertThatThrownBy(() -> SeasonalRatings.singleSpeed(1_000, 900, 10_000, 300, CD, at(102)))
                .hasMessageStartingWith("capacity at bin 312");
        assertThatThrownBy(
                        () ->
                                SeasonalRatings.twoStage(
                                        10_000,
                                        3_000,
                                        10_600,
                                        2_700,
                                        1_000,
                                        1_800,
                                        8_000,
                                        1_500,
                                        CD,
                                        CD,
                                        Double.POSITIVE_INFINITY,
                                        at(90)))
                .hasMessageStartingWith("capacity at bin 305");
        // 60 W per degF of power from 47 to 62 is less than nothing at 17; heat is still asked of
        // the slow speed there.
        assertThatThrownBy(
                        () ->
                                SeasonalRatings.heatingVariableSpeed(
                                        FULL,
                                        new double[] {6_000, 1_800, 4_500, 900},
                                        6_000,
                                        1_500,
                                        CD,
                                        new double[] {2_000},
                                        f(-30),
                                        f(-20),
                                        1,
                                        at(17)))
                .hasMessageStartingWith("power at bin 264");
        // Where full speed cannot meet the load the slow speed's line is not needed.
        assertThat(
                        SeasonalRatings.heatingVariableSpeed(
                                FULL,
                                new double[] {6_000, 1_800, 4_500, 900},
                                6_000,
                                1_500,
                                CD,
                                new double[] {9_000},
                                f(-30),
                                f(-20),
                                1,
                                at(17)))
                .isCloseTo(9_000 / (2_800 + 1_800 * BACKUP), within(1e-12));
    }
}
