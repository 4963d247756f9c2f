package dev.thinair.cycling;

import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * Steady state of a cooling unit at given air.
 *
 * <p>Capacities are the coil's; {@link #netCapacity} takes the indoor fan's heat off. Immutable.
 */
public final class UnitState {

    private static final String TEXTBOOK = "textbook form of bypass factor and apparatus dew point";
    private static final String BALANCE =
            "balance of coil, compressor and condenser, anchored to the rating point (this project)";
    private static final String ASHRAE = "ASHRAE Fundamentals 2021 ch. 1 eq. (30)";

    private final UnitModel model;
    private final double enteringDryBulb;
    private final double enteringHumidityRatio;
    private final double dryAirMassFlow;
    private final double outdoorDryBulb;
    private final double pressure;
    private final double stage;
    private final double[] values;

    UnitState(
            UnitModel model,
            double enteringDryBulb,
            double enteringHumidityRatio,
            double dryAirMassFlow,
            double outdoorDryBulb,
            double pressure,
            double stage) {
        this.model = model;
        this.enteringDryBulb = enteringDryBulb;
        this.enteringHumidityRatio = enteringHumidityRatio;
        this.dryAirMassFlow = dryAirMassFlow;
        this.outdoorDryBulb = outdoorDryBulb;
        this.pressure = pressure;
        this.stage = stage;
        this.values = new double[UnitModel.RESULTS];
        model.steady(
                enteringDryBulb,
                enteringHumidityRatio,
                dryAirMassFlow,
                outdoorDryBulb,
                pressure,
                stage,
                values);
    }

    /**
     * Total capacity of the coil.
     *
     * @return heat taken from the air, indoor fan heat not taken off
     */
    public Quantity<Power> totalCapacity() {
        return Units.watts(values[UnitModel.TOTAL]);
    }

    /**
     * Sensible capacity of the coil.
     *
     * @return sensible part, indoor fan heat not taken off
     */
    public Quantity<Power> sensibleCapacity() {
        return Units.watts(values[UnitModel.SENSIBLE]);
    }

    /**
     * Latent capacity of the coil.
     *
     * @return heat of the moisture removed
     */
    public Quantity<Power> latentCapacity() {
        return Units.watts(values[UnitModel.LATENT]);
    }

    /**
     * Sensible over total capacity of the coil.
     *
     * @return ratio in ]0, 1]
     */
    public double sensibleHeatRatio() {
        return values[UnitModel.SENSIBLE] / values[UnitModel.TOTAL];
    }

    /**
     * Total capacity less the heat of the indoor fan.
     *
     * @param indoorFan power of the indoor fan, not negative
     * @return net total capacity
     * @throws IllegalArgumentException if the power is missing or negative
     */
    public Quantity<Power> netCapacity(Quantity<Power> indoorFan) {
        return Units.watts(values[UnitModel.TOTAL] - fan(indoorFan));
    }

    /**
     * Sensible capacity less the heat of the indoor fan.
     *
     * @param indoorFan power of the indoor fan, not negative
     * @return net sensible capacity
     * @throws IllegalArgumentException if the power is missing or negative
     */
    public Quantity<Power> netSensibleCapacity(Quantity<Power> indoorFan) {
        return Units.watts(values[UnitModel.SENSIBLE] - fan(indoorFan));
    }

    private static double fan(Quantity<Power> indoorFan) {
        double w = Si.watts(indoorFan, "indoor fan power");
        Range.require("indoor fan power", w, 0, 1e5, "W");
        return w;
    }

    /**
     * Power of compressor and outdoor fan.
     *
     * @return electric power, without the indoor fan
     */
    public Quantity<Power> power() {
        return Units.watts(values[UnitModel.POWER]);
    }

    /**
     * Apparatus dew point.
     *
     * @return effective temperature of the coil's surface
     */
    public Quantity<Temperature> apparatusDewPoint() {
        return Units.kelvins(values[UnitModel.APPARATUS_DEW_POINT]);
    }

    /**
     * Saturated suction temperature.
     *
     * @return evaporating temperature of the refrigerant
     */
    public Quantity<Temperature> saturatedSuctionTemperature() {
        return Units.kelvins(values[UnitModel.SATURATED_SUCTION]);
    }

