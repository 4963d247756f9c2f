package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Finds switch times where they are easy to miss: the thermostat rises and falls and rises again
 * within an hour, and the edge of the band lies a hair below or above a turning point. Judged by a
 * march at the nodes that stops every two seconds.
 */
class SwitchSearchTest {

    private static final int HOUSES = 60;
    private static final double INTERVAL = 3600;

    /** A house of quick and slow nodes, far from balance at the start. */
    private static final class Case {
        final double[] capacity;
        final double[][] conductance;
        final double[] sensor;
        final double[] supply;
        final double[] start;
        final HouseDrive drive;
        final double sensible;
        final double startUp;

        Case(long seed) {
            Random random = new Random(seed);
            int n = 3 + random.nextInt(4);
            capacity = new double[n];
            conductance = new double[n][n];
            sensor = new double[n];
            supply = new double[n];
            start = new double[n];
            double[][] heat = new double[2][n];
            double felt = 0;
            double got = 0;
            for (int i = 0; i < n; i++) {
                // Time constants from about a minute to a day.
                capacity[i] = 5e4 * Math.pow(10, 2.5 * i / (n - 1.0) + 0.3 * random.nextDouble());
                double out = MarchedHouse.link(conductance, i, random);
                sensor[i] = random.nextDouble();
                supply[i] = random.nextDouble();
                felt += sensor[i];
                got += supply[i];
                start[i] = 297 + 6 * (random.nextDouble() - 0.5);
                heat[0][i] = out * 303 + 1500 * (random.nextDouble() - 0.5);
                heat[1][i] = heat[0][i] + 3000 * (random.nextDouble() - 0.5);
            }
            for (int i = 0; i < n; i++) {
                sensor[i] /= felt;
                supply[i] /= got;
            }
            drive = HouseDrive.dry(INTERVAL, false, heat, new double[] {303, 303});
            sensible = 1500 + 4000 * random.nextDouble();
            startUp = random.nextBoolean() ? 0 : 20 + 80 * random.nextDouble();
        }

        MarchedHouse marched(double taken) {
            MarchedHouse house =
                    new MarchedHouse(
                            capacity, conductance, sensor, sensor, supply, drive, startUp, start);
            house.taken = taken;
            house.missing = startUp > 0 ? taken : 0;
            return house;
        }

        double[] path(double taken) {
            MarchedHouse house = marched(taken);
            double[] path = new double[(int) (INTERVAL / MarchedHouse.STEP) + 1];
            path[0] = house.felt();
            for (int i = 1; i < path.length; i++) {
                house.step(MarchedHouse.STEP);
                path[i] = house.felt();
            }
            return path;
        }

        /** When the thermostat first passes a level; infinity if it does not within the hour. */
        double first(double taken, double level, boolean rising) {
            MarchedHouse house = marched(taken);
            while (house.time < INTERVAL - 1e-9) {
                double next = house.feltIn(MarchedHouse.STEP);
                if (rising ? next > level : next < level) {
                    return house.time + house.crossing(level, rising, MarchedHouse.STEP);
                }
                house.step(MarchedHouse.STEP);
            }
            return Double.POSITIVE_INFINITY;
        }

        /** Near a turning point a small error of temperature is a larger one of time. */
        void check(double taken, double found, double level, double expected, String where) {
            MarchedHouse house = marched(taken);
            house.march(found);
            assertThat(house.felt()).as(where).isCloseTo(level, within(5e-9));
            assertThat(found).as(where).isCloseTo(expected, within(1e-3));
        }

        RunRecord run(CycleControl control, UnitResponse unit) {
            return new ThermostatEngine(
                            ModalHouse.of(capacity, conductance), sensor, sensor, supply)
                    .run(drive, control, unit, start, 0, 0);
        }
    }

    private static CycleControl control(
            double on, double off, double startUp, CycleControl.Staging staging, double second) {
        return new CycleControl(
                new double[] {0.5 * (on + off)},
                on - off,
                staging,
                staging == CycleControl.Staging.TWO ? 0.5 : 1,
                second > on ? second - on : 1,
                Double.POSITIVE_INFINITY,
                0,
                startUp,
                300,
                7200,
                0,
                0,
                0,
                0);
    }

    /** Highest point: of the samples, and of the parabolas through three in a row. */
    private static double most(double[] path) {
        double most = Math.max(path[0], path[path.length - 1]);
        for (int i = 1; i + 1 < path.length; i++) {
            double left = path[i] - path[i - 1];
            double right = path[i + 1] - path[i];
            if (left >= 0 && right <= 0 && left > right) {
                double tip = path[i] + 0.125 * (left + right) * (left + right) / (left - right);
                most = Math.max(most, tip);
            }
        }
        return most;
    }

    private static double least(double[] path) {
        double[] turned = new double[path.length];
        for (int i = 0; i < path.length; i++) {
            turned[i] = -path[i];
        }
        return -most(turned);
    }

