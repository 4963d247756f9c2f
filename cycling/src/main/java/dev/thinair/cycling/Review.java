package dev.thinair.cycling;

import java.util.List;

/** The verdict on an installed system: what is wrong, how sure that is, and what would help. */
public final class Review {

    private final InstalledSystem system;
    private final List<Finding> findings;
    private final List<Remedy> remedies;
    private final Comparison comparison;

    Review(
            InstalledSystem system,
            List<Finding> findings,
            List<Remedy> remedies,
            Comparison comparison) {
        this.system = system;
        this.findings = List.copyOf(findings);
        this.remedies = List.copyOf(remedies);
        this.comparison = comparison;
    }

    /**
     * The system as found.
     *
     * @return the system
     */
    public InstalledSystem system() {
        return system;
    }

    /**
     * What was found, the gravest first.
     *
     * @return findings, empty for a healthy system
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * Whether nothing was found.
     *
     * @return true if there is no finding
     */
    public boolean healthy() {
        return findings.isEmpty();
    }

    /**
     * What could be done, free things first.
     *
     * @return remedies, empty for a healthy system
     */
    public List<Remedy> remedies() {
        return remedies;
    }

    /**
     * What each remedy does, side by side.
     *
     * @return the system as found and every remedy on the same day
     */
    public Comparison comparison() {
        return comparison;
    }
}
