package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Areas, perimeters, hydraulic and equivalent diameters of duct sections.
 *
 * <p>The hydraulic diameter goes with the true mean velocity, the circular equivalent with the same
 * airflow. The two differ (a square of side 10 has 10 and 10.93) and must never be mixed.
 *
 * <p>Source: plane geometry and the definition of the hydraulic diameter, exact to rounding, except
 * where a function names another.
 */
public final class DuctGeometry {

    private DuctGeometry() {}

    /**
     * Area of a circle.
     *
     * @param diameter m, above 0
     * @return m2
     * @throws IllegalArgumentException if the diameter is out of range
     */
    public static double roundArea(double diameter) {
        Friction.requireDiameter(diameter);
        return Math.PI / 4 * diameter * diameter;
    }

    /**
     * Hydraulic diameter of a rectangle.
     *
     * <p>Formula: {@code 4 A/P = 2 a b/(a + b)}.
     *
     * @param a one side, m, above 0
     * @param b other side, m, above 0
     * @return m
     * @throws IllegalArgumentException if a side is out of range
     */
    public static double rectangularHydraulicDiameter(double a, double b) {
        requireSides(a, b);
        return 2 * a * b / (a + b);
    }

    /**
     * Circular equivalent of a rectangle for equal friction rate and airflow.
     *
     * <p>Formula: {@code 1.30 (a b)^0.625 / (a + b)^0.25}.
     *
     * <p>Source: Huebscher (1948); ASHRAE Handbook - Fundamentals, chapter Duct Design.
     *
     * @param a one side, m, above 0
     * @param b other side, m, above 0
     * @return m
     * @throws IllegalArgumentException if a side is out of range
     */
    public static double rectangularEquivalentDiameter(double a, double b) {
        requireSides(a, b);
        return 1.30 * Math.pow(a * b, 0.625) / Math.pow(a + b, 0.25);
    }

    /**
     * Area of a flat oval: a circle of the minor axis and a rectangle between its halves.
     *
     * <p>Formula: {@code pi m^2/4 + m (M - m)}.
     *
     * @param major major axis M, m
     * @param minor minor axis m, m, at most M
     * @return m2
     * @throws IllegalArgumentException if an axis is out of range or minor exceeds major
     */
    public static double flatOvalArea(double major, double minor) {
        requireAxes(major, minor);
        return Math.PI / 4 * minor * minor + minor * (major - minor);
    }

    /**
     * Perimeter of a flat oval.
     *
     * <p>Formula: {@code pi m + 2 (M - m)}.
     *
     * @param major major axis M, m
     * @param minor minor axis m, m, at most M
     * @return m
     * @throws IllegalArgumentException if an axis is out of range or minor exceeds major
     */
    public static double flatOvalPerimeter(double major, double minor) {
        requireAxes(major, minor);
        return Math.PI * minor + 2 * (major - minor);
    }

    /**
     * Hydraulic diameter of a flat oval.
     *
     * <p>Formula: {@code 4 A/P}.
     *
     * @param major major axis, m
     * @param minor minor axis, m, at most the major axis
     * @return m
     * @throws IllegalArgumentException if an axis is out of range or minor exceeds major
     */
    public static double flatOvalHydraulicDiameter(double major, double minor) {
        return 4 * flatOvalArea(major, minor) / flatOvalPerimeter(major, minor);
    }

    /**
     * Circular equivalent of a flat oval for equal friction rate and airflow.
     *
     * <p>Formula: {@code 1.55 A^0.625 / P^0.25}. It does not return a circle exactly (+0.1 %).
     *
     * <p>Source: Heyt and Diaz (1975); ASHRAE Handbook - Fundamentals, chapter Duct Design.
     *
     * @param major major axis, m
     * @param minor minor axis, m, at most the major axis
     * @return m
     * @throws IllegalArgumentException if an axis is out of range or minor exceeds major
     */
    public static double flatOvalEquivalentDiameter(double major, double minor) {
        return 1.55
                * Math.pow(flatOvalArea(major, minor), 0.625)
                / Math.pow(flatOvalPerimeter(major, minor), 0.25);
    }

    private static void requireSides(double a, double b) {
        Range.require("side of rectangular duct", a, 1e-3, 20, "m");
        Range.require("side of rectangular duct", b, 1e-3, 20, "m");
    }

    private static void requireAxes(double major, double minor) {
        Range.require("major axis of flat oval duct", major, 1e-3, 20, "m");
        Range.require("minor axis of flat oval duct", minor, 1e-3, 20, "m");
        if (minor > major) {
            throw new IllegalArgumentException(
                    "minor axis of flat oval duct is "
                            + minor
                            + " m, more than its major axis of "
                            + major
                            + " m");
        }
    }
}
