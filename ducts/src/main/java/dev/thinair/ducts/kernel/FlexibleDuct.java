package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** What compression and sag do to flexible duct. */
public final class FlexibleDuct {

    /**
     * Sag over distance of supports that good practice permits: half an inch per foot. Source: Air
     * Diffusion Council, Flexible Duct Performance and Installation Standards (from memory).
     */
    public static final double PERMITTED_SAG = 1.0 / 24;

    private FlexibleDuct() {}

    /**
     * Factor by which compression raises the friction loss of nonmetallic flexible duct.
     *
     * <p>Formula: {@code 1 + 0.58 r exp(-0.126 D)}, with r the compression in per cent of the
     * stretched length and D the diameter in inches. Even at no compression the duct keeps its own
     * roughness.
     *
     * <p>Source: ASHRAE Handbook - Fundamentals (2009 and later), chapter Duct Design, after
     * Abushakra, Walker and Sherman (2004) (formula from memory; consistent with the published
     * factors of about four at moderate and close to ten at strong compression).
     *
     * @param compression {@code 1 - L/L_stretched} as a fraction, in [0, 0.5]; measured up to 0.3
     * @param diameter duct diameter, m, in [0.05, 0.6]; measured from 0.15 to 0.25
     * @return factor on the friction loss, at least 1
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double pressureDropCorrection(double compression, double diameter) {
        Range.require("compression of flexible duct", compression, 0, 0.5, "");
        Range.require("diameter of flexible duct", diameter, 0.05, 0.6, "m");
        return 1 + 0.58 * (compression * 100) * Math.exp(-0.126 * (diameter / 0.0254));
    }

    /**
     * Length of duct hanging between two supports over the distance between them.
     *
     * <p>Formula: arc of a parabola of span 1 and depth s, {@code sqrt(1 + 16 s^2)/2 + asinh(4
     * s)/(8 s)}. This is the geometric part of what sag does; the loss of the bends is not in it,
     * for the regressions published for sagging duct (Weaver and Culp) give coefficients that were
     * not at hand. Duct that sags is mostly duct that is not stretched: the compression that goes
     * with it counts for far more, by {@link #pressureDropCorrection}.
     *
     * @param sag depth of the sag over the distance between supports, in [0, 1]
     * @return length ratio, at least 1
     * @throws IllegalArgumentException if the sag is NaN or outside its range
     */
    public static double sagLengthRatio(double sag) {
        Range.require("sag over distance of supports", sag, 0, 1, "");
        double x = 4 * sag;
        if (x < 1e-4) {
            return 1 + x * x / 6;
        }
        double root = Math.sqrt(1 + x * x);
        return root / 2 + Math.log(x + root) / (2 * x);
    }
}
