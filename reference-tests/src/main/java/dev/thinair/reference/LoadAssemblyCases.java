package dev.thinair.reference;

import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.HourlyInterpolation;
import dev.thinair.loads.kernel.PeriodicResponse;
import dev.thinair.loads.kernel.Resistance;
import dev.thinair.loads.kernel.SolAir;
import dev.thinair.loads.kernel.Transmission;
import dev.thinair.reference.LoadInputs.Layers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules for conduction: resistances, periodic walls, steps, sol-air temperature, the ground. */
final class LoadAssemblyCases {

    private static final String LAYERS = "layers outdoors to indoors";

    /** After this many times L^2/alpha nothing is left of a slab's transient: exp(-28). */
    private static final double SLAB_SETTLED = 3;

    private LoadAssemblyCases() {}

    static void register(CaseEvaluator to) {
        frames(to);
        periodic(to);
        steps(to);
        coded(to);
        solAir(to);
        ground(to);
    }

    /** Two sections side by side that share all layers but the bridged one. */
    private record Sections(double fraction, double[] insulated, double[] bridge) {

        private static final Pattern SHARE =
                Pattern.compile("([0-9.]+) *(.*?) *\\(fraction ([0-9.]+)\\)");
        private static final Pattern RESISTANCE = Pattern.compile("([0-9.]+) *(.*)");
        private static final List<String> INSULATED =
                List.of("batt", "insulation", "mineral wool", "core", "R_c");
        private static final List<String> BRIDGES =
                List.of("stud", "timber", "framing", "joist", "rafter", "web", "R_w");
        private static final List<String> FRACTIONS =
                List.of("insulated fraction", "a_c", "a_w", "framing fraction");

        static Sections of(CaseInputs in) {
            if (in.has("fractions")) {
                double[] bridged = LoadInputs.list(in, "bridged layer R");
                double rest = in.si("homogeneous layers and surfaces sum R");
                return new Sections(
                        LoadInputs.list(in, "fractions")[0],
                        new double[] {bridged[0], rest},
                        new double[] {bridged[1], rest});
            }
            List<Double> shared = new ArrayList<>();
            double fraction = Double.NaN;
            double insulated = Double.NaN;
            double bridge = Double.NaN;
            double scale = unit(in);
            for (String name : in.names()) {
                String text = in.text(name);
                Matcher share = SHARE.matcher(text);
                Matcher plain = RESISTANCE.matcher(text);
                boolean partial = share.matches();
                if (name.equals("method") || FRACTIONS.contains(name) || !plain.matches()) {
                    continue;
                }
                double r = Double.parseDouble(plain.group(1)) * scale;
                if (INSULATED.contains(name)) {
                    insulated = r;
                    fraction = partial ? Double.parseDouble(share.group(3)) : fraction;
                } else if (BRIDGES.contains(name)) {
                    bridge = r;
                } else {
                    shared.add(r);
                }
            }
            if (in.has("insulated fraction")) {
                fraction = in.si("insulated fraction");
            } else if (in.has("a_c")) {
                fraction = in.si("a_c");
            } else if (in.has("framing fraction")) {
                fraction = 1 - in.si("framing fraction");
            }
            if (Double.isNaN(insulated) || Double.isNaN(bridge) || Double.isNaN(fraction)) {
                throw new IllegalArgumentException(
                        "input \"insulation\", \"framing\" or \"insulated fraction\" is missing");
            }
            return new Sections(fraction, with(shared, insulated), with(shared, bridge));
        }

        /** The unit that one of the inputs carries for all; SI if none does. */
        private static double unit(CaseInputs in) {
            for (String name : in.names()) {
                Matcher plain = RESISTANCE.matcher(in.text(name));
                if (plain.matches() && plain.group(2).matches("m2 ?K/W|h ft2 F/Btu")) {
                    return CaseUnit.difference(plain.group(2)).toSi(1);
                }
            }
            return 1;
        }

        private static double[] with(List<Double> shared, double own) {
            double[] all = new double[shared.size() + 1];
            for (int i = 0; i < shared.size(); i++) {
                all[i] = shared.get(i);
            }
            all[shared.size()] = own;
            return all;
        }

