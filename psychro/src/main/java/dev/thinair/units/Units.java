package dev.thinair.units;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;
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
import tech.units.indriya.unit.AlternateUnit;

/**
 * The units of the trade, and one static factory for each: {@code fahrenheit(95)}, {@code
 * feet(7200)}, {@code cubicFeetPerMinute(1200)}, {@code tonsOfRefrigeration(3)}.
 *
 * <p>Conversion factors come from NIST Special Publication 811, 2008 edition, appendix B.8, and are
 * held as exact decimals or ratios, so that a factor printed there to seven figures carries all its
 * digits here. Every factory refuses NaN and infinity with an {@link IllegalArgumentException} that
 * names the factory; it does not judge the value otherwise, which is the work of the method that
 * takes the quantity.
 *
 * <p>A unit with an offset is only good for a temperature. A difference has its own type and units,
 * because 10 Fahrenheit degrees of difference are 5.6 K and never 260.9 K.
 *
 * <p>A quantity made here prints with the trade's symbols, equals the unit library's quantity of
 * the same number and unit, and refuses to add or subtract temperatures, for which {@link
 * #difference} and {@link #plus} are meant.
 *
 * <p>All units and quantities are immutable; any thread may share them.
 */
public final class Units {

    // ---- temperature

    /** Kelvin, the SI base unit of temperature. */
    public static final Unit<Temperature> KELVIN = tech.units.indriya.unit.Units.KELVIN;

    /** Degree Celsius: T/K = t + 273.15 (NIST SP 811, B.8). */
    public static final Unit<Temperature> CELSIUS = tech.units.indriya.unit.Units.CELSIUS;

    /** Degree Fahrenheit: T/K = (t + 459.67)/1.8 (NIST SP 811, B.8). */
    public static final Unit<Temperature> FAHRENHEIT =
            KELVIN.multiply(5).divide(9).shift(exact("459.67"));

    /**
     * Kelvin as a difference of temperatures.
     *
     * <p>A unit of its own, not the temperature's kelvin, so that a temperature handed in as a
     * difference (or the reverse) by way of a raw type can be told and refused.
     */
    public static final Unit<TemperatureDifference> KELVIN_DIFFERENCE =
            new AlternateUnit<>(KELVIN, "K");

    /** Fahrenheit degree as a difference: 5/9 K exactly (NIST SP 811, B.8). */
    public static final Unit<TemperatureDifference> FAHRENHEIT_DIFFERENCE =
            KELVIN_DIFFERENCE.multiply(5).divide(9);

    // ---- pressure

    /** Pascal, SI. */
    public static final Unit<Pressure> PASCAL = tech.units.indriya.unit.Units.PASCAL;

    /** Hectopascal, 100 Pa: the weather service's unit, equal to the millibar. */
    public static final Unit<Pressure> HECTOPASCAL = PASCAL.multiply(100);

    /** Kilopascal, 1000 Pa. */
    public static final Unit<Pressure> KILOPASCAL = PASCAL.multiply(1000);

    /**
     * Inch of water, conventional: 25.4 mm of 1000 kg/m3 at 9.80665 m/s2 = 249.08891 Pa exactly
     * (NIST SP 811, B.8 prints 2.490889 E+02). The trade's "in. w.g." and "in. w.c.".
     */
    public static final Unit<Pressure> INCH_OF_WATER = PASCAL.multiply(exact("249.08891"));

    /**
     * Inch of mercury, conventional: 25.4 mm of 13 595.1 kg/m3 at 9.80665 m/s2 = 3386.388640341 Pa
     * exactly (NIST SP 811, B.8 prints 3.386389 E+03).
     */
    public static final Unit<Pressure> INCH_OF_MERCURY = PASCAL.multiply(exact("3386.388640341"));

    /**
     * Millimetre of mercury, conventional: 133.322387415 Pa exactly (NIST SP 811, B.8 prints
     * 1.333224 E+02).
     */
    public static final Unit<Pressure> MILLIMETRE_OF_MERCURY =
            PASCAL.multiply(exact("133.322387415"));

    /**
     * Pound-force per square inch: 4.4482216152605 N on (0.0254 m)<sup>2</sup>, 6894.757... Pa
     * (NIST SP 811, B.8). Absolute or gauge is said by the method.
     */
    public static final Unit<Pressure> POUND_PER_SQUARE_INCH =
            PASCAL.multiply(exact("4.4482216152605")).divide(exact("0.00064516"));

    // ---- length, area, volume

    /** Metre, SI. */
    public static final Unit<Length> METRE = tech.units.indriya.unit.Units.METRE;

    /** Millimetre, 0.001 m. */
    public static final Unit<Length> MILLIMETRE = METRE.divide(1000);

    /** Centimetre, 0.01 m. */
    public static final Unit<Length> CENTIMETRE = METRE.divide(100);

    /** Kilometre, 1000 m. */
    public static final Unit<Length> KILOMETRE = METRE.multiply(1000);

    /** Foot, 0.3048 m exactly (NIST SP 811, B.8). */
    public static final Unit<Length> FOOT = METRE.multiply(exact("0.3048"));

    /** Inch, 0.0254 m exactly (NIST SP 811, B.8). */
    public static final Unit<Length> INCH = METRE.multiply(exact("0.0254"));

    /** Mile, 1609.344 m exactly (NIST SP 811, B.8). */
    public static final Unit<Length> MILE = METRE.multiply(exact("1609.344"));

    /** Square metre, SI. */
    public static final Unit<Area> SQUARE_METRE = tech.units.indriya.unit.Units.SQUARE_METRE;

    /** Square centimetre, 1e-4 m2: the usual unit of leakage areas. */
    public static final Unit<Area> SQUARE_CENTIMETRE = SQUARE_METRE.divide(10_000);

    /** Square foot, 0.09290304 m2 exactly (NIST SP 811, B.8). */
    public static final Unit<Area> SQUARE_FOOT = SQUARE_METRE.multiply(exact("0.09290304"));

    /** Square inch, 6.4516 E-04 m2 exactly (NIST SP 811, B.8). */
    public static final Unit<Area> SQUARE_INCH = SQUARE_METRE.multiply(exact("0.00064516"));

