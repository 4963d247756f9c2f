package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Loss coefficients of elbows and bends that depend on more than a diameter, all on the velocity
 * pressure in the elbow. Round elbows tabulated by diameter are in {@link RoundElbow}.
 */
public final class Elbows {

    /**
     * Rectangular mitered elbow of 90 degrees with single-thickness turning vanes 40 mm apart,
     * CR3-9. Source: ASHRAE Handbook - Fundamentals, chapter Duct Design (from memory).
     */
    public static final double MITERED_WITH_VANES_90 = 0.11;

    private static final double DEGREE = Math.PI / 180;

    private static final double[] GORED_RADIUS = {0.75, 1.0, 1.5, 2.0};
    private static final double[] GORED = {0.54, 0.42, 0.34, 0.33};

    private static final double[] MITERED_ROUND_ANGLE = degrees(20, 30, 45, 60, 75, 90);
    private static final double[] MITERED_ROUND = {0.08, 0.16, 0.34, 0.55, 0.81, 1.2};

    private static final double[] ASPECT = {0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8};

    private static final double[] RADIUS = {0.5, 0.75, 1.0, 1.5, 2.0};
    private static final double[][] SMOOTH_RADIUS = {
        {1.53, 1.38, 1.29, 1.18, 1.06, 1.00, 1.00, 1.06, 1.12, 1.16, 1.18},
        {0.57, 0.52, 0.48, 0.44, 0.40, 0.39, 0.39, 0.40, 0.42, 0.43, 0.44},
        {0.27, 0.25, 0.23, 0.21, 0.19, 0.18, 0.18, 0.19, 0.20, 0.21, 0.21},
        {0.22, 0.20, 0.19, 0.17, 0.15, 0.14, 0.14, 0.15, 0.16, 0.17, 0.17},
        {0.20, 0.18, 0.16, 0.15, 0.14, 0.13, 0.13, 0.14, 0.14, 0.15, 0.15}
    };
    private static final double[] TURN = degrees(0, 20, 30, 45, 60, 75, 90, 110, 130, 150, 180);
    private static final double[] TURN_FACTOR = {
        0, 0.31, 0.45, 0.60, 0.78, 0.90, 1.00, 1.13, 1.20, 1.28, 1.40
    };

    private static final double[] MITER = degrees(20, 30, 45, 60, 75, 90);
    private static final double[][] MITERED = {
        {0.08, 0.08, 0.08, 0.07, 0.07, 0.07, 0.06, 0.06, 0.05, 0.05, 0.05},
        {0.18, 0.17, 0.17, 0.16, 0.15, 0.15, 0.13, 0.13, 0.12, 0.12, 0.11},
        {0.38, 0.37, 0.36, 0.34, 0.33, 0.31, 0.28, 0.27, 0.26, 0.25, 0.24},
        {0.60, 0.59, 0.57, 0.55, 0.52, 0.49, 0.46, 0.43, 0.41, 0.39, 0.38},
        {0.89, 0.87, 0.84, 0.81, 0.77, 0.73, 0.67, 0.63, 0.61, 0.58, 0.57},
        {1.30, 1.30, 1.20, 1.20, 1.10, 1.10, 0.98, 0.92, 0.89, 0.85, 0.83}
    };
    private static final double[] REYNOLDS = {1e4, 2e4, 3e4, 4e4, 6e4, 8e4, 1e5, 1.4e5};
    private static final double[] REYNOLDS_FACTOR = {
        1.40, 1.26, 1.19, 1.14, 1.09, 1.06, 1.04, 1.00
    };

    private Elbows() {}

    private static double[] degrees(double... of) {
        double[] radians = new double[of.length];
        for (int i = 0; i < of.length; i++) {
            radians[i] = of[i] * DEGREE;
        }
        return radians;
    }

    /**
     * Round elbow of three gores, 90 degrees, by its radius: CD3-12.
     *
     * <p>Source: ASHRAE Handbook - Fundamentals 2009 (SI), chapter 21 (seen for r/D 0.75, 1 and 2;
     * 1.5 from memory).
     *
     * @param radiusRatio centre-line radius over diameter, in [0.75, 2]
     * @return C
     * @throws IllegalArgumentException if the ratio is NaN or outside the table
     */
    public static double threeGore90(double radiusRatio) {
        return Table.read(
                "radius over diameter of gored elbow", "", GORED_RADIUS, GORED, radiusRatio);
    }

    /**
     * Round mitered elbow without vanes.
     *
     * <p>Source: ASHRAE duct fittings, round mitered elbows, after Idelchik (from memory).
     *
     * @param angle change of direction, rad, in [20, 90 degrees]
     * @return C
     * @throws IllegalArgumentException if the angle is NaN or outside the table
     */
    public static double miteredRound(double angle) {
        return Table.read(
                "angle of mitered elbow", "rad", MITERED_ROUND_ANGLE, MITERED_ROUND, angle);
    }

