package dev.thinair.ducts;

/**
 * The blower would have to work outside its table on these ducts, so that no airflow can be stated.
 * Unlike other {@link IllegalStateException}s of a solution it says something about the system and
 * not about the program.
 */
public final class OutsideBlowerTableException extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    /**
     * States which end of the table was passed.
     *
     * @param message the end, with the operating point
     */
    public OutsideBlowerTableException(String message) {
        super(message);
    }
}
