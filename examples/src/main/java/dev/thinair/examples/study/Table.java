package dev.thinair.examples.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;

/**
 * Numbers and words in named columns. Prints as an aligned table in a shell, writes itself as CSV
 * with full precision, and draws itself.
 */
public final class Table {
    private static final int FIGURES = 5;

    private final List<String> columns;
    private final List<List<Object>> rows;

    /**
     * A table of rows.
     *
     * @param columns their names, with units
     * @param rows cells, each a {@link Double} (NaN for none) or a text
     * @throws IllegalArgumentException if a row has more or fewer cells than there are columns
     */
    public Table(List<String> columns, List<List<Object>> rows) {
        this.columns = List.copyOf(columns);
        this.rows = rows.stream().map(List::copyOf).toList();
        for (List<Object> row : this.rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row has "
                                + row.size()
                                + " cells, but there are "
                                + columns.size()
                                + " columns");
            }
        }
    }

    /** Names of the columns. */
    public List<String> columns() {
        return columns;
    }

    /** Number of rows. */
    public int size() {
        return rows.size();
    }

    /**
     * The numbers of a column, NaN where there is none.
     *
     * @param name the column's name, or how it begins
     */
    public double[] column(String name) {
        int c = index(columns, name);
        return rows.stream()
                .mapToDouble(r -> r.get(c) instanceof Double d ? d : Double.NaN)
                .toArray();
    }

    /**
     * The rows in which a column has this value.
     *
     * @param name the column's name, or how it begins
     * @param value the value, exactly
     */
    public Table where(String name, double value) {
        int c = index(columns, name);
        return new Table(
                columns,
                rows.stream().filter(r -> r.get(c) instanceof Double d && d == value).toList());
    }

    /**
     * A picture of lines.
     *
     * @param y column of the vertical axis
     * @param x column of the horizontal axis
     * @param by column whose values each have a line of their own
     */
    public LinePicture picture(String y, String x, String by) {
        String byName = columns.get(index(columns, by));
        int comma = byName.lastIndexOf(", ");
        String unit = comma < 0 ? "" : " " + byName.substring(comma + 2);
        LinePicture picture =
                LinePicture.of(columns.get(index(columns, x)), columns.get(index(columns, y)));
        double[] keys = column(by);
        double[] distinct = java.util.Arrays.stream(keys).distinct().toArray();
        for (double key : distinct) {
            Table part = where(by, key);
            picture = picture.line(number(key) + unit, part.column(x), part.column(y));
        }
        return picture;
    }

    /** The table as CSV text (RFC 4180), numbers with all their digits. */
    public String csv() {
        StringBuilder text = new StringBuilder();
        line(text, columns);
        for (List<Object> row : rows) {
            line(
                    text,
                    row.stream()
                            .map(
                                    cell ->
                                            cell instanceof Double d
                                                    ? d.isNaN() ? "" : Double.toString(d)
                                                    : cell)
                            .toList());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, List<?> cells) {
        text.append(CSVFormat.RFC4180.format(cells.toArray())).append("\r\n");
    }

    /**
     * Writes the table as CSV in UTF-8.
     *
     * @param file where to; folders are made as needed
     * @return the file
     */
    public Path writeCsv(String file) {
        return write(file, csv());
    }

    static Path write(String file, String text) {
        Path path = Path.of(file).toAbsolutePath().normalize();
        try {
            Files.createDirectories(path.getParent());
            Files.writeString(path, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return path;
    }

    static int index(List<String> names, String name) {
        int exact = names.indexOf(name);
        if (exact >= 0) {
            return exact;
        }
        int found = -1;
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).startsWith(name)) {
                if (found >= 0) {
                    throw new IllegalArgumentException(
                            "more than one of " + names + " begins with \"" + name + "\"");
                }
                found = i;
            }
        }
        if (found < 0) {
            throw new IllegalArgumentException(
                    "none of " + names + " begins with \"" + name + "\"");
        }
        return found;
    }

    /** To five figures, without an exponent where one reads worse. */
    static String number(double v) {
        if (Double.isNaN(v)) {
            return "-";
        }
        if (v == Math.rint(v) && Math.abs(v) < 1e7) {
            return String.format(Locale.ROOT, "%.0f", v + 0.0);
        }
        double size = Math.abs(v);
        if (size >= 1e7 || size < 1e-4) {
            return String.format(Locale.ROOT, "%.4g", v);
        }
        int before = (int) Math.floor(Math.log10(size)) + 1;
        int decimals = Math.max(0, Math.min(FIGURES - before, FIGURES));
        return String.format(Locale.ROOT, "%." + decimals + "f", v);
    }

    /** Aligned columns; the numbers of one column have the same decimals. */
    @Override
    public String toString() {
        int n = columns.size();
        List<List<String>> text = new ArrayList<>();
        text.add(columns);
        for (List<Object> row : rows) {
            List<String> cells = new ArrayList<>();
            for (Object cell : row) {
                cells.add(cell instanceof Double d ? number(d) : cell.toString());
            }
            text.add(cells);
        }
        StringBuilder out = new StringBuilder();
        int[] width = new int[n];
        boolean[] words = new boolean[n];
        for (int c = 0; c < n; c++) {
            int decimals = 0;
            for (int r = 0; r < rows.size(); r++) {
                String cell = text.get(r + 1).get(c);
                int dot = cell.indexOf('.');
                if (rows.get(r).get(c) instanceof Double) {
                    decimals = Math.max(decimals, dot < 0 ? 0 : cell.length() - dot - 1);
                } else {
                    words[c] = true;
                }
            }
            int least = 0;
            for (int r = 0; r < rows.size(); r++) {
                if (rows.get(r).get(c) instanceof Double d && !d.isNaN()) {
                    least = Math.max(least, decimals(d, decimals));
                }
            }
            for (int r = 0; r < rows.size(); r++) {
                if (rows.get(r).get(c) instanceof Double d && !d.isNaN()) {
                    double size = Math.abs(d);
                    if (size < 1e7 && (size >= 1e-4 || size == 0)) {
                        text.get(r + 1)
                                .set(c, String.format(Locale.ROOT, "%." + least + "f", d + 0.0));
                    }
                }
            }
            for (List<String> row : text) {
                width[c] = Math.max(width[c], row.get(c).length());
            }
        }
        for (int r = 0; r < text.size(); r++) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < n; c++) {
                String cell = text.get(r).get(c);
                String gap = " ".repeat(width[c] - cell.length());
                line.append(c == 0 ? "" : "  ").append(words[c] ? cell + gap : gap + cell);
            }
            out.append(line.toString().stripTrailing()).append('\n');
            if (r == 0) {
                int total = 2 * (n - 1);
                for (int w : width) {
                    total += w;
                }
                out.append("-".repeat(total)).append('\n');
            }
        }
        return out.toString();
    }

    /** Decimals the largest number of a column leaves room for. */
    private static int decimals(double v, int most) {
        if (v == Math.rint(v)) {
            return 0;
        }
        int before = Math.max(1, (int) Math.floor(Math.log10(Math.abs(v))) + 1);
        return Math.max(0, Math.min(most, FIGURES - 1 - before));
    }
}
