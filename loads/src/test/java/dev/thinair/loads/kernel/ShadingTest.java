package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShadingTest {

    private static final double D = Math.PI / 180;
    private static final double WIDE = Double.POSITIVE_INFINITY;

    private static double lit(
            double overhang,
            double gap,
            double extension,
            double left,
            double leftGap,
            double right,
            double rightGap,
            double altitude,
            double relative) {
        return Shading.sunlitShare(
                2,
                1.5,
                overhang,
                gap,
                extension,
                left,
                leftGap,
                right,
                rightGap,
                altitude * D,
                (180 + relative) * D,
                90 * D,
                180 * D);
    }

    // Fundamentals 2021 (SI), ch. 18, section 9.1, part 4 (ch. 15, Eq. 32 and 34): LD-A104, A105.
    @Test
    void handbook_example_of_an_overhang() {
        assertThat(Shading.profileAngle(57.2 * D, 15.1 * D) / D).isCloseTo(58.1, within(0.06));
        assertThat(Shading.shadowHeight(3.05, 57.2 * D, 15.1 * D)).isCloseTo(4.9, within(0.06));
    }

    @Test
    void sun_behind_or_down_throws_no_shadow_and_lights_nothing() {
        assertThat(Shading.shadowHeight(1, 30 * D, 120 * D)).isZero();
        assertThat(Shading.shadowHeight(1, -5 * D, 0)).isZero();
        assertThat(lit(0, 0, 0, 0, 0, 0, 0, 30, 120)).isZero();
        assertThat(lit(0, 0, 0, 0, 0, 0, 0, -5, 0)).isZero();
        assertThat(lit(0, 0, 0, 0, 0, 0, 0, 5, 0)).isEqualTo(1);
    }

    @Test
    void wide_overhang_shades_from_the_top() {
        // At 45 degrees of profile the shadow is as long as the overhang is deep.
        assertThat(lit(0.6, 0, WIDE, 0, 0, 0, 0, 45, 0)).isCloseTo(1 - 0.6 / 1.5, within(1e-12));
        assertThat(lit(0.6, 0.2, WIDE, 0, 0, 0, 0, 45, 0)).isCloseTo(1 - 0.4 / 1.5, within(1e-12));
        assertThat(lit(0.6, 0.7, WIDE, 0, 0, 0, 0, 45, 0)).isEqualTo(1);
        assertThat(lit(9, 0.2, WIDE, 0, 0, 0, 0, 45, 0)).isZero();
    }

    @Test
    void fin_on_the_suns_side_shades_a_strip() {
        // Relative azimuth +45 (sun to the right hand of one who looks out, left seen from
        // outside): the strip is as wide as the fin is deep.
        assertThat(lit(0, 0, 0, 0.5, 0, 0, 0, 20, 45)).isCloseTo(0.75, within(1e-12));
        assertThat(lit(0, 0, 0, 0.5, 0.3, 0, 0, 20, 45)).isCloseTo(0.9, within(1e-12));
        assertThat(lit(0, 0, 0, 0.5, 0, 0, 0, 20, -45)).isEqualTo(1);
        assertThat(lit(0, 0, 0, 0, 0, 0.5, 0, 20, -45)).isCloseTo(0.75, within(1e-12));
        assertThat(lit(0, 0, 0, 0, 0, 0.5, 0.1, 20, -45)).isCloseTo(0.8, within(1e-12));
        assertThat(lit(0, 0, 0, 5, 0, 0, 0, 20, 45)).isZero();
    }

    @Test
    void shadows_of_overhang_and_fin_are_not_counted_twice() {
        double relative = 45;
        double altitude = Math.atan(Math.cos(45 * D)) / D; // profile angle 45 degrees
        double both = lit(0.6, 0, WIDE, 0.5, 0, 0, 0, altitude, relative);
        assertThat(both).isCloseTo(0.75 * (1 - 0.6 / 1.5), within(1e-9));
    }

    /** Shadow of a short overhang, by brute force over a grid of points of the window. */
    private static double byPoints(
            double depth,
            double gap,
            double extension,
            double fin,
            double altitude,
            double relative) {
        double left = Math.tan(relative * D);
        double up = Math.tan(altitude * D) / Math.cos(relative * D);
        int n = 400;
        int lit = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = 2 * (i + 0.5) / n;
                double below = gap + 1.5 * (j + 0.5) / n;
                // The ray from the point toward the sun meets the overhang's plane at this depth
                // and this place along it.
                double out = below / up;
                double along = x - out * left;
                boolean overhang = out <= depth && along >= -extension && along <= 2 + extension;
                boolean byFin = left > 0 && x / left <= fin;
                if (!overhang && !byFin) {
                    lit++;
                }
            }
        }
        return lit / (double) (n * n);
    }

    @Test
    void short_overhang_agrees_with_rays() {
        double[][] cases = {
            {0.8, 0.1, 0.0, 0, 40, 35},
            {0.8, 0.1, 0.3, 0, 40, 35},
            {1.5, 0.0, 0.2, 0, 35, 60},
            {1.5, 0.4, 0.0, 0.3, 50, 50},
            {3.0, 0.0, 0.5, 0.2, 20, 70},
            {0.4, 0.5, 0.1, 0, 70, 20},
        };
        for (double[] c : cases) {
            double exact = lit(c[0], c[1], c[2], c[3], 0, 0, 0, c[4], c[5]);
            assertThat(exact)
                    .isCloseTo(byPoints(c[0], c[1], c[2], c[3], c[4], c[5]), within(0.006));
            // The mirror image, sun on the other side.
            double mirrored = lit(c[0], c[1], c[2], 0, 0, c[3], 0, c[4], -c[5]);
            assertThat(mirrored).isCloseTo(exact, within(1e-12));
        }
    }

    @Test
    void skylight_and_leaning_planes() {
        // A flat skylight: "up the plane" points away from the azimuth, so an upstand on the
        // sun's side is an overhang seen from below the horizon, and throws none.
        double share =
                Shading.sunlitShare(1, 1, 0.5, 0, WIDE, 0, 0, 0, 0, 50 * D, 180 * D, 0, 180 * D);
        assertThat(share).isEqualTo(1);
        // The sun straight along the normal of a leaning plane casts no shadow sideways or down.
        assertThat(
                        Shading.sunlitShare(
                                1, 1, 0.5, 0, WIDE, 0.5, 0, 0.5, 0, 50 * D, 180 * D, 40 * D,
                                180 * D))
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void skyline_runs_straight_and_closes_round_the_compass() {
        double[] azimuths = {90 * D, 180 * D, 270 * D};
        double[] altitudes = {10 * D, 20 * D, 0};
        assertThat(Shading.horizonAltitude(new double[0], new double[0], 1)).isZero();
        assertThat(Shading.horizonAltitude(new double[] {1}, new double[] {0.3}, 4)).isEqualTo(0.3);
        assertThat(Shading.horizonAltitude(azimuths, altitudes, 90 * D) / D)
                .isCloseTo(10, within(1e-9));
        assertThat(Shading.horizonAltitude(azimuths, altitudes, 135 * D) / D)
                .isCloseTo(15, within(1e-9));
        assertThat(Shading.horizonAltitude(azimuths, altitudes, 225 * D) / D)
                .isCloseTo(10, within(1e-9));
        assertThat(Shading.horizonAltitude(azimuths, altitudes, 0) / D).isCloseTo(5, within(1e-9));
        assertThat(Shading.horizonAltitude(azimuths, altitudes, 315 * D) / D)
                .isCloseTo(2.5, within(1e-9));
    }
}
