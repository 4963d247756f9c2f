package dev.thinair.cycling.kernel;

import java.util.ArrayList;
import java.util.List;

/**
 * A small subspace that holds what a large house does at a few watched nodes.
 *
 * <p>In coordinates <code>y = C<sup>1/2</sup> T</code> the house is <code>
 * dy/dt = -S y + ...</code> with <code>S = C<sup>-1/2</sup> K C<sup>-1/2</sup></code>. The subspace
 * is spanned by the answers <code>(S + s)<sup>-1</sup> e</code> of the house to heat into each
 * watched node <var>e</var> that grows like <code>e<sup>st</sup></code>: at <var>s</var> = 0 (the
 * steady state), at infinity (the first moment), and at as many <var>s</var> between as are needed.
 * Projection onto it (rational Krylov subspace, Galerkin condition) reproduces the temperatures of
 * the watched nodes at those <var>s</var> for heat into <em>any</em> node, because <var>S</var> is
 * symmetric, and keeps the house symmetric and stable. The uniform temperature is in the subspace
 * as well, so that the heat balance of the whole house stays exact.
 *
 * <p><b>Tolerance.</b> Half-way between two <var>s</var> (in the logarithm) the answer is found
 * exactly. With <var>x</var> the exact and <var>x'</var> the projected answer, <code>
 * e<sup>T</sup>x - e<sup>T</sup>x'</code> is the square of the energy norm of their difference, by
 * which, times the energy norm of its own answer, the error at the watched node is bounded for heat
 * into any node (Cauchy-Schwarz). Where that is more than the square of the tolerance times <code>
 * e<sup>T</sup>x</code> the answer joins the subspace and both halves are looked at in turn; a
 * stretch that does not come to rest in {@value #DEEPEST} halvings is refused. What is looked at
 * are real <var>s</var>, that is heat that grows without swinging, at finitely many points: a check
 * of the range and not a proof for every <var>s</var> in it or for swinging heat.
 *
 * <p>Method: A. Ruhe, "Rational Krylov sequence methods for eigenvalue computation", Linear Algebra
 * and its Applications 58 (1984) 391-405; C. A. Beattie and S. Gugercin, "Model reduction by
 * rational interpolation", in Model Reduction and Approximation, SIAM 2017 (both from memory).
 */
final class HouseReduction {

    /** A direction of which less than this share is new adds nothing. */
    private static final double NEW_SHARE = 1e-7;

    private static final int DEEPEST = 6;

    private final int n;
    private final double[] capacity;
    private final double[] rootCapacity;
    private final double[][] conductance;
    private final int[] watched;
    private final double tolerance;
    private final int[][] neighbour;
    private final List<double[]> basis = new ArrayList<>();
    private final List<double[]> image = new ArrayList<>(); // S times each
    private final double[][] work;
    private final int[][] near;
    private final double[][] factor;
    private final double[] pivot;
    private int worst; // watched node last found to lack something
    private double lack; // of its answer, as a share

    HouseReduction(double[] capacity, double[][] conductance, int[] watched, double tolerance) {
        n = capacity.length;
        this.capacity = capacity;
        this.conductance = conductance;
        this.watched = watched;
        this.tolerance = tolerance;
        rootCapacity = new double[n];
        neighbour = new int[n][];
        work = new double[n][];
        near = new int[n][];
        factor = new double[n][];
        pivot = new double[n];
        int[] found = new int[n];
        for (int i = 0; i < n; i++) {
            rootCapacity[i] = Math.sqrt(capacity[i]);
            work[i] = new double[i + 1];
            int count = 0;
            for (int j = 0; j < n; j++) {
                if (conductance[i][j] != 0) {
                    found[count++] = j;
                }
            }
            neighbour[i] = java.util.Arrays.copyOf(found, count);
        }
    }

    /** Orthonormal rows that span the subspace. */
    double[][] basis() {
        double loss = 0;
        double heat = 0;
        double fastest = 0;
        for (int i = 0; i < n; i++) {
            heat += capacity[i];
            for (int j : neighbour[i]) {
                loss += conductance[i][j];
            }
        }
        join(rootCapacity);
        for (int w : watched) {
            double[] unit = new double[n];
            unit[w] = 1;
            join(unit);
            fastest = Math.max(fastest, conductance[w][w] / capacity[w]);
        }
        add(answers(0));
        double slowest = Math.min(loss / heat, fastest) / 3;
        int decades = Math.max(1, (int) Math.ceil(Math.log10(fastest / slowest)));
        double[] mark = new double[decades + 1];
        for (int k = 0; k <= decades; k++) {
            mark[k] = slowest * Math.pow(fastest / slowest, (double) k / decades);
            refine(mark[k]);
        }
        for (int k = 0; k < decades; k++) {
            between(mark[k], mark[k + 1], 1);
        }
        return basis.toArray(new double[0][]);
    }

