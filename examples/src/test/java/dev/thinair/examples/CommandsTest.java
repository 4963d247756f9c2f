package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The Maven commands on the pages. They take minutes to run, so they are taken apart instead: what
 * each names (module, program, execution, profile, test) is there and is what would run. What a
 * command starts is run by the test named beside it.
 */
class CommandsTest {
    private static final Path ROOT = Path.of("..");
    private static final List<String> PAGES =
            List.of(
                    "README.md",
                    "DEVELOPERS.md",
                    "examples/recipes.md",
                    "examples/large-study.md",
                    "examples/job-file.md");
    private static final Pattern COMMAND =
            Pattern.compile("(?m)^ {4,}(mvn .*)$|`(mvn\\s[^`]*)`", Pattern.MULTILINE);
    private static final Pattern PART = Pattern.compile("(?:[^\\s\"']|\"[^\"]*\"|'[^']*')+");
    private static final Set<String> PHASES =
            Set.of("compile", "test-compile", "test", "verify", "install", "deploy");
    private static final Set<String> SWITCHES = Set.of("-q", "-B", "-ntp", "-am");

    private static final String SHORT = "mvn -q -B -ntp ";
    private static final String EXAMPLES = SHORT + "-pl examples -am compile ";
    private static final String REFERENCE = SHORT + "-pl reference-tests -am ";

    /** Every command of the pages, and what runs what it starts. */
    private static final Map<String, String> RUN_BY =
            Map.ofEntries(
                    Map.entry("mvn -B -ntp verify", "the build itself"),
                    Map.entry("mvn verify", "the build itself"),
                    Map.entry(EXAMPLES + "exec:java", "ServiceCallTest"),
                    Map.entry(
                            EXAMPLES + "exec:java -Dexec.args=path/to/job.yaml", "ServiceCallTest"),
                    Map.entry(
                            EXAMPLES
                                    + "exec:java"
                                    + " -Dexec.mainClass=dev.thinair.examples.classroom.Classroom",
                            "ClassroomTest"),
                    Map.entry(
                            EXAMPLES
                                    + "exec:java"
                                    + " -Dexec.mainClass=dev.thinair.examples.large.LargeStudy"
                                    + " -Dexec.args=\"to=target/large-study\"",
                            "LargeStudyTest"),
                    Map.entry("mvn -q -ntp -pl examples -am compile exec:exec@jshell", "ShellTest"),
                    Map.entry(
                            SHORT + "-pl cycling -am install -DskipTests" + " -Dmaven.javadoc.skip",
                            "the build itself, into a repository of its own for examples/embed"),
                    Map.entry(
                            SHORT + "-f examples/embed/pom.xml compile exec:java",
                            "the build itself, which runs that program's tests"),
                    Map.entry(
                            SHORT + "compile javadoc:aggregate@site",
                            "by hand: the build makes the same pages module by module"),
                    Map.entry(
                            SHORT + "-f examples/cluster/pom.xml compile exec:java",
                            "by hand: fetches the engine's 200 jars"),
                    Map.entry(SHORT + "install -DskipTests", "the build itself, up to packaging"),
                    Map.entry(SHORT + "-pl ducts -am compile", "the build itself"),
                    Map.entry(SHORT + "-pl ducts -am test", "the build itself"),
                    Map.entry(
                            REFERENCE + "compile exec:java -Dexec.args=cases.csv",
                            "ShippedCasesTest"),
                    Map.entry(
                            REFERENCE
                                    + "compile exec:java"
                                    + " -Dexec.mainClass=dev.thinair.reference.Vocabulary"
                                    + " -Dexec.args=reference-tests/vocabulary.md",
                            "VocabularyTest"),
                    Map.entry(
                            SHORT
                                    + "-pl examples -am test -Dtest=ReadmeTest"
                                    + " -Dsurefire.failIfNoSpecifiedTests=false"
                                    + " -Dpages.write=true",
                            "by hand: rewrites the pages"),
                    Map.entry("mvn -q spotless:apply", "by hand: rewrites the sources"),
                    Map.entry(REFERENCE + "verify -DskipTests", "ValidationReportTest"),
                    Map.entry(
                            REFERENCE + "test-compile exec:exec@speed",
                            "by hand: takes minutes of a quiet machine"),
                    Map.entry(
                            SHORT
                                    + "-pl psychro,altitude,loads,ducts,cycling -am test-compile"
                                    + " org.pitest:pitest-maven:mutationCoverage"
                                    + " -DfailWhenNoMutations=false",
                            "by hand: takes hours"),
                    Map.entry("mvn -B -ntp -Pcoverage verify", "by hand: a second whole build"),
                    Map.entry(
                            "mvn -B -ntp -DskipTests -Dapi.last=0.1.0 verify",
                            "by hand: there is no release yet"),
                    Map.entry("mvn versions:set", "by hand: for a release"),
                    Map.entry("mvn versions:set -DnewVersion=...", "by hand: for a release"),
                    Map.entry("mvn -B -ntp -P release deploy", "by hand: for a release"),
                    Map.entry(
                            "mvn -B -ntp -P release verify -DskipTests", "by hand: for a release"));

