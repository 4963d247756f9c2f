package dev.thinair.altitude;

import dev.thinair.altitude.kernel.AirFactors;

/** The constants behind air-side heat factors: the two handbooks differ in the fourth digit. */
public enum HeatConstants {
    /** ASHRAE Fundamentals 2021 (SI) ch. 1: 1006 and 1860 J/(kg K), 2501 kJ/kg. */
    SI_HANDBOOK(
            AirFactors.CP_AIR_SI,
            AirFactors.CP_VAPOR_SI,
            AirFactors.VAPORIZATION_SI,
            false,
            "ASHRAE Handbook - Fundamentals 2021 (SI), ch. 1, eqs. (28)-(30)"),
    /** Inch-pound handbook: 0.240 and 0.444 BTU/(lb F), 1061 BTU/lb; gives 1.08 and 0.68. */
    INCH_POUND_HANDBOOK(
            AirFactors.CP_AIR_INCH_POUND,
            AirFactors.CP_VAPOR_INCH_POUND,
            AirFactors.VAPORIZATION_INCH_POUND,
            true,
            "ASHRAE Handbook - Fundamentals (I-P), ch. 1 (from memory)"),
    /** As the inch-pound handbook, with 1076 BTU/lb (condensate at 50 degF): gives 4840. */
    INCH_POUND_WITH_1076(
            AirFactors.CP_AIR_INCH_POUND,
            AirFactors.CP_VAPOR_INCH_POUND,
            AirFactors.LATENT_1076,
            true,
            "ASHRAE Handbook - Fundamentals (I-P) (from memory); 1076 BTU/lb: common practice");

    private final double specificHeatAir;
    private final double specificHeatVapor;
    private final double latentHeat;
    private final boolean inchPound;
    private final String source;

    HeatConstants(
            double specificHeatAir,
            double specificHeatVapor,
            double latentHeat,
            boolean inchPound,
            String source) {
        this.specificHeatAir = specificHeatAir;
        this.specificHeatVapor = specificHeatVapor;
        this.latentHeat = latentHeat;
        this.inchPound = inchPound;
        this.source = source;
    }

    double specificHeatAir() {
        return specificHeatAir;
    }

    double specificHeatVapor() {
        return specificHeatVapor;
    }

    double latentHeat() {
        return latentHeat;
    }

    boolean inchPound() {
        return inchPound;
    }

    String source() {
        return source;
    }
}
