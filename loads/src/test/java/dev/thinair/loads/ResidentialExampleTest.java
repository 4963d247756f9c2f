package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.litresPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.squareCentimetres;
import static dev.thinair.units.Units.squareMetreKelvinsPerWatt;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.ResidentialLoadFactor.OpaquePart;
import dev.thinair.loads.kernel.VentilationAir;
import dev.thinair.units.Si;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.junit.jupiter.api.Test;

/**
 * The worked house of ASHRAE Handbook, Fundamentals 2021 (SI), chapter 17, section 9 (Tables 18 to
 * 23), described as a house and reckoned by the quick method: one story in Atlanta, 195.3 m2, slab
 * on grade, vented attic, garage wall, windows half fixed and half operable behind insect screens,
 * eaves of 0.6 m over those east and west.
 *
 * <p>Published and held here: design differences, every factor of Tables 20 and 21, slab, exposed
 * surface and leakage area, air flows and their loads, gains, totals. Not seen, so not held: how
 * the walls, doors and windows share the surface (Table 22); the widths here are invented, and its
 * envelope sums of 1,900 and 4,674 W enter the totals as given.
 *
 * <p>Misprints, matched to the method: the stated -3.5 C gives 23.5 K, but all heating factors use
 * 23 K; cooling uses 9.1 K where a table prints 9; exposure counts from north, not south; the
 * volume is 468.7 m3, and 356.5 in its place is the exposed surface. The source reads its tables at
 * 35 degrees of latitude for a site at 33.64, so that the site here lies at 35.
 */
class ResidentialExampleTest {

    private static final double FLOOR = 195.3;
    private static final double PERIMETER = 67.2;
    private static final double EXPOSED = 356.5;
    private static final double HEIGHT = 2.4;

    private static final Site SITE =
            Site.of("worked house", degrees(35), degrees(-84.43), ZoneOffset.ofHours(-5), metres(0))
                    .withGroundTemperature(celsius(16));
    private static final CoolingDesignDay SUMMER =
            CoolingDesignDay.at(SITE)
                    .date(LocalDate.of(2026, 7, 21))
                    .dryBulb(celsius(33.1))
                    .dailyRange(kelvinDifference(9.3))
                    .wetBulb(celsius(23))
                    .opticalDepths(0.515, 2.066)
                    .build();
    private static final HeatingDesignDay WINTER = HeatingDesignDay.of(SITE, celsius(-3));

    private static Assembly resistance(String name, double u, double films) {
        return Assembly.insideOut(
                name, Layer.ofResistance(name, squareMetreKelvinsPerWatt(1 / u - films)));
    }

    private static Window fixed(String name, double height) {
        return window(name, height, 2.01, 0.36);
    }

    private static Window operable(String name, double height) {
        return window(name, height, 2.21, 0.31).withScreen(ratio(0.64));
    }

    private static Window window(String name, double height, double u, double shgc) {
        return Window.of(
                        name,
                        metres(1),
                        metres(height),
                        wattsPerSquareMetreKelvin(u),
                        Glazing.ofTable("rated", new double[] {0, 90}, new double[] {shgc, 0}))
                .withShade(Shade.interior("half closed", ratio(0.68), ratio(0.5)));
    }

    private static Window underEave(Window window) {
        return window.withOverhang(Overhang.alongWall(metres(0.6), metres(0)));
    }

