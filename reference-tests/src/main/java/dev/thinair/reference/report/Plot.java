package dev.thinair.reference.report;

import java.util.List;

/**
 * A plot of deviations over a domain.
 *
 * @param key short name, for files and anchors
 * @param title what is compared
 * @param across name and unit of the horizontal axis
 * @param logarithmic whether the horizontal axis is logarithmic
 * @param deviation name of the vertical axis, with its unit
 * @param caption what is to be seen, with the sources
 * @param series at most four
 */
record Plot(
        String key,
        String title,
        String across,
        boolean logarithmic,
        String deviation,
        String caption,
        List<Series> series) {

    /**
     * One series.
     *
     * @param name its name
     * @param x along the axis
     * @param y deviations
     * @param line whether it is drawn as a line or as single marks
     */
    record Series(String name, double[] x, double[] y, boolean line) {}

    /** The largest deviation in size. */
    double worst() {
        double worst = 0;
        for (Series s : series) {
            for (double y : s.y()) {
                worst = Math.max(worst, Math.abs(y));
            }
        }
        return worst;
    }
}
