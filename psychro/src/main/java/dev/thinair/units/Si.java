package dev.thinair.units;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * The crossing from quantities into the SI doubles that kernels take.
 *
 * <p>Each method takes a quantity and the name under which its caller knows it, and returns the
 * value in the SI unit that the method is named for. It refuses, with that name in the message:
 * null ({@link NullPointerException}); NaN, infinity and a unit of another dimension ({@link
 * IllegalArgumentException}), the last of which can only arrive by way of a raw or wildcard type.
 *
 * <p>Numbers of any class (Integer, BigDecimal, the unit library's exact ratios) are taken by their
 * {@code doubleValue()}. Conversion is {@code factor * value + offset} with both coefficients
 * correctly rounded from the unit library's exact arithmetic, and so is good to two roundings. The
 * coefficients of the units met first are remembered, which makes a known unit cost a few
 * nanoseconds; what is remembered changes the time taken and never the result. A unit whose
 * conversion is not of that form (a logarithmic one) goes through the unit library each time.
 */
public final class Si {
    private static final Crossing KELVIN = new Crossing(Units.KELVIN, "a temperature");
    private static final Crossing KELVIN_DIFFERENCE =
            new Crossing(Units.KELVIN_DIFFERENCE, "a temperature difference");
    private static final Crossing PASCAL = new Crossing(Units.PASCAL, "a pressure");
    private static final Crossing METRE = new Crossing(Units.METRE, "a length");
    private static final Crossing SQUARE_METRE = new Crossing(Units.SQUARE_METRE, "an area");
    private static final Crossing CUBIC_METRE = new Crossing(Units.CUBIC_METRE, "a volume");
    private static final Crossing KILOGRAM = new Crossing(Units.KILOGRAM, "a mass");
    private static final Crossing SECOND = new Crossing(Units.SECOND, "a time");
    private static final Crossing METRE_PER_SECOND =
            new Crossing(Units.METRE_PER_SECOND, "a speed");
    private static final Crossing RADIAN = new Crossing(Units.RADIAN, "an angle");
    private static final Crossing RATIO = new Crossing(Units.RATIO, "a ratio");
    private static final Crossing PER_SECOND = new Crossing(Units.PER_SECOND, "an air change rate");
    private static final Crossing JOULE = new Crossing(Units.JOULE, "an energy");
    private static final Crossing WATT = new Crossing(Units.WATT, "a power");
    private static final Crossing KILOGRAM_PER_KILOGRAM =
            new Crossing(Units.KILOGRAM_PER_KILOGRAM, "a humidity ratio");
    private static final Crossing JOULE_PER_KILOGRAM =
            new Crossing(Units.JOULE_PER_KILOGRAM, "a specific enthalpy");
    private static final Crossing CUBIC_METRE_PER_KILOGRAM =
            new Crossing(Units.CUBIC_METRE_PER_KILOGRAM, "a specific volume");
    private static final Crossing KILOGRAM_PER_CUBIC_METRE =
            new Crossing(Units.KILOGRAM_PER_CUBIC_METRE, "a density");
    private static final Crossing CUBIC_METRE_PER_SECOND =
            new Crossing(Units.CUBIC_METRE_PER_SECOND, "a volume flow");
    private static final Crossing KILOGRAM_PER_SECOND =
            new Crossing(Units.KILOGRAM_PER_SECOND, "a mass flow");
    private static final Crossing PASCAL_PER_METRE =
            new Crossing(Units.PASCAL_PER_METRE, "a friction rate");
    private static final Crossing PASCAL_SECOND =
            new Crossing(Units.PASCAL_SECOND, "a dynamic viscosity");
    private static final Crossing CUBIC_METRE_PER_SECOND_PER_WATT =
            new Crossing(Units.CUBIC_METRE_PER_SECOND_PER_WATT, "an airflow per capacity");
    private static final Crossing WATT_PER_SQUARE_METRE_KELVIN =
            new Crossing(Units.WATT_PER_SQUARE_METRE_KELVIN, "a thermal transmittance");
    private static final Crossing SQUARE_METRE_KELVIN_PER_WATT =
            new Crossing(Units.SQUARE_METRE_KELVIN_PER_WATT, "a thermal resistance");
    private static final Crossing WATT_PER_KELVIN =
            new Crossing(Units.WATT_PER_KELVIN, "a thermal conductance");
    private static final Crossing WATT_PER_METRE_KELVIN =
            new Crossing(Units.WATT_PER_METRE_KELVIN, "a thermal conductivity");
    private static final Crossing JOULE_PER_KILOGRAM_KELVIN =
            new Crossing(Units.JOULE_PER_KILOGRAM_KELVIN, "a specific heat");
    private static final Crossing JOULE_PER_KELVIN =
            new Crossing(Units.JOULE_PER_KELVIN, "a heat capacity");
    private static final Crossing WATT_PER_SQUARE_METRE =
            new Crossing(Units.WATT_PER_SQUARE_METRE, "a heat flux");
    private static final Crossing JOULE_PER_CUBIC_METRE_KELVIN =
            new Crossing(Units.JOULE_PER_CUBIC_METRE_KELVIN, "an air sensible heat factor");
    private static final Crossing JOULE_PER_CUBIC_METRE =
            new Crossing(Units.JOULE_PER_CUBIC_METRE, "an air latent heat factor");
    private static final Crossing WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM =
            new Crossing(
                    Units.WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM,
                    "an air total heat factor");

    private Si() {}

    /**
     * A temperature in K.
     *
     * @param quantity the temperature, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in K
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a temperature
     */
    public static double kelvins(Quantity<Temperature> quantity, String name) {
        return KELVIN.toSi(quantity, name);
    }

    /**
     * A temperature difference in K.
     *
     * @param quantity the temperature difference, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in K
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a temperature difference
     */
    public static double kelvinDifference(Quantity<TemperatureDifference> quantity, String name) {
        return KELVIN_DIFFERENCE.toSi(quantity, name);
    }

    /**
     * A pressure in Pa.
     *
     * @param quantity the pressure, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in Pa
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a pressure
     */
    public static double pascals(Quantity<Pressure> quantity, String name) {
        return PASCAL.toSi(quantity, name);
    }

    /**
     * A length in m.
     *
     * @param quantity the length, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a length
     */
    public static double metres(Quantity<Length> quantity, String name) {
        return METRE.toSi(quantity, name);
    }

    /**
     * An area in m2.
     *
     * @param quantity the area, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m2
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an area
     */
    public static double squareMetres(Quantity<Area> quantity, String name) {
        return SQUARE_METRE.toSi(quantity, name);
    }

    /**
     * A volume in m3.
     *
     * @param quantity the volume, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m3
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a volume
     */
    public static double cubicMetres(Quantity<Volume> quantity, String name) {
        return CUBIC_METRE.toSi(quantity, name);
    }

    /**
     * A mass in kg.
     *
     * @param quantity the mass, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in kg
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a mass
     */
    public static double kilograms(Quantity<Mass> quantity, String name) {
        return KILOGRAM.toSi(quantity, name);
    }

    /**
     * A time in s.
     *
     * @param quantity the time, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a time
     */
    public static double seconds(Quantity<Time> quantity, String name) {
        return SECOND.toSi(quantity, name);
    }

    /**
     * A speed in m/s.
     *
     * @param quantity the speed, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m/s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a speed
     */
    public static double metresPerSecond(Quantity<Speed> quantity, String name) {
        return METRE_PER_SECOND.toSi(quantity, name);
    }

    /**
     * An angle in rad.
     *
     * @param quantity the angle, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in rad
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an angle
     */
    public static double radians(Quantity<Angle> quantity, String name) {
        return RADIAN.toSi(quantity, name);
    }

    /**
     * A ratio in 1.
     *
     * @param quantity the ratio, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in 1
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a ratio
     */
    public static double ratio(Quantity<Dimensionless> quantity, String name) {
        return RATIO.toSi(quantity, name);
    }

    /**
     * An air change rate in 1/s.
     *
     * @param quantity the air change rate, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in 1/s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an air change rate
     */
    public static double perSecond(Quantity<AirChangeRate> quantity, String name) {
        return PER_SECOND.toSi(quantity, name);
    }

    /**
     * An energy in J.
     *
     * @param quantity the energy, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an energy
     */
    public static double joules(Quantity<Energy> quantity, String name) {
        return JOULE.toSi(quantity, name);
    }

    /**
     * A power in W.
     *
     * @param quantity the power, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in W
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a power
     */
    public static double watts(Quantity<Power> quantity, String name) {
        return WATT.toSi(quantity, name);
    }

    /**
     * A humidity ratio in kg/kg.
     *
     * @param quantity the humidity ratio, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in kg/kg
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a humidity ratio
     */
    public static double humidityRatio(Quantity<HumidityRatio> quantity, String name) {
        return KILOGRAM_PER_KILOGRAM.toSi(quantity, name);
    }

    /**
     * A specific enthalpy in J/kg.
     *
     * @param quantity the specific enthalpy, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J/kg
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a specific enthalpy
     */
    public static double joulesPerKilogram(Quantity<SpecificEnthalpy> quantity, String name) {
        return JOULE_PER_KILOGRAM.toSi(quantity, name);
    }

    /**
     * A specific volume in m3/kg.
     *
     * @param quantity the specific volume, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m3/kg
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a specific volume
     */
    public static double cubicMetresPerKilogram(Quantity<SpecificVolume> quantity, String name) {
        return CUBIC_METRE_PER_KILOGRAM.toSi(quantity, name);
    }

    /**
     * A density in kg/m3.
     *
     * @param quantity the density, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in kg/m3
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a density
     */
    public static double kilogramsPerCubicMetre(Quantity<Density> quantity, String name) {
        return KILOGRAM_PER_CUBIC_METRE.toSi(quantity, name);
    }

    /**
     * A volume flow in m3/s.
     *
     * @param quantity the volume flow, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m3/s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a volume flow
     */
    public static double cubicMetresPerSecond(Quantity<VolumeFlow> quantity, String name) {
        return CUBIC_METRE_PER_SECOND.toSi(quantity, name);
    }

    /**
     * A mass flow in kg/s.
     *
     * @param quantity the mass flow, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in kg/s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a mass flow
     */
    public static double kilogramsPerSecond(Quantity<MassFlow> quantity, String name) {
        return KILOGRAM_PER_SECOND.toSi(quantity, name);
    }

    /**
     * A friction rate in Pa/m.
     *
     * @param quantity the friction rate, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in Pa/m
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a friction rate
     */
    public static double pascalsPerMetre(Quantity<FrictionRate> quantity, String name) {
        return PASCAL_PER_METRE.toSi(quantity, name);
    }

    /**
     * A dynamic viscosity in Pa s.
     *
     * @param quantity the dynamic viscosity, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in Pa s
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a dynamic viscosity
     */
    public static double pascalSeconds(Quantity<DynamicViscosity> quantity, String name) {
        return PASCAL_SECOND.toSi(quantity, name);
    }

    /**
     * An airflow per capacity in m3/s per W.
     *
     * @param quantity the airflow per capacity, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m3/s per W
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an airflow per capacity
     */
    public static double cubicMetresPerSecondPerWatt(
            Quantity<FlowPerCapacity> quantity, String name) {
        return CUBIC_METRE_PER_SECOND_PER_WATT.toSi(quantity, name);
    }

    /**
     * A thermal transmittance in W/(m2 K).
     *
     * @param quantity the thermal transmittance, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in W/(m2 K)
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a thermal transmittance
     */
    public static double wattsPerSquareMetreKelvin(
            Quantity<ThermalTransmittance> quantity, String name) {
        return WATT_PER_SQUARE_METRE_KELVIN.toSi(quantity, name);
    }

    /**
     * A thermal resistance in m2 K/W.
     *
     * @param quantity the thermal resistance, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in m2 K/W
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a thermal resistance
     */
    public static double squareMetreKelvinsPerWatt(
            Quantity<ThermalResistance> quantity, String name) {
        return SQUARE_METRE_KELVIN_PER_WATT.toSi(quantity, name);
    }

    /**
     * A thermal conductance in W/K.
     *
     * @param quantity the thermal conductance, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in W/K
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a thermal conductance
     */
    public static double wattsPerKelvin(Quantity<ThermalConductance> quantity, String name) {
        return WATT_PER_KELVIN.toSi(quantity, name);
    }

    /**
     * A thermal conductivity in W/(m K).
     *
     * @param quantity the thermal conductivity, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in W/(m K)
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a thermal conductivity
     */
    public static double wattsPerMetreKelvin(Quantity<ThermalConductivity> quantity, String name) {
        return WATT_PER_METRE_KELVIN.toSi(quantity, name);
    }

    /**
     * A specific heat in J/(kg K).
     *
     * @param quantity the specific heat, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J/(kg K)
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a specific heat
     */
    public static double joulesPerKilogramKelvin(Quantity<SpecificHeat> quantity, String name) {
        return JOULE_PER_KILOGRAM_KELVIN.toSi(quantity, name);
    }

    /**
     * A heat capacity in J/K.
     *
     * @param quantity the heat capacity, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J/K
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a heat capacity
     */
    public static double joulesPerKelvin(Quantity<HeatCapacity> quantity, String name) {
        return JOULE_PER_KELVIN.toSi(quantity, name);
    }

    /**
     * A heat flux in W/m2.
     *
     * @param quantity the heat flux, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in W/m2
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not a heat flux
     */
    public static double wattsPerSquareMetre(Quantity<HeatFlux> quantity, String name) {
        return WATT_PER_SQUARE_METRE.toSi(quantity, name);
    }

    /**
     * An air sensible heat factor in J/(m3 K).
     *
     * @param quantity the air sensible heat factor, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J/(m3 K)
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an air sensible heat factor
     */
    public static double joulesPerCubicMetreKelvin(
            Quantity<AirSensibleFactor> quantity, String name) {
        return JOULE_PER_CUBIC_METRE_KELVIN.toSi(quantity, name);
    }

    /**
     * An air latent heat factor in J/m3.
     *
     * @param quantity the air latent heat factor, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in J/m3
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an air latent heat factor
     */
    public static double joulesPerCubicMetre(Quantity<AirLatentFactor> quantity, String name) {
        return JOULE_PER_CUBIC_METRE.toSi(quantity, name);
    }

    /**
     * An air total heat factor in kg/m3, which is W per L/s and kJ/kg.
     *
     * @param quantity the air total heat factor, in any unit of it
     * @param name what the caller calls it, for the error message
     * @return the value in kg/m3, which is W per L/s and kJ/kg
     * @throws NullPointerException if quantity is null
     * @throws IllegalArgumentException if it is NaN, infinite, or not an air total heat factor
     */
    public static double airTotalFactor(Quantity<AirTotalFactor> quantity, String name) {
        return WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM.toSi(quantity, name);
    }
}
