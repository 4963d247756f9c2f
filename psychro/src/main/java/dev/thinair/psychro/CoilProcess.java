package dev.thinair.psychro;

import dev.thinair.psychro.kernel.AirModel;
import dev.thinair.psychro.kernel.CoilOutcome;
import dev.thinair.psychro.kernel.CoolingCoil;
import dev.thinair.units.MassFlow;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * What a cooling coil of given apparatus dew point and bypass factor does to a stream. In dry
 * mountain air coils often run dry, so that case is a type of its own.
 */
public sealed interface CoilProcess {

    /**
     * The coil takes moisture out.
     *
     * @param entering the entering stream
     * @param leaving the leaving stream
     * @param apparatusDewPoint apparatus dew point
     * @param bypassFactor bypass factor
     * @param heat heat removed by the coil, W, with the condensate leaving as liquid (ice below 0
     *     degC) at the leaving dry bulb
     * @param sensibleHeat heat that the fall in dry bulb stands for, W, at the leaving humidity
     *     ratio
     * @param latentHeat heat that the fall in humidity ratio stands for, W; sensible and latent
     *     heat add up to the enthalpy drop of the air, which is {@code heat} plus what the
     *     condensate carries away
     * @param sensibleHeatRatio sensible heat over the enthalpy drop of the air
     * @param condensate condensate, kg/s
     */
    record Wet(
            AirStream entering,
            AirStream leaving,
            Quantity<Temperature> apparatusDewPoint,
            Quantity<Dimensionless> bypassFactor,
            Quantity<Power> heat,
            Quantity<Power> sensibleHeat,
            Quantity<Power> latentHeat,
            Quantity<Dimensionless> sensibleHeatRatio,
            Quantity<MassFlow> condensate)
            implements CoilProcess {

        /**
         * Checks the components.
         *
         * @param entering see the record
         * @param leaving see the record
         * @param apparatusDewPoint see the record
         * @param bypassFactor see the record
         * @param heat see the record
         * @param sensibleHeat see the record
         * @param latentHeat see the record
         * @param sensibleHeatRatio see the record
         * @param condensate see the record
         * @throws NullPointerException if one is null
         */
        public Wet {
            Objects.requireNonNull(entering, "entering");
            Objects.requireNonNull(leaving, "leaving");
            Objects.requireNonNull(apparatusDewPoint, "apparatusDewPoint");
            Objects.requireNonNull(bypassFactor, "bypassFactor");
            Objects.requireNonNull(heat, "heat");
            Objects.requireNonNull(sensibleHeat, "sensibleHeat");
            Objects.requireNonNull(latentHeat, "latentHeat");
            Objects.requireNonNull(sensibleHeatRatio, "sensibleHeatRatio");
            Objects.requireNonNull(condensate, "condensate");
        }

        /**
         * The steps.
         *
         * @return the working; its last line is {@link #heat()}
         */
        public Working working() {
            return Workings.coil(this);
        }

        /**
         * The process in words, one part a line.
         *
         * @return the text
         */
        @Override
        public String toString() {
            return "wet coil removes "
                    + QuantityText.formatBoth(heat, 4)
                    + ", sensible heat ratio "
                    + QuantityText.format(sensibleHeatRatio, 3)
                    + ", condensate "
                    + QuantityText.formatBoth(condensate, 4)
                    + "\n  entering "
                    + entering
                    + "\n  leaving  "
                    + leaving;
        }
    }

