package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every figure of a run against the same rules on a house marched at its nodes. The unit's figures
 * depend on its stage alone, so that nothing but errors divides the two.
 */
class ThermostatEngineMarchTest {

    private static final double SET = 297.15;

    /** Two rooms, their furniture and the building; each row a different weight. */
    private static final double[] CAPACITY = {9e5, 5e5, 3e6, 2e7};

    private static final double[][] CONDUCTANCE = {
        {1000, -200, -500, -200},
        {-200, 650, -250, -150},
        {-500, -250, 800, -50},
        {-200, -150, -50, 500}
    };

    private static final double[] SENSOR = {0.7, 0.2, 0.1, 0};
    private static final double[] RETURNED = {0.5, 0.5, 0, 0};
    private static final double[] SUPPLY = {0.6, 0.4, 0, 0};
    private static final double[] START = {297.3, 297.9, 296.5, 298.4};
    private static final double[] SUN = {3500, 5500, 9000, 10500, 6000, 3000, 2500, 4000};

    private static HouseDrive drive(boolean periodic, double interval) {
        int n = SUN.length;
        double[][] heat = new double[n][];
        double[] outdoor = new double[n];
        double[] water = new double[n];
        double[] flow = new double[n];
        double[] gain = new double[n];
        for (int i = 0; i < n; i++) {
            outdoor[i] = 301 + SUN[i] / 2500;
            heat[i] =
                    new double[] {
                        100 * outdoor[i] + 0.5 * SUN[i],
                        50 * outdoor[i] + 0.3 * SUN[i],
                        0,
                        100 * outdoor[i] + 0.2 * SUN[i]
                    };
            water[i] = 0.012 + 2e-7 * SUN[i];
            flow[i] = 0.05 + 3e-6 * SUN[i];
            gain[i] = 1e-4 + 2e-8 * SUN[i];
        }
        return HouseDrive.of(interval, periodic, heat, outdoor, water, flow, gain, 2500);
    }

    /** More than in proportion at part speed; figures of their own shape in each column. */
    private static UnitResponse unit(double size) {
        return (stage, to, wo, tr, w, out) -> {
            out[UnitResponse.SENSIBLE] = size * stage * (1.2 - 0.2 * stage);
            out[UnitResponse.MOISTURE] = 5e-4 * stage * (0.9 + 0.1 * stage);
            out[UnitResponse.MOISTURE_SLOPE] = 0;
            out[UnitResponse.POWER] = 2600 * stage * (0.6 + 0.4 * stage);
            out[UnitResponse.COIL] = 286 - 3 * stage - 0.5 * stage * stage;
            out[UnitResponse.SUCTION] = 282 - 4 * stage + 0.25 * stage * stage;
            out[UnitResponse.CONDENSATE] = 6e-4 * stage * (0.9 + 0.1 * stage);
        };
    }

    private static CycleControl control(
            CycleControl.Staging staging,
            double low,
            double startUp,
            double delay,
            double minimumOff,
            double fan,
            double gives) {
        return new CycleControl(
                new double[] {SET},
                0.8,
                staging,
                low,
                0.3,
                delay,
                minimumOff,
                startUp,
                240,
                700,
                20 + fan,
                fan,
                240,
                gives);
    }

    /** What the engine tells a unit with a memory. */
    private static final class Told implements UnitResponse {
        final UnitResponse unit;
        double on;
        double off;
        double given;
        double air;

        Told(UnitResponse unit) {
            this.unit = unit;
        }

        @Override
        public void at(double stage, double to, double wo, double tr, double w, double[] out) {
            unit.at(stage, to, wo, tr, w, out);
        }

        @Override
        public void passed(double seconds, double[] state, double factor, double airTemperature) {
            assertThat(seconds).isPositive();
            if (state == null) {
                off += seconds;
                assertThat(factor).isEqualTo(1);
            } else {
                on += seconds;
                given += seconds * factor * state[SENSIBLE];
            }
            air += seconds * airTemperature;
        }
    }

