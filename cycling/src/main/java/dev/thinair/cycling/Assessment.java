package dev.thinair.cycling;

import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.RunFlow;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** Runs one system and says what is wrong with it. */
final class Assessment {

    /** Nominal sizes, tons: common practice, no source. */
    private static final double[] SIZES = {1, 1.5, 2, 2.5, 3, 3.5, 4, 5};

    /** Comfort limit: 1 degF above the thermostat's band. Common practice, no source. */
    static final double MISS_LIMIT = 1 / 1.8;

    /** Capacity a recommended size must have over the load at design conditions. */
    private static final double LEAST_CAPACITY = 0.95;

    private static final String MANUAL_S =
            "ANSI/ACCA 3 Manual S-2014, limits of total capacity over total load (from memory)";

    /** Capacity over load from which a unit is too large. */
    private static final double MOST_SINGLE = 1.15;

    private static final double MOST_STAGED = 1.20;
    private static final double FILTER_LIMIT = 0.20 * Trade.INCH_OF_WATER;
    private static final double FILTER_LOADING = 1.5;
    private static final double RETURN_LIMIT = 0.20 * Trade.INCH_OF_WATER;
    private static final double RETURN_SHARE = 0.5;
    private static final double HUMIDITY_LIMIT = 0.60;
    private static final int STARTS_LIMIT = 6;
    private static final double SHORT_RUN = 480;
    private static final double PENALTY_LIMIT = 0.10;

    final InstalledSystem system;

    /** The design day as found; null if the system does not run. */
    final DayRun day;

    /** Why it does not run; null if it does. */
    final String stopped;

    /** The same system with all free remedies done: what is left is the fault of size or ducts. */
    final InstalledSystem freed;

    /** The design day with all free remedies done; null if the system does not run even then. */
    final DayRun freedDay;

    final double loadSensible;
    final double loadTotal;
    final int loadHour;
    final double rightTons;
    final double installedTons;

    /** NaN if the system does not run even with the free remedies done. */
    final double capacityAtDesign;

    final List<Finding> findings = new ArrayList<>();

    Assessment(InstalledSystem system) {
        this.system = system;
        // Only these two say something about the system; bad input and failed searches are no
        // diagnosis and go on to the caller.
        DayRun run = null;
        String why = system.noAirflow;
        if (system.movesAir()) {
            try {
                run = system.runDay();
            } catch (NoBalanceException noState) {
                why = noState.getMessage();
            }
        }
        day = run;
        stopped = why;
        freed = freed(system);
        freedDay = freed == system ? run : attempt(freed);
        double[] load = system.peakLoad();
        loadSensible = load[0];
        loadTotal = load[0] + load[1];
        loadHour = (int) load[2];
        installedTons = system.ratedWatts() / Trade.TON;
        rightTons = rightSize();
        capacityAtDesign = freed.movesAir() ? capacityOrNone(freed) : Double.NaN;
        stopped();
        registers();
        filter();
        condenser();
        charge();
        if (system.movesAir()) {
            airflow();
        }
        if (freed.movesAir()) {
            ducts();
            returnSide();
        }
        if (day != null) {
            ice();
            missed();
            cycling();
            humidity();
        }
        if (freedDay != null) {
            size();
        }
        setpoint();
        findings.sort(
                Comparator.comparing((Finding f) -> f.severity(), Comparator.reverseOrder())
                        .thenComparing(f -> order(f)));
    }

    private static DayRun attempt(InstalledSystem s) {
        try {
            return s.movesAir() ? s.runDay() : null;
        } catch (NoBalanceException noState) {
            return null;
        }
    }

    /** Capacity at design conditions, NaN if there is no balance. */
    private double capacityOrNone(InstalledSystem s) {
        try {
            return capacity(s, s.unit(), s.dryAirMassFlow, new double[UnitResponse.RESULTS]);
        } catch (NoBalanceException none) {
            return Double.NaN;
        }
    }

    /** Indoor humidity in the warmest hour; at half saturation if the system does not run. */
    private double designHumidity() {
        return freedDay != null
                ? freedDay.clearCoil().record().endHumidityRatio(system.designHour())
                : IdealMoistAir.humidityRatioFromRelativeHumidity(
                        system.wantedKelvin(), 0.5, system.building.pressure());
    }

    static boolean anyRegisterShut(DuctSystem ducts) {
        for (String run : ducts.runNames()) {
            if (ducts.register(run).position() != Register.Position.OPEN) {
                return true;
            }
        }
        return false;
    }

    static boolean filterLoaded(DuctSystem ducts) {
        return ducts.filter().isPresent() && ducts.filter().get().loading() > 1;
    }

    static boolean condenserDirty(CoolingUnit unit) {
        UnitFaults f = unit.faults();
        return f.condenserConductance() < 1 || f.condenserAirflow() < 1;
    }

    static InstalledSystem freed(InstalledSystem system) {
        InstalledSystem s = system;
        if (anyRegisterShut(s.ducts())) {
            s = Remedy.openRegisters().apply(s);
        }
        if (filterLoaded(s.ducts())) {
            s = Remedy.cleanFilter().apply(s);
        }
        if (condenserDirty(s.unit())) {
            s = Remedy.washCondenser().apply(s);
        }
        return s;
    }

