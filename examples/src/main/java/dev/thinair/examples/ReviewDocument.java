package dev.thinair.examples;

import dev.thinair.altitude.kernel.AirFactors;
import dev.thinair.cycling.CoilIcing;
import dev.thinair.cycling.Comparison;
import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.DayRun;
import dev.thinair.cycling.Evidence;
import dev.thinair.cycling.Finding;
import dev.thinair.cycling.Furnace;
import dev.thinair.cycling.HeatPump;
import dev.thinair.cycling.InputRule;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.Review;
import dev.thinair.cycling.SeasonRun;
import dev.thinair.cycling.UnitState;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.RunFlow;
import dev.thinair.examples.job.Job;
import dev.thinair.examples.report.Document;
import dev.thinair.examples.report.Drawing;
import dev.thinair.examples.report.Show;
import dev.thinair.loads.Component;
import dev.thinair.loads.DesignLoad;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/** Lays the study out as a document, in the order in which a customer asks. */
final class ReviewDocument {
    /** A miss that nobody feels, K: about half a degree Fahrenheit. */
    private static final double HELD = 0.3;

    private final Study study;
    private final Job job;
    private final Show show;
    private final Document.Builder out = new Document.Builder();

    private ReviewDocument(Study study) {
        this.study = study;
        this.job = study.job;
        this.show = new Show(job.inchPoundFirst());
    }

    static Document of(Study study) {
        return new ReviewDocument(study).build();
    }

    private Document build() {
        if (study.review.operates()) {
            answer();
            findings();
            air();
            loads();
            airflow();
            rooms();
            bigger();
            moreDuct();
            size();
            day();
        } else {
            stopped();
            findings();
            loads();
        }
        remedies();
        cautions();
        method();
        return out.build(
                job.title(),
                "Service call at "
                        + job.site().name()
                        + ", "
                        + show.length(job.site().elevation())
                        + " above sea level; cooling unit: "
                        + job.unit().name());
    }

    private void answer() {
        Airflow found = study.asFound.airflow();
        DayRun day = study.review.day();
        List<String> s = new ArrayList<>();
        s.add(
                "The blower moves "
                        + show.flow(found.actual())
                        + " through these ducts. On this site that weighs as much"
                        + " as "
                        + show.flow(found.standard())
                        + " of standard air: "
                        + show.perTon(study.asFound.standardAirflowPerTon())
                        + " of standard air for the installed "
                        + show.tons(job.unit().ratedCapacity())
                        + ", where 350 to 400 cfm/ton are usual.");
        s.add(held("As found, on the design day", job.wishes().cooling(), day));
        Comparison.Row first = study.review.recommended();
        day.icing()
                .filter(CoilIcing::chokes)
                .ifPresent(
                        ice ->
                                s.add(
                                        "These are the numbers of a day begun with a clear coil and left to itself, on which ice takes"
                                                + " over: the coil's surface falls to "
                                                + show.temperature(
                                                        study.review
                                                                .comparison()
                                                                .asFound()
                                                                .minimumCoilTemperature())
                                                + ", from "
                                                + ice.chokedFrom().getAsInt()
                                                + ":00 ice takes more than a tenth of the airflow, and at worst it"
                                                + " leaves some "
                                                + Show.number(
                                                        Show.in(ice.leastAirflow(), Units.PERCENT),
                                                        0)
                                                + " % of it. Running longer only adds ice: with the coil kept clear,"
                                                + " the same unit would miss by "
                                                + show.difference(ice.clearCoil().miss())
                                                + "."));
        shortest()
                .ifPresent(
                        r ->
                                s.add(
                                        "The "
                                                + r.room()
                                                + " is short of air: in its worst hour it needs "
                                                + show.flow(r.need())
                                                + " and gets "
                                                + show.flow(r.found())
                                                + "."));
        if (!study.review.healthy() && first != study.review.comparison().asFound()) {
            s.add(
                    "Start here: "
                            + first.title()
                            + ". That brings "
                            + show.perTon(first.standardAirflowPerTon())
                            + " of standard air, a coil no colder than "
                            + show.temperature(first.minimumCoilTemperature())
                            + ", and "
                            + show.heat(first.capacity())
                            + " to the rooms in the hottest hour instead of "
                            + show.heat(study.review.comparison().asFound().capacity())
                            + ".");
        }
        InstalledSystem bigger = study.withCapacity(study.asFound, study.biggerCapacity());
        UnitState now = Study.state(study.asFound);
        UnitState then = Study.state(bigger);
        s.add(
                "A unit one ton bigger on the same ducts would take "
                        + show.heat(then.sensibleCapacity())
                        + " of sensible heat out of the air instead of "
                        + show.heat(now.sensibleCapacity())
                        + ", with a coil at "
                        + show.temperature(then.apparatusDewPoint())
                        + " instead of "
                        + show.temperature(now.apparatusDewPoint())
                        + ".");
        s.add(
                study.review
                        .rightCapacity()
                        .map(
                                c ->
                                        "The right size for this house here is "
                                                + show.tons(c)
                                                + "; with registers open and a clean filter the ducts carry "
                                                + show.tons(study.review.ductsCarry())
                                                + ".")
                        .orElse("No usual size carries this load; see the remedies."));
        out.section("The short answer");
        out.text("The customer says: \u201c" + job.complaint() + "\u201d");
        out.add(new Document.Answer(s));
    }

