/**
 * Checks against the outside world: cases read from CSV files, evaluated by the library, and
 * compared with what their source says.
 */
package dev.thinair.reference;
