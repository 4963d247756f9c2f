package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every shipped case that the evaluator knows, as a test that carries its source in its name. */
class ShippedCasesTest {

    private static final Map<String, String> DISPUTED = DisputedCases.reasons();

    private final CaseEvaluator evaluator = CaseEvaluator.standard();

    @TestFactory
    Stream<DynamicContainer> every_known_case_is_inside_its_tolerance() {
        return CaseReader.SHIPPED.stream()
                .map(
                        name ->
                                DynamicContainer.dynamicContainer(
                                        name,
                                        CaseReader.shipped(name).stream()
                                                .map(evaluator::evaluate)
                                                .filter(
                                                        o ->
                                                                o.verdict()
                                                                        != CaseOutcome.Verdict
                                                                                .UNKNOWN)
                                                .map(ShippedCasesTest::test)));
    }

    private static DynamicTest test(CaseOutcome outcome) {
        CheckCase checked = outcome.checked();
        String dispute = DISPUTED.get(checked.id());
        if (dispute != null) {
            return DynamicTest.dynamicTest(
                    checked.id() + " is disputed: " + dispute,
                    () ->
                            assertThat(outcome.verdict())
                                    .as("no longer off, so not to be disputed: " + outcome.line())
                                    .isEqualTo(CaseOutcome.Verdict.OFF));
        }
        return DynamicTest.dynamicTest(
                checked.id() + " " + checked.quantity() + " [" + checked.source() + "]",
                () ->
                        assertThat(outcome.verdict())
                                .as(outcome.line())
                                .isEqualTo(CaseOutcome.Verdict.OK));
    }
}
