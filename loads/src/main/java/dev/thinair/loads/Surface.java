package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * One face of a room: a wall, roof, ceiling, floor, partition or inner mass, with its windows and
 * doors. The area given is gross, openings included, as a survey measures it. Immutable.
 *
 * <pre>{@code
 * Surface south = Surface.wall("south wall", studWall)
 *         .size(feet(24), feet(8)).facing(degrees(180))
 *         .window(picture).build();
 * Surface ceiling = Surface.ceiling("ceiling", joists).area(squareFeet(300)).under("attic").build();
 * }</pre>
 */
public final class Surface {

    /** What part of the room a surface is; it settles films, and where its load is booked. */
    public enum Kind {
        /** A vertical or steep outer wall. */
        WALL,
        /** A roof whose inside is the room's ceiling, or the roof of an attic. */
        ROOF,
        /** A ceiling under another space. */
        CEILING,
        /** A floor over another space, over open air or on the ground. */
        FLOOR,
        /** A wall to another room. */
        PARTITION,
        /** Mass that stands in the room, both faces in its air. */
        MASS
    }

    private final String name;
    private final Kind kind;
    private final Assembly assembly;
    private final double area;
    private final double azimuth;
    private final double tilt;
    private final double absorptance;
    private final double emissivity;
    private final Adjacency adjacency;
    private final List<Window> windows;
    private final List<Door> doors;

    private Surface(Builder b) {
        this.name = b.name;
        this.kind = b.kind;
        this.assembly = b.assembly;
        this.area = b.area;
        this.azimuth = b.azimuth;
        this.tilt = b.tilt;
        this.absorptance = b.absorptance;
        this.emissivity = b.emissivity;
        this.adjacency = b.adjacency;
        this.windows = List.copyOf(b.windows);
        this.doors = List.copyOf(b.doors);
    }

    /**
     * Starts an outer wall, vertical unless tilted.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of
     * @return a builder
     */
    public static Builder wall(String name, Assembly assembly) {
        return new Builder(Kind.WALL, name, assembly);
    }

    /**
     * Starts a roof, level unless tilted.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of
     * @return a builder
     */
    public static Builder roof(String name, Assembly assembly) {
        return new Builder(Kind.ROOF, name, assembly);
    }

    /**
     * Starts a ceiling; say what is above with {@link Builder#under}.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of; its outside is the upper face
     * @return a builder
     */
    public static Builder ceiling(String name, Assembly assembly) {
        return new Builder(Kind.CEILING, name, assembly);
    }

    /**
     * Starts a floor; say what is below with {@link Builder#onGround} or {@link Builder#over}. Left
     * unsaid, it hangs over open air.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of; its outside is the lower face
     * @return a builder
     */
    public static Builder floor(String name, Assembly assembly) {
        return new Builder(Kind.FLOOR, name, assembly);
    }

    /**
     * Starts a partition; say which room is behind with {@link Builder#to}.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of
     * @return a builder
     */
    public static Builder partition(String name, Assembly assembly) {
        return new Builder(Kind.PARTITION, name, assembly);
    }

    /**
     * Starts inner mass: both faces are in the room's air. The area counts one face.
     *
     * @param name what it is called in tables, not blank
     * @param assembly what it is built of
     * @return a builder
     */
    public static Builder mass(String name, Assembly assembly) {
        return new Builder(Kind.MASS, name, assembly);
    }

    /** Collects a surface's description. Not thread-safe. */
    public static final class Builder {
        private final Kind kind;
        private final String name;
        private final Assembly assembly;
        private final List<Window> windows = new ArrayList<>();
        private final List<Door> doors = new ArrayList<>();
        private double area = Double.NaN;
        private double azimuth = Double.NaN;
        private double tilt;
        private double absorptance = 0.6;
        private double emissivity = 0.9;
        private Adjacency adjacency;

        private Builder(Kind kind, String name, Assembly assembly) {
            this.kind = kind;
            this.name = Texts.requireText("surface name", name);
            this.assembly = Objects.requireNonNull(assembly, "assembly of " + name + " is null");
            this.tilt =
                    switch (kind) {
                        case ROOF, CEILING -> 0;
                        case FLOOR -> Math.PI;
                        default -> Math.PI / 2;
                    };
        }