    /** Where a finding stands among those of its severity: cheap causes first. */
    private static int order(Finding f) {
        if (f instanceof Finding.DoesNotRun) {
            return -1;
        }
        if (f instanceof Finding.RegistersShut) {
            return 0;
        }
        if (f instanceof Finding.FilterLoaded) {
            return 1;
        }
        if (f instanceof Finding.CondenserDirty) {
            return 2;
        }
        if (f instanceof Finding.CoilIce) {
            return 3;
        }
        if (f instanceof Finding.SetpointMissed) {
            return 4;
        }
        if (f instanceof Finding.LowAirflow) {
            return 5;
        }
        if (f instanceof Finding.DuctsTooSmall) {
            return 6;
        }
        if (f instanceof Finding.ReturnRestricted) {
            return 7;
        }
        if (f instanceof Finding.SetpointTooLow) {
            return 8;
        }
        if (f instanceof Finding.UnitTooSmall) {
            return 9;
        }
        if (f instanceof Finding.UnitTooLarge) {
            return 10;
        }
        return f instanceof Finding.ShortCycling ? 11 : 12;
    }

    /** Total capacity in the rooms, sensible and latent, at design conditions and full stage. */
    private double capacity(InstalledSystem s, CoolingUnit unit, double flow, double[] out) {
        double w = designHumidity();
        s.atDesign(unit, flow, system.wantedKelvin(), w, out);
        return out[UnitResponse.SENSIBLE] + 2.5e6 * Math.max(0, out[UnitResponse.MOISTURE]);
    }

