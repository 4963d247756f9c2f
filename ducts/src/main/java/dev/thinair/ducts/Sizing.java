package dev.thinair.ducts;

import dev.thinair.ducts.kernel.DuctLoss;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.FrictionRate;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;

/**
 * Sizes the ducts of a described system for its design flows and balances it.
 *
 * <p>The system gives the layout, lengths, fittings, materials and registers; its present sizes
 * count only through their shape: a rectangular duct keeps its height. Every supply run needs a
 * design flow; returns without one share the total in proportion to their present areas. Standard
 * design flows are turned into actual ones at the air's density.
 *
 * <p>Methods: equal friction (one friction rate everywhere), or a static-pressure budget (the
 * friction rate at which the worst supply and return path together take just the budget, found as a
 * root over the whole layout). Velocity limits make ducts larger where they bind. Sizes are then
 * rounded up to nominal ones.
 *
 * <p>Balancing gives each run the damper coefficient that brings its path at design flow up to the
 * loss of the worst path.
 */
public final class Sizing {

    private static final double INCH = 0.0254;

    /** Nominal round diameters, in. Common practice, no source. */
    private static final double[] NOMINAL_ROUND = {
        4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 40, 44, 48
    };

    /**
     * One sized duct.
     *
     * @param name trunk, run or return
     * @param designFlow actual flow it is sized for
     * @param exactDiameter round diameter by friction rate and velocity limit, before rounding
     * @param shape nominal shape chosen
     * @param velocity mean velocity at design flow
     * @param frictionRate friction rate at design flow in the nominal shape
     */
    public record Sized(
            String name,
            Quantity<VolumeFlow> designFlow,
            Quantity<Length> exactDiameter,
            DuctShape shape,
            Quantity<Speed> velocity,
            Quantity<FrictionRate> frictionRate) {

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s: exact %.2f in., chosen %s",
                    name,
                    exactDiameter.getValue().doubleValue() / INCH,
                    shape);
        }
    }

    /**
     * Everything sized and balanced.
     *
     * @param frictionRate friction rate used
     * @param ducts sized ducts, trunks first
     * @param worstSupply supply run at the end of the supply path with the greatest loss
     * @param worstReturn return at the start of the return path with the greatest loss
     * @param ductLoss loss of those two paths together at design flow, in nominal sizes
     * @param externalStatic that loss with filter and coil: what the blower must give
     * @param damperCoefficients balancing damper of every run and return, as loss coefficient on
     *     its own velocity pressure; 0 on the worst paths
     * @param system the system in nominal sizes, dampers open
     * @param balanced the system in nominal sizes, dampers set
     */
    public record Result(
            Quantity<FrictionRate> frictionRate,
            List<Sized> ducts,
            String worstSupply,
            String worstReturn,
            Quantity<Pressure> ductLoss,
            Quantity<Pressure> externalStatic,
            Map<String, Double> damperCoefficients,
            DuctSystem system,
            DuctSystem balanced) {}

    private final DuctSystem system;
    private final double density;
    private final double viscosity;
    private final double trunkLimit;
    private final double branchLimit;
    private final double returnLimit;
    private final Map<String, Double> flow;

    private Sizing(
            DuctSystem system,
            double density,
            double viscosity,
            double trunkLimit,
            double branchLimit,
            double returnLimit) {
        this.system = system;
        this.density = density;
        this.viscosity = viscosity;
        this.trunkLimit = trunkLimit;
        this.branchLimit = branchLimit;
        this.returnLimit = returnLimit;
        this.flow = designFlows(system, density);
    }

    /**
     * Prepares to size a system for standard air, without velocity limits.
     *
     * @param system layout with design flows
     * @return the sizing
     * @throws IllegalArgumentException if the system is null or has wyes, a supply run has no
     *     design flow, or trunks form a loop
     */
    public static Sizing of(DuctSystem system) {
        return new Sizing(
                requireSystem(system), StandardAir.DENSITY, StandardAir.VISCOSITY, 1e3, 1e3, 1e3);
    }

    private static DuctSystem requireSystem(DuctSystem system) {
        if (system == null) {
            throw new IllegalArgumentException("duct system is null");
        }
        if (system.hasWyes()) {
            throw new IllegalArgumentException(
                    "sizing changes trunks one by one, while a wye is known for a passage that keeps"
                            + " its size: size the system without wyes, then put them in");
        }
        return system;
    }

    /**
     * The same sizing for air in another state.
     *
     * @param air state of the air in the ducts
     * @return changed copy
     * @throws IllegalArgumentException if the air is null
     */
    public Sizing withAir(MoistAir air) {
        if (air == null) {
            throw new IllegalArgumentException("air is null");
        }
        return new Sizing(
                system,
                Si.kilogramsPerCubicMetre(air.density(), "air density"),
                Si.pascalSeconds(air.viscosity(), "dynamic viscosity"),
                trunkLimit,
                branchLimit,
                returnLimit);
    }

    /**
     * The same sizing with velocity limits.
     *
     * @param supplyTrunk greatest velocity in supply trunks
     * @param supplyBranch greatest velocity in supply runs
     * @param returns greatest velocity in returns and return trunks
     * @return changed copy
     * @throws IllegalArgumentException if a limit is not in [0.5, 50 m/s]
     */
    public Sizing withVelocityLimits(
            Quantity<Speed> supplyTrunk, Quantity<Speed> supplyBranch, Quantity<Speed> returns) {
        double t = Si.metresPerSecond(supplyTrunk, "velocity limit of supply trunks");
        double b = Si.metresPerSecond(supplyBranch, "velocity limit of supply runs");
        double r = Si.metresPerSecond(returns, "velocity limit of returns");
        Range.require("velocity limit of supply trunks", t, 0.5, 50, "m/s");
        Range.require("velocity limit of supply runs", b, 0.5, 50, "m/s");
        Range.require("velocity limit of returns", r, 0.5, 50, "m/s");
        return new Sizing(system, density, viscosity, t, b, r);
    }

    /**
     * Sizes by equal friction.
     *
     * @param rate friction rate, in [0.05, 20 Pa/m]
     * @return sizes, dampers and the sized system
     * @throws IllegalArgumentException if the rate is out of range or no nominal size is large
     *     enough
     */
    public Result equalFriction(Quantity<FrictionRate> rate) {
        double r = Si.pascalsPerMetre(rate, "friction rate");
        Range.require("friction rate", r, 0.05, 20, "Pa/m");
        return finish(r);
    }

    /**
     * Sizes for a static-pressure budget: the friction rate at which the worst supply and the worst
     * return path, with their fittings and registers, take just the budget in exact sizes. Rounding
     * up to nominal sizes then leaves some of it unused.
     *
     * @param available static pressure left for ducts and registers, in [1, 500 Pa]
     * @return sizes, dampers and the sized system
     * @throws IllegalArgumentException if the budget is out of range, or registers and fittings
     *     make it impossible at any friction rate between 0.05 and 20 Pa/m
     */
    public Result staticBudget(Quantity<Pressure> available) {
        double p = Si.pascals(available, "available static pressure");
        Range.require("available static pressure", p, 1, 500, "Pa");
        double low = 0.05;
        double high = 20;
        if (pathLoss(exact(low)) > p) {
            throw new IllegalArgumentException(
                    "available static pressure is "
                            + p
                            + " Pa, but even at "
                            + low
                            + " Pa/m of friction the worst paths take "
                            + pathLoss(exact(low))
                            + " Pa: registers and fittings leave nothing for the ducts");
        }
        if (pathLoss(exact(high)) < p) {
            return finish(high);
        }
        // The loss rises with the rate, so halving the bracket (in ln rate) must arrive.
        for (int i = 0; i < 100 && high / low > 1 + 1e-13; i++) {
            double mid = Math.sqrt(low * high);
            if (pathLoss(exact(mid)) > p) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return finish(low);
    }

    /** Actual design flow of every trunk, run and return. */
    private static Map<String, Double> designFlows(DuctSystem s, double density) {
        Map<String, Double> q = new LinkedHashMap<>();
        double ratio = StandardAir.DENSITY / density;
        double total = 0;
        double givenBack = 0;
        double openArea = 0;
        for (DuctSystem.Run r : s.runs()) {
            if (r.supply()) {
                if (!(r.designFlow() > 0)) {
                    throw new IllegalArgumentException(
                            "supply run \"" + r.name() + "\" has no design flow to be sized for");
                }
                q.put(r.name(), r.designFlow() * ratio);
                total += r.designFlow() * ratio;
            } else if (r.designFlow() > 0) {
                q.put(r.name(), r.designFlow() * ratio);
                givenBack += r.designFlow() * ratio;
            } else {
                openArea += r.duct().shape().areaSi();
            }
        }
        for (DuctSystem.Run r : s.runs()) {
            if (!q.containsKey(r.name())) {
                double share = (total - givenBack) * r.duct().shape().areaSi() / openArea;
                if (!(share > 0)) {
                    throw new IllegalArgumentException(
                            "design flows of the returns leave nothing for return \""
                                    + r.name()
                                    + "\"");
                }
                q.put(r.name(), share);
            }
        }
        Map<String, Double> at = new LinkedHashMap<>();
        for (DuctSystem.Run r : s.runs()) {
            at.merge(r.node(), q.get(r.name()), Double::sum);
        }
        collect(s, DuctSystem.SUPPLY_PLENUM, null, at, q, new HashSet<>());
        collect(s, DuctSystem.RETURN_PLENUM, null, at, q, new HashSet<>());
        return q;
    }

    private static double collect(
            DuctSystem s,
            String node,
            DuctSystem.Trunk by,
            Map<String, Double> at,
            Map<String, Double> q,
            Set<String> seen) {
        if (!seen.add(node)) {
            throw new IllegalArgumentException(
                    "trunks form a loop at \"" + node + "\": sizing needs a tree");
        }
        double sum = at.getOrDefault(node, 0.0);
        for (DuctSystem.Trunk t : s.trunks()) {
            if (t != by && (t.from().equals(node) || t.to().equals(node))) {
                String far = t.from().equals(node) ? t.to() : t.from();
                double beyond = collect(s, far, t, at, q, seen);
                if (!(beyond > 0)) {
                    throw new IllegalArgumentException(
                            "trunk \""
                                    + t.name()
                                    + "\" leads to no run, so it has no flow to be sized"
                                    + " for");
                }
                q.put(t.name(), beyond);
                sum += beyond;
            }
        }
        return sum;
    }

    private double limit(String name) {
        for (DuctSystem.Trunk t : system.trunks()) {
            if (t.name().equals(name)) {
                return system.supplyNodes().contains(t.from()) ? trunkLimit : returnLimit;
            }
        }
        for (DuctSystem.Run r : system.runs()) {
            if (r.name().equals(name)) {
                return r.supply() ? branchLimit : returnLimit;
            }
        }
        throw new IllegalStateException(name);
    }

    private Map<String, Duct> ducts() {
        Map<String, Duct> all = new LinkedHashMap<>();
        system.trunks().forEach(t -> all.put(t.name(), t.duct()));
        system.runs().forEach(r -> all.put(r.name(), r.duct()));
        return all;
    }

    private double exactDiameter(String name, Duct d, double rate) {
        double q = flow.get(name);
        double byFriction = d.shape().equivalentDiameterSi();
        // The compression factor of flexible duct depends weakly on the diameter sought.
        for (int i = 0; i < 50; i++) {
            double before = byFriction;
            byFriction =
                    FrictionChart.diameter(
                            q,
                            rate / d.frictionMultiplierAt(before),
                            d.material().roughnessSi(),
                            density,
                            viscosity);
            if (Math.abs(byFriction - before) <= 1e-12 * byFriction) {
                break;
            }
        }
        double byVelocity = Math.sqrt(4 * q / (Math.PI * limit(name)));
        return Math.max(byFriction, byVelocity);
    }

    /** All ducts in exact round sizes. */
    private Map<String, Duct> exact(double rate) {
        Map<String, Duct> all = ducts();
        all.replaceAll(
                (name, d) ->
                        d.withShape(DuctShape.round(Units.metres(exactDiameter(name, d, rate)))));
        return all;
    }

    private DuctShape nominal(String name, Duct d, double exact) {
        double velocityArea = flow.get(name) / limit(name);
        if (d.shape() instanceof DuctShape.Rectangular r) {
            double height = Si.metres(r.height(), "duct height");
            for (int width = 4; width <= 96; width += 2) {
                DuctShape.Rectangular s =
                        DuctShape.rectangular(Units.metres(width * INCH), r.height());
                if (s.equivalentDiameterSi() >= exact && s.areaSi() >= velocityArea * (1 - 1e-12)) {
                    return s;
                }
            }
            throw new IllegalArgumentException(
                    "\""
                            + name
                            + "\" needs a duct of "
                            + exact
                            + " m diameter, for which "
                            + height
                            + " m of height is too flat");
        }
        for (double n : NOMINAL_ROUND) {
            if (n * INCH >= exact * (1 - 1e-12)) {
                return DuctShape.round(Units.metres(n * INCH));
            }
        }
        throw new IllegalArgumentException(
                "\""
                        + name
                        + "\" needs a round duct of "
                        + exact
                        + " m, above the largest nominal size");
    }

    /** Loss of each run's path, from the plenum to the room or from the room to the plenum. */
    private Map<String, Double> paths(Map<String, Duct> ducts) {
        Map<String, Double> toNode = new LinkedHashMap<>();
        spread(ducts, DuctSystem.SUPPLY_PLENUM, null, 0, toNode);
        spread(ducts, DuctSystem.RETURN_PLENUM, null, 0, toNode);
        Map<String, Double> all = new LinkedHashMap<>();
        for (DuctSystem.Run r : system.runs()) {
            Duct d = ducts.get(r.name());
            double c = r.register().coefficientOn(d.shape().areaSi());
            all.put(r.name(), toNode.get(r.node()) + loss(r.name(), d, c));
        }
        return all;
    }

    private void spread(
            Map<String, Duct> ducts,
            String node,
            DuctSystem.Trunk by,
            double loss,
            Map<String, Double> toNode) {
        toNode.put(node, loss);
        for (DuctSystem.Trunk t : system.trunks()) {
            if (t != by && (t.from().equals(node) || t.to().equals(node))) {
                String far = t.from().equals(node) ? t.to() : t.from();
                spread(ducts, far, t, loss + loss(t.name(), ducts.get(t.name()), 0), toNode);
            }
        }
    }

    private double loss(String name, Duct d, double registerCoefficient) {
        double[] v = DuctSystem.numbers(name, d, registerCoefficient);
        return DuctLoss.total(
                flow.get(name), v[0], v[1], v[2], v[3], v[4], v[5], density, viscosity);
    }

    private double pathLoss(Map<String, Duct> ducts) {
        Map<String, Double> p = paths(ducts);
        return p.get(worst(p, true)) + p.get(worst(p, false));
    }

    private String worst(Map<String, Double> paths, boolean supply) {
        String at = null;
        for (DuctSystem.Run r : system.runs()) {
            if (r.supply() == supply && (at == null || paths.get(r.name()) > paths.get(at))) {
                at = r.name();
            }
        }
        return at;
    }

    private Result finish(double rate) {
        Map<String, Duct> chosen = new LinkedHashMap<>();
        List<Sized> list = new ArrayList<>();
        double total = 0;
        for (Map.Entry<String, Duct> e : ducts().entrySet()) {
            String name = e.getKey();
            double exact = exactDiameter(name, e.getValue(), rate);
            DuctShape shape = nominal(name, e.getValue(), exact);
            Duct d = e.getValue().withShape(shape);
            chosen.put(name, d);
            double q = flow.get(name);
            double friction =
                    DuctLoss.total(
                            q,
                            shape.hydraulicDiameterSi(),
                            shape.areaSi(),
                            1,
                            d.material().roughnessSi(),
                            0,
                            d.frictionMultiplier(),
                            density,
                            viscosity);
            list.add(
                    new Sized(
                            name,
                            Units.quantity(q, Units.CUBIC_METRE_PER_SECOND),
                            Units.metres(exact),
                            shape,
                            Units.metresPerSecond(q / shape.areaSi()),
                            Units.quantity(friction, Units.PASCAL_PER_METRE)));
        }
        Map<String, Double> paths = paths(chosen);
        String worstSupply = worst(paths, true);
        String worstReturn = worst(paths, false);
        Map<String, Double> dampers = new LinkedHashMap<>();
        DuctSystem sized = system.withDucts(chosen);
        Map<String, Duct> damped = new LinkedHashMap<>(chosen);
        for (DuctSystem.Run r : sized.runs()) {
            double spare = paths.get(r.supply() ? worstSupply : worstReturn) - paths.get(r.name());
            double v = flow.get(r.name()) / r.duct().shape().areaSi();
            double c = spare / (density * v * v / 2);
            dampers.put(r.name(), c);
            if (c > 0) {
                damped.put(
                        r.name(),
                        r.duct()
                                .withFitting(
                                        Fitting.ofCoefficient(
                                                "balancing damper", c, "set by sizing")));
            }
            if (r.supply()) {
                total += flow.get(r.name());
            }
        }
        double ductLoss = paths.get(worstSupply) + paths.get(worstReturn);
        double q = total;
        double equipment =
                system.filter().map(f -> f.dropSi(q, density)).orElse(0.0)
                        + system.coil().map(c -> c.dropSi(q, density)).orElse(0.0);
        return new Result(
                Units.quantity(rate, Units.PASCAL_PER_METRE),
                List.copyOf(list),
                worstSupply,
                worstReturn,
                Units.pascals(ductLoss),
                Units.pascals(ductLoss + equipment),
                java.util.Collections.unmodifiableMap(dampers),
                sized,
                system.withDucts(damped));
    }
}
