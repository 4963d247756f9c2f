/**
 * How much air a blower really moves through the ducts it has.
 *
 * <p>A first answer, two ducts and a blower, at sea level and at 7,200 ft:
 *
 * <pre>{@code
 * var duct = Duct.of(DuctShape.round(inches(14)), feet(40), DuctMaterial.GALVANIZED).withLossCoefficient(4);
 * var grille = Register.of(inches(24), inches(20));
 * var blower = Blower.builder().speed("high").point(inchesOfWater(0.1), cubicFeetPerMinute(1250)).
 *         point(inchesOfWater(0.9), cubicFeetPerMinute(800)).efficiency(percent(20)).build();
 * var ducts = DuctSystem.builder().blower(blower).
 *         supplyRun("supply", DuctSystem.SUPPLY_PLENUM, "house", duct, grille).
 *         returnRun("return", "house", DuctSystem.RETURN_PLENUM, duct, grille).build();
 * for (double elevation : new double[] {0, 7200}) {
 *     var site = SitePressure.standardAt(feet(elevation));
 *     var air = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(75), percent(45), site.pressure());
 *     System.out.println(ducts.solve(air));
 * }
 * }</pre>
 *
 * <p>Examples assume the imports {@code import static dev.thinair.units.Units.*} and of this
 * module's packages.
 */
module dev.thinair.ducts {
    requires transitive dev.thinair.altitude;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.ducts;
    exports dev.thinair.ducts.kernel;
}
