package dev.thinair.loads;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.units.Si;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * The single-room example of ASHRAE Handbook, Fundamentals 2021 (SI), chapter 18, section 9.1,
 * described as a house of one room and reckoned from date, place and layers alone: spandrel wall
 * (5.57 m2), window (3.72 m2, glass 5d) and lights (110 W, hours 7 to 18), facing 60 degrees west
 * of south in Atlanta on 21 July, 33.1 C with a range of 11.2 K, room at 23.9 C. The source's own
 * numbers, step by step, are held in the kernel's test of the same example.
 *
 * <p>The source reads its time factors from tables, the library computes them from the layers and
 * the room: what is held hour by hour here are the gains, what is held of the loads is the sum of
 * the day, which no delay changes, and the peak.
 */
class SingleRoomHouseTest {

    private static final double WALL = 5.57;
    private static final double GLASS = 3.72;
    private static final double FACE = Math.toRadians(240);

    // Table 31: beam gain of hours 13 to 19; diffuse and conduction gain of hours 1 to 24; window
    // load of hours 1 to 24, hour 20 corrected from the misprint 744 to 135 + 83 = 218.
    private static final double[] BEAM = {82, 334, 572, 710, 690, 515, 184};
    private static final double[] REST = {
        -8, -13, -17, -21, -24, -3, 62, 137, 208, 268, 316, 364, 403, 428, 429, 399, 341, 254, 139,
        43, 31, 19, 10, 0
    };
    private static final double[] WINDOW_LOAD = {
        44, 39, 34, 30, 26, 40, 89, 150, 208, 256, 295, 332, 409, 583, 766, 883, 882, 745, 459, 218,
        141, 98, 72, 54
    };
    // Table 29B, sol-air temperature of hours 1 to 24.
    private static final double[] SOL_AIR = {
        23.2, 22.8, 22.4, 22.1, 21.9, 22.7, 25.4, 29.2, 32.9, 36.1, 38.8, 41.1, 50.0, 59.0, 64.7,
        65.8, 62.1, 52.9, 37.5, 27.5, 26.5, 25.5, 24.7, 23.9
    };

    private static final Site SITE =
            Site.of("Atlanta", degrees(33.64), degrees(-84.43), ZoneOffset.ofHours(-5), metres(0));
    private static final CoolingDesignDay DAY =
            CoolingDesignDay.at(SITE)
                    .date(LocalDate.of(2026, 7, 21))
                    .dryBulb(celsius(33.1))
                    .dailyRange(kelvinDifference(11.2))
                    .profile(DailyProfile.FUNDAMENTALS_2009_TO_2021, false)
                    .wetBulb(celsius(20))
                    .opticalDepths(0.515, 2.066)
                    .sunMethod(DesignDays.SunMethod.HANDBOOK)
                    .build();

    // Entries at 0, 40 and 70 degrees from memory; U from memory, the night hours say 3.2.
    private static final Window WINDOW =
            Window.of(
                    "window",
                    metres(GLASS / 1.8),
                    metres(1.8),
                    wattsPerSquareMetreKelvin(3.18),
                    Glazing.ofTable(
                            "glass 5d",
                            new double[] {0, 40, 50, 60, 70, 80, 90},
                            new double[] {0.49, 0.46, 0.44, 0.39, 0.31, 0.17, 0},
                            0.41));

    private static House room() {
        // Medium construction: concrete floor under a carpet, gypsum elsewhere, no heat through.
        return House.named("single room")
                .films(new Films(3.0, 3.0, 3.0, 5.13, 17), Films.winter())
                .room(
                        Room.named("room")
                                .floorArea(squareMetres(12))
                                .height(metres(2.7))
                                .surface(
                                        Surface.wall("spandrel", Assemblies.spandrelWall())
                                                .area(squareMetres(WALL + GLASS))
                                                .facing(degrees(240))
                                                .absorptance(ratio(0.9))
                                                .window(WINDOW))
                                .surface(
                                        Surface.floor("floor", Assemblies.slab())
                                                .area(squareMetres(12))
                                                .adiabatic())
                                .surface(
                                        Surface.ceiling("ceiling", Assemblies.partition())
                                                .area(squareMetres(12))
                                                .adiabatic())
                                .surface(
                                        Surface.mass("inner walls", Assemblies.partition())
                                                .area(squareMetres(28)))
                                .gain(Lighting.of(watts(110), ratio(0.57), Schedule.between(7, 19)))
                                .build())
                .build();
    }

    @Test
    void window_gains_of_every_hour_from_date_and_place() {
        OutdoorHours hours = DAY.outdoorHours();
        double[] beam = new double[24];
        double[] diffuse = new double[24];
        WINDOW.solarParts(hours, FACE, Math.PI / 2, beam, diffuse);
        for (int h = 0; h < 24; h++) {
            double rest = diffuse[h] + 3.18 * GLASS * (hours.dryBulb(h) - 273.15 - 23.9);
            // Whole watts are printed; the sun of the day is rounded before it is used.
            assertThat(beam[h])
                    .as("beam at hour %d", h)
                    .isCloseTo(h >= 13 && h <= 19 ? BEAM[h - 13] : 0, within(1.0));
            assertThat(rest).as("rest at hour %d", h).isCloseTo(REST[(h + 23) % 24], within(1.0));
        }
    }

    private static double publishedWallGain() {
        double sum = 0;
        for (double t : SOL_AIR) {
            sum += 0.44 * WALL * (t - 23.9);
        }
        return sum;
    }

    @Test
    void printed_window_loads_are_the_printed_gains_delayed() {
        double gains = Arrays.stream(BEAM).sum() + Arrays.stream(REST).sum();
        // 55 whole watts: half a watt each at the worst, all one way.
        assertThat(Arrays.stream(WINDOW_LOAD).sum()).isCloseTo(gains, within(27.5));
    }

    @Test
    void loads_of_the_day_sum_to_the_published_ones() {
        TimeSeriesLoad load =
                TimeSeriesLoad.of(room().compile(SITE), DAY, Setpoint.of(celsius(23.9)));
        double sum = 0;
        for (int h = 0; h < 24; h++) {
            sum += Si.watts(load.sensible(h), "load");
        }
        double published = Arrays.stream(WINDOW_LOAD).sum() + publishedWallGain() + 12 * 110;
        assertThat(sum).isCloseTo(published, within(0.005 * published));
    }

    @Test
    void peak_falls_between_four_and_five_and_stands_near_the_published_hours() {
        TimeSeriesLoad load =
                TimeSeriesLoad.of(room().compile(SITE), DAY, Setpoint.of(celsius(23.9)));
        assertThat(load.peakHour()).isBetween(16, 17);
        // Tables 28, 29B and 31 at 15:00 and 17:00: window, wall, lights.
        assertThat(Si.watts(load.sensible(15), "load")).isCloseTo(766 + 71 + 103, within(47.0));
        assertThat(Si.watts(load.sensible(17), "load")).isCloseTo(882 + 89 + 104.5, within(54.0));
    }
}
