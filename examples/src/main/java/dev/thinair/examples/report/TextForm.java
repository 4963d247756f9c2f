package dev.thinair.examples.report;

import java.util.ArrayList;
import java.util.List;

/** Writes a document as plain text that any terminal can show. */
public final class TextForm {
    private static final int WIDTH = 96;

    /** Widest table. */
    private static final int MOST = WIDTH + 8;

    /**
     * Widest first column and widest other column of a table that does not fit on one line a row.
     */
    private static final int FIRST = 38;

    private static final int COLUMN = 15;

    /** Widest column where names of rows stand below. */
    private static final int LEAST_COLUMN = 12;

    private TextForm() {}

    public static String of(Document document) {
        StringBuilder out = new StringBuilder();
        out.append(document.title()).append('\n');
        out.append("=".repeat(Math.min(WIDTH, document.title().length()))).append('\n');
        wrap(out, document.subtitle(), "", "");
        for (Document.Block block : document.blocks()) {
            if (block instanceof Document.Section s) {
                out.append('\n').append(s.title()).append('\n');
                out.append("-".repeat(s.title().length())).append('\n');
            } else if (block instanceof Document.Paragraph p) {
                wrap(out, p.text(), "", "");
            } else if (block instanceof Document.Answer a) {
                out.append('\n');
                a.sentences().forEach(s -> wrap(out, s, "> ", "> "));
            } else if (block instanceof Document.Points p) {
                p.items().forEach(i -> wrap(out, i, " * ", "   "));
            } else if (block instanceof Document.Caution c) {
                wrap(out, c.text(), " ! ", "   ");
            } else if (block instanceof Document.Table t) {
                table(out, t);
            } else if (block instanceof Document.Found f) {
                found(out, f);
            } else if (block instanceof Document.Figure f) {
                out.append('\n').append(f.caption()).append('\n');
                f.rows().forEach(r -> out.append("  ").append(r).append('\n'));
            } else if (block instanceof Document.Picture p) {
                wrap(out, "Drawing: " + p.caption(), "\n", "  ");
            } else if (block instanceof Document.Worked w) {
                w.working().toText().lines().forEach(l -> out.append("  ").append(l).append('\n'));
            }
        }
        return plain(out.toString());
    }

    private static void found(StringBuilder out, Document.Found f) {
        out.append('\n');
        wrap(out, f.rank() + ". " + f.title() + "  [" + f.weight() + "]", "", "   ");
        wrap(out, f.words(), "   ", "   ");
        f.evidence().forEach(e -> wrap(out, e, "   - ", "     "));
        if (!f.threshold().isEmpty()) {
            wrap(out, "held against: " + f.threshold(), "   - ", "     ");
        }
        if (!f.caution().isEmpty()) {
            wrap(out, f.caution(), "   ! ", "     ");
        }
    }

    private static void table(StringBuilder out, Document.Table t) {
        wrap(out.append('\n'), t.caption(), "", "");
        List<List<String>> all = new ArrayList<>();
        all.add(t.head());
        all.addAll(t.rows());
        boolean narrow = width(all) > MOST;
        int widest = t.head().size() < 3 ? WIDTH - FIRST - 2 : COLUMN;
        List<List<List<String>>> cells = split(all, widest, narrow);
        if (total(widths(cells)) <= MOST) {
            rows(out, cells, t.marked());
            return;
        }
        // Too wide still: letters stand for the rows' names, which follow.
        List<List<String>> lettered = new ArrayList<>();
        for (int r = 0; r < all.size(); r++) {
            List<String> row = new ArrayList<>(all.get(r));
            row.set(0, r == 0 ? "" : letter(r));
            lettered.add(row);
        }
        rows(out, split(lettered, LEAST_COLUMN, true), t.marked());
        for (int r = 1; r < all.size(); r++) {
            String sign = r - 1 == t.marked() ? ">" : " ";
            wrap(out, all.get(r).get(0), sign + " " + letter(r) + "  ", "     ");
        }
    }

