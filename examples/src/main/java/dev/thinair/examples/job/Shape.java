package dev.thinair.examples.job;

import dev.thinair.units.QuantityText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;

/** What may stand at one place of the job file. */
sealed interface Shape {

    /** One key of a mapping. */
    record Key(String name, Shape shape, boolean required, String help) {}

    /**
     * A mapping with fixed keys.
     *
     * @param keys every key that may appear, by name, in the order of the page
     * @param choices groups of alternatives: exactly one alternative of each group must be given,
     *     completely
     */
    record Fields(Map<String, Key> keys, List<List<List<String>>> choices) implements Shape {
        static Fields of(Key... keys) {
            Map<String, Key> map = new LinkedHashMap<>();
            for (Key k : keys) {
                if (map.put(k.name(), k) != null) {
                    throw new IllegalStateException("key twice in the schema: " + k.name());
                }
            }
            return new Fields(map, List.of());
        }

        /** Adds a group of which exactly one alternative must stand in the file. */
        Fields exactlyOneOf(List<List<String>> alternatives) {
            List<List<List<String>>> all = new ArrayList<>(choices);
            all.add(List.copyOf(alternatives));
            return new Fields(keys, List.copyOf(all));
        }
    }

    /** A list whose entries all have the same shape. */
    record Items(Shape item, int least, int most) implements Shape {}

    /** A number with its unit, within limits. */
    record Amount<Q extends Quantity<Q>>(
            Class<Q> type,
            String kind,
            Quantity<Q> low,
            Quantity<Q> high,
            String lowText,
            String highText)
            implements Shape {
        static <Q extends Quantity<Q>> Amount<Q> between(
                Class<Q> type, String kind, String low, String high) {
            return new Amount<>(
                    type,
                    kind,
                    QuantityText.parse(low, type),
                    QuantityText.parse(high, type),
                    low.replaceFirst(" 1$", ""),
                    high.replaceFirst(" 1$", ""));
        }
    }

    /** A bare whole number: a count of things. */
    record Count(int low, int high) implements Shape {}

    /** Free text of one or more words. */
    record Words(int longest) implements Shape {}

    /** A name that other places of the file refer to. */
    record Name() implements Shape {}

    /** One of a few words. */
    record Choice(List<String> words) implements Shape {}

    /** Month and day, as in 07-21. */
    record DayOfYear() implements Shape {}

    /** Money for each of something: a number, a currency, a stroke, and the thing. */
    record Price(String per) implements Shape {
        /**
         * A price as read.
         *
         * @param amount money for each of the thing
         * @param currency currency code or sign as written
         */
        record Money(double amount, String currency) {}
    }
}
