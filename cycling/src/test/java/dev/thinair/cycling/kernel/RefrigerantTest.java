package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefrigerantTest {

    private static Refrigerant named(String name) {
        return switch (name) {
            case "R-410A" -> Refrigerant.R410A;
            case "R-32" -> Refrigerant.R32;
            default -> Refrigerant.R22;
        };
    }

    // Saturated vapour pressures from CoolProp 8.0.0; 0.06 % is the fit's own bound.
    @ParameterizedTest
    @CsvSource({
        "R-410A, -20, 399304.64",
        "R-410A, 0, 798082.98",
        "R-410A, 40, 2418608.53",
        "R-410A, 60, 3834827.70",
        "R-32, 0, 813101.26",
        "R-32, 40, 2478313.21",
        "R-22, 0, 497987.89",
        "R-22, 60, 2427487.44"
    })
    void saturation_pressure(String name, double celsius, double pascals) {
        Refrigerant r = named(name);
        assertThat(r.saturationPressure(celsius + 273.15) / pascals).isCloseTo(1, within(7e-4));
        assertThat(r.saturationTemperature(r.saturationPressure(celsius + 273.15)))
                .isCloseTo(celsius + 273.15, within(1e-9));
    }

    @Test
    void r410a_freezes_at_the_pressure_the_trade_quotes() {
        // Reference case CYC-FRZ-01: 102 psig, 32 degF, tolerance 0.5 degF.
        double t = Refrigerant.R410A.saturationTemperature((102 + 14.695949) * 6_894.757293);
        assertThat(t * 1.8 - 459.67).isCloseTo(32, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"R-410A", "R-32", "R-22"})
    void properties_move_the_right_way(String name) {
        Refrigerant r = named(name);
        for (double t = 250; t < 298; t += 1) {
            assertThat(r.suctionDensity(t + 1)).isGreaterThan(r.suctionDensity(t));
            assertThat(r.saturationPressure(t + 1)).isGreaterThan(r.saturationPressure(t));
            assertThat(r.refrigeratingEffect(t, 318)).isPositive();
            assertThat(r.refrigeratingEffect(t, 319)).isLessThan(r.refrigeratingEffect(t, 318));
            assertThat(r.isentropicWork(t, 319)).isGreaterThan(r.isentropicWork(t, 318));
            assertThat(r.isentropicWork(t + 1, 319)).isLessThan(r.isentropicWork(t, 319));
        }
        assertThat(r.isentropicWork(300, 300)).isCloseTo(0, within(1e-9));
        assertThat(r).hasToString(name);
    }

    @Test
    void slopes_are_the_derivatives() {
        Refrigerant r = Refrigerant.R410A;
        for (double t = 260; t < 340; t += 10) {
            double d = 1e-3;
            assertThat(r.lnPressureSlope(t))
                    .isCloseTo((r.lnPressure(t + d) - r.lnPressure(t - d)) / (2 * d), within(1e-8));
            assertThat(r.liquidEnthalpySlope(t))
                    .isCloseTo(
                            (r.liquidEnthalpy(t + d) - r.liquidEnthalpy(t - d)) / (2 * d),
                            within(1e-4));
        }
    }

    @Test
    void own_refrigerants_are_checked() {
        double[] three = {1, 2, 3};
        double[] four = {1, 2, 3, 4};
        assertThatThrownBy(() -> Refrigerant.of("", four, three, three, four, 1.1))
                .hasMessageContaining("refrigerant name is missing");
        assertThatThrownBy(() -> Refrigerant.of("x", three, three, three, four, 1.1))
                .hasMessageContaining("pressure fit needs 4 coefficients, but got 3");
        assertThatThrownBy(() -> Refrigerant.of("x", four, null, three, four, 1.1))
                .hasMessageContaining("density fit needs 3 coefficients, but got none");
        assertThatThrownBy(
                        () ->
                                Refrigerant.of(
                                        "x",
                                        four,
                                        three,
                                        new double[] {1, 2, Double.NaN},
                                        four,
                                        1.1))
                .hasMessageContaining("suction gas enthalpy fit holds the non-finite coefficient");
        assertThatThrownBy(() -> Refrigerant.of("x", four, three, three, four, 1))
                .hasMessageContaining("isentropic exponent is 1.0");
        assertThatThrownBy(() -> Refrigerant.R32.saturationTemperature(1))
                .hasMessageContaining("refrigerant pressure is 1.0 Pa");
    }
}
