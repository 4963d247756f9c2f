package dev.thinair.loads.kernel;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * From design conditions to hour-by-hour weather: sun, sky, temperature and humidity of a day.
 *
 * <p>Everything here prepares a day once; none of it belongs in an inner loop.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 14.
 */
public final class DesignDays {

    private DesignDays() {}

    /** How the sun's place is found. */
    public enum SunMethod {
        /** The NREL algorithm, 0.0003 degrees, any year. */
        NREL,
        /**
         * The third algorithm of Grena, 0.01 degrees, years 2010 to 2110, several times quicker.
         */
        GRENA,
        /**
         * The handbook's textbook formulas, a few tenths of a degree; one declination and one
         * equation of time for the whole day.
         */
        HANDBOOK
    }

    /**
     * Sun positions at the 24 hour marks of a local day.
     *
     * @param method how
     * @param date local calendar day
     * @param zoneOffset offset of local standard time from UTC, s, in [-50400, 50400]
     * @param latitude rad, in [-pi/2, pi/2]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param elevation m, in [-500, 9000]
     * @param altitudeOut receives 24 altitudes, rad
     * @param azimuthOut receives 24 azimuths, rad from north
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void sunPositions(
            SunMethod method,
            LocalDate date,
            int zoneOffset,
            double latitude,
            double longitude,
            double elevation,
            double[] altitudeOut,
            double[] azimuthOut) {
        Range.require("zone offset", zoneOffset, -50_400, 50_400, "s");
        if (method == SunMethod.HANDBOOK) {
            double declination = Sun.declination(date.getDayOfYear());
            double equation = Sun.equationOfTime(date.getDayOfYear());
            for (int h = 0; h < 24; h++) {
                double angle =
                        Sun.hourAngle(
                                Sun.apparentSolarTime(h * 3_600, equation, longitude, zoneOffset));
                altitudeOut[h] = Sun.altitude(latitude, declination, angle);
                azimuthOut[h] = Sun.azimuth(latitude, declination, angle);
            }
            return;
        }
        Instant midnight = date.atStartOfDay().toInstant(ZoneOffset.ofTotalSeconds(zoneOffset));
        double deltaT = Sun.deltaT(date);
        double[] place = new double[2];
        for (int h = 0; h < 24; h++) {
            Instant mark = midnight.plusSeconds(3_600L * h);
            if (method == SunMethod.NREL) {
                Sun.ephemeris(mark, latitude, longitude, elevation, deltaT, place);
            } else {
                Sun.quickEphemeris(mark, latitude, longitude, deltaT, place);
            }
            altitudeOut[h] = place[0];
            azimuthOut[h] = place[1];
        }
    }

    /**
     * Dry bulbs at the 24 hour marks from a maximum, a range and a profile.
     *
     * @param profile table of fractions
     * @param solarTime true to read it by apparent solar time as chapter 14 does, false by clock
     *     hour as chapter 18 does
     * @param design daily maximum, K, in [180, 340]
     * @param range daily range, K, in [0, 60]
     * @param dayOfYear in [1, 366]
     * @param longitude rad, east positive, in [-pi, pi]
     * @param zoneOffset offset of local standard time from UTC, s
     * @param out receives 24 temperatures, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void dryBulbs(
            DailyProfile profile,
            boolean solarTime,
            double design,
            double range,
            double dayOfYear,
            double longitude,
            double zoneOffset,
            double[] out) {
        Range.require("design dry bulb", design, 180, 340, "K");
        Range.require("daily range", range, 0, 60, "K");
        double equation = Sun.equationOfTime(dayOfYear);
        for (int h = 0; h < 24; h++) {
            double fraction =
                    solarTime
                            ? profile.fractionAtSolarTime(
                                    Sun.apparentSolarTime(
                                            h * 3_600, equation, longitude, zoneOffset))
                            : profile.fraction(h);
            out[h] = design - fraction * range;
        }
    }

    /**
     * Humidity ratios of a day that keeps its moisture: the humidity ratio at the maximum, less
     * where the air of an hour cannot hold it.
     *
     * @param dryBulbs K
     * @param humidityRatio at the maximum, kg/kg, in [0, 0.5]
     * @param pressure Pa, in [30000, 110000]
     * @param out receives a humidity ratio for each dry bulb, kg/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void constantHumidity(
            double[] dryBulbs, double humidityRatio, double pressure, double[] out) {
        Range.require("humidity ratio", humidityRatio, 0, 0.5, "kg/kg");
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        for (int h = 0; h < dryBulbs.length; h++) {
            out[h] =
                    Math.min(
                            humidityRatio,
                            IdealMoistAir.saturationHumidityRatio(dryBulbs[h], pressure));
        }
    }

    /**
     * Humidity ratios of a day whose wet bulb follows a profile with a range of its own, capped at
     * the dry bulb.
     *
     * @param profile table of fractions, by clock hour
     * @param dryBulbs 24 dry bulbs, K
     * @param wetBulb coincident wet bulb at the maximum, K, in [180, 340]
     * @param wetBulbRange coincident range of the wet bulb, K, in [0, 60]
     * @param pressure Pa, in [30000, 110000]
     * @param out receives 24 humidity ratios, kg/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or a pair of dry
     *     and wet bulb would need less than no moisture
     */
    public static void wetBulbHumidity(
            DailyProfile profile,
            double[] dryBulbs,
            double wetBulb,
            double wetBulbRange,
            double pressure,
            double[] out) {
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        for (int h = 0; h < 24; h++) {
            double wet = profile.wetBulb(wetBulb, wetBulbRange, dryBulbs[h], h);
            out[h] = IdealMoistAir.humidityRatioFromWetBulb(dryBulbs[h], wet, pressure);
        }
    }

