package dev.thinair.examples.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Renews the key tables of job-file.md after a change of the schema; run from the module's folder.
 */
final class JobPageWriter {
    private JobPageWriter() {}

    public static void main(String[] args) throws IOException {
        Path file = Path.of("job-file.md");
        String page = Files.readString(file);
        String mark = "<!-- keys -->";
        Files.writeString(
                file, page.substring(0, page.indexOf(mark)) + mark + "\n" + JobPage.tables());
    }
}
