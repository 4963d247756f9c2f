package dev.thinair.loads;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;

/**
 * A hot clear day that repeats: the weather a cooling load is reckoned for.
 *
 * <pre>{@code
 * CoolingDesignDay day =
 *         CoolingDesignDay.at(site)
 *                 .date(LocalDate.of(2026, 7, 21))
 *                 .dryBulb(celsius(33.1))
 *                 .dailyRange(celsiusDifference(9.3))
 *                 .wetBulb(celsius(23.3))
 *                 .opticalDepths(0.515, 2.066)
 *                 .build();
 * }</pre>
 *
 * <p>The temperature follows the handbook's fractions of the daily range by clock hour unless told
 * otherwise, or 24 given values. The moisture is that of the coincident wet bulb at the maximum,
 * kept through the day as far as the air can hold it, or follows a wet-bulb range. The sky is clear
 * by the handbook's optical depths (default edition 2013 to 2021), or by Hottel's correlation where
 * none are published. Design data belong to a place, so the day holds its site.
 *
 * <p>Immutable.
 */
public final class CoolingDesignDay {

    /** Station wind of a cooling day when none is given: 3.4 m/s (Fundamentals 2021, ch. 17). */
    public static final double USUAL_WIND = 3.4;

    private final Builder description;
    private final OutdoorHours hours;

    private CoolingDesignDay(Builder description, OutdoorHours hours) {
        this.description = description;
        this.hours = hours;
    }

    /**
     * Begins a design day.
     *
     * @param site where
     * @return builder
     */
    public static Builder at(Site site) {
        return new Builder(Objects.requireNonNull(site, "site"));
    }

    /**
     * Where the day belongs.
     *
     * @return site
     */
    public Site site() {
        return description.site;
    }

    /**
     * Calendar day that places the sun.
     *
     * @return date
     */
    public LocalDate date() {
        return description.date;
    }

    /**
     * Highest of the 24 dry bulbs.
     *
     * @return dry bulb
     */
    public Quantity<Temperature> dryBulb() {
        double highest = hours.dryBulb(0);
        for (int h = 1; h < 24; h++) {
            highest = Math.max(highest, hours.dryBulb(h));
        }
        return Units.kelvins(highest);
    }

    /**
     * Dry bulb at a clock hour.
     *
     * @param hour local standard hour, 0 to 23
     * @return dry bulb
     */
    public Quantity<Temperature> dryBulb(int hour) {
        Range.require("hour", hour, 0, 23, "h");
        return Units.kelvins(hours.dryBulb(hour));
    }

    /**
     * Humidity ratio at a clock hour.
     *
     * @param hour local standard hour, 0 to 23
     * @return humidity ratio
     */
    public Quantity<HumidityRatio> humidityRatio(int hour) {
        Range.require("hour", hour, 0, 23, "h");
        return Units.kilogramsPerKilogram(hours.humidityRatio(hour));
    }

    /**
     * Whether and when the sun rises on this day.
     *
     * @return one of three cases
     */
    public Daylight daylight() {
        return description.site.daylight(description.date);
    }

    /**
     * The day in primitive SI values for kernel calls.
     *
     * @return 24 repeating hours
     */
    public OutdoorHours outdoorHours() {
        return hours;
    }

    /**
     * How the irradiance of an unshaded plane at a clock hour comes about, step by step.
     *
     * @param hour local standard hour, 0 to 23
     * @param azimuth azimuth of the plane's outward normal, from north, clockwise
     * @param tilt from the horizontal: 0 faces up, 90 degrees is a wall
     * @return the steps; the last gives the total irradiance
     * @throws IllegalArgumentException if hour, azimuth or tilt is outside its range
     */
    public Working irradianceWorking(int hour, Quantity<Angle> azimuth, Quantity<Angle> tilt) {
        Range.require("hour", hour, 0, 23, "h");
        return SolarWorking.irradiance(this, hour, azimuth, tilt);
    }

