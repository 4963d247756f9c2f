/** Pure static functions in SI doubles underneath {@code dev.thinair.cycling}. */
package dev.thinair.cycling.kernel;
