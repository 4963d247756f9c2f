package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.thinair.examples.job.DemoText;
import dev.thinair.examples.job.Job;
import dev.thinair.examples.job.JobFileException;
import dev.thinair.examples.job.JobMutation;
import dev.thinair.examples.report.Document;
import dev.thinair.examples.report.HtmlForm;
import dev.thinair.examples.report.TextForm;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Whatever happens to a job file: it is reviewed, or refused in one line that explains itself.
 * Never a NaN in the review, never an exception that only a programmer understands.
 *
 * <p>The properties run with fixed seeds, so that a build is repeatable; {@code
 * -Djqwik.tries.default} and another seed in the annotation search further. What they found stands
 * in {@code fuzz-found.txt} and is run again in every build.
 */
class JobFileFuzzPropertyTest {

    private static final String DEMO = DemoText.read();
    private static final int LINES = DEMO.split("\n", -1).length;

    private static final Pattern PROGRAMMERS_ONLY =
            Pattern.compile(
                    "\\bnull\\b|Exception|java\\.|dev\\.thinair|Optional|\\bNaN\\b|@[0-9a-f]{5,}"
                            + "|Index \\d+ out of bounds");
    private static final Pattern NOT_A_NUMBER =
            Pattern.compile("\\bNaN\\b|\\bInfinity\\b|\u221e|\ufffd");

    @Provide
    Arbitrary<List<JobMutation>> anything() {
        return mutations(JobMutation.Kind.values()).list().ofMinSize(1).ofMaxSize(4);
    }

    /** Other numbers only: most of these files describe a job that can be worked out. */
    @Provide
    Arbitrary<List<JobMutation>> nudges() {
        return mutations(JobMutation.Kind.NUDGE).list().ofMinSize(3).ofMaxSize(25);
    }

    private static Arbitrary<JobMutation> mutations(JobMutation.Kind... kinds) {
        return Combinators.combine(
                        Arbitraries.of(kinds),
                        Arbitraries.integers().between(0, LINES - 1),
                        Arbitraries.integers().between(0, 999))
                .as(JobMutation::new);
    }

    @Property(tries = 250, seed = "71", edgeCases = EdgeCasesMode.NONE)
    void a_spoiled_file_is_read_or_refused_in_a_line(
            @ForAll("anything") List<JobMutation> mutations) {
        read(JobMutation.applyAll(mutations, DEMO));
    }

    @Property(tries = 3, seed = "72", edgeCases = EdgeCasesMode.NONE)
    void a_changed_job_is_reviewed_or_refused(@ForAll("nudges") List<JobMutation> mutations) {
        review(JobMutation.applyAll(mutations, DEMO));
    }

    @TestFactory
    Stream<DynamicTest> what_was_found_stays_mended() throws IOException {
        try (BufferedReader reader =
                new BufferedReader(
                        new InputStreamReader(
                                JobFileFuzzPropertyTest.class.getResourceAsStream("fuzz-found.txt"),
                                StandardCharsets.UTF_8))) {
            return reader.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList().stream()
                    .map(
                            l ->
                                    DynamicTest.dynamicTest(
                                            l,
                                            () ->
                                                    review(
                                                            JobMutation.applyAll(
                                                                    Arrays.stream(l.split(" "))
                                                                            .map(JobMutation::parse)
                                                                            .toList(),
                                                                    DEMO))));
        }
    }

    /** Reads a file; null if it is refused as it should be. */
    private static Job read(String text) {
        try {
            return Job.read(text, "job.yaml");
        } catch (JobFileException e) {
            assertThat(e.getMessage())
                    .startsWith("job.yaml:")
                    .doesNotContainPattern("\\p{Cntrl}")
                    .hasSizeBetween(20, 1500);
            assertThat(ownWords(e.getMessage())).doesNotContainPattern(PROGRAMMERS_ONLY);
            return null;
        }
    }

    /** A message without what it quotes from the file. */
    private static String ownWords(String message) {
        return message.replaceAll("\"[^\"]*\"", "\"\"");
    }

    private static void review(String text) {
        Job job = read(text);
        if (job == null) {
            return;
        }
        Document document;
        try {
            document = ReviewDocument.of(new Study(job));
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException e) {
            // ServiceCall prints this in one line: it must name what cannot be worked out.
            assertThat(e.getMessage()).isNotNull().hasSizeGreaterThan(20);
            assertThat(ownWords(e.getMessage())).doesNotContainPattern(PROGRAMMERS_ONLY);
            return;
        }
        assertThat(TextForm.of(document)).doesNotContainPattern(NOT_A_NUMBER);
        assertThat(NOT_A_NUMBER.matcher(HtmlForm.of(document)).find()).isFalse();
    }
}
