package dev.thinair.reference;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Writes down what a case file may ask for: every quantity in the words it is known by, the inputs
 * that its rule reads, and the units met. The table is read off the evaluator and the shipped
 * cases; a test holds the file to it.
 */
public final class Vocabulary {

    private static final String HEAD =
            """
            # What a case file may ask for

            Written by `dev.thinair.reference.Vocabulary`; do not edit. A quantity is known by the
            words below, whatever their case, punctuation or spelling (vapor or vapour, meter or
            metre). The first wording is the one to use in new files; the others are what sources and
            older files say. Where a wording is set as `an expression`, whatever it matches as a whole
            (in lower case) is understood. Inputs are those that the shipped cases give and the rule
            reads, each with the units met; any unit of the same kind will do, in either system:

            """;

    private Vocabulary() {}

    /**
     * Writes the table.
     *
     * @param args the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            throw new IllegalArgumentException("name the file to write");
        }
        Files.writeString(Path.of(args[0]), markdown(), StandardCharsets.UTF_8);
    }

    /** The table. */
    static String markdown() {
        List<CheckCase> cases = new ArrayList<>();
        CaseReader.SHIPPED.forEach(name -> cases.addAll(CaseReader.shipped(name)));
        Map<String, Consumer<CaseEvaluator>> modules = new LinkedHashMap<>();
        modules.put("Moist air", PsychroCases::register);
        modules.put("Altitude", AltitudeCases::register);
        modules.put("Loads", LoadCases::register);
        modules.put("Ducts", DuctCases::register);
        modules.put("Cycling", CyclingCases::register);
        StringBuilder out = new StringBuilder(HEAD);
        out.append("    ").append(String.join(", ", CaseUnit.known())).append("\n");
        modules.forEach((title, register) -> section(out, title, register, cases));
        return out.toString();
    }

    private static void section(
            StringBuilder out,
            String title,
            Consumer<CaseEvaluator> register,
            List<CheckCase> cases) {
        CaseEvaluator evaluator = CaseEvaluator.with(register);
        out.append("\n## ")
                .append(title)
                .append("\n\n| quantity | also | inputs | result in |\n|---|---|---|---|\n");
        List<String> refused = new ArrayList<>();
        for (CaseEvaluator.Known known : evaluator.rules()) {
            Map<String, Set<String>> inputs = new TreeMap<>();
            Set<String> units = new TreeSet<>();
            String reason = "";
            for (CheckCase checked : cases) {
                if (matches(known, checked)) {
                    CaseOutcome outcome = evaluator.evaluate(checked);
                    if (outcome.remark().startsWith("not offered")) {
                        reason = outcome.remark();
                        continue;
                    }
                    units.add(checked.unit());
                    CaseInputs given = new CaseInputs(checked.inputs());
                    evaluator
                            .read(checked)
                            .forEach(
                                    name ->
                                            inputs.computeIfAbsent(name, n -> new LinkedHashSet<>())
                                                    .add(unit(given, name)));
                }
            }
            boolean family = known.rule() == null;
            String first = cell(known.wordings().get(0));
            if (!reason.isEmpty() && units.isEmpty()) {
                refused.add(
                        "- "
                                + cell(String.join("; ", known.wordings()))
                                + ": "
                                + cell(reason.replace("not offered: ", "")));
                continue;
            }
            out.append("| ")
                    .append(
                            family
                                    ? "`" + known.wordings().get(0).replace("|", "\\|") + "`"
                                    : first)
                    .append(" | ")
                    .append(
                            cell(
                                    String.join(
                                            "; ",
                                            known.wordings().subList(1, known.wordings().size()))))
                    .append(" | ")
                    .append(cell(inputs(inputs)))
                    .append(" | ")
                    .append(cell(String.join(", ", units)))
                    .append(" |\n");
        }
        if (!refused.isEmpty()) {
            out.append("\nKnown, but not offered:\n\n")
                    .append(String.join("\n", refused))
                    .append("\n");
        }
    }

    private static boolean matches(CaseEvaluator.Known known, CheckCase checked) {
        String asked = CaseEvaluator.normal(checked.quantity());
        return known.rule() == null
                ? Pattern.matches(known.wordings().get(0), asked)
                : known.wordings().stream().anyMatch(w -> CaseEvaluator.normal(w).equals(asked));
    }

    private static String unit(CaseInputs given, String name) {
        try {
            given.number(name);
            return given.unit(name);
        } catch (IllegalArgumentException notANumber) {
            return "text";
        }
    }

    private static String inputs(Map<String, Set<String>> inputs) {
        // A remark or a list of another row is no name; a hundred names of one house say nothing.
        List<String> names = new ArrayList<>();
        inputs.forEach(
                (name, units) -> {
                    if (name.length() < 40) {
                        String shown =
                                units.stream().anyMatch(u -> u.length() > 20)
                                        ? "text"
                                        : String.join(" or ", units).strip();
                        names.add(shown.isEmpty() ? name : name + " (" + shown + ")");
                    }
                });
        return names.size() <= 24
                ? String.join("; ", names)
                : String.join("; ", names.subList(0, 24)) + "; ... (" + names.size() + " in all)";
    }

    /** Text that Markdown must not read as markup. */
    static String cell(String text) {
        return text.replace("|", "\\|")
                .replace("*", "\\*")
                .replace("_", "\\_")
                .replace("<", "&lt;");
    }
}
