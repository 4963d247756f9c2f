package dev.thinair.psychro.kernel;

/**
 * Viscosity and thermal conductivity of moist air.
 *
 * <p>Method: dry air and water vapor each in the limit of zero density, then mixed by mole fraction
 * <var>x</var> with Wilke's rule, <var>&#951;</var> = &#931;<sub>i</sub> <var>x</var><sub>i</sub>
 * <var>&#951;</var><sub>i</sub> / &#931;<sub>j</sub> <var>x</var><sub>j</sub>
 * <var>&#966;</var><sub>ij</sub>, <var>&#966;</var><sub>ij</sub> = [1 +
 * (<var>&#951;</var><sub>i</sub> /<var>&#951;</var><sub>j</sub>)<sup>1/2</sup>
 * (<var>M</var><sub>j</sub>/<var>M</var><sub>i</sub>) <sup>1/4</sup>]<sup>2</sup> / [8 (1 +
 * <var>M</var><sub>i</sub>/<var>M</var><sub>j</sub>)] <sup>1/2</sup>; the conductivity with
 * Wassiljewa's form and the same <var>&#966;</var>.
 *
 * <p>Valid -100 to 200 degC at 20 to 200 kPa: both components depend on pressure by less than 0.2 %
 * there, so pressure is checked but does not enter except through the mixing.
 *
 * <p>Accuracy: dry air 1 % in viscosity and 2 % in conductivity, water vapor 2 % (the makers' own
 * statements for the gas at low density, from memory); the mixing rules are estimates, taken as
 * good to 3 % at the few percent of vapor that air holds below 60 degC. Not checked against
 * measurements of mixtures.
 *
 * <p>Sources: dry air, Lemmon and Jacobsen, International Journal of Thermophysics 25 (2004) 21-69,
 * equations (2) and (5); water vapor, IAPWS R12-08 equation (11) (viscosity) and IAPWS R15-11
 * equation (16) (conductivity); mixing, Wilke, Journal of Chemical Physics 18 (1950) 517, and
 * Wassiljewa's equation as in Poling, Prausnitz and O'Connell, The Properties of Gases and Liquids,
 * 5th edition, chapters 9 and 10. All coefficients typed from memory and held by test to the check
 * values of the sources.
 */
public final class Transport {

    private static final double MASS_RATIO = IdealMoistAir.MASS_RATIO;
    private static final double QUARTER_AIR_OVER_WATER = Math.sqrt(Math.sqrt(1 / MASS_RATIO));
    private static final double WILKE_AIR = 1 / Math.sqrt(8 * (1 + 1 / MASS_RATIO));
    private static final double WILKE_WATER = 1 / Math.sqrt(8 * (1 + MASS_RATIO));

    private Transport() {}

    /**
     * Dynamic viscosity of moist air.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return dynamic viscosity, Pa s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double viscosity(double dryBulb, double humidityRatio, double pressure) {
        check(dryBulb, humidityRatio, pressure);
        double air = dryAirViscosity(dryBulb);
        double water = vaporViscosity(dryBulb);
        return mix(humidityRatio, air, water, air, water);
    }

    /**
     * Thermal conductivity of moist air.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return thermal conductivity, W/(m K)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double conductivity(double dryBulb, double humidityRatio, double pressure) {
        check(dryBulb, humidityRatio, pressure);
        double air = dryAirViscosity(dryBulb);
        double water = vaporViscosity(dryBulb);
        return mix(
                humidityRatio,
                air,
                water,
                dryAirConductivity(dryBulb, air),
                vaporConductivity(dryBulb));
    }

    private static void check(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
    }

    private static double mix(
            double humidityRatio, double etaAir, double etaWater, double air, double water) {
        double xWater = humidityRatio / (MASS_RATIO + humidityRatio);
        double xAir = 1 - xWater;
        double root = Math.sqrt(etaAir / etaWater) / QUARTER_AIR_OVER_WATER;
        double airSum = 1 + root;
        double waterSum = 1 + 1 / root;
        double phiAirWater = airSum * airSum * WILKE_AIR;
        double phiWaterAir = waterSum * waterSum * WILKE_WATER;
        return xAir * air / (xAir + xWater * phiAirWater)
                + xWater * water / (xWater + xAir * phiWaterAir);
    }

    /** Lemmon and Jacobsen (2004), eqs. (2) and (3), Pa s. */
    static double dryAirViscosity(double t) {
        double log = Math.log(t / 103.3);
        double collision =
                Math.exp(
                        0.431
                                + log
                                        * (-0.4623
                                                + log
                                                        * (0.08406
                                                                + log
                                                                        * (0.005341
                                                                                + log
                                                                                        * -0.00331))));
        return 1e-6 * 0.0266958 * Math.sqrt(28.9586 * t) / (0.360 * 0.360 * collision);
    }

    /** Lemmon and Jacobsen (2004), eq. (5), W/(m K), from the viscosity in Pa s. */
    static double dryAirConductivity(double t, double viscosity) {
        double log = Math.log(132.6312 / t);
        return 1e-3
                * (1.308 * (1e6 * viscosity)
                        + 1.405 * Math.exp(-1.1 * log)
                        - 1.036 * Math.exp(-0.3 * log));
    }

    /** IAPWS R12-08 eq. (11), Pa s. */
    static double vaporViscosity(double t) {
        double inverse = 647.096 / t;
        double sum = 1.67752 + inverse * (2.20462 + inverse * (0.6366564 + inverse * -0.241605));
        return 1e-4 / (Math.sqrt(inverse) * sum);
    }

    /** IAPWS R15-11 eq. (16), W/(m K). */
    static double vaporConductivity(double t) {
        double inverse = 647.096 / t;
        double sum =
                2.443221e-3
                        + inverse
                                * (1.323095e-2
                                        + inverse
                                                * (6.770357e-3
                                                        + inverse
                                                                * (-3.454586e-3
                                                                        + inverse * 4.096266e-4)));
        return 1e-3 / (Math.sqrt(inverse) * sum);
    }
}
