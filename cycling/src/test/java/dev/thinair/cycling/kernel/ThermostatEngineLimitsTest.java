package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the engine does at the borders of what it takes, and a few refusals of its own. */
class ThermostatEngineLimitsTest {

    private static final TestHouse HOUSE = new TestHouse(1, 1, 0.2);
    private static final CycleControl CONTROL = CycleControl.single(297.15, 1);
    private static final UnitResponse UNIT = UnitResponse.constant(9000, 2500);

    private static double[] filled(int n, double value) {
        double[] a = new double[n];
        Arrays.fill(a, value);
        return a;
    }

    private static RunRecord run(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            double[] start,
            double w,
            double trace) {
        return HOUSE.engine().run(drive, control, unit, start, w, trace);
    }

    private static CycleControl scheduled(double... setpoint) {
        return new CycleControl(
                setpoint,
                1,
                CycleControl.Staging.SINGLE,
                1,
                1,
                Double.POSITIVE_INFINITY,
                0,
                0,
                300,
                900,
                0,
                0,
                0,
                0);
    }

    static Stream<Arguments> refused() {
        HouseDrive day = HOUSE.day(30);
        HouseDrive other = new TestHouse(2, 1, 1).day(30);
        double[] air = HOUSE.air();
        double[] start = filled(HOUSE.n, 297);
        ThermostatEngine engine = HOUSE.engine();
        return Stream.of(
                Arguments.of(
                        call(
                                () ->
                                        new ThermostatEngine(
                                                HOUSE.modal(), air, air, new double[] {1.5, 0, 0})),
                        "supply shares of node 0.*1.5"),
                Arguments.of(
                        call(() -> run(day, scheduled(297, 298), UNIT, start, 0, 0)),
                        "setpoint has 2 values, but must have 1 or one for each of 24 intervals"),
                Arguments.of(
                        call(() -> engine.repeat(day, CONTROL, UNIT, 0, 0.01, 9, 2e9)),
                        "time between points of the trace"),
                Arguments.of(
                        call(() -> engine.repeat(day, CONTROL, UNIT, 0.3, 0.01, 9, 0)),
                        "humidity ratio at the start"),
                Arguments.of(
                        call(() -> engine.repeat(day, CONTROL, null, 0, 0.01, 9, 0)),
                        "needs a drive"),
                Arguments.of(call(() -> engine.heldAtSetpoint(day, null)), "the house has 3"),
                Arguments.of(
                        call(() -> engine.heldAtSetpoint(other, CONTROL)),
                        "drive is for 4 nodes, the house has 3"));
    }

    private static ThrowingCallable call(ThrowingCallable of) {
        return of;
    }

