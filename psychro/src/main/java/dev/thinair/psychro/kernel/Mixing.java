package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Adiabatic mixing of two air streams at one pressure.
 *
 * <p>Balances: <var>m</var><sub>3</sub> = <var>m</var><sub>1</sub> + <var>m</var><sub>2</sub> (dry
 * air), <var>m</var><sub>3</sub> <var>W</var><sub>3</sub> = <var>m</var><sub>1</sub>
 * <var>W</var><sub>1</sub> + <var>m</var><sub>2</sub> <var>W</var><sub>2</sub>, and the same for
 * <var>h</var>. The mixture lies on the straight line between the two states in the (<var>h</var>,
 * <var>W</var>) plane, not in (<var>t</var>, <var>W</var>). Two unsaturated streams can mix into
 * fog; {@link #adiabatic} reports it.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equation (44).
 */
public final class Mixing {

    private Mixing() {}

    /**
     * Mean of a per-mass property, weighted by dry-air mass: humidity ratio or enthalpy.
     *
     * @param massFlow1 dry air of the first stream, kg/s (or kg), 0 or more
     * @param value1 its humidity ratio or specific enthalpy
     * @param massFlow2 dry air of the second stream, in the same unit, 0 or more
     * @param value2 its humidity ratio or specific enthalpy
     * @return the mixture's value; exactly {@code value1} if the two are equal
     * @throws IllegalArgumentException if a mass flow is negative, NaN or infinite, or both are 0
     */
    public static double mean(double massFlow1, double value1, double massFlow2, double value2) {
        Range.require("dry-air mass flow 1", massFlow1, 0, Double.MAX_VALUE, "kg/s");
        Range.require("dry-air mass flow 2", massFlow2, 0, Double.MAX_VALUE, "kg/s");
        double sum = massFlow1 + massFlow2;
        Range.requireAbove("sum of the dry-air mass flows", sum, 0, "kg/s");
        return value1 + massFlow2 / sum * (value2 - value1);
    }

    /**
     * State of the mixture of two streams.
     *
     * @param model how to compute moist air
     * @param massFlow1 dry air of the first stream, kg/s (or kg), 0 or more
     * @param dryBulb1 its dry bulb, K
     * @param humidityRatio1 its humidity ratio, kg/kg
     * @param massFlow2 dry air of the second stream, in the same unit, 0 or more
     * @param dryBulb2 its dry bulb, K
     * @param humidityRatio2 its humidity ratio, kg/kg
     * @param pressure air pressure of both, Pa
     * @return the mixture, with its fog if it has any
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or both mass
     *     flows are 0
     */
    public static AirPoint adiabatic(
            AirModel model,
            double massFlow1,
            double dryBulb1,
            double humidityRatio1,
            double massFlow2,
            double dryBulb2,
            double humidityRatio2,
            double pressure) {
        return AirPoint.of(
                model,
                mean(
                        massFlow1,
                        model.enthalpy(dryBulb1, humidityRatio1, pressure),
                        massFlow2,
                        model.enthalpy(dryBulb2, humidityRatio2, pressure)),
                mean(massFlow1, humidityRatio1, massFlow2, humidityRatio2),
                pressure);
    }
}