    /**
     * Condensing temperature.
     *
     * @return temperature of the refrigerant in the condenser
     */
    public Quantity<Temperature> condensingTemperature() {
        return Units.kelvins(values[UnitModel.CONDENSING]);
    }

    /**
     * Dry bulb of the air leaving the coil, before the fan.
     *
     * @return temperature
     */
    public Quantity<Temperature> leavingDryBulb() {
        return Units.kelvins(values[UnitModel.LEAVING_DRY_BULB]);
    }

    /**
     * Humidity ratio of the air leaving the coil.
     *
     * @return humidity ratio
     */
    public Quantity<HumidityRatio> leavingHumidityRatio() {
        return Units.kilogramsPerKilogram(values[UnitModel.LEAVING_HUMIDITY_RATIO]);
    }

    /**
     * Water drained off the coil.
     *
     * @return condensate rate, 0 for a dry coil
     */
    public Quantity<MassFlow> condensate() {
        return Units.kilogramsPerSecond(values[UnitModel.CONDENSATE]);
    }

    /**
     * Bypass factor.
     *
     * @return part of the air that passes the coil untouched, in the textbook sense
     */
    public double bypassFactor() {
        return values[UnitModel.BYPASS_FACTOR];
    }

    /**
     * Dry-air mass flow over the coil.
     *
     * @return mass flow
     */
    public Quantity<MassFlow> dryAirMassFlow() {
        return Units.kilogramsPerSecond(dryAirMassFlow);
    }

    /**
     * Compressor displacement fraction.
     *
     * @return stage, 1 for full
     */
    public double stage() {
        return stage;
    }

    /**
     * Whether the coil removes no moisture.
     *
     * @return true for a dry coil
     */
    public boolean dryCoil() {
        return values[UnitModel.DRY] == 1;
    }

    /**
     * Whether the coil ices: its effective surface is at or below freezing, and below the entering
     * dew point.
     *
     * @return true for ice
     */
    public boolean icing() {
        return values[UnitModel.FROST] == 2;
    }

    /**
     * Whether ice is near: the coil is wet and the refrigerant is at or below freezing.
     *
     * @return true for the early warning, and for ice
     */
    public boolean iceNear() {
        return values[UnitModel.FROST] >= 1;
    }

    /**
     * The limits that this state breaks: ice, ice near, return air below the floor or below the
     * set-up rule, condensing temperature too high. Airflow per ton is judged with the ducts.
     *
     * @param limits the limits
     * @return broken limits, each with its source; empty for a sound state
     * @throws IllegalArgumentException if the limits are missing
     */
    public List<Threshold> broken(UnitLimits limits) {
        if (limits == null) {
            throw new IllegalArgumentException("unit limits are missing");
        }
        List<Threshold> broken = new ArrayList<>();
        boolean wet = !dryCoil();
        if (wet && values[UnitModel.APPARATUS_DEW_POINT] <= limits.icing().value()) {
            broken.add(limits.icing());
        }
        if (wet && values[UnitModel.SATURATED_SUCTION] <= limits.suctionWarning().value()) {
            broken.add(limits.suctionWarning());
        }
        if (enteringDryBulb < limits.returnAirFloor().value()) {
            broken.add(limits.returnAirFloor());
        }
        if (enteringDryBulb < limits.setupReturnAir().value()) {
            broken.add(limits.setupReturnAir());
        }
        if (values[UnitModel.CONDENSING] > limits.condensing().value()) {
            broken.add(limits.condensing());
        }
        return List.copyOf(broken);
    }

    /**
     * A copy of the kernel's results.
     *
     * @return values at the indices of {@link UnitModel}
     */
    public double[] values() {
        return values.clone();
    }

