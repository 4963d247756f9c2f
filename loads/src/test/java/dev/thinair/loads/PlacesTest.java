package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.litresPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Whole houses where the sun does not set, does not rise, or stands on either side. */
class PlacesTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 21);
    private static final LocalDate DECEMBER = LocalDate.of(2026, 12, 21);
    private static final Setpoint KEPT = Setpoint.of(celsius(20));

    private static Site site(double latitude, double elevation) {
        return Site.of("place", degrees(latitude), degrees(0), ZoneOffset.UTC, metres(elevation));
    }

    private static CoolingDesignDay day(Site site, LocalDate date) {
        return CoolingDesignDay.at(site)
                .date(date)
                .dryBulb(celsius(20))
                .dailyRange(kelvinDifference(0))
                .wetBulb(celsius(12))
                .opticalDepths(0.3, 2.4)
                .build();
    }

    /** One room with glass on one side only, outdoors as warm as it is kept. */
    private static House glassTo(double azimuth, Ventilation ventilation) {
        Surface.Builder front =
                Surface.wall("front", Assemblies.studWall140())
                        .size(metres(5), metres(2.5))
                        .facing(degrees(azimuth))
                        .absorptance(percent(0))
                        .window(SampleHouses.window("front window", 2, 1.2));
        Room room =
                Room.named("room")
                        .floorArea(squareMetres(20))
                        .height(metres(2.5))
                        .surface(front)
                        .surface(
                                Surface.floor("floor", Assemblies.slab())
                                        .area(squareMetres(20))
                                        .adiabatic())
                        .build();
        return House.named("one side")
                .room(room)
                .infiltration(Infiltration.airChanges(airChangesPerHour(0.4), cubicMetres(50)))
                .ventilation(ventilation)
                .build();
    }

    private static DesignLoad load(double latitude, LocalDate date, double azimuth) {
        Site site = site(latitude, 1000);
        return glassTo(azimuth, Ventilation.none())
                .compile(site)
                .coolingLoad(day(site, date), KEPT);
    }

    private static double sun(DesignLoad load) {
        double sum = 0;
        for (int h = 0; h < 24; h++) {
            sum += Si.watts(load.component(Component.WINDOW_SUN, h), "sun");
        }
        return sum;
    }

    @Test
    void where_the_sun_does_not_set_it_comes_in_from_every_side() {
        double[] sides = new double[4];
        for (int i = 0; i < 4; i++) {
            DesignLoad load = load(78, JUNE, 90 * i);
            sides[i] = sun(load);
            for (int h = 0; h < 24; h++) {
                assertThat(Si.watts(load.component(Component.WINDOW_SUN, h), "sun")).isPositive();
            }
            // midnight sun through the north window, noon sun through the south one
            int brightest = load.peakHour();
            if (i == 0) {
                assertThat(brightest).isBetween(0, 3);
            } else if (i == 2) {
                assertThat(brightest).isBetween(12, 15);
            }
        }
        // all four sides see the sun go round at nearly one height
        for (double side : sides) {
            assertThat(side).isCloseTo(sides[1], within(0.35 * sides[1]));
        }
    }

    @Test
    void where_the_sun_does_not_rise_nothing_comes_in() {
        Site site = site(78, 0);
        assertThat(day(site, DECEMBER).daylight()).isEqualTo(new Daylight.DownAllDay());
        DesignLoad load = load(78, DECEMBER, 180);
        for (int h = 0; h < 24; h++) {
            assertThat(load.sensibleWatts()[h]).isCloseTo(0, within(1e-9));
        }
        // colder outdoors it is a steady loss of U A dT and air
        CoolingDesignDay cold =
                CoolingDesignDay.at(site)
                        .date(DECEMBER)
                        .dryBulb(celsius(-10))
                        .dailyRange(kelvinDifference(0))
                        .wetBulb(celsius(-12))
                        .opticalDepths(0.3, 2.4)
                        .build();
        DesignLoad heat = glassTo(180, Ventilation.none()).compile(site).coolingLoad(cold, KEPT);
        double lines = 0;
        for (LoadLine line : heat.lines("room", 12)) {
            if (line.area() > 0) {
                double expected = line.transmittance() * line.area() * -30;
                // cold faces cool the radiant node below the air, so they lose a little less
                assertThat(line.load()).isBetween(expected, 0.85 * expected);
            }
            lines += line.load();
        }
        assertThat(heat.sensibleWatts()[12]).isCloseTo(lines, within(1e-9));
        assertThat(heat.sensibleWatts()[3]).isCloseTo(lines, within(1e-9));
    }

    @Test
    void at_the_equator_the_sun_changes_sides_with_the_season() {
        double northInJune = sun(load(0, JUNE, 0));
        double southInJune = sun(load(0, JUNE, 180));
        double northInDecember = sun(load(0, DECEMBER, 0));
        double southInDecember = sun(load(0, DECEMBER, 180));
        assertThat(northInJune).isGreaterThan(1.5 * southInJune);
        assertThat(southInDecember).isGreaterThan(1.5 * northInDecember);
        // the same but for the distance of the sun, 1367 (1 +- 0.033) W/m2
        assertThat(southInDecember / northInJune).isCloseTo(1.067, within(0.03));
        assertThat(northInDecember / southInJune).isCloseTo(1.067, within(0.03));
    }

    @Test
    void in_the_south_the_north_side_is_the_sunny_one() {
        for (double latitude : new double[] {-25, -37, -55}) {
            DesignLoad north = load(latitude, JUNE, 0);
            assertThat(sun(north)).isGreaterThan(2 * sun(load(latitude, JUNE, 180)));
            assertThat(north.peakHour()).isBetween(11, 14);
            assertThat(load(latitude, DECEMBER, 90).peakHour()).isLessThan(11);
            assertThat(load(latitude, DECEMBER, 270).peakHour()).isGreaterThan(14);
        }
    }

    @Test
    void recovery_spares_its_share_of_the_ventilation_load() {
        Site site = site(40, 2000);
        CoolingDesignDay hot =
                CoolingDesignDay.at(site)
                        .date(JUNE)
                        .dryBulb(celsius(35))
                        .dailyRange(kelvinDifference(10))
                        .wetBulb(celsius(24))
                        .opticalDepths(0.3, 2.4)
                        .build();
        DesignLoad plain =
                glassTo(180, Ventilation.balanced(litresPerSecond(30)))
                        .compile(site)
                        .coolingLoad(hot, KEPT);
        DesignLoad recovered =
                glassTo(180, Ventilation.balanced(litresPerSecond(30), percent(70), percent(40)))
                        .compile(site)
                        .coolingLoad(hot, KEPT);
        DesignLoad none = glassTo(180, Ventilation.none()).compile(site).coolingLoad(hot, KEPT);
        double p = hot.outdoorHours().pressure();
        for (int h = 0; h < 24; h++) {
            double all = Si.watts(plain.component(Component.VENTILATION, h), "plain");
            double left = Si.watts(recovered.component(Component.VENTILATION, h), "recovered");
            assertThat(left).isCloseTo(0.3 * all, within(1e-9 * Math.abs(all)));
            double moist = plain.latentWatts()[h] - none.latentWatts()[h];
            double moistLeft = recovered.latentWatts()[h] - none.latentWatts()[h];
            assertThat(moistLeft).isCloseTo(0.6 * moist, within(1e-9 * Math.abs(moist)));
            // 30 L/s of indoor-weighed air against the handbook's factor at this pressure:
            // 1.23 W/(L/s K) at sea level, ASHRAE Fundamentals 2021, ch. 18
            double dt = hot.outdoorHours().dryBulb(h) - 293.15;
            assertThat(all).isCloseTo(1.23 * p / 101_325 * 30 * dt, within(0.03 * Math.abs(all)));
            assertThat(plain.infiltration(h)).isEqualTo(none.infiltration(h));
        }
    }

    @Test
    void unbalanced_fans_take_over_from_the_leaks() {
        Site site = site(40, 2000);
        CoolingDesignDay day = day(site, JUNE);
        double p = day.outdoorHours().pressure();
        double leak =
                Si.kilogramsPerSecond(
                        glassTo(180, Ventilation.none())
                                .compile(site)
                                .coolingLoad(day, KEPT)
                                .infiltration(12),
                        "leak");
        for (double flow : new double[] {2, 5, 10, 40}) {
            Ventilation fans = Ventilation.unbalanced(litresPerSecond(flow));
            DesignLoad load = glassTo(180, fans).compile(site).coolingLoad(day, KEPT);
            double fan = Ventilation.balanced(litresPerSecond(flow)).supplyDryAirMassFlow(p);
            double both = Si.kilogramsPerSecond(load.infiltration(12), "both");
            // max(Q_u, Q_i + Q_u / 2): ASHRAE Fundamentals 2021, ch. 17, combining flows
            assertThat(both).isCloseTo(Math.max(fan, leak + fan / 2), within(1e-12));
            assertThat(Si.kilogramsPerSecond(load.ventilation(), "supply")).isZero();
        }
    }

    @Test
    void printed_lines_of_every_room_add_up_to_the_printed_sum() {
        Site site = SampleHouses.site(2000);
        CompiledHouse house = SampleHouses.tenRooms().compile(site);
        DesignLoad[] loads = {
            house.coolingLoad(SampleHouses.hotDay(site), Setpoint.residentialCooling()),
            house.heatingLoad(SampleHouses.coldDay(site), Setpoint.residentialHeating())
        };
        for (DesignLoad load : loads) {
            for (String room : load.rooms()) {
                String[] lines = load.table(room).split("\n");
                double sum = 0;
                double printed = Double.NaN;
                for (int i = 2; i < lines.length; i++) {
                    String[] words = lines[i].trim().split("\\s+");
                    double watts = Double.parseDouble(words[words.length - 2]);
                    assertThat(lines[i].substring(0, 28)).isNotBlank();
                    if (words[0].equals("sum")) {
                        printed = watts;
                    } else {
                        sum += watts;
                    }
                }
                assertThat(printed).isCloseTo(sum, within(0.05 * lines.length));
                int hour = load.roomPeakHour(room);
                assertThat(printed)
                        .isCloseTo(Si.watts(load.sensible(room, hour), "sensible"), within(0.051));
            }
        }
    }
}
