package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/** The domain that every moist-air function of this package shares, checked in one wording. */
final class Domain {

    /** 0 degC in K. */
    static final double ICE_POINT = 273.15;

    static final double LOWEST_TEMPERATURE = 173.15;
    static final double HIGHEST_TEMPERATURE = 473.15;
    static final double LOWEST_PRESSURE = 20_000;
    static final double HIGHEST_PRESSURE = 200_000;
    static final double HIGHEST_HUMIDITY_RATIO = 10;

    private static final double ROUNDING = 1e-9;

    private Domain() {}

    static void dryBulb(double value) {
        Range.require("dry bulb", value, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K");
    }

    static void pressure(double value) {
        Range.require("air pressure", value, LOWEST_PRESSURE, HIGHEST_PRESSURE, "Pa");
    }

    static void humidityRatio(double value) {
        Range.require("humidity ratio", value, 0, HIGHEST_HUMIDITY_RATIO, "kg/kg");
    }

    /** A dry bulb that was computed: rounding at the ends of the domain is not an error. */
    static double dryBulbFound(double value) {
        Range.require(
                "dry bulb from enthalpy and humidity ratio",
                value,
                LOWEST_TEMPERATURE - ROUNDING,
                HIGHEST_TEMPERATURE + ROUNDING,
                "K");
        return Math.min(Math.max(value, LOWEST_TEMPERATURE), HIGHEST_TEMPERATURE);
    }
}
