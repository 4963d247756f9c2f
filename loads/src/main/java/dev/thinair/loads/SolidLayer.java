package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** A homogeneous solid layer. */
record SolidLayer(Material material, double thickness, double squareMetreKelvinsPerWatt)
        implements Layer {

    static SolidLayer of(Material material, Quantity<Length> thickness) {
        double d = thickness(material, thickness);
        return new SolidLayer(material, d, d / material.wattsPerMetreKelvin());
    }

    static SolidLayer of(
            Material material, Quantity<Length> thickness, Quantity<ThermalResistance> resistance) {
        double d = thickness(material, thickness);
        double r = Si.squareMetreKelvinsPerWatt(resistance, "resistance of " + material.name());
        Range.require("resistance of " + material.name(), r, 1e-4, 100, "m2 K/W");
        return new SolidLayer(material, d, r);
    }

    private static double thickness(Material material, Quantity<Length> thickness) {
        Objects.requireNonNull(material, "material of a layer is null");
        double d = Si.metres(thickness, "thickness of " + material.name());
        Range.require("thickness of " + material.name(), d, 1e-5, 20, "m");
        return d;
    }

    @Override
    public String name() {
        return String.format(Locale.ROOT, "%s %.3g mm", material.name(), thickness * 1000);
    }

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(squareMetreKelvinsPerWatt);
    }

    @Override
    public double joulesPerSquareMetreKelvin() {
        return thickness * material.kilogramsPerCubicMetre() * material.joulesPerKilogramKelvin();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s %.1f mm (R %.3f m2 K/W)",
                material.name(),
                thickness * 1000,
                squareMetreKelvinsPerWatt);
    }
}
