package dev.thinair.loads.kernel;

import dev.thinair.units.Range;
import java.util.Arrays;

/**
 * A house as numbers: zones of air and walls between them, to the outdoors, to the ground.
 *
 * <p>A zone has one air node and one radiant node. Every inside face exchanges heat with its zone's
 * air by a convection coefficient and with its zone's radiant node by a radiation coefficient, so
 * radiation between faces needs no view factors (star network). A zone is either <em>held</em>, its
 * air temperature given, or <em>free</em>, its air temperature found from its balance.
 *
 * <p>A wall has a front face in a zone; behind its layers lies a zone (the same or another), a
 * boundary of given temperature, or nothing (adiabatic). Layers run from the front; towards a
 * boundary they include the outer film.
 *
 * <p>Immutable once built; built by {@link Builder}.
 */
public final class HouseModel {
    /** Marks a wall whose back is held at a boundary temperature. */
    public static final int BOUNDARY = -1;

    /** Marks a wall through whose back no heat passes. */
    public static final int ADIABATIC = -2;

    final int zones;
    final boolean[] held;
    final double[] airCapacity;
    final double[] airConductance;
    final int walls;
    final int[] front;
    final int[] back;
    final double[] area;
    final int[] construction;
    final double[] frontConvection;
    final double[] frontRadiation;
    final double[] backConvection;
    final double[] backRadiation;
    final boolean[] glass;
    final int[] drive; // by wall: what gives the temperature behind it
    final boolean[] steadyDrive;
    final double[][] resistance;
    final double[][] capacity;

    private HouseModel(Builder b) {
        zones = b.zones;
        held = Arrays.copyOf(b.held, b.zones);
        airCapacity = Arrays.copyOf(b.airCapacity, b.zones);
        airConductance = Arrays.copyOf(b.airConductance, b.zones);
        walls = b.walls;
        front = Arrays.copyOf(b.front, b.walls);
        back = Arrays.copyOf(b.back, b.walls);
        area = Arrays.copyOf(b.area, b.walls);
        construction = Arrays.copyOf(b.construction, b.walls);
        frontConvection = Arrays.copyOf(b.frontConvection, b.walls);
        frontRadiation = Arrays.copyOf(b.frontRadiation, b.walls);
        backConvection = Arrays.copyOf(b.backConvection, b.walls);
        backRadiation = Arrays.copyOf(b.backRadiation, b.walls);
        glass = Arrays.copyOf(b.glass, b.walls);
        drive = Arrays.copyOf(b.drive, b.walls);
        steadyDrive = Arrays.copyOf(b.steadyDrive, b.drives);
        resistance = Arrays.copyOf(b.resistance, b.constructions);
        capacity = Arrays.copyOf(b.capacity, b.constructions);
    }

    private HouseModel(
            HouseModel o,
            boolean[] held,
            double[] airConductance,
            double[] airCapacity,
            int[] drive,
            boolean[] steadyDrive) {
        zones = o.zones;
        this.held = held;
        this.airCapacity = airCapacity;
        this.airConductance = airConductance;
        walls = o.walls;
        front = o.front;
        back = o.back;
        area = o.area;
        construction = o.construction;
        frontConvection = o.frontConvection;
        frontRadiation = o.frontRadiation;
        backConvection = o.backConvection;
        backRadiation = o.backRadiation;
        glass = o.glass;
        this.drive = drive;
        this.steadyDrive = steadyDrive;
        resistance = o.resistance;
        capacity = o.capacity;
    }

    /**
     * The same house with other air conductances of its free zones.
     *
     * @param conductance to outdoor air by zone, W/K, each 0 or more
     * @return the changed model
     * @throws IllegalArgumentException if the length differs or a value is negative
     */
    public HouseModel withAirConductance(double[] conductance) {
        return withAir(conductance, airCapacity);
    }

    /**
     * The same house with air of another density: what changes with the elevation.
     *
     * @param conductance to outdoor air by zone, W/K, each 0 or more
     * @param heatCapacity of air and furniture by zone, J/K, each 0 or more
     * @return the changed model
     * @throws IllegalArgumentException if a length differs or a value is negative
     */
    public HouseModel withAir(double[] conductance, double[] heatCapacity) {
        if (conductance.length != zones) {
            throw new IllegalArgumentException(
                    conductance.length + " conductances, but " + zones + " zones");
        }
        if (heatCapacity.length != zones) {
            throw new IllegalArgumentException(
                    heatCapacity.length + " heat capacities, but " + zones + " zones");
        }
        for (int z = 0; z < zones; z++) {
            Range.require("air conductance", conductance[z], 0, 1e9, "W/K");
            Range.require("heat capacity of zone air", heatCapacity[z], 0, 1e12, "J/K");
        }
        return new HouseModel(
                this, held, conductance.clone(), heatCapacity.clone(), drive, steadyDrive);
    }

