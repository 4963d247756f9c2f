package dev.thinair.loads;

import dev.thinair.units.Range;

/**
 * Heat transfer coefficients at the faces of a house, all in W/(m2 K). Immutable.
 *
 * <p>At inside faces convection goes to the room air and radiation to the room's radiant node; the
 * two are kept apart because only the first loads the air at once.
 *
 * @param wall convection at vertical inside faces, 0.1 to 20
 * @param ceiling convection at faces that look down, 0.1 to 20
 * @param floor convection at faces that look up, 0.1 to 20
 * @param radiant radiation at inside faces, 0.1 to 10
 * @param outside convection and radiation together at outside faces, 1 to 100
 */
public record Films(double wall, double ceiling, double floor, double radiant, double outside) {

    /**
     * Checks the coefficients.
     *
     * @param wall convection at vertical inside faces
     * @param ceiling convection at faces that look down
     * @param floor convection at faces that look up
     * @param radiant radiation at inside faces
     * @param outside convection and radiation together at outside faces
     * @throws IllegalArgumentException if a coefficient is outside its range
     */
    public Films {
        Range.require("convection coefficient at walls", wall, 0.1, 20, "W/(m2 K)");
        Range.require("convection coefficient at ceilings", ceiling, 0.1, 20, "W/(m2 K)");
        Range.require("convection coefficient at floors", floor, 0.1, 20, "W/(m2 K)");
        Range.require("radiation coefficient at inside faces", radiant, 0.1, 10, "W/(m2 K)");
        Range.require("heat transfer coefficient at outside faces", outside, 1, 100, "W/(m2 K)");
    }

    /**
     * A summer day: walls 2.5, ceilings 0.7 and floors 0.7 (heat flows down through both),
     * radiation 5.13 (ISO 52016-1 and ISO 13789, from memory; with them the film resistances are
     * those of ISO 6946), outside 17 (ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, section 6.4).
     *
     * @return coefficients
     */
    public static Films summer() {
        return new Films(2.5, 0.7, 0.7, 5.13, 17);
    }

    /**
     * A winter night: walls 2.5, ceilings 5.0 (heat flows up), floors 0.7, radiation 5.13 (ISO
     * 52016-1, from memory), outside 34, that is 0.03 m2 K/W (ASHRAE Fundamentals 2021 SI, ch. 27,
     * example 3).
     *
     * @return coefficients
     */
    public static Films winter() {
        return new Films(2.5, 5.0, 0.7, 5.13, 34);
    }
}
