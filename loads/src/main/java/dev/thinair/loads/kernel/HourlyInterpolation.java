package dev.thinair.loads.kernel;

/**
 * Day-periodic series given at 24 hour marks and taken as straight lines between them.
 *
 * <p>The spectrum of such a series repeats with period 24 under the factor {@code sinc^2(n/24)}:
 * the response of a linear system at the hour marks is therefore found from the 24-point spectrum
 * of the samples and the <em>folded</em> transfer function
 *
 * <pre>    Hf(m) = sum over all whole j of H(m + 24 j) sinc^2((m + 24 j) / 24),</pre>
 *
 * <p>with sinc x = sin(pi x)/(pi x). Twelve plain harmonics instead would ring at sunset and at
 * switched gains. The weights of one <var>m</var> sum to one, because the samples lie on the line;
 * so the weight of what lies beyond the terms computed is known. {@link HouseResponse} interpolates
 * the transfers there; {@link PeriodicResponse} goes on until what is left cannot be seen.
 *
 * <p>Source: standard sampling theory; the use for heat conduction follows D. G. Stephenson and G.
 * P. Mitalas, Calculation of heat conduction transfer functions for multi-layer slabs, ASHRAE
 * Transactions 77(2), 1971 (triangular pulses), restated for the periodic case.
 */
public final class HourlyInterpolation {
    /** Hours in a day. */
    public static final int HOURS = 24;

    /** Harmonics kept, the mean included. */
    public static final int HARMONICS = 13;

    private static final double[] COS = new double[HOURS];
    private static final double[] SIN = new double[HOURS];

    static {
        for (int k = 0; k < HOURS; k++) {
            // sin and cos of exact multiples of 15 degrees, folded to the first octant for
            // exactness
            COS[k] = exactCosine(k);
            SIN[k] = exactCosine(((k - 6) % HOURS + HOURS) % HOURS);
        }
    }

    private HourlyInterpolation() {}

    private static double exactCosine(int k) {
        int q = k % 24;
        if (q > 12) {
            q = 24 - q;
        }
        boolean negative = q > 6;
        if (negative) {
            q = 12 - q;
        }
        double c = q == 6 ? 0 : q == 4 ? 0.5 : Math.cos(q * Math.PI / 12);
        return negative ? -c : c;
    }

    /**
     * Weight sinc^2(n/24) of the harmonic n.
     *
     * @param n harmonic of the day, 0 or more
     * @return weight, 0 to 1
     */
    public static double weight(int n) {
        if (n == 0) {
            return 1;
        }
        if (n % HOURS == 0) {
            return 0;
        }
        double x = Math.PI * n / HOURS;
        double s = SIN12[n % HOURS] / x;
        return s * s;
    }

    /** sin(pi k / 24). */
    private static final double[] SIN12 = new double[HOURS];

    static {
        for (int k = 0; k < HOURS; k++) {
            SIN12[k] = Math.sin(Math.PI * k / HOURS);
        }
    }

    /**
     * Harmonic m of 0..12 on which the harmonic n of the continuous series lands.
     *
     * @param n harmonic of the day, 0 or more
     * @return m, 0 to 12
     */
    public static int folded(int n) {
        int rest = n % HOURS;
        return rest <= HOURS / 2 ? rest : HOURS - rest;
    }

    /**
     * Whether harmonic n lands conjugated.
     *
     * @param n harmonic of the day, 0 or more
     * @return true if the conjugate of H(n) is to be added
     */
    public static boolean conjugated(int n) {
        return n % HOURS > HOURS / 2;
    }

    /**
     * Spectrum of 24 samples: {@code X(m) = (1/24) sum x(h) exp(-2 pi i m h / 24)}, m = 0..12.
     *
     * @param x array holding the samples
     * @param at index of the first of the 24 samples
     * @param out receives re and im of X(0) to X(12)
     * @param outAt index in {@code out} of the first of the 26 numbers
     */
    public static void analyse(double[] x, int at, double[] out, int outAt) {
        // even and odd parts halve the work: x(h) and x(24 - h)
        double x0 = x[at];
        double x12 = x[at + 12];
        for (int m = 0; m <= 12; m++) {
            double re = x0 + ((m & 1) == 0 ? x12 : -x12);
            double im = 0;
            int k = 0;
            for (int h = 1; h < 12; h++) {
                k += m;
                if (k >= HOURS) {
                    k -= HOURS;
                }
                double a = x[at + h];
                double b = x[at + HOURS - h];
                re += (a + b) * COS[k];
                im -= (a - b) * SIN[k];
            }
            out[outAt + 2 * m] = re / HOURS;
            out[outAt + 2 * m + 1] = im / HOURS;
        }
    }

    /**
     * Samples from a spectrum: {@code x(h) = X0 + 2 Re sum_{m=1..11} X(m) exp(2 pi i m h / 24) +
     * X12 (-1)^h}. Adds to what is there.
     *
     * @param spectrum re and im of X(0) to X(12)
     * @param at index of the first of the 26 numbers
     * @param x receives the sum
     * @param xAt index of the first of the 24 samples
     */
    public static void addSynthesis(double[] spectrum, int at, double[] x, int xAt) {
        double mean = spectrum[at];
        double last = spectrum[at + 24];
        // hours h, 12 - h, 12 + h and 24 - h share cosines and sines up to sign
        for (int h = 0; h <= 6; h++) {
            double evenCos = 0; // even m
            double oddCos = 0; // odd m
            double evenSin = 0;
            double oddSin = 0;
            int k = h;
            oddCos += spectrum[at + 2] * COS[k];
            oddSin -= spectrum[at + 3] * SIN[k];
            for (int m = 2; m < 12; m += 2) {
                k += h;
                if (k >= HOURS) {
                    k -= HOURS;
                }
                evenCos += spectrum[at + 2 * m] * COS[k];
                evenSin -= spectrum[at + 2 * m + 1] * SIN[k];
                k += h;
                if (k >= HOURS) {
                    k -= HOURS;
                }
                oddCos += spectrum[at + 2 * m + 2] * COS[k];
                oddSin -= spectrum[at + 2 * m + 3] * SIN[k];
            }
            // m = 12 has the sign of the hour, and 12 - h is as even as h
            double base = mean + ((h & 1) == 0 ? last : -last);
            double cos = 2 * (evenCos + oddCos);
            double sin = 2 * (evenSin + oddSin);
            x[xAt + h] += base + cos + sin;
            if (h > 0) {
                x[xAt + HOURS - h] += base + cos - sin;
            }
            if (h < 6) {
                double cosFar = 2 * (evenCos - oddCos);
                double sinFar = 2 * (oddSin - evenSin);
                x[xAt + 12 - h] += base + cosFar + sinFar;
                if (h > 0) {
                    x[xAt + 12 + h] += base + cosFar - sinFar;
                }
            }
        }
    }

    /**
     * One sample from a spectrum: what {@link #addSynthesis} adds at that hour.
     *
     * @param spectrum re and im of X(0) to X(12)
     * @param at index of the first of the 26 numbers
     * @param hour 0 to 23
     * @return the sample
     */
    public static double at(double[] spectrum, int at, int hour) {
        double sum = 0;
        int k = 0;
        for (int m = 1; m < 12; m++) {
            k += hour;
            if (k >= HOURS) {
                k -= HOURS;
            }
            sum += spectrum[at + 2 * m] * COS[k] - spectrum[at + 2 * m + 1] * SIN[k];
        }
        double last = spectrum[at + 24];
        return spectrum[at] + 2 * sum + ((hour & 1) == 0 ? last : -last);
    }
}
