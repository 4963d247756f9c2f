package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.CycleEstimate;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.Thermostat;
import dev.thinair.cycling.kernel.CycleControl;
import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.cycling.kernel.ThermostatEngine;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.examples.study.LinePicture;
import java.util.ArrayList;
import java.util.List;

/** The thermostat's parabola of cycle rate, against cycles counted in a simulated house. */
final class ParabolaLesson {
    static final String NAME = "parabola";
    private static final double ZERO = 273.15;
    private static final double CAPACITY = 8000; // W
    private static final double RESISTANCE = 0.005; // K/W
    private static final double HEAT = 5e6; // J/K
    private static final double OUTDOOR = 35;
    private static final double SETPOINT = 24;
    private static final int HOURS = 60;

    private ParabolaLesson() {}

    static Lesson lesson() {
        double[] share = Numbers.even(0, 1, 81);
        LinePicture chart =
                LinePicture.of("share of time on, %", "cycles an hour")
                        .titled("Most starts at half load");
        List<List<String>> rows = new ArrayList<>();
        for (double band : new double[] {1, 4}) {
            double most = 3600 * CAPACITY / (4 * HEAT * band);
            double[] curve = new double[share.length];
            double[] percent = new double[share.length];
            for (int i = 0; i < share.length; i++) {
                percent[i] = 100 * share[i];
                curve[i] = PartLoad.cycleRate(most, share[i]);
            }
            chart = chart.curve("parabola, band " + Numbers.text(band, 0) + " K", percent, curve);
            double[] x = new double[9];
            double[] y = new double[9];
            for (int i = 0; i < x.length; i++) {
                double load = CAPACITY * (i + 1) / 10;
                double[] counted = cycles(load, band);
                x[i] = 100 * counted[0];
                y[i] = counted[1];
                if (i % 2 == 0) {
                    rows.add(
                            List.of(
                                    Numbers.text(band, 0) + " K, load " + (10 * (i + 1)) + " %",
                                    Numbers.text(x[i], 2) + " %",
                                    Numbers.text(y[i], 3),
                                    Numbers.text(PartLoad.cycleRate(most, counted[0]), 3),
                                    Numbers.text(
                                                    100
                                                            * (PartLoad.cycleRate(most, counted[0])
                                                                            / y[i]
                                                                    - 1),
                                                    2)
                                            + " %"));
                }
            }
            chart = chart.points("counted, band " + Numbers.text(band, 0) + " K", x, y);
        }
        CoolingUnit unit = CoolingUnit.typical(tonsOfRefrigeration(3), Staging.SINGLE);
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "A thermostat that switches within a band makes most cycles when the unit is on half"
                                + " the time: with little load the house warms slowly, with much load it cools"
                                + " slowly, and either way a cycle takes long. If the house is one lump of heat"
                                + " and the band is small, the rate is a parabola in the share of time on, zero at"
                                + " both ends, and its peak is the capacity over four times heat capacity times"
                                + " band.")
                .text(
                        "The marks are counted: the exact switching times of a house with a resistance of "
                                + Numbers.text(1000 * RESISTANCE, 0)
                                + " K/kW and 5 MJ/K. With a band of 1 K they lie on the curve; with 4 K a"
                                + " trace of the exponential shows, and the difference grows with the square of the"
                                + " band.")
                .picture(
                        "cycling-parabola",
                        "Cycle rate against share of time on: curves from the parabola, marks counted in the"
                                + " simulated house.",
                        chart)
                .table(
                        "Counted cycles and the parabola",
                        List.of(
                                "band and load",
                                "time on",
                                "counted, 1/h",
                                "parabola, 1/h",
                                "off by"),
                        rows)
                .section("The work: what starting costs at half load")
                .working(
                        CycleEstimate.of(
                                        unit,
                                        Thermostat.at(fahrenheit(75)),
                                        watts(5000),
                                        watts(10_000))
                                .partLoadWorking())
                .build(
                        "The thermostat's parabola and cycles counted",
                        "Why a unit twice too large starts so often");
    }

    /** Share of time on and cycles an hour between the first and the last start. */
    private static double[] cycles(double load, double band) {
        double gain = load - (OUTDOOR - SETPOINT) / RESISTANCE;
        ModalHouse house = ModalHouse.of(new double[] {HEAT}, new double[][] {{1 / RESISTANCE}});
        double[] one = {1};
        double[][] heat = new double[HOURS + 1][1];
        double[] outdoor = new double[HOURS + 1];
        for (int h = 0; h <= HOURS; h++) {
            outdoor[h] = OUTDOOR + ZERO;
            heat[h][0] = outdoor[h] / RESISTANCE + gain;
        }
        RunRecord run =
                new ThermostatEngine(house, one, one, one)
                        .run(
                                HouseDrive.dry(3600, false, heat, outdoor),
                                CycleControl.single(ZERO + SETPOINT, band),
                                UnitResponse.constant(CAPACITY, 2500),
                                new double[] {ZERO + SETPOINT},
                                0,
                                0);
        int first = -1;
        int last = -1;
        int count = 0;
        double on = 0;
        for (int e = 0; e < run.eventCount(); e++) {
            if (!run.eventSwitchesOn(e)) {
                continue;
            }
            if (first < 0) {
                first = e;
            } else {
                on += run.eventTime(last + 1) - run.eventTime(last);
                count++;
            }
            last = e;
        }
        if (count == 0) {
            throw new IllegalStateException("no full cycle in " + HOURS + " h at " + load + " W");
        }
        double time = run.eventTime(last) - run.eventTime(first);
        return new double[] {on / time, 3600 * count / time};
    }
}
