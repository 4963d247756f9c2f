/** The validation report: what was held against what, and how well it stood. */
package dev.thinair.reference.report;
