package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * How the thermostat and the unit's own control switch: everything the event engine needs beside
 * the house and the weather. Cooling: on when the temperature at the thermostat rises to the
 * setpoint plus half the differential, off when it falls to the setpoint less half the
 * differential.
 *
 * @param setpoint setpoint at the start of each interval, K; a single entry holds for all
 * @param differential distance between switching on and off, K, in (0, 10]
 * @param staging how the unit follows the load
 * @param lowStage displacement fraction of the low stage or of the lowest speed, in (0, 1]; 1 for a
 *     single-stage unit
 * @param secondStageDifferential how far above the switch-on temperature the second stage is
 *     called, K, above 0; it is dropped again at the switch-on temperature (two-stage units only)
 * @param secondStageSeconds time at the low stage after which the second is called whatever the
 *     temperature, and then stays until the unit switches off, s, above 0; infinity for never
 *     (two-stage units only)
 * @param minimumOffSeconds time the unit stays off at least, s, in [0, 3600]
 * @param startUpSeconds time constant of the capacity after a start, s, in [0, 3600]; power is full
 *     from the start
 * @param controlSeconds time between two corrections of a variable speed, s, in [10, 3600]
 * @param refreshSeconds longest time the capacity is held while the unit runs, s, in [1, 86400]
 * @param offPower electrical power while the unit is off, W, at least 0 (a fan that goes on running
 *     included)
 * @param fanHeatOff heat of a fan that goes on running while the unit is off, W, at least 0
 * @param retainedWaterSeconds water the coil can hold, as seconds of its steady condensation, s, at
 *     least 0
 * @param reevaporation rate at which that water evaporates into the rooms at the moment the unit
 *     stops, as a fraction of its steady condensation, at least 0; 0 when the fan stops with the
 *     unit
 */
