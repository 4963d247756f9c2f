package dev.thinair.loads;

import dev.thinair.loads.kernel.ResidentialLoadFactor;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Power;

/**
 * Appliances and whatever else gives off heat indoors. Immutable.
 *
 * @param name what reports call them
 * @param sensiblePower sensible heat when on, W, in [0, 1e6]
 * @param latentPower latent heat when on, W, in [0, 1e6]
 * @param radiantFraction radiant share of the sensible heat, in [0, 1]
 * @param schedule use by the hour
 */
public record Appliances(
        String name,
        double sensiblePower,
        double latentPower,
        double radiantFraction,
        Schedule schedule)
        implements InternalGain {

    /**
     * Checks the values.
     *
     * @param name what reports call them
     * @param sensiblePower sensible heat when on, W, in [0, 1e6]
     * @param latentPower latent heat when on, W, in [0, 1e6]
     * @param radiantFraction radiant share of the sensible heat, in [0, 1]
     * @param schedule use by the hour
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Appliances {
        Objects.requireNonNull(name, "name");
        Range.require("sensible heat of " + name, sensiblePower, 0, 1e6, "W");
        Range.require("latent heat of " + name, latentPower, 0, 1e6, "W");
        Range.require("radiant fraction of " + name, radiantFraction, 0, 1, "-");
        Objects.requireNonNull(schedule, "schedule");
    }

    /**
     * Appliances that run all day, half of their heat radiant (common practice, no source).
     *
     * @param name what reports call them
     * @param sensible sensible heat
     * @param latent latent heat
     * @return the appliances
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Appliances of(String name, Quantity<Power> sensible, Quantity<Power> latent) {
        return new Appliances(
                name,
                Si.watts(sensible, "sensible heat of " + name),
                Si.watts(latent, "latent heat of " + name),
                0.5,
                Schedule.always());
    }

    /**
     * The trade's kitchen allowance: 1,200 Btu/h sensible (trade rule of thumb, no source; 1,200 to
     * 1,600 are in use).
     *
     * @return the appliances
     */
    public static Appliances tradeKitchenAllowance() {
        return new Appliances(
                "kitchen allowance", 1_200 * 1055.05585262 / 3_600, 0, 0.5, Schedule.always());
    }

    /**
     * What a house gives off apart from its people by the handbook's residential chapter: <code>136
     * + 2.2 A</code> W sensible and <code>20 + 0.22 A</code> W latent.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (30) and (31).
     *
     * @param floorArea conditioned floor area
     * @return the appliances
     * @throws IllegalArgumentException if the area is not finite or outside its range
     */
    public static Appliances residential(Quantity<Area> floorArea) {
        double area = Si.squareMetres(floorArea, "floor area");
        return new Appliances(
                "lights and appliances",
                ResidentialLoadFactor.internalSensible(area, 0),
                ResidentialLoadFactor.internalLatent(area, 0),
                0.5,
                Schedule.always());
    }

    /**
     * The same appliances at other hours.
     *
     * @param value use by the hour
     * @return new appliances
     */
    public Appliances on(Schedule value) {
        return new Appliances(name, sensiblePower, latentPower, radiantFraction, value);
    }

    @Override
    public double sensible(int hour) {
        return sensiblePower * schedule.at(hour);
    }

    @Override
    public double latent(int hour) {
        return latentPower * schedule.at(hour);
    }
}