        double upper() {
            return Resistance.upperLimit(fraction, insulated, bridge);
        }

        double lower() {
            return Resistance.lowerLimit(fraction, insulated, bridge);
        }
    }

    private static void frames(CaseEvaluator to) {
        each(to, "parallel-path u-factor.*", in -> 1 / Sections.of(in).upper());
        each(to, "isothermal-planes u-factor.*", in -> 1 / Sections.of(in).lower());
        each(
                to,
                "isothermal-planes assembly resistance.*|insulated block wall isothermal planes",
                in -> Sections.of(in).lower());
        value(
                to,
                in -> Transmission.transmittance(new double[] {in.si("R_total")}),
                "insulated block wall U-factor",
                "U-factor of a total resistance");
        value(
                to,
                in -> 1 / Transmission.transmittance(Sections.of(in).insulated()),
                "resistance of insulated path");
        value(
                to,
                in -> 1 / Transmission.transmittance(Sections.of(in).bridge()),
                "resistance of timber path",
                "resistance of framing path");
        each(to, "iso 6946 upper limit.*", in -> Sections.of(in).upper());
        each(to, "iso 6946 lower limit.*", in -> Sections.of(in).lower());
        each(
                to,
                "iso 6946 total resistance.*",
                in -> {
                    Sections s = Sections.of(in);
                    return Resistance.combined(s.fraction(), s.insulated(), s.bridge());
                });
        each(
                to,
                "iso 6946 tapered insulation.*",
                in -> Resistance.taperedTransmittance(in.si("R0"), in.si("R2")));
    }

    /** A property of a wall at a period. */
    @FunctionalInterface
    private interface Periodic {
        double of(double[] r, double[] c, double period);
    }

    private static void periodic(CaseEvaluator to) {
        wall(to, "iso 13786 u(?: .*)?", (r, c, t) -> Transmission.transmittance(r));
        wall(
                to,
                "iso 13786 periodic thermal transmittance.*|harmonic [0-9]+ .*periodic"
                        + " transmittance.*",
                Transmission::periodicTransmittance);
        wall(to, "iso 13786 decrement factor.*", Transmission::decrementFactor);
        wall(to, "iso 13786 time shift of periodic transmittance.*", Transmission::lag);
        wall(
                to,
                "iso 13786 internal thermal admittance.*",
                (r, c, t) -> Transmission.admittance(r, c, t, 1));
        wall(
                to,
                "iso 13786 external thermal admittance.*",
                (r, c, t) -> Transmission.admittance(r, c, t, 2));
        wall(
                to,
                "iso 13786 time shift lead of internal admittance.*",
                (r, c, t) -> Transmission.admittanceLead(r, c, t, 1));
        wall(
                to,
                "iso 13786 time shift lead of external admittance.*",
                (r, c, t) -> Transmission.admittanceLead(r, c, t, 2));
        wall(
                to,
                "iso 13786 internal areal heat capacity.*",
                (r, c, t) -> Transmission.arealHeatCapacity(r, c, t, 1));
        wall(
                to,
                "iso 13786 external areal heat capacity.*",
                (r, c, t) -> Transmission.arealHeatCapacity(r, c, t, 2));
        value(
                to,
                in ->
                        Transmission.penetrationDepth(
                                in.si("k"), in.si("rho"), in.difference("c"), in.si("period")),
                "periodic penetration depth");
        each(
                to,
                "semi-infinite surface admittance.*",
                in ->
                        Transmission.halfSpaceAdmittance(
                                in.si("k"), in.si("rho"), in.difference("c"), in.si("period")));
    }

    private static void wall(CaseEvaluator to, String wording, Periodic of) {
        each(
                to,
                wording,
                in -> {
                    Layers layers = LoadInputs.listed(in);
                    return of.of(layers.r(), layers.c(), in.si("period"));
                });
    }

