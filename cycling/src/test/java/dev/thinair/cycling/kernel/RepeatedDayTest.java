package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A day run again and again until it repeats itself: how soon, and whether it does. */
class RepeatedDayTest {

    private static final double[] AIR = {1, 0, 0, 0};
    private static final double SET = 297.15;

    /**
     * Air, furniture and two equal outer walls of which one has the sun: what divides the walls is
     * felt by no thermostat and taken by no unit.
     */
    private static final double[][] CONDUCTANCE = {
        {900, -400, -200, -200}, {-400, 400, 0, 0}, {-200, 0, 260, 0}, {-200, 0, 0, 260}
    };

    private static double[] capacity(double mass) {
        return new double[] {9e5, 4e6 * mass, 2e7 * mass, 2e7 * mass};
    }

    private static final double[] OUTDOOR = {
        296, 296, 297, 299, 301, 303, 305, 306, 307, 307, 306, 305,
        304, 303, 302, 301, 300, 299, 298, 298, 297, 297, 296, 296
    };

    private static HouseDrive drive(double load, double airMass) {
        double[][] heat = new double[24][];
        double[] water = new double[24];
        double[] flow = new double[24];
        double[] gain = new double[24];
        for (int i = 0; i < 24; i++) {
            double sun = i > 2 && i < 15 ? 3000 * Math.sin(Math.PI * (i - 2) / 13.0) : 0;
            heat[i] =
                    new double[] {
                        100 * OUTDOOR[i] + load + 0.5 * sun,
                        0.3 * sun,
                        60 * OUTDOOR[i] + 0.5 * sun,
                        60 * OUTDOOR[i]
                    };
            water[i] = 0.010 + 5e-4 * Math.cos(2 * Math.PI * i / 24);
            flow[i] = 0.05;
            gain[i] = 1e-4;
        }
        return HouseDrive.of(3600, true, heat, OUTDOOR, water, flow, gain, airMass);
    }

    private static ThermostatEngine engine(double mass) {
        return new ThermostatEngine(ModalHouse.of(capacity(mass), CONDUCTANCE), AIR, AIR, AIR);
    }

    private static MarchedHouse marched(double mass, HouseDrive drive, double[] start) {
        return new MarchedHouse(capacity(mass), CONDUCTANCE, AIR, AIR, AIR, drive, 0, start);
    }

    /** Mean node temperatures of a house whose mean heat is this. */
    private static double[] steady(double[] heat) {
        return new LUDecomposition(new Array2DRowRealMatrix(CONDUCTANCE))
                .getSolver()
                .solve(new ArrayRealVector(heat))
                .toArray();
    }

