package dev.thinair.cycling;

import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/** House, ducts, unit, thermostat and site as they stand together. Immutable. */
public final class InstalledSystem {

    private final double pressure;

    InstalledSystem(double pressure) {
        this.pressure = pressure;
    }

    /**
     * Air pressure of the site.
     *
     * @return absolute pressure
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(pressure);
    }
}
