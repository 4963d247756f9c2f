package dev.thinair.loads;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * Where a house stands: latitude (north positive), longitude (east positive), offset of local
 * standard time (never daylight saving), elevation, pressure, ground reflectance, skyline and, for
 * houses in contact with the ground, its undisturbed temperature. Immutable.
 */
public final class Site {

    /** Ground reflectance of the handbook's examples: 0.2 (Fundamentals 2021, ch. 14, Table 5). */
    public static final double USUAL_GROUND_REFLECTANCE = 0.2;

    private final String name;
    private final double latitude;
    private final double longitude;
    private final ZoneOffset zone;
    private final double elevation;
    private final double pressure;
    private final double reflectance;
    private final Horizon horizon;
    private final double groundTemperature;

    private Site(
            String name,
            double latitude,
            double longitude,
            ZoneOffset zone,
            double elevation,
            double pressure,
            double reflectance,
            Horizon horizon,
            double groundTemperature) {
        this.name = name;
        this.latitude = latitude;
        this.longitude = longitude;
        this.zone = zone;
        this.elevation = elevation;
        this.pressure = pressure;
        this.reflectance = reflectance;
        this.horizon = horizon;
        this.groundTemperature = groundTemperature;
    }

    /**
     * A site in the standard atmosphere, with ground of reflectance 0.2 and a level horizon.
     *
     * @param name what reports call it
     * @param latitude north positive, in [-90, 90] degrees
     * @param longitude east positive, in [-180, 180] degrees
     * @param zone offset of local standard time from UTC
     * @param elevation above sea level, in [-500, 6000] m
     * @return the site
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Site of(
            String name,
            Quantity<Angle> latitude,
            Quantity<Angle> longitude,
            ZoneOffset zone,
            Quantity<Length> elevation) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(zone, "zone");
        double lat = Si.radians(latitude, "latitude");
        double lon = Si.radians(longitude, "longitude");
        double z = Si.metres(elevation, "elevation");
        Range.require("latitude", Math.toDegrees(lat), -90, 90, "deg");
        Range.require("longitude", Math.toDegrees(lon), -180, 180, "deg");
        Range.require("elevation", z, -500, 6_000, "m");
        // Degrees come back from radians with a rounding error that must not pass the pole.
        return new Site(
                name,
                Math.max(-Math.PI / 2, Math.min(Math.PI / 2, lat)),
                Math.max(-Math.PI, Math.min(Math.PI, lon)),
                zone,
                z,
                StandardAtmosphere.pressure(z),
                USUAL_GROUND_REFLECTANCE,
                Horizon.level(),
                Double.NaN);
    }

    /**
     * The same site with another ground reflectance (fresh snow about 0.7, grass 0.2; Fundamentals
     * 2021, ch. 14, Table 5).
     *
     * @param value in [0, 1]
     * @return a new site
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public Site withGroundReflectance(Quantity<Dimensionless> value) {
        double rho = Si.ratio(value, "ground reflectance");
        Range.require("ground reflectance", rho, 0, 1, "-");
        return new Site(
                name,
                latitude,
                longitude,
                zone,
                elevation,
                pressure,
                rho,
                horizon,
                groundTemperature);
    }

    /**
     * The same site with a measured station pressure instead of the standard atmosphere's. An
     * altimeter setting is not a station pressure.
     *
     * @param value in [30, 110] kPa
     * @return a new site
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public Site withPressure(Quantity<Pressure> value) {
        double p = Si.pascals(value, "station pressure");
        Range.require("station pressure", p, 30_000, 110_000, "Pa");
        return new Site(
                name,
                latitude,
                longitude,
                zone,
                elevation,
                p,
                reflectance,
                horizon,
                groundTemperature);
    }

    /**
     * The same site lifted or lowered to another elevation, at the standard pressure there.
     *
     * @param value in [-500, 6000] m
     * @return a new site
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public Site withElevation(Quantity<Length> value) {
        double z = Si.metres(value, "elevation");
        Range.require("elevation", z, -500, 6_000, "m");
        return new Site(
                name,
                latitude,
                longitude,
                zone,
                z,
                StandardAtmosphere.pressure(z),
                reflectance,
                horizon,
                groundTemperature);
    }

    /**
     * The same site with a skyline.
     *
     * @param value skyline
     * @return a new site
     */
    public Site withHorizon(Horizon value) {
        Objects.requireNonNull(value, "horizon");
        return new Site(
                name,
                latitude,
                longitude,
                zone,
                elevation,
                pressure,
                reflectance,
                value,
                groundTemperature);
    }