    /** Textbook transients, from the transfer matrix over its whole band of frequencies. */
    private static void steps(CaseEvaluator to) {
        each(
                to,
                "plane wall suddenly exposed to fluid excess temperature ratio",
                in -> 1 - planeWall(in.si("Bi"), in.si("Fo"), in.si("x/L")));
        each(
                to,
                "slab unit step on one face other face held far-face flux / steady flux",
                in -> {
                    double[] one = {1};
                    return StepResponse.at(
                            (omega, out) -> quotient(null, null, one, one, 2, omega, out),
                            afterLastSign(in.text("Fo")),
                            SLAB_SETTLED);
                });
        each(
                to,
                "semi-infinite solid surface step temperature fraction at depth",
                in ->
                        halfSpace(
                                in.si("depth"),
                                in.si("time"),
                                in.si("k"),
                                in.si("rho") * in.difference("c")));
    }

    /** {@code alpha t/L2=0.05} as well as {@code 0.05}. */
    private static double afterLastSign(String text) {
        return Double.parseDouble(text.substring(text.lastIndexOf('=') + 1).strip());
    }

    /** Lengths over half the thickness L, times over L^2/alpha, resistances over L/k. */
    private static double planeWall(double bi, double fo, double place) {
        double[] rest = {1 / bi, 1};
        double[] restMass = {0, 1};
        double[] part = place == 0 ? new double[0] : new double[] {place};
        // From the middle, which no heat crosses, outwards: both temperatures over that of the
        // middle are the matrix's first entry.
        double settled = 28 * (1 + 1 / bi);
        return StepResponse.at(
                (omega, out) -> quotient(part, part, rest, restMass, 0, omega, out), fo, settled);
    }

    /** A slab so thick that its far face knows nothing yet. */
    private static double halfSpace(double depth, double time, double k, double capacity) {
        double thickness = depth + 12 * Math.sqrt(k / capacity * time);
        double[] r = {thickness / k};
        double[] c = {thickness * capacity};
        double[] restR = {(thickness - depth) / k};
        double[] restC = {(thickness - depth) * capacity};
        return StepResponse.at(
                (omega, out) -> quotient(restR, restC, r, c, 2, omega, out),
                time,
                SLAB_SETTLED * r[0] * c[0]);
    }

    /** One entry of a wall's matrix over the same entry of another; 1 over it for no first wall. */
    private static void quotient(
            double[] r1,
            double[] c1,
            double[] r2,
            double[] c2,
            int entry,
            double omega,
            double[] q) {
        double[] top = new double[Transmission.matrixLength()];
        double[] bottom = new double[Transmission.matrixLength()];
        if (r1 == null) {
            top[entry] = 1;
        } else {
            Transmission.matrix(r1, c1, r1.length, omega, top);
        }
        Transmission.matrix(r2, c2, r2.length, omega, bottom);
        double a = bottom[entry];
        double b = bottom[entry + 1];
        double scale = Math.exp(top[8] - bottom[8]) / (a * a + b * b);
        q[0] = (top[entry] * a + top[entry + 1] * b) * scale;
        q[1] = (top[entry + 1] * a - top[entry] * b) * scale;
    }

    private static void coded(CaseEvaluator to) {
        each(
                to,
                "u-factor(?: printed.*)?",
                in -> Transmission.transmittance(LoadInputs.coded(in.text(LAYERS)).r()));
        to.onEach(
                "(?:published )?conduction time factor hour ([0-9]+)(?: .*)?"
                        + "|exact periodic response factor of hour ([0-9]+)(?: .*)?",
                (in, wording) -> {
                    Layers layers = LoadInputs.coded(in.text(LAYERS));
                    String hour = wording.group(1) == null ? wording.group(2) : wording.group(1);
                    return Answer.si(
                            PeriodicResponse.conductionTimeFactors(layers.r(), layers.c())[
                                    Integer.parseInt(hour)]);
                });
        to.onEach(
                "wall conductive heat gain exact 12-harmonic periodic solution.* scaled to"
                        + " u=([0-9.]+)",
                (in, wording) -> {
                    Layers layers = LoadInputs.coded(in.text(LAYERS));
                    double scale =
                            Double.parseDouble(wording.group(1))
                                    / Transmission.transmittance(layers.r());
                    return Answer.si(
                            in.si("A") * scale * plainFlux(in, layers)[LoadInputs.hour(in)]);
                });
        to.onEach(
                "(?:peak )?inside heat flux exact 12 harmonics hour ([0-9]+)",
                (in, wording) ->
                        Answer.si(
                                plainFlux(in, LoadInputs.coded(in.text(LAYERS)))[
                                        Integer.parseInt(wording.group(1)) % 24]));
    }

