package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** Laws of physics on random networks, trees and meshes alike. */
class NetworkPropertyTest {

    private static final double DENSITY = 1.2;
    private static final double VISCOSITY = 1.8e-5;

    /** A blower between two plenums, random trunks with loops, runs, returns, leaks. */
    private static Network random(long seed, boolean loops, boolean onlyQuadratic) {
        Random r = new Random(seed);
        Network.Builder b = Network.builder(1.2);
        int room = b.fixedNode("room", 0);
        int attic = onlyQuadratic ? room : b.fixedNode("attic", r.nextDouble() * 4 - 2);
        int rp = b.node("rp");
        int sp = b.node("sp");
        b.blower(
                "blower",
                rp,
                sp,
                100 + 300 * r.nextDouble(),
                -50 * r.nextDouble(),
                -200 - 400 * r.nextDouble());
        int trunks = 1 + r.nextInt(12);
        int[] node = new int[trunks + 1];
        node[0] = sp;
        for (int i = 1; i <= trunks; i++) {
            node[i] = b.node("n" + i);
            part(
                    b,
                    r,
                    "t" + i,
                    node[r.nextInt(i)],
                    node[i],
                    0.15 + 0.25 * r.nextDouble(),
                    onlyQuadratic);
        }
        if (loops) {
            for (int i = 0; i < 1 + r.nextInt(4); i++) {
                int x = r.nextInt(trunks + 1);
                int y = r.nextInt(trunks + 1);
                if (x != y) {
                    part(
                            b,
                            r,
                            "l" + i,
                            node[x],
                            node[y],
                            0.1 + 0.2 * r.nextDouble(),
                            onlyQuadratic);
                }
            }
        }
        for (int i = 0; i <= trunks; i++) {
            part(b, r, "run" + i, node[i], room, 0.1 + 0.15 * r.nextDouble(), onlyQuadratic);
            if (!onlyQuadratic && r.nextInt(3) == 0) {
                b.leak(
                        "leak" + i,
                        node[i],
                        attic,
                        1e-4 + 1e-3 * r.nextDouble(),
                        0.5 + 0.5 * r.nextDouble());
            }
        }
        for (int i = 0; i < 1 + r.nextInt(3); i++) {
            part(b, r, "ret" + i, room, rp, 0.2 + 0.3 * r.nextDouble(), onlyQuadratic);
        }
        return b.build();
    }

    private static void part(
            Network.Builder b,
            Random r,
            String name,
            int from,
            int to,
            double d,
            boolean quadratic) {
        if (quadratic) {
            b.quadratic(name, from, to, 0.4 * (1 + 4 * r.nextDouble()) / Math.pow(d, 4));
        } else {
            b.duct(
                    name,
                    from,
                    to,
                    d,
                    DuctGeometry.roundArea(d),
                    0.5 + 15 * r.nextDouble(),
                    1e-5 + 2e-3 * r.nextDouble() * r.nextDouble(),
                    5 * r.nextDouble(),
                    1 + (r.nextInt(4) == 0 ? 4 * r.nextDouble() : 0));
        }
    }

    private static double worstImbalance(Network n, Network.Workspace w) {
        double[] sum = new double[n.nodeCount()];
        for (int i = 0; i < n.branchCount(); i++) {
            sum[n.from(i)] -= w.flow(i);
            sum[n.to(i)] += w.flow(i);
        }
        double worst = 0;
        for (int i = 0; i < sum.length; i++) {
            if (!n.nodeName(i).equals("room") && !n.nodeName(i).equals("attic")) {
                worst = Math.max(worst, Math.abs(sum[i]));
            }
        }
        return worst / w.flow(n.branch("blower"));
    }

    @Property(tries = 300)
    void mass_is_conserved_and_pressures_close_every_loop(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll boolean loops) {
        Network n = random(seed, loops, false);
        Network.Workspace w = n.workspace();
        int steps = n.solve(DENSITY, VISCOSITY, w);
        assertThat(steps).isLessThanOrEqualTo(15);
        assertThat(worstImbalance(n, w)).isLessThan(1e-12);
        // Every branch takes just the pressure between its nodes, so round any loop they sum to
        // zero.
        for (int i = 0; i < n.branchCount(); i++) {
            double dp = w.pressure(n.from(i)) - w.pressure(n.to(i));
            assertThat(n.loss(i, w.flow(i), DENSITY, VISCOSITY))
                    .as(n.branchName(i))
                    .isCloseTo(dp, within(1e-8 + 1e-9 * Math.abs(dp)));
        }
    }

