package dev.thinair.loads;

import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.ThermalNetwork;
import dev.thinair.units.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A house as a linear network for simulation in time: {@code C dT/dt = -K T + q(t) + hvac},
 * temperatures in K, heat in W, one air node per room and per unconditioned space, finite volumes
 * in the layers.
 *
 * <p>The forcing {@code q} holds everything that does not depend on the rooms' temperatures:
 * boundary conductance times boundary temperature, sun, people, appliances, lights, outdoor air. It
 * is given at whole hours of local standard time and meant as straight lines between them.
 *
 * <p>Outdoor air's conductance changes with the weather while K is constant. So K holds the
 * conductance of a nominal hour, and the forcing of hour <var>h</var> is {@code G(h) To(h) - (G(h)
 * - Gnom) Tnom}: exact when the room is at the nominal indoor temperature, and off by {@code (G(h)
 * - Gnom)(Tnom - T)} when it is not ({@link #airConductance} gives what is needed to bound that).
 *
 * <p>Made by {@link CompiledHouse#network()}. Immutable.
 */
public final class HouseNetwork {
    private final CompiledHouse compiled;
    private final ThermalNetwork network;
    private final double nominal;
    private final double[] leak; // W/K by zone of the network, held in K
    private final int[] node; // air node of each room of the house

    private HouseNetwork(
            CompiledHouse compiled,
            ThermalNetwork network,
            double nominal,
            double[] leak,
            int[] node) {
        this.compiled = compiled;
        this.network = network;
        this.nominal = nominal;
        this.leak = leak;
        this.node = node;
    }

    /**
     * Cuts a house.
     *
     * @param compiled the house
     * @param nominalIndoor K
     * @param nominalOutdoor K
     * @param wind m/s
     * @param cellTime s
     * @param block whether all conditioned rooms share one air node
     */
    static HouseNetwork of(
            CompiledHouse compiled,
            double nominalIndoor,
            double nominalOutdoor,
            double wind,
            double cellTime,
            boolean block) {
        Range.require("nominal indoor temperature", nominalIndoor, 273.15, 323.15, "K");
        double p = compiled.site.pascals();
        double flow = leakFlow(compiled, nominalIndoor, nominalOutdoor, 0.005, wind, p);
        Ventilation fan = compiled.house.ventilation();
        double fanFlow = fan.supplyDryAirMassFlow(p) * (1 - fan.sensibleEffectiveness());
        double cp = CompiledHouse.CP_AIR + CompiledHouse.CP_VAPOUR * 0.005;
        int[] node = nodes(compiled, block);
        int zones = 0;
        for (int z : node) {
            zones = Math.max(zones, z + 1);
        }
        double[] leak = new double[zones];
        for (int z = 0; z < node.length; z++) {
            leak[node[z]] += cp * (flow * compiled.leakShare[z] + fanFlow * compiled.fanShare[z]);
        }
        int[] boundaryOf = new int[compiled.uses.length];
        for (int w = 0; w < boundaryOf.length; w++) {
            boundaryOf[w] = compiled.uses[w].boundary;
        }
        return new HouseNetwork(
                compiled,
                ThermalNetwork.of(
                        block ? compiled.model.joined(node) : compiled.model,
                        boundaryOf,
                        compiled.boundaries.length,
                        leak,
                        cellTime),
                nominalIndoor,
                leak,
                node);
    }

    private static int[] nodes(CompiledHouse compiled, boolean block) {
        int[] node = new int[compiled.model.zones()];
        int next = block ? 1 : 0;
        for (int z = 0; z < node.length; z++) {
            node[z] = block && compiled.model.held(z) ? 0 : next++;
        }
        return node;
    }

    private static double leakFlow(
            CompiledHouse c,
            double indoor,
            double outdoor,
            double humidityRatio,
            double wind,
            double p) {
        return c.house
                .ventilation()
                .combinedInfiltration(
                        c.house
                                .infiltration()
                                .dryAirMassFlow(indoor, outdoor, humidityRatio, wind, p),
                        p);
    }

    /**
     * The compiled house it stands for.
     *
     * @return compiled house
     */
    public CompiledHouse house() {
        return compiled;
    }

    /**
     * The network in numbers.
     *
     * @return network
     */
    public ThermalNetwork network() {
        return network;
    }

    /**
     * Number of nodes.
     *
     * @return nodes
     */
    public int size() {
        return network.size();
    }

    /**
     * Names of rooms and unconditioned spaces.
     *
     * @return names
     */
    public List<String> spaces() {
        List<String> names = new ArrayList<>();
        for (Room room : compiled.house.rooms()) {
            names.add(room.name());
        }
        return List.copyOf(names);
    }

    /**
     * Names of the conditioned rooms.
     *
     * @return names
     */
    public List<String> rooms() {
        return compiled.rooms();
    }

    /**
     * Node of a room's air.
     *
     * @param space name of a room or unconditioned space
     * @return index of the node
     * @throws IllegalArgumentException if there is none of that name
     */
    public int airNode(String space) {
        List<Room> all = compiled.house.rooms();
        for (int z = 0; z < all.size(); z++) {
            if (all.get(z).name().equals(space)) {
                return node[z];
            }
        }
        throw new IllegalArgumentException(
                "there is no room \"" + space + "\" in house \"" + compiled.house.name() + "\"");
    }

    /**
     * Nodes of the conditioned rooms' air, in the order of {@link #rooms}; all the same in a block
     * network.
     *
     * @return indices, a fresh copy
     */
    public int[] airNodes() {
        List<String> names = rooms();
        int[] nodes = new int[names.size()];
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = airNode(names.get(i));
        }
        return nodes;
    }

    /**
     * Volume of the conditioned rooms' air.
     *
     * @return volume, m3
     */
    public double airVolume() {
        double sum = 0;
        for (Room room : compiled.house.rooms()) {
            if (room.conditioned()) {
                sum += room.volumeCubicMetres();
            }
        }
        return sum;
    }

    /**
     * Heat capacities.
     *
     * @return capacities by node, J/K, each above 0, a fresh copy
     */
    public double[] capacity() {
        return network.capacity();
    }

    /**
     * Conductance matrix: off-diagonal minus the conductance between two nodes, diagonal their sum
     * plus conductances to boundaries; symmetric, positive definite.
     *
     * @return matrix, W/K, a fresh copy
     */
    public double[][] conductance() {
        return network.conductance();
    }

    /**
     * Indoor temperature at which outdoor air is reckoned exactly.
     *
     * @return temperature, K
     */
    public double nominalIndoor() {
        return nominal;
    }

    /**
     * Conductance of outdoor air held in K.
     *
     * @return conductance of the whole house, W/K
     */
    public double nominalAirConductance() {
        double sum = 0;
        for (double g : leak) {
            sum += g;
        }
        return sum;
    }

    /**
     * Conductance of outdoor air (infiltration and ventilation) hour by hour.
     *
     * @param hours outdoor hours
     * @return conductance of the whole house at each mark, W/K
     */
    public double[] airConductance(OutdoorHours hours) {
        Ventilation fan = compiled.house.ventilation();
        double p = hours.pressure();
        double fanFlow = fan.supplyDryAirMassFlow(p) * (1 - fan.sensibleEffectiveness());
        double[] flow = infiltration(hours);
        for (int h = 0; h < flow.length; h++) {
            double cp = CompiledHouse.CP_AIR + CompiledHouse.CP_VAPOUR * hours.humidityRatio(h);
            flow[h] = cp * (flow[h] + fanFlow);
        }
        return flow;
    }

    /**
     * Infiltration at the nominal indoor temperature, hour by hour.
     *
     * @param hours outdoor hours
     * @return dry-air mass flow of the whole house at each mark, kg/s
     */
    public double[] infiltration(OutdoorHours hours) {
        double[] flow = new double[hours.count()];
        for (int h = 0; h < flow.length; h++) {
            flow[h] =
                    leakFlow(
                            compiled,
                            nominal,
                            hours.dryBulb(h),
                            hours.humidityRatio(h),
                            hours.windSpeed(h),
                            hours.pressure());
        }
        return flow;
    }

    /**
     * Outdoor dry air that carries its moisture into the house, hour by hour: infiltration and what
     * ventilation brings after its latent recovery.
     *
     * @param hours outdoor hours
     * @return dry-air mass flow of the whole house at each mark, kg/s
     */
    public double[] moistureExchange(OutdoorHours hours) {
        Ventilation fan = compiled.house.ventilation();
        double fanFlow =
                fan.supplyDryAirMassFlow(hours.pressure()) * (1 - fan.latentEffectiveness());
        double[] flow = infiltration(hours);
        for (int h = 0; h < flow.length; h++) {
            flow[h] += fanFlow;
        }
        return flow;
    }

    /**
     * Moisture that people and appliances give off, hour by hour: latent heat over 2.454 MJ/kg, the
     * heat of vaporization at 20 C (2501 - 2.36 x 20 kJ/kg, ASHRAE Fundamentals 2021, ch. 1, from
     * memory).
     *
     * @param hours outdoor hours; only their clock counts
     * @return moisture of the conditioned rooms at each mark, kg/s
     */
    public double[] moistureGain(OutdoorHours hours) {
        double[] gain = new double[hours.count()];
        for (Room room : compiled.house.rooms()) {
            if (!room.conditioned()) {
                continue;
            }
            for (InternalGain one : room.gains()) {
                for (int h = 0; h < gain.length; h++) {
                    gain[h] += one.latent(hours.hourOfDay(h)) / 2.454e6;
                }
            }
        }
        return gain;
    }

    /**
     * Forcing over a design day.
     *
     * @param day the day
     * @return heat into each node at each of the 24 hour marks, {@code [hour][node]}, W
     */
    public double[][] forcing(CoolingDesignDay day) {
        return forcing(day.outdoorHours());
    }

    /**
     * Forcing over a series of hours of weather.
     *
     * @param weather hourly weather
     * @return heat into each node at each hour mark, {@code [hour][node]}, W
     */
    public double[][] forcing(HourlyWeather weather) {
        return forcing(weather.outdoorHours());
    }

    /**
     * Forcing over outdoor hours.
     *
     * @param hours design day or longer
     * @return heat into each node at each hour mark, {@code [hour][node]}, W
     */
    public double[][] forcing(OutdoorHours hours) {
        int n = hours.count();
        int zones = node.length;
        double[][] u = new double[network.inputs()][n];
        double outside = compiled.house.coolingFilms().outside();
        for (int b = 0; b < compiled.boundaries.length; b++) {
            compiled.boundaries[b].fill(hours, outside, false, u[network.boundaryInput(b)]);
        }
        double[] series = new double[n];
        for (CompiledHouse.GlassUse glass : compiled.survey.glasses) {
            glass.window.solarGain(
                    hours, glass.surface.azimuthRadians(), glass.surface.tiltRadians(), series);
            double share = glass.window.solarRadiantFraction();
            double[] sun = u[network.sunInput(node[glass.zone])];
            double[] air = u[network.airInput(node[glass.zone])];
            for (int h = 0; h < n; h++) {
                sun[h] += share * series[h];
                air[h] += (1 - share) * series[h];
            }
        }
        for (int z = 0; z < zones; z++) {
            double[] radiant = u[network.radiantInput(node[z])];
            double[] air = u[network.airInput(node[z])];
            for (InternalGain gain : compiled.house.rooms().get(z).gains()) {
                double share = gain.radiantFraction();
                for (int h = 0; h < n; h++) {
                    double q = gain.sensible(hours.hourOfDay(h));
                    radiant[h] += share * q;
                    air[h] += (1 - share) * q;
                }
            }
        }
        double[] flow = infiltration(hours);
        Ventilation fan = compiled.house.ventilation();
        double fanFlow =
                fan.supplyDryAirMassFlow(hours.pressure()) * (1 - fan.sensibleEffectiveness());
        for (int h = 0; h < n; h++) {
            double cp = CompiledHouse.CP_AIR + CompiledHouse.CP_VAPOUR * hours.humidityRatio(h);
            double outdoor = hours.dryBulb(h);
            for (int z = 0; z < zones; z++) {
                double g = cp * (flow[h] * compiled.leakShare[z] + fanFlow * compiled.fanShare[z]);
                u[network.airInput(node[z])][h] +=
                        g * (outdoor - nominal) + compiled.model.airConductance(z) * outdoor;
            }
            for (int z = 0; z < leak.length; z++) {
                u[network.airInput(z)][h] += leak[z] * nominal;
            }
        }
        double[][] q = new double[n][network.size()];
        double[] now = new double[network.inputs()];
        for (int h = 0; h < n; h++) {
            for (int j = 0; j < now.length; j++) {
                now[j] = u[j][h];
            }
            network.forcing(now, q[h]);
        }
        return q;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "network of %s: %d nodes, %d air nodes, outdoor air %.1f W/K at %.1f C",
                compiled.house.name(),
                size(),
                leak.length,
                nominalAirConductance(),
                nominal - 273.15);
    }
}
