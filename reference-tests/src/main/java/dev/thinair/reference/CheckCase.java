package dev.thinair.reference;

/**
 * One check against the outside world, as it stands in a case file.
 *
 * @param id the case's own name, unique in its file
 * @param quantity what is asked for, in words
 * @param inputs named inputs, each {@code name=value unit}, separated by semicolons
 * @param expected what the source says: a number in {@code unit}, or a text
 * @param unit unit of the expected value; {@code 1} for pure numbers, {@code -} for texts
 * @param tolerance absolute, in {@code unit}; 0 or {@code exact} admits no difference
 * @param source the publication the expected value stands in
 * @param provenance how the value came here: looked up, computed, from memory
 */
public record CheckCase(
        String id,
        String quantity,
        String inputs,
        String expected,
        String unit,
        String tolerance,
        String source,
        String provenance) {

    /** Whether the expected value was recalled, not read. */
    public boolean fromMemory() {
        return (source + " " + provenance).toLowerCase(java.util.Locale.ROOT).contains("memory");
    }
}
