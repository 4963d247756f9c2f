package dev.thinair.reference;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.Shading;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.Transposition;
import dev.thinair.reference.CaseEvaluator.NotOffered;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Rules for the sun, the clear sky, irradiance on surfaces and their shadows. */
final class LoadSunCases {

    private LoadSunCases() {}

    static void register(CaseEvaluator to) {
        ephemeris(to);
        lowOrder(to);
        sky(to);
        surfaces(to);
        shadows(to);
    }

    private static void ephemeris(CaseEvaluator to) {
        value(
                to,
                in -> Math.PI / 2 - apparent(in)[0],
                "sun zenith angle incl. refraction",
                "topocentric zenith angle of the sun incl. refraction");
        value(
                to,
                in -> Math.PI / 2 - geometric(in)[0],
                "geometric sun zenith angle (no refraction)",
                "topocentric zenith angle without refraction");
        value(
                to,
                in -> geometric(in)[1],
                "sun azimuth, eastward from north",
                "topocentric azimuth, eastward from north");
        value(
                to,
                in -> {
                    double[] sun = apparent(in);
                    return Math.acos(
                            Transposition.cosIncidence(
                                    sun[0],
                                    sun[1],
                                    in.si("surface slope"),
                                    LoadInputs.azimuth(in, "surface azimuth rotation")));
                },
                "angle of incidence on tilted surface");
        to.on(in -> Answer.plain(Sun.julianDay(instant(in))), "Julian day");
        value(to, in -> daylight(in)[0], "local sunrise");
        value(to, in -> daylight(in)[1], "local sunset");
    }

    private static double[] apparent(CaseInputs in) {
        double[] sun = new double[2];
        Sun.apparentEphemeris(
                instant(in),
                in.si("latitude"),
                in.si("longitude"),
                in.si("elevation", 0),
                deltaT(in),
                in.si("pressure"),
                in.si("temperature"),
                sun);
        return sun;
    }

    private static double[] geometric(CaseInputs in) {
        double[] sun = new double[2];
        Sun.ephemeris(
                instant(in),
                in.si("latitude"),
                in.si("longitude"),
                in.si("elevation", 0),
                deltaT(in),
                sun);
        return sun;
    }

    private static double[] daylight(CaseInputs in) {
        double[] marks = new double[2];
        int outcome =
                Sun.daylight(
                        LocalDate.parse(in.text("date")),
                        zone(in).getTotalSeconds(),
                        in.si("latitude"),
                        in.si("longitude"),
                        deltaT(in),
                        marks);
        if (outcome != 0) {
            throw new IllegalArgumentException(
                    outcome > 0
                            ? "the sun does not set that day"
                            : "the sun does not rise that day");
        }
        return marks;
    }

    private static double deltaT(CaseInputs in) {
        return in.has("delta_T")
                ? in.si("delta_T")
                : Sun.deltaT(instant(in).atZone(ZoneOffset.UTC).toLocalDate());
    }

    private static Instant instant(CaseInputs in) {
        if (in.has("UTC")) {
            return Instant.parse(in.text("UTC"));
        }
        LocalTime clock = LocalTime.parse(in.text("local time").replaceFirst("\\s*h$", ""));
        return LocalDate.parse(in.text("date")).atTime(clock).toInstant(zone(in));
    }

    private static ZoneOffset zone(CaseInputs in) {
        return ZoneOffset.ofTotalSeconds((int) Math.round(in.si("time zone")));
    }