    @ParameterizedTest
    @MethodSource("refused")
    void what_does_not_fit_is_refused_by_name(ThrowingCallable call, String says) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching("(?s).*" + says + ".*");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 1e9, -1e9, Double.POSITIVE_INFINITY})
    void a_unit_that_gives_no_capacity_is_named_with_its_state(double sensible) {
        UnitResponse broken =
                (stage, to, wo, tr, w, out) -> {
                    Arrays.fill(out, 0);
                    out[UnitResponse.SENSIBLE] = sensible;
                };
        assertThatThrownBy(
                        () -> run(HOUSE.day(33), CONTROL, broken, filled(HOUSE.n, 299), 0.009, 0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("sensible capacity of " + sensible + " W at outdoor")
                .hasMessageContaining("humidity ratio 0.009");
    }

    @Test
    void a_thermostat_without_a_band_worth_the_name_ends_in_an_exception() {
        CycleControl hair = CycleControl.single(297.15, 1e-8);
        assertThatThrownBy(() -> run(HOUSE.day(33), hair, UNIT, filled(HOUSE.n, 297), 0, 0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("200000 switches in interval");
    }

    @Test
    void the_start_of_a_run_is_the_mean_house_held_at_the_mean_setpoint() {
        HouseDrive day = HOUSE.day(31);
        double[] setpoint = filled(24, 296);
        Arrays.fill(setpoint, 12, 24, 299);
        double[] held = HOUSE.engine().heldAtSetpoint(day, scheduled(setpoint));
        assertThat(held[0]).isCloseTo(297.5, within(1e-9));
        // Furniture and wall: their mean heat leaves them.
        for (int i = 1; i < HOUSE.n; i++) {
            double heat = 0;
            for (double[] mark : day.heat) {
                heat += mark[i] / 24;
            }
            for (int j = 0; j < HOUSE.n; j++) {
                heat -= HOUSE.conductance[i][j] * held[j];
            }
            assertThat(heat).isCloseTo(0, within(1e-6));
        }
        // A house that stays below runs free: no cooling, so its air is in balance too.
        HouseDrive cool = HOUSE.day(12);
        double[] free = HOUSE.engine().heldAtSetpoint(cool, CONTROL);
        double heat = 0;
        for (double[] mark : cool.heat) {
            heat += mark[0] / 24;
        }
        for (int j = 0; j < HOUSE.n; j++) {
            heat -= HOUSE.conductance[0][j] * free[j];
        }
        assertThat(heat).isCloseTo(0, within(1e-6));
        assertThat(free[0]).isLessThan(296);
    }

    @Test
    void a_year_that_does_not_repeat_starts_from_its_first_day() {
        HouseDrive year = HOUSE.year(24 * 30);
        double[] held = HOUSE.engine().heldAtSetpoint(year, CycleControl.single(340, 1));
        double heat = 0;
        for (int m = 0; m < 24; m++) {
            heat += year.heat[m][0] / 24;
        }
        for (int j = 0; j < HOUSE.n; j++) {
            heat -= HOUSE.conductance[0][j] * held[j];
        }
        assertThat(heat).isCloseTo(0, within(1e-6));
    }

    @Test
    void a_coil_that_would_wet_the_air_takes_nothing() {
        // A slope far steeper than the removal: a little drier than looked up, and it turns round.
        UnitResponse steep =
                (stage, to, wo, tr, w, out) -> {
                    Arrays.fill(out, 0);
                    out[UnitResponse.SENSIBLE] = 5000 * (1 + 0.1 * (tr - 297));
                    out[UnitResponse.MOISTURE] = 1e-9;
                    out[UnitResponse.MOISTURE_SLOPE] = 1;
                    out[UnitResponse.CONDENSATE] = 1e-9;
                };
        int n = 25;
        double[][] heat = HOUSE.year(24).heat;
        double[] outdoor = filled(n, 303);
        for (double[] mark : heat) {
            mark[0] += 3000;
        }
        HouseDrive drive =
                HouseDrive.of(
                        3600,
                        false,
                        heat,
                        outdoor,
                        filled(n, 0.002),
                        filled(n, 0.05),
                        filled(n, 1e-5),
                        2000);
        RunRecord run = run(drive, CONTROL, steep, filled(HOUSE.n, 297), 0.012, 0);
        double rest = 0.002 + 1e-5 / 0.05;
        assertThat(run.totalStarts()).isGreaterThan(5);
        for (int h = 0; h < 24; h++) {
            double alone = rest + (0.012 - rest) * Math.exp(-0.05 / 2000 * 3600 * (h + 1));
            assertThat(run.endHumidityRatio(h)).isCloseTo(alone, within(1.5e-4));
            assertThat(run.removedWater(h)).isGreaterThanOrEqualTo(0);
        }
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
    }

    @Test
    void water_in_a_sealed_house_is_plain_arithmetic() {
        UnitResponse coil =
                (stage, to, wo, tr, w, out) -> {
                    Arrays.fill(out, 0);
                    out[UnitResponse.SENSIBLE] = 7000;
                    out[UnitResponse.MOISTURE] = 4e-4;
                    out[UnitResponse.CONDENSATE] = 4e-4;
                };
        HouseDrive day = HOUSE.day(30);
        HouseDrive sealed =
                HouseDrive.of(
                        3600,
                        true,
                        day.heat,
                        day.outdoorDryBulb,
                        filled(24, 0.009),
                        new double[24],
                        filled(24, 1e-4),
                        900);
        RunRecord run = run(sealed, CONTROL, coil, filled(HOUSE.n, 297), 0.02, 0);
        double w = 0.02;
        for (int h = 0; h < 24; h++) {
            w += (1e-4 * 3600 - 4e-4 * run.onSeconds(h)) / 900;
            assertThat(run.endHumidityRatio(h)).isCloseTo(w, within(1e-9));
            assertThat(run.removedWater(h)).isCloseTo(4e-4 * run.onSeconds(h), within(1e-9));
        }
        assertThat(run.waterIn()).isCloseTo(1e-4 * 86_400, within(1e-9));
        assertThat(run.totalOnSeconds()).isGreaterThan(7200);
    }

    @Test
    void a_start_up_as_slow_as_the_house_itself_is_no_special_case() {
        double r = 0.005;
        double c = 3e5;
        double tau = r * c;
        double[][] heat = new double[13][1];
        double[] outdoor = filled(13, 308);
        for (double[] mark : heat) {
            mark[0] = 308 / r + 1000;
        }
        HouseDrive drive = HouseDrive.dry(3600, false, heat, outdoor);
        RunRecord run =
                TestHouse.oneNode(r, c)
                        .run(
                                drive,
                                CycleControl.single(297.15, 1).withStartUp(tau),
                                UnitResponse.constant(8000, 1),
                                new double[] {297.15},
                                0,
                                0);
        // T' + T / tau = (rest + r Q e^(-t/tau)) / tau from the start: a term t e^(-t/tau).
        double rest = 308 + r * (1000 - 8000);
        assertThat(run.completedRuns()).isGreaterThan(3);
        for (int e = 0; e + 1 < run.eventCount(); e += 2) {
            double t = run.eventTime(e + 1) - run.eventTime(e);
            double end = rest + (297.65 - rest + r * 8000 * t / tau) * Math.exp(-t / tau);
            assertThat(end).isCloseTo(296.65, within(5e-4));
        }
    }
}
