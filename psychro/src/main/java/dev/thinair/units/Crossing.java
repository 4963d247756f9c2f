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
 * that makes a new unit per call would otherwise grow it without end.
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
        Unit<?> unit = quantity.getUnit();
        double value = quantity.getValue().doubleValue();
        double si = value;
        if (unit != base) {
            for (Affine a : known) {
                if (a.unit == unit) {
                    return checked(a.factor * value + a.offset, value, unit, name);
                }
            }
            si = unknown(value, unit, name);
        }
        return checked(si, value, unit, name);
    }

    /** NaN and infinity survive the affine step, so one check after it is enough. */
    private double checked(double si, double value, Unit<?> unit, String name) {
        if (!(Math.abs(si) <= Double.MAX_VALUE)) {
            throw notFinite(value, unit, name);
        }
        return si;
    }

    private IllegalArgumentException notFinite(double value, Unit<?> unit, String name) {
        return new IllegalArgumentException(
                name + " is " + value + " " + unit + ", but must be a finite number");
    }

    private double unknown(double value, Unit<?> unit, String name) {
        UnitConverter converter = converter(unit, name);
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

    private UnitConverter converter(Unit<?> unit, String name) {
        boolean difference = base == Units.KELVIN_DIFFERENCE;
        boolean temperature = base == Units.KELVIN;
        if (!unit.getDimension().equals(base.getDimension())
                || isAngle(unit) != isAngle(base)
                || (temperature && unit.getSystemUnit().equals(Units.KELVIN_DIFFERENCE))) {
            throw wrong(unit, name);
        }
        try {
            UnitConverter converter = unit.getConverterToAny(base);
            if (difference && converter.convert(0.0) != 0.0) {
                throw wrong(unit, name);
            }
            return converter;
        } catch (IncommensurableException | RuntimeException e) {
            if (e instanceof IllegalArgumentException own) {
                throw own;
            }
            throw wrong(unit, name);
        }
    }

    /** Radians are the number one to the unit library; here 20 degrees are no humidity. */
    private static boolean isAngle(Unit<?> unit) {
        return unit.getSystemUnit().equals(Units.RADIAN);
    }

    private IllegalArgumentException wrong(Unit<?> unit, String name) {
        return new IllegalArgumentException(
                name + " has unit " + unit + ", but must be " + kind + " (SI unit " + base + ")");
    }

    private static Affine affine(Unit<?> unit, UnitConverter converter) {
        BigDecimal offset = decimal(converter.convert(BigDecimal.ZERO));
        BigDecimal high = decimal(converter.convert(PROBE));
        BigDecimal low = decimal(converter.convert(PROBE.negate()));
        double factor =
                high.subtract(low).divide(PROBE.add(PROBE), MathContext.DECIMAL128).doubleValue();
        double middle = high.add(low).doubleValue() / 2.0;
        boolean straight =
                Math.abs(middle - offset.doubleValue())
                        <= 1e-12 * Math.max(Math.abs(factor), Math.abs(middle));
        return straight && factor != 0.0 ? new Affine(unit, factor, offset.doubleValue()) : null;
    }

    private static BigDecimal decimal(Number number) {
        return number instanceof BigDecimal exact ? exact : new BigDecimal(number.toString());
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
