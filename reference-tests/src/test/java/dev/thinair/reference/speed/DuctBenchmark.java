package dev.thinair.reference.speed;

import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.percent;

import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.Retrofit;
import dev.thinair.ducts.kernel.Friction;
import dev.thinair.ducts.kernel.Network;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Friction, networks and the retrofit search, against bare logarithms, a general-purpose root
 * finder and dense linear algebra.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class DuctBenchmark {

    private static final int POINTS = 1024;
    private static final double DENSITY = 1.2;
    private static final double THIN = 0.93;
    private static final double VISCOSITY = 1.82e-5;

    /** Reynolds numbers 4e3 to 1e8, relative roughness 0 to 0.05, one fixed seed. */
    @State(Scope.Thread)
    public static class Flows {
        final double[] reynolds = new double[POINTS];
        final double[] roughness = new double[POINTS];

        /** Fills the points. */
        @Setup
        public void fill() {
            SplittableRandom random = new SplittableRandom(20_261_125L);
            for (int i = 0; i < POINTS; i++) {
                reynolds[i] = 4e3 * Math.pow(1e8 / 4e3, random.nextDouble());
                roughness[i] = 0.05 * random.nextDouble() * random.nextDouble();
            }
        }
    }

    /** Floor: one log. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public void floorLog(Flows f, Blackhole hole) {
        for (int i = 0; i < POINTS; i++) {
            hole.consume(Math.log(f.reynolds[i]));
        }
    }

    /** Floor: two logs. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public void floorTwoLogs(Flows f, Blackhole hole) {
        for (int i = 0; i < POINTS; i++) {
            hole.consume(Math.log(f.reynolds[i]) + Math.log(f.roughness[i]));
        }
    }

    /** Colebrook-White to rounding error. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public void colebrookWhite(Flows f, Blackhole hole) {
        for (int i = 0; i < POINTS; i++) {
            hole.consume(Friction.colebrookWhite(f.reynolds[i], f.roughness[i]));
        }
    }

    /** Peer: the same equation by a bracketing solver, to 1e-14. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public void colebrookByBrent(Flows f, Blackhole hole) {
        BrentSolver solver = new BrentSolver(1e-14, 1e-14);
        for (int i = 0; i < POINTS; i++) {
            double a = f.roughness[i] / 3.7;
            double b = 2.51 / f.reynolds[i];
            double x = solver.solve(100, y -> y + 2 * Math.log10(a + b * y), 1, 100);
            hole.consume(1 / (x * x));
        }
    }

    /** Peer: the same by the library's higher-order bracketing solver, to 1e-14. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public void colebrookByBracketingNthOrder(Flows f, Blackhole hole) {
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-14, 1e-14, 5);
        for (int i = 0; i < POINTS; i++) {
            double a = f.roughness[i] / 3.7;
            double b = 2.51 / f.reynolds[i];
            double x = solver.solve(100, y -> y + 2 * Math.log10(a + b * y), 1, 100);
            hole.consume(1 / (x * x));
        }
    }

    /** A house, solved by the library and by dense linear algebra. */
    @State(Scope.Thread)
    public static class House {
        /** How many branches: 40, or as many as go with 40 nodes of unknown pressure. */
        @Param({"40", "64"})
        public int branches;

        DenseNetwork dense;
        Network network;
        Network.Workspace cold;
        Network.Workspace warm;
        double density = DENSITY;

        /** Builds it and makes sure that all solvers find the same flows. */
        @Setup
        public void build() {
            dense = DenseNetwork.house(branches);
            network = dense.network();
            cold = network.workspace();
            warm = network.workspace();
            if (network.branchCount() != branches || branches == 64 && network.nodeCount() != 41) {
                throw new IllegalStateException("not the house meant");
            }
            network.solve(DENSITY, VISCOSITY, warm);
            for (int i = 0; i < 3_000; i++) {
                // the matrix classes compile late: let them, so that the ratio is not flattered
                dense.solve(DENSITY, VISCOSITY, i % 2 == 0);
            }
            for (boolean cholesky : new boolean[] {true, false}) {
                double[] flow = dense.solve(DENSITY, VISCOSITY, cholesky);
                for (int i = 0; i < flow.length; i++) {
                    if (!(Math.abs(flow[i] - warm.flow(i)) <= 1e-8 * Math.abs(flow[i]))) {
                        throw new IllegalStateException(
                                network.branchName(i) + ": " + flow[i] + ", " + warm.flow(i));
                    }
                }
            }
        }
    }

    /** From a cold start. */
    @Benchmark
    public int networkCold(House h) {
        h.cold.cool();
        return h.network.solve(DENSITY, VISCOSITY, h.cold);
    }

    /** From the solution at another density: sea level and 2,200 m by turns. */
    @Benchmark
    public int networkWarm(House h) {
        h.density = DENSITY + THIN - h.density;
        return h.network.solve(h.density, VISCOSITY, h.warm);
    }

    /** Peer: the same Newton iteration, its systems by a general-purpose dense Cholesky. */
    @Benchmark
    public double[] networkByDenseCholesky(House h) {
        return h.dense.solve(DENSITY, VISCOSITY, true);
    }

    /** Peer: the same by a general-purpose dense LU. */
    @Benchmark
    public double[] networkByDenseLu(House h) {
        return h.dense.solve(DENSITY, VISCOSITY, false);
    }

    /** Layouts of one make and growing size: more trunks, so that the air moves alike in all. */
    @State(Scope.Thread)
    public static class Layout {
        /** How many branches. */
        @Param({"40", "160", "640"})
        public int branches;

        Network network;
        Network.Workspace workspace;

        /** Builds it. */
        @Setup
        public void build() {
            network = tree(DenseNetwork.wing(branches), branches);
            workspace = network.workspace();
        }
    }

    /** Layouts of growing size in which one trunk grows longer. */
    @State(Scope.Thread)
    public static class LongTrunk {
        /** How many branches. */
        @Param({"40", "160", "640"})
        public int branches;

        Network network;
        Network.Workspace workspace;

        /** Builds it. */
        @Setup
        public void build() {
            network = tree(DenseNetwork.house(branches), branches);
            workspace = network.workspace();
        }
    }

    private static Network tree(DenseNetwork ducts, int branches) {
        Network network = ducts.network();
        if (!network.isTree() || network.branchCount() != branches) {
            throw new IllegalStateException("not the layout meant");
        }
        return network;
    }

    /** A tree from a cold start, to see how time grows. */
    @Benchmark
    public int growth(Layout l) {
        l.workspace.cool();
        return l.network.solve(DENSITY, VISCOSITY, l.workspace);
    }

    /** The same on one trunk, whose far end needs more Newton steps the longer it is. */
    @Benchmark
    public int growthOfOneTrunk(LongTrunk l) {
        l.workspace.cool();
        return l.network.solve(DENSITY, VISCOSITY, l.workspace);
    }

    /** A search over more than 2,000 systems. */
    @State(Scope.Thread)
    public static class Search {
        final Retrofit.Builder search = search(1330);

        /** Makes sure that so many systems are really solved. */
        @Setup
        public void count() {
            Retrofit.Result found = search.search();
            if (found.solved() < 2_000 || found.options().size() < 5) {
                throw new IllegalStateException(
                        found.solved() + " systems, " + found.options().size() + " options");
            }
        }
    }

    /** Search for the least work that reaches a target. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Retrofit.Result retrofitSearch(Search s) {
        return s.search.search();
    }

    /** Invented house at 2,200 m: eight runs, two returns, and many ways to mend it. */
    static Retrofit.Builder search(double standardCfm) {
        DuctSystem.Builder b =
                DuctSystem.builder()
                        .blower(
                                Blower.builder()
                                        .speed("high")
                                        .point(inchesOfWater(0.05), cubicFeetPerMinute(2000))
                                        .point(inchesOfWater(0.4), cubicFeetPerMinute(1750))
                                        .point(inchesOfWater(0.8), cubicFeetPerMinute(1350))
                                        .point(inchesOfWater(1.2), cubicFeetPerMinute(550))
                                        .build())
                        .filter(
                                Filter.of(
                                        cubicFeetPerMinute(1000), inchesOfWater(0.2), percent(60)))
                        .trunk("trunk 1", DuctSystem.SUPPLY_PLENUM, "A", trunk(20, 8))
                        .trunk("trunk 2", "A", "B", trunk(16, 8))
                        .trunk("trunk 3", "B", "C", trunk(12, 8))
                        .returnRun(
                                "hall return",
                                "hall",
                                DuctSystem.RETURN_PLENUM,
                                trunk(20, 10),
                                Register.of(inches(24), inches(16)))
                        .returnRun(
                                "den return",
                                "den",
                                DuctSystem.RETURN_PLENUM,
                                metal(10),
                                Register.of(inches(16), inches(12)));
        String[] nodes = {"A", "A", "A", "B", "B", "C", "C", "C"};
        for (int i = 0; i < nodes.length; i++) {
            b.supplyRun(
                    "run " + i,
                    nodes[i],
                    "room " + i,
                    metal(i % 3 == 2 ? 7 : 6).withLossCoefficient(1.6),
                    Register.of(inches(10), inches(6)));
        }
        Retrofit.Builder search =
                Retrofit.of(b.build(), cubicFeetPerMinute(standardCfm))
                        .air(THIN, VISCOSITY)
                        .addedRuns(
                                10,
                                List.of(inches(5), inches(6), inches(7), inches(8)),
                                feet(15),
                                List.of(),
                                "living")
                        .enlargedReturn("den return", DuctShape.round(inches(14)))
                        .enlargedReturn("den return", DuctShape.round(inches(16)))
                        .enlargedReturn(
                                "hall return", DuctShape.rectangular(inches(26), inches(10)))
                        .filter(
                                Filter.of(
                                        cubicFeetPerMinute(1000), inchesOfWater(0.08), percent(80)))
                        .addedReturn(
                                "bedroom return",
                                "bed",
                                DuctSystem.RETURN_PLENUM,
                                metal(12),
                                Register.of(inches(20), inches(12)))
                        .keep(100, 16);
        for (String trunk : new String[] {"trunk 1", "trunk 2", "trunk 3"}) {
            search.trunk(trunk, DuctShape.rectangular(inches(24), inches(8)));
            search.trunk(trunk, DuctShape.rectangular(inches(28), inches(8)));
        }
        return search;
    }

    private static Duct trunk(double width, double height) {
        return Duct.of(
                        DuctShape.rectangular(inches(width), inches(height)),
                        feet(12),
                        DuctMaterial.GALVANIZED)
                .withLossCoefficient(0.4);
    }

    private static Duct metal(double diameter) {
        return Duct.of(DuctShape.round(inches(diameter)), feet(18), DuctMaterial.GALVANIZED)
                .withLossCoefficient(0.8);
    }
}
