package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class HourlyInterpolationTest {

    @Property(tries = 50)
    void a_day_comes_back_from_its_spectrum(@ForAll long seed) {
        Random random = new Random(seed);
        double[] day = random.doubles(24, -50, 50).toArray();
        double[] spectrum = new double[30];
        double[] shifted = new double[30];
        System.arraycopy(day, 0, shifted, 5, 24);
        HourlyInterpolation.analyse(shifted, 5, spectrum, 3);
        assertThat(spectrum[3 + 1]).isZero();
        assertThat(spectrum[3 + 25]).isCloseTo(0, within(1e-12));
        double[] again = new double[27];
        again[2] = 7; // what is there is added to
        HourlyInterpolation.addSynthesis(spectrum, 3, again, 2);
        for (int h = 0; h < 24; h++) {
            double before = h == 0 ? 7 : 0;
            assertThat(again[2 + h] - before).isCloseTo(day[h], within(1e-12));
            assertThat(HourlyInterpolation.at(spectrum, 3, h)).isCloseTo(day[h], within(1e-12));
        }
    }

    /** Sampling by the hour cannot tell a harmonic from the one it is folded on. */
    @Test
    void harmonics_land_where_sampling_by_the_hour_puts_them() {
        double[] x = new double[24];
        double[] spectrum = new double[26];
        for (int n = 0; n <= 60; n++) {
            for (int h = 0; h < 24; h++) {
                x[h] = Math.sin(2 * Math.PI * n * h / 24) + Math.cos(2 * Math.PI * n * h / 24);
            }
            HourlyInterpolation.analyse(x, 0, spectrum, 0);
            int m = HourlyInterpolation.folded(n);
            assertThat(m).isBetween(0, 12);
            for (int k = 0; k <= 12; k++) {
                double size = k == m ? (m % 12 == 0 ? 1 : 0.5) : 0;
                assertThat(spectrum[2 * k]).isCloseTo(size, within(1e-12));
                double sine = k == m && m % 12 != 0 ? 0.5 : 0;
                boolean turned = HourlyInterpolation.conjugated(n);
                assertThat(spectrum[2 * k + 1]).isCloseTo(turned ? sine : -sine, within(1e-12));
            }
        }
    }

    @Test
    void weights_are_those_of_a_triangle_and_sum_to_one_over_the_aliases() {
        assertThat(HourlyInterpolation.weight(0)).isEqualTo(1);
        for (int n = 1; n < 200; n++) {
            double x = Math.PI * n / 24;
            double expected = Math.sin(x) / x * (Math.sin(x) / x);
            assertThat(HourlyInterpolation.weight(n)).isCloseTo(expected, within(1e-15));
        }
        assertThat(HourlyInterpolation.weight(48)).isZero();
        for (int m = 1; m < 12; m++) {
            double sum = HourlyInterpolation.weight(m);
            for (int j = 1; j < 4000; j++) {
                sum +=
                        HourlyInterpolation.weight(24 * j - m)
                                + HourlyInterpolation.weight(24 * j + m);
            }
            assertThat(sum).isCloseTo(1, within(1e-4));
        }
    }
}
