package dev.thinair.units;

import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * One quantity type's way into its SI unit: affine coefficients per unit, found by identity.
 *
 * <p>The array is replaced and never written in place, so readers need no lock; a lost race costs
 * one more computation. It is bounded because equal units need not be the same instance: a caller
 * that makes a new unit per call would otherwise grow it without end. Coefficients are computed the
 * same way whether they are kept or not, so that results do not depend on what was asked before.
 */
final class Crossing {

    private static final int LIMIT = 24;

    /** Far apart, so that the slope keeps all its digits beside a large offset. */
    private static final BigDecimal PROBE = BigDecimal.valueOf(1L << 20);

    private record Affine(Unit<?> unit, double factor, double offset) {}

    private final Unit<?> base;
    private final String kind;
    private volatile Affine[] known = {};

    Crossing(Unit<?> base, String kind) {
        this.base = base;
        this.kind = kind;
    }

    double toSi(Quantity<?> quantity, String name) {
        if (quantity == null) {
            throw new NullPointerException(name + " is null, but must be " + kind);
        }
        double value =
                quantity instanceof DoubleQuantity<?> own ? own.number() : foreign(quantity, name);
        Unit<?> unit = quantity.getUnit();
        double si = unit == base ? value : converted(value, unit, name);
        // NaN and infinity survive the affine step, so one check after it is enough.
        if (!(Math.abs(si) <= Double.MAX_VALUE)) {
            throw notFinite(value, unit, name);
        }
        return si;
    }

    /** The unit library marks a temperature difference by a scale, which our types need not. */
    private double foreign(Quantity<?> quantity, String name) {
        if (base == Units.KELVIN && quantity.getScale() == Quantity.Scale.RELATIVE) {
            throw new IllegalArgumentException(
                    name
                            + " is "
                            + QuantityText.format(quantity)
                            + " on the relative scale, a difference, but must be a temperature");
        }
        return quantity.getValue().doubleValue();
    }

    private double converted(double value, Unit<?> unit, String name) {
        for (Affine a : known) {
            if (a.unit == unit) {
                return a.factor * value + a.offset;
            }
        }
        return unknown(value, unit, name);
    }

    private static IllegalArgumentException notFinite(double value, Unit<?> unit, String name) {
        return new IllegalArgumentException(
                name
                        + " is "
                        + (value + " " + QuantityText.symbol(unit)).strip()
                        + ", but must be a finite number");
    }

    private double unknown(double value, Unit<?> unit, String name) {
        if (!measures(unit, base)) {
            throw new IllegalArgumentException(
                    name
                            + " has unit \""
                            + QuantityText.symbol(unit)
                            + "\", but must be "
                            + kind
                            + " (SI unit "
                            + (base == Units.RATIO ? "1" : QuantityText.symbol(base))
                            + ")");
        }
        UnitConverter converter = converter(unit, base);
        Affine affine = affine(unit, converter);
        if (affine == null) {
            if (!Double.isFinite(value)) {
                throw notFinite(value, unit, name);
            }
            return converter.convert(value);
        }
        remember(affine);
        return affine.factor * value + affine.offset;
    }

    /**
     * Whether a unit measures what the SI unit measures.
     *
     * <p>Dimension alone cannot tell a temperature from a difference, an angle from a ratio or a
     * ratio from a humidity ratio. Each has a system unit of its own here. Units that others made
     * from kelvin (without an offset) or from the number one are accepted for a difference and a
     * humidity ratio, since the unit library offers nothing better to make them from.
     */
    static boolean measures(Unit<?> unit, Unit<?> si) {
        if (!unit.getDimension().equals(si.getDimension())) {
            return false;
        }
        Unit<?> system = unit.getSystemUnit();
        if (system.equals(si)) {
            return true;
        }
        if (si == Units.KELVIN_DIFFERENCE) {
            return system.equals(Units.KELVIN) && converter(unit, si).isLinear();
        }
        if (si == Units.KILOGRAM_PER_KILOGRAM) {
            return !system.equals(Units.RADIAN);
        }
        return !system.equals(Units.KELVIN_DIFFERENCE)
                && !system.equals(Units.KILOGRAM_PER_KILOGRAM)
                && !system.equals(Units.RADIAN)
                && si != Units.RADIAN;
    }

    /** One quantity's number in another unit, through the same coefficients. */
    static double convert(Quantity<?> quantity, Unit<?> unit) {
        double value = quantity.getValue().doubleValue();
        if (unit.equals(quantity.getUnit())) {
            return value;
        }
        UnitConverter converter = converter(quantity.getUnit(), unit);
        Affine affine = affine(unit, converter);
        return affine == null ? converter.convert(value) : affine.factor * value + affine.offset;
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (IncommensurableException e) {
            throw new IllegalArgumentException(
                    "unit \""
                            + QuantityText.symbol(from)
                            + "\" cannot be turned into \""
                            + QuantityText.symbol(to)
                            + "\"",
                    e);
        }
    }

    private static Affine affine(Unit<?> unit, UnitConverter converter) {
        BigDecimal offset = decimal(converter.convert(BigDecimal.ZERO));
        BigDecimal high = decimal(converter.convert(PROBE));
        BigDecimal low = decimal(converter.convert(PROBE.negate()));
        double factor =
                high.subtract(low).divide(PROBE.add(PROBE), MathContext.DECIMAL128).doubleValue();
        double bend = high.add(low).subtract(offset).subtract(offset).doubleValue();
        boolean straight = Math.abs(bend) <= 1e-12 * Math.abs(high.subtract(low).doubleValue());
        return straight && factor != 0.0 ? new Affine(unit, factor, offset.doubleValue()) : null;
    }

    /** The library answers in whatever class holds the number exactly. */
    private static BigDecimal decimal(Number number) {
        if (number instanceof BigDecimal exact) {
            return exact;
        }
        if (number instanceof tech.units.indriya.function.RationalNumber ratio) {
            return new BigDecimal(ratio.getDividend())
                    .divide(new BigDecimal(ratio.getDivisor()), MathContext.DECIMAL128);
        }
        return new BigDecimal(number.toString());
    }

    private synchronized void remember(Affine affine) {
        Affine[] old = known;
        if (old.length >= LIMIT) {
            return;
        }
        Affine[] grown = new Affine[old.length + 1];
        System.arraycopy(old, 0, grown, 0, old.length);
        grown[old.length] = affine;
        known = grown;
    }
}
