package dev.thinair.examples.job;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the key tables of {@code examples/job-file.md} from the schema the reader itself uses. */
final class JobPage {
    private JobPage() {}

    /** All key tables, in the order of the file; a group used in several places is printed once. */
    static String tables() {
        Map<Shape.Fields, List<String>> where = new LinkedHashMap<>();
        IdentityHashMap<Shape.Fields, Boolean> seen = new IdentityHashMap<>();
        collect(JobSchema.ROOT, "", where, seen);
        StringBuilder out = new StringBuilder();
        where.forEach(
                (fields, paths) -> {
                    out.append("\n**")
                            .append(
                                    paths.get(0).isEmpty()
                                            ? "the file"
                                            : "`" + String.join("`, `", paths) + "`")
                            .append("**\n\n| key | needed | what | allowed |\n|---|---|---|---|\n");
                    for (Shape.Key key : fields.keys().values()) {
                        out.append("| `")
                                .append(key.name())
                                .append("` | ")
                                .append(
                                        key.required()
                                                ? "yes"
                                                : choice(fields, key) ? "one of" : "no")
                                .append(" | ")
                                .append(key.help())
                                .append(" | ")
                                .append(JobReader.allowed(key.shape()).replace("|", "/"))
                                .append(" |\n");
                    }
                    for (List<List<String>> group : fields.choices()) {
                        out.append("\nExactly one of: ")
                                .append(
                                        String.join(
                                                "; ",
                                                group.stream()
                                                        .map(
                                                                a ->
                                                                        "`"
                                                                                + String.join(
                                                                                        "` with `",
                                                                                        a)
                                                                                + "`")
                                                        .toList()))
                                .append(".\n");
                    }
                });
        return out.toString();
    }

    private static boolean choice(Shape.Fields fields, Shape.Key key) {
        return fields.choices().stream()
                .flatMap(List::stream)
                .flatMap(List::stream)
                .anyMatch(key.name()::equals);
    }

    private static void collect(
            Shape shape,
            String path,
            Map<Shape.Fields, List<String>> where,
            IdentityHashMap<Shape.Fields, Boolean> seen) {
        if (shape instanceof Shape.Items items) {
            collect(items.item(), path + "[]", where, seen);
        }
        if (shape instanceof Shape.Fields fields) {
            where.computeIfAbsent(fields, f -> new ArrayList<>()).add(path);
            if (seen.put(fields, true) == null) {
                fields.keys()
                        .values()
                        .forEach(
                                k ->
                                        collect(
                                                k.shape(),
                                                path.isEmpty() ? k.name() : path + "." + k.name(),
                                                where,
                                                seen));
            }
        }
    }
}
