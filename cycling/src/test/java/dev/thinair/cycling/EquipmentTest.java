package dev.thinair.cycling;

import static dev.thinair.units.Units.btuPerHour;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.fahrenheitDifference;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.minutes;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.working.Working;
import java.time.DayOfWeek;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Thermostat, tariff, furnace, heat pump, closed-form estimates and shown work. */
class EquipmentTest {

    private static final CoolingUnit UNIT =
            CoolingUnit.typical(tonsOfRefrigeration(3), Staging.SINGLE);

    @Test
    void thermostat_switches_around_its_setpoint() {
        Thermostat t = Thermostat.at(fahrenheit(75)).withDifferential(fahrenheitDifference(2));
        assertThat(t.switchOnKelvin()).isCloseTo((76 + 459.67) / 1.8, within(1e-10));
        assertThat(t.switchOffKelvin()).isCloseTo((74 + 459.67) / 1.8, within(1e-10));
        Thermostat other =
                t.withSetpoint(fahrenheit(70))
                        .withFanMode(FanMode.CONTINUOUS)
                        .withMaximumCycleRate(2.5)
                        .withMinimumOffTime(minutes(5))
                        .withSecondStageDifferential(kelvinDifference(0.8));
        assertThat(other.setpointKelvin()).isCloseTo((70 + 459.67) / 1.8, within(1e-10));
        assertThat(other.differentialKelvin()).isEqualTo(t.differentialKelvin());
        assertThat(other.fanMode()).isEqualTo(FanMode.CONTINUOUS);
        assertThat(other.maximumCycleRate()).isEqualTo(2.5);
        assertThat(other.minimumOffSeconds()).isEqualTo(300);
        assertThat(other.secondStageDifferentialKelvin()).isEqualTo(0.8);
        assertThat(t)
                .isEqualTo(Thermostat.at(fahrenheit(75)).withDifferential(fahrenheitDifference(2)));
        assertThat(t).isNotEqualTo(other);
        assertThat(t.hashCode()).isEqualTo(t.withSetpoint(fahrenheit(75)).hashCode());
        assertThat(other.toString()).contains("70.0 degF").contains("continuous");
    }

    @Test
    void a_day_s_bill_is_a_thirtieth_of_a_month_of_such_days() {
        double[] day = new double[24];
        Arrays.fill(day, 2);
        Tariff flat = Tariff.flat("USD", 0.15);
        assertThat(flat.costOfDay(day).total()).isCloseTo(48 * 0.15, within(1e-12));
        Tariff blocks =
                Tariff.blocks("USD", new double[] {500, 1_000}, new double[] {0.12, 0.15, 0.22})
                        .withFixedCharge(9.5);
        // 1440 kWh a month: 60 + 75 + 96.8, and the fixed charge.
        assertThat(30 * blocks.costOfDay(day).total()).isCloseTo(241.3, within(1e-9));
        Tariff use = Tariff.timeOfUse("USD", 0.31, 0.11, 15, 20, true).withDemandPrice(8);
        Bill bill = use.costOfDay(day);
        assertThat(bill.energyCharge()).isCloseTo(10 * 0.31 + 38 * 0.11, within(1e-12));
        assertThat(bill.demandCharge()).isCloseTo(2 * 8 / 30.0, within(1e-12));
        assertThat(bill.toString()).contains("USD");
        assertThat(bill.currency()).isEqualTo("USD");
    }

