package dev.thinair.cycling;

import static dev.thinair.units.Units.fahrenheit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.cycling.kernel.CoilFrost;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.psychro.kernel.IdealMoistAir;
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
        assertThat(f.plainWords()).contains("in time, by a mild model");
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
        freezing[UnitResponse.CONDENSATE] = 5e-4;
        double[] left = new double[2];
        for (int fan = 0; fan < 2; fan++) {
            IceBook book =
                    new IceBook(
                            s.unit().model(),
                            s.dryAirMassFlow,
                            fan == 1,
                            CoilFrost.FROST_DENSITY,
                            () ->
                                    IcedAirflow.of(
                                            s.ducts(),
                                            0.93,
                                            1.82e-5,
                                            s.ducts().coil().orElseThrow()));
            assertThat(book.dry()).isTrue();
            for (int k = 0; k < 36; k++) {
                book.passed(100, freezing, 1, 295);
            }
            // An hour at half a gram a second.
            assertThat(book.ice(1)[0]).isCloseTo(1.8, within(1e-9));
            assertThat(book.share()).isLessThan(1);
            book.passed(60, null, 1, 295);
            left[fan] = book.ice(2)[1];
            book.passed(80_000, null, 1, 295);
            assertThat(book.share()).isEqualTo(1);
        }
        assertThat(left[0]).isLessThan(1.8);
        assertThat(left[1]).isLessThan(left[0]);
    }

    /** Ice after a minute at full capacity with leaky ducts, kg, and what the unit did. */
    private static double iceOfAMinute(
            double returnLeak,
            double supplyLeak,
            double indoorW,
            double outdoorW,
            double startUpFactor,
            double[] out) {
        InstalledSystem s = iced();
        UnitModel model = s.unit().model();
        double flow = 0.45 * model.ratedDryAirMassFlow();
        IceBook book =
                new IceBook(
                        model,
                        flow,
                        false,
                        CoilFrost.FROST_DENSITY,
                        () ->
                                IcedAirflow.of(
                                        s.ducts(), 0.93, 1.82e-5, s.ducts().coil().orElseThrow()));
        InstalledUnit unit =
                new InstalledUnit(model, flow, 78_000, 400, supplyLeak, returnLeak, book);
        unit.at(1, 300, outdoorW, 293, indoorW, out);
        assertThat(out[UnitResponse.COIL]).isLessThan(CoilFrost.FREEZING);
        unit.passed(60, out, startUpFactor, 293);
        return book.ice(1)[0];
    }

    @Test
    void a_dry_coil_gathers_no_ice_though_leaks_dry_the_house() {
        double[] out = new double[UnitResponse.RESULTS];
        double ice = iceOfAMinute(0.15, 0.15, 0.0020, 0.0005, 1, out);
        assertThat(IdealMoistAir.saturationHumidityRatio(out[UnitResponse.COIL], 78_000))
                .isGreaterThan(0.0020);
        assertThat(out[UnitResponse.MOISTURE]).isPositive();
        assertThat(out[UnitResponse.CONDENSATE]).isZero();
        assertThat(ice).isZero();
    }

    @Test
    void a_wet_coil_gathers_ice_though_leaks_bring_the_house_more_water_than_it_takes() {
        double[] out = new double[UnitResponse.RESULTS];
        double ice = iceOfAMinute(0.15, 0.15, 0.0045, 0.0200, 1, out);
        assertThat(out[UnitResponse.MOISTURE]).isNegative();
        assertThat(out[UnitResponse.CONDENSATE]).isPositive();
        assertThat(ice).isEqualTo(60 * out[UnitResponse.CONDENSATE]);
    }

    @Test
    void what_the_supply_leaks_freezes_on_the_coil_all_the_same() {
        double[] tight = new double[UnitResponse.RESULTS];
        double[] leaky = new double[UnitResponse.RESULTS];
        double ice = iceOfAMinute(0, 0, 0.0060, 0.0060, 1, tight);
        assertThat(tight[UnitResponse.CONDENSATE]).isEqualTo(tight[UnitResponse.MOISTURE]);
        assertThat(iceOfAMinute(0, 0.2, 0.0060, 0.0060, 1, leaky)).isEqualTo(ice).isPositive();
        assertThat(leaky[UnitResponse.MOISTURE])
                .isCloseTo(0.8 * tight[UnitResponse.MOISTURE], within(1e-12));
        // A unit that has just started gives less and makes less ice.
        assertThat(iceOfAMinute(0, 0, 0.0060, 0.0060, 0.4, tight))
                .isCloseTo(0.4 * ice, within(1e-12));
    }

    private static CoilIcing icing(double tons, double setpoint, double density) {
        return Stories.at(true, tons, 4)
                .build()
                .runDay(fahrenheit(setpoint), density)
                .icing()
                .orElseThrow();
    }

    @Test
    void the_density_of_the_frost_moves_the_hour_and_near_the_border_the_verdict() {
        // Published densities scatter from 150 to 400 kg/m3.
        int last = 0;
        for (double density : new double[] {150, 250, 400}) {
            int hour = icing(4, 70, density).chokedFrom().orElseThrow();
            assertThat(hour).isGreaterThan(last);
            last = hour;
            assertThat(icing(3, 66, density).chokes()).isFalse();
            assertThat(icing(4, 75, density).chokes()).isFalse();
        }
        assertThat(icing(5, 78, 150).chokes()).isTrue();
        assertThat(icing(5, 78, 400).chokes()).isFalse();
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
