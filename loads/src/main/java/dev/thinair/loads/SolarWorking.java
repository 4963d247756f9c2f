package dev.thinair.loads;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.Transposition;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Temperature;

/** Shown work of the sun on a plane and through a window. */
final class SolarWorking {

    private static final String CH14 = "ASHRAE Fundamentals 2021 (SI), ch. 14";
    private static final String CH15 = "ASHRAE Fundamentals 2021 (SI), ch. 15";

    private SolarWorking() {}

    static Working irradiance(
            CoolingDesignDay day, int hour, Quantity<Angle> azimuth, Quantity<Angle> tilt) {
        Working.Builder work =
                Working.titled(
                        String.format(
                                Locale.ROOT,
                                "Irradiance on a plane at %d:00, %s",
                                hour,
                                day.date()));
        double sky = irradianceSteps(work, day, hour, azimuth, tilt);
        if (sky > 0) {
            double total = onPlane(day, hour, azimuth, tilt);
            work.step(
                    "total irradiance on the plane",
                    "E_t = E_tb + E_td + E_tr",
                    Units.wattsPerSquareMetre(total),
                    CH14);
        }
        return work.note("Local standard time; sky clear; the plane unshaded.").build();
    }

    static double onPlane(
            CoolingDesignDay day, int hour, Quantity<Angle> azimuth, Quantity<Angle> tilt) {
        double[] out = new double[24];
        day.outdoorHours().incident(Si.radians(azimuth, "azimuth"), Si.radians(tilt, "tilt"), out);
        return out[hour];
    }

