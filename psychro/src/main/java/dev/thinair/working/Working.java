package dev.thinair.working;

import dev.thinair.units.QuantityText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;

/**
 * The steps behind a result: what was given, then for each step its symbol, formula, the numbers
 * put in, the result with its unit, and the source of the formula.
 *
 * <p>A builder refuses a step whose formula uses a symbol that no given value or earlier step has
 * defined, and takes the numbers put in from those, so that a chain cannot show one number and use
 * another. The last step's result is the {@link #result}. Formulas are evaluated in the units in
 * which their symbols are listed ({@link Step#recomputed}).
 *
 * <p>Renders as plain text, Markdown and HTML with MathML; numbers in both unit systems, as given
 * first. Immutable.
 */
public final class Working {

    private static final int DIGITS = 6;

    /**
     * A value that the working starts from.
     *
     * @param symbol its symbol in the formulas
     * @param name what it is
     * @param value the value
     * @param source where it comes from; empty if the user gave it
     */
    public record Given(String symbol, String name, Quantity<?> value, String source) {
        /**
         * Checks that nothing is missing.
         *
         * @param symbol its symbol in the formulas
         * @param name what it is
         * @param value the value
         * @param source where it comes from; empty if the user gave it
         */
        public Given {
            requireText(symbol, "symbol");
            requireText(name, "name of " + symbol);
            Objects.requireNonNull(value, () -> "value of " + name + " is null");
            Objects.requireNonNull(source, () -> "source of " + name + " is null");
        }
    }

    /**
     * A number put into a formula.
     *
     * @param symbol its symbol
     * @param value the value
     */
    public record Input(String symbol, Quantity<?> value) {}

    /**
     * One step.
     *
     * @param symbol symbol of the step's result
     * @param name what the result is
     * @param formula how it is found
     * @param inputs the numbers put in, in order of appearance
     * @param result the result
     * @param source where the formula is published; "by definition" and "derived" are sources too
     */
    public record Step(
            String symbol,
            String name,
            Formula formula,
            List<Input> inputs,
            Quantity<?> result,
            String source) {

        /**
         * The formula evaluated with the numbers put in, each in the unit it is listed with.
         *
         * @return the value that the formula yields; empty if the formula is words
         */
        public OptionalDouble recomputed() {
            if (!formula.isExpression()) {
                return OptionalDouble.empty();
            }
            Map<String, Double> numbers = new LinkedHashMap<>();
            inputs.forEach(i -> numbers.put(i.symbol, i.value.getValue().doubleValue()));
            return OptionalDouble.of(formula.evaluate(numbers));
        }
    }

    private final String title;
    private final List<Given> given;
    private final List<Step> steps;
    private final List<String> notes;

    private Working(Builder builder) {
        this.title = builder.title;
        this.given = List.copyOf(builder.given);
        this.steps = List.copyOf(builder.steps);
        this.notes = List.copyOf(builder.notes);
    }

    /**
     * Starts a working.
     *
     * @param title what is worked out
     * @return a builder
     * @throws IllegalArgumentException if the title is null or blank
     */
    public static Builder titled(String title) {
        return new Builder(requireText(title, "title"));
    }

    /**
     * What is worked out.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * What the working starts from.
     *
     * @return the given values, unmodifiable
     */
    public List<Given> given() {
        return given;
    }

    /**
     * The steps in order.
     *
     * @return at least one step, unmodifiable
     */
    public List<Step> steps() {
        return steps;
    }

    /**
     * Assumptions, limits and cautions.
     *
     * @return the notes, unmodifiable
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * The last step's result.
     *
     * @return the quantity that the working ends with
     */
    public Quantity<?> result() {
        return steps.get(steps.size() - 1).result;
    }

    /**
     * The working as plain text.
     *
     * @return lines separated by {@code \n}
     */
    public String toText() {
        StringBuilder out = new StringBuilder(title).append('\n');
        for (Given g : given) {
            out.append("  ")
                    .append(g.symbol)
                    .append(" = ")
                    .append(shown(g.value))
                    .append("  ")
                    .append(g.name)
                    .append(g.source.isEmpty() ? "" : " [" + g.source + "]")
                    .append('\n');
        }
        int number = 1;
        for (Step s : steps) {
            out.append(number++).append(". ").append(s.name).append('\n');
            out.append("   ").append(s.formula.text()).append('\n');
            if (!s.inputs.isEmpty()) {
                out.append("   with ").append(inputs(s)).append('\n');
            }
            out.append("   ").append(s.symbol).append(" = ").append(shown(s.result)).append('\n');
            out.append("   source: ").append(s.source).append('\n');
        }
        notes.forEach(note -> out.append("Note: ").append(note).append('\n'));
        return out.toString();
    }

