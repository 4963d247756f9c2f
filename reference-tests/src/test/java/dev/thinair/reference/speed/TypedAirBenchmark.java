package dev.thinair.reference.speed;

import dev.thinair.psychro.MoistAir;
import dev.thinair.psychro.WaterVapor;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import tech.units.indriya.quantity.Quantities;

/** What the typed layer costs: crossing into SI doubles, and typed calls against kernel calls. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class TypedAirBenchmark {

    private static final int STATES = 1024;

    private final double[] kelvins = new double[STATES];
    private final double[] ratio = new double[STATES];
    private final double[] pascals = new double[STATES];
    private final List<Quantity<Temperature>> fahrenheit = new ArrayList<>();
    private final List<Quantity<Temperature>> librarys = new ArrayList<>();
    private final List<Quantity<HumidityRatio>> grains = new ArrayList<>();
    private final List<Quantity<Pressure>> inchesOfMercury = new ArrayList<>();
    private final List<Quantity<Pressure>> inchesOfWater = new ArrayList<>();
    private final List<Quantity<VolumeFlow>> cfm = new ArrayList<>();
    private final List<MoistAir> states = new ArrayList<>();

    /** Fills the states: 1 to 45 degC, 5 to 100 percent, 60 to 105 kPa, one fixed seed. */
    @Setup
    public void fill() {
        SplittableRandom random = new SplittableRandom(20_261_125L);
        for (int i = 0; i < STATES; i++) {
            MoistAir air =
                    MoistAir.ofDryBulbAndRelativeHumidity(
                            Units.celsius(random.nextDouble(1, 45)),
                            Units.ratio(random.nextDouble(0.05, 1)),
                            Units.pascals(random.nextDouble(60_000, 105_000)));
            states.add(air);
            kelvins[i] = air.dryBulbKelvins();
            ratio[i] = air.humidityRatioNumber();
            pascals[i] = air.pressurePascals();
            double degrees = kelvins[i] * 1.8 - 459.67;
            fahrenheit.add(Units.fahrenheit(degrees));
            librarys.add(Quantities.getQuantity(degrees, Units.FAHRENHEIT));
            grains.add(Units.grainsPerPound(7000 * ratio[i] * (1 - 1e-12)));
            inchesOfMercury.add(Units.inchesOfMercury(pascals[i] / 3386.389));
            inchesOfWater.add(Units.inchesOfWater(random.nextDouble(0.05, 1.2)));
            cfm.add(Units.cubicFeetPerMinute(random.nextDouble(50, 2000)));
        }
    }

    /** Fahrenheit into K. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void crossFahrenheit(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Si.kelvins(fahrenheit.get(i), "dry bulb"));
        }
    }

    /** Fahrenheit into K, the quantity being the unit library's own. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void crossFahrenheitOfTheLibrary(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Si.kelvins(librarys.get(i), "dry bulb"));
        }
    }

    /** Fahrenheit into K, from a number: the quantity is made on the way. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void makeAndCrossFahrenheit(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Si.kelvins(Units.fahrenheit(kelvins[i]), "dry bulb"));
        }
    }

    /** Cubic feet per minute into m3/s. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void crossCubicFeetPerMinute(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Si.cubicMetresPerSecond(cfm.get(i), "airflow"));
        }
    }

    /** Inches of water into Pa. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void crossInchesOfWater(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Si.pascals(inchesOfWater.get(i), "static pressure"));
        }
    }

    /** Peer: the unit library's own conversion. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void crossFahrenheitByTheLibrary(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(librarys.get(i).to(Units.KELVIN).getValue().doubleValue());
        }
    }

    /** Kernel wet bulb. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulbKernel(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(WetBulb.temperature(kelvins[i], ratio[i], pascals[i]));
        }
    }

    /** Three trade quantities in, a state checked for saturation, a wet bulb out. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulbTyped(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(
                    MoistAir.ofDryBulbAndHumidityRatio(
                                    fahrenheit.get(i), grains.get(i), inchesOfMercury.get(i))
                            .wetBulb());
        }
    }

    /** The wet bulb of a state that is there already. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void wetBulbOfState(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(states.get(i).wetBulb());
        }
    }

    /** Kernel saturation pressure. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void saturationPressureKernel(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(Saturation.pressure(kelvins[i]));
        }
    }

    /** Fahrenheit in, a pressure out. */
    @Benchmark
    @OperationsPerInvocation(STATES)
    public void saturationPressureTyped(Blackhole hole) {
        for (int i = 0; i < STATES; i++) {
            hole.consume(WaterVapor.saturationPressure(fahrenheit.get(i)));
        }
    }
}