    /**
     * The same house with a drive of its own for every wall, so that each can be answered alone.
     *
     * @return the changed model
     */
    public HouseModel separated() {
        int[] own = new int[walls];
        for (int w = 0; w < walls; w++) {
            own[w] = w;
        }
        return new HouseModel(this, held, airConductance, airCapacity, own, new boolean[walls]);
    }

    /**
     * The same house with the air of every zone held: what its walls do, whatever the air.
     *
     * @return the changed model
     */
    public HouseModel allHeld() {
        boolean[] all = new boolean[zones];
        Arrays.fill(all, true);
        return new HouseModel(this, all, new double[zones], airCapacity, drive, steadyDrive);
    }

    /**
     * The same house with zones joined: their air and radiant nodes become one, walls between them
     * become inner mass.
     *
     * @param zoneOf new zone of each zone, 0 to the number of new zones less one, each used
     * @return the changed model
     * @throws IllegalArgumentException if the map has gaps or joins a held with a free zone
     */
    public HouseModel joined(int[] zoneOf) {
        if (zoneOf.length != zones) {
            throw new IllegalArgumentException(
                    zoneOf.length + " new zones given for " + zones + " zones");
        }
        int count = 0;
        for (int z : zoneOf) {
            Range.require("new zone", z, 0, zones - 1, "");
            count = Math.max(count, z + 1);
        }
        double[] heat = new double[count];
        double[] air = new double[count];
        int[] kind = new int[count];
        for (int z = 0; z < zones; z++) {
            heat[zoneOf[z]] += airCapacity[z];
            air[zoneOf[z]] += airConductance[z];
            kind[zoneOf[z]] |= held[z] ? 1 : 2;
        }
        Builder b = new Builder();
        for (int z = 0; z < count; z++) {
            if (kind[z] != 1 && kind[z] != 2) {
                throw new IllegalArgumentException(
                        "new zone "
                                + z
                                + (kind[z] == 0 ? " is unused" : " joins a held with a free zone"));
            }
            b.zone(kind[z] == 1, heat[z], air[z]);
        }
        for (int w = 0; w < walls; w++) {
            int k = construction[w];
            b.wall(
                    zoneOf[front[w]],
                    back[w] >= 0 ? zoneOf[back[w]] : back[w],
                    area[w],
                    resistance[k],
                    capacity[k],
                    frontConvection[w],
                    frontRadiation[w],
                    backConvection[w],
                    backRadiation[w],
                    glass[w]);
        }
        return b.build();
    }

    /**
     * Number of zones.
     *
     * @return zones
     */
    public int zones() {
        return zones;
    }

    /**
     * Number of walls.
     *
     * @return walls
     */
    public int walls() {
        return walls;
    }

    /**
     * Number of distinct layer sets.
     *
     * @return constructions
     */
    public int constructions() {
        return resistance.length;
    }

    /**
     * Whether a zone's air temperature is given.
     *
     * @param zone index
     * @return true if held
     */
    public boolean held(int zone) {
        return held[zone];
    }

    /**
     * Zone of a wall's front face.
     *
     * @param wall index
     * @return zone
     */
    public int front(int wall) {
        return front[wall];
    }

    /**
     * What is behind a wall.
     *
     * @param wall index
     * @return a zone, {@link #BOUNDARY} or {@link #ADIABATIC}
     */
    public int back(int wall) {
        return back[wall];
    }

    /**
     * Conductance from a free zone's air to outdoor air.
     *
     * @param zone index
     * @return conductance, W/K
     */
    public double airConductance(int zone) {
        return airConductance[zone];
    }

    /**
     * Heat capacity of a zone's air and furniture.
     *
     * @param zone index
     * @return capacity, J/K
     */
    public double airCapacity(int zone) {
        return airCapacity[zone];
    }

