package dev.thinair.examples.report;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * Writes a document as one web page that needs nothing else: no script, no font, no picture from
 * elsewhere. It is well-formed XML too.
 */
public final class HtmlForm {
    private HtmlForm() {}

    public static String of(Document document) {
        StringBuilder out = new StringBuilder();
        out.append(
                "<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n");
        out.append("<meta charset=\"utf-8\"/>\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        out.append("<meta name=\"color-scheme\" content=\"light dark\"/>\n");
        out.append("<title>").append(escape(document.title())).append("</title>\n");
        out.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
        out.append("<header><h1>").append(escape(document.title())).append("</h1>\n");
        out.append("<p class=\"sub\">")
                .append(escape(document.subtitle()))
                .append("</p></header>\n");
        boolean open = false;
        for (Document.Block block : document.blocks()) {
            if (block instanceof Document.Section s) {
                out.append(open ? "</section>\n" : "").append("<section>\n<h2>");
                out.append(escape(s.title())).append("</h2>\n");
                open = true;
            } else if (block instanceof Document.Paragraph p) {
                out.append("<p>").append(escape(p.text())).append("</p>\n");
            } else if (block instanceof Document.Answer a) {
                out.append("<div class=\"answer\">");
                a.sentences().forEach(s -> out.append("<p>").append(escape(s)).append("</p>"));
                out.append("</div>\n");
            } else if (block instanceof Document.Points p) {
                list(out, "ul", p.items());
            } else if (block instanceof Document.Caution c) {
                out.append("<p class=\"caution\"><b>Caution.</b> ")
                        .append(escape(c.text()))
                        .append("</p>\n");
            } else if (block instanceof Document.Table t) {
                table(out, t);
            } else if (block instanceof Document.Found f) {
                found(out, f);
            } else if (block instanceof Document.Figure f) {
                out.append("<figure>\n").append(f.svg()).append("\n<figcaption>");
                out.append(escape(f.caption())).append("</figcaption>\n</figure>\n");
            } else if (block instanceof Document.Picture p) {
                // As a picture file within the page, so that its styles and names stay its own.
                out.append("<figure class=\"picture\">\n<img alt=\"").append(escape(p.caption()));
                out.append("\" src=\"data:image/svg+xml;base64,");
                out.append(
                        Base64.getEncoder()
                                .encodeToString(p.svg().getBytes(StandardCharsets.UTF_8)));
                out.append("\"/>\n<figcaption>").append(escape(p.caption()));
                out.append("</figcaption>\n</figure>\n");
            } else if (block instanceof Document.Worked w) {
                out.append("<div class=\"worked\">\n").append(w.working().toHtml());
                out.append("\n</div>\n");
            }
        }
        out.append(open ? "</section>\n" : "").append("</main>\n</body>\n</html>\n");
        return out.toString();
    }

    private static void found(StringBuilder out, Document.Found f) {
        out.append("<article class=\"found w-").append(escape(f.weight().replace(' ', '-')));
        out.append("\">\n<h3><span class=\"rank\">").append(f.rank()).append("</span> ");
        out.append(escape(f.title())).append(" <span class=\"weight\">");
        out.append(escape(f.weight())).append("</span></h3>\n<p>");
        out.append(escape(f.words())).append("</p>\n");
        list(out, "ul", f.evidence());
        if (!f.threshold().isEmpty()) {
            out.append("<p class=\"held\">held against: ")
                    .append(escape(f.threshold()))
                    .append("</p>\n");
        }
        if (!f.caution().isEmpty()) {
            out.append("<p class=\"caution\"><b>Caution.</b> ")
                    .append(escape(f.caution()))
                    .append("</p>\n");
        }
        out.append("</article>\n");
    }

