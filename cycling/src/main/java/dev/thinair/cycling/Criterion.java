package dev.thinair.cycling;

import javax.measure.Quantity;

/**
 * The value that a finding holds its evidence against, and who says so.
 *
 * @param name what is limited, in plain words
 * @param value the limit with its unit
 * @param source published source, or the words "common practice, no source"
 */
public record Criterion(String name, Quantity<?> value, String source) {

    /** How a limit without a published source is marked. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    /**
     * Checks that all are there.
     *
     * @param name as the component
     * @param value as the component
     * @param source as the component
     * @throws IllegalArgumentException if one is null or the source is blank
     */
    public Criterion {
        if (name == null || value == null || source == null || source.isBlank()) {
            throw new IllegalArgumentException(
                    "a criterion needs a name, a value and a source, not null or blank");
        }
    }
}
