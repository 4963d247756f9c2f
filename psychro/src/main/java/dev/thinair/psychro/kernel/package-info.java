/** Pure static functions in SI doubles underneath {@code dev.thinair.psychro}. */
package dev.thinair.psychro.kernel;
