package dev.thinair.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {

    private static final Map<String, Double> NUMBERS =
            Map.of("a", 2.0, "b", 3.0, "c_p", 5.0, "rho", 7.0, "d", 11.0);

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "y = a + b c_p; 17",
                "y = a b / (c_p rho); 0.17142857142857143",
                "y = a / b / c_p; 0.13333333333333333",
                "y = a / b c_p; 3.3333333333333335",
                "y = a - b - c_p; -6",
                "y = -a^2; -4",
                "y = a^b^2; 512",
                "y = a^-1; 0.5",
                "y = (a + b)(c_p - d); -30",
                "y = 2.5e-1 a; 0.5",
                "y = 2.5e1 a; 50",
                "y = sqrt(a b + c_p + c_p); 4",
                "y = max(a, b) min(c_p, d) abs(-rho); 105",
                "y = ln(exp(a)); 2",
                "y = log10(1000); 3",
                "y = sin(pi / 6) + cos(0) + tan(0) + 4 atan(1) / pi; 2.5",
                "y = a * b * .5; 3"
            })
    void expressions_evaluate_by_the_usual_rules(String text, double expected) {
        assertThat(Formula.of(text).evaluate(NUMBERS)).isCloseTo(expected, within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "y = a b / (c_p rho)",
                "C_s = 60 rho c_p (1 + 1.86 a / 1.006)",
                "y = -a^2 (b - (c_p - d)) sqrt(a) max(a, b)",
                "p_ws = exp(a < b)",
                "y = (a b)^2 - (a + b)/(a - b)"
            })
    void mathml_is_well_formed(String text) {
        Formula formula = text.contains("<") ? Formula.words(text) : Formula.of(text);
        assertThat(formula.mathMl()).startsWith("<math ").endsWith("</math>");
        Markup.assertWellFormed(formula.mathMl());
    }

    @Test
    void mathml_sets_fractions_subscripts_and_greek() {
        assertThat(Formula.of("C_s = rho c / (2 a)").mathMl())
                .isEqualTo(
                        "<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mrow>"
                                + "<msub><mi>C</mi><mi>s</mi></msub><mo>=</mo>"
                                + "<mfrac><mrow><mrow><mi>ρ</mi><mo>\u2062</mo><mi>c</mi></mrow>"
                                + "</mrow><mrow><mrow><mn>2</mn><mo>\u2062</mo><mi>a</mi></mrow>"
                                + "</mrow></mfrac></mrow></math>");
        assertThat(Formula.of("y = a (b - (c - d))").mathMl())
                .contains("<mo>(</mo><mi>b</mi><mo>-</mo><mrow><mo>(</mo><mi>c</mi>");
        assertThat(Formula.of("y = 2 3").mathMl()).contains("<mn>2</mn><mo>·</mo><mn>3</mn>");
        assertThat(Formula.of("y = (a + b)^2").mathMl())
                .contains("<msup><mrow><mrow><mo>(</mo><mi>a</mi>");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "y; formula \"y\": '=' expected at position 1",
                "= a; formula \"= a\": a symbol expected at position 0",
                "y = ; formula \"y =\": a symbol expected at position 3",
                "y = (a; formula \"y = (a\": ')' expected at position 6",
                "y = a + ); formula \"y = a + )\": a symbol expected at position 8",
                "y = 1.2.3; formula \"y = 1.2.3\": a number expected at position 9",
                "y = a = b; formula \"y = a = b\": the end expected at position 6",
                "y = min(a); formula \"y = min(a)\": 2 argument(s) of min expected at position 10",
                "y = sqrt(a, b); formula \"y = sqrt(a, b)\": 1 argument(s) of sqrt expected at"
                        + " position 14"
            })
    void what_cannot_be_read_is_refused_with_its_place(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formula.of(text.strip()))
                .withMessage(message);
    }

    @Test
    void a_symbol_without_a_number_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formula.of("y = a q").evaluate(NUMBERS))
                .withMessage("symbol q of \"y = a q\" has no number");
    }

    @Test
    void words_are_text_and_no_expression() {
        Formula words = Formula.words("root of f(T) = 0");
        assertThat(words.isExpression()).isFalse();
        assertThat(words.symbols()).isEmpty();
        assertThat(words).hasToString("root of f(T) = 0");
        assertThatIllegalStateException()
                .isThrownBy(() -> words.evaluate(NUMBERS))
                .withMessage("\"root of f(T) = 0\" is no expression");
        assertThatNullPointerException()
                .isThrownBy(() -> Formula.words(null))
                .withMessage("formula is null");
    }

    @Test
    void symbols_come_in_order_of_appearance_and_texts_compare() {
        assertThat(Formula.of("y = b + a max(c, b) - d").symbols())
                .containsExactly("b", "a", "c", "d");
        assertThat(Formula.of("y = a")).isEqualTo(Formula.of("y = a"));
        assertThat(Formula.of("y = a")).isNotEqualTo(Formula.words("y = a"));
        assertThat(Formula.of("y = a").hashCode()).isEqualTo(Formula.of("y = a").hashCode());
    }
}
