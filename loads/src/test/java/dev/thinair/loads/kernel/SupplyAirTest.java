package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class SupplyAirTest {
    private static void refused(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @Test
    void the_flow_gives_the_load_back() {
        for (double w : new double[] {0, 0.008, 0.1}) {
            double m = SupplyAir.dryAirMassFlow(5000, 297, 286, w);
            assertThat(m * (1006 + 1860 * w) * 11).isCloseTo(5000, within(1e-9));
        }
        // moist air carries more, so less of it is asked for
        assertThat(SupplyAir.dryAirMassFlow(5000, 297, 286, 0.01))
                .isLessThan(SupplyAir.dryAirMassFlow(5000, 297, 286, 0));
    }

    @Test
    void heating_is_the_same_with_both_signs_turned() {
        assertThat(SupplyAir.dryAirMassFlow(-5000, 293, 313, 0.004))
                .isEqualTo(SupplyAir.dryAirMassFlow(5000, 313, 293, 0.004))
                .isPositive();
        assertThat(SupplyAir.dryAirMassFlow(0, 297, 286, 0)).isZero();
        assertThat(SupplyAir.dryAirMassFlow(0, 286, 297, 0)).isZero();
    }

    @Test
    void a_tenth_of_a_kelvin_is_the_least_difference() {
        assertThat(SupplyAir.dryAirMassFlow(1006, 300.125, 300, 0)).isCloseTo(8, within(1e-9));
        assertThat(SupplyAir.dryAirMassFlow(-1006, 300, 300.125, 0)).isCloseTo(8, within(1e-9));
        refused("cannot carry", () -> SupplyAir.dryAirMassFlow(1, 300, 299.95, 0));
        refused("cannot carry", () -> SupplyAir.dryAirMassFlow(0, 300, 300, 0));
        refused("cannot carry", () -> SupplyAir.dryAirMassFlow(-1, 300, 290, 0));
        refused("cannot carry", () -> SupplyAir.dryAirMassFlow(1, 290, 300, 0));
    }

    @Test
    void volume_by_factor_grows_as_pressure_falls() {
        assertThat(SupplyAir.volumeFlowByFactor(1230, 10, 1)).isCloseTo(0.1, within(1e-15));
        assertThat(SupplyAir.volumeFlowByFactor(1230, 10, 0.8)).isCloseTo(0.125, within(1e-15));
        assertThat(SupplyAir.volumeFlowByFactor(0, 10, 1)).isZero();
    }

    @Test
    void what_is_out_of_range_is_refused_by_name() {
        refused("sensible load", () -> SupplyAir.dryAirMassFlow(2e9, 300, 290, 0));
        refused("sensible load", () -> SupplyAir.dryAirMassFlow(Double.NaN, 300, 290, 0));
        refused("room temperature", () -> SupplyAir.dryAirMassFlow(1, 351, 290, 0));
        refused("supply temperature", () -> SupplyAir.dryAirMassFlow(1, 300, 199, 0));
        refused("humidity ratio", () -> SupplyAir.dryAirMassFlow(1, 300, 290, 0.11));
        refused("humidity ratio", () -> SupplyAir.dryAirMassFlow(1, 300, 290, -0.01));
        refused("sensible load", () -> SupplyAir.volumeFlowByFactor(-1, 10, 1));
        refused("temperature difference", () -> SupplyAir.volumeFlowByFactor(1, 0.09, 1));
        refused("temperature difference", () -> SupplyAir.volumeFlowByFactor(1, 101, 1));
        refused("pressure ratio", () -> SupplyAir.volumeFlowByFactor(1, 10, 0.29));
        refused("pressure ratio", () -> SupplyAir.volumeFlowByFactor(1, 10, 1.2));
    }
}
