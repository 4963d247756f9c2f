package dev.thinair.ducts;

import dev.thinair.ducts.kernel.BlowerCurve;
import dev.thinair.ducts.kernel.Network;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Density;
import dev.thinair.units.DynamicViscosity;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;

/**
 * A house's duct system: blower, filter and coil, trunks, supply runs and returns with their
 * registers, leaks, and ways back from closed rooms. Immutable; the {@code with} methods give
 * changed copies.
 *
 * <p>Air path: rooms, returns, {@link #RETURN_PLENUM}, filter, blower, coil, {@link
 * #SUPPLY_PLENUM}, trunks, supply runs, rooms. External static pressure is the rise of the blower
 * cabinet, so filter and coil count as external: leave them out if the blower's table was taken
 * with them in place.
 *
 * <p>Where a trunk splits or joins, either its ducts carry fixed fittings ({@link
 * Fitting#takeOff}), or a wye whose coefficients follow the flows ({@link Builder#supplyWye},
 * {@link Builder#returnWye}).
 *
 * <p>Network: total pressures, one air density; rooms stand at the house's pressure (0 Pa) unless a
 * transfer path is given for them, and all places that leaks lead to stand at 0 Pa unless told
 * otherwise.
 */
public final class DuctSystem {

    /** Node on the pressure side of the equipment, where supply trunks and runs start. */
    public static final String SUPPLY_PLENUM = "supply plenum";

    /** Node on the suction side of the filter, where returns end. */
    public static final String RETURN_PLENUM = "return plenum";

    record Trunk(String name, String from, String to, Duct duct) {}

    record Run(
            String name,
            boolean supply,
            String node,
            String room,
            Duct duct,
            Register register,
            double designFlow) {}

    record Leak(String node, DuctLeak leak) {}

    record Wye(
            String name,
            String branch,
            String straight,
            String common,
            double angle,
            boolean back) {}

    private final Builder description;
    private final Network network;
    private final int blowerBranch;
    private final int filterBranch;
    private final int coilBranch;
    private final Set<String> supplyNodes;
    private final int[] trunkBranch;
    private final int[] runBranch;
    private final int[] leakBranch;
    private final int[] runNode;

    private DuctSystem(Builder description) {
        this.description = description;
        Set<String> supply = reach(SUPPLY_PLENUM, description.trunks);
        Set<String> back = reach(RETURN_PLENUM, description.trunks);
        check(description, supply, back);
        this.supplyNodes = supply;
        Network.Builder b = Network.builder(StandardAir.DENSITY);
        Map<String, Integer> node = new LinkedHashMap<>();
        node.put("@house", b.fixedNode("@house", 0));
        node.put(RETURN_PLENUM, b.node(RETURN_PLENUM));
        node.put(SUPPLY_PLENUM, b.node(SUPPLY_PLENUM));
        for (Trunk t : description.trunks) {
            for (String n : List.of(t.from, t.to)) {
                if (!node.containsKey(n)) {
                    node.put(n, b.node(n));
                }
            }
        }
        for (String room : description.transfers.keySet()) {
            node.put("@room " + room, b.node("@room " + room));
        }
        for (Leak l : description.leaks) {
            String place = "@place " + l.leak.place();
            if (!node.containsKey(place)) {
                node.put(
                        place,
                        b.fixedNode(
                                place,
                                description.placePressure.getOrDefault(l.leak.place(), 0.0)));
            }
        }
        int inlet = node.get(RETURN_PLENUM);
        int filter = -1;
        if (description.filter != null) {
            int after = b.node("@blower inlet");
            filter =
                    b.filter(
                            "@filter",
                            inlet,
                            after,
                            description.filter.viscousSi(),
                            description.filter.quadraticSi());
            inlet = after;
        }
        int outlet = node.get(SUPPLY_PLENUM);
        int coil = -1;
        if (description.coil != null) {
            int before = b.node("@blower outlet");
            coil =
                    b.filter(
                            "@coil",
                            before,
                            outlet,
                            description.coil.viscousSi(),
                            description.coil.quadraticSi());
            outlet = before;
        }
        this.filterBranch = filter;
        this.coilBranch = coil;
        this.blowerBranch = b.blower("@blower", inlet, outlet, description.blower.running().curve);
        this.trunkBranch = new int[description.trunks.size()];
        for (int i = 0; i < trunkBranch.length; i++) {
            Trunk t = description.trunks.get(i);
            trunkBranch[i] = addDuct(b, t.name, node.get(t.from), node.get(t.to), t.duct, 0);
        }
        this.runBranch = new int[description.runs.size()];
        this.runNode = new int[runBranch.length];
        List<Integer> tight = new ArrayList<>();
        for (int i = 0; i < runBranch.length; i++) {
            Run r = description.runs.get(i);
            runNode[i] = node.get(r.node);
            int room =
                    description.transfers.containsKey(r.room)
                            ? node.get("@room " + r.room)
                            : node.get("@house");
            boolean open = r.register.passable() > 0;
            double c = open ? r.register.coefficientOn(r.duct.shape().areaSi()) : 1;
            int branch =
                    r.supply
                            ? addDuct(b, r.name, node.get(r.node), room, r.duct, c)
                            : addDuct(b, r.name, room, node.get(r.node), r.duct, c);
            runBranch[i] = branch;
            if (!open) {
                tight.add(branch);
            }
        }
        this.leakBranch = new int[description.leaks.size()];
        for (int k = 0; k < leakBranch.length; k++) {
            Leak l = description.leaks.get(k);
            int place = node.get("@place " + l.leak.place());
            int at = node.get(l.node);
            boolean out = supply.contains(l.node);
            leakBranch[k] =
                    b.leak(
                            "@leak " + k,
                            out ? at : place,
                            out ? place : at,
                            l.leak.coefficientSi(),
                            l.leak.exponent());
        }
        for (Map.Entry<String, TransferPath> t : description.transfers.entrySet()) {
            b.quadratic(
                    "@transfer " + t.getKey(),
                    node.get("@room " + t.getKey()),
                    node.get("@house"),
                    t.getValue().resistanceSi());
        }
        for (Wye y : description.wyes) {
            int branch = ductNumber(y, y.branch);
            int straight = ductNumber(y, y.straight);
            int common = ductNumber(y, y.common);
            if (y.back) {
                b.convergingWye(y.name, branch, straight, common, y.angle);
            } else {
                b.divergingWye(y.name, branch, straight, common, y.angle);
            }
        }
        description.stack.forEach((part, gain) -> b.gain(partNumber(part), gain));
        this.network = b.build().withShut(tight.stream().mapToInt(Integer::intValue).toArray());
    }