    /**
     * The coil stays dry: the entering dew point is not above the surface temperature.
     *
     * @param entering the entering stream
     * @param leaving the leaving stream
     * @param surfaceTemperature temperature of the coil surface
     * @param bypassFactor bypass factor
     * @param heat heat removed, W, all of it sensible
     */
    record Dry(
            AirStream entering,
            AirStream leaving,
            Quantity<Temperature> surfaceTemperature,
            Quantity<Dimensionless> bypassFactor,
            Quantity<Power> heat)
            implements CoilProcess {

        /**
         * Checks the components.
         *
         * @param entering see the record
         * @param leaving see the record
         * @param surfaceTemperature see the record
         * @param bypassFactor see the record
         * @param heat see the record
         * @throws NullPointerException if one is null
         */
        public Dry {
            Objects.requireNonNull(entering, "entering");
            Objects.requireNonNull(leaving, "leaving");
            Objects.requireNonNull(surfaceTemperature, "surfaceTemperature");
            Objects.requireNonNull(bypassFactor, "bypassFactor");
            Objects.requireNonNull(heat, "heat");
        }

        /**
         * The steps.
         *
         * @return the working; its last line is {@link #heat()}
         */
        public Working working() {
            return Workings.coil(this);
        }

        /**
         * The process in words, one part a line.
         *
         * @return the text
         */
        @Override
        public String toString() {
            return "dry coil removes "
                    + QuantityText.formatBoth(heat, 4)
                    + "\n  entering "
                    + entering
                    + "\n  leaving  "
                    + leaving;
        }
    }

    /**
     * The bypass model has no answer here.
     *
     * @param entering the entering stream
     * @param reason why, in words
     */
    record NoState(AirStream entering, String reason) implements CoilProcess {

        /**
         * Checks the components.
         *
         * @param entering see the record
         * @param reason see the record
         * @throws NullPointerException if one is null
         */
        public NoState {
            Objects.requireNonNull(entering, "entering");
            Objects.requireNonNull(reason, "reason");
        }

        /**
         * The reason in words.
         *
         * @return the text
         */
        @Override
        public String toString() {
            return "no coil state: " + reason;
        }
    }

    /**
     * The entering stream.
     *
     * @return the entering stream
     */
    AirStream entering();

    /**
     * Computes what the coil does; {@link AirStream#throughCoil} is the usual way here.
     *
     * @param entering the entering stream
     * @param surfaceKelvins apparatus dew point, or surface temperature of a dry coil, K
     * @param bypassFactor bypass factor, 0 to 1
     * @return the process
     * @throws IllegalArgumentException if an argument is out of its range
     */
    static CoilProcess of(AirStream entering, double surfaceKelvins, double bypassFactor) {
        MoistAir air = entering.air();
        CoilOutcome outcome =
                CoolingCoil.leaving(
                        air.model(),
                        air.dryBulbKelvins(),
                        air.humidityRatioNumber(),
                        surfaceKelvins,
                        bypassFactor,
                        air.pressurePascals());
        Quantity<Temperature> surface = Units.celsius(surfaceKelvins - 273.15);
        Quantity<Dimensionless> bypass = Units.ratio(bypassFactor);
        double flow = entering.dryAirKilogramsPerSecond();
        double enthalpy1 = entering.specificEnthalpy();
        if (outcome instanceof CoilOutcome.Dry dry) {
            return new Dry(
                    entering,
                    entering.withState(dry.dryBulb(), dry.humidityRatio()),
                    surface,
                    bypass,
                    Units.watts(flow * (enthalpy1 - dry.enthalpy())));
        }
        if (outcome instanceof CoilOutcome.Wet wet) {
            AirModel model = entering.air().model();
            double t1 = entering.air().dryBulbKelvins();
            double w1 = entering.air().humidityRatioNumber();
            double p = entering.air().pressurePascals();
            double ratio =
                    CoolingCoil.sensibleHeatRatio(
                            model, t1, w1, wet.dryBulb(), wet.humidityRatio(), p);
            double drop = flow * (enthalpy1 - wet.enthalpy());
            return new Wet(
                    entering,
                    entering.withState(wet.dryBulb(), wet.humidityRatio()),
                    surface,
                    bypass,
                    Units.watts(
                            flow
                                    * CoolingCoil.heatRemoved(
                                            enthalpy1,
                                            w1,
                                            wet.enthalpy(),
                                            wet.humidityRatio(),
                                            model.condensateEnthalpy(wet.dryBulb()))),
                    Units.watts(ratio * drop),
                    Units.watts((1 - ratio) * drop),
                    Units.ratio(ratio),
                    Units.kilogramsPerSecond(flow * (w1 - wet.humidityRatio())));
        }
        return new NoState(entering, ((CoilOutcome.NoState) outcome).reason());
    }
}
