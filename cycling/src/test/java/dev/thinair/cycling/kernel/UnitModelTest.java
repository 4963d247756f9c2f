package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import org.junit.jupiter.api.Test;

class UnitModelTest {

    static final double SEA = 101_325;
    static final double RATED_IN = f(80);
    static final double RATED_OUT = f(95);
    static final double RATED_W = IdealMoistAir.humidityRatioFromWetBulb(f(80), f(67), SEA);

    /** A three-ton unit, gross figures, invented. */
    static final RatingPoint RATING =
            new RatingPoint(RATED_IN, RATED_W, 0.68, RATED_OUT, SEA, 11_000, 8_300, 2_700);

    static final UnitModel UNIT = UnitModel.anchored(RATING, UnitParameters.defaultsFor(RATING));

    static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    static double[] run(
            UnitModel unit, double t, double w, double m, double to, double p, double s) {
        double[] out = new double[UnitModel.RESULTS];
        unit.steady(t, w, m, to, p, s, out);
        return out;
    }

    static double[] rated(UnitModel unit) {
        return run(unit, RATED_IN, RATED_W, 0.68, RATED_OUT, SEA, 1);
    }

    @Test
    void the_rating_point_is_reproduced() {
        double[] out = rated(UNIT);
        // 1e-8 K of coil temperature is 4e-9 of the capacity here.
        assertThat(out[UnitModel.TOTAL]).isCloseTo(11_000, within(1e-4));
        assertThat(out[UnitModel.SENSIBLE]).isCloseTo(8_300, within(1e-4));
        assertThat(out[UnitModel.POWER]).isCloseTo(2_700, within(1e-4));
        assertThat(out[UnitModel.SATURATED_SUCTION]).isCloseTo(f(45), within(1e-7));
        assertThat(out[UnitModel.CONDENSING]).isCloseTo(f(115), within(1e-7));
    }

