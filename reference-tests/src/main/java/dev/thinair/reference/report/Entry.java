package dev.thinair.reference.report;

import dev.thinair.reference.CaseOutcome;

/**
 * One case in the report.
 *
 * @param module the case file it stands in
 * @param publication what it rests on
 * @param part edition and chapter, or empty
 * @param outcome what became of it
 * @param dispute why its expected value is held to be wrong, or empty
 */
public record Entry(
        String module, Publication publication, String part, CaseOutcome outcome, String dispute) {

    /** What the report says of a case. */
    public enum Standing {
        /** Inside its tolerance. */
        INSIDE,
        /** Outside its tolerance, or no value where one was expected. */
        OUTSIDE,
        /** Outside its tolerance, with evidence that the expected value is wrong. */
        DISPUTED,
        /** Not evaluated. */
        UNKNOWN
    }

    /** How the case stands. */
    public Standing standing() {
        if (outcome.verdict() == CaseOutcome.Verdict.UNKNOWN) {
            return Standing.UNKNOWN;
        }
        if (outcome.verdict() == CaseOutcome.Verdict.OK) {
            return Standing.INSIDE;
        }
        return dispute.isEmpty() ? Standing.OUTSIDE : Standing.DISPUTED;
    }

    /** Deviation over tolerance, at least 0; NaN for texts, exact cases and cases without value. */
    public double share() {
        return outcome.allowed() > 0
                ? Math.abs(outcome.deviation()) / outcome.allowed()
                : Double.NaN;
    }

    /** Whether the case admits no difference. */
    public boolean exact() {
        return outcome.allowed() == 0;
    }
}
