package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Periodic heat conduction through layered plane walls by the heat transfer matrix.
 *
 * <p>A layer is given by its resistance <var>R</var> (m2 K/W) and its areal heat capacity
 * <var>C</var> (J/(m2 K)); a film or an air gap has <var>C</var> = 0. Layers run from side 1
 * (inside) to side 2 (outside). With the angular frequency <var>w</var> and {@code g = sqrt(i w R
 * C)} the matrix of a layer, which takes temperature and flux of its outer face to those of its
 * inner face, is
 *
 * <pre>
 *     | cosh g         R sinh g / g |
 *     | g sinh g / R   cosh g       |
 * </pre>
 *
 * <p>and the wall's matrix is the product ((A, B), (C, D)), whose determinant is one. From it
 * follow the admittances used everywhere here, in W/(m2 K), flux counted from inside to outside:
 * inside {@code Y11 = D/B}, transfer {@code Y12 = 1/B}, outside {@code Y22 = A/B}.
 *
 * <p>Each layer's matrix is divided by exp(Re g) when that is large, and the exponent carried
 * apart, so that no thickness overflows. For small |g| the power series is summed, which loses no
 * digits; elsewhere one {@code exp}, one {@code sin} and one {@code cos} give all four entries.
 *
 * <p>Source: ISO 13786:2017 (heat transfer matrix, dynamic characteristics); H. S. Carslaw and J.
 * C. Jaeger, Conduction of Heat in Solids, 2nd ed., 1959, section 3.7.
 *
 * <p>Accuracy: 1e-13 relative against 40-digit arithmetic for walls of ordinary thickness.
 */
public final class Transmission {

    /** Seconds in a day: the period of the first harmonic. */
    public static final double DAY = 86_400.0;

    /** Angular frequency of the 24-hour harmonic, rad/s. */
    public static final double OMEGA_DAY = 2 * Math.PI / DAY;

    /** Below this value of |g|^2 the power series is used: nine terms leave less than 1e-19. */
    private static final double SERIES_LIMIT = 0.5;

    private Transmission() {}

    /**
     * Number of doubles that {@link #matrix} writes.
     *
     * @return 9: re and im of A, B, C, D, then the natural logarithm of the common factor
     */
    public static int matrixLength() {
        return 9;
    }

    /**
     * Heat transfer matrix of a wall at one frequency.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param count layers to use, from the first; at most the length of both arrays
     * @param omega angular frequency, rad/s, 0 or more
     * @param out receives re and im of A, B, C, D (places 0..7) of the scaled matrix and in place 8
     *     the exponent s: the matrix is exp(s) times what is written
     */
    public static void matrix(double[] r, double[] c, int count, double omega, double[] out) {
        double ar = 1;
        double ai = 0;
        double br = 0;
        double bi = 0;
        double cr = 0;
        double ci = 0;
        double dr = 1;
        double di = 0;
        double scale = 0;
        for (int l = 0; l < count; l++) {
            double res = r[l];
            double y = omega * res * c[l];
            if (y == 0) {
                // (A, B; C, D) (1, R; 0, 1)
                br += ar * res;
                bi += ai * res;
                dr += cr * res;
                di += ci * res;
                continue;
            }
            // nothing of the result is written yet, so its places serve as scratch
            layer(y, out, 0);
            double chr = out[0]; // cosh g
            double chi = out[1];
            double sr = out[2]; // sinh g / g
            double si = out[3];
            scale += out[4];
            double mbr = res * sr;
            double mbi = res * si;
            // g sinh g / R = g^2 (sinh g / g) / R = i y (sr + i si) / R
            double mcr = -y * si / res;
            double mci = y * sr / res;
            double nar = ar * chr - ai * chi + br * mcr - bi * mci;
            double nai = ar * chi + ai * chr + br * mci + bi * mcr;
            double nbr = ar * mbr - ai * mbi + br * chr - bi * chi;
            double nbi = ar * mbi + ai * mbr + br * chi + bi * chr;
            double ncr = cr * chr - ci * chi + dr * mcr - di * mci;
            double nci = cr * chi + ci * chr + dr * mci + di * mcr;
            double ndr = cr * mbr - ci * mbi + dr * chr - di * chi;
            double ndi = cr * mbi + ci * mbr + dr * chi + di * chr;
            ar = nar;
            ai = nai;
            br = nbr;
            bi = nbi;
            cr = ncr;
            ci = nci;
            dr = ndr;
            di = ndi;
        }
        out[0] = ar;
        out[1] = ai;
        out[2] = br;
        out[3] = bi;
        out[4] = cr;
        out[5] = ci;
        out[6] = dr;
        out[7] = di;
        out[8] = scale;
    }

