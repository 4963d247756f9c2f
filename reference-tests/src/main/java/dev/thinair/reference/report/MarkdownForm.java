package dev.thinair.reference.report;

import java.util.List;

/** The report as Markdown; the drawings stand beside it as files. */
final class MarkdownForm implements Form {

    private final StringBuilder out = new StringBuilder();

    @Override
    public void title(String title, String subtitle) {
        out.append("# ").append(plain(title)).append("\n\n").append(plain(subtitle)).append("\n\n");
    }

    @Override
    public void verdict(String words, boolean good) {
        out.append("**").append(plain(words)).append("**\n\n");
    }

    @Override
    public void section(String title) {
        out.append("## ").append(plain(title)).append("\n\n");
    }

    @Override
    public void paragraph(String words) {
        out.append(plain(words)).append("\n\n");
    }

    @Override
    public void table(String caption, List<String> head, List<List<String>> rows, boolean folded) {
        if (!caption.isEmpty()) {
            out.append("### ").append(plain(caption)).append("\n\n");
        }
        row(head);
        row(head.stream().map(h -> "---").toList());
        rows.forEach(r -> row(r.stream().map(MarkdownForm::plain).toList()));
        out.append('\n');
    }

    private void row(List<String> cells) {
        out.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    @Override
    public void plot(Plot plot, String svg) {
        out.append("### ").append(plain(plot.title())).append("\n\n");
        if (!svg.isEmpty()) {
            out.append("![").append(plain(plot.title())).append("](").append(plot.key());
            out.append(".svg)\n\n");
        }
        out.append(plain(plot.caption())).append("\n\n");
    }

    @Override
    public String text() {
        return out.toString();
    }

    /** Text that Markdown must not read as markup. */
    static String plain(String text) {
        return text.replace("\\", "\\\\")
                .replace("|", "\\|")
                .replace("*", "\\*")
                .replace("_", "\\_")
                .replace("<", "&lt;")
                .replaceAll("\\s+", " ");
    }
}
