package dev.thinair.reference;

import dev.thinair.ducts.DuctData;
import dev.thinair.ducts.kernel.BlowerCurve;
import dev.thinair.ducts.kernel.DeliveryEffectiveness;
import dev.thinair.ducts.kernel.DuctConduction;
import dev.thinair.ducts.kernel.DuctGeometry;
import dev.thinair.ducts.kernel.DuctLoss;
import dev.thinair.ducts.kernel.Elbows;
import dev.thinair.ducts.kernel.FaceLoss;
import dev.thinair.ducts.kernel.FlexibleDuct;
import dev.thinair.ducts.kernel.Friction;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.ducts.kernel.Junctions;
import dev.thinair.ducts.kernel.Leakage;
import dev.thinair.ducts.kernel.Network;
import dev.thinair.ducts.kernel.Openings;
import dev.thinair.ducts.kernel.RegisterShutting;
import dev.thinair.ducts.kernel.RoundElbow;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.ducts.kernel.TonnageAirflow;
import dev.thinair.ducts.kernel.Transitions;
import dev.thinair.ducts.kernel.VelocityPressure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules for ducts, blowers and networks. */
final class DuctCases {

    private static final double INCH = 0.0254;

    /** A ton of refrigeration, W: 12,000 Btu/h of the International Table. */
    private static final double TON = 12_000 * 1055.05585262 / 3600;

    /** Specific heat of air where a case in inch-pound units leaves it out: 0.24 Btu/(lb F). */
    private static final double CP_INCH_POUND = 0.24 * 4186.8;

    private DuctCases() {}

    static void register(CaseEvaluator to) {
        frictionFactors(to);
        friction(to);
        velocity(to);
        shapes(to);
        flexible(to);
        elbows(to);
        fittings(to);
        equivalentLengths(to);
        conduction(to);
        leakage(to);
        data(to);
        tonnage(to);
        filters(to);
        blowers(to);
        elevation(to);
        networks(to);
        exhaust(to);
    }

    private static void frictionFactors(CaseEvaluator to) {
        factor(
                to,
                Friction::colebrookWhite,
                "darcy friction factor, Colebrook-White",
                "darcy friction factor at Re of Example 8-4");
        value(to, in -> Friction.laminar(in.si("Re")), "darcy friction factor, laminar");
        factor(to, Friction::churchill, "darcy friction factor, Churchill 1977 all-regime");
        factor(to, Friction::haaland, "darcy friction factor, Haaland 1983");
        factor(
                to,
                Friction::swameeJain,
                "darcy friction factor, Swamee-Jain 1976 (form 0.25/log10^2 with 5.74/Re^0.9)");
    }

    private static void factor(CaseEvaluator to, DoubleBinaryOperator f, String... wordings) {
        value(to, in -> f.applyAsDouble(in.si("Re"), in.si("relative_roughness")), wordings);
    }

    private static void friction(CaseEvaluator to) {
        value(
                to,
                DuctCases::roundFriction,
                "friction rate, round duct",
                "friction rate, round duct at elevation",
                "friction chart reading, round galvanized",
                "friction loss per metre, round duct",
                "friction loss per metre, below-freezing air");
        value(to, in -> in.si("length") * roundFriction(in), "duct friction loss");
        value(
                to,
                in ->
                        FrictionChart.diameter(
                                in.si("airflow"),
                                // The head is one of air: any density gives the same diameter.
                                in.si("head_loss")
                                        * in.si("gravity")
                                        * StandardAir.DENSITY
                                        / in.si("length"),
                                in.si("roughness"),
                                StandardAir.DENSITY,
                                in.si("kinematic_viscosity") * StandardAir.DENSITY),
                "duct diameter for a head loss, smooth");
        to.onEach(
                "fan pressure two ducts in series.*",
                (in, wording) -> Answer.si(section(in, "1") + section(in, "2")));
        value(
                to,
                in ->
                        FrictionChart.flow(
                                in.si("diameter"),
                                in.si("friction_rate"),
                                in.si("roughness"),
                                density(in),
                                viscosity(in)),
                "airflow at 0.1 in. w.g. per 100 ft, round galvanized",
                "airflow at given friction rate");
        value(
                to,
                in ->
                        FrictionChart.diameter(
                                in.si("airflow"),
                                in.si("friction_rate"),
                                in.si("roughness"),
                                density(in),
                                viscosity(in)),
                "equal friction: exact diameter for airflow");
        value(
                to,
                in -> FrictionChart.elevationCorrection(in.si("elevation")),
                "friction chart correction for elevation K_E");
        value(
                to,
                in -> FrictionChart.temperatureCorrection(in.si("temperature")),
                "friction chart correction for temperature K_T");
        value(
                to,
                in ->
                        FrictionChart.staticRegainDiameter(
                                in.si("q_up"),
                                in.si("d_up"),
                                in.si("q_down"),
                                in.si("length"),
                                in.si("regain_factor"),
                                in.si("roughness"),
                                density(in),
                                viscosity(in)),
                "static regain: downstream diameter with regain equal to friction");
    }

