package dev.thinair.cycling;

import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.ducts.Airflow;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * The verdict on an installed system: what is wrong, how sure that is, and what would help.
 *
 * <p>The system is run through its design day at the setpoint the customer wants, and held against
 * limits whose source each finding names. For what is wrong, remedies are tried by running the
 * changed system: free ones first, then ducts, then equipment. Same system, same review, to the
 * last bit; immutable.
 */
public final class Review {

    private static final Quantity<Length> RUN_DIAMETER = Units.inches(7);
    private static final Quantity<Length> RETURN_DIAMETER = Units.inches(14);
    private static final Quantity<Length> ADDED_LENGTH = Units.feet(15);
    private static final int MOST_RUNS = 6;
    private static final double LEAK_LIMIT = 0.10;

    /**
     * A remedy that could not be run, and why.
     *
     * @param remedy the remedy
     * @param reason what stood against it
     */
    public record SetAside(Remedy remedy, String reason) {}

    private final InstalledSystem system;
    private final DayRun day; // null if the system does not run
    private final String stopped;
    private final List<Finding> findings;
    private final List<Remedy> remedies;
    private final Comparison comparison;
    private final List<SetAside> setAside;
    private final double rightTons;
    private final double carriedTons;
    private final double load;
    private final double capacity;

    private Review(InstalledSystem system) {
        this.system = system;
        Assessment found = new Assessment(system);
        day = found.day;
        findings = List.copyOf(found.findings);
        rightTons = found.rightTons;
        carriedTons = found.freed.movesAir() ? found.carriedTons() : Double.NaN;
        load = found.loadTotal;
        capacity = found.capacityAtDesign;
        List<SetAside> aside = new ArrayList<>();
        List<Remedy> tried = new ArrayList<>();
        List<Comparison.Row> rows = new ArrayList<>();
        stopped = found.stopped;
        if (stopped == null) {
            rows.add(row(Remedy.nothing(), found));
        }
        List<Remedy> candidates = candidates(found);
        candidates.sort(Comparator.comparing(Remedy::kind));
        for (Remedy r : candidates) {
            try {
                Assessment changed = new Assessment(r.apply(system));
                if (changed.stopped != null) {
                    aside.add(new SetAside(r, changed.stopped));
                    continue;
                }
                rows.add(row(r, changed));
                tried.add(r);
            } catch (IllegalStateException | IllegalArgumentException | ArithmeticException e) {
                aside.add(new SetAside(r, String.valueOf(e.getMessage())));
            }
        }
        remedies = List.copyOf(tried);
        comparison = new Comparison(rows, stopped == null);
        setAside = List.copyOf(aside);
    }

    /**
     * Reviews a system. One that does not run (the blower outside its table, no balance of coil and
     * compressor) is reviewed too: a {@link Finding.DoesNotRun} says why, and remedies that make it
     * run are compared with each other.
     *
     * @param system the system as found
     * @return the verdict
     * @throws IllegalArgumentException if the system is missing, or asks its unit for conditions
     *     that no unit of this kind is described for; that is no finding
     * @throws ArithmeticException if a search of the simulation fails; the message says where
     */
    public static Review of(InstalledSystem system) {
        if (system == null) {
            throw new IllegalArgumentException("the system to review must not be null");
        }
        return new Review(system);
    }

    private static Comparison.Row row(Remedy remedy, Assessment a) {
        InstalledSystem s = a.system;
        DayRun d = a.day;
        double[] out = new double[UnitResponse.RESULTS];
        int h = s.designHour();
        double left = d.icing().map(i -> i.share(h)).orElse(1.0);
        double least = d.icing().map(CoilIcing::leastShare).orElse(1.0);
        DayRun clear = d.clearCoil();
        s.atDesign(
                s.unit(),
                InstalledUnit.through(s.unit().model(), s.dryAirMassFlow, left),
                s.wantedKelvin(),
                d.record().endHumidityRatio(h),
                out);
        double total = out[UnitResponse.SENSIBLE] + 2.5e6 * Math.max(0, out[UnitResponse.MOISTURE]);
        Quantity<Temperature> coil =
                d.ran() ? clear.minimumCoilTemperature() : Units.kelvins(out[UnitResponse.COIL]);
        Quantity<Temperature> suction =
                d.ran()
                        ? clear.minimumSuctionTemperature()
                        : Units.kelvins(out[UnitResponse.SUCTION]);
        return new Comparison.Row(
                remedy.title(),
                remedy.kind(),
                s,
                s.airflowPerTon(),
                s.standardAirflowPerTon(),
                Units.watts(total),
                coil,
                suction,
                Si.kelvins(coil, "coil") <= s.limits().icing().value(),
                Units.percent(100 * least),
                d.starts(),
                d.longestRun(),
                Units.percent(100 * d.record().totalOnSeconds() / 86_400),
                d.miss(),
                d.degreeHoursAboveSetpoint(),
                d.peakRelativeHumidity(),
                d.electricity(),
                d.cost(),
                a.grave());
    }

