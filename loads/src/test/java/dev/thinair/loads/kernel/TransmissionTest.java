package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TransmissionTest {
    private static final double DAY = Transmission.DAY;

    /** Layer of thickness d, conductivity k, density rho, specific heat c as (R, C). */
    private static double[] layer(double d, double k, double rho, double c) {
        return new double[] {d / k, d * rho * c};
    }

    private static final double[] CONCRETE = layer(0.2, 1.8, 2400, 1000);

    private static double[] y(double[] r, double[] c, double omega) {
        double[] out = new double[8];
        Transmission.admittances(r, c, r.length, omega, new double[9], out);
        return out;
    }

    // Slab, one face held at zero, the other at cos(w t): flux through the held face is
    // (k/L) g / sinh g, into the driven face (k/L) g coth g, g = L sqrt(i w / a).
    // Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., 3.7.
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 12, 24, 60, 200})
    void slab_agrees_with_the_closed_form(int harmonic) {
        double omega = harmonic * Transmission.OMEGA_DAY;
        double[] got = y(new double[] {CONCRETE[0]}, new double[] {CONCRETE[1]}, omega);
        Complex g = new Complex(0, omega * CONCRETE[0] * CONCRETE[1]).sqrt();
        Complex through = g.divide(g.sinh()).divide(CONCRETE[0]);
        Complex into = g.multiply(g.cosh()).divide(g.sinh()).divide(CONCRETE[0]);
        Complex noLoss = g.multiply(g.tanh()).divide(CONCRETE[0]);
        assertComplex(got, 2, through, 1e-12);
        assertComplex(got, 0, into, 1e-12);
        assertComplex(got, 4, into, 1e-12);
        assertComplex(got, 6, noLoss, 1e-12);
    }

    private static void assertComplex(double[] got, int at, Complex expected, double relative) {
        double off = new Complex(got[at], got[at + 1]).subtract(expected).abs();
        assertThat(off / expected.abs()).isLessThan(relative);
    }

    @Test
    void series_and_exponential_branch_meet() {
        for (double y = 0.499; y < 0.5011; y += 0.0005) {
            double[] below = y(new double[] {1}, new double[] {1}, y);
            Complex g = new Complex(0, y).sqrt();
            assertComplex(below, 2, g.divide(g.sinh()), 1e-14);
            assertComplex(below, 0, g.multiply(g.cosh()).divide(g.sinh()), 1e-14);
        }
    }

    @Test
    void many_layers_agree_with_complex_matrices() {
        double[] r = {0.13, 0.079, 2.225, 0.0925, 0.18, 0.141, 0.04};
        double[] c = {0, 11_074, 897, 13_356, 0, 8_767, 0};
        for (int n = 1; n <= 12; n++) {
            double omega = n * Transmission.OMEGA_DAY;
            Complex[] m = {Complex.ONE, Complex.ZERO, Complex.ZERO, Complex.ONE};
            for (int l = 0; l < r.length; l++) {
                Complex a = Complex.ONE;
                Complex b = new Complex(r[l]);
                Complex d = Complex.ZERO;
                if (c[l] > 0) {
                    Complex g = new Complex(0, omega * r[l] * c[l]).sqrt();
                    a = g.cosh();
                    b = g.sinh().divide(g).multiply(r[l]);
                    d = g.sinh().multiply(g).divide(r[l]);
                }
                m =
                        new Complex[] {
                            m[0].multiply(a).add(m[1].multiply(d)),
                                    m[0].multiply(b).add(m[1].multiply(a)),
                            m[2].multiply(a).add(m[3].multiply(d)),
                                    m[2].multiply(b).add(m[3].multiply(a))
                        };
            }
            double[] got = y(r, c, omega);
            assertComplex(got, 0, m[3].divide(m[1]), 1e-12);
            assertComplex(got, 2, Complex.ONE.divide(m[1]), 1e-12);
            assertComplex(got, 4, m[0].divide(m[1]), 1e-12);
            assertComplex(got, 6, m[2].divide(m[0]), 1e-12);
        }
    }

    // Half space with its surface at cos(w t): flux sqrt(k rho c w), a phase of pi/4 ahead. Carslaw
    // and Jaeger, 2nd ed., 2.6. Five metres of concrete are 35 penetration depths.
    @Test
    void thick_wall_becomes_a_half_space() {
        double[] deep = layer(5, 1.8, 2400, 1000);
        double omega = Transmission.OMEGA_DAY;
        double[] got = y(new double[] {deep[0]}, new double[] {deep[1]}, omega);
        double size = Transmission.halfSpaceAdmittance(1.8, 2400, 1000, DAY);
        assertThat(Math.hypot(got[0], got[1])).isCloseTo(size, within(1e-12 * size));
        assertThat(Math.atan2(got[1], got[0])).isCloseTo(Math.PI / 4, within(1e-13));
        // reference cases LD-B052, LD-B053
        assertThat(size).isCloseTo(17.72454, within(1e-5));
        assertThat(Transmission.penetrationDepth(1.8, 2400, 1000, DAY))
                .isCloseTo(0.1436192, within(1e-7));
    }

    @Test
    void no_thickness_overflows() {
        double[] r = new double[40];
        double[] c = new double[40];
        java.util.Arrays.fill(r, 20 / 1.4);
        java.util.Arrays.fill(c, 20 * 1.9e6);
        double[] got = y(r, c, 12 * Transmission.OMEGA_DAY);
        for (double one : got) {
            assertThat(one).isFinite();
        }
        assertThat(Math.hypot(got[2], got[3])).isZero();
        assertThat(Math.atan2(got[1], got[0])).isCloseTo(Math.PI / 4, within(1e-12));
    }

    @Test
    void massless_wall_has_no_lag_and_no_decrement() {
        double[] r = {0.13, 2, 0.04};
        double[] c = {0, 0, 0};
        assertThat(Transmission.decrementFactor(r, c, DAY)).isCloseTo(1, within(1e-15));
        assertThat(Transmission.lag(r, c, DAY)).isZero();
        assertThat(Transmission.arealHeatCapacity(r, c, DAY, 1)).isZero();
    }

    @Test
    void turning_the_wall_round_swaps_the_admittances() {
        double[] r = {0.13, 0.111, 2.5, 0.005, 0.04};
        double[] c = {0, 480_000, 4_200, 9_000, 0};
        double[] rr = {0.04, 0.005, 2.5, 0.111, 0.13};
        double[] cc = {0, 9_000, 4_200, 480_000, 0};
        for (int n = 1; n < 13; n++) {
            double[] a = y(r, c, n * Transmission.OMEGA_DAY);
            double[] b = y(rr, cc, n * Transmission.OMEGA_DAY);
            assertThat(a[0]).isCloseTo(b[4], within(1e-12));
            assertThat(a[1]).isCloseTo(b[5], within(1e-12));
            assertThat(a[2]).isCloseTo(b[2], within(1e-12));
            assertThat(a[3]).isCloseTo(b[3], within(1e-12));
        }
    }

    // ISO 13786:2017, heat transfer matrix; reference cases LD-B014 to B045, computed with 40
    // digits.
    // Tolerance 1e-6 relative: the rows print seven digits.
    @ParameterizedTest
    @CsvSource({
        "concrete, 3.557312, 1.827071, 5.675689, 5.704313, 0.9481201, 11.59188, 86167.71",
        "insulated, 0.3589232, 0.06055802, 8.108817, 5.94176, 0.8530089, 0.8470498, 82290.13",
        "frame, 0.3692781, 0.3566598, 1.629235, 0.8584504, 3.836301, 1.507867, 12134.74",
        "adobe, 1.421801, 0.2243075, 12.56836, 4.517118, 1.362057, 7.106887, 64830.89"
    })
    void dynamic_characteristics_agree_with_iso_13786(
            String wall,
            double u,
            double periodic,
            double lag,
            double inside,
            double lead,
            double outside,
            double kappa) {
        double[][] layers =
                switch (wall) {
                    case "concrete" -> new double[][] {{0.13, 0}, CONCRETE, {0.04, 0}};
                    case "insulated" ->
                            new double[][] {
                                {0.13, 0},
                                CONCRETE,
                                layer(0.1, 0.04, 30, 1400),
                                layer(0.005, 1, 1200, 1500),
                                {0.04, 0}
                            };
                    case "frame" ->
                            new double[][] {
                                {0.13, 0},
                                layer(0.0127, 0.16, 800, 1090),
                                layer(0.089, 0.04, 12, 840),
                                layer(0.0111, 0.12, 640, 1880),
                                layer(0.0127, 0.09, 590, 1170),
                                {0.04, 0}
                            };
                    default -> new double[][] {{0.13, 0}, layer(0.4, 0.75, 1700, 900), {0.04, 0}};
                };
        double[] r = new double[layers.length];
        double[] c = new double[layers.length];
        for (int l = 0; l < r.length; l++) {
            r[l] = layers[l][0];
            c[l] = layers[l][1];
        }
        close(Transmission.transmittance(r), u);
        close(Transmission.periodicTransmittance(r, c, DAY), periodic);
        close(Transmission.decrementFactor(r, c, DAY), periodic / u);
        close(Transmission.lag(r, c, DAY) / 3600, lag);
        close(Transmission.admittance(r, c, DAY, 1), inside);
        close(Transmission.admittanceLead(r, c, DAY, 1) / 3600, lead);
        close(Transmission.admittance(r, c, DAY, 2), outside);
        close(Transmission.arealHeatCapacity(r, c, DAY, 1), kappa);
    }

    private static void close(double got, double expected) {
        assertThat(got).isCloseTo(expected, within(1e-6 * expected));
    }

    @Test
    void lag_keeps_growing_with_thickness() {
        double before = 0;
        for (int i = 1; i <= 30; i++) {
            double[] l = layer(0.1 * i, 0.75, 1700, 900);
            double lag =
                    Transmission.lag(
                            new double[] {0.13, l[0], 0.04}, new double[] {0, l[1], 0}, DAY);
            assertThat(lag).isGreaterThan(before);
            before = lag;
        }
        assertThat(before).as("lag of three metres of adobe").isGreaterThan(4 * DAY / 2);
    }

    @Test
    void bad_walls_are_refused_by_name() {
        double[] one = {1};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.lag(new double[0], new double[0], DAY))
                .withMessageContaining("at least one layer");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.lag(one, new double[2], DAY))
                .withMessageContaining("1 resistances, but 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.transmittance(new double[] {1, 0}))
                .withMessageContaining("layer resistance is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.transmittance(new double[0]))
                .withMessageContaining("layer");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.decrementFactor(one, new double[] {-1}, DAY))
                .withMessageContaining("heat capacity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.decrementFactor(one, one, 0))
                .withMessageContaining("period is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.admittance(one, one, DAY, 3))
                .withMessageContaining("side is 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.penetrationDepth(0, 1, 1, 1))
                .withMessageContaining("conductivity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transmission.halfSpaceAdmittance(1, Double.NaN, 1, 1))
                .withMessageContaining("density");
    }
}
