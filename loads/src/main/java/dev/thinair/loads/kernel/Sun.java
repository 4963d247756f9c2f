package dev.thinair.loads.kernel;

import dev.thinair.units.Range;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;

/**
 * Where the sun stands, and how strong it is above the air.
 *
 * <p>Conventions of the whole library: angles in radians; latitude north positive, longitude east
 * positive; azimuth from <b>north, clockwise</b> (east pi/2, south pi, west 3 pi/2) in [0, 2 pi);
 * altitude above the horizon positive; hour angle zero at solar noon, positive in the afternoon.
 * The handbook counts azimuth from south, west positive: {@link #fromSouth} and {@link #fromNorth}
 * convert. Azimuth always comes from a two-argument arc tangent, so that a morning sun north of
 * east keeps its place.
 *
 * <p>Two sets are offered. The textbook set (day number to declination, equation of time and
 * extraterrestrial irradiance) is good to a few tenths of a degree and reproduces the handbook's
 * worked examples; {@link #ephemeris} uses the NREL solar position algorithm (0.0003 degrees) and
 * {@link #quickEphemeris} the third algorithm of Grena (0.01 degrees, years 2010 to 2110), both
 * from the solarpositioning library.
 *
 * <p>Sources: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 14, equations (4) to (14) and (22);
 * Reda and Andreas, NREL/TP-560-34302 (revised 2008); Grena, Solar Energy 86 (2012) 1323.
 */
public final class Sun {

    /** Solar constant of the handbook's clear-sky model, W/m2 (Fundamentals 2021, ch. 14). */
    public static final double SOLAR_CONSTANT = 1367;

    private static final double TWO_PI = 2 * Math.PI;
    private static final double DEGREE = Math.PI / 180;
    private static final double DAY = 86_400;

    private Sun() {}

    /**
     * Irradiance on a plane facing the sun above the air: <code>Eo = 1367 (1 + 0.033 cos(2 pi (n -
     * 3)/365))</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (4). Accuracy: within 0.3 percent of an
     * ephemeris distance.
     *
     * @param dayOfYear n, 1 on the first of January, in [1, 366]
     * @return extraterrestrial normal irradiance, W/m2
     * @throws IllegalArgumentException if dayOfYear is NaN or outside its range
     */
    public static double extraterrestrialNormal(double dayOfYear) {
        requireDay(dayOfYear);
        return SOLAR_CONSTANT * (1 + 0.033 * Math.cos(TWO_PI * (dayOfYear - 3) / 365));
    }

    /**
     * Equation of time: apparent minus mean solar time, by the four-term series in <code>G = 2 pi
     * (n - 1)/365</code>: <code>ET = 137.508 (0.0075 + 0.1868 cos G - 3.2077 sin G - 1.4615 cos 2G
     * - 4.089 sin 2G)</code> seconds.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (5) and (6), there in minutes with the factor
     * 2.2918. Accuracy: about half a minute.
     *
     * @param dayOfYear n, in [1, 366]
     * @return equation of time, s
     * @throws IllegalArgumentException if dayOfYear is NaN or outside its range
     */
    public static double equationOfTime(double dayOfYear) {
        requireDay(dayOfYear);
        double g = TWO_PI * (dayOfYear - 1) / 365;
        return 60
                * 2.2918
                * (0.0075
                        + 0.1868 * Math.cos(g)
                        - 3.2077 * Math.sin(g)
                        - 1.4615 * Math.cos(2 * g)
                        - 4.089 * Math.sin(2 * g));
    }

    /**
     * Declination: <code>23.45 deg sin(2 pi (n + 284)/365)</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (10). Accuracy: about half a degree near the
     * equinoxes.
     *
     * @param dayOfYear n, in [1, 366]
     * @return declination, rad
     * @throws IllegalArgumentException if dayOfYear is NaN or outside its range
     */
    public static double declination(double dayOfYear) {
        requireDay(dayOfYear);
        return 23.45 * DEGREE * Math.sin(TWO_PI * (dayOfYear + 284) / 365);
    }

