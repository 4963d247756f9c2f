package dev.thinair.psychro;

import dev.thinair.psychro.kernel.AirModel;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.units.MassFlow;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificEnthalpy;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** The steps behind states and processes, recomputed with the kernel functions they explain. */
final class Workings {

    private static final double ICE_POINT = 273.15;
    private static final String CHAPTER = "ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1 ";
    private static final String BALANCE = "energy and moisture balance";
    private static final String REAL =
            "real mixture: IAPWS saturation, enhancement factor, second virial coefficients";
    private static final String REAL_SOURCE =
            "IAPWS R7-97, R14-08; Herrmann, Kretzschmar and Gatley (2009); see RealMoistAir";
    private static final String OVER_LIQUID =
            " = exp(-5800.2206 / %1$s + 1.3914993 - 0.048640239 %1$s + 4.1764768e-5 %1$s^2"
                    + " - 1.4452093e-8 %1$s^3 + 6.5459673 ln(%1$s))";
    private static final String OVER_ICE =
            " = exp(-5674.5359 / %1$s + 6.3925247 - 0.009677843 %1$s + 6.2215701e-7 %1$s^2"
                    + " + 2.0747825e-9 %1$s^3 - 9.484024e-13 %1$s^4 + 4.1635019 ln(%1$s))";

    private Workings() {}

    static Working state(MoistAir air) {
        Working.Builder out = given(Working.titled("State of moist air"), air, "");
        double t = air.dryBulbKelvins();
        out.step("absolute dry bulb", "T = t + 273.15", Units.kelvins(t), "by definition");
        out.step(
                "vapor pressure",
                "p_w = p W / (0.621945 + W)",
                air.vaporPressure(),
                CHAPTER + "eq. (36)");
        if (ideal(air)) {
            saturation(out, "p_ws", "T", t);
            out.step(
                    "relative humidity",
                    "phi = p_w / p_ws",
                    air.relativeHumidity(),
                    CHAPTER + "eq. (22)");
            out.step(
                    "specific volume",
                    "v = 287.042 T (1 + 1.607858 W) / p",
                    air.specificVolume(),
                    CHAPTER + "eq. (26)");
        } else {
            out.stepInWords(
                    "phi",
                    "relative humidity",
                    "vapor pressure over enhancement factor times saturation pressure",
                    List.of("p_w", "T", "p"),
                    air.relativeHumidity(),
                    REAL_SOURCE);
            out.stepInWords(
                    "v",
                    "specific volume",
                    "ideal volume plus second virial coefficient of the mixture",
                    List.of("T", "W", "p"),
                    air.specificVolume(),
                    REAL_SOURCE);
        }
        out.step("density", "rho = (1 + W) / v", air.density(), "by definition");
        if (air.hasDewPoint()) {
            out.stepInWords(
                    "t_dp",
                    "dew point",
                    "temperature at which the vapor pressure is the saturation pressure",
                    List.of("p_w"),
                    air.dewPoint(),
                    ideal(air) ? CHAPTER + "eq. (36)" : REAL_SOURCE);
        }
        wetBulbStep(out, air);
        enthalpy(out, "", air.model(), t, air.humidityRatioNumber(), air.pressurePascals());
        return notes(out, air).build();
    }

    static Working wetBulb(MoistAir air) {
        Working.Builder out = given(Working.titled("Thermodynamic wet bulb"), air, "");
        wetBulbStep(out, air);
        double bulb =
                air.model()
                        .wetBulb(
                                air.dryBulbKelvins(),
                                air.humidityRatioNumber(),
                                air.pressurePascals());
        if (ideal(air)) {
            double back = WetBulb.humidityRatio(air.dryBulbKelvins(), bulb, air.pressurePascals());
            out.note(
                    "Check: put back into the equation, this wet bulb gives W = "
                            + QuantityText.number(back, 6)
                            + " kg/kg.");
        }
        return notes(out, air).build();
    }

