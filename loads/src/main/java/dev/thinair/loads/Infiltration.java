package dev.thinair.loads;

import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.AirChangeRate;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;

/**
 * Air leaking in from outdoors: from a blower door, a leakage area, or a plain air change rate. The
 * first two follow stack, wind and the density of the air at the site; the last does not.
 * Immutable.
 */
public sealed interface Infiltration {

    /** Which published model turns leakage into flow. */
    enum Model {
        /** Sherman and Grimsrud's basic model, on the leakage area at 4 Pa. */
        BASIC,
        /** Walker and Wilson's enhanced model (AIM-2), on the power law of the cracks. */
        ENHANCED
    }

    /** Usual exponent of the cracks of a house: 0.65 (Fundamentals 2021, ch. 16). */
    double USUAL_EXPONENT = 0.65;

    /**
     * Outdoor air entering the whole house, as volume of outdoor air.
     *
     * @param indoorTemperature K
     * @param outdoorTemperature K
     * @param windSpeed at the station, m/s
     * @param pressure station pressure, Pa
     * @return m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    double volumeFlow(
            double indoorTemperature, double outdoorTemperature, double windSpeed, double pressure);

    /**
     * Dry air entering the whole house, as mass.
     *
     * @param indoorTemperature K
     * @param outdoorTemperature K
     * @param outdoorHumidityRatio kg/kg
     * @param windSpeed at the station, m/s
     * @param pressure station pressure, Pa
     * @return kg dry air per second
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    default double dryAirMassFlow(
            double indoorTemperature,
            double outdoorTemperature,
            double outdoorHumidityRatio,
            double windSpeed,
            double pressure) {
        return volumeFlow(indoorTemperature, outdoorTemperature, windSpeed, pressure)
                / IdealMoistAir.specificVolume(outdoorTemperature, outdoorHumidityRatio, pressure);
    }

    /**
     * Outdoor air entering the whole house.
     *
     * @param indoor indoor temperature
     * @param outdoor outdoor temperature
     * @param wind at the station
     * @param pressure station pressure
     * @return flow of outdoor air
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    default Quantity<VolumeFlow> flow(
            Quantity<Temperature> indoor,
            Quantity<Temperature> outdoor,
            Quantity<Speed> wind,
            Quantity<Pressure> pressure) {
        return Units.cubicMetresPerSecond(
                volumeFlow(
                        Si.kelvins(indoor, "indoor temperature"),
                        Si.kelvins(outdoor, "outdoor temperature"),
                        Si.metresPerSecond(wind, "wind speed"),
                        Si.pascals(pressure, "station pressure")));
    }

    /**
     * How the flow comes about, step by step.
     *
     * @param indoor indoor temperature
     * @param outdoor outdoor temperature
     * @param wind at the station
     * @param pressure station pressure
     * @return the steps; the last gives the flow of outdoor air
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    default Working working(
            Quantity<Temperature> indoor,
            Quantity<Temperature> outdoor,
            Quantity<Speed> wind,
            Quantity<Pressure> pressure) {
        return InfiltrationWorking.of(this, indoor, outdoor, wind, pressure);
    }

    /**
     * A house without leaks.
     *
     * @return no infiltration
     */
    static Infiltration none() {
        return new AirChanges(0, 1);
    }

