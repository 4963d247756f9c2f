package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DesignDaysTest {

    private static final double D = Math.PI / 180;
    private static final DailyProfile PRESENT = DailyProfile.FUNDAMENTALS_2009_TO_2021;

    // Fundamentals 2021 (SI), ch. 18, Table 27 (July) with ch. 14, Table 6: LD-F001 to F008.
    @ParameterizedTest
    @CsvSource({
        "1, 0.88, 23.2", "3, 0.95, 22.4", "5, 1.00, 21.9", "9, 0.55, 26.9",
        "12, 0.13, 31.7", "14, 0.00, 33.1", "18, 0.24, 30.4", "21, 0.59, 26.5",
    })
    void handbook_day_by_clock_hour(int hour, double fraction, double expected) {
        assertThat(PRESENT.fraction(hour)).isEqualTo(fraction);
        assertThat(PRESENT.dryBulb(33.1 + 273.15, 11.2, hour) - 273.15)
                .isCloseTo(expected, within(0.07));
    }

    // LD-F009 to F014.
    @Test
    void handbook_fractions() {
        assertThat(PRESENT.fraction(15)).isZero();
        assertThat(PRESENT.fraction(20)).isEqualTo(0.5);
        assertThat(PRESENT.fraction(24)).isEqualTo(PRESENT.fraction(0)).isEqualTo(0.82);
        assertThat(PRESENT.meanFraction()).isCloseTo(0.53625, within(1e-12));
        assertThat(DailyProfile.FUNDAMENTALS_TO_2005.meanFraction())
                .isCloseTo(0.5629, within(5e-5));
        assertThat(DailyProfile.FUNDAMENTALS_TO_2005.fraction(15)).isZero();
    }

    // Ch. 14, Example 9: 24.7 C at hour 1 of daylight saving time, solar time -0.73 h: LD-F015.
    // Chapter 18 reads 23.2 C at clock hour 1 of the same place and day: both are right by name.
    @Test
    void the_two_readings_of_the_profile_differ() {
        double bySun = 33.1 - 11.2 * PRESENT.fractionAtSolarTime(-0.73 * 3600);
        assertThat(bySun).isCloseTo(24.7, within(0.06));
        double[] clock = new double[24];
        double[] solar = new double[24];
        DesignDays.dryBulbs(PRESENT, false, 306.25, 11.2, 202, -84.43 * D, -5 * 3600, clock);
        DesignDays.dryBulbs(PRESENT, true, 306.25, 11.2, 202, -84.43 * D, -5 * 3600, solar);
        // Standard hour 0 there is solar time -0.73 h.
        assertThat(solar[0] - 273.15).isCloseTo(24.7, within(0.06));
        assertThat(clock[1] - 273.15).isCloseTo(23.24, within(0.01));
        assertThat(solar[1]).isEqualTo(clock[0]);
    }

    // LD-F016 to F018.
    @Test
    void hours_beyond_a_percentile() {
        assertThat(DesignDays.hoursBeyond(0.004)).isCloseTo(35, within(0.5));
        assertThat(DesignDays.hoursBeyond(0.01)).isCloseTo(88, within(0.5));
        assertThat(DesignDays.hoursBeyond(0.996)).isCloseTo(35, within(0.5));
    }

    // LD-F019 to F023.
    @Test
    void customary_indoor_conditions() {
        assertThat(DesignConditions.COOLING_INDOOR - 273.15).isCloseTo(24, within(1e-9));
        assertThat(DesignConditions.HEATING_INDOOR - 273.15).isCloseTo(20, within(1e-9));
        assertThat(DesignConditions.TRADE_COOLING_INDOOR * 1.8 - 459.67)
                .isCloseTo(75, within(1e-9));
        assertThat(DesignConditions.STRICT_TRADE_COOLING_INDOOR * 1.8 - 459.67)
                .isCloseTo(74, within(1e-9));
        assertThat(DesignConditions.TRADE_HEATING_INDOOR * 1.8 - 459.67)
                .isCloseTo(70, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(DesignDays.SunMethod.class)
    void sun_methods_agree_as_well_as_they_claim(DesignDays.SunMethod method) {
        double[] exactAltitude = new double[24];
        double[] exactAzimuth = new double[24];
        double[] altitude = new double[24];
        double[] azimuth = new double[24];
        for (double latitude : new double[] {40, -33, 2, 68}) {
            LocalDate date = LocalDate.of(2026, 7, 21);
            DesignDays.sunPositions(
                    DesignDays.SunMethod.NREL,
                    date,
                    -7 * 3600,
                    latitude * D,
                    -105 * D,
                    1600,
                    exactAltitude,
                    exactAzimuth);
            DesignDays.sunPositions(
                    method, date, -7 * 3600, latitude * D, -105 * D, 1600, altitude, azimuth);
            double allowed = method == DesignDays.SunMethod.HANDBOOK ? 0.4 : 0.015;
            for (int h = 0; h < 24; h++) {
                assertThat(altitude[h] / D).isCloseTo(exactAltitude[h] / D, within(allowed));
                double turn = Math.IEEEremainder(azimuth[h] - exactAzimuth[h], 2 * Math.PI);
                assertThat(turn / D * Math.cos(altitude[h])).isCloseTo(0, within(allowed));
            }
        }
    }

    @Test
    void moisture_is_kept_until_the_air_cannot_hold_it() {
        double[] dry = {300, 290, 280, 270};
        double[] out = new double[4];
        DesignDays.constantHumidity(dry, 0.009, 84_000, out);
        assertThat(out[0]).isEqualTo(0.009);
        assertThat(out[2]).isEqualTo(IdealMoistAir.saturationHumidityRatio(280, 84_000));
        assertThat(out[3]).isLessThan(out[2]);
    }

    @Test
    void wet_bulb_follows_its_own_range_and_never_passes_the_dry_bulb() {
        double[] dry = new double[24];
        DesignDays.dryBulbs(PRESENT, false, 306, 11, 202, -1.47, -18_000, dry);
        double[] out = new double[24];
        DesignDays.wetBulbHumidity(PRESENT, dry, 296, 3, 98_000, out);
        for (int h = 0; h < 24; h++) {
            double wet = 296 - 3 * PRESENT.fraction(h);
            assertThat(IdealMoistAir.wetBulb(dry[h], out[h], 98_000))
                    .isCloseTo(Math.min(wet, dry[h]), within(1e-6));
        }
        DesignDays.wetBulbHumidity(PRESENT, dry, 303, 1, 98_000, out);
        assertThat(out[5])
                .isCloseTo(IdealMoistAir.saturationHumidityRatio(dry[5], 98_000), within(1e-9));
    }

    @Test
    void skyline_takes_the_beam_alone() {
        double[] altitudes = {5 * D, 15 * D, 30 * D};
        double[] azimuths = {90 * D, 100 * D, 120 * D};
        double[] beam = {300, 600, 800};
        DesignDays.maskHorizon(new double[] {1}, new double[] {15 * D}, altitudes, azimuths, beam);
        assertThat(beam).containsExactly(0, 0, 800);
    }

    @Test
    void skies_fill_their_rows() {
        double[] altitudes = {-1, 0, 0.5, 1.2};
        double[] beam = new double[4];
        double[] diffuse = new double[4];
        DesignDays.clearSky(
                ClearSky.Edition.FUNDAMENTALS_2013_TO_2021,
                1324,
                0.4,
                2.2,
                altitudes,
                beam,
                diffuse);
        assertThat(beam[0]).isZero();
        assertThat(diffuse[1]).isZero();
        assertThat(beam[3]).isGreaterThan(beam[2]).isGreaterThan(800);
        assertThat(diffuse[3]).isGreaterThan(diffuse[2]).isGreaterThan(50);
        DesignDays.hottelSky(
                ClearSky.HottelClimate.MIDLATITUDE_SUMMER, 1324, 1600, altitudes, beam, diffuse);
        double tau =
                ClearSky.hottelTransmittance(ClearSky.HottelClimate.MIDLATITUDE_SUMMER, 1600, 1.2);
        assertThat(beam[3]).isCloseTo(1324 * tau, within(1e-9));
        assertThat(diffuse[3]).isCloseTo(ClearSky.liuJordanDiffuse(1324, 1.2, tau), within(1e-9));
        assertThat(beam[0] + diffuse[0]).isZero();
    }
}