    private static void wetBulbStep(Working.Builder out, MoistAir air) {
        boolean liquid = air.wetBulb().getValue().doubleValue() >= 0;
        String how;
        if (!ideal(air)) {
            how = "root of h + (W_s* - W) h_w* = h_s* with real enthalpies";
        } else if (liquid) {
            how =
                    "root t* of W = ((2501 - 2.326 t*) W_s* - 1.006 (t - t*)) / (2501 + 1.86 t"
                            + " - 4.186 t*), over liquid water";
        } else {
            how =
                    "root t* of W = ((2830 - 0.24 t*) W_s* - 1.006 (t - t*)) / (2830 + 1.86 t"
                            + " - 2.1 t*), over ice";
        }
        out.stepInWords(
                "t_wb",
                "thermodynamic wet bulb",
                how,
                List.of("t", "W", "p"),
                air.wetBulb(),
                ideal(air) ? CHAPTER + (liquid ? "eq. (33)" : "eq. (35)") : REAL_SOURCE);
    }

    static Working mixing(AirStream first, AirStream second) {
        Working.Builder out = Working.titled("Adiabatic mixing of two streams");
        given(out, first.air(), "1");
        out.given("m1", "dry air of stream 1", first.dryAirFlow());
        given(out, second.air(), "2", false);
        out.given("m2", "dry air of stream 2", second.dryAirFlow());
        enthalpy(out, "1", first.air());
        enthalpy(out, "2", second.air());
        Mixture mixture = first.mixedWith(second);
        double m1 = first.dryAirKilogramsPerSecond();
        double m2 = second.dryAirKilogramsPerSecond();
        out.step(
                "dry air of the mixture",
                "m3 = m1 + m2",
                mixture.stream().dryAirFlow(),
                CHAPTER + "eq. (44)");
        double water =
                (m1 * first.air().humidityRatioNumber() + m2 * second.air().humidityRatioNumber())
                        / (m1 + m2);
        double heat = (m1 * first.specificEnthalpy() + m2 * second.specificEnthalpy()) / (m1 + m2);
        out.step(
                "water of the mixture",
                "W3 = (m1 W1 + m2 W2) / m3",
                Units.kilogramsPerKilogram(water),
                CHAPTER + "eq. (44)");
        out.step(
                "enthalpy of the mixture",
                "h3 = (m1 h1 + m2 h2) / m3",
                kilojoules(heat),
                CHAPTER + "eq. (44)");
        return leaving(out, first.air(), mixture, heat, water).build();
    }

    static Working humidifying(
            AirStream stream, Quantity<MassFlow> water, Quantity<SpecificEnthalpy> waterEnthalpy) {
        Working.Builder out =
                given(Working.titled("Humidifying with steam or water"), stream.air(), "1");
        double added =
                Si.kilogramsPerSecond(water, "water added") / stream.dryAirKilogramsPerSecond();
        double each = Si.joulesPerKilogram(waterEnthalpy, "enthalpy of the water");
        out.given("m", "dry air", stream.dryAirFlow());
        out.given(
                "m_w",
                "water added",
                Units.kilogramsPerSecond(Si.kilogramsPerSecond(water, "water added")));
        out.given("h_w", "enthalpy of that water", kilojoules(each));
        enthalpy(out, "1", stream.air());
        double ratio = stream.air().humidityRatioNumber() + added;
        double heat = stream.specificEnthalpy() + added * each;
        out.step(
                "water in the leaving air",
                "W3 = W1 + m_w / m",
                Units.kilogramsPerKilogram(ratio),
                BALANCE);
        out.step("enthalpy of the leaving air", "h3 = h1 + m_w h_w / m", kilojoules(heat), BALANCE);
        return leaving(out, stream.air(), stream.humidifiedBy(water, waterEnthalpy), heat, ratio)
                .build();
    }

