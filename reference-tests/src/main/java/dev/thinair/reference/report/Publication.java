package dev.thinair.reference.report;

import java.util.Locale;

/**
 * The publication a case rests on, in one spelling.
 *
 * @param kind what sort of publication it is
 * @param name its name
 */
public record Publication(Kind kind, String name) {

    /** What sort of thing a case rests on. */
    public enum Kind {
        /** A standard or a release of a standards body. */
        STANDARD,
        /** A handbook or guide of a professional society. */
        HANDBOOK,
        /** A report or manual of a public agency. */
        AGENCY,
        /** A paper in a journal or at a conference. */
        PAPER,
        /** A textbook, thesis or lecture. */
        BOOK,
        /** A manual or table of an appliance maker. */
        MAKER,
        /** A trade magazine, catalogue or web page. */
        TRADE,
        /** Common practice, without a publication. */
        PRACTICE,
        /** A derivation or arithmetic that stands in the row itself. */
        DERIVATION;

        /** Whether a reader can look it up somewhere else than here. */
        public boolean published() {
            return this != PRACTICE && this != DERIVATION;
        }

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
