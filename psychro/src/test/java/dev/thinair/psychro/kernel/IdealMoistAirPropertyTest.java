package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

@Domain(States.class)
class IdealMoistAirPropertyTest {

    @Property(tries = 1000)
    void closed_forms_are_the_handbooks(@ForAll States.State s) {
        double t = s.dryBulb() - 273.15;
        double w = s.humidityRatio();
        double p = s.pressure();
        double vapor = p * w / (0.621945 + w);
        near(IdealMoistAir.vaporPressure(w, p), vapor, 1e-14);
        near(IdealMoistAir.humidityRatioFromVaporPressure(vapor, p), w, 1e-13);
        near(
                IdealMoistAir.relativeHumidity(s.dryBulb(), w, p),
                vapor / Handbook.pressure(t),
                1e-12);
        assertThat(IdealMoistAir.enthalpy(s.dryBulb(), w))
                .isCloseTo(1000 * Handbook.enthalpy(t, w), within(1e-6));
        near(
                IdealMoistAir.specificVolume(s.dryBulb(), w, p),
                287.042 * s.dryBulb() * (1 + 1.607858 * w) / p,
                1e-14);
        near(
                IdealMoistAir.density(s.dryBulb(), w, p),
                (1 + w) * p / (287.042 * s.dryBulb() * (1 + 1.607858 * w)),
                1e-14);
        near(IdealMoistAir.specificHeat(w), 1006 + 1860 * w, 1e-15);
    }

    @Property(tries = 1000)
    void every_way_in_gives_back_the_humidity_ratio(@ForAll States.State s) {
        double t = s.dryBulb();
        double w = s.humidityRatio();
        double p = s.pressure();
        double rh = Math.min(IdealMoistAir.relativeHumidity(t, w, p), 1);
        close(IdealMoistAir.humidityRatioFromRelativeHumidity(t, rh, p), w);
        close(IdealMoistAir.humidityRatioFromEnthalpy(t, IdealMoistAir.enthalpy(t, w)), w);
        assertThat(IdealMoistAir.dryBulbFromEnthalpy(IdealMoistAir.enthalpy(t, w), w))
                .isCloseTo(t, within(1e-9 * t));
        if (AirModel.IDEAL.hasDewPoint(w, p)) {
            double dewPoint = IdealMoistAir.dewPoint(w, p);
            if (dewPoint != 273.15) {
                close(IdealMoistAir.humidityRatioFromDewPoint(dewPoint, p), w);
            }
        }
        double wetBulb = IdealMoistAir.wetBulb(t, w, p);
        if (wetBulb >= 173.15 && wetBulb != 273.15) {
            close(IdealMoistAir.humidityRatioFromWetBulb(t, wetBulb, p), w);
        }
    }

    @Property(tries = 1000)
    void more_vapor_means_more_of_everything_but_density(@ForAll States.State s) {
        Assume.that(s.humidityRatio() > 1e-6);
        double t = s.dryBulb();
        double p = s.pressure();
        double more = s.humidityRatio();
        double less = more * 0.9;
        assertThat(IdealMoistAir.enthalpy(t, more)).isGreaterThan(IdealMoistAir.enthalpy(t, less));
        assertThat(IdealMoistAir.relativeHumidity(t, more, p))
                .isGreaterThan(IdealMoistAir.relativeHumidity(t, less, p));
        assertThat(IdealMoistAir.density(t, more, p)).isLessThan(IdealMoistAir.density(t, less, p));
        assertThat(IdealMoistAir.dewPoint(more, p))
                .isGreaterThanOrEqualTo(IdealMoistAir.dewPoint(less, p));
    }

    @Property(tries = 1000)
    void degree_of_saturation_is_not_above_relative_humidity(@ForAll States.State s) {
        double saturation = Saturation.pressure(s.dryBulb());
        Assume.that(saturation < 0.94 * s.pressure() && s.humidityRatio() > 0);
        double degree =
                IdealMoistAir.degreeOfSaturation(s.dryBulb(), s.humidityRatio(), s.pressure());
        double rh = s.relativeHumidity();
        // Fundamentals 2021 ch. 1 eq. (23).
        near(degree / (1 - (1 - degree) * saturation / s.pressure()), rh, 1e-9);
        assertThat(degree).isLessThanOrEqualTo(rh * (1 + 1e-12));
    }

    @Property(tries = 1000)
    void the_quick_look_at_saturation_agrees_with_the_full_one(@ForAll States.State s) {
        double t = s.dryBulb();
        double p = s.pressure();
        Assume.that(Saturation.pressure(t) < 0.94 * p);
        double saturated = IdealMoistAir.saturationHumidityRatio(t, p);
        AirModel.IDEAL.requireUnsaturated(t, s.humidityRatio(), p);
        AirModel.IDEAL.requireUnsaturated(t, saturated, p);
        assertThatThrownBy(() -> AirModel.IDEAL.requireUnsaturated(t, saturated * (1 + 1e-7), p))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a relative humidity of 1.000000")
                .hasMessageContaining("but must not be above " + saturated + " kg/kg, saturation");
    }

