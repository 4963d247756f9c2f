package dev.thinair.ducts;

import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class DuctSystemPropertyTest {

    private record Part(String name, String node, Duct duct, Register register) {}

    private static List<Part> runs(Random r, int count) {
        List<Part> all = new ArrayList<>();
        String[] nodes = {DuctSystem.SUPPLY_PLENUM, "A", "B"};
        for (int i = 0; i < count; i++) {
            Register g = Register.of(inches(8 + r.nextInt(5)), inches(4 + r.nextInt(5)));
            int stand = r.nextInt(5);
            g = stand == 0 ? g.shut() : stand == 1 ? g.partlyOpen(percent(20 + r.nextInt(80))) : g;
            all.add(
                    new Part(
                            "run " + i,
                            nodes[r.nextInt(3)],
                            Duct.of(
                                            DuctShape.round(inches(5 + r.nextInt(4))),
                                            feet(5 + 20 * r.nextDouble()),
                                            r.nextBoolean()
                                                    ? DuctMaterial.GALVANIZED
                                                    : DuctMaterial.FLEXIBLE)
                                    .withLossCoefficient(3 * r.nextDouble()),
                            g));
        }
        return all;
    }

    private static DuctSystem system(List<Part> runs) {
        DuctSystem.Builder b =
                DuctSystem.builder()
                        .blower(Houses.blower())
                        .trunk("t1", DuctSystem.SUPPLY_PLENUM, "A", Houses.trunk(18, 8, 8))
                        .trunk("t2", "A", "B", Houses.trunk(14, 8, 8))
                        .returnRun(
                                "return",
                                "hall",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.round(inches(16)),
                                                feet(10),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1),
                                Register.of(inches(30), inches(16)));
        for (Part p : runs) {
            b.supplyRun(p.name, p.node, "room", p.duct, p.register);
        }
        return b.build();
    }

    @Property(tries = 150)
    void the_order_of_runs_never_changes_the_answer(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 9, max = 14) int count) {
        List<Part> runs = runs(new Random(seed), count);
        Airflow a = system(runs).solve();
        List<Part> shuffled = new ArrayList<>(runs);
        Collections.shuffle(shuffled, new Random(seed + 1));
        Airflow b = system(shuffled).solve();
        for (Part p : runs) {
            double q = a.run(p.name).cubicMetresPerSecond();
            assertThat(b.run(p.name).cubicMetresPerSecond()).isCloseTo(q, within(1e-11 * q));
        }
    }

    @Property(tries = 150)
    void opening_a_register_never_lowers_the_total_and_never_starves_its_own_run(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 9, max = 14) int count,
            @ForAll @IntRange(min = 0, max = 8) int which) {
        DuctSystem s = system(runs(new Random(seed), count));
        String run = "run " + which;
        Airflow before = s.solve();
        Airflow after = s.withRegisterOpened(run).solve();
        assertThat(after.cubicMetresPerSecond())
                .isGreaterThanOrEqualTo(before.cubicMetresPerSecond() * (1 - 1e-12));
        assertThat(after.run(run).cubicMetresPerSecond())
                .isGreaterThanOrEqualTo(before.run(run).cubicMetresPerSecond() * (1 - 1e-12));
        assertThat(after.imbalance()).isLessThan(1e-10);
    }
}
