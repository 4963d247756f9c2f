package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * One steady state of a cooling unit as a laboratory or a performance table states it, in SI.
 *
 * <p>Capacities are those of the coil: the heat of the indoor fan is not taken off. The power is
 * that of compressor and outdoor fan: the indoor fan is not in it. {@link #ofNet} takes the two
 * apart when the published figures are net.
 *
 * @param enteringDryBulb dry bulb of the air entering the coil, K
 * @param enteringHumidityRatio humidity ratio of that air, kg/kg
 * @param dryAirMassFlow dry-air mass flow over the coil, kg/s
 * @param outdoorDryBulb dry bulb of the air entering the condenser, K
 * @param pressure air pressure at the place of the test, Pa
 * @param totalCapacity total heat taken from the air by the coil, W
 * @param sensibleCapacity sensible part of it, W
 * @param power power of compressor and outdoor fan, W
 */
public record RatingPoint(
        double enteringDryBulb,
        double enteringHumidityRatio,
        double dryAirMassFlow,
        double outdoorDryBulb,
        double pressure,
        double totalCapacity,
        double sensibleCapacity,
        double power) {

    /**
     * Checks the numbers.
     *
     * @param enteringDryBulb as the component
     * @param enteringHumidityRatio as the component
     * @param dryAirMassFlow as the component
     * @param outdoorDryBulb as the component
     * @param pressure as the component
     * @param totalCapacity as the component
     * @param sensibleCapacity as the component
     * @param power as the component
     * @throws IllegalArgumentException if a value is outside its range, or the sensible capacity
     *     exceeds the total
     */
    public RatingPoint {
        Range.require("entering dry bulb", enteringDryBulb, 273.15, 323.15, "K");
        Range.require("entering humidity ratio", enteringHumidityRatio, 0, 0.05, "kg/kg");
        Range.requireAbove("dry-air mass flow", dryAirMassFlow, 0, "kg/s");
        Range.require("outdoor dry bulb", outdoorDryBulb, 253.15, 333.15, "K");
        Range.require("pressure", pressure, 50_000, 110_000, "Pa");
        Range.requireAbove("total capacity", totalCapacity, 0, "W");
        Range.require("sensible capacity", sensibleCapacity, 0, totalCapacity, "W");
        Range.requireAbove("power of compressor and outdoor fan", power, 0, "W");
    }

    /**
     * From net figures, in which the indoor fan is counted: gross capacity = net + fan, power of
     * compressor and outdoor fan = total power - fan.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil, K
     * @param enteringHumidityRatio humidity ratio of that air, kg/kg
     * @param dryAirMassFlow dry-air mass flow over the coil, kg/s
     * @param outdoorDryBulb dry bulb of the air entering the condenser, K
     * @param pressure air pressure at the place of the test, Pa
     * @param netTotal net total capacity, W
     * @param netSensible net sensible capacity, W
     * @param totalPower power of the whole unit, W
     * @param indoorFanPower power of the indoor fan at the test, W
     * @return the point
     * @throws IllegalArgumentException as for the constructor, or if the fan takes more than the
     *     whole
     */
    public static RatingPoint ofNet(
            double enteringDryBulb,
            double enteringHumidityRatio,
            double dryAirMassFlow,
            double outdoorDryBulb,
            double pressure,
            double netTotal,
            double netSensible,
            double totalPower,
            double indoorFanPower) {
        Range.require("indoor fan power", indoorFanPower, 0, totalPower, "W");
        return new RatingPoint(
                enteringDryBulb,
                enteringHumidityRatio,
                dryAirMassFlow,
                outdoorDryBulb,
                pressure,
                netTotal + indoorFanPower,
                netSensible + indoorFanPower,
                totalPower - indoorFanPower);
    }
}
