package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;

/** A door in a wall: area, U-value and solar absorptance. Its mass is neglected. Immutable. */
public final class Door {
    private final String name;
    private final double area;
    private final double transmittance;
    private final double absorptance;

    private Door(String name, double area, double transmittance, double absorptance) {
        this.name = name;
        this.area = area;
        this.transmittance = transmittance;
        this.absorptance = absorptance;
    }

    /**
     * A door of medium colour (solar absorptance 0.6).
     *
     * @param name what it is called in tables, not blank
     * @param area 0.1 to 50 m2
     * @param uFactor air to air, 0.1 to 5.5 W/(m2 K)
     * @return the door
     * @throws IllegalArgumentException if a value is outside its range
     */
    public static Door of(
            String name, Quantity<Area> area, Quantity<ThermalTransmittance> uFactor) {
        return of(name, area, uFactor, Units.ratio(0.6));
    }

    /**
     * A door.
     *
     * @param name what it is called in tables, not blank
     * @param area 0.1 to 50 m2
     * @param uFactor air to air, 0.1 to 5.5 W/(m2 K)
     * @param absorptance share of sunshine that the outer face absorbs, 0 to 1
     * @return the door
     * @throws IllegalArgumentException if a value is outside its range
     */
    public static Door of(
            String name,
            Quantity<Area> area,
            Quantity<ThermalTransmittance> uFactor,
            Quantity<Dimensionless> absorptance) {
        Texts.requireText("door name", name);
        double a = Si.squareMetres(area, "area of " + name);
        double u = Si.wattsPerSquareMetreKelvin(uFactor, "U-factor of " + name);
        double alpha = Si.ratio(absorptance, "solar absorptance of " + name);
        Range.require("area of " + name, a, 0.1, 50, "m2");
        Range.require("U-factor of " + name, u, 0.1, 5.5, "W/(m2 K)");
        Range.require("solar absorptance of " + name, alpha, 0, 1, "");
        return new Door(name, a, u, alpha);
    }

    /**
     * The door's name.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Area of the opening.
     *
     * @return area, given in m2
     */
    public Quantity<Area> area() {
        return Units.squareMetres(area);
    }

    /**
     * U-factor from air to air.
     *
     * @return U, given in W/(m2 K)
     */
    public Quantity<ThermalTransmittance> uFactor() {
        return Units.wattsPerSquareMetreKelvin(transmittance);
    }

    /**
     * Area for kernel calls.
     *
     * @return area, m2
     */
    public double squareMetres() {
        return area;
    }

    /**
     * U-factor for kernel calls.
     *
     * @return U, W/(m2 K)
     */
    public double transmittance() {
        return transmittance;
    }

    /**
     * Share of sunshine that the outer face absorbs.
     *
     * @return absorptance, 0 to 1
     */
    public double absorptance() {
        return absorptance;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Door d
                && name.equals(d.name)
                && area == d.area
                && transmittance == d.transmittance
                && absorptance == d.absorptance;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, area, transmittance, absorptance);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.2f m2, U %.2f W/(m2 K)", name, area, transmittance);
    }
}
