package dev.thinair.examples.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One thing that may happen to a job file on somebody's desk.
 *
 * @param kind what happens
 * @param line at which line, counted modulo the number of lines
 * @param choice which of the possible replacements, counted modulo their number
 */
public record JobMutation(Kind kind, int line, int choice) {

    /** What may happen. */
    public enum Kind {
        /** A number becomes a somewhat larger or smaller one: the file may well stay good. */
        NUDGE,
        /** A number becomes one that nobody expects. */
        NUMBER,
        /** A unit becomes another. */
        UNIT,
        /** A value becomes something else altogether. */
        VALUE,
        /** A letter of the line is changed. */
        LETTER,
        /** The line is missing. */
        DELETE,
        /** The line stands twice. */
        DOUBLE,
        /** The line changes places with the next. */
        SWAP,
        /** The line is indented otherwise. */
        INDENT,
        /** A line of something else is put before it. */
        INSERT,
        /** The file ends here. */
        CUT
    }

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)?");
    private static final Pattern UNIT = Pattern.compile("(?<=\\d )[A-Za-z][\\w/*()%.-]*");

    private static final String[] NUMBERS = {
        "0",
        "-0",
        "-1",
        "1",
        "1e308",
        "-1e308",
        "1e400",
        "4.9e-324",
        "1e-30",
        "NaN",
        ".nan",
        "Infinity",
        "-.inf",
        "0x10",
        "1_000",
        "1,5",
        "\u0663\u0664",
        "\u00bd",
        "",
        "+",
        "--5",
        "99999999999999999999",
        "0.1.2",
        "1e",
        "7 7",
        "1e5",
        "273.15",
        "1000000"
    };
    private static final double[] FACTORS = {0.5, 0.9, 0.99, 1.01, 1.1, 1.5, 2, 3};
    private static final String[] UNITS = {
        "ft",
        "m",
        "in",
        "degF",
        "degC",
        "K",
        "Pa",
        "in. w.g.",
        "cfm",
        "L/s",
        "kg",
        "%",
        "h",
        "ton",
        "W/(m2*K)",
        "degF_diff",
        "parsec",
        "\u00b5m",
        ""
    };
    private static final String[] VALUES = {
        "~", "[]", "{}", "[1, 2, 3]", "{a: b}", "\"\"", "'", "\"", "*nobody", "&a x",
                "!!java.lang.X y",
        "|", ">", "?", "on", "north", "all", "\u202eabc", "\u0000", "\ud83c\udf21", "%x", "- - -",
        "{{{{{{", "5 ft # remark", "0 ft", "5ft", "five feet", "1/2 in"
    };
    private static final String[] LINES = {
        "junk",
        "\t",
        "---",
        "...",
        "# remark",
        "? x",
        "- y",
        "%YAML 9.9",
        "key: value",
        ": :",
        "  elevation: 1 ft",
        "\u00e9t\u00e9: 30 degC",
        "\uFFFF",
        "x: &x [*x, *x]",
        "<<: {a: 1}",
        "title: again",
        "  - {name: x, width: 1 ft}"
    };

    /** The file after this has happened to it. */
    public String applyTo(String text) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = Math.floorMod(line, lines.size());
        String old = lines.get(at);
        switch (kind) {
            case NUDGE -> lines.set(at, nudged(old));
            case NUMBER -> lines.set(at, replaced(old, NUMBER, pick(NUMBERS)));
            case UNIT -> lines.set(at, replaced(old, UNIT, pick(UNITS)));
            case VALUE -> {
                int colon = old.indexOf(": ");
                lines.set(at, colon < 0 ? old : old.substring(0, colon + 2) + pick(VALUES));
            }
            case LETTER -> {
                if (!old.isEmpty()) {
                    int where = Math.floorMod(choice, old.length());
                    char letter = "xE:-{}#\u00e4 9\"".charAt(Math.floorMod(choice / 7, 11));
                    lines.set(at, old.substring(0, where) + letter + old.substring(where + 1));
                }
            }
            case DELETE -> lines.remove(at);
            case DOUBLE -> lines.add(at, old);
            case SWAP -> {
                int next = (at + 1) % lines.size();
                lines.set(at, lines.get(next));
                lines.set(next, old);
            }
            case INDENT ->
                    lines.set(at, " ".repeat(Math.floorMod(choice, 12)) + old.stripLeading());
            case INSERT -> lines.add(at, pick(LINES));
            case CUT -> lines = lines.subList(0, at);
        }
        return String.join("\n", lines);
    }

    private String pick(String[] from) {
        return from[Math.floorMod(choice, from.length)];
    }

    private String nudged(String old) {
        Matcher number = NUMBER.matcher(old);
        List<int[]> found = new ArrayList<>();
        while (number.find()) {
            found.add(new int[] {number.start(), number.end()});
        }
        if (found.isEmpty()) {
            return old;
        }
        int[] one = found.get(Math.floorMod(choice / FACTORS.length, found.size()));
        double v =
                Double.parseDouble(old.substring(one[0], one[1]))
                        * FACTORS[Math.floorMod(choice, FACTORS.length)];
        String fresh =
                v == Math.rint(v)
                        ? String.format(Locale.ROOT, "%.0f", v)
                        : String.format(Locale.ROOT, "%.4f", v);
        return old.substring(0, one[0]) + fresh + old.substring(one[1]);
    }

    private String replaced(String old, Pattern what, String fresh) {
        Matcher matcher = what.matcher(old);
        List<int[]> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(new int[] {matcher.start(), matcher.end()});
        }
        if (found.isEmpty()) {
            return old;
        }
        int[] one = found.get(Math.floorMod(choice / 31, found.size()));
        return old.substring(0, one[0]) + fresh + old.substring(one[1]);
    }

    /** The file after several things have happened to it. */
    public static String applyAll(List<JobMutation> mutations, String text) {
        String spoiled = text;
        for (JobMutation mutation : mutations) {
            spoiled = mutation.applyTo(spoiled);
        }
        return spoiled;
    }

    /** Reads what {@link #toString} writes. */
    public static JobMutation parse(String text) {
        String[] parts = text.split("/");
        return new JobMutation(
                Kind.valueOf(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    }

    @Override
    public String toString() {
        return kind + "/" + line + "/" + choice;
    }
}
