package dev.thinair.loads;

import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;

/** Shown work of infiltration. */
final class InfiltrationWorking {

    private static final String CH16 = "ASHRAE Fundamentals 2021 (SI), ch. 16";

    private InfiltrationWorking() {}

    static Working of(
            Infiltration infiltration,
            Quantity<Temperature> indoor,
            Quantity<Temperature> outdoor,
            Quantity<Speed> wind,
            Quantity<Pressure> pressure) {
        double inside = Si.kelvins(indoor, "indoor temperature");
        double outside = Si.kelvins(outdoor, "outdoor temperature");
        double speed = Si.metresPerSecond(wind, "wind speed");
        double p = Si.pascals(pressure, "station pressure");
        double flow = infiltration.volumeFlow(inside, outside, speed, p);
        Working.Builder work = Working.titled("Infiltration of the house");
        if (infiltration instanceof Infiltration.AirChanges changes) {
            work.given("n", "air change rate", Units.airChangesPerSecond(changes.perSecond()));
            work.given("V", "volume", Units.cubicMetres(changes.volume()));
            work.step("flow", "Q = n V", Units.cubicMetresPerSecond(flow), "by definition");
            return work.note("A fixed rate: weather and elevation do not change it.").build();
        }
        double exponent;
        Exposure exposure;
        double coefficient;
        boolean enhanced;
        if (infiltration instanceof Infiltration.BlowerDoor door) {
            exponent = door.exponent();
            exposure = door.exposure();
            coefficient = door.coefficient();
            enhanced = door.model() == Infiltration.Model.ENHANCED;
            work.given("n", "flow exponent", Units.ratio(exponent));
            work.given(
                    "Q_50",
                    "flow at 50 Pa and reference density",
                    Units.cubicMetresPerSecond(door.flowAt50()));
            work.step(
                    "leakage coefficient, m3/(s Pa^n)",
                    "c = Q_50/50^n",
                    Units.ratio(coefficient),
                    CH16 + ", Eq. (40)");
        } else {
            Infiltration.LeakageArea area = (Infiltration.LeakageArea) infiltration;
            exponent = area.exponent();
            exposure = area.exposure();
            coefficient =
                    InfiltrationModel.coefficientFromArea(
                            area.area(), exponent, 4, 1, InfiltrationModel.REFERENCE_DENSITY);
            enhanced = area.model() == Infiltration.Model.ENHANCED;
            work.given("n", "flow exponent", Units.ratio(exponent));
            work.given("A_L", "effective leakage area at 4 Pa", Units.squareMetres(area.area()));
            work.step(
                    "leakage coefficient, m3/(s Pa^n)",
                    "c = A_L/(4^(n - 0.5) sqrt(1.2041/2))",
                    Units.ratio(coefficient),
                    CH16 + ", Eq. (44)");
        }
        work.given(
                "DeltaT",
                "indoor less outdoor temperature",
                Units.kelvinDifference(inside - outside));
        work.given("v", "wind speed at the station", Units.metresPerSecond(speed));
        work.given("p", "station pressure", Units.pascals(p));
        int stories = exposure.stories();
        work.step(
                "density ratio, as pressure ratio",
                "d = p/101325",
                Units.ratio(p / 101_325),
                "derived");
        if (enhanced) {
            enhanced(work, exposure, coefficient, exponent, inside - outside, speed, flow, stories);
        } else {
            double local = InfiltrationModel.crackAtDensity(coefficient, exponent, p / 101_325);
            work.step(
                    "leakage coefficient in the air of the site",
                    "c_s = c d^(n - 1)",
                    Units.ratio(local),
                    "ASTM E779, density part");
            work.step(
                    "effective leakage area at 4 Pa in the air of the site, m2",
                    "A_s = c_s 4^(n - 0.5) sqrt(1.2041 d/2)",
                    Units.ratio(
                            InfiltrationModel.leakageArea(
                                    local,
                                    exponent,
                                    4,
                                    1,
                                    InfiltrationModel.REFERENCE_DENSITY * p / 101_325)),
                    CH16 + ", Eq. (44)");
            work.given(
                    "C_s",
                    "stack coefficient, m2/(s2 K)",
                    Units.ratio(InfiltrationModel.basicStackCoefficient(stories)),
                    CH16 + ", Table 4");
            work.given(
                    "C_w",
                    "wind coefficient",
                    Units.ratio(
                            InfiltrationModel.basicWindCoefficient(stories, exposure.shelter())),
                    CH16 + ", Table 6");
            work.step(
                    "flow of outdoor air",
                    "Q = A_s sqrt(C_s abs(DeltaT) + C_w v^2)",
                    Units.cubicMetresPerSecond(flow),
                    "Sherman and Grimsrud (1980); " + CH16 + ", Eq. (48)");
        }
        return work.note("Actual volume of outdoor air at the site.").build();
    }

    private static void enhanced(
            Working.Builder work,
            Exposure exposure,
            double coefficient,
            double exponent,
            double difference,
            double speed,
            double flow,
            int stories) {
        double stackCoefficient =
                InfiltrationModel.enhancedStackCoefficient(stories, exposure.flue());
        double windCoefficient =
                InfiltrationModel.enhancedWindCoefficient(
                        stories, exposure.flue(), exposure.crawlSpace());
        double shelter =
                InfiltrationModel.enhancedShelterFactor(
                        stories, exposure.flue(), exposure.shelter());
        double multiplier = InfiltrationModel.enhancedWindMultiplier(stories);
        String table = CH16 + ", tables of the enhanced model";
        work.given("C_s", "stack coefficient, (Pa/K)^n", Units.ratio(stackCoefficient), table);
        work.given("C_w", "wind coefficient, (Pa s2/m2)^n", Units.ratio(windCoefficient), table);
        work.given("s", "shelter factor", Units.ratio(shelter), table);
        work.given(
                "G", "wind at the house over wind at the station", Units.ratio(multiplier), table);
        work.step(
                "stack flow at reference density",
                "Q_s = c C_s abs(DeltaT)^n",
                Units.cubicMetresPerSecond(
                        InfiltrationModel.enhancedStackFlow(
                                coefficient, exponent, stackCoefficient, difference)),
                CH16 + ", Eq. (50)");
        work.step(
                "wind flow at reference density",
                "Q_w = c C_w (s G v)^(2 n)",
                Units.cubicMetresPerSecond(
                        InfiltrationModel.enhancedWindFlow(
                                coefficient,
                                exponent,
                                windCoefficient,
                                shelter,
                                multiplier,
                                speed)),
                CH16 + ", Eq. (51)");
        work.step(
                "flow of outdoor air in the air of the site",
                "Q = sqrt(Q_s^2 + Q_w^2) d^(2 n - 1)",
                Units.cubicMetresPerSecond(flow),
                CH16 + ", Eq. (49); ASTM E779, density part");
    }
}