    /** The short answer when the system as found has no state in which it runs. */
    private void stopped() {
        List<String> s = new ArrayList<>();
        s.add(
                "As described, this system does not run: "
                        + study.review.findings().get(0).title()
                        + ". No airflow, coil temperature or cost can be stated for it.");
        if (study.review.comparison().rows().isEmpty()) {
            s.add("None of the remedies that were tried makes it run.");
        } else {
            Comparison.Row first = study.review.recommended();
            s.add(
                    "Start here: "
                            + first.title()
                            + ". That brings "
                            + show.perTon(first.standardAirflowPerTon())
                            + " of standard air, a coil no colder than "
                            + show.temperature(first.minimumCoilTemperature())
                            + ", and "
                            + show.heat(first.capacity())
                            + " to the rooms in the hottest hour.");
        }
        study.review
                .rightCapacity()
                .ifPresent(
                        c -> s.add("The right size for this house here is " + show.tons(c) + "."));
        s.add("Check what was entered first: a blower table that ends too early looks the same.");
        out.section("The short answer");
        out.text("The customer says: \u201c" + job.complaint() + "\u201d");
        out.add(new Document.Answer(s));
    }

    private String held(String what, Quantity<Temperature> setpoint, DayRun day) {
        double miss = Show.in(day.miss(), Units.KELVIN_DIFFERENCE);
        String run =
                what
                        + " the unit runs "
                        + show.hours(day.hoursOn())
                        + " in "
                        + day.starts()
                        + " starts (longest run "
                        + show.span(day.longestRun())
                        + ") ";
        return miss < HELD
                ? run + "and holds " + show.temperature(setpoint) + "."
                : run
                        + "and misses "
                        + show.temperature(setpoint)
                        + " by up to "
                        + show.difference(day.miss())
                        + "; the house reaches "
                        + show.temperature(day.maximumIndoorTemperature())
                        + ".";
    }

