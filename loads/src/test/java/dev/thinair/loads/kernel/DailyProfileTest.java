package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DailyProfileTest {
    private static final DailyProfile PRESENT = DailyProfile.FUNDAMENTALS_2009_TO_2021;

    private static void refused(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @ParameterizedTest
    @EnumSource(DailyProfile.class)
    void mean_is_of_the_day_and_the_extremes_are_the_range(DailyProfile profile) {
        double[] f = IntStream.range(0, 24).mapToDouble(profile::fraction).toArray();
        assertThat(java.util.Arrays.stream(f).average().orElseThrow())
                .isCloseTo(profile.meanFraction(), within(1e-15));
        assertThat(f).contains(0.0, 1.0);
        assertThat(profile.fraction(24)).isEqualTo(f[0]);
        assertThat(profile.fraction(5)).isEqualTo(1);
        for (double v : f) {
            assertThat(v).isBetween(0.0, 1.0);
        }
    }

    @Test
    void solar_time_is_rounded_to_the_hour_on_any_day() {
        assertThat(PRESENT.fractionAtSolarTime(9.4 * 3600)).isEqualTo(0.55);
        assertThat(PRESENT.fractionAtSolarTime(9.6 * 3600)).isEqualTo(0.38);
        assertThat(PRESENT.fractionAtSolarTime(23.6 * 3600)).isEqualTo(0.82);
        assertThat(PRESENT.fractionAtSolarTime(-0.6 * 3600)).isEqualTo(0.75);
        assertThat(PRESENT.fractionAtSolarTime(33 * 3600)).isEqualTo(0.55);
        assertThat(PRESENT.fractionAtSolarTime(-86_400)).isEqualTo(0.82);
        assertThat(PRESENT.fractionAtSolarTime(172_800)).isEqualTo(0.82);
    }

    @Test
    void wet_bulb_follows_its_own_range_up_to_the_dry_bulb() {
        assertThat(PRESENT.wetBulb(293, 4, 300, 12)).isCloseTo(293 - 0.13 * 4, within(1e-12));
        assertThat(PRESENT.wetBulb(293, 4, 290, 12)).isEqualTo(290);
        assertThat(PRESENT.dryBulb(305, 15, 12)).isCloseTo(305 - 0.13 * 15, within(1e-12));
    }

    @Test
    void what_is_out_of_range_is_refused_by_name() {
        refused("hour", () -> PRESENT.fraction(-1));
        refused("hour", () -> PRESENT.fraction(25));
        refused("apparent solar time", () -> PRESENT.fractionAtSolarTime(172_801));
        refused("apparent solar time", () -> PRESENT.fractionAtSolarTime(-86_401));
        refused("design dry bulb", () -> PRESENT.dryBulb(179, 10, 1));
        refused("design dry bulb", () -> PRESENT.dryBulb(Double.NaN, 10, 1));
        refused("daily range", () -> PRESENT.dryBulb(300, 61, 1));
        refused("daily range", () -> PRESENT.dryBulb(300, -1, 1));
        refused("design wet bulb", () -> PRESENT.wetBulb(341, 4, 300, 1));
        refused("daily wet-bulb range", () -> PRESENT.wetBulb(293, -1, 300, 1));
        refused("dry bulb is", () -> PRESENT.wetBulb(293, 4, 341, 1));
    }
}
