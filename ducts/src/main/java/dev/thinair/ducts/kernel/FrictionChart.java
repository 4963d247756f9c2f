package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * The friction chart turned round: which flow a duct carries at a friction rate, which diameter a
 * flow needs, and the chart's published corrections.
 *
 * <p>The printed chart rests on standard air, a roughness of 0.0003 ft and a kinematic viscosity of
 * 1.507e-5 m2/s ({@code Re = 8.56 D V} in inches and ft/min; ASHRAE Handbook - Fundamentals,
 * chapter Duct Design). Here density, viscosity and roughness are free.
 */
public final class FrictionChart {

    private FrictionChart() {}

    /**
     * Volume flow of a round duct at a friction rate.
     *
     * <p>In turbulent flow Colebrook-White gives it without iteration, since {@code Re sqrt(f) =
     * D/nu sqrt(2 D (dp/L)/rho)} is known: {@code V = -2 sqrt(2 D (dp/L)/rho) log10(eps/D/3.7 +
     * 2.51/(Re sqrt f))}. Below Re 4,000 the law of {@link Friction#darcy} is inverted by
     * bracketing.
     *
     * @param diameter m
     * @param frictionRate dp/L, Pa/m, in [1e-6, 1000]
     * @param roughness absolute roughness, m, at most 5 % of the diameter
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @return m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double flow(
            double diameter,
            double frictionRate,
            double roughness,
            double density,
            double viscosity) {
        Friction.requireDiameter(diameter);
        requireRate(frictionRate);
        Friction.requireAir(density, viscosity);
        double relative = roughness / diameter;
        Range.require("relative roughness", relative, 0, 0.05, "");
        double u = Math.sqrt(2 * diameter * frictionRate / density);
        double reRoot = density * diameter * u / viscosity;
        double velocity = -2 * u * Math.log10(relative / 3.7 + 2.51 / reRoot);
        if (!(density * velocity * diameter / viscosity >= Friction.TURBULENT_LIMIT)) {
            double top = Friction.TURBULENT_LIMIT * viscosity / (density * diameter);
            velocity =
                    Root.find(
                            "velocity",
                            v ->
                                    v == 0
                                            ? -frictionRate
                                            : Friction.lossPerLength(
                                                            v, diameter, roughness, density,
                                                            viscosity)
                                                    - frictionRate,
                            0,
                            top * (1 + 1e-9));
        }
        return velocity * DuctGeometry.roundArea(diameter);
    }

    /**
     * Exact diameter of the round duct that carries a flow at a friction rate.
     *
     * @param flow volume flow, m3/s, in [1e-5, 1000]
     * @param frictionRate dp/L, Pa/m, in [1e-6, 1000]
     * @param roughness absolute roughness, m, in [0, 0.01]
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @return m
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or the diameter
     *     would lie outside [5 mm, 20 m] or be so small that the roughness exceeds 5 % of it
     */
    public static double diameter(
            double flow, double frictionRate, double roughness, double density, double viscosity) {
        Range.require("airflow", flow, 1e-5, 1_000, "m3/s");
        requireRate(frictionRate);
        Friction.requireAir(density, viscosity);
        Range.require("roughness", roughness, 0, 0.01, "m");
        double smallest = Math.max(0.005, roughness / 0.05 * (1 + 1e-12));
        // Velocity must stay below the 100 m/s that the loss formula is meant for.
        smallest = Math.max(smallest, Math.sqrt(flow / 99 * 4 / Math.PI));
        double lnRate = Math.log(frictionRate);
        double ln =
                Root.find(
                        "duct diameter",
                        x -> {
                            double d = Math.exp(x);
                            double v = flow / (Math.PI / 4 * d * d);
                            return Math.log(
                                            Friction.lossPerLength(
                                                    v, d, roughness, density, viscosity))
                                    - lnRate;
                        },
                        Math.log(smallest) + 1e-12,
                        Math.log(20) - 1e-12);
        return Math.exp(ln);
    }

    /**
     * Published correction of chart friction for elevation.
     *
     * <p>Formula: {@code K_E = (1 - 6.8754e-6 z)^4.73}, z in ft. A shortcut at the same volume
     * flow; the library itself computes with density.
     *
     * <p>Source: SMACNA and ASHRAE, duct friction corrections (seen in a published HVAC design
     * manual).
     *
     * @param elevation m, in [-500, 6000]
     * @return factor on the friction rate
     * @throws IllegalArgumentException if the elevation is NaN or outside its range
     */
    public static double elevationCorrection(double elevation) {
        Range.require("elevation", elevation, -500, 6_000, "m");
        return Math.pow(1 - 6.8754e-6 * elevation / 0.3048, 4.73);
    }

    /**
     * Published correction of chart friction for temperature.
     *
     * <p>Formula: {@code K_T = (530/(t + 460))^0.825}, t in F.
     *
     * <p>Source: SMACNA and ASHRAE, duct friction corrections (seen in a published HVAC design
     * manual).
     *
     * @param temperature K, in [230, 500]
     * @return factor on the friction rate
     * @throws IllegalArgumentException if the temperature is NaN or outside its range
     */
    public static double temperatureCorrection(double temperature) {
        Range.require("air temperature", temperature, 230, 500, "K");
        double fahrenheit = temperature * 1.8 - 459.67;
        return Math.pow(530 / (fahrenheit + 460), 0.825);
    }

