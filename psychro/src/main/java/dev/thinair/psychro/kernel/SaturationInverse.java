package dev.thinair.psychro.kernel;

/**
 * Saturation temperature by table: the inverse of the two saturation curves of {@link Saturation}.
 *
 * <p>The logarithm of pressure is cut into intervals of 1/8, numbered so that liquid water begins
 * with one of them. Each holds a polynomial of degree 6, got when the class is loaded from the
 * formulas themselves: the curve's Taylor series about the temperature of the interval's middle,
 * reverted, its seventh power spread over the lower ones by the Chebyshev polynomial of that
 * degree.
 *
 * <p>One logarithm and seven products per temperature, and no branch between ice and water, which
 * random states would make the processor guess wrong. An iteration from a polynomial start costs a
 * second logarithm, two divisions and about twice the time.
 *
 * <p>Accuracy: the temperature on the curve within 4e-13 K, which is the rounding of the formulas.
 */
final class SaturationInverse {

    private static final double WIDTH = 0.125;
    private static final int DEGREE = 7;
    private static final int ROW = 8; // middle, then coefficients of powers 0 to 6: one cache line
    private static final int ROWS_OF_ICE = 104;
    private static final int ROWS_OF_LIQUID = 63;
    private static final double ORIGIN =
            Saturation.logOverLiquid(Domain.ICE_POINT) - ROWS_OF_ICE * WIDTH;

    private static final double[] TABLE = table();

    private SaturationInverse() {}

    /**
     * Temperature whose saturation pressure has a given natural logarithm.
     *
     * @param log ln(p/Pa), from the ice curve's at 173.15 K to the liquid curve's at 473.15 K; next
     *     to 273.15 K the gap between the curves belongs to ice, extended
     */
    static double temperature(double log) {
        int row = ROW * (int) ((log - ORIGIN) * (1 / WIDTH));
        double d = log - TABLE[row];
        double square = d * d;
        // In pairs of terms, which the processor can overlap.
        return (TABLE[row + 1] + d * TABLE[row + 2])
                + square
                        * ((TABLE[row + 3] + d * TABLE[row + 4])
                                + square
                                        * ((TABLE[row + 5] + d * TABLE[row + 6])
                                                + square * TABLE[row + 7]));
    }

    private static double[] table() {
        double[] table = new double[ROW * (ROWS_OF_ICE + ROWS_OF_LIQUID)];
        double temperature = Domain.ICE_POINT;
        for (int i = ROWS_OF_ICE; i < ROWS_OF_ICE + ROWS_OF_LIQUID; i++) {
            temperature = fill(table, i, temperature, true);
        }
        temperature = Domain.ICE_POINT;
        for (int i = ROWS_OF_ICE - 1; i >= 0; i--) {
            temperature = fill(table, i, temperature, false);
        }
        return table;
    }

    /** Fills one row, given the temperature at the neighbor's middle; returns its own. */
    private static double fill(double[] table, int row, double near, boolean liquid) {
        double middle = ORIGIN + (row + 0.5) * WIDTH;
        double t = near;
        // Newton's steps from at most some kelvins away: the last ones change nothing.
        for (int step = 0; step < 5; step++) {
            double inverse = 1 / t;
            t -=
                    liquid
                            ? (Saturation.logOverLiquid(t) - middle)
                                    / Saturation.logSlopeOverLiquid(t, inverse)
                            : (Saturation.logOverIce(t) - middle)
                                    / Saturation.logSlopeOverIce(t, inverse);
        }
        double[] b =
                reverted(
                        liquid
                                ? Saturation.taylorOverLiquid(t, DEGREE)
                                : Saturation.taylorOverIce(t, DEGREE));
        // x^7 = (112 x^5 - 56 x^3 + 7 x + T7(x)) / 64 with x = d / h; T7 / 64 is left out.
        double square = WIDTH * WIDTH / 4;
        b[5] += 112 / 64.0 * b[7] * square;
        b[3] -= 56 / 64.0 * b[7] * square * square;
        b[1] += 7 / 64.0 * b[7] * square * square * square;
        table[ROW * row] = middle;
        table[ROW * row + 1] = t;
        System.arraycopy(b, 1, table, ROW * row + 2, DEGREE - 1);
        return t;
    }

    /** Coefficients of the inverse of a power series without constant term. */
    private static double[] reverted(double[] a) {
        double[] b = new double[a.length];
        b[1] = 1 / a[1];
        for (int n = 2; n < a.length; n++) {
            double sum = 0;
            double[] power = b;
            for (int m = 2; m <= n; m++) {
                power = product(power, b);
                sum += a[m] * power[n];
            }
            b[n] = -sum / a[1];
        }
        return b;
    }

    private static double[] product(double[] a, double[] b) {
        double[] c = new double[a.length];
        for (int i = 1; i < a.length; i++) {
            for (int j = 1; i + j < a.length; j++) {
                c[i + j] += a[i] * b[j];
            }
        }
        return c;
    }
}
