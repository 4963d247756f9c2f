package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.cycling.kernel.BinMethod;
import dev.thinair.cycling.kernel.DegreeDays;
import dev.thinair.cycling.kernel.LinearDecayEvaporation;
import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.ducts.kernel.DuctConduction;
import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.Transmission;
import java.time.Instant;
import java.time.LocalDate;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.ArrayFieldVector;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.FieldMatrix;
import org.apache.commons.math3.linear.FieldVector;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** House, ducts and season against textbook equations worked by general-purpose tools. */
class IndependentHouseTest {

    private static final double DEGREE = Math.PI / 180;

    private static double integral(UnivariateFunction f, double from, double to) {
        return new IterativeLegendreGaussIntegrator(15, 1e-13, 1e-13)
                .integrate(1_000_000, f, from, to);
    }

    @Test
    void sun_position_agrees_with_the_second_algorithm() {
        double[] one = new double[2];
        double[] other = new double[2];
        for (int day = 0; day < 20 * 365; day += 23) {
            Instant at = Instant.parse("2015-01-01T00:00:00Z").plusSeconds(day * 86_400L + day);
            for (int hour = 0; hour < 24; hour += 5) {
                Instant instant = at.plusSeconds(3600L * hour);
                for (double latitude : new double[] {-55, -10, 0, 35.1, 64}) {
                    Sun.ephemeris(instant, latitude * DEGREE, -1.8, 0, 69, one);
                    Sun.quickEphemeris(instant, latitude * DEGREE, -1.8, 69, other);
                    // Angle between two directions, which no azimuth near the zenith can spoil.
                    double apart =
                            Math.acos(
                                    Math.min(
                                            1,
                                            Math.sin(one[0]) * Math.sin(other[0])
                                                    + Math.cos(one[0])
                                                            * Math.cos(other[0])
                                                            * Math.cos(one[1] - other[1])));
                    // What Sun.quickEphemeris documents.
                    assertThat(apart / DEGREE)
                            .as("%s at %s degrees", instant, latitude)
                            .isLessThan(0.01);
                }
            }
        }
    }

    @Test
    void sunset_is_where_the_second_algorithm_puts_the_upper_limb_on_the_horizon() {
        // The sun moves 0.01 degrees in 2.4 s, and sinks aslant, slower.
        double[] rise = new double[2];
        double[] at = new double[2];
        for (int month = 1; month <= 12; month++) {
            LocalDate date = LocalDate.of(2026, month, 21);
            Instant midnight = Instant.parse(date + "T07:00:00Z");
            for (double latitude : new double[] {-35, 5, 35.5, 50}) {
                assertThat(Sun.daylight(date, -7 * 3600, latitude * DEGREE, -1.83, 69, rise))
                        .isZero();
                UnivariateFunction altitude =
                        s -> {
                            Sun.quickEphemeris(
                                    midnight.plusNanos(Math.round(s * 1e9)),
                                    latitude * DEGREE,
                                    -1.83,
                                    69,
                                    at);
                            return at[0] + 0.8333 * DEGREE;
                        };
                double sunrise = new BrentSolver(1e-3).solve(100, altitude, 0, 43_200);
                double sunset = new BrentSolver(1e-3).solve(100, altitude, 43_200, 86_400);
                assertThat(rise[0]).as("%s at %s", date, latitude).isCloseTo(sunrise, within(6.0));
                assertThat(rise[1]).as("%s at %s", date, latitude).isCloseTo(sunset, within(6.0));
            }
        }
    }

