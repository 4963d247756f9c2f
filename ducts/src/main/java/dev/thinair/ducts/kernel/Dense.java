package dev.thinair.ducts.kernel;

/** A few linear equations. */
final class Dense {

    private Dense() {}

    /**
     * Gauss elimination with row exchange, in place.
     *
     * @param a coefficients, row after row; overwritten
     * @param x right-hand side; becomes the solution, not finite if the equations have none
     */
    static void solve(double[] a, double[] x) {
        int n = x.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(a[i * n + k]) > Math.abs(a[best * n + k])) {
                    best = i;
                }
            }
            for (int j = k; j < n; j++) {
                double swap = a[k * n + j];
                a[k * n + j] = a[best * n + j];
                a[best * n + j] = swap;
            }
            double swap = x[k];
            x[k] = x[best];
            x[best] = swap;
            for (int i = k + 1; i < n; i++) {
                double l = a[i * n + k] / a[k * n + k];
                for (int j = k + 1; j < n; j++) {
                    a[i * n + j] -= l * a[k * n + j];
                }
                x[i] -= l * x[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j < n; j++) {
                x[k] -= a[k * n + j] * x[j];
            }
            x[k] /= a[k * n + k];
        }
    }
}
