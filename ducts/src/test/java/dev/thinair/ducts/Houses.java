package dev.thinair.ducts;

import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.percent;

import dev.thinair.units.Units;

/** Invented duct systems for the tests. */
final class Houses {

    private Houses() {}

    /** Invented four-speed blower of about three tons. */
    static Blower blower() {
        return Blower.builder()
                .speed("high")
                .point(inchesOfWater(0.05), cubicFeetPerMinute(1520))
                .point(inchesOfWater(0.2), cubicFeetPerMinute(1450))
                .point(inchesOfWater(0.4), cubicFeetPerMinute(1335))
                .point(inchesOfWater(0.6), cubicFeetPerMinute(1200))
                .point(inchesOfWater(0.8), cubicFeetPerMinute(1030))
                .point(inchesOfWater(1.0), cubicFeetPerMinute(800))
                .point(inchesOfWater(1.2), cubicFeetPerMinute(420))
                .speed("low")
                .point(inchesOfWater(0.05), cubicFeetPerMinute(1060))
                .point(inchesOfWater(0.2), cubicFeetPerMinute(1030))
                .point(inchesOfWater(0.4), cubicFeetPerMinute(960))
                .point(inchesOfWater(0.6), cubicFeetPerMinute(850))
                .point(inchesOfWater(0.8), cubicFeetPerMinute(690))
                .point(inchesOfWater(1.0), cubicFeetPerMinute(380))
                .efficiency(percent(16))
                .build();
    }

    /** Invented house: trunk with reductions, eight six- and seven-inch runs, two returns. */
    static DuctSystem.Builder house() {
        DuctSystem.Builder b =
                DuctSystem.builder()
                        .blower(blower())
                        .filter(
                                Filter.of(
                                        cubicFeetPerMinute(1000), inchesOfWater(0.15), percent(50)))
                        .coil(
                                WetCoil.of(
                                        cubicFeetPerMinute(1200),
                                        inchesOfWater(0.2),
                                        inchesOfWater(0.26)))
                        .trunk("trunk 1", DuctSystem.SUPPLY_PLENUM, "A", trunk(20, 8, 10))
                        .trunk("trunk 2", "A", "B", trunk(16, 8, 12))
                        .trunk("trunk 3", "B", "C", trunk(12, 8, 12))
                        .returnRun(
                                "hall return",
                                "hall",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.rectangular(inches(20), inches(10)),
                                                feet(12),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1.2),
                                Register.of(inches(24), inches(16)))
                        .returnRun(
                                "den return",
                                "den",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.round(inches(10)),
                                                feet(20),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1.5),
                                Register.of(inches(16), inches(12)))
                        .leak(
                                DuctSystem.SUPPLY_PLENUM,
                                DuctLeak.at25Pascals(cubicFeetPerMinute(40), Place.ATTIC))
                        .leak(
                                DuctSystem.RETURN_PLENUM,
                                DuctLeak.at25Pascals(cubicFeetPerMinute(50), Place.CRAWL_SPACE));
        String[] rooms = {"den", "kitchen", "living", "living", "bath", "bed 1", "bed 2", "bed 3"};
        String[] nodes = {"A", "A", "A", "B", "B", "C", "C", "C"};
        for (int i = 0; i < rooms.length; i++) {
            b.supplyRun(
                    "run " + (i + 1),
                    nodes[i],
                    rooms[i],
                    run(i),
                    Register.of(inches(10), inches(6)));
        }
        return b;
    }

    static Duct trunk(double width, double height, double length) {
        return Duct.of(
                        DuctShape.rectangular(inches(width), inches(height)),
                        feet(length),
                        DuctMaterial.GALVANIZED)
                .withLossCoefficient(0.2);
    }

    static Duct run(int i) {
        return Duct.of(
                        DuctShape.round(inches(i % 3 == 2 ? 7 : 6)),
                        feet(10 + 2.5 * i),
                        DuctMaterial.GALVANIZED)
                .withLossCoefficient(1.6)
                .in(Place.ATTIC)
                .withInsulation(Units.quantity(1.06, Units.SQUARE_METRE_KELVIN_PER_WATT));
    }
}
