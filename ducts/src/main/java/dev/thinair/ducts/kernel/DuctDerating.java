package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * What one round duct carries in air of another density, on three bases that the trade mixes up.
 * Mass, and heat at the same temperature difference, is each time the volume ratio times the
 * density ratio.
 */
public final class DuctDerating {

    private DuctDerating() {}

    /**
     * Volume flow at the same pressure drop over that with standard air.
     *
     * <p>Formula: the flow whose Darcy-Weisbach loss with Colebrook-White is that of the given flow
     * with standard air.
     *
     * @param flow volume flow with standard air, m3/s, above 0
     * @param diameter of the duct, m
     * @param roughness absolute roughness, m
     * @param densityRatio density over that of standard air, in [0.3, 1.5]
     * @param viscosity dynamic viscosity, Pa s, the same for both
     * @return ratio, above 1 in thinner air
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double samePressureDrop(
            double flow, double diameter, double roughness, double densityRatio, double viscosity) {
        requireRatio(densityRatio);
        double velocity = VelocityPressure.meanVelocity(flow, DuctGeometry.roundArea(diameter));
        double rate =
                Friction.lossPerLength(
                        velocity, diameter, roughness, StandardAir.DENSITY, viscosity);
        return FrictionChart.flow(
                        diameter, rate, roughness, densityRatio * StandardAir.DENSITY, viscosity)
                / flow;
    }

    /**
     * Volume flow with the same blower at the same speed over that with standard air, where
     * friction is all the loss there is.
     *
     * <p>Model: a blower whose rise with standard air is {@code p0 (2 - (Q/Q0)^2)}, with p0 the
     * loss of the duct at the given flow Q0; it is multiplied by the density ratio (fan laws). The
     * duct's length cancels. A constant friction factor would give exactly 1: the Reynolds number,
     * which falls with density, makes it a little less.
     *
     * @param flow volume flow with standard air, m3/s, above 0
     * @param diameter of the duct, m
     * @param roughness absolute roughness, m
     * @param densityRatio density over that of standard air, in [0.3, 1.5]
     * @param viscosity dynamic viscosity, Pa s, the same for both
     * @return ratio, a little below 1 in thinner air
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double sameBlower(
            double flow, double diameter, double roughness, double densityRatio, double viscosity) {
        requireRatio(densityRatio);
        double velocity = VelocityPressure.meanVelocity(flow, DuctGeometry.roundArea(diameter));
        double rate =
                Friction.lossPerLength(
                        velocity, diameter, roughness, StandardAir.DENSITY, viscosity);
        return Root.find(
                "airflow of the same blower",
                x ->
                        densityRatio * rate * (2 - x * x)
                                - Friction.lossPerLength(
                                        x * velocity,
                                        diameter,
                                        roughness,
                                        densityRatio * StandardAir.DENSITY,
                                        viscosity),
                0.5,
                1.4);
    }

    private static void requireRatio(double densityRatio) {
        Range.require("density ratio", densityRatio, 0.3, 1.5, "");
    }
}
