package dev.thinair.psychro;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.kilojoulesPerKilogram;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import dev.thinair.working.Working;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AirStreamTest {

    private static MoistAir air(double celsius, double rh, Formulation formulation) {
        return MoistAir.ofDryBulbAndRelativeHumidity(
                celsius(celsius), percent(rh), kilopascals(78), formulation);
    }

    private static double heat(AirStream s) {
        return Si.watts(s.enthalpyFlow(), "enthalpy flow");
    }

    private static double water(AirStream s) {
        return Si.kilogramsPerSecond(s.vaporFlow(), "vapor flow");
    }

    private static void balanced(double in, double out, double scale) {
        assertThat(out).isCloseTo(in, within(1e-12 * scale));
    }

    @ParameterizedTest
    @EnumSource(Formulation.class)
    void balances_close(Formulation f) {
        AirStream warm = AirStream.ofVolumeFlow(air(27, 50, f), cubicFeetPerMinute(1200));
        AirStream hot = AirStream.ofVolumeFlow(air(36, 15, f), cubicFeetPerMinute(150));
        double scale = Math.abs(heat(warm)) + Math.abs(heat(hot));
        AirStream mixed = ((Mixture.Clear) warm.mixedWith(hot)).stream();
        balanced(heat(warm) + heat(hot), heat(mixed), scale);
        balanced(water(warm) + water(hot), water(mixed), water(mixed));
        CoilProcess.Wet coil = (CoilProcess.Wet) warm.throughCoil(celsius(8), ratio(0.15));
        double condensate = Si.kilogramsPerSecond(coil.condensate(), "condensate");
        balanced(water(warm), water(coil.leaving()) + condensate, water(warm));
        double carried =
                condensate * f.model().condensateEnthalpy(coil.leaving().air().dryBulbKelvins());
        balanced(heat(warm), heat(coil.leaving()) + Si.watts(coil.heat(), "q") + carried, scale);
        balanced(
                heat(warm) - heat(coil.leaving()),
                Si.watts(coil.sensibleHeat(), "q_s") + Si.watts(coil.latentHeat(), "q_l"),
                scale);
        assertThat(Si.ratio(coil.sensibleHeatRatio(), "SHR")).isBetween(0.5, 1.0);
        SensibleProcess heating = warm.heatedBy(watts(5000));
        balanced(heat(warm) + 5000, heat(heating.leaving()), scale);
        assertThat(Si.watts(heating.heat(), "q")).isCloseTo(5000, within(1e-7));
        assertThat(Si.watts(warm.heatedTo(celsius(40)).heat(), "q")).isPositive();
        Mixture steamed = warm.humidifiedBy(kilogramsPerSecond(0.001), kilojoulesPerKilogram(2676));
        balanced(heat(warm) + 2676, heat(steamed.stream()), scale);
        balanced(water(warm) + 0.001, water(steamed.stream()), water(warm));
        EvaporativeProcess cooled = hot.evaporativelyCooled(percent(80));
        assertThat(water(cooled.leaving()) - water(hot))
                .isCloseTo(Si.kilogramsPerSecond(cooled.water(), "water"), within(1e-15));
        assertThat(Si.kelvins(cooled.leaving().air().wetBulb(), "t*"))
                .isCloseTo(Si.kelvins(hot.air().wetBulb(), "t*"), within(1e-8));
    }

    @Test
    void coil_surface_is_found_again() {
        AirStream warm =
                AirStream.ofDryAirFlow(air(27, 50, Formulation.IDEAL), kilogramsPerSecond(0.6));
        CoilProcess.Wet coil = (CoilProcess.Wet) warm.throughCoil(celsius(8), ratio(0.15));
        CoilSurface.Wet surface = (CoilSurface.Wet) warm.coilSurfaceTo(coil.leaving().air());
        assertThat(Si.kelvins(surface.apparatusDewPoint(), "ADP")).isCloseTo(281.15, within(1e-7));
        assertThat(Si.ratio(surface.bypassFactor(), "BF")).isCloseTo(0.15, within(1e-8));
        AirStream dry =
                AirStream.ofDryAirFlow(air(30, 15, Formulation.IDEAL), kilogramsPerSecond(0.6));
        CoilProcess.Dry run = (CoilProcess.Dry) dry.throughCoil(celsius(9), ratio(0.15));
        assertThat(Si.kelvins(run.leaving().air().dryBulb(), "t2"))
                .isCloseTo(282.15 + 0.15 * 21, within(1e-9));
        CoilSurface.Dry seen = (CoilSurface.Dry) dry.coilSurfaceTo(run.leaving().air());
        assertThat(seen.dewPoint()).isEqualTo(dry.air().dewPoint());
        assertThat(dry.coilSurfaceWorking(run.leaving().air())).isEmpty();
        AirStream misty =
                AirStream.ofDryAirFlow(
                        MoistAir.saturated(celsius(30), kilopascals(78)), kilogramsPerSecond(1));
        assertThat(misty.throughCoil(celsius(10), ratio(0.5)))
                .isInstanceOf(CoilProcess.NoState.class)
                .hasToString(
                        "no coil state: the line from the entering state to the apparatus dew point"
                                + " runs through fog: the entering air is too close to saturation"
                                + " for the bypass model");
    }

    @Test
    void flows_convert_into_each_other() {
        MoistAir air = air(25, 60, Formulation.IDEAL);
        AirStream stream = AirStream.ofVolumeFlow(air, cubicFeetPerMinute(1000));
        assertThat(Si.cubicMetresPerSecond(stream.volumeFlow(), "V"))
                .isCloseTo(0.4719474432, within(1e-12));
        AirStream again = AirStream.ofMassFlow(air, stream.massFlow());
        assertThat(again.dryAirKilogramsPerSecond())
                .isCloseTo(stream.dryAirKilogramsPerSecond(), within(1e-15));
        assertThat(AirStream.ofDryAirFlow(air, stream.dryAirFlow()))
                .isEqualTo(stream)
                .hasSameHashCodeAs(stream);
        assertThat(stream).isNotEqualTo(AirStream.ofSi(air, 1)).isNotEqualTo("air");
    }

    @Test
    void fog_is_reported_and_conserved() {
        AirStream cold =
                AirStream.ofDryAirFlow(air(-5, 95, Formulation.IDEAL), kilogramsPerSecond(0.5));
        AirStream humid =
                AirStream.ofDryAirFlow(air(30, 95, Formulation.IDEAL), kilogramsPerSecond(0.5));
        Mixture.Fog fog = (Mixture.Fog) cold.mixedWith(humid);
        double liquid = Si.kilogramsPerSecond(fog.liquid(), "liquid");
        assertThat(liquid).isPositive();
        assertThat(Si.kilogramsPerSecond(fog.ice(), "ice")).isZero();
        balanced(water(cold) + water(humid), water(fog.stream()) + liquid, water(humid));
        assertThat(fog.toString()).startsWith("fog: ").contains("liquid");
        assertThat(cold.mixedWith(cold).toString()).startsWith("clear: ");
    }

    private static void ends(Working working, Quantity<?> result) {
        Quantity<?> last = working.result();
        double shown = last.getValue().doubleValue();
        // The working may end in kW or kJ/kg where the result is in W or J/kg.
        double expected = result.getValue().doubleValue();
        double factor = last.getUnit().equals(result.getUnit()) ? 1 : 1000;
        assertThat(shown * factor).isCloseTo(expected, within(1e-13 * Math.abs(expected)));
        for (Working.Step step : working.steps()) {
            double value = step.result().getValue().doubleValue();
            step.recomputed()
                    .ifPresent(
                            again ->
                                    assertThat(again)
                                            .as(step.formula().text())
                                            .isCloseTo(
                                                    value, within(2e-9 * Math.abs(value) + 1e-9)));
        }
        for (String text : List.of(working.toText(), working.toMarkdown(), working.toHtml())) {
            assertThat(text).contains(working.title());
        }
    }

    @ParameterizedTest
    @EnumSource(Formulation.class)
    void workings_end_in_the_result(Formulation f) {
        for (double t : new double[] {-20, 0, 26, 40}) {
            MoistAir air = air(t, 45, f);
            ends(air.working(), air.enthalpy());
            ends(air.wetBulbWorking(), air.wetBulb());
        }
        MoistAir dry =
                MoistAir.ofDryBulbAndRelativeHumidity(celsius(20), percent(0), kilopascals(78), f);
        ends(dry.working(), dry.enthalpy());
        AirStream warm = AirStream.ofVolumeFlow(air(27, 50, f), cubicFeetPerMinute(1200));
        AirStream hot = AirStream.ofVolumeFlow(air(36, 15, f), cubicFeetPerMinute(150));
        AirStream cold = AirStream.ofVolumeFlow(air(-5, 95, f), cubicFeetPerMinute(1200));
        ends(warm.mixingWorking(hot), warm.mixedWith(hot).stream().air().dryBulb());
        AirStream humid = AirStream.ofVolumeFlow(air(30, 95, f), cubicFeetPerMinute(1200));
        ends(humid.mixingWorking(cold), humid.mixedWith(cold).stream().air().dryBulb());
        assertThat(humid.mixingWorking(cold).notes()).contains("The air leaves with fog in it.");
        CoilProcess.Wet wet = (CoilProcess.Wet) warm.throughCoil(celsius(8), ratio(0.15));
        ends(wet.working(), wet.heat());
        CoilProcess.Dry run = (CoilProcess.Dry) hot.throughCoil(celsius(12), ratio(0.15));
        ends(run.working(), run.heat());
        SensibleProcess heating = warm.heatedBy(watts(5000));
        ends(heating.working(), heating.heat());
        EvaporativeProcess cooled = hot.evaporativelyCooled(percent(80));
        ends(cooled.working(), cooled.water());
        ends(
                warm.humidifyingWorking(kilogramsPerSecond(0.001), kilojoulesPerKilogram(2676)),
                warm.humidifiedBy(kilogramsPerSecond(0.001), kilojoulesPerKilogram(2676)).stream()
                        .air()
                        .dryBulb());
        MoistAir behind = wet.leaving().air();
        ends(
                warm.coilSurfaceWorking(behind).orElseThrow(),
                ((CoilSurface.Wet) warm.coilSurfaceTo(behind)).bypassFactor());
        CoilProcess.Wet frosting =
                (CoilProcess.Wet)
                        AirStream.ofDryAirFlow(air(4, 80, f), kilogramsPerSecond(0.5))
                                .throughCoil(celsius(-6), ratio(0.1));
        ends(frosting.working(), frosting.heat());
    }

    @Test
    void text_reads_well_in_both_systems() {
        MoistAir air =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        fahrenheit(95), percent(20), kilopascals(77.6));
        assertThat(air)
                .hasToString(
                        "35 °C (95 °F), 20 % RH, 9.154 g/kg (64.08 gr/lb), wet bulb 17.48 °C"
                                + " (63.47 °F), dew point 8.707 °C (47.67 °F), enthalpy 58.7 kJ/kg,"
                                + " density 0.8725 kg/m3 (0.05447 lb/ft3), at 77.6 kPa (22.92"
                                + " inHg)");
        AirStream stream = AirStream.ofVolumeFlow(air, cubicFeetPerMinute(1200));
        assertThat(stream.toString())
                .startsWith("0.5663 m3/s (1200 cfm) (0.4896 kg/s dry air) of 35 °C");
        assertThat(air.with(Formulation.REAL).toString()).endsWith("real formulation");
        assertThat(stream.throughCoil(celsius(7), ratio(0.12)).toString())
                .startsWith("wet coil removes 13430 W (45810 BTU/h), sensible heat ratio 0.916");
        assertThat(stream.throughCoil(celsius(12), ratio(0.12)).toString())
                .startsWith("dry coil removes ");
        assertThat(stream.evaporativelyCooled(percent(85)).toString()).startsWith("evaporates ");
        assertThat(stream.heatedBy(watts(1000)).toString()).startsWith("sensible heat 1000 W");
    }

    @Test
    void equal_states_are_equal() {
        MoistAir a = air(25, 50, Formulation.IDEAL);
        MoistAir b = air(25, 50, Formulation.IDEAL);
        assertThat(a).isEqualTo(b).hasSameHashCodeAs(b).isNotEqualTo("air");
        assertThat(a).isNotEqualTo(air(26, 50, Formulation.IDEAL));
        assertThat(a).isNotEqualTo(air(25, 51, Formulation.IDEAL));
        assertThat(a).isNotEqualTo(a.atPressure(kilopascals(80)));
        assertThat(a).isNotEqualTo(a.with(Formulation.REAL));
        assertThat(a.atDryBulb(celsius(30)).humidityRatio()).isEqualTo(a.humidityRatio());
    }
}
