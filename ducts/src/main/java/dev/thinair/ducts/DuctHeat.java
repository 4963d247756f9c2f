package dev.thinair.ducts;

import dev.thinair.ducts.kernel.DeliveryEffectiveness;
import dev.thinair.ducts.kernel.DuctConduction;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * What the ducts do to the air's temperature on its way, and how much of the equipment's work
 * arrives. Immutable.
 *
 * <p>Each duct: {@code t_out = t_a + (t_in - t_a) exp(-U A/(m cp))}, its surface from perimeter and
 * length, U from its insulation, its surroundings from the place it runs through. Streams mix
 * adiabatically at nodes. A duct without stated insulation is taken as bare metal, U = 4.15 W/(m2
 * K) (ASHRAE Handbook - Fundamentals, chapter Duct Design, example of an uninsulated duct, from
 * memory).
 */
public final class DuctHeat {

    private static final double BARE = 0.73 * 5.678263341113488;

    private final Map<String, Double> leaving;
    private final double supplyGain;
    private final double returnGain;
    private final double delivered;
    private final double plenum;
    private final double returnMixed;
    private final double effectiveness;
    private final double formula;

    private DuctHeat(
            Map<String, Double> leaving,
            double supplyGain,
            double returnGain,
            double delivered,
            double plenum,
            double returnMixed,
            double effectiveness,
            double formula) {
        this.leaving = leaving;
        this.supplyGain = supplyGain;
        this.returnGain = returnGain;
        this.delivered = delivered;
        this.plenum = plenum;
        this.returnMixed = returnMixed;
        this.effectiveness = effectiveness;
        this.formula = formula;
    }

    /**
     * Follows the air through a solved system.
     *
     * @param system the duct system
     * @param airflow its operating point
     * @param indoor state of the room air, which enters the returns
     * @param supplyPlenum temperature of the air leaving the equipment
     * @param places temperature of each place that ducts run through or leak to; the conditioned
     *     space is at room temperature unless named
     * @return the answer
     * @throws IllegalArgumentException if an argument is null, a temperature is out of range, or a
     *     place is missing whose temperature matters
     * @throws IllegalStateException if air flows backwards through a run or trunk, so that the
     *     paths cannot be followed from the plenum
     */
    public static DuctHeat of(
            DuctSystem system,
            Airflow airflow,
            MoistAir indoor,
            Quantity<Temperature> supplyPlenum,
            Map<Place, Quantity<Temperature>> places) {
        if (system == null || airflow == null || indoor == null || places == null) {
            throw new IllegalArgumentException(
                    "duct system, airflow, indoor air and places are all needed");
        }
        double room = indoor.dryBulbKelvins();
        double tsp = Si.kelvins(supplyPlenum, "supply plenum temperature");
        Range.require("supply plenum temperature", tsp, 230, 400, "K");
        double w = indoor.humidityRatioNumber();
        double cp = Si.joulesPerKilogramKelvin(indoor.specificHeat(), "specific heat") / (1 + w);
        Map<Place, Double> ambient = new HashMap<>();
        places.forEach((p, t) -> ambient.put(p, Si.kelvins(t, "temperature of " + p)));
        ambient.putIfAbsent(Place.CONDITIONED_SPACE, room);
        Walk walk = new Walk(system, airflow, cp, ambient);
        Map<String, Double> leaving = new LinkedHashMap<>();
        double[] supply = walk.supply(tsp, leaving);
        double[] back = walk.back(room, leaving);
        double delivered = supply[0] - supply[1] * cp * room;
        double mass = airflow.kilogramsPerSecond();
        // What the equipment does between the mixed return air and the plenum, fan heat included.
        double equipment = mass * cp * (tsp - back[0]);
        double effectiveness = Math.abs(equipment) < 1e-9 ? Double.NaN : delivered / equipment;
        double as = 1 - airflow.supplyLeakFraction();
        double ar = 1 - airflow.returnLeakFraction();
        double formula = Double.NaN;
        if (Math.abs(tsp - back[0]) >= 1e-3) {
            double zoneS = walk.mean(true);
            double zoneR = walk.mean(false);
            double bs =
                    zoneS == tsp || Double.isNaN(zoneS)
                            ? 1
                            : clamp01((supply[2] - zoneS) / (tsp - zoneS));
            double br =
                    Double.isNaN(zoneR) || zoneR == room
                            ? 1
                            : clamp01((back[1] - zoneR) / (room - zoneR));
            formula =
                    DeliveryEffectiveness.sensible(
                            clamp01(as),
                            clamp01(ar),
                            bs,
                            br,
                            tsp - back[0],
                            Double.isNaN(zoneS) ? 0 : room - zoneS,
                            Double.isNaN(zoneR) ? 0 : room - zoneR);
        }
        return new DuctHeat(
                leaving,
                walk.supplyGain,
                walk.returnGain,
                delivered,
                tsp,
                back[0],
                effectiveness,
                formula);
    }