public record CycleControl(
        double[] setpoint,
        double differential,
        Staging staging,
        double lowStage,
        double secondStageDifferential,
        double secondStageSeconds,
        double minimumOffSeconds,
        double startUpSeconds,
        double controlSeconds,
        double refreshSeconds,
        double offPower,
        double fanHeatOff,
        double retainedWaterSeconds,
        double reevaporation) {

    /** How a unit follows the load. */
    public enum Staging {
        /** On or off. */
        SINGLE,
        /** Off, low or high. */
        TWO,
        /** Off, or any speed from the lowest to full. */
        VARIABLE
    }

    /**
     * Checks every value.
     *
     * @param setpoint as the component
     * @param differential as the component
     * @param staging as the component
     * @param lowStage as the component
     * @param secondStageDifferential as the component
     * @param secondStageSeconds as the component
     * @param minimumOffSeconds as the component
     * @param startUpSeconds as the component
     * @param controlSeconds as the component
     * @param refreshSeconds as the component
     * @param offPower as the component
     * @param fanHeatOff as the component
     * @param retainedWaterSeconds as the component
     * @param reevaporation as the component
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public CycleControl {
        if (setpoint == null || setpoint.length == 0) {
            throw new IllegalArgumentException("setpoint needs at least one value");
        }
        setpoint = setpoint.clone();
        for (double s : setpoint) {
            Range.require("setpoint", s, 230, 350, "K");
        }
        Range.requireAbove("thermostat differential", differential, 0, "K");
        Range.require("thermostat differential", differential, 0, 10, "K");
        if (staging == null) {
            throw new IllegalArgumentException("staging must not be null");
        }
        Range.requireAbove("low stage", lowStage, 0, "");
        Range.require("low stage", lowStage, 0, 1, "");
        Range.requireAbove("second-stage differential", secondStageDifferential, 0, "K");
        if (!(secondStageSeconds > 0)) {
            throw new IllegalArgumentException(
                    "time to the second stage is "
                            + secondStageSeconds
                            + " s, but must be above 0");
        }
        Range.require("minimum off time", minimumOffSeconds, 0, 3600, "s");
        Range.require("start-up time constant", startUpSeconds, 0, 3600, "s");
        Range.require("control interval", controlSeconds, 10, 3600, "s");
        Range.require("refresh interval", refreshSeconds, 1, 86_400, "s");
        Range.require("off-cycle power", offPower, 0, 1e6, "W");
        Range.require("fan heat while off", fanHeatOff, 0, 1e5, "W");
        Range.require("retained water", retainedWaterSeconds, 0, 1e5, "s");
        Range.require("re-evaporation", reevaporation, 0, 10, "");
    }

    /**
     * A plain single-stage thermostat: no minimum off time, no start-up transient, nothing used
     * while off, capacity refreshed at each switch and each quarter of an hour.
     *
     * @param setpoint setpoint, K
     * @param differential distance between switching on and off, K
     * @return the control
     * @throws IllegalArgumentException if a value is out of range
     */
    public static CycleControl single(double setpoint, double differential) {
        return new CycleControl(
                new double[] {setpoint},
                differential,
                Staging.SINGLE,
                1,
                1,
                Double.POSITIVE_INFINITY,
                0,
                0,
                300,
                900,
                0,
                0,
                0,
                0);
    }

    /**
     * A copy with another start-up time constant.
     *
     * @param seconds time constant, s
     * @return the copy
     * @throws IllegalArgumentException if the value is out of range
     */
    public CycleControl withStartUp(double seconds) {
        return new CycleControl(
                setpoint,
                differential,
                staging,
                lowStage,
                secondStageDifferential,
                secondStageSeconds,
                minimumOffSeconds,
                seconds,
                controlSeconds,
                refreshSeconds,
                offPower,
                fanHeatOff,
                retainedWaterSeconds,
                reevaporation);
    }

    /**
     * A copy with another longest time between two looks at the capacity.
     *
     * @param seconds refresh interval, s
     * @return the copy
     * @throws IllegalArgumentException if the value is out of range
     */
    public CycleControl withRefresh(double seconds) {
        return new CycleControl(
                setpoint,
                differential,
                staging,
                lowStage,
                secondStageDifferential,
                secondStageSeconds,
                minimumOffSeconds,
                startUpSeconds,
                controlSeconds,
                seconds,
                offPower,
                fanHeatOff,
                retainedWaterSeconds,
                reevaporation);
    }

    /**
     * A copy with another minimum off time.
     *
     * @param seconds minimum off time, s
     * @return the copy
     * @throws IllegalArgumentException if the value is out of range
     */
    public CycleControl withMinimumOff(double seconds) {
        return new CycleControl(
                setpoint,
                differential,
                staging,
                lowStage,
                secondStageDifferential,
                secondStageSeconds,
                seconds,
                startUpSeconds,
                controlSeconds,
                refreshSeconds,
                offPower,
                fanHeatOff,
                retainedWaterSeconds,
                reevaporation);
    }

    /**
     * A copy with another staging.
     *
     * @param kind how the unit follows the load
     * @param low displacement fraction of the low stage or lowest speed
     * @return the copy
     * @throws IllegalArgumentException if a value is out of range
     */
    public CycleControl withStaging(Staging kind, double low) {
        return new CycleControl(
                setpoint,
                differential,
                kind,
                low,
                secondStageDifferential,
                secondStageSeconds,
                minimumOffSeconds,
                startUpSeconds,
                controlSeconds,
                refreshSeconds,
                offPower,
                fanHeatOff,
                retainedWaterSeconds,
                reevaporation);
    }

    /**
     * Setpoint at the start of each interval, K; a single entry holds for all.
     *
     * @return a fresh array
     */
    @Override
    public double[] setpoint() {
        return setpoint.clone();
    }

    /** Setpoint of an interval without a copy, for the engine of this package. */
    double setpointAt(int i) {
        return setpoint[setpoint.length == 1 ? 0 : i];
    }

    int setpoints() {
        return setpoint.length;
    }
}
