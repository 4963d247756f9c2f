package dev.thinair.reference.report;

import dev.thinair.reference.CheckCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What the report says, whatever its form. */
final class Report {

    private Report() {}

    /**
     * Writes the report.
     *
     * @param form to write into
     * @param validation the evaluated cases
     * @param drawings the plots, each with its drawing, which may be empty
     * @param undrawn why plots could not be drawn, or empty
     */
    static void write(
            Form form, Validation validation, Map<Plot, String> drawings, String undrawn) {
        Validation.Sum all = Validation.sum(validation.entries());
        form.title(
                "Validation of thinair",
                "Every check of the library against the outside world, evaluated when this page was"
                        + " written. Nothing here is typed in: change the library or a case, and the"
                        + " page changes.");
        form.verdict(
                count(all.cases())
                        + " cases: "
                        + count(all.inside())
                        + " inside their tolerance, "
                        + count(all.outside())
                        + " outside, "
                        + count(all.disputed())
                        + " disputed, "
                        + count(all.unknown())
                        + " not evaluated. The evaluated ones rest on "
                        + count(validation.published().size())
                        + " published sources.",
                all.outside() == 0);
        outside(form, validation);
        modules(form, validation);
        closeness(form, validation);
        sources(form, validation);
        plots(form, drawings, undrawn);
        disputed(form, validation);
        notValidated(form, validation);
        memory(form, validation);
        cases(form, validation);
        form.section("Add your own");
        form.paragraph(
                "Any CSV file with the columns id, quantity, inputs, expected, unit, tolerance,"
                        + " source, provenance is evaluated by the same rules: mvn -q -B -ntp -pl"
                        + " reference-tests -am compile exec:java -Dexec.args=\"your.csv\". To have it"
                        + " as a page like this one, add"
                        + " -Dexec.mainClass=dev.thinair.reference.report.ValidationReport and give a"
                        + " folder before the file.");
    }

    private static void outside(Form form, Validation validation) {
        List<Entry> outside = validation.standing(Entry.Standing.OUTSIDE);
        if (outside.isEmpty()) {
            return;
        }
        form.section("Outside the tolerance");
        form.table("Cases outside their tolerance", CASE_HEAD, rows(outside), false);
    }

    private static void modules(Form form, Validation validation) {
        form.section("By module");
        form.paragraph(
                "Worst is the largest deviation over its tolerance, disputed cases left out; 1 would"
                        + " be just inside. Exact cases admit no difference beyond 4 units in the"
                        + " last place of a double.");
        List<List<String>> rows = new ArrayList<>();
        Validation.group(validation.entries(), Entry::module)
                .forEach((name, entries) -> rows.add(sumRow(List.of(name), entries)));
        form.table(
                "Cases by module",
                List.of(
                        "case file",
                        "cases",
                        "inside",
                        "of them exact",
                        "outside",
                        "disputed",
                        "not evaluated",
                        "worst",
                        "where"),
                rows,
                false);
    }

    private static List<String> sumRow(List<String> names, List<Entry> entries) {
        Validation.Sum sum = Validation.sum(entries);
        List<String> row = new ArrayList<>(names);
        row.add(count(sum.cases()));
        row.add(count(sum.inside()));
        row.add(count(sum.exact()));
        row.add(count(sum.outside()));
        row.add(count(sum.disputed()));
        row.add(count(sum.unknown()));
        row.add(share(sum.worst()));
        row.add(sum.worstId());
        return row;
    }

