package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The records of the hours against the trace by the second and the list of events. */
class RunRecordTest {

    private static final double ON = 297.65;

    private static RunRecord day(double mass, double mean, double size, double startUp) {
        TestHouse house = new TestHouse(6, 3, mass);
        HouseDrive drive = house.day(mean);
        CycleControl control = CycleControl.single(297.15, 1).withStartUp(startUp);
        ThermostatEngine engine = house.engine();
        return engine.run(
                drive,
                control,
                TestHouse.unit(size),
                engine.heldAtSetpoint(drive, control),
                0.009,
                1);
    }

    // From oversized to far too small, with and without a start-up lag.
    @ParameterizedTest
    @CsvSource({
        "0.1, 29, 1.2, 60",
        "0.1, 29, 1.2, 0",
        "0.5, 33, 0.7, 60",
        "0.5, 36, 0.5, 60",
        "2, 29, 0.9, 120",
        "0.3, 24, 1.0, 30"
    })
    void hours_are_what_the_trace_and_the_events_say(
            double mass, double mean, double size, double startUp) {
        RunRecord run = day(mass, mean, size, startUp);
        double[] t = run.traceTemperatures();
        assertThat(t).hasSize(86_401);
        assertThat(run.count()).isEqualTo(24);
        assertThat(run.interval()).isEqualTo(3600);
        for (int h = 0; h < 24; h++) {
            double sum = 0;
            double above = 0;
            double most = Double.NEGATIVE_INFINITY;
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s <= 3600; s++) {
                double v = t[3600 * h + s];
                double weight = s == 0 || s == 3600 ? 0.5 : 1;
                sum += weight * v;
                above += weight * Math.max(0, v - ON);
                most = Math.max(most, v);
                least = Math.min(least, v);
            }
            assertThat(run.meanTemperature(h)).isCloseTo(sum / 3600, within(1e-5));
            assertThat(run.above(h)).isCloseTo(above, within(0.02 + 1e-4 * above));
            assertThat(run.endTemperature(h)).isCloseTo(t[3600 * (h + 1)], within(1e-7));
            // Between two seconds the trace may miss the tip; the record looks between events only
            // above the band.
            assertThat(run.maximumTemperature(h)).isLessThan(most + 0.01);
            if (most > ON) {
                assertThat(run.maximumTemperature(h)).isGreaterThan(most - 1e-5);
            }
            assertThat(run.minimumTemperature(h)).isBetween(least - 1e-3, least + 0.05);
        }
        double[] on = new double[24];
        int[] starts = new int[24];
        double since = Double.NaN;
        double longest = 0;
        double shortest = Double.POSITIVE_INFINITY;
        int complete = 0;
        for (int e = 0; e <= run.eventCount(); e++) {
            boolean last = e == run.eventCount();
            double now = last ? 86_400 : run.eventTime(e);
            if (since == since) {
                for (int h = 0; h < 24; h++) {
                    on[h] +=
                            Math.max(
                                    0, Math.min(now, 3600 * (h + 1.0)) - Math.max(since, 3600 * h));
                }
                longest = Math.max(longest, now - since);
                if (!last) {
                    shortest = Math.min(shortest, now - since);
                    complete++;
                }
            }
            if (!last) {
                boolean starting = run.eventSwitchesOn(e);
                since = starting ? now : Double.NaN;
                starts[(int) (now / 3600)] += starting ? 1 : 0;
            }
        }
        for (int h = 0; h < 24; h++) {
            assertThat(run.onSeconds(h)).isCloseTo(on[h], within(1e-6));
            assertThat(run.starts(h)).isEqualTo(starts[h]);
            assertThat(run.electricity(h)).isCloseTo(2600 * size * on[h], within(1e-2));
            assertThat(run.coil(h)).isEqualTo(on[h] > 0 ? 283 : Double.POSITIVE_INFINITY);
        }
        assertThat(run.totalStarts()).isEqualTo(Arrays.stream(starts).sum());
        assertThat(run.totalOnSeconds()).isCloseTo(Arrays.stream(on).sum(), within(1e-5));
        assertThat(run.longestRun()).isCloseTo(longest, within(1e-6));
        assertThat(run.completedRuns()).isEqualTo(complete);
        if (complete > 0) {
            assertThat(run.shortestRun()).isCloseTo(shortest, within(1e-6));
        }
        assertThat(run.minimumCoil()).isEqualTo(283);
        assertThat(run.minimumSuction()).isEqualTo(278);
        if (startUp == 0) {
            assertThat(run.startUpLoss()).isCloseTo(0, within(1e-12));
        } else {
            assertThat(run.startUpLoss())
                    .isCloseTo(1 - run.totalDelivered() / run.totalSteady(), within(1e-12))
                    .isGreaterThan(0);
        }
        assertThatThrownBy(() -> run.eventTime(run.eventCount()))
                .isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> run.eventSwitchesOn(-1))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void a_unit_that_rests_while_it_is_hot_counts_the_heat_it_leaves() {
        TestHouse house = new TestHouse(6, 3, 0.1);
        HouseDrive drive = house.day(36);
        CycleControl control = CycleControl.single(297.15, 0.3).withMinimumOff(1800);
        ThermostatEngine engine = house.engine();
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        TestHouse.unit(2.5),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        1);
        double above = 0;
        for (double t : run.traceTemperatures()) {
            above += Math.max(0, t - 297.3);
        }
        assertThat(above).isGreaterThan(3600);
        assertThat(run.totalAbove()).isCloseTo(above, within(1e-3 * above));
    }
}