        /**
         * Gross area, openings included.
         *
         * @param area 0.01 to 100000 m2
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder area(Quantity<Area> area) {
            double a = Si.squareMetres(area, "area of " + name);
            Range.require("area of " + name, a, 0.01, 1e5, "m2");
            this.area = a;
            return this;
        }

        /**
         * Gross area as width times height.
         *
         * @param width above 0
         * @param height above 0
         * @return this builder
         * @throws IllegalArgumentException if a length is not above 0 or the area is outside 0.01
         *     to 100000 m2
         */
        public Builder size(Quantity<Length> width, Quantity<Length> height) {
            double w = Si.metres(width, "width of " + name);
            double h = Si.metres(height, "height of " + name);
            Range.requireAbove("width of " + name, w, 0, "m");
            Range.requireAbove("height of " + name, h, 0, "m");
            Range.require("area of " + name, w * h, 0.01, 1e5, "m2");
            this.area = w * h;
            return this;
        }

        /**
         * Compass direction that the outer face looks to: 0 north, 90 east, 180 south, 270 west.
         *
         * @param azimuth -360 to 360 degrees
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder facing(Quantity<Angle> azimuth) {
            double a = Si.radians(azimuth, "azimuth of " + name);
            Range.require(
                    "azimuth of " + name, Math.toDegrees(a), -360.000001, 360.000001, "degrees");
            this.azimuth = a;
            return this;
        }

        /**
         * Angle of the outer face from level: 0 looks up, 90 degrees is a wall, 180 looks down.
         *
         * @param tilt 0 to 180 degrees
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder tilt(Quantity<Angle> tilt) {
            double t = Si.radians(tilt, "tilt of " + name);
            Range.require("tilt of " + name, Math.toDegrees(t), 0, 180.000001, "degrees");
            this.tilt = Math.min(t, Math.PI);
            return this;
        }

        /**
         * Share of sunshine that the outer face absorbs; 0.6 unless said.
         *
         * @param absorptance 0 to 1
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder absorptance(Quantity<Dimensionless> absorptance) {
            double a = Si.ratio(absorptance, "solar absorptance of " + name);
            Range.require("solar absorptance of " + name, a, 0, 1, "");
            this.absorptance = a;
            return this;
        }

        /**
         * Long-wave emissivity of the outer face; 0.9 unless said.
         *
         * @param emissivity 0 to 1
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder emissivity(Quantity<Dimensionless> emissivity) {
            double e = Si.ratio(emissivity, "emissivity of " + name);
            Range.require("emissivity of " + name, e, 0, 1, "");
            this.emissivity = e;
            return this;
        }

        /**
         * Puts windows into the surface.
         *
         * @param window one or more windows
         * @return this builder
         */
        public Builder window(Window... window) {
            for (Window one : window) {
                windows.add(Objects.requireNonNull(one, "window of " + name + " is null"));
            }
            return this;
        }

        /**
         * Puts doors into the surface.
         *
         * @param door one or more doors
         * @return this builder
         */
        public Builder door(Door... door) {
            for (Door one : door) {
                doors.add(Objects.requireNonNull(one, "door of " + name + " is null"));
            }
            return this;
        }

        /**
         * Names the space above a ceiling.
         *
         * @param space a room or unconditioned space of the house
         * @return this builder
         */
        public Builder under(String space) {
            return nextTo(new Adjacency.Space(space));
        }

        /**
         * Names the space below a floor.
         *
         * @param space a room or unconditioned space of the house
         * @return this builder
         */
        public Builder over(String space) {
            return nextTo(new Adjacency.Space(space));
        }

        /**
         * Names the space behind a partition or wall.
         *
         * @param space a room or unconditioned space of the house
         * @return this builder
         */
        public Builder to(String space) {
            return nextTo(new Adjacency.Space(space));
        }

        /**
         * Lays the surface on or against the ground.
         *
         * @param ground how heat reaches the ground
         * @return this builder
         */
        public Builder onGround(Ground ground) {
            return nextTo(new Adjacency.Earth(ground));
        }

        /**
         * Lets no heat through the far face.
         *
         * @return this builder
         */
        public Builder adiabatic() {
            return nextTo(new Adjacency.Adiabatic());
        }

        /**
         * Puts a space of steady temperature behind the surface.
         *
         * @param temperature its temperature, -60 to 80 C
         * @return this builder
         */
        public Builder toSpaceAt(Quantity<Temperature> temperature) {
            return nextTo(new Adjacency.Other(temperature));
        }

        /**
         * Says what the far face faces.
         *
         * @param adjacency what it faces
         * @return this builder
         */
        public Builder nextTo(Adjacency adjacency) {
            this.adjacency = Objects.requireNonNull(adjacency, "adjacency of " + name + " is null");
            return this;
        }