    /** How much of the tolerances is used: tolerances that are too wide would show here. */
    private static void closeness(Form form, Validation validation) {
        double[] edges = {1e-3, 1e-2, 0.1, 0.25, 0.5, 0.75, 1};
        List<List<String>> rows = new ArrayList<>();
        Validation.group(validation.entries(), Entry::module)
                .forEach(
                        (name, entries) -> {
                            List<Entry> numeric =
                                    entries.stream()
                                            .filter(e -> e.standing() == Entry.Standing.INSIDE)
                                            .filter(e -> e.share() >= 0)
                                            .toList();
                            List<String> row = new ArrayList<>();
                            row.add(name);
                            for (double edge : edges) {
                                long within =
                                        numeric.stream().filter(e -> e.share() <= edge).count();
                                row.add(
                                        numeric.isEmpty()
                                                ? ""
                                                : String.format(
                                                        Locale.ROOT,
                                                        "%.0f %%",
                                                        100.0 * within / numeric.size()));
                            }
                            rows.add(row);
                        });
        form.section("How much of the tolerances is used");
        form.paragraph(
                "Share of the cases inside whose deviation is at most this fraction of the"
                        + " tolerance. Most tolerances are the source's own rounding; some also allow"
                        + " for what the source's method differs from the exact one, as their rows"
                        + " say. Values read from printed tables spread over the whole range, and values computed"
                        + " elsewhere to many digits lie far to the left.");
        form.table(
                "Share of cases by deviation over tolerance",
                List.of("case file", "0.001", "0.01", "0.1", "0.25", "0.5", "0.75", "1"),
                rows,
                false);
    }

    private static void sources(Form form, Validation validation) {
        form.section("By source");
        List<String> head =
                List.of(
                        "publication",
                        "edition, chapter",
                        "kind",
                        "cases",
                        "inside",
                        "of them exact",
                        "outside",
                        "disputed",
                        "not evaluated",
                        "worst",
                        "where");
        Validation.group(validation.entries(), Entry::module)
                .forEach(
                        (module, ofModule) -> {
                            List<List<String>> rows = new ArrayList<>();
                            Map<String, List<Entry>> bySource =
                                    Validation.group(ofModule, Report::sourceKey);
                            bySource.forEach(
                                    (key, entries) -> {
                                        Entry one = entries.get(0);
                                        rows.add(
                                                sumRow(
                                                        List.of(
                                                                one.publication().name(),
                                                                one.part(),
                                                                one.publication()
                                                                        .kind()
                                                                        .toString()),
                                                        entries));
                                    });
                            form.table("Sources of " + module, head, rows, false);
                        });
    }

    private static String sourceKey(Entry e) {
        return (e.publication().kind().published() ? "a" : "b")
                + e.publication().name()
                + "\t"
                + e.part();
    }

    private static void plots(Form form, Map<Plot, String> drawings, String undrawn) {
        form.section("Deviation over the domain");
        if (!undrawn.isEmpty()) {
            form.paragraph("The plots could not be drawn: " + undrawn + ".");
        }
        List<List<String>> rows = new ArrayList<>();
        drawings.forEach(
                (plot, svg) -> {
                    form.plot(plot, svg);
                    for (Plot.Series s : plot.series()) {
                        double worst = 0;
                        for (double y : s.y()) {
                            worst = Math.max(worst, Math.abs(y));
                        }
                        rows.add(
                                List.of(
                                        plot.title(),
                                        s.name(),
                                        Integer.toString(s.y().length),
                                        number(worst),
                                        plot.deviation()));
                    }
                });
        form.table(
                "The same in numbers",
                List.of("plot", "series", "points", "worst", "of"),
                rows,
                false);
    }

    private static void disputed(Form form, Validation validation) {
        List<Entry> disputed = validation.standing(Entry.Standing.DISPUTED);
        form.section("Disputed");
        form.paragraph(
                disputed.isEmpty()
                        ? "No case is disputed."
                        : "The expected value of these cases is held to be wrong, with the evidence."
                                + " They are evaluated like all others; nothing is adjusted.");
        if (!disputed.isEmpty()) {
            form.table(
                    "Disputed cases",
                    List.of("case", "quantity", "expected", "computed", "unit", "evidence"),
                    disputed.stream()
                            .map(
                                    e ->
                                            List.of(
                                                    e.outcome().checked().id(),
                                                    e.outcome().checked().quantity(),
                                                    e.outcome().checked().expected(),
                                                    computed(e),
                                                    e.outcome().checked().unit(),
                                                    e.dispute()))
                            .toList(),
                    false);
        }
    }

