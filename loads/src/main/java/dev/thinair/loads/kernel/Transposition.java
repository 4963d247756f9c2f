package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * From the sun and the horizontal to a plane of any tilt and azimuth.
 *
 * <p>Angles in radians. Tilt is counted from the horizontal: 0 faces the sky, pi/2 is a wall, pi
 * faces the ground. Azimuths from north, clockwise. Diffuse irradiance means diffuse irradiance on
 * the horizontal; treating it as normal, or a wall's view of it as one half, is a known slip: the
 * handbook's ratio Y for a wall runs from 0.45 to 1.3.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 14, equations (24) to (31).
 */
public final class Transposition {

    private Transposition() {}

    /**
     * Cosine of the angle of incidence: <code>cos b cos g sin S + sin b cos S</code>, g the azimuth
     * of the sun relative to the plane. Negative when the sun stands behind the plane.
     *
     * @param altitude solar altitude b, rad
     * @param sunAzimuth rad from north
     * @param tilt S, rad
     * @param azimuth azimuth of the plane's outward normal, rad from north
     * @return cosine of incidence, in [-1, 1]
     */
    public static double cosIncidence(
            double altitude, double sunAzimuth, double tilt, double azimuth) {
        double cosine =
                Math.cos(altitude) * Math.cos(sunAzimuth - azimuth) * Math.sin(tilt)
                        + Math.sin(altitude) * Math.cos(tilt);
        // Rounding may carry the sum of products past one, where an arc cosine would be NaN.
        return Math.max(-1, Math.min(1, cosine));
    }

    /**
     * Beam irradiance on a plane: <code>Eb cos(theta)</code>, zero when the sun is behind it.
     *
     * @param beamNormal Eb, W/m2
     * @param cosIncidence cosine of incidence
     * @return W/m2
     */
    public static double beam(double beamNormal, double cosIncidence) {
        return cosIncidence > 0 ? beamNormal * cosIncidence : 0;
    }

    /**
     * Ratio Y of sky diffuse irradiance on a <b>vertical</b> plane to that on the horizontal:
     * <code>max(0.45, 0.55 + 0.437 cos(theta) + 0.313 cos(theta)^2)</code>.
     *
     * @param cosIncidenceOnVertical cosine of incidence on the vertical plane of the same azimuth
     * @return Y
     */
    public static double ratioY(double cosIncidenceOnVertical) {
        double c = cosIncidenceOnVertical;
        return Math.max(0.45, 0.55 + 0.437 * c + 0.313 * c * c);
    }

    /**
     * Sky diffuse irradiance on a plane: <code>Ed (Y sin S + cos S)</code> up to the vertical,
     * <code>Ed Y sin S</code> beyond; Y is that of the vertical plane of the same azimuth.
     *
     * @param diffuseHorizontal Ed, W/m2
     * @param ratioY Y as from {@link #ratioY}
     * @param tilt S, rad, in [0, pi]
     * @return W/m2
     */
    public static double skyDiffuse(double diffuseHorizontal, double ratioY, double tilt) {
        double toward = ratioY * Math.sin(tilt);
        return diffuseHorizontal
                * (tilt <= Math.PI / 2 ? toward + Math.max(0, Math.cos(tilt)) : toward);
    }

    /**
     * Irradiance reflected from level ground: <code>(Eb sin b + Ed) rho (1 - cos S)/2</code>.
     *
     * @param beamNormal Eb, W/m2
     * @param altitude solar altitude b, rad
     * @param diffuseHorizontal Ed, W/m2
     * @param reflectance ground reflectance rho
     * @param tilt S, rad
     * @return W/m2
     */
    public static double groundReflected(
            double beamNormal,
            double altitude,
            double diffuseHorizontal,
            double reflectance,
            double tilt) {
        double horizontal = beamNormal * Math.max(0, Math.sin(altitude)) + diffuseHorizontal;
        return horizontal * reflectance * (1 - Math.cos(tilt)) / 2;
    }

    /**
     * Total irradiance on an unshaded plane: beam, sky diffuse and ground reflection.
     *
     * @param beamNormal Eb, W/m2, in [0, 1500]
     * @param diffuseHorizontal Ed, W/m2, in [0, 1500]
     * @param altitude solar altitude, rad, in [-pi/2, pi/2]
     * @param sunAzimuth rad from north, finite
     * @param tilt rad, in [0, pi]
     * @param azimuth azimuth of the plane, rad from north, finite
     * @param reflectance ground reflectance, in [0, 1]
     * @return W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double total(
            double beamNormal,
            double diffuseHorizontal,
            double altitude,
            double sunAzimuth,
            double tilt,
            double azimuth,
            double reflectance) {
        Range.require("beam normal irradiance", beamNormal, 0, 1_500, "W/m2");
        Range.require("diffuse horizontal irradiance", diffuseHorizontal, 0, 1_500, "W/m2");
        Range.require("solar altitude", altitude, -Math.PI / 2, Math.PI / 2, "rad");
        Range.require("sun azimuth", sunAzimuth, -100, 100, "rad");
        requirePlane(tilt, azimuth);
        Range.require("ground reflectance", reflectance, 0, 1, "-");
        double onPlane = cosIncidence(altitude, sunAzimuth, tilt, azimuth);
        double onVertical = Math.cos(altitude) * Math.cos(sunAzimuth - azimuth);
        double beam = altitude > 0 ? beam(beamNormal, onPlane) : 0;
        return beam
                + skyDiffuse(diffuseHorizontal, ratioY(onVertical), tilt)
                + groundReflected(beamNormal, altitude, diffuseHorizontal, reflectance, tilt);
    }

    /**
     * Refuses a plane whose tilt or azimuth cannot be.
     *
     * @param tilt rad, in [0, pi]
     * @param azimuth rad from north, in [-100, 100] (several turns are harmless, nonsense is not)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void requirePlane(double tilt, double azimuth) {
        Range.require("tilt", tilt, 0, Math.PI, "rad");
        Range.require("azimuth", azimuth, -100, 100, "rad");
    }
}
