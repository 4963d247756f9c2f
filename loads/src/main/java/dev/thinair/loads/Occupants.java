package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/**
 * People in the house. Immutable.
 *
 * @param count number of people, in [0, 1000]; a mean number need not be whole
 * @param sensibleEach sensible heat of one, W, in [0, 1000]
 * @param latentEach latent heat of one, W, in [0, 1000]
 * @param radiantFraction radiant share of the sensible heat, in [0, 1]
 * @param schedule presence by the hour
 */
public record Occupants(
        double count,
        double sensibleEach,
        double latentEach,
        double radiantFraction,
        Schedule schedule)
        implements InternalGain {

    /**
     * What people do, with the heat of one (adults of both sexes mixed).
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 18, Table 1 (from memory; the row of office work was
     * checked), for a room at 24 C; radiant share 0.60.
     */
    public enum Activity {
        /** Seated, as in a theatre: 65 W sensible, 30 W latent. */
        SEATED_AT_REST(65, 30),
        /** Seated, very light work, as at home in the evening: 70 W sensible, 45 W latent. */
        SEATED_LIGHT_WORK(70, 45),
        /** Moderately active office work: 75 W sensible, 55 W latent. */
        OFFICE_WORK(75, 55),
        /** Walking and standing: 75 W sensible, 70 W latent. */
        WALKING(75, 70),
        /** Light bench work: 80 W sensible, 140 W latent. */
        LIGHT_BENCH_WORK(80, 140);

        private final double sensible;
        private final double latent;

        Activity(double sensible, double latent) {
            this.sensible = sensible;
            this.latent = latent;
        }

        /**
         * Sensible heat of one person.
         *
         * @return W
         */
        public double sensible() {
            return sensible;
        }

        /**
         * Latent heat of one person.
         *
         * @return W
         */
        public double latent() {
            return latent;
        }
    }

    /**
     * Checks the values.
     *
     * @param count number of people, in [0, 1000]; a mean number need not be whole
     * @param sensibleEach sensible heat of one, W, in [0, 1000]
     * @param latentEach latent heat of one, W, in [0, 1000]
     * @param radiantFraction radiant share of the sensible heat, in [0, 1]
     * @param schedule presence by the hour
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Occupants {
        Range.require("number of people", count, 0, 1_000, "-");
        Range.require("sensible heat of one person", sensibleEach, 0, 1_000, "W");
        Range.require("latent heat of one person", latentEach, 0, 1_000, "W");
        Range.require("radiant fraction", radiantFraction, 0, 1, "-");
        Objects.requireNonNull(schedule, "schedule");
    }

    /**
     * People at an activity, all day, radiant share 0.60.
     *
     * @param count number, in [0, 1000]
     * @param activity what they do
     * @return the people
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static Occupants of(double count, Activity activity) {
        return new Occupants(count, activity.sensible(), activity.latent(), 0.6, Schedule.always());
    }

    /**
     * People with heat of their own, all day, radiant share 0.60.
     *
     * @param count number, in [0, 1000]
     * @param sensible of one
     * @param latent of one
     * @return the people
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Occupants of(double count, Quantity<Power> sensible, Quantity<Power> latent) {
        return new Occupants(
                count,
                Si.watts(sensible, "sensible heat of one person"),
                Si.watts(latent, "latent heat of one person"),
                0.6,
                Schedule.always());
    }

    /**
     * The trade's allowance: 230 Btu/h sensible and 200 Btu/h latent a person (trade rule of thumb,
     * no source).
     *
     * @param count number, in [0, 1000]
     * @return the people
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static Occupants tradeAllowance(double count) {
        double btuPerHour = 1055.05585262 / 3_600;
        return new Occupants(count, 230 * btuPerHour, 200 * btuPerHour, 0.6, Schedule.always());
    }

    /**
     * The same people at other hours.
     *
     * @param value presence by the hour
     * @return new occupants
     */
    public Occupants on(Schedule value) {
        return new Occupants(count, sensibleEach, latentEach, radiantFraction, value);
    }

    @Override
    public String name() {
        return "people";
    }

    @Override
    public double sensible(int hour) {
        return count * sensibleEach * schedule.at(hour);
    }

    @Override
    public double latent(int hour) {
        return count * latentEach * schedule.at(hour);
    }
}
