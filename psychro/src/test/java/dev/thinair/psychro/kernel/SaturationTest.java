package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaturationTest {

    // ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1 eqs. (5) and (6), computed in 30-digit
    // arithmetic (reference cases PA-A027 to PA-A043); tolerance 1e-9 relative is the last printed
    // digit.
    @ParameterizedTest
    @CsvSource({
        "-100, 0.001405102124", "-60, 1.081673166", "-40, 12.8452493", "-20, 103.2603786",
        "-10, 259.902865", "-1, 562.6715296", "0, 611.2128675", "0.01, 611.6570279",
        "5, 872.4866543", "20, 2338.8037", "35, 5627.819447", "60, 19943.76062",
        "100, 101418.7168", "120, 198685.1571", "200, 1555073.746"
    })
    void pressure_is_that_of_Hyland_and_Wexler(double celsius, double pascals) {
        double pressure = Saturation.pressure(celsius + 273.15);
        assertThat(pressure).isCloseTo(pascals, within(1e-9 * pascals));
        assertThat(Saturation.temperature(pressure) - 273.15).isCloseTo(celsius, within(1e-12));
    }

    @Test
    void at_0_degC_the_two_curves_differ_and_the_liquid_one_is_used() {
        assertThat(Saturation.pressureOverIce(273.15)).isCloseTo(611.1535709, within(6e-7));
        assertThat(Saturation.pressureOverLiquid(273.15)).isCloseTo(611.2128675, within(6e-7));
        assertThat(Saturation.pressure(273.15)).isEqualTo(Saturation.pressureOverLiquid(273.15));
        assertThat(Saturation.pressure(Math.nextDown(273.15)))
                .isCloseTo(Saturation.pressureOverIce(273.15), within(1e-9));
    }

    @Test
    void vapor_pressures_in_the_gap_answer_0_degC() {
        double ice = Saturation.pressureOverIce(273.15);
        double liquid = Saturation.pressureOverLiquid(273.15);
        assertThat(Saturation.temperature(ice)).isEqualTo(273.15);
        assertThat(Saturation.temperature(Math.nextUp(ice))).isEqualTo(273.15);
        assertThat(Saturation.temperature((ice + liquid) / 2)).isEqualTo(273.15);
        assertThat(Saturation.temperature(Math.nextDown(liquid))).isEqualTo(273.15);
        assertThat(Saturation.temperature(liquid)).isEqualTo(273.15);
        // The price of that answer: how far 0 degC is from each curve's own temperature there.
        assertThat((liquid - ice) / Saturation.slope(Math.nextDown(273.15))).isLessThan(0.0013);
    }

    // Just outside the gap, the temperature is again on its own curve and not at 0 degC.
    @Test
    void vapor_pressures_beside_the_gap_answer_their_own_curve() {
        double ice = Saturation.pressureOverIce(273.15) * (1 - 1e-12);
        double liquid = Saturation.pressureOverLiquid(273.15) * (1 + 1e-12);
        assertThat(273.15 - Saturation.temperature(ice)).isBetween(1.1e-11, 1.3e-11);
        assertThat(Saturation.temperature(liquid) - 273.15).isBetween(1.3e-11, 1.5e-11);
    }

    // Roots of eqs. (5) and (6) in 40-digit arithmetic for the pressures as they stand here.
    @ParameterizedTest
    @CsvSource({
        "0.002, 174.897599552116061", "0.05, 192.595883273229641", "1, 212.571159193028568",
        "12.5, 232.909458459498278", "103, 253.123694527680751", "400, 268.098525648879018",
        "611.15, 273.149929045307995", "611.22, 273.15016063585548", "700, 275.031531911625154",
        "1000, 280.121476136214489", "2339, 293.151354907368071", "5000, 306.028115817485413",
        "12500, 323.393718126847128", "40000, 349.008646872106539", "101325, 373.124099062948281",
        "300000, 406.670068589534859", "800000, 443.553987842953305", "1555000, 473.147733015663256"
    })
    void temperature_is_the_root_within_its_rounding(double pascals, double kelvins) {
        assertThat(Saturation.temperature(pascals)).isCloseTo(kelvins, within(4e-13));
    }

    @ParameterizedTest
    @CsvSource({
        "173.15", "200", "240", "272", "273.1", "273.15", "274", "300", "350", "420", "473"
    })
    void slope_is_the_derivative(double t) {
        double low = t == 273.15 ? t : t - 1e-3;
        double high = low + 2e-3;
        if (t == 173.15) {
            low = t;
        }
        double middle = (low + high) / 2;
        double difference = (Saturation.pressure(high) - Saturation.pressure(low)) / (high - low);
        assertThat(Saturation.slope(middle)).isCloseTo(difference, within(1e-7 * difference));
    }

    @Test
    void ends_of_the_domain_come_back_from_their_own_pressures() {
        assertThat(Saturation.temperature(Saturation.pressure(173.15)))
                .isCloseTo(173.15, within(1e-12))
                .isGreaterThanOrEqualTo(173.15);
        assertThat(Saturation.temperature(Saturation.pressure(473.15)))
                .isCloseTo(473.15, within(1e-12))
                .isLessThanOrEqualTo(473.15);
    }

    @Test
    void inverse_holds_everywhere_and_the_pressure_rises() {
        double before = 0;
        for (int i = 0; i <= 30_000; i++) {
            double t = Math.min(173.15 + i * 0.01, 473.15);
            double pressure = Saturation.pressure(t);
            assertThat(pressure).isGreaterThan(before);
            assertThat(Math.abs(Saturation.temperature(pressure) - t)).isLessThan(1e-12);
            before = pressure;
        }
    }

    // IAPWS R7-97 tables 35 and 36 and R14-08 table 3 (reference cases PA-A001 to PA-A003); the
    // last printed digit.
    @Test
    void international_equations_meet_their_check_values() {
        assertThat(IapwsSaturation.liquidPressure(300)).isCloseTo(3536.58941, within(5e-6));
        assertThat(IapwsSaturation.liquidPressure(500)).isCloseTo(2.63889776e6, within(5e-3));
        assertThat(IapwsSaturation.liquidPressure(600)).isCloseTo(1.23443146e7, within(5e-2));
        assertThat(IapwsSaturation.liquidTemperature(1e5)).isCloseTo(372.755919, within(5e-7));
        assertThat(IapwsSaturation.liquidTemperature(1e6)).isCloseTo(453.035632, within(5e-7));
        assertThat(IapwsSaturation.liquidTemperature(1e7)).isCloseTo(584.149488, within(5e-7));
        assertThat(IapwsSaturation.icePressure(230)).isCloseTo(8.94735, within(5e-6));
        assertThat(IapwsSaturation.icePressure(255.15)).isCloseTo(124.897196, within(1e-6));
        assertThat(IapwsSaturation.icePressure(173.15)).isCloseTo(0.0014048533, within(1e-10));
        assertThat(IapwsSaturation.icePressure(273.16)).isCloseTo(611.657, within(1e-5));
    }

    @Test
    void international_equations_agree_with_Hyland_and_Wexler_as_stated() {
        for (double t = 173.15; t <= 273.15; t += 0.5) {
            assertThat(Saturation.pressureOverIce(t) / IapwsSaturation.icePressure(t) - 1)
                    .isBetween(-1e-5, 0.00033);
        }
        for (double t = 273.15; t <= 473.15; t += 0.5) {
            assertThat(Saturation.pressureOverLiquid(t) / IapwsSaturation.liquidPressure(t) - 1)
                    .isBetween(-0.0002, 0.00027);
        }
    }

    @Test
    void slope_of_the_ice_equation_is_its_derivative() {
        for (double t = 180; t < 273; t += 7) {
            double difference =
                    (Math.log(IapwsSaturation.icePressure(t + 1e-3))
                                    - Math.log(IapwsSaturation.icePressure(t - 1e-3)))
                            / 2e-3;
            assertThat(IapwsSaturation.iceLogSlope(t)).isCloseTo(difference, within(1e-8));
        }
    }

    // The series from which the inverse is made, held against the curves that it stands for.
    @Test
    void series_about_a_temperature_give_the_curves_around_it() {
        for (double d : new double[] {-4, -1, 0.5, 3}) {
            for (double t = 180; t < 270; t += 12) {
                double rise = Saturation.logOverIce(t + d) - Saturation.logOverIce(t);
                assertThat(sum(Saturation.taylorOverIce(t, 9), d)).isCloseTo(rise, within(2e-13));
            }
            for (double t = 280; t < 470; t += 17) {
                double rise = Saturation.logOverLiquid(t + d) - Saturation.logOverLiquid(t);
                assertThat(sum(Saturation.taylorOverLiquid(t, 9), d))
                        .isCloseTo(rise, within(2e-13));
            }
        }
    }

    private static double sum(double[] a, double d) {
        double sum = 0;
        for (int n = a.length - 1; n >= 1; n--) {
            sum = d * (a[n] + sum);
        }
        return sum;
    }

    @Test
    void slope_and_bend_are_the_first_terms_of_the_series() {
        for (double t = 174; t < 273; t += 11) {
            double[] a = Saturation.taylorOverIce(t, 4);
            assertThat(Saturation.logSlopeOverIce(t, 1 / t)).isCloseTo(a[1], within(1e-15));
            assertThat(Saturation.logBendOverIce(t, 1 / t)).isCloseTo(2 * a[2], within(1e-16));
        }
        for (double t = 274; t < 473; t += 11) {
            double[] a = Saturation.taylorOverLiquid(t, 4);
            assertThat(Saturation.logSlopeOverLiquid(t, 1 / t)).isCloseTo(a[1], within(1e-15));
            assertThat(Saturation.logBendOverLiquid(t, 1 / t)).isCloseTo(2 * a[2], within(1e-16));
        }
    }

    @Test
    void at_0_degC_the_slope_is_the_liquid_one() {
        double liquid = (Saturation.pressure(273.151) - Saturation.pressure(273.15)) / 1e-3;
        assertThat(Saturation.slope(273.15)).isCloseTo(liquid, within(0.01));
        assertThat(Saturation.slope(Math.nextDown(273.15)) - liquid).isGreaterThan(3);
    }
}
