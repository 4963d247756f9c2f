package dev.thinair.cycling;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.thinair.cycling.kernel.CycleControl;
import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.cycling.kernel.ThermostatEngine;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Register;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is not physical is refused, and the message says what. */
class InstalledSystemBadInputTest {

    private static final double[] ONE = {1};
    private static final double[][] K = {{200}};

    private static Arguments bad(String says, ThrowingCallable call) {
        return Arguments.of(says, call);
    }

    private static HouseDrive drive(double[][] heat) {
        double[] outdoor = new double[heat.length];
        java.util.Arrays.fill(outdoor, 300);
        return HouseDrive.dry(3600, false, heat, outdoor);
    }

    private static HouseDrive fine() {
        return HouseDrive.dry(3600, true, new double[][] {{60_000}}, new double[] {300});
    }

    private static ThermostatEngine engine() {
        return new ThermostatEngine(ModalHouse.of(new double[] {1e7}, K), ONE, ONE, ONE);
    }

    private static CycleControl control(
            double set,
            double band,
            double low,
            double off,
            double tau,
            double every,
            double refresh) {
        return new CycleControl(
                new double[] {set},
                band,
                CycleControl.Staging.VARIABLE,
                low,
                1,
                Double.POSITIVE_INFINITY,
                off,
                tau,
                every,
                refresh,
                0,
                0,
                0,
                0);
    }

