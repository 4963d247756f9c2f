package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * What a rating point does not say about a unit: the refrigerant side at the rating point, and the
 * shape of the off-design behaviour.
 *
 * @param refrigerant the refrigerant
 * @param suctionAtRating saturated suction temperature at the rating point, K; common practice, no
 *     source: 35 &deg;F (19.4 K) below the entering dry bulb
 * @param condensingAtRating condensing temperature at the rating point, K; common practice, no
 *     source: 20 &deg;F (11.1 K) above the outdoor air for recent units, 30 &deg;F for old ones
 * @param condenserEffectiveness effectiveness of the condenser at the rating point, in ]0, 1[; this
 *     model's assumption: 0.70
 * @param outdoorFanPower power of the outdoor fan at the rating point, W; constant volume, so it
 *     falls with the density of the outdoor air
 * @param lossShare part of the compressor's power at the rating point that does not follow the
 *     isentropic work (friction, motor), in [0, 0.6]; form after the scroll model of Winandy,
 *     Saavedra and Lebrun 2002 (from memory); default 0.15, this model's assumption
 */
public record UnitParameters(
        Refrigerant refrigerant,
        double suctionAtRating,
        double condensingAtRating,
        double condenserEffectiveness,
        double outdoorFanPower,
        double lossShare) {

    /** Return air less saturated suction, K: 35 &deg;F. Common practice, no source. */
    public static final double RETURN_TO_SUCTION = 35 / 1.8;

    /** Condensing less outdoor air, K: 20 &deg;F. Common practice, no source. */
    public static final double CONDENSING_OVER_OUTDOOR = 20 / 1.8;

    /** Effectiveness of the condenser at the rating point. This model's assumption. */
    public static final double CONDENSER_EFFECTIVENESS = 0.70;

    /**
     * Outdoor fan power over coil capacity, W/W: about 190 W for a 3-ton unit. This model's
     * assumption.
     */
    public static final double OUTDOOR_FAN_SHARE = 0.018;

    /** Part of the compressor's power that does not follow the work. This model's assumption. */
    public static final double LOSS_SHARE = 0.15;

    /**
     * Checks the numbers.
     *
     * @param refrigerant as the component
     * @param suctionAtRating as the component
     * @param condensingAtRating as the component
     * @param condenserEffectiveness as the component
     * @param outdoorFanPower as the component
     * @param lossShare as the component
     * @throws IllegalArgumentException if a value is missing or outside its range
     */
    public UnitParameters {
        if (refrigerant == null) {
            throw new IllegalArgumentException("refrigerant is missing");
        }
        Range.require("saturated suction at rating", suctionAtRating, 243.15, 298.15, "K");
        Range.require("condensing temperature at rating", condensingAtRating, 283.15, 343.15, "K");
        Range.require("condenser effectiveness", condenserEffectiveness, 0.05, 0.99, "1");
        Range.require("outdoor fan power", outdoorFanPower, 0, 1e5, "W");
        Range.require("loss share", lossShare, 0, 0.6, "1");
    }

    /**
     * The defaults for a rating point.
     *
     * @param rating the rating point
     * @return parameters by the constants of this class, R-410A
     */
    public static UnitParameters defaultsFor(RatingPoint rating) {
        return new UnitParameters(
                Refrigerant.R410A,
                rating.enteringDryBulb() - RETURN_TO_SUCTION,
                rating.outdoorDryBulb() + CONDENSING_OVER_OUTDOOR,
                CONDENSER_EFFECTIVENESS,
                OUTDOOR_FAN_SHARE * rating.totalCapacity(),
                LOSS_SHARE);
    }
}
