package dev.thinair.cycling;

import java.util.Locale;

/**
 * A limit that a finding is held against: data with its source, not code.
 *
 * @param name what is limited
 * @param value the limit, in {@code unit}
 * @param unit the unit's symbol
 * @param source published source, or "common practice, no source"
 */
public record Threshold(String name, double value, String unit, String source) {

    /** Source text of a trade rule without a published source. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    /**
     * Checks the parts.
     *
     * @param name as the component
     * @param value as the component
     * @param unit as the component
     * @param source as the component
     * @throws IllegalArgumentException if a text is missing or the value is not finite
     */
    public Threshold {
        require("threshold name", name);
        require("threshold unit", unit);
        require("threshold source", source);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "threshold " + name + " is " + value + " " + unit + ", but must be finite");
        }
    }

    private static void require(String what, String text) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException(what + " is missing");
        }
    }

    /**
     * The same threshold with another value, from the user.
     *
     * @param other the other value, in the same unit
     * @param otherSource where it comes from
     * @return the changed threshold
     * @throws IllegalArgumentException as for the constructor
     */
    public Threshold with(double other, String otherSource) {
        return new Threshold(name, other, unit, otherSource);
    }

    /**
     * For shells and reports.
     *
     * @return name, value, unit and source
     */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.6g %s (%s)", name, value, unit, source);
    }
}