    /**
     * Apparent solar time of a local standard time: <code>AST = LST + ET + (longitude - meridian of
     * the zone)</code>, 240 s a degree. It may fall below zero or beyond one day.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (7), with longitudes east positive.
     *
     * @param localStandardTime seconds after local midnight, without daylight saving
     * @param equationOfTime s, as from {@link #equationOfTime}
     * @param longitude rad, east positive, in [-pi, pi]
     * @param zoneOffset offset of local standard time from UTC, s, in [-50400, 50400]
     * @return apparent solar time, s after solar midnight
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double apparentSolarTime(
            double localStandardTime, double equationOfTime, double longitude, double zoneOffset) {
        Range.require("local standard time", localStandardTime, -DAY, 2 * DAY, "s");
        Range.require("equation of time", equationOfTime, -1_200, 1_200, "s");
        Range.require("longitude", longitude, -Math.PI, Math.PI, "rad");
        Range.require("zone offset", zoneOffset, -50_400, 50_400, "s");
        return localStandardTime + equationOfTime + longitude * (DAY / TWO_PI) - zoneOffset;
    }

    /**
     * Hour angle: <code>2 pi (AST/86400 - 1/2)</code>.
     *
     * @param apparentSolarTime s after solar midnight, in [-172800, 259200]
     * @return hour angle, rad, positive in the afternoon, not folded into one turn
     * @throws IllegalArgumentException if apparentSolarTime is NaN or outside its range
     */
    public static double hourAngle(double apparentSolarTime) {
        Range.require("apparent solar time", apparentSolarTime, -2 * DAY, 3 * DAY, "s");
        return TWO_PI * (apparentSolarTime / DAY - 0.5);
    }

    /**
     * Altitude of the sun's centre above the horizon, without refraction: <code>sin b = cos L cos d
     * cos H + sin L sin d</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (12). Accuracy: rounding.
     *
     * @param latitude L, rad, in [-pi/2, pi/2]
     * @param declination d, rad, in [-pi/2, pi/2]
     * @param hourAngle H, rad, finite
     * @return altitude, rad, in [-pi/2, pi/2]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double altitude(double latitude, double declination, double hourAngle) {
        requireLatitude(latitude);
        Range.require("declination", declination, -Math.PI / 2, Math.PI / 2, "rad");
        requireFinite("hour angle", hourAngle);
        double sine =
                Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)
                        + Math.sin(latitude) * Math.sin(declination);
        // atan2 of both legs keeps full precision near the zenith, where asin loses half the
        // digits.
        double east = Math.cos(declination) * Math.sin(hourAngle);
        double south =
                Math.cos(hourAngle) * Math.cos(declination) * Math.sin(latitude)
                        - Math.sin(declination) * Math.cos(latitude);
        return Math.atan2(sine, Math.sqrt(east * east + south * south));
    }

    /**
     * Azimuth of the sun from north, clockwise: <code>pi + atan2(cos d sin H, cos H cos d sin L -
     * sin d cos L)</code>. At the zenith the azimuth has no meaning and pi is returned.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (13) and (14), joined and turned to north.
     *
     * @param latitude L, rad, in [-pi/2, pi/2]
     * @param declination d, rad, in [-pi/2, pi/2]
     * @param hourAngle H, rad, finite
     * @return azimuth, rad, in [0, 2 pi)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double azimuth(double latitude, double declination, double hourAngle) {
        requireLatitude(latitude);
        Range.require("declination", declination, -Math.PI / 2, Math.PI / 2, "rad");
        requireFinite("hour angle", hourAngle);
        double west = Math.cos(declination) * Math.sin(hourAngle);
        double south =
                Math.cos(hourAngle) * Math.cos(declination) * Math.sin(latitude)
                        - Math.sin(declination) * Math.cos(latitude);
        return fold(Math.PI + Math.atan2(west, south));
    }

    /**
     * Half of the daylight arc (hour angle of sunset, geometric, centre of the disc): <code>cos H =
     * -tan L tan d</code>; zero in the polar night, pi in the polar day, so that day length in
     * hours is always 24 H/pi.
     *
     * @param latitude L, rad, in [-pi/2, pi/2]
     * @param declination d, rad, in [-pi/2, pi/2]
     * @return sunset hour angle, rad, in [0, pi]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double sunsetHourAngle(double latitude, double declination) {
        requireLatitude(latitude);
        Range.require("declination", declination, -Math.PI / 2, Math.PI / 2, "rad");
        double cosine = -Math.sin(latitude) * Math.sin(declination);
        double radius = Math.cos(latitude) * Math.cos(declination);
        if (cosine >= radius) {
            return 0;
        }
        if (cosine <= -radius) {
            return Math.PI;
        }
        return Math.acos(cosine / radius);
    }

    /**
     * Azimuth from north, clockwise, of an azimuth counted from south, west positive.
     *
     * @param azimuthFromSouth rad, finite
     * @return rad, in [0, 2 pi)
     * @throws IllegalArgumentException if the argument is not finite
     */
    public static double fromSouth(double azimuthFromSouth) {
        requireFinite("azimuth from south", azimuthFromSouth);
        return fold(azimuthFromSouth + Math.PI);
    }

