package dev.thinair.reference;

import dev.thinair.loads.Appliances;
import dev.thinair.loads.Occupants;
import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.ResidentialLoadFactor;
import dev.thinair.loads.kernel.ResidentialLoadFactor.OpaquePart;
import dev.thinair.reference.CaseEvaluator.NotOffered;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules for glass, for the quick residential method and for internal gains. */
final class LoadWindowCases {

    private static final Pattern SHGC_AT = Pattern.compile("SHGC\\(([0-9.]+)(?: deg)?\\)");
    private static final Pattern ANGLES =
            Pattern.compile("angles ([0-9.]+)\\.\\.([0-9.]+) step ([0-9.]+) deg");

    private LoadWindowCases() {}

    static void register(CaseEvaluator to) {
        glass(to);
        irradiance(to);
        factors(to);
        totals(to);
        people(to);
    }

    private static void glass(CaseEvaluator to) {
        each(
                to,
                "hemispherical diffuse shgc from angular values.*",
                in -> {
                    double[] values = LoadInputs.list(in, "SHGC");
                    double[] angles = angles(in, values.length);
                    GlazingOptics.requireTable(angles, values);
                    return GlazingOptics.hemispherical(angles, values);
                });
        to.onEach(
                "shgc at ([0-9.]+) deg linear interpolation",
                (in, w) -> Answer.si(atAngle(in, Math.toRadians(Double.parseDouble(w.group(1))))));
        each(
                to,
                "beam shgc at the incidence angle linear interpolation.*",
                in -> atAngle(in, in.si("angle")));
        each(
                to,
                "inward-flowing absorbed part n\\*alpha at .*",
                in -> GlazingOptics.inwardAbsorbed(in.si("SHGC"), in.si("T_sol")));
        each(
                to,
                "interior attenuation.*",
                in -> GlazingOptics.interiorAttenuation(in.si("IAC_cl"), in.si("F_cl")));
        value(
                to,
                in ->
                        GlazingOptics.diffuseGain(
                                in.si("A"),
                                in.anySi("E_td+E_tr", "E_diffuse"),
                                in.si("diffuse SHGC"),
                                in.si("IAC", 1)),
                "diffuse solar gain through window");
        value(
                to,
                in ->
                        GlazingOptics.beamGain(
                                in.si("A"),
                                in.si("E_tb"),
                                in.si("sunlit fraction", 1),
                                table(in).firstEntry().getValue(),
                                in.si("IAC")),
                "beam solar gain through window");
    }

    private static double[] angles(CaseInputs in, int count) {
        for (String name : in.names()) {
            Matcher m = ANGLES.matcher(name);
            if (m.matches()) {
                double[] angles = new double[count];
                for (int i = 0; i < count; i++) {
                    angles[i] =
                            Math.toRadians(
                                    Double.parseDouble(m.group(1))
                                            + i * Double.parseDouble(m.group(3)));
                }
                return angles;
            }
        }
        throw new IllegalArgumentException("input \"angles 0..90 step 10 deg\" is missing");
    }

    /** The angular values a case names, by angle in radians. */
    private static TreeMap<Double, Double> table(CaseInputs in) {
        TreeMap<Double, Double> table = new TreeMap<>();
        for (String name : in.names()) {
            Matcher m = SHGC_AT.matcher(name);
            if (m.matches()) {
                table.put(Math.toRadians(Double.parseDouble(m.group(1))), in.si(name));
            }
        }
        if (table.isEmpty()) {
            throw new IllegalArgumentException("input \"SHGC(angle)\" is missing");
        }
        return table;
    }

    /** Between the angles a case names; beyond them there is nothing to interpolate. */
    private static double atAngle(CaseInputs in, double angle) {
        TreeMap<Double, Double> table = table(in);
        if (angle < table.firstKey() || angle > table.lastKey()) {
            throw new IllegalArgumentException(
                    "input \"angle\" lies outside the angles whose SHGC is given");
        }
        double[] angles = new double[table.size()];
        double[] values = new double[table.size()];
        int i = 0;
        for (Map.Entry<Double, Double> entry : table.entrySet()) {
            angles[i] = entry.getKey();
            values[i++] = entry.getValue();
        }
        return GlazingOptics.atIncidence(angles, values, Math.cos(angle));
    }

