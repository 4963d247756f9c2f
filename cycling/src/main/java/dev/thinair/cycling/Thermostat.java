package dev.thinair.cycling;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
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

    private final double setpoint;
    private final double differential;
    private final double secondStageDifferential;
    private final double secondStageDelay;
    private final double maximumCycleRate;
    private final double minimumOff;
    private final FanMode fanMode;

    private Thermostat(
            double setpoint,
            double differential,
            double secondStageDifferential,
            double secondStageDelay,
            double maximumCycleRate,
            double minimumOff,
            FanMode fanMode) {
        Range.require("thermostat setpoint", setpoint, 278.15, 313.15, "K");
        Range.require("thermostat differential", differential, 0.01, 5, "K");
        Range.require("second-stage differential", secondStageDifferential, 0, 5, "K");
        Range.require("time to the second stage", secondStageDelay, 60, 86_400, "s");
        Range.require("maximum cycle rate", maximumCycleRate, 0.1, 20, "1/h");
        Range.require("minimum off time", minimumOff, 0, 1800, "s");
        if (fanMode == null) {
            throw new IllegalArgumentException("fan mode is missing");
        }
        this.setpoint = setpoint;
        this.differential = differential;
        this.secondStageDifferential = secondStageDifferential;
        this.secondStageDelay = secondStageDelay;
        this.maximumCycleRate = maximumCycleRate;
        this.minimumOff = minimumOff;
        this.fanMode = fanMode;
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
        return new Thermostat(
                Si.kelvins(setpoint, "thermostat setpoint"),
                1 / 1.8,
                0.5 / 1.8,
                1800,
                3,
                0,
                FanMode.AUTOMATIC);
    }

    /**
     * The same thermostat set elsewhere.
     *
     * @param other the other setpoint, 5 to 40 &deg;C
     * @return the changed thermostat
     * @throws IllegalArgumentException if the setpoint is missing or out of range
     */
    public Thermostat withSetpoint(Quantity<Temperature> other) {
        return new Thermostat(
                Si.kelvins(other, "thermostat setpoint"),
                differential,
                secondStageDifferential,
                secondStageDelay,
                maximumCycleRate,
                minimumOff,
                fanMode);
    }

    /**
     * The same thermostat with another differential.
     *
     * @param other span between switching on and off, 0.01 to 5 K
     * @return the changed thermostat
     * @throws IllegalArgumentException if the differential is missing or out of range
     */
    public Thermostat withDifferential(Quantity<TemperatureDifference> other) {
        return new Thermostat(
                setpoint,
                Si.kelvinDifference(other, "thermostat differential"),
                secondStageDifferential,
                secondStageDelay,
                maximumCycleRate,
                minimumOff,
                fanMode);
    }

    /**
     * The same thermostat with another second-stage differential.
     *
     * @param other how far above the switch-on temperature the second stage comes in, 0 to 5 K
     * @return the changed thermostat
     * @throws IllegalArgumentException if the differential is missing or out of range
     */
    public Thermostat withSecondStageDifferential(Quantity<TemperatureDifference> other) {
        return new Thermostat(
                setpoint,
                differential,
                Si.kelvinDifference(other, "second-stage differential"),
                secondStageDelay,
                maximumCycleRate,
                minimumOff,
                fanMode);
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
        return new Thermostat(
                setpoint,
                differential,
                secondStageDifferential,
                Si.seconds(other, "time to the second stage"),
                maximumCycleRate,
                minimumOff,
                fanMode);
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
        return new Thermostat(
                setpoint,
                differential,
                secondStageDifferential,
                secondStageDelay,
                perHour,
                minimumOff,
                fanMode);
    }

    /**
     * The same thermostat with a compressor delay.
     *
     * @param other shortest time off, 0 to 30 min
     * @return the changed thermostat
     * @throws IllegalArgumentException if the time is missing or out of range
     */
    public Thermostat withMinimumOffTime(Quantity<Time> other) {
        return new Thermostat(
                setpoint,
                differential,
                secondStageDifferential,
                secondStageDelay,
                maximumCycleRate,
                Si.seconds(other, "minimum off time"),
                fanMode);
    }

    /**
     * The same thermostat with another fan mode.
     *
     * @param other the fan mode
     * @return the changed thermostat
     * @throws IllegalArgumentException if the mode is missing
     */
    public Thermostat withFanMode(FanMode other) {
        return new Thermostat(
                setpoint,
                differential,
                secondStageDifferential,
                secondStageDelay,
                maximumCycleRate,
                minimumOff,
                other);
    }

    /**
     * The setpoint.
     *
     * @return the temperature
     */
    public Quantity<Temperature> setpoint() {
        return Units.kelvins(setpoint);
    }

    /**
     * The differential.
     *
     * @return span between switching on and off
     */
    public Quantity<TemperatureDifference> differential() {
        return Units.kelvinDifference(differential);
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
        return maximumCycleRate;
    }

    /**
     * The setpoint for kernel calls.
     *
     * @return temperature, K
     */
    public double setpointKelvin() {
        return setpoint;
    }

    /**
     * The differential for kernel calls.
     *
     * @return difference, K
     */
    public double differentialKelvin() {
        return differential;
    }

    /**
     * The second-stage differential for kernel calls.
     *
     * @return difference, K, above the switch-on temperature
     */
    public double secondStageDifferentialKelvin() {
        return secondStageDifferential;
    }

    /**
     * The time to the second stage.
     *
     * @return time at the first stage, s
     */
    public double secondStageDelaySeconds() {
        return secondStageDelay;
    }

    /**
     * The shortest time off.
     *
     * @return time, s
     */
    public double minimumOffSeconds() {
        return minimumOff;
    }

    /**
     * Where cooling switches on.
     *
     * @return setpoint plus half the differential, K
     */
    public double switchOnKelvin() {
        return setpoint + 0.5 * differential;
    }

    /**
     * Where cooling switches off.
     *
     * @return setpoint less half the differential, K
     */
    public double switchOffKelvin() {
        return setpoint - 0.5 * differential;
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
                && setpoint == t.setpoint
                && differential == t.differential
                && secondStageDifferential == t.secondStageDifferential
                && secondStageDelay == t.secondStageDelay
                && maximumCycleRate == t.maximumCycleRate
                && minimumOff == t.minimumOff
                && fanMode == t.fanMode;
    }

    /**
     * Hash of the settings.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return java.util.Objects.hash(
                setpoint,
                differential,
                secondStageDifferential,
                secondStageDelay,
                maximumCycleRate,
                minimumOff,
                fanMode);
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
                setpoint - 273.15,
                setpoint * 1.8 - 459.67,
                differential,
                fanMode == FanMode.AUTOMATIC ? "automatic" : "continuous");
    }
}
