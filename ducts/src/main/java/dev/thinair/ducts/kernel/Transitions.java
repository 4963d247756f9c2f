package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** Loss coefficients where the cross section changes, on the velocity pressure that is named. */
public final class Transitions {

    private static final double STEEP = Math.PI / 4;

    private Transitions() {}

    /**
     * Sudden expansion, on the upstream (larger) velocity pressure.
     *
     * <p>Formula: {@code (1 - A1/A2)^2}. Source: Borda and Carnot, from the momentum balance.
     *
     * @param upstreamArea A1, m2 or any unit, above 0
     * @param downstreamArea A2, same unit, at least A1
     * @return C
     * @throws IllegalArgumentException if an area is not above 0 or the duct narrows
     */
    public static double suddenExpansion(double upstreamArea, double downstreamArea) {
        requireWider("upstream", upstreamArea, "downstream", downstreamArea);
        double c = 1 - upstreamArea / downstreamArea;
        return c * c;
    }

    /**
     * Sudden contraction, on the downstream (larger) velocity pressure.
     *
     * <p>Formula: {@code 0.5 (1 - A2/A1)^(3/4)}. Source: Idelchik, Handbook of Hydraulic
     * Resistance, diagram 4-9 (from memory).
     *
     * @param upstreamArea A1, m2 or any unit, above 0
     * @param downstreamArea A2, same unit, at most A1
     * @return C, at most 0.5
     * @throws IllegalArgumentException if an area is not above 0 or the duct widens
     */
    public static double suddenContraction(double upstreamArea, double downstreamArea) {
        requireWider("downstream", downstreamArea, "upstream", upstreamArea);
        return 0.5 * Math.pow(1 - downstreamArea / upstreamArea, 0.75);
    }

    /**
     * Conical diffuser, on the upstream (larger) velocity pressure.
     *
     * <p>Formula: with b = d1/d2, {@code 2.6 sin(a/2) (1 - b^2)^2} up to an included angle of 45
     * degrees, {@code (1 - b^2)^2} above. Source: Crane Technical Paper 410.
     *
     * @param upstreamDiameter d1, m, above 0
     * @param downstreamDiameter d2, m, at least d1
     * @param includedAngle a, rad, in (0, 180 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double conicalDiffuser(
            double upstreamDiameter, double downstreamDiameter, double includedAngle) {
        requireAngle(includedAngle);
        requireDiameters(upstreamDiameter, downstreamDiameter);
        double sudden =
                suddenExpansion(
                        upstreamDiameter * upstreamDiameter,
                        downstreamDiameter * downstreamDiameter);
        return includedAngle <= STEEP ? 2.6 * Math.sin(includedAngle / 2) * sudden : sudden;
    }

    /**
     * Conical contraction, on the downstream (larger) velocity pressure.
     *
     * <p>Formula: with b = d2/d1, {@code 0.8 sin(a/2) (1 - b^2)} up to an included angle of 45
     * degrees, {@code 0.5 sqrt(sin(a/2)) (1 - b^2)} above. The two differ by 1 % at 45 degrees.
     * Source: Crane Technical Paper 410.
     *
     * @param upstreamDiameter d1, m, above 0
     * @param downstreamDiameter d2, m, at most d1
     * @param includedAngle a, rad, in (0, 180 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double conicalContraction(
            double upstreamDiameter, double downstreamDiameter, double includedAngle) {
        requireAngle(includedAngle);
        requireDiameters(upstreamDiameter, downstreamDiameter);
        double wide = upstreamDiameter * upstreamDiameter;
        double narrow = downstreamDiameter * downstreamDiameter;
        requireWider("downstream", narrow, "upstream", wide);
        double s = Math.sin(includedAngle / 2);
        double lost = 1 - narrow / wide;
        return includedAngle <= STEEP ? 0.8 * s * lost : 0.5 * Math.sqrt(s) * lost;
    }

    /**
     * The same loss on the velocity pressure of another section with the same flow.
     *
     * <p>Formula: {@code C (A_to/A_from)^2}.
     *
     * @param coefficient C on the velocity pressure of the first section
     * @param fromArea area of the first section, above 0
     * @param toArea area of the other section, same unit, above 0
     * @return C on the velocity pressure of the other section
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double onOtherArea(double coefficient, double fromArea, double toArea) {
        Range.require("loss coefficient", coefficient, -1_000, 1e6, "");
        Range.requireAbove("area of first section", fromArea, 0, "m2");
        Range.requireAbove("area of other section", toArea, 0, "m2");
        double ratio = toArea / fromArea;
        return coefficient * ratio * ratio;
    }

    private static void requireDiameters(double upstream, double downstream) {
        // before they are squared, which hides a sign
        Range.requireAbove("upstream diameter", upstream, 0, "m");
        Range.requireAbove("downstream diameter", downstream, 0, "m");
    }

    private static void requireAngle(double includedAngle) {
        Range.requireAbove("included angle", includedAngle, 0, "rad");
        Range.require("included angle", includedAngle, 0, Math.PI, "rad");
    }

    private static void requireWider(
            String narrowName, double narrow, String wideName, double wide) {
        Range.requireAbove(narrowName + " area", narrow, 0, "m2");
        Range.requireAbove(wideName + " area", wide, 0, "m2");
        if (narrow > wide) {
            throw new IllegalArgumentException(
                    narrowName
                            + " area is "
                            + narrow
                            + " m2, but must be at most the "
                            + wideName
                            + " area of "
                            + wide
                            + " m2");
        }
    }
}