    private static List<Remedy> candidates(Assessment a) {
        List<Remedy> list = new ArrayList<>();
        if (a.findings.isEmpty()) {
            return list;
        }
        InstalledSystem s = a.system;
        List<Remedy> free = new ArrayList<>();
        if (Assessment.anyRegisterShut(s.ducts())) {
            free.add(Remedy.openRegisters());
        }
        if (Assessment.filterLoaded(s.ducts())) {
            free.add(Remedy.cleanFilter());
        }
        if (Assessment.condenserDirty(s.unit())) {
            free.add(Remedy.washCondenser());
        }
        list.addAll(free);
        if (free.size() > 1) {
            list.add(Remedy.combine(free.toArray(new Remedy[0])));
        }
        if (s.thermostat().fanMode() == FanMode.CONTINUOUS) {
            list.add(with(free, Remedy.automaticFan()));
        }
        if (a.has(Finding.SetpointMissed.class)
                || a.has(Finding.SetpointTooLow.class)
                || a.has(Finding.CoilIce.class)
                || (a.has(Finding.DoesNotRun.class) && a.freed.movesAir())) {
            setpoint(a).ifPresent(r -> list.add(with(free, r)));
        }
        List<Remedy> ducts = ducts(a, free, list);
        equipment(a, free, ducts, list);
        return list;
    }

    private static Remedy with(List<Remedy> first, Remedy... then) {
        List<Remedy> all = new ArrayList<>(first);
        all.addAll(List.of(then));
        return all.size() == 1 ? all.get(0) : Remedy.combine(all.toArray(new Remedy[0]));
    }

    /**
     * The lowest whole degree Fahrenheit that the system can hold once the free things are done.
     */
    private static Optional<Remedy> setpoint(Assessment a) {
        InstalledSystem s = a.freed;
        UnitLimits limits = s.limits();
        int low =
                (int)
                        Math.ceil(
                                Math.max(limits.returnAirFloor().value(), s.wantedKelvin()) * 1.8
                                        - 459.67
                                        - 1e-6);
        int high = Math.max(low, 85);
        if (!holds(s, high)) {
            return Optional.empty();
        }
        int bad = low - 1;
        int good = high;
        while (good - bad > 1) {
            int mid = Math.floorDiv(good + bad, 2);
            if (holds(s, mid)) {
                good = mid;
            } else {
                bad = mid;
            }
        }
        if (Math.abs((good + 459.67) / 1.8 - a.system.wantedKelvin()) < 1e-6) {
            return Optional.empty();
        }
        return Optional.of(Remedy.otherSetpoint(Units.fahrenheit(good)));
    }

    private static boolean holds(InstalledSystem s, int fahrenheit) {
        if (!s.movesAir()) {
            return false;
        }
        DayRun d;
        try {
            d = s.runDay(Units.fahrenheit(fahrenheit));
        } catch (NoBalanceException none) {
            return false;
        }
        return Assessment.miss(d) <= Assessment.MISS_LIMIT
                && (!d.ran() || d.clearCoil().record().minimumCoil() > s.limits().icing().value());
    }

    /** Adds duct remedies and returns the least set of them that gives enough air. */
    private static List<Remedy> ducts(Assessment a, List<Remedy> free, List<Remedy> list) {
        List<Remedy> least = new ArrayList<>();
        InstalledSystem s = a.freed;
        UnitLimits limits = s.limits();
        double per =
                s.movesAir()
                        ? Si.cubicMetresPerSecondPerWatt(
                                s.standardAirflowPerTon(), "airflow per ton")
                        : 0;
        double low =
                Si.cubicMetresPerSecondPerWatt(
                        Units.cubicFeetPerMinutePerTon(limits.airflowLow().value()), "limit");
        boolean tight = a.has(Finding.ReturnRestricted.class);
        boolean leaky =
                s.movesAir()
                        && s.airflow().supplyLeakFraction() + s.airflow().returnLeakFraction()
                                > LEAK_LIMIT;
        if (leaky) {
            list.add(with(free, Remedy.sealDucts()));
        }
        Remedy back = Remedy.addReturn(RETURN_DIAMETER, ADDED_LENGTH, a.returnRoom());
        if (tight) {
            list.add(with(free, back));
            least.add(back);
        }
        if (per >= low && !a.has(Finding.DuctsTooSmall.class) && !a.has(Finding.CoilIce.class)) {
            return least;
        }
        String room = a.roomShortOfAir();
        int enough = runsNeeded(with(least, Remedy.nothing()).apply(s), room, low);
        for (int n = 1; n <= 2; n++) {
            list.add(with(free, Remedy.addRuns(n, RUN_DIAMETER, ADDED_LENGTH, room)));
        }
        if (enough > 2) {
            list.add(with(free, Remedy.addRuns(enough, RUN_DIAMETER, ADDED_LENGTH, room)));
        }
        if (!tight) {
            list.add(with(free, back));
        }
        if (enough > 0) {
            if (tight) {
                list.add(
                        with(free, back, Remedy.addRuns(enough, RUN_DIAMETER, ADDED_LENGTH, room)));
            }
            least.add(Remedy.addRuns(enough, RUN_DIAMETER, ADDED_LENGTH, room));
        }
        return least;
    }

