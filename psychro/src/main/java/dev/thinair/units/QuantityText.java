package dev.thinair.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/**
 * Quantities as text, in both unit systems: {@code 7200 ft}, {@code 0.5 in. w.g.}, {@code 36000
 * BTU/h}, {@code 60 gr/lb}, {@code 95 degF}, {@code R-13}.
 *
 * <p>A text is a number and a unit. The number has a decimal point and no thousands separators,
 * whatever the locale. The unit is one of the trade's symbols or any product, quotient and power of
 * units ({@code BTU/h/ft2/degF}, {@code W/(m2 K)}); division goes from left to right. A plain
 * number is read as a {@link javax.measure.quantity.Dimensionless}; {@code R-13} as a thermal
 * resistance in inch-pound units.
 *
 * <p>A temperature difference is never written like a temperature: {@code 18 degF_diff} (or {@code
 * 18 &Delta;&deg;F}), {@code 10 K} or {@code 10 degC_diff}. A bare {@code 18 degF} is refused where
 * a difference is wanted, because its author may have meant either.
 *
 * <p>Printing rounds half up to a number of significant digits and leaves out trailing zeros.
 * Results depend on no locale; all methods may be called from any thread.
 */
public final class QuantityText {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)");
    private static final Pattern R_VALUE = Pattern.compile("[Rr]-? ?(\\d+\\.?\\d*)");
    private static final int DIGITS = 6;

    private QuantityText() {}

    /**
     * Reads a quantity.
     *
     * @param <Q> the quantity's type
     * @param text number and unit
     * @param type the type wanted
     * @return the quantity in the unit written; in the SI unit if that is none of the trade's own
     *     ({@code 5 ft/s})
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the text has no number, or no unit of that type; the
     *     message is one line that quotes the text and shows how to write it
     */
    public static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Class<Q> type) {
        Objects.requireNonNull(text, "text is null");
        Objects.requireNonNull(type, "type is null");
        Kind kind = Kind.of(type);
        String plain =
                text.replace('\u2212', '-').replaceAll("[\\s\\u00a0\\u202f\\u2009]+", " ").strip();
        if (type == (Class<?>) ThermalResistance.class) {
            Matcher rValue = R_VALUE.matcher(plain);
            if (rValue.matches()) {
                plain = rValue.group(1) + " h*ft2*degF/BTU";
            }
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(plain);
        if (!matcher.matches()) {
            throw refused(text, kind, "it does not begin with a number");
        }
        String unitText = matcher.group(2);
        if (unitText.startsWith(",")) {
            throw refused(text, kind, "numbers are written without commas");
        }
        double number = Double.parseDouble(matcher.group(1));
        if (!Double.isFinite(number)) {
            throw refused(text, kind, "the number is too large");
        }
        Unit<Q> unit = unit(text, unitText, kind);
        if (find(unit) != null) {
            return Units.quantity(number, unit);
        }
        // A unit of the writer's own making has no symbol to print, so it goes on in SI.
        @SuppressWarnings("unchecked")
        Unit<Q> si = (Unit<Q>) kind.si();
        return Units.quantity(Crossing.convert(Units.quantity(number, unit), si), si);
    }

    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Unit<Q> unit(String text, String unitText, Kind kind) {
        Unit<?> unit = kind.unitWritten(unitText);
        if (unit != null) {
            return (Unit<Q>) unit;
        }
        if (unitText.isEmpty()) {
            throw refused(text, kind, "it has no unit");
        }
        if (kind.si() == Units.KELVIN_DIFFERENCE
                && Kind.of(Temperature.class).unitWritten(unitText) != null) {
            throw new IllegalArgumentException(
                    "\""
                            + text
                            + "\" is a temperature, not a temperature difference; write for"
                            + " example \"18 degF_diff\", \"10 degC_diff\" or \"10 K\"");
        }
        for (Kind other : Kind.all()) {
            if (other != kind && other.unitWritten(unitText) != null) {
                throw refused(text, kind, unitText + " measures " + other.measured());
            }
        }
        Unit<?> read = UnitExpression.parse(unitText);
        if (read == null) {
            throw refused(
                    text,
                    kind,
                    "unit \""
                            + unitText
                            + "\" is unknown; known are "
                            + kind.units().stream()
                                    .map(Kind.Written::label)
                                    .filter(label -> !label.isEmpty())
                                    .collect(Collectors.joining(", ")));
        }
        int slash = unitText.indexOf('/');
        if (!Crossing.measures(read, kind.si()) && slash > 0 && unitText.indexOf('(') < 0) {
            // "BTU/h-ft2-degF": handbooks put all that follows the one slash below it.
            Unit<?> below =
                    UnitExpression.parse(
                            unitText.substring(0, slash + 1)
                                    + "("
                                    + unitText.substring(slash + 1)
                                    + ")");
            read = below != null ? below : read;
        }
        if (!Crossing.measures(read, kind.si())) {
            throw refused(text, kind, unitText + " does not measure it");
        }
        return (Unit<Q>) kind.sameAs(read);
    }

    private static IllegalArgumentException refused(String text, Kind kind, String why) {
        return new IllegalArgumentException(
                "\""
                        + text
                        + "\" is not "
                        + kind.withArticle()
                        + ": "
                        + why
                        + "; write for example \""
                        + kind.example()
                        + "\"");
    }

    /**
     * The quantity with the trade's symbol, to six significant digits.
     *
     * @param quantity the quantity
     * @return for example {@code 7200 ft}
     * @throws NullPointerException if quantity is null
     */
    public static String format(Quantity<?> quantity) {
        return format(quantity, DIGITS);
    }

    /**
     * The quantity with the trade's symbol.
     *
     * @param quantity the quantity
     * @param digits significant digits, 1 to 17
     * @return for example {@code 0.5 in. w.g.}
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if digits is out of range
     */
    public static String format(Quantity<?> quantity, int digits) {
        Objects.requireNonNull(quantity, "quantity is null");
        return written(quantity.getValue().doubleValue(), quantity.getUnit(), digits);
    }

    /**
     * The quantity in another unit.
     *
     * @param <Q> the quantity's type
     * @param quantity the quantity
     * @param unit the unit to print it in
     * @param digits significant digits, 1 to 17
     * @return the text
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if digits is out of range
     */
    public static <Q extends Quantity<Q>> String formatIn(
            Quantity<Q> quantity, Unit<Q> unit, int digits) {
        Objects.requireNonNull(quantity, "quantity is null");
        Objects.requireNonNull(unit, "unit is null");
        return written(converted(quantity, unit), unit, digits);
    }

    /**
     * The quantity in both unit systems: as given first, in the other system in brackets. What
     * ducts have of pressure is read in inches of water, what the air has, from 10 kPa on, in
     * inches of mercury.
     *
     * @param quantity the quantity
     * @param digits significant digits of both numbers, 1 to 17
     * @return for example {@code 7200 ft (2195 m)}; without brackets if the other system writes it
     *     the same way or the unit is none of the trade's
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if digits is out of range
     */
    public static String formatBoth(Quantity<?> quantity, int digits) {
        Objects.requireNonNull(quantity, "quantity is null");
        String first = format(quantity, digits);
        Kind.Written written = find(quantity.getUnit());
        if (written == null || written.otherSystem() == null) {
            return first;
        }
        Unit<?> other = written.otherSystem();
        if (other.equals(Units.INCH_OF_WATER)
                && converted(quantity, Units.PASCAL) >= LEAST_AIR_PRESSURE) {
            other = Units.INCH_OF_MERCURY;
        }
        double number = converted(quantity, other);
        if (Math.abs(number) < ZERO_POINT_ROUNDING && other.isCompatible(Units.KELVIN)) {
            number = 0;
        }
        return first + " (" + written(number, other, digits) + ")";
    }

    /**
     * A number alone, as this class prints it.
     *
     * @param number the number
     * @param digits significant digits, 1 to 17
     * @return the text, in plain notation from 0.0001 up to 1e9, else with an exponent
     * @throws IllegalArgumentException if digits is out of range
     */
    public static String number(double number, int digits) {
        Range.require("significant digits", digits, 1, 17, "");
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(number)
                        .round(new MathContext(digits, java.math.RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = rounded.stripTrailingZeros();
        double size = Math.abs(number);
        if (size >= 1e-4 && size < 1e9) {
            return stripped.toPlainString();
        }
        int exponent = stripped.precision() - stripped.scale() - 1;
        return stripped.movePointLeft(exponent).toPlainString() + "e" + exponent;
    }

    /**
     * The trade's symbol of a unit.
     *
     * @param unit the unit
     * @return the symbol; for a unit that is none of the trade's, the unit library's text
     * @throws NullPointerException if unit is null
     */
    public static String symbol(Unit<?> unit) {
        Objects.requireNonNull(unit, "unit is null");
        Kind.Written written = find(unit);
        return written != null ? written.label() : UnitExpression.print(unit);
    }

    private static String written(double number, Unit<?> unit, int digits) {
        String symbol = symbol(unit);
        String text = number(number, digits);
        boolean tight = symbol.isEmpty() || symbol.equals("\u00b0");
        return tight ? text + symbol : text + " " + symbol;
    }

    /**
     * What rounding can leave of a zero point (273.15, 459.67) when a temperature changes scale.
     */
    private static final double ZERO_POINT_ROUNDING = 1e-11;

    /** No duct has as much, no place with air as little; Pa. */
    private static final double LEAST_AIR_PRESSURE = 10_000;

    private static double converted(Quantity<?> quantity, Unit<?> unit) {
        return Crossing.convert(quantity, unit);
    }

    private static Kind.Written find(Unit<?> unit) {
        for (Kind kind : Kind.all()) {
            for (Kind.Written written : kind.units()) {
                if (written.unit().equals(unit)) {
                    return written;
                }
            }
        }
        return null;
    }
}