    /** Flux into the room at each hour by twelve plain harmonics, without folded aliases. */
    private static double[] plainFlux(CaseInputs in, Layers layers) {
        double[] drive = LoadInputs.day(in, "sol-air series");
        double room = in.si("t_room");
        for (int h = 0; h < 24; h++) {
            drive[h] -= room;
        }
        int harmonics = HourlyInterpolation.HARMONICS;
        double[] spectrum = new double[2 * (harmonics + 1)];
        HourlyInterpolation.analyse(drive, 0, spectrum, 0);
        double[] work = new double[Transmission.matrixLength()];
        double[] y = new double[8];
        for (int m = 0; m <= harmonics; m++) {
            Transmission.admittances(
                    layers.r(), layers.c(), layers.r().length, m * Transmission.OMEGA_DAY, work, y);
            double re = spectrum[2 * m];
            double im = spectrum[2 * m + 1];
            spectrum[2 * m] = re * y[2] - im * y[3];
            spectrum[2 * m + 1] = re * y[3] + im * y[2];
        }
        double[] flux = new double[24];
        HourlyInterpolation.addSynthesis(spectrum, 0, flux, 0);
        return flux;
    }

    private static void solAir(CaseEvaluator to) {
        each(
                to,
                "sol-air temperature(?: .*)?",
                in -> {
                    // The case gives alpha/ho only; any pair with that quotient will do.
                    double absorptance = 0.5;
                    double outside = absorptance / in.si("alpha/h_o");
                    return in.si("t_o")
                            + SolAir.excess(absorptance, in.si("E_t"), 0.9, 0, outside)
                            - in.difference("long-wave term");
                });
        each(
                to,
                "long-wave correction of a horizontal surface",
                in -> -SolAir.excess(0, 0, in.si("emittance"), in.si("delta R"), in.si("h_o")));
    }

    private static void ground(CaseEvaluator to) {
        value(
                to,
                in ->
                        GroundContact.wallTransmittance(
                                0, in.si("depth"), in.si("k_soil"), in.si("R_other")),
                "average U below-grade wall from grade to depth");
        value(
                to,
                in ->
                        GroundContact.floorTransmittance(
                                in.si("width"),
                                in.si("floor depth"),
                                in.si("k_soil"),
                                in.si("R_other")),
                "average U basement floor");
        value(
                to,
                in ->
                        GroundContact.slabEdgeLoss(
                                in.si("F_p"), in.si("perimeter"), in.difference("delta t")),
                "slab edge heat loss");
        each(to, "iso 13370 slab-on-ground u.*", in -> isoFloor(in, in.si("wall thickness"), 0));
        each(to, "iso 13370 basement floor u bf", in -> isoFloor(in, in.si("w"), in.si("depth z")));
        each(
                to,
                "iso 13370 basement wall u bw.*",
                in ->
                        GroundContact.isoWallTransmittance(
                                floorThickness(in, in.si("w")),
                                GroundContact.equivalentThickness(
                                        0, in.si("lambda_g"), 0.13 + in.si("R_w") + 0.04),
                                in.si("depth z"),
                                in.si("lambda_g")));
    }

    private static double isoFloor(CaseInputs in, double wallThickness, double depth) {
        return GroundContact.isoFloorTransmittance(
                GroundContact.characteristicDimension(in.si("A"), in.si("P")),
                floorThickness(in, wallThickness),
                depth,
                in.si("lambda_g"));
    }

    /** Films of ISO 6946 (0.17 down, 0.04 outside, m2 K/W) where a case leaves them out. */
    private static double floorThickness(CaseInputs in, double wallThickness) {
        return GroundContact.equivalentThickness(
                wallThickness,
                in.si("lambda_g"),
                in.si("R_si", 0.17) + in.si("R_f") + in.si("R_se", 0.04));
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }

    private static void each(CaseEvaluator to, String wording, ToDoubleFunction<CaseInputs> of) {
        to.onEach(wording.toLowerCase(Locale.ROOT), (in, w) -> Answer.si(of.applyAsDouble(in)));
    }
}
