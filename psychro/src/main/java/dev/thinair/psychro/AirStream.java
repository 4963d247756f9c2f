package dev.thinair.psychro;

import dev.thinair.psychro.kernel.AirPoint;
import dev.thinair.psychro.kernel.Flows;
import dev.thinair.psychro.kernel.Humidifying;
import dev.thinair.psychro.kernel.Mixing;
import dev.thinair.psychro.kernel.SensibleHeating;
import dev.thinair.units.MassFlow;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificEnthalpy;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * Moist air that flows: a state and a dry-air mass flow, which no process changes.
 *
 * <p>Immutable: any thread may share it. Processes return what they did, with the leaving stream in
 * it; their energy and moisture balances close to rounding (1e-12 relative, held by test).
 */
public final class AirStream {

    private final MoistAir air;
    private final double dryAirFlow;

    private AirStream(MoistAir air, double dryAirFlow) {
        this.air = air;
        this.dryAirFlow = dryAirFlow;
    }

    /**
     * From the mass flow of the dry air in it.
     *
     * @param air the state
     * @param dryAirFlow dry-air mass flow, above 0
     * @return the stream
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the flow is not above 0 and finite
     */
    public static AirStream ofDryAirFlow(MoistAir air, Quantity<MassFlow> dryAirFlow) {
        return ofSi(air, Si.kilogramsPerSecond(dryAirFlow, "dry-air mass flow"));
    }

    /**
     * From the volume flow at the state itself (actual flow, not standard flow).
     *
     * @param air the state
     * @param volumeFlow volume flow of the moist air, above 0
     * @return the stream
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the flow is not above 0 and finite
     */
    public static AirStream ofVolumeFlow(MoistAir air, Quantity<VolumeFlow> volumeFlow) {
        return ofSi(
                air,
                Flows.dryAirFlowFromVolume(
                        air.model(),
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        air.pressurePascals(),
                        Si.cubicMetresPerSecond(volumeFlow, "volume flow")));
    }

    /**
     * From the mass flow of the moist air as a whole.
     *
     * @param air the state
     * @param massFlow mass flow of dry air and vapor together, above 0
     * @return the stream
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the flow is not above 0 and finite
     */
    public static AirStream ofMassFlow(MoistAir air, Quantity<MassFlow> massFlow) {
        return ofSi(
                air,
                Flows.dryAirFlowFromMass(
                        air.humidityRatioNumber(),
                        Si.kilogramsPerSecond(massFlow, "moist-air mass flow")));
    }

    /**
     * From SI doubles, for code that comes from the kernel.
     *
     * @param air the state
     * @param kilogramsPerSecond dry-air mass flow, kg/s, above 0
     * @return the stream
     * @throws NullPointerException if air is null
     * @throws IllegalArgumentException if the flow is not above 0 and finite
     */
    public static AirStream ofSi(MoistAir air, double kilogramsPerSecond) {
        Objects.requireNonNull(air, "air");
        Range.requireAbove("dry-air mass flow", kilogramsPerSecond, 0, "kg/s");
        return new AirStream(air, kilogramsPerSecond);
    }

    /**
     * The state of the air.
     *
     * @return the state
     */
    public MoistAir air() {
        return air;
    }

    /**
     * Mass flow of the dry air.
     *
     * @return dry-air mass flow, kg/s
     */
    public Quantity<MassFlow> dryAirFlow() {
        return Units.kilogramsPerSecond(dryAirFlow);
    }

    /**
     * Mass flow of dry air and vapor together.
     *
     * @return mass flow, kg/s
     */
    public Quantity<MassFlow> massFlow() {
        return Units.kilogramsPerSecond(dryAirFlow + vapor());
    }

    /**
     * Mass flow of the water vapor.
     *
     * @return vapor mass flow, kg/s
     */
    public Quantity<MassFlow> vaporFlow() {
        return Units.kilogramsPerSecond(vapor());
    }

    /**
     * Volume flow at the state itself.
     *
     * @return actual volume flow, m3/s
     */
    public Quantity<VolumeFlow> volumeFlow() {
        return Units.cubicMetresPerSecond(
                dryAirFlow
                        * air.model()
                                .specificVolume(
                                        air.dryBulbKelvins(),
                                        air.humidityRatioNumber(),
                                        air.pressurePascals()));
    }

