package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** Duct leakage: power law, and the leakage classes of the trade. */
public final class Leakage {

    /** One inch of water, Pa (NIST SP 811). */
    private static final double INCH_OF_WATER = 249.08891;

    /** One cubic foot per minute and 100 square feet, m3/(s m2). */
    private static final double CFM_PER_100_SQUARE_FEET =
            0.3048 * 0.3048 * 0.3048 / 60 / (100 * 0.3048 * 0.3048);

    private Leakage() {}

    /**
     * Leakage at another pressure than that of the test.
     *
     * <p>Formula: {@code Q = sign(dp) Q_t (|dp|/p_t)^n}. The sign is kept: a negative base would
     * give NaN.
     *
     * <p>Source: power law; n = 0.6 is the default of ANSI/ASHRAE 152 (from memory).
     *
     * @param testFlow flow at the test pressure, m3/s, at least 0
     * @param testPressure Pa, above 0
     * @param pressure pressure inside against outside, Pa
     * @param exponent n, in [0.5, 1]
     * @return flow out of the duct, m3/s; negative under suction
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double flow(
            double testFlow, double testPressure, double pressure, double exponent) {
        Range.require("leakage at test pressure", testFlow, 0, 100, "m3/s");
        Range.requireAbove("test pressure", testPressure, 0, "Pa");
        Range.require("duct pressure", pressure, -10_000, 10_000, "Pa");
        Range.require("leakage exponent", exponent, 0.5, 1, "");
        return Math.signum(pressure)
                * testFlow
                * Math.pow(Math.abs(pressure) / testPressure, exponent);
    }

    /**
     * Leakage per duct surface of a leakage class.
     *
     * <p>Formula: {@code F = C_L p^0.65}, F in cfm per 100 ft2, p in inches of water.
     *
     * <p>Source: SMACNA HVAC Air Duct Leakage Test Manual, and ASHRAE Handbook - Fundamentals,
     * chapter Duct Design. Classes seen: 12 round and 24 rectangular metal at seal class C, 48
     * unsealed rectangular metal, 30 unsealed flexible (SMACNA table 4-1).
     *
     * @param leakageClass C_L, in [0, 500]
     * @param pressure static pressure, Pa, in [0, 2500]
     * @return leakage over duct surface, m3/(s m2)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double factor(double leakageClass, double pressure) {
        Range.require("leakage class", leakageClass, 0, 500, "");
        Range.require("static pressure", pressure, 0, 2_500, "Pa");
        return leakageClass * Math.pow(pressure / INCH_OF_WATER, 0.65) * CFM_PER_100_SQUARE_FEET;
    }

    /**
     * Leakage class of a duct from one measurement: the inverse of {@link #factor}.
     *
     * @param factor leakage over duct surface, m3/(s m2), at least 0
     * @param pressure static pressure of the test, Pa, above 0
     * @return C_L
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leakageClass(double factor, double pressure) {
        Range.require("leakage over duct surface", factor, 0, 10, "m3/(s m2)");
        Range.require("static pressure", pressure, 0.1, 2_500, "Pa");
        return factor / CFM_PER_100_SQUARE_FEET / Math.pow(pressure / INCH_OF_WATER, 0.65);
    }
}
