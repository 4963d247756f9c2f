package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Loss of a boot, the piece between a run and its register, on the velocity pressure of the run.
 *
 * <p>No table of boots by a standard was at hand, so they are put together from published parts;
 * what the parts do to each other so close together is not in it, and measured boots differ from
 * such sums by half of them and more (from memory). Where the maker gives a number, use that.
 */
public final class Boots {

    private Boots() {}

    /**
     * A straight boot: the run opens into the register's neck without a turn.
     *
     * <p>Formula: a conical diffuser of the same areas and included angle, {@link
     * Transitions#conicalDiffuser}. Source: Crane Technical Paper 410.
     *
     * @param runArea area of the run, m2, above 0
     * @param neckArea area of the register's neck, m2, at least that of the run
     * @param includedAngle of the transition, rad, in (0, 180 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or out of range, or the boot narrows
     */
    public static double straight(double runArea, double neckArea, double includedAngle) {
        Range.requireAbove("area of run", runArea, 0, "m2");
        Range.requireAbove("area of register neck", neckArea, 0, "m2");
        return Transitions.conicalDiffuser(Math.sqrt(runArea), Math.sqrt(neckArea), includedAngle);
    }

    /**
     * A boot that turns the air sharply and opens at once, as in floors and ceilings.
     *
     * <p>Formula: a round mitered elbow of that angle ({@link Elbows#miteredRound}) and a sudden
     * expansion from the run into the neck ({@link Transitions#suddenExpansion}).
     *
     * @param runArea area of the run, m2, above 0
     * @param neckArea area of the register's neck, m2, at least that of the run
     * @param angle turn, rad, in [20, 90 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or out of range, or the boot narrows
     */
    public static double turning(double runArea, double neckArea, double angle) {
        return Elbows.miteredRound(angle) + Transitions.suddenExpansion(runArea, neckArea);
    }
}
