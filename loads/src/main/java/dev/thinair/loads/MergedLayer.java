package dev.thinair.loads;

import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import javax.measure.Quantity;

/** Cavity and framing of one layer smeared into one: resistance by the method, capacity by area. */
record MergedLayer(String name, double squareMetreKelvinsPerWatt, double joulesPerSquareMetreKelvin)
        implements Layer {

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(squareMetreKelvinsPerWatt);
    }
}
