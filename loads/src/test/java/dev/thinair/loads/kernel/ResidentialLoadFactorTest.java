package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.ResidentialLoadFactor.Facing;
import dev.thinair.loads.kernel.ResidentialLoadFactor.OpaquePart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fundamentals 2021 (SI), ch. 17: the tables of the method and its worked house. */
class ResidentialLoadFactorTest {

    private static final double D = Math.PI / 180;

    // Tables 9 and 10: LD-C005 to LD-C016. Exposure from north: with 0 at south, as the print
    // says, the north row would give 391 and the south row 172.
    @ParameterizedTest
    @CsvSource({
        "0.5, 35, 734, 164",
        "1, 35, 391, 188",
        "0, 35, 172, 74",
        "0.75, 40, 632, 178",
        "0.25, 60, 574, 100",
        "0.5, 60, 792, 141",
    })
    void peak_irradiance(double exposure, double latitude, double total, double diffuse) {
        assertThat(ResidentialLoadFactor.peakTotal(exposure, latitude * D))
                .isCloseTo(total, within(1.1));
        assertThat(ResidentialLoadFactor.peakDiffuse(exposure, latitude * D))
                .isCloseTo(diffuse, within(1.1));
    }

    // LD-C017, C018: the two values the parabola is bound to.
    @Test
    void peak_irradiance_on_the_horizontal() {
        assertThat(ResidentialLoadFactor.peakHorizontalTotal(35 * D)).isCloseTo(952, within(0.7));
        assertThat(ResidentialLoadFactor.peakHorizontalTotal(60 * D)).isCloseTo(778, within(0.7));
        assertThat(ResidentialLoadFactor.peakHorizontalDiffuse(40 * D)).isEqualTo(170);
    }

    @Test
    void exposure_counts_from_north_and_mirrors_south_of_the_equator() {
        assertThat(ResidentialLoadFactor.exposure(0, 0.6)).isZero();
        assertThat(ResidentialLoadFactor.exposure(180 * D, 0.6)).isCloseTo(1, within(1e-12));
        assertThat(ResidentialLoadFactor.exposure(90 * D, 0.6)).isCloseTo(0.5, within(1e-12));
        assertThat(ResidentialLoadFactor.exposure(270 * D, 0.6)).isCloseTo(0.5, within(1e-12));
        assertThat(ResidentialLoadFactor.exposure(0, -0.6)).isEqualTo(1);
        assertThat(ResidentialLoadFactor.exposure(225 * D, -0.6)).isCloseTo(0.25, within(1e-12));
    }

    // Tables 20 and 22: LD-C019 to LD-C022; delta t 9.1 K, daily range 9.3 K.
    @Test
    void opaque_factors_of_the_worked_house() {
        assertThat(
                        ResidentialLoadFactor.opaqueCooling(
                                0.18, 9.1, 9.3, OpaquePart.CEILING_UNDER_ATTIC, 0.85))
                .isCloseTo(2.08, within(0.006));
        assertThat(
                        ResidentialLoadFactor.opaqueCooling(
                                0.51, 9.1, 9.3, OpaquePart.SUNLIT_WALL_OR_DOOR, 0.85))
                .isCloseTo(7.12, within(0.006));
        assertThat(
                        ResidentialLoadFactor.opaqueCooling(
                                0.51, 9.1, 9.3, OpaquePart.SHADED_WALL_OR_DOOR, 0))
                .isCloseTo(2.93, within(0.006));
        assertThat(ResidentialLoadFactor.slabCooling(0.21)).isCloseTo(-2.34, within(0.006));
    }

    @Test
    void opaque_factors_of_the_other_parts() {
        assertThat(ResidentialLoadFactor.opaqueCooling(1, 10, 10, OpaquePart.CEILING_ROOF, 0.5))
                .isCloseTo(10 + 38.3 * 0.5 - 7 - 3.6, within(1e-12));
        assertThat(
                        ResidentialLoadFactor.opaqueCooling(
                                1, 10, 10, OpaquePart.FLOOR_OVER_AMBIENT, 0.5))
                .isCloseTo(10 - 0.6, within(1e-12));
        assertThat(
                        ResidentialLoadFactor.opaqueCooling(
                                1, 10, 10, OpaquePart.FLOOR_OVER_CRAWL_SPACE, 0.5))
                .isCloseTo(3.3 - 2.8, within(1e-12));
    }

