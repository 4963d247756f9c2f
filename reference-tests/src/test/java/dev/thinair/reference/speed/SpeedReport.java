package dev.thinair.reference.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks and writes their ratios. Times of one machine say little; each aim is a ratio
 * of two benchmarks of the same run.
 */
public final class SpeedReport {

    /**
     * One aim.
     *
     * @param what in words
     * @param benchmark measured
     * @param peer what it is measured against; empty if the time itself is bounded, in the unit of
     *     the benchmark
     * @param atMost largest ratio benchmark / peer that meets the aim
     */
    record Aim(String what, String benchmark, String peer, double atMost) {}

    private static final List<Aim> AIMS = new ArrayList<>();

    static {
        aim(
                "saturation pressure / exp of log",
                "MoistAir.saturationPressure",
                "MoistAir.floorExpOfLog",
                1.2);
        aim("state / exp of log", "MoistAir.state", "MoistAir.floorExpOfLog", 1.5);
        // The same against an exp and a log that need not wait for each other, which no formula
        // that takes the exp of a log can meet; kept in the report so that nobody is misled.
        aim(
                "saturation pressure / (exp beside log)",
                "MoistAir.saturationPressure",
                "MoistAir.floorExpLog",
                1.2);
        aim("state / (exp beside log)", "MoistAir.state", "MoistAir.floorExpLog", 1.5);
        aim(
                "state with dew point / (exp + 3 log)",
                "MoistAir.stateWithDewPoint",
                "MoistAir.floorExpThreeLogs",
                2.3);
        aim(
                "wet bulb / saturation pressure",
                "MoistAir.wetBulb",
                "MoistAir.saturationPressure",
                4.5);
        aim(
                "wet bulb / Brent on the same equation",
                "MoistAir.wetBulb",
                "MoistAir.wetBulbByBrent",
                1 / 6.0);
        aim(
                "wet bulb / bracketing n-th order on the same equation",
                "MoistAir.wetBulb",
                "MoistAir.wetBulbByBracketingNthOrder",
                1 / 6.0);
        aim("Colebrook-White / two logs", "Duct.colebrookWhite", "Duct.floorTwoLogs", 3);
        aim(
                "Colebrook-White / Brent on the same equation",
                "Duct.colebrookWhite",
                "Duct.colebrookByBrent",
                1 / 6.0);
        aim(
                "Colebrook-White / bracketing n-th order on the same equation",
                "Duct.colebrookWhite",
                "Duct.colebrookByBracketingNthOrder",
                1 / 6.0);
        aim("network of 40 branches, cold, ns", "Duct.networkCold[40]", "", 30_000);
        aim("network of 40 branches, warm, ns", "Duct.networkWarm[40]", "", 12_000);
        aim(
                "network of 40 nodes, cold / the same by dense LU",
                "Duct.networkCold[64]",
                "Duct.networkByDenseLu[64]",
                1 / 7.0);
        aim("tree of 160 branches / of 40, cold", "Duct.growth[160]", "Duct.growth[40]", 5);
        aim("tree of 640 branches / of 160, cold", "Duct.growth[640]", "Duct.growth[160]", 5);
        aim(
                "one trunk of 640 branches / of 160, cold (6 Newton steps against 4)",
                "Duct.growthOfOneTrunk[640]",
                "Duct.growthOfOneTrunk[160]",
                7.5);
        aim("retrofit search over 2,000 systems, ms", "Duct.retrofitSearch", "", 300);
    }

    static {
        aim(
                "typed wet bulb from three quantities / kernel",
                "TypedAir.wetBulbTyped",
                "TypedAir.wetBulbKernel",
                1.5);
        aim(
                "typed wet bulb of a state at hand / kernel",
                "TypedAir.wetBulbOfState",
                "TypedAir.wetBulbKernel",
                1.5);
        aim(
                "typed saturation pressure / kernel",
                "TypedAir.saturationPressureTyped",
                "TypedAir.saturationPressureKernel",
                2.5);
        aim("degF to kelvins, ns", "TypedAir.crossFahrenheit", "", 5);
        aim("cfm to m3/s, ns", "TypedAir.crossCubicFeetPerMinute", "", 5);
        aim("in. w.g. to Pa, ns", "TypedAir.crossInchesOfWater", "", 5);
        aim(
                "1e6 states, two cores / one core",
                "Sweep.statesOnAllCores",
                "Sweep.statesOnOneCore",
                1 / 1.8);
        aim(
                "design-day load from a fresh description / marching the same house in time",
                "Load.fresh",
                "Load.timeStepping",
                1 / 150.0);
        aim(
                "another setpoint / marching the same house in time",
                "Load.anotherSetpoint",
                "Load.timeStepping",
                1 / 1000.0);
        aim(
                "another elevation / marching the same house in time",
                "Load.anotherElevation",
                "Load.timeStepping",
                1 / 1000.0);
        aim(
                "another day / marching the same house in time",
                "Load.anotherDay",
                "Load.timeStepping",
                1 / 1000.0);
        aim(
                "16 times the surfaces, all unlike / 1 time",
                "Load.freshWithUnlikeWalls[16]",
                "Load.freshWithUnlikeWalls[1]",
                16);
    }

