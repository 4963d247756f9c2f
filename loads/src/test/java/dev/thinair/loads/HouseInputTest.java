package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.joulesPerKilogramKelvin;
import static dev.thinair.units.Units.kilogramsPerCubicMetre;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.millimetres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.ratio;
import static dev.thinair.units.Units.seconds;
import static dev.thinair.units.Units.squareMetreKelvinsPerWatt;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a description may not be, and what it says then. */
class HouseInputTest {
    private static final Assembly WALL = Assemblies.woodFrameWall();
    private static final Site SITE = SampleHouses.site(1500);

    private static Surface.Builder wall() {
        return Surface.wall("wall", WALL).area(squareMetres(10)).facing(degrees(0));
    }

    private static Room.Builder room() {
        return Room.named("den").floorArea(squareMetres(10)).height(metres(2.4)).surface(wall());
    }

    private static House.Builder house() {
        return House.named("cabin").room(room());
    }

    private static Material material(double k, double rho, double c) {
        return Material.of(
                "stuff",
                wattsPerMetreKelvin(k),
                kilogramsPerCubicMetre(rho),
                joulesPerKilogramKelvin(c),
                "test");
    }

    private static Arguments bad(ThrowingCallable call, String... words) {
        return Arguments.of(call, List.of(words));
    }

