package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.Place;
import dev.thinair.ducts.RunFlow;
import dev.thinair.examples.job.DemoText;
import dev.thinair.examples.job.Job;
import dev.thinair.examples.report.Document;
import dev.thinair.examples.report.HtmlForm;
import dev.thinair.examples.report.TextForm;
import dev.thinair.units.Si;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServiceCallTest {
    private static Study demo;
    private static Document document;

    @BeforeAll
    static void reviewTheShippedJob() throws Exception {
        demo = new Study(Job.shipped());
        document = ReviewDocument.of(demo);
    }

    private record Ran(int status, String out, String err) {}

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status =
                ServiceCall.run(
                        args,
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(
                status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void the_job_runs_from_file_to_page(@TempDir Path dir) throws Exception {
        Path file = Files.writeString(dir.resolve("job.yaml"), DemoText.read());
        Path page = dir.resolve("deep/er/review.html");
        Ran ran = run(file.toString(), page.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).startsWith(TextForm.of(document)).contains(page.toString());
        assertThat(Files.readString(page)).isEqualTo(HtmlForm.of(document));
        try (Stream<Path> left = Files.list(page.getParent())) {
            assertThat(left).containsExactly(page);
        }
    }

    @Test
    void a_bad_file_costs_one_line_and_writes_nothing(@TempDir Path dir) throws Exception {
        Path file =
                Files.writeString(
                        dir.resolve("job.yaml"),
                        DemoText.with(DemoText.read(), "elevation: 7200 ft", "elevation: 7200 kg"));
        Path page = dir.resolve("out/review.html");
        Ran ran = run(file.toString(), page.toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines())
                .hasSize(1)
                .first()
                .asString()
                .startsWith(file + ":15:14: site.elevation: ");
        assertThat(page.getParent()).doesNotExist();
    }

    @Test
    void a_missing_file_costs_one_line(@TempDir Path dir) {
        Ran ran = run(dir.resolve("none.yaml").toString(), dir.resolve("p.html").toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().lines())
                .containsExactly(
                        dir.resolve("none.yaml") + ": no such file; give the path of a job file");
    }

    @Test
    void a_page_that_cannot_be_written_costs_one_line(@TempDir Path dir) throws Exception {
        Path blocked = Files.writeString(dir.resolve("file"), "in the way");
        Path job = Files.writeString(dir.resolve("job.yaml"), DemoText.read());
        Ran ran = run(job.toString(), blocked.resolve("page.html").toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("service call: the page cannot be written");
        assertThat(blocked).hasContent("in the way");
    }

    @Test
    void a_third_argument_is_refused() {
        assertThat(run("a", "b", "c"))
                .isEqualTo(
                        new Ran(
                                2,
                                "",
                                "service call: at most two arguments, the job file and the page to write; got 3"
                                        + System.lineSeparator()));
    }

    @Test
    void the_page_is_well_formed() throws Exception {
        byte[] page = HtmlForm.of(document).getBytes(StandardCharsets.UTF_8);
        org.w3c.dom.Document xml =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(page));
        assertThat(xml.getElementsByTagName("svg").getLength()).isGreaterThanOrEqualTo(3);
        assertThat(xml.getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void the_page_needs_nothing_from_elsewhere() {
        assertThat(
                        HtmlForm.of(document)
                                .replace("http://www.w3.org/1999/xhtml", "")
                                .replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("http:", "https:", "url(", "src=");
    }

    @Test
    void text_and_page_hold_the_same_numbers() {
        Set<String> page =
                numbers(
                        HtmlForm.of(document)
                                .replaceAll(
                                        "(?s)<style>.*?</style>|<svg.*?</svg>|<head>.*?</head>",
                                        " ")
                                .replaceAll("<[^>]*>", " ")
                                .replaceAll("&[a-z]+;", " "));
        String figures =
                document.blocks().stream()
                        .filter(b -> b instanceof Document.Figure)
                        .flatMap(b -> ((Document.Figure) b).rows().stream())
                        .reduce("", (a, b) -> a + "\n  " + b);
        String text = TextForm.of(document);
        Set<String> all = numbers(text);
        String without = text;
        for (String row : figures.lines().toList()) {
            without = without.replace(row + "\n", "\n");
        }
        assertThat(all).containsAll(page);
        assertThat(page).containsAll(numbers(without));
        assertThat(page).hasSizeGreaterThan(100);
    }

    private static Set<String> numbers(String text) {
        Set<String> found = new TreeSet<>();
        Matcher m = Pattern.compile("\\d[\\d,]*(\\.\\d+)?").matcher(text);
        while (m.find()) {
            found.add(m.group().replaceAll(",$", ""));
        }
        return found;
    }

    @Test
    void both_forms_are_the_same_in_any_language() throws Exception {
        java.util.Locale before = java.util.Locale.getDefault();
        try {
            java.util.Locale.setDefault(java.util.Locale.forLanguageTag("ar-EG"));
            assertThat(TextForm.of(ReviewDocument.of(new Study(Job.shipped()))))
                    .isEqualTo(TextForm.of(document));
        } finally {
            java.util.Locale.setDefault(before);
        }
    }

    @Test
    void the_text_survives_any_terminal() {
        assertThat(TextForm.of(document)).matches(Pattern.compile("[\\x20-\\x7e\\n]*"));
    }

    @Test
    void at_sea_level_more_air_by_mass_carries_more_heat_and_the_verdict_is_kinder()
            throws Exception {
        Study low =
                new Study(
                        Job.read(
                                DemoText.with(
                                        DemoText.read(), "elevation: 7200 ft", "elevation: 0 ft"),
                                "sea level"));
        assertThat(Si.kilogramsPerSecond(low.asFound.airflow().mass(), "mass"))
                .isGreaterThan(1.2 * Si.kilogramsPerSecond(demo.asFound.airflow().mass(), "mass"));
        assertThat(low.pressureRatio()).isCloseTo(1, within(1e-9));
        assertThat(Si.watts(Study.state(low.asFound).sensibleCapacity(), "sensible"))
                .isGreaterThan(Si.watts(Study.state(demo.asFound).sensibleCapacity(), "sensible"));
        assertThat(Si.kelvins(Study.state(low.asFound).apparatusDewPoint(), "coil"))
                .isGreaterThan(Si.kelvins(Study.state(demo.asFound).apparatusDewPoint(), "coil"));
        assertThat(low.review.day().degreeHoursAboveSetpoint())
                .isLessThan(demo.review.day().degreeHoursAboveSetpoint());
        assertThat(Si.watts(low.review.ductsCarry(), "ducts"))
                .isGreaterThan(Si.watts(demo.review.ductsCarry(), "ducts"));
    }

    @Test
    void a_blower_outside_its_table_still_gets_a_verdict(@TempDir Path dir) throws Exception {
        String choked =
                DemoText.read()
                        .replace("position: open", "position: shut")
                        .replaceAll("position: partly(, open-share: \\d+ %)?", "position: shut")
                        .replaceAll("(?m)^ *(supply|return)-leakage-at-25-pascals: [^\n]*\n", "")
                        .replaceFirst("found-drop: [^\n]*\n", "found-drop: 3 in. w.g.\n");
        Ran ran =
                run(
                        Files.writeString(dir.resolve("job.yaml"), choked).toString(),
                        dir.resolve("page.html").toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains("this system does not run")
                .contains("The blower has no operating point on these ducts [serious]")
                .contains("Start here: open all registers and grilles")
                .contains("Remedies side by side");
        assertThat(dir.resolve("page.html")).exists();
    }

    @Test
    void what_a_practitioner_knows_of_unit_and_tariff_can_stand_in_the_file() throws Exception {
        String text = DemoText.read();
        text =
                DemoText.with(
                        text,
                        "\nthermostat:\n",
                        """

                          off-cycle-power: 30 W
                          start-up-time: 90 s
                          coil-holds: 600 s
                          evaporation-ratio: 0.4
                          life-starts: 100000
                          performance-points:
                            - {entering-dry-bulb: 80 degF, entering-wet-bulb: 67 degF, outdoor-dry-bulb: 85 degF, airflow: 1400 cfm, total-capacity: 44200 BTU/h, sensible-capacity: 32000 BTU/h, power: 3300 W, indoor-fan-power: 450 W}
                            - {entering-dry-bulb: 80 degF, entering-wet-bulb: 67 degF, outdoor-dry-bulb: 105 degF, airflow: 1400 cfm, total-capacity: 38900 BTU/h, sensible-capacity: 30400 BTU/h, power: 4200 W, indoor-fan-power: 450 W}

                        heat-pump:
                          capacity-at-47-degF: 40000 BTU/h
                          power-at-47-degF: 3300 W
                          capacity-at-17-degF: 24000 BTU/h
                          power-at-17-degF: 2900 W

                        thermostat:
                          second-stage-differential: 0.7 degF_diff
                          second-stage-delay: 20 min
                          minimum-off-time: 3 min
                        """);
        text =
                text.replaceFirst(
                        "(?m)^tariff:\n",
                        "tariff:\n  peak-energy: 0.31 USD/kWh\n  peak-from: 15\n  peak-to: 20\n"
                                + "  peak-days: weekdays\n  demand: 6 USD/kW\n");
        // The unit's keys must follow the unit's others.
        Job job = Job.read(unitKeysInPlace(text), "all of it");
        assertThat(job.unit().offCycleWatts()).isEqualTo(30);
        assertThat(job.unit().startUpSeconds()).isEqualTo(90);
        assertThat(job.unit().moistureHoldingSeconds()).isEqualTo(600);
        assertThat(job.unit().evaporationRatio()).isEqualTo(0.4);
        assertThat(job.unit().fitDeviation().orElseThrow()).isLessThan(0.05);
        assertThat(job.lifeStarts()).hasValue(100_000);
        assertThat(job.thermostat().secondStageDelaySeconds()).isEqualTo(1200);
        assertThat(job.thermostat().minimumOffSeconds()).isEqualTo(180);
        assertThat(job.tariff().costOfDay(hours(16)).energyCharge()).isCloseTo(0.31, within(1e-9));
        assertThat(job.tariff().costOfDay(hours(9)).energyCharge()).isLessThan(0.31);
        assertThat(job.tariff().costOfDay(hours(9)).demandCharge())
                .isCloseTo(6 * 12 / 365.0, within(0.01));
        String report = TextForm.of(ReviewDocument.of(new Study(job)));
        assertThat(report).contains("wear, of 100,000 starts").contains("The heat pump gives");
    }

    private static double[] hours(int one) {
        double[] kilowattHours = new double[24];
        kilowattHours[one] = 1;
        return kilowattHours;
    }

    /** Moves what was put before the thermostat to the end of the unit, ahead of the furnace. */
    private static String unitKeysInPlace(String text) {
        int from = text.indexOf("  off-cycle-power");
        int to = text.indexOf("\nheat-pump:");
        String keys = text.substring(from, to);
        String rest = text.substring(0, from) + text.substring(to);
        int unit = rest.indexOf("\nunit:\n") + "\nunit:\n".length();
        return rest.substring(0, unit) + keys + rest.substring(unit);
    }

    @Test
    void opening_all_registers_in_the_file_shares_the_air_anew() throws Exception {
        String open =
                DemoText.read()
                        .replace("position: shut", "position: open")
                        .replaceAll("position: partly(, open-share: \\d+ %)?", "position: open");
        Airflow then = new Study(Job.read(open, "open")).asFound.airflow();
        Airflow found = demo.asFound.airflow();
        assertThat(then.cubicMetresPerSecond()).isGreaterThan(found.cubicMetresPerSecond());
        int rose = 0;
        int fell = 0;
        double sum = 0;
        for (RunFlow r : then.runs()) {
            if (r.isSupply()) {
                sum += r.kilogramsPerSecond();
                if (r.kilogramsPerSecond() > found.run(r.name()).kilogramsPerSecond()) {
                    rose++;
                } else {
                    fell++;
                }
            }
        }
        assertThat(rose).isEqualTo(5);
        assertThat(fell).isEqualTo(7);
        double density = Si.kilogramsPerCubicMetre(then.density(), "density");
        double leaked =
                density * Si.cubicMetresPerSecond(then.supplyLeakage(Place.CRAWL_SPACE), "leak");
        assertThat((sum + leaked) / then.kilogramsPerSecond()).isCloseTo(1, within(1e-9));
        assertThat(then.imbalance()).isLessThan(1e-9);
    }
}
