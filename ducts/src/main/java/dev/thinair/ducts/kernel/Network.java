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
 * converge from any start. Once steps are small each is corrected for the bend of the laws, which
 * takes the same factors once more and saves whole steps. The linear system is eliminated in
 * minimum-degree order fixed when the network is built, so that a tree costs linear time and a loop
 * only its own fill; pivots are formed by additions of positive numbers only (star-mesh reduction),
 * so that no digits are lost.
 *
 * <p>Wyes tie what a branch loses to the flow of its trunk. They make the system unsymmetric and
 * its solution no longer a minimum; Newton's iteration goes on from the solution without them, see
 * {@link Builder#convergingWye}.
 *
 * <p>Source: the global gradient method of Todini and Pilati (1987) and the content of Cherry and
 * Millar (1951); Chebyshev's correction of Newton's method; ties by Sherman, Morrison and Woodbury
 * (all from memory); line search and elimination are this library's own.
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
    static final int WIDTH = 6;

    private static final int MAX_STEPS = 100;

    /**
     * Pressure below which the slope of a purely quadratic or leakage law is no longer followed,
     * Pa: at no flow it would be 0, and the conductance infinite.
     */
    private static final double FLAT = 1e-8;

    /**
     * Change of flow, over the flow, below which a corrected step ends at rounding error: what it
     * still neglects goes with the cube.
     */
    private static final double SETTLED = 3e-6;

    /** Change of flow, over the flow, below which a step is worth correcting for the bend. */
    private static final double GENTLE = 0.5;

    /** Number of steps that may be corrected for the bend. */
    private static final int CORRECTED_STEPS = 8;

    /** Laws bent like a power of the flow; the others give their second derivative directly. */
    private static final int[] BY_POWER = {DUCT, QUADRATIC, LEAK};

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
    private final Wyes wyes;

    /** Branches that are not shut, by kind. */
    private final int[][] open;

    private Network(
            Topology topology,
            double referenceDensity,
            int[] kind,
            double[] data,
            double[] count,
            double[] gain,
            double[] fixedPressure,
            BlowerCurve[] curve,
            Wyes wyes) {
        this.topology = topology;
        this.referenceDensity = referenceDensity;
        this.kind = kind;
        this.data = data;
        this.count = count;
        this.gain = gain;
        this.fixedPressure = fixedPressure;
        this.curve = curve;
        this.wyes = wyes;
        int[] size = new int[HELD + 1];
        for (int i = 0; i < kind.length; i++) {
            size[kind[i]] += count[i] == 0 ? 0 : 1;
        }
        this.open = new int[HELD + 1][];
        for (int k = 0; k <= HELD; k++) {
            open[k] = new int[size[k]];
        }
        for (int i = kind.length - 1; i >= 0; i--) {
            if (count[i] != 0) {
                open[kind[i]][--size[kind[i]]] = i;
            }
        }
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
        if (copies != 0 && copies != 1 && wyes.touches(branch)) {
            throw new IllegalArgumentException(
                    "branch \""
                            + branchName(branch)
                            + "\" is a leg of a wye, of which there is one");
        }
        double[] changed = count.clone();
        changed[branch] = copies;
        if (copies == 0) {
            topology.requireReach(changed);
        }
        return new Network(
                topology, referenceDensity, kind, data, changed, gain, fixedPressure, curve, wyes);
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
                topology, referenceDensity, kind, data, changed, gain, fixedPressure, curve, wyes);
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
        for (Wyes.Wye y : wyes.all) {
            requireAreas(y, changed);
        }
        return new Network(
                topology, referenceDensity, kind, changed, count, gain, fixedPressure, curve, wyes);
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
        if (wyes.touches(branch)) {
            throw new IllegalArgumentException(
                    "branch \"" + branchName(branch) + "\" is a leg of a wye and cannot be held");
        }
        int[] kinds = kind.clone();
        kinds[branch] = HELD;
        double[] changed = data.clone();
        changed[branch * WIDTH] = flow;
        return new Network(
                topology,
                referenceDensity,
                kinds,
                changed,
                count,
                gain,
                fixedPressure,
                curve,
                wyes);
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
                topology, referenceDensity, kinds, data, count, gain, fixedPressure, curves, wyes);
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
                topology, referenceDensity, kind, changed, count, gain, fixedPressure, curve, wyes);
    }

    /**
     * Memory for solving; not for use by two threads at once.
     *
     * @return an empty workspace, which starts cold
     */
    public Workspace workspace() {
        return new Workspace(
                kind.length, topology.unknowns, topology.slots, nodeCount(), wyes.terms);
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
     *     that moved most. Or if air runs through a wye the wrong way, for which no coefficients
     *     are published
     */
    public int solve(double density, double viscosity, Workspace w) {
        Friction.requireAir(density, viscosity);
        if (w.flow.length != kind.length
                || w.pressure.length != nodeCount()
                || w.wyeLoss.length != wyes.terms) {
            throw new IllegalArgumentException("the workspace belongs to another network");
        }
        prepare(density, viscosity, w);
        boolean cold = !w.warm;
        w.warm = false;
        start(w, cold);
        int steps = cold || wyes.terms == 0 ? settle(w, cold) : 0;
        if (wyes.terms > 0) {
            steps += settleWyes(w, density);
        }
        w.steps = steps;
        w.warm = true;
        return steps;
    }

    /** Newton's iteration of the network without its wyes. */
    private int settle(Workspace w, boolean cold) {
        laws(w);
        if (cold) {
            secants(w);
        }
        for (int step = 1; step <= MAX_STEPS; step++) {
            factor(w);
            pressures(w);
            double change = newFlows(w);
            if (!(change < Double.POSITIVE_INFINITY)) {
                throw new IllegalStateException(
                        "network solution broke down at branch \""
                                + branchName(w.worst)
                                + "\" in step "
                                + step);
            }
            if (step == 1 && cold) {
                shape(w);
                laws(w);
                continue;
            }
            if (change < SETTLED) {
                correct(w);
                advance(w);
                addCorrections(w);
                return step;
            }
            // a network that has not settled by then has laws with kinks, and is left to Newton's
            // method with the line search, which converges from anywhere
            if (change < GENTLE && step <= CORRECTED_STEPS) {
                correct(w);
            }
            double slopeHere = 0;
            for (int i = 0; i < kind.length; i++) {
                slopeHere += (w.loss[i] - w.drop[i]) * w.step[i] * w.free(i);
            }
            advance(w);
            laws(w);
            w.change = change;
            // from flows that do not balance yet the content says nothing about the step
            if (step > (cold ? 2 : 1)) {
                search(w, slopeHere);
            }
        }
        throw new IllegalStateException(
                "network did not settle in "
                        + MAX_STEPS
                        + " steps: branch \""
                        + branchName(w.worst)
                        + "\" still changes by "
                        + w.change
                        + " of its flow");
    }

    /**
     * What the present pressures drive through every branch, and by how much of its flow the branch
     * that changes most changes.
     */
    private double newFlows(Workspace w) {
        double largest = 0;
        int n = kind.length;
        for (int i = 0; i < n; i++) {
            double dp = w.pressure[topology.from[i]] - w.pressure[topology.to[i]] + gain[i];
            double q = w.source[i] + w.conductance[i] * dp;
            w.drop[i] = dp;
            w.step[i] = q - w.flow[i];
            largest = Math.max(largest, Math.abs(q));
        }
        double change = 0;
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
            if (w.conductance[i] > 0 && w.highest > 0) {
                by = Math.min(by, 10 * w.conductance[i] * w.highest);
            }
            // only the few that lead are divided
            if (!(d <= change * by)) {
                change = d / by;
                w.worst = i;
            }
        }
        return change;
    }

    /**
     * Newton's iteration of the whole, wyes included. A wye ties the pressure of one branch to the
     * flow of another, which makes the system unsymmetric; the elimination stays that of the
     * network alone, and the few ties are added to it by the matrix they make among themselves
     * (Sherman, Morrison and Woodbury). A step is cut back until the pressures that are left over
     * shrink.
     */
    private int settleWyes(Workspace w, double density) {
        int n = kind.length;
        for (int i = 0; i < n; i++) {
            w.drop[i] = w.pressure[topology.from[i]] - w.pressure[topology.to[i]] + gain[i];
        }
        allLaws(w, density);
        double left = leftOver(w, w.drop, w.drop, 0);
        for (int step = 1; step <= MAX_STEPS; step++) {
            System.arraycopy(w.flow, 0, w.before, 0, n);
            System.arraycopy(w.drop, 0, w.dropBefore, 0, n);
            factor(w);
            tie(w);
            pressures(w);
            double change = newFlows(w);
            if (!(change < Double.POSITIVE_INFINITY)) {
                break;
            }
            if (change < 1e-7) {
                for (int i = 0; i < n; i++) {
                    w.source[i] = w.flow[i] + w.step[i];
                }
                conserve(w);
                advance(w);
                addCorrections(w);
                wyes.requireDirections(w.flow);
                return step;
            }
            double t = 1;
            while (true) {
                for (int i = 0; i < n; i++) {
                    w.flow[i] = w.before[i] + t * w.step[i];
                }
                allLaws(w, density);
                double now = leftOver(w, w.dropBefore, w.drop, t);
                if (now <= (1 - 0.1 * t) * left || t < 0.01) {
                    left = now;
                    break;
                }
                t *= 0.5;
            }
            for (int i = 0; i < n; i++) {
                w.drop[i] = w.dropBefore[i] + t * (w.drop[i] - w.dropBefore[i]);
            }
        }
        wyes.requireDirections(w.flow);
        throw new IllegalStateException(
                "the flows through the wyes did not settle in "
                        + MAX_STEPS
                        + " steps: branch \""
                        + branchName(w.worst)
                        + "\" changes most");
    }

    private void allLaws(Workspace w, double density) {
        laws(w);
        wyes.evaluate(w.flow, data, density, w.wyeLoss, w.byBranch, w.byCommon);
    }

    /** What laws and nodes still disagree by in pressure, all branches together. */
    private double leftOver(Workspace w, double[] dropBefore, double[] drop, double t) {
        for (int i = 0; i < kind.length; i++) {
            w.open[i] = w.loss[i] - dropBefore[i] - t * (drop[i] - dropBefore[i]);
        }
        for (int k = 0; k < wyes.terms; k++) {
            w.open[wyes.row(k)] += w.wyeLoss[k];
        }
        double sum = 0;
        for (int i = 0; i < kind.length; i++) {
            sum += w.free(i) * w.open[i] * w.open[i];
        }
        return Math.sqrt(sum);
    }

    /** Puts what the wyes will lose after this step into the sources of their branches. */
    private void tie(Workspace w) {
        int terms = wyes.terms;
        for (int k = 0; k < terms; k++) {
            Wyes.Wye y = wyes.all[k / 2];
            double fixed =
                    w.wyeLoss[k]
                            - w.byBranch[k] * w.flow[y.branch()]
                            - w.byCommon[k] * w.flow[y.common()];
            w.source[wyes.row(k)] -= w.conductance[wyes.row(k)] * fixed;
        }
        pressures(w);
        for (int k = 0; k < terms; k++) {
            Wyes.Wye y = wyes.all[k / 2];
            w.answer[k] =
                    w.byBranch[k] * through(w, y.branch()) + w.byCommon[k] * through(w, y.common());
        }
        for (int c = 0; c < terms; c++) {
            int at = wyes.row(c);
            double g = w.conductance[at];
            respond(w, at);
            for (int r = 0; r < terms; r++) {
                Wyes.Wye y = wyes.all[r / 2];
                double response =
                        w.byBranch[r] * response(w, y.branch(), at)
                                + w.byCommon[r] * response(w, y.common(), at);
                w.matrix[r * terms + c] = (r == c ? 1 : 0) + g * response;
            }
        }
        Dense.solve(w.matrix, w.answer);
        for (int k = 0; k < terms; k++) {
            w.source[wyes.row(k)] -= w.conductance[wyes.row(k)] * w.answer[k];
        }
    }

    private double through(Workspace w, int i) {
        return w.source[i]
                + w.conductance[i]
                        * (w.pressure[topology.from[i]] - w.pressure[topology.to[i]] + gain[i]);
    }

    private double response(Workspace w, int i, int at) {
        int a = topology.rowFrom[i];
        int b = topology.rowTo[i];
        double dp = (a >= 0 ? w.unknown[a] : 0) - (b >= 0 ? w.unknown[b] : 0);
        return w.conductance[i] * dp + (i == at ? 1 : 0);
    }

    private void addCorrections(Workspace w) {
        for (int i = 0; i < w.pressure.length; i++) {
            int row = topology.rowOfNode[i];
            if (row >= 0) {
                w.pressure[i] += w.unknown[row];
            }
        }
    }

    private void advance(Workspace w) {
        for (int i = 0; i < kind.length; i++) {
            w.flow[i] += w.step[i];
        }
    }

    /**
     * Better flows than those of a first step along secants: a loss that goes with the square of
     * the flow drives the geometric mean of the flow that the secant was drawn for and the one it
     * gave. These flows do not balance; the next step makes them.
     */
    private void shape(Workspace w) {
        for (int k = DUCT; k <= LEAK; k++) {
            for (int i : open[k]) {
                double q = w.flow[i] + w.step[i];
                w.flow[i] = Math.copySign(Math.sqrt(Math.abs(q) * w.flow[i]), q);
            }
        }
        for (int k = POLYNOMIAL; k <= HELD; k++) {
            for (int i : open[k]) {
                w.flow[i] += w.step[i];
            }
        }
    }

    /**
     * Adds to a Newton step what it neglects: the bend of the laws (Chebyshev's correction), and
     * what rounding has left of imbalance at the nodes. Both go through the linear system once
     * more, for corrections small enough to carry all the digits.
     */
    private void correct(Workspace w) {
        double[] source = w.source;
        for (int i = 0; i < kind.length; i++) {
            source[i] = w.flow[i] + w.step[i];
        }
        for (int k : BY_POWER) {
            for (int i : open[k]) {
                double q = w.flow[i];
                double d = w.step[i];
                // exponent of the power law with this value and slope
                double power = q / (w.conductance[i] * w.loss[i]);
                if (Math.abs(d) < 0.5 * Math.abs(q) && power > 1 && power < 2.5) {
                    source[i] -= 0.5 * (power - 1) * d * d / q;
                }
            }
        }
        for (int i : open[FILTER]) {
            double d = w.step[i] / count[i];
            source[i] -= w.conductance[i] * w.b[i] * Math.copySign(d * d, w.flow[i]);
        }
        for (int i : open[POLYNOMIAL]) {
            // run backwards, the curve is straight
            double d = w.flow[i] > 0 ? w.step[i] / count[i] : 0;
            source[i] += w.conductance[i] * w.ratio * data[i * WIDTH + 2] * d * d;
        }
        for (int i : open[TABLE]) {
            double d = w.step[i] / count[i];
            double bend = curve[i].riseBend(w.flow[i] / count[i], -w.loss[i] / w.ratio);
            source[i] += 0.5 * w.conductance[i] * w.ratio * bend * d * d;
        }
        conserve(w);
    }

    /** The step that comes next to the flows in the sources and leaves no imbalance. */
    private void conserve(Workspace w) {
        substitute(w, 0);
        int[] a = topology.rowFrom;
        int[] b = topology.rowTo;
        for (int i = 0; i < kind.length; i++) {
            double dp = (a[i] >= 0 ? w.unknown[a[i]] : 0) - (b[i] >= 0 ? w.unknown[b[i]] : 0);
            w.step[i] = w.source[i] + w.conductance[i] * dp - w.flow[i];
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
            laws(w);
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
            if (count[i] == 0) {
                w.flow[i] = 0;
                w.loss[i] = 0;
                w.conductance[i] = 0;
                w.source[i] = 0;
                continue;
            }
            if (!cold && w.flow[i] != 0) {
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
     * conductance dp}. Kind by kind, so that the processor need not guess which law comes next.
     */
    private void laws(Workspace w) {
        ducts(w);
        for (int i : open[QUADRATIC]) {
            double q = w.flow[i] / count[i];
            double resistance = w.a[i] * Math.abs(q);
            set(w, i, resistance * q, Math.max(2 * resistance, w.d[i]));
        }
        for (int i : open[FILTER]) {
            double q = w.flow[i] / count[i];
            double turbulent = w.b[i] * Math.abs(q);
            set(w, i, (w.a[i] + turbulent) * q, w.a[i] + Math.max(2 * turbulent, w.d[i]));
        }
        for (int i : open[LEAK]) {
            double signed = w.flow[i] / count[i];
            double q = Math.abs(signed);
            double h = Math.pow(q * w.a[i], w.b[i]);
            set(w, i, Math.copySign(h, signed), h > FLAT ? h * w.b[i] / q : w.d[i]);
        }
        for (int i : open[POLYNOMIAL]) {
            double q = w.flow[i] / count[i];
            int at = i * WIDTH;
            double a1 = data[at + 1];
            double a2 = data[at + 2];
            double floor = 2 * Math.sqrt(-a2 * FLAT);
            if (q >= 0) {
                set(
                        w,
                        i,
                        -w.ratio * (data[at] + (a1 + a2 * q) * q),
                        w.ratio * Math.max(floor, -a1 - 2 * a2 * q));
            } else {
                // straight on, so that the rise keeps falling with flow
                double straight = Math.max(floor, -a1);
                set(w, i, -w.ratio * (data[at] - straight * q), w.ratio * straight);
            }
        }
        for (int i : open[TABLE]) {
            double q = w.flow[i] / count[i];
            double rise = curve[i].riseAt(q);
            set(w, i, -w.ratio * rise, -w.ratio * curve[i].riseSlope(q, rise));
        }
        for (int i : open[HELD]) {
            w.conductance[i] = 0;
            w.source[i] = data[i * WIDTH];
            w.loss[i] = 0;
        }
    }

    private void ducts(Workspace w) {
        for (int i : open[DUCT]) {
            double q = w.flow[i] / count[i];
            double size = Math.abs(q);
            double re = size * w.a[i];
            double c = w.c[i];
            double rel = w.e[i];
            double resistance;
            double slope;
            if (re >= Friction.TURBULENT_LIMIT) {
                double x = Friction.inverseRoot(re, rel);
                // f and its slope share one division: x^2 times Re (s + K b)
                double kb = 0.868588963806503655 * 2.51;
                double z = re * (rel * (1 / 3.7)) + 2.51 * x + kb;
                double part = w.b[i] / (x * x * z);
                double f = part * z + c;
                resistance = f * size;
                slope = 2 * (f - kb * part) * size;
            } else if (re <= Friction.LAMINAR_LIMIT) {
                double laminar = 64 * w.b[i] / w.a[i];
                resistance = laminar + c * size;
                slope = laminar + 2 * c * size;
            } else {
                double x = Friction.inverseRoot(Friction.TURBULENT_LIMIT, rel);
                double t = Friction.transition(re);
                double end = Friction.transitionEnd(x);
                double endSlope = Friction.endSlope(x, rel);
                double f = w.b[i] * Math.exp(Friction.bridge(t, end, endSlope));
                double turn = Friction.bridgeSlope(t, end, endSlope);
                resistance = (f + c) * size;
                slope = ((2 + turn) * f + 2 * c) * size;
            }
            set(w, i, resistance * q, Math.max(slope, w.d[i]));
        }
    }

    private void set(Workspace w, int i, double loss, double slope) {
        double g = count[i] / slope;
        w.loss[i] = loss;
        w.conductance[i] = g;
        w.source[i] = w.flow[i] - g * loss;
    }

    /**
     * Draws the passive branches through the origin instead: a first step then only needs flows of
     * the right order of size.
     */
    private void secants(Workspace w) {
        for (int k = DUCT; k <= LEAK; k++) {
            for (int i : open[k]) {
                w.conductance[i] = w.flow[i] / w.loss[i];
                w.source[i] = 0;
            }
        }
    }

    /** Pressures of the factored system from the sources. */
    private void pressures(Workspace w) {
        substitute(w, 1);
        double highest = 0;
        int[] rows = topology.rowOfNode;
        for (int i = 0; i < rows.length; i++) {
            double p = rows[i] >= 0 ? w.unknown[rows[i]] : fixedPressure[~rows[i]];
            w.pressure[i] = p;
            highest = Math.max(highest, Math.abs(p));
        }
        w.highest = highest;
    }

    /** Gathers the conductances and eliminates node after node. */
    private void factor(Workspace w) {
        Topology t = topology;
        double[] ground = w.ground;
        double[] mesh = w.mesh;
        Arrays.fill(ground, 0);
        Arrays.fill(mesh, 0);
        for (int i = 0; i < kind.length; i++) {
            int a = t.rowFrom[i];
            int b = t.rowTo[i];
            if (t.slot[i] >= 0) {
                mesh[t.slot[i]] += w.conductance[i];
            } else if (a >= 0) {
                ground[a] += w.conductance[i];
            } else if (b >= 0) {
                ground[b] += w.conductance[i];
            }
        }
        int[] start = t.columnStart;
        int[] row = t.slotRow;
        int[] fill = t.fillTarget;
        int f = 0;
        double[] pivot = w.pivot;
        for (int k = 0; k < t.unknowns; k++) {
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
                ground[row[s]] += l * ground[k];
                for (int u = s + 1; u < hi; u++) {
                    mesh[fill[f++]] += l * mesh[u];
                }
            }
        }
    }

    /**
     * Pressures of the factored system from the sources; known pressures and gains count times
     * {@code known}, 0 or 1.
     */
    private void substitute(Workspace w, double known) {
        Topology t = topology;
        double[] right = w.right;
        Arrays.fill(right, 0);
        for (int i = 0; i < kind.length; i++) {
            double g = w.conductance[i];
            double s = w.source[i] + g * gain[i] * known;
            int a = t.rowFrom[i];
            int b = t.rowTo[i];
            if (a >= 0) {
                right[a] -= b >= 0 ? s : s - g * fixedPressure[~b] * known;
            }
            if (b >= 0) {
                right[b] += a >= 0 ? s : s + g * fixedPressure[~a] * known;
            }
        }
        sweep(w);
    }

    /** Pressures that a source of 1 in one branch alone would bring. */
    private void respond(Workspace w, int branch) {
        Arrays.fill(w.right, 0);
        int a = topology.rowFrom[branch];
        int b = topology.rowTo[branch];
        if (a >= 0) {
            w.right[a] = -1;
        }
        if (b >= 0) {
            w.right[b] = 1;
        }
        sweep(w);
    }

    /** Forward and backward through the factors. */
    private void sweep(Workspace w) {
        Topology t = topology;
        double[] right = w.right;
        double[] mesh = w.mesh;
        int[] start = t.columnStart;
        int[] row = t.slotRow;
        int n = t.unknowns;
        double[] pivot = w.pivot;
        double[] p = w.unknown;
        for (int k = 0; k < n; k++) {
            double part = right[k] * pivot[k];
            p[k] = part;
            for (int s = start[k]; s < start[k + 1]; s++) {
                right[row[s]] += mesh[s] * part;
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = 0;
            for (int s = start[k]; s < start[k + 1]; s++) {
                sum += mesh[s] * p[row[s]];
            }
            p[k] += sum * pivot[k];
        }
    }

    /**
     * Loss of one branch at a flow: h(Q) of the class comment, without what wyes add.
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
        laws(w);
        return w.loss[branch];
    }

    /**
     * What wyes add to the loss of a branch at the flows of a solution.
     *
     * @param branch branch number
     * @param density air density of that solution, kg/m3
     * @param w the solution
     * @return Pa from start to end of the branch; 0 for a branch that is no leg of a wye
     * @throws IllegalArgumentException if the density is not physical
     */
    public double wyeLoss(int branch, double density, Workspace w) {
        Range.require("air density", density, 0.1, 10, "kg/m3");
        wyes.evaluate(w.flow, data, density, w.wyeLoss, w.byBranch, w.byCommon);
        double sum = 0;
        for (int k = 0; k < wyes.terms; k++) {
            sum += wyes.row(k) == branch ? w.wyeLoss[k] : 0;
        }
        return sum;
    }

    private static void requireAreas(Wyes.Wye y, double[] data) {
        double common = data[y.common() * WIDTH + 1];
        double straight = data[y.straight() * WIDTH + 1];
        Range.require(
                "area of the straight passage of wye \""
                        + y.name()
                        + "\" over that of its common leg (the coefficients hold for passages that"
                        + " keep their size)",
                straight / common,
                0.98,
                1.02,
                "");
        Range.require(
                "area of the branch of wye \"" + y.name() + "\" over that of its common leg",
                data[y.branch() * WIDTH + 1] / common,
                0.01,
                1,
                "");
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
                                + " drive its own air; make the junction a wye, whose gain follows"
                                + " the flow of the trunk");
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
        final double[] before;
        final double[] dropBefore;
        final double[] open;
        final double[] wyeLoss;
        final double[] byBranch;
        final double[] byCommon;
        final double[] answer;
        final double[] matrix;
        double ratio;
        double highest;
        double change;
        int worst;
        int steps;
        boolean warm;

        Workspace(int branches, int unknowns, int slots, int nodes, int terms) {
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
            before = new double[terms == 0 ? 0 : branches];
            dropBefore = new double[terms == 0 ? 0 : branches];
            open = new double[terms == 0 ? 0 : branches];
            wyeLoss = new double[terms];
            byBranch = new double[terms];
            byCommon = new double[terms];
            answer = new double[terms];
            matrix = new double[terms * terms];
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
        private final List<Wyes.Wye> joined = new ArrayList<>();
        private final Set<String> takenWyes = new HashSet<>();
        private final Set<Integer> wyeNodes = new HashSet<>();

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

        /**
         * Makes a converging wye or tee of three ducts that meet at a node: the branch and the
         * straight passage bring air, the common leg takes it away. What each loses or gains
         * follows the flow ratio as it comes out, {@link Junctions#convergingBranch} and {@link
         * Junctions#convergingStraight}, on the velocity pressure of the common leg; the ducts
         * themselves are given without a coefficient for it.
         *
         * <p>A branch may gain more than its friction loses, which a coefficient of its own may
         * not. The solution is Newton's from the flows without wyes; where so strong a gain leaves
         * more than one solution, it is the one met first.
         *
         * @param name its name
         * @param branch number of the duct that joins at an angle
         * @param straight number of the duct that goes straight on
         * @param common number of the duct with all the air, as large as the straight one
         * @param angle between branch and passage, rad, in [0, 90 degrees]
         * @throws IllegalArgumentException if these are not three ducts of such sizes that meet at
         *     one node of unknown pressure, or a leg has a wye at this node already
         */
        public void convergingWye(String name, int branch, int straight, int common, double angle) {
            wye(name, branch, straight, common, angle, true);
        }

        /**
         * Makes a diverging wye or tee of three ducts that meet at a node: the common leg brings
         * the air, the branch and the straight passage take it on. Losses as with {@link
         * #convergingWye}, by {@link Junctions#divergingBranch(double, double, double)} and {@link
         * Junctions#divergingStraight(double, double)}.
         *
         * @param name its name
         * @param branch number of the duct that leaves at an angle
         * @param straight number of the duct that goes straight on
         * @param common number of the duct with all the air, as large as the straight one
         * @param angle between branch and passage, rad, in [0, 90 degrees]
         * @throws IllegalArgumentException if these are not three ducts of such sizes that meet at
         *     one node of unknown pressure, or a leg has a wye at this node already
         */
        public void divergingWye(String name, int branch, int straight, int common, double angle) {
            wye(name, branch, straight, common, angle, false);
        }

        private void wye(
                String name,
                int branch,
                int straight,
                int common,
                double angle,
                boolean converging) {
            requireName(name, takenWyes, "wye");
            Range.require("angle of wye \"" + name + "\"", angle, 0, Math.PI / 2, "rad");
            int[] leg = {branch, straight, common};
            for (int i : leg) {
                if (i < 0 || i >= kinds.size() || kinds.get(i) != DUCT) {
                    throw new IllegalArgumentException(
                            "wye \"" + name + "\" needs three ducts; branch " + i + " is none");
                }
            }
            int at = -1;
            for (int end : ends.get(common)) {
                if (sign(branch, end) != 0 && sign(straight, end) != 0) {
                    at = end;
                }
            }
            if (branch == straight || branch == common || straight == common || at < 0) {
                throw new IllegalArgumentException(
                        "the three ducts of wye \"" + name + "\" do not meet at one node");
            }
            if (!Double.isNaN(nodePressures.get(at))) {
                throw new IllegalArgumentException(
                        "wye \"" + name + "\" stands at a node of known pressure");
            }
            if (!wyeNodes.add(at)) {
                throw new IllegalArgumentException(
                        "there are two wyes at node \""
                                + nodeNames.get(at)
                                + "\": put a short duct between them");
            }
            int in = converging ? 1 : -1;
            joined.add(
                    new Wyes.Wye(
                            name,
                            branch,
                            straight,
                            common,
                            in * sign(branch, at),
                            in * sign(straight, at),
                            -in * sign(common, at),
                            angle,
                            converging));
        }

        /** 1 if a branch ends at a node, -1 if it starts there, 0 if neither. */
        private int sign(int branch, int node) {
            int[] e = ends.get(branch);
            return e[1] == node ? 1 : e[0] == node ? -1 : 0;
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
            for (Wyes.Wye y : joined) {
                requireAreas(y, data);
            }
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
                    curves.toArray(new BlowerCurve[0]),
                    new Wyes(joined));
        }
    }
}
