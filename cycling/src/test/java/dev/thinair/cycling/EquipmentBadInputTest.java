package dev.thinair.cycling;

import static dev.thinair.units.Units.btuPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.celsiusDifference;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.hours;
import static dev.thinair.units.Units.kilogramsPerKilogram;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.minutes;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.seconds;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.psychro.MoistAir;
import java.time.DayOfWeek;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class EquipmentBadInputTest {

    private static final CoolingUnit UNIT =
            CoolingUnit.typical(tonsOfRefrigeration(3), Staging.SINGLE);

    private static CoolingUnit.Builder unit() {
        return CoolingUnit.builder()
                .ratedCapacity(tonsOfRefrigeration(3))
                .energyEfficiencyRatio(12);
    }

    private static UnitState run(
            double celsius, double w, double m, double outdoor, double p, double stage) {
        return UNIT.steady(
                celsius(celsius),
                kilogramsPerKilogram(w),
                kilogramsPerSecond(m),
                celsius(outdoor),
                pascals(p),
                stage);
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                bad("rated capacity is missing", () -> CoolingUnit.builder().build()),
                bad(
                        "rated power is missing",
                        () -> CoolingUnit.builder().ratedCapacity(watts(9_000)).build()),
                bad("rated capacity is 10.0 W", () -> unit().ratedCapacity(watts(10))),
                bad("rated capacity", () -> unit().ratedCapacity(null)),
                bad(
                        "rated sensible capacity is 0.0 W",
                        () -> unit().ratedSensibleCapacity(watts(0))),
                bad(
                        "sensible capacity is",
                        () -> unit().ratedSensibleCapacity(watts(20_000)).build()),
                bad("sensible heat ratio is 1.0", () -> unit().sensibleHeatRatio(1)),
                bad("rated power is -5.0 W", () -> unit().ratedPower(watts(-5))),
                bad(
                        "energy efficiency ratio is 40.0 Btu/(W h)",
                        () -> unit().energyEfficiencyRatio(40)),
                bad("rated airflow is 0.0 m3/s", () -> unit().ratedAirflow(cubicFeetPerMinute(0))),
                bad("no coil state", () -> unit().ratedAirflow(cubicFeetPerMinute(500)).build()),
                bad("no coil state", () -> unit().sensibleHeatRatio(0.41).build()),
                bad(
                        "rated indoor fan power is -1.0 W",
                        () -> unit().ratedIndoorFanPower(watts(-1))),
                bad(
                        "saturated suction at rating is",
                        () -> unit().ratedSaturatedSuction(fahrenheit(58)).build()),
                bad(
                        "rated condensing over outdoor is 0.5 K",
                        () -> unit().ratedCondensingOverOutdoor(celsiusDifference(0.5))),
                bad(
                        "condenser effectiveness is 1.0",
                        () -> unit().condenserEffectiveness(1).build()),
                bad("loss share is 0.7", () -> unit().compressorLossShare(0.7).build()),
                bad("outdoor fan power is", () -> unit().outdoorFanPower(watts(3_000)).build()),
                bad("refrigerant is missing", () -> unit().refrigerant(null).build()),
                bad("unit name is missing", () -> unit().name(" ")),
                bad("staging is missing", () -> unit().staging(null)),
                bad("no turndown", () -> unit().turndown(Staging.SINGLE, 0.5)),
                bad("displacement fraction is 0.05", () -> unit().turndown(Staging.VARIABLE, 0.05)),
                bad(
                        "low-stage capacity is 0.0 W",
                        () ->
                                unit().lowStageRating(
                                                Staging.TWO_STAGE,
                                                watts(0),
                                                watts(100),
                                                cubicFeetPerMinute(800),
                                                watts(200))),
                bad(
                        "displacement fraction of the low stage",
                        () ->
                                unit().lowStageRating(
                                                Staging.TWO_STAGE,
                                                watts(12_500),
                                                watts(3_000),
                                                cubicFeetPerMinute(1_300),
                                                watts(300))
                                        .build()),
                bad("unit faults are missing", () -> unit().faults(null)),
                bad(
                        "start-up time constant is 3600.0 s",
                        () -> unit().startUpTimeConstant(hours(1))),
                bad("off-cycle power is 2000.0 W", () -> unit().offCyclePower(watts(2_000))),
                bad("evaporation ratio is -1.0", () -> unit().coilMoisture(seconds(600), -1)),
                bad("performance points are missing", () -> unit().performancePoints(null)),
                bad(
                        "a fit needs at least 2",
                        () ->
                                unit().performancePoints(
                                                List.of(
                                                        new PerformancePoint(
                                                                MoistAir.ofDryBulbAndWetBulb(
                                                                        fahrenheit(80),
                                                                        fahrenheit(67),
                                                                        pascals(101_325)),
                                                                cubicFeetPerMinute(1_200),
                                                                fahrenheit(105),
                                                                watts(10_000),
                                                                watts(7_500),
                                                                watts(3_300),
                                                                watts(400))))
                                        .build()),
                bad(
                        "entering air of the performance point is missing",
                        () ->
                                new PerformancePoint(
                                        null,
                                        cubicFeetPerMinute(1_200),
                                        fahrenheit(105),
                                        watts(10_000),
                                        watts(7_500),
                                        watts(3_300),
                                        watts(400))),
                bad("entering dry bulb is 273.15 K", () -> run(0, 0.003, 0.6, 35, 9e4, 1)),
                bad("entering humidity ratio is -0.001", () -> run(25, -0.001, 0.6, 35, 9e4, 1)),
                bad("must not exceed saturation", () -> run(15, 0.02, 0.6, 35, 9e4, 1)),
                bad("dry-air mass flow is 0.01 kg/s", () -> run(25, 0.01, 0.01, 35, 9e4, 1)),
                bad("outdoor dry bulb is 343.15 K", () -> run(25, 0.01, 0.6, 70, 9e4, 1)),
                bad("pressure is 1000.0 Pa", () -> run(25, 0.01, 0.6, 35, 1000, 1)),
                bad("only stage 1.0", () -> run(25, 0.01, 0.6, 35, 9e4, 0.5)),
                bad(
                        "entering air is missing",
                        () -> UNIT.steady(null, kilogramsPerSecond(0.6), celsius(35))),
                bad("condenser conductance factor is 0.0", () -> UnitFaults.dirtyCondenser(0)),
                bad(
                        "refrigerant charge over the right charge is 0.5",
                        () -> UnitFaults.charge(0.5)),
                bad(
                        "condenser conductance factor is 0.04",
                        () -> UnitFaults.dirtyCondenser(0.2).and(UnitFaults.dirtyCondenser(0.2))),
                bad("thermostat setpoint", () -> Thermostat.at(null)),
                bad("thermostat setpoint is", () -> Thermostat.at(celsius(60))),
                bad(
                        "thermostat differential is 0.0 K",
                        () -> Thermostat.at(celsius(24)).withDifferential(celsiusDifference(0))),
                bad(
                        "maximum cycle rate is 0.0 1/h",
                        () -> Thermostat.at(celsius(24)).withMaximumCycleRate(0)),
                bad(
                        "minimum off time is 3600.0 s",
                        () -> Thermostat.at(celsius(24)).withMinimumOffTime(minutes(60))),
                bad("fan mode is missing", () -> Thermostat.at(celsius(24)).withFanMode(null)),
                bad("currency is missing", () -> Tariff.flat("", 0.1)),
                bad("price is NaN", () -> Tariff.flat("USD", Double.NaN)),
                bad(
                        "block limit is 400.0 kWh",
                        () ->
                                Tariff.blocks(
                                        "USD",
                                        new double[] {500, 400},
                                        new double[] {0.1, 0.1, 0.1})),
                bad(
                        "first peak hour is 24.0 h",
                        () -> Tariff.timeOfUse("USD", 0.3, 0.1, 24, 24, true)),
                bad("a day has 24 hours", () -> Tariff.flat("USD", 0.1).costOfDay(new double[3])),
                bad(
                        "a common year has 8760 hours",
                        () -> Tariff.flat("USD", 0.1).costOfYear(new double[8_784])),
                bad(
                        "energy of hour 0 is NaN kWh",
                        () -> {
                            double[] year = new double[8_760];
                            year[0] = Double.NaN;
                            Tariff.flat("USD", 0.1).costOfYear(year);
                        }),
                bad(
                        "a year has 12 months",
                        () ->
                                Tariff.flat("USD", 0.1)
                                        .costOfYear(
                                                new double[8_760],
                                                DayOfWeek.MONDAY,
                                                new double[11])),
                bad(
                        "weekday of 1 January is missing",
                        () -> Tariff.flat("USD", 0.1).costOfYear(new double[8_760], null, null)),
                bad("furnace efficiency is 1.2", () -> Furnace.of("f", btuPerHour(80_000), 1.2)),
                bad("elevation", () -> furnace().at(feet(40_000), InputRule.FROM_SEA_LEVEL)),
                bad("input rule is missing", () -> furnace().at(feet(4_000), null)),
                bad("altitude factor of the furnace is 0.1", () -> furnace().withMakersFactor(0.1)),
                bad(
                        "must be below that at 47 degF",
                        () ->
                                HeatPump.of(
                                        "h",
                                        watts(6_000),
                                        watts(2_000),
                                        watts(7_000),
                                        watts(2_000))),
                bad(
                        "heat pump name is missing",
                        () ->
                                HeatPump.of(
                                        null,
                                        watts(6_000),
                                        watts(2_000),
                                        watts(4_000),
                                        watts(2_000))),
                bad(
                        "load is -1.0 W",
                        () ->
                                CycleEstimate.of(
                                        UNIT,
                                        Thermostat.at(celsius(24)),
                                        watts(-1),
                                        watts(10_000))),
                bad(
                        "capacity is 0.0 W",
                        () ->
                                CycleEstimate.of(
                                        UNIT, Thermostat.at(celsius(24)), watts(1), watts(0))),
                bad(
                        "thermostat is missing",
                        () -> CycleEstimate.of(UNIT, null, watts(1), watts(10))),
                bad("unit is missing", () -> SeasonalRating.of(null, 0.2, RatingBins.COOLING)),
                bad("bin table is missing", () -> SeasonalRating.of(UNIT, 0.2, null)),
                bad(
                        "degradation coefficient is 2.0",
                        () -> SeasonalRating.of(UNIT, 2, RatingBins.COOLING)),
                bad("threshold source is missing", () -> new Threshold("a", 1, "K", "")),
                bad(
                        "must be finite",
                        () -> new Threshold("a", Double.POSITIVE_INFINITY, "K", "maker")),
                bad(
                        "indoor fan power is -1.0 W",
                        () -> run(25, 0.01, 0.6, 35, 9e4, 1).netCapacity(watts(-1))));
    }

    private static Furnace furnace() {
        return Furnace.of("invented furnace", btuPerHour(80_000), 0.8);
    }

    private static Arguments bad(String message, ThrowingCallable call) {
        return arguments(message, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void bad_input_is_refused_by_name(String message, ThrowingCallable call) {
        assertThatThrownBy(call)
                .satisfiesAnyOf(
                        e ->
                                org.assertj.core.api.Assertions.assertThat(e)
                                        .isInstanceOf(IllegalArgumentException.class),
                        e ->
                                org.assertj.core.api.Assertions.assertThat(e)
                                        .isInstanceOf(NullPointerException.class))
                .hasMessageContaining(message);
    }
}
