package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class VocabularyTest {

    private static final String COMMAND =
            "mvn -q -B -ntp -pl reference-tests -am compile exec:java"
                    + " -Dexec.mainClass=dev.thinair.reference.Vocabulary"
                    + " -Dexec.args=reference-tests/vocabulary.md";

    @Test
    void the_table_says_what_the_evaluator_knows() throws Exception {
        List<String> written = Files.readAllLines(Path.of("vocabulary.md"));
        assertThat(written)
                .as("vocabulary.md is behind the evaluator; write it anew: " + COMMAND)
                .isEqualTo(Vocabulary.markdown().lines().toList());
    }

    @Test
    void every_wording_stands_in_the_table_and_leads_to_its_rule() {
        String table = Vocabulary.markdown();
        int wordings = 0;
        for (CaseEvaluator.Known known : CaseEvaluator.standard().rules()) {
            for (String wording : known.wordings()) {
                assertThat(
                                table.contains(Vocabulary.cell(wording))
                                        || table.contains(wording.replace("|", "\\|")))
                        .as(wording)
                        .isTrue();
                wordings++;
            }
        }
        assertThat(wordings).isGreaterThan(300);
    }

    @Test
    void a_slip_in_a_name_is_answered_with_the_nearest() {
        CaseOutcome outcome =
                CaseEvaluator.standard()
                        .evaluate(
                                new CheckCase(
                                        "X", "Wet-bulb temprature", "", "1", "degC", "1", "", ""));
        assertThat(outcome.verdict()).isEqualTo(CaseOutcome.Verdict.UNKNOWN);
        assertThat(outcome.remark()).contains("nearest known:").contains("temperature");
    }
}
