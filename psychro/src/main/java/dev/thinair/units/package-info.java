/**
 * Quantities and units of the trade, and the crossing between them and SI doubles.
 *
 * <p>{@link dev.thinair.units.Units} makes quantities ({@code fahrenheit(95)}, {@code
 * cubicFeetPerMinute(1200)}); {@link dev.thinair.units.Si} turns them into the SI doubles that
 * kernels take, in a few nanoseconds and without allocation for a unit met before; {@link
 * dev.thinair.units.QuantityText} reads and prints them in both unit systems.
 *
 * <p>Quantity types are those of JSR 385 and the interfaces here, one per meaning: a {@link
 * dev.thinair.units.TemperatureDifference} is no temperature, a {@link
 * dev.thinair.units.HumidityRatio} no relative humidity. A quantity of the wrong type does not
 * compile; one that arrives by way of a raw type is refused by the name of the argument.
 *
 * <p>Conversion factors: NIST Special Publication 811 (2008), appendix B.8, held exactly.
 * Everything here is immutable or thread-safe and independent of locale; the unit library's own
 * JVM-wide formats are left as they were.
 */
package dev.thinair.units;
