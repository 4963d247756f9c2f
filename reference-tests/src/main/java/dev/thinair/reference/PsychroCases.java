package dev.thinair.reference;

import dev.thinair.psychro.kernel.AirModel;
import dev.thinair.psychro.kernel.AirPoint;
import dev.thinair.psychro.kernel.CoilLine;
import dev.thinair.psychro.kernel.CoilOutcome;
import dev.thinair.psychro.kernel.CoolingCoil;
import dev.thinair.psychro.kernel.EnhancementFactor;
import dev.thinair.psychro.kernel.Humidifying;
import dev.thinair.psychro.kernel.IapwsSaturation;
import dev.thinair.psychro.kernel.Mixing;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.reference.CaseEvaluator.NotOffered;
import java.util.function.ToDoubleFunction;

/** Rules for moist air: saturation, states, processes. */
final class PsychroCases {

    private static final String LIQUID = "liquid water";

    // The compact enhancement factor against IAPWS G8-10, as EnhancementFactor documents it.
    private static final double ENHANCEMENT_ERROR = 1.8e-4;
    // What that comes to in the saturation humidity ratio over the whole grid, relative.
    private static final double REAL_SATURATION_ERROR = 8.4e-4;

    private PsychroCases() {}

    static void register(CaseEvaluator to) {
        saturation(to);
        states(to);
        heating(to);
        notOffered(to);
        coils(to);
        mixing(to);
        humidifying(to);
    }

    private static void saturation(CaseEvaluator to) {
        to.on(in -> Answer.si(liquidPressure(in)), "saturation pressure over liquid water");
        to.on(
                in -> Answer.si(icePressure(in)),
                "saturation pressure over ice",
                "sublimation pressure over ice");
        to.on(
                in -> {
                    requireFormulation(in, "IF97");
                    return Answer.si(IapwsSaturation.liquidTemperature(in.si("p")));
                },
                "saturation temperature over liquid water");
        to.on(
                in ->
                        Answer.approximate(
                                EnhancementFactor.value(in.anySi("t", "T"), in.si("p")),
                                ENHANCEMENT_ERROR),
                "enhancement factor");
    }

    private static void states(CaseEvaluator to) {
        state(to, s -> s.w, "humidity ratio");
        state(to, s -> s.air.relativeHumidity(s.t, s.w, s.p), "relative humidity");
        state(to, s -> s.air.dewPoint(s.w, s.p), "dew point temperature");
        state(
                to,
                s -> s.air.wetBulb(s.t, s.w, s.p),
                "thermodynamic wet bulb temperature",
                "wet bulb just below the liquid/ice switch (ice branch)");
        state(to, State::enthalpy, "specific enthalpy of moist air");
        state(to, State::volume, "specific volume of moist air");
        state(to, s -> s.air.density(s.t, s.w, s.p), "density of moist air");
        // Inch-pound tables put dry air at 0 degF: 7.69 Btu/lb above the SI datum
        // (h = 0.240 t + W (1061 + 0.444 t), ASHRAE Fundamentals, I-P, from memory).
        to.on(
                in ->
                        Answer.si(
                                AirModel.IDEAL.enthalpy(in.si("t"), in.si("W"), 101_325)
                                        - AirModel.IDEAL.enthalpy((459.67) / 1.8, 0, 101_325)),
                "specific enthalpy of moist air, I-P datum (dry air 0 at 0 degF)");
        saturated(to, s -> s.w, "saturation humidity ratio");
        saturated(to, State::volume, "specific volume of saturated moist air");
        saturated(to, State::enthalpy, "specific enthalpy of saturated moist air");
        to.on(
                in -> Answer.si(model(in).enthalpy(in.si("t"), 0, in.si("p"))),
                "specific enthalpy of dry air");
        to.on(
                in ->
                        Answer.si(
                                WetBulb.humidityRatioOverLiquid(
                                        in.si("t"), in.si("t_wb"), in.si("p"))),
                "humidity ratio at wet bulb exactly 0 degC, liquid bulb");
        to.on(
                in ->
                        Answer.si(
                                WetBulb.humidityRatioOverIce(
                                        in.si("t"), in.si("t_wb"), in.si("p"))),
                "humidity ratio at wet bulb exactly 0 degC, ice bulb");
    }

    private static void notOffered(CaseEvaluator to) {
        to.notOffered(
                "the library has no full real-gas equation of water or humid air; the compact real"
                        + " mixture is held against the same release in other cases",
                "specific enthalpy of saturated ice",
                "specific enthalpy of saturated water vapor",
                "specific enthalpy of saturated liquid water",
                "density of humid air",
                "specific enthalpy of humid air per kg of humid air");
        to.notOffered(
                "a maker's table is data that comes with the appliance",
                "rule: maker's derate table (not a density law)",
                "rule: motor output multiplier, ambient x altitude (maker's table)");
    }

