package dev.thinair.altitude.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {

    // ASHRAE Handbook - Fundamentals 2021 (SI), ch. 1, Table 1, read in a public transcription
    // (reference cases PA-H001..H014). 0.5 Pa is the table's rounding, 0.25 Pa its coefficients.
    @ParameterizedTest
    @CsvSource({
        "-500, 107478, 18.2",
        "0, 101325, 15.0",
        "500, 95461, 11.8",
        "1000, 89875, 8.5",
        "2000, 79495, 2.0",
        "3000, 70108, -4.5",
        "5000, 54020, -17.5"
    })
    void handbook_table_by_geopotential_altitude(double h, double pascals, double celsius) {
        assertThat(StandardAtmosphere.pressure(h)).isCloseTo(pascals, within(0.75));
        assertThat(StandardAtmosphere.temperature(h) - 273.15).isCloseTo(celsius, within(0.0501));
        assertThat(StandardAtmosphere.handbookPressure(h)).isCloseTo(pascals, within(0.75));
    }

    // U.S. Standard Atmosphere 1976 by geometric altitude (PA-H023, H043 and their neighbours; the
    // printed pressures are truncated, hence 1.05 Pa).
    @ParameterizedTest
    @CsvSource({"1500, 84559, 1.058, 0.8638", "5000, 54048, 0.736, 0.6012"})
    void published_table_by_geometric_altitude(
            double z, double pascals, double density, double ratio) {
        double h = StandardAtmosphere.geopotentialFromGeometric(z);
        assertThat(StandardAtmosphere.pressure(h)).isCloseTo(pascals, within(1.05));
        assertThat(StandardAtmosphere.density(h)).isCloseTo(density, within(0.00055));
        assertThat(AirDensity.ratioOfStandardAtmosphere(h)).isCloseTo(ratio, within(5.5e-5));
    }

    // U.S. Standard Atmosphere 1976: 22632.06 Pa and 0.363918 kg/m3 at 11 km, 5474.889 Pa and
    // 0.088035 kg/m3 at 20 km geopotential (base values of its layers; from memory).
    @Test
    void isothermal_layer() {
        assertThat(StandardAtmosphere.pressure(11_000)).isCloseTo(22_632.06, within(0.006));
        assertThat(StandardAtmosphere.density(11_000)).isCloseTo(0.363918, within(6e-7));
        assertThat(StandardAtmosphere.temperature(11_000)).isCloseTo(216.65, within(1e-12));
        assertThat(StandardAtmosphere.temperature(15_000)).isCloseTo(216.65, within(1e-12));
        assertThat(StandardAtmosphere.pressure(20_000)).isCloseTo(5_474.889, within(0.001));
        assertThat(StandardAtmosphere.density(20_000)).isCloseTo(0.088035, within(5e-7));
        assertThat(StandardAtmosphere.altitude(StandardAtmosphere.pressure(15_000)))
                .isCloseTo(15_000, within(1e-9));
        assertThat(StandardAtmosphere.pressure(11_000 + 1e-9))
                .isCloseTo(StandardAtmosphere.pressure(11_000), within(1e-7));
    }

    @Test
    void sea_level_is_exact() {
        assertThat(StandardAtmosphere.pressure(0)).isEqualTo(101_325.0);
        assertThat(StandardAtmosphere.altitude(101_325)).isZero();
        assertThat(StandardAtmosphere.density(0)).isCloseTo(1.2250, within(5e-5));
        assertThat(StandardAtmosphere.EXPONENT).isCloseTo(5.255876, within(5e-7));
    }

    // Reference cases PA-H105..H109: inverse of the troposphere relation.
    @ParameterizedTest
    @CsvSource({
        "84556, 1500.00047",
        "77000, 2256.07543",
        "54020, 4999.98782",
        "107478, -500.039149"
    })
    void pressure_altitude(double pascals, double metres) {
        assertThat(StandardAtmosphere.altitude(pascals)).isCloseTo(metres, within(1e-4));
    }

    // Reference cases PA-H110, H111: Smithsonian Meteorological Tables (1951), p. 269, without its
    // 0.3 mb offset; 0.5 Pa covers the source's rounded constants.
    @Test
    void an_altimeter_setting_is_no_station_pressure() {
        double inHg = 3386.388640341;
        assertThat(StandardAtmosphere.stationPressure(29.92 * inHg, 7200 * 0.3048))
                .isCloseTo(77_590.123, within(0.5));
        assertThat(StandardAtmosphere.stationPressure(30.1 * inHg, 5280 * 0.3048))
                .isCloseTo(83_944.801, within(0.5));
        assertThat(
                        StandardAtmosphere.altimeterSetting(
                                StandardAtmosphere.stationPressure(99_000, 2000), 2000))
                .isCloseTo(99_000, within(1e-8));
    }

    @Test
    void geometric_and_geopotential_differ_by_four_metres_at_five_thousand() {
        assertThat(StandardAtmosphere.geopotentialFromGeometric(5000))
                .isCloseTo(4996.0702, within(1e-3));
        assertThat(StandardAtmosphere.geometricFromGeopotential(4996.0702))
                .isCloseTo(5000, within(1e-3));
    }

    @Test
    void the_quick_form_stays_within_its_stated_distance() {
        double worst = 0;
        double worstHigh = 0;
        for (double h = -5000; h <= 11_000; h += 10) {
            double d =
                    Math.abs(
                            StandardAtmosphere.handbookPressure(h)
                                    - StandardAtmosphere.pressure(h));
            if (h <= 5000) {
                worst = Math.max(worst, d);
            }
            worstHigh = Math.max(worstHigh, d);
        }
        assertThat(worst).isLessThan(1.0);
        assertThat(worstHigh).isLessThan(1.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-5001, 20_001, Double.NaN, Double.POSITIVE_INFINITY})
    void altitudes_outside_the_model_are_refused(double h) {
        String message =
                "geopotential altitude is " + h + " m, but must lie in [-5000.0, 20000.0] m";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.pressure(h))
                .withMessage(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.temperature(h))
                .withMessage(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.density(h))
                .withMessage(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.geometricFromGeopotential(h))
                .withMessage(message);
    }

    @Test
    void other_arguments_out_of_range_are_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.troposphericPressure(12_000))
                .withMessage("elevation is 12000.0 m, but must lie in [-5000.0, 11000.0] m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.handbookPressure(-5_001))
                .withMessage("elevation is -5001.0 m, but must lie in [-5000.0, 11000.0] m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.altitude(5_000))
                .withMessageStartingWith("pressure is 5000.0 Pa, but must lie in [5474.8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.altitude(180_000))
                .withMessageStartingWith("pressure is 180000.0 Pa, but must lie in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.geopotentialFromGeometric(21_000))
                .withMessageStartingWith("geometric altitude is 21000.0 m, but must lie in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.stationPressure(29.92, 2000))
                .withMessage(
                        "altimeter setting is 29.92 Pa, but must lie in [85000.0, 110000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.stationPressure(101_325, 7200))
                .withMessage("station elevation is 7200.0 m, but must lie in [-500.0, 6000.0] m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.altimeterSetting(30_000, 2000))
                .withMessage(
                        "station pressure is 30000.0 Pa, but must lie in [35000.0, 120000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.altimeterSetting(80_000, Double.NaN))
                .withMessage("station elevation is NaN m, but must lie in [-500.0, 6000.0] m");
    }
}
