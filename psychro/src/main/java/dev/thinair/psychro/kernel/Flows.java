package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/** From the flow that is known to the dry-air mass flow that balances need. */
public final class Flows {

    private Flows() {}

    /**
     * Dry-air mass flow from volume flow: <var>m</var> = <var>V</var>/<var>v</var>.
     *
     * @param model how to compute moist air
     * @param dryBulb dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pressure air pressure, Pa
     * @param volumeFlow volume flow at that state, m3/s, above 0
     * @return dry-air mass flow, kg/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double dryAirFlowFromVolume(
            AirModel model,
            double dryBulb,
            double humidityRatio,
            double pressure,
            double volumeFlow) {
        Range.requireAbove("volume flow", volumeFlow, 0, "m3/s");
        return volumeFlow / model.specificVolume(dryBulb, humidityRatio, pressure);
    }

    /**
     * Dry-air mass flow from the moist air's mass flow: <var>m</var>/(1 + <var>W</var>).
     *
     * @param humidityRatio humidity ratio, kg/kg
     * @param massFlow mass flow of dry air and vapor, kg/s, above 0
     * @return dry-air mass flow, kg/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double dryAirFlowFromMass(double humidityRatio, double massFlow) {
        Domain.humidityRatio(humidityRatio);
        Range.requireAbove("moist-air mass flow", massFlow, 0, "kg/s");
        return massFlow / (1 + humidityRatio);
    }
}
