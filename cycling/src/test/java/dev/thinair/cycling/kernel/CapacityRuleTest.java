package dev.thinair.cycling.kernel;

import static dev.thinair.cycling.kernel.ThermostatEngineMarchTest.CAPACITY;
import static dev.thinair.cycling.kernel.ThermostatEngineMarchTest.CONDUCTANCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * When and for what state the engine looks up the capacity, against its stated rule. The unit
 * writes down what it is asked and told; the same stretches are then marched at the nodes, and what
 * was asked is compared with what the air was like on them.
 */
class CapacityRuleTest {

    private static final double[] SENSOR = {0.7, 0.2, 0.1, 0};
    private static final double[] RETURNED = {0.3, 0.7, 0, 0};
    private static final double[] SUPPLY = {0.6, 0.4, 0, 0};
    private static final double[] START = {297.3, 297.5, 297.0, 297.6};
    private static final double AIR_MASS = 800;
    private static final double FLOW = 0.05;
    private static final double WATER = 0.014;
    private static final double GAIN = 2e-4;
    private static final double DRY = 0.0075;
    private static final double TAKES = 0.22;
    private static final int HOURS = 8;

    /** Outdoor air rises 4 K an hour, then falls: half an hour early or late shows. */
    private static final double[] OUTDOOR = {299, 303, 307, 309, 306, 302, 300, 304, 308};

    private static HouseDrive drive() {
        double[][] heat = new double[HOURS + 1][];
        double[] water = new double[HOURS + 1];
        double[] flow = new double[HOURS + 1];
        double[] gain = new double[HOURS + 1];
        for (int i = 0; i <= HOURS; i++) {
            double sun = 400 * (OUTDOOR[i] - 297) + 2500;
            heat[i] =
                    new double[] {
                        100 * OUTDOOR[i] + 0.5 * sun,
                        50 * OUTDOOR[i] + 0.3 * sun,
                        0,
                        100 * OUTDOOR[i] + 0.2 * sun
                    };
            water[i] = WATER;
            flow[i] = FLOW;
            gain[i] = GAIN;
        }
        return HouseDrive.of(3600, false, heat, OUTDOOR, water, flow, gain, AIR_MASS);
    }

    /** One question: stage, outdoor, humidity outdoors, return air, humidity, sensible answer. */
    private record Look(double stage, double to, double wo, double tr, double w, double sensible) {}

    private record Stretch(
            double seconds, double[] state, double factor, double air, List<Look> looks) {}

    private static final class Diary implements UnitResponse {
        final double size;
        final List<Stretch> stretches = new ArrayList<>();
        private List<Look> looks = new ArrayList<>();

        Diary(double size) {
            this.size = size;
        }

        @Override
        public void at(double stage, double to, double wo, double tr, double w, double[] out) {
            double share = stage * (1.2 - 0.2 * stage);
            out[SENSIBLE] =
                    share * size * (1 - 0.015 * (to - 305) + 0.03 * (tr - 297) - 25 * (w - 0.0095));
            out[MOISTURE] = stage * TAKES * (w - DRY);
            out[MOISTURE_SLOPE] = stage * TAKES;
            out[POWER] = 2600 * stage * (1 + 0.01 * (to - 305));
            out[COIL] = 283 + 0.4 * (tr - 297);
            out[SUCTION] = 278 + 0.3 * (tr - 297);
            out[CONDENSATE] = Math.max(0, out[MOISTURE]);
            looks.add(new Look(stage, to, wo, tr, w, out[SENSIBLE]));
        }

        @Override
        public void passed(double seconds, double[] state, double factor, double air) {
            stretches.add(
                    new Stretch(seconds, state == null ? null : state.clone(), factor, air, looks));
            looks = new ArrayList<>();
        }
    }

    private static RunRecord run(CycleControl control, Diary diary) {
        return new ThermostatEngine(ModalHouse.of(CAPACITY, CONDUCTANCE), SENSOR, RETURNED, SUPPLY)
                .run(drive(), control, diary, START, 0.009, 0);
    }

    private static MarchedHouse marched(double startUp) {
        return new MarchedHouse(
                CAPACITY, CONDUCTANCE, SENSOR, RETURNED, SUPPLY, drive(), startUp, START);
    }

