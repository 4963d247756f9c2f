package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;

class OpenDoorwayTest {

    @Test
    void flow_is_the_orifice_flow_integrated_over_half_the_doorway() {
        double width = 0.8;
        double height = 2.0;
        double difference = 1.5;
        double temperature = 295;
        // z = u^2 takes the square root out of the integrand.
        double integral =
                new SimpsonIntegrator(1e-12, 1e-14, 3, 40)
                        .integrate(
                                100_000,
                                u ->
                                        2
                                                * u
                                                * Math.sqrt(
                                                        2
                                                                * 9.80665
                                                                * difference
                                                                / temperature
                                                                * u
                                                                * u),
                                0,
                                Math.sqrt(height / 2));
        assertThat(OpenDoorway.volumeFlow(width, height, difference, temperature))
                .isCloseTo(OpenDoorway.DISCHARGE * width * integral, within(1e-10));
    }

    @Test
    void no_difference_moves_no_air_and_thin_air_carries_less_heat() {
        assertThat(OpenDoorway.volumeFlow(0.8, 2, 0, 295)).isZero();
        assertThat(OpenDoorway.conductance(0.8, 2, 1, 295, 0.92))
                .isLessThan(OpenDoorway.conductance(0.8, 2, 1, 295, 1.2));
    }

    @Test
    void conductance_carries_the_heat_of_the_air_that_moves() {
        double flow = OpenDoorway.volumeFlow(0.8, 2, 1.5, 295);
        assertThat(OpenDoorway.conductance(0.8, 2, 1.5, 295, 0.95))
                .isCloseTo(0.95 * 1006 * flow, within(1e-9));
        // twice as wide, twice the air; four times as warm, twice the air
        assertThat(OpenDoorway.volumeFlow(1.6, 2, 1.5, 295)).isCloseTo(2 * flow, within(1e-12));
        assertThat(OpenDoorway.volumeFlow(0.8, 2, 6, 295)).isCloseTo(2 * flow, within(1e-12));
        // twice as high, the root of eight times the air
        assertThat(OpenDoorway.volumeFlow(0.8, 4, 1.5, 295))
                .isCloseTo(Math.pow(2, 1.5) * flow, within(1e-12));
    }

    @Test
    void bad_doorways_are_refused_by_name() {
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0, 2, 1, 295))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("doorway width is 0.0 m");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(11, 2, 1, 295))
                .hasMessageContaining("doorway width is 11.0 m");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, 0, 1, 295))
                .hasMessageContaining("doorway height is 0.0 m");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, 6, 1, 295))
                .hasMessageContaining("doorway height is 6.0 m");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, 2, -1, 295))
                .hasMessageContaining("temperature difference of the rooms is -1.0 K");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, 2, 1, 249))
                .hasMessageContaining("mean temperature of the rooms is 249.0 K");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, Double.NaN, 1, 295))
                .hasMessageContaining("doorway height is NaN m");
        assertThatThrownBy(() -> OpenDoorway.volumeFlow(0.8, 2, 31, 295))
                .hasMessageContaining("temperature difference of the rooms is 31.0 K");
        assertThatThrownBy(() -> OpenDoorway.conductance(0.8, 2, 1, 295, 0))
                .hasMessageContaining("air density is 0.0 kg/m3");
    }
}
