package dev.thinair.units;

import java.util.List;
import java.util.Locale;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.format.SimpleUnitFormat;

/**
 * Products, quotients and powers of units, such as {@code BTU/h/ft2/degF} or {@code kg/(m s)}.
 *
 * <p>Symbols are read by an instance of the unit library's format that is ours alone, labelled with
 * the trade's symbols, so that prefixes and SI names come from there and an embedder's own format
 * is left as it was. The library's grammar for quotients is not used, because it reads {@code
 * W/m2/K} as {@code W K/m2}; here division goes from left to right.
 */
final class UnitExpression {

    private static final SimpleUnitFormat SYMBOLS = symbols();

    private final String text;
    private int at;

    private UnitExpression(String text) {
        this.text = text;
    }

    private static SimpleUnitFormat symbols() {
        SimpleUnitFormat format = SimpleUnitFormat.getNewInstance();
        // Only names that no kind gives another meaning: in a product a degree is a difference.
        format.label(Units.FAHRENHEIT_DIFFERENCE, "degF");
        for (String alias : List.of("\u00b0F", "F", "\u2109")) {
            format.alias(Units.FAHRENHEIT_DIFFERENCE, alias);
        }
        for (String alias : List.of("degC", "\u00b0C", "C", "\u2103")) {
            format.alias(Units.KELVIN, alias);
        }
        for (Kind kind : Kind.all()) {
            if (kind == Kind.of(javax.measure.quantity.Temperature.class)
                    || kind == Kind.of(TemperatureDifference.class)) {
                continue;
            }
            for (Kind.Written written : kind.units()) {
                label(format, written.unit(), written.label());
                written.aliases().forEach(alias -> label(format, written.unit(), alias));
            }
        }
        return format;
    }

    private static void label(SimpleUnitFormat format, Unit<?> unit, String symbol) {
        if (symbol.chars().allMatch(Character::isLetter) && !symbol.isEmpty()) {
            format.alias(unit, symbol);
        }
    }

    /** The unit written so, or null if it cannot be read. */
    static Unit<?> parse(String text) {
        String plain =
                text.replace("\u00b2", "^2")
                        .replace("\u00b3", "^3")
                        .replace('\u00b7', '*')
                        .replace('\u22c5', '*')
                        .replace('\u00d7', '*')
                        .replace("**", "^")
                        .replaceAll("\\bsq\\.? ?(ft|in|m|cm)\\b\\.?", "$1^2")
                        .replaceAll("\\bcu\\.? ?(ft|in|m|cm)\\b\\.?", "$1^3")
                        .replaceAll("([A-Za-z])([23])(?![A-Za-z0-9])", "$1^$2");
        UnitExpression expression = new UnitExpression(plain);
        try {
            Unit<?> unit = expression.product();
            return expression.at == plain.length() ? unit : null;
        } catch (MeasurementParseException e) {
            return null;
        }
    }

    private Unit<?> product() {
        Unit<?> unit = power();
        while (at < text.length() && text.charAt(at) != ')') {
            char operator = text.charAt(at);
            if (operator == '/') {
                at++;
                unit = unit.divide(power());
            } else {
                if (operator == '*' || operator == '-' || operator == ' ') {
                    at++;
                }
                if (operator == ' ' && at < text.length() && text.charAt(at) == '/') {
                    continue;
                }
                unit = unit.multiply(power());
            }
        }
        return unit;
    }

    private Unit<?> power() {
        skipBlanks();
        Unit<?> unit = atom();
        if (at < text.length() && text.charAt(at) == '^') {
            int start = ++at;
            while (at < text.length()
                    && (Character.isDigit(text.charAt(at))
                            || (at == start && text.charAt(at) == '-'))) {
                at++;
            }
            String exponent = text.substring(start, at);
            if (!exponent.matches("-?[1-9]")) {
                throw unreadable();
            }
            unit = unit.pow(Integer.parseInt(exponent));
        }
        return unit;
    }

    private Unit<?> atom() {
        if (at >= text.length()) {
            throw unreadable();
        }
        if (text.charAt(at) == '(') {
            at++;
            Unit<?> unit = product();
            if (at >= text.length() || text.charAt(at) != ')') {
                throw unreadable();
            }
            at++;
            return unit;
        }
        if (text.charAt(at) == '1') {
            at++;
            return AbstractUnit.ONE;
        }
        int start = at;
        while (at < text.length()
                && (Character.isLetter(text.charAt(at))
                        || "\u00b0%".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        if (start == at) {
            throw unreadable();
        }
        synchronized (SYMBOLS) {
            return SYMBOLS.parse(text.substring(start, at));
        }
    }

    private void skipBlanks() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private MeasurementParseException unreadable() {
        return new MeasurementParseException(
                String.format(Locale.ROOT, "unit text at %d", at), text, at);
    }

    /** The library's own text for a unit that the trade has no symbol for. */
    static String print(Unit<?> unit) {
        synchronized (SYMBOLS) {
            return SYMBOLS.format(unit);
        }
    }
}
