package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every ranged number that a kernel function takes: a good call passes, and the same call with that
 * number below, above or not a number is refused by its name. The ranges are those that the
 * functions document.
 */
class ArgumentRangeTest {
    private static final double RIGHT = Math.PI / 2;

    /** A function of several numbers, and numbers that it takes. */
    private static final class Call {
        private final String name;
        private final Body body;
        private final double[] good;
        private final List<Bound> bounds = new ArrayList<>();

        Call(String name, Body body, double... good) {
            this.name = name;
            this.body = body;
            this.good = good;
        }

        /** What the next argument in turn is called, and its range. */
        Call arg(String label, double low, double high) {
            bounds.add(new Bound(label, low, high, false));
            return this;
        }

        /** An argument that must be above a bound. */
        Call above(String label, double bound) {
            bounds.add(new Bound(label, bound, Double.POSITIVE_INFINITY, true));
            return this;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private interface Body {
        void run(double[] a);
    }

    private record Bound(String label, double low, double high, boolean open) {
        double[] outside() {
            double below = open ? low : low - 1e-6 - 1e-6 * Math.abs(low);
            return new double[] {below, high + 1e-6 + 1e-6 * Math.abs(high), Double.NaN};
        }
    }

    @ParameterizedTest
    @MethodSource("calls")
    void a_number_outside_its_range_is_refused_by_name(Call call) {
        assertThatCode(() -> call.body.run(call.good.clone())).doesNotThrowAnyException();
        for (int i = 0; i < call.bounds.size(); i++) {
            Bound bound = call.bounds.get(i);
            for (double wrong : bound.outside()) {
                double[] a = call.good.clone();
                a[i] = wrong;
                assertThatIllegalArgumentException()
                        .as("%s of %s", bound.label, wrong)
                        .isThrownBy(() -> call.body.run(a))
                        .withMessageContaining(bound.label)
                        .withMessageContaining("must");
            }
        }
    }

    private static double[] day(double value) {
        double[] series = new double[24];
        Arrays.fill(series, value);
        return series;
    }

    private static double[] months(double value) {
        double[] series = new double[12];
        Arrays.fill(series, value);
        return series;
    }

    static List<Call> calls() {
        List<Call> all = new ArrayList<>();
        sun(all);
        sky(all);
        glass(all);
        walls(all);
        air(all);
        quick(all);
        hours(all);
        return all;
    }

    private static void sun(List<Call> all) {
        Instant noon = Instant.parse("2026-06-21T19:00:00Z");
        LocalDate date = LocalDate.of(2026, 6, 21);
        all.add(
                new Call("extraterrestrial", a -> Sun.extraterrestrialNormal(a[0]), 172)
                        .arg("day of year", 1, 366));
        all.add(
                new Call("equation of time", a -> Sun.equationOfTime(a[0]), 172)
                        .arg("day of year", 1, 366));
        all.add(
                new Call("declination", a -> Sun.declination(a[0]), 172)
                        .arg("day of year", 1, 366));
        all.add(
                new Call(
                                "solar time",
                                a -> Sun.apparentSolarTime(a[0], a[1], a[2], a[3]),
                                43_200,
                                100,
                                -1.8,
                                -25_200)
                        .arg("local standard time", -86_400, 172_800)
                        .arg("equation of time", -1200, 1200)
                        .arg("longitude", -Math.PI, Math.PI)
                        .arg("zone offset", -50_400, 50_400));
        all.add(
                new Call("hour angle", a -> Sun.hourAngle(a[0]), 43_200)
                        .arg("apparent solar time", -172_800, 259_200));
        all.add(
                new Call("altitude", a -> Sun.altitude(a[0], a[1], a[2]), 0.7, 0.4, 0.1)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("declination", -RIGHT, RIGHT)
                        .arg("hour angle", -Double.MAX_VALUE, Double.MAX_VALUE));
        all.add(
                new Call("azimuth", a -> Sun.azimuth(a[0], a[1], a[2]), 0.7, 0.4, 0.1)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("declination", -RIGHT, RIGHT)
                        .arg("hour angle", -Double.MAX_VALUE, Double.MAX_VALUE));
        all.add(
                new Call("sunset", a -> Sun.sunsetHourAngle(a[0], a[1]), 0.7, 0.4)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("declination", -RIGHT, RIGHT));
        all.add(
                new Call("from south", a -> Sun.fromSouth(a[0]), 1)
                        .arg("azimuth from south", -Double.MAX_VALUE, Double.MAX_VALUE));
        all.add(
                new Call("from north", a -> Sun.fromNorth(a[0]), 1)
                        .arg("azimuth from north", -Double.MAX_VALUE, Double.MAX_VALUE));
        all.add(
                new Call(
                                "ephemeris",
                                a -> Sun.ephemeris(noon, a[0], a[1], a[2], a[3], new double[2]),
                                0.7,
                                -1.8,
                                2000,
                                70)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("longitude", -Math.PI, Math.PI)
                        .arg("elevation", -500, 9000)
                        .arg("delta T", -60, 10_000));
        all.add(
                new Call(
                                "apparent ephemeris",
                                a ->
                                        Sun.apparentEphemeris(
                                                noon,
                                                a[0],
                                                a[1],
                                                a[2],
                                                a[3],
                                                a[4],
                                                a[5],
                                                new double[2]),
                                0.7,
                                -1.8,
                                2000,
                                70,
                                80_000,
                                290)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("longitude", -Math.PI, Math.PI)
                        .arg("elevation", -500, 9000)
                        .arg("delta T", -60, 10_000)
                        .arg("pressure", 30_000, 110_000)
                        .arg("temperature", 180, 340));
        all.add(
                new Call(
                                "quick ephemeris",
                                a -> Sun.quickEphemeris(noon, a[0], a[1], a[2], new double[2]),
                                0.7,
                                -1.8,
                                70)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("longitude", -Math.PI, Math.PI)
                        .arg("delta T", -60, 10_000));
        all.add(
                new Call(
                                "daylight",
                                a -> Sun.daylight(date, -25_200, a[0], a[1], a[2], new double[3]),
                                0.7,
                                -1.8,
                                70)
                        .arg("latitude", -RIGHT, RIGHT)
                        .arg("longitude", -Math.PI, Math.PI)
                        .arg("delta T", -60, 10_000));
    }

    @Test
    void whole_numbers_of_the_sun_have_ranges() {
        Instant late = Instant.parse("2150-06-21T19:00:00Z");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sun.quickEphemeris(late, 0.7, -1.8, 70, new double[2]))
                .withMessageContaining("year is 2150");
        LocalDate date = LocalDate.of(2026, 6, 21);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sun.daylight(date, 50_401, 0.7, -1.8, 70, new double[3]))
                .withMessageContaining("zone offset is 50401");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                DesignDays.sunPositions(
                                        DesignDays.SunMethod.NREL,
                                        date,
                                        50_401,
                                        0.7,
                                        -1.8,
                                        0,
                                        new double[24],
                                        new double[24]))
                .withMessageContaining("zone offset is 50401");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                WeatherYear.sun(
                                        6001,
                                        0,
                                        0.7,
                                        0,
                                        0,
                                        new double[WeatherYear.HOURS],
                                        new double[WeatherYear.HOURS]))
                .withMessageContaining("year is 6001");
    }

    private static void sky(List<Call> all) {
        ClearSky.Edition edition = ClearSky.Edition.FUNDAMENTALS_2013_TO_2021;
        ClearSky.HottelClimate summer = ClearSky.HottelClimate.values()[0];
        all.add(
                new Call("beam exponent", a -> edition.beamExponent(a[0], a[1]), 0.4, 2.2)
                        .arg("beam optical depth", 0, 3)
                        .arg("diffuse optical depth", 0, 6));
        all.add(
                new Call("diffuse exponent", a -> edition.diffuseExponent(a[0], a[1]), 0.4, 2.2)
                        .arg("beam optical depth", 0, 3)
                        .arg("diffuse optical depth", 0, 6));
        all.add(
                new Call("air mass", a -> ClearSky.airMass(a[0]), 1)
                        .arg("solar altitude", 0, RIGHT));
        all.add(
                new Call(
                                "corrected air mass",
                                a -> ClearSky.pressureCorrectedAirMass(a[0], a[1]),
                                1,
                                80_000)
                        .arg("solar altitude", 0, RIGHT)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call(
                                "beam",
                                a -> ClearSky.beamNormal(edition, a[0], a[1], a[2], a[3]),
                                1367,
                                1,
                                0.4,
                                2.2)
                        .arg("extraterrestrial irradiance", 0, 1500)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("beam optical depth", 0, 3)
                        .arg("diffuse optical depth", 0, 6));
        all.add(
                new Call(
                                "diffuse",
                                a -> ClearSky.diffuseHorizontal(edition, a[0], a[1], a[2], a[3]),
                                1367,
                                1,
                                0.4,
                                2.2)
                        .arg("extraterrestrial irradiance", 0, 1500)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("beam optical depth", 0, 3)
                        .arg("diffuse optical depth", 0, 6));
        all.add(
                new Call(
                                "transmittance of Hottel",
                                a -> ClearSky.hottelTransmittance(summer, a[0], a[1]),
                                2000,
                                1)
                        .arg("elevation", -100, 2500)
                        .arg("solar altitude", -RIGHT, RIGHT));
        all.add(
                new Call(
                                "diffuse of Liu and Jordan",
                                a -> ClearSky.liuJordanDiffuse(a[0], a[1], a[2]),
                                1367,
                                1,
                                0.7)
                        .arg("extraterrestrial irradiance", 0, 1500)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("beam transmittance", 0, 0.92));
        all.add(
                new Call(
                                "irradiance of a plane",
                                a -> Transposition.total(a[0], a[1], a[2], a[3], a[4], a[5], a[6]),
                                800,
                                100,
                                1,
                                3,
                                1.5,
                                3,
                                0.2)
                        .arg("beam normal irradiance", 0, 1500)
                        .arg("diffuse horizontal irradiance", 0, 1500)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("sun azimuth", -100, 100)
                        .arg("tilt", 0, Math.PI)
                        .arg("azimuth", -100, 100)
                        .arg("ground reflectance", 0, 1));
        all.add(
                new Call("profile angle", a -> Shading.profileAngle(a[0], a[1]), 1, 0.5)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("relative azimuth", -100, 100));
        all.add(
                new Call("shadow", a -> Shading.shadowHeight(a[0], a[1], a[2]), 1, 1, 0.5)
                        .arg("overhang depth", 0, 100)
                        .arg("solar altitude", -RIGHT, RIGHT)
                        .arg("relative azimuth", -100, 100));
    }

    private static void glass(List<Call> all) {
        all.add(
                new Call("absorbed", a -> GlazingOptics.inwardAbsorbed(a[0], a[1]), 0.7, 0.6)
                        .arg("solar heat gain coefficient", 0, 1)
                        .arg("solar transmittance", 0, 0.7));
        all.add(
                new Call("shade", a -> GlazingOptics.interiorAttenuation(a[0], a[1]), 0.6, 0.5)
                        .arg("interior attenuation", 0, 1)
                        .arg("closed fraction", 0, 1));
        all.add(
                new Call(
                                "pane",
                                a -> GlazingOptics.pane(a[0], a[1], a[2], new double[4]),
                                0.9,
                                1.526,
                                0.1)
                        .arg("cosine of incidence", 0, 1)
                        .arg("refractive index", 1.0001, 4)
                        .arg("extinction", 0, 50));
        all.add(
                new Call(
                                "two panes",
                                a ->
                                        GlazingOptics.shgcOfPanes(
                                                2, 0.9, 1.526, 0.1, a[0], a[1], new double[16]),
                                0.3,
                                0.7)
                        .arg("inward share of the outer pane", 0, 1)
                        .arg("inward share of the inner pane", 0, 1));
    }

    private static void walls(List<Call> all) {
        all.add(
                new Call(
                                "wall in the ground",
                                a -> GroundContact.wallTransmittance(a[0], a[1], a[2], a[3]),
                                0.5,
                                2,
                                1.4,
                                1)
                        .arg("upper depth", 0, 20)
                        .arg("lower depth", 0, 20)
                        .arg("soil conductivity", 0.1, 5)
                        .arg("resistance", 0.01, 50));
        all.add(
                new Call(
                                "floor in the ground",
                                a -> GroundContact.floorTransmittance(a[0], a[1], a[2], a[3]),
                                8,
                                2,
                                1.4,
                                1)
                        .arg("width of the floor", 0.5, 100)
                        .arg("depth of the floor", 0, 20)
                        .arg("soil conductivity", 0.1, 5)
                        .arg("resistance", 0.01, 50));
        all.add(
                new Call(
                                "slab edge",
                                a -> GroundContact.slabEdgeLoss(a[0], a[1], a[2]),
                                0.9,
                                40,
                                20)
                        .arg("edge factor", 0, 10)
                        .arg("exposed perimeter", 0, 10_000)
                        .arg("temperature difference", -100, 100));
        all.add(
                new Call(
                                "ground temperature",
                                a -> GroundContact.designGroundTemperature(a[0], a[1]),
                                283,
                                10)
                        .arg("mean ground temperature", 230, 320)
                        .arg("amplitude of the ground temperature", 0, 40));
        all.add(
                new Call(
                                "characteristic dimension",
                                a -> GroundContact.characteristicDimension(a[0], a[1]),
                                100,
                                40)
                        .above("floor area", 0)
                        .above("exposed perimeter", 0));
        all.add(
                new Call(
                                "equivalent thickness",
                                a -> GroundContact.equivalentThickness(a[0], a[1], a[2]),
                                0.3,
                                2,
                                1)
                        .arg("wall thickness", 0, 2)
                        .arg("soil conductivity", 0.1, 5)
                        .arg("resistance", 0.01, 50));
        all.add(
                new Call(
                                "floor by ISO 13370",
                                a -> GroundContact.isoFloorTransmittance(a[0], a[1], a[2], a[3]),
                                5,
                                2,
                                1,
                                2)
                        .above("characteristic dimension", 0)
                        .above("equivalent thickness", 0)
                        .arg("depth of the floor", 0, 20)
                        .arg("soil conductivity", 0.1, 5));
        all.add(
                new Call(
                                "wall by ISO 13370",
                                a -> GroundContact.isoWallTransmittance(a[0], a[1], a[2], a[3]),
                                2,
                                2,
                                1,
                                2)
                        .above("equivalent thickness of the floor", 0)
                        .above("equivalent thickness of the wall", 0)
                        .arg("depth of the floor", 0, 20)
                        .arg("soil conductivity", 0.1, 5));
        all.add(
                new Call(
                                "depth of a wall of no height",
                                a -> GroundContact.isoWallTransmittance(2, 2, a[0], 2),
                                1)
                        .above("depth of the floor", 0));
        all.add(
                new Call(
                                "air gap",
                                a -> Resistance.airGap(a[0], 0, a[1], a[2], a[3]),
                                0.02,
                                0.9,
                                0.8,
                                283)
                        .arg("air gap thickness", 1e-4, 0.3)
                        .arg("emissivity", 0.01, 1)
                        .arg("emissivity", 0.01, 1)
                        .arg("mean temperature of the air gap", 230, 350));
        all.add(
                new Call(
                                "parallel paths",
                                a ->
                                        Resistance.parallel(
                                                new double[] {a[0], 1 - a[0]},
                                                new double[] {a[1], 1}),
                                0.25,
                                2)
                        .above("area fraction", 0)
                        .above("path resistance", 0));
        all.add(
                new Call(
                                "sections",
                                a ->
                                        Resistance.lowerLimit(
                                                0.25,
                                                new double[] {0.1, a[0]},
                                                new double[] {a[1], 2}),
                                2,
                                0.1)
                        .above("layer resistance", 0)
                        .above("layer resistance", 0));
        all.add(
                new Call("taper", a -> Resistance.taperedTransmittance(a[0], a[1]), 1, 2)
                        .above("resistance without the taper", 0)
                        .above("resistance of the taper", 0));
        all.add(
                new Call(
                                "penetration",
                                a -> Transmission.penetrationDepth(a[0], a[1], a[2], a[3]),
                                1.4,
                                2000,
                                900,
                                86_400)
                        .above("conductivity", 0)
                        .above("density", 0)
                        .above("specific heat", 0)
                        .above("period", 0));
        all.add(
                new Call(
                                "half space",
                                a -> Transmission.halfSpaceAdmittance(a[0], a[1], a[2], a[3]),
                                1.4,
                                2000,
                                900,
                                86_400)
                        .above("conductivity", 0)
                        .above("density", 0)
                        .above("specific heat", 0)
                        .above("period", 0));
        all.add(
                new Call(
                                "layers",
                                a ->
                                        Transmission.lag(
                                                new double[] {0.1, a[0]},
                                                new double[] {0, a[1]},
                                                a[2]),
                                1,
                                1e5,
                                86_400)
                        .above("layer resistance", 0)
                        .arg("layer heat capacity", 0, 1e12)
                        .above("period", 0));
    }

    private static void air(List<Call> all) {
        all.add(
                new Call(
                                "coefficient from a fan test",
                                a -> InfiltrationModel.leakageCoefficient(a[0], a[1], a[2]),
                                0.5,
                                50,
                                0.65)
                        .arg("fan flow", 0, 100)
                        .arg("test pressure", 1, 200)
                        .arg("flow exponent", 0.5, 1));
        all.add(
                new Call("crack", a -> InfiltrationModel.crackFlow(a[0], a[1], a[2]), 0.04, 0.65, 4)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("pressure difference", 0, 200));
        all.add(
                new Call(
                                "leakage area",
                                a -> InfiltrationModel.leakageArea(a[0], a[1], a[2], a[3], a[4]),
                                0.04,
                                0.65,
                                4,
                                1,
                                1.2)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("reference pressure", 1, 100)
                        .arg("discharge coefficient", 0.3, 1)
                        .arg("air density", 0.3, 1.6));
        all.add(
                new Call(
                                "coefficient from an area",
                                a ->
                                        InfiltrationModel.coefficientFromArea(
                                                a[0], a[1], a[2], a[3], a[4]),
                                0.05,
                                0.65,
                                4,
                                1,
                                1.2)
                        .arg("leakage area", 0, 10)
                        .arg("flow exponent", 0.5, 1)
                        .arg("reference pressure", 1, 100)
                        .arg("discharge coefficient", 0.3, 1)
                        .arg("air density", 0.3, 1.6));
        all.add(
                new Call(
                                "ratio of areas",
                                a -> InfiltrationModel.areaRatio(a[0], a[1], a[2], a[3], a[4]),
                                0.65,
                                4,
                                1,
                                10,
                                0.6)
                        .arg("flow exponent", 0.5, 1)
                        .arg("reference pressure", 1, 100)
                        .arg("discharge coefficient", 0.3, 1)
                        .arg("reference pressure", 1, 100)
                        .arg("discharge coefficient", 0.3, 1));
        all.add(
                new Call("air changes", a -> InfiltrationModel.airChanges(a[0], a[1]), 0.1, 300)
                        .arg("flow", 0, 100)
                        .above("volume", 0));
        all.add(
                new Call(
                                "normalized leakage",
                                a -> InfiltrationModel.normalizedLeakage(a[0], a[1], a[2]),
                                0.05,
                                100,
                                2.5)
                        .arg("leakage area", 0, 10)
                        .above("floor area", 0)
                        .arg("height", 1, 50));
        all.add(
                new Call(
                                "basic flow",
                                a -> InfiltrationModel.basicFlow(a[0], a[1], a[2], a[3], a[4]),
                                0.05,
                                1.5e-4,
                                3e-4,
                                20,
                                4)
                        .arg("leakage area", 0, 10)
                        .arg("stack coefficient", 0, 1)
                        .arg("wind coefficient", 0, 1)
                        .arg("temperature difference", -100, 100)
                        .arg("wind speed", 0, 120));
        all.add(
                new Call(
                                "basic stack coefficient",
                                a ->
                                        InfiltrationModel.basicStackCoefficient(
                                                a[0], a[1], a[2], a[3]),
                                0.5,
                                0.1,
                                2.5,
                                293)
                        .arg("share of floor and ceiling leakage", 0, 1)
                        .arg("ceiling less floor leakage", -0.5, 0.5)
                        .arg("height", 1, 50)
                        .arg("indoor temperature", 250, 330));
        all.add(
                new Call(
                                "enhanced stack",
                                a -> InfiltrationModel.enhancedStackFlow(a[0], a[1], a[2], a[3]),
                                0.04,
                                0.65,
                                0.05,
                                20)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("stack coefficient", 0, 1)
                        .arg("temperature difference", -100, 100));
        all.add(
                new Call(
                                "enhanced wind",
                                a ->
                                        InfiltrationModel.enhancedWindFlow(
                                                a[0], a[1], a[2], a[3], a[4], a[5]),
                                0.04,
                                0.65,
                                0.15,
                                0.5,
                                0.6,
                                4)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("wind coefficient", 0, 1)
                        .arg("shelter factor", 0, 2)
                        .arg("wind multiplier", 0, 2)
                        .arg("wind speed", 0, 120));
        all.add(
                new Call(
                                "crack in thin air",
                                a -> InfiltrationModel.crackAtDensity(a[0], a[1], a[2]),
                                0.04,
                                0.65,
                                0.8)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("density ratio", 0.2, 1.5));
        all.add(
                new Call(
                                "flow in thin air",
                                a -> InfiltrationModel.flowAtDensity(a[0], a[1]),
                                0.65,
                                0.8)
                        .arg("flow exponent", 0.5, 1)
                        .arg("density ratio", 0.2, 1.5));
        all.add(
                new Call(
                                "infiltration",
                                a ->
                                        InfiltrationModel.flow(
                                                true,
                                                a[0],
                                                a[1],
                                                1,
                                                InfiltrationModel.Shelter.MODERATE,
                                                false,
                                                false,
                                                a[2],
                                                a[3],
                                                a[4]),
                                0.04,
                                0.65,
                                20,
                                4,
                                80_000)
                        .arg("leakage coefficient", 0, 100)
                        .arg("flow exponent", 0.5, 1)
                        .arg("temperature difference", -100, 100)
                        .arg("wind speed", 0, 120)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call("combined", a -> VentilationAir.combined(a[0], a[1]), 0.05, 0.02)
                        .arg("infiltration flow", 0, Double.MAX_VALUE)
                        .arg("unbalanced ventilation flow", 0, Double.MAX_VALUE));
        all.add(
                new Call("total", a -> VentilationAir.total(a[0], a[1], a[2]), 0.05, 0.02, 0.03)
                        .arg("infiltration flow", 0, Double.MAX_VALUE)
                        .arg("unbalanced ventilation flow", 0, Double.MAX_VALUE)
                        .arg("balanced ventilation flow", 0, Double.MAX_VALUE));
        all.add(
                new Call("house rate", a -> VentilationAir.wholeHouseRate(a[0], 3), 200)
                        .arg("floor area", 0, 10_000));
        all.add(
                new Call(
                                "sensible ventilation",
                                a -> VentilationAir.sensible(a[0], a[1], a[2], a[3], a[4]),
                                0.1,
                                0.05,
                                0.7,
                                20,
                                80_000)
                        .arg("flow", 0, 100)
                        .arg("flow through heat recovery", 0, 0.1)
                        .arg("effectiveness", 0, 1)
                        .arg("temperature difference", -100, 100)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call(
                                "latent ventilation",
                                a -> VentilationAir.latent(a[0], a[1], a[2], a[3], a[4]),
                                0.1,
                                0.05,
                                0.7,
                                0.004,
                                80_000)
                        .arg("flow", 0, 100)
                        .arg("flow through heat recovery", 0, 0.1)
                        .arg("effectiveness", 0, 1)
                        .arg("humidity ratio difference", -0.1, 0.1)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call(
                                "outdoor air flow",
                                a -> VentilationAir.sensible(a[0], 0, 0.7, 20, 80_000),
                                0.1)
                        .arg("outdoor air flow", 0, 100));
        all.add(
                new Call(
                                "buffer space",
                                a ->
                                        VentilationAir.bufferTemperature(
                                                a[0],
                                                a[1],
                                                new double[] {a[2]},
                                                new double[] {a[3]},
                                                a[4]),
                                40,
                                310,
                                20,
                                297,
                                100)
                        .arg("conductance of the ventilation", 0, 1e9)
                        .arg("outdoor temperature", 180, 340)
                        .arg("conductance to a neighbour", 0, 1e9)
                        .arg("temperature of a neighbour", 180, 400)
                        .arg("heat released in the space", -1e9, 1e9));
    }

    @Test
    void numbers_counted_one_by_one_have_ranges() {
        for (int wrong : new int[] {0, 4}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> InfiltrationModel.basicStackCoefficient(wrong))
                    .withMessageContaining("stories is " + wrong);
        }
        for (int wrong : new int[] {-1, 101}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> VentilationAir.wholeHouseRate(200, wrong))
                    .withMessageContaining("bedrooms is " + wrong);
        }
        for (int wrong : new int[] {0, 3}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(
                            () ->
                                    GlazingOptics.shgcOfPanes(
                                            wrong, 0.9, 1.526, 0.1, 0.3, 0.7, new double[16]))
                    .withMessageContaining("number of panes is " + wrong);
        }
        // a space that nothing touches has no temperature
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                VentilationAir.bufferTemperature(
                                        0, 300, new double[] {0}, new double[] {300}, 5))
                .withMessageContaining("sum of conductances of the space is 0.0");
        // walls that begin where they end
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GroundContact.wallTransmittance(2, 2, 1.4, 1))
                .withMessageContaining("lower depth is 2.0 m, but must be above 2.0 m");
    }

    private static void quick(List<Call> all) {
        double rad = Math.PI / 180;
        ResidentialLoadFactor.OpaquePart ceiling =
                ResidentialLoadFactor.OpaquePart.CEILING_UNDER_ATTIC;
        all.add(
                new Call("exposure", a -> ResidentialLoadFactor.exposure(a[0], a[1]), 1, 0.6)
                        .arg("azimuth", -100, 100)
                        .arg("latitude", -RIGHT, RIGHT));
        all.add(
                new Call(
                                "peak irradiance",
                                a -> ResidentialLoadFactor.peakTotal(a[0], a[1]),
                                0.5,
                                40 * rad)
                        .arg("exposure", 0, 1)
                        .arg("latitude", -60 * rad, 60 * rad));
        all.add(
                new Call(
                                "shaded fraction",
                                a -> ResidentialLoadFactor.shadedFraction(a[0], a[1], a[2], a[3]),
                                1.5,
                                0.6,
                                0.3,
                                1.5)
                        .arg("shade line factor", 0, 100)
                        .arg("overhang depth", 0, 50)
                        .arg("overhang offset", 0, 50)
                        .above("window height", 0));
        all.add(
                new Call(
                                "exterior irradiance",
                                a ->
                                        ResidentialLoadFactor.peakExteriorIrradiance(
                                                a[0], a[1], a[2], a[3]),
                                0.8,
                                150,
                                400,
                                0.3)
                        .arg("exterior transmission", 0, 1)
                        .arg("diffuse irradiance", 0, 1500)
                        .arg("direct irradiance", 0, 1500)
                        .arg("shaded fraction", 0, 1));
        all.add(
                new Call(
                                "window",
                                a ->
                                        ResidentialLoadFactor.windowCooling(
                                                a[0], a[1], a[2], a[3], a[4], a[5], a[6]),
                                3,
                                9,
                                11,
                                500,
                                0.5,
                                0.6,
                                0.3)
                        .arg("U-factor", 0, 20)
                        .arg("temperature difference", -50, 50)
                        .arg("daily range", 0, 45)
                        .arg("peak irradiance", 0, 1500)
                        .arg("solar heat gain coefficient", 0, 1)
                        .arg("interior attenuation", 0, 1)
                        .arg("fenestration solar load factor", 0, 1));
        all.add(
                new Call(
                                "opaque part",
                                a ->
                                        ResidentialLoadFactor.opaqueCooling(
                                                a[0], a[1], a[2], ceiling, a[3]),
                                0.3,
                                9,
                                11,
                                0.8)
                        .arg("U-factor", 0, 20)
                        .arg("temperature difference", -50, 50)
                        .arg("daily range", 0, 45)
                        .arg("roof absorptance", 0, 1));
        all.add(
                new Call("slab", a -> ResidentialLoadFactor.slabCooling(a[0]), 0.2)
                        .arg("resistance of the floor cover", 0, 10));
        all.add(
                new Call("facing", a -> ResidentialLoadFactor.Facing.nearest(a[0], a[1]), 1, 0.6)
                        .arg("azimuth", -100, 100));
        all.add(
                new Call(
                                "driving force",
                                a ->
                                        ResidentialLoadFactor.infiltrationDrivingForce(
                                                false, a[0], a[1], a[2]),
                                2.5,
                                9,
                                0.1)
                        .arg("stack height", 0, 30)
                        .arg("temperature difference", -100, 100)
                        .arg("flue area", 0, 1));
        all.add(
                new Call(
                                "leakage area",
                                a -> ResidentialLoadFactor.leakageArea(a[0], a[1]),
                                300,
                                1.4e-4)
                        .arg("exposed surface", 0, 10_000)
                        .arg("unit leakage", 0, 0.01));
        all.add(
                new Call(
                                "sensible gain",
                                a -> ResidentialLoadFactor.internalSensible(a[0], a[1]),
                                195,
                                4)
                        .arg("floor area", 0, 10_000)
                        .arg("occupants", 0, 1000));
        all.add(
                new Call(
                                "latent gain",
                                a -> ResidentialLoadFactor.internalLatent(a[0], a[1]),
                                195,
                                4)
                        .arg("floor area", 0, 10_000)
                        .arg("occupants", 0, 1000));
        all.add(
                new Call("ducts", a -> ResidentialLoadFactor.withDucts(1000, a[0]), 0.2)
                        .arg("distribution loss factor", 0, 5));
    }

    private static void hours(List<Call> all) {
        DailyProfile profile = DailyProfile.FUNDAMENTALS_2009_TO_2021;
        all.add(
                new Call(
                                "dry bulbs",
                                a ->
                                        DesignDays.dryBulbs(
                                                profile,
                                                false,
                                                a[0],
                                                a[1],
                                                200,
                                                -1.8,
                                                -25_200,
                                                new double[24]),
                                305,
                                15)
                        .arg("design dry bulb", 180, 340)
                        .arg("daily range", 0, 60));
        all.add(
                new Call(
                                "constant humidity",
                                a ->
                                        DesignDays.constantHumidity(
                                                day(300), a[0], a[1], new double[24]),
                                0.008,
                                80_000)
                        .arg("humidity ratio", 0, 0.5)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call(
                                "humidity by wet bulb",
                                a ->
                                        DesignDays.wetBulbHumidity(
                                                profile, day(300), 290, 3, a[0], new double[24]),
                                80_000)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call("hours beyond", a -> DesignDays.hoursBeyond(a[0]), 0.01)
                        .arg("annual percentile", 0, 1));
        all.add(
                new Call("month by month", a -> WeatherYear.at(months(1), a[0]), 100)
                        .arg("day of the year", 0, 366));
        all.add(
                new Call(
                                "year of dry bulbs",
                                a ->
                                        WeatherYear.dryBulbs(
                                                months(a[0]),
                                                months(a[1]),
                                                a[2],
                                                profile,
                                                new double[WeatherYear.HOURS]),
                                285,
                                12,
                                3)
                        .arg("monthly mean dry bulb", 200, 330)
                        .arg("monthly daily range", 0, 45)
                        .arg("deviation of the daily mean", 0, 15));
        double[] warm = new double[WeatherYear.HOURS];
        Arrays.fill(warm, 300);
        all.add(
                new Call(
                                "year of humidity",
                                a ->
                                        WeatherYear.humidity(
                                                months(a[0]),
                                                warm,
                                                a[1],
                                                new double[WeatherYear.HOURS]),
                                0.006,
                                80_000)
                        .arg("monthly mean humidity ratio", 0, 0.05)
                        .arg("pressure", 30_000, 110_000));
        all.add(
                new Call(
                                "year of sunshine",
                                a ->
                                        WeatherYear.irradiance(
                                                ClearSky.Edition.FUNDAMENTALS_2013_TO_2021,
                                                months(a[0]),
                                                months(a[1]),
                                                months(a[2]),
                                                new double[WeatherYear.HOURS],
                                                new double[WeatherYear.HOURS],
                                                new double[WeatherYear.HOURS]),
                                0.4,
                                2.2,
                                0.3)
                        .arg("monthly beam optical depth", 0, 3)
                        .arg("monthly diffuse optical depth", 0, 6)
                        .arg("monthly cloud cover", 0, 1));
        double[] shares = new double[24];
        shares[0] = 1;
        all.add(
                new Call(
                                "delay",
                                a -> RadiantTimeSeries.delay(day(a[0]), day(a[1]), new double[24]),
                                5,
                                0.04)
                        .arg("series at 0", -1e12, 1e12)
                        .arg("time factors at 0", -1e12, 1e12));
        all.add(
                new Call(
                                "conduction gain",
                                a ->
                                        RadiantTimeSeries.conductionGain(
                                                a[0], a[1], day(310), a[2], shares, new double[24]),
                                0.5,
                                10,
                                297)
                        .arg("U-factor", 0, 20)
                        .arg("area", 0, 1e6)
                        .arg("room temperature", 250, 330));
        all.add(
                new Call(
                                "cooling load",
                                a ->
                                        RadiantTimeSeries.coolingLoad(
                                                day(100), a[0], shares, new double[24]),
                                0.6)
                        .arg("radiant fraction", 0, 1));
        all.add(
                new Call(
                                "outdoor hours",
                                a ->
                                        outdoors(
                                                a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7],
                                                a[8], a[9]),
                                300,
                                0.008,
                                3,
                                1,
                                3,
                                800,
                                100,
                                80_000,
                                283,
                                0.2)
                        .arg("dry bulb at hour index 0", 180, 340)
                        .arg("humidity ratio at hour index 0", 0, 0.5)
                        .arg("wind speed at hour index 0", 0, 120)
                        .arg("solar altitude at hour index 0", -RIGHT, RIGHT)
                        .arg("sun azimuth at hour index 0", -100, 100)
                        .arg("beam normal irradiance at hour index 0", 0, 1500)
                        .arg("diffuse horizontal irradiance at hour index 0", 0, 1500)
                        .arg("pressure", 30_000, 110_000));
    }

    private static OutdoorHours outdoors(
            double dryBulb,
            double moisture,
            double wind,
            double altitude,
            double azimuth,
            double beam,
            double diffuse,
            double pressure,
            double ground,
            double reflectance) {
        return new OutdoorHours(
                true,
                0,
                day(dryBulb),
                day(moisture),
                day(wind),
                day(altitude),
                day(azimuth),
                day(beam),
                day(diffuse),
                pressure,
                ground,
                reflectance);
    }

    @Test
    void outdoor_hours_name_what_else_is_wrong() {
        for (double ground : new double[] {229, 321}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> outdoors(300, 0.008, 3, 1, 3, 800, 100, 80_000, ground, 0.2))
                    .withMessageContaining("ground temperature is " + ground);
        }
        for (double share : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> outdoors(300, 0.008, 3, 1, 3, 800, 100, 80_000, 283, share))
                    .withMessageContaining("ground reflectance is " + share);
        }
        OutdoorHours hours = outdoors(300, 0.008, 3, 1, 3, 800, 100, 80_000, Double.NaN, 0.2);
        double[] enough = new double[24];
        double[] few = new double[23];
        List<double[]> places = new ArrayList<>(Collections.nCopies(4, enough));
        for (int i = 0; i < 4; i++) {
            places.set(i, few);
            assertThatIllegalArgumentException()
                    .isThrownBy(
                            () ->
                                    hours.incidentParts(
                                            3,
                                            1,
                                            places.get(0),
                                            places.get(1),
                                            places.get(2),
                                            places.get(3)))
                    .withMessageContaining("result array has 23 places");
            places.set(i, enough);
        }
        Stream.of(-0.1, 3.2)
                .forEach(
                        tilt ->
                                assertThatIllegalArgumentException()
                                        .isThrownBy(
                                                () ->
                                                        hours.incidentParts(
                                                                3, tilt, enough, enough, enough,
                                                                enough))
                                        .withMessageContaining("tilt is " + tilt));
    }
}
