package dev.thinair.ducts;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Density;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;

/**
 * The operating point of a duct system: what the blower really moves, and where it goes. Immutable.
 *
 * <p>Actual flow is volume at the air's own density; standard flow is mass flow over 0.075 lb/ft3
 * (1.2014 kg/m3).
 */
public final class Airflow {

    final double density;
    final double viscosity;
    final double flow;
    final double rise;
    final double filterDrop;
    final double coilDrop;
    final double power;
    final boolean atLimit;
    final double imbalance;
    final int steps;
    final List<RunFlow> runs;
    final Map<String, Double> trunkFlows;
    final Map<String, Double> pressures;
    final Map<Place, Double> supplyLeak;
    final Map<Place, Double> returnLeak;
    final Map<String, Map<Place, Double>> returnLeakByNode;
    final List<VelocityAdvice> advice;

    Airflow(
            double density,
            double viscosity,
            double flow,
            double rise,
            double filterDrop,
            double coilDrop,
            double power,
            boolean atLimit,
            double imbalance,
            int steps,
            List<RunFlow> runs,
            Map<String, Double> trunkFlows,
            Map<String, Double> pressures,
            Map<Place, Double> supplyLeak,
            Map<Place, Double> returnLeak,
            Map<String, Map<Place, Double>> returnLeakByNode,
            List<VelocityAdvice> advice) {
        this.density = density;
        this.viscosity = viscosity;
        this.flow = flow;
        this.rise = rise;
        this.filterDrop = filterDrop;
        this.coilDrop = coilDrop;
        this.power = power;
        this.atLimit = atLimit;
        this.imbalance = imbalance;
        this.steps = steps;
        this.runs = runs;
        this.trunkFlows = trunkFlows;
        this.pressures = pressures;
        this.supplyLeak = supplyLeak;
        this.returnLeak = returnLeak;
        this.returnLeakByNode = returnLeakByNode;
        this.advice = advice;
    }

    /**
     * Volume flow through the blower at the air's own density.
     *
     * @return actual flow
     */
    public Quantity<VolumeFlow> actual() {
        return volume(flow);
    }

    /**
     * Mass flow through the blower over the density of standard air.
     *
     * @return standard flow
     */
    public Quantity<VolumeFlow> standard() {
        return volume(standardSi());
    }

    /**
     * Mass flow of moist air through the blower.
     *
     * @return mass flow
     */
    public Quantity<MassFlow> mass() {
        return Units.quantity(flow * density, Units.KILOGRAM_PER_SECOND);
    }

