package dev.thinair.loads;

import dev.thinair.units.ThermalResistance;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * One layer of an assembly: a solid with mass ({@link #of}), a plain resistance ({@link
 * #ofResistance}), or an {@link AirGap}. Immutable.
 */
public sealed interface Layer permits SolidLayer, ResistanceLayer, MergedLayer, AirGap {

    /**
     * A solid layer of a material.
     *
     * @param material what it is made of
     * @param thickness 0.01 mm to 20 m
     * @return the layer
     * @throws IllegalArgumentException if the thickness is outside that range
     */
    static Layer of(Material material, Quantity<Length> thickness) {
        return SolidLayer.of(material, thickness);
    }

    /**
     * A solid layer whose printed resistance is used instead of thickness over conductivity, as
     * handbook tables want it where they print the conductivity with one digit.
     *
     * @param material gives density and specific heat
     * @param thickness 0.01 mm to 20 m
     * @param resistance 0.0001 to 100 m2 K/W
     * @return the layer
     * @throws IllegalArgumentException if a value is outside its range
     */
    static Layer of(
            Material material, Quantity<Length> thickness, Quantity<ThermalResistance> resistance) {
        return SolidLayer.of(material, thickness, resistance);
    }

    /**
     * A layer that resists but stores nothing, such as carpet, an air space from a table, or a
     * film.
     *
     * @param name what it is called in tables, not blank
     * @param resistance 0.0001 to 100 m2 K/W
     * @return the layer
     * @throws IllegalArgumentException if the resistance is outside that range
     */
    static Layer ofResistance(String name, Quantity<ThermalResistance> resistance) {
        return ResistanceLayer.of(name, resistance);
    }

    /**
     * The layer's name.
     *
     * @return name
     */
    String name();

    /**
     * Thermal resistance from face to face.
     *
     * @return resistance, given in m2 K/W
     */
    Quantity<ThermalResistance> resistance();

    /**
     * Thermal resistance for kernel calls.
     *
     * @return resistance, m2 K/W
     */
    double squareMetreKelvinsPerWatt();

    /**
     * Heat capacity of a square metre of the layer for kernel calls.
     *
     * @return density x thickness x specific heat, J/(m2 K); 0 for air gaps and plain resistances
     */
    double joulesPerSquareMetreKelvin();
}
