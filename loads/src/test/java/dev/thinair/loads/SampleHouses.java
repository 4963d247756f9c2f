package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.litresPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;

import dev.thinair.loads.kernel.InfiltrationModel;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Invented houses that several tests share. */
final class SampleHouses {
    private SampleHouses() {}

    static Site site(double elevation) {
        return Site.of(
                        "test site",
                        degrees(39),
                        degrees(-106),
                        ZoneOffset.ofHours(-7),
                        metres(elevation))
                .withGroundTemperature(celsius(10));
    }

    static CoolingDesignDay hotDay(Site site) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(32))
                .dailyRange(kelvinDifference(15))
                .wetBulb(celsius(15))
                .opticalDepths(0.28, 2.4)
                .build();
    }

    static HeatingDesignDay coldDay(Site site) {
        return HeatingDesignDay.of(site, celsius(-20));
    }

    static Window window(String name, double width, double height) {
        return Window.of(
                name,
                metres(width),
                metres(height),
                wattsPerSquareMetreKelvin(2.0),
                Glazing.clearDouble());
    }

    /** One room with the given outer wall, a flat roof, a floor slab and inner mass. */
    static House shed(Assembly wall, Assembly roof, Assembly floor) {
        Room room =
                Room.named("room")
                        .floorArea(squareMetres(20))
                        .height(metres(2.5))
                        .surface(
                                Surface.wall("south", wall)
                                        .size(metres(5), metres(2.5))
                                        .facing(degrees(180))
                                        .window(window("south window", 1.5, 1.2)))
                        .surface(
                                Surface.wall("west", wall)
                                        .size(metres(4), metres(2.5))
                                        .facing(degrees(270)))
                        .surface(Surface.roof("roof", roof).area(squareMetres(20)))
                        .surface(Surface.floor("floor", floor).area(squareMetres(20)).adiabatic())
                        .surface(
                                Surface.mass("inner walls", Assemblies.partition())
                                        .area(squareMetres(20)))
                        .gain(
                                Occupants.of(2, Occupants.Activity.values()[0])
                                        .on(Schedule.between(8, 20)))
                        .build();
        return House.named("shed")
                .room(room)
                .infiltration(Infiltration.airChanges(airChangesPerHour(0.4), cubicMetres(50)))
                .build();
    }

    /** Ten rooms, an attic, 80 surfaces, 24 windows. */
    static House tenRooms() {
        Assembly wall = Assemblies.studWall140();
        Assembly ceiling = Assemblies.atticCeiling();
        Assembly partition = Assemblies.partition();
        Assembly floor = Assemblies.slab();
        List<Room> rooms = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double facing = i < 5 ? 180 : 0;
            Room.Builder b =
                    Room.named("room " + i).floorArea(squareMetres(16)).height(metres(2.5));
            Surface.Builder outer =
                    Surface.wall("front " + i, wall)
                            .size(metres(4), metres(2.5))
                            .facing(degrees(facing));
            outer.window(
                    window("front window a" + i, 1.2, 1.2), window("front window b" + i, 0.8, 1.2));
            if (i == 0) {
                outer.door(Door.of("door", squareMetres(2), wattsPerSquareMetreKelvin(2)));
            }
            b.surface(outer);
            if (i % 5 == 0 || i % 5 == 4) {
                b.surface(
                        Surface.wall("side " + i, wall)
                                .size(metres(4), metres(2.5))
                                .facing(degrees(i % 5 == 0 ? 90 : 270))
                                .window(window("side window " + i, 1.2, 1.2)));
            }
            b.surface(
                    Surface.ceiling("ceiling " + i, ceiling).area(squareMetres(16)).under("attic"));
            b.surface(
                    Surface.floor("floor " + i, floor)
                            .area(squareMetres(16))
                            .onGround(
                                    Ground.slabOnGround(
                                            metres(i % 5 == 0 || i % 5 == 4 ? 8 : 4),
                                            metres(0.3),
                                            wattsPerMetreKelvin(2))));
            if (i % 5 != 4) {
                b.surface(
                        Surface.partition("partition " + i, partition)
                                .size(metres(4), metres(2.5))
                                .to("room " + (i + 1)));
            }
            if (i < 5) {
                b.surface(
                        Surface.partition("spine " + i, partition)
                                .size(metres(4), metres(2.5))
                                .to("room " + (i + 5)));
            }
            b.surface(Surface.mass("cupboard " + i, partition).area(squareMetres(4)));
            b.surface(Surface.mass("inner " + i, partition).area(squareMetres(3)));
            b.gain(Occupants.of(0.5, Occupants.Activity.values()[0]));
            b.gain(Appliances.of("things", watts(60), watts(10)));
            rooms.add(b.build());
        }
        Room attic =
                Room.unconditioned("attic")
                        .volume(cubicMetres(150))
                        .outdoorAir(airChangesPerHour(3))
                        .surface(
                                Surface.roof("south roof", Assemblies.shingleRoof())
                                        .area(squareMetres(90))
                                        .facing(degrees(180))
                                        .tilt(degrees(25))
                                        .absorptance(ratio(0.85)))
                        .surface(
                                Surface.roof("north roof", Assemblies.shingleRoof())
                                        .area(squareMetres(90))
                                        .facing(degrees(0))
                                        .tilt(degrees(25))
                                        .absorptance(ratio(0.85)))
                        .build();
        House.Builder house = House.named("ten rooms").room(rooms.toArray(new Room[0])).room(attic);
        return house.infiltration(
                        Infiltration.blowerDoor(
                                airChangesPerHour(5),
                                cubicMetres(400),
                                ratio(0.65),
                                Exposure.of(1, InfiltrationModel.Shelter.MODERATE)))
                .ventilation(Ventilation.balanced(litresPerSecond(30)))
                .ducts(percent(8), percent(8))
                .build();
    }
}
