package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A projection above a window that throws its shadow downward. Immutable; lengths in metres for the
 * kernel.
 *
 * @param depth projection from the plane of the window, m, in [0, 50]
 * @param gap from the window's top edge up to the overhang, m, in [0, 50]
 * @param extension reach beyond each side of the window, m, at least 0, may be infinite
 */
public record Overhang(double depth, double gap, double extension) {

    private static final Overhang NONE = new Overhang(0, 0, 0);

    /**
     * Checks the values.
     *
     * @param depth projection from the plane of the window, m, in [0, 50]
     * @param gap from the window's top edge up to the overhang, m, in [0, 50]
     * @param extension reach beyond each side of the window, m, at least 0, may be infinite
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Overhang {
        Range.require("overhang depth", depth, 0, 50, "m");
        Range.require("gap below the overhang", gap, 0, 50, "m");
        if (!(extension >= 0)) {
            Range.require("overhang extension", extension, 0, Double.POSITIVE_INFINITY, "m");
        }
    }

    /**
     * No overhang.
     *
     * @return no overhang
     */
    public static Overhang none() {
        return NONE;
    }

    /**
     * An overhang along the whole wall, such as an eave: the handbook's case.
     *
     * @param depth projection, in [0, 50] m
     * @param gap from the window's top edge up to it, in [0, 50] m
     * @return the overhang
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Overhang alongWall(Quantity<Length> depth, Quantity<Length> gap) {
        return new Overhang(
                Si.metres(depth, "overhang depth"),
                Si.metres(gap, "gap below the overhang"),
                Double.POSITIVE_INFINITY);
    }

    /**
     * An overhang that ends beside the window.
     *
     * @param depth projection, in [0, 50] m
     * @param gap from the window's top edge up to it, in [0, 50] m
     * @param extension reach beyond each side of the window, at least 0
     * @return the overhang
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Overhang of(
            Quantity<Length> depth, Quantity<Length> gap, Quantity<Length> extension) {
        return new Overhang(
                Si.metres(depth, "overhang depth"),
                Si.metres(gap, "gap below the overhang"),
                Si.metres(extension, "overhang extension"));
    }
}
