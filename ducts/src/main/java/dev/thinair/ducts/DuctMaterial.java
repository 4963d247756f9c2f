package dev.thinair.ducts;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * What a duct is made of, as far as friction sees it: its absolute roughness, with the source of
 * that number. Immutable.
 */
public final class DuctMaterial {

    private static final String TABLE =
            "ASHRAE Handbook - Fundamentals, chapter Duct Design, table of duct roughness factors";

    /** Drawn tubing: 1.5e-6 ft. */
    public static final DuctMaterial SMOOTH =
            new DuctMaterial("smooth drawn tubing", 1.5e-6 * 0.3048, TABLE, false);

    /** PVC, commercial steel, aluminium; medium smooth: 0.00015 ft. */
    public static final DuctMaterial MEDIUM_SMOOTH =
            new DuctMaterial("PVC, steel or aluminium", 0.00015 * 0.3048, TABLE, false);

    /** Galvanised steel, average: 0.0003 ft. */
    public static final DuctMaterial GALVANIZED =
            new DuctMaterial("galvanised steel", 0.0003 * 0.3048, TABLE, false);

    /** Fibrous glass duct board, air side coated; medium rough: 0.003 ft (from memory). */
    public static final DuctMaterial DUCT_BOARD =
            new DuctMaterial(
                    "duct board", 0.003 * 0.3048, TABLE + " (category from memory)", false);

    /** Metal lined with fibrous glass; medium rough: 0.003 ft (from memory). */
    public static final DuctMaterial LINED =
            new DuctMaterial(
                    "lined metal", 0.003 * 0.3048, TABLE + " (category from memory)", false);

    /** Nonmetallic flexible duct, fully stretched; medium rough: 0.003 ft. */
    public static final DuctMaterial FLEXIBLE =
            new DuctMaterial("flexible duct", 0.003 * 0.3048, TABLE, true);

    /** Metallic corrugated flexible duct; rough: 0.01 ft (from memory). */
    public static final DuctMaterial FLEXIBLE_METAL =
            new DuctMaterial(
                    "flexible metal duct", 0.01 * 0.3048, TABLE + " (value from memory)", true);

    private final String name;
    private final double roughness;
    private final String source;
    private final boolean flexible;

    private DuctMaterial(String name, double roughness, String source, boolean flexible) {
        this.name = name;
        this.roughness = roughness;
        this.source = source;
        this.flexible = flexible;
    }

    /**
     * A rigid material of one's own.
     *
     * @param name what it is called
     * @param roughness absolute roughness, in [0, 10 mm]
     * @param source where the roughness comes from
     * @return the material
     * @throws IllegalArgumentException if the name is blank or the roughness out of range
     */
    public static DuctMaterial rigid(String name, Quantity<Length> roughness, String source) {
        return own(name, roughness, source, false);
    }

    /**
     * A flexible material of one's own.
     *
     * @param name what it is called
     * @param roughness absolute roughness when fully stretched, in [0, 10 mm]
     * @param source where the roughness comes from
     * @return the material
     * @throws IllegalArgumentException if the name is blank or the roughness out of range
     */
    public static DuctMaterial flexible(String name, Quantity<Length> roughness, String source) {
        return own(name, roughness, source, true);
    }

    private static DuctMaterial own(
            String name, Quantity<Length> roughness, String source, boolean flexible) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("a duct material needs a name");
        }
        double e = Si.metres(roughness, "roughness of " + name);
        Range.require("roughness of " + name, e, 0, 0.01, "m");
        return new DuctMaterial(name, e, String.valueOf(source), flexible);
    }

    /**
     * What it is called.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Absolute roughness, fully stretched if flexible.
     *
     * @return roughness
     */
    public Quantity<Length> roughness() {
        return Units.metres(roughness);
    }

    double roughnessSi() {
        return roughness;
    }

    /**
     * Where the roughness comes from.
     *
     * @return source
     */
    public String source() {
        return source;
    }

    /**
     * Whether it can be compressed and can sag.
     *
     * @return true for flexible duct
     */
    public boolean isFlexible() {
        return flexible;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DuctMaterial m
                && m.name.equals(name)
                && m.roughness == roughness
                && m.flexible == flexible
                && m.source.equals(source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, roughness, flexible, source);
    }

    @Override
    public String toString() {
        return name + " (roughness " + roughness * 1000 + " mm)";
    }
}
