package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wyes whose coefficients follow the flows that come out. */
class NetworkWyeTest {

    private static final double DENSITY = 1.2;
    private static final double VISCOSITY = 1.82e-5;

    private record Part(int from, int to, double d, double length, double coefficient) {
        double area() {
            return Math.PI * d * d / 4;
        }
    }

    private record Joint(int branch, int straight, int common, double angle, boolean converging) {}

    /**
     * Rooms at node -1; a supply trunk whose runs leave at wyes, a return trunk whose branches join
     * at wyes, a blower between; some take-offs are plain.
     */
    private static final class Layout {
        final List<Part> ducts = new ArrayList<>();
        final List<Joint> joints = new ArrayList<>();
        int nodes = 2;
        double a0 = 120;
        double a2 = -300;

        Layout(long seed) {
            Random r = new Random(seed);
            double d = 0.35 + 0.15 * r.nextDouble();
            side(r, d, 1 + r.nextInt(4), 1, false);
            side(r, d, 1 + r.nextInt(4), 0, true);
        }

        /**
         * A trunk of one size from plenum {@code at} with wyes, and a run to the rooms at its end.
         */
        private void side(Random r, double d, int wyes, int at, boolean back) {
            int here = at;
            int common = add(here, nodes, d, 1 + 4 * r.nextDouble(), 0.1, back);
            here = nodes++;
            for (int k = 0; k < wyes; k++) {
                double run = d * (0.3 + 0.3 * r.nextDouble());
                int branch = add(here, -1, run, 1 + 6 * r.nextDouble(), 3, back);
                boolean last = k == wyes - 1;
                int next = last ? -1 : nodes++;
                int straight = add(here, next, d, 1 + 4 * r.nextDouble(), last ? 4 : 0.1, back);
                if (r.nextInt(5) > 0) {
                    double angle = Math.toRadians(new double[] {30, 45, 60, 90}[r.nextInt(4)]);
                    joints.add(new Joint(branch, straight, common, angle, back));
                }
                common = straight;
                here = next;
            }
        }

        private int add(int from, int to, double d, double length, double c, boolean back) {
            ducts.add(back ? new Part(to, from, d, length, c) : new Part(from, to, d, length, c));
            return ducts.size() - 1;
        }

        Network network(boolean joined) {
            Network.Builder b = Network.builder(DENSITY);
            int room = b.fixedNode("rooms", 0);
            for (int i = 0; i < nodes; i++) {
                b.node("n" + i);
            }
            for (int i = 0; i < ducts.size(); i++) {
                Part p = ducts.get(i);
                b.duct(
                        "d" + i,
                        p.from + 1 + room,
                        p.to + 1,
                        p.d,
                        p.area(),
                        p.length,
                        9e-5,
                        p.coefficient,
                        1);
            }
            b.blower("blower", 1, 2, a0, -20, a2);
            for (int i = 0; joined && i < joints.size(); i++) {
                Joint j = joints.get(i);
                if (j.converging) {
                    b.convergingWye("w" + i, j.branch, j.straight, j.common, j.angle);
                } else {
                    b.divergingWye("w" + i, j.branch, j.straight, j.common, j.angle);
                }
            }
            return b.build();
        }
    }

    /** Coefficients of Crane TP-410 written anew; {@code k} 0 for the branch, 1 straight on. */
    private static double crane(Joint j, int k, double q, double a) {
        double c = Math.cos(j.angle);
        boolean tee = j.angle > 1.4;
        if (j.converging && k == 0) {
            double f = a <= 0.35 ? 1 : Math.max(0.9 * (1 - q), 0.55);
            return f * (1 + q * q / a / a - 2 * (1 - q) * (1 - q) - 2 * c * q * q / a);
        }
        if (j.converging) {
            return tee ? 1.55 * q - q * q : 1 - (1 - q) * (1 - q) - 2 * c * q * q / a;
        }
        if (k == 1) {
            return (a <= 0.4 ? 0.4 : q <= 0.5 ? 2 * (2 * q - 1) : 0.3 * (2 * q - 1)) * q * q;
        }
        double momentum = 1 + q * q / a / a - 2 * q / a * c;
        if (!tee) {
            double g = a <= 0.35 ? Math.max(1.1 - 0.7 * q, 0.85) : Math.max(1 - 0.6 * q, 0.6);
            return g * momentum;
        }
        double t = Math.max(0, (a - 4.0 / 9) / (5.0 / 9));
        return (1 - t) * momentum + t * (1 + 0.3 * q * q) * (1 + 0.3 * q * q / a / a);
    }

