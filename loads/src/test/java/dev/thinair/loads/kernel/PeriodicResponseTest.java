package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PeriodicResponseTest {
    // ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18 layers, from inside to outside.
    // Wall 11: film, gypsum, batt, plywood, siding, film.
    private static final double[] WALL11_R = {0.12, 0.0159 / 0.16, 1.94, 0.14, 0.14, 0.04};
    private static final double[] WALL11_C = {
        0, 0.0159 * 800 * 1090, 0.0894 * 19 * 960, 0.0159 * 544 * 1210, 0.0127 * 592 * 1170, 0
    };

    // Exact periodic factor, reference case LD-B094; 0.01 points is that row's rounding.
    @Test
    void factor_of_wall_11_agrees_with_the_exact_case() {
        double[] f = PeriodicResponse.conductionTimeFactors(WALL11_R, WALL11_C);
        assertThat(100 * f[1]).isCloseTo(42.037, within(0.001));
        // published: 6.4 and 40.7 percent (Table 16); the handbook's own method smears by up to 1.8
        // points
        assertThat(100 * f[0]).isCloseTo(6.4, within(0.26));
        assertThat(100 * f[1]).isCloseTo(40.7, within(1.72));
    }

    @Property(tries = 40, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void factors_sum_to_u(
            @ForAll @DoubleRange(min = 0.01, max = 5) double r1,
            @ForAll @DoubleRange(min = 0, max = 500_000) double c1,
            @ForAll @DoubleRange(min = 0.01, max = 5) double r2,
            @ForAll @DoubleRange(min = 100, max = 100_000) double c2) {
        double[] r = {0.12, r1, r2, 0.04};
        double[] c = {0, c1, c2, 0};
        double u = Transmission.transmittance(r);
        assertThat(Arrays.stream(PeriodicResponse.responseFactors(r, c)).sum())
                .isCloseTo(u, within(1e-11 * u));
        for (double f : PeriodicResponse.conductionTimeFactors(r, c)) {
            assertThat(f).isBetween(-1e-7, 1.0);
        }
    }

    @Test
    void massless_wall_answers_at_once() {
        double[] f =
                PeriodicResponse.conductionTimeFactors(new double[] {0.12, 2, 0.04}, new double[3]);
        assertThat(f[0]).isCloseTo(1, within(1e-12));
        for (int k = 1; k < 24; k++) {
            assertThat(f[k]).isCloseTo(0, within(1e-12));
        }
    }

    @Property(tries = 50)
    void analysis_and_synthesis_are_inverse(@ForAll @IntRange(min = 0, max = 1000) int seed) {
        double[] x = new java.util.Random(seed).doubles(24, -50, 50).toArray();
        double[] s = new double[26];
        double[] back = new double[24];
        HourlyInterpolation.analyse(x, 0, s, 0);
        HourlyInterpolation.addSynthesis(s, 0, back, 0);
        for (int h = 0; h < 24; h++) {
            assertThat(back[h]).isCloseTo(x[h], within(1e-12));
        }
    }

    @Test
    void weights_of_a_harmonic_sum_to_one() {
        for (int m = 1; m <= 12; m++) {
            double sum = 0;
            for (int j = -40_000; j <= 40_000; j++) {
                sum += HourlyInterpolation.weight(Math.abs(m + 24 * j));
            }
            // what lies beyond falls as 2 sin^2(pi m/24) / (pi^2 J)
            assertThat(sum).isCloseTo(1, within(1e-5));
        }
    }

    @Test
    void lines_between_hours_do_not_ring() {
        // a wall of one light layer under a switched outer temperature: no answer beyond its bounds
        double[] r = {0.12, 0.1, 0.04};
        double[] c = {0, 10_000, 0};
        double[] f = PeriodicResponse.responseFactors(r, c);
        double[] step = new double[24];
        Arrays.fill(step, 8, 18, 10);
        double u = Transmission.transmittance(r);
        for (double q : PeriodicResponse.convolve(f, step)) {
            assertThat(q).isBetween(-1e-9, 10 * u + 1e-9);
        }
    }

    @Test
    void wrong_lengths_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.convolve(new double[23], new double[24]))
                .withMessageContaining("23 factors");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.convolve(new double[24], new double[25]))
                .withMessageContaining("25 values");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.responseFactors(new double[2], new double[2]))
                .withMessageContaining("resistance");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                PeriodicResponse.responseFactors(
                                        new double[] {0.1, 0.1}, new double[] {0, -1}))
                .withMessageContaining("capacity");
    }

    @Test
    void convolution_delays_by_the_factor_s_hour() {
        double[] x = new java.util.Random(4).doubles(24).toArray();
        for (int k : new int[] {0, 1, 23}) {
            double[] f = new double[24];
            f[k] = 2;
            f[5] += 0.5;
            double[] y = PeriodicResponse.convolve(f, x);
            for (int h = 0; h < 24; h++) {
                assertThat(y[h])
                        .isCloseTo(
                                2 * x[(h - k + 24) % 24] + 0.5 * x[(h + 19) % 24], within(1e-12));
            }
        }
    }

    /** The series of the class's formula, summed harmonic by harmonic without any folding. */
    private static double[] plainSeries(double[] r, double[] c, int harmonics) {
        double[] matrix = new double[Transmission.matrixLength()];
        double[] y = new double[8];
        double[] f = new double[24];
        Arrays.fill(f, Transmission.transmittance(r) / 24);
        for (int n = 1; n <= harmonics; n++) {
            Transmission.admittances(r, c, r.length, n * 2 * Math.PI / 86_400, matrix, y);
            double x = Math.PI * n / 24;
            double w = n % 24 == 0 ? 0 : Math.pow(Math.sin(x) / x, 2);
            for (int k = 0; k < 24; k++) {
                double angle = 2 * Math.PI * (n % 24) * k / 24;
                f[k] += 2 * w / 24 * (y[2] * Math.cos(angle) - y[3] * Math.sin(angle));
            }
        }
        return f;
    }

    @Test
    void factors_are_the_plain_series() {
        double[] f = PeriodicResponse.responseFactors(WALL11_R, WALL11_C);
        double[] plain = plainSeries(WALL11_R, WALL11_C, 24 * 60);
        for (int k = 0; k < 24; k++) {
            assertThat(f[k]).isCloseTo(plain[k], within(1e-10));
        }
    }

    @Test
    void a_pane_answers_within_the_hour() {
        // a pane between films, time constant some 2 min: the series falls slowly, to its last term
        double[] r = {0.12, 0.003, 0.04};
        double[] c = {0, 0.003 * 2500 * 840, 0};
        double u = Transmission.transmittance(r);
        double[] f = PeriodicResponse.responseFactors(r, c);
        double[] plain = plainSeries(r, c, 24 * 4000);
        for (int k = 0; k < 24; k++) {
            assertThat(f[k]).isCloseTo(plain[k], within(1e-7 * u));
        }
        assertThat(f[0] + f[1]).isCloseTo(u, within(1e-6 * u));
    }
}
