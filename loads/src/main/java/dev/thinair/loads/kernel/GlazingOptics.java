package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * What glass does with sun at different angles.
 *
 * <p>Two ways: a table of the solar heat gain coefficient (SHGC) against incidence, read linearly,
 * as the handbook's window tables are; and the physics of clear or absorbing panes (Snell, Fresnel,
 * absorption along the slanted path, all internal reflections), which gives tables for plain glass
 * where none is published.
 *
 * <p>Sources: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 15 and chapter 18 (Table 13);
 * Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 5 (pane optics, from memory).
 */
public final class GlazingOptics {

    private static final double HALF_PI = Math.PI / 2;

    private GlazingOptics() {}

    /**
     * Value of an angular table at an angle of incidence, linear between entries.
     *
     * @param angles ascending angles of incidence, rad, first 0, last pi/2
     * @param values value at each angle
     * @param cosIncidence cosine of incidence; at or below 0 the result is 0
     * @return interpolated value
     */
    public static double atIncidence(double[] angles, double[] values, double cosIncidence) {
        if (cosIncidence <= 0) {
            return 0;
        }
        double angle = Math.acos(Math.min(1, cosIncidence));
        int i = 1;
        while (i < angles.length - 1 && angles[i] < angle) {
            i++;
        }
        double share = (angle - angles[i - 1]) / (angles[i] - angles[i - 1]);
        return values[i - 1] + share * (values[i] - values[i - 1]);
    }

    /**
     * Mean over a uniform hemisphere of an angular table: <code>integral of value(t) sin 2t dt from
     * 0 to pi/2</code>, exact for the piecewise linear table.
     *
     * <p>Accuracy: rounding; the published hemispherical values come from finer angular data and
     * differ by up to about 0.002.
     *
     * @param angles ascending angles of incidence, rad, first 0, last pi/2
     * @param values value at each angle
     * @return hemispherical mean
     * @throws IllegalArgumentException if the table is not a valid one
     */
    public static double hemispherical(double[] angles, double[] values) {
        requireTable(angles, values);
        double sum = 0;
        for (int i = 1; i < angles.length; i++) {
            double a = angles[i - 1];
            double b = angles[i];
            double slope = (values[i] - values[i - 1]) / (b - a);
            double level = values[i - 1] - slope * a;
            sum += level * (Math.cos(2 * a) - Math.cos(2 * b)) / 2;
            sum += slope * (moment(b) - moment(a));
        }
        return sum;
    }

    /** Antiderivative of t sin 2t. */
    private static double moment(double t) {
        return Math.sin(2 * t) / 4 - t * Math.cos(2 * t) / 2;
    }

    /**
     * Refuses a table that cannot be read.
     *
     * @param angles must ascend from 0 to pi/2, rad
     * @param values one for each angle, in [0, 1]
     * @throws IllegalArgumentException if the lengths differ, angles do not ascend from 0 to pi/2,
     *     or a value is NaN or outside [0, 1]
     */
    public static void requireTable(double[] angles, double[] values) {
        int n = angles.length;
        if (n < 2 || values.length != n) {
            throw new IllegalArgumentException(
                    "angular table has "
                            + n
                            + " angles and "
                            + values.length
                            + " values, but must have equal numbers, at least 2");
        }
        Range.require("first angle of the table", angles[0], 0, 0, "rad");
        Range.require(
                "last angle of the table", angles[n - 1], HALF_PI - 1e-12, HALF_PI + 1e-12, "rad");
        for (int i = 0; i < n; i++) {
            if (i > 0 && !(angles[i] > angles[i - 1])) {
                throw new IllegalArgumentException(
                        "angle "
                                + angles[i]
                                + " rad of the table follows "
                                + angles[i - 1]
                                + " rad, but angles must ascend");
            }
            Range.require("value of the angular table", values[i], 0, 1, "-");
        }
    }

