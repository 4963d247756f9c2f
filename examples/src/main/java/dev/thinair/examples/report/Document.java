package dev.thinair.examples.report;

import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * A review before it is laid out: text and page are written from the same blocks, so that they
 * cannot disagree.
 *
 * @param title heading of the whole
 * @param subtitle one line under it
 * @param blocks what follows, in order
 */
public record Document(String title, String subtitle, List<Block> blocks) {

    public Document {
        blocks = List.copyOf(blocks);
    }

    /** A piece of the document. */
    public sealed interface Block {}

    /** Starts a section. */
    public record Section(String title) implements Block {}

    /** Running text. */
    public record Paragraph(String text) implements Block {}

    /** The answer in one or a few sentences, set apart. */
    public record Answer(List<String> sentences) implements Block {
        public Answer {
            sentences = List.copyOf(sentences);
        }
    }

    /** Points of equal weight. */
    public record Points(List<String> items) implements Block {
        public Points {
            items = List.copyOf(items);
        }
    }

    /** A warning about harm. */
    public record Caution(String text) implements Block {}

    /**
     * Names and values, one pair a row.
     *
     * @param caption what the table shows
     * @param head column heads; the first names the rows
     * @param rows cells, as many a row as there are heads
     * @param marked index of a row to be set off, or -1
     */
    public record Table(String caption, List<String> head, List<List<String>> rows, int marked)
            implements Block {
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != head.size()) {
                    throw new IllegalArgumentException(
                            "table \""
                                    + caption
                                    + "\": a row has "
                                    + row.size()
                                    + " cells, but "
                                    + head.size()
                                    + " are needed");
                }
            }
        }
    }

    /**
     * One finding.
     *
     * @param rank place in the order of importance, from 1
     * @param weight how serious, in a word
     * @param title what was found
     * @param words the same explained
     * @param evidence numbers with their units, each "name: value"
     * @param threshold what the number is held against, and who says so
     * @param caution danger in mending it, or an empty text
     */
    public record Found(
            int rank,
            String weight,
            String title,
            String words,
            List<String> evidence,
            String threshold,
            String caution)
            implements Block {
        public Found {
            evidence = List.copyOf(evidence);
        }
    }

    /**
     * A drawing; the text form prints its own account of the same numbers.
     *
     * @param caption what is drawn
     * @param svg drawing as SVG text, self-contained
     * @param rows the numbers, line by line, for the text form
     */
    public record Figure(String caption, String svg, List<String> rows) implements Block {
        public Figure {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A drawing that stands for itself: shown on the page, named in the text.
     *
     * @param caption what is drawn
     * @param svg drawing as SVG text, self-contained
     */
    public record Picture(String caption, String svg) implements Block {}

    /** How a number comes about, step by step. */
    public record Worked(Working working) implements Block {}

    /** Collects blocks. */
    public static final class Builder {
        private final List<Block> blocks = new ArrayList<>();

        public Builder section(String title) {
            blocks.add(new Section(title));
            return this;
        }

        public Builder text(String text) {
            blocks.add(new Paragraph(text));
            return this;
        }

        public Builder add(Block block) {
            blocks.add(block);
            return this;
        }

        public Builder table(String caption, List<String> head, List<List<String>> rows) {
            blocks.add(new Table(caption, head, rows, -1));
            return this;
        }

        public Document build(String title, String subtitle) {
            return new Document(title, subtitle, blocks);
        }
    }
}
