package dev.thinair.reference.report;

import dev.thinair.reference.CaseReader;
import dev.thinair.reference.CheckCase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes the validation report: {@code validation.html}, which stands alone, and {@code
 * validation.md} with its drawings beside it.
 */
public final class ValidationReport {

    private ValidationReport() {}

    /**
     * Writes the report.
     *
     * @param args the folder to write into; then case files, or none for the shipped ones
     * @throws IOException if the folder cannot be written
     * @throws IllegalArgumentException if no folder is named or a case file cannot be read
     */
    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException(
                    "name a folder to write the report into, then the case files if not the"
                            + " shipped ones");
        }
        Validation validation;
        if (args.length == 1) {
            validation = Validation.ofShipped();
        } else {
            Map<String, List<CheckCase>> files = new LinkedHashMap<>();
            for (int i = 1; i < args.length; i++) {
                files.put(args[i], CaseReader.read(Path.of(args[i])));
            }
            validation = Validation.of(files);
        }
        write(validation, Path.of(args[0]));
    }

    /** Writes the report of evaluated cases into a folder. */
    static void write(Validation validation, Path folder) throws IOException {
        Files.createDirectories(folder);
        Map<Plot, String> drawings = new LinkedHashMap<>();
        String undrawn = "";
        for (Plot plot : Plots.all(validation)) {
            if (plot.series().isEmpty()) {
                continue;
            }
            String svg = "";
            try {
                svg = PlotDrawing.svg(plot);
                Files.writeString(
                        folder.resolve(plot.key() + ".svg"),
                        HtmlForm.alone(svg),
                        StandardCharsets.UTF_8);
            } catch (IllegalStateException e) {
                // A Java runtime without fonts must not cost the reader the numbers.
                undrawn = e.getMessage();
            }
            drawings.put(plot, svg);
        }
        Form html = new HtmlForm();
        Report.write(html, validation, drawings, undrawn);
        Files.writeString(folder.resolve("validation.html"), html.text(), StandardCharsets.UTF_8);
        Form markdown = new MarkdownForm();
        Report.write(markdown, validation, drawings, undrawn);
        Files.writeString(folder.resolve("validation.md"), markdown.text(), StandardCharsets.UTF_8);
    }
}
