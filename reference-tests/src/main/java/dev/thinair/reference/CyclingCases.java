package dev.thinair.reference;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.cycling.kernel.ApparatusDewPoint;
import dev.thinair.cycling.kernel.BinMethod;
import dev.thinair.cycling.kernel.CycleControl;
import dev.thinair.cycling.kernel.DegreeDays;
import dev.thinair.cycling.kernel.FieldRules;
import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.LinearDecayEvaporation;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.cycling.kernel.Refrigerant;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.cycling.kernel.SeasonalRatings;
import dev.thinair.cycling.kernel.Tariffs;
import dev.thinair.cycling.kernel.ThermostatEngine;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.psychro.kernel.IdealMoistAir;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** Rules for units, part load, seasons, thermostat events and bills. */
final class CyclingCases {

    private static final double ZERO_CELSIUS = 273.15;

    private CyclingCases() {}

    static void register(CaseEvaluator to) {
        partLoad(to);
        seasons(to);
        latent(to);
        coil(to);
        fieldRules(to);
        thermostat(to);
        bills(to);
    }

    private static void partLoad(CaseEvaluator to) {
        value(
                to,
                in -> PartLoad.partLoadFactor(in.si("Cd"), in.si("CLF")),
                "part-load factor PLF = 1 - Cd(1 - CLF)",
                "part-load factor, load above capacity: clamp CLF at 1 (the bare formula gives"
                        + " 1.05)");
        value(
                to,
                in -> PartLoad.runTimeFraction(in.si("Cd"), in.si("CLF")),
                "run-time (input) fraction X = CLF/PLF with PLF = 1 - Cd(1 - CLF)");
        value(
                to,
                in ->
                        PartLoad.degradationCoefficient(
                                in.si("EERcyc"),
                                in.si("EERss"),
                                PartLoad.cyclicLoadFactor(
                                        in.si("qcyc"), in.si("Qss"), in.si("theta"))),
                "degradation coefficient from a cyclic test, Cd = (1 - EERcyc/EERss)/(1 - CLF),"
                        + " CLF = qcyc/(Qss*theta)",
                "degradation coefficient when the cyclic EER exceeds the steady EER: the raw"
                        + " formula is negative, use 0");
        value(
                to,
                in -> RatingBins.DEFAULT_COOLING_DEGRADATION_2008,
                "default cooling Cd, AHRI 210/240-2008 generation");
        value(
                to,
                in -> RatingBins.DEFAULT_COOLING_DEGRADATION_M1,
                "default cooling Cd, single-speed and two-capacity, appendix M1 / AHRI"
                        + " 210/240-2023");
        value(
                to,
                in -> RatingBins.DEFAULT_HEATING_DEGRADATION,
                "default heating Cd, all generations");
        to.on(in -> Answer.si(cycleRate(in)), "cycles per hour");
        value(
                to,
                in -> PartLoad.onTime(perHour(in), in.si("X")),
                "on-time per cycle = 3600/(4 Nmax (1-X))",
                "limit of on-time for X -> 0 (shortest possible on-time)");
        value(
                to,
                in -> PartLoad.offTime(perHour(in), in.si("X")),
                "off-time per cycle = 3600/(4 Nmax X)");
        value(
                to,
                in -> PartLoad.startUpCapacityRatio(in.si("tau"), in.si("ton")),
                "on-cycle capacity ratio 1 - (tau/ton)(1 - exp(-ton/tau))");
        value(
                to,
                in ->
                        PartLoad.degradationFromTimeConstant(
                                in.si("tau"), in.si("ton"), in.si("tcycle")),
                "Cd that a unit of time constant tau would show in the 6 min on / 24 min off test");
        value(
                to,
                in -> PartLoad.implicitPartLoadFactor(in.si("tau"), perHour(in), in.si("CLF")),
                "implicit PLF");
        value(to, CyclingCases::implicitRunTime, "run-time fraction X from the implicit PLF");
        value(
                to,
                in -> PartLoad.averagePowerFraction(implicitRunTime(in), in.si("pr")),
                "average power / steady power = X + pr(1-X), X the implicit run-time fraction; at"
                        + " zero load the answer is pr, and the energy efficiency is then zero");
        value(
                to,
                in ->
                        PartLoad.oversizedRunTimeFraction(
                                in.si("r"), in.si("f"), in.si("tau"), perHour(in)),
                "run-time fraction of a unit r times the design load, at load fraction f (of"
                        + " design)");
        value(
                to,
                in ->
                        PartLoad.oversizedEnergyRatio(
                                in.si("r"), in.si("f"), in.si("tau"), perHour(in)),
                "cycling energy ratio to the exactly sized unit of the same steady EER,"
                        + " PLF(f)/PLF(f/r)");
        value(
                to,
                in -> PartLoad.sizeReduction(in.si("oversize")),
                "size reduction that removes a 50 % oversize");
    }