    ClearSky.Edition edition() {
        return description.edition;
    }

    double beamDepth() {
        return description.taub;
    }

    double diffuseDepth() {
        return description.taud;
    }

    /**
     * The same conditions at another site: sun, pressure and moisture are worked out anew. Optical
     * depths hold the elevation of their place, so give new ones where they are known.
     *
     * @param site where
     * @return a new day
     * @throws IllegalArgumentException if the conditions cannot be at that site
     */
    public CoolingDesignDay withSite(Site site) {
        return new Builder(description, Objects.requireNonNull(site, "site")).build();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "cooling design day %s at %s, up to %.1f °C (%.1f °F)",
                description.date,
                description.site,
                Si.kelvins(dryBulb(), "dry bulb") - 273.15,
                Si.kelvins(dryBulb(), "dry bulb") * 1.8 - 459.67);
    }

    /** Collects what a design day needs; not for sharing between threads. */
    public static final class Builder {

        private final Site site;
        private LocalDate date;
        private double dryBulb = Double.NaN;
        private double range = Double.NaN;
        private double[] given;
        private DailyProfile profile = DailyProfile.FUNDAMENTALS_2009_TO_2021;
        private boolean solarTime;
        private double wetBulb = Double.NaN;
        private double wetBulbRange = Double.NaN;
        private double humidityRatio = Double.NaN;
        private ClearSky.Edition edition;
        private double taub;
        private double taud;
        private ClearSky.HottelClimate hottel;
        private boolean dark;
        private double wind = USUAL_WIND;
        private DesignDays.SunMethod method = DesignDays.SunMethod.NREL;

        private Builder(Site site) {
            this.site = site;
        }

        private Builder(Builder from, Site site) {
            this(site);
            date = from.date;
            dryBulb = from.dryBulb;
            range = from.range;
            given = from.given == null ? null : from.given.clone();
            profile = from.profile;
            solarTime = from.solarTime;
            wetBulb = from.wetBulb;
            wetBulbRange = from.wetBulbRange;
            humidityRatio = from.humidityRatio;
            edition = from.edition;
            taub = from.taub;
            taud = from.taud;
            hottel = from.hottel;
            dark = from.dark;
            wind = from.wind;
            method = from.method;
        }

        /**
         * Calendar day, which places the sun.
         *
         * @param value date
         * @return this
         */
        public Builder date(LocalDate value) {
            date = Objects.requireNonNull(value, "date");
            return this;
        }

        /**
         * Design dry bulb, the day's maximum.
         *
         * @param value in [-50, 65] C
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Builder dryBulb(Quantity<Temperature> value) {
            dryBulb = Si.kelvins(value, "design dry bulb");
            Range.require("design dry bulb", dryBulb, 223.15, 338.15, "K");
            return this;
        }

        /**
         * Daily range of the dry bulb.
         *
         * @param value in [0, 45] K
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Builder dailyRange(Quantity<TemperatureDifference> value) {
            range = Si.kelvinDifference(value, "daily range");
            Range.require("daily range", range, 0, 45, "K");
            return this;
        }

        /**
         * Which table of hourly fractions, and how it is read.
         *
         * @param table the table by name
         * @param bySolarTime true by apparent solar time (handbook ch. 14), false by clock hour
         *     (ch. 18)
         * @return this
         */
        public Builder profile(DailyProfile table, boolean bySolarTime) {
            profile = Objects.requireNonNull(table, "profile");
            solarTime = bySolarTime;
            return this;
        }

        /**
         * The 24 dry bulbs themselves, instead of a maximum and a range.
         *
         * @param values dry bulbs at 0:00, 1:00, ... 23:00 local standard time
         * @return this
         * @throws IllegalArgumentException if there are not 24, or one is not finite or out of
         *     range
         */
        public Builder dryBulbs(List<? extends Quantity<Temperature>> values) {
            if (values.size() != 24) {
                throw new IllegalArgumentException(
                        "number of hourly dry bulbs is " + values.size() + ", but must be 24");
            }
            double[] kelvins = new double[24];
            for (int h = 0; h < 24; h++) {
                kelvins[h] = Si.kelvins(values.get(h), "dry bulb at hour " + h);
                Range.require("dry bulb at hour " + h, kelvins[h], 223.15, 338.15, "K");
            }
            given = kelvins;
            return this;
        }

        /**
         * Wet bulb coincident with the design dry bulb; its humidity ratio is kept through the day.
         *
         * @param value not above the design dry bulb
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside [-50, 60] C
         */
        public Builder wetBulb(Quantity<Temperature> value) {
            wetBulb = Si.kelvins(value, "coincident wet bulb");
            Range.require("coincident wet bulb", wetBulb, 223.15, 333.15, "K");
            humidityRatio = Double.NaN;
            return this;
        }

        /**
         * Daily range of the wet bulb: moisture then follows the same fractions as the dry bulb.
         *
         * @param value in [0, 45] K
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Builder wetBulbRange(Quantity<TemperatureDifference> value) {
            wetBulbRange = Si.kelvinDifference(value, "daily wet-bulb range");
            Range.require("daily wet-bulb range", wetBulbRange, 0, 45, "K");
            return this;
        }

        /**
         * Humidity ratio kept through the day, instead of a wet bulb.
         *
         * @param value in [0, 0.1] kg/kg
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Builder humidityRatio(Quantity<HumidityRatio> value) {
            humidityRatio = Si.humidityRatio(value, "humidity ratio");
            Range.require("humidity ratio", humidityRatio, 0, 0.1, "kg/kg");
            wetBulb = Double.NaN;
            return this;
        }

        /**
         * Clear-sky optical depths of editions 2013 to 2021 of the handbook.
         *
         * @param beam tau b, in [0, 3]
         * @param diffuse tau d, in [0, 6]
         * @return this
         * @throws IllegalArgumentException if a depth is NaN or outside its range
         */
        public Builder opticalDepths(double beam, double diffuse) {
            return opticalDepths(ClearSky.Edition.FUNDAMENTALS_2013_TO_2021, beam, diffuse);
        }

        /**
         * Clear-sky optical depths of a named edition; depths and exponents must be of one edition.
         *
         * @param ofEdition edition that printed them
         * @param beam tau b, in [0, 3]
         * @param diffuse tau d, in [0, 6]
         * @return this
         * @throws IllegalArgumentException if a depth is NaN or outside its range
         */
        public Builder opticalDepths(ClearSky.Edition ofEdition, double beam, double diffuse) {
            edition = Objects.requireNonNull(ofEdition, "edition");
            Range.require("beam optical depth", beam, 0, 3, "-");
            Range.require("diffuse optical depth", diffuse, 0, 6, "-");
            taub = beam;
            taud = diffuse;
            hottel = null;
            dark = false;
            return this;
        }

        /**
         * Clear sky by Hottel's correlation, for places without published depths below 2,500 m.
         *
         * @param climate climate class
         * @return this
         */
        public Builder hottelSky(ClearSky.HottelClimate climate) {
            hottel = Objects.requireNonNull(climate, "climate");
            edition = null;
            dark = false;
            return this;
        }

        /**
         * No sun at all: for studies of conduction alone.
         *
         * @return this
         */
        public Builder withoutSun() {
            dark = true;
            edition = null;
            hottel = null;
            return this;
        }

        /**
         * Wind speed at the station, the same all day; 3.4 m/s if not given.
         *
         * @param value in [0, 60] m/s
         * @return this
         * @throws IllegalArgumentException if the value is not finite or outside its range
         */
        public Builder wind(Quantity<Speed> value) {
            wind = Si.metresPerSecond(value, "wind speed");
            Range.require("wind speed", wind, 0, 60, "m/s");
            return this;
        }

        /**
         * How the sun's place is found; the NREL algorithm if not given.
         *
         * @param value method
         * @return this
         */
        public Builder sunMethod(DesignDays.SunMethod value) {
            method = Objects.requireNonNull(value, "sun method");
            return this;
        }

        /**
         * Works the day out.
         *
         * @return the day
         * @throws IllegalArgumentException if something needed is missing or cannot be: no date, no
         *     temperatures, no moisture, no sky, a wet bulb above the dry bulb
         */
        public CoolingDesignDay build() {
            require(date != null, "date");
            require(given != null || !Double.isNaN(dryBulb), "design dry bulb");
            require(given != null || !Double.isNaN(range), "daily range");
            require(
                    !Double.isNaN(wetBulb) || !Double.isNaN(humidityRatio),
                    "coincident wet bulb or humidity ratio");
            require(edition != null || hottel != null || dark, "sky (optical depths)");
            Builder copy = new Builder(this, site);
            return new CoolingDesignDay(copy, copy.hours());
        }

        private static void require(boolean there, String what) {
            if (!there) {
                throw new IllegalArgumentException("cooling design day has no " + what);
            }
        }

        private OutdoorHours hours() {
            int zone = site.zone().getTotalSeconds();
            double[] dryBulbs = new double[24];
            if (given != null) {
                System.arraycopy(given, 0, dryBulbs, 0, 24);
            } else {
                DesignDays.dryBulbs(
                        profile,
                        solarTime,
                        dryBulb,
                        range,
                        date.getDayOfYear(),
                        site.longitudeRadians(),
                        zone,
                        dryBulbs);
            }
            double[] moisture = new double[24];
            double pressure = site.pascals();
            if (Double.isNaN(humidityRatio) && !Double.isNaN(wetBulbRange)) {
                DesignDays.wetBulbHumidity(
                        profile, dryBulbs, wetBulb, wetBulbRange, pressure, moisture);
            } else {
                double kept = humidityRatio;
                if (Double.isNaN(kept)) {
                    double highest = dryBulbs[0];
                    for (double t : dryBulbs) {
                        highest = Math.max(highest, t);
                    }
                    if (!(wetBulb <= highest)) {
                        throw new IllegalArgumentException(
                                "coincident wet bulb is "
                                        + wetBulb
                                        + " K, but must not be above the design dry bulb, "
                                        + highest
                                        + " K");
                    }
                    kept = IdealMoistAir.humidityRatioFromWetBulb(highest, wetBulb, pressure);
                }
                DesignDays.constantHumidity(dryBulbs, kept, pressure, moisture);
            }
            double[] altitude = new double[24];
            double[] azimuth = new double[24];
            DesignDays.sunPositions(
                    method,
                    date,
                    zone,
                    site.latitudeRadians(),
                    site.longitudeRadians(),
                    site.elevationMetres(),
                    altitude,
                    azimuth);
            double[] beam = new double[24];
            double[] diffuse = new double[24];
            double above = Sun.extraterrestrialNormal(date.getDayOfYear());
            if (edition != null) {
                DesignDays.clearSky(edition, above, taub, taud, altitude, beam, diffuse);
            } else if (hottel != null) {
                DesignDays.hottelSky(
                        hottel, above, site.elevationMetres(), altitude, beam, diffuse);
            }
            if (!site.horizon().isLevel()) {
                DesignDays.maskHorizon(
                        site.horizon().azimuths(),
                        site.horizon().altitudes(),
                        altitude,
                        azimuth,
                        beam);
            }
            double[] winds = new double[24];
            Arrays.fill(winds, wind);
            return new OutdoorHours(
                    true,
                    0,
                    dryBulbs,
                    moisture,
                    winds,
                    altitude,
                    azimuth,
                    beam,
                    diffuse,
                    pressure,
                    site.groundKelvins().orElse(Double.NaN),
                    site.reflectance());
        }
    }
}
