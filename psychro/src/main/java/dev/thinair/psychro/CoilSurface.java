package dev.thinair.psychro;

import dev.thinair.psychro.kernel.CoilLine;
import dev.thinair.psychro.kernel.CoolingCoil;
import dev.thinair.units.Units;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/** What coil surface explains the air before and behind it. */
public sealed interface CoilSurface {

    /**
     * A wet surface.
     *
     * @param apparatusDewPoint where the line through both states first meets the saturation curve
     *     beyond the leaving state
     * @param bypassFactor share of the way from there to the entering state, 0 to 1
     */
    record Wet(Quantity<Temperature> apparatusDewPoint, Quantity<Dimensionless> bypassFactor)
            implements CoilSurface {

        /**
         * Checks the components.
         *
         * @param apparatusDewPoint see the record
         * @param bypassFactor see the record
         * @throws NullPointerException if one is null
         */
        public Wet {
            Objects.requireNonNull(apparatusDewPoint, "apparatusDewPoint");
            Objects.requireNonNull(bypassFactor, "bypassFactor");
        }
    }

    /**
     * A dry surface, not colder than the dew point. Its temperature and bypass factor cannot both
     * be told from the air.
     *
     * @param dewPoint dew point of the air (-100 degC if it has none), the lowest surface
     *     temperature that stays dry
     */
    record Dry(Quantity<Temperature> dewPoint) implements CoilSurface {

        /**
         * Checks the component.
         *
         * @param dewPoint see the record
         * @throws NullPointerException if dewPoint is null
         */
        public Dry {
            Objects.requireNonNull(dewPoint, "dewPoint");
        }
    }

    /**
     * No surface explains the two states.
     *
     * @param reason why, in words
     */
    record NoState(String reason) implements CoilSurface {

        /**
         * Checks the component.
         *
         * @param reason see the record
         * @throws NullPointerException if reason is null
         */
        public NoState {
            Objects.requireNonNull(reason, "reason");
        }
    }

    /**
     * Finds the surface; {@link AirStream#coilSurfaceTo} does the same.
     *
     * @param entering the entering state
     * @param leaving the leaving state, at the same pressure and in the same formulation
     * @return the surface, or the reason why there is none
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if pressures differ by more than 1e-9 relative, or the
     *     formulations differ
     */
    static CoilSurface of(MoistAir entering, MoistAir leaving) {
        double p = entering.pressurePascals();
        if (!(Math.abs(p - leaving.pressurePascals()) <= 1e-9 * p)) {
            throw new IllegalArgumentException(
                    "air pressure behind the coil is "
                            + leaving.pressurePascals()
                            + " Pa, but must be that before it, "
                            + p
                            + " Pa");
        }
        if (entering.formulation() != leaving.formulation()) {
            throw new IllegalArgumentException(
                    "formulation of the leaving air is "
                            + leaving.formulation()
                            + ", but must be that of the entering air, "
                            + entering.formulation());
        }
        CoilLine line =
                CoolingCoil.line(
                        entering.model(),
                        entering.dryBulbKelvins(),
                        entering.humidityRatioNumber(),
                        leaving.dryBulbKelvins(),
                        leaving.humidityRatioNumber(),
                        p);
        if (line instanceof CoilLine.Wet wet) {
            return new Wet(
                    Units.celsius(wet.apparatusDewPoint() - 273.15),
                    Units.ratio(wet.bypassFactor()));
        }
        if (line instanceof CoilLine.Dry dry) {
            return new Dry(Units.celsius(dry.dewPoint() - 273.15));
        }
        return new NoState(((CoilLine.NoState) line).reason());
    }
}
