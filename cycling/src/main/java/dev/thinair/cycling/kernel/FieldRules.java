package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * The trade's rules of thumb about coil temperature, and published field figures, with their
 * sources. The rules contradict each other; the balance in {@link UnitModel} is the answer, these
 * are what people quote.
 */
public final class FieldRules {

    /**
     * Return air less saturated suction of the trade's constant-difference rule, K: 35 &deg;F.
     * Common practice, no source.
     */
    public static final double RETURN_TO_SUCTION = 35 / 1.8;

    /**
     * Return-air floor for a direct-expansion unit, K: 64 &deg;F. Common practice, no source; it
     * contradicts the constant difference, which puts the coil at 29 &deg;F there.
     */
    public static final double RETURN_FLOOR = (64 + 459.67) / 1.8;

    /**
     * Lowest return air at which a unit must still stay above freezing when set up, K: 68 &deg;F.
     * Training article "32 deg Saturation (Evap Temperature)", hvacrschool.com.
     */
    public static final double SETUP_RETURN = (68 + 459.67) / 1.8;

    /**
     * Increase of field cooling energy of units of 1.0 to 1.2 times the design load, 3.7 percent.
     * Sonne, Parker and Shirey 2006 (FSEC-CR-1641-06), abstract, quoting James and others 1997.
     */
    public static final double OVERSIZE_ENERGY_INCREASE = 0.037;

    /** Homes in that comparison: 368. James and others 1997, ASHRAE Trans. 103(2), abstract. */
    public static final int OVERSIZE_HOMES = 368;

    /**
     * Share of 78 homes with heat pumps whose heating capacity exceeded 120 percent of the load.
     * Same source.
     */
    public static final double OVERSIZED_HEAT_PUMPS = 0.31;

    /** Typical start-up time constant, s. Henderson, Parker and Huang 2000, from memory. */
    public static final double TYPICAL_TIME_CONSTANT = 60;

    /**
     * Typical maximum cycle rate, 1/h (also quoted as 3). Henderson, Parker and Huang 2000, from
     * memory.
     */
    public static final double TYPICAL_CYCLE_RATE = 2.5;

    /** Typical off-cycle power fraction. Henderson, Parker and Huang 2000, from memory. */
    public static final double TYPICAL_OFF_FRACTION = 0.01;

    private FieldRules() {}

    /**
     * Saturated suction temperature after a change of return air by the rule of one degree per
     * degree.
     *
     * <p>Source: training article "32 deg Saturation (Evap Temperature)", hvacrschool.com.
     *
     * @param suction saturated suction before, K, in [223.15, 323.15]
     * @param returnBefore return air before, K, in [273.15, 323.15]
     * @param returnAfter return air after, K, in [273.15, 323.15]
     * @return saturated suction after, K
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double suctionAfter(double suction, double returnBefore, double returnAfter) {
        Range.require("saturated suction", suction, 223.15, 323.15, "K");
        Range.require("return air before", returnBefore, 273.15, 323.15, "K");
        Range.require("return air after", returnAfter, 273.15, 323.15, "K");
        return suction + (returnAfter - returnBefore);
    }

    /**
     * Return air at which a constant difference puts the refrigerant at freezing.
     *
     * @param difference return air less saturated suction, K, in [0, 50]
     * @return return air, K
     * @throws IllegalArgumentException if the difference is NaN or out of range
     */
    public static double freezingReturn(double difference) {
        Range.require("return air less saturated suction", difference, 0, 50, "K");
        return 273.15 + difference;
    }
}
