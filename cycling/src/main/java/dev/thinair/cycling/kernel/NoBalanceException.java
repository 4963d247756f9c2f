package dev.thinair.cycling.kernel;

/**
 * The unit has no steady state at the conditions asked for: coil, compressor and condenser find no
 * balance within the limits of {@link UnitModel}. A real unit would stop on its safety controls.
 *
 * <p>It says something about the unit. Searches that fail for numerical reasons throw a plain
 * {@link ArithmeticException}, which says something about the program.
 */
public final class NoBalanceException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    /**
     * States what has no balance.
     *
     * @param message the state at which there is none, with units
     */
    public NoBalanceException(String message) {
        super(message);
    }
}