    /** Cubic metre, SI. */
    public static final Unit<Volume> CUBIC_METRE = tech.units.indriya.unit.Units.CUBIC_METRE;

    /** Litre, 0.001 m3. */
    public static final Unit<Volume> LITRE = CUBIC_METRE.divide(1000);

    /** Cubic foot, (0.3048 m)<sup>3</sup> = 0.028316846592 m3 exactly (NIST SP 811, B.8). */
    public static final Unit<Volume> CUBIC_FOOT = CUBIC_METRE.multiply(exact("0.028316846592"));

    /** U.S. liquid gallon, 231 in3 = 0.003785411784 m3 exactly (NIST SP 811, B.8). */
    public static final Unit<Volume> GALLON = CUBIC_METRE.multiply(exact("0.003785411784"));

    // ---- mass, time, speed, angle, numbers

    /** Kilogram, SI. */
    public static final Unit<Mass> KILOGRAM = tech.units.indriya.unit.Units.KILOGRAM;

    /** Pound (avoirdupois), 0.45359237 kg exactly (NIST SP 811, B.8). */
    public static final Unit<Mass> POUND = KILOGRAM.multiply(exact("0.45359237"));

    /** Gram, 0.001 kg. */
    public static final Unit<Mass> GRAM = KILOGRAM.divide(1000);

    /** Ounce (avoirdupois), 1/16 lb (NIST SP 811, B.8: 2.834952 E-02 kg): refrigerant charges. */
    public static final Unit<Mass> OUNCE = POUND.divide(16);

    /** Second, SI. */
    public static final Unit<Time> SECOND = tech.units.indriya.unit.Units.SECOND;

    /** Minute, 60 s. */
    public static final Unit<Time> MINUTE = SECOND.multiply(60);

    /** Hour, 3600 s. */
    public static final Unit<Time> HOUR = SECOND.multiply(3600);

    /** Day of 24 hours, 86 400 s. */
    public static final Unit<Time> DAY = SECOND.multiply(86_400);

    /** Metre per second, SI. */
    public static final Unit<Speed> METRE_PER_SECOND =
            tech.units.indriya.unit.Units.METRE_PER_SECOND;

    /** Kilometre per hour, 1/3.6 m/s. */
    public static final Unit<Speed> KILOMETRE_PER_HOUR =
            METRE_PER_SECOND.multiply(1000).divide(3600);

    /** Foot per minute, 0.3048 m / 60 s = 0.00508 m/s exactly (NIST SP 811, B.8). */
    public static final Unit<Speed> FOOT_PER_MINUTE = METRE_PER_SECOND.multiply(exact("0.00508"));

    /** Mile per hour, 0.44704 m/s exactly (NIST SP 811, B.8). */
    public static final Unit<Speed> MILE_PER_HOUR = METRE_PER_SECOND.multiply(exact("0.44704"));

    /** Radian, SI. */
    public static final Unit<Angle> RADIAN = tech.units.indriya.unit.Units.RADIAN;

    /** Degree of angle, pi/180 rad. */
    public static final Unit<Angle> DEGREE =
            RADIAN.multiply(exact("0.01745329251994329576923690768488612713"));

    /** The number one, as a unit. */
    public static final Unit<Dimensionless> RATIO = tech.units.indriya.AbstractUnit.ONE;

    /** Percent, 0.01. */
    public static final Unit<Dimensionless> PERCENT = RATIO.divide(100);

    /**
     * BTU of cooling per watt-hour of electricity, the trade's energy efficiency ratio (EER):
     * 1055.05585262/3600 = 0.29307... (NIST SP 811, B.8: BTU<sub>IT</sub> and watt hour).
     */
    public static final Unit<Dimensionless> BTU_PER_WATT_HOUR =
            RATIO.multiply(exact("1055.05585262")).divide(3600);

    /** Air changes per second, SI. */
    public static final Unit<AirChangeRate> PER_SECOND = own(SECOND.inverse(), AirChangeRate.class);

    /** Air changes per hour (ACH), 1/3600 per second. */
    public static final Unit<AirChangeRate> PER_HOUR = PER_SECOND.divide(3600);

    // ---- energy and power

    /** Joule, SI. */
    public static final Unit<Energy> JOULE = tech.units.indriya.unit.Units.JOULE;

    /** Kilowatt-hour, 3.6 E+06 J exactly (NIST SP 811, B.8). */
    public static final Unit<Energy> KILOWATT_HOUR = JOULE.multiply(3_600_000);

    /** Watt-hour, 3600 J exactly (NIST SP 811, B.8). */
    public static final Unit<Energy> WATT_HOUR = JOULE.multiply(3600);

    /** Kilojoule, 1000 J. */
    public static final Unit<Energy> KILOJOULE = JOULE.multiply(1000);

    /** Megajoule, 1e6 J. */
    public static final Unit<Energy> MEGAJOULE = JOULE.multiply(1_000_000);

    /**
     * British thermal unit of the International Table (BTU<sub>IT</sub>), 1055.05585262 J exactly
     * (NIST SP 811, B.8, footnote 9, prints 1.055056 E+03).
     */
    public static final Unit<Energy> BTU = JOULE.multiply(exact("1055.05585262"));

    /** Thousand BTU<sub>IT</sub>. */
    public static final Unit<Energy> KILO_BTU = BTU.multiply(1000);

    /**
     * Therm, 100 000 BTU<sub>IT</sub> = 1.05505585262 E+08 J; the legal therms in NIST SP 811, B.8
     * are 1.05506 E+08 J (EC) and 1.054804 E+08 J (U.S.), 4 ppm above and 0.024 percent below.
     */
    public static final Unit<Energy> THERM = BTU.multiply(100_000);

    /** Watt, SI. */
    public static final Unit<Power> WATT = tech.units.indriya.unit.Units.WATT;

    /** Kilowatt, 1000 W. */
    public static final Unit<Power> KILOWATT = WATT.multiply(1000);

    /** BTU<sub>IT</sub> per hour, 0.29307107... W (NIST SP 811, B.8). */
    public static final Unit<Power> BTU_PER_HOUR =
            WATT.multiply(exact("1055.05585262")).divide(3600);