    /** One of several ducts in series with a given friction factor. */
    private static double section(CaseInputs in, String number) {
        double d = in.si("d" + number);
        double c =
                FrictionChart.lossCoefficient(
                                in.si("l" + number) + in.si("leq" + number, 0), d, in.si("darcy_f"))
                        + in.si("k" + number, 0);
        double v = VelocityPressure.meanVelocity(in.si("q" + number), DuctGeometry.roundArea(d));
        return DuctLoss.fitting(c, v, in.si("density"));
    }

    private static double roundFriction(CaseInputs in) {
        double d = in.si("diameter");
        return Friction.lossPerLength(
                VelocityPressure.meanVelocity(in.si("airflow"), DuctGeometry.roundArea(d)),
                d,
                in.si("roughness"),
                density(in),
                viscosity(in));
    }

    private static double density(CaseInputs in) {
        return in.si("density", StandardAir.DENSITY);
    }

    private static double viscosity(CaseInputs in) {
        return in.has("kinematic_viscosity")
                ? in.si("kinematic_viscosity") * density(in)
                : in.si("viscosity", StandardAir.VISCOSITY);
    }

    private static void velocity(CaseEvaluator to) {
        value(
                to,
                in ->
                        VelocityPressure.meanVelocity(
                                in.si("airflow"), DuctGeometry.roundArea(in.si("diameter"))),
                "mean velocity, round duct");
        value(
                to,
                in -> VelocityPressure.pressure(in.si("velocity"), density(in)),
                "velocity pressure");
        ToDoubleFunction<CaseInputs> fromPressure =
                in -> VelocityPressure.velocity(in.si("velocity_pressure"), density(in));
        value(
                to,
                fromPressure,
                "velocity from velocity pressure",
                "velocity at 1 in. of water, conventional (4 C) inch",
                "velocity at 1 in. of water, 60 F inch",
                "trade constant: velocity at 1 in. w.g., standard air");
        value(
                to,
                in ->
                        VelocityPressure.constantAtDensity(
                                in.si("sea_level_constant", VelocityPressure.TRADE_CONSTANT),
                                in.si("density_ratio")),
                "velocity constant at elevation (4005/sqrt(density ratio))");
        value(
                to,
                in ->
                        FaceLoss.freeAreaVelocity(
                                in.si("airflow"),
                                in.si("width") * in.si("height"),
                                in.si("free_area_fraction")),
                "velocity through free area of grille");
    }

    private static void shapes(CaseEvaluator to) {
        sides(
                to,
                DuctGeometry::rectangularEquivalentDiameter,
                "circular equivalent of rectangular duct",
                "circular equivalent of rectangular duct, full precision",
                "circular equivalent of a square of side 10: trap, not the hydraulic diameter");
        sides(to, DuctGeometry::rectangularHydraulicDiameter, "hydraulic diameter, rectangular");
        axes(
                to,
                DuctGeometry::flatOvalEquivalentDiameter,
                "circular equivalent of flat oval duct",
                "circular equivalent of flat oval duct: limit of a circle");
        axes(to, DuctGeometry::flatOvalHydraulicDiameter, "hydraulic diameter, flat oval");
        value(
                to,
                in -> {
                    double a = in.si("side_a");
                    double b = in.si("side_b");
                    return Friction.lossPerLength(
                            VelocityPressure.meanVelocity(in.si("airflow"), a * b),
                            DuctGeometry.rectangularHydraulicDiameter(a, b),
                            in.si("roughness"),
                            density(in),
                            viscosity(in));
                },
                "friction loss per metre, rectangular, hydraulic-diameter route");
        value(
                to,
                in -> {
                    double d =
                            DuctGeometry.rectangularEquivalentDiameter(
                                    in.si("side_a"), in.si("side_b"));
                    return Friction.lossPerLength(
                            VelocityPressure.meanVelocity(
                                    in.si("airflow"), DuctGeometry.roundArea(d)),
                            d,
                            in.si("roughness"),
                            density(in),
                            viscosity(in));
                },
                "friction loss per metre, rectangular, equivalent-diameter route");
        value(
                to,
                in ->
                        in.si("length")
                                * Friction.lossPerLength(
                                        in.si("velocity"),
                                        DuctGeometry.rectangularHydraulicDiameter(
                                                in.si("side_a"), in.si("side_b")),
                                        in.si("roughness"),
                                        density(in),
                                        viscosity(in)),
                "pressure drop, rectangular duct");
    }