    /** Collects zones and walls; equal layer sets are stored once. Not thread-safe. */
    public static final class Builder {
        private int zones;
        private boolean[] held = new boolean[4];
        private double[] airCapacity = new double[4];
        private double[] airConductance = new double[4];
        private int walls;
        private int[] front = new int[16];
        private int[] back = new int[16];
        private double[] area = new double[16];
        private int[] construction = new int[16];
        private double[] frontConvection = new double[16];
        private double[] frontRadiation = new double[16];
        private double[] backConvection = new double[16];
        private double[] backRadiation = new double[16];
        private boolean[] glass = new boolean[16];
        private int[] drive = new int[16];
        private int drives;
        private int[] driveZone = new int[16];
        private boolean[] steadyDrive = new boolean[16];
        private int constructions;
        private double[][] resistance = new double[8][];
        private double[][] capacity = new double[8][];

        /** Starts an empty house. */
        public Builder() {
            // nothing to set
        }

        /**
         * Adds a zone.
         *
         * @param isHeld true if its air temperature is given
         * @param heatCapacity of air and furniture, J/K, 0 or more
         * @param conductance from its air to outdoor air, W/K, 0 or more; only of free zones
         * @return the zone's index
         * @throws IllegalArgumentException if a value is out of range
         */
        public int zone(boolean isHeld, double heatCapacity, double conductance) {
            Range.require("heat capacity of zone air", heatCapacity, 0, 1e12, "J/K");
            Range.require("air conductance", conductance, 0, isHeld ? 0 : 1e9, "W/K");
            if (zones == held.length) {
                int more = 2 * zones;
                held = Arrays.copyOf(held, more);
                airCapacity = Arrays.copyOf(airCapacity, more);
                airConductance = Arrays.copyOf(airConductance, more);
            }
            held[zones] = isHeld;
            airCapacity[zones] = heatCapacity;
            airConductance[zones] = conductance;
            return zones++;
        }

        /**
         * Adds a temperature that several walls of a zone share behind them: answered together,
         * they cost as much as one.
         *
         * @param zone zone of the walls' front faces
         * @param steady true if the temperature is the same at all hours, which costs less still
         * @return the drive's index, for {@link #wall(int, int, double, double[], double[], double,
         *     double, double, double, boolean, int)}
         * @throws IllegalArgumentException if there is no such zone
         */
        public int drive(int zone, boolean steady) {
            if (zone < 0 || zone >= zones) {
                throw new IllegalArgumentException(
                        "zone of a drive is " + zone + ", but there are " + zones);
            }
            if (drives == driveZone.length) {
                driveZone = Arrays.copyOf(driveZone, 2 * drives);
                steadyDrive = Arrays.copyOf(steadyDrive, 2 * drives);
            }
            driveZone[drives] = zone;
            steadyDrive[drives] = steady;
            return drives++;
        }

        /**
         * Adds a wall with a drive of its own.
         *
         * @param frontZone zone of its front face
         * @param behind zone of its back face, {@link #BOUNDARY} or {@link #ADIABATIC}
         * @param squareMetres area, above 0
         * @param r resistances from the front, m2 K/W, each above 0; with the outer film if a
         *     boundary is behind
         * @param c areal heat capacities, J/(m2 K), each 0 or more
         * @param convectionFront W/(m2 K), above 0
         * @param radiationFront W/(m2 K), above 0
         * @param convectionBack W/(m2 K), above 0 if a zone is behind
         * @param radiationBack W/(m2 K), above 0 if a zone is behind
         * @param isGlass true if sun that has come in is not absorbed on its front
         * @return the wall's index
         * @throws IllegalArgumentException if a value is out of range or a zone does not exist
         */
        public int wall(
                int frontZone,
                int behind,
                double squareMetres,
                double[] r,
                double[] c,
                double convectionFront,
                double radiationFront,
                double convectionBack,
                double radiationBack,
                boolean isGlass) {
            return wall(
                    frontZone,
                    behind,
                    squareMetres,
                    r,
                    c,
                    convectionFront,
                    radiationFront,
                    convectionBack,
                    radiationBack,
                    isGlass,
                    -1);
        }

