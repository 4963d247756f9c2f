package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Total-pressure loss of one duct with its fittings, the law that {@link Network} solves with.
 *
 * <p>Source: Darcy and Weisbach's equation and the definition of a loss coefficient; ASHRAE
 * Handbook - Fundamentals, chapter Duct Design.
 */
public final class DuctLoss {

    private DuctLoss() {}

    /**
     * Loss of a duct.
     *
     * <p>Formula: {@code (m f L/D_h + C) rho V^2/2} with f from {@link Friction#darcy}.
     *
     * @param flow volume flow, m3/s, in [0, 1000]
     * @param hydraulicDiameter m
     * @param area cross section, m2, above 0
     * @param length with equivalent lengths, m, at least 0
     * @param roughness absolute roughness, m, at most 5 % of the hydraulic diameter
     * @param lossCoefficient sum of C, in [0, 1e6]
     * @param frictionMultiplier m of compressed flexible duct, at least 0
     * @param density kg/m3
     * @param viscosity Pa s
     * @return Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double total(
            double flow,
            double hydraulicDiameter,
            double area,
            double length,
            double roughness,
            double lossCoefficient,
            double frictionMultiplier,
            double density,
            double viscosity) {
        Range.require("airflow", flow, 0, 1_000, "m3/s");
        Range.requireAbove("duct area", area, 0, "m2");
        Range.require("duct length", length, 0, 10_000, "m");
        Range.require("loss coefficient", lossCoefficient, 0, 1e6, "");
        Range.require("friction multiplier", frictionMultiplier, 0, 100, "");
        double v = flow / area;
        return frictionMultiplier
                        * length
                        * Friction.lossPerLength(
                                v, hydraulicDiameter, roughness, density, viscosity)
                + fitting(lossCoefficient, v, density);
    }

    /**
     * Loss of a fitting.
     *
     * <p>Formula: {@code C rho V^2/2}.
     *
     * @param lossCoefficient C on the velocity pressure of its reference section
     * @param velocity mean velocity there, m/s, in [0, 1000]
     * @param density kg/m3
     * @return Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double fitting(double lossCoefficient, double velocity, double density) {
        Range.require("loss coefficient", lossCoefficient, -1_000, 1e6, "");
        return lossCoefficient * VelocityPressure.pressure(velocity, density);
    }
}
