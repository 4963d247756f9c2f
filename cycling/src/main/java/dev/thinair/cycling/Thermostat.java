package dev.thinair.cycling;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A cooling thermostat: on above setpoint plus half the differential, off below setpoint less half
 * of it.
 *
 * <p>Immutable.
 */
public final class Thermostat {

    private enum Setting {
        SETPOINT("thermostat setpoint", 278.15, 313.15, "K"),
        DIFFERENTIAL("thermostat differential", 0.01, 5, "K"),
        SECOND_STAGE_DIFFERENTIAL("second-stage differential", 0, 5, "K"),
        SECOND_STAGE_DELAY("time to the second stage", 60, 86_400, "s"),
        CYCLE_RATE("maximum cycle rate", 0.1, 20, "1/h"),
        MINIMUM_OFF("minimum off time", 0, 1800, "s");

        private final String title;
        private final double low;
        private final double high;
        private final String unit;

        Setting(String title, double low, double high, String unit) {
            this.title = title;
            this.low = low;
            this.high = high;
            this.unit = unit;
        }
    }

    private final double[] settings; // in the order of Setting
    private final FanMode fanMode;

    private Thermostat(double[] settings, FanMode fanMode) {
        for (Setting s : Setting.values()) {
            Range.require(s.title, settings[s.ordinal()], s.low, s.high, s.unit);
        }
        if (fanMode == null) {
            throw new IllegalArgumentException("fan mode is missing");
        }
        this.settings = settings;
        this.fanMode = fanMode;
    }

    private double get(Setting setting) {
        return settings[setting.ordinal()];
    }

    private Thermostat with(Setting setting, double value) {
        double[] changed = settings.clone();
        changed[setting.ordinal()] = value;
        return new Thermostat(changed, fanMode);
    }

    /**
     * A thermostat with a differential of 1 &deg;F, at most 3 cycles an hour (NEMA DC 3, from
     * memory), no minimum off time, and the fan on automatic. A two-stage unit gets its second
     * stage half a degree Fahrenheit above the switch-on temperature, or after half an hour at the
     * first (both common practice, no source).
     *
     * @param setpoint the setpoint, 5 to 40 &deg;C
     * @return the thermostat
     * @throws IllegalArgumentException if the setpoint is missing or out of range
     */
    public static Thermostat at(Quantity<Temperature> setpoint) {
        double set = Si.kelvins(setpoint, Setting.SETPOINT.title);
        return new Thermostat(
                new double[] {set, 1 / 1.8, 0.5 / 1.8, 1800, 3, 0}, FanMode.AUTOMATIC);
    }

    /**
     * The same thermostat set elsewhere.
     *
     * @param other the other setpoint, 5 to 40 &deg;C
     * @return the changed thermostat
     * @throws IllegalArgumentException if the setpoint is missing or out of range
     */
    public Thermostat withSetpoint(Quantity<Temperature> other) {
        return with(Setting.SETPOINT, Si.kelvins(other, Setting.SETPOINT.title));
    }

    /**
     * The same thermostat with another differential.
     *
     * @param other span between switching on and off, 0.01 to 5 K
     * @return the changed thermostat
     * @throws IllegalArgumentException if the differential is missing or out of range
     */
    public Thermostat withDifferential(Quantity<TemperatureDifference> other) {
        Setting s = Setting.DIFFERENTIAL;
        return with(s, Si.kelvinDifference(other, s.title));
    }

    /**
     * The same thermostat with another second-stage differential.
     *
     * @param other how far above the switch-on temperature the second stage comes in, 0 to 5 K
     * @return the changed thermostat
     * @throws IllegalArgumentException if the differential is missing or out of range
     */
    public Thermostat withSecondStageDifferential(Quantity<TemperatureDifference> other) {
        Setting s = Setting.SECOND_STAGE_DIFFERENTIAL;
        return with(s, Si.kelvinDifference(other, s.title));
    }

