package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DecayTableTest {

    private static final double[] RATES = {1e-9, 1e-6, 1e-4, 3e-3, 0.05, 0.2, 0.29, 0.4, 2.0, 50.0};

    @Test
    void decays_are_exponentials_to_rounding() {
        SplittableRandom random = new SplittableRandom(7);
        for (double interval : new double[] {15, 3600, 86_400}) {
            DecayTable table = new DecayTable(RATES, RATES.length, interval);
            double[] out = new double[RATES.length];
            for (int i = 0; i < 2000; i++) {
                double t = i < 65 ? i * interval / 64 : interval * random.nextDouble();
                table.at(t, 0, RATES.length, out);
                for (int k = 0; k < RATES.length; k++) {
                    double exact = Math.exp(-RATES[k] * t);
                    double rounding = 1e-15 * (1 + RATES[k] * t) * exact;
                    assertThat(out[k])
                            .isCloseTo(exact < 1e-200 ? 0 : exact, within(rounding + 1e-190));
                }
            }
        }
    }

    @Test
    void only_what_is_asked_for_is_written() {
        DecayTable table = new DecayTable(RATES, RATES.length, 3600);
        for (double t : new double[] {3600, 100}) {
            double[] out = new double[RATES.length];
            Arrays.fill(out, -1);
            table.at(t, 2, 8, out);
            for (int k = 0; k < out.length; k++) {
                if (k < 2 || k >= 8) {
                    assertThat(out[k]).isEqualTo(-1);
                } else {
                    assertThat(out[k]).isBetween(0.0, 1.0);
                }
            }
        }
    }
}