    private static double loss(Layout l, int i, double[] flow) {
        Part p = l.ducts.get(i);
        double v = flow[i] / p.area();
        double f = v == 0 ? 0 : Friction.darcy(DENSITY * Math.abs(v) * p.d / VISCOSITY, 9e-5 / p.d);
        double sum = (f * p.length / p.d + p.coefficient) * DENSITY / 2 * v * Math.abs(v);
        for (Joint j : l.joints) {
            for (int k = 0; k < 2; k++) {
                if ((k == 0 ? j.branch : j.straight) == i) {
                    double area = l.ducts.get(j.common).area();
                    double vc = flow[j.common] / area;
                    double q = flow[j.branch] / flow[j.common];
                    sum +=
                            crane(j, k, q, l.ducts.get(j.branch).area() / area)
                                    * DENSITY
                                    / 2
                                    * vc
                                    * vc;
                }
            }
        }
        return sum;
    }

    @Property(tries = 300)
    void every_leg_loses_what_its_published_coefficient_says_at_the_flow_ratio_found(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Layout l = new Layout(seed);
        Network n = l.network(true);
        Network.Workspace w = n.workspace();
        assertThat(n.solve(DENSITY, VISCOSITY, w)).isLessThanOrEqualTo(20);
        double[] flow = IntStream.range(0, l.ducts.size()).mapToDouble(w::flow).toArray();
        double[] sum = new double[l.nodes + 1];
        for (int i = 0; i < n.branchCount(); i++) {
            sum[n.from(i)] -= w.flow(i);
            sum[n.to(i)] += w.flow(i);
        }
        double total = w.flow(n.branch("blower"));
        for (int i = 1; i < sum.length; i++) {
            assertThat(sum[i]).isCloseTo(0, within(1e-13 * total));
        }
        for (int i = 0; i < flow.length; i++) {
            double dp = w.pressure(n.from(i)) - w.pressure(n.to(i));
            assertThat(loss(l, i, flow)).isCloseTo(dp, within(1e-9 * Math.abs(dp) + 1e-9));
            assertThat(n.loss(i, flow[i], DENSITY, VISCOSITY) + n.wyeLoss(i, DENSITY, w))
                    .isCloseTo(dp, within(1e-9 * Math.abs(dp) + 1e-9));
        }
    }

