package dev.thinair.cycling;

/** How sure a finding is, least first. */
public enum Confidence {
    /** Rests on assumed inputs or on a rule without a source. */
    LOW,
    /** Rests on a model with ordinary inputs. */
    MEDIUM,
    /** Rests on a balance that leaves little room. */
    HIGH
}
