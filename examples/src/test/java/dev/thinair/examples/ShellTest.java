package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.thinair.examples.shell.CheatSheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The interactive shell: its start-up, its welcome, its cheat sheet. */
class ShellTest {
    private static final Path START_UP = Path.of("src", "main", "jshell", "startup.jsh");

    /** The start-up file as code: the shell's tool puts the semicolons there. */
    static String startUpWithoutWelcome() throws IOException {
        return Files.readAllLines(START_UP).stream()
                .filter(line -> line.startsWith("import "))
                .map(line -> line + ";\n")
                .collect(Collectors.joining());
    }

    @Test
    void the_welcome_offers_six_lines_that_work() throws Exception {
        try (ShellRun shell = new ShellRun()) {
            shell.run(startUpWithoutWelcome());
            List<String> lines =
                    shell.run("welcome();")
                            .lines()
                            .filter(line -> line.startsWith("    "))
                            .map(String::strip)
                            .toList();
            assertThat(lines).hasSize(6);
            StringBuilder printed = new StringBuilder();
            for (String line : lines) {
                printed.append(shell.run(line + ";"));
            }
            assertThat(printed)
                    .contains("thermodynamic wet bulb")
                    .contains("great room west")
                    .contains("SERIOUS: the coil ices")
                    .contains("left to mend");
        }
    }

    /** No two of the imported packages may claim the same simple name. */
    @Test
    void every_type_on_the_cheat_sheet_is_known_by_its_simple_name() throws Exception {
        List<String> topics =
                List.of("units", "psychro", "altitude", "loads", "ducts", "cycling", "working");
        try (ShellRun shell = new ShellRun()) {
            shell.run(startUpWithoutWelcome());
            StringBuilder all = new StringBuilder("var known = List.of(");
            int count = 0;
            for (String topic : topics) {
                for (String type : CheatSheet.typeNames(topic)) {
                    all.append(count++ == 0 ? "" : ", ").append(type).append(".class");
                }
            }
            assertThat(count).isGreaterThan(120);
            shell.run(all.append(");").toString());
        }
    }

    @Test
    void the_cheat_sheet_tells_factories_questions_and_kernels() {
        assertThat(CheatSheet.text())
                .contains("MoistAir: ", "ofDryBulbAndRelativeHumidity(dryBulb, relativeHumidity")
                .contains("DuctSystem: builder()")
                .contains("fahrenheit")
                .doesNotContain("arg0");
        assertThat(CheatSheet.text("ducts")).contains("Register").doesNotContain("MoistAir");
        assertThat(CheatSheet.text("airflow")).contains("standard()", "externalStaticPressure()");
        assertThat(CheatSheet.text("DuctSystem")).contains("build: ", "change: ", "withFilter(");
        assertThat(CheatSheet.text("kernel"))
                .contains("dev.thinair.psychro.kernel", "StandardAtmosphere: ", "pressure(");
        assertThatThrownBy(() -> CheatSheet.text("nothing"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing");
    }

    /** The real tool, as the build starts it, with a script for a user. */
    @Test
    void the_real_shell_starts_and_answers(@TempDir Path folder) throws Exception {
        Path script = folder.resolve("script.jsh");
        Files.writeString(
                script, "System.out.println(SitePressure.standardAt(feet(7200)))\n/exit\n");
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "jshell")
                                        .toString(),
                                "-R-Djava.awt.headless=true",
                                "--class-path",
                                System.getProperty("java.class.path"),
                                "--startup",
                                START_UP.toAbsolutePath().toString(),
                                script.toString())
                        // The tool's first start in a home tells there that it made its settings.
                        .redirectError(folder.resolve("errors").toFile())
                        .start();
        process.getOutputStream().close();
        String printed =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(printed)
                .startsWith("thinair: ")
                .contains("site pressure", "standard at 7200 ft")
                .doesNotContain("Error");
        assertThat(folder.resolve("errors")).content().doesNotContain("Error", "Exception");
    }
}
