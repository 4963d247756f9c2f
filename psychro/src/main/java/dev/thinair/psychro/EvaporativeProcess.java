package dev.thinair.psychro;

import dev.thinair.units.MassFlow;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/**
 * Adiabatic humidifying with recirculated water, along constant thermodynamic wet bulb.
 *
 * @param entering the entering stream
 * @param leaving the leaving stream
 * @param effectiveness approach to the wet bulb
 * @param water water evaporated, kg/s, to be made up at the wet bulb's temperature
 * @param wetBulb the wet bulb that both states share, degC
 */
public record EvaporativeProcess(
        AirStream entering,
        AirStream leaving,
        Quantity<Dimensionless> effectiveness,
        Quantity<MassFlow> water,
        Quantity<Temperature> wetBulb) {

    /**
     * Checks the components.
     *
     * @param entering see the record
     * @param leaving see the record
     * @param effectiveness see the record
     * @param water see the record
     * @param wetBulb see the record
     * @throws NullPointerException if one is null
     */
    public EvaporativeProcess {
        Objects.requireNonNull(entering, "entering");
        Objects.requireNonNull(leaving, "leaving");
        Objects.requireNonNull(effectiveness, "effectiveness");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(wetBulb, "wetBulb");
    }

    /**
     * The steps.
     *
     * @return the working; its last line is {@link #water()}
     */
    public Working working() {
        return Workings.evaporative(this);
    }

    /**
     * The process in words, one part a line.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return "evaporates "
                + QuantityText.formatBoth(water, 4)
                + " at wet bulb "
                + QuantityText.formatBoth(wetBulb, 4)
                + "\n  entering "
                + entering
                + "\n  leaving  "
                + leaving;
    }

    static EvaporativeProcess of(
            AirStream entering, AirStream leaving, Quantity<Dimensionless> effectiveness) {
        return new EvaporativeProcess(
                entering,
                leaving,
                effectiveness,
                Units.kilogramsPerSecond(
                        entering.dryAirKilogramsPerSecond()
                                * (leaving.air().humidityRatioNumber()
                                        - entering.air().humidityRatioNumber())),
                entering.air().wetBulb());
    }
}