    /** Adds the steps up to the three parts; returns 0 if there is no sun at all. */
    private static double irradianceSteps(
            Working.Builder work,
            CoolingDesignDay day,
            int hour,
            Quantity<Angle> azimuth,
            Quantity<Angle> tilt) {
        OutdoorHours hours = day.outdoorHours();
        double surfaceAzimuth = Si.radians(azimuth, "azimuth");
        double surfaceTilt = Si.radians(tilt, "tilt");
        Transposition.requirePlane(surfaceTilt, surfaceAzimuth);
        double altitude = hours.sunAltitude(hour);
        double beam = hours.beamNormal(hour);
        double diffuse = hours.diffuseHorizontal(hour);
        work.given(
                "beta",
                "solar altitude",
                Units.degrees(Math.toDegrees(altitude)),
                "solar position algorithm");
        if (beam == 0 && diffuse == 0) {
            work.stepInWords(
                    "E_t",
                    "total irradiance on the plane",
                    "the sun is down, or the day was made without sun",
                    List.of("beta"),
                    Units.wattsPerSquareMetre(0),
                    CH14);
            return 0;
        }
        double relative = hours.sunAzimuth(hour) - surfaceAzimuth;
        work.given(
                "gamma",
                "azimuth of the sun relative to the plane",
                Units.degrees(Math.toDegrees(Math.IEEEremainder(relative, 2 * Math.PI))),
                "solar position algorithm");
        work.given("Sigma", "tilt of the plane", Units.degrees(Math.toDegrees(surfaceTilt)));
        work.given("rho", "ground reflectance", Units.ratio(hours.groundReflectance()));
        if (day.edition() != null) {
            double above = Sun.extraterrestrialNormal(day.date().getDayOfYear());
            work.given(
                    "E_o",
                    "irradiance above the air",
                    Units.wattsPerSquareMetre(above),
                    CH14 + ", Eq. (4)");
            work.given("tau_b", "beam optical depth", Units.ratio(day.beamDepth()));
            work.given("tau_d", "diffuse optical depth", Units.ratio(day.diffuseDepth()));
            work.step(
                    "relative air mass, not corrected for pressure",
                    "m = 1/(sin(beta pi/180) + 0.50572 (6.07995 + beta)^(-1.6364))",
                    Units.ratio(ClearSky.airMass(altitude)),
                    "Kasten and Young, Applied Optics 28 (1989) 4735");
            boolean old = day.edition() == ClearSky.Edition.FUNDAMENTALS_2009;
            work.step(
                    "air-mass exponent of the beam",
                    old
                            ? "a_b = 1.219 - 0.043 tau_b - 0.151 tau_d - 0.204 tau_b tau_d"
                            : "a_b = 1.454 - 0.406 tau_b - 0.268 tau_d + 0.021 tau_b tau_d",
                    Units.ratio(day.edition().beamExponent(day.beamDepth(), day.diffuseDepth())),
                    CH14 + ", edition of the depths");
            work.step(
                    "air-mass exponent of the diffuse part",
                    old
                            ? "a_d = 0.202 + 0.852 tau_b - 0.007 tau_d - 0.357 tau_b tau_d"
                            : "a_d = 0.507 + 0.205 tau_b - 0.080 tau_d - 0.190 tau_b tau_d",
                    Units.ratio(day.edition().diffuseExponent(day.beamDepth(), day.diffuseDepth())),
                    CH14 + ", edition of the depths");
            if (beam > 0) {
                work.step(
                        "beam irradiance facing the sun",
                        "E_b = E_o exp(-tau_b m^a_b)",
                        Units.wattsPerSquareMetre(beam),
                        CH14 + ", Eq. (17)");
            } else {
                work.stepInWords(
                        "E_b",
                        "beam irradiance facing the sun",
                        "the sun stands behind the skyline",
                        List.of("beta"),
                        Units.wattsPerSquareMetre(0),
                        "by definition");
            }
            work.step(
                    "diffuse irradiance on the horizontal",
                    "E_d = E_o exp(-tau_d m^a_d)",
                    Units.wattsPerSquareMetre(diffuse),
                    CH14 + ", Eq. (18)");
        } else {
            work.given(
                    "E_b",
                    "beam irradiance facing the sun",
                    Units.wattsPerSquareMetre(beam),
                    "Hottel, Solar Energy 18 (1976) 129");
            work.given(
                    "E_d",
                    "diffuse irradiance on the horizontal",
                    Units.wattsPerSquareMetre(diffuse),
                    "Liu and Jordan, Solar Energy 4 (1960) 1");
        }
        double onVertical = Math.cos(altitude) * Math.cos(relative);
        double cosine =
                Transposition.cosIncidence(
                        altitude, hours.sunAzimuth(hour), surfaceTilt, surfaceAzimuth);
        work.step(
                "cosine of incidence on the vertical plane of this azimuth",
                "c_v = cos(beta pi/180) cos(gamma pi/180)",
                Units.ratio(onVertical),
                CH14 + ", Eq. (24)");
        work.step(
                "cosine of incidence",
                "c_t = c_v sin(Sigma pi/180) + sin(beta pi/180) cos(Sigma pi/180)",
                Units.ratio(cosine),
                CH14 + ", Eq. (24)");
        work.step(
                "beam on the plane",
                "E_tb = E_b max(c_t, 0)",
                Units.wattsPerSquareMetre(Transposition.beam(beam, cosine)),
                CH14 + ", Eq. (26)");
        double ratio = Transposition.ratioY(onVertical);
        work.step(
                "ratio of sky diffuse on the vertical to that on the horizontal",
                "Y = max(0.45, 0.55 + 0.437 c_v + 0.313 c_v^2)",
                Units.ratio(ratio),
                CH14 + ", Eq. (28)");
        work.step(
                "sky diffuse on the plane",
                "E_td = E_d (Y sin(Sigma pi/180) + max(cos(Sigma pi/180), 0))",
                Units.wattsPerSquareMetre(Transposition.skyDiffuse(diffuse, ratio, surfaceTilt)),
                CH14 + ", Eq. (29) and (30)");
        work.step(
                "reflected from the ground",
                "E_tr = (E_b sin(beta pi/180) + E_d) rho (1 - cos(Sigma pi/180))/2",
                Units.wattsPerSquareMetre(
                        Transposition.groundReflected(
                                beam, altitude, diffuse, hours.groundReflectance(), surfaceTilt)),
                CH14 + ", Eq. (31)");
        return beam + diffuse;
    }

