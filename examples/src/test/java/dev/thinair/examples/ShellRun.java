package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;

/** A shell session in this process; a snippet that does not compile or throws fails the test. */
final class ShellRun implements AutoCloseable {
    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8);
    private final JShell shell = JShell.builder().executionEngine("local").out(out).build();

    ShellRun() {
        shell.addToClasspath(System.getProperty("java.class.path"));
    }

    /** Runs code that is a method's body, whatever its line breaks; returns what it printed. */
    String runWhole(String code) {
        String left = code;
        StringBuilder all = new StringBuilder();
        while (!left.isBlank()) {
            SourceCodeAnalysis.CompletionInfo next =
                    shell.sourceCodeAnalysis().analyzeCompletion(left);
            assertThat(next.source()).as("complete code: %s", left).isNotNull();
            all.append(run(next.source().replaceAll("\\s*\n\\s*", " ")));
            left = next.remaining();
        }
        return all.toString();
    }

    /** Runs the code as if pasted into the shell and returns what it printed. */
    String run(String code) {
        printed.reset();
        PrintStream before = System.out;
        System.setOut(out);
        try {
            // Line by line, as somebody types or pastes it: the tool takes a line that could end
            // there as the end.
            String left = "";
            for (String line : code.lines().toList()) {
                left += line + "\n";
                while (!left.isBlank()) {
                    SourceCodeAnalysis.CompletionInfo next =
                            shell.sourceCodeAnalysis().analyzeCompletion(left);
                    if (!next.completeness().isComplete()) {
                        break;
                    }
                    eval(next.source());
                    left = next.remaining();
                }
            }
            assertThat(left).as("code left incomplete").isBlank();
        } finally {
            System.setOut(before);
        }
        out.flush();
        return printed.toString(StandardCharsets.UTF_8);
    }

    private void eval(String source) {
        for (SnippetEvent event : shell.eval(source)) {
            assertThat(event.exception()).as(source).isNull();
            assertThat(event.status())
                    .as(
                            "%s: %s",
                            source,
                            shell.diagnostics(event.snippet())
                                    .map(d -> d.getMessage(null))
                                    .toList())
                    .isEqualTo(Snippet.Status.VALID);
        }
    }

    @Override
    public void close() {
        shell.close();
    }
}