    private static double clamp01(double x) {
        return Math.max(0, Math.min(1, x));
    }

    /**
     * Air temperature at the end of a trunk, run or return.
     *
     * @param name its name
     * @return temperature
     * @throws IllegalArgumentException if there is no such part
     */
    public Quantity<Temperature> leaving(String name) {
        Double t = leaving.get(name);
        if (t == null) {
            throw new IllegalArgumentException(
                    "there is no trunk, run or return \""
                            + name
                            + "\"; known are "
                            + leaving.keySet());
        }
        return Units.kelvins(t);
    }

    /**
     * Heat that the supply air takes up through duct walls.
     *
     * @return power, negative where the air is warmer than its surroundings
     */
    public Quantity<Power> supplyGain() {
        return Units.watts(supplyGain);
    }

    /**
     * Heat that the return air takes up through duct walls.
     *
     * @return power, negative where the air is warmer than its surroundings
     */
    public Quantity<Power> returnGain() {
        return Units.watts(returnGain);
    }

    /**
     * Sensible heat brought to the rooms by the supply air, negative in cooling.
     *
     * @return power against room temperature
     */
    public Quantity<Power> delivered() {
        return Units.watts(delivered);
    }

    /**
     * Temperature of the mixed air at the equipment's entry.
     *
     * @return temperature after return ducts and return leaks
     */
    public Quantity<Temperature> mixedReturn() {
        return Units.kelvins(returnMixed);
    }

    /**
     * Sensible delivery effectiveness by following the air: heat delivered over what the equipment
     * does between mixed return and plenum. The air that leaks out and the outdoor air that
     * replaces it are charged as the duct test standard does, at the ducts only.
     *
     * @return fraction
     * @throws IllegalStateException if the equipment changes nothing
     */
    public double deliveryEffectiveness() {
        if (Double.isNaN(effectiveness)) {
            throw new IllegalStateException(
                    "plenum and mixed return are at the same temperature: nothing is delivered");
        }
        return effectiveness;
    }

    /**
     * Sensible delivery effectiveness by the formula of ANSI/ASHRAE 152 (from memory), with
     * conduction fractions and zone temperatures averaged over the ducts. It lumps each side into
     * one duct, so it agrees with {@link #deliveryEffectiveness} only about.
     *
     * @return fraction
     * @throws IllegalStateException if the equipment changes nothing
     */
    public double standardDeliveryEffectiveness() {
        if (Double.isNaN(formula)) {
            throw new IllegalStateException(
                    "plenum and mixed return are at the same temperature: nothing is delivered");
        }
        return formula;
    }

    @Override
    public String toString() {
        return "plenum "
                + plenum
                + " K, mixed return "
                + returnMixed
                + " K, delivered "
                + delivered
                + " W, effectiveness "
                + effectiveness;
    }

    /** One pass along the air's way. */
    private static final class Walk {
        private final DuctSystem system;
        private final Airflow airflow;
        private final double cp;
        private final Map<Place, Double> ambient;
        private double supplyGain;
        private double returnGain;
        private double supplyWeight;
        private double supplySum;
        private double returnWeight;
        private double returnSum;

        Walk(DuctSystem system, Airflow airflow, double cp, Map<Place, Double> ambient) {
            this.system = system;
            this.airflow = airflow;
            this.cp = cp;
            this.ambient = ambient;
        }

        private double temperature(Place p) {
            Double t = ambient.get(p);
            if (t == null) {
                throw new IllegalArgumentException("the temperature of the " + p + " is not given");
            }
            return t;
        }

        /**
         * Temperature at the end of a duct; adds up gains and the surface-weighted surroundings.
         */
        private double through(Duct d, double flow, double entering, boolean supply) {
            double mass = flow * airflow.density;
            double surface = d.shape().perimeterSi() * d.lengthSi();
            double u = d.insulationSi() > 0 ? 1 / d.insulationSi() : BARE;
            double ta = temperature(d.place());
            if (mass <= 0) {
                return entering;
            }
            double b = DuctConduction.conductionFraction(surface, u, mass, cp);
            double t = DuctConduction.leavingTemperature(entering, ta, b);
            double gain = mass * cp * (t - entering);
            double weight = d.place().isOutside() ? surface * u : 0;
            if (supply) {
                supplyGain += gain;
                supplyWeight += weight;
                supplySum += weight * ta;
            } else {
                returnGain += gain;
                returnWeight += weight;
                returnSum += weight * ta;
            }
            return t;
        }

        double mean(boolean supply) {
            return supply
                    ? supplyWeight > 0 ? supplySum / supplyWeight : Double.NaN
                    : returnWeight > 0 ? returnSum / returnWeight : Double.NaN;
        }

