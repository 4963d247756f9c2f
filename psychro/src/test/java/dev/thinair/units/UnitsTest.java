package dev.thinair.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.UnitDimension;

class UnitsTest {

    private static final Dimension L = UnitDimension.LENGTH;
    private static final Dimension M = UnitDimension.MASS;
    private static final Dimension T = UnitDimension.TIME;
    private static final Dimension K = UnitDimension.TEMPERATURE;
    private static final Dimension NONE = UnitDimension.NONE;
    private static final Dimension POWER = M.multiply(L.pow(2)).divide(T.pow(3));
    private static final Dimension ENERGY = POWER.multiply(T);
    private static final Dimension PRESSURE = M.divide(L).divide(T.pow(2));

    private static final Map<String, Dimension> EXPECTED =
            Map.ofEntries(
                    Map.entry("Temperature", K),
                    Map.entry("TemperatureDifference", K),
                    Map.entry("Pressure", PRESSURE),
                    Map.entry("Length", L),
                    Map.entry("Area", L.pow(2)),
                    Map.entry("Volume", L.pow(3)),
                    Map.entry("Mass", M),
                    Map.entry("Time", T),
                    Map.entry("Speed", L.divide(T)),
                    Map.entry("Angle", NONE),
                    Map.entry("Dimensionless", NONE),
                    Map.entry("AirChangeRate", NONE.divide(T)),
                    Map.entry("Energy", ENERGY),
                    Map.entry("Power", POWER),
                    Map.entry("HumidityRatio", NONE),
                    Map.entry("SpecificEnthalpy", L.pow(2).divide(T.pow(2))),
                    Map.entry("SpecificVolume", L.pow(3).divide(M)),
                    Map.entry("Density", M.divide(L.pow(3))),
                    Map.entry("VolumeFlow", L.pow(3).divide(T)),
                    Map.entry("MassFlow", M.divide(T)),
                    Map.entry("FrictionRate", PRESSURE.divide(L)),
                    Map.entry("DynamicViscosity", PRESSURE.multiply(T)),
                    Map.entry("FlowPerCapacity", L.pow(3).divide(T).divide(POWER)),
                    Map.entry("ThermalTransmittance", POWER.divide(L.pow(2)).divide(K)),
                    Map.entry("ThermalResistance", K.multiply(L.pow(2)).divide(POWER)),
                    Map.entry("ThermalConductance", POWER.divide(K)),
                    Map.entry("ThermalConductivity", POWER.divide(L).divide(K)),
                    Map.entry("SpecificHeat", ENERGY.divide(M).divide(K)),
                    Map.entry("HeatCapacity", ENERGY.divide(K)),
                    Map.entry("AirSensibleFactor", ENERGY.divide(L.pow(3)).divide(K)),
                    Map.entry("AirLatentFactor", ENERGY.divide(L.pow(3))),
                    Map.entry("AirTotalFactor", M.divide(L.pow(3))),
                    Map.entry("HeatFlux", POWER.divide(L.pow(2))));

    static Stream<Arguments> constants() throws IllegalAccessException {
        List<Arguments> all = new ArrayList<>();
        for (Field field : Units.class.getFields()) {
            ParameterizedType type = (ParameterizedType) field.getGenericType();
            String quantity = ((Class<?>) type.getActualTypeArguments()[0]).getSimpleName();
            all.add(Arguments.of(field.getName(), quantity, field.get(null)));
        }
        return all.stream();
    }

