package dev.thinair.cycling;

import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.cycling.kernel.RatingPoint;
import dev.thinair.cycling.kernel.Refrigerant;
import dev.thinair.cycling.kernel.UnitFit;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.cycling.kernel.UnitParameters;
import dev.thinair.psychro.MoistAir;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A direct-expansion cooling unit described by its rating data.
 *
 * <p>The rating point is reproduced exactly; away from it the unit follows the balance of {@link
 * UnitModel}. Rated capacity and power are net figures, the indoor fan counted, unless {@link
 * Builder#grossRating()} says otherwise. Immutable.
 */
public final class CoolingUnit {

    /** Density of standard air, 0.075 lb/ft3, in kg/m3: converts standard to mass airflow. */
    public static final double STANDARD_DENSITY = AirDensity.STANDARD_INCH_POUND;

    /** Default indoor fan power per standard airflow, W per m3/s: 365 W per 1000 cfm. */
    private static final double DEFAULT_FAN = 365 / (1000 * Trade.CUBIC_FOOT_PER_MINUTE);

    private final Builder data;
    private final UnitModel model;

    private CoolingUnit(Builder data, UnitModel model) {
        this.data = data;
        this.model = model;
    }

    /**
     * Starts a description.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * A typical unit of a size: energy efficiency ratio 11.5 Btu/(W h), sensible heat ratio 0.75,
     * 400 standard cfm per ton. Invented data for sketches, teaching and what-if questions: use the
     * maker's figures where there are any.
     *
     * @param ratedCapacity net total capacity at the rating point
     * @param staging how the compressor adapts; a low stage has 0.67 of the displacement, variable
     *     speed goes down to 0.30
     * @return the unit
     * @throws IllegalArgumentException if the capacity is missing or out of range
     */
    public static CoolingUnit typical(Quantity<Power> ratedCapacity, Staging staging) {
        double watts = Si.watts(ratedCapacity, "rated capacity");
        Range.require("rated capacity", watts, 1000, 100_000, "W");
        return builder()
                .name(String.format(Locale.ROOT, "typical %.1f-ton unit", watts / Trade.TON))
                .ratedCapacity(ratedCapacity)
                .energyEfficiencyRatio(11.5)
                .sensibleHeatRatio(0.75)
                .ratedAirflow(Units.cubicFeetPerMinute(400 * watts / Trade.TON))
                .staging(staging)
                .build();
    }

    /**
     * The name.
     *
     * @return free text
     */
    public String name() {
        return data.name;
    }

    /**
     * Rated net total capacity.
     *
     * @return power
     */
    public Quantity<Power> ratedCapacity() {
        return Units.watts(data.total);
    }

    /**
     * Rated net sensible capacity.
     *
     * @return power
     */
    public Quantity<Power> ratedSensibleCapacity() {
        return Units.watts(data.sensible);
    }

    /**
     * Rated power of the whole unit, indoor fan counted.
     *
     * @return power
     */
    public Quantity<Power> ratedPower() {
        return Units.watts(data.power);
    }

    /**
     * Rated airflow at standard density (0.075 lb/ft3).
     *
     * @return standard volume flow
     */
    public Quantity<VolumeFlow> ratedAirflow() {
        return Units.cubicMetresPerSecond(data.airflow);
    }

    /**
     * Rated airflow as mass.
     *
     * @return dry-air mass flow
     */
    public Quantity<MassFlow> ratedMassFlow() {
        return Units.kilogramsPerSecond(data.airflow * STANDARD_DENSITY);
    }

    /**
     * Indoor fan power counted in the rating.
     *
     * @return power, 0 for a gross rating
     */
    public Quantity<Power> ratedIndoorFanPower() {
        return Units.watts(data.fan);
    }

    /**
     * Rated capacity in tons of refrigeration.
     *
     * @return tons, net total capacity over 12 000 Btu/h
     */
    public double nominalTons() {
        return data.total / Trade.TON;
    }

    /**
     * Rated energy efficiency ratio.
     *
     * @return Btu/(W h)
     */
    public double energyEfficiencyRatio() {
        return data.total / data.power * Trade.BTU_PER_WATT_HOUR;
    }

    /**
     * How the compressor adapts.
     *
     * @return staging
     */
    public Staging staging() {
        return data.staging;
    }

    /**
     * The faults.
     *
     * @return what is wrong with the unit
     */
    public UnitFaults faults() {
        return data.faults;
    }

    /**
     * Time constant of the start-up, capacity = steady (1 - exp(-t/tau)).
     *
     * @return time
     */
    public Quantity<Time> startUpTimeConstant() {
        return Units.seconds(data.tau);
    }

    /**
     * Power while off: crankcase heater and controls.
     *
     * @return power
     */
    public Quantity<Power> offCyclePower() {
        return Units.watts(data.off);
    }

    /**
     * Start-up time constant for kernel calls.
     *
     * @return s
     */
    public double startUpSeconds() {
        return data.tau;
    }

    /**
     * Off-cycle power for kernel calls.
     *
     * @return W
     */
    public double offCycleWatts() {
        return data.off;
    }

    /**
     * Moisture the coil holds at steady state, as time of steady latent capacity (twet of Henderson
     * and Shirey 2006).
     *
     * @return s
     */
    public double moistureHoldingSeconds() {
        return data.wetTime;
    }

    /**
     * Evaporation rate at switch-off with the fan on, over steady latent capacity (gamma of
     * Henderson and Shirey 2006).
     *
     * @return ratio
     */
    public double evaporationRatio() {
        return data.evaporation;
    }

    /**
     * The compiled model for kernel calls.
     *
     * @return the model, faults included
     */
    public UnitModel model() {
        return model;
    }

    /**
     * Displacement fraction of the lowest stage.
     *
     * @return 1 for a single-stage unit
     */
    public double minimumStage() {
        return model.minimumStage();
    }

    /**
     * Steady state at full stage.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil, 5 to 55 &deg;C
     * @param enteringHumidityRatio its humidity ratio
     * @param dryAirMassFlow dry-air mass flow over the coil
     * @param outdoorDryBulb outdoor dry bulb, -20 to 60 &deg;C
     * @param pressure air pressure at the site, 50 to 110 kPa
     * @return the state
     * @throws IllegalArgumentException if an argument is missing or out of range
     * @throws NoBalanceException if the unit has no balance at these conditions
     */
    public UnitState steady(
            Quantity<Temperature> enteringDryBulb,
            Quantity<HumidityRatio> enteringHumidityRatio,
            Quantity<MassFlow> dryAirMassFlow,
            Quantity<Temperature> outdoorDryBulb,
            Quantity<Pressure> pressure) {
        return steady(
                enteringDryBulb,
                enteringHumidityRatio,
                dryAirMassFlow,
                outdoorDryBulb,
                pressure,
                1);
    }

    /**
     * Steady state at a stage.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil, 5 to 55 &deg;C
     * @param enteringHumidityRatio its humidity ratio
     * @param dryAirMassFlow dry-air mass flow over the coil
     * @param outdoorDryBulb outdoor dry bulb, -20 to 60 &deg;C
     * @param pressure air pressure at the site, 50 to 110 kPa
     * @param stage compressor displacement fraction
     * @return the state
     * @throws IllegalArgumentException if an argument is missing or out of range, or the unit does
     *     not have the stage
     * @throws NoBalanceException if the unit has no balance at these conditions
     */
    public UnitState steady(
            Quantity<Temperature> enteringDryBulb,
            Quantity<HumidityRatio> enteringHumidityRatio,
            Quantity<MassFlow> dryAirMassFlow,
            Quantity<Temperature> outdoorDryBulb,
            Quantity<Pressure> pressure,
            double stage) {
        return new UnitState(
                model,
                Si.kelvins(enteringDryBulb, "entering dry bulb"),
                Si.humidityRatio(enteringHumidityRatio, "entering humidity ratio"),
                Si.kilogramsPerSecond(dryAirMassFlow, "dry-air mass flow"),
                Si.kelvins(outdoorDryBulb, "outdoor dry bulb"),
                Si.pascals(pressure, "pressure"),
                stage);
    }

    /**
     * Steady state at full stage, for entering air as a state.
     *
     * @param entering air entering the coil, with the pressure at the site
     * @param dryAirMassFlow dry-air mass flow over the coil
     * @param outdoorDryBulb outdoor dry bulb, -20 to 60 &deg;C
     * @return the state
     * @throws IllegalArgumentException if an argument is missing or out of range
     * @throws NoBalanceException if the unit has no balance at these conditions
     */
    public UnitState steady(
            MoistAir entering,
            Quantity<MassFlow> dryAirMassFlow,
            Quantity<Temperature> outdoorDryBulb) {
        return steady(entering, dryAirMassFlow, outdoorDryBulb, 1);
    }

    /**
     * Steady state at a stage, for entering air as a state.
     *
     * @param entering air entering the coil, with the pressure at the site
     * @param dryAirMassFlow dry-air mass flow over the coil
     * @param outdoorDryBulb outdoor dry bulb, -20 to 60 &deg;C
     * @param stage compressor displacement fraction
     * @return the state
     * @throws IllegalArgumentException if an argument is missing or out of range, or the unit does
     *     not have the stage
     * @throws NoBalanceException if the unit has no balance at these conditions
     */
    public UnitState steady(
            MoistAir entering,
            Quantity<MassFlow> dryAirMassFlow,
            Quantity<Temperature> outdoorDryBulb,
            double stage) {
        if (entering == null) {
            throw new IllegalArgumentException("entering air is missing");
        }
        return steady(
                entering.dryBulb(),
                entering.humidityRatio(),
                dryAirMassFlow,
                outdoorDryBulb,
                entering.pressure(),
                stage);
    }

    /**
     * How well the unit follows the performance points it was fitted to.
     *
     * @return root mean square of the relative deviations of capacity, sensible part and power;
     *     empty if there was no fit
     */
    public OptionalDouble fitDeviation() {
        return Double.isNaN(data.fitDeviation)
                ? OptionalDouble.empty()
                : OptionalDouble.of(data.fitDeviation);
    }

    /**
     * Dry-air mass flow below which the coil ices at full stage.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil
     * @param enteringHumidityRatio its humidity ratio
     * @param outdoorDryBulb outdoor dry bulb
     * @param pressure air pressure at the site
     * @return mass flow in kg/s; 0 if it never ices above 0.05 of the rated airflow, infinite if no
     *     airflow up to five times the rated one keeps the coil above freezing
     * @throws IllegalArgumentException if an argument is missing or out of range
     * @throws NoBalanceException if the unit has no balance at these conditions
     */
    public double icingMassFlow(
            Quantity<Temperature> enteringDryBulb,
            Quantity<HumidityRatio> enteringHumidityRatio,
            Quantity<Temperature> outdoorDryBulb,
            Quantity<Pressure> pressure) {
        return model.frostAirflow(
                Si.kelvins(enteringDryBulb, "entering dry bulb"),
                Si.humidityRatio(enteringHumidityRatio, "entering humidity ratio"),
                Si.kelvins(outdoorDryBulb, "outdoor dry bulb"),
                Si.pascals(pressure, "pressure"),
                1,
                UnitModel.APPARATUS_DEW_POINT,
                273.15);
    }

    /**
     * The same unit with other faults.
     *
     * @param faults what is wrong, counted from the healthy unit
     * @return the changed unit
     * @throws IllegalArgumentException if the faults are missing
     */
    public CoolingUnit withFaults(UnitFaults faults) {
        Builder copy = data.copy();
        copy.faults(faults);
        return copy.build();
    }

    /**
     * The same kind of unit in another size: capacity, power, airflow and fan in proportion.
     *
     * @param capacity the other rated net total capacity
     * @return the scaled unit
     * @throws IllegalArgumentException if the capacity is missing or out of range
     */
    public CoolingUnit withRatedCapacity(Quantity<Power> capacity) {
        double watts = Si.watts(capacity, "rated capacity");
        Range.require("rated capacity", watts, 1000, 100_000, "W");
        Builder copy = data.copy();
        copy.scale(watts / data.total);
        copy.name =
                String.format(Locale.ROOT, "%s scaled to %.1f tons", data.name, watts / Trade.TON);
        return copy.build();
    }

    /**
     * The same unit with another staging of default turndown: low stage 0.67, variable speed down
     * to 0.30 of the displacement. A low-stage rating is given up.
     *
     * @param staging the other staging
     * @return the changed unit
     * @throws IllegalArgumentException if the staging is missing
     */
    public CoolingUnit withStaging(Staging staging) {
        Builder copy = data.copy();
        copy.staging(staging);
        return copy.build();
    }

    /**
     * For shells.
     *
     * @return name, size, efficiency and staging
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %.2f tons (%.0f W), EER %.1f, SHR %.2f, %s",
                data.name,
                nominalTons(),
                data.total,
                energyEfficiencyRatio(),
                data.sensible / data.total,
                data.staging);
    }

    /** Collects a unit's data; refuses what is not physical when building. */
    public static final class Builder {

        private String name = "unit";
        private double total = Double.NaN;
        private double sensible = Double.NaN;
        private double ratio = 0.75;
        private double power = Double.NaN;
        private double eer = Double.NaN;
        private double airflow = Double.NaN;
        private double fan = Double.NaN;
        private double dryBulb = (80 + 459.67) / 1.8;
        private double wetBulb = (67 + 459.67) / 1.8;
        private double outdoor = (95 + 459.67) / 1.8;
        private double pressure = 101_325;
        private Refrigerant refrigerant = Refrigerant.R410A;
        private double suction = Double.NaN;
        private double condensing = Double.NaN;
        private double effectiveness = UnitParameters.CONDENSER_EFFECTIVENESS;
        private double outdoorFan = Double.NaN;
        private double lossShare = UnitParameters.LOSS_SHARE;
        private Staging staging = Staging.SINGLE;
        private double lowFraction = Double.NaN;
        private double lowTotal = Double.NaN;
        private double lowPower = Double.NaN;
        private double lowAirflow = Double.NaN;
        private double lowFan = Double.NaN;
        private UnitFaults faults = UnitFaults.none();
        private double tau = 60;
        private double off = Double.NaN;
        private double wetTime = 720;
        private double evaporation = 0.33;
        private List<PerformancePoint> points = List.of();
        private double fitDeviation = Double.NaN;

        private Builder() {}

        private Builder copy() {
            Builder b = new Builder();
            b.name = name;
            b.total = total;
            b.sensible = sensible;
            b.ratio = ratio;
            b.power = power;
            b.eer = eer;
            b.airflow = airflow;
            b.fan = fan;
            b.dryBulb = dryBulb;
            b.wetBulb = wetBulb;
            b.outdoor = outdoor;
            b.pressure = pressure;
            b.refrigerant = refrigerant;
            b.suction = suction;
            b.condensing = condensing;
            b.effectiveness = effectiveness;
            b.outdoorFan = outdoorFan;
            b.lossShare = lossShare;
            b.staging = staging;
            b.lowFraction = lowFraction;
            b.lowTotal = lowTotal;
            b.lowPower = lowPower;
            b.lowAirflow = lowAirflow;
            b.lowFan = lowFan;
            b.faults = faults;
            b.tau = tau;
            b.off = off;
            b.wetTime = wetTime;
            b.evaporation = evaporation;
            b.points = points;
            b.fitDeviation = fitDeviation;
            return b;
        }

        private void scale(double by) {
            total *= by;
            sensible *= by;
            power *= by;
            airflow *= by;
            fan *= by;
            outdoorFan *= by;
            lowTotal *= by;
            lowPower *= by;
            lowAirflow *= by;
            lowFan *= by;
            off *= by;
        }

        /**
         * Names the unit.
         *
         * @param text free text, not blank
         * @return this builder
         */
        public Builder name(String text) {
            if (text == null || text.isBlank()) {
                throw new IllegalArgumentException("unit name is missing");
            }
            name = text;
            return this;
        }

        /**
         * Rated net total capacity.
         *
         * @param q capacity, 1 to 100 kW
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder ratedCapacity(Quantity<Power> q) {
            total = Si.watts(q, "rated capacity");
            Range.require("rated capacity", total, 1000, 100_000, "W");
            return this;
        }

        /**
         * Rated net sensible capacity.
         *
         * @param q capacity, below the total
         * @return this builder
         * @throws IllegalArgumentException if missing or not positive
         */
        public Builder ratedSensibleCapacity(Quantity<Power> q) {
            sensible = Si.watts(q, "rated sensible capacity");
            Range.requireAbove("rated sensible capacity", sensible, 0, "W");
            return this;
        }

        /**
         * Rated net sensible over total capacity, when the sensible capacity is not given; 0.75 if
         * neither is (assumption).
         *
         * @param value ratio, in [0.4, 0.98]
         * @return this builder
         * @throws IllegalArgumentException if out of range
         */
        public Builder sensibleHeatRatio(double value) {
            Range.require("sensible heat ratio", value, 0.4, 0.98, "1");
            ratio = value;
            sensible = Double.NaN;
            return this;
        }

        /**
         * Rated power of the whole unit.
         *
         * @param q power
         * @return this builder
         * @throws IllegalArgumentException if missing or not positive
         */
        public Builder ratedPower(Quantity<Power> q) {
            power = Si.watts(q, "rated power");
            Range.requireAbove("rated power", power, 0, "W");
            eer = Double.NaN;
            return this;
        }

        /**
         * Rated energy efficiency ratio, instead of the power.
         *
         * @param value EER, Btu/(W h), in [3, 30]
         * @return this builder
         * @throws IllegalArgumentException if out of range
         */
        public Builder energyEfficiencyRatio(double value) {
            Range.require("energy efficiency ratio", value, 3, 30, "Btu/(W h)");
            eer = value;
            power = Double.NaN;
            return this;
        }

        /**
         * Rated energy efficiency ratio as a quantity, instead of the power.
         *
         * @param value EER, for example in Btu/(W h)
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder energyEfficiencyRatio(Quantity<Dimensionless> value) {
            return energyEfficiencyRatio(
                    Si.ratio(value, "energy efficiency ratio") * Trade.BTU_PER_WATT_HOUR);
        }

        /**
         * Rated airflow at standard density (0.075 lb/ft3). 400 cfm per ton if not given (common
         * practice).
         *
         * @param q standard volume flow
         * @return this builder
         * @throws IllegalArgumentException if missing or not positive
         */
        public Builder ratedAirflow(Quantity<VolumeFlow> q) {
            airflow = Si.cubicMetresPerSecond(q, "rated airflow");
            Range.requireAbove("rated airflow", airflow, 0, "m3/s");
            return this;
        }

        /**
         * Indoor fan power counted in the rating. 365 W per 1000 standard cfm if not given: the
         * rating procedure's default for coils without a fan (10 CFR 430 subpart B appendix M, from
         * memory).
         *
         * @param q power
         * @return this builder
         * @throws IllegalArgumentException if missing or negative
         */
        public Builder ratedIndoorFanPower(Quantity<Power> q) {
            fan = Si.watts(q, "rated indoor fan power");
            Range.require("rated indoor fan power", fan, 0, 10_000, "W");
            return this;
        }

        /**
         * Says that capacity and power are the coil's and the outdoor unit's: no indoor fan is
         * counted.
         *
         * @return this builder
         */
        public Builder grossRating() {
            fan = 0;
            return this;
        }

        /**
         * Rating conditions, if not 80 and 67 &deg;F entering, 95 &deg;F outdoor at sea level.
         *
         * @param enteringDryBulb dry bulb entering the coil
         * @param enteringWetBulb wet bulb entering the coil
         * @param outdoorDryBulb dry bulb entering the condenser
         * @param sitePressure air pressure at the test
         * @return this builder
         * @throws IllegalArgumentException if a quantity is missing
         */
        public Builder ratingConditions(
                Quantity<Temperature> enteringDryBulb,
                Quantity<Temperature> enteringWetBulb,
                Quantity<Temperature> outdoorDryBulb,
                Quantity<Pressure> sitePressure) {
            dryBulb = Si.kelvins(enteringDryBulb, "rating entering dry bulb");
            wetBulb = Si.kelvins(enteringWetBulb, "rating entering wet bulb");
            outdoor = Si.kelvins(outdoorDryBulb, "rating outdoor dry bulb");
            pressure = Si.pascals(sitePressure, "rating pressure");
            return this;
        }

        /**
         * The refrigerant; R-410A if not given.
         *
         * @param fluid the refrigerant
         * @return this builder
         */
        public Builder refrigerant(Refrigerant fluid) {
            refrigerant = fluid;
            return this;
        }

        /**
         * Saturated suction temperature at the rating point; 35 &deg;F below the entering dry bulb
         * if not given (common practice).
         *
         * @param q temperature
         * @return this builder
         * @throws IllegalArgumentException if missing
         */
        public Builder ratedSaturatedSuction(Quantity<Temperature> q) {
            suction = Si.kelvins(q, "rated saturated suction");
            return this;
        }

        /**
         * Condensing temperature over outdoor air at the rating point; 20 &deg;F if not given
         * (common practice for recent units; 30 &deg;F for old ones).
         *
         * @param q difference
         * @return this builder
         * @throws IllegalArgumentException if missing or not in 1 to 30 K
         */
        public Builder ratedCondensingOverOutdoor(Quantity<TemperatureDifference> q) {
            condensing = Si.kelvinDifference(q, "rated condensing over outdoor");
            Range.require("rated condensing over outdoor", condensing, 1, 30, "K");
            return this;
        }

        /**
         * Effectiveness of the condenser at the rating point; 0.70 if not given (assumption).
         *
         * @param value effectiveness, in [0.05, 0.99]
         * @return this builder
         */
        public Builder condenserEffectiveness(double value) {
            effectiveness = value;
            return this;
        }

        /**
         * Outdoor fan power; 0.018 of the coil's capacity if not given (assumption).
         *
         * @param q power
         * @return this builder
         * @throws IllegalArgumentException if missing
         */
        public Builder outdoorFanPower(Quantity<Power> q) {
            outdoorFan = Si.watts(q, "outdoor fan power");
            return this;
        }

        /**
         * Part of the compressor's power that does not follow the compression work; 0.15 if not
         * given (assumption).
         *
         * @param value share, in [0, 0.6]
         * @return this builder
         */
        public Builder compressorLossShare(double value) {
            lossShare = value;
            return this;
        }

        /**
         * How the compressor adapts, with default turndown: low stage 0.67, variable speed down to
         * 0.30 of the displacement (assumptions).
         *
         * @param value the staging
         * @return this builder
         * @throws IllegalArgumentException if missing
         */
        public Builder staging(Staging value) {
            if (value == null) {
                throw new IllegalArgumentException("staging is missing");
            }
            staging = value;
            lowFraction = value == Staging.TWO_STAGE ? 0.67 : 0.30;
            lowTotal = Double.NaN;
            lowPower = Double.NaN;
            lowAirflow = Double.NaN;
            lowFan = Double.NaN;
            return this;
        }

        /**
         * Turndown by displacement.
         *
         * @param value two-stage or variable
         * @param displacementFraction lowest displacement over full, in [0.1, 0.98]
         * @return this builder
         * @throws IllegalArgumentException if the staging is missing or single, or the fraction is
         *     out of range
         */
        public Builder turndown(Staging value, double displacementFraction) {
            staging(value);
            if (value == Staging.SINGLE) {
                throw new IllegalArgumentException("a single-stage unit has no turndown");
            }
            Range.require("displacement fraction", displacementFraction, 0.1, 0.98, "1");
            lowFraction = displacementFraction;
            return this;
        }

        /**
         * Rating of the lowest stage at the same conditions as the full stage.
         *
         * @param value two-stage or variable
         * @param capacity net total capacity of the lowest stage
         * @param wholePower power of the whole unit at the lowest stage
         * @param standardAirflow standard airflow at the lowest stage
         * @param indoorFan indoor fan power counted in that rating
         * @return this builder
         * @throws IllegalArgumentException if something is missing, the staging is single, or a
         *     value is not positive
         */
        public Builder lowStageRating(
                Staging value,
                Quantity<Power> capacity,
                Quantity<Power> wholePower,
                Quantity<VolumeFlow> standardAirflow,
                Quantity<Power> indoorFan) {
            staging(value);
            if (value == Staging.SINGLE) {
                throw new IllegalArgumentException("a single-stage unit has no low stage");
            }
            lowTotal = Si.watts(capacity, "low-stage capacity");
            lowPower = Si.watts(wholePower, "low-stage power");
            lowAirflow = Si.cubicMetresPerSecond(standardAirflow, "low-stage airflow");
            lowFan = Si.watts(indoorFan, "low-stage indoor fan power");
            Range.requireAbove("low-stage capacity", lowTotal, 0, "W");
            Range.requireAbove("low-stage power", lowPower, 0, "W");
            Range.requireAbove("low-stage airflow", lowAirflow, 0, "m3/s");
            Range.require("low-stage indoor fan power", lowFan, 0, lowPower, "W");
            return this;
        }

        /**
         * What is wrong with the unit; nothing if not given.
         *
         * @param value the faults
         * @return this builder
         * @throws IllegalArgumentException if missing
         */
        public Builder faults(UnitFaults value) {
            if (value == null) {
                throw new IllegalArgumentException("unit faults are missing");
            }
            faults = value;
            return this;
        }

        /**
         * Start-up time constant; 60 s if not given (Henderson, Parker and Huang 2000, from
         * memory).
         *
         * @param q time, 0 to 900 s
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder startUpTimeConstant(Quantity<Time> q) {
            tau = Si.seconds(q, "start-up time constant");
            Range.require("start-up time constant", tau, 0, 900, "s");
            return this;
        }

        /**
         * Power while off; 0.01 of the rated power if not given (Henderson, Parker and Huang 2000,
         * from memory).
         *
         * @param q power
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder offCyclePower(Quantity<Power> q) {
            off = Si.watts(q, "off-cycle power");
            Range.require("off-cycle power", off, 0, 1000, "W");
            return this;
        }

        /**
         * Moisture held by the coil and its evaporation with the fan on; 720 s and 0.33 if not
         * given (the order of Henderson and Shirey 2006, from memory).
         *
         * @param holding moisture held at steady state, as time of steady latent capacity
         * @param evaporationRatio evaporation at switch-off over steady latent capacity, in [0, 5]
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder coilMoisture(Quantity<Time> holding, double evaporationRatio) {
            wetTime = Si.seconds(holding, "moisture holding time");
            Range.require("moisture holding time", wetTime, 1, 7200, "s");
            Range.require("evaporation ratio", evaporationRatio, 0, 5, "1");
            evaporation = evaporationRatio;
            return this;
        }

        /**
         * Expanded performance points at full stage, to which suction and condensing temperature at
         * rating and the compressor's loss share are fitted; the rating point stays exact. Values
         * given for these three serve as first guess.
         *
         * @param table at least two points
         * @return this builder
         * @throws IllegalArgumentException if the list or a point is missing
         */
        public Builder performancePoints(List<PerformancePoint> table) {
            if (table == null || table.stream().anyMatch(p -> p == null)) {
                throw new IllegalArgumentException("performance points are missing");
            }
            points = List.copyOf(table);
            return this;
        }

        /**
         * Builds the unit.
         *
         * @return the unit
         * @throws IllegalArgumentException if capacity or power is missing, or the data have no
         *     coil state
         */
        public CoolingUnit build() {
            Builder d = copy();
            if (Double.isNaN(d.total)) {
                throw new IllegalArgumentException("rated capacity is missing");
            }
            if (Double.isNaN(d.power)) {
                if (Double.isNaN(d.eer)) {
                    throw new IllegalArgumentException(
                            "rated power is missing: give it or the energy efficiency ratio");
                }
                d.power = d.total / (d.eer / Trade.BTU_PER_WATT_HOUR);
                d.eer = Double.NaN;
            }
            if (Double.isNaN(d.sensible)) {
                d.sensible = d.ratio * d.total;
            }
            if (Double.isNaN(d.airflow)) {
                d.airflow = 400 * Trade.CUBIC_FOOT_PER_MINUTE * d.total / Trade.TON;
            }
            if (Double.isNaN(d.fan)) {
                d.fan = DEFAULT_FAN * d.airflow;
            }
            if (Double.isNaN(d.off)) {
                d.off = 0.01 * d.power;
            }
            double w = IdealMoistAir.humidityRatioFromWetBulb(d.dryBulb, d.wetBulb, d.pressure);
            RatingPoint point =
                    RatingPoint.ofNet(
                            d.dryBulb,
                            w,
                            d.airflow * STANDARD_DENSITY,
                            d.outdoor,
                            d.pressure,
                            d.total,
                            d.sensible,
                            d.power,
                            d.fan);
            if (Double.isNaN(d.outdoorFan)) {
                d.outdoorFan = UnitParameters.OUTDOOR_FAN_SHARE * point.totalCapacity();
            }
            UnitParameters parameters =
                    new UnitParameters(
                            d.refrigerant,
                            Double.isNaN(d.suction)
                                    ? d.dryBulb - UnitParameters.RETURN_TO_SUCTION
                                    : d.suction,
                            d.outdoor
                                    + (Double.isNaN(d.condensing)
                                            ? UnitParameters.CONDENSING_OVER_OUTDOOR
                                            : d.condensing),
                            d.effectiveness,
                            d.outdoorFan,
                            d.lossShare);
            if (!d.points.isEmpty()) {
                RatingPoint[] table =
                        d.points.stream().map(PerformancePoint::gross).toArray(RatingPoint[]::new);
                parameters = UnitFit.fit(point, parameters, table);
                d.fitDeviation =
                        UnitFit.rootMeanSquare(UnitModel.anchored(point, parameters), table);
                // Scaled copies keep the fitted values and are not fitted again.
                d.points = List.of();
                d.suction = parameters.suctionAtRating();
                d.condensing = parameters.condensingAtRating() - d.outdoor;
                d.lossShare = parameters.lossShare();
            }
            UnitModel compiled = UnitModel.anchored(point, parameters);
            boolean variable = d.staging == Staging.VARIABLE;
            if (d.staging != Staging.SINGLE) {
                if (Double.isNaN(d.lowTotal)) {
                    compiled = compiled.withLowStage(d.lowFraction, variable);
                } else {
                    compiled =
                            compiled.withLowStage(
                                    RatingPoint.ofNet(
                                            d.dryBulb,
                                            w,
                                            d.lowAirflow * STANDARD_DENSITY,
                                            d.outdoor,
                                            d.pressure,
                                            d.lowTotal,
                                            d.lowTotal * d.sensible / d.total,
                                            d.lowPower,
                                            d.lowFan),
                                    variable);
                }
            }
            return new CoolingUnit(d, compiled.withFaults(d.faults.factors()));
        }
    }
}
