package dev.thinair.examples.classroom;

import java.util.Locale;

/** Ranges and text of numbers. */
final class Numbers {
    private Numbers() {}

    /** {@code count} values evenly spaced, both ends included. */
    static double[] even(double from, double to, int count) {
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = from + (to - from) * i / (count - 1);
        }
        return x;
    }

    /** {@code count} values in geometric progression, both ends included. */
    static double[] geometric(double from, double to, int count) {
        double[] x = even(Math.log(from), Math.log(to), count);
        for (int i = 0; i < count; i++) {
            x[i] = Math.exp(x[i]);
        }
        return x;
    }

    static String text(double value, int decimals) {
        String s = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return s.matches("-0(\\.0*)?") ? s.substring(1) : s;
    }

    /** Change against a base, with its sign. */
    static String change(double value, double base) {
        return String.format(Locale.ROOT, "%+.0f %%", 100 * (value / base - 1));
    }
}
