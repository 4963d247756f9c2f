package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;

/**
 * Heat carried per volume of air: the trade's 1.08, 4840 (or 0.68 per grain) and 4.5 per cfm, at
 * any density, derived and not tabulated.
 *
 * <p>All rest on mass flow = volume flow times density, per mass of <em>dry</em> air: sensible
 * factor = density x specific heat; latent = density x heat of vaporisation; total = density. The
 * constants of the two handbooks differ, and so do their fourth digits:
 *
 * <table>
 * <caption>Constants in use</caption>
 * <tr><th>set</th><th>dry air</th><th>vapour</th><th>vaporisation</th></tr>
 * <tr><td>SI, Fundamentals 2021 ch. 1 eqs. (28)-(30)</td><td>1006 J/(kg K)</td><td>1860
 * J/(kg K)</td><td>2 501 000 J/kg</td></tr>
 * <tr><td>inch-pound handbook (from memory)</td><td>0.240 BTU/(lb F)</td><td>0.444
 * BTU/(lb F)</td><td>1061 BTU/lb</td></tr>
 * </table>
 *
 * <p>The common 4840 takes 1076 BTU/lb and 0.68 takes 1061 BTU/lb: 1.7 percent apart, so the latent
 * heat is always an argument here. Source of the method: ASHRAE Handbook - Fundamentals 2021 (SI),
 * chapter 18, section 3.1. Its sentence on elevation says sea-level over local pressure; its
 * formula and examples, followed here, use local over sea-level. All functions are pure and
 * allocation-free.
 */
public final class AirFactors {

    /** Specific heat of dry air, SI handbook, J/(kg K). */
    public static final double CP_AIR_SI = 1006.0;

    /** Specific heat of water vapour, SI handbook, J/(kg K). */
    public static final double CP_VAPOR_SI = 1860.0;

    /** Heat of vaporisation at 0 degC, SI handbook, J/kg. */
    public static final double VAPORIZATION_SI = 2_501_000.0;

    /** Specific heat of dry air, inch-pound handbook: 0.240 BTU/(lb F) in J/(kg K). */
    public static final double CP_AIR_INCH_POUND = 0.240 * 4186.8;

    /** Specific heat of water vapour, inch-pound handbook: 0.444 BTU/(lb F) in J/(kg K). */
    public static final double CP_VAPOR_INCH_POUND = 0.444 * 4186.8;

    /** Heat of vaporisation, inch-pound handbook: 1061 BTU/lb in J/kg. */
    public static final double VAPORIZATION_INCH_POUND = 1061 * 2326.0;

    /** Latent heat behind the common 4840: 1076 BTU/lb (condensate at 50 degF) in J/kg. */
    public static final double LATENT_1076 = 1076 * 2326.0;

    private static final double CFM = 0.028316846592 / 60; // m3/s
    private static final double BTU_PER_HOUR = 1055.05585262 / 3600; // W

    private AirFactors() {}

    /**
     * Sensible factor: <var>C</var><sub>s</sub> = <var>rho</var><sub>da</sub> (c<sub>a</sub> +
     * c<sub>v</sub> <var>W</var>).
     *
     * @param dryAirDensity kg of dry air per m3 of moist air, above zero
     * @param humidityRatio kg/kg, in [0, 10]
     * @param specificHeatAir of dry air, J/(kg K), above zero
     * @param specificHeatVapor of water vapour, J/(kg K), above zero
     * @return W per m3/s and K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double sensible(
            double dryAirDensity,
            double humidityRatio,
            double specificHeatAir,
            double specificHeatVapor) {
        requireDensity(dryAirDensity);
        Range.require("humidity ratio", humidityRatio, 0, 10, "kg/kg");
        Range.requireAbove("specific heat of dry air", specificHeatAir, 0, "J/(kg K)");
        Range.requireAbove("specific heat of water vapour", specificHeatVapor, 0, "J/(kg K)");
        return dryAirDensity * (specificHeatAir + specificHeatVapor * humidityRatio);
    }

    /**
     * Sensible factor with the SI handbook's specific heats.
     *
     * @param dryAirDensity kg of dry air per m3 of moist air, above zero
     * @param humidityRatio kg/kg, in [0, 10]
     * @return W per m3/s and K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double sensible(double dryAirDensity, double humidityRatio) {
        return sensible(dryAirDensity, humidityRatio, CP_AIR_SI, CP_VAPOR_SI);
    }

    /**
     * Latent factor: <var>C</var><sub>l</sub> = <var>rho</var><sub>da</sub> x latent heat.
     *
     * @param dryAirDensity kg of dry air per m3 of moist air, above zero
     * @param latentHeat heat per mass of water, J/kg, above zero; say which ({@link
     *     #VAPORIZATION_SI}, {@link #VAPORIZATION_INCH_POUND}, {@link #LATENT_1076})
     * @return W per m3/s and kg/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double latent(double dryAirDensity, double latentHeat) {
        requireDensity(dryAirDensity);
        Range.requireAbove("latent heat", latentHeat, 0, "J/kg");
        return dryAirDensity * latentHeat;
    }

    /**
     * Total factor: <var>C</var><sub>t</sub> = <var>rho</var><sub>da</sub>.
     *
     * @param dryAirDensity kg of dry air per m3 of moist air, above zero
     * @return W per m3/s and J/kg
     * @throws IllegalArgumentException if the density is NaN, infinite or not above zero
     */
    public static double total(double dryAirDensity) {
        requireDensity(dryAirDensity);
        return dryAirDensity;
    }