    /** Fewest added runs that bring enough air, 0 if the most that are tried do not. */
    static int runsNeeded(InstalledSystem s, String room, double enough) {
        for (int n = 1; n <= MOST_RUNS; n++) {
            InstalledSystem tried = Remedy.addRuns(n, RUN_DIAMETER, ADDED_LENGTH, room).apply(s);
            if (tried.movesAir()
                    && Si.cubicMetresPerSecondPerWatt(
                                    tried.standardAirflowPerTon(), "airflow per ton")
                            >= enough) {
                return n;
            }
        }
        return 0;
    }

    private static void equipment(
            Assessment a, List<Remedy> free, List<Remedy> ducts, List<Remedy> list) {
        boolean other =
                a.has(Finding.UnitTooLarge.class)
                        || a.has(Finding.UnitTooSmall.class)
                        || a.has(Finding.DuctsTooSmall.class)
                        || a.has(Finding.CoilIce.class)
                        || a.has(Finding.DoesNotRun.class);
        if (a.has(Finding.ChargeOff.class)) {
            list.add(with(free, Remedy.correctCharge()));
        }
        boolean cycles = a.has(Finding.ShortCycling.class);
        if (!other && !cycles) {
            return;
        }
        double tons = a.rightTons == Double.POSITIVE_INFINITY ? 5 : a.rightTons;
        CoolingUnit kind = a.system.unit().withFaults(UnitFaults.none());
        CoolingUnit fit =
                Math.abs(tons - a.installedTons) < 0.25
                        ? kind
                        : kind.withRatedCapacity(Units.tonsOfRefrigeration(tons));
        Staging now = kind.staging();
        if (fit != kind) {
            list.add(with(free, Remedy.otherUnit(fit)));
        }
        for (Staging staging : Staging.values()) {
            if (staging != Staging.SINGLE && staging != now) {
                list.add(with(free, Remedy.otherUnit(fit.withStaging(staging))));
            }
        }
        if (fit == kind) {
            return;
        }
        // Where no added runs bring enough air for the present unit they may for the right one.
        List<Remedy> both = new ArrayList<>(ducts);
        InstalledSystem fitted = with(ducts, Remedy.otherUnit(fit)).apply(a.freed);
        double low =
                Si.cubicMetresPerSecondPerWatt(
                        Units.cubicFeetPerMinutePerTon(fitted.limits().airflowLow().value()),
                        "limit");
        boolean enough =
                fitted.movesAir()
                        && Si.cubicMetresPerSecondPerWatt(
                                        fitted.standardAirflowPerTon(), "airflow per ton")
                                >= low;
        int runs = enough ? 0 : runsNeeded(fitted, a.roomShortOfAir(), low);
        if (runs > 0) {
            both.add(Remedy.addRuns(runs, RUN_DIAMETER, ADDED_LENGTH, a.roomShortOfAir()));
        }
        if (!both.isEmpty()) {
            both.add(Remedy.otherUnit(fit));
            list.add(with(free, both.toArray(new Remedy[0])));
        }
    }

    /**
     * The system as found.
     *
     * @return the system
     */
    public InstalledSystem system() {
        return system;
    }

    /**
     * The design day of the system as found, at the wanted setpoint.
     *
     * @return the run
     * @throws IllegalStateException if the system as found does not run, see {@link #operates()}
     */
    public DayRun day() {
        if (day == null) {
            throw new IllegalStateException(stopped);
        }
        return day;
    }