    /**
     * The working as Markdown.
     *
     * @return lines separated by {@code \n}
     */
    public String toMarkdown() {
        StringBuilder out = new StringBuilder("### ").append(title).append("\n\n");
        if (!given.isEmpty()) {
            out.append("| symbol | given | value | source |\n|---|---|---|---|\n");
            for (Given g : given) {
                out.append("| `")
                        .append(g.symbol)
                        .append("` | ")
                        .append(cell(g.name))
                        .append(" | ")
                        .append(cell(shown(g.value)))
                        .append(" | ")
                        .append(cell(g.source))
                        .append(" |\n");
            }
            out.append('\n');
        }
        int number = 1;
        for (Step s : steps) {
            out.append(number++).append(". ").append(s.name).append(":  \n");
            out.append("   `").append(s.formula.text()).append("`");
            if (!s.inputs.isEmpty()) {
                out.append(" with ").append(inputs(s));
            }
            out.append("  \n   **`")
                    .append(s.symbol)
                    .append("` = ")
                    .append(shown(s.result))
                    .append("**  \n   Source: ")
                    .append(s.source)
                    .append('\n');
        }
        notes.forEach(note -> out.append("\n> ").append(note).append('\n'));
        return out.toString();
    }

    /**
     * The working as an HTML fragment: one {@code section} element, formulas in MathML.
     *
     * @return lines separated by {@code \n}
     */
    public String toHtml() {
        StringBuilder out = new StringBuilder("<section class=\"working\">\n<h3>");
        out.append(escape(title)).append("</h3>\n");
        if (!given.isEmpty()) {
            out.append("<table>\n<tr><th>symbol</th><th>given</th><th>value</th>");
            out.append("<th>source</th></tr>\n");
            for (Given g : given) {
                out.append("<tr><td>")
                        .append(Formula.symbolHtml(g.symbol))
                        .append("</td><td>")
                        .append(escape(g.name))
                        .append("</td><td>")
                        .append(escape(shown(g.value)))
                        .append("</td><td>")
                        .append(escape(g.source))
                        .append("</td></tr>\n");
            }
            out.append("</table>\n");
        }
        out.append("<ol>\n");
        for (Step s : steps) {
            out.append("<li><p>").append(escape(s.name)).append("</p>\n<p>");
            out.append(s.formula.mathMl()).append("</p>\n");
            if (!s.inputs.isEmpty()) {
                out.append("<p>with ").append(inputsHtml(s)).append("</p>\n");
            }
            out.append("<p><strong>")
                    .append(Formula.symbolHtml(s.symbol))
                    .append(" = ")
                    .append(escape(shown(s.result)))
                    .append("</strong></p>\n<p><small>Source: ")
                    .append(escape(s.source))
                    .append("</small></p></li>\n");
        }
        out.append("</ol>\n");
        notes.forEach(note -> out.append("<p><em>").append(escape(note)).append("</em></p>\n"));
        return out.append("</section>\n").toString();
    }

    private static String inputs(Step step) {
        List<String> parts = new ArrayList<>();
        step.inputs.forEach(
                i -> parts.add(i.symbol + " = " + QuantityText.format(i.value, DIGITS)));
        return String.join(", ", parts);
    }

    private static String inputsHtml(Step step) {
        List<String> parts = new ArrayList<>();
        step.inputs.forEach(
                i ->
                        parts.add(
                                Formula.symbolHtml(i.symbol)
                                        + " = "
                                        + escape(QuantityText.format(i.value, DIGITS))));
        return String.join(", ", parts);
    }

