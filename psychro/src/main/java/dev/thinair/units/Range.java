package dev.thinair.units;

/** Domain checks shared by every kernel: one wording for what is out of range. */
public final class Range {

    private Range() {}

    /**
     * Refuses a value outside a closed interval. Written positively, so that NaN fails as well. A
     * bound missed by no more than two units in the last place counts as met, because a converted
     * value may be rounded past it: -100 degC is 173.14999999999998 K in doubles.
     *
     * @param name the quantity's name as the user knows it
     * @param value the value, in {@code unit}
     * @param low smallest allowed value, in {@code unit}
     * @param high largest allowed value, in {@code unit}
     * @param unit the unit's symbol
     * @throws IllegalArgumentException if value is NaN or outside [low, high]; the message reads
     *     "{@code name is value unit, but must lie in [low, high] unit}"
     */
    public static void require(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high) && !roundedPast(value, low, high)) {
            throw outside(name, value, low, high, unit);
        }
    }

    /**
     * Refuses a value that is not above a bound. Written positively, so that NaN fails as well.
     *
     * @param name the quantity's name as the user knows it
     * @param value the value, in {@code unit}
     * @param bound the bound that the value must exceed, in {@code unit}
     * @param unit the unit's symbol
     * @throws IllegalArgumentException if value is NaN, infinite, or not above the bound
     */
    public static void requireAbove(String name, double value, double bound, String unit) {
        if (!(value > bound && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    name
                            + " is "
                            + value
                            + " "
                            + unit
                            + ", but must be above "
                            + bound
                            + " "
                            + unit
                            + " and finite");
        }
    }

    private static boolean roundedPast(double value, double low, double high) {
        // beside the largest numbers the tolerance itself overflows
        return Double.isFinite(value)
                && value >= low - 2 * Math.ulp(low)
                && value <= high + 2 * Math.ulp(high);
    }

    private static IllegalArgumentException outside(
            String name, double value, double low, double high, String unit) {
        return new IllegalArgumentException(
                name
                        + " is "
                        + value
                        + " "
                        + unit
                        + ", but must lie in ["
                        + low
                        + ", "
                        + high
                        + "] "
                        + unit);
    }
}
