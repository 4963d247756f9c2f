package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Moist air as an ideal mixture of dry air and water vapor with Hyland-Wexler saturation: the
 * default formulation.
 *
 * <p>Domain: dry bulb 173.15 to 473.15 K (-100 to 200 degC), air pressure 20 to 200 kPa, humidity
 * ratio 0 to 10 kg/kg. Quantities per mass are per kilogram of <em>dry air</em>, except density.
 * Enthalpy is zero for dry air at 0 degC and liquid water at 0 degC (I-P tables put dry air at 0
 * degF: an offset of 7.69 Btu/lb).
 *
 * <p>Accuracy against real moist air (IAPWS G8-10) at 0 to 5000 m: from -40 to 40 degC saturation
 * humidity ratio within 0.55 %, enthalpy of saturated air within 0.5 kJ/kg up to 30 degC, density
 * within 0.05 % above 5 degC; the error grows without bound as the saturation pressure nears the
 * air pressure. {@link RealMoistAir} corrects most of it.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equations (20) to (36). All
 * functions are pure, allocation-free and safe from any thread.
 */
public final class IdealMoistAir {

    /** Molar mass of water over that of dry air, Fundamentals 2021 ch. 1. */
    public static final double MASS_RATIO = 0.621945;

    /** Gas constant of dry air, J/(kg K), Fundamentals 2021 ch. 1 eq. (1). */
    public static final double GAS_CONSTANT_DRY_AIR = 287.042;

    private static final double INVERSE_MASS_RATIO = 1.607858; // eq. (26)
    private static final double CP_DRY_AIR = 1006; // J/(kg K), eq. (28)
    private static final double CP_VAPOR = 1860; // J/(kg K), eq. (29)
    private static final double VAPORIZATION = 2_501_000; // J/kg at 0 degC, eq. (29)

    private static final double HIGHEST_VAPOR_SHARE =
            Domain.HIGHEST_HUMIDITY_RATIO / (MASS_RATIO + Domain.HIGHEST_HUMIDITY_RATIO);

    private IdealMoistAir() {}

    /**
     * Humidity ratio from relative humidity: <var>p</var><sub>w</sub> = <var>&#966;</var>
     * <var>p</var><sub>ws</sub>(<var>T</var>), then equation (20).
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param relativeHumidity vapor pressure over saturation pressure, in [0, 1]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the vapor
     *     pressure leaves no room for a humidity ratio up to 10 kg/kg
     */
    public static double humidityRatioFromRelativeHumidity(
            double dryBulb, double relativeHumidity, double pressure) {
        Domain.dryBulb(dryBulb);
        Range.require("relative humidity", relativeHumidity, 0, 1, "(ratio)");
        return humidityRatioFromVaporPressure(
                relativeHumidity * Saturation.pressure(dryBulb), pressure);
    }

