package dev.thinair.loads;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.WeatherYear;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;

/**
 * Consecutive hours of weather at a site: measured ones handed over as SI arrays, or a year made
 * from monthly means. Immutable.
 */
public final class HourlyWeather {

    private final Site site;
    private final LocalDateTime start;
    private final OutdoorHours hours;

    private HourlyWeather(Site site, LocalDateTime start, OutdoorHours hours) {
        this.site = site;
        this.start = start;
        this.hours = hours;
    }

    /**
     * Weather as it was measured or comes from a file; the sun's place is worked out, irradiances
     * are taken as given (values at the hour marks; shift hourly means by half an hour first).
     *
     * @param site where
     * @param start local standard time of the first mark; must be a full hour
     * @param dryBulb K
     * @param humidityRatio kg/kg
     * @param windSpeed m/s
     * @param beamNormal W/m2
     * @param diffuseHorizontal W/m2
     * @return the weather
     * @throws IllegalArgumentException if lengths differ, a value is NaN or out of range, or start
     *     is not a full hour
     */
    public static HourlyWeather of(
            Site site,
            LocalDateTime start,
            double[] dryBulb,
            double[] humidityRatio,
            double[] windSpeed,
            double[] beamNormal,
            double[] diffuseHorizontal) {
        Objects.requireNonNull(site, "site");
        if (start.getMinute() != 0 || start.getSecond() != 0 || start.getNano() != 0) {
            throw new IllegalArgumentException(
                    "start of the weather is " + start + ", but must be a full hour");
        }
        int n = dryBulb.length;
        double[] altitude = new double[n];
        double[] azimuth = new double[n];
        Instant first = start.toInstant(site.zone());
        double deltaT = Sun.deltaT(start.toLocalDate());
        double[] place = new double[2];
        for (int i = 0; i < n; i++) {
            Sun.ephemeris(
                    first.plusSeconds(3_600L * i),
                    site.latitudeRadians(),
                    site.longitudeRadians(),
                    site.elevationMetres(),
                    deltaT,
                    place);
            altitude[i] = place[0];
            azimuth[i] = place[1];
        }
        double[] beam = beamNormal.clone();
        if (!site.horizon().isLevel() && beam.length == n) {
            DesignDays.maskHorizon(
                    site.horizon().azimuths(), site.horizon().altitudes(), altitude, azimuth, beam);
        }
        return new HourlyWeather(
                site,
                start,
                new OutdoorHours(
                        false,
                        start.getHour(),
                        dryBulb,
                        humidityRatio,
                        windSpeed,
                        altitude,
                        azimuth,
                        beam,
                        diffuseHorizontal,
                        site.pascals(),
                        site.groundKelvins().orElse(Double.NaN),
                        site.reflectance()));
    }

    /**
     * Begins a year made from monthly means.
     *
     * @param site where
     * @return builder
     */
    public static Year yearAt(Site site) {
        return new Year(Objects.requireNonNull(site, "site"));
    }