    private static void seasons(CaseEvaluator to) {
        value(to, in -> fraction(RatingBins.COOLING, in), "fractional hours of cooling bin");
        value(
                to,
                in -> fraction(RatingBins.HEATING_REGION_IV, in),
                "fractional hours of heating bin, climate region IV");
        value(
                to,
                in -> RatingBins.HEATING_REGION_IV_M1.sum(),
                "sum of region IV fractional hours when bins 62 and 57 F are dropped (appendix"
                        + " M1)");
        value(
                to,
                in -> SeasonalRatings.coolingLoad(in.si("T"), in.si("QA"), 1),
                "cooling building load BL=(T-65)/(95-65)*QA/1.1");
        value(
                to,
                in -> SeasonalRatings.singleSpeedShort(in.si("QB"), in.si("PB"), in.si("Cd")),
                "SEER, single speed, fixed fan = (1 - 0.5 Cd) * QB/PB");
        value(
                to,
                in ->
                        SeasonalRatings.singleSpeed(
                                in.si("QA"),
                                in.si("PA"),
                                in.si("QB"),
                                in.si("PB"),
                                in.si("Cd"),
                                RatingBins.COOLING),
                "SEER, single speed, summed over the 8 bins with capacity and power linear in T"
                        + " through 82 and 95 F; BL=(T-65)/30*QA/1.1");
        String twoStage =
                "SEER, two-stage, 8-bin; low stage linear through 67/82 F, high through 82/95 F;"
                        + " Cd the same in both stages";
        value(
                to,
                in ->
                        SeasonalRatings.twoStage(
                                in.si("QA2"),
                                in.si("PA2"),
                                in.si("QB2"),
                                in.si("PB2"),
                                in.si("QB1"),
                                in.si("PB1"),
                                in.si("QF1"),
                                in.si("PF1"),
                                in.si("Cd"),
                                in.si("Cd"),
                                in.si("Tlock", 1e9),
                                RatingBins.COOLING),
                twoStage,
                twoStage + "; low stage locked out at and above Tlock");
        value(
                to,
                in ->
                        SeasonalRatings.variableSpeed(
                                in.si("QA2"),
                                in.si("PA2"),
                                in.si("QB2"),
                                in.si("PB2"),
                                in.si("QB1"),
                                in.si("PB1"),
                                in.si("QF1"),
                                in.si("PF1"),
                                in.si("QE87"),
                                in.si("PE87"),
                                in.si("Cd"),
                                in.si("V"),
                                RatingBins.COOLING),
                "SEER, variable speed, 8-bin; intermediate EER linear in delivered capacity"
                        + " between low, intermediate and full (appendix M1 form)");
        value(
                to,
                in ->
                        SeasonalRatings.variableSpeedQuadratic(
                                in.si("QA2"),
                                in.si("PA2"),
                                in.si("QB2"),
                                in.si("PB2"),
                                in.si("QB1"),
                                in.si("PB1"),
                                in.si("QF1"),
                                in.si("PF1"),
                                in.si("QE87"),
                                in.si("PE87"),
                                in.si("Cd"),
                                in.si("V"),
                                RatingBins.COOLING),
                "SEER, variable speed, 8-bin; intermediate EER by quadratic in T through the three"
                        + " balance temperatures");
        value(
                to,
                in ->
                        SeasonalRatings.heatingM(
                                in.si("Q47"),
                                in.si("P47"),
                                in.si("Q35"),
                                in.si("P35"),
                                in.si("Q17"),
                                in.si("P17"),
                                in.si("Cd"),
                                in.si("DHR"),
                                fahrenheit(5),
                                in.si("Toff"),
                                in.si("Ton"),
                                1,
                                RatingBins.HEATING_REGION_IV),
                "HSPF region IV, single speed, app. M form: BL=(65-T)/(65-5)*0.77*DHR; capacity and"
                        + " power linear 17-47 F outside and 17-35 F inside 17<T<45; cut-out factor"
                        + " 0/0.5/1; resistance backup at 3.413; Fdef=1");
        value(
                to,
                in ->
                        SeasonalRatings.heatingM1(
                                in.si("Q47"),
                                in.si("P47"),
                                in.si("Q35"),
                                in.si("P35"),
                                in.si("Q17"),
                                in.si("P17"),
                                in.si("Cd"),
                                in.si("QA"),
                                in.si("C"),
                                fahrenheit(55),
                                fahrenheit(5),
                                in.si("Toff"),
                                in.si("Ton"),
                                1,
                                RatingBins.HEATING_REGION_IV_M1),
                "HSPF2 region IV, single speed, app. M1 load line BL=(55-T)/(55-5)*C*QA (clipped at"
                        + " 0), bins 52..-8 only, other rules as HSPF; Fdef=1");
    }

