package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.metres;

import dev.thinair.altitude.DensityRatio;
import dev.thinair.altitude.Derating;
import dev.thinair.ducts.DuctElevationTable;
import dev.thinair.examples.study.LinePicture;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** "How much less does a six-inch duct carry up here": three bases, three answers. */
final class SixInchLesson {
    static final String NAME = "six-inch-duct";

    private SixInchLesson() {}

    private record Basis(String name, Function<DensityRatio, Derating> of) {}

    private static final List<Basis> BASES =
            List.of(
                    new Basis("same pressure drop", Derating::ductsAtSamePressureDrop),
                    new Basis("same blower and speed", Derating::ductsWithSameBlowerAndSpeed),
                    new Basis("same velocity", Derating::ductsAtSameVelocity));

    static Lesson lesson() {
        double[] elevations = Numbers.even(0, 3000, 31);
        LinePicture chart =
                LinePicture.of("elevation, m", "heat carried, share of sea level, %")
                        .titled("The same duct, further up")
                        .within(0, 3000, 60, 102);
        for (Basis basis : BASES.subList(0, 2)) {
            double[] heat = new double[elevations.length];
            for (int i = 0; i < heat.length; i++) {
                heat[i] =
                        100 * Si.ratio(basis.of().apply(ratio(elevations[i])).heat(), "heat ratio");
            }
            chart =
                    chart.curve(
                            basis.name().startsWith("same blower")
                                    ? "same blower and speed, or same velocity"
                                    : basis.name(),
                            elevations,
                            heat);
        }
        List<List<String>> rows = new ArrayList<>();
        for (double h : new double[] {0, 1500, 2200, 2500}) {
            for (Basis basis : BASES) {
                Derating d = basis.of().apply(ratio(h));
                rows.add(
                        List.of(
                                Numbers.text(h, 0) + " m, " + basis.name(),
                                percent(Si.ratio(d.volume(), "volume ratio")),
                                percent(Si.ratio(d.mass(), "mass ratio")),
                                percent(Si.ratio(d.heat(), "heat ratio"))));
            }
        }
        Lesson.Writer lesson =
                new Lesson.Writer(NAME)
                        .section("What to look at")
                        .text(
                                "Ask how much less a six-inch duct carries at 2200 m and honest people give different"
                                        + " answers, since each holds something else fixed. Say first what is held, then"
                                        + " give volume, mass and heat. These are the textbook limits: losses that go with"
                                        + " density and the square of velocity, whatever the diameter. Real friction at house"
                                        + " flows also depends on Reynolds number, which costs a little more; the last table"
                                        + " has the six-inch duct itself.")
                        .points(
                                "Same pressure drop: the blower is set to push as hard as at sea level. Volume"
                                        + " rises, mass and heat fall with the root of density.",
                                "Same blower, same speed: the fan moves the same cubic feet whatever they weigh."
                                        + " Mass and heat fall with density itself. This is the house nobody"
                                        + " adjusted when the equipment was set up as if at sea level.",
                                "Same velocity, as when noise decides: the same numbers as the same fan.")
                        .picture(
                                "six-inch-duct",
                                "Heat carried by a duct against elevation, on two bases.",
                                chart)
                        .table(
                                "Share of the sea-level value, standard atmosphere",
                                List.of("elevation and basis", "volume", "mass", "heat"),
                                rows);
        DuctElevationTable six =
                DuctElevationTable.ofSixInchDuct(List.of(metres(1500), metres(2200), metres(2500)));
        List<List<String>> real = new ArrayList<>();
        for (DuctElevationTable.Row row : six.rows()) {
            real.add(
                    List.of(
                            Numbers.text(Si.metres(row.elevation(), "elevation"), 0)
                                    + " m, "
                                    + row.basis().words(),
                            percent(row.volumeRatio()),
                            percent(row.massRatio()),
                            percent(row.massRatio())));
        }
        lesson.table(
                "The same with real friction: a galvanized six-inch duct, 110 cfm at sea level",
                List.of("elevation and basis", "volume", "mass", "heat"),
                real);
        for (Basis basis : BASES) {
            lesson.section("The work at 2200 m: " + basis.name());
            lesson.working(basis.of().apply(ratio(2200)).working());
        }
        return lesson.build(
                "The six-inch duct on three bases",
                "What does a duct carry where the air is thin?");
    }

    private static DensityRatio ratio(double elevation) {
        return DensityRatio.ofStandardAtmosphere(metres(elevation));
    }

    private static String percent(double share) {
        return Numbers.text(100 * share, 1) + " %";
    }
}