    /** Thousand BTU<sub>IT</sub> per hour, the trade's kBtu/h and MBH. */
    public static final Unit<Power> KILO_BTU_PER_HOUR = BTU_PER_HOUR.multiply(1000);

    /**
     * Ton of refrigeration, 12 000 BTU<sub>IT</sub>/h = 3516.8528... W (NIST SP 811, B.8 prints
     * 3.516853 E+03).
     */
    public static final Unit<Power> TON_OF_REFRIGERATION = BTU_PER_HOUR.multiply(12_000);

    /**
     * Mechanical horsepower, 550 ft lbf/s = 745.69987158227022 W exactly (NIST SP 811, B.8 prints
     * 7.456999 E+02).
     */
    public static final Unit<Power> HORSEPOWER = WATT.multiply(exact("745.69987158227022"));

    // ---- moist air and flows

    /**
     * Kilogram of water vapour per kilogram of dry air, SI.
     *
     * <p>A unit of its own, not the number one, so that a relative humidity handed in by way of a
     * raw type can be told and refused.
     */
    public static final Unit<HumidityRatio> KILOGRAM_PER_KILOGRAM =
            new AlternateUnit<>(RATIO, "kg/kg");

    /** Gram of water vapour per kilogram of dry air. */
    public static final Unit<HumidityRatio> GRAM_PER_KILOGRAM = KILOGRAM_PER_KILOGRAM.divide(1000);

    /**
     * Grain of water vapour per pound of dry air, 1/7000 exactly (7000 grains are a pound; NIST SP
     * 811, B.8: grain 6.479891 E-05 kg).
     */
    public static final Unit<HumidityRatio> GRAIN_PER_POUND = KILOGRAM_PER_KILOGRAM.divide(7000);

    /** Joule per kilogram, SI. */
    public static final Unit<SpecificEnthalpy> JOULE_PER_KILOGRAM =
            own(JOULE.divide(KILOGRAM), SpecificEnthalpy.class);

    /** Kilojoule per kilogram. */
    public static final Unit<SpecificEnthalpy> KILOJOULE_PER_KILOGRAM =
            JOULE_PER_KILOGRAM.multiply(1000);

    /**
     * BTU<sub>IT</sub> per pound, 2326 J/kg exactly (NIST SP 811, B.8). Only the unit: the
     * inch-pound enthalpy of moist air also counts from another zero.
     */
    public static final Unit<SpecificEnthalpy> BTU_PER_POUND = JOULE_PER_KILOGRAM.multiply(2326);

    /** Cubic metre per kilogram, SI. */
    public static final Unit<SpecificVolume> CUBIC_METRE_PER_KILOGRAM =
            own(CUBIC_METRE.divide(KILOGRAM), SpecificVolume.class);

    /** Cubic foot per pound, 6.242796 E-02 m3/kg (NIST SP 811, B.8). */
    public static final Unit<SpecificVolume> CUBIC_FOOT_PER_POUND =
            CUBIC_METRE_PER_KILOGRAM.multiply(exact("0.028316846592")).divide(exact("0.45359237"));

    /** Kilogram per cubic metre, SI. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
            own(KILOGRAM.divide(CUBIC_METRE), Density.class);

    /** Pound per cubic foot, 1.601846 E+01 kg/m3 (NIST SP 811, B.8). */
    public static final Unit<Density> POUND_PER_CUBIC_FOOT =
            KILOGRAM_PER_CUBIC_METRE.multiply(exact("0.45359237")).divide(exact("0.028316846592"));

    /** Cubic metre per second, SI. */
    public static final Unit<VolumeFlow> CUBIC_METRE_PER_SECOND =
            own(CUBIC_METRE.divide(SECOND), VolumeFlow.class);

    /** Cubic metre per hour. */
    public static final Unit<VolumeFlow> CUBIC_METRE_PER_HOUR = CUBIC_METRE_PER_SECOND.divide(3600);

    /** Litre per second. */
    public static final Unit<VolumeFlow> LITRE_PER_SECOND = CUBIC_METRE_PER_SECOND.divide(1000);

    /** Cubic foot per minute (cfm), 4.719474 E-04 m3/s (NIST SP 811, B.8). */
    public static final Unit<VolumeFlow> CUBIC_FOOT_PER_MINUTE =
            CUBIC_METRE_PER_SECOND.multiply(exact("0.028316846592")).divide(60);

    /** Kilogram per second, SI. */
    public static final Unit<MassFlow> KILOGRAM_PER_SECOND =
            own(KILOGRAM.divide(SECOND), MassFlow.class);

    /** Kilogram per hour. */
    public static final Unit<MassFlow> KILOGRAM_PER_HOUR = KILOGRAM_PER_SECOND.divide(3600);

    /** Pound per hour, 1.259979 E-04 kg/s (NIST SP 811, B.8). */
    public static final Unit<MassFlow> POUND_PER_HOUR =
            KILOGRAM_PER_SECOND.multiply(exact("0.45359237")).divide(3600);

    /** Pound per minute, 7.559873 E-03 kg/s (NIST SP 811, B.8). */
    public static final Unit<MassFlow> POUND_PER_MINUTE =
            KILOGRAM_PER_SECOND.multiply(exact("0.45359237")).divide(60);

    /** Pascal per metre of duct, SI. */
    public static final Unit<FrictionRate> PASCAL_PER_METRE =
            own(PASCAL.divide(METRE), FrictionRate.class);

    /** Inch of water per hundred feet of duct: 249.08891 Pa on 30.48 m. */
    public static final Unit<FrictionRate> INCH_OF_WATER_PER_HUNDRED_FEET =
            PASCAL_PER_METRE.multiply(exact("249.08891")).divide(exact("30.48"));

    /** Pascal second, SI. */
    public static final Unit<DynamicViscosity> PASCAL_SECOND =
            own(PASCAL.multiply(SECOND), DynamicViscosity.class);

    /** Pound per foot hour, 4.133789 E-04 Pa s (NIST SP 811, B.8). */
    public static final Unit<DynamicViscosity> POUND_PER_FOOT_HOUR =
            PASCAL_SECOND.multiply(exact("0.45359237")).divide(exact("0.3048")).divide(3600);