    private int partNumber(String part) {
        for (int i = 0; i < trunkBranch.length; i++) {
            if (description.trunks.get(i).name.equals(part)) {
                return trunkBranch[i];
            }
        }
        return runBranch[description.runs.indexOf(description.run(part))];
    }

    private int ductNumber(Wye y, String leg) {
        for (int i = 0; i < trunkBranch.length; i++) {
            Trunk t = description.trunks.get(i);
            if (t.name.equals(leg) && supplyNodes.contains(t.from) != y.back) {
                return trunkBranch[i];
            }
        }
        for (int i = 0; i < runBranch.length; i++) {
            Run r = description.runs.get(i);
            if (r.name.equals(leg) && r.supply != y.back) {
                return runBranch[i];
            }
        }
        throw new IllegalArgumentException(
                "wye \""
                        + y.name
                        + "\": there is no trunk or run \""
                        + leg
                        + "\" on the "
                        + (y.back ? "return" : "supply")
                        + " side");
    }

    private static int addDuct(
            Network.Builder b, String name, int from, int to, Duct d, double registerCoefficient) {
        double[] v = numbers(name, d, registerCoefficient);
        return b.duct(name, from, to, v[0], v[1], v[2], v[3], v[4], v[5]);
    }

    /** The six numbers of a duct branch: see {@link Network#withDuct}. */
    static double[] numbers(String name, Duct d, double registerCoefficient) {
        double c = d.lossCoefficient() + registerCoefficient;
        Range.require("sum of loss coefficients of \"" + name + "\"", c, -1e3, 1e6, "");
        return new double[] {
            d.shape().hydraulicDiameterSi(),
            d.shape().areaSi(),
            d.effectiveLengthSi(),
            d.material().roughnessSi(),
            c,
            d.frictionMultiplier()
        };
    }

