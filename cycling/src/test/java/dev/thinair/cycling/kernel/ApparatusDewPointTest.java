package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import org.junit.jupiter.api.Test;

class ApparatusDewPointTest {

    private static final double BTU = 1055.05585262 / 3600;
    private static final double CFM = 0.028316846592 / 60;

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    /** The pressure formula of the reference cases. */
    private static double pressure(double z) {
        return 101_325 * Math.pow(1 - 2.25577e-5 * z, 5.2559);
    }

    private static double[] fit(
            double z, double db, double wb, double cfm, double btu, double shr) {
        double p = pressure(z);
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(db), f(wb), p);
        double m = cfm * CFM / IdealMoistAir.specificVolume(f(db), w, p);
        double[] out = new double[ApparatusDewPoint.RESULTS];
        ApparatusDewPoint.fit(f(db), w, p, m, btu * BTU, shr, out);
        return out;
    }

    private static double[] run(double z, double db, double wb, double cfm, double btu) {
        double p = pressure(z);
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(db), f(wb), p);
        double m = cfm * CFM / IdealMoistAir.specificVolume(f(db), w, p);
        double[] out = new double[ApparatusDewPoint.RESULTS];
        ApparatusDewPoint.run(f(db), w, p, m, btu * BTU, 1.30858548, out);
        return out;
    }

    @Test
    void fitted_coil() {
        // Reference cases CYC-ADP/BF/TLV-01 and -03; tolerances of the cases cut by 50: the cases'
        // own cover rounded constants.
        double[] sea = fit(0, 80, 67, 1_200, 36_000, 0.75);
        assertThat(sea[ApparatusDewPoint.TEMPERATURE] * 1.8 - 459.67)
                .isCloseTo(55.4206230029, within(1e-3));
        assertThat(sea[ApparatusDewPoint.BYPASS_FACTOR]).isCloseTo(0.135641079065, within(6e-5));
        assertThat(sea[ApparatusDewPoint.LEAVING_DRY_BULB] * 1.8 - 459.67)
                .isCloseTo(58.761785755, within(1e-3));
        double[] mile = fit(1_524, 80, 62, 1_200, 34_200, 0.75);
        assertThat(mile[ApparatusDewPoint.TEMPERATURE] * 1.8 - 459.67)
                .isCloseTo(44.8359751877, within(1e-3));
    }

    @Test
    void run_coil() {
        // Reference cases CYC-ADPF/SHRF/BFF-06 (frost) and -10.
        double[] frost = run(0, 70, 58, 400, 27_000);
        assertThat(frost[ApparatusDewPoint.TEMPERATURE] * 1.8 - 459.67)
                .isCloseTo(27.1949264983, within(2e-3));
        assertThat(frost[ApparatusDewPoint.SENSIBLE_HEAT_RATIO])
                .isCloseTo(0.678305986577, within(1e-4));
        double[] high = run(2_438, 80, 60, 1_615, 34_500);
        assertThat(high[ApparatusDewPoint.TEMPERATURE] * 1.8 - 459.67)
                .isCloseTo(49.5398559947, within(2e-3));
        assertThat(high[ApparatusDewPoint.BYPASS_FACTOR]).isCloseTo(0.135918562844, within(1e-5));
    }

    @Test
    void dry_run_has_no_latent_part() {
        double[] out = new double[ApparatusDewPoint.RESULTS];
        ApparatusDewPoint.run(f(80), 0.003, 80_000, 0.6, 6_000, 1.3, out);
        assertThat(out[ApparatusDewPoint.SENSIBLE_HEAT_RATIO]).isEqualTo(1);
        assertThat(out[ApparatusDewPoint.LEAVING_HUMIDITY_RATIO]).isEqualTo(0.003);
        double cp = IdealMoistAir.specificHeat(0.003);
        assertThat(0.6 * cp * (f(80) - out[ApparatusDewPoint.LEAVING_DRY_BULB]))
                .isCloseTo(6_000, within(1e-8));
    }

    @Test
    void points_without_a_coil_state_are_refused() {
        // Reference cases CYC-ADPX.
        assertThatThrownBy(() -> fit(0, 80, 67, 1_200, 36_000, 0.50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("no coil state (line misses the saturation curve)");
        assertThatThrownBy(() -> fit(0, 80, 72, 1_200, 36_000, 0.90))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("no coil state (leaving state supersaturated)");
        assertThatThrownBy(() -> fit(3_048, 80, 58, 1_200, 36_000, 0.95))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("no coil state (leaving state supersaturated)");
    }

    @Test
    void bad_input_is_named() {
        double[] out = new double[ApparatusDewPoint.RESULTS];
        assertThatThrownBy(() -> ApparatusDewPoint.run(f(80), 0.01, 80_000, 0, 1e4, 1.3, out))
                .hasMessageContaining("dry-air mass flow is 0.0 kg/s");
        assertThatThrownBy(() -> ApparatusDewPoint.run(f(80), 0.05, 101_325, 0.5, 1e4, 1.3, out))
                .hasMessageContaining("must not exceed saturation");
        assertThatThrownBy(() -> ApparatusDewPoint.run(f(80), 0.01, 80_000, 0.1, 3e4, 1.3, out))
                .hasMessageContaining("the coil would have to be colder than");
        assertThatThrownBy(() -> ApparatusDewPoint.fit(f(80), 0.01, 80_000, 0.5, 1e4, 1, out))
                .hasMessageContaining("sensible heat ratio is 1.0");
    }

    @Test
    void fit_and_run_are_each_others_inverse() {
        double p = 80_000;
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(78), f(64), p);
        double[] fitted = new double[ApparatusDewPoint.RESULTS];
        double[] back = new double[ApparatusDewPoint.RESULTS];
        for (double shr : new double[] {0.70, 0.75, 0.8}) {
            ApparatusDewPoint.fit(f(78), w, p, 0.6, 9_000, shr, fitted);
            double a0 = fitted[ApparatusDewPoint.BYPASS_MASS];
            assertThat(a0).isPositive();
            assertThat(Math.exp(-a0 / 0.6))
                    .isCloseTo(fitted[ApparatusDewPoint.BYPASS_FACTOR], within(1e-12));
            ApparatusDewPoint.run(f(78), w, p, 0.6, 9_000, a0, back);
            for (int i = 0; i < ApparatusDewPoint.RESULTS; i++) {
                // run keeps the leaving state on the enthalpy line of fit: the enthalpy ratio and
                // the humidity ratio differ by the curvature of h(t, W), below 1 part in 1,000.
                assertThat(back[i])
                        .as("result %d at sensible heat ratio %s", i, shr)
                        .isCloseTo(fitted[i], within(1e-3 * Math.abs(fitted[i])));
            }
        }
    }

    @Test
    void the_apparatus_dew_point_is_saturated_and_on_the_line() {
        double p = 80_000;
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(78), f(64), p);
        double[] out = new double[ApparatusDewPoint.RESULTS];
        ApparatusDewPoint.fit(f(78), w, p, 0.6, 9_000, 0.8, out);
        double t = out[ApparatusDewPoint.TEMPERATURE];
        double t2 = out[ApparatusDewPoint.LEAVING_DRY_BULB];
        double w2 = out[ApparatusDewPoint.LEAVING_HUMIDITY_RATIO];
        double online = w2 + (w - w2) / (f(78) - t2) * (t - t2);
        assertThat(IdealMoistAir.saturationHumidityRatio(t, p)).isCloseTo(online, within(1e-14));
        // The balance of the air: all heat, and the heat of the moisture alone.
        assertThat(0.6 * (IdealMoistAir.enthalpy(f(78), w) - IdealMoistAir.enthalpy(t2, w2)))
                .isCloseTo(9_000, within(1e-8));
        assertThat(0.6 * (IdealMoistAir.enthalpy(f(78), w) - IdealMoistAir.enthalpy(f(78), w2)))
                .isCloseTo(0.2 * 9_000, within(1e-8));
    }

    @Test
    void saturated_air_may_enter() {
        double[] out = new double[ApparatusDewPoint.RESULTS];
        double saturated = IdealMoistAir.saturationHumidityRatio(f(60), 80_000);
        ApparatusDewPoint.run(f(60), saturated, 80_000, 0.5, 4_000, 1.0, out);
        assertThat(out[ApparatusDewPoint.SENSIBLE_HEAT_RATIO]).isBetween(0.3, 0.8);
    }
}