        /**
         * Finishes the surface.
         *
         * @return the surface
         * @throws IllegalArgumentException if the area is missing, the openings take the whole
         *     area, an outdoor wall has no direction, or openings are in a surface that does not
         *     face outdoors
         */
        public Surface build() {
            if (Double.isNaN(area)) {
                throw new IllegalArgumentException(
                        "surface \"" + name + "\" has no area, but needs one");
            }
            if (adjacency == null) {
                if (kind == Kind.CEILING || kind == Kind.PARTITION) {
                    throw new IllegalArgumentException(
                            "surface \""
                                    + name
                                    + "\" is a "
                                    + kind.name().toLowerCase(Locale.ROOT)
                                    + ", so it must say what is behind it (under, to, adiabatic, toSpaceAt)");
                }
                adjacency =
                        kind == Kind.MASS ? new Adjacency.Adiabatic() : new Adjacency.Outdoors();
            }
            boolean outdoors = adjacency instanceof Adjacency.Outdoors;
            if (kind == Kind.MASS && !(adjacency instanceof Adjacency.Adiabatic)) {
                throw new IllegalArgumentException(
                        "surface \"" + name + "\" is inner mass, so nothing can be behind it");
            }
            boolean level = Math.sin(tilt) < 1e-9;
            if (outdoors && Double.isNaN(azimuth) && !level) {
                throw new IllegalArgumentException(
                        "surface \""
                                + name
                                + "\" faces outdoors at a tilt, so it needs a direction (facing)");
            }
            if (Double.isNaN(azimuth)) {
                azimuth = 0;
            }
            if (!outdoors && !(windows.isEmpty() && doors.isEmpty())) {
                throw new IllegalArgumentException(
                        "surface \""
                                + name
                                + "\" does not face outdoors, so it cannot hold windows or doors");
            }
            double open = 0;
            for (Window window : windows) {
                open += window.squareMetres();
            }
            for (Door door : doors) {
                open += door.squareMetres();
            }
            if (!(open < area)) {
                throw new IllegalArgumentException(
                        String.format(
                                Locale.ROOT,
                                "windows and doors of \"%s\" take %.3f m2, but must take less than its %.3f m2",
                                name,
                                open,
                                area));
            }
            return new Surface(this);
        }
    }

    /**
     * The surface's name.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * What part of the room it is.
     *
     * @return kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What it is built of.
     *
     * @return assembly
     */
    public Assembly assembly() {
        return assembly;
    }

    /**
     * Gross area, openings included.
     *
     * @return area, given in m2
     */
    public Quantity<Area> grossArea() {
        return Units.squareMetres(area);
    }

    /**
     * Net opaque area.
     *
     * @return area, given in m2
     */
    public Quantity<Area> netArea() {
        return Units.squareMetres(netSquareMetres());
    }

    /**
     * Gross area for kernel calls.
     *
     * @return area, m2
     */
    public double grossSquareMetres() {
        return area;
    }

    /**
     * Net opaque area for kernel calls.
     *
     * @return area, m2
     */
    public double netSquareMetres() {
        double net = area;
        for (Window window : windows) {
            net -= window.squareMetres();
        }
        for (Door door : doors) {
            net -= door.squareMetres();
        }
        return net;
    }

    /**
     * Compass direction of the outer face, from north clockwise.
     *
     * @return azimuth, given in degrees
     */
    public Quantity<Angle> azimuth() {
        return Units.degrees(Math.toDegrees(azimuth));
    }

    /**
     * Angle of the outer face from level.
     *
     * @return tilt, given in degrees
     */
    public Quantity<Angle> tilt() {
        return Units.degrees(Math.toDegrees(tilt));
    }

    /**
     * Azimuth for kernel calls.
     *
     * @return azimuth from north clockwise, rad
     */
    public double azimuthRadians() {
        return azimuth;
    }

    /**
     * Tilt for kernel calls.
     *
     * @return tilt, rad
     */
    public double tiltRadians() {
        return tilt;
    }

    /**
     * Share of sunshine that the outer face absorbs.
     *
     * @return absorptance, 0 to 1
     */
    public double solarAbsorptance() {
        return absorptance;
    }

    /**
     * Long-wave emissivity of the outer face.
     *
     * @return emissivity, 0 to 1
     */
    public double longwaveEmissivity() {
        return emissivity;
    }

    /**
     * What the far face faces.
     *
     * @return adjacency
     */
    public Adjacency adjacency() {
        return adjacency;
    }

    /**
     * Windows in the surface.
     *
     * @return windows
     */
    public List<Window> windows() {
        return windows;
    }

    /**
     * Doors in the surface.
     *
     * @return doors
     */
    public List<Door> doors() {
        return doors;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %s %.2f m2 (net %.2f) of %s",
                name,
                kind.name().toLowerCase(Locale.ROOT),
                area,
                netSquareMetres(),
                assembly.name());
    }
}