    static {
        aim("year of 4,000 starts, exact events, ms", "Cycling.exactEvents[1.3]", "", 25);
        aim(
                "year of 4,000 starts, exact / by the minute, stored matrix exponential",
                "Cycling.exactEvents[1.3]",
                "Cycling.denseMinutes[1.3]",
                1 / 25.0);
        aim(
                "year of 4,000 starts, exact / by the minute, modal",
                "Cycling.exactEvents[1.3]",
                "Cycling.modalMinutes[1.3]",
                1.2);
        // 8,400 starts more at 4 microseconds each are 34 ms on top of 25.
        aim("year of 12,400 starts, exact events, ms", "Cycling.exactEvents[0.4]", "", 59);
        aim("review with twelve remedies, ms", "System.review", "", 1000);
        aim("200 draws of the design day, all cores, ms", "System.draws", "", 2000);
        // Ice asks the unit three times as often, and the year is run twice.
        aim("year in which the coil ices / without", "System.seasonWithIce", "System.season", 4);
    }

    private SpeedReport() {}

    private static void aim(String what, String benchmark, String peer, double atMost) {
        AIMS.add(new Aim(what, benchmark, peer, atMost));
    }

    /**
     * Runs.
     *
     * @param args folder to write into, regular expression of benchmarks, {@code quick} or {@code
     *     full}
     */
    public static void main(String[] args) throws IOException, RunnerException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        boolean full = args.length > 2 && args[2].equals("full");
        ChainedOptionsBuilder options =
                new OptionsBuilder()
                        .include(args.length > 1 ? args[1] : ".*")
                        .forks(1)
                        .warmupIterations(full ? 5 : 3)
                        .warmupTime(TimeValue.milliseconds(full ? 1000 : 300))
                        .measurementIterations(full ? 8 : 4)
                        .measurementTime(TimeValue.milliseconds(full ? 1000 : 300))
                        .addProfiler(GCProfiler.class)
                        // A heap that is there already, as in a process that has run for a while:
                        // otherwise the first touch of each new page is counted as allocation.
                        .jvmArgsAppend("-Xms1g", "-Xmx4g", "-XX:+AlwaysPreTouch")
                        .resultFormat(ResultFormatType.JSON)
                        .result(folder.resolve("speed.json").toString());
        Collection<RunResult> results = new Runner(options.build()).run();

        Map<String, Double> time = new TreeMap<>();
        Map<String, Double> bytes = new TreeMap<>();
        for (RunResult result : results) {
            String name = shortName(result.getParams().getBenchmark());
            for (String parameter : result.getParams().getParamsKeys()) {
                name += "[" + result.getParams().getParam(parameter) + "]";
            }
            time.put(name, result.getPrimaryResult().getScore());
            Result<?> allocated = result.getSecondaryResults().get("gc.alloc.rate.norm");
            if (allocated == null) {
                allocated = result.getSecondaryResults().get("·gc.alloc.rate.norm");
            }
            bytes.put(name, allocated == null ? Double.NaN : allocated.getScore());
        }
        StringBuilder text = new StringBuilder();
        text.append("# Speed\n\n")
                .append("Java ")
                .append(System.getProperty("java.version"))
                .append(", ")
                .append(System.getProperty("os.arch"))
                .append(", ")
                .append(Runtime.getRuntime().availableProcessors())
                .append(" cores.\n\n")
                .append("| aim | ratio | at most | met |\n|---|---|---|---|\n");
        for (Aim aim : AIMS) {
            Double measured = time.get(aim.benchmark());
            Double peer = aim.peer().isEmpty() ? Double.valueOf(1) : time.get(aim.peer());
            if (measured != null && peer != null) {
                double ratio = measured / peer;
                text.append(
                        String.format(
                                Locale.ROOT,
                                "| %s | %.3f | %.3f | %s |%n",
                                aim.what(),
                                ratio,
                                aim.atMost(),
                                ratio <= aim.atMost() ? "yes" : "no"));
            }
        }
        text.append(
                "\n| benchmark | time (unit of the benchmark) | bytes allocated per operation |\n|---|---|---|\n");
        time.forEach(
                (name, score) ->
                        text.append(
                                String.format(
                                        Locale.ROOT,
                                        "| %s | %.4g | %.3g |%n",
                                        name,
                                        score,
                                        bytes.get(name))));
        Files.writeString(folder.resolve("speed.md"), text);
        System.out.println(text);
    }

    private static String shortName(String benchmark) {
        String[] parts = benchmark.split("\\.");
        return parts[parts.length - 2].replace("Benchmark", "") + "." + parts[parts.length - 1];
    }
}
