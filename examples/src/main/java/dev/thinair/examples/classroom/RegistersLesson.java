package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;

import dev.thinair.altitude.DensityRatio;
import dev.thinair.altitude.SitePressure;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.examples.InventedDucts;
import dev.thinair.examples.report.Show;
import dev.thinair.examples.study.LinePicture;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;

/** What shut registers do: the operating point climbs the blower's curve. */
final class RegistersLesson {
    static final String NAME = "registers";
    private static final int RUNS = 10;

    private RegistersLesson() {}

    static Lesson lesson() {
        MoistAir air =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        fahrenheit(72),
                        percent(45),
                        SitePressure.standardAt(metres(2200)).pressure());
        // Blower tables hold for standard air; at one speed pressure goes with density (fan laws).
        double thin = DensityRatio.ofMoistAir(air).number();
        double[] x = InventedDucts.blowerAirflows();
        double[] y = InventedDucts.blowerPressures();
        for (int i = 0; i < y.length; i++) {
            y[i] *= thin;
        }
        LinePicture chart =
                LinePicture.of("actual airflow, cfm", "external static pressure, in. of water")
                        .titled("Shutting registers climbs the blower's curve")
                        .within(0, 1400, 0, 1)
                        .curve("blower in this air", x, y);
        List<List<String>> rows = new ArrayList<>();
        DuctSystem system = InventedDucts.withRuns(RUNS);
        Airflow open = system.solve(air);
        Airflow last = open;
        for (int shut : new int[] {0, 2, 4, 6}) {
            DuctSystem now = system;
            for (int i = 1; i <= shut; i++) {
                now = now.withRegisterShut("run " + i);
            }
            Airflow flow = now.solve(air);
            double q = Show.in(flow.actual(), Units.CUBIC_FOOT_PER_MINUTE);
            double p = Show.in(flow.externalStaticPressure(), Units.INCH_OF_WATER);
            chart =
                    chart.points(
                            shut == 0 ? "all " + RUNS + " open" : shut + " shut",
                            new double[] {q},
                            new double[] {p});
            double[] share = Numbers.even(0, 1400, 57);
            double[] curve = new double[share.length];
            for (int i = 0; i < share.length; i++) {
                curve[i] = p * Math.pow(share[i] / q, 2);
            }
            chart = chart.thin(share, curve);
            rows.add(
                    List.of(
                            Integer.toString(shut),
                            Numbers.text(q, 0) + " cfm",
                            Numbers.change(q, Show.in(open.actual(), Units.CUBIC_FOOT_PER_MINUTE)),
                            Numbers.text(p, 2) + " in.",
                            Numbers.text(
                                            Show.in(
                                                    flow.run("run 10").actual(),
                                                    Units.CUBIC_FOOT_PER_MINUTE),
                                            0)
                                    + " cfm"));
            last = flow;
        }
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "Shutting registers does not make the blower push their air elsewhere for nothing. The"
                                + " way gets narrower, the pressure climbs, the blower moves less. Most"
                                + " of what the shut rooms lose goes to the open ones, faster and"
                                + " louder; the rest is lost to everybody, and the coil sees the sum: less"
                                + " air, colder coil. With ducts less ample than these ten runs the loss is"
                                + " larger. A shut register still leaks.")
                .picture(
                        "registers-and-blower",
                        "The blower's curve (its table, given for standard air, times the density ratio) and where it runs with 0, 2, 4 and 6 of ten registers shut. Thin"
                                + " lines: the ducts' own curves, drawn as parabolas through each point.",
                        chart)
                .table(
                        "Ten runs of 6 in., one blower, 2200 m",
                        List.of(
                                "registers shut",
                                "total airflow",
                                "change",
                                "external static",
                                "run 10, open"),
                        rows)
                .caution(
                        "Too little air over a cooling coil ices it; too little over a furnace's heat"
                                + " exchanger overheats it. Combustion appliances are checked by licensed people"
                                + " after any change to the air side.")
                .section("The work, with six registers shut")
                .working(last.working())
                .build(
                        "Closed registers and the blower curve",
                        "Where the air goes when a register is shut");
    }
}
