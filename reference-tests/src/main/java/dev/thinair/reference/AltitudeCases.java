package dev.thinair.reference;

import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.altitude.kernel.AirFactors;
import dev.thinair.altitude.kernel.BurnerDerating;
import dev.thinair.altitude.kernel.DuctDerating;
import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.altitude.kernel.StandardAtmosphere;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Rules for the standard atmosphere and what thin air does. */
final class AltitudeCases {

    private static final double FOOT = 0.3048;

    private AltitudeCases() {}

    static void register(CaseEvaluator to) {
        atmosphere(to);
        factors(to);
        derating(to);
        fans(to);
    }

    private static void atmosphere(CaseEvaluator to) {
        at(to, StandardAtmosphere::pressure, "standard atmosphere pressure", "standard barometer");
        at(to, StandardAtmosphere::temperature, "standard atmosphere temperature");
        at(to, StandardAtmosphere::density, "standard atmosphere density");
        at(
                to,
                AirDensity::ratioOfStandardAtmosphere,
                "standard atmosphere density ratio",
                "air density ratio at elevation, standard-atmosphere temperature");
        at(
                to,
                AltitudeCases::pressureRatio,
                "standard atmosphere pressure ratio",
                "air density ratio at elevation, constant temperature (= pressure ratio)");
        at(
                to,
                StandardAtmosphere::handbookPressure,
                "pressure from elevation, handbook closed form");
        to.on(
                in -> Answer.si(StandardAtmosphere.altitude(in.si("p"))),
                "pressure altitude (geopotential) from station pressure");
        to.on(
                in -> Answer.si(StandardAtmosphere.stationPressure(in.si("altimeter"), in.si("Z"))),
                "station pressure from altimeter setting and elevation");
        at(
                to,
                h ->
                        AirDensity.ofStandardAir(
                                StandardAtmosphere.pressure(h), AirDensity.STANDARD_TEMPERATURE),
                "dry-air density at 70 degF",
                "air density at elevation, 70 F");
        to.on(
                in ->
                        Answer.si(
                                AirDensity.ratioToStandardAir(
                                        StandardAtmosphere.pressure(altitude(in)),
                                        in.si("temperature"))),
                "density ratio to standard air at elevation and temperature");
    }

    private static void factors(CaseEvaluator to) {
        to.on(
                in ->
                        Answer.difference(
                                AirFactors.sensible(
                                        in.si("rho"),
                                        in.si("W"),
                                        AirFactors.CP_AIR_INCH_POUND,
                                        AirFactors.CP_VAPOR_INCH_POUND)),
                "air sensible heat factor at standard air, dry",
                "air sensible heat factor at standard air, W=0.01");
        to.on(
                in -> Answer.difference(AirFactors.latent(in.si("rho"), in.si("dh"))),
                "air latent heat factor, per lb",
                "air latent heat factor, per grain");
        to.on(in -> Answer.difference(AirFactors.total(in.si("rho"))), "air total heat factor");
        corrected(to, "C_t0", "air total heat factor, elevation corrected");
        corrected(to, "C_s0", "air sensible heat factor, elevation corrected");
        corrected(to, "C_l0", "air latent heat factor, elevation corrected");
        // Older SI handbooks: 1.20 kg/m3, 1.006 and 1.84 kJ/(kg K).
        to.on(
                in -> Answer.difference(AirFactors.sensible(1.2, in.si("W"), 1006, 1840)),
                "1.2 (1.006 + 1.84 W)");
        to.on(
                in ->
                        Answer.plain(
                                AirFactors.atPressure(
                                        1.08, StandardAtmosphere.pressure(altitude(in)))),
                "sensible heat factor at elevation (1.08 x ratio)");
    }

