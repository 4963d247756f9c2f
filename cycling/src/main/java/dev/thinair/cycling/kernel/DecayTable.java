package dev.thinair.cycling.kernel;

/**
 * Decay of many rates over any time up to an interval, without an exponential per rate.
 *
 * <p>The time is written as <code>i &Delta;/64 + j &Delta;/64<sup>2</sup> + k &Delta;/64<sup>3
 * </sup> + x</code> with whole <var>i</var>, <var>j</var>, <var>k</var>; the first three factors of
 * <code>e<sup>-&lambda;t</sup></code> come from tables, the last from five terms of its series.
 * Rates too fast for that (<code>&lambda; &Delta;/64<sup>3</sup></code> above 0.004) are left to
 * <code>Math.exp</code>. Relative error below 1e-15 <code>(1 + &lambda;t)</code>; decays below
 * 1e-200 count as nothing, so that no subnormal numbers slow a sum down.
 */
final class DecayTable {

    private static final int RADIX = 64;
    private static final double FASTEST = 0.004;
    private static final double NOTHING = 1e-200;

    private final double[] rate;
    private final double interval;
    private final double coarse;
    private final double middle;
    private final double fine;
    private final double inverseCoarse;
    private final double inverseMiddle;
    private final double inverseFine;
    private final int tabled;
    private final double[][] coarseDecay = new double[RADIX + 1][];
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
        for (int i = 0; i <= RADIX; i++) {
            coarseDecay[i] = row(i * coarse);
            if (i < RADIX) {
                middleDecay[i] = row(i * middle);
                fineDecay[i] = row(i * fine);
            }
        }
    }

    private double[] row(double time) {
        double[] decay = new double[tabled];
        for (int k = 0; k < tabled; k++) {
            double e = Math.exp(-rate[k] * time);
            decay[k] = e < NOTHING ? 0 : e;
        }
        return decay;
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
        int known = Math.min(to, tabled);
        if (time >= interval) {
            if (known > from) {
                System.arraycopy(coarseDecay[RADIX], from, out, from, known - from);
            }
        } else {
            int i = (int) (time * inverseCoarse);
            double rest = time - i * coarse;
            int j = Math.min(RADIX - 1, Math.max(0, (int) (rest * inverseMiddle)));
            rest -= j * middle;
            int l = Math.min(RADIX - 1, Math.max(0, (int) (rest * inverseFine)));
            double x = rest - l * fine;
            double[] a = coarseDecay[i];
            double[] b = middleDecay[j];
            double[] c = fineDecay[l];
            double[] r = rate;
            for (int k = from; k < known; k++) {
                double y = r[k] * x;
                double series =
                        1 - y * (1 - y * (1 / 2.0 - y * (1 / 6.0 - y * (1 / 24.0 - y / 120))));
                out[k] = a[k] * b[k] * (c[k] * series);
            }
        }
        for (int k = Math.max(from, known); k < to; k++) {
            double e = Math.exp(-rate[k] * time);
            out[k] = e < NOTHING ? 0 : e;
        }
    }
}
