package dev.thinair.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;

class SiTest {

    /** What a caller can do with raw types and a file format can do with wildcards. */
    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Quantity<Q> disguised(Quantity<?> quantity) {
        return (Quantity<Q>) quantity;
    }

    @ParameterizedTest
    @CsvSource({
        "-459.67, 0, 6e-14",
        "-40, 233.15, 6e-14",
        "32, 273.15, 6e-14",
        "75.25, 297.1777777777777777, 6e-14",
        "212, 373.15, 6e-14"
    })
    void fahrenheit_crosses_to_kelvin_within_a_rounding(double f, double k, double tolerance) {
        assertThat(Si.kelvins(Units.fahrenheit(f), "t")).isCloseTo(k, within(tolerance));
    }

    @Test
    void numbers_of_any_class_convert_alike() {
        double expected = 75 * 0.3048;
        Number[] numbers = {
            75,
            75L,
            (short) 75,
            75f,
            75.0,
            new BigDecimal("75.000000000000000000000000"),
            BigInteger.valueOf(75),
            RationalNumber.of(150, 2)
        };
        for (Number number : numbers) {
            Quantity<Length> quantity = Quantities.getQuantity(number, Units.FOOT);
            assertThat(Si.metres(quantity, "length")).isEqualTo(expected);
        }
    }

    @Test
    void an_exact_third_and_a_conversion_result_convert() {
        assertThat(Si.metres(Quantities.getQuantity(RationalNumber.of(1, 3), Units.FOOT), "length"))
                .isCloseTo(0.1016, within(2e-17));
        // The library's own conversion answers in exact ratios and decimals.
        Quantity<Temperature> converted =
                Quantities.getQuantity(75, Units.FAHRENHEIT).to(Units.CELSIUS);
        assertThat(Si.kelvins(converted, "t")).isCloseTo(297.0388888888889, within(6e-14));
        assertThat(Si.metres(Units.feet(3).to(Units.INCH), "l")).isCloseTo(0.9144, within(2e-16));
    }

    @Test
    void coefficients_are_rounded_once() {
        // 0.3048 is the double nearest to the factor; anything else would show in the last bit.
        assertThat(Si.metres(Units.feet(1), "l")).isEqualTo(0.3048);
        assertThat(Si.pascals(Units.inchesOfWater(1), "p")).isEqualTo(249.08891);
        assertThat(Si.joulesPerKilogram(Units.btuPerPound(1), "h")).isEqualTo(2326.0);
        assertThat(Si.radians(Units.degrees(180), "a")).isEqualTo(Math.PI);
    }

    @Test
    void a_new_instance_of_a_unit_at_every_call_stays_right_and_bounded() {
        for (int i = 1; i <= 200; i++) {
            Unit<Length> unit = Units.METRE.multiply(i).divide(7);
            double expected = 3.0 * i / 7.0;
            assertThat(Si.metres(Units.quantity(3, unit), "l"))
                    .isCloseTo(expected, within(2 * Math.ulp(expected)));
        }
        assertThat(Si.metres(Units.quantity(5, MetricPrefix.DECI(Units.METRE)), "l"))
                .isCloseTo(0.5, within(1e-16));
    }

    @Test
    void many_threads_read_one_answer() {
        assertThat(
                        IntStream.range(0, 2000)
                                .parallel()
                                .mapToDouble(
                                        i ->
                                                Si.watts(
                                                        Units.quantity(
                                                                2,
                                                                i % 2 == 0
                                                                        ? Units.TON_OF_REFRIGERATION
                                                                        : Units.BTU_PER_HOUR
                                                                                .multiply(12_000)),
                                                        "capacity"))
                                .distinct())
                .hasSize(1);
    }

    @Test
    void null_is_refused_by_name() {
        assertThatNullPointerException()
                .isThrownBy(() -> Si.kelvins(null, "outdoor dry bulb"))
                .withMessage("outdoor dry bulb is null, but must be a temperature");
        assertThatNullPointerException()
                .isThrownBy(() -> Si.squareMetres(null, "leakage area"))
                .withMessage("leakage area is null, but must be an area");
    }

    @ParameterizedTest
    @CsvSource({"NaN, NaN °F", "Infinity, Infinity °F", "-Infinity, -Infinity °F"})
    void numbers_that_are_none_are_refused_by_name(double bad, String shown) {
        Quantity<Temperature> quantity = new DoubleQuantity<>(bad, Units.FAHRENHEIT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.kelvins(quantity, "outdoor dry bulb"))
                .withMessage("outdoor dry bulb is " + shown + ", but must be a finite number");
    }

