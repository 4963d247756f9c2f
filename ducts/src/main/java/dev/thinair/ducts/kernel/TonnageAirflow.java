package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * Airflow that goes with a cooling capacity, and the capacity that an airflow can carry.
 *
 * <p>Source: definitions; how much air a ton is given is common practice and the caller's choice.
 */
public final class TonnageAirflow {

    private TonnageAirflow() {}

    /**
     * Actual volume flow that carries the mass of a standard volume flow per capacity.
     *
     * <p>Formula: {@code Q = capacity (Q/capacity)_std / r}. The usual 300 to 400 cfm per ton are
     * common practice, no source.
     *
     * @param capacity W, in [0, 1e7]
     * @param standardFlowPerCapacity m3/(s W) of standard air, in [1e-8, 1e-3]
     * @param densityRatio density over that of standard air, in [0.1, 2]; 1 gives standard flow
     * @return m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double actualFlow(
            double capacity, double standardFlowPerCapacity, double densityRatio) {
        Range.require("cooling capacity", capacity, 0, 1e7, "W");
        requireFlowPerCapacity(standardFlowPerCapacity);
        Range.require("density ratio", densityRatio, 0.1, 2, "");
        return capacity * standardFlowPerCapacity / densityRatio;
    }

    /**
     * Standard volume flow with the mass of an actual one.
     *
     * <p>Formula: {@code Q rho/rho0}.
     *
     * @param flow actual volume flow, m3/s, in [0, 1000]
     * @param density its density, kg/m3
     * @param standardDensity density that is called standard, kg/m3
     * @return m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double standardFlow(double flow, double density, double standardDensity) {
        Range.require("airflow", flow, 0, 1_000, "m3/s");
        Range.require("air density", density, 0.1, 10, "kg/m3");
        Range.require("standard air density", standardDensity, 0.1, 10, "kg/m3");
        return flow * density / standardDensity;
    }

    /**
     * Largest cooling capacity that a standard volume flow can carry.
     *
     * @param standardFlow m3/s of standard air, in [0, 1000]
     * @param standardFlowPerCapacity m3/(s W) of standard air, in [1e-8, 1e-3]
     * @return W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double capacity(double standardFlow, double standardFlowPerCapacity) {
        Range.require("standard airflow", standardFlow, 0, 1_000, "m3/s");
        requireFlowPerCapacity(standardFlowPerCapacity);
        return standardFlow / standardFlowPerCapacity;
    }

    private static void requireFlowPerCapacity(double value) {
        Range.require("standard airflow per capacity", value, 1e-8, 1e-3, "m3/(s W)");
    }
}