    @Property(tries = 200)
    void quadratic_networks_keep_their_volume_and_scale_their_pressure_at_any_density(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 0.5, max = 1.4) double density) {
        Network n = random(seed, true, true);
        Network.Workspace a = n.workspace();
        Network.Workspace b = n.workspace();
        n.solve(1.2, VISCOSITY, a);
        n.solve(density, VISCOSITY, b);
        for (int i = 0; i < n.branchCount(); i++) {
            assertThat(b.flow(i)).isCloseTo(a.flow(i), within(1e-9 * Math.abs(a.flow(i)) + 1e-12));
        }
        for (int i = 0; i < n.nodeCount(); i++) {
            assertThat(b.pressure(i))
                    .isCloseTo(
                            a.pressure(i) * density / 1.2,
                            within(1e-9 * Math.abs(a.pressure(i)) + 1e-9));
        }
    }

    @Property(tries = 200)
    void a_warm_start_ends_where_a_cold_one_does(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 0.6, max = 1.3) double density) {
        Network n = random(seed, true, false);
        Network.Workspace warm = n.workspace();
        Network.Workspace cold = n.workspace();
        n.solve(1.2, VISCOSITY, warm);
        n.solve(density, VISCOSITY, warm);
        n.solve(density, VISCOSITY, cold);
        for (int i = 0; i < n.branchCount(); i++) {
            assertThat(warm.flow(i))
                    .isCloseTo(cold.flow(i), within(1e-9 * Math.abs(cold.flow(i)) + 1e-11));
        }
    }

    @Property(tries = 200)
    void opening_one_more_run_never_lowers_the_total(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Network n = random(seed, true, false);
        int blower = n.branch("blower");
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        double all = w.flow(blower);
        n.withShut(n.branch("run1")).solve(DENSITY, VISCOSITY, w);
        double fewer = w.flow(blower);
        n.withCopies(n.branch("run1"), 3).solve(DENSITY, VISCOSITY, w);
        assertThat(fewer).isLessThanOrEqualTo(all * (1 + 1e-12));
        assertThat(w.flow(blower)).isGreaterThanOrEqualTo(all * (1 - 1e-12));
    }

    @Property(tries = 100)
    void equal_copies_of_a_run_share_alike_what_separate_runs_carry(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Network.Builder one = Network.builder(1.2);
        Network.Builder many = Network.builder(1.2);
        double d = 0.12 + 0.1 * new Random(seed).nextDouble();
        for (Network.Builder b : new Network.Builder[] {one, many}) {
            int room = b.fixedNode("room", 0);
            int sp = b.node("sp");
            b.blower("blower", room, sp, 200, -20, -300);
            for (int i = 0; i < (b == one ? 1 : 4); i++) {
                b.duct("run" + i, sp, room, d, DuctGeometry.roundArea(d), 8, 9e-5, 2, 1);
            }
        }
        Network n = one.build().withCopies(1, 4);
        Network m = many.build();
        Network.Workspace w = n.workspace();
        Network.Workspace v = m.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        m.solve(DENSITY, VISCOSITY, v);
        assertThat(w.flow(1) / 4).isCloseTo(v.flow(2), within(1e-12));
    }

    @Property(tries = 200)
    void a_rougher_or_narrower_duct_never_carries_more(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 1.01, max = 3) double factor) {
        Random r = new Random(seed);
        double d = 0.1 + 0.2 * r.nextDouble();
        double e = 1e-5 + 1e-3 * r.nextDouble();
        double[] base = {d, DuctGeometry.roundArea(d), 3 + 10 * r.nextDouble(), e, 2, 1};
        Network.Builder b = Network.builder(1.2);
        int room = b.fixedNode("room", 0);
        int sp = b.node("sp");
        b.blower("blower", room, sp, 200, -20, -300);
        int run = b.duct("run", sp, room, base[0], base[1], base[2], base[3], base[4], base[5]);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        double q = w.flow(run);
        double[] rough = base.clone();
        rough[3] = Math.min(e * factor, 0.05 * d);
        n.withDuct(run, rough).solve(DENSITY, VISCOSITY, w);
        assertThat(w.flow(run)).isLessThanOrEqualTo(q * (1 + 1e-13));
        double[] wide = base.clone();
        wide[0] = d * factor;
        wide[1] = DuctGeometry.roundArea(d * factor);
        n.withDuct(run, wide).solve(DENSITY, VISCOSITY, w);
        assertThat(w.flow(run)).isGreaterThan(q);
    }
}
