/** A review as a document, and its two forms: plain text and one web page with drawings. */
package dev.thinair.examples.report;
