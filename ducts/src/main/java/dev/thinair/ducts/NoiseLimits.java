package dev.thinair.ducts;

import dev.thinair.units.Range;
import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;

/**
 * Published velocity limits for quiet ducts and registers, as data with their sources. Only values
 * that were seen are given; others are refused instead of being interpolated.
 */
public final class NoiseLimits {

    /** Where a main duct runs. */
    public enum Location {
        /** In a shaft or above a drywall ceiling. */
        SHAFT_OR_DRYWALL,
        /** Above a suspended acoustic ceiling. */
        SUSPENDED_CEILING,
        /** Within the occupied space. */
        OCCUPIED_SPACE
    }

    /** Share of the main-duct limit for branches (ASHRAE, as below, note 1). */
    public static final double BRANCH_FACTOR = 0.8;

    /** Share of the main-duct limit for final run-outs, at most (ASHRAE, as below, note 2). */
    public static final double RUN_OUT_FACTOR = 0.5;

    private NoiseLimits() {}

    /**
     * Greatest velocity in a main duct for a room criterion.
     *
     * <p>Source: ASHRAE Handbook - HVAC Applications 2015, chapter 48, table 8 (read in a public
     * copy).
     *
     * @param location where the duct runs
     * @param roomCriterion RC of the rooms: 45 or 25; in the occupied space 35 or 25
     * @param round true for round, false for rectangular ducts
     * @return greatest velocity
     * @throws IllegalArgumentException if the location is null or the table's row was not seen
     */
    public static Quantity<Speed> mainDuct(Location location, int roomCriterion, boolean round) {
        if (location == null) {
            throw new IllegalArgumentException("location of main duct is null");
        }
        double fpm =
                switch (location) {
                    case SHAFT_OR_DRYWALL ->
                            pick(roomCriterion, 45, round ? 5_000 : 3_500, round ? 2_500 : 1_700);
                    case SUSPENDED_CEILING ->
                            pick(roomCriterion, 45, round ? 4_500 : 2_500, round ? 2_000 : 1_200);
                    case OCCUPIED_SPACE ->
                            pick(roomCriterion, 35, round ? 2_600 : 1_450, round ? 1_700 : 950);
                };
        return Units.feetPerMinute(fpm);
    }

    private static double pick(int criterion, int loud, double atLoud, double at25) {
        if (criterion == loud) {
            return atLoud;
        }
        if (criterion == 25) {
            return at25;
        }
        throw new IllegalArgumentException(
                "room criterion is RC "
                        + criterion
                        + ", but the rows known are RC "
                        + loud
                        + " and RC 25");
    }

    /**
     * Greatest velocity in the free opening of a register or grille for a noise criterion.
     *
     * <p>Source: published table of architectural acoustics (upper register velocities).
     *
     * @param noiseCriterion NC of the room, in [20, 30] or [35, 40]
     * @param supply true for a supply register, false for a return grille
     * @return greatest velocity
     * @throws IllegalArgumentException if the criterion lies outside the rows known
     */
    public static Quantity<Speed> register(double noiseCriterion, boolean supply) {
        Range.require("noise criterion", noiseCriterion, 20, 40, "NC");
        if (noiseCriterion <= 25) {
            return Units.feetPerMinute(supply ? 350 : 420);
        }
        if (noiseCriterion <= 30) {
            return Units.feetPerMinute(supply ? 425 : 510);
        }
        if (noiseCriterion >= 35) {
            return Units.feetPerMinute(supply ? 575 : 690);
        }
        throw new IllegalArgumentException(
                "noise criterion is NC "
                        + noiseCriterion
                        + ", but the rows known are NC 20 to 30 and 35 to"
                        + " 40");
    }
}
