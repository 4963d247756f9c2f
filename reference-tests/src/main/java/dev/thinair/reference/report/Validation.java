package dev.thinair.reference.report;

import dev.thinair.reference.CaseEvaluator;
import dev.thinair.reference.CaseOutcome;
import dev.thinair.reference.CaseReader;
import dev.thinair.reference.CheckCase;
import dev.thinair.reference.DisputedCases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * All cases evaluated, and what can be said of them in sum.
 *
 * @param entries the cases in the order of their files
 */
public record Validation(List<Entry> entries) {

    /**
     * A number of cases in sum.
     *
     * @param cases how many there are
     * @param inside how many are inside their tolerance
     * @param outside how many are outside
     * @param disputed how many are outside with evidence against the expected value
     * @param unknown how many were not evaluated
     * @param exact how many of those inside admit no difference
     * @param worst the largest deviation over tolerance of the cases that are not disputed, or NaN
     * @param worstId the case that has it, or empty
     */
    public record Sum(
            int cases,
            int inside,
            int outside,
            int disputed,
            int unknown,
            int exact,
            double worst,
            String worstId) {}

    public Validation {
        entries = List.copyOf(entries);
    }

    /** Evaluates the shipped cases. */
    public static Validation ofShipped() {
        Map<String, List<CheckCase>> files = new LinkedHashMap<>();
        CaseReader.SHIPPED.forEach(name -> files.put(name, CaseReader.shipped(name)));
        return of(files);
    }

    /** Evaluates cases by file. */
    public static Validation of(Map<String, List<CheckCase>> files) {
        return of(files, DisputedCases::reason);
    }

    /** The same with the evidence against a case from elsewhere; null where there is none. */
    static Validation of(Map<String, List<CheckCase>> files, Function<CheckCase, String> disputes) {
        CaseEvaluator evaluator = CaseEvaluator.standard();
        Publications publications = Publications.shipped();
        List<Entry> entries = new ArrayList<>();
        files.forEach(
                (name, cases) -> {
                    String source = "";
                    for (CheckCase checked : cases) {
                        // "same" stands for the source of the row above.
                        if (!checked.source().matches("same( example)?")) {
                            source = checked.source();
                        }
                        CaseOutcome outcome = evaluator.evaluate(checked);
                        entries.add(
                                new Entry(
                                        name,
                                        publications.of(source),
                                        Publications.part(source),
                                        outcome,
                                        Objects.requireNonNullElse(disputes.apply(checked), "")));
                    }
                });
        return new Validation(entries);
    }

    /** The cases that stand in a certain way. */
    public List<Entry> standing(Entry.Standing standing) {
        return entries.stream().filter(e -> e.standing() == standing).toList();
    }

    /** Evaluated cases whose expected value was recalled and not read. */
    public List<Entry> fromMemory() {
        return entries.stream()
                .filter(e -> e.standing() != Entry.Standing.UNKNOWN)
                .filter(e -> e.outcome().checked().fromMemory())
                .toList();
    }

    /** The cases that were not evaluated, by the reason. */
    public Map<String, List<Entry>> notValidated() {
        return group(
                standing(Entry.Standing.UNKNOWN),
                e ->
                        e.outcome().remark().startsWith("quantity not known")
                                ? "the quantity is not known to the evaluator"
                                : e.outcome().remark());
    }

    /** The evaluated cases by published source, those of practice and derivation left out. */
    public Map<String, List<Entry>> published() {
        return group(
                entries.stream()
                        .filter(e -> e.standing() != Entry.Standing.UNKNOWN)
                        .filter(e -> e.publication().kind().published())
                        .toList(),
                e -> e.publication().name());
    }

    /** Groups entries by a key, keys sorted. */
    static <K extends Comparable<K>> Map<K, List<Entry>> group(
            List<Entry> entries, Function<Entry, K> key) {
        Map<K, List<Entry>> groups = new TreeMap<>();
        entries.forEach(e -> groups.computeIfAbsent(key.apply(e), k -> new ArrayList<>()).add(e));
        return groups;
    }

    /** What some cases come to. */
    static Sum sum(List<Entry> entries) {
        int[] standing = new int[Entry.Standing.values().length];
        int exact = 0;
        double worst = Double.NaN;
        String worstId = "";
        for (Entry e : entries) {
            standing[e.standing().ordinal()]++;
            if (e.standing() == Entry.Standing.INSIDE && e.exact()) {
                exact++;
            }
            boolean counts =
                    e.standing() == Entry.Standing.INSIDE || e.standing() == Entry.Standing.OUTSIDE;
            if (counts && e.share() >= 0 && !(e.share() <= worst)) {
                worst = e.share();
                worstId = e.outcome().checked().id();
            }
        }
        return new Sum(
                entries.size(),
                standing[Entry.Standing.INSIDE.ordinal()],
                standing[Entry.Standing.OUTSIDE.ordinal()],
                standing[Entry.Standing.DISPUTED.ordinal()],
                standing[Entry.Standing.UNKNOWN.ordinal()],
                exact,
                worst,
                worstId);
    }
}
