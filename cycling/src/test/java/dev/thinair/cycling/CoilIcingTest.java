package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.units.Si;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ice takes away air, and with the air the capacity, in the run itself. */
class CoilIcingTest {

    private static InstalledSystem iced() {
        return Stories.at(true, 4, 4).wantedSetpoint(fahrenheit(70)).build();
    }

    @Test
    void an_iced_day_does_not_deliver_what_a_clear_coil_would() {
        DayRun day = iced().runDay();
        CoilIcing icing = day.icing().orElseThrow();
        DayRun clear = icing.clearCoil();
        assertThat(clear.icing()).isEmpty();
        assertThat(icing.chokes()).isTrue();
        assertThat(Si.ratio(icing.leastAirflow(), "airflow")).isLessThan(0.3);
        int from = icing.chokedFrom().orElseThrow();
        for (int h = 0; h < 24; h++) {
            if (h < from) {
                assertThat(Si.ratio(icing.airflow(h), "airflow")).isGreaterThanOrEqualTo(0.9);
            }
            assertThat(icing.ice(h).getValue().doubleValue())
                    .isLessThanOrEqualTo(icing.mostIce().getValue().doubleValue());
        }
        assertThat(clear.delivered().getValue().doubleValue())
                .isGreaterThan(1.04 * day.delivered().getValue().doubleValue());
        assertThat(Assessment.miss(day)).isGreaterThan(Assessment.miss(clear) + 1);
        assertThat(day.repeatedDays()).isEqualTo(clear.repeatedDays());
        assertThat(icing.toString()).contains("choked from hour " + from);
    }

    @Test
    void the_iced_day_closes_its_balance() {
        DayRun day = iced().runDay();
        assertThat(day.record().heatImbalance()).isCloseTo(0, within(1e-9));
        assertThat(day.record().waterImbalance()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_coil_above_freezing_never_ices() {
        assertThat(Stories.at(false, 3, 4).build().runDay().icing()).isEmpty();
    }

    @Test
    void rest_thaws_a_coil_that_only_dips_below_freezing() {
        // Four tons at 75 degF just fall below freezing in the evening's longer runs.
        DayRun day = Stories.at(true, 4, 4).build().runDay();
        CoilIcing icing = day.icing().orElseThrow();
        assertThat(icing.chokes()).isFalse();
        assertThat(icing.chokedFrom()).isEmpty();
        assertThat(icing.mostIce().getValue().doubleValue()).isBetween(0.001, 1.0);
        Review review = Review.of(Stories.at(true, 4, 4).build());
        Finding.CoilIce f =
                review.findings().stream()
                        .filter(Finding.CoilIce.class::isInstance)
                        .map(Finding.CoilIce.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertThat(f.title()).contains("thaws again");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void the_verdict_gives_the_numbers_of_the_iced_run() {
        InstalledSystem s = iced();
        Review review = Review.of(s);
        Comparison.Row found = review.comparison().asFound();
        assertThat(found.ices()).isTrue();
        assertThat(Si.ratio(found.airflowLeft(), "airflow")).isLessThan(0.3);
        assertThat(found.miss().getValue().doubleValue())
                .isEqualTo(s.runDay().miss().getValue().doubleValue());
        Finding.CoilIce ice =
                review.findings().stream()
                        .filter(Finding.CoilIce.class::isInstance)
                        .map(Finding.CoilIce.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertThat(ice.severity()).isEqualTo(Severity.SERIOUS);
        assertThat(ice.plainWords())
                .contains(
                        "from "
                                + s.runDay().icing().orElseThrow().chokedFrom().getAsInt()
                                + ":00 on");
        assertThat(review.findings()).anyMatch(Finding.SetpointMissed.class::isInstance);
        // Without ice the same unit would hold the setpoint; the verdict must not say so.
        assertThat(Assessment.miss(s.runDay().clearCoil())).isLessThan(Assessment.MISS_LIMIT);
        assertThat(review.recommended().airflowLeft().getValue().doubleValue()).isEqualTo(100);
    }

    @Test
    void less_air_is_left_the_more_the_coil_resists() {
        InstalledSystem s = iced();
        IcedAirflow curve =
                IcedAirflow.of(s.ducts(), 0.93, 1.82e-5, s.ducts().coil().orElseThrow());
        assertThat(curve.share(1)).isEqualTo(1);
        double last = 1;
        for (double factor = 1.1; factor < 8000; factor *= 1.3) {
            double share = curve.share(factor);
            assertThat(share).isLessThanOrEqualTo(last).isPositive();
            assertThat(curve.watts(factor)).isPositive();
            last = share;
        }
        assertThat(last).isLessThan(0.05);
    }

    @Test
    void a_resting_coil_thaws_faster_in_the_air_of_a_fan_that_runs_on() {
        InstalledSystem s = iced();
        double[] freezing = new double[UnitResponse.RESULTS];
        freezing[UnitResponse.COIL] = 270;
        freezing[UnitResponse.MOISTURE] = 5e-4;
        double[] left = new double[2];
        for (int fan = 0; fan < 2; fan++) {
            IceBook book =
                    new IceBook(
                            s.unit().model(),
                            s.dryAirMassFlow,
                            fan == 1,
                            () ->
                                    IcedAirflow.of(
                                            s.ducts(),
                                            0.93,
                                            1.82e-5,
                                            s.ducts().coil().orElseThrow()));
            assertThat(book.dry()).isTrue();
            for (int k = 0; k < 36; k++) {
                book.passed(100, freezing, 295);
            }
            // An hour at half a gram a second.
            assertThat(book.ice(1)[0]).isCloseTo(1.8, within(1e-9));
            assertThat(book.share()).isLessThan(1);
            book.passed(60, null, 295);
            left[fan] = book.ice(2)[1];
            book.passed(80_000, null, 295);
            assertThat(book.share()).isEqualTo(1);
        }
        assertThat(left[0]).isLessThan(1.8);
        assertThat(left[1]).isLessThan(left[0]);
    }

    @Test
    void refuses_an_hour_that_is_none() {
        CoilIcing icing = iced().runDay().icing().orElseThrow();
        for (int bad : List.of(-1, 24)) {
            assertThatThrownBy(() -> icing.ice(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("hour is " + bad);
            assertThatThrownBy(() -> icing.airflow(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("hour is " + bad);
        }
    }
}