    private record Command(String page, String text) {
        List<String> parts() {
            return PART.matcher(text)
                    .results()
                    .map(m -> m.group().replaceAll("[\"']", ""))
                    .toList();
        }

        String value(String option) {
            int at = parts().indexOf(option);
            return at < 0 ? null : parts().get(at + 1);
        }

        String property(String name) {
            return parts().stream()
                    .filter(p -> p.startsWith("-D" + name + "="))
                    .map(p -> p.substring(name.length() + 3))
                    .findFirst()
                    .orElse(null);
        }
    }

    private static List<Command> commands() throws IOException {
        List<Command> found = new ArrayList<>();
        for (String page : PAGES) {
            Matcher m = COMMAND.matcher(Files.readString(ROOT.resolve(page)));
            while (m.find()) {
                String text = m.group(1) != null ? m.group(1) : m.group(2);
                found.add(new Command(page, text.replaceAll("\\s+", " ").strip()));
            }
        }
        return found;
    }

    @Test
    void each_command_is_run_by_a_test_or_says_why_not() throws Exception {
        Set<String> said = new TreeSet<>();
        commands().forEach(c -> said.add(c.text));
        assertThat(said).containsExactlyInAnyOrderElementsOf(RUN_BY.keySet());
        Set<String> tests = new LinkedHashSet<>();
        for (String module : modules()) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
                files.forEach(f -> tests.add(f.getFileName().toString().replace(".java", "")));
            }
        }
        for (String by : RUN_BY.values()) {
            if (by.endsWith("Test")) {
                assertThat(tests).contains(by);
            }
        }
    }

    @Test
    void what_a_command_names_is_there() throws Exception {
        for (Command c : commands()) {
            List<String> parts = c.parts();
            Path pom = ROOT.resolve(c.value("-f") == null ? "pom.xml" : c.value("-f"));
            assertThat(pom).as(c.toString()).isRegularFile();
            List<String> chosen =
                    c.value("-pl") == null ? List.of() : List.of(c.value("-pl").split(","));
            assertThat(modules()).as(c.toString()).containsAll(chosen);
            for (int i = 1; i < parts.size(); i++) {
                String part = parts.get(i);
                if (Set.of("-f", "-pl", "-P").contains(part)) {
                    i++;
                } else if (!part.startsWith("-D") && !part.startsWith("-P")) {
                    assertThat(
                                    SWITCHES.contains(part)
                                            || PHASES.contains(part)
                                            || part.contains(":"))
                            .as("%s of %s", part, c)
                            .isTrue();
                }
                if (part.contains(":") && part.contains("@")) {
                    String id = part.substring(part.indexOf('@') + 1);
                    Path holder =
                            chosen.isEmpty() ? pom : ROOT.resolve(chosen.get(0)).resolve("pom.xml");
                    assertThat(BillOfMaterialsTest.all(holder, "//plugin/executions/execution/id"))
                            .as(c.toString())
                            .contains(id);
                }
            }
            String profile =
                    parts.stream()
                            .filter(p -> p.startsWith("-P") && p.length() > 2)
                            .map(p -> p.substring(2))
                            .findFirst()
                            .orElse(c.value("-P"));
            if (profile != null) {
                assertThat(BillOfMaterialsTest.all(pom, "/project/profiles/profile/id"))
                        .contains(profile);
            }
            if (c.property("test") != null) {
                Class.forName("dev.thinair.examples." + c.property("test"));
            }
        }
    }

    /** A main class that the pom fixes runs whatever class the command names. */
    @Test
    void exec_java_runs_the_class_that_is_named() throws Exception {
        int named = 0;
        for (Command c : commands()) {
            if (!c.parts().contains("exec:java")) {
                continue;
            }
            Path folder =
                    c.value("-f") != null
                            ? ROOT.resolve(c.value("-f")).getParent()
                            : ROOT.resolve(c.value("-pl"));
            String fixed =
                    BillOfMaterialsTest.one(
                            folder.resolve("pom.xml"),
                            "//plugin[artifactId='exec-maven-plugin']/configuration/mainClass");
            String program = c.property("exec.mainClass");
            if (program != null) {
                named++;
                assertThat(fixed).as(c.toString()).isEqualTo("${exec.mainClass}");
            } else if (fixed.equals("${exec.mainClass}")) {
                program =
                        BillOfMaterialsTest.one(
                                folder.resolve("pom.xml"), "/project/properties/exec.mainClass");
            } else {
                program = fixed;
            }
            Path source = folder.resolve("src/main/java/" + program.replace('.', '/') + ".java");
            assertThat(source).as(c.toString()).content().contains("public static void main(");
        }
        assertThat(named).isGreaterThanOrEqualTo(3);
    }

    /** Without the output file Maven reads the terminal too, and JShell misses what is pasted. */
    @Test
    void the_shell_has_the_terminal_to_itself() throws Exception {
        String shell = "//plugin/executions/execution[id='jshell']/configuration/";
        Path pom = Path.of("pom.xml");
        assertThat(BillOfMaterialsTest.one(pom, shell + "inheritIo")).isEqualTo("true");
        assertThat(BillOfMaterialsTest.one(pom, shell + "outputFile")).isNotEmpty();
    }

    @Test
    void the_dependency_shown_is_the_one_that_is_built() throws Exception {
        Matcher xml =
                Pattern.compile("```xml\n(.*?)```", Pattern.DOTALL)
                        .matcher(Files.readString(ROOT.resolve("README.md")));
        assertThat(xml.find()).isTrue();
        String pom = Files.readString(Path.of("embed", "pom.xml")).replaceAll("(?s)<!--.*?-->", "");
        // The project has one dependency more, so the list does not end there.
        String shown = xml.group(1).strip().replaceFirst("</dependencies>$", "");
        assertThat(pom.replaceAll("\\s", "")).contains(shown.replaceAll("\\s", ""));
    }

    @Test
    void links_between_pages_lead_somewhere() throws Exception {
        Pattern link = Pattern.compile("\\]\\(([^)#\\s]*)(?:#([^)\\s]*))?\\)");
        for (String page : PAGES) {
            Path file = ROOT.resolve(page);
            Matcher m = link.matcher(Files.readString(file));
            while (m.find()) {
                if (m.group(1).contains("://")) {
                    continue;
                }
                Path to = m.group(1).isEmpty() ? file : file.resolveSibling(m.group(1)).normalize();
                assertThat(to).as("%s in %s", m.group(), page).exists();
                if (m.group(2) != null) {
                    assertThat(headings(to)).as("%s in %s", m.group(), page).contains(m.group(2));
                }
            }
        }
    }

    private static List<String> headings(Path page) throws IOException {
        return Files.readAllLines(page).stream()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(java.util.Locale.ROOT))
                .map(line -> line.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
                .toList();
    }

    private static List<String> modules() throws Exception {
        return BillOfMaterialsTest.all(ROOT.resolve("pom.xml"), "/project/modules/module");
    }
}