        /**
         * Adds a wall.
         *
         * @param frontZone zone of its front face
         * @param behind zone of its back face, {@link #BOUNDARY} or {@link #ADIABATIC}
         * @param squareMetres area, above 0
         * @param r resistances from the front, m2 K/W, each above 0; with the outer film if a
         *     boundary is behind
         * @param c areal heat capacities, J/(m2 K), each 0 or more
         * @param convectionFront W/(m2 K), above 0
         * @param radiationFront W/(m2 K), above 0
         * @param convectionBack W/(m2 K), above 0 if a zone is behind
         * @param radiationBack W/(m2 K), above 0 if a zone is behind
         * @param isGlass true if sun that has come in is not absorbed on its front
         * @param drivenBy what gives the temperature behind it: a {@link #drive}, or -1 for one of
         *     its own
         * @return the wall's index
         * @throws IllegalArgumentException if a value is out of range, or a zone or drive does not
         *     exist or belongs to another zone
         */
        public int wall(
                int frontZone,
                int behind,
                double squareMetres,
                double[] r,
                double[] c,
                double convectionFront,
                double radiationFront,
                double convectionBack,
                double radiationBack,
                boolean isGlass,
                int drivenBy) {
            if (frontZone < 0 || frontZone >= zones) {
                throw new IllegalArgumentException(
                        "front zone is " + frontZone + ", but there are " + zones);
            }
            if (behind < ADIABATIC || behind >= zones) {
                throw new IllegalArgumentException(
                        "zone behind is " + behind + ", but there are " + zones);
            }
            Range.requireAbove("wall area", squareMetres, 0, "m2");
            Transmission.checkWall(r, c, Transmission.DAY);
            Range.requireAbove("convection coefficient", convectionFront, 0, "W/(m2 K)");
            Range.requireAbove("radiation coefficient", radiationFront, 0, "W/(m2 K)");
            if (behind >= 0) {
                Range.requireAbove("convection coefficient", convectionBack, 0, "W/(m2 K)");
                Range.requireAbove("radiation coefficient", radiationBack, 0, "W/(m2 K)");
            }
            if (drivenBy < -1 || drivenBy >= drives) {
                throw new IllegalArgumentException(
                        "drive of a wall is " + drivenBy + ", but there are " + drives);
            }
            if (drivenBy >= 0 && driveZone[drivenBy] != frontZone) {
                throw new IllegalArgumentException(
                        "drive "
                                + drivenBy
                                + " belongs to zone "
                                + driveZone[drivenBy]
                                + ", but the wall is in zone "
                                + frontZone);
            }
            if (walls == front.length) {
                int more = 2 * walls;
                front = Arrays.copyOf(front, more);
                back = Arrays.copyOf(back, more);
                area = Arrays.copyOf(area, more);
                construction = Arrays.copyOf(construction, more);
                frontConvection = Arrays.copyOf(frontConvection, more);
                frontRadiation = Arrays.copyOf(frontRadiation, more);
                backConvection = Arrays.copyOf(backConvection, more);
                backRadiation = Arrays.copyOf(backRadiation, more);
                glass = Arrays.copyOf(glass, more);
                drive = Arrays.copyOf(drive, more);
            }
            front[walls] = frontZone;
            back[walls] = behind;
            area[walls] = squareMetres;
            construction[walls] = construction(r, c);
            frontConvection[walls] = convectionFront;
            frontRadiation[walls] = radiationFront;
            backConvection[walls] = convectionBack;
            backRadiation[walls] = radiationBack;
            glass[walls] = isGlass;
            drive[walls] = drivenBy >= 0 ? drivenBy : drive(frontZone, false);
            return walls++;
        }

        private int construction(double[] r, double[] c) {
            for (int k = 0; k < constructions; k++) {
                if (Arrays.equals(resistance[k], r) && Arrays.equals(capacity[k], c)) {
                    return k;
                }
            }
            if (constructions == resistance.length) {
                resistance = Arrays.copyOf(resistance, 2 * constructions);
                capacity = Arrays.copyOf(capacity, 2 * constructions);
            }
            resistance[constructions] = r.clone();
            capacity[constructions] = c.clone();
            return constructions++;
        }

        /**
         * Finishes the model.
         *
         * @return the model
         * @throws IllegalArgumentException if there is no zone or a zone has no face
         */
        public HouseModel build() {
            if (zones == 0) {
                throw new IllegalArgumentException("a house needs at least one zone");
            }
            boolean[] faced = new boolean[zones];
            for (int w = 0; w < walls; w++) {
                faced[front[w]] = true;
                if (back[w] >= 0) {
                    faced[back[w]] = true;
                }
            }
            for (int z = 0; z < zones; z++) {
                if (!faced[z]) {
                    throw new IllegalArgumentException(
                            "zone " + z + " has no face, but needs at least one");
                }
            }
            return new HouseModel(this);
        }
    }
}
