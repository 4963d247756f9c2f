package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TranspositionTest {

    private static final double D = Math.PI / 180;

    // Fundamentals 2021 (SI), ch. 14, Examples 5 to 7: LD-A061 to LD-A066.
    @Test
    void handbook_examples_on_a_wall_and_a_roof() {
        double altitude = 68.62 * D;
        double sun = Sun.fromSouth(56.69 * D);
        double face = Sun.fromSouth(60 * D);
        double wall = Transposition.cosIncidence(altitude, sun, 90 * D, face);
        assertThat(Math.acos(wall) / D).isCloseTo(68.66, within(0.02));
        double roof = Transposition.cosIncidence(altitude, sun, 30 * D, face);
        assertThat(Math.acos(roof) / D).isCloseTo(8.74, within(0.03));
        assertThat(Transposition.beam(770, wall)).isCloseTo(280, within(0.6));
        double y = Transposition.ratioY(wall);
        assertThat(y).isCloseTo(0.75, within(0.0006));
        assertThat(Transposition.skyDiffuse(162, y, 90 * D)).isCloseTo(121, within(0.6));
        assertThat(Transposition.groundReflected(770, altitude, 162, 0.2, 90 * D))
                .isCloseTo(87.9, within(0.06));
    }

    // Fundamentals 2021 (SI), ch. 18, Table 29A: spandrel wall facing 60 degrees west of south,
    // Atlanta, 21 July, tau 0.515 and 2.066, E_o 1324: LD-A067 to LD-A092. Running text of that
    // chapter keeps older values (beam 805, total 617); the table is what counts.
    @ParameterizedTest
    @CsvSource({
        "7, 333, 159.5, 73, 0.45, 48.4",
        "13, 783.1, 80.2, , 0.6332, 330.3",
        "15, 739.6, 58.45, 153.4, 0.8644, 597.1",
        "17, 593.7, 45.8, , 1.0073, 578.3",
        "19, 173.7, 49.7, 48.3, 0.9631, 166.0",
    })
    void handbook_wall_through_the_day(
            int hour, double beam, double incidence, Double diffuse, double y, double total) {
        double latitude = 33.64 * D;
        double declination = 20.44 * D;
        double angle =
                Sun.hourAngle(Sun.apparentSolarTime(hour * 3600, -6.4 * 60, -84.43 * D, -5 * 3600));
        double altitude = Sun.altitude(latitude, declination, angle);
        double azimuth = Sun.azimuth(latitude, declination, angle);
        ClearSky.Edition edition = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
        double eb = ClearSky.beamNormal(edition, 1324, altitude, 0.515, 2.066);
        double ed = ClearSky.diffuseHorizontal(edition, 1324, altitude, 0.515, 2.066);
        double face = Sun.fromSouth(60 * D);
        double cosine = Transposition.cosIncidence(altitude, azimuth, 90 * D, face);
        assertThat(eb).isCloseTo(beam, within(0.6));
        assertThat(Math.acos(cosine) / D).isCloseTo(incidence, within(0.06));
        if (diffuse != null) {
            assertThat(ed).isCloseTo(diffuse, within(0.2));
        }
        assertThat(Transposition.ratioY(cosine)).isCloseTo(y, within(0.0002));
        assertThat(Transposition.total(eb, ed, altitude, azimuth, 90 * D, face, 0.2))
                .isCloseTo(total, within(0.6));
    }

    // LD-A102: a plane facing down at 120 degrees sees Y sin(tilt) of the sky's diffuse.
    @Test
    void plane_that_leans_over() {
        double y = Transposition.ratioY(Math.cos(40 * D) * Math.cos(30 * D));
        assertThat(Transposition.skyDiffuse(100, y, 120 * D)).isCloseTo(84.6686, within(0.01));
    }

    // LD-A103: sun behind the wall, snow on the ground.
    @Test
    void sun_behind_the_wall_leaves_diffuse_and_ground() {
        assertThat(Transposition.total(800, 100, 30 * D, 150 * D, 90 * D, 0, 0.7))
                .isCloseTo(220, within(0.01));
    }

    @Test
    void horizontal_plane_gets_all_of_beam_and_diffuse() {
        assertThat(Transposition.total(800, 100, 30 * D, 1, 0, 0, 0.7))
                .isCloseTo(500, within(1e-9));
        assertThat(Transposition.total(800, 100, -1 * D, 1, 0, 0, 0.7))
                .isCloseTo(100, within(1e-9));
    }

    @Test
    void plane_facing_down_sees_ground_alone() {
        assertThat(Transposition.total(800, 100, 30 * D, 1, Math.PI, 0, 0.5))
                .isCloseTo(250, within(1e-9));
    }

    @Test
    void ratio_y_has_its_floor_and_its_top() {
        assertThat(Transposition.ratioY(-1)).isEqualTo(0.45);
        assertThat(Transposition.ratioY(1)).isCloseTo(1.3, within(1e-12));
        assertThat(Transposition.ratioY(0)).isCloseTo(0.55, within(1e-12));
    }

    @Test
    void cosine_never_leaves_its_range() {
        for (int i = 0; i < 1_000; i++) {
            double b = i * 0.00157;
            assertThat(Transposition.cosIncidence(b, 1, Math.PI / 2 - b, 1)).isBetween(-1.0, 1.0);
        }
    }
}
