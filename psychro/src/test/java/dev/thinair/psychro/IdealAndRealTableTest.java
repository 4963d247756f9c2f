package dev.thinair.psychro;

import static org.assertj.core.api.Assertions.assertThat;

import dev.thinair.psychro.kernel.AirModel;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Recomputes the documented tables of the difference between the ideal and the real formulation. If
 * the numbers change, the test prints the table to put into the page.
 */
class IdealAndRealTableTest {

    private static final Path PAGE =
            Path.of("src/main/javadoc/dev/thinair/psychro/doc-files/ideal-and-real.html");
    private static final double[] CELSIUS = {-40, -30, -20, -10, 0, 10, 20, 30, 40, 50, 60};
    private static final double[] METRES = {0, 1000, 2000, 3000, 4000};

    /** U.S. Standard Atmosphere 1976, troposphere, geopotential altitude. */
    private static double pressure(double metres) {
        return 101_325 * Math.pow(1 - 0.0065 * metres / 288.15, 5.255876);
    }

    private interface Cell {
        String at(double kelvins, double pascals);
    }

    private static String table(String caption, Cell cell) {
        StringBuilder out = new StringBuilder("<table>\n<caption>" + caption + "</caption>\n<tr>");
        out.append("<th scope=\"col\">dry bulb</th>");
        for (double h : METRES) {
            out.append(
                    String.format(
                            Locale.ROOT,
                            "<th scope=\"col\">%.0f m, %.2f kPa</th>",
                            h,
                            pressure(h) / 1000));
        }
        out.append("</tr>\n");
        for (double t : CELSIUS) {
            out.append(String.format(Locale.ROOT, "<tr><th scope=\"row\">%.0f &deg;C</th>", t));
            for (double h : METRES) {
                out.append("<td>").append(cell.at(t + 273.15, pressure(h))).append("</td>");
            }
            out.append("</tr>\n");
        }
        return out.append("</table>\n").toString();
    }

    private static String signed(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("[+-]0\\.0*") ? text.substring(1) : text;
    }

    private static String tables() {
        AirModel ideal = AirModel.IDEAL;
        AirModel real = AirModel.REAL;
        return table(
                        "Humidity ratio of saturated air, ideal minus real, percent of real",
                        (t, p) ->
                                signed(
                                        "%+.2f",
                                        100
                                                * (ideal.saturationHumidityRatio(t, p)
                                                                / real.saturationHumidityRatio(t, p)
                                                        - 1)))
                + table(
                        "Enthalpy of saturated air, ideal minus real, kJ/kg of dry air",
                        (t, p) ->
                                signed(
                                        "%+.2f",
                                        (ideal.enthalpy(t, ideal.saturationHumidityRatio(t, p), p)
                                                        - real.enthalpy(
                                                                t,
                                                                real.saturationHumidityRatio(t, p),
                                                                p))
                                                / 1000))
                + table(
                        "Density of air of 50 % relative humidity (ideal), same humidity ratio,"
                                + " ideal minus real, percent of real",
                        (t, p) -> {
                            double w = ideal.humidityRatioFromRelativeHumidity(t, 0.5, p);
                            return signed(
                                    "%+.3f",
                                    100 * (ideal.density(t, w, p) / real.density(t, w, p) - 1));
                        })
                + table(
                        "Wet bulb of air of 50 % relative humidity (each formulation's own), ideal"
                                + " minus real, K",
                        (t, p) ->
                                signed(
                                        "%+.3f",
                                        ideal.wetBulb(
                                                        t,
                                                        ideal.humidityRatioFromRelativeHumidity(
                                                                t, 0.5, p),
                                                        p)
                                                - real.wetBulb(
                                                        t,
                                                        real.humidityRatioFromRelativeHumidity(
                                                                t, 0.5, p),
                                                        p)));
    }

    @Test
    void page_shows_what_the_library_computes() throws IOException {
        String page = Files.readString(PAGE, StandardCharsets.UTF_8);
        String begin = "<!-- tables -->\n";
        String shown =
                page.substring(page.indexOf(begin) + begin.length(), page.indexOf("<!-- end -->"));
        assertThat(shown).isEqualTo(tables());
    }
}