    private static String shown(Quantity<?> value) {
        return QuantityText.formatBoth(value, DIGITS);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String requireText(String text, String what) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException(what + " of a working is missing");
        }
        return text;
    }

    @Override
    public String toString() {
        return toText();
    }

    /** Collects given values and steps in order. Not thread-safe; make one per working. */
    public static final class Builder {

        private final String title;
        private final List<Given> given = new ArrayList<>();
        private final List<Step> steps = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final Map<String, Quantity<?>> known = new LinkedHashMap<>();

        private Builder(String title) {
            this.title = title;
        }

        /**
         * A value that the user gave.
         *
         * @param symbol its symbol
         * @param name what it is
         * @param value the value
         * @return this builder
         * @throws IllegalArgumentException if the symbol is taken or a text is missing
         */
        public Builder given(String symbol, String name, Quantity<?> value) {
            return given(symbol, name, value, "");
        }

        /**
         * A value taken from elsewhere.
         *
         * @param symbol its symbol
         * @param name what it is
         * @param value the value
         * @param source where it is published, or which result it is
         * @return this builder
         * @throws IllegalArgumentException if the symbol is taken or a text is missing
         */
        public Builder given(String symbol, String name, Quantity<?> value, String source) {
            Given added = new Given(symbol, name, value, source);
            define(symbol, value);
            given.add(added);
            return this;
        }

        /**
         * A step by a formula; its left-hand side names the result.
         *
         * @param name what the result is
         * @param formula text for {@link Formula#of}
         * @param result the result, in the unit in which the formula yields it
         * @param source where the formula is published
         * @return this builder
         * @throws IllegalArgumentException if the formula cannot be read, uses an undefined symbol,
         *     or defines a symbol again
         */
        public Builder step(String name, String formula, Quantity<?> result, String source) {
            Formula read = Formula.of(formula);
            String symbol = formula.substring(0, formula.indexOf('=')).strip();
            List<String> symbols = new ArrayList<>(read.symbols());
            symbols.removeIf(s -> s.equals("pi") && !known.containsKey(s));
            return add(symbol, name, read, symbols, result, source);
        }

        /**
         * A step in words, for a root search, a table or a choice.
         *
         * @param symbol symbol of the result
         * @param name what the result is
         * @param how how it is found
         * @param symbols the symbols put in
         * @param result the result
         * @param source where the method is published
         * @return this builder
         * @throws IllegalArgumentException if a symbol put in is undefined, or the result's symbol
         *     is taken
         */
        public Builder stepInWords(
                String symbol,
                String name,
                String how,
                List<String> symbols,
                Quantity<?> result,
                String source) {
            return add(symbol, name, Formula.words(how), symbols, result, source);
        }

        private Builder add(
                String symbol,
                String name,
                Formula formula,
                List<String> symbols,
                Quantity<?> result,
                String source) {
            requireText(symbol, "symbol");
            requireText(name, "name of " + symbol);
            requireText(source, "source of " + symbol);
            Objects.requireNonNull(result, () -> "result of " + name + " is null");
            List<Input> inputs = new ArrayList<>();
            for (String used : symbols) {
                Quantity<?> value = known.get(used);
                if (value == null) {
                    throw new IllegalArgumentException(
                            "\"" + formula + "\" uses " + used + ", which no earlier line defines");
                }
                inputs.add(new Input(used, value));
            }
            define(symbol, result);
            steps.add(new Step(symbol, name, formula, List.copyOf(inputs), result, source));
            return this;
        }

        private void define(String symbol, Quantity<?> value) {
            if (known.putIfAbsent(symbol, value) != null) {
                throw new IllegalArgumentException("symbol " + symbol + " is defined twice");
            }
        }

        /**
         * An assumption, limit or caution, printed after the steps.
         *
         * @param text the note
         * @return this builder
         * @throws IllegalArgumentException if the text is missing
         */
        public Builder note(String text) {
            notes.add(requireText(text, "note"));
            return this;
        }

        /**
         * Appends the given values, steps and notes of another working, whose result this one uses.
         * Given values already defined here with an equal value are kept once.
         *
         * @param other the other working
         * @return this builder
         * @throws IllegalArgumentException if a symbol is defined twice with different values
         */
        public Builder include(Working other) {
            for (Given g : other.given) {
                if (!g.value.equals(known.get(g.symbol))) {
                    given(g.symbol, g.name, g.value, g.source);
                }
            }
            for (Step s : other.steps) {
                define(s.symbol, s.result);
                steps.add(s);
            }
            notes.addAll(other.notes);
            return this;
        }

        /**
         * The finished working.
         *
         * @return an immutable working
         * @throws IllegalStateException if there is no step
         */
        public Working build() {
            if (steps.isEmpty()) {
                throw new IllegalStateException("working \"" + title + "\" has no step");
            }
            return new Working(this);
        }
    }
}
