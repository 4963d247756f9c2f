package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/** What must hold of friction at any Reynolds number and roughness. */
class FrictionPropertyTest {

    @Property(tries = 1000)
    void colebrook_white_satisfies_its_own_equation(
            @ForAll @DoubleRange(min = 3.37, max = 8) @Scale(8) double lgRe,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(8) double relative) {
        double re = Math.pow(10, lgRe);
        double x = 1 / Math.sqrt(Friction.colebrookWhite(re, relative));
        // residual over its slope (at least 1): four roundings of numbers up to 13
        assertThat(x + 2 * Math.log10(relative / 3.7 + 2.51 * x / re)).isCloseTo(0, within(1e-14));
    }

    @Property(tries = 300)
    void colebrook_white_agrees_with_a_bracketing_solver(
            @ForAll @DoubleRange(min = 3.37, max = 8) @Scale(8) double lgRe,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(8) double relative) {
        double re = Math.pow(10, lgRe);
        double x =
                new BrentSolver(1e-15, 1e-15)
                        .solve(
                                100,
                                y -> y + 2 * Math.log10(relative / 3.7 + 2.51 * y / re),
                                1,
                                100);
        assertThat(Friction.colebrookWhite(re, relative))
                .isCloseTo(1 / (x * x), within(1e-13 / (x * x)));
    }

    @Property(tries = 500)
    void friction_has_no_jump_and_the_loss_always_rises(
            @ForAll @DoubleRange(min = 2, max = 5) @Scale(8) double lgRe,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(8) double relative) {
        double re = Math.pow(10, lgRe);
        double step = re * 1e-6;
        double here = Friction.darcy(re, relative);
        double there = Friction.darcy(re + step, relative);
        assertThat(there).isCloseTo(here, within(1e-5 * here));
        assertThat(there * (re + step) * (re + step)).isGreaterThan(here * re * re);
    }

    @Test
    void the_bridge_meets_both_regimes_in_value_and_slope() {
        for (double relative : new double[] {0, 0.001, 0.05}) {
            for (double re : new double[] {Friction.LAMINAR_LIMIT, Friction.TURBULENT_LIMIT}) {
                double below = Friction.darcy(re * (1 - 1e-7), relative);
                double at = Friction.darcy(re, relative);
                double above = Friction.darcy(re * (1 + 1e-7), relative);
                assertThat(above).isCloseTo(below, within(1e-6 * at));
                double left = (at - below) / (1e-7 * at);
                double right = (above - at) / (1e-7 * at);
                assertThat(right).isCloseTo(left, within(1e-4));
            }
        }
    }

    @Property(tries = 500)
    void the_slope_used_by_newton_is_the_derivative(
            @ForAll @DoubleRange(min = 2, max = 7) @Scale(8) double lgRe,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(8) double relative) {
        double re = Math.pow(10, lgRe);
        double f = Friction.factor(re, relative);
        double h = 1e-5;
        if (Math.abs(re / 2300 - 1) < 1e-4 || Math.abs(re / 4000 - 1) < 1e-4) {
            return;
        }
        double slope =
                Math.log(
                                Friction.factor(re * Math.exp(h), relative)
                                        / Friction.factor(re * Math.exp(-h), relative))
                        / (2 * h);
        assertThat(Friction.slope(re, relative, f)).isCloseTo(slope, within(1e-7));
    }

    @Property(tries = 500)
    void the_named_approximations_stay_as_near_as_they_claim(
            @ForAll @DoubleRange(min = 3.61, max = 8) @Scale(8) double lgRe,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(8) double relative) {
        double re = Math.pow(10, lgRe);
        double f = Friction.colebrookWhite(re, relative);
        assertThat(Friction.haaland(re, relative)).isCloseTo(f, within(0.015 * f));
        assertThat(Friction.swameeJain(re, relative)).isCloseTo(f, within(0.034 * f));
        assertThat(Friction.churchill(re, relative)).isCloseTo(f, within(0.032 * f));
        if (relative <= 0.01) {
            assertThat(Friction.altshulTsal(re, relative)).isCloseTo(f, within(0.092 * f));
        }
        assertThat(Friction.serghides(re, relative)).isCloseTo(f, within(0.000032 * f));
    }

    @Property(tries = 300)
    void flow_and_diameter_are_inverses_of_the_loss(
            @ForAll @DoubleRange(min = 0.08, max = 1) @Scale(6) double diameter,
            @ForAll @DoubleRange(min = 0.01, max = 5) @Scale(6) double rate,
            @ForAll @DoubleRange(min = 0, max = 0.003) @Scale(6) double roughness,
            @ForAll @DoubleRange(min = 0.7, max = 1.3) @Scale(6) double density) {
        double q = FrictionChart.flow(diameter, rate, roughness, density, 1.82e-5);
        double v = q / DuctGeometry.roundArea(diameter);
        assertThat(Friction.lossPerLength(v, diameter, roughness, density, 1.82e-5))
                .isCloseTo(rate, within(1e-12 * rate));
        assertThat(FrictionChart.diameter(q, rate, roughness, density, 1.82e-5))
                .isCloseTo(diameter, within(1e-12 * diameter));
    }

    @Test
    void a_creeping_flow_is_found_below_the_turbulent_range() {
        double q = FrictionChart.flow(0.05, 0.001, 9e-5, 1.2, 1.82e-5);
        double v = q / DuctGeometry.roundArea(0.05);
        assertThat(Friction.reynolds(v, 0.05, 1.2, 1.82e-5)).isLessThan(2_300);
        assertThat(v).isCloseTo(0.001 * 0.05 * 0.05 / (32 * 1.82e-5), within(1e-12));
    }
}
