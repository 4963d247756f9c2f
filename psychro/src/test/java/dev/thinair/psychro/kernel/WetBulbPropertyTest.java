package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

@Domain(States.class)
class WetBulbPropertyTest {

    @Property(tries = 2000)
    void root_is_within_1e_11_K_of_bisection(@ForAll States.State s) {
        double t = s.dryBulb() - 273.15;
        double expected = Handbook.wetBulb(t, s.humidityRatio(), s.pressure());
        double found = WetBulb.temperature(s.dryBulb(), s.humidityRatio(), s.pressure()) - 273.15;
        assertThat(found).isCloseTo(expected, within(1e-11));
    }

    @Property(tries = 1000)
    void work_is_one_exact_evaluation_and_at_most_two_polynomial_ones(@ForAll States.State s) {
        int[] count = new int[2];
        double counted = WetBulb.solve(s.dryBulb(), s.humidityRatio(), s.pressure(), count);
        assertThat(count).containsExactly(counted < 273.15 ? 2 : 1, 1);
        assertThat(counted)
                .isEqualTo(WetBulb.temperature(s.dryBulb(), s.humidityRatio(), s.pressure()));
    }

    @Property(tries = 1000)
    void wet_bulb_lies_between_dew_point_and_dry_bulb(@ForAll States.State s) {
        double wetBulb = WetBulb.temperature(s.dryBulb(), s.humidityRatio(), s.pressure());
        assertThat(wetBulb).isLessThanOrEqualTo(s.dryBulb());
        if (AirModel.IDEAL.hasDewPoint(s.humidityRatio(), s.pressure())) {
            double dewPoint = DewPoint.temperature(s.humidityRatio(), s.pressure());
            assertThat(dewPoint).isLessThanOrEqualTo(wetBulb + 1e-9);
        }
    }

    @Property(tries = 1000)
    void wet_bulb_rises_with_humidity_and_with_dry_bulb(@ForAll States.State s) {
        double here = WetBulb.temperature(s.dryBulb(), s.humidityRatio(), s.pressure());
        double drier = WetBulb.temperature(s.dryBulb(), s.humidityRatio() * 0.99, s.pressure());
        assertThat(drier).isLessThanOrEqualTo(here + 1e-11);
        if (s.dryBulb() < 473) {
            double warmer = WetBulb.temperature(s.dryBulb() + 0.1, s.humidityRatio(), s.pressure());
            assertThat(warmer).isGreaterThan(here - 1e-11);
        }
    }

    // Reference cases PA-E001 to PA-E006, group E: the jump at freezing.
    @Example
    void at_the_switch_the_liquid_bulb_is_kept_and_below_it_the_ice_bulb() {
        assertThat(WetBulb.humidityRatioOverLiquid(278.15, 273.15, 101_325))
                .isCloseTo(0.001756738239, within(1e-11));
        assertThat(WetBulb.humidityRatioOverIce(278.15, 273.15, 101_325))
                .isCloseTo(0.001990172512, within(1e-11));
        double last = WetBulb.humidityRatioOverLiquid(278.15, 273.15, 101_325);
        assertThat(WetBulb.temperature(278.15, last, 101_325)).isCloseTo(273.15, within(1e-11));
        assertThat(WetBulb.temperature(278.15, 0.00175673823749, 101_325) - 273.15)
                .isCloseTo(-0.35218669, within(1e-8));
        assertThat(WetBulb.temperature(281.15, 0.00174808185169, 77_000) - 273.15)
                .isCloseTo(-0.49205972, within(1e-8));
        // W between the two branches: the liquid bulb has a root, so it is the answer.
        assertThat(WetBulb.temperature(278.15, 0.0019, 101_325)).isGreaterThan(273.15);
    }

    @Example
    void where_neither_branch_has_a_root_the_answer_is_0_degC() {
        double ice =
                IdealMoistAir.humidityRatioFromVaporPressure(
                        Saturation.pressureOverIce(273.15), 101_325);
        double liquid = IdealMoistAir.saturationHumidityRatio(273.15, 101_325);
        assertThat(WetBulb.temperature(273.15, (ice + liquid) / 2, 101_325)).isEqualTo(273.15);
    }

    @Example
    void saturated_air_has_its_dry_bulb_as_wet_bulb() {
        for (double t = 174; t < 360; t += 3.7) {
            double saturated = IdealMoistAir.saturationHumidityRatio(t, 101_325);
            assertThat(WetBulb.temperature(t, saturated, 101_325)).isCloseTo(t, within(1e-11));
        }
    }

    @Example
    void ice_bulb_of_dry_air_at_the_coldest_is_just_below_it() {
        assertThat(WetBulb.temperature(173.15, 0, 20_000))
                .isBetween(173.15 - 1.3e-4, 173.15 - 1.2e-4);
    }
}