    private static void lowOrder(CaseEvaluator to) {
        to.onEach(
                "extraterrestrial normal irradiance(?: eq[.0-9 ]*)?(?: e sc=([0-9.]+))?",
                (in, wording) -> {
                    String constant = wording.group(1);
                    if (constant != null && Double.parseDouble(constant) != Sun.SOLAR_CONSTANT) {
                        throw new NotOffered(
                                "not offered: the solar constant is "
                                        + Sun.SOLAR_CONSTANT
                                        + " W/m2, not "
                                        + constant);
                    }
                    return Answer.si(Sun.extraterrestrialNormal(day(in)));
                });
        to.onEach("equation of time(?: eq.*)?", (in, w) -> Answer.si(Sun.equationOfTime(day(in))));
        to.onEach("declination(?: eq.*)?", (in, w) -> Answer.si(Sun.declination(day(in))));
        value(to, LoadSunCases::solarTime, "apparent solar time");
        value(to, LoadSunCases::altitude, "solar altitude");
        value(
                to,
                in -> Sun.altitude(in.si("latitude"), in.si("declination"), 0),
                "solar altitude at solar noon");
        value(to, in -> Sun.fromNorth(azimuth(in)), "solar azimuth from south, west positive");
    }

    private static double day(CaseInputs in) {
        return in.number("day of year");
    }

    private static double solarTime(CaseInputs in) {
        double clock =
                in.has("local standard hour")
                        ? in.si("local standard hour")
                        : in.si("daylight saving clock time") - 3600;
        return Sun.apparentSolarTime(
                clock, in.si("equation of time"), in.si("longitude"), in.si("time zone"));
    }

    /** The sun's altitude as given, or reckoned from clock and place. */
    private static double altitude(CaseInputs in) {
        return in.has("solar altitude")
                ? in.si("solar altitude")
                : Sun.altitude(
                        in.si("latitude"), in.si("declination"), Sun.hourAngle(solarTime(in)));
    }

    /** The sun's azimuth from north as given, against the surface's, or from clock and place. */
    private static double azimuth(CaseInputs in) {
        if (in.has("surface-solar azimuth")) {
            return in.si("surface-solar azimuth");
        }
        return in.has("solar azimuth")
                ? LoadInputs.azimuth(in, "solar azimuth")
                : Sun.azimuth(
                        in.si("latitude"), in.si("declination"), Sun.hourAngle(solarTime(in)));
    }

    private static double faceAzimuth(CaseInputs in) {
        return in.has("surface-solar azimuth") ? 0 : LoadInputs.azimuth(in, "surface azimuth");
    }

    private static void sky(CaseEvaluator to) {
        value(
                to,
                in -> ClearSky.airMass(altitude(in)),
                "relative air mass",
                "relative air mass (Kasten-Young)",
                "relative air mass (Kasten-Young), not pressure corrected");
        to.onEach(
                "pressure-corrected air mass at solar altitude ([0-9.]+) deg",
                (in, wording) ->
                        Answer.si(
                                ClearSky.pressureCorrectedAirMass(
                                        Math.toRadians(Double.parseDouble(wording.group(1))),
                                        StandardAtmosphere.handbookPressure(in.si("elevation")))));
        to.onEach(
                "beam air-mass exponent ab(?: (.*))?",
                (in, wording) ->
                        Answer.si(
                                edition(wording.group(1))
                                        .beamExponent(in.si("tau_b"), in.si("tau_d"))));
        to.onEach(
                "diffuse air-mass exponent ad(?: (.*))?",
                (in, wording) ->
                        Answer.si(
                                edition(wording.group(1))
                                        .diffuseExponent(in.si("tau_b"), in.si("tau_d"))));
        value(to, LoadSunCases::beam, "beam normal irradiance", "clear-sky beam normal irradiance");
        value(
                to,
                LoadSunCases::diffuse,
                "diffuse horizontal irradiance",
                "clear-sky diffuse horizontal irradiance");
        to.onEach(
                "hottel beam transmittance (tropical|midlatitude summer|subarctic summer|midlatitude"
                        + " winter).*",
                (in, wording) -> Answer.si(hottel(in, wording.group(1))));
        value(
                to,
                in -> {
                    for (ClearSky.HottelClimate climate : ClearSky.HottelClimate.values()) {
                        String name = climate.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                        if (in.has(name)) {
                            return hottel(in, name) * in.si("G_on");
                        }
                    }
                    throw new IllegalArgumentException("input \"midlatitude summer\" is missing");
                },
                "clear-sky beam normal irradiance (Hottel)");
    }

