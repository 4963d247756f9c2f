package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroundContactTest {

    // Fundamentals 2021 (SI), ch. 18, Table 22 and Eq. (38): LD-B166 to LD-B170.
    @ParameterizedTest
    @CsvSource({
        "0.3, 0.259, 2.468, 0.0074",
        "1.2, 0.259, 1.353, 0.0041",
        "2.4, 0.259, 0.902, 0.0027",
        "1.2, 1.139, 0.579, 0.0017",
        "2.4, 2.899, 0.244, 0.0007",
    })
    void handbook_below_grade_walls(
            double depth, double resistance, double expected, double tolerance) {
        assertThat(GroundContact.wallTransmittance(0, depth, 1.4, resistance))
                .isCloseTo(expected, within(tolerance));
    }

    @Test
    void wall_in_two_parts_is_the_whole() {
        double upper = GroundContact.wallTransmittance(0, 1, 1.4, 0.3);
        double lower = GroundContact.wallTransmittance(1, 2.4, 1.4, 0.3);
        double whole = GroundContact.wallTransmittance(0, 2.4, 1.4, 0.3);
        assertThat((upper + 1.4 * lower) / 2.4).isCloseTo(whole, within(1e-12));
    }

    // Table 23 and Eq. (39): LD-B171 to LD-B173.
    @ParameterizedTest
    @CsvSource({"0.3, 6, 0.370", "1.2, 8, 0.208", "2.1, 9, 0.155"})
    void handbook_basement_floors(double depth, double width, double expected) {
        assertThat(GroundContact.floorTransmittance(width, depth, 1.4, 0.259))
                .isCloseTo(expected, within(0.004));
    }

    // Ch. 17, Table 22, edge factor of ch. 18, Table 24: LD-B174 (the print rounds 19.55 to 19.6).
    @Test
    void handbook_slab_edge() {
        assertThat(GroundContact.slabEdgeLoss(0.85, 67.2, 23)).isCloseTo(1317, within(5.0));
        assertThat(GroundContact.designGroundTemperature(285, 10)).isEqualTo(275);
    }

    // ISO 13370:2007, Eq. (4) to (6): LD-B175 to LD-B177; both branches.
    @ParameterizedTest
    @CsvSource({
        "100, 40, 0.3, 0.0, 2.0, 0.7615",
        "100, 40, 0.3, 2.5, 2.0, 0.24984",
        "195.3, 67.2, 0.2, 0.21, 1.5, 0.49274",
    })
    void iso_slab_on_ground(
            double area,
            double perimeter,
            double wall,
            double resistance,
            double soil,
            double expected) {
        double b = GroundContact.characteristicDimension(area, perimeter);
        double d = GroundContact.equivalentThickness(wall, soil, 0.17 + resistance + 0.04);
        assertThat(GroundContact.isoFloorTransmittance(b, d, 0, soil))
                .isCloseTo(expected, within(5e-5));
    }

    // ISO 13370:2007, 9.3: LD-B178 and LD-B179.
    @Test
    void iso_basement() {
        double b = GroundContact.characteristicDimension(100, 40);
        double d = GroundContact.equivalentThickness(0.3, 2, 0.17 + 0.5 + 0.04);
        double w = GroundContact.equivalentThickness(0, 2, 0.13 + 1.5 + 0.04);
        assertThat(GroundContact.isoFloorTransmittance(b, d, 2, 2))
                .isCloseTo(0.41529, within(5e-5));
        assertThat(GroundContact.isoWallTransmittance(d, w, 2, 2)).isCloseTo(0.3678, within(5e-5));
        // With the wall the thinner, its own thickness stands in for the floor's.
        assertThat(GroundContact.isoWallTransmittance(9, 1, 2, 2))
                .isEqualTo(GroundContact.isoWallTransmittance(1, 1, 2, 2));
    }
}