    static Working windowGain(
            Window window,
            CoolingDesignDay day,
            int hour,
            Quantity<Angle> azimuth,
            Quantity<Angle> tilt,
            Quantity<Temperature> indoor) {
        double inside = Si.kelvins(indoor, "indoor temperature");
        double outside = day.outdoorHours().dryBulb(hour);
        Working.Builder work =
                Working.titled(
                        String.format(
                                Locale.ROOT,
                                "Heat through window %s at %d:00, %s",
                                window.name(),
                                hour,
                                day.date()));
        work.given("A", "area over the frame", window.area());
        work.given("U", "U-factor of the whole product", window.uFactor());
        work.given(
                "DeltaT",
                "outdoor less indoor temperature",
                Units.kelvinDifference(outside - inside));
        double area = window.squareMetres();
        double conduction = area * window.transmittance() * (outside - inside);
        double sky = irradianceSteps(work, day, hour, azimuth, tilt);
        if (sky == 0) {
            work.step(
                    "heat gain, conduction alone", "q = U A DeltaT", Units.watts(conduction), CH15);
            return work.build();
        }
        OutdoorHours hours = day.outdoorHours();
        double a = Si.radians(azimuth, "azimuth");
        double t = Si.radians(tilt, "tilt");
        double[] beamParts = new double[24];
        double[] diffuseParts = new double[24];
        window.solarParts(hours, a, t, beamParts, diffuseParts);
        double cosine =
                Transposition.cosIncidence(hours.sunAltitude(hour), hours.sunAzimuth(hour), t, a);
        double shgc = window.glazing().beamAt(cosine);
        work.stepInWords(
                "SHGC_b",
                "solar heat gain coefficient at this incidence",
                "read between the entries of the glazing's table at acos(c_t)",
                List.of("c_t"),
                Units.ratio(shgc),
                window.glazing().name());
        work.stepInWords(
                "F_s",
                "share of the window that beam reaches",
                "shadows of overhang and fins along the plane",
                List.of("beta", "gamma", "Sigma"),
                Units.ratio(
                        cosine > 0
                                ? window.sunlit(
                                        hours.sunAltitude(hour), hours.sunAzimuth(hour), a, t)
                                : 0),
                CH15 + ", Eq. (32) to (36)");
        work.given(
                "SHGC_d",
                "hemispherical solar heat gain coefficient",
                Units.ratio(window.glazing().diffuse()),
                window.glazing().name());
        work.given(
                "F_cl", "closed share of the shade", Units.ratio(window.shade().fractionClosed()));
        work.given(
                "IAC_cb",
                "interior attenuation of the closed shade, beam",
                Units.ratio(window.shade().closedBeam()));
        work.given(
                "IAC_cd",
                "interior attenuation of the closed shade, diffuse",
                Units.ratio(window.shade().closedDiffuse()));
        String ch17 = "ASHRAE Fundamentals 2021 (SI), ch. 17, Eq. (29)";
        work.step(
                "interior attenuation, beam",
                "IAC_b = 1 + F_cl (IAC_cb - 1)",
                Units.ratio(
                        GlazingOptics.interiorAttenuation(
                                window.shade().closedBeam(), window.shade().fractionClosed())),
                ch17);
        work.step(
                "interior attenuation, diffuse",
                "IAC_d = 1 + F_cl (IAC_cd - 1)",
                Units.ratio(
                        GlazingOptics.interiorAttenuation(
                                window.shade().closedDiffuse(), window.shade().fractionClosed())),
                ch17);
        boolean screened = window.screenTransmission() < 1;
        if (screened) {
            work.given(
                    "T_x",
                    "share of the sun that passes the exterior screen",
                    Units.ratio(window.screenTransmission()));
        }
        work.step(
                "beam gain",
                "q_b = A E_tb F_s SHGC_b IAC_b" + (screened ? " T_x" : ""),
                Units.watts(beamParts[hour]),
                CH15);
        work.step(
                "diffuse gain",
                "q_d = A (E_td + E_tr) SHGC_d IAC_d" + (screened ? " T_x" : ""),
                Units.watts(diffuseParts[hour]),
                CH15);
        work.step("conduction", "q_c = U A DeltaT", Units.watts(conduction), CH15);
        work.step(
                "heat gain",
                "q = q_b + q_d + q_c",
                Units.watts(beamParts[hour] + diffuseParts[hour] + conduction),
                CH15);
        return work.note(
                        "A heat gain, not yet a cooling load: its radiant part is delayed by the"
                                + " room.")
                .build();
    }
}
