package dev.thinair.reference;

import dev.thinair.psychro.kernel.IapwsSaturation;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.reference.CaseEvaluator.NotOffered;
import java.util.function.ToDoubleFunction;

/** Rules for moist air: saturation, states, processes. */
final class PsychroCases {

    private static final String LIQUID = "liquid water";

    private PsychroCases() {}

    static void register(CaseEvaluator to) {
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

        state(to, s -> s.w, "humidity ratio");
        state(to, s -> IdealMoistAir.relativeHumidity(s.t, s.w, s.p), "relative humidity");
        state(to, s -> IdealMoistAir.dewPoint(s.w, s.p), "dew point temperature");
        state(
                to,
                s -> IdealMoistAir.wetBulb(s.t, s.w, s.p),
                "thermodynamic wet bulb temperature",
                "wet bulb just below the liquid/ice switch (ice branch)");
        state(to, s -> IdealMoistAir.enthalpy(s.t, s.w), "specific enthalpy of moist air");
        state(to, s -> IdealMoistAir.specificVolume(s.t, s.w, s.p), "specific volume of moist air");
        state(to, s -> IdealMoistAir.density(s.t, s.w, s.p), "density of moist air");
        to.on(in -> Answer.si(saturated(in).w), "saturation humidity ratio");
        to.on(
                in -> {
                    State s = saturated(in);
                    return Answer.si(IdealMoistAir.specificVolume(s.t, s.w, s.p));
                },
                "specific volume of saturated moist air");
        to.on(
                in -> {
                    State s = saturated(in);
                    return Answer.si(IdealMoistAir.enthalpy(s.t, s.w));
                },
                "specific enthalpy of saturated moist air");
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

    private static void state(
            CaseEvaluator to, ToDoubleFunction<State> property, String... wordings) {
        to.on(in -> Answer.si(property.applyAsDouble(State.of(in))), wordings);
    }

    private static State saturated(CaseInputs in) {
        requireIdeal(in);
        double t = in.anySi("t", "T");
        double p = in.si("p");
        return new State(t, IdealMoistAir.saturationHumidityRatio(t, p), p);
    }

    private static void requireIdeal(CaseInputs in) {
        requireFormulation(in, "ideal mixture");
    }

    /** Dry bulb in K, humidity ratio, pressure in Pa. */
    private record State(double t, double w, double p) {

        static State of(CaseInputs in) {
            requireIdeal(in);
            double t = in.anySi("t", "T");
            double p = in.si("p");
            return new State(t, humidityRatio(in, t, p, ""), p);
        }

        static double humidityRatio(CaseInputs in, double t, double p, String suffix) {
            if (in.has("W" + suffix)) {
                return in.si("W" + suffix);
            }
            if (in.has("RH" + suffix)) {
                return IdealMoistAir.humidityRatioFromRelativeHumidity(t, in.si("RH" + suffix), p);
            }
            if (in.has("t_wb" + suffix)) {
                double wetBulb = in.si("t_wb" + suffix);
                return in.text("bulb", LIQUID).equals(LIQUID)
                        ? WetBulb.humidityRatioOverLiquid(t, wetBulb, p)
                        : WetBulb.humidityRatioOverIce(t, wetBulb, p);
            }
            if (in.has("t_dp" + suffix)) {
                return IdealMoistAir.humidityRatioFromDewPoint(in.si("t_dp" + suffix), p);
            }
            return IdealMoistAir.humidityRatioFromEnthalpy(t, in.si("h" + suffix));
        }
    }
}