    private static void heating(CaseEvaluator to) {
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    State two = new State(one.air, in.si("t2"), one.w, one.p);
                    return Answer.si(
                            in.si("V1") / one.volume() * (two.enthalpy() - one.enthalpy()));
                },
                "heat added, sensible heating");
        to.on(in -> Answer.si(in.si("V1") / State.of(in, "1").volume()), "dry-air mass flow");
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    return Answer.si(one.air.enthalpy(in.si("t2"), one.w, one.p));
                },
                "specific enthalpy of moist air at outlet");
        to.on(
                in -> {
                    double bypass = in.si("BF");
                    double t1 = in.si("t1");
                    // Heating with a bypass: the surface lies beyond the leaving state.
                    return Answer.si(t1 + (in.si("t2") - t1) / (1 - bypass));
                },
                "coil surface temperature from bypass factor, sensible heating");
        to.on(
                in ->
                        Answer.si(
                                in.si("V")
                                        * in.si("persons")
                                        / in.si("v")
                                        * (in.si("h2") - in.si("h1"))),
                "heating coil capacity");
        to.on(
                in -> {
                    State room = State.of(in, "2");
                    SupplyAir supply = SupplyAir.of(in, room);
                    return Answer.si(room.air.wetBulb(supply.t, supply.w, room.p));
                },
                "required supply wet bulb for a space condition line");
        to.on(
                in -> {
                    State room = State.of(in, "2");
                    SupplyAir supply = SupplyAir.of(in, room);
                    return Answer.si(
                            supply.dryAir * room.air.specificVolume(supply.t, supply.w, room.p));
                },
                "supply volume flow");
        to.on(
                in -> Answer.si((in.si("q_s") + in.si("m_w") * in.si("h_w")) / in.si("m_w")),
                "condition line slope dh/dW");
        to.on(
                in -> Answer.si(in.si("q_s") / (in.si("q_s") + in.si("m_w") * in.si("h_w"))),
                "sensible heat ratio of the space gains");
    }

    private static void coils(CaseEvaluator to) {
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    State two = State.of(in, "2");
                    return Answer.si(in.si("V1") / one.volume() * heatRemoved(one, two));
                },
                "refrigeration load, cooling and dehumidifying");
        coil(to, (one, out) -> out.t, "coil outlet dry bulb from ADP and bypass factor");
        coil(to, (one, out) -> out.w, "coil outlet humidity ratio from ADP and bypass factor");
        coil(
                to,
                (one, out) -> out.air.wetBulb(out.t, out.w, out.p),
                "coil outlet wet bulb from ADP and bypass factor");
        coil(
                to,
                PsychroCases::heatRemoved,
                "total heat removed per kg dry air (condensate leaving at outlet dry bulb,"
                        + " h_w=4.186 t)",
                "dry coil: heat removed per kg dry air");
        coil(
                to,
                (one, out) ->
                        CoolingCoil.sensibleHeatRatio(one.air, one.t, one.w, out.t, out.w, one.p),
                "sensible heat ratio of the coil, sensible = h(t1,W2)-h(t2,W2) over h1-h2");
        coil(
                to,
                (one, out) -> out.w,
                "dry coil: outlet humidity ratio equals inlet (inlet dew point below surface)");
        coil(to, (one, out) -> out.t, "dry coil: outlet dry bulb");
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    return Answer.si(one.air.dewPoint(one.w, one.p));
                },
                "dry coil: inlet dew point");
        to.on(
                in -> Answer.si(wetLine(in).apparatusDewPoint()),
                "apparatus dew point from inlet and outlet (h-W line)");
        to.on(
                in -> Answer.si(wetLine(in).bypassFactor()),
                "bypass factor from inlet and outlet (h-W line)");
    }

    private static void mixing(CaseEvaluator to) {
        mixture(to, (air, point, p) -> point.dryBulb(), "mixed dry bulb, adiabatic mixing");
        mixture(to, (air, point, p) -> point.humidityRatio(), "mixed humidity ratio");
        mixture(
                to,
                (air, point, p) -> air.wetBulb(point.dryBulb(), point.humidityRatio(), p),
                "mixed wet bulb, adiabatic mixing");
        mixture(
                to,
                (air, point, p) -> point.dryBulb(),
                "mixing into fog: equilibrium temperature, saturated air plus liquid droplets"
                        + " (h_w=4.186 t)");
        mixture(
                to,
                (air, point, p) -> point.liquid(),
                "mixing into fog: liquid water content per kg dry air");
        to.on(
                in -> Answer.si(singlePhase(in).t),
                "mixing into fog: unphysical single-phase dry bulb before condensation");
        to.on(
                in -> {
                    State s = singlePhase(in);
                    return Answer.si(s.air.degreeOfSaturation(s.t, s.w, s.p));
                },
                "mixing into fog: degree of saturation W/Ws of that state (above 1 = fog)");
    }

    private static void humidifying(CaseEvaluator to) {
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    double added = State.humidityRatio(in, one.air, 0, one.p, "2") - one.w;
                    return Answer.si(
                            Humidifying.injection(
                                            one.air, one.t, one.w, added, in.si("h_steam"), one.p)
                                    .dryBulb());
                },
                "outlet dry bulb, adiabatic steam humidifying");
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    return Answer.si(
                            in.si("m_da")
                                    * (State.humidityRatio(in, one.air, 0, one.p, "2") - one.w));
                },
                "steam mass flow");
        to.on(in -> Answer.si(evaporative(in).dryBulb()), "evaporative cooler outlet dry bulb");
        to.on(
                in -> Answer.si(evaporative(in).humidityRatio()),
                "evaporative cooler outlet humidity ratio");
    }

    private static AirPoint evaporative(CaseInputs in) {
        State one = State.of(in, "1");
        return Humidifying.evaporative(one.air, one.t, one.w, in.si("effectiveness"), one.p);
    }

    private static double heatRemoved(State entering, State leaving) {
        return CoolingCoil.heatRemoved(
                entering.enthalpy(),
                entering.w,
                leaving.enthalpy(),
                leaving.w,
                leaving.air.condensateEnthalpy(leaving.t));
    }

    @FunctionalInterface
    private interface CoilProperty {
        double of(State entering, State leaving);
    }

    @FunctionalInterface
    private interface MixtureProperty {
        double of(AirModel air, AirPoint point, double pressure);
    }

    private static void coil(CaseEvaluator to, CoilProperty property, String... wordings) {
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    CoilOutcome outcome =
                            CoolingCoil.leaving(
                                    one.air,
                                    one.t,
                                    one.w,
                                    in.anySi("ADP", "t_surface"),
                                    in.si("BF"),
                                    one.p);
                    if (outcome instanceof CoilOutcome.Wet wet) {
                        return Answer.si(
                                property.of(
                                        one,
                                        new State(
                                                one.air,
                                                wet.dryBulb(),
                                                wet.humidityRatio(),
                                                one.p)));
                    }
                    if (outcome instanceof CoilOutcome.Dry dry) {
                        return Answer.si(
                                property.of(
                                        one,
                                        new State(
                                                one.air,
                                                dry.dryBulb(),
                                                dry.humidityRatio(),
                                                one.p)));
                    }
                    return Answer.text("no coil state");
                },
                wordings);
    }

    private static CoilLine.Wet wetLine(CaseInputs in) {
        State one = State.of(in, "1");
        CoilLine line = CoolingCoil.line(one.air, one.t, one.w, in.si("t2"), in.si("W2"), one.p);
        if (line instanceof CoilLine.Wet wet) {
            return wet;
        }
        throw new ArithmeticException("no wet coil line: " + line);
    }

    private static void mixture(CaseEvaluator to, MixtureProperty property, String wording) {
        to.on(
                in -> {
                    State one = State.of(in, "1");
                    State two = State.of(in, "2");
                    AirPoint mixed =
                            Mixing.adiabatic(
                                    one.air,
                                    dryAir(in, one, "1"),
                                    one.t,
                                    one.w,
                                    dryAir(in, two, "2"),
                                    two.t,
                                    two.w,
                                    one.p);
                    return Answer.si(property.of(one.air, mixed, one.p));
                },
                wording);
    }

    private static double dryAir(CaseInputs in, State state, String suffix) {
        return in.has("m" + suffix) ? in.si("m" + suffix) : in.si("V" + suffix) / state.volume();
    }

    private static State singlePhase(CaseInputs in) {
        State one = State.of(in, "1");
        State two = State.of(in, "2");
        double m1 = in.si("m1");
        double m2 = in.si("m2");
        double w = Mixing.mean(m1, one.w, m2, two.w);
        double h = Mixing.mean(m1, one.enthalpy(), m2, two.enthalpy());
        return new State(one.air, one.air.dryBulbFromEnthalpy(h, w, one.p), w, one.p);
    }

    private static double liquidPressure(CaseInputs in) {
        double t = in.anySi("T", "t");
        String formulation = in.text("formulation", "HW");
        if (formulation.contains("IF97")) {
            return IapwsSaturation.liquidPressure(t);
        }
        if (formulation.startsWith("HW")) {
            return Saturation.pressureOverLiquid(t);
        }
        throw notOffered(formulation);
    }

    private static double icePressure(CaseInputs in) {
        double t = in.anySi("T", "t");
        String formulation = in.text("formulation", "HW");
        if (formulation.contains("R14-08")) {
            return IapwsSaturation.icePressure(t);
        }
        if (formulation.startsWith("HW")) {
            return Saturation.pressureOverIce(t);
        }
        throw notOffered(formulation);
    }

    private static void requireFormulation(CaseInputs in, String offered) {
        String asked = in.text("formulation", offered);
        if (!asked.contains(offered)) {
            throw notOffered(asked);
        }
    }

    static NotOffered notOffered(String formulation) {
        return new NotOffered("formulation \"" + formulation + "\" is not offered");
    }

    /** The ideal mixture unless the case asks for real moist air. */
    private static AirModel model(CaseInputs in) {
        String formulation = in.text("formulation", "ideal mixture");
        if (formulation.startsWith("ideal mixture")) {
            return AirModel.IDEAL;
        }
        if (formulation.startsWith("real")) {
            return AirModel.REAL;
        }
        throw notOffered(formulation);
    }

    private static void state(
            CaseEvaluator to, ToDoubleFunction<State> property, String... wordings) {
        to.on(in -> Answer.si(property.applyAsDouble(State.of(in, ""))), wordings);
    }

    private static void saturated(
            CaseEvaluator to, ToDoubleFunction<State> property, String wording) {
        to.on(
                in -> {
                    AirModel air = model(in);
                    double t = in.anySi("t", "T");
                    double p = in.si("p");
                    double value =
                            property.applyAsDouble(
                                    new State(air, t, air.saturationHumidityRatio(t, p), p));
                    return air == AirModel.REAL
                            ? Answer.approximate(value, REAL_SATURATION_ERROR * Math.abs(value))
                            : Answer.si(value);
                },
                wording);
    }

    /** Air supplied to a room so that its gains bring it to the room's state. */
    private record SupplyAir(double t, double w, double dryAir) {

        static SupplyAir of(CaseInputs in, State room) {
            double t = in.si("t1");
            double water = in.si("m_w");
            double slope = (in.si("q_s") + water * in.si("h_w")) / water;
            // On the line h - h2 = slope (W - W2) at the given supply dry bulb; h is linear in W.
            double h0 = room.air.enthalpy(t, 0, room.p);
            double perW = (room.air.enthalpy(t, room.w, room.p) - h0) / room.w;
            double w = (room.enthalpy() - h0 - slope * room.w) / (perW - slope);
            return new SupplyAir(t, w, water / (room.w - w));
        }
    }

    /** Model, dry bulb in K, humidity ratio, pressure in Pa. */
    private record State(AirModel air, double t, double w, double p) {

        static State of(CaseInputs in, String suffix) {
            AirModel air = model(in);
            double t = in.anySi("t" + suffix, "T" + suffix);
            double p = in.si("p");
            return new State(air, t, humidityRatio(in, air, t, p, suffix), p);
        }

        double enthalpy() {
            return air.enthalpy(t, w, p);
        }

        double volume() {
            return air.specificVolume(t, w, p);
        }

        static double humidityRatio(
                CaseInputs in, AirModel air, double t, double p, String suffix) {
            if (in.has("W" + suffix)) {
                return in.si("W" + suffix);
            }
            if (in.has("RH" + suffix)) {
                double given = in.si("RH" + suffix);
                return air.humidityRatioFromRelativeHumidity(t, given, p);
            }
            if (in.has("t_wb" + suffix)) {
                double wetBulb = in.si("t_wb" + suffix);
                if (air == AirModel.REAL) {
                    return air.humidityRatioFromWetBulb(t, wetBulb, p);
                }
                return in.text("bulb", LIQUID).equals(LIQUID)
                        ? WetBulb.humidityRatioOverLiquid(t, wetBulb, p)
                        : WetBulb.humidityRatioOverIce(t, wetBulb, p);
            }
            if (in.has("t_dp" + suffix)) {
                return air.humidityRatioFromDewPoint(in.si("t_dp" + suffix), p);
            }
            return air.humidityRatioFromEnthalpy(t, in.si("h" + suffix), p);
        }
    }
}
