package dev.thinair.ducts.kernel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The exact networks of the reference set, read from the test resource networks.tsv. */
final class ReferenceNetworks {

    static final double REFERENCE_DENSITY = 1.2041;

    record Branch(String name, String type, String from, String to, double[] numbers) {}

    record Condition(
            String name,
            double density,
            double viscosity,
            Map<String, Double> flows,
            Map<String, Double> pressures) {}

    record Case(
            String name,
            Map<String, Double> fixed,
            List<Branch> branches,
            Set<String> closed,
            List<Condition> conditions) {

        Network network() {
            Network.Builder b = Network.builder(REFERENCE_DENSITY);
            Map<String, Integer> nodes = new LinkedHashMap<>();
            fixed.forEach((n, p) -> nodes.put(n, b.fixedNode(n, p)));
            for (Branch x : branches) {
                for (String n : List.of(x.from, x.to)) {
                    if (!nodes.containsKey(n)) {
                        nodes.put(n, b.node(n));
                    }
                }
            }
            for (Branch x : branches) {
                double[] v = x.numbers;
                int f = nodes.get(x.from);
                int t = nodes.get(x.to);
                switch (x.type) {
                    case "quad" -> b.quadratic(x.name, f, t, v[0]);
                    case "filt" -> b.filter(x.name, f, t, v[0], v[1]);
                    case "leak" -> b.leak(x.name, f, t, v[0], v[1]);
                    case "fan" -> b.blower(x.name, f, t, v[0], v[1], v[2]);
                    case "duct" ->
                            b.duct(
                                    x.name,
                                    f,
                                    t,
                                    v[0],
                                    Math.PI / 4 * v[0] * v[0],
                                    v[1],
                                    v[2],
                                    v[3],
                                    1);
                    default -> throw new IllegalStateException(x.type);
                }
            }
            Network n = b.build();
            return n.withShut(closed.stream().mapToInt(n::branch).toArray());
        }
    }

    private ReferenceNetworks() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                ReferenceNetworks.class.getResourceAsStream("networks.tsv"),
                                StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] f = line.split("\t");
                Case c = cases.isEmpty() ? null : cases.get(cases.size() - 1);
                switch (f[0]) {
                    case "network" ->
                            cases.add(
                                    new Case(
                                            f[1],
                                            new LinkedHashMap<>(),
                                            new ArrayList<>(),
                                            new LinkedHashSet<>(),
                                            new ArrayList<>()));
                    case "fixed" -> c.fixed.put(f[1], Double.parseDouble(f[2]));
                    case "closed" -> c.closed.addAll(List.of(f).subList(1, f.length));
                    case "branch" -> {
                        double[] v = new double[f.length - 5];
                        for (int i = 0; i < v.length; i++) {
                            v[i] = Double.parseDouble(f[5 + i]);
                        }
                        c.branches.add(new Branch(f[1], f[2], f[3], f[4], v));
                    }
                    case "condition" ->
                            c.conditions.add(
                                    new Condition(
                                            f[1],
                                            Double.parseDouble(f[2]),
                                            Double.parseDouble(f[3]),
                                            new LinkedHashMap<>(),
                                            new LinkedHashMap<>()));
                    case "flow" ->
                            c.conditions
                                    .get(c.conditions.size() - 1)
                                    .flows
                                    .put(f[1], Double.parseDouble(f[2]));
                    case "pressure" ->
                            c.conditions
                                    .get(c.conditions.size() - 1)
                                    .pressures
                                    .put(f[1], Double.parseDouble(f[2]));
                    default -> {
                        // comment
                    }
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return cases;
    }
}
