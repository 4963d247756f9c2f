package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GlazingOpticsTest {

    private static final double D = Math.PI / 180;
    private static final double[] TENS = new double[10];

    static {
        for (int i = 0; i < 10; i++) {
            TENS[i] = i * 10 * D;
        }
    }

    // Fundamentals 2021 (SI), ch. 18, Table 13: single clear glass.
    private static final double[] CLEAR = {
        0.861, 0.86, 0.859, 0.855, 0.847, 0.827, 0.781, 0.669, 0.424, 0
    };

    // LD-C001: the table prints 0.783, from finer data; 0.0015 allows for straight lines between
    // entries ten degrees apart.
    @Test
    void hemispherical_value_of_the_handbook_table() {
        assertThat(GlazingOptics.hemispherical(TENS, CLEAR)).isCloseTo(0.783, within(0.0015));
    }

    @Test
    void hemispherical_mean_of_a_constant_is_that_constant() {
        double[] half = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
        assertThat(GlazingOptics.hemispherical(TENS, half)).isCloseTo(0.5, within(1e-14));
        // A straight line 1 - t/(pi/2): integral of (1 - 2t/pi) sin 2t dt = 1 - (2/pi)(pi/4) = 1/2.
        assertThat(GlazingOptics.hemispherical(new double[] {0, Math.PI / 2}, new double[] {1, 0}))
                .isCloseTo(0.5, within(1e-14));
    }

    // LD-C002, C048, C049 (glass 5d of ch. 18, section 9.1).
    @Test
    void reading_between_entries() {
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, Math.cos(55 * D)))
                .isCloseTo(0.804, within(1e-9));
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, 1)).isEqualTo(0.861);
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, 1.0000000001)).isEqualTo(0.861);
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, 0)).isZero();
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, -0.5)).isZero();
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, Math.cos(80 * D)))
                .isCloseTo(0.424, within(1e-9));
        assertThat(GlazingOptics.atIncidence(TENS, CLEAR, Math.cos(85 * D)))
                .isCloseTo(0.212, within(1e-9));
    }

    // LD-C003 and C004.
    @Test
    void inward_part_and_interior_shade() {
        assertThat(GlazingOptics.inwardAbsorbed(0.781, 0.749)).isCloseTo(0.032, within(1e-9));
        assertThat(GlazingOptics.interiorAttenuation(0.68, 0.5)).isCloseTo(0.84, within(1e-12));
        assertThat(GlazingOptics.interiorAttenuation(0.68, 0)).isEqualTo(1);
        assertThat(GlazingOptics.interiorAttenuation(0.68, 1)).isCloseTo(0.68, within(1e-12));
    }

    // LD-E028, E029: Fundamentals 2021 (SI), ch. 18, Table 30, hour 15.
    @Test
    void handbook_window_gain() {
        assertThat(GlazingOptics.diffuseGain(3.72, 210.1, 0.41, 1)).isCloseTo(320, within(1.0));
        assertThat(GlazingOptics.beamGain(3.72, 387.0, 1, 0.398, 1)).isCloseTo(572, within(2.0));
        assertThat(GlazingOptics.beamGain(2, 100, 0.5, 0.4, 0.8)).isCloseTo(32, within(1e-9));
    }

    @Test
    void pane_without_absorption_at_normal_incidence() {
        // Reflectance of one face ((n - 1)/(n + 1))^2 = r; of the pane 2r/(1 + r).
        double r = Math.pow(0.526 / 2.526, 2);
        double[] out = new double[3];
        GlazingOptics.pane(1, 1.526, 0, out);
        assertThat(out[1]).isCloseTo(2 * r / (1 + r), within(1e-14));
        assertThat(out[0]).isCloseTo((1 - r) / (1 + r), within(1e-14));
        assertThat(out[2]).isCloseTo(0, within(1e-14));
    }

    @Test
    void pane_at_brewsters_angle_passes_one_polarisation_whole() {
        double n = 1.526;
        double brewster = Math.atan(n);
        double[] out = new double[3];
        GlazingOptics.pane(Math.cos(brewster), n, 0, out);
        double s = Math.pow((1 - n * n) / (1 + n * n), 2);
        assertThat(out[0]).isCloseTo(0.5 * (1 + (1 - s) / (1 + s)), within(1e-12));
    }

    @Test
    void pane_shares_add_up_and_grazing_light_is_turned_back() {
        double[] out = new double[3];
        for (int i = 0; i <= 90; i++) {
            GlazingOptics.pane(Math.max(0, Math.cos(i * D)), 1.526, 0.1, out);
            assertThat(out[0] + out[1] + out[2]).isCloseTo(1, within(1e-12));
        }
        GlazingOptics.pane(0, 1.526, 0, out);
        assertThat(out[0]).isZero();
        assertThat(out[1]).isEqualTo(1);
    }

    // Fundamentals, ch. 15, generic clear glass 3 mm: single as Table 13 of ch. 18 (above); double
    // (uncoated, 3 mm) 0.76, 0.74, 0.71, 0.64, 0.50, 0.26 at 0, 40 ... 80 degrees (from memory).
    // Thickness and extinction are typical, not fitted, so 0.01 is allowed.
    @Test
    void panes_by_physics_agree_with_published_glass() {
        double[] scratch = new double[3];
        for (int i = 0; i < 9; i++) {
            double single =
                    GlazingOptics.shgcOfPanes(1, Math.cos(TENS[i]), 1.526, 0.096, 0.27, 0, scratch);
            assertThat(single).isCloseTo(CLEAR[i], within(0.01));
        }
        double[] published = {
            0.76, Double.NaN, Double.NaN, Double.NaN, 0.74, 0.71, 0.64, 0.50, 0.26
        };
        for (int i = 0; i < 9; i++) {
            if (!Double.isNaN(published[i])) {
                double two =
                        GlazingOptics.shgcOfPanes(
                                2, Math.cos(TENS[i]), 1.526, 0.096, 0.14, 0.67, scratch);
                assertThat(two).isCloseTo(published[i], within(0.01));
            }
        }
        assertThat(GlazingOptics.shgcOfPanes(2, 0, 1.526, 0.096, 0.14, 0.67, scratch))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void bad_tables_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                GlazingOptics.hemispherical(
                                        new double[] {0, 1}, new double[] {0.5, 0}))
                .withMessageContaining("last angle of the table");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                GlazingOptics.hemispherical(
                                        new double[] {0.1, Math.PI / 2}, new double[] {0.5, 0}))
                .withMessageContaining("first angle of the table");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                GlazingOptics.hemispherical(
                                        new double[] {0, 1, 1, Math.PI / 2},
                                        new double[] {0.5, 0.4, 0.3, 0}))
                .withMessageContaining("must ascend");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlazingOptics.hemispherical(new double[] {0}, new double[] {0.5}))
                .withMessageContaining("at least 2");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                GlazingOptics.hemispherical(
                                        new double[] {0, Math.PI / 2}, new double[] {1.2, 0}))
                .withMessageContaining("value of the angular table is 1.2");
    }
}
