package dev.thinair.ducts;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.DuctElevationTable.Basis;
import dev.thinair.ducts.kernel.DuctDerating;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much less a six-inch duct carries, on each basis. */
class DuctElevationTableTest {

    private static final double Q = 110 * 4.719474432e-4;
    private static final double D = 6 * 0.0254;
    private static final double E = 0.0003 * 0.3048;

    // Reference cases DUCT-ALT-001 to 035: own scripts, tolerance 2e-6.
    @ParameterizedTest
    @CsvSource({
        "0.832048, 1.0854294, 0.99038433",
        "0.771629, 1.1224342, 0.98626515",
        "0.742782, 1.1415931, 0.98414407"
    })
    void the_kernel_agrees_with_the_independent_scripts(
            double ratio, double samePressure, double sameBlower) {
        assertThat(DuctDerating.samePressureDrop(Q, D, E, ratio, 1.82e-5))
                .isCloseTo(samePressure, within(2e-6));
        assertThat(DuctDerating.sameBlower(Q, D, E, ratio, 1.82e-5))
                .isCloseTo(sameBlower, within(2e-6));
    }

    @Test
    void nothing_changes_in_standard_air_and_dense_air_goes_the_other_way() {
        assertThat(DuctDerating.samePressureDrop(Q, D, E, 1, 1.82e-5)).isCloseTo(1, within(1e-13));
        assertThat(DuctDerating.sameBlower(Q, D, E, 1, 1.82e-5)).isCloseTo(1, within(1e-13));
        assertThat(DuctDerating.samePressureDrop(Q, D, E, 1.2, 1.82e-5)).isLessThan(1);
        assertThat(DuctDerating.sameBlower(Q, D, E, 1.2, 1.82e-5)).isGreaterThan(1);
        for (double bad : new double[] {0.29, 1.51, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> DuctDerating.samePressureDrop(Q, D, E, bad, 1.82e-5))
                    .withMessageContaining("density ratio");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> DuctDerating.sameBlower(Q, D, E, bad, 1.82e-5))
                    .withMessageContaining("density ratio");
        }
    }

    /** The table of the six-inch duct at 7,000 ft, to the tenth of a percent it is told in. */
    @ParameterizedTest
    @CsvSource({
        "SAME_PRESSURE_DROP, 12.2, -13.4",
        "SAME_BLOWER, -1.4, -23.9",
        "SAME_VELOCITY, 0.0, -22.8"
    })
    void the_six_inch_table_at_seven_thousand_feet(Basis basis, double volume, double mass) {
        DuctElevationTable table = DuctElevationTable.ofSixInchDuct(List.of(feet(7_000)));
        DuctElevationTable.Row row =
                table.rows().stream().filter(r -> r.basis() == basis).findFirst().orElseThrow();
        assertThat(100 * (row.volumeRatio() - 1)).isCloseTo(volume, within(0.0501));
        assertThat(100 * (row.massRatio() - 1)).isCloseTo(mass, within(0.0501));
        assertThat(row.densityRatio()).isCloseTo(0.7716, within(5e-4));
        assertThat(table.toString()).contains(basis.words()).contains("110 cfm");
    }

    @Test
    void twenty_to_thirty_percent_is_a_statement_on_mass_with_the_same_blower_or_velocity() {
        DuctElevationTable table =
                DuctElevationTable.ofSixInchDuct(List.of(metres(0), metres(2_200)));
        assertThat(table.rows()).hasSize(6);
        assertThat(table.verdict())
                .contains("mass and heat, not of the volume, at the same blower")
                .contains("mass and heat, not of the volume, at the same velocity")
                .doesNotContain("pressure drop")
                .doesNotContain("At 0 m");
        assertThat(DuctElevationTable.ofSixInchDuct(List.of(metres(300))).verdict())
                .contains("none of these elevations");
        // 20 % is passed at 6,046 ft at the same velocity
        assertThat(lossAtSameVelocity(6_040)).isLessThan(0.2);
        assertThat(lossAtSameVelocity(6_055)).isGreaterThan(0.2);
        assertThat(lossAtSameVelocity(9_530)).isLessThan(0.3);
        assertThat(lossAtSameVelocity(9_560)).isGreaterThan(0.3);
    }

    private static double lossAtSameVelocity(double ft) {
        return 1
                - DuctElevationTable.ofSixInchDuct(List.of(feet(ft))).rows().stream()
                        .filter(r -> r.basis() == Basis.SAME_VELOCITY)
                        .findFirst()
                        .orElseThrow()
                        .massRatio();
    }

    @Test
    void a_whole_house_says_the_same() {
        ElevationComparison house =
                ElevationComparison.of(
                        Houses.house().build(),
                        celsius(20),
                        percent(40),
                        List.of(metres(0), metres(1_500), metres(2_200), metres(2_500)));
        assertThat(house.rows()).hasSize(4);
        assertThat(house.verdict()).contains("is not true of the volume and true of the mass");
    }

    @Test
    void what_cannot_be_told_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DuctElevationTable.ofSixInchDuct(List.of()))
                .withMessageContaining("at least one elevation");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DuctElevationTable.ofSixInchDuct(List.of(metres(9_000))))
                .withMessageContaining("elevation is 9000.0 m");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                DuctElevationTable.of(
                                        inches(6),
                                        null,
                                        cubicFeetPerMinute(110),
                                        List.of(metres(0))))
                .withMessageContaining("material");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                DuctElevationTable.of(
                                        inches(6),
                                        DuctMaterial.GALVANIZED,
                                        cubicFeetPerMinute(0),
                                        List.of(metres(0))))
                .withMessageContaining("airflow");
    }
}
