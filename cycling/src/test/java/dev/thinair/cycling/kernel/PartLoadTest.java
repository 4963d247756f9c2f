package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartLoadTest {

    @ParameterizedTest
    @CsvSource({
        "0.25, 0.5, 0.875",
        "0.20, 0.1, 0.82",
        "0.25, 0, 0.75",
        "0.25, 1, 1",
        "0.25, 1.2, 1"
    })
    void part_load_factor_of_the_standard(double cd, double clf, double expected) {
        // Reference cases CYC-PLF; the last one clamps a load above capacity.
        assertThat(PartLoad.partLoadFactor(cd, clf)).isCloseTo(expected, within(1e-15));
    }

    @Test
    void run_time_fraction_is_load_factor_over_part_load_factor() {
        // Reference case CYC-RTF-01.
        assertThat(PartLoad.runTimeFraction(0.25, 0.5)).isCloseTo(4.0 / 7, within(1e-15));
        assertThat(PartLoad.runTimeFraction(1, 0)).isZero();
        assertThat(PartLoad.runTimeFraction(0.25, 3)).isEqualTo(1);
    }

    @Test
    void degradation_coefficient_from_the_cyclic_test() {
        // Reference cases CYC-CDT-01 and -03: 3000 Btu of 36000 Btu/h over half an hour.
        double clf = PartLoad.cyclicLoadFactor(3_000, 10, 1_800);
        assertThat(clf).isCloseTo(1.0 / 6, within(1e-15));
        assertThat(PartLoad.degradationCoefficient(11, 12.5, clf)).isCloseTo(0.144, within(1e-14));
        assertThat(PartLoad.degradationCoefficient(12.6, 12.5, clf)).isZero();
    }

    @Test
    void the_parabola_and_its_times_belong_together() {
        for (double x = 0.05; x < 1; x += 0.05) {
            double n = PartLoad.cycleRate(2.5, x);
            double on = PartLoad.onTime(2.5, x);
            double off = PartLoad.offTime(2.5, x);
            assertThat(n * (on + off)).isCloseTo(3600, within(1e-9));
            assertThat(on / (on + off)).isCloseTo(x, within(1e-14));
        }
        // Reference case CYC-TON-04: shortest time on.
        assertThat(PartLoad.onTime(3, 0)).isEqualTo(300);
    }

    @ParameterizedTest
    @CsvSource({"60, 300, 0.8013475894", "120, 300, 0.63283399945", "60, 1, 0.00828722929705"})
    void start_up_ratio(double tau, double on, double expected) {
        // Reference cases CYC-STU; ten printed digits.
        assertThat(PartLoad.startUpCapacityRatio(tau, on)).isCloseTo(expected, within(5e-11));
    }

    @Test
    void start_up_ratio_is_the_mean_of_the_exponential() {
        double tau = 77;
        double on = 410;
        int n = 200_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += 1 - Math.exp(-(i + 0.5) * on / n / tau);
        }
        // Midpoint rule: error (h^2/24) (f'(on) - f'(0))/on, below 1e-11 here.
        assertThat(PartLoad.startUpCapacityRatio(tau, on)).isCloseTo(sum / n, within(1e-10));
    }

    @Test
    void start_up_ratio_has_no_jump_where_the_series_takes_over() {
        double at = 1 / 50.0;
        double a = PartLoad.startUpCapacityRatio(1, at * (1 + 1e-9));
        double b = PartLoad.startUpCapacityRatio(1, at * (1 - 1e-9));
        // The closed form there loses z = 50 units of its last place, 1e-16 each, and more on
        // taking the difference; a missing term of the series would show as 1e-12.
        assertThat(a - b).isCloseTo(at * 1e-9, within(5e-13));
        assertThat(PartLoad.startUpCapacityRatio(1e6, 1)).isCloseTo(0.5e-6, within(1e-12));
        assertThat(PartLoad.startUpCapacityRatio(0, 1)).isEqualTo(1);
    }

    @Test
    void time_constant_seen_in_the_cyclic_test() {
        // Reference case CYC-CDTAU-02.
        assertThat(PartLoad.degradationFromTimeConstant(60, 360, 1800))
                .isCloseTo(0.19952403239, within(5e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "60, 3, 0.5, 0.909903167431, 0.549509022385",
        "60, 3, 0.1, 0.824841180383, 0.121235460084",
        "60, 3, 0.99, 0.998331012066, 0.99165506033",
        "600, 3, 0.05, 0.255334719193, 0.195821391458"
    })
    void implicit_part_load_factor(double tau, double n, double clf, double plf, double x) {
        // Reference cases CYC-PLFI and CYC-RTFI, twelve printed digits.
        assertThat(PartLoad.implicitPartLoadFactor(tau, n, clf)).isCloseTo(plf, within(1e-12));
        assertThat(PartLoad.implicitRunTimeFraction(tau, n, clf)).isCloseTo(x, within(1e-12));
    }

    @Test
    void implicit_ends() {
        assertThat(PartLoad.implicitRunTimeFraction(60, 3, 0)).isZero();
        assertThat(PartLoad.implicitRunTimeFraction(60, 3, 1)).isEqualTo(1);
        assertThat(PartLoad.implicitRunTimeFraction(60, 3, 5)).isEqualTo(1);
        assertThat(PartLoad.implicitPartLoadFactor(60, 3, 1)).isEqualTo(1);
        assertThat(PartLoad.implicitRunTimeFraction(0, 3, 0.4)).isEqualTo(0.4);
        // Zero load: the factor of the shortest on-period, not 0 (CYC-PLFI-03).
        assertThat(PartLoad.implicitPartLoadFactor(60, 3, 0))
                .isCloseTo(PartLoad.startUpCapacityRatio(60, 300), within(1e-15));
    }

    @Test
    void a_case_that_throws_plain_iteration_out_of_its_domain_is_solved() {
        // Implicit part-load equation of Henderson, Parker and Huang 2000 (FSEC-PF-409-00) at k = 2
        // and CLF = 0.3: tau = 600 s at 3 cycles an hour. Plain iteration passes X = 1 here.
        double x = PartLoad.implicitRunTimeFraction(600, 3, 0.3);
        double on = PartLoad.onTime(3, x);
        assertThat(x * PartLoad.startUpCapacityRatio(600, on)).isCloseTo(0.3, within(1e-14));
    }

    @Test
    void a_simulated_cycle_gives_the_same_part_load_factor() {
        // Integrates the capacity of one cycle on the parabola; no formula of PartLoad but the
        // times is used.
        double tau = 80;
        double x = PartLoad.implicitRunTimeFraction(tau, 2.5, 0.35);
        double on = 3600 / (4 * 2.5 * (1 - x));
        double off = 3600 / (4 * 2.5 * x);
        double heat = 0;
        int n = 100_000;
        for (int i = 0; i < n; i++) {
            heat += (1 - Math.exp(-(i + 0.5) * on / n / tau)) * on / n;
        }
        assertThat(heat / (on + off)).isCloseTo(0.35, within(1e-9));
    }

    @Test
    void oversizing_formulas() {
        // Reference cases CYC-OVX-02 and CYC-OVE-02.
        assertThat(PartLoad.oversizedRunTimeFraction(1.5, 0.5, 60, 3))
                .isCloseTo(0.380460665122, within(1e-12));
        assertThat(PartLoad.oversizedEnergyRatio(1.5, 0.5, 60, 3))
                .isCloseTo(1.03854709283, within(5e-12));
        assertThat(PartLoad.oversizedEnergyRatio(1, 0.5, 60, 3)).isEqualTo(1);
        assertThat(PartLoad.sizeReduction(0.5)).isCloseTo(1.0 / 3, within(1e-15));
    }

    @Test
    void off_cycle_power_remains_at_zero_load() {
        assertThat(PartLoad.averagePowerFraction(0, 0.01)).isEqualTo(0.01);
        assertThat(PartLoad.averagePowerFraction(1, 0.01)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 0.5, degradation coefficient is -0.1",
        "1.1, 0.5, degradation coefficient is 1.1",
        "0.2, -1, load factor is -1.0",
        "0.2, NaN, load factor is NaN"
    })
    void bad_part_load_input(double cd, double clf, String message) {
        assertThatThrownBy(() -> PartLoad.partLoadFactor(cd, clf))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void bad_cycle_input() {
        assertThatThrownBy(() -> PartLoad.onTime(3, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("run-time fraction is 1.0");
        assertThatThrownBy(() -> PartLoad.offTime(3, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("run-time fraction is 0.0");
        assertThatThrownBy(() -> PartLoad.cycleRate(0, 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("maximum cycle rate is 0.0 1/h");
        assertThatThrownBy(() -> PartLoad.implicitRunTimeFraction(-1, 3, 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start-up time constant is -1.0 s");
        assertThatThrownBy(() -> PartLoad.implicitRunTimeFraction(60, 61, 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0.0, 60.0] 1/h");
        assertThatThrownBy(() -> PartLoad.startUpCapacityRatio(60, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("on-time is 0.0 s");
        assertThatThrownBy(() -> PartLoad.degradationCoefficient(11, 12, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cyclic load factor is 1.0");
        assertThatThrownBy(() -> PartLoad.degradationFromTimeConstant(60, 360, 300))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cycle time is 300.0 s");
        assertThatThrownBy(() -> PartLoad.sizeReduction(-0.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("oversize is -0.1");
        assertThatThrownBy(() -> PartLoad.averagePowerFraction(0.5, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("off-cycle power fraction is 2.0");
        assertThatThrownBy(() -> PartLoad.oversizedEnergyRatio(0, 0.5, 60, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("capacity over design load is 0.0");
        assertThatThrownBy(() -> PartLoad.cyclicLoadFactor(1, 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cycle time is NaN s");
    }
}
