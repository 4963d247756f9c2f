package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class OutdoorHoursTest {

    private static double[] filled(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    private static OutdoorHours day(double[] dryBulb, double ground) {
        double[] altitude = new double[24];
        double[] azimuth = new double[24];
        double[] beam = new double[24];
        double[] diffuse = new double[24];
        for (int h = 6; h <= 18; h++) {
            altitude[h] = Math.sin((h - 5.9) / 12.2 * Math.PI) * 1.1;
            azimuth[h] = h / 24.0 * 2 * Math.PI;
            beam[h] = 700;
            diffuse[h] = 120;
        }
        altitude[3] = -0.5;
        return new OutdoorHours(
                true,
                0,
                dryBulb,
                filled(24, 0.01),
                filled(24, 3),
                altitude,
                azimuth,
                beam,
                diffuse,
                85_000,
                ground,
                0.3);
    }

    @Test
    void cosine_of_incidence_is_the_textbook_one() {
        OutdoorHours hours = day(filled(24, 300), 285);
        for (double tilt : new double[] {0, 0.4, Math.PI / 2, 2.2}) {
            for (double azimuth : new double[] {0, 1, 3, 5}) {
                double east = Math.sin(azimuth) * Math.sin(tilt);
                double north = Math.cos(azimuth) * Math.sin(tilt);
                for (int h = 0; h < 24; h++) {
                    double expected =
                            Transposition.cosIncidence(
                                    hours.sunAltitude(h), hours.sunAzimuth(h), tilt, azimuth);
                    assertThat(hours.cosIncidence(h, east, north, Math.cos(tilt)))
                            .isCloseTo(expected, within(1e-14));
                }
            }
        }
    }

    @Test
    void quick_irradiance_is_the_textbook_one() {
        OutdoorHours hours = day(filled(24, 300), 285);
        double[] out = new double[24];
        double[] beam = new double[24];
        double[] sky = new double[24];
        double[] ground = new double[24];
        double[] cosine = new double[24];
        for (double tilt : new double[] {0, 0.4, Math.PI / 2, 2.2, Math.PI}) {
            for (double azimuth : new double[] {0, 1, 3, 5}) {
                hours.incident(azimuth, tilt, out);
                hours.incidentParts(azimuth, tilt, beam, sky, ground, cosine);
                for (int h = 0; h < 24; h++) {
                    double expected =
                            Transposition.total(
                                    hours.beamNormal(h),
                                    hours.diffuseHorizontal(h),
                                    hours.sunAltitude(h),
                                    hours.sunAzimuth(h),
                                    tilt,
                                    azimuth,
                                    0.3);
                    assertThat(out[h]).isCloseTo(expected, within(1e-9));
                    assertThat(beam[h] + sky[h] + ground[h]).isCloseTo(expected, within(1e-9));
                    assertThat(cosine[h])
                            .isCloseTo(
                                    Transposition.cosIncidence(
                                            hours.sunAltitude(h),
                                            hours.sunAzimuth(h),
                                            tilt,
                                            azimuth),
                                    within(1e-12));
                }
            }
        }
    }

    @Test
    void accessors_give_what_was_put_in() {
        double[] dry = filled(24, 300);
        dry[4] = 288;
        OutdoorHours hours = day(dry, 285);
        dry[4] = 1;
        assertThat(hours.dryBulb(4)).isEqualTo(288);
        assertThat(hours.meanDryBulb()).isCloseTo(299.5, within(1e-12));
        assertThat(hours.count()).isEqualTo(24);
        assertThat(hours.periodic()).isTrue();
        assertThat(hours.humidityRatio(3)).isEqualTo(0.01);
        assertThat(hours.windSpeed(3)).isEqualTo(3);
        assertThat(hours.pressure()).isEqualTo(85_000);
        assertThat(hours.groundTemperature()).isEqualTo(285);
        assertThat(hours.groundReflectance()).isEqualTo(0.3);
        assertThat(hours.hourOfDay(5)).isEqualTo(5);
        assertThat(hours.sunAltitude(3)).isEqualTo(-0.5);
        assertThat(hours.sunAzimuth(6)).isCloseTo(Math.PI / 2, within(1e-12));
    }

    @Test
    void long_series_know_their_hour_of_day() {
        int n = 50;
        OutdoorHours hours =
                new OutdoorHours(
                        false,
                        22,
                        filled(n, 280),
                        filled(n, 0.004),
                        filled(n, 2),
                        new double[n],
                        new double[n],
                        new double[n],
                        new double[n],
                        90_000,
                        280,
                        0.2);
        assertThat(hours.hourOfDay(0)).isEqualTo(22);
        assertThat(hours.hourOfDay(2)).isZero();
        assertThat(hours.hourOfDay(27)).isEqualTo(1);
        assertThat(hours.periodic()).isFalse();
        assertThat(hours.count()).isEqualTo(50);
    }

    @Test
    void unknown_ground_is_said_to_be_unknown() {
        OutdoorHours hours = day(filled(24, 300), Double.NaN);
        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(hours::groundTemperature)
                .withMessageContaining("ground temperature");
    }

    @Test
    void bad_series_are_refused_by_hour() {
        double[] dry = filled(24, 300);
        dry[13] = Double.NaN;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day(dry, 285))
                .withMessageContaining("dry bulb at hour index 13 is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day(filled(23, 300), 285))
                .withMessageContaining("24");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day(filled(24, 300), 100))
                .withMessageContaining("ground temperature");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day(filled(24, 300), 285).incident(0, 4, new double[24]))
                .withMessageContaining("tilt is 4.0 rad");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> day(filled(24, 300), 285).incident(0, 1, new double[20]))
                .withMessageContaining("20 places");
    }
}
