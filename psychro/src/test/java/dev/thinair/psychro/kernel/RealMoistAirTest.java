package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Domain(States.class)
class RealMoistAirTest {

    private static final double SEA = 101_325;

    // ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1 table 2 (reference cases PA-B001 ff.), read in
    // a public transcription. Half a printed digit plus 2 parts in 1e4, as stated there, in W_s and
    // v_s; h_s 3 parts in 1e4 of the whole scale of the row.
    @ParameterizedTest
    @CsvSource({
        "-60, 6.7e-6, 0.6027, -60.325", "-40, 7.93e-5, 0.6597, -40.031",
        "-20, 6.373e-4, 0.7172, -18.542", "0, 3.79e-3, 0.778, 9.4744",
        "10, 7.6627e-3, 0.8116, 29.354", "20, 0.014761, 0.8498, 57.558",
        "30, 0.027333, 0.8961, 100.01", "40, 0.049145, 0.9567, 166.68",
        "60, 0.15354, 1.1752, 460.87"
    })
    void saturated_air_is_that_of_the_handbook_table(
            double celsius, double ratio, double volume, double enthalpy) {
        double t = celsius + 273.15;
        double w = RealMoistAir.saturationHumidityRatio(t, SEA);
        assertThat(w).isCloseTo(ratio, within(2.5e-4 * ratio + 5e-8));
        assertThat(RealMoistAir.specificVolume(t, w, SEA)).isCloseTo(volume, within(9e-5));
        assertThat(RealMoistAir.enthalpy(t, w, SEA) / 1000)
                .isCloseTo(enthalpy, within(1.3e-4 * Math.abs(enthalpy) + 0.005));
    }

    // RP-1485 tables A.3 and A.11 as reproduced in a published library's tests (reference cases
    // PA-B069 to PA-B085).
    @Test
    void dry_and_hot_air_is_that_of_RP_1485() {
        assertThat(RealMoistAir.enthalpy(213.15, 0, SEA)).isCloseTo(-60_341, within(2.0));
        assertThat(RealMoistAir.enthalpy(293.15, 0, SEA)).isCloseTo(20_117, within(2.0));
        assertThat(RealMoistAir.enthalpy(363.15, 0, SEA)).isCloseTo(90_668, within(2.0));
        assertThat(RealMoistAir.enthalpy(473.15, 0, SEA)).isCloseTo(202_520, within(10.0));
        assertThat(RealMoistAir.enthalpy(473.15, 0.5, SEA)).isCloseTo(1_641_400, within(50.0));
        assertThat(RealMoistAir.specificVolume(473.15, 0.5, SEA)).isCloseTo(2.416, within(6e-4));
        assertThat(RealMoistAir.wetBulb(473.15, 0, SEA) - 273.15).isCloseTo(45.07, within(0.02));
        assertThat(RealMoistAir.wetBulb(473.15, 0.5, SEA) - 273.15).isCloseTo(81.12, within(0.02));
    }

    // IAPWS G8-10 computations (reference cases PA-D001 to PA-D041); tolerances as stated there.
    @Test
    void unsaturated_air_is_that_of_the_international_guideline() {
        double w = RealMoistAir.humidityRatioFromRelativeHumidity(308.15, 0.2, SEA);
        assertThat(w).isCloseTo(0.007021188, within(1.8e-6));
        assertThat(RealMoistAir.enthalpy(308.15, w, SEA)).isCloseTo(53_225.87, within(15.0));
        assertThat(RealMoistAir.density(308.15, w, SEA)).isCloseTo(1.14098, within(6.8e-5));
        assertThat(RealMoistAir.wetBulb(308.15, w, SEA) - 273.15).isCloseTo(18.85729, within(0.01));
        assertThat(RealMoistAir.dewPoint(w, SEA) - 273.15).isCloseTo(8.715655, within(0.01));
        double cold = RealMoistAir.humidityRatioFromRelativeHumidity(243.15, 0.8, 70108.42216);
        assertThat(cold).isCloseTo(0.0002708155, within(6.8e-8));
        assertThat(RealMoistAir.enthalpy(243.15, cold, 70108.42216))
                .isCloseTo(-29_398.22, within(9.9));
    }

    @ParameterizedTest
    @CsvSource({
        "-80, 101325, 1.009189", "-40, 101325, 1.005687", "0.01, 101325, 1.004168",
        "10, 101325, 1.00415", "25, 101325, 1.004413", "25, 77593.442, 1.003716",
        "40, 54019.751, 1.003586", "60, 101325, 1.005906", "20, 54019.751, 1.002847"
    })
    void enhancement_factor_is_within_its_stated_error(double celsius, double p, double factor) {
        assertThat(EnhancementFactor.value(celsius + 273.15, p)).isCloseTo(factor, within(1.8e-4));
    }

    @Test
    void enhancement_fades_where_water_boils() {
        double boiling = IapwsSaturation.liquidTemperature(80_000);
        assertThat(EnhancementFactor.value(boiling - 1e-6, 80_000)).isCloseTo(1, within(1e-5));
        assertThat(EnhancementFactor.value(boiling + 1e-6, 80_000)).isEqualTo(1);
        assertThat(EnhancementFactor.value(boiling - 5, 80_000)).isBetween(1.0, 1.01);
    }

