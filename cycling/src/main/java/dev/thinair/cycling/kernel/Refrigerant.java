package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Saturation and superheated-vapour properties of one refrigerant, as short fits for a vapour
 * compression cycle.
 *
 * <p>With <var>T</var> the saturated suction and <var>C</var> the condensing temperature in K, and
 * <var>x</var> the same in &deg;C:
 *
 * <ul>
 *   <li>saturated vapour pressure: <code>ln p = a + b/T + c T + d T<sup>2</sup></code>, Pa;
 *   <li>density of the suction gas, 6 K superheated: <code>ln rho = a + b/T + c T</code>, kg/m3;
 *   <li>enthalpy of the suction gas, 6 K superheated: quadratic in <var>x</var>, J/kg;
 *   <li>enthalpy of the liquid, 6 K subcooled: cubic in <var>x</var>, J/kg.
 * </ul>
 *
 * <p>The three built-in refrigerants were fitted by this project to CoolProp 8.0.0 (Bell and
 * others, Ind. Eng. Chem. Res. 53, 2014; its R-410A is the pseudo-pure equation of Lemmon 2003) for
 * suction -25 to 25 &deg;C and condensing 10 to 64 &deg;C. Largest deviations over that range:
 * pressure 0.06 %, density 0.3 %, volumetric capacity 0.2 %, isentropic work 2.4 %. Superheat and
 * subcooling of 6 K each are this model's assumption (common practice aims at 5 to 8 K).
 *
 * <p>Immutable.
 */
public final class Refrigerant {

    /** R-410A, the usual refrigerant of units made from about 2005 to 2024. */
    public static final Refrigerant R410A =
            new Refrigerant(
                    "R-410A",
                    new double[] {32.4410996, -3357.55851, -0.0348966369, 3.98462225e-05},
                    new double[] {7.7830354, -1797.4265, 0.0079668991},
                    new double[] {427971.0, 343.974, -3.01339},
                    new double[] {190610.0, 1542.02, -0.125792, 0.0468794},
                    1.095);

    /** */
    public static final Refrigerant R32 =
            new Refrigerant(
                    "R-32",
                    new double[] {30.7065025, -3196.89725, -0.0286747332, 3.26824738e-05},
                    new double[] {7.8025504, -1840.8882, 0.0072944145},
                    new double[] {522546.0, 233.010, -4.13286},
                    new double[] {189215.0, 1774.68, -0.272944, 0.0507076},
                    1.200);

    /** R-22, found in old units only. */
    public static final Refrigerant R22 =
            new Refrigerant(
                    "R-22",
                    new double[] {29.605656, -3197.89396, -0.024679519, 2.62878266e-05},
                    new double[] {10.117671, -2142.6282, 0.0027467446},
                    new double[] {409458.0, 389.730, -1.54095},
                    new double[] {192929.0, 1171.46, 0.614965, 0.0150415},
                    1.125);

    private static final double ICE_POINT = 273.15;

    private final String name;
    private final double p0;
    private final double p1;
    private final double p2;
    private final double p3;
    private final double r0;
    private final double r1;
    private final double r2;
    private final double v0;
    private final double v1;
    private final double v2;
    private final double l0;
    private final double l1;
    private final double l2;
    private final double l3;
    private final double k;

    private Refrigerant(
            String name,
            double[] pressure,
            double[] density,
            double[] vapour,
            double[] liquid,
            double exponent) {
        this.name = name;
        p0 = pressure[0];
        p1 = pressure[1];
        p2 = pressure[2];
        p3 = pressure[3];
        r0 = density[0];
        r1 = density[1];
        r2 = density[2];
        v0 = vapour[0];
        v1 = vapour[1];
        v2 = vapour[2];
        l0 = liquid[0];
        l1 = liquid[1];
        l2 = liquid[2];
        l3 = liquid[3];
        k = (exponent - 1) / exponent;
    }

