package dev.thinair.units;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.AbstractQuantity;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;

/**
 * A quantity that keeps its number as a primitive double.
 *
 * <p>The unit library's own quantity narrows and boxes its number on creation, which costs more
 * than many of the formulas here. This one is made by storing two fields, prints with the trade's
 * symbols, and equals the library's quantity of the same number and unit; arithmetic is handed to
 * the library.
 *
 * <p>Temperatures cannot be added or subtracted: the library takes 35 &deg;C - 24 &deg;C for
 * -262.15 &deg;C, which nobody means. {@link Units#difference} and {@link Units#plus} say what is
 * meant.
 */
final class DoubleQuantity<Q extends Quantity<Q>> extends AbstractQuantity<Q> {

    private static final long serialVersionUID = 1L;

    private final double number;

    DoubleQuantity(double number, Unit<Q> unit) {
        super(unit);
        // The library knows no negative zero; adding zero removes it, so that equals agrees.
        this.number = number + 0.0;
    }

    double number() {
        return number;
    }

    /** The library's class for the same number, which {@code equals} of its quantities needs. */
    @Override
    public Number getValue() {
        int whole = (int) number;
        if (whole == number) {
            return whole;
        }
        if (number != Math.rint(number)) {
            return number;
        }
        // 2^63 itself is no long, though the cast of it saturates to one that looks equal.
        return Math.abs(number) < 0x1p63
                ? (Number) (long) number
                : new BigDecimal(number).toBigIntegerExact();
    }

    private ComparableQuantity<Q> library() {
        return Quantities.getQuantity(number, getUnit());
    }

    private void refuseTemperature(String what) {
        if (Units.KELVIN.equals(getUnit().getSystemUnit())) {
            throw new UnsupportedOperationException(
                    "temperatures cannot be "
                            + what
                            + "; use Units.difference(warmer, cooler) or"
                            + " Units.plus(temperature, difference)");
        }
    }

    @Override
    public ComparableQuantity<Q> add(Quantity<Q> augend) {
        refuseTemperature("added");
        return library().add(augend);
    }

    @Override
    public ComparableQuantity<Q> subtract(Quantity<Q> subtrahend) {
        refuseTemperature("subtracted");
        return library().subtract(subtrahend);
    }

    @Override
    public ComparableQuantity<?> divide(Quantity<?> divisor) {
        return library().divide(divisor);
    }

    @Override
    public ComparableQuantity<Q> divide(Number divisor) {
        return library().divide(divisor);
    }

    @Override
    public ComparableQuantity<?> multiply(Quantity<?> multiplicand) {
        return library().multiply(multiplicand);
    }

    @Override
    public ComparableQuantity<Q> multiply(Number multiplicand) {
        return library().multiply(multiplicand);
    }

    @Override
    public ComparableQuantity<?> inverse() {
        return library().inverse();
    }

    @Override
    public Quantity<Q> negate() {
        return library().negate();
    }

    @Override
    public String toString() {
        return QuantityText.format(this);
    }
}