    private static Working.Builder leaving(
            Working.Builder out, MoistAir air, Mixture mixture, double enthalpy, double water) {
        AirModel model = air.model();
        double single = model.dryBulbFromEnthalpy(enthalpy, water, air.pressurePascals());
        dryBulb(out, "3", air, single);
        if (mixture instanceof Mixture.Fog) {
            out.stepInWords(
                    "t_fog",
                    "temperature of the fog",
                    "root t of h3 = h(t, W_s) + (W3 - W_s) h_w(t): air of t3 and W3 would be"
                            + " supersaturated, so water condenses until it is just saturated",
                    List.of("h3", "W3", "t3"),
                    mixture.stream().air().dryBulb(),
                    BALANCE);
            out.note("The air leaves with fog in it.");
        }
        return notes(out, air);
    }

    static Working sensible(SensibleProcess process) {
        Working.Builder out =
                given(Working.titled("Sensible heating or cooling"), process.entering().air(), "1");
        out.given("t2", "leaving dry bulb", process.leaving().air().dryBulb());
        out.given("m", "dry air", process.entering().dryAirFlow());
        enthalpy(out, "1", process.entering().air());
        MoistAir air = process.leaving().air();
        if (ideal(air)) {
            out.step(
                    "leaving enthalpy",
                    "h2 = 1.006 t2 + W1 (2501 + 1.86 t2)",
                    kilojoules(process.leaving().specificEnthalpy()),
                    CHAPTER + "eq. (30)");
        } else {
            out.stepInWords(
                    "h2",
                    "leaving enthalpy",
                    REAL,
                    List.of("t2", "W1", "p"),
                    kilojoules(process.leaving().specificEnthalpy()),
                    REAL_SOURCE);
        }
        out.step(
                "heat added",
                "q = m (h2 - h1)",
                Units.kilowatts(Si.watts(process.heat(), "heat") / 1000),
                CHAPTER + "eq. (41)");
        return notes(out, air).build();
    }

    static Working evaporative(EvaporativeProcess process) {
        MoistAir air = process.entering().air();
        Working.Builder out = given(Working.titled("Evaporative cooling"), air, "1");
        out.given("m", "dry air", process.entering().dryAirFlow());
        out.given("epsilon", "effectiveness", process.effectiveness());
        out.stepInWords(
                "t_wb",
                "thermodynamic wet bulb",
                "root of the wet-bulb equation over liquid water",
                List.of("t1", "W1", "p"),
                process.wetBulb(),
                ideal(air) ? CHAPTER + "eq. (33)" : REAL_SOURCE);
        out.step(
                "leaving dry bulb",
                "t2 = t1 - epsilon (t1 - t_wb)",
                process.leaving().air().dryBulb(),
                "definition of the effectiveness");
        out.stepInWords(
                "W2",
                "leaving humidity ratio",
                "the same wet-bulb equation at t2 and t_wb",
                List.of("t2", "t_wb", "p"),
                process.leaving().air().humidityRatio(),
                ideal(air) ? CHAPTER + "eq. (33)" : REAL_SOURCE);
        out.step("water evaporated", "m_w = m (W2 - W1)", process.water(), BALANCE);
        return notes(out, air).build();
    }

    static Working coil(CoilProcess.Wet process) {
        MoistAir air = process.entering().air();
        MoistAir behind = process.leaving().air();
        AirModel model = air.model();
        double p = air.pressurePascals();
        double surface = Si.kelvins(process.apparatusDewPoint(), "apparatus dew point");
        Working.Builder out = given(Working.titled("Cooling coil, wet"), air, "1");
        out.given("m", "dry air", process.entering().dryAirFlow());
        out.given("t_adp", "apparatus dew point", process.apparatusDewPoint());
        out.given("BF", "bypass factor", process.bypassFactor());
        enthalpy(out, "1", air);
        double ratio = model.saturationHumidityRatio(surface, p);
        saturated(out, "_adp", air, surface, ratio);
        enthalpy(out, "_adp", model, surface, ratio, p);
        out.step(
                "leaving humidity ratio",
                "W2 = W_adp + BF (W1 - W_adp)",
                behind.humidityRatio(),
                "definition of the bypass factor");
        out.step(
                "leaving enthalpy",
                "h2 = h_adp + BF (h1 - h_adp)",
                kilojoules(process.leaving().specificEnthalpy()),
                "definition of the bypass factor");
        dryBulb(out, "2", air, behind.dryBulbKelvins());
        out.step("condensate", "m_c = m (W1 - W2)", process.condensate(), BALANCE);
        double condensate = model.condensateEnthalpy(behind.dryBulbKelvins());
        if (ideal(air) && behind.dryBulbKelvins() >= ICE_POINT) {
            out.step(
                    "enthalpy of the condensate, leaving at t2",
                    "h_c = 4.186 t2",
                    kilojoules(condensate),
                    CHAPTER + "eq. (33)");
        } else {
            out.stepInWords(
                    "h_c",
                    "enthalpy of the condensate, leaving at t2",
                    "liquid water from 0 degC up, ice below",
                    List.of("t2"),
                    kilojoules(condensate),
                    CHAPTER + "table 3");
        }
        out.step(
                "heat removed by the coil",
                "q = m (h1 - h2) - m_c h_c",
                Units.kilowatts(Si.watts(process.heat(), "heat") / 1000),
                CHAPTER + "eq. (43)");
        return notes(out, air).build();
    }

