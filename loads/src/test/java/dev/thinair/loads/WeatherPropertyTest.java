package dev.thinair.loads;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.loads.kernel.RadiantTimeSeries;
import dev.thinair.loads.kernel.Shading;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.Transposition;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class WeatherPropertyTest {

    private static final double D = Math.PI / 180;
    private static final ClearSky.Edition EDITION = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;

    @Property(tries = 300)
    void hemispheres_mirror(
            @ForAll @DoubleRange(min = -90, max = 90) @Scale(6) double latitude,
            @ForAll @DoubleRange(min = -23.45, max = 23.45) @Scale(6) double declination,
            @ForAll @DoubleRange(min = -180, max = 180) @Scale(6) double hour) {
        double north = Sun.altitude(latitude * D, declination * D, hour * D);
        double south = Sun.altitude(-latitude * D, -declination * D, hour * D);
        assertThat(south).isCloseTo(north, within(1e-12));
        double a = Sun.azimuth(latitude * D, declination * D, hour * D);
        double b = Sun.azimuth(-latitude * D, -declination * D, hour * D);
        // Mirrored about the east-west line: north becomes south.
        // Weighted by the level part of the direction: at the zenith there is no azimuth.
        double level = Math.cos(north);
        assertThat(level * Math.sin(a)).isCloseTo(level * Math.sin(b), within(1e-9));
        assertThat(level * Math.cos(a)).isCloseTo(-level * Math.cos(b), within(1e-9));
    }

    @Property(tries = 300)
    void morning_mirrors_evening(
            @ForAll @DoubleRange(min = -89, max = 89) @Scale(6) double latitude,
            @ForAll @DoubleRange(min = -23.45, max = 23.45) @Scale(6) double declination,
            @ForAll @DoubleRange(min = 1, max = 179) @Scale(6) double hour) {
        double a = Sun.azimuth(latitude * D, declination * D, hour * D);
        double b = Sun.azimuth(latitude * D, declination * D, -hour * D);
        assertThat(Math.sin(a)).isCloseTo(-Math.sin(b), within(1e-9));
        assertThat(a).isBetween(Math.PI, 2 * Math.PI);
        assertThat(b).isBetween(0.0, Math.PI);
    }

    @Property(tries = 300)
    void sun_is_up_within_its_arc(
            @ForAll @DoubleRange(min = -90, max = 90) @Scale(4) double latitude,
            @ForAll @DoubleRange(min = -23.45, max = 23.45) @Scale(4) double declination,
            @ForAll @DoubleRange(min = 0, max = 180) @Scale(4) double hour) {
        double arc = Sun.sunsetHourAngle(latitude * D, declination * D);
        double altitude = Sun.altitude(latitude * D, declination * D, hour * D);
        if (hour * D < arc - 1e-6) {
            assertThat(altitude).isGreaterThan(-1e-9);
        } else if (hour * D > arc + 1e-6) {
            assertThat(altitude).isLessThan(1e-9);
        }
    }

    @Property(tries = 300)
    void beam_grows_with_altitude_and_falls_with_depth(
            @ForAll @DoubleRange(min = 1, max = 89) @Scale(4) double altitude,
            @ForAll @DoubleRange(min = 0.15, max = 1) @Scale(4) double taub,
            @ForAll @DoubleRange(min = 1.4, max = 2.8) @Scale(4) double taud) {
        double here = ClearSky.beamNormal(EDITION, 1367, altitude * D, taub, taud);
        assertThat(ClearSky.beamNormal(EDITION, 1367, (altitude + 1) * D, taub, taud))
                .isGreaterThan(here);
        assertThat(here).isBetween(0.0, 1367.0);
        assertThat(ClearSky.airMass(altitude * D))
                .isGreaterThan(ClearSky.airMass((altitude + 1) * D));
        // At the zenith the air mass is one and only the depth itself counts.
        assertThat(ClearSky.beamNormal(EDITION, 1367, Math.PI / 2, taub + 0.1, taud))
                .isLessThan(ClearSky.beamNormal(EDITION, 1367, Math.PI / 2, taub, taud));
    }

    @Property(tries = 300)
    void hottel_lets_more_through_the_higher_the_site(
            @ForAll @DoubleRange(min = 0, max = 2_400) @Scale(2) double elevation,
            @ForAll @DoubleRange(min = 10, max = 90) @Scale(4) double altitude) {
        for (ClearSky.HottelClimate climate : ClearSky.HottelClimate.values()) {
            double here = ClearSky.hottelTransmittance(climate, elevation, altitude * D);
            double above = ClearSky.hottelTransmittance(climate, elevation + 100, altitude * D);
            assertThat(above).isGreaterThan(here);
            assertThat(here).isBetween(0.0, 1.0);
        }
    }

    @Property(tries = 300)
    void irradiance_is_linear_in_its_sources_and_never_negative(
            @ForAll @DoubleRange(min = -20, max = 90) @Scale(4) double altitude,
            @ForAll @DoubleRange(min = 0, max = 360) @Scale(4) double sun,
            @ForAll @DoubleRange(min = 0, max = 180) @Scale(4) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) @Scale(4) double azimuth) {
        double both = total(600, 150, altitude, sun, tilt, azimuth);
        double beam = total(600, 0, altitude, sun, tilt, azimuth);
        double diffuse = total(0, 150, altitude, sun, tilt, azimuth);
        assertThat(both).isCloseTo(beam + diffuse, within(1e-9)).isGreaterThanOrEqualTo(0);
        assertThat(total(1200, 300, altitude, sun, tilt, azimuth))
                .isCloseTo(2 * both, within(1e-9));
        assertThat(total(600, 150, altitude, sun + 360, tilt, azimuth))
                .isCloseTo(both, within(1e-9));
    }

    private static double total(
            double beam, double diffuse, double altitude, double sun, double tilt, double azimuth) {
        return Transposition.total(
                beam, diffuse, altitude * D, sun * D, tilt * D, azimuth * D, 0.2);
    }

    @Property(tries = 300)
    void shading_stays_a_share_and_grows_with_the_overhang(
            @ForAll @DoubleRange(min = 1, max = 89) @Scale(4) double altitude,
            @ForAll @DoubleRange(min = -89, max = 89) @Scale(4) double relative,
            @ForAll @DoubleRange(min = 0, max = 3) @Scale(4) double depth,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double gap,
            @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double extension,
            @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double fin) {
        double share = share(altitude, relative, depth, gap, extension, fin);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(share(altitude, relative, depth + 0.1, gap, extension, fin))
                .isLessThanOrEqualTo(share + 1e-12);
        assertThat(share(altitude, relative, depth, gap, extension + 0.1, fin))
                .isLessThanOrEqualTo(share + 1e-12);
        assertThat(share(altitude, relative, depth, gap, extension, fin + 0.1))
                .isLessThanOrEqualTo(share + 1e-12);
        assertThat(share(altitude, relative, depth, gap + 0.1, extension, fin))
                .isGreaterThanOrEqualTo(share - 1e-12);
    }

    private static double share(
            double altitude,
            double relative,
            double depth,
            double gap,
            double extension,
            double fin) {
        return Shading.sunlitShare(
                1.4,
                1.1,
                depth,
                gap,
                extension,
                fin,
                0.05,
                fin,
                0.05,
                altitude * D,
                (200 + relative) * D,
                Math.PI / 2,
                200 * D);
    }

    @Property(tries = 300)
    void glass_of_panes_conserves_energy_and_fades_toward_grazing(
            @ForAll @DoubleRange(min = 0, max = 89.9) @Scale(4) double angle,
            @ForAll @DoubleRange(min = 1.2, max = 2) @Scale(4) double index,
            @ForAll @DoubleRange(min = 0, max = 3) @Scale(4) double extinction) {
        double[] out = new double[3];
        GlazingOptics.pane(Math.cos(angle * D), index, extinction, out);
        assertThat(out[0] + out[1] + out[2]).isCloseTo(1, within(1e-12));
        assertThat(out[0]).isBetween(0.0, 1.0);
        assertThat(out[1]).isBetween(0.0, 1.0);
        double one =
                GlazingOptics.shgcOfPanes(1, Math.cos(angle * D), index, extinction, 0.3, 0, out);
        double two =
                GlazingOptics.shgcOfPanes(
                        2, Math.cos(angle * D), index, extinction, 0.15, 0.3, out);
        assertThat(two).isLessThanOrEqualTo(one + 1e-12);
    }

    @Property(tries = 300)
    void leakage_grows_with_hole_weather_and_stories(
            @ForAll @DoubleRange(min = 0.001, max = 0.5) @Scale(4) double coefficient,
            @ForAll @DoubleRange(min = 0.5, max = 0.8) @Scale(4) double exponent,
            @ForAll @DoubleRange(min = -40, max = 40) @Scale(3) double difference,
            @ForAll @DoubleRange(min = 0, max = 20) @Scale(3) double wind,
            @ForAll boolean enhanced,
            @ForAll @IntRange(min = 1, max = 2) int stories) {
        double here = flow(enhanced, coefficient, exponent, stories, difference, wind, 90_000);
        assertThat(here).isNotNegative();
        assertThat(flow(enhanced, 2 * coefficient, exponent, stories, difference, wind, 90_000))
                .isCloseTo(2 * here, within(1e-9));
        assertThat(flow(enhanced, coefficient, exponent, stories, difference, wind + 1, 90_000))
                .isGreaterThanOrEqualTo(here);
        assertThat(flow(enhanced, coefficient, exponent, stories, -difference, wind, 90_000))
                .isEqualTo(here);
        assertThat(flow(enhanced, coefficient, exponent, stories, difference, wind, 60_000))
                .isLessThanOrEqualTo(here + 1e-15);
    }

    private static double flow(
            boolean enhanced,
            double coefficient,
            double exponent,
            int stories,
            double difference,
            double wind,
            double pressure) {
        return InfiltrationModel.flow(
                enhanced,
                coefficient,
                exponent,
                stories,
                InfiltrationModel.Shelter.MODERATE,
                false,
                false,
                difference,
                wind,
                pressure);
    }

    @Property(tries = 300)
    void leakage_area_and_coefficient_are_inverse(
            @ForAll @DoubleRange(min = 0.0001, max = 1) @Scale(6) double coefficient,
            @ForAll @DoubleRange(min = 0.5, max = 1) @Scale(4) double exponent,
            @ForAll @DoubleRange(min = 0.7, max = 1.3) @Scale(4) double density) {
        double area = InfiltrationModel.leakageArea(coefficient, exponent, 4, 1, density);
        assertThat(InfiltrationModel.coefficientFromArea(area, exponent, 4, 1, density))
                .isCloseTo(coefficient, within(1e-12));
    }

    @Property(tries = 300)
    void insulation_and_depth_spare_ground_loss(
            @ForAll @DoubleRange(min = 0.1, max = 5) @Scale(4) double depth,
            @ForAll @DoubleRange(min = 0.1, max = 5) @Scale(4) double resistance,
            @ForAll @DoubleRange(min = 0.5, max = 3) @Scale(4) double soil) {
        double here = GroundContact.wallTransmittance(0, depth, soil, resistance);
        assertThat(GroundContact.wallTransmittance(0, depth, soil, resistance + 0.1))
                .isLessThan(here);
        assertThat(GroundContact.wallTransmittance(0, depth + 0.1, soil, resistance))
                .isLessThan(here);
        assertThat(here).isLessThan(1 / resistance);
        double thickness = GroundContact.equivalentThickness(0.3, soil, resistance);
        double floor = GroundContact.isoFloorTransmittance(depth * 2, thickness, 0, soil);
        assertThat(GroundContact.isoFloorTransmittance(depth * 2, thickness + 0.1, 0, soil))
                .isLessThan(floor);
    }

    @Property(tries = 300)
    void delayed_gain_keeps_its_energy(
            @ForAll @Size(24) double[] raw, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double[] gain = new double[24];
        double[] factors = new double[24];
        double sum = 0;
        double total = 0;
        for (int h = 0; h < 24; h++) {
            gain[h] = Math.IEEEremainder(raw[h], 1_000);
            factors[h] = Math.pow(0.6, h);
            sum += factors[h];
            total += gain[h];
        }
        for (int h = 0; h < 24; h++) {
            factors[h] /= sum;
        }
        double[] load = new double[24];
        RadiantTimeSeries.coolingLoad(gain, share, factors, load);
        double after = 0;
        for (double q : load) {
            after += q;
        }
        assertThat(after).isCloseTo(total, within(1e-8));
    }

    @Property(tries = 40)
    void window_in_the_mirrored_hemisphere_gains_the_same(
            @ForAll @DoubleRange(min = 5, max = 60) @Scale(3) double latitude,
            @ForAll @DoubleRange(min = 0, max = 360) @Scale(2) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 2) @Scale(2) double overhang) {
        // The textbook sun of day 172 has the opposite declination of day 354.5; days 172 and 355
        // differ by half a day, hence the tolerance.
        double[] north = gain(latitude, LocalDate.of(2026, 6, 21), azimuth, overhang);
        double[] south = gain(-latitude, LocalDate.of(2026, 12, 21), 180 - azimuth, overhang);
        double sumNorth = 0;
        double sumSouth = 0;
        for (int h = 0; h < 24; h++) {
            sumNorth += north[h];
            sumSouth += south[h];
        }
        // Earth is nearer the sun in December: 1411/1323 of the irradiance.
        assertThat(sumSouth / sumNorth).isCloseTo(1411.0 / 1323, within(0.01));
    }

    private static double[] gain(double latitude, LocalDate date, double azimuth, double overhang) {
        Site site = Site.of("s", degrees(latitude), degrees(0), ZoneOffset.UTC, metres(500));
        CoolingDesignDay day =
                CoolingDesignDay.at(site)
                        .date(date)
                        .dryBulb(celsius(30))
                        .dailyRange(kelvinDifference(10))
                        .wetBulb(celsius(15))
                        .opticalDepths(0.4, 2.2)
                        .sunMethod(dev.thinair.loads.kernel.DesignDays.SunMethod.HANDBOOK)
                        .build();
        Window window =
                Window.of(
                                "w",
                                metres(1),
                                metres(1.2),
                                wattsPerSquareMetreKelvin(2),
                                Glazing.clearDouble())
                        .withShade(Shade.interior("b", ratio(0.7), ratio(0.5)))
                        .withOverhang(Overhang.alongWall(metres(overhang), metres(0.1)));
        double[] out = new double[24];
        window.solarGain(
                day.outdoorHours(), Math.toRadians((azimuth + 360) % 360), Math.PI / 2, out);
        return out;
    }
}