    @Test
    void blocks_time_of_use_and_demand_make_a_month_s_bill() {
        // Reference cases CYC-TAR-04 and CYC-TARD-01.
        Tariff blocks =
                Tariff.blocks("coins", new double[] {500, 1000}, new double[] {0.12, 0.15, 0.22})
                        .withFixedCharge(9.5);
        assertThat(blocks.costOfMonth(0, 1_350, 3).total()).isCloseTo(221.5, within(1e-9));
        // Energy in peak hours that there are none of must not be free.
        assertThatThrownBy(() -> blocks.costOfMonth(350, 1_000, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("peak energy under a tariff without peak hours is 350.0 kWh");
        Tariff demand = Tariff.timeOfUse("coins", 0.31, 0.11, 14, 20, false).withDemandPrice(8);
        Bill bill = demand.costOfMonth(220, 600, 4.2);
        assertThat(bill.total()).isCloseTo(167.8, within(1e-9));
        assertThat(bill.demandCharge()).isCloseTo(33.6, within(1e-9));
    }

    @Test
    void a_year_s_bill_goes_by_months() {
        double[] year = new double[8_760];
        Arrays.fill(year, 1);
        Tariff flat = Tariff.flat("EUR", 0.30).withFixedCharge(10);
        assertThat(flat.costOfYear(year).total()).isCloseTo(2_628 + 120, within(1e-6));
        // Blocks begin anew every month: 672 to 744 kWh each.
        Tariff blocks = Tariff.blocks("EUR", new double[] {700}, new double[] {0.1, 0.5});
        double expected = 0;
        for (int d : new int[] {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}) {
            double kwh = 24.0 * d;
            expected += 0.1 * Math.min(700, kwh) + 0.5 * Math.max(0, kwh - 700);
        }
        assertThat(blocks.costOfYear(year).total()).isCloseTo(expected, within(1e-8));
        Tariff use = Tariff.timeOfUse("EUR", 0.4, 0.2, 16, 21, true).withDemandPrice(5);
        Bill bill = use.costOfYear(year, DayOfWeek.MONDAY, null);
        assertThat(bill.energyCharge()).isCloseTo(0.2 * 8_760 + 0.2 * 261 * 5, within(1e-6));
        assertThat(bill.demandCharge()).isCloseTo(60, within(1e-12));
        double[] demand = new double[12];
        Arrays.fill(demand, 3);
        assertThat(use.costOfYear(year, DayOfWeek.MONDAY, demand).demandCharge())
                .isCloseTo(180, within(1e-12));
        assertThat(use.costOfMonth(220, 600, 4.2).total())
                .isCloseTo(220 * 0.4 + 600 * 0.2 + 21, within(1e-12));
    }

    @Test
    void furnace_input_falls_with_elevation_by_the_rule_that_is_named() {
        Furnace rated = Furnace.of("invented furnace", btuPerHour(80_000), 0.8);
        assertThat(Si.watts(rated.output(), "x"))
                .isCloseTo(Si.watts(btuPerHour(64_000), "x"), within(1e-9));
        assertThat(rated.at(feet(5_000), InputRule.FROM_SEA_LEVEL).inputFactor())
                .isCloseTo(0.80, within(1e-12));
        assertThat(rated.at(feet(5_000), InputRule.FROM_TWO_THOUSAND_FEET).inputFactor())
                .isCloseTo(0.88, within(1e-12));
        assertThat(rated.at(feet(5_000), InputRule.AS_RATED).inputFactor()).isEqualTo(1);
        Furnace maker = rated.at(feet(5_000), InputRule.FROM_SEA_LEVEL).withMakersFactor(0.9);
        assertThat(maker.inputFactor()).isEqualTo(0.9);
        assertThat(maker.inputBasis()).isEqualTo("maker's instructions");
        assertThat(Furnace.CAUTION).contains("carbon monoxide");
        MoistAir air =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        fahrenheit(70), dev.thinair.units.Units.percent(40), pascals(84_556));
        double rise =
                Si.kelvinDifference(maker.temperatureRise(air, kilogramsPerSecond(0.6)), "rise");
        double cp = Si.joulesPerKilogramKelvin(air.specificHeat(), "cp");
        assertThat(0.6 * cp * rise).isCloseTo(Si.watts(maker.output(), "x"), within(60.0));
        assertThat(maker.toString()).contains("maker's instructions");
    }

    @Test
    void heat_pump_reproduces_its_points_and_loses_in_thin_air() {
        HeatPump pump =
                HeatPump.of(
                        "invented pump",
                        watts(10_500),
                        watts(3_000),
                        watts(8_000),
                        watts(2_850),
                        watts(6_400),
                        watts(2_600));
        assertThat(Si.watts(pump.capacity(fahrenheit(47), pascals(101_325)), "x"))
                .isCloseTo(10_500, within(1e-8));
        assertThat(Si.watts(pump.capacity(fahrenheit(35), pascals(101_325)), "x"))
                .isCloseTo(8_000, within(1e-8));
        assertThat(Si.watts(pump.power(fahrenheit(17), pascals(101_325)), "x"))
                .isCloseTo(2_600, within(1e-8));
        assertThat(Si.watts(pump.capacity(fahrenheit(30), pascals(75_000)), "x"))
                .isLessThan(Si.watts(pump.capacity(fahrenheit(30), pascals(101_325)), "x"));
        assertThat(pump.coefficientOfPerformance(fahrenheit(47), pascals(101_325)))
                .isCloseTo(3.5, within(1e-9));
        HeatPump two = HeatPump.of("two", watts(10_500), watts(3_000), watts(6_400), watts(2_600));
        // Default of the rating procedure for the point at 35 degF.
        assertThat(Si.watts(two.capacity(fahrenheit(35), pascals(101_325)), "x"))
                .isCloseTo(0.9 * (6_400 + 0.6 * 4_100), within(1e-8));
        assertThat(two.name()).isEqualTo("two");
        assertThat(two.toString()).contains("COP 3.50");
    }

    @Test
    void heat_pump_seasons() {
        HeatPump pump =
                HeatPump.of(
                        "reference",
                        btuPerHour(36_000),
                        watts(3_000),
                        btuPerHour(30_000),
                        watts(2_900),
                        btuPerHour(22_000),
                        watts(2_600));
        // Reference cases CYC-HSPF-01 and CYC-HSPF2-01; their cut-out lies below every bin.
        assertThat(
                        pump.heatingSeason(btuPerHour(35_000), 0.25, RatingBins.HEATING_REGION_IV)
                                .getValue()
                                .doubleValue())
                .isCloseTo(8.36430011127, within(1e-9));
        assertThat(
                        pump.heatingSeasonM1(
                                        btuPerHour(36_000),
                                        1.15,
                                        0.25,
                                        RatingBins.HEATING_REGION_IV_M1)
                                .getValue()
                                .doubleValue())
                .isCloseTo(7.49337979331, within(1e-9));
    }

    @Test
    void cycle_estimate_at_the_ends() {
        Thermostat t = Thermostat.at(fahrenheit(75));
        CycleEstimate none = CycleEstimate.of(UNIT, t, watts(0), watts(10_000));
        assertThat(none.runTimeFraction()).isZero();
        assertThat(none.cyclesPerHour()).isZero();
        assertThat(none.averagePowerFraction()).isCloseTo(0.01, within(1e-12));
        assertThatThrownBy(none::offTime)
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("never starts");
        CycleEstimate full = CycleEstimate.of(UNIT, t, watts(12_000), watts(10_000));
        assertThat(full.penalty()).isZero();
        assertThat(Si.watts(full.unmetLoad(), "x")).isCloseTo(2_000, within(1e-9));
        assertThat(full.loadFactor()).isCloseTo(1.2, within(1e-12));
        assertThatThrownBy(full::onTime)
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("without pause");
        CycleEstimate half = CycleEstimate.of(UNIT, t, watts(5_000), watts(10_000));
        assertThat(half.partLoadFactor()).isEqualTo(PartLoad.implicitPartLoadFactor(60, 3, 0.5));
        assertThat(
                        half.cyclesPerHour()
                                * (Si.seconds(half.onTime(), "on")
                                        + Si.seconds(half.offTime(), "off")))
                .isCloseTo(3600, within(1e-8));
        assertThat(half.netLatentRatio()).isEqualTo(1);
        CycleEstimate fan =
                CycleEstimate.of(
                        UNIT, t.withFanMode(FanMode.CONTINUOUS), watts(5_000), watts(10_000));
        assertThat(fan.netLatentRatio()).isBetween(0.3, 0.9);
        assertThat(half.toString()).contains("50 % of capacity");
    }

    @Test
    void every_working_ends_with_its_result_and_every_formula_yields_what_is_shown() {
        Thermostat t = Thermostat.at(fahrenheit(75));
        for (double load : new double[] {0, 3_000, 9_999, 10_000, 15_000}) {
            CycleEstimate c = CycleEstimate.of(UNIT, t, watts(load), watts(10_000));
            check(c.partLoadWorking(), c.partLoadFactor());
            check(c.cycleRateWorking(), c.cyclesPerHour());
        }
        for (Staging staging : Staging.values()) {
            SeasonalRating r =
                    SeasonalRating.of(
                            CoolingUnit.typical(tonsOfRefrigeration(3), staging),
                            0.2,
                            RatingBins.COOLING);
            check(r.working(), r.inBtuPerWattHour());
            assertThat(r.working().toText()).contains("from memory");
        }
        for (double w : new double[] {0.003, 0.011}) {
            UnitState s =
                    UNIT.steady(
                            fahrenheit(75),
                            dev.thinair.units.Units.kilogramsPerKilogram(w),
                            kilogramsPerSecond(0.6),
                            fahrenheit(95),
                            pascals(80_000));
            check(s.working(), Si.watts(s.totalCapacity(), "x"));
        }
        UnitState faulty =
                UNIT.withFaults(UnitFaults.charge(0.8))
                        .steady(
                                fahrenheit(75),
                                dev.thinair.units.Units.kilogramsPerKilogram(0.01),
                                kilogramsPerSecond(0.6),
                                fahrenheit(95),
                                pascals(80_000));
        check(faulty.working(), Si.watts(faulty.totalCapacity(), "x"));
    }

    private static void check(Working working, double result) {
        assertThat(working.result().getValue().doubleValue())
                .isCloseTo(result, within(1e-9 * Math.max(1, Math.abs(result))));
        for (Working.Step step : working.steps()) {
            step.recomputed()
                    .ifPresent(
                            v ->
                                    assertThat(v)
                                            .as(step.name())
                                            .isCloseTo(
                                                    step.result().getValue().doubleValue(),
                                                    within(1e-8 * Math.max(1, Math.abs(v)))));
        }
        assertThat(working.toHtml()).contains("<math");
    }

    @Test
    void seasonal_rating_from_tests_and_its_short_form() {
        SeasonalRating r =
                SeasonalRating.ofSingleSpeed(
                        btuPerHour(36_000),
                        watts(3_000),
                        btuPerHour(38_000),
                        watts(2_700),
                        0.25,
                        RatingBins.COOLING);
        // Reference cases CYC-SEERB-01 and CYC-SEER1-01.
        assertThat(r.inBtuPerWattHour()).isCloseTo(12.2758054034, within(1e-9));
        assertThat(
                        SeasonalRating.shortForm(btuPerHour(38_000), watts(2_700), 0.25)
                                .getValue()
                                .doubleValue())
                .isCloseTo(12.3148148148, within(1e-9));
        assertThat(r.ratio().getValue().doubleValue()).isCloseTo(12.2758, within(1e-4));
        assertThat(r.bins()).isSameAs(RatingBins.COOLING);
        assertThat(r.toString()).contains("12.28");
    }

    @Test
    void limits_carry_their_sources() {
        UnitLimits limits = UnitLimits.standard();
        assertThat(limits.returnAirFloor().value() * 1.8 - 459.67).isCloseTo(64, within(1e-9));
        assertThat(limits.returnAirFloor().source()).isEqualTo("common practice, no source");
        assertThat(limits.airflowLow().with(330, "maker").value()).isEqualTo(330);
        assertThat(limits.icing().toString()).contains("273.15").contains("freezing");
        SizingLimits sizing = SizingLimits.standard();
        assertThat(sizing.highest(Staging.SINGLE).value()).isEqualTo(1.15);
        assertThat(sizing.highest(Staging.TWO_STAGE).value()).isEqualTo(1.20);
        assertThat(sizing.lowest().source()).contains("from memory");
    }
}
