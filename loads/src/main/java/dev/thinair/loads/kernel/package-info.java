/** Pure static functions in SI doubles underneath {@code dev.thinair.loads}. */
package dev.thinair.loads.kernel;
