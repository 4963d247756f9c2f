package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Worked processes. Numbers named PA-G... are reference cases of own computation in 30-digit
 * arithmetic from ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1; PA-F... are its worked examples,
 * read off charts, so their tolerances are what a chart can be read to.
 */
class ProcessesTest {

    private static final AirModel IDEAL = AirModel.IDEAL;
    private static final double SEA = 101_325;

    private static double c(double celsius) {
        return celsius + 273.15;
    }

    @Test
    void wet_coil_forward_PA_G001_to_G005() {
        double t1 = c(26.66666667);
        double w1 = WetBulb.humidityRatio(t1, c(19.44444444), SEA);
        CoilOutcome.Wet out = (CoilOutcome.Wet) CoolingCoil.leaving(IDEAL, t1, w1, c(9), 0.15, SEA);
        assertThat(out.dryBulb() - 273.15).isCloseTo(11.6665794, within(1e-6));
        assertThat(out.humidityRatio()).isCloseTo(0.00773368178, within(1e-10));
        double h1 = IdealMoistAir.enthalpy(t1, w1);
        assertThat(
                        CoolingCoil.heatRemoved(
                                h1,
                                w1,
                                out.enthalpy(),
                                out.humidityRatio(),
                                IDEAL.condensateEnthalpy(out.dryBulb())))
                .isCloseTo(23_892.4402, within(1e-3));
        assertThat(
                        CoolingCoil.sensibleHeatRatio(
                                IDEAL, t1, w1, out.dryBulb(), out.humidityRatio(), SEA))
                .isCloseTo(0.636152232, within(1e-8));
    }

    @Test
    void wet_coil_inverse_PA_G006_G007() {
        double t1 = c(26.66666667);
        double w1 = WetBulb.humidityRatio(t1, c(19.44444444), SEA);
        CoilLine.Wet line = (CoilLine.Wet) CoolingCoil.line(IDEAL, t1, w1, c(11.67), 0.00773, SEA);
        assertThat(line.apparatusDewPoint() - 273.15).isCloseTo(8.9797944, within(1e-6));
        assertThat(line.bypassFactor()).isCloseTo(0.15115512, within(1e-7));
    }

    @Test
    void dry_coil_PA_G022_to_G025() {
        double p = 77593.44199;
        double t1 = c(26.66666667);
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(t1, 0.25, p);
        CoilOutcome.Dry out = (CoilOutcome.Dry) CoolingCoil.leaving(IDEAL, t1, w1, c(9), 0.15, p);
        assertThat(out.humidityRatio()).isEqualTo(w1).isCloseTo(0.00708956751, within(1e-10));
        assertThat(out.dryBulb() - 273.15).isCloseTo(11.65, within(1e-6));
        assertThat(IdealMoistAir.enthalpy(t1, w1) - out.enthalpy())
                .isCloseTo(15_304.7854, within(1e-3));
        assertThat(CoolingCoil.sensibleHeatRatio(IDEAL, t1, w1, out.dryBulb(), w1, p)).isEqualTo(1);
    }

