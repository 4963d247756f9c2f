package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Darcy friction factors of ducts, and the friction loss they cause.
 *
 * <p>Every factor here is the Darcy (Moody) factor, four times the Fanning factor. The library's
 * own method is Colebrook-White solved to rounding error; the explicit approximations stand beside
 * it under their authors' names, for comparison and for class.
 */
public final class Friction {

    /** Reynolds number below which flow is taken as laminar. Textbook value (from memory). */
    public static final double LAMINAR_LIMIT = 2_300;

    /**
     * Reynolds number above which flow is taken as fully turbulent. Textbook value (from memory).
     */
    public static final double TURBULENT_LIMIT = 4_000;

    /** 2 / ln 10: turns natural logarithms into the -2 log10 of Colebrook-White. */
    private static final double K = 0.868588963806503655;

    /** A binary logarithm is about the bits of its argument, divided by this, less the bias. */
    private static final double PER_BIT = 1.0 / (1L << 52);

    private static final int BIAS = 1023;

    /** Line through 1/sqrt(f) of smooth ducts over the binary logarithm of the Reynolds number. */
    private static final double SMOOTH_SLOPE = 0.5606 * PER_BIT;

    private static final double SMOOTH_AT = -1.0615 - 0.5606 * BIAS;

    /** The same for -K ln s over the binary logarithm of s: K ln 2 = 2 log10 2, and an offset. */
    private static final double LOG_SLOPE = 0.602059991327962390 * PER_BIT;

    private static final double LOG_AT = 0.602059991327962390 * (BIAS + 0.125);

    private static final double LN_LAMINAR_LIMIT = Math.log(LAMINAR_LIMIT);
    private static final double TRANSITION_WIDTH = Math.log(TURBULENT_LIMIT / LAMINAR_LIMIT);
    private static final double LN_LAMINAR_FACTOR = Math.log(64 / LAMINAR_LIMIT);

    private Friction() {}

    /**
     * Friction factor of turbulent flow by Colebrook-White.
     *
     * <p>Formula: {@code 1/sqrt(f) = -2 log10( (eps/D)/3.7 + 2.51/(Re sqrt(f)) )}, solved for f
     * with one exact logarithm.
     *
     * <p>Accuracy: below 1e-15 relative. The formula itself describes measured ducts to a few per
     * cent, and below Re 4,000 it is only arithmetic.
     *
     * <p>Source: Colebrook (1939), J. Inst. Civ. Eng. 11, 133-156; ASHRAE Handbook - Fundamentals,
     * chapter Duct Design.
     *
     * @param reynolds Reynolds number, in [2300, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double colebrookWhite(double reynolds, double relativeRoughness) {
        requireTurbulent(reynolds, relativeRoughness);
        double x = inverseRoot(reynolds, relativeRoughness);
        return 1 / (x * x);
    }

    /**
     * Friction factor of laminar flow in a round duct.
     *
     * <p>Formula: {@code f = 64 / Re} (Hagen-Poiseuille). In rectangular ducts f Re runs from 57 to
     * 96 with the aspect ratio (from memory); air ducts are laminar only near standstill.
     *
     * @param reynolds Reynolds number, above 0 and up to 4000
     * @return Darcy friction factor
     * @throws IllegalArgumentException if the Reynolds number is NaN or outside its range
     */
    public static double laminar(double reynolds) {
        Range.requireAbove("Reynolds number", reynolds, 0, "");
        Range.require("Reynolds number of laminar flow", reynolds, 0, TURBULENT_LIMIT, "");
        return 64 / reynolds;
    }

