package dev.thinair.units;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_not_finite_is_outside_every_range(double value) {
        double all = Double.MAX_VALUE;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Range.require("azimuth", value, -all, all, "rad"))
                .withMessageStartingWith("azimuth is " + value + " rad, but must lie in [");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Range.requireAbove("area", value, -all, "m2"))
                .withMessageStartingWith("area is " + value + " m2, but must be above");
    }

    @Test
    void a_bound_missed_by_rounding_is_met() {
        double third = 1.0 / 3;
        assertThatCode(() -> Range.require("share", Math.nextUp(third), 0, third, ""))
                .doesNotThrowAnyException();
        assertThatCode(() -> Range.require("share", -Double.MIN_VALUE, 0, third, ""))
                .doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Range.require("share", third + 1e-15, 0, third, ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Range.require("share", -1e-15, 0, third, ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Range.requireAbove("area", 0, 0, "m2"));
    }
}
