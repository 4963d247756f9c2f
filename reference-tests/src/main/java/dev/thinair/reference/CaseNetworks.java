package dev.thinair.reference;

import dev.thinair.ducts.kernel.DuctGeometry;
import dev.thinair.ducts.kernel.Network;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The duct networks that cases refer to by name, read from {@code ducts-networks.json} (JSON is a
 * part of YAML 1.2) and solved through the library once per state. The solutions that stand in the
 * file are not read.
 */
final class CaseNetworks {

    /** Density to which quadratic, filter and blower data of the file belong, kg/m3. */
    static final double REFERENCE_DENSITY = 1.2041;

    private static final String FILE = "cases/ducts-networks.json";

    /** The air that a named condition of a network stands for. */
    record Air(double density, double viscosity) {}

    /** A solved network. */
    record Solved(Network network, Network.Workspace state, Air air) {

        double flow(String branch) {
            return state.flow(network.branch(branch));
        }

        double pressure(String node) {
            return state.pressure(network.node(node));
        }
    }

    private record State(String name, List<String> closed, Air air) {}

    private final Map<State, Solved> solved = new ConcurrentHashMap<>();
    private Map<?, ?> file;

    /** Solves a network with the branches shut that its own description shuts, and some more. */
    Solved solve(String name, List<String> closed, Air air) {
        return solved.computeIfAbsent(new State(name, List.copyOf(closed), air), this::solved);
    }

    /** Solves a network under one of its named conditions. */
    Solved solve(String name, String condition) {
        return solve(name, List.of(), air(name, condition));
    }

    private Solved solved(State of) {
        Map<?, ?> described = described(of.name());
        Network network = network(described);
        int[] shut =
                Stream.concat(
                                list(described, "closed").stream().map(String::valueOf),
                                of.closed().stream())
                        .distinct()
                        .mapToInt(network::branch)
                        .toArray();
        Network open = network.withShut(shut);
        Network.Workspace workspace = open.workspace();
        open.solve(of.air().density(), of.air().viscosity(), workspace);
        return new Solved(open, workspace, of.air());
    }

    private static Network network(Map<?, ?> described) {
        Network.Builder builder = Network.builder(REFERENCE_DENSITY);
        Map<String, Integer> nodes = new LinkedHashMap<>();
        map(described, "fixed_pressures_Pa")
                .forEach(
                        (node, pressure) ->
                                nodes.put(
                                        String.valueOf(node),
                                        builder.fixedNode(
                                                String.valueOf(node),
                                                ((Number) pressure).doubleValue())));
        Map<?, ?> branches = map(described, "branches");
        for (Object branch : branches.values()) {
            for (String end : List.of("from", "to")) {
                nodes.computeIfAbsent(text((Map<?, ?>) branch, end), builder::node);
            }
        }
        branches.forEach(
                (name, data) -> add(builder, String.valueOf(name), (Map<?, ?>) data, nodes));
        return builder.build();
    }

    private static void add(
            Network.Builder to, String name, Map<?, ?> data, Map<String, Integer> nodes) {
        int a = nodes.get(text(data, "from"));
        int b = nodes.get(text(data, "to"));
        String type = text(data, "type");
        switch (type) {
            case "quad" -> to.quadratic(name, a, b, number(data, "R"));
            case "filt" -> to.filter(name, a, b, number(data, "a"), number(data, "b"));
            case "leak" -> to.leak(name, a, b, number(data, "c"), number(data, "n"));
            case "fan" ->
                    to.blower(
                            name, a, b, number(data, "a0"), number(data, "a1"), number(data, "a2"));
            case "duct" -> {
                double d = number(data, "D");
                to.duct(
                        name,
                        a,
                        b,
                        d,
                        DuctGeometry.roundArea(d),
                        number(data, "L"),
                        number(data, "eps"),
                        number(data, "C"),
                        1);
            }
            default ->
                    throw new IllegalArgumentException(
                            FILE + ": branch \"" + name + "\" is of unknown type " + type);
        }
    }

    private Air air(String name, String condition) {
        for (Object each : list(described(name), "conditions")) {
            Map<?, ?> one = (Map<?, ?>) each;
            if (text(one, "name").equals(condition)) {
                return new Air(number(one, "density"), number(one, "viscosity"));
            }
        }
        throw new IllegalArgumentException(
                "input \"condition\" is \"" + condition + "\", unknown to network " + name);
    }

    private Map<?, ?> described(String name) {
        Object found = file().get(name);
        if (found == null) {
            throw new IllegalArgumentException(
                    "input \"network\" is \"" + name + "\"; known are " + file().keySet());
        }
        return (Map<?, ?>) found;
    }

    private synchronized Map<?, ?> file() {
        if (file == null) {
            try (InputStream stream = CaseNetworks.class.getResourceAsStream(FILE)) {
                if (stream == null) {
                    throw new IllegalStateException("no shipped file " + FILE);
                }
                Load load = new Load(LoadSettings.builder().setLabel(FILE).build());
                file = (Map<?, ?>) load.loadFromInputStream(stream);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return file;
    }

    private static Map<?, ?> map(Map<?, ?> of, String key) {
        return (Map<?, ?>) given(of, key);
    }

    private static List<?> list(Map<?, ?> of, String key) {
        return (List<?>) given(of, key);
    }

    private static String text(Map<?, ?> of, String key) {
        return String.valueOf(given(of, key));
    }

    private static double number(Map<?, ?> of, String key) {
        return ((Number) given(of, key)).doubleValue();
    }

    private static Object given(Map<?, ?> of, String key) {
        Object value = of.get(key);
        if (value == null) {
            throw new IllegalArgumentException(FILE + ": \"" + key + "\" is missing in " + of);
        }
        return value;
    }
}
