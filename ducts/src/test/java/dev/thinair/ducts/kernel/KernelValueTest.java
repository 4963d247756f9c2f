package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas worked by hand or by other programs, branch by branch, edges included. */
class KernelValueTest {

    private static final BlowerCurve UNEVEN =
            BlowerCurve.through(
                    new double[] {10, 40, 130, 210}, new double[] {0.8, 0.74, 0.5, 0.1});

    // scipy 1.10.1, PchipInterpolator on the same four unevenly spaced points.
    @ParameterizedTest
    @CsvSource({
        "10, 0.8, -0.0018333333333333355",
        "17, 0.786976955211025, -0.001891124031007754",
        "40, 0.74, -0.002232558139534885",
        "55, 0.7062562882001232, -0.0022776691885950336",
        "100, 0.5939937328528816, -0.002811369509043927",
        "130, 0.5, -0.003499142367066895",
        "170, 0.32598896848619374, -0.005100704604311708",
        "205, 0.1302650720317072, -0.006006416087554233",
        "210, 0.1, -0.006098039215686274"
    })
    void a_blower_curve_is_the_monotone_hermite_of_its_table(double p, double q, double slope) {
        assertThat(UNEVEN.flowAt(p)).isCloseTo(q, within(1e-14));
        assertThat(UNEVEN.pressureAt(q)).isCloseTo(p, within(1e-10));
        assertThat(UNEVEN.riseSlope(q, p)).isCloseTo(1 / slope, within(1e-9 / -slope));
    }

    @Test
    void beyond_its_ends_a_blower_curve_goes_straight_on() {
        assertThat(UNEVEN.pressureBeyond(0.9))
                .isCloseTo(10 - 0.1 / 0.0018333333333333355, within(1e-10));
        assertThat(UNEVEN.riseSlope(0.9, 0)).isCloseTo(-1 / 0.0018333333333333355, within(1e-9));
        assertThat(UNEVEN.pressureBeyond(0.05))
                .isCloseTo(210 + 0.05 / 0.006098039215686274, within(1e-10));
        assertThat(UNEVEN.riseSlope(0.05, 0)).isCloseTo(-1 / 0.006098039215686274, within(1e-9));
        BlowerCurve two = BlowerCurve.through(new double[] {10, 60}, new double[] {0.5, 0.25});
        assertThat(two.flowAt(30)).isCloseTo(0.4, within(1e-15));
        assertThat(two.pressureAt(0.3)).isCloseTo(50, within(1e-12));
    }

    @Test
    void an_end_slope_keeps_its_sign_and_stays_within_three_secants() {
        // first piece nearly flat beside a steep one: the three-point slope would rise
        BlowerCurve flat =
                BlowerCurve.through(new double[] {0, 100, 200}, new double[] {1, 0.99, 0.5});
        assertThat(flat.riseSlope(1.0, 0)).isCloseTo(-1 / (0.01 * 1e-4), within(1e-3));
        // and a steep one beside a flat one: at most three secants
        BlowerCurve steep =
                BlowerCurve.through(new double[] {0, 10, 1000}, new double[] {1, 0.5, 0.49});
        double three = ((20 + 990) * 0.05 - 10 * 0.01 / 990) / 1000;
        assertThat(steep.riseSlope(1.0, 0)).isCloseTo(-1 / three, within(1e-6));
    }