    /**
     * Leakage measured by a blower door, reduced to the reference density 1.2041 kg/m3 as test
     * standards ask; see {@link BlowerDoor#measuredAt} for a flow as it was at the site.
     *
     * @param flowAt50 flow at 50 Pa, in [0, 20] m3/s
     * @param exponent of the cracks, in [0.5, 1]; 0.65 where it was not measured
     * @param exposure of the house
     * @return the leakage, by the enhanced model
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static BlowerDoor blowerDoor(
            Quantity<VolumeFlow> flowAt50, Quantity<Dimensionless> exponent, Exposure exposure) {
        double q = Si.cubicMetresPerSecond(flowAt50, "flow at 50 Pa");
        double n = Si.ratio(exponent, "flow exponent");
        return new BlowerDoor(q, n, exposure, Model.ENHANCED);
    }

    /**
     * Leakage measured by a blower door and given as air changes at 50 Pa.
     *
     * @param changesAt50 air changes at 50 Pa (ACH50, n50)
     * @param volume of the conditioned space
     * @param exponent of the cracks, in [0.5, 1]
     * @param exposure of the house
     * @return the leakage, by the enhanced model
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static BlowerDoor blowerDoor(
            Quantity<AirChangeRate> changesAt50,
            Quantity<Volume> volume,
            Quantity<Dimensionless> exponent,
            Exposure exposure) {
        double rate = Si.perSecond(changesAt50, "air changes at 50 Pa");
        double v = Si.cubicMetres(volume, "volume");
        Range.requireAbove("volume", v, 0, "m3");
        return new BlowerDoor(
                rate * v, Si.ratio(exponent, "flow exponent"), exposure, Model.ENHANCED);
    }

    /**
     * A leakage area at 4 Pa with discharge coefficient 1.
     *
     * @param area effective leakage area, in [0, 10] m2
     * @param exposure of the house
     * @return the leakage, by the basic model with exponent 0.65
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static LeakageArea leakageArea(Quantity<Area> area, Exposure exposure) {
        return new LeakageArea(
                Si.squareMetres(area, "leakage area"), USUAL_EXPONENT, exposure, Model.BASIC);
    }

    /**
     * A plain air change rate, whatever the weather.
     *
     * @param rate in [0, 20] 1/h
     * @param volume of the conditioned space
     * @return the leakage
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static AirChanges airChanges(Quantity<AirChangeRate> rate, Quantity<Volume> volume) {
        return new AirChanges(
                Si.perSecond(rate, "air change rate"), Si.cubicMetres(volume, "volume"));
    }

    /**
     * Leakage from a fan test.
     *
     * @param flowAt50 flow at 50 Pa at the reference density, m3/s, in [0, 20]
     * @param exponent of the cracks, in [0.5, 1]
     * @param exposure of the house
     * @param model which model
     */
    record BlowerDoor(double flowAt50, double exponent, Exposure exposure, Model model)
            implements Infiltration {

        /**
         * Checks the values.
         *
         * @param flowAt50 flow at 50 Pa at the reference density, m3/s, in [0, 20]
         * @param exponent of the cracks, in [0.5, 1]
         * @param exposure of the house
         * @param model which model
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public BlowerDoor {
            Range.require("flow at 50 Pa", flowAt50, 0, 20, "m3/s");
            Range.require("flow exponent", exponent, 0.5, 1, "-");
            Objects.requireNonNull(exposure, "exposure");
            Objects.requireNonNull(model, "model");
        }

        /**
         * The same test by another model.
         *
         * @param value model
         * @return a new leakage
         */
        public BlowerDoor with(Model value) {
            return new BlowerDoor(flowAt50, exponent, exposure, value);
        }

        /**
         * The same reading, understood as actual flow in the air of the test: it is reduced to the
         * reference density.
         *
         * @param pressure station pressure during the test
         * @return a new leakage
         * @throws IllegalArgumentException if the pressure is not finite or outside [30, 110] kPa
         */
        public BlowerDoor measuredAt(Quantity<Pressure> pressure) {
            double p = Si.pascals(pressure, "pressure of the test");
            Range.require("pressure of the test", p, 30_000, 110_000, "Pa");
            return new BlowerDoor(
                    InfiltrationModel.crackAtDensity(flowAt50, exponent, 101_325 / p),
                    exponent,
                    exposure,
                    model);
        }

        /**
         * Leakage coefficient at the reference density.
         *
         * @return c, m3/(s Pa^n)
         */
        public double coefficient() {
            return InfiltrationModel.leakageCoefficient(flowAt50, 50, exponent);
        }

        /**
         * Effective leakage area at 4 Pa, discharge coefficient 1.
         *
         * @return area
         */
        public Quantity<Area> effectiveLeakageArea() {
            return Units.squareMetres(
                    InfiltrationModel.leakageArea(
                            coefficient(), exponent, 4, 1, InfiltrationModel.REFERENCE_DENSITY));
        }

        /**
         * Air changes at 50 Pa.
         *
         * @param volume of the conditioned space
         * @return ACH50
         */
        public Quantity<AirChangeRate> airChangesAt50(Quantity<Volume> volume) {
            return Units.airChangesPerSecond(
                    InfiltrationModel.airChanges(flowAt50, Si.cubicMetres(volume, "volume")));
        }

        @Override
        public double volumeFlow(
                double indoorTemperature,
                double outdoorTemperature,
                double windSpeed,
                double pressure) {
            return InfiltrationModel.flow(
                    model == Model.ENHANCED,
                    coefficient(),
                    exponent,
                    exposure.stories(),
                    exposure.shelter(),
                    exposure.flue(),
                    exposure.crawlSpace(),
                    indoorTemperature - outdoorTemperature,
                    windSpeed,
                    pressure);
        }
    }

    /**
     * Leakage from an area.
     *
     * @param area effective leakage area at 4 Pa, discharge coefficient 1, m2, in [0, 10]
     * @param exponent of the cracks, in [0.5, 1]
     * @param exposure of the house
     * @param model which model
     */
    record LeakageArea(double area, double exponent, Exposure exposure, Model model)
            implements Infiltration {

        /**
         * Checks the values.
         *
         * @param area effective leakage area at 4 Pa, discharge coefficient 1, m2, in [0, 10]
         * @param exponent of the cracks, in [0.5, 1]
         * @param exposure of the house
         * @param model which model
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public LeakageArea {
            Range.require("leakage area", area, 0, 10, "m2");
            Range.require("flow exponent", exponent, 0.5, 1, "-");
            Objects.requireNonNull(exposure, "exposure");
            Objects.requireNonNull(model, "model");
        }

        /**
         * The same area by another model.
         *
         * @param value model
         * @return a new leakage
         */
        public LeakageArea with(Model value) {
            return new LeakageArea(area, exponent, exposure, value);
        }

        @Override
        public double volumeFlow(
                double indoorTemperature,
                double outdoorTemperature,
                double windSpeed,
                double pressure) {
            return InfiltrationModel.flow(
                    model == Model.ENHANCED,
                    InfiltrationModel.coefficientFromArea(
                            area, exponent, 4, 1, InfiltrationModel.REFERENCE_DENSITY),
                    exponent,
                    exposure.stories(),
                    exposure.shelter(),
                    exposure.flue(),
                    exposure.crawlSpace(),
                    indoorTemperature - outdoorTemperature,
                    windSpeed,
                    pressure);
        }
    }

    /**
     * A plain air change rate.
     *
     * @param perSecond air changes per second, in [0, 20/3600]
     * @param volume of the conditioned space, m3, above 0
     */
    record AirChanges(double perSecond, double volume) implements Infiltration {

        /**
         * Checks the values.
         *
         * @param perSecond air changes per second, in [0, 20/3600]
         * @param volume of the conditioned space, m3, above 0
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public AirChanges {
            Range.require("air change rate", perSecond * 3_600, 0, 20, "1/h");
            Range.requireAbove("volume", volume, 0, "m3");
        }

        @Override
        public double volumeFlow(
                double indoorTemperature,
                double outdoorTemperature,
                double windSpeed,
                double pressure) {
            return perSecond * volume;
        }
    }
}
