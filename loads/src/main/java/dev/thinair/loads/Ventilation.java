package dev.thinair.loads;

import dev.thinair.loads.kernel.VentilationAir;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * Mechanical ventilation of the whole house. Balanced air comes in through a fan while as much goes
 * out, perhaps through a heat or energy recovery core; unbalanced air (exhaust or supply only)
 * changes what the leaks let through. Flows are actual volumes of air at 20 C and the pressure of
 * the site. Immutable.
 *
 * @param balanced balanced flow, m3/s, in [0, 10]
 * @param unbalanced excess of exhaust or supply, m3/s, in [0, 10]
 * @param sensibleEffectiveness of the recovery core, in [0, 1]; 0 without one
 * @param latentEffectiveness of the recovery core, in [0, 1]; 0 without one
 */
public record Ventilation(
        double balanced,
        double unbalanced,
        double sensibleEffectiveness,
        double latentEffectiveness) {

    private static final Ventilation NONE = new Ventilation(0, 0, 0, 0);
    private static final double RATED_TEMPERATURE = 293.15;

    /**
     * Checks the values.
     *
     * @param balanced balanced flow, m3/s, in [0, 10]
     * @param unbalanced excess of exhaust or supply, m3/s, in [0, 10]
     * @param sensibleEffectiveness of the recovery core, in [0, 1]; 0 without one
     * @param latentEffectiveness of the recovery core, in [0, 1]; 0 without one
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Ventilation {
        Range.require("balanced ventilation flow", balanced, 0, 10, "m3/s");
        Range.require("unbalanced ventilation flow", unbalanced, 0, 10, "m3/s");
        Range.require("sensible effectiveness", sensibleEffectiveness, 0, 1, "-");
        Range.require("latent effectiveness", latentEffectiveness, 0, 1, "-");
    }

    /**
     * No mechanical ventilation.
     *
     * @return none
     */
    public static Ventilation none() {
        return NONE;
    }

    /**
     * Balanced ventilation without recovery.
     *
     * @param flow in [0, 10] m3/s
     * @return the ventilation
     * @throws IllegalArgumentException if the flow is not finite or outside its range
     */
    public static Ventilation balanced(Quantity<VolumeFlow> flow) {
        return new Ventilation(Si.cubicMetresPerSecond(flow, "balanced ventilation flow"), 0, 0, 0);
    }

    /**
     * Balanced ventilation through a recovery core.
     *
     * @param flow in [0, 10] m3/s
     * @param sensible effectiveness for sensible heat, in [0, 1]
     * @param latent effectiveness for moisture, in [0, 1]; 0 for a core that passes none
     * @return the ventilation
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Ventilation balanced(
            Quantity<VolumeFlow> flow,
            Quantity<Dimensionless> sensible,
            Quantity<Dimensionless> latent) {
        return new Ventilation(
                Si.cubicMetresPerSecond(flow, "balanced ventilation flow"),
                0,
                Si.ratio(sensible, "sensible effectiveness"),
                Si.ratio(latent, "latent effectiveness"));
    }

    /**
     * Exhaust only, or supply only: the rest comes or goes through the leaks.
     *
     * @param flow in [0, 10] m3/s
     * @return the ventilation
     * @throws IllegalArgumentException if the flow is not finite or outside its range
     */
    public static Ventilation unbalanced(Quantity<VolumeFlow> flow) {
        return new Ventilation(
                0, Si.cubicMetresPerSecond(flow, "unbalanced ventilation flow"), 0, 0);
    }

    /**
     * The same with unbalanced fans besides.
     *
     * @param flow in [0, 10] m3/s
     * @return a new ventilation
     * @throws IllegalArgumentException if the flow is not finite or outside its range
     */
    public Ventilation withUnbalanced(Quantity<VolumeFlow> flow) {
        return new Ventilation(
                balanced,
                Si.cubicMetresPerSecond(flow, "unbalanced ventilation flow"),
                sensibleEffectiveness,
                latentEffectiveness);
    }

    /**
     * Balanced flow.
     *
     * @return flow
     */
    public Quantity<VolumeFlow> balancedFlow() {
        return Units.cubicMetresPerSecond(balanced);
    }

    /**
     * Unbalanced flow.
     *
     * @return flow
     */
    public Quantity<VolumeFlow> unbalancedFlow() {
        return Units.cubicMetresPerSecond(unbalanced);
    }

    /**
     * Dry air of the balanced flow.
     *
     * @param pressure station pressure, Pa
     * @return kg dry air per second
     */
    public double supplyDryAirMassFlow(double pressure) {
        return balanced / specificVolume(pressure);
    }

    /**
     * Outdoor air through the leaks and unbalanced fans together: <code>max(Qu, Qi + Qu/2)</code>
     * in mass.
     *
     * @param infiltrationMassFlow dry air the leaks would let in alone, kg/s
     * @param pressure station pressure, Pa
     * @return kg dry air per second
     */
    public double combinedInfiltration(double infiltrationMassFlow, double pressure) {
        return VentilationAir.combined(infiltrationMassFlow, unbalanced / specificVolume(pressure));
    }

    private static double specificVolume(double pressure) {
        return IdealMoistAir.specificVolume(RATED_TEMPERATURE, 0, pressure);
    }
}
