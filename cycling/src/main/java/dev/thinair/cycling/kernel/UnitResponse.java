package dev.thinair.cycling.kernel;

/**
 * What the installed unit does at a moment: the border between the event engine and the steady
 * balance of coil and compressor.
 *
 * <p>Implementations must be deterministic, allocate nothing and be safe to call from one thread at
 * a time. They throw {@link IllegalArgumentException} or {@link ArithmeticException} when there is
 * no such state; the engine passes that on.
 */
public interface UnitResponse {

    /** Index of the heat taken from the rooms, fan heat and duct losses allowed for, W. */
    int SENSIBLE = 0;

    /** Index of the water taken from the rooms, kg/s; below 0 if leaky ducts bring in more. */
    int MOISTURE = 1;

    /**
     * Index of the change of {@link #MOISTURE} with the rooms' humidity ratio, kg/s per kg/kg, at
     * least 0. It keeps the moisture balance stable over an hour; 0 is allowed.
     */
    int MOISTURE_SLOPE = 2;

    /** Index of the electrical power of everything that runs with the compressor, W. */
    int POWER = 3;

    /** Index of the temperature of the coil's surface, K. */
    int COIL = 4;

    /** Index of the saturated suction temperature, K. */
    int SUCTION = 5;

    /**
     * Index of the water that condenses on the coil, kg/s, at least 0: what drains or freezes
     * there. It differs from {@link #MOISTURE} wherever ducts leak.
     */
    int CONDENSATE = 6;

    /**
     * Told after each stretch of a run, in order: what a unit with a memory (frost on its coil)
     * keeps account of. A unit without one ignores it, which is the default.
     *
     * @param seconds length of the stretch, above 0, s
     * @param state results that the unit worked with on it once up to capacity, in the order of
     *     this interface, not to be changed or kept; null if the unit was off
     * @param startUpFactor mean share of its capacity that the unit gave on it, below 1 after a
     *     start; the moisture balance takes water from the rooms by the same share; 1 if it was off
     * @param airTemperature mean temperature of the air at the thermostat on it, K
     */
    default void passed(
            double seconds, double[] state, double startUpFactor, double airTemperature) {}

    /** Number of results. */
    int RESULTS = 7;

    /**
     * Steady state of the unit in its place.
     *
     * @param stage compressor stage or speed as a fraction of full displacement, in (0, 1]
     * @param outdoorDryBulb outdoor dry-bulb temperature, K
     * @param outdoorHumidityRatio outdoor humidity ratio, kg/kg
     * @param returnDryBulb dry-bulb temperature of the air drawn from the rooms, K
     * @param returnHumidityRatio humidity ratio of that air, kg/kg
     * @param out receives the results, at least {@link #RESULTS} long
     */
    void at(
            double stage,
            double outdoorDryBulb,
            double outdoorHumidityRatio,
            double returnDryBulb,
            double returnHumidityRatio,
            double[] out);

    /**
     * A unit whose capacity never changes: for closed forms and for class.
     *
     * @param sensible heat taken from the rooms at full stage, W, at least 0; a lower stage takes
     *     its fraction
     * @param power electrical power at full stage, W, at least 0; a lower stage takes its fraction
     * @return the constant unit
     * @throws IllegalArgumentException if one of them is negative or not finite
     */
    static UnitResponse constant(double sensible, double power) {
        dev.thinair.units.Range.require("sensible capacity", sensible, 0, 1e9, "W");
        dev.thinair.units.Range.require("power", power, 0, 1e9, "W");
        return (stage, outdoor, outdoorHumidity, dryBulb, humidityRatio, out) -> {
            out[SENSIBLE] = stage * sensible;
            out[MOISTURE] = 0;
            out[MOISTURE_SLOPE] = 0;
            out[POWER] = stage * power;
            out[COIL] = dryBulb;
            out[SUCTION] = dryBulb;
            out[CONDENSATE] = 0;
        };
    }
}
