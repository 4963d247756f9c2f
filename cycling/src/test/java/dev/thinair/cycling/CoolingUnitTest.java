package dev.thinair.cycling;

import static dev.thinair.units.Units.btuPerHour;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.fahrenheitDifference;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.seconds;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.cycling.kernel.Refrigerant;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.junit.jupiter.api.Test;

class CoolingUnitTest {

    private static final MoistAir RATED =
            MoistAir.ofDryBulbAndWetBulb(fahrenheit(80), fahrenheit(67), pascals(101_325));

    private static CoolingUnit.Builder invented() {
        return CoolingUnit.builder()
                .name("invented unit")
                .ratedCapacity(btuPerHour(36_000))
                .ratedSensibleCapacity(btuPerHour(27_500))
                .ratedPower(watts(3_050))
                .ratedAirflow(cubicFeetPerMinute(1_200))
                .ratedIndoorFanPower(watts(420));
    }

    private static double w(Quantity<Power> q) {
        return Si.watts(q, "power");
    }

    @Test
    void the_published_net_figures_come_back_at_the_rating_point() {
        CoolingUnit unit = invented().build();
        UnitState state = unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(95));
        assertThat(w(state.netCapacity(watts(420)))).isCloseTo(w(btuPerHour(36_000)), within(1e-4));
        assertThat(w(state.netSensibleCapacity(watts(420))))
                .isCloseTo(w(btuPerHour(27_500)), within(1e-4));
        assertThat(w(state.power()) + 420).isCloseTo(3_050, within(1e-4));
        assertThat(unit.nominalTons()).isCloseTo(3, within(1e-9));
        assertThat(unit.energyEfficiencyRatio()).isCloseTo(36_000 / 3_050.0, within(1e-9));
        assertThat(state.icing()).isFalse();
        assertThat(state.dryCoil()).isFalse();
        assertThat(state.toString()).contains("apparatus dew point");
    }

    @Test
    void efficiency_and_sensible_ratio_stand_for_power_and_sensible_capacity() {
        CoolingUnit unit =
                CoolingUnit.builder()
                        .ratedCapacity(tonsOfRefrigeration(2))
                        .energyEfficiencyRatio(12)
                        .sensibleHeatRatio(0.76)
                        .build();
        assertThat(w(unit.ratedPower())).isCloseTo(2_000, within(1e-6));
        assertThat(w(unit.ratedSensibleCapacity()) / w(unit.ratedCapacity()))
                .isCloseTo(0.76, within(1e-12));
        // 400 standard cfm per ton and 365 W per 1000 cfm by default.
        assertThat(w(unit.ratedIndoorFanPower())).isCloseTo(292, within(1e-6));
    }

    @Test
    void a_scaled_unit_keeps_its_family() {
        CoolingUnit unit = invented().build();
        CoolingUnit bigger = unit.withRatedCapacity(tonsOfRefrigeration(4.5));
        assertThat(bigger.energyEfficiencyRatio())
                .isCloseTo(unit.energyEfficiencyRatio(), within(1e-9));
        UnitState small = unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(105));
        UnitState large = bigger.steady(RATED, bigger.ratedMassFlow(), fahrenheit(105));
        assertThat(w(large.totalCapacity()) / w(small.totalCapacity()))
                .isCloseTo(1.5, within(1e-8));
        assertThat(Si.kelvins(large.apparatusDewPoint(), "x"))
                .isCloseTo(Si.kelvins(small.apparatusDewPoint(), "x"), within(1e-7));
        assertThat(bigger.name()).contains("scaled to 4.5 tons");
    }

    @Test
    void a_bigger_unit_on_the_same_air_runs_colder_and_ices_sooner() {
        CoolingUnit unit = invented().build();
        CoolingUnit bigger = unit.withRatedCapacity(tonsOfRefrigeration(5));
        MoistAir air =
                MoistAir.ofDryBulbAndWetBulb(fahrenheit(72), fahrenheit(60), pascals(80_000));
        var flow = kilogramsPerSecond(0.30);
        UnitState small = unit.steady(air, flow, fahrenheit(85));
        UnitState large = bigger.steady(air, flow, fahrenheit(85));
        assertThat(large.icing()).isTrue();
        assertThat(small.icing()).isFalse();
        assertThat(
                        bigger.icingMassFlow(
                                air.dryBulb(), air.humidityRatio(), fahrenheit(85), air.pressure()))
                .isGreaterThan(
                        unit.icingMassFlow(
                                air.dryBulb(),
                                air.humidityRatio(),
                                fahrenheit(85),
                                air.pressure()));
    }

    @Test
    void broken_limits_are_named_with_their_sources() {
        CoolingUnit unit = invented().build();
        UnitLimits limits = UnitLimits.standard();
        assertThat(unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(95)).broken(limits))
                .isEmpty();
        MoistAir cold =
                MoistAir.ofDryBulbAndWetBulb(fahrenheit(62), fahrenheit(56), pascals(101_325));
        assertThat(unit.steady(cold, kilogramsPerSecond(0.2), fahrenheit(95)).broken(limits))
                .containsExactly(
                        limits.icing(),
                        limits.suctionWarning(),
                        limits.returnAirFloor(),
                        limits.setupReturnAir());
        assertThat(
                        unit.withFaults(UnitFaults.dirtyCondenser(0.35))
                                .steady(RATED, unit.ratedMassFlow(), fahrenheit(100))
                                .broken(limits))
                .containsExactly(limits.condensing());
    }

    @Test
    void stagings() {
        CoolingUnit two = CoolingUnit.typical(tonsOfRefrigeration(3), Staging.TWO_STAGE);
        assertThat(two.minimumStage()).isEqualTo(0.67);
        CoolingUnit variable = two.withStaging(Staging.VARIABLE);
        assertThat(variable.model().continuousStage()).isTrue();
        assertThat(variable.minimumStage()).isEqualTo(0.30);
        CoolingUnit single = variable.withStaging(Staging.SINGLE);
        assertThat(single.minimumStage()).isEqualTo(1);
        UnitState low = two.steady(RATED, kilogramsPerSecond(0.45), fahrenheit(82), 0.67);
        UnitState high = two.steady(RATED, two.ratedMassFlow(), fahrenheit(82));
        assertThat(w(low.totalCapacity())).isLessThan(w(high.totalCapacity()));
        assertThat(low.stage()).isEqualTo(0.67);
        // Half-empty heat exchangers make the low stage the more efficient one.
        assertThat(w(low.totalCapacity()) / w(low.power()))
                .isGreaterThan(w(high.totalCapacity()) / w(high.power()));
    }

    @Test
    void a_low_stage_rating_comes_back() {
        CoolingUnit unit =
                invented()
                        .lowStageRating(
                                Staging.TWO_STAGE,
                                btuPerHour(25_000),
                                watts(1_900),
                                cubicFeetPerMinute(850),
                                watts(260))
                        .build();
        double m = 850 * 0.028316846592 / 60 * CoolingUnit.STANDARD_DENSITY;
        UnitState low =
                unit.steady(RATED, kilogramsPerSecond(m), fahrenheit(95), unit.minimumStage());
        assertThat(w(low.netCapacity(watts(260)))).isCloseTo(w(btuPerHour(25_000)), within(1e-3));
        assertThat(w(low.power()) + 260).isCloseTo(1_900, within(1e-3));
    }

    @Test
    void faults_are_counted_from_the_healthy_unit() {
        CoolingUnit unit = invented().build();
        CoolingUnit dirty = unit.withFaults(UnitFaults.dirtyCondenser(0.5));
        CoolingUnit clean = dirty.withFaults(dirty.faults().withCleanCondenser());
        assertThat(clean.faults().healthy()).isTrue();
        assertThat(w(dirty.steady(RATED, unit.ratedMassFlow(), fahrenheit(95)).totalCapacity()))
                .isLessThan(
                        w(
                                unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(95))
                                        .totalCapacity()));
        assertThat(clean.steady(RATED, unit.ratedMassFlow(), fahrenheit(95)).values())
                .isEqualTo(unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(95)).values());
        assertThat(UnitFaults.charge(1).healthy()).isTrue();
        assertThat(UnitFaults.charge(0.97).healthy()).isTrue();
        assertThat(UnitFaults.charge(0.8).evaporatorActive()).isCloseTo(0.775, within(1e-12));
        assertThat(UnitFaults.charge(1.2).condenserActive()).isCloseTo(0.775, within(1e-12));
        assertThat(UnitFaults.dirtyCondenser(0.5).and(UnitFaults.charge(0.8)))
                .isEqualTo(new UnitFaults(0.5, 0.5, UnitFaults.charge(0.8).evaporatorActive(), 1));
    }

    @Test
    void a_fit_recovers_the_unit_that_made_the_points() {
        CoolingUnit truth =
                invented()
                        .ratedSaturatedSuction(fahrenheit(47))
                        .ratedCondensingOverOutdoor(fahrenheitDifference(26))
                        .compressorLossShare(0.25)
                        .build();
        List<PerformancePoint> table = new ArrayList<>();
        for (double outdoor : new double[] {75, 85, 105, 115}) {
            for (double wetBulb : new double[] {62, 67, 71}) {
                MoistAir air =
                        MoistAir.ofDryBulbAndWetBulb(
                                fahrenheit(78), fahrenheit(wetBulb), pascals(101_325));
                UnitState s = truth.steady(air, truth.ratedMassFlow(), fahrenheit(outdoor));
                table.add(
                        new PerformancePoint(
                                air,
                                truth.ratedAirflow(),
                                fahrenheit(outdoor),
                                s.netCapacity(watts(420)),
                                s.netSensibleCapacity(watts(420)),
                                watts(w(s.power()) + 420),
                                watts(420)));
            }
        }
        CoolingUnit fitted = invented().performancePoints(table).build();
        assertThat(fitted.fitDeviation().orElseThrow()).isLessThan(1e-5);
        assertThat(fitted.model().parameters().suctionAtRating())
                .isCloseTo(truth.model().parameters().suctionAtRating(), within(0.02));
        assertThat(fitted.model().parameters().lossShare()).isCloseTo(0.25, within(0.002));
        assertThat(invented().build().fitDeviation()).isEmpty();
        // The rating point stays exact, and copies keep the fit.
        assertThat(
                        w(
                                fitted.steady(RATED, fitted.ratedMassFlow(), fahrenheit(95))
                                        .netCapacity(watts(420))))
                .isCloseTo(w(btuPerHour(36_000)), within(1e-3));
        assertThat(
                        fitted.withRatedCapacity(tonsOfRefrigeration(4))
                                .model()
                                .parameters()
                                .lossShare())
                .isEqualTo(fitted.model().parameters().lossShare());
    }

    @Test
    void other_refrigerants_reproduce_the_rating_too() {
        for (Refrigerant r : List.of(Refrigerant.R32, Refrigerant.R22)) {
            CoolingUnit unit = invented().refrigerant(r).build();
            UnitState s = unit.steady(RATED, unit.ratedMassFlow(), fahrenheit(95));
            assertThat(w(s.netCapacity(watts(420)))).isCloseTo(w(btuPerHour(36_000)), within(1e-4));
        }
    }

    @Test
    void seasonal_ratings_rise_with_staging() {
        double one = rating(Staging.SINGLE);
        double two = rating(Staging.TWO_STAGE);
        double variable = rating(Staging.VARIABLE);
        assertThat(one).isBetween(10.0, 15.0);
        assertThat(two).isGreaterThan(one);
        assertThat(variable).isGreaterThan(two);
    }

    private static double rating(Staging staging) {
        return SeasonalRating.of(
                        CoolingUnit.typical(tonsOfRefrigeration(3), staging),
                        RatingBins.DEFAULT_COOLING_DEGRADATION_M1,
                        RatingBins.COOLING)
                .inBtuPerWattHour();
    }

    @Test
    void details_of_start_up_and_moisture() {
        CoolingUnit unit =
                invented()
                        .startUpTimeConstant(seconds(45))
                        .offCyclePower(watts(25))
                        .coilMoisture(seconds(600), 0.4)
                        .build();
        assertThat(unit.startUpSeconds()).isEqualTo(45);
        assertThat(unit.offCycleWatts()).isEqualTo(25);
        assertThat(unit.moistureHoldingSeconds()).isEqualTo(600);
        assertThat(unit.evaporationRatio()).isEqualTo(0.4);
        assertThat(unit.toString()).contains("invented unit").contains("SINGLE");
        assertThat(unit.model().rating().totalCapacity())
                .isCloseTo(w(btuPerHour(36_000)) + 420, within(1e-9));
        assertThat(unit.model().minimumStage()).isEqualTo(1);
        assertThat(unit.model()).isInstanceOf(UnitModel.class);
    }
}
