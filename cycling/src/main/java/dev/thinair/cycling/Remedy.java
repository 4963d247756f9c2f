package dev.thinair.cycling;

import java.util.Optional;

/**
 * A change from system to system. What it does is found by running the changed system, never
 * guessed. Implementations are immutable and deterministic.
 */
public interface Remedy {

    /** Sorts of change, in the order in which they should be thought of. */
    enum Kind {
        /** Nothing is changed. */
        NONE,
        /** Costs nothing or little: opening, cleaning, changing a filter. */
        FREE,
        /** Another setpoint or fan setting: free, but the customer gives something up. */
        SETTING,
        /** Work on ducts. */
        DUCTS,
        /** Other equipment. */
        EQUIPMENT
    }

    /**
     * What to do, in plain words.
     *
     * @return one line
     */
    String title();

    /**
     * What sort of change it is.
     *
     * @return the kind
     */
    Kind kind();

    /**
     * The changed system.
     *
     * @param system the system as it is
     * @return a changed copy
     * @throws IllegalArgumentException if the change cannot be made to this system
     */
    InstalledSystem apply(InstalledSystem system);

    /**
     * What to beware of while doing it.
     *
     * @return a caution, if the work can hurt someone
     */
    Optional<String> caution();
}
