/**
 * What thin air does to pressure, density, airflow, coils and burners.
 *
 * <p>A first answer, the trade's 1.08 at 7,200 ft, and what the same blower still carries there:
 *
 * <pre>{@code
 * var site = SitePressure.standardAt(feet(7200));
 * var room = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(75), percent(45), site.pressure());
 * System.out.println(AirHeatFactors.of(room));
 * System.out.println(Derating.ductsWithSameBlowerAndSpeed(DensityRatio.atConstantTemperature(site)));
 * }</pre>
 *
 * <p>Examples assume the imports {@code import static dev.thinair.units.Units.*} and of this
 * module's packages.
 */
module dev.thinair.altitude {
    requires transitive dev.thinair.psychro;

    exports dev.thinair.altitude;
    exports dev.thinair.altitude.kernel;
}
