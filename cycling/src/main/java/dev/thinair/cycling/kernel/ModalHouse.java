package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;
import org.apache.commons.math3.exception.MathUnsupportedOperationException;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * A linear house in modal coordinates.
 *
 * <p>The house is <code>C dT/dt = -K T + q(t)</code> with <var>C</var> a diagonal of heat
 * capacities, J/K, and <var>K</var> a symmetric positive definite matrix of conductances, W/K (off
 * the diagonal the negative conductance between two nodes; on it the sum of a node's conductances,
 * those to the surroundings included). With <code>
 * S = C<sup>-1/2</sup> K C<sup>-1/2</sup> = V &Lambda;
 * V<sup>T</sup></code> and <code>z = V<sup>T</sup> C<sup>1/2</sup> T</code> the modes are
 * independent: <code>
 * dz<sub>k</sub>/dt = -&lambda;<sub>k</sub> z<sub>k</sub> + (V<sup>T</sup> C<sup>-1/2</sup>
 * q)<sub>k</sub></code>, so that constant, ramp and exponential inputs have closed solutions.
 *
 * <p>Accuracy: the eigen decomposition leaves a residual near 1e-14 of the largest rate; a rate
 * <var>r</var> times smaller than the largest is known to about 1e-16/<var>r</var>.
 *
 * <p>Immutable after construction; any thread may share it. A house of many nodes can be
 * {@linkplain #reduced reduced} to fewer modes.
 */
public final class ModalHouse {

    /** Smallest ratio of slowest to fastest rate that double precision can still tell from zero. */
    private static final double SMALLEST_RATE_RATIO = 1e-13;

    private final int size;
    private final double[] capacity;
    private final double[] rootCapacity;
    private final double[] rate;

    /** Row i: eigenvector component i of every mode, so that sums over nodes run along rows. */
    private final double[][] vector;

    private final double[] loss;

    private ModalHouse(double[] capacity, double[] rate, double[][] vector, double[] loss) {
        this.size = capacity.length;
        this.capacity = capacity;
        this.rate = rate;
        this.vector = vector;
        this.loss = loss;
        this.rootCapacity = new double[size];
        for (int i = 0; i < size; i++) {
            rootCapacity[i] = Math.sqrt(capacity[i]);
        }
    }

    /**
     * Decomposes a house. Cost grows with the cube of the number of nodes (about 0.5 ms for 60).
     *
     * @param capacity heat capacity of each node, J/K, above 0
     * @param conductance symmetric positive definite matrix of conductances, W/K
     * @return the house in modal coordinates
     * @throws IllegalArgumentException if a capacity is not above 0, the matrix is not square of
     *     that size, not symmetric to 1e-9 of its largest entry, or not positive definite (a house
     *     without any loss to the surroundings has no steady state)
     * @throws ArithmeticException if the eigenvalue iteration fails
     */
    public static ModalHouse of(double[] capacity, double[][] conductance) {
        return of(capacity, conductance, null, 0);
    }

    /**
     * A house of many nodes by few modes: those that are needed for the temperatures of some nodes
     * (the rooms' air). Steady states of those nodes and the heat balance of the whole house stay
     * exact; of what any heat into any node does to a watched node on any time scale at most the
     * tolerance is lost, measured against the effect of as much heat stored, spread at worst. The
     * temperatures of other nodes are only as good as it takes for that. The time scales go from
     * three times the house's own down to the fastest watched node's. Checked are heats that grow
     * without swinging, on a grid of scales in that range that is refined until the tolerance is
     * met half-way between its points; that is a check and not a proof for all heats.
     *
     * <p>With a tolerance of 1e-4 the rooms' air follows the whole model to some millikelvins, by
     * about six modes a room. The cost grows with the number of nodes and the square of the number
     * of modes; a house whose layers are numbered in order after its rooms is done fastest.
     *
     * @param capacity heat capacity of each node, J/K, above 0
     * @param conductance symmetric positive definite matrix of conductances, W/K
     * @param watched the nodes that are looked at or heated or cooled by a unit, at least one
     * @param tolerance relative, in [1e-6, 0.1]; its square is what the check must tell from
     *     rounding
     * @return the house in the modes of the reduced model
     * @throws IllegalArgumentException as {@link #of(double[], double[][])}; or if a watched node
     *     is not in the house, none is watched, or the tolerance is out of range
     * @throws ArithmeticException if the eigenvalue iteration fails or the grid is not fine enough
     *     after six refinements; the message says where and what is lacking
     */
    public static ModalHouse reduced(
            double[] capacity, double[][] conductance, int[] watched, double tolerance) {
        if (watched == null || watched.length == 0) {
            throw new IllegalArgumentException("a reduced house needs at least one watched node");
        }
        if (capacity != null) {
            for (int w : watched) {
                Range.require("watched node", w, 0, capacity.length - 1, "");
            }
        }
        Range.require("tolerance of the reduction", tolerance, 1e-6, 0.1, "");
        return of(capacity, conductance, watched.clone(), tolerance);
    }

    private static ModalHouse of(
            double[] capacity, double[][] conductance, int[] watched, double tolerance) {
        if (capacity == null || conductance == null) {
            throw new IllegalArgumentException(
                    "house needs an array of heat capacities and a matrix of conductances, not"
                            + " null");
        }
        int n = capacity.length;
        if (n == 0) {
            throw new IllegalArgumentException("house has 0 nodes, but must have at least 1");
        }
        if (conductance.length != n) {
            throw new IllegalArgumentException(
                    "conductance matrix has " + conductance.length + " rows for " + n + " nodes");
        }
        double largest = 0;
        for (int i = 0; i < n; i++) {
            Range.requireAbove("heat capacity of node " + i, capacity[i], 0, "J/K");
            if (conductance[i] == null || conductance[i].length != n) {
                throw new IllegalArgumentException(
                        "conductance matrix row " + i + " does not have " + n + " entries");
            }
            for (int j = 0; j < n; j++) {
                double k = conductance[i][j];
                if (!(Math.abs(k) < Double.POSITIVE_INFINITY)) {
                    throw new IllegalArgumentException(
                            "conductance between nodes "
                                    + i
                                    + " and "
                                    + j
                                    + " is "
                                    + k
                                    + " W/K, but must be finite");
                }
                largest = Math.max(largest, Math.abs(k));
            }
        }
        double[][] mean = new double[n][n];
        double[] loss = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double difference = Math.abs(conductance[i][j] - conductance[j][i]);
                if (difference > 1e-9 * largest) {
                    throw new IllegalArgumentException(
                            "conductance matrix is not symmetric: entries ("
                                    + i
                                    + ", "
                                    + j
                                    + ") and ("
                                    + j
                                    + ", "
                                    + i
                                    + ") are "
                                    + conductance[i][j]
                                    + " and "
                                    + conductance[j][i]
                                    + " W/K");
                }
                mean[i][j] = 0.5 * (conductance[i][j] + conductance[j][i]);
                loss[i] += mean[i][j];
            }
        }
        if (watched != null) {
            return reduced(capacity.clone(), mean, loss, watched, tolerance);
        }
        double[] rootC = new double[n];
        for (int i = 0; i < n; i++) {
            rootC[i] = Math.sqrt(capacity[i]);
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                mean[i][j] /= rootC[i] * rootC[j];
            }
        }
        double[] rate = new double[n];
        double[][] vector = new double[n][n];
        decompose(mean, rate, vector);
        requireLosses(rate);
        return new ModalHouse(capacity.clone(), rate, vector, loss);
    }

    private static ModalHouse reduced(
            double[] capacity, double[][] conductance, double[] loss, int[] watched, double tol) {
        int n = capacity.length;
        HouseReduction reduction = new HouseReduction(capacity, conductance, watched, tol);
        double[][] basis = reduction.basis();
        int m = basis.length;
        double[] rate = new double[m];
        double[][] turn = new double[m][m];
        decompose(reduction.projected(), rate, turn);
        requireLosses(rate);
        double[][] vector = new double[n][m];
        for (int i = 0; i < n; i++) {
            double[] row = vector[i];
            for (int b = 0; b < m; b++) {
                double share = basis[b][i];
                double[] turned = turn[b];
                for (int k = 0; k < m; k++) {
                    row[k] += share * turned[k];
                }
            }
        }
        return new ModalHouse(capacity, rate, vector, loss);
    }

    private static void requireLosses(double[] rate) {
        double fastest = 0;
        double slowest = Double.POSITIVE_INFINITY;
        for (double r : rate) {
            fastest = Math.max(fastest, r);
            slowest = Math.min(slowest, r);
        }
        if (!(slowest > SMALLEST_RATE_RATIO * fastest)) {
            throw new IllegalArgumentException(
                    "conductance matrix is not positive definite: slowest rate is "
                            + slowest
                            + " 1/s beside a fastest of "
                            + fastest
                            + " 1/s; every node needs a path of heat to the surroundings");
        }
    }

    private static void decompose(double[][] s, double[] rate, double[][] vector) {
        int n = s.length;
        EigenDecomposition eigen;
        try {
            eigen = new EigenDecomposition(new Array2DRowRealMatrix(s, false));
        } catch (MaxCountExceededException | MathUnsupportedOperationException e) {
            throw (ArithmeticException)
                    new ArithmeticException(
                                    "eigenvalues of the house of " + n + " nodes did not converge")
                            .initCause(e);
        }
        for (int k = 0; k < n; k++) {
            // Fastest first is what the library gives; slowest first lets searches drop the tail.
            int from = n - 1 - k;
            rate[k] = eigen.getRealEigenvalue(from);
            for (int i = 0; i < n; i++) {
                vector[i][k] = eigen.getV().getEntry(i, from);
            }
        }
    }

    /**
     * Number of nodes.
     *
     * @return n, at least 1
     */
    public int size() {
        return size;
    }

    /**
     * Rates of the modes, 1/s, slowest first.
     *
     * @return a fresh array
     */
    public double[] rates() {
        return rate.clone();
    }

    /**
     * Heat capacities of the nodes, J/K.
     *
     * @return a fresh array
     */
    public double[] capacities() {
        return capacity.clone();
    }

    /**
     * Conductance of each node to the surroundings (row sums of the matrix), W/K.
     *
     * @return a fresh array
     */
    public double[] losses() {
        return loss.clone();
    }

    /**
     * Modal row of a weighted sum of node temperatures: <code>g<sub>k</sub> = &Sigma; w<sub>i</sub>
     * C<sub>i</sub><sup>-1/2</sup> V<sub>ik</sub></code>, so that <code>w T = g z</code>. The same
     * row says how heat spread over the nodes by these weights drives the modes.
     *
     * @param weights one weight per node
     * @return a fresh array of one entry per mode
     * @throws IllegalArgumentException if the length differs from the number of nodes or a weight
     *     is not finite
     */
    public double[] row(double[] weights) {
        requireLength("weights", weights);
        double[] g = new double[rate.length];
        for (int i = 0; i < size; i++) {
            if (!(Math.abs(weights[i]) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "weight of node " + i + " is " + weights[i] + ", but must be finite");
            }
            double w = weights[i] / rootCapacity[i];
            if (w != 0) {
                for (int k = 0; k < g.length; k++) {
                    g[k] += w * vector[i][k];
                }
            }
        }
        return g;
    }

    /**
     * Modal forcing of heat into the nodes, <code>f = V<sup>T</sup> C<sup>-1/2</sup> q</code>.
     * Allocates nothing.
     *
     * @param heat heat into each node, W
     * @param out receives one entry per mode
     */
    public void forcing(double[] heat, double[] out) {
        int n = rate.length;
        for (int k = 0; k < n; k++) {
            out[k] = 0;
        }
        for (int i = 0; i < size; i++) {
            double q = heat[i];
            // Inner layers get no heat of their own: most rows are skipped.
            if (q != 0) {
                q /= rootCapacity[i];
                double[] row = vector[i];
                for (int k = 0; k < n; k++) {
                    out[k] += q * row[k];
                }
            }
        }
    }

    /**
     * Modal coordinates of node temperatures, <code>z = V<sup>T</sup> C<sup>1/2</sup> T</code>.
     *
     * @param temperature node temperatures, K
     * @param out receives one entry per mode
     */
    public void toModal(double[] temperature, double[] out) {
        int n = rate.length;
        for (int k = 0; k < n; k++) {
            out[k] = 0;
        }
        for (int i = 0; i < size; i++) {
            double x = temperature[i] * rootCapacity[i];
            double[] row = vector[i];
            for (int k = 0; k < n; k++) {
                out[k] += x * row[k];
            }
        }
    }

    /**
     * Node temperatures of modal coordinates, <code>T = C<sup>-1/2</sup> V z</code>.
     *
     * @param z modal coordinates
     * @param out receives one temperature per node, K
     */
    public void toNodes(double[] z, double[] out) {
        int n = rate.length;
        for (int i = 0; i < size; i++) {
            double sum = 0;
            double[] row = vector[i];
            for (int k = 0; k < n; k++) {
                sum += row[k] * z[k];
            }
            out[i] = sum / rootCapacity[i];
        }
    }

    /**
     * Steady node temperatures under constant heat, <code>T = K<sup>-1</sup> q</code>.
     *
     * @param heat heat into each node (losses to the surroundings times their temperature
     *     included), W
     * @return node temperatures, K, in a fresh array
     * @throws IllegalArgumentException if the length differs from the number of nodes
     */
    public double[] steady(double[] heat) {
        requireLength("heat", heat);
        double[] f = new double[rate.length];
        forcing(heat, f);
        for (int k = 0; k < f.length; k++) {
            f[k] /= rate[k];
        }
        double[] out = new double[size];
        toNodes(f, out);
        return out;
    }

    /**
     * Node temperatures after a time under heat that changes linearly; exact.
     *
     * @param temperature node temperatures at the start, K
     * @param heat heat into each node at the start, W
     * @param heatSlope change of that heat, W/s
     * @param seconds time, s, at least 0
     * @return node temperatures, K, in a fresh array
     * @throws IllegalArgumentException if a length differs from the number of nodes or the time is
     *     negative or not finite
     */
    public double[] after(double[] temperature, double[] heat, double[] heatSlope, double seconds) {
        requireLength("temperatures", temperature);
        requireLength("heat", heat);
        requireLength("slope of heat", heatSlope);
        Range.require("time", seconds, 0, 1e12, "s");
        int m = rate.length;
        double[] z = new double[m];
        double[] f = new double[m];
        double[] fs = new double[m];
        toModal(temperature, z);
        forcing(heat, f);
        forcing(heatSlope, fs);
        for (int k = 0; k < m; k++) {
            double b = fs[k] / rate[k];
            double a = (f[k] - b) / rate[k];
            z[k] = a + b * seconds + (z[k] - a) * Math.exp(-rate[k] * seconds);
        }
        double[] out = new double[size];
        toNodes(z, out);
        return out;
    }

    /**
     * Number of modes: that of the nodes, or fewer in a reduced house.
     *
     * @return m, at least 1
     */
    public int modes() {
        return rate.length;
    }

    /** Modal row of the heat lost to the surroundings by its conductances. */
    double[] lossRow() {
        return row(loss);
    }

    /** What 1 W into a node does to every mode, in another order. */
    double[] driven(int node, int[] order) {
        double[] out = new double[order.length];
        for (int k = 0; k < order.length; k++) {
            out[k] = vector[node][order[k]] / rootCapacity[node];
        }
        return out;
    }

    /** Rates without a copy, for the engine of this package. */
    double[] sharedRates() {
        return rate;
    }

    private void requireLength(String name, double[] values) {
        if (values == null || values.length != size) {
            throw new IllegalArgumentException(
                    name
                            + " must have one entry for each of the "
                            + size
                            + " nodes, not "
                            + (values == null ? "null" : String.valueOf(values.length)));
        }
    }
}