    static Stream<Arguments> cases() {
        InstalledSystem.Builder ok = Stories.at(false, 2, 6);
        InstalledSystem s = ok.build();
        UnitResponse unit = UnitResponse.constant(5000, 2000);
        CycleControl single = CycleControl.single(297, 1);
        return Stream.of(
                bad("array of heat capacities", () -> ModalHouse.of(null, K)),
                bad("0 nodes", () -> ModalHouse.of(new double[0], new double[0][])),
                bad("rows for 2 nodes", () -> ModalHouse.of(new double[] {1, 1}, K)),
                bad("heat capacity of node 0 is 0.0", () -> ModalHouse.of(new double[] {0}, K)),
                bad(
                        "heat capacity of node 0 is NaN",
                        () -> ModalHouse.of(new double[] {Double.NaN}, K)),
                bad("row 0 does not have 1", () -> ModalHouse.of(ONE, new double[][] {{1, 2}})),
                bad("must be finite", () -> ModalHouse.of(ONE, new double[][] {{Double.NaN}})),
                bad(
                        "not symmetric",
                        () ->
                                ModalHouse.of(
                                        new double[] {1, 1}, new double[][] {{2, -1}, {-0.5, 2}})),
                bad(
                        "not positive definite",
                        () ->
                                ModalHouse.of(
                                        new double[] {1, 1}, new double[][] {{1, -1}, {-1, 1}})),
                bad("weights must have one entry", () -> ModalHouse.of(ONE, K).row(new double[2])),
                bad("heat must have one entry", () -> ModalHouse.of(ONE, K).steady(new double[2])),
                bad("time is -1.0 s", () -> ModalHouse.of(ONE, K).after(ONE, ONE, ONE, -1)),
                bad("engine needs a house", () -> new ThermostatEngine(null, ONE, ONE, ONE)),
                bad(
                        "sum of thermostat weights is 0.5",
                        () ->
                                new ThermostatEngine(
                                        ModalHouse.of(ONE, K), new double[] {0.5}, ONE, ONE)),
                bad(
                        "supply shares of node 0 is -1.0",
                        () ->
                                new ThermostatEngine(
                                        ModalHouse.of(ONE, K), ONE, ONE, new double[] {-1})),
                bad("at least 2 marks", () -> drive(new double[1][1])),
                bad("does not have one entry", () -> drive(new double[][] {{1}, {1, 2}})),
                bad(
                        "into node 0 is NaN",
                        () ->
                                HouseDrive.dry(
                                        3600,
                                        true,
                                        new double[][] {{Double.NaN}},
                                        new double[] {300})),
                bad(
                        "outdoor dry bulb at mark 0 is 20.0",
                        () -> HouseDrive.dry(3600, true, new double[][] {{1}}, new double[] {20})),
                bad(
                        "interval between marks is 0.0",
                        () -> HouseDrive.dry(0, true, new double[][] {{1}}, new double[] {300})),
                bad(
                        "moisture capacity is 0.0",
                        () ->
                                HouseDrive.of(
                                        3600,
                                        true,
                                        new double[][] {{1}},
                                        new double[] {300},
                                        new double[1],
                                        new double[1],
                                        new double[1],
                                        0)),
                bad("setpoint is 20.0 K", () -> CycleControl.single(20, 1)),
                bad("thermostat differential is 0.0", () -> CycleControl.single(297, 0)),
                bad("low stage is 1.5", () -> control(297, 1, 1.5, 0, 60, 300, 900)),
                bad("minimum off time is -1.0", () -> control(297, 1, 0.3, -1, 60, 300, 900)),
                bad(
                        "start-up time constant is NaN",
                        () -> control(297, 1, 0.3, 0, Double.NaN, 300, 900)),
                bad("control interval is 1.0", () -> control(297, 1, 0.3, 0, 60, 1, 900)),
                bad("refresh interval is 0.0", () -> control(297, 1, 0.3, 0, 60, 300, 0)),
                bad("sensible capacity is -1.0", () -> UnitResponse.constant(-1, 1)),
                bad("needs a drive", () -> engine().run(null, single, unit, ONE, 0, 0)),
                bad(
                        "starting temperatures",
                        () -> engine().run(fine(), single, unit, new double[2], 0, 0)),
                bad(
                        "starting temperature of node 0",
                        () -> engine().run(fine(), single, unit, new double[] {Double.NaN}, 0, 0)),
                bad(
                        "humidity ratio at the start is 1.0",
                        () -> engine().run(fine(), single, unit, ONE, 1, 0)),
                bad("must be periodic", () -> engine().repeat(null, single, unit, 0, 0.01, 10, 0)),
                bad(
                        "tolerance of the repeated day",
                        () -> engine().repeat(fine(), single, unit, 0, 0, 10, 0)),
                bad(
                        "largest number of passes",
                        () -> engine().repeat(fine(), single, unit, 0, 0.01, 0, 0)),
                bad("house must not be null", () -> InstalledSystem.builder().build()),
                bad(
                        "design day must not be null",
                        () ->
                                InstalledSystem.builder()
                                        .house(Stories.compiled(Stories.site(0)))
                                        .build()),
                bad("ducts must not be null", () -> s.withDucts(null)),
                bad("unit must not be null", () -> s.withUnit(null)),
                bad("thermostat must not be null", () -> s.withThermostat(null)),
                bad("tariff must not be null", () -> s.withTariff(null)),
                bad("wanted setpoint", () -> s.withWantedSetpoint(null)),
                bad("wanted setpoint is", () -> s.withWantedSetpoint(celsius(60))),
                bad("setpoint", () -> s.runDay(celsius(-10))),
                bad("weather must not be null", () -> s.runSeason(null)),
                bad("contents is 0.0", () -> InstalledSystem.builder().contents(0)),
                bad("moisture buffer is 0.5", () -> InstalledSystem.builder().moistureBuffer(0.5)),
                bad(
                        "thermostat is in room \"cellar\"",
                        () -> Stories.at(false, 2, 6).thermostatRoom("cellar").build()),
                bad(
                        "serves room \"barn\"",
                        () ->
                                s.withDucts(
                                        s.ducts()
                                                .withAddedRuns(
                                                        1,
                                                        inches(6),
                                                        feet(10),
                                                        DuctSystem.SUPPLY_PLENUM,
                                                        "barn"))),
                bad(
                        "serves room \"barn\"",
                        () ->
                                s.withDucts(
                                        s.ducts()
                                                .withReturnAdded(
                                                        "barn return",
                                                        "barn",
                                                        DuctSystem.RETURN_PLENUM,
                                                        Duct.of(
                                                                DuctShape.round(inches(10)),
                                                                feet(5),
                                                                DuctMaterial.GALVANIZED),
                                                        Register.of(inches(10), inches(10))))),
                bad("to review must not be null", () -> Review.of(null)),
                bad("other unit must not be null", () -> Remedy.otherUnit(null)),
                bad("other setpoint", () -> Remedy.otherSetpoint(null)),
                bad("at least one part", () -> Remedy.combine()),
                bad("room of the added runs", () -> Remedy.addRuns(1, inches(6), feet(10), null)),
                bad("diameter of the added return", () -> Remedy.addReturn(null, feet(10), "hall")),
                bad("face area of the larger filter", () -> Remedy.largerFilter(0)),
                bad("evidence needs", () -> new Evidence("x", null)),
                bad("criterion needs", () -> new Criterion("x", fahrenheit(60), " ")),
                bad(
                        "needs evidence",
                        () ->
                                new Finding.Statement(
                                        "t",
                                        "w",
                                        List.of(),
                                        new Criterion("x", fahrenheit(60), "s"),
                                        Severity.NOTE,
                                        Confidence.LOW,
                                        Optional.empty())),
                bad("at least the system as found", () -> new Comparison(List.of(), true)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void is_refused_by_name(String says, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOfAny(IllegalArgumentException.class, NullPointerException.class)
                .hasMessageContaining(says);
    }
}
