package dev.thinair.reference.speed;

import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.Component;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.House;
import dev.thinair.loads.HouseDay;
import dev.thinair.loads.Setpoint;
import dev.thinair.loads.Site;
import dev.thinair.units.Units;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Design-day load of a house of ten rooms, 80 surfaces and 24 windows: from its description, and
 * with what was compiled kept; against the same day marched in time steps to the periodic state.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LoadBenchmark {
    private static final int CASES = 16; // a power of two
    private static final double INDOOR = 24;

    private House house;
    private Site[] sites;
    private CoolingDesignDay[] days; // at the first site
    private CoolingDesignDay[] daysAbove; // at each site
    private Setpoint[] setpoints;
    private CompiledHouse compiled;
    private HouseDay bound;
    private MarchedHouse marched;
    private int next;

    /** Describes the house and the cases, and checks that the march finds the same load. */
    @Setup
    public void describe() {
        house = SpeedHouse.tenRooms(1, true);
        sites = new Site[CASES];
        days = new CoolingDesignDay[CASES];
        daysAbove = new CoolingDesignDay[CASES];
        setpoints = new Setpoint[CASES];
        for (int i = 0; i < CASES; i++) {
            sites[i] = SpeedHouse.site(150 * i);
            days[i] = SpeedHouse.day(sites[0], 30 + 0.3 * i);
            daysAbove[i] = SpeedHouse.day(sites[i], 32);
            setpoints[i] = Setpoint.of(Units.celsius(22 + 0.25 * i));
        }
        compiled = house.compile(sites[0]);
        bound = compiled.on(days[0]);
        marched = march();
        check(bound.load(Setpoint.of(Units.celsius(INDOOR))), marched.march(14));
    }

    private MarchedHouse march() {
        return new MarchedHouse(house, days[0], 273.15 + INDOOR, sites[0].pascals());
    }

    /** Largest difference of the two loads as a share of the peak. */
    static double difference(DesignLoad load, double[] marched) {
        double peak = 0;
        double worst = 0;
        for (int h = 0; h < 24; h++) {
            double own =
                    load.sensible(h).getValue().doubleValue()
                            - load.component(Component.INFILTRATION, h).getValue().doubleValue()
                            - load.component(Component.VENTILATION, h).getValue().doubleValue();
            peak = Math.max(peak, Math.abs(own));
            worst = Math.max(worst, Math.abs(own - marched[h]));
        }
        return worst / peak;
    }

    private static void check(DesignLoad load, double[] marched) {
        double off = difference(load, marched);
        if (!(off < 0.005)) {
            throw new IllegalStateException("the two methods differ by " + off + " of the peak");
        }
    }

    private int turn() {
        next = (next + 1) & (CASES - 1);
        return next;
    }

    /** From the description to the load: compile, bind the day, load. */
    @Benchmark
    public DesignLoad fresh() {
        int i = turn();
        return house.compile(sites[i]).on(daysAbove[i]).load(setpoints[i]);
    }

    /** Compiling alone. */
    @Benchmark
    public CompiledHouse compile() {
        return house.compile(sites[turn()]);
    }

    /** Another setpoint on the same day. */
    @Benchmark
    public DesignLoad anotherSetpoint() {
        return bound.load(setpoints[turn()]);
    }

    /** Another elevation: pressure, the day there, the load; transmission data kept. */
    @Benchmark
    public DesignLoad anotherElevation() {
        int i = turn();
        return compiled.at(sites[i]).on(daysAbove[i]).load(setpoints[0]);
    }

    /** Another day at the same site. */
    @Benchmark
    public DesignLoad anotherDay() {
        return compiled.on(days[turn()]).load(setpoints[0]);
    }

    /** The same day by time steps, 14 days from a uniform start, factors at hand. */
    @Benchmark
    public double[] timeStepping() {
        return marched.march(14);
    }

    /** Houses of the same ten rooms with more surfaces. */
    @State(Scope.Thread)
    public static class Larger {
        /** How many times 80 surfaces. */
        @Param({"1", "4", "16"})
        public int times;

        private House alike;
        private House unlike;
        private Site site;
        private CoolingDesignDay day;
        private final Setpoint setpoint = Setpoint.of(Units.celsius(24));

        /** Describes them. */
        @Setup
        public void describe() {
            alike = SpeedHouse.tenRooms(times, true);
            unlike = SpeedHouse.tenRooms(times, false);
            site = SpeedHouse.site(1500);
            day = SpeedHouse.day(site, 33);
        }
    }

    /** Surfaces of a few kinds, as a house has them. */
    @Benchmark
    public DesignLoad freshWithSurfaces(Larger larger) {
        return larger.alike.compile(larger.site).on(larger.day).load(larger.setpoint);
    }

    /** Every outer wall with layers and a direction of its own: nothing is shared. */
    @Benchmark
    public DesignLoad freshWithUnlikeWalls(Larger larger) {
        return larger.unlike.compile(larger.site).on(larger.day).load(larger.setpoint);
    }
}
