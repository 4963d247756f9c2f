/**
 * How the installed system runs: capacity, coil temperature, starts, energy, bill.
 *
 * <p>A first answer, a three-ton unit that gets 300 standard cfm a ton at 7,200 ft, and how often a
 * thermostat starts it at half load:
 *
 * <pre>{@code
 * var site = SitePressure.standardAt(feet(7200));
 * var air = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(75), percent(45), site.pressure());
 * var unit = CoolingUnit.typical(tonsOfRefrigeration(3), Staging.SINGLE);
 * var state = unit.steady(air, kilogramsPerSecond(0.51), fahrenheit(88));
 * System.out.println(state);
 * System.out.println(CycleEstimate.of(unit, Thermostat.at(fahrenheit(75)), kilowatts(4), state.totalCapacity()));
 * }</pre>
 *
 * <p>The whole of it, house and ducts and unit and thermostat, is an {@link
 * dev.thinair.cycling.InstalledSystem}, and {@link dev.thinair.cycling.Review} says what is wrong
 * with it and what would help.
 *
 * <p>Examples assume the imports {@code import static dev.thinair.units.Units.*} and of this
 * module's packages.
 */
module dev.thinair.cycling {
    requires transitive dev.thinair.loads;
    requires transitive dev.thinair.ducts;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.cycling;
    exports dev.thinair.cycling.kernel;
}
