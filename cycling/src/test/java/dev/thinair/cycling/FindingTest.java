package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.fahrenheitDifference;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every kind of finding there is, each brought about once. */
class FindingTest {

    private static final Map<Class<?>, List<Finding>> FOUND = new LinkedHashMap<>();

    private static void add(InstalledSystem s) {
        for (Finding f : new Assessment(s).findings) {
            FOUND.computeIfAbsent(f.getClass(), k -> new ArrayList<>()).add(f);
        }
    }

    @BeforeAll
    static void bring_them_about() {
        InstalledSystem high = Stories.at(true, 5, 4).wantedSetpoint(fahrenheit(72)).build();
        add(
                high.withDucts(
                                high.ducts()
                                        .withRegisterShut("run 2")
                                        .withFilter(Stories.filter().loaded(4)))
                        .withFaults(UnitFaults.dirtyCondenser(0.7).and(UnitFaults.charge(0.8))));
        add(Stories.at(false, 2, 6).wantedSetpoint(fahrenheit(60)).build());
        add(
                Stories.at(false, 3.5, 6)
                        .thermostat(
                                Thermostat.at(fahrenheit(75))
                                        .withDifferential(fahrenheitDifference(0.5)))
                        .build());
        InstalledSystem low = Stories.at(false, 2, 6).build();
        add(
                low.withThermostat(low.thermostat().withFanMode(FanMode.CONTINUOUS))
                        .withUnit(low.unit().withRatedCapacity(Units.tonsOfRefrigeration(4))));
        Duct narrow =
                Duct.of(DuctShape.round(Units.inches(6)), Units.feet(40), DuctMaterial.GALVANIZED)
                        .withLossCoefficient(3);
        DuctSystem tight =
                low.ducts().withDuct("hall return", narrow).withDuct("living return", narrow);
        add(low.withDucts(tight));
        add(low.withFaults(UnitFaults.dirtyCondenser(0.06)));
    }

    @Test
    void every_kind_can_be_brought_about() {
        assertThat(FOUND.keySet())
                .containsExactlyInAnyOrder(Finding.class.getPermittedSubclasses());
    }

    @Test
    void every_finding_says_all_that_it_must() {
        FOUND.values().stream()
                .flatMap(List::stream)
                .forEach(
                        f -> {
                            assertThat(f.title()).isNotBlank();
                            assertThat(f.plainWords()).endsWith(".");
                            assertThat(f.evidence()).isNotEmpty();
                            assertThat(f.criterion().source()).isNotBlank();
                            assertThat(f.confidence()).isNotNull();
                            assertThat(f.severity()).isNotNull();
                            assertThat(f.plainWords() + f.title())
                                    .doesNotContain("NaN")
                                    .doesNotContain("Infinity")
                                    .doesNotContain("null");
                        });
        // What can hurt someone carries its caution.
        for (Class<?> kind :
                List.of(
                        Finding.CoilIce.class,
                        Finding.DuctsTooSmall.class,
                        Finding.ReturnRestricted.class,
                        Finding.CondenserDirty.class,
                        Finding.ChargeOff.class,
                        Finding.SetpointTooLow.class,
                        Finding.DoesNotRun.class)) {
            for (Finding f : FOUND.get(kind)) {
                assertThat(f.caution()).as(f.title()).isPresent();
            }
        }
    }

    @Test
    void the_last_line_of_every_working_is_the_number_of_the_finding() {
        FOUND.values().stream()
                .flatMap(List::stream)
                .forEach(
                        f -> {
                            Working w = f.working();
                            double last = si(w.steps().get(w.steps().size() - 1).result());
                            double number = si(number(f));
                            assertThat(last)
                                    .as(f.title())
                                    .isCloseTo(number, within(1e-9 * Math.abs(number) + 1e-12));
                            assertThat(w.toText()).contains(f.criterion().source());
                        });
    }

    /** The number that a finding is about. */
    private static Quantity<?> number(Finding f) {
        if (f instanceof Finding.LowAirflow low) {
            return low.standard();
        }
        if (f instanceof Finding.UnitTooLarge || f instanceof Finding.UnitTooSmall) {
            return evidence(f, "capacity over load");
        }
        if (f instanceof Finding.DuctsTooSmall) {
            return evidence(f, "shortage");
        }
        if (f instanceof Finding.ShortCycling cycling) {
            return cycling.penalty();
        }
        if (f instanceof Finding.CoilIce ice) {
            return ice.coil();
        }
        if (f instanceof Finding.SetpointMissed missed) {
            return missed.miss();
        }
        if (f instanceof Finding.SetpointTooLow low) {
            return low.wanted();
        }
        if (f instanceof Finding.ReturnRestricted tight) {
            return tight.drop();
        }
        if (f instanceof Finding.HumidityHigh humid) {
            return humid.peak();
        }
        return f.evidence().get(0).value();
    }

    private static Quantity<?> evidence(Finding f, String name) {
        return f.evidence().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static double si(Quantity<?> q) {
        return q.toSystemUnit().getValue().doubleValue();
    }
}