    static Working coil(CoilProcess.Dry process) {
        MoistAir air = process.entering().air();
        Working.Builder out = given(Working.titled("Cooling coil, dry"), air, "1");
        out.given("m", "dry air", process.entering().dryAirFlow());
        out.given("t_s", "surface temperature", process.surfaceTemperature());
        out.given("BF", "bypass factor", process.bypassFactor());
        enthalpy(out, "1", air);
        out.step(
                "leaving dry bulb",
                "t2 = t_s + BF (t1 - t_s)",
                process.leaving().air().dryBulb(),
                "definition of the bypass factor");
        if (ideal(air)) {
            out.step(
                    "leaving enthalpy",
                    "h2 = 1.006 t2 + W1 (2501 + 1.86 t2)",
                    kilojoules(process.leaving().specificEnthalpy()),
                    CHAPTER + "eq. (30)");
        } else {
            out.stepInWords(
                    "h2",
                    "leaving enthalpy",
                    REAL,
                    List.of("t2", "W1", "p"),
                    kilojoules(process.leaving().specificEnthalpy()),
                    REAL_SOURCE);
        }
        out.step(
                "heat removed by the coil",
                "q = m (h1 - h2)",
                Units.kilowatts(Si.watts(process.heat(), "heat") / 1000),
                BALANCE);
        out.note("The entering dew point is not above the surface temperature: the coil is dry.");
        return notes(out, air).build();
    }

    static Working surface(MoistAir entering, MoistAir leaving, CoilSurface.Wet surface) {
        Working.Builder out =
                given(Working.titled("Coil surface from entering and leaving air"), entering, "1");
        given(out, leaving, "2", false);
        enthalpy(out, "1", entering);
        enthalpy(out, "2", leaving);
        double kelvins = Si.kelvins(surface.apparatusDewPoint(), "apparatus dew point");
        out.stepInWords(
                "t_adp",
                "apparatus dew point",
                "first point beyond state 2 where the straight line through (W1, h1) and (W2, h2)"
                        + " meets the saturation curve",
                List.of("W1", "h1", "W2", "h2", "p"),
                surface.apparatusDewPoint(),
                "definition of the apparatus dew point");
        saturated(
                out,
                "_adp",
                entering,
                kelvins,
                entering.model().saturationHumidityRatio(kelvins, entering.pressurePascals()));
        out.step(
                "bypass factor",
                "BF = (W2 - W_adp) / (W1 - W_adp)",
                surface.bypassFactor(),
                "definition of the bypass factor");
        return notes(out, entering).build();
    }