    /**
     * The same site with the temperature of its undisturbed ground, near the annual mean of the
     * air. Needed only by houses in contact with the ground.
     *
     * @param value in [230, 320] K
     * @return a new site
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public Site withGroundTemperature(Quantity<Temperature> value) {
        double t = Si.kelvins(value, "ground temperature");
        Range.require("ground temperature", t, 230, 320, "K");
        return new Site(
                name, latitude, longitude, zone, elevation, pressure, reflectance, horizon, t);
    }

    /**
     * What reports call the site.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Latitude, north positive.
     *
     * @return latitude
     */
    public Quantity<Angle> latitude() {
        return Units.degrees(Math.toDegrees(latitude));
    }

    /**
     * Longitude, east positive.
     *
     * @return longitude
     */
    public Quantity<Angle> longitude() {
        return Units.degrees(Math.toDegrees(longitude));
    }

    /**
     * Offset of local standard time from UTC.
     *
     * @return offset
     */
    public ZoneOffset zone() {
        return zone;
    }

    /**
     * Elevation above sea level.
     *
     * @return elevation
     */
    public Quantity<Length> elevation() {
        return Units.metres(elevation);
    }

    /**
     * Station pressure.
     *
     * @return pressure
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(pressure);
    }

    /**
     * Ground reflectance.
     *
     * @return share of the irradiance on the ground
     */
    public Quantity<Dimensionless> groundReflectance() {
        return Units.ratio(reflectance);
    }

    /**
     * Skyline.
     *
     * @return horizon
     */
    public Horizon horizon() {
        return horizon;
    }

    /**
     * Latitude for kernel calls.
     *
     * @return rad
     */
    public double latitudeRadians() {
        return latitude;
    }

    /**
     * Longitude for kernel calls.
     *
     * @return rad, east positive
     */
    public double longitudeRadians() {
        return longitude;
    }

    /**
     * Elevation for kernel calls.
     *
     * @return m
     */
    public double elevationMetres() {
        return elevation;
    }

    /**
     * Station pressure for kernel calls.
     *
     * @return Pa
     */
    public double pascals() {
        return pressure;
    }

    /**
     * Ground reflectance for kernel calls.
     *
     * @return 0 to 1
     */
    public double reflectance() {
        return reflectance;
    }

    /**
     * Undisturbed ground temperature for kernel calls, if it was given.
     *
     * @return K, or nothing
     */
    public OptionalDouble groundKelvins() {
        return Double.isNaN(groundTemperature)
                ? OptionalDouble.empty()
                : OptionalDouble.of(groundTemperature);
    }

    /**
     * Whether and when the sun rises on a day, on a level horizon, by the NREL algorithm.
     *
     * @param date local calendar day
     * @return one of three cases
     */
    public Daylight daylight(LocalDate date) {
        double[] seconds = new double[2];
        int outcome =
                Sun.daylight(
                        date,
                        zone.getTotalSeconds(),
                        latitude,
                        longitude,
                        Sun.deltaT(date),
                        seconds);
        if (outcome > 0) {
            return new Daylight.UpAllDay();
        }
        if (outcome < 0) {
            return new Daylight.DownAllDay();
        }
        return new Daylight.RisesAndSets(timeOfDay(seconds[0]), timeOfDay(seconds[1]));
    }

    private static LocalTime timeOfDay(double seconds) {
        return LocalTime.ofSecondOfDay(Math.floorMod(Math.round(seconds), 86_400L));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Site that
                && name.equals(that.name)
                && latitude == that.latitude
                && longitude == that.longitude
                && zone.equals(that.zone)
                && elevation == that.elevation
                && pressure == that.pressure
                && reflectance == that.reflectance
                && horizon.equals(that.horizon)
                && Double.compare(groundTemperature, that.groundTemperature) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                name,
                latitude,
                longitude,
                zone,
                elevation,
                pressure,
                reflectance,
                horizon,
                groundTemperature);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s (%.2f°%s, %.2f°%s, %.0f m, %.2f kPa)",
                name,
                Math.abs(Math.toDegrees(latitude)),
                latitude < 0 ? "S" : "N",
                Math.abs(Math.toDegrees(longitude)),
                longitude < 0 ? "W" : "E",
                elevation,
                pressure / 1_000);
    }
}
