package dev.thinair.loads;

import dev.thinair.loads.kernel.HouseModel;
import dev.thinair.loads.kernel.HouseResponse;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.SolAir;
import dev.thinair.loads.kernel.ThermalNetwork;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A house turned into numbers: transmission data of all layers and the response of every room to
 * every drive, kept for many runs. Immutable, so any thread may share it.
 *
 * <p>Made by {@link House#compile}. For another elevation use {@link #at}, which keeps the
 * description; for many setpoints on one day keep {@link #on}.
 */
public final class CompiledHouse {
    /** Specific heat of dry air, J/(kg K) (ASHRAE Fundamentals 2021, ch. 1: 1.006 kJ/(kg K)). */
    static final double CP_AIR = 1006.0;

    /**
     * Specific heat of water vapour, J/(kg K) (ASHRAE Fundamentals 2021, ch. 1: 1.86 kJ/(kg K)).
     */
    static final double CP_VAPOUR = 1860.0;

    /** Specific gas constant of dry air, J/(kg K) (ASHRAE Fundamentals 2021, ch. 1: 287.042). */
    static final double R_AIR = 287.042;

    /** Temperature at which free spaces' air is weighed, K. */
    private static final double BUFFER_AIR = 298.15;

    private static final int COMPONENTS = Component.values().length;

    final House house;
    final Site site;
    final HouseModel model;
    final HouseResponse response;
    final HouseResponse winterResponse;
    final Boundary[] boundaries;
    final WallUse[] uses;
    final GlassUse[] glasses;
    final double[]
            steady; // [component * zones + zone]: sum of steady answers to outdoor-side drives
    final double[] winterSteady;
    final double[] leakShare; // by zone
    final double[] fanShare;

    /** A temperature behind walls. */
    static final class Boundary {
        static final int SUN = 0;
        static final int AIR = 1;
        static final int GROUND = 2;
        static final int FIXED = 3;
        final int kind;
        final double azimuth;
        final double tilt;
        final double absorptance;
        final double emissivity;
        final Ground ground;
        final double fixed;

        Boundary(
                int kind,
                double azimuth,
                double tilt,
                double absorptance,
                double emissivity,
                Ground ground,
                double fixed) {
            this.kind = kind;
            this.azimuth = azimuth;
            this.tilt = tilt;
            this.absorptance = absorptance;
            this.emissivity = emissivity;
            this.ground = ground;
            this.fixed = fixed;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Boundary b
                    && kind == b.kind
                    && azimuth == b.azimuth
                    && tilt == b.tilt
                    && absorptance == b.absorptance
                    && emissivity == b.emissivity
                    && fixed == b.fixed
                    && Objects.equals(ground, b.ground);
        }

        @Override
        public int hashCode() {
            return Objects.hash(kind, azimuth, tilt, absorptance, emissivity, fixed);
        }

        /** Temperatures at the hours, K. In winter design neither sun nor sky counts. */
        void fill(OutdoorHours hours, double outside, boolean heating, double[] out) {
            int n = hours.count();
            switch (kind) {
                case SUN -> {
                    if (heating) {
                        for (int h = 0; h < n; h++) {
                            out[h] = hours.dryBulb(h);
                        }
                        return;
                    }
                    hours.incident(azimuth, tilt, out);
                    double loss = SolAir.longwaveLoss(tilt);
                    for (int h = 0; h < n; h++) {
                        out[h] =
                                hours.dryBulb(h)
                                        + SolAir.excess(
                                                absorptance, out[h], emissivity, loss, outside);
                    }
                }
                case AIR -> {
                    for (int h = 0; h < n; h++) {
                        out[h] = hours.dryBulb(h);
                    }
                }
                case GROUND ->
                        Arrays.fill(
                                out,
                                0,
                                n,
                                heating
                                        ? ground.boundaryTemperature(
                                                hours.dryBulb(0), hours.groundTemperature())
                                        : ground.boundaryTemperature(hours));
                default -> Arrays.fill(out, 0, n, fixed);
            }
        }
    }

    /** What a wall of the model stands for. */
    static final class WallUse {
        final Room room;
        final Surface surface;
        final String name;
        final Component component;
        final int boundary; // -1: none
        final double area;
        final double transmittance; // air to air as modelled, for tables

        WallUse(
                Room room,
                Surface surface,
                String name,
                Component component,
                int boundary,
                double area,
                double transmittance) {
            this.room = room;
            this.surface = surface;
            this.name = name;
            this.component = component;
            this.boundary = boundary;
            this.area = area;
            this.transmittance = transmittance;
        }
    }

    /** A window and where it looks. */
    static final class GlassUse {
        final int zone;
        final Window window;
        final Surface surface;

        GlassUse(int zone, Window window, Surface surface) {
            this.zone = zone;
            this.window = window;
            this.surface = surface;
        }
    }

    private CompiledHouse(
            House house,
            Site site,
            HouseModel model,
            HouseModel winter,
            Boundary[] boundaries,
            WallUse[] uses,
            GlassUse[] glasses) {
        this.house = house;
        this.site = site;
        this.model = model;
        this.response = HouseResponse.solve(model);
        this.winterResponse = HouseResponse.steady(winter);
        this.boundaries = boundaries;
        this.uses = uses;
        this.glasses = glasses;
        this.steady = steadySums(model, response, uses);
        this.winterSteady = steadySums(winter, winterResponse, uses);
        this.leakShare = leakShares(house);
        this.fanShare = fanShares(house);
    }

    static CompiledHouse of(House house, Site site) {
        Objects.requireNonNull(site, "site is null");
        List<Boundary> boundaries = new ArrayList<>();
        List<WallUse> uses = new ArrayList<>();
        List<GlassUse> glasses = new ArrayList<>();
        HouseModel summer = model(house, site, house.coolingFilms(), boundaries, uses, glasses);
        HouseModel winter =
                model(
                        house,
                        site,
                        house.heatingFilms(),
                        new ArrayList<>(),
                        new ArrayList<>(),
                        new ArrayList<>());
        return new CompiledHouse(
                house,
                site,
                summer,
                winter,
                boundaries.toArray(new Boundary[0]),
                uses.toArray(new WallUse[0]),
                glasses.toArray(new GlassUse[0]));
    }

    private static HouseModel model(
            House house,
            Site site,
            Films films,
            List<Boundary> boundaries,
            List<WallUse> uses,
            List<GlassUse> glasses) {
        HouseModel.Builder b = new HouseModel.Builder();
        Map<String, Integer> zoneOf = new HashMap<>();
        for (Room room : house.rooms()) {
            double density = site.pascals() / (R_AIR * BUFFER_AIR);
            double air = density * CP_AIR * room.volumeCubicMetres();
            double furniture =
                    room.furnitureJoulesPerSquareMetreKelvin() * room.floorSquareMetres();
            zoneOf.put(
                    room.name(),
                    b.zone(
                            room.conditioned(),
                            room.conditioned() ? Math.max(furniture, air) : air + furniture,
                            air * room.airChangesPerSecond()));
        }
        Map<Boundary, Integer> known = new HashMap<>();
        for (Room room : house.rooms()) {
            int zone = zoneOf.get(room.name());
            for (Surface s : room.surfaces()) {
                addSurface(
                        house, room, zone, s, films, zoneOf, b, known, boundaries, uses, glasses);
            }
        }
        try {
            return b.build();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "house \"" + house.name() + "\": " + e.getMessage(), e);
        }
    }

    private static void addSurface(
            House house,
            Room room,
            int zone,
            Surface s,
            Films films,
            Map<String, Integer> zoneOf,
            HouseModel.Builder b,
            Map<Boundary, Integer> known,
            List<Boundary> boundaries,
            List<WallUse> uses,
            List<GlassUse> glasses) {
        double convection = convection(s.kind(), films, false);
        double radiation = films.radiant();
        double insideFilm = 1 / (convection + radiation);
        double net = s.netSquareMetres();
        Adjacency adjacency = s.adjacency();
        for (Assembly.Path path : s.assembly().paths()) {
            double area = net * path.fraction();
            double[] r = path.resistances();
            double[] c = path.capacities();
            double u = 0;
            int behind;
            Boundary boundary = null;
            Component component = opaque(s.kind());
            double backConvection = 0;
            if (adjacency instanceof Adjacency.Outdoors) {
                behind = HouseModel.BOUNDARY;
                r = append(r, 1 / films.outside());
                c = append(c, 0);
                boundary =
                        new Boundary(
                                Boundary.SUN,
                                s.azimuthRadians(),
                                s.tiltRadians(),
                                s.solarAbsorptance(),
                                s.longwaveEmissivity(),
                                null,
                                0);
            } else if (adjacency instanceof Adjacency.Earth e) {
                behind = HouseModel.BOUNDARY;
                double[][] with = soil(s, path, area, e.ground());
                r = with[0];
                c = with[1];
                boundary = new Boundary(Boundary.GROUND, 0, 0, 0, 0, e.ground(), 0);
                component = Component.FLOORS;
            } else if (adjacency instanceof Adjacency.Other o) {
                behind = HouseModel.BOUNDARY;
                r = append(r, 0.13);
                c = append(c, 0);
                boundary =
                        new Boundary(
                                Boundary.FIXED,
                                0,
                                0,
                                0,
                                0,
                                null,
                                Si.kelvins(o.temperature(), "temperature of the adjacent space"));
                component = Component.FLOORS;
            } else if (adjacency instanceof Adjacency.Space space) {
                behind = zoneOf.get(space.space());
                backConvection = convection(s.kind(), films, true);
                component = Component.OTHER_ROOMS;
            } else if (s.kind() == Surface.Kind.MASS) {
                behind = zone;
                backConvection = convection;
            } else {
                behind = HouseModel.ADIABATIC;
            }
            if (behind == HouseModel.BOUNDARY) {
                double sum = insideFilm;
                for (double one : r) {
                    sum += one;
                }
                u = 1 / sum;
            } else if (behind >= 0) {
                double sum = insideFilm + 1 / (backConvection + radiation);
                for (double one : r) {
                    sum += one;
                }
                u = 1 / sum;
            }
            b.wall(
                    zone,
                    behind,
                    area,
                    r,
                    c,
                    convection,
                    radiation,
                    backConvection,
                    radiation,
                    false);
            uses.add(
                    new WallUse(
                            room,
                            s,
                            s.name(),
                            component,
                            boundary == null ? -1 : index(boundary, known, boundaries),
                            area,
                            u));
        }
        for (Window window : s.windows()) {
            double rest =
                    openingResistance(
                            window.transmittance(), insideFilm, films.outside(), window.name(), s);
            b.wall(
                    zone,
                    HouseModel.BOUNDARY,
                    window.squareMetres(),
                    new double[] {rest},
                    new double[] {0},
                    convection,
                    radiation,
                    0,
                    0,
                    true);
            uses.add(
                    new WallUse(
                            room,
                            s,
                            window.name(),
                            Component.WINDOW_CONDUCTION,
                            index(
                                    new Boundary(Boundary.AIR, 0, 0, 0, 0, null, 0),
                                    known,
                                    boundaries),
                            window.squareMetres(),
                            1 / (rest + insideFilm)));
            glasses.add(new GlassUse(zone, window, s));
        }
        for (Door door : s.doors()) {
            double rest =
                    openingResistance(
                            door.transmittance(), insideFilm, films.outside(), door.name(), s);
            Boundary boundary =
                    new Boundary(
                            Boundary.SUN,
                            s.azimuthRadians(),
                            s.tiltRadians(),
                            door.absorptance(),
                            s.longwaveEmissivity(),
                            null,
                            0);
            b.wall(
                    zone,
                    HouseModel.BOUNDARY,
                    door.squareMetres(),
                    new double[] {rest},
                    new double[] {0},
                    convection,
                    radiation,
                    0,
                    0,
                    false);
            uses.add(
                    new WallUse(
                            room,
                            s,
                            door.name(),
                            Component.DOORS,
                            index(boundary, known, boundaries),
                            door.squareMetres(),
                            1 / (rest + insideFilm)));
        }
    }

    /**
     * Resistance of an opening from its inside face to outdoor air: what its rated U-factor leaves
     * after the inside film of 0.13 m2 K/W and the outside film of 0.04 m2 K/W that the rating
     * holds (ISO 10077-1, from memory), with the model's own outside film put back.
     */
    private static double openingResistance(
            double transmittance, double insideFilm, double outside, String name, Surface s) {
        double rest = 1 / transmittance - 0.13 - 0.04;
        if (!(rest > -0.02)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "U-factor of \"%s\" in \"%s\" is %.3f W/(m2 K), but at most 6.6 is possible between two"
                                    + " air films",
                            name,
                            s.name(),
                            transmittance));
        }
        // a bare pane rated with other films may come out a little below zero: the film cannot
        // vanish
        return Math.max(rest, 1e-3) + 1 / outside;
    }

    /**
     * Layers of a surface on the ground: its own, half a metre of soil, and a massless rest so that
     * the total is what the ground's rule gives (the virtual layer of ISO 13370:2017, from memory;
     * soil of 2.0 W/(m K) and 2.0 MJ/(m3 K) from its table for sand or gravel).
     */
    private static double[][] soil(Surface s, Assembly.Path path, double area, Ground ground) {
        double film = s.kind() == Surface.Kind.FLOOR ? 0.17 : 0.13;
        double own = 0;
        for (Layer layer : path.layers()) {
            own += layer.squareMetreKelvinsPerWatt();
        }
        double total = s.grossSquareMetres() / ground.conductance(s.grossSquareMetres(), own);
        double rest = total - film - own;
        if (!(rest > 0)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "ground contact of \"%s\" leaves %.4f m2 K/W for the soil, but must leave more than 0",
                            s.name(),
                            rest));
        }
        double soil = Math.min(0.25, 0.9 * rest);
        double[] r = append(append(path.resistances(), soil), rest - soil);
        double[] c = append(append(path.capacities(), soil * 2.0 * 2.0e6), 0);
        return new double[][] {r, c};
    }

    private static double convection(Surface.Kind kind, Films films, boolean backFace) {
        return switch (kind) {
            case CEILING, ROOF -> backFace ? films.floor() : films.ceiling();
            case FLOOR -> backFace ? films.ceiling() : films.floor();
            default -> films.wall();
        };
    }

    private static Component opaque(Surface.Kind kind) {
        return switch (kind) {
            case ROOF, CEILING -> Component.ROOFS;
            case FLOOR -> Component.FLOORS;
            default -> Component.WALLS;
        };
    }

    private static int index(Boundary boundary, Map<Boundary, Integer> known, List<Boundary> list) {
        Integer at = known.get(boundary);
        if (at == null) {
            at = list.size();
            list.add(boundary);
            known.put(boundary, at);
        }
        return at;
    }

    private static double[] append(double[] a, double last) {
        double[] longer = Arrays.copyOf(a, a.length + 1);
        longer[a.length] = last;
        return longer;
    }

    /** Component under which a drive in zone {@code from} is booked for zone {@code to}. */
    static Component booked(HouseModel model, int from, int to, Component own) {
        if (!model.held(to)) {
            return Component.UNCONDITIONED_SPACES; // of a free space only the sum is wanted
        }
        if (from == to) {
            return own;
        }
        return model.held(from) ? Component.OTHER_ROOMS : Component.UNCONDITIONED_SPACES;
    }

    private static double[] steadySums(HouseModel model, HouseResponse response, WallUse[] uses) {
        int zones = model.zones();
        double[] sums = new double[COMPONENTS * zones];
        for (int z = 0; z < zones; z++) {
            for (int w = 0; w < uses.length; w++) {
                if (uses[w].boundary >= 0) {
                    Component k = booked(model, model.front(w), z, uses[w].component);
                    sums[k.ordinal() * zones + z] += response.steady(response.wallDrive(w), z);
                }
            }
            for (int d = 0; d < zones; d++) {
                if (model.airConductance(d) > 0) {
                    Component k = booked(model, d, z, Component.UNCONDITIONED_SPACES);
                    sums[k.ordinal() * zones + z] +=
                            model.airConductance(d) * response.steady(response.airDrive(d), z);
                }
            }
        }
        return sums;
    }

    private static double[] leakShares(House house) {
        List<Room> rooms = house.rooms();
        double[] share = new double[rooms.size()];
        double sum = 0;
        for (int z = 0; z < share.length; z++) {
            Room room = rooms.get(z);
            if (!room.conditioned()) {
                continue;
            }
            for (Surface s : room.surfaces()) {
                boolean leaks = s.adjacency() instanceof Adjacency.Outdoors;
                if (s.adjacency() instanceof Adjacency.Space space) {
                    leaks = !house.room(space.space()).conditioned();
                }
                if (leaks) {
                    share[z] += s.grossSquareMetres();
                }
            }
            sum += share[z];
        }
        if (sum == 0) {
            return volumeShares(rooms);
        }
        for (int z = 0; z < share.length; z++) {
            share[z] /= sum;
        }
        return share;
    }

    private static double[] volumeShares(List<Room> rooms) {
        double[] share = new double[rooms.size()];
        double sum = 0;
        for (int z = 0; z < share.length; z++) {
            if (rooms.get(z).conditioned()) {
                share[z] = rooms.get(z).volumeCubicMetres();
                sum += share[z];
            }
        }
        for (int z = 0; z < share.length; z++) {
            share[z] /= sum;
        }
        return share;
    }

    private static double[] fanShares(House house) {
        List<Room> rooms = house.rooms();
        double[] share = new double[rooms.size()];
        double sum = 0;
        for (int z = 0; z < share.length; z++) {
            if (rooms.get(z).conditioned()) {
                share[z] = rooms.get(z).floorSquareMetres();
                sum += share[z];
            }
        }
        for (int z = 0; z < share.length; z++) {
            share[z] /= sum;
        }
        return share;
    }

    /**
     * The house that was compiled.
     *
     * @return house
     */
    public House house() {
        return house;
    }

    /**
     * The site it was compiled for.
     *
     * @return site
     */
    public Site site() {
        return site;
    }

    /**
     * Names of the conditioned rooms, in the house's order.
     *
     * @return names
     */
    public List<String> rooms() {
        List<String> names = new ArrayList<>();
        for (Room room : house.rooms()) {
            if (room.conditioned()) {
                names.add(room.name());
            }
        }
        return List.copyOf(names);
    }

    /**
     * The same house at another site.
     *
     * @param other where it stands
     * @return the house compiled for that site
     */
    public CompiledHouse at(Site other) {
        return of(house, other);
    }

    /**
     * Binds the house to a cooling design day: everything that does not depend on the setpoint is
     * computed here, once.
     *
     * @param day the day
     * @return the house on that day
     */
    public HouseDay on(CoolingDesignDay day) {
        return new HouseDay(this, day.outdoorHours(), false);
    }

    /**
     * Cooling load over a design day.
     *
     * @param day the day
     * @param setpoint what the rooms are kept at
     * @return load by hour, room and component
     * @throws IllegalArgumentException if the setpoint names a room that the house does not have
     */
    public DesignLoad coolingLoad(CoolingDesignDay day, Setpoint setpoint) {
        return on(day).load(setpoint);
    }

    /**
     * Heating load at winter design: steady, without sun, sky or internal gains.
     *
     * @param day winter design conditions
     * @param setpoint what the rooms are kept at; its mean over the day counts
     * @return load, the same at all hours
     * @throws IllegalArgumentException if the setpoint names a room that the house does not have
     */
    public DesignLoad heatingLoad(HeatingDesignDay day, Setpoint setpoint) {
        return new HouseDay(this, day.outdoorHours(), true).load(setpoint);
    }

    /**
     * The house as a network for simulation in time, outdoor air reckoned at 24 C indoors: {@link
     * #network(Quantity, Quantity)} with cells of {@link ThermalNetwork#DEFAULT_CELL_TIME}.
     *
     * @return the network
     */
    public HouseNetwork network() {
        return network(Units.celsius(24), Units.seconds(ThermalNetwork.DEFAULT_CELL_TIME));
    }

    /**
     * The house as a network for simulation in time. Its nominal hour for outdoor air is 10 K
     * warmer outdoors than in, wind 3.4 m/s.
     *
     * @param indoor temperature at which outdoor air is reckoned exactly, 0 to 50 C
     * @param cellTime time for which the Fourier number of a cell is one, 1 s to 1 day: shorter
     *     cuts layers finer
     * @return the network
     * @throws IllegalArgumentException if a value is outside its range
     */
    public HouseNetwork network(Quantity<Temperature> indoor, Quantity<Time> cellTime) {
        double t = Si.kelvins(indoor, "indoor temperature");
        double cell = Si.seconds(cellTime, "cell time");
        Range.require("cell time", cell, 1, 86_400, "s");
        return HouseNetwork.of(this, t, t + 10, 3.4, cell, false);
    }

    /**
     * The house as a smaller network in which all conditioned rooms share one air and one radiant
     * node, outdoor air reckoned at 24 C indoors. For long runs of the house as a whole.
     *
     * @return the network
     */
    public HouseNetwork blockNetwork() {
        return blockNetwork(Units.celsius(24), Units.seconds(ThermalNetwork.DEFAULT_CELL_TIME));
    }

    /**
     * The house as a smaller network in which all conditioned rooms share one air and one radiant
     * node.
     *
     * @param indoor temperature at which outdoor air is reckoned exactly, 0 to 50 C
     * @param cellTime time for which the Fourier number of a cell is one, 1 s to 1 day
     * @return the network
     * @throws IllegalArgumentException if a value is outside its range
     */
    public HouseNetwork blockNetwork(Quantity<Temperature> indoor, Quantity<Time> cellTime) {
        double t = Si.kelvins(indoor, "indoor temperature");
        double cell = Si.seconds(cellTime, "cell time");
        Range.require("cell time", cell, 1, 86_400, "s");
        return HouseNetwork.of(this, t, t + 10, 3.4, cell, true);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, compiled: %d zones, %d walls and openings, %d layer sets, %d boundaries",
                house.name(),
                model.zones(),
                model.walls(),
                model.constructions(),
                boundaries.length);
    }
}
