package dev.thinair.psychro.kernel;

/**
 * Enhancement factor: how much more vapor saturated air holds than the saturation pressure of pure
 * water says, because the air presses on the condensed water and the gases attract each other.
 *
 * <p>Definition: <var>f</var> = <var>x</var><sub>ws</sub> <var>p</var> / <var>e</var>, <var>x</var>
 * <sub>ws</sub> the mole fraction of vapor in saturated air, <var>e</var> the saturation pressure
 * of pure water.
 *
 * <p>Formula: ln <var>f</var> = {(<var>p</var> - <var>e</var>)(<var>v</var><sub>c</sub> -
 * <var>B</var><sub>ww</sub>) + (1 - <var>f e</var>/<var>p</var>)<sup>2</sup> <var>p</var>
 * (<var>B</var><sub>aa</sub> - 2 <var>B</var><sub>aw</sub> + <var>B</var><sub>ww</sub>)} / (<var>R
 * T</var>), three fixed-point passes from <var>f</var> = 1; <var>v</var><sub>c</sub> is the molar
 * volume of the condensed phase, <var>B</var> the second virial coefficients.
 *
 * <p>Accuracy: within 1.8e-4 of IAPWS G8-10 from -95 to 90 degC and 54 to 110 kPa where
 * <var>e</var> is below 0.9 <var>p</var>; outside that the form is an extrapolation. As
 * <var>e</var> nears <var>p</var>, <var>f</var> goes to 1; above it no saturated mixture exists and
 * 1 is answered.
 *
 * <p>Sources: structure, Hyland and Wexler (1983a) and Herrmann, Kretzschmar and Gatley, HVAC&amp;R
 * Research 15(5) (2009); <var>B</var><sub>aw</sub>, Harvey and Huang (2007) as in the IAPWS 2015
 * guideline on the fugacity of water in humid air, equation (7); <var>B</var><sub>aa</sub> and
 * <var>B</var><sub>ww</sub>, own fits to the coefficients that G8-10 implies (0.005 cm3/mol and 0.8
 * % over 178 to 473 K); <var>e</var>, {@link IapwsSaturation}.
 */
public final class EnhancementFactor {

    /** J/(mol K), the value G8-10 uses. */
    private static final double GAS_CONSTANT = 8.314472;

    private static final double MOLAR_VOLUME_ICE = 19.65e-6; // m3/mol
    private static final double MOLAR_VOLUME_LIQUID = 18.018e-6; // m3/mol at 4 degC

    private EnhancementFactor() {}

    /**
     * Enhancement factor of saturated air: over ice below 0 degC, over liquid water from there up.
     *
     * @param temperature temperature, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return enhancement factor, 1 or a little more
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double value(double temperature, double pressure) {
        Domain.dryBulb(temperature);
        Domain.pressure(pressure);
        return value(temperature, pressure, temperature >= Domain.ICE_POINT);
    }

    /** The same with the condensed phase given, for either side of 0 degC. */
    static double value(double temperature, double pressure, boolean liquid) {
        double pure = purePressure(temperature, liquid);
        if (pure >= pressure) {
            return 1;
        }
        double celsius = temperature - Domain.ICE_POINT;
        double condensed =
                liquid
                        ? MOLAR_VOLUME_LIQUID * (1 + 3.8e-6 * (celsius - 4) * (celsius - 4))
                        : MOLAR_VOLUME_ICE;
        double bww = SecondVirial.vapor(temperature);
        double rt = GAS_CONSTANT * temperature;
        double first = (pressure - pure) * (condensed - bww) / rt;
        double second =
                pressure
                        * (SecondVirial.air(temperature)
                                - 2 * SecondVirial.cross(temperature)
                                + bww)
                        / rt;
        double f = 1;
        for (int pass = 0; pass < 3; pass++) {
            double dry = 1 - f * pure / pressure;
            f = Math.exp(first + dry * dry * second);
        }
        return f;
    }

    /** Saturation pressure of pure water after IAPWS, without a domain check. */
    static double purePressure(double temperature, boolean liquid) {
        return liquid ? IapwsSaturation.liquid(temperature) : IapwsSaturation.ice(temperature);
    }
}