    /**
     * The heat transfer matrix of a slab is the exponential of its field matrix, ISO 13786: state
     * (temperature, flux), d/dx of it = -((0, R), (i w C, 0)) over the thickness. The exponential
     * is summed as a power series after halving, with complex matrices of Commons Math.
     */
    @Test
    void periodic_transmission_is_a_matrix_exponential() {
        double[][] walls = {
            {0.13, 0, 0.11, 432_000, 0.04, 0},
            {0.13, 0, 0.11, 432_000, 2.5, 4_200, 0.005, 9_000, 0.04, 0},
            {0.12, 0, 0.08, 13_000, 2.3, 2_900, 0.09, 18_000, 0.03, 0},
            {0.5, 1_500_000}
        };
        double[] out = new double[Transmission.matrixLength()];
        for (double[] wall : walls) {
            int n = wall.length / 2;
            double[] r = new double[n];
            double[] c = new double[n];
            for (int harmonic = 1; harmonic <= 12; harmonic += 1) {
                double omega = 2 * Math.PI * harmonic / 86_400;
                FieldMatrix<Complex> whole = identity();
                for (int i = 0; i < n; i++) {
                    r[i] = wall[2 * i];
                    c[i] = wall[2 * i + 1];
                    whole = whole.multiply(exponential(r[i], omega * c[i]));
                }
                Transmission.matrix(r, c, n, omega, out);
                double scale = Math.exp(out[8]);
                for (int k = 0; k < 4; k++) {
                    Complex expected = whole.getEntry(k / 2, k % 2);
                    Complex got = new Complex(out[2 * k], out[2 * k + 1]).multiply(scale);
                    assertThat(got.subtract(expected).abs() / expected.abs())
                            .as("entry %s of wall of %s layers at harmonic %s", k, n, harmonic)
                            .isLessThan(1e-12);
                }
            }
        }
    }

    private static FieldMatrix<Complex> identity() {
        return new Array2DRowFieldMatrix<>(
                new Complex[][] {{Complex.ONE, Complex.ZERO}, {Complex.ZERO, Complex.ONE}});
    }

    private static FieldMatrix<Complex> exponential(double r, double susceptance) {
        int halvings = 12;
        double small = 1.0 / (1 << halvings);
        FieldMatrix<Complex> field =
                new Array2DRowFieldMatrix<>(
                        new Complex[][] {
                            {Complex.ZERO, new Complex(r * small)},
                            {new Complex(0, susceptance * small), Complex.ZERO}
                        });
        FieldMatrix<Complex> sum = identity();
        FieldMatrix<Complex> term = identity();
        for (int k = 1; k < 12; k++) {
            term = term.multiply(field).scalarMultiply(new Complex(1.0 / k));
            sum = sum.add(term);
        }
        for (int k = 0; k < halvings; k++) {
            sum = sum.multiply(sum);
        }
        return sum;
    }