    private static void latent(CaseEvaluator to) {
        value(
                to,
                in ->
                        LinearDecayEvaporation.refill(
                                PartLoad.offTime(perHour(in), in.si("X")),
                                in.si("twet"),
                                in.si("gamma")),
                "moisture to be refilled each cycle, in seconds of steady latent capacity");
        value(
                to,
                in ->
                        LinearDecayEvaporation.netLatentRatio(
                                in.si("tau"),
                                PartLoad.onTime(perHour(in), in.si("X")),
                                PartLoad.offTime(perHour(in), in.si("X")),
                                in.si("twet"),
                                in.si("gamma")),
                "net latent capacity ratio, fan on, cyclic");
    }

    private static void coil(CaseEvaluator to) {
        to.on(in -> Answer.si(fitted(in)[0]), "apparatus dew point");
        to.on(in -> Answer.si(fitted(in)[1]), "bypass factor");
        to.on(in -> Answer.si(fitted(in)[2]), "leaving dry bulb");
        to.on(
                in -> {
                    try {
                        fitted(in);
                        return Answer.text("coil state");
                    } catch (IllegalArgumentException e) {
                        String message = e.getMessage();
                        int end = message.indexOf(')');
                        return Answer.text(end < 0 ? message : message.substring(0, end + 1));
                    }
                },
                "outcome of extending the process line to saturation");
        to.on(
                in -> Answer.si(atAirflow(in)[0]),
                "apparatus dew point at this airflow",
                "apparatus dew point at this airflow (below freezing: frost flag)");
        to.on(in -> Answer.si(atAirflow(in)[4]), "sensible heat ratio at this airflow");
        to.on(in -> Answer.si(atAirflow(in)[1]), "bypass factor at this airflow");
    }

