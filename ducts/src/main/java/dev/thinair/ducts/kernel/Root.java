package dev.thinair.ducts.kernel;

import java.util.function.DoubleUnaryOperator;

/** A bracketed root finder for smooth monotone functions of one variable. */
final class Root {

    private static final int MAX_STEPS = 200;

    private Root() {}

    /**
     * Root of a function that changes sign between two points, by the Anderson-Bjorck rule with a
     * bisection whenever that shrinks the bracket too little. Ends at rounding error.
     *
     * @throws IllegalArgumentException if the signs at both ends agree; the message names what was
     *     sought
     */
    static double find(String what, DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa * fb < 0)) {
            throw new IllegalArgumentException(
                    "no " + what + " between " + low + " and " + high + " satisfies the request");
        }
        for (int i = 0; i < MAX_STEPS; i++) {
            double c = (i % 4 == 3) ? 0.5 * (a + b) : b - fb * (b - a) / (fb - fa);
            if (!(c > Math.min(a, b) && c < Math.max(a, b))) {
                c = 0.5 * (a + b);
            }
            double fc = f.applyAsDouble(c);
            if (fc == 0 || Math.abs(b - a) <= 2 * Math.ulp(c)) {
                return c;
            }
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else {
                double m = 1 - fc / fb;
                fa *= m > 0 ? m : 0.5;
            }
            b = c;
            fb = fc;
            if (Math.abs(b - a) <= 4 * Math.ulp(b)) {
                return b;
            }
        }
        return b;
    }
}
