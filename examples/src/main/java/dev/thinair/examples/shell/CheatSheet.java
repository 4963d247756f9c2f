package dev.thinair.examples.shell;

import dev.thinair.altitude.SitePressure;
import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.kernel.DuctGeometry;
import dev.thinair.examples.job.Job;
import dev.thinair.examples.study.Sweep;
import dev.thinair.loads.House;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.psychro.MoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The library's public types and how to make them, read from its class files, so that it cannot go
 * out of date.
 */
public final class CheatSheet {
    private static final int WIDTH = 100;

    /** A topic: its words, and a type in its package. */
    private record Topic(String name, String words, Class<?> anchor) {}

    private static final List<Topic> TOPICS =
            List.of(
                    new Topic("units", "quantities in and out", Units.class),
                    new Topic("psychro", "moist air, streams, coils", MoistAir.class),
                    new Topic("altitude", "what thin air does", SitePressure.class),
                    new Topic("loads", "heat a house gains and loses", House.class),
                    new Topic("ducts", "air the blower really moves", DuctSystem.class),
                    new Topic(
                            "cycling",
                            "the installed system and its review",
                            InstalledSystem.class),
                    new Topic("working", "shown work", Working.class),
                    new Topic("study", "sweeps, tables, pictures (examples)", Sweep.class),
                    new Topic("job", "job files (examples)", Job.class));

    private static final List<Class<?>> KERNELS =
            List.of(
                    Saturation.class,
                    StandardAtmosphere.class,
                    Sun.class,
                    DuctGeometry.class,
                    UnitModel.class);

    private CheatSheet() {}

    /** All topics, a line or two for each type that can be made or asked statically. */
    public static String text() {
        StringBuilder out = new StringBuilder();
        for (Topic topic : TOPICS) {
            topic(out, topic);
        }
        return out.append(
                        "\nMore: cheatSheet(\"MoistAir\") lists what a type answers,"
                                + " cheatSheet(\"ducts\") one topic,\ncheatSheet(\"kernel\") the"
                                + " functions on plain SI doubles.\n")
                .toString();
    }

    /**
     * One topic, one type, or the kernel.
     *
     * @param about a topic's or a type's name, any case, or "kernel"
     * @return lines of text
     * @throws IllegalArgumentException if there is nothing of that name
     */
    public static String text(String about) {
        StringBuilder out = new StringBuilder();
        if (about.equalsIgnoreCase("kernel")) {
            for (Class<?> anchor : KERNELS) {
                kernel(out, anchor);
            }
            return out.toString();
        }
        for (Topic topic : TOPICS) {
            if (topic.name.equalsIgnoreCase(about)) {
                topic(out, topic);
                return out.toString();
            }
        }
        for (Topic topic : TOPICS) {
            for (Class<?> type : types(topic.anchor)) {
                if (type.getSimpleName().equalsIgnoreCase(about)) {
                    type(out, type);
                    return out.toString();
                }
            }
        }
        throw new IllegalArgumentException(
                "\""
                        + about
                        + "\" is neither a topic ("
                        + String.join(", ", TOPICS.stream().map(Topic::name).toList())
                        + ", kernel) nor a public type");
    }

