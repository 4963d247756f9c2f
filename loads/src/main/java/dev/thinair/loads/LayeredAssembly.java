package dev.thinair.loads;

import dev.thinair.loads.kernel.Resistance;
import dev.thinair.units.Range;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;

/** An assembly of plain layers; stored from the inside out. */
final class LayeredAssembly implements Assembly {
    private final String name;
    private final List<Path> paths;
    private final double resistance;

    private LayeredAssembly(String name, List<Layer> insideOut) {
        this.name = name;
        this.paths = List.of(new Path(1, insideOut));
        double sum = 0;
        for (Layer layer : insideOut) {
            sum += layer.squareMetreKelvinsPerWatt();
        }
        this.resistance = sum;
    }

    static LayeredAssembly of(String name, List<Layer> layers, boolean outsideIn) {
        Texts.requireText("assembly name", name);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException(
                    "assembly \"" + name + "\" has no layer, but needs at least one");
        }
        List<Layer> ordered = new ArrayList<>(layers);
        if (outsideIn) {
            Collections.reverse(ordered);
        }
        return new LayeredAssembly(name, ordered);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Path> paths() {
        return paths;
    }

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(resistance);
    }

    @Override
    public double squareMetreKelvinsPerWatt() {
        return resistance;
    }

    @Override
    public double totalResistance(double insideFilm, double outsideFilm) {
        Range.requireAbove("inside film resistance", insideFilm, 0, "m2 K/W");
        Range.requireAbove("outside film resistance", outsideFilm, 0, "m2 K/W");
        return insideFilm + resistance + outsideFilm;
    }

    @Override
    public Quantity<ThermalTransmittance> transmittance(HeatFlow flow) {
        return Units.wattsPerSquareMetreKelvin(
                1
                        / totalResistance(
                                Resistance.insideFilm(flow.ordinal()), Resistance.OUTSIDE_FILM));
    }

    @Override
    public double joulesPerSquareMetreKelvin() {
        double sum = 0;
        for (Layer layer : paths.get(0).layers()) {
            sum += layer.joulesPerSquareMetreKelvin();
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LayeredAssembly a && name.equals(a.name) && paths.equals(a.paths);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + paths.hashCode();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %s, R %.3f m2 K/W face to face",
                name,
                paths.get(0).layers(),
                resistance);
    }
}
