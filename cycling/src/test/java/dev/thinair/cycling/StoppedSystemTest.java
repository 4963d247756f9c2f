package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.ducts.Blower;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.OutsideBlowerTableException;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A system that does not run is a finding, and what makes it run is found all the same. */
class StoppedSystemTest {

    private static <F extends Finding> Optional<F> find(Review review, Class<F> kind) {
        return review.findings().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static InstalledSystem choked() {
        InstalledSystem s = Stories.at(true, 2, 4).build();
        Filter heavy =
                Filter.of(
                                Units.cubicFeetPerMinute(1000),
                                Units.inchesOfWater(0.12),
                                Units.percent(90))
                        .loaded(50);
        DuctSystem ducts = s.ducts().withFilter(heavy);
        for (int run = 1; run <= 12; run++) {
            ducts = ducts.withRegisterShut("run " + run);
        }
        return s.withDucts(ducts.withRegisterShut("hall return").withRegisterShut("living return"));
    }

    @Test
    void a_blower_outside_its_table_is_found_and_opening_what_is_shut_is_tried_first() {
        InstalledSystem s = choked();
        assertThat(s.movesAir()).isFalse();
        assertThatThrownBy(s::airflow)
                .isInstanceOf(OutsideBlowerTableException.class)
                .hasMessageContaining("blower past the high-pressure end of its table");
        assertThatThrownBy(s::runDay).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(s::standardAirflowPerTon).isInstanceOf(IllegalStateException.class);
        assertThat(s.toString()).contains("no operating point");
        Review review = Review.of(s);
        assertThat(review.operates()).isFalse();
        assertThat(review.healthy()).isFalse();
        Finding.DoesNotRun finding = find(review, Finding.DoesNotRun.class).orElseThrow();
        assertThat(review.findings().get(0)).isSameAs(finding);
        assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
        assertThat(finding.reason()).contains("its table");
        assertThat(finding.plainWords())
                .contains("its table")
                .doesNotContainPattern("\\d\\.\\d{8}");
        assertThat(find(review, Finding.RegistersShut.class).orElseThrow().names()).hasSize(14);
        assertThat(find(review, Finding.FilterLoaded.class)).isPresent();
        assertThat(review.comparison().runsAsFound()).isFalse();
        assertThatThrownBy(() -> review.comparison().asFound())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("does not run");
        assertThatThrownBy(review::day).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(review::airflow).isInstanceOf(IllegalStateException.class);
        assertThat(review.recommended().title())
                .contains("open all registers")
                .contains("clean filter");
        assertThat(review.recommended().system().runDay().ran()).isTrue();
        assertThat(review.summary()).contains("does not run").contains("open all registers");
        assertThat(Si.watts(review.ductsCarry(), "ducts")).isPositive();
        // What does not make it run is set aside with its reason, not dropped.
        for (Comparison.Row row : review.comparison().rows()) {
            assertThat(row.system().movesAir()).as(row.title()).isTrue();
        }
        assertThat(review.comparison().rows().size() + review.setAside().size())
                .isGreaterThanOrEqualTo(3);
        assertThat(finding.working().toText()).contains("rated with");
    }

    @Test
    void a_unit_without_a_balance_is_found_and_washing_its_condenser_makes_it_run() {
        InstalledSystem s =
                Stories.at(false, 2, 4).build().withFaults(UnitFaults.dirtyCondenser(0.06));
        assertThatThrownBy(s::runDay)
                .isInstanceOf(NoBalanceException.class)
                .hasMessageContaining("condensing temperature");
        Review review = Review.of(s);
        Finding.DoesNotRun finding = find(review, Finding.DoesNotRun.class).orElseThrow();
        assertThat(finding.title()).contains("no steady state");
        assertThat(finding.reason()).contains("condensing temperature");
        assertThat(finding.caution()).isPresent();
        assertThat(find(review, Finding.CondenserDirty.class)).isPresent();
        assertThat(review.recommended().title()).contains("wash the condenser");
        assertThat(review.recommended().remaining()).isZero();
    }

    @Test
    void nothing_helps_a_house_that_no_blower_serves() {
        InstalledSystem s = choked();
        Uncertainty u = Uncertainty.of(s).input("setpoint", 296, 298, x -> t -> t).draws(3).run();
        assertThat(u.completed()).isZero();
        assertThat(u.failed()).isEqualTo(3);
    }

    @Test
    void a_wrong_charge_is_found_and_setting_it_right_mends_it() {
        for (double charge : new double[] {0.7, 1.35}) {
            InstalledSystem s =
                    Stories.at(false, 2, 4).build().withFaults(UnitFaults.charge(charge));
            Review review = Review.of(s);
            Finding.ChargeOff finding = find(review, Finding.ChargeOff.class).orElseThrow();
            assertThat(finding.title()).contains(charge < 1 ? "low" : "high");
            assertThat(finding.caution()).isPresent();
            Comparison.Row mended =
                    review.comparison().rows().stream()
                            .filter(r -> r.title().contains("charge"))
                            .findFirst()
                            .orElseThrow();
            assertThat(Review.of(mended.system()).healthy()).isTrue();
        }
    }

    @Test
    void a_charge_so_wrong_that_nothing_balances_is_no_small_matter() {
        InstalledSystem s =
                Stories.at(false, 2, 4).build().withFaults(new UnitFaults(1, 1, 1, 0.05));
        Review review = Review.of(s);
        assertThat(find(review, Finding.DoesNotRun.class)).isPresent();
        Finding.ChargeOff finding = find(review, Finding.ChargeOff.class).orElseThrow();
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.lost()).isEmpty();
        assertThat(finding.plainWords()).contains("no balance with this charge");
        assertThat(review.recommended().title()).contains("charge");
        Finding.ChargeOff told =
                find(Review.of(s.withFaults(UnitFaults.charge(0.7))), Finding.ChargeOff.class)
                        .orElseThrow();
        assertThat(Si.watts(told.lost().orElseThrow(), "lost")).isPositive();
        Finding.CondenserDirty dirty =
                find(
                                Review.of(s.withFaults(UnitFaults.dirtyCondenser(0.06))),
                                Finding.CondenserDirty.class)
                        .orElseThrow();
        assertThat(dirty.severity()).isEqualTo(Severity.WARNING);
        assertThat(dirty.lost()).isEmpty();
        assertThat(dirty.wasted()).isEmpty();
    }

