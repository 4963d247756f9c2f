package dev.thinair.loads;

import java.time.LocalTime;

/**
 * Whether the sun rises on a day, and when. Near the poles there are days without sunrise and days
 * without sunset; each is a case of its own, so that nobody reads a time that does not exist.
 */
public sealed interface Daylight {

    /**
     * The sun rises and sets.
     *
     * @param sunrise local standard time at which the upper limb crosses the level horizon; it may
     *     belong to the neighbouring day where the zone lies far from the sun's time
     * @param sunset local standard time at which it sinks below
     */
    record RisesAndSets(LocalTime sunrise, LocalTime sunset) implements Daylight {}

    /** The sun stays above the horizon: polar day. */
    record UpAllDay() implements Daylight {}

    /** The sun stays below the horizon: polar night. */
    record DownAllDay() implements Daylight {}
}
