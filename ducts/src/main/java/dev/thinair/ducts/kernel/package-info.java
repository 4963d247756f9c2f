/** Pure static functions in SI doubles underneath {@code dev.thinair.ducts}. */
package dev.thinair.ducts.kernel;
