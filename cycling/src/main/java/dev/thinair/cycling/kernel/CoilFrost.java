package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Ice on a cooling coil: how it narrows the passages between the fins, and how it thaws.
 *
 * <p><b>Model.</b> Water that condenses while the coil's effective surface is below freezing stays
 * on the fins as an even layer. The free part of the gap between two fins is <code>
 * f = 1 - M / M1</code>, where <code>M1 = A g &rho; / 2</code> fills it (<var>A</var> finned area
 * on both sides, <var>g</var> gap, <var>&rho;</var> density of the frost). At a given airflow the
 * pressure lost between parallel plates grows as <code>f<sup>-3</sup></code> (plane Poiseuille
 * flow: the gradient is <code>12 &mu; V / g<sup>2</sup></code> and the velocity goes as
 * 1/<var>g</var>; any text on viscous flow). The finned area follows from the unit's own bypass
 * factor: with <code>
 * BF = exp(-A0/m)</code> the product of heat-transfer coefficient and area is <code>A0 c</code>.
 * What warms the ice while the coil is not freezing melts it, <code>dM/dt = -G (T - T0) / L</code>.
 *
 * <p><b>What it leaves out.</b> Frost settles first where the air enters and not evenly, which
 * chokes the coil sooner; frost insulates the fins; freezing releases heat. All three make the real
 * coil worse, so this is the mild side. Time to choke is in proportion to {@link #FROST_DENSITY},
 * which scatters by a factor of two and more. On a coil far below freezing that moves the hour at
 * which it chokes, not whether it does; on one that only dips below, it decides between choking and
 * thawing as well.
 */
public final class CoilFrost {

    /**
     * Density of frost on a coil just below freezing, kg/m3. Published values for frost some hours
     * old at surfaces of -5 to 0 &deg;C lie between about 150 and 400; from memory, no one source.
     */
    public static final double FROST_DENSITY = 250;

    /**
     * Heat-transfer coefficient of the air over the finned area, the fins' efficiency counted in,
     * W/(m2 K). Usual for plain and wavy fins at 2 m/s; from memory, range 35 to 70.
     */
    public static final double FIN_COEFFICIENT = 50;

    /**
     * Free gap between two fins, m: 14 fins an inch of 0.11 mm sheet. Common practice, no source.
     */
    public static final double FIN_GAP = 1.7e-3;

    /**
     * Air that passes an idle coil by draught and leaks with the blower off, as a share of the
     * running airflow. Assumption: it thaws a choked coil in some hours, which is what the trade
     * expects. Common practice, no source.
     */
    public static final double IDLE_SHARE = 0.02;

    /**
     * Least free part of the gap: from there on no air reaches the ice, and it grows no more.
     * Assumption.
     */
    public static final double LEAST_GAP = 0.06;

    /** Heat of fusion of water, J/kg. CRC Handbook of Chemistry and Physics (from memory). */
    public static final double HEAT_OF_FUSION = 333_600;

    /** Freezing point of water, K. */
    public static final double FREEZING = 273.15;

    /** Specific heat of dry air, J/(kg K): ASHRAE Handbook, Fundamentals (from memory). */
    private static final double AIR_HEAT = 1006;

    private CoilFrost() {}

    /**
     * Finned area of a coil from its bypass factor, <code>A = A0 c / h</code>.
     *
     * @param bypassMass the constant A0 in <code>BF = exp(-A0/m)</code>, kg/s, in (0, 1000]
     * @param coefficient heat-transfer coefficient h, W/(m2 K), in [1, 1000]
     * @return area, m2
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double finnedArea(double bypassMass, double coefficient) {
        Range.requireAbove("bypass mass", bypassMass, 0, "kg/s");
        Range.require("bypass mass", bypassMass, 0, 1000, "kg/s");
        Range.require("heat-transfer coefficient of the fins", coefficient, 1, 1000, "W/(m2 K)");
        return bypassMass * AIR_HEAT / coefficient;
    }

    /**
     * Ice that fills the gaps, <code>M1 = A g rho / 2</code>.
     *
     * @param area finned area on both sides, m2, in (0, 1e4]
     * @param gap free gap between two fins, m, in [1e-4, 0.02]
     * @param density density of the frost, kg/m3, in [30, 917]
     * @return mass, kg
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double fillingMass(double area, double gap, double density) {
        Range.requireAbove("finned area", area, 0, "m2");
        Range.require("finned area", area, 0, 1e4, "m2");
        Range.require("gap between fins", gap, 1e-4, 0.02, "m");
        Range.require("density of frost", density, 30, 917, "kg/m3");
        return 0.5 * area * gap * density;
    }

    /**
     * Factor on the coil's pressure drop at a given airflow, <code>f<sup>-3</sup></code> with
     * <code>
     * f = 1 - M/M1</code>, not below {@link #LEAST_GAP}.
     *
     * @param mass ice on the coil, kg, at least 0
     * @param fillingMass ice that fills the gaps, kg, above 0
     * @return factor, 1 for a clear coil
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double pressureFactor(double mass, double fillingMass) {
        Range.require("ice on the coil", mass, 0, 1e6, "kg");
        Range.requireAbove("ice that fills the coil", fillingMass, 0, "kg");
        double free = Math.max(LEAST_GAP, 1 - mass / fillingMass);
        return 1 / (free * free * free);
    }

    /**
     * Ice that thaws, <code>G (T - T0) / L</code>; 0 at or below freezing.
     *
     * @param conductance what links ice and warm air or surface, W/K, in [0, 1e6]
     * @param temperature of that air or surface, K, in [200, 400]
     * @return rate, kg/s
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double thawRate(double conductance, double temperature) {
        Range.require("conductance to the ice", conductance, 0, 1e6, "W/K");
        Range.require("temperature about the ice", temperature, 200, 400, "K");
        return conductance * Math.max(0, temperature - FREEZING) / HEAT_OF_FUSION;
    }

    /**
     * Conductance between passing air and ice, <code>m c (1 - exp(-A0/m))</code>.
     *
     * @param dryAirMassFlow air that passes, kg/s, in (0, 1000]
     * @param bypassMass the constant A0, kg/s, in (0, 1000]
     * @return conductance, W/K
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double airConductance(double dryAirMassFlow, double bypassMass) {
        Range.requireAbove("air over the ice", dryAirMassFlow, 0, "kg/s");
        Range.require("air over the ice", dryAirMassFlow, 0, 1000, "kg/s");
        Range.requireAbove("bypass mass", bypassMass, 0, "kg/s");
        Range.require("bypass mass", bypassMass, 0, 1000, "kg/s");
        return dryAirMassFlow * AIR_HEAT * -Math.expm1(-bypassMass / dryAirMassFlow);
    }

    /**
     * Conductance between a coil surface above freezing and the ice on it, <code>A0 c</code>.
     *
     * @param bypassMass the constant A0, kg/s, in (0, 1000]
     * @return conductance, W/K
     * @throws IllegalArgumentException if the argument is NaN or out of range
     */
    public static double surfaceConductance(double bypassMass) {
        Range.requireAbove("bypass mass", bypassMass, 0, "kg/s");
        Range.require("bypass mass", bypassMass, 0, 1000, "kg/s");
        return bypassMass * AIR_HEAT;
    }
}