    @Test
    void wyes_by_flow_ratio_in_each_of_their_ranges() {
        double half = Math.toRadians(60); // cos = 0.5
        // A up to 0.35: G = 1.1 - 0.7 q up to 0.4, 0.85 beyond
        assertThat(Junctions.divergingBranch(0.3, 0.3, half))
                .isCloseTo((1.1 - 0.21) * (1 + 1 - 1), within(1e-12));
        assertThat(Junctions.divergingBranch(0.6, 0.3, half))
                .isCloseTo(0.85 * (1 + 4 - 2), within(1e-12));
        // above: 1 - 0.6 q up to 0.6, 0.6 beyond
        assertThat(Junctions.divergingBranch(0.5, 0.5, half)).isCloseTo(0.7, within(1e-12));
        assertThat(Junctions.divergingBranch(0.8, 0.4, half))
                .isCloseTo(0.6 * (1 + 4 - 2), within(1e-12));
        // tees: full size, small, and half way between
        double tee = Math.PI / 2;
        assertThat(Junctions.divergingBranch(0.5, 1, tee)).isCloseTo(1.075 * 1.075, within(1e-12));
        assertThat(Junctions.divergingBranch(0.2, 0.4, tee)).isCloseTo(1.25, within(1e-12));
        double middle = (4.0 / 9 + 1) / 2;
        double x = 0.5 / middle;
        assertThat(Junctions.divergingBranch(0.5, middle, tee))
                .isCloseTo(0.5 * (1 + x * x) + 0.5 * 1.075 * (1 + 0.3 * x * x), within(1e-12));
        assertThat(Junctions.divergingStraight(0.5, 0.3)).isCloseTo(0.1, within(1e-12));
        assertThat(Junctions.divergingStraight(0.4, 0.5)).isCloseTo(-0.064, within(1e-12));
        assertThat(Junctions.divergingStraight(0.6, 0.5)).isCloseTo(0.0216, within(1e-12));
        assertThat(Junctions.divergingStraight(0.7)).isCloseTo(0.036, within(1e-12));
        assertThat(Junctions.divergingBranch(0.6, half)).isCloseTo(0.76, within(1e-12));
        assertThat(Junctions.divergingBranch(2.0, half)).isCloseTo(0.9 * 3, within(1e-12));
        // converging: K = 1, 0.9 (1 - q), 0.55
        assertThat(Junctions.convergingBranch(0.3, 0.3, half))
                .isCloseTo(1 + 1 - 0.98 - 0.3, within(1e-12));
        assertThat(Junctions.convergingBranch(0.2, 0.5, half))
                .isCloseTo(0.72 * (1 + 0.16 - 1.28 - 0.08), within(1e-12));
        assertThat(Junctions.convergingBranch(0.5, 0.5, half))
                .isCloseTo(0.55 * (1 + 1 - 0.5 - 0.5), within(1e-12));
        assertThat(Junctions.convergingStraight(0.4, 0.5, half))
                .isCloseTo(1 - 0.36 - 0.32, within(1e-12));
        assertThat(Junctions.convergingStraight(0.4, 0.5, tee)).isCloseTo(0.46, within(1e-12));
    }

    @Test
    void cones_gentle_and_steep() {
        double gentle = Math.toRadians(30);
        double s = Math.sin(Math.toRadians(15));
        assertThat(Transitions.conicalDiffuser(0.1, 0.2, gentle))
                .isCloseTo(2.6 * s * 0.75 * 0.75, within(1e-12));
        assertThat(Transitions.conicalDiffuser(0.1, 0.2, Math.toRadians(90)))
                .isCloseTo(0.75 * 0.75, within(1e-12));
        assertThat(Transitions.conicalContraction(0.2, 0.1, gentle))
                .isCloseTo(0.8 * s * 0.75, within(1e-12));
        assertThat(Transitions.conicalContraction(0.2, 0.1, Math.toRadians(60)))
                .isCloseTo(0.5 * Math.sqrt(0.5) * 0.75, within(1e-12));
        assertThat(Transitions.onOtherArea(0.5, 0.02, 0.04)).isCloseTo(2, within(1e-12));
        assertThat(Transitions.suddenContraction(0.04, 0.02))
                .isCloseTo(0.5 * Math.pow(0.5, 0.75), within(1e-12));
    }