    /**
     * A year between a heating and a cooling design day, for lack of monthly means: the daily mean
     * follows a sine from winter to summer, coldest half a year away from the cooling day's date;
     * the daily range is the cooling day's; passing weather swings with a standard deviation of 3
     * K, and the seasons' means stand 0.7 of these inside the design conditions, which leaves about
     * 1 percent of the hours beyond each (70 and 83 h measured at a temperate site; the swing is
     * common practice, no source). Clear sky; wind and moisture run between those of the two days.
     *
     * @param cooling summer design
     * @param heating winter design
     * @param taub clear-sky beam optical depth, editions 2013 to 2021
     * @param taud clear-sky diffuse optical depth, same edition
     * @return 8760 hours of the cooling day's calendar year
     * @throws IllegalArgumentException if the winter is not colder than the summer, or a depth is
     *     out of range
     */
    public static HourlyWeather between(
            CoolingDesignDay cooling, HeatingDesignDay heating, double taub, double taud) {
        double deviation = 3;
        OutdoorHours hot = cooling.outdoorHours();
        double low = hot.dryBulb(0);
        double high = low;
        double moist = 0;
        double wind = 0;
        for (int h = 0; h < 24; h++) {
            low = Math.min(low, hot.dryBulb(h));
            high = Math.max(high, hot.dryBulb(h));
            moist += hot.humidityRatio(h) / 24;
            wind += hot.windSpeed(h) / 24;
        }
        DailyProfile profile = DailyProfile.FUNDAMENTALS_2009_TO_2021;
        double range = high - low;
        double summer = hot.meanDryBulb() - 0.7 * deviation;
        double winter = heating.kelvins() + (1 - profile.meanFraction()) * range + 0.7 * deviation;
        Range.require(
                "heating design dry bulb", heating.kelvins(), 0, hot.meanDryBulb() - 1e-9, "K");
        Year year = yearAt(cooling.site()).calendarYear(cooling.date().getYear());
        for (int m = 1; m <= 12; m++) {
            double middle = 30.4 * (m - 0.5);
            double share =
                    0.5
                            + 0.5
                                    * Math.cos(
                                            2
                                                    * Math.PI
                                                    * (middle - cooling.date().getDayOfYear())
                                                    / 365);
            year.setMonth(
                    m - 1,
                    winter + share * (Math.max(summer, winter) - winter),
                    range,
                    heating.kilogramsPerKilogram()
                            + share * (moist - heating.kilogramsPerKilogram()),
                    heating.metresPerSecond() + share * (wind - heating.metresPerSecond()),
                    0,
                    taub,
                    taud);
        }
        return year.deviation(Units.kelvinDifference(deviation)).build();
    }

    /**
     * Where.
     *
     * @return site
     */
    public Site site() {
        return site;
    }

    /**
     * Local standard time of the first hour mark.
     *
     * @return time
     */
    public LocalDateTime start() {
        return start;
    }

    /**
     * Number of hours.
     *
     * @return hours
     */
    public int hours() {
        return hours.count();
    }

    /**
     * Dry bulb at an hour mark.
     *
     * @param index from 0
     * @return dry bulb
     */
    public Quantity<Temperature> dryBulb(int index) {
        return Units.kelvins(hours.dryBulb(index));
    }

    /**
     * Humidity ratio at an hour mark.
     *
     * @param index from 0
     * @return humidity ratio
     */
    public Quantity<HumidityRatio> humidityRatio(int index) {
        return Units.kilogramsPerKilogram(hours.humidityRatio(index));
    }

    /**
     * The weather in primitive SI values for kernel calls.
     *
     * @return hours
     */
    public OutdoorHours outdoorHours() {
        return hours;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%d hours of weather at %s from %s", hours.count(), site, start);
    }

    /** Collects the monthly means of a year; not for sharing between threads. */
    public static final class Year {

        private final Site site;
        private int calendarYear = 2026;
        private final double[] mean = unset();
        private final double[] range = unset();
        private final double[] humidity = unset();
        private final double[] wind = unset();
        private final double[] cloud = unset();
        private final double[] taub = unset();
        private final double[] taud = unset();
        private double deviation = 2;
        private DailyProfile profile = DailyProfile.FUNDAMENTALS_2009_TO_2021;
        private ClearSky.Edition edition = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;

        private Year(Site site) {
            this.site = site;
        }

        private static double[] unset() {
            double[] values = new double[12];
            Arrays.fill(values, Double.NaN);
            return values;
        }

        /**
         * The means of one month.
         *
         * @param month month
         * @param meanDryBulb mean dry bulb
         * @param dailyRange mean daily range
         * @param humidityRatio mean humidity ratio
         * @param windSpeed mean station wind
         * @param cloudCover mean cloud cover, 0 clear to 1 overcast
         * @param beamDepth clear-sky beam optical depth
         * @param diffuseDepth clear-sky diffuse optical depth
         * @return this
         * @throws IllegalArgumentException if a value is not finite
         */
        public Year month(
                Month month,
                Quantity<Temperature> meanDryBulb,
                Quantity<TemperatureDifference> dailyRange,
                Quantity<HumidityRatio> humidityRatio,
                Quantity<Speed> windSpeed,
                Quantity<Dimensionless> cloudCover,
                double beamDepth,
                double diffuseDepth) {
            return setMonth(
                    month.getValue() - 1,
                    Si.kelvins(meanDryBulb, "monthly mean dry bulb"),
                    Si.kelvinDifference(dailyRange, "monthly daily range"),
                    Si.humidityRatio(humidityRatio, "monthly mean humidity ratio"),
                    Si.metresPerSecond(windSpeed, "monthly mean wind speed"),
                    Si.ratio(cloudCover, "monthly cloud cover"),
                    beamDepth,
                    diffuseDepth);
        }