    /**
     * Density of the air in the ducts.
     *
     * @return density
     */
    public Quantity<Density> density() {
        return Units.quantity(density, Units.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Actual volume flow through the blower for kernel calls.
     *
     * @return m3/s
     */
    public double cubicMetresPerSecond() {
        return flow;
    }

    /**
     * Mass flow through the blower for kernel calls.
     *
     * @return kg/s
     */
    public double kilogramsPerSecond() {
        return flow * density;
    }

    double standardSi() {
        return flow * density / StandardAir.DENSITY;
    }

    /**
     * Pressure rise of the blower cabinet: what ducts, registers, filter and coil take together.
     *
     * @return external static pressure
     */
    public Quantity<Pressure> externalStaticPressure() {
        return Units.pascals(rise);
    }

    /**
     * Pressure lost in the filter.
     *
     * @return drop, 0 without a filter
     */
    public Quantity<Pressure> filterDrop() {
        return Units.pascals(filterDrop);
    }

    /**
     * Pressure lost in the coil.
     *
     * @return drop, 0 without a coil
     */
    public Quantity<Pressure> coilDrop() {
        return Units.pascals(coilDrop);
    }

    /**
     * Electric power of the blower.
     *
     * @return power
     * @throws IllegalStateException if the blower was given neither a power column nor an
     *     efficiency
     */
    public Quantity<Power> blowerPower() {
        return Units.watts(watts());
    }

    /**
     * Electric power of the blower for kernel calls.
     *
     * @return W
     * @throws IllegalStateException if the blower was given neither a power column nor an
     *     efficiency
     */
    public double watts() {
        if (Double.isNaN(power)) {
            throw new IllegalStateException(
                    "the blower was given neither a power column nor an efficiency, so its power is not"
                            + " known");
        }
        return power;
    }

    /**
     * Whether a constant-airflow motor has met its limit and moves less than it was set to.
     *
     * @return true at the limit; always false for a fixed speed
     */
    public boolean isMotorAtLimit() {
        return atLimit;
    }

    /**
     * All runs, supply and return, in the order in which they were described.
     *
     * @return unmodifiable list
     */
    public List<RunFlow> runs() {
        return runs;
    }

    /**
     * One run.
     *
     * @param name its name
     * @return what it carries
     * @throws IllegalArgumentException if there is no such run
     */
    public RunFlow run(String name) {
        for (RunFlow r : runs) {
            if (r.name().equals(name)) {
                return r;
            }
        }
        throw new IllegalArgumentException(
                "there is no run \""
                        + name
                        + "\"; known are "
                        + runs.stream().map(RunFlow::name).toList());
    }

    /**
     * Sum of all supply runs into one room.
     *
     * @param room name of the room
     * @return actual flow, 0 if no run serves the room
     */
    public Quantity<VolumeFlow> supplyTo(String room) {
        double sum = 0;
        for (RunFlow r : runs) {
            if (r.isSupply() && r.room().equals(room)) {
                sum += r.cubicMetresPerSecond();
            }
        }
        return volume(sum);
    }

    /**
     * Flow through a trunk.
     *
     * @param name name of the trunk
     * @return actual flow, positive from its first to its second node
     * @throws IllegalArgumentException if there is no such trunk
     */
    public Quantity<VolumeFlow> trunk(String name) {
        Double q = trunkFlows.get(name);
        if (q == null) {
            throw new IllegalArgumentException(
                    "there is no trunk \"" + name + "\"; known are " + trunkFlows.keySet());
        }
        return volume(q);
    }

    /**
     * Total pressure at a node.
     *
     * @param node "supply plenum", "return plenum", a node of a trunk, or a room with a transfer
     *     path
     * @return gauge pressure
     * @throws IllegalArgumentException if there is no such node
     */
    public Quantity<Pressure> pressureAt(String node) {
        Double p = pressures.get(node);
        if (p == null) {
            throw new IllegalArgumentException(
                    "there is no node \"" + node + "\"; known are " + pressures.keySet());
        }
        return Units.pascals(p);
    }

    /**
     * Air lost from the supply side into a place.
     *
     * @param place where to
     * @return actual flow out of the ducts
     */
    public Quantity<VolumeFlow> supplyLeakage(Place place) {
        return volume(supplyLeak.getOrDefault(place, 0.0));
    }

    /**
     * Air drawn into the return side from a place.
     *
     * @param place where from
     * @return actual flow into the ducts
     */
    public Quantity<VolumeFlow> returnLeakage(Place place) {
        return volume(returnLeak.getOrDefault(place, 0.0));
    }

    /**
     * Share of the blower's air that leaves the supply ducts outside the envelope.
     *
     * @return fraction, 0 to 1
     */
    public double supplyLeakFraction() {
        return outside(supplyLeak) / flow;
    }

    /**
     * Share of the blower's air that enters the return ducts from outside the envelope.
     *
     * @return fraction, 0 to 1
     */
    public double returnLeakFraction() {
        return outside(returnLeak) / flow;
    }

    private static double outside(Map<Place, Double> leak) {
        double sum = 0;
        for (Map.Entry<Place, Double> e : leak.entrySet()) {
            if (e.getKey().isOutside()) {
                sum += e.getValue();
            }
        }
        return sum;
    }

    /**
     * Velocities above published limits for comfort and noise.
     *
     * @return unmodifiable list, empty if all is quiet
     */
    public List<VelocityAdvice> advice() {
        return advice;
    }

    /**
     * Largest volume imbalance of any node over the blower's flow: a check on the solution.
     *
     * @return fraction, at rounding level
     */
    public double imbalance() {
        return imbalance;
    }

    /**
     * How many linear systems the solution took.
     *
     * @return count
     */
    public int steps() {
        return steps;
    }

    /**
     * The balance behind the operating point, step by step.
     *
     * @return working whose result is the standard flow
     */
    public Working working() {
        return DuctWorkings.operatingPoint(this);
    }

    private static Quantity<VolumeFlow> volume(double q) {
        return Units.quantity(q, Units.CUBIC_METRE_PER_SECOND);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f cfm actual (%.3f m3/s), %.0f cfm standard, %.3f kg/s, %.3f in. w.g. (%.1f Pa)"
                        + " external static",
                flow / 4.71947443e-4,
                flow,
                standardSi() / 4.71947443e-4,
                flow * density,
                rise / 249.08891,
                rise);
    }
}
