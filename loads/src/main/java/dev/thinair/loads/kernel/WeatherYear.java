package dev.thinair.loads.kernel;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * An hourly year made from twelve monthly means: plausible, smooth, the same every time. For
 * seasonal studies where no measured year is at hand; it is not a weather record and no forecast.
 *
 * <p>Method. Monthly values stand at the middle of their month and run straight between (round the
 * year). The dry bulb is that mean, plus the handbook's daily profile about its own mean times the
 * daily range, plus a passing-weather swing of two sine waves with periods of 4.7 and 11.3 days,
 * whose standard deviation is given. Moisture is the monthly humidity ratio as far as the air can
 * hold it. The sun is the clear sky's; a cloud cover N takes beam in proportion, and the global
 * irradiance falls as <code>1 - 0.75 N^3.4</code>. Periods and phases of the swing are common
 * practice without a source; cloud: Kasten and Czeplak, Solar Energy 24 (1980) 177 (from memory).
 */
public final class WeatherYear {

    /** Hours of a common year. */
    public static final int HOURS = 8_760;

    private static final double[] MIDDLE = {
        15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5
    };

    private WeatherYear() {}

    /**
     * A monthly value at a time of the year, straight between the middles of the months, round the
     * year.
     *
     * @param monthly twelve values
     * @param day time since the year began, d, in [0, 366]
     * @return value
     * @throws IllegalArgumentException if there are not twelve values or day is out of range
     */
    public static double at(double[] monthly, double day) {
        if (monthly.length != 12) {
            throw new IllegalArgumentException(
                    "number of monthly values is " + monthly.length + ", but must be 12");
        }
        Range.require("day of the year", day, 0, 366, "d");
        int next = 0;
        while (next < 12 && MIDDLE[next] <= day) {
            next++;
        }
        int right = next % 12;
        int left = (next + 11) % 12;
        double from = MIDDLE[left] - (next == 0 ? 365 : 0);
        double to = MIDDLE[right] + (next == 12 ? 365 : 0);
        double share = (day - from) / (to - from);
        return monthly[left] + share * (monthly[right] - monthly[left]);
    }

    /**
     * Passing-weather swing with standard deviation 1: two sine waves of equal strength, 4.7 and
     * 11.3 days.
     *
     * @param day time since the year began, d
     * @return dimensionless, in [-2, 2]
     */
    public static double swing(double day) {
        return Math.sin(2 * Math.PI * day / 4.7) + Math.sin(2 * Math.PI * day / 11.3 + 1);
    }

