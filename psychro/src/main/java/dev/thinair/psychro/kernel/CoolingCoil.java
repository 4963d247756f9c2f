package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Cooling coil by apparatus dew point and bypass factor: part <var>BF</var> of the air passes
 * unchanged, the rest leaves saturated at the apparatus dew point, and the two mix.
 *
 * <p>Formulas: <var>W</var><sub>2</sub> = <var>W</var><sub>adp</sub> + <var>BF</var>
 * (<var>W</var><sub>1</sub> - <var>W</var><sub>adp</sub>), the same for <var>h</var>; straight in
 * (<var>h</var>, <var>W</var>), not exactly in temperature. Where the entering dew point is not
 * above the surface the coil is dry, and <var>t</var><sub>2</sub> = <var>t</var><sub>adp</sub> +
 * <var>BF</var> (<var>t</var><sub>1</sub> - <var>t</var><sub>adp</sub>) at constant <var>W</var>.
 *
 * <p>The model says nothing of coils whose line runs through fog (nearly saturated entering air) or
 * misses the saturation curve; {@link CoilOutcome.NoState} and {@link CoilLine.NoState} say so.
 *
 * <p>Source: mixing, ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equation (44); the bypass
 * factor is the textbook definition.
 */
public final class CoolingCoil {

    private static final double SATURATION_ROUNDING = 1e-9;

    private CoolingCoil() {}

