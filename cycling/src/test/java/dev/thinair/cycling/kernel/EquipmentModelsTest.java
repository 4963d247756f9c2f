package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import org.junit.jupiter.api.Test;

/** Heat pump, furnace and the tests of a seasonal rating against figures reckoned by hand. */
class EquipmentModelsTest {

    private static final double SEA = 101_325;

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    @Test
    void a_furnace_gives_its_rated_input_less_altitude_less_flue() {
        assertThat(FurnaceModel.output(20_000, 0.8, 0.95)).isCloseTo(15_200, within(1e-9));
        assertThat(FurnaceModel.temperatureRise(10_100, 0.5, 1010)).isCloseTo(20, within(1e-12));
    }

    @Test
    void points_that_were_not_tested_lie_on_the_line_less_what_frost_takes() {
        // 6/10 of the way from 6 to 10 kW is 8.4 kW, less a tenth; 2840 W less 1.5 percent.
        assertThat(HeatPumpModel.defaultCapacity35(10_000, 6_000)).isCloseTo(7_560, within(1e-9));
        assertThat(HeatPumpModel.defaultPower35(3_000, 2_600)).isCloseTo(2_797.4, within(1e-9));
    }

    /** Air cooled in small steps along a coil, per kelvin between air and refrigerant. */
    private static double cooled(double units) {
        int steps = 200_000;
        double left = 1;
        for (int i = 0; i < steps; i++) {
            double half = left * (1 - 0.5 * units / steps);
            left -= half * units / steps;
        }
        return 1 - left;
    }

    @Test
    void thin_air_lets_the_outdoor_coil_run_colder_by_what_it_lost() {
        double outdoor = 270;
        for (double density : new double[] {0.6, 0.8, 1}) {
            for (double share : new double[] {0.4, 1}) {
                double seen = HeatPumpModel.seenOutdoor(outdoor, density * SEA, share);
                // Same heat by less air: 1.2 transfer units, conductance with the root of the flow.
                double full = HeatPumpModel.OUTDOOR_DIFFERENCE * share * cooled(1.2);
                double thin =
                        density
                                * (HeatPumpModel.OUTDOOR_DIFFERENCE * share + outdoor - seen)
                                * cooled(1.2 / Math.sqrt(density));
                assertThat(thin).isCloseTo(full, within(1e-8 * full));
            }
        }
    }

    @Test
    void capacity_and_power_are_those_of_the_outdoor_air_the_machine_sees() {
        double outdoor = f(30);
        double q = 8_000 - 5 / 18.0 * (8_000 - 6_400);
        assertThat(HeatPumpModel.value(outdoor, SEA, 10e3, 8e3, 6_400, 10e3, 8e3, 6_400))
                .isCloseTo(q, within(1e-8));
        double seen = HeatPumpModel.seenOutdoor(outdoor, 75_000, q / 10e3);
        assertThat(seen).isLessThan(outdoor - 1);
        double fahrenheit = seen * 1.8 - 459.67;
        assertThat(HeatPumpModel.value(outdoor, 75_000, 3e3, 2_900, 2_600, 10e3, 8e3, 6_400))
                .isCloseTo(2_600 + (fahrenheit - 17) / 18 * 300, within(1e-8));
        // Far below the points the line would cross zero.
        assertThat(HeatPumpModel.value(f(-50), SEA, 10e3, 5e3, 1_000, 10e3, 5e3, 1_000)).isZero();
    }

    private static final double HUMIDITY =
            IdealMoistAir.humidityRatioFromWetBulb(f(80), f(67), SEA);

    private static final RatingPoint RATING =
            RatingPoint.ofNet(f(80), HUMIDITY, 0.566, f(95), SEA, 10_000, 7_400, 3_000, 350);

    @Test
    void net_figures_and_the_fan_make_the_gross_point() {
        assertThat(RATING.totalCapacity()).isEqualTo(10_350);
        assertThat(RATING.sensibleCapacity()).isEqualTo(7_750);
        assertThat(RATING.power()).isEqualTo(2_650);
    }

    @Test
    void defaults_stand_in_fixed_relation_to_the_point() {
        UnitParameters d = UnitParameters.defaultsFor(RATING);
        assertThat(d.suctionAtRating())
                .isCloseTo(f(80) - UnitParameters.RETURN_TO_SUCTION, within(1e-12));
        assertThat(d.condensingAtRating())
                .isCloseTo(f(95) + UnitParameters.CONDENSING_OVER_OUTDOOR, within(1e-12));
        assertThat(d.outdoorFanPower())
                .isCloseTo(10_350 * UnitParameters.OUTDOOR_FAN_SHARE, within(1e-9));
        assertThat(d.refrigerant()).isSameAs(Refrigerant.R410A);
    }

    @Test
    void the_first_test_of_a_season_is_the_rating_and_milder_ones_do_better() {
        UnitModel unit = UnitModel.anchored(RATING, UnitParameters.defaultsFor(RATING));
        double[] tests = UnitSeason.tests(unit, 350);
        assertThat(tests).hasSize(4);
        assertThat(tests[0]).isCloseTo(10_000, within(1e-3));
        assertThat(tests[1]).isCloseTo(3_000, within(1e-3));
        double[] state = new double[UnitModel.RESULTS];
        unit.steady(f(80), HUMIDITY, 0.566, f(82), SEA, 1, state);
        assertThat(tests[2]).isCloseTo(state[UnitModel.TOTAL] - 350, within(1e-9));
        assertThat(tests[3]).isCloseTo(state[UnitModel.POWER] + 350, within(1e-9));
        assertThat(tests[2]).isGreaterThan(tests[0]);
        assertThat(tests[3]).isLessThan(tests[1]);
    }

    @Test
    void the_heat_of_a_bin_is_its_hours_times_load_or_capacity() {
        // 67 degF: 2/30 of 10 kW over 1.1; 102 degF: 37/30 of it, but the unit gives less.
        double[] tests = {10_000, 3_000, 10_600, 2_700};
        RatingBins bins = RatingBins.COOLING;
        assertThat(UnitSeason.binHeat(tests, 1, bins, 0))
                .isCloseTo(0.214 * 10_000 / 1.1 * 2 / 30, within(1e-6));
        assertThat(UnitSeason.binHeat(tests, 1, bins, 7))
                .isCloseTo(0.004 * (10_000 - 7 / 13.0 * 600), within(1e-6));
        assertThat(UnitSeason.binHeat(tests, 0.5, bins, 0))
                .isCloseTo(0.5 * 0.214 * 10_000 / 1.1 * 2 / 30, within(1e-6));
    }

    @Test
    void a_constant_unit_gives_and_takes_its_stage_s_fraction() {
        double[] out = new double[UnitResponse.RESULTS];
        UnitResponse.constant(9_000, 2_500).at(0.5, 308, 0.01, 297, 0.009, out);
        assertThat(out[UnitResponse.SENSIBLE]).isEqualTo(4_500);
        assertThat(out[UnitResponse.POWER]).isEqualTo(1_250);
        assertThat(out[UnitResponse.CONDENSATE]).isZero();
    }
}
