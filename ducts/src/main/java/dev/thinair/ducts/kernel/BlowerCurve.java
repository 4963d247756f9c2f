package dev.thinair.ducts.kernel;

import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.units.Range;

/**
 * A blower's table of flow against external static pressure, read by a shape-preserving cubic.
 *
 * <p>The interpolant is flow as a function of pressure, piecewise cubic Hermite with the slopes of
 * Fritsch and Butland: monotone between the points, once continuously differentiable, no overshoot.
 * It is inverted where pressure is wanted for a flow. Immutable: any thread may share it.
 *
 * <p>Source: Fritsch and Carlson (1980), SIAM J. Numer. Anal. 17, 238-246; Fritsch and Butland
 * (1984), SIAM J. Sci. Stat. Comput. 5, 300-304 (from memory).
 */
public final class BlowerCurve {

    private final double[] pressure;
    private final double[] flow;
    private final double[] slope;

    private BlowerCurve(double[] pressure, double[] flow, double[] slope) {
        this.pressure = pressure;
        this.flow = flow;
        this.slope = slope;
    }

    /**
     * Makes the curve through a table taken with one air density.
     *
     * @param pressure external static pressures, Pa, strictly rising, at least two
     * @param flow volume flow at each pressure, m3/s, above 0 (the last may be 0), strictly falling
     * @return the curve
     * @throws IllegalArgumentException if the arrays differ in length, hold fewer than two points,
     *     or are not monotone as required
     */
    public static BlowerCurve through(double[] pressure, double[] flow) {
        if (pressure.length != flow.length) {
            throw new IllegalArgumentException(
                    "blower table has "
                            + pressure.length
                            + " pressures but "
                            + flow.length
                            + " flows");
        }
        int n = pressure.length;
        if (n < 2) {
            throw new IllegalArgumentException(
                    "blower table has " + n + " point, but needs two or more");
        }
        for (int i = 0; i < n; i++) {
            Range.require(
                    "external static pressure of blower table", pressure[i], -500, 5_000, "Pa");
            Range.require("airflow of blower table", flow[i], 0, 100, "m3/s");
            if (i > 0 && !(pressure[i] > pressure[i - 1])) {
                throw new IllegalArgumentException(
                        "blower table: external static pressure must rise from row to row, but "
                                + pressure[i]
                                + " Pa follows "
                                + pressure[i - 1]
                                + " Pa");
            }
            if (i > 0 && !(flow[i] < flow[i - 1])) {
                throw new IllegalArgumentException(
                        "blower table is not monotone: airflow must fall as external static pressure"
                                + " rises, but "
                                + flow[i]
                                + " m3/s at "
                                + pressure[i]
                                + " Pa follows "
                                + flow[i - 1]
                                + " m3/s at "
                                + pressure[i - 1]
                                + " Pa");
            }
        }
        return new BlowerCurve(pressure.clone(), flow.clone(), slopes(pressure, flow));
    }

    /**
     * The curve of the same blower turned faster or slower.
     *
     * <p>Formula: fan laws, flow goes with the speed, pressure with its square.
     *
     * @param speedRatio new speed over that of the table, in [0.2, 3]
     * @return the curve at the new speed
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public BlowerCurve atSpeed(double speedRatio) {
        Range.require("speed ratio", speedRatio, 0.2, 3, "");
        int n = pressure.length;
        double[] p = new double[n];
        double[] q = new double[n];
        for (int i = 0; i < n; i++) {
            p[i] = FanLaws.pressureAtSpeed(pressure[i], speedRatio);
            q[i] = FanLaws.airflowAtSpeed(flow[i], speedRatio);
        }
        return through(p, q);
    }

    private static double[] slopes(double[] p, double[] q) {
        int n = p.length;
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            secant[i] = (q[i + 1] - q[i]) / (p[i + 1] - p[i]);
        }
        double[] d = new double[n];
        if (n == 2) {
            d[0] = secant[0];
            d[1] = secant[0];
            return d;
        }
        for (int i = 1; i < n - 1; i++) {
            double h0 = p[i] - p[i - 1];
            double h1 = p[i + 1] - p[i];
            double w0 = 2 * h1 + h0;
            double w1 = h1 + 2 * h0;
            d[i] = (w0 + w1) / (w0 / secant[i - 1] + w1 / secant[i]);
        }
        d[0] = endSlope(p[1] - p[0], p[2] - p[1], secant[0], secant[1]);
        d[n - 1] = endSlope(p[n - 1] - p[n - 2], p[n - 2] - p[n - 3], secant[n - 2], secant[n - 3]);
        return d;
    }

    /** Three-point end slope, held to the monotone region and kept off zero so that it inverts. */
    private static double endSlope(double h0, double h1, double s0, double s1) {
        double d = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
        return Math.max(3 * s0, Math.min(0.01 * s0, d));
    }

    /**
     * Smallest tabulated pressure.
     *
     * @return Pa
     */
    public double lowestPressure() {
        return pressure[0];
    }

