package dev.thinair.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.exception.MathIllegalArgumentException;

/**
 * Holds the library against check cases. A quantity is known by its words; each known quantity has
 * one rule that computes it from the case's inputs through the library.
 */
public final class CaseEvaluator {

    /** Computes one quantity of one case. */
    @FunctionalInterface
    public interface Rule extends Function<CaseInputs, Answer> {}

    /** Thrown by a rule whose quantity is known, but not with these inputs. */
    static final class NotOffered extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotOffered(String why) {
            super(why, null, false, false);
        }
    }

    /** Computes one of a family of quantities whose wording holds a number or a name. */
    @FunctionalInterface
    public interface FamilyRule extends BiFunction<CaseInputs, Matcher, Answer> {}

    private record Family(Pattern wording, FamilyRule rule) {}

    /**
     * A rule and the wordings that lead to it.
     *
     * @param rule computes the quantity; null for a family
     * @param wordings as they were registered; the expression for a family
     */
    record Known(Rule rule, List<String> wordings) {}

    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final List<Known> known = new ArrayList<>();
    private final List<Family> families = new ArrayList<>();

    private CaseEvaluator() {}

    /** An evaluator with every quantity the library knows. */
    public static CaseEvaluator standard() {
        CaseEvaluator evaluator = new CaseEvaluator();
        PsychroCases.register(evaluator);
        AltitudeCases.register(evaluator);
        LoadCases.register(evaluator);
        DuctCases.register(evaluator);
        CyclingCases.register(evaluator);
        return evaluator;
    }

    /**
     * Adds a quantity under all the wordings it goes by.
     *
     * @throws IllegalStateException if a wording is taken
     */
    void on(Rule rule, String... wordings) {
        known.add(new Known(rule, List.of(wordings)));
        for (String wording : wordings) {
            if (rules.put(normal(wording), rule) != null) {
                throw new IllegalStateException("two rules for \"" + wording + "\"");
            }
        }
    }

    /**
     * Adds a family of quantities: all wordings that a regular expression matches whole. It is
     * applied to the wording in lower case as {@link #normal} leaves it; exact wordings go first.
     */
    void onEach(String wording, FamilyRule rule) {
        known.add(new Known(null, List.of(wording)));
        families.add(new Family(Pattern.compile(wording), rule));
    }

    /** The rules in the order they were registered. */
    List<Known> rules() {
        return Collections.unmodifiableList(known);
    }

    /** An evaluator with some quantities only. */
    static CaseEvaluator with(Consumer<CaseEvaluator> registrar) {
        CaseEvaluator evaluator = new CaseEvaluator();
        registrar.accept(evaluator);
        return evaluator;
    }

    /** The inputs that a rule reads of a case, as far as it comes; none if no rule is known. */
    Set<String> read(CheckCase checked) {
        CaseInputs inputs = new CaseInputs(checked.inputs());
        Rule rule = rule(normal(checked.quantity()));
        if (rule != null) {
            try {
                rule.apply(inputs);
            } catch (RuntimeException asFarAsItCame) {
                return inputs.read();
            }
        }
        return inputs.read();
    }

    private Rule rule(String wording) {
        Rule exact = rules.get(wording);
        if (exact != null) {
            return exact;
        }
        for (Family family : families) {
            Matcher matcher = family.wording().matcher(wording);
            if (matcher.matches()) {
                return in -> family.rule().apply(in, matcher);
            }
        }
        return null;
    }

    /** Names quantities that the library does not offer, with the reason. */
    void notOffered(String why, String... wordings) {
        on(
                in -> {
                    throw new NotOffered("not offered: " + why);
                },
                wordings);
    }

    /** The wordings known in their normal form, and the expressions of families, sorted. */
    public Set<String> known() {
        Set<String> all = new TreeSet<>(rules.keySet());
        families.forEach(family -> all.add(family.wording().pattern()));
        return all;
    }

    /** Evaluates one case; never throws for what a case may hold. */
    public CaseOutcome evaluate(CheckCase checked) {
        Rule rule = rule(normal(checked.quantity()));
        if (rule == null) {
            return unknown(checked, "quantity not known; nearest known: " + nearest(checked));
        }
        double allowed;
        try {
            allowed =
                    checked.tolerance().equals("exact")
                            ? 0
                            : Double.parseDouble(checked.tolerance());
            if (!(allowed >= 0)) {
                return unknown(checked, "tolerance \"" + checked.tolerance() + "\" is negative");
            }
        } catch (NumberFormatException e) {
            return unknown(checked, "tolerance \"" + checked.tolerance() + "\" is not a number");
        }
        Answer answer;
        try {
            answer = rule.apply(new CaseInputs(checked.inputs()));
        } catch (NotOffered e) {
            return unknown(checked, e.getMessage());
        } catch (RuntimeException e) {
            if (isMissingInput(e)) {
                return unknown(checked, e.getMessage());
            }
            return new CaseOutcome(
                    checked,
                    CaseOutcome.Verdict.OFF,
                    "no value",
                    Double.NaN,
                    allowed,
                    String.valueOf(e.getMessage()));
        }
        return compare(checked, answer, allowed);
    }

    private static boolean isMissingInput(RuntimeException e) {
        String message = String.valueOf(e.getMessage());
        return !(e instanceof MathIllegalArgumentException)
                && (message.startsWith("input \"") || message.startsWith("unit \""));
    }

    private static CaseOutcome compare(CheckCase checked, Answer answer, double allowed) {
        if (answer instanceof Answer.Text text) {
            boolean same = text.words().equalsIgnoreCase(checked.expected());
            return new CaseOutcome(
                    checked,
                    same ? CaseOutcome.Verdict.OK : CaseOutcome.Verdict.OFF,
                    text.words(),
                    Double.NaN,
                    allowed,
                    "");
        }
        double expected;
        double computed;
        double own = 0;
        try {
            expected = Double.parseDouble(checked.expected());
            if (answer instanceof Answer.Plain plain) {
                computed = plain.number();
            } else if (answer instanceof Answer.Difference difference) {
                computed = CaseUnit.difference(checked.unit()).fromSi(difference.si());
            } else if (answer instanceof Answer.Approximate approximate) {
                computed = CaseUnit.of(checked.unit()).fromSi(approximate.si());
                own = CaseUnit.difference(checked.unit()).fromSi(approximate.modelError());
            } else {
                computed = CaseUnit.of(checked.unit()).fromSi(((Answer.Value) answer).si());
            }
        } catch (NumberFormatException e) {
            return unknown(checked, "expected \"" + checked.expected() + "\" is not a number");
        } catch (IllegalArgumentException e) {
            return unknown(checked, e.getMessage());
        }
        double deviation = computed - expected;
        double slack = allowed == 0 ? rounding(checked, expected) : 1e-12 * allowed;
        boolean inside = Math.abs(deviation) <= allowed + own + slack;
        return new CaseOutcome(
                checked,
                inside ? CaseOutcome.Verdict.OK : CaseOutcome.Verdict.OFF,
                Double.toString(computed),
                deviation,
                allowed + own,
                own == 0 ? "" : "tolerance widened by the model's documented error " + own);
    }

    /** What the value's own rounding and that of its unit's conversion come to: 4 ulp of each. */
    private static double rounding(CheckCase checked, double expected) {
        CaseUnit unit = CaseUnit.of(checked.unit());
        return 4 * Math.max(Math.ulp(expected), Math.ulp(unit.toSi(expected)) / unit.scale());
    }

    private static CaseOutcome unknown(CheckCase checked, String why) {
        return new CaseOutcome(
                checked, CaseOutcome.Verdict.UNKNOWN, "", Double.NaN, Double.NaN, why);
    }

    private String nearest(CheckCase checked) {
        String asked = normal(checked.quantity());
        // Distances first: a comparator would compute each of them many times over.
        Map<String, Integer> distances = new HashMap<>();
        rules.keySet().forEach(name -> distances.put(name, distance(asked, name)));
        List<String> names = new ArrayList<>(rules.keySet());
        names.sort(
                Comparator.<String, Integer>comparing(distances::get)
                        .thenComparing(Comparator.naturalOrder()));
        return String.join("; ", names.subList(0, Math.min(3, names.size())));
    }

    /** Lower case, one spelling, letters and digits only: what two wordings must share. */
    static String normal(String wording) {
        return wording.toLowerCase(Locale.ROOT)
                .replace("vapour", "vapor")
                .replace("metre", "meter")
                .replaceAll("[^a-z0-9<>=+*/^.-]+", " ")
                .strip();
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
