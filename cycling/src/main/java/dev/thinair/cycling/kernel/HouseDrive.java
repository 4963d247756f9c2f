package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Everything that acts on the house from outside, at equally spaced marks, linear between them:
 * heat into the nodes, outdoor air, moisture. Mark <var>i</var> is <var>i</var> intervals after the
 * start. A periodic drive of <var>N</var> marks has <var>N</var> intervals, the last of which
 * returns to mark 0; any other has <var>N</var> - 1.
 *
 * <p>The arrays are not copied (a year of a 60-node house holds half a million numbers): do not
 * change them while a run uses them.
 */
public final class HouseDrive {

    final double interval;
    final boolean periodic;
    final double[][] heat;
    final double[] outdoorDryBulb;
    final double[] outdoorHumidityRatio;
    final double[] infiltration;
    final double[] moistureGain;
    final double moistureCapacity;

    private HouseDrive(
            double interval,
            boolean periodic,
            double[][] heat,
            double[] outdoorDryBulb,
            double[] outdoorHumidityRatio,
            double[] infiltration,
            double[] moistureGain,
            double moistureCapacity) {
        this.interval = interval;
        this.periodic = periodic;
        this.heat = heat;
        this.outdoorDryBulb = outdoorDryBulb;
        this.outdoorHumidityRatio = outdoorHumidityRatio;
        this.infiltration = infiltration;
        this.moistureGain = moistureGain;
        this.moistureCapacity = moistureCapacity;
    }

    /**
     * A drive with moisture.
     *
     * @param interval time between marks, s, in [1, 86400]
     * @param periodic whether the last mark is followed by the first
     * @param heat heat into each node at each mark, W: boundary conductance times boundary
     *     temperature, sun, people, infiltration
     * @param outdoorDryBulb outdoor dry-bulb temperature at each mark, K
     * @param outdoorHumidityRatio outdoor humidity ratio at each mark, kg/kg
     * @param infiltration outdoor dry air entering the house at each mark, kg/s
     * @param moistureGain water released indoors at each mark, kg/s
     * @param moistureCapacity mass that the house's humidity ratio stands for, kg of dry air and of
     *     what takes up and gives off water with it, above 0
     * @return the drive
     * @throws IllegalArgumentException if an array is missing, too short or of another length, or a
     *     value is out of range
     */
    public static HouseDrive of(
            double interval,
            boolean periodic,
            double[][] heat,
            double[] outdoorDryBulb,
            double[] outdoorHumidityRatio,
            double[] infiltration,
            double[] moistureGain,
            double moistureCapacity) {
        Range.require("interval between marks", interval, 1, 86_400, "s");
        if (heat == null || heat.length < (periodic ? 1 : 2)) {
            throw new IllegalArgumentException(
                    "heat into the nodes needs at least " + (periodic ? 1 : 2) + " marks");
        }
        int marks = heat.length;
        requireMarks("outdoor dry bulb", outdoorDryBulb, marks, 180, 350, "K");
        requireMarks("outdoor humidity ratio", outdoorHumidityRatio, marks, 0, 0.2, "kg/kg");
        requireMarks("infiltration", infiltration, marks, 0, 1e3, "kg/s");
        requireMarks("moisture gain", moistureGain, marks, -1, 10, "kg/s");
        Range.requireAbove("moisture capacity", moistureCapacity, 0, "kg");
        int nodes = heat[0] == null ? 0 : heat[0].length;
        for (int i = 0; i < marks; i++) {
            if (heat[i] == null || heat[i].length != nodes || nodes == 0) {
                throw new IllegalArgumentException(
                        "heat at mark "
                                + i
                                + " does not have one entry for each of "
                                + nodes
                                + " nodes");
            }
            for (int j = 0; j < nodes; j++) {
                if (!(Math.abs(heat[i][j]) < 1e12)) {
                    throw new IllegalArgumentException(
                            "heat at mark "
                                    + i
                                    + " into node "
                                    + j
                                    + " is "
                                    + heat[i][j]
                                    + " W, but must be finite");
                }
            }
        }
        return new HouseDrive(
                interval,
                periodic,
                heat,
                outdoorDryBulb,
                outdoorHumidityRatio,
                infiltration,
                moistureGain,
                moistureCapacity);
    }

    /**
     * A drive without moisture: dry air in and out.
     *
     * @param interval time between marks, s, in [1, 86400]
     * @param periodic whether the last mark is followed by the first
     * @param heat heat into each node at each mark, W
     * @param outdoorDryBulb outdoor dry-bulb temperature at each mark, K
     * @return the drive
     * @throws IllegalArgumentException if an array is missing, too short or of another length, or a
     *     value is out of range
     */
    public static HouseDrive dry(
            double interval, boolean periodic, double[][] heat, double[] outdoorDryBulb) {
        int marks = heat == null ? 0 : heat.length;
        double[] zero = new double[marks];
        return of(interval, periodic, heat, outdoorDryBulb, zero, zero, zero, 1);
    }

    /**
     * Number of intervals.
     *
     * @return at least 1
     */
    public int intervals() {
        return periodic ? heat.length : heat.length - 1;
    }

    /**
     * Number of nodes the heat is given for.
     *
     * @return at least 1
     */
    public int nodes() {
        return heat[0].length;
    }

    /** Index of the mark at the end of an interval. */
    int end(int i) {
        return i + 1 == heat.length ? 0 : i + 1;
    }

    private static void requireMarks(
            String name, double[] values, int marks, double low, double high, String unit) {
        if (values == null || values.length != marks) {
            throw new IllegalArgumentException(
                    name
                            + " must have one entry for each of the "
                            + marks
                            + " marks, not "
                            + (values == null ? "null" : String.valueOf(values.length)));
        }
        for (int i = 0; i < marks; i++) {
            if (!(values[i] >= low && values[i] <= high)) {
                Range.require(name + " at mark " + i, values[i], low, high, unit);
            }
        }
    }
}