    /**
     * Largest tabulated pressure.
     *
     * @return Pa
     */
    public double highestPressure() {
        return pressure[pressure.length - 1];
    }

    /**
     * Smallest tabulated flow, met at the largest pressure.
     *
     * @return m3/s
     */
    public double lowestFlow() {
        return flow[flow.length - 1];
    }

    /**
     * Largest tabulated flow, met at the smallest pressure.
     *
     * @return m3/s
     */
    public double highestFlow() {
        return flow[0];
    }

    /**
     * Flow at an external static pressure.
     *
     * @param p external static pressure at the table's density, Pa, within the table
     * @return volume flow, m3/s
     * @throws IllegalArgumentException if the pressure is NaN or outside the table
     */
    public double flowAt(double p) {
        Range.require("external static pressure", p, lowestPressure(), highestPressure(), "Pa");
        int i = 0;
        while (i < pressure.length - 2 && p > pressure[i + 1]) {
            i++;
        }
        return hermite(i, p);
    }

    /**
     * Pressure at a flow: the inverse of {@link #flowAt}.
     *
     * @param q volume flow, m3/s, within the table
     * @return external static pressure at the table's density, Pa
     * @throws IllegalArgumentException if the flow is NaN or outside the table
     */
    public double pressureAt(double q) {
        Range.require("blower airflow", q, lowestFlow(), highestFlow(), "m3/s");
        return riseAt(q);
    }

    /**
     * Pressure at any flow, continued in a straight line beyond both ends of the table.
     *
     * @param q volume flow, m3/s
     * @return external static pressure at the table's density, Pa
     * @throws IllegalArgumentException if the flow is not finite
     */
    public double pressureBeyond(double q) {
        Range.require("blower airflow", q, -1e3, 1e3, "m3/s");
        return riseAt(q);
    }

    /** As {@link #pressureBeyond}, unchecked: an iteration may stray outside and come back. */
    double riseAt(double q) {
        int n = flow.length;
        if (q >= flow[0]) {
            return pressure[0] + (q - flow[0]) / slope[0];
        }
        if (q <= flow[n - 1]) {
            return pressure[n - 1] + (q - flow[n - 1]) / slope[n - 1];
        }
        int i = 0;
        while (q < flow[i + 1]) {
            i++;
        }
        double low = pressure[i];
        double high = pressure[i + 1];
        double p = low + (high - low) * (q - flow[i]) / (flow[i + 1] - flow[i]);
        // Newton kept inside the segment; once a step is small the next one ends at rounding error.
        boolean last = false;
        for (int step = 0; step < 60; step++) {
            double error = hermite(i, p) - q;
            if (error > 0) {
                low = p;
            } else {
                high = p;
            }
            double next = p - error / hermiteSlope(i, p);
            if (!(next >= low && next <= high)) {
                if (last) {
                    return p;
                }
                next = 0.5 * (low + high);
            }
            if (last) {
                return next;
            }
            last = Math.abs(next - p) <= 1e-7 * (pressure[i + 1] - pressure[i]);
            p = next;
        }
        return p;
    }

    /** d pressure / d flow at a flow whose pressure is already known; negative. */
    double riseSlope(double q, double p) {
        int n = flow.length;
        if (q >= flow[0]) {
            return 1 / slope[0];
        }
        if (q <= flow[n - 1]) {
            return 1 / slope[n - 1];
        }
        int i = 0;
        while (q < flow[i + 1]) {
            i++;
        }
        return 1 / hermiteSlope(i, p);
    }

    /** d2 pressure / d flow2 at a flow whose pressure is already known. */
    double riseBend(double q, double p) {
        int n = flow.length;
        if (q >= flow[0] || q <= flow[n - 1]) {
            return 0;
        }
        int i = 0;
        while (q < flow[i + 1]) {
            i++;
        }
        double h = pressure[i + 1] - pressure[i];
        double t = (p - pressure[i]) / h;
        double secant = (flow[i + 1] - flow[i]) / h;
        double bend =
                (6 * (1 - 2 * t) * secant + (6 * t - 4) * slope[i] + (6 * t - 2) * slope[i + 1])
                        / h;
        double steep = hermiteSlope(i, p);
        return -bend / (steep * steep * steep);
    }

    private double hermite(int i, double p) {
        double h = pressure[i + 1] - pressure[i];
        double t = (p - pressure[i]) / h;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * flow[i] + t * h * slope[i])
                + t * t * ((3 - 2 * t) * flow[i + 1] - u * h * slope[i + 1]);
    }

    private double hermiteSlope(int i, double p) {
        double h = pressure[i + 1] - pressure[i];
        double t = (p - pressure[i]) / h;
        double secant = (flow[i + 1] - flow[i]) / h;
        return 6 * t * (1 - t) * secant
                + (1 - t) * (1 - 3 * t) * slope[i]
                + t * (3 * t - 2) * slope[i + 1];
    }
}
