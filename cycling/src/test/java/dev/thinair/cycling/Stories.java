package dev.thinair.cycling;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;

import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.WetCoil;
import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.Ground;
import dev.thinair.loads.House;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.Occupants;
import dev.thinair.loads.Room;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Window;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** One invented house in many states, for the stories and the properties. */
final class Stories {

    static final String[] ROOMS = {"living", "kitchen", "hall", "bed 1", "bed 2", "bed 3"};

    /** Twelve supply runs: room of each. */
    private static final String[] RUNS = {
        "living", "living", "living", "kitchen", "kitchen", "hall", "bed 1", "bed 1", "bed 2",
        "bed 2", "bed 3", "bed 3"
    };

    private Stories() {}

    static Site site(double elevation) {
        return Site.of(
                        "invented place",
                        degrees(38),
                        degrees(-105),
                        ZoneOffset.ofHours(-7),
                        metres(elevation))
                .withGroundTemperature(celsius(12));
    }

    static CoolingDesignDay seaLevelDay(Site site) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(34))
                .dailyRange(kelvinDifference(10))
                .wetBulb(celsius(23))
                .opticalDepths(0.45, 2.0)
                .build();
    }

    static CoolingDesignDay mountainDay(Site site) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(33))
                .dailyRange(kelvinDifference(15))
                .wetBulb(celsius(16))
                .opticalDepths(0.3, 2.4)
                .build();
    }

    static House house() {
        House.Builder house = House.named("invented bungalow");
        for (int i = 0; i < ROOMS.length; i++) {
            double area = i == 0 ? 40 : i == 2 ? 15 : 22;
            double width = i == 0 ? 8 : 5;
            double facing = new double[] {180, 270, 0, 180, 90, 0}[i];
            Room.Builder room =
                    Room.named(ROOMS[i]).floorArea(squareMetres(area)).height(metres(2.5));
            Surface.Builder wall =
                    Surface.wall(ROOMS[i] + " wall", Assemblies.studWall89())
                            .size(metres(width), metres(2.5))
                            .facing(degrees(facing));
            if (i != 2) {
                wall.window(
                        Window.of(
                                ROOMS[i] + " window",
                                metres(i == 0 ? 4.2 : 2.4),
                                metres(1.5),
                                wattsPerSquareMetreKelvin(2.6),
                                Glazing.clearDouble()));
            }
            room.surface(wall);
            if (i != 2) {
                room.surface(
                        Surface.wall(ROOMS[i] + " side", Assemblies.studWall89())
                                .size(metres(4), metres(2.5))
                                .facing(degrees((facing + 90) % 360)));
            }
            room.surface(
                    Surface.ceiling(ROOMS[i] + " ceiling", Assemblies.atticCeiling())
                            .area(squareMetres(area))
                            .under("attic"));
            room.surface(
                    Surface.floor(ROOMS[i] + " floor", Assemblies.slab())
                            .area(squareMetres(area))
                            .onGround(
                                    Ground.slabOnGround(
                                            metres(width + 4),
                                            metres(0.3),
                                            wattsPerMetreKelvin(2))));
            room.surface(
                    Surface.mass(ROOMS[i] + " inside walls", Assemblies.partition())
                            .area(squareMetres(area)));
            if (i != 2) {
                room.surface(
                        Surface.partition(ROOMS[i] + " to hall", Assemblies.partition())
                                .size(metres(3), metres(2.5))
                                .to("hall"));
            }
            room.gain(Occupants.of(0.7, Occupants.Activity.values()[0]));
            room.gain(Appliances.of("things in " + ROOMS[i], Units.watts(180), Units.watts(30)));
            house.room(room.build());
        }
        Room attic =
                Room.unconditioned("attic")
                        .volume(cubicMetres(150))
                        .outdoorAir(airChangesPerHour(4))
                        .surface(
                                Surface.roof("south roof", Assemblies.shingleRoof())
                                        .area(squareMetres(80))
                                        .facing(degrees(180))
                                        .tilt(degrees(25))
                                        .absorptance(ratio(0.85)))
                        .surface(
                                Surface.roof("north roof", Assemblies.shingleRoof())
                                        .area(squareMetres(80))
                                        .facing(degrees(0))
                                        .tilt(degrees(25))
                                        .absorptance(ratio(0.85)))
                        .build();
        return house.room(attic)
                .infiltration(Infiltration.airChanges(airChangesPerHour(0.6), cubicMetres(357)))
                .build();
    }

    static CompiledHouse compiled(Site site) {
        return house().compile(site);
    }

    static Blower blower() {
        return Blower.builder()
                .speed("high")
                .point(inchesOfWater(0.05), cubicFeetPerMinute(1090))
                .point(inchesOfWater(0.2), cubicFeetPerMinute(1040))
                .point(inchesOfWater(0.4), cubicFeetPerMinute(960))
                .point(inchesOfWater(0.6), cubicFeetPerMinute(855))
                .point(inchesOfWater(0.8), cubicFeetPerMinute(720))
                .point(inchesOfWater(1.0), cubicFeetPerMinute(520))
                .point(inchesOfWater(1.2), cubicFeetPerMinute(210))
                .efficiency(percent(20))
                .build();
    }

    static Filter filter() {
        return Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.12), percent(50));
    }

    /** Twelve runs of this diameter, a wide return. */
    static DuctSystem ducts(double runInches) {
        DuctSystem.Builder b =
                DuctSystem.builder()
                        .blower(blower())
                        .filter(filter())
                        .coil(
                                WetCoil.of(
                                        cubicFeetPerMinute(1000),
                                        inchesOfWater(0.15),
                                        inchesOfWater(0.2)))
                        .returnRun(
                                "hall return",
                                "hall",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.rectangular(inches(24), inches(12)),
                                                feet(8),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1.0),
                                Register.of(inches(30), inches(20)))
                        .returnRun(
                                "living return",
                                "living",
                                DuctSystem.RETURN_PLENUM,
                                Duct.of(
                                                DuctShape.round(inches(14)),
                                                feet(15),
                                                DuctMaterial.GALVANIZED)
                                        .withLossCoefficient(1.2),
                                Register.of(inches(20), inches(16)));
        for (int i = 0; i < RUNS.length; i++) {
            b.supplyRun(
                    "run " + (i + 1),
                    DuctSystem.SUPPLY_PLENUM,
                    RUNS[i],
                    Duct.of(
                                    DuctShape.round(inches(runInches)),
                                    feet(12 + i),
                                    DuctMaterial.GALVANIZED)
                            .withLossCoefficient(1.3),
                    Register.of(inches(10), inches(6)));
        }
        return b.build();
    }

    static Tariff tariff() {
        return Tariff.flat("coins", 0.2);
    }

    static CoolingUnit unit(double tons, Staging staging) {
        return CoolingUnit.typical(tonsOfRefrigeration(tons), staging);
    }

    private static final CompiledHouse LOW = compiled(site(0));
    private static final CompiledHouse HIGH = compiled(site(2200));

    /** The house at sea level or at 2200 m. */
    static InstalledSystem.Builder at(boolean high, double tons, double runInches) {
        Site site = site(high ? 2200 : 0);
        return InstalledSystem.builder()
                .house(high ? HIGH : LOW)
                .designDay(high ? mountainDay(site) : seaLevelDay(site))
                .ducts(ducts(runInches))
                .unit(unit(tons, Staging.SINGLE))
                .thermostat(Thermostat.at(fahrenheit(75)))
                .tariff(tariff());
    }
}
