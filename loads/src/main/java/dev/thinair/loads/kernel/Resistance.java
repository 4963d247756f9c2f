package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Steady resistances of building elements: surface films, air gaps, and assemblies bridged by
 * framing.
 *
 * <p>Directions of heat flow are coded 0 horizontal, 1 upward, 2 downward.
 *
 * <p>Source: ISO 6946:2017 (numbers of its tables and annexes recalled from memory where marked);
 * ASHRAE Handbook, Fundamentals, 2021 SI edition, chapter 27 for the parallel-path and
 * isothermal-planes methods.
 */
public final class Resistance {
    /** Heat flows horizontally. */
    public static final int HORIZONTAL = 0;

    /** Heat flows upward. */
    public static final int UPWARD = 1;

    /** Heat flows downward. */
    public static final int DOWNWARD = 2;

    private static final double STEFAN_BOLTZMANN = 5.670_374_419e-8; // W/(m2 K4), CODATA 2018

    private Resistance() {}

    /**
     * Inside surface resistance for design U-values: 0.13 horizontal, 0.10 upward, 0.17 downward
     * (ISO 6946:2017, table 7; from memory).
     *
     * @param flow direction code, 0 to 2
     * @return resistance, m2 K/W
     * @throws IllegalArgumentException if the code is unknown
     */
    public static double insideFilm(int flow) {
        switch (flow) {
            case HORIZONTAL:
                return 0.13;
            case UPWARD:
                return 0.10;
            case DOWNWARD:
                return 0.17;
            default:
                throw new IllegalArgumentException(
                        "heat flow direction is " + flow + ", but must be 0, 1 or 2");
        }
    }

    /**
     * Outside surface resistance for design U-values, m2 K/W (ISO 6946:2017, table 7; from memory).
     */
    public static final double OUTSIDE_FILM = 0.04;

    /**
     * Resistance of an unventilated air gap: {@code R = 1 / (ha + E hr0)} with {@code hr0 = 4 sigma
     * T^3}, {@code E = 1 / (1/e1 + 1/e2 - 1)} and the convective part <var>ha</var> the larger of
     * 0.025/d and 1.25 (horizontal), 1.95 (upward) or {@code 0.12 d^-0.44} (downward) W/(m2 K).
     *
     * <p>Source: ISO 6946:2017, annex D (temperature difference across the gap up to 5 K);
     * coefficients from memory, checked against that standard's table of gap resistances within its
     * rounding.
     *
     * @param thickness across the gap, m, in [1e-4, 0.3]
     * @param flow direction code, 0 to 2
     * @param emissivity1 of one side, in [0.01, 1]
     * @param emissivity2 of the other side, in [0.01, 1]
     * @param meanTemperature K, in [230, 350]
     * @return resistance, m2 K/W
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double airGap(
            double thickness,
            int flow,
            double emissivity1,
            double emissivity2,
            double meanTemperature) {
        Range.require("air gap thickness", thickness, 1e-4, 0.3, "m");
        Range.require("emissivity", emissivity1, 0.01, 1, "");
        Range.require("emissivity", emissivity2, 0.01, 1, "");
        Range.require("mean temperature of the air gap", meanTemperature, 230, 350, "K");
        double still = 0.025 / thickness;
        double moving;
        switch (flow) {
            case HORIZONTAL:
                moving = 1.25;
                break;
            case UPWARD:
                moving = 1.95;
                break;
            case DOWNWARD:
                moving = 0.12 * Math.pow(thickness, -0.44);
                break;
            default:
                throw new IllegalArgumentException(
                        "heat flow direction is " + flow + ", but must be 0, 1 or 2");
        }
        double between = 1 / (1 / emissivity1 + 1 / emissivity2 - 1);
        double radiative =
                4 * STEFAN_BOLTZMANN * meanTemperature * meanTemperature * meanTemperature;
        return 1 / (Math.max(still, moving) + between * radiative);
    }

    /**
     * Resistance of parallel paths: {@code 1/R = sum f_i / R_i} (upper limit of ISO 6946 when the
     * paths run from air to air).
     *
     * @param fractions area fractions, each above 0, summing to 1
     * @param resistances of the paths, m2 K/W, each above 0
     * @return resistance, m2 K/W
     * @throws IllegalArgumentException if lengths differ, a value is not above 0, or the fractions
     *     do not sum to 1 within 1e-6
     */
    public static double parallel(double[] fractions, double[] resistances) {
        if (fractions.length == 0 || fractions.length != resistances.length) {
            throw new IllegalArgumentException(
                    fractions.length
                            + " area fractions, but "
                            + resistances.length
                            + " resistances");
        }
        double sum = 0;
        double conductance = 0;
        for (int i = 0; i < fractions.length; i++) {
            Range.requireAbove("area fraction", fractions[i], 0, "");
            Range.requireAbove("path resistance", resistances[i], 0, "m2 K/W");
            sum += fractions[i];
            conductance += fractions[i] / resistances[i];
        }
        Range.require("sum of area fractions", sum, 1 - 1e-6, 1 + 1e-6, "");
        return 1 / conductance;
    }

