package dev.thinair.cycling;

/** How much a finding matters, least first. */
public enum Severity {
    /** Worth knowing; nothing needs doing. */
    NOTE,
    /** Better done, when somebody is at it. */
    ADVICE,
    /** Costs comfort or money now. */
    WARNING,
    /** The system cannot do its work, or harms itself. */
    SERIOUS
}
