package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/** Loss coefficients of entries and exits, on the velocity pressure in the duct. */
public final class Openings {

    /**
     * A plain exit into a room: the whole velocity pressure is lost. Source: Idelchik; ASHRAE
     * fitting SD2-1 (from memory).
     */
    public static final double PLAIN_EXIT = 1;

    private static final double[] PROJECTION = {
        0, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5
    };
    private static final double[] THICKNESS = {
        0, 0.004, 0.008, 0.012, 0.016, 0.02, 0.024, 0.03, 0.04, 0.05
    };
    private static final double[][] WALL_ENTRY = {
        {0.50, 0.57, 0.63, 0.68, 0.73, 0.80, 0.86, 0.92, 0.97, 1.00},
        {0.50, 0.54, 0.58, 0.63, 0.67, 0.74, 0.80, 0.86, 0.90, 0.94},
        {0.50, 0.53, 0.55, 0.58, 0.62, 0.68, 0.74, 0.81, 0.85, 0.88},
        {0.50, 0.52, 0.53, 0.55, 0.58, 0.63, 0.68, 0.75, 0.79, 0.83},
        {0.50, 0.51, 0.51, 0.53, 0.55, 0.58, 0.64, 0.70, 0.74, 0.77},
        {0.50, 0.51, 0.51, 0.52, 0.53, 0.55, 0.60, 0.66, 0.69, 0.72},
        {0.50, 0.50, 0.50, 0.51, 0.52, 0.53, 0.58, 0.62, 0.65, 0.68},
        {0.50, 0.50, 0.50, 0.51, 0.52, 0.52, 0.54, 0.57, 0.59, 0.61},
        {0.50, 0.50, 0.50, 0.51, 0.51, 0.51, 0.51, 0.52, 0.52, 0.54},
        {0.50, 0.50, 0.50, 0.50, 0.50, 0.50, 0.50, 0.50, 0.50, 0.50}
    };

    private static final double[] LIP = {
        0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.10, 0.12, 0.16, 0.20
    };
    private static final double[] FREE_BELLMOUTH = {
        1.0, 0.87, 0.74, 0.61, 0.51, 0.40, 0.32, 0.20, 0.15, 0.10, 0.06, 0.03
    };
    private static final double[] WALL_BELLMOUTH = {
        0.50, 0.44, 0.37, 0.31, 0.26, 0.22, 0.20, 0.15, 0.12, 0.09, 0.06, 0.03
    };

    private Openings() {}

    /**
     * A straight duct that starts in a wall or stands out of it.
     *
     * <p>Source: Idelchik, Handbook of Hydraulic Resistance, diagram 3-1, as tabulated in the open
     * library fluids 1.3.1; the handbook's ED1-1 has the same numbers.
     *
     * @param projection how far the duct stands out of the wall, over its diameter, in [0, 1000];
     *     from 0.5 up nothing changes
     * @param thickness thickness of the duct's edge over its diameter, in [0, 10]; from 0.05 up the
     *     entry is as good as flush
     * @return C, in [0.5, 1]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double wallEntry(double projection, double thickness) {
        Range.require("projection over diameter", projection, 0, 1_000, "");
        Range.require("edge thickness over diameter", thickness, 0, 10, "");
        return Table.read(
                "edge thickness over diameter",
                "",
                THICKNESS,
                Math.min(thickness, 0.05),
                "projection over diameter",
                PROJECTION,
                Math.min(projection, 0.5),
                WALL_ENTRY);
    }

    /**
     * A bellmouth without an end wall.
     *
     * <p>Source: Idelchik 1986, diagram 3-4 (seen for r/D 0, 0.05, 0.1 and 0.2; the rest from
     * memory).
     *
     * @param radius radius of the lip over the duct's diameter, in [0, 10]; from 0.2 up nothing
     *     changes
     * @return C
     * @throws IllegalArgumentException if the radius is NaN or outside its range
     */
    public static double bellmouth(double radius) {
        return Table.readUpTo(
                "bellmouth radius over diameter", "", LIP, FREE_BELLMOUTH, radius, 10);
    }

    /**
     * A bellmouth flush with an end wall.
     *
     * <p>Source: Idelchik, diagram 3-4, as tabulated in the open library fluids 1.3.1 (the entry at
     * 0.10 interpolated).
     *
     * @param radius radius of the lip over the duct's diameter, in [0, 10]; from 0.2 up nothing
     *     changes
     * @return C
     * @throws IllegalArgumentException if the radius is NaN or outside its range
     */
    public static double bellmouthInWall(double radius) {
        return Table.readUpTo(
                "bellmouth radius over diameter", "", LIP, WALL_BELLMOUTH, radius, 10);
    }
}