    /**
     * Equivalent length of a fitting.
     *
     * <p>Formula: {@code L = C D/f}. It depends on size and friction factor, which a table of fixed
     * lengths does not.
     *
     * @param lossCoefficient C, in [0, 1000]
     * @param diameter m
     * @param frictionFactor Darcy friction factor, above 0
     * @return m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double equivalentLength(
            double lossCoefficient, double diameter, double frictionFactor) {
        Range.require("loss coefficient", lossCoefficient, 0, 1_000, "");
        Friction.requireDiameter(diameter);
        Range.requireAbove("friction factor", frictionFactor, 0, "");
        return lossCoefficient * diameter / frictionFactor;
    }

    /**
     * Loss coefficient of an equivalent length: the inverse of {@link #equivalentLength}.
     *
     * <p>Formula: {@code C = f L/D}.
     *
     * @param length equivalent length L, m, in [0, 1000]
     * @param diameter m
     * @param frictionFactor Darcy friction factor, above 0
     * @return C on the velocity pressure in the duct
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double lossCoefficient(double length, double diameter, double frictionFactor) {
        Range.require("equivalent length", length, 0, 1_000, "m");
        Friction.requireDiameter(diameter);
        Range.requireAbove("friction factor", frictionFactor, 0, "");
        return frictionFactor * length / diameter;
    }

    /**
     * Equivalent length of a fitting at a reference velocity and friction rate, as trade tables are
     * made.
     *
     * <p>Formula: {@code L = C p_v/(dp/L)}.
     *
     * <p>Source: ANSI/ACCA 1 Manual D rests its tables on 900 ft/min (supply), 700 ft/min (return)
     * and 0.08 in. per 100 ft (from memory).
     *
     * @param lossCoefficient C, in [0, 1000]
     * @param velocityPressure velocity pressure at the reference velocity, Pa
     * @param frictionRate reference friction rate, Pa/m
     * @return m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double equivalentLengthAt(
            double lossCoefficient, double velocityPressure, double frictionRate) {
        Range.require("loss coefficient", lossCoefficient, 0, 1_000, "");
        Range.require("velocity pressure", velocityPressure, 0, 10_000, "Pa");
        requireRate(frictionRate);
        return lossCoefficient * velocityPressure / frictionRate;
    }

    /**
     * Design friction rate of the trade method.
     *
     * <p>Formula: available static pressure over total effective length.
     *
     * <p>Source: ANSI/ACCA 1 Manual D (from memory).
     *
     * @param availableStatic Pa, above 0
     * @param totalEffectiveLength straight and equivalent lengths of the longest supply and return
     *     together, m, above 0
     * @return Pa/m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double designFrictionRate(double availableStatic, double totalEffectiveLength) {
        Range.requireAbove("available static pressure", availableStatic, 0, "Pa");
        Range.requireAbove("total effective length", totalEffectiveLength, 0, "m");
        return availableStatic / totalEffectiveLength;
    }

    /**
     * Diameter of a downstream section whose friction is just paid for by static regain.
     *
     * <p>Formula: {@code R rho/2 (V1^2 - V2^2) = f L/D rho V2^2/2}, solved for the downstream D.
     *
     * @param upstreamFlow m3/s
     * @param upstreamDiameter m
     * @param downstreamFlow m3/s
     * @param length downstream length, m, above 0
     * @param regainFactor R, in (0, 1]
     * @param roughness absolute roughness, m
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @return downstream diameter, m
     * @throws IllegalArgumentException if an argument is out of range, or no diameter up to twice
     *     the upstream one does it
     */
    public static double staticRegainDiameter(
            double upstreamFlow,
            double upstreamDiameter,
            double downstreamFlow,
            double length,
            double regainFactor,
            double roughness,
            double density,
            double viscosity) {
        Range.require("upstream airflow", upstreamFlow, 1e-4, 1_000, "m3/s");
        Friction.requireDiameter(upstreamDiameter);
        Range.require("downstream airflow", downstreamFlow, 1e-4, upstreamFlow, "m3/s");
        Range.require("duct length", length, 1e-3, 1_000, "m");
        Range.require("regain factor", regainFactor, 1e-3, 1, "");
        Friction.requireAir(density, viscosity);
        double v1 = upstreamFlow / DuctGeometry.roundArea(upstreamDiameter);
        double smallest =
                Math.max(
                        roughness / 0.05 * (1 + 1e-12),
                        Math.sqrt(downstreamFlow / 99 * 4 / Math.PI));
        return Root.find(
                "downstream diameter",
                d -> {
                    double v2 = downstreamFlow / (Math.PI / 4 * d * d);
                    return regainFactor * density / 2 * (v1 * v1 - v2 * v2)
                            - length * Friction.lossPerLength(v2, d, roughness, density, viscosity);
                },
                smallest,
                2 * upstreamDiameter);
    }

    private static void requireRate(double rate) {
        Range.require("friction rate", rate, 1e-6, 1_000, "Pa/m");
    }
}
