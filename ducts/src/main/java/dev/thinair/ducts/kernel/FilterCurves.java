package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Generic clean curves of residential filters by MERV class and depth, for use where the maker's
 * curve is not known.
 *
 * <p>Clean drop at a face velocity of 1.5 m/s (295 ft/min) with standard air, Pa:
 *
 * <table>
 *   <caption>Clean pressure drop, Pa</caption>
 *   <tr><th>MERV</th><th>1-4</th><th>5-8</th><th>9-12</th><th>13-16</th></tr>
 *   <tr><td>1 in.</td><td>20</td><td>40</td><td>55</td><td>70 (13 only)</td></tr>
 *   <tr><td>4 in.</td><td>-</td><td>22</td><td>32</td><td>45</td></tr>
 * </table>
 *
 * <p>Viscous share of that drop: half at 1 in., 0.7 at 4 in., whose deep pleats slow the air in the
 * medium. All of this is common practice from memory, without a published source, and makes of one
 * class differ widely (one two-inch MERV 13 filter was measured at 0.0274 in. at 144 ft/min, less
 * than half of what lies between the rows above), so a measured drop always comes first.
 */
public final class FilterCurves {

    /** Face velocity to which the drops belong, m/s. */
    public static final double FACE_VELOCITY = 1.5;

    private static final double[] ONE_INCH = {20, 40, 55, 70};
    private static final double[] FOUR_INCH = {Double.NaN, 22, 32, 45};
    private static final double ONE_INCH_VISCOUS = 0.5;
    private static final double FOUR_INCH_VISCOUS = 0.7;

    private FilterCurves() {}

    /**
     * Clean drop at {@link #FACE_VELOCITY} with standard air.
     *
     * @param merv minimum efficiency reporting value: 1 to 13 at 1 in., 5 to 16 at 4 in.
     * @param deep true for 4 in., false for 1 in.
     * @return Pa
     * @throws IllegalArgumentException if the class is not usual at that depth
     */
    public static double cleanDrop(int merv, boolean deep) {
        Range.require(
                "MERV class of a " + (deep ? "4 in." : "1 in.") + " filter",
                merv,
                deep ? 5 : 1,
                deep ? 16 : 13,
                "");
        return (deep ? FOUR_INCH : ONE_INCH)[Math.min((merv - 1) / 4, 3)];
    }

    /**
     * Viscous coefficient a of {@link FaceLoss#darcyForchheimer}.
     *
     * @param merv minimum efficiency reporting value: 1 to 13 at 1 in., 5 to 16 at 4 in.
     * @param deep true for 4 in., false for 1 in.
     * @return Pa s/m
     * @throws IllegalArgumentException if the class is not usual at that depth
     */
    public static double viscous(int merv, boolean deep) {
        return share(deep) * cleanDrop(merv, deep) / FACE_VELOCITY;
    }

    /**
     * Inertial coefficient b of {@link FaceLoss#darcyForchheimer} for standard air.
     *
     * @param merv minimum efficiency reporting value: 1 to 13 at 1 in., 5 to 16 at 4 in.
     * @param deep true for 4 in., false for 1 in.
     * @return Pa s2/m2
     * @throws IllegalArgumentException if the class is not usual at that depth
     */
    public static double inertial(int merv, boolean deep) {
        return (1 - share(deep)) * cleanDrop(merv, deep) / (FACE_VELOCITY * FACE_VELOCITY);
    }

    /**
     * Factor on the viscous part that makes the whole drop a multiple of the clean one at a flow.
     *
     * <p>Formula: dust clogs the medium, so {@code x a V + b V^2 = times (a V + b V^2)}; {@code x =
     * times + (times - 1) b V/a}.
     *
     * @param viscous a, Pa s/m or Pa s/m3, above 0
     * @param inertial b, Pa s2/m2 or Pa s2/m6, at least 0
     * @param velocity face velocity m/s, or volume flow m3/s, at least 0
     * @param times drop over clean drop, in [1, 20]
     * @return x, at least 1
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double loading(double viscous, double inertial, double velocity, double times) {
        Range.requireAbove("viscous coefficient of filter", viscous, 0, "");
        Range.require("inertial coefficient of filter", inertial, 0, 1e9, "");
        Range.require("flow through filter", velocity, 0, 100, "");
        Range.require("drop over clean drop of filter", times, 1, 20, "");
        return times + (times - 1) * inertial * velocity / viscous;
    }

    private static double share(boolean deep) {
        return deep ? FOUR_INCH_VISCOUS : ONE_INCH_VISCOUS;
    }
}