    private static boolean turnsInside(double[] path, double extreme) {
        return path[0] != extreme && path[path.length - 1] != extreme;
    }

    /** How far the edge lies inside the turning point, K; below 0 for beyond it. */
    private static final double[] DEPTHS = {2e-5, 1e-3, 0.02, 0.2, -1e-5, -0.1};

    @Test
    void a_resting_unit_starts_when_the_thermostat_just_touches_the_upper_edge() {
        int turning = 0;
        for (int seed = 0; seed < HOUSES; seed++) {
            Case house = new Case(seed);
            double[] path = house.path(0);
            double most = most(path);
            turning += turnsInside(path, most) ? 1 : 0;
            for (double depth : DEPTHS) {
                double on = most - depth;
                if (on <= path[0] + 1e-9) {
                    continue;
                }
                double expected = house.first(0, on, true);
                RunRecord run =
                        house.run(
                                control(on, on - 8, house.startUp, CycleControl.Staging.SINGLE, 0),
                                UnitResponse.constant(house.sensible, 1));
                if (expected > INTERVAL) {
                    assertThat(run.eventCount()).as("seed %d depth %s", seed, depth).isZero();
                } else {
                    assertThat(run.eventCount()).as("seed %d depth %s", seed, depth).isPositive();
                    house.check(0, run.eventTime(0), on, expected, "seed " + seed + ", " + depth);
                }
            }
        }
        assertThat(turning).isGreaterThan(HOUSES / 4);
    }

    @Test
    void a_running_unit_stops_when_the_thermostat_just_touches_the_lower_edge() {
        int turning = 0;
        for (int seed = 100; seed < 100 + HOUSES; seed++) {
            Case house = new Case(seed);
            double[] path = house.path(house.sensible);
            double least = least(path);
            turning += turnsInside(path, least) ? 1 : 0;
            double on = path[0] - 1e-3;
            for (double depth : DEPTHS) {
                double off = least + depth;
                if (on - off < 1e-3 || on - off > 10) {
                    continue;
                }
                double expected = house.first(house.sensible, off, false);
                RunRecord run =
                        house.run(
                                control(on, off, house.startUp, CycleControl.Staging.SINGLE, 0),
                                UnitResponse.constant(house.sensible, 1));
                assertThat(run.eventTime(0)).isZero();
                if (expected > INTERVAL) {
                    assertThat(run.eventCount()).as("seed %d depth %s", seed, depth).isOne();
                } else {
                    assertThat(run.eventCount())
                            .as("seed %d depth %s", seed, depth)
                            .isGreaterThan(1);
                    house.check(
                            house.sensible,
                            run.eventTime(1),
                            off,
                            expected,
                            "seed " + seed + ", " + depth);
                }
            }
        }
        assertThat(turning).isGreaterThan(HOUSES / 4);
    }

    @Test
    void a_low_stage_gives_way_or_stops_whichever_edge_it_touches_first() {
        int gaveWay = 0;
        int stopped = 0;
        int turning = 0;
        for (int seed = 200; seed < 200 + 2 * HOUSES; seed++) {
            Case house = new Case(seed);
            double low = 0.5 * house.sensible;
            double[] path = house.path(low);
            double most = most(path);
            double least = least(path);
            turning += turnsInside(path, most) && turnsInside(path, least) ? 1 : 0;
            double on = path[0] - 1e-3;
            for (double depth : DEPTHS) {
                double second = most - depth;
                double off = least + depth;
                if (second < path[0] + 1e-3 || on - off < 1e-3 || on - off > 10) {
                    continue;
                }
                double up = house.first(low, second, true);
                double down = house.first(low, off, false);
                double[] high = {Double.POSITIVE_INFINITY, 0};
                UnitResponse watched =
                        TestHouse.watched(
                                UnitResponse.constant(house.sensible, 1),
                                (seconds, state, factor, air) -> {
                                    if (state != null
                                            && state[UnitResponse.SENSIBLE]
                                                    > 0.9 * house.sensible) {
                                        high[0] = Math.min(high[0], high[1]);
                                    }
                                    high[1] += seconds;
                                });
                RunRecord run =
                        house.run(
                                control(on, off, house.startUp, CycleControl.Staging.TWO, second),
                                watched);
                if (up < down) {
                    house.check(low, high[0], second, up, "seed " + seed + ", " + depth);
                    gaveWay++;
                } else if (down < INTERVAL) {
                    house.check(low, run.eventTime(1), off, down, "seed " + seed + ", " + depth);
                    assertThat(high[0]).isGreaterThan(down);
                    stopped++;
                } else {
                    assertThat(run.eventCount()).as("seed %d depth %s", seed, depth).isOne();
                    assertThat(high[0]).isInfinite();
                }
            }
        }
        assertThat(gaveWay).isGreaterThan(HOUSES / 2);
        assertThat(stopped).isGreaterThan(HOUSES / 2);
        assertThat(turning).isGreaterThan(5);
    }
}
