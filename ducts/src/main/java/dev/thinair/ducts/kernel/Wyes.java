package dev.thinair.ducts.kernel;

import java.util.List;

/**
 * Wyes and tees of a network whose loss coefficients follow the flow ratio as it comes out.
 *
 * <p>Each puts a loss {@code K(q) rho/2 (Q_c/A_c)^2}, q = Q_b/Q_c, on its branch and one on its
 * straight passage; K is that of {@link Junctions} by flow ratio, with the jumps that the source
 * has in its factors bridged by the larger of the two neighbouring formulas: converging branch
 * {@code max(0.9 (1 - q), 0.55)}, which differs only for q in (0.389, 0.4) and by less than 2 %;
 * diverging wye {@code max(1.1 - 0.7 q, 0.85)}, q in (0.357, 0.4), below 4 %, and {@code max(1 -
 * 0.6 q, 0.6)}, q in (0.6, 0.667), below 7 %. A law that jumps has flows at which no pressure
 * balances.
 */
final class Wyes {

    /** Beyond this the air of a leg counts as running against it. */
    private static final double AGAINST = 1e-9;

    /** One wye: its legs, and for each leg 1 if its branch points the way the air should go. */
    record Wye(
            String name,
            int branch,
            int straight,
            int common,
            int branchSign,
            int straightSign,
            int commonSign,
            double angle,
            boolean converging) {}

    final Wye[] all;

    /** Two losses each: on the branch, and on the straight passage. */
    final int terms;

    Wyes(List<Wye> all) {
        this.all = all.toArray(new Wye[0]);
        this.terms = 2 * all.size();
    }

    boolean touches(int branch) {
        for (Wye y : all) {
            if (y.branch == branch || y.straight == branch || y.common == branch) {
                return true;
            }
        }
        return false;
    }

    /** Branch on which a loss is put. */
    int row(int term) {
        Wye y = all[term / 2];
        return term % 2 == 0 ? y.branch : y.straight;
    }

    /**
     * Losses at given flows, in the sense of their branches, and their derivatives by the flows of
     * the branch and of the common leg.
     *
     * @param data numbers of the branches, {@link Network#WIDTH} each, the second the cross section
     */
    void evaluate(
            double[] flow,
            double[] data,
            double density,
            double[] loss,
            double[] byBranch,
            double[] byCommon) {
        for (int j = 0; j < all.length; j++) {
            Wye y = all[j];
            double common = y.commonSign * flow[y.common];
            double branch = y.branchSign * flow[y.branch];
            double area = data[y.common * Network.WIDTH + 1];
            double ratio = data[y.branch * Network.WIDTH + 1] / area;
            double head = density / (2 * area * area);
            for (int k = 0; k < 2; k++) {
                int t = 2 * j + k;
                if (common <= 0) {
                    loss[t] = 0;
                    byBranch[t] = 0;
                    byCommon[t] = 0;
                    continue;
                }
                double free = branch / common;
                double q = Math.max(0, Math.min(1, free));
                boolean onBranch = k == 0;
                double value = coefficient(y, onBranch, q, ratio);
                double turn = q == free ? slope(y, onBranch, q, ratio) : 0;
                int sign = onBranch ? y.branchSign : y.straightSign;
                loss[t] = sign * value * head * common * common;
                byBranch[t] = sign * y.branchSign * turn * head * common;
                byCommon[t] = sign * y.commonSign * (2 * value - turn * q) * head * common;
            }
        }
    }

    /** K on the velocity pressure of the common leg, without jumps. */
    static double coefficient(Wye y, boolean onBranch, double q, double a) {
        double cos = Math.cos(y.angle);
        if (y.converging) {
            if (!onBranch) {
                return Junctions.convergingStraight(q, a, y.angle);
            }
            double factor = a <= 0.35 ? 1 : Math.max(0.9 * (1 - q), 0.55);
            return factor * Junctions.convergingMomentum(q, a, cos);
        }
        if (!onBranch) {
            return Junctions.divergingStraight(q, a);
        }
        if (y.angle > Junctions.TEE) {
            return Junctions.divergingBranch(q, a, y.angle);
        }
        double factor = a <= 0.35 ? Math.max(1.1 - 0.7 * q, 0.85) : Math.max(1 - 0.6 * q, 0.6);
        return factor * Junctions.divergingMomentum(q / a, cos);
    }

    /** dK/dq. */
    static double slope(Wye y, boolean onBranch, double q, double a) {
        double cos = Math.cos(y.angle);
        double x = q / a;
        double rest = 1 - q;
        boolean tee = y.angle > Junctions.TEE;
        if (y.converging) {
            if (!onBranch) {
                return tee ? 1.55 - 2 * q : 2 * rest - 4 * cos * x;
            }
            double momentum = Junctions.convergingMomentum(q, a, cos);
            double turn = 2 * x / a + 4 * rest - 4 * cos * x;
            if (a <= 0.35) {
                return turn;
            }
            return 0.9 * rest > 0.55 ? 0.9 * (rest * turn - momentum) : 0.55 * turn;
        }
        if (!onBranch) {
            if (a <= 0.4) {
                return 0.8 * q;
            }
            return (q <= 0.5 ? 2 : 0.3) * (6 * q * q - 2 * q);
        }
        double momentum = Junctions.divergingMomentum(x, cos);
        double turn = 2 * (x - cos) / a;
        if (tee) {
            double full = 0.6 * q * (1 + 0.3 * x * x) + (1 + 0.3 * q * q) * 0.6 * x / a;
            double t = Math.max(0, (a - Junctions.SMALL_TEE) / (1 - Junctions.SMALL_TEE));
            return (1 - t) * turn + t * full;
        }
        double factor = a <= 0.35 ? 1.1 - 0.7 * q : 1 - 0.6 * q;
        double least = a <= 0.35 ? 0.85 : 0.6;
        double fall = a <= 0.35 ? -0.7 : -0.6;
        return factor > least ? factor * turn + fall * momentum : least * turn;
    }

    /** Refuses flows for which there is no published coefficient. */
    void requireDirections(double[] flow) {
        for (Wye y : all) {
            double common = y.commonSign * flow[y.common];
            double branch = y.branchSign * flow[y.branch];
            double slack = AGAINST * Math.abs(common);
            if (common < 0 || branch < -slack || branch > common + slack) {
                throw new IllegalStateException(
                        "wye \""
                                + y.name
                                + "\" is run through the wrong way: its common leg carries "
                                + common
                                + " m3/s and its branch "
                                + branch
                                + " m3/s; loss coefficients are published only for a branch that"
                                + " carries between none and all of the common leg's air");
            }
        }
    }
}