    private static void notValidated(Form form, Validation validation) {
        form.section("What is not validated");
        Map<String, List<Entry>> reasons = validation.notValidated();
        form.paragraph(
                reasons.isEmpty()
                        ? "Every case is evaluated."
                        : "These cases are not evaluated: what they ask for is not offered, or not"
                                + " known to the evaluator. No claim is made about them.");
        if (!reasons.isEmpty()) {
            List<List<String>> rows = new ArrayList<>();
            reasons.forEach(
                    (why, entries) -> {
                        Map<String, Integer> quantities = new TreeMap<>();
                        entries.forEach(
                                e ->
                                        quantities.merge(
                                                e.outcome().checked().quantity(), 1, Integer::sum));
                        rows.add(
                                List.of(
                                        why,
                                        count(entries.size()),
                                        String.join("; ", quantities.keySet())));
                    });
            form.table("Why", List.of("reason", "cases", "quantities"), rows, reasons.size() > 20);
        }
    }

    private static void memory(Form form, Validation validation) {
        List<Entry> recalled = validation.fromMemory();
        form.section("From memory");
        form.paragraph(
                recalled.isEmpty()
                        ? "No expected value is from memory."
                        : "In these "
                                + count(recalled.size())
                                + " evaluated cases a value or a formula of the source was recalled"
                                + " and not read. They pass or fail like the others, but prove less:"
                                + " hold them against the publication before you rely on them.");
        if (!recalled.isEmpty()) {
            form.table(
                    "Cases with something from memory",
                    List.of("case", "quantity", "expected", "unit", "source", "provenance"),
                    recalled.stream()
                            .map(e -> e.outcome().checked())
                            .map(
                                    c ->
                                            List.of(
                                                    c.id(),
                                                    c.quantity(),
                                                    c.expected(),
                                                    c.unit(),
                                                    c.source(),
                                                    c.provenance()))
                            .toList(),
                    true);
        }
    }

    private static final List<String> CASE_HEAD =
            List.of(
                    "case",
                    "",
                    "quantity",
                    "inputs",
                    "expected",
                    "computed",
                    "deviation",
                    "tolerance",
                    "unit",
                    "source",
                    "provenance");

    private static void cases(Form form, Validation validation) {
        form.section("Every case");
        Validation.group(validation.entries(), Entry::module)
                .forEach(
                        (module, entries) ->
                                form.table(
                                        "All " + count(entries.size()) + " cases of " + module,
                                        CASE_HEAD,
                                        rows(entries),
                                        true));
    }

    private static List<List<String>> rows(List<Entry> entries) {
        List<List<String>> rows = new ArrayList<>();
        for (Entry e : entries) {
            CheckCase c = e.outcome().checked();
            rows.add(
                    List.of(
                            c.id(),
                            e.standing().name().toLowerCase(Locale.ROOT),
                            c.quantity(),
                            c.inputs(),
                            c.expected(),
                            computed(e),
                            Double.isNaN(e.outcome().deviation())
                                    ? ""
                                    : number(e.outcome().deviation()),
                            Double.isNaN(e.outcome().allowed())
                                    ? c.tolerance()
                                    : number(e.outcome().allowed()),
                            c.unit(),
                            c.source(),
                            c.provenance()));
        }
        return rows;
    }

    private static String computed(Entry e) {
        String computed = e.outcome().computed();
        String remark = e.outcome().remark();
        return computed + (computed.isEmpty() || remark.isEmpty() ? "" : "; ") + remark;
    }

    private static String count(int n) {
        return String.format(Locale.ROOT, "%,d", n);
    }

    private static String share(double worst) {
        return Double.isNaN(worst) ? "" : String.format(Locale.ROOT, "%.3f", worst);
    }

    private static String number(double v) {
        return v == 0 ? "0" : String.format(Locale.ROOT, "%.3g", v);
    }
}
