package dev.thinair.ducts;

import dev.thinair.ducts.kernel.Network;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Search for the least work on a duct system that lets it carry a wanted airflow.
 *
 * <p>Work considered: a number of added supply runs of one nominal size from one node, trunks in
 * other shapes, returns in other shapes, an added return, another filter. Every combination is a
 * changed network; each is solved, warm from its neighbour, and since adding runs never lowers the
 * airflow, the least number of runs is found by bisection. Options are ranked by effort, then by
 * airflow.
 *
 * <p>Effort is a plain sum of points per change, given with each change; the defaults (one point
 * for a run, a filter rack and an enlarged return, two for an added return and an enlarged trunk)
 * are an assumption without a source and can be replaced.
 */
public final class Retrofit {

    /**
     * One way to reach the target.
     *
     * @param changes what is done, in words
     * @param effort sum of effort points
     * @param system the changed system
     * @param airflow what the changed system carries
     */
    public record Option(List<String> changes, double effort, DuctSystem system, Airflow airflow) {

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s (effort %.3g): %s",
                    String.join(" and ", changes),
                    effort,
                    airflow);
        }
    }

    /**
     * What the search found.
     *
     * @param before airflow of the system as it is
     * @param options ways to reach the target, least effort first; holds the system as it is, with
     *     no changes, if that is enough; empty if nothing considered reaches the target
     * @param solved number of networks solved
     */
    public record Result(Airflow before, List<Option> options, int solved) {

        /**
         * The option of least effort.
         *
         * @return best option
         * @throws IllegalStateException if nothing considered reaches the target
         */
        public Option best() {
            if (options.isEmpty()) {
                throw new IllegalStateException(
                        "none of the changes considered reaches the target airflow; now it is "
                                + before);
            }
            return options.get(0);
        }
    }

    private record Part(
            String words, double effort, String group, Kind kind, Object what, Object more) {}

    private enum Kind {
        TRUNK,
        RETURN,
        ADDED_RETURN,
        FILTER
    }

    private record RunChoice(String node, double diameter, Duct duct, Register register) {}

    private final DuctSystem system;
    private final double target;
    private final double density;
    private final double viscosity;
    private final List<Part> parts;
    private final List<RunChoice> choices;
    private final int maxRuns;
    private final double runEffort;
    private final String room;
    private final int wanted;
    private final double maxEffort;

    private Retrofit(Builder b) {
        this.system = b.system;
        this.target = b.target;
        this.density = b.density;
        this.viscosity = b.viscosity;
        this.parts = List.copyOf(b.parts);
        this.choices = List.copyOf(b.choices);
        this.maxRuns = b.maxRuns;
        this.runEffort = b.runEffort;
        this.room = b.room;
        this.wanted = b.wanted;
        this.maxEffort = b.maxEffort;
    }

    /**
     * Starts a search on a system, with standard air.
     *
     * @param system the system as it is
     * @param target standard airflow wanted through the blower, above 0
     * @return builder, which considers nothing yet
     * @throws IllegalArgumentException if the system is null or the target out of range
     */
    public static Builder of(DuctSystem system, Quantity<VolumeFlow> target) {
        return new Builder(system, target);
    }

    /**
     * Runs the search.
     *
     * @return what was found
     * @throws IllegalStateException if the system as it is has no operating point
     */
    public Result search() {
        Airflow before = system.solve(density, viscosity);
        Search s = new Search();
        s.combine(0, new ArrayList<>(), new LinkedHashSet<>());
        s.run();
        List<Option> options = new ArrayList<>();
        for (Found f : s.found) {
            DuctSystem changed = apply(f);
            Airflow a = changed.solve(density, viscosity);
            options.add(new Option(words(f), f.effort, changed, a));
        }
        return new Result(before, List.copyOf(options), s.solved);
    }

    private record Found(
            List<Part> parts, RunChoice choice, int count, double effort, double flow) {}

    private static String where(Found f) {
        return f.choice == null ? "" : f.choice.node;
    }

    private List<String> words(Found f) {
        List<String> all = new ArrayList<>();
        if (f.count > 0) {
            all.add(
                    String.format(
                            Locale.ROOT,
                            "add %d %s of %.3g in. from %s",
                            f.count,
                            f.count == 1 ? "run" : "runs",
                            f.choice.diameter / 0.0254,
                            f.choice.node));
        }
        f.parts.forEach(p -> all.add(p.words));
        return List.copyOf(all);
    }

    private DuctSystem apply(Found f) {
        DuctSystem s = system;
        for (Part p : f.parts) {
            s =
                    switch (p.kind) {
                        case TRUNK -> s.withDuct((String) p.what, (Duct) p.more);
                        case RETURN -> s.withReturnEnlarged((String) p.what, (DuctShape) p.more);
                        case ADDED_RETURN ->
                                s.withReturnAdded(
                                        (String) p.what,
                                        ((AddedReturn) p.more).room,
                                        ((AddedReturn) p.more).node,
                                        ((AddedReturn) p.more).duct,
                                        ((AddedReturn) p.more).grille);
                        case FILTER -> s.withFilter((Filter) p.more);
                    };
        }
        return f.count > 0
                ? s.withAddedRuns(f.count, f.choice.duct, f.choice.register, f.choice.node, room)
                : s;
    }

    private record AddedReturn(String room, String node, Duct duct, Register grille) {}

    /**
     * State of one search. All candidates live in one wide network, in which added runs and added
     * returns are dormant branches; a candidate is a change of numbers in it, and starts warm from
     * the candidate before.
     */
    private final class Search {
        private final List<List<Part>> contexts = new ArrayList<>();
        private final List<Found> found = new ArrayList<>();
        private final DuctSystem wide;
        private final Network dormant;
        private final Network.Workspace work;
        private final int[] choiceBranch;
        private final List<double[]> numbers = new ArrayList<>();
        private final int[] partBranch;
        private int solved;

        Search() {
            DuctSystem.Builder b = system.toBuilder();
            for (int i = 0; i < choices.size(); i++) {
                RunChoice c = choices.get(i);
                b.supplyRun("choice " + i, c.node, room, c.duct, c.register);
            }
            for (int i = 0; i < parts.size(); i++) {
                if (parts.get(i).more instanceof AddedReturn r) {
                    b.returnRun("part " + i, r.room, r.node, r.duct, r.grille);
                }
            }
            wide = b.build();
            choiceBranch = new int[choices.size()];
            partBranch = new int[parts.size()];
            List<Integer> shut = new ArrayList<>();
            for (int i = 0; i < choiceBranch.length; i++) {
                choiceBranch[i] = wide.branchOf("choice " + i);
                shut.add(choiceBranch[i]);
            }
            for (int i = 0; i < partBranch.length; i++) {
                Part p = parts.get(i);
                switch (p.kind) {
                    case TRUNK -> {
                        partBranch[i] = wide.branchOf((String) p.what);
                        numbers.add(DuctSystem.numbers((String) p.what, (Duct) p.more, 0));
                    }
                    case RETURN -> {
                        partBranch[i] = wide.branchOf((String) p.what);
                        numbers.add(
                                system.withReturnEnlarged((String) p.what, (DuctShape) p.more)
                                        .numbersOf((String) p.what));
                    }
                    case ADDED_RETURN -> {
                        partBranch[i] = wide.branchOf("part " + i);
                        shut.add(partBranch[i]);
                        numbers.add(new double[0]);
                    }
                    case FILTER -> {
                        Filter f = (Filter) p.more;
                        partBranch[i] = wide.filterBranch();
                        numbers.add(new double[] {f.viscousSi(), f.quadraticSi()});
                    }
                }
            }
            dormant = wide.network().withShut(shut.stream().mapToInt(Integer::intValue).toArray());
            work = dormant.workspace();
        }

        /** All ways to choose at most one part from each group. */
        void combine(int at, List<Part> chosen, Set<String> groups) {
            if (at == parts.size()) {
                contexts.add(List.copyOf(chosen));
                return;
            }
            combine(at + 1, chosen, groups);
            Part p = parts.get(at);
            double effort = p.effort + effort(chosen);
            if (effort <= maxEffort && groups.add(p.group)) {
                chosen.add(p);
                combine(at + 1, chosen, groups);
                chosen.remove(chosen.size() - 1);
                groups.remove(p.group);
            }
        }

        void run() {
            contexts.sort(Comparator.comparingDouble(Retrofit::effort));
            for (List<Part> context : contexts) {
                double base = effort(context);
                if (base > bound()) {
                    break;
                }
                scan(context, base);
            }
            found.sort(
                    Comparator.comparingDouble(Found::effort)
                            .thenComparing(f -> -f.flow)
                            .thenComparing(Retrofit::where));
            while (found.size() > wanted) {
                found.remove(found.size() - 1);
            }
        }

        /** Effort above which an option cannot be among those wanted any more. */
        private double bound() {
            if (found.size() < wanted) {
                return maxEffort;
            }
            double[] efforts = found.stream().mapToDouble(Found::effort).sorted().toArray();
            return Math.min(maxEffort, efforts[wanted - 1]);
        }

        private Network changed(List<Part> context) {
            Network n = dormant;
            for (Part p : context) {
                int i = parts.indexOf(p);
                n =
                        switch (p.kind) {
                            case TRUNK, RETURN -> n.withDuct(partBranch[i], numbers.get(i));
                            case ADDED_RETURN -> n.withCopies(partBranch[i], 1);
                            case FILTER ->
                                    n.withFilter(
                                            partBranch[i], numbers.get(i)[0], numbers.get(i)[1]);
                        };
            }
            return n;
        }

        private void scan(List<Part> context, double base) {
            Network n = changed(context);
            double flow = flow(n);
            if (reaches(flow)) {
                add(new Found(context, null, 0, base, flow));
                return;
            }
            for (int i = 0; i < choiceBranch.length; i++) {
                int most = (int) Math.min(maxRuns, Math.floor((bound() - base) / runEffort + 1e-9));
                if (most < 1) {
                    return;
                }
                int b = choiceBranch[i];
                double best = flow(n.withCopies(b, most));
                if (!reaches(best)) {
                    continue;
                }
                int low = 0;
                int high = most;
                while (high - low > 1) {
                    int mid = (low + high) / 2;
                    double q = flow(n.withCopies(b, mid));
                    if (reaches(q)) {
                        high = mid;
                        best = q;
                    } else {
                        low = mid;
                    }
                }
                add(new Found(context, choices.get(i), high, base + high * runEffort, best));
            }
        }

        /** Keeps an option unless a smaller set of the same changes is enough already. */
        private void add(Found f) {
            if (!wide.inTable(f.flow)) {
                return;
            }
            for (Found g : found) {
                if (f.parts.containsAll(g.parts)
                        && (g.count == 0 || g.choice == f.choice && g.count <= f.count)) {
                    return;
                }
            }
            found.add(f);
        }

        private boolean reaches(double flow) {
            return flow * density / StandardAir.DENSITY >= target;
        }

        private double flow(Network n) {
            solved++;
            wide.operate(n, density, viscosity, work);
            return work.flow(wide.blowerBranch());
        }
    }

    private static double effort(List<Part> chosen) {
        double sum = 0;
        for (Part p : chosen) {
            sum += p.effort;
        }
        return sum;
    }

    /** Collects what a search may consider. Not for use by two threads at once. */
    public static final class Builder {
        private final DuctSystem system;
        private final double target;
        private double density = StandardAir.DENSITY;
        private double viscosity = StandardAir.VISCOSITY;
        private final List<Part> parts = new ArrayList<>();
        private final List<RunChoice> choices = new ArrayList<>();
        private int maxRuns;
        private double runEffort = 1;
        private String room = "house";
        private int wanted = 5;
        private double maxEffort = 12;
        private double trunkEffort = 2;
        private double returnEffort = 1;
        private double addedReturnEffort = 2;
        private double filterEffort = 1;

        private Builder(DuctSystem system, Quantity<VolumeFlow> target) {
            if (system == null) {
                throw new IllegalArgumentException("duct system is null");
            }
            double q = Si.cubicMetresPerSecond(target, "target airflow");
            Range.requireAbove("target airflow", q, 0, "m3/s");
            this.system = system;
            this.target = q;
        }

        /**
         * Searches with air in a given state.
         *
         * @param state state of the air in the ducts
         * @return this
         * @throws IllegalArgumentException if the state is null
         */
        public Builder air(MoistAir state) {
            if (state == null) {
                throw new IllegalArgumentException("air is null");
            }
            return air(
                    Si.kilogramsPerCubicMetre(state.density(), "air density"),
                    Si.pascalSeconds(state.viscosity(), "dynamic viscosity"));
        }

        /**
         * Searches with other air than standard.
         *
         * @param airDensity kg/m3
         * @param airViscosity Pa s
         * @return this
         * @throws IllegalArgumentException if a number is out of range
         */
        public Builder air(double airDensity, double airViscosity) {
            Range.require("air density", airDensity, 0.1, 10, "kg/m3");
            Range.require("dynamic viscosity", airViscosity, 1e-6, 1e-4, "Pa s");
            density = airDensity;
            viscosity = airViscosity;
            return this;
        }

        /**
         * Sets the effort points of each kind of change for all changes considered after this call.
         *
         * @param perRun points per added run, in [0.01, 100]
         * @param perTrunk points per enlarged trunk
         * @param perReturn points per enlarged return
         * @param perAddedReturn points per added return
         * @param perFilter points for another filter
         * @return this
         * @throws IllegalArgumentException if a number is out of range
         */
        public Builder effort(
                double perRun,
                double perTrunk,
                double perReturn,
                double perAddedReturn,
                double perFilter) {
            for (double e : new double[] {perRun, perTrunk, perReturn, perAddedReturn, perFilter}) {
                Range.require("effort", e, 0.01, 100, "points");
            }
            runEffort = perRun;
            trunkEffort = perTrunk;
            returnEffort = perReturn;
            addedReturnEffort = perAddedReturn;
            filterEffort = perFilter;
            return this;
        }

        /**
         * Considers added supply runs of usual make (see {@link DuctSystem#withAddedRuns(int,
         * Quantity, Quantity, String, String)}).
         *
         * @param most largest number of runs, in [1, 50]
         * @param diameters nominal round diameters to try
         * @param length length of each run
         * @param nodes nodes to start from; none means every node of the supply side
         * @param servedRoom room they serve
         * @return this
         * @throws IllegalArgumentException if a number is out of range, a node unknown, or no
         *     diameter given
         */
        public Builder addedRuns(
                int most,
                List<Quantity<Length>> diameters,
                Quantity<Length> length,
                List<String> nodes,
                String servedRoom) {
            Range.require("number of added runs", most, 1, 50, "");
            if (diameters == null || diameters.isEmpty()) {
                throw new IllegalArgumentException("no diameter of added runs is given");
            }
            if (servedRoom == null || servedRoom.isBlank()) {
                throw new IllegalArgumentException("added runs name no room");
            }
            maxRuns = most;
            room = servedRoom;
            Set<String> from =
                    nodes == null || nodes.isEmpty()
                            ? system.supplyNodes()
                            : new LinkedHashSet<>(nodes);
            for (String n : from) {
                if (!system.supplyNodes().contains(n)) {
                    throw new IllegalArgumentException(
                            "\""
                                    + n
                                    + "\" is no node of the supply side; known are "
                                    + system.supplyNodes());
                }
                for (Quantity<Length> d : diameters) {
                    Duct duct = DuctSystem.addedDuct(d, length);
                    choices.add(
                            new RunChoice(
                                    n,
                                    Si.metres(d, "diameter of added run"),
                                    duct,
                                    DuctSystem.addedRegister(duct)));
                }
            }
            return this;
        }

        /**
         * Considers another duct for a trunk. Several calls for one trunk are alternatives.
         *
         * @param trunk its name
         * @param shape new cross section
         * @return this
         * @throws IllegalArgumentException if there is no such trunk or the shape is null
         */
        public Builder trunk(String trunk, DuctShape shape) {
            for (DuctSystem.Trunk t : system.trunks()) {
                if (t.name().equals(trunk)) {
                    parts.add(
                            new Part(
                                    "make " + trunk + " " + shape,
                                    trunkEffort,
                                    "trunk " + trunk,
                                    Kind.TRUNK,
                                    trunk,
                                    t.duct().withShape(shape)));
                    return this;
                }
            }
            throw new IllegalArgumentException(
                    "there is no trunk \"" + trunk + "\"; known are " + system.trunkNames());
        }

        /**
         * Considers another cross section for a return, its grille growing in proportion. Several
         * calls for one return are alternatives.
         *
         * @param name name of the return or return trunk
         * @param shape new cross section
         * @return this
         * @throws IllegalArgumentException if there is no such return
         */
        public Builder enlargedReturn(String name, DuctShape shape) {
            system.withReturnEnlarged(name, shape);
            parts.add(
                    new Part(
                            "make " + name + " " + shape,
                            returnEffort,
                            "return " + name,
                            Kind.RETURN,
                            name,
                            shape));
            return this;
        }

        /**
         * Considers a further return. Several calls with one name are alternatives.
         *
         * @param name its name
         * @param fromRoom room it takes air from
         * @param node return plenum or node of a return trunk
         * @param duct its duct
         * @param grille its grille
         * @return this
         * @throws IllegalArgumentException if the name is taken or there is no such node
         */
        public Builder addedReturn(
                String name, String fromRoom, String node, Duct duct, Register grille) {
            system.withReturnAdded(name, fromRoom, node, duct, grille);
            parts.add(
                    new Part(
                            "add " + name + ", " + duct.shape(),
                            addedReturnEffort,
                            "added return " + name,
                            Kind.ADDED_RETURN,
                            name,
                            new AddedReturn(fromRoom, node, duct, grille)));
            return this;
        }

        /**
         * Considers another filter. Several calls are alternatives.
         *
         * @param filter the other filter
         * @return this
         * @throws IllegalArgumentException if it is null, or the system has no filter to replace
         */
        public Builder filter(Filter filter) {
            if (filter == null) {
                throw new IllegalArgumentException("filter is null");
            }
            if (system.filter().isEmpty()) {
                throw new IllegalArgumentException("the system has no filter to replace");
            }
            parts.add(
                    new Part(
                            "put in " + filter, filterEffort, "filter", Kind.FILTER, null, filter));
            return this;
        }

        /**
         * Sets how many options to return, and the effort above which to look no further.
         *
         * @param options best option and runners-up together, in [1, 100]
         * @param limit largest sum of effort points, in [0.01, 1000]
         * @return this
         * @throws IllegalArgumentException if a number is out of range
         */
        public Builder keep(int options, double limit) {
            Range.require("number of options", options, 1, 100, "");
            Range.require("largest effort", limit, 0.01, 1_000, "points");
            wanted = options;
            maxEffort = limit;
            return this;
        }

        /**
         * Finishes.
         *
         * @return the search, ready to run
         * @throws IllegalArgumentException if nothing is to be considered
         */
        public Retrofit build() {
            if (parts.isEmpty() && choices.isEmpty()) {
                throw new IllegalArgumentException("the search has no change to consider");
            }
            return new Retrofit(this);
        }

        /**
         * Builds and runs the search.
         *
         * @return what was found
         * @throws IllegalArgumentException if nothing is to be considered
         */
        public Result search() {
            return build().search();
        }
    }
}
