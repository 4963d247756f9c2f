package dev.thinair.cycling;

import dev.thinair.cycling.kernel.RatingPoint;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * One line of a maker's expanded performance table, full stage.
 *
 * @param entering air entering the coil, with the pressure of the table
 * @param airflow airflow at standard density
 * @param outdoorDryBulb outdoor dry bulb
 * @param totalCapacity net total capacity
 * @param sensibleCapacity net sensible capacity
 * @param power power of the whole unit
 * @param indoorFanPower indoor fan power counted in the figures; zero for a gross table
 */
public record PerformancePoint(
        MoistAir entering,
        Quantity<VolumeFlow> airflow,
        Quantity<Temperature> outdoorDryBulb,
        Quantity<Power> totalCapacity,
        Quantity<Power> sensibleCapacity,
        Quantity<Power> power,
        Quantity<Power> indoorFanPower) {

    /**
     * Checks the numbers.
     *
     * @param entering as the component
     * @param airflow as the component
     * @param outdoorDryBulb as the component
     * @param totalCapacity as the component
     * @param sensibleCapacity as the component
     * @param power as the component
     * @param indoorFanPower as the component
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public PerformancePoint {
        point(
                entering,
                airflow,
                outdoorDryBulb,
                totalCapacity,
                sensibleCapacity,
                power,
                indoorFanPower);
    }

    RatingPoint gross() {
        return point(
                entering,
                airflow,
                outdoorDryBulb,
                totalCapacity,
                sensibleCapacity,
                power,
                indoorFanPower);
    }

    private static RatingPoint point(
            MoistAir entering,
            Quantity<VolumeFlow> airflow,
            Quantity<Temperature> outdoorDryBulb,
            Quantity<Power> totalCapacity,
            Quantity<Power> sensibleCapacity,
            Quantity<Power> power,
            Quantity<Power> indoorFanPower) {
        if (entering == null) {
            throw new IllegalArgumentException("entering air of the performance point is missing");
        }
        return RatingPoint.ofNet(
                entering.dryBulbKelvins(),
                entering.humidityRatioNumber(),
                Si.cubicMetresPerSecond(airflow, "airflow of the performance point")
                        * CoolingUnit.STANDARD_DENSITY,
                Si.kelvins(outdoorDryBulb, "outdoor dry bulb of the performance point"),
                entering.pressurePascals(),
                Si.watts(totalCapacity, "total capacity of the performance point"),
                Si.watts(sensibleCapacity, "sensible capacity of the performance point"),
                Si.watts(power, "power of the performance point"),
                Si.watts(indoorFanPower, "indoor fan power of the performance point"));
    }
}
