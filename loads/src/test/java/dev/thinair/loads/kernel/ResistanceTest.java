package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResistanceTest {
    // Timber-framed wall with brick, public building-regulation draft, Scottish Executive, Building
    // (Scotland) Act 2003, Non-domestic Annex 6.B.2 (ISO 6946 combined method); reference cases
    // LD-B006 to
    // B010.
    private static final double[] INSULATED = {0.04, 0.132, 0.09, 0.146, 3.333, 0.1, 0.13};
    private static final double[] TIMBER = {0.04, 0.132, 0.09, 0.146, 1.077, 0.1, 0.13};

    @Test
    void combined_method_of_iso_6946() {
        assertThat(Resistance.upperLimit(0.905, INSULATED, TIMBER)).isCloseTo(3.5299, within(1e-4));
        assertThat(Resistance.lowerLimit(0.905, INSULATED, TIMBER)).isCloseTo(3.4178, within(1e-4));
        assertThat(Resistance.combined(0.905, INSULATED, TIMBER)).isCloseTo(3.4739, within(1e-4));
    }

    // ASHRAE Handbook, Fundamentals 2021 SI, ch. 27, example 3 (LD-B001 to B003).
    @Test
    void handbook_stud_wall() {
        double[] batt = {0.03, 0.11, 0.70, 2.30, 0.08, 0.12};
        double[] stud = {0.03, 0.11, 0.70, 0.77, 0.08, 0.12};
        assertThat(1 / Resistance.upperLimit(0.75, batt, stud)).isCloseTo(0.36, within(0.006));
        assertThat(Resistance.lowerLimit(0.75, batt, stud)).isCloseTo(2.58, within(0.006));
        assertThat(Resistance.parallel(new double[] {0.75, 0.25}, new double[] {3.34, 1.81}))
                .isCloseTo(Resistance.upperLimit(0.75, batt, stud), within(1e-12));
    }

    // ISO 6946:2017, table of unventilated gaps (0.9 on both sides), from memory; it prints 0.01.
    @ParameterizedTest
    @CsvSource({
        "5, 0.11, 0.11, 0.11",
        "10, 0.15, 0.15, 0.15",
        "25, 0.18, 0.16, 0.19",
        "50, 0.18, 0.16, 0.21",
        "100, 0.18, 0.16, 0.22",
        "300, 0.18, 0.16, 0.23"
    })
    void gaps_agree_with_the_table(double mm, double horizontal, double up, double down) {
        double d = mm / 1000;
        assertThat(Resistance.airGap(d, 0, 0.9, 0.9, 283.15)).isCloseTo(horizontal, within(0.006));
        assertThat(Resistance.airGap(d, 1, 0.9, 0.9, 283.15)).isCloseTo(up, within(0.006));
        assertThat(Resistance.airGap(d, 2, 0.9, 0.9, 283.15)).isCloseTo(down, within(0.006));
    }

    @Test
    void foil_doubles_a_gap_at_least() {
        double plain = Resistance.airGap(0.025, 0, 0.9, 0.9, 283.15);
        assertThat(Resistance.airGap(0.025, 0, 0.05, 0.9, 283.15)).isGreaterThan(2 * plain);
    }

    @Test
    void taper() {
        // LD-B013
        assertThat(Resistance.taperedTransmittance(0.5, 2)).isCloseTo(0.804719, within(1e-6));
        assertThat(Resistance.taperedTransmittance(0.5, 1e-9)).isCloseTo(2, within(1e-8));
    }

    @Test
    void films() {
        assertThat(Resistance.insideFilm(0)).isEqualTo(0.13);
        assertThat(Resistance.insideFilm(1)).isEqualTo(0.10);
        assertThat(Resistance.insideFilm(2)).isEqualTo(0.17);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.insideFilm(3))
                .withMessageContaining("direction is 3");
    }

    @Test
    void bad_values_are_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.airGap(0, 0, 0.9, 0.9, 283))
                .withMessageContaining("air gap thickness");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.airGap(0.02, 9, 0.9, 0.9, 283))
                .withMessageContaining("direction is 9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.airGap(0.02, 0, 0, 0.9, 283))
                .withMessageContaining("emissivity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.combined(1, INSULATED, TIMBER))
                .withMessageContaining("area fraction is 1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.combined(0.5, INSULATED, new double[] {1}))
                .withMessageContaining("must match");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                Resistance.combined(
                                        0.5, new double[] {0.1, 9}, new double[] {0.1, 0.01}))
                .withMessageContaining("ratio of upper to lower limit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.parallel(new double[] {0.5, 0.4}, new double[] {1, 1}))
                .withMessageContaining("sum of area fractions");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.parallel(new double[] {1}, new double[] {1, 1}))
                .withMessageContaining("area fractions");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Resistance.taperedTransmittance(0, 1))
                .withMessageContaining("without the taper");
    }
}
