/**
 * Textbook equations solved with general-purpose tools, so that the library can be held against
 * numbers that nobody typed in. Nothing here calls the library.
 */
package dev.thinair.reference.independent;
