package dev.thinair.loads.kernel;

/**
 * Customary indoor design conditions, K. The customer's own setpoint comes first; these are for
 * when nothing is said.
 */
public final class DesignConditions {

    /** Indoor cooling design, residential: 24 C (Fundamentals 2021 (SI), ch. 17). */
    public static final double COOLING_INDOOR = 297.15;

    /** Indoor heating design, residential: 20 C (Fundamentals 2021 (SI), ch. 17). */
    public static final double HEATING_INDOOR = 293.15;

    /** The trade's indoor cooling design: 75 F (common practice, no source). */
    public static final double TRADE_COOLING_INDOOR = (75 + 459.67) / 1.8;

    /** A stricter habit of the trade: 74 F (common practice, no source). */
    public static final double STRICT_TRADE_COOLING_INDOOR = (74 + 459.67) / 1.8;

    /** The trade's indoor heating design: 70 F (common practice, no source). */
    public static final double TRADE_HEATING_INDOOR = (70 + 459.67) / 1.8;

    /** Annual percentile of the residential cooling design dry bulb: 1 percent (ch. 17). */
    public static final double COOLING_PERCENTILE = 0.01;

    /** Annual percentile of the residential heating design dry bulb: 99 percent (ch. 17). */
    public static final double HEATING_PERCENTILE = 0.99;

    private DesignConditions() {}
}
