package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Adding moisture to air: steam or water of known enthalpy, and the evaporative path of constant
 * wet bulb.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1: moisture balance <var>W</var>
 * <sub>2</sub> = <var>W</var><sub>1</sub> + <var>m</var><sub>w</sub>/<var>m</var><sub>da</sub> and
 * energy balance <var>h</var><sub>2</sub> = <var>h</var><sub>1</sub> + <var>h</var><sub>w</sub>
 * <var>m</var><sub>w</sub>/<var>m</var><sub>da</sub>; equation (33) for the evaporative path.
 */
public final class Humidifying {

    private Humidifying() {}

    /**
     * Air after water or steam of a given enthalpy has been taken up without other heat. Nothing is
     * held back: what the air cannot carry stays in it as fog and is reported.
     *
     * @param model how to compute moist air
     * @param dryBulb entering dry bulb, K
     * @param humidityRatio entering humidity ratio, kg/kg
     * @param added water added, kg per kg of dry air, 0 or more
     * @param waterEnthalpy specific enthalpy of that water or steam, J/kg, in [-700000, 4000000]
     *     (liquid water at 0 degC is 0, steam at 100 degC 2675600)
     * @param pressure air pressure, Pa
     * @return the leaving state
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the state
     *     falls outside the model's domain
     */
    public static AirPoint injection(
            AirModel model,
            double dryBulb,
            double humidityRatio,
            double added,
            double waterEnthalpy,
            double pressure) {
        Range.require("water added", added, 0, Domain.HIGHEST_HUMIDITY_RATIO, "kg/kg");
        Range.require("enthalpy of the water", waterEnthalpy, -700_000, 4_000_000, "J/kg");
        return AirPoint.of(
                model,
                model.enthalpy(dryBulb, humidityRatio, pressure) + added * waterEnthalpy,
                humidityRatio + added,
                pressure);
    }

    /**
     * Air behind an evaporative cooler or air washer that recirculates its water: the water takes
     * the wet bulb's temperature, and the air moves toward saturation at constant thermodynamic wet
     * bulb.
     *
     * <p>Formula: <var>t</var><sub>2</sub> = <var>t</var><sub>1</sub> - <var>&#949;</var>
     * (<var>t</var><sub>1</sub> - <var>t</var>*), <var>W</var><sub>2</sub> from equation (33) at
     * (<var>t</var><sub>2</sub>, <var>t</var>*).
     *
     * @param model how to compute moist air
     * @param dryBulb entering dry bulb, K
     * @param humidityRatio entering humidity ratio, kg/kg
     * @param effectiveness approach to the wet bulb, in [0, 1]
     * @param pressure air pressure, Pa
     * @return the leaving state, never fog
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the wet
     *     bulb lies below 0 degC: the water would freeze
     */
    public static AirPoint evaporative(
            AirModel model,
            double dryBulb,
            double humidityRatio,
            double effectiveness,
            double pressure) {
        Range.require("effectiveness", effectiveness, 0, 1, "(ratio)");
        double wetBulb = model.wetBulb(dryBulb, humidityRatio, pressure);
        if (wetBulb < Domain.ICE_POINT) {
            throw new IllegalArgumentException(
                    "wet bulb is "
                            + wetBulb
                            + " K, but must be at least "
                            + Domain.ICE_POINT
                            + " K for evaporative cooling: the water would freeze");
        }
        if (effectiveness == 0) {
            return new AirPoint(dryBulb, humidityRatio, 0, 0);
        }
        double leaving =
                effectiveness == 1 ? wetBulb : dryBulb - effectiveness * (dryBulb - wetBulb);
        return new AirPoint(
                leaving, model.humidityRatioFromWetBulb(leaving, wetBulb, pressure), 0, 0);
    }
}
