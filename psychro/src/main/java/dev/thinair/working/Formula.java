package dev.thinair.working;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A formula as text that can also be set as MathML and evaluated, so that what a reader is shown is
 * what is computed.
 *
 * <p>The text is {@code symbol = expression}. An expression has numbers, symbols, {@code + - * /
 * ^}, brackets and the functions {@code sqrt exp ln log10 abs sin cos tan atan min max}. A blank
 * between factors multiplies; {@code /} divides all that stands before it in its product by the one
 * factor after it, so {@code a b / (c d)} is a fraction with two factors above and two below.
 * {@code ^} binds tightest and from the right. A symbol is a letter, then letters and digits, with
 * subscripts after {@code _}: {@code p_ws}, {@code C_s}; names of Greek letters are set as those
 * letters.
 *
 * <p>{@link #words} holds what is no expression, such as a root search. Immutable.
 */
public final class Formula {

    private static final Set<String> FUNCTIONS =
            Set.of("sqrt", "exp", "ln", "log10", "abs", "sin", "cos", "tan", "atan", "min", "max");

    private static final Map<String, String> GREEK =
            Map.ofEntries(
                    Map.entry("alpha", "\u03b1"),
                    Map.entry("beta", "\u03b2"),
                    Map.entry("gamma", "\u03b3"),
                    Map.entry("delta", "\u03b4"),
                    Map.entry("epsilon", "\u03b5"),
                    Map.entry("eta", "\u03b7"),
                    Map.entry("theta", "\u03b8"),
                    Map.entry("lambda", "\u03bb"),
                    Map.entry("mu", "\u03bc"),
                    Map.entry("nu", "\u03bd"),
                    Map.entry("xi", "\u03be"),
                    Map.entry("pi", "\u03c0"),
                    Map.entry("rho", "\u03c1"),
                    Map.entry("sigma", "\u03c3"),
                    Map.entry("tau", "\u03c4"),
                    Map.entry("phi", "\u03c6"),
                    Map.entry("psi", "\u03c8"),
                    Map.entry("omega", "\u03c9"),
                    Map.entry("Delta", "\u0394"),
                    Map.entry("Sigma", "\u03a3"),
                    Map.entry("Phi", "\u03a6"),
                    Map.entry("Omega", "\u03a9"));

    private sealed interface Node permits Num, Sym, Unary, Binary, Call {}

    private record Num(String text) implements Node {}

    private record Sym(String name) implements Node {}

    private record Unary(Node inner) implements Node {}

    private record Binary(char operator, Node left, Node right) implements Node {}

    private record Call(String function, List<Node> arguments) implements Node {}

    private final String text;
    private final String symbol;
    private final Node expression;

    private Formula(String text, String symbol, Node expression) {
        this.text = text;
        this.symbol = symbol;
        this.expression = expression;
    }

    /**
     * Reads a formula.
     *
     * @param text {@code symbol = expression}
     * @return the formula
     * @throws NullPointerException if text is null
     * @throws IllegalArgumentException if the text does not follow the grammar; the message quotes
     *     it and says where
     */
    public static Formula of(String text) {
        Objects.requireNonNull(text, "formula is null");
        Reader reader = new Reader(text);
        String symbol = reader.symbol();
        reader.expect('=');
        Node expression = reader.sum();
        reader.end();
        return new Formula(text, symbol, expression);
    }

    /**
     * A statement in words, for what no expression can say.
     *
     * @param text the statement
     * @return a formula that is set as text and cannot be evaluated
     * @throws NullPointerException if text is null
     */
    public static Formula words(String text) {
        return new Formula(Objects.requireNonNull(text, "formula is null"), "", null);
    }

    /**
     * The plain text.
     *
     * @return the text that the formula was made of
     */
    public String text() {
        return text;
    }

    /**
     * Whether the formula is an expression and not words.
     *
     * @return true if it can be evaluated
     */
    public boolean isExpression() {
        return expression != null;
    }

    /**
     * The symbols on the right-hand side, in order of appearance.
     *
     * @return the names; empty for words
     */
    public Set<String> symbols() {
        Set<String> names = new LinkedHashSet<>();
        if (expression != null) {
            collect(expression, names);
        }
        return names;
    }

    private static void collect(Node node, Set<String> names) {
        if (node instanceof Sym sym) {
            names.add(sym.name);
        } else if (node instanceof Unary unary) {
            collect(unary.inner, names);
        } else if (node instanceof Binary binary) {
            collect(binary.left, names);
            collect(binary.right, names);
        } else if (node instanceof Call call) {
            call.arguments.forEach(argument -> collect(argument, names));
        }
    }

    /**
     * The right-hand side's value.
     *
     * @param values a number for every symbol in {@link #symbols}; {@code pi} need not be given
     * @return the value
     * @throws IllegalStateException if this is words
     * @throws IllegalArgumentException if a symbol has no number
     */
    public double evaluate(Map<String, Double> values) {
        if (expression == null) {
            throw new IllegalStateException("\"" + text + "\" is no expression");
        }
        return value(expression, values);
    }

    private double value(Node node, Map<String, Double> values) {
        if (node instanceof Num num) {
            return Double.parseDouble(num.text);
        }
        if (node instanceof Sym sym) {
            Double given = values.get(sym.name);
            if (given != null) {
                return given;
            }
            if (sym.name.equals("pi")) {
                return Math.PI;
            }
            throw new IllegalArgumentException(
                    "symbol " + sym.name + " of \"" + text + "\" has no number");
        }
        if (node instanceof Unary unary) {
            return -value(unary.inner, values);
        }
        if (node instanceof Binary binary) {
            double left = value(binary.left, values);
            double right = value(binary.right, values);
            return switch (binary.operator) {
                case '+' -> left + right;
                case '-' -> left - right;
                case '*' -> left * right;
                case '/' -> left / right;
                default -> Math.pow(left, right);
            };
        }
        Call call = (Call) node;
        double first = value(call.arguments.get(0), values);
        return switch (call.function) {
            case "sqrt" -> Math.sqrt(first);
            case "exp" -> Math.exp(first);
            case "ln" -> Math.log(first);
            case "log10" -> Math.log10(first);
            case "abs" -> Math.abs(first);
            case "sin" -> Math.sin(first);
            case "cos" -> Math.cos(first);
            case "tan" -> Math.tan(first);
            case "atan" -> Math.atan(first);
            case "min" -> Math.min(first, value(call.arguments.get(1), values));
            default -> Math.max(first, value(call.arguments.get(1), values));
        };
    }

    /**
     * The formula as a presentation MathML element.
     *
     * @return one {@code math} element, without a line break
     */
    public String mathMl() {
        String head = "<math xmlns=\"http://www.w3.org/1998/Math/MathML\">";
        if (expression == null) {
            return head + "<mtext>" + Working.escape(text) + "</mtext></math>";
        }
        return head
                + "<mrow>"
                + symbolMl(symbol)
                + "<mo>=</mo>"
                + ml(expression, 0)
                + "</mrow></math>";
    }

    /** Sets a node; brackets it if its own binding is weaker than asked for. */
    private static String ml(Node node, int binding) {
        if (node instanceof Num num) {
            return "<mn>" + num.text + "</mn>";
        }
        if (node instanceof Sym sym) {
            return symbolMl(sym.name);
        }
        if (node instanceof Unary unary) {
            return bracket("<mo>-</mo>" + ml(unary.inner, 2), binding > 1);
        }
        if (node instanceof Binary binary) {
            return switch (binary.operator) {
                case '+', '-' ->
                        bracket(
                                ml(binary.left, 1)
                                        + "<mo>"
                                        + binary.operator
                                        + "</mo>"
                                        + ml(binary.right, 2),
                                binding > 1);
                case '*' ->
                        bracket(
                                ml(binary.left, 2) + times(binary) + ml(binary.right, 2),
                                binding > 2);
                case '/' ->
                        "<mfrac><mrow>"
                                + ml(binary.left, 0)
                                + "</mrow><mrow>"
                                + ml(binary.right, 0)
                                + "</mrow></mfrac>";
                default ->
                        "<msup><mrow>"
                                + ml(binary.left, 3)
                                + "</mrow><mrow>"
                                + ml(binary.right, 0)
                                + "</mrow></msup>";
            };
        }
        Call call = (Call) node;
        if (call.function.equals("sqrt")) {
            return "<msqrt>" + ml(call.arguments.get(0), 0) + "</msqrt>";
        }
        StringBuilder inner = new StringBuilder();
        for (Node argument : call.arguments) {
            inner.append(inner.isEmpty() ? "" : "<mo>,</mo>").append(ml(argument, 0));
        }
        return "<mi>" + call.function + "</mi>" + bracket(inner.toString(), true);
    }

    /** Two numbers side by side would read as one. */
    private static String times(Binary product) {
        Node right = product.right;
        while (right instanceof Binary binary && binary.operator != '+' && binary.operator != '-') {
            right = binary.left;
        }
        return right instanceof Num ? "<mo>\u00b7</mo>" : "<mo>\u2062</mo>";
    }

    private static String bracket(String inner, boolean needed) {
        return "<mrow>" + (needed ? "<mo>(</mo>" + inner + "<mo>)</mo>" : inner) + "</mrow>";
    }

    private static String symbolMl(String name) {
        String stem = "<mi>" + Working.escape(stem(name)) + "</mi>";
        String sub = subscript(name);
        return sub.isEmpty()
                ? stem
                : "<msub>" + stem + "<mi>" + Working.escape(sub) + "</mi></msub>";
    }

    /** A symbol as it stands in running HTML. */
    static String symbolHtml(String name) {
        String stem = "<var>" + Working.escape(stem(name)) + "</var>";
        String sub = subscript(name);
        return sub.isEmpty() ? stem : stem + "<sub>" + Working.escape(sub) + "</sub>";
    }

    /** Where the subscript begins: at the first bar, or at a number after one letter. */
    private static int bar(String name) {
        return name.matches("[A-Za-z]\\d+") ? 1 : name.indexOf('_');
    }

    private static String stem(String name) {
        int bar = bar(name);
        String stem = bar < 0 ? name : name.substring(0, bar);
        return GREEK.getOrDefault(stem, stem);
    }

    private static String subscript(String name) {
        int bar = bar(name);
        if (bar < 0) {
            return "";
        }
        String sub = name.substring(name.charAt(bar) == '_' ? bar + 1 : bar).replace('_', ',');
        return GREEK.getOrDefault(sub, sub);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Formula that
                && text.equals(that.text)
                && (expression == null) == (that.expression == null);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }

    /** Recursive descent over the text. */
    private static final class Reader {

        private final String text;
        private int at;

        Reader(String text) {
            this.text = text;
        }

        private void blanks() {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
        }

        private char peek() {
            blanks();
            return at < text.length() ? text.charAt(at) : '\0';
        }

        private IllegalArgumentException wrong(String expected) {
            return new IllegalArgumentException(
                    "formula \"" + text + "\": " + expected + " expected at position " + at);
        }

        void expect(char c) {
            if (peek() != c) {
                throw wrong("'" + c + "'");
            }
            at++;
        }

        void end() {
            if (peek() != '\0') {
                throw wrong("the end");
            }
        }

        String symbol() {
            if (!Character.isLetter(peek())) {
                throw wrong("a symbol");
            }
            int start = at;
            while (at < text.length()
                    && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
                at++;
            }
            return text.substring(start, at);
        }

        Node sum() {
            Node left = product();
            while (peek() == '+' || peek() == '-') {
                char operator = text.charAt(at++);
                left = new Binary(operator, left, product());
            }
            return left;
        }

        private Node product() {
            if (peek() == '-') {
                at++;
                return new Unary(product());
            }
            Node left = power();
            while (true) {
                char next = peek();
                if (next == '*' || next == '/') {
                    at++;
                    left = new Binary(next, left, power());
                } else if (next == '(' || next == '.' || Character.isLetterOrDigit(next)) {
                    left = new Binary('*', left, power());
                } else {
                    return left;
                }
            }
        }

        private Node power() {
            Node base = atom();
            if (peek() != '^') {
                return base;
            }
            at++;
            if (peek() == '-') {
                at++;
                return new Binary('^', base, new Unary(power()));
            }
            return new Binary('^', base, power());
        }

        private Node atom() {
            char next = peek();
            if (next == '(') {
                at++;
                Node inner = sum();
                expect(')');
                return inner;
            }
            if (Character.isDigit(next) || next == '.') {
                return new Num(number());
            }
            String name = symbol();
            if (!FUNCTIONS.contains(name)) {
                return new Sym(name);
            }
            expect('(');
            List<Node> arguments = new ArrayList<>();
            arguments.add(sum());
            while (peek() == ',') {
                at++;
                arguments.add(sum());
            }
            expect(')');
            int wanted = name.equals("min") || name.equals("max") ? 2 : 1;
            if (arguments.size() != wanted) {
                throw wrong(wanted + " argument(s) of " + name);
            }
            return new Call(name, List.copyOf(arguments));
        }

        private String number() {
            int start = at;
            while (at < text.length()
                    && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
                at++;
            }
            if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
                int exponent = at + 1;
                if (exponent < text.length() && "+-".indexOf(text.charAt(exponent)) >= 0) {
                    exponent++;
                }
                if (exponent < text.length() && Character.isDigit(text.charAt(exponent))) {
                    at = exponent;
                    while (at < text.length() && Character.isDigit(text.charAt(at))) {
                        at++;
                    }
                }
            }
            String number = text.substring(start, at);
            try {
                Double.parseDouble(number);
            } catch (NumberFormatException e) {
                throw wrong("a number");
            }
            return number;
        }
    }
}
