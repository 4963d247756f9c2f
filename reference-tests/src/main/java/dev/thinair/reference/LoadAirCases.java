package dev.thinair.reference;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.loads.kernel.ResidentialLoadFactor;
import dev.thinair.loads.kernel.SupplyAir;
import dev.thinair.loads.kernel.VentilationAir;
import java.util.function.ToDoubleFunction;

/** Rules for infiltration, ventilation and the air that rooms need. */
final class LoadAirCases {

    /** Of (L/s)2/(cm4 K) and of (L/s)2/(cm4 (m/s)2), the units of the handbook's tables. */
    private static final double TABLE_COEFFICIENT = 1e-6 / 1e-8;

    private static final double SEA_LEVEL = 101_325;

    private LoadAirCases() {}

    static void register(CaseEvaluator to) {
        leakage(to);
        flows(to);
        residential(to);
        loads(to);
    }

    private static void leakage(CaseEvaluator to) {
        value(
                to,
                in ->
                        InfiltrationModel.leakageArea(
                                coefficient(in),
                                in.si("n"),
                                in.si("reference"),
                                in.si("C_D"),
                                in.si("rho")),
                "effective leakage area at 4 Pa from c, n");
        value(
                to,
                in ->
                        InfiltrationModel.leakageArea(
                                InfiltrationModel.leakageCoefficient(in.si("Q50"), 50, in.si("n")),
                                in.si("n"),
                                in.si("reference", 4),
                                in.si("C_D"),
                                in.si("rho")),
                "effective leakage area 4 Pa from Q50");
        to.onEach(
                "equivalent leakage area at ([0-9.]+) pa c d=([0-9.]+) from ela ([0-9.]+) pa"
                        + " c d=([0-9.]+) ratio",
                (in, w) ->
                        Answer.si(
                                InfiltrationModel.areaRatio(
                                        in.si("n"),
                                        Double.parseDouble(w.group(3)),
                                        Double.parseDouble(w.group(4)),
                                        Double.parseDouble(w.group(1)),
                                        Double.parseDouble(w.group(2)))));
        value(
                to,
                in ->
                        InfiltrationModel.normalizedLeakage(
                                in.si("ELA"), in.si("A_floor"), in.si("H")),
                "normalized leakage");
        value(
                to,
                in -> ResidentialLoadFactor.leakageArea(in.si("A_es"), in.si("A_ul")),
                "leakage area from exposed surface");
    }

    private static void flows(CaseEvaluator to) {
        value(to, LoadAirCases::basic, "basic-model infiltration flow");
        value(to, LoadAirCases::stack, "enhanced model (AIM-2) stack flow");
        value(to, LoadAirCases::wind, "enhanced model (AIM-2) wind flow");
        value(
                to,
                LoadAirCases::enhanced,
                "enhanced model (AIM-2) total by quadrature",
                "enhanced model (AIM-2) total by quadrature (source rounds the two parts first)");
        value(
                to,
                in -> InfiltrationModel.airChanges(anyFlow(in), in.si("V")),
                "air change rate",
                "ACH50");
        to.onEach(
                "stack coefficient .*derived from the lbl model f s\\^2 g h/t",
                (in, w) ->
                        Answer.si(
                                InfiltrationModel.basicStackCoefficient(
                                        in.si("R"), in.si("X"), in.si("H"), in.si("T"))));
        to.onEach(
                "volume-flow ratio to sea level of a crack with exponent n .*",
                (in, w) ->
                        Answer.si(InfiltrationModel.flowAtDensity(in.si("n"), pressureRatio(in))));
        to.onEach(
                "stack infiltration sensible load ratio to sea level.*",
                (in, w) ->
                        Answer.si(InfiltrationModel.loadAtDensity(in.si("n"), pressureRatio(in))));
    }

    private static double coefficient(CaseInputs in) {
        return LoadInputs.flowCoefficient(in, "c", in.si("n"));
    }

    private static double basic(CaseInputs in) {
        return InfiltrationModel.basicFlow(
                in.si("A_L"),
                LoadInputs.inTableUnit(in, "C_s", TABLE_COEFFICIENT),
                LoadInputs.inTableUnit(in, "C_w", TABLE_COEFFICIENT),
                in.difference("delta T"),
                in.si("U"));
    }

