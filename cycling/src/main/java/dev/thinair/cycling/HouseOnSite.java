package dev.thinair.cycling;

import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.HouseNetwork;
import dev.thinair.loads.Setpoint;
import dev.thinair.loads.kernel.OpenDoorway;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;

/** A compiled house and its design day. What is found is kept; any thread may share it. */
final class HouseOnSite implements Building {

    /** Finite volumes as thick as heat gets in this time, s: coarse enough for many runs. */
    private static final double CELL_TIME = 3600;

    /** What the reduced model may lose of an effect on a room's air. */
    private static final double MODEL_TOLERANCE = 1e-4;

    private static final double INDOORS = 297.15; // K

    private final CompiledHouse house;
    private final CoolingDesignDay day;
    private final HouseNetwork network;
    private final ModalHouse modal;
    private final int[] airNodes;
    private final double[][] forcing;
    private final OutdoorHours hours;
    private final ConcurrentHashMap<Double, DesignLoad> loads = new ConcurrentHashMap<>();

    /**
     * Makes one.
     *
     * @param doorway width and height of the doorway between each room and the hub, m; none if null
     * @param hub room that the others open to; the largest if null
     */
    HouseOnSite(
            CompiledHouse house,
            CoolingDesignDay day,
            double contents,
            double[] doorway,
            String hub) {
        this.house = house;
        this.day = day;
        network = house.network(Units.celsius(24), Units.seconds(CELL_TIME));
        double[] capacity = network.capacity();
        airNodes = network.airNodes();
        for (int node : airNodes) {
            capacity[node] *= contents;
        }
        double[][] conductance = network.conductance();
        if (doorway != null) {
            openDoors(conductance, capacity, doorway, hub, day.outdoorHours().pressure());
        }
        modal = ModalHouse.reduced(capacity, conductance, airNodes, MODEL_TOLERANCE);
        forcing = network.forcing(day);
        hours = day.outdoorHours();
    }

    /** Adds the exchange through open doorways between the air nodes. */
    private void openDoors(
            double[][] conductance,
            double[] capacity,
            double[] doorway,
            String hub,
            double pressure) {
        int centre = airNodes[0];
        for (int room = 0; room < airNodes.length; room++) {
            if (hub == null
                    ? capacity[airNodes[room]] > capacity[centre]
                    : network.rooms().get(room).equals(hub)) {
                centre = airNodes[room];
            }
        }
        double density = IdealMoistAir.density(INDOORS, 0, pressure);
        double g = OpenDoorway.conductance(doorway[0], doorway[1], 1, INDOORS, density);
        for (int node : airNodes) {
            if (node != centre) {
                conductance[node][node] += g;
                conductance[centre][centre] += g;
                conductance[node][centre] -= g;
                conductance[centre][node] -= g;
            }
        }
    }

    @Override
    public ModalHouse modal() {
        return modal;
    }

    @Override
    public List<String> rooms() {
        return network.rooms();
    }

    @Override
    public int airNode(int room) {
        return airNodes[room];
    }

    @Override
    public double airVolume() {
        return network.airVolume();
    }

    @Override
    public double pressure() {
        return hours.pressure();
    }

    @Override
    public HouseDrive designDay(double moistureCapacity) {
        return drive(hours, forcing, true, moistureCapacity);
    }

    @Override
    public HouseDrive season(HourlyWeather weather, double moistureCapacity) {
        OutdoorHours series = weather.outdoorHours();
        return drive(series, network.forcing(weather), false, moistureCapacity);
    }

    private HouseDrive drive(
            OutdoorHours series, double[][] heat, boolean periodic, double moistureCapacity) {
        int n = series.count();
        double[] dryBulb = new double[n];
        double[] humidityRatio = new double[n];
        for (int h = 0; h < n; h++) {
            dryBulb[h] = series.dryBulb(h);
            humidityRatio[h] = series.humidityRatio(h);
        }
        return HouseDrive.of(
                3600,
                periodic,
                heat,
                dryBulb,
                humidityRatio,
                network.moistureExchange(series),
                network.moistureGain(series),
                moistureCapacity);
    }

    @Override
    public double outdoorDryBulb(int hour) {
        return hours.dryBulb(hour);
    }

    @Override
    public double outdoorHumidityRatio(int hour) {
        return hours.humidityRatio(hour);
    }

    private DesignLoad load(double setpoint) {
        return loads.computeIfAbsent(
                setpoint, t -> house.coolingLoad(day, Setpoint.of(Units.kelvins(t))));
    }

    @Override
    public double[] sensibleLoad(double setpoint) {
        return load(setpoint).sensibleWatts();
    }

    @Override
    public double[] latentLoad(double setpoint) {
        return load(setpoint).latentWatts();
    }

    @Override
    public double[] roomPeaks(double setpoint) {
        DesignLoad load = load(setpoint);
        double[] peaks = new double[rooms().size()];
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = Si.watts(load.roomPeak(rooms().get(i)), "room peak");
        }
        return peaks;
    }
}