    private void findings() {
        out.section("What was found");
        if (study.review.healthy()) {
            out.text("Nothing is wrong: the system holds what the customer wants.");
            return;
        }
        out.text("Most important first; among equals the cheapest cause first.");
        int rank = 1;
        for (Finding f : study.review.findings()) {
            List<String> evidence = new ArrayList<>();
            for (Evidence e : f.evidence()) {
                evidence.add(e.name() + ": " + show.any(e.value()));
            }
            out.add(
                    new Document.Found(
                            rank++,
                            f.severity().name().toLowerCase(Locale.ROOT),
                            sentence(f.title()),
                            f.plainWords(),
                            evidence,
                            f.criterion().name()
                                    + ": "
                                    + show.any(f.criterion().value())
                                    + " ("
                                    + f.criterion().source()
                                    + ")",
                            f.caution().orElse("")));
        }
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void air() {
        double w = study.roomAir.humidityRatioNumber();
        double dry = Si.kilogramsPerCubicMetre(study.roomAir.density(), "density") / (1 + w);
        double here = AirFactors.sensibleInchPound(AirFactors.sensible(dry, w));
        double ratio = study.densityRatio();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("air pressure", show.airPressure(job.site().pressure())));
        rows.add(List.of("pressure over sea level's", Show.number(study.pressureRatio(), 3)));
        rows.add(List.of("density of the room air", show.density(study.roomAir.density())));
        rows.add(List.of("density over standard air's", Show.number(ratio, 3)));
        rows.add(
                List.of(
                        "sensible heat factor (1.08 at sea level)",
                        Show.number(here, 3)
                                + " BTU/h per cfm and °F ("
                                + Show.number(AirFactors.sensible(dry, w) / 1000, 3)
                                + " W per L/s and K)"));
        rows.add(
                List.of(
                        "actual airflow that carries what 400 standard cfm carries",
                        show.flow(Units.cubicFeetPerMinute(400 / ratio))));
        job.furnace()
                .ifPresent(
                        f -> {
                            Furnace rated = Furnace.of("furnace", f.input(), f.efficiency());
                            Furnace site =
                                    rated.at(job.site().elevation(), InputRule.FROM_SEA_LEVEL);
                            rows.add(
                                    List.of(
                                            "furnace output as rated at sea level",
                                            show.heat(rated.output())));
                            rows.add(
                                    List.of(
                                            "furnace output with the 4 percent per 1,000 ft rule from sea level",
                                            show.heat(site.output())));
                        });
        out.section("The air at this elevation");
        out.table("Site air, room air at the wanted setpoint", List.of("what", "value"), rows);
        Airflow here1 = study.asFound.airflow();
        Airflow there =
                job.ducts()
                        .solve(
                                CoolingUnit.STANDARD_DENSITY,
                                Si.pascalSeconds(study.roomAir.viscosity(), "viscosity"));
        double volume = ratioOf(here1.cubicMetresPerSecond(), there.cubicMetresPerSecond());
        double mass =
                ratioOf(
                        Si.kilogramsPerSecond(here1.mass(), ""),
                        Si.kilogramsPerSecond(there.mass(), ""));
        String moves =
                "The same blower on the same ducts would move "
                        + show.flow(there.actual())
                        + " with sea-level air; here it moves "
                        + show.flow(here1.actual());
        out.text(
                Math.abs(mass) < 0.015
                        ? moves + ": this site is as good as at sea level, and so is the air."
                        : moves
                                + ", "
                                + percentMore(volume)
                                + " in volume but "
                                + percentMore(mass)
                                + " in mass, and it is mass that carries heat.");
    }

    private static double ratioOf(double here, double there) {
        return here / there - 1;
    }

    private static String percentMore(double share) {
        long percent = Math.round(100 * share);
        return percent == 0
                ? "the same"
                : Math.abs(percent) + " % " + (percent < 0 ? "less" : "more");
    }

    private void loads() {
        out.section("Heat to be moved");
        Function<DesignLoad, List<String>> column =
                l ->
                        List.of(
                                show.heat(l.sensible(l.peakHour())),
                                show.heat(l.latent(l.peakHour())),
                                show.heat(l.peak()),
                                l.peakHour() + ":00");
        Job.Wishes w = job.wishes();
        out.add(
                byColumn(
                        "Cooling load on the design day (highest "
                                + show.temperature(job.coolingDay().dryBulb())
                                + " outdoors)",
                        List.of("sensible", "latent", "total", "worst hour (standard time)"),
                        List.of(
                                "wanted, " + show.temperature(w.cooling()),
                                "usual, " + show.temperature(w.usualCooling())),
                        List.of(
                                column.apply(study.coolingWanted),
                                column.apply(study.coolingUsual))));
        double more =
                Si.watts(study.coolingWanted.peak(), "") / Si.watts(study.coolingUsual.peak(), "")
                        - 1;
        out.text(
                "The colder setpoint adds "
                        + Show.number(100 * more, 0)
                        + " % to the worst hour's load, and takes capacity from the unit besides, because the air"
                        + " that enters the coil is colder.");
        List<List<String>> parts = new ArrayList<>();
        DesignLoad l = study.coolingWanted;
        for (Component c : Component.values()) {
            double watts = Si.watts(l.component(c, l.peakHour()), "component");
            if (Math.abs(watts) > 0.5) {
                parts.add(
                        List.of(
                                c.label(),
                                show.heat(l.component(c, l.peakHour())),
                                Show.number(100 * watts / Si.watts(l.sensible(l.peakHour()), ""), 0)
                                        + " %"));
            }
        }
        out.table(
                "Where the sensible load comes from in the worst hour, at the wanted setpoint",
                List.of("part", "heat", "share"),
                parts);
        double[] wanted = perHour(study.coolingWanted);
        double[] usual = perHour(study.coolingUsual);
        List<String> rows = new ArrayList<>();
        String unit = job.inchPoundFirst() ? "BTU/h" : "kW";
        for (int h = 0; h < 24; h++) {
            rows.add(
                    String.format(
                                    Locale.ROOT,
                                    job.inchPoundFirst()
                                            ? "%02d:00  wanted %6.0f  usual %6.0f "
                                            : "%02d:00  wanted %6.2f  usual %6.2f ",
                                    h,
                                    wanted[h],
                                    usual[h])
                            + unit);
        }
        out.add(
                new Document.Figure(
                        "Sensible cooling load, hour by hour, on the design day",
                        Drawing.day(
                                "Sensible cooling load over the design day at the wanted and at the usual setpoint",
                                unit,
                                List.of(
                                        new Drawing.Series("wanted setpoint", wanted),
                                        new Drawing.Series("usual setpoint", usual)),
                                Double.NaN,
                                "",
                                true),
                        rows));
        out.text(
                "Heating on the winter design day ("
                        + show.temperature(job.heatingDay().dryBulb())
                        + " outdoors): "
                        + show.heat(study.heatingWanted.peak())
                        + " at the wanted "
                        + show.temperature(w.heating())
                        + ", "
                        + show.heat(study.heatingUsual.peak())
                        + " at the usual "
                        + show.temperature(w.usualHeating())
                        + ".");
        job.heatPump().ifPresent(this::heatPump);
    }

