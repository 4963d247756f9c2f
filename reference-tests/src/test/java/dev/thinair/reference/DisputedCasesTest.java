package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the command treats rows that we hold to be wrong, and rows that only borrow their names. */
class DisputedCasesTest {

    private static final String HEADER =
            "id,quantity,inputs,expected,unit,tolerance,source,provenance\n";

    private static CheckCase shipped(String id) {
        return CaseReader.SHIPPED.stream()
                .flatMap(name -> CaseReader.shipped(name).stream())
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> run(int status, String... args) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int ended = CaseFileCheck.run(args, new PrintStream(bytes, true, StandardCharsets.UTF_8));
        List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(ended).as(lines.get(lines.size() - 1)).isEqualTo(status);
        return lines;
    }

    @Test
    void the_shipped_files_pass_with_their_disputed_rows_counted_apart() {
        List<String> lines = run(0);
        int disputed = DisputedCases.reasons().size();
        assertThat(disputed).isPositive();
        assertThat(lines.get(lines.size() - 1))
                .matches("\\d+ passed, 0 failed, \\d+ unknown, " + disputed + " disputed");
        assertThat(lines).filteredOn(l -> l.startsWith("disputed ")).hasSize(disputed);
        assertThat(lines).noneMatch(l -> l.startsWith("off "));
    }

    @Test
    void every_disputed_row_ships_and_carries_its_evidence() {
        DisputedCases.reasons()
                .forEach(
                        (id, evidence) -> {
                            assertThat(evidence).as(id).hasSizeGreaterThan(40);
                            assertThat(DisputedCases.reason(shipped(id))).isEqualTo(evidence);
                        });
    }

    @Test
    void another_row_under_a_disputed_name_is_judged_like_any_other(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("own.csv");
        Files.writeString(
                file,
                HEADER
                        + "LD-A005,Julian day,UTC=2003-10-17T19:30:30Z,2452930.5,d,1e-6,own,own\n"
                        + "LD-A006,declination,day of year=172,23.45,deg,0.01,own,own\n");
        List<String> lines = run(1, file.toString());
        assertThat(lines.get(0)).startsWith("off LD-A005");
        assertThat(lines.get(1)).startsWith("ok LD-A006");
        assertThat(lines.get(2)).isEqualTo("1 passed, 1 failed, 0 unknown");
    }
}
