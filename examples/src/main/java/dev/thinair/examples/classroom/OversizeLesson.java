package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.CycleEstimate;
import dev.thinair.cycling.DayRun;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.Tariff;
import dev.thinair.cycling.Thermostat;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.examples.InventedDucts;
import dev.thinair.examples.report.Show;
import dev.thinair.examples.study.LinePicture;
import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.Ground;
import dev.thinair.loads.House;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.Room;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Window;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** A day in the life of a right-sized and an oversized unit in one house. */
final class OversizeLesson {
    static final String NAME = "oversize";
    private static final String[] ROOMS = {"living", "sleeping"};

    private OversizeLesson() {}

    private record Choice(String name, double tons, Staging staging) {}

    static Lesson lesson() {
        CoolingDesignDay day = day();
        CompiledHouse house = house().compile(day.site());
        LinePicture trace =
                LinePicture.of("hour of the day, standard time", "on or off, one track a unit")
                        .titled("Noon to six on the hottest day")
                        .withoutVerticalNumbers()
                        .within(12, 18, -0.5, 5.4);
        LinePicture share =
                LinePicture.of("hour of the day, standard time", "share of the hour on, %")
                        .titled("How long it runs on the hottest day")
                        .within(0, 23, 0, 105);
        List<List<String>> rows = new ArrayList<>();
        InstalledSystem first = null;
        for (Choice choice :
                List.of(
                        new Choice("1.75 ton single-stage", 1.75, Staging.SINGLE),
                        new Choice("3.5 ton single-stage", 3.5, Staging.SINGLE),
                        new Choice("3.5 ton two-stage", 3.5, Staging.TWO_STAGE),
                        new Choice("3.5 ton variable", 3.5, Staging.VARIABLE))) {
            InstalledSystem system =
                    InstalledSystem.builder()
                            .house(house)
                            .designDay(day)
                            .ducts(ducts(choice.tons()))
                            .unit(
                                    CoolingUnit.typical(
                                            tonsOfRefrigeration(choice.tons()), choice.staging()))
                            .thermostat(Thermostat.at(fahrenheit(75)))
                            .tariff(Tariff.flat("coins", 0.2))
                            .thermostatRoom(ROOMS[0])
                            .build();
            first = first == null ? system : first;
            DayRun run = system.runDay();
            trace = addTrack(trace, choice.name(), rows.size(), run);
            double[] on = new double[24];
            for (int h = 0; h < 24; h++) {
                on[h] = 100 * Si.ratio(run.runFraction(h), "run fraction");
            }
            share = share.line(choice.name(), Numbers.even(0, 23, 24), on);
            rows.add(
                    List.of(
                            choice.name(),
                            hours(Si.seconds(run.hoursOn(), "time on")),
                            hours(Si.seconds(run.longestRun(), "longest run")),
                            Integer.toString(run.starts()),
                            Numbers.text(
                                            Si.kelvins(run.maximumIndoorTemperature(), "t")
                                                    - 273.15,
                                            1)
                                    + " degC",
                            Numbers.text(100 * Si.ratio(run.meanRelativeHumidity(), "humidity"), 0)
                                    + " %",
                            Numbers.text(Si.joules(run.electricity(), "electricity") / 3.6e6, 1)
                                    + " kWh",
                            Numbers.text(100 * Si.ratio(run.cyclingPenalty(), "penalty"), 1)
                                    + " %"));
        }
        double peak = Si.watts(first.designLoad(), "design load");
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "The house needs "
                                + Numbers.text(
                                        Show.in(first.designLoad(), Units.TON_OF_REFRIGERATION), 1)
                                + " tons at its worst. The unit of 1.75 tons runs for hours on end"
                                + " on this day, and that is health, not weakness: few starts, steady air. The unit of"
                                + " twice the size does the same work in short bursts. Each start costs energy"
                                + " before the coil is cold, wears the compressor, and gives the coil less time to"
                                + " dry the air (which shows where it is humid, not in this dry place).")
                .text(
                        "A second stage or a variable compressor lets a large unit act small. It mends the"
                                + " cycling as far as its lowest stage is small enough, and costs more to buy."
                                + " Every unit here has ducts made for it.")
                .picture(
                        "oversize-share-on",
                        "Share of each hour that the unit runs, hottest day.",
                        share)
                .picture(
                        "oversize-on-off",
                        "When each unit is on (line up) and off (line down), noon to six.",
                        trace)
                .table(
                        "The hottest day, setpoint 75 degF (23.9 degC)",
                        List.of(
                                "unit",
                                "time on",
                                "longest run",
                                "starts",
                                "warmest",
                                "mean humidity",
                                "electricity",
                                "lost to starting"),
                        rows)
                .section("The work: starts an hour of the larger unit at half the design load")
                .working(
                        CycleEstimate.of(
                                        CoolingUnit.typical(
                                                tonsOfRefrigeration(3.5), Staging.SINGLE),
                                        Thermostat.at(fahrenheit(75)),
                                        watts(peak / 2),
                                        tonsOfRefrigeration(3.5))
                                .cycleRateWorking())
                .build(
                        "A day in the life of two units",
                        "One house, its hottest day, a unit that fits and one twice as large");
    }

    private static String hours(double seconds) {
        return seconds < 5400
                ? Numbers.text(seconds / 60, 0) + " min"
                : Numbers.text(seconds / 3600, 1) + " h";
    }

    /** A line that is up while the unit is on, drawn from the switching times themselves. */
    private static LinePicture addTrack(LinePicture picture, String name, int place, DayRun run) {
        RunRecord record = run.record();
        double foot = 4.2 - 1.4 * place;
        List<double[]> corners = new ArrayList<>();
        boolean on = record.eventCount() > 0 && !record.eventSwitchesOn(0);
        corners.add(new double[] {0, foot + (on ? 1 : 0)});
        for (int e = 0; e < record.eventCount(); e++) {
            double h = record.eventTime(e) / 3600;
            corners.add(new double[] {h, foot + (on ? 1 : 0)});
            on = record.eventSwitchesOn(e);
            corners.add(new double[] {h, foot + (on ? 1 : 0)});
        }
        corners.add(new double[] {24, foot + (on ? 1 : 0)});
        return picture.solid(
                        "",
                        corners.stream().mapToDouble(p -> p[0]).toArray(),
                        corners.stream().mapToDouble(p -> p[1]).toArray())
                .labelBelow(12, foot - 0.03, name);
    }

    private static CoolingDesignDay day() {
        Site site =
                Site.of(
                                "a town made up",
                                degrees(38),
                                degrees(-105),
                                ZoneOffset.ofHours(-7),
                                metres(1500))
                        .withGroundTemperature(celsius(13));
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(34))
                .dailyRange(kelvinDifference(13))
                .wetBulb(celsius(18))
                .opticalDepths(0.35, 2.3)
                .build();
    }

    private static House house() {
        House.Builder house = House.named("class house");
        for (int i = 0; i < ROOMS.length; i++) {
            double facing = i == 0 ? 180 : 0;
            Room.Builder room =
                    Room.named(ROOMS[i]).floorArea(squareMetres(70)).height(metres(2.5));
            room.surface(
                    Surface.wall(ROOMS[i] + " long wall", Assemblies.studWall89())
                            .size(metres(10), metres(2.5))
                            .facing(degrees(facing))
                            .window(
                                    Window.of(
                                            ROOMS[i] + " window",
                                            metres(5),
                                            metres(1.4),
                                            wattsPerSquareMetreKelvin(2.6),
                                            Glazing.clearDouble())));
            room.surface(
                    Surface.wall(ROOMS[i] + " west wall", Assemblies.studWall89())
                            .size(metres(7), metres(2.5))
                            .facing(degrees(270))
                            .window(
                                    Window.of(
                                            ROOMS[i] + " west window",
                                            metres(2),
                                            metres(1.4),
                                            wattsPerSquareMetreKelvin(2.6),
                                            Glazing.clearDouble())));
            room.surface(
                    Surface.wall(ROOMS[i] + " east wall", Assemblies.studWall89())
                            .size(metres(7), metres(2.5))
                            .facing(degrees(90)));
            room.surface(
                    Surface.roof(ROOMS[i] + " roof", Assemblies.cathedralRoof())
                            .area(squareMetres(74))
                            .facing(degrees(facing))
                            .tilt(degrees(20))
                            .absorptance(ratio(0.8)));
            room.surface(
                    Surface.floor(ROOMS[i] + " floor", Assemblies.slab())
                            .area(squareMetres(70))
                            .onGround(
                                    Ground.slabOnGround(
                                            metres(24), metres(0.3), wattsPerMetreKelvin(2))));
            room.surface(
                    Surface.mass(ROOMS[i] + " inside walls", Assemblies.partition())
                            .area(squareMetres(50)));
            room.gain(Appliances.of("things in " + ROOMS[i], watts(300), watts(60)));
            house.room(room.build());
        }
        return house.infiltration(Infiltration.airChanges(airChangesPerHour(0.5), cubicMetres(350)))
                .build();
    }

    /** Ducts that suit a unit of this size at 1500 m. */
    private static DuctSystem ducts(double tons) {
        double s = tons / 2;
        DuctSystem.Builder ducts = InventedDucts.airHandler(s, ROOMS[0]);
        for (String room : ROOMS) {
            for (int i = 1; i <= Math.round(5 * s); i++) {
                InventedDucts.addRun(ducts, room + " " + i, room, 18);
            }
        }
        return ducts.build();
    }
}
