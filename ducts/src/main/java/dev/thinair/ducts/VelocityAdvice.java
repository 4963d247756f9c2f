package dev.thinair.ducts;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;

/**
 * A velocity above a published limit.
 *
 * @param where duct, register or filter concerned
 * @param velocity what the air does there
 * @param limit what the source allows
 * @param reason what the limit is for
 * @param source where the limit comes from
 */
public record VelocityAdvice(
        String where,
        Quantity<Speed> velocity,
        Quantity<Speed> limit,
        String reason,
        String source) {

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %.0f ft/min, above the %.0f ft/min of %s (%s)",
                where,
                velocity.getValue().doubleValue() / 0.00508,
                limit.getValue().doubleValue() / 0.00508,
                reason,
                source);
    }
}
