package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;

/**
 * The standard atmosphere from 5 km below sea level to 20 km: the troposphere with its constant
 * lapse rate, and the isothermal layer above 11 km.
 *
 * <p>Altitude here is <em>geopotential</em> unless a name says geometric: handbooks for buildings
 * use their elevations so, and the difference is 0.05 percent of pressure at 5000 m.
 *
 * <p>Source: U.S. Standard Atmosphere, 1976 (identical with ICAO's up to 32 km): p0 = 101325 Pa, T0
 * = 288.15 K, L = 0.0065 K/m, g = 9.80665 m/s2, M = 28.9644 kg/kmol, R = 8314.32 J/(kmol K).
 * Accuracy: formulas exact for the model, rounding below 1e-14. The day's weather moves real
 * pressure away from it; a station reading always comes first. All functions are pure and
 * allocation-free.
 */
public final class StandardAtmosphere {

    /** Sea-level pressure, Pa. */
    public static final double SEA_LEVEL_PRESSURE = 101_325.0;

    /** Sea-level temperature, K. */
    public static final double SEA_LEVEL_TEMPERATURE = 288.15;

    /** Lowest altitude, geopotential, m. */
    public static final double LOWEST = -5_000.0;

    /** Highest altitude, geopotential, m. */
    public static final double HIGHEST = 20_000.0;

    /** Exponent g M/(R L) of the troposphere's pressure, 5.255876... */
    public static final double EXPONENT = 9.80665 * 28.9644 / (8314.32 * 0.0065);

    private static final double LAPSE_RATE = 0.0065; // K/m
    private static final double TROPOPAUSE = 11_000.0; // m
    private static final double TROPOPAUSE_TEMPERATURE =
            SEA_LEVEL_TEMPERATURE - LAPSE_RATE * TROPOPAUSE;
    private static final double GRAVITY = 9.80665; // m/s2
    private static final double GAS_CONSTANT = 8314.32 / 28.9644; // J/(kg K)
    private static final double SCALE_HEIGHT = GAS_CONSTANT * TROPOPAUSE_TEMPERATURE / GRAVITY;
    private static final double TROPOPAUSE_PRESSURE =
            SEA_LEVEL_PRESSURE * Math.pow(TROPOPAUSE_TEMPERATURE / SEA_LEVEL_TEMPERATURE, EXPONENT);
    private static final double EARTH_RADIUS = 6_356_766.0; // m, of the geopotential relation

    private StandardAtmosphere() {}

    /**
     * Temperature: <var>T</var> = T0 - L <var>H</var> up to 11 km, 216.65 K above.
     *
     * @param altitude geopotential altitude, m, in [-5000, 20000]
     * @return temperature, K
     * @throws IllegalArgumentException if altitude is NaN or outside that range
     */
    public static double temperature(double altitude) {
        requireAltitude(altitude);
        return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * Math.min(altitude, TROPOPAUSE);
    }

    /**
     * Pressure: <var>p</var> = p0 (<var>T</var>/T0)<sup>gM/(RL)</sup> with gM/(RL) = 5.255876 up to
     * 11 km; above, <var>p</var> = p11 exp(-g (<var>H</var> - 11 km)/(R T11/M)).
     *
     * @param altitude geopotential altitude, m, in [-5000, 20000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if altitude is NaN or outside that range
     */
    public static double pressure(double altitude) {
        requireAltitude(altitude);
        if (altitude > TROPOPAUSE) {
            return TROPOPAUSE_PRESSURE * Math.exp((TROPOPAUSE - altitude) / SCALE_HEIGHT);
        }
        return SEA_LEVEL_PRESSURE
                * Math.pow(1.0 - LAPSE_RATE / SEA_LEVEL_TEMPERATURE * altitude, EXPONENT);
    }

    /**
     * Pressure in the troposphere only, where buildings are: as {@link #pressure}, but an elevation
     * above 11 km is refused as a slip of the pen.
     *
     * @param elevation elevation (geopotential), m, in [-5000, 11000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if elevation is NaN or outside that range
     */
    public static double troposphericPressure(double elevation) {
        Range.require("elevation", elevation, LOWEST, TROPOPAUSE, "m");
        return pressure(elevation);
    }

    /**
     * Density of dry air: <var>p</var> M/(R <var>T</var>).
     *
     * @param altitude geopotential altitude, m, in [-5000, 20000]
     * @return density, kg/m3
     * @throws IllegalArgumentException if altitude is NaN or outside that range
     */
    public static double density(double altitude) {
        return pressure(altitude) / (GAS_CONSTANT * temperature(altitude));
    }

