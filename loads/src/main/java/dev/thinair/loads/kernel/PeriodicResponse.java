package dev.thinair.loads.kernel;

/**
 * Periodic response factors of walls: what share of the heat that a wall carries arrives how many
 * hours after the outer temperature that drove it, for hourly temperatures joined by straight
 * lines.
 *
 * <p>Formula: {@code P(k) = (1/24) [U + 2 Re sum_{n>=1} Y12(n w) sinc^2(n/24) exp(2 pi i n k /
 * 24)]}, k = 0..23, in W/(m2 K); the factors sum to U. The series is summed until the bound on its
 * rest is below 1e-13 of U, or for a nearly massless wall over 24 x 4000 terms, which leaves some
 * 1e-8 of U.
 *
 * <p>Source: S. J. Rees, J. D. Spitler, M. G. Davies, P. Haves, Qualitative comparison of North
 * American and U.K. cooling load calculation methods, HVAC and R Research 6(1), 2000 (periodic
 * response factors; from memory), computed here from the exact transfer matrix.
 */
public final class PeriodicResponse {

    private PeriodicResponse() {}

    /**
     * Response factors of a wall.
     *
     * @param r resistances from inside to outside, films included, m2 K/W, each above 0
     * @param c areal heat capacities in the same order, J/(m2 K), each 0 or more
     * @return 24 factors P(0) to P(23), W/(m2 K); their sum is U
     * @throws IllegalArgumentException if the wall is not physical
     */
    public static double[] responseFactors(double[] r, double[] c) {
        Transmission.checkWall(r, c, Transmission.DAY);
        double u = Transmission.transmittance(r);
        double[] spectrum = new double[26];
        spectrum[0] = u;
        double[] matrix = new double[Transmission.matrixLength()];
        double[] y = new double[8];
        double[] have = new double[13];
        double ref = 0;
        for (int n = 1; n <= 24 * 4000; n++) {
            double w = HourlyInterpolation.weight(n);
            Transmission.admittances(r, c, r.length, n * Transmission.OMEGA_DAY, matrix, y);
            int m = HourlyInterpolation.folded(n);
            if (m == 0) {
                // a full cycle of 24 harmonics later: stop when what is left cannot be seen
                double size = Math.hypot(y[2], y[3]);
                ref = y[2];
                if (size < 1e-13 * u || (n > 24 * 40 && Math.abs(y[3]) < 1e-13 * u)) {
                    break;
                }
                continue;
            }
            int times = m == 12 ? 2 : 1;
            have[m] += times * w;
            spectrum[2 * m] += times * w * y[2];
            if (m != 12) {
                spectrum[2 * m + 1] += w * (HourlyInterpolation.conjugated(n) ? -y[3] : y[3]);
            }
        }
        for (int m = 1; m <= 12; m++) {
            spectrum[2 * m] += (1 - have[m]) * ref;
        }
        double[] factors = new double[24];
        for (int i = 0; i < 26; i++) {
            spectrum[i] /= 24;
        }
        HourlyInterpolation.addSynthesis(spectrum, 0, factors, 0);
        return factors;
    }

    /**
     * Conduction time factors: the response factors as shares of U.
     *
     * @param r resistances from inside to outside, films included, m2 K/W, each above 0
     * @param c areal heat capacities in the same order, J/(m2 K), each 0 or more
     * @return 24 factors that sum to 1
     * @throws IllegalArgumentException if the wall is not physical
     */
    public static double[] conductionTimeFactors(double[] r, double[] c) {
        double[] factors = responseFactors(r, c);
        double u = Transmission.transmittance(r);
        for (int k = 0; k < factors.length; k++) {
            factors[k] /= u;
        }
        return factors;
    }

    /**
     * Convolves a day-periodic series with 24 factors: {@code out(h) = sum_k f(k) x(h - k)}.
     *
     * @param factors 24 factors
     * @param series 24 values
     * @return 24 values
     * @throws IllegalArgumentException if a length is not 24
     */
    public static double[] convolve(double[] factors, double[] series) {
        if (factors.length != 24 || series.length != 24) {
            throw new IllegalArgumentException(
                    factors.length
                            + " factors and "
                            + series.length
                            + " values, but both must be 24");
        }
        double[] out = new double[24];
        for (int h = 0; h < 24; h++) {
            double sum = 0;
            for (int k = 0; k < 24; k++) {
                sum += factors[k] * series[h >= k ? h - k : h - k + 24];
            }
            out[h] = sum;
        }
        return out;
    }
}
