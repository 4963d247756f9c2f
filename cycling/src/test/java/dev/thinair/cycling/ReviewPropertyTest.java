package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class ReviewPropertyTest {

    private static InstalledSystem system(boolean high, int halfTons, double inches, int wanted) {
        return Stories.at(high, 0.5 * halfTons, inches).wantedSetpoint(fahrenheit(wanted)).build();
    }

    @Property(tries = 12)
    void wider_ducts_carry_more_air_and_never_make_the_coil_colder(
            @ForAll boolean high,
            @ForAll @IntRange(min = 3, max = 9) int halfTons,
            @ForAll @DoubleRange(min = 3.6, max = 5.5) double inches,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double wider) {
        InstalledSystem tight = system(high, halfTons, inches, 75);
        InstalledSystem wide = tight.withDucts(Stories.ducts(inches + wider));
        assertThat(wide.dryAirMassFlow).isGreaterThanOrEqualTo(tight.dryAirMassFlow);
        // The same air enters both, or more humidity taken out would blur the comparison.
        double[] less = coil(tight);
        double[] more = coil(wide);
        assertThat(more[0]).isGreaterThanOrEqualTo(less[0] - 1e-6);
        assertThat(more[1]).isGreaterThanOrEqualTo(less[1] - 1e-6);
    }

    /** Coil and suction temperature at full stage in the warmest hour, in air of 0.008 kg/kg. */
    private static double[] coil(InstalledSystem s) {
        double[] out = new double[dev.thinair.cycling.kernel.UnitResponse.RESULTS];
        s.atDesign(s.unit(), s.dryAirMassFlow, s.wantedKelvin(), 0.008, out);
        return new double[] {
            out[dev.thinair.cycling.kernel.UnitResponse.COIL],
            out[dev.thinair.cycling.kernel.UnitResponse.SUCTION]
        };
    }

    @Property(tries = 4)
    void a_remedy_without_a_change_changes_nothing(
            @ForAll boolean high,
            @ForAll @IntRange(min = 3, max = 8) int halfTons,
            @ForAll @DoubleRange(min = 3.8, max = 6) double inches) {
        InstalledSystem s = system(high, halfTons, inches, 75);
        for (Remedy none :
                List.of(
                        Remedy.nothing(),
                        Remedy.combine(
                                Remedy.openRegisters(),
                                Remedy.cleanFilter(),
                                Remedy.washCondenser(),
                                Remedy.correctCharge(),
                                Remedy.automaticFan(),
                                Remedy.sealDucts()),
                        Remedy.otherUnit(s.unit()),
                        Remedy.otherSetpoint(s.wantedSetpoint()))) {
            InstalledSystem same = none.apply(s);
            assertThat(same.dryAirMassFlow).isEqualTo(s.dryAirMassFlow);
            assertThat(same.runDay().cost()).as(none.title()).isEqualTo(s.runDay().cost());
            assertThat(same.runDay().starts()).isEqualTo(s.runDay().starts());
            assertThat(same.runDay().miss().getValue()).isEqualTo(s.runDay().miss().getValue());
        }
    }

    @Property(tries = 2)
    void reviews_do_not_depend_on_thread_or_order(@ForAll Random random) {
        int[] tons = {3, 5, 7};
        String[] alone = new String[tons.length];
        for (int i = 0; i < tons.length; i++) {
            alone[i] = told(i, tons);
        }
        List<Integer> order = new ArrayList<>(IntStream.range(0, tons.length).boxed().toList());
        Collections.shuffle(order, random);
        String[] together = new String[tons.length];
        order.parallelStream().forEach(i -> together[i] = told(i, tons));
        assertThat(Arrays.asList(together)).isEqualTo(Arrays.asList(alone));
    }

    private static String told(int i, int[] tons) {
        Review r = Review.of(system(i % 2 == 0, tons[i], 4.2, 74));
        StringBuilder text = new StringBuilder(r.findings().toString());
        for (Comparison.Row row : r.comparison().rows()) {
            text.append(row.title())
                    .append(row.cost())
                    .append(row.starts())
                    .append(Si.kelvins(row.minimumCoilTemperature(), "coil"));
        }
        return text.toString();
    }
}
