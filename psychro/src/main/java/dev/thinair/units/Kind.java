package dev.thinair.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

/** What a quantity type is called, how it is written, and in which units it is read and printed. */
final class Kind {

    /** A unit with its printed label and the other ways to write it. */
    record Written(Unit<?> unit, String label, List<String> aliases, Unit<?> otherSystem) {}

    private static final Map<Class<?>, Kind> BY_TYPE = new HashMap<>();
    private static final List<Kind> ALL = new ArrayList<>();

    private final Class<?> type;
    private final String name;
    private final String article;
    private final String example;
    private final Unit<?> si;
    private final List<Written> units = new ArrayList<>();
    private final Map<String, Unit<?>> exact = new HashMap<>();
    private final Map<String, Unit<?>> anyCase = new HashMap<>();

    private Kind(Class<?> type, String article, String name, String example, Unit<?> si) {
        this.type = type;
        this.article = article;
        this.name = name;
        this.example = example;
        this.si = si;
        BY_TYPE.put(type, this);
        ALL.add(this);
    }

    static <Q extends Quantity<Q>> Kind of(Class<Q> type) {
        Kind kind = BY_TYPE.get(type);
        if (kind == null) {
            throw new IllegalArgumentException("no text form is known for " + type.getSimpleName());
        }
        return kind;
    }

    static List<Kind> all() {
        return ALL;
    }

    Class<?> type() {
        return type;
    }

    String name() {
        return name;
    }

    /** What its units measure: "kg measures mass". */
    String measured() {
        return si == Units.RATIO ? "a ratio or a count" : name;
    }

    /** The kind's own unit of the same size, so that what is spelled out prints with its symbol. */
    Unit<?> sameAs(Unit<?> unit) {
        for (Written written : units) {
            double ratio = Crossing.convert(Units.ofAny(1.0, unit), written.unit());
            if (si != Units.KELVIN && Math.abs(ratio - 1.0) < 1e-14) {
                return written.unit();
            }
        }
        return unit;
    }

    String withArticle() {
        return article + " " + name;
    }

    String example() {
        return example;
    }

    Unit<?> si() {
        return si;
    }

    List<Written> units() {
        return units;
    }

    /** The unit written so, letter case respected first; null if this kind has none. */
    Unit<?> unitWritten(String text) {
        Unit<?> unit = exact.get(text);
        return unit != null ? unit : anyCase.get(text.toLowerCase(Locale.ROOT));
    }

    private Kind unit(Unit<?> unit, Unit<?> otherSystem, String label, String... aliases) {
        units.add(new Written(unit, label, List.of(aliases), otherSystem));
        learn(label, unit);
        for (String alias : aliases) {
            learn(alias, unit);
        }
        return this;
    }

    private void learn(String text, Unit<?> unit) {
        exact.put(text, unit);
        anyCase.putIfAbsent(text.toLowerCase(Locale.ROOT), unit);
    }