    static Stream<Arguments> cases() {
        Layer gypsum = Materials.GYPSUM_BOARD.layer(millimetres(12.7));
        Layer batt = Materials.BATT.layer(millimetres(89));
        Layer stud = Materials.SOFTWOOD.layer(millimetres(89));
        return Stream.of(
                bad(() -> material(0, 1000, 1000), "conductivity of stuff is 0.0", "W/(m K)"),
                bad(() -> material(-1, 1000, 1000), "conductivity of stuff is -1.0"),
                bad(() -> material(1, 0, 1000), "density of stuff"),
                bad(() -> material(1, 1000, 1e6), "specific heat of stuff"),
                bad(
                        () ->
                                Material.of(
                                        " ",
                                        wattsPerMetreKelvin(1),
                                        kilogramsPerCubicMetre(1),
                                        joulesPerKilogramKelvin(1000),
                                        "test"),
                        "material name is blank"),
                bad(
                        () ->
                                Material.of(
                                        "x",
                                        wattsPerMetreKelvin(1),
                                        kilogramsPerCubicMetre(1),
                                        joulesPerKilogramKelvin(1000),
                                        ""),
                        "source of material x is blank"),
                bad(() -> Materials.BRICK.layer(millimetres(-10)), "thickness of brick is -0.01"),
                bad(() -> Materials.BRICK.layer(metres(50)), "thickness of brick is 50.0"),
                bad(() -> Materials.BRICK.layer(metres(0)), "thickness of brick is 0.0"),
                bad(
                        () -> Layer.ofResistance("gap", squareMetreKelvinsPerWatt(0)),
                        "resistance of gap"),
                bad(
                        () -> Layer.ofResistance("", squareMetreKelvinsPerWatt(1)),
                        "layer name is blank"),
                bad(() -> AirGap.of(millimetres(0), HeatFlow.UPWARD), "air gap thickness"),
                bad(() -> AirGap.of(metres(2), HeatFlow.UPWARD), "air gap thickness is 2.0 m"),
                bad(
                        () -> AirGap.of(millimetres(20), HeatFlow.UPWARD, ratio(0), ratio(0.9)),
                        "inner emissivity of the air gap"),
                bad(
                        () -> AirGap.of(millimetres(20), HeatFlow.UPWARD, ratio(0.9), ratio(1.5)),
                        "outer emissivity of the air gap"),
                bad(() -> Assembly.outsideIn("empty"), "\"empty\" has no layer"),
                bad(() -> Assembly.insideOut("", gypsum), "assembly name is blank"),
                bad(() -> WALL.totalResistance(0, 0.04), "inside film resistance"),
                bad(() -> WALL.totalResistance(0.13, -1), "outside film resistance"),
                bad(
                        () -> FramedAssembly.named("f").layer(gypsum).framing(percent(10)).build(),
                        "\"f\" has no bridged layer"),
                bad(
                        () -> FramedAssembly.named("f").bridged(batt, stud).build(),
                        "\"f\" has no framing fraction"),
                bad(() -> FramedAssembly.named("f").framing(percent(0)), "framing fraction of f"),
                bad(
                        () -> FramedAssembly.named("f").framing(percent(120)),
                        "framing fraction of f is 1.2"),
                bad(
                        () ->
                                FramedAssembly.named("steel")
                                        .layer(gypsum)
                                        .bridged(
                                                Materials.BATT.layer(millimetres(200)),
                                                Materials.STEEL_SHEET.layer(millimetres(200)))
                                        .framing(percent(0.5))
                                        .build(),
                        "ratio of upper to lower limit"),
                bad(() -> new Films(0, 1, 1, 5, 17), "convection coefficient at walls"),
                bad(() -> new Films(1, 1, 1, 50, 17), "radiation coefficient"),
                bad(() -> new Films(1, 1, 1, 5, 0), "outside faces"),
                bad(
                        () -> Door.of("door", squareMetres(0), wattsPerSquareMetreKelvin(2)),
                        "area of door"),
                bad(
                        () -> Door.of("door", squareMetres(2), wattsPerSquareMetreKelvin(9)),
                        "U-factor of door is 9.0"),
                bad(
                        () ->
                                Door.of(
                                        "door",
                                        squareMetres(2),
                                        wattsPerSquareMetreKelvin(2),
                                        ratio(2)),
                        "solar absorptance of door"),
                bad(
                        () -> Surface.wall("wall", WALL).facing(degrees(0)).build(),
                        "\"wall\" has no area"),
                bad(
                        () -> Surface.wall("wall", WALL).area(squareMetres(-3)),
                        "area of wall is -3.0"),
                bad(() -> Surface.wall("wall", WALL).size(metres(0), metres(2)), "width of wall"),
                bad(() -> Surface.wall("wall", WALL).size(metres(2), metres(-2)), "height of wall"),
                bad(
                        () -> Surface.wall("wall", WALL).area(squareMetres(3)).build(),
                        "needs a direction"),
                bad(() -> wall().tilt(degrees(200)), "tilt of wall"),
                bad(() -> wall().tilt(degrees(-1)), "tilt of wall"),
                bad(() -> wall().facing(degrees(400)), "azimuth of wall"),
                bad(() -> wall().absorptance(ratio(1.1)), "solar absorptance of wall"),
                bad(() -> wall().emissivity(ratio(-0.1)), "emissivity of wall"),
                bad(
                        () -> wall().window(SampleHouses.window("big", 5, 2.5)).build(),
                        "take 12.500 m2, but must take less than its 10.000 m2"),
                bad(
                        () ->
                                Surface.partition("p", WALL)
                                        .area(squareMetres(5))
                                        .to("next")
                                        .window(SampleHouses.window("w", 1, 1))
                                        .build(),
                        "cannot hold windows"),
                bad(
                        () -> Surface.ceiling("c", WALL).area(squareMetres(5)).build(),
                        "\"c\" is a ceiling, so it must say what is behind it"),
                bad(
                        () -> Surface.mass("m", WALL).area(squareMetres(5)).to("x").build(),
                        "nothing can be behind it"),
                bad(() -> Surface.wall("", WALL), "surface name is blank"),
                bad(
                        () -> Surface.partition("p", WALL).toSpaceAt(celsius(-100)),
                        "temperature of the adjacent space"),
                bad(
                        () -> Surface.floor("f", WALL).over(" "),
                        "name of the adjacent space is blank"),
                bad(
                        () -> Room.named("den").surface(wall()).build(),
                        "room \"den\" has no air: give its volume, or floor area and height"),
                bad(
                        () -> Room.named("den").volume(cubicMetres(20)).surface(wall()).build(),
                        "room \"den\" has no floor area"),
                bad(
                        () ->
                                Room.named("den")
                                        .floorArea(squareMetres(9))
                                        .height(metres(2))
                                        .build(),
                        "room \"den\" has no surface"),
                bad(() -> Room.named("den").floorArea(squareMetres(0)), "floor area of den"),
                bad(() -> Room.named("den").height(metres(100)), "height of den"),
                bad(() -> Room.named("den").volume(cubicMetres(-1)), "volume of den"),
                bad(() -> Room.named("den").outdoorAir(airChangesPerHour(1)), "is conditioned"),
                bad(
                        () -> Room.unconditioned("loft").outdoorAir(airChangesPerHour(500)),
                        "air changes of loft"),
                bad(() -> Room.named("den").furniture(-1), "furniture capacity of den"),
                bad(() -> room().surface(wall()).build(), "two surfaces named \"wall\""),
                bad(() -> House.named("h").build(), "no conditioned room"),
                bad(() -> house().room(room()).build(), "two rooms named \"den\""),
                bad(
                        () ->
                                House.named("h")
                                        .room(
                                                room().surface(
                                                                Surface.ceiling("c", WALL)
                                                                        .area(squareMetres(9))
                                                                        .under("attic")))
                                        .build(),
                        "is next to \"attic\", but the house has [den]"),
                bad(
                        () ->
                                House.named("h")
                                        .room(
                                                room().surface(
                                                                Surface.partition("p", WALL)
                                                                        .area(squareMetres(9))
                                                                        .to("den")))
                                        .build(),
                        "next to its own room"),
                bad(() -> house().ducts(percent(200), percent(0)), "duct gain in cooling is 2.0"),
                bad(() -> house().ducts(percent(0), percent(-5)), "duct loss in heating"),
                bad(() -> house().build().room("hall"), "no room \"hall\""),
                bad(() -> Setpoint.of(celsius(80)), "setpoint is 353.15 K"),
                bad(
                        () -> Setpoint.of(celsius(24)).withRelativeHumidity(percent(140)),
                        "relative humidity is 1.4"),
                bad(
                        () -> Setpoint.byHour(Collections.nCopies(23, celsius(24))),
                        "23 values, but must have 24"),
                bad(() -> Setpoint.of(celsius(24)).temperature("den", 24), "hour is 24.0"),
                bad(
                        () ->
                                house().build()
                                        .compile(SITE)
                                        .coolingLoad(
                                                SampleHouses.hotDay(SITE),
                                                Setpoint.of(celsius(24))
                                                        .withRoom("hall", celsius(22))),
                        "no room \"hall\""),
                bad(
                        () ->
                                SampleHouses.tenRooms()
                                        .compile(SITE)
                                        .coolingLoad(
                                                SampleHouses.hotDay(SITE),
                                                Setpoint.of(celsius(24))
                                                        .withRoom("attic", celsius(22))),
                        "\"attic\", but that space is not conditioned"),
                bad(() -> load().sensible(24), "hour is 24.0"),
                bad(() -> load().sensible("hall", 3), "no room \"hall\""),
                bad(() -> load().temperature("den", 3), "is conditioned"),
                bad(() -> load().airflow("den", celsius(40)), "cannot carry"),
                bad(
                        () -> house().build().compile(SITE).network(celsius(24), seconds(0)),
                        "cell time"),
                bad(
                        () -> house().build().compile(SITE).blockNetwork(celsius(90), seconds(900)),
                        "indoor temperature"),
                bad(
                        () -> house().build().compile(SITE).network().airNode("hall"),
                        "no room \"hall\""),
                bad(
                        () ->
                                House.named("h")
                                        .room(room())
                                        .room(
                                                Room.unconditioned("void")
                                                        .volume(cubicMetres(5))
                                                        .surface(
                                                                Surface.partition("p", WALL)
                                                                        .area(squareMetres(9))
                                                                        .adiabatic()))
                                        .build()
                                        .compile(SITE),
                        "free zone 1 is cut off"),
                bad(
                        () ->
                                House.named("h")
                                        .room(
                                                Room.named("den")
                                                        .floorArea(squareMetres(9))
                                                        .height(metres(2))
                                                        .surface(
                                                                wall().window(
                                                                                Window.of(
                                                                                        "bare",
                                                                                        metres(1),
                                                                                        metres(1),
                                                                                        wattsPerSquareMetreKelvin(
                                                                                                9.5),
                                                                                        Glazing
                                                                                                .clearSingle()))))
                                        .build()
                                        .compile(SITE),
                        "U-factor of \"bare\" in \"wall\""));
    }

