package dev.thinair.reference;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.altitude.SitePressure;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctLeak;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Place;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.RunFlow;
import dev.thinair.ducts.WetCoil;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** Any valid duct system at any elevation: no NaN, and the air that goes in comes out. */
class RandomDuctsPropertyTest {

    private static double between(Random r, double low, double high) {
        return low + (high - low) * r.nextDouble();
    }

    private static Duct duct(Random r) {
        DuctShape shape =
                switch (r.nextInt(3)) {
                    case 0 -> DuctShape.round(inches(between(r, 4, 22)));
                    case 1 ->
                            DuctShape.rectangular(
                                    inches(between(r, 6, 30)), inches(between(r, 6, 16)));
                    default ->
                            DuctShape.flatOval(
                                    inches(between(r, 13, 24)), inches(between(r, 4, 12)));
                };
        DuctMaterial[] materials = {DuctMaterial.GALVANIZED, DuctMaterial.FLEXIBLE};
        DuctMaterial material =
                shape instanceof DuctShape.Round ? materials[r.nextInt(2)] : materials[0];
        return Duct.of(shape, feet(between(r, 1, 120)), material)
                .withLossCoefficient(between(r, 0, 12));
    }

    private static Register register(Random r) {
        Register g = Register.of(inches(between(r, 4, 30)), inches(between(r, 4, 24)));
        return switch (r.nextInt(5)) {
            case 0 -> g.shut();
            case 1 -> g.partlyOpen(percent(between(r, 10, 99)));
            default -> g;
        };
    }

    private static DuctSystem system(Random r) {
        double size = between(r, 0.4, 2);
        double[][] table = {
            {0.05, 1520}, {0.2, 1450}, {0.4, 1335}, {0.6, 1200}, {0.8, 1030}, {1.0, 800}, {1.2, 420}
        };
        Blower.Builder blower = Blower.builder().speed("high");
        for (double[] p : table) {
            blower.point(inchesOfWater(p[0]), cubicFeetPerMinute(size * p[1]));
        }
        DuctSystem.Builder b =
                DuctSystem.builder().blower(blower.efficiency(percent(between(r, 5, 60))).build());
        if (r.nextBoolean()) {
            b.filter(
                    Filter.of(
                                    cubicFeetPerMinute(1000),
                                    inchesOfWater(between(r, 0.03, 0.4)),
                                    percent(between(r, 0, 100)))
                            .loaded(between(r, 1, 5)));
        }
        if (r.nextBoolean()) {
            b.coil(
                    WetCoil.of(
                            cubicFeetPerMinute(1200),
                            inchesOfWater(between(r, 0.05, 0.3)),
                            inchesOfWater(between(r, 0.31, 0.6))));
        }
        List<String> nodes = new ArrayList<>(List.of(DuctSystem.SUPPLY_PLENUM));
        for (int i = r.nextInt(6); i > 0; i--) {
            String node = "node " + i;
            b.trunk("trunk " + i, nodes.get(r.nextInt(nodes.size())), node, duct(r));
            nodes.add(node);
        }
        for (String node : nodes) {
            // Every trunk leads somewhere.
            int here = 1 + r.nextInt(3);
            for (int i = 0; i < here; i++) {
                b.supplyRun(node + " run " + i, node, "room " + r.nextInt(5), duct(r), register(r));
            }
        }
        int returns = 1 + r.nextInt(3);
        for (int i = 0; i < returns; i++) {
            b.returnRun(
                    "return " + i,
                    "room " + r.nextInt(5),
                    DuctSystem.RETURN_PLENUM,
                    duct(r),
                    Register.of(inches(between(r, 10, 30)), inches(between(r, 10, 24))));
        }
        for (String node : new String[] {DuctSystem.SUPPLY_PLENUM, DuctSystem.RETURN_PLENUM}) {
            if (r.nextBoolean()) {
                b.leak(
                        node,
                        DuctLeak.at25Pascals(
                                cubicFeetPerMinute(between(r, 1, 300)),
                                Place.values()[r.nextInt(Place.values().length)]));
            }
        }
        return b.build();
    }

    @Property(tries = 400, seed = "74", edgeCases = EdgeCasesMode.NONE)
    void what_goes_in_comes_out(@ForAll long seed) {
        Random r = new Random(seed);
        DuctSystem system = system(r);
        MoistAir air =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        celsius(between(r, 5, 50)),
                        percent(between(r, 0, 95)),
                        SitePressure.standardAt(metres(between(r, -50, 4500))).pressure());
        Airflow flow;
        try {
            flow = system.solve(air);
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException e) {
            // Ducts too tight or too open for the blower's table are refused by name.
            assertThat(e.getMessage()).as("seed %s", seed).contains("blower").doesNotContain("NaN");
            solved(false);
            return;
        }
        solved(true);
        double total = flow.kilogramsPerSecond();
        assertThat(total).isFinite().isPositive();
        assertThat(flow.imbalance()).isLessThan(1e-9);
        double supplied = 0;
        double returned = 0;
        for (RunFlow run : flow.runs()) {
            assertThat(run.kilogramsPerSecond()).as(run.name()).isFinite();
            assertThat(Si.metresPerSecond(run.velocity(), "velocity")).isFinite();
            assertThat(Si.pascals(run.pressure(), "pressure")).isFinite();
            if (run.isSupply()) {
                supplied += run.kilogramsPerSecond();
            } else {
                returned += run.kilogramsPerSecond();
            }
        }
        double density = Si.kilogramsPerCubicMetre(flow.density(), "density");
        double lost = 0;
        double drawn = 0;
        for (Place place : Place.values()) {
            lost += density * Si.cubicMetresPerSecond(flow.supplyLeakage(place), "leakage");
            drawn += density * Si.cubicMetresPerSecond(flow.returnLeakage(place), "leakage");
        }
        assertThat(supplied + lost).isCloseTo(total, within(1e-9 * total));
        assertThat(returned + drawn).isCloseTo(total, within(1e-9 * total));
        assertThat(flow.watts()).isFinite().isPositive();
        assertThat(flow + system.toString()).doesNotContain("NaN", "Infinity");
    }

    /** A test that refused most of its systems would show nothing. */
    private static void solved(boolean is) {
        Statistics.label("solved").collect(is).coverage(c -> c.check(true).percentage(p -> p > 75));
    }
}
