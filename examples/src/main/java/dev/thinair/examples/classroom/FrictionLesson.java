package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;

import dev.thinair.altitude.SitePressure;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctWorkings;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.examples.report.Show;
import dev.thinair.examples.study.LinePicture;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;

/** The friction chart of round galvanized duct at sea level and at 2,200 m. */
final class FrictionLesson {
    static final String NAME = "friction";
    private static final int[] DIAMETERS = {4, 5, 6, 7, 8, 10, 12, 14};

    private FrictionLesson() {}

    static Lesson lesson() {
        MoistAir low = air(0);
        MoistAir high = air(2200);
        LinePicture chart =
                LinePicture.of("actual airflow, cfm", "friction, in. of water per 100 ft")
                        .titled("Round galvanized duct")
                        .logarithmic()
                        .within(10, 3000, 0.01, 1);
        double[] rates = Numbers.geometric(0.01, 1, 41);
        List<List<String>> rows = new ArrayList<>();
        for (int d : DIAMETERS) {
            chart =
                    chart.solid(d == DIAMETERS[0] ? "sea level" : "", flows(d, rates, low), rates)
                            .dashed(d == DIAMETERS[0] ? "2200 m" : "", flows(d, rates, high), rates)
                            .labelOn(flow(d, 0.5, low), 0.5, d + " in");
            double atLow = flow(d, 0.08, low);
            double atHigh = flow(d, 0.08, high);
            rows.add(
                    List.of(
                            d + " in.",
                            Numbers.text(atLow, 0) + " cfm",
                            Numbers.text(atHigh, 0) + " cfm",
                            Numbers.change(atHigh, atLow),
                            Numbers.change(
                                    atHigh * Si.kilogramsPerCubicMetre(high.density(), "density"),
                                    atLow * Si.kilogramsPerCubicMetre(low.density(), "density"))));
        }
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "Both sets of lines come from the same three steps: Reynolds number, Colebrook and"
                                + " White's friction factor, Darcy and Weisbach's loss. Only density and"
                                + " viscosity differ. In thin air a duct passes more cubic feet at the same"
                                + " friction, and yet fewer pounds: the dashed lines lie to the right, the last"
                                + " column is negative. Where the smallest duct's dashed line bends, the flow is between"
                                + " turbulent and laminar.")
                .picture(
                        "friction-chart",
                        "Friction against airflow for round galvanized duct of 4 to 14 in., solid at sea"
                                + " level, dashed at 2200 m.",
                        chart)
                .table(
                        "Airflow at 0.08 in. of water per 100 ft",
                        List.of(
                                "diameter",
                                "at sea level",
                                "at 2200 m",
                                "change in volume",
                                "change in mass"),
                        rows)
                .section("The work: six inches, 100 cfm, at 2200 m")
                .working(
                        DuctWorkings.friction(
                                DuctShape.round(inches(6)),
                                DuctMaterial.GALVANIZED,
                                cubicFeetPerMinute(100),
                                high.density(),
                                high.viscosity()))
                .text(
                        "Density there is "
                                + QuantityText.formatIn(
                                        high.density(), Units.KILOGRAM_PER_CUBIC_METRE, 4)
                                + ", at sea level "
                                + QuantityText.formatIn(
                                        low.density(), Units.KILOGRAM_PER_CUBIC_METRE, 4)
                                + ", both at 70 degF and 50 %.")
                .build(
                        "Friction in round duct, at sea level and at 2200 m",
                        "More cubic feet for the same friction, fewer pounds");
    }

    private static MoistAir air(double elevation) {
        return MoistAir.ofDryBulbAndRelativeHumidity(
                fahrenheit(70), percent(50), SitePressure.standardAt(metres(elevation)).pressure());
    }

    /** Airflow, cfm, at a friction in inches of water per 100 ft. */
    private static double flow(int inches, double rate, MoistAir air) {
        double q =
                FrictionChart.flow(
                        Si.metres(inches(inches), "diameter"),
                        Si.pascalsPerMetre(
                                Units.quantity(rate, Units.INCH_OF_WATER_PER_HUNDRED_FEET),
                                "friction rate"),
                        Si.metres(DuctMaterial.GALVANIZED.roughness(), "roughness"),
                        Si.kilogramsPerCubicMetre(air.density(), "density"),
                        Si.pascalSeconds(air.viscosity(), "viscosity"));
        return Show.in(Units.cubicMetresPerSecond(q), Units.CUBIC_FOOT_PER_MINUTE);
    }

    private static double[] flows(int inches, double[] rates, MoistAir air) {
        double[] q = new double[rates.length];
        for (int i = 0; i < q.length; i++) {
            q[i] = flow(inches, rates[i], air);
        }
        return q;
    }
}
