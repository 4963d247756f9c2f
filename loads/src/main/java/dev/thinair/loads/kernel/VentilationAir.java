package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Mechanical ventilation and what it does to infiltration and load.
 *
 * <p>Flows may be volumes or masses, as long as one sum holds one kind.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 17; ASHRAE Standard 62.2 for the
 * whole-house rate.
 */
public final class VentilationAir {

    private VentilationAir() {}

    /**
     * Whole-house ventilation rate: <code>0.15 Acf + 3.5 (Nbr + 1)</code> L/s.
     *
     * <p>Source: ASHRAE Standard 62.2 (editions from 2013) as in Fundamentals 2021 (SI), ch. 17;
     * editions to 2010 asked for 0.05 L/s a square metre. Local code decides.
     *
     * @param floorArea conditioned floor area, m2, in [0, 10000]
     * @param bedrooms number, at least 1, in [0, 100]
     * @return m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double wholeHouseRate(double floorArea, int bedrooms) {
        Range.require("floor area", floorArea, 0, 10_000, "m2");
        Range.require("bedrooms", bedrooms, 0, 100, "-");
        return (0.15 * floorArea + 3.5 * (bedrooms + 1)) / 1_000;
    }

    /**
     * Outdoor air of infiltration and unbalanced fans together: <code>max(Qu, Qi + Qu/2)</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (14).
     *
     * @param infiltration Qi, any flow unit, at least 0
     * @param unbalanced Qu, excess of exhaust or of supply, same unit, at least 0
     * @return combined flow without balanced fans
     * @throws IllegalArgumentException if an argument is NaN, infinite or negative
     */
    public static double combined(double infiltration, double unbalanced) {
        Range.require("infiltration flow", infiltration, 0, Double.MAX_VALUE, "flow");
        Range.require("unbalanced ventilation flow", unbalanced, 0, Double.MAX_VALUE, "flow");
        return Math.max(unbalanced, infiltration + 0.5 * unbalanced);
    }

    /**
     * Infiltration and ventilation together: <code>max(Qu, Qi + Qu/2) + Qbal</code>.
     *
     * @param infiltration Qi, any flow unit, at least 0
     * @param unbalanced Qu, same unit, at least 0
     * @param balanced Qbal, same unit, at least 0
     * @return total outdoor air
     * @throws IllegalArgumentException if an argument is NaN, infinite or negative
     */
    public static double total(double infiltration, double unbalanced, double balanced) {
        Range.require("balanced ventilation flow", balanced, 0, Double.MAX_VALUE, "flow");
        return combined(infiltration, unbalanced) + balanced;
    }

    /**
     * Sensible heat of outdoor air: <code>Cs0 (p/p0) (Q - eps Qhr) dt</code> with the handbook's
     * sea-level factor Cs0 = 1230 J/(m3 K), scaled by pressure.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (15) and ch. 18 (factor at elevation). The
     * exact product of dry-air mass flow and enthalpy is what the house balance uses; this is the
     * hand method.
     *
     * @param flow Q, total outdoor air, actual m3/s, in [0, 100]
     * @param recoveredFlow Qhr, the part through heat recovery, m3/s, in [0, Q]
     * @param effectiveness eps, sensible effectiveness, in [0, 1]
     * @param temperatureDifference dt, K, in [-100, 100]
     * @param pressure p, Pa, in [30000, 110000]
     * @return W, of the sign of dt
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double sensible(
            double flow,
            double recoveredFlow,
            double effectiveness,
            double temperatureDifference,
            double pressure) {
        requireFlows(flow, recoveredFlow, effectiveness, pressure);
        Range.require("temperature difference", temperatureDifference, -100, 100, "K");
        return 1_230
                * (pressure / 101_325)
                * (flow - effectiveness * recoveredFlow)
                * temperatureDifference;
    }

    /**
     * Latent heat of outdoor air: <code>Cl0 (p/p0) (Q - eps Qhr) dW</code> with the handbook's
     * sea-level factor Cl0 = 3010 kJ/m3, scaled by pressure.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (16).
     *
     * @param flow Q, total outdoor air, actual m3/s, in [0, 100]
     * @param recoveredFlow Qhr, the part through energy recovery, m3/s, in [0, Q]
     * @param effectiveness eps, latent effectiveness, in [0, 1]
     * @param humidityRatioDifference dW, kg/kg, in [-0.1, 0.1]
     * @param pressure p, Pa, in [30000, 110000]
     * @return W, of the sign of dW
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double latent(
            double flow,
            double recoveredFlow,
            double effectiveness,
            double humidityRatioDifference,
            double pressure) {
        requireFlows(flow, recoveredFlow, effectiveness, pressure);
        Range.require("humidity ratio difference", humidityRatioDifference, -0.1, 0.1, "kg/kg");
        return 3_010_000
                * (pressure / 101_325)
                * (flow - effectiveness * recoveredFlow)
                * humidityRatioDifference;
    }

    /**
     * Temperature of an unconditioned space between house and outdoors: <code>
     * tb = (C Q to + sum(A U
     * t) + q)/(C Q + sum(A U))</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (5).
     *
     * @param airConductance C Q of its ventilation, W/K, at least 0
     * @param outdoorTemperature K
     * @param conductances A U to each neighbour, W/K, at least 0
     * @param temperatures of each neighbour, K
     * @param heat q released in the space, W
     * @return K
     * @throws IllegalArgumentException if lengths differ, a conductance is negative or NaN, or all
     *     are zero
     */
    public static double bufferTemperature(
            double airConductance,
            double outdoorTemperature,
            double[] conductances,
            double[] temperatures,
            double heat) {
        if (conductances.length != temperatures.length) {
            throw new IllegalArgumentException(
                    "number of temperatures is "
                            + temperatures.length
                            + ", but must be that of the conductances, "
                            + conductances.length);
        }
        Range.require("conductance of the ventilation", airConductance, 0, 1e9, "W/K");
        Range.require("outdoor temperature", outdoorTemperature, 180, 340, "K");
        Range.require("heat released in the space", heat, -1e9, 1e9, "W");
        double sum = airConductance;
        double weighted = airConductance * outdoorTemperature + heat;
        for (int i = 0; i < conductances.length; i++) {
            Range.require("conductance to a neighbour", conductances[i], 0, 1e9, "W/K");
            Range.require("temperature of a neighbour", temperatures[i], 180, 400, "K");
            sum += conductances[i];
            weighted += conductances[i] * temperatures[i];
        }
        Range.requireAbove("sum of conductances of the space", sum, 0, "W/K");
        return weighted / sum;
    }

    private static void requireFlows(
            double flow, double recoveredFlow, double effectiveness, double pressure) {
        Range.require("outdoor air flow", flow, 0, 100, "m3/s");
        Range.require("flow through heat recovery", recoveredFlow, 0, flow, "m3/s");
        Range.require("effectiveness", effectiveness, 0, 1, "-");
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
    }
}
