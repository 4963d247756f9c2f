package dev.thinair.psychro;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetresPerSecond;
import static dev.thinair.units.Units.gramsPerKilogram;
import static dev.thinair.units.Units.joulesPerKilogram;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.thinair.psychro.kernel.AirModel;
import dev.thinair.psychro.kernel.AirPoint;
import dev.thinair.psychro.kernel.ConditionLine;
import dev.thinair.psychro.kernel.CoolingCoil;
import dev.thinair.psychro.kernel.DewPoint;
import dev.thinair.psychro.kernel.EnhancementFactor;
import dev.thinair.psychro.kernel.Flows;
import dev.thinair.psychro.kernel.Humidifying;
import dev.thinair.psychro.kernel.IapwsSaturation;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Mixing;
import dev.thinair.psychro.kernel.RealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.SensibleHeating;
import dev.thinair.psychro.kernel.Transport;
import dev.thinair.psychro.kernel.WetBulb;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is refused, and in which words. */
class BadInputTest {

    private static final AirModel IDEAL = AirModel.IDEAL;
    private static final double P = 101_325;
    private static final MoistAir AIR =
            MoistAir.ofDryBulbAndRelativeHumidity(celsius(26), percent(50), kilopascals(84));
    private static final AirStream STREAM = AirStream.ofDryAirFlow(AIR, kilogramsPerSecond(0.5));

