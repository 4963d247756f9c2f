package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.gramsPerKilogram;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.metresPerSecond;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareCentimetres;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Si;
import dev.thinair.working.Working;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class WeatherTypesTest {

    private static final Exposure HOUSE = Exposure.of(2, InfiltrationModel.Shelter.HEAVY);

    private static Site at(double latitude, double longitude, int zone, double elevation) {
        return Site.of(
                "somewhere",
                degrees(latitude),
                degrees(longitude),
                ZoneOffset.ofHours(zone),
                metres(elevation));
    }

    private static CoolingDesignDay.Builder july(Site site) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(33.1))
                .dailyRange(kelvinDifference(11.2))
                .wetBulb(celsius(23.3))
                .opticalDepths(0.515, 2.066);
    }

    @Test
    void site_says_where_it_is() {
        Site site =
                Site.of(
                        "Pine Flat",
                        degrees(39.5),
                        degrees(-106),
                        ZoneOffset.ofHours(-7),
                        feet(8000));
        assertThat(site.toString()).isEqualTo("Pine Flat (39.50°N, 106.00°W, 2438 m, 75.26 kPa)");
        assertThat(site.withPressure(kilopascals(74)).pascals()).isCloseTo(74_000, within(1e-6));
        assertThat(site.withElevation(metres(0)).pascals()).isCloseTo(101_325, within(1e-6));
        assertThat(site.withGroundReflectance(ratio(0.7)).reflectance()).isEqualTo(0.7);
        assertThat(site.groundKelvins()).isEmpty();
        assertThat(site.withGroundTemperature(celsius(8)).groundKelvins()).hasValue(281.15);
        assertThat(site).isEqualTo(site.withElevation(feet(8000))).hasSameHashCodeAs(site);
        assertThat(site).isNotEqualTo(site.withGroundReflectance(ratio(0.3)));
    }

    @Test
    void daylight_is_one_of_three_cases() {
        Daylight usual = at(40, -105, -7, 1600).daylight(LocalDate.of(2026, 6, 21));
        assertThat(usual).isInstanceOf(Daylight.RisesAndSets.class);
        Daylight.RisesAndSets day = (Daylight.RisesAndSets) usual;
        assertThat(day.sunset()).isAfter(day.sunrise());
        assertThat(at(78.2, 15.6, 1, 10).daylight(LocalDate.of(2026, 6, 21)))
                .isEqualTo(new Daylight.UpAllDay());
        assertThat(at(78.2, 15.6, 1, 10).daylight(LocalDate.of(2026, 12, 21)))
                .isEqualTo(new Daylight.DownAllDay());
    }

    @Test
    void polar_day_and_night_are_design_days_too() {
        Site north = at(78.2, 15.6, 1, 10);
        CoolingDesignDay summer =
                july(north)
                        .dryBulb(celsius(12))
                        .dailyRange(kelvinDifference(3))
                        .wetBulb(celsius(9))
                        .date(LocalDate.of(2026, 6, 21))
                        .build();
        for (int h = 0; h < 24; h++) {
            assertThat(summer.outdoorHours().beamNormal(h)).isPositive();
        }
        CoolingDesignDay night =
                july(north)
                        .dryBulb(celsius(-2))
                        .dailyRange(kelvinDifference(3))
                        .wetBulb(celsius(-3))
                        .date(LocalDate.of(2026, 12, 21))
                        .build();
        for (int h = 0; h < 24; h++) {
            assertThat(night.outdoorHours().beamNormal(h)).isZero();
            assertThat(night.outdoorHours().diffuseHorizontal(h)).isZero();
        }
        assertThat(night.daylight()).isEqualTo(new Daylight.DownAllDay());
    }

    @Test
    void equatorial_noon_sun_stands_north_in_june_and_south_in_december() {
        Site equator = at(0, 30, 2, 1200);
        OutdoorHours june = july(equator).date(LocalDate.of(2026, 6, 21)).build().outdoorHours();
        OutdoorHours december =
                july(equator).date(LocalDate.of(2026, 12, 21)).build().outdoorHours();
        assertThat(Math.cos(june.sunAzimuth(12))).isGreaterThan(0.9);
        assertThat(Math.cos(december.sunAzimuth(12))).isLessThan(-0.9);
        assertThat(Math.toDegrees(june.sunAltitude(12))).isCloseTo(66.5, within(0.6));
    }

    @Test
    void cooling_day_follows_the_handbook() {
        CoolingDesignDay day = july(at(33.64, -84.43, -5, 313)).build();
        assertThat(Si.kelvins(day.dryBulb(), "t")).isCloseTo(306.25, within(1e-9));
        assertThat(Si.kelvins(day.dryBulb(1), "t") - 273.15).isCloseTo(23.24, within(0.01));
        OutdoorHours hours = day.outdoorHours();
        double peak = IdealMoistAir.humidityRatioFromWetBulb(306.25, 296.45, hours.pressure());
        assertThat(hours.humidityRatio(15)).isCloseTo(peak, within(1e-12));
        assertThat(hours.windSpeed(3)).isEqualTo(3.4);
        assertThat(hours.beamNormal(2)).isZero();
        // Table 29A prints 739.6 W/m2 at 15 h from its tabulated declination.
        assertThat(hours.beamNormal(15)).isCloseTo(739.6, within(3.0));
        assertThat(day.toString()).contains("33.1 °C").contains("2026-07-21");
    }

    @Test
    void cooling_day_takes_given_temperatures_other_skies_and_moisture() {
        Site site = at(39, -106, -7, 2_400);
        List<Quantity<Temperature>> values = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            values.add(celsius(20 + (h == 16 ? 9 : h % 5)));
        }
        CoolingDesignDay day =
                CoolingDesignDay.at(site)
                        .date(LocalDate.of(2026, 8, 1))
                        .dryBulbs(values)
                        .humidityRatio(gramsPerKilogram(7))
                        .hottelSky(ClearSky.HottelClimate.MIDLATITUDE_SUMMER)
                        .wind(metresPerSecond(2))
                        .sunMethod(DesignDays.SunMethod.GRENA)
                        .build();
        assertThat(Si.kelvins(day.dryBulb(), "t")).isCloseTo(302.15, within(1e-9));
        assertThat(Si.humidityRatio(day.humidityRatio(9), "w")).isCloseTo(0.007, within(1e-15));
        assertThat(day.outdoorHours().beamNormal(12)).isGreaterThan(900);
        assertThat(day.outdoorHours().windSpeed(0)).isEqualTo(2);
        CoolingDesignDay dark =
                CoolingDesignDay.at(site)
                        .date(LocalDate.of(2026, 8, 1))
                        .dryBulbs(values)
                        .humidityRatio(gramsPerKilogram(7))
                        .withoutSun()
                        .build();
        assertThat(dark.outdoorHours().beamNormal(12)).isZero();
        assertThat(dark.irradianceWorking(12, degrees(180), degrees(90)).toText())
                .contains("without sun");
    }

    @Test
    void the_same_day_at_another_elevation_holds_other_air() {
        CoolingDesignDay low = july(at(39, -106, -7, 0)).build();
        CoolingDesignDay high = low.withSite(at(39, -106, -7, 3_000));
        assertThat(high.outdoorHours().pressure()).isLessThan(72_000);
        assertThat(high.outdoorHours().humidityRatio(15))
                .isGreaterThan(low.outdoorHours().humidityRatio(15));
        assertThat(high.date()).isEqualTo(low.date());
    }

    @Test
    void wet_bulb_range_and_profiles() {
        Site site = at(33.64, -84.43, -5, 313);
        OutdoorHours own = july(site).wetBulbRange(kelvinDifference(3)).build().outdoorHours();
        double wet = IdealMoistAir.wetBulb(own.dryBulb(9), own.humidityRatio(9), own.pressure());
        assertThat(wet - 273.15).isCloseTo(23.3 - 3 * 0.55, within(1e-6));
        OutdoorHours solar =
                july(site)
                        .profile(DailyProfile.FUNDAMENTALS_2009_TO_2021, true)
                        .build()
                        .outdoorHours();
        assertThat(solar.dryBulb(0) - 273.15).isCloseTo(24.7, within(0.06));
    }

    @Test
    void mountains_hide_the_morning_sun() {
        Site open = at(39, -106, -7, 2_400);
        Site valley =
                open.withHorizon(
                        Horizon.level()
                                .with(degrees(45), degrees(25))
                                .with(degrees(135), degrees(25))
                                .with(degrees(136), degrees(0))
                                .with(degrees(44), degrees(0)));
        OutdoorHours free = july(open).build().outdoorHours();
        OutdoorHours hidden = july(valley).build().outdoorHours();
        assertThat(free.beamNormal(6)).isPositive();
        assertThat(hidden.beamNormal(6)).isZero();
        assertThat(hidden.beamNormal(12)).isEqualTo(free.beamNormal(12));
        assertThat(hidden.diffuseHorizontal(6)).isEqualTo(free.diffuseHorizontal(6));
        assertThat(valley.horizon().toString()).contains("25° at 45°");
        assertThat(Horizon.level().toString()).isEqualTo("level horizon");
        assertThat(Horizon.level().with(degrees(10), degrees(3)).with(degrees(10), degrees(5)))
                .isEqualTo(Horizon.level().with(degrees(10), degrees(5)));
        assertThat(Si.radians(valley.horizon().altitude(degrees(90)), "altitude"))
                .isCloseTo(Math.toRadians(25), within(1e-9));
    }

    @Test
    void heating_day_is_steady_and_dark() {
        Site site = at(39, -106, -7, 2_400).withGroundTemperature(celsius(6));
        HeatingDesignDay day =
                HeatingDesignDay.of(site, celsius(-22))
                        .withWind(metresPerSecond(4))
                        .withRelativeHumidity(percent(60));
        OutdoorHours hours = day.outdoorHours();
        for (int h = 0; h < 24; h++) {
            assertThat(hours.dryBulb(h)).isEqualTo(day.kelvins());
            assertThat(hours.beamNormal(h) + hours.diffuseHorizontal(h)).isZero();
        }
        assertThat(day.metresPerSecond()).isEqualTo(4);
        assertThat(day.kilogramsPerKilogram())
                .isCloseTo(
                        IdealMoistAir.humidityRatioFromRelativeHumidity(
                                251.15, 0.6, site.pascals()),
                        within(1e-12));
        assertThat(day.groundKelvins()).isCloseTo(279.15, within(1e-9));
        assertThat(day.withSite(at(39, -106, -7, 0)).pascals()).isCloseTo(101_325, within(1e-6));
        assertThat(day.toString()).contains("-22.0 °C (-7.6 °F)");
    }

    @Test
    void window_gain_joins_glass_shade_and_shadow() {
        Site site = at(33.64, -84.43, -5, 313);
        OutdoorHours hours = july(site).build().outdoorHours();
        Window bare =
                Window.of(
                        "w",
                        metres(2),
                        metres(1.5),
                        wattsPerSquareMetreKelvin(2),
                        Glazing.clearDouble().scaledTo(0.4));
        double west = Math.toRadians(240);
        double[] total = new double[24];
        double[] beam = new double[24];
        double[] diffuse = new double[24];
        bare.solarGain(hours, west, Math.PI / 2, total);
        bare.solarParts(hours, west, Math.PI / 2, beam, diffuse);
        double[] onPlane = new double[24];
        hours.incident(west, Math.PI / 2, onPlane);
        for (int h = 0; h < 24; h++) {
            assertThat(beam[h] + diffuse[h]).isCloseTo(total[h], within(1e-9));
            assertThat(total[h]).isLessThanOrEqualTo(3 * onPlane[h] * 0.4 + 1e-9);
        }
        assertThat(total[17]).isGreaterThan(500);
        Window shaded = bare.withShade(Shade.interior("blind", ratio(0.68), ratio(0.5)));
        double[] less = new double[24];
        shaded.solarGain(hours, west, Math.PI / 2, less);
        assertThat(less[17] / total[17]).isCloseTo(0.84, within(1e-12));
        assertThat(shaded.solarRadiantFraction()).isCloseTo(1 - 0.5 * 0.54, within(1e-12));
        assertThat(bare.solarRadiantFraction()).isEqualTo(1);
        assertThat(bare.conductionRadiantFraction()).isEqualTo(0.46);
        assertThat(bare.withGlazing(Glazing.clearSingle()).conductionRadiantFraction())
                .isEqualTo(0.33);
        Window under = bare.withOverhang(Overhang.alongWall(metres(3), metres(0)));
        under.solarGain(hours, west, Math.PI / 2, less);
        assertThat(less[14]).isCloseTo(diffuse[14], within(1e-9));
        Window between = bare.withFins(Fins.bothSides(metres(0.5), metres(0.1)));
        between.solarGain(hours, west, Math.PI / 2, less);
        assertThat(less[13]).isLessThan(total[13]);
        assertThat(bare).isEqualTo(bare.withFins(Fins.none())).isNotEqualTo(between);
    }

    @Test
    void workings_end_in_the_result_and_recompute_themselves() {
        Site site = at(39, -106, -7, 2_400);
        CoolingDesignDay day = july(site).wetBulb(celsius(18)).build();
        Window window =
                Window.of(
                                "west",
                                metres(1.2),
                                metres(1.5),
                                wattsPerSquareMetreKelvin(2),
                                Glazing.clearDouble())
                        .withShade(Shade.interior("blind", ratio(0.7), ratio(0.5)))
                        .withOverhang(Overhang.alongWall(metres(0.4), metres(0.1)));
        for (int hour : new int[] {3, 9, 15, 18}) {
            double[] out = new double[24];
            day.outdoorHours().incident(Math.toRadians(250), Math.toRadians(70), out);
            Working plane = day.irradianceWorking(hour, degrees(250), degrees(70));
            recomputes(plane, out[hour]);
            window.solarGain(day.outdoorHours(), Math.toRadians(250), Math.toRadians(70), out);
            Working gain = window.gainWorking(day, hour, degrees(250), degrees(70), celsius(24));
            recomputes(gain, out[hour] + 1.8 * 2 * (day.outdoorHours().dryBulb(hour) - 297.15));
        }
        for (Infiltration leak :
                List.of(
                        Infiltration.blowerDoor(cubicFeetPerMinute(2000), ratio(0.65), HOUSE),
                        Infiltration.blowerDoor(cubicFeetPerMinute(2000), ratio(0.65), HOUSE)
                                .with(Infiltration.Model.BASIC),
                        Infiltration.leakageArea(squareCentimetres(500), HOUSE),
                        Infiltration.leakageArea(squareCentimetres(500), HOUSE.withFlue())
                                .with(Infiltration.Model.ENHANCED),
                        Infiltration.airChanges(airChangesPerHour(0.4), cubicMetres(300)))) {
            Working flow =
                    leak.working(celsius(20), celsius(-10), metresPerSecond(5), kilopascals(75));
            recomputes(flow, leak.volumeFlow(293.15, 263.15, 5, 75_000));
        }
    }

    private static void recomputes(Working working, double expected) {
        assertThat(working.result().getValue().doubleValue())
                .isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
        for (Working.Step step : working.steps()) {
            double printed = step.result().getValue().doubleValue();
            step.recomputed()
                    .ifPresent(
                            value ->
                                    assertThat(value)
                                            .as(step.toString())
                                            .isCloseTo(
                                                    printed,
                                                    within(1e-9 * Math.max(1, Math.abs(printed)))));
        }
    }

    @Test
    void glazing_tables_scale_and_read() {
        Glazing glass =
                Glazing.ofTable(
                        "5d",
                        new double[] {0, 40, 50, 60, 70, 80, 90},
                        new double[] {0.49, 0.46, 0.44, 0.39, 0.31, 0.17, 0},
                        0.41);
        assertThat(glass.beam(58.45)).isCloseTo(0.3978, within(0.0002)); // LD-C048
        assertThat(glass.beam(80.23)).isCloseTo(0.166, within(0.0006)); // LD-C049
        assertThat(glass.beam(90)).isZero();
        assertThat(glass.diffuse()).isEqualTo(0.41);
        Glazing half = glass.scaledTo(0.245);
        assertThat(half.beam(60)).isCloseTo(0.195, within(1e-12));
        assertThat(half.diffuse()).isCloseTo(0.205, within(1e-12));
        Glazing own =
                Glazing.ofTable(
                        "5d",
                        new double[] {0, 40, 50, 60, 70, 80, 90},
                        new double[] {0.49, 0.46, 0.44, 0.39, 0.31, 0.17, 0});
        assertThat(own.diffuse()).isCloseTo(0.41, within(0.015));
        assertThat(glass).isNotEqualTo(own);
        assertThat(glass.toString()).contains("5d").contains("0.490");
    }

    @Test
    void infiltration_by_test_area_and_rate() {
        Infiltration.BlowerDoor door =
                Infiltration.blowerDoor(airChangesPerHour(5), cubicMetres(360), ratio(0.65), HOUSE);
        assertThat(door.flowAt50()).isCloseTo(0.5, within(1e-12));
        assertThat(Si.squareMetres(door.effectiveLeakageArea(), "a") * 1e4)
                .isCloseTo(375.634, within(0.02)); // LD-D016
        assertThat(Si.perSecond(door.airChangesAt50(cubicMetres(360)), "n") * 3600)
                .isCloseTo(5, within(1e-9));
        double sea = door.volumeFlow(293, 273, 4, 101_325);
        double high = door.volumeFlow(293, 273, 4, 70_000);
        assertThat(high / sea).isCloseTo(Math.pow(70_000 / 101_325.0, 0.3), within(1e-9));
        assertThat(door.dryAirMassFlow(293, 273, 0.002, 4, 70_000))
                .isCloseTo(high / IdealMoistAir.specificVolume(273, 0.002, 70_000), within(1e-12));
        // A flow read in thin air would be smaller in thick air: c falls as density rises.
        assertThat(door.measuredAt(kilopascals(70)).flowAt50()).isLessThan(door.flowAt50());
        Infiltration.LeakageArea area =
                new Infiltration.LeakageArea(
                        Si.squareMetres(door.effectiveLeakageArea(), "a"),
                        0.65,
                        HOUSE,
                        Infiltration.Model.ENHANCED);
        assertThat(area.volumeFlow(293, 273, 4, 80_000))
                .isCloseTo(door.volumeFlow(293, 273, 4, 80_000), within(1e-12));
        assertThat(Infiltration.none().volumeFlow(293, 273, 4, 80_000)).isZero();
        assertThat(
                        Infiltration.airChanges(airChangesPerHour(0.5), cubicMetres(360))
                                .volumeFlow(293, 273, 9, 60_000))
                .isCloseTo(0.05, within(1e-12));
        assertThat(
                        Si.cubicMetresPerSecond(
                                door.flow(
                                        celsius(20),
                                        celsius(0),
                                        metresPerSecond(4),
                                        kilopascals(80)),
                                "q"))
                .isEqualTo(door.volumeFlow(293.15, 273.15, 4, 80_000));
        assertThat(HOUSE.withFlue().overCrawlSpace())
                .isEqualTo(new Exposure(2, InfiltrationModel.Shelter.HEAVY, true, true));
    }

    @Test
    void ventilation_meets_infiltration() {
        Ventilation none = Ventilation.none();
        assertThat(none.combinedInfiltration(0.03, 80_000)).isEqualTo(0.03);
        double v = IdealMoistAir.specificVolume(293.15, 0, 80_000);
        Ventilation exhaust = Ventilation.unbalanced(Units3.litres(60));
        assertThat(exhaust.combinedInfiltration(0, 80_000)).isCloseTo(0.06 / v, within(1e-12));
        assertThat(exhaust.combinedInfiltration(1, 80_000)).isCloseTo(1 + 0.03 / v, within(1e-12));
        Ventilation recovery =
                Ventilation.balanced(Units3.litres(43), ratio(0.7), ratio(0.4))
                        .withUnbalanced(Units3.litres(10));
        assertThat(recovery.supplyDryAirMassFlow(80_000)).isCloseTo(0.043 / v, within(1e-12));
        assertThat(recovery.sensibleEffectiveness()).isEqualTo(0.7);
        assertThat(recovery.latentEffectiveness()).isEqualTo(0.4);
        assertThat(Si.cubicMetresPerSecond(recovery.unbalancedFlow(), "q"))
                .isCloseTo(0.01, within(1e-15));
        assertThat(Si.cubicMetresPerSecond(recovery.balancedFlow(), "q"))
                .isCloseTo(0.043, within(1e-15));
    }

    /** Keeps the static import list short. */
    private static final class Units3 {
        static Quantity<dev.thinair.units.VolumeFlow> litres(double value) {
            return dev.thinair.units.Units.litresPerSecond(value);
        }
    }

    @Test
    void gains_follow_their_schedule() {
        Occupants family =
                Occupants.of(4, Occupants.Activity.SEATED_LIGHT_WORK).on(Schedule.between(18, 7));
        assertThat(family.sensible(20)).isEqualTo(280);
        assertThat(family.latent(3)).isEqualTo(180);
        assertThat(family.sensible(12)).isZero();
        assertThat(family.schedule().fullHours()).isEqualTo(13);
        assertThat(Schedule.between(0, 24)).isEqualTo(Schedule.always());
        assertThat(Schedule.always().fullHours()).isEqualTo(24);
        // LD-C046, C047: trade rules.
        assertThat(Occupants.tradeAllowance(1).sensible(0))
                .isCloseTo(230 * 0.29307107, within(1e-5));
        assertThat(Appliances.tradeKitchenAllowance().sensible(0))
                .isCloseTo(1200 * 0.29307107, within(1e-4));
        // LD-C040 less the people's 22 W each.
        Appliances base = Appliances.residential(squareMetres(195.3));
        assertThat(base.sensible(5) + 4 * 22).isCloseTo(654, within(0.6));
        assertThat(base.latent(5) + 4 * 12).isCloseTo(111, within(0.6));
        Lighting lights =
                Lighting.of(
                        dev.thinair.units.Units.watts(110), ratio(0.57), Schedule.between(7, 19));
        assertThat(lights.sensible(18)).isEqualTo(110);
        assertThat(lights.sensible(19)).isZero();
        assertThat(lights.latent(18)).isZero();
        assertThat(lights.radiantFraction()).isEqualTo(0.57);
        assertThat(lights.name()).isEqualTo("lights");
        double[] shares = new double[24];
        Arrays.fill(shares, 0.25);
        assertThat(base.on(Schedule.of(shares)).sensible(9))
                .isCloseTo(base.sensible(9) / 4, within(1e-12));
    }

    @Test
    void ground_contact_in_four_ways() {
        Ground edge = Ground.slabEdge(wattsPerMetreKelvin(0.85), metres(67.2));
        assertThat(edge.conductance(195.3, 1)).isCloseTo(0.85 * 67.2, within(1e-9));
        assertThat(edge.boundaryTemperature(260, 283)).isEqualTo(260);
        Ground iso = Ground.slabOnGround(metres(40), metres(0.3), wattsPerMetreKelvin(2));
        assertThat(iso.conductance(100, 2.5)).isCloseTo(24.984, within(0.005)); // LD-B176
        assertThat(iso.boundaryTemperature(260, 283)).isEqualTo(283);
        Ground wall =
                Ground.basementWall(metres(2.4), wattsPerMetreKelvin(1.4), kelvinDifference(10));
        // LD-B168 with the film of 0.13 inside its 0.259.
        assertThat(wall.conductance(10, 0.129)).isCloseTo(9.02, within(0.03));
        assertThat(wall.boundaryTemperature(260, 283)).isEqualTo(273);
        Ground floor =
                Ground.basementFloor(
                        metres(8), metres(1.2), wattsPerMetreKelvin(1.4), kelvinDifference(10));
        assertThat(floor.conductance(50, 0.089))
                .isCloseTo(50 * GroundContact.floorTransmittance(8, 1.2, 1.4, 0.259), within(1e-9));
        OutdoorHours hours =
                july(at(39, -106, -7, 2_400).withGroundTemperature(celsius(7)))
                        .build()
                        .outdoorHours();
        assertThat(edge.boundaryTemperature(hours)).isEqualTo(hours.meanDryBulb());
        for (Ground deep : List.of(iso, wall, floor)) {
            assertThat(deep.boundaryTemperature(hours)).isEqualTo(280.15);
        }
    }

    @Test
    void year_from_monthly_means_is_the_same_every_time() {
        Site site = at(39, -106, -7, 2_400);
        HourlyWeather.Year builder = HourlyWeather.yearAt(site).deviation(kelvinDifference(0));
        for (Month m : Month.values()) {
            double summer = 0.5 - 0.5 * Math.cos((m.getValue() - 1) / 6.0 * Math.PI);
            builder.month(
                    m,
                    celsius(-8 + 24 * summer),
                    kelvinDifference(14),
                    gramsPerKilogram(2 + 5 * summer),
                    metresPerSecond(3),
                    percent(40),
                    0.3,
                    2.4);
        }
        HourlyWeather year = builder.build();
        assertThat(year.hours()).isEqualTo(8_760);
        assertThat(year.start()).isEqualTo(LocalDateTime.of(2026, 1, 1, 0, 0));
        HourlyWeather again = builder.build();
        for (int i = 0; i < 8_760; i += 97) {
            assertThat(again.outdoorHours().dryBulb(i)).isEqualTo(year.outdoorHours().dryBulb(i));
            assertThat(again.outdoorHours().beamNormal(i))
                    .isEqualTo(year.outdoorHours().beamNormal(i));
        }
        double july = 0;
        int first = 24 * 181;
        for (int i = 0; i < 31 * 24; i++) {
            july += year.outdoorHours().dryBulb(first + i) / (31 * 24);
        }
        assertThat(july - 273.15).isCloseTo(16, within(0.7));
        assertThat(Si.kelvins(year.dryBulb(first + 15), "t"))
                .isGreaterThan(Si.kelvins(year.dryBulb(first + 5), "t"));
        assertThat(Si.humidityRatio(year.humidityRatio(first), "w")).isBetween(0.005, 0.0075);
        assertThat(year.toString()).contains("8760 hours");
    }

    @Test
    void year_between_design_days_meets_them_about_as_often_as_it_should() {
        Site site = at(33.64, -84.43, -5, 313);
        CoolingDesignDay hot = july(site).dailyRange(kelvinDifference(9.3)).build();
        HeatingDesignDay cold = HeatingDesignDay.of(site, celsius(-3.5));
        HourlyWeather year = HourlyWeather.between(hot, cold, 0.45, 2.2);
        int above = 0;
        int below = 0;
        for (int i = 0; i < year.hours(); i++) {
            double t = year.outdoorHours().dryBulb(i);
            above += t > 306.25 ? 1 : 0;
            below += t < 269.65 ? 1 : 0;
        }
        assertThat(above).isBetween(35, 140);
        assertThat(below).isBetween(35, 140);
        // South of the equator the seasons turn round with the cooling day's date.
        Site south = at(-33.64, 150, 10, 313);
        CoolingDesignDay january = july(south).date(LocalDate.of(2026, 1, 21)).build();
        HourlyWeather other =
                HourlyWeather.between(january, HeatingDesignDay.of(south, celsius(0)), 0.45, 2.2);
        assertThat(other.outdoorHours().dryBulb(20 * 24 + 15))
                .isGreaterThan(other.outdoorHours().dryBulb(200 * 24 + 15) + 15);
    }

    @Test
    void measured_weather_is_kept_as_given() {
        Site site = at(39, -106, -7, 2_400);
        int n = 48;
        double[] dry = new double[n];
        double[] moist = new double[n];
        double[] wind = new double[n];
        double[] beam = new double[n];
        double[] diffuse = new double[n];
        for (int i = 0; i < n; i++) {
            dry[i] = 280 + i;
            moist[i] = 0.003;
            wind[i] = 1;
            beam[i] = i % 24 == 12 ? 900 : 0;
            diffuse[i] = 50;
        }
        HourlyWeather weather =
                HourlyWeather.of(
                        site, LocalDateTime.of(2026, 3, 1, 6, 0), dry, moist, wind, beam, diffuse);
        OutdoorHours hours = weather.outdoorHours();
        assertThat(hours.count()).isEqualTo(n);
        assertThat(hours.periodic()).isFalse();
        assertThat(hours.hourOfDay(0)).isEqualTo(6);
        assertThat(hours.dryBulb(5)).isEqualTo(285);
        assertThat(hours.beamNormal(12)).isEqualTo(900);
        assertThat(Math.toDegrees(hours.sunAltitude(6))).isBetween(35.0, 50.0);
        assertThat(weather.site()).isEqualTo(site);
    }
}
