package dev.thinair.psychro;

import dev.thinair.psychro.kernel.AirModel;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Transport;
import dev.thinair.units.Density;
import dev.thinair.units.DynamicViscosity;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificEnthalpy;
import dev.thinair.units.SpecificHeat;
import dev.thinair.units.SpecificVolume;
import dev.thinair.units.ThermalConductivity;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * Moist air in one state: dry bulb, humidity ratio and pressure, with everything else derived from
 * them on request.
 *
 * <p>Immutable: any thread may share it. Valid from -100 to 200 degC, 20 to 200 kPa, humidity ratio
 * 0 to 10 kg/kg and not above saturation: fog is not a state of moist air but a result of a
 * process, see {@link Mixture}. Per-mass quantities are per mass of dry air, except density.
 *
 * <p>Answers come in SI units, temperatures in degC; {@code QuantityText.formatIn} prints them in
 * any other. Formulas, accuracy and sources stand with {@link IdealMoistAir} and {@link
 * dev.thinair.psychro.kernel.RealMoistAir}; the rules at freezing with {@link
 * dev.thinair.psychro.kernel.WetBulb} and {@link dev.thinair.psychro.kernel.Saturation}.
 */
public final class MoistAir {

    private final double dryBulb;
    private final double humidityRatio;
    private final double pressure;
    private final Formulation formulation;

    private MoistAir(
            double dryBulb, double humidityRatio, double pressure, Formulation formulation) {
        this.dryBulb = dryBulb;
        this.humidityRatio = humidityRatio;
        this.pressure = pressure;
        this.formulation = formulation;
    }

