package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Loss coefficients of wyes and tees whose straight passage keeps its size, as functions of flow
 * and area ratio. A coefficient is on the velocity pressure of the <em>common</em> section (the one
 * with all the air) unless said otherwise; {@link #onOwnVelocity} puts it on the branch's own.
 * Branches whose air is dragged along by the other stream gain pressure: their coefficient is
 * negative.
 *
 * <p>Source: Idelchik, Handbook of Hydraulic Resistance, chapter 7, by velocity ratio; and in the
 * form of Crane Technical Paper 410 (2009) with its errata by flow ratio (from memory; checked
 * against the open library fluids 1.3.1, which rounds 2 cos a to two digits). Measured on
 * sharp-edged pipe fittings; boots and take-offs with a shoe lose less.
 */
public final class Junctions {

    /** Angle above which the source counts a junction as a tee. */
    static final double TEE = 75 * Math.PI / 180;

    /** Area ratio at a diameter ratio of 2/3. */
    static final double SMALL_TEE = 4.0 / 9;

    private Junctions() {}

    /**
     * Branch of a diverging wye or tee, by velocity ratio.
     *
     * <p>Formula: {@code A' (1 + x^2 - 2 x cos a)} with x = w_b/w_c; A' = 1 up to x = 0.8, 0.9
     * above. Source: Idelchik, diverging wyes with undivided straight passage (formula from
     * memory).
     *
     * @param velocityRatio w_b/w_c, in [0, 5]
     * @param angle between branch and passage, rad, in [0, 90 degrees]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double divergingBranch(double velocityRatio, double angle) {
        Range.require("velocity ratio of branch to common", velocityRatio, 0, 5, "");
        requireAngle(angle);
        double factor = velocityRatio <= 0.8 ? 1 : 0.9;
        return factor * divergingMomentum(velocityRatio, Math.cos(angle));
    }

    /**
     * Straight passage of a diverging wye or tee, by velocity ratio.
     *
     * <p>Formula: {@code 0.4 (1 - w_s/w_c)^2}. Source: Idelchik, diverging tees (formula from
     * memory).
     *
     * @param velocityRatio w_s/w_c, in [0, 1]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double divergingStraight(double velocityRatio) {
        Range.require("velocity ratio of straight passage to common", velocityRatio, 0, 1, "");
        double d = 1 - velocityRatio;
        return 0.4 * d * d;
    }

    /**
     * A coefficient of the common section on a branch's own velocity pressure.
     *
     * <p>Formula: {@code C (w_c/w_b)^2}.
     *
     * @param coefficient C on the common velocity pressure
     * @param velocityRatio w_b/w_c, in (0, 5]
     * @return C on the branch's velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double onOwnVelocity(double coefficient, double velocityRatio) {
        Range.require("loss coefficient", coefficient, -1_000, 1e6, "");
        Range.require("velocity ratio of branch to common", velocityRatio, 1e-6, 5, "");
        return coefficient / (velocityRatio * velocityRatio);
    }

    /**
     * Branch of a converging wye or tee, by flow ratio.
     *
     * <p>Formula: with q = Q_b/Q_c and A = A_b/A_c, {@code K (1 + (q/A)^2 - 2 (1 - q)^2 - 2 cos a
     * q^2/A)}; K = 1 up to A = 0.35, above {@code 0.9 (1 - q)} up to q = 0.4 and 0.55 beyond.
     *
     * @param flowRatio q, in [0, 1]
     * @param areaRatio A, in (0, 1]
     * @param angle between branch and passage, rad, in [0, 90 degrees]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double convergingBranch(double flowRatio, double areaRatio, double angle) {
        require(flowRatio, areaRatio, angle);
        double factor = areaRatio <= 0.35 ? 1 : flowRatio <= 0.4 ? 0.9 * (1 - flowRatio) : 0.55;
        return factor * convergingMomentum(flowRatio, areaRatio, Math.cos(angle));
    }

    /** What the momentum balance says of a converging branch. */
    static double convergingMomentum(double q, double a, double cos) {
        double x = q / a;
        double rest = 1 - q;
        return 1 + x * x - 2 * rest * rest - 2 * cos * q * x;
    }

    /** What the momentum balance says of a diverging branch at the velocity ratio x. */
    static double divergingMomentum(double x, double cos) {
        return 1 + x * x - 2 * x * cos;
    }

    /**
     * Straight passage of a converging wye or tee, by flow ratio.
     *
     * <p>Formula: {@code 1 - (1 - q)^2 - 2 cos a q^2/A} below 75 degrees, which is the momentum
     * balance; {@code 1.55 q - q^2} above, which is measured on tees.
     *
     * @param flowRatio q = Q_b/Q_c, in [0, 1]
     * @param areaRatio A = A_b/A_c, in (0, 1]
     * @param angle between branch and passage, rad, in [0, 90 degrees]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double convergingStraight(double flowRatio, double areaRatio, double angle) {
        require(flowRatio, areaRatio, angle);
        double rest = 1 - flowRatio;
        return angle > TEE
                ? 1.55 * flowRatio - flowRatio * flowRatio
                : 1 - rest * rest - 2 * Math.cos(angle) * flowRatio * flowRatio / areaRatio;
    }

    /**
     * Branch of a diverging wye or tee, by flow ratio.
     *
     * <p>Formula: with q = Q_b/Q_c, A = A_b/A_c and x = q/A. Below 75 degrees {@code G (1 + x^2 - 2
     * x cos a)}; G is {@code 1.1 - 0.7 q} up to q = 0.4 and 0.85 beyond for A up to 0.35, and
     * {@code 1 - 0.6 q} up to q = 0.6 and 0.6 beyond for larger A. For tees {@code 1 + x^2 - 2 x
     * cos a} up to a diameter ratio of 2/3 (A = 4/9), {@code (1 + 0.3 q^2)(1 + 0.3 x^2)} at full
     * size; the source is silent in between, where this library goes straight in A from one to the
     * other.
     *
     * @param flowRatio q, in [0, 1]
     * @param areaRatio A, in (0, 1]
     * @param angle between branch and passage, rad, in [0, 90 degrees]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double divergingBranch(double flowRatio, double areaRatio, double angle) {
        require(flowRatio, areaRatio, angle);
        double q = flowRatio;
        double x = q / areaRatio;
        double momentum = divergingMomentum(x, Math.cos(angle));
        if (angle > TEE) {
            double fullSize = (1 + 0.3 * q * q) * (1 + 0.3 * x * x);
            double t = Math.max(0, (areaRatio - SMALL_TEE) / (1 - SMALL_TEE));
            return (1 - t) * momentum + t * fullSize;
        }
        double g =
                areaRatio <= 0.35
                        ? (q <= 0.4 ? 1.1 - 0.7 * q : 0.85)
                        : (q <= 0.6 ? 1 - 0.6 * q : 0.6);
        return g * momentum;
    }

    /**
     * Straight passage of a diverging wye or tee, by flow ratio.
     *
     * <p>Formula: {@code M q^2}; M is 0.4 up to A = 0.4, above {@code 2 (2 q - 1)} up to q = 0.5
     * and {@code 0.3 (2 q - 1)} beyond.
     *
     * @param flowRatio q = Q_b/Q_c, in [0, 1]
     * @param areaRatio A = A_b/A_c, in (0, 1]
     * @return C on the common velocity pressure
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double divergingStraight(double flowRatio, double areaRatio) {
        require(flowRatio, areaRatio, 0);
        double m = areaRatio <= 0.4 ? 0.4 : (flowRatio <= 0.5 ? 2 : 0.3) * (2 * flowRatio - 1);
        return m * flowRatio * flowRatio;
    }

    private static void require(double flowRatio, double areaRatio, double angle) {
        Range.require("flow ratio of branch to common", flowRatio, 0, 1, "");
        Range.require("area ratio of branch to common", areaRatio, 0.01, 1, "");
        requireAngle(angle);
    }

    private static void requireAngle(double angle) {
        Range.require("angle between branch and passage", angle, 0, Math.PI / 2, "rad");
    }
}
