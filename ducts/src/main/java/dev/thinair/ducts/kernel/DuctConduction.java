package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Heat conducted through duct walls, and the air temperature along the way.
 *
 * <p>Source: energy balance of air in a duct of constant wall conductance, whose solution is
 * exponential along the way; no approximation besides.
 */
public final class DuctConduction {

    private DuctConduction() {}

    /**
     * Share of a temperature difference to the surroundings that is left at the end of a duct.
     *
     * <p>Formula: {@code B = exp(-A U/(m cp))}. It falls as the air gets thin, because m does.
     *
     * <p>Source: energy balance; the conduction fraction of ANSI/ASHRAE 152 (from memory).
     *
     * @param surface duct surface A, m2, at least 0
     * @param transmittance U, W/(m2 K), at least 0
     * @param massFlow m, kg/s, above 0
     * @param specificHeat cp, J/(kg K), above 0
     * @return fraction, in (0, 1]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double conductionFraction(
            double surface, double transmittance, double massFlow, double specificHeat) {
        Range.require("duct surface", surface, 0, 1e5, "m2");
        Range.require("thermal transmittance of duct", transmittance, 0, 100, "W/(m2 K)");
        Range.requireAbove("mass flow", massFlow, 0, "kg/s");
        Range.require("specific heat", specificHeat, 500, 3_000, "J/(kg K)");
        return Math.exp(-surface * transmittance / (massFlow * specificHeat));
    }

    /**
     * Air temperature at the end of a duct.
     *
     * <p>Formula: {@code t_out = t_a + (t_in - t_a) B}.
     *
     * @param entering air temperature at the start, K
     * @param ambient temperature around the duct, K
     * @param fraction conduction fraction B, in [0, 1]
     * @return K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leavingTemperature(double entering, double ambient, double fraction) {
        requireTemperature("entering air temperature", entering);
        requireTemperature("temperature around the duct", ambient);
        Range.require("conduction fraction", fraction, 0, 1, "");
        return ambient + (entering - ambient) * fraction;
    }

    /**
     * Entering temperature that gives a wanted temperature at the end of a duct: the inverse of
     * {@link #leavingTemperature}.
     *
     * @param leaving wanted air temperature at the end, K
     * @param ambient temperature around the duct, K
     * @param fraction conduction fraction B, in (0, 1]
     * @return K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double enteringTemperature(double leaving, double ambient, double fraction) {
        requireTemperature("leaving air temperature", leaving);
        requireTemperature("temperature around the duct", ambient);
        Range.require("conduction fraction", fraction, 1e-6, 1, "");
        return ambient + (leaving - ambient) / fraction;
    }

    /**
     * Heat that the air takes up along a duct.
     *
     * <p>Formula: {@code q = m cp (t_out - t_in)}.
     *
     * @param entering air temperature at the start, K
     * @param leaving air temperature at the end, K
     * @param massFlow kg/s, above 0
     * @param specificHeat J/(kg K)
     * @return W, positive when the air warms
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double heatGain(
            double entering, double leaving, double massFlow, double specificHeat) {
        requireTemperature("entering air temperature", entering);
        requireTemperature("leaving air temperature", leaving);
        Range.requireAbove("mass flow", massFlow, 0, "kg/s");
        Range.require("specific heat", specificHeat, 500, 3_000, "J/(kg K)");
        return massFlow * specificHeat * (leaving - entering);
    }

    private static void requireTemperature(String name, double kelvins) {
        Range.require(name, kelvins, 150, 600, "K");
    }
}
