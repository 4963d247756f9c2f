package dev.thinair.loads;

import dev.thinair.loads.kernel.HourlyInterpolation;
import dev.thinair.loads.kernel.HouseModel;
import dev.thinair.loads.kernel.HouseResponse;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.SupplyAir;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * The load of a house on a design day at a setpoint: by hour, by room, by component. Immutable.
 *
 * <p>Heat into the rooms counts positive, so heating loads are negative in hourly figures; {@link
 * #peak}, {@link #roomPeak} and {@link #sumOfRoomPeaks} give the demand as a positive number in
 * either case. Hours are marks of local standard time, 0 to 23. The components of a room add up to
 * its sensible load.
 *
 * <p>Latent load is that of people and appliances and of outdoor air against the setpoint's
 * humidity. It is negative where outdoor air dries the house, as it often does at elevation; the
 * total counts it as nothing then, because dry air outside spares a cooling unit no sensible work.
 */
public final class DesignLoad {
    private static final Component[] COMPONENTS = Component.values();
    private static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;

    private final HouseDay day;
    private final Setpoint setpoint;
    private final double[] sensible; // [zone * 24], W; of a free zone its temperature, K
    private final double[] latent; // [zone * 24]
    private final double[] theta; // mean setpoint less reference by zone
    private final double[] change; // [zone * 24] or empty
    private final double[] leakFlow; // [24] kg/s dry air
    private final double fanFlow; // kg/s dry air
    private final double[] blockSensible; // [24]
    private final double[] blockLatent; // [24]

    DesignLoad(HouseDay day, Setpoint setpoint) {
        this.day = day;
        this.setpoint = setpoint;
        CompiledHouse c = day.compiled;
        HouseModel model = c.model;
        int zones = model.zones();
        List<Room> rooms = c.house.rooms();
        for (String name : setpoint.namedRooms()) {
            if (!c.house.room(name).conditioned()) {
                throw new IllegalArgumentException(
                        "setpoint names \"" + name + "\", but that space is not conditioned");
            }
        }
        sensible = new double[zones * 24];
        latent = new double[zones * 24];
        theta = new double[zones];
        double[][] series = new double[zones][];
        boolean varies = false;
        for (int z = 0; z < zones; z++) {
            if (!model.held(z)) {
                continue;
            }
            double[] t = setpoint.series(rooms.get(z).name());
            series[z] = t;
            double mean = 0;
            for (int h = 0; h < 24; h++) {
                mean += t[h];
                varies |= t[h] != t[0];
            }
            theta[z] = mean / 24 - HouseDay.REFERENCE;
        }
        varies &= !day.heating;
        change = varies ? changes(day, series, theta) : new double[0];
        leakFlow = new double[24];
        fanFlow = outdoorAir(day, setpoint, series, latent, leakFlow);
        conduction();
        blockSensible = new double[24];
        blockLatent = new double[24];
        for (int z = 0; z < zones; z++) {
            if (model.held(z)) {
                for (int h = 0; h < 24; h++) {
                    blockSensible[h] += sensible[z * 24 + h];
                    blockLatent[h] += latent[z * 24 + h];
                }
            }
        }
    }

    private void conduction() {
        HouseModel model = day.compiled.model;
        int zones = model.zones();
        for (int z = 0; z < zones; z++) {
            double shift = 0;
            for (int k = 0; k < COMPONENTS.length; k++) {
                shift -= day.steady[k * zones + z];
            }
            double constant = 0;
            if (model.held(z)) {
                constant = shift * theta[z] + fromRooms(z);
            } else {
                for (int d = 0; d < zones; d++) {
                    if (model.held(d)) {
                        constant += day.floating.steadyHold(d, z) * theta[d];
                    }
                }
            }
            for (int h = 0; h < 24; h++) {
                int i = z * 24 + h;
                double value = day.total[i] + constant + (change.length == 0 ? 0 : change[i]);
                if (model.held(z)) {
                    sensible[i] = value + leak(z, h) + fan(z, h);
                    sensible[i] += ducts(sensible[i]);
                } else {
                    sensible[i] = HouseDay.REFERENCE + value;
                }
            }
        }
    }

    private double ducts(double load) {
        House house = day.compiled.house;
        return day.heating
                ? house.ductLoss() * Math.min(load, 0)
                : house.ductGain() * Math.max(load, 0);
    }

    /** Steady heat from rooms kept at other mean temperatures, W. */
    private double fromRooms(int z) {
        HouseModel model = day.compiled.model;
        double sum = 0;
        for (int d = 0; d < model.zones(); d++) {
            if (d != z && model.held(d) && theta[d] != theta[z]) {
                sum += day.floating.steadyHold(d, z) * (theta[d] - theta[z]);
            }
        }
        return sum;
    }

    private static double[] changes(HouseDay day, double[][] series, double[] theta) {
        HouseModel model = day.compiled.model;
        HouseResponse response = day.compiled.whole();
        int zones = model.zones();
        double[] spectra = new double[zones * WIDTH];
        double[] spectrum = new double[WIDTH];
        double[] swing = new double[24];
        double[] out = new double[zones * 24];
        for (int d = 0; d < zones; d++) {
            if (!model.held(d)) {
                continue;
            }
            for (int h = 0; h < 24; h++) {
                swing[h] = series[d][h] - HouseDay.REFERENCE - theta[d];
                // the air's own storage: the slope at a mark is the mean of both sides
                double rise = (series[d][(h + 1) % 24] - series[d][(h + 23) % 24]) / 7200;
                out[d * 24 + h] -= model.airCapacity(d) * rise;
            }
            HourlyInterpolation.analyse(swing, 0, spectrum, 0);
            spectrum[0] = 0;
            for (int z = 0; z < zones; z++) {
                response.addAnswer(response.holdDrive(d), z, spectrum, 0, spectra, z * WIDTH);
            }
        }
        for (int z = 0; z < zones; z++) {
            HourlyInterpolation.addSynthesis(spectra, z * WIDTH, out, z * 24);
        }
        return out;
    }

    /**
     * Sensible and latent loads of infiltration and ventilation; returns the fans' dry-air flow.
     */
    private static double outdoorAir(
            HouseDay day,
            Setpoint setpoint,
            double[][] series,
            double[] latent,
            double[] leakFlow) {
        CompiledHouse c = day.compiled;
        OutdoorHours hours = day.hours;
        double p = hours.pressure();
        Ventilation ventilation = c.house.ventilation();
        double fanFlow = ventilation.supplyDryAirMassFlow(p);
        double latentLeft = 1 - ventilation.latentEffectiveness();
        int zones = c.model.zones();
        for (int h = 0; h < 24; h++) {
            double inside = 0;
            for (int z = 0; z < zones; z++) {
                if (c.model.held(z)) {
                    inside += c.leakShare[z] * series[z][h];
                }
            }
            double outside = hours.dryBulb(h);
            double w = hours.humidityRatio(h);
            double flow =
                    c.house
                            .infiltration()
                            .dryAirMassFlow(inside, outside, w, hours.windSpeed(h), p);
            leakFlow[h] = ventilation.combinedInfiltration(flow, p);
        }
        double lastTemperature = Double.NaN;
        double indoor = 0;
        for (int z = 0; z < zones; z++) {
            if (!c.model.held(z)) {
                continue;
            }
            for (int h = 0; h < 24; h++) {
                double t = series[z][h];
                if (t != lastTemperature) {
                    indoor =
                            IdealMoistAir.humidityRatioFromRelativeHumidity(
                                    t, setpoint.relativeHumidity(), p);
                    lastTemperature = t;
                }
                double w = hours.humidityRatio(h);
                double moisture =
                        (w - indoor) * (2_501_000 + CompiledHouse.CP_VAPOUR * (t - 273.15));
                double leaked = leakFlow[h] * c.leakShare[z];
                double fanned = fanFlow * c.fanShare[z];
                int i = z * 24 + h;
                latent[i] = day.latentGain[i] + leaked * moisture + fanned * moisture * latentLeft;
            }
        }
        return fanFlow;
    }

    /** Sensible heat that a kilogram of outdoor dry air brings into a held zone at an hour, J. */
    private double outdoorHeat(int z, int h) {
        double t = setpoint.series(day.compiled.house.rooms().get(z).name())[h];
        return (CompiledHouse.CP_AIR + CompiledHouse.CP_VAPOUR * day.hours.humidityRatio(h))
                * (day.hours.dryBulb(h) - t);
    }

    private double leak(int z, int h) {
        return leakFlow[h] * day.compiled.leakShare[z] * outdoorHeat(z, h);
    }

    private double fan(int z, int h) {
        double left = 1 - day.compiled.house.ventilation().sensibleEffectiveness();
        return fanFlow * day.compiled.fanShare[z] * left * outdoorHeat(z, h);
    }

    private int zone(String room) {
        List<Room> rooms = day.compiled.house.rooms();
        for (int z = 0; z < rooms.size(); z++) {
            if (rooms.get(z).name().equals(room)) {
                return z;
            }
        }
        throw new IllegalArgumentException(
                "there is no room \"" + room + "\" in house \"" + day.compiled.house.name() + "\"");
    }

    private int heldZone(String room) {
        int z = zone(room);
        if (!day.compiled.model.held(z)) {
            throw new IllegalArgumentException(
                    "\"" + room + "\" is not conditioned, so it has no load");
        }
        return z;
    }

    private static void requireHour(int hour) {
        Range.require("hour", hour, 0, 23, "h");
    }

    private double demand(double sensibleLoad, double latentLoad) {
        return day.heating ? -sensibleLoad : sensibleLoad + Math.max(latentLoad, 0);
    }

    /**
     * Whether this is a heating load.
     *
     * @return true at winter design
     */
    public boolean heating() {
        return day.heating;
    }

    /**
     * What the rooms are kept at.
     *
     * @return setpoint
     */
    public Setpoint setpoint() {
        return setpoint;
    }

    /**
     * Names of the conditioned rooms.
     *
     * @return names, in the house's order
     */
    public List<String> rooms() {
        return day.compiled.rooms();
    }

    /**
     * Sensible load of the house at an hour.
     *
     * @param hour 0 to 23
     * @return load, given in W; negative for heating
     * @throws IllegalArgumentException if the hour is outside its range
     */
    public Quantity<Power> sensible(int hour) {
        requireHour(hour);
        return Units.watts(blockSensible[hour]);
    }

    /**
     * Latent load of the house at an hour.
     *
     * @param hour 0 to 23
     * @return load, given in W; negative where outdoor air dries the house
     * @throws IllegalArgumentException if the hour is outside its range
     */
    public Quantity<Power> latent(int hour) {
        requireHour(hour);
        return Units.watts(blockLatent[hour]);
    }

    /**
     * Sensible load of a room at an hour.
     *
     * @param room its name
     * @param hour 0 to 23
     * @return load, given in W; negative for heating
     * @throws IllegalArgumentException if there is no such conditioned room or hour
     */
    public Quantity<Power> sensible(String room, int hour) {
        requireHour(hour);
        return Units.watts(sensible[heldZone(room) * 24 + hour]);
    }

    /**
     * Latent load of a room at an hour.
     *
     * @param room its name
     * @param hour 0 to 23
     * @return load, given in W
     * @throws IllegalArgumentException if there is no such conditioned room or hour
     */
    public Quantity<Power> latent(String room, int hour) {
        requireHour(hour);
        return Units.watts(latent[heldZone(room) * 24 + hour]);
    }

    /**
     * Part of a room's sensible load at an hour.
     *
     * @param room its name
     * @param component which part
     * @param hour 0 to 23
     * @return load, given in W
     * @throws IllegalArgumentException if there is no such conditioned room or hour
     */
    public Quantity<Power> component(String room, Component component, int hour) {
        requireHour(hour);
        return Units.watts(part(heldZone(room), component, hour));
    }

    /**
     * Part of the house's sensible load at an hour.
     *
     * @param component which part
     * @param hour 0 to 23
     * @return load, given in W
     * @throws IllegalArgumentException if there is no such hour
     */
    public Quantity<Power> component(Component component, int hour) {
        requireHour(hour);
        double sum = 0;
        for (int z = 0; z < day.compiled.model.zones(); z++) {
            if (day.compiled.model.held(z)) {
                sum += part(z, component, hour);
            }
        }
        return Units.watts(sum);
    }

    private double part(int z, Component component, int hour) {
        int zones = day.compiled.model.zones();
        int k = component.ordinal() * zones + z;
        double value = day.part(z, component, hour) - day.steady[k] * theta[z];
        int i = z * 24 + hour;
        switch (component) {
            case OTHER_ROOMS:
                return value + fromRooms(z);
            case INFILTRATION:
                return leak(z, hour);
            case VENTILATION:
                return fan(z, hour);
            case SETPOINT_CHANGE:
                return change.length == 0 ? 0 : change[i];
            case DUCTS:
                double share =
                        day.heating ? day.compiled.house.ductLoss() : day.compiled.house.ductGain();
                boolean counts = day.heating ? sensible[i] < 0 : sensible[i] > 0;
                return counts ? sensible[i] * share / (1 + share) : 0;
            default:
                return value;
        }
    }

    /**
     * Air temperature of an unconditioned space at an hour.
     *
     * @param space its name
     * @param hour 0 to 23
     * @return temperature, given in K
     * @throws IllegalArgumentException if there is no such space or hour, or it is conditioned
     */
    public Quantity<Temperature> temperature(String space, int hour) {
        requireHour(hour);
        int z = zone(space);
        if (day.compiled.model.held(z)) {
            throw new IllegalArgumentException(
                    "\"" + space + "\" is conditioned: its temperature is the setpoint");
        }
        return Units.kelvins(sensible[z * 24 + hour]);
    }

    /**
     * Hour of the block peak: when the house as a whole asks most of one unit.
     *
     * @return hour, 0 to 23
     */
    public int peakHour() {
        int best = 0;
        for (int h = 1; h < 24; h++) {
            if (demand(blockSensible[h], blockLatent[h])
                    > demand(blockSensible[best], blockLatent[best])) {
                best = h;
            }
        }
        return best;
    }

    /**
     * Block peak: the largest demand of the house, sensible and latent. Equipment is sized on it.
     *
     * @return demand, given in W, positive for cooling and for heating
     */
    public Quantity<Power> peak() {
        int h = peakHour();
        return Units.watts(demand(blockSensible[h], blockLatent[h]));
    }

    /**
     * Hour of a room's sensible peak.
     *
     * @param room its name
     * @return hour, 0 to 23
     * @throws IllegalArgumentException if there is no such conditioned room
     */
    public int roomPeakHour(String room) {
        int at = heldZone(room) * 24;
        int best = 0;
        for (int h = 1; h < 24; h++) {
            if (demand(sensible[at + h], 0) > demand(sensible[at + best], 0)) {
                best = h;
            }
        }
        return best;
    }

    /**
     * Sensible peak of a room. Ducts are sized on it.
     *
     * @param room its name
     * @return demand, given in W, positive for cooling and for heating
     * @throws IllegalArgumentException if there is no such conditioned room
     */
    public Quantity<Power> roomPeak(String room) {
        return Units.watts(demand(sensible[heldZone(room) * 24 + roomPeakHour(room)], 0));
    }

    /**
     * Sum of the rooms' sensible peaks, which exceeds the block's where rooms peak at other hours.
     *
     * @return demand, given in W, positive for cooling and for heating
     */
    public Quantity<Power> sumOfRoomPeaks() {
        double sum = 0;
        for (String room : rooms()) {
            sum += Si.watts(roomPeak(room), "room peak");
        }
        return Units.watts(sum);
    }

    /**
     * Supply air, as dry-air mass, that carries a room's sensible peak.
     *
     * @param room its name
     * @param supply temperature of the supply air where it enters the room
     * @return dry-air mass flow, given in kg/s; 0 if the room never asks for cooling (or heating)
     * @throws IllegalArgumentException if there is no such conditioned room, or the supply air is
     *     not colder (warmer) than the room
     */
    public Quantity<MassFlow> airMass(String room, Quantity<Temperature> supply) {
        return Units.kilogramsPerSecond(supplyFlow(room, Si.kelvins(supply, "supply temperature")));
    }

    /**
     * Supply air, as actual volume at the site's pressure and the supply temperature, that carries
     * a room's sensible peak.
     *
     * @param room its name
     * @param supply temperature of the supply air where it enters the room
     * @return volume flow, given in m3/s
     * @throws IllegalArgumentException if there is no such conditioned room, or the supply air is
     *     not colder (warmer) than the room
     */
    public Quantity<VolumeFlow> airflow(String room, Quantity<Temperature> supply) {
        double t = Si.kelvins(supply, "supply temperature");
        double p = day.hours.pressure();
        double w = supplyHumidity(room, t);
        return Units.cubicMetresPerSecond(
                supplyFlow(room, t) * IdealMoistAir.specificVolume(t, w, p));
    }

    private double supplyHumidity(String room, double supply) {
        double p = day.hours.pressure();
        double inside = setpoint.series(room)[roomPeakHour(room)];
        double w =
                IdealMoistAir.humidityRatioFromRelativeHumidity(
                        inside, setpoint.relativeHumidity(), p);
        return Math.min(w, IdealMoistAir.saturationHumidityRatio(supply, p));
    }

    private double supplyFlow(String room, double supply) {
        int z = heldZone(room);
        int h = roomPeakHour(room);
        double load = sensible[z * 24 + h];
        if (demand(load, 0) <= 0) {
            return 0;
        }
        return SupplyAir.dryAirMassFlow(
                load, setpoint.series(room)[h], supply, supplyHumidity(room, supply));
    }

    /**
     * Dry-air mass flow of infiltration, for the whole house.
     *
     * @param hour 0 to 23
     * @return flow, given in kg/s
     * @throws IllegalArgumentException if there is no such hour
     */
    public Quantity<MassFlow> infiltration(int hour) {
        requireHour(hour);
        return Units.kilogramsPerSecond(leakFlow[hour]);
    }

    /**
     * Dry-air mass flow that fans bring from outdoors, for the whole house.
     *
     * @return flow, given in kg/s
     */
    public Quantity<MassFlow> ventilation() {
        return Units.kilogramsPerSecond(fanFlow);
    }

    /**
     * Sensible load of the house by hour, for kernel calls.
     *
     * @return 24 values, W, a fresh copy
     */
    public double[] sensibleWatts() {
        return blockSensible.clone();
    }

    /**
     * Latent load of the house by hour, for kernel calls.
     *
     * @return 24 values, W, a fresh copy
     */
    public double[] latentWatts() {
        return blockLatent.clone();
    }

    /**
     * Sensible load of a room by hour, for kernel calls.
     *
     * @param room its name
     * @return 24 values, W, a fresh copy
     * @throws IllegalArgumentException if there is no such conditioned room
     */
    public double[] sensibleWatts(String room) {
        int z = heldZone(room);
        return Arrays.copyOfRange(sensible, z * 24, z * 24 + 24);
    }

    /**
     * A room's load at an hour, line by line: every outer surface, window and door, the sun through
     * each window, then what has no surface of its own. The lines add up to the room's sensible
     * load.
     *
     * @param room its name
     * @param hour 0 to 23
     * @return lines; those of no load are left out
     * @throws IllegalArgumentException if there is no such conditioned room or hour
     */
    public List<LoadLine> lines(String room, int hour) {
        requireHour(hour);
        int z = heldZone(room);
        CompiledHouse c = day.compiled;
        HouseResponse response = c.wallByWall(day.heating);
        Films films = day.heating ? c.house.heatingFilms() : c.house.coolingFilms();
        List<LoadLine> lines = new ArrayList<>();
        double[] series = new double[24];
        double[] spectrum = new double[WIDTH];
        boolean[] listed = new boolean[COMPONENTS.length];
        for (int w = 0; w < c.uses.length; w++) {
            CompiledHouse.WallUse use = c.uses[w];
            if (use.boundary < 0 || c.model.front(w) != z) {
                continue;
            }
            c.boundaries[use.boundary].fill(day.hours, films.outside(), day.heating, series);
            double outside = series[hour] - 273.15;
            for (int h = 0; h < 24; h++) {
                series[h] -= HouseDay.REFERENCE;
            }
            HourlyInterpolation.analyse(series, 0, spectrum, 0);
            double[] answer = new double[WIDTH];
            response.addAnswer(response.wallDrive(w), z, spectrum, 0, answer, 0);
            double[] load = new double[24];
            HourlyInterpolation.addSynthesis(answer, 0, load, 0);
            lines.add(
                    new LoadLine(
                            use.name,
                            use.component,
                            use.area,
                            use.transmittance,
                            outside,
                            load[hour] - response.steady(response.wallDrive(w), z) * theta[z]));
            listed[use.component.ordinal()] = true;
        }
        for (CompiledHouse.GlassUse glass : c.survey.glasses) {
            if (glass.zone != z || day.heating) {
                continue;
            }
            Surface surface = glass.surface;
            glass.window.solarGain(
                    day.hours, surface.azimuthRadians(), surface.tiltRadians(), series);
            HourlyInterpolation.analyse(series, 0, spectrum, 0);
            double[] answer = new double[WIDTH];
            response.addAnswer(response.sunDrive(z), z, spectrum, 0, answer, 0);
            double share = glass.window.solarRadiantFraction();
            double value =
                    share * HourlyInterpolation.at(answer, 0, hour) + (1 - share) * series[hour];
            if (value != 0) {
                double area = glass.window.squareMetres();
                String name = "sun, " + glass.window.name();
                lines.add(new LoadLine(name, Component.WINDOW_SUN, area, 0, Double.NaN, value));
            }
            listed[Component.WINDOW_SUN.ordinal()] = true;
        }
        for (Component k : COMPONENTS) {
            double value = part(z, k, hour);
            if (!listed[k.ordinal()] && value != 0) {
                lines.add(new LoadLine(k.label(), k, 0, 0, Double.NaN, value));
            }
        }
        return lines;
    }

    /**
     * The load as a table: rooms and components at the block peak, each room's own peak, the
     * totals.
     *
     * @return several lines of text in W and Btu/h
     */
    public String table() {
        return LoadTables.house(this);
    }

    /**
     * One room's load at its peak hour, line by line.
     *
     * @param room its name
     * @return several lines of text in W and Btu/h
     * @throws IllegalArgumentException if there is no such conditioned room
     */
    public String table(String room) {
        return LoadTables.room(this, room, roomPeakHour(room));
    }

    /**
     * The steps to a room's sensible peak: its lines at that hour, their sum, and the supply air
     * that carries it.
     *
     * @param room its name
     * @param supply temperature of the supply air where it enters the room
     * @return steps; the last one's result is the supply air's dry-air mass flow ({@link #airMass})
     * @throws IllegalArgumentException if there is no such conditioned room, it never asks for
     *     cooling (or heating), or the supply air cannot carry its load
     */
    public Working working(String room, Quantity<Temperature> supply) {
        int h = roomPeakHour(room);
        double t = Si.kelvins(supply, "supply temperature");
        return HouseWorkings.roomPeak(
                this, room, h, setpoint.series(room)[h], t, supplyHumidity(room, t));
    }

    String houseName() {
        return day.compiled.house.name();
    }

    double sensibleAt(String room, int hour) {
        return sensible[heldZone(room) * 24 + hour];
    }

    double partAt(String room, Component component, int hour) {
        return part(heldZone(room), component, hour);
    }

    double blockSensibleAt(int hour) {
        return blockSensible[hour];
    }

    double blockLatentAt(int hour) {
        return blockLatent[hour];
    }

    List<Room> houseRooms() {
        return day.compiled.house.rooms();
    }

    double outdoorCelsius(int hour) {
        return day.hours.dryBulb(hour) - 273.15;
    }

    double freeCelsius(int zone, int hour) {
        return sensible[zone * 24 + hour] - 273.15;
    }

    @Override
    public String toString() {
        int h = peakHour();
        return String.format(
                Locale.ROOT,
                "%s load of %s: %.0f W at %02d:00 (sensible %.0f, latent %.0f), %s",
                day.heating ? "heating" : "cooling",
                houseName(),
                demand(blockSensible[h], blockLatent[h]),
                h,
                blockSensible[h],
                blockLatent[h],
                setpoint);
    }
}
