package dev.thinair.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Shipped cases whose expected value we hold to be wrong, each with the evidence. They are
 * evaluated like all others and come out {@link CaseOutcome.Verdict#OFF}; nothing is adjusted.
 */
public final class DisputedCases {

    private DisputedCases() {}

    /** The reason for each disputed case, by its id. */
    public static Map<String, String> reasons() {
        Map<String, String> reasons = new LinkedHashMap<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (InputStream stream = DisputedCases.class.getResourceAsStream("cases/disputed.csv");
                InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
                CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
            for (CSVRecord row : parser) {
                reasons.put(row.get("id"), row.get("reason"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return reasons;
    }
}