    /**
     * Dry bulbs of the year.
     *
     * @param mean monthly means, K, in [200, 330]
     * @param range monthly mean daily ranges, K, in [0, 45]
     * @param deviation standard deviation of the daily mean within a month, K, in [0, 15]
     * @param profile daily profile, by clock hour
     * @param out receives 8760 values, K, at 0:00 of 1 January and after
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public static void dryBulbs(
            double[] mean, double[] range, double deviation, DailyProfile profile, double[] out) {
        Range.require("deviation of the daily mean", deviation, 0, 15, "K");
        requireMonths("monthly mean dry bulb", mean, 200, 330, "K");
        requireMonths("monthly daily range", range, 0, 45, "K");
        for (int i = 0; i < HOURS; i++) {
            double day = i / 24.0;
            out[i] =
                    at(mean, day)
                            + (profile.meanFraction() - profile.fraction(i % 24)) * at(range, day)
                            + deviation * swing(day);
        }
    }

    /**
     * Humidity ratios of the year, capped at saturation.
     *
     * @param monthly monthly mean humidity ratios, kg/kg, in [0, 0.05]
     * @param dryBulbs 8760 dry bulbs, K
     * @param pressure Pa, in [30000, 110000]
     * @param out receives 8760 values, kg/kg
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public static void humidity(
            double[] monthly, double[] dryBulbs, double pressure, double[] out) {
        requireMonths("monthly mean humidity ratio", monthly, 0, 0.05, "kg/kg");
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        for (int i = 0; i < HOURS; i++) {
            out[i] =
                    Math.min(
                            at(monthly, i / 24.0),
                            IdealMoistAir.saturationHumidityRatio(dryBulbs[i], pressure));
        }
    }

    /**
     * Sun positions of a common year at its hour marks, by Grena's algorithm where it holds (2010
     * to 2110), else by NREL's.
     *
     * @param year calendar year; a leap year is cut after 8760 hours
     * @param zoneOffset s
     * @param latitude rad
     * @param longitude rad, east positive
     * @param elevation m
     * @param altitudeOut receives 8760 altitudes, rad
     * @param azimuthOut receives 8760 azimuths, rad from north
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void sun(
            int year,
            int zoneOffset,
            double latitude,
            double longitude,
            double elevation,
            double[] altitudeOut,
            double[] azimuthOut) {
        Range.require("year", year, -2_000, 6_000, "a");
        LocalDate first = LocalDate.of(year, 1, 1);
        boolean quick = year > 2010 && year < 2110;
        double deltaT = Sun.deltaT(LocalDate.of(year, 7, 1));
        var start = first.atStartOfDay().toInstant(ZoneOffset.ofTotalSeconds(zoneOffset));
        double[] place = new double[2];
        for (int i = 0; i < HOURS; i++) {
            var mark = start.plusSeconds(3_600L * i);
            if (quick) {
                Sun.quickEphemeris(mark, latitude, longitude, deltaT, place);
            } else {
                Sun.ephemeris(mark, latitude, longitude, elevation, deltaT, place);
            }
            altitudeOut[i] = place[0];
            azimuthOut[i] = place[1];
        }
    }

    /**
     * Irradiance of the year from monthly optical depths and cloud cover.
     *
     * @param edition edition of the optical depths
     * @param taub monthly beam optical depths, in [0, 3]
     * @param taud monthly diffuse optical depths, in [0, 6]
     * @param cloud monthly mean cloud cover N, in [0, 1]
     * @param altitudes 8760 solar altitudes, rad
     * @param beamOut receives 8760 beam normal irradiances, W/m2
     * @param diffuseOut receives 8760 diffuse horizontal irradiances, W/m2
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public static void irradiance(
            ClearSky.Edition edition,
            double[] taub,
            double[] taud,
            double[] cloud,
            double[] altitudes,
            double[] beamOut,
            double[] diffuseOut) {
        requireMonths("monthly cloud cover", cloud, 0, 1, "-");
        requireMonths("monthly beam optical depth", taub, 0, 3, "-");
        requireMonths("monthly diffuse optical depth", taud, 0, 6, "-");
        for (int i = 0; i < HOURS; i++) {
            double altitude = altitudes[i];
            if (altitude <= 0) {
                beamOut[i] = 0;
                diffuseOut[i] = 0;
                continue;
            }
            double day = i / 24.0;
            double b = at(taub, day);
            double d = at(taud, day);
            double above = Sun.extraterrestrialNormal(1 + i / 24);
            double beam = ClearSky.beamNormal(edition, above, altitude, b, d);
            double diffuse = ClearSky.diffuseHorizontal(edition, above, altitude, b, d);
            clouded(beam, diffuse, Math.sin(altitude), at(cloud, day), i, beamOut, diffuseOut);
        }
    }

    /**
     * Takes a cloud cover to a clear sky: beam falls to (1 - N), global to (1 - 0.75 N^3.4), the
     * rest of the global is diffuse.
     */
    private static void clouded(
            double beam,
            double diffuse,
            double sine,
            double cover,
            int at,
            double[] beamOut,
            double[] diffuseOut) {
        double global = (beam * sine + diffuse) * (1 - 0.75 * Math.pow(cover, 3.4));
        beamOut[at] = beam * (1 - cover);
        diffuseOut[at] = Math.max(0, global - beamOut[at] * sine);
    }

    private static void requireMonths(
            String name, double[] values, double low, double high, String unit) {
        if (values.length != 12) {
            throw new IllegalArgumentException(
                    "number of values of " + name + " is " + values.length + ", but must be 12");
        }
        for (int m = 0; m < 12; m++) {
            Range.require(name + " of month " + (m + 1), values[m], low, high, unit);
        }
    }
}