    /**
     * Hyperbolic functions of one layer: with {@code g = sqrt(i y)}, {@code cosh g} and {@code sinh
     * g / g}, both divided by exp(s).
     *
     * @param y {@code w R C}, above 0
     * @param out receives re and im of cosh g, re and im of sinh g / g, and s
     * @param at place of the first of the five numbers
     */
    static void layer(double y, double[] out, int at) {
        if (y < SERIES_LIMIT) {
            // z = i y; even powers are real, odd powers imaginary
            double y2 = y * y;
            out[at] = 1 - y2 / 24 * (1 - y2 / 1680 * (1 - y2 / 11_880 * (1 - y2 / 43_680)));
            out[at + 1] = y / 2 * (1 - y2 / 360 * (1 - y2 / 5040 * (1 - y2 / 24_024)));
            out[at + 2] = 1 - y2 / 120 * (1 - y2 / 3024 * (1 - y2 / 17_160 * (1 - y2 / 57_120)));
            out[at + 3] = y / 6 * (1 - y2 / 840 * (1 - y2 / 7920 * (1 - y2 / 32_760)));
            out[at + 4] = 0;
            return;
        }
        double x = Math.sqrt(0.5 * y);
        double sin = Math.sin(x);
        double cos = Math.cos(x);
        double ch;
        double sh;
        double scale = 0;
        if (x > 20) {
            // exp(-2x) is below rounding
            ch = 0.5;
            sh = 0.5;
            scale = x;
        } else {
            double e = Math.exp(x);
            double inv = 1 / e;
            ch = 0.5 * (e + inv);
            sh = 0.5 * (e - inv);
        }
        double shr = sh * cos;
        double shi = ch * sin;
        // divide sinh g by g = x (1 + i)
        double q = 0.5 / x;
        out[at] = ch * cos;
        out[at + 1] = sh * sin;
        out[at + 2] = (shr + shi) * q;
        out[at + 3] = (shi - shr) * q;
        out[at + 4] = scale;
    }

    /**
     * Admittances of a wall at one frequency, without checks: for inner loops.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W
     * @param c areal heat capacity of each layer, J/(m2 K)
     * @param count layers to use
     * @param omega angular frequency, rad/s
     * @param work scratch of {@link #matrixLength()} doubles
     * @param out receives re and im of Y11 (inside), Y12 (transfer), Y22 (outside) and of C/A, the
     *     inside admittance when no heat passes the outer face; W/(m2 K)
     */
    public static void admittances(
            double[] r, double[] c, int count, double omega, double[] work, double[] out) {
        matrix(r, c, count, omega, work);
        double br = work[2];
        double bi = work[3];
        double inv = 1 / (br * br + bi * bi);
        out[0] = (work[6] * br + work[7] * bi) * inv;
        out[1] = (work[7] * br - work[6] * bi) * inv;
        double down = work[8] == 0 ? 1 : Math.exp(-work[8]);
        out[2] = br * inv * down;
        out[3] = -bi * inv * down;
        out[4] = (work[0] * br + work[1] * bi) * inv;
        out[5] = (work[1] * br - work[0] * bi) * inv;
        double ar = work[0];
        double ai = work[1];
        double inva = 1 / (ar * ar + ai * ai);
        out[6] = (work[4] * ar + work[5] * ai) * inva;
        out[7] = (work[5] * ar - work[4] * ai) * inva;
    }

    /**
     * Thermal transmittance of the layers given, films included where the caller put them: {@code U
     * = 1 / sum R}.
     *
     * @param r resistance of each layer, m2 K/W, each above 0
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if there is no layer or a resistance is not above 0
     */
    public static double transmittance(double[] r) {
        if (r.length == 0) {
            throw new IllegalArgumentException("a wall needs at least one layer");
        }
        double sum = 0;
        for (double one : r) {
            Range.requireAbove("layer resistance", one, 0, "m2 K/W");
            sum += one;
        }
        return 1 / sum;
    }

    /**
     * Periodic thermal transmittance |Y12| (ISO 13786).
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @return |Y12|, W/(m2 K)
     * @throws IllegalArgumentException if the wall or the period is not physical
     */
    public static double periodicTransmittance(double[] r, double[] c, double period) {
        double[] y = checkedAdmittances(r, c, period);
        return Math.hypot(y[2], y[3]);
    }

    /**
     * Decrement factor f = |Y12| / U (ISO 13786).
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @return decrement factor, between 0 and 1
     * @throws IllegalArgumentException if the wall or the period is not physical
     */
    public static double decrementFactor(double[] r, double[] c, double period) {
        return periodicTransmittance(r, c, period) / transmittance(r);
    }

    /**
     * Time by which the inner flux lags the outer temperature: {@code -T/(2 pi) arg Y12}, followed
     * continuously from frequency zero so that lags beyond half a period come out as they are.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @return lag, s, 0 or more
     * @throws IllegalArgumentException if the wall or the period is not physical
     */
    public static double lag(double[] r, double[] c, double period) {
        checkWall(r, c, period);
        double omega = 2 * Math.PI / period;
        double turns = 0;
        for (int l = 0; l < r.length; l++) {
            turns += Math.sqrt(0.5 * omega * r[l] * c[l]);
        }
        // The phase of B grows by about one radian per unit of sum Re g, plus less than half a turn
        // for the mismatch between layers: steps of a quarter keep every change well below a half.
        int steps = 8 + (int) Math.ceil(4 * turns);
        double[] m = new double[9];
        double phase = 0;
        double before = 0;
        for (int k = 1; k <= steps; k++) {
            double part = (double) k / steps;
            matrix(r, c, r.length, omega * part * part, m);
            double now = Math.atan2(m[3], m[2]);
            double step = now - before;
            step -= 2 * Math.PI * Math.rint(step / (2 * Math.PI));
            phase += step;
            before = now;
        }
        return phase / omega;
    }