    @Test
    void a_number_that_overflows_in_si_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.metres(Units.kilometres(1e308), "length"))
                .withMessage("length is 1.0E308 km, but must be a finite number");
    }

    @Test
    void a_temperature_is_no_difference_and_a_difference_no_temperature() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.kelvinDifference(disguised(Units.fahrenheit(10)), "setback"))
                .withMessage(
                        "setback has unit \"°F\", but must be a temperature difference (SI unit"
                                + " K)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.kelvins(disguised(Units.fahrenheitDifference(10)), "indoor"))
                .withMessage("indoor has unit \"Δ°F\", but must be a temperature (SI unit K)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.kelvins(disguised(Units.kelvinDifference(10)), "indoor"))
                .withMessage("indoor has unit \"K\", but must be a temperature (SI unit K)");
    }

    @Test
    void a_temperature_on_the_library_s_relative_scale_is_a_difference() {
        Quantity<Temperature> relative =
                Quantities.getQuantity(10, Units.CELSIUS, Quantity.Scale.RELATIVE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.kelvins(relative, "indoor"))
                .withMessage(
                        "indoor is 10 °C on the relative scale, a difference, but must be a"
                                + " temperature");
    }

    @Test
    void a_difference_made_of_plain_kelvin_is_taken() {
        assertThat(
                        Si.kelvinDifference(
                                disguised(Units.quantity(7, MetricPrefix.MILLI(Units.KELVIN))),
                                "d"))
                .isCloseTo(0.007, within(1e-18));
    }

    @Test
    void ratios_angles_and_humidity_ratios_are_told_apart() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.ratio(disguised(Units.degrees(20)), "relative humidity"))
                .withMessage("relative humidity has unit \"°\", but must be a ratio (SI unit 1)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.ratio(disguised(Units.grainsPerPound(60)), "humidity"))
                .withMessage("humidity has unit \"gr/lb\", but must be a ratio (SI unit 1)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.radians(disguised(Units.percent(20)), "tilt"))
                .withMessage("tilt has unit \"%\", but must be an angle (SI unit rad)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.humidityRatio(disguised(Units.degrees(2)), "W"))
                .withMessage("W has unit \"°\", but must be a humidity ratio (SI unit kg/kg)");
        assertThat(
                        Si.humidityRatio(
                                disguised(
                                        Quantities.getQuantity(
                                                8, Units.GRAM.divide(Units.KILOGRAM))),
                                "W"))
                .isCloseTo(0.008, within(1e-18));
    }

    @Test
    void another_dimension_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.metres(disguised(Units.kilograms(7200)), "elevation"))
                .withMessage("elevation has unit \"kg\", but must be a length (SI unit m)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.watts(disguised(Units.btus(5)), "capacity"))
                .withMessage("capacity has unit \"BTU\", but must be a power (SI unit W)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Si.pascals(disguised(Units.pascalsPerMetre(5)), "static"))
                .withMessage("static has unit \"Pa/m\", but must be a pressure (SI unit Pa)");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Si.squareMetreKelvinsPerWatt(disguised(Units.uValueIp(0.3)), "attic"))
                .withMessage(
                        "attic has unit \"BTU/(h ft2 °F)\", but must be a thermal resistance (SI"
                                + " unit m2 K/W)");
    }

    static Stream<Method> crossings() {
        return Stream.of(Si.class.getMethods()).filter(m -> Modifier.isStatic(m.getModifiers()));
    }

    // One method per quantity type: each must lead to its own type's SI unit, from every unit that
    // the type is written in.
    @ParameterizedTest
    @MethodSource("crossings")
    @SuppressWarnings({"unchecked", "rawtypes"})
    void every_crossing_leads_to_the_si_unit_of_its_type(Method crossing)
            throws ReflectiveOperationException {
        ParameterizedType parameter = (ParameterizedType) crossing.getGenericParameterTypes()[0];
        Kind kind = Kind.of((Class) parameter.getActualTypeArguments()[0]);
        for (Kind.Written written : kind.units()) {
            Quantity<?> quantity = Units.ofAny(2.5, written.unit());
            double expected = Crossing.convert(quantity, kind.si());
            assertThat((double) crossing.invoke(null, quantity, "name")).isEqualTo(expected);
        }
        assertThatThrownBy(() -> crossing.invoke(null, null, "the name"))
                .cause()
                .isInstanceOf(NullPointerException.class)
                .hasMessageStartingWith("the name is null, but must be a");
    }

    @Test
    void there_is_one_crossing_per_kind() {
        assertThat(crossings()).hasSize(Kind.all().size());
    }
}