    /**
     * Azimuth from south, west positive, of an azimuth counted from north, clockwise.
     *
     * @param azimuthFromNorth rad, finite
     * @return rad, in [-pi, pi)
     * @throws IllegalArgumentException if the argument is not finite
     */
    public static double fromNorth(double azimuthFromNorth) {
        requireFinite("azimuth from north", azimuthFromNorth);
        return fold(azimuthFromNorth) - Math.PI;
    }

    /**
     * Sun position by the NREL algorithm, without refraction: altitude into {@code out[0]}, azimuth
     * from north into {@code out[1]}, rad.
     *
     * <p>Accuracy: 0.0003 degrees for years -2000 to 6000, topocentric. Allocates inside the
     * library: prepare a day once, do not call it in an inner loop.
     *
     * @param instant moment
     * @param latitude rad, in [-pi/2, pi/2]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param elevation m above sea level, in [-500, 9000]
     * @param deltaT terrestrial minus universal time, s, in [-60, 10000], as from {@link #deltaT}
     * @param out receives altitude and azimuth
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void ephemeris(
            Instant instant,
            double latitude,
            double longitude,
            double elevation,
            double deltaT,
            double[] out) {
        requirePlace(latitude, longitude, elevation);
        Range.require("delta T", deltaT, -60, 10_000, "s");
        store(
                SPA.calculateSolarPosition(
                        utc(instant), latitude / DEGREE, longitude / DEGREE, elevation, deltaT),
                out);
    }

    /**
     * Sun position by the NREL algorithm with atmospheric refraction, as an observer sees it:
     * altitude into {@code out[0]}, azimuth from north into {@code out[1]}, rad.
     *
     * @param instant moment
     * @param latitude rad, in [-pi/2, pi/2]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param elevation m above sea level, in [-500, 9000]
     * @param deltaT terrestrial minus universal time, s, in [-60, 10000]
     * @param pressure mean station pressure, Pa, in [30000, 110000]
     * @param temperature mean air temperature, K, in [180, 340]
     * @param out receives altitude and azimuth
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void apparentEphemeris(
            Instant instant,
            double latitude,
            double longitude,
            double elevation,
            double deltaT,
            double pressure,
            double temperature,
            double[] out) {
        requirePlace(latitude, longitude, elevation);
        Range.require("delta T", deltaT, -60, 10_000, "s");
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        Range.require("temperature", temperature, 180, 340, "K");
        store(
                SPA.calculateSolarPosition(
                        utc(instant),
                        latitude / DEGREE,
                        longitude / DEGREE,
                        elevation,
                        deltaT,
                        pressure / 100,
                        temperature - 273.15),
                out);
    }

    /**
     * Sun position by Grena's third algorithm, without refraction: altitude into {@code out[0]},
     * azimuth from north into {@code out[1]}, rad.
     *
     * <p>Accuracy: 0.01 degrees for the years 2010 to 2110; several times quicker than {@link
     * #ephemeris}.
     *
     * @param instant moment, in the years 2010 to 2110
     * @param latitude rad, in [-pi/2, pi/2]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param deltaT terrestrial minus universal time, s, in [-60, 10000]
     * @param out receives altitude and azimuth
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void quickEphemeris(
            Instant instant, double latitude, double longitude, double deltaT, double[] out) {
        requirePlace(latitude, longitude, 0);
        Range.require("delta T", deltaT, -60, 10_000, "s");
        ZonedDateTime time = utc(instant);
        Range.require("year", time.getYear(), 2010, 2110, "a");
        store(
                Grena3.calculateSolarPosition(time, latitude / DEGREE, longitude / DEGREE, deltaT),
                out);
    }

    /**
     * Terrestrial minus universal time, estimated by the library's polynomials.
     *
     * @param date day
     * @return delta T, s; good to about a second for recent years
     */
    public static double deltaT(LocalDate date) {
        return DeltaT.estimate(date);
    }