    private static double outdoor(double time) {
        int i = Math.min(HOURS - 1, (int) (time / 3600));
        return OUTDOOR[i] + (time / 3600 - i) * (OUTDOOR[i + 1] - OUTDOOR[i]);
    }

    /** Humidity after a while and its mean: one exponential, for the coil takes in proportion. */
    private static double[] humidity(double w, double takes, double seconds) {
        double pull = (FLOW + takes) / AIR_MASS;
        double rest = (FLOW * WATER + GAIN + takes * DRY) / (FLOW + takes);
        double decay = Math.exp(-pull * seconds);
        return new double[] {
            rest + (w - rest) * decay, rest + (w - rest) * (1 - decay) / (pull * seconds)
        };
    }

    private static CycleControl control(
            CycleControl.Staging staging, double low, double startUp, double refresh) {
        return new CycleControl(
                new double[] {297.15},
                0.8,
                staging,
                low,
                0.4,
                1500,
                0,
                startUp,
                240,
                refresh,
                0,
                0,
                0,
                0);
    }

    @ParameterizedTest
    @CsvSource({
        // stages, capacity, start-up, refresh; looked up twice no more than, starts at least
        "SINGLE, 9000, 0, 300, 70, 4",
        "SINGLE, 9000, 60, 300, 90, 4",
        "SINGLE, 9000, 60, 1800, 80, 4",
        "SINGLE, 13000, 0, 900, 10, 30",
        "SINGLE, 13000, 60, 900, 10, 30",
        "SINGLE, 6000, 60, 600, 80, 1",
        "TWO, 9000, 0, 300, 110, 2",
        "TWO, 11000, 60, 300, 100, 2",
        "TWO, 12000, 60, 900, 40, 4",
        "TWO, 16000, 45, 900, 40, 10"
    })
    void a_stage_is_looked_up_for_the_middle_of_what_it_then_runs_through(
            CycleControl.Staging staging,
            double size,
            double startUp,
            double refresh,
            int mostTwice,
            int leastStarts) {
        boolean two = staging == CycleControl.Staging.TWO;
        Diary diary = new Diary(size);
        RunRecord run = run(control(staging, two ? 0.55 : 1, startUp, refresh), diary);
        MarchedHouse house = marched(startUp);
        double w = 0.009;
        double stage = 0;
        double was = 0;
        boolean first = true;
        int once = 0;
        int twice = 0;
        int whole = 0;
        int starts = 0;
        int changes = 0;
        for (Stretch stretch : diary.stretches) {
            double begin = house.time;
            double integral = house.y[4];
            if (stretch.state() == null) {
                assertThat(stretch.looks()).isEmpty();
                house.taken = 0;
                house.missing = 0;
                house.march(stretch.seconds());
                w = humidity(w, 0, stretch.seconds())[0];
                stage = 0;
                assertThat(stretch.air())
                        .isCloseTo((house.y[4] - integral) / stretch.seconds(), within(1e-7));
                continue;
            }
            starts += stage == 0 ? 1 : 0;
            assertThat(stretch.seconds()).isLessThanOrEqualTo(refresh + 1e-9);
            // A thousandth of a second may be left before a second stage called by time.
            assertThat(stretch.looks()).hasSizeBetween(stretch.seconds() < 0.01 ? 0 : 1, 2);
            Look tried = stretch.looks().get(0);
            Look look = stretch.looks().get(stretch.looks().size() - 1);
            assertThat(stretch.state()[UnitResponse.SENSIBLE]).isEqualTo(look.sensible());
            assertThat(look.stage()).isIn(0.55, 1.0).isEqualTo(two ? look.stage() : 1);
            assertThat(look.wo()).isEqualTo(WATER);
            double q = look.sensible();
            house.taken = q;
            if (startUp == 0) {
                house.missing = 0;
            } else if (stage == 0) {
                house.missing = q;
            } else {
                if (look.stage() < stage) {
                    house.missing *= tried.sensible() / was;
                } else {
                    house.missing = Math.min(house.missing, tried.sensible());
                    house.missing += look.stage() > stage ? tried.sensible() - was : 0;
                }
            }
            changes += stage != 0 && stage != look.stage() ? 1 : 0;
            double missed = house.missed(stretch.seconds());
            double drawn = house.y[5];
            double early = house.y[6];
            house.march(stretch.seconds());
            // Return air weighted by the share of the capacity that is there.
            double mean =
                    (house.y[5] - drawn - (house.y[6] - early) / q)
                            / (stretch.seconds() - missed / q);
            assertThat(stretch.factor())
                    .isCloseTo(1 - missed / (q * stretch.seconds()), within(1e-9));
            assertThat(stretch.air())
                    .isCloseTo((house.y[4] - integral) / stretch.seconds(), within(1e-7));
            double middle = outdoor(begin + 0.5 * stretch.seconds());
            if (stretch.looks().size() == 1) {
                once++;
                assertThat(look.tr()).isCloseTo(mean, within(0.02 + 1e-7));
                assertThat(look.to()).isCloseTo(middle, within(0.1 + 1e-7));
            } else {
                // Looked up again with what the stretch would have been like: all but the same.
                twice++;
                assertThat(
                                Math.abs(tried.tr() - mean) > 0.01
                                        || Math.abs(tried.to() - middle) > 0.05)
                        .isTrue();
                assertThat(look.tr()).isCloseTo(mean, within(0.04));
                assertThat(look.to()).isCloseTo(middle, within(0.04));
            }
            double takes = stretch.factor() * TAKES * look.stage();
            double[] then = humidity(w, takes, stretch.seconds());
            if (stage == look.stage()
                    && Math.abs(stretch.seconds() - refresh) < 1e-9
                    && missed < 1e-3 * q) {
                whole++;
                assertThat(look.w()).isCloseTo(then[1], within(2e-7));
                if (stretch.looks().size() == 1) {
                    assertThat(look.to()).isCloseTo(middle, within(1e-9));
                }
            } else if (!first) {
                assertThat(look.w()).isCloseTo(then[1], within(1e-4));
            }
            w = then[0];
            stage = look.stage();
            was = q;
            first = false;
        }
        assertThat(house.time).isCloseTo(HOURS * 3600, within(1e-6));
        assertThat(starts).isEqualTo(run.totalStarts()).isGreaterThanOrEqualTo(leastStarts);
        assertThat(run.endHumidityRatio(HOURS - 1)).isCloseTo(w, within(1e-9));
        for (int i = 0; i < CAPACITY.length; i++) {
            assertThat(run.endNodes()[i]).isCloseTo(house.y[i], within(1e-6));
        }
        assertThat(once).isPositive();
        assertThat(twice).isBetween(1, mostTwice);
        assertThat(whole).isGreaterThanOrEqualTo(refresh < 600 ? 10 : 0);
        assertThat(changes).isGreaterThanOrEqualTo(two ? 2 : 0);
    }

