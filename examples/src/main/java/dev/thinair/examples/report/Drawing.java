package dev.thinair.examples.report;

import java.util.List;
import java.util.Locale;

/**
 * Line and bar drawings as SVG text.
 *
 * <p>Drawn by hand rather than by a chart library, because the page must serve a telephone, a
 * printer, and dark and light screens from the same drawing: lines carry classes that the page's
 * style colours, lettering stays text, and series differ in dash as well as in colour. The
 * coordinate system is 420 wide, so that lettering is still legible on a narrow screen.
 */
public final class Drawing {
    private static final double W = 420;
    private static final String[] CLASSES = {"warm", "cool", "third"};
    private static final String[] DASHES = {"", "7 3", "2 3"};

    private Drawing() {}

    /**
     * A series over the hours of a day.
     *
     * @param name label, written at the series itself
     * @param values a value each hour, or more often, evenly spaced over 24 h
     */
    public record Series(String name, double[] values) {
        public Series {
            values = values.clone();
        }

        @Override
        public double[] values() {
            return values.clone();
        }
    }

    /**
     * Series over a day with one common vertical axis.
     *
     * @param describe what a reader who cannot see the drawing should know
     * @param unit of the vertical axis
     * @param series at most three
     * @param level a level to be marked, or NaN
     * @param levelName its label
     * @param fromZero whether the axis must start at zero
     */
    public static String day(
            String describe,
            String unit,
            List<Series> series,
            double level,
            String levelName,
            boolean fromZero) {
        double low = Double.isNaN(level) ? Double.POSITIVE_INFINITY : level;
        double high = Double.isNaN(level) ? Double.NEGATIVE_INFINITY : level;
        for (Series s : series) {
            for (double v : s.values()) {
                low = Math.min(low, v);
                high = Math.max(high, v);
            }
        }
        if (fromZero) {
            low = Math.min(0, low);
        }
        double step = step((high - low) / 4);
        low = Math.floor(low / step) * step;
        high = Math.ceil(high / step) * step;
        if (high <= low) {
            high = low + step;
        }
        double left = 46;
        double right = W - 12;
        double top = 24;
        double bottom = 200;
        StringBuilder out = open(W, 262, describe);
        for (double v = low; v <= high + step / 2; v += step) {
            double y = bottom - (v - low) / (high - low) * (bottom - top);
            out.append(line("grid", left, y, right, y, ""));
            out.append(text("soft", left - 6, y + 4, "end", number(v, step)));
        }
        out.append(text("soft", 4, 12, "start", unit));
        for (int h = 0; h <= 24; h += 3) {
            double x = left + h / 24.0 * (right - left);
            out.append(line("axis", x, bottom, x, bottom + 4, ""));
            out.append(text("soft", x, bottom + 17, "middle", Integer.toString(h)));
        }
        out.append(text("soft", right, bottom + 31, "end", "hour of the day (standard time)"));
        out.append(line("axis", left, bottom, right, bottom, ""));
        if (!Double.isNaN(level)) {
            double y = bottom - (level - low) / (high - low) * (bottom - top);
            out.append(line("axis", left, y, right, y, "1 3"));
            out.append(text("soft", left + 4, y - 4, "start", levelName));
        }
        int n = 0;
        double legend = left;
        for (Series s : series) {
            double[] v = s.values();
            StringBuilder points = new StringBuilder();
            for (int i = 0; i <= v.length; i++) {
                double x = left + (double) i / v.length * (right - left);
                double y = bottom - (v[i % v.length] - low) / (high - low) * (bottom - top);
                points.append(points.length() == 0 ? "" : " ")
                        .append(f(x))
                        .append(',')
                        .append(f(y));
            }
            String c = CLASSES[n % CLASSES.length];
            out.append("<polyline class=\"")
                    .append(c)
                    .append("\" fill=\"none\" stroke-width=\"2.4\"")
                    .append(dash(DASHES[n % DASHES.length]))
                    .append(" points=\"")
                    .append(points)
                    .append("\"/>\n");
            double y = 250;
            out.append("<line class=\"")
                    .append(c)
                    .append("\" stroke-width=\"2.4\"")
                    .append(dash(DASHES[n % DASHES.length]))
                    .append(coordinates(legend, y - 4, legend + 24, y - 4))
                    .append("/>\n");
            out.append(text(c, legend + 29, y, "start", s.name()));
            legend += 44 + 7.0 * s.name().length();
            n++;
        }
        return out.append("</svg>").toString();
    }

