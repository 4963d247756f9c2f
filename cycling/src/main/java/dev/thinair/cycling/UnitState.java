package dev.thinair.cycling;

import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
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

    private final double[] values;
    private final double dryAirMassFlow;
    private final double stage;

    UnitState(double[] values, double dryAirMassFlow, double stage) {
        this.values = values.clone();
        this.dryAirMassFlow = dryAirMassFlow;
        this.stage = stage;
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
     * A copy of the kernel's results.
     *
     * @return values at the indices of {@link UnitModel}
     */
    public double[] values() {
        return values.clone();
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
