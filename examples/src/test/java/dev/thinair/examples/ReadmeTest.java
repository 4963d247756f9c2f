package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The code on the README and on the page of recipes runs as it stands there. */
class ReadmeTest {
    private static final String IMPORTS =
            "import static dev.thinair.units.Units.*;\n"
                    + "import dev.thinair.units.*;\n"
                    + "import dev.thinair.altitude.*;\n"
                    + "import dev.thinair.psychro.*;\n"
                    + "import dev.thinair.ducts.*;\n"
                    + "import dev.thinair.cycling.*;\n";

    /** The first block with the imports it names, the study with those of the shell's start-up. */
    @Test
    void the_readme_answers_and_studies() throws Exception {
        String more =
                ShellTest.startUpWithoutWelcome()
                        .lines()
                        .filter(line -> !IMPORTS.contains(line))
                        .collect(Collectors.joining("\n"));
        List<String> printed = PageRun.of(Path.of("..", "README.md"), IMPORTS, more);
        assertThat(printed).hasSize(2);
        assertThat(printed.get(0))
                .contains("of standard air, enough for")
                .contains("cfm")
                .contains("ton")
                .contains("apparatus dew point");
        assertThat(printed.get(1).lines().filter(line -> line.matches("\\s*\\d+ .*"))).hasSize(36);
        assertThat(Files.readString(Path.of("target", "study.csv")).lines()).hasSize(37);
        assertThat(Files.readString(Path.of("target", "study.svg")))
                .contains("<svg")
                .contains("setpoint 72 degF</text")
                .contains("elevation, ft</text");
    }

    @Test
    void the_recipes_print_what_they_say() throws Exception {
        List<String> printed = PageRun.of(Path.of("recipes.md"), "", "");
        assertThat(printed).hasSize(7);
        assertThat(printed.get(6)).contains("true");
    }

    /** The mechanism itself: a page that says something else fails. */
    @Test
    void a_page_that_says_otherwise_is_caught(@TempDir Path folder) throws Exception {
        Path page = folder.resolve("page.md");
        String code = "```java\nSystem.out.println(\"about \" + 1.25 * 4 + \" tons\");\n```\n";
        Files.writeString(page, code + "```text\nabout 5.05 tons\n```\n");
        assertThat(PageRun.of(page, "", "")).containsExactly("about 5.0 tons\n");
        for (String wrong : List.of("about 5.4 tons", "about 5 kW", "about 5.0 tons more")) {
            Files.writeString(page, code + "```text\n" + wrong + "\n```\n");
            assertThat(
                            org.assertj.core.api.Assertions.catchThrowable(
                                    () -> PageRun.of(page, "", "")))
                    .as(wrong)
                    .isInstanceOf(AssertionError.class);
        }
    }
}
