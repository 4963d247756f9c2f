package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * A house as surveyed: rooms and unconditioned spaces, how air leaks and is brought in, what its
 * ducts gain and lose. Immutable. Described once, then {@link #compile compiled} and run many
 * times.
 *
 * <pre>{@code
 * House house = House.named("ridge house")
 *         .room(living).room(bedroom).room(attic)
 *         .infiltration(leakage).ventilation(fan)
 *         .build();
 * DesignLoad load = house.compile(site).coolingLoad(day, Setpoint.residentialCooling());
 * System.out.println(load.table());
 * }</pre>
 */
public final class House {
    private final String name;
    private final List<Room> rooms;
    private final Infiltration infiltration;
    private final Ventilation ventilation;
    private final Films summer;
    private final Films winter;
    private final double ductGain;
    private final double ductLoss;

    private House(Builder b) {
        this.name = b.name;
        this.rooms = List.copyOf(b.rooms);
        this.infiltration = b.infiltration;
        this.ventilation = b.ventilation;
        this.summer = b.summer;
        this.winter = b.winter;
        this.ductGain = b.ductGain;
        this.ductLoss = b.ductLoss;
    }

    /**
     * Starts a house.
     *
     * @param name what it is called, not blank
     * @return a builder
     * @throws IllegalArgumentException if blank
     */
    public static Builder named(String name) {
        return new Builder(Texts.requireText("house name", name));
    }

    /** Collects a house's description. Not thread-safe. */
    public static final class Builder {
        private final String name;
        private final List<Room> rooms = new ArrayList<>();
        private Infiltration infiltration = Infiltration.none();
        private Ventilation ventilation = Ventilation.none();
        private Films summer = Films.summer();
        private Films winter = Films.winter();
        private double ductGain;
        private double ductLoss;

        private Builder(String name) {
            this.name = name;
        }

        /**
         * Adds rooms and unconditioned spaces.
         *
         * @param room one or more
         * @return this builder
         */
        public Builder room(Room... room) {
            for (Room one : room) {
                rooms.add(Objects.requireNonNull(one, "room of " + name + " is null"));
            }
            return this;
        }

        /**
         * Adds a room as its builder stands.
         *
         * @param room builder of the room
         * @return this builder
         * @throws IllegalArgumentException if the room cannot be built
         */
        public Builder room(Room.Builder room) {
            return room(room.build());
        }

        /**
         * How air leaks in; none unless said. It is shared out by the area through which rooms face
         * outdoors or unconditioned spaces.
         *
         * @param infiltration of the whole house
         * @return this builder
         */
        public Builder infiltration(Infiltration infiltration) {
            this.infiltration = Objects.requireNonNull(infiltration, "infiltration is null");
            return this;
        }

        /**
         * How fans bring outdoor air; none unless said. It is shared out by floor area.
         *
         * @param ventilation of the whole house
         * @return this builder
         */
        public Builder ventilation(Ventilation ventilation) {
            this.ventilation = Objects.requireNonNull(ventilation, "ventilation is null");
            return this;
        }

        /**
         * Coefficients at the faces; {@link Films#summer} and {@link Films#winter} unless said.
         *
         * @param cooling for cooling loads and the network
         * @param heating for heating loads
         * @return this builder
         */
        public Builder films(Films cooling, Films heating) {
            this.summer = Objects.requireNonNull(cooling, "films for cooling are null");
            this.winter = Objects.requireNonNull(heating, "films for heating are null");
            return this;
        }

        /**
         * What the ducts add, as shares of the rooms' sensible loads; none unless said.
         *
         * @param coolingGain share added to the cooling load, 0 to 100 %
         * @param heatingLoss share added to the heating load, 0 to 100 %
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder ducts(
                Quantity<Dimensionless> coolingGain, Quantity<Dimensionless> heatingLoss) {
            double gain = Si.ratio(coolingGain, "duct gain in cooling");
            double loss = Si.ratio(heatingLoss, "duct loss in heating");
            Range.require("duct gain in cooling", gain, 0, 1, "");
            Range.require("duct loss in heating", loss, 0, 1, "");
            ductGain = gain;
            ductLoss = loss;
            return this;
        }

        /**
         * Finishes the house.
         *
         * @return the house
         * @throws IllegalArgumentException if no room is conditioned, two rooms share a name, or a
         *     surface names a space that does not exist or its own room
         */
        public House build() {
            Map<String, Room> byName = new HashMap<>();
            boolean conditioned = false;
            for (Room room : rooms) {
                if (byName.put(room.name(), room) != null) {
                    throw new IllegalArgumentException(
                            "house \"" + name + "\" has two rooms named \"" + room.name() + "\"");
                }
                conditioned |= room.conditioned();
            }
            if (!conditioned) {
                throw new IllegalArgumentException(
                        "house \"" + name + "\" has no conditioned room, but needs at least one");
            }
            for (Room room : rooms) {
                for (Surface surface : room.surfaces()) {
                    if (surface.adjacency() instanceof Adjacency.Space s) {
                        if (!byName.containsKey(s.space())) {
                            throw new IllegalArgumentException(
                                    "surface \""
                                            + surface.name()
                                            + "\" of \""
                                            + room.name()
                                            + "\" is next to \""
                                            + s.space()
                                            + "\", but the house has "
                                            + byName.keySet());
                        }
                        if (s.space().equals(room.name())) {
                            throw new IllegalArgumentException(
                                    "surface \""
                                            + surface.name()
                                            + "\" of \""
                                            + room.name()
                                            + "\" is next to its own room: use Surface.mass");
                        }
                    }
                }
            }
            return new House(this);
        }
    }

    /**
     * The house's name.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Rooms and unconditioned spaces, in the order given.
     *
     * @return rooms
     */
    public List<Room> rooms() {
        return rooms;
    }

    /**
     * A room by name.
     *
     * @param room its name
     * @return the room
     * @throws IllegalArgumentException if there is none of that name
     */
    public Room room(String room) {
        for (Room one : rooms) {
            if (one.name().equals(room)) {
                return one;
            }
        }
        throw new IllegalArgumentException(
                "there is no room \"" + room + "\" in house \"" + name + "\"");
    }

    /**
     * How air leaks in.
     *
     * @return infiltration of the whole house
     */
    public Infiltration infiltration() {
        return infiltration;
    }

    /**
     * How fans bring outdoor air.
     *
     * @return ventilation of the whole house
     */
    public Ventilation ventilation() {
        return ventilation;
    }

    /**
     * Coefficients at the faces for cooling.
     *
     * @return films
     */
    public Films coolingFilms() {
        return summer;
    }

    /**
     * Coefficients at the faces for heating.
     *
     * @return films
     */
    public Films heatingFilms() {
        return winter;
    }

    /**
     * Share that the ducts add to sensible cooling loads.
     *
     * @return share, 0 to 1
     */
    public double ductGain() {
        return ductGain;
    }

    /**
     * Share that the ducts add to heating loads.
     *
     * @return share, 0 to 1
     */
    public double ductLoss() {
        return ductLoss;
    }

    /**
     * Compiles the house for a site. The site sets the density of the air that flows through
     * unconditioned spaces; design days bring their own weather.
     *
     * @param site where the house stands
     * @return the compiled house
     * @throws IllegalArgumentException if the house cannot be balanced, with the reason
     */
    public CompiledHouse compile(Site site) {
        return CompiledHouse.of(this, site);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %d rooms and spaces, infiltration %s",
                name,
                rooms.size(),
                infiltration);
    }
}
