/**
 * The air itself: moist-air states and processes, the units of the trade, and shown work.
 *
 * <p>A first answer, the air of a room at 7,200 ft: two of its properties, the steps to all of
 * them, and a stream of it:
 *
 * <pre>{@code
 * var pressure = kilopascals(77.6);
 * var room = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(75), percent(45), pressure);
 * System.out.println(room.wetBulb() + ", " + room.density());
 * System.out.println(room.working());
 * System.out.println(AirStream.ofVolumeFlow(room, cubicFeetPerMinute(1200)));
 * }</pre>
 *
 * <p>Examples assume the imports {@code import static dev.thinair.units.Units.*} and of this
 * module's packages.
 */
module dev.thinair.psychro {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires si.uom.units;
    requires static org.apiguardian.api;

    exports dev.thinair.psychro;
    exports dev.thinair.psychro.kernel;
    exports dev.thinair.units;
    exports dev.thinair.working;
}