        private Year setMonth(
                int m,
                double meanDryBulb,
                double dailyRange,
                double humidityRatio,
                double windSpeed,
                double cloudCover,
                double beamDepth,
                double diffuseDepth) {
            mean[m] = meanDryBulb;
            range[m] = dailyRange;
            humidity[m] = humidityRatio;
            wind[m] = windSpeed;
            cloud[m] = cloudCover;
            taub[m] = beamDepth;
            taud[m] = diffuseDepth;
            return this;
        }

        /**
         * Standard deviation of the daily mean about its month, from passing weather; 2 K if not
         * given.
         *
         * @param value in [0, 15] K
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Year deviation(Quantity<TemperatureDifference> value) {
            deviation = Si.kelvinDifference(value, "deviation of the daily mean");
            Range.require("deviation of the daily mean", deviation, 0, 15, "K");
            return this;
        }

        /**
         * Calendar year that places the sun; 2026 if not given.
         *
         * @param value in [1900, 2200]
         * @return this
         * @throws IllegalArgumentException if the year is outside its range
         */
        public Year calendarYear(int value) {
            Range.require("calendar year", value, 1_900, 2_200, "a");
            calendarYear = value;
            return this;
        }

        /**
         * Edition of the optical depths; 2013 to 2021 if not given.
         *
         * @param value edition
         * @return this
         */
        public Year edition(ClearSky.Edition value) {
            edition = Objects.requireNonNull(value, "edition");
            return this;
        }

        /**
         * Daily profile; the handbook's present one if not given.
         *
         * @param value profile
         * @return this
         */
        public Year profile(DailyProfile value) {
            profile = Objects.requireNonNull(value, "profile");
            return this;
        }

        /**
         * Makes the year.
         *
         * @return 8760 hours from 1 January, 0:00 local standard time
         * @throws IllegalArgumentException if a month is missing or a value is out of range
         */
        public HourlyWeather build() {
            for (int m = 0; m < 12; m++) {
                if (Double.isNaN(mean[m])) {
                    throw new IllegalArgumentException(
                            "year of weather has no means for " + Month.of(m + 1));
                }
            }
            int n = WeatherYear.HOURS;
            double[] dryBulbs = new double[n];
            double[] moisture = new double[n];
            double[] winds = new double[n];
            double[] altitude = new double[n];
            double[] azimuth = new double[n];
            double[] beam = new double[n];
            double[] diffuse = new double[n];
            WeatherYear.dryBulbs(mean, range, deviation, profile, dryBulbs);
            WeatherYear.humidity(humidity, dryBulbs, site.pascals(), moisture);
            for (int i = 0; i < n; i++) {
                winds[i] = WeatherYear.at(wind, i / 24.0);
            }
            WeatherYear.sun(
                    calendarYear,
                    site.zone().getTotalSeconds(),
                    site.latitudeRadians(),
                    site.longitudeRadians(),
                    site.elevationMetres(),
                    altitude,
                    azimuth);
            WeatherYear.irradiance(edition, taub, taud, cloud, altitude, beam, diffuse);
            if (!site.horizon().isLevel()) {
                DesignDays.maskHorizon(
                        site.horizon().azimuths(),
                        site.horizon().altitudes(),
                        altitude,
                        azimuth,
                        beam);
            }
            return new HourlyWeather(
                    site,
                    LocalDateTime.of(calendarYear, 1, 1, 0, 0),
                    new OutdoorHours(
                            false,
                            0,
                            dryBulbs,
                            moisture,
                            winds,
                            altitude,
                            azimuth,
                            beam,
                            diffuse,
                            site.pascals(),
                            site.groundKelvins().orElse(Double.NaN),
                            site.reflectance()));
        }
    }
}
