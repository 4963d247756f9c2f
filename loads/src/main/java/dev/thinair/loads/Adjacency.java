package dev.thinair.loads;

import dev.thinair.units.Si;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** What the far side of a surface faces. Immutable. */
public sealed interface Adjacency {

    /** Outdoor air, sun and sky; where to, the surface's azimuth and tilt say. */
    record Outdoors() implements Adjacency {}

    /**
     * Another room or unconditioned space of the same house, by name. The surface is declared once,
     * in one of the two.
     *
     * @param space name of that room, not blank
     */
    record Space(String space) implements Adjacency {
        /**
         * Checks the name.
         *
         * @param space name of that room
         * @throws IllegalArgumentException if blank
         */
        public Space {
            Texts.requireText("name of the adjacent space", space);
        }
    }

    /**
     * The ground.
     *
     * @param ground how heat reaches it
     */
    record Earth(Ground ground) implements Adjacency {
        /**
         * Checks for null.
         *
         * @param ground how heat reaches it
         */
        public Earth {
            if (ground == null) {
                throw new NullPointerException("ground contact is null");
            }
        }
    }

    /**
     * Nothing passes: a partition to a like space outside the house, or the middle of a thick mass.
     */
    record Adiabatic() implements Adjacency {}

    /**
     * A space outside the house at a steady temperature, such as a neighbour's flat.
     *
     * @param temperature its temperature
     */
    record Other(Quantity<Temperature> temperature) implements Adjacency {
        /**
         * Checks the temperature.
         *
         * @param temperature its temperature, -60 to 80 C
         * @throws IllegalArgumentException if outside that range
         */
        public Other {
            dev.thinair.units.Range.require(
                    "temperature of the adjacent space",
                    Si.kelvins(temperature, "temperature of the adjacent space"),
                    213.15,
                    353.15,
                    "K");
        }
    }
}
