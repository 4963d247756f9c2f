package dev.thinair.reference;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The named inputs of a case, with units, as SI values or as texts. */
public final class CaseInputs {

    private static final Pattern NUMBER =
            Pattern.compile(
                    "([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)(.*)", Pattern.DOTALL);

    private final Map<String, String> byName = new LinkedHashMap<>();
    private final Set<String> read = new LinkedHashSet<>();
    private final String raw;

    /** Splits {@code name=value unit; name=value unit}; parts without a sign are remarks. */
    public CaseInputs(String inputs) {
        raw = inputs;
        for (String part : inputs.split(";")) {
            int sign = part.indexOf('=');
            if (sign < 0) {
                byName.put(part.strip(), "");
            } else {
                byName.put(part.substring(0, sign).strip(), part.substring(sign + 1).strip());
            }
        }
    }

    /** All inputs as they were written. */
    public String raw() {
        read.addAll(byName.keySet());
        return raw;
    }

    /** Whether an input of this name, or a remark of these words, is given. */
    public boolean has(String name) {
        if (byName.containsKey(name)) {
            read.add(name);
            return true;
        }
        return false;
    }

    /** The names that were asked for and given, so far. */
    Set<String> read() {
        return Collections.unmodifiableSet(read);
    }

    /** The names in their order. */
    public Iterable<String> names() {
        read.addAll(byName.keySet());
        return byName.keySet();
    }

    /** The input as text. */
    public String text(String name) {
        String value = byName.get(name);
        if (value == null) {
            throw new IllegalArgumentException("input \"" + name + "\" is missing");
        }
        read.add(name);
        return value;
    }

    /** The input as text, or another text where it is not given. */
    public String text(String name, String otherwise) {
        return has(name) ? text(name) : otherwise;
    }

    /** The input in SI units: a temperature in kelvins, an angle in radians. */
    public double si(String name) {
        return read(name, false);
    }

    /** The input in SI units, or another value where it is not given. */
    public double si(String name, double otherwise) {
        return has(name) ? si(name) : otherwise;
    }

    /** The first of several names that is given, in SI units. */
    public double anySi(String... names) {
        for (String name : names) {
            if (has(name)) {
                return si(name);
            }
        }
        throw new IllegalArgumentException(
                "input \"" + String.join("\" or \"", names) + "\" is missing");
    }

    /** A temperature difference in kelvins. */
    public double difference(String name) {
        return read(name, true);
    }

    /** The bare number as written, whatever its unit. */
    public double number(String name) {
        return Double.parseDouble(match(name).group(1));
    }

    /** The unit text behind the number. */
    public String unit(String name) {
        return match(name).group(2).strip();
    }

    private double read(String name, boolean difference) {
        Matcher matcher = match(name);
        double value = Double.parseDouble(matcher.group(1));
        String unit = matcher.group(2);
        return (difference ? CaseUnit.difference(unit) : CaseUnit.of(unit)).toSi(value);
    }

    private Matcher match(String name) {
        String value = text(name);
        Matcher matcher = NUMBER.matcher(value);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "input \"" + name + "\" is \"" + value + "\", not a number with its unit");
        }
        return matcher;
    }
}