    /**
     * Simple names of a topic's public types.
     *
     * @param topic its name
     * @throws IllegalArgumentException if there is no such topic
     */
    public static List<String> typeNames(String topic) {
        Topic found =
                TOPICS.stream()
                        .filter(t -> t.name.equals(topic))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("no topic " + topic));
        return types(found.anchor).stream().map(Class::getSimpleName).toList();
    }

    private static void topic(StringBuilder out, Topic topic) {
        out.append('\n')
                .append(topic.name.toUpperCase(Locale.ROOT))
                .append(": ")
                .append(topic.words)
                .append("  (")
                .append(topic.anchor.getPackageName())
                .append(")\n");
        List<String> plain = new ArrayList<>();
        for (Class<?> type : types(topic.anchor)) {
            if (type == Units.class) {
                wrapped(out, "  Units", units());
                continue;
            }
            List<String> made = made(type);
            if (made.isEmpty()) {
                plain.add(type.getSimpleName());
            } else {
                wrapped(out, "  " + type.getSimpleName(), made);
            }
        }
        if (!plain.isEmpty()) {
            wrapped(out, "  and", plain);
        }
    }

    private static void type(StringBuilder out, Class<?> type) {
        out.append('\n').append(type.getSimpleName()).append("  (").append(type.getPackageName());
        out.append(")\n");
        wrapped(out, "  make", made(type));
        if (type.isEnum()) {
            wrapped(
                    out,
                    "  values",
                    Arrays.stream(type.getEnumConstants()).map(Object::toString).toList());
        }
        List<String> asked = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        for (Method m : methods(type)) {
            if (Modifier.isStatic(m.getModifiers()) || ofObject(m)) {
                continue;
            }
            if (m.getName().startsWith("with") && m.getReturnType() == type) {
                changed.add(signature(m));
            } else {
                asked.add(signature(m));
            }
        }
        wrapped(out, "  ask", asked);
        wrapped(out, "  change", changed);
        for (Class<?> inner : type.getClasses()) {
            if (inner.getSimpleName().equals("Builder")) {
                wrapped(
                        out,
                        "  build",
                        methods(inner).stream()
                                .filter(m -> !ofObject(m))
                                .map(CheatSheet::signature)
                                .toList());
            } else {
                out.append("  has ").append(type.getSimpleName()).append('.');
                out.append(inner.getSimpleName()).append('\n');
            }
        }
    }

    private static void kernel(StringBuilder out, Class<?> anchor) {
        out.append('\n').append(anchor.getPackageName()).append('\n');
        for (Class<?> type : types(anchor)) {
            List<String> functions =
                    methods(type).stream()
                            .filter(m -> Modifier.isStatic(m.getModifiers()))
                            .map(CheatSheet::signature)
                            .toList();
            if (!functions.isEmpty()) {
                wrapped(out, "  " + type.getSimpleName(), functions);
            }
        }
    }

    private static List<String> made(Class<?> type) {
        List<String> made = new ArrayList<>();
        if (type.isEnum()) {
            return made;
        }
        if (type.isRecord()) {
            made.add(
                    "new "
                            + type.getSimpleName()
                            + "("
                            + String.join(
                                    ", ",
                                    Arrays.stream(type.getRecordComponents())
                                            .map(c -> c.getName())
                                            .toList())
                            + ")");
        }
        for (Method m : methods(type)) {
            if (Modifier.isStatic(m.getModifiers())) {
                made.add(signature(m));
            }
        }
        return made;
    }

    /** The factories by name only: there are too many to say what each takes. */
    private static List<String> units() {
        TreeSet<String> names = new TreeSet<>();
        for (Method m : methods(Units.class)) {
            if (Modifier.isStatic(m.getModifiers())) {
                names.add(m.getName());
            }
        }
        return List.copyOf(names);
    }

    private static String signature(Method m) {
        return m.getName()
                + "("
                + String.join(
                        ", ", Arrays.stream(m.getParameters()).map(Parameter::getName).toList())
                + ")";
    }

    private static boolean ofObject(Method m) {
        return switch (m.getName()) {
            case "equals", "hashCode", "toString" -> true;
            default -> false;
        };
    }

    private static List<Method> methods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(m -> Modifier.isPublic(m.getModifiers()) && !m.isSynthetic())
                .sorted(Comparator.comparing(CheatSheet::signature))
                .toList();
    }

    private static void wrapped(StringBuilder out, String head, List<String> parts) {
        if (parts.isEmpty()) {
            return;
        }
        StringBuilder line = new StringBuilder(head).append(": ");
        boolean first = true;
        for (String part : parts.stream().distinct().toList()) {
            if (!first && line.length() + part.length() + 2 > WIDTH) {
                out.append(line).append(",\n");
                line = new StringBuilder("      ");
                first = true;
            }
            line.append(first ? "" : ", ").append(part);
            first = false;
        }
        out.append(line).append('\n');
    }

    /** Public top-level types in the package of this one, by name. */
    static List<Class<?>> types(Class<?> anchor) {
        Map<String, Class<?>> found = new LinkedHashMap<>();
        String folder = anchor.getPackageName().replace('.', '/');
        try {
            URI place = anchor.getProtectionDomain().getCodeSource().getLocation().toURI();
            Path path = Path.of(place);
            if (Files.isDirectory(path)) {
                names(path.resolve(folder)).forEach(n -> load(anchor, n, found));
            } else {
                try (FileSystem jar = FileSystems.newFileSystem(path)) {
                    names(jar.getPath(folder)).forEach(n -> load(anchor, n, found));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        return List.copyOf(found.values());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".class") && !n.contains("$") && !n.contains("-"))
                    .map(n -> n.substring(0, n.length() - ".class".length()))
                    .sorted()
                    .toList();
        }
    }

    private static void load(Class<?> anchor, String name, Map<String, Class<?>> found) {
        find(anchor, anchor.getPackageName() + "." + name)
                .filter(c -> Modifier.isPublic(c.getModifiers()))
                .ifPresent(c -> found.put(name, c));
    }

    private static Optional<Class<?>> find(Class<?> anchor, String name) {
        try {
            return Optional.of(Class.forName(name, false, anchor.getClassLoader()));
        } catch (ClassNotFoundException e) {
            return Optional.empty();
        }
    }
}
