package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** Pressure drops that are not purely quadratic: filters, coils, grilles. */
public final class FaceLoss {

    private static final double[] COIL_VELOCITY = {400 * 0.00508, 500 * 0.00508, 700 * 0.00508};
    private static final double[] COIL_DROP = {
        0.07 * 249.08891, 0.10 * 249.08891, 0.17 * 249.08891
    };

    private FaceLoss() {}

    /**
     * Air pressure drop of one published dry coil: one row, eight fins per inch.
     *
     * <p>Read between the catalogue's points as a power of velocity. A wet or a deeper coil loses
     * more: this is an example of the law, not a rating.
     *
     * <p>Source: coil catalogue HCL03, p. 40, type 8 (Heatcraft; seen for 400, 500 and 700 ft/min,
     * printed to 0.01 in.).
     *
     * @param velocity face velocity, m/s, in [2.032, 3.556] (400 to 700 ft/min)
     * @return Pa, to the half hundredth of an inch that is printed
     * @throws IllegalArgumentException if the velocity is NaN or outside the catalogue
     */
    public static double dryCoilOneRowEightFins(double velocity) {
        Range.require("face velocity", velocity, COIL_VELOCITY[0], COIL_VELOCITY[2], "m/s");
        int i = velocity <= COIL_VELOCITY[1] ? 0 : 1;
        double n =
                Math.log(COIL_DROP[i + 1] / COIL_DROP[i])
                        / Math.log(COIL_VELOCITY[i + 1] / COIL_VELOCITY[i]);
        return COIL_DROP[i] * Math.pow(velocity / COIL_VELOCITY[i], n);
    }

    /**
     * Exponent of the drop of that coil against face velocity, by {@link #exponent}.
     *
     * @return about 1.6
     */
    public static double dryCoilOneRowEightFinsExponent() {
        return exponent(COIL_VELOCITY, COIL_DROP);
    }

    /**
     * Pressure drop of a filter.
     *
     * <p>Formula: {@code a V + b (rho/rho0) V^2}: a viscous part that does not know the density and
     * an inertial part that does. Scaling the whole drop with density is wrong.
     *
     * <p>Source: Darcy and Forchheimer.
     *
     * @param viscous a, Pa s/m, at least 0
     * @param inertial b at the reference density, Pa s2/m2, at least 0
     * @param velocity face velocity, m/s, in [0, 50]
     * @param density kg/m3
     * @param referenceDensity density to which b belongs, kg/m3
     * @return Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double darcyForchheimer(
            double viscous,
            double inertial,
            double velocity,
            double density,
            double referenceDensity) {
        Range.require("viscous coefficient of filter", viscous, 0, 1e5, "Pa s/m");
        Range.require("inertial coefficient of filter", inertial, 0, 1e5, "Pa s2/m2");
        Range.require("face velocity", velocity, 0, 50, "m/s");
        Range.require("air density", density, 0.1, 10, "kg/m3");
        Range.require("reference density", referenceDensity, 0.1, 10, "kg/m3");
        return (viscous + inertial * density / referenceDensity * velocity) * velocity;
    }

    /**
     * Exponent n of a pressure drop {@code dp = k V^n}, by least squares in logarithms.
     *
     * @param velocity face velocities, above 0, at least two different ones; any unit
     * @param drop pressure drops at those velocities, above 0; any unit
     * @return n
     * @throws IllegalArgumentException if the arrays differ in length, hold fewer than two
     *     different velocities, or hold a number that is not above 0
     */
    public static double exponent(double[] velocity, double[] drop) {
        if (velocity.length != drop.length) {
            throw new IllegalArgumentException(
                    velocity.length + " velocities, but " + drop.length + " pressure drops");
        }
        double n = velocity.length;
        double sx = 0;
        double sy = 0;
        for (int i = 0; i < velocity.length; i++) {
            Range.requireAbove("face velocity", velocity[i], 0, "");
            Range.requireAbove("pressure drop", drop[i], 0, "");
            sx += Math.log(velocity[i]);
            sy += Math.log(drop[i]);
        }
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < velocity.length; i++) {
            double dx = Math.log(velocity[i]) - sx / n;
            sxx += dx * dx;
            sxy += dx * (Math.log(drop[i]) - sy / n);
        }
        if (!(sxx > 1e-12)) {
            throw new IllegalArgumentException(
                    "an exponent needs two different face velocities or more");
        }
        return sxy / sxx;
    }

    /**
     * Pressure drop at another face velocity.
     *
     * <p>Formula: {@code dp0 (V/V0)^n}.
     *
     * @param referenceDrop dp0, Pa, at least 0
     * @param referenceVelocity V0, m/s, above 0
     * @param velocity V, m/s, in [0, 50]
     * @param exponent n, in [1, 2]
     * @return Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double powerLaw(
            double referenceDrop, double referenceVelocity, double velocity, double exponent) {
        Range.require("reference pressure drop", referenceDrop, 0, 10_000, "Pa");
        Range.requireAbove("reference face velocity", referenceVelocity, 0, "m/s");
        Range.require("face velocity", velocity, 0, 50, "m/s");
        Range.require("exponent of pressure drop", exponent, 1, 2, "");
        return referenceDrop * Math.pow(velocity / referenceVelocity, exponent);
    }

    /**
     * Velocity through the free area of a grille or register.
     *
     * <p>Formula: {@code Q/(A phi)}. The free area phi of stamped faces is 70 to 75 per cent
     * (common practice, no source).
     *
     * @param flow Q, m3/s, in [0, 100]
     * @param faceArea A, m2, above 0
     * @param freeAreaFraction phi, in (0, 1]
     * @return m/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double freeAreaVelocity(double flow, double faceArea, double freeAreaFraction) {
        Range.require("airflow", flow, 0, 100, "m3/s");
        Range.requireAbove("face area", faceArea, 0, "m2");
        Range.requireAbove("free area fraction", freeAreaFraction, 0, "");
        Range.require("free area fraction", freeAreaFraction, 0, 1, "");
        return flow / (faceArea * freeAreaFraction);
    }
}
