package dev.thinair.loads;

import dev.thinair.units.AirChangeRate;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/**
 * A room, or an unconditioned space such as an attic, a crawlspace or a garage: its air, its
 * surfaces and what gives off heat in it. Immutable.
 *
 * <pre>{@code
 * Room living = Room.named("living room")
 *         .floorArea(squareFeet(320)).height(feet(8))
 *         .surface(south).surface(ceiling).surface(floor)
 *         .gain(Occupants.tradeAllowance(2)).build();
 * Room attic = Room.unconditioned("attic")
 *         .volume(cubicMetres(120)).outdoorAir(airChangesPerHour(3))
 *         .surface(northRoof).surface(southRoof).build();
 * }</pre>
 */
public final class Room {
    private final String name;
    private final boolean conditioned;
    private final double floorArea;
    private final double volume;
    private final double airChanges;
    private final double furniture;
    private final List<Surface> surfaces;
    private final List<InternalGain> gains;

    private Room(Builder b) {
        this.name = b.name;
        this.conditioned = b.conditioned;
        this.floorArea = b.floorArea;
        this.volume = b.volume;
        this.airChanges = b.airChanges;
        this.furniture = b.furniture;
        this.surfaces = List.copyOf(b.surfaces);
        this.gains = List.copyOf(b.gains);
    }

    /**
     * Starts a room that is kept at a setpoint.
     *
     * @param name what it is called, not blank; unique in the house
     * @return a builder
     */
    public static Builder named(String name) {
        return new Builder(name, true);
    }

    /**
     * Starts a space whose temperature follows from its own balance.
     *
     * @param name what it is called, not blank; unique in the house
     * @return a builder
     */
    public static Builder unconditioned(String name) {
        return new Builder(name, false);
    }

    /** Collects a room's description. Not thread-safe. */
    public static final class Builder {
        private final String name;
        private final boolean conditioned;
        private final List<Surface> surfaces = new ArrayList<>();
        private final List<InternalGain> gains = new ArrayList<>();
        private double floorArea = Double.NaN;
        private double height = Double.NaN;
        private double volume = Double.NaN;
        private double airChanges;
        private double furniture = Double.NaN;

        private Builder(String name, boolean conditioned) {
            this.name = Texts.requireText("room name", name);
            this.conditioned = conditioned;
        }

        /**
         * Floor area.
         *
         * @param area 0.1 to 10000 m2
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder floorArea(Quantity<Area> area) {
            double a = Si.squareMetres(area, "floor area of " + name);
            Range.require("floor area of " + name, a, 0.1, 10_000, "m2");
            floorArea = a;
            return this;
        }

        /**
         * Clear height.
         *
         * @param height 0.3 to 30 m
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder height(Quantity<Length> height) {
            double h = Si.metres(height, "height of " + name);
            Range.require("height of " + name, h, 0.3, 30, "m");
            this.height = h;
            return this;
        }

        /**
         * Volume of air, where floor area times height does not give it.
         *
         * @param volume 0.1 to 100000 m3
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder volume(Quantity<Volume> volume) {
            double v = Si.cubicMetres(volume, "volume of " + name);
            Range.require("volume of " + name, v, 0.1, 1e5, "m3");
            this.volume = v;
            return this;
        }

        /**
         * Outdoor air through an unconditioned space.
         *
         * @param rate 0 to 100 air changes per hour
         * @return this builder
         * @throws IllegalArgumentException if outside that range, or if the room is conditioned
         *     (its outdoor air comes from the house's infiltration and ventilation)
         */
        public Builder outdoorAir(Quantity<AirChangeRate> rate) {
            if (conditioned) {
                throw new IllegalArgumentException(
                        "room \""
                                + name
                                + "\" is conditioned, so its outdoor air comes from the house's"
                                + " infiltration and ventilation");
            }
            double n = Si.perSecond(rate, "air changes of " + name);
            Range.require("air changes of " + name, n * 3600, 0, 100, "1/h");
            airChanges = n;
            return this;
        }