    /**
     * Friction factor at any Reynolds number: laminar to 2,300, Colebrook-White from 4,000, and
     * between them the cubic in (ln Re, ln f) that meets both in value and in slope.
     *
     * <p>The bridge is a numerical convention without a source: real transitional flow is not
     * steady. It has no jump, and the friction loss rises with the flow all along it, so a network
     * solution stays unique.
     *
     * @param reynolds Reynolds number, above 0 and up to 1e8
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double darcy(double reynolds, double relativeRoughness) {
        Range.requireAbove("Reynolds number", reynolds, 0, "");
        Range.require("Reynolds number", reynolds, 0, 1e8, "");
        requireRoughness(relativeRoughness);
        return factor(reynolds, relativeRoughness);
    }

    /**
     * Friction factor by Churchill's single equation for laminar, transitional and turbulent flow.
     *
     * <p>Formula: {@code f = 8 [ (8/Re)^12 + (A + B)^(-3/2) ]^(1/12)} with {@code A = [ -2.457 ln(
     * (7/Re)^0.9 + 0.27 eps/D ) ]^16} and {@code B = (37530/Re)^16}.
     *
     * <p>Accuracy: up to 3.2 % from Colebrook-White over Re 4,000 to 1e8, eps/D to 0.05.
     *
     * <p>Source: Churchill (1977), Chem. Eng. 84(24), 91-92.
     *
     * @param reynolds Reynolds number, in [1, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double churchill(double reynolds, double relativeRoughness) {
        Range.require("Reynolds number", reynolds, 1, 1e8, "");
        requireRoughness(relativeRoughness);
        double a = -2.457 * Math.log(Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness);
        double b = 37_530 / reynolds;
        double sum = power16(a) + power16(b);
        double laminar = 8 / reynolds;
        return 8 * Math.pow(Math.pow(laminar, 12) + 1 / (sum * Math.sqrt(sum)), 1.0 / 12);
    }

    /**
     * Friction factor by Haaland's explicit approximation.
     *
     * <p>Formula: {@code 1/sqrt(f) = -1.8 log10[ (eps/D/3.7)^1.11 + 6.9/Re ]}.
     *
     * <p>Accuracy: up to 1.4 % from Colebrook-White over Re 4,000 to 1e8, eps/D to 0.05.
     *
     * <p>Source: Haaland (1983), J. Fluids Eng. 105, 89-90.
     *
     * @param reynolds Reynolds number, in [2300, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double haaland(double reynolds, double relativeRoughness) {
        requireTurbulent(reynolds, relativeRoughness);
        double x = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (x * x);
    }

    /**
     * Friction factor by the explicit approximation of Swamee and Jain.
     *
     * <p>Formula: {@code f = 0.25 / log10( eps/D/3.7 + 5.74/Re^0.9 )^2}.
     *
     * <p>Accuracy: up to 3.4 % from Colebrook-White over Re 4,000 to 1e8, eps/D to 0.05.
     *
     * <p>Source: Swamee and Jain (1976), J. Hydraul. Div. ASCE 102, 657-664.
     *
     * @param reynolds Reynolds number, in [2300, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double swameeJain(double reynolds, double relativeRoughness) {
        requireTurbulent(reynolds, relativeRoughness);
        double x = Math.log10(relativeRoughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return 0.25 / (x * x);
    }

    /**
     * Friction factor by the Altshul-Tsal approximation that older duct-design chapters give.
     *
     * <p>Formula: {@code f' = 0.11 (eps/D + 68/Re)^0.25}; {@code f = f'} where f' is at least
     * 0.018, else {@code f = 0.85 f' + 0.0028}.
     *
     * <p>Accuracy: up to 9 % from Colebrook-White over Re 4,000 to 1e8 for eps/D to 0.01, and up to
     * 27 % at eps/D = 0.05.
     *
     * <p>Source: Tsal (1989) after Altshul, as given in ASHRAE Handbook - Fundamentals, chapter
     * Duct Design (from memory).
     *
     * @param reynolds Reynolds number, in [2300, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double altshulTsal(double reynolds, double relativeRoughness) {
        requireTurbulent(reynolds, relativeRoughness);
        double f = 0.11 * Math.sqrt(Math.sqrt(relativeRoughness + 68 / reynolds));
        return f >= 0.018 ? f : 0.85 * f + 0.0028;
    }

    /**
     * Friction factor by the explicit approximation of Serghides: three fixed-point values of
     * Colebrook-White, accelerated by Steffensen's rule.
     *
     * <p>Formula: {@code A = -2 log10(eps/D/3.7 + 12/Re)}, {@code B = -2 log10(eps/D/3.7 + 2.51
     * A/Re)}, {@code C = -2 log10(eps/D/3.7 + 2.51 B/Re)}, {@code 1/sqrt(f) = A - (B - A)^2/(C - 2B
     * + A)}.
     *
     * <p>Accuracy: up to 0.0032 % from Colebrook-White over Re 4,000 to 1e8, eps/D to 0.05.
     *
     * <p>Source: Serghides (1984), Chem. Eng. 91(5), 63-64 (from memory).
     *
     * @param reynolds Reynolds number, in [2300, 1e8]
     * @param relativeRoughness absolute roughness over hydraulic diameter, in [0, 0.05]
     * @return Darcy friction factor
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double serghides(double reynolds, double relativeRoughness) {
        requireTurbulent(reynolds, relativeRoughness);
        double r = relativeRoughness / 3.7;
        double a = -2 * Math.log10(r + 12 / reynolds);
        double b = -2 * Math.log10(r + 2.51 * a / reynolds);
        double c = -2 * Math.log10(r + 2.51 * b / reynolds);
        double bend = c - 2 * b + a;
        // On very rough walls the three values agree to the last digit and the acceleration is 0/0.
        double x = bend == 0 ? c : a - (b - a) * (b - a) / bend;
        return 1 / (x * x);
    }

    /**
     * Reynolds number of flow in a duct.
     *
     * <p>Formula: {@code Re = rho V D_h / mu}.
     *
     * @param velocity mean velocity, m/s, at least 0
     * @param hydraulicDiameter hydraulic diameter, m, above 0
     * @param density air density, kg/m3, above 0
     * @param viscosity dynamic viscosity, Pa s, above 0
     * @return Reynolds number
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double reynolds(
            double velocity, double hydraulicDiameter, double density, double viscosity) {
        Range.require("velocity", velocity, 0, 1e4, "m/s");
        requireDiameter(hydraulicDiameter);
        requireAir(density, viscosity);
        return density * velocity * hydraulicDiameter / viscosity;
    }

    /**
     * Friction loss per length of duct.
     *
     * <p>Formula: {@code dp/L = f/D_h rho V^2/2} (Darcy-Weisbach) with f from {@link #darcy}; zero
     * at zero velocity.
     *
     * @param velocity mean velocity, m/s, in [0, 100]
     * @param hydraulicDiameter hydraulic diameter, m, above 0
     * @param roughness absolute roughness, m, at least 0 and at most 5 % of the hydraulic diameter
     * @param density air density, kg/m3, above 0
     * @param viscosity dynamic viscosity, Pa s, above 0
     * @return friction loss, Pa/m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double lossPerLength(
            double velocity,
            double hydraulicDiameter,
            double roughness,
            double density,
            double viscosity) {
        Range.require("velocity", velocity, 0, 100, "m/s");
        requireDiameter(hydraulicDiameter);
        requireAir(density, viscosity);
        double relative = roughness / hydraulicDiameter;
        requireRoughness(relative);
        double re = density * velocity * hydraulicDiameter / viscosity;
        if (re == 0) {
            return 0;
        }
        return factor(re, relative) / hydraulicDiameter * density * velocity * velocity / 2;
    }

    /** Friction factor at any positive Reynolds number, arguments not checked. */
    static double factor(double re, double relative) {
        if (re >= TURBULENT_LIMIT) {
            double x = inverseRoot(re, relative);
            return 1 / (x * x);
        }
        if (re <= LAMINAR_LIMIT) {
            return 64 / re;
        }
        double x = inverseRoot(TURBULENT_LIMIT, relative);
        return Math.exp(bridge(transition(re), transitionEnd(x), endSlope(x, relative)));
    }