    /**
     * Magnitude of the inside (1) or outside (2) thermal admittance, ISO 13786 Y11 or Y22.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @param side 1 for inside, 2 for outside
     * @return |Y11| or |Y22|, W/(m2 K)
     * @throws IllegalArgumentException if the wall, the period or the side is not valid
     */
    public static double admittance(double[] r, double[] c, double period, int side) {
        double[] y = checkedAdmittances(r, c, period);
        int at = side(side);
        return Math.hypot(y[at], y[at + 1]);
    }

    /**
     * Time by which the flux into a face leads the temperature beside it: {@code T/(2 pi) arg Y}.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @param side 1 for inside, 2 for outside
     * @return lead, s
     * @throws IllegalArgumentException if the wall, the period or the side is not valid
     */
    public static double admittanceLead(double[] r, double[] c, double period, int side) {
        double[] y = checkedAdmittances(r, c, period);
        int at = side(side);
        return Math.atan2(y[at + 1], y[at]) * period / (2 * Math.PI);
    }

    /**
     * Areal heat capacity seen from one side, ISO 13786: {@code kappa = T/(2 pi) |Y11 - Y12|}.
     *
     * @param r resistance of each layer from inside to outside, m2 K/W, each above 0
     * @param c areal heat capacity of each layer, J/(m2 K), each 0 or more
     * @param period period of the harmonic, s, above 0
     * @param side 1 for inside, 2 for outside
     * @return kappa, J/(m2 K)
     * @throws IllegalArgumentException if the wall, the period or the side is not valid
     */
    public static double arealHeatCapacity(double[] r, double[] c, double period, int side) {
        double[] y = checkedAdmittances(r, c, period);
        int at = side(side);
        return Math.hypot(y[at] - y[2], y[at + 1] - y[3]) * period / (2 * Math.PI);
    }

    /**
     * Depth at which a periodic temperature wave in a thick body has fallen to 1/e of that at the
     * surface: {@code d = sqrt(k T / (pi rho c))} (ISO 13786; Carslaw and Jaeger 2.6).
     *
     * @param conductivity W/(m K), above 0
     * @param density kg/m3, above 0
     * @param specificHeat J/(kg K), above 0
     * @param period s, above 0
     * @return depth, m
     * @throws IllegalArgumentException if an argument is not above 0
     */
    public static double penetrationDepth(
            double conductivity, double density, double specificHeat, double period) {
        Range.requireAbove("conductivity", conductivity, 0, "W/(m K)");
        Range.requireAbove("density", density, 0, "kg/m3");
        Range.requireAbove("specific heat", specificHeat, 0, "J/(kg K)");
        Range.requireAbove("period", period, 0, "s");
        return Math.sqrt(conductivity * period / (Math.PI * density * specificHeat));
    }

    /**
     * Admittance of the surface of a half space: {@code sqrt(2 pi k rho c / T)}; the flux leads the
     * temperature by exactly an eighth of the period (Carslaw and Jaeger 2.6).
     *
     * @param conductivity W/(m K), above 0
     * @param density kg/m3, above 0
     * @param specificHeat J/(kg K), above 0
     * @param period s, above 0
     * @return magnitude of the admittance, W/(m2 K)
     * @throws IllegalArgumentException if an argument is not above 0
     */
    public static double halfSpaceAdmittance(
            double conductivity, double density, double specificHeat, double period) {
        Range.requireAbove("conductivity", conductivity, 0, "W/(m K)");
        Range.requireAbove("density", density, 0, "kg/m3");
        Range.requireAbove("specific heat", specificHeat, 0, "J/(kg K)");
        Range.requireAbove("period", period, 0, "s");
        return Math.sqrt(2 * Math.PI * conductivity * density * specificHeat / period);
    }

    private static int side(int side) {
        if (side != 1 && side != 2) {
            throw new IllegalArgumentException("side is " + side + ", but must be 1 or 2");
        }
        return side == 1 ? 0 : 4;
    }

    private static double[] checkedAdmittances(double[] r, double[] c, double period) {
        checkWall(r, c, period);
        double[] y = new double[8];
        admittances(r, c, r.length, 2 * Math.PI / period, new double[9], y);
        return y;
    }

    static void checkWall(double[] r, double[] c, double period) {
        if (r.length == 0) {
            throw new IllegalArgumentException("a wall needs at least one layer");
        }
        if (r.length != c.length) {
            throw new IllegalArgumentException(
                    r.length + " resistances, but " + c.length + " heat capacities");
        }
        for (int l = 0; l < r.length; l++) {
            Range.requireAbove("layer resistance", r[l], 0, "m2 K/W");
            Range.require("layer heat capacity", c[l], 0, 1e12, "J/(m2 K)");
        }
        Range.requireAbove("period", period, 0, "s");
    }
}