    @Test
    void every_equation_of_the_balance_closes() {
        double m = 0.55;
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(76), f(64), 80_000);
        double[] out = run(UNIT, f(76), w, m, f(88), 80_000, 1);
        double hIn = IdealMoistAir.enthalpy(f(76), w);
        double hOut =
                IdealMoistAir.enthalpy(
                        out[UnitModel.LEAVING_DRY_BULB], out[UnitModel.LEAVING_HUMIDITY_RATIO]);
        assertThat(m * (hIn - hOut)).isCloseTo(out[UnitModel.TOTAL], within(1e-6));
        assertThat(m * (w - out[UnitModel.LEAVING_HUMIDITY_RATIO]))
                .isCloseTo(out[UnitModel.CONDENSATE], within(1e-15));
        assertThat(out[UnitModel.SENSIBLE] + out[UnitModel.LATENT])
                .isCloseTo(out[UnitModel.TOTAL], within(1e-9));
        assertThat(
                        UNIT.coilConductance()
                                * (out[UnitModel.APPARATUS_DEW_POINT]
                                        - out[UnitModel.SATURATED_SUCTION]))
                .isCloseTo(out[UnitModel.TOTAL], within(1e-6));
        Refrigerant r = Refrigerant.R410A;
        double capacity =
                r.suctionDensity(out[UnitModel.SATURATED_SUCTION])
                        * r.refrigeratingEffect(
                                out[UnitModel.SATURATED_SUCTION], out[UnitModel.CONDENSING]);
        double ratedCapacity = r.suctionDensity(f(45)) * r.refrigeratingEffect(f(45), f(115));
        assertThat(11_000 * capacity / ratedCapacity).isCloseTo(out[UnitModel.TOTAL], within(1e-3));
    }

    @Test
    void the_condenser_rejects_what_coil_and_compressor_give() {
        double[] out = run(UNIT, f(76), 0.01, 0.68, f(88), SEA, 1);
        double[] at = rated(UNIT);
        // Same outdoor mass flow up to the density of 88 instead of 95 degF.
        double x = f(95) / f(88);
        double g = x * Math.expm1(Math.log(0.3) / Math.sqrt(x)) / Math.expm1(Math.log(0.3));
        double perKelvin =
                (at[UnitModel.TOTAL] + at[UnitModel.COMPRESSOR])
                        / (at[UnitModel.CONDENSING] - f(95));
        assertThat(perKelvin * g * (out[UnitModel.CONDENSING] - f(88)))
                .isCloseTo(out[UnitModel.TOTAL] + out[UnitModel.COMPRESSOR], within(1e-3));
    }

    @Test
    void cooler_outdoor_air_gives_more_capacity_for_less_power() {
        double[] mild = run(UNIT, RATED_IN, RATED_W, 0.68, f(82), SEA, 1);
        // Typical of published tables (from memory): capacity +4 to +8 %, power -8 to -14 %.
        assertThat(mild[UnitModel.TOTAL] / 11_000).isBetween(1.04, 1.08);
        assertThat(mild[UnitModel.POWER] / 2_700).isBetween(0.86, 0.92);
    }

    @Test
    void thin_air_lowers_the_sensible_capacity_most() {
        double p = 84_556;
        // Same dry and wet bulb, same volume of air: the trade's comparison.
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(80), f(67), p);
        double[] high = run(UNIT, RATED_IN, w, 0.68 * p / SEA, RATED_OUT, p, 1);
        double[] sea = rated(UNIT);
        double total = high[UnitModel.TOTAL] / sea[UnitModel.TOTAL];
        double sensible = high[UnitModel.SENSIBLE] / sea[UnitModel.SENSIBLE];
        // Makers' altitude correction tables for fan coils have some 0.96 for the total and 0.85
        // for the sensible capacity at 5000 ft (from memory).
        assertThat(sensible).isBetween(0.82, 0.92);
        assertThat(total).isBetween(0.94, 1.0);
        assertThat(high[UnitModel.CONDENSING]).isGreaterThan(sea[UnitModel.CONDENSING] + 1);
    }

    @Test
    void a_dry_coil_removes_no_moisture() {
        double[] out = run(UNIT, f(80), 0.004, 0.68, RATED_OUT, 78_000, 1);
        assertThat(out[UnitModel.DRY]).isEqualTo(1);
        assertThat(out[UnitModel.LATENT]).isZero();
        assertThat(out[UnitModel.CONDENSATE]).isZero();
        assertThat(out[UnitModel.LEAVING_HUMIDITY_RATIO]).isEqualTo(0.004);
        assertThat(out[UnitModel.FROST]).isZero();
    }

    @Test
    void wet_and_dry_meet_at_the_entering_dew_point() {
        // Humidity at which the surface sits exactly at the dew point, found by bisection.
        double low = 0.003;
        double high = 0.012;
        for (int i = 0; i < 60; i++) {
            double mid = 0.5 * (low + high);
            if (run(UNIT, f(80), mid, 0.68, RATED_OUT, SEA, 1)[UnitModel.DRY] == 1) {
                low = mid;
            } else {
                high = mid;
            }
        }
        double[] dry = run(UNIT, f(80), low, 0.68, RATED_OUT, SEA, 1);
        double[] wet = run(UNIT, f(80), high, 0.68, RATED_OUT, SEA, 1);
        assertThat(wet[UnitModel.TOTAL]).isCloseTo(dry[UnitModel.TOTAL], within(1e-3));
        assertThat(wet[UnitModel.LATENT]).isBetween(0.0, 1e-3);
    }

    @Test
    void the_frost_airflow_is_where_the_surface_freezes() {
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(70), f(58), SEA);
        double m =
                UNIT.frostAirflow(f(70), w, f(85), SEA, 1, UnitModel.APPARATUS_DEW_POINT, 273.15);
        assertThat(m).isBetween(0.05 * 0.68, 0.68);
        assertThat(run(UNIT, f(70), w, m * 1.001, f(85), SEA, 1)[UnitModel.FROST]).isLessThan(2);
        assertThat(run(UNIT, f(70), w, m * 0.999, f(85), SEA, 1)[UnitModel.FROST]).isEqualTo(2);
        double early =
                UNIT.frostAirflow(f(70), w, f(85), SEA, 1, UnitModel.SATURATED_SUCTION, 273.15);
        assertThat(early).isGreaterThan(m);
    }

    @Test
    void a_dry_coil_below_freezing_makes_no_ice() {
        double[] out = run(UNIT, f(60), 0.001, 0.2, f(70), SEA, 1);
        assertThat(out[UnitModel.APPARATUS_DEW_POINT]).isLessThan(273.15);
        assertThat(out[UnitModel.FROST]).isZero();
    }

    @Test
    void no_airflow_keeps_a_cold_room_s_coil_from_freezing() {
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(46), f(44), SEA);
        assertThat(UNIT.frostAirflow(f(46), w, f(60), SEA, 1, UnitModel.SATURATED_SUCTION, 283.15))
                .isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void a_stated_low_stage_is_reproduced() {
        RatingPoint low =
                new RatingPoint(RATED_IN, RATED_W, 0.48, RATED_OUT, SEA, 7_600, 5_700, 1_750);
        UnitModel unit = UNIT.withLowStage(low, false);
        double[] out = run(unit, RATED_IN, RATED_W, 0.48, RATED_OUT, SEA, unit.minimumStage());
        assertThat(out[UnitModel.TOTAL]).isCloseTo(7_600, within(1e-4));
        assertThat(out[UnitModel.POWER]).isCloseTo(1_750, within(1e-4));
        assertThat(unit.minimumStage()).isBetween(0.5, 0.8);
        assertThat(unit.continuousStage()).isFalse();
        assertThat(rated(unit)[UnitModel.TOTAL]).isCloseTo(11_000, within(1e-4));
    }

    @Test
    void variable_speed_follows_its_displacement_without_a_jump() {
        UnitModel unit = UNIT.withLowStage(0.3, true);
        double before = 0;
        for (double s = 0.3; s <= 1; s += 0.01) {
            double total = run(unit, RATED_IN, RATED_W, 0.6, RATED_OUT, SEA, s)[UnitModel.TOTAL];
            assertThat(total).isGreaterThan(before);
            if (before > 0) {
                assertThat(total - before).isLessThan(250);
            }
            before = total;
        }
    }

    @Test
    void a_dirty_condenser_costs_capacity_and_power() {
        UnitModel dirty = UNIT.withFaults(new FaultFactors(0.5, 0.5, 1, 1));
        double[] out = rated(dirty);
        assertThat(out[UnitModel.TOTAL]).isLessThan(10_500);
        assertThat(out[UnitModel.POWER]).isGreaterThan(2_900);
        assertThat(out[UnitModel.CONDENSING]).isGreaterThan(f(125));
        // Cleaning brings it all back.
        assertThat(rated(dirty.withFaults(FaultFactors.NONE))).isEqualTo(rated(UNIT));
    }

    @Test
    void a_starved_evaporator_runs_colder_at_the_refrigerant_and_gives_less() {
        double[] out = rated(UNIT.withFaults(new FaultFactors(1, 1, 0.6, 1)));
        assertThat(out[UnitModel.SATURATED_SUCTION]).isLessThan(f(42));
        assertThat(out[UnitModel.TOTAL]).isLessThan(10_500);
    }

    @Test
    void a_blocked_condenser_ends_in_a_message_not_in_a_number() {
        UnitModel blocked = UNIT.withFaults(new FaultFactors(0.15, 0.15, 1, 1));
        assertThatThrownBy(() -> rated(blocked))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("condensing temperature would pass 368.15 K")
                .hasMessageContaining("high-pressure control");
    }

    @Test
    void mild_weather_holds_the_condensing_floor() {
        double[] out = run(UNIT, f(75), 0.009, 0.68, f(30), SEA, 1);
        assertThat(out[UnitModel.CONDENSING]).isEqualTo(UnitModel.CONDENSING_FLOOR);
        assertThat(out[UnitModel.COMPRESSOR]).isPositive();
    }

    @Test
    void results_do_not_depend_on_thread_or_order() {
        double[] alone =
                java.util.stream.IntStream.range(0, 2_000)
                        .mapToDouble(UnitModelTest::oneOfMany)
                        .toArray();
        double[] together =
                java.util.stream.IntStream.range(0, 2_000)
                        .parallel()
                        .map(i -> 1_999 - i)
                        .mapToDouble(UnitModelTest::oneOfMany)
                        .toArray();
        for (int i = 0; i < 2_000; i++) {
            assertThat(together[i]).isEqualTo(alone[1_999 - i]);
        }
    }

    private static double oneOfMany(int i) {
        return run(
                UNIT,
                290 + i % 20,
                0.004 + 0.0003 * (i % 17),
                0.3 + 0.05 * (i % 11),
                285 + i % 31,
                75_000 + 1_000 * (i % 23),
                1)[UnitModel.TOTAL];
    }

    @Test
    void the_jump_of_the_saturation_curve_at_freezing_does_not_stop_the_search() {
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(75), f(63), SEA);
        // Airflows across the jump: the surface crosses 273.15 K between them.
        for (int i = 0; i <= 400; i++) {
            double m = 0.68 * (0.25 + 0.0002 * i);
            double t = run(UNIT, f(75), w, m, f(95), SEA, 1)[UnitModel.APPARATUS_DEW_POINT];
            assertThat(t).isBetween(265.0, 280.0);
        }
    }
}
