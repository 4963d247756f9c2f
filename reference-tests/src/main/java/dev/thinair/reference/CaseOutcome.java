package dev.thinair.reference;

import java.util.Locale;

/**
 * A case and what became of it.
 *
 * @param checked the case
 * @param verdict inside, outside, or not evaluated
 * @param computed what the library computed, in the unit of the case; empty when unknown
 * @param deviation computed minus expected, in the unit of the case; NaN for texts and unknowns
 * @param allowed the tolerance as a number; 0 for exact
 * @param remark why a case is unknown, or the error met; empty otherwise
 */
public record CaseOutcome(
        CheckCase checked,
        Verdict verdict,
        String computed,
        double deviation,
        double allowed,
        String remark) {

    /** What a case can come to. */
    public enum Verdict {
        /** Inside the tolerance. */
        OK,
        /** Outside the tolerance, or an error where a value was expected. */
        OFF,
        /** The quantity or its inputs are not known to the evaluator. */
        UNKNOWN
    }

    /** One line, as the command prints it. */
    public String line() {
        return line(verdict.name().toLowerCase(Locale.ROOT));
    }

    /** The line with another word for the verdict. */
    String line(String word) {
        if (verdict == Verdict.UNKNOWN) {
            return word + " " + checked.id() + " | " + checked.quantity() + " | " + remark;
        }
        return word
                + " "
                + checked.id()
                + " | "
                + checked.quantity()
                + " | expected "
                + checked.expected()
                + " "
                + checked.unit()
                + " | computed "
                + computed
                + (Double.isNaN(deviation) ? "" : " | deviation " + deviation)
                + " | tolerance "
                + checked.tolerance()
                + (remark.isEmpty() ? "" : " | " + remark);
    }
}
