package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Sol-air temperature: the outdoor air temperature that would give an outer face the same heat
 * without sun and sky as it has with them.
 *
 * <p>{@code te = to + a E / ho - e dR / ho}, with solar absorptance <var>a</var>, irradiance
 * <var>E</var>, outside coefficient <var>ho</var>, emissivity <var>e</var> and <var>dR</var> the
 * long-wave radiation that the face loses to the sky beyond what it would to surroundings at air
 * temperature: 63 W/m2 for a level face, none for a vertical one (practice: the wall's warm ground
 * makes up for its cold sky).
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 SI edition, chapter 18, section 6.4. Between level
 * and vertical dR is taken in proportion to {@code cos tilt}, which is our reading and no rule of
 * that source.
 */
public final class SolAir {
    /**
     * Long-wave loss of a level face to a clear sky, W/m2 (ASHRAE Fundamentals 2021 SI, ch. 18,
     * 6.4).
     */
    public static final double SKY_LOSS = 63.0;

    private SolAir() {}

    /**
     * Excess of sol-air over outdoor air temperature.
     *
     * @param absorptance solar, 0 to 1
     * @param irradiance total on the face, W/m2, 0 to 2000
     * @param emissivity long-wave, 0 to 1
     * @param longwaveLoss dR for the face, W/m2, -100 to 200
     * @param outside heat transfer coefficient, W/(m2 K), 1 to 100
     * @return excess, K
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double excess(
            double absorptance,
            double irradiance,
            double emissivity,
            double longwaveLoss,
            double outside) {
        Range.require("solar absorptance", absorptance, 0, 1, "");
        Range.require("irradiance", irradiance, 0, 2000, "W/m2");
        Range.require("emissivity", emissivity, 0, 1, "");
        Range.require("long-wave loss", longwaveLoss, -100, 200, "W/m2");
        Range.require("outside heat transfer coefficient", outside, 1, 100, "W/(m2 K)");
        return (absorptance * irradiance - emissivity * longwaveLoss) / outside;
    }

    /**
     * Long-wave loss dR of a face by its tilt: {@code 63 cos(tilt)}, none beyond vertical.
     *
     * @param tilt from level, rad, 0 to pi
     * @return dR, W/m2
     * @throws IllegalArgumentException if the tilt is outside its range
     */
    public static double longwaveLoss(double tilt) {
        Range.require("tilt", tilt, 0, Math.PI, "rad");
        return tilt < Math.PI / 2 ? SKY_LOSS * Math.cos(tilt) : 0;
    }
}
