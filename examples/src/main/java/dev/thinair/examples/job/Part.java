package dev.thinair.examples.job;

import dev.thinair.units.Si;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/** A mapping of the job file after it was checked against the schema. */
public final class Part {
    private final Place place;
    private final Map<String, Entry> entries;

    /** A checked value with its place. */
    record Entry(Place place, Object value) {}

    Part(Place place, Map<String, Entry> entries) {
        this.place = place;
        this.entries = new LinkedHashMap<>(entries);
    }

    public Place place() {
        return place;
    }

    /** Where the value of a key stands; the mapping's own place if the key is absent. */
    public Place placeOf(String key) {
        Entry e = entries.get(key);
        return e == null ? place : e.place();
    }

    public boolean has(String key) {
        return entries.containsKey(key);
    }

    public Part part(String key) {
        return (Part) value(key);
    }

    public Optional<Part> partIfGiven(String key) {
        return has(key) ? Optional.of(part(key)) : Optional.empty();
    }

    /** The entries of a list of mappings; none if the key is absent. */
    public List<Part> parts(String key) {
        if (!has(key)) {
            return List.of();
        }
        return ((List<?>) value(key)).stream().map(e -> (Part) ((Entry) e).value()).toList();
    }

    @SuppressWarnings("unchecked") // the reader parsed it with the type its schema names
    public <Q extends Quantity<Q>> Quantity<Q> amount(String key, Class<Q> type) {
        Read<?> read = (Read<?>) value(key);
        if (read.type() != type) {
            throw new IllegalStateException(
                    place + ": " + key + " is declared as " + read.type().getSimpleName());
        }
        return (Quantity<Q>) read.quantity();
    }

    public <Q extends Quantity<Q>> Quantity<Q> amount(
            String key, Class<Q> type, Quantity<Q> otherwise) {
        return has(key) ? amount(key, type) : otherwise;
    }

    /** A dimensionless amount as a plain number. */
    public double ratio(String key) {
        return Si.ratio(amount(key, Dimensionless.class), key);
    }

    public String text(String key) {
        return (String) value(key);
    }

    public String text(String key, String otherwise) {
        return has(key) ? text(key) : otherwise;
    }

    public int count(String key) {
        return (Integer) value(key);
    }

    public int count(String key, int otherwise) {
        return has(key) ? count(key) : otherwise;
    }

    Shape.Price.Money price(String key) {
        return (Shape.Price.Money) value(key);
    }

    public MonthDay day(String key) {
        return (MonthDay) value(key);
    }

    /** A fault found at a key after the schema was satisfied, such as a name nobody declared. */
    public JobFileException fault(String key, String wrong, String allowed) {
        return JobFileException.at(placeOf(key), wrong, allowed);
    }

    private Object value(String key) {
        Entry e = entries.get(key);
        if (e == null) {
            throw new IllegalStateException(place + ": no key " + key);
        }
        return e.value();
    }

    /** A quantity together with the type it was read as. */
    record Read<Q extends Quantity<Q>>(Class<Q> type, Quantity<Q> quantity) {}
}