    /** d ln f / d ln Re at any positive Reynolds number, where f is already known. */
    static double slope(double re, double relative, double f) {
        if (re >= TURBULENT_LIMIT) {
            return turbulentSlope(1 / Math.sqrt(f), re, relative);
        }
        if (re <= LAMINAR_LIMIT) {
            return -1;
        }
        double x = inverseRoot(TURBULENT_LIMIT, relative);
        return bridgeSlope(transition(re), transitionEnd(x), endSlope(x, relative));
    }

    /**
     * Implicit derivative of Colebrook-White: no logarithm is needed once x = 1/sqrt(f) is known.
     */
    private static double turbulentSlope(double x, double re, double relative) {
        double b = 2.51 / re;
        double s = relative * (1 / 3.7) + b * x;
        return -2 * K * b / (s + K * b);
    }

    /** Place between laminar and turbulent flow, 0 to 1 on the logarithm of the Reynolds number. */
    static double transition(double re) {
        return (Math.log(re) - LN_LAMINAR_LIMIT) / TRANSITION_WIDTH;
    }

    /** ln f where turbulent flow begins, from 1/sqrt(f) there. */
    static double transitionEnd(double x) {
        return -2 * Math.log(x);
    }

    /** d ln f / d ln Re where turbulent flow begins, from 1/sqrt(f) there. */
    static double endSlope(double x, double relative) {
        return turbulentSlope(x, TURBULENT_LIMIT, relative);
    }

