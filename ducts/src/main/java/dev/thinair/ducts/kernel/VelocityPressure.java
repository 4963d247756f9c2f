package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Velocity and velocity pressure.
 *
 * <p>Source: definitions, exact to rounding, except where the trade's rounded constant is named.
 */
public final class VelocityPressure {

    /**
     * The trade's velocity at one inch of water in standard air, m/s: 4,005 ft/min. Rounded; exact
     * is 4,008.6 with the conventional inch. Source: ASHRAE and ACGIH.
     */
    public static final double TRADE_CONSTANT = 4_005 * 0.00508;

    private static final double INCH_OF_WATER = 249.08891;

    private VelocityPressure() {}

    /**
     * The trade's velocity constant at another density.
     *
     * <p>Formula: {@code K/sqrt(r)}.
     *
     * @param constant K at standard air, such as {@link #TRADE_CONSTANT}, m/s, above 0
     * @param densityRatio r, density over that of standard air, in [0.1, 2]
     * @return velocity at one inch of water, m/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double constantAtDensity(double constant, double densityRatio) {
        Range.requireAbove("velocity constant", constant, 0, "m/s");
        Range.require("density ratio", densityRatio, 0.1, 2, "");
        return constant / Math.sqrt(densityRatio);
    }

    /**
     * Velocity pressure of standard air by the trade's constant.
     *
     * <p>Formula: {@code (V/4005)^2} inches of water, V in ft/min. 0.2 % above {@link #pressure};
     * use it only to follow a trade table made with it.
     *
     * @param velocity mean velocity, m/s, in [0, 1000]
     * @return Pa
     * @throws IllegalArgumentException if the velocity is NaN or outside its range
     */
    public static double tradePressure(double velocity) {
        Range.require("velocity", velocity, 0, 1_000, "m/s");
        double inches = velocity / TRADE_CONSTANT;
        return inches * inches * INCH_OF_WATER;
    }

    /**
     * Velocity pressure.
     *
     * <p>Formula: {@code p_v = rho V^2/2}.
     *
     * @param velocity mean velocity, m/s, in [0, 1000]
     * @param density air density, kg/m3
     * @return Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double pressure(double velocity, double density) {
        Range.require("velocity", velocity, 0, 1_000, "m/s");
        Range.require("air density", density, 0.1, 10, "kg/m3");
        return density * velocity * velocity / 2;
    }

    /**
     * Velocity with a velocity pressure.
     *
     * <p>Formula: {@code V = sqrt(2 p_v/rho)}. With 0.075 lb/ft3 and one inch of water this is the
     * trade's constant: 4,008.6 ft/min with the conventional inch, 4,006.5 with the 60 F inch; the
     * usual 4,005 is a rounded number, and at elevation it is larger by one over the root of the
     * density ratio.
     *
     * @param velocityPressure Pa, in [0, 1e6]
     * @param density air density, kg/m3
     * @return m/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double velocity(double velocityPressure, double density) {
        Range.require("velocity pressure", velocityPressure, 0, 1e6, "Pa");
        Range.require("air density", density, 0.1, 10, "kg/m3");
        return Math.sqrt(2 * velocityPressure / density);
    }

    /**
     * Mean velocity of a flow.
     *
     * @param flow volume flow, m3/s, at least 0
     * @param area cross section, m2, above 0
     * @return m/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double meanVelocity(double flow, double area) {
        Range.require("airflow", flow, 0, 1e4, "m3/s");
        Range.requireAbove("area", area, 0, "m2");
        return flow / area;
    }
}