    private static Arguments refused(String message, ThrowingCallable call) {
        return Arguments.of(message, call);
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                refused(
                        "temperature is 173.0 K, but must lie in [173.15, 473.15] K",
                        () -> Saturation.pressure(173)),
                refused(
                        "temperature is 473.2 K, but must lie in [173.15, 473.15] K",
                        () -> Saturation.pressure(473.2)),
                refused(
                        "temperature is NaN K, but must lie in [173.15, 473.15] K",
                        () -> Saturation.slope(Double.NaN)),
                refused(
                        "temperature of liquid water is 273.0 K, but must lie in [273.15, 473.15]",
                        () -> Saturation.pressureOverLiquid(273)),
                refused(
                        "temperature of ice is 274.0 K, but must lie in [173.15, 273.15] K",
                        () -> Saturation.pressureOverIce(274)),
                refused("vapor pressure is 0.001 Pa", () -> Saturation.temperature(0.001)),
                refused("vapor pressure is 1600000.0 Pa", () -> Saturation.temperature(1.6e6)),
                refused("vapor pressure is NaN Pa", () -> Saturation.temperature(Double.NaN)),
                refused(
                        "temperature of liquid water is 273.0 K, but must lie in [273.15, 647.096]",
                        () -> IapwsSaturation.liquidPressure(273)),
                refused(
                        "temperature of ice is 273.2 K, but must lie in [50.0, 273.16] K",
                        () -> IapwsSaturation.icePressure(273.2)),
                refused("vapor pressure is 600.0 Pa", () -> IapwsSaturation.liquidTemperature(600)),
                refused(
                        "dry bulb is 500.0 K, but must lie in [173.15, 473.15] K",
                        () -> IdealMoistAir.humidityRatioFromRelativeHumidity(500, 0.5, P)),
                refused(
                        "relative humidity is 1.2 (ratio), but must lie in [0.0, 1.0] (ratio)",
                        () -> IdealMoistAir.humidityRatioFromRelativeHumidity(300, 1.2, P)),
                refused(
                        "relative humidity is -0.1 (ratio), but must lie in [0.0, 1.0] (ratio)",
                        () -> RealMoistAir.humidityRatioFromRelativeHumidity(300, -0.1, P)),
                refused(
                        "air pressure is 19000.0 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IdealMoistAir.humidityRatioFromRelativeHumidity(300, 0.5, 19_000)),
                refused(
                        "air pressure is 101.325 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IdealMoistAir.specificVolume(300, 0.01, 101.325)),
                refused(
                        "humidity ratio is -1.0E-4 kg/kg, but must lie in [0.0, 10.0] kg/kg",
                        () -> IdealMoistAir.enthalpy(300, -1e-4)),
                refused(
                        "humidity ratio is 11.0 kg/kg, but must lie in [0.0, 10.0] kg/kg",
                        () -> IdealMoistAir.vaporPressure(11, P)),
                refused(
                        "vapor pressure is 100000.0 Pa, but must lie in [0.0, 95392.",
                        () -> IdealMoistAir.humidityRatioFromVaporPressure(1e5, P)),
                refused(
                        "vapor pressure is -1.0 Pa, but must lie in [0.0, ",
                        () -> IdealMoistAir.humidityRatioFromVaporPressure(-1, P)),
                refused(
                        "vapor pressure is 101418.",
                        () -> IdealMoistAir.saturationHumidityRatio(373.15, P)),
                refused(
                        "vapor pressure is 143",
                        () -> IdealMoistAir.degreeOfSaturation(383.15, 0.1, P)),
                refused(
                        "specific enthalpy at this dry bulb is 0.0 J/kg",
                        () -> IdealMoistAir.humidityRatioFromEnthalpy(300, 0)),
                refused(
                        "dry bulb from enthalpy and humidity ratio is 571.",
                        () -> IdealMoistAir.dryBulbFromEnthalpy(300_000, 0)),
                refused(
                        "humidity ratio is NaN kg/kg",
                        () -> IdealMoistAir.specificHeat(Double.NaN)),
                refused(
                        "dry bulb is 173.0 K, but must lie in [173.15, 473.15] K",
                        () -> IdealMoistAir.density(173, 0.001, P)),
                refused(
                        "humidity ratio is 10.5 kg/kg, but must lie in [0.0, 10.0] kg/kg",
                        () -> IdealMoistAir.density(300, 10.5, P)),
                refused(
                        "air pressure is 14.696 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IdealMoistAir.density(300, 0.01, 14.696)),
                refused(
                        "humidity ratio is -0.5 kg/kg, but must lie in [0.0, 10.0] kg/kg",
                        () -> IdealMoistAir.degreeOfSaturation(300, -0.5, P)),
                refused(
                        "humidity ratio is 60.0 kg/kg, but must lie in [0.0, 10.0] kg/kg",
                        () -> IdealMoistAir.dryBulbFromEnthalpy(50_000, 60)),
                refused(
                        "dry bulb is 95.0 K, but must lie in [173.15, 473.15] K",
                        () -> IdealMoistAir.humidityRatioFromEnthalpy(95, 50_000)),
                refused(
                        "temperature of ice is 273.16 K, but must lie in [173.15, 273.15] K",
                        () -> IdealMoistAir.iceEnthalpy(273.16)),
                refused(
                        "temperature of liquid water is 273.1 K, but must lie in [273.15, 473.15]",
                        () -> IdealMoistAir.liquidEnthalpy(273.1)),
                refused(
                        "dry bulb is 35.0 K, but must lie in [173.15, 473.15] K",
                        () -> IdealMoistAir.relativeHumidity(35, 0.01, P)),
                refused(
                        "dry bulb is 20.0 K, but must lie in [173.15, 473.15] K",
                        () -> IdealMoistAir.saturationHumidityRatio(20, P)),
                refused(
                        "air pressure is 1.0 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IDEAL.humidityRatioFromEnthalpy(300, 50_000, 1)),
                refused(
                        "air pressure is 2.0 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IDEAL.dryBulbFromEnthalpy(50_000, 0.01, 2)),
                refused(
                        "air pressure is 3.0 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> IDEAL.enthalpy(300, 0.01, 3)),
                refused(
                        "wet bulb (not above dry bulb) is 301.0 K, but must lie in [273.15, 300.0]",
                        () -> WetBulb.humidityRatio(300, 301, P)),
                refused(
                        "wet bulb is 273.15 K, but must be at least 278.98",
                        () -> WetBulb.humidityRatio(293.15, 273.15, P)),
                refused(
                        "drier than dry air",
                        () -> IdealMoistAir.humidityRatioFromWetBulb(293.15, 273.15, P)),
                refused(
                        "wet bulb over ice is 274.0 K, but must lie in [173.15, 273.15] K",
                        () -> WetBulb.humidityRatioOverIce(300, 274, P)),
                refused(
                        "wet bulb is 380.0 K, but must be below 373.12",
                        () -> WetBulb.humidityRatio(400, 380, P)),
                refused(
                        "humidity ratio implied by dry and wet bulb is 53.",
                        () -> WetBulb.humidityRatio(373, 372.8, P)),
                refused(
                        "fog has no wet bulb of its own",
                        () -> WetBulb.temperature(293.15, 0.02, P)),
                refused(
                        "humidity ratio is 0.02 kg/kg, but must not be above 0.0146",
                        () -> IdealMoistAir.wetBulb(293.15, 0.02, P)),
                refused(
                        "fog has no wet bulb of its own",
                        () -> RealMoistAir.wetBulb(293.15, 0.02, P)),
                refused(
                        "dry bulb is 100.0 K, but must lie in [173.15, 473.15] K",
                        () -> WetBulb.temperature(100, 0, P)),
                refused("vapor pressure is 0.0 Pa", () -> DewPoint.temperature(0, P)),
                refused(
                        "dew point is 500.0 K, but must lie in [173.15, 473.15] K",
                        () -> DewPoint.humidityRatio(500, P)),
                refused(
                        "dry bulb is 480.0 K, but must lie in [173.15, 473.15] K",
                        () -> EnhancementFactor.value(480, P)),
                refused(
                        "specific enthalpy at this dry bulb is 0.0 J/kg",
                        () -> RealMoistAir.humidityRatioFromEnthalpy(300, 0, P)),
                refused(
                        "specific enthalpy is NaN J/kg, but must be finite",
                        () -> RealMoistAir.dryBulbFromEnthalpy(Double.NaN, 0, P)),
                refused(
                        "dry bulb from enthalpy and humidity ratio is",
                        () -> RealMoistAir.dryBulbFromEnthalpy(300_000, 0, P)),
                refused(
                        "wet bulb (not above dry bulb) is 310.0 K",
                        () -> RealMoistAir.humidityRatioFromWetBulb(300, 310, P)),
                refused(
                        "humidity ratio implied by dry and wet bulb is -",
                        () -> RealMoistAir.humidityRatioFromWetBulb(293.15, 273.15, P)),
                refused("vapor pressure is 0.0 Pa", () -> RealMoistAir.dewPoint(0, P)),
                refused(
                        "wet bulb is 380.0 K, but must be below the boiling point",
                        () -> RealMoistAir.humidityRatioFromWetBulb(400, 380, P)),
                refused(
                        "air pressure is 300000.0 Pa, but must lie in [20000.0, 200000.0] Pa",
                        () -> Transport.viscosity(300, 0, 3e5)),
                refused(
                        "dry bulb is -10.0 K, but must lie in [173.15, 473.15] K",
                        () -> Transport.conductivity(-10, 0, P)),
                refused("dry-air mass flow 1 is -1.0 kg/s", () -> Mixing.mean(-1, 1, 2, 2)),
                refused("dry-air mass flow 2 is NaN kg/s", () -> Mixing.mean(1, 1, Double.NaN, 2)),
                refused(
                        "sum of the dry-air mass flows is 0.0 kg/s, but must be above 0.0",
                        () -> Mixing.mean(0, 1, 0, 2)),
                refused("humidity ratio is 12.0 kg/kg", () -> AirPoint.of(IDEAL, 0, 12, P)),
                refused(
                        "bypass factor is 1.5 (ratio), but must lie in [0.0, 1.0] (ratio)",
                        () -> CoolingCoil.leaving(IDEAL, 300, 0.01, 280, 1.5, P)),
                refused(
                        "bypass factor is -0.5 (ratio)",
                        () -> CoolingCoil.leavingHumidityRatio(0.01, 280, -0.5, P)),
                refused(
                        "bypass factor is NaN (ratio)",
                        () -> CoolingCoil.leavingEnthalpy(300, 0.01, 280, Double.NaN, P)),
                refused(
                        "apparatus dew point (not above the entering dry bulb) is 305.0 K",
                        () -> CoolingCoil.leaving(IDEAL, 300, 0.01, 305, 0.1, P)),
                refused(
                        "enthalpy drop across the coil is 0.0 J/kg, but must be above 0.0",
                        () -> CoolingCoil.sensibleHeatRatio(IDEAL, 300, 0.01, 300, 0.01, P)),
                refused(
                        "water added is -0.1 kg/kg",
                        () -> Humidifying.injection(IDEAL, 300, 0.01, -0.1, 0, P)),
                refused(
                        "enthalpy of the water is 5000000.0 J/kg",
                        () -> Humidifying.injection(IDEAL, 300, 0.01, 0.001, 5e6, P)),
                refused(
                        "effectiveness is 85.0 (ratio), but must lie in [0.0, 1.0] (ratio)",
                        () -> Humidifying.evaporative(IDEAL, 300, 0.01, 85, P)),
                refused(
                        "for evaporative cooling: the water would freeze",
                        () -> Humidifying.evaporative(IDEAL, 270, 0.001, 0.8, P)),
                refused(
                        "surface temperature is 500.0 K",
                        () -> SensibleHeating.leavingDryBulb(300, 500, 0.5)),
                refused(
                        "bypass factor is 1.0 (ratio), but must lie in [0.0, 0.999] (ratio)",
                        () -> SensibleHeating.surfaceTemperature(300, 310, 1)),
                refused(
                        "surface temperature is 1299.99",
                        () -> SensibleHeating.surfaceTemperature(300, 310, 0.99)),
                refused(
                        "moisture gain is 0.0 kg/s, but must not be 0",
                        () -> ConditionLine.slope(9000, 0, 2_555_000)),
                refused(
                        "no air flow at that temperature removes a sensible gain of 9000.0 W",
                        () -> ConditionLine.dryAirFlow(298, 0.01, 303, 9000, 0, 0)),
                refused(
                        "humidity ratio of the supply air is -",
                        () -> ConditionLine.dryAirFlow(298, 0.001, 288, 1000, 0.01, 2_500_000)),
                refused(
                        "volume flow is 0.0 m3/s, but must be above 0.0 m3/s and finite",
                        () -> Flows.dryAirFlowFromVolume(IDEAL, 300, 0.01, P, 0)),
                refused(
                        "moist-air mass flow is -1.0 kg/s, but must be above 0.0 kg/s and finite",
                        () -> Flows.dryAirFlowFromMass(0.01, -1)),
                refused(
                        "dry bulb",
                        () ->
                                MoistAir.ofDryBulbAndRelativeHumidity(
                                        celsius(250), percent(10), kilopascals(84))),
                refused(
                        "relative humidity is 20.0 (ratio), but must lie in [0.0, 1.0] (ratio)",
                        () ->
                                MoistAir.ofDryBulbAndRelativeHumidity(
                                        celsius(25), ratio(20), kilopascals(84))),
                refused(
                        "humidity ratio is 0.05 kg/kg, a relative humidity of",
                        () ->
                                MoistAir.ofDryBulbAndHumidityRatio(
                                        celsius(20), gramsPerKilogram(50), kilopascals(84))),
                refused(
                        "humidity ratio is 0.0",
                        () ->
                                MoistAir.ofDryBulbAndDewPoint(
                                        celsius(20), celsius(25), kilopascals(84))),
                refused(
                        "specific enthalpy at this dry bulb is 1000.0 J/kg",
                        () ->
                                MoistAir.ofDryBulbAndEnthalpy(
                                        celsius(20), joulesPerKilogram(1000), kilopascals(84))),
                refused(
                        "vapor pressure is 50000.0 Pa",
                        () ->
                                MoistAir.ofDryBulbAndVaporPressure(
                                        celsius(150), kilopascals(50), kilopascals(50))),
                refused(
                        "dry-air mass flow is 0.0 kg/s, but must be above 0.0 kg/s and finite",
                        () -> AirStream.ofDryAirFlow(AIR, kilogramsPerSecond(0))),
                refused(
                        "volume flow is -1.0 m3/s",
                        () -> AirStream.ofVolumeFlow(AIR, cubicMetresPerSecond(-1))),
                refused(
                        "air pressure of the second stream is 90000.0 Pa, but must be that of the"
                                + " first, 84000.0 Pa",
                        () -> STREAM.mixedWith(AirStream.ofSi(AIR.atPressure(kilopascals(90)), 1))),
                refused(
                        "formulation of the second stream is REAL",
                        () -> STREAM.mixedWith(AirStream.ofSi(AIR.with(Formulation.REAL), 1))),
                refused(
                        "sensible cooling must stay above the dew point",
                        () -> STREAM.heatedBy(watts(-15_000))),
                refused("a relative humidity of", () -> STREAM.heatedTo(celsius(5))),
                refused(
                        "apparatus dew point (not above the entering dry bulb)",
                        () -> STREAM.throughCoil(celsius(30), ratio(0.1))),
                refused(
                        "air pressure behind the coil is 90000.0 Pa",
                        () -> STREAM.coilSurfaceTo(AIR.atPressure(kilopascals(90)))),
                refused(
                        "formulation of the leaving air is REAL",
                        () -> STREAM.coilSurfaceTo(AIR.with(Formulation.REAL))),
                refused(
                        "water added is -0.2 kg/kg",
                        () ->
                                STREAM.humidifiedBy(
                                        kilogramsPerSecond(-0.1), joulesPerKilogram(2.6e6))),
                refused(
                        "effectiveness is 1.1 (ratio)",
                        () -> STREAM.evaporativelyCooled(ratio(1.1))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void is_refused_in_these_words(String message, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    static Stream<Arguments> missing() {
        return Stream.of(
                refused(
                        "relative humidity",
                        () ->
                                MoistAir.ofDryBulbAndRelativeHumidity(
                                        celsius(20), null, kilopascals(84))),
                refused(
                        "wet bulb",
                        () -> MoistAir.ofDryBulbAndWetBulb(celsius(20), null, kilopascals(84))),
                refused(
                        "air pressure",
                        () -> MoistAir.ofDryBulbAndDewPoint(celsius(20), celsius(2), null)),
                refused("air", () -> AirStream.ofSi(null, 1)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("missing")
    void nothing_given_is_refused_by_name(String message, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining(message);
    }

    @org.junit.jupiter.api.Test
    void dry_air_has_no_dew_point_and_says_so() {
        MoistAir dry = MoistAir.dry(celsius(20), kilopascals(84));
        org.assertj.core.api.Assertions.assertThat(dry.hasDewPoint()).isFalse();
        assertThatThrownBy(dry::dewPoint)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage(
                        "air of humidity ratio 0.0 kg/kg has no dew point at or above -100 degC");
    }
}
