package dev.thinair.examples.report;

import java.util.ArrayList;
import java.util.List;

/** Writes a document as plain text that any terminal can show. */
public final class TextForm {
    private static final int WIDTH = 96;

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
        int columns = t.head().size();
        int[] width = new int[columns];
        List<List<String>> all = new ArrayList<>();
        all.add(t.head());
        all.addAll(t.rows());
        for (List<String> row : all) {
            for (int c = 0; c < columns; c++) {
                width[c] = Math.max(width[c], plain(row.get(c)).length());
            }
        }
        int total = 2 * (columns - 1);
        for (int w : width) {
            total += w;
        }
        out.append('\n').append(t.caption()).append('\n');
        if (total > WIDTH + 24) {
            // Too wide for a terminal: one small block a row instead.
            for (List<String> row : t.rows()) {
                wrap(out, row.get(0), "  ", "    ");
                for (int c = 1; c < columns; c++) {
                    wrap(out, t.head().get(c) + ": " + row.get(c), "      ", "        ");
                }
            }
            return;
        }
        for (int r = 0; r < all.size(); r++) {
            StringBuilder line = new StringBuilder("  ");
            for (int c = 0; c < columns; c++) {
                String cell = plain(all.get(r).get(c));
                String gap = " ".repeat(width[c] - cell.length());
                line.append(c == 0 ? cell + gap : gap + cell);
                line.append(c < columns - 1 ? "  " : "");
            }
            out.append(line.toString().stripTrailing()).append('\n');
            if (r == 0) {
                out.append("  ").append("-".repeat(total)).append('\n');
            }
        }
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
        return text.replace("°", " deg")
                .replace("²", "2")
                .replace("³", "3")
                .replace("\u2013", "-")
                .replace("\u2212", "-")
                .replace("\u00d7", "x")
                .replace("\u2019", "'");
    }
}