    /** Cubic metre per second of air per watt of capacity, SI. */
    public static final Unit<FlowPerCapacity> CUBIC_METRE_PER_SECOND_PER_WATT =
            own(CUBIC_METRE_PER_SECOND.divide(WATT), FlowPerCapacity.class);

    /** Litre per second of air per kilowatt of capacity. */
    public static final Unit<FlowPerCapacity> LITRE_PER_SECOND_PER_KILOWATT =
            CUBIC_METRE_PER_SECOND_PER_WATT.divide(1_000_000);

    /** Cubic foot per minute of air per ton of refrigeration. */
    public static final Unit<FlowPerCapacity> CUBIC_FOOT_PER_MINUTE_PER_TON =
            CUBIC_METRE_PER_SECOND_PER_WATT
                    .multiply(exact("0.028316846592"))
                    .divide(60)
                    .multiply(3600)
                    .divide(exact("1055.05585262"))
                    .divide(12_000);

    // ---- air-side heat factors

    /** Joule per cubic metre kelvin, which is watt per cubic metre per second and kelvin, SI. */
    public static final Unit<AirSensibleFactor> JOULE_PER_CUBIC_METRE_KELVIN =
            own(JOULE.divide(CUBIC_METRE).divide(KELVIN), AirSensibleFactor.class);

    /** Watt per litre per second and kelvin. */
    public static final Unit<AirSensibleFactor> WATT_PER_LITRE_PER_SECOND_KELVIN =
            JOULE_PER_CUBIC_METRE_KELVIN.multiply(1000);

    /** BTU<sub>IT</sub> per hour, cfm and degree Fahrenheit: the unit of the trade's 1.08. */
    public static final Unit<AirSensibleFactor> BTU_PER_HOUR_CFM_FAHRENHEIT =
            JOULE_PER_CUBIC_METRE_KELVIN
                    .multiply(exact("1055.05585262"))
                    .multiply(9)
                    .divide(5)
                    .divide(60)
                    .divide(exact("0.028316846592"));

    /** Joule per cubic metre, which is watt per cubic metre per second and kg/kg, SI. */
    public static final Unit<AirLatentFactor> JOULE_PER_CUBIC_METRE =
            own(JOULE.divide(CUBIC_METRE), AirLatentFactor.class);

    /** Watt per litre per second and kg/kg. */
    public static final Unit<AirLatentFactor> WATT_PER_LITRE_PER_SECOND =
            JOULE_PER_CUBIC_METRE.multiply(1000);

    /** BTU<sub>IT</sub> per hour, cfm and lb/lb: the unit of the trade's 4840. */
    public static final Unit<AirLatentFactor> BTU_PER_HOUR_CFM =
            JOULE_PER_CUBIC_METRE
                    .multiply(exact("1055.05585262"))
                    .divide(60)
                    .divide(exact("0.028316846592"));

    /** BTU<sub>IT</sub> per hour, cfm and gr/lb: the unit of the trade's 0.68. */
    public static final Unit<AirLatentFactor> BTU_PER_HOUR_CFM_GRAIN_PER_POUND =
            BTU_PER_HOUR_CFM.multiply(7000);

    /**
     * Watt per litre per second and kJ/kg, which is one kilogram of dry air per cubic metre, SI.
     */
    public static final Unit<AirTotalFactor> WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM =
            new AlternateUnit<>(KILOGRAM.divide(CUBIC_METRE), "W/(L/s kJ/kg)");

    /** BTU<sub>IT</sub> per hour, cfm and BTU/lb: the unit of the trade's 4.5. */
    public static final Unit<AirTotalFactor> BTU_PER_HOUR_CFM_BTU_PER_POUND =
            WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM
                    .multiply(exact("0.45359237"))
                    .divide(60)
                    .divide(exact("0.028316846592"));

    // ---- heat through building parts

    /** Watt per square metre kelvin, SI. */
    public static final Unit<ThermalTransmittance> WATT_PER_SQUARE_METRE_KELVIN =
            own(WATT.divide(SQUARE_METRE).divide(KELVIN), ThermalTransmittance.class);

    /**
     * BTU<sub>IT</sub> per hour square foot degree Fahrenheit, the U-factor in inch-pound units,
     * 5.678263 W/(m2 K) (NIST SP 811, B.8).
     */
    public static final Unit<ThermalTransmittance> U_VALUE_IP =
            WATT_PER_SQUARE_METRE_KELVIN
                    .multiply(exact("1055.05585262"))
                    .multiply(9)
                    .divide(5)
                    .divide(3600)
                    .divide(exact("0.09290304"));

    /** Square metre kelvin per watt, SI. */
    public static final Unit<ThermalResistance> SQUARE_METRE_KELVIN_PER_WATT =
            own(SQUARE_METRE.multiply(KELVIN).divide(WATT), ThermalResistance.class);

    /**
     * Hour square foot degree Fahrenheit per BTU<sub>IT</sub>, the R-value in inch-pound units,
     * 1.761102 E-01 m2 K/W (NIST SP 811, B.8).
     */
    public static final Unit<ThermalResistance> R_VALUE_IP =
            SQUARE_METRE_KELVIN_PER_WATT
                    .divide(exact("1055.05585262"))
                    .multiply(5)
                    .divide(9)
                    .multiply(3600)
                    .multiply(exact("0.09290304"));

    /** Watt per kelvin, SI. */
    public static final Unit<ThermalConductance> WATT_PER_KELVIN =
            own(WATT.divide(KELVIN), ThermalConductance.class);

    /** BTU<sub>IT</sub> per hour degree Fahrenheit, 0.52752793 W/K. */
    public static final Unit<ThermalConductance> BTU_PER_HOUR_FAHRENHEIT =
            WATT_PER_KELVIN.multiply(exact("1055.05585262")).multiply(9).divide(5).divide(3600);

    /** Watt per metre kelvin, SI. */
    public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
            own(WATT.divide(METRE).divide(KELVIN), ThermalConductivity.class);

    /**
     * BTU<sub>IT</sub> inch per hour square foot degree Fahrenheit, 1.442279 E-01 W/(m K) (NIST SP
     * 811, B.8).
     */
    public static final Unit<ThermalConductivity> BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT =
            WATT_PER_METRE_KELVIN
                    .multiply(exact("1055.05585262"))
                    .multiply(9)
                    .divide(5)
                    .divide(3600)
                    .multiply(exact("0.0254"))
                    .divide(exact("0.09290304"));

