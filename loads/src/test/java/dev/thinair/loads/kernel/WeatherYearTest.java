package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class WeatherYearTest {

    private static double[] twelve(double value) {
        double[] values = new double[12];
        Arrays.fill(values, value);
        return values;
    }

    @Test
    void monthly_values_stand_in_the_middle_and_close_round_the_year() {
        double[] values = {0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110};
        assertThat(WeatherYear.at(values, 15.5)).isCloseTo(0, within(1e-12));
        assertThat(WeatherYear.at(values, 45)).isCloseTo(10, within(1e-12));
        assertThat(WeatherYear.at(values, 30.25)).isCloseTo(5, within(1e-12));
        assertThat(WeatherYear.at(values, 349.5)).isCloseTo(110, within(1e-12));
        assertThat(WeatherYear.at(values, 0)).isCloseTo(55, within(1e-12));
        assertThat(WeatherYear.at(values, 365)).isCloseTo(55, within(1e-12));
        assertThat(WeatherYear.at(values, 357.25)).isCloseTo(82.5, within(1e-12));
        assertThat(WeatherYear.at(twelve(7), 200)).isCloseTo(7, within(1e-12));
    }

    @Test
    void swing_has_mean_zero_and_deviation_one() {
        double sum = 0;
        double square = 0;
        int n = 3_650;
        for (int i = 0; i < n; i++) {
            double s = WeatherYear.swing(i * 0.1);
            sum += s;
            square += s * s;
        }
        assertThat(sum / n).isCloseTo(0, within(0.02));
        assertThat(Math.sqrt(square / n)).isCloseTo(1, within(0.02));
    }

    @Test
    void dry_bulbs_keep_mean_range_and_deviation() {
        double[] out = new double[WeatherYear.HOURS];
        DailyProfile profile = DailyProfile.FUNDAMENTALS_2009_TO_2021;
        WeatherYear.dryBulbs(twelve(290), twelve(12), 0, profile, out);
        double sum = 0;
        for (int h = 0; h < 24; h++) {
            sum += out[h];
        }
        assertThat(sum / 24).isCloseTo(290, within(1e-9));
        assertThat(out[14] - out[5]).isCloseTo(12, within(1e-9));
        assertThat(out[8_000 - 8_000 % 24 + 15]).isCloseTo(out[15], within(1e-9));
        WeatherYear.dryBulbs(twelve(290), twelve(0), 3, profile, out);
        double square = 0;
        for (double t : out) {
            square += (t - 290) * (t - 290);
        }
        assertThat(Math.sqrt(square / out.length)).isCloseTo(3, within(0.1));
    }

    @Test
    void humidity_is_capped_at_saturation() {
        double[] dry = new double[WeatherYear.HOURS];
        Arrays.fill(dry, 300);
        dry[7] = 275;
        double[] out = new double[WeatherYear.HOURS];
        WeatherYear.humidity(twelve(0.008), dry, 90_000, out);
        assertThat(out[6]).isCloseTo(0.008, within(1e-15));
        assertThat(out[7]).isEqualTo(IdealMoistAir.saturationHumidityRatio(275, 90_000));
    }

    @Test
    void sun_of_the_year_is_the_same_by_both_algorithms() {
        double[] a = new double[WeatherYear.HOURS];
        double[] b = new double[WeatherYear.HOURS];
        double[] c = new double[WeatherYear.HOURS];
        WeatherYear.sun(2026, -25_200, 0.68, -1.84, 1600, a, b);
        double[] place = new double[2];
        for (int i = 0; i < WeatherYear.HOURS; i += 611) {
            Sun.ephemeris(
                    java.time.Instant.parse("2026-01-01T07:00:00Z").plusSeconds(3_600L * i),
                    0.68,
                    -1.84,
                    1600,
                    69,
                    place);
            assertThat(a[i]).isCloseTo(place[0], within(4e-4));
        }
        WeatherYear.sun(1995, -25_200, 0.68, -1.84, 1600, c, b);
        assertThat(c[12]).isCloseTo(a[12], within(0.01));
    }

    @Test
    void clouds_take_beam_and_leave_less_in_all() {
        double[] altitudes = new double[WeatherYear.HOURS];
        Arrays.fill(altitudes, 0.8);
        altitudes[3] = -0.1;
        double[] beam = new double[WeatherYear.HOURS];
        double[] diffuse = new double[WeatherYear.HOURS];
        ClearSky.Edition edition = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
        WeatherYear.irradiance(
                edition, twelve(0.4), twelve(2.2), twelve(0), altitudes, beam, diffuse);
        assertThat(beam[3] + diffuse[3]).isZero();
        double above = Sun.extraterrestrialNormal(1);
        assertThat(beam[0])
                .isCloseTo(ClearSky.beamNormal(edition, above, 0.8, 0.4, 2.2), within(1e-9));
        assertThat(diffuse[0])
                .isCloseTo(ClearSky.diffuseHorizontal(edition, above, 0.8, 0.4, 2.2), within(1e-9));
        double clear = beam[0] * Math.sin(0.8) + diffuse[0];
        double clearBeam = beam[0];
        WeatherYear.irradiance(
                edition, twelve(0.4), twelve(2.2), twelve(0.5), altitudes, beam, diffuse);
        assertThat(beam[0]).isCloseTo(clearBeam / 2, within(1e-9));
        assertThat(beam[0] * Math.sin(0.8) + diffuse[0])
                .isCloseTo(clear * (1 - 0.75 * Math.pow(0.5, 3.4)), within(1e-9));
        WeatherYear.irradiance(
                edition, twelve(0.4), twelve(2.2), twelve(1), altitudes, beam, diffuse);
        assertThat(beam[0]).isZero();
        assertThat(diffuse[0]).isCloseTo(clear / 4, within(1e-9));
    }
}
