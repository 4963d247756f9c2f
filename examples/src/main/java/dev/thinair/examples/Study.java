package dev.thinair.examples;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.DayRun;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.Remedy;
import dev.thinair.cycling.Review;
import dev.thinair.cycling.SeasonRun;
import dev.thinair.cycling.UnitState;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Retrofit;
import dev.thinair.examples.job.Job;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.Setpoint;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/** Everything the service call computes, through the library's public interface. */
final class Study {
    /** Most added runs that are tried; no attic or crawlspace takes more. */
    static final int MOST_RUNS = 20;

    private static final double TON =
            Si.watts(Units.tonsOfRefrigeration(1), "a ton of refrigeration");
    static final Quantity<Length> RUN_LENGTH = Units.feet(20);
    private static final int[] NOMINAL_INCHES = {5, 6, 7, 8};
    private static final double[] TARGETS = {350, 400};

    final Job job;
    final CompiledHouse house;
    final MoistAir roomAir;
    final DesignLoad coolingWanted;
    final DesignLoad coolingUsual;
    final DesignLoad heatingWanted;
    final DesignLoad heatingUsual;
    final InstalledSystem asFound;
    final InstalledSystem opened;
    final InstalledSystem filtered;
    final InstalledSystem mended;
    final Review review;

    /** As found, mended, recommended, right-sized, by name. */
    final Map<String, InstalledSystem> cases;

    private final Map<DayOf, DayRun> days = new ConcurrentHashMap<>();
    private final Map<InstalledSystem, SeasonRun> seasons = new ConcurrentHashMap<>();

