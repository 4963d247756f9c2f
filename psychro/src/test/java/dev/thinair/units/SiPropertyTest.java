package dev.thinair.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import tech.units.indriya.function.RationalNumber;

class SiPropertyTest {

    private static final List<Kind.Written> LINEAR =
            Kind.all().stream()
                    .flatMap(kind -> kind.units().stream())
                    .filter(w -> w.unit() != Units.CELSIUS && w.unit() != Units.FAHRENHEIT)
                    .toList();

    @Provide
    Arbitrary<Kind.Written> units() {
        return Arbitraries.of(LINEAR);
    }

    @Property(tries = 2000)
    void every_unit_round_trips_through_its_system_unit(
            @ForAll("units") Kind.Written written,
            @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(6) double number) {
        Quantity<?> given = Units.ofAny(number, written.unit());
        Unit<?> system = written.unit().getSystemUnit();
        double si = Crossing.convert(given, system);
        double back = Crossing.convert(Units.ofAny(si, system), written.unit());
        assertThat(back).isCloseTo(number, within(4 * Math.ulp(number)));
    }

    // The library's exact arithmetic is the independent answer.
    @Property(tries = 2000)
    @SuppressWarnings({"unchecked", "rawtypes"})
    void the_fast_crossing_agrees_with_the_library_s_exact_one(
            @ForAll("units") Kind.Written written,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(9) double number) {
        Unit unit = written.unit();
        Number exact = unit.getConverterTo(unit.getSystemUnit()).convert(new BigDecimal(number));
        double expected =
                exact instanceof RationalNumber ratio
                        ? new BigDecimal(ratio.getDividend())
                                .divide(new BigDecimal(ratio.getDivisor()), MathContext.DECIMAL128)
                                .doubleValue()
                        : new BigDecimal(exact.toString()).doubleValue();
        double fast = Crossing.convert(Units.ofAny(number, unit), unit.getSystemUnit());
        assertThat(fast).isCloseTo(expected, within(2 * Math.ulp(expected)));
    }

    @Property(tries = 1000)
    void temperatures_round_trip(
            @ForAll @DoubleRange(min = 100, max = 600) @Scale(9) double kelvins) {
        Quantity<?> k = Units.kelvins(kelvins);
        for (Unit<?> unit : List.of(Units.CELSIUS, Units.FAHRENHEIT)) {
            double there = Crossing.convert(k, unit);
            double back = Crossing.convert(Units.ofAny(there, unit), Units.KELVIN);
            assertThat(back).isCloseTo(kelvins, within(2e-13));
        }
    }

    @Property(tries = 1000)
    void a_difference_moved_and_taken_again_is_itself(
            @ForAll @DoubleRange(min = -40, max = 120) @Scale(6) double start,
            @ForAll @DoubleRange(min = -80, max = 80) @Scale(6) double step) {
        var from = Units.fahrenheit(start);
        var to = Units.plus(from, Units.kelvinDifference(step));
        assertThat(Si.kelvinDifference(Units.difference(to, from), "step"))
                .isCloseTo(step, within(1e-12));
    }

    @Property(tries = 1000)
    void what_is_printed_is_read_again(
            @ForAll("units") Kind.Written written,
            @ForAll @DoubleRange(min = -1e7, max = 1e7) @Scale(7) double number) {
        Quantity<?> given = Units.ofAny(number, written.unit());
        String text = QuantityText.format(given, 17);
        Kind kind = Kind.all().stream().filter(k -> k.units().contains(written)).findFirst().get();
        assertThat(read(text, kind)).isEqualTo(given);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Quantity<?> read(String text, Kind kind) {
        return QuantityText.parse(text, (Class) kind.type());
    }
}
