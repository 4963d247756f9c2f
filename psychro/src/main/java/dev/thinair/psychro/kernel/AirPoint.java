package dev.thinair.psychro.kernel;

/**
 * Where a process leaves the air: a single-phase state, or saturated air with fog in it.
 *
 * @param dryBulb dry bulb, K; in fog the temperature of air and droplets alike
 * @param humidityRatio water vapor, kg per kg of dry air
 * @param liquid liquid droplets, kg per kg of dry air; 0 without fog
 * @param ice ice crystals, kg per kg of dry air; 0 without ice fog
 */
public record AirPoint(double dryBulb, double humidityRatio, double liquid, double ice) {

    /**
     * Whether water has condensed in the air.
     *
     * @return true if there is liquid or ice
     */
    public boolean isFog() {
        return liquid > 0 || ice > 0;
    }

    /**
     * The state of air that holds a given enthalpy and a given amount of water: the single phase
     * where it is not supersaturated, else saturated air in equilibrium with droplets (from 0 degC
     * up), ice crystals (below), or both at exactly 0 degC.
     *
     * <p>Equation in the fog: <var>h</var> = <var>h</var>(<var>T</var>, <var>W</var><sub>s</sub>) +
     * (<var>w</var> - <var>W</var><sub>s</sub>) <var>h</var><sub>w</sub>(<var>T</var>), solved for
     * <var>T</var> to 1e-13 K. Source: energy balance with ASHRAE Handbook - Fundamentals 2021
     * (SI), chapter 1, equations (21), (30), (32).
     *
     * @param model how to compute moist air
     * @param enthalpy specific enthalpy with all water in it, J/kg of dry air
     * @param water vapor and condensate together, kg/kg of dry air, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return the state
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the state
     *     falls outside the model's domain
     */
    public static AirPoint of(AirModel model, double enthalpy, double water, double pressure) {
        Domain.humidityRatio(water);
        Domain.pressure(pressure);
        double single = model.dryBulbFromEnthalpy(enthalpy, water, pressure);
        if (model.relativeHumidity(single, water, pressure) <= 1 + SATURATION_ROUNDING) {
            return new AirPoint(single, water, 0, 0);
        }
        double dewPoint = model.dewPoint(water, pressure);
        double justBelow = Math.nextDown(Domain.ICE_POINT);
        if (dewPoint >= Domain.ICE_POINT
                && fogExcess(model, Domain.ICE_POINT, enthalpy, water, pressure) <= 0) {
            return fog(
                    model, Math.max(single, Domain.ICE_POINT), dewPoint, enthalpy, water, pressure);
        }
        if (dewPoint < Domain.ICE_POINT
                || fogExcess(model, justBelow, enthalpy, water, pressure) >= 0) {
            return fog(model, single, Math.min(dewPoint, justBelow), enthalpy, water, pressure);
        }
        double saturated = model.saturationHumidityRatio(Domain.ICE_POINT, pressure);
        double condensed = water - saturated;
        double liquid = model.liquidEnthalpy(Domain.ICE_POINT);
        double ice = model.iceEnthalpy(Domain.ICE_POINT);
        double mean =
                (enthalpy - model.enthalpy(Domain.ICE_POINT, saturated, pressure)) / condensed;
        double frozen = (liquid - mean) / (liquid - ice);
        return new AirPoint(
                Domain.ICE_POINT, saturated, condensed * (1 - frozen), condensed * frozen);
    }

    private static final double SATURATION_ROUNDING = 1e-12;

    private static AirPoint fog(
            AirModel model,
            double low,
            double high,
            double enthalpy,
            double water,
            double pressure) {
        double t =
                Roots.find(
                        "temperature of fog",
                        x -> fogExcess(model, x, enthalpy, water, pressure),
                        low,
                        high,
                        1e-13);
        double saturated = Math.min(model.saturationHumidityRatio(t, pressure), water);
        boolean liquid = t >= Domain.ICE_POINT;
        return new AirPoint(
                t, saturated, liquid ? water - saturated : 0, liquid ? 0 : water - saturated);
    }

    private static double fogExcess(
            AirModel model, double t, double enthalpy, double water, double pressure) {
        double saturated = model.saturationHumidityRatio(t, pressure);
        double condensate = t >= Domain.ICE_POINT ? model.liquidEnthalpy(t) : model.iceEnthalpy(t);
        return model.enthalpy(t, saturated, pressure)
                + (water - saturated) * model.condensateEnthalpy(t)
                - enthalpy;
    }
}
