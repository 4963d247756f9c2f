package dev.thinair.reference.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Brings the sources of cases, which name the same publication in many ways, into one spelling. The
 * list stands in {@code publications.csv}; the first expression found in a source decides.
 */
public final class Publications {

    private static final Pattern CHAPTER =
            Pattern.compile("\\bch(?:apter|\\.)?\\s*(\\d+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern YEAR =
            Pattern.compile("Fundamentals[ ,(]*((?:19|20)\\d\\d)", Pattern.CASE_INSENSITIVE);
    private static final Pattern SYSTEM =
            Pattern.compile("Fundamentals[^;]{0,25}\\((SI|I-P)\\)", Pattern.CASE_INSENSITIVE);

    private record Entry(Publication publication, Pattern pattern) {}

    private final List<Entry> entries;

    private Publications(List<Entry> entries) {
        this.entries = entries;
    }

    /** The shipped list. */
    public static Publications shipped() {
        List<Entry> entries = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        String path = "/dev/thinair/reference/publications.csv";
        try (InputStream stream = Publications.class.getResourceAsStream(path);
                InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
                CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
            for (CSVRecord row : parser) {
                entries.add(
                        new Entry(
                                new Publication(
                                        Publication.Kind.valueOf(
                                                row.get("kind").toUpperCase(Locale.ROOT)),
                                        row.get("publication")),
                                Pattern.compile(row.get("pattern"), Pattern.CASE_INSENSITIVE)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Publications(List.copyOf(entries));
    }

    /** The publication of a source; the source's own words where the list has none. */
    public Publication of(String source) {
        for (Entry entry : entries) {
            if (entry.pattern().matcher(source).find()) {
                return entry.publication();
            }
        }
        return new Publication(Publication.Kind.TRADE, source.isEmpty() ? "(no source)" : source);
    }

    /** Edition and chapter as far as the source states them; may be empty. */
    public static String part(String source) {
        StringBuilder part = new StringBuilder();
        if (source.startsWith("F21 ")) {
            part.append("2021 (SI)");
        }
        Matcher year = YEAR.matcher(source);
        if (year.find()) {
            part.append(year.group(1));
        }
        Matcher system = SYSTEM.matcher(source);
        if (system.find()) {
            part.append(part.length() == 0 ? "(" : " (").append(system.group(1)).append(')');
        }
        Matcher chapter = CHAPTER.matcher(source);
        if (chapter.find()) {
            part.append(part.length() == 0 ? "" : ", ").append("ch. ").append(chapter.group(1));
        }
        return part.toString();
    }
}
