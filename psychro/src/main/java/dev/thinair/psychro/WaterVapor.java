package dev.thinair.psychro;

import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * Saturation of pure water vapor, with units: the curve that dew points, frost points and relative
 * humidities are read from. Formulas, accuracy and source: {@link Saturation}, after Hyland and
 * Wexler.
 *
 * <p>Air of a given vapor pressure has its dew point, below 0 &deg;C its frost point, at {@link
 * #saturationTemperature}.
 */
public final class WaterVapor {

    private WaterVapor() {}

    /**
     * Saturation pressure: over ice below 0 &deg;C, over liquid water from 0 &deg;C up.
     *
     * @param temperature temperature, -100 to 200 &deg;C
     * @return saturation pressure, in Pa
     * @throws NullPointerException if temperature is null
     * @throws IllegalArgumentException if temperature is NaN, infinite, out of its range or of
     *     another dimension
     */
    public static Quantity<Pressure> saturationPressure(Quantity<Temperature> temperature) {
        return Units.pascals(Saturation.pressure(Si.kelvins(temperature, "temperature")));
    }

    /**
     * Saturation pressure over liquid water.
     *
     * @param temperature temperature, 0 to 200 &deg;C
     * @return saturation pressure, in Pa
     * @throws NullPointerException if temperature is null
     * @throws IllegalArgumentException if temperature is NaN, infinite, out of its range or of
     *     another dimension
     */
    public static Quantity<Pressure> saturationPressureOverLiquid(
            Quantity<Temperature> temperature) {
        return Units.pascals(
                Saturation.pressureOverLiquid(
                        Si.kelvins(temperature, "temperature of liquid water")));
    }

    /**
     * Sublimation pressure over ice, 0 &deg;C included.
     *
     * @param temperature temperature, -100 to 0 &deg;C
     * @return sublimation pressure, in Pa
     * @throws NullPointerException if temperature is null
     * @throws IllegalArgumentException if temperature is NaN, infinite, out of its range or of
     *     another dimension
     */
    public static Quantity<Pressure> saturationPressureOverIce(Quantity<Temperature> temperature) {
        return Units.pascals(
                Saturation.pressureOverIce(Si.kelvins(temperature, "temperature of ice")));
    }

    /**
     * Temperature at which water of a vapor pressure is saturated: the dew point of air that holds
     * it, below 0 &deg;C the frost point.
     *
     * @param vaporPressure vapor pressure, 0.0014051 Pa to 1.5551 MPa
     * @return saturation temperature, in &deg;C
     * @throws NullPointerException if vaporPressure is null
     * @throws IllegalArgumentException if vaporPressure is NaN, infinite, out of its range or of
     *     another dimension
     */
    public static Quantity<Temperature> saturationTemperature(Quantity<Pressure> vaporPressure) {
        return Units.celsius(
                Saturation.temperature(Si.pascals(vaporPressure, "vapor pressure")) - 273.15);
    }
}