    // The unit library's asType checks nothing for our own quantity types, so every constant's
    // dimension is held against the one its type means.
    @ParameterizedTest(name = "{0} measures {1}")
    @MethodSource("constants")
    void every_constant_has_the_dimension_of_its_type(String name, String type, Unit<?> unit) {
        assertThat(EXPECTED).containsKey(type);
        assertThat(unit.getDimension()).isEqualTo(EXPECTED.get(type));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("constants")
    void every_constant_is_known_to_its_kind_of_text(String name, String type, Unit<?> unit) {
        assertThat(Kind.all()).flatMap(Kind::units).extracting(Kind.Written::unit).contains(unit);
    }

    // Factors as printed in NIST SP 811 (2008), appendix B.8, to its digits; recalled, and each
    // confirmed by the exact definition of the foot, pound, BTU_IT and standard gravity.
    @ParameterizedTest
    @CsvSource({
        "INCH_OF_WATER, 249.0889, 5e-5",
        "INCH_OF_MERCURY, 3386.389, 5e-4",
        "MILLIMETRE_OF_MERCURY, 133.3224, 5e-5",
        "POUND_PER_SQUARE_INCH, 6894.757, 5e-4",
        "FOOT, 0.3048, 0",
        "INCH, 0.0254, 0",
        "MILE, 1609.344, 0",
        "SQUARE_FOOT, 0.09290304, 1e-17",
        "SQUARE_INCH, 6.4516e-4, 1e-19",
        "CUBIC_FOOT, 2.831685e-2, 5e-9",
        "GALLON, 3.785412e-3, 5e-10",
        "POUND, 0.45359237, 0",
        "OUNCE, 2.834952e-2, 5e-9",
        "FOOT_PER_MINUTE, 5.08e-3, 1e-18",
        "MILE_PER_HOUR, 0.44704, 1e-16",
        "KILOMETRE_PER_HOUR, 0.2777778, 5e-8",
        "KILOWATT_HOUR, 3.6e6, 0",
        "BTU, 1055.056, 5e-4",
        "THERM, 1.055056e8, 50",
        "BTU_PER_HOUR, 0.2930711, 5e-8",
        "TON_OF_REFRIGERATION, 3516.853, 5e-4",
        "HORSEPOWER, 745.6999, 5e-5",
        "GRAIN_PER_POUND, 1.4285714e-4, 5e-12",
        "BTU_PER_POUND, 2326, 0",
        "CUBIC_FOOT_PER_POUND, 6.242796e-2, 5e-9",
        "POUND_PER_CUBIC_FOOT, 16.01846, 5e-6",
        "CUBIC_FOOT_PER_MINUTE, 4.719474e-4, 5e-11",
        "POUND_PER_HOUR, 1.259979e-4, 5e-11",
        "POUND_PER_MINUTE, 7.559873e-3, 5e-10",
        "POUND_PER_FOOT_HOUR, 4.133789e-4, 5e-11",
        "U_VALUE_IP, 5.678263, 5e-7",
        "R_VALUE_IP, 0.1761102, 5e-8",
        "BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, 0.1442279, 5e-8",
        "BTU_PER_HOUR_FOOT_FAHRENHEIT, 1.730735, 5e-7",
        "BTU_PER_POUND_FAHRENHEIT, 4186.8, 1e-12",
        "BTU_PER_FAHRENHEIT, 1899.101, 5e-4",
        "BTU_PER_HOUR_FAHRENHEIT, 0.5275279, 5e-8",
        "BTU_PER_HOUR_SQUARE_FOOT, 3.154591, 5e-7",
        "INCH_OF_WATER_PER_HUNDRED_FEET, 8.172208, 5e-7",
        "CUBIC_FOOT_PER_MINUTE_PER_TON, 1.341960e-7, 5e-14",
        "BTU_PER_WATT_HOUR, 0.2930711, 5e-8",
        "BTU_PER_HOUR_CFM_FAHRENHEIT, 1117.768, 5e-4",
        "BTU_PER_HOUR_CFM, 620.9824, 5e-5",
        "BTU_PER_HOUR_CFM_BTU_PER_POUND, 0.2669744, 5e-8",
        "DEGREE, 0.0174532925, 5e-11",
        "FAHRENHEIT_DIFFERENCE, 0.5555556, 5e-8",
        "PER_HOUR, 2.777778e-4, 5e-11"
    })
    void factors_are_those_of_the_guide(String constant, double factor, double tolerance)
            throws ReflectiveOperationException {
        Unit<?> unit = (Unit<?>) Units.class.getField(constant).get(null);
        double computed = Crossing.convert(Units.ofAny(1.0, unit), unit.getSystemUnit());
        assertThat(computed).isCloseTo(factor, within(tolerance));
    }

    static Stream<Method> factories() {
        return Stream.of(Units.class.getMethods())
                .filter(m -> Modifier.isStatic(m.getModifiers()))
                .filter(m -> List.of(m.getParameterTypes()).equals(List.of(double.class)));
    }

    @ParameterizedTest
    @MethodSource("factories")
    void factories_keep_the_number_and_refuse_what_is_none(Method factory)
            throws ReflectiveOperationException {
        Quantity<?> quantity = (Quantity<?>) factory.invoke(null, 12.25);
        assertThat(quantity.getValue()).isEqualTo(12.25);
        String type =
                ((ParameterizedType) factory.getGenericReturnType())
                        .getActualTypeArguments()[0].getTypeName();
        assertThat(quantity.getUnit().getDimension())
                .isEqualTo(EXPECTED.get(type.substring(type.lastIndexOf('.') + 1)));
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> factory.invoke(null, bad))
                    .isInstanceOf(InvocationTargetException.class)
                    .cause()
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            factory.getName() + "(" + bad + "): the value must be a finite number");
        }
    }

    @Test
    void there_are_as_many_factories_as_units_and_one_more_name_for_the_kelvin_difference() {
        assertThat(factories()).hasSize(Units.class.getFields().length + 1);
    }

    @Test
    void quantities_equal_those_of_the_unit_library() {
        for (double number : new double[] {0.0, -0.0, 2.0, -7.5, 1e12, 9.3e18, 1e19, 1e-300}) {
            Quantity<?> ours = Units.feet(number);
            Quantity<?> theirs = Quantities.getQuantity(number, Units.FOOT);
            assertThat(ours).isEqualTo(theirs).hasSameHashCodeAs(theirs);
            assertThat(theirs).isEqualTo(ours);
        }
    }

    @Test
    void arithmetic_is_the_unit_library_s() {
        assertThat(Si.metres(Units.feet(3).add(Units.metres(1)), "sum"))
                .isCloseTo(1.9144, within(1e-12));
        assertThat(Si.metres(Units.feet(3).subtract(Units.feet(1)), "difference"))
                .isCloseTo(0.6096, within(1e-12));
        assertThat(Si.metres(Units.feet(3).multiply(2), "product"))
                .isCloseTo(1.8288, within(1e-12));
        assertThat(Si.metres(Units.feet(3).divide(2), "quotient")).isCloseTo(0.4572, within(1e-12));
        assertThat(Si.metres(Units.feet(3).negate(), "negative")).isCloseTo(-0.9144, within(1e-12));
        assertThat(Units.metres(6).divide(Units.seconds(2)).getValue().doubleValue()).isEqualTo(3);
        assertThat(Units.metres(6).multiply(Units.metres(2)).getValue().doubleValue())
                .isEqualTo(12);
        assertThat(Units.seconds(4).inverse().getValue().doubleValue()).isEqualTo(0.25);
        assertThat(Units.metres(1).isEquivalentTo(Units.centimetres(100))).isTrue();
    }

    @Test
    void temperatures_are_neither_added_nor_subtracted() {
        assertThatThrownBy(() -> Units.celsius(20).add(Units.celsius(5)))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessage(
                        "temperatures cannot be added; use Units.difference(warmer, cooler) or"
                                + " Units.plus(temperature, difference)");
        assertThatThrownBy(() -> Units.kelvins(300).subtract(Units.kelvins(290)))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessageStartingWith("temperatures cannot be subtracted");
    }

    @Test
    void a_difference_of_temperatures_is_ten_kelvin_and_never_two_hundred_sixty() {
        assertThat(Units.difference(Units.fahrenheit(95), Units.fahrenheit(77)))
                .isEqualTo(Units.fahrenheitDifference(18));
        assertThat(
                        Si.kelvinDifference(
                                Units.difference(Units.fahrenheit(95), Units.celsius(25)), "d"))
                .isCloseTo(10.0, within(1e-12));
        assertThat(Units.plus(Units.fahrenheit(77), Units.fahrenheitDifference(18)))
                .isEqualTo(Units.fahrenheit(95));
        assertThat(Units.plus(Units.celsius(25), Units.celsiusDifference(10)))
                .isEqualTo(Units.celsius(35));
        assertThat(Si.kelvins(Units.plus(Units.fahrenheit(50), Units.kelvinDifference(5)), "t"))
                .isCloseTo(288.15, within(1e-12));
        assertThat(Units.plus(Units.kelvins(290), Units.kelvinDifference(-5)))
                .isEqualTo(Units.kelvins(285));
    }

    @Test
    void a_quantity_of_any_unit_is_refused_when_not_finite() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Units.quantity(Double.NaN, Units.FOOT))
                .withMessage("quantity(NaN): the value must be a finite number");
    }
}
