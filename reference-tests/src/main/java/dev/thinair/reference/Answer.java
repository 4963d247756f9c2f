package dev.thinair.reference;

/** What the library says to a case: a value in SI units, a difference, or a text. */
public sealed interface Answer {

    /**
     * A value in SI units; a temperature in kelvins on its absolute scale.
     *
     * @param si the value
     */
    record Value(double si) implements Answer {}

    /**
     * A temperature difference in kelvins, or anything else whose unit must not be shifted.
     *
     * @param si the value
     */
    record Difference(double si) implements Answer {}

    /**
     * A number already in the unit of the case, for units that no system of units has.
     *
     * @param number the number
     */
    record Plain(double number) implements Answer {}

    /**
     * A value of a model that is itself an approximation of what the case asks for.
     *
     * @param si the value in SI units
     * @param modelError how far the model may be off by its own documentation, SI units
     */
    record Approximate(double si, double modelError) implements Answer {}

    /**
     * An outcome in words.
     *
     * @param words the outcome
     */
    record Text(String words) implements Answer {}

    /** A value in SI units. */
    static Answer si(double value) {
        return new Value(value);
    }

    /** A difference in SI units. */
    static Answer difference(double value) {
        return new Difference(value);
    }

    /** A number in the unit of the case. */
    static Answer plain(double value) {
        return new Plain(value);
    }

    /** A value in SI units with the documented error of the model that gave it. */
    static Answer approximate(double value, double modelError) {
        return new Approximate(value, modelError);
    }

    /** Words. */
    static Answer text(String words) {
        return new Text(words);
    }
}
