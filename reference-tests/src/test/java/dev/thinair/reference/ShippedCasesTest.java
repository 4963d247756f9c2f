package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every shipped case that the evaluator knows, as a test that carries its source in its name. */
class ShippedCasesTest {

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
        return DynamicTest.dynamicTest(
                checked.id() + " " + checked.quantity() + " [" + checked.source() + "]",
                () ->
                        assertThat(outcome.verdict())
                                .as(outcome.line())
                                .isEqualTo(CaseOutcome.Verdict.OK));
    }
}
