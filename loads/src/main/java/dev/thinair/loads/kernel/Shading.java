package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Beam shadows on a rectangular window: overhang, side fins, a distant horizon.
 *
 * <p>The sun is split along the plane's own axes: along its outward normal, sideways and up the
 * plane. A projection of depth P perpendicular to the plane then throws its shadow P times the
 * ratio of two of them. For a wall this is the handbook's profile angle, <code>tan(profile) = tan b
 * /cos g</code>, and its shadow height and width; written this way it also holds for leaning
 * planes.
 *
 * <p>Only beam is shaded; sky and ground diffuse stay as they are, which is the handbook's
 * simplification and errs on the high side.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 15, equations (32) to (36); finite
 * overhangs by plane geometry.
 */
public final class Shading {

    private Shading() {}

    /**
     * Profile angle of the sun on a wall: <code>atan(tan b/cos g)</code>; between 0 and pi/2 while
     * the sun is in front of the wall, beyond pi/2 when it is behind.
     *
     * @param altitude solar altitude b, rad, in [-pi/2, pi/2]
     * @param relativeAzimuth azimuth of the sun relative to the wall g, rad, in [-100, 100]
     * @return profile angle, rad, in (-pi, pi]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double profileAngle(double altitude, double relativeAzimuth) {
        Range.require("solar altitude", altitude, -Math.PI / 2, Math.PI / 2, "rad");
        Range.require("relative azimuth", relativeAzimuth, -100, 100, "rad");
        return Math.atan2(Math.sin(altitude), Math.cos(altitude) * Math.cos(relativeAzimuth));
    }

    /**
     * Height of the shadow below a very wide overhang on a wall: <code>P tan(profile)</code>; zero
     * when the sun is not in front of the wall.
     *
     * @param depth projection P, m, in [0, 100]
     * @param altitude solar altitude, rad, in [-pi/2, pi/2]
     * @param relativeAzimuth azimuth of the sun relative to the wall, rad, in [-100, 100]
     * @return shadow height, m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double shadowHeight(double depth, double altitude, double relativeAzimuth) {
        Range.require("overhang depth", depth, 0, 100, "m");
        double profile = profileAngle(altitude, relativeAzimuth);
        if (profile <= 0 || profile >= Math.PI / 2) {
            return 0;
        }
        return depth * Math.tan(profile);
    }

    /**
     * Share of a rectangular window that beam reaches past an overhang and two fins.
     *
     * <p>The overhang stands {@code overhangGap} above the window's top edge and reaches {@code
     * overhangExtension} beyond it on both sides (infinite for the handbook's case). Each fin
     * stands {@code finGap} beside the window and is taken as tall as its shadow needs. Shadows are
     * joined exactly: the strip the fin shades is not counted twice.
     *
     * @param width window width, m, above 0
     * @param height window height (along the plane), m, above 0
     * @param overhangDepth projection of the overhang, m, 0 for none
     * @param overhangGap distance from window top to overhang, m, at least 0
     * @param overhangExtension reach of the overhang beyond each side, m, at least 0, may be
     *     infinite
     * @param leftDepth projection of the fin on the left as seen from outside, m, 0 for none
     * @param leftGap distance of that fin from the window, m, at least 0
     * @param rightDepth projection of the fin on the right as seen from outside, m, 0 for none
     * @param rightGap distance of that fin from the window, m, at least 0
     * @param altitude solar altitude, rad
     * @param sunAzimuth azimuth of the sun, rad from north
     * @param tilt tilt of the window, rad
     * @param azimuth azimuth of the window, rad from north
     * @return sunlit share, in [0, 1]; 0 when the sun is behind the plane or down
     */
    public static double sunlitShare(
            double width,
            double height,
            double overhangDepth,
            double overhangGap,
            double overhangExtension,
            double leftDepth,
            double leftGap,
            double rightDepth,
            double rightGap,
            double altitude,
            double sunAzimuth,
            double tilt,
            double azimuth) {
        double relative = sunAzimuth - azimuth;
        double horizontal = Math.cos(altitude) * Math.cos(relative);
        double normal = horizontal * Math.sin(tilt) + Math.sin(altitude) * Math.cos(tilt);
        if (altitude <= 0 || normal <= 0) {
            return 0;
        }
        // Seen from outside, a sun clockwise of the normal stands on the left hand side.
        double left = Math.cos(altitude) * Math.sin(relative) / normal;
        double up = (Math.sin(altitude) * Math.sin(tilt) - horizontal * Math.cos(tilt)) / normal;

        // The fin on the sun's side shades a strip beginning at that edge.
        double fin =
                left > 0
                        ? Math.min(width, Math.max(0, leftDepth * left - leftGap))
                        : Math.min(width, Math.max(0, -rightDepth * left - rightGap));
        double open = width - fin;
        if (open <= 0) {
            return 0;
        }
        double lit = open * height;
        if (overhangDepth > 0 && up > 0) {
            // Distance from the sunward edge of the window; symmetric extension makes one case.
            lit -=
                    overhangShadow(
                            fin,
                            width,
                            height,
                            overhangDepth * Math.abs(left),
                            overhangDepth * up,
                            overhangGap,
                            overhangExtension);
        }
        return Math.max(0, Math.min(1, lit / (width * height)));
    }