    /**
     * Upper limit of the resistance of an element of two sections, by parallel paths from air to
     * air: <code>1 / (f / sum Ra + (1 - f) / sum Rb)</code>.
     *
     * @param fraction area fraction of section a, in (0, 1)
     * @param sectionA layers of section a, m2 K/W
     * @param sectionB layers of section b in the same order, m2 K/W
     * @return upper limit, m2 K/W
     * @throws IllegalArgumentException if the sections do not match or a value is not valid
     */
    public static double upperLimit(double fraction, double[] sectionA, double[] sectionB) {
        checkSections(fraction, sectionA, sectionB);
        double a = 0;
        double b = 0;
        for (int l = 0; l < sectionA.length; l++) {
            a += sectionA[l];
            b += sectionB[l];
        }
        return 1 / (fraction / a + (1 - fraction) / b);
    }

    /**
     * Lower limit of the resistance of an element of two sections: every plane between layers is
     * taken as isothermal, so each layer is averaged by itself (the isothermal-planes method),
     * <code>sum of 1 / (f / Ra + (1 - f) / Rb)</code>.
     *
     * @param fraction area fraction of section a, in (0, 1)
     * @param sectionA layers of section a, m2 K/W
     * @param sectionB layers of section b in the same order, m2 K/W
     * @return lower limit, m2 K/W
     * @throws IllegalArgumentException if the sections do not match or a value is not valid
     */
    public static double lowerLimit(double fraction, double[] sectionA, double[] sectionB) {
        checkSections(fraction, sectionA, sectionB);
        double sum = 0;
        for (int l = 0; l < sectionA.length; l++) {
            sum +=
                    sectionA[l] == sectionB[l]
                            ? sectionA[l]
                            : 1 / (fraction / sectionA[l] + (1 - fraction) / sectionB[l]);
        }
        return sum;
    }

    /**
     * Total resistance by the combined method of ISO 6946:2017, 6.7.2: the mean of both limits. Not
     * for insulation bridged by metal.
     *
     * @param fraction area fraction of section a, in (0, 1)
     * @param sectionA layers of section a, films included, m2 K/W
     * @param sectionB layers of section b in the same order, m2 K/W
     * @return resistance, m2 K/W
     * @throws IllegalArgumentException if the sections do not match, a value is not valid, or the
     *     ratio of the limits is above 1.5, where the standard no longer allows the method
     */
    public static double combined(double fraction, double[] sectionA, double[] sectionB) {
        double upper = upperLimit(fraction, sectionA, sectionB);
        double lower = lowerLimit(fraction, sectionA, sectionB);
        Range.require("ratio of upper to lower limit of the resistance", upper / lower, 0, 1.5, "");
        return 0.5 * (upper + lower);
    }

    /**
     * U-value of a rectangular area with tapered insulation: {@code U = ln(1 + R2/R0) / R2} (ISO
     * 6946:2017, annex E).
     *
     * @param rest resistance R0 of everything but the taper, m2 K/W, above 0
     * @param taper resistance R2 of the taper at its thickest, m2 K/W, above 0
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if a value is not above 0
     */
    public static double taperedTransmittance(double rest, double taper) {
        Range.requireAbove("resistance without the taper", rest, 0, "m2 K/W");
        Range.requireAbove("resistance of the taper", taper, 0, "m2 K/W");
        return Math.log1p(taper / rest) / taper;
    }

    private static void checkSections(double fraction, double[] a, double[] b) {
        if (!(fraction > 0 && fraction < 1)) {
            throw new IllegalArgumentException(
                    "area fraction is " + fraction + ", but must lie between 0 and 1");
        }
        if (a.length == 0 || a.length != b.length) {
            throw new IllegalArgumentException(
                    "sections have " + a.length + " and " + b.length + " layers, but must match");
        }
        for (int l = 0; l < a.length; l++) {
            Range.requireAbove("layer resistance", a[l], 0, "m2 K/W");
            Range.requireAbove("layer resistance", b[l], 0, "m2 K/W");
        }
    }
}