    /**
     * Clear-sky irradiance by optical depths for a row of solar altitudes.
     *
     * @param edition edition of the optical depths
     * @param extraterrestrial Eo, W/m2, in [0, 1500]
     * @param taub beam optical depth, in [0, 3]
     * @param taud diffuse optical depth, in [0, 6]
     * @param altitudes solar altitudes, rad
     * @param beamOut receives beam normal irradiance, W/m2
     * @param diffuseOut receives diffuse horizontal irradiance, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void clearSky(
            ClearSky.Edition edition,
            double extraterrestrial,
            double taub,
            double taud,
            double[] altitudes,
            double[] beamOut,
            double[] diffuseOut) {
        for (int h = 0; h < altitudes.length; h++) {
            beamOut[h] = ClearSky.beamNormal(edition, extraterrestrial, altitudes[h], taub, taud);
            diffuseOut[h] =
                    ClearSky.diffuseHorizontal(edition, extraterrestrial, altitudes[h], taub, taud);
        }
    }

    /**
     * Clear-sky irradiance by the correlation of Hottel for a row of solar altitudes.
     *
     * @param climate climate class
     * @param extraterrestrial Eo, W/m2, in [0, 1500]
     * @param elevation m, in [-100, 2500]
     * @param altitudes solar altitudes, rad
     * @param beamOut receives beam normal irradiance, W/m2
     * @param diffuseOut receives diffuse horizontal irradiance, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void hottelSky(
            ClearSky.HottelClimate climate,
            double extraterrestrial,
            double elevation,
            double[] altitudes,
            double[] beamOut,
            double[] diffuseOut) {
        for (int h = 0; h < altitudes.length; h++) {
            double transmittance = ClearSky.hottelTransmittance(climate, elevation, altitudes[h]);
            beamOut[h] = extraterrestrial * transmittance;
            diffuseOut[h] =
                    ClearSky.liuJordanDiffuse(extraterrestrial, altitudes[h], transmittance);
        }
    }

    /**
     * Takes away the beam where the sun stands behind the skyline.
     *
     * @param horizonAzimuths directions of the skyline, rad from north, ascending
     * @param horizonAltitudes its altitudes, rad
     * @param altitudes solar altitudes, rad
     * @param azimuths sun azimuths, rad from north
     * @param beam beam normal irradiance, W/m2, set to 0 where hidden
     */
    public static void maskHorizon(
            double[] horizonAzimuths,
            double[] horizonAltitudes,
            double[] altitudes,
            double[] azimuths,
            double[] beam) {
        for (int h = 0; h < beam.length; h++) {
            if (altitudes[h]
                    <= Shading.horizonAltitude(horizonAzimuths, horizonAltitudes, azimuths[h])) {
                beam[h] = 0;
            }
        }
    }

    /**
     * Hours of an average year in which a design value is passed: <code>8760 (percentile or 1 -
     * percentile)</code>, whichever is the smaller.
     *
     * <p>Source: definition, Fundamentals 2021 (SI), ch. 14.
     *
     * @param annualPercentile share of the year, in [0, 1]: 0.01 for the 1 percent cooling value,
     *     0.99 for the 99 percent heating value
     * @return h
     * @throws IllegalArgumentException if the share is NaN or outside its range
     */
    public static double hoursBeyond(double annualPercentile) {
        Range.require("annual percentile", annualPercentile, 0, 1, "-");
        return 8_760 * Math.min(annualPercentile, 1 - annualPercentile);
    }
}
