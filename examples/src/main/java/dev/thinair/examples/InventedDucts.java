package dev.thinair.examples;

import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.percent;

import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.WetCoil;

/**
 * Made-up ducts that the lessons and the large study share: a blower with filter, coil and return,
 * and runs of round 6 in. duct.
 */
public final class InventedDucts {
    /** Static pressure in inches of water, and cubic feet per minute of standard air. */
    private static final double[][] BLOWER = {
        {0.05, 1290}, {0.2, 1240}, {0.4, 1150}, {0.6, 1030}, {0.8, 880}, {1.0, 660}, {1.2, 330}
    };

    private InventedDucts() {}

    /** Pressures of the blower's table, in. of water. */
    public static double[] blowerPressures() {
        return column(0);
    }

    /** Airflows of the blower's table, cfm of standard air. */
    public static double[] blowerAirflows() {
        return column(1);
    }

    private static double[] column(int c) {
        double[] values = new double[BLOWER.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = BLOWER[i][c];
        }
        return values;
    }

    /**
     * Everything but the supply runs.
     *
     * @param size 1 for some 1,000 cfm; widths and airflows go with it, pressures stay
     * @param room where the return grille is
     */
    public static DuctSystem.Builder airHandler(double size, String room) {
        Blower.Builder blower = Blower.builder().speed("high").efficiency(percent(20));
        for (double[] point : BLOWER) {
            blower.point(inchesOfWater(point[0]), cubicFeetPerMinute(point[1] * size));
        }
        return DuctSystem.builder()
                .blower(blower.build())
                .filter(
                        Filter.of(
                                cubicFeetPerMinute(1000 * size), inchesOfWater(0.15), percent(50)))
                .coil(
                        WetCoil.of(
                                cubicFeetPerMinute(1000 * size),
                                inchesOfWater(0.2),
                                inchesOfWater(0.25)))
                .returnRun(
                        "return",
                        room,
                        DuctSystem.RETURN_PLENUM,
                        Duct.of(
                                        DuctShape.rectangular(inches(24 * size), inches(10)),
                                        feet(10),
                                        DuctMaterial.GALVANIZED)
                                .withLossCoefficient(1.2),
                        Register.of(inches(30 * size), inches(20)));
    }

    /**
     * Adds a supply run of round 6 in. duct with its register.
     *
     * @param ducts what it is added to
     * @param name of the run
     * @param room where it ends
     * @param length in feet
     */
    public static void addRun(DuctSystem.Builder ducts, String name, String room, double length) {
        ducts.supplyRun(
                name,
                DuctSystem.SUPPLY_PLENUM,
                room,
                Duct.of(DuctShape.round(inches(6)), feet(length), DuctMaterial.GALVANIZED)
                        .withLossCoefficient(1.5),
                Register.of(inches(10), inches(6)));
    }

    /**
     * An air handler of size 1 with runs to one room, from 15 ft on each a foot longer.
     *
     * @param runs how many, named "run 1" and so on
     */
    public static DuctSystem withRuns(int runs) {
        DuctSystem.Builder ducts = airHandler(1, "house");
        for (int i = 1; i <= runs; i++) {
            addRun(ducts, "run " + i, "house", 14 + i);
        }
        return ducts.build();
    }
}