    /** What the heat pump gives on the winter design day, up here. */
    private void heatPump(HeatPump pump) {
        Quantity<Temperature> cold = job.heatingDay().dryBulb();
        Quantity<Power> gives = pump.capacity(cold, job.site().pressure());
        double need = Si.watts(study.heatingWanted.peak(), "heating load");
        double rest = need - Si.watts(gives, "heating capacity");
        out.text(
                "The heat pump gives "
                        + show.heat(gives)
                        + " then, "
                        + Show.number(pump.coefficientOfPerformance(cold, job.site().pressure()), 1)
                        + " times the electricity it takes: "
                        + (rest > 0
                                ? show.heat(Units.watts(rest))
                                        + " short of the wanted setpoint, for backup heat to cover."
                                : "enough for the wanted setpoint."));
    }

    private double[] perHour(DesignLoad load) {
        double[] watts = load.sensibleWatts();
        double scale =
                1
                        / Si.watts(
                                job.inchPoundFirst() ? Units.btuPerHour(1) : Units.kilowatts(1),
                                "unit of heat");
        for (int h = 0; h < watts.length; h++) {
            watts[h] *= scale;
        }
        return watts;
    }

    private void airflow() {
        out.section("Air through the ducts");
        List<InstalledSystem> cases =
                List.of(study.asFound, study.opened, study.filtered, study.mended);
        List<String> names = List.of("as found", "registers open", "new filter", "both");
        List<String> measures =
                List.of(
                        "actual airflow",
                        "as standard air",
                        "mass of air",
                        "actual, each ton",
                        "standard, each ton",
                        "external static pressure",
                        "lost in the filter",
                        "blower power",
                        "coil surface, design hour",
                        "suction, design hour",
                        "ice, design hour");
        List<List<String>> columns = new ArrayList<>();
        for (InstalledSystem s : cases) {
            Airflow a = s.airflow();
            UnitState u = Study.state(s);
            columns.add(
                    List.of(
                            show.flow(a.actual()),
                            show.flow(a.standard()),
                            show.mass(a.mass()),
                            show.perTon(s.airflowPerTon()),
                            show.perTon(s.standardAirflowPerTon()),
                            show.staticPressure(a.externalStaticPressure()),
                            show.staticPressure(a.filterDrop()),
                            show.electricPower(a.blowerPower()),
                            show.temperature(u.apparatusDewPoint()),
                            show.temperature(u.saturatedSuctionTemperature()),
                            ice(u)));
        }
        out.add(
                byColumn(
                        "The same ducts four ways, with the present unit",
                        measures,
                        names,
                        columns));
        List<Drawing.Bar> bars = new ArrayList<>();
        List<String> rows = new ArrayList<>();
        Airflow found = study.asFound.airflow();
        Airflow mended = study.mended.airflow();
        boolean ip = job.inchPoundFirst();
        String unit = ip ? "cfm" : "L/s";
        for (RunFlow r : found.runs()) {
            if (!r.isSupply()) {
                continue;
            }
            double a = flow(r);
            double b = flow(mended.run(r.name()));
            String note =
                    switch (job.ducts().register(r.name()).position()) {
                        case SHUT -> "shut";
                        case PARTLY -> "partly";
                        default -> "";
                    };
            bars.add(new Drawing.Bar(r.name(), a, b, note));
            rows.add(
                    String.format(
                                    Locale.ROOT,
                                    "%-22s %4.0f -> %4.0f %s  %s",
                                    r.name(),
                                    a,
                                    b,
                                    unit,
                                    note)
                            .stripTrailing());
        }
        out.add(
                new Document.Figure(
                        "Actual airflow of each supply run, as found and with registers open and a new filter",
                        Drawing.bars(
                                "Airflow of each supply run as found and mended",
                                "as found",
                                "open, new filter",
                                unit,
                                bars),
                        rows));
        double gain =
                Si.cubicMetresPerSecond(study.opened.airflow().actual(), "")
                                / Si.cubicMetresPerSecond(found.actual(), "")
                        - 1;
        out.text(
                "Opening the registers raises the total by "
                        + Show.number(100 * gain, 1)
                        + " %: shut, they choke the blower, feed the leaks and make the others noisy.");
    }