    /**
     * The steps of the coil balance.
     *
     * @return working that ends with the total capacity of the coil
     */
    public Working working() {
        double surface = values[UnitModel.APPARATUS_DEW_POINT];
        double ws =
                dryCoil()
                        ? enteringHumidityRatio
                        : IdealMoistAir.saturationHumidityRatio(surface, pressure);
        double active = model.faults().evaporatorActive();
        return Working.titled("coil balance")
                .given("t_in", "entering dry bulb", Units.kelvins(enteringDryBulb))
                .given(
                        "W_in",
                        "entering humidity ratio",
                        Units.kilogramsPerKilogram(enteringHumidityRatio))
                .given("m", "dry-air mass flow", Units.kilogramsPerSecond(dryAirMassFlow))
                .given("T_o", "outdoor dry bulb", Units.kelvins(outdoorDryBulb))
                .given("p", "pressure", Units.pascals(pressure))
                .given("s", "displacement fraction", Units.ratio(stage))
                .given(
                        "A_0",
                        "bypass constant",
                        Units.kilogramsPerSecond(active * model.bypassMass()),
                        "from the rating point")
                .given(
                        "U",
                        "conductance between surface and refrigerant",
                        Units.wattsPerKelvin(active * model.coilConductance()),
                        "from the rating point")
                .step(
                        "entering enthalpy",
                        "h_in = 1006 (t_in - 273.15) + W_in (2501000 + 1860 (t_in - 273.15))",
                        Units.joulesPerKilogram(
                                IdealMoistAir.enthalpy(enteringDryBulb, enteringHumidityRatio)),
                        ASHRAE)
                .step("bypass factor", "BF = exp(-A_0 / m)", Units.ratio(bypassFactor()), TEXTBOOK)
                .stepInWords(
                        "t_s",
                        "apparatus dew point",
                        "root of compressor capacity(t_s - Q/U, T_c) = Q with Q = m (1 - BF) (h_in -"
                                + " h_s), found in a bracket",
                        List.of("h_in", "BF", "m", "U", "T_o", "s"),
                        apparatusDewPoint(),
                        BALANCE)
                .stepInWords(
                        "W_s",
                        "humidity ratio at the surface",
                        dryCoil() ? "the entering one: the coil is dry" : "saturation at t_s and p",
                        List.of("t_s", "p"),
                        Units.kilogramsPerKilogram(ws),
                        "ASHRAE Fundamentals 2021 ch. 1 eqs. (5), (6), (21)")
                .step(
                        "enthalpy at the surface",
                        "h_s = 1006 (t_s - 273.15) + W_s (2501000 + 1860 (t_s - 273.15))",
                        Units.joulesPerKilogram(IdealMoistAir.enthalpy(surface, ws)),
                        ASHRAE)
                .step(
                        "saturated suction temperature",
                        "T_e = t_s - m (1 - BF) (h_in - h_s) / U",
                        saturatedSuctionTemperature(),
                        BALANCE)
                .stepInWords(
                        "T_c",
                        "condensing temperature",
                        "root of e C (T_c - T_o) = Q + P",
                        List.of("T_o", "T_e", "p", "s"),
                        condensingTemperature(),
                        BALANCE)
                .stepInWords(
                        "P",
                        "power of compressor and outdoor fan",
                        "s f (B rho(T_e) w(T_e, T_c) + L), and the fan at the outdoor density",
                        List.of("T_e", "T_c", "s"),
                        power(),
                        BALANCE)
                .step(
                        "sensible capacity",
                        "Q_s = m (1 - BF) (1006 (t_in - t_s) + 1860 W_s (t_in - t_s))",
                        sensibleCapacity(),
                        TEXTBOOK)
                .step("total capacity", "Q = m (1 - BF) (h_in - h_s)", totalCapacity(), TEXTBOOK)
                .note("Indoor fan heat is not taken off the capacities.")
                .note(
                        "Work on the refrigerant circuit is licensed work: leave it to a qualified"
                                + " technician.")
                .build();
    }

    /**
     * For shells.
     *
     * @return capacity, split, power and coil temperatures
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "total %.0f W, sensible %.0f W, power %.0f W, apparatus dew point %.1f degC,"
                        + " suction %.1f degC, condensing %.1f degC%s",
                values[UnitModel.TOTAL],
                values[UnitModel.SENSIBLE],
                values[UnitModel.POWER],
                values[UnitModel.APPARATUS_DEW_POINT] - 273.15,
                values[UnitModel.SATURATED_SUCTION] - 273.15,
                values[UnitModel.CONDENSING] - 273.15,
                icing() ? ", ICING" : dryCoil() ? ", dry coil" : "");
    }
}
