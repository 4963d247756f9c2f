package dev.thinair.reference;

/**
 * The answer to a step, from the answers to sine waves: a square wave slow enough to settle between
 * its edges, summed harmonic by harmonic. It puts a frequency-domain solution, over its whole band,
 * against the textbook's series in time.
 *
 * <p>The half period is an even multiple of the time asked for, so that blocks of harmonics
 * alternate in sign; repeated averaging of the partial sums (Euler's transformation) then gives ten
 * digits where the bare sum would still be wrong in the fourth.
 */
final class StepResponse {

    private static final int BLOCKS = 64;
    private static final int AVERAGED = 24;

    private StepResponse() {}

    /** A transfer function. */
    @FunctionalInterface
    interface Transfer {
        /**
         * Writes real and imaginary part at an angular frequency.
         *
         * @param omega rad/s
         * @param out receives two numbers
         */
        void at(double omega, double[] out);
    }

    /**
     * The value at a time after a unit step.
     *
     * @param transfer of the system
     * @param time after the step, s
     * @param settled time after which nothing more happens, s
     */
    static double at(Transfer transfer, double time, double settled) {
        int size = (int) Math.ceil(settled / (2 * time));
        double half = 2 * size * time;
        double[] h = new double[2];
        double[] partial = new double[BLOCKS];
        double sum = 0;
        int k = 0;
        for (int block = 0; block < BLOCKS; block++) {
            for (int i = 0; i < size; i++, k++) {
                int n = 2 * k + 1;
                double omega = n * Math.PI / half;
                transfer.at(omega, h);
                sum +=
                        2
                                / (n * Math.PI)
                                * (h[0] * Math.sin(omega * time) + h[1] * Math.cos(omega * time));
            }
            partial[block] = sum;
        }
        for (int round = 0; round < AVERAGED; round++) {
            for (int i = BLOCKS - 1; i > round; i--) {
                partial[i] = (partial[i] + partial[i - 1]) / 2;
            }
        }
        transfer.at(0, h);
        return partial[BLOCKS - 1] + h[0] / 2;
    }
}
