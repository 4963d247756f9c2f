package dev.thinair.altitude.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirDensityAndFactorsTest {

    private static final double LB_PER_FT3 = 0.45359237 / 0.028316846592;

    @Test
    void two_density_ratios_go_by_one_name_at_six_thousand_feet() {
        double h = 6000 * 0.3048;
        assertThat(AirDensity.ratioAtConstantTemperature(StandardAtmosphere.pressure(h)))
                .isCloseTo(0.8014, within(5e-5));
        assertThat(AirDensity.ratioOfStandardAtmosphere(h)).isCloseTo(0.8359, within(5e-5));
    }

    // Fan maker's correction factors, reference cases DUCT-FAN-001..007.
    @ParameterizedTest
    @CsvSource({
        "0, 70, 1.0, 0.001",
        "5000, 70, 0.832, 0.001",
        "8000, 70, 0.743, 0.001",
        "7000, 100, 0.730, 0.001",
        "6000, 200, 0.643, 0.0011"
    })
    void ratio_to_standard_air(double feet, double fahrenheit, double ratio, double tolerance) {
        double p = StandardAtmosphere.pressure(feet * 0.3048);
        assertThat(AirDensity.ratioToStandardAir(p, (fahrenheit + 459.67) / 1.8))
                .isCloseTo(ratio, within(tolerance));
    }

    // U.S. Bureau of Reclamation design guide (2006), Table 6a: reference cases PA-I016, I041.
    @ParameterizedTest
    @CsvSource({"5900, 0.0603", "7200, 0.0574", "8500, 0.0547"})
    void standard_air_carried_to_a_site(double feet, double lbPerFt3) {
        double p = StandardAtmosphere.pressure(feet * 0.3048);
        assertThat(AirDensity.ofStandardAir(p, AirDensity.STANDARD_TEMPERATURE) / LB_PER_FT3)
                .isCloseTo(lbPerFt3, within(1.2e-4));
    }

    @Test
    void moist_air_is_lighter_than_dry() {
        double dry = AirDensity.ratioOfMoistAir(300, 0, 80_000, 1.2);
        double moist = AirDensity.ratioOfMoistAir(300, 0.02, 80_000, 1.2);
        assertThat(dry).isCloseTo(80_000 / (287.042 * 300) / 1.2, within(1e-12));
        assertThat(moist)
                .isCloseTo(IdealMoistAir.density(300, 0.02, 80_000) / 1.2, within(1e-15))
                .isLessThan(dry);
    }

    // The trade's figures: reference cases PA-I001..I005.
    @Test
    void standard_factors_are_derived() {
        double rho = 0.075 * LB_PER_FT3;
        double ca = AirFactors.CP_AIR_INCH_POUND;
        double cv = AirFactors.CP_VAPOR_INCH_POUND;
        assertThat(AirFactors.sensibleInchPound(AirFactors.sensible(rho, 0, ca, cv)))
                .isCloseTo(1.08, within(1e-12));
        assertThat(AirFactors.sensibleInchPound(AirFactors.sensible(rho, 0.01, ca, cv)))
                .isCloseTo(1.09998, within(1e-10));
        assertThat(AirFactors.latentInchPound(AirFactors.latent(rho, AirFactors.LATENT_1076)))
                .isCloseTo(4842, within(1e-8));
        assertThat(
                        AirFactors.latentInchPound(
                                        AirFactors.latent(rho, AirFactors.VAPORIZATION_INCH_POUND))
                                / 7000)
                .isCloseTo(0.6820714, within(1e-7));
        assertThat(AirFactors.totalInchPound(AirFactors.total(rho))).isCloseTo(4.5, within(1e-12));
        assertThat(AirFactors.sensible(1.2, 0.01)).isCloseTo(1.2 * 1024.6, within(1e-10));
    }

    // ASHRAE Fundamentals 2021 (SI) ch. 18 sec. 3.1, examples at 1194 m: PA-I009..I011.
    @Test
    void handbook_examples_at_elevation() {
        double p = StandardAtmosphere.pressure(1194);
        assertThat(AirFactors.atPressure(1.20, p)).isCloseTo(1.04, within(0.0055));
        assertThat(AirFactors.atPressure(1.23, p)).isCloseTo(1.07, within(0.0055));
        assertThat(AirFactors.atPressure(3010, p)).isCloseTo(2608, within(1.5));
    }

    @Test
    void arguments_out_of_range_are_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.ratioAtConstantTemperature(101))
                .withMessage("pressure is 101.0 Pa, but must lie in [20000.0, 200000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.ratioToStandardAir(Double.NaN, 300))
                .withMessage("pressure is NaN Pa, but must lie in [20000.0, 200000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.ratioToStandardAir(90_000, 70))
                .withMessage("temperature is 70.0 K, but must lie in [173.15, 473.15] K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.ratioOfMoistAir(300, 0, 90_000, 0))
                .withMessage(
                        "standard density is 0.0 kg/m3, but must be above 0.0 kg/m3 and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.sensible(-1, 0))
                .withMessage(
                        "density of dry air is -1.0 kg/m3, but must be above 0.0 kg/m3 and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.sensible(1, 60))
                .withMessage("humidity ratio is 60.0 kg/kg, but must lie in [0.0, 10.0] kg/kg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.sensible(1, 0, 0, 1860))
                .withMessageStartingWith("specific heat of dry air is 0.0 J/(kg K)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.sensible(1, 0, 1006, Double.NaN))
                .withMessageStartingWith("specific heat of water vapour is NaN J/(kg K)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.latent(1, 0))
                .withMessage("latent heat is 0.0 J/kg, but must be above 0.0 J/kg and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.latent(Double.NaN, 2.5e6))
                .withMessageStartingWith("density of dry air is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.total(0))
                .withMessageStartingWith("density of dry air is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.atPressure(0, 90_000))
                .withMessageStartingWith("sea-level factor is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.heat(1200, -0.1, 10))
                .withMessage("airflow is -0.1 m3/s, but must lie in [0.0, 1000.0] m3/s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.heat(0, 0.1, 10))
                .withMessageStartingWith("air-side heat factor is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.heat(1200, 0.1, Double.NaN))
                .withMessageStartingWith("difference is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.airflow(1000, 1200, 0))
                .withMessage(
                        "no airflow carries 1000.0 W at a difference of 0.0: the difference must not"
                                + " be zero and must have the heat's sign");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.airflow(1000, 1200, -10))
                .withMessageStartingWith("no airflow carries 1000.0 W at a difference of -10.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.airflow(1e10, 1200, 10))
                .withMessageStartingWith("heat is 1.0E10 W");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.airflow(1000, -1, 10))
                .withMessageStartingWith("air-side heat factor is -1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirFactors.airflow(1000, 1200, 1e8))
                .withMessageStartingWith("difference is 1.0E8");
    }

    @Test
    void no_heat_needs_no_air() {
        assertThat(AirFactors.airflow(0, 1200, -5)).isZero();
    }
}