    private double flow(RunFlow r) {
        return Show.in(
                r.actual(),
                job.inchPoundFirst() ? Units.CUBIC_FOOT_PER_MINUTE : Units.LITRE_PER_SECOND);
    }

    private static String ice(Comparison.Row r) {
        double left = Show.in(r.airflowLeft(), Units.PERCENT);
        if (!r.ices()) {
            return "no";
        }
        return left < 100 * CoilIcing.CHOKED ? Show.number(left, 0) + " % air left" : "thaws";
    }

    private static String ice(UnitState u) {
        return u.icing() ? "yes" : u.iceNear() ? "near" : "no";
    }

    /** What a room needs and gets. */
    private record RoomAir(
            String room,
            Quantity<Power> peak,
            int hour,
            Quantity<VolumeFlow> need,
            Quantity<VolumeFlow> found,
            Quantity<VolumeFlow> mended) {}

    private Quantity<Temperature> supply() {
        return Study.state(study.mended).leavingDryBulb();
    }

    private List<RoomAir> roomAir() {
        DesignLoad l = study.coolingWanted;
        Quantity<Temperature> supply = supply();
        double density = Si.kilogramsPerCubicMetre(study.mended.airflow().density(), "density");
        List<RoomAir> list = new ArrayList<>();
        for (String room : l.rooms()) {
            list.add(
                    new RoomAir(
                            room,
                            l.roomPeak(room),
                            l.roomPeakHour(room),
                            Units.cubicMetresPerSecond(
                                    Si.kilogramsPerSecond(l.airMass(room, supply), "air")
                                            / density),
                            study.asFound.airflow().supplyTo(room),
                            study.mended.airflow().supplyTo(room)));
        }
        return list;
    }

    /** The room that misses most air, if it gets less than nine tenths of its need. */
    private Optional<RoomAir> shortest() {
        return roomAir().stream()
                .filter(r -> shortage(r) > 0.1 * Si.cubicMetresPerSecond(r.need(), "air needed"))
                .max(Comparator.comparingDouble(ReviewDocument::shortage));
    }

    private static double shortage(RoomAir r) {
        return Si.cubicMetresPerSecond(r.need(), "air needed")
                - Si.cubicMetresPerSecond(r.found(), "air found");
    }

    private void rooms() {
        List<List<String>> rows = new ArrayList<>();
        for (RoomAir r : roomAir()) {
            rows.add(
                    List.of(
                            r.room(),
                            show.heat(r.peak()),
                            r.hour() + ":00",
                            show.flow(r.need()),
                            show.flow(r.found()),
                            show.flow(r.mended())));
        }
        out.table(
                "Room by room: air needed for each room's own worst hour, with supply air at "
                        + show.temperature(supply()),
                List.of(
                        "room",
                        "worst sensible load",
                        "hour",
                        "air needed",
                        "as found",
                        "open, new filter"),
                rows);
    }

