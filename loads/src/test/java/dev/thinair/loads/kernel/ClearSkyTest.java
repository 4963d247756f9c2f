package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearSkyTest {

    private static final double D = Math.PI / 180;
    private static final ClearSky.Edition PRESENT = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
    private static final ClearSky.Edition OLD = ClearSky.Edition.FUNDAMENTALS_2009;

    // Fundamentals 2021 (SI), ch. 14, Example 3 and 4 (Atlanta, July, tau 0.515 and 2.066);
    // LD-A054 to LD-A060. Tolerances are the print's rounding.
    @Test
    void handbook_example_of_the_clear_sky() {
        assertThat(ClearSky.airMass(76.80 * D)).isCloseTo(1.027, within(0.0006));
        assertThat(PRESENT.beamExponent(0.515, 2.066)).isCloseTo(0.714, within(0.0006));
        assertThat(PRESENT.diffuseExponent(0.515, 2.066)).isCloseTo(0.245, within(0.0006));
        assertThat(ClearSky.beamNormal(PRESENT, 1324, 76.80 * D, 0.515, 2.066))
                .isCloseTo(784, within(0.8));
        assertThat(ClearSky.diffuseHorizontal(PRESENT, 1324, 76.80 * D, 0.515, 2.066))
                .isCloseTo(166, within(0.6));
        assertThat(ClearSky.beamNormal(PRESENT, 1324, 68.62 * D, 0.515, 2.066))
                .isCloseTo(770, within(0.6));
        assertThat(ClearSky.diffuseHorizontal(PRESENT, 1324, 68.62 * D, 0.515, 2.066))
                .isCloseTo(162, within(0.6));
    }

    // Kasten and Young (1989), recomputed: LD-A093 to LD-A095.
    @ParameterizedTest
    @CsvSource({"10, 5.58604", "90, 0.99971", "0.5, 31.34903"})
    void relative_air_mass(double degrees, double expected) {
        assertThat(ClearSky.airMass(degrees * D)).isCloseTo(expected, within(1e-4));
    }

    // LD-A096: a pressure-corrected air mass is another quantity, for other models.
    @Test
    void pressure_corrected_air_mass() {
        double p = 101_325 * Math.pow(1 - 2.25577e-5 * 1609, 5.2559);
        assertThat(ClearSky.pressureCorrectedAirMass(30 * D, p)).isCloseTo(1.6421, within(5e-4));
    }

    // Coefficients of the 2009 edition, by hand for tau 0.4 and 2.2:
    // ab = 1.219 - 0.0172 - 0.3322 - 0.17952 = 0.69008; ad = 0.202 + 0.3408 - 0.0154 - 0.31416
    // = 0.21324.
    @Test
    void editions_are_not_mixed() {
        assertThat(OLD.beamExponent(0.4, 2.2)).isCloseTo(0.69008, within(1e-12));
        assertThat(OLD.diffuseExponent(0.4, 2.2)).isCloseTo(0.21324, within(1e-12));
        assertThat(ClearSky.beamNormal(OLD, 1367, 30 * D, 0.4, 2.2))
                .isNotCloseTo(ClearSky.beamNormal(PRESENT, 1367, 30 * D, 0.4, 2.2), within(1.0));
    }

    @Test
    void no_sun_at_or_below_the_horizon() {
        for (double degrees : new double[] {0, -0.1, -90}) {
            assertThat(ClearSky.beamNormal(PRESENT, 1367, degrees * D, 0.5, 2)).isZero();
            assertThat(ClearSky.diffuseHorizontal(PRESENT, 1367, degrees * D, 0.5, 2)).isZero();
            assertThat(
                            ClearSky.hottelTransmittance(
                                    ClearSky.HottelClimate.TROPICAL, 100, degrees * D))
                    .isZero();
            assertThat(ClearSky.liuJordanDiffuse(1367, degrees * D, 0.5)).isZero();
        }
        assertThat(ClearSky.beamNormal(PRESENT, 1367, 0.1 * D, 0.5, 2)).isPositive();
    }

    // Duffie and Beckman, Solar Engineering of Thermal Processes, Example 2.8.1 (Madison, 22
    // August 11:30): 0.62 and 830 W/m2; elevations recomputed: LD-A098 to LD-A101.
    @Test
    void hottel_by_elevation() {
        ClearSky.HottelClimate summer = ClearSky.HottelClimate.MIDLATITUDE_SUMMER;
        double tau = ClearSky.hottelTransmittance(summer, 270, Math.asin(0.846));
        assertThat(tau).isCloseTo(0.62, within(0.005));
        assertThat(1339 * tau).isCloseTo(830, within(1.5));
        assertThat(ClearSky.hottelTransmittance(summer, 1_600, Math.asin(0.866)))
                .isCloseTo(0.71504, within(5e-5));
        assertThat(ClearSky.hottelTransmittance(summer, 2_400, Math.asin(0.866)))
                .isCloseTo(0.74329, within(5e-5));
    }

    @Test
    void hottel_climates_have_their_own_factors() {
        // Each at 0 m with the sun at 30 degrees, by hand from the published factors.
        double a0 = 0.4237 - 0.00821 * 36;
        double a1 = 0.5055 + 0.00595 * 42.25;
        double k = 0.2711 + 0.01858 * 6.25;
        double[][] factors = {
            {0.95, 0.98, 1.02}, {0.97, 0.99, 1.02}, {0.99, 0.99, 1.01}, {1.03, 1.01, 1.00}
        };
        for (ClearSky.HottelClimate climate : ClearSky.HottelClimate.values()) {
            double[] f = factors[climate.ordinal()];
            assertThat(ClearSky.hottelTransmittance(climate, 0, 30 * D))
                    .isCloseTo(f[0] * a0 + f[1] * a1 * Math.exp(-f[2] * k / 0.5), within(1e-12));
        }
    }

    @Test
    void diffuse_of_liu_and_jordan() {
        assertThat(ClearSky.liuJordanDiffuse(1300, 30 * D, 0.6))
                .isCloseTo(1300 * 0.5 * (0.271 - 0.294 * 0.6), within(1e-9));
    }
}
