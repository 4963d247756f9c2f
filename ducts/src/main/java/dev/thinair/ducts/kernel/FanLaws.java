package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Fan laws for one fan at other speeds and densities, and what a constant-airflow motor does.
 *
 * <p>Source: ASHRAE Handbook - HVAC Systems and Equipment, chapter Fans (from memory); AMCA 201.
 */
public final class FanLaws {

    private FanLaws() {}

    /**
     * Airflow at another speed: in proportion to speed.
     *
     * @param flow airflow at the first speed, any unit
     * @param speedRatio new speed over old, in [0.01, 100]
     * @return airflow in the same unit
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double flowAtSpeed(double flow, double speedRatio) {
        requireRatio(speedRatio);
        requireValue(flow);
        return flow * speedRatio;
    }

    /**
     * Pressure at another speed and density: with the square of speed and in proportion to density.
     *
     * @param pressure pressure at the first speed and density, any unit
     * @param speedRatio new speed over old, in [0.01, 100]
     * @param densityRatio new density over old, in [0.01, 100]
     * @return pressure in the same unit
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double pressure(double pressure, double speedRatio, double densityRatio) {
        requireRatio(speedRatio);
        requireRatio(densityRatio);
        requireValue(pressure);
        return pressure * speedRatio * speedRatio * densityRatio;
    }

    /**
     * Shaft power at another speed and density: with the cube of speed and in proportion to
     * density.
     *
     * @param power power at the first speed and density, any unit
     * @param speedRatio new speed over old, in [0.01, 100]
     * @param densityRatio new density over old, in [0.01, 100]
     * @return power in the same unit
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double power(double power, double speedRatio, double densityRatio) {
        requireRatio(speedRatio);
        requireRatio(densityRatio);
        requireValue(power);
        return power * speedRatio * speedRatio * speedRatio * densityRatio;
    }

    /**
     * Factor on airflow, speed and power when the same pressure is held at another density.
     *
     * <p>Formula: {@code ratio^-1/2}.
     *
     * @param densityRatio new density over old, in [0.01, 100]
     * @return factor
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double atConstantPressure(double densityRatio) {
        requireRatio(densityRatio);
        return 1 / Math.sqrt(densityRatio);
    }

    /**
     * Factor on airflow, speed and pressure when the same mass flow is held at another density.
     *
     * <p>Formula: {@code 1/ratio}; the power rises with its square.
     *
     * @param densityRatio new density over old, in [0.01, 100]
     * @return factor
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double atConstantMass(double densityRatio) {
        requireRatio(densityRatio);
        return 1 / densityRatio;
    }

    /**
     * Electric power of a blower.
     *
     * <p>Formula: {@code P = Q dp/eta}.
     *
     * @param flow volume flow, m3/s, at least 0
     * @param pressure pressure rise, Pa, at least 0
     * @param totalEfficiency of blower and motor together, in [0.01, 1]
     * @return W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double electricPower(double flow, double pressure, double totalEfficiency) {
        Range.require("airflow", flow, 0, 1_000, "m3/s");
        Range.require("pressure rise", pressure, 0, 10_000, "Pa");
        Range.require("total efficiency", totalEfficiency, 0.01, 1, "");
        return flow * pressure / totalEfficiency;
    }

    /**
     * Flow of each open register relative to before, when some of many equal ones are shut and the
     * pressure of the blower stays.
     *
     * <p>Formula: with N registers, k shut, and a share s of the pressure lost in the branches,
     * {@code [ s + (1 - s)(1 - k/N)^2 ]^-1/2}.
     *
     * @param registers N, at least 1
     * @param closed k, at least 0 and below N
     * @param branchShare s, in [0, 1]
     * @return factor, at least 1
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double openRegisterGain(int registers, int closed, double branchShare) {
        Range.require("number of registers", registers, 1, 10_000, "");
        Range.require("number of closed registers", closed, 0, registers - 1, "");
        Range.require("share of pressure in the branches", branchShare, 0, 1, "");
        double open = 1 - (double) closed / registers;
        return 1 / Math.sqrt(branchShare + (1 - branchShare) * open * open);
    }

    private static void requireRatio(double ratio) {
        Range.require("ratio", ratio, 0.01, 100, "");
    }

    private static void requireValue(double value) {
        Range.require("value", value, 0, 1e12, "");
    }
}