    Study(Job job) {
        this.job = job;
        house = job.house().compile(job.site());
        Job.Wishes w = job.wishes();
        roomAir =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        w.cooling(), w.relativeHumidity(), job.site().pressure());
        coolingWanted = cooling(w.cooling());
        coolingUsual = cooling(w.usualCooling());
        heatingWanted = heating(w.heating());
        heatingUsual = heating(w.usualHeating());
        asFound = job.installed(house, job.coolingDay());
        DuctSystem open = job.ducts().withRegistersOpened();
        opened = asFound.withDucts(open);
        filtered = asFound.withDucts(clean(job.ducts()));
        mended = asFound.withDucts(clean(open));
        // What does not wait for the review runs beside it; results do not depend on the order.
        CompletableFuture<?> beside =
                CompletableFuture.allOf(
                        CompletableFuture.runAsync(() -> season(asFound)),
                        CompletableFuture.runAsync(
                                () -> {
                                    season(mended);
                                    List.of(opened, filtered, mended).forEach(Study::state);
                                }));
        try {
            review = Review.of(asFound);
        } finally {
            // What a system that does not run throws there, its review says better.
            beside.handle((done, thrown) -> done).join();
        }
        if (!review.operates()) {
            cases = Map.of();
            return;
        }
        settle(beside);
        cases = cases();
        settle(
                CompletableFuture.allOf(
                        cases.values().stream()
                                .map(s -> CompletableFuture.runAsync(() -> prepare(s)))
                                .toArray(CompletableFuture[]::new)));
    }

    private void prepare(InstalledSystem system) {
        season(system);
        day(system, job.wishes().cooling());
        day(system, job.wishes().usualCooling());
    }

    /** Waits for what runs beside, and throws what it threw. */
    private static void settle(CompletableFuture<?> future) {
        try {
            future.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException r) {
                throw r;
            }
            throw e;
        }
    }

    /** The systems that are run through day and year, by what the review calls them. */
    private Map<String, InstalledSystem> cases() {
        Map<String, InstalledSystem> map = new LinkedHashMap<>();
        map.put("as found", asFound);
        map.put("open, new filter", mended);
        InstalledSystem best = review.recommended().system();
        if (review.recommended().kind() != Remedy.Kind.NONE) {
            map.put("recommended", best);
        }
        review.rightCapacity()
                .filter(
                        c ->
                                Math.abs(
                                                Si.watts(c, "")
                                                                / Si.watts(
                                                                        best.unit().ratedCapacity(),
                                                                        "")
                                                        - 1)
                                        > 0.03)
                .ifPresent(c -> map.put("right-sized, same ducts", withCapacity(best, c)));
        return map;
    }

    /** A system's design day at a setpoint, run once. */
    DayRun day(InstalledSystem system, Quantity<Temperature> setpoint) {
        double kelvins = Si.kelvins(setpoint, "setpoint");
        if (kelvins == Si.kelvins(system.wantedSetpoint(), "wanted setpoint")) {
            return system.runDay();
        }
        return days.computeIfAbsent(new DayOf(system, kelvins), d -> system.runDay(setpoint));
    }

    /** A system's year, run once. */
    SeasonRun season(InstalledSystem system) {
        return seasons.computeIfAbsent(system, s -> s.runSeason(job.weather()));
    }

    private record DayOf(InstalledSystem system, double setpoint) {}

    private DesignLoad cooling(Quantity<Temperature> setpoint) {
        return house.coolingLoad(
                job.coolingDay(),
                Setpoint.of(setpoint).withRelativeHumidity(job.wishes().relativeHumidity()));
    }

    private DesignLoad heating(Quantity<Temperature> setpoint) {
        return house.heatingLoad(job.heatingDay(), Setpoint.of(setpoint));
    }

    private static DuctSystem clean(DuctSystem ducts) {
        return ducts.filter().map(f -> ducts.withFilter(f.cleaned())).orElse(ducts);
    }

    /** Air density at the site over that of standard air, for the air in the rooms. */
    double densityRatio() {
        return Si.kilogramsPerCubicMetre(roomAir.density(), "density")
                / CoolingUnit.STANDARD_DENSITY;
    }

    /** Pressure at the site over that at sea level. */
    double pressureRatio() {
        return job.site().pascals() / StandardAtmosphere.pressure(0);
    }

    /** One row of the table of added runs. */
    record AddedRuns(
            double target, Quantity<Length> diameter, OptionalInt count, Airflow reached) {}

    /**
     * Runs to be added, after registers are open and the filter is new, until the ducts carry so
     * many standard cfm for each ton of a capacity.
     */
    List<AddedRuns> addedRuns(Quantity<Power> capacity) {
        double tons = Si.watts(capacity, "capacity") / TON;
        Airflow now = mended.airflow();
        double density = Si.kilogramsPerCubicMetre(now.density(), "density");
        double viscosity = Si.pascalSeconds(roomAir.viscosity(), "viscosity");
        List<AddedRuns> rows = new ArrayList<>();
        for (double target : TARGETS) {
            Quantity<VolumeFlow> wanted = Units.cubicFeetPerMinute(target * tons);
            for (int inches : NOMINAL_INCHES) {
                Quantity<Length> diameter = Units.inches(inches);
                List<Retrofit.Option> options =
                        Retrofit.of(mended.ducts(), wanted)
                                .air(density, viscosity)
                                .addedRuns(
                                        MOST_RUNS,
                                        List.of(diameter),
                                        RUN_LENGTH,
                                        List.of(DuctSystem.SUPPLY_PLENUM),
                                        neediestRoom())
                                .search()
                                .options();
                if (options.isEmpty()) {
                    rows.add(
                            new AddedRuns(
                                    target,
                                    diameter,
                                    OptionalInt.empty(),
                                    added(MOST_RUNS, diameter)));
                } else {
                    Retrofit.Option best = options.get(0);
                    int count = best.system().runNames().size() - mended.ducts().runNames().size();
                    rows.add(
                            new AddedRuns(target, diameter, OptionalInt.of(count), best.airflow()));
                }
            }
        }
        return rows;
    }

    private Airflow added(int count, Quantity<Length> diameter) {
        return mended.withDucts(
                        mended.ducts()
                                .withAddedRuns(
                                        count,
                                        diameter,
                                        RUN_LENGTH,
                                        DuctSystem.SUPPLY_PLENUM,
                                        neediestRoom()))
                .airflow();
    }

    /**
     * The room whose share of the load most exceeds its share of the air, with all registers open.
     */
    String neediestRoom() {
        double load = 0;
        double air = 0;
        for (String room : coolingWanted.rooms()) {
            load += Si.watts(coolingWanted.roomPeak(room), "room peak");
            air += Si.cubicMetresPerSecond(mended.airflow().supplyTo(room), "airflow");
        }
        String worst = coolingWanted.rooms().get(0);
        double most = Double.NEGATIVE_INFINITY;
        for (String room : coolingWanted.rooms()) {
            double need =
                    Si.watts(coolingWanted.roomPeak(room), "room peak") / load
                            - Si.cubicMetresPerSecond(mended.airflow().supplyTo(room), "airflow")
                                    / air;
            if (need > most) {
                most = need;
                worst = room;
            }
        }
        return worst;
    }

    /** The same unit family with another rated capacity, on the ducts of another system. */
    InstalledSystem withCapacity(InstalledSystem system, Quantity<Power> capacity) {
        return system.withUnit(system.unit().withRatedCapacity(capacity));
    }

    /** Actual or standard airflow for each ton of a capacity that the system does not have. */
    static Quantity<FlowPerCapacity> perTon(Quantity<VolumeFlow> flow, Quantity<Power> capacity) {
        return Units.quantity(
                Si.cubicMetresPerSecond(flow, "airflow") / Si.watts(capacity, "capacity"),
                Units.CUBIC_METRE_PER_SECOND_PER_WATT);
    }

    static UnitState state(InstalledSystem system) {
        return system.unitStateAtDesign();
    }

    /** One nominal ton more than installed. */
    Quantity<Power> biggerCapacity() {
        return Units.watts(Si.watts(job.unit().ratedCapacity(), "rated capacity") + TON);
    }
}
