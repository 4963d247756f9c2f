package dev.thinair.cycling;

import dev.thinair.cycling.kernel.FaultFactors;
import dev.thinair.units.Range;

/**
 * What is wrong with a unit's refrigerant and condenser side. Low indoor airflow is no member: it
 * comes out of the ducts.
 *
 * <p><b>Caution.</b> Work on the refrigerant circuit, including checking and correcting the charge,
 * is licensed work in most places and can injure: leave it to a qualified technician under local
 * rules. Disconnect the power before touching an outdoor unit.
 *
 * @param condenserConductance factor on the condenser's conductance, in [0.05, 1]
 * @param condenserAirflow factor on the condenser's airflow, in [0.05, 1]
 * @param evaporatorActive part of the evaporator fed with liquid refrigerant, in [0.05, 1]
 * @param condenserActive part of the condenser not flooded with liquid, in [0.05, 1]
 */
public record UnitFaults(
        double condenserConductance,
        double condenserAirflow,
        double evaporatorActive,
        double condenserActive) {

    private static final UnitFaults NONE = new UnitFaults(1, 1, 1, 1);

    /**
     * Checks the numbers.
     *
     * @param condenserConductance as the component
     * @param condenserAirflow as the component
     * @param evaporatorActive as the component
     * @param condenserActive as the component
     * @throws IllegalArgumentException if a factor is outside [0.05, 1]
     */
    public UnitFaults {
        Range.require("condenser conductance factor", condenserConductance, 0.05, 1, "1");
        Range.require("condenser airflow factor", condenserAirflow, 0.05, 1, "1");
        Range.require("active evaporator fraction", evaporatorActive, 0.05, 1, "1");
        Range.require("active condenser fraction", condenserActive, 0.05, 1, "1");
    }

    /**
     * A healthy unit.
     *
     * @return all factors one
     */
    public static UnitFaults none() {
        return NONE;
    }

    /**
     * A dirty condenser: dirt takes the same part from conductance and airflow. How much dirt costs
     * how much is this model's assumption; take the factors from a measured condensing temperature
     * when there is one.
     *
     * @param remaining part left of conductance and airflow, in [0.05, 1]
     * @return the faults
     * @throws IllegalArgumentException if the part is out of range
     */
    public static UnitFaults dirtyCondenser(double remaining) {
        return new UnitFaults(remaining, remaining, 1, 1);
    }

    /**
     * Charge other than the right one, by a simple rule: missing charge starves the evaporator,
     * each percent taking 1.5 percent of its area beyond the first five; surplus charge floods the
     * condenser at the same rate. The rule and its numbers are this model's assumption, good for
     * showing direction and not for diagnosis.
     *
     * @param charge charge over the right charge, in [0.6, 1.4]
     * @return the faults
     * @throws IllegalArgumentException if the charge is out of range
     */
    public static UnitFaults charge(double charge) {
        Range.require("refrigerant charge over the right charge", charge, 0.6, 1.4, "1");
        double off = Math.max(0, Math.abs(charge - 1) - 0.05);
        double left = 1 - 1.5 * off;
        return charge < 1 ? new UnitFaults(1, 1, left, 1) : new UnitFaults(1, 1, 1, left);
    }

    /**
     * Both at once.
     *
     * @param other further faults
     * @return the products of the factors
     * @throws IllegalArgumentException if a product falls below 0.05
     */
    public UnitFaults and(UnitFaults other) {
        return new UnitFaults(
                condenserConductance * other.condenserConductance,
                condenserAirflow * other.condenserAirflow,
                evaporatorActive * other.evaporatorActive,
                condenserActive * other.condenserActive);
    }

    /**
     * The same with a clean condenser.
     *
     * @return these faults without the condenser's dirt
     */
    public UnitFaults withCleanCondenser() {
        return new UnitFaults(1, 1, evaporatorActive, condenserActive);
    }

    /**
     * The same with the right charge.
     *
     * @return these faults with evaporator and condenser wholly active
     */
    public UnitFaults withRightCharge() {
        return new UnitFaults(condenserConductance, condenserAirflow, 1, 1);
    }

    /**
     * Whether nothing is wrong.
     *
     * @return true if all factors are one
     */
    public boolean healthy() {
        return equals(NONE);
    }

    FaultFactors factors() {
        return new FaultFactors(
                condenserConductance, condenserAirflow, evaporatorActive, condenserActive);
    }
}