    /**
     * The altitude at which the standard atmosphere has a pressure: the inverse of {@link
     * #pressure}, exact (no iteration). For a station reading this is its pressure altitude.
     *
     * @param pressure pressure, Pa, in [5474.8, 177700], the pressures at 20 km and -5 km
     * @return geopotential altitude, m
     * @throws IllegalArgumentException if pressure is NaN or outside the range
     */
    public static double altitude(double pressure) {
        Range.require("pressure", pressure, pressure(HIGHEST), pressure(LOWEST), "Pa");
        if (pressure < TROPOPAUSE_PRESSURE) {
            return TROPOPAUSE - SCALE_HEIGHT * Math.log(pressure / TROPOPAUSE_PRESSURE);
        }
        // expm1 keeps all digits near sea level, where 1 - (p/p0)^(1/n) would lose them.
        return -Math.expm1(Math.log(pressure / SEA_LEVEL_PRESSURE) / EXPONENT)
                * (SEA_LEVEL_TEMPERATURE / LAPSE_RATE);
    }

    /**
     * Geopotential from geometric altitude: <var>H</var> = r <var>z</var>/(r + <var>z</var>), r = 6
     * 356 766 m.
     *
     * @param geometric geometric altitude, m, in [-4996, 20063], so that the result can be used
     *     here
     * @return geopotential altitude, m
     * @throws IllegalArgumentException if geometric is NaN or outside the range
     */
    public static double geopotentialFromGeometric(double geometric) {
        Range.require(
                "geometric altitude", geometric, geometricOf(LOWEST), geometricOf(HIGHEST), "m");
        return EARTH_RADIUS * geometric / (EARTH_RADIUS + geometric);
    }

    /**
     * Geometric from geopotential altitude: <var>z</var> = r <var>H</var>/(r - <var>H</var>).
     *
     * @param altitude geopotential altitude, m, in [-5000, 20000]
     * @return geometric altitude, m
     * @throws IllegalArgumentException if altitude is NaN or outside that range
     */
    public static double geometricFromGeopotential(double altitude) {
        requireAltitude(altitude);
        return geometricOf(altitude);
    }

    private static double geometricOf(double altitude) {
        return EARTH_RADIUS * altitude / (EARTH_RADIUS - altitude);
    }

    /**
     * The handbook's closed form for site pressure: 101325 (1 - 2.25577e-5
     * <var>Z</var>)<sup>5.2559</sup>. Agrees with {@link #pressure} within 1 Pa from -5000 to 5000
     * m and within 1.5 Pa up to 11 km.
     *
     * <p>Source: ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, equation (3).
     *
     * @param elevation elevation (geopotential), m, in [-5000, 11000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if elevation is NaN or outside that range
     */
    public static double handbookPressure(double elevation) {
        Range.require("elevation", elevation, LOWEST, TROPOPAUSE, "m");
        return 101_325.0 * Math.pow(1.0 - 2.25577e-5 * elevation, 5.2559);
    }

    /**
     * Station pressure from an altimeter setting, which weather reports give instead: the pressure
     * at which an altimeter set to it reads the station's elevation, <var>p</var><sup>k</sup> =
     * <var>A</var><sup>k</sup> - p0<sup>k</sup> (L/T0) <var>Z</var>, k = 1/5.255876.
     *
     * <p>Source: definition of the altimeter setting; Smithsonian Meteorological Tables (1951), p.
     * 269, whose relation differs by an offset of 0.3 mb for the height of the instrument. Good for
     * 0.3 hPa plus the rounding of the report.
     *
     * @param altimeterSetting altimeter setting, Pa, in [85000, 110000]
     * @param elevation station elevation (geopotential), m, in [-500, 6000]
     * @return station pressure, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double stationPressure(double altimeterSetting, double elevation) {
        requireSetting(altimeterSetting);
        requireStation(elevation);
        return pressure(elevation + altitude(altimeterSetting));
    }

    /**
     * Altimeter setting from station pressure: the inverse of {@link #stationPressure}.
     *
     * @param stationPressure station pressure, Pa, in [35000, 120000]
     * @param elevation station elevation (geopotential), m, in [-500, 6000]
     * @return altimeter setting, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double altimeterSetting(double stationPressure, double elevation) {
        Range.require("station pressure", stationPressure, 35_000, 120_000, "Pa");
        requireStation(elevation);
        return pressure(altitude(stationPressure) - elevation);
    }

    private static void requireAltitude(double altitude) {
        Range.require("geopotential altitude", altitude, LOWEST, HIGHEST, "m");
    }

    private static void requireSetting(double altimeterSetting) {
        Range.require("altimeter setting", altimeterSetting, 85_000, 110_000, "Pa");
    }

    private static void requireStation(double elevation) {
        Range.require("station elevation", elevation, -500, 6_000, "m");
    }
}