    /**
     * The same thermostat with another time to the second stage: when the first stage has run so
     * long without an end, the second comes in and stays until the thermostat is satisfied.
     *
     * @param other time at the first stage, 1 min to 24 h
     * @return the changed thermostat
     * @throws IllegalArgumentException if the time is missing or out of range
     */
    public Thermostat withSecondStageDelay(Quantity<Time> other) {
        Setting s = Setting.SECOND_STAGE_DELAY;
        return with(s, Si.seconds(other, s.title));
    }

    /**
     * The same thermostat with another cycle rate, used by the part-load closed forms only: in a
     * run the rate follows from the house.
     *
     * @param perHour cycles an hour at half load, 0.1 to 20
     * @return the changed thermostat
     * @throws IllegalArgumentException if the rate is out of range
     */
    public Thermostat withMaximumCycleRate(double perHour) {
        return with(Setting.CYCLE_RATE, perHour);
    }

    /**
     * The same thermostat with a compressor delay.
     *
     * @param other shortest time off, 0 to 30 min
     * @return the changed thermostat
     * @throws IllegalArgumentException if the time is missing or out of range
     */
    public Thermostat withMinimumOffTime(Quantity<Time> other) {
        return with(Setting.MINIMUM_OFF, Si.seconds(other, Setting.MINIMUM_OFF.title));
    }

    /**
     * The same thermostat with another fan mode.
     *
     * @param other the fan mode
     * @return the changed thermostat
     * @throws IllegalArgumentException if the mode is missing
     */
    public Thermostat withFanMode(FanMode other) {
        return new Thermostat(settings, other);
    }

    /**
     * The setpoint.
     *
     * @return the temperature
     */
    public Quantity<Temperature> setpoint() {
        return Units.kelvins(get(Setting.SETPOINT));
    }

    /**
     * The differential.
     *
     * @return span between switching on and off
     */
    public Quantity<TemperatureDifference> differential() {
        return Units.kelvinDifference(get(Setting.DIFFERENTIAL));
    }

    /**
     * The fan mode.
     *
     * @return what the fan does while the compressor is off
     */
    public FanMode fanMode() {
        return fanMode;
    }

    /**
     * Cycles an hour at half load, for the closed forms.
     *
     * @return rate, 1/h
     */
    public double maximumCycleRate() {
        return get(Setting.CYCLE_RATE);
    }

    /**
     * The setpoint for kernel calls.
     *
     * @return temperature, K
     */
    public double setpointKelvin() {
        return get(Setting.SETPOINT);
    }

    /**
     * The differential for kernel calls.
     *
     * @return difference, K
     */
    public double differentialKelvin() {
        return get(Setting.DIFFERENTIAL);
    }

    /**
     * The second-stage differential for kernel calls.
     *
     * @return difference, K, above the switch-on temperature
     */
    public double secondStageDifferentialKelvin() {
        return get(Setting.SECOND_STAGE_DIFFERENTIAL);
    }

    /**
     * The time to the second stage.
     *
     * @return time at the first stage, s
     */
    public double secondStageDelaySeconds() {
        return get(Setting.SECOND_STAGE_DELAY);
    }

    /**
     * The shortest time off.
     *
     * @return time, s
     */
    public double minimumOffSeconds() {
        return get(Setting.MINIMUM_OFF);
    }

    /**
     * Where cooling switches on.
     *
     * @return setpoint plus half the differential, K
     */
    public double switchOnKelvin() {
        return setpointKelvin() + 0.5 * differentialKelvin();
    }

    /**
     * Where cooling switches off.
     *
     * @return setpoint less half the differential, K
     */
    public double switchOffKelvin() {
        return setpointKelvin() - 0.5 * differentialKelvin();
    }

    /**
     * Compares all settings.
     *
     * @param other any object
     * @return true for a thermostat with the same settings
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof Thermostat t
                && Arrays.equals(settings, t.settings)
                && fanMode == t.fanMode;
    }

    /**
     * Hash of the settings.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(settings) + fanMode.hashCode();
    }

    /**
     * For shells.
     *
     * @return setpoint and differential
     */
    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "thermostat at %.1f degC (%.1f degF), differential %.2f K, fan %s",
                setpointKelvin() - 273.15,
                setpointKelvin() * 1.8 - 459.67,
                differentialKelvin(),
                fanMode == FanMode.AUTOMATIC ? "automatic" : "continuous");
    }
}
