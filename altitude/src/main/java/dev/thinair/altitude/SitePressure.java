package dev.thinair.altitude;

import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;

/**
 * Absolute air pressure at a place, and where it was taken from.
 *
 * <p>A reading at the place is best ({@link #ofStation}); the standard atmosphere at its elevation
 * ({@link #standardAt}) is what handbooks design with. An altimeter setting from a weather report
 * is <em>not</em> a station pressure: 29.92 inHg reported at 7200 ft stands for about 22.9 inHg
 * ({@link #ofAltimeterSetting}). Immutable.
 */
public final class SitePressure {

    private static final String STANDARD_SOURCE = "U.S. Standard Atmosphere, 1976";

    private enum Origin {
        STANDARD,
        HANDBOOK,
        STATION,
        ALTIMETER
    }

    private final Origin origin;
    private final double pascals;

    /** Elevation in m, where the origin has one. */
    private final double elevation;

    /** Altimeter setting in Pa, where the origin is one. */
    private final double setting;

    /** What the caller gave, in the caller's unit, for printing first. */
    private final Quantity<?> given;

    private SitePressure(
            Origin origin, double pascals, double elevation, double setting, Quantity<?> given) {
        this.given = given;
        this.origin = origin;
        this.pascals = pascals;
        this.elevation = elevation;
        this.setting = setting;
    }

    /**
     * The standard atmosphere's pressure at an elevation, taken as geopotential altitude.
     *
     * @param elevation above sea level, in [-5000, 11000] m
     * @return the pressure; {@link StandardAtmosphere#pressure}
     * @throws NullPointerException if elevation is null
     * @throws IllegalArgumentException if elevation is out of range
     */
    public static SitePressure standardAt(Quantity<Length> elevation) {
        double h = Si.metres(elevation, "elevation");
        return new SitePressure(
                Origin.STANDARD,
                StandardAtmosphere.troposphericPressure(h),
                h,
                Double.NaN,
                elevation);
    }

    /**
     * The handbook's closed form at an elevation, within 1.5 Pa of {@link #standardAt}.
     *
     * @param elevation above sea level, in [-5000, 11000] m
     * @return the pressure; {@link StandardAtmosphere#handbookPressure}
     * @throws NullPointerException if elevation is null
     * @throws IllegalArgumentException if elevation is out of range
     */
    public static SitePressure handbookAt(Quantity<Length> elevation) {
        double h = Si.metres(elevation, "elevation");
        return new SitePressure(
                Origin.HANDBOOK, StandardAtmosphere.handbookPressure(h), h, Double.NaN, elevation);
    }

    /**
     * A pressure read at the place.
     *
     * @param stationPressure absolute pressure, in [20000, 120000] Pa
     * @return the pressure
     * @throws NullPointerException if the pressure is null
     * @throws IllegalArgumentException if the pressure is out of range
     */
    public static SitePressure ofStation(Quantity<Pressure> stationPressure) {
        double p = Si.pascals(stationPressure, "station pressure");
        Range.require("station pressure", p, 20_000, 120_000, "Pa");
        return new SitePressure(Origin.STATION, p, Double.NaN, Double.NaN, stationPressure);
    }

    /**
     * The station pressure behind an altimeter setting.
     *
     * @param altimeterSetting the report's sea-level figure, in [85000, 110000] Pa
     * @param elevation elevation of the station, in [-500, 6000] m
     * @return the station pressure; {@link StandardAtmosphere#stationPressure}
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static SitePressure ofAltimeterSetting(
            Quantity<Pressure> altimeterSetting, Quantity<Length> elevation) {
        double a = Si.pascals(altimeterSetting, "altimeter setting");
        double z = Si.metres(elevation, "station elevation");
        return new SitePressure(
                Origin.ALTIMETER, StandardAtmosphere.stationPressure(a, z), z, a, altimeterSetting);
    }

    /**
     * The absolute pressure.
     *
     * @return pressure in Pa
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(pascals);
    }

    /**
     * The same value for kernel calls.
     *
     * @return pressure, Pa
     */
    public double pascals() {
        return pascals;
    }

    /**
     * The altitude at which the standard atmosphere has this pressure.
     *
     * @return geopotential altitude
     */
    public Quantity<Length> pressureAltitude() {
        return Units.metres(StandardAtmosphere.altitude(pascals));
    }

    /**
     * Pressure over 101325 Pa, which is the density ratio at constant temperature.
     *
     * @return ratio
     */
    public Quantity<Dimensionless> ratioToSeaLevel() {
        return Units.ratio(AirDensity.ratioAtConstantTemperature(pascals));
    }

    /**
     * The steps behind the pressure; the last is {@link #pressure}.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder builder = Working.titled("Site pressure");
        switch (origin) {
            case STANDARD ->
                    builder.given("H", "elevation (geopotential)", Units.metres(elevation))
                            .step(
                                    "temperature of the standard atmosphere",
                                    "T = 288.15 - 0.0065 H",
                                    Units.kelvins(StandardAtmosphere.temperature(elevation)),
                                    STANDARD_SOURCE)
                            .step(
                                    "pressure of the standard atmosphere",
                                    "p = 101325 (T / 288.15)^(9.80665 28.9644 / (8314.32 0.0065))",
                                    pressure(),
                                    STANDARD_SOURCE)
                            .note(
                                    "Weather moves real pressure by a few percent; a reading at the"
                                            + " place comes first (size from memory).");
            case HANDBOOK ->
                    builder.given("Z", "elevation", Units.metres(elevation))
                            .step(
                                    "site pressure",
                                    "p = 101325 (1 - 2.25577e-5 Z)^5.2559",
                                    pressure(),
                                    "ASHRAE Handbook - Fundamentals 2021 (SI), ch. 1, eq. (3)");
            case STATION ->
                    builder.stepInWords(
                            "p",
                            "station pressure",
                            "read at the place",
                            List.of(),
                            pressure(),
                            "measurement");
            case ALTIMETER ->
                    builder.given("A", "altimeter setting", Units.pascals(setting))
                            .given("Z", "station elevation", Units.metres(elevation))
                            .step(
                                    "exponent of the standard atmosphere",
                                    "n = 9.80665 28.9644 / (8314.32 0.0065)",
                                    Units.ratio(StandardAtmosphere.EXPONENT),
                                    STANDARD_SOURCE)
                            .step(
                                    "station pressure",
                                    "p = 101325 ((A / 101325)^(1 / n) - 0.0065 Z / 288.15)^n",
                                    pressure(),
                                    "definition of the altimeter setting; Smithsonian Meteorological"
                                            + " Tables (1951), p. 269, without its 0.3 mb offset");
        }
        return builder.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SitePressure that
                && Double.compare(pascals, that.pascals) == 0
                && origin == that.origin
                && Double.compare(elevation, that.elevation) == 0
                && Double.compare(setting, that.setting) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(pascals);
    }

    @Override
    public String toString() {
        String shown = QuantityText.formatBoth(given, 5);
        String kilopascals = QuantityText.formatBoth(Units.kilopascals(pascals / 1000), 5);
        return switch (origin) {
            case STANDARD, HANDBOOK -> "site pressure " + kilopascals + ", standard at " + shown;
            case STATION -> "site pressure " + shown + ", station reading";
            case ALTIMETER ->
                    "site pressure " + kilopascals + ", from an altimeter setting of " + shown;
        };
    }
}
