package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * The line along which supply air moves in a space that adds heat and moisture to it.
 *
 * <p>Formula: &#916;<var>h</var>/&#916;<var>W</var> = (<var>q</var><sub>s</sub> +
 * <var>m</var><sub>w</sub> <var>h</var><sub>w</sub>) / <var>m</var><sub>w</sub>. Source: ASHRAE
 * Handbook - Fundamentals 2021 (SI), chapter 1, section on typical processes, example 6.
 */
public final class ConditionLine {

    private ConditionLine() {}

    /**
     * Slope of the line.
     *
     * @param sensibleGain sensible heat gained by the space, W
     * @param moistureGain water vapor gained by the space, kg/s, not 0
     * @param vaporEnthalpy specific enthalpy of that vapor, J/kg
     * @return &#916;<var>h</var>/&#916;<var>W</var>, J/kg
     * @throws IllegalArgumentException if an argument is NaN or infinite, or if there is no
     *     moisture gain (the line is then one of constant humidity ratio)
     */
    public static double slope(double sensibleGain, double moistureGain, double vaporEnthalpy) {
        checkGains(sensibleGain, moistureGain, vaporEnthalpy);
        if (moistureGain == 0) {
            throw new IllegalArgumentException(
                    "moisture gain is 0.0 kg/s, but must not be 0: the line keeps its humidity"
                            + " ratio");
        }
        return sensibleGain / moistureGain + vaporEnthalpy;
    }

    /**
     * Dry-air mass flow that carries the gains away when it is supplied at a given dry bulb and
     * leaves in the space's state.
     *
     * <p>Both balances at once: <var>m</var> (<var>W</var><sub>2</sub> - <var>W</var><sub>1</sub>)
     * = <var>m</var><sub>w</sub>, <var>m</var> (<var>h</var><sub>2</sub> -
     * <var>h</var><sub>1</sub>) = <var>q</var><sub>s</sub> + <var>m</var><sub>w</sub>
     * <var>h</var><sub>w</sub>, with the ideal mixture's enthalpy; the supply humidity ratio is
     * <var>W</var><sub>2</sub> - <var>m</var><sub>w</sub>/<var>m</var>.
     *
     * @param spaceDryBulb dry bulb of the space, K
     * @param spaceHumidityRatio humidity ratio of the space, kg/kg
     * @param supplyDryBulb dry bulb of the supply air, K
     * @param sensibleGain sensible heat gained by the space, W
     * @param moistureGain water vapor gained by the space, kg/s
     * @param vaporEnthalpy specific enthalpy of that vapor, J/kg
     * @return dry-air mass flow, kg/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if no
     *     positive mass flow with a supply humidity ratio of 0 or more closes the balances
     */
    public static double dryAirFlow(
            double spaceDryBulb,
            double spaceHumidityRatio,
            double supplyDryBulb,
            double sensibleGain,
            double moistureGain,
            double vaporEnthalpy) {
        checkGains(sensibleGain, moistureGain, vaporEnthalpy);
        double space = IdealMoistAir.enthalpy(spaceDryBulb, spaceHumidityRatio);
        double cooler = IdealMoistAir.enthalpy(supplyDryBulb, spaceHumidityRatio);
        double vaporAtSupply =
                IdealMoistAir.enthalpy(supplyDryBulb, 1) - IdealMoistAir.enthalpy(supplyDryBulb, 0);
        // h1 = h(t1, W2) - (m_w/m)(2501 + 1.86 t1): the balance is linear in m.
        double flow =
                (sensibleGain + moistureGain * (vaporEnthalpy - vaporAtSupply)) / (space - cooler);
        if (!(flow > 0 && flow < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "supply dry bulb is "
                            + supplyDryBulb
                            + " K, but no air flow at that temperature removes a sensible gain of "
                            + sensibleGain
                            + " W from a space at "
                            + spaceDryBulb
                            + " K");
        }
        double supplyRatio = spaceHumidityRatio - moistureGain / flow;
        Range.require(
                "humidity ratio of the supply air",
                supplyRatio,
                0,
                Domain.HIGHEST_HUMIDITY_RATIO,
                "kg/kg");
        return flow;
    }

    private static void checkGains(double sensibleGain, double moistureGain, double vaporEnthalpy) {
        Range.require("sensible gain", sensibleGain, -1e9, 1e9, "W");
        Range.require("moisture gain", moistureGain, -1e3, 1e3, "kg/s");
        Range.require("enthalpy of the vapor", vaporEnthalpy, -700_000, 4_000_000, "J/kg");
    }
}
