package dev.thinair.reference.report;

/** Escaping for text that goes between tags. */
final class Markup {
    private Markup() {}

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