    private static ClearSky.Edition edition(String words) {
        return words != null && words.startsWith("2009")
                ? ClearSky.Edition.FUNDAMENTALS_2009
                : ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
    }

    private static double hottel(CaseInputs in, String climate) {
        return ClearSky.hottelTransmittance(
                ClearSky.HottelClimate.valueOf(climate.toUpperCase(Locale.ROOT).replace(' ', '_')),
                in.anySi("altitude", "elevation"),
                Math.asin(in.si("cos zenith")));
    }

    /** Beam irradiance as given, or of the clear sky. */
    private static double beam(CaseInputs in) {
        return in.has("E_b")
                ? in.si("E_b")
                : ClearSky.beamNormal(
                        edition(in.text("edition", null)),
                        in.si("E_o"),
                        altitude(in),
                        in.si("tau_b"),
                        in.si("tau_d"));
    }

    /** Diffuse irradiance as given, or of the clear sky. */
    private static double diffuse(CaseInputs in) {
        return in.has("E_d")
                ? in.si("E_d")
                : ClearSky.diffuseHorizontal(
                        edition(in.text("edition", null)),
                        in.si("E_o"),
                        altitude(in),
                        in.si("tau_b"),
                        in.si("tau_d"));
    }

    private static void surfaces(CaseEvaluator to) {
        value(
                to,
                in -> Math.acos(cosIncidence(in, in.si("tilt"))),
                "angle of incidence",
                "angle of incidence, vertical",
                "angle of incidence, tilted");
        value(
                to,
                in -> Transposition.beam(beam(in), cosIncidence(in, in.si("tilt"))),
                "beam irradiance on surface",
                "beam irradiance on vertical surface");
        value(to, LoadSunCases::ratioY, "ratio Y", "vertical/horizontal sky diffuse ratio Y");
        to.onEach(
                "sky diffuse (?:irradiance )?on (?:vertical )?surface"
                        + "|downward-facing surface .*sky diffuse factor y sin tilt",
                (in, wording) ->
                        Answer.si(
                                Transposition.skyDiffuse(diffuse(in), ratioY(in), in.si("tilt"))));
        value(
                to,
                in ->
                        Transposition.groundReflected(
                                beam(in),
                                altitude(in),
                                diffuse(in),
                                in.si("ground reflectance"),
                                in.si("tilt")),
                "ground-reflected irradiance on surface",
                "ground-reflected on vertical surface");
        value(
                to,
                in ->
                        Transposition.total(
                                beam(in),
                                diffuse(in),
                                altitude(in),
                                azimuth(in),
                                in.si("tilt"),
                                faceAzimuth(in),
                                in.si("ground reflectance")),
                "total irradiance on surface",
                "total irradiance on the wall",
                "sun behind wall: beam must be zero, Y floor 0.45");
    }

    private static double cosIncidence(CaseInputs in, double tilt) {
        return Transposition.cosIncidence(altitude(in), azimuth(in), tilt, faceAzimuth(in));
    }

    /** Always of the vertical surface of the same azimuth, whatever the tilt. */
    private static double ratioY(CaseInputs in) {
        return Transposition.ratioY(cosIncidence(in, Math.PI / 2));
    }

    private static void shadows(CaseEvaluator to) {
        value(
                to,
                in -> Shading.profileAngle(in.si("solar altitude"), in.si("surface-solar azimuth")),
                "profile angle");
        value(
                to,
                in ->
                        Shading.shadowHeight(
                                in.si("overhang depth"),
                                in.si("solar altitude"),
                                in.si("surface-solar azimuth")),
                "shadow height below overhang");
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }
}