    private static void sides(CaseEvaluator to, DoubleBinaryOperator of, String... wordings) {
        value(to, in -> of.applyAsDouble(in.si("side_a"), in.si("side_b")), wordings);
    }

    private static void axes(CaseEvaluator to, DoubleBinaryOperator of, String... wordings) {
        value(to, in -> of.applyAsDouble(in.si("major_axis"), in.si("minor_axis")), wordings);
    }

    private static void flexible(CaseEvaluator to) {
        value(
                to,
                DuctCases::compression,
                "pressure-drop correction factor, compressed flexible duct",
                "published range: moderate compression multiplies pressure drop",
                "published range: strong compression multiplies pressure drop");
        value(
                to,
                in -> compression(in) * roundFriction(in),
                "friction loss per metre, compressed flexible duct");
        to.onEach(
                "airflow of compressed flexible duct.*",
                (in, wording) ->
                        Answer.si(
                                FrictionChart.flow(
                                        in.si("diameter"),
                                        in.si("friction_rate") / compression(in),
                                        in.si("roughness"),
                                        density(in),
                                        viscosity(in))));
        to.notOffered(
                "the source gives a range met in the field, without the compression that a"
                        + " correction needs",
                "published range: compressed above 4 % against fully stretched, 12-16 in. flexible"
                        + " duct");
    }

    /** Correction at one diameter, or the mean of both ends where a range of them is given. */
    private static double compression(CaseInputs in) {
        double r = in.si("compression");
        Matcher range = Pattern.compile("([0-9.]+) to ([0-9.]+) (.+)").matcher(in.text("diameter"));
        if (!range.matches()) {
            return FlexibleDuct.pressureDropCorrection(r, in.si("diameter"));
        }
        CaseUnit unit = CaseUnit.of(range.group(3));
        double low = unit.toSi(Double.parseDouble(range.group(1)));
        double high = unit.toSi(Double.parseDouble(range.group(2)));
        return (FlexibleDuct.pressureDropCorrection(r, low)
                        + FlexibleDuct.pressureDropCorrection(r, high))
                / 2;
    }

    private static void elbows(CaseEvaluator to) {
        value(to, DuctCases::roundElbow, "loss coefficient, round elbow");
        to.onEach(
                "loss coefficient rectangular radius elbow.*",
                (in, wording) ->
                        Answer.si(
                                Elbows.rectangularRadius(
                                        in.si("r_over_W"), in.si("H_over_W"), in.si("angle"))));
        value(
                to,
                in -> Elbows.radiusAngleFactor(in.si("angle")),
                "angle factor for radius elbow CR3-1");
        value(
                to,
                in -> Elbows.miteredRectangular(in.si("angle"), in.si("H_over_W")),
                "loss coefficient, mitered rectangular elbow, high Re");
        value(
                to,
                in -> Elbows.miteredReynoldsFactor(in.si("Re")),
                "Reynolds correction for mitered rectangular elbow");
        to.onEach(
                "loss coefficient mitered round elbow .*without vanes",
                (in, wording) -> Answer.si(Elbows.miteredRound(in.si("angle"))));
        value(
                to,
                in ->
                        Elbows.smoothBend(
                                Friction.darcy(in.si("Re"), in.si("relative_roughness")),
                                in.si("r_over_D"),
                                in.si("angle")),
                "loss coefficient, smooth bend, Rennels formula (open form)");
        value(
                to,
                in -> Elbows.miterBend(in.si("angle")),
                "loss coefficient, miter bend, Rennels formula");
    }

    /** A round elbow by the handbook's number, or by the words of its make and angle. */
    private static double roundElbow(CaseInputs in) {
        String fitting = in.text("fitting");
        String code = fitting.split("\\s+")[0];
        if (code.equals("CD3-12") || in.has("r_over_D")) {
            return Elbows.threeGore90(in.si("r_over_D"));
        }
        Set<String> words =
                new HashSet<>(
                        Arrays.asList(
                                fitting.toUpperCase(Locale.ROOT)
                                        .replace("3-GORE", "THREE GORE")
                                        .replace("5-GORE", "FIVE GORE")
                                        .replace("7-GORE", "SEVEN GORE")
                                        .split("[^A-Z0-9]+")));
        for (RoundElbow elbow : RoundElbow.values()) {
            if (elbow.code().equals(code)
                    || words.containsAll(Arrays.asList(elbow.name().split("_")))) {
                return elbow.coefficient(in.si("diameter"));
            }
        }
        throw new CaseEvaluator.NotOffered(
                "not offered: \"" + fitting + "\" is not among the tabulated round elbows");
    }