    /**
     * Leaving humidity ratio, ideal mixture; the entering one where the coil is dry. For hot loops:
     * allocates nothing and does not look for fog.
     *
     * @param humidityRatio entering humidity ratio, kg/kg
     * @param apparatusDewPoint apparatus dew point or surface temperature, K
     * @param bypassFactor bypass factor, in [0, 1]
     * @param pressure air pressure, Pa
     * @return leaving humidity ratio, kg/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leavingHumidityRatio(
            double humidityRatio, double apparatusDewPoint, double bypassFactor, double pressure) {
        Domain.humidityRatio(humidityRatio);
        Range.require("bypass factor", bypassFactor, 0, 1, "(ratio)");
        double saturated = IdealMoistAir.saturationHumidityRatio(apparatusDewPoint, pressure);
        return saturated >= humidityRatio
                ? humidityRatio
                : saturated + bypassFactor * (humidityRatio - saturated);
    }

    /**
     * Leaving enthalpy, ideal mixture, wet or dry. For hot loops, as {@link #leavingHumidityRatio}.
     *
     * @param dryBulb entering dry bulb, K
     * @param humidityRatio entering humidity ratio, kg/kg
     * @param apparatusDewPoint apparatus dew point or surface temperature, K
     * @param bypassFactor bypass factor, in [0, 1]
     * @param pressure air pressure, Pa
     * @return leaving specific enthalpy, J/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leavingEnthalpy(
            double dryBulb,
            double humidityRatio,
            double apparatusDewPoint,
            double bypassFactor,
            double pressure) {
        Range.require("bypass factor", bypassFactor, 0, 1, "(ratio)");
        double saturated = IdealMoistAir.saturationHumidityRatio(apparatusDewPoint, pressure);
        double atSurface =
                IdealMoistAir.enthalpy(apparatusDewPoint, Math.min(saturated, humidityRatio));
        return atSurface
                + bypassFactor * (IdealMoistAir.enthalpy(dryBulb, humidityRatio) - atSurface);
    }

    /**
     * Leaving state from apparatus dew point and bypass factor.
     *
     * @param model how to compute moist air
     * @param dryBulb entering dry bulb, K
     * @param humidityRatio entering humidity ratio, kg/kg
     * @param apparatusDewPoint apparatus dew point or surface temperature, K, below dryBulb
     * @param bypassFactor bypass factor, in [0, 1]
     * @param pressure air pressure, Pa
     * @return wet or dry leaving state, or the reason why there is none
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the
     *     surface is not colder than the entering air
     */
    public static CoilOutcome leaving(
            AirModel model,
            double dryBulb,
            double humidityRatio,
            double apparatusDewPoint,
            double bypassFactor,
            double pressure) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Range.require("bypass factor", bypassFactor, 0, 1, "(ratio)");
        Range.require(
                "apparatus dew point (not above the entering dry bulb)",
                apparatusDewPoint,
                Domain.LOWEST_TEMPERATURE,
                dryBulb,
                "K");
        // Relative humidity is defined even where nothing saturates the air.
        if (model.relativeHumidity(apparatusDewPoint, humidityRatio, pressure) <= 1) {
            double leaving = apparatusDewPoint + bypassFactor * (dryBulb - apparatusDewPoint);
            return new CoilOutcome.Dry(
                    leaving, humidityRatio, model.enthalpy(leaving, humidityRatio, pressure));
        }
        double saturated = model.saturationHumidityRatio(apparatusDewPoint, pressure);
        double atSurface = model.enthalpy(apparatusDewPoint, saturated, pressure);
        double ratio = saturated + bypassFactor * (humidityRatio - saturated);
        double enthalpy =
                atSurface
                        + bypassFactor
                                * (model.enthalpy(dryBulb, humidityRatio, pressure) - atSurface);
        double leaving = model.dryBulbFromEnthalpy(enthalpy, ratio, pressure);
        if (model.relativeHumidity(leaving, ratio, pressure) > 1 + SATURATION_ROUNDING) {
            return new CoilOutcome.NoState(
                    "the line from the entering state to the apparatus dew point runs through fog:"
                            + " the entering air is too close to saturation for the bypass model");
        }
        return new CoilOutcome.Wet(leaving, ratio, enthalpy);
    }

    /**
     * Apparatus dew point and bypass factor from entering and leaving state: the first point beyond
     * the leaving state where the straight (<var>h</var>, <var>W</var>) line meets the saturation
     * curve.
     *
     * <p>Method: on the curve, the distance from the line rises to one maximum and falls again as
     * the temperature falls, once over liquid and once over ice; the maximum is found first, then
     * the crossing between it and the leaving dew point. Accuracy of the apparatus dew point: 1e-10
     * K.
     *
     * @param model how to compute moist air
     * @param dryBulb1 entering dry bulb, K
     * @param humidityRatio1 entering humidity ratio, kg/kg
     * @param dryBulb2 leaving dry bulb, K
     * @param humidityRatio2 leaving humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return wet, dry, or the reason why no coil surface explains the states
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static CoilLine line(
            AirModel model,
            double dryBulb1,
            double humidityRatio1,
            double dryBulb2,
            double humidityRatio2,
            double pressure) {
        double enthalpy1 = model.enthalpy(dryBulb1, humidityRatio1, pressure);
        double enthalpy2 = model.enthalpy(dryBulb2, humidityRatio2, pressure);
        if (dryBulb2 >= dryBulb1) {
            return new CoilLine.NoState("the leaving dry bulb is not below the entering one");
        }
        double drop = humidityRatio1 - humidityRatio2;
        if (Math.abs(drop) <= 1e-12 * humidityRatio1) {
            if (humidityRatio1 == 0) {
                return new CoilLine.Dry(Domain.LOWEST_TEMPERATURE);
            }
            return new CoilLine.Dry(model.dewPoint(humidityRatio1, pressure));
        }
        if (drop < 0) {
            return new CoilLine.NoState(
                    "the leaving air holds more moisture than the entering air");
        }
        double relative = model.relativeHumidity(dryBulb2, humidityRatio2, pressure);
        if (relative > 1 + SATURATION_ROUNDING) {
            return new CoilLine.NoState("the leaving air is supersaturated");
        }
        if (humidityRatio2 == 0) {
            return new CoilLine.NoState("no surface dries air completely");
        }
        double dewPoint = model.dewPoint(humidityRatio2, pressure);
        if (relative >= 1 - SATURATION_ROUNDING) {
            // The leaving state is itself on the curve; rounding must not hide that.
            return new CoilLine.Wet(dewPoint, 0);
        }
        double heatDrop = enthalpy1 - enthalpy2;
        double adp = Double.NaN;
        if (dewPoint >= Domain.ICE_POINT) {
            adp =
                    crossing(
                            model,
                            Domain.ICE_POINT,
                            dewPoint,
                            enthalpy2,
                            humidityRatio2,
                            heatDrop,
                            drop,
                            pressure);
        }
        if (Double.isNaN(adp)) {
            adp =
                    crossing(
                            model,
                            Domain.LOWEST_TEMPERATURE,
                            Math.min(dewPoint, Math.nextDown(Domain.ICE_POINT)),
                            enthalpy2,
                            humidityRatio2,
                            heatDrop,
                            drop,
                            pressure);
        }
        if (Double.isNaN(adp)) {
            return new CoilLine.NoState(
                    "the line through both states misses the saturation curve: too much moisture"
                            + " removed for the sensible cooling (reheat or a wrong reading?)");
        }
        double saturated = model.saturationHumidityRatio(adp, pressure);
        return new CoilLine.Wet(adp, (humidityRatio2 - saturated) / (humidityRatio1 - saturated));
    }

    /** First crossing below high, or NaN; the distance is at or below 0 at high. */
    private static double crossing(
            AirModel model,
            double low,
            double high,
            double enthalpy2,
            double humidityRatio2,
            double heatDrop,
            double drop,
            double pressure) {
        if (distance(model, high, enthalpy2, humidityRatio2, heatDrop, drop, pressure) >= 0) {
            return high;
        }
        // Golden section for the maximum; it need only be found well enough to be above 0.
        double a = low;
        double b = high;
        double golden = (Math.sqrt(5) - 1) / 2;
        double x1 = b - golden * (b - a);
        double x2 = a + golden * (b - a);
        double f1 = distance(model, x1, enthalpy2, humidityRatio2, heatDrop, drop, pressure);
        double f2 = distance(model, x2, enthalpy2, humidityRatio2, heatDrop, drop, pressure);
        while (f1 < 0 && f2 < 0 && b - a > 1e-9) {
            if (f1 > f2) {
                b = x2;
                x2 = x1;
                f2 = f1;
                x1 = b - golden * (b - a);
                f1 = distance(model, x1, enthalpy2, humidityRatio2, heatDrop, drop, pressure);
            } else {
                a = x1;
                x1 = x2;
                f1 = f2;
                x2 = a + golden * (b - a);
                f2 = distance(model, x2, enthalpy2, humidityRatio2, heatDrop, drop, pressure);
            }
        }
        double best = f2 >= 0 ? x2 : x1;
        if (f1 < 0 && f2 < 0) {
            double atLow =
                    distance(model, low, enthalpy2, humidityRatio2, heatDrop, drop, pressure);
            if (!(atLow >= 0)) {
                return Double.NaN;
            }
            best = low;
        }
        return Roots.find(
                "apparatus dew point",
                t -> distance(model, t, enthalpy2, humidityRatio2, heatDrop, drop, pressure),
                best,
                high,
                1e-11);
    }

    /** How far saturated air at t lies beyond the coil line; 0 where the two meet. */
    private static double distance(
            AirModel model,
            double t,
            double enthalpy2,
            double humidityRatio2,
            double heatDrop,
            double drop,
            double pressure) {
        double saturated = model.saturationHumidityRatio(t, pressure);
        return (model.enthalpy(t, saturated, pressure) - enthalpy2) * drop
                - (saturated - humidityRatio2) * heatDrop;
    }

    /**
     * Heat that the coil takes from the air, with the condensate leaving as liquid:
     * <var>q</var>/<var>m</var> = <var>h</var><sub>1</sub> - <var>h</var><sub>2</sub> -
     * (<var>W</var><sub>1</sub> - <var>W</var><sub>2</sub>) <var>h</var><sub>w</sub>. Source:
     * ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equation (43).
     *
     * @param enthalpy1 entering specific enthalpy, J/kg of dry air
     * @param humidityRatio1 entering humidity ratio, kg/kg
     * @param enthalpy2 leaving specific enthalpy, J/kg of dry air
     * @param humidityRatio2 leaving humidity ratio, kg/kg
     * @param condensateEnthalpy specific enthalpy of the condensate where it leaves, J/kg of water
     * @return heat removed, J/kg of dry air
     */
    public static double heatRemoved(
            double enthalpy1,
            double humidityRatio1,
            double enthalpy2,
            double humidityRatio2,
            double condensateEnthalpy) {
        return enthalpy1 - enthalpy2 - (humidityRatio1 - humidityRatio2) * condensateEnthalpy;
    }

    /**
     * Sensible heat ratio of the coil: the enthalpy drop at the leaving humidity ratio over the
     * whole enthalpy drop.
     *
     * @param model how to compute moist air
     * @param dryBulb1 entering dry bulb, K
     * @param humidityRatio1 entering humidity ratio, kg/kg
     * @param dryBulb2 leaving dry bulb, K
     * @param humidityRatio2 leaving humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @return sensible heat ratio; 1 for a dry coil
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the
     *     enthalpy does not fall
     */
    public static double sensibleHeatRatio(
            AirModel model,
            double dryBulb1,
            double humidityRatio1,
            double dryBulb2,
            double humidityRatio2,
            double pressure) {
        double enthalpy2 = model.enthalpy(dryBulb2, humidityRatio2, pressure);
        double total = model.enthalpy(dryBulb1, humidityRatio1, pressure) - enthalpy2;
        Range.requireAbove("enthalpy drop across the coil", total, 0, "J/kg");
        return (model.enthalpy(dryBulb1, humidityRatio2, pressure) - enthalpy2) / total;
    }
}
