package dev.thinair.examples.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.examples.report.Document;
import dev.thinair.examples.report.HtmlForm;
import dev.thinair.examples.report.TextForm;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.HeatFlow;
import dev.thinair.units.Units;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClassroomTest {

    static List<String> names() {
        return List.copyOf(Lesson.all().keySet());
    }

    private static org.w3c.dom.Document xml(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void each_says_shows_tabulates_and_draws(String name) throws Exception {
        Lesson lesson = Lesson.all().get(name).get();
        assertThat(lesson.name()).isEqualTo(name);
        List<Document.Block> blocks = lesson.document().blocks();
        for (Class<?> kind :
                List.of(
                        Document.Paragraph.class,
                        Document.Worked.class,
                        Document.Table.class,
                        Document.Picture.class)) {
            assertThat(blocks)
                    .as("%s has a %s", name, kind.getSimpleName())
                    .anyMatch(kind::isInstance);
        }
        String text = TextForm.of(lesson.document());
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
        String page = HtmlForm.of(lesson.document());
        xml(page.replace("<!DOCTYPE html>", ""));
        assertThat(page).doesNotContain("NaN").contains("<math");
        assertThat(lesson.pictures()).isNotEmpty();
        for (var picture : lesson.pictures().values()) {
            org.w3c.dom.Document svg = xml(picture.svg());
            assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
            // Lettering stays text, so that it can be searched and read aloud.
            assertThat(svg.getElementsByTagName("text").getLength()).isGreaterThan(10);
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void each_tells_the_same_every_time(String name) {
        assertThat(TextForm.of(Lesson.all().get(name).get().document()))
                .isEqualTo(TextForm.of(Lesson.all().get(name).get().document()));
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.replaceAll("[^0-9.+-].*", ""));
    }

    private static List<List<String>> table(String name) {
        return Lesson.all().get(name).get().document().blocks().stream()
                .filter(Document.Table.class::isInstance)
                .map(Document.Table.class::cast)
                .findFirst()
                .orElseThrow()
                .rows();
    }

    @Test
    void shutting_registers_lowers_the_flow_and_raises_pressure() {
        List<List<String>> rows = table(RegistersLesson.NAME);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(number(rows.get(i).get(1))).isLessThan(number(rows.get(i - 1).get(1)));
            assertThat(number(rows.get(i).get(3))).isGreaterThan(number(rows.get(i - 1).get(3)));
            assertThat(number(rows.get(i).get(4))).isGreaterThan(number(rows.get(i - 1).get(4)));
        }
    }

    @Test
    void thin_air_takes_sensible_heat_and_hardly_latent() {
        List<List<String>> rows = table(MoistAirLesson.NAME);
        assertThat(number(rows.get(2).get(6)) / number(rows.get(0).get(6))).isBetween(0.75, 0.78);
        assertThat(number(rows.get(2).get(7)) / number(rows.get(0).get(7))).isBetween(0.99, 1.01);
    }

    /** The lesson's films and layers give the U-value that the assembly gives by itself. */
    @Test
    void walls_have_their_own_u_value() {
        List<Assembly> walls =
                List.of(
                        Assemblies.studWall89(),
                        Assemblies.concreteWallInsulatedOutside(),
                        Assemblies.adobeWall());
        List<List<String>> rows = table(WallLesson.NAME);
        for (int i = 0; i < walls.size(); i++) {
            double u =
                    walls.get(i)
                            .transmittance(HeatFlow.HORIZONTAL)
                            .to(Units.WATT_PER_SQUARE_METRE_KELVIN)
                            .getValue()
                            .doubleValue();
            // ISO 6946 has 0.04 m2 K/W outside, summer's film 1/17; two decimals are printed.
            double summer = 1 / (1 / u + 1.0 / 17 - 0.04);
            assertThat(number(rows.get(i).get(1))).isCloseTo(summer, within(0.006));
        }
    }

    @Test
    void the_unit_that_fits_runs_for_hours_and_starts_less_often() {
        List<List<String>> rows = table(OversizeLesson.NAME);
        assertThat(rows.get(0).get(2)).endsWith(" h");
        assertThat(rows.get(1).get(2)).endsWith(" min");
        assertThat(number(rows.get(0).get(3))).isLessThan(0.5 * number(rows.get(1).get(3)));
        assertThat(number(rows.get(0).get(6))).isLessThan(number(rows.get(1).get(6)));
    }

    @Test
    void the_command_prints_and_writes_what_was_asked_for(@TempDir Path folder) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status =
                Classroom.run(
                        new String[] {"to=" + folder, SixInchLesson.NAME},
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(status).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("six-inch duct on three bases");
        assertThat(folder.resolve("six-inch-duct.html")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("six-inch-duct.svg"))).contains("<svg");
        assertThat(ImageIO.read(folder.resolve("six-inch-duct.png").toFile()).getWidth())
                .isGreaterThan(1000);
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(3);
        }
    }

    @Test
    void an_unknown_name_is_answered_with_those_there_are() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status =
                Classroom.run(
                        new String[] {"bending"},
                        System.out,
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(status).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("no demonstration \"bending\"")
                .contains(String.join(", ", names()));
        assertThat(Map.copyOf(Lesson.all())).hasSize(7);
    }
}