    private static void irradiance(CaseEvaluator to) {
        value(
                to,
                in -> ResidentialLoadFactor.peakTotal(exposure(in), in.si("latitude")),
                "RLF peak total irradiance");
        value(
                to,
                in -> ResidentialLoadFactor.peakDiffuse(exposure(in), in.si("latitude")),
                "RLF peak diffuse irradiance");
        value(
                to,
                in -> {
                    double latitude = in.number("latitude");
                    if (latitude == 35 || latitude == 60) {
                        throw new NotOffered(
                                "proves nothing: the edition's formula could not be seen, so the"
                                        + " library's parabola was laid through this very value");
                    }
                    return ResidentialLoadFactor.peakHorizontalTotal(in.si("latitude"));
                },
                "RLF peak horizontal irradiance");
        value(
                to,
                in ->
                        ResidentialLoadFactor.shadedFraction(
                                in.si("SLF"), in.si("overhang"), in.si("offset"), in.si("height")),
                "shaded fraction");
        value(
                to,
                LoadWindowCases::exteriorIrradiance,
                "peak exterior irradiance PXI",
                "peak exterior irradiance PXI (uses F_shd rounded to 2 decimals)");
    }

    private static double exposure(CaseInputs in) {
        return in.anySi("normalized exposure measured from NORTH", "normalized exposure");
    }

    private static double exteriorIrradiance(CaseInputs in) {
        return ResidentialLoadFactor.peakExteriorIrradiance(
                in.si("T_x"), in.si("E_d"), in.si("E_D"), in.si("F_shd"));
    }

    private static void factors(CaseEvaluator to) {
        to.onEach(
                "rlf opaque cooling factor (.*)",
                (in, w) ->
                        Answer.si(
                                ResidentialLoadFactor.opaqueCooling(
                                        in.si("U"),
                                        in.difference("delta t"),
                                        in.difference("DR"),
                                        part(w.group(1)),
                                        in.si("alpha_roof", 0))));
        each(
                to,
                "rlf slab cooling factor.*",
                in -> ResidentialLoadFactor.slabCooling(in.si("R_cvr")));
        value(
                to,
                in ->
                        ResidentialLoadFactor.windowCooling(
                                in.si("U"),
                                in.difference("delta t"),
                                in.difference("DR"),
                                in.has("PXI") ? in.si("PXI") : exteriorIrradiance(in),
                                in.si("SHGC"),
                                in.si("IAC"),
                                in.si("FF_s")),
                "fenestration cooling factor CF");
    }

    private static OpaquePart part(String words) {
        if (words.contains("attic")) {
            return OpaquePart.CEILING_UNDER_ATTIC;
        }
        if (words.contains("roof")) {
            return OpaquePart.CEILING_ROOF;
        }
        if (words.contains("crawl")) {
            return OpaquePart.FLOOR_OVER_CRAWL_SPACE;
        }
        if (words.contains("floor")) {
            return OpaquePart.FLOOR_OVER_AMBIENT;
        }
        if (words.contains("shaded") || words.contains("garage")) {
            return OpaquePart.SHADED_WALL_OR_DOOR;
        }
        if (words.contains("wall") || words.contains("door")) {
            return OpaquePart.SUNLIT_WALL_OR_DOOR;
        }
        throw new NotOffered("not offered: no part of the method is called \"" + words + "\"");
    }

    private static void totals(CaseEvaluator to) {
        value(
                to,
                in -> ResidentialLoadFactor.internalSensible(in.si("A_cf"), in.number("N_oc")),
                "sensible internal gain");
        value(
                to,
                in -> ResidentialLoadFactor.internalLatent(in.si("A_cf"), in.number("N_oc")),
                "latent internal gain");
        to.onEach(
                "envelope (?:cooling|heating) load of the example house.*",
                (in, w) -> {
                    throw new NotOffered(
                            "not offered: the areas of the source's Table 22, which the load is"
                                    + " the sum over, are neither in the case nor could be seen;"
                                    + " every factor, the slab, air, gains and totals of that"
                                    + " house are cases of their own");
                });
        value(
                to,
                in ->
                        ResidentialLoadFactor.withDucts(
                                in.si("envelope")
                                        + in.si("infiltration/ventilation")
                                        + in.si("internal", 0),
                                in.si("F_dl")),
                "total sensible cooling load",
                "total sensible heating load");
    }

    private static void people(CaseEvaluator to) {
        value(
                to,
                in -> Occupants.tradeAllowance(in.number("persons")).sensible(0),
                "people, seated at rest to light activity, residential design");
        value(
                to,
                in -> in.number("house") * Appliances.tradeKitchenAllowance().sensible(0),
                "kitchen/appliance allowance");
        value(
                to,
                in -> officeWork(in).sensible(0),
                "people, moderately active office work, sensible");
        value(to, in -> officeWork(in).latent(0), "people, moderately active office work, latent");
    }

    private static Occupants officeWork(CaseInputs in) {
        return Occupants.of(in.number("persons"), Occupants.Activity.OFFICE_WORK);
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }

    private static void each(CaseEvaluator to, String wording, ToDoubleFunction<CaseInputs> of) {
        to.onEach(wording, (in, w) -> Answer.si(of.applyAsDouble(in)));
    }
}