    private static void fieldRules(CaseEvaluator to) {
        value(
                to,
                in -> Refrigerant.R410A.saturationTemperature(in.si("p")),
                "R-410A saturation temperature at suction pressure");
        value(
                to,
                in -> FieldRules.suctionAfter(in.si("SST1"), in.si("return1"), in.si("return2")),
                "saturated suction temperature after lowering the return air (1 F per 1 F rule)");
        value(
                to,
                in -> FieldRules.SETUP_RETURN,
                "lowest return temperature that must still keep the coil just above freezing (field"
                        + " set-up rule)");
        value(
                to,
                in -> FieldRules.freezingReturn(in.difference("TD")),
                "return temperature at which a constant 35 F difference puts the coil at 32 F");
        value(to, in -> FieldRules.RETURN_FLOOR, "return-air temperature floor for a DX unit");
        value(
                to,
                in -> FieldRules.OVERSIZE_ENERGY_INCREASE,
                "field cooling-energy increase, units of 1.0-1.2 times the Manual J load");
        value(to, in -> FieldRules.OVERSIZE_HOMES, "homes in the capacity comparison");
        value(
                to,
                in -> FieldRules.OVERSIZED_HEAT_PUMPS,
                "homes with heat pumps whose heating capacity exceeded 120 % of the load");
        value(to, in -> FieldRules.TYPICAL_TIME_CONSTANT, "typical unit: time constant");
        value(
                to,
                in -> FieldRules.TYPICAL_CYCLE_RATE / 3600,
                "typical unit: maximum cycling rate (also quoted as 3)");
        value(to, in -> FieldRules.TYPICAL_OFF_FRACTION, "typical unit: off-cycle power fraction");
    }

    private static void thermostat(CaseEvaluator to) {
        value(to, in -> duration(in, true), "on-time");
        value(to, in -> duration(in, false), "off-time");
        value(
                to,
                in -> duration(in, true) / (duration(in, true) + duration(in, false)),
                "run-time fraction");
        to.on(
                in -> {
                    int events = firstOrder(in, 100).eventCount();
                    return Answer.text(
                            events == 0
                                    ? "never switches on"
                                    : events == 1 ? "never switches off" : "cycles");
                },
                "does the cycle exist?");
        value(
                to,
                CyclingCases::smallBandRate,
                "small-band limit of the maximum cycling rate, Nmax = 3600 Q/(4 C D): the"
                        + " first-order house reproduces the parabola N = 4 Nmax X(1-X) exactly as"
                        + " D -> 0");
        to.onEach(
                "time of switching event (\\d+) +(on|off)",
                (in, match) -> {
                    RunRecord run = in.has("Ca") ? airAndMass(in) : sinusoid(in);
                    int event = Integer.parseInt(match.group(1)) - 1;
                    boolean on = match.group(2).equals("on");
                    if (run.eventSwitchesOn(event) != on) {
                        throw new ArithmeticException("event is of the other kind");
                    }
                    return Answer.si(run.eventTime(event));
                });
        to.onEach(
                "mass temperature at event (\\d+)",
                (in, match) -> Answer.si(massTemperature(in, Integer.parseInt(match.group(1)))));
        to.on(
                in -> Answer.si(highestFreeRunning(in)),
                "highest free-running temperature in periodic state (unit off)");
        to.onEach(
                "temperature of node (\\d)",
                (in, match) -> Answer.si(chain(in)[Integer.parseInt(match.group(1)) - 1]));
    }