    @Test
    void line_that_misses_the_curve_is_no_coil_state() {
        // 26 degC, 50 % to 22 degC with half the moisture gone: no surface is cold enough.
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(26), 0.5, SEA);
        CoilLine line = CoolingCoil.line(IDEAL, c(26), w1, c(22), 0.5 * w1, SEA);
        assertThat(((CoilLine.NoState) line).reason()).contains("misses the saturation curve");
    }

    @Test
    void line_just_touching_the_curve_is_found_and_just_missing_is_not() {
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(26), 0.5, SEA);
        double w2 = 0.9 * w1;
        double low = c(15);
        double high = c(25.9);
        for (int i = 0; i < 60; i++) {
            double t2 = (low + high) / 2;
            if (CoolingCoil.line(IDEAL, c(26), w1, t2, w2, SEA) instanceof CoilLine.Wet) {
                low = t2;
            } else {
                high = t2;
            }
        }
        CoilLine.Wet touching =
                (CoilLine.Wet) CoolingCoil.line(IDEAL, c(26), w1, low - 1e-6, w2, SEA);
        assertThat(CoolingCoil.line(IDEAL, c(26), w1, high + 1e-6, w2, SEA))
                .isInstanceOf(CoilLine.NoState.class);
        // Where it touches, line and curve have one slope dW/dT (nearly, the line is straight in
        // h).
        double t = touching.apparatusDewPoint();
        double slope =
                (IdealMoistAir.saturationHumidityRatio(t + 1e-4, SEA)
                                - IdealMoistAir.saturationHumidityRatio(t - 1e-4, SEA))
                        / 2e-4;
        double line = (w1 - w2) / (c(26) - low);
        assertThat(slope).isCloseTo(line, within(0.05 * line));
    }

    @Test
    void frosting_coil_finds_its_surface_below_freezing() {
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(10), 0.6, SEA);
        CoilOutcome.Wet out =
                (CoilOutcome.Wet) CoolingCoil.leaving(IDEAL, c(10), w1, c(-6), 0.2, SEA);
        CoilLine.Wet line =
                (CoilLine.Wet)
                        CoolingCoil.line(IDEAL, c(10), w1, out.dryBulb(), out.humidityRatio(), SEA);
        assertThat(line.apparatusDewPoint()).isCloseTo(c(-6), within(1e-6));
        assertThat(line.bypassFactor()).isCloseTo(0.2, within(1e-6));
    }

    @Test
    void states_that_no_coil_makes() {
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(c(26), 0.5, SEA);
        assertThat(CoolingCoil.line(IDEAL, c(26), w, c(26), 0.9 * w, SEA))
                .isEqualTo(
                        new CoilLine.NoState("the leaving dry bulb is not below the entering one"));
        assertThat(CoolingCoil.line(IDEAL, c(26), w, c(20), 1.1 * w, SEA))
                .isEqualTo(
                        new CoilLine.NoState(
                                "the leaving air holds more moisture than the entering air"));
        assertThat(CoolingCoil.line(IDEAL, c(26), w, c(5), 0.9 * w, SEA))
                .isEqualTo(new CoilLine.NoState("the leaving air is supersaturated"));
        assertThat(CoolingCoil.line(IDEAL, c(26), w, c(5), 0, SEA))
                .isEqualTo(new CoilLine.NoState("no surface dries air completely"));
        assertThat(CoolingCoil.line(IDEAL, c(26), 0, c(5), 0, SEA))
                .isEqualTo(new CoilLine.Dry(173.15));
    }

    @Test
    void coil_line_through_fog_is_reported() {
        double w = IdealMoistAir.saturationHumidityRatio(c(30), SEA);
        CoilOutcome out = CoolingCoil.leaving(IDEAL, c(30), w, c(10), 0.5, SEA);
        assertThat(((CoilOutcome.NoState) out).reason()).contains("runs through fog");
        assertThat(CoolingCoil.leaving(IDEAL, c(30), w, c(10), 0, SEA))
                .isInstanceOf(CoilOutcome.Wet.class);
    }

    @Test
    void leaving_air_saturated_is_its_own_surface() {
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(30), 0.5, SEA);
        double w2 = IdealMoistAir.saturationHumidityRatio(c(10), SEA);
        CoilLine.Wet line = (CoilLine.Wet) CoolingCoil.line(IDEAL, c(30), w1, c(10), w2, SEA);
        assertThat(line.apparatusDewPoint()).isCloseTo(c(10), within(1e-8));
        assertThat(line.bypassFactor()).isCloseTo(0, within(1e-8));
    }

    @Test
    void mixing_PA_G026_to_G031() {
        double p = 77593.44199;
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(35), 0.2, p);
        double w2 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(24), 0.5, p);
        AirPoint mix = Mixing.adiabatic(IDEAL, 0.25, c(35), w1, 0.75, c(24), w2, p);
        assertThat(mix.dryBulb() - 273.15).isCloseTo(26.73863434, within(1e-7));
        assertThat(mix.humidityRatio()).isCloseTo(0.01143730671, within(1e-11));
        assertThat(mix.isFog()).isFalse();
    }

    @Test
    void mixing_into_fog_PA_G032_to_G035() {
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(0), 0.95, SEA);
        double w2 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(30), 0.9, SEA);
        AirPoint mix = Mixing.adiabatic(IDEAL, 0.5, c(0), w1, 0.5, c(30), w2, SEA);
        assertThat(mix.isFog()).isTrue();
        assertThat(mix.dryBulb() - 273.15).isCloseTo(17.9237731, within(1e-6));
        assertThat(mix.liquid()).isCloseTo(0.0011089731, within(1e-9));
        assertThat(mix.ice()).isZero();
        double single =
                IdealMoistAir.dryBulbFromEnthalpy(
                        Mixing.mean(
                                1,
                                IdealMoistAir.enthalpy(c(0), w1),
                                1,
                                IdealMoistAir.enthalpy(c(30), w2)),
                        (w1 + w2) / 2);
        assertThat(single - 273.15).isCloseTo(15.2810408, within(1e-6));
        assertThat(IdealMoistAir.degreeOfSaturation(single, (w1 + w2) / 2, SEA))
                .isCloseTo(1.28907791, within(1e-8));
    }

    @Test
    void cold_fog_is_ice_and_fog_at_0_degC_is_both() {
        double w = IdealMoistAir.saturationHumidityRatio(c(-20), SEA);
        AirPoint ice = AirPoint.of(IDEAL, IdealMoistAir.enthalpy(c(-20), w), 1.5 * w, SEA);
        assertThat(ice.ice()).isPositive();
        assertThat(ice.liquid()).isZero();
        assertThat(ice.dryBulb()).isLessThan(273.15);
        double saturated = IdealMoistAir.saturationHumidityRatio(273.15, SEA);
        double vapor = IdealMoistAir.enthalpy(273.15, saturated);
        AirPoint both = AirPoint.of(IDEAL, vapor - 0.001 * 333_400 * 0.25, saturated + 0.001, SEA);
        assertThat(both.dryBulb()).isEqualTo(273.15);
        assertThat(both.ice()).isCloseTo(0.00025, within(1e-12));
        assertThat(both.liquid()).isCloseTo(0.00075, within(1e-12));
        assertThat(both.humidityRatio()).isEqualTo(saturated);
    }

    @Test
    void evaporative_cooler_PA_G036_G037() {
        double p = 77593.44199;
        double w1 = IdealMoistAir.humidityRatioFromRelativeHumidity(c(35), 0.1, p);
        AirPoint out = Humidifying.evaporative(IDEAL, c(35), w1, 0.85, p);
        assertThat(out.dryBulb() - 273.15).isCloseTo(17.2105945, within(1e-6));
        assertThat(out.humidityRatio()).isCloseTo(0.0118380342, within(1e-9));
        AirPoint whole = Humidifying.evaporative(IDEAL, c(35), w1, 1, p);
        assertThat(IdealMoistAir.relativeHumidity(whole.dryBulb(), whole.humidityRatio(), p))
                .isCloseTo(1, within(1e-9));
        AirPoint none = Humidifying.evaporative(IDEAL, c(35), w1, 0, p);
        assertThat(none).isEqualTo(new AirPoint(c(35), w1, 0, 0));
    }

    @Test
    void sensible_heating_PA_F006_to_F008_and_F019() {
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(c(2), 1, SEA);
        double flow = Flows.dryAirFlowFromVolume(IDEAL, c(2), w, SEA, 10);
        assertThat(flow).isCloseTo(12.74, within(0.03));
        double h2 = IdealMoistAir.enthalpy(c(40), w);
        assertThat(h2).isCloseTo(51_500, within(300.0));
        double heat = h2 - IdealMoistAir.enthalpy(c(2), w);
        assertThat(flow * heat).isCloseTo(490_000, within(5000.0));
        assertThat(SensibleHeating.leavingDryBulb(IDEAL, c(2), w, heat, SEA))
                .isCloseTo(c(40), within(1e-10));
        assertThat(SensibleHeating.surfaceTemperature(c(12), c(24.5), 0.4) - 273.15)
                .isCloseTo(32.8333, within(1e-4));
        assertThat(SensibleHeating.leavingDryBulb(c(12), c(32.83333333), 0.4) - 273.15)
                .isCloseTo(24.5, within(1e-6));
        assertThat(Flows.dryAirFlowFromMass(0.25, 5)).isEqualTo(4);
    }

    @Test
    void cooling_to_the_dew_point_is_allowed_and_below_it_refused() {
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(c(30), 0.5, SEA);
        double dewPoint = IdealMoistAir.dewPoint(w, SEA);
        double heat = IdealMoistAir.enthalpy(dewPoint + 1e-6, w) - IdealMoistAir.enthalpy(c(30), w);
        assertThat(SensibleHeating.leavingDryBulb(IDEAL, c(30), w, heat, SEA))
                .isCloseTo(dewPoint, within(2e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SensibleHeating.leavingDryBulb(IDEAL, c(30), w, heat - 100, SEA))
                .withMessageContaining("sensible cooling must stay above the dew point");
    }

    @Test
    void space_condition_line_PA_F015_to_F018() {
        double w2 = WetBulb.humidityRatio(c(25), c(19), SEA);
        assertThat(ConditionLine.slope(9000, 0.0015, 2_555_580)).isCloseTo(8_555_580, within(1.0));
        double flow = ConditionLine.dryAirFlow(c(25), w2, c(15), 9000, 0.0015, 2_555_580);
        double w1 = w2 - 0.0015 / flow;
        double h1 = IdealMoistAir.enthalpy(c(15), w1);
        double h2 = IdealMoistAir.enthalpy(c(25), w2);
        assertThat(flow * (h2 - h1)).isCloseTo(9000 + 0.0015 * 2_555_580, within(1e-8));
        assertThat((h2 - h1) / (w2 - w1)).isCloseTo(8_555_580, within(1e-3));
        assertThat(flow * IdealMoistAir.specificVolume(c(15), w1, SEA))
                .isCloseTo(0.724, within(0.012));
        assertThat(IdealMoistAir.wetBulb(c(15), w1, SEA) - 273.15).isCloseTo(14, within(0.2));
        assertThat(ConditionLine.dryAirFlow(c(25), w2, c(15), 9000, 0, 2_555_580))
                .isCloseTo(900 / IdealMoistAir.specificHeat(w2), within(1e-12));
    }

    @Test
    void steam_humidifier_PA_F013_F014() {
        double w1 = WetBulb.humidityRatio(c(20), c(8), SEA);
        double w2 = IdealMoistAir.humidityRatioFromDewPoint(c(13), SEA);
        assertThat(2 * (w2 - w1)).isCloseTo(0.015, within(3e-4));
        AirPoint out = Humidifying.injection(IDEAL, c(20), w1, w2 - w1, 2_691_070, SEA);
        assertThat(out.dryBulb() - 273.15).isCloseTo(21, within(0.6));
        assertThat(out.humidityRatio()).isCloseTo(w2, within(1e-15));
    }
}