    /** The row's letter, from 1: a to z, then aa, bb and so on. */
    private static String letter(int row) {
        return Character.toString('a' + (row - 1) % 26).repeat(1 + (row - 1) / 26);
    }

    private static List<List<List<String>>> split(
            List<List<String>> all, int widest, boolean narrow) {
        List<List<List<String>>> cells = new ArrayList<>();
        for (List<String> row : all) {
            List<List<String>> split = new ArrayList<>();
            for (int c = 0; c < row.size(); c++) {
                split.add(lines(plain(row.get(c)), c == 0 ? FIRST : widest, narrow));
            }
            cells.add(split);
        }
        return cells;
    }

    private static int[] widths(List<List<List<String>>> cells) {
        int[] width = new int[cells.get(0).size()];
        for (List<List<String>> row : cells) {
            for (int c = 0; c < width.length; c++) {
                for (String line : row.get(c)) {
                    width[c] = Math.max(width[c], line.length());
                }
            }
        }
        return width;
    }

    private static int total(int[] width) {
        int total = 2 * (width.length - 1);
        for (int w : width) {
            total += w;
        }
        return total;
    }

    private static void rows(StringBuilder out, List<List<List<String>>> cells, int marked) {
        int[] width = widths(cells);
        int columns = width.length;
        for (int r = 0; r < cells.size(); r++) {
            int height = 1;
            for (List<String> cell : cells.get(r)) {
                height = Math.max(height, cell.size());
            }
            for (int l = 0; l < height; l++) {
                StringBuilder line =
                        new StringBuilder(r > 0 && r - 1 == marked && l == 0 ? "> " : "  ");
                for (int c = 0; c < columns; c++) {
                    List<String> cell = cells.get(r).get(c);
                    String part = l < cell.size() ? cell.get(l) : "";
                    String gap = " ".repeat(width[c] - part.length());
                    line.append(c == 0 ? part + gap : gap + part);
                    line.append(c < columns - 1 ? "  " : "");
                }
                out.append(line.toString().stripTrailing()).append('\n');
            }
            if (r == 0) {
                out.append("  ").append("-".repeat(total(width))).append('\n');
            }
        }
    }

    private static int width(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int total = 2 * (columns - 1);
        for (int c = 0; c < columns; c++) {
            int w = 0;
            for (List<String> row : rows) {
                w = Math.max(w, plain(row.get(c)).length());
            }
            total += w;
        }
        return total;
    }

    /**
     * A cell as it is, or on several lines: the bracketed other unit system on a line of its own.
     */
    private static List<String> lines(String cell, int widest, boolean narrow) {
        if (!narrow) {
            return List.of(cell);
        }
        List<String> lines = new ArrayList<>();
        int bracket = cell.length() > widest && cell.endsWith(")") ? cell.lastIndexOf(" (") : -1;
        for (String part :
                bracket > 0
                        ? new String[] {cell.substring(0, bracket), cell.substring(bracket + 1)}
                        : new String[] {cell}) {
            StringBuilder line = new StringBuilder();
            for (String word : part.strip().split(" ")) {
                if (line.length() > 0 && line.length() + 1 + word.length() > widest) {
                    lines.add(line.toString());
                    line = new StringBuilder();
                }
                line.append(line.length() == 0 ? "" : " ").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static void wrap(StringBuilder out, String text, String first, String next) {
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String word : text.strip().split("\\s+")) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(next);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    /** Signs outside ASCII become letters, so that the text survives any terminal's encoding. */
    static String plain(String text) {
        return text.replace("\u00a0", " ")
                .replace("°", "")
                .replace("²", "2")
                .replace("³", "3")
                .replace("\u2013", "-")
                .replace("\u2212", "-")
                .replace("\u00d7", "x")
                .replace("\u2019", "'")
                .replace("\u201c", "\"")
                .replace("\u201d", "\"");
    }
}
