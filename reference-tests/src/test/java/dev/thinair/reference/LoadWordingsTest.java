package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Load cases as somebody else may word them: other units, walls, hours and numbers. */
class LoadWordingsTest {

    private final CaseEvaluator evaluator = CaseEvaluator.standard();

    @TestFactory
    Stream<DynamicTest> shipped_cases_in_inch_pound_units() throws URISyntaxException {
        Path file = Path.of(LoadWordingsTest.class.getResource("loads-inch-pound.csv").toURI());
        List<CheckCase> cases = CaseReader.read(file);
        assertThat(cases).hasSizeGreaterThan(15);
        return cases.stream()
                .map(
                        c ->
                                DynamicTest.dynamicTest(
                                        c.id() + " " + c.quantity(),
                                        () -> {
                                            CaseOutcome outcome = evaluator.evaluate(c);
                                            assertThat(outcome.verdict())
                                                    .as(outcome.line())
                                                    .isEqualTo(CaseOutcome.Verdict.OK);
                                        }));
    }

    private CaseOutcome outcome(String quantity, String inputs, String expected, String unit) {
        return evaluator.evaluate(
                new CheckCase("x", quantity, inputs, expected, unit, "1e-6", "own", "own"));
    }

    private void ok(String quantity, String inputs, String expected, String unit) {
        CaseOutcome outcome = outcome(quantity, inputs, expected, unit);
        assertThat(outcome.verdict()).as(outcome.line()).isEqualTo(CaseOutcome.Verdict.OK);
    }

    @Test
    void azimuths_count_from_south_or_from_north() {
        // 80 degrees from north is 100 degrees east of south: the same wall and sun.
        String sun = "solar altitude=30 deg; tilt=90 deg; ";
        ok(
                "angle of incidence",
                sun + "solar azimuth=-100 deg from south; surface azimuth=80 deg",
                "30",
                "deg");
        ok(
                "angle of incidence",
                sun + "solar azimuth=80 deg; surface azimuth=-100 deg (from south, west positive)",
                "30",
                "deg");
    }

    @Test
    void another_wall_in_another_order_of_words() {
        // Two layers of 1 and 2 m2 K/W, massless: a step passes at once, U is 1/3.
        ok("U-factor", "layers outdoors to indoors=A(R1)>B(R2)", "0.333333333", "W/(m2K)");
        ok(
                "conduction time factor, hour 0",
                "layers outdoors to indoors=A(R1)>B(R2)",
                "100",
                "percent");
        ok(
                "ISO 13786 decrement factor: a screen of my own",
                "R_se=0.04; felt R=1 m2K/W; R_si=0.13; period=3600 s",
                "1",
                "-");
        ok(
                "parallel-path U-factor",
                "insulation=4 m2K/W; framing=1 m2K/W; rest=1 m2K/W; framing fraction=0.25",
                "0.275",
                "W/(m2K)");
    }

    @Test
    void a_room_told_in_other_words() {
        String films = "; hc=3.0 and hr=5.1 W/(m2K)";
        ok(
                "sum of 24 exact radiant time factors",
                "zone X: floor 12 m2 concrete 0.2 m, ceiling 12 m2 and walls 30 m2 gypsum" + films,
                "100",
                "percent");
        // Without mass all the radiant heat comes off at once.
        ok(
                "exact radiant time factor r0",
                "zone Y: all gypsum: 5+5 m2" + films + "; gypsum 0.0127/0.16/0.000001/1090",
                "100",
                "percent");
    }

    @Test
    void hours_name_their_place_in_the_day() {
        String gain = "gain h24-h24 W=100; radiant fraction=0; hour=";
        ok("diffuse + conduction window cooling load by nonsolar RTS", gain + "24", "100", "W");
        ok("diffuse + conduction window cooling load by nonsolar RTS", gain + "1", "0", "W");
    }

    @Test
    void what_is_missing_or_circular_is_unknown_with_its_reason() {
        assertThat(outcome("slab edge heat loss", "F_p=0.85 W/(mK)", "1", "W").line())
                .startsWith("unknown")
                .contains("perimeter");
        assertThat(
                        outcome("RLF peak horizontal irradiance", "latitude=35 deg", "952", "W/m2")
                                .line())
                .startsWith("unknown")
                .contains("proves nothing");
        assertThat(outcome("RLF peak horizontal irradiance", "latitude=40 deg", "1", "W/m2").line())
                .startsWith("off");
        assertThat(
                        outcome(
                                        "extraterrestrial normal irradiance, E_sc=1361",
                                        "day of year=21",
                                        "1404",
                                        "W/m2")
                                .line())
                .startsWith("unknown")
                .contains("1361");
        assertThat(outcome("slab edge heat lost", "F_p=0.85 W/(mK)", "1", "W").line())
                .startsWith("unknown")
                .contains("slab edge heat loss");
    }
}
