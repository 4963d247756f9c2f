/** Parametric studies: sweep, table, CSV, picture. */
package dev.thinair.examples.study;
