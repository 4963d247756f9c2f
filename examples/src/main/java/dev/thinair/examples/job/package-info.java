/** The job file: its schema, its strict reader, and the typed models built from it. */
package dev.thinair.examples.job;