    private static Set<String> reach(String start, List<Trunk> trunks) {
        Set<String> seen = new LinkedHashSet<>();
        seen.add(start);
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Trunk t : trunks) {
                if (seen.contains(t.from) != seen.contains(t.to)) {
                    seen.add(t.from);
                    seen.add(t.to);
                    grew = true;
                }
            }
        }
        return seen;
    }

    private static void check(Builder d, Set<String> supply, Set<String> back) {
        if (d.blower == null) {
            throw new IllegalArgumentException("the duct system has no blower");
        }
        if (supply.contains(RETURN_PLENUM)) {
            throw new IllegalArgumentException(
                    "trunks join the supply plenum to the return plenum: only the equipment may");
        }
        for (Trunk t : d.trunks) {
            if (!supply.contains(t.from) && !back.contains(t.from)) {
                throw new IllegalArgumentException(
                        "trunk \""
                                + t.name
                                + "\" from \""
                                + t.from
                                + "\" to \""
                                + t.to
                                + "\" is joined neither to the supply plenum nor to the return plenum");
            }
        }
        boolean supplyOpen = false;
        boolean returnOpen = false;
        for (Run r : d.runs) {
            Set<String> side = r.supply ? supply : back;
            if (!side.contains(r.node)) {
                throw new IllegalArgumentException(
                        (r.supply ? "supply run \"" : "return \"")
                                + r.name
                                + "\" is joined to \""
                                + r.node
                                + "\", which is no node of the "
                                + (r.supply ? "supply" : "return")
                                + " side; known are "
                                + side);
            }
            if (r.register.passable() > 0) {
                supplyOpen |= r.supply;
                returnOpen |= !r.supply;
            }
        }
        for (Leak l : d.leaks) {
            if (!supply.contains(l.node) && !back.contains(l.node)) {
                throw new IllegalArgumentException(
                        "leak at \""
                                + l.node
                                + "\": there is no such node; known are "
                                + supply
                                + " and "
                                + back);
            }
            supplyOpen |= supply.contains(l.node);
            returnOpen |= back.contains(l.node);
        }
        for (String room : d.transfers.keySet()) {
            if (d.runs.stream().noneMatch(r -> r.room.equals(room))) {
                throw new IllegalArgumentException(
                        "transfer path from room \"" + room + "\", which no run serves");
            }
        }
        if (d.runs.stream().noneMatch(Run::supply)) {
            throw new IllegalArgumentException("the duct system has no supply run");
        }
        if (d.runs.stream().allMatch(Run::supply)) {
            throw new IllegalArgumentException("the duct system has no return");
        }
        if (!supplyOpen) {
            throw new IllegalArgumentException(
                    "all supply registers are shut tight and nothing leaks: the air has no way out");
        }
        if (!returnOpen) {
            throw new IllegalArgumentException(
                    "all return grilles are shut tight and nothing leaks: the air has no way in");
        }
    }

    /**
     * Starts a description.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Finds the operating point with standard air.
     *
     * @return flows and pressures
     * @throws OutsideBlowerTableException if the blower would have to run outside its table; the
     *     message says which end was passed
     */
    public Airflow solve() {
        return solve(StandardAir.DENSITY, StandardAir.VISCOSITY);
    }

    /**
     * Finds the operating point.
     *
     * @param density air density
     * @param viscosity dynamic viscosity of the air
     * @return flows and pressures
     * @throws IllegalArgumentException if density or viscosity is not physical
     * @throws OutsideBlowerTableException if the blower would have to run outside its table; the
     *     message says which end was passed
     */
    public Airflow solve(Quantity<Density> density, Quantity<DynamicViscosity> viscosity) {
        return solve(
                Si.kilogramsPerCubicMetre(density, "air density"),
                Si.pascalSeconds(viscosity, "dynamic viscosity"));
    }

    /**
     * Finds the operating point for air in a given state.
     *
     * @param air state of the air in the ducts; its density and viscosity count
     * @return flows and pressures
     * @throws IllegalArgumentException if the air is null
     * @throws OutsideBlowerTableException if the blower would have to run outside its table; the
     *     message says which end was passed
     */
    public Airflow solve(MoistAir air) {
        requireGiven(air, "air");
        return solve(air.density(), air.viscosity());
    }

    /**
     * Finds the operating point from SI numbers.
     *
     * @param density air density, kg/m3
     * @param viscosity dynamic viscosity, Pa s
     * @return flows and pressures
     * @throws IllegalArgumentException if density or viscosity is not physical
     * @throws OutsideBlowerTableException if the blower would have to run outside its table; the
     *     message says which end was passed
     */
    public Airflow solve(double density, double viscosity) {
        Network.Workspace w = network.workspace();
        boolean atLimit = operate(network, density, viscosity, w);
        if (description.blower.running().holds == null || atLimit) {
            requireInTable(
                    w,
                    description.blower.running().curve,
                    description.blower.running().name,
                    density / StandardAir.DENSITY);
        }
        return read(w, density, viscosity, density / StandardAir.DENSITY, atLimit, w.steps());
    }

    /**
     * Operating point of this system's network or a changed copy of it. A constant-airflow motor is
     * tried at the flow it holds; if that asks for more pressure than its limit gives, it runs on
     * the limit.
     *
     * @return whether a constant-airflow motor is at its limit
     */
    boolean operate(Network n, double density, double viscosity, Network.Workspace w) {
        Blower.Speed speed = description.blower.running();
        if (speed.holds == null) {
            n.solve(density, viscosity, w);
            return false;
        }
        double ratio = density / StandardAir.DENSITY;
        double target = speed.holds == Blower.Holds.MASS ? speed.held / ratio : speed.held;
        n.withHeldFlow(blowerBranch, target).solve(density, viscosity, w);
        if (rise(w) <= ratio * speed.curve.pressureBeyond(target)) {
            return false;
        }
        w.cool();
        n.solve(density, viscosity, w);
        return true;
    }

    /** Whether a flow lies within the table of the running speed. */
    boolean inTable(double q) {
        BlowerCurve c = description.blower.running().curve;
        double slack = 1e-9 * c.highestFlow();
        return q >= c.lowestFlow() - slack && q <= c.highestFlow() + slack;
    }

    int blowerBranch() {
        return blowerBranch;
    }

    int filterBranch() {
        return filterBranch;
    }

    /** The six numbers of a run's branch, register included. */
    double[] numbersOf(String name) {
        for (Trunk t : description.trunks) {
            if (t.name.equals(name)) {
                return numbers(name, t.duct, 0);
            }
        }
        Run r = description.run(name);
        return numbers(name, r.duct, r.register.coefficientOn(r.duct.shape().areaSi()));
    }

    int branchOf(String name) {
        return network.branch(name);
    }

    private double rise(Network.Workspace w) {
        return w.pressure(network.to(blowerBranch)) - w.pressure(network.from(blowerBranch));
    }

    private void requireInTable(
            Network.Workspace w, BlowerCurve curve, String speed, double ratio) {
        double q = w.flow(blowerBranch);
        double slack = 1e-9 * curve.highestFlow();
        String at =
                q
                        + " m3/s and "
                        + rise(w)
                        + " Pa, but the table of speed \""
                        + speed
                        + "\" runs from "
                        + curve.lowestFlow()
                        + " m3/s at "
                        + ratio * curve.highestPressure()
                        + " Pa to "
                        + curve.highestFlow()
                        + " m3/s at "
                        + ratio * curve.lowestPressure()
                        + " Pa at this air density";
        if (q > curve.highestFlow() + slack) {
            throw new OutsideBlowerTableException(
                    "blower past the low-pressure end of its table: the ducts would take "
                            + at
                            + "; extend the table to lower external static pressure");
        }
        if (q < curve.lowestFlow() - slack) {
            throw new OutsideBlowerTableException(
                    "blower past the high-pressure end of its table: the ducts would leave it "
                            + at
                            + "; the ducts are too tight, or too many registers are shut");
        }
    }

    private Airflow read(
            Network.Workspace w,
            double density,
            double viscosity,
            double ratio,
            boolean atLimit,
            int steps) {
        double total = w.flow(blowerBranch);
        double rise = rise(w);
        double[] balance = new double[network.nodeCount()];
        for (int i = 0; i < network.branchCount(); i++) {
            balance[network.from(i)] -= w.flow(i);
            balance[network.to(i)] += w.flow(i);
        }
        double imbalance = 0;
        Map<String, Double> pressures = new LinkedHashMap<>();
        for (int i = 0; i < balance.length; i++) {
            String n = network.nodeName(i);
            if (n.startsWith("@room ")) {
                pressures.put(n.substring(6), w.pressure(i));
            } else if (!n.startsWith("@")) {
                pressures.put(n, w.pressure(i));
            }
            if (!n.equals("@house") && !n.startsWith("@place ")) {
                imbalance = Math.max(imbalance, Math.abs(balance[i]) / total);
            }
        }
        List<RunFlow> runs = new ArrayList<>();
        Map<String, Double> trunks = new LinkedHashMap<>();
        List<VelocityAdvice> advice = new ArrayList<>();
        for (int i = 0; i < trunkBranch.length; i++) {
            Trunk t = description.trunks.get(i);
            double q = w.flow(trunkBranch[i]);
            trunks.put(t.name, q);
            VelocityLimits.trunk(
                    advice,
                    t.name,
                    t.duct,
                    supplyNodes.contains(t.from),
                    Math.abs(q) / t.duct.shape().areaSi());
        }
        for (int i = 0; i < runBranch.length; i++) {
            Run r = description.runs.get(i);
            double q = w.flow(runBranch[i]);
            RunFlow f =
                    new RunFlow(
                            r.name,
                            r.room,
                            r.supply,
                            q,
                            density,
                            r.duct.shape().areaSi(),
                            r.register.freeAreaSi() * r.register.passable(),
                            w.pressure(runNode[i]),
                            r.designFlow);
            runs.add(f);
            VelocityLimits.run(advice, r, f);
        }
        Map<Place, Double> supplyLeak = new EnumMap<>(Place.class);
        Map<Place, Double> returnLeak = new EnumMap<>(Place.class);
        Map<String, Map<Place, Double>> returnLeakByNode = new LinkedHashMap<>();
        for (int k = 0; k < description.leaks.size(); k++) {
            Leak l = description.leaks.get(k);
            double q = w.flow(leakBranch[k]);
            if (supplyNodes.contains(l.node)) {
                supplyLeak.merge(l.leak.place(), q, Double::sum);
            } else {
                returnLeak.merge(l.leak.place(), q, Double::sum);
                returnLeakByNode
                        .computeIfAbsent(l.node, n -> new EnumMap<>(Place.class))
                        .merge(l.leak.place(), q, Double::sum);
            }
        }
        return new Airflow(
                density,
                viscosity,
                total,
                rise,
                filterBranch < 0 ? 0 : drop(w, filterBranch),
                coilBranch < 0 ? 0 : drop(w, coilBranch),
                description.blower.powerSi(total, rise, ratio),
                atLimit,
                imbalance,
                steps,
                Collections.unmodifiableList(runs),
                trunks,
                pressures,
                supplyLeak,
                returnLeak,
                returnLeakByNode,
                Collections.unmodifiableList(advice));
    }

    private double drop(Network.Workspace w, int branch) {
        return w.pressure(network.from(branch)) - w.pressure(network.to(branch));
    }

    /**
     * The description, to be changed and built again.
     *
     * @return a builder holding all of this system
     */
    public Builder toBuilder() {
        return description.copy();
    }

    /**
     * The compiled network, for many solutions without objects.
     *
     * @return network of total pressures, in which the blower stands at its table whatever its
     *     motor
     */
    public Network network() {
        return network;
    }

    /**
     * The same system with all registers and grilles fully open.
     *
     * @return changed copy
     */
    public DuctSystem withRegistersOpened() {
        Builder b = description.copy();
        b.runs.replaceAll(r -> withRegister(r, r.register.opened()));
        return b.build();
    }

    /**
     * The same system with one register or grille fully open.
     *
     * @param run name of its run
     * @return changed copy
     * @throws IllegalArgumentException if there is no such run
     */
    public DuctSystem withRegisterOpened(String run) {
        return withRegister(run, description.run(run).register.opened());
    }

    /**
     * The same system with one register or grille shut.
     *
     * @param run name of its run
     * @return changed copy
     * @throws IllegalArgumentException if there is no such run, or the air has no way left
     */
    public DuctSystem withRegisterShut(String run) {
        return withRegister(run, description.run(run).register.shut());
    }

    /**
     * The same system with another register or grille.
     *
     * @param run name of its run
     * @param register the new register
     * @return changed copy
     * @throws IllegalArgumentException if there is no such run, or the air has no way left
     */
    public DuctSystem withRegister(String run, Register register) {
        description.run(run);
        requireGiven(register, "register");
        Builder b = description.copy();
        b.runs.replaceAll(r -> r.name.equals(run) ? withRegister(r, register) : r);
        return b.build();
    }

    private static Run withRegister(Run r, Register g) {
        return new Run(r.name, r.supply, r.node, r.room, r.duct, g, r.designFlow);
    }

    /**
     * The same system with another filter.
     *
     * @param filter the new filter
     * @return changed copy
     * @throws IllegalArgumentException if the filter is null
     */
    public DuctSystem withFilter(Filter filter) {
        requireGiven(filter, "filter");
        Builder b = description.copy();
        b.filter = filter;
        return b.build();
    }

    /**
     * The same system without a filter.
     *
     * @return changed copy
     */
    public DuctSystem withoutFilter() {
        Builder b = description.copy();
        b.filter = null;
        return b.build();
    }

    /**
     * The same system with another coil.
     *
     * @param coil the new coil
     * @return changed copy
     * @throws IllegalArgumentException if the coil is null
     */
    public DuctSystem withCoil(WetCoil coil) {
        requireGiven(coil, "coil");
        Builder b = description.copy();
        b.coil = coil;
        return b.build();
    }

    /**
     * The same system with another blower.
     *
     * @param blower the new blower
     * @return changed copy
     * @throws IllegalArgumentException if the blower is null
     */
    public DuctSystem withBlower(Blower blower) {
        requireGiven(blower, "blower");
        Builder b = description.copy();
        b.blower = blower;
        return b.build();
    }

    /**
     * The same system with its blower at another speed.
     *
     * @param speed name of the speed
     * @return changed copy
     * @throws IllegalArgumentException if the blower has no such speed
     */
    public DuctSystem withBlowerSpeed(String speed) {
        return withBlower(description.blower.withSpeed(speed));
    }

    /**
     * The same system with another duct in a trunk, a run or a return.
     *
     * @param name name of the trunk, run or return
     * @param duct the new duct
     * @return changed copy
     * @throws IllegalArgumentException if there is no such part
     */
    public DuctSystem withDuct(String name, Duct duct) {
        requireGiven(duct, "duct");
        Builder b = description.copy();
        boolean found = false;
        for (int i = 0; i < b.trunks.size(); i++) {
            Trunk t = b.trunks.get(i);
            if (t.name.equals(name)) {
                b.trunks.set(i, new Trunk(t.name, t.from, t.to, duct));
                found = true;
            }
        }
        for (int i = 0; i < b.runs.size(); i++) {
            Run r = b.runs.get(i);
            if (r.name.equals(name)) {
                b.runs.set(
                        i,
                        new Run(r.name, r.supply, r.node, r.room, duct, r.register, r.designFlow));
                found = true;
            }
        }
        if (!found) {
            throw new IllegalArgumentException(
                    "there is no trunk, run or return \"" + name + "\"; known are " + b.taken);
        }
        return b.build();
    }

    /** The same system with all its ducts replaced, by name of trunk or run. */
    DuctSystem withDucts(Map<String, Duct> ducts) {
        Builder b = description.copy();
        b.trunks.replaceAll(t -> new Trunk(t.name, t.from, t.to, ducts.get(t.name)));
        b.runs.replaceAll(
                r ->
                        new Run(
                                r.name,
                                r.supply,
                                r.node,
                                r.room,
                                ducts.get(r.name),
                                r.register,
                                r.designFlow));
        return b.build();
    }

    /**
     * The same system with a number of equal supply runs added, of galvanised round duct with the
     * losses of a usual branch (take-off 0.5, two elbows of 0.2, boot 0.5: common practice, no
     * source) and a usual register whose free area is that of the duct.
     *
     * @param count how many, in [1, 50]
     * @param diameter nominal round diameter
     * @param length length of each
     * @param fromNode supply plenum or node of a supply trunk
     * @param room room served
     * @return changed copy; the runs are called "added run 1", "added run 2", ...
     * @throws IllegalArgumentException if a number is out of range or there is no such node
     */
    public DuctSystem withAddedRuns(
            int count,
            Quantity<Length> diameter,
            Quantity<Length> length,
            String fromNode,
            String room) {
        Duct duct = addedDuct(diameter, length);
        return withAddedRuns(count, duct, addedRegister(duct), fromNode, room);
    }

    /** The duct of an added run. */
    static Duct addedDuct(Quantity<Length> diameter, Quantity<Length> length) {
        return Duct.of(DuctShape.round(diameter), length, DuctMaterial.GALVANIZED)
                .withFitting(Fitting.ofCoefficient("take-off", 0.5, "common practice, no source"))
                .withFitting(Fitting.ofCoefficient("two elbows", 0.4, "common practice, no source"))
                .withFitting(Fitting.ofCoefficient("boot", 0.5, "common practice, no source"));
    }

    /** A register whose free area is that of the duct. */
    static Register addedRegister(Duct duct) {
        double side = Math.sqrt(duct.shape().areaSi() / 0.7);
        return Register.of(
                dev.thinair.units.Units.metres(side), dev.thinair.units.Units.metres(side));
    }

    /**
     * The same system with a number of equal supply runs added.
     *
     * @param count how many, in [1, 50]
     * @param duct duct of each
     * @param register register of each
     * @param fromNode supply plenum or node of a supply trunk
     * @param room room served
     * @return changed copy; the runs are called "added run 1", "added run 2", ...
     * @throws IllegalArgumentException if a number is out of range or there is no such node
     */
    public DuctSystem withAddedRuns(
            int count, Duct duct, Register register, String fromNode, String room) {
        Range.require("number of added runs", count, 1, 50, "");
        Builder b = description.copy();
        Set<String> taken = b.taken;
        int k = 1;
        for (int i = 0; i < count; i++) {
            while (taken.contains("added run " + k)) {
                k++;
            }
            b.supplyRun("added run " + k++, fromNode, room, duct, register);
        }
        return b.build();
    }

    /**
     * The same system with another cross section in a return or return trunk; its grille grows in
     * proportion if it has one.
     *
     * @param name name of the return or return trunk
     * @param shape new cross section
     * @return changed copy
     * @throws IllegalArgumentException if there is no such part, or it is on the supply side
     */
    public DuctSystem withReturnEnlarged(String name, DuctShape shape) {
        requireGiven(shape, "duct shape");
        for (Trunk t : description.trunks) {
            if (t.name.equals(name)) {
                if (supplyNodes.contains(t.from)) {
                    throw new IllegalArgumentException(
                            "\"" + name + "\" is no return but a supply trunk");
                }
                return withDuct(name, t.duct.withShape(shape));
            }
        }
        Run r = description.run(name);
        if (r.supply) {
            throw new IllegalArgumentException("\"" + name + "\" is no return but a supply run");
        }
        double growth = shape.areaSi() / r.duct.shape().areaSi();
        return withDuct(name, r.duct.withShape(shape))
                .withRegister(name, r.register.scaled(growth));
    }

    /**
     * The same system with a return added.
     *
     * @param name its name
     * @param room room it takes air from
     * @param node return plenum or node of a return trunk
     * @param duct its duct
     * @param grille its grille
     * @return changed copy
     * @throws IllegalArgumentException if the name is taken or there is no such node
     */
    public DuctSystem withReturnAdded(
            String name, String room, String node, Duct duct, Register grille) {
        return description.copy().returnRun(name, room, node, duct, grille).build();
    }

    /**
     * The same system with its leaks sealed.
     *
     * @return changed copy
     */
    public DuctSystem withoutLeaks() {
        Builder b = description.copy();
        b.leaks.clear();
        return b.build();
    }

    private static void requireGiven(Object value, String what) {
        if (value == null) {
            throw new IllegalArgumentException(what + " is null");
        }
    }

    Map<String, TransferPath> transfers() {
        return description.transfers;
    }

    boolean hasWyes() {
        return !description.wyes.isEmpty();
    }

    List<Run> runs() {
        return description.runs;
    }

    List<Trunk> trunks() {
        return description.trunks;
    }

    /**
     * Names of all supply runs and returns, in the order given.
     *
     * @return unmodifiable list
     */
    public List<String> runNames() {
        return description.runs.stream().map(Run::name).toList();
    }

    /**
     * Names of all trunks, in the order given.
     *
     * @return unmodifiable list
     */
    public List<String> trunkNames() {
        return description.trunks.stream().map(Trunk::name).toList();
    }

    /**
     * Nodes of the supply side: the supply plenum and the ends of supply trunks.
     *
     * @return unmodifiable set
     */
    public Set<String> supplyNodes() {
        return Collections.unmodifiableSet(supplyNodes);
    }

    /**
     * Register or grille of a run.
     *
     * @param run name of the run
     * @return register as it stands
     * @throws IllegalArgumentException if there is no such run
     */
    public Register register(String run) {
        return description.run(run).register;
    }

    /**
     * Duct of a trunk, run or return.
     *
     * @param part its name
     * @return its duct
     * @throws IllegalArgumentException if there is no such part
     */
    public Duct duct(String part) {
        for (Trunk t : description.trunks) {
            if (t.name.equals(part)) {
                return t.duct;
            }
        }
        return description.run(part).duct;
    }

    /**
     * The blower.
     *
     * @return blower
     */
    public Blower blower() {
        return description.blower;
    }

    /**
     * The filter.
     *
     * @return filter, or empty
     */
    public java.util.Optional<Filter> filter() {
        return java.util.Optional.ofNullable(description.filter);
    }

    /**
     * The coil.
     *
     * @return coil, or empty
     */
    public java.util.Optional<WetCoil> coil() {
        return java.util.Optional.ofNullable(description.coil);
    }

    @Override
    public String toString() {
        long supplies = description.runs.stream().filter(Run::supply).count();
        long shut =
                description.runs.stream()
                        .filter(r -> r.register.position() == Register.Position.SHUT)
                        .count();
        return "duct system with "
                + supplies
                + " supply runs, "
                + (description.runs.size() - supplies)
                + " returns, "
                + description.trunks.size()
                + " trunks, "
                + shut
                + " registers shut; "
                + description.blower;
    }

    /** Collects the parts of a duct system. Not for use by two threads at once. */
    public static final class Builder {
        private Blower blower;
        private Filter filter;
        private WetCoil coil;
        private final Set<String> taken = new LinkedHashSet<>();
        private final List<Trunk> trunks = new ArrayList<>();
        private final List<Run> runs = new ArrayList<>();
        private final List<Leak> leaks = new ArrayList<>();
        private final List<Wye> wyes = new ArrayList<>();
        private final Map<String, Double> stack = new LinkedHashMap<>();
        private final Map<String, TransferPath> transfers = new LinkedHashMap<>();
        private final Map<Place, Double> placePressure = new EnumMap<>(Place.class);

        private Builder() {}

        private Builder copy() {
            Builder b = new Builder();
            b.blower = blower;
            b.filter = filter;
            b.coil = coil;
            b.taken.addAll(taken);
            b.trunks.addAll(trunks);
            b.runs.addAll(runs);
            b.leaks.addAll(leaks);
            b.wyes.addAll(wyes);
            b.stack.putAll(stack);
            b.transfers.putAll(transfers);
            b.placePressure.putAll(placePressure);
            return b;
        }

        private Run run(String name) {
            for (Run r : runs) {
                if (r.name.equals(name)) {
                    return r;
                }
            }
            throw new IllegalArgumentException(
                    "there is no run or return \""
                            + name
                            + "\"; known are "
                            + runs.stream().map(Run::name).toList());
        }

        /**
         * Puts in the blower.
         *
         * @param b the blower
         * @return this
         * @throws IllegalArgumentException if it is null or there is one already
         */
        public Builder blower(Blower b) {
            requireGiven(b, "blower");
            if (blower != null) {
                throw new IllegalArgumentException("the duct system has two blowers");
            }
            blower = b;
            return this;
        }

        /**
         * Puts in the filter, between return plenum and blower.
         *
         * @param f the filter
         * @return this
         * @throws IllegalArgumentException if it is null or there is one already
         */
        public Builder filter(Filter f) {
            requireGiven(f, "filter");
            if (filter != null) {
                throw new IllegalArgumentException("the duct system has two filters");
            }
            filter = f;
            return this;
        }

        /**
         * Puts in the coil, between blower and supply plenum.
         *
         * @param c the coil
         * @return this
         * @throws IllegalArgumentException if it is null or there is one already
         */
        public Builder coil(WetCoil c) {
            requireGiven(c, "coil");
            if (coil != null) {
                throw new IllegalArgumentException("the duct system has two coils");
            }
            coil = c;
            return this;
        }

        /**
         * Adds a trunk between two nodes of one side; a node exists by being named.
         *
         * @param name its name, unique among trunks, runs and returns
         * @param from node where it starts
         * @param to node where it ends
         * @param duct its duct
         * @return this
         * @throws IllegalArgumentException if a name is blank, taken or reserved, or the duct null
         */
        public Builder trunk(String name, String from, String to, Duct duct) {
            requireName(name);
            requireNode(from);
            requireNode(to);
            requireGiven(duct, "duct of trunk \"" + name + "\"");
            if (from.equals(to)) {
                throw new IllegalArgumentException(
                        "trunk \"" + name + "\" starts and ends at node \"" + from + "\"");
            }
            taken.add(name);
            trunks.add(new Trunk(name, from, to, duct));
            return this;
        }

        /**
         * Adds a supply run into a room.
         *
         * @param name its name, unique among trunks, runs and returns
         * @param fromNode supply plenum or node of a supply trunk
         * @param room room it serves
         * @param duct its duct
         * @param register its register
         * @return this
         * @throws IllegalArgumentException if a name is blank, taken or reserved, or a part null
         */
        public Builder supplyRun(
                String name, String fromNode, String room, Duct duct, Register register) {
            return run(name, true, fromNode, room, duct, register);
        }

        /**
         * Adds a return from a room.
         *
         * @param name its name, unique among trunks, runs and returns
         * @param room room it takes air from
         * @param toNode return plenum or node of a return trunk
         * @param duct its duct
         * @param grille its grille
         * @return this
         * @throws IllegalArgumentException if a name is blank, taken or reserved, or a part null
         */
        public Builder returnRun(
                String name, String room, String toNode, Duct duct, Register grille) {
            return run(name, false, toNode, room, duct, grille);
        }

        private Builder run(
                String name,
                boolean supply,
                String node,
                String room,
                Duct duct,
                Register register) {
            requireName(name);
            requireNode(node);
            if (room == null || room.isBlank()) {
                throw new IllegalArgumentException("run \"" + name + "\" names no room");
            }
            requireGiven(duct, "duct of run \"" + name + "\"");
            requireGiven(register, "register of run \"" + name + "\"");
            taken.add(name);
            runs.add(new Run(name, supply, node, room, duct, register, 0));
            return this;
        }

        /**
         * Gives a run the standard airflow it was designed for.
         *
         * @param run its name
         * @param flow standard volume flow, above 0
         * @return this
         * @throws IllegalArgumentException if there is no such run or the flow is out of range
         */
        public Builder designFlow(String run, Quantity<VolumeFlow> flow) {
            double q = Si.cubicMetresPerSecond(flow, "design airflow of " + run);
            Range.requireAbove("design airflow of " + run, q, 0, "m3/s");
            Run r = run(run);
            runs.set(
                    runs.indexOf(r),
                    new Run(r.name, r.supply, r.node, r.room, r.duct, r.register, q));
            return this;
        }

        /**
         * Adds a leak at a node.
         *
         * @param node plenum or node of a trunk
         * @param leak how much, and where to
         * @return this
         * @throws IllegalArgumentException if an argument is null
         */
        public Builder leak(String node, DuctLeak leak) {
            requireNode(node);
            requireGiven(leak, "leak at \"" + node + "\"");
            leaks.add(new Leak(node, leak));
            return this;
        }

        /**
         * Makes a supply wye or tee of three ducts that meet at a node. Its losses follow the flow
         * ratio as it comes out ({@link Network.Builder#divergingWye}); give the ducts no take-off
         * coefficient of their own for it.
         *
         * @param name its name
         * @param branch trunk or run that leaves at an angle
         * @param straight trunk or run that goes straight on, of the size of the common one
         * @param common trunk that brings all the air
         * @param angle between branch and trunk, in [0, 90 degrees]: 90 for a tee, less for a wye
         * @return this
         * @throws IllegalArgumentException if the angle is missing or out of range; building
         *     refuses parts that do not exist or do not meet
         */
        public Builder supplyWye(
                String name, String branch, String straight, String common, Quantity<Angle> angle) {
            return wye(name, branch, straight, common, angle, false);
        }

        /**
         * Makes a return wye or tee of three ducts that meet at a node. Its losses follow the flow
         * ratio as it comes out ({@link Network.Builder#convergingWye}); a slow branch that a fast
         * trunk drags along gains, as much as it may be.
         *
         * @param name its name
         * @param branch trunk or return that joins at an angle
         * @param straight trunk or return that goes straight on, of the size of the common one
         * @param common trunk that takes all the air
         * @param angle between branch and trunk, in [0, 90 degrees]: 90 for a tee, less for a wye
         * @return this
         * @throws IllegalArgumentException if the angle is missing or out of range; building
         *     refuses parts that do not exist or do not meet
         */
        public Builder returnWye(
                String name, String branch, String straight, String common, Quantity<Angle> angle) {
            return wye(name, branch, straight, common, angle, true);
        }

        private Builder wye(
                String name,
                String branch,
                String straight,
                String common,
                Quantity<Angle> angle,
                boolean back) {
            double a = Si.radians(angle, "angle of wye \"" + name + "\"");
            Range.require("angle of wye \"" + name + "\"", a, 0, Math.PI / 2, "rad");
            wyes.add(new Wye(name, branch, straight, common, a, back));
            return this;
        }

        /**
         * Closes the door of a room: its air returns to the rest of the house by this path only.
         *
         * @param room room served by a run
         * @param path the way back
         * @return this
         * @throws IllegalArgumentException if the room has a path already, or an argument is null
         */
        public Builder transfer(String room, TransferPath path) {
            if (room == null || room.isBlank()) {
                throw new IllegalArgumentException("a transfer path names no room");
            }
            requireGiven(path, "transfer path of room \"" + room + "\"");
            if (transfers.putIfAbsent(room, path) != null) {
                throw new IllegalArgumentException("room \"" + room + "\" has two transfer paths");
            }
            return this;
        }

        /**
         * Sets the pressure of a place against the house, by stack effect or wind.
         *
         * @param place the place
         * @param pressure gauge pressure, in [-200, 200 Pa]
         * @return this
         * @throws IllegalArgumentException if the place is null or the pressure out of range
         */
        public Builder placePressure(Place place, Quantity<Pressure> pressure) {
            requireGiven(place, "place");
            double p = Si.pascals(pressure, "pressure of " + place);
            Range.require("pressure of " + place, p, -200, 200, "Pa");
            placePressure.put(place, p);
            return this;
        }

        /**
         * Gives the stack effect along a riser: the weight of the air beside it less that of the
         * air in it, {@code g h (rho_beside - rho_inside)}.
         *
         * @param part trunk, run or return given before
         * @param pressure gain in the direction in which it was given (supply runs into their room,
         *     returns out of it), in [-100, 100 Pa]; below 0 for cold air that has to rise
         * @return this
         * @throws IllegalArgumentException if there is no such part or the pressure is out of range
         */
        public Builder stackPressure(String part, Quantity<Pressure> pressure) {
            if (!taken.contains(part)) {
                throw new IllegalArgumentException(
                        "there is no trunk, run or return \"" + part + "\"; known are " + taken);
            }
            double p = Si.pascals(pressure, "stack pressure of " + part);
            Range.require("stack pressure of " + part, p, -100, 100, "Pa");
            stack.put(part, p);
            return this;
        }

        private void requireName(String name) {
            if (name == null || name.isBlank() || name.startsWith("@")) {
                throw new IllegalArgumentException(
                        "a trunk or run needs a name that does not start with @, not \""
                                + name
                                + "\"");
            }
            if (taken.contains(name)) {
                throw new IllegalArgumentException(
                        "there are two trunks or runs named \"" + name + "\"");
            }
        }

        private static void requireNode(String node) {
            if (node == null || node.isBlank() || node.startsWith("@")) {
                throw new IllegalArgumentException(
                        "a node needs a name that does not start with @, not \"" + node + "\"");
            }
        }

        /**
         * Finishes the description and compiles it.
         *
         * @return the duct system
         * @throws IllegalArgumentException if the blower, supply or return is missing, a part hangs
         *     loose, or all registers are shut tight
         */
        public DuctSystem build() {
            return new DuctSystem(copy());
        }
    }
}