    @Example
    void the_quick_look_at_saturation_reaches_both_ends_of_the_domain() {
        for (double t : new double[] {173.14999999999998, 173.15, 174.15, 272.15, 273.15, 473.15}) {
            AirModel.IDEAL.requireUnsaturated(t, 0, 101_325);
        }
        assertThatThrownBy(() -> AirModel.IDEAL.requireUnsaturated(173.1, 0, 101_325))
                .hasMessage("dry bulb is 173.1 K, but must lie in [173.15, 473.15] K");
        assertThatThrownBy(() -> AirModel.IDEAL.requireUnsaturated(474.15, 0, 101_325))
                .hasMessage("dry bulb is 474.15 K, but must lie in [173.15, 473.15] K");
        assertThatThrownBy(() -> AirModel.IDEAL.requireUnsaturated(Double.NaN, 0, 101_325))
                .hasMessage("dry bulb is NaN K, but must lie in [173.15, 473.15] K");
        assertThatThrownBy(() -> AirModel.IDEAL.requireUnsaturated(300, 0, 0))
                .hasMessage("air pressure is 0.0 Pa, but must lie in [20000.0, 200000.0] Pa");
    }

    // Reference cases PA-C001 to PA-C006, PA-C013 to PA-C018, PA-C025 to PA-C030 (own
    // computation in 30-digit arithmetic from Fundamentals 2021 ch. 1): printed digits.
    @Example
    void states_of_the_reference_table() {
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(308.15, 0.2, 101_325);
        assertThat(w).isCloseTo(0.0069864548176, within(1e-13));
        assertThat(IdealMoistAir.enthalpy(308.15, w)).isCloseTo(53_137.941707, within(1e-5));
        assertThat(IdealMoistAir.specificVolume(308.15, w, 101_325))
                .isCloseTo(0.88275937461, within(1e-11));
        assertThat(IdealMoistAir.density(308.15, w, 101_325))
                .isCloseTo(1.1407258691, within(1e-10));
        assertThat(IdealMoistAir.wetBulb(308.15, w, 101_325) - 273.15)
                .isCloseTo(18.870232179, within(1e-9));
        assertThat(IdealMoistAir.dewPoint(w, 101_325) - 273.15)
                .isCloseTo(8.7066906748, within(1e-10));
        double thin = IdealMoistAir.humidityRatioFromRelativeHumidity(308.15, 0.15, 77593.44199);
        assertThat(IdealMoistAir.wetBulb(308.15, thin, 77593.44199) - 273.15)
                .isCloseTo(15.834220911, within(1e-9));
        double cold = IdealMoistAir.humidityRatioFromRelativeHumidity(263.15, 0.7, 101_325);
        assertThat(cold).isCloseTo(0.0011187291762, within(1e-13));
        assertThat(IdealMoistAir.wetBulb(263.15, cold, 101_325) - 273.15)
                .isCloseTo(-10.975603273, within(1e-9));
        assertThat(IdealMoistAir.dewPoint(cold, 101_325) - 273.15)
                .isCloseTo(-13.95680138, within(1e-8));
    }

    @Example
    void edges() {
        assertThat(IdealMoistAir.humidityRatioFromRelativeHumidity(300, 0, 50_000)).isZero();
        assertThat(IdealMoistAir.enthalpy(273.15, 0)).isZero();
        assertThat(IdealMoistAir.enthalpy(273.15, 1)).isEqualTo(2_501_000);
        assertThat(IdealMoistAir.liquidEnthalpy(283.15)).isCloseTo(41_860, within(1e-9));
        assertThat(IdealMoistAir.iceEnthalpy(263.15)).isCloseTo(-354_400, within(1e-9));
        assertThat(IdealMoistAir.iceEnthalpy(273.15)).isEqualTo(-333_400);
        assertThat(
                        IdealMoistAir.humidityRatioFromVaporPressure(
                                1e5 * 10 / 10.621945 * (1 - 1e-15), 1e5))
                .isCloseTo(10, within(1e-12));
        assertThat(IdealMoistAir.relativeHumidity(473.15, 0.5, 50_000)).isBetween(0.01, 0.02);
    }

    private static void near(double actual, double expected, double relative) {
        assertThat(actual).isCloseTo(expected, within(relative * Math.abs(expected)));
    }

    /** 1e-9 relative; 1e-13 kg/kg is what rounding leaves of the difference of large terms. */
    private static void close(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-9 * expected + 1e-13));
    }
}