    @Property(tries = 100)
    void a_warm_start_ends_where_a_cold_one_does(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 0.6, max = 1.3) double density) {
        Network n = new Layout(seed).network(true);
        Network.Workspace warm = n.workspace();
        Network.Workspace cold = n.workspace();
        n.solve(DENSITY, VISCOSITY, warm);
        int steps = n.solve(density, VISCOSITY, warm);
        assertThat(steps).isLessThan(n.solve(density, VISCOSITY, cold));
        for (int i = 0; i < n.branchCount(); i++) {
            assertThat(warm.flow(i))
                    .isCloseTo(cold.flow(i), within(1e-10 * Math.abs(cold.flow(i)) + 1e-12));
        }
    }

    /** Levenberg-Marquardt on all flows and pressures, difference Jacobian, coefficients anew. */
    @TestFactory
    Stream<DynamicTest> a_general_optimiser_finds_the_same_flows() {
        return IntStream.range(0, 12)
                .mapToObj(seed -> DynamicTest.dynamicTest("layout " + seed, () -> compare(seed)));
    }

    private static void compare(long seed) {
        Layout l = new Layout(seed);
        Network n = l.network(true);
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        int branches = l.ducts.size() + 1;
        int size = branches + l.nodes;
        double[] start = new double[size];
        Network plain = l.network(false);
        Network.Workspace v = plain.workspace();
        plain.solve(DENSITY, VISCOSITY, v);
        for (int i = 0; i < branches; i++) {
            start[i] = v.flow(i);
        }
        double[] x = LeastSquaresRoot.of(point -> residual(l, point), start);
        for (int i = 0; i < branches; i++) {
            assertThat(w.flow(i)).isCloseTo(x[i], within(1e-8 * Math.abs(x[i])));
        }
        for (int i = 0; i < l.nodes; i++) {
            double p = x[branches + i];
            assertThat(w.pressure(i + 1)).isCloseTo(p, within(1e-8 * Math.abs(p) + 1e-9));
        }
    }

    private static double[] residual(Layout l, double[] x) {
        int branches = l.ducts.size() + 1;
        double[] r = new double[x.length];
        for (int i = 0; i < branches; i++) {
            boolean blower = i == branches - 1;
            int from = blower ? 0 : l.ducts.get(i).from;
            int to = blower ? 1 : l.ducts.get(i).to;
            double h = blower ? -(l.a0 + (-20 + l.a2 * x[i]) * x[i]) : loss(l, i, x);
            double pa = from < 0 ? 0 : x[branches + from];
            double pb = to < 0 ? 0 : x[branches + to];
            r[i] = (h - pa + pb) / 100;
            if (from >= 0) {
                r[branches + from] -= x[i];
            }
            if (to >= 0) {
                r[branches + to] += x[i];
            }
        }
        return r;
    }

    /**
     * A short wide branch beside a fast trunk is dragged along: it gains more than it loses by
     * friction, which no coefficient of its own may.
     */
    @Test
    void a_return_branch_may_gain_more_than_its_friction() {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("rooms", 0);
        int node = b.node("node");
        int back = b.node("return plenum");
        double wide = DuctGeometry.roundArea(0.3);
        int straight = b.duct("straight", room, node, 0.3, wide, 3, 9e-5, 1, 1);
        int branch =
                b.duct("branch", room, node, 0.25, DuctGeometry.roundArea(0.25), 1, 9e-5, 60, 1);
        int common = b.duct("common", node, back, 0.3, wide, 3, 9e-5, 0, 1);
        b.blower("blower", back, room, 200, -20, -300);
        double angle = Math.PI / 6;
        b.convergingWye("wye", branch, straight, common, angle);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        double q = w.flow(branch) / w.flow(common);
        double gain = -Junctions.convergingBranch(q, DuctGeometry.roundArea(0.25) / wide, angle);
        double v = w.flow(common) / wide;
        assertThat(q).isBetween(0.1, 0.35);
        assertThat(gain).isPositive();
        assertThat(n.wyeLoss(branch, DENSITY, w)).isCloseTo(-gain * 0.6 * v * v, within(1e-9));
        assertThat(n.wyeLoss(common, DENSITY, w)).isZero();
        // the rooms stand above the node by less than the branch loses: the trunk pulls its air
        assertThat(-w.pressure(node))
                .isLessThan(n.loss(branch, w.flow(branch), DENSITY, VISCOSITY));
        double own = DuctGeometry.roundArea(0.25) / wide / q;
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                Network.builder(DENSITY)
                                        .duct(
                                                "alone",
                                                0,
                                                1,
                                                0.25,
                                                0.05,
                                                1,
                                                9e-5,
                                                -gain * own * own,
                                                1))
                .withMessageContaining("does not outweigh");
    }

    @Property(tries = 200)
    void slopes_are_those_of_the_coefficients(
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double q,
            @ForAll @DoubleRange(min = 0.05, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1.57) double angle,
            @ForAll boolean converging,
            @ForAll boolean onBranch) {
        Wyes.Wye y = new Wyes.Wye("y", 0, 1, 2, 1, 1, 1, angle, converging);
        double h = 1e-6;
        double left =
                (Wyes.coefficient(y, onBranch, q, a) - Wyes.coefficient(y, onBranch, q - h, a)) / h;
        double right =
                (Wyes.coefficient(y, onBranch, q + h, a) - Wyes.coefficient(y, onBranch, q, a)) / h;
        double slope = Wyes.slope(y, onBranch, q, a);
        double slack = 1e-4 * (1 + Math.abs(slope)) / a;
        assertThat(slope).isBetween(Math.min(left, right) - slack, Math.max(left, right) + slack);
    }

    /** Away from the jumps of the source's factors the coefficients are the published ones. */
    @ParameterizedTest
    @CsvSource({
        "0.2, 0.5, 45, true", "0.6, 0.5, 45, true", "0.3, 0.3, 60, true", "0.5, 0.8, 90, true",
        "0.2, 0.3, 45, false", "0.7, 0.3, 30, false", "0.4, 0.6, 60, false", "0.8, 0.6, 60, false",
        "0.3, 0.7, 90, false", "0.3, 0.3, 90, false"
    })
    void coefficients_are_those_of_the_junctions(double q, double a, double degrees, boolean in) {
        double angle = Math.toRadians(degrees);
        Wyes.Wye y = new Wyes.Wye("y", 0, 1, 2, 1, 1, 1, angle, in);
        assertThat(Wyes.coefficient(y, true, q, a))
                .isCloseTo(
                        in
                                ? Junctions.convergingBranch(q, a, angle)
                                : Junctions.divergingBranch(q, a, angle),
                        within(1e-14));
        assertThat(Wyes.coefficient(y, false, q, a))
                .isCloseTo(
                        in
                                ? Junctions.convergingStraight(q, a, angle)
                                : Junctions.divergingStraight(q, a),
                        within(1e-14));
    }

    private static Network.Builder three(double straightDiameter) {
        Network.Builder b = Network.builder(DENSITY);
        b.fixedNode("rooms", 0);
        b.node("node");
        b.node("plenum");
        double d = straightDiameter;
        b.duct("straight", 0, 1, d, DuctGeometry.roundArea(d), 3, 9e-5, 1, 1);
        b.duct("branch", 0, 1, 0.2, DuctGeometry.roundArea(0.2), 3, 9e-5, 1, 1);
        b.duct("common", 1, 2, 0.3, DuctGeometry.roundArea(0.3), 3, 9e-5, 0, 1);
        b.blower("blower", 2, 0, 200, -20, -300);
        return b;
    }

    @Test
    void what_is_no_wye_is_refused() {
        assertThatThrownBy(() -> three(0.3).convergingWye("y", 1, 0, 3, 1))
                .hasMessageContaining("three ducts");
        assertThatThrownBy(() -> three(0.3).convergingWye("y", 1, 0, 7, 1))
                .hasMessageContaining("three ducts");
        assertThatThrownBy(() -> three(0.3).convergingWye("y", -1, 0, 2, 1))
                .hasMessageContaining("three ducts");
        assertThatThrownBy(() -> three(0.3).convergingWye("y", 1, 1, 2, 1))
                .hasMessageContaining("do not meet");
        assertThatThrownBy(() -> three(0.3).convergingWye("y", 1, 2, 0, 2))
                .hasMessageContaining("angle");
        assertThatThrownBy(() -> three(0.3).convergingWye(" ", 1, 0, 2, 1))
                .hasMessageContaining("name");
        Network.Builder open = three(0.3);
        int other = open.duct("other", 2, 0, 0.3, 0.07, 3, 9e-5, 1, 1);
        assertThatThrownBy(() -> open.convergingWye("y", 1, 0, other, 1))
                .hasMessageContaining("known pressure");
        Network.Builder twice = three(0.3);
        twice.convergingWye("y", 1, 0, 2, 1);
        assertThatThrownBy(() -> twice.convergingWye("z", 0, 1, 2, 1))
                .hasMessageContaining("two wyes");
        Network.Builder wide = three(0.35);
        wide.convergingWye("y", 1, 0, 2, 1);
        assertThatThrownBy(wide::build).hasMessageContaining("keep their size");
    }

    @Test
    void legs_are_not_copied_held_or_resized() {
        Network.Builder b = three(0.3);
        b.convergingWye("y", 1, 0, 2, 1);
        Network n = b.build();
        assertThatThrownBy(() -> n.withCopies(1, 2)).hasMessageContaining("wye");
        assertThatThrownBy(() -> n.withHeldFlow(1, 0.1)).hasMessageContaining("wye");
        assertThatThrownBy(() -> n.withDuct(2, 0.4, 0.12, 3, 9e-5, 0, 1))
                .hasMessageContaining("keep their size");
        Network.Workspace w = n.workspace();
        n.withShut(1).solve(DENSITY, VISCOSITY, w);
        assertThat(w.flow(1)).isZero();
        assertThat(n.wyeLoss(0, DENSITY, w)).isCloseTo(0, within(1e-12));
        assertThatThrownBy(() -> three(0.3).build().solve(DENSITY, VISCOSITY, w))
                .hasMessageContaining("another network");
    }

    /** A leak of air into the trunk makes the branch blow backwards: no coefficient for that. */
    @Test
    void air_that_runs_the_wrong_way_is_an_error() {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("rooms", 0);
        int high = b.fixedNode("wind", 60);
        int node = b.node("node");
        double area = DuctGeometry.roundArea(0.3);
        int straight = b.duct("straight", high, node, 0.3, area, 3, 9e-5, 1, 1);
        int branch = b.duct("branch", room, node, 0.2, DuctGeometry.roundArea(0.2), 3, 9e-5, 1, 1);
        int common = b.duct("common", node, room, 0.3, area, 30, 9e-5, 5, 1);
        b.convergingWye("wye of the hall", branch, straight, common, 1);
        Network n = b.build();
        assertThatThrownBy(() -> n.solve(DENSITY, VISCOSITY, n.workspace()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("wye of the hall")
                .hasMessageContaining("wrong way");
    }
}