    /**
     * Humidity ratio from thermodynamic wet bulb: equation (33) over liquid water from 0 degC up,
     * equation (35) over ice below; see {@link WetBulb#humidityRatio(double, double, double)}.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param wetBulb thermodynamic wet bulb, K, in [173.15, dry bulb]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the pair
     *     implies a humidity ratio outside [0, 10] kg/kg
     */
    public static double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
        return WetBulb.humidityRatio(dryBulb, wetBulb, pressure);
    }

    /**
     * Humidity ratio from dew point; see {@link DewPoint#humidityRatio(double, double)}.
     *
     * @param dewPoint dew or frost point, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the vapor
     *     pressure leaves no room for a humidity ratio up to 10 kg/kg
     */
    public static double humidityRatioFromDewPoint(double dewPoint, double pressure) {
        return DewPoint.humidityRatio(dewPoint, pressure);
    }

    /**
     * Humidity ratio from vapor pressure, equation (20): <var>W</var> = 0.621945
     * <var>p</var><sub>w</sub> / (<var>p</var> - <var>p</var><sub>w</sub>).
     *
     * @param vaporPressure partial pressure of water vapor, Pa, in [0, 0.94145 pressure]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double humidityRatioFromVaporPressure(double vaporPressure, double pressure) {
        Domain.pressure(pressure);
        double highest = HIGHEST_VAPOR_SHARE * pressure;
        if (!(vaporPressure >= 0 && vaporPressure <= highest)) {
            throw new IllegalArgumentException(
                    "vapor pressure is "
                            + vaporPressure
                            + " Pa, but must lie in [0.0, "
                            + highest
                            + "] Pa at an air pressure of "
                            + pressure
                            + " Pa");
        }
        return MASS_RATIO * vaporPressure / (pressure - vaporPressure);
    }

    /**
     * Humidity ratio from enthalpy, equation (30) solved for it: <var>W</var> = (<var>h</var> -
     * 1.006 <var>t</var>) / (2501 + 1.86 <var>t</var>), in kJ/kg and degC.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the pair
     *     implies a humidity ratio outside [0, 10] kg/kg
     */
    public static double humidityRatioFromEnthalpy(double dryBulb, double enthalpy) {
        Domain.dryBulb(dryBulb);
        double t = dryBulb - Domain.ICE_POINT;
        double dry = CP_DRY_AIR * t;
        double perRatio = VAPORIZATION + CP_VAPOR * t;
        Range.require(
                "specific enthalpy at this dry bulb",
                enthalpy,
                dry,
                dry + Domain.HIGHEST_HUMIDITY_RATIO * perRatio,
                "J/kg");
        return (enthalpy - dry) / perRatio;
    }

    /**
     * Humidity ratio of saturated air, equation (21): <var>W</var><sub>s</sub> = 0.621945
     * <var>p</var><sub>ws</sub> / (<var>p</var> - <var>p</var><sub>ws</sub>).
     *
     * @param temperature dry bulb of the saturated air, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return saturation humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the
     *     saturation pressure is above 0.94145 of the air pressure: then no humidity ratio up to 10
     *     kg/kg saturates the air
     */
    public static double saturationHumidityRatio(double temperature, double pressure) {
        Domain.dryBulb(temperature);
        return humidityRatioFromVaporPressure(Saturation.pressure(temperature), pressure);
    }

    /**
     * Specific enthalpy, equation (30): <var>h</var> = 1.006 <var>t</var> + <var>W</var> (2501 +
     * 1.86 <var>t</var>), in kJ/kg and degC.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @return specific enthalpy, J/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double enthalpy(double dryBulb, double humidityRatio) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        double t = dryBulb - Domain.ICE_POINT;
        return CP_DRY_AIR * t + humidityRatio * (VAPORIZATION + CP_VAPOR * t);
    }

    /**
     * Dry bulb from enthalpy and humidity ratio, equation (30) solved for it.
     *
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @return dry bulb, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the dry
     *     bulb falls outside [173.15, 473.15] K
     */
    public static double dryBulbFromEnthalpy(double enthalpy, double humidityRatio) {
        Domain.humidityRatio(humidityRatio);
        double dryBulb =
                (enthalpy - VAPORIZATION * humidityRatio) / specificHeatUnchecked(humidityRatio)
                        + Domain.ICE_POINT;
        return Domain.dryBulbFound(dryBulb);
    }

    /**
     * Specific heat at constant pressure, the slope of equation (30): <var>c</var><sub>p</sub> =
     * 1.006 + 1.86 <var>W</var> kJ/(kg K).
     *
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @return specific heat, J/(kg K) per kilogram of dry air
     * @throws IllegalArgumentException if humidityRatio is NaN or outside its range
     */
    public static double specificHeat(double humidityRatio) {
        Domain.humidityRatio(humidityRatio);
        return specificHeatUnchecked(humidityRatio);
    }

    private static double specificHeatUnchecked(double humidityRatio) {
        return CP_DRY_AIR + CP_VAPOR * humidityRatio;
    }

    /**
     * Specific volume, equation (26): <var>v</var> = 287.042 <var>T</var> (1 + 1.607858
     * <var>W</var>) / <var>p</var>.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return volume of the mixture per mass of dry air, m3/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double specificVolume(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
        return GAS_CONSTANT_DRY_AIR * dryBulb * (1 + INVERSE_MASS_RATIO * humidityRatio) / pressure;
    }

    /**
     * Density of the moist air, its whole mass per volume: <var>&#961;</var> = (1 + <var>W</var>) /
     * <var>v</var>.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return density, kg/m3
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double density(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
        return (1 + humidityRatio)
                * pressure
                / (GAS_CONSTANT_DRY_AIR * dryBulb * (1 + INVERSE_MASS_RATIO * humidityRatio));
    }

    /**
     * Relative humidity, equation (22): <var>p</var><sub>w</sub> /
     * <var>p</var><sub>ws</sub>(<var>T</var>). It stays defined where the saturation pressure is
     * above the air pressure; a value above 1 is a supersaturated, foggy mixture.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return relative humidity, 0 or more
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double relativeHumidity(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        return vaporPressure(humidityRatio, pressure) / Saturation.pressure(dryBulb);
    }

    /**
     * Degree of saturation: <var>&#956;</var> = <var>W</var> /
     * <var>W</var><sub>s</sub>(<var>T</var>, <var>p</var>). Not the relative humidity (equation
     * (23) relates the two): at 35 degC and 20 % they differ by 4 %. Above 1 the mixture is
     * supersaturated (fog).
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return degree of saturation, 0 or more
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if no
     *     saturated state exists at this dry bulb and pressure
     */
    public static double degreeOfSaturation(double dryBulb, double humidityRatio, double pressure) {
        Domain.humidityRatio(humidityRatio);
        return humidityRatio / saturationHumidityRatio(dryBulb, pressure);
    }

    /**
     * Vapor pressure, equation (36): <var>p</var><sub>w</sub> = <var>p</var> <var>W</var> /
     * (0.621945 + <var>W</var>).
     *
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return partial pressure of water vapor, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double vaporPressure(double humidityRatio, double pressure) {
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
        return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
    }

    /**
     * Dew point (frost point below 0 degC); see {@link DewPoint#temperature(double, double)}.
     *
     * @param humidityRatio humidity ratio, kg/kg, in (0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return dew point, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     too dry to have a dew point above 173.15 K
     */
    public static double dewPoint(double humidityRatio, double pressure) {
        return DewPoint.temperature(humidityRatio, pressure);
    }

    /**
     * Thermodynamic wet bulb; see {@link WetBulb#temperature(double, double, double)}.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10], not above saturation
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return thermodynamic wet bulb, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     supersaturated
     */
    public static double wetBulb(double dryBulb, double humidityRatio, double pressure) {
        return WetBulb.temperature(dryBulb, humidityRatio, pressure);
    }

    /**
     * Specific enthalpy of liquid water, 4.186 <var>t</var> kJ/kg: the line that equation (33)
     * implies.
     *
     * @param temperature temperature, K, in [273.15, 473.15]
     * @return specific enthalpy, J/kg of water
     * @throws IllegalArgumentException if temperature is NaN or outside its range
     */
    public static double liquidEnthalpy(double temperature) {
        Range.require(
                "temperature of liquid water",
                temperature,
                Domain.ICE_POINT,
                Domain.HIGHEST_TEMPERATURE,
                "K");
        return 4186 * (temperature - Domain.ICE_POINT);
    }

    /**
     * Specific enthalpy of ice, -333.4 + 2.1 <var>t</var> kJ/kg (the handbook's figures; the heat
     * of fusion from memory).
     *
     * @param temperature temperature, K, in [173.15, 273.15]
     * @return specific enthalpy, J/kg of ice
     * @throws IllegalArgumentException if temperature is NaN or outside its range
     */
    public static double iceEnthalpy(double temperature) {
        Range.require(
                "temperature of ice",
                temperature,
                Domain.LOWEST_TEMPERATURE,
                Domain.ICE_POINT,
                "K");
        return -333_400 + 2100 * (temperature - Domain.ICE_POINT);
    }
}
