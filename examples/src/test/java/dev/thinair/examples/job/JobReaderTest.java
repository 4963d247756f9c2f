package dev.thinair.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class JobReaderTest {

    /** What is replaced, by what, the text whose place the line must name, the rest of the line. */
    static Stream<Arguments> spoiled() {
        return Stream.of(
                bad(
                        "unknown key",
                        "elevation: 7200 ft",
                        "elevaton: 7200 ft",
                        "elevaton",
                        "site.elevaton: unknown key; did you mean elevation? known keys here: name, elevation, "
                                + "station-pressure, latitude, longitude, utc-offset, ground-reflectance"),
                bad(
                        "unknown key at the top",
                        "tariff:\n",
                        "tarif:\n",
                        "tarif:",
                        "tarif: unknown key; did you mean tariff? known keys here: title, customer, site, "
                                + "cooling-day, heating-day, climate, weather-file, house, ducts, unit, furnace, heat-pump, "
                                + "thermostat, tariff"),
                bad(
                        "unknown key without a likely meaning",
                        "  fan: auto\n",
                        "  wlan-password: x\n",
                        "wlan-password",
                        "thermostat.wlan-password: unknown key; known keys here: room, setpoint, differential, fan, "
                                + "second-stage-differential, second-stage-delay, minimum-off-time"),
                bad(
                        "missing key",
                        "  elevation: 7200 ft\n",
                        "",
                        "name: Larkspur Bench",
                        "site.elevation: missing key; needed is an elevation from -1400 ft to 15000 ft (above sea "
                                + "level; its unit decides which system the review prints first)"),
                bad(
                        "duplicate key",
                        "  latitude: 38.9 deg\n",
                        "  latitude: 38.9 deg\n  elevation: 10 ft\n",
                        "elevation: 10 ft",
                        "site.elevation: key given twice; give it once (first on line N)"),
                bad(
                        "number without a unit",
                        "elevation: 7200 ft",
                        "elevation: 7200",
                        "7200",
                        "site.elevation: \"7200\" has no unit; allowed is an elevation from -1400 ft to 15000 ft"),
                bad(
                        "setpoint of 200 F",
                        "  setpoint: 68 degF",
                        "  setpoint: 200 degF",
                        "200 degF",
                        "thermostat.setpoint: 200 degF is out of range; allowed is an indoor temperature from 60 degF to 85 degF"),
                bad(
                        "no value",
                        "  fan: auto",
                        "  fan:",
                        "fan:",
                        4,
                        "thermostat.fan: has no value; allowed is auto | on"),
                bad(
                        "null",
                        "  fan: auto",
                        "  fan: ~",
                        "~",
                        "thermostat.fan: has no value; allowed is auto | on"),
                bad(
                        "unknown word",
                        "facing: west",
                        "facing: leeward",
                        "leeward",
                        "house.rooms[1].walls[1].facing: \"leeward\" is not known here; allowed is north | north-east | "
                                + "east | south-east | south | south-west | west | north-west"),
                bad(
                        "count that is not whole",
                        "      people: 3",
                        "      people: 2.5",
                        "people: 2.5",
                        8,
                        "house.rooms[1].people: \"2.5\" is not a whole number; allowed is a whole number from 0 to 30"),
                bad(
                        "count out of range",
                        "      people: 3",
                        "      people: 300",
                        "people: 300",
                        8,
                        "house.rooms[1].people: 300 is out of range; allowed is a whole number from 0 to 30"),
                bad(
                        "a day that does not exist",
                        "date: 07-21",
                        "date: 02-30",
                        "02-30",
                        "cooling-day.date: \"02-30\" is not a day of the year; allowed is month-day such as 07-21"),
                bad(
                        "a price without currency",
                        "0.15 USD/kWh",
                        "0.15 per kWh",
                        "0.15 per kWh",
                        "tariff.energy: \"0.15 per kWh\" is not a price; allowed is a price from 0 to 1000 with its "
                                + "currency, such as 0.14 USD/kWh"),
                bad(
                        "a list where a group belongs",
                        "  infiltration:\n    air",
                        "  infiltration:\n    - air",
                        "- air",
                        "house.infiltration: is a list; allowed is a group of keys: air-changes-at-50-pascals, "
                                + "leakage-area, air-changes, shelter"),
                bad(
                        "a group where a list belongs",
                        "fittings: [{what: elbow, loss-coefficient: 0.8, count: 2}]",
                        "fittings: {what: elbow, loss-coefficient: 0.8}",
                        "{what: elbow, loss-coefficient: 0.8}",
                        "ducts.returns[1].fittings: is a group of keys; allowed is a list, each entry after \"- \""),
                bad(
                        "a group where a value belongs",
                        "  fan: auto",
                        "  fan: {is: auto}",
                        "{is",
                        "thermostat.fan: is a group of keys; allowed is auto | on"),
                bad(
                        "round and rectangular at once",
                        "      width: 10 in",
                        "      diameter: 14 in\n      width: 10 in",
                        "name: west trunk",
                        "ducts.trunks[1]: these keys do not fit together: diameter, height, width; give exactly one of: "
                                + "diameter | width with height"),
                bad(
                        "neither of two keys",
                        "    air-changes-at-50-pascals: 8 1/h",
                        "    {}",
                        "{}",
                        "house.infiltration: missing key; give exactly one of: air-changes-at-50-pascals | "
                                + "leakage-area | air-changes"),
                bad(
                        "half of a pair",
                        "      height: 8 in\n",
                        "",
                        "name: west trunk",
                        "ducts.trunks[1]: these keys do not fit together: width; give exactly one of: "
                                + "diameter | width with height"),
                bad(
                        "too few entries",
                        "          - {airflow: 1580 cfm, static-pressure: 0.1 in. w.g., power: 690 W}\n"
                                + "          - {airflow: 1500 cfm, static-pressure: 0.3 in. w.g., power: 655 W}\n"
                                + "          - {airflow: 1400 cfm, static-pressure: 0.5 in. w.g., power: 610 W}\n"
                                + "          - {airflow: 1270 cfm, static-pressure: 0.7 in. w.g., power: 560 W}\n"
                                + "          - {airflow: 1080 cfm, static-pressure: 0.9 in. w.g., power: 490 W}\n",
                        "",
                        "- {airflow: 760 cfm",
                        "ducts.blower.speeds[1].points: has 2 entries; allowed are 3 to 20"),
                bad(
                        "a name that is no name",
                        "    - name: laundry",
                        "    - name: \"{}\"",
                        "\"{}\"",
                        "house.rooms[6].name: \"{}\" cannot be a name; allowed is a name of up to 60 letters, digits and spaces"),
                bad(
                        "a broken bracket",
                        "fittings: [{what: elbow, loss-coefficient: 0.8, count: 2}]",
                        "fittings: [{what: elbow, loss-coefficient: 0.8, count: 2}",
                        "grille: {width: 30 in",
                        "not YAML here: expected ',' or ']', but got <scalar>; write key: value lines, indented with spaces; "
                                + "quote text that holds \": \" or \" #\""),
                bad(
                        "a tab",
                        "  elevation: 7200 ft",
                        "\televation: 7200 ft",
                        "\televation",
                        "not YAML here: found character '\\t(TAB)' that cannot start any token. (Do not use \\t(TAB) for "
                                + "indentation); write key: value lines, indented with spaces; quote text that holds "
                                + "\": \" or \" #\""),
                bad(
                        "a value that is no number",
                        "elevation: 7200 ft",
                        "elevation: high up",
                        "high up",
                        "site.elevation: \"high up\" is not a length: it does not begin with a number; write for example \"7200 ft\"; allowed is an elevation from -1400 ft to 15000 ft"),
                bad(
                        "wrong dimension",
                        "elevation: 7200 ft",
                        "elevation: 7200 kg",
                        "7200 kg",
                        "site.elevation: \"7200 kg\" is not a length: kg measures mass; write for example \"7200 ft\"; allowed is an elevation from -1400 ft to 15000 ft"),
                bad(
                        "unit nobody knows",
                        "elevation: 7200 ft",
                        "elevation: 7200 furlongs",
                        "7200 furlongs",
                        "site.elevation: \"7200 furlongs\" is not a length: unit \"furlongs\" is unknown; known are ft, in, m, mm, cm, km, mi; write for example \"7200 ft\"; allowed is an elevation from -1400 ft to 15000 ft"),
                bad(
                        "a temperature where a difference belongs",
                        "daily-range: 30 degF_diff",
                        "daily-range: 30 degF",
                        "30 degF",
                        "cooling-day.daily-range: \"30 degF\" is a temperature, not a temperature difference; write for example \"18 degF_diff\", \"10 degC_diff\" or \"10 K\"; allowed is a temperature difference from 2 degF_diff to 50 degF_diff"),
                bad(
                        "trunk of 4 mm",
                        "      width: 10 in\n      height: 8 in",
                        "      diameter: 4 mm",
                        "4 mm",
                        "ducts.trunks[1].diameter: 4 mm is out of range; allowed is a duct diameter from 3 in to 48 in (76.2 mm to 1219.2 mm)"),
                bad(
                        "run that hangs on nothing",
                        "    - name: bath\n      from: west trunk",
                        "    - name: bath\n      from: west trnk",
                        "west trnk",
                        "ducts.runs[6].from: \"bath\" is not connected: nothing is called \"west trnk\"; did you mean west trunk? allowed is supply plenum | west trunk | west end | east trunk | east end"),
                bad(
                        "trunks in a ring",
                        "    - name: west trunk\n      from: supply plenum",
                        "    - name: west trunk\n      from: west end",
                        "west end\n      width: 10 in",
                        "ducts.trunks[1].from: these trunks feed each other and never reach the supply plenum; one of them must leave \"supply plenum\""),
                bad(
                        "trunk that feeds nothing",
                        "  runs:\n    - name: great room west",
                        "    - {name: stub, from: supply plenum, diameter: 8 in, material: smooth, length: 3 ft}\n"
                                + "  runs:\n    - name: great room west",
                        "stub",
                        "ducts.trunks[5].name: nothing leaves this trunk; let a run or another trunk come from it, or leave it out"),
                bad(
                        "run to a room that is not there",
                        "      from: west end\n      room: great room",
                        "      from: west end\n      room: ballroom",
                        "ballroom",
                        "ducts.runs[1].room: nothing is called \"ballroom\"; allowed is a name from house.rooms: great room | main bedroom | bath | bedroom 2 | guest room | laundry"),
                bad(
                        "wall of an assembly nobody described",
                        "        - assembly: 2x4 wall\n          area: 152 ft2\n          facing: west",
                        "        - assembly: 2x6 wall\n          area: 152 ft2\n          facing: west",
                        "2x6 wall",
                        "house.rooms[1].walls[1].assembly: nothing is called \"2x6 wall\"; did you mean 2x4 wall? allowed is a name from assemblies: 2x4 wall | attic floor | shingle roof | gable end | floor over crawlspace | crawlspace wall"),
                bad(
                        "two rooms of one name",
                        "    - name: bedroom 2\n      floor-area",
                        "    - name: bath\n      floor-area",
                        "bath\n      floor-area: 209",
                        "house.rooms[4].name: \"bath\" is taken; every entry needs its own name (first on line N)"),
                bad(
                        "more window than wall",
                        "width: 6 ft, height: 5 ft, count: 2",
                        "width: 6 ft, height: 5 ft, count: 6",
                        "152 ft2",
                        "house.rooms[1].walls[1].area: the windows and doors are larger than the wall; allowed is at least 180.0 ft2 (16.7 m2), the wall's area with its openings"),
                bad(
                        "rigid duct compressed",
                        "    - name: bath\n      from: west trunk",
                        "    - name: bath\n      compression: 10 %\n      from: west trunk",
                        "compression: 10 %",
                        13,
                        "ducts.runs[6].compression: only flexible duct can be compressed; leave compression out for galvanized duct"),
                bad(
                        "wet bulb above dry bulb",
                        "wet-bulb: 58 degF",
                        "wet-bulb: 89 degF",
                        "89 degF",
                        "cooling-day.wet-bulb: is above the dry bulb; allowed is up to the dry bulb"),
                bad(
                        "filter found cleaner than new",
                        "found-drop: 1.0 in. w.g.",
                        "found-drop: 0.12 in. w.g.",
                        "0.12 in. w.g.",
                        "ducts.filter.found-drop: is below the clean drop; allowed is the clean drop or more"),
                bad(
                        "blower table out of order",
                        "airflow: 1500 cfm, static-pressure: 0.3 in. w.g.",
                        "airflow: 1700 cfm, static-pressure: 0.3 in. w.g.",
                        "0.3 in. w.g., power: 655",
                        "ducts.blower.speeds[1].points[2].static-pressure: the points of a blower speed are out of order; from point to point the static pressure must rise and the airflow fall"),
                bad(
                        "speed tap that is not there",
                        "running-speed: high",
                        "running-speed: turbo",
                        "turbo",
                        "ducts.blower.running-speed: nothing is called \"turbo\"; allowed is a name from ducts.blower.speeds: high | medium"),
                bad(
                        "month given twice",
                        "{month: 2,",
                        "{month: 1,",
                        "1, mean-dry-bulb: 24",
                        "climate.months[2].month: month given twice; give each month once"));
    }

    private static Arguments bad(String what, String old, String fresh, String place, String rest) {
        return bad(what, old, fresh, place, 0, rest);
    }

    private static Arguments bad(
            String what, String old, String fresh, String place, int shift, String rest) {
        return arguments(what, old, fresh, place, shift, rest);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiled")
    void a_bad_file_gets_one_line_with_its_place(
            String what, String old, String fresh, String place, int shift, String rest) {
        String text = DemoText.with(DemoText.read(), old, fresh);
        int from = Math.max(0, text.indexOf(fresh) - 400);
        int at = text.indexOf(place, text.indexOf(fresh) < 0 || fresh.isEmpty() ? from : 0) + shift;
        int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        int column = at - text.lastIndexOf('\n', at - 1);
        JobFileException e =
                catchThrowableOfType(
                        JobFileException.class, () -> JobReader.read(text, "bad.yaml"));
        assertThat(e).as(what).isNotNull();
        assertThat(e.getMessage().replaceAll("first on line \\d+", "first on line N"))
                .doesNotContain("\n")
                .isEqualTo("bad.yaml:" + line + ":" + column + ": " + rest);
    }

    @Test
    void an_empty_file_is_named_so() {
        assertThat(message("  \n"))
                .isEqualTo(
                        "bad.yaml:1:1: the file is empty; a job file starts with title, customer, site, ...");
    }

    @Test
    void a_file_of_comments_is_named_so() {
        assertThat(message("# nothing\n"))
                .isEqualTo(
                        "bad.yaml:1:1: the file holds only comments; a job file starts with title, customer, site, ...");
    }

    @Test
    void a_bare_text_is_no_job_file() {
        assertThat(message("hello\n"))
                .startsWith(
                        "bad.yaml:1:1: is the single value \"hello\"; allowed is a group of keys: title, customer,");
    }

    @Test
    void bytes_that_are_not_utf_8_are_refused_with_their_place() {
        byte[] latin1 = "title: House\nsite: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        JobFileException e =
                catchThrowableOfType(
                        JobFileException.class,
                        () -> JobReader.read(new ByteArrayInputStream(latin1), "bad.yaml"));
        assertThat(e)
                .hasMessage("bad.yaml:2:10: byte e9 hex is not UTF-8 text; save the file as UTF-8");
    }

    @Test
    void a_control_character_is_refused_with_its_place() {
        assertThat(message("title: a\u0001b\n"))
                .isEqualTo(
                        "bad.yaml:1:9: a character that may not stand in the file (code 1 hex); printable text in UTF-8");
    }

    @Test
    void bottomless_nesting_is_refused() {
        assertThat(message("[".repeat(200_000)))
                .isEqualTo("bad.yaml:1:1: nested too deeply; at most 40 levels of indentation");
    }

    @Test
    void a_self_reference_is_refused() {
        assertThat(message("title: &a [*a]\n"))
                .isEqualTo(
                        "bad.yaml:1:8: title: is a list; allowed is text of up to 120 characters");
    }

    @Test
    void a_missing_file_is_named(@TempDir Path dir) {
        Path file = dir.resolve("none.yaml");
        JobFileException e =
                catchThrowableOfType(JobFileException.class, () -> JobReader.read(file));
        assertThat(e).hasMessage(file + ": no such file; give the path of a job file");
    }

    @Test
    void a_directory_is_no_job_file(@TempDir Path dir) {
        JobFileException e =
                catchThrowableOfType(JobFileException.class, () -> JobReader.read(dir));
        assertThat(e).hasMessage(dir + ": is a directory; give the path of a job file");
    }

    @Test
    void an_oversized_file_is_not_read(@TempDir Path dir) throws Exception {
        Path file = Files.writeString(dir.resolve("big.yaml"), "#".repeat(1_000_001));
        JobFileException e =
                catchThrowableOfType(JobFileException.class, () -> JobReader.read(file));
        assertThat(e)
                .hasMessage(
                        file + ": is larger than 1000000 bytes; a job file is a few pages of text");
    }

    @Test
    void the_shipped_file_is_read() throws JobFileException {
        Part job = JobReader.read(DemoText.read(), "demo.yaml");
        assertThat(job.part("site").amount("elevation", Length.class).getValue().doubleValue())
                .isEqualTo(7200);
        assertThat(job.part("ducts").parts("runs")).hasSize(12);
        assertThat(job.part("ducts").parts("runs").get(6).part("register").text("position"))
                .isEqualTo("shut");
    }

    @Test
    void a_byte_order_mark_is_no_fault() throws JobFileException {
        assertThat(JobReader.read("\uFEFF" + DemoText.read(), "demo.yaml").has("title")).isTrue();
    }

    @Test
    void the_page_describes_exactly_the_keys_the_reader_knows() throws Exception {
        String page = Files.readString(Path.of("job-file.md"));
        int from = page.indexOf("<!-- keys -->");
        assertThat(from).isPositive();
        assertThat(page.substring(from + "<!-- keys -->".length()).strip())
                .isEqualTo(JobPage.tables().strip());
    }

    private static String message(String text) {
        return catchThrowableOfType(JobFileException.class, () -> JobReader.read(text, "bad.yaml"))
                .getMessage();
    }
}
