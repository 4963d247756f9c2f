package dev.thinair.psychro;

import dev.thinair.units.MassFlow;
import dev.thinair.units.QuantityText;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * Air that has taken up other air or water: clear, or with fog in it.
 *
 * <p>Fog is in equilibrium: saturated air and droplets (ice crystals below 0 degC, both at exactly
 * 0 degC) at one temperature, which is higher than the dry bulb that the balances alone would give.
 */
public sealed interface Mixture {

    /**
     * The air itself; in fog the saturated air between the droplets.
     *
     * @return the stream
     */
    AirStream stream();

    /**
     * Clear air.
     *
     * @param stream the air
     */
    record Clear(AirStream stream) implements Mixture {

        /**
         * Checks the component.
         *
         * @param stream see the record
         * @throws NullPointerException if stream is null
         */
        public Clear {
            Objects.requireNonNull(stream, "stream");
        }

        /**
         * The air in words.
         *
         * @return the text
         */
        @Override
        public String toString() {
            return "clear: " + stream;
        }
    }

    /**
     * Saturated air with condensed water in it.
     *
     * @param stream the saturated air
     * @param liquid mass flow of droplets, kg/s
     * @param ice mass flow of ice crystals, kg/s
     */
    record Fog(AirStream stream, Quantity<MassFlow> liquid, Quantity<MassFlow> ice)
            implements Mixture {

        /**
         * Checks the components.
         *
         * @param stream see the record
         * @param liquid see the record
         * @param ice see the record
         * @throws NullPointerException if one is null
         */
        public Fog {
            Objects.requireNonNull(stream, "stream");
            Objects.requireNonNull(liquid, "liquid");
            Objects.requireNonNull(ice, "ice");
        }

        /**
         * The air and its fog in words.
         *
         * @return the text
         */
        @Override
        public String toString() {
            return "fog: "
                    + QuantityText.formatBoth(liquid, 4)
                    + " liquid and "
                    + QuantityText.formatBoth(ice, 4)
                    + " ice in "
                    + stream;
        }
    }
}
