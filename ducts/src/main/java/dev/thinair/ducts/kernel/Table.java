package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** Linear reading between the lines of a published table; nothing is read outside of it. */
final class Table {

    private Table() {}

    /** Value between the two neighbouring entries. */
    static double read(String name, String unit, double[] x, double[] y, double at) {
        Range.require(name, at, x[0], x[x.length - 1], unit);
        int i = segment(x, at);
        return between(x, y, i, at);
    }

    /** As {@link #read}, where the last entry holds for everything above it as well. */
    static double readUpTo(
            String name, String unit, double[] x, double[] y, double at, double most) {
        Range.require(name, at, x[0], most, unit);
        return at >= x[x.length - 1] ? y[y.length - 1] : between(x, y, segment(x, at), at);
    }

    /** Value of a table of rows {@code x} and columns {@code z}, linear in both. */
    static double read(
            String rowName,
            String rowUnit,
            double[] x,
            double row,
            String columnName,
            double[] z,
            double column,
            double[][] y) {
        Range.require(rowName, row, x[0], x[x.length - 1], rowUnit);
        Range.require(columnName, column, z[0], z[z.length - 1], "");
        int i = segment(x, row);
        double low = between(z, y[i], segment(z, column), column);
        double high = between(z, y[i + 1], segment(z, column), column);
        double t = (row - x[i]) / (x[i + 1] - x[i]);
        return (1 - t) * low + t * high;
    }

    private static int segment(double[] x, double at) {
        int i = 0;
        while (i < x.length - 2 && at > x[i + 1]) {
            i++;
        }
        return i;
    }

    private static double between(double[] x, double[] y, int i, double at) {
        double t = Math.min(1, Math.max(0, (at - x[i]) / (x[i + 1] - x[i])));
        return (1 - t) * y[i] + t * y[i + 1];
    }
}
