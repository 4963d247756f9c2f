package dev.thinair.ducts;

import dev.thinair.ducts.kernel.Boots;
import dev.thinair.ducts.kernel.DuctLoss;
import dev.thinair.ducts.kernel.Elbows;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.ducts.kernel.Junctions;
import dev.thinair.ducts.kernel.Openings;
import dev.thinair.ducts.kernel.RoundElbow;
import dev.thinair.ducts.kernel.Transitions;
import dev.thinair.units.Density;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;

/**
 * An elbow, boot, take-off or other part with a loss of its own: either a loss coefficient on the
 * velocity pressure of the duct it belongs to, or an equivalent length of that duct. Immutable.
 *
 * <p>An equivalent length from a table is only good near the velocity and friction rate for which
 * the table was made; a loss coefficient holds at any.
 */
public final class Fitting {

    private static final String HANDBOOK = "ASHRAE Handbook - Fundamentals 2009, chapter 21";
    private static final String CRANE = "Crane Technical Paper 410";

    private final String name;
    private final double coefficient;
    private final double length;
    private final String source;

    private Fitting(String name, double coefficient, double length, String source) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a fitting needs a name");
        }
        this.name = name;
        this.coefficient = coefficient;
        this.length = length;
        this.source = String.valueOf(source);
    }

    /**
     * A fitting by its loss coefficient.
     *
     * @param name what it is
     * @param coefficient C on the velocity pressure of the duct it is put in, in [-1000, 100000];
     *     branches whose air is dragged along by a faster stream gain pressure and are negative: at
     *     most about one velocity pressure of the common section (Idelchik, chapter 7), which can
     *     be many of a slow branch's own
     * @param source where the coefficient comes from
     * @return the fitting
     * @throws IllegalArgumentException if the name is blank or the coefficient out of range
     */
    public static Fitting ofCoefficient(String name, double coefficient, String source) {
        Range.require("loss coefficient of " + name, coefficient, -1_000, 100_000, "");
        return new Fitting(name, coefficient, 0, source);
    }

    /**
     * A fitting by its equivalent length.
     *
     * @param name what it is
     * @param length length of the same duct with the same loss, in [0, 100 m]
     * @param source where the length comes from
     * @return the fitting
     * @throws IllegalArgumentException if the name is blank or the length out of range
     */
    public static Fitting ofEquivalentLength(String name, Quantity<Length> length, String source) {
        double l = Si.metres(length, "equivalent length of " + name);
        Range.require("equivalent length of " + name, l, 0, 100, "m");
        return new Fitting(name, 0, l, source);
    }

    /**
     * A round elbow from the handbook's tables.
     *
     * @param make how it is made, its angle and radius
     * @param diameter of the duct, inside the table of that make
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or the diameter outside the table
     */
    public static Fitting roundElbow(RoundElbow make, Quantity<Length> diameter) {
        if (make == null) {
            throw new IllegalArgumentException("make of round elbow is null");
        }
        return ofCoefficient(
                make.words(),
                make.coefficient(Si.metres(diameter, "elbow diameter")),
                HANDBOOK + ", " + make.code());
    }

    /**
     * A round elbow of three gores, 90 degrees, by its radius.
     *
     * @param radius centre-line radius, 0.75 to 2 diameters
     * @param diameter of the duct
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting goredElbow(Quantity<Length> radius, Quantity<Length> diameter) {
        return ofCoefficient(
                "three-gore elbow, 90 degrees",
                Elbows.threeGore90(over(radius, "elbow radius", diameter, "elbow diameter")),
                HANDBOOK + ", CD3-12");
    }

    /**
     * A round mitered elbow without vanes.
     *
     * @param angle change of direction, in [20, 90 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if the angle is missing or out of range
     */
    public static Fitting miteredRoundElbow(Quantity<Angle> angle) {
        return ofCoefficient(
                "round mitered elbow",
                Elbows.miteredRound(Si.radians(angle, "angle of elbow")),
                "ASHRAE duct fittings, round mitered elbows (from memory)");
    }

    /**
     * A rectangular radius elbow without vanes.
     *
     * @param width in the plane of the turn
     * @param height across the plane of the turn, 0.25 to 8 widths
     * @param radius centre-line radius, 0.5 to 2 widths
     * @param angle change of direction, in [0, 180 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting radiusElbow(
            Quantity<Length> width,
            Quantity<Length> height,
            Quantity<Length> radius,
            Quantity<Angle> angle) {
        return ofCoefficient(
                "radius elbow",
                Elbows.rectangularRadius(
                        over(radius, "elbow radius", width, "elbow width"),
                        over(height, "elbow height", width, "elbow width"),
                        Si.radians(angle, "angle of elbow")),
                "ASHRAE Handbook - Fundamentals 2005, CR3-1");
    }

    /**
     * A rectangular mitered elbow without vanes, at high Reynolds number.
     *
     * @param width in the plane of the turn
     * @param height across the plane of the turn, 0.25 to 8 widths
     * @param angle change of direction, in [20, 90 degrees]
     * @return the fitting; below a Reynolds number of 140,000 it loses up to 40 % more ({@link
     *     Elbows#miteredReynoldsFactor})
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting miteredElbow(
            Quantity<Length> width, Quantity<Length> height, Quantity<Angle> angle) {
        return ofCoefficient(
                "mitered elbow",
                Elbows.miteredRectangular(
                        Si.radians(angle, "angle of elbow"),
                        over(height, "elbow height", width, "elbow width")),
                "ASHRAE Handbook - Fundamentals 2005, CR3-6");
    }

    /**
     * A rectangular mitered elbow of 90 degrees with single-thickness turning vanes.
     *
     * @return the fitting
     */
    public static Fitting vanedElbow() {
        return ofCoefficient(
                "mitered elbow with turning vanes",
                Elbows.MITERED_WITH_VANES_90,
                "ASHRAE Handbook - Fundamentals, CR3-9 (from memory)");
    }

    /**
     * A smooth round bend, its own friction included: do not count its length as duct.
     *
     * @param radius centre-line radius, 0.5 to 20 diameters
     * @param diameter of the duct
     * @param angle change of direction, in [0, 180 degrees]
     * @param frictionFactor Darcy friction factor of the duct, in [0.001, 0.2]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting smoothBend(
            Quantity<Length> radius,
            Quantity<Length> diameter,
            Quantity<Angle> angle,
            double frictionFactor) {
        return ofCoefficient(
                "smooth bend",
                Elbows.smoothBend(
                        frictionFactor,
                        over(radius, "bend radius", diameter, "bend diameter"),
                        Si.radians(angle, "angle of bend")),
                "Rennels and Hudson (2012), Pipe Flow, chapter 15");
    }

    /**
     * A straight duct that starts in a wall or stands out of it.
     *
     * @param projection how far it stands out; 0 for flush
     * @param thickness thickness of its edge
     * @param diameter of the duct
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting wallEntry(
            Quantity<Length> projection, Quantity<Length> thickness, Quantity<Length> diameter) {
        return ofCoefficient(
                "entry in a wall",
                Openings.wallEntry(
                        over(projection, "projection", diameter, "entry diameter"),
                        over(thickness, "edge thickness", diameter, "entry diameter")),
                "Idelchik, Handbook of Hydraulic Resistance, diagram 3-1");
    }

    /**
     * A bellmouth entry without an end wall.
     *
     * @param lipRadius radius of its lip
     * @param diameter of the duct
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting bellmouth(Quantity<Length> lipRadius, Quantity<Length> diameter) {
        return ofCoefficient(
                "bellmouth",
                Openings.bellmouth(over(lipRadius, "lip radius", diameter, "entry diameter")),
                "Idelchik, Handbook of Hydraulic Resistance, diagram 3-4");
    }

    /**
     * A plain exit into a room.
     *
     * @return the fitting
     */
    public static Fitting plainExit() {
        return ofCoefficient(
                "plain exit", Openings.PLAIN_EXIT, "Idelchik; ASHRAE SD2-1 (from memory)");
    }

    /**
     * A sudden expansion. Its coefficient is on the upstream velocity pressure: put it in the
     * upstream duct.
     *
     * @param upstream narrower cross section
     * @param downstream wider cross section
     * @return the fitting
     * @throws IllegalArgumentException if a shape is missing or the duct narrows
     */
    public static Fitting suddenExpansion(DuctShape upstream, DuctShape downstream) {
        requireShapes(upstream, downstream);
        return ofCoefficient(
                "sudden expansion",
                Transitions.suddenExpansion(upstream.areaSi(), downstream.areaSi()),
                "Borda-Carnot");
    }

    /**
     * A sudden contraction. Its coefficient is on the downstream velocity pressure: put it in the
     * downstream duct.
     *
     * @param upstream wider cross section
     * @param downstream narrower cross section
     * @return the fitting
     * @throws IllegalArgumentException if a shape is missing or the duct widens
     */
    public static Fitting suddenContraction(DuctShape upstream, DuctShape downstream) {
        requireShapes(upstream, downstream);
        return ofCoefficient(
                "sudden contraction",
                Transitions.suddenContraction(upstream.areaSi(), downstream.areaSi()),
                "Idelchik, Handbook of Hydraulic Resistance, diagram 4-9 (from memory)");
    }

    /**
     * A conical diffuser between round ducts, to be put in the upstream (smaller) one.
     *
     * @param upstream smaller diameter
     * @param downstream larger diameter
     * @param includedAngle of the cone, in (0, 180 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting diffuser(
            Quantity<Length> upstream, Quantity<Length> downstream, Quantity<Angle> includedAngle) {
        return ofCoefficient(
                "conical diffuser",
                Transitions.conicalDiffuser(
                        Si.metres(upstream, "upstream diameter"),
                        Si.metres(downstream, "downstream diameter"),
                        Si.radians(includedAngle, "included angle")),
                CRANE);
    }

    /**
     * A conical contraction between round ducts, to be put in the downstream (smaller) one.
     *
     * @param upstream larger diameter
     * @param downstream smaller diameter
     * @param includedAngle of the cone, in (0, 180 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting contraction(
            Quantity<Length> upstream, Quantity<Length> downstream, Quantity<Angle> includedAngle) {
        return ofCoefficient(
                "conical contraction",
                Transitions.conicalContraction(
                        Si.metres(upstream, "upstream diameter"),
                        Si.metres(downstream, "downstream diameter"),
                        Si.radians(includedAngle, "included angle")),
                CRANE);
    }

    /**
     * The take-off of a supply trunk, to be put in the branch: its coefficient is on the branch's
     * own velocity pressure.
     *
     * @param flowShare share of the trunk's air that the branch takes, in (0, 100 %]
     * @param areaRatio area of the branch over that of the trunk, in [1, 100 %]
     * @param angle between branch and trunk: 90 degrees for a tee, less for a wye
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting takeOff(
            Quantity<Dimensionless> flowShare,
            Quantity<Dimensionless> areaRatio,
            Quantity<Angle> angle) {
        double q = share(flowShare);
        double a = Si.ratio(areaRatio, "area ratio of branch to trunk");
        return ofCoefficient(
                "take-off",
                Junctions.onOwnVelocity(
                        Junctions.divergingBranch(q, a, Si.radians(angle, "angle of take-off")),
                        q / a),
                CRANE);
    }

    /**
     * The straight passage past the take-off of a supply trunk, to be put in the trunk behind it,
     * which keeps its size.
     *
     * @param flowShare share of the air that the branch takes, in (0, 100 %)
     * @param areaRatio area of the branch over that of the trunk, in [1, 100 %]
     * @return the fitting; it can gain pressure
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting passageAtTakeOff(
            Quantity<Dimensionless> flowShare, Quantity<Dimensionless> areaRatio) {
        double q = share(flowShare);
        return ofCoefficient(
                "passage at a take-off",
                Junctions.onOwnVelocity(
                        Junctions.divergingStraight(
                                q, Si.ratio(areaRatio, "area ratio of branch to trunk")),
                        1 - q),
                CRANE);
    }

    /**
     * The branch of a return wye or tee, to be put in the branch. A coefficient fixed like this may
     * not gain more than the branch's friction loses; {@link DuctSystem.Builder#returnWye} follows
     * the flows and may.
     *
     * @param flowShare share of the air of the trunk behind it that comes through the branch, in
     *     (0, 100 %]
     * @param areaRatio area of the branch over that of the trunk, in [1, 100 %]
     * @param angle between branch and trunk
     * @return the fitting; it can gain pressure
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting returnBranch(
            Quantity<Dimensionless> flowShare,
            Quantity<Dimensionless> areaRatio,
            Quantity<Angle> angle) {
        double q = share(flowShare);
        double a = Si.ratio(areaRatio, "area ratio of branch to trunk");
        return ofCoefficient(
                "return branch",
                Junctions.onOwnVelocity(
                        Junctions.convergingBranch(q, a, Si.radians(angle, "angle of branch")),
                        q / a),
                CRANE);
    }

    /**
     * The straight passage of a return wye or tee, to be put in the trunk before it, which keeps
     * its size.
     *
     * @param flowShare share of the air of the trunk behind it that comes through the branch, in
     *     (0, 100 %)
     * @param areaRatio area of the branch over that of the trunk, in [1, 100 %]
     * @param angle between branch and trunk
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting passageAtReturnBranch(
            Quantity<Dimensionless> flowShare,
            Quantity<Dimensionless> areaRatio,
            Quantity<Angle> angle) {
        double q = share(flowShare);
        return ofCoefficient(
                "passage at a return branch",
                Junctions.onOwnVelocity(
                        Junctions.convergingStraight(
                                q,
                                Si.ratio(areaRatio, "area ratio of branch to trunk"),
                                Si.radians(angle, "angle of branch")),
                        1 - q),
                CRANE);
    }

    /**
     * A straight boot between a run and its register, to be put in the run.
     *
     * @param run cross section of the run
     * @param neck cross section of the register's neck, at least as large
     * @param includedAngle of the transition, in (0, 180 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting straightBoot(
            DuctShape run, DuctShape neck, Quantity<Angle> includedAngle) {
        requireShapes(run, neck);
        return ofCoefficient(
                "straight boot",
                Boots.straight(
                        run.areaSi(), neck.areaSi(), Si.radians(includedAngle, "included angle")),
                CRANE + ", as a conical diffuser of the same areas");
    }

    /**
     * A boot that turns and opens at once, to be put in the run.
     *
     * @param run cross section of the run
     * @param neck cross section of the register's neck, at least as large
     * @param angle turn, in [20, 90 degrees]
     * @return the fitting
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public static Fitting turningBoot(DuctShape run, DuctShape neck, Quantity<Angle> angle) {
        requireShapes(run, neck);
        return ofCoefficient(
                "turning boot",
                Boots.turning(run.areaSi(), neck.areaSi(), Si.radians(angle, "angle of boot")),
                "mitered elbow (ASHRAE, from memory) and sudden expansion (Borda-Carnot) put"
                        + " together");
    }

    /** How a boot leads from a run to its register. */
    public enum Boot {
        /** Straight on: 10 ft. */
        STRAIGHT(10),
        /** Round a right angle: 35 ft. */
        RIGHT_ANGLE(35),
        /** Into the side of a box behind the register: 60 ft. */
        SIDE_OF_BOX(60);

        private final double feet;

        Boot(double feet) {
            this.feet = feet;
        }
    }

    /**
     * A boot by the trade's equivalent length, for use where its areas are not known.
     *
     * @param boot how it leads to the register
     * @return the fitting; the length is common practice from memory, without a source, and near
     *     right only at 700 to 900 ft/min
     * @throws IllegalArgumentException if the boot is null
     */
    public static Fitting usualBoot(Boot boot) {
        if (boot == null) {
            throw new IllegalArgumentException("boot is null");
        }
        return ofEquivalentLength(
                "boot, " + boot.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                Units.feet(boot.feet),
                "common practice, no source");
    }

    private static double share(Quantity<Dimensionless> flowShare) {
        double q = Si.ratio(flowShare, "flow share of branch");
        Range.requireAbove("flow share of branch", q, 0, "");
        return q;
    }

    private static double over(
            Quantity<Length> length, String name, Quantity<Length> by, String byName) {
        double divisor = Si.metres(by, byName);
        Range.requireAbove(byName, divisor, 0, "m");
        return Si.metres(length, name) / divisor;
    }

    private static void requireShapes(DuctShape upstream, DuctShape downstream) {
        if (upstream == null || downstream == null) {
            throw new IllegalArgumentException("both cross sections of a transition are needed");
        }
    }

    /**
     * Pressure that it loses at a velocity pressure.
     *
     * @param velocityPressure in the duct it is put in, in [0, 10 kPa]
     * @return loss, {@code C p_v}; negative if it gains
     * @throws IllegalArgumentException if the pressure is missing or out of range, or the fitting
     *     is given by length
     */
    public Quantity<Pressure> loss(Quantity<Pressure> velocityPressure) {
        double pv = Si.pascals(velocityPressure, "velocity pressure");
        Range.require("velocity pressure", pv, 0, 10_000, "Pa");
        requireCoefficient();
        return Units.pascals(DuctLoss.fitting(coefficient, Math.sqrt(2 * pv), 1));
    }

    /**
     * Length of a duct with the same loss.
     *
     * @param diameter of the round duct
     * @param frictionFactor its Darcy friction factor, above 0
     * @return {@code C D/f}
     * @throws IllegalArgumentException if an argument is missing or out of range, or the fitting is
     *     given by length or gains pressure
     */
    public Quantity<Length> equivalentLength(Quantity<Length> diameter, double frictionFactor) {
        requireCoefficient();
        return Units.metres(
                FrictionChart.equivalentLength(
                        coefficient, Si.metres(diameter, "duct diameter"), frictionFactor));
    }

    private void requireCoefficient() {
        if (length > 0) {
            throw new IllegalArgumentException(
                    name + " is given by its equivalent length, not by a loss coefficient");
        }
    }

    /**
     * Its loss, step by step.
     *
     * @param shape cross section it is put in
     * @param flow actual volume flow, at least 0
     * @param density air density
     * @return working whose result is the pressure loss
     * @throws IllegalArgumentException if an argument is missing or out of range
     */
    public Working working(DuctShape shape, Quantity<VolumeFlow> flow, Quantity<Density> density) {
        return DuctWorkings.fittingLoss(this, shape, flow, density);
    }

    /**
     * What it is.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Loss coefficient on the velocity pressure of its duct.
     *
     * @return C, 0 for a fitting given by length
     */
    public double coefficient() {
        return coefficient;
    }

    /**
     * Equivalent length.
     *
     * @return length, 0 for a fitting given by coefficient
     */
    public Quantity<Length> equivalentLength() {
        return Units.metres(length);
    }

    double lengthSi() {
        return length;
    }

    /**
     * Where its loss comes from.
     *
     * @return source
     */
    public String source() {
        return source;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fitting f
                && f.name.equals(name)
                && f.coefficient == coefficient
                && f.length == length
                && f.source.equals(source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, coefficient, length, source);
    }

    @Override
    public String toString() {
        return length > 0 ? name + " (" + length + " m)" : name + " (C = " + coefficient + ")";
    }
}
