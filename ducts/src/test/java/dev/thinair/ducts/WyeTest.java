package dev.thinair.ducts;

import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.kernel.Junctions;
import dev.thinair.units.Si;
import org.junit.jupiter.api.Test;

/** Wyes of a house's trunks, with coefficients that follow the flows. */
class WyeTest {

    private static Duct round(double diameter, double length, double c) {
        return Duct.of(DuctShape.round(inches(diameter)), feet(length), DuctMaterial.GALVANIZED)
                .withLossCoefficient(c);
    }

    /** Two returns of one trunk size joined at a wye; a supply trunk with one wye. */
    private static DuctSystem.Builder house() {
        return DuctSystem.builder()
                .blower(Houses.blower())
                .trunk("return trunk", "wye", DuctSystem.RETURN_PLENUM, round(18, 6, 0.2))
                .returnRun(
                        "hall return",
                        "hall",
                        "wye",
                        round(18, 20, 1),
                        Register.of(inches(30), inches(20)))
                .returnRun(
                        "den return",
                        "den",
                        "wye",
                        round(12, 12, 1),
                        Register.of(inches(16), inches(14)))
                .trunk("trunk 1", DuctSystem.SUPPLY_PLENUM, "A", round(18, 12, 0.2))
                .trunk("trunk 2", "A", "B", round(18, 12, 0.2))
                .supplyRun(
                        "den run",
                        "A",
                        "den",
                        round(10, 12, 1),
                        Register.of(inches(12), inches(10)))
                .supplyRun(
                        "hall run",
                        "B",
                        "hall",
                        round(14, 12, 1),
                        Register.of(inches(20), inches(14)))
                .supplyRun(
                        "bed run",
                        "B",
                        "bed",
                        round(10, 12, 1),
                        Register.of(inches(12), inches(10)));
    }

    private static double pascals(Airflow a, String node) {
        return Si.pascals(a.pressureAt(node), "pressure");
    }

    /** The same house with the coefficients found put in by hand has the same flows. */
    @Test
    void a_wye_is_the_fixed_coefficient_of_the_flow_ratio_that_comes_out() {
        DuctSystem s =
                house().returnWye("join", "den return", "hall return", "return trunk", degrees(45))
                        .supplyWye("split", "den run", "trunk 2", "trunk 1", degrees(90))
                        .build();
        Airflow a = s.solve();
        double total = a.cubicMetresPerSecond();
        double back = a.run("den return").cubicMetresPerSecond() / total;
        double out = a.run("den run").cubicMetresPerSecond() / total;
        double wide = 12.0 * 12 / (18 * 18);
        double narrow = 10.0 * 10 / (18 * 18);
        double angle = Math.PI / 4;
        double cBranch = Junctions.convergingBranch(back, wide, angle) * Math.pow(wide / back, 2);
        double cStraight = Junctions.convergingStraight(back, wide, angle) / Math.pow(1 - back, 2);
        double oBranch =
                Junctions.divergingBranch(out, narrow, Math.PI / 2) * Math.pow(narrow / out, 2);
        double oStraight = Junctions.divergingStraight(out, narrow) / Math.pow(1 - out, 2);
        DuctSystem fixed =
                house().build()
                        .withDuct("den return", round(12, 12, 1 + cBranch))
                        .withDuct("hall return", round(18, 20, 1 + cStraight))
                        .withDuct("den run", round(10, 12, 1 + oBranch))
                        .withDuct("trunk 2", round(18, 12, 0.2 + oStraight));
        Airflow b = fixed.solve();
        assertThat(b.cubicMetresPerSecond()).isCloseTo(total, within(1e-9 * total));
        for (String run : s.runNames()) {
            double q = a.run(run).cubicMetresPerSecond();
            assertThat(b.run(run).cubicMetresPerSecond()).isCloseTo(q, within(1e-9 * q));
        }
        assertThat(pascals(b, "wye")).isCloseTo(pascals(a, "wye"), within(1e-7));
        assertThat(a.imbalance()).isLessThan(1e-13);
        // and the coefficients matter: without them the den would get more
        Airflow none = house().build().solve();
        assertThat(none.run("den run").cubicMetresPerSecond())
                .isGreaterThan(1.02 * a.run("den run").cubicMetresPerSecond());
    }

    @Test
    void a_branch_shut_but_for_its_leak_hardly_troubles_the_straight_passage() {
        DuctSystem s =
                house().supplyWye("split", "den run", "trunk 2", "trunk 1", degrees(90)).build();
        Airflow a = s.withRegisterShut("den run").solve();
        Airflow b = house().build().withRegisterShut("den run").solve();
        assertThat(a.run("den run").cubicMetresPerSecond()).isLessThan(0.03);
        assertThat(a.cubicMetresPerSecond())
                .isCloseTo(b.cubicMetresPerSecond(), within(2e-3 * b.cubicMetresPerSecond()));
    }

    @Test
    void parts_that_make_no_wye_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                house().returnWye(
                                                "j",
                                                "den run",
                                                "hall return",
                                                "return trunk",
                                                degrees(45))
                                        .build())
                .withMessageContaining("no trunk or run \"den run\" on the return side");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                house().supplyWye("j", "den run", "trunk 9", "trunk 1", degrees(45))
                                        .build())
                .withMessageContaining("trunk 9");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                house().supplyWye("j", "bed run", "trunk 2", "trunk 1", degrees(45))
                                        .build())
                .withMessageContaining("do not meet");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> house().supplyWye("j", "bed run", "trunk 2", "trunk 1", degrees(120)))
                .withMessageContaining("angle of wye");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                house().supplyWye(
                                                "j", "bed run", "hall run", "trunk 2", degrees(45))
                                        .build())
                .withMessageContaining("keep their size");
        DuctSystem wye =
                house().supplyWye("j", "den run", "trunk 2", "trunk 1", degrees(45)).build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sizing.of(wye))
                .withMessageContaining("wye");
    }
}