    /**
     * Whether the system as found runs at all.
     *
     * @return false if its blower has no operating point or its unit no balance on the design day
     */
    public boolean operates() {
        return stopped == null;
    }

    /**
     * The airflow of the system as found.
     *
     * @return flows and pressures
     * @throws IllegalStateException if the blower has no operating point
     */
    public Airflow airflow() {
        return system.airflow();
    }

    /**
     * What was found, the gravest first, among equals the cheapest cause first.
     *
     * @return findings, empty for a healthy system
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * Whether nothing was found.
     *
     * @return true if there is no finding
     */
    public boolean healthy() {
        return findings.isEmpty();
    }

    /**
     * What could be done, free things first.
     *
     * @return remedies, empty for a healthy system
     */
    public List<Remedy> remedies() {
        return remedies;
    }

    /**
     * Remedies that came to mind but could not be run, with the reason.
     *
     * @return may be empty
     */
    public List<SetAside> setAside() {
        return setAside;
    }

    /**
     * What each remedy does, side by side.
     *
     * @return the system as found and every remedy on the same day
     */
    public Comparison comparison() {
        return comparison;
    }

    /**
     * Smallest nominal size of the installed kind of unit that carries the design load here, with
     * the airflow it should have.
     *
     * @return nominal capacity, or empty if no usual size does
     */
    public Optional<Quantity<Power>> rightCapacity() {
        return rightTons == Double.POSITIVE_INFINITY
                ? Optional.empty()
                : Optional.of(Units.tonsOfRefrigeration(rightTons));
    }

    /**
     * Rated capacity that the ducts can carry at the low limit of airflow per ton, with open
     * registers and a clean filter.
     *
     * @return capacity
     * @throws IllegalStateException if the blower has no operating point even then
     */
    public Quantity<Power> ductsCarry() {
        requireKnown(carriedTons);
        return Units.tonsOfRefrigeration(carriedTons);
    }

    /**
     * Load of the design day's worst hour at the wanted setpoint.
     *
     * @return sensible and latent
     */
    public Quantity<Power> designLoad() {
        return Units.watts(load);
    }

    /**
     * Capacity delivered to the rooms in the warmest hour, free things done, coil clear of ice.
     *
     * @return sensible and latent
     * @throws IllegalStateException if the system does not run even then
     */
    public Quantity<Power> capacityAtDesign() {
        requireKnown(capacity);
        return Units.watts(capacity);
    }

    private void requireKnown(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalStateException(
                    "the system does not run even with the free things done: " + stopped);
        }
    }

    /**
     * The row of the comparison to start from: the lightest change that leaves no warning; if none
     * does, the one that leaves fewest, then the fewest degree-hours. The system as found if
     * nothing is needed.
     *
     * @return a row of the comparison
     * @throws IllegalStateException if the system as found does not run and nothing that was tried
     *     makes it run
     */
    public Comparison.Row recommended() {
        if (comparison.rows().isEmpty()) {
            throw new IllegalStateException(
                    "nothing that was tried makes the system run: " + stopped);
        }
        Comparison.Row best = comparison.rows().get(0);
        for (Comparison.Row r : comparison.rows()) {
            boolean fewer = r.remaining() < best.remaining();
            boolean same = r.remaining() == best.remaining() && best.remaining() > 0;
            if (fewer || (same && r.degreeHours() < 0.9 * best.degreeHours() - 0.05)) {
                best = r;
            }
        }
        return best;
    }

    /**
     * The verdict in one paragraph.
     *
     * @return plain words
     */
    public String summary() {
        if (healthy()) {
            return String.format(
                    Locale.ROOT,
                    "Healthy: the system holds the wanted setpoint on the design day with %.0f hours of running"
                            + " and %d starts; nothing was found.",
                    day.record().totalOnSeconds() / 3600,
                    day.starts());
        }
        if (!operates()) {
            return String.format(
                    Locale.ROOT,
                    "The system as found does not run: %s. %s",
                    findings.get(0).title(),
                    comparison.rows().isEmpty()
                            ? "Nothing that was tried makes it run."
                            : "Start with: " + recommended().title() + ".");
        }
        Comparison.Row r = recommended();
        String right =
                rightTons == Double.POSITIVE_INFINITY
                        ? "no usual size of unit"
                        : String.format(Locale.ROOT, "%.1f tons", rightTons);
        return String.format(
                Locale.ROOT,
                "%d findings, gravest: %s. Load asks for %s, the ducts carry %.1f tons. Start with: %s.",
                findings.size(),
                findings.get(0).title(),
                right,
                carriedTons,
                r.title());
    }

    @Override
    public String toString() {
        return summary();
    }
}