    @ParameterizedTest
    @CsvSource({"9000, 0, 900", "9000, 60, 600", "12000, 60, 1700", "16000, 45, 900"})
    void a_variable_unit_is_looked_up_at_three_speeds_and_brought_to_the_setpoint(
            double size, double startUp, double refresh) {
        double low = 0.4;
        double set = 297.15;
        double on = set + 0.4;
        Diary diary = new Diary(size);
        RunRecord run = run(control(CycleControl.Staging.VARIABLE, low, startUp, refresh), diary);
        MarchedHouse house = marched(startUp);
        double w = 0.009;
        List<Look> looks = List.of();
        boolean was = false;
        int held = 0;
        int limited = 0;
        int asked = 0;
        for (Stretch stretch : diary.stretches) {
            if (stretch.state() == null) {
                house.taken = 0;
                house.missing = 0;
                house.march(stretch.seconds());
                w = humidity(w, 0, stretch.seconds())[0];
                was = false;
                continue;
            }
            double left = 3600 * Math.floor(house.time / 3600 + 1 + 1e-9) - house.time;
            if (!stretch.looks().isEmpty()) {
                looks = stretch.looks();
                assertThat(looks).hasSize(3);
                double felt = house.felt();
                for (int k = 0; k < 3; k++) {
                    Look look = looks.get(k);
                    assertThat(look.stage()).isCloseTo(low + 0.5 * k * (1 - low), within(1e-12));
                    if (was) {
                        assertThat(look.to())
                                .isCloseTo(
                                        outdoor(house.time + 0.5 * Math.min(left, refresh)),
                                        within(1e-9));
                    }
                    // On its way to the setpoint, unless it is far above.
                    assertThat(look.tr())
                            .isCloseTo(
                                    house.drawn() + (felt <= on + 1e-9 ? set - felt : 0),
                                    within(1e-6));
                    assertThat(look.w()).isEqualTo(looks.get(0).w());
                }
                asked++;
            }
            double q = stretch.state()[UnitResponse.SENSIBLE];
            assertThat(q)
                    .isBetween(
                            looks.get(0).sensible() * (1 - 1e-12),
                            looks.get(2).sensible() * (1 + 1e-12));
            house.taken = q;
            house.missing = startUp > 0 ? was ? house.missing : q : 0;
            double missed = house.missed(stretch.seconds());
            house.march(stretch.seconds());
            boolean between =
                    q > looks.get(0).sensible() * (1 + 1e-9)
                            && q < looks.get(2).sensible() * (1 - 1e-9);
            if (between) {
                assertThat(house.felt()).isCloseTo(set, within(1e-7));
                held++;
            } else {
                limited++;
            }
            // The columns are straight or bent in the speed; all belong to the one that gives q.
            double speed = speed(q, looks.get(2), low);
            double[] state = stretch.state();
            assertThat(state[UnitResponse.POWER])
                    .isCloseTo(2600 * speed * (1 + 0.01 * (looks.get(0).to() - 305)), within(1e-6));
            assertThat(state[UnitResponse.MOISTURE_SLOPE]).isCloseTo(TAKES * speed, within(1e-9));
            assertThat(state[UnitResponse.MOISTURE])
                    .isCloseTo(TAKES * speed * (looks.get(0).w() - DRY), within(1e-12));
            double factor = 1 - missed / (q * stretch.seconds());
            assertThat(stretch.factor()).isCloseTo(factor, within(1e-9));
            w = humidity(w, factor * TAKES * speed, stretch.seconds())[0];
            was = true;
        }
        assertThat(asked).isGreaterThan(8);
        assertThat(held).isGreaterThan(5);
        assertThat(limited).isPositive();
        assertThat(run.endHumidityRatio(HOURS - 1)).isCloseTo(w, within(1e-9));
        for (int i = 0; i < CAPACITY.length; i++) {
            assertThat(run.endNodes()[i]).isCloseTo(house.y[i], within(1e-6));
        }
    }