    // Second virial coefficients, cm3/mol: dry air and steam near room temperature as tabulated by
    // G8-10 implementations (from memory, hence loose); the temperature terms by differences.
    @Test
    void virial_enthalpy_terms_are_the_derivatives() {
        for (double t = 180; t < 470; t += 13) {
            double d = 1e-3;
            assertThat(SecondVirial.airEnthalpy(t))
                    .isCloseTo(
                            SecondVirial.air(t)
                                    - t
                                            * (SecondVirial.air(t + d) - SecondVirial.air(t - d))
                                            / (2 * d),
                            within(1e-10));
            assertThat(SecondVirial.crossEnthalpy(t))
                    .isCloseTo(
                            SecondVirial.cross(t)
                                    - t
                                            * (SecondVirial.cross(t + d)
                                                    - SecondVirial.cross(t - d))
                                            / (2 * d),
                            within(1e-9));
            double vapor = SecondVirial.vaporEnthalpy(t);
            assertThat(vapor)
                    .isCloseTo(
                            SecondVirial.vapor(t)
                                    - t
                                            * (SecondVirial.vapor(t + d)
                                                    - SecondVirial.vapor(t - d))
                                            / (2 * d),
                            within(1e-6 * Math.abs(vapor)));
        }
        assertThat(SecondVirial.air(300) * 1e6).isCloseTo(-7.3, within(0.5));
        assertThat(SecondVirial.vapor(373.15) * 1e6).isCloseTo(-452, within(10.0));
    }

    // Fundamentals 2021 ch. 1 table 3 (reference cases PA-A046 to PA-A055), kJ/kg.
    @Test
    void condensate_enthalpies_are_those_of_the_handbook_table() {
        assertThat(RealMoistAir.liquidEnthalpy(283.15)).isCloseTo(42_020, within(30.0));
        assertThat(RealMoistAir.liquidEnthalpy(323.15)).isCloseTo(209_340, within(30.0));
        assertThat(RealMoistAir.liquidEnthalpy(373.15)).isCloseTo(419_100, within(100.0));
        assertThat(RealMoistAir.iceEnthalpy(233.15)).isCloseTo(-411_470, within(30.0));
        assertThat(RealMoistAir.iceEnthalpy(253.15)).isCloseTo(-373_930, within(30.0));
        assertThat(RealMoistAir.iceEnthalpy(273.15)).isCloseTo(-333_470, within(5.0));
    }

    @Property(tries = 1000)
    void every_way_in_gives_back_the_state(@ForAll States.State s) {
        double t = s.dryBulb();
        double w = s.humidityRatio() * 0.99;
        double p = s.pressure();
        double rh = RealMoistAir.relativeHumidity(t, w, p);
        Assume.that(rh < 1);
        close(RealMoistAir.humidityRatioFromRelativeHumidity(t, rh, p), w);
        double h = RealMoistAir.enthalpy(t, w, p);
        close(RealMoistAir.humidityRatioFromEnthalpy(t, h, p), w);
        assertThat(RealMoistAir.dryBulbFromEnthalpy(h, w, p)).isCloseTo(t, within(1e-8));
        if (AirModel.REAL.hasDewPoint(w, p)) {
            double dewPoint = RealMoistAir.dewPoint(w, p);
            assertThat(dewPoint).isLessThanOrEqualTo(t + 1e-9);
            if (dewPoint != 273.15) {
                close(RealMoistAir.humidityRatioFromDewPoint(dewPoint, p), w);
            }
        }
        double wetBulb = RealMoistAir.wetBulb(t, w, p);
        assertThat(wetBulb).isLessThanOrEqualTo(t);
        if (wetBulb >= 173.15 && wetBulb != 273.15) {
            double back = RealMoistAir.humidityRatioFromWetBulb(t, wetBulb, p);
            assertThat(back).isCloseTo(w, within(3e-9 * w + 1e-12));
        }
    }

    @Property(tries = 1000)
    void real_and_ideal_air_differ_by_percents_at_most(@ForAll States.State s) {
        Assume.that(s.dryBulb() > 213 && s.dryBulb() < 323 && s.pressure() >= 50_000);
        Assume.that(s.pressure() <= 110_000);
        double t = s.dryBulb();
        double w = s.humidityRatio();
        double p = s.pressure();
        assertThat(RealMoistAir.specificVolume(t, w, p))
                .isCloseTo(
                        IdealMoistAir.specificVolume(t, w, p),
                        within(0.005 * IdealMoistAir.specificVolume(t, w, p)));
        assertThat(RealMoistAir.enthalpy(t, w, p))
                .isCloseTo(IdealMoistAir.enthalpy(t, w), within(1000.0));
    }

    @Test
    void saturated_and_gap_states_have_the_obvious_answers() {
        double w = RealMoistAir.saturationHumidityRatio(300, SEA);
        assertThat(RealMoistAir.wetBulb(300, w, SEA)).isCloseTo(300, within(1e-9));
        assertThat(RealMoistAir.degreeOfSaturation(300, w, SEA)).isEqualTo(1);
        assertThat(RealMoistAir.relativeHumidity(300, w, SEA)).isCloseTo(1, within(1e-14));
        double ice = RealMoistAir.saturationHumidityRatio(Math.nextDown(273.15), SEA);
        double liquid = RealMoistAir.saturationHumidityRatio(273.15, SEA);
        assertThat(liquid).isGreaterThan(ice);
        assertThat(RealMoistAir.dewPoint((ice + liquid) / 2, SEA)).isEqualTo(273.15);
        assertThat(RealMoistAir.wetBulb(273.15, (ice + liquid) / 2, SEA)).isEqualTo(273.15);
        double last = RealMoistAir.humidityRatioFromWetBulb(278.15, 273.15, SEA);
        assertThat(RealMoistAir.wetBulb(278.15, last, SEA)).isCloseTo(273.15, within(1e-9));
        assertThat(RealMoistAir.wetBulb(278.15, last * 0.999, SEA)).isLessThan(273.0);
    }

    private static void close(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-9 * expected + 1e-13));
    }
}