    private static void bills(CaseEvaluator to) {
        value(to, in -> bins(in)[0], "balance temperature");
        value(to, in -> bins(in)[1], "cooling delivered");
        value(to, in -> bins(in)[2], "electric energy");
        value(to, in -> bins(in)[3], "unmet load");
        to.on(
                in ->
                        Answer.difference(
                                DegreeDays.coolingOfSinusoidalDay(
                                                in.si("Tm"), in.difference("A"), in.si("Tb"))
                                        * 86_400),
                "cooling degree-days of one day, exact integral (mean-temperature rule gives"
                        + " max(Tm-Tb,0))");
        value(
                to,
                in ->
                        DegreeDays.energy(
                                in.difference("UA"), in.difference("CDD") / 86_400, in.si("EER")),
                "energy by degree-days, 24 UA CDD / EER");
        to.on(
                in ->
                        Answer.plain(
                                9.5
                                        + Tariffs.blockCharge(
                                                in.si("use") / 3.6e6,
                                                new double[] {500, 1000},
                                                new double[] {0.12, 0.15, 0.22})),
                "energy charge, tiered tariff 0.12 to 500, 0.15 to 1000, 0.22 above (marginal"
                        + " blocks) plus fixed 9.50 per month");
        to.on(
                in ->
                        Answer.plain(
                                Tariffs.timeOfUseCharge(
                                        in.si("peak") / 3.6e6,
                                        in.si("offpeak") / 3.6e6,
                                        in.si("demand") / 1000,
                                        0.31,
                                        0.11,
                                        8)),
                "energy charge, peak 0.31, off-peak 0.11, demand 8.00 per kW of the highest"
                        + " 15-minute mean");
        to.notOffered(
                "a table of a sizing rule in words, offered as data with its source",
                "cooling-only single-stage: total capacity at design / total load",
                "two-stage cooling: total capacity at full stage / total load",
                "heat pump in a cold dry climate: allowed excess over the total cooling load",
                "heat pump, 1995 edition, cold climate: upper limit of total capacity / total load",
                "cold dry climate test: joint condition");
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> rule, String... wordings) {
        to.on(in -> Answer.si(rule.applyAsDouble(in)), wordings);
    }

    private static double perHour(CaseInputs in) {
        return in.si("Nmax") * 3600;
    }

    private static double implicitRunTime(CaseInputs in) {
        return PartLoad.implicitRunTimeFraction(in.si("tau"), perHour(in), in.si("CLF"));
    }

    private static double cycleRate(CaseInputs in) {
        if (in.has("Nmax")) {
            return PartLoad.cycleRate(perHour(in), in.si("X")) / 3600;
        }
        return 1 / (duration(in, true) + duration(in, false));
    }

    private static double fahrenheit(double t) {
        return (t + 459.67) / 1.8;
    }

    private static double fraction(RatingBins bins, CaseInputs in) {
        for (int i = 0; i < bins.size(); i++) {
            if (Math.abs(bins.kelvin(i) - in.si("T")) < 1e-6) {
                return bins.fraction(i);
            }
        }
        throw new IllegalArgumentException("no bin at " + in.text("T"));
    }

    /** The cases' site pressure: ASHRAE Fundamentals 2021, chapter 1, equation (3). */
    private static double[] entering(CaseInputs in) {
        double p = StandardAtmosphere.handbookPressure(in.si("z"));
        double t = in.si("tdb");
        double w = IdealMoistAir.humidityRatioFromWetBulb(t, in.si("twb"), p);
        double flow = in.si("flow") / IdealMoistAir.specificVolume(t, w, p);
        return new double[] {t, w, p, flow};
    }

    private static double[] fitted(CaseInputs in) {
        double[] e = entering(in);
        double[] out = new double[6];
        ApparatusDewPoint.fit(e[0], e[1], e[2], e[3], in.si("Qt"), in.si("SHR"), out);
        return out;
    }

    private static double[] atAirflow(CaseInputs in) {
        double[] e = entering(in);
        double[] out = new double[6];
        ApparatusDewPoint.run(e[0], e[1], e[2], e[3], in.si("Qt"), in.si("A0"), out);
        return out;
    }

    /** One node: C dT/dt = (To - T)/R + Qg - s Q. */
    private static RunRecord firstOrder(CaseInputs in, int hours) {
        return firstOrder(
                in.si("R"),
                in.si("C"),
                in.si("To"),
                in.si("Qg"),
                in.si("Q"),
                in.si("Tl"),
                in.si("Th"),
                hours);
    }

