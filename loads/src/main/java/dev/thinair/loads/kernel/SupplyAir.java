package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Air that carries a room's sensible load at the density of the place.
 *
 * <p>{@code m = Q / ((1006 + 1860 W)(Troom - Tsupply))} with the specific heats of dry air and
 * vapour of ASHRAE Handbook, Fundamentals 2021, chapter 1; volume is mass times the specific volume
 * of the air where the flow is counted.
 */
public final class SupplyAir {
    private SupplyAir() {}

    /**
     * Dry-air mass flow that carries a sensible load.
     *
     * @param load sensible cooling load (heating: its negative), W; its sign must be that of the
     *     temperature difference
     * @param room room air temperature, K, 200 to 350
     * @param supply supply air temperature, K, 200 to 350
     * @param humidityRatio of the supply air, kg/kg, 0 to 0.1
     * @return dry-air mass flow, kg/s; 0 for no load
     * @throws IllegalArgumentException if a value is out of range, the difference is below 0.1 K,
     *     or its sign is not the load's
     */
    public static double dryAirMassFlow(
            double load, double room, double supply, double humidityRatio) {
        Range.require("sensible load", load, -1e9, 1e9, "W");
        Range.require("room temperature", room, 200, 350, "K");
        Range.require("supply temperature", supply, 200, 350, "K");
        Range.require("humidity ratio of the supply air", humidityRatio, 0, 0.1, "kg/kg");
        double difference = room - supply;
        if (!(Math.abs(difference) >= 0.1) || load * difference < 0) {
            throw new IllegalArgumentException(
                    "supply air of "
                            + supply
                            + " K cannot carry a load of "
                            + load
                            + " W from a room of "
                            + room
                            + " K: it must be at least 0.1 K colder to cool and warmer to heat");
        }
        return load / ((1006.0 + 1860.0 * humidityRatio) * difference);
    }

    /**
     * Volume flow by the trade's factor at an elevation: {@code V = Q / (Cs dT)}, Cs = 1230 J/(m3
     * K) at sea level times the pressure ratio (ASHRAE Handbook, Fundamentals 2021 SI, ch. 17, eq.
     * 1: 1.23 W per L/s and K).
     *
     * @param load sensible load, W, 0 to 1e9
     * @param difference room less supply temperature, K, 0.1 to 100
     * @param pressureRatio site pressure over 101325 Pa, 0.3 to 1.1
     * @return volume flow at the site's density, m3/s
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double volumeFlowByFactor(double load, double difference, double pressureRatio) {
        Range.require("sensible load", load, 0, 1e9, "W");
        Range.require("temperature difference", difference, 0.1, 100, "K");
        Range.require("pressure ratio", pressureRatio, 0.3, 1.1, "");
        return load / (1230.0 * pressureRatio * difference);
    }
}
