package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metres;

import dev.thinair.examples.study.LinePicture;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Films;
import dev.thinair.loads.Layer;
import dev.thinair.loads.Site;
import dev.thinair.loads.kernel.PeriodicResponse;
import dev.thinair.loads.kernel.SolAir;
import dev.thinair.loads.kernel.Transmission;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;

/** How a wall delays and flattens the heat of the day. */
final class WallLesson {
    static final String NAME = "wall";
    private static final double INDOOR = 24 + 273.15; // K
    private static final double ABSORPTANCE = 0.7;
    private static final double DAY = 86_400;

    private WallLesson() {}

    static Lesson lesson() {
        Films films = Films.summer();
        CoolingDesignDay day = day();
        double[] solAir = new double[24];
        double[] hours = Numbers.even(0, 23, 24);
        for (int h = 0; h < 24; h++) {
            Quantity<?> sun = day.irradianceWorking(h, degrees(270), degrees(90)).result();
            solAir[h] =
                    Si.kelvins(day.dryBulb(h), "dry bulb")
                            + SolAir.excess(
                                    ABSORPTANCE,
                                    sun.getValue().doubleValue(),
                                    0.9,
                                    SolAir.longwaveLoss(Math.PI / 2),
                                    films.outside());
        }
        LinePicture chart =
                LinePicture.of("hour of the day, standard time", "heat through the wall, W/m2")
                        .titled("Three west walls on one hot day");
        List<List<String>> rows = new ArrayList<>();
        double[] bare = null;
        for (Assembly assembly :
                List.of(
                        Assemblies.studWall89(),
                        Assemblies.concreteWallInsulatedOutside(),
                        Assemblies.adobeWall())) {
            List<Layer> layers = assembly.paths().get(0).layers();
            double[] r = new double[layers.size() + 2];
            double[] c = new double[r.length];
            // The room's air and its other faces share one temperature here: both ways count.
            r[0] = 1 / (films.wall() + films.radiant());
            for (int i = 0; i < layers.size(); i++) {
                r[i + 1] = layers.get(i).squareMetreKelvinsPerWatt();
                c[i + 1] = layers.get(i).joulesPerSquareMetreKelvin();
            }
            r[r.length - 1] = 1 / films.outside();
            double[] heat =
                    PeriodicResponse.convolve(PeriodicResponse.responseFactors(r, c), solAir);
            double u = Transmission.transmittance(r);
            int peak = 0;
            for (int h = 0; h < 24; h++) {
                heat[h] -= u * INDOOR;
                peak = heat[h] > heat[peak] ? h : peak;
            }
            if (bare == null) {
                bare = new double[24];
                for (int h = 0; h < 24; h++) {
                    bare[h] = u * (solAir[h] - INDOOR);
                }
                chart = chart.dashed("the first without its mass", hours, bare);
            }
            chart = chart.line(assembly.name(), hours, heat);
            rows.add(
                    List.of(
                            assembly.name(),
                            Numbers.text(u, 2),
                            Numbers.text(Transmission.decrementFactor(r, c, DAY), 2),
                            Numbers.text(Transmission.lag(r, c, DAY) / 3600, 1) + " h",
                            Numbers.text(heat[peak], 1),
                            peak + ":00"));
        }
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "The afternoon sun stands on all three walls in the same hours. Without any mass the heat"
                                + " would pass at once (dashed). The stud wall passes most of the swing on within"
                                + " a few hours; the heavy walls keep it, pass on a fifth of it or less, and pass"
                                + " that on late, when the sun is gone. The mean over the day is set by the U-value"
                                + " alone: mass moves heat in time and does not stop it, and the adobe wall, which"
                                + " has no insulation, lets the most through.")
                .picture(
                        "wall-delay",
                        "Heat into the room through one square metre of three west walls over a day.",
                        chart)
                .table(
                        "Studs reckoned into their layer; films of summer; room at 24 degC",
                        List.of(
                                "wall",
                                "U, W/(m2 K)",
                                "decrement factor, 24 h",
                                "time lag, 24 h",
                                "peak heat, W/m2",
                                "peak hour"),
                        rows)
                .text(
                        "Decrement factor and lag are those of ISO 13786 for a 24-hour wave. The curves use"
                                + " all harmonics of the hourly values, and so show what a single wave"
                                + " cannot: the steep afternoon of the stud wall.")
                .section("The work: sun on the wall at five in the afternoon")
                .working(day.irradianceWorking(17, degrees(270), degrees(90)))
                .section("The work: U-value of the first wall")
                .working(Assemblies.studWall89().working(dev.thinair.loads.HeatFlow.HORIZONTAL))
                .build("How a wall delays heat", "One hot day, three west walls, " + place(day));
    }

    private static CoolingDesignDay day() {
        Site site =
                Site.of(
                        "a place made up",
                        degrees(39),
                        degrees(-105),
                        ZoneOffset.ofHours(-7),
                        metres(2200));
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(32))
                .dailyRange(kelvinDifference(15))
                .wetBulb(celsius(16))
                .opticalDepths(0.31, 2.4)
                .build();
    }

    private static String place(CoolingDesignDay day) {
        return "2200 m, "
                + Numbers.text(day.dryBulb().to(Units.CELSIUS).getValue().doubleValue(), 0)
                + " degC at the hottest";
    }
}
