/** Shown work: the steps behind a result, with formula, numbers and source. */
package dev.thinair.working;
