package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The engine against a plain simulation in steps of a tenth of a second that follows the same rules
 * of control: compressor delay, two stages, start-up, a fan that runs on, water on the coil. The
 * unit's figures are constant, so that nothing but the steps divides the two.
 */
class SteppedControlTest {

    private static final double SET = 297.15;
    private static final double TAU = 60;
    private static final double AIR_MASS = 2500;
    private static final double FLOW = 0.05;
    private static final double OUTDOOR_WATER = 0.012;
    private static final double GAIN = 1e-4;
    private static final double CONDENSES = 6e-4;
    private static final double ROOMS_LOSE = 5e-4;
    private static final double POWER = 2500;

    /** Two rooms and their common mass: thermostat, return and supply weigh them differently. */
    private static final double[] CAPACITY = {9e5, 5e5, 8e6};

    private static final double[][] CONDUCTANCE = {
        {900, -200, -600}, {-200, 650, -400}, {-600, -400, 1080}
    };

    private static final double[] SENSOR = {0.7, 0.3, 0};
    private static final double[] RETURNED = {0.5, 0.5, 0};
    private static final double[] SUPPLY = {0.6, 0.4, 0};

    /** Heat into the rooms at the hours' marks, W. */
    private static final double[] SUN = {3500, 5500, 8000, 9500, 7000, 4000, 3000};

    private static double[] heat(int mark) {
        return new double[] {100 * 303 + 0.6 * SUN[mark], 50 * 303 + 0.4 * SUN[mark], 80 * 303};
    }

    private static HouseDrive drive() {
        int n = SUN.length;
        double[][] heat = new double[n][];
        double[] outdoor = new double[n];
        double[] water = new double[n];
        double[] flow = new double[n];
        double[] gain = new double[n];
        for (int i = 0; i < n; i++) {
            heat[i] = heat(i);
            outdoor[i] = 303;
            water[i] = OUTDOOR_WATER;
            flow[i] = FLOW;
            gain[i] = GAIN;
        }
        return HouseDrive.of(3600, false, heat, outdoor, water, flow, gain, AIR_MASS);
    }

    private static UnitResponse unit(double sensible) {
        return (stage, to, wo, tr, w, out) -> {
            out[UnitResponse.SENSIBLE] = stage * sensible;
            out[UnitResponse.MOISTURE] = stage * ROOMS_LOSE;
            out[UnitResponse.MOISTURE_SLOPE] = 0;
            out[UnitResponse.POWER] = stage * POWER;
            out[UnitResponse.COIL] = 283 + stage;
            out[UnitResponse.SUCTION] = 278 + stage;
            out[UnitResponse.CONDENSATE] = stage * CONDENSES;
        };
    }

    /** The same rules, step by step. */
    private static final class Steps {
        final double[] t = {SET, SET, SET};
        final List<Double> events = new ArrayList<>();
        double w = 0.009;
        int starts;
        double on;
        double delivered;
        double electricity;
        double condensed;
        double drained;
        double evaporated;
        double coil;
        double above;

        Steps(CycleControl c, double sensible) {
            double dt = 0.1;
            double half = 0.5 * c.differential();
            double second = SET + half + c.secondStageDifferential();
            boolean two = c.staging() == CycleControl.Staging.TWO;
            double stage = 0;
            boolean pressed = false;
            double lowAge = 0;
            double deficit = 0;
            double lock = 0;
            double offAge = 0;
            double offWater = 0;
            double offRate = 0;
            int steps = (int) Math.round((SUN.length - 1) * 3600 / dt);
            for (int i = 0; i < steps; i++) {
                double felt = SENSOR[0] * t[0] + SENSOR[1] * t[1];
                if (stage == 0) {
                    if (felt >= SET + half && lock <= 0) {
                        stage = two ? c.lowStage() : 1;
                        deficit = stage * sensible;
                        lowAge = 0;
                        starts++;
                        events.add(i * dt);
                    }
                } else if (felt <= SET - half) {
                    offWater = coil;
                    offRate = c.reevaporation() * stage * CONDENSES;
                    offAge = 0;
                    lock = c.minimumOffSeconds();
                    stage = 0;
                    deficit = 0;
                    pressed = false;
                    events.add(i * dt);
                } else if (stage < 1 && (felt >= second || lowAge >= c.secondStageSeconds())) {
                    pressed = felt < second;
                    deficit += (1 - stage) * sensible;
                    stage = 1;
                } else if (two && stage == 1 && !pressed && felt <= SET + half) {
                    stage = c.lowStage();
                    deficit *= stage;
                    lowAge = 0;
                }
                above += Math.max(0, felt - SET - half) * dt;
                // Heat in the middle of the step; temperatures by the midpoint rule.
                double hour = (i + 0.5) * dt / 3600;
                int mark = (int) hour;
                double mid = deficit * Math.exp(-0.5 * dt / TAU);
                double q = stage == 0 ? -c.fanHeatOff() : stage * sensible - mid;
                double[] in = new double[3];
                for (int n = 0; n < 3; n++) {
                    in[n] =
                            heat(mark)[n]
                                    + (hour - mark) * (heat(mark + 1)[n] - heat(mark)[n])
                                    - SUPPLY[n] * q;
                }
                double[] first = slope(t, in);
                double[] halfWay = new double[3];
                for (int n = 0; n < 3; n++) {
                    halfWay[n] = t[n] + 0.5 * dt * first[n];
                }
                double[] then = slope(halfWay, in);
                for (int n = 0; n < 3; n++) {
                    t[n] += dt * then[n];
                }
                double taken = 0;
                double back = 0;
                if (stage > 0) {
                    double share = 1 - mid / (stage * sensible);
                    taken = stage * ROOMS_LOSE * share;
                    double falls = stage * CONDENSES * share * dt;
                    condensed += falls;
                    double holds = Math.max(coil, c.retainedWaterSeconds() * stage * CONDENSES);
                    double runsOff = Math.max(0, coil + falls - holds);
                    drained += runsOff;
                    coil += falls - runsOff;
                    on += dt;
                    delivered += q * dt;
                    electricity += stage * POWER * dt;
                    deficit *= Math.exp(-dt / TAU);
                    lowAge += stage < 1 ? dt : 0;
                } else {
                    double dry = offRate > 0 ? 2 * offWater / offRate : 0;
                    back = dry > 0 ? offRate * Math.max(0, 1 - (offAge + 0.5 * dt) / dry) : 0;
                    evaporated += back * dt;
                    coil -= back * dt;
                    offAge += dt;
                    lock -= dt;
                    electricity += c.offPower() * dt;
                }
                w += (FLOW * (OUTDOOR_WATER - w) + GAIN - taken + back) / AIR_MASS * dt;
            }
        }