    private static void fittings(CaseEvaluator to) {
        value(to, DuctCases::wallEntry, "loss coefficient, duct mounted in wall, entry");
        value(
                to,
                in -> Openings.bellmouth(in.si("r_over_D")),
                "loss coefficient, bellmouth entry without end wall");
        value(
                to,
                in -> Openings.bellmouthInWall(in.si("r_over_D")),
                "loss coefficient, bellmouth entry with end wall");
        value(to, in -> Openings.PLAIN_EXIT, "loss coefficient, abrupt exit to a room");
        value(
                to,
                in -> Transitions.suddenExpansion(in.si("area_up"), in.si("area_down")),
                "loss coefficient, sudden expansion, on upstream velocity pressure");
        value(
                to,
                in -> Transitions.suddenContraction(in.si("area_up"), in.si("area_down")),
                "loss coefficient, sudden contraction, on downstream velocity pressure");
        value(
                to,
                in ->
                        Transitions.conicalDiffuser(
                                in.si("d1"), in.si("d2"), in.si("included_angle")),
                "loss coefficient, conical diffuser, on the upstream (small) velocity pressure");
        value(
                to,
                in ->
                        Transitions.conicalContraction(
                                in.si("d1"), in.si("d2"), in.si("included_angle")),
                "loss coefficient, conical contraction, on the downstream (small) velocity"
                        + " pressure");
        ToDoubleFunction<CaseInputs> branch =
                in ->
                        Junctions.divergingBranch(
                                in.si("velocity_ratio_branch_to_common"), in.si("angle"));
        value(
                to,
                branch,
                "loss coefficient of branch, diverging wye, on the common velocity pressure, A'=1"
                        + " (w_b/w_c <= 0.8)");
        value(
                to,
                in ->
                        Junctions.onOwnVelocity(
                                branch.applyAsDouble(in), in.si("velocity_ratio_branch_to_common")),
                "same branch, coefficient on its own velocity pressure");
        value(
                to,
                in -> Junctions.divergingStraight(in.si("velocity_ratio_straight_to_common")),
                "loss coefficient of straight passage, diverging wye/tee, on the common velocity"
                        + " pressure");
    }

    /** "flush ..." or "sharp edge ..., L/D=0.5, t/D=0"; an edge without thickness is sharp. */
    private static double wallEntry(CaseInputs in) {
        String entry = in.text("entry");
        double projection = entry.startsWith("flush") ? 0 : inText(entry, "L/D", Double.NaN);
        return Openings.wallEntry(projection, inText(entry, "t/D", 0));
    }

    private static double inText(String text, String symbol, double otherwise) {
        Matcher found =
                Pattern.compile(Pattern.quote(symbol) + "\\s*[<>]?=\\s*([0-9.]+)").matcher(text);
        return found.find() ? Double.parseDouble(found.group(1)) : otherwise;
    }

    private static void equivalentLengths(CaseEvaluator to) {
        value(
                to,
                in ->
                        FrictionChart.equivalentLength(
                                in.si("loss_coefficient"), in.si("diameter"), in.si("darcy_f")),
                "equivalent length of a fitting");
        value(
                to,
                in ->
                        FrictionChart.lossCoefficient(
                                in.si("equivalent_length"), in.si("diameter"), in.si("darcy_f")),
                "loss coefficient of an equivalent length");
        value(
                to,
                in ->
                        FrictionChart.equivalentLengthAt(
                                in.si("loss_coefficient"),
                                VelocityPressure.tradePressure(in.si("velocity")),
                                in.si("friction_rate")),
                "equivalent length from loss coefficient at reference velocity and friction rate");
        value(
                to,
                in ->
                        FrictionChart.designFrictionRate(
                                in.si("available_static"), in.si("total_effective_length")),
                "design friction rate");
    }

    private static void conduction(CaseEvaluator to) {
        value(
                to,
                in ->
                        DuctConduction.leavingTemperature(
                                in.si("t_in"),
                                in.si("t_ambient"),
                                DuctConduction.conductionFraction(
                                        surface(in), in.si("U"), massFlow(in), in.si("cp"))),
                "air temperature at duct end, exponential");
        value(
                to,
                DuctCases::enteringTemperature,
                "entering temperature for a required supply temperature");
        value(
                to,
                in ->
                        -DuctConduction.heatGain(
                                enteringTemperature(in),
                                in.si("t_supply"),
                                massFlow(in),
                                specificHeat(in)),
                "heat loss of the same duct");
        value(
                to,
                in ->
                        DuctConduction.conductionFraction(
                                in.si("area"), 1 / in.si("R"), massFlow(in), specificHeat(in)),
                "conduction fraction B");
        value(
                to,
                in ->
                        DeliveryEffectiveness.sensible(
                                in.si("a_s"),
                                in.si("a_r"),
                                in.si("B_s"),
                                in.si("B_r"),
                                in.difference("dt_e"),
                                in.difference("dt_s"),
                                in.difference("dt_r")),
                "delivery effectiveness, sensible (heating signs; dt = indoor minus duct-zone;"
                        + " cooling: both negative)");
        value(
                to,
                in ->
                        DeliveryEffectiveness.cooling(
                                in.si("a_s"),
                                in.si("a_r"),
                                in.si("B_s"),
                                in.si("B_r"),
                                in.si("capacity"),
                                in.si("mass_flow"),
                                in.si("h_in"),
                                in.si("h_return_zone"),
                                in.si("t_in"),
                                in.si("t_return_zone"),
                                in.si("t_supply_plenum"),
                                in.si("t_supply_zone"),
                                in.si("cp")),
                "delivery effectiveness, cooling with enthalpy");
    }