    private static DesignLoad load() {
        return house().build()
                .compile(SITE)
                .coolingLoad(SampleHouses.hotDay(SITE), Setpoint.of(celsius(18)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void bad_input_is_refused_by_name(ThrowingCallable call, List<String> words) {
        assertThatIllegalArgumentException()
                .isThrownBy(call)
                .satisfies(
                        e ->
                                words.forEach(
                                        word ->
                                                org.assertj.core.api.Assertions.assertThat(e)
                                                        .hasMessageContaining(word)));
    }

    @Test
    void nulls_are_refused_by_name() {
        assertThatNullPointerException()
                .isThrownBy(() -> Surface.wall("wall", null))
                .withMessageContaining("assembly of wall");
        assertThatNullPointerException()
                .isThrownBy(() -> Layer.of(null, millimetres(10)))
                .withMessageContaining("material of a layer");
        assertThatNullPointerException()
                .isThrownBy(() -> house().infiltration(null))
                .withMessageContaining("infiltration");
        assertThatNullPointerException()
                .isThrownBy(() -> house().build().compile(null))
                .withMessageContaining("site");
        assertThatNullPointerException()
                .isThrownBy(() -> AirGap.of(millimetres(10), null))
                .withMessageContaining("heat flow direction");
        assertThatNullPointerException()
                .isThrownBy(() -> wall().onGround(null))
                .withMessageContaining("ground");
        assertThatNullPointerException()
                .isThrownBy(() -> FramedAssembly.named("f").layer(null))
                .withMessageContaining("layer of f");
    }
}