    private void bigger() {
        out.section("What a bigger unit on the same ducts would do");
        Quantity<Power> more = study.biggerCapacity();
        List<InstalledSystem> cases =
                List.of(
                        study.asFound,
                        study.withCapacity(study.asFound, more),
                        study.mended,
                        study.withCapacity(study.mended, more));
        List<List<String>> columns = new ArrayList<>();
        for (InstalledSystem s : cases) {
            UnitState u = Study.state(s);
            columns.add(
                    List.of(
                            show.tons(s.unit().ratedCapacity()),
                            show.perTon(s.standardAirflowPerTon()),
                            show.heat(u.totalCapacity()),
                            show.heat(u.sensibleCapacity()),
                            show.electricPower(u.power()),
                            show.temperature(u.apparatusDewPoint()),
                            show.temperature(u.saturatedSuctionTemperature()),
                            ice(u)));
        }
        out.add(
                byColumn(
                        "In the hottest hour, air entering as the customer wants it, coils clear of ice",
                        List.of(
                                "rated capacity",
                                "standard air, each ton",
                                "total heat taken out",
                                "sensible heat taken out",
                                "compressor and outdoor fan",
                                "coil surface",
                                "suction",
                                "ice"),
                        List.of("as found", "bigger, as found", "ducts mended", "bigger, mended"),
                        columns));
        UnitState a = Study.state(cases.get(0));
        UnitState b = Study.state(cases.get(1));
        out.text(
                "As found, "
                        + Show.number(
                                100
                                        * (Si.watts(more, "")
                                                        / Si.watts(job.unit().ratedCapacity(), "")
                                                - 1),
                                0)
                        + " % more rated capacity yields "
                        + Show.number(
                                100
                                        * (Si.watts(b.sensibleCapacity(), "")
                                                        / Si.watts(a.sensibleCapacity(), "")
                                                - 1),
                                0)
                        + " % more sensible heat for "
                        + Show.number(
                                100 * (Si.watts(b.power(), "") / Si.watts(a.power(), "") - 1), 0)
                        + " % more power, and a colder coil: the ducts set the limit, not the compressor.");
    }

    private void moreDuct() {
        out.section("More duct");
        out.text(
                "Supply runs added from the plenum to the "
                        + study.neediestRoom()
                        + ", each "
                        + show.length(Study.RUN_LENGTH)
                        + " of galvanized round duct with its fittings and register, after the registers are open and"
                        + " the filter is new. The targets are counted in standard air: so many actual cfm that they"
                        + " carry what 350 or 400 standard cfm carry for each ton.");
        addedRuns("present", job.unit().ratedCapacity());
        study.review
                .rightCapacity()
                .filter(
                        c ->
                                Math.abs(
                                                Si.watts(c, "")
                                                                / Si.watts(
                                                                        job.unit().ratedCapacity(),
                                                                        "")
                                                        - 1)
                                        > 0.03)
                .ifPresent(c -> addedRuns("right-sized", c));
    }

    private void addedRuns(String what, Quantity<Power> capacity) {
        List<List<String>> rows = new ArrayList<>();
        for (Study.AddedRuns r : study.addedRuns(capacity)) {
            rows.add(
                    List.of(
                            Show.number(r.target(), 0)
                                    + " cfm/ton, "
                                    + show.size(r.diameter())
                                    + " runs",
                            r.count().isPresent()
                                    ? r.count().getAsInt() == 0
                                            ? "none needed"
                                            : Integer.toString(r.count().getAsInt())
                                    : "not with " + Study.MOST_RUNS,
                            show.flow(r.reached().actual()),
                            show.perTon(Study.perTon(r.reached().standard(), capacity))));
        }
        out.table(
                "For the " + what + " " + show.tons(capacity),
                List.of(
                        "target and size",
                        "runs to add",
                        "then actual airflow",
                        "then standard, each ton"),
                rows);
    }

