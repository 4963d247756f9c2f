package dev.thinair.ducts;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.ducts.kernel.VelocityPressure;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;

/** What one supply run or return carries. Immutable. */
public final class RunFlow {

    private final String name;
    private final String room;
    private final boolean supply;
    private final double flow;
    private final double density;
    private final double ductArea;
    private final double registerArea;
    private final double nodePressure;
    private final double designFlow;

    RunFlow(
            String name,
            String room,
            boolean supply,
            double flow,
            double density,
            double ductArea,
            double registerArea,
            double nodePressure,
            double designFlow) {
        this.name = name;
        this.room = room;
        this.supply = supply;
        this.flow = flow;
        this.density = density;
        this.ductArea = ductArea;
        this.registerArea = registerArea;
        this.nodePressure = nodePressure;
        this.designFlow = designFlow;
    }

    /**
     * Name of the run.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Room it serves.
     *
     * @return room
     */
    public String room() {
        return room;
    }

    /**
     * Whether it supplies its room or takes air from it.
     *
     * @return true for supply
     */
    public boolean isSupply() {
        return supply;
    }

    /**
     * Volume flow as it is, at the air's own density.
     *
     * @return actual flow, positive in the run's intended direction
     */
    public Quantity<VolumeFlow> actual() {
        return Units.quantity(flow, Units.CUBIC_METRE_PER_SECOND);
    }

    /**
     * Mass flow over the density of standard air (0.075 lb/ft3).
     *
     * @return standard flow
     */
    public Quantity<VolumeFlow> standard() {
        return Units.quantity(flow * density / StandardAir.DENSITY, Units.CUBIC_METRE_PER_SECOND);
    }

    /**
     * Mass flow of moist air.
     *
     * @return mass flow
     */
    public Quantity<MassFlow> mass() {
        return Units.quantity(flow * density, Units.KILOGRAM_PER_SECOND);
    }

    /**
     * Mean velocity in the run's duct.
     *
     * @return velocity, without sign
     */
    public Quantity<Speed> velocity() {
        return Units.metresPerSecond(velocitySi());
    }

    /**
     * Velocity pressure in the run's duct.
     *
     * @return {@code rho V^2/2} at the air's own density
     */
    public Quantity<Pressure> velocityPressure() {
        return Units.pascals(VelocityPressure.pressure(velocitySi(), density));
    }

    /**
     * Mean velocity in the free area of the register as it stands.
     *
     * @return velocity, without sign; 0 if shut tight
     */
    public Quantity<Speed> registerVelocity() {
        return Units.metresPerSecond(registerVelocitySi());
    }

    /**
     * Total pressure where the run leaves its trunk or plenum (or joins it, for a return).
     *
     * @return gauge pressure
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(nodePressure);
    }

    /**
     * Standard flow over the design flow.
     *
     * @return share, empty if no design flow was given
     */
    public OptionalDouble shareOfDesign() {
        return designFlow > 0
                ? OptionalDouble.of(flow * density / StandardAir.DENSITY / designFlow)
                : OptionalDouble.empty();
    }

    /**
     * Actual volume flow for kernel calls.
     *
     * @return m3/s
     */
    public double cubicMetresPerSecond() {
        return flow;
    }

    /**
     * Mass flow for kernel calls.
     *
     * @return kg/s
     */
    public double kilogramsPerSecond() {
        return flow * density;
    }

    double velocitySi() {
        return Math.abs(flow) / ductArea;
    }

    double registerVelocitySi() {
        return registerArea > 0 ? Math.abs(flow) / registerArea : 0;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s (%s): %.1f cfm, %.1f scfm, %.0f ft/min, %.3f in. w.g.",
                name,
                room,
                flow / 4.71947443e-4,
                flow * density / StandardAir.DENSITY / 4.71947443e-4,
                velocitySi() / 0.00508,
                nodePressure / 249.08891);
    }
}