    private static void table(StringBuilder out, Document.Table t) {
        out.append("<table>\n<caption>")
                .append(escape(t.caption()))
                .append("</caption>\n<thead><tr>");
        for (String h : t.head()) {
            out.append("<th scope=\"col\">").append(escape(h)).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (int r = 0; r < t.rows().size(); r++) {
            out.append(r == t.marked() ? "<tr class=\"marked\">" : "<tr>");
            for (int c = 0; c < t.head().size(); c++) {
                String cell = escape(t.rows().get(r).get(c));
                if (c == 0) {
                    out.append("<th scope=\"row\">").append(cell).append("</th>");
                } else {
                    // The head is repeated in the cell: on a narrow screen rows become cards.
                    out.append("<td data-head=\"").append(escape(t.head().get(c))).append("\">");
                    out.append("<span>").append(inBrackets(cell)).append("</span></td>");
                }
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n");
    }

    /** The other unit system in smaller letters. */
    private static String inBrackets(String cell) {
        int at = cell.endsWith(")") ? cell.lastIndexOf(" (") : -1;
        return at < 0
                ? cell
                : cell.substring(0, at) + " <small>" + cell.substring(at + 1) + "</small>";
    }

    private static void list(StringBuilder out, String tag, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        out.append('<').append(tag).append('>');
        items.forEach(i -> out.append("<li>").append(escape(i)).append("</li>"));
        out.append("</").append(tag).append(">\n");
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static final String STYLE =
            """
            :root{--ink:#1b2328;--soft:#55626b;--paper:#fbfaf7;--card:#ffffff;--line:#d5d9db;
              --cool:#0b5fa5;--warm:#b85000;--third:#4b4b8f;--bar:#7fb2dc;--wash:#eaf1f7;--alarm:#8f1d14}
            @media (prefers-color-scheme:dark){:root{--ink:#e6eaec;--soft:#a7b2ba;--paper:#14191c;
              --card:#1d2428;--line:#3a454c;--cool:#7cbcf2;--warm:#f5a45c;--third:#b9b3f5;--bar:#3f729c;
              --wash:#1c2b37;--alarm:#ff9d8f}}
            *{box-sizing:border-box}
            html{-webkit-text-size-adjust:100%}
            body{margin:0;background:var(--paper);color:var(--ink);
              font:16px/1.5 "Segoe UI",Roboto,"Noto Sans","DejaVu Sans",Helvetica,Arial,sans-serif}
            main{max-width:60rem;margin:0 auto;padding:1.2rem}
            h1{font-size:1.6rem;line-height:1.2;margin:.4rem 0}
            h2{font-size:1.2rem;margin:2.2rem 0 .6rem;padding-top:.5rem;border-top:3px solid var(--ink)}
            h3{font-size:1.02rem;margin:0 0 .3rem}
            .sub{color:var(--soft);margin:0 0 .6rem}
            p{margin:.5rem 0;max-width:46rem}
            .answer{background:var(--wash);border-left:6px solid var(--cool);padding:.6rem 1rem;margin:.8rem 0}
            .answer p{font-size:1.06rem}
            .caution{border:1px solid var(--alarm);border-left-width:6px;padding:.4rem .7rem}
            .caution b{color:var(--alarm)}
            .found{background:var(--card);border:1px solid var(--line);border-radius:.4rem;
              padding:.7rem .9rem;margin:.8rem 0;break-inside:avoid}
            .rank{display:inline-block;min-width:1.6rem;text-align:center;border:2px solid var(--ink);
              border-radius:1rem;margin-right:.2rem;font-variant-numeric:tabular-nums}
            .weight{font-size:.8rem;font-weight:600;letter-spacing:.04em;border:1px solid currentColor;
              border-radius:.2rem;padding:0 .35rem;margin-left:.3rem;white-space:nowrap}
            .w-serious .weight{color:var(--alarm)} .w-warning .weight{color:var(--warm)}
            .found ul{margin:.3rem 0;padding-left:1.2rem}
            .held{color:var(--soft);font-size:.92rem}
            table{border-collapse:collapse;margin:.9rem 0;font-size:.95rem;font-variant-numeric:tabular-nums;
              max-width:100%}
            caption{text-align:left;font-weight:600;padding-bottom:.3rem}
            th,td{padding:.3rem .7rem;border-bottom:1px solid var(--line);text-align:right;vertical-align:top}
            th:first-child{text-align:left}
            tbody th{font-weight:500}
            thead th{border-bottom:2px solid var(--ink);font-weight:600}
            tr.marked{background:var(--wash)}
            td small{display:block;color:var(--soft);white-space:nowrap;font-size:.85em}
            td span{white-space:nowrap}
            tbody th{max-width:22rem}
            figure{margin:1rem 0;max-width:36rem;break-inside:avoid}
            figure svg{width:100%;height:auto;display:block}
            figure.picture{max-width:48rem} figure.picture img{width:100%;height:auto;background:#fff}
            .worked{overflow-x:auto} .worked p{margin:.2rem 0} .worked li{margin:.7rem 0;break-inside:avoid}
            .worked math{math-style:normal;font-size:1.1em}
            .worked th,.worked td{text-align:left} .worked td:first-child{white-space:nowrap}
            figcaption{color:var(--soft);font-size:.92rem}
            svg text{fill:var(--ink);font-family:inherit}
            svg .soft{fill:var(--soft)} svg .grid{stroke:var(--line)} svg .axis{stroke:var(--soft)}
            svg .cool{stroke:var(--cool)} svg .warm{stroke:var(--warm)} svg .third{stroke:var(--third)}
            svg text.cool{fill:var(--cool);stroke:none} svg text.warm{fill:var(--warm);stroke:none}
            svg text.third{fill:var(--third);stroke:none}
            svg .bar{fill:var(--bar)} svg .bar2{fill:var(--warm)} svg .frame{fill:none;stroke:var(--soft)}
            svg .area{fill:var(--bar);opacity:.35}
            @media (max-width:640px){
              main{padding:.8rem}
              table,tbody,tr,caption{display:block} thead{display:none}
              tr{border:1px solid var(--line);border-radius:.3rem;margin:.5rem 0;padding:.3rem .5rem;
                background:var(--card)}
              tr.marked{border-color:var(--cool);background:var(--wash)}
              tbody th{display:block;border:0;padding:.1rem 0;font-weight:600}
              td{display:flex;justify-content:space-between;gap:1rem;border:0;padding:.1rem 0;text-align:right}
              td small{display:inline;white-space:normal} td span{white-space:normal}
              td::before{content:attr(data-head);color:var(--soft);text-align:left}
              .worked table tr:first-child{display:none}
              .worked td{display:block} .worked td:first-child,.worked td:nth-child(2){display:inline}
              .worked td:first-child::after{content:": "} .worked td::before{content:none}
            }
            @media print{:root{--ink:#000;--soft:#333;--paper:#fff;--card:#fff;--line:#999;--cool:#0b5fa5;
              --warm:#b85000;--third:#4b4b8f;--bar:#9cc3e2;--wash:#f2f2f2;--alarm:#8f1d14}
              body{font-size:11pt} main{max-width:none;padding:0} table{font-size:9pt}
              h2,h3,h2+p{break-after:avoid} table,tr{break-inside:avoid} tbody th{min-width:9rem}
              th,td{padding:.2rem .4rem} td small{white-space:normal}}
            """;
}
