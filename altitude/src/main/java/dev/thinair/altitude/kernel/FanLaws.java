package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;

/**
 * Fan laws for one fan and one system: speed, density, and power.
 *
 * <p>At one speed a fan moves one volume whatever the density; its pressure and power follow the
 * density. Exact for a fan whose losses are fully turbulent in a system whose pressure drop is
 * proportional to density times volume squared. An induction motor unloaded by thin air slips a
 * little less, which these laws leave out.
 *
 * <p>Source: fan laws as in AMCA Publication 201 and ASHRAE Handbook - HVAC Systems and Equipment,
 * chapter on fans (from memory); values in reference cases DUCT-FAN. All functions are pure and
 * allocation-free.
 */
public final class FanLaws {

    private FanLaws() {}

    /**
     * Volume flow at another speed: proportional to speed.
     *
     * @param airflow airflow at the first speed, any unit
     * @param speedRatio second speed over first, above zero
     * @return airflow at the second speed
     * @throws IllegalArgumentException if the ratio is NaN, infinite or not above zero
     */
    public static double airflowAtSpeed(double airflow, double speedRatio) {
        requireSpeed(speedRatio);
        return airflow * speedRatio;
    }

    /**
     * Pressure at another speed: proportional to speed squared.
     *
     * @param pressure pressure at the first speed, any unit
     * @param speedRatio second speed over first, above zero
     * @return pressure at the second speed
     * @throws IllegalArgumentException if the ratio is NaN, infinite or not above zero
     */
    public static double pressureAtSpeed(double pressure, double speedRatio) {
        requireSpeed(speedRatio);
        return pressure * speedRatio * speedRatio;
    }

    /**
     * Shaft power at another speed: proportional to speed cubed.
     *
     * @param power power at the first speed, any unit
     * @param speedRatio second speed over first, above zero
     * @return power at the second speed
     * @throws IllegalArgumentException if the ratio is NaN, infinite or not above zero
     */
    public static double powerAtSpeed(double power, double speedRatio) {
        requireSpeed(speedRatio);
        return power * speedRatio * speedRatio * speedRatio;
    }

    /**
     * Pressure at site density, same speed and volume: catalogue pressure times density ratio.
     *
     * @param cataloguePressure pressure with standard air, any unit
     * @param densityRatio site density over standard, in (0, 2]
     * @return pressure at the site
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double pressureAtDensity(double cataloguePressure, double densityRatio) {
        requireDensity(densityRatio);
        return cataloguePressure * densityRatio;
    }

    /**
     * Shaft power at site density, same speed and volume: catalogue power times density ratio.
     *
     * @param cataloguePower power with standard air, any unit
     * @param densityRatio site density over standard, in (0, 2]
     * @return power at the site
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double powerAtDensity(double cataloguePower, double densityRatio) {
        requireDensity(densityRatio);
        return cataloguePower * densityRatio;
    }

    /**
     * The pressure to look up in a catalogue for a pressure wanted at a site: site pressure over
     * density ratio.
     *
     * @param sitePressure static pressure wanted at the site, any unit
     * @param densityRatio site density over standard, in (0, 2]
     * @return equivalent static pressure with standard air
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double cataloguePressure(double sitePressure, double densityRatio) {
        requireDensity(densityRatio);
        return sitePressure / densityRatio;
    }

    /**
     * Ratio of speed, volume flow and power when speed is raised to keep the pressure: <var>r</var>
     * <sup>-1/2</sup>, the same number for all three.
     *
     * @param densityRatio site density over standard, in (0, 2]
     * @return ratio to the value with standard air
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double ratioAtConstantPressure(double densityRatio) {
        requireDensity(densityRatio);
        return 1.0 / Math.sqrt(densityRatio);
    }

    /**
     * Ratio of speed, volume flow and pressure when speed is raised to keep the mass flow: 1/
     * <var>r</var>, the same number for all three.
     *
     * @param densityRatio site density over standard, in (0, 2]
     * @return ratio to the value with standard air
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double ratioAtConstantMass(double densityRatio) {
        requireDensity(densityRatio);
        return 1.0 / densityRatio;
    }

    /**
     * Ratio of power when speed is raised to keep the mass flow: 1/<var>r</var><sup>2</sup>.
     *
     * @param densityRatio site density over standard, in (0, 2]
     * @return ratio to the power with standard air
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double powerRatioAtConstantMass(double densityRatio) {
        requireDensity(densityRatio);
        return 1.0 / (densityRatio * densityRatio);
    }

    /**
     * Electric power of a blower: volume flow times pressure rise over total efficiency.
     *
     * @param airflow actual volume flow, m3/s, in [0, 1000]
     * @param pressure total pressure rise, Pa, in [0, 50000]
     * @param efficiency of fan, drive and motor together, in (0, 1]
     * @return power, W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double electricPower(double airflow, double pressure, double efficiency) {
        Range.require("airflow", airflow, 0, 1000, "m3/s");
        Range.require("pressure rise", pressure, 0, 50_000, "Pa");
        requireShare("efficiency", efficiency);
        return airflow * pressure / efficiency;
    }

    static void requireShare(String name, double share) {
        Range.require(name, share, Double.MIN_NORMAL, 1, "(ratio)");
    }

    static void requireDensity(double densityRatio) {
        Range.require("density ratio", densityRatio, Double.MIN_NORMAL, 2, "(ratio)");
    }

    private static void requireSpeed(double speedRatio) {
        Range.requireAbove("speed ratio", speedRatio, 0, "(ratio)");
    }
}
