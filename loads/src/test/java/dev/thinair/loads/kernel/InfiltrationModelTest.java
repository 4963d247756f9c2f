package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class InfiltrationModelTest {

    private static final InfiltrationModel.Shelter MODERATE = InfiltrationModel.Shelter.MODERATE;
    private static final InfiltrationModel.Shelter HEAVY = InfiltrationModel.Shelter.HEAVY;

    private static double pressureAt(double elevation) {
        return 101_325 * Math.pow(1 - 2.25577e-5 * elevation, 5.2559);
    }

    // Fundamentals 2021 (SI), ch. 16, Examples 2 and 3 (Sherman and Grimsrud's basic model):
    // LD-D001 to LD-D004. The coefficients come from the tables held here, not from the example.
    @Test
    void handbook_examples_of_the_basic_model() {
        double two =
                InfiltrationModel.basicFlow(
                        0.0500,
                        InfiltrationModel.basicStackCoefficient(2),
                        InfiltrationModel.basicWindCoefficient(2, MODERATE),
                        39,
                        6.7);
        assertThat(two).isCloseTo(0.0736, within(6e-5));
        assertThat(InfiltrationModel.airChanges(two, 340) * 3600).isCloseTo(0.78, within(0.006));
        double one =
                InfiltrationModel.basicFlow(
                        0.0690,
                        InfiltrationModel.basicStackCoefficient(1),
                        InfiltrationModel.basicWindCoefficient(1, HEAVY),
                        17,
                        2.7);
        assertThat(one).isCloseTo(0.0392, within(6e-5));
        assertThat(InfiltrationModel.airChanges(one, 255) * 3600).isCloseTo(0.55, within(0.006));
    }

    // LD-D013: the table's stack coefficient is that of the model with half the leaks in floor and
    // ceiling, a storey of 2.5 m, 294 K.
    @Test
    void stack_coefficient_follows_from_where_the_leaks_are() {
        double derived = InfiltrationModel.basicStackCoefficient(0.5, 0, 2.5, 294);
        assertThat(derived / 100).isCloseTo(0.000145, within(1e-6));
        assertThat(derived)
                .isGreaterThan(InfiltrationModel.basicStackCoefficient(0.5, 0.4, 2.5, 294));
        assertThat(InfiltrationModel.basicStackCoefficient(0.5, 0.4, 2.5, 294))
                .isEqualTo(InfiltrationModel.basicStackCoefficient(0.5, -0.4, 2.5, 294));
    }

    /** Limits of the stack in closed form, as multiples of g H / T. */
    @Test
    void stack_needs_a_way_in_and_a_way_out() {
        double unit = 9.80665 * 5 / 290;
        // all leaks on one side: no stack; half above, half below: fs = 1/2; walls alone: fs = 1/3
        assertThat(InfiltrationModel.basicStackCoefficient(1, 1, 5, 290)).isZero();
        assertThat(InfiltrationModel.basicStackCoefficient(1, 0, 5, 290))
                .isCloseTo(unit / 4, within(1e-15));
        assertThat(InfiltrationModel.basicStackCoefficient(0, 0, 5, 290))
                .isCloseTo(unit / 9, within(1e-15));
        // (1.25 / 3)^2 times 0.96^3
        assertThat(InfiltrationModel.basicStackCoefficient(0.5, 0.3, 5, 290))
                .isCloseTo(0.1536 * unit, within(1e-15));
    }

    // Ch. 16, Examples 5 and 6 (enhanced model): LD-D005 to LD-D012. The source rounds its parts;
    // 0.0006 m3/s is its print.
    @Test
    void handbook_examples_of_the_enhanced_model() {
        double stack =
                InfiltrationModel.enhancedStackFlow(
                        0.051, 0.67, InfiltrationModel.enhancedStackCoefficient(2, true), 39);
        assertThat(stack).isCloseTo(0.053, within(0.0006));
        double wind =
                InfiltrationModel.enhancedWindFlow(
                        0.051,
                        0.67,
                        InfiltrationModel.enhancedWindCoefficient(2, true, false),
                        InfiltrationModel.enhancedShelterFactor(2, true, HEAVY),
                        InfiltrationModel.enhancedWindMultiplier(2),
                        6.7);
        assertThat(wind).isCloseTo(0.027, within(0.0006));
        double total = InfiltrationModel.superpose(stack, wind);
        assertThat(total).isCloseTo(0.059, within(0.0011));
        assertThat(InfiltrationModel.airChanges(total, 340) * 3600).isCloseTo(0.63, within(0.011));

        double stack6 =
                InfiltrationModel.enhancedStackFlow(
                        0.078, 0.6, InfiltrationModel.enhancedStackCoefficient(1, false), 16);
        assertThat(stack6).isCloseTo(0.022, within(0.0006));
        double wind6 =
                InfiltrationModel.enhancedWindFlow(
                        0.078,
                        0.6,
                        InfiltrationModel.enhancedWindCoefficient(1, false, true),
                        InfiltrationModel.enhancedShelterFactor(1, false, HEAVY),
                        InfiltrationModel.enhancedWindMultiplier(1),
                        2.7);
        assertThat(wind6).isCloseTo(0.006, within(0.0006));
    }

    // Ch. 16, Examples 5 to 7 and Eq. (44); own recomputation of a blower door: LD-D014 to D020.
    @Test
    void leakage_area_from_a_test_and_back() {
        double rho = InfiltrationModel.REFERENCE_DENSITY;
        assertThat(InfiltrationModel.leakageArea(0.051, 0.67, 4, 1, rho) * 1e4)
                .isCloseTo(500, within(6.0));
        assertThat(InfiltrationModel.leakageArea(0.078, 0.6, 4, 1, rho) * 1e4)
                .isCloseTo(690, within(6.0));
        double c = InfiltrationModel.leakageCoefficient(0.5, 50, 0.65);
        assertThat(InfiltrationModel.crackFlow(c, 0.65, 50)).isCloseTo(0.5, within(1e-12));
        double area = InfiltrationModel.leakageArea(c, 0.65, 4, 1, rho);
        assertThat(area * 1e4).isCloseTo(375.634, within(0.02));
        assertThat(InfiltrationModel.coefficientFromArea(area, 0.65, 4, 1, rho))
                .isCloseTo(c, within(1e-14));
        assertThat(InfiltrationModel.airChanges(0.5, 340) * 3600).isCloseTo(5.29412, within(5e-5));
        double ratio = InfiltrationModel.areaRatio(0.65, 4, 1, 10, 0.611);
        assertThat(ratio).isCloseTo(1.877802, within(1e-5));
        assertThat(InfiltrationModel.leakageArea(c, 0.65, 10, 0.611, rho) / area)
                .isCloseTo(ratio, within(1e-12));
        assertThat(InfiltrationModel.coefficientFromArea(area * ratio, 0.65, 10, 0.611, rho))
                .isCloseTo(c, within(1e-14));
    }

    // LD-D021.
    @Test
    void normalized_leakage() {
        assertThat(InfiltrationModel.normalizedLeakage(0.05, 185.8, 5))
                .isCloseTo(0.355088, within(1e-5));
    }

    // LD-D035 to LD-D038, 3,030 m by pressure ratio.
    @Test
    void thin_air_lets_less_through_and_carries_less() {
        double ratio = pressureAt(3_030) / 101_325;
        assertThat(InfiltrationModel.flowAtDensity(0.5, ratio)).isCloseTo(1, within(1e-12));
        assertThat(InfiltrationModel.loadAtDensity(0.5, ratio)).isCloseTo(0.689281, within(1e-5));
        assertThat(InfiltrationModel.flowAtDensity(0.65, ratio)).isCloseTo(0.894373, within(1e-5));
        assertThat(InfiltrationModel.loadAtDensity(0.65, ratio)).isCloseTo(0.616474, within(1e-5));
        assertThat(InfiltrationModel.crackAtDensity(0.04, 0.65, ratio))
                .isCloseTo(0.04 * Math.pow(ratio, -0.35), within(1e-12));
        assertThat(InfiltrationModel.crackAtDensity(0.04, 1, ratio)).isEqualTo(0.04);
    }

    @Test
    void flow_of_a_house_joins_the_parts() {
        double c = 0.051;
        double enhanced =
                InfiltrationModel.flow(true, c, 0.67, 2, HEAVY, true, false, 39, 6.7, 101_325);
        assertThat(enhanced).isCloseTo(0.0597, within(0.0002));
        double high =
                InfiltrationModel.flow(
                        true, c, 0.67, 2, HEAVY, true, false, 39, 6.7, pressureAt(3_030));
        assertThat(high / enhanced).isCloseTo(Math.pow(0.689281, 0.34), within(1e-5));
        double basic =
                InfiltrationModel.flow(false, c, 0.67, 2, MODERATE, false, false, 39, 6.7, 101_325);
        double area = InfiltrationModel.leakageArea(c, 0.67, 4, 1, 1.2041);
        assertThat(basic)
                .isCloseTo(
                        InfiltrationModel.basicFlow(area, 0.029, 0.0231, 39, 6.7), within(1e-12));
        double basicHigh =
                InfiltrationModel.flow(
                        false, c, 0.67, 2, MODERATE, false, false, 39, 6.7, pressureAt(3_030));
        assertThat(basicHigh / basic).isCloseTo(Math.pow(0.689281, 0.17), within(1e-5));
    }

    @Test
    void tables_run_the_way_they_must() {
        for (int stories = 1; stories <= 3; stories++) {
            for (int i = 1; i < 5; i++) {
                InfiltrationModel.Shelter open = InfiltrationModel.Shelter.values()[i - 1];
                InfiltrationModel.Shelter closed = InfiltrationModel.Shelter.values()[i];
                assertThat(InfiltrationModel.basicWindCoefficient(stories, closed))
                        .isLessThan(InfiltrationModel.basicWindCoefficient(stories, open));
                for (boolean flue : new boolean[] {true, false}) {
                    assertThat(InfiltrationModel.enhancedShelterFactor(stories, flue, closed))
                            .isLessThan(
                                    InfiltrationModel.enhancedShelterFactor(stories, flue, open));
                }
            }
        }
        for (int stories = 2; stories <= 3; stories++) {
            assertThat(InfiltrationModel.basicStackCoefficient(stories))
                    .isCloseTo(0.0145 * stories, within(1e-12));
            assertThat(InfiltrationModel.enhancedStackCoefficient(stories, false))
                    .isGreaterThan(InfiltrationModel.enhancedStackCoefficient(stories - 1, false));
            assertThat(InfiltrationModel.enhancedWindMultiplier(stories))
                    .isGreaterThan(InfiltrationModel.enhancedWindMultiplier(stories - 1));
        }
        assertThat(InfiltrationModel.enhancedWindCoefficient(1, false, false)).isEqualTo(0.156);
        assertThat(InfiltrationModel.enhancedWindCoefficient(3, true, true)).isEqualTo(0.154);
        assertThat(InfiltrationModel.enhancedWindCoefficient(1, true, false)).isEqualTo(0.142);
    }
}
