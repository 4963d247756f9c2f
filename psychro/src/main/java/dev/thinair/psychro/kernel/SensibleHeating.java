package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Heating and cooling at constant humidity ratio, and the surface that does it.
 *
 * <p>Formulas: <var>q</var> = <var>m</var> (<var>h</var><sub>2</sub> - <var>h</var><sub>1</sub>);
 * with a bypass factor <var>BF</var>, <var>t</var><sub>2</sub> = <var>t</var><sub>s</sub> +
 * <var>BF</var> (<var>t</var><sub>1</sub> - <var>t</var><sub>s</sub>). Source: ASHRAE Handbook -
 * Fundamentals 2021 (SI), chapter 1, equation (41); bypass factor, textbook definition.
 */
public final class SensibleHeating {

    private SensibleHeating() {}

    /**
     * Dry bulb after heat is added (or taken, if negative) at constant humidity ratio.
     *
     * @param model how to compute moist air
     * @param dryBulb entering dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param heat heat added, J/kg of dry air
     * @param pressure air pressure, Pa
     * @return leaving dry bulb, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if cooling
     *     would pass the dew point: then water condenses and the process is a wet coil's
     */
    public static double leavingDryBulb(
            AirModel model, double dryBulb, double humidityRatio, double heat, double pressure) {
        double leaving =
                model.dryBulbFromEnthalpy(
                        model.enthalpy(dryBulb, humidityRatio, pressure) + heat,
                        humidityRatio,
                        pressure);
        if (heat < 0 && model.relativeHumidity(leaving, humidityRatio, pressure) > 1 + 1e-12) {
            throw new IllegalArgumentException(
                    "heat added is "
                            + heat
                            + " J/kg, but sensible cooling must stay above the dew point "
                            + model.dewPoint(humidityRatio, pressure)
                            + " K; this would leave "
                            + leaving
                            + " K");
        }
        return leaving;
    }

    /**
     * Dry bulb behind a dry surface that part of the air bypasses.
     *
     * @param dryBulb entering dry bulb, K
     * @param surface surface temperature, K
     * @param bypassFactor part of the air that keeps its entering state, in [0, 1]
     * @return leaving dry bulb, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leavingDryBulb(double dryBulb, double surface, double bypassFactor) {
        Domain.dryBulb(dryBulb);
        Range.require(
                "surface temperature",
                surface,
                Domain.LOWEST_TEMPERATURE,
                Domain.HIGHEST_TEMPERATURE,
                "K");
        Range.require("bypass factor", bypassFactor, 0, 1, "(ratio)");
        return surface + bypassFactor * (dryBulb - surface);
    }

    /**
     * Surface temperature from entering and leaving dry bulb: <var>t</var><sub>s</sub> =
     * (<var>t</var><sub>2</sub> - <var>BF t</var><sub>1</sub>) / (1 - <var>BF</var>).
     *
     * @param dryBulb entering dry bulb, K
     * @param leaving leaving dry bulb, K
     * @param bypassFactor bypass factor, in [0, 0.999]
     * @return surface temperature, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the
     *     surface falls outside [173.15, 473.15] K
     */
    public static double surfaceTemperature(double dryBulb, double leaving, double bypassFactor) {
        Domain.dryBulb(dryBulb);
        Range.require(
                "leaving dry bulb",
                leaving,
                Domain.LOWEST_TEMPERATURE,
                Domain.HIGHEST_TEMPERATURE,
                "K");
        Range.require("bypass factor", bypassFactor, 0, 0.999, "(ratio)");
        double surface = dryBulb + (leaving - dryBulb) / (1 - bypassFactor);
        Range.require(
                "surface temperature",
                surface,
                Domain.LOWEST_TEMPERATURE,
                Domain.HIGHEST_TEMPERATURE,
                "K");
        return surface;
    }
}