    private static void derating(CaseEvaluator to) {
        at(
                to,
                h -> DuctDerating.volumeForSameHeat(pressureRatio(h)),
                "airflow multiplier for the same mass flow (1/ratio)",
                "actual cfm that carry the same mass as 1 standard cfm");
        to.on(
                in ->
                        Answer.si(
                                in.si("V_std")
                                        * DuctDerating.volumeForSameHeat(
                                                pressureRatio(altitude(in)))),
                "actual airflow per ton carrying the mass of a sea-level airflow, same air"
                        + " temperature");
        // CYC: flow per ton that keeps the dry-air mass flow of 400 cfm/ton at sea level.
        to.on(
                in -> Answer.plain(400 * DuctDerating.volumeForSameHeat(pressureRatio(in.si("z")))),
                "actual cfm per ton for the same dry-air mass flow as 400 cfm/ton at sea level,"
                        + " same entering temperature (400 * p0/p)");
        at(
                to,
                h -> {
                    double r = pressureRatio(h);
                    return 1 - DuctDerating.mass(DuctDerating.volumeWithSameBlowerAndSpeed(r), r);
                },
                "mass flow loss of the same fan at the same speed in the same ducts, air at 70"
                        + " degF");
        at(
                to,
                h -> DuctDerating.volumeAtSamePressureDrop(pressureRatio(h)) - 1,
                "volume gain at the same pressure drop, fully rough limit");
        at(
                to,
                h -> {
                    double r = pressureRatio(h);
                    return 1 - DuctDerating.mass(DuctDerating.volumeAtSamePressureDrop(r), r);
                },
                "mass flow loss at the same pressure drop, fully rough limit");
        at(
                to,
                BurnerDerating::fourPercentFromSeaLevel,
                "rule: gas input multiplier, 4 percent per 1000 ft above sea level when above 2000"
                        + " ft");
        to.on(
                in ->
                        Answer.si(
                                in.si("input")
                                        * BurnerDerating.flatBand(
                                                in.si("Z"), 2000 * FOOT, 4500 * FOOT, 0.10)),
                "rule: gas input, Canada 2000-4500 ft, 10 percent");

        ratio(
                to,
                DuctDerating::volumeAtSamePressureDrop,
                "same pressure drop, purely quadratic loss: volume relative to sea level");
        ratio(
                to,
                r -> DuctDerating.mass(DuctDerating.volumeAtSamePressureDrop(r), r),
                "same pressure drop, purely quadratic loss: mass relative to sea level");
        ratio(
                to,
                DuctDerating::volumeWithSameBlowerAndSpeed,
                "same blower, same speed, purely quadratic loss: volume relative to sea level");
        ratio(
                to,
                r -> DuctDerating.mass(DuctDerating.volumeWithSameBlowerAndSpeed(r), r),
                "same blower, same speed, purely quadratic loss: mass (and heat at the same dT)"
                        + " relative to sea level");
        ratio(
                to,
                r -> DuctDerating.mass(DuctDerating.volumeAtSameVelocity(r), r),
                "same velocity: mass relative to sea level");
        ratio(
                to,
                DuctDerating::volumeForSameHeat,
                "volume needed for the same heat relative to sea level");
    }

    private static void fans(CaseEvaluator to) {
        to.on(
                in ->
                        Answer.si(
                                FanLaws.cataloguePressure(
                                        in.si("static_pressure"), in.si("density_ratio"))),
                "fan at altitude: equivalent sea-level static pressure");
        to.on(
                in ->
                        Answer.si(
                                FanLaws.powerAtDensity(
                                        in.si("power_standard"), in.si("density_ratio"))),
                "fan at altitude: shaft power");
        speed(to, FanLaws::airflowAtSpeed, "fan law, speed: airflow");
        speed(to, FanLaws::pressureAtSpeed, "fan law, speed: pressure");
        speed(to, FanLaws::powerAtSpeed, "fan law, speed: shaft power");
        density(
                to,
                FanLaws::ratioAtConstantPressure,
                "fan law, density: airflow at constant pressure",
                "fan law, density: speed at constant pressure",
                "fan law, density: power at constant pressure");
        density(
                to,
                FanLaws::ratioAtConstantMass,
                "fan law, density: airflow at constant mass flow",
                "fan law, density: speed at constant mass flow",
                "fan law, density: pressure at constant mass flow");
        density(
                to,
                FanLaws::powerRatioAtConstantMass,
                "fan law, density: power at constant mass flow");
        to.on(
                in ->
                        Answer.si(
                                FanLaws.electricPower(
                                        in.si("airflow"),
                                        in.si("pressure"),
                                        in.si("total_efficiency"))),
                "electric power of blower");
    }

    private static void speed(CaseEvaluator to, DoubleBinaryOperator law, String wording) {
        to.on(
                in ->
                        Answer.si(
                                law.applyAsDouble(
                                        in.si("value1"), in.si("speed2") / in.si("speed1"))),
                wording);
    }

    private static void density(CaseEvaluator to, DoubleUnaryOperator law, String... wordings) {
        to.on(
                in -> Answer.si(in.si("value1") * law.applyAsDouble(in.si("density_ratio"))),
                wordings);
    }

    /** Something that depends on altitude alone. */
    private static void at(CaseEvaluator to, DoubleUnaryOperator rule, String... wordings) {
        to.on(in -> Answer.si(rule.applyAsDouble(altitude(in))), wordings);
    }

    /** Something that depends on the density ratio alone. */
    private static void ratio(CaseEvaluator to, DoubleUnaryOperator rule, String... wordings) {
        to.on(in -> Answer.si(rule.applyAsDouble(in.si("density_ratio"))), wordings);
    }

    private static void corrected(CaseEvaluator to, String factor, String wording) {
        to.on(
                in ->
                        Answer.difference(
                                AirFactors.atPressure(
                                        in.difference(factor),
                                        StandardAtmosphere.pressure(altitude(in)))),
                wording);
    }

    private static double pressureRatio(double altitude) {
        return AirDensity.ratioAtConstantTemperature(StandardAtmosphere.pressure(altitude));
    }

    /** Geopotential altitude; the case says whether its own is geometric. */
    private static double altitude(CaseInputs in) {
        double z = in.anySi("Z", "elevation", "z");
        return in.text("altitude", "geopotential").equals("geometric")
                ? StandardAtmosphere.geopotentialFromGeometric(z)
                : z;
    }
}
