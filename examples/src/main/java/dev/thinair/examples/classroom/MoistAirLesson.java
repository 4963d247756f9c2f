package dev.thinair.examples.classroom;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;

import dev.thinair.altitude.SitePressure;
import dev.thinair.examples.study.LinePicture;
import dev.thinair.psychro.AirStream;
import dev.thinair.psychro.CoilProcess;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;

/** The moist-air chart at three elevations, with what one coil does to one stream of air. */
final class MoistAirLesson {
    static final String NAME = "moist-air";
    private static final double[] ELEVATIONS = {0, 1500, 2200};

    private MoistAirLesson() {}

    static Lesson lesson() {
        LinePicture chart =
                LinePicture.of("dry bulb, degC", "humidity ratio, g of water per kg of dry air")
                        .titled("One coil, three elevations")
                        .within(0, 36, 0, 22);
        for (double h : ELEVATIONS) {
            SitePressure site = SitePressure.standardAt(metres(h));
            double[] t = Numbers.even(0, 36, 73);
            double[] saturated = new double[t.length];
            double[] half = new double[t.length];
            for (int i = 0; i < t.length; i++) {
                saturated[i] = grams(MoistAir.saturated(celsius(t[i]), site.pressure()));
                half[i] =
                        grams(
                                MoistAir.ofDryBulbAndRelativeHumidity(
                                        celsius(t[i]), percent(50), site.pressure()));
            }
            chart = chart.curve(Numbers.text(h, 0) + " m, saturated", t, saturated).thin(t, half);
            String half50 = "50 % at " + Numbers.text(h, 0) + " m";
            if (h == ELEVATIONS[0]) {
                chart = chart.labelBelow(t[60], half[60], half50);
            } else if (h == ELEVATIONS[ELEVATIONS.length - 1]) {
                chart = chart.label(t[60], half[60], half50);
            }
        }
        List<List<String>> rows = new ArrayList<>();
        CoilProcess.Wet last = null;
        for (double h : ELEVATIONS) {
            SitePressure site = SitePressure.standardAt(metres(h));
            MoistAir room =
                    MoistAir.ofDryBulbAndRelativeHumidity(
                            fahrenheit(75), percent(50), site.pressure());
            AirStream stream = AirStream.ofVolumeFlow(room, cubicFeetPerMinute(400));
            if (!(stream.throughCoil(celsius(8), ratio(0.15)) instanceof CoilProcess.Wet wet)) {
                throw new IllegalStateException("this coil must be wet at " + h + " m");
            }
            MoistAir leaving = wet.leaving().air();
            chart =
                    chart.line(
                            "coil at " + Numbers.text(h, 0) + " m",
                            new double[] {degrees(room), degrees(leaving)},
                            new double[] {grams(room), grams(leaving)});
            rows.add(
                    List.of(
                            Numbers.text(h, 0) + " m",
                            QuantityText.formatIn(site.pressure(), Units.KILOPASCAL, 4),
                            QuantityText.formatIn(
                                    room.density(), Units.KILOGRAM_PER_CUBIC_METRE, 4),
                            QuantityText.formatIn(room.humidityRatio(), Units.GRAM_PER_KILOGRAM, 3),
                            QuantityText.formatIn(room.wetBulb(), Units.CELSIUS, 3),
                            QuantityText.formatIn(
                                    wet.entering().massFlow(), Units.POUND_PER_HOUR, 4),
                            QuantityText.formatIn(wet.sensibleHeat(), Units.BTU_PER_HOUR, 4),
                            QuantityText.formatIn(wet.latentHeat(), Units.BTU_PER_HOUR, 4)));
            last = wet;
        }
        return new Lesson.Writer(NAME)
                .section("What to look at")
                .text(
                        "Water vapour does not care how thick the air around it is: at one temperature it"
                                + " saturates at one vapour pressure. Thin air has less dry air to share that"
                                + " vapour with, so the saturation line of the chart climbs with elevation, and"
                                + " the same 75 degF and 50 % stand for more grams per kilogram.")
                .text(
                        "The marks show one coil (surface at 8 degC, 15 % of the air passing by untouched)"
                                + " and one fan that moves 400 cubic feet a minute at every elevation. The"
                                + " lines span nearly the same temperatures; what shrinks is the mass that"
                                + " travels along them, and with it the sensible heat. The latent heat hardly"
                                + " changes: a cubic foot of room air holds the same vapour everywhere.")
                .picture(
                        "moist-air-chart",
                        "Saturation and 50 % lines at three elevations, and the path of the air through the"
                                + " coil at each.",
                        chart)
                .table(
                        "Room air at 75 degF and 50 %, 400 cfm through the coil",
                        List.of(
                                "elevation",
                                "pressure",
                                "density",
                                "humidity ratio",
                                "wet bulb",
                                "mass flow",
                                "sensible heat",
                                "latent heat"),
                        rows)
                .section("The work, at the highest of the three")
                .working(last.working())
                .build(
                        "Moist air at three elevations",
                        "Same room, same fan, same coil surface; only the pressure differs");
    }

    private static double grams(MoistAir air) {
        return 1000 * air.humidityRatioNumber();
    }

    private static double degrees(MoistAir air) {
        return Si.kelvins(air.dryBulb(), "dry bulb") - 273.15;
    }
}
