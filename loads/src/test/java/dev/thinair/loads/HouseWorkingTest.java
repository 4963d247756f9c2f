package dev.thinair.loads;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.millimetres;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import dev.thinair.working.Working;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A working ends at the result, and each of its steps recomputes. */
class HouseWorkingTest {

    static Stream<Assembly> assemblies() {
        return Stream.concat(
                Assemblies.all().stream(),
                Stream.of(FramedAssembly.Method.values())
                        .map(
                                m ->
                                        FramedAssembly.named("wall by " + m)
                                                .layer(Materials.WOOD_SIDING.layer(millimetres(12)))
                                                .bridged(
                                                        Materials.BATT.layer(millimetres(89)),
                                                        Materials.SOFTWOOD.layer(millimetres(89)))
                                                .layer(
                                                        Materials.GYPSUM_BOARD.layer(
                                                                millimetres(12)))
                                                .framing(percent(25))
                                                .method(m)
                                                .build()));
    }

    @ParameterizedTest
    @MethodSource("assemblies")
    void u_values(Assembly assembly) {
        for (HeatFlow flow : HeatFlow.values()) {
            Working w = assembly.working(flow);
            recomputes(w);
            double u = Si.wattsPerSquareMetreKelvin(assembly.transmittance(flow), "U");
            assertThat(w.result().getValue().doubleValue()).isCloseTo(u, within(1e-12));
        }
    }

    @Test
    void room_peak() {
        Site site = SampleHouses.site(2000);
        CompiledHouse house = SampleHouses.tenRooms().compile(site);
        DesignLoad load =
                house.coolingLoad(SampleHouses.hotDay(site), Setpoint.residentialCooling());
        for (String room : load.rooms()) {
            Working w = load.working(room, celsius(13));
            recomputes(w);
            assertThat(w.result().getValue().doubleValue())
                    .isCloseTo(
                            Si.kilogramsPerSecond(load.airMass(room, celsius(13)), "mass"),
                            within(1e-15));
            assertThat(w.toText()).contains(room);
        }
        DesignLoad cold =
                house.heatingLoad(SampleHouses.coldDay(site), Setpoint.residentialHeating());
        recomputes(cold.working("room 1", celsius(45)));
    }

    private static void recomputes(Working w) {
        for (Working.Step step : w.steps()) {
            step.recomputed()
                    .ifPresent(
                            again -> {
                                double shown = step.result().getValue().doubleValue();
                                assertThat(again)
                                        .as(step.symbol())
                                        .isCloseTo(
                                                shown,
                                                within(1e-10 * Math.max(1, Math.abs(shown))));
                            });
        }
        assertThat(w.steps()).anyMatch(s -> s.recomputed().isPresent());
    }
}
