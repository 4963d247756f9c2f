package dev.thinair.reference.report;

import java.util.List;

/**
 * The report as one page that needs nothing else: no script, no font, no picture from elsewhere. It
 * is well-formed XML too.
 */
final class HtmlForm implements Form {

    private final StringBuilder out = new StringBuilder();
    private boolean open;

    @Override
    public void title(String title, String subtitle) {
        out.append("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n")
                .append("<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width,")
                .append(" initial-scale=1\"/>\n")
                .append("<meta name=\"color-scheme\" content=\"light dark\"/>\n<title>")
                .append(Markup.escape(title))
                .append("</title>\n<style>\n")
                .append(COLOURS)
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<main>\n<header>\n<h1>")
                .append(Markup.escape(title))
                .append("</h1>\n<p>")
                .append(Markup.escape(subtitle))
                .append("</p>\n</header>\n");
    }

    @Override
    public void verdict(String words, boolean good) {
        out.append("<p class=\"verdict ")
                .append(good ? "good" : "bad")
                .append("\">")
                .append(Markup.escape(words))
                .append("</p>\n");
    }

    @Override
    public void section(String title) {
        out.append(open ? "</section>\n" : "")
                .append("<section>\n<h2>")
                .append(Markup.escape(title))
                .append("</h2>\n");
        open = true;
    }

    @Override
    public void paragraph(String words) {
        out.append("<p>").append(Markup.escape(words)).append("</p>\n");
    }

    @Override
    public void table(String caption, List<String> head, List<List<String>> rows, boolean folded) {
        String escaped = Markup.escape(caption);
        if (folded) {
            out.append("<details><summary>").append(escaped).append("</summary>\n");
        }
        // A region that can be scrolled must be reachable by keyboard.
        out.append("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"")
                .append(escaped)
                .append("\">\n<table>\n");
        if (!folded && !caption.isEmpty()) {
            out.append("<caption>").append(escaped).append("</caption>\n");
        }
        out.append("<thead><tr>");
        head.forEach(
                h -> out.append("<th scope=\"col\">").append(Markup.escape(h)).append("</th>"));
        out.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows) {
            out.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                String cell = Markup.escape(row.get(i));
                boolean number = row.get(i).matches("-?[\\d,.]+([eE][-+]?\\d+)?");
                boolean id = row.get(i).matches("[A-Z]+-[-A-Z0-9]+");
                out.append(
                        i == 0
                                ? "<th scope=\"row\">" + cell + "</th>"
                                : (number ? "<td class=\"n\">" : id ? "<td class=\"id\">" : "<td>")
                                        + cell
                                        + "</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n</div>\n").append(folded ? "</details>\n" : "");
    }

    @Override
    public void plot(Plot plot, String svg) {
        out.append("<figure>\n<h3>")
                .append(Markup.escape(plot.title()))
                .append("</h3>\n")
                .append(svg)
                .append("\n<figcaption>")
                .append(Markup.escape(plot.caption()))
                .append("</figcaption>\n</figure>\n");
    }

    @Override
    public String text() {
        return out + (open ? "</section>\n" : "") + "</main>\n</body>\n</html>\n";
    }

    /** A drawing with the page's colours, to stand as a file of its own. */
    static String alone(String svg) {
        int body = svg.indexOf('>') + 1;
        return svg.substring(0, body)
                + "\n<style>\n"
                + COLOURS
                + "svg{font-family:sans-serif;background:var(--paper)}\n</style>"
                + svg.substring(body)
                + "\n";
    }

    // Series colours: M. Okabe and K. Ito, "Color Universal Design" (2002), darkened or lightened
    // where the ground needs it.
    private static final String COLOURS =
            """
            :root{--ink:#22201c;--soft:#5f5a52;--line:#d9d4ca;--paper:#fffdf8;--wash:#f4efe4;
              --good:#0a6b4f;--bad:#a1260d;--one:#005f99;--two:#b84a00;--three:#00755a;--four:#8a3b78}
            @media (prefers-color-scheme:dark){:root{--ink:#ece8df;--soft:#b3aca0;--line:#45413a;
              --paper:#191815;--wash:#262420;--good:#5fd3ac;--bad:#ff9c80;--one:#6cc0f5;--two:#f0a13a;
              --three:#4fd1a5;--four:#e3a3d3}}
            @media print{:root{--ink:#000;--soft:#333;--line:#aaa;--paper:#fff;--wash:#f2f2f2;
              --good:#0a6b4f;--bad:#a1260d;--one:#005f99;--two:#b84a00;--three:#00755a;--four:#8a3b78}}
            """;

    private static final String STYLE =
            """
            *{box-sizing:border-box}
            html{-webkit-text-size-adjust:100%}
            body{margin:0;background:var(--paper);color:var(--ink);
              font:16px/1.5 Charter,"Bitstream Charter","Iowan Old Style",Cambria,Georgia,serif}
            main{max-width:68rem;margin:0 auto;padding:1.5rem 1.2rem 4rem}
            header{border-bottom:1px solid var(--ink)}
            h1{font-size:2rem;line-height:1.15;margin:.3rem 0}
            h2{font-size:1.35rem;margin:2.6rem 0 .5rem}
            h3{font-size:1rem;margin:0 0 .4rem}
            p{max-width:44rem;margin:.6rem 0}
            .verdict{font-size:1.2rem;padding:.8rem 1rem;background:var(--wash);border:2px solid currentColor}
            .good{color:var(--good)} .bad{color:var(--bad)}
            .wide{overflow-x:auto;margin:1rem 0}
            table{border-collapse:collapse;font:14px/1.4 "Helvetica Neue",Arial,"Liberation Sans",sans-serif}
            caption{text-align:left;font-weight:700;padding:.2rem 0}
            th,td{text-align:left;vertical-align:top;padding:.25rem .8rem .25rem 0;border-bottom:1px solid var(--line)}
            thead th{border-bottom:1px solid var(--ink);white-space:nowrap}
            tbody th{font-weight:600;max-width:24rem}
            td{max-width:26rem;overflow-wrap:break-word}
            td.n{text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums}
            td.id{white-space:nowrap}
            details{margin:.5rem 0;border:1px solid var(--line);padding:.4rem .8rem}
            summary{cursor:pointer;font-weight:600}
            figure{margin:1.4rem 0;break-inside:avoid}
            figure svg{width:100%;max-width:40rem;height:auto;display:block}
            figcaption{color:var(--soft);max-width:44rem;font-size:.95rem}
            :focus-visible{outline:3px solid var(--one);outline-offset:2px}
            @media (max-width:640px){main{padding:.8rem} h1{font-size:1.6rem}}
            @media print{body{font-size:10pt} main{max-width:none;padding:0} .wide{overflow:visible}
              table{font-size:8.5pt} h2,h3,summary{break-after:avoid} tr{break-inside:avoid}}
            """;
}
