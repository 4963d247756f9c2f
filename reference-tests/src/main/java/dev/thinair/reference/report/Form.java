package dev.thinair.reference.report;

import java.util.List;

/** A form in which the report is written; the content is said once, in {@link Report}. */
interface Form {

    /** Opens the document. */
    void title(String title, String subtitle);

    /** The one sentence that a hurried reader needs. */
    void verdict(String words, boolean good);

    /** Opens a section. */
    void section(String title);

    /** A paragraph. */
    void paragraph(String words);

    /**
     * A table.
     *
     * @param caption its name
     * @param head names of the columns
     * @param rows the cells
     * @param folded whether a screen may show it folded
     */
    void table(String caption, List<String> head, List<List<String>> rows, boolean folded);

    /**
     * A plot.
     *
     * @param plot what is drawn
     * @param svg the drawing, or empty where none could be made
     */
    void plot(Plot plot, String svg);

    /** The whole document. */
    String text();
}