    private static House house() {
        Assembly wall = resistance("frame wall", 0.51, 0.15);
        Room living =
                Room.named("house")
                        .floorArea(squareMetres(FLOOR))
                        .volume(cubicMetres(FLOOR * HEIGHT))
                        .surface(
                                Surface.wall("west", wall)
                                        .size(metres(16.8), metres(HEIGHT))
                                        .facing(degrees(270))
                                        .window(
                                                underEave(fixed("W fixed 0.9", 0.9)),
                                                underEave(operable("W operable 0.9", 0.9)),
                                                underEave(fixed("W fixed 1.8", 1.8)))
                                        .door(
                                                Door.of(
                                                        "door",
                                                        squareMetres(2),
                                                        wattsPerSquareMetreKelvin(2.3))))
                        .surface(
                                Surface.wall("south", wall)
                                        .size(metres(16.8), metres(HEIGHT))
                                        .facing(degrees(180))
                                        .window(fixed("S fixed 1.2", 1.2)))
                        .surface(
                                Surface.wall("east", wall)
                                        .size(metres(16.8), metres(HEIGHT))
                                        .facing(degrees(90))
                                        .window(
                                                underEave(fixed("E fixed 0.9", 0.9)),
                                                underEave(operable("E operable 1.2", 1.2))))
                        .surface(
                                Surface.partition(
                                                "garage wall",
                                                resistance("garage wall", 0.51, 0.24))
                                        .size(metres(16.8), metres(HEIGHT))
                                        .to("garage"))
                        .surface(
                                Surface.ceiling("ceiling", resistance("ceiling", 0.18, 0.24))
                                        .area(squareMetres(FLOOR))
                                        .under("attic"))
                        .surface(
                                Surface.floor("slab", Assemblies.slab())
                                        .area(squareMetres(FLOOR))
                                        .onGround(
                                                Ground.slabEdge(
                                                        wattsPerMetreKelvin(0.85),
                                                        metres(PERIMETER))))
                        .gain(Occupants.of(4, Occupants.Activity.OFFICE_WORK))
                        .build();
        Room attic =
                Room.unconditioned("attic")
                        .volume(cubicMetres(150))
                        .outdoorAir(airChangesPerHour(3))
                        .surface(
                                Surface.roof("roof", Assemblies.shingleRoof())
                                        .area(squareMetres(210))
                                        .absorptance(ratio(0.85)))
                        .build();
        Room garage =
                Room.unconditioned("garage")
                        .volume(cubicMetres(90))
                        .outdoorAir(airChangesPerHour(2))
                        .surface(
                                Surface.wall("garage north", Assemblies.woodFrameWall())
                                        .size(metres(16.8), metres(HEIGHT))
                                        .facing(degrees(0)))
                        .build();
        return House.named("worked house")
                .room(living, attic, garage)
                .infiltration(
                        Infiltration.leakageArea(
                                squareCentimetres(EXPOSED * 1.4),
                                Exposure.of(1, InfiltrationModel.Shelter.MODERATE)))
                .ventilation(
                        Ventilation.balanced(
                                litresPerSecond(1_000 * VentilationAir.wholeHouseRate(FLOOR, 3))))
                .ducts(ratio(0.27), ratio(0.13))
                .build();
    }

    private static Map<String, FactorLoad.Line> lines(FactorLoad load) {
        return load.lines().stream()
                .collect(Collectors.toMap(FactorLoad.Line::name, Function.identity()));
    }

    private static double watts(Quantity<Power> power) {
        return Si.watts(power, "load");
    }

    private final FactorLoad load =
            FactorLoad.of(house(), SUMMER, WINTER, celsius(24), celsius(20));
    private final Map<String, FactorLoad.Line> lines = lines(load);

    @Test
    void exposed_surface_leakage_and_ventilation() {
        // The gross walls of the perimeter and the ceiling are the exposed surface.
        assertThat(PERIMETER * HEIGHT + FLOOR).isCloseTo(EXPOSED, within(0.1));
        assertThat(FLOOR * HEIGHT).isCloseTo(468.7, within(0.06));
        assertThat(EXPOSED * 1.4).isCloseTo(499, within(0.6));
        assertThat(1_000 * VentilationAir.wholeHouseRate(FLOOR, 3)).isCloseTo(43, within(0.6));
    }

    // Table 20 (LD-C019 to C022), by U, 9.1 K, 9.3 K and the roof's absorptance 0.85.
    @Test
    void opaque_factors() {
        assertThat(lines.get("ceiling").coolingFactor()).isCloseTo(2.08, within(0.006));
        assertThat(lines.get("west").coolingFactor()).isCloseTo(7.12, within(0.006));
        assertThat(lines.get("garage wall").coolingFactor()).isCloseTo(2.93, within(0.006));
        assertThat(lines.get("slab").coolingFactor()).isCloseTo(-2.34, within(0.006));
        assertThat(lines.get("ceiling").area()).isCloseTo(FLOOR, within(1e-9));
        // Table 22: 0.85 W/(m K) along 67.2 m at 23 K, the factor rounded to 19.6 (LD-B174).
        assertThat(lines.get("slab").heating()).isCloseTo(1317, within(5.0));
        assertThat(lines.get("ceiling").heatingFactor()).isCloseTo(0.18 * 23, within(1e-9));
        assertThat(lines.get("garage wall").heatingFactor()).isCloseTo(0.51 * 23, within(1e-9));
    }

    // Table 21 (LD-C023 to C039). The source rounds shaded fractions to two places and irradiances
    // to whole W/m2 on the way, which is up to 0.5 W/m2 in the factor.
    @Test
    void window_factors() {
        Map<String, Double> printed =
                Map.of(
                        "W fixed 0.9", 63.5,
                        "W operable 0.9", 40.3,
                        "W fixed 1.8", 98.3,
                        "S fixed 1.2", 65.3,
                        "E fixed 0.9", 39.5,
                        "E operable 1.2", 32.4);
        printed.forEach(
                (name, factor) -> {
                    FactorLoad.Line line = lines.get("window " + name);
                    assertThat(line.coolingFactor()).as(name).isCloseTo(factor, within(0.5));
                    assertThat(line.heatingFactor())
                            .isCloseTo((name.contains("fixed") ? 2.01 : 2.21) * 23, within(1e-9));
                });
    }