    /**
     * A sea-level factor carried to a site: <var>C</var> = <var>C</var><sub>0</sub>
     * <var>p</var>/101325 Pa.
     *
     * @param seaLevelFactor factor at sea level, in any unit, above zero
     * @param pressure site pressure, Pa, in [20000, 200000]
     * @return factor at the site, in the same unit
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double atPressure(double seaLevelFactor, double pressure) {
        Range.requireAbove("sea-level factor", seaLevelFactor, 0, "(any unit)");
        return seaLevelFactor * AirDensity.ratioAtConstantTemperature(pressure);
    }

    /**
     * Heat that an airflow carries: factor x volume flow x difference.
     *
     * @param factor a factor of this class
     * @param airflow actual volume flow at the density of the factor, m3/s, in [0, 1000]
     * @param difference difference of temperature (K), humidity ratio (kg/kg) or specific enthalpy
     *     (J/kg), finite
     * @return heat flow, W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double heat(double factor, double airflow, double difference) {
        Range.requireAbove("air-side heat factor", factor, 0, "(its unit)");
        Range.require("airflow", airflow, 0, 1000, "m3/s");
        Range.require("difference", difference, -1e7, 1e7, "(its unit)");
        return factor * airflow * difference;
    }

    /**
     * Volume flow that carries a heat flow: heat over factor and difference.
     *
     * @param heat heat flow, W, of the sign of the difference
     * @param factor a factor of this class
     * @param difference difference of temperature (K), humidity ratio (kg/kg) or specific enthalpy
     *     (J/kg), not zero
     * @return actual volume flow, m3/s
     * @throws IllegalArgumentException if an argument is NaN, the factor is not above zero, the
     *     difference is zero, or heat and difference have opposite signs
     */
    public static double airflow(double heat, double factor, double difference) {
        Range.requireAbove("air-side heat factor", factor, 0, "(its unit)");
        Range.require("heat", heat, -1e9, 1e9, "W");
        Range.require("difference", difference, -1e7, 1e7, "(its unit)");
        if (difference == 0.0 || heat * difference < 0.0) {
            throw new IllegalArgumentException(
                    "no airflow carries "
                            + heat
                            + " W at a difference of "
                            + difference
                            + ": the difference must not be zero and must have the heat's sign");
        }
        return heat / (factor * difference);
    }

    /**
     * A sensible factor in the trade's unit.
     *
     * @param factor W per m3/s and K
     * @return BTU/h per cfm and degree Fahrenheit
     */
    public static double sensibleInchPound(double factor) {
        return factor * CFM / 1.8 / BTU_PER_HOUR;
    }

    /**
     * A latent factor in the trade's unit.
     *
     * @param factor W per m3/s and kg/kg
     * @return BTU/h per cfm and lb/lb; divide by 7000 for gr/lb
     */
    public static double latentInchPound(double factor) {
        return factor * CFM / BTU_PER_HOUR;
    }

    /**
     * A total factor in the trade's unit.
     *
     * @param factor W per m3/s and J/kg
     * @return BTU/h per cfm and BTU/lb
     */
    public static double totalInchPound(double factor) {
        return factor * CFM * 2326.0 / BTU_PER_HOUR;
    }

    private static void requireDensity(double dryAirDensity) {
        Range.requireAbove("density of dry air", dryAirDensity, 0, "kg/m3");
    }
}
