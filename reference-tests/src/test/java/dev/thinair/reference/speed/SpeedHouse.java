package dev.thinair.reference.speed;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.litresPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.millimetres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;

import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Exposure;
import dev.thinair.loads.FramedAssembly;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.House;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.Materials;
import dev.thinair.loads.Occupants;
import dev.thinair.loads.Overhang;
import dev.thinair.loads.Room;
import dev.thinair.loads.Schedule;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Ventilation;
import dev.thinair.loads.Window;
import dev.thinair.loads.kernel.InfiltrationModel;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Invented houses of ten rooms and an attic for the benchmarks. */
final class SpeedHouse {

    private SpeedHouse() {}

    static Site site(double elevation) {
        return Site.of(
                        "bench",
                        degrees(39),
                        degrees(-106),
                        ZoneOffset.ofHours(-7),
                        metres(elevation))
                .withGroundTemperature(celsius(10));
    }

    static CoolingDesignDay day(Site site, double dryBulb) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(dryBulb))
                .dailyRange(kelvinDifference(15))
                .wetBulb(celsius(15))
                .opticalDepths(0.28, 2.4)
                .build();
    }

    /** A framed wall whose insulation is a little different each time. */
    private static Assembly wall(int number) {
        return FramedAssembly.named("wall " + number)
                .layer(Materials.WOOD_SIDING.layer(millimetres(12)))
                .bridged(
                        Materials.BATT.layer(millimetres(140 + 0.01 * number)),
                        Materials.SOFTWOOD.layer(millimetres(140 + 0.01 * number)))
                .layer(Materials.GYPSUM_BOARD.layer(millimetres(12)))
                .framing(percent(20))
                .method(FramedAssembly.Method.PARALLEL_PATH)
                .build();
    }

    /**
     * Ten rooms, an attic, 80 surfaces, 24 windows; or each room's outer wall, ceiling, partitions
     * and inner mass cut into several.
     *
     * @param times how many times as many surfaces
     * @param alike whether the pieces of the outer walls are built alike; otherwise each has layers
     *     of its own and looks another way, so that nothing can be shared
     */
    static House tenRooms(int times, boolean alike) {
        Assembly wall = Assemblies.studWall140();
        Assembly ceiling = Assemblies.atticCeiling();
        Assembly partition = Assemblies.partition();
        Assembly floor = Assemblies.woodFloor();
        House.Builder house = House.named("ten rooms");
        for (int i = 0; i < 10; i++) {
            Room.Builder b =
                    Room.named("room " + i).floorArea(squareMetres(16)).height(metres(2.5));
            for (int k = 0; k < times; k++) {
                int number = i * times + k;
                double turn = alike ? 0 : 0.05 * number;
                Surface.Builder outer =
                        Surface.wall("front " + number, alike ? wall : wall(number))
                                .area(squareMetres(10.0 / times))
                                .facing(degrees((i < 5 ? 180 : 0) + turn));
                outer.window(
                        window("front a" + number, 1.2 / times, 1.2)
                                .withOverhang(Overhang.alongWall(metres(0.5), metres(0.3))),
                        window("front b" + number, 0.8 / times, 1.2));
                b.surface(outer);
                if (i % 5 == 0 || i % 5 == 4) {
                    b.surface(
                            Surface.wall("side " + number, alike ? wall : wall(-1 - number))
                                    .area(squareMetres(10.0 / times))
                                    .facing(degrees((i % 5 == 0 ? 90 : 270) + turn))
                                    .window(window("side " + number, 1.2 / times, 1.2)));
                }
                b.surface(
                        Surface.ceiling("ceiling " + number, ceiling)
                                .area(squareMetres(16.0 / times))
                                .under("attic"));
                b.surface(
                        Surface.floor("floor a" + number, floor)
                                .area(squareMetres(10.0 / times))
                                .toSpaceAt(celsius(18)));
                b.surface(
                        Surface.floor("floor b" + number, floor)
                                .area(squareMetres(6.0 / times))
                                .toSpaceAt(celsius(18)));
                if (i % 5 != 4) {
                    b.surface(
                            Surface.partition("partition " + number, partition)
                                    .area(squareMetres(10.0 / times))
                                    .to("room " + (i + 1)));
                }
                if (i < 5) {
                    b.surface(
                            Surface.partition("spine " + number, partition)
                                    .area(squareMetres(10.0 / times))
                                    .to("room " + (i + 5)));
                }
                b.surface(
                        Surface.mass("cupboard " + number, partition)
                                .area(squareMetres(4.0 / times)));
                if (i < 11) {
                    b.surface(
                            Surface.mass("inner " + number, partition)
                                    .area(squareMetres(3.0 / times)));
                }
                if (i == 0) {
                    b.surface(
                            Surface.mass("stair " + number, partition)
                                    .area(squareMetres(2.0 / times)));
                }
            }
            b.gain(
                    Occupants.of(0.5, Occupants.Activity.values()[0]).on(Schedule.between(18, 8)),
                    Appliances.of("things", watts(60), watts(10)));
            house.room(b.build());
        }
        Room.Builder attic =
                Room.unconditioned("attic")
                        .volume(cubicMetres(150))
                        .outdoorAir(airChangesPerHour(3));
        for (int k = 0; k < times; k++) {
            for (int side = 0; side < 2; side++) {
                attic.surface(
                        Surface.roof("roof " + side + " " + k, Assemblies.shingleRoof())
                                .area(squareMetres(90.0 / times))
                                .facing(degrees((side == 0 ? 180 : 0) + (alike ? 0 : 0.05 * k)))
                                .tilt(degrees(25))
                                .absorptance(ratio(0.85)));
            }
        }
        return house.room(attic.build())
                .infiltration(
                        Infiltration.blowerDoor(
                                airChangesPerHour(5),
                                cubicMetres(400),
                                ratio(0.65),
                                Exposure.of(1, InfiltrationModel.Shelter.MODERATE)))
                .ventilation(Ventilation.balanced(litresPerSecond(30)))
                .build();
    }

    private static Window window(String name, double width, double height) {
        return Window.of(
                name,
                metres(width),
                metres(height),
                wattsPerSquareMetreKelvin(2.0),
                Glazing.clearDouble());
    }
}
