package dev.thinair.ducts;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.millimetres;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dev.thinair.ducts.kernel.BlowerCurve;
import dev.thinair.ducts.kernel.DeliveryEffectiveness;
import dev.thinair.ducts.kernel.DuctConduction;
import dev.thinair.ducts.kernel.DuctGeometry;
import dev.thinair.ducts.kernel.FlexibleDuct;
import dev.thinair.ducts.kernel.Friction;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.ducts.kernel.Leakage;
import dev.thinair.ducts.kernel.Network;
import dev.thinair.ducts.kernel.RegisterShutting;
import dev.thinair.ducts.kernel.VelocityPressure;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What is refused, and that the message says which thing is wrong. */
class BadInputTest {

    private final List<DynamicTest> cases = new ArrayList<>();

    private void refused(String what, String message, ThrowingCallable call) {
        cases.add(
                dynamicTest(
                        what,
                        () ->
                                assertThatThrownBy(call)
                                        .isInstanceOf(IllegalArgumentException.class)
                                        .hasMessageContaining(message)));
    }

    private static Duct metal(double inches) {
        return Duct.of(DuctShape.round(inches(inches)), feet(10), DuctMaterial.GALVANIZED);
    }

    private static Register open() {
        return Register.of(inches(10), inches(6));
    }

    private static DuctSystem.Builder bare() {
        return DuctSystem.builder()
                .blower(Houses.blower())
                .supplyRun("s", DuctSystem.SUPPLY_PLENUM, "room", metal(8), open())
                .returnRun("r", "room", DuctSystem.RETURN_PLENUM, metal(10), open());
    }

    @TestFactory
    Stream<DynamicTest> shapes_and_ducts() {
        cases.add(
                dynamicTest(
                        "null diameter",
                        () ->
                                assertThatThrownBy(() -> DuctShape.round(null))
                                        .isInstanceOf(NullPointerException.class)
                                        .hasMessageContaining("duct diameter is null")));
        refused("zero diameter", "duct diameter is 0.0 m", () -> DuctShape.round(inches(0)));
        refused(
                "negative side",
                "side of rectangular duct",
                () -> DuctShape.rectangular(inches(-8), inches(8)));
        refused(
                "flat oval on end",
                "more than its major axis",
                () -> DuctShape.flatOval(inches(6), inches(14)));
        refused(
                "zero length trunk",
                "duct length is 0.0 m",
                () -> Duct.of(DuctShape.round(inches(6)), feet(0), DuctMaterial.GALVANIZED));
        refused(
                "negative length",
                "duct length",
                () -> Duct.of(DuctShape.round(inches(6)), feet(-3), DuctMaterial.GALVANIZED));
        refused(
                "length of a road",
                "duct length",
                () -> Duct.of(DuctShape.round(inches(6)), feet(5_000), DuctMaterial.GALVANIZED));
        refused(
                "no shape",
                "shape and a material",
                () -> Duct.of(null, feet(3), DuctMaterial.GALVANIZED));
        refused(
                "too rough for its size",
                "relative roughness",
                () -> Duct.of(DuctShape.round(inches(1)), feet(3), DuctMaterial.FLEXIBLE_METAL));
        refused(
                "compressed metal",
                "only flexible duct",
                () -> metal(6).withCompression(percent(10)));
        refused("sagging metal", "only flexible duct", () -> metal(6).withSag(percent(10)));
        refused(
                "compressed to nothing",
                "compression of flexible duct",
                () ->
                        Duct.of(DuctShape.round(inches(6)), feet(3), DuctMaterial.FLEXIBLE)
                                .withCompression(percent(80)));
        refused(
                "loss coefficient NaN",
                "loss coefficient",
                () -> metal(6).withLossCoefficient(Double.NaN));
        refused("null fitting", "fitting is null", () -> metal(6).withFitting(null));
        refused("blank fitting", "a fitting needs a name", () -> Fitting.ofCoefficient(" ", 1, ""));
        refused(
                "negative equivalent length",
                "equivalent length",
                () -> metal(6).withEquivalentLength(feet(-1)));
        refused(
                "insulation of nothing",
                "duct insulation",
                () ->
                        metal(6).withInsulation(
                                        Units.quantity(0, Units.SQUARE_METRE_KELVIN_PER_WATT)));
        refused("no place", "place of duct is null", () -> metal(6).in(null));
        refused(
                "nameless material",
                "needs a name",
                () -> DuctMaterial.rigid("", metres(0.001), "own"));
        refused(
                "roughness of gravel",
                "roughness of gravel",
                () -> DuctMaterial.rigid("gravel", millimetres(30), "own"));
        return cases.stream();
    }

