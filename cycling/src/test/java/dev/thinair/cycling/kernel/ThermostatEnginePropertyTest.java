package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws of a house with a thermostat, whatever the house. */
class ThermostatEnginePropertyTest {

    private static RunRecord firstOrder(double gain, double capacity, double tau) {
        double r = 0.005;
        double[][] heat = new double[49][1];
        double[] outdoor = new double[49];
        for (int i = 0; i < 49; i++) {
            outdoor[i] = 305;
            heat[i][0] = outdoor[i] / r + gain;
        }
        return TestHouse.oneNode(r, 4e6)
                .run(
                        HouseDrive.dry(3600, false, heat, outdoor),
                        CycleControl.single(297.15, 0.8).withStartUp(tau),
                        UnitResponse.constant(capacity, 3000),
                        new double[] {297.15},
                        0,
                        0);
    }

    /** Load of the house above at its setpoint, W. */
    private static double load(double gain) {
        return (305 - 297.15) / 0.005 + gain;
    }

    @Property(tries = 60)
    void starts_peak_near_half_load(@ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
        double capacity = 8000;
        double gain = share * capacity - (305 - 297.15) / 0.005;
        double half = 0.5 * capacity - (305 - 297.15) / 0.005;
        int starts = firstOrder(gain, capacity, 0).totalStarts();
        assertThat(starts).isLessThanOrEqualTo(firstOrder(half, capacity, 0).totalStarts() + 1);
    }

    @Property(tries = 60)
    void oversizing_never_lowers_starts(
            @ForAll @DoubleRange(min = 0, max = 3000) double gain,
            @ForAll @DoubleRange(min = 1.05, max = 2.5) double size,
            @ForAll @DoubleRange(min = 1.0, max = 2) double more) {
        int starts = firstOrder(gain, size * load(gain), 60).totalStarts();
        int larger = firstOrder(gain, more * size * load(gain), 60).totalStarts();
        assertThat(larger).isGreaterThanOrEqualTo(starts - 1);
    }

    @Property(tries = 40)
    void there_is_no_penalty_at_full_run(
            @ForAll @DoubleRange(min = 0, max = 3000) double gain,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double size) {
        RunRecord run = firstOrder(gain, size * load(gain), 0);
        assertThat(run.totalStarts()).isLessThanOrEqualTo(1);
        assertThat(run.startUpLoss()).isBetween(-1e-12, 1e-12);
        // With a lag, only the one start counts: at most a time constant of heat.
        RunRecord lagging = firstOrder(gain, size * load(gain), 60);
        assertThat(lagging.totalSteady() - lagging.totalDelivered())
                .isLessThanOrEqualTo(60 * size * load(gain) * (1 + 1e-9));
    }

    @Property(tries = 40)
    void heat_balances_and_no_hour_runs_longer_than_itself(
            @ForAll @IntRange(min = 1, max = 8) int walls,
            @ForAll @DoubleRange(min = 0.05, max = 3) double mass,
            @ForAll @DoubleRange(min = 18, max = 36) double mean,
            @ForAll @DoubleRange(min = 0.3, max = 2.5) double size) {
        TestHouse house = new TestHouse(walls, 2, mass);
        HouseDrive drive = house.day(mean);
        CycleControl control = CycleControl.single(297.15, 0.7).withStartUp(45);
        ThermostatEngine engine = house.engine();
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        TestHouse.unit(size),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        0);
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-11);
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
        for (int h = 0; h < 24; h++) {
            assertThat(run.onSeconds(h)).isBetween(0.0, 3600 * (1 + 1e-12));
            assertThat(run.maximumTemperature(h))
                    .isGreaterThanOrEqualTo(run.endTemperature(h) - 1e-9);
            assertThat(run.minimumTemperature(h)).isLessThanOrEqualTo(run.endTemperature(h) + 1e-9);
        }
        for (int e = 1; e < run.eventCount(); e++) {
            assertThat(run.eventTime(e)).isGreaterThanOrEqualTo(run.eventTime(e - 1));
            assertThat(run.eventSwitchesOn(e)).isNotEqualTo(run.eventSwitchesOn(e - 1));
        }
    }
}
