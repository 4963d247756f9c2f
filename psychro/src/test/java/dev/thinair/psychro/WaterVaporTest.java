package dev.thinair.psychro;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.fahrenheit;
import static dev.thinair.units.Units.kelvins;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.poundsPerSquareInch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class WaterVaporTest {

    // ASHRAE Handbook - Fundamentals 2021 (SI) ch. 1 eqs. (5) and (6), computed in 30-digit
    // arithmetic; tolerance is the last digit.
    @Test
    void pressures_are_the_handbooks_in_any_unit() {
        near(WaterVapor.saturationPressure(celsius(20)), 2338.8037, 5e-5);
        near(WaterVapor.saturationPressure(fahrenheit(68)), 2338.8037, 5e-5);
        near(WaterVapor.saturationPressure(celsius(-20)), 103.2603786, 5e-8);
        near(WaterVapor.saturationPressureOverLiquid(celsius(0)), 611.2128675, 6e-7);
        near(WaterVapor.saturationPressureOverIce(celsius(0)), 611.1535709, 6e-7);
    }

    @Test
    void dew_and_frost_points_come_back() {
        for (double t : new double[] {-100, -40, -0.5, 0, 0.5, 20, 99.97, 200}) {
            double back =
                    WaterVapor.saturationTemperature(WaterVapor.saturationPressure(celsius(t)))
                            .getValue()
                            .doubleValue();
            assertThat(back).isCloseTo(t, within(1e-12));
        }
        // Water boils at 14.696 psi close to 100 degC: the handbook's curve says 99.974.
        assertThat(
                        WaterVapor.saturationTemperature(poundsPerSquareInch(14.695_948_8))
                                .getValue()
                                .doubleValue())
                .isCloseTo(99.9743, within(5e-4));
    }

    @Test
    void what_is_out_of_range_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterVapor.saturationPressure(celsius(201)))
                .withMessage("temperature is 474.15 K, but must lie in [173.15, 473.15] K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterVapor.saturationPressureOverLiquid(kelvins(273)))
                .withMessage(
                        "temperature of liquid water is 273.0 K, but must lie in [273.15, 473.15]"
                                + " K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterVapor.saturationPressureOverIce(kelvins(274)))
                .withMessage("temperature of ice is 274.0 K, but must lie in [173.15, 273.15] K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterVapor.saturationTemperature(pascals(0)))
                .withMessageStartingWith("vapor pressure is 0.0 Pa, but must lie in [0.00140510");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterVapor.saturationTemperature(kilopascals(2000)))
                .withMessageStartingWith("vapor pressure is 2000000.0 Pa, but must lie in [");
        assertThatNullPointerException()
                .isThrownBy(() -> WaterVapor.saturationPressure(null))
                .withMessage("temperature is null, but must be a temperature");
        assertThatNullPointerException()
                .isThrownBy(() -> WaterVapor.saturationTemperature(null))
                .withMessage("vapor pressure is null, but must be a pressure");
    }

    // What raw types let through the compiler.
    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void another_dimension_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                WaterVapor.saturationPressure(
                                        (Quantity<Temperature>) (Quantity) pascals(2000)))
                .withMessage("temperature has unit \"Pa\", but must be a temperature (SI unit K)");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                WaterVapor.saturationTemperature(
                                        (Quantity<Pressure>) (Quantity) celsius(20)))
                .withMessage("vapor pressure has unit \"°C\", but must be a pressure (SI unit Pa)");
    }

    private static void near(Quantity<Pressure> actual, double pascals, double tolerance) {
        assertThat(Si.pascals(actual, "p")).isCloseTo(pascals, within(tolerance));
    }
}