        /**
         * Enthalpy flow into the rooms (W against 0 K), mass into the rooms, mean temperature at
         * the registers.
         */
        double[] supply(double plenum, Map<String, Double> leaving) {
            Map<String, Double> node = new HashMap<>();
            node.put(DuctSystem.SUPPLY_PLENUM, plenum);
            List<DuctSystem.Trunk> waiting = new ArrayList<>();
            for (DuctSystem.Trunk t : system.trunks()) {
                if (system.supplyNodes().contains(t.from())) {
                    waiting.add(t);
                }
            }
            settle(waiting, node, leaving, true, Map.of(), Map.of());
            double heat = 0;
            double mass = 0;
            for (DuctSystem.Run r : system.runs()) {
                if (!r.supply()) {
                    continue;
                }
                double q = airflow.run(r.name()).cubicMetresPerSecond();
                requireForward(q, r.name());
                double t = through(r.duct(), q, node.get(r.node()), true);
                leaving.put(r.name(), t);
                heat += q * airflow.density * cp * t;
                mass += q * airflow.density;
            }
            return new double[] {heat, mass, mass > 0 ? heat / (mass * cp) : plenum};
        }

        /** Temperature of the mixed air in the return plenum, and of the returns without leaks. */
        double[] back(double room, Map<String, Double> leaving) {
            Map<String, Double> heat = new HashMap<>();
            Map<String, Double> flow = new HashMap<>();
            double ductFlow = 0;
            for (DuctSystem.Run r : system.runs()) {
                if (r.supply()) {
                    continue;
                }
                double q = airflow.run(r.name()).cubicMetresPerSecond();
                requireForward(q, r.name());
                double t = through(r.duct(), q, room, false);
                leaving.put(r.name(), t);
                heat.merge(r.node(), q * t, Double::sum);
                flow.merge(r.node(), q, Double::sum);
                ductFlow += q;
            }
            for (Map.Entry<String, Map<Place, Double>> e : airflow.returnLeakByNode.entrySet()) {
                for (Map.Entry<Place, Double> l : e.getValue().entrySet()) {
                    if (l.getValue() > 0) {
                        heat.merge(e.getKey(), l.getValue() * temperature(l.getKey()), Double::sum);
                        flow.merge(e.getKey(), l.getValue(), Double::sum);
                    }
                }
            }
            List<DuctSystem.Trunk> waiting = new ArrayList<>();
            for (DuctSystem.Trunk t : system.trunks()) {
                if (!system.supplyNodes().contains(t.from())) {
                    waiting.add(t);
                }
            }
            Map<String, Double> node = new HashMap<>();
            settle(waiting, node, leaving, false, heat, flow);
            double mixed = node.get(DuctSystem.RETURN_PLENUM);
            double end =
                    ductFlow > 0 ? room + returnGain / (ductFlow * airflow.density * cp) : room;
            return new double[] {mixed, end};
        }

        /** Mixes node by node in the order of flow: a node is known once all that enters it is. */
        private void settle(
                List<DuctSystem.Trunk> waiting,
                Map<String, Double> node,
                Map<String, Double> leaving,
                boolean supply,
                Map<String, Double> heatIn,
                Map<String, Double> flowIn) {
            Map<String, Double> heat = new HashMap<>(heatIn);
            Map<String, Double> flow = new HashMap<>(flowIn);
            List<DuctSystem.Trunk> left = new ArrayList<>(waiting);
            while (true) {
                // nodes into which no waiting trunk flows are settled
                for (String n : flow.keySet()) {
                    if (!node.containsKey(n) && left.stream().noneMatch(t -> end(t).equals(n))) {
                        node.put(n, heat.get(n) / flow.get(n));
                    }
                }
                DuctSystem.Trunk next = null;
                for (DuctSystem.Trunk t : left) {
                    if (node.containsKey(begin(t))) {
                        next = t;
                        break;
                    }
                }
                if (next == null) {
                    if (!left.isEmpty()) {
                        throw new IllegalStateException(
                                "the air's way cannot be followed through trunk \""
                                        + left.get(0).name()
                                        + "\": no air reaches its start");
                    }
                    return;
                }
                left.remove(next);
                double q = Math.abs(airflow.trunkFlows.get(next.name()));
                double t = through(next.duct(), q, node.get(begin(next)), supply);
                leaving.put(next.name(), t);
                heat.merge(end(next), q * t, Double::sum);
                flow.merge(end(next), q, Double::sum);
            }
        }

        private String begin(DuctSystem.Trunk t) {
            return airflow.trunkFlows.get(t.name()) >= 0 ? t.from() : t.to();
        }

        private String end(DuctSystem.Trunk t) {
            return airflow.trunkFlows.get(t.name()) >= 0 ? t.to() : t.from();
        }

        private static void requireForward(double q, String name) {
            if (q < 0) {
                throw new IllegalStateException(
                        "air flows backwards through \"" + name + "\" (" + q + " m3/s)");
            }
        }
    }
}
