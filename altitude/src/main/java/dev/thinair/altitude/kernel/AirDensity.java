package dev.thinair.altitude.kernel;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;

/**
 * Density of air at a site, and the two "density ratios" that the trade quotes under one name.
 *
 * <p>At <em>constant temperature</em> the ratio is that of the pressures, 0.801 at 6000 ft: right
 * for blowers, coils and ducts, which handle indoor air. The <em>standard atmosphere's</em> ratio
 * also cools with height, 0.836 at 6000 ft: right for outdoor air on a standard day, and the one
 * printed in aviation tables. All functions are pure and allocation-free.
 *
 * <p>Sources: definitions and the ideal gas law; {@link StandardAtmosphere} and {@link
 * IdealMoistAir}; standard air of 0.075 lb/ft3 at 70 degF and 29.92 inHg, ASHRAE Handbook -
 * Fundamentals 2021 (I-P), chapter 1 (from memory). Accuracy: rounding of the formulas, that of the
 * models named for their densities.
 */
public final class AirDensity {

    /** Standard air of the inch-pound trade, 0.075 lb/ft3, in kg/m3. */
    public static final double STANDARD_INCH_POUND = 0.075 * 0.45359237 / 0.028316846592;

    /** Standard air of the SI handbook, kg/m3: 0.1 percent below the inch-pound one. */
    public static final double STANDARD_SI = 1.20;

    /** Temperature of inch-pound standard air, 70 degF, in K. */
    public static final double STANDARD_TEMPERATURE = (70 + 459.67) / 1.8;

    private AirDensity() {}

    /**
     * Density ratio at constant temperature: <var>p</var>/101325 Pa.
     *
     * @param pressure site pressure, Pa, in [20000, 200000]
     * @return ratio to sea level at the same temperature and humidity ratio
     * @throws IllegalArgumentException if pressure is NaN or outside that range
     */
    public static double ratioAtConstantTemperature(double pressure) {
        requirePressure(pressure);
        return pressure / StandardAtmosphere.SEA_LEVEL_PRESSURE;
    }

    /**
     * Density ratio of the standard atmosphere: its density at an altitude over that at sea level.
     *
     * @param altitude geopotential altitude, m, in [-5000, 20000]
     * @return ratio
     * @throws IllegalArgumentException if altitude is NaN or outside that range
     */
    public static double ratioOfStandardAtmosphere(double altitude) {
        return StandardAtmosphere.density(altitude) / StandardAtmosphere.density(0.0);
    }

    /**
     * Density ratio to standard air at 70 degF: (<var>p</var>/101325 Pa)(294.26 K/<var>T</var>),
     * the fan maker's correction factor.
     *
     * @param pressure site pressure, Pa, in [20000, 200000]
     * @param temperature air temperature, K, in [173.15, 473.15]
     * @return ratio
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double ratioToStandardAir(double pressure, double temperature) {
        requirePressure(pressure);
        Range.require("temperature", temperature, 173.15, 473.15, "K");
        return pressure
                / StandardAtmosphere.SEA_LEVEL_PRESSURE
                * (STANDARD_TEMPERATURE / temperature);
    }

    /**
     * Density of the trade's standard air carried to a site: 0.075 lb/ft3 times {@link
     * #ratioToStandardAir}. Handbook tables by elevation are made so. Dry air of the ideal mixture
     * is 0.15 percent lighter (0.07489 lb/ft3 at 70 degF and sea level), which {@link
     * IdealMoistAir#density} gives.
     *
     * @param pressure site pressure, Pa, in [20000, 200000]
     * @param temperature air temperature, K, in [173.15, 473.15]
     * @return density, kg/m3
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double ofStandardAir(double pressure, double temperature) {
        return STANDARD_INCH_POUND * ratioToStandardAir(pressure, temperature);
    }

    /**
     * Density ratio of moist air at a site to a standard density: {@link IdealMoistAir#density}
     * over that density.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio kg of vapour per kg of dry air, in [0, 10]
     * @param pressure site pressure, Pa, in [20000, 200000]
     * @param standardDensity for example {@link #STANDARD_INCH_POUND}, kg/m3, above zero
     * @return ratio
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double ratioOfMoistAir(
            double dryBulb, double humidityRatio, double pressure, double standardDensity) {
        Range.requireAbove("standard density", standardDensity, 0.0, "kg/m3");
        return IdealMoistAir.density(dryBulb, humidityRatio, pressure) / standardDensity;
    }

    private static void requirePressure(double pressure) {
        Range.require("pressure", pressure, 20_000, 200_000, "Pa");
    }
}
