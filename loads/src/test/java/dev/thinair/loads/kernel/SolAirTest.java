package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class SolAirTest {
    private static void refused(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @Test
    void excess_balances_the_face() {
        // heat by film, sun and sky equals heat by film alone at the sol-air temperature
        assertThat(17 * SolAir.excess(0.9, 600, 0.8, 63, 17))
                .isCloseTo(0.9 * 600 - 0.8 * 63, within(1e-12));
        // a night roof is below the air: 63/17 K
        assertThat(SolAir.excess(0.9, 0, 1, 63, 17)).isCloseTo(-3.70588, within(1e-5));
        assertThat(SolAir.excess(0, 1000, 1, 0, 17)).isZero();
    }

    @Test
    void loss_to_the_sky_goes_with_the_cosine_of_the_tilt_down_to_none() {
        assertThat(SolAir.longwaveLoss(Math.PI / 3)).isCloseTo(31.5, within(1e-12));
        assertThat(SolAir.longwaveLoss(Math.PI / 2 - 1e-9)).isCloseTo(63e-9, within(1e-13));
        assertThat(SolAir.longwaveLoss(Math.PI / 2)).isEqualTo(0.0);
        assertThat(SolAir.longwaveLoss(Math.PI)).isEqualTo(0.0);
    }

    @Test
    void what_is_out_of_range_is_refused_by_name() {
        refused("solar absorptance", () -> SolAir.excess(-0.1, 100, 1, 0, 17));
        refused("irradiance", () -> SolAir.excess(0.9, 2001, 1, 0, 17));
        refused("irradiance", () -> SolAir.excess(0.9, Double.NaN, 1, 0, 17));
        refused("emissivity", () -> SolAir.excess(0.9, 100, 1.1, 0, 17));
        refused("long-wave loss", () -> SolAir.excess(0.9, 100, 1, 201, 17));
        refused("long-wave loss", () -> SolAir.excess(0.9, 100, 1, -101, 17));
        refused("outside heat transfer coefficient", () -> SolAir.excess(0.9, 100, 1, 0, 0.9));
        refused("outside heat transfer coefficient", () -> SolAir.excess(0.9, 100, 1, 0, 101));
        refused("tilt", () -> SolAir.longwaveLoss(3.2));
        refused("tilt", () -> SolAir.longwaveLoss(Double.NaN));
    }
}
