package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Heating capacity and power of an air-source heat pump from its rating points, by the lines of the
 * rating procedure, with the effect of thin air on the outdoor coil.
 *
 * <p>At rated density capacity and power follow {@link SeasonalRatings#heatingLine}. In thinner air
 * the outdoor fan moves less mass: the outdoor coil's conductance falls to <code>g = x (1 - exp(-N
 * x<sup>-1/2</sup>)) / (1 - exp(-N))</code> with <var>x</var> the density ratio and <var>N</var> =
 * 1.2 (effectiveness 0.70). To take up the same heat the refrigerant must be colder by what the
 * coil lost, so the machine sees the outdoor temperature <code>To - (1/g - 1) D q</code>, with
 * <var>D </var> the difference between outdoor air and refrigerant at 47 &deg;F and <var>q</var>
 * the capacity relative to 47 &deg;F. That shift, N and D are this model's assumptions; rated
 * values are reproduced exactly at rated density. Indoor airflow is taken as rated.
 */
public final class HeatPumpModel {

    /** Outdoor air less evaporating refrigerant at 47 &deg;F, K. This model's assumption. */
    public static final double OUTDOOR_DIFFERENCE = 8;

    private static final double UNITS = 1.2;
    private static final double RATED_PRESSURE = 101_325;

    private HeatPumpModel() {}

    /**
     * Value at 35 &deg;F when it was not tested: <code>0.90 (Q17 + 0.6 (Q47 - Q17))</code> for
     * capacity.
     *
     * <p>Source: 10 CFR 430 subpart B appendix M section 4.2, from memory.
     *
     * @param capacity47 capacity at 47 &deg;F, W
     * @param capacity17 capacity at 17 &deg;F, W
     * @return capacity at 35 &deg;F, W
     */
    public static double defaultCapacity35(double capacity47, double capacity17) {
        return 0.90 * (capacity17 + 0.6 * (capacity47 - capacity17));
    }

    /**
     * Value at 35 &deg;F when it was not tested: <code>0.985 (P17 + 0.6 (P47 - P17))</code> for
     * power.
     *
     * <p>Source: 10 CFR 430 subpart B appendix M section 4.2, from memory.
     *
     * @param power47 power at 47 &deg;F, W
     * @param power17 power at 17 &deg;F, W
     * @return power at 35 &deg;F, W
     */
    public static double defaultPower35(double power47, double power17) {
        return 0.985 * (power17 + 0.6 * (power47 - power17));
    }

    /**
     * Outdoor temperature that the machine sees in thin air.
     *
     * @param outdoor outdoor temperature, K, in [223.15, 303.15]
     * @param pressure air pressure at the site, Pa, in [50000, 110000]
     * @param capacityRatio capacity at that temperature over capacity at 47 &deg;F, in [0, 2]
     * @return temperature, K; the outdoor temperature at sea level
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double seenOutdoor(double outdoor, double pressure, double capacityRatio) {
        Range.require("outdoor temperature", outdoor, 223.15, 303.15, "K");
        Range.require("pressure", pressure, 50_000, 110_000, "Pa");
        Range.require("capacity ratio", capacityRatio, 0, 2, "1");
        double x = pressure / RATED_PRESSURE;
        double g = x * Math.expm1(-UNITS / Math.sqrt(x)) / Math.expm1(-UNITS);
        return outdoor - (1 / g - 1) * OUTDOOR_DIFFERENCE * capacityRatio;
    }

    /**
     * Capacity or power at an outdoor temperature and pressure.
     *
     * @param outdoor outdoor temperature, K, in [223.15, 303.15]
     * @param pressure air pressure at the site, Pa, in [50000, 110000]
     * @param at47 value at 47 &deg;F, above 0
     * @param at35 value at 35 &deg;F, above 0
     * @param at17 value at 17 &deg;F, above 0
     * @param capacity47 capacity at 47 &deg;F, W, above 0
     * @param capacity35 capacity at 35 &deg;F, W, above 0
     * @param capacity17 capacity at 17 &deg;F, W, above 0
     * @return value in the unit of the first three, not below 0
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double value(
            double outdoor,
            double pressure,
            double at47,
            double at35,
            double at17,
            double capacity47,
            double capacity35,
            double capacity17) {
        Range.requireAbove("capacity at 47 degF", capacity47, 0, "W");
        Range.requireAbove("capacity at 35 degF", capacity35, 0, "W");
        Range.requireAbove("capacity at 17 degF", capacity17, 0, "W");
        double capacity = SeasonalRatings.heatingLine(outdoor, capacity47, capacity35, capacity17);
        double ratio = Math.max(0, Math.min(2, capacity / capacity47));
        double seen = seenOutdoor(outdoor, pressure, ratio);
        return Math.max(0, SeasonalRatings.heatingLine(seen, at47, at35, at17));
    }
}
