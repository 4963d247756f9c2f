package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Upright projections beside a window, or walls that stand out beside it; each is taken as tall as
 * its shadow needs. Immutable; lengths in metres for the kernel.
 *
 * @param leftDepth projection of the left fin seen from outside, m, in [0, 50]; 0 for none
 * @param leftGap from the window's edge to that fin, m, in [0, 50]
 * @param rightDepth projection of the right fin seen from outside, m, in [0, 50]; 0 for none
 * @param rightGap from the window's edge to that fin, m, in [0, 50]
 */
public record Fins(double leftDepth, double leftGap, double rightDepth, double rightGap) {

    private static final Fins NONE = new Fins(0, 0, 0, 0);

    /**
     * Checks the values.
     *
     * @param leftDepth projection of the left fin seen from outside, m, in [0, 50]; 0 for none
     * @param leftGap from the window's edge to that fin, m, in [0, 50]
     * @param rightDepth projection of the right fin seen from outside, m, in [0, 50]; 0 for none
     * @param rightGap from the window's edge to that fin, m, in [0, 50]
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Fins {
        Range.require("depth of the left fin", leftDepth, 0, 50, "m");
        Range.require("gap to the left fin", leftGap, 0, 50, "m");
        Range.require("depth of the right fin", rightDepth, 0, 50, "m");
        Range.require("gap to the right fin", rightGap, 0, 50, "m");
    }

    /**
     * No fins.
     *
     * @return no fins
     */
    public static Fins none() {
        return NONE;
    }

    /**
     * Equal fins on both sides.
     *
     * @param depth projection, in [0, 50] m
     * @param gap from the window's edge, in [0, 50] m
     * @return the fins
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Fins bothSides(Quantity<Length> depth, Quantity<Length> gap) {
        double d = Si.metres(depth, "fin depth");
        double g = Si.metres(gap, "gap to the fin");
        return new Fins(d, g, d, g);
    }

    /**
     * One fin on the left as seen from outside.
     *
     * @param depth projection, in [0, 50] m
     * @param gap from the window's edge, in [0, 50] m
     * @return the fin
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Fins left(Quantity<Length> depth, Quantity<Length> gap) {
        return new Fins(Si.metres(depth, "fin depth"), Si.metres(gap, "gap to the fin"), 0, 0);
    }

    /**
     * One fin on the right as seen from outside.
     *
     * @param depth projection, in [0, 50] m
     * @param gap from the window's edge, in [0, 50] m
     * @return the fin
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Fins right(Quantity<Length> depth, Quantity<Length> gap) {
        return new Fins(0, 0, Si.metres(depth, "fin depth"), Si.metres(gap, "gap to the fin"));
    }
}
