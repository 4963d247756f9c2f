package dev.thinair.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads files of check cases: CSV with the eight columns of {@link CheckCase}, UTF-8. */
public final class CaseReader {

    /** The case files that ship with the library, by module. */
    public static final List<String> SHIPPED =
            List.of("psychro-altitude", "loads", "ducts", "cycling");

    private static final List<String> COLUMNS =
            List.of(
                    "id",
                    "quantity",
                    "inputs",
                    "expected",
                    "unit",
                    "tolerance",
                    "source",
                    "provenance");

    private CaseReader() {}

    /**
     * Reads a case file from disk.
     *
     * @throws IllegalArgumentException if the file cannot be read, lacks a column, or names two
     *     cases alike
     */
    public static List<CheckCase> read(Path file) {
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return read(reader, file.toString());
        } catch (IOException e) {
            throw new IllegalArgumentException(file + ": cannot be read as UTF-8 text", e);
        }
    }

    /** Reads one of the {@link #SHIPPED} files. */
    public static List<CheckCase> shipped(String name) {
        String path = "cases/" + name + ".csv";
        try (InputStream stream = CaseReader.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalArgumentException("no shipped case file " + path);
            }
            return read(new InputStreamReader(stream, StandardCharsets.UTF_8), path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<CheckCase> read(Reader reader, String name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        List<CheckCase> cases = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        try (CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
            Map<String, Integer> header = parser.getHeaderMap();
            for (String column : COLUMNS) {
                if (header == null || !header.containsKey(column)) {
                    throw new IllegalArgumentException(
                            name + ": column \"" + column + "\" is missing; needed are " + COLUMNS);
                }
            }
            for (CSVRecord row : parser) {
                if (!row.isConsistent()) {
                    throw new IllegalArgumentException(
                            name
                                    + ": line "
                                    + parser.getCurrentLineNumber()
                                    + " has "
                                    + row.size()
                                    + " fields, but the header has "
                                    + header.size());
                }
                CheckCase read =
                        new CheckCase(
                                row.get("id").strip(),
                                row.get("quantity").strip(),
                                row.get("inputs").strip(),
                                row.get("expected").strip(),
                                row.get("unit").strip(),
                                row.get("tolerance").strip(),
                                row.get("source").strip(),
                                row.get("provenance").strip());
                if (!ids.add(read.id())) {
                    throw new IllegalArgumentException(
                            name + ": two cases are called " + read.id());
                }
                cases.add(read);
            }
        } catch (UncheckedIOException e) {
            throw new IllegalArgumentException(name + ": is not well-formed CSV", e);
        }
        return List.copyOf(cases);
    }
}