    /**
     * Enthalpy that the stream carries, from the zero of {@link MoistAir#enthalpy()}; only
     * differences mean anything.
     *
     * @return enthalpy flow, W
     */
    public Quantity<Power> enthalpyFlow() {
        return Units.watts(dryAirFlow * specificEnthalpy());
    }

    /**
     * Dry-air mass flow for kernel calls.
     *
     * @return dry-air mass flow, kg/s
     */
    public double dryAirKilogramsPerSecond() {
        return dryAirFlow;
    }

    /**
     * Adiabatic mixing with another stream at the same pressure.
     *
     * @param other the other stream
     * @return the mixture, which may hold fog
     * @throws NullPointerException if other is null
     * @throws IllegalArgumentException if pressures differ by more than 1e-9 relative, or the
     *     formulations differ
     */
    public Mixture mixedWith(AirStream other) {
        double p = air.pressurePascals();
        double q = other.air.pressurePascals();
        if (!(Math.abs(p - q) <= 1e-9 * p)) {
            throw new IllegalArgumentException(
                    "air pressure of the second stream is "
                            + q
                            + " Pa, but must be that of the first, "
                            + p
                            + " Pa: streams mix at one pressure");
        }
        if (air.formulation() != other.air.formulation()) {
            throw new IllegalArgumentException(
                    "formulation of the second stream is "
                            + other.air.formulation()
                            + ", but must be that of the first, "
                            + air.formulation());
        }
        AirPoint point =
                Mixing.adiabatic(
                        air.model(),
                        dryAirFlow,
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        other.dryAirFlow,
                        other.air.dryBulbKelvins(),
                        other.air.humidityRatioNumber(),
                        p);
        return mixture(dryAirFlow + other.dryAirFlow, point);
    }

    /**
     * Sensible heating or cooling: heat added (negative: taken) at constant humidity ratio.
     *
     * @param heat heat added to the stream
     * @return the process
     * @throws NullPointerException if heat is null
     * @throws IllegalArgumentException if the leaving state is out of the domain, or cooling would
     *     pass the dew point
     */
    public SensibleProcess heatedBy(Quantity<Power> heat) {
        double leaving =
                SensibleHeating.leavingDryBulb(
                        air.model(),
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        Si.watts(heat, "heat added") / dryAirFlow,
                        air.pressurePascals());
        return SensibleProcess.of(this, withState(leaving, air.humidityRatioNumber()));
    }

    /**
     * Sensible heating or cooling to a dry bulb, at constant humidity ratio.
     *
     * @param dryBulb leaving dry bulb
     * @return the process
     * @throws NullPointerException if dryBulb is null
     * @throws IllegalArgumentException if dryBulb is out of range or below the dew point
     */
    public SensibleProcess heatedTo(Quantity<Temperature> dryBulb) {
        return SensibleProcess.of(
                this,
                withState(Si.kelvins(dryBulb, "leaving dry bulb"), air.humidityRatioNumber()));
    }

    /**
     * What a cooling coil of given apparatus dew point and bypass factor does.
     *
     * @param apparatusDewPoint apparatus dew point (surface temperature if the coil stays dry), not
     *     above the dry bulb
     * @param bypassFactor bypass factor, 0 to 1
     * @return wet coil, dry coil, or the reason why the bypass model has no answer
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public CoilProcess throughCoil(
            Quantity<Temperature> apparatusDewPoint, Quantity<Dimensionless> bypassFactor) {
        return CoilProcess.of(
                this,
                Si.kelvins(apparatusDewPoint, "apparatus dew point"),
                Si.ratio(bypassFactor, "bypass factor"));
    }

    /**
     * What coil surface explains a leaving state: the inverse of {@link #throughCoil}.
     *
     * @param leaving the leaving state, at the same pressure and in the same formulation
     * @return wet surface with apparatus dew point and bypass factor, dry surface, or the reason
     *     why there is none
     * @throws NullPointerException if leaving is null
     * @throws IllegalArgumentException if pressures differ by more than 1e-9 relative, or the
     *     formulations differ
     */
    public CoilSurface coilSurfaceTo(MoistAir leaving) {
        return CoilSurface.of(air, leaving);
    }

    /**
     * Steam or water taken up without other heat.
     *
     * @param water mass flow of steam or water, 0 or more
     * @param waterEnthalpy its specific enthalpy, from liquid water at 0 degC (steam at 100 degC:
     *     2675.6 kJ/kg)
     * @return the leaving air, with fog if the air cannot carry the water
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument or the leaving state is out of its range
     */
    public Mixture humidifiedBy(
            Quantity<MassFlow> water, Quantity<SpecificEnthalpy> waterEnthalpy) {
        AirPoint point =
                Humidifying.injection(
                        air.model(),
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        Si.kilogramsPerSecond(water, "water added") / dryAirFlow,
                        Si.joulesPerKilogram(waterEnthalpy, "enthalpy of the water"),
                        air.pressurePascals());
        return mixture(dryAirFlow, point);
    }

