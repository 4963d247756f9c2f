package dev.thinair.loads;

import dev.thinair.loads.kernel.FloatingAir;
import dev.thinair.loads.kernel.HourlyInterpolation;
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
import java.util.IdentityHashMap;
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
 * transmission data; for many setpoints on one day keep {@link #on}.
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

    /** Numbers of a spectrum. */
    static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;

    /** Components that have a spectrum, gains and what passes between zones last. */
    static final int SPECTRA = 11;

    /** The first of these that internal gains have a share in. */
    static final int FIRST_OF_GAINS = spectrumOf(Component.PEOPLE);

    final House house;
    final Site site;
    final HouseModel model;
    final HouseResponse walls; // with all air held
    final FloatingAir floating;
    final Survey survey;
    final double[]
            steady; // [component * zones + zone]: sum of steady answers to outdoor-side drives
    final Boundary[] boundaries;
    final WallUse[] uses;
    final double[] leakShare; // by zone
    final double[] fanShare;
    // made when first asked for; equal whoever makes them, so a race costs time only
    private volatile Winter winter;
    private volatile HouseResponse apart;
    private volatile HouseResponse whole;

    /** What a description holds apart from its site. */
    static final class Survey {
        final Boundary[] boundaries;
        final WallUse[] uses;
        final DriveUse[] drives;
        final GlassUse[] glasses;
        final GlassView[] views;
        final double[] leakShare;
        final double[] fanShare;
        final FloatingAir.Drives[] ofBoundary;
        final FloatingAir.Drives[] ofView;
        final Passed[] passed; // by boundary
        final Gains gains;

        Survey(
                House house,
                HouseModel model,
                HouseResponse response,
                FloatingAir floating,
                Walls walls) {
            boundaries = walls.boundaries.toArray(new Boundary[0]);
            uses = walls.uses.toArray(new WallUse[0]);
            drives = walls.drives.toArray(new DriveUse[0]);
            glasses = walls.glasses.toArray(new GlassUse[0]);
            views = walls.views.toArray(new GlassView[0]);
            leakShare = leakShares(house);
            fanShare = fanShares(house);
            ofBoundary = byBoundary(response, boundaries.length, drives);
            passed = passedOn(model, response, boundaries, drives, false);
            ofView = new FloatingAir.Drives[views.length];
            for (int v = 0; v < ofView.length; v++) {
                ofView[v] = new FloatingAir.Drives(response);
            }
            for (GlassUse glass : glasses) {
                double share = glass.window.solarRadiantFraction();
                ofView[glass.view].add(response.sunDrive(glass.zone), share * glass.times);
            }
            gains = new Gains(house, model, response, floating);
        }
    }

    private static FloatingAir.Drives[] byBoundary(
            HouseResponse response, int count, DriveUse[] drives) {
        FloatingAir.Drives[] groups = new FloatingAir.Drives[count];
        for (int b = 0; b < count; b++) {
            groups[b] = new FloatingAir.Drives(response);
        }
        for (DriveUse d : drives) {
            groups[d.boundary].add(response.wallDrive(d.wall), 1);
        }
        return groups;
    }

    /** What a temperature behind walls of some zones does in the others; null for nothing. */
    static final class Passed {
        private HouseResponse.Others byRooms;
        private HouseResponse.Others bySpaces;

        void add(HouseResponse response, DriveUse d, boolean held, boolean steady) {
            if (held && byRooms == null) {
                byRooms = new HouseResponse.Others(response, steady);
            } else if (!held && bySpaces == null) {
                bySpaces = new HouseResponse.Others(response, steady);
            }
            (held ? byRooms : bySpaces).add(response.wallDrive(d.wall), held ? d.zone : -1);
        }

        void answer(double[] spectrum, int at, double[] sums) {
            if (byRooms != null) {
                byRooms.addAnswers(spectrum, at, sums, 0);
            }
            if (bySpaces != null) {
                bySpaces.addAnswers(spectrum, at, sums, sums.length / 2);
            }
        }
    }

    private static Passed[] passedOn(
            HouseModel model,
            HouseResponse response,
            Boundary[] boundaries,
            DriveUse[] drives,
            boolean winter) {
        Passed[] passed = new Passed[boundaries.length];
        for (int b = 0; b < passed.length; b++) {
            passed[b] = new Passed();
        }
        for (DriveUse d : drives) {
            boolean steady = winter || boundaries[d.boundary].steady();
            passed[d.boundary].add(response, d, model.held(d.zone), steady);
        }
        return passed;
    }

    /** Place of a component among those with a spectrum; -1 if it has none. */
    static int spectrumOf(Component component) {
        return switch (component) {
            case INFILTRATION, VENTILATION, SETPOINT_CHANGE, DUCTS -> -1;
            case UNCONDITIONED_SPACES -> 9;
            case OTHER_ROOMS -> 10;
            default -> component.ordinal();
        };
    }

    /** The house with winter's films, steady. */
    static final class Winter {
        final HouseModel model;
        final HouseResponse walls;
        final FloatingAir floating;
        final FloatingAir.Drives[] ofBoundary;
        final Passed[] passed;
        final double[] steady;
        private volatile HouseResponse apart;

        Winter(CompiledHouse c) {
            model = model(c.house, c.site, new Walls(c.house.heatingFilms()));
            walls = FloatingAir.steadyWalls(model);
            floating = floating(c.house, walls, model);
            ofBoundary = byBoundary(walls, c.boundaries.length, c.survey.drives);
            passed = passedOn(model, walls, c.boundaries, c.survey.drives, true);
            steady = steadySums(model, walls, floating, c.survey.drives, ofBoundary);
        }
    }

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

        /** Whether its temperature is the same at all hours of a design day. */
        boolean steady() {
            return kind == GROUND || kind == FIXED;
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
            long bits = kind;
            bits = 31 * bits + Double.doubleToLongBits(azimuth);
            bits = 31 * bits + Double.doubleToLongBits(tilt);
            bits = 31 * bits + Double.doubleToLongBits(absorptance);
            bits = 31 * bits + Double.doubleToLongBits(emissivity);
            bits = 31 * bits + Double.doubleToLongBits(fixed);
            return Long.hashCode(bits * 0x9E3779B97F4A7C15L);
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

    /** A temperature behind the walls of one zone that are booked alike. */
    static final class DriveUse {
        final int wall; // one of them, which names the drive
        final int zone;
        final int boundary;
        final Component component;
        private final int drive;

        DriveUse(int wall, int zone, int boundary, Component component, int drive) {
            this.wall = wall;
            this.zone = zone;
            this.boundary = boundary;
            this.component = component;
            this.drive = drive;
        }
    }

    /** A window and where it looks. */
    static final class GlassUse {
        final int zone;
        final Window window;
        final Surface surface;
        final int view;
        final double times; // sun through it as a multiple of that through the view's window

        GlassUse(int zone, Window window, Surface surface, int view, double times) {
            this.zone = zone;
            this.window = window;
            this.surface = surface;
            this.view = view;
            this.times = times;
        }
    }

    /** What windows have in common through which the same sun comes per area. */
    static final class GlassView {
        final Window window;
        final double azimuth;
        final double tilt;

        GlassView(Window window, Surface surface) {
            this.window = window;
            azimuth = surface.azimuthRadians();
            tilt = surface.tiltRadians();
        }

        boolean serves(Window other, Surface surface) {
            return azimuth == surface.azimuthRadians()
                    && tilt == surface.tiltRadians()
                    && window.seesAlike(other);
        }
    }

    /** Internal gains, which no weather changes: their answers and what is load at once. */
    static final class Gains {
        static final Component[] KINDS = {Component.PEOPLE, Component.APPLIANCES, Component.LIGHTS};
        // [((spectrum - FIRST_OF_GAINS) * zones + zone) * WIDTH]
        final double[] spectra;
        final double[] direct; // [(kind * zones + zone) * 24], W to the air of held zones
        final double[] latent; // [zone * 24], W
        final double[] heat; // to free air, for FloatingAir

        Gains(House house, HouseModel model, HouseResponse response, FloatingAir free) {
            int zones = model.zones();
            spectra = new double[(SPECTRA - FIRST_OF_GAINS) * zones * WIDTH];
            direct = new double[KINDS.length * zones * 24];
            latent = new double[zones * 24];
            double[] sums = new double[2 * zones * WIDTH];
            heat = free.heat();
            double[] radiant = new double[24];
            double[] toAir = new double[24];
            double[] spectrum = new double[WIDTH];
            List<Room> rooms = house.rooms();
            for (int z = 0; z < zones; z++) {
                FloatingAir.Drives one = null; // of this zone's radiant heat, made if asked for
                for (int k = 0; k < KINDS.length; k++) {
                    boolean any = false;
                    boolean anyRadiant = false;
                    for (InternalGain gain : rooms.get(z).gains()) {
                        if (HouseDay.component(gain) != KINDS[k]) {
                            continue;
                        }
                        if (!any) {
                            Arrays.fill(radiant, 0);
                            Arrays.fill(toAir, 0);
                            any = true;
                        }
                        double share = gain.radiantFraction();
                        anyRadiant |= share > 0;
                        for (int h = 0; h < 24; h++) {
                            double q = gain.sensible(h);
                            radiant[h] += share * q;
                            toAir[h] += (1 - share) * q;
                            latent[z * 24 + h] += gain.latent(h);
                        }
                    }
                    boolean level = level(radiant);
                    if (anyRadiant && level) {
                        Arrays.fill(spectrum, 0);
                        spectrum[0] = radiant[0];
                    } else if (anyRadiant) {
                        HourlyInterpolation.analyse(radiant, 0, spectrum, 0);
                    }
                    if (anyRadiant) {
                        int own = spectrumOf(KINDS[k]) - FIRST_OF_GAINS;
                        answer(
                                model,
                                response,
                                response.radiantDrive(z),
                                z,
                                own,
                                spectrum,
                                0,
                                sums,
                                spectra);
                    }
                    if (anyRadiant && free.count() > 0) {
                        if (one == null) {
                            one = new FloatingAir.Drives(response);
                            one.add(response.radiantDrive(z), 1);
                        }
                        free.add(one, spectrum, 0, level, heat);
                    }
                    if (any && model.held(z)) {
                        System.arraycopy(toAir, 0, direct, (k * zones + z) * 24, 24);
                    } else if (any) {
                        HourlyInterpolation.analyse(toAir, 0, spectrum, 0);
                        free.addHeat(free.freeIndex(z), 1, spectrum, 0, heat);
                    }
                }
            }
            bookOthers(model, sums, spectra, FIRST_OF_GAINS);
        }

        private static boolean level(double[] day) {
            for (double value : day) {
                if (value != day[0]) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * Adds what all zones answer to a drive in one of them: that of its own zone to its component,
     * the rest to the sums over drives in held (first half) and free zones.
     */
    static void answer(
            HouseModel model,
            HouseResponse response,
            int drive,
            int from,
            int own,
            double[] spectrum,
            int at,
            double[] sums,
            double[] spectra) {
        int zones = model.zones();
        boolean held = model.held(from);
        response.addAnswers(
                drive,
                held ? from : -1,
                spectrum,
                at,
                sums,
                held ? 0 : zones * WIDTH,
                spectra,
                (own * zones + from) * WIDTH);
    }

    /** Books the sums of {@link #answer}, the spectra beginning with a given one. */
    static void bookOthers(HouseModel model, double[] sums, double[] spectra, int first) {
        int zones = model.zones();
        for (int z = 0; z < zones; z++) {
            if (!model.held(z)) {
                continue;
            }
            int rooms = ((spectrumOf(Component.OTHER_ROOMS) - first) * zones + z) * WIDTH;
            int spaces = ((spectrumOf(Component.UNCONDITIONED_SPACES) - first) * zones + z) * WIDTH;
            for (int i = 0; i < WIDTH; i++) {
                spectra[rooms + i] += sums[i * zones + z];
                spectra[spaces + i] += sums[(WIDTH + i) * zones + z];
            }
        }
    }

    /** What a walk round the house's walls gathers. */
    private static final class Walls {
        final Films films;
        final HouseModel.Builder model = new HouseModel.Builder();
        final Map<String, Integer> zoneOf = new HashMap<>();
        final Map<Boundary, Integer> known = new HashMap<>();
        final Map<Assembly, double[][][]> layers = new IdentityHashMap<>();
        final List<Boundary> boundaries = new ArrayList<>();
        final List<WallUse> uses = new ArrayList<>();
        final List<DriveUse> drives = new ArrayList<>();
        final List<GlassUse> glasses = new ArrayList<>();
        final List<GlassView> views = new ArrayList<>();
        private int firstOfZone;

        Walls(Films films) {
            this.films = films;
        }

        void startZone() {
            firstOfZone = drives.size();
        }

        int index(Boundary boundary) {
            Integer at = known.get(boundary);
            if (at == null) {
                at = boundaries.size();
                boundaries.add(boundary);
                known.put(boundary, at);
            }
            return at;
        }

        /** The drive of the next wall of a zone; walls of one zone come one after another. */
        int drive(int zone, int boundary, Component component) {
            for (int i = firstOfZone; i < drives.size(); i++) {
                DriveUse d = drives.get(i);
                if (d.boundary == boundary && d.component == component) {
                    return d.drive;
                }
            }
            int drive = model.drive(zone, boundaries.get(boundary).steady());
            drives.add(new DriveUse(uses.size(), zone, boundary, component, drive));
            return drive;
        }

        /** Resistances and capacities of the paths, without and with the outside film behind. */
        double[][][] layers(Assembly assembly) {
            double[][][] found = layers.get(assembly);
            if (found == null) {
                List<Assembly.Path> paths = assembly.paths();
                found = new double[4][paths.size()][];
                for (int i = 0; i < paths.size(); i++) {
                    found[0][i] = paths.get(i).resistances();
                    found[1][i] = paths.get(i).capacities();
                    found[2][i] = append(found[0][i], 1 / films.outside());
                    found[3][i] = append(found[1][i], 0);
                }
                layers.put(assembly, found);
            }
            return found;
        }

        void glass(int zone, Window window, Surface surface) {
            int view = 0;
            while (view < views.size() && !views.get(view).serves(window, surface)) {
                view++;
            }
            if (view == views.size()) {
                views.add(new GlassView(window, surface));
            }
            double times = window.squareMetres() / views.get(view).window.squareMetres();
            glasses.add(new GlassUse(zone, window, surface, view, times));
        }
    }

    private CompiledHouse(
            House house,
            Site site,
            HouseModel model,
            HouseResponse walls,
            FloatingAir floating,
            Survey survey) {
        this.house = house;
        this.site = site;
        this.model = model;
        this.walls = walls;
        this.survey = survey;
        this.boundaries = survey.boundaries;
        this.uses = survey.uses;
        this.leakShare = survey.leakShare;
        this.fanShare = survey.fanShare;
        this.floating = floating;
        this.steady = steadySums(model, walls, floating, survey.drives, survey.ofBoundary);
    }

    static CompiledHouse of(House house, Site site) {
        Objects.requireNonNull(site, "site is null");
        Walls found = new Walls(house.coolingFilms());
        HouseModel model = model(house, site, found);
        HouseResponse walls = FloatingAir.walls(model, false);
        FloatingAir floating = floating(house, walls, model);
        Survey survey = new Survey(house, model, walls, floating, found);
        return new CompiledHouse(house, site, model, walls, floating, survey);
    }

    private static FloatingAir floating(House house, HouseResponse walls, HouseModel model) {
        try {
            return FloatingAir.on(walls, model);
        } catch (IllegalArgumentException e) {
            List<String> names = new ArrayList<>();
            for (Room room : house.rooms()) {
                names.add(room.name());
            }
            throw new IllegalArgumentException(
                    "house \""
                            + house.name()
                            + "\": "
                            + e.getMessage()
                            + " (zones from 0: "
                            + String.join(", ", names)
                            + ")",
                    e);
        }
    }

    /** Response with the free spaces' air found, for what is asked seldom. */
    HouseResponse whole() {
        HouseResponse made = whole;
        if (made == null) {
            made = HouseResponse.solve(model);
            whole = made;
        }
        return made;
    }

    /** The house in winter. */
    Winter winter() {
        Winter made = winter;
        if (made == null) {
            made = new Winter(this);
            winter = made;
        }
        return made;
    }

    /** Answers to every wall alone, for line-by-line reports. */
    HouseResponse wallByWall(boolean heating) {
        if (heating) {
            Winter w = winter();
            HouseResponse made = w.apart;
            if (made == null) {
                made = HouseResponse.steady(w.model.allHeld().separated());
                w.apart = made;
            }
            return made;
        }
        HouseResponse made = apart;
        if (made == null) {
            made = HouseResponse.solve(model.allHeld().separated());
            apart = made;
        }
        return made;
    }

    private static double airHeat(Room room, Site site) {
        return site.pascals() / (R_AIR * BUFFER_AIR) * CP_AIR * room.volumeCubicMetres();
    }

    private static double heatCapacity(Room room, double air) {
        double furniture = room.furnitureJoulesPerSquareMetreKelvin() * room.floorSquareMetres();
        return room.conditioned() ? Math.max(furniture, air) : air + furniture;
    }

    private static HouseModel model(House house, Site site, Walls walls) {
        for (Room room : house.rooms()) {
            double air = airHeat(room, site);
            walls.zoneOf.put(
                    room.name(),
                    walls.model.zone(
                            room.conditioned(),
                            heatCapacity(room, air),
                            air * room.airChangesPerSecond()));
        }
        int zone = 0;
        for (Room room : house.rooms()) {
            walls.startZone();
            for (Surface s : room.surfaces()) {
                addSurface(room, zone, s, walls);
            }
            zone++;
        }
        try {
            return walls.model.build();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "house \"" + house.name() + "\": " + e.getMessage(), e);
        }
    }

    private static void addSurface(Room room, int zone, Surface s, Walls walls) {
        Films films = walls.films;
        double convection = convection(s.kind(), films, false);
        double radiation = films.radiant();
        double insideFilm = 1 / (convection + radiation);
        double net = s.netSquareMetres();
        Adjacency adjacency = s.adjacency();
        List<Assembly.Path> paths = s.assembly().paths();
        double[][][] layers = walls.layers(s.assembly());
        int behind = HouseModel.BOUNDARY;
        int boundary = -1;
        Component component = opaque(s.kind());
        double backConvection = 0;
        if (adjacency instanceof Adjacency.Outdoors) {
            boundary = walls.index(sunny(s, s.solarAbsorptance()));
        } else if (adjacency instanceof Adjacency.Earth e) {
            boundary = walls.index(new Boundary(Boundary.GROUND, 0, 0, 0, 0, e.ground(), 0));
            component = Component.FLOORS;
        } else if (adjacency instanceof Adjacency.Other o) {
            double t = Si.kelvins(o.temperature(), "temperature of the adjacent space");
            boundary = walls.index(new Boundary(Boundary.FIXED, 0, 0, 0, 0, null, t));
            component = Component.FLOORS;
        } else if (adjacency instanceof Adjacency.Space space) {
            behind = walls.zoneOf.get(space.space());
            backConvection = convection(s.kind(), films, true);
            component = Component.OTHER_ROOMS;
        } else if (s.kind() == Surface.Kind.MASS) {
            behind = zone;
            backConvection = convection;
        } else {
            behind = HouseModel.ADIABATIC;
        }
        for (int i = 0; i < paths.size(); i++) {
            Assembly.Path path = paths.get(i);
            double area = net * path.fraction();
            double[] r = layers[0][i];
            double[] c = layers[1][i];
            double u = 0;
            if (adjacency instanceof Adjacency.Outdoors) {
                r = layers[2][i];
                c = layers[3][i];
            } else if (adjacency instanceof Adjacency.Earth e) {
                double[][] with = soil(s, path, area, e.ground());
                r = with[0];
                c = with[1];
            } else if (adjacency instanceof Adjacency.Other) {
                r = append(r, 0.13);
                c = append(c, 0);
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
            walls.model.wall(
                    zone,
                    behind,
                    area,
                    r,
                    c,
                    convection,
                    radiation,
                    backConvection,
                    radiation,
                    false,
                    boundary < 0 ? -1 : walls.drive(zone, boundary, component));
            walls.uses.add(new WallUse(room, s, s.name(), component, boundary, area, u));
        }
        for (Window window : s.windows()) {
            opening(
                    room,
                    zone,
                    s,
                    window.name(),
                    window.transmittance(),
                    window.squareMetres(),
                    new Boundary(Boundary.AIR, 0, 0, 0, 0, null, 0),
                    Component.WINDOW_CONDUCTION,
                    walls);
            walls.glass(zone, window, s);
        }
        for (Door door : s.doors()) {
            opening(
                    room,
                    zone,
                    s,
                    door.name(),
                    door.transmittance(),
                    door.squareMetres(),
                    sunny(s, door.absorptance()),
                    Component.DOORS,
                    walls);
        }
    }

    private static Boundary sunny(Surface s, double absorptance) {
        return new Boundary(
                Boundary.SUN,
                s.azimuthRadians(),
                s.tiltRadians(),
                absorptance,
                s.longwaveEmissivity(),
                null,
                0);
    }

    private static void opening(
            Room room,
            int zone,
            Surface s,
            String name,
            double transmittance,
            double area,
            Boundary behind,
            Component component,
            Walls walls) {
        Films films = walls.films;
        double convection = convection(s.kind(), films, false);
        double insideFilm = 1 / (convection + films.radiant());
        double rest = openingResistance(transmittance, insideFilm, films.outside(), name, s);
        int boundary = walls.index(behind);
        walls.model.wall(
                zone,
                HouseModel.BOUNDARY,
                area,
                new double[] {rest},
                new double[] {0},
                convection,
                films.radiant(),
                0,
                0,
                component == Component.WINDOW_CONDUCTION,
                walls.drive(zone, boundary, component));
        walls.uses.add(
                new WallUse(room, s, name, component, boundary, area, 1 / (rest + insideFilm)));
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

    private static double[] append(double[] a, double last) {
        double[] longer = Arrays.copyOf(a, a.length + 1);
        longer[a.length] = last;
        return longer;
    }

    /** Component under which a drive in zone {@code from} is booked for held zone {@code to}. */
    private static Component booked(HouseModel model, int from, int to, Component own) {
        if (from == to) {
            return own;
        }
        return model.held(from) ? Component.OTHER_ROOMS : Component.UNCONDITIONED_SPACES;
    }

    private static double[] steadySums(
            HouseModel model,
            HouseResponse walls,
            FloatingAir floating,
            DriveUse[] drives,
            FloatingAir.Drives[] ofBoundary) {
        int zones = model.zones();
        double[] sums = new double[COMPONENTS * zones];
        double[] toFree = new double[floating.count()];
        for (int z = 0; z < zones; z++) {
            int a = floating.freeIndex(z);
            if (a >= 0) {
                toFree[a] = model.airConductance(z);
                for (FloatingAir.Drives group : ofBoundary) {
                    toFree[a] += group.steady(a);
                }
            }
        }
        for (int z = 0; z < zones; z++) {
            if (!model.held(z)) {
                continue;
            }
            for (DriveUse d : drives) {
                Component k = booked(model, d.zone, z, d.component);
                sums[k.ordinal() * zones + z] += walls.steady(walls.wallDrive(d.wall), z);
            }
            for (int a = 0; a < toFree.length; a++) {
                sums[Component.UNCONDITIONED_SPACES.ordinal() * zones + z] +=
                        floating.steady(a, z) * toFree[a];
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
     * The same house at another site. A site changes the density of the air, on which depend the
     * heat that outdoor air carries through unconditioned spaces and the heat their air stores. The
     * response of the walls does not depend on it and is kept, so for cooling loads at constant
     * setpoints nothing of the walls is computed again.
     *
     * <p>What is solved on first use, and so once more for every site: the whole response that
     * setpoints changing by the hour and {@link TimeSeriesLoad} ask for, the steady response in
     * winter, and the wall-by-wall responses behind {@link DesignLoad#lines}.
     *
     * @param other where it stands
     * @return the house compiled for that site
     */
    public CompiledHouse at(Site other) {
        Objects.requireNonNull(other, "site is null");
        int zones = model.zones();
        double[] conductance = new double[zones];
        double[] capacity = new double[zones];
        for (int z = 0; z < zones; z++) {
            Room room = house.rooms().get(z);
            double air = airHeat(room, other);
            conductance[z] = air * room.airChangesPerSecond();
            capacity[z] = heatCapacity(room, air);
        }
        HouseModel there = model.withAir(conductance, capacity);
        FloatingAir air = floating(house, walls, there);
        return new CompiledHouse(house, other, there, walls, air, survey);
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
