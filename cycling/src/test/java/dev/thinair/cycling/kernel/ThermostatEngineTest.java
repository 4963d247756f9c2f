package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermostatEngineTest {

    private static final double ZERO = 273.15;

    /** One node: C dT/dt = (To - T)/R + Qg - s Q. */
    private static RunRecord firstOrder(
            double r, double c, double to, double qg, double q, double tl, double th, int hours) {
        double[][] heat = new double[hours + 1][1];
        double[] outdoor = new double[hours + 1];
        for (int i = 0; i <= hours; i++) {
            outdoor[i] = to + ZERO;
            heat[i][0] = outdoor[i] / r + qg;
        }
        return TestHouse.oneNode(r, c)
                .run(
                        HouseDrive.dry(3600, false, heat, outdoor),
                        CycleControl.single(ZERO + 0.5 * (tl + th), th - tl),
                        UnitResponse.constant(q, 2500),
                        new double[] {ZERO + 0.5 * (tl + th)},
                        0,
                        0);
    }

    // Reference cases CYC-RC1-01, -02, -05, -06, -09, -10, -13 (own derivation, 40 digits).
    @ParameterizedTest
    @CsvSource({
        "0.005, 5e6, 35, 1000, 8000, 23.5, 24.5, 1041.81741001, 1563.00892453",
        "0.005, 5e6, 32, 500, 12000, 23.5, 24.5, 505.067682938, 2382.75449511",
        "0.004, 2e7, 38, 1500, 9000, 23, 25, 10013.0514363, 8006.67668456",
        "0.005, 5e6, 35, 1000, 3301, 23.5, 24.5, 132582.622701, 1563.00892453"
    })
    void on_and_off_times_of_a_first_order_house_are_the_closed_form(
            double r,
            double c,
            double to,
            double qg,
            double q,
            double tl,
            double th,
            double on,
            double off) {
        RunRecord run = firstOrder(r, c, to, qg, q, tl, th, 120);
        assertThat(run.eventTime(1) - run.eventTime(0)).isCloseTo(on, within(1e-4));
        assertThat(run.eventTime(2) - run.eventTime(1)).isCloseTo(off, within(1e-4));
        double ti = to + r * qg;
        double tn = ti - r * q;
        double exactOn = r * c * Math.log((th - tn) / (tl - tn));
        double exactOff = r * c * Math.log((ti - tl) / (ti - th));
        for (int e = 2; e + 1 < run.eventCount(); e++) {
            double exact = run.eventSwitchesOn(e) ? exactOn : exactOff;
            assertThat(run.eventTime(e + 1) - run.eventTime(e))
                    .isCloseTo(exact, within(1e-6 * (exactOn + exactOff)));
        }
    }

    // CYC-RCX-01 and -02.
    @Test
    void a_cycle_that_cannot_be_does_not_happen() {
        assertThat(firstOrder(0.005, 5e6, 35, 1000, 2000, 23.5, 24.5, 100).eventCount())
                .isEqualTo(1);
        assertThat(firstOrder(0.005, 5e6, 22, 200, 5000, 23.5, 24.5, 100).eventCount()).isZero();
    }

    /** Relative difference of the cycle rate from the thermostat parabola 4 Nmax X (1 - X). */
    private static double parabolaError(double band) {
        double q = 8000;
        double c = 5e6;
        RunRecord run =
                firstOrder(
                        0.005,
                        c,
                        35,
                        1000,
                        q,
                        24 - band / 2,
                        24 + band / 2,
                        Math.max(4, (int) (6 * band)));
        double on = run.eventTime(3) - run.eventTime(2);
        double off = run.eventTime(4) - run.eventTime(3);
        double x = on / (on + off);
        double most = 3600 * q / (4 * c * band);
        return Math.abs(3600 / (on + off) / (4 * most * x * (1 - x)) - 1);
    }

    @Test
    void a_small_band_reproduces_the_thermostat_parabola_with_an_error_of_second_order() {
        assertThat(parabolaError(1)).isCloseTo(2.2e-4, within(0.1e-4));
        assertThat(parabolaError(1) / parabolaError(0.1)).isCloseTo(100, within(1.0));
        assertThat(parabolaError(0.1) / parabolaError(0.01)).isCloseTo(100, within(1.0));
    }

    // CYC-RC2-01 to -06 and -08 to -13.
    @ParameterizedTest
    @CsvSource({
        "0.002, 0.01, 0.02, 5e5, 2e7, 35, 1000, 9000, 23.5, 24.5, 24, 24, 128.389602782,"
                + " 200.928016777, 440.125321853, 512.70916273, 751.413306079, 824.042175538",
        "0.001, 0.008, 0.02, 8e5, 3e7, 38, 1500, 10000, 23, 25, 24, 26, 171.607091837,"
                + " 514.054634905, 825.493597851, 1165.71833805, 1478.99150705, 1817.07445668"
    })
    void switch_times_of_air_and_mass_are_the_closed_form(
            double ria,
            double rio,
            double rmo,
            double ca,
            double cm,
            double to,
            double qg,
            double q,
            double tl,
            double th,
            double ta0,
            double tm0,
            double e1,
            double e2,
            double e3,
            double e4,
            double e5,
            double e6) {
        ModalHouse house =
                ModalHouse.of(
                        new double[] {ca, cm},
                        new double[][] {
                            {1 / ria + 1 / rio, -1 / ria}, {-1 / ria, 1 / ria + 1 / rmo}
                        });
        double[] air = {1, 0};
        double[] heat = {(to + ZERO) / rio + qg, (to + ZERO) / rmo};
        RunRecord run =
                new ThermostatEngine(house, air, air, air)
                        .run(
                                HouseDrive.dry(
                                        1200,
                                        false,
                                        new double[][] {heat, heat, heat},
                                        new double[] {308, 308, 308}),
                                CycleControl.single(ZERO + 0.5 * (tl + th), th - tl),
                                UnitResponse.constant(q, 1),
                                new double[] {ta0 + ZERO, tm0 + ZERO},
                                0,
                                0);
        double[] expected = {e1, e2, e3, e4, e5, e6};
        for (int i = 0; i < 6; i++) {
            assertThat(run.eventTime(i)).isCloseTo(expected[i], within(1e-5));
        }
    }

    // CYC-SIN-01 to -04; forcing cut into 15 s chords, whose sag moves the events by far less.
    @Test
    void switch_times_under_a_sinusoid_are_the_closed_form() {
        double r = 0.005;
        int n = 2400;
        double[][] heat = new double[n + 1][1];
        double[] outdoor = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            outdoor[i] = ZERO + 28 + 8 * Math.cos(2 * Math.PI * (15.0 * i - 54_000) / 86_400);
            heat[i][0] = outdoor[i] / r + 1000;
        }
        RunRecord run =
                TestHouse.oneNode(r, 5e6)
                        .run(
                                HouseDrive.dry(15, false, heat, outdoor),
                                CycleControl.single(ZERO + 24, 1),
                                UnitResponse.constant(9000, 1),
                                new double[] {ZERO + 22},
                                0,
                                0);
        double[] expected = {23715.3439404, 24331.4959476, 28706.0396919, 29365.0671612};
        for (int i = 0; i < 4; i++) {
            assertThat(run.eventTime(i)).isCloseTo(expected[i], within(0.01));
        }
    }

    // CYC-SINP-01.
    @Test
    void a_free_running_house_repeats_its_day() {
        double r = 0.006;
        int n = 86_400 / 5;
        double[][] heat = new double[n][1];
        double[] outdoor = new double[n];
        for (int i = 0; i < n; i++) {
            outdoor[i] = ZERO + 20 + 9 * Math.cos(2 * Math.PI * 5 * i / 86_400);
            heat[i][0] = outdoor[i] / r + 300;
        }
        RunRecord run =
                TestHouse.oneNode(r, 2e7)
                        .repeat(
                                HouseDrive.dry(5, true, heat, outdoor),
                                CycleControl.single(340, 1),
                                UnitResponse.constant(1, 1),
                                0,
                                1e-6,
                                100,
                                1);
        double highest = Arrays.stream(run.traceTemperatures()).max().orElseThrow();
        assertThat(run.repeats()).isTrue();
        assertThat(highest - ZERO).isCloseTo(22.824618722, within(1e-7));
    }

    /**
     * A second way to the same numbers: Runge-Kutta steps of one second, capacity looked up in
     * each, a second in which the thermostat switches cut at the chord's crossing.
     */
    private static final class BySeconds {
        final TestHouse house;
        final HouseDrive drive;
        final UnitResponse unit;
        double[] t;
        double w;
        boolean on;
        double age;
        double onTime;
        int starts;
        private final double[] out = new double[UnitResponse.RESULTS];
        private final double[][] k;

        BySeconds(TestHouse house, HouseDrive drive, UnitResponse unit, double[] start, double w) {
            this.house = house;
            this.drive = drive;
            this.unit = unit;
            t = start.clone();
            this.w = w;
            k = new double[4][house.n];
        }

        private void step(double at, double dt) {
            int h = (int) (at / 3600) % 24;
            int next = (h + 1) % 24;
            double f0 = at / 3600 - Math.floor(at / 3600);
            double steady = 0;
            double water = 0;
            if (on) {
                double f = f0 + 0.5 * dt / 3600;
                double outdoor =
                        drive.outdoorDryBulb[h]
                                + f * (drive.outdoorDryBulb[next] - drive.outdoorDryBulb[h]);
                unit.at(1, outdoor, 0.009, t[0], w, out);
                steady = out[UnitResponse.SENSIBLE];
                water = out[UnitResponse.MOISTURE];
            }
            double[] part = {0, 0.5 * dt, 0.5 * dt, dt};
            double[] y = new double[house.n];
            for (int p = 0; p < 4; p++) {
                for (int i = 0; i < house.n; i++) {
                    y[i] = p == 0 ? t[i] : t[i] + part[p] * k[p - 1][i];
                }
                double f = f0 + part[p] / 3600;
                for (int i = 0; i < house.n; i++) {
                    double q = drive.heat[h][i] + f * (drive.heat[next][i] - drive.heat[h][i]);
                    for (int j = 0; j < house.n; j++) {
                        q -= house.conductance[i][j] * y[j];
                    }
                    if (i == 0 && on) {
                        q -= steady * (1 - Math.exp(-(age + part[p]) / 60));
                    }
                    k[p][i] = q / house.capacity[i];
                }
            }
            for (int i = 0; i < house.n; i++) {
                t[i] += dt * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]) / 6;
            }
            double lag = 60 * (Math.exp(-age / 60) - Math.exp(-(age + dt) / 60));
            w += ((0.05 * (0.009 - w) + 1e-4) * dt - (on ? water * (dt - lag) : 0)) / 5000;
            if (on) {
                onTime += dt;
                age += dt;
            }
        }

        void day() {
            for (int s = 0; s < 86_400; s++) {
                double[] before = t.clone();
                double w0 = w;
                double age0 = age;
                double on0 = onTime;
                step(s, 1);
                double edge = on ? 296.65 : 297.65;
                if (on ? t[0] > edge : t[0] < edge) {
                    continue;
                }
                double cut = Math.max(0, Math.min(1, (edge - before[0]) / (t[0] - before[0])));
                t = before;
                w = w0;
                age = age0;
                onTime = on0;
                step(s, cut);
                on = !on;
                if (on) {
                    age = 0;
                    starts++;
                }
                step(s + cut, 1 - cut);
            }
        }
    }

    // Light, medium and heavy; sizes of about 1.0, 1.5 and 2.0 times the load. Both begin and end
    // with the
    // same weather; what one of them has still to take out at the end (a cycle may be cut there) is
    // reckoned as energy at the day's mean ratio.
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.62",
        "0.1, 0.93",
        "0.1, 1.24",
        "0.5, 0.62",
        "0.5, 0.93",
        "0.5, 1.24",
        "2, 0.62",
        "2, 0.93",
        "2, 1.24"
    })
    void a_day_agrees_with_a_simulation_in_steps_of_one_second(double mass, double size) {
        TestHouse house = new TestHouse(6, 3, mass);
        HouseDrive drive = house.day(29);
        UnitResponse unit = TestHouse.unit(size);
        CycleControl control = CycleControl.single(297.15, 1).withStartUp(60);
        ThermostatEngine engine = house.engine();
        double[] start = engine.repeat(drive, control, unit, 0.009, 0.01, 100, 0).endNodes();
        RunRecord run = engine.run(drive, control, unit, start, 0.009, 0);
        BySeconds steps = new BySeconds(house, drive, unit, start, 0.009);
        steps.day();
        double[] end = run.endNodes();
        double left = 0;
        for (int i = 0; i < house.n; i++) {
            left += house.capacity[i] * (end[i] - steps.t[i]);
        }
        double owed = left / run.totalDelivered() * run.totalOnSeconds();
        assertThat(run.totalStarts()).isEqualTo(steps.starts);
        assertThat(run.totalOnSeconds() + owed)
                .isCloseTo(steps.onTime, within(0.001 * steps.onTime));
        assertThat(run.endHumidityRatio(23)).isCloseTo(steps.w, within(3e-5));
        assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-12);
        assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
    }

    /** Starts and running seconds of a thermostat that is looked at once a step. */
    private static double[] stepped(TestHouse house, HouseDrive drive, double q, double dt) {
        ModalHouse modal = house.modal();
        double[] rate = modal.rates();
        double[] sensor = modal.row(house.air());
        int n = rate.length;
        double[] z = new double[n];
        double[] start = new double[house.n];
        Arrays.fill(start, 297.15);
        modal.toModal(start, z);
        double[] f0 = new double[n];
        double[] f1 = new double[n];
        double[] decay = new double[n];
        double[] gain = new double[n];
        for (int k = 0; k < n; k++) {
            decay[k] = Math.exp(-rate[k] * dt);
            gain[k] = -Math.expm1(-rate[k] * dt) / rate[k];
        }
        modal.forcing(drive.heat[0], f0);
        boolean on = false;
        int starts = 0;
        long steps = 0;
        double air = 297.15;
        for (int h = 0; h < drive.intervals(); h++) {
            modal.forcing(drive.heat[h + 1], f1);
            for (int m = 0; m < Math.round(3600 / dt); m++) {
                if (on ? air <= 296.65 : air >= 297.65) {
                    on = !on;
                    starts += on ? 1 : 0;
                }
                steps += on ? 1 : 0;
                air = 0;
                for (int k = 0; k < n; k++) {
                    double slope = (f1[k] - f0[k]) / 3600;
                    double f = f0[k] + slope * m * dt - (on ? q * sensor[k] : 0);
                    z[k] = z[k] * decay[k] + f * gain[k] + slope * (dt - gain[k]) / rate[k];
                    air += sensor[k] * z[k];
                }
            }
            System.arraycopy(f1, 0, f0, 0, n);
        }
        return new double[] {starts, steps * dt};
    }

    @Test
    void starts_and_running_time_are_what_ever_finer_stepping_tends_to() {
        TestHouse house = new TestHouse(3, 2, 0.3);
        HouseDrive all = house.year(24 * 200);
        int first = 24 * 188;
        int hours = 24 * 12;
        HouseDrive drive =
                HouseDrive.dry(
                        3600,
                        false,
                        Arrays.copyOfRange(all.heat, first, first + hours + 1),
                        Arrays.copyOfRange(all.outdoorDryBulb, first, first + hours + 1));
        double q = 9000;
        double[] start = new double[house.n];
        Arrays.fill(start, 297.15);
        RunRecord run =
                house.engine()
                        .run(
                                drive,
                                CycleControl.single(297.15, 1),
                                UnitResponse.constant(q, 1),
                                start,
                                0,
                                0);
        double[] coarse = stepped(house, drive, q, 60);
        double[] middle = stepped(house, drive, q, 10);
        double[] fine = stepped(house, drive, q, 1);
        double[] finest = stepped(house, drive, q, 0.1);
        assertThat(run.totalStarts()).isGreaterThan(200);
        assertThat(finest[0]).isCloseTo(run.totalStarts(), within(0.002 * run.totalStarts()));
        // A look a step is half a step late on average: the error falls with the step.
        double[] off = new double[4];
        double[][] runs = {coarse, middle, fine, finest};
        for (int i = 0; i < 4; i++) {
            off[i] = Math.abs(runs[i][0] - run.totalStarts());
        }
        assertThat(off[0]).isGreaterThan(2 * off[1]);
        assertThat(off[1]).isGreaterThan(2 * off[2]);
        assertThat(off[2]).isGreaterThanOrEqualTo(off[3]);
        // The last run is cut somewhere else: a part of one run of several hundred.
        assertThat(finest[1]).isCloseTo(run.totalOnSeconds(), within(1e-3 * run.totalOnSeconds()));
    }

    @Test
    void heat_and_water_balance_over_a_year() {
        TestHouse house = new TestHouse(14, 4, 1);
        HouseDrive year = house.year(8760);
        for (CycleControl.Staging staging : CycleControl.Staging.values()) {
            CycleControl control =
                    CycleControl.single(297.15, 1)
                            .withStartUp(60)
                            .withStaging(staging, staging == CycleControl.Staging.SINGLE ? 1 : 0.4);
            ThermostatEngine engine = house.engine();
            RunRecord run =
                    engine.run(
                            year,
                            control,
                            TestHouse.unit(1),
                            engine.heldAtSetpoint(year, control),
                            0.009,
                            0);
            assertThat(run.totalStarts()).isGreaterThan(100);
            assertThat(Math.abs(run.heatImbalance())).isLessThan(1e-12);
            assertThat(Math.abs(run.waterImbalance())).isLessThan(1e-9);
        }
    }

    @Test
    void looking_at_the_capacity_more_often_changes_the_energy_by_less_than_two_thousandths() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive year = house.year(8760);
        CycleControl control = CycleControl.single(297.15, 1).withStartUp(60);
        ThermostatEngine engine = house.engine();
        double[] start = engine.heldAtSetpoint(year, control);
        UnitResponse unit = TestHouse.unit(1);
        double usual = engine.run(year, control, unit, start, 0.009, 0).totalElectricity();
        double fine =
                engine.run(year, control.withRefresh(10), unit, start, 0.009, 0).totalElectricity();
        assertThat(usual).isCloseTo(fine, within(0.002 * fine));
    }

    @Test
    void the_unit_rests_for_its_minimum_off_time() {
        TestHouse house = new TestHouse(6, 3, 0.1);
        HouseDrive drive = house.day(33);
        CycleControl control = CycleControl.single(297.15, 0.3).withStartUp(60).withMinimumOff(400);
        ThermostatEngine engine = house.engine();
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        TestHouse.unit(1.5),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        0);
        assertThat(run.totalStarts()).isGreaterThan(10);
        double shortest = Double.POSITIVE_INFINITY;
        for (int e = 0; e + 1 < run.eventCount(); e++) {
            if (!run.eventSwitchesOn(e)) {
                shortest = Math.min(shortest, run.eventTime(e + 1) - run.eventTime(e));
            }
        }
        assertThat(shortest).isBetween(400 - 1e-6, 400 + 1e-6);
    }

    @Test
    void a_variable_unit_holds_the_setpoint_between_its_limits_and_starts_less() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(30);
        CycleControl single = CycleControl.single(297.15, 1).withStartUp(60);
        CycleControl variable = single.withStaging(CycleControl.Staging.VARIABLE, 0.3);
        UnitResponse unit = TestHouse.unit(0.8);
        RunRecord cycling = house.engine().repeat(drive, single, unit, 0.009, 0.01, 100, 0);
        RunRecord steady = house.engine().repeat(drive, variable, unit, 0.009, 0.01, 100, 0);
        assertThat(steady.totalStarts()).isLessThan(cycling.totalStarts() / 3);
        assertThat(steady.totalOnSeconds()).isGreaterThan(cycling.totalOnSeconds());
        // In the evening the load is between the limits: the thermostat stays at its setpoint.
        assertThat(steady.meanTemperature(12)).isCloseTo(297.15, within(0.01));
        assertThat(steady.maximumTemperature(12) - steady.minimumTemperature(12)).isLessThan(0.02);
    }

    @Test
    void a_unit_with_a_memory_is_told_what_it_gave_after_each_start() {
        TestHouse house = new TestHouse(6, 3, 0.1);
        UnitResponse unit = TestHouse.unit(1.2);
        double[] told = new double[2];
        UnitResponse counting =
                TestHouse.watched(
                        unit,
                        (seconds, state, startUpFactor, air) -> {
                            assertThat(startUpFactor).isBetween(0.0, 1.0);
                            if (state != null) {
                                told[0] += seconds * startUpFactor * state[UnitResponse.SENSIBLE];
                                told[1] += seconds * state[UnitResponse.SENSIBLE];
                            } else {
                                assertThat(startUpFactor).isEqualTo(1);
                            }
                        });
        CycleControl control = CycleControl.single(297.15, 0.5).withStartUp(60);
        ThermostatEngine engine = house.engine();
        HouseDrive drive = house.day(33);
        RunRecord run =
                engine.run(
                        drive, control, counting, engine.heldAtSetpoint(drive, control), 0.009, 0);
        assertThat(run.totalStarts()).isGreaterThan(10);
        assertThat(told[0]).isCloseTo(run.totalDelivered(), within(1e-9 * run.totalDelivered()));
        assertThat(told[1]).isCloseTo(run.totalSteady(), within(1e-9 * run.totalSteady()));
        assertThat(told[0]).isLessThan(0.98 * told[1]);
    }

    @Test
    void the_second_stage_comes_in_only_when_the_first_does_not_hold() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        CycleControl two =
                CycleControl.single(297.15, 1)
                        .withStartUp(60)
                        .withStaging(CycleControl.Staging.TWO, 0.6);
        UnitResponse unit = TestHouse.unit(0.8);
        RunRecord mild = house.engine().repeat(house.day(21), two, unit, 0.009, 0.01, 100, 0);
        RunRecord hot = house.engine().repeat(house.day(30), two, unit, 0.009, 0.01, 100, 0);
        assertThat(mild.totalElectricity())
                .isCloseTo(mild.totalOnSeconds() * 0.6 * 0.8 * 2600, within(1.0));
        assertThat(hot.totalElectricity()).isGreaterThan(hot.totalOnSeconds() * 0.62 * 0.8 * 2600);
    }

    @Test
    void
            a_first_stage_that_does_not_end_calls_the_second_by_time_until_the_thermostat_is_satisfied() {
        // One node, load between the stages: every phase is an exponential, so the times are known.
        double r = 0.005;
        double c = 5e6;
        double high = 8000;
        double low = 0.5 * high;
        double to = 35;
        double on = 24.5;
        double off = 23.5;
        double wait = 900;
        double[][] heat = new double[25][1];
        double[] outdoor = new double[25];
        for (int i = 0; i < 25; i++) {
            outdoor[i] = to + ZERO;
            heat[i][0] = outdoor[i] / r + 2500;
        }
        CycleControl two =
                new CycleControl(
                        new double[] {ZERO + 24},
                        on - off,
                        CycleControl.Staging.TWO,
                        0.5,
                        2,
                        wait,
                        0,
                        0,
                        300,
                        3600,
                        0,
                        0,
                        0,
                        0);
        double[] atLow = {0};
        UnitResponse counting =
                TestHouse.watched(
                        UnitResponse.constant(high, 2500),
                        (seconds, state, startUpFactor, air) -> {
                            if (state != null && state[UnitResponse.SENSIBLE] < 0.9 * high) {
                                atLow[0] += seconds;
                            }
                        });
        RunRecord run =
                TestHouse.oneNode(r, c)
                        .run(
                                HouseDrive.dry(3600, false, heat, outdoor),
                                two,
                                counting,
                                new double[] {ZERO + 24},
                                0,
                                0);
        double restLow = to + r * (2500 - low);
        double restHigh = to + r * (2500 - high);
        double afterLow = restLow + (on - restLow) * Math.exp(-wait / (r * c));
        assertThat(afterLow).isBetween(on, on + 2);
        double down = r * c * Math.log((afterLow - restHigh) / (off - restHigh));
        for (int k = 0; k + 1 < run.eventCount(); k += 2) {
            assertThat(run.eventTime(k + 1) - run.eventTime(k))
                    .isCloseTo(wait + down, within(1e-6 * (wait + down)));
        }
        assertThat(run.eventCount()).isGreaterThan(10);
        assertThat(atLow[0]).isCloseTo(wait * run.totalStarts(), within(wait));
    }

    @Test
    void load_above_capacity_is_not_delivered_but_shows_as_a_miss() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(40);
        CycleControl control = CycleControl.single(295.15, 1).withStartUp(60);
        RunRecord run =
                house.engine().repeat(drive, control, TestHouse.unit(0.4), 0.009, 0.01, 200, 0);
        assertThat(run.totalOnSeconds()).isCloseTo(86_400, within(1e-6));
        assertThat(run.longestRun()).isCloseTo(86_400, within(1e-6));
        assertThat(run.totalAbove()).isGreaterThan(3600);
        assertThat(run.totalStarts()).isZero();
    }

    @Test
    void runs_do_not_depend_on_thread_or_on_what_ran_before() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(29);
        CycleControl control = CycleControl.single(297.15, 1).withStartUp(60);
        UnitResponse unit = TestHouse.unit(0.8);
        ThermostatEngine used = house.engine();
        used.repeat(house.day(33), control.withStartUp(30), unit, 0.012, 0.01, 100, 60);
        RunRecord first = used.repeat(drive, control, unit, 0.009, 0.01, 100, 60);
        RunRecord other =
                CompletableFuture.supplyAsync(
                                () ->
                                        house.engine()
                                                .repeat(drive, control, unit, 0.009, 0.01, 100, 60))
                        .join();
        assertThat(first.eventCount()).isEqualTo(other.eventCount());
        assertThat(first.totalElectricity()).isEqualTo(other.totalElectricity());
        assertThat(first.traceTemperatures()).isEqualTo(other.traceTemperatures());
    }

    @Test
    void a_coil_that_drips_back_makes_the_house_damper() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(28);
        CycleControl automatic = CycleControl.single(297.15, 1).withStartUp(60);
        CycleControl continuous =
                new CycleControl(
                        new double[] {297.15},
                        1,
                        CycleControl.Staging.SINGLE,
                        1,
                        1,
                        Double.POSITIVE_INFINITY,
                        0,
                        60,
                        300,
                        3600,
                        400,
                        400,
                        720,
                        1);
        UnitResponse unit = TestHouse.unit(1.2);
        RunRecord dry = house.engine().repeat(drive, automatic, unit, 0.009, 0.01, 100, 0);
        RunRecord damp = house.engine().repeat(drive, continuous, unit, 0.009, 0.01, 100, 0);
        assertThat(damp.endHumidityRatio(23)).isGreaterThan(dry.endHumidityRatio(23) + 2e-4);
        assertThat(Math.abs(damp.waterImbalance())).isLessThan(1e-9);
        assertThat(Math.abs(damp.heatImbalance())).isLessThan(1e-12);
        assertThat(damp.totalElectricity()).isGreaterThan(dry.totalElectricity());
    }

    private static CycleControl fanThatRunsOn(double holds, double gives) {
        return new CycleControl(
                new double[] {297.15},
                1,
                CycleControl.Staging.SINGLE,
                1,
                1,
                Double.POSITIVE_INFINITY,
                0,
                60,
                300,
                900,
                400,
                400,
                holds,
                gives);
    }

    /**
     * A unit on ducts that leak: what condenses and what the rooms lose by it are two constants.
     */
    private static UnitResponse leaking(double condenses, double roomsLose, double[] condensed) {
        return new UnitResponse() {
            @Override
            public void at(double stage, double to, double wo, double tr, double w, double[] out) {
                TestHouse.unit(1.2).at(stage, to, wo, tr, w, out);
                out[MOISTURE] = roomsLose;
                out[MOISTURE_SLOPE] = 0;
                out[CONDENSATE] = condenses;
            }

            @Override
            public void passed(double seconds, double[] state, double factor, double air) {
                condensed[0] += state == null ? 0 : seconds * factor * state[CONDENSATE];
            }
        };
    }

    @ParameterizedTest
    @CsvSource({
        // tight, leaking supply, return that draws in humid air, leaks that dry the house
        "4e-4, 4e-4",
        "4e-4, 3e-4",
        "4e-4, -1e-4",
        "2e-4, 3e-4"
    })
    void water_that_condenses_drains_or_stays_or_comes_back(double condenses, double roomsLose) {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(28);
        ThermostatEngine engine = house.engine();
        double[] condensed = new double[1];
        CycleControl control = fanThatRunsOn(300, 0.3);
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        leaking(condenses, roomsLose, condensed),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        0);
        assertThat(run.totalStarts()).isGreaterThan(20);
        double removed = 0;
        for (int i = 0; i < run.count(); i++) {
            removed += run.removedWater(i);
        }
        double leaked = (roomsLose / condenses - 1) * condensed[0];
        assertThat(run.condensedWater()).isCloseTo(condensed[0], within(1e-9 * condensed[0]));
        assertThat(removed)
                .isCloseTo(
                        condensed[0] + leaked - run.evaporatedWater(), within(1e-9 * condensed[0]));
        // Vapour in = drained + held by the coil + in the air + carried off by leaks.
        double in = run.waterIn();
        assertThat(run.drainedWater() + run.retainedWater() + run.waterStored() + leaked)
                .isCloseTo(in, within(1e-6 * in));
        // While the unit rests: at most 0.3 of the rate of condensation, for it falls.
        double rested = run.count() * run.interval() - run.totalOnSeconds();
        assertThat(run.evaporatedWater())
                .isBetween(0.1 * condenses * rested, 0.3 * condenses * rested);
        assertThat(run.retainedWater()).isBetween(0.0, 300 * condenses);
        assertThat(run.drainedWater()).isPositive();
    }

    @Test
    void a_dry_coil_gives_nothing_back_though_leaks_dry_the_house() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(28);
        ThermostatEngine engine = house.engine();
        CycleControl control = fanThatRunsOn(300, 0.3);
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        leaking(0, 2e-4, new double[1]),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        0);
        assertThat(run.totalStarts()).isGreaterThan(20);
        assertThat(run.evaporatedWater()).isZero();
        assertThat(run.condensedWater()).isZero();
    }

    @Test
    void a_coil_gives_back_what_it_can_hold_at_most() {
        TestHouse house = new TestHouse(6, 3, 0.5);
        HouseDrive drive = house.day(28);
        ThermostatEngine engine = house.engine();
        double[] condensed = new double[1];
        CycleControl control = fanThatRunsOn(20, 5);
        RunRecord run =
                engine.run(
                        drive,
                        control,
                        leaking(4e-4, -1e-4, condensed),
                        engine.heldAtSetpoint(drive, control),
                        0.009,
                        0);
        int stops = run.completedRuns();
        // Every rest is long enough to dry 20 s of condensation at five times its rate.
        assertThat(run.evaporatedWater())
                .isCloseTo(stops * 20 * 4e-4, within(stops * 20 * 4e-4 * 0.05));
    }
}
