package dev.thinair.reference.speed;

import dev.thinair.ducts.kernel.Friction;
import dev.thinair.ducts.kernel.Network;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * A house's ducts, to be solved by the library or, as a peer, by the same Newton iteration on node
 * pressures with dense matrices of a general-purpose library.
 */
final class DenseNetwork {

    private static final double FAN_RISE = 300;
    private static final double REFERENCE = 1.2041;

    /** Branch of a duct, or of a register, which has no length; the last one is the blower. */
    private record Branch(int from, int to, double diameter, double length, double coefficient) {
        double area() {
            return Math.PI * diameter * diameter / 4;
        }
    }

    private final List<Branch> branches = new ArrayList<>();
    private final double fanSlope;
    private final double fanBend;
    private int nodes = 2;

    private DenseNetwork(double size) {
        // the larger blower reaches the same pressures at flows in proportion
        this.fanSlope = -40 / size;
        this.fanBend = -420 / (size * size);
    }

    /**
     * A trunk with reductions, runs of five to seven inches each ending in a register, one return,
     * one blower: of every 13 branches three are trunks, five runs and five registers. The more
     * branches, the longer the trunk: that of 640 branches is 380 m long, and what is left at its
     * end flows without turbulence.
     */
    static DenseNetwork house(int count) {
        return layout(count, 1);
    }

    /** The same with one such trunk, of about 40 branches, for every 40 branches. */
    static DenseNetwork wing(int count) {
        return layout(count, Math.max(1, count / 40));
    }

    private static DenseNetwork layout(int count, int arms) {
        double size = count / 40.0;
        DenseNetwork n = new DenseNetwork(size);
        // node -1 is the house, 0 the return plenum, 1 the supply plenum
        n.branches.add(new Branch(-1, 0, 0.5 * Math.sqrt(size), 6, 2.5));
        for (int arm = 0; arm < arms; arm++) {
            n.arm(arm, (count - 2) * (arm + 1) / arms - (count - 2) * arm / arms, size / arms);
        }
        n.branches.add(new Branch(0, 1, 0, 0, 0));
        return n;
    }

    private void arm(int arm, int count, double size) {
        double[] sizes = {0.1524, 0.1778, 0.127};
        int node = 1;
        int trunks = Math.max(1, count * 9 / 38);
        int runs = (count - trunks) / 2;
        trunks = count - 2 * runs;
        int made = 0;
        for (int t = 0; t < trunks; t++) {
            double left = (double) (trunks - t) / trunks;
            branches.add(
                    new Branch(
                            node,
                            nodes,
                            0.2 + 0.35 * Math.sqrt(size * left),
                            2.5 + 0.3 * (arm % 4),
                            0.1));
            node = nodes++;
            while (made < runs * (t + 1) / trunks) {
                double d = sizes[(made + arm) % 3];
                int boot = nodes++;
                branches.add(new Branch(node, boot, d, 4 + (made + 2 * arm) % 5, 1.4));
                branches.add(new Branch(boot, -1, 1.25 * d, 0, 3 + made % 2));
                made++;
            }
        }
    }

    Network network() {
        Network.Builder b = Network.builder(REFERENCE);
        int room = b.fixedNode("house", 0);
        for (int i = 0; i < nodes; i++) {
            b.node("n" + i);
        }
        for (int i = 0; i < branches.size(); i++) {
            Branch r = branches.get(i);
            int from = r.from < 0 ? room : r.from + 1;
            int to = r.to < 0 ? room : r.to + 1;
            if (r.diameter == 0) {
                b.blower("blower", from, to, FAN_RISE, fanSlope, fanBend);
            } else if (r.length == 0) {
                double resistance = r.coefficient * REFERENCE / 2 / (r.area() * r.area());
                b.quadratic("register " + i, from, to, resistance);
            } else {
                b.duct(
                        "duct " + i,
                        from,
                        to,
                        r.diameter,
                        r.area(),
                        r.length,
                        9e-5,
                        r.coefficient,
                        1);
            }
        }
        return b.build();
    }