    /** The house in the subspace. */
    double[][] projected() {
        int m = basis.size();
        double[][] s = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j <= i; j++) {
                s[i][j] = ThermostatEngine.dot(basis.get(i), image.get(j), n);
                s[j][i] = s[i][j];
            }
        }
        return s;
    }

    private void between(double low, double high, int depth) {
        double middle = Math.sqrt(low * high);
        if (!refine(middle)) {
            return;
        }
        if (depth == DEEPEST) {
            throw new ArithmeticException(
                    "reduced house does not reach its tolerance "
                            + tolerance
                            + " in "
                            + DEEPEST
                            + " halvings: at "
                            + middle
                            + " 1/s watched node "
                            + worst
                            + " of "
                            + n
                            + " nodes lacks "
                            + lack
                            + " of its answer in "
                            + basis.size()
                            + " modes, allowed "
                            + tolerance * tolerance);
        }
        between(low, middle, depth + 1);
        between(middle, high, depth + 1);
    }

    /**
     * Adds the answers that the subspace does not hold well enough; says whether there were any.
     */
    private boolean refine(double s) {
        if (basis.size() == n) {
            return false; // nothing is left out
        }
        double[][] answer = answers(s);
        int m = basis.size();
        double[][] reduced = projected();
        double[][] right = new double[watched.length][m];
        for (int i = 0; i < m; i++) {
            reduced[i][i] += s;
            for (int w = 0; w < watched.length; w++) {
                right[w][i] = basis.get(i)[watched[w]];
            }
        }
        double[] held = energies(reduced, right);
        List<double[]> missing = new ArrayList<>();
        for (int w = 0; w < watched.length; w++) {
            double exact = answer[w][watched[w]];
            // So that what is not a number counts as missing.
            if (!(exact - held[w] <= tolerance * tolerance * exact)) {
                missing.add(answer[w]);
                worst = watched[w];
                lack = (exact - held[w]) / exact;
            }
        }
        add(missing.toArray(new double[0][]));
        return !missing.isEmpty();
    }

    /** b^T A^-1 b for each b, A symmetric positive definite and destroyed. */
    private static double[] energies(double[][] a, double[][] b) {
        int m = a.length;
        for (int k = 0; k < m; k++) {
            for (int i = k; i < m; i++) {
                double sum = a[i][k];
                for (int j = 0; j < k; j++) {
                    sum -= a[i][j] * a[k][j];
                }
                a[i][k] = i == k ? Math.sqrt(sum) : sum / a[k][k];
            }
        }
        double[] energy = new double[b.length];
        for (int w = 0; w < b.length; w++) {
            double[] y = b[w];
            for (int i = 0; i < m; i++) {
                double sum = y[i];
                for (int j = 0; j < i; j++) {
                    sum -= a[i][j] * y[j];
                }
                y[i] = sum / a[i][i];
                energy[w] += y[i] * y[i];
            }
        }
        return energy;
    }

    private void add(double[][] vectors) {
        for (double[] v : vectors) {
            join(v);
        }
    }

    /** Takes a direction into the orthonormal basis, if there is anything new in it. */
    private void join(double[] vector) {
        double[] v = vector.clone();
        double size = Math.sqrt(ThermostatEngine.dot(v, v, v.length));
        for (int pass = 0; pass < 2; pass++) {
            for (double[] u : basis) {
                double share = ThermostatEngine.dot(u, v, v.length);
                for (int i = 0; i < n; i++) {
                    v[i] -= share * u[i];
                }
            }
        }
        double left = Math.sqrt(ThermostatEngine.dot(v, v, v.length));
        if (!(left > NEW_SHARE * size) || basis.size() == n) {
            return;
        }
        for (int i = 0; i < n; i++) {
            v[i] /= left;
        }
        double[] s = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j : neighbour[i]) {
                sum += conductance[i][j] * v[j] / rootCapacity[j];
            }
            s[i] = sum / rootCapacity[i];
        }
        basis.add(v);
        image.add(s);
    }

    /**
     * Answers (S + s)^-1 e of the watched nodes. Nodes are eliminated from the last to the first:
     * the layers of a wall come in order after the rooms, so that hardly anything fills in.
     */
    private double[][] answers(double s) {
        for (int i = 0; i < n; i++) {
            System.arraycopy(conductance[i], 0, work[i], 0, i + 1);
            work[i][i] += s * capacity[i];
        }
        int[] found = new int[n];
        for (int e = n - 1; e >= 0; e--) {
            double[] row = work[e];
            int count = 0;
            for (int j = 0; j < e; j++) {
                if (row[j] != 0) {
                    found[count++] = j;
                }
            }
            pivot[e] = row[e];
            if (!(pivot[e] > 0)) {
                throw new IllegalArgumentException(
                        "conductance matrix is not positive definite at node "
                                + e
                                + "; every node needs a path of heat to the surroundings");
            }
            int[] at = java.util.Arrays.copyOf(found, count);
            double[] f = new double[count];
            for (int p = 0; p < count; p++) {
                f[p] = row[at[p]] / pivot[e];
                double[] target = work[at[p]];
                for (int q = 0; q <= p; q++) {
                    target[at[q]] -= f[p] * row[at[q]];
                }
            }
            near[e] = at;
            factor[e] = f;
        }
        double[][] out = new double[watched.length][n];
        for (int w = 0; w < watched.length; w++) {
            double[] x = out[w];
            x[watched[w]] = rootCapacity[watched[w]];
            for (int e = watched[w]; e >= 0; e--) {
                for (int p = 0; p < near[e].length; p++) {
                    x[near[e][p]] -= factor[e][p] * x[e];
                }
            }
            for (int e = 0; e < n; e++) {
                double sum = x[e] / pivot[e];
                for (int p = 0; p < near[e].length; p++) {
                    sum -= factor[e][p] * x[near[e][p]];
                }
                x[e] = sum;
            }
            for (int e = 0; e < n; e++) {
                x[e] *= rootCapacity[e];
            }
        }
        return out;
    }
}