    /** Root of share(speed) = q / full, of the diary's unit: stage (1.2 - 0.2 stage). */
    private static double speed(double q, Look full, double low) {
        double share = q / full.sensible();
        return (1.2 - Math.sqrt(1.44 - 0.8 * share)) / 0.4;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8})
    void a_start_just_before_the_hour_is_looked_up_for_the_air_that_is_there(double before) {
        double r = 0.005;
        double c = 5e6;
        double rest = 308;
        double on = 297.65;
        double start = rest + (on - rest) * Math.exp((3600 - before) / (r * c));
        double[] outdoor = {308, 308, 308};
        double[][] heat = {{308 / r}, {308 / r}, {308 / r}};
        for (double tau : new double[] {0, 30, 60, 600}) {
            List<Double> asked = new ArrayList<>();
            List<Double> told = new ArrayList<>();
            UnitResponse constant = UnitResponse.constant(7000, 1);
            UnitResponse unit =
                    TestHouse.watched(
                            (stage, to, wo, tr, w, out) -> {
                                constant.at(stage, to, wo, tr, w, out);
                                asked.add(tr);
                            },
                            (seconds, state, factor, air) -> {
                                told.add(air);
                                assertThat(factor).isBetween(0.0, 1.0);
                            });
            RunRecord run =
                    TestHouse.oneNode(r, c)
                            .run(
                                    HouseDrive.dry(3600, false, heat, outdoor),
                                    CycleControl.single(297.15, 1).withStartUp(tau),
                                    unit,
                                    new double[] {start},
                                    0,
                                    0);
            assertThat(run.eventTime(0)).isCloseTo(3600 - before, within(1e-6));
            // It cannot be outside the band by more than it overshoots after the start.
            assertThat(asked).allSatisfy(t -> assertThat(t).isBetween(296.65, 299.5));
            assertThat(told).allSatisfy(t -> assertThat(t).isBetween(296.0, 299.5));
        }
    }
}
