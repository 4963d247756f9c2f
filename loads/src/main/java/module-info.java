/**
 * How much heat a house gains and loses, hour by hour, room by room.
 *
 * <p>A first answer, one room's load through a hot day at 7,200 ft:
 *
 * <pre>{@code
 * var site = Site.of("invented", degrees(39), degrees(-106), ZoneOffset.ofHours(-7), feet(7200));
 * var room = Room.named("living").floorArea(squareFeet(400)).height(feet(8)).
 *         surface(Surface.wall("west", Assemblies.studWall89()).size(feet(20), feet(8)).facing(degrees(270)).
 *                 window(Window.of("window", feet(8), feet(5), uValueIp(0.5), Glazing.clearDouble()))).
 *         surface(Surface.mass("inner walls", Assemblies.partition()).area(squareFeet(480)));
 * var house = House.named("one room").room(room).infiltration(Infiltration.none()).build();
 * var day = CoolingDesignDay.at(site).date(LocalDate.of(2026, 7, 21)).dryBulb(fahrenheit(88)).
 *         dailyRange(fahrenheitDifference(30)).wetBulb(fahrenheit(58)).opticalDepths(0.31, 2.35).build();
 * var load = house.compile(site).coolingLoad(day, Setpoint.of(fahrenheit(72)));
 * System.out.println(load.table());
 * }</pre>
 *
 * <p>Examples assume the imports {@code import static dev.thinair.units.Units.*} and of this
 * module's packages, {@code java.time} and {@code java.util}.
 */
module dev.thinair.loads {
    requires transitive dev.thinair.altitude;
    requires net.e175.klaus.solarpositioning;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.loads;
    exports dev.thinair.loads.kernel;
}