    // Table 21, the worked house's windows: LD-C023 to LD-C039. Columns: facing, height, U, SHGC,
    // Tx, shaded fraction, PXI, CF; overhang 0.6 m at the window's top, latitude 33.64, IAC 0.84.
    // The source rounds the shaded fraction to two places and PXI to whole W/m2 on the way.
    @ParameterizedTest
    @CsvSource({
        "WEST, 0.9, 2.01, 0.36, 1.00, 0.73, 318, 63.5",
        "WEST, 0.9, 2.21, 0.31, 0.64, 0.73, 203, 40.3",
        "WEST, 1.8, 2.01, 0.36, 1.00, 0.37, 523, 98.3",
        "EAST, 0.9, 2.01, 0.36, 1.00, 0.73, 318, 39.5",
        "EAST, 1.2, 2.21, 0.31, 0.64, 0.55, 269, 32.4",
    })
    void windows_of_the_worked_house(
            Facing facing,
            double height,
            double u,
            double shgc,
            double screen,
            double shaded,
            double irradiance,
            double factor) {
        double fraction = ResidentialLoadFactor.shadedFraction(1.1, 0.6, 0, height);
        assertThat(fraction).isCloseTo(shaded, within(0.006));
        double pxi = ResidentialLoadFactor.peakExteriorIrradiance(screen, 164, 570, shaded);
        assertThat(pxi).isCloseTo(irradiance, within(0.7));
        double attenuation = GlazingOptics.interiorAttenuation(0.68, 0.5);
        assertThat(
                        ResidentialLoadFactor.windowCooling(
                                u,
                                9.1,
                                9.3,
                                irradiance,
                                shgc,
                                attenuation,
                                ResidentialLoadFactor.solarLoadFactor(facing, true)))
                .isCloseTo(factor, within(0.12));
    }

    @Test
    void south_window_of_the_worked_house() {
        double pxi = ResidentialLoadFactor.peakExteriorIrradiance(1, 188, 203, 0);
        assertThat(pxi).isCloseTo(391, within(0.7));
        assertThat(
                        ResidentialLoadFactor.windowCooling(
                                2.01,
                                9.1,
                                9.3,
                                pxi,
                                0.36,
                                0.84,
                                ResidentialLoadFactor.solarLoadFactor(Facing.SOUTH, true)))
                .isCloseTo(65.3, within(0.12));
    }

    @Test
    void unrounded_chain_stays_near_the_printed_one() {
        // The same west window from latitude and facing alone.
        double latitude = 35 * D;
        double total = ResidentialLoadFactor.peakTotal(0.5, latitude);
        double diffuse = ResidentialLoadFactor.peakDiffuse(0.5, latitude);
        double slf = ResidentialLoadFactor.shadeLineFactor(Facing.WEST, latitude);
        assertThat(slf).isCloseTo(1.1, within(1e-9));
        double pxi =
                ResidentialLoadFactor.peakExteriorIrradiance(
                        1,
                        diffuse,
                        total - diffuse,
                        ResidentialLoadFactor.shadedFraction(slf, 0.6, 0, 0.9));
        assertThat(pxi).isCloseTo(318, within(3.0));
    }

    // Eq. (30), (31) and Table 23: LD-C040, C041, C044, C045. The heating factors of the source
    // use 23 K where its stated temperatures give 23.5.
    @Test
    void gains_and_totals_of_the_worked_house() {
        assertThat(ResidentialLoadFactor.internalSensible(195.3, 4)).isCloseTo(654, within(0.6));
        assertThat(ResidentialLoadFactor.internalLatent(195.3, 4)).isCloseTo(111, within(0.6));
        assertThat(ResidentialLoadFactor.withDucts(1900 + 672 + 654, 0.27))
                .isCloseTo(4096, within(2.0));
        assertThat(ResidentialLoadFactor.withDucts(4674 + 2235, 0.13)).isCloseTo(7807, within(1.0));
    }

