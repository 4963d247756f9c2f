package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VentilationAirTest {

    // Fundamentals 2021 (SI), ch. 17, section 9 and Eq. (14): LD-D029 to LD-D032.
    @Test
    void handbook_house() {
        assertThat(VentilationAir.wholeHouseRate(195.3, 3) * 1000).isCloseTo(43, within(0.6));
        assertThat(VentilationAir.total(36, 0, 43)).isCloseTo(79, within(1e-12));
        assertThat(VentilationAir.combined(10, 60)).isEqualTo(60);
        assertThat(VentilationAir.combined(50, 60)).isEqualTo(80);
        assertThat(VentilationAir.sensible(0.060, 0, 0, 9.1, 101_325)).isCloseTo(672, within(1.0));
    }

    // LD-D033 and D034: factor 1.23 by pressure ratio.
    @Test
    void handbook_factor_at_elevation() {
        assertThat(VentilationAir.sensible(0.060, 0, 0, 9.1, p(1_609)))
                .isCloseTo(552.979, within(0.0672));
        assertThat(VentilationAir.sensible(0.079, 0, 0, 43, p(3_030)))
                .isCloseTo(2880.029, within(0.418));
    }

    private static double p(double elevation) {
        return 101_325 * Math.pow(1 - 2.25577e-5 * elevation, 5.2559);
    }

    @Test
    void heat_recovery_spares_its_share() {
        double without = VentilationAir.sensible(0.1, 0.06, 0, 10, 101_325);
        double with = VentilationAir.sensible(0.1, 0.06, 0.75, 10, 101_325);
        assertThat(with / without).isCloseTo(1 - 0.75 * 0.6, within(1e-12));
        assertThat(VentilationAir.sensible(0.1, 0.06, 0.75, -10, 101_325)).isEqualTo(-with);
        assertThat(VentilationAir.latent(0.1, 0.06, 0.5, 0.004, 101_325))
                .isCloseTo(3_010_000 * 0.07 * 0.004, within(1e-9));
        assertThat(VentilationAir.latent(0.1, 0.06, 0.5, 0.004, 50_662.5))
                .isCloseTo(3_010_000 * 0.07 * 0.004 / 2, within(1e-9));
    }

    // LD-D039: attic between roof at 60 C, house at 24 C and ventilation air at 40 C.
    @Test
    void buffer_space_of_the_handbook() {
        double attic =
                VentilationAir.bufferTemperature(
                        1.23 * 100,
                        313.15,
                        new double[] {100, 60 * 0.2},
                        new double[] {333.15, 297.15},
                        0);
        assertThat(attic - 273.15).isCloseTo(47.69362, within(1e-4));
        assertThat(VentilationAir.bufferTemperature(100, 300, new double[0], new double[0], 500))
                .isCloseTo(305, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                VentilationAir.bufferTemperature(
                                        0, 300, new double[] {0}, new double[] {300}, 0))
                .withMessageContaining("sum of conductances");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                VentilationAir.bufferTemperature(
                                        0, 300, new double[] {1}, new double[0], 0))
                .withMessageContaining("number of temperatures");
    }
}
