package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.junit.jupiter.api.Test;

/** The snippets of the README run as they stand there. */
class ReadmeTest {

    private static final String IMPORTS =
            "import static dev.thinair.units.Units.*;\n"
                    + "import dev.thinair.units.*;\n"
                    + "import dev.thinair.altitude.*;\n"
                    + "import dev.thinair.psychro.*;\n"
                    + "import dev.thinair.ducts.*;\n"
                    + "import dev.thinair.cycling.*;\n";

    @Test
    void the_java_snippet_tells_airflow_tons_and_the_coil() throws Exception {
        assertThat(run(IMPORTS + block("java")))
                .contains("of standard air, enough for")
                .contains("cfm")
                .contains("ton")
                .contains("apparatus dew point");
    }

    @Test
    void the_jshell_snippet_prints_a_line_per_elevation_and_the_working() throws Exception {
        String printed = run(block("jshell"));
        assertThat(printed.lines().filter(line -> line.contains(" ft: "))).hasSize(5);
        assertThat(printed).contains("humidity ratio");
    }

    private static String block(String language) throws Exception {
        Path readme = Path.of("..", "README.md");
        Matcher matcher =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
                        .matcher(Files.readString(readme));
        assertThat(matcher.find()).as("a %s block in %s", language, readme).isTrue();
        return matcher.group(1);
    }

    private static String run(String code) {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (JShell shell =
                JShell.builder()
                        .executionEngine("local")
                        .out(new PrintStream(printed, true, StandardCharsets.UTF_8))
                        .build()) {
            shell.addToClasspath(System.getProperty("java.class.path"));
            PrintStream before = System.out;
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            try {
                String left = code;
                while (!left.isBlank()) {
                    SourceCodeAnalysis.CompletionInfo next =
                            shell.sourceCodeAnalysis().analyzeCompletion(left);
                    for (SnippetEvent event : shell.eval(next.source())) {
                        assertThat(event.exception()).as(next.source()).isNull();
                        assertThat(event.status())
                                .as(
                                        "%s: %s",
                                        next.source(),
                                        shell.diagnostics(event.snippet())
                                                .map(d -> d.getMessage(null))
                                                .toList())
                                .isEqualTo(Snippet.Status.VALID);
                    }
                    left = next.remaining();
                }
            } finally {
                System.setOut(before);
            }
        }
        return printed.toString(StandardCharsets.UTF_8);
    }
}