    // Table 5 and Eq. (10), (7): LD-D022 to LD-D028. Ten times the print's L/(s cm2).
    @Test
    void driving_force_of_infiltration() {
        assertThat(idf(true, 2.5, 60, 0)).isCloseTo(0.1, within(0.006));
        assertThat(idf(true, 3, 40, 0)).isCloseTo(0.093, within(0.0012));
        assertThat(idf(true, 5, 20, 0)).isCloseTo(0.086, within(0.0012));
        assertThat(idf(false, 2.5, 11, 0)).isCloseTo(0.035, within(0.0012));
        assertThat(idf(false, 6, 16, 0)).isCloseTo(0.061, within(0.0012));
        assertThat(idf(true, 2.5, 40, 0.2) * 500).isCloseTo(45.3, within(0.01));
        assertThat(idf(false, 4, -10, 0.5))
                .isCloseTo((25 + 40 * (0.38 + 0.06)) / 1000, within(1e-12));
        assertThat(ResidentialLoadFactor.leakageArea(356.5, 1.4e-4) * 1e4)
                .isCloseTo(499, within(0.6));
    }

    private static double idf(boolean heating, double height, double difference, double flue) {
        return ResidentialLoadFactor.infiltrationDrivingForce(heating, height, difference, flue)
                / 10;
    }

    @Test
    void shadow_factors_between_latitudes() {
        assertThat(ResidentialLoadFactor.shadeLineFactor(Facing.SOUTH, 20 * D)).isEqualTo(20);
        assertThat(ResidentialLoadFactor.shadeLineFactor(Facing.SOUTH, -22.5 * D))
                .isCloseTo(17, within(1e-6));
        assertThat(ResidentialLoadFactor.shadeLineFactor(Facing.NORTH, 60 * D))
                .isCloseTo(0.8, within(1e-9));
        assertThat(ResidentialLoadFactor.shadeLineFactor(Facing.SOUTH_EAST, 45 * D))
                .isCloseTo(1.6, within(1e-9));
        assertThat(ResidentialLoadFactor.shadeLineFactor(Facing.NORTH_WEST, 30 * D))
                .isCloseTo(1.6, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ResidentialLoadFactor.shadeLineFactor(Facing.HORIZONTAL, 0.6))
                .withMessageContaining("skylight");
    }

    @Test
    void nearest_facing() {
        assertThat(Facing.nearest(0, 0.6)).isEqualTo(Facing.NORTH);
        assertThat(Facing.nearest(-10 * D, 0.6)).isEqualTo(Facing.NORTH);
        assertThat(Facing.nearest(100 * D, 0.6)).isEqualTo(Facing.EAST);
        assertThat(Facing.nearest(230 * D, 0.6)).isEqualTo(Facing.SOUTH_WEST);
        assertThat(Facing.nearest(230 * D, -0.6)).isEqualTo(Facing.NORTH_WEST);
        assertThat(Facing.nearest(0, -0.6)).isEqualTo(Facing.SOUTH);
        assertThat(Facing.nearest(270 * D, -0.6)).isEqualTo(Facing.WEST);
        assertThat(ResidentialLoadFactor.solarLoadFactor(Facing.HORIZONTAL, true)).isEqualTo(0.58);
        assertThat(ResidentialLoadFactor.solarLoadFactor(Facing.HORIZONTAL, false)).isEqualTo(0.73);
    }

    @Test
    void latitudes_outside_the_method_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ResidentialLoadFactor.peakTotal(0.5, 15 * D))
                .withMessageContaining("latitude");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ResidentialLoadFactor.peakTotal(0.5, -65 * D))
                .withMessageContaining("latitude");
    }
}
