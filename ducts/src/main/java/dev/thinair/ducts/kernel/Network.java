package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Flows and pressures in any connected graph of ducts, filters, leaks and blowers.
 *
 * <p>Model: one air density and viscosity in the whole network, total pressures at the nodes,
 * volume conserved at every node. A branch from node a to node b obeys {@code p_a - p_b + gain =
 * h(Q)}, with Q positive from a to b and h rising:
 *
 * <ul>
 *   <li>duct: {@code h = (m f L/D + C) rho V^2/2}, f by {@link Friction#darcy};
 *   <li>quadratic: {@code h = R (rho/rho0) Q|Q|};
 *   <li>filter or coil: {@code h = a Q + b (rho/rho0) Q|Q|}, where a is viscous and does not change
 *       with density;
 *   <li>leak: {@code Q = c sign(dp) |dp|^n};
 *   <li>blower: {@code h = -(rho/rho0) rise(Q)}, a polynomial or a table;
 *   <li>held flow: {@code Q} given, any pressure.
 * </ul>
 *
 * <p>Method: Newton on node pressures and branch flows together. Each step needs one value of h per
 * branch and one linear system for the pressures. Since h rises with Q, the solution minimises a
 * convex content function and is unique; a line search on that function's slope makes the iteration
 * converge from any start. The linear system is eliminated in minimum-degree order fixed when the
 * network is built, so that a tree costs linear time and a loop only its own fill; pivots are
 * formed by additions of positive numbers only (star-mesh reduction), so that no digits are lost.
 *
 * <p>Source: the global gradient method of Todini and Pilati (1987) and the content of Cherry and
 * Millar (1951) (both from memory); line search and elimination are this library's own.
 *
 * <p>A built network is immutable; each thread solves with its own {@link Workspace}.
 */
public final class Network {

    static final int DUCT = 0;
    static final int QUADRATIC = 1;
    static final int FILTER = 2;
    static final int LEAK = 3;
    static final int POLYNOMIAL = 4;
    static final int TABLE = 5;
    static final int HELD = 6;

    /** Numbers kept per branch. */
    private static final int WIDTH = 6;

    private static final int MAX_STEPS = 100;

    /**
     * Pressure below which the slope of a purely quadratic or leakage law is no longer followed,
     * Pa: at no flow it would be 0, and the conductance infinite.
     */
    private static final double FLAT = 1e-8;

    /** What rounding leaves uncertain in pressure differences, over the highest pressure. */
    private static final double ROUNDING = 1e-14;

    private final Topology topology;
    private final double referenceDensity;
    private final int[] kind;
    private final double[] data;
    private final double[] count;
    private final double[] gain;
    private final double[] fixedPressure;
    private final BlowerCurve[] curve;

    private Network(
            Topology topology,
            double referenceDensity,
            int[] kind,
            double[] data,
            double[] count,
            double[] gain,
            double[] fixedPressure,
            BlowerCurve[] curve) {
        this.topology = topology;
        this.referenceDensity = referenceDensity;
        this.kind = kind;
        this.data = data;
        this.count = count;
        this.gain = gain;
        this.fixedPressure = fixedPressure;
        this.curve = curve;
    }

    /**
     * Starts a description.
     *
     * @param referenceDensity density to which quadratic, filter and blower data belong, kg/m3
     * @return an empty builder
     * @throws IllegalArgumentException if the density is not physical
     */
    public static Builder builder(double referenceDensity) {
        Range.require("reference density", referenceDensity, 0.1, 10, "kg/m3");
        return new Builder(referenceDensity);
    }

    /**
     * Number of branches.
     *
     * @return how many
     */
    public int branchCount() {
        return kind.length;
    }

    /**
     * Number of nodes, fixed ones included.
     *
     * @return how many
     */
    public int nodeCount() {
        return topology.nodeName.length;
    }

    /**
     * Name of a branch.
     *
     * @param branch its number
     * @return the name given to the builder
     */
    public String branchName(int branch) {
        return topology.branchName[branch];
    }

    /**
     * Name of a node.
     *
     * @param node its number
     * @return the name given to the builder
     */
    public String nodeName(int node) {
        return topology.nodeName[node];
    }

    /**
     * Node where a branch starts.
     *
     * @param branch its number
     * @return node number
     */
    public int from(int branch) {
        return topology.from[branch];
    }

    /**
     * Node where a branch ends.
     *
     * @param branch its number
     * @return node number
     */
    public int to(int branch) {
        return topology.to[branch];
    }

    /**
     * Number of the branch with a name.
     *
     * @param name its name
     * @return branch number
     * @throws IllegalArgumentException if there is no such branch
     */
    public int branch(String name) {
        return index(topology.branchName, name, "branch");
    }

    /**
     * Number of the node with a name.
     *
     * @param name its name
     * @return node number
     * @throws IllegalArgumentException if there is no such node
     */
    public int node(String name) {
        return index(topology.nodeName, name, "node");
    }

    private static int index(String[] names, String name, String what) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "there is no "
                        + what
                        + " named \""
                        + name
                        + "\"; known are "
                        + Arrays.asList(names));
    }

    /**
     * Whether the unknown nodes form a tree (or several), in which case elimination takes linear
     * time.
     *
     * @return true if no loop runs through nodes of unknown pressure
     */
    public boolean isTree() {
        return topology.slots < topology.unknowns || topology.unknowns == 0;
    }

    /**
     * The same network with a number of equal parallel copies of one branch; 0 shuts it tight.
     *
     * @param branch branch number
     * @param copies how many, in [0, 1000]; 1 is the branch as built
     * @return the changed network, which shares everything else with this one
     * @throws IllegalArgumentException if the number is out of range, or shutting the branch cuts a
     *     node off from every node of known pressure
     */
    public Network withCopies(int branch, double copies) {
        Range.require("number of parallel copies", copies, 0, 1_000, "");
        double[] changed = count.clone();
        changed[branch] = copies;
        if (copies == 0) {
            topology.requireReach(changed);
        }
        return new Network(
                topology, referenceDensity, kind, data, changed, gain, fixedPressure, curve);
    }

    /**
     * The same network with some branches shut tight.
     *
     * @param branches branch numbers
     * @return the changed network
     * @throws IllegalArgumentException if this cuts a node off from every node of known pressure
     */
    public Network withShut(int... branches) {
        double[] changed = count.clone();
        for (int b : branches) {
            changed[b] = 0;
        }
        topology.requireReach(changed);
        return new Network(
                topology, referenceDensity, kind, data, changed, gain, fixedPressure, curve);
    }

    /**
     * The same network with other data in a duct branch.
     *
     * @param branch number of a duct branch
     * @param duct replacement, with the numbers of {@link Builder#duct}: hydraulic diameter m, area
     *     m2, length m, roughness m, loss coefficient, friction multiplier
     * @return the changed network
     * @throws IllegalArgumentException if the branch is no duct or a number is out of range
     */
    public Network withDuct(int branch, double... duct) {
        if (kind[branch] != DUCT || duct.length != WIDTH) {
            throw new IllegalArgumentException(
                    "branch \""
                            + branchName(branch)
                            + "\" is no duct, or not six numbers were given");
        }
        checkDuct(branchName(branch), duct[0], duct[1], duct[2], duct[3], duct[4], duct[5]);
        double[] changed = data.clone();
        System.arraycopy(duct, 0, changed, branch * WIDTH, WIDTH);
        return new Network(
                topology, referenceDensity, kind, changed, count, gain, fixedPressure, curve);
    }

    /**
     * The same network with a branch replaced by a held flow.
     *
     * @param branch branch number
     * @param flow volume flow from its start to its end, m3/s
     * @return the changed network
     * @throws IllegalArgumentException if the flow is not finite
     */
    public Network withHeldFlow(int branch, double flow) {
        Range.require("held flow", flow, -100, 100, "m3/s");
        int[] kinds = kind.clone();
        kinds[branch] = HELD;
        double[] changed = data.clone();
        changed[branch * WIDTH] = flow;
        return new Network(
                topology, referenceDensity, kinds, changed, count, gain, fixedPressure, curve);
    }

    /**
     * The same network with a branch replaced by a blower table.
     *
     * @param branch branch number
     * @param table the blower's curve at reference density
     * @return the changed network
     */
    public Network withTable(int branch, BlowerCurve table) {
        int[] kinds = kind.clone();
        kinds[branch] = TABLE;
        BlowerCurve[] curves = curve.clone();
        curves[branch] = table;
        return new Network(
                topology, referenceDensity, kinds, data, count, gain, fixedPressure, curves);
    }

    /**
     * The same network with other coefficients in a filter branch.
     *
     * @param branch number of a filter branch
     * @param viscous a, Pa s/m3
     * @param quadratic b, Pa s2/m6 at reference density
     * @return the changed network
     * @throws IllegalArgumentException if the branch is no filter or a number is out of range
     */
    public Network withFilter(int branch, double viscous, double quadratic) {
        if (kind[branch] != FILTER) {
            throw new IllegalArgumentException(
                    "branch \"" + branchName(branch) + "\" is no filter");
        }
        checkFilter(branchName(branch), viscous, quadratic);
        double[] changed = data.clone();
        changed[branch * WIDTH] = viscous;
        changed[branch * WIDTH + 1] = quadratic;
        return new Network(
                topology, referenceDensity, kind, changed, count, gain, fixedPressure, curve);
    }

    /**
     * Memory for solving; not for use by two threads at once.
     *
     * @return an empty workspace, which starts cold
     */
    public Workspace workspace() {
        return new Workspace(kind.length, topology.unknowns, topology.slots, nodeCount());
    }

    /**
     * Solves for flows and pressures.
     *
     * <p>Starts from the workspace's last flows if {@link Workspace#warm()} says so, else from a
     * linear estimate.
     *
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @param w receives flows and pressures
     * @return number of linear systems solved
     * @throws IllegalArgumentException if density or viscosity is not physical
     * @throws IllegalStateException if the iteration does not settle; the message names the branch
     *     that moved most
     */
    public int solve(double density, double viscosity, Workspace w) {
        Friction.requireAir(density, viscosity);
        if (w.flow.length != kind.length || w.pressure.length != nodeCount()) {
            throw new IllegalArgumentException("the workspace belongs to another network");
        }
        prepare(density, viscosity, w);
        boolean cold = !w.warm;
        w.warm = false;
        start(w, cold);
        laws(w, cold);
        double change = Double.NaN;
        int worst = 0;
        for (int step = 1; step <= MAX_STEPS; step++) {
            linear(w);
            double largest = 0;
            int n = kind.length;
            for (int i = 0; i < n; i++) {
                if (count[i] == 0) {
                    w.step[i] = 0;
                    w.drop[i] = 0;
                    continue;
                }
                double dp = w.pressure[topology.from[i]] - w.pressure[topology.to[i]] + gain[i];
                double q = w.source[i] + w.conductance[i] * dp;
                w.drop[i] = dp;
                w.step[i] = q - w.flow[i];
                largest = Math.max(largest, Math.abs(q));
            }
            change = 0;
            double scale = 1e-4 * largest + 1e-300;
            double noise = ROUNDING * w.highest;
            for (int i = 0; i < n; i++) {
                double d = Math.abs(w.step[i]);
                if (d <= noise * w.conductance[i]) {
                    // the pressures cannot say it better: continuity will, in the end
                    continue;
                }
                double by = Math.abs(w.flow[i] + w.step[i]) + scale;
                // a steep curve can still be off in pressure when its flow stands
                if (w.conductance[i] > 0) {
                    by = Math.min(by, 10 * w.conductance[i] * w.highest);
                }
                // only the few that lead are divided
                if (!(d <= change * by)) {
                    change = d / by;
                    worst = i;
                }
            }
            if (!(change < Double.POSITIVE_INFINITY)) {
                throw new IllegalStateException(
                        "network solution broke down at branch \""
                                + branchName(worst)
                                + "\" in step "
                                + step);
            }
            boolean balanced = step > 1 || !cold;
            double slopeHere = 0;
            for (int i = 0; i < n; i++) {
                slopeHere += (w.loss[i] - w.drop[i]) * w.step[i] * w.free(i);
                w.flow[i] += w.step[i];
            }
            if (change < 1e-6 && balanced) {
                w.warm = true;
                w.steps = step;
                balance(w);
                return step;
            }
            laws(w, false);
            if (balanced && step > 1) {
                search(w, slopeHere);
            }
        }
        throw new IllegalStateException(
                "network did not settle in "
                        + MAX_STEPS
                        + " steps: branch \""
                        + branchName(worst)
                        + "\" still changes by "
                        + change
                        + " of its flow");
    }

    /**
     * Takes out what rounding has left of imbalance at the nodes: one more linear system, for
     * pressure corrections small enough to carry all the digits.
     */
    private void balance(Workspace w) {
        for (int i = 0; i < kind.length; i++) {
            w.source[i] = w.flow[i];
        }
        eliminate(w, 0);
        int[] a = topology.rowFrom;
        int[] b = topology.rowTo;
        for (int i = 0; i < kind.length; i++) {
            double dp = (a[i] >= 0 ? w.unknown[a[i]] : 0) - (b[i] >= 0 ? w.unknown[b[i]] : 0);
            w.flow[i] += w.conductance[i] * dp;
        }
    }

    /**
     * Line search along the last step. The content function's slope along it is known at both ends;
     * a step that overshoots the minimum by much is cut back to the root of that slope.
     */
    private void search(Workspace w, double slopeStart) {
        double s0 = slopeStart;
        double t0 = 0;
        double t1 = 1;
        for (int cut = 0; cut < 20; cut++) {
            double s1 = 0;
            for (int i = 0; i < kind.length; i++) {
                s1 += (w.loss[i] - w.drop[i]) * w.step[i] * w.free(i);
            }
            // slopes at rounding level say nothing
            if (!(Math.abs(s1) > 0.5 * Math.abs(slopeStart)) || !(s1 > 0)) {
                return;
            }
            double t = t0 + (t1 - t0) * Math.max(0.05, Math.min(0.95, s0 / (s0 - s1)));
            double back = t - t1;
            for (int i = 0; i < kind.length; i++) {
                w.flow[i] += back * w.step[i];
            }
            t1 = t;
            laws(w, false);
        }
    }

    /** Numbers that hold for one density and viscosity. */
    private void prepare(double density, double viscosity, Workspace w) {
        double ratio = density / referenceDensity;
        w.ratio = ratio;
        for (int i = 0; i < kind.length; i++) {
            int at = i * WIDTH;
            switch (kind[i]) {
                case DUCT -> {
                    double d = data[at];
                    double area = data[at + 1];
                    double dynamic = density / (2 * area * area);
                    w.a[i] = density * d / (area * viscosity);
                    w.b[i] = data[at + 5] * data[at + 2] / d * dynamic;
                    w.c[i] = data[at + 4] * dynamic;
                    w.e[i] = data[at + 3] / d;
                    double flat = w.b[i] * 0.02 + w.c[i];
                    w.d[i] = 2 * Math.sqrt(Math.max(flat, w.b[i] * 1e-3) * FLAT);
                }
                case QUADRATIC -> {
                    w.a[i] = data[at] * ratio;
                    w.d[i] = 2 * Math.sqrt(w.a[i] * FLAT);
                }
                case FILTER -> {
                    w.a[i] = data[at];
                    w.b[i] = data[at + 1] * ratio;
                    w.d[i] = 2 * Math.sqrt(w.b[i] * FLAT);
                }
                case LEAK -> {
                    w.a[i] = 1 / data[at];
                    w.b[i] = 1 / data[at + 1];
                    w.d[i] = Math.pow(FLAT, 1 - data[at + 1]) / (data[at] * data[at + 1]);
                }
                default -> {
                    // blowers read their data directly
                }
            }
        }
    }

    /**
     * Starting flows: what each part carries at about 20 Pa, or in the middle of its curve. A warm
     * start needs them only for branches just opened.
     */
    private void start(Workspace w, boolean cold) {
        for (int i = 0; i < kind.length; i++) {
            if (!cold && (w.flow[i] != 0 || count[i] == 0)) {
                continue;
            }
            int at = i * WIDTH;
            double q =
                    switch (kind[i]) {
                        case DUCT -> 3 * data[at + 1];
                        case QUADRATIC -> Math.sqrt(20 / w.a[i]);
                        case FILTER -> positiveRoot(w.a[i], w.b[i], 20);
                        case LEAK -> Math.pow(10, data[at + 1]) * data[at];
                        case POLYNOMIAL -> 0.7 * freeDelivery(data[at], data[at + 1], data[at + 2]);
                        case TABLE -> 0.5 * (curve[i].lowestFlow() + curve[i].highestFlow());
                        default -> data[at];
                    };
            w.flow[i] = q * count[i];
        }
    }

    private static double positiveRoot(double a, double b, double y) {
        return 2 * y / (a + Math.sqrt(a * a + 4 * b * y));
    }

    private static double freeDelivery(double a0, double a1, double a2) {
        return positiveRoot(-a1, -a2, a0);
    }

    /**
     * Value and slope of every branch law at the present flows, turned into {@code Q = source +
     * conductance dp}. With {@code secant} the passive branches are drawn through the origin
     * instead: the first step then only needs the right order of size, not the right sign.
     */
    private void laws(Workspace w, boolean secant) {
        double[] loss = w.loss;
        for (int i = 0; i < kind.length; i++) {
            double m = count[i];
            if (m == 0) {
                w.conductance[i] = 0;
                w.source[i] = 0;
                w.flow[i] = 0;
                loss[i] = 0;
                continue;
            }
            double total = w.flow[i];
            double signed = m == 1 ? total : total / m;
            double q = Math.abs(signed);
            double h;
            double slope;
            int at = i * WIDTH;
            boolean passive = true;
            switch (kind[i]) {
                case DUCT -> {
                    double re = q * w.a[i];
                    if (re >= Friction.TURBULENT_LIMIT) {
                        double rel = w.e[i];
                        double x = Friction.inverseRoot(re, rel);
                        // f and its slope share one division: x^2 times Re (s + K b)
                        double kb = 0.868588963806503655 * 2.51;
                        double z = re * (rel * (1 / 3.7)) + 2.51 * x + kb;
                        double part = w.b[i] / (x * x * z);
                        double f = part * z;
                        h = (f + w.c[i]) * q * q;
                        slope = 2 * (f + w.c[i] - kb * part) * q;
                    } else if (re <= Friction.LAMINAR_LIMIT) {
                        double lin = 64 * w.b[i] / w.a[i];
                        h = (lin + w.c[i] * q) * q;
                        slope = lin + 2 * w.c[i] * q;
                    } else {
                        double f = Friction.factor(re, w.e[i]);
                        double turn = Friction.slope(re, w.e[i], f);
                        f *= w.b[i];
                        h = (f + w.c[i]) * q * q;
                        slope = ((2 + turn) * f + 2 * w.c[i]) * q;
                    }
                    slope = Math.max(slope, w.d[i]);
                }
                case QUADRATIC -> {
                    h = w.a[i] * q * q;
                    slope = Math.max(2 * w.a[i] * q, w.d[i]);
                }
                case FILTER -> {
                    h = (w.a[i] + w.b[i] * q) * q;
                    slope = w.a[i] + Math.max(2 * w.b[i] * q, w.d[i]);
                }
                case LEAK -> {
                    h = Math.pow(q * w.a[i], w.b[i]);
                    slope = h > FLAT ? h * w.b[i] / q : w.d[i];
                }
                case POLYNOMIAL -> {
                    double a1 = data[at + 1];
                    double a2 = data[at + 2];
                    double floor = 2 * Math.sqrt(-a2 * FLAT);
                    if (signed >= 0) {
                        h = -w.ratio * (data[at] + (a1 + a2 * signed) * signed);
                        slope = w.ratio * Math.max(floor, -a1 - 2 * a2 * signed);
                    } else {
                        h = -w.ratio * (data[at] + Math.min(a1, -floor) * signed);
                        slope = w.ratio * Math.max(floor, -a1);
                    }
                    passive = false;
                }
                case TABLE -> {
                    double rise = curve[i].riseAt(signed);
                    h = -w.ratio * rise;
                    slope = -w.ratio * curve[i].riseSlope(signed, rise);
                    passive = false;
                }
                default -> {
                    w.conductance[i] = 0;
                    w.source[i] = data[at];
                    loss[i] = 0;
                    continue;
                }
            }
            if (passive && signed < 0) {
                h = -h;
            }
            loss[i] = h;
            double g;
            if (secant && passive) {
                g = m * q / Math.abs(h);
                w.source[i] = 0;
            } else {
                g = m / slope;
                w.source[i] = total - g * h;
            }
            w.conductance[i] = g;
        }
    }

    /** Pressures from conductances and sources. */
    private void linear(Workspace w) {
        eliminate(w, 1);
        double highest = 0;
        int[] rows = topology.rowOfNode;
        for (int i = 0; i < rows.length; i++) {
            double p = rows[i] >= 0 ? w.unknown[rows[i]] : fixedPressure[~rows[i]];
            w.pressure[i] = p;
            highest = Math.max(highest, Math.abs(p));
        }
        w.highest = highest;
    }

    /** Assembles and eliminates; known pressures and gains count times {@code known}, 0 or 1. */
    private void eliminate(Workspace w, double known) {
        Topology t = topology;
        double[] ground = w.ground;
        double[] right = w.right;
        double[] mesh = w.mesh;
        Arrays.fill(ground, 0);
        Arrays.fill(right, 0);
        Arrays.fill(mesh, 0);
        for (int i = 0; i < kind.length; i++) {
            double g = w.conductance[i];
            double s = w.source[i] + g * gain[i] * known;
            int a = t.rowFrom[i];
            int b = t.rowTo[i];
            if (a >= 0) {
                right[a] -= s;
                if (b >= 0) {
                    right[b] += s;
                    mesh[t.slot[i]] += g;
                } else {
                    ground[a] += g;
                    right[a] += g * fixedPressure[~b] * known;
                }
            } else if (b >= 0) {
                right[b] += s;
                ground[b] += g;
                right[b] += g * fixedPressure[~a] * known;
            }
        }
        int[] start = t.columnStart;
        int[] row = t.slotRow;
        int[] fill = t.fillTarget;
        int f = 0;
        int n = t.unknowns;
        double[] pivot = w.pivot;
        for (int k = 0; k < n; k++) {
            int lo = start[k];
            int hi = start[k + 1];
            double d = ground[k];
            for (int s = lo; s < hi; s++) {
                d += mesh[s];
            }
            double inverse = 1 / d;
            pivot[k] = inverse;
            for (int s = lo; s < hi; s++) {
                double l = mesh[s] * inverse;
                int j = row[s];
                ground[j] += l * ground[k];
                right[j] += l * right[k];
                for (int u = s + 1; u < hi; u++) {
                    mesh[fill[f++]] += l * mesh[u];
                }
            }
        }
        double[] p = w.unknown;
        for (int k = n - 1; k >= 0; k--) {
            double sum = right[k];
            for (int s = start[k]; s < start[k + 1]; s++) {
                sum += mesh[s] * p[row[s]];
            }
            p[k] = sum * pivot[k];
        }
    }

    /**
     * Loss of one branch at a flow: h(Q) of the class comment.
     *
     * @param branch branch number
     * @param flow volume flow, m3/s
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @return pressure loss from start to end, Pa; for a blower minus its rise; for a held flow NaN
     *     is never returned but an error thrown
     * @throws IllegalArgumentException if the branch is a held flow, or the air is not physical
     */
    public double loss(int branch, double flow, double density, double viscosity) {
        Friction.requireAir(density, viscosity);
        Range.require("flow", flow, -1e3, 1e3, "m3/s");
        if (kind[branch] == HELD) {
            throw new IllegalArgumentException(
                    "branch \""
                            + branchName(branch)
                            + "\" holds its flow; its pressure follows from"
                            + " the network");
        }
        Workspace w = workspace();
        prepare(density, viscosity, w);
        Arrays.fill(w.flow, 1e-3);
        w.flow[branch] = flow;
        laws(w, false);
        return w.loss[branch];
    }

    private static void checkDuct(
            String name,
            double diameter,
            double area,
            double length,
            double roughness,
            double coefficient,
            double multiplier) {
        Range.require("hydraulic diameter of \"" + name + "\"", diameter, 1e-3, 20, "m");
        Range.require("area of \"" + name + "\"", area, 1e-6, 500, "m2");
        Range.require("length of \"" + name + "\"", length, 0, 10_000, "m");
        Range.require("relative roughness of \"" + name + "\"", roughness / diameter, 0, 0.05, "");
        Range.require("loss coefficient of \"" + name + "\"", coefficient, -1e3, 1e6, "");
        Range.require("friction multiplier of \"" + name + "\"", multiplier, 0, 100, "");
        if (coefficient < 0) {
            // what holds the slope of (f + C) Q^2 above 0 in turbulent flow (fully rough) and at
            // the
            // end of laminar flow (half of 64/2300)
            double least =
                    0.8
                            * Math.min(
                                    Friction.colebrookWhite(1e8, roughness / diameter),
                                    32 / Friction.LAMINAR_LIMIT)
                            * multiplier
                            * length
                            / diameter;
            if (!(coefficient > -least)) {
                throw new IllegalArgumentException(
                        "the loss coefficients of \""
                                + name
                                + "\" sum to "
                                + coefficient
                                + ", a gain that its friction (at least "
                                + least
                                + ") does not outweigh: with a fixed coefficient such a duct would"
                                + " drive its own air; leave part of the gain out");
            }
        }
        if (length * multiplier + coefficient < 1e-9 && coefficient >= 0) {
            throw new IllegalArgumentException(
                    "duct \""
                            + name
                            + "\" has neither length nor loss coefficient: a branch needs some"
                            + " resistance; join its two nodes instead");
        }
    }

    private static void checkFilter(String name, double viscous, double quadratic) {
        Range.require("viscous coefficient of \"" + name + "\"", viscous, 0, 1e9, "Pa s/m3");
        Range.require("quadratic coefficient of \"" + name + "\"", quadratic, 0, 1e12, "Pa s2/m6");
        if (!(viscous + quadratic > 1e-9)) {
            throw new IllegalArgumentException(
                    "filter \"" + name + "\" has no resistance at all: leave it out instead");
        }
    }

    /** Memory of one solution: flows, pressures and scratch. Not for use by two threads at once. */
    public static final class Workspace {
        final double[] flow;
        final double[] step;
        final double[] drop;
        final double[] loss;
        final double[] conductance;
        final double[] source;
        final double[] a;
        final double[] b;
        final double[] c;
        final double[] d;
        final double[] e;
        final double[] ground;
        final double[] right;
        final double[] pivot;
        final double[] unknown;
        final double[] mesh;
        final double[] pressure;
        double ratio;
        double highest;
        int steps;
        boolean warm;

        Workspace(int branches, int unknowns, int slots, int nodes) {
            flow = new double[branches];
            step = new double[branches];
            drop = new double[branches];
            loss = new double[branches];
            conductance = new double[branches];
            source = new double[branches];
            a = new double[branches];
            b = new double[branches];
            c = new double[branches];
            d = new double[branches];
            e = new double[branches];
            ground = new double[unknowns];
            right = new double[unknowns];
            pivot = new double[unknowns];
            unknown = new double[unknowns];
            mesh = new double[slots];
            pressure = new double[nodes];
        }

        /** 0 for held flows, whose law has no pressure of its own, else 1. */
        double free(int i) {
            return conductance[i] == 0 ? 0 : 1;
        }

        /**
         * Flow through a branch, positive from its start to its end.
         *
         * @param branch branch number
         * @return m3/s
         */
        public double flow(int branch) {
            return flow[branch];
        }

        /**
         * Total pressure at a node.
         *
         * @param node node number
         * @return Pa, gauge
         */
        public double pressure(int node) {
            return pressure[node];
        }

        /**
         * Number of linear systems the last solution took.
         *
         * @return count
         */
        public int steps() {
            return steps;
        }

        /**
         * Whether the next solution starts from the flows held here.
         *
         * @return true after a success
         */
        public boolean warm() {
            return warm;
        }

        /** Forgets the last solution, so that the next one starts cold. */
        public void cool() {
            warm = false;
        }
    }

    /** Collects nodes and branches. Not for use by two threads at once. */
    public static final class Builder {
        private final double referenceDensity;
        private final List<String> nodeNames = new ArrayList<>();
        private final Set<String> takenNodes = new HashSet<>();
        private final Set<String> takenBranches = new HashSet<>();
        private final List<Double> nodePressures = new ArrayList<>();
        private final List<String> branchNames = new ArrayList<>();
        private final List<int[]> ends = new ArrayList<>();
        private final List<Integer> kinds = new ArrayList<>();
        private final List<double[]> numbers = new ArrayList<>();
        private final List<Double> gains = new ArrayList<>();
        private final List<BlowerCurve> curves = new ArrayList<>();

        private Builder(double referenceDensity) {
            this.referenceDensity = referenceDensity;
        }

        /**
         * Adds a node whose pressure is to be found.
         *
         * @param name its name, unique among nodes
         * @return node number
         * @throws IllegalArgumentException if the name is blank or taken
         */
        public int node(String name) {
            return addNode(name, Double.NaN);
        }

        /**
         * Adds a node of known pressure: a room, the attic, the outdoors.
         *
         * @param name its name, unique among nodes
         * @param pressure total pressure, Pa, gauge
         * @return node number
         * @throws IllegalArgumentException if the name is blank or taken, or the pressure not
         *     finite
         */
        public int fixedNode(String name, double pressure) {
            Range.require("pressure of node \"" + name + "\"", pressure, -10_000, 10_000, "Pa");
            return addNode(name, pressure);
        }

        private int addNode(String name, double pressure) {
            requireName(name, takenNodes, "node");
            nodeNames.add(name);
            nodePressures.add(pressure);
            return nodeNames.size() - 1;
        }

        private static void requireName(String name, Set<String> taken, String what) {
            if (name == null || name.isBlank()) {
                throw new IllegalArgumentException("a " + what + " needs a name");
            }
            if (!taken.add(name)) {
                throw new IllegalArgumentException(
                        "there are two " + what + "s named \"" + name + "\"");
            }
        }

        /**
         * Adds a duct.
         *
         * @param name its name, unique among branches
         * @param from node where it starts
         * @param to node where it ends
         * @param hydraulicDiameter four areas over perimeter, m
         * @param area cross section, m2
         * @param length length with equivalent lengths, m
         * @param roughness absolute roughness, m
         * @param lossCoefficient sum of loss coefficients on the duct's own velocity pressure;
         *     below 0 only as far as friction outweighs it
         * @param frictionMultiplier factor on friction for compressed flexible duct, else 1
         * @return branch number
         * @throws IllegalArgumentException if a number is out of range or the branch has no
         *     resistance
         */
        public int duct(
                String name,
                int from,
                int to,
                double hydraulicDiameter,
                double area,
                double length,
                double roughness,
                double lossCoefficient,
                double frictionMultiplier) {
            checkDuct(
                    name,
                    hydraulicDiameter,
                    area,
                    length,
                    roughness,
                    lossCoefficient,
                    frictionMultiplier);
            return add(
                    name,
                    from,
                    to,
                    DUCT,
                    null,
                    hydraulicDiameter,
                    area,
                    length,
                    roughness,
                    lossCoefficient,
                    frictionMultiplier);
        }

        /**
         * Adds a quadratic resistance: grille, register, door undercut, damper.
         *
         * @param name its name, unique among branches
         * @param from node where it starts
         * @param to node where it ends
         * @param resistance R, Pa s2/m6 at reference density, above 0
         * @return branch number
         * @throws IllegalArgumentException if a number is out of range
         */
        public int quadratic(String name, int from, int to, double resistance) {
            Range.requireAbove("resistance of \"" + name + "\"", resistance, 0, "Pa s2/m6");
            Range.require("resistance of \"" + name + "\"", resistance, 1e-6, 1e15, "Pa s2/m6");
            return add(name, from, to, QUADRATIC, null, resistance);
        }

        /**
         * Adds a filter or coil with a viscous and a quadratic part.
         *
         * @param name its name, unique among branches
         * @param from node where it starts
         * @param to node where it ends
         * @param viscous a, Pa s/m3, independent of density
         * @param quadratic b, Pa s2/m6 at reference density
         * @return branch number
         * @throws IllegalArgumentException if a number is out of range or both are 0
         */
        public int filter(String name, int from, int to, double viscous, double quadratic) {
            checkFilter(name, viscous, quadratic);
            return add(name, from, to, FILTER, null, viscous, quadratic);
        }

        /**
         * Adds leakage by the power law.
         *
         * @param name its name, unique among branches
         * @param from node where it starts
         * @param to node where it ends
         * @param coefficient c, m3/(s Pa^n), above 0
         * @param exponent n, in [0.5, 1]
         * @return branch number
         * @throws IllegalArgumentException if a number is out of range
         */
        public int leak(String name, int from, int to, double coefficient, double exponent) {
            Range.requireAbove(
                    "leakage coefficient of \"" + name + "\"", coefficient, 0, "m3/(s Pa^n)");
            Range.require(
                    "leakage coefficient of \"" + name + "\"",
                    coefficient,
                    1e-9,
                    10,
                    "m3/(s Pa^n)");
            Range.require("leakage exponent of \"" + name + "\"", exponent, 0.5, 1, "");
            return add(name, from, to, LEAK, null, coefficient, exponent);
        }

        /**
         * Adds a blower with the curve {@code rise = a0 + a1 Q + a2 Q^2} at reference density.
         *
         * @param name its name, unique among branches
         * @param from node on the suction side
         * @param to node on the pressure side
         * @param a0 rise at no flow, Pa, above 0
         * @param a1 Pa s/m3, at most 0
         * @param a2 Pa s2/m6, below 0
         * @return branch number
         * @throws IllegalArgumentException if a number is out of range
         */
        public int blower(String name, int from, int to, double a0, double a1, double a2) {
            Range.requireAbove("blower rise at no flow", a0, 0, "Pa");
            Range.require("blower coefficient a1", a1, -1e9, 0, "Pa s/m3");
            Range.require("blower coefficient a2", a2, -1e9, -1e-9, "Pa s2/m6");
            return add(name, from, to, POLYNOMIAL, null, a0, a1, a2);
        }

        /**
         * Adds a blower with a table.
         *
         * @param name its name, unique among branches
         * @param from node on the suction side
         * @param to node on the pressure side
         * @param table the curve at reference density
         * @return branch number
         * @throws IllegalArgumentException if the table is null
         */
        public int blower(String name, int from, int to, BlowerCurve table) {
            if (table == null) {
                throw new IllegalArgumentException("blower \"" + name + "\" has no table");
            }
            return add(name, from, to, TABLE, table);
        }

        /**
         * Adds a branch whose flow is given.
         *
         * @param name its name, unique among branches
         * @param from node where it starts
         * @param to node where it ends
         * @param flow volume flow, m3/s
         * @return branch number
         * @throws IllegalArgumentException if the flow is not finite
         */
        public int heldFlow(String name, int from, int to, double flow) {
            Range.require("held flow of \"" + name + "\"", flow, -100, 100, "m3/s");
            return add(name, from, to, HELD, null, flow);
        }

        /**
         * Adds a pressure gain along a branch, such as the stack effect of a riser.
         *
         * @param branch branch number
         * @param pressure gain from start to end, Pa
         * @throws IllegalArgumentException if the pressure is not finite
         */
        public void gain(int branch, double pressure) {
            Range.require("pressure gain", pressure, -1_000, 1_000, "Pa");
            gains.set(branch, pressure);
        }

        private int add(
                String name, int from, int to, int kind, BlowerCurve table, double... values) {
            requireName(name, takenBranches, "branch");
            int nodes = nodeNames.size();
            if (from < 0 || from >= nodes || to < 0 || to >= nodes) {
                throw new IllegalArgumentException(
                        "branch \""
                                + name
                                + "\" joins nodes "
                                + from
                                + " and "
                                + to
                                + ", but there are "
                                + nodes);
            }
            if (from == to) {
                throw new IllegalArgumentException(
                        "branch \""
                                + name
                                + "\" starts and ends at node \""
                                + nodeNames.get(from)
                                + "\"");
            }
            branchNames.add(name);
            ends.add(new int[] {from, to});
            kinds.add(kind);
            numbers.add(Arrays.copyOf(values, WIDTH));
            gains.add(0.0);
            curves.add(table);
            return branchNames.size() - 1;
        }

        /**
         * Finishes: numbers the nodes for elimination and checks that all hang together.
         *
         * @return the network
         * @throws IllegalArgumentException if there is no branch, no node of known pressure, or a
         *     node that no open branch joins to one of known pressure
         */
        public Network build() {
            if (branchNames.isEmpty()) {
                throw new IllegalArgumentException("the network has no branch");
            }
            int n = branchNames.size();
            int[] kind = new int[n];
            double[] data = new double[n * WIDTH];
            double[] count = new double[n];
            double[] gain = new double[n];
            Arrays.fill(count, 1);
            for (int i = 0; i < n; i++) {
                kind[i] = kinds.get(i);
                System.arraycopy(numbers.get(i), 0, data, i * WIDTH, WIDTH);
                gain[i] = gains.get(i);
            }
            Topology topology = Topology.of(nodeNames, nodePressures, branchNames, ends);
            topology.requireReach(count);
            double[] fixed =
                    nodePressures.stream()
                            .mapToDouble(Double::doubleValue)
                            .filter(p -> p == p)
                            .toArray();
            return new Network(
                    topology,
                    referenceDensity,
                    kind,
                    data,
                    count,
                    gain,
                    fixed,
                    curves.toArray(new BlowerCurve[0]));
        }
    }

    /** Who joins whom, and in which order nodes are eliminated. Shared by all changed copies. */
    private static final class Topology {
        final String[] nodeName;
        final String[] branchName;
        final int[] from;
        final int[] to;

        /** Elimination row of a node, or the complement of its number among fixed nodes. */
        final int[] rowOfNode;

        final int[] rowFrom;
        final int[] rowTo;
        final int unknowns;

        /** Slot in which a branch's conductance gathers; -1 if it touches a fixed node. */
        final int[] slot;

        final int slots;
        final int[] columnStart;
        final int[] slotRow;

        /** Slots that elimination adds to, in the order in which it does. */
        final int[] fillTarget;

        private Topology(
                String[] nodeName,
                String[] branchName,
                int[] from,
                int[] to,
                int[] rowOfNode,
                int unknowns,
                int[] slot,
                int[] columnStart,
                int[] slotRow,
                int[] fillTarget) {
            this.nodeName = nodeName;
            this.branchName = branchName;
            this.from = from;
            this.to = to;
            this.rowOfNode = rowOfNode;
            this.unknowns = unknowns;
            this.slot = slot;
            this.slots = slotRow.length;
            this.columnStart = columnStart;
            this.slotRow = slotRow;
            this.fillTarget = fillTarget;
            this.rowFrom = new int[from.length];
            this.rowTo = new int[from.length];
            for (int i = 0; i < from.length; i++) {
                rowFrom[i] = rowOfNode[from[i]];
                rowTo[i] = rowOfNode[to[i]];
            }
        }

        static Topology of(
                List<String> nodeNames,
                List<Double> pressures,
                List<String> branchNames,
                List<int[]> ends) {
            int nodes = nodeNames.size();
            int[] from = ends.stream().mapToInt(e -> e[0]).toArray();
            int[] to = ends.stream().mapToInt(e -> e[1]).toArray();
            boolean[] known = new boolean[nodes];
            int[] rowOfNode = new int[nodes];
            int fixed = 0;
            for (int i = 0; i < nodes; i++) {
                known[i] = !Double.isNaN(pressures.get(i));
                if (known[i]) {
                    rowOfNode[i] = ~fixed++;
                }
            }
            int unknowns = nodes - fixed;
            int[][] later = order(from, to, known, rowOfNode, unknowns);
            int[] columnStart = new int[unknowns + 1];
            for (int k = 0; k < unknowns; k++) {
                columnStart[k + 1] = columnStart[k] + later[k].length;
            }
            int[] slotRow = new int[columnStart[unknowns]];
            for (int k = 0; k < unknowns; k++) {
                int[] rows = Arrays.stream(later[k]).map(v -> rowOfNode[v]).sorted().toArray();
                System.arraycopy(rows, 0, slotRow, columnStart[k], rows.length);
            }
            int fills = 0;
            for (int k = 0; k < unknowns; k++) {
                int c = columnStart[k + 1] - columnStart[k];
                fills += c * (c - 1) / 2;
            }
            int[] fillTarget = new int[fills];
            int f = 0;
            for (int k = 0; k < unknowns; k++) {
                for (int s = columnStart[k]; s < columnStart[k + 1]; s++) {
                    for (int u = s + 1; u < columnStart[k + 1]; u++) {
                        fillTarget[f++] = find(columnStart, slotRow, slotRow[s], slotRow[u]);
                    }
                }
            }
            int[] slot = new int[from.length];
            for (int i = 0; i < from.length; i++) {
                int a = rowOfNode[from[i]];
                int b = rowOfNode[to[i]];
                slot[i] =
                        a >= 0 && b >= 0
                                ? find(columnStart, slotRow, Math.min(a, b), Math.max(a, b))
                                : -1;
            }
            return new Topology(
                    nodeNames.toArray(new String[0]),
                    branchNames.toArray(new String[0]),
                    from,
                    to,
                    rowOfNode,
                    unknowns,
                    slot,
                    columnStart,
                    slotRow,
                    fillTarget);
        }

        /**
         * Minimum-degree elimination order: fills in the rows and returns, for each row, the nodes
         * still joined to it when its turn comes. Nodes wait in stacks by degree, in which an
         * outdated entry is skipped when met, so that a tree takes linear time.
         */
        private static int[][] order(
                int[] from, int[] to, boolean[] known, int[] rowOfNode, int unknowns) {
            int nodes = known.length;
            int[][] near = new int[nodes][4];
            int[] degree = new int[nodes];
            for (int i = 0; i < from.length; i++) {
                if (!known[from[i]] && !known[to[i]]) {
                    join(near, degree, from[i], to[i]);
                    join(near, degree, to[i], from[i]);
                }
            }
            int[][] stack = new int[unknowns + 1][];
            int[] height = new int[unknowns + 1];
            for (int i = nodes - 1; i >= 0; i--) {
                if (!known[i]) {
                    push(stack, height, degree[i], i);
                }
            }
            boolean[] gone = new boolean[nodes];
            int[][] later = new int[unknowns][];
            int d = 0;
            for (int k = 0; k < unknowns; k++) {
                int v = -1;
                while (v < 0) {
                    while (height[d] == 0) {
                        d++;
                    }
                    int top = stack[d][--height[d]];
                    if (!gone[top] && degree[top] == d) {
                        v = top;
                    }
                }
                gone[v] = true;
                rowOfNode[v] = k;
                int[] around = Arrays.copyOf(near[v], degree[v]);
                later[k] = around;
                for (int a : around) {
                    part(near, degree, a, v);
                }
                for (int a : around) {
                    for (int b : around) {
                        if (a != b) {
                            join(near, degree, a, b);
                        }
                    }
                }
                for (int a : around) {
                    push(stack, height, degree[a], a);
                    d = Math.min(d, degree[a]);
                }
            }
            return later;
        }

        private static void push(int[][] stack, int[] height, int degree, int node) {
            if (stack[degree] == null) {
                stack[degree] = new int[8];
            } else if (height[degree] == stack[degree].length) {
                stack[degree] = Arrays.copyOf(stack[degree], 2 * height[degree]);
            }
            stack[degree][height[degree]++] = node;
        }

        private static void join(int[][] near, int[] degree, int a, int b) {
            for (int i = 0; i < degree[a]; i++) {
                if (near[a][i] == b) {
                    return;
                }
            }
            if (degree[a] == near[a].length) {
                near[a] = Arrays.copyOf(near[a], 2 * degree[a]);
            }
            near[a][degree[a]++] = b;
        }

        private static void part(int[][] near, int[] degree, int a, int b) {
            for (int i = 0; i < degree[a]; i++) {
                if (near[a][i] == b) {
                    near[a][i] = near[a][--degree[a]];
                    return;
                }
            }
        }

        private static int find(int[] columnStart, int[] slotRow, int column, int row) {
            int at =
                    Arrays.binarySearch(slotRow, columnStart[column], columnStart[column + 1], row);
            if (at < 0) {
                throw new IllegalStateException(
                        "elimination has no place for " + column + ", " + row);
            }
            return at;
        }

        private static int head(int[] parent, int i) {
            int at = i;
            while (parent[at] != at) {
                parent[at] = parent[parent[at]];
                at = parent[at];
            }
            return at;
        }

        /** Refuses a network in which some node's pressure is not tied to a known one. */
        void requireReach(double[] count) {
            int nodes = nodeName.length;
            int[] parent = new int[nodes + 1];
            for (int i = 0; i < nodes; i++) {
                parent[i] = rowOfNode[i] < 0 ? nodes : i;
            }
            parent[nodes] = nodes;
            if (unknowns == nodes) {
                throw new IllegalArgumentException("the network has no node of known pressure");
            }
            for (int i = 0; i < from.length; i++) {
                if (count[i] > 0) {
                    parent[head(parent, from[i])] = head(parent, to[i]);
                }
            }
            int ground = head(parent, nodes);
            List<String> lost = new ArrayList<>();
            for (int i = 0; i < nodes; i++) {
                if (head(parent, i) != ground) {
                    lost.add(nodeName[i]);
                }
            }
            if (!lost.isEmpty()) {
                throw new IllegalArgumentException(
                        "no open way leads from " + lost + " to any place of known pressure");
            }
        }
    }
}