    /**
     * Sunrise and sunset by the NREL algorithm for a calendar day in a fixed zone, upper limb on a
     * refracted level horizon (altitude -0.8333 degrees).
     *
     * <p>{@code out[0]} receives sunrise and {@code out[1]} sunset in seconds after local midnight
     * of that day; both are NaN where the sun does not cross the horizon, and the returned number
     * says which of the two: this is an explicit outcome, so read it first.
     *
     * @param date local calendar day
     * @param zoneOffset offset of local standard time from UTC, s, in [-50400, 50400]
     * @param latitude rad, in [-pi/2, pi/2]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param deltaT terrestrial minus universal time, s, in [-60, 10000]
     * @param out receives sunrise and sunset
     * @return 0 if the sun rises and sets, 1 if it stays up all day, -1 if it stays down
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static int daylight(
            LocalDate date,
            int zoneOffset,
            double latitude,
            double longitude,
            double deltaT,
            double[] out) {
        requirePlace(latitude, longitude, 0);
        Range.require("delta T", deltaT, -60, 10_000, "s");
        Range.require("zone offset", zoneOffset, -50_400, 50_400, "s");
        ZonedDateTime midnight = date.atStartOfDay(ZoneOffset.ofTotalSeconds(zoneOffset));
        SunriseResult result =
                SPA.calculateSunriseTransitSet(
                        midnight, latitude / DEGREE, longitude / DEGREE, deltaT);
        if (result instanceof SunriseResult.RegularDay day) {
            out[0] = secondsBetween(midnight, day.sunrise());
            out[1] = secondsBetween(midnight, day.sunset());
            return 0;
        }
        out[0] = Double.NaN;
        out[1] = Double.NaN;
        return result instanceof SunriseResult.AllDay ? 1 : -1;
    }

    /**
     * Julian day of a moment, UTC.
     *
     * @param instant moment
     * @return Julian day, d
     */
    public static double julianDay(Instant instant) {
        return 2_440_587.5 + instant.getEpochSecond() / DAY + instant.getNano() / (1e9 * DAY);
    }

    private static double secondsBetween(ZonedDateTime from, ZonedDateTime to) {
        Instant a = from.toInstant();
        Instant b = to.toInstant();
        return b.getEpochSecond() - a.getEpochSecond() + 1e-9 * (b.getNano() - a.getNano());
    }

    private static ZonedDateTime utc(Instant instant) {
        return instant.atZone(ZoneOffset.UTC);
    }

    private static void store(SolarPosition position, double[] out) {
        out[0] = Math.PI / 2 - position.zenithAngle() * DEGREE;
        out[1] = fold(position.azimuth() * DEGREE);
    }

    private static double fold(double angle) {
        double folded = angle % TWO_PI;
        if (folded < 0) {
            folded += TWO_PI;
        }
        // A tiny negative angle folds to exactly one turn, which is north again.
        return folded >= TWO_PI ? 0 : folded;
    }

    private static void requireDay(double dayOfYear) {
        Range.require("day of year", dayOfYear, 1, 366, "d");
    }

    private static void requireLatitude(double latitude) {
        Range.require("latitude", latitude, -Math.PI / 2, Math.PI / 2, "rad");
    }

    private static void requirePlace(double latitude, double longitude, double elevation) {
        requireLatitude(latitude);
        Range.require("longitude", longitude, -Math.PI, Math.PI, "rad");
        Range.require("elevation", elevation, -500, 9_000, "m");
    }

    private static void requireFinite(String name, double angle) {
        Range.require(name, angle, -Double.MAX_VALUE, Double.MAX_VALUE, "rad");
    }
}