    /**
     * A bar of one run.
     *
     * @param name its name
     * @param first first value, drawn filled
     * @param second second value, drawn as an outline
     * @param note a word behind the name, or an empty text
     */
    public record Bar(String name, double first, double second, String note) {}

    /**
     * Two values for each of several things, as horizontal bars.
     *
     * @param describe what a reader who cannot see the drawing should know
     * @param firstName meaning of the filled bars
     * @param secondName meaning of the outlines
     * @param unit of the values
     * @param bars the things
     */
    public static String bars(
            String describe, String firstName, String secondName, String unit, List<Bar> bars) {
        double high = 0;
        int longest = 0;
        for (Bar b : bars) {
            high = Math.max(high, Math.max(b.first(), b.second()));
            longest = Math.max(longest, label(b).length());
        }
        double left = Math.min(200, 14 + 6.6 * longest);
        double right = W - 84;
        double row = 21;
        double top = 34;
        StringBuilder out = open(W, top + row * bars.size() + 8, describe);
        out.append("<rect class=\"bar\"").append(box(left, 8, 22, 11)).append("/>\n");
        out.append(text("", left + 27, 18, "start", firstName));
        double second = left + 44 + 7.2 * firstName.length();
        out.append("<rect class=\"frame\" stroke-dasharray=\"3 2\"")
                .append(box(second, 8, 22, 11))
                .append("/>\n");
        out.append(text("", second + 27, 18, "start", secondName));
        double scale = high > 0 ? (right - left) / high : 0;
        for (int i = 0; i < bars.size(); i++) {
            Bar b = bars.get(i);
            double y = top + i * row;
            out.append(text("", left - 6, y + 12, "end", label(b)));
            out.append("<rect class=\"bar\"")
                    .append(box(left, y + 2, Math.max(0, b.first() * scale), 13))
                    .append("/>\n");
            out.append("<rect class=\"frame\" stroke-dasharray=\"3 2\"")
                    .append(box(left, y + 2, Math.max(0, b.second() * scale), 13))
                    .append("/>\n");
            String label =
                    String.format(Locale.ROOT, "%.0f \u2192 %.0f", b.first(), b.second())
                            + (i == 0 ? " " + unit : "");
            out.append(
                    text(
                            "soft",
                            left + Math.max(b.first(), b.second()) * scale + 5,
                            y + 12,
                            "start",
                            label));
        }
        return out.append("</svg>").toString();
    }

    private static String label(Bar b) {
        return b.note().isEmpty() ? b.name() : b.name() + " (" + b.note() + ")";
    }

    private static StringBuilder open(double width, double height, String describe) {
        return new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(f(width))
                .append(' ')
                .append(f(height))
                .append("\" role=\"img\" font-size=\"12.5\"><title>")
                .append(HtmlForm.escape(describe))
                .append("</title>\n");
    }

    private static String line(
            String c, double x1, double y1, double x2, double y2, String dashes) {
        return "<line class=\"" + c + "\"" + dash(dashes) + coordinates(x1, y1, x2, y2) + "/>\n";
    }

    private static String coordinates(double x1, double y1, double x2, double y2) {
        return " x1=\""
                + f(x1)
                + "\" y1=\""
                + f(y1)
                + "\" x2=\""
                + f(x2)
                + "\" y2=\""
                + f(y2)
                + "\"";
    }

    private static String box(double x, double y, double width, double height) {
        return " x=\""
                + f(x)
                + "\" y=\""
                + f(y)
                + "\" width=\""
                + f(width)
                + "\" height=\""
                + f(height)
                + "\"";
    }

    private static String dash(String dashes) {
        return dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"";
    }

    private static String text(String c, double x, double y, String anchor, String words) {
        return "<text"
                + (c.isEmpty() ? "" : " class=\"" + c + "\"")
                + " x=\""
                + f(x)
                + "\" y=\""
                + f(y)
                + "\" text-anchor=\""
                + anchor
                + "\">"
                + HtmlForm.escape(words)
                + "</text>\n";
    }

    /** The nearest of 1, 2, 5 times a power of ten that is not smaller. */
    static double step(double rough) {
        if (!(rough > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        return (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10) * power;
    }

    private static String number(double v, double step) {
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        String s = String.format(Locale.ROOT, "%." + decimals + "f", v + 0.0);
        return s.equals("-0") ? "0" : s;
    }

    private static String f(double v) {
        return String.format(Locale.ROOT, "%.1f", v);
    }
}