    @Test
    void what_the_model_is_not_made_for_is_no_diagnosis() {
        // A third of a ton in the air of two: more than the model of the coil covers.
        InstalledSystem s = Stories.at(false, 1 / 3.0, 6).build();
        assertThatThrownBy(() -> Review.of(s))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("dry-air mass flow over the coil is 0.5")
                .hasMessageContaining("of standard air")
                .hasMessageContaining("0.05 to 5 times")
                .hasMessageContaining("rated with")
                .hasMessageContaining("check its rated capacity and airflow");
        InstalledSystem fine = Stories.at(false, 2, 6).build();
        assertThatThrownBy(
                        () ->
                                Uncertainty.of(fine)
                                        .input(
                                                "size",
                                                0.3,
                                                0.35,
                                                x ->
                                                        t ->
                                                                t.withUnit(
                                                                        Stories.unit(
                                                                                x, Staging.SINGLE)))
                                        .draws(3)
                                        .run())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("dry-air mass flow");
    }

    @Test
    void a_search_that_fails_is_no_diagnosis() {
        InstalledSystem fine = Stories.at(false, 2, 6).build();
        assertThatThrownBy(
                        () ->
                                Uncertainty.of(fine)
                                        .input(
                                                "x",
                                                0,
                                                1,
                                                x ->
                                                        t -> {
                                                            throw new ArithmeticException(
                                                                    "went astray");
                                                        })
                                        .draws(3)
                                        .run())
                .isInstanceOf(ArithmeticException.class)
                .isNotInstanceOf(NoBalanceException.class)
                .hasMessageContaining("went astray");
    }

    @Test
    void a_system_that_runs_is_reviewed_as_before() {
        Review review = Review.of(Stories.at(false, 2, 4).wantedSetpoint(fahrenheit(75)).build());
        assertThat(review.operates()).isTrue();
        assertThat(review.comparison().runsAsFound()).isTrue();
        assertThat(find(review, Finding.DoesNotRun.class)).isEmpty();
    }

    @Test
    void air_that_hardly_moves_is_found_and_opening_what_is_shut_is_tried() {
        // A blower whose table goes on to almost nothing has an operating point there.
        Blower.Builder weak = Blower.builder().speed("high");
        for (double[] p : new double[][] {{0.05, 1090}, {0.2, 700}, {0.24, 20}, {3, 1}}) {
            weak.point(Units.inchesOfWater(p[0]), Units.cubicFeetPerMinute(p[1]));
        }
        InstalledSystem s = choked();
        s = s.withDucts(s.ducts().withBlower(weak.efficiency(Units.percent(20)).build()));
        assertThat(s.movesAir()).isTrue();
        assertThat(s.airflow().cubicMetresPerSecond()).isBetween(1e-3, 0.018);
        assertThatThrownBy(s::runDay)
                .isInstanceOf(NoBalanceException.class)
                .hasMessageContaining("dry-air mass flow over the coil is 0.0")
                .hasMessageContaining("0.05 to 5 times");
        Review review = Review.of(s);
        Finding.DoesNotRun finding = find(review, Finding.DoesNotRun.class).orElseThrow();
        assertThat(finding.reason()).contains("of standard air");
        assertThat(find(review, Finding.RegistersShut.class)).isPresent();
        assertThat(review.recommended().title()).contains("open all registers");
        assertThat(review.recommended().system().runDay().ran()).isTrue();
    }
}