    private static double enteringTemperature(CaseInputs in) {
        return DuctConduction.enteringTemperature(
                in.si("t_supply"),
                in.si("t_ambient"),
                DuctConduction.conductionFraction(
                        surface(in), in.si("U"), massFlow(in), specificHeat(in)));
    }

    private static double surface(CaseInputs in) {
        double perimeter =
                in.has("diameter")
                        ? Math.PI * in.si("diameter")
                        : 2 * (in.si("width") + in.si("height"));
        return perimeter * in.si("length");
    }

    private static double massFlow(CaseInputs in) {
        return in.si("airflow") * density(in);
    }

    private static double specificHeat(CaseInputs in) {
        return in.si("cp", CP_INCH_POUND);
    }

    private static void leakage(CaseEvaluator to) {
        value(
                to,
                in -> Leakage.factor(in.si("leakage_class"), in.si("static_pressure")),
                "leakage factor");
        value(
                to,
                in ->
                        Leakage.flow(
                                in.si("q25"),
                                in.si("test_pressure", 25),
                                in.si("pressure"),
                                in.si("exponent")),
                "leakage flow at operating pressure from the 25 Pa test",
                "leakage flow under suction keeps its sign");
    }

    /** Numbers that the library looks up by the words of the case. */
    private static void data(CaseEvaluator to) {
        lookUp(to, DuctData.Topic.ROUGHNESS, "category", "absolute roughness by category");
        lookUp(to, DuctData.Topic.LEAKAGE_CLASS, "duct", "leakage class");
        lookUp(to, DuctData.Topic.RECOMMENDED_VELOCITY, "duct", "recommended velocity");
        lookUp(to, DuctData.Topic.VELOCITY_LIMIT, "duct", "residential velocity limit");
        lookUp(
                to,
                DuctData.Topic.MAIN_DUCT_VELOCITY_FACTOR,
                "section",
                "branch and final run-out factor on the main-duct velocity");
        to.on(
                in ->
                        lookedUp(
                                DuctData.Topic.MAIN_DUCT_VELOCITY,
                                in.text("location")
                                        + " RC "
                                        + in.text("RC")
                                        + " "
                                        + in.text("shape")),
                "maximum main-duct velocity for noise");
        to.onEach(
                "upper register velocity for noise criterion (supply register|return grille)",
                (in, wording) ->
                        lookedUp(
                                DuctData.Topic.REGISTER_VELOCITY,
                                wording.group(1) + " NC " + in.text("NC")));
        to.on(
                in -> lookedUp(DuctData.Topic.TRADE_AIRFLOW_FLEXIBLE, nominal(in)),
                "trade chart airflow, flexible duct");
        to.on(
                in -> lookedUp(DuctData.Topic.TRADE_AIRFLOW_METAL, nominal(in)),
                "trade chart airflow, round metal pipe");
        to.onEach(
                "typical branch airflow .* in. (.*) at normal friction",
                (in, wording) ->
                        lookedUp(
                                DuctData.Topic.TYPICAL_BRANCH_AIRFLOW,
                                nominal(in) + " " + wording.group(1)));
        to.on(
                in -> lookedUp(DuctData.Topic.EXTERNAL_STATIC, "rated " + in.text("equipment")),
                "rated external static pressure");
        byWording(to, DuctData.Topic.EXTERNAL_STATIC, "measured total external static.*");
        byWording(to, DuctData.Topic.FILTER_DROP, "filter allowance in the trade method");
        byWording(to, DuctData.Topic.FILTER_DROP, "measured filter pressure drop.*");
        to.onEach(
                "pressure drop of .* filter",
                (in, wording) ->
                        lookedUp(
                                DuctData.Topic.FILTER_DROP,
                                wording.group() + " " + in.text("face_velocity")));
        lookUp(
                to,
                DuctData.Topic.FILTER_CHANGE_OUT,
                "filter",
                "usual final (loaded) to clean ratio at change-out");
        byWording(to, DuctData.Topic.DELIVERY_EFFICIENCY, "delivery efficiency measured in.*");
    }

    private static void lookUp(
            CaseEvaluator to, DuctData.Topic topic, String input, String wording) {
        to.on(in -> lookedUp(topic, in.text(input)), wording);
    }

