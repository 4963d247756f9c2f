package dev.thinair.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.Site;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class WeatherFileTest {

    private static final Site SITE =
            Site.of(
                    "invented place",
                    Units.degrees(38),
                    Units.degrees(-105),
                    ZoneOffset.ofHours(-7),
                    Units.feet(7200));

    private static final String HEAD =
            "time,dry bulb [degF],dew point [degF],wind [mph],beam normal [W/m2],diffuse horizontal [W/m2]\n";

    static String rows(int count) {
        StringBuilder text = new StringBuilder();
        LocalDateTime t = LocalDateTime.of(2026, 1, 1, 0, 0);
        for (int h = 0; h < count; h++) {
            int hour = t.getHour();
            text.append(t)
                    .append(',')
                    .append(60 + (hour < 12 ? hour : 24 - hour))
                    .append(",35,6,")
                    .append(hour > 8 && hour < 16 ? 600 : 0)
                    .append(',')
                    .append(hour > 8 && hour < 16 ? 90 : 0)
                    .append('\n');
            t = t.plusHours(1);
        }
        return text.toString();
    }

    @Test
    void reads_named_columns_with_their_units() throws Exception {
        HourlyWeather w = WeatherFile.read("# made up\n\n" + HEAD + rows(48), "w.csv", SITE);
        assertThat(w.hours()).isEqualTo(48);
        assertThat(w.start()).isEqualTo(LocalDateTime.of(2026, 1, 1, 0, 0));
        assertThat(Si.kelvins(w.dryBulb(12), "dry bulb"))
                .isCloseTo(Si.kelvins(Units.fahrenheit(72), "dry bulb"), within(1e-9));
        MoistAir air =
                MoistAir.ofDryBulbAndDewPoint(
                        Units.fahrenheit(72), Units.fahrenheit(35), SITE.pressure());
        assertThat(Si.humidityRatio(w.humidityRatio(12), "humidity ratio"))
                .isCloseTo(air.humidityRatioNumber(), within(1e-9));
    }

    @Test
    void other_units_and_another_order_are_the_same_weather() throws Exception {
        String si =
                "beam normal [W/m2],wind [m/s],time,dry bulb [degC],humidity ratio [g/kg],diffuse horizontal [W/m2]\n";
        StringBuilder text = new StringBuilder(si);
        LocalDateTime t = LocalDateTime.of(2026, 7, 1, 0, 0);
        for (int h = 0; h < 24; h++) {
            text.append("0,3,").append(t.plusHours(h)).append(",20,6.5,0\n");
        }
        HourlyWeather w = WeatherFile.read(text.toString(), "w.csv", SITE);
        assertThat(Si.kelvins(w.dryBulb(5), "dry bulb")).isCloseTo(293.15, within(1e-9));
        assertThat(Si.humidityRatio(w.humidityRatio(5), "humidity ratio"))
                .isCloseTo(0.0065, within(1e-12));
    }

    private static Arguments bad(String why, String text, String line) {
        return arguments(why, text, line);
    }

    static Stream<Arguments> spoiled() {
        String good = HEAD + rows(24);
        return Stream.of(
                bad("empty", "", "w.csv:1:1: the file holds no row"),
                bad("no rows", HEAD, "w.csv:1:1: only 0 hours; at least 24 hours"),
                bad("short", HEAD + rows(5), "only 5 hours"),
                bad(
                        "unknown column",
                        good.replace("dry bulb [degF]", "temperature [degF]"),
                        "w.csv:1:6: temperature: unknown column; known are time, dry bulb"),
                bad(
                        "no unit",
                        good.replace("dry bulb [degF]", "dry bulb"),
                        "w.csv:1:6: dry bulb: column has no unit; write it in brackets"),
                bad(
                        "wrong unit",
                        good.replace("dry bulb [degF]", "dry bulb [mph]"),
                        "dry bulb: unit [mph] cannot be used; write for example [degF]"),
                bad(
                        "twice",
                        good.replace("wind [mph]", "dry bulb [degF]"),
                        "dry bulb: column given twice"),
                bad(
                        "moisture twice",
                        good.replace("wind [mph]", "relative humidity [%]"),
                        "relative humidity: moisture is given already by dew point"),
                bad("no time", good.replace("time,", "wind [mph],"), "column given twice"),
                bad(
                        "missing column",
                        good.replace("wind [mph]", "humidity ratio [g/kg]")
                                .replace("dew point [degF]", "wind [mph]")
                                .replace("diffuse horizontal", "beam normal"),
                        "column given twice"),
                bad(
                        "no number",
                        good.replaceFirst(",60,35", ",warm,35"),
                        "w.csv:2:18: dry bulb: \"warm\" is no number; a plain number"),
                bad(
                        "out of range",
                        good.replaceFirst(",60,35", ",600,35"),
                        "w.csv:2:18: dry bulb: is 600 degF; allowed is -60 degC to 60 degC"),
                bad(
                        "not a number by name",
                        good.replaceFirst(",60,35", ",NaN,35"),
                        "\"NaN\" is no number"),
                bad(
                        "too wet",
                        good.replaceFirst(",60,35", ",60,75"),
                        "dew point: more moisture than the air can hold"),
                bad("short row", good + "2026-01-02T00:00,60\n", "row has 2 values"),
                bad(
                        "gap",
                        good.replace("2026-01-01T05:00", "2026-01-01T06:00"),
                        "w.csv:7:1: time: is 2026-01-01T06:00 after 2026-01-01T04:00"),
                bad(
                        "no time",
                        good.replace("2026-01-01T05:00", "five"),
                        "time: \"five\" is no time"),
                bad(
                        "half past",
                        good.replace(":00,", ":30,"),
                        "start of the weather is 2026-01-01T00:30"),
                bad(
                        "negative sun",
                        good.replaceFirst(",600,90", ",-1,90"),
                        "beam normal: is -1 W/m2"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiled")
    void a_bad_file_is_refused_in_one_line(String why, String text, String line) {
        assertThatThrownBy(() -> WeatherFile.read(text, "w.csv", SITE))
                .isInstanceOf(JobFileException.class)
                .hasMessageContaining(line)
                .hasMessageStartingWith("w.csv");
    }

    @Test
    void a_missing_file_or_one_in_another_code_is_refused(@TempDir Path dir) throws Exception {
        assertThatThrownBy(() -> WeatherFile.read(dir.resolve("none.csv"), SITE))
                .isInstanceOf(JobFileException.class)
                .hasMessageContaining("no such file");
        Path latin =
                Files.write(
                        dir.resolve("latin.csv"),
                        (HEAD + "\u00e9\n").getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> WeatherFile.read(latin, SITE))
                .isInstanceOf(JobFileException.class)
                .hasMessageContaining("save the file as UTF-8");
    }

    @Test
    void the_job_file_takes_its_weather_from_beside_itself(@TempDir Path dir) throws Exception {
        Files.writeString(dir.resolve("year.csv"), HEAD + rows(8760));
        String demo = DemoText.read();
        int from = demo.indexOf("climate:");
        int to = demo.indexOf("\nhouse:");
        String with = demo.substring(0, from) + "weather-file: year.csv\n" + demo.substring(to);
        Job job = Job.read(Files.writeString(dir.resolve("job.yaml"), with));
        assertThat(job.weather().hours()).isEqualTo(8760);
        assertThat(Si.kelvins(job.weather().dryBulb(12), "dry bulb"))
                .isCloseTo(Si.kelvins(Units.fahrenheit(72), "dry bulb"), within(1e-9));
        Job none = Job.read(demo.substring(0, from) + demo.substring(to), "without a climate");
        assertThat(none.weather().hours()).isEqualTo(8760);
        double hottest = 0;
        for (int h = 0; h < 8760; h++) {
            hottest = Math.max(hottest, Si.kelvins(none.weather().dryBulb(h), "dry bulb"));
        }
        assertThat(hottest)
                .isCloseTo(Si.kelvins(none.coolingDay().dryBulb(), "dry bulb"), within(8.0));
        assertThatThrownBy(() -> Job.read("weather-file: year.csv\n" + demo, "both"))
                .isInstanceOf(JobFileException.class)
                .hasMessageContaining("is given beside climate");
    }
}
