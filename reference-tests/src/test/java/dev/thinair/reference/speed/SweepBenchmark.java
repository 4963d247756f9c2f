package dev.thinair.reference.speed;

import dev.thinair.psychro.kernel.IdealMoistAir;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A million moist-air states (humidity ratio, enthalpy, density, dew point, wet bulb) over
 * temperature, relative humidity and pressure, on one core and on all.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SweepBenchmark {

    private static final int BLOCKS = 100;
    private static final int PER_BLOCK = 10_000;

    private final double[] dewPoint = new double[BLOCKS * PER_BLOCK];
    private final double[] wetBulb = new double[BLOCKS * PER_BLOCK];

    /**
     * One after the other.
     *
     * @return a sum over all states
     */
    @Benchmark
    public double statesOnOneCore() {
        return IntStream.range(0, BLOCKS).mapToDouble(this::block).sum();
    }

    /**
     * By a parallel stream.
     *
     * @return the same sum
     */
    @Benchmark
    public double statesOnAllCores() {
        return IntStream.range(0, BLOCKS).parallel().mapToDouble(this::block).sum();
    }

    /** One pressure; 100 temperatures by 100 humidities. */
    private double block(int block) {
        double p = 60_000 + 450.0 * block;
        double sum = 0;
        for (int i = 0; i < PER_BLOCK; i++) {
            double t = 274.15 + 0.44 * (i / 100);
            double w =
                    IdealMoistAir.humidityRatioFromRelativeHumidity(
                            t, 0.01 + 0.0099 * (i % 100), p);
            sum += IdealMoistAir.enthalpy(t, w) * IdealMoistAir.density(t, w, p);
            dewPoint[block * PER_BLOCK + i] = IdealMoistAir.dewPoint(w, p);
            wetBulb[block * PER_BLOCK + i] = IdealMoistAir.wetBulb(t, w, p);
        }
        return sum;
    }
}