    /**
     * The same slab from the heat equation itself: i w rho c T = k T'' by collocation at Chebyshev
     * points (Trefethen, Spectral Methods in MATLAB, 2000, chapter 6).
     */
    @Test
    void periodic_transmission_is_what_collocation_of_the_heat_equation_gives() {
        double r = 0.11;
        double c = 432_000;
        double period = 86_400;
        double omega = 2 * Math.PI / period;
        int n = 24;
        double[] x = new double[n + 1];
        double[][] d = new double[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            x[i] = Math.cos(Math.PI * i / n);
        }
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= n; j++) {
                if (i != j) {
                    double ci = i == 0 || i == n ? 2 : 1;
                    double cj = j == 0 || j == n ? 2 : 1;
                    d[i][j] = ci / cj * ((i + j) % 2 == 0 ? 1 : -1) / (x[i] - x[j]);
                    d[i][i] -= d[i][j];
                }
            }
        }
        Complex[][] a = new Complex[n + 1][n + 1];
        Complex[] b = new Complex[n + 1];
        for (int i = 0; i <= n; i++) {
            b[i] = Complex.ZERO;
            for (int j = 0; j <= n; j++) {
                double second = 0;
                for (int k = 0; k <= n; k++) {
                    second += d[i][k] * d[k][j];
                }
                // Thickness 1 spans x from -1 to 1, so that d2/ds2 = 4 d2/dx2.
                a[i][j] = new Complex(-4 * second, i == j ? omega * r * c : 0);
                if (i == 0 || i == n) {
                    a[i][j] = i == j ? Complex.ONE : Complex.ZERO;
                }
            }
        }
        // Outside (x = 1) swings by 1 K, inside (x = -1) is held.
        b[0] = Complex.ONE;
        FieldVector<Complex> t =
                new FieldLUDecomposition<>(new Array2DRowFieldMatrix<>(a))
                        .getSolver()
                        .solve(new ArrayFieldVector<>(b));
        Complex flux = Complex.ZERO;
        for (int j = 0; j <= n; j++) {
            flux = flux.add(t.getEntry(j).multiply(2 * d[n][j] / r));
        }
        double[] one = {r};
        double[] capacity = {c};
        assertThat(Transmission.periodicTransmittance(one, capacity, period))
                .isCloseTo(flux.abs(), within(1e-11 * flux.abs()));
        assertThat(Transmission.lag(one, capacity, period))
                .isCloseTo(-flux.getArgument() / omega, within(1e-6));
    }

    @Test
    void degree_days_of_a_day_are_the_integral_above_the_base() {
        for (double mean = 280; mean <= 305; mean += 1.7) {
            for (double amplitude : new double[] {0.5, 4, 9}) {
                double base = 291.5;
                double m = mean;
                UnivariateFunction above = h -> m + amplitude * Math.cos(2 * Math.PI * h) - base;
                double expected;
                if (m - amplitude >= base || m + amplitude <= base) {
                    expected = Math.max(0, m - base);
                } else {
                    double cross = new BrentSolver(1e-15).solve(100, above, 0, 0.5);
                    expected = 2 * integral(above, 0, cross);
                }
                assertThat(DegreeDays.coolingOfSinusoidalDay(m, amplitude, base))
                        .as("mean %s, amplitude %s", m, amplitude)
                        .isCloseTo(expected, within(1e-10));
            }
        }
    }

    @Test
    void start_up_loss_is_the_integral_of_the_exponential_rise() {
        for (double tau : new double[] {5, 60, 300, 3600}) {
            for (double on : new double[] {60, 400, 5000}) {
                double mean = integral(s -> 1 - Math.exp(-s / tau), 0, on) / on;
                assertThat(PartLoad.startUpCapacityRatio(tau, on)).isCloseTo(mean, within(1e-12));
            }
        }
    }

    @Test
    void run_time_under_the_parabola_is_the_root_of_its_balance() {
        for (double tau : new double[] {20, 60, 200}) {
            for (double rate : new double[] {1, 3, 6}) {
                for (double load = 0.05; load < 1; load += 0.09) {
                    double clf = load;
                    // Heat delivered in one on-period, integrated, over the length of the cycle.
                    UnivariateFunction balance =
                            x -> {
                                double on = 3600 / (4 * rate * (1 - x));
                                double cycle = on / x;
                                return integral(s -> 1 - Math.exp(-s / tau), 0, on) / cycle - clf;
                            };
                    double x = new BrentSolver(1e-13).solve(200, balance, 1e-6, 1 - 1e-6);
                    assertThat(PartLoad.implicitRunTimeFraction(tau, rate, clf))
                            .as("tau %s, rate %s, load %s", tau, rate, clf)
                            .isCloseTo(x, within(1e-10));
                }
            }
        }
    }

    /**
     * On and off times of a house with one heat capacity, by quadrature of dT over its rate; in a
     * band that shrinks they must approach the thermostat parabola with Nmax = 3600 Q/(4 C D).
     */
    @Test
    void thermostat_parabola_is_the_limit_of_a_first_order_house() {
        double capacity = 8e6;
        double resistance = 1 / 250.0;
        double outdoor = 308;
        double unit = 7_000;
        double setpoint = 297;
        double load = (outdoor - setpoint) / resistance;
        double before = 1;
        for (double band : new double[] {1, 0.1, 0.01}) {
            UnivariateFunction falling = t -> capacity / (unit - (outdoor - t) / resistance);
            UnivariateFunction rising = t -> capacity / ((outdoor - t) / resistance);
            double on = integral(falling, setpoint - band / 2, setpoint + band / 2);
            double off = integral(rising, setpoint - band / 2, setpoint + band / 2);
            double nmax = 3600 * unit / (4 * capacity * band);
            double rate = PartLoad.cycleRate(nmax, load / unit);
            double error = Math.abs(rate * (on + off) / 3600 - 1);
            assertThat(error).as("band %s K", band).isLessThan(before / 50);
            assertThat(PartLoad.onTime(nmax, load / unit))
                    .isCloseTo(on, within(on * (1e-9 + band * band / 50)));
            assertThat(PartLoad.offTime(nmax, load / unit))
                    .isCloseTo(off, within(off * (1e-9 + band * band / 50)));
            before = error;
        }
        assertThat(before).isLessThan(1e-6);
    }

    @Test
    void moisture_that_dries_off_the_coil_is_the_integral_of_its_rate() {
        for (double wet : new double[] {300, 720, 1200}) {
            for (double gamma : new double[] {0.33, 1, 1.5}) {
                double dry = 2 * wet / gamma;
                for (double off = 10; off < 4000; off *= 1.9) {
                    double end = Math.min(off, dry);
                    double expected = integral(s -> gamma * (1 - s / dry), 0, end);
                    assertThat(LinearDecayEvaporation.refill(off, wet, gamma))
                            .isCloseTo(Math.min(expected, wet), within(1e-9 * wet));
                }
            }
        }
    }

    @Test
    void bin_season_is_the_sum_over_its_bins() {
        double[] temperatures = {293.15, 296.15, 299.15, 302.15, 305.15, 308.15};
        double[] hours = {420, 510, 380, 240, 110, 35};
        double[] out = new double[BinMethod.RESULTS];
        BinMethod.cooling(
                260,
                297.15,
                700,
                308.15,
                9_000,
                3_100,
                300.93,
                9_800,
                2_700,
                0.2,
                temperatures,
                hours,
                out);
        double[] points = {300.93, 308.15};
        double[] power = {2_700, 3_100};
        double delivered = 0;
        double energy = 0;
        for (int i = 0; i < hours.length; i++) {
            double t = temperatures[i];
            double slope = (t - points[0]) / (points[1] - points[0]);
            double capacity = 9_800 + slope * (9_000 - 9_800);
            double load = 260 * (t - 297.15) + 700;
            if (load > 0) {
                double ran = Math.min(1, load / capacity);
                delivered += 3600 * hours[i] * load;
                energy +=
                        3600
                                * hours[i]
                                * (power[0] + slope * (power[1] - power[0]))
                                * ran
                                / (1 - 0.2 * (1 - ran));
            }
        }
        assertThat(out[BinMethod.DELIVERED] + out[BinMethod.UNMET])
                .isCloseTo(delivered, within(1e-9 * delivered));
        assertThat(out[BinMethod.ENERGY]).isCloseTo(energy, within(1e-9 * energy));
    }

    @Test
    void air_along_a_duct_is_the_solution_of_its_differential_equation() {
        double surface = 14;
        double u = 1.1;
        double flow = 0.35;
        double cp = 1010;
        double ambient = 322;
        double[] t = {286};
        new DormandPrince853Integrator(1e-6, 1, 1e-10, 1e-12)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public void computeDerivatives(double x, double[] y, double[] slope) {
                                slope[0] = surface * u * (ambient - y[0]) / (flow * cp);
                            }
                        },
                        0,
                        t,
                        1,
                        t);
        double fraction = DuctConduction.conductionFraction(surface, u, flow, cp);
        assertThat(DuctConduction.leavingTemperature(286, ambient, fraction))
                .isCloseTo(t[0], within(1e-8));
    }

    @Test
    void hemispherical_gain_is_the_cosine_weighted_integral() {
        double[] degrees = {0, 40, 50, 60, 70, 80, 90};
        double[] values = {0.49, 0.46, 0.44, 0.4, 0.32, 0.18, 0};
        double[] angles = new double[degrees.length];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = degrees[i] * DEGREE;
        }
        UnivariateFunction table = new LinearInterpolator().interpolate(angles, values);
        double sum = 0;
        for (int i = 1; i < angles.length; i++) {
            sum += integral(a -> table.value(a) * Math.sin(2 * a), angles[i - 1], angles[i]);
        }
        assertThat(GlazingOptics.hemispherical(angles, values)).isCloseTo(sum, within(1e-12));
    }
}