    /**
     * Inward-flowing part of the absorbed sun: <code>N a = SHGC - T</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 15 (SHGC is transmitted plus inward-flowing absorbed).
     *
     * @param shgc solar heat gain coefficient, in [0, 1]
     * @param transmittance solar transmittance at the same angle, in [0, SHGC]
     * @return inward-flowing absorbed share
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double inwardAbsorbed(double shgc, double transmittance) {
        Range.require("solar heat gain coefficient", shgc, 0, 1, "-");
        Range.require("solar transmittance", transmittance, 0, shgc, "-");
        return shgc - transmittance;
    }

    /**
     * Interior attenuation of a shade that is partly closed: <code>IAC = 1 + F (IACcl - 1)</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (29).
     *
     * @param closed attenuation of the shade fully closed, in [0, 1]
     * @param fractionClosed F, in [0, 1]
     * @return IAC
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double interiorAttenuation(double closed, double fractionClosed) {
        Range.require("interior attenuation of the closed shade", closed, 0, 1, "-");
        Range.require("closed fraction of the shade", fractionClosed, 0, 1, "-");
        return 1 + fractionClosed * (closed - 1);
    }

    /**
     * Optics of one flat pane in air at an incidence: transmittance into {@code out[0]},
     * reflectance into {@code out[1]}, absorptance into {@code out[2]}; both polarisations
     * averaged, every internal reflection summed; the three add up to one.
     *
     * @param cosIncidence cosine of incidence, in [0, 1]
     * @param refractiveIndex n, in [1.0001, 4]; soda-lime glass 1.526
     * @param extinction extinction coefficient times thickness K L, in [0, 50]
     * @param out receives transmittance, reflectance, absorptance
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void pane(
            double cosIncidence, double refractiveIndex, double extinction, double[] out) {
        Range.require("cosine of incidence", cosIncidence, 0, 1, "-");
        Range.require("refractive index", refractiveIndex, 1.0001, 4, "-");
        Range.require("extinction times thickness", extinction, 0, 50, "-");
        double sine2 = (1 - cosIncidence * cosIncidence) / (refractiveIndex * refractiveIndex);
        double inside = Math.sqrt(1 - sine2);
        double path = Math.exp(-extinction / inside);
        double rs =
                (cosIncidence - refractiveIndex * inside)
                        / (cosIncidence + refractiveIndex * inside);
        double rp =
                (refractiveIndex * cosIncidence - inside)
                        / (refractiveIndex * cosIncidence + inside);
        double transmitted = 0;
        double reflected = 0;
        for (int k = 0; k < 2; k++) {
            double r = k == 0 ? rs * rs : rp * rp;
            double closing = 1 - r * r * path * path;
            // At grazing incidence without absorption both vanish: everything is reflected.
            double t = closing > 0 ? (1 - r) * (1 - r) * path / closing : 0;
            transmitted += t / 2;
            reflected += r * (1 + path * t) / 2;
        }
        out[0] = transmitted;
        out[1] = reflected;
        out[2] = Math.max(0, 1 - transmitted - reflected);
    }

    /**
     * Solar heat gain coefficient of one or two equal panes of glass at an incidence: what passes,
     * plus of what each pane absorbs the share that flows inward.
     *
     * <p>A stack of panes reflects to and fro; both polarisations are averaged pane by pane, which
     * costs about 0.01 near 70 degrees against tracing them apart. The inward-flowing share of a
     * pane is the resistance outward of it over the total.
     *
     * @param panes 1 or 2
     * @param cosIncidence cosine of incidence, in [0, 1]
     * @param refractiveIndex n of the glass, in [1.0001, 4]
     * @param extinction K L of one pane, in [0, 50]
     * @param outerShareInward inward-flowing share of the sun absorbed in the outer pane, in [0, 1]
     * @param innerShareInward the same of the inner pane, in [0, 1]; not used for one pane
     * @param scratch at least three places
     * @return SHGC
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double shgcOfPanes(
            int panes,
            double cosIncidence,
            double refractiveIndex,
            double extinction,
            double outerShareInward,
            double innerShareInward,
            double[] scratch) {
        Range.require("number of panes", panes, 1, 2, "-");
        Range.require("inward share of the outer pane", outerShareInward, 0, 1, "-");
        Range.require("inward share of the inner pane", innerShareInward, 0, 1, "-");
        pane(cosIncidence, refractiveIndex, extinction, scratch);
        double t = scratch[0];
        double r = scratch[1];
        double a = scratch[2];
        if (panes == 1) {
            return t + outerShareInward * a;
        }
        double closing = 1 - r * r;
        if (!(closing > 0)) {
            return 0;
        }
        double transmitted = t * t / closing;
        double outer = a + t * r * a / closing;
        double inner = t * a / closing;
        return transmitted + outerShareInward * outer + innerShareInward * inner;
    }

    /**
     * Beam sun entering through a window: <code>A Etb SHGC(theta) IAC</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 15 and ch. 18, Eq. (13).
     *
     * @param area whole window area, m2
     * @param beam beam irradiance on the window's plane, W/m2
     * @param sunlit sunlit share of the window
     * @param shgc SHGC at the incidence
     * @param attenuation interior attenuation for beam
     * @return W
     */
    public static double beamGain(
            double area, double beam, double sunlit, double shgc, double attenuation) {
        return area * beam * sunlit * shgc * attenuation;
    }

    /**
     * Diffuse sun entering through a window: <code>A (Etd + Etr) SHGCd IACd</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 15 and ch. 18, Eq. (14).
     *
     * @param area whole window area, m2
     * @param diffuse sky diffuse and ground-reflected irradiance on the plane, W/m2
     * @param shgc hemispherical SHGC
     * @param attenuation interior attenuation for diffuse
     * @return W
     */
    public static double diffuseGain(double area, double diffuse, double shgc, double attenuation) {
        return area * diffuse * shgc * attenuation;
    }
}
