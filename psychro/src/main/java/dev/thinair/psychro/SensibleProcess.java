package dev.thinair.psychro;

import dev.thinair.units.QuantityText;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/**
 * Heating or cooling at constant humidity ratio.
 *
 * @param entering the entering stream
 * @param leaving the leaving stream
 * @param heat heat added, W; negative for cooling
 */
public record SensibleProcess(AirStream entering, AirStream leaving, Quantity<Power> heat) {

    /**
     * Checks the components.
     *
     * @param entering see the record
     * @param leaving see the record
     * @param heat see the record
     * @throws NullPointerException if one is null
     */
    public SensibleProcess {
        Objects.requireNonNull(entering, "entering");
        Objects.requireNonNull(leaving, "leaving");
        Objects.requireNonNull(heat, "heat");
    }

    /**
     * The steps.
     *
     * @return the working; its last line is {@link #heat()}
     */
    public Working working() {
        return Workings.sensible(this);
    }

    /**
     * The process in words, one part a line.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return "sensible heat "
                + QuantityText.formatBoth(heat, 4)
                + "\n  entering "
                + entering
                + "\n  leaving  "
                + leaving;
    }

    static SensibleProcess of(AirStream entering, AirStream leaving) {
        return new SensibleProcess(
                entering,
                leaving,
                Units.watts(
                        entering.dryAirKilogramsPerSecond()
                                * (leaving.specificEnthalpy() - entering.specificEnthalpy())));
    }
}