    /** Flows of all branches, from a cold start. */
    double[] solve(double density, double viscosity, boolean cholesky) {
        int n = branches.size();
        double[] flow = new double[n];
        double[] conductance = new double[n];
        double[] source = new double[n];
        for (int i = 0; i < n; i++) {
            Branch b = branches.get(i);
            flow[i] =
                    b.diameter > 0
                            ? 3 * b.area()
                            : 0.7
                                    * (fanSlope
                                            + Math.sqrt(
                                                    fanSlope * fanSlope - 4 * fanBend * FAN_RISE))
                                    / (-2 * fanBend);
        }
        for (int step = 1; step <= 50; step++) {
            for (int i = 0; i < n; i++) {
                law(branches.get(i), i, flow, density, viscosity, step == 1, conductance, source);
            }
            double[][] k = new double[nodes][nodes];
            double[] right = new double[nodes];
            for (int i = 0; i < n; i++) {
                Branch b = branches.get(i);
                double g = conductance[i];
                if (b.from >= 0) {
                    k[b.from][b.from] += g;
                    right[b.from] -= source[i];
                }
                if (b.to >= 0) {
                    k[b.to][b.to] += g;
                    right[b.to] += source[i];
                }
                if (b.from >= 0 && b.to >= 0) {
                    k[b.from][b.to] -= g;
                    k[b.to][b.from] -= g;
                }
            }
            Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(k, false);
            RealVector p =
                    (cholesky
                                    ? new CholeskyDecomposition(matrix).getSolver()
                                    : new LUDecomposition(matrix).getSolver())
                            .solve(new ArrayRealVector(right, false));
            double change = 0;
            for (int i = 0; i < n; i++) {
                Branch b = branches.get(i);
                double dp =
                        (b.from < 0 ? 0 : p.getEntry(b.from)) - (b.to < 0 ? 0 : p.getEntry(b.to));
                double q = source[i] + conductance[i] * dp;
                change = Math.max(change, Math.abs(q - flow[i]) / Math.abs(q));
                flow[i] = q;
            }
            if (change < 1e-6 && step > 1) {
                return flow;
            }
        }
        throw new IllegalStateException("the dense network did not settle");
    }

    private void law(
            Branch b,
            int i,
            double[] flow,
            double density,
            double viscosity,
            boolean secant,
            double[] conductance,
            double[] source) {
        double q = flow[i];
        double loss;
        double slope;
        if (b.diameter == 0) {
            double ratio = density / REFERENCE;
            loss = -ratio * (FAN_RISE + (fanSlope + fanBend * q) * q);
            slope = -ratio * (fanSlope + 2 * fanBend * q);
        } else {
            double velocity = Math.abs(q) / b.area();
            double friction = 0;
            double turn = 0;
            if (b.length > 0) {
                double re = density * velocity * b.diameter / viscosity;
                friction = Friction.darcy(re, 9e-5 / b.diameter) * b.length / b.diameter;
                if (re > Friction.TURBULENT_LIMIT) {
                    // implicit derivative of Colebrook-White, d ln f / d ln Re
                    double x = Math.sqrt(b.length / b.diameter / friction);
                    double part = 2.51 / re * 2 / Math.log(10);
                    turn = -2 * part / (9e-5 / b.diameter / 3.7 + 2.51 / re * x + part);
                }
            }
            double head = density / 2 / (b.area() * b.area());
            loss = (friction + b.coefficient) * head * q * Math.abs(q);
            slope = ((2 + turn) * friction + 2 * b.coefficient) * head * Math.abs(q);
        }
        if (secant && b.diameter > 0) {
            conductance[i] = q / loss;
            source[i] = 0;
        } else {
            conductance[i] = 1 / slope;
            source[i] = q - loss / slope;
        }
    }
}