    /** BTU<sub>IT</sub> per hour foot degree Fahrenheit, 1.730735 W/(m K) (NIST SP 811, B.8). */
    public static final Unit<ThermalConductivity> BTU_PER_HOUR_FOOT_FAHRENHEIT =
            WATT_PER_METRE_KELVIN
                    .multiply(exact("1055.05585262"))
                    .multiply(9)
                    .divide(5)
                    .divide(3600)
                    .divide(exact("0.3048"));

    /** Joule per kilogram kelvin, SI. */
    public static final Unit<SpecificHeat> JOULE_PER_KILOGRAM_KELVIN =
            own(JOULE.divide(KILOGRAM).divide(KELVIN), SpecificHeat.class);

    /** BTU<sub>IT</sub> per pound degree Fahrenheit, 4186.8 J/(kg K) exactly (NIST SP 811, B.8). */
    public static final Unit<SpecificHeat> BTU_PER_POUND_FAHRENHEIT =
            JOULE_PER_KILOGRAM_KELVIN.multiply(exact("4186.8"));

    /** Joule per kelvin, SI. */
    public static final Unit<HeatCapacity> JOULE_PER_KELVIN =
            own(JOULE.divide(KELVIN), HeatCapacity.class);

    /** BTU<sub>IT</sub> per degree Fahrenheit, 1.899101 E+03 J/K (NIST SP 811, B.8). */
    public static final Unit<HeatCapacity> BTU_PER_FAHRENHEIT =
            JOULE_PER_KELVIN.multiply(exact("1055.05585262")).multiply(9).divide(5);

    /** Watt per square metre, SI. */
    public static final Unit<HeatFlux> WATT_PER_SQUARE_METRE =
            own(WATT.divide(SQUARE_METRE), HeatFlux.class);

    /** BTU<sub>IT</sub> per hour square foot, 3.154591 W/m2 (NIST SP 811, B.8). */
    public static final Unit<HeatFlux> BTU_PER_HOUR_SQUARE_FOOT =
            WATT_PER_SQUARE_METRE
                    .multiply(exact("1055.05585262"))
                    .divide(3600)
                    .divide(exact("0.09290304"));

    private Units() {}

