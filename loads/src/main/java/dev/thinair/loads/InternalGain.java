package dev.thinair.loads;

/** Heat and moisture given off inside the house by people, appliances or lights. */
public sealed interface InternalGain permits Occupants, Appliances, Lighting {

    /**
     * What reports call it.
     *
     * @return name
     */
    String name();

    /**
     * Sensible heat at an hour mark.
     *
     * @param hour local standard hour, 0 to 23
     * @return W
     */
    double sensible(int hour);

    /**
     * Latent heat at an hour mark.
     *
     * @param hour local standard hour, 0 to 23
     * @return W
     */
    double latent(int hour);

    /**
     * Radiant share of the sensible heat; the rest warms the air at once.
     *
     * @return share, 0 to 1
     */
    double radiantFraction();
}