    private static void byWording(CaseEvaluator to, DuctData.Topic topic, String wording) {
        to.onEach(wording, (in, found) -> lookedUp(topic, found.group()));
    }

    private static Answer lookedUp(DuctData.Topic topic, String words) {
        try {
            return Answer.si(
                    DuctData.find(topic, words).value().toSystemUnit().getValue().doubleValue());
        } catch (IllegalArgumentException e) {
            throw new CaseEvaluator.NotOffered("not offered: " + e.getMessage());
        }
    }

    /** A nominal diameter as the trade's charts name it. */
    private static String nominal(CaseInputs in) {
        double inches = in.si("diameter") / INCH;
        long whole = Math.round(inches);
        if (Math.abs(inches - whole) > 0.02 * inches) {
            throw new CaseEvaluator.NotOffered(
                    "not offered: the charts name whole inches only, not " + in.text("diameter"));
        }
        return whole + " in";
    }

    private static void tonnage(CaseEvaluator to) {
        value(
                to,
                in ->
                        TonnageAirflow.actualFlow(
                                in.number("tons") * TON, in.si("cfm_per_ton") / TON, 1),
                "airflow for tonnage");
        value(
                to,
                in ->
                        TonnageAirflow.actualFlow(
                                in.number("tons") * TON,
                                in.si("standard_cfm_per_ton") / TON,
                                in.si("density_ratio")),
                "actual cfm that carry the mass of the standard cfm");
        value(
                to,
                in ->
                        RegisterShutting.openRegisterGain(
                                (int) in.number("registers"),
                                (int) in.number("closed"),
                                in.si("share_of_pressure_in_branches")),
                "closing registers: flow of each open register relative to before, constant fan"
                        + " pressure");
    }

    private static void filters(CaseEvaluator to) {
        value(
                to,
                in ->
                        FaceLoss.darcyForchheimer(
                                in.si("a"),
                                in.si("b"),
                                in.si("face_velocity"),
                                density(in),
                                densityInRemark(in.text("b"))),
                "filter pressure drop, Darcy-Forchheimer: viscous part independent of density");
        value(
                to,
                in -> {
                    requireKnownCoil(in);
                    return FaceLoss.dryCoilOneRowEightFins(in.si("face_velocity"));
                },
                "dry coil air pressure drop");
        value(
                to,
                in -> {
                    requireKnownCoil(in);
                    return FaceLoss.dryCoilOneRowEightFinsExponent();
                },
                "exponent of coil pressure drop against face velocity");
    }

    /** The density in "8 Pa/(m/s)2 (at 1.2041 kg/m3)"; standard air where it is not given. */
    private static double densityInRemark(String text) {
        Matcher found = Pattern.compile("\\(at ([0-9.]+) (.+)\\)").matcher(text);
        return found.find()
                ? CaseUnit.of(found.group(2)).toSi(Double.parseDouble(found.group(1)))
                : StandardAir.DENSITY;
    }

    private static void requireKnownCoil(CaseInputs in) {
        if (!in.text("coil").startsWith("1 row 8 fins per inch")) {
            throw new CaseEvaluator.NotOffered(
                    "not offered: published drops are held for a coil of 1 row and 8 fins per inch"
                            + " only, not for \""
                            + in.text("coil")
                            + "\"");
        }
    }

    private static void blowers(CaseEvaluator to) {
        value(
                to,
                in -> table(in).flowAt(in.si("external_static")),
                "blower table: airflow at a tabulated external static pressure");
        value(
                to,
                in -> operating(in, in.si("density_ratio", 1)).flow(),
                "operating point airflow, constant speed, quadratic system");
        value(
                to,
                in -> operating(in, in.si("density_ratio", 1)).pressure(),
                "operating point external static, constant speed, quadratic system");
        value(
                to,
                in -> {
                    double r = in.si("density_ratio");
                    return r * operating(in, r).flow() / operating(in, 1).flow();
                },
                "operating point mass flow relative to sea level, constant speed, quadratic"
                        + " system");
        to.onEach(
                "operating point on a quadratic fan curve.*",
                (in, wording) -> {
                    double most = in.si("q_max");
                    Network.Builder b = Network.builder(StandardAir.DENSITY);
                    int room = b.fixedNode("room", 0);
                    int plenum = b.node("plenum");
                    int fan =
                            b.blower(
                                    "fan",
                                    room,
                                    plenum,
                                    in.si("p_max"),
                                    0,
                                    -in.si("p_max") / (most * most));
                    b.quadratic("system", plenum, room, in.si("system_coefficient"));
                    return Answer.si(solve(b.build(), 1).flow(fan));
                });
        for (String kind : List.of("constant-airflow", "fixed-speed")) {
            to.on(
                    in -> {
                        if (!in.has("blower_table")) {
                            throw new CaseEvaluator.NotOffered(
                                    "not offered: the blower is named, but its table is not in the"
                                            + " inputs, and makers' tables are not shipped");
                        }
                        return Answer.si(table(in).flowAt(in.si("external_static")));
                    },
                    kind + " blower table: airflow at external static");
        }
    }

