/** Moist air as state, and processes on air streams, with units. */
package dev.thinair.psychro;
