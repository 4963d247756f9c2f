package dev.thinair.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Shipped cases whose expected value we hold to be wrong, each with the evidence. They are
 * evaluated like all others and come out {@link CaseOutcome.Verdict#OFF}; nothing is adjusted. The
 * command counts them apart.
 */
public final class DisputedCases {

    private DisputedCases() {}

    /**
     * The evidence against a case, or null. Only the very row that ships is disputed: another row
     * under its name is judged like any other.
     */
    public static String reason(CheckCase checked) {
        String reason = Shipped.REASONS.get(checked.id());
        return reason != null && checked.equals(Shipped.CASES.get(checked.id())) ? reason : null;
    }

    /** Read once, when first asked for. */
    private static final class Shipped {
        private static final Map<String, String> REASONS = reasons();
        private static final Map<String, CheckCase> CASES = new HashMap<>();

        static {
            for (String name : CaseReader.SHIPPED) {
                CaseReader.shipped(name).forEach(c -> CASES.put(c.id(), c));
            }
        }
    }

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
