package dev.thinair.psychro.kernel;

/** What entering and leaving air say about a cooling coil. */
public sealed interface CoilLine {

    /**
     * The coil takes moisture out, and the line through both states meets the saturation curve.
     *
     * @param apparatusDewPoint where it meets it first, K
     * @param bypassFactor leaving state's share of the way from there to the entering state, 0 to 1
     */
    record Wet(double apparatusDewPoint, double bypassFactor) implements CoilLine {}

    /**
     * Humidity ratio unchanged: a dry coil. Its surface is not colder than the dew point; bypass
     * factor and surface temperature cannot both be told from the air alone.
     *
     * @param dewPoint dew point of the air, K, the lowest surface temperature that stays dry
     */
    record Dry(double dewPoint) implements CoilLine {}

    /**
     * No coil surface explains the two states.
     *
     * @param reason why, in words
     */
    record NoState(String reason) implements CoilLine {}
}
