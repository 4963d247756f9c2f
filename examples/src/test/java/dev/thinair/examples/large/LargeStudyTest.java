package dev.thinair.examples.large;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LargeStudyTest {

    private static String run(int status, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int answer =
                LargeStudy.run(
                        args,
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(answer).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(status);
        return status == 0
                ? out.toString(StandardCharsets.UTF_8)
                : err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void a_part_comes_out_the_same_to_the_last_bit_and_is_not_computed_twice(@TempDir Path folder)
            throws Exception {
        String first = run(0, "to=" + folder, "parts=1", "threads=2");
        assertThat(first).contains("0 of them there already").contains("SHA-256");
        Path part = folder.resolve("part-000.csv");
        List<double[]> rows = HousesByElevation.part(0);
        assertThat(rows).hasSize(HousesByElevation.ROWS);
        assertThat(Files.readAllBytes(part)).isEqualTo(HousesByElevation.bytes(rows));

        FileTime then = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(part, then);
        String again = run(0, "to=" + folder, "parts=1");
        assertThat(again).contains("1 of them there already").doesNotContain("computed");
        assertThat(Files.getLastModifiedTime(part)).isEqualTo(then);
        assertThat(again.substring(again.indexOf("SHA-256")))
                .isEqualTo(first.substring(first.indexOf("SHA-256")));

        for (double[] row : rows) {
            assertThat(row).hasSize(HousesByElevation.COLUMNS.size());
            assertThat(row[4]).isPositive();
            // A unit either has a balance, and then all of it, or none.
            assertThat(Double.isNaN(row[6])).isEqualTo(Double.isNaN(row[8]));
        }
        // Same house, ducts and unit: thin air carries less.
        double[] low = rows.get(0);
        double[] high = rows.get(rows.size() - HousesByElevation.ROWS / 100);
        assertThat(low[2]).isEqualTo(high[2]);
        assertThat(low[3]).isEqualTo(high[3]);
        assertThat(high[5]).isLessThan(0.8 * low[5]);
    }

    @Test
    void arguments_that_cannot_be_are_refused_in_a_line() {
        assertThat(run(2, "parts=0"))
                .contains("parts is \"0\", but must be a number from 1 to 100");
        assertThat(run(2, "threads=many")).contains("threads is \"many\"");
        assertThat(run(2, "everything")).contains("none of to=folder");
        assertThatThrownBy(() -> HousesByElevation.part(100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("house is 100, but must lie in [0, 99]");
    }
}