    private static double[] meanHeat(HouseDrive drive) {
        double[] mean = new double[drive.nodes()];
        for (double[] mark : drive.heat) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += mark[i] / drive.heat.length;
            }
        }
        return mean;
    }

    private static void comesBack(
            double mass, HouseDrive drive, RunRecord run, double taken, double tolerance) {
        double[] start = run.endNodes();
        MarchedHouse house = marched(mass, drive, start);
        house.taken = taken;
        house.march(86_400);
        for (int i = 0; i < start.length; i++) {
            assertThat(house.y[i]).isCloseTo(start[i], within(tolerance));
        }
        double mean = 0;
        for (int h = 0; h < 24; h++) {
            mean += run.meanTemperature(h) / 24;
        }
        double[] heat = meanHeat(drive);
        heat[0] -= taken;
        assertThat(mean).isCloseTo(steady(heat)[0], within(tolerance));
    }

    private static RunRecord repeated(
            double mass, HouseDrive drive, CycleControl control, UnitResponse unit) {
        return engine(mass).repeat(drive, control, unit, 0.009, 1e-6, 20, 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.2, 1, 5, 50})
    void a_house_without_cooling_comes_back_to_where_it_was(double mass) {
        HouseDrive drive = drive(500, 5000);
        RunRecord run =
                repeated(mass, drive, CycleControl.single(345, 1), UnitResponse.constant(1, 1));
        assertThat(run.repeats()).isTrue();
        assertThat(run.repeatedDays()).isLessThanOrEqualTo(3);
        assertThat(run.eventCount()).isZero();
        comesBack(mass, drive, run, 0, 2e-6);
        // Nothing takes water out: outdoor air and what is given off indoors.
        assertThat(run.endHumidityRatio(23)).isCloseTo(0.010 + 1e-4 / 0.05, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.2, 1, 5, 50})
    void a_unit_that_never_rests_comes_back_to_where_it_was(double mass) {
        HouseDrive drive = drive(6000, 5000);
        RunRecord run =
                repeated(
                        mass,
                        drive,
                        CycleControl.single(SET, 1).withStartUp(60),
                        UnitResponse.constant(3000, 1));
        assertThat(run.repeats()).isTrue();
        assertThat(run.repeatedDays()).isLessThanOrEqualTo(4);
        assertThat(run.eventCount()).isZero();
        assertThat(run.totalOnSeconds()).isCloseTo(86_400, within(1e-6));
        assertThat(run.longestRun()).isCloseTo(86_400, within(1e-6));
        comesBack(mass, drive, run, 3000, 2e-6);
    }

    @ParameterizedTest
    @CsvSource({
        "0.02, SINGLE",
        "0.2, SINGLE",
        "1, SINGLE",
        "5, SINGLE",
        "50, SINGLE",
        "0.2, TWO",
        "5, TWO",
        "0.2, VARIABLE",
        "5, VARIABLE"
    })
    void a_house_that_cycles_repeats_its_day_within_few_passes(
            double mass, CycleControl.Staging staging) {
        HouseDrive drive = drive(2500, 5000);
        CycleControl control =
                CycleControl.single(SET, 1)
                        .withStartUp(60)
                        .withStaging(staging, staging == CycleControl.Staging.SINGLE ? 1 : 0.5);
        UnitResponse unit = TestHouse.unit(0.8);
        ThermostatEngine engine = engine(mass);
        RunRecord run = engine.repeat(drive, control, unit, 0.009, 0.01, 60, 0);
        assertThat(run.repeats()).isTrue();
        assertThat(run.repeatedDays()).isLessThanOrEqualTo(4);
        assertThat(run.longestRun()).isLessThanOrEqualTo(86_400);
        RunRecord next =
                engine.run(drive, control, unit, run.endNodes(), run.endHumidityRatio(23), 0);
        assertThat(next.totalDelivered())
                .isCloseTo(run.totalDelivered(), within(0.007 * run.totalDelivered()));
        assertThat(next.endHumidityRatio(23)).isCloseTo(run.endHumidityRatio(23), within(1e-5));
        for (int i = 1; i < 4; i++) {
            assertThat(next.endNodes()[i]).isCloseTo(run.endNodes()[i], within(0.03));
        }
        // Mean temperatures of the slow nodes belong to the mean heat and the mean cooling.
        double cooling = run.totalDelivered() / 86_400;
        double[] heat = meanHeat(drive);
        heat[0] -= cooling;
        double mean = 0;
        for (int h = 0; h < 24; h++) {
            mean += run.meanTemperature(h) / 24;
        }
        assertThat(mean).isCloseTo(steady(heat)[0], within(0.06));
        assertThat(mean).isBetween(SET - 0.6, SET + 2.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {500, 5000, 40_000})
    void humidity_is_led_to_its_cycle_from_wherever_it_starts(double airMass) {
        HouseDrive drive = drive(2500, airMass);
        CycleControl control = CycleControl.single(SET, 1).withStartUp(60);
        UnitResponse unit = TestHouse.unit(0.8);
        RunRecord dry = engine(0.2).repeat(drive, control, unit, 0.004, 0.01, 60, 0);
        RunRecord damp = engine(0.2).repeat(drive, control, unit, 0.016, 0.01, 60, 0);
        assertThat(dry.repeats()).isTrue();
        assertThat(damp.repeats()).isTrue();
        assertThat(dry.repeatedDays()).isLessThanOrEqualTo(6);
        assertThat(damp.repeatedDays()).isLessThanOrEqualTo(6);
        double days = airMass / 0.05 / 86_400;
        assertThat(dry.endHumidityRatio(23))
                .isCloseTo(damp.endHumidityRatio(23), within(4e-5 * (1 + days)));
        // A day's water: what came in went out by the coil.
        assertThat(Math.abs(dry.waterStored())).isLessThan(2.1e-5 * airMass);
    }

    @Test
    void a_day_that_is_cut_short_says_so() {
        HouseDrive drive = drive(2500, 5000);
        RunRecord run =
                engine(1)
                        .repeat(
                                drive,
                                CycleControl.single(SET, 1),
                                TestHouse.unit(0.8),
                                0.009,
                                1e-6,
                                1,
                                0);
        assertThat(run.repeats()).isFalse();
        assertThat(run.repeatedDays()).isEqualTo(1);
        assertThat(run.totalStarts()).isPositive();
    }

    @Test
    void what_divides_two_equal_walls_goes_its_own_way() {
        HouseDrive drive = drive(2500, 5000);
        double[] start = {297, 297.5, 300, 295};
        RunRecord run =
                engine(1)
                        .run(
                                drive,
                                CycleControl.single(SET, 1),
                                UnitResponse.constant(9000, 1),
                                start,
                                0.009,
                                0);
        MarchedHouse house = marched(1, drive, start);
        // With the engine's own switch times.
        int e = 0;
        while (e <= run.eventCount()) {
            double to = e < run.eventCount() ? run.eventTime(e) : 86_400;
            house.march(to - house.time);
            house.taken = house.taken > 0 ? 0 : 9000;
            e++;
        }
        assertThat(run.eventCount()).isGreaterThan(20);
        for (int i = 0; i < 4; i++) {
            assertThat(run.endNodes()[i]).isCloseTo(house.y[i], within(1e-5));
        }
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-12);
    }

    @Test
    void days_that_take_turns_are_given_up_soon_and_say_how_far_they_miss() {
        HouseDrive drive = drive(2500, 5000);
        double tolerance = 5e-4;
        int given = 0;
        for (int i = 0; i < 120; i++) {
            CycleControl control =
                    CycleControl.single(SET, 0.4 + 0.02 * i)
                            .withStartUp(60)
                            .withMinimumOff(i % 3 == 0 ? 420 : 0);
            RunRecord run =
                    engine(0.02 + 0.003 * i)
                            .repeat(
                                    drive,
                                    control,
                                    TestHouse.unit(0.6 + 0.01 * i),
                                    0.009,
                                    tolerance,
                                    1000,
                                    0);
            assertThat(run.repeatedDays()).isLessThan(100);
            if (run.repeats()) {
                assertThat(run.repeatError()).isLessThan(tolerance);
            } else {
                given++;
                assertThat(run.repeatedDays()).isGreaterThan(20);
                assertThat(run.repeatError()).isBetween(1e-4, 0.3);
            }
        }
        assertThat(given).isBetween(1, 30);
    }
}
