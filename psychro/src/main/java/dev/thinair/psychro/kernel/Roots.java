package dev.thinair.psychro.kernel;

import java.util.function.DoubleUnaryOperator;

/** Bracketed root search for the inversions that are not on a hot path. */
final class Roots {

    private static final int MOST_STEPS = 100;

    private Roots() {}

    /**
     * Root of a function that changes sign between two points. Inverse quadratic interpolation
     * where it is safe, else bisection (Chandrupatla, Advances in Engineering Software 28 (1997)
     * 145-149); the bracket always shrinks, and bisection alone would need 60 steps.
     *
     * @throws IllegalArgumentException if the signs at the two ends agree
     * @throws ArithmeticException if 100 steps do not bring the bracket below the tolerance
     */
    static double find(
            String what, DoubleUnaryOperator f, double end1, double end2, double tolerance) {
        double a = end1;
        double b = end2;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa < 0 == fb > 0)) {
            throw new IllegalArgumentException(
                    what + " has no solution between " + end1 + " and " + end2);
        }
        double t = 0.5;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (fx > 0 == fa > 0) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double least = tolerance / Math.abs(b - a);
            if (fa == 0 || least > 0.5) {
                return best;
            }
            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            if (1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi)) {
                t =
                        fa / (fb - fa) * fc / (fb - fc)
                                + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
            } else {
                t = 0.5;
            }
            t = Math.min(1 - least, Math.max(least, t));
        }
        throw new ArithmeticException(
                what + " did not converge in " + MOST_STEPS + " steps; bracket " + a + " to " + b);
    }
}
