package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Saturation of pure water after the international industrial and sublimation equations: the named
 * alternative to {@link Saturation}, used to check it and for readers who need these curves.
 *
 * <p>The moist-air functions of this package do not use it: their humidity ratios are those of the
 * handbook, which rest on Hyland and Wexler.
 */
public final class IapwsSaturation {

    private static final double LOWEST_LIQUID = 273.15;
    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double LOWEST_ICE = 50;
    private static final double TRIPLE_TEMPERATURE = 273.16;
    private static final double TRIPLE_PRESSURE = 611.657;

    // IAPWS R7-97, region 4, table 34.
    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    // IAPWS R14-08, equation (6).
    private static final double A1 = -0.212144006e2;
    private static final double B1 = 0.333333333e-2;
    private static final double A2 = 0.273203819e2;
    private static final double B2 = 0.120666667e1;
    private static final double A3 = -0.610598130e1;
    private static final double B3 = 0.170333333e1;

    static final double LOWEST_PRESSURE = liquid(LOWEST_LIQUID);
    private static final double CRITICAL_PRESSURE = liquid(CRITICAL_TEMPERATURE);

    private IapwsSaturation() {}

    /**
     * Saturation pressure over liquid water, the quadratic of region 4.
     *
     * <p>Source: IAPWS R7-97(2012), equation (30). Check value: 3536.58941 Pa at 300 K.
     *
     * @param temperature temperature, K, in [273.15, 647.096]
     * @return saturation pressure, Pa
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double liquidPressure(double temperature) {
        Range.require(
                "temperature of liquid water",
                temperature,
                LOWEST_LIQUID,
                CRITICAL_TEMPERATURE,
                "K");
        return liquid(temperature);
    }

    /**
     * Saturation temperature over liquid water, the exact inverse of {@link
     * #liquidPressure(double)}.
     *
     * <p>Source: IAPWS R7-97(2012), equation (31). Check value: 372.755919 K at 0.1 MPa.
     *
     * @param pressure vapor pressure, Pa, in [611.2127, 22.064e6]
     * @return saturation temperature, K
     * @throws IllegalArgumentException if pressure is NaN or outside that range
     */
    public static double liquidTemperature(double pressure) {
        Range.require("vapor pressure", pressure, LOWEST_PRESSURE, CRITICAL_PRESSURE, "Pa");
        double beta = Math.sqrt(Math.sqrt(pressure * 1e-6));
        double e = beta * (beta + N3) + N6;
        double f = beta * (N1 * beta + N4) + N7;
        double g = beta * (N2 * beta + N5) + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
    }

    /**
     * Sublimation pressure over ice.
     *
     * <p>Formula: ln(<var>p</var>/611.657 Pa) = (1/<var>&#952;</var>) &#931; a<sub>i</sub>
     * <var>&#952;</var><sup>b<sub>i</sub></sup>, <var>&#952;</var> = <var>T</var>/273.16 K. Source:
     * IAPWS R14-08(2011), equation (6). Check value: 8.94735 Pa at 230 K.
     *
     * @param temperature temperature, K, in [50, 273.16]
     * @return sublimation pressure, Pa
     * @throws IllegalArgumentException if temperature is NaN or outside that range
     */
    public static double icePressure(double temperature) {
        Range.require("temperature of ice", temperature, LOWEST_ICE, TRIPLE_TEMPERATURE, "K");
        return ice(temperature);
    }

    /** Sublimation pressure without a domain check. */
    static double ice(double temperature) {
        double theta = temperature / TRIPLE_TEMPERATURE;
        double log = Math.log(theta);
        double sum = A1 * Math.exp(B1 * log) + A2 * Math.exp(B2 * log) + A3 * Math.exp(B3 * log);
        return TRIPLE_PRESSURE * Math.exp(sum / theta);
    }

    /** Slope d(ln p)/dT of the sublimation pressure, 1/K. */
    static double iceLogSlope(double temperature) {
        double theta = temperature / TRIPLE_TEMPERATURE;
        double log = Math.log(theta);
        double sum =
                A1 * (B1 - 1) * Math.exp(B1 * log)
                        + A2 * (B2 - 1) * Math.exp(B2 * log)
                        + A3 * (B3 - 1) * Math.exp(B3 * log);
        return sum / (theta * temperature);
    }

    /** Region 4 without a domain check. */
    static double liquid(double temperature) {
        double theta = temperature + N9 / (temperature - N10);
        double a = theta * (theta + N1) + N2;
        double b = theta * (N3 * theta + N4) + N5;
        double c = theta * (N6 * theta + N7) + N8;
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        double square = root * root;
        return 1e6 * square * square;
    }
}