    /**
     * A quantity of any unit.
     *
     * @param <Q> the quantity's type
     * @param value the number, finite
     * @param unit the unit
     * @return value times unit
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static <Q extends Quantity<Q>> Quantity<Q> quantity(double value, Unit<Q> unit) {
        return of(value, unit, "quantity");
    }

    /**
     * A temperature in K.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Temperature> kelvins(double value) {
        return of(value, KELVIN, "kelvins");
    }

    /**
     * A temperature in &deg;C.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Temperature> celsius(double value) {
        return of(value, CELSIUS, "celsius");
    }

    /**
     * A temperature in &deg;F.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Temperature> fahrenheit(double value) {
        return of(value, FAHRENHEIT, "fahrenheit");
    }

    /**
     * A temperature difference in K.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<TemperatureDifference> celsiusDifference(double value) {
        return of(value, KELVIN_DIFFERENCE, "celsiusDifference");
    }

    /**
     * A temperature difference in K.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<TemperatureDifference> kelvinDifference(double value) {
        return of(value, KELVIN_DIFFERENCE, "kelvinDifference");
    }

    /**
     * A temperature difference in &deg;F.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<TemperatureDifference> fahrenheitDifference(double value) {
        return of(value, FAHRENHEIT_DIFFERENCE, "fahrenheitDifference");
    }

    /**
     * A pressure in Pa.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> pascals(double value) {
        return of(value, PASCAL, "pascals");
    }

    /**
     * A pressure in hPa.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> hectopascals(double value) {
        return of(value, HECTOPASCAL, "hectopascals");
    }

    /**
     * A pressure in kPa.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> kilopascals(double value) {
        return of(value, KILOPASCAL, "kilopascals");
    }

    /**
     * A pressure in in. w.g..
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> inchesOfWater(double value) {
        return of(value, INCH_OF_WATER, "inchesOfWater");
    }

    /**
     * A pressure in inHg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> inchesOfMercury(double value) {
        return of(value, INCH_OF_MERCURY, "inchesOfMercury");
    }

    /**
     * A pressure in mmHg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> millimetresOfMercury(double value) {
        return of(value, MILLIMETRE_OF_MERCURY, "millimetresOfMercury");
    }

    /**
     * A pressure in psi.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Pressure> poundsPerSquareInch(double value) {
        return of(value, POUND_PER_SQUARE_INCH, "poundsPerSquareInch");
    }

    /**
     * A length in m.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> metres(double value) {
        return of(value, METRE, "metres");
    }

    /**
     * A length in mm.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> millimetres(double value) {
        return of(value, MILLIMETRE, "millimetres");
    }

    /**
     * A length in cm.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> centimetres(double value) {
        return of(value, CENTIMETRE, "centimetres");
    }

    /**
     * A length in km.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> kilometres(double value) {
        return of(value, KILOMETRE, "kilometres");
    }

    /**
     * A length in ft.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> feet(double value) {
        return of(value, FOOT, "feet");
    }

    /**
     * A length in in.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> inches(double value) {
        return of(value, INCH, "inches");
    }

    /**
     * A length in mi.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Length> miles(double value) {
        return of(value, MILE, "miles");
    }

    /**
     * An area in m2.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Area> squareMetres(double value) {
        return of(value, SQUARE_METRE, "squareMetres");
    }

    /**
     * An area in cm2.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Area> squareCentimetres(double value) {
        return of(value, SQUARE_CENTIMETRE, "squareCentimetres");
    }

    /**
     * An area in ft2.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Area> squareFeet(double value) {
        return of(value, SQUARE_FOOT, "squareFeet");
    }

    /**
     * An area in in2.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Area> squareInches(double value) {
        return of(value, SQUARE_INCH, "squareInches");
    }

    /**
     * A volume in m3.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Volume> cubicMetres(double value) {
        return of(value, CUBIC_METRE, "cubicMetres");
    }

    /**
     * A volume in L.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Volume> litres(double value) {
        return of(value, LITRE, "litres");
    }

    /**
     * A volume in ft3.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Volume> cubicFeet(double value) {
        return of(value, CUBIC_FOOT, "cubicFeet");
    }

    /**
     * A volume in gal.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Volume> gallons(double value) {
        return of(value, GALLON, "gallons");
    }

    /**
     * A mass in kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Mass> kilograms(double value) {
        return of(value, KILOGRAM, "kilograms");
    }

    /**
     * A mass in lb.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Mass> pounds(double value) {
        return of(value, POUND, "pounds");
    }

    /**
     * A mass in g.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Mass> grams(double value) {
        return of(value, GRAM, "grams");
    }

    /**
     * A mass in oz.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Mass> ounces(double value) {
        return of(value, OUNCE, "ounces");
    }

    /**
     * A time in s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Time> seconds(double value) {
        return of(value, SECOND, "seconds");
    }

    /**
     * A time in min.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Time> minutes(double value) {
        return of(value, MINUTE, "minutes");
    }

    /**
     * A time in h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Time> hours(double value) {
        return of(value, HOUR, "hours");
    }

    /**
     * A time in d.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Time> days(double value) {
        return of(value, DAY, "days");
    }

    /**
     * A speed in m/s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Speed> metresPerSecond(double value) {
        return of(value, METRE_PER_SECOND, "metresPerSecond");
    }

    /**
     * A speed in km/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Speed> kilometresPerHour(double value) {
        return of(value, KILOMETRE_PER_HOUR, "kilometresPerHour");
    }

    /**
     * A speed in fpm.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Speed> feetPerMinute(double value) {
        return of(value, FOOT_PER_MINUTE, "feetPerMinute");
    }

    /**
     * A speed in mph.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Speed> milesPerHour(double value) {
        return of(value, MILE_PER_HOUR, "milesPerHour");
    }

    /**
     * An angle in rad.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Angle> radians(double value) {
        return of(value, RADIAN, "radians");
    }

    /**
     * An angle in &deg;.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Angle> degrees(double value) {
        return of(value, DEGREE, "degrees");
    }

    /**
     * A number in ones.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Dimensionless> ratio(double value) {
        return of(value, RATIO, "ratio");
    }

    /**
     * A number in %.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Dimensionless> percent(double value) {
        return of(value, PERCENT, "percent");
    }

    /**
     * A number in BTU/(W h).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Dimensionless> btuPerWattHour(double value) {
        return of(value, BTU_PER_WATT_HOUR, "btuPerWattHour");
    }

    /**
     * An air change rate in 1/s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirChangeRate> airChangesPerSecond(double value) {
        return of(value, PER_SECOND, "airChangesPerSecond");
    }

    /**
     * An air change rate in 1/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirChangeRate> airChangesPerHour(double value) {
        return of(value, PER_HOUR, "airChangesPerHour");
    }

    /**
     * An energy in J.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> joules(double value) {
        return of(value, JOULE, "joules");
    }

    /**
     * An energy in kWh.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> kilowattHours(double value) {
        return of(value, KILOWATT_HOUR, "kilowattHours");
    }

    /**
     * An energy in Wh.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> wattHours(double value) {
        return of(value, WATT_HOUR, "wattHours");
    }

    /**
     * An energy in kJ.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> kilojoules(double value) {
        return of(value, KILOJOULE, "kilojoules");
    }

    /**
     * An energy in MJ.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> megajoules(double value) {
        return of(value, MEGAJOULE, "megajoules");
    }

    /**
     * An energy in BTU.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> btus(double value) {
        return of(value, BTU, "btus");
    }

    /**
     * An energy in kBtu.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> kiloBtus(double value) {
        return of(value, KILO_BTU, "kiloBtus");
    }

    /**
     * An energy in therm.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Energy> therms(double value) {
        return of(value, THERM, "therms");
    }

    /**
     * A power in W.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> watts(double value) {
        return of(value, WATT, "watts");
    }

    /**
     * A power in kW.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> kilowatts(double value) {
        return of(value, KILOWATT, "kilowatts");
    }

    /**
     * A power in BTU/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> btuPerHour(double value) {
        return of(value, BTU_PER_HOUR, "btuPerHour");
    }

    /**
     * A power in kBtu/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> kiloBtuPerHour(double value) {
        return of(value, KILO_BTU_PER_HOUR, "kiloBtuPerHour");
    }

    /**
     * A power in ton.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> tonsOfRefrigeration(double value) {
        return of(value, TON_OF_REFRIGERATION, "tonsOfRefrigeration");
    }

    /**
     * A power in hp.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Power> horsepower(double value) {
        return of(value, HORSEPOWER, "horsepower");
    }

    /**
     * A humidity ratio in kg/kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HumidityRatio> kilogramsPerKilogram(double value) {
        return of(value, KILOGRAM_PER_KILOGRAM, "kilogramsPerKilogram");
    }

    /**
     * A humidity ratio in g/kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HumidityRatio> gramsPerKilogram(double value) {
        return of(value, GRAM_PER_KILOGRAM, "gramsPerKilogram");
    }

    /**
     * A humidity ratio in gr/lb.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HumidityRatio> grainsPerPound(double value) {
        return of(value, GRAIN_PER_POUND, "grainsPerPound");
    }

    /**
     * A specific enthalpy in J/kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificEnthalpy> joulesPerKilogram(double value) {
        return of(value, JOULE_PER_KILOGRAM, "joulesPerKilogram");
    }

    /**
     * A specific enthalpy in kJ/kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificEnthalpy> kilojoulesPerKilogram(double value) {
        return of(value, KILOJOULE_PER_KILOGRAM, "kilojoulesPerKilogram");
    }

    /**
     * A specific enthalpy in BTU/lb.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificEnthalpy> btuPerPound(double value) {
        return of(value, BTU_PER_POUND, "btuPerPound");
    }

    /**
     * A specific volume in m3/kg.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificVolume> cubicMetresPerKilogram(double value) {
        return of(value, CUBIC_METRE_PER_KILOGRAM, "cubicMetresPerKilogram");
    }

    /**
     * A specific volume in ft3/lb.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificVolume> cubicFeetPerPound(double value) {
        return of(value, CUBIC_FOOT_PER_POUND, "cubicFeetPerPound");
    }

    /**
     * A density in kg/m3.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Density> kilogramsPerCubicMetre(double value) {
        return of(value, KILOGRAM_PER_CUBIC_METRE, "kilogramsPerCubicMetre");
    }

    /**
     * A density in lb/ft3.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<Density> poundsPerCubicFoot(double value) {
        return of(value, POUND_PER_CUBIC_FOOT, "poundsPerCubicFoot");
    }

    /**
     * A volume flow in m3/s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<VolumeFlow> cubicMetresPerSecond(double value) {
        return of(value, CUBIC_METRE_PER_SECOND, "cubicMetresPerSecond");
    }

    /**
     * A volume flow in m3/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<VolumeFlow> cubicMetresPerHour(double value) {
        return of(value, CUBIC_METRE_PER_HOUR, "cubicMetresPerHour");
    }

    /**
     * A volume flow in L/s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<VolumeFlow> litresPerSecond(double value) {
        return of(value, LITRE_PER_SECOND, "litresPerSecond");
    }

    /**
     * A volume flow in cfm.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<VolumeFlow> cubicFeetPerMinute(double value) {
        return of(value, CUBIC_FOOT_PER_MINUTE, "cubicFeetPerMinute");
    }

    /**
     * A mass flow in kg/s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<MassFlow> kilogramsPerSecond(double value) {
        return of(value, KILOGRAM_PER_SECOND, "kilogramsPerSecond");
    }

    /**
     * A mass flow in kg/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<MassFlow> kilogramsPerHour(double value) {
        return of(value, KILOGRAM_PER_HOUR, "kilogramsPerHour");
    }

    /**
     * A mass flow in lb/h.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<MassFlow> poundsPerHour(double value) {
        return of(value, POUND_PER_HOUR, "poundsPerHour");
    }

    /**
     * A mass flow in lb/min.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<MassFlow> poundsPerMinute(double value) {
        return of(value, POUND_PER_MINUTE, "poundsPerMinute");
    }

    /**
     * A friction rate in Pa/m.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<FrictionRate> pascalsPerMetre(double value) {
        return of(value, PASCAL_PER_METRE, "pascalsPerMetre");
    }

    /**
     * A friction rate in in. w.g./100 ft.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<FrictionRate> inchesOfWaterPerHundredFeet(double value) {
        return of(value, INCH_OF_WATER_PER_HUNDRED_FEET, "inchesOfWaterPerHundredFeet");
    }

    /**
     * A dynamic viscosity in Pa s.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<DynamicViscosity> pascalSeconds(double value) {
        return of(value, PASCAL_SECOND, "pascalSeconds");
    }

    /**
     * A dynamic viscosity in lb/(ft h).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<DynamicViscosity> poundsPerFootHour(double value) {
        return of(value, POUND_PER_FOOT_HOUR, "poundsPerFootHour");
    }

    /**
     * An airflow per capacity in m3/s/W.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<FlowPerCapacity> cubicMetresPerSecondPerWatt(double value) {
        return of(value, CUBIC_METRE_PER_SECOND_PER_WATT, "cubicMetresPerSecondPerWatt");
    }

    /**
     * An airflow per capacity in L/s/kW.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<FlowPerCapacity> litresPerSecondPerKilowatt(double value) {
        return of(value, LITRE_PER_SECOND_PER_KILOWATT, "litresPerSecondPerKilowatt");
    }

    /**
     * An airflow per capacity in cfm/ton.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<FlowPerCapacity> cubicFeetPerMinutePerTon(double value) {
        return of(value, CUBIC_FOOT_PER_MINUTE_PER_TON, "cubicFeetPerMinutePerTon");
    }

    /**
     * An air sensible heat factor in J/(m3 K).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirSensibleFactor> joulesPerCubicMetreKelvin(double value) {
        return of(value, JOULE_PER_CUBIC_METRE_KELVIN, "joulesPerCubicMetreKelvin");
    }

    /**
     * An air sensible heat factor in W/(L/s K).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirSensibleFactor> wattsPerLitrePerSecondKelvin(double value) {
        return of(value, WATT_PER_LITRE_PER_SECOND_KELVIN, "wattsPerLitrePerSecondKelvin");
    }

    /**
     * An air sensible heat factor in BTU/(h cfm &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirSensibleFactor> btuPerHourCfmFahrenheit(double value) {
        return of(value, BTU_PER_HOUR_CFM_FAHRENHEIT, "btuPerHourCfmFahrenheit");
    }

    /**
     * An air latent heat factor in J/m3.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirLatentFactor> joulesPerCubicMetre(double value) {
        return of(value, JOULE_PER_CUBIC_METRE, "joulesPerCubicMetre");
    }

    /**
     * An air latent heat factor in W/(L/s).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirLatentFactor> wattsPerLitrePerSecond(double value) {
        return of(value, WATT_PER_LITRE_PER_SECOND, "wattsPerLitrePerSecond");
    }

    /**
     * An air latent heat factor in BTU/(h cfm lb/lb).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirLatentFactor> btuPerHourCfm(double value) {
        return of(value, BTU_PER_HOUR_CFM, "btuPerHourCfm");
    }

    /**
     * An air latent heat factor in BTU/(h cfm gr/lb).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirLatentFactor> btuPerHourCfmGrainPerPound(double value) {
        return of(value, BTU_PER_HOUR_CFM_GRAIN_PER_POUND, "btuPerHourCfmGrainPerPound");
    }

    /**
     * An air total heat factor in W/(L/s kJ/kg).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirTotalFactor> wattsPerLitrePerSecondKilojoulePerKilogram(
            double value) {
        return of(
                value,
                WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM,
                "wattsPerLitrePerSecondKilojoulePerKilogram");
    }

    /**
     * An air total heat factor in BTU/(h cfm BTU/lb).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<AirTotalFactor> btuPerHourCfmBtuPerPound(double value) {
        return of(value, BTU_PER_HOUR_CFM_BTU_PER_POUND, "btuPerHourCfmBtuPerPound");
    }

    /**
     * A thermal transmittance in W/(m2 K).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalTransmittance> wattsPerSquareMetreKelvin(double value) {
        return of(value, WATT_PER_SQUARE_METRE_KELVIN, "wattsPerSquareMetreKelvin");
    }

    /**
     * A thermal transmittance in BTU/(h ft2 &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalTransmittance> uValueIp(double value) {
        return of(value, U_VALUE_IP, "uValueIp");
    }

    /**
     * A thermal resistance in m2 K/W.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalResistance> squareMetreKelvinsPerWatt(double value) {
        return of(value, SQUARE_METRE_KELVIN_PER_WATT, "squareMetreKelvinsPerWatt");
    }

    /**
     * A thermal resistance in h ft2 &deg;F/BTU.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalResistance> rValueIp(double value) {
        return of(value, R_VALUE_IP, "rValueIp");
    }

    /**
     * A thermal conductance in W/K.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalConductance> wattsPerKelvin(double value) {
        return of(value, WATT_PER_KELVIN, "wattsPerKelvin");
    }

    /**
     * A thermal conductance in BTU/(h &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalConductance> btuPerHourFahrenheit(double value) {
        return of(value, BTU_PER_HOUR_FAHRENHEIT, "btuPerHourFahrenheit");
    }

    /**
     * A thermal conductivity in W/(m K).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalConductivity> wattsPerMetreKelvin(double value) {
        return of(value, WATT_PER_METRE_KELVIN, "wattsPerMetreKelvin");
    }

    /**
     * A thermal conductivity in BTU in/(h ft2 &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalConductivity> btuInchesPerHourSquareFootFahrenheit(double value) {
        return of(
                value,
                BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
                "btuInchesPerHourSquareFootFahrenheit");
    }

    /**
     * A thermal conductivity in BTU/(h ft &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<ThermalConductivity> btuPerHourFootFahrenheit(double value) {
        return of(value, BTU_PER_HOUR_FOOT_FAHRENHEIT, "btuPerHourFootFahrenheit");
    }

    /**
     * A specific heat in J/(kg K).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificHeat> joulesPerKilogramKelvin(double value) {
        return of(value, JOULE_PER_KILOGRAM_KELVIN, "joulesPerKilogramKelvin");
    }

    /**
     * A specific heat in BTU/(lb &deg;F).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<SpecificHeat> btuPerPoundFahrenheit(double value) {
        return of(value, BTU_PER_POUND_FAHRENHEIT, "btuPerPoundFahrenheit");
    }

    /**
     * A heat capacity in J/K.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HeatCapacity> joulesPerKelvin(double value) {
        return of(value, JOULE_PER_KELVIN, "joulesPerKelvin");
    }

    /**
     * A heat capacity in BTU/&deg;F.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HeatCapacity> btuPerFahrenheit(double value) {
        return of(value, BTU_PER_FAHRENHEIT, "btuPerFahrenheit");
    }

    /**
     * A heat flux in W/m2.
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HeatFlux> wattsPerSquareMetre(double value) {
        return of(value, WATT_PER_SQUARE_METRE, "wattsPerSquareMetre");
    }

    /**
     * A heat flux in BTU/(h ft2).
     *
     * @param value the number, finite
     * @return the quantity
     * @throws IllegalArgumentException if value is NaN or infinite
     */
    public static Quantity<HeatFlux> btuPerHourSquareFoot(double value) {
        return of(value, BTU_PER_HOUR_SQUARE_FOOT, "btuPerHourSquareFoot");
    }

