/** Demonstrations for the class: text, shown work, table and drawing from one computation each. */
package dev.thinair.examples.classroom;
