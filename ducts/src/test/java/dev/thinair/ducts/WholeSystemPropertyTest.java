package dev.thinair.ducts;

import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.kernel.DuctLoss;
import dev.thinair.ducts.kernel.Network;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/**
 * Laws that hold in whole systems: any layout of trunks with loops, runs, returns, leaks, closed
 * doors, filter and coil. Solved on the compiled network, which goes on beyond the blower's table,
 * so that no layout need be left out.
 */
class WholeSystemPropertyTest {

    private static final double DENSITY = 1.1;
    private static final double VISCOSITY = 1.82e-5;

    /** Parts of a system as steps of its description, in any order. */
    private static final class Plan {
        final List<Consumer<DuctSystem.Builder>> steps = new ArrayList<>();
        final List<String> parts = new ArrayList<>();
        final List<String> runs = new ArrayList<>();
        final List<String> ends = new ArrayList<>();

        Plan(long seed) {
            Random r = new Random(seed);
            side(r, true, 2 + r.nextInt(5), 9 + r.nextInt(5));
            side(r, false, 1 + r.nextInt(3), 3 + r.nextInt(3));
            steps.add(b -> b.blower(Houses.blower()));
            if (r.nextBoolean()) {
                steps.add(
                        b ->
                                b.filter(
                                        Filter.of(
                                                cubicFeetPerMinute(1000),
                                                inchesOfWater(0.15),
                                                percent(50))));
            }
            for (String end : List.of(DuctSystem.SUPPLY_PLENUM, DuctSystem.RETURN_PLENUM)) {
                double leak = 20 + 80 * r.nextDouble();
                Place place = r.nextBoolean() ? Place.ATTIC : Place.CRAWL_SPACE;
                steps.add(b -> b.leak(end, DuctLeak.at25Pascals(cubicFeetPerMinute(leak), place)));
            }
            double gap = 0.005 + 0.02 * r.nextDouble();
            steps.add(b -> b.transfer("room 0", TransferPath.ofArea(squareMetres(gap))));
        }

        private void side(Random r, boolean supply, int trunks, int count) {
            List<String> nodes = new ArrayList<>();
            nodes.add(supply ? DuctSystem.SUPPLY_PLENUM : DuctSystem.RETURN_PLENUM);
            for (int i = 0; i < trunks; i++) {
                String node = (supply ? "S" : "R") + i;
                trunk(r, "trunk " + node, nodes.get(r.nextInt(nodes.size())), node);
                nodes.add(node);
            }
            for (int i = 0; i < r.nextInt(3); i++) {
                String a = nodes.get(r.nextInt(nodes.size()));
                String b = nodes.get(r.nextInt(nodes.size()));
                if (!a.equals(b)) {
                    trunk(r, (supply ? "S" : "R") + " loop " + i, a, b);
                }
            }
            for (int i = 0; i < count; i++) {
                String name = (supply ? "run " : "return ") + i;
                // every trunk ends in something
                String node = nodes.get(i < nodes.size() ? i : r.nextInt(nodes.size()));
                Duct d =
                        Duct.of(
                                        DuctShape.round(
                                                inches((supply ? 5 : 10) + 4 * r.nextDouble())),
                                        feet(5 + 20 * r.nextDouble()),
                                        r.nextBoolean()
                                                ? DuctMaterial.GALVANIZED
                                                : DuctMaterial.FLEXIBLE)
                                .withLossCoefficient(3 * r.nextDouble());
                Register open =
                        Register.of(inches(8 + 8 * r.nextDouble()), inches(4 + 8 * r.nextDouble()));
                int stand = supply ? r.nextInt(5) : 4;
                Register g =
                        stand == 0
                                ? open.shut()
                                : stand == 1
                                        ? open.partlyOpen(percent(20 + 80 * r.nextDouble()))
                                        : open;
                String room = "room " + (i % 6);
                parts.add(name);
                runs.add(name);
                steps.add(
                        b -> {
                            if (supply) {
                                b.supplyRun(name, node, room, d, g);
                            } else {
                                b.returnRun(name, room, node, d, g);
                            }
                        });
            }
        }

        private void trunk(Random r, String name, String from, String to) {
            Duct d =
                    Duct.of(
                                    DuctShape.rectangular(
                                            inches(8 + 12 * r.nextDouble()), inches(8)),
                                    feet(4 + 15 * r.nextDouble()),
                                    DuctMaterial.GALVANIZED)
                            .withLossCoefficient(0.5 * r.nextDouble());
            parts.add(name);
            ends.add(name + "|" + from + "|" + to);
            steps.add(b -> b.trunk(name, from, to, d));
        }

        DuctSystem build() {
            DuctSystem.Builder b = DuctSystem.builder();
            steps.forEach(s -> s.accept(b));
            return b.build();
        }
    }

    private record Solved(DuctSystem system, Network network, Network.Workspace work) {
        static Solved of(DuctSystem s) {
            Network n = s.network();
            Network.Workspace w = n.workspace();
            n.solve(DENSITY, VISCOSITY, w);
            return new Solved(s, n, w);
        }

        double total() {
            return flow("@blower");
        }