    /**
     * A refrigerant from the user's own fit.
     *
     * @param name the refrigerant's designation
     * @param pressure the four coefficients of ln p (Pa) = a + b/T + c T + d T<sup>2</sup>
     * @param density the three coefficients of ln rho (kg/m3) = a + b/T + c T of the suction gas
     * @param vapour the three coefficients of the suction gas enthalpy (J/kg), rising powers of
     *     &deg;C
     * @param liquid the four coefficients of the liquid enthalpy (J/kg), rising powers of &deg;C
     * @param exponent isentropic exponent for the compression work, in ]1, 1.4]
     * @return the refrigerant
     * @throws IllegalArgumentException if a coefficient array has the wrong length or holds a
     *     non-finite number, or the exponent is out of range
     */
    public static Refrigerant of(
            String name,
            double[] pressure,
            double[] density,
            double[] vapour,
            double[] liquid,
            double exponent) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("refrigerant name is missing");
        }
        check("pressure", pressure, 4);
        check("density", density, 3);
        check("suction gas enthalpy", vapour, 3);
        check("liquid enthalpy", liquid, 4);
        if (!(exponent > 1 && exponent <= 1.4)) {
            throw new IllegalArgumentException(
                    "isentropic exponent is " + exponent + ", but must lie in ]1.0, 1.4]");
        }
        return new Refrigerant(name, pressure, density, vapour, liquid, exponent);
    }

    private static void check(String what, double[] coefficients, int length) {
        if (coefficients == null || coefficients.length != length) {
            throw new IllegalArgumentException(
                    what
                            + " fit needs "
                            + length
                            + " coefficients, but got "
                            + (coefficients == null ? "none" : coefficients.length));
        }
        for (double c : coefficients) {
            if (!Double.isFinite(c)) {
                throw new IllegalArgumentException(
                        what + " fit holds the non-finite coefficient " + c);
            }
        }
    }

    /**
     * The designation.
     *
     * @return for example "R-410A"
     */
    public String name() {
        return name;
    }

    /**
     * Saturated vapour pressure, <code>exp(a + b/T + c T + d T<sup>2</sup>)</code>.
     *
     * @param temperature saturation temperature, K
     * @return pressure, Pa absolute; within 0.06 % of the reference equation from -25 to 64 &deg;C
     */
    public double saturationPressure(double temperature) {
        return Math.exp(lnPressure(temperature));
    }

    /**
     * Saturation temperature of a vapour pressure, the inverse of {@link #saturationPressure} by
     * bracketed Newton iteration, to 1e-9 K.
     *
     * @param pressure pressure, Pa absolute, in [50000, 4000000]
     * @return temperature, K; within 0.03 K of the reference equation from -25 to 64 &deg;C
     * @throws IllegalArgumentException if the pressure is NaN or out of range
     * @throws ArithmeticException if the iteration fails, as it may for coefficients of the user's
     */
    public double saturationTemperature(double pressure) {
        Range.require("refrigerant pressure", pressure, 50_000, 4_000_000, "Pa");
        double target = Math.log(pressure);
        double low = 200;
        double high = 400;
        double t = 280;
        for (int i = 0; i < 60; i++) {
            double miss = lnPressure(t) - target;
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - miss / lnPressureSlope(t);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - t) <= 1e-9) {
                return next;
            }
            t = next;
        }
        throw new ArithmeticException(
                "saturation temperature not found at " + pressure + " Pa, last " + t + " K");
    }

    double lnPressure(double t, double inverse) {
        return p0 + p1 * inverse + t * (p2 + p3 * t);
    }

    double lnPressureSlope(double t, double inverse) {
        return p2 + 2 * p3 * t - p1 * inverse * inverse;
    }

    double lnPressure(double t) {
        return p0 + p1 / t + t * (p2 + p3 * t);
    }

    double lnPressureSlope(double t) {
        return p2 + 2 * p3 * t - p1 / (t * t);
    }

    /**
     * Density of the gas at the compressor's suction, 6 K superheated.
     *
     * @param suction saturated suction temperature, K
     * @return density, kg/m3
     */
    public double suctionDensity(double suction) {
        return Math.exp(lnDensity(suction));
    }

    double lnDensity(double t) {
        return r0 + r1 / t + r2 * t;
    }

    /**
     * Refrigerating effect: enthalpy of the suction gas less that of the liquid.
     *
     * @param suction saturated suction temperature, K
     * @param condensing condensing temperature, K
     * @return effect, J/kg
     */
    public double refrigeratingEffect(double suction, double condensing) {
        return vapourEnthalpy(suction) - liquidEnthalpy(condensing);
    }

    double vapourEnthalpy(double suction) {
        double x = suction - ICE_POINT;
        return v0 + x * (v1 + x * v2);
    }

    double liquidEnthalpy(double condensing) {
        double y = condensing - ICE_POINT;
        return l0 + y * (l1 + y * (l2 + y * l3));
    }

    double liquidEnthalpySlope(double condensing) {
        double y = condensing - ICE_POINT;
        return l1 + y * (2 * l2 + y * 3 * l3);
    }

    double exponent() {
        return k;
    }

    /**
     * Isentropic compression work per mass, <code>(p/rho)/k ((pc/pe)^k - 1)</code> with k = (n -
     * 1)/n.
     *
     * @param suction saturated suction temperature, K
     * @param condensing condensing temperature, K, not below the suction temperature
     * @return work, J/kg
     */
    public double isentropicWork(double suction, double condensing) {
        double lnPe = lnPressure(suction);
        return Math.exp(lnPe - lnDensity(suction))
                / k
                * Math.expm1(k * (lnPressure(condensing) - lnPe));
    }

    /**
     * The designation, for shells.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return name;
    }
}
