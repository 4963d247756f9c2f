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