        double flow(String branch) {
            return work.flow(network.branch(branch));
        }

        double pressure(String node) {
            return work.pressure(network.node(node));
        }
    }

    private static void neverMore(double changed, double before) {
        assertThat(Math.abs(changed)).isLessThanOrEqualTo(Math.abs(before) + 1e-11);
    }

    @Property(tries = 60)
    void a_rougher_part_never_carries_more_nor_does_the_whole(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @LongRange(min = 0, max = 100) long which,
            @ForAll @DoubleRange(min = 1.05, max = 20) double factor) {
        Plan plan = new Plan(seed);
        Solved before = Solved.of(plan.build());
        String part = plan.parts.get((int) (which % plan.parts.size()));
        Duct d = before.system.duct(part);
        double e =
                Math.min(
                        0.009,
                        Math.min(
                                factor * d.material().roughnessSi(),
                                0.04 * d.shape().hydraulicDiameterSi()));
        DuctMaterial rough = DuctMaterial.rigid("rough", metres(e), "test");
        Duct changed =
                Duct.of(d.shape(), d.length(), rough).withLossCoefficient(d.lossCoefficient());
        if (e < d.material().roughnessSi()) {
            return;
        }
        Solved after = Solved.of(before.system.withDuct(part, changed));
        neverMore(after.flow(part), before.flow(part));
        neverMore(after.total(), before.total());
    }

    @Property(tries = 60)
    void a_wider_part_never_carries_less_nor_does_the_whole(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @LongRange(min = 0, max = 100) long which,
            @ForAll @DoubleRange(min = 1.02, max = 2) double factor) {
        Plan plan = new Plan(seed);
        Solved before = Solved.of(plan.build());
        String part = plan.parts.get((int) (which % plan.parts.size()));
        Duct d = before.system.duct(part);
        DuctShape wide =
                d.shape() instanceof DuctShape.Rectangular q
                        ? DuctShape.rectangular(
                                metres(factor * Si.metres(q.width(), "width")),
                                metres(factor * Si.metres(q.height(), "height")))
                        : DuctShape.round(metres(factor * d.shape().hydraulicDiameterSi()));
        Solved after = Solved.of(before.system.withDuct(part, d.withShape(wide)));
        neverMore(before.flow(part), after.flow(part));
        neverMore(before.total(), after.total());
    }

    @Property(tries = 60)
    void opening_a_register_never_lowers_the_total(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @LongRange(min = 0, max = 100) long which) {
        Plan plan = new Plan(seed);
        Solved before = Solved.of(plan.build());
        String run = plan.runs.get((int) (which % plan.runs.size()));
        Solved after = Solved.of(before.system.withRegisterOpened(run));
        neverMore(before.flow(run), after.flow(run));
        neverMore(before.total(), after.total());
        Solved shut = Solved.of(before.system.withRegisterShut(run));
        neverMore(shut.flow(run), before.flow(run));
        neverMore(shut.total(), before.total());
    }

    @Property(tries = 60)
    void the_order_of_description_never_changes_the_answer(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Plan plan = new Plan(seed);
        Solved a = Solved.of(plan.build());
        Collections.shuffle(plan.steps, new Random(seed + 1));
        Solved b = Solved.of(plan.build());
        for (String part : plan.parts) {
            assertThat(b.flow(part)).isCloseTo(a.flow(part), within(1e-11 * a.total()));
        }
        assertThat(b.total()).isCloseTo(a.total(), within(1e-12 * a.total()));
    }

    @Property(tries = 60)
    void air_is_conserved_at_every_node_and_pressures_sum_to_zero_round_every_loop(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Plan plan = new Plan(seed);
        Solved s = Solved.of(plan.build());
        double[] sum = new double[s.network.nodeCount()];
        for (int i = 0; i < s.network.branchCount(); i++) {
            sum[s.network.from(i)] -= s.work.flow(i);
            sum[s.network.to(i)] += s.work.flow(i);
        }
        for (int i = 0; i < sum.length; i++) {
            String node = s.network.nodeName(i);
            if (!node.equals("@house") && !node.startsWith("@place")) {
                assertThat(sum[i]).as(node).isCloseTo(0, within(1e-13 * s.total()));
            }
        }
        // Trunk by trunk the loss is the difference of two numbers that belong to the nodes, so
        // round any loop of trunks losses sum to zero.
        for (String trunk : plan.ends) {
            String[] w = trunk.split("\\|");
            Duct d = s.system.duct(w[0]);
            double q = s.flow(w[0]);
            double loss =
                    Math.signum(q)
                            * DuctLoss.total(
                                    Math.abs(q),
                                    d.shape().hydraulicDiameterSi(),
                                    d.shape().areaSi(),
                                    d.effectiveLengthSi(),
                                    d.material().roughnessSi(),
                                    d.lossCoefficient(),
                                    1,
                                    DENSITY,
                                    VISCOSITY);
            assertThat(s.pressure(w[1]) - s.pressure(w[2]))
                    .as(trunk)
                    .isCloseTo(loss, within(1e-9 + 1e-9 * Math.abs(loss)));
        }
    }
}