    private static void saturated(
            Working.Builder out, String suffix, MoistAir air, double kelvins, double ratio) {
        if (ideal(air)) {
            out.step(
                    "absolute temperature",
                    "T" + suffix + " = t" + suffix + " + 273.15",
                    Units.kelvins(kelvins),
                    "by definition");
            saturation(out, "p" + suffix, "T" + suffix, kelvins);
            out.step(
                    "saturation humidity ratio",
                    "W" + suffix + " = 0.621945 p" + suffix + " / (p - p" + suffix + ")",
                    Units.kilogramsPerKilogram(ratio),
                    CHAPTER + "eq. (21)");
        } else {
            out.stepInWords(
                    "W" + suffix,
                    "saturation humidity ratio",
                    REAL,
                    List.of("t" + suffix, "p"),
                    Units.kilogramsPerKilogram(ratio),
                    REAL_SOURCE);
        }
    }

    private static void saturation(
            Working.Builder out, String symbol, String temperature, double kelvins) {
        boolean liquid = kelvins >= ICE_POINT;
        out.step(
                liquid ? "saturation pressure over water" : "saturation pressure over ice",
                symbol + String.format(Locale.ROOT, liquid ? OVER_LIQUID : OVER_ICE, temperature),
                Units.pascals(Saturation.pressure(kelvins)),
                CHAPTER + (liquid ? "eq. (6)" : "eq. (5)") + ", Hyland and Wexler (1983b)");
    }

    private static void enthalpy(Working.Builder out, String suffix, MoistAir air) {
        enthalpy(
                out,
                suffix,
                air.model(),
                air.dryBulbKelvins(),
                air.humidityRatioNumber(),
                air.pressurePascals());
    }

    private static void enthalpy(
            Working.Builder out,
            String suffix,
            AirModel model,
            double kelvins,
            double ratio,
            double pressure) {
        Quantity<SpecificEnthalpy> result = kilojoules(model.enthalpy(kelvins, ratio, pressure));
        if (model == AirModel.IDEAL) {
            out.step(
                    "specific enthalpy",
                    "h"
                            + suffix
                            + " = 1.006 t"
                            + suffix
                            + " + W"
                            + suffix
                            + " (2501 + 1.86 t"
                            + suffix
                            + ")",
                    result,
                    CHAPTER + "eq. (30)");
        } else {
            out.stepInWords(
                    "h" + suffix,
                    "specific enthalpy",
                    REAL,
                    List.of("t" + suffix, "W" + suffix, "p"),
                    result,
                    REAL_SOURCE);
        }
    }

    private static void dryBulb(Working.Builder out, String suffix, MoistAir air, double kelvins) {
        Quantity<Temperature> result = Units.celsius(kelvins - ICE_POINT);
        if (ideal(air)) {
            out.step(
                    "dry bulb",
                    "t"
                            + suffix
                            + " = (h"
                            + suffix
                            + " - 2501 W"
                            + suffix
                            + ") / (1.006 + 1.86 W"
                            + suffix
                            + ")",
                    result,
                    CHAPTER + "eq. (30), solved for t");
        } else {
            out.stepInWords(
                    "t" + suffix,
                    "dry bulb",
                    "temperature at which air of W" + suffix + " has the enthalpy h" + suffix,
                    List.of("h" + suffix, "W" + suffix, "p"),
                    result,
                    REAL_SOURCE);
        }
    }

    private static Working.Builder given(Working.Builder out, MoistAir air, String suffix) {
        return given(out, air, suffix, true);
    }

    private static Working.Builder given(
            Working.Builder out, MoistAir air, String suffix, boolean pressure) {
        out.given("t" + suffix, "dry bulb", air.dryBulb());
        out.given("W" + suffix, "humidity ratio", air.humidityRatio());
        if (pressure) {
            out.given("p", "air pressure", air.pressure());
        }
        return out;
    }

    private static Working.Builder notes(Working.Builder out, MoistAir air) {
        return ideal(air)
                ? out.note("Ideal mixture; W and h are per mass of dry air, t in degC, h in kJ/kg.")
                : out.note("Real mixture; W and h are per mass of dry air, t in degC, h in kJ/kg.");
    }

    private static Quantity<SpecificEnthalpy> kilojoules(double joules) {
        return Units.kilojoulesPerKilogram(joules / 1000);
    }

    private static boolean ideal(MoistAir air) {
        return air.formulation() == Formulation.IDEAL;
    }
}
