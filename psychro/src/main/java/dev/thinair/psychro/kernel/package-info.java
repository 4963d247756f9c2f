/**
 * Pure static functions in SI doubles underneath {@code dev.thinair.psychro}: K, Pa, kg, m3, J,
 * with humidity ratio in kg of vapor per kg of dry air.
 *
 * <p>State functions allocate nothing, loop nowhere that is hot, and are safe from any thread.
 * Functions of a process return small records; root searches that are not on a hot path (coil
 * inverse, fog, the real mixture's wet bulb) may allocate a little. Everything out of its domain is
 * refused with {@link java.lang.IllegalArgumentException}, in the wording of {@link
 * dev.thinair.units.Range}.
 */
package dev.thinair.psychro.kernel;