    /**
     * Rectangular radius elbow without vanes: CR3-1.
     *
     * <p>Formula: C of 90 degrees times the factor of {@link #radiusAngleFactor}.
     *
     * <p>Source: ASHRAE Handbook - Fundamentals 2005 (SI), p. 35.52 (entries seen: r/W 0.5 with H/W
     * 1; 0.75 with 0.25 and 4; 1 with 1 and 3; 1.5 with 1; 2 with 0.25; the rest from memory).
     *
     * @param radiusRatio centre-line radius over width W in the plane of the turn, in [0.5, 2]
     * @param aspectRatio height H over width W, in [0.25, 8]
     * @param angle change of direction, rad, in [0, 180 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or outside the table
     */
    public static double rectangularRadius(double radiusRatio, double aspectRatio, double angle) {
        return radiusAngleFactor(angle)
                * Table.read(
                        "radius over width of elbow",
                        "",
                        RADIUS,
                        radiusRatio,
                        "height over width of elbow",
                        ASPECT,
                        aspectRatio,
                        SMOOTH_RADIUS);
    }

    /**
     * Factor on a 90 degree radius elbow for other angles.
     *
     * <p>Source: ASHRAE Handbook - Fundamentals 2005 (SI), p. 35.52 (seen for 0, 30, 45, 60, 110
     * and 180 degrees; the rest from memory).
     *
     * @param angle change of direction, rad, in [0, 180 degrees]
     * @return factor, 1 at 90 degrees
     * @throws IllegalArgumentException if the angle is NaN or outside the table
     */
    public static double radiusAngleFactor(double angle) {
        return Table.read("angle of elbow", "rad", TURN, TURN_FACTOR, angle);
    }

    /**
     * Rectangular mitered elbow without vanes, at high Reynolds number: CR3-6.
     *
     * <p>Source: ASHRAE (1989), the same in ASHRAE Handbook - Fundamentals 2005, CR3-6 (entries
     * seen: 45 and 90 degrees with H/W 1, 90 with 0.25, 60 with 0.5; the rest from memory).
     *
     * @param angle change of direction, rad, in [20, 90 degrees]
     * @param aspectRatio height H over width W, in [0.25, 8]
     * @return C; times {@link #miteredReynoldsFactor} below a Reynolds number of 140,000
     * @throws IllegalArgumentException if an argument is NaN or outside the table
     */
    public static double miteredRectangular(double angle, double aspectRatio) {
        return Table.read(
                "angle of mitered elbow",
                "rad",
                MITER,
                angle,
                "height over width of elbow",
                ASPECT,
                aspectRatio,
                MITERED);
    }

    /**
     * Factor on a rectangular mitered elbow at low Reynolds number.
     *
     * <p>Source: ASHRAE (1989), with the table of CR3-6 (seen for 1e4, 2e4, 4e4 and 14e4; the rest
     * from memory).
     *
     * @param reynolds on the hydraulic diameter, in [1e4, 1e9]
     * @return factor, 1 from 140,000 up
     * @throws IllegalArgumentException if the number is NaN or outside its range
     */
    public static double miteredReynoldsFactor(double reynolds) {
        return Table.readUpTo(
                "Reynolds number of mitered elbow", "", REYNOLDS, REYNOLDS_FACTOR, reynolds, 1e9);
    }

    /**
     * Smooth round bend, with the friction along its own length.
     *
     * <p>Formula: {@code f a r/D + (0.10 + 2.4 f) sin(a/2) + 6.6 f (sqrt(sin(a/2)) +
     * sin(a/2))/(r/D)^(4 a/pi)}, a in rad.
     *
     * <p>Source: Rennels and Hudson (2012), Pipe Flow, chapter 15.
     *
     * @param frictionFactor Darcy friction factor, in [0.001, 0.2]
     * @param radiusRatio centre-line radius over diameter, in [0.5, 20]
     * @param angle change of direction, rad, in [0, 180 degrees]
     * @return C
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double smoothBend(double frictionFactor, double radiusRatio, double angle) {
        Range.require("friction factor", frictionFactor, 0.001, 0.2, "");
        Range.require("radius over diameter of bend", radiusRatio, 0.5, 20, "");
        Range.require("angle of bend", angle, 0, Math.PI, "rad");
        double s = Math.sin(angle / 2);
        return frictionFactor * angle * radiusRatio
                + (0.10 + 2.4 * frictionFactor) * s
                + 6.6
                        * frictionFactor
                        * (Math.sqrt(s) + s)
                        / Math.pow(radiusRatio, 4 * angle / Math.PI);
    }

    /**
     * Sharp miter in a round pipe.
     *
     * <p>Formula: {@code 0.42 sin(a/2) + 2.56 sin^3(a/2)}.
     *
     * <p>Source: Rennels and Hudson (2012), Pipe Flow, chapter 15.
     *
     * @param angle change of direction, rad, in [0, 150 degrees]
     * @return C
     * @throws IllegalArgumentException if the angle is NaN or outside its range
     */
    public static double miterBend(double angle) {
        Range.require("angle of miter", angle, 0, 150 * DEGREE, "rad");
        double s = Math.sin(angle / 2);
        return 0.42 * s + 2.56 * s * s * s;
    }
}