        private static double[] slope(double[] t, double[] in) {
            double[] out = new double[3];
            for (int n = 0; n < 3; n++) {
                double q = in[n];
                for (int m = 0; m < 3; m++) {
                    q -= CONDUCTANCE[n][m] * t[m];
                }
                out[n] = q / CAPACITY[n];
            }
            return out;
        }
    }

    private static RunRecord engine(CycleControl control, double sensible) {
        return new ThermostatEngine(ModalHouse.of(CAPACITY, CONDUCTANCE), SENSOR, RETURNED, SUPPLY)
                .run(drive(), control, unit(sensible), new double[] {SET, SET, SET}, 0.009, 0);
    }

    private static void agree(CycleControl control, double sensible, int leastStarts) {
        RunRecord run = engine(control, sensible);
        Steps steps = new Steps(control, sensible);
        assertThat(steps.starts).isGreaterThanOrEqualTo(leastStarts);
        assertThat(run.totalStarts()).isEqualTo(steps.starts);
        assertThat(run.eventCount()).isEqualTo(steps.events.size());
        for (int i = 0; i < run.eventCount(); i++) {
            // Each switch is seen up to a step late, and the delays add up.
            assertThat(run.eventTime(i)).isCloseTo(steps.events.get(i), within(3.0 + 0.75 * i));
            assertThat(run.eventSwitchesOn(i)).isEqualTo(i % 2 == 0);
        }
        assertThat(run.totalOnSeconds()).isCloseTo(steps.on, within(2e-3 * steps.on));
        assertThat(run.totalDelivered()).isCloseTo(steps.delivered, within(2e-3 * steps.delivered));
        assertThat(run.totalElectricity())
                .isCloseTo(steps.electricity, within(2e-3 * steps.electricity));
        assertThat(run.totalAbove()).isCloseTo(steps.above, within(10 + 5e-3 * steps.above));
        for (int n = 0; n < 3; n++) {
            assertThat(run.endNodes()[n]).isCloseTo(steps.t[n], within(0.05));
        }
        assertThat(run.endHumidityRatio(5)).isCloseTo(steps.w, within(5e-6));
        assertThat(run.condensedWater()).isCloseTo(steps.condensed, within(2e-3 * steps.condensed));
        assertThat(run.drainedWater()).isCloseTo(steps.drained, within(5e-3 * steps.condensed));
        assertThat(run.evaporatedWater())
                .isCloseTo(steps.evaporated, within(5e-3 * steps.condensed));
        assertThat(run.retainedWater()).isCloseTo(steps.coil, within(5e-3 * steps.condensed));
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-11);
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
    }

    private static CycleControl control(
            CycleControl.Staging staging,
            double low,
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
                TAU,
                300,
                700,
                20 + fan,
                fan,
                240,
                gives);
    }

    @Test
    void one_stage() {
        agree(control(CycleControl.Staging.SINGLE, 1, 1800, 0, 0, 0), 12_000, 8);
    }

    @Test
    void one_stage_with_a_compressor_delay() {
        agree(control(CycleControl.Staging.SINGLE, 1, 1800, 900, 0, 0), 14_000, 6);
    }

    @Test
    void one_stage_with_a_fan_that_runs_on() {
        agree(control(CycleControl.Staging.SINGLE, 1, 1800, 0, 350, 0.8), 13_000, 8);
    }

    @Test
    void one_stage_that_is_too_small() {
        agree(control(CycleControl.Staging.SINGLE, 1, 1800, 0, 0, 0), 7_000, 1);
    }

    @Test
    void two_stages_of_which_the_second_is_called_by_temperature() {
        agree(control(CycleControl.Staging.TWO, 0.5, 86_400, 0, 0, 0), 13_000, 2);
    }

    @Test
    void two_stages_of_which_the_second_is_called_by_time() {
        agree(control(CycleControl.Staging.TWO, 0.6, 900, 0, 350, 0.8), 13_000, 3);
    }
}