    /**
     * Area shaded by the overhang between x = from and x = width, x counted from the sunward edge.
     * The shadow of an overhang is the parallelogram swept from its root line, shifted away from
     * the sun by shift and down by drop; its lower edge at x is the front edge's shadow where that
     * reaches, and the slanted edge near the sunward end.
     */
    private static double overhangShadow(
            double from,
            double width,
            double height,
            double shift,
            double drop,
            double gap,
            double extension) {
        double start = -extension;
        double end = width + extension;
        double full = Math.min(height, Math.max(0, drop - gap));
        if (full == 0) {
            return 0;
        }
        // Sunward slanted edge: depth grows from 0 at start to drop at start + shift.
        // Far slanted edge: the root ends at end; beyond it nothing inside the window.
        double upper = Math.min(width, end);
        double corner = start + shift;
        double area = 0;
        double rampEnd = Math.min(upper, Math.max(from, corner));
        if (shift > 0 && rampEnd > from) {
            area += rampArea(from, rampEnd, start, drop / shift, gap, height);
        }
        if (upper > rampEnd) {
            area += (upper - rampEnd) * full;
        }
        return area;
    }

    /** Integral of clamp(slope (x - start) - gap, 0, height) over [a, b]. */
    private static double rampArea(
            double a, double b, double start, double slope, double gap, double height) {
        double zeroAt = start + gap / slope;
        double fullAt = start + (gap + height) / slope;
        double lo = Math.max(a, Math.min(b, zeroAt));
        double hi = Math.max(a, Math.min(b, fullAt));
        double atLo = Math.max(0, slope * (lo - start) - gap);
        double atHi = Math.min(height, Math.max(0, slope * (hi - start) - gap));
        return (hi - lo) * (atLo + atHi) / 2 + (b - hi) * height;
    }

    /**
     * Height of a distant skyline in a direction, linear between the given azimuths and closed
     * round the circle.
     *
     * @param azimuths directions, rad from north, ascending, in [0, 2 pi)
     * @param altitudes skyline altitude in each direction, rad
     * @param azimuth direction asked for, rad, in [0, 2 pi)
     * @return altitude of the skyline, rad; 0 without any point
     */
    public static double horizonAltitude(double[] azimuths, double[] altitudes, double azimuth) {
        int n = azimuths.length;
        if (n == 0) {
            return 0;
        }
        if (n == 1) {
            return altitudes[0];
        }
        int after = 0;
        while (after < n && azimuths[after] <= azimuth) {
            after++;
        }
        int right = after % n;
        int leftIndex = (after + n - 1) % n;
        double span = azimuths[right] - azimuths[leftIndex];
        double offset = azimuth - azimuths[leftIndex];
        if (span <= 0) {
            span += 2 * Math.PI;
        }
        if (offset < 0) {
            offset += 2 * Math.PI;
        }
        double share = offset / span;
        return altitudes[leftIndex] + share * (altitudes[right] - altitudes[leftIndex]);
    }
}
