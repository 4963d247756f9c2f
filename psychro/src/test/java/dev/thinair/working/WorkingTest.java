package dev.thinair.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkingTest {

    private static Working sample() {
        return Working.titled("Volume flow <through> a duct")
                .given("d", "diameter", Units.metres(0.2))
                .given("v", "velocity", Units.metresPerSecond(3), "measured | by hand")
                .step("area", "A = pi d^2 / 4", Units.squareMetres(Math.PI * 0.01), "geometry")
                .step(
                        "volume flow",
                        "V = A v",
                        Units.cubicMetresPerSecond(Math.PI * 0.03),
                        "by definition")
                .note("Only for round ducts & full flow.")
                .build();
    }

    @Test
    void numbers_put_in_come_from_earlier_lines() {
        Working working = sample();
        assertThat(working.steps().get(1).inputs())
                .containsExactly(
                        new Working.Input("A", Units.squareMetres(Math.PI * 0.01)),
                        new Working.Input("v", Units.metresPerSecond(3)));
        assertThat(working.result()).isEqualTo(Units.cubicMetresPerSecond(Math.PI * 0.03));
        assertThat(working.steps())
                .allSatisfy(
                        step ->
                                assertThat(step.recomputed().getAsDouble())
                                        .isCloseTo(
                                                step.result().getValue().doubleValue(),
                                                within(1e-15)));
    }

    @Test
    void text_shows_every_part() {
        assertThat(sample().toText())
                .isEqualTo(
                        """
                        Volume flow <through> a duct
                          d = 0.2 m (0.656168 ft)  diameter
                          v = 3 m/s (590.551 fpm)  velocity [measured | by hand]
                        1. area
                           A = pi d^2 / 4
                           with d = 0.2 m
                           A = 0.0314159 m2 (0.338158 ft2)
                           source: geometry
                        2. volume flow
                           V = A v
                           with A = 0.0314159 m2, v = 3 m/s
                           V = 0.0942478 m3/s (199.7 cfm)
                           source: by definition
                        Note: Only for round ducts & full flow.
                        """);
        assertThat(sample()).hasToString(sample().toText());
    }

    @Test
    void markdown_and_html_show_every_part() {
        assertThat(sample().toMarkdown())
                .startsWith("### Volume flow <through> a duct\n")
                .contains("| `v` | velocity | 3 m/s (590.551 fpm) | measured \\| by hand |")
                .contains("1. area:  \n   `A = pi d^2 / 4` with d = 0.2 m")
                .contains("**`V` = 0.0942478 m3/s (199.7 cfm)**  \n   Source: by definition")
                .endsWith("> Only for round ducts & full flow.\n");
        String html = sample().toHtml();
        assertThat(html)
                .contains("<h3>Volume flow &lt;through&gt; a duct</h3>")
                .contains(Formula.of("V = A v").mathMl())
                .contains("<strong><var>V</var> = 0.0942478 m3/s (199.7 cfm)</strong>")
                .contains("full flow.</em>");
        assertThat(Formula.symbolHtml("tau_b")).isEqualTo("<var>\u03c4</var><sub>b</sub>");
        assertThat(Formula.symbolHtml("t1")).isEqualTo("<var>t</var><sub>1</sub>");
        assertThat(Formula.of("t1 = 2 t_adp").mathMl())
                .contains("<msub><mi>t</mi><mi>1</mi></msub>")
                .contains("<msub><mi>t</mi><mi>adp</mi></msub>");
        assertThat(Formula.symbolHtml("W_s*")).isEqualTo("<var>W</var><sub>s*</sub>");
        Markup.assertWellFormed(html);
    }

    @Test
    void steps_in_words_and_included_workings() {
        Working outer =
                Working.titled("Mass flow")
                        .given("d", "diameter", Units.metres(0.2))
                        .include(sample())
                        .stepInWords(
                                "m",
                                "mass flow",
                                "read from the chart",
                                List.of("V"),
                                Units.kilogramsPerSecond(0.1),
                                "chart")
                        .build();
        assertThat(outer.given()).hasSize(2);
        assertThat(outer.steps()).hasSize(3);
        assertThat(outer.steps().get(2).recomputed()).isEmpty();
        assertThat(outer.notes()).hasSize(1);
        assertThat(outer.title()).isEqualTo("Mass flow");
    }

    @Test
    void a_chain_with_a_gap_is_refused() {
        Working.Builder builder = Working.titled("t").given("a", "a", Units.ratio(1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.step("s", "b = a q", Units.ratio(1), "x"))
                .withMessage("\"b = a q\" uses q, which no earlier line defines");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.given("a", "again", Units.ratio(2)))
                .withMessage("symbol a is defined twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.step("s", "a = 1", Units.ratio(1), "x"))
                .withMessage("symbol a is defined twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.step("s", "c = 1", Units.ratio(1), " "))
                .withMessage("source of c of a working is missing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Working.titled(""))
                .withMessage("title of a working is missing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.note(null))
                .withMessage("note of a working is missing");
        assertThatIllegalStateException()
                .isThrownBy(builder::build)
                .withMessage("working \"t\" has no step");
    }
}
