package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import java.util.Locale;
import javax.measure.Quantity;

/** A layer that resists but stores nothing. */
record ResistanceLayer(String name, double squareMetreKelvinsPerWatt) implements Layer {

    static ResistanceLayer of(String name, Quantity<ThermalResistance> resistance) {
        Texts.requireText("layer name", name);
        double r = Si.squareMetreKelvinsPerWatt(resistance, "resistance of " + name);
        Range.require("resistance of " + name, r, 1e-4, 100, "m2 K/W");
        return new ResistanceLayer(name, r);
    }

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(squareMetreKelvinsPerWatt);
    }

    @Override
    public double joulesPerSquareMetreKelvin() {
        return 0;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s (R %.3f m2 K/W)", name, squareMetreKelvinsPerWatt);
    }
}