    private static <Q extends Quantity<Q>> Quantity<Q> of(
            double value, Unit<Q> unit, String factory) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    factory + "(" + value + "): the value must be a finite number");
        }
        return new DoubleQuantity<>(value, unit);
    }

    /**
     * The difference of two temperatures, {@code warmer - cooler}.
     *
     * @param warmer the minuend
     * @param cooler the subtrahend
     * @return the difference, negative if warmer is the cooler one; in Fahrenheit degrees if both
     *     temperatures are given in Fahrenheit, else in K
     * @throws NullPointerException if one is null
     * @throws IllegalArgumentException if one is not a finite temperature
     */
    public static Quantity<TemperatureDifference> difference(
            Quantity<Temperature> warmer, Quantity<Temperature> cooler) {
        double kelvins = Si.kelvins(warmer, "warmer") - Si.kelvins(cooler, "cooler");
        if (FAHRENHEIT.equals(warmer.getUnit()) && FAHRENHEIT.equals(cooler.getUnit())) {
            return fahrenheitDifference(
                    warmer.getValue().doubleValue() - cooler.getValue().doubleValue());
        }
        return kelvinDifference(kelvins);
    }

    /**
     * A temperature moved by a difference.
     *
     * @param temperature where to start
     * @param difference how far to go; negative for cooler
     * @return the sum, in the temperature's unit if that is Celsius, Fahrenheit or kelvin, else in
     *     kelvin
     * @throws NullPointerException if one is null
     * @throws IllegalArgumentException if one is not finite or not what its type says
     */
    public static Quantity<Temperature> plus(
            Quantity<Temperature> temperature, Quantity<TemperatureDifference> difference) {
        double start = Si.kelvins(temperature, "temperature");
        double step = Si.kelvinDifference(difference, "difference");
        double value = temperature.getValue().doubleValue();
        if (FAHRENHEIT.equals(temperature.getUnit())) {
            boolean same = FAHRENHEIT_DIFFERENCE.equals(difference.getUnit());
            return fahrenheit(
                    value + (same ? difference.getValue().doubleValue() : step * 9.0 / 5.0));
        }
        if (CELSIUS.equals(temperature.getUnit())) {
            return celsius(value + step);
        }
        return kelvins(start + step);
    }

    /** For units whose type is not known at compile time. */
    @SuppressWarnings({"unchecked", "rawtypes"})
    static Quantity<?> ofAny(double value, Unit<?> unit) {
        return new DoubleQuantity(value, unit);
    }

    private static BigDecimal exact(String factor) {
        return new BigDecimal(factor);
    }

    /** Types a unit of our own quantities; {@code asType} would check nothing for them either. */
    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Unit<Q> own(Unit<?> unit, Class<Q> type) {
        return (Unit<Q>) unit;
    }
}