    /**
     * From dry bulb and relative humidity.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param relativeHumidity relative humidity, 0 to 1 (0 to 100 %)
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndRelativeHumidity(
            Quantity<Temperature> dryBulb,
            Quantity<Dimensionless> relativeHumidity,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndRelativeHumidity(dryBulb, relativeHumidity, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and relative humidity under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param relativeHumidity relative humidity, 0 to 1 (0 to 100 %)
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndRelativeHumidity(
            Quantity<Temperature> dryBulb,
            Quantity<Dimensionless> relativeHumidity,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.ratio(relativeHumidity, "relative humidity");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(
                t, formulation.model().humidityRatioFromRelativeHumidity(t, x, p), p, formulation);
    }

    /**
     * From dry bulb and thermodynamic wet bulb.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param wetBulb thermodynamic wet bulb, not above the dry bulb; over liquid water from 0 degC
     *     up, over ice below
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndWetBulb(
            Quantity<Temperature> dryBulb,
            Quantity<Temperature> wetBulb,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndWetBulb(dryBulb, wetBulb, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and thermodynamic wet bulb under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param wetBulb thermodynamic wet bulb, not above the dry bulb; over liquid water from 0 degC
     *     up, over ice below
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndWetBulb(
            Quantity<Temperature> dryBulb,
            Quantity<Temperature> wetBulb,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.kelvins(wetBulb, "wet bulb");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, formulation.model().humidityRatioFromWetBulb(t, x, p), p, formulation);
    }

    /**
     * From dry bulb and dew point.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param dewPoint dew point, below 0 degC frost point; not above the dry bulb
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndDewPoint(
            Quantity<Temperature> dryBulb,
            Quantity<Temperature> dewPoint,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndDewPoint(dryBulb, dewPoint, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and dew point under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param dewPoint dew point, below 0 degC frost point; not above the dry bulb
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndDewPoint(
            Quantity<Temperature> dryBulb,
            Quantity<Temperature> dewPoint,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.kelvins(dewPoint, "dew point");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, formulation.model().humidityRatioFromDewPoint(x, p), p, formulation);
    }

    /**
     * From dry bulb and humidity ratio.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param humidityRatio water vapor per dry air
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndHumidityRatio(
            Quantity<Temperature> dryBulb,
            Quantity<HumidityRatio> humidityRatio,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndHumidityRatio(dryBulb, humidityRatio, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and humidity ratio under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param humidityRatio water vapor per dry air
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndHumidityRatio(
            Quantity<Temperature> dryBulb,
            Quantity<HumidityRatio> humidityRatio,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.humidityRatio(humidityRatio, "humidity ratio");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, x, p, formulation);
    }

    /**
     * From dry bulb and enthalpy.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param enthalpy enthalpy per mass of dry air, on the SI scale: zero for dry air at 0 degC
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndEnthalpy(
            Quantity<Temperature> dryBulb,
            Quantity<SpecificEnthalpy> enthalpy,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndEnthalpy(dryBulb, enthalpy, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and enthalpy under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param enthalpy enthalpy per mass of dry air, on the SI scale: zero for dry air at 0 degC
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndEnthalpy(
            Quantity<Temperature> dryBulb,
            Quantity<SpecificEnthalpy> enthalpy,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.joulesPerKilogram(enthalpy, "specific enthalpy");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, formulation.model().humidityRatioFromEnthalpy(t, x, p), p, formulation);
    }

    /**
     * From dry bulb and vapor pressure.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param vaporPressure partial pressure of the water vapor
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndVaporPressure(
            Quantity<Temperature> dryBulb,
            Quantity<Pressure> vaporPressure,
            Quantity<Pressure> pressure) {
        return ofDryBulbAndVaporPressure(dryBulb, vaporPressure, pressure, Formulation.IDEAL);
    }

    /**
     * From dry bulb and vapor pressure under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param vaporPressure partial pressure of the water vapor
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air (negative humidity ratio, supersaturation)
     */
    public static MoistAir ofDryBulbAndVaporPressure(
            Quantity<Temperature> dryBulb,
            Quantity<Pressure> vaporPressure,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double x = Si.pascals(vaporPressure, "vapor pressure");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, IdealMoistAir.humidityRatioFromVaporPressure(x, p), p, formulation);
    }

    /**
     * Saturated air.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if nothing saturates air of this dry bulb and pressure
     */
    public static MoistAir saturated(Quantity<Temperature> dryBulb, Quantity<Pressure> pressure) {
        return saturated(dryBulb, pressure, Formulation.IDEAL);
    }

    /**
     * Saturated air under a given formulation.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if nothing saturates air of this dry bulb and pressure
     */
    public static MoistAir saturated(
            Quantity<Temperature> dryBulb, Quantity<Pressure> pressure, Formulation formulation) {
        double t = Si.kelvins(dryBulb, "dry bulb");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(t, formulation.model().saturationHumidityRatio(t, p), p, formulation);
    }

    /**
     * Dry air.
     *
     * @param dryBulb dry bulb, -100 to 200 degC
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state, of humidity ratio 0
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension
     */
    public static MoistAir dry(Quantity<Temperature> dryBulb, Quantity<Pressure> pressure) {
        return ofSi(
                Si.kelvins(dryBulb, "dry bulb"),
                0,
                Si.pascals(pressure, "air pressure"),
                Formulation.IDEAL);
    }

    /**
     * From enthalpy and humidity ratio.
     *
     * @param enthalpy enthalpy per mass of dry air, on the SI scale: zero for dry air at 0 degC
     * @param humidityRatio water vapor per dry air
     * @param pressure air pressure, 20 to 200 kPa
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air
     */
    public static MoistAir ofEnthalpyAndHumidityRatio(
            Quantity<SpecificEnthalpy> enthalpy,
            Quantity<HumidityRatio> humidityRatio,
            Quantity<Pressure> pressure) {
        return ofEnthalpyAndHumidityRatio(enthalpy, humidityRatio, pressure, Formulation.IDEAL);
    }

    /**
     * From enthalpy and humidity ratio under a given formulation.
     *
     * @param enthalpy enthalpy per mass of dry air, on the SI scale: zero for dry air at 0 degC
     * @param humidityRatio water vapor per dry air
     * @param pressure air pressure, 20 to 200 kPa
     * @param formulation how the state is computed
     * @return the state
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a value is NaN, infinite, out of its range or of another
     *     dimension, or if the two describe no moist air
     */
    public static MoistAir ofEnthalpyAndHumidityRatio(
            Quantity<SpecificEnthalpy> enthalpy,
            Quantity<HumidityRatio> humidityRatio,
            Quantity<Pressure> pressure,
            Formulation formulation) {
        double h = Si.joulesPerKilogram(enthalpy, "specific enthalpy");
        double w = Si.humidityRatio(humidityRatio, "humidity ratio");
        double p = Si.pascals(pressure, "air pressure");
        return ofSi(formulation.model().dryBulbFromEnthalpy(h, w, p), w, p, formulation);
    }

    /**
     * From SI doubles, for code that comes from the kernel.
     *
     * @param kelvins dry bulb, K
     * @param humidityRatio humidity ratio, kg/kg
     * @param pascals air pressure, Pa
     * @param formulation how the state is computed
     * @return the state
     * @throws IllegalArgumentException if a value is out of its domain or the air supersaturated
     */
    public static MoistAir ofSi(
            double kelvins, double humidityRatio, double pascals, Formulation formulation) {
        formulation.model().requireUnsaturated(kelvins, humidityRatio, pascals);
        return new MoistAir(kelvins, humidityRatio, pascals, formulation);
    }

    /**
     * Dry bulb.
     *
     * @return dry bulb, degC
     */
    public Quantity<Temperature> dryBulb() {
        return celsius(dryBulb);
    }

    /**
     * Air pressure.
     *
     * @return pressure, Pa
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(pressure);
    }

    /**
     * Humidity ratio.
     *
     * @return water vapor per dry air, kg/kg
     */
    public Quantity<HumidityRatio> humidityRatio() {
        return Units.kilogramsPerKilogram(humidityRatio);
    }

    /**
     * Relative humidity.
     *
     * @return vapor pressure over its value at saturation, a ratio from 0 to 1
     */
    public Quantity<Dimensionless> relativeHumidity() {
        return Units.ratio(model().relativeHumidity(dryBulb, humidityRatio, pressure));
    }

    /**
     * Degree of saturation, not to be taken for relative humidity.
     *
     * @return humidity ratio over its value at saturation, a ratio from 0 to 1
     * @throws IllegalArgumentException if nothing saturates air of this dry bulb and pressure (the
     *     saturation pressure is too near the air pressure, or above it)
     */
    public Quantity<Dimensionless> degreeOfSaturation() {
        return Units.ratio(model().degreeOfSaturation(dryBulb, humidityRatio, pressure));
    }

    /**
     * Vapor pressure.
     *
     * @return partial pressure of the water vapor, Pa
     */
    public Quantity<Pressure> vaporPressure() {
        return Units.pascals(IdealMoistAir.vaporPressure(humidityRatio, pressure));
    }

    /**
     * Whether the air has a dew point: all air does that is not drier than saturation over ice at
     * -100 degC.
     *
     * @return true if {@link #dewPoint()} has an answer
     */
    public boolean hasDewPoint() {
        return model().hasDewPoint(humidityRatio, pressure);
    }

    /**
     * Dew point; below 0 degC the frost point.
     *
     * @return dew point, degC
     * @throws IllegalStateException if the air is too dry to have one, see {@link #hasDewPoint()}
     */
    public Quantity<Temperature> dewPoint() {
        if (!hasDewPoint()) {
            throw new IllegalStateException(
                    "air of humidity ratio "
                            + humidityRatio
                            + " kg/kg has no dew point at or above -100 degC");
        }
        return celsius(model().dewPoint(humidityRatio, pressure));
    }

    /**
     * Thermodynamic wet bulb: over liquid water wherever that has a solution at or above 0 degC,
     * else over ice.
     *
     * @return wet bulb, degC
     */
    public Quantity<Temperature> wetBulb() {
        return celsius(model().wetBulb(dryBulb, humidityRatio, pressure));
    }

    /**
     * Specific enthalpy; zero for dry air and for liquid water at 0 degC.
     *
     * @return enthalpy per mass of dry air, J/kg
     */
    public Quantity<SpecificEnthalpy> enthalpy() {
        return Units.joulesPerKilogram(model().enthalpy(dryBulb, humidityRatio, pressure));
    }

    /**
     * Specific volume.
     *
     * @return volume per mass of dry air, m3/kg
     */
    public Quantity<SpecificVolume> specificVolume() {
        return Units.cubicMetresPerKilogram(
                model().specificVolume(dryBulb, humidityRatio, pressure));
    }

    /**
     * Density of the moist air.
     *
     * @return whole mass per volume, kg/m3
     */
    public Quantity<Density> density() {
        return Units.kilogramsPerCubicMetre(model().density(dryBulb, humidityRatio, pressure));
    }

    /**
     * Specific heat at constant pressure, of the ideal mixture in either formulation.
     *
     * @return specific heat per mass of dry air, J/(kg K)
     */
    public Quantity<SpecificHeat> specificHeat() {
        return Units.joulesPerKilogramKelvin(IdealMoistAir.specificHeat(humidityRatio));
    }

    /**
     * Dynamic viscosity; see {@link Transport}.
     *
     * @return viscosity, Pa s
     */
    public Quantity<DynamicViscosity> viscosity() {
        return Units.pascalSeconds(Transport.viscosity(dryBulb, humidityRatio, pressure));
    }

    /**
     * Thermal conductivity; see {@link Transport}.
     *
     * @return conductivity, W/(m K)
     */
    public Quantity<ThermalConductivity> conductivity() {
        return Units.wattsPerMetreKelvin(Transport.conductivity(dryBulb, humidityRatio, pressure));
    }

    /**
     * The steps from dry bulb, humidity ratio and pressure to the other properties.
     *
     * @return the working; its last line is {@link #enthalpy()}
     */
    public Working working() {
        return Workings.state(this);
    }

    /**
     * The step to the wet bulb, with the branch taken and the root put back.
     *
     * @return the working; its last line is {@link #wetBulb()}
     */
    public Working wetBulbWorking() {
        return Workings.wetBulb(this);
    }

    /**
     * How this state is computed.
     *
     * @return the formulation
     */
    public Formulation formulation() {
        return formulation;
    }

    /**
     * The same dry bulb, humidity ratio and pressure under another formulation.
     *
     * @param other the formulation
     * @return the state
     * @throws IllegalArgumentException if that formulation finds the air supersaturated
     */
    public MoistAir with(Formulation other) {
        return ofSi(dryBulb, humidityRatio, pressure, other);
    }

    /**
     * The same dry bulb and humidity ratio at another pressure: the same air at another elevation.
     *
     * @param pressure the air pressure
     * @return the state
     * @throws IllegalArgumentException if the pressure is out of range or the air supersaturated
     *     there
     */
    public MoistAir atPressure(Quantity<Pressure> pressure) {
        return ofSi(dryBulb, humidityRatio, Si.pascals(pressure, "air pressure"), formulation);
    }

    /**
     * The same humidity ratio and pressure at another dry bulb.
     *
     * @param dryBulb the dry bulb
     * @return the state
     * @throws IllegalArgumentException if the dry bulb is out of range or the air supersaturated
     *     there
     */
    public MoistAir atDryBulb(Quantity<Temperature> dryBulb) {
        return ofSi(Si.kelvins(dryBulb, "dry bulb"), humidityRatio, pressure, formulation);
    }

    /**
     * Dry bulb for kernel calls.
     *
     * @return dry bulb, K
     */
    public double dryBulbKelvins() {
        return dryBulb;
    }

    /**
     * Humidity ratio for kernel calls.
     *
     * @return humidity ratio, kg/kg
     */
    public double humidityRatioNumber() {
        return humidityRatio;
    }

    /**
     * Pressure for kernel calls.
     *
     * @return pressure, Pa
     */
    public double pressurePascals() {
        return pressure;
    }

    AirModel model() {
        return formulation.model();
    }

    private static Quantity<Temperature> celsius(double kelvins) {
        return Units.celsius(kelvins - 273.15);
    }

    /**
     * Equal in dry bulb, humidity ratio, pressure (exactly) and formulation.
     *
     * @param other the other object
     * @return whether the two are the same state
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof MoistAir air
                && dryBulb == air.dryBulb
                && humidityRatio == air.humidityRatio
                && pressure == air.pressure
                && formulation == air.formulation;
    }

    /**
     * Hash code over the fields of {@link #equals(Object)}.
     *
     * @return the hash code
     */
    @Override
    public int hashCode() {
        return Objects.hash(dryBulb, humidityRatio, pressure, formulation);
    }

    /**
     * The state in words, in both unit systems.
     *
     * @return for example {@code 35 °C (95 °F), 20 % RH, wet bulb ..., at 101325 Pa (29.92 inHg)}
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append(both(dryBulb())).append(", ");
        text.append(QuantityText.formatIn(relativeHumidity(), Units.PERCENT, 3)).append(" RH, ");
        text.append(QuantityText.formatBoth(Units.gramsPerKilogram(1000 * humidityRatio), 4));
        text.append(", wet bulb ").append(both(wetBulb()));
        if (hasDewPoint()) {
            text.append(", dew point ").append(both(dewPoint()));
        }
        text.append(", enthalpy ")
                .append(QuantityText.formatIn(enthalpy(), Units.KILOJOULE_PER_KILOGRAM, 4));
        text.append(", density ").append(QuantityText.formatBoth(density(), 4));
        text.append(", at ")
                .append(QuantityText.formatIn(pressure(), Units.KILOPASCAL, 5))
                .append(" (")
                .append(QuantityText.formatIn(pressure(), Units.INCH_OF_MERCURY, 4))
                .append(")");
        if (formulation != Formulation.IDEAL) {
            text.append(", real formulation");
        }
        return text.toString();
    }

    private static String both(Quantity<Temperature> temperature) {
        return QuantityText.formatBoth(temperature, 4);
    }
}
