package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Share of the equipment's heat or cold that reaches the rooms through leaking, conducting ducts.
 *
 * <p>Source: ANSI/ASHRAE Standard 152, delivery effectiveness (formulas from memory; the sensible
 * one re-derived from an energy balance of supply plenum, duct, leak and return mix to 1e-12).
 */
public final class DeliveryEffectiveness {

    private DeliveryEffectiveness() {}

    /**
     * Sensible delivery effectiveness, heating or cooling.
     *
     * <p>Formula: {@code DE = a_s B_s - a_s B_s (1 - B_r a_r) dt_r/dt_e - a_s (1 - B_s) dt_s/dt_e}.
     * Signs as in heating: dt is indoor minus duct-zone temperature and dt_e the rise across the
     * equipment; in cooling both are negative.
     *
     * @param supplyKept a_s, share of the blower's air that does not leak from the supply, in [0,
     *     1]
     * @param returnKept a_r, share that does not come from return leaks, in [0, 1]
     * @param supplyConduction B_s, in [0, 1]
     * @param returnConduction B_r, in [0, 1]
     * @param equipmentRise dt_e, K, not 0
     * @param supplyZoneDifference dt_s, K
     * @param returnZoneDifference dt_r, K
     * @return effectiveness; below 0 if the ducts undo more than the equipment does
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double sensible(
            double supplyKept,
            double returnKept,
            double supplyConduction,
            double returnConduction,
            double equipmentRise,
            double supplyZoneDifference,
            double returnZoneDifference) {
        requireShares(supplyKept, returnKept, supplyConduction, returnConduction);
        Range.require("temperature rise across the equipment", equipmentRise, -200, 200, "K");
        if (Math.abs(equipmentRise) < 1e-3) {
            throw new IllegalArgumentException(
                    "temperature rise across the equipment is "
                            + equipmentRise
                            + " K: without a rise there is nothing to deliver");
        }
        Range.require(
                "indoor minus supply-duct-zone temperature", supplyZoneDifference, -200, 200, "K");
        Range.require(
                "indoor minus return-duct-zone temperature", returnZoneDifference, -200, 200, "K");
        double ab = supplyKept * supplyConduction;
        return ab
                - ab * (1 - returnConduction * returnKept) * returnZoneDifference / equipmentRise
                - supplyKept * (1 - supplyConduction) * supplyZoneDifference / equipmentRise;
    }

    /**
     * Delivery effectiveness in cooling, moisture of the return leak included.
     *
     * <p>Formula: {@code DE = a_s m/E [ E/m + (1 - a_r)(h_r - h_in) + a_r cp (B_r - 1) dt_r + cp
     * (B_s - 1)(t_sp - t_s) ]} with E the (negative) capacity, h_r the enthalpy around the return,
     * dt_r indoor minus return-zone temperature, t_sp the supply plenum and t_s the supply zone
     * temperature.
     *
     * @param supplyKept a_s, in [0, 1]
     * @param returnKept a_r, in [0, 1]
     * @param supplyConduction B_s, in [0, 1]
     * @param returnConduction B_r, in [0, 1]
     * @param capacity E, W, below 0 in cooling
     * @param massFlow m, kg/s, above 0
     * @param indoorEnthalpy h_in, J/kg
     * @param returnZoneEnthalpy h_r, J/kg
     * @param indoorTemperature K
     * @param returnZoneTemperature K
     * @param supplyPlenumTemperature t_sp, K
     * @param supplyZoneTemperature t_s, K
     * @param specificHeat cp, J/(kg K)
     * @return effectiveness
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double cooling(
            double supplyKept,
            double returnKept,
            double supplyConduction,
            double returnConduction,
            double capacity,
            double massFlow,
            double indoorEnthalpy,
            double returnZoneEnthalpy,
            double indoorTemperature,
            double returnZoneTemperature,
            double supplyPlenumTemperature,
            double supplyZoneTemperature,
            double specificHeat) {
        requireShares(supplyKept, returnKept, supplyConduction, returnConduction);
        Range.require("cooling capacity (negative)", capacity, -1e6, -1, "W");
        Range.requireAbove("mass flow", massFlow, 0, "kg/s");
        Range.require("indoor enthalpy", indoorEnthalpy, -1e5, 5e5, "J/kg");
        Range.require("return-zone enthalpy", returnZoneEnthalpy, -1e5, 5e5, "J/kg");
        Range.require("indoor temperature", indoorTemperature, 200, 400, "K");
        Range.require("return-zone temperature", returnZoneTemperature, 200, 400, "K");
        Range.require("supply plenum temperature", supplyPlenumTemperature, 200, 400, "K");
        Range.require("supply-zone temperature", supplyZoneTemperature, 200, 400, "K");
        Range.require("specific heat", specificHeat, 500, 3_000, "J/(kg K)");
        double perMass = capacity / massFlow;
        double sum =
                perMass
                        + (1 - returnKept) * (returnZoneEnthalpy - indoorEnthalpy)
                        + returnKept
                                * specificHeat
                                * (returnConduction - 1)
                                * (indoorTemperature - returnZoneTemperature)
                        + specificHeat
                                * (supplyConduction - 1)
                                * (supplyPlenumTemperature - supplyZoneTemperature);
        return supplyKept * sum / perMass;
    }

    private static void requireShares(double as, double ar, double bs, double br) {
        Range.require("share of air kept by the supply", as, 0, 1, "");
        Range.require("share of air kept by the return", ar, 0, 1, "");
        Range.require("conduction fraction of the supply", bs, 0, 1, "");
        Range.require("conduction fraction of the return", br, 0, 1, "");
    }
}