    private record Point(double flow, double pressure) {}

    private static Point operating(CaseInputs in, double densityRatio) {
        Network.Builder b = Network.builder(StandardAir.DENSITY);
        int room = b.fixedNode("room", 0);
        int plenum = b.node("plenum");
        int fan = b.blower("blower", room, plenum, table(in));
        b.quadratic("system", plenum, room, in.si("system_coefficient"));
        Network.Workspace state = solve(b.build(), densityRatio);
        return new Point(state.flow(fan), state.pressure(plenum));
    }

    private static Network.Workspace solve(Network network, double densityRatio) {
        Network.Workspace state = network.workspace();
        network.solve(densityRatio * StandardAir.DENSITY, StandardAir.VISCOSITY, state);
        return state;
    }

    /** Reads "0.1:1635 0.2:1585 in_wg:cfm". */
    private static BlowerCurve table(CaseInputs in) {
        List<String> pairs = new ArrayList<>(List.of(in.text("blower_table").split("\\s+")));
        String[] units = pairs.remove(pairs.size() - 1).split(":");
        if (units.length != 2) {
            throw new IllegalArgumentException(
                    "input \"blower_table\" must end with its units, as in 0.1:1635 in_wg:cfm");
        }
        double[] pressure = new double[pairs.size()];
        double[] flow = new double[pairs.size()];
        for (int i = 0; i < pairs.size(); i++) {
            String[] pair = pairs.get(i).split(":");
            pressure[i] = CaseUnit.of(units[0]).toSi(Double.parseDouble(pair[0]));
            flow[i] = CaseUnit.of(units[1]).toSi(Double.parseDouble(pair[1]));
        }
        return BlowerCurve.through(pressure, flow);
    }

    private static void elevation(CaseEvaluator to) {
        to.onEach(
                "[0-9.]+ in. duct same pressure drop colebrook (volume|mass) relative to sea level",
                (in, wording) -> {
                    double r = in.si("density_ratio");
                    double d = in.si("diameter");
                    double q0 = in.si("reference_airflow");
                    double v0 = VelocityPressure.meanVelocity(q0, DuctGeometry.roundArea(d));
                    double e = in.si("roughness");
                    double mu = viscosity(in);
                    double rate = Friction.lossPerLength(v0, d, e, StandardAir.DENSITY, mu);
                    double volume =
                            FrictionChart.flow(d, rate, e, r * StandardAir.DENSITY, mu) / q0;
                    return Answer.si(wording.group(1).equals("mass") ? r * volume : volume);
                });
        value(
                to,
                in -> {
                    double r = in.si("density_ratio");
                    return withFan(in, r) / withFan(in, 1);
                },
                "same blower, same speed, all-friction Colebrook duct: volume relative to sea"
                        + " level");
    }

    /** Flow of a duct on a fan written "density_ratio*(40 Pa - 7000 Pa/(m3/s)2*Q^2)". */
    private static double withFan(CaseInputs in, double densityRatio) {
        Matcher fan =
                Pattern.compile(
                                "density_ratio\\*\\(([0-9.]+) Pa - ([0-9.]+) Pa/\\(m3/s\\)2\\*Q\\^2\\)")
                        .matcher(in.text("fan"));
        if (!fan.matches()) {
            throw new IllegalArgumentException(
                    "input \"fan\" is \""
                            + in.text("fan")
                            + "\", not density_ratio*(p Pa - c Pa/(m3/s)2*Q^2)");
        }
        double d = in.si("diameter");
        Network.Builder b = Network.builder(StandardAir.DENSITY);
        int room = b.fixedNode("room", 0);
        int plenum = b.node("plenum");
        b.blower(
                "fan",
                room,
                plenum,
                Double.parseDouble(fan.group(1)),
                0,
                -Double.parseDouble(fan.group(2)));
        int duct =
                b.duct(
                        "duct",
                        plenum,
                        room,
                        d,
                        DuctGeometry.roundArea(d),
                        in.si("length"),
                        in.si("roughness"),
                        0,
                        1);
        Network network = b.build();
        Network.Workspace state = network.workspace();
        network.solve(densityRatio * StandardAir.DENSITY, viscosity(in), state);
        return state.flow(duct);
    }

