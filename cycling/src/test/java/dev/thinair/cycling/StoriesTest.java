package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The stories that the review exists for, told in one invented house. */
class StoriesTest {

    private static final double CFM_PER_TON =
            Si.cubicMetresPerSecondPerWatt(
                    dev.thinair.units.Units.cubicFeetPerMinutePerTon(1), "airflow per ton");

    private static double standard(InstalledSystem s) {
        return Si.cubicMetresPerSecondPerWatt(s.standardAirflowPerTon(), "airflow") / CFM_PER_TON;
    }

    private static double actual(InstalledSystem s) {
        return Si.cubicMetresPerSecondPerWatt(s.airflowPerTon(), "airflow") / CFM_PER_TON;
    }

    private static <F extends Finding> Optional<F> find(Review review, Class<F> kind) {
        return review.findings().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static Comparison.Row row(Review review, String title) {
        return review.comparison().rows().stream()
                .filter(r -> r.title().contains(title))
                .findFirst()
                .orElseThrow();
    }

    private static InstalledSystem.Builder small(boolean high) {
        return Stories.at(high, 2, 4);
    }

    @Test
    void a_healthy_system_at_sea_level_has_no_findings() {
        InstalledSystem s = small(false).build();
        Review review = Review.of(s);
        assertThat(review.findings()).isEmpty();
        assertThat(review.healthy()).isTrue();
        assertThat(review.remedies()).isEmpty();
        assertThat(review.summary()).startsWith("Healthy");
        assertThat(review.comparison().rows()).hasSize(1);
        assertThat(review.recommended()).isSameAs(review.comparison().asFound());
        assertThat(standard(s)).isGreaterThan(380);
        assertThat(review.day().record().repeats()).isTrue();
    }

    @Test
    void the_same_ducts_move_as_many_cubic_feet_at_2200_m_but_too_little_air() {
        InstalledSystem low = small(false).build();
        InstalledSystem high = small(true).build();
        assertThat(actual(high)).isCloseTo(actual(low), within(0.05 * actual(low)));
        assertThat(standard(high)).isLessThan(0.81 * standard(low));
        Review review = Review.of(high);
        assertThat(find(review, Finding.LowAirflow.class)).isPresent();
        assertThat(find(review, Finding.DuctsTooSmall.class)).isPresent();
        // Less than a ton short: one or two added runs and not another unit.
        assertThat(find(review, Finding.DuctsTooSmall.class).orElseThrow().plainWords())
                .contains("one or two added runs");
        assertThat(
                        row(review, "add 2 supply runs")
                                .standardAirflowPerTon()
                                .getValue()
                                .doubleValue())
                .isGreaterThan(
                        review.comparison()
                                .asFound()
                                .standardAirflowPerTon()
                                .getValue()
                                .doubleValue());
    }

    @Test
    void four_of_twelve_registers_shut_are_found_and_opening_them_comes_first() {
        InstalledSystem s = small(false).build();
        InstalledSystem shut =
                s.withDucts(
                        s.ducts()
                                .withRegisterShut("run 1")
                                .withRegisterShut("run 4")
                                .withRegisterShut("run 7")
                                .withRegisterShut("run 9"));
        Review review = Review.of(shut);
        Finding.RegistersShut finding = find(review, Finding.RegistersShut.class).orElseThrow();
        assertThat(finding.names()).containsExactlyInAnyOrder("run 1", "run 4", "run 7", "run 9");
        assertThat(review.remedies().get(0).kind()).isEqualTo(Remedy.Kind.FREE);
        assertThat(review.recommended().kind()).isEqualTo(Remedy.Kind.FREE);
        InstalledSystem opened = review.remedies().get(0).apply(shut);
        assertThat(standard(opened)).isCloseTo(standard(s), within(1e-9));
        assertThat(standard(opened)).isGreaterThan(1.03 * standard(shut));
    }

    @Test
    void a_loaded_filter_is_found_and_a_clean_one_recommended() {
        InstalledSystem s = small(false).build();
        InstalledSystem loaded =
                s.withDucts(
                        s.ducts()
                                .withFilter(
                                        Stories.filter()
                                                .labelled(
                                                        "one-inch pleat",
                                                        8,
                                                        dev.thinair.units.Units.inches(1))
                                                .loaded(6)));
        Review review = Review.of(loaded);
        Finding.FilterLoaded finding = find(review, Finding.FilterLoaded.class).orElseThrow();
        assertThat(Si.pascals(finding.drop(), "drop"))
                .isGreaterThan(2 * Si.pascals(finding.cleanDrop(), "drop"));
        assertThat(review.recommended().title()).contains("clean filter");
        assertThat(review.recommended().kind()).isEqualTo(Remedy.Kind.FREE);
    }

    @Test
    void a_dirty_condenser_costs_power_and_washing_it_is_free() {
        Review review = Review.of(small(false).build().withFaults(UnitFaults.dirtyCondenser(0.5)));
        Finding.CondenserDirty finding = find(review, Finding.CondenserDirty.class).orElseThrow();
        assertThat(Si.watts(finding.wasted().orElseThrow(), "wasted")).isGreaterThan(100);
        assertThat(finding.caution()).isPresent();
        assertThat(review.recommended().title()).contains("wash");
        assertThat(review.recommended().electricity().getValue().doubleValue())
                .isLessThan(
                        0.9 * review.comparison().asFound().electricity().getValue().doubleValue());
    }

    @Test
    void a_bigger_unit_on_the_same_ducts_ices() {
        InstalledSystem s = Stories.at(true, 5, 4).wantedSetpoint(fahrenheit(72)).build();
        Review review = Review.of(s);
        Finding.CoilIce ice = find(review, Finding.CoilIce.class).orElseThrow();
        assertThat(ice.severity()).isEqualTo(Severity.SERIOUS);
        assertThat(ice.caution()).isPresent();
        assertThat(Si.kelvins(ice.coil(), "coil")).isLessThan(273.15);
        assertThat(find(review, Finding.DuctsTooSmall.class).orElseThrow().severity())
                .isEqualTo(Severity.SERIOUS);
        Comparison.Row fit = row(review, "fit a single-stage unit");
        assertThat(fit.ices()).isFalse();
        assertThat(Si.kelvins(fit.minimumCoilTemperature(), "coil"))
                .isGreaterThan(Si.kelvins(ice.coil(), "coil"));
    }

    @Test
    void a_unit_a_ton_and_a_half_too_large_starts_more_and_runs_shorter() {
        InstalledSystem s = Stories.at(false, 3.5, 6).contents(2).build();
        Review review = Review.of(s);
        Finding.UnitTooLarge finding = find(review, Finding.UnitTooLarge.class).orElseThrow();
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        double excess = Si.watts(finding.excess(), "excess") / Trade.TON;
        assertThat(excess).isCloseTo(1.5, within(0.05));
        InstalledSystem fit = s.withUnit(s.unit().withRatedCapacity(finding.right()));
        assertThat(s.runDay().starts()).isGreaterThan(fit.runDay().starts());
        assertThat(s.runDay().record().startUpLoss())
                .isGreaterThan(1.3 * fit.runDay().record().startUpLoss());
        // A lighter house and a tighter thermostat make it short cycling.
        InstalledSystem nervous =
                Stories.at(false, 3.5, 6)
                        .contents(1)
                        .thermostat(
                                Thermostat.at(fahrenheit(75))
                                        .withDifferential(
                                                dev.thinair.units.Units.fahrenheitDifference(0.5)))
                        .build();
        Finding.ShortCycling cycling =
                find(Review.of(nervous), Finding.ShortCycling.class).orElseThrow();
        assertThat(Si.ratio(cycling.penalty(), "penalty")).isBetween(0.1, 0.6);
    }

    @Test
    void an_inverter_in_the_same_house_runs_long() {
        InstalledSystem single = Stories.at(false, 3.5, 6).contents(2).build();
        InstalledSystem inverter = single.withUnit(single.unit().withStaging(Staging.VARIABLE));
        assertThat(inverter.runDay().record().totalOnSeconds())
                .isGreaterThan(1.5 * single.runDay().record().totalOnSeconds());
        assertThat(inverter.runDay().starts()).isLessThan(single.runDay().starts() / 2);
        assertThat(inverter.runDay().electricity().getValue().doubleValue())
                .isLessThan(single.runDay().electricity().getValue().doubleValue());
    }

    @Test
    void a_two_stage_unit_of_the_right_size_holds_the_setpoint() {
        InstalledSystem single = Stories.at(false, 2, 4).build();
        InstalledSystem two = single.withUnit(single.unit().withStaging(Staging.TWO_STAGE));
        assertThat(Assessment.miss(single.runDay())).isLessThan(Assessment.MISS_LIMIT);
        assertThat(Assessment.miss(two.runDay())).isLessThan(Assessment.MISS_LIMIT);
        assertThat(two.runDay().starts()).isLessThan(single.runDay().starts());
        assertThat(Review.of(two).healthy()).isTrue();
    }

    @Test
    void a_customer_who_wants_60_degrees_is_told_why_not() {
        Review review = Review.of(Stories.at(false, 2, 6).wantedSetpoint(fahrenheit(60)).build());
        assertThat(find(review, Finding.SetpointMissed.class)).isPresent();
        Finding.SetpointTooLow floor = find(review, Finding.SetpointTooLow.class).orElseThrow();
        assertThat(Si.kelvins(floor.floor(), "floor")).isCloseTo((64 + 459.67) / 1.8, within(1e-9));
        assertThat(floor.criterion().source()).isEqualTo(Criterion.COMMON_PRACTICE);
        assertThat(find(review, Finding.UnitTooSmall.class)).isPresent();
        Comparison.Row higher = row(review, "set the thermostat to");
        assertThat(higher.kind()).isEqualTo(Remedy.Kind.SETTING);
        assertThat(Si.kelvinDifference(higher.miss(), "miss"))
                .isLessThanOrEqualTo(Assessment.MISS_LIMIT);
    }

    @Test
    void a_fan_that_runs_on_wets_the_house_again() {
        InstalledSystem automatic = Stories.at(false, 2, 6).build();
        InstalledSystem continuous =
                automatic.withThermostat(automatic.thermostat().withFanMode(FanMode.CONTINUOUS));
        assertThat(Si.ratio(continuous.runDay().meanRelativeHumidity(), "humidity"))
                .isGreaterThan(Si.ratio(automatic.runDay().meanRelativeHumidity(), "humidity"));
        assertThat(continuous.runDay().electricity().getValue().doubleValue())
                .isGreaterThan(automatic.runDay().electricity().getValue().doubleValue());
    }

    @Test
    void remedies_come_free_ones_first_then_ducts_then_equipment() {
        InstalledSystem s = Stories.at(true, 5, 4).build();
        InstalledSystem bad =
                s.withDucts(
                                s.ducts()
                                        .withRegisterShut("run 2")
                                        .withFilter(Stories.filter().loaded(4)))
                        .withFaults(UnitFaults.dirtyCondenser(0.7));
        List<Remedy> remedies = Review.of(bad).remedies();
        assertThat(remedies.get(0).kind()).isEqualTo(Remedy.Kind.FREE);
        for (int i = 1; i < remedies.size(); i++) {
            assertThat(remedies.get(i).kind()).isGreaterThanOrEqualTo(remedies.get(i - 1).kind());
        }
        assertThat(remedies.get(remedies.size() - 1).kind()).isEqualTo(Remedy.Kind.EQUIPMENT);
        assertThat(remedies.size()).isGreaterThanOrEqualTo(8);
    }

    @Test
    void the_same_system_gets_the_same_review_and_a_remedy_without_change_changes_nothing() {
        InstalledSystem s = Stories.at(true, 3, 4).build();
        Review one = Review.of(s);
        Review two = Review.of(Stories.at(true, 3, 4).build());
        assertThat(two.findings().toString()).isEqualTo(one.findings().toString());
        assertThat(two.summary()).isEqualTo(one.summary());
        for (int i = 0; i < one.comparison().rows().size(); i++) {
            Comparison.Row a = one.comparison().rows().get(i);
            Comparison.Row b = two.comparison().rows().get(i);
            assertThat(b.title()).isEqualTo(a.title());
            assertThat(b.cost()).isEqualTo(a.cost());
            assertThat(b.starts()).isEqualTo(a.starts());
        }
        for (Remedy none :
                List.of(
                        Remedy.nothing(),
                        Remedy.openRegisters(),
                        Remedy.cleanFilter(),
                        Remedy.washCondenser(),
                        Remedy.otherUnit(s.unit()),
                        Remedy.otherSetpoint(s.wantedSetpoint()),
                        Remedy.automaticFan(),
                        Remedy.sealDucts(),
                        Remedy.combine(Remedy.cleanFilter(), Remedy.washCondenser()))) {
            InstalledSystem same = none.apply(s);
            assertThat(same.runDay().cost()).as(none.title()).isEqualTo(s.runDay().cost());
            assertThat(same.runDay().starts()).isEqualTo(s.runDay().starts());
            assertThat(standard(same)).isEqualTo(standard(s));
        }
    }

    @Test
    void more_air_never_makes_the_coil_colder() {
        double before = 0;
        for (double inches : new double[] {3.5, 4, 5, 6}) {
            InstalledSystem s = Stories.at(false, 4, inches).build();
            UnitState state = s.unitStateAtDesign();
            double coil = Si.kelvins(state.apparatusDewPoint(), "coil");
            assertThat(coil).isGreaterThan(before);
            before = coil;
        }
    }

    @Test
    void a_day_repeats_itself_or_says_how_far_it_misses() {
        int repeats = 0;
        for (int i = 0; i < 30; i++) {
            DayRun day =
                    Stories.at(i % 2 == 0, 1.3 + 0.1 * i, 6)
                            .unit(
                                    Stories.unit(
                                            1.3 + 0.1 * i,
                                            i % 3 == 0 ? Staging.TWO_STAGE : Staging.SINGLE))
                            .build()
                            .runDay();
            repeats += day.repeats() ? 1 : 0;
            assertThat(day.repeatedDays()).isLessThan(60);
            assertThat(day.record().repeatError()).isLessThan(day.repeats() ? 0.01 : 0.2);
        }
        assertThat(repeats).isGreaterThan(24);
    }
}
