package dev.thinair.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.format.SimpleUnitFormat;

class QuantityTextTest {

    private static Arguments read(Class<?> type, String text, double si) {
        return Arguments.of(type, text, si);
    }

    static Stream<Arguments> texts() {
        double uIp = 1055.05585262 / 3600 / 0.09290304 * 1.8;
        return Stream.of(
                read(Length.class, "7200 ft", 2194.56),
                read(Length.class, "6 in", 0.1524),
                read(Length.class, "2195 m", 2195),
                read(Length.class, "150 mm", 0.15),
                read(Length.class, "15 cm", 0.15),
                read(Area.class, "1800 ft2", 1800 * 0.09290304),
                read(Area.class, "1800 sq ft", 1800 * 0.09290304),
                read(Area.class, "120 m2", 120),
                read(Area.class, "120 m²", 120),
                read(Area.class, "100 cm2", 0.01),
                read(Area.class, "10 in2", 0.0064516),
                read(Volume.class, "14000 ft3", 14000 * 0.028316846592),
                read(Volume.class, "400 m3", 400),
                read(Mass.class, "3 lb", 3 * 0.45359237),
                read(Time.class, "10 min", 600),
                read(Time.class, "2 h", 7200),
                read(Time.class, "90 s", 90),
                read(Speed.class, "700 fpm", 3.556),
                read(Speed.class, "3.5 m/s", 3.5),
                read(Speed.class, "15 mph", 6.7056),
                read(Speed.class, "36 km/h", 10),
                read(Speed.class, "10 ft/s", 3.048),
                read(Angle.class, "180 deg", Math.PI),
                read(Angle.class, "0.5 rad", 0.5),
                read(Temperature.class, "95 degF", 308.15),
                read(Temperature.class, "95 °F", 308.15),
                read(Temperature.class, "95 F", 308.15),
                read(Temperature.class, "35 degC", 308.15),
                read(Temperature.class, "35°C", 308.15),
                read(Temperature.class, "-40 C", 233.15),
                read(Temperature.class, "−40 C", 233.15),
                read(Temperature.class, "300 K", 300),
                read(TemperatureDifference.class, "18 degF_diff", 10),
                read(TemperatureDifference.class, "18 Δ°F", 10),
                read(TemperatureDifference.class, "10 K", 10),
                read(TemperatureDifference.class, "10 degC_diff", 10),
                read(Pressure.class, "0.5 in. w.g.", 124.544455),
                read(Pressure.class, "0.5 inH2O", 124.544455),
                read(Pressure.class, "0.5 in. w.c.", 124.544455),
                read(Pressure.class, "125 Pa", 125),
                read(Pressure.class, "77.5 kPa", 77500),
                read(Pressure.class, "775 hPa", 77500),
                read(Pressure.class, "29.92 inHg", 29.92 * 3386.388640341),
                read(Pressure.class, "14.696 psi", 14.696 * 4.4482216152605 / 0.00064516),
                read(VolumeFlow.class, "1200 cfm", 1200 * 0.028316846592 / 60),
                read(VolumeFlow.class, "1200 CFM", 1200 * 0.028316846592 / 60),
                read(VolumeFlow.class, "566 L/s", 0.566),
                read(VolumeFlow.class, "0.5 m3/s", 0.5),
                read(VolumeFlow.class, "1800 m³/h", 0.5),
                read(MassFlow.class, "1 kg/s", 1),
                read(MassFlow.class, "4000 lb/h", 4000 * 0.45359237 / 3600),
                read(Power.class, "36000 BTU/h", 10 * 1055.05585262),
                read(Power.class, "36000 Btu/h", 10 * 1055.05585262),
                read(Power.class, "36 kBtu/h", 10 * 1055.05585262),
                read(Power.class, "3 ton", 10 * 1055.05585262),
                read(Power.class, "3.5 kW", 3500),
                read(Power.class, "350 W", 350),
                read(Energy.class, "2 kWh", 7.2e6),
                read(Energy.class, "1 therm", 105505585.262),
                read(Energy.class, "5 MJ", 5e6),
                read(HumidityRatio.class, "70 gr/lb", 0.01),
                read(HumidityRatio.class, "10 g/kg", 0.01),
                read(HumidityRatio.class, "0.01 kg/kg", 0.01),
                read(SpecificEnthalpy.class, "10 BTU/lb", 23260),
                read(SpecificEnthalpy.class, "23.26 kJ/kg", 23260),
                read(SpecificEnthalpy.class, "23260 J/kg", 23260),
                read(SpecificVolume.class, "1 m3/kg", 1),
                read(Density.class, "0.075 lb/ft3", 0.075 * 0.45359237 / 0.028316846592),
                read(Density.class, "1.2 kg/m3", 1.2),
                read(ThermalTransmittance.class, "0.3 BTU/h/ft2/degF", 0.3 * uIp),
                read(ThermalTransmittance.class, "0.3 BTU/(h*ft2*°F)", 0.3 * uIp),
                read(ThermalTransmittance.class, "0.3 BTU/h·ft²·°F", 0.3 * uIp),
                read(ThermalTransmittance.class, "1.7 kW/km2-mK", 1.7),
                read(ThermalTransmittance.class, "1.7 W/m2/K", 1.7),
                read(ThermalTransmittance.class, "1.7 W/(m2 K)", 1.7),
                read(ThermalTransmittance.class, "1.7 W/(m²·K)", 1.7),
                read(ThermalResistance.class, "13 h*ft2*degF/BTU", 13 / uIp),
                read(ThermalResistance.class, "R-13", 13 / uIp),
                read(ThermalResistance.class, "R13", 13 / uIp),
                read(ThermalResistance.class, "2.3 m2*K/W", 2.3),
                read(ThermalConductivity.class, "0.12 W/m/K", 0.12),
                read(ThermalConductivity.class, "1 BTU*in/h/ft2/degF", uIp * 0.0254),
                read(ThermalConductance.class, "400 BTU/h/degF", 400 * uIp * 0.09290304),
                read(ThermalConductance.class, "200 W/K", 200),
                read(SpecificHeat.class, "1000 J/kg/K", 1000),
                read(SpecificHeat.class, "0.24 BTU/lb/degF", 0.24 * 4186.8),
                read(SpecificHeat.class, "1 kJ/(kg K)", 1000),
                read(HeatCapacity.class, "5e6 J/K", 5e6),
                read(HeatFlux.class, "800 W/m2", 800),
                read(HeatFlux.class, "250 BTU/h/ft2", 250 * 1055.05585262 / 3600 / 0.09290304),
                read(FrictionRate.class, "0.8 Pa/m", 0.8),
                read(FrictionRate.class, "0.08 in. w.g./100 ft", 0.08 * 249.08891 / 30.48),
                read(DynamicViscosity.class, "1.8e-5 Pa*s", 1.8e-5),
                read(FlowPerCapacity.class, "400 cfm/ton", 400 * 4.719474432e-4 / 3516.8528420667),
                read(AirChangeRate.class, "0.36 ACH", 1e-4),
                read(AirChangeRate.class, "0.36 1/h", 1e-4),
                read(Dimensionless.class, "20 %", 0.2),
                read(Dimensionless.class, "20%", 0.2),
                read(Dimensionless.class, "0.2", 0.2),
                read(Dimensionless.class, "3 people", 3),
                read(Dimensionless.class, "+.5", 0.5));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("texts")
    <Q extends Quantity<Q>> void the_trade_s_text_is_read(Class<Q> type, String text, double si) {
        Quantity<Q> quantity = QuantityText.parse(text, type);
        double value = Crossing.convert(quantity, Kind.of(type).si());
        assertThat(value).isCloseTo(si, within(1e-12 * Math.abs(si)));
    }

    private static Arguments refuse(Class<?> type, String text, String message) {
        return Arguments.of(type, text, message);
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                refuse(
                        Length.class,
                        "7200 kg",
                        "\"7200 kg\" is not a length: kg measures mass; write for example \"7200"
                                + " ft\""),
                refuse(
                        Length.class,
                        "7200",
                        "\"7200\" is not a length: it has no unit; write for example \"7200 ft\""),
                refuse(
                        Length.class,
                        "7,200 ft",
                        "\"7,200 ft\" is not a length: numbers are written without commas; write"
                                + " for example \"7200 ft\""),
                refuse(
                        Length.class,
                        "high",
                        "\"high\" is not a length: it does not begin with a number; write for"
                                + " example \"7200 ft\""),
                refuse(
                        Length.class,
                        "",
                        "\"\" is not a length: it does not begin with a number; write for example"
                                + " \"7200 ft\""),
                refuse(
                        Length.class,
                        "12 fet",
                        "\"12 fet\" is not a length: unit \"fet\" is unknown; known are ft, in, m,"
                                + " mm, cm, km, mi; write for example \"7200 ft\""),
                refuse(
                        Length.class,
                        "1e999 m",
                        "\"1e999 m\" is not a length: the number is too large; write for example"
                                + " \"7200 ft\""),
                refuse(
                        Length.class,
                        "6 1/2 in",
                        "\"6 1/2 in\" is not a length: unit \"1/2 in\" is unknown; known are ft,"
                                + " in, m, mm, cm, km, mi; write for example \"7200 ft\""),
                refuse(
                        Length.class,
                        "12 NaN",
                        "\"12 NaN\" is not a length: unit \"NaN\" is unknown; known are ft, in, m,"
                                + " mm, cm, km, mi; write for example \"7200 ft\""),
                refuse(
                        Length.class,
                        "3 ft*lb",
                        "\"3 ft*lb\" is not a length: ft*lb does not measure it; write for example"
                                + " \"7200 ft\""),
                refuse(
                        TemperatureDifference.class,
                        "10 degF",
                        "\"10 degF\" is a temperature, not a temperature difference; write for"
                                + " example \"18 degF_diff\", \"10 degC_diff\" or \"10 K\""),
                refuse(
                        TemperatureDifference.class,
                        "10 °C",
                        "\"10 °C\" is a temperature, not a temperature difference; write for"
                                + " example \"18 degF_diff\", \"10 degC_diff\" or \"10 K\""),
                refuse(
                        Temperature.class,
                        "18 degF_diff",
                        "\"18 degF_diff\" is not a temperature: degF_diff measures temperature"
                                + " difference; write for example \"95 degF\""),
                refuse(
                        Dimensionless.class,
                        "30 deg",
                        "\"30 deg\" is not a ratio: deg measures angle; write for example \"20"
                                + " %\""),
                refuse(
                        HumidityRatio.class,
                        "20 %",
                        "\"20 %\" is not a humidity ratio: % measures a ratio or a count; write"
                                + " for example \"60 gr/lb\""),
                refuse(
                        Power.class,
                        "36000 BTU",
                        "\"36000 BTU\" is not a power: BTU measures energy; write for example"
                                + " \"36000 BTU/h\""),
                refuse(
                        VolumeFlow.class,
                        "0.5 in. w.g.",
                        "\"0.5 in. w.g.\" is not a volume flow: in. w.g. measures pressure; write"
                                + " for example \"1200 cfm\""),
                refuse(
                        ThermalTransmittance.class,
                        "1.7 W/K",
                        "\"1.7 W/K\" is not a thermal transmittance (U-factor): W/K measures"
                                + " thermal conductance (UA); write for example \"0.30"
                                + " BTU/h/ft2/degF\""),
                refuse(
                        ThermalResistance.class,
                        "R-",
                        "\"R-\" is not a thermal resistance (R-value): it does not begin with a"
                                + " number; write for example \"R-13\""),
                refuse(
                        Speed.class,
                        "5 m/(s",
                        "\"5 m/(s\" is not a speed: unit \"m/(s\" is unknown; known are fpm, m/s,"
                                + " mph, km/h; write for example \"700 fpm\""),
                refuse(
                        Area.class,
                        "5 m^",
                        "\"5 m^\" is not an area: unit \"m^\" is unknown; known are ft2, m2, in2,"
                                + " cm2; write for example \"1800 ft2\""));
    }

