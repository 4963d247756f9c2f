package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a solution costs must not grow faster than the layout. */
class NetworkGrowthTest {

    private static final double VISCOSITY = 1.82e-5;

    /** One trunk of nine segments with fourteen runs for every arm, and a blower to match. */
    private static Network arms(int arms) {
        Network.Builder b = Network.builder(1.2);
        int house = b.fixedNode("house", 0);
        int back = b.node("return plenum");
        int out = b.node("supply plenum");
        double wide = 0.5 * Math.sqrt(arms);
        b.duct("return", house, back, wide, DuctGeometry.roundArea(wide), 6, 9e-5, 2.5, 1);
        b.blower("blower", back, out, 300, -40.0 / arms, -420.0 / (arms * arms));
        for (int a = 0; a < arms; a++) {
            int at = out;
            for (int t = 0; t < 9; t++) {
                int next = b.node("node " + a + "." + t);
                double d = 0.2 + 0.35 * Math.sqrt((9 - t) / 9.0);
                b.duct(
                        "trunk " + a + "." + t,
                        at,
                        next,
                        d,
                        DuctGeometry.roundArea(d),
                        2.5 + 0.3 * (a % 4),
                        9e-5,
                        0.1,
                        1);
                at = next;
                for (int r = 0; r < 1 + t % 2 + t % 3 / 2; r++) {
                    double run = 0.127 + 0.0254 * ((r + t + a) % 3);
                    b.duct(
                            "run " + a + "." + t + "." + r,
                            at,
                            house,
                            run,
                            DuctGeometry.roundArea(run),
                            4 + (t + 2 * a) % 5,
                            9e-5,
                            3.5,
                            1);
                }
            }
        }
        return b.build();
    }

    /** From 25 branches to 3,000: four linear systems from cold, two from another density. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 20, 120})
    void the_number_of_steps_does_not_depend_on_size(int count) {
        Network n = arms(count);
        Network.Workspace w = n.workspace();
        assertThat(n.isTree()).isTrue();
        assertThat(n.branchCount()).isGreaterThan(24 * count);
        assertThat(n.solve(1.2, VISCOSITY, w)).isEqualTo(4);
        double cold = w.flow(n.branch("blower"));
        assertThat(n.solve(0.93, VISCOSITY, w)).isEqualTo(2);
        n.solve(1.2, VISCOSITY, w);
        assertThat(w.flow(n.branch("blower"))).isCloseTo(cold, within(1e-11 * cold));
    }

    /**
     * Any layout of 500 branches whose trunks are as wide as what hangs on them asks for, with and
     * without loops: fewer than ten linear systems from cold.
     */
    @Property(tries = 60)
    void layouts_of_five_hundred_branches_settle_in_fewer_than_ten_steps(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll boolean loops) {
        Random r = new Random(seed);
        int trunks = 200;
        int[] parent = new int[trunks];
        int[] runs = new int[trunks];
        for (int i = 0; i < trunks; i++) {
            parent[i] = i < 6 ? -1 : Math.max(i - 1 - r.nextInt(60), 0);
            runs[i] = 1 + (i % 2 == 0 ? 1 : 0);
        }
        int[] behind = runs.clone();
        for (int i = trunks - 1; i >= 0; i--) {
            if (parent[i] >= 0) {
                behind[parent[i]] += behind[i];
            }
        }
        Network.Builder b = Network.builder(1.2);
        int house = b.fixedNode("house", 0);
        int back = b.node("return plenum");
        int out = b.node("supply plenum");
        b.duct("return", house, back, 2, DuctGeometry.roundArea(2), 6, 9e-5, 2.5, 1);
        b.blower("blower", back, out, 300, -2, -0.9);
        int[] node = new int[trunks];
        for (int i = 0; i < trunks; i++) {
            node[i] = b.node("node " + i);
            double d = 0.16 * Math.sqrt(behind[i]) * (0.9 + 0.3 * r.nextDouble());
            b.duct(
                    "trunk " + i,
                    parent[i] < 0 ? out : node[parent[i]],
                    node[i],
                    d,
                    DuctGeometry.roundArea(d),
                    1 + 3 * r.nextDouble(),
                    9e-5,
                    0.1 + 0.3 * r.nextDouble(),
                    1);
            for (int k = 0; k < runs[i]; k++) {
                double run = 0.127 + 0.0254 * r.nextInt(4);
                b.duct(
                        "run " + i + "." + k,
                        node[i],
                        house,
                        run,
                        DuctGeometry.roundArea(run),
                        3 + 6 * r.nextDouble(),
                        r.nextBoolean() ? 9e-5 : 9e-4,
                        2 + 3 * r.nextDouble(),
                        1);
            }
        }
        for (int i = 0; loops && i < 15; i++) {
            int x = r.nextInt(trunks);
            int y = r.nextInt(trunks);
            if (x != y) {
                b.duct("loop " + i, node[x], node[y], 0.2, 0.031, 5, 9e-5, 1, 1);
            }
        }
        Network n = b.build();
        assertThat(n.branchCount()).isBetween(500, 520);
        assertThat(n.solve(1.2, VISCOSITY, n.workspace())).isLessThan(10);
    }

    @Test
    void the_second_derivative_of_a_blower_curve_is_that_of_its_slope() {
        BlowerCurve c =
                BlowerCurve.through(
                        new double[] {20, 80, 150, 220, 300},
                        new double[] {0.7, 0.64, 0.5, 0.4, 0.1});
        for (double q = 0.105; q < 0.7; q += 0.01) {
            double h = 1e-6;
            double above = c.riseSlope(q + h, c.riseAt(q + h));
            double below = c.riseSlope(q - h, c.riseAt(q - h));
            double bend = c.riseBend(q, c.riseAt(q));
            assertThat(bend)
                    .as("at %s", q)
                    .isCloseTo((above - below) / (2 * h), within(1e-4 * Math.abs(bend) + 1));
        }
        assertThat(c.riseBend(0.05, c.riseAt(0.05))).isZero();
        assertThat(c.riseBend(0.75, c.riseAt(0.75))).isZero();
    }
}
