package dev.thinair.reference.speed;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.gramsPerKilogram;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metresPerSecond;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.tonsOfRefrigeration;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.DayRun;
import dev.thinair.cycling.FanMode;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.Review;
import dev.thinair.cycling.SeasonRun;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.Tariff;
import dev.thinair.cycling.Thermostat;
import dev.thinair.cycling.Uncertainty;
import dev.thinair.cycling.UnitFaults;
import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.WetCoil;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.Site;
import java.time.Month;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Whole installed systems: a house of ten rooms at 2,200 m, twelve runs, real units. The house is
 * compiled beforehand; ducts, units, day runs and remedies are done afresh each time.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SystemBenchmark {

    private CompiledHouse house;
    private InstalledSystem ailing;
    private InstalledSystem plain;
    private InstalledSystem freezing;
    private HourlyWeather weather;

    /** Compiles the house and describes the systems. */
    @Setup
    public void build() {
        Site site = SpeedHouse.site(2200);
        house = SpeedHouse.tenRooms(1, true).compile(site);
        DuctSystem choked = ducts(5);
        for (int run : new int[] {2, 5, 9}) {
            choked = choked.withRegisterShut("run " + run);
        }
        choked = choked.withFilter(filter().loaded(4));
        ailing =
                system(choked, 4, 72)
                        .withThermostat(
                                Thermostat.at(fahrenheit(72)).withFanMode(FanMode.CONTINUOUS))
                        .withFaults(UnitFaults.dirtyCondenser(0.7));
        plain = system(ducts(6), 2, 75);
        freezing = system(ducts(4), 4, 70);
        HourlyWeather.Year year = HourlyWeather.yearAt(site);
        for (Month m : Month.values()) {
            double summer = 0.5 - 0.5 * Math.cos((m.getValue() - 1) / 6.0 * Math.PI);
            year.month(
                    m,
                    celsius(2 + 25 * summer),
                    kelvinDifference(11),
                    gramsPerKilogram(4 + 9 * summer),
                    metresPerSecond(3),
                    percent(60),
                    0.4,
                    2.1);
        }
        weather = year.build();
    }

    private InstalledSystem system(DuctSystem ducts, double tons, double degrees) {
        return InstalledSystem.builder()
                .house(house)
                .designDay(SpeedHouse.day(SpeedHouse.site(2200), 34))
                .ducts(ducts)
                .unit(CoolingUnit.typical(tonsOfRefrigeration(tons), Staging.SINGLE))
                .thermostat(Thermostat.at(fahrenheit(degrees)))
                .tariff(Tariff.flat("coins", 0.2))
                .build();
    }

    private static Filter filter() {
        return Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.12), percent(50));
    }

    private static DuctSystem ducts(double diameter) {
        DuctSystem.Builder b =
                DuctSystem.builder()
                        .blower(
                                Blower.builder()
                                        .speed("high")
                                        .point(inchesOfWater(0.05), cubicFeetPerMinute(1090))
                                        .point(inchesOfWater(0.4), cubicFeetPerMinute(960))
                                        .point(inchesOfWater(0.8), cubicFeetPerMinute(720))
                                        .point(inchesOfWater(1.2), cubicFeetPerMinute(210))
                                        .efficiency(percent(20))
                                        .build())
                        .filter(filter())
                        .coil(
                                WetCoil.of(
                                        cubicFeetPerMinute(1000),
                                        inchesOfWater(0.15),
                                        inchesOfWater(0.2)))
                        .returnRun(
                                "return",
                                "room 0",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.rectangular(inches(24), inches(12)),
                                                feet(10),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1),
                                Register.of(inches(30), inches(20)));
        for (int i = 1; i <= 12; i++) {
            b.supplyRun(
                    "run " + i,
                    DuctSystem.SUPPLY_PLENUM,
                    "room " + i % 10,
                    Duct.of(
                                    DuctShape.round(inches(diameter)),
                                    feet(12 + i),
                                    DuctMaterial.GALVANIZED)
                            .withLossCoefficient(1.3),
                    Register.of(inches(10), inches(6)));
        }
        return b.build();
    }

    /** The verdict on a system with much that is wrong: all findings, at least twelve remedies. */
    @Benchmark
    public Review review() {
        return Review.of(ailing.withThermostat(ailing.thermostat()));
    }

    /** One design day, ducts solved, repeated until it repeats itself. */
    @Benchmark
    public DayRun day() {
        return plain.withThermostat(plain.thermostat()).runDay();
    }

    /** A year of hours. */
    @Benchmark
    public SeasonRun season() {
        return plain.runSeason(weather);
    }

    /** A year of hours in which the coil ices, run twice for that. */
    @Benchmark
    public SeasonRun seasonWithIce() {
        return freezing.runSeason(weather);
    }

    /** Two hundred draws of the design day, on all cores. */
    @Benchmark
    public Uncertainty draws() {
        return Uncertainty.of(plain)
                .input("filter loading", 1, 4, x -> s -> s.withDucts(loaded(s, x)))
                .input("condenser", 0.5, 1, x -> s -> s.withFaults(UnitFaults.dirtyCondenser(x)))
                .input(
                        "differential",
                        0.3,
                        1.5,
                        x ->
                                s ->
                                        s.withThermostat(
                                                s.thermostat()
                                                        .withDifferential(kelvinDifference(x))))
                .draws(200)
                .seed(1)
                .run();
    }

    private static DuctSystem loaded(InstalledSystem s, double times) {
        return s.ducts().withFilter(filter().loaded(times));
    }

    /**
     * Prints what the benchmarks find.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        SystemBenchmark b = new SystemBenchmark();
        b.build();
        Review review = b.review();
        System.out.println(review.summary());
        System.out.println(
                review.remedies().size()
                        + " remedies tried, "
                        + review.setAside().size()
                        + " set aside");
        System.out.println(b.season());
        System.out.println(b.seasonWithIce());
        System.out.println(b.draws());
    }
}
