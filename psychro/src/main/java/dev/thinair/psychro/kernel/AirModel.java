package dev.thinair.psychro.kernel;

/**
 * One way to compute moist air, for code that leaves the choice to its caller: the processes of
 * this package take it as first argument.
 *
 * <p>Two models exist, {@link #IDEAL} and {@link #REAL}. Code that knows which one it wants calls
 * {@link IdealMoistAir} or {@link RealMoistAir} directly. Models hold no state and are safe from
 * any thread. Domain and errors are those of the two classes.
 */
public sealed interface AirModel permits IdealModel, RealModel {

    /** Ideal mixture with Hyland-Wexler saturation, {@link IdealMoistAir}: the default. */
    AirModel IDEAL = new IdealModel();

    /** Real mixture with enhancement factor and virial corrections, {@link RealMoistAir}. */
    AirModel REAL = new RealModel();

    /**
     * Humidity ratio of saturated air.
     *
     * @param temperature temperature, K
     * @param pressure air pressure, Pa
     * @return saturation humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is out of its domain or no saturated state
     *     exists
     */
    double saturationHumidityRatio(double temperature, double pressure);

    /**
     * Humidity ratio from relative humidity.
     *
     * @param dryBulb dry bulb, K
     * @param relativeHumidity relative humidity, in [0, 1]
     * @param pressure air pressure, Pa
     * @return humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double humidityRatioFromRelativeHumidity(
            double dryBulb, double relativeHumidity, double pressure);

    /**
     * Humidity ratio from thermodynamic wet bulb.
     *
     * @param dryBulb dry bulb, K
     * @param wetBulb wet bulb, K
     * @param pressure air pressure, Pa
     * @return humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure);

    /**
     * Humidity ratio from dew point.
     *
     * @param dewPoint dew or frost point, K
     * @param pressure air pressure, Pa
     * @return humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double humidityRatioFromDewPoint(double dewPoint, double pressure);

    /**
     * Humidity ratio from enthalpy.
     *
     * @param dryBulb dry bulb, K
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @param pressure air pressure, Pa
     * @return humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double humidityRatioFromEnthalpy(double dryBulb, double enthalpy, double pressure);

    /**
     * Specific enthalpy.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return specific enthalpy, J/kg of dry air
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double enthalpy(double dryBulb, double humidityRatio, double pressure);

    /**
     * Dry bulb from enthalpy.
     *
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return dry bulb, K
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double dryBulbFromEnthalpy(double enthalpy, double humidityRatio, double pressure);

    /**
     * Specific volume.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return volume per mass of dry air, m3/kg
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double specificVolume(double dryBulb, double humidityRatio, double pressure);

    /**
     * Density, the mixture's whole mass per volume: (1 + <var>W</var>)/<var>v</var>.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return density, kg/m3
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    default double density(double dryBulb, double humidityRatio, double pressure) {
        return (1 + humidityRatio) / specificVolume(dryBulb, humidityRatio, pressure);
    }

    /**
     * Degree of saturation, <var>W</var>/<var>W</var><sub>s</sub>.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return degree of saturation
     * @throws IllegalArgumentException if an argument is out of its domain or no saturated state
     *     exists
     */
    default double degreeOfSaturation(double dryBulb, double humidityRatio, double pressure) {
        Domain.humidityRatio(humidityRatio);
        return humidityRatio / saturationHumidityRatio(dryBulb, pressure);
    }

    /**
     * Relative humidity; above 1 the mixture is supersaturated.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return relative humidity
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    double relativeHumidity(double dryBulb, double humidityRatio, double pressure);

    /**
     * Dew or frost point.
     *
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return dew point, K
     * @throws IllegalArgumentException if an argument is out of its domain or the air too dry
     */
    double dewPoint(double humidityRatio, double pressure);

    /**
     * Thermodynamic wet bulb.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return wet bulb, K
     * @throws IllegalArgumentException if an argument is out of its domain or the air
     *     supersaturated
     */
    double wetBulb(double dryBulb, double humidityRatio, double pressure);

    /**
     * Specific enthalpy of liquid water, as this model counts it.
     *
     * @param temperature temperature, K, 273.15 or more
     * @return specific enthalpy, J/kg of water
     */
    double liquidEnthalpy(double temperature);

    /**
     * Specific enthalpy of ice, as this model counts it.
     *
     * @param temperature temperature, K, 273.15 or less
     * @return specific enthalpy, J/kg of ice
     */
    double iceEnthalpy(double temperature);

    /**
     * Specific enthalpy of condensate: liquid from 0 degC up, ice below.
     *
     * @param temperature temperature, K
     * @return specific enthalpy, J/kg of water
     */
    default double condensateEnthalpy(double temperature) {
        return temperature >= Domain.ICE_POINT
                ? liquidEnthalpy(temperature)
                : iceEnthalpy(temperature);
    }

    /**
     * Whether the air has a dew point at or above -100 degC.
     *
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return false if its vapor pressure is below saturation over ice at 173.15 K
     * @throws IllegalArgumentException if an argument is out of its domain
     */
    boolean hasDewPoint(double humidityRatio, double pressure);

    /**
     * Refuses values out of the domain and supersaturated air.
     *
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its domain, or if the
     *     relative humidity is above 1 by more than 1e-9, which a round trip may leave
     */
    default void requireUnsaturated(double dryBulb, double humidityRatio, double pressure) {
        double relative = relativeHumidity(dryBulb, humidityRatio, pressure);
        if (relative > 1 + 1e-9) {
            throw new IllegalArgumentException(
                    "humidity ratio is "
                            + humidityRatio
                            + " kg/kg, a relative humidity of "
                            + relative
                            + ", but must not be above "
                            + saturationHumidityRatio(dryBulb, pressure)
                            + " kg/kg, saturation at a dry bulb of "
                            + dryBulb
                            + " K and an air pressure of "
                            + pressure
                            + " Pa");
        }
    }
}
