package dev.thinair.reference.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assumptions.assumeThat;

import dev.thinair.reference.CaseEvaluator;
import dev.thinair.reference.CaseOutcome;
import dev.thinair.reference.CaseReader;
import dev.thinair.reference.CheckCase;
import dev.thinair.reference.DisputedCases;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class ValidationReportTest {

    private static final String HEADER =
            "id,quantity,inputs,expected,unit,tolerance,source,provenance\n";

    @TempDir static Path shippedFolder;
    private static Validation shipped;
    private static String html;
    private static String markdown;

    @BeforeAll
    static void write() throws Exception {
        shipped = Validation.ofShipped();
        ValidationReport.write(shipped, shippedFolder);
        html = Files.readString(shippedFolder.resolve("validation.html"));
        markdown = Files.readString(shippedFolder.resolve("validation.md"));
    }

    @Test
    void counts_are_those_of_the_evaluator() {
        CaseEvaluator evaluator = CaseEvaluator.standard();
        long ok =
                CaseReader.SHIPPED.stream()
                        .flatMap(name -> CaseReader.shipped(name).stream())
                        .map(evaluator::evaluate)
                        .filter(o -> o.verdict() == CaseOutcome.Verdict.OK)
                        .count();
        Validation.Sum sum = Validation.sum(shipped.entries());
        assertThat(sum.inside()).isEqualTo((int) ok);
        assertThat(sum.inside() + sum.outside() + sum.disputed() + sum.unknown())
                .isEqualTo(sum.cases());
        assertHas(html, String.format(Locale.ROOT, "%,d inside", ok));
        assertHas(markdown, String.format(Locale.ROOT, "%,d inside", ok));
    }

    @Test
    void at_least_25_published_sources_stand_behind_the_cases() {
        assertThat(shipped.published()).hasSizeGreaterThanOrEqualTo(25);
        assertThat(shipped.published().keySet())
                .as("sources that publications.csv does not know show up whole")
                .allSatisfy(name -> assertThat(name).hasSizeLessThan(80));
    }

    @Test
    void at_least_1700_cases_are_inside_and_nine_of_ten_are_evaluated() {
        Validation.Sum sum = Validation.sum(shipped.entries());
        assertThat(sum.inside()).isGreaterThanOrEqualTo(1_700);
        assertThat(sum.outside()).isZero();
        assertThat(sum.unknown()).isLessThan(sum.cases() / 10);
    }

    @Test
    void the_worst_case_is_the_worst() {
        Validation.Sum sum = Validation.sum(shipped.entries());
        assertThat(sum.worst()).isBetween(0.5, 1 + 1e-9);
        assertThat(
                        shipped.entries().stream()
                                .filter(e -> e.standing() == Entry.Standing.INSIDE)
                                .filter(e -> e.share() > sum.worst()))
                .isEmpty();
        assertHas(html, sum.worstId());
    }

    @Test
    void every_case_every_dispute_and_every_gap_is_named() {
        for (Entry e : shipped.entries()) {
            assertHas(html, ">" + e.outcome().checked().id() + "<");
        }
        DisputedCases.reasons()
                .forEach(
                        (id, why) -> {
                            assertHas(html, Markup.escape(why));
                            assertHas(markdown, MarkdownForm.plain(why));
                        });
        shipped.notValidated().keySet().forEach(why -> assertHas(html, Markup.escape(why)));
        assertThat(shipped.fromMemory()).isNotEmpty();
    }

    @Test
    void the_page_is_well_formed_and_needs_nothing_else() throws Exception {
        Document page = parse(html.replace("<!DOCTYPE html>", ""));
        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(page.getElementsByTagName("link").getLength()).isZero();
        assertThat(page.getElementsByTagName("img").getLength()).isZero();
        assertLacks(html, ">NaN<", ">Infinity<", "NaN %");
        assertHas(html, "prefers-color-scheme:dark", "@media print");
    }

    @Test
    void drawings_keep_their_lettering_and_take_the_colours_of_the_page() throws Exception {
        assumeThat(html.contains("could not be drawn")).as("no fonts here").isFalse();
        List<Plot> plots = Plots.all(shipped);
        assertThat(plots).hasSizeGreaterThanOrEqualTo(8);
        for (Plot plot : plots) {
            String svg = PlotDrawing.svg(plot);
            assertHas(html, svg);
            Document drawing = parse(svg);
            assertThat(drawing.getElementsByTagName("text").getLength()).isGreaterThan(5);
            assertHas(svg, plot.across(), plot.deviation());
            assertHas(svg, "var(--one)", "var(--ink)");
            assertLacks(svg, "rgb(1,");
            assertThat(svg.contains("stroke-dasharray:"))
                    .as("lines of %s differ without colour", plot.key())
                    .isEqualTo(plot.series().size() > 1 && plot.series().get(1).line());
            String alone = Files.readString(shippedFolder.resolve(plot.key() + ".svg"));
            assertHas(alone, "--one:#");
        }
    }

    @Test
    void plots_show_what_they_claim() {
        Map<String, Double> most =
                Map.of(
                        "saturation", 900.0, // parts per million
                        "wet-bulb", 10.0, // 1e-12 K
                        "friction", 40.0, // 1e-16
                        "friction-formulas", 3.2, // %
                        "atmosphere", 1000.0, // 1e-15
                        "saturation-cases", 1 + 1e-9,
                        "wet-bulb-cases", 1 + 1e-9,
                        "atmosphere-cases", 1 + 1e-9);
        for (Plot plot : Plots.all(shipped)) {
            assertThat(plot.series()).as(plot.key()).isNotEmpty();
            assertThat(plot.worst()).as(plot.key()).isBetween(1e-300, most.get(plot.key()));
        }
    }

    @Test
    void a_wrong_case_is_said_to_be_outside(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("wrong.csv");
        Files.writeString(
                file,
                HEADER
                        + "A,saturation pressure over liquid water,t=25 degC,3170,Pa,5,a handbook,\n"
                        + "B,saturation pressure over liquid water,t=25 degC,3300,Pa,5,a handbook,\n"
                        + "C,saturation presure over liquid water,t=25 degC,3170,Pa,5,a handbook,\n"
                        + "D,saturation pressure over liquid water,p=1 Pa,3170,Pa,5,a handbook,\n");
        ValidationReport.main(new String[] {folder.toString(), file.toString()});
        String page = Files.readString(folder.resolve("validation.html"));
        assertThat(page)
                .contains(
                        "class=\"verdict bad\"",
                        "4 cases: 1 inside their tolerance, 1 outside, 0 disputed, 2 not evaluated",
                        "<h2>Outside the tolerance</h2>",
                        "<th scope=\"row\">B</th><td>outside</td>",
                        "nearest known: saturation pressure over liquid water");
        assertThat(Files.readString(folder.resolve("validation.md")))
                .contains("## Outside the tolerance", "| B | outside |");
        assertHas(html, "class=\"verdict good\"");
        assertLacks(html, "Outside the tolerance");
    }

    @Test
    void disputes_do_not_count_as_inside() {
        CheckCase wrong =
                new CheckCase(
                        "X",
                        "saturation pressure over liquid water",
                        "t=25 degC",
                        "3300",
                        "Pa",
                        "5",
                        "a <handbook> | of sorts",
                        "");
        Validation validation = Validation.of(Map.of("f", List.of(wrong)), c -> "misprint");
        assertThat(validation.entries().get(0).standing()).isEqualTo(Entry.Standing.DISPUTED);
        Form form = new MarkdownForm();
        Report.write(form, validation, Map.of(), "");
        assertThat(form.text()).contains("misprint", "a &lt;handbook> \\| of sorts");
    }

    @Test
    void a_folder_must_be_named_and_files_be_readable(@TempDir Path folder) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValidationReport.main(new String[0]))
                .withMessageContaining("name a folder");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                ValidationReport.main(
                                        new String[] {
                                            folder.toString(), folder.resolve("no.csv").toString()
                                        }))
                .withMessageContaining("no.csv");
    }

    @Test
    void sources_come_in_one_spelling(@TempDir Path folder) throws Exception {
        Publications publications = Publications.shipped();
        assertThat(publications.of("ASHRAE Handbook - Fundamentals 2021 (SI) ch.1 Table 3"))
                .isEqualTo(publications.of("F21 ch.1 sec.9 comparison of chart 1"))
                .isEqualTo(publications.of("ASHRAE Fundamentals Ch.18 Table 1"));
        assertThat(Publications.part("ASHRAE Handbook - Fundamentals 2021 (SI) ch.1 Table 3"))
                .isEqualTo("2021 (SI), ch. 1")
                .isEqualTo(Publications.part("ASHRAE Handbook-Fundamentals 2021 (SI), Ch.1, T. 2"));
        assertThat(Publications.part("ASHRAE Handbook - Fundamentals (I-P) ch.1 Example 3"))
                .isEqualTo("(I-P), ch. 1");
        assertThat(publications.of("own derivation").kind().published()).isFalse();
        Path file = folder.resolve("cases.csv");
        Files.writeString(file, HEADER + "A,q,,1,1,0,Haaland (1983),\nB,q,,1,1,0,same,\n");
        Validation rows = Validation.of(Map.of("f", CaseReader.read(file)));
        assertThat(rows.entries().get(1).publication())
                .isEqualTo(rows.entries().get(0).publication());
    }

    /** Without printing a page of a megabyte where it fails. */
    private static void assertHas(String page, String... parts) {
        for (String part : parts) {
            assertThat(page.contains(part)).as("has: " + part).isTrue();
        }
    }

    private static void assertLacks(String page, String... parts) {
        for (String part : parts) {
            assertThat(page.contains(part)).as("lacks: " + part).isFalse();
        }
    }

    private static Document parse(String xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }
}