    @TestFactory
    Stream<DynamicTest> registers_filters_coils_leaks() {
        refused(
                "register without width",
                "register width",
                () -> Register.of(inches(0), inches(6)));
        refused(
                "free area above face",
                "free area of register",
                () -> open().withFreeArea(percent(120)));
        refused(
                "register opened to nothing",
                "open part of register",
                () -> open().partlyOpen(percent(0)));
        refused(
                "leak above half",
                "leak of shut register",
                () -> open().withLeakWhenShut(percent(90)));
        refused(
                "register drop at no flow",
                "register airflow",
                () -> open().withPressureDrop(cubicFeetPerMinute(0), pascals(5)));
        refused(
                "filter that sucks",
                "filter pressure drop",
                () -> Filter.of(cubicFeetPerMinute(1000), inchesOfWater(-0.1), percent(50)));
        refused(
                "viscous share above one",
                "viscous share",
                () -> Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.1), percent(150)));
        refused(
                "filter curve steeper than square",
                "ratio of filter pressure drops",
                () ->
                        Filter.through(
                                cubicFeetPerMinute(500),
                                pascals(10),
                                cubicFeetPerMinute(1000),
                                pascals(50)));
        refused(
                "filter curve flatter than proportion",
                "ratio of filter pressure drops",
                () ->
                        Filter.through(
                                cubicFeetPerMinute(500),
                                pascals(10),
                                cubicFeetPerMinute(1000),
                                pascals(15)));
        refused(
                "filter without resistance",
                "without any resistance",
                () -> Filter.ofCoefficients(0, 0));
        refused(
                "filter cleaner than clean",
                "loading of filter",
                () -> Filter.ofCoefficients(10, 10).loaded(0.5));
        refused(
                "MERV 25",
                "MERV class of filter",
                () -> Filter.ofCoefficients(10, 10).labelled("f", 25, inches(1)));
        refused(
                "coil drier wet",
                "wet pressure drop of coil",
                () -> WetCoil.of(cubicFeetPerMinute(1000), pascals(60), pascals(40)));
        refused(
                "coil exponent 3",
                "exponent of coil",
                () ->
                        WetCoil.of(cubicFeetPerMinute(1000), pascals(40), pascals(60))
                                .withExponent(3));
        refused(
                "leak exponent 2",
                "exponent of duct leakage",
                () -> DuctLeak.at25Pascals(cubicFeetPerMinute(50), 2, Place.ATTIC));
        refused(
                "leak to nowhere",
                "place of duct leakage is null",
                () -> DuctLeak.at25Pascals(cubicFeetPerMinute(50), null));
        refused(
                "negative leak",
                "duct leakage at 25 Pa",
                () -> DuctLeak.at25Pascals(cubicFeetPerMinute(-5), Place.ATTIC));
        refused(
                "transfer path of nothing",
                "area of transfer path",
                () -> TransferPath.ofArea(squareMetres(0)));
        return cases.stream();
    }

    @TestFactory
    Stream<DynamicTest> blowers() {
        refused("no speed", "has no speed", () -> Blower.builder().build());
        refused(
                "point before speed",
                "start a speed",
                () -> Blower.builder().point(pascals(10), cubicFeetPerMinute(10)));
        refused(
                "one point",
                "needs two or more",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000))
                                .build());
        refused(
                "table not monotone in flow",
                "not monotone",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000))
                                .point(pascals(20), cubicFeetPerMinute(1100))
                                .build());
        refused(
                "table not monotone in pressure",
                "must rise from row to row",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(30), cubicFeetPerMinute(1000))
                                .point(pascals(20), cubicFeetPerMinute(900))
                                .build());
        refused(
                "flat table",
                "not monotone",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000))
                                .point(pascals(20), cubicFeetPerMinute(1000))
                                .build());
        refused(
                "two speeds of one name",
                "two blower speeds \"high\"",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000))
                                .point(pascals(20), cubicFeetPerMinute(900))
                                .speed("high"));
        refused(
                "power for some points",
                "give it for all or for none",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000), Units.watts(300))
                                .point(pascals(20), cubicFeetPerMinute(900))
                                .build());
        refused(
                "negative power",
                "blower power",
                () ->
                        Blower.builder()
                                .speed("high")
                                .point(pascals(10), cubicFeetPerMinute(1000), Units.watts(-300)));
        refused(
                "efficiency above one",
                "blower efficiency",
                () -> Blower.builder().efficiency(percent(120)));
        refused(
                "unknown speed",
                "has no speed \"turbo\"",
                () -> Houses.blower().withSpeed("turbo"));
        refused(
                "holds nothing",
                "holds volume or mass",
                () -> Blower.builder().constantAirflow("x", cubicFeetPerMinute(900), null));
        refused(
                "holds more than its limit gives",
                "held airflow of blower speed",
                () ->
                        Blower.builder()
                                .constantAirflow("x", cubicFeetPerMinute(1900), Blower.Holds.VOLUME)
                                .point(pascals(10), cubicFeetPerMinute(1000))
                                .point(pascals(20), cubicFeetPerMinute(900))
                                .build());
        refused(
                "curve of unequal columns",
                "2 pressures but 1 flows",
                () -> BlowerCurve.through(new double[] {1, 2}, new double[] {1}));
        refused(
                "curve outside its table",
                "external static pressure",
                () -> BlowerCurve.through(new double[] {10, 20}, new double[] {1, 0.5}).flowAt(30));
        refused(
                "curve at a flow outside",
                "blower airflow",
                () ->
                        BlowerCurve.through(new double[] {10, 20}, new double[] {1, 0.5})
                                .pressureAt(0.1));
        return cases.stream();
    }

    @TestFactory
    Stream<DynamicTest> systems() {
        refused(
                "no blower",
                "has no blower",
                () ->
                        DuctSystem.builder()
                                .supplyRun("s", DuctSystem.SUPPLY_PLENUM, "room", metal(8), open())
                                .returnRun("r", "room", DuctSystem.RETURN_PLENUM, metal(8), open())
                                .build());
        refused("two blowers", "two blowers", () -> bare().blower(Houses.blower()));
        refused(
                "two filters",
                "two filters",
                () ->
                        bare().filter(Filter.ofCoefficients(10, 10))
                                .filter(Filter.ofCoefficients(10, 10)));
        refused(
                "no supply",
                "no supply run",
                () ->
                        DuctSystem.builder()
                                .blower(Houses.blower())
                                .returnRun("r", "room", DuctSystem.RETURN_PLENUM, metal(8), open())
                                .build());
        refused(
                "no return",
                "no return",
                () ->
                        DuctSystem.builder()
                                .blower(Houses.blower())
                                .supplyRun("s", DuctSystem.SUPPLY_PLENUM, "room", metal(8), open())
                                .build());
        refused(
                "unconnected run",
                "supply run \"lost\" is joined to \"nowhere\"",
                () -> bare().supplyRun("lost", "nowhere", "room", metal(6), open()).build());
        refused(
                "supply run on the return side",
                "no node of the supply side",
                () ->
                        bare().supplyRun(
                                        "wrong", DuctSystem.RETURN_PLENUM, "room", metal(6), open())
                                .build());
        refused(
                "unconnected trunk",
                "joined neither to the supply plenum",
                () -> bare().trunk("island", "X", "Y", metal(10)).build());
        refused(
                "trunk past the equipment",
                "only the equipment may",
                () ->
                        bare().trunk(
                                        "bypass",
                                        DuctSystem.SUPPLY_PLENUM,
                                        DuctSystem.RETURN_PLENUM,
                                        metal(10))
                                .build());
        refused(
                "trunk in a ring of one",
                "starts and ends at node",
                () -> bare().trunk("ring", "A", "A", metal(10)));
        refused(
                "two of one name",
                "two trunks or runs named \"s\"",
                () -> bare().supplyRun("s", DuctSystem.SUPPLY_PLENUM, "room", metal(6), open()));
        refused(
                "reserved name",
                "does not start with @",
                () ->
                        bare().supplyRun(
                                        "@blower",
                                        DuctSystem.SUPPLY_PLENUM,
                                        "room",
                                        metal(6),
                                        open()));
        refused(
                "run to no room",
                "names no room",
                () -> bare().supplyRun("x", DuctSystem.SUPPLY_PLENUM, "", metal(6), open()));
        refused(
                "run without duct",
                "duct of run \"x\" is null",
                () -> bare().supplyRun("x", DuctSystem.SUPPLY_PLENUM, "room", null, open()));
        refused(
                "all registers shut tight",
                "all supply registers are shut tight",
                () -> bare().build().withRegister("s", open().withLeakWhenShut(percent(0)).shut()));
        refused(
                "all grilles shut tight",
                "all return grilles are shut tight",
                () -> bare().build().withRegister("r", open().withLeakWhenShut(percent(0)).shut()));
        refused(
                "leak at no node",
                "there is no such node",
                () ->
                        bare().leak(
                                        "nowhere",
                                        DuctLeak.at25Pascals(cubicFeetPerMinute(50), Place.ATTIC))
                                .build());
        refused(
                "transfer from no room",
                "which no run serves",
                () -> bare().transfer("cellar", TransferPath.ofArea(squareMetres(0.01))).build());
        refused(
                "unknown run",
                "no run or return \"x\"",
                () -> bare().build().withRegisterOpened("x"));
        refused(
                "unknown duct",
                "no trunk, run or return \"x\"",
                () -> bare().build().withDuct("x", metal(6)));
        refused(
                "no added runs",
                "number of added runs",
                () ->
                        bare().build()
                                .withAddedRuns(
                                        0, inches(6), feet(10), DuctSystem.SUPPLY_PLENUM, "room"));
        refused(
                "enlarge a supply as return",
                "no return but a supply run",
                () -> bare().build().withReturnEnlarged("s", DuctShape.round(inches(10))));
        refused(
                "design flow of nothing",
                "design airflow of s",
                () -> bare().designFlow("s", cubicFeetPerMinute(0)));
        refused("negative density", "air density", () -> bare().build().solve(-1, 1.8e-5));
        refused("density NaN", "air density", () -> bare().build().solve(Double.NaN, 1.8e-5));
        refused("viscosity of honey", "dynamic viscosity", () -> bare().build().solve(1.2, 10));
        refused("no air", "air is null", () -> bare().build().solve(null));
        refused(
                "place under high pressure",
                "pressure of attic",
                () -> bare().placePressure(Place.ATTIC, pascals(5_000)));
        refused(
                "unknown node pressure",
                "no node \"x\"",
                () -> bare().build().solve().pressureAt("x"));
        refused("unknown trunk flow", "no trunk \"x\"", () -> bare().build().solve().trunk("x"));
        return cases.stream();
    }

    @TestFactory
    Stream<DynamicTest> answers() {
        DuctSystem s = bare().build();
        refused(
                "capacity of no airflow",
                "airflow is null",
                () -> Capacity.largest(null, Capacity.FULL));
        refused(
                "capacity nowhere",
                "at least one elevation",
                () -> Capacity.byElevation(s, celsius(20), percent(40), List.of()));
        refused(
                "comparison in space",
                "elevation",
                () -> ElevationComparison.of(s, celsius(20), percent(40), List.of(metres(20_000))));
        refused(
                "retrofit of nothing",
                "no change to consider",
                () -> Retrofit.of(s, cubicFeetPerMinute(900)).search());
        refused(
                "retrofit to no airflow",
                "target airflow",
                () -> Retrofit.of(s, cubicFeetPerMinute(0)));
        refused(
                "retrofit from no node",
                "no node of the supply side",
                () ->
                        Retrofit.of(s, cubicFeetPerMinute(900))
                                .addedRuns(2, List.of(inches(6)), feet(9), List.of("X"), "room"));
        refused(
                "retrofit of no trunk",
                "no trunk \"x\"",
                () ->
                        Retrofit.of(s, cubicFeetPerMinute(900))
                                .trunk("x", DuctShape.round(inches(9))));
        refused(
                "retrofit of no filter",
                "no filter to replace",
                () -> Retrofit.of(s, cubicFeetPerMinute(900)).filter(Filter.ofCoefficients(1, 1)));
        refused("sizing without design flow", "has no design flow", () -> Sizing.of(s));
        refused(
                "sizing at no friction",
                "friction rate",
                () ->
                        Sizing.of(bare().designFlow("s", cubicFeetPerMinute(300)).build())
                                .equalFriction(Units.quantity(0, Units.PASCAL_PER_METRE)));
        refused(
                "sizing a trunk to nowhere",
                "leads to no run",
                () ->
                        Sizing.of(
                                bare().designFlow("s", cubicFeetPerMinute(300))
                                        .trunk("dead", DuctSystem.SUPPLY_PLENUM, "A", metal(9))
                                        .build()));
        return cases.stream();
    }

    @TestFactory
    Stream<DynamicTest> kernels() {
        refused(
                "Colebrook below turbulence",
                "Reynolds number",
                () -> Friction.colebrookWhite(1_000, 0));
        refused(
                "Colebrook on gravel",
                "relative roughness",
                () -> Friction.colebrookWhite(1e5, 0.2));
        refused("Colebrook NaN", "Reynolds number", () -> Friction.colebrookWhite(Double.NaN, 0));
        refused("friction at standstill", "Reynolds number", () -> Friction.darcy(0, 0));
        refused("laminar at speed", "Reynolds number of laminar flow", () -> Friction.laminar(1e5));
        refused(
                "Haaland NaN roughness",
                "relative roughness",
                () -> Friction.haaland(1e5, Double.NaN));
        refused(
                "negative velocity",
                "velocity",
                () -> Friction.lossPerLength(-1, 0.2, 0, 1.2, 1.8e-5));
        refused(
                "flow at no friction",
                "friction rate",
                () -> FrictionChart.flow(0.2, 0, 0, 1.2, 1.8e-5));
        refused(
                "diameter for a river",
                "airflow",
                () -> FrictionChart.diameter(1e5, 1, 0, 1.2, 1.8e-5));
        refused(
                "no diameter rough enough",
                "no duct diameter",
                () -> FrictionChart.diameter(1e-5, 900, 0.01, 1.2, 1.8e-5));
        refused(
                "regain upstream of more",
                "downstream airflow",
                () -> FrictionChart.staticRegainDiameter(0.3, 0.3, 0.4, 5, 0.8, 9e-5, 1.2, 1.8e-5));
        refused(
                "velocity pressure of vacuum",
                "air density",
                () -> VelocityPressure.pressure(5, 0));
        refused(
                "negative velocity pressure",
                "velocity pressure",
                () -> VelocityPressure.velocity(-3, 1.2));
        refused("area of a negative circle", "duct diameter", () -> DuctGeometry.roundArea(-0.2));
        refused(
                "compression in per cent",
                "compression of flexible duct",
                () -> FlexibleDuct.pressureDropCorrection(15, 0.15));
        refused(
                "leakage exponent below a half",
                "leakage exponent",
                () -> Leakage.flow(0.1, 25, 10, 0.3));
        refused("leakage class negative", "leakage class", () -> Leakage.factor(-3, 10));
        refused(
                "conduction without flow",
                "mass flow",
                () -> DuctConduction.conductionFraction(10, 1, 0, 1006));
        refused(
                "effectiveness without a rise",
                "nothing to deliver",
                () -> DeliveryEffectiveness.sensible(0.9, 0.9, 0.9, 0.9, 0, 10, 10));
        refused(
                "effectiveness of more than all",
                "share of air kept",
                () -> DeliveryEffectiveness.sensible(1.1, 0.9, 0.9, 0.9, 10, 10, 10));
        refused(
                "more registers shut than there are",
                "closed registers",
                () -> RegisterShutting.openRegisterGain(5, 5, 0.5));
        refused("network without branch", "no branch", () -> Network.builder(1.2).build());
        refused(
                "network without known pressure",
                "no node of known pressure",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.quadratic("q", b.node("a"), b.node("b"), 10);
                    b.build();
                });
        refused(
                "island in the network",
                "no open way leads from [c, d]",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.quadratic("q", b.fixedNode("a", 0), b.node("b"), 10);
                    b.quadratic("r", b.node("c"), b.node("d"), 10);
                    b.build();
                });
        refused(
                "loop of zero resistance",
                "neither length nor loss coefficient",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.duct("d", b.fixedNode("a", 0), b.node("b"), 0.2, 0.03, 0, 1e-4, 0, 1);
                });
        refused(
                "quadratic of no resistance",
                "resistance of \"q\"",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.quadratic("q", b.fixedNode("a", 0), b.node("b"), 0);
                });
        refused(
                "branch to itself",
                "starts and ends at node",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    int a = b.node("a");
                    b.quadratic("q", a, a, 1);
                });
        refused(
                "rising blower curve",
                "blower coefficient a2",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.blower("f", b.fixedNode("a", 0), b.node("b"), 100, 0, 10);
                });
        refused(
                "two nodes of one name",
                "two nodes named \"a\"",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.node("a");
                    b.node("a");
                });
        refused(
                "cutting a node off",
                "no open way leads from [b]",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.quadratic("q", b.fixedNode("a", 0), b.node("b"), 10);
                    b.build().withShut(0);
                });
        refused(
                "workspace of another network",
                "belongs to another network",
                () -> {
                    Network.Builder b = Network.builder(1.2);
                    b.quadratic("q", b.fixedNode("a", 0), b.node("b"), 10);
                    Network.Builder c = Network.builder(1.2);
                    int a = c.fixedNode("a", 0);
                    c.quadratic("q", a, c.node("b"), 10);
                    c.quadratic("r", a, c.node("c"), 10);
                    b.build().solve(1.2, 1.8e-5, c.build().workspace());
                });
        return cases.stream();
    }
}
