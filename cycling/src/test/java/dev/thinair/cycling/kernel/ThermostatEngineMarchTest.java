package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
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
    static final double[] CAPACITY = {9e5, 5e5, 3e6, 2e7};

    static final double[][] CONDUCTANCE = {
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

    private static HouseDrive drive() {
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
        return HouseDrive.of(3600, false, heat, outdoor, water, flow, gain, 2500);
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
    private static final class Told implements TestHouse.Passed {
        double on;
        double off;
        double given;
        double air;

        @Override
        public void on(double seconds, double[] state, double factor, double airTemperature) {
            assertThat(seconds).isPositive();
            if (state == null) {
                off += seconds;
                assertThat(factor).isEqualTo(1);
            } else {
                on += seconds;
                given += seconds * factor * state[UnitResponse.SENSIBLE];
            }
            air += seconds * airTemperature;
        }
    }

    /** A house, what acts on it, and how it starts. */
    private record House(
            double[] capacity,
            double[][] conductance,
            double[] sensor,
            double[] returned,
            double[] supply,
            HouseDrive drive,
            double[] start) {}

    private static final House KNOWN =
            new House(CAPACITY, CONDUCTANCE, SENSOR, RETURNED, SUPPLY, drive(), START);

    private static void agree(CycleControl c, double size, double traceSeconds, int leastStarts) {
        assertThat(agree(KNOWN, c, size, traceSeconds)).isGreaterThanOrEqualTo(leastStarts);
    }

    /** Starts. */
    private static int agree(House house, CycleControl c, double size, double traceSeconds) {
        HouseDrive drive = house.drive();
        double[] capacity = house.capacity();
        Told told = new Told();
        RunRecord run =
                new ThermostatEngine(
                                ModalHouse.of(capacity, house.conductance()),
                                house.sensor(),
                                house.returned(),
                                house.supply())
                        .run(
                                drive,
                                c,
                                TestHouse.watched(unit(size), told),
                                house.start(),
                                0.009,
                                traceSeconds);
        MarchedControl other =
                new MarchedControl(
                                new MarchedHouse(
                                        capacity,
                                        house.conductance(),
                                        house.sensor(),
                                        house.returned(),
                                        house.supply(),
                                        drive,
                                        c.startUpSeconds(),
                                        house.start()),
                                c,
                                unit(size),
                                0.009)
                        .run(traceSeconds);
        Offset<Double> second = within(1e-4);
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
        assertThat(run.waterStored())
                .isCloseTo(2500 * (other.endWater[drive.intervals() - 1] - 0.009), within(1e-6));
        assertThat(run.condensedWater()).isCloseTo(other.condensed, within(1e-7));
        assertThat(run.drainedWater()).isCloseTo(other.drained, within(1e-7));
        assertThat(run.evaporatedWater()).isCloseTo(other.evaporated, within(1e-7));
        assertThat(run.retainedWater()).isCloseTo(other.onCoil, within(1e-7));
        assertThat(run.minimumSuction()).isCloseTo(other.suction, within(1e-6));
        assertThat(run.longestRun()).isCloseTo(other.longestRun, second);
        assertThat(Math.min(run.shortestRun(), 1e9))
                .isCloseTo(Math.min(other.shortestRun, 1e9), second);
        double stored = 0;
        for (int i = 0; i < capacity.length; i++) {
            assertThat(run.endNodes()[i]).isCloseTo(other.house.y[i], within(1e-6));
            stored += capacity[i] * (run.endNodes()[i] - house.start()[i]);
        }
        assertThat(run.heatStored).isCloseTo(stored, within(1.0));
        assertThat(run.heatLost)
                .isCloseTo(run.heatIn - run.totalDelivered() - stored, within(1e-3 * most));
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-11);
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
        assertThat(told.on).isCloseTo(run.totalOnSeconds(), within(1e-6));
        assertThat(told.on + told.off).isCloseTo(drive.intervals() * 3600, within(1e-6));
        assertThat(told.given).isCloseTo(run.totalDelivered(), within(1e-7 * most));
        assertThat(told.air).isCloseTo(other.house.y[capacity.length], within(0.01));
        if (traceSeconds > 0) {
            assertThat(run.traceTemperatures()).hasSize(other.trace.size());
            for (int p = 0; p < other.trace.size(); p++) {
                assertThat(run.traceTimes()[p]).isEqualTo(p * traceSeconds);
                assertThat(run.traceTemperatures()[p]).isCloseTo(other.trace.get(p), within(1e-6));
                assertThat(run.traceHumidityRatios()[p])
                        .isCloseTo(other.traceWater.get(p), within(3e-6));
            }
        } else {
            assertThat(run.traceTemperatures()).isEmpty();
        }
        return run.totalStarts();
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

    /** Quick and slow nodes, any weights, weather, setpoints and rules of control. */
    private static final class Drawn {
        final House house;
        final CycleControl control;
        final double size;

        Drawn(long seed) {
            Random random = new Random(seed);
            int n = 2 + random.nextInt(4);
            int hours = 6;
            double[] capacity = new double[n];
            double[][] conductance = new double[n][n];
            double[] start = new double[n];
            double[][] heat = new double[hours + 1][n];
            for (int i = 0; i < n; i++) {
                capacity[i] = 3e5 * Math.pow(10, 2.0 * i / (n - 1) + 0.3 * random.nextDouble());
                double out = MarchedHouse.link(conductance, i, random);
                start[i] = 297 + 4 * (random.nextDouble() - 0.5);
                for (double[] mark : heat) {
                    mark[i] = out * 305 + 3000 * random.nextDouble() - 800;
                }
            }
            double[] outdoor = new double[hours + 1];
            double[] water = new double[hours + 1];
            double[] flow = new double[hours + 1];
            double[] gain = new double[hours + 1];
            for (int h = 0; h <= hours; h++) {
                outdoor[h] = 300 + 10 * random.nextDouble();
                water[h] = 0.008 + 0.006 * random.nextDouble();
                flow[h] = 0.02 + 0.08 * random.nextDouble();
                gain[h] = 4e-4 * random.nextDouble();
            }
            house =
                    new House(
                            capacity,
                            conductance,
                            shares(random, n),
                            shares(random, n),
                            shares(random, n),
                            HouseDrive.of(3600, false, heat, outdoor, water, flow, gain, 2500),
                            start);
            CycleControl.Staging staging = CycleControl.Staging.values()[random.nextInt(3)];
            double[] setpoint = new double[random.nextBoolean() ? hours : 1];
            for (int h = 0; h < setpoint.length; h++) {
                setpoint[h] = 297 + 3 * (random.nextDouble() - 0.5);
            }
            control =
                    new CycleControl(
                            setpoint,
                            0.3 + 2 * random.nextDouble(),
                            staging,
                            staging == CycleControl.Staging.SINGLE
                                    ? 1
                                    : 0.2 + 0.7 * random.nextDouble(),
                            0.1 + random.nextDouble(),
                            random.nextBoolean()
                                    ? Double.POSITIVE_INFINITY
                                    : 300 + 3000 * random.nextDouble(),
                            random.nextBoolean() ? 0 : 1000 * random.nextDouble(),
                            random.nextBoolean() ? 0 : 20 + 100 * random.nextDouble(),
                            60 + 600 * random.nextDouble(),
                            300 + 2000 * random.nextDouble(),
                            200 * random.nextDouble(),
                            random.nextBoolean() ? 0 : 300 * random.nextDouble(),
                            400 * random.nextDouble(),
                            random.nextBoolean() ? 0 : random.nextDouble());
            size = 2000 + 8000 * random.nextDouble();
        }

        private static double[] shares(Random random, int n) {
            double[] shares = new double[n];
            double sum = 0;
            for (int i = 0; i < n; i++) {
                // The quick node, the air, counts most.
                shares[i] = i == 0 ? 1 : 0.5 * random.nextDouble();
                sum += shares[i];
            }
            for (int i = 0; i < n; i++) {
                shares[i] /= sum;
            }
            return shares;
        }
    }

    @Test
    void houses_weather_and_rules_drawn_at_random() {
        int starts = 0;
        for (int seed = 0; seed < 60; seed++) {
            // The last two once showed a stage that changed soon after a start.
            Drawn drawn = new Drawn(seed < 58 ? seed : seed == 58 ? 336 : 1739);
            try {
                starts += agree(drawn.house, drawn.control, drawn.size, 0);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed + ", " + drawn.control.staging(), e);
            }
        }
        assertThat(starts).isGreaterThan(200);
    }
}