    @Test
    void faces_of_coils_filters_and_grilles() {
        double fpm = 0.00508;
        double inch = 249.08891;
        // reference cases DUCT-FILT-012 to 015
        assertThat(FaceLoss.dryCoilOneRowEightFins(400 * fpm)).isCloseTo(0.07 * inch, within(1e-9));
        assertThat(FaceLoss.dryCoilOneRowEightFins(500 * fpm)).isCloseTo(0.10 * inch, within(1e-9));
        assertThat(FaceLoss.dryCoilOneRowEightFins(700 * fpm)).isCloseTo(0.17 * inch, within(1e-9));
        assertThat(FaceLoss.dryCoilOneRowEightFins(450 * fpm))
                .isCloseTo(
                        0.07 * inch * Math.pow(1.125, Math.log(10.0 / 7) / Math.log(1.25)),
                        within(1e-9));
        assertThat(FaceLoss.dryCoilOneRowEightFins(600 * fpm))
                .isCloseTo(
                        0.10 * inch * Math.pow(1.2, Math.log(1.7) / Math.log(1.4)), within(1e-9));
        assertThat(FaceLoss.dryCoilOneRowEightFinsExponent()).isCloseTo(1.611, within(0.1));
        // DUCT-FILT-010, 011
        assertThat(FaceLoss.darcyForchheimer(30, 8, 1.5, 1.2041, 1.2041))
                .isCloseTo(63, within(1e-9));
        assertThat(FaceLoss.darcyForchheimer(30, 8, 1.5, 0.9295, 1.2041))
                .isCloseTo(58.8950253, within(1e-6));
        assertThat(FaceLoss.exponent(new double[] {1, 2, 4}, new double[] {3, 3, 12}))
                .isCloseTo(1, within(1e-12));
        assertThat(FaceLoss.powerLaw(20, 2, 6, 2)).isCloseTo(180, within(1e-12));
        assertThat(FaceLoss.freeAreaVelocity(0.14, 0.1, 0.7)).isCloseTo(2, within(1e-12));
    }

    @Test
    void bends_and_elbows() {
        // reference cases DUCT-FIT-059 to 062 (Rennels and Hudson) and 024
        double f = Friction.colebrookWhite(26_000, 0.0005905511811);
        assertThat(Elbows.smoothBend(f, 1.5, Math.PI / 2)).isCloseTo(0.2916743311, within(3e-7));
        assertThat(Elbows.smoothBend(f, 1, Math.PI / 2)).isCloseTo(0.417417905, within(4e-7));
        assertThat(Elbows.smoothBend(f, 1, Math.PI / 4)).isCloseTo(0.2519902324, within(3e-7));
        assertThat(Elbows.miterBend(Math.PI / 2)).isCloseTo(1.202081528, within(1.2e-6));
        assertThat(Elbows.threeGore90(1)).isCloseTo(0.42, within(1e-12));
        // 4005 ft/min make one inch of water in the trade's tables
        assertThat(VelocityPressure.tradePressure(4005 * 0.00508))
                .isCloseTo(249.08891, within(1e-9));
    }

    @Test
    void static_regain_pays_for_just_the_friction() {
        double q1 = 1;
        double q2 = 0.8;
        double d1 = 0.4;
        double d = FrictionChart.staticRegainDiameter(q1, d1, q2, 5, 0.75, 9e-5, 1.2, 1.82e-5);
        double v1 = q1 / DuctGeometry.roundArea(d1);
        double v2 = q2 / DuctGeometry.roundArea(d);
        assertThat(0.75 * 0.6 * (v1 * v1 - v2 * v2))
                .isCloseTo(5 * Friction.lossPerLength(v2, d, 9e-5, 1.2, 1.82e-5), within(1e-9));
    }

    @Test
    void altshul_and_tsal_bend_at_their_published_point() {
        // f' = 0.11 (0.0001 + 68/1e6)^(1/4) = 0.01252...: the second branch
        double low = 0.11 * Math.pow(1.68e-4, 0.25);
        assertThat(Friction.altshulTsal(1e6, 1e-4)).isCloseTo(0.85 * low + 0.0028, within(1e-12));
        double high = 0.11 * Math.pow(1.068e-2, 0.25);
        assertThat(Friction.altshulTsal(1e5, 1e-2)).isCloseTo(high, within(1e-12));
    }

    @Test
    void a_root_at_either_end_is_found_and_none_is_said() {
        assertThat(Root.find("x", x -> x - 1, 1, 3)).isEqualTo(1);
        assertThat(Root.find("x", x -> x - 3, 1, 3)).isEqualTo(3);
        assertThat(Root.find("x", x -> x * x * x - 8, 0, 50)).isCloseTo(2, within(1e-14));
        assertThat(Root.find("x", x -> Math.expm1(20 * (x - 1)), -3, 2))
                .isCloseTo(1, within(1e-14));
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> Root.find("sense", x -> x * x + 1, 0, 1))
                .withMessageContaining("no sense between");
    }
}
