package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;

/**
 * Lights. Immutable.
 *
 * @param power electric power when on, all of which becomes heat in the room, W, in [0, 1e6]
 * @param radiantFraction radiant share, in [0, 1]
 * @param schedule use by the hour
 */
public record Lighting(double power, double radiantFraction, Schedule schedule)
        implements InternalGain {

    /**
     * Checks the values.
     *
     * @param power electric power when on, all of which becomes heat in the room, W, in [0, 1e6]
     * @param radiantFraction radiant share, in [0, 1]
     * @param schedule use by the hour
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Lighting {
        Range.require("lighting power", power, 0, 1e6, "W");
        Range.require("radiant fraction of lights", radiantFraction, 0, 1, "-");
        Objects.requireNonNull(schedule, "schedule");
    }

    /**
     * Lights with their radiant share.
     *
     * @param power electric power when on
     * @param radiantFraction in [0, 1]; 0.57 in the handbook's room example (2021, ch. 18, Table
     *     28)
     * @param schedule use by the hour
     * @return the lights
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Lighting of(
            Quantity<Power> power, Quantity<Dimensionless> radiantFraction, Schedule schedule) {
        return new Lighting(
                Si.watts(power, "lighting power"),
                Si.ratio(radiantFraction, "radiant fraction of lights"),
                schedule);
    }

    @Override
    public String name() {
        return "lights";
    }

    @Override
    public double sensible(int hour) {
        return power * schedule.at(hour);
    }

    @Override
    public double latent(int hour) {
        return 0;
    }
}