    static {
        new Kind(Temperature.class, "a", "temperature", "95 degF", Units.KELVIN)
                .unit(Units.FAHRENHEIT, Units.CELSIUS, "\u00b0F", "degF", "deg F", "F", "\u2109")
                .unit(Units.CELSIUS, Units.FAHRENHEIT, "\u00b0C", "degC", "deg C", "C", "\u2103")
                .unit(Units.KELVIN, Units.CELSIUS, "K", "kelvin");
        new Kind(
                        TemperatureDifference.class,
                        "a",
                        "temperature difference",
                        "18 degF_diff",
                        Units.KELVIN_DIFFERENCE)
                .unit(
                        Units.FAHRENHEIT_DIFFERENCE,
                        Units.KELVIN_DIFFERENCE,
                        "\u0394\u00b0F",
                        "degF_diff",
                        "F_diff",
                        "\u00b0F_diff",
                        "delta_degF",
                        "\u0394degF")
                .unit(
                        Units.KELVIN_DIFFERENCE,
                        Units.FAHRENHEIT_DIFFERENCE,
                        "K",
                        "degC_diff",
                        "C_diff",
                        "\u00b0C_diff",
                        "delta_degC",
                        "\u0394\u00b0C",
                        "\u0394degC",
                        "\u0394K",
                        "K_diff");
        new Kind(Pressure.class, "a", "pressure", "0.5 in. w.g.", Units.PASCAL)
                .unit(
                        Units.INCH_OF_WATER,
                        Units.PASCAL,
                        "in. w.g.",
                        "in. w.c.",
                        "in w.g.",
                        "in w.c.",
                        "in.w.g.",
                        "in.w.c.",
                        "in wg",
                        "in wc",
                        "inwg",
                        "inwc",
                        "iwg",
                        "iwc",
                        "inH2O",
                        "in H2O")
                .unit(Units.PASCAL, Units.INCH_OF_WATER, "Pa")
                .unit(Units.KILOPASCAL, Units.INCH_OF_MERCURY, "kPa")
                .unit(Units.HECTOPASCAL, Units.INCH_OF_MERCURY, "hPa", "mbar", "mb")
                .unit(Units.INCH_OF_MERCURY, Units.KILOPASCAL, "inHg", "in. Hg", "in Hg")
                .unit(Units.POUND_PER_SQUARE_INCH, Units.KILOPASCAL, "psi", "psia", "lbf/in2")
                .unit(Units.MILLIMETRE_OF_MERCURY, Units.INCH_OF_MERCURY, "mmHg", "mm Hg");
        new Kind(Length.class, "a", "length", "7200 ft", Units.METRE)
                .unit(Units.FOOT, Units.METRE, "ft", "foot", "feet", "'")
                .unit(Units.INCH, Units.MILLIMETRE, "in", "in.", "inch", "inches", "\"")
                .unit(Units.METRE, Units.FOOT, "m", "meter", "meters", "metre", "metres")
                .unit(Units.MILLIMETRE, Units.INCH, "mm")
                .unit(Units.CENTIMETRE, Units.INCH, "cm")
                .unit(Units.KILOMETRE, Units.MILE, "km")
                .unit(Units.MILE, Units.KILOMETRE, "mi", "mile", "miles");
        new Kind(Area.class, "an", "area", "1800 ft2", Units.SQUARE_METRE)
                .unit(
                        Units.SQUARE_FOOT,
                        Units.SQUARE_METRE,
                        "ft2",
                        "sq ft",
                        "sq. ft.",
                        "sqft",
                        "ft^2",
                        "ft\u00b2")
                .unit(Units.SQUARE_METRE, Units.SQUARE_FOOT, "m2", "sq m", "sqm", "m^2", "m\u00b2")
                .unit(
                        Units.SQUARE_INCH,
                        Units.SQUARE_CENTIMETRE,
                        "in2",
                        "sq in",
                        "sq. in.",
                        "sqin",
                        "in^2",
                        "in\u00b2")
                .unit(
                        Units.SQUARE_CENTIMETRE,
                        Units.SQUARE_INCH,
                        "cm2",
                        "sq cm",
                        "cm^2",
                        "cm\u00b2");
        new Kind(Volume.class, "a", "volume", "14000 ft3", Units.CUBIC_METRE)
                .unit(
                        Units.CUBIC_FOOT,
                        Units.CUBIC_METRE,
                        "ft3",
                        "cu ft",
                        "cu. ft.",
                        "cuft",
                        "ft^3",
                        "ft\u00b3")
                .unit(Units.CUBIC_METRE, Units.CUBIC_FOOT, "m3", "cu m", "m^3", "m\u00b3")
                .unit(Units.LITRE, Units.GALLON, "L", "l", "liter", "litre", "liters", "litres")
                .unit(Units.GALLON, Units.LITRE, "gal", "gallon", "gallons");
        new Kind(Mass.class, "a", "mass", "3.3 lb", Units.KILOGRAM)
                .unit(Units.POUND, Units.KILOGRAM, "lb", "lbs", "lbm", "pound", "pounds")
                .unit(Units.KILOGRAM, Units.POUND, "kg")
                .unit(Units.GRAM, Units.OUNCE, "g", "gram", "grams")
                .unit(Units.OUNCE, Units.GRAM, "oz", "ounce", "ounces");
        new Kind(Time.class, "a", "time", "10 min", Units.SECOND)
                .unit(Units.HOUR, null, "h", "hr", "hrs", "hour", "hours")
                .unit(Units.MINUTE, null, "min", "minute", "minutes")
                .unit(Units.SECOND, null, "s", "sec", "second", "seconds")
                .unit(Units.DAY, null, "d", "day", "days");
        new Kind(Speed.class, "a", "speed", "700 fpm", Units.METRE_PER_SECOND)
                .unit(Units.FOOT_PER_MINUTE, Units.METRE_PER_SECOND, "fpm", "ft/min")
                .unit(Units.METRE_PER_SECOND, Units.FOOT_PER_MINUTE, "m/s", "mps")
                .unit(Units.MILE_PER_HOUR, Units.KILOMETRE_PER_HOUR, "mph", "mi/h")
                .unit(Units.KILOMETRE_PER_HOUR, Units.MILE_PER_HOUR, "km/h", "kph", "kmh");
        new Kind(Angle.class, "an", "angle", "30 deg", Units.RADIAN)
                .unit(Units.DEGREE, null, "\u00b0", "deg", "degree", "degrees")
                .unit(Units.RADIAN, Units.DEGREE, "rad", "radian", "radians");
        new Kind(Dimensionless.class, "a", "ratio", "20 %", Units.RATIO)
                .unit(Units.PERCENT, null, "%", "percent", "pct")
                .unit(Units.RATIO, null, "", "1", "W/W", "people", "person", "persons", "occupants")
                .unit(
                        Units.BTU_PER_WATT_HOUR,
                        Units.RATIO,
                        "BTU/(W h)",
                        "BTU/Wh",
                        "Btu/Wh",
                        "BTU/W-h",
                        "BTU/(Wh)");
        new Kind(AirChangeRate.class, "an", "air change rate", "0.35 ACH", Units.PER_SECOND)
                .unit(Units.PER_HOUR, null, "ACH", "1/h", "1/hr", "per hour", "h^-1", "/h", "/hr")
                .unit(Units.PER_SECOND, Units.PER_HOUR, "1/s", "per second", "s^-1", "/s");
        new Kind(Energy.class, "an", "energy", "12 kWh", Units.JOULE)
                .unit(Units.KILOWATT_HOUR, Units.KILO_BTU, "kWh", "kW h", "kW-h", "kW*h")
                .unit(Units.BTU, Units.KILOJOULE, "BTU", "Btu", "BTUs")
                .unit(Units.KILO_BTU, Units.KILOWATT_HOUR, "kBtu", "kBTU")
                .unit(Units.THERM, Units.KILOWATT_HOUR, "therm", "therms", "thm")
                .unit(Units.JOULE, Units.BTU, "J", "joule", "joules")
                .unit(Units.KILOJOULE, Units.BTU, "kJ")
                .unit(Units.MEGAJOULE, Units.KILO_BTU, "MJ")
                .unit(Units.WATT_HOUR, Units.BTU, "Wh", "W h", "W*h");
        new Kind(Power.class, "a", "power", "36000 BTU/h", Units.WATT)
                .unit(Units.BTU_PER_HOUR, Units.WATT, "BTU/h", "Btu/h", "BTUH", "BTU/hr", "Btu/hr")
                .unit(
                        Units.TON_OF_REFRIGERATION,
                        Units.KILOWATT,
                        "ton",
                        "tons",
                        "tons of refrigeration")
                .unit(
                        Units.KILO_BTU_PER_HOUR,
                        Units.KILOWATT,
                        "kBtu/h",
                        "kBTU/h",
                        "kBTUH",
                        "kBtu/hr",
                        "MBH")
                .unit(Units.WATT, Units.BTU_PER_HOUR, "W", "watt", "watts")
                .unit(Units.KILOWATT, Units.BTU_PER_HOUR, "kW")
                .unit(Units.HORSEPOWER, Units.WATT, "hp");
        new Kind(
                        HumidityRatio.class,
                        "a",
                        "humidity ratio",
                        "60 gr/lb",
                        Units.KILOGRAM_PER_KILOGRAM)
                .unit(Units.GRAIN_PER_POUND, Units.GRAM_PER_KILOGRAM, "gr/lb", "grains/lb")
                .unit(Units.GRAM_PER_KILOGRAM, Units.GRAIN_PER_POUND, "g/kg")
                .unit(Units.KILOGRAM_PER_KILOGRAM, Units.GRAIN_PER_POUND, "kg/kg", "lb/lb");
        new Kind(
                        SpecificEnthalpy.class,
                        "a",
                        "specific enthalpy",
                        "28 BTU/lb",
                        Units.JOULE_PER_KILOGRAM)
                .unit(Units.BTU_PER_POUND, Units.KILOJOULE_PER_KILOGRAM, "BTU/lb", "Btu/lb")
                .unit(Units.KILOJOULE_PER_KILOGRAM, Units.BTU_PER_POUND, "kJ/kg")
                .unit(Units.JOULE_PER_KILOGRAM, Units.BTU_PER_POUND, "J/kg");
        new Kind(
                        SpecificVolume.class,
                        "a",
                        "specific volume",
                        "13.5 ft3/lb",
                        Units.CUBIC_METRE_PER_KILOGRAM)
                .unit(Units.CUBIC_FOOT_PER_POUND, Units.CUBIC_METRE_PER_KILOGRAM, "ft3/lb")
                .unit(Units.CUBIC_METRE_PER_KILOGRAM, Units.CUBIC_FOOT_PER_POUND, "m3/kg");
        new Kind(Density.class, "a", "density", "0.075 lb/ft3", Units.KILOGRAM_PER_CUBIC_METRE)
                .unit(Units.POUND_PER_CUBIC_FOOT, Units.KILOGRAM_PER_CUBIC_METRE, "lb/ft3", "pcf")
                .unit(Units.KILOGRAM_PER_CUBIC_METRE, Units.POUND_PER_CUBIC_FOOT, "kg/m3");
        new Kind(VolumeFlow.class, "a", "volume flow", "1200 cfm", Units.CUBIC_METRE_PER_SECOND)
                .unit(Units.CUBIC_FOOT_PER_MINUTE, Units.LITRE_PER_SECOND, "cfm", "ft3/min")
                .unit(Units.LITRE_PER_SECOND, Units.CUBIC_FOOT_PER_MINUTE, "L/s", "l/s", "lps")
                .unit(Units.CUBIC_METRE_PER_SECOND, Units.CUBIC_FOOT_PER_MINUTE, "m3/s", "cms")
                .unit(Units.CUBIC_METRE_PER_HOUR, Units.CUBIC_FOOT_PER_MINUTE, "m3/h", "cmh");
        new Kind(MassFlow.class, "a", "mass flow", "4000 lb/h", Units.KILOGRAM_PER_SECOND)
                .unit(Units.POUND_PER_HOUR, Units.KILOGRAM_PER_HOUR, "lb/h", "lb/hr", "pph")
                .unit(Units.POUND_PER_MINUTE, Units.KILOGRAM_PER_SECOND, "lb/min")
                .unit(Units.KILOGRAM_PER_SECOND, Units.POUND_PER_HOUR, "kg/s")
                .unit(Units.KILOGRAM_PER_HOUR, Units.POUND_PER_HOUR, "kg/h");
        new Kind(
                        FrictionRate.class,
                        "a",
                        "friction rate",
                        "0.08 in. w.g./100 ft",
                        Units.PASCAL_PER_METRE)
                .unit(
                        Units.INCH_OF_WATER_PER_HUNDRED_FEET,
                        Units.PASCAL_PER_METRE,
                        "in. w.g./100 ft",
                        "in. w.g./100ft",
                        "in. w.c./100 ft",
                        "in. w.c./100ft",
                        "in wg/100 ft",
                        "in wg/100ft",
                        "inH2O/100ft",
                        "inH2O/100 ft",
                        "in. w.g. per 100 ft",
                        "iwc/100ft",
                        "iwg/100ft")
                .unit(Units.PASCAL_PER_METRE, Units.INCH_OF_WATER_PER_HUNDRED_FEET, "Pa/m");
        new Kind(
                        DynamicViscosity.class,
                        "a",
                        "dynamic viscosity",
                        "0.044 lb/(ft h)",
                        Units.PASCAL_SECOND)
                .unit(Units.POUND_PER_FOOT_HOUR, Units.PASCAL_SECOND, "lb/(ft h)", "lb/ft/h")
                .unit(Units.PASCAL_SECOND, Units.POUND_PER_FOOT_HOUR, "Pa s", "Pa*s", "Pa\u00b7s");
        new Kind(
                        FlowPerCapacity.class,
                        "an",
                        "airflow per capacity",
                        "400 cfm/ton",
                        Units.CUBIC_METRE_PER_SECOND_PER_WATT)
                .unit(
                        Units.CUBIC_FOOT_PER_MINUTE_PER_TON,
                        Units.LITRE_PER_SECOND_PER_KILOWATT,
                        "cfm/ton",
                        "cfm per ton")
                .unit(
                        Units.LITRE_PER_SECOND_PER_KILOWATT,
                        Units.CUBIC_FOOT_PER_MINUTE_PER_TON,
                        "L/s/kW",
                        "l/s/kW",
                        "L/(s kW)")
                .unit(
                        Units.CUBIC_METRE_PER_SECOND_PER_WATT,
                        Units.CUBIC_FOOT_PER_MINUTE_PER_TON,
                        "m3/s/W",
                        "m3/(s W)");
        new Kind(
                        ThermalTransmittance.class,
                        "a",
                        "thermal transmittance (U-factor)",
                        "0.30 BTU/h/ft2/degF",
                        Units.WATT_PER_SQUARE_METRE_KELVIN)
                .unit(
                        Units.U_VALUE_IP,
                        Units.WATT_PER_SQUARE_METRE_KELVIN,
                        "BTU/(h ft2 \u00b0F)",
                        "BTU/h/ft2/degF",
                        "BTU/(h*ft2*degF)",
                        "BTU/h-ft2-degF",
                        "BTU/h-ft2-F")
                .unit(
                        Units.WATT_PER_SQUARE_METRE_KELVIN,
                        Units.U_VALUE_IP,
                        "W/(m2 K)",
                        "W/m2/K",
                        "W/m2K",
                        "W/m2-K",
                        "W/(m2*K)");
        new Kind(
                        ThermalResistance.class,
                        "a",
                        "thermal resistance (R-value)",
                        "R-13",
                        Units.SQUARE_METRE_KELVIN_PER_WATT)
                .unit(
                        Units.R_VALUE_IP,
                        Units.SQUARE_METRE_KELVIN_PER_WATT,
                        "h ft2 \u00b0F/BTU",
                        "h*ft2*degF/BTU",
                        "h-ft2-degF/BTU",
                        "h-ft2-F/BTU",
                        "ft2*h*degF/BTU",
                        "ft2 h degF/BTU")
                .unit(
                        Units.SQUARE_METRE_KELVIN_PER_WATT,
                        Units.R_VALUE_IP,
                        "m2 K/W",
                        "m2*K/W",
                        "m2K/W",
                        "m2-K/W",
                        "RSI");
        new Kind(
                        ThermalConductance.class,
                        "a",
                        "thermal conductance (UA)",
                        "400 BTU/h/degF",
                        Units.WATT_PER_KELVIN)
                .unit(
                        Units.BTU_PER_HOUR_FAHRENHEIT,
                        Units.WATT_PER_KELVIN,
                        "BTU/(h \u00b0F)",
                        "BTU/h/degF",
                        "BTU/(h*degF)",
                        "BTU/h-degF",
                        "BTU/h-F")
                .unit(Units.WATT_PER_KELVIN, Units.BTU_PER_HOUR_FAHRENHEIT, "W/K");
        new Kind(
                        ThermalConductivity.class,
                        "a",
                        "thermal conductivity",
                        "0.8 BTU*in/h/ft2/degF",
                        Units.WATT_PER_METRE_KELVIN)
                .unit(
                        Units.BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
                        Units.WATT_PER_METRE_KELVIN,
                        "BTU in/(h ft2 \u00b0F)",
                        "BTU*in/h/ft2/degF",
                        "BTU*in/(h*ft2*degF)",
                        "BTU-in/h-ft2-degF",
                        "BTU-in/h-ft2-F")
                .unit(
                        Units.BTU_PER_HOUR_FOOT_FAHRENHEIT,
                        Units.WATT_PER_METRE_KELVIN,
                        "BTU/(h ft \u00b0F)",
                        "BTU/h/ft/degF",
                        "BTU/(h*ft*degF)",
                        "BTU/h-ft-degF",
                        "BTU/h-ft-F")
                .unit(
                        Units.WATT_PER_METRE_KELVIN,
                        Units.BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
                        "W/(m K)",
                        "W/m/K",
                        "W/mK",
                        "W/m-K",
                        "W/(m*K)");
        new Kind(
                        SpecificHeat.class,
                        "a",
                        "specific heat",
                        "0.24 BTU/lb/degF",
                        Units.JOULE_PER_KILOGRAM_KELVIN)
                .unit(
                        Units.BTU_PER_POUND_FAHRENHEIT,
                        Units.JOULE_PER_KILOGRAM_KELVIN,
                        "BTU/(lb \u00b0F)",
                        "BTU/lb/degF",
                        "BTU/(lb*degF)",
                        "BTU/lb-degF",
                        "BTU/lb-F")
                .unit(
                        Units.JOULE_PER_KILOGRAM_KELVIN,
                        Units.BTU_PER_POUND_FAHRENHEIT,
                        "J/(kg K)",
                        "J/kg/K",
                        "J/kgK",
                        "J/kg-K",
                        "J/(kg*K)");
        new Kind(HeatCapacity.class, "a", "heat capacity", "5000 BTU/degF", Units.JOULE_PER_KELVIN)
                .unit(
                        Units.BTU_PER_FAHRENHEIT,
                        Units.JOULE_PER_KELVIN,
                        "BTU/\u00b0F",
                        "BTU/degF",
                        "BTU/F")
                .unit(Units.JOULE_PER_KELVIN, Units.BTU_PER_FAHRENHEIT, "J/K");
        new Kind(HeatFlux.class, "a", "heat flux", "250 BTU/h/ft2", Units.WATT_PER_SQUARE_METRE)
                .unit(
                        Units.BTU_PER_HOUR_SQUARE_FOOT,
                        Units.WATT_PER_SQUARE_METRE,
                        "BTU/(h ft2)",
                        "BTU/h/ft2",
                        "BTU/(h*ft2)",
                        "BTU/h-ft2",
                        "BTU/hr-ft2")
                .unit(
                        Units.WATT_PER_SQUARE_METRE,
                        Units.BTU_PER_HOUR_SQUARE_FOOT,
                        "W/m2",
                        "W/m^2",
                        "W/m\u00b2");
        new Kind(
                        AirSensibleFactor.class,
                        "an",
                        "air sensible heat factor",
                        "1.08 BTU/(h cfm degF)",
                        Units.JOULE_PER_CUBIC_METRE_KELVIN)
                .unit(
                        Units.BTU_PER_HOUR_CFM_FAHRENHEIT,
                        Units.WATT_PER_LITRE_PER_SECOND_KELVIN,
                        "BTU/(h cfm \u00b0F)",
                        "BTU/(h cfm degF)")
                .unit(
                        Units.WATT_PER_LITRE_PER_SECOND_KELVIN,
                        Units.BTU_PER_HOUR_CFM_FAHRENHEIT,
                        "W/(L/s K)")
                .unit(
                        Units.JOULE_PER_CUBIC_METRE_KELVIN,
                        Units.BTU_PER_HOUR_CFM_FAHRENHEIT,
                        "J/(m3 K)");
        new Kind(
                        AirLatentFactor.class,
                        "an",
                        "air latent heat factor",
                        "4840 BTU/(h cfm lb/lb)",
                        Units.JOULE_PER_CUBIC_METRE)
                .unit(
                        Units.BTU_PER_HOUR_CFM,
                        Units.WATT_PER_LITRE_PER_SECOND,
                        "BTU/(h cfm lb/lb)",
                        "BTU/(h cfm)")
                .unit(
                        Units.BTU_PER_HOUR_CFM_GRAIN_PER_POUND,
                        Units.WATT_PER_LITRE_PER_SECOND,
                        "BTU/(h cfm gr/lb)")
                .unit(Units.WATT_PER_LITRE_PER_SECOND, Units.BTU_PER_HOUR_CFM, "W/(L/s)")
                .unit(Units.JOULE_PER_CUBIC_METRE, Units.BTU_PER_HOUR_CFM, "J/m3");
        new Kind(
                        AirTotalFactor.class,
                        "an",
                        "air total heat factor",
                        "4.5 BTU/(h cfm BTU/lb)",
                        Units.WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM)
                .unit(
                        Units.BTU_PER_HOUR_CFM_BTU_PER_POUND,
                        Units.WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM,
                        "BTU/(h cfm BTU/lb)")
                .unit(
                        Units.WATT_PER_LITRE_PER_SECOND_KILOJOULE_PER_KILOGRAM,
                        Units.BTU_PER_HOUR_CFM_BTU_PER_POUND,
                        "W/(L/s kJ/kg)");
    }
}
