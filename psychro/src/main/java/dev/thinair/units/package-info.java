/** Quantities and units of the trade, and the crossing between them and SI doubles. */
package dev.thinair.units;