    // Section 9: 17 L/s of infiltration and 43 of ventilation in summer, 36 and 43 in winter, each
    // rounded to 1 L/s; the winter flow is read at 23.5 K, its load at 23 (LD-D030, D032).
    @Test
    void air_and_gains() {
        FactorLoad.Line air = lines.get("infiltration and ventilation");
        assertThat(air.cooling()).isCloseTo(672, within(0.5 * 1.23 * 9.1));
        assertThat(air.heating()).isCloseTo(2235, within((0.5 + 0.25) * 1.23 * 23));
        assertThat(lines.get("internal gains").cooling()).isCloseTo(654, within(0.6));
    }

    // Table 23: 4,096 W and 7,807 W (LD-C044, C045).
    @Test
    void totals_with_the_published_envelope() {
        double cooling = 1 / (0.51 * (9.1 + 8.2 - 0.36 * 9.3));
        FactorLoad summer =
                FactorLoad.at(SITE)
                        .cooling(celsius(33.1), kelvinDifference(9.3), celsius(24))
                        .heating(celsius(-3), celsius(20))
                        .opaque(
                                "envelope",
                                OpaquePart.SUNLIT_WALL_OR_DOOR,
                                squareMetres(1_900 * cooling),
                                wattsPerSquareMetreKelvin(0.51),
                                ratio(0))
                        .infiltration(litresPerSecond(17), litresPerSecond(36))
                        .ventilation(Ventilation.balanced(litresPerSecond(43)))
                        .people(squareMetres(FLOOR), 4)
                        .ducts(ratio(0.27), ratio(0.13))
                        .build();
        assertThat(watts(summer.envelopeCooling())).isCloseTo(1_900, within(1e-6));
        assertThat(lines(summer).get("infiltration and ventilation").cooling())
                .isCloseTo(672, within(1.0));
        assertThat(lines(summer).get("infiltration and ventilation").heating())
                .isCloseTo(2_235, within(1.0));
        assertThat(watts(summer.sensibleCooling())).isCloseTo(4_096, within(2.0));
        assertThat(watts(summer.latentCooling())).isCloseTo(111, within(0.6));
        FactorLoad winter =
                FactorLoad.at(SITE)
                        .cooling(celsius(33.1), kelvinDifference(9.3), celsius(24))
                        .heating(celsius(-3), celsius(20))
                        .opaque(
                                "envelope",
                                OpaquePart.SUNLIT_WALL_OR_DOOR,
                                squareMetres(4_674 / (0.51 * 23)),
                                wattsPerSquareMetreKelvin(0.51),
                                ratio(0))
                        .infiltration(litresPerSecond(17), litresPerSecond(36))
                        .ventilation(Ventilation.balanced(litresPerSecond(43)))
                        .ducts(ratio(0.27), ratio(0.13))
                        .build();
        assertThat(watts(winter.envelopeHeating())).isCloseTo(4_674, within(1e-6));
        assertThat(watts(winter.heating())).isCloseTo(7_807, within(1.0));
    }

    @Test
    void the_house_adds_up_to_its_lines() {
        List<FactorLoad.Line> all = load.lines();
        double cool = all.stream().mapToDouble(FactorLoad.Line::cooling).sum();
        double heat = all.stream().mapToDouble(FactorLoad.Line::heating).sum();
        assertThat(watts(load.sensibleCooling())).isCloseTo(1.27 * cool, within(1e-9));
        assertThat(watts(load.heating())).isCloseTo(1.13 * heat, within(1e-9));
        for (FactorLoad.Line line : all) {
            if (line.area() > 0) {
                assertThat(line.cooling())
                        .isCloseTo(line.area() * line.coolingFactor(), within(1e-9));
            }
        }
    }

    @Test
    void a_screen_takes_its_share_of_beam_and_diffuse_at_every_hour() {
        OutdoorHours hours = SUMMER.outdoorHours();
        Window bare = fixed("w", 1.2);
        Window screened = bare.withScreen(ratio(0.64));
        double[] all = new double[24];
        double[] through = new double[24];
        bare.solarGain(hours, Math.toRadians(200), Math.PI / 2, all);
        screened.solarGain(hours, Math.toRadians(200), Math.PI / 2, through);
        for (int h = 0; h < 24; h++) {
            assertThat(through[h]).isCloseTo(0.64 * all[h], within(1e-9));
        }
        assertThat(all[13]).isGreaterThan(40);
        assertThat(screened).isNotEqualTo(bare);
        assertThat(screened.withScreen(ratio(1))).isEqualTo(bare).hasSameHashCodeAs(bare);
        assertThat(underEave(screened).screenTransmission()).isEqualTo(0.64);
        String steps =
                screened.gainWorking(SUMMER, 13, degrees(200), degrees(90), celsius(24)).toString();
        assertThat(steps).contains("T_x");
        assertThat(bare.gainWorking(SUMMER, 13, degrees(200), degrees(90), celsius(24)).toString())
                .doesNotContain("T_x");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare.withScreen(ratio(1.2)))
                .withMessageContaining("screen");
    }
}