    private static RunRecord firstOrder(
            double r, double c, double to, double qg, double q, double tl, double th, int hours) {
        double[] outdoor = new double[hours + 1];
        double[][] heat = new double[hours + 1][1];
        for (int i = 0; i <= hours; i++) {
            outdoor[i] = to;
            heat[i][0] = to / r + qg;
        }
        return engine(ModalHouse.of(new double[] {c}, new double[][] {{1 / r}}))
                .run(
                        HouseDrive.dry(3600, false, heat, outdoor),
                        CycleControl.single(0.5 * (tl + th), th - tl),
                        UnitResponse.constant(q, 1),
                        new double[] {0.5 * (tl + th)},
                        0,
                        0);
    }

    private static ThermostatEngine engine(ModalHouse house) {
        double[] air = new double[house.size()];
        air[0] = 1;
        return new ThermostatEngine(house, air, air, air);
    }

    /** Length of the first whole on- or off-time in steady outdoor conditions. */
    private static double duration(CaseInputs in, boolean on) {
        RunRecord run = firstOrder(in, 120);
        int from = on ? 0 : 1;
        return run.eventTime(from + 1) - run.eventTime(from);
    }

    /** The band is narrowed until the parabola's rate no longer moves at the case's digits. */
    private static double smallBandRate(CaseInputs in) {
        double q = in.si("Q");
        double c = in.si("C");
        double asked = in.difference("D");
        double band = 1e-3;
        double r = 0.005;
        double to = ZERO_CELSIUS + 24 + 0.5 * q * r; // half load
        RunRecord run =
                firstOrder(
                        r,
                        c,
                        to,
                        0,
                        q,
                        ZERO_CELSIUS + 24 - band / 2,
                        ZERO_CELSIUS + 24 + band / 2,
                        2);
        double on = run.eventTime(3) - run.eventTime(2);
        double off = run.eventTime(4) - run.eventTime(3);
        double x = on / (on + off);
        return 1 / (on + off) / (4 * x * (1 - x)) * band / asked;
    }

    private static RunRecord airAndMass(CaseInputs in) {
        double ria = in.si("Ria");
        double rio = in.si("Rio");
        double rmo = in.si("Rmo");
        double to = in.si("To");
        double[] heat = {to / rio + in.si("Qg"), to / rmo};
        double tl = in.si("Tl");
        double th = in.si("Th");
        return engine(airAndMassHouse(in, ria, rio, rmo))
                .run(
                        HouseDrive.dry(
                                1200,
                                false,
                                new double[][] {heat, heat, heat},
                                new double[] {to, to, to}),
                        CycleControl.single(0.5 * (tl + th), th - tl),
                        UnitResponse.constant(in.si("Q"), 1),
                        new double[] {in.si("Ta0"), in.si("Tm0")},
                        0,
                        0);
    }

    private static ModalHouse airAndMassHouse(CaseInputs in, double ria, double rio, double rmo) {
        return ModalHouse.of(
                new double[] {in.si("Ca"), in.si("Cm")},
                new double[][] {{1 / ria + 1 / rio, -1 / ria}, {-1 / ria, 1 / ria + 1 / rmo}});
    }

    /** From event to event by the free response of the modes. */
    private static double massTemperature(CaseInputs in, int event) {
        double rio = in.si("Rio");
        double rmo = in.si("Rmo");
        double to = in.si("To");
        ModalHouse house = airAndMassHouse(in, in.si("Ria"), rio, rmo);
        RunRecord run = airAndMass(in);
        double[] t = {in.si("Ta0"), in.si("Tm0")};
        double now = 0;
        boolean on = false;
        for (int e = 0; e < event; e++) {
            double[] heat = {to / rio + in.si("Qg") - (on ? in.si("Q") : 0), to / rmo};
            t = house.after(t, heat, new double[2], run.eventTime(e) - now);
            now = run.eventTime(e);
            on = run.eventSwitchesOn(e);
        }
        return t[1];
    }

