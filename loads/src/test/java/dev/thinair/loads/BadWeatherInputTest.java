package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.cubicMetresPerSecond;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.gramsPerKilogram;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.metresPerSecond;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowable;

import dev.thinair.loads.kernel.ClearSky;
import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.loads.kernel.RadiantTimeSeries;
import dev.thinair.loads.kernel.ResidentialLoadFactor;
import dev.thinair.loads.kernel.Shading;
import dev.thinair.loads.kernel.Sun;
import dev.thinair.loads.kernel.Transposition;
import dev.thinair.loads.kernel.VentilationAir;
import dev.thinair.loads.kernel.WeatherYear;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be is refused, with the quantity's name, its value and what would be allowed. */
class BadWeatherInputTest {

    private static final Site SITE =
            Site.of("s", degrees(40), degrees(-105), ZoneOffset.ofHours(-7), metres(1600));
    private static final Exposure HOUSE = Exposure.of(1, InfiltrationModel.Shelter.LIGHT);
    private static final ClearSky.Edition EDITION = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
    private static final double[] DAY = new double[24];

    private static CoolingDesignDay.Builder day() {
        return CoolingDesignDay.at(SITE)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(33))
                .dailyRange(kelvinDifference(12))
                .wetBulb(celsius(18))
                .opticalDepths(0.4, 2.2);
    }

    private static Arguments refused(String message, ThrowingCallable call) {
        return Arguments.of(message, call);
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                refused("latitude is 91", () -> site(91, 0, 0)),
                refused("longitude is -181", () -> site(0, -181, 0)),
                refused("elevation is 9000.0 m", () -> site(0, 0, 9000)),
                refused("ground reflectance is 1.2", () -> SITE.withGroundReflectance(ratio(1.2))),
                refused("station pressure is 20000", () -> SITE.withPressure(kilopascals(20))),
                refused(
                        "ground temperature is 400",
                        () -> SITE.withGroundTemperature(celsius(126.85))),
                refused("elevation is 7000", () -> SITE.withElevation(metres(7000))),
                refused(
                        "azimuth of the skyline is 400",
                        () -> Horizon.level().with(degrees(400), degrees(5))),
                refused(
                        "altitude of the skyline is 90",
                        () -> Horizon.level().with(degrees(40), degrees(90))),
                refused("design dry bulb is 353.15 K", () -> day().dryBulb(celsius(80))),
                refused("daily range is -1.0 K", () -> day().dailyRange(kelvinDifference(-1))),
                refused("coincident wet bulb is 343.15", () -> day().wetBulb(celsius(70))),
                refused(
                        "coincident wet bulb is 307.15 K, but must not be above the design dry"
                                + " bulb",
                        () -> day().wetBulb(celsius(34)).build()),
                refused(
                        "daily wet-bulb range is 50.0 K",
                        () -> day().wetBulbRange(kelvinDifference(50))),
                refused("humidity ratio is 0.2", () -> day().humidityRatio(gramsPerKilogram(200))),
                refused("beam optical depth is -0.1", () -> day().opticalDepths(-0.1, 2)),
                refused("diffuse optical depth is NaN", () -> day().opticalDepths(0.4, Double.NaN)),
                refused("wind speed is -1.0 m/s", () -> day().wind(metresPerSecond(-1))),
                refused(
                        "number of hourly dry bulbs is 2",
                        () -> day().dryBulbs(List.of(celsius(20), celsius(21)))),
                refused("has no date", () -> CoolingDesignDay.at(SITE).build()),
                refused(
                        "has no design dry bulb",
                        () -> CoolingDesignDay.at(SITE).date(LocalDate.of(2026, 7, 1)).build()),
                refused(
                        "has no sky",
                        () ->
                                CoolingDesignDay.at(SITE)
                                        .date(LocalDate.of(2026, 7, 1))
                                        .dryBulb(celsius(30))
                                        .dailyRange(kelvinDifference(10))
                                        .wetBulb(celsius(15))
                                        .build()),
                refused(
                        "elevation for the correlation of Hottel is 3000",
                        () ->
                                day().hottelSky(ClearSky.HottelClimate.TROPICAL)
                                        .build()
                                        .withSite(SITE.withElevation(metres(3000)))),
                refused(
                        "design dry bulb is 323.15 K",
                        () -> HeatingDesignDay.of(SITE, celsius(50))),
                refused(
                        "relative humidity is 1.1",
                        () ->
                                HeatingDesignDay.of(SITE, celsius(-10))
                                        .withRelativeHumidity(percent(110))),
                refused("window width is 0.0 m", () -> window(0, 1, 2)),
                refused("window height is -1.0 m", () -> window(1, -1, 2)),
                refused("window U-factor is 12.0", () -> window(1, 1, 12)),
                refused(
                        "solar heat gain coefficient is 0.0",
                        () -> Glazing.clearDouble().scaledTo(0)),
                refused("angle of incidence is 95", () -> Glazing.clearDouble().beam(95)),
                refused(
                        "value of the angular table is -0.1",
                        () -> Glazing.ofTable("x", new double[] {0, 90}, new double[] {0.5, -0.1})),
                refused(
                        "interior attenuation for beam is 1.5",
                        () -> Shade.interior("x", ratio(1.5), ratio(1))),
                refused(
                        "closed fraction of the shade is 2.0",
                        () -> Shade.interior("x", ratio(0.5), ratio(2))),
                refused(
                        "overhang depth is -0.5 m",
                        () -> Overhang.alongWall(metres(-0.5), metres(0))),
                refused(
                        "overhang extension is -1.0 m",
                        () -> Overhang.of(metres(0.5), metres(0), metres(-1))),
                refused(
                        "depth of the left fin is 60.0 m",
                        () -> Fins.bothSides(metres(60), metres(0))),
                refused("stories is 4", () -> Exposure.of(4, InfiltrationModel.Shelter.LIGHT)),
                refused(
                        "flow exponent is 0.4",
                        () ->
                                Infiltration.blowerDoor(
                                        cubicMetresPerSecond(0.5), ratio(0.4), HOUSE)),
                refused(
                        "flow at 50 Pa is -0.5 m3/s",
                        () ->
                                Infiltration.blowerDoor(
                                        cubicMetresPerSecond(-0.5), ratio(0.65), HOUSE)),
                refused(
                        "volume is 0.0 m3",
                        () -> Infiltration.airChanges(airChangesPerHour(0.4), cubicMetres(0))),
                refused(
                        "air change rate is 25",
                        () -> Infiltration.airChanges(airChangesPerHour(25), cubicMetres(300))),
                refused(
                        "pressure of the test is 1000.0 Pa",
                        () ->
                                Infiltration.blowerDoor(
                                                cubicMetresPerSecond(0.5), ratio(0.65), HOUSE)
                                        .measuredAt(kilopascals(1))),
                refused(
                        "sensible effectiveness is 1.1",
                        () ->
                                Ventilation.balanced(
                                        cubicMetresPerSecond(0.05), ratio(1.1), ratio(0))),
                refused("number of people is -1", () -> Occupants.of(-1, watts(70), watts(50))),
                refused(
                        "sensible heat of stove is -5.0 W",
                        () -> Appliances.of("stove", watts(-5), watts(0))),
                refused(
                        "radiant fraction of lights is 1.5",
                        () -> Lighting.of(watts(100), ratio(1.5), Schedule.always())),
                refused("number of values of the schedule is 3", () -> Schedule.of(1, 0, 1)),
                refused("first hour of the schedule is 25", () -> Schedule.between(25, 3)),
                refused(
                        "edge factor is -1.0",
                        () -> Ground.slabEdge(wattsPerMetreKelvin(-1), metres(40))),
                refused(
                        "soil conductivity is 20.0",
                        () ->
                                Ground.slabOnGround(
                                        metres(40), metres(0.3), wattsPerMetreKelvin(20))),
                refused(
                        "no means for FEBRUARY",
                        () ->
                                HourlyWeather.yearAt(SITE)
                                        .month(
                                                java.time.Month.JANUARY,
                                                celsius(0),
                                                kelvinDifference(10),
                                                gramsPerKilogram(3),
                                                metresPerSecond(3),
                                                ratio(0.4),
                                                0.3,
                                                2.4)
                                        .build()),
                refused(
                        "must be a full hour",
                        () ->
                                HourlyWeather.of(
                                        SITE,
                                        LocalDateTime.of(2026, 1, 1, 0, 30),
                                        DAY,
                                        DAY,
                                        DAY,
                                        DAY,
                                        DAY)),
                refused(
                        "heating design dry bulb is",
                        () ->
                                HourlyWeather.between(
                                        day().build(),
                                        HeatingDesignDay.of(SITE, celsius(29)),
                                        0.4,
                                        2.2)),
                // ---- kernel
                refused("day of year is 0", () -> Sun.declination(0)),
                refused("day of year is 367", () -> Sun.equationOfTime(367)),
                refused("day of year is NaN", () -> Sun.extraterrestrialNormal(Double.NaN)),
                refused("latitude is 2.0 rad", () -> Sun.altitude(2, 0, 0)),
                refused("declination is 3.0", () -> Sun.azimuth(0, 3, 0)),
                refused("hour angle is NaN", () -> Sun.altitude(0, 0, Double.NaN)),
                refused("longitude is 7.0", () -> Sun.apparentSolarTime(0, 0, 7, 0)),
                refused(
                        "year is 1990",
                        () ->
                                Sun.quickEphemeris(
                                        Instant.parse("1990-01-01T00:00:00Z"),
                                        0,
                                        0,
                                        60,
                                        new double[2])),
                refused(
                        "delta T is -100",
                        () -> Sun.ephemeris(Instant.EPOCH, 0, 0, 0, -100, new double[2])),
                refused("solar altitude is -0.1", () -> ClearSky.airMass(-0.1)),
                refused(
                        "extraterrestrial irradiance is 2000",
                        () -> ClearSky.beamNormal(EDITION, 2000, 1, 0.4, 2)),
                refused("beam transmittance is 1.0", () -> ClearSky.liuJordanDiffuse(1300, 1, 1)),
                refused("tilt is 4.0 rad", () -> Transposition.total(1, 1, 1, 1, 4, 0, 0.2)),
                refused(
                        "ground reflectance is -0.1",
                        () -> Transposition.total(1, 1, 1, 1, 1, 0, -0.1)),
                refused("overhang depth is -1.0", () -> Shading.shadowHeight(-1, 1, 0)),
                refused("solar transmittance is 0.9", () -> GlazingOptics.inwardAbsorbed(0.8, 0.9)),
                refused(
                        "refractive index is 1.0",
                        () -> GlazingOptics.pane(1, 1, 0, new double[3])),
                refused(
                        "number of panes is 3",
                        () -> GlazingOptics.shgcOfPanes(3, 1, 1.5, 0, 0.3, 0.5, new double[3])),
                refused("hour is 25", () -> DailyProfile.FUNDAMENTALS_TO_2005.fraction(25)),
                refused("annual percentile is 40", () -> DesignDays.hoursBeyond(40)),
                refused(
                        "test pressure is 0.0 Pa",
                        () -> InfiltrationModel.leakageCoefficient(0.5, 0, 0.65)),
                refused("density ratio is 0.0", () -> InfiltrationModel.flowAtDensity(0.65, 0)),
                refused(
                        "ceiling less floor leakage is 0.8",
                        () -> InfiltrationModel.basicStackCoefficient(0.5, 0.8, 2.5, 294)),
                refused(
                        "flow through heat recovery is 0.2",
                        () -> VentilationAir.sensible(0.1, 0.2, 0.5, 10, 101_325)),
                refused("infiltration flow is -1.0", () -> VentilationAir.combined(-1, 0)),
                refused(
                        "lower depth is 1.0 m",
                        () -> GroundContact.wallTransmittance(1, 1, 1.4, 1)),
                refused(
                        "exposed perimeter is 0.0 m",
                        () -> GroundContact.characteristicDimension(100, 0)),
                refused(
                        "radiant fraction is 1.5",
                        () ->
                                RadiantTimeSeries.coolingLoad(
                                        new double[24], 1.5, new double[24], new double[24])),
                refused(
                        "number of time factors is 23",
                        () ->
                                RadiantTimeSeries.delay(
                                        new double[24], new double[23], new double[24])),
                refused("another array", () -> RadiantTimeSeries.delay(DAY, new double[24], DAY)),
                refused("exposure is 1.5", () -> ResidentialLoadFactor.peakTotal(1.5, 0.6)),
                refused("number of monthly values is 3", () -> WeatherYear.at(new double[3], 10)),
                refused(
                        "monthly cloud cover of month 1 is 2",
                        () ->
                                WeatherYear.irradiance(
                                        EDITION,
                                        new double[12],
                                        new double[12],
                                        new double[] {2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
                                        DAY,
                                        DAY,
                                        DAY)));
    }

    private static Site site(double latitude, double longitude, double elevation) {
        return Site.of(
                "x", degrees(latitude), degrees(longitude), ZoneOffset.UTC, metres(elevation));
    }

    private static Window window(double width, double height, double u) {
        return Window.of(
                "x",
                metres(width),
                metres(height),
                wattsPerSquareMetreKelvin(u),
                Glazing.clearDouble());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void refuses(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @Test
    void missing_things_are_named() {
        assertThat(catchThrowable(() -> Site.of("x", null, degrees(0), ZoneOffset.UTC, metres(0))))
                .hasMessageContaining("latitude");
        assertThat(catchThrowable(() -> day().date(null))).hasMessageContaining("date");
        assertThat(catchThrowable(() -> window(1, 1, 2).withShade(null)))
                .hasMessageContaining("shade");
        assertThat(catchThrowable(() -> FactorLoad.at(null))).hasMessageContaining("site");
        assertThat(catchThrowable(() -> Appliances.residential(squareMetres(-5))))
                .hasMessageContaining("floor area");
    }
}
