package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * What is wrong with the refrigerant and condenser side, as factors on the clean unit. All ones is
 * a healthy unit.
 *
 * @param condenserConductance factor on the condenser's conductance, in ]0, 1]: dirt on the fins
 * @param condenserAirflow factor on the condenser's airflow, in ]0, 1]: dirt between the fins, weak
 *     fan
 * @param evaporatorActive part of the evaporator wetted with liquid refrigerant, in ]0, 1]: too
 *     little charge starves it
 * @param condenserActive part of the condenser not flooded with liquid, in ]0, 1]: too much charge
 *     floods it
 */
public record FaultFactors(
        double condenserConductance,
        double condenserAirflow,
        double evaporatorActive,
        double condenserActive) {

    /** No fault. */
    public static final FaultFactors NONE = new FaultFactors(1, 1, 1, 1);

    /**
     * Checks the numbers.
     *
     * @param condenserConductance as the component
     * @param condenserAirflow as the component
     * @param evaporatorActive as the component
     * @param condenserActive as the component
     * @throws IllegalArgumentException if a factor is outside [0.05, 1]
     */
    public FaultFactors {
        Range.require("condenser conductance factor", condenserConductance, 0.05, 1, "1");
        Range.require("condenser airflow factor", condenserAirflow, 0.05, 1, "1");
        Range.require("active evaporator fraction", evaporatorActive, 0.05, 1, "1");
        Range.require("active condenser fraction", condenserActive, 0.05, 1, "1");
    }
}