    /** ln f at a place in the transition: the cubic that leaves both ends smoothly. */
    static double bridge(double t, double end, double slopeEnd) {
        double start = LN_LAMINAR_FACTOR;
        double m0 = -TRANSITION_WIDTH;
        double m1 = slopeEnd * TRANSITION_WIDTH;
        double t2 = t * t;
        double t3 = t2 * t;
        return (2 * t3 - 3 * t2 + 1) * start
                + (t3 - 2 * t2 + t) * m0
                + (3 * t2 - 2 * t3) * end
                + (t3 - t2) * m1;
    }

    /** d ln f / d ln Re at a place in the transition. */
    static double bridgeSlope(double t, double end, double slopeEnd) {
        double start = LN_LAMINAR_FACTOR;
        double m0 = -TRANSITION_WIDTH;
        double m1 = slopeEnd * TRANSITION_WIDTH;
        double t2 = t * t;
        return ((6 * t2 - 6 * t) * (start - end)
                        + (3 * t2 - 4 * t + 1) * m0
                        + (3 * t2 - 2 * t) * m1)
                / TRANSITION_WIDTH;
    }

    /**
     * 1/sqrt(f) of Colebrook-White, arguments not checked.
     *
     * <p>With s = a + b x the equation is {@code F(x) = x + K ln s = 0}. Two straight lines through
     * the bits of floating-point numbers (their exponent, and linear their mantissa) stand in for
     * logarithms and start x within 0.13. From there the equation is one in d, {@code F + d + K
     * ln(1 + c d) = 0} with c = b/s, which with {@code v = -c F/(1 + K c)} and {@code g = K c/(1 +
     * K c)} reads {@code u = v + g (u - ln(1 + u))} for u = c d; Lagrange's inversion gives u as a
     * power series in v whose coefficients are polynomials in g. Since |v| stays below 0.006 and g
     * below 0.16, six terms end below 1e-17, and one exact logarithm is all that is needed. The
     * last two coefficients are fitted over that range of g. Sums go in pairs, because a long chain
     * of operations costs more than the operations do.
     */
    static double inverseRoot(double re, double relative) {
        double a = relative * (1 / 3.7);
        double b = 2.51 / re;
        double p = K * b;
        double x = SMOOTH_AT + SMOOTH_SLOPE * Double.doubleToRawLongBits(re);
        x = LOG_AT - LOG_SLOPE * Double.doubleToRawLongBits(a + b * x);
        double s = a + b * x;
        double r = 1 / (s + p);
        double g = p * r;
        double c2 = 0.5 * g;
        double c3 = g * (0.5 * g - 1.0 / 3);
        double c4 = g * (0.25 + g * (0.625 * g - 5.0 / 6));
        double c5 = g * (-0.19937735 + g * (1.05976912 - 1.48989388 * g));
        double f = x + K * Math.log(s);
        double v = -f * (b * r);
        double v2 = v * v;
        double series = (1 + c2 * v) + v2 * ((c3 + c4 * v) + v2 * (c5 + 0.0573 * (g * v)));
        return x - f * (s * r) * series;
    }

    private static double power16(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        return x8 * x8;
    }

    private static void requireTurbulent(double reynolds, double relativeRoughness) {
        Range.require("Reynolds number", reynolds, LAMINAR_LIMIT, 1e8, "");
        requireRoughness(relativeRoughness);
    }

    private static void requireRoughness(double relativeRoughness) {
        Range.require("relative roughness", relativeRoughness, 0, 0.05, "");
    }

    static void requireDiameter(double diameter) {
        Range.require("duct diameter", diameter, 1e-3, 20, "m");
    }

    static void requireAir(double density, double viscosity) {
        Range.require("air density", density, 0.1, 10, "kg/m3");
        Range.require("dynamic viscosity", viscosity, 1e-6, 1e-4, "Pa s");
    }
}
