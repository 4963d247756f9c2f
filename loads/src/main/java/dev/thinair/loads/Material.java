package dev.thinair.loads;

import dev.thinair.units.Density;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificHeat;
import dev.thinair.units.ThermalConductivity;
import dev.thinair.units.Units;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * A building material: what conduction through it and storage in it depend on. Immutable.
 *
 * <p>Generic materials with their sources are in {@link Materials}.
 */
public final class Material {
    private final String name;
    private final double conductivity;
    private final double density;
    private final double specificHeat;
    private final String source;

    private Material(
            String name, double conductivity, double density, double specificHeat, String source) {
        this.name = name;
        this.conductivity = conductivity;
        this.density = density;
        this.specificHeat = specificHeat;
        this.source = source;
    }

    /**
     * A material from its properties.
     *
     * @param name what it is called in tables, not blank
     * @param conductivity thermal conductivity, 0.001 to 500 W/(m K)
     * @param density density, 1 to 25000 kg/m3
     * @param specificHeat specific heat, 100 to 5000 J/(kg K)
     * @param source where the numbers come from, not blank
     * @return the material
     * @throws IllegalArgumentException if a value is outside its range or a text is blank
     * @throws NullPointerException if an argument is null
     */
    public static Material of(
            String name,
            Quantity<ThermalConductivity> conductivity,
            Quantity<Density> density,
            Quantity<SpecificHeat> specificHeat,
            String source) {
        return ofSi(
                name,
                Si.wattsPerMetreKelvin(conductivity, "conductivity"),
                Si.kilogramsPerCubicMetre(density, "density"),
                Si.joulesPerKilogramKelvin(specificHeat, "specific heat"),
                source);
    }

    static Material ofSi(
            String name, double conductivity, double density, double specificHeat, String source) {
        Texts.requireText("material name", name);
        Texts.requireText("source of material " + name, source);
        Range.require("conductivity of " + name, conductivity, 0.001, 500, "W/(m K)");
        Range.require("density of " + name, density, 1, 25_000, "kg/m3");
        Range.require("specific heat of " + name, specificHeat, 100, 5_000, "J/(kg K)");
        return new Material(name, conductivity, density, specificHeat, source);
    }

    /**
     * A layer of this material.
     *
     * @param thickness 0.01 mm to 20 m
     * @return the layer
     * @throws IllegalArgumentException if the thickness is outside that range
     */
    public Layer layer(Quantity<javax.measure.quantity.Length> thickness) {
        return Layer.of(this, thickness);
    }

    /**
     * The material's name.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Thermal conductivity.
     *
     * @return conductivity, given in W/(m K)
     */
    public Quantity<ThermalConductivity> conductivity() {
        return Units.wattsPerMetreKelvin(conductivity);
    }

    /**
     * Density.
     *
     * @return density, given in kg/m3
     */
    public Quantity<Density> density() {
        return Units.kilogramsPerCubicMetre(density);
    }

    /**
     * Specific heat.
     *
     * @return specific heat, given in J/(kg K)
     */
    public Quantity<SpecificHeat> specificHeat() {
        return Units.joulesPerKilogramKelvin(specificHeat);
    }

    /**
     * Where the numbers come from.
     *
     * @return source
     */
    public String source() {
        return source;
    }

    double wattsPerMetreKelvin() {
        return conductivity;
    }

    double kilogramsPerCubicMetre() {
        return density;
    }

    double joulesPerKilogramKelvin() {
        return specificHeat;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Material m
                && name.equals(m.name)
                && conductivity == m.conductivity
                && density == m.density
                && specificHeat == m.specificHeat;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, conductivity, density, specificHeat);
    }

    @Override
    public String toString() {
        return name
                + " ("
                + conductivity
                + " W/(m K), "
                + density
                + " kg/m3, "
                + specificHeat
                + " J/(kg K))";
    }
}