    /** Outdoor temperature as a cosine, cut into short chords. */
    private static RunRecord sinusoid(CaseInputs in) {
        double r = in.si("R");
        int seconds = 15;
        int n = 450_000 / seconds + 1;
        double[][] heat = new double[n][1];
        double[] outdoor = new double[n];
        for (int i = 0; i < n; i++) {
            outdoor[i] =
                    in.si("Tm")
                            + in.difference("Ta")
                                    * Math.cos(2 * Math.PI * (seconds * i - in.si("tp")) / 86_400);
            heat[i][0] = outdoor[i] / r + in.si("Qg");
        }
        double tl = in.si("Tl");
        double th = in.si("Th");
        return engine(ModalHouse.of(new double[] {in.si("C")}, new double[][] {{1 / r}}))
                .run(
                        HouseDrive.dry(seconds, false, heat, outdoor),
                        CycleControl.single(0.5 * (tl + th), th - tl),
                        UnitResponse.constant(in.si("Q"), 1),
                        new double[] {in.si("T0")},
                        0,
                        0);
    }

    private static double highestFreeRunning(CaseInputs in) {
        double r = in.si("R");
        int n = 86_400 / 5;
        double[][] heat = new double[n][1];
        double[] outdoor = new double[n];
        for (int i = 0; i < n; i++) {
            outdoor[i] = in.si("Tm") + in.difference("Ta") * Math.cos(2 * Math.PI * 5 * i / 86_400);
            heat[i][0] = outdoor[i] / r + in.si("Qg");
        }
        RunRecord run =
                engine(ModalHouse.of(new double[] {in.si("C")}, new double[][] {{1 / r}}))
                        .repeat(
                                HouseDrive.dry(5, true, heat, outdoor),
                                CycleControl.single(340, 1),
                                UnitResponse.constant(1, 1),
                                0,
                                1e-6,
                                100,
                                1);
        return Arrays.stream(run.traceTemperatures()).max().orElseThrow();
    }

    /** Chain 1-2-3 with node 3 to an outdoor temperature that rises with time. */
    private static double[] chain(CaseInputs in) {
        double g12 = 1 / in.si("R12");
        double g23 = 1 / in.si("R23");
        double g3 = 1 / in.si("R3");
        ModalHouse house =
                ModalHouse.of(
                        new double[] {in.si("C1"), in.si("C2"), in.si("C3")},
                        new double[][] {
                            {g12, -g12, 0}, {-g12, g12 + g23, -g23}, {0, -g23, g23 + g3}
                        });
        return house.after(
                new double[] {in.si("T1"), in.si("T2"), in.si("T3")},
                new double[] {in.si("Q"), 0, g3 * in.si("a")},
                new double[] {0, 0, g3 * in.difference("b")},
                in.si("t"));
    }

    private static double[] bins(CaseInputs in) {
        String list = in.raw().substring(in.raw().indexOf("bins T/h") + 8).strip();
        String[] each = list.split("\\s+");
        double[] t = new double[each.length];
        double[] hours = new double[each.length];
        for (int i = 0; i < each.length; i++) {
            String[] pair = each[i].split("/");
            t[i] = fahrenheit(Double.parseDouble(pair[0]));
            hours[i] = Double.parseDouble(pair[1]);
        }
        double[] out = new double[4];
        BinMethod.cooling(
                in.difference("UA"),
                in.si("Ti"),
                in.si("Qg"),
                fahrenheit(95),
                power(in, "QA"),
                in.si("PA"),
                fahrenheit(82),
                power(in, "QB"),
                in.si("PB"),
                in.si("Cd"),
                t,
                hours,
                out);
        return out;
    }

    /** "36000 Btu/h at 95 degF": the temperature is part of the case's wording. */
    private static double power(CaseInputs in, String name) {
        return in.number(name) * CaseUnit.of(in.unit(name).replaceFirst(" at .*", "")).scale();
    }
}