        /**
         * Heat capacity of furniture and air per floor area; 10 kJ/(m2 K) unless said (the default
         * of ISO 52016-1:2017, 6.5.11, from memory), and for an unconditioned space the air alone.
         *
         * @param joulesPerSquareMetreKelvin 0 to 1e6 J/(m2 K)
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder furniture(double joulesPerSquareMetreKelvin) {
            Range.require(
                    "furniture capacity of " + name,
                    joulesPerSquareMetreKelvin,
                    0,
                    1e6,
                    "J/(m2 K)");
            furniture = joulesPerSquareMetreKelvin;
            return this;
        }

        /**
         * Adds surfaces.
         *
         * @param surface one or more surfaces
         * @return this builder
         */
        public Builder surface(Surface... surface) {
            for (Surface one : surface) {
                surfaces.add(Objects.requireNonNull(one, "surface of " + name + " is null"));
            }
            return this;
        }

        /**
         * Adds a surface as its builder stands.
         *
         * @param surface builder of the surface
         * @return this builder
         * @throws IllegalArgumentException if the surface cannot be built
         */
        public Builder surface(Surface.Builder surface) {
            return surface(surface.build());
        }

        /**
         * Adds heat given off in the room.
         *
         * @param gain people, appliances or lights
         * @return this builder
         */
        public Builder gain(InternalGain... gain) {
            for (InternalGain one : gain) {
                gains.add(Objects.requireNonNull(one, "gain of " + name + " is null"));
            }
            return this;
        }

        /**
         * Finishes the room.
         *
         * @return the room
         * @throws IllegalArgumentException if volume or surfaces are missing, or two surfaces share
         *     a name
         */
        public Room build() {
            if (Double.isNaN(volume)) {
                if (Double.isNaN(floorArea) || Double.isNaN(height)) {
                    throw new IllegalArgumentException(
                            "room \""
                                    + name
                                    + "\" has no air: give its volume, or floor area and height");
                }
                volume = floorArea * height;
            }
            if (Double.isNaN(floorArea)) {
                if (conditioned) {
                    throw new IllegalArgumentException(
                            "room \"" + name + "\" has no floor area, but needs one");
                }
                floorArea = 0;
            }
            if (surfaces.isEmpty()) {
                throw new IllegalArgumentException(
                        "room \"" + name + "\" has no surface, but needs at least one");
            }
            Set<String> names = new HashSet<>();
            for (Surface surface : surfaces) {
                if (!names.add(surface.name())) {
                    throw new IllegalArgumentException(
                            "room \""
                                    + name
                                    + "\" has two surfaces named \""
                                    + surface.name()
                                    + "\"");
                }
            }
            if (Double.isNaN(furniture)) {
                furniture = conditioned ? 10_000 : 0;
            }
            return new Room(this);
        }
    }

    /**
     * The room's name.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Whether the room is kept at a setpoint.
     *
     * @return true for a room, false for an attic and the like
     */
    public boolean conditioned() {
        return conditioned;
    }

    /**
     * Floor area.
     *
     * @return area, given in m2; 0 for an unconditioned space that did not give one
     */
    public Quantity<Area> floorArea() {
        return Units.squareMetres(floorArea);
    }

    /**
     * Volume of air.
     *
     * @return volume, given in m3
     */
    public Quantity<Volume> volume() {
        return Units.cubicMetres(volume);
    }

    /**
     * Floor area for kernel calls.
     *
     * @return area, m2
     */
    public double floorSquareMetres() {
        return floorArea;
    }

    /**
     * Volume for kernel calls.
     *
     * @return volume, m3
     */
    public double volumeCubicMetres() {
        return volume;
    }

    /**
     * Outdoor air through an unconditioned space, for kernel calls.
     *
     * @return air changes, 1/s
     */
    public double airChangesPerSecond() {
        return airChanges;
    }

    /**
     * Heat capacity of furniture (with the air, where conditioned) per floor area.
     *
     * @return capacity, J/(m2 K)
     */
    public double furnitureJoulesPerSquareMetreKelvin() {
        return furniture;
    }

    /**
     * Surfaces declared in this room.
     *
     * @return surfaces
     */
    public List<Surface> surfaces() {
        return surfaces;
    }

    /**
     * What gives off heat in the room.
     *
     * @return gains
     */
    public List<InternalGain> gains() {
        return gains;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s%s: floor %.1f m2, volume %.1f m3, %d surfaces, %d gains",
                name,
                conditioned ? "" : " (unconditioned)",
                floorArea,
                volume,
                surfaces.size(),
                gains.size());
    }
}