    private static void networks(CaseEvaluator to) {
        CaseNetworks networks = new CaseNetworks();
        value(to, in -> solved(networks, in).flow(in.text("branch")), "branch airflow in network");
        value(
                to,
                in -> solved(networks, in).pressure(in.text("node")),
                "node total pressure in network");
        to.onEach(
                "total fan (volume|mass flow) at (.+) relative to sea level",
                (in, wording) -> {
                    String name = in.text("network");
                    String condition = wording.group(2).replaceAll("(\\d) (\\d)", "$1$2");
                    CaseNetworks.Solved high = networks.solve(name, condition);
                    CaseNetworks.Solved low = networks.solve(name, "sea level");
                    double volume = high.flow("fan") / low.flow("fan");
                    return Answer.si(
                            wording.group(1).equals("volume")
                                    ? volume
                                    : volume * high.air().density() / low.air().density());
                });
        to.onEach(
                "total flow with .* registers shut relative to all open",
                (in, wording) -> {
                    String[] names = in.text("networks").split(" over ");
                    String condition = in.text("condition");
                    return Answer.si(
                            networks.solve(names[0], condition).flow("fan")
                                    / networks.solve(names[1], condition).flow("fan"));
                });
        value(to, in -> standardFlow(networks, in), "standard airflow through the blower");
        value(
                to,
                in ->
                        TonnageAirflow.capacity(
                                standardFlow(networks, in), in.si("standard_cfm_per_ton") / TON),
                "largest capacity the ducts can carry");
    }

    private static CaseNetworks.Solved solved(CaseNetworks networks, CaseInputs in) {
        String closed = in.text("closed", "none");
        return networks.solve(
                in.text("network"),
                closed.equals("none") ? List.of() : List.of(closed.split("\\+")),
                new CaseNetworks.Air(in.si("density"), in.si("viscosity")));
    }

    private static double standardFlow(CaseNetworks networks, CaseInputs in) {
        CaseNetworks.Solved solved = networks.solve(in.text("network"), in.text("condition"));
        return TonnageAirflow.standardFlow(
                solved.flow("fan"), solved.air().density(), in.si("reference_density"));
    }

    /**
     * The industrial exhaust system of ASHRAE Fundamentals 2009, chapter 21, example 7: sections 2
     * and 3 join into 4, which joins 1 before 5; the collector 56 and section 6 lead to the fan,
     * section 7 to the stack.
     */
    private static final Map<String, List<String>> EXHAUST =
            Map.of(
                    "1", List.of("out", "b"),
                    "2", List.of("out", "a"),
                    "3", List.of("out", "a"),
                    "4", List.of("a", "b"),
                    "5", List.of("b", "c"),
                    "56", List.of("c", "d"),
                    "6", List.of("d", "inlet"),
                    "7", List.of("outlet", "out"));

    private static void exhaust(CaseEvaluator to) {
        value(
                to,
                in -> {
                    Network network = exhaust(in);
                    Network.Workspace state = solvedExhaust(network, in);
                    int section = network.branch(in.text("section").split("\\s+")[0]);
                    return state.pressure(network.from(section))
                            - state.pressure(network.to(section));
                },
                "section total-pressure loss, published exhaust system");
        value(
                to,
                in -> {
                    Network network = exhaust(in);
                    Network.Workspace state = solvedExhaust(network, in);
                    return state.pressure(network.node("outlet"))
                            - state.pressure(network.node("inlet"));
                },
                "fan total pressure, published exhaust system");
        to.onEach(
                "flow of hood ([0-9]+) published exhaust system",
                (in, wording) -> {
                    Network network = exhaust(in);
                    return Answer.si(
                            solvedExhaust(network, in).flow(network.branch(wording.group(1))));
                });
    }

    private static Network exhaust(CaseInputs in) {
        double density = in.si("density");
        Network.Builder b = Network.builder(density);
        Map<String, Integer> nodes = new HashMap<>();
        nodes.put("out", b.fixedNode("out", 0));
        EXHAUST.values().stream()
                .flatMap(List::stream)
                .filter(n -> !n.equals("out"))
                .distinct()
                .sorted()
                .forEach(n -> nodes.put(n, b.node(n)));
        EXHAUST.forEach(
                (section, ends) -> {
                    double area = in.si("A" + section);
                    // Loss per square of flow: that of 1 m3/s.
                    double resistance = DuctLoss.fitting(in.si("K" + section), 1 / area, density);
                    b.quadratic(
                            section, nodes.get(ends.get(0)), nodes.get(ends.get(1)), resistance);
                });
        b.heldFlow("fan", nodes.get("inlet"), nodes.get("outlet"), in.si("total_flow"));
        return b.build();
    }

    private static Network.Workspace solvedExhaust(Network network, CaseInputs in) {
        Network.Workspace state = network.workspace();
        network.solve(in.si("density"), StandardAir.VISCOSITY, state);
        return state;
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> rule, String... wordings) {
        to.on(in -> Answer.si(rule.applyAsDouble(in)), wordings);
    }
}