    private void size() {
        out.section("The right size");
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                List.of(
                        "load in the worst hour, wanted setpoint",
                        show.heat(study.coolingWanted.peak())));
        rows.add(
                List.of(
                        "installed, as rated",
                        show.heat(job.unit().ratedCapacity())
                                + ", "
                                + show.tons(job.unit().ratedCapacity())));
        rows.add(
                List.of(
                        "delivered to the rooms in the hottest hour, free things done",
                        show.heat(study.review.capacityAtDesign())));
        rows.add(
                List.of(
                        "rated capacity these ducts carry, open and clean",
                        show.tons(study.review.ductsCarry())));
        rows.add(
                List.of(
                        "smallest usual size that carries the load here, with the air it should have",
                        study.review.rightCapacity().map(show::tons).orElse("none")));
        out.table("Load, unit and ducts", List.of("what", "value"), rows);
    }

    private void day() {
        out.section("The design day, run through");
        List<InstalledSystem> cases = List.copyOf(study.cases.values());
        List<String> names = List.copyOf(study.cases.keySet());
        List<String> measures =
                List.of(
                        "rated capacity",
                        "hours on",
                        "longest run",
                        "starts",
                        "highest indoors",
                        "setpoint missed by",
                        "degree hours above",
                        "coldest coil surface",
                        "airflow left under ice",
                        "electricity",
                        "cost of the day");
        for (Quantity<Temperature> setpoint :
                List.of(job.wishes().cooling(), job.wishes().usualCooling())) {
            List<List<String>> columns = new ArrayList<>();
            for (InstalledSystem s : cases) {
                DayRun d = study.day(s, setpoint);
                columns.add(
                        List.of(
                                show.tons(s.unit().ratedCapacity()),
                                show.hours(d.hoursOn()),
                                show.span(d.longestRun()),
                                Integer.toString(d.starts()),
                                show.temperature(d.maximumIndoorTemperature()),
                                Show.in(d.miss(), Units.KELVIN_DIFFERENCE) < HELD
                                        ? "held"
                                        : show.difference(d.miss()),
                                show.degreeHours(d.degreeHoursAboveSetpoint()),
                                d.ran()
                                        ? show.temperature(
                                                d.icing()
                                                        .map(CoilIcing::clearCoil)
                                                        .orElse(d)
                                                        .minimumCoilTemperature())
                                        : "-",
                                d.icing()
                                        .map(
                                                i ->
                                                        Show.number(
                                                                        Show.in(
                                                                                i.leastAirflow(),
                                                                                Units.PERCENT),
                                                                        0)
                                                                + " %")
                                        .orElse("no ice"),
                                show.energy(d.electricity()),
                                show.money(d.cost(), d.currency())));
            }
            out.add(
                    byColumn(
                            "Thermostat at " + show.temperature(setpoint),
                            measures,
                            names,
                            columns));
        }
        temperatures(cases, names);
        season(cases, names);
    }

    private void season(List<InstalledSystem> cases, List<String> names) {
        List<List<String>> columns = new ArrayList<>();
        for (InstalledSystem s : cases) {
            SeasonRun run = study.season(s);
            List<String> column = new ArrayList<>();
            column.add(show.hours(run.hoursOn()));
            column.add(Show.number(run.starts(), 0));
            job.lifeStarts().ifPresent(n -> column.add(Show.number(100 * run.wear(n), 1) + " %"));
            column.add(show.span(run.longestRun()));
            column.add(show.degreeHours(run.degreeHoursAboveSetpoint()));
            column.add(Integer.toString(run.hoursIced()));
            column.add(show.energyWhole(run.electricity()));
            column.add(show.money(run.cost(), run.currency()));
            columns.add(column);
        }
        List<String> measures = new ArrayList<>();
        measures.add("hours on");
        measures.add("starts");
        job.lifeStarts().ifPresent(n -> measures.add("wear, of " + Show.number(n, 0) + " starts"));
        measures.addAll(
                List.of(
                        "longest run",
                        "degree hours above",
                        "hours choked by ice",
                        "electricity",
                        "cost"));
        out.add(
                byColumn(
                        "A whole year's cooling in the job file's weather, thermostat at "
                                + show.temperature(job.wishes().cooling())
                                + "; the cost holds the year's fixed charge",
                        measures,
                        names,
                        columns));
    }

    private void temperatures(List<InstalledSystem> cases, List<String> names) {
        Quantity<Temperature> setpoint = job.wishes().cooling();
        boolean ip = job.inchPoundFirst();
        List<Drawing.Series> series = new ArrayList<>();
        List<String> rows = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            rows.add(String.format(Locale.ROOT, "%02d:00", h));
        }
        int shown = names.indexOf("recommended");
        for (int i : shown > 0 ? new int[] {0, shown} : new int[] {0}) {
            DayRun d = study.day(cases.get(i), setpoint);
            double[] v = new double[24];
            for (int h = 0; h < 24; h++) {
                v[h] = Show.in(d.indoorTemperature(h), ip ? Units.FAHRENHEIT : Units.CELSIUS);
                rows.set(
                        h,
                        rows.get(h)
                                + String.format(
                                        Locale.ROOT,
                                        "  %s %5.1f, on %3.0f %%",
                                        names.get(i),
                                        v[h],
                                        Show.in(d.runFraction(h), Units.PERCENT)));
            }
            series.add(new Drawing.Series(names.get(i), v));
        }
        out.add(
                new Document.Figure(
                        "Indoor temperature on the design day, hourly means, with the thermostat at the wanted setpoint",
                        Drawing.day(
                                "Indoor temperature over the design day as found and as recommended",
                                ip ? "°F" : "°C",
                                series,
                                Show.in(setpoint, ip ? Units.FAHRENHEIT : Units.CELSIUS),
                                "wanted",
                                false),
                        rows));
    }

    private void remedies() {
        out.section("Remedies side by side");
        if (study.review.remedies().isEmpty()) {
            out.text("Nothing needs to be done.");
            return;
        }
        if (study.review.comparison().rows().isEmpty()) {
            out.text("None of the remedies that were tried makes the system run.");
            setAside();
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        Comparison.Row best = study.review.recommended();
        int marked = -1;
        for (Comparison.Row r : study.review.comparison().rows()) {
            if (r == best) {
                marked = rows.size();
            }
            rows.add(
                    List.of(
                            sentence(r.title()),
                            show.perTon(r.standardAirflowPerTon()),
                            show.heat(r.capacity()),
                            show.temperature(r.minimumCoilTemperature()),
                            ice(r),
                            Integer.toString(r.starts()),
                            Show.in(r.miss(), Units.KELVIN_DIFFERENCE) < HELD
                                    ? "held"
                                    : show.difference(r.miss()),
                            show.energy(r.electricity()),
                            Integer.toString(r.remaining())));
        }
        out.add(
                new Document.Table(
                        "Each on the design day at the wanted setpoint; the recommended one is set off",
                        List.of(
                                "remedy",
                                "standard air",
                                "to the rooms, hottest hour",
                                "coldest coil",
                                "ice",
                                "starts",
                                "setpoint missed by",
                                "electricity",
                                "warnings left"),
                        rows,
                        marked));
        setAside();
    }

    private void setAside() {
        for (Review.SetAside s : study.review.setAside()) {
            out.text("Set aside: " + s.remedy().title() + " (" + s.reason() + ").");
        }
    }

    private void cautions() {
        out.section("Cautions");
        Set<String> texts = new LinkedHashSet<>();
        study.review.findings().forEach(f -> f.caution().ifPresent(texts::add));
        study.review.remedies().forEach(r -> r.caution().ifPresent(texts::add));
        if (job.furnace().isPresent()) {
            texts.add(Furnace.CAUTION);
        }
        texts.add(
                "Refrigerant work, gas work and electrical work belong to licensed practitioners; local code and the"
                        + " makers' instructions come before anything here.");
        Set<String> said = new LinkedHashSet<>();
        for (String text : texts) {
            // Combined remedies repeat the cautions of their parts.
            List<String> fresh = new ArrayList<>();
            for (String sentence : text.split("(?<=[.]) ")) {
                if (said.add(sentence)) {
                    fresh.add(sentence);
                }
            }
            if (!fresh.isEmpty()) {
                out.add(new Document.Caution(String.join(" ", fresh)));
            }
        }
    }

    private void method() {
        out.section("How this was worked out");
        out.add(
                new Document.Points(
                        List.of(
                                "Loads: exact 24-hour periodic heat balance of every room from layers, sun and air, not a"
                                        + " rule of thumb per square foot.",
                                "Airflow: the blower's own table against the whole duct network, friction by"
                                        + " Colebrook-White, at the density of the air on site.",
                                "Coil: one balance of coil, compressor and condenser at the mass of air that really"
                                        + " passes. Below freezing its water stays on it as ice, which narrows the air"
                                        + " passages until the coil rests and thaws; how fast rests on an assumed density"
                                        + " of the ice, so take the hour as rough.",
                                "Running: the house with its thermal mass, open inside doors and thermostat, every start and stop timed,"
                                        + " the day repeated until it repeats itself.",
                                "A computed review does not replace measuring: check external static pressure, airflow and"
                                        + " temperatures on site before money is spent.")));
    }

    /** A table whose cases are columns: each measure a row. */
    private static Document.Table byColumn(
            String caption, List<String> measures, List<String> cases, List<List<String>> columns) {
        List<String> head = new ArrayList<>();
        head.add("");
        head.addAll(cases);
        List<List<String>> rows = new ArrayList<>();
        for (int m = 0; m < measures.size(); m++) {
            List<String> row = new ArrayList<>();
            row.add(measures.get(m));
            for (List<String> c : columns) {
                row.add(c.get(m));
            }
            rows.add(row);
        }
        return new Document.Table(caption, head, rows, -1);
    }
}