    /**
     * Evaporative cooling: adiabatic humidifying with recirculated water, along constant wet bulb.
     *
     * @param effectiveness approach to the wet bulb, 0 to 1
     * @return the process
     * @throws NullPointerException if effectiveness is null
     * @throws IllegalArgumentException if effectiveness is out of range, or the wet bulb is below 0
     *     degC (the water would freeze)
     */
    public EvaporativeProcess evaporativelyCooled(Quantity<Dimensionless> effectiveness) {
        AirPoint point =
                Humidifying.evaporative(
                        air.model(),
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        Si.ratio(effectiveness, "effectiveness"),
                        air.pressurePascals());
        return EvaporativeProcess.of(
                this,
                withState(point.dryBulb(), point.humidityRatio()),
                Units.ratio(Si.ratio(effectiveness, "effectiveness")));
    }

    /**
     * The steps of {@link #mixedWith}.
     *
     * @param other the other stream
     * @return the working; its last line is the dry bulb of the mixture
     * @throws IllegalArgumentException as {@link #mixedWith}
     */
    public Working mixingWorking(AirStream other) {
        return Workings.mixing(this, other);
    }

    /**
     * The steps of {@link #humidifiedBy}.
     *
     * @param water mass flow of steam or water
     * @param waterEnthalpy its specific enthalpy
     * @return the working; its last line is the leaving dry bulb
     * @throws IllegalArgumentException as {@link #humidifiedBy}
     */
    public Working humidifyingWorking(
            Quantity<MassFlow> water, Quantity<SpecificEnthalpy> waterEnthalpy) {
        return Workings.humidifying(this, water, waterEnthalpy);
    }

    /**
     * The steps of {@link #coilSurfaceTo} where it finds a wet surface.
     *
     * @param leaving the leaving state
     * @return the working; its last line is the bypass factor; empty if there is no wet surface
     * @throws IllegalArgumentException as {@link #coilSurfaceTo}
     */
    public Optional<Working> coilSurfaceWorking(MoistAir leaving) {
        return coilSurfaceTo(leaving) instanceof CoilSurface.Wet wet
                ? Optional.of(Workings.surface(air, leaving, wet))
                : Optional.empty();
    }

    AirStream withState(double dryBulb, double humidityRatio) {
        return new AirStream(
                MoistAir.ofSi(dryBulb, humidityRatio, air.pressurePascals(), air.formulation()),
                dryAirFlow);
    }

    double specificEnthalpy() {
        return air.model()
                .enthalpy(air.dryBulbKelvins(), air.humidityRatioNumber(), air.pressurePascals());
    }

    private double vapor() {
        return dryAirFlow * air.humidityRatioNumber();
    }

    private Mixture mixture(double flow, AirPoint point) {
        AirStream stream =
                new AirStream(
                        MoistAir.ofSi(
                                point.dryBulb(),
                                point.humidityRatio(),
                                air.pressurePascals(),
                                air.formulation()),
                        flow);
        return point.isFog()
                ? new Mixture.Fog(
                        stream,
                        Units.kilogramsPerSecond(flow * point.liquid()),
                        Units.kilogramsPerSecond(flow * point.ice()))
                : new Mixture.Clear(stream);
    }

    /**
     * Equal in state and dry-air mass flow, exactly.
     *
     * @param other the other object
     * @return whether the two are the same stream
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof AirStream stream
                && dryAirFlow == stream.dryAirFlow
                && air.equals(stream.air);
    }

    /**
     * Hash code over the fields of {@link #equals(Object)}.
     *
     * @return the hash code
     */
    @Override
    public int hashCode() {
        return Objects.hash(air, dryAirFlow);
    }

    /**
     * The stream in words, in both unit systems.
     *
     * @return for example {@code 0.5 m³/s (1059 cfm) of air 35 °C (95 °F), ...}
     */
    @Override
    public String toString() {
        return QuantityText.formatBoth(volumeFlow(), 4)
                + " ("
                + QuantityText.format(dryAirFlow(), 4)
                + " dry air) of "
                + air;
    }
}
