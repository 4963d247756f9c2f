package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Steady state of a gas furnace.
 *
 * <p>Source: energy balance; the altitude factor is that of a code or a maker, given by the caller.
 */
public final class FurnaceModel {

    private FurnaceModel() {}

    /**
     * Heat output, <code>rated input x altitude factor x efficiency</code>.
     *
     * @param ratedInput rated gas input, W, above 0
     * @param altitudeFactor permitted over rated input at the site, in [0.3, 1]
     * @param efficiency steady efficiency, heat to the air over input, in [0.3, 1]
     * @return output, W
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double output(double ratedInput, double altitudeFactor, double efficiency) {
        Range.requireAbove("rated furnace input", ratedInput, 0, "W");
        Range.require("altitude factor of the furnace", altitudeFactor, 0.3, 1, "1");
        Range.require("furnace efficiency", efficiency, 0.3, 1, "1");
        return ratedInput * altitudeFactor * efficiency;
    }

    /**
     * Temperature rise of the air through the furnace, <code>Q / (m cp)</code>.
     *
     * @param output heat output, W, not negative
     * @param dryAirMassFlow dry-air mass flow, kg/s, above 0
     * @param specificHeat specific heat per kg of dry air, J/(kg K), in [1000, 1200]
     * @return rise, K
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double temperatureRise(
            double output, double dryAirMassFlow, double specificHeat) {
        Range.require("furnace output", output, 0, 1e6, "W");
        Range.requireAbove("dry-air mass flow", dryAirMassFlow, 0, "kg/s");
        Range.require("specific heat", specificHeat, 1000, 1200, "J/(kg K)");
        return output / (dryAirMassFlow * specificHeat);
    }
}
