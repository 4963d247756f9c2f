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

    @Test
    void what_is_missing_in_a_balance_is_told_in_relation_to_all_that_flowed() {
        RunRecord r = new RunRecord(2, 3600);
        assertThat(r.heatImbalance()).isZero();
        assertThat(r.waterImbalance()).isZero();
        assertThat(r.startUpLoss()).isZero();
        r.heatIn = 10;
        r.heatLost = 3;
        r.delivered[0] = 1;
        r.delivered[1] = 3;
        r.heatStored = -1;
        assertThat(r.heatImbalance()).isCloseTo((10 - 3 - 4 + 1) / 18.0, within(1e-15));
        r.waterIn = 5;
        r.removedWater[0] = 2;
        r.waterStored = -1;
        assertThat(r.waterImbalance()).isCloseTo((5 - 2 + 1) / 8.0, within(1e-15));
        r.steady[0] = 2;
        r.steady[1] = 3;
        assertThat(r.startUpLoss()).isCloseTo(0.2, within(1e-15));
        assertThat(r.totalSteady()).isEqualTo(5);
        assertThat(r.totalDelivered()).isEqualTo(4);
        assertThat(r.delivered(1)).isEqualTo(3);
        assertThat(r.steady(0)).isEqualTo(2);
        assertThat(r.removedWater(0)).isEqualTo(2);
    }

    @Test
    void the_end_of_a_record_is_the_end_of_its_trace() {
        RunRecord run = day(0.5, 30, 1, 60);
        double[] humidity = run.traceHumidityRatios();
        assertThat(run.traceTimes()[86_400]).isEqualTo(86_400);
        assertThat(run.endHumidityRatio(23)).isEqualTo(humidity[86_400]);
        assertThat(run.endNodes()[0]).isCloseTo(run.traceTemperatures()[86_400], within(1e-9));
        assertThat(run.endTemperature(23)).isCloseTo(run.endNodes()[0], within(1e-9));
        assertThat(run.repeatedDays()).isEqualTo(1);
        assertThat(run.repeats()).isTrue();
        double electricity = 0;
        for (int h = 0; h < 24; h++) {
            electricity += run.electricity(h);
        }
        assertThat(electricity).isPositive().isEqualTo(run.totalElectricity());
        // A record is not a door to change it.
        run.endNodes()[0] = 0;
        run.traceTimes()[1] = 0;
        assertThat(run.endNodes()[0]).isGreaterThan(280);
        assertThat(run.traceTimes()[1]).isEqualTo(1);
    }
}