    @ParameterizedTest(name = "[{1}]")
    @MethodSource("refusals")
    <Q extends Quantity<Q>> void what_cannot_be_meant_is_refused_in_one_line(
            Class<Q> type, String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> QuantityText.parse(text, type))
                .withMessage(message);
    }

    @Test
    void null_and_unknown_types_are_refused() {
        assertThatNullPointerException()
                .isThrownBy(() -> QuantityText.parse(null, Length.class))
                .withMessage("text is null");
        assertThatNullPointerException()
                .isThrownBy(() -> QuantityText.format(null))
                .withMessage("quantity is null");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                QuantityText.parse(
                                        "5 A", javax.measure.quantity.ElectricCurrent.class))
                .withMessage("no text form is known for ElectricCurrent");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> QuantityText.format(Units.feet(1), 0))
                .withMessageContaining("significant digits is 0");
    }

    // Plain left-to-right division, where the unit library would read W K/m2.
    @Test
    void quotients_go_from_left_to_right() {
        assertThat(QuantityText.parse("1 W/m2/K", ThermalTransmittance.class).getUnit())
                .isSameAs(Units.WATT_PER_SQUARE_METRE_KELVIN);
    }

    @Test
    void both_systems_are_printed_what_was_given_first() {
        assertThat(QuantityText.formatBoth(Units.feet(7200), 4)).isEqualTo("7200 ft (2195 m)");
        assertThat(QuantityText.formatBoth(Units.metres(2195), 4)).isEqualTo("2195 m (7201 ft)");
        assertThat(QuantityText.formatBoth(Units.fahrenheit(95), 3)).isEqualTo("95 °F (35 °C)");
        assertThat(QuantityText.formatBoth(Units.fahrenheit(32), 3)).isEqualTo("32 °F (0 °C)");
        assertThat(QuantityText.formatBoth(Units.fahrenheitDifference(18), 3))
                .isEqualTo("18 Δ°F (10 K)");
        assertThat(QuantityText.formatBoth(Units.tonsOfRefrigeration(3), 3))
                .isEqualTo("3 ton (10.6 kW)");
        assertThat(QuantityText.formatBoth(Units.percent(20), 3)).isEqualTo("20 %");
        assertThat(QuantityText.formatBoth(Units.pascals(125), 3))
                .isEqualTo("125 Pa (0.502 in. w.g.)");
        assertThat(QuantityText.formatBoth(Units.pascals(77_541), 4))
                .isEqualTo("77540 Pa (22.9 inHg)");
        assertThat(QuantityText.formatIn(Units.tonsOfRefrigeration(3), Units.BTU_PER_HOUR, 5))
                .isEqualTo("36000 BTU/h");
        assertThat(Units.inchesOfWater(0.5)).hasToString("0.5 in. w.g.");
        assertThat(Units.degrees(30)).hasToString("30°");
        assertThat(Units.ratio(0.2)).hasToString("0.2");
    }

    @Test
    void numbers_are_rounded_half_up_and_kept_short() {
        assertThat(QuantityText.number(2194.56, 4)).isEqualTo("2195");
        assertThat(QuantityText.number(0.125, 2)).isEqualTo("0.13");
        assertThat(QuantityText.number(-0.125, 2)).isEqualTo("-0.13");
        assertThat(QuantityText.number(0, 3)).isEqualTo("0");
        assertThat(QuantityText.number(1.2e-7, 3)).isEqualTo("1.2e-7");
        assertThat(QuantityText.number(2.5e12, 3)).isEqualTo("2.5e12");
        assertThat(QuantityText.number(100_000, 1)).isEqualTo("100000");
    }

    @Test
    void no_locale_changes_the_text() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Units.inchesOfWater(0.5)).hasToString("0.5 in. w.g.");
            assertThat(QuantityText.parse("0.5 in. w.g.", Pressure.class))
                    .isEqualTo(Units.inchesOfWater(0.5));
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(QuantityText.parse("5 MIN", Time.class)).isEqualTo(Units.minutes(5));
            assertThat(QuantityText.parse("5 IN", Length.class)).isEqualTo(Units.inches(5));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void the_embedder_s_unit_format_is_left_alone() {
        QuantityText.parse("5 ft/s", Speed.class);
        assertThat(SimpleUnitFormat.getInstance().format(Units.FOOT)).isEqualTo("m*0.3048");
        assertThatThrownBy(() -> SimpleUnitFormat.getInstance().parse("cfm"))
                .isInstanceOf(MeasurementParseException.class);
        assertThat(SimpleUnitFormat.getInstance().parse("C").getDimension())
                .isNotEqualTo(Units.KELVIN.getDimension());
    }

    @Test
    void a_unit_of_somebody_s_own_is_printed_by_the_unit_library() {
        assertThat(QuantityText.format(Units.quantity(3, Units.METRE.multiply(7)))).contains("7");
        assertThat(QuantityText.formatBoth(Units.quantity(3, Units.METRE.multiply(7)), 3))
                .doesNotContain("(3");
    }
}
