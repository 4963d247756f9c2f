/**
 * Shown work: the steps behind a result, with formula, numbers, unit and source.
 *
 * <p>A {@link dev.thinair.working.Working} is built on request by the class whose result it
 * explains, with the same kernel functions, and costs nothing when not asked. Its formulas ({@link
 * dev.thinair.working.Formula}) are one text for three uses: printed, set as MathML, and evaluated
 * with the numbers shown, so that a test can hold each line to what it says. Renders as plain text,
 * Markdown and HTML.
 */
package dev.thinair.working;
