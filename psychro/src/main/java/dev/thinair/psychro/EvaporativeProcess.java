package dev.thinair.psychro;

import dev.thinair.units.MassFlow;
import dev.thinair.units.Units;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * Adiabatic humidifying with recirculated water, along constant thermodynamic wet bulb.
 *
 * @param entering the entering stream
 * @param leaving the leaving stream
 * @param water water evaporated, kg/s, to be made up at the wet bulb's temperature
 * @param wetBulb the wet bulb that both states share, degC
 */
public record EvaporativeProcess(
        AirStream entering,
        AirStream leaving,
        Quantity<MassFlow> water,
        Quantity<Temperature> wetBulb) {

    /**
     * Checks the components.
     *
     * @param entering see the record
     * @param leaving see the record
     * @param water see the record
     * @param wetBulb see the record
     * @throws NullPointerException if one is null
     */
    public EvaporativeProcess {
        Objects.requireNonNull(entering, "entering");
        Objects.requireNonNull(leaving, "leaving");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(wetBulb, "wetBulb");
    }

    static EvaporativeProcess of(AirStream entering, AirStream leaving) {
        return new EvaporativeProcess(
                entering,
                leaving,
                Units.kilogramsPerSecond(
                        entering.dryAirKilogramsPerSecond()
                                * (leaving.air().humidityRatioNumber()
                                        - entering.air().humidityRatioNumber())),
                entering.air().wetBulb());
    }
}
