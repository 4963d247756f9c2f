package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Dew point of moist air, and below 0 degC its frost point: the temperature at which the vapor it
 * holds would be saturated.
 *
 * <p>Definition: <var>p</var><sub>ws</sub>(<var>t</var><sub>d</sub>) = <var>p</var> <var>W</var> /
 * (0.621945 + <var>W</var>). Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equation
 * (36). The handbook's correlations (37) and (38) are not used: they are off by kelvins below -40
 * degC.
 */
public final class DewPoint {

    private DewPoint() {}

    /**
     * Dew point (frost point below 0 degC) from humidity ratio and pressure.
     *
     * <p>Vapor pressures between the ice and the liquid curve at 0 degC (611.154 to 611.213 Pa)
     * answer 273.15 K, see {@link Saturation}. Accuracy of the inversion: 4e-13 K.
     *
     * @param humidityRatio humidity ratio, kg/kg, in (0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return dew point, K, in [173.15, 473.15]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     so dry that its vapor pressure is below 0.0014051 Pa, the ice curve's at 173.15 K (dry
     *     air has no dew point)
     */
    public static double temperature(double humidityRatio, double pressure) {
        return Saturation.temperature(IdealMoistAir.vaporPressure(humidityRatio, pressure));
    }

    /**
     * Humidity ratio from dew point: the inverse of {@link #temperature(double, double)}.
     *
     * @param dewPoint dew or frost point, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000], above the saturation pressure at the
     *     dew point
     * @return humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the vapor
     *     pressure leaves no room for a humidity ratio up to 10 kg/kg
     */
    public static double humidityRatio(double dewPoint, double pressure) {
        Range.require(
                "dew point", dewPoint, Domain.LOWEST_TEMPERATURE, Domain.HIGHEST_TEMPERATURE, "K");
        return IdealMoistAir.humidityRatioFromVaporPressure(
                Saturation.pressure(dewPoint), pressure);
    }
}
