package dev.thinair.cycling.kernel;

/**
 * Decay of many rates over any time up to an interval, without an exponential per rate.
 *
 * <p>The time is written as <code>i &Delta;/64 + j &Delta;/64<sup>2</sup> + k &Delta;/64<sup>3
 * </sup> + x</code> with whole <var>i</var>, <var>j</var>, <var>k</var>; the first three factors of
 * <code>e<sup>-&lambda;t</sup></code> come from tables, the last from five terms of its series, or
 * three for rates that are slow enough. Rates too fast for that (<code>
 * &lambda; &Delta;/64<sup>3</sup></code> above 0.004) are left to <code>Math.exp</code>. Relative
 * error below 1e-15 <code>(1 + &lambda;t)</code>; decays below 1e-200 count as nothing, so that no
 * subnormal numbers slow a sum down.
 */
final class DecayTable {

    private static final int RADIX = 64;
    private static final double FASTEST = 0.004;
    private static final double SLOWEST = 2e-4;
    private static final double MOST = 460; // a decay of 1e-200 and less is nothing

    private final double[] rate;
    private final double interval;
    private final double coarse;
    private final double middle;
    private final double fine;
    private final double inverseCoarse;
    private final double inverseMiddle;
    private final double inverseFine;
    private final int tabled;
    private final int calm; // rates for which three terms of the series do
    private final double[] wholeDecay;
    private final double[][] coarseDecay = new double[RADIX][];
    private final double[][] middleDecay = new double[RADIX][];
    private final double[][] fineDecay = new double[RADIX][];

    /**
     * Fills the tables.
     *
     * @param rate rates, 1/s, at least 0; kept, not to be changed
     * @param count how many of them
     * @param interval longest time, s
     */
    DecayTable(double[] rate, int count, double interval) {
        this.rate = rate;
        this.interval = interval;
        coarse = interval / RADIX;
        middle = coarse / RADIX;
        fine = middle / RADIX;
        inverseCoarse = RADIX / interval;
        inverseMiddle = RADIX * inverseCoarse;
        inverseFine = RADIX * inverseMiddle;
        int fast = 0;
        while (fast < count && rate[fast] * fine <= FASTEST) {
            fast++;
        }
        tabled = fast;
        int slow = 0;
        while (slow < tabled && rate[slow] * fine <= SLOWEST) {
            slow++;
        }
        calm = slow;
        wholeDecay = row(interval, count);
        for (int i = 0; i < RADIX; i++) {
            coarseDecay[i] = row(i * coarse, tabled);
            middleDecay[i] = row(i * middle, tabled);
            fineDecay[i] = row(i * fine, tabled);
        }
    }

    private double[] row(double time, int count) {
        double[] decay = new double[count];
        for (int k = 0; k < count; k++) {
            decay[k] = decay(rate[k] * time);
        }
        return decay;
    }

    private static double decay(double x) {
        return x > MOST ? 0 : Math.exp(-x);
    }

    /**
     * Decays over a time.
     *
     * @param time s, in [0, interval]
     * @param from first rate
     * @param to one past the last rate
     * @param out receives e<sup>-rate time</sup> of each
     */
    void at(double time, int from, int to, double[] out) {
        if (time >= interval) {
            System.arraycopy(wholeDecay, from, out, from, to - from);
            return;
        }
        int known = Math.min(to, tabled);
        if (known > from) {
            int i = Math.min(RADIX - 1, (int) (time * inverseCoarse));
            double rest = time - i * coarse;
            int j = Math.min(RADIX - 1, Math.max(0, (int) (rest * inverseMiddle)));
            rest -= j * middle;
            int l = Math.min(RADIX - 1, Math.max(0, (int) (rest * inverseFine)));
            double x = rest - l * fine;
            double[] a = coarseDecay[i];
            double[] b = middleDecay[j];
            double[] c = fineDecay[l];
            double[] r = rate;
            int slow = Math.min(known, calm);
            for (int k = from; k < slow; k++) {
                double y = r[k] * x;
                out[k] = a[k] * b[k] * (c[k] * (1 - y * (1 - y * (1 / 2.0 - y * (1 / 6.0)))));
            }
            for (int k = Math.max(from, slow); k < known; k++) {
                double y = r[k] * x;
                double series =
                        1 - y * (1 - y * (1 / 2.0 - y * (1 / 6.0 - y * (1 / 24.0 - y / 120))));
                out[k] = a[k] * b[k] * (c[k] * series);
            }
        }
        for (int k = Math.max(from, known); k < to; k++) {
            out[k] = decay(rate[k] * time);
        }
    }
}