    /**
     * Smallest nominal size of this kind of unit that carries the load with the airflow it should
     * have.
     */
    private double rightSize() {
        double[] out = new double[UnitResponse.RESULTS];
        CoolingUnit kind = freed.unit().withFaults(UnitFaults.none());
        for (double tons : SIZES) {
            CoolingUnit unit = kind.withRatedCapacity(Units.watts(tons * Trade.TON));
            double flow =
                    system.limits().airflowDesign().value()
                            * tons
                            * Trade.CUBIC_FOOT_PER_MINUTE
                            * CoolingUnit.STANDARD_DENSITY;
            double total;
            try {
                total = capacity(freed, unit, flow, out);
            } catch (NoBalanceException none) {
                continue;
            }
            if (out[UnitResponse.SENSIBLE] >= LEAST_CAPACITY * loadSensible
                    && total >= LEAST_CAPACITY * loadTotal) {
                return tons;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Rated capacity that the freed ducts can carry at the low limit of airflow, tons. */
    double carriedTons() {
        return freed.dryAirMassFlow
                / CoolingUnit.STANDARD_DENSITY
                / Trade.CUBIC_FOOT_PER_MINUTE
                / system.limits().airflowLow().value();
    }

    private static Criterion criterion(Threshold t) {
        Quantity<?> q;
        switch (t.unit()) {
            case "K":
                q = fahrenheit(t.value());
                break;
            case "cfm/ton":
                q = Units.cubicFeetPerMinutePerTon(t.value());
                break;
            default:
                q = Units.ratio(t.value());
        }
        return new Criterion(t.name(), q, t.source());
    }

    private static Quantity<Temperature> fahrenheit(double kelvin) {
        return Units.fahrenheit(kelvin * 1.8 - 459.67);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void add(Finding f) {
        findings.add(f);
    }

    private void registers() {
        List<String> shut = new ArrayList<>();
        DuctSystem ducts = system.ducts();
        for (String run : ducts.runNames()) {
            if (ducts.register(run).position() != Register.Position.OPEN) {
                shut.add(run);
            }
        }
        if (shut.isEmpty()) {
            return;
        }
        InstalledSystem open = Remedy.openRegisters().apply(system);
        boolean known = open.movesAir() && system.movesAir();
        double gain =
                known ? open.dryAirMassFlow / system.dryAirMassFlow - 1 : open.movesAir() ? 1 : 0;
        boolean matters = gain >= 0.03;
        add(
                new Finding.RegistersShut(
                        new Finding.Statement(
                                say(
                                        "%d of %d registers and grilles are shut or partly shut",
                                        shut.size(), ducts.runNames().size()),
                                known
                                        ? say(
                                                "Shut registers do not save energy: they take air from the coil. Opening"
                                                        + " them brings back %.0f percent of the present"
                                                        + " airflow.",
                                                100 * gain)
                                        : open.movesAir()
                                                ? "Shut registers do not save energy: they take air from the coil. With all"
                                                        + " of them open the blower works within its"
                                                        + " table again."
                                                : "Shut registers do not save energy: they take air from the coil.",
                                known
                                        ? List.of(
                                                new Evidence(
                                                        "shut or partly shut",
                                                        Units.ratio(shut.size())),
                                                new Evidence(
                                                        "airflow regained",
                                                        Units.percent(100 * gain)))
                                        : List.of(
                                                new Evidence(
                                                        "shut or partly shut",
                                                        Units.ratio(shut.size()))),
                                new Criterion(
                                        "registers shut",
                                        Units.ratio(0),
                                        Criterion.COMMON_PRACTICE),
                                matters ? Severity.WARNING : Severity.ADVICE,
                                Confidence.HIGH,
                                Optional.empty()),
                        shut,
                        Units.percent(100 * gain)));
    }

    private void filter() {
        if (system.ducts().filter().isEmpty()) {
            return;
        }
        Filter filter = system.ducts().filter().get();
        if (!system.movesAir() || !freed.movesAir()) {
            filterWithoutAir(filter);
            return;
        }
        Airflow flow = system.airflow();
        double drop = Si.pascals(flow.filterDrop(), "filter drop");
        double density = Si.kilogramsPerCubicMetre(flow.density(), "density");
        double clean = Si.pascals(freed.airflow().filterDrop(), "clean filter drop");
        boolean loaded = filter.loading() >= FILTER_LOADING;
        boolean high = drop > FILTER_LIMIT;
        if (!loaded && !high) {
            return;
        }
        InstalledSystem cleaned = Remedy.cleanFilter().apply(system);
        if (!cleaned.movesAir()) {
            filterWithoutAir(filter);
            return;
        }
        double gain = cleaned.dryAirMassFlow / system.dryAirMassFlow - 1;
        String words =
                loaded
                        ? say(
                                "The filter drops %.2f in. of water; a clean one lets %.0f percent more air through.",
                                drop / Trade.INCH_OF_WATER, 100 * gain)
                        : say(
                                "Even clean, the filter drops %.2f in. of water at this airflow: it is too small"
                                        + " or too fine for the system.",
                                drop / Trade.INCH_OF_WATER);
        add(
                new Finding.FilterLoaded(
                        new Finding.Statement(
                                loaded
                                        ? "the filter is loaded"
                                        : "the filter takes too much pressure",
                                words,
                                List.of(
                                        new Evidence(
                                                "pressure drop of the filter",
                                                Units.inchesOfWater(drop / Trade.INCH_OF_WATER)),
                                        new Evidence(
                                                "resistance over a clean one",
                                                Units.ratio(filter.loading())),
                                        new Evidence(
                                                "airflow regained by cleaning",
                                                Units.percent(100 * gain)),
                                        new Evidence(
                                                "air density",
                                                Units.kilogramsPerCubicMetre(density))),
                                loaded
                                        ? new Criterion(
                                                "resistance over a clean filter",
                                                Units.ratio(FILTER_LOADING),
                                                Criterion.COMMON_PRACTICE)
                                        : new Criterion(
                                                "pressure drop of a filter",
                                                Units.inchesOfWater(
                                                        FILTER_LIMIT / Trade.INCH_OF_WATER),
                                                Criterion.COMMON_PRACTICE),
                                gain >= 0.03 || high ? Severity.WARNING : Severity.ADVICE,
                                Confidence.HIGH,
                                Optional.empty()),
                        Units.inchesOfWater(drop / Trade.INCH_OF_WATER),
                        Units.inchesOfWater(clean / Trade.INCH_OF_WATER)));
    }

    /** What can be said of a filter when the blower has no operating point. */
    private void filterWithoutAir(Filter filter) {
        if (filter.loading() < FILTER_LOADING) {
            return;
        }
        Quantity<javax.measure.quantity.Pressure> drop = filter.drop(system.unit().ratedAirflow());
        add(
                new Finding.FilterLoaded(
                        new Finding.Statement(
                                "the filter is loaded",
                                say(
                                        "The filter resists %.1f times as much as a clean one.",
                                        filter.loading()),
                                List.of(
                                        new Evidence(
                                                "resistance over a clean one",
                                                Units.ratio(filter.loading())),
                                        new Evidence(
                                                "pressure drop at the unit's rated airflow", drop)),
                                new Criterion(
                                        "resistance over a clean filter",
                                        Units.ratio(FILTER_LOADING),
                                        Criterion.COMMON_PRACTICE),
                                Severity.WARNING,
                                Confidence.HIGH,
                                Optional.empty()),
                        drop,
                        filter.cleaned().drop(system.unit().ratedAirflow())));
    }

    private void stopped() {
        if (stopped == null) {
            return;
        }
        boolean blower = !system.movesAir();
        int h = system.designHour();
        List<Evidence> evidence =
                blower
                        ? List.of(
                                new Evidence(
                                        "airflow the unit is rated with",
                                        system.unit().ratedAirflow()),
                                new Evidence(
                                        "runs with open registers and grilles",
                                        Units.ratio(
                                                system.ducts().runNames().stream()
                                                        .filter(
                                                                r ->
                                                                        system.ducts()
                                                                                        .register(r)
                                                                                        .position()
                                                                                == Register.Position
                                                                                        .OPEN)
                                                        .count())),
                                new Evidence(
                                        "filter's resistance over a clean one",
                                        Units.ratio(
                                                system.ducts()
                                                        .filter()
                                                        .map(Filter::loading)
                                                        .orElse(1.0))))
                        : List.of(
                                new Evidence("wanted setpoint", fahrenheit(system.wantedKelvin())),
                                new Evidence(
                                        "highest outdoor temperature of the day",
                                        fahrenheit(system.building.outdoorDryBulb(h))),
                                new Evidence(
                                        FindingWorkings.MASS_FLOW,
                                        Units.kilogramsPerSecond(system.dryAirMassFlow)),
                                new Evidence(
                                        FindingWorkings.RATED,
                                        Units.tonsOfRefrigeration(installedTons)));
        add(
                new Finding.DoesNotRun(
                        new Finding.Statement(
                                blower
                                        ? "the blower has no operating point on these ducts"
                                        : "the unit has no steady state on the design day",
                                (blower
                                                ? "On these ducts the blower would have to work outside its table, so no"
                                                        + " airflow can be stated and nothing that follows from it."
                                                : "Somewhere on the design day coil, compressor and condenser have no balance; a"
                                                        + " real unit would stop on its safety controls.")
                                        + " The model says: "
                                        + rounded(stopped)
                                        + ".",
                                evidence,
                                blower
                                        ? new Criterion(
                                                "share of operating points that must lie in the blower's table",
                                                Units.percent(100),
                                                "the blower's own table")
                                        : new Criterion(
                                                "share of the day on which the unit must have a balance",
                                                Units.percent(100),
                                                "balance of coil, compressor and condenser"),
                                Severity.SERIOUS,
                                Confidence.MEDIUM,
                                Optional.of(Remedy.UNIT_CAUTION)),
                        stopped));
    }

    /** Numbers of a message to four digits: enough to see where it stood. */
    private static String rounded(String message) {
        Matcher m = Pattern.compile("\\d+\\.\\d{3,}").matcher(message);
        return m.replaceAll(
                r ->
                        new BigDecimal(r.group())
                                .round(new MathContext(4))
                                .stripTrailingZeros()
                                .toPlainString());
    }

    private void charge() {
        UnitFaults f = system.unit().faults();
        if (f.evaporatorActive() == 1 && f.condenserActive() == 1) {
            return;
        }
        boolean low = f.evaporatorActive() < 1;
        // NaN where there is no airflow or no balance: then what is lost cannot be told.
        InstalledSystem right = Remedy.correctCharge().apply(system);
        double before = system.movesAir() ? capacityOrNone(system) : Double.NaN;
        double after = system.movesAir() ? capacityOrNone(right) : Double.NaN;
        double share = 1 - before / after;
        List<Evidence> evidence = new ArrayList<>();
        evidence.add(
                new Evidence(
                        low ? "part of the evaporator fed" : "part of the condenser not flooded",
                        Units.percent(100 * (low ? f.evaporatorActive() : f.condenserActive()))));
        boolean told = share == share;
        if (told) {
            evidence.add(new Evidence("capacity lost", Units.percent(100 * share)));
        }
        boolean stops = before != before && after == after;
        add(
                new Finding.ChargeOff(
                        new Finding.Statement(
                                low
                                        ? "the refrigerant charge is low"
                                        : "the refrigerant charge is too high",
                                (low
                                                ? "Part of the evaporator gets no liquid: it cools less, and what is fed runs"
                                                        + " colder. Refrigerant that is missing has leaked out somewhere."
                                                : "Liquid backs up in the condenser: the pressure rises and the power with it.")
                                        + (stops
                                                ? " At design conditions the unit has no balance with this"
                                                        + " charge; with the right one it has."
                                                : ""),
                                evidence,
                                new Criterion(
                                        "part of the coil that should be active",
                                        Units.percent(100),
                                        Criterion.COMMON_PRACTICE),
                                share <= 0.05 ? Severity.ADVICE : Severity.WARNING,
                                Confidence.LOW,
                                Optional.of(Remedy.UNIT_CAUTION)),
                        told ? Optional.of(Units.watts(after - before)) : Optional.empty()));
    }

    private void condenser() {
        if (!condenserDirty(system.unit())) {
            return;
        }
        double[] dirty = new double[UnitResponse.RESULTS];
        double[] clean = new double[UnitResponse.RESULTS];
        InstalledSystem washed = Remedy.washCondenser().apply(system);
        if (!system.movesAir()) {
            condenserWithoutNumbers();
            return;
        }
        double before;
        double after;
        try {
            before = capacity(system, system.unit(), system.dryAirMassFlow, dirty);
            after = capacity(washed, washed.unit(), washed.dryAirMassFlow, clean);
        } catch (NoBalanceException none) {
            condenserWithoutNumbers();
            return;
        }
        double lost = after - before;
        double wasted = dirty[UnitResponse.POWER] - clean[UnitResponse.POWER];
        double share = lost / after;
        add(
                new Finding.CondenserDirty(
                        new Finding.Statement(
                                "the condenser is dirty",
                                say(
                                        "Dirt on the outdoor coil costs %.0f percent of the capacity and %.0f W more"
                                                + " power on the design day.",
                                        100 * share, wasted),
                                List.of(
                                        new Evidence(
                                                "capacity lost",
                                                Units.btuPerHour(lost * Trade.BTU_PER_WATT_HOUR)),
                                        new Evidence("extra power", Units.watts(wasted)),
                                        new Evidence(
                                                "conductance left",
                                                Units.percent(
                                                        100
                                                                * system.unit()
                                                                        .faults()
                                                                        .condenserConductance()))),
                                new Criterion(
                                        "part of the capacity lost",
                                        Units.percent(5),
                                        Criterion.COMMON_PRACTICE),
                                share > 0.05 ? Severity.WARNING : Severity.ADVICE,
                                Confidence.MEDIUM,
                                Remedy.washCondenser().caution()),
                        Optional.of(Units.btuPerHour(lost * Trade.BTU_PER_WATT_HOUR)),
                        Optional.of(Units.watts(wasted))));
    }

    private void condenserWithoutNumbers() {
        add(
                new Finding.CondenserDirty(
                        new Finding.Statement(
                                "the condenser is dirty",
                                "Dirt on the outdoor coil raises the pressure the compressor works against.",
                                List.of(
                                        new Evidence(
                                                "conductance left",
                                                Units.percent(
                                                        100
                                                                * system.unit()
                                                                        .faults()
                                                                        .condenserConductance()))),
                                new Criterion(
                                        "conductance of a clean condenser",
                                        Units.percent(100),
                                        Criterion.COMMON_PRACTICE),
                                Severity.WARNING,
                                Confidence.MEDIUM,
                                Remedy.washCondenser().caution()),
                        Optional.empty(),
                        Optional.empty()));
    }

    private void airflow() {
        double standard =
                system.dryAirMassFlow
                        / CoolingUnit.STANDARD_DENSITY
                        / Trade.CUBIC_FOOT_PER_MINUTE
                        / installedTons;
        double actual =
                system.airflow().cubicMetresPerSecond()
                        / Trade.CUBIC_FOOT_PER_MINUTE
                        / installedTons;
        UnitLimits limits = system.limits();
        Threshold t;
        Severity severity;
        if (standard < limits.airflowSerious().value()) {
            t = limits.airflowSerious();
            severity = Severity.SERIOUS;
        } else if (standard < limits.airflowLow().value()) {
            t = limits.airflowLow();
            severity = Severity.WARNING;
        } else if (standard < 0.95 * limits.airflowDesign().value()) {
            // A twentieth less is within what field instruments tell apart.
            t = limits.airflowDesign();
            severity = Severity.NOTE;
        } else {
            return;
        }
        add(
                new Finding.LowAirflow(
                        new Finding.Statement(
                                say(
                                        "too little air: %.0f cfm per ton, which weighs what %.0f cfm of standard air"
                                                + " weighs",
                                        actual, standard),
                                "The coil feels the mass of the air and not its volume. Too little of it makes"
                                        + " the coil cold, costs capacity, and in the end makes ice.",
                                List.of(
                                        new Evidence(
                                                "standard airflow per ton",
                                                Units.cubicFeetPerMinutePerTon(standard)),
                                        new Evidence(
                                                "actual airflow per ton",
                                                Units.cubicFeetPerMinutePerTon(actual)),
                                        new Evidence(
                                                "airflow",
                                                Units.cubicFeetPerMinute(actual * installedTons)),
                                        new Evidence(
                                                FindingWorkings.MASS_FLOW,
                                                Units.kilogramsPerSecond(system.dryAirMassFlow)),
                                        new Evidence(
                                                FindingWorkings.RATED,
                                                Units.tonsOfRefrigeration(installedTons)),
                                        new Evidence(
                                                "external static pressure",
                                                Units.inchesOfWater(
                                                        Si.pascals(
                                                                        system.airflow()
                                                                                .externalStaticPressure(),
                                                                        "external static pressure")
                                                                / Trade.INCH_OF_WATER))),
                                criterion(t),
                                severity,
                                Confidence.MEDIUM,
                                Optional.empty()),
                        Units.cubicFeetPerMinutePerTon(actual),
                        Units.cubicFeetPerMinutePerTon(standard)));
    }

    private void ice() {
        if (!day.ran()) {
            return;
        }
        RunRecord r = day.clearCoil().record();
        UnitLimits limits = system.limits();
        boolean freezes = r.minimumCoil() <= limits.icing().value();
        boolean near = r.minimumSuction() <= limits.suctionWarning().value();
        if (!freezes && !near) {
            return;
        }
        CoilIcing icing = day.icing().orElse(null);
        boolean chokes = icing != null && icing.chokes();
        List<Evidence> evidence = new ArrayList<>();
        evidence.add(
                new Evidence(
                        "lowest coil surface while clear of ice", fahrenheit(r.minimumCoil())));
        evidence.add(
                new Evidence(
                        "lowest saturated suction while clear of ice",
                        fahrenheit(r.minimumSuction())));
        if (icing != null) {
            evidence.add(new Evidence("most ice on the coil", icing.mostIce()));
            evidence.add(new Evidence("airflow left under the ice at worst", icing.leastAirflow()));
        }
        int h = system.designHour();
        double wanted = system.wantedKelvin();
        double begins;
        try {
            begins =
                    system.unit()
                            .icingMassFlow(
                                    Units.kelvins(wanted),
                                    Units.kilogramsPerKilogram(
                                            // A house that stays too warm may hold more water than
                                            // air at the wanted setpoint can.
                                            Math.min(
                                                    r.endHumidityRatio(h),
                                                    IdealMoistAir.saturationHumidityRatio(
                                                            wanted, system.building.pressure()))),
                                    Units.kelvins(system.building.outdoorDryBulb(h)),
                                    system.pressure());
        } catch (NoBalanceException noneAtSomeAirflow) {
            begins = Double.NaN;
        }
        if (begins > 0 && begins < Double.POSITIVE_INFINITY) {
            double per =
                    begins
                            / CoolingUnit.STANDARD_DENSITY
                            / Trade.CUBIC_FOOT_PER_MINUTE
                            / installedTons;
            evidence.add(
                    new Evidence(
                            "standard airflow per ton at which ice begins in the design hour",
                            Units.cubicFeetPerMinutePerTon(per)));
        }
        String title;
        String words;
        if (chokes) {
            title = "the coil ices up";
            words =
                    say(
                            "The coil's surface is below freezing, and what condenses stays on it as ice. On a"
                                    + " design day begun with a clear coil, ice takes more than a tenth of the"
                                    + " airflow from %d:00 on and leaves %.0f percent of it at worst. Such a"
                                    + " day cannot be kept up; liquid refrigerant can reach and ruin the"
                                    + " compressor.",
                            icing.chokedFrom().getAsInt(), 100 * icing.leastShare());
        } else if (freezes && icing != null) {
            title = "the coil gathers ice and thaws again";
            words =
                    "The coil's surface falls below freezing in some runs. On the design day each rest thaws it"
                            + " in time, by a mild model: a real coil ices sooner. A longer run, or more"
                            + " moisture in the house, and the ice stays.";
        } else if (freezes) {
            title = "the coil is below freezing, in air too dry to ice it";
            words =
                    "The coil's surface falls below freezing, but on the design day the air in the house is too"
                            + " dry to leave water on it. More people, cooking or a wet spell, and it ices.";
        } else {
            title = "the coil is close to icing";
            words =
                    "The refrigerant in the coil falls below freezing while the surface stays just above: a"
                            + " little less air or a cooler night and the coil ices.";
        }
        add(
                new Finding.CoilIce(
                        new Finding.Statement(
                                title,
                                words,
                                evidence,
                                criterion(freezes ? limits.icing() : limits.suctionWarning()),
                                chokes ? Severity.SERIOUS : Severity.WARNING,
                                Confidence.MEDIUM,
                                Optional.of(
                                        (icing != null
                                                        ? "Where there is ice, switch the compressor off and let it thaw before anything"
                                                                + " else. "
                                                        : "")
                                                + "Find the cause in the air first. Charge and refrigerant pressures are"
                                                + " work for licensed people.")),
                        fahrenheit(r.minimumCoil()),
                        fahrenheit(r.minimumSuction())));
    }

    private void ducts() {
        double carries = carriedTons();
        double shortage = installedTons - carries;
        if (shortage <= 0.005) {
            return;
        }
        boolean replace = shortage >= 1;
        add(
                new Finding.DuctsTooSmall(
                        new Finding.Statement(
                                say(
                                        "the ducts carry %.1f tons, the unit has %.1f",
                                        carries, installedTons),
                                "Even with open registers and a clean filter the ducts carry "
                                        + (replace
                                                ? "at least a ton less than the unit needs: a smaller unit, or new ducts."
                                                : "less than the unit needs: " + mending()),
                                List.of(
                                        new Evidence(
                                                FindingWorkings.CARRIES,
                                                Units.tonsOfRefrigeration(carries)),
                                        new Evidence(
                                                FindingWorkings.INSTALLED,
                                                Units.tonsOfRefrigeration(installedTons)),
                                        new Evidence(
                                                "shortage", Units.tonsOfRefrigeration(shortage))),
                                new Criterion(
                                        "standard airflow per ton, and a ton as the border between added runs and"
                                                + " replacement",
                                        Units.cubicFeetPerMinutePerTon(
                                                system.limits().airflowLow().value()),
                                        Criterion.COMMON_PRACTICE),
                                replace ? Severity.SERIOUS : Severity.WARNING,
                                Confidence.MEDIUM,
                                Optional.of(Remedy.DUCT_CAUTION)),
                        Units.tonsOfRefrigeration(carries),
                        Units.tonsOfRefrigeration(installedTons)));
    }

    /** What closes a gap of less than a ton, found by trying. */
    private String mending() {
        int runs =
                Review.runsNeeded(
                        freed,
                        roomShortOfAir(),
                        Si.cubicMetresPerSecondPerWatt(
                                Units.cubicFeetPerMinutePerTon(
                                        system.limits().airflowLow().value()),
                                "limit"));
        if (runs == 0) {
            return "added supply runs alone do not close the gap, because the blower and what all the air"
                    + " passes hold it back; a unit of the size that fits needs less.";
        }
        return runs <= 2
                ? "one or two added runs close the gap."
                : runs + " added runs would close the gap.";
    }

    double returnDrop() {
        return -Si.pascals(
                freed.airflow().pressureAt(DuctSystem.RETURN_PLENUM),
                "pressure in the return plenum");
    }

    private void returnSide() {
        double drop = returnDrop();
        double total =
                Si.pascals(freed.airflow().externalStaticPressure(), "external static pressure");
        if (!(drop > RETURN_LIMIT && drop > RETURN_SHARE * total)) {
            return;
        }
        add(
                new Finding.ReturnRestricted(
                        new Finding.Statement(
                                "the return side is too tight",
                                say(
                                        "The return takes %.2f in. of water, %.0f percent of the blower's external"
                                                + " static pressure.",
                                        drop / Trade.INCH_OF_WATER, 100 * drop / total),
                                List.of(
                                        new Evidence(
                                                "return-side pressure",
                                                Units.inchesOfWater(drop / Trade.INCH_OF_WATER)),
                                        new Evidence(
                                                "share of the external static",
                                                Units.percent(100 * drop / total))),
                                new Criterion(
                                        "return-side pressure, when it is more than half of the external static",
                                        Units.inchesOfWater(RETURN_LIMIT / Trade.INCH_OF_WATER),
                                        Criterion.COMMON_PRACTICE),
                                Severity.WARNING,
                                Confidence.MEDIUM,
                                Optional.of(Remedy.DUCT_CAUTION)),
                        Units.inchesOfWater(drop / Trade.INCH_OF_WATER)));
    }

    static double miss(DayRun day) {
        return Si.kelvinDifference(day.miss(), "miss");
    }

    private void missed() {
        double miss = miss(day);
        if (miss <= MISS_LIMIT) {
            return;
        }
        add(
                new Finding.SetpointMissed(
                        new Finding.Statement(
                                say(
                                        "on the design day the house gets %.1f degF too warm",
                                        1.8 * miss),
                                say(
                                                "At %.0f degF wanted, the house reaches %.1f degF although the unit runs %.1f"
                                                        + " hours.",
                                                system.wantedKelvin() * 1.8 - 459.67,
                                                Si.kelvins(
                                                                        day
                                                                                .maximumIndoorTemperature(),
                                                                        "highest")
                                                                * 1.8
                                                        - 459.67,
                                                day.record().totalOnSeconds() / 3600)
                                        + (day.icing().isEmpty()
                                                ? ""
                                                : say(
                                                        " That is with ice on the coil and nobody there to thaw it; with a coil"
                                                                + " kept clear it would be %.1f degF too"
                                                                + " warm.",
                                                        1.8 * miss(day.clearCoil()))),
                                List.of(
                                        new Evidence(
                                                "highest above the band",
                                                Units.fahrenheitDifference(1.8 * miss)),
                                        new Evidence("hours on", day.hoursOn()),
                                        new Evidence("load not met", day.unmetLoad())),
                                new Criterion(
                                        "temperature above the thermostat's band",
                                        Units.fahrenheitDifference(1),
                                        Criterion.COMMON_PRACTICE),
                                miss > 2 * MISS_LIMIT ? Severity.SERIOUS : Severity.WARNING,
                                Confidence.HIGH,
                                Optional.empty()),
                        Units.fahrenheitDifference(1.8 * miss),
                        day.degreeHoursAboveSetpoint()));
    }

    private void size() {
        double most = system.unit().staging() == Staging.SINGLE ? MOST_SINGLE : MOST_STAGED;
        double ratio = capacityAtDesign / loadTotal;
        List<Evidence> evidence = new ArrayList<>();
        evidence.addAll(
                List.of(
                        new Evidence(
                                FindingWorkings.CAPACITY,
                                Units.tonsOfRefrigeration(capacityAtDesign / Trade.TON)),
                        new Evidence(
                                FindingWorkings.LOAD,
                                Units.tonsOfRefrigeration(loadTotal / Trade.TON)),
                        new Evidence("capacity over load", Units.ratio(ratio)),
                        new Evidence(
                                "nominal size installed",
                                Units.tonsOfRefrigeration(installedTons))));
        if (rightTons < Double.POSITIVE_INFINITY) {
            evidence.add(
                    new Evidence("nominal size that fits", Units.tonsOfRefrigeration(rightTons)));
        }
        double excess = installedTons - rightTons;
        if (excess >= 0.45 && ratio > most) {
            boolean replace = excess >= 0.95;
            add(
                    new Finding.UnitTooLarge(
                            new Finding.Statement(
                                    say("the unit is %.1f tons larger than the load needs", excess),
                                    replace
                                            ? "It cools the house in short bursts, wears itself out by starting, and asks the"
                                                    + " ducts for air they need not carry. When it is replaced, take the size"
                                                    + " that fits."
                                            : "It is one size up. That alone is no reason to replace it; see that it gets the"
                                                    + " air it needs, by one or two added runs where they"
                                                    + " are enough.",
                                    evidence,
                                    new Criterion(
                                            "capacity over load", Units.ratio(most), MANUAL_S),
                                    replace ? Severity.WARNING : Severity.NOTE,
                                    Confidence.MEDIUM,
                                    Optional.empty()),
                            Units.tonsOfRefrigeration(excess),
                            Units.tonsOfRefrigeration(rightTons)));
        } else if (excess <= -0.45 && miss(freedDay) > MISS_LIMIT) {
            boolean none = rightTons == Double.POSITIVE_INFINITY;
            add(
                    new Finding.UnitTooSmall(
                            new Finding.Statement(
                                    none
                                            ? "no usual size of unit holds the wanted setpoint"
                                            : say(
                                                    "the unit is %.1f tons smaller than the wanted setpoint needs",
                                                    -excess),
                                    "Even with all free things done the unit runs without a stop and the house stays"
                                            + " too warm on the design day.",
                                    evidence,
                                    new Criterion(
                                            "capacity over load", Units.ratio(0.90), MANUAL_S),
                                    Severity.WARNING,
                                    Confidence.MEDIUM,
                                    Optional.empty()),
                            Units.fahrenheitDifference(1.8 * miss(freedDay)),
                            Units.tonsOfRefrigeration(none ? SIZES[SIZES.length - 1] : rightTons)));
        }
    }

    private void setpoint() {
        UnitLimits limits = system.limits();
        double wanted = system.wantedKelvin();
        boolean floor = wanted < limits.returnAirFloor().value() - 1e-9;
        boolean rule = wanted < limits.setupReturnAir().value() - 1e-9;
        double coil =
                freedDay != null && freedDay.ran()
                        ? freedDay.clearCoil().record().minimumCoil()
                        : Double.NaN;
        boolean freezes = coil <= limits.icing().value();
        if (!floor && !(rule && freezes)) {
            return;
        }
        Threshold t = floor ? limits.returnAirFloor() : limits.setupReturnAir();
        List<Evidence> evidence = new ArrayList<>();
        evidence.add(new Evidence("wanted setpoint", fahrenheit(wanted)));
        if (coil == coil) {
            evidence.add(
                    new Evidence(
                            "lowest coil surface at that setpoint, free things done",
                            fahrenheit(coil)));
        }
        add(
                new Finding.SetpointTooLow(
                        new Finding.Statement(
                                say(
                                        "%.0f degF is lower than this kind of unit should be run at",
                                        wanted * 1.8 - 459.67),
                                "Air this cool brings the coil to freezing sooner or later. A usual air conditioner is"
                                        + " not a cold room's machine; ask for a setpoint above the floor, or for"
                                        + " equipment made for it.",
                                evidence,
                                criterion(t),
                                freezes ? Severity.SERIOUS : Severity.WARNING,
                                freezes ? Confidence.HIGH : Confidence.LOW,
                                Optional.of(Remedy.UNIT_CAUTION)),
                        fahrenheit(wanted),
                        fahrenheit(t.value())));
    }

    private void cycling() {
        RunRecord r = day.record();
        int starts = r.totalStarts();
        if (starts < 2) {
            return;
        }
        double mean = r.totalOnSeconds() / starts;
        double penalty = r.startUpLoss();
        int busiest = day.startsInBusiestHour();
        if (!(mean < SHORT_RUN && (busiest > STARTS_LIMIT || penalty > PENALTY_LIMIT))) {
            return;
        }
        add(
                new Finding.ShortCycling(
                        new Finding.Statement(
                                say(
                                        "the unit short-cycles: %d starts on the design day, %.1f minutes each",
                                        starts, mean / 60),
                                say(
                                        "Each start runs for a minute or two before it cools in full. That costs %.1f"
                                                + " percent of its heat here, dries the air less, and wears the compressor.",
                                        100 * penalty),
                                List.of(
                                        new Evidence(
                                                "starts of the design day", Units.ratio(starts)),
                                        new Evidence(
                                                "starts in the busiest hour", Units.ratio(busiest)),
                                        new Evidence("mean run", Units.minutes(mean / 60)),
                                        new Evidence(
                                                FindingWorkings.DELIVERED,
                                                Units.kilowattHours(r.totalDelivered() / 3.6e6)),
                                        new Evidence(
                                                FindingWorkings.STEADY,
                                                Units.kilowattHours(r.totalSteady() / 3.6e6)),
                                        new Evidence(
                                                "heat lost to starts",
                                                Units.percent(100 * penalty))),
                                new Criterion(
                                        "mean run",
                                        Units.minutes(SHORT_RUN / 60),
                                        Criterion.COMMON_PRACTICE),
                                penalty > 2 * PENALTY_LIMIT ? Severity.WARNING : Severity.ADVICE,
                                Confidence.MEDIUM,
                                Optional.empty()),
                        busiest,
                        Units.minutes(mean / 60),
                        Units.percent(100 * penalty)));
    }

    private void humidity() {
        double peak = Si.ratio(day.peakRelativeHumidity(), "relative humidity");
        if (peak <= HUMIDITY_LIMIT) {
            return;
        }
        boolean fan = system.thermostat().fanMode() == FanMode.CONTINUOUS;
        add(
                new Finding.HumidityHigh(
                        new Finding.Statement(
                                say("indoor humidity reaches %.0f percent", 100 * peak),
                                fan
                                        ? "The fan runs on while the compressor rests and blows the coil's water back into"
                                                + " the house."
                                        : "The unit does not run long enough, or its coil is not cold enough, to take the"
                                                + " water out.",
                                List.of(
                                        new Evidence(
                                                "highest relative humidity",
                                                Units.percent(100 * peak)),
                                        new Evidence(
                                                "mean relative humidity",
                                                day.meanRelativeHumidity())),
                                new Criterion(
                                        "indoor relative humidity",
                                        Units.percent(100 * HUMIDITY_LIMIT),
                                        Criterion.COMMON_PRACTICE),
                                fan ? Severity.WARNING : Severity.ADVICE,
                                Confidence.LOW,
                                Optional.empty()),
                        Units.percent(100 * peak)));
    }

    int grave() {
        int count = 0;
        for (Finding f : findings) {
            if (f.severity().compareTo(Severity.WARNING) >= 0) {
                count++;
            }
        }
        return count;
    }

    boolean has(Class<? extends Finding> kind) {
        return findings.stream().anyMatch(kind::isInstance);
    }

    /** Room whose peak load has the least air for it. */
    String roomShortOfAir() {
        double[] peaks = system.building.roomPeaks(system.wantedKelvin());
        List<String> rooms = system.rooms();
        double[] supply = new double[rooms.size()];
        List<RunFlow> runs = freed.movesAir() ? freed.airflow().runs() : List.of();
        for (RunFlow run : runs) {
            if (run.isSupply()) {
                supply[rooms.indexOf(run.room())] += Math.max(0, run.kilogramsPerSecond());
            }
        }
        int best = 0;
        double worst = -1;
        double all = 0;
        for (double p : peaks) {
            all += Math.max(0, p);
        }
        for (int i = 0; i < peaks.length; i++) {
            if (peaks[i] < 0.05 * all) {
                continue;
            }
            double ratio = peaks[i] / Math.max(1e-6, supply[i]);
            if (ratio > worst) {
                worst = ratio;
                best = i;
            }
        }
        return rooms.get(best);
    }

    /** Room that the strongest return draws from. */
    String returnRoom() {
        String best = system.rooms().get(0);
        double most = -1;
        List<RunFlow> runs = freed.movesAir() ? freed.airflow().runs() : List.of();
        for (RunFlow run : runs) {
            if (!run.isSupply() && run.kilogramsPerSecond() > most) {
                most = run.kilogramsPerSecond();
                best = run.room();
            }
        }
        return best;
    }

    String describe() {
        return QuantityText.format(system.standardAirflowPerTon());
    }
}
