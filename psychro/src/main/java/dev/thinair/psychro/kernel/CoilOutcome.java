package dev.thinair.psychro.kernel;

/** What a cooling coil of given apparatus dew point and bypass factor does to the air. */
public sealed interface CoilOutcome {

    /**
     * The coil takes moisture out.
     *
     * @param dryBulb leaving dry bulb, K
     * @param humidityRatio leaving humidity ratio, kg/kg
     * @param enthalpy leaving specific enthalpy, J/kg of dry air
     */
    record Wet(double dryBulb, double humidityRatio, double enthalpy) implements CoilOutcome {}

    /**
     * The coil stays dry: the entering dew point is not above the surface temperature.
     *
     * @param dryBulb leaving dry bulb, K
     * @param humidityRatio leaving humidity ratio, the entering one, kg/kg
     * @param enthalpy leaving specific enthalpy, J/kg of dry air
     */
    record Dry(double dryBulb, double humidityRatio, double enthalpy) implements CoilOutcome {}

    /**
     * The bypass model has no answer here.
     *
     * @param reason why, in words
     */
    record NoState(String reason) implements CoilOutcome {}
}
