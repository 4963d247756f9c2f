/** Pure static functions in SI doubles underneath {@code dev.thinair.altitude}. */
package dev.thinair.altitude.kernel;