    private static double stack(CaseInputs in) {
        return InfiltrationModel.enhancedStackFlow(
                coefficient(in),
                in.si("n"),
                LoadInputs.toThePower(in, "C_s", in.si("n")),
                in.difference("delta T"));
    }

    private static double wind(CaseInputs in) {
        return InfiltrationModel.enhancedWindFlow(
                coefficient(in),
                in.si("n"),
                LoadInputs.toThePower(in, "C_w", in.si("n")),
                in.si("shelter"),
                in.si("G"),
                in.si("U_met"));
    }

    private static double enhanced(CaseInputs in) {
        return InfiltrationModel.superpose(stack(in), wind(in));
    }

    /** Whatever flow the case describes: a blower-door reading, a model's inputs, a plain flow. */
    private static double anyFlow(CaseInputs in) {
        if (in.has("A_L")) {
            return basic(in);
        }
        return in.has("c") ? enhanced(in) : in.anySi("Q50", "Q");
    }

    private static void residential(CaseEvaluator to) {
        value(to, in -> drivingForce(in, in.text("mode"), 0), "RLF infiltration driving force");
        value(
                to,
                in ->
                        in.si("A_L")
                                * drivingForce(
                                        in,
                                        in.has("heating") ? "heating" : "cooling",
                                        in.si("A_flue") / in.si("A_L")),
                "RLF infiltration with flue");
        value(
                to,
                in ->
                        VentilationAir.wholeHouseRate(
                                in.si("A_cf"), (int) Math.round(in.number("N_br"))),
                "required whole-house ventilation");
        value(
                to,
                in -> VentilationAir.total(in.si("Q_i"), in.si("Q_unbal"), in.si("Q_bal", 0)),
                "combined infiltration and ventilation",
                "combined infiltration and unbalanced ventilation",
                "combined: large exhaust fan dominates");
    }

    private static double drivingForce(CaseInputs in, String mode, double flueShare) {
        return ResidentialLoadFactor.infiltrationDrivingForce(
                mode.startsWith("heating"), in.si("H"), in.difference("delta t"), flueShare);
    }

    private static void loads(CaseEvaluator to) {
        value(
                to,
                in -> {
                    LoadInputs.requireAirFactor(in);
                    return VentilationAir.sensible(
                            in.si("Q"), 0, 0, in.difference("delta t"), pressure(in));
                },
                "sensible infiltration load",
                "sensible infiltration/ventilation cooling load",
                "sensible infiltration load at elevation, C_s=1.23*p/p0");
        value(
                to,
                in -> {
                    LoadInputs.requireAirFactor(in);
                    double[] areas = LoadInputs.list(in, "A");
                    double[] conductances = LoadInputs.list(in, "U");
                    for (int i = 0; i < areas.length; i++) {
                        conductances[i] *= areas[i];
                    }
                    return VentilationAir.bufferTemperature(
                            VentilationAir.sensible(in.si("Q"), 0, 0, 1, pressure(in)),
                            in.si("t_o"),
                            conductances,
                            LoadInputs.list(in, "t_x"),
                            in.si("q"));
                },
                "buffer space temperature (attic/garage heat balance)");
        value(
                to,
                in -> {
                    LoadInputs.requireAirFactor(in);
                    return SupplyAir.volumeFlowByFactor(
                            in.si("q_s"), in.difference("supply delta t"), pressureRatio(in));
                },
                "room supply airflow from sensible load at elevation");
        value(
                to,
                // Another air factor is the method's own at another density.
                in ->
                        SupplyAir.volumeFlowByFactor(
                                in.si("q_s"),
                                in.difference("delta t"),
                                in.difference("factor") / 1_230),
                "room supply airflow, trade units");
    }

    private static double pressure(CaseInputs in) {
        return in.has("elevation")
                ? StandardAtmosphere.handbookPressure(in.si("elevation"))
                : SEA_LEVEL;
    }

    private static double pressureRatio(CaseInputs in) {
        return pressure(in) / SEA_LEVEL;
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }
}
