package dev.thinair.reference.speed;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** Moist-air kernels against bare exp and log, and against a general-purpose root finder. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class MoistAirBenchmark {

    private static final int STATES = 1024;

    private final double[] dryBulb = new double[STATES];
    private final double[] relativeHumidity = new double[STATES];
    private final double[] humidityRatio = new double[STATES];
    private final double[] pressure = new double[STATES];

    /** Fills the states: 1 to 45 degC, 5 to 100 percent, 60 to 105 kPa, one fixed seed. */
    @Setup
    public void fill() {
        SplittableRandom random = new SplittableRandom(20_261_125L);
        for (int i = 0; i < STATES; i++) {
            dryBulb[i] = 273.15 + random.nextDouble(1, 45);
            relativeHumidity[i] = random.nextDouble(0.05, 1);
            pressure[i] = random.nextDouble(60_000, 105_000);
            humidityRatio[i] =
                    IdealMoistAir.humidityRatioFromRelativeHumidity(
                            dryBulb[i], relativeHumidity[i], pressure[i]);
        }
    }

    /** Floor: one exp of one log, as every saturation formula with both must chain them. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void floorExpOfLog(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Math.exp(1.3 * Math.log(dryBulb[i])));
        }
    }

    /** Floor: one exp beside one log, neither waiting for the other: lower than any chain. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void floorExpLog(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Math.exp(-1e-3 * dryBulb[i]) + Math.log(dryBulb[i]));
        }
    }

    /** Floor: one exp beside three logs, none waiting for another. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void floorExpThreeLogs(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(
                    Math.exp(-1e-3 * dryBulb[i])
                            + Math.log(dryBulb[i])
                            + Math.log(relativeHumidity[i])
                            + Math.log(pressure[i]));
        }
    }

    /** Saturation pressure. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void saturationPressure(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Saturation.pressure(dryBulb[i]));
        }
    }

    /** Humidity ratio, enthalpy and density from dry bulb, relative humidity and pressure. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void state(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            double t = dryBulb[i];
            double p = pressure[i];
            double w = IdealMoistAir.humidityRatioFromRelativeHumidity(t, relativeHumidity[i], p);
            hole.consume(w);
            hole.consume(IdealMoistAir.enthalpy(t, w));
            hole.consume(IdealMoistAir.density(t, w, p));
        }
    }

    /** The same with the dew point. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void stateWithDewPoint(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            double t = dryBulb[i];
            double p = pressure[i];
            double w = IdealMoistAir.humidityRatioFromRelativeHumidity(t, relativeHumidity[i], p);
            hole.consume(w);
            hole.consume(IdealMoistAir.enthalpy(t, w));
            hole.consume(IdealMoistAir.density(t, w, p));
            hole.consume(IdealMoistAir.dewPoint(w, p));
        }
    }

    /** Dew point alone. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void dewPoint(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(IdealMoistAir.dewPoint(humidityRatio[i], pressure[i]));
        }
    }

    /** Thermodynamic wet bulb. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulb(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(WetBulb.temperature(dryBulb[i], humidityRatio[i], pressure[i]));
        }
    }

    /** Peer: the same equation by a bracketing solver, to 1e-10 K. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulbByBrent(Blackhole hole) {
        BrentSolver solver = new BrentSolver(1e-12, 1e-10);
        for (int i = 0; i < STATES; i++) {
            double t = dryBulb[i];
            double w = humidityRatio[i];
            double p = pressure[i];
            hole.consume(solver.solve(100, x -> residual(t, x, w, p), t - 45, t));
        }
    }

    /** Peer: the same by the library's higher-order bracketing solver, to 1e-10 K. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulbByBracketingNthOrder(Blackhole hole) {
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-12, 1e-10, 5);
        for (int i = 0; i < STATES; i++) {
            double t = dryBulb[i];
            double w = humidityRatio[i];
            double p = pressure[i];
            hole.consume(solver.solve(100, x -> residual(t, x, w, p), t - 45, t));
        }
    }

    /** ASHRAE Fundamentals 2021, chapter 1, equations (33) and (35), as they stand there. */
    private static double residual(double dryBulb, double wetBulb, double w, double p) {
        double t = dryBulb - 273.15;
        double x = wetBulb - 273.15;
        double pws = Saturation.pressure(wetBulb);
        double saturated = 0.621945 * pws / (p - pws);
        if (x >= 0) {
            return ((2501 - 2.326 * x) * saturated - 1.006 * (t - x))
                            / (2501 + 1.86 * t - 4.186 * x)
                    - w;
        }
        return ((2830 - 0.24 * x) * saturated - 1.006 * (t - x)) / (2830 + 1.86 * t - 2.1 * x) - w;
    }
}