    private static void agree(CycleControl c, double size, double traceSeconds, int leastStarts) {
        HouseDrive drive = drive(false, 3600);
        Told told = new Told(unit(size));
        RunRecord run =
                new ThermostatEngine(ModalHouse.of(CAPACITY, CONDUCTANCE), SENSOR, RETURNED, SUPPLY)
                        .run(drive, c, told, START, 0.009, traceSeconds);
        MarchedControl other =
                new MarchedControl(
                                new MarchedHouse(
                                        CAPACITY,
                                        CONDUCTANCE,
                                        SENSOR,
                                        RETURNED,
                                        SUPPLY,
                                        drive,
                                        c.startUpSeconds(),
                                        START),
                                c,
                                unit(size),
                                0.009)
                        .run(traceSeconds);
        Offset<Double> second = within(1e-4);
        assertThat(other.events.size()).isGreaterThanOrEqualTo(2 * leastStarts - 1);
        assertThat(run.eventCount()).isEqualTo(other.events.size());
        for (int e = 0; e < run.eventCount(); e++) {
            assertThat(run.eventTime(e)).isCloseTo(other.events.get(e), second);
            assertThat(run.eventSwitchesOn(e)).isEqualTo(e % 2 == 0);
        }
        double most = size * 3600;
        for (int i = 0; i < drive.intervals(); i++) {
            assertThat(run.starts(i)).isEqualTo(other.starts[i]);
            assertThat(run.onSeconds(i)).isCloseTo(other.on[i], second);
            assertThat(run.meanTemperature(i)).isCloseTo(other.mean[i], within(1e-7));
            assertThat(run.endTemperature(i)).isCloseTo(other.end[i], within(1e-7));
            assertThat(run.maximumTemperature(i)).isCloseTo(other.highest[i], within(3e-6));
            assertThat(run.minimumTemperature(i)).isCloseTo(other.lowest[i], within(1e-7));
            assertThat(run.delivered(i)).isCloseTo(other.delivered[i], within(1e-7 * most));
            assertThat(run.steady(i)).isCloseTo(other.steady[i], within(1e-7 * most));
            assertThat(run.electricity(i)).isCloseTo(other.electricity[i], within(1.0));
            assertThat(run.above(i)).isCloseTo(other.above[i], within(1e-3));
            assertThat(run.removedWater(i)).isCloseTo(other.removed[i], within(1e-7));
            assertThat(run.coil(i))
                    .isCloseTo(
                            other.coil[i] == Double.POSITIVE_INFINITY ? run.coil(i) : other.coil[i],
                            within(1e-6));
            assertThat(run.coil(i) == Double.POSITIVE_INFINITY).isEqualTo(other.on[i] == 0);
            assertThat(run.endHumidityRatio(i)).isCloseTo(other.endWater[i], within(1e-10));
        }
        assertThat(run.heatIn).isCloseTo(other.heatIn, within(1e-11 * other.heatIn));
        assertThat(run.waterIn()).isCloseTo(other.waterIn, within(1e-7));
        assertThat(run.waterStored()).isCloseTo(2500 * (other.endWater[6] - 0.009), within(1e-6));
        assertThat(run.condensedWater()).isCloseTo(other.condensed, within(1e-7));
        assertThat(run.drainedWater()).isCloseTo(other.drained, within(1e-7));
        assertThat(run.evaporatedWater()).isCloseTo(other.evaporated, within(1e-7));
        assertThat(run.retainedWater()).isCloseTo(other.onCoil, within(1e-7));
        assertThat(run.minimumSuction()).isCloseTo(other.suction, within(1e-6));
        assertThat(run.longestRun()).isCloseTo(other.longestRun, second);
        assertThat(Math.min(run.shortestRun(), 1e9))
                .isCloseTo(Math.min(other.shortestRun, 1e9), second);
        double stored = 0;
        for (int i = 0; i < CAPACITY.length; i++) {
            assertThat(run.endNodes()[i]).isCloseTo(other.house.y[i], within(1e-6));
            stored += CAPACITY[i] * (run.endNodes()[i] - START[i]);
        }
        assertThat(run.heatStored).isCloseTo(stored, within(1.0));
        assertThat(run.heatLost)
                .isCloseTo(run.heatIn - run.totalDelivered() - stored, within(1e-3 * most));
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-11);
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
        assertThat(told.on).isCloseTo(run.totalOnSeconds(), within(1e-6));
        assertThat(told.on + told.off).isCloseTo(drive.intervals() * 3600, within(1e-6));
        assertThat(told.given).isCloseTo(run.totalDelivered(), within(1e-7 * most));
        assertThat(told.air).isCloseTo(other.house.y[CAPACITY.length], within(0.01));
        if (traceSeconds > 0) {
            assertThat(run.traceTemperatures()).hasSize(other.trace.size());
            for (int p = 0; p < other.trace.size(); p++) {
                assertThat(run.traceTimes()[p]).isEqualTo(p * traceSeconds);
                assertThat(run.traceTemperatures()[p]).isCloseTo(other.trace.get(p), within(1e-6));
            }
        } else {
            assertThat(run.traceTemperatures()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "13000, 0, 0, 0, 0",
        "13000, 60, 0, 0, 0",
        "16000, 45, 900, 0, 0",
        "13000, 60, 0, 350, 0.8",
        "13000, 0, 300, 200, 3",
        "7000, 60, 0, 0, 0"
    })
    void one_stage(double size, double startUp, double minimumOff, double fan, double gives) {
        CycleControl c =
                control(
                        CycleControl.Staging.SINGLE,
                        1,
                        startUp,
                        Double.POSITIVE_INFINITY,
                        minimumOff,
                        fan,
                        gives);
        agree(c, size, 400, size > 1e4 ? 6 : 1);
    }

    @ParameterizedTest
    @CsvSource({
        // by temperature, by time, by both; with and without start-up
        "13000, 0.5, 0, 86400, 0",
        "13000, 0.5, 60, 86400, 300",
        "13000, 0.6, 60, 900, 0",
        "12000, 0.4, 40, 2400, 0",
        "9000, 0.5, 60, 1500, 0"
    })
    void two_stages(double size, double low, double startUp, double delay, double minimumOff) {
        agree(
                control(CycleControl.Staging.TWO, low, startUp, delay, minimumOff, 200, 0.8),
                size,
                500,
                2);
    }

    @ParameterizedTest
    @CsvSource({"13000, 0.3, 0, 0", "13000, 0.3, 60, 0", "16000, 0.6, 45, 900", "8000, 0.4, 60, 0"})
    void variable_speed(double size, double low, double startUp, double minimumOff) {
        agree(
                control(CycleControl.Staging.VARIABLE, low, startUp, 86_400, minimumOff, 200, 0.8),
                size,
                0,
                1);
    }

    @Test
    void a_setpoint_that_changes_by_the_hour() {
        CycleControl c = control(CycleControl.Staging.SINGLE, 1, 60, 86_400, 0, 0, 0);
        CycleControl changing =
                new CycleControl(
                        new double[] {297.15, 297.15, 299, 296, 296, 297.5, 297.5},
                        0.8,
                        c.staging(),
                        1,
                        0.3,
                        86_400,
                        0,
                        60,
                        240,
                        700,
                        20,
                        0,
                        240,
                        0);
        agree(changing, 14_000, 900, 5);
    }
}
