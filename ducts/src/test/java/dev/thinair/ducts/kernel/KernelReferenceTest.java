package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single formulas against rows of the reference set; the row is named beside each. */
class KernelReferenceTest {

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double CFM = 4.719474432e-4;
    private static final double FPM = 0.00508;
    private static final double IN_WG = 249.08891;
    private static final double POUND_PER_CUBIC_FOOT = 0.45359237 / (FOOT * FOOT * FOOT);

    @ParameterizedTest
    @CsvSource({
        // DUCT-PRESS-013, 014, 015, 016, 017, 018: airflow cfm, diameter in, roughness ft, lb/ft3,
        // Pa/m
        "110, 6, 0.0003, 0.075, 0.806184493",
        "110, 6, 0.0003, 0.0579, 0.655345862",
        "110, 6, 0.003, 0.075, 1.11156778",
        "1200, 18, 0.0003, 0.075, 0.295140108",
        "60, 5, 0.0003, 0.0557, 0.519747113",
        "300, 9, 0.01, 0.0624, 1.11905634"
    })
    void friction_loss_of_round_ducts(
            double cfm, double in, double ft, double lb, double expected) {
        double d = in * INCH;
        double v = VelocityPressure.meanVelocity(cfm * CFM, DuctGeometry.roundArea(d));
        // nine printed digits
        assertThat(Friction.lossPerLength(v, d, ft * FOOT, lb * POUND_PER_CUBIC_FOOT, 1.82e-5))
                .isCloseTo(expected, within(1e-8 * expected));
        assertThat(
                        DuctLoss.total(
                                cfm * CFM,
                                d,
                                DuctGeometry.roundArea(d),
                                10,
                                ft * FOOT,
                                2,
                                1.5,
                                lb * POUND_PER_CUBIC_FOOT,
                                1.82e-5))
                .isCloseTo(
                        15 * expected + lb * POUND_PER_CUBIC_FOOT * v * v, within(2e-7 * expected));
    }

    @ParameterizedTest
    @CsvSource({
        // DUCT-CHART-003, 006, 011: galvanised at 0.1 in. per 100 ft, kinematic viscosity 1.507e-5
        "6, 110.892, 0.00111",
        "10, 436.135, 0.00436",
        "24, 4464.79, 0.0446"
    })
    void the_friction_chart(double in, double cfm, double tolerance) {
        double rho = 0.075 * POUND_PER_CUBIC_FOOT;
        double q =
                FrictionChart.flow(
                        in * INCH, 0.1 * IN_WG / (100 * FOOT), 0.0003 * FOOT, rho, 1.507e-5 * rho);
        assertThat(q / CFM).isCloseTo(cfm, within(tolerance));
    }

    @Test
    void diameters_for_airflows() {
        double rho = 0.075 * POUND_PER_CUBIC_FOOT;
        // DUCT-CHART-017 and 019
        assertThat(
                        FrictionChart.diameter(
                                        1200 * CFM,
                                        0.08 * IN_WG / (100 * FOOT),
                                        0.0003 * FOOT,
                                        rho,
                                        1.82e-5)
                                / INCH)
                .isCloseTo(15.30194, within(1.53e-5));
        assertThat(
                        FrictionChart.diameter(
                                        120 * CFM,
                                        0.08 * IN_WG / (100 * FOOT),
                                        0.003 * FOOT,
                                        0.0579 * POUND_PER_CUBIC_FOOT,
                                        1.82e-5)
                                / INCH)
                .isCloseTo(6.560135, within(6.6e-6));
    }

    @Test
    void chart_corrections_and_equivalent_lengths() {
        // DUCT-PRESS-020 to 023
        assertThat(FrictionChart.elevationCorrection(5000 * FOOT))
                .isCloseTo(0.847500, within(1e-5));
        assertThat(FrictionChart.elevationCorrection(7000 * FOOT))
                .isCloseTo(0.791912, within(1e-5));
        assertThat(FrictionChart.temperatureCorrection((100 + 459.67) / 1.8))
                .isCloseTo(0.955592, within(1e-5));
        assertThat(FrictionChart.temperatureCorrection((55 + 459.67) / 1.8))
                .isCloseTo(1.023969, within(1e-5));
        // DUCT-EQL-001, 003, 006
        assertThat(FrictionChart.equivalentLength(0.14, 6 * INCH, 0.0263) / FOOT)
                .isCloseTo(2.661596958, within(1e-8));
        double pv = Math.pow(900.0 / 4005, 2) * IN_WG;
        assertThat(FrictionChart.equivalentLengthAt(0.555, pv, 0.08 * IN_WG / (100 * FOOT)) / FOOT)
                .isCloseTo(35.033455, within(1e-4));
        assertThat(
                        FrictionChart.designFrictionRate(0.2 * IN_WG, 250 * FOOT)
                                / (IN_WG / (100 * FOOT)))
                .isCloseTo(0.08, within(1e-12));
    }

    @Test
    void static_regain() {
        // DUCT-SIZE-001 and 002
        assertThat(
                        FrictionChart.staticRegainDiameter(
                                0.5, 0.35, 0.4, 5, 0.75, 9e-5, 1.2041, 1.82e-5))
                .isCloseTo(0.339290392, within(1e-9));
        assertThat(
                        FrictionChart.staticRegainDiameter(
                                0.566, 0.4, 0.4, 6, 0.9, 9e-5, 1.2041, 1.82e-5))
                .isCloseTo(0.362969146, within(1e-9));
    }

    @Test
    void velocity_pressure() {
        double rho = 0.075 * POUND_PER_CUBIC_FOOT;
        // DUCT-VP-001, 005, 006
        assertThat(VelocityPressure.pressure(4005 * FPM, rho)).isCloseTo(248.64778, within(2.5e-6));
        assertThat(VelocityPressure.velocity(IN_WG, rho) / FPM).isCloseTo(4008.5511, within(0.001));
        assertThat(VelocityPressure.velocity(248.84, rho) / FPM)
                .isCloseTo(4006.5478, within(0.001));
    }

    @Test
    void hydraulic_and_equivalent_diameters() {
        // DUCT-EQD-015 to 024 and 026
        assertThat(DuctGeometry.rectangularEquivalentDiameter(8, 20))
                .isCloseTo(13.4812087513, within(1e-9));
        assertThat(DuctGeometry.rectangularHydraulicDiameter(8, 20))
                .isCloseTo(11.4285714286, within(1e-9));
        // sides in feet here, since a duct of 24 m is refused
        assertThat(DuctGeometry.rectangularEquivalentDiameter(4.0 / 12, 2) * 12)
                .isCloseTo(9.79655464074, within(1e-9));
        assertThat(DuctGeometry.flatOvalEquivalentDiameter(14, 6))
                .isCloseTo(9.5778691777, within(1e-9));
        assertThat(DuctGeometry.flatOvalHydraulicDiameter(14, 6))
                .isCloseTo(8.75469794267, within(1e-9));
        assertThat(DuctGeometry.flatOvalEquivalentDiameter(10, 10))
                .isCloseTo(10.0109526179, within(1e-9));
        // a square is not its own equivalent
        assertThat(DuctGeometry.rectangularEquivalentDiameter(10, 10))
                .isCloseTo(10.9316533983, within(1e-9));
        assertThat(DuctGeometry.rectangularHydraulicDiameter(10, 10)).isEqualTo(10);
        // a flat oval of equal axes is a circle in area and perimeter
        assertThat(DuctGeometry.flatOvalArea(3, 3))
                .isCloseTo(DuctGeometry.roundArea(3), within(1e-14));
        assertThat(DuctGeometry.flatOvalPerimeter(3, 3)).isCloseTo(3 * Math.PI, within(1e-14));
    }

    @Test
    void flexible_duct() {
        // DUCT-FLEX-002, 004, 008
        assertThat(FlexibleDuct.pressureDropCorrection(0.04, 6 * INCH))
                .isCloseTo(2.08933474658, within(1e-9));
        assertThat(FlexibleDuct.pressureDropCorrection(0.30, 6 * INCH))
                .isCloseTo(9.17001059934, within(1e-9));
        assertThat(FlexibleDuct.pressureDropCorrection(0.30, 10 * INCH))
                .isCloseTo(5.9355800611, within(1e-9));
        assertThat(FlexibleDuct.pressureDropCorrection(0, 6 * INCH)).isEqualTo(1);
        // arc of a parabola: against a fine polygon
        for (double sag : new double[] {1e-6, 0.05, 0.3, 1}) {
            double sum = 0;
            int n = 20_000;
            for (int i = 0; i < n; i++) {
                double x0 = (double) i / n;
                double x1 = (double) (i + 1) / n;
                sum += Math.hypot(1.0 / n, 4 * sag * (x1 * (1 - x1) - x0 * (1 - x0)));
            }
            assertThat(FlexibleDuct.sagLengthRatio(sag)).isCloseTo(sum, within(2e-8));
        }
        assertThat(FlexibleDuct.sagLengthRatio(0)).isEqualTo(1);
    }

    @Test
    void leakage() {
        // DUCT-LEAK-001, 004, 009, 010, 012
        double unit = CFM / (100 * FOOT * FOOT);
        assertThat(Leakage.factor(24, 0.5 * IN_WG) / unit).isCloseTo(15.29472753, within(1e-7));
        assertThat(Leakage.factor(6, 0.3 * IN_WG) / unit).isCloseTo(2.743342717, within(1e-7));
        assertThat(Leakage.leakageClass(Leakage.factor(24, 60), 60)).isCloseTo(24, within(1e-12));
        assertThat(Leakage.flow(120 * CFM, 25, 60, 0.6) / CFM).isCloseTo(202.9121213, within(1e-6));
        assertThat(Leakage.flow(120 * CFM, 25, 12.5, 0.6) / CFM)
                .isCloseTo(79.17047465, within(1e-6));
        assertThat(Leakage.flow(120 * CFM, 25, -40, 0.6) / CFM)
                .isCloseTo(-159.0937928, within(1e-6));
        assertThat(Leakage.flow(1, 25, 0, 0.6)).isZero();
    }

    @Test
    void conduction() {
        // DUCT-COND-001, 002, 004
        assertThat(end(13, 55, 0.94, 0.1524, 8, 0.0519 * 1.2041))
                .isCloseTo(15.3377468, within(1e-6));
        assertThat(end(13, 55, 0.94, 0.1524, 8, 0.0519 * 0.9295))
                .isCloseTo(16.0031495, within(1e-6));
        assertThat(end(50, -10, 1.4, 0.3, 10, 0.3 * 1.2041)).isCloseTo(47.86052103, within(1e-6));
        double b = DuctConduction.conductionFraction(20, 0.8, 0.3, 1006);
        double out = DuctConduction.leavingTemperature(285, 320, b);
        assertThat(DuctConduction.enteringTemperature(out, 320, b)).isCloseTo(285, within(1e-11));
        assertThat(DuctConduction.heatGain(285, out, 0.3, 1006))
                .isCloseTo(0.3 * 1006 * (out - 285), within(1e-9));
    }

    private static double end(double in, double ambient, double u, double d, double l, double m) {
        double b = DuctConduction.conductionFraction(Math.PI * d * l, u, m, 1006);
        return DuctConduction.leavingTemperature(in + 273.15, ambient + 273.15, b) - 273.15;
    }

    @Test
    void delivery_effectiveness() {
        // DUCT-DSE-001, 003, 005, 006, 008
        assertThat(DeliveryEffectiveness.sensible(0.9, 0.9, 0.92, 0.96, 25, 20, 20))
                .isCloseTo(0.6803136, within(1e-9));
        assertThat(DeliveryEffectiveness.sensible(1, 1, 1, 1, 25, 20, 20)).isEqualTo(1);
        assertThat(DeliveryEffectiveness.sensible(0.9, 0.9, 0.92, 0.96, -11, -20, -20))
                .isCloseTo(0.492349090909, within(1e-9));
        assertThat(DuctConduction.conductionFraction(20, 1 / 1.06, 0.45 * 1.2041, 1006))
                .isCloseTo(0.965978266543, within(1e-9));
        assertThat(
                        DeliveryEffectiveness.cooling(
                                0.9,
                                0.92,
                                0.93,
                                0.97,
                                -9000,
                                0.5,
                                49_000,
                                72_000,
                                297.15,
                                323.15,
                                273.15 + 13.3781169,
                                323.15,
                                1006))
                .isCloseTo(0.6429590696, within(1e-8));
    }

    @Test
    void shutting_registers() {
        // DUCT-TRADE-018 and 020
        assertThat(RegisterShutting.openRegisterGain(10, 4, 0.5))
                .isCloseTo(1.212678125, within(1e-8));
        assertThat(RegisterShutting.openRegisterGain(12, 5, 0.5))
                .isCloseTo(1.221567837, within(1e-8));
        assertThat(RegisterShutting.openRegisterGain(10, 4, 1)).isEqualTo(1);
        assertThat(RegisterShutting.openRegisterGain(10, 0, 0.3)).isEqualTo(1);
    }

    @Test
    void explicit_approximations() {
        // DUCT-FRIC-021 to 029
        assertThat(Friction.churchill(1000, 0.0006)).isCloseTo(0.064, within(6.4e-12));
        assertThat(Friction.churchill(2300, 0.001)).isCloseTo(0.03084789032576, within(3.1e-12));
        assertThat(Friction.churchill(26_000, 0.0006)).isCloseTo(0.02582590855557, within(2.6e-12));
        assertThat(Friction.haaland(26_000, 0.0006)).isCloseTo(0.02541527160068, within(2.6e-12));
        assertThat(Friction.swameeJain(26_000, 0.0006))
                .isCloseTo(0.02581088291587, within(2.6e-12));
        assertThat(Friction.laminar(1000)).isEqualTo(0.064);
        assertThat(Friction.reynolds(5, 0.2, 1.2, 1.8e-5))
                .isCloseTo(66_666.666666667, within(1e-9));
        // both branches of Altshul-Tsal
        assertThat(Friction.altshulTsal(1e5, 0.001))
                .isCloseTo(0.11 * Math.pow(0.001 + 68e-5, 0.25), within(1e-15));
        assertThat(Friction.altshulTsal(1e7, 1e-5))
                .isCloseTo(0.85 * 0.11 * Math.pow(1e-5 + 68e-7, 0.25) + 0.0028, within(1e-15));
    }

    @Test
    void blower_table() {
        double[] p = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8};
        double[] q = {1635, 1585, 1525, 1460, 1400, 1330, 1260, 1180};
        for (int i = 0; i < 8; i++) {
            p[i] *= IN_WG;
            q[i] *= CFM;
        }
        BlowerCurve c = BlowerCurve.through(p, q);
        // DUCT-FAN-033, 034, then the operating point DUCT-FAN-037, 038 (published table, PCHIP)
        assertThat(c.flowAt(0.5 * IN_WG) / CFM).isCloseTo(1400, within(1e-9));
        assertThat(c.flowAt(0.8 * IN_WG) / CFM).isCloseTo(1180, within(1e-9));
        Network.Builder b = Network.builder(1.2);
        int house = b.fixedNode("house", 0);
        int plenum = b.node("plenum");
        b.blower("blower", house, plenum, c);
        b.quadratic("system", plenum, house, 3.47222222e-07 * IN_WG / (CFM * CFM));
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(1.2, 1.82e-5, w);
        assertThat(w.flow(0) / CFM).isCloseTo(1323.98, within(0.01));
        assertThat(w.pressure(plenum) / IN_WG).isCloseTo(0.60865, within(1e-5));
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 700; i++) {
            double at = (0.1 + i * 0.001) * IN_WG;
            double flow = c.flowAt(Math.min(at, c.highestPressure()));
            assertThat(flow).isLessThan(last);
            assertThat(c.pressureAt(flow))
                    .isCloseTo(Math.min(at, c.highestPressure()), within(1e-9));
            last = flow;
        }
        assertThat(c.pressureBeyond(c.highestFlow() * 1.01)).isLessThan(c.lowestPressure());
        assertThat(c.pressureBeyond(c.lowestFlow() * 0.9)).isGreaterThan(c.highestPressure());
        assertThat(BlowerCurve.through(new double[] {0, 100}, new double[] {1, 0.5}).flowAt(50))
                .isCloseTo(0.75, within(1e-15));
    }

    @Test
    void the_published_exhaust_system() {
        // ASHRAE Fundamentals 2009 ch. 21 Example 7 by recorded coefficients: DUCT-NETPUB-012, and
        // the
        // operating point on a quadratic fan curve DUCT-NETPUB-009
        Network.Builder b = Network.builder(1.204);
        int out = b.fixedNode("out", 0);
        int in = b.node("in");
        b.blower("fan", out, in, 3000, 0, -3000 / (2.4094 * 2.4094));
        b.quadratic("system", in, out, 938.04369);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(1.204, 1.82e-5, w);
        assertThat(w.flow(0)).isCloseTo(1.43600465, within(1e-7));
        assertThat(n.loss(1, w.flow(1), 1.204, 1.82e-5)).isCloseTo(w.pressure(in), within(1e-9));
        Network held = n.withHeldFlow(0, 1.45);
        held.solve(1.204, 1.82e-5, w);
        assertThat(w.pressure(in)).isCloseTo(938.04369 * 1.45 * 1.45, within(1e-9));
    }

    @Test
    void large_layouts_settle_in_under_ten_steps_and_stay_trees() {
        for (int size : new int[] {40, 500, 2_000}) {
            Network.Builder b = Network.builder(1.2);
            int room = b.fixedNode("room", 0);
            int rp = b.node("rp");
            int before = b.node("sp");
            b.blower("fan", rp, before, 300, -40, -420.0 * 1600 / (size * size));
            b.duct(
                    "ret",
                    room,
                    rp,
                    0.5 + 0.005 * size,
                    DuctGeometry.roundArea(0.5 + 0.005 * size),
                    6,
                    9e-5,
                    2,
                    1);
            for (int k = 0; k < size / 3; k++) {
                int node = b.node("n" + k);
                double d = 0.35 + 0.004 * (size / 3 - k);
                b.duct("t" + k, before, node, d, DuctGeometry.roundArea(d), 2, 9e-5, 0.05, 1);
                b.duct(
                        "a" + k,
                        node,
                        room,
                        0.1524,
                        DuctGeometry.roundArea(0.1524),
                        5 + k % 5,
                        9e-5,
                        4,
                        1);
                b.duct(
                        "b" + k,
                        node,
                        room,
                        0.127,
                        DuctGeometry.roundArea(0.127),
                        6 + k % 3,
                        9e-5,
                        4,
                        1);
                before = node;
            }
            Network n = b.build();
            assertThat(n.isTree()).isTrue();
            assertThat(n.solve(1.2, 1.82e-5, n.workspace())).as("size " + size).isLessThan(10);
        }
    }

    @Test
    void a_grid_of_loops_settles_too() {
        Network.Builder b = Network.builder(1.2);
        int room = b.fixedNode("room", 0);
        int[][] node = new int[8][8];
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                node[i][j] = b.node("n" + i + "," + j);
                if (i > 0) {
                    b.duct(
                            "v" + i + "," + j,
                            node[i - 1][j],
                            node[i][j],
                            0.3,
                            0.07,
                            3,
                            9e-5,
                            0.5,
                            1);
                }
                if (j > 0) {
                    b.duct(
                            "h" + i + "," + j,
                            node[i][j - 1],
                            node[i][j],
                            0.25,
                            0.05,
                            3,
                            9e-5,
                            0.5,
                            1);
                }
                b.duct(
                        "r" + i + "," + j,
                        node[i][j],
                        room,
                        0.15,
                        0.018,
                        4,
                        9e-5,
                        3 + (i * j) % 3,
                        1);
            }
        }
        b.blower("fan", room, node[0][0], 300, -10, -20);
        Network n = b.build();
        assertThat(n.isTree()).isFalse();
        Network.Workspace w = n.workspace();
        assertThat(n.solve(1.2, 1.82e-5, w)).isLessThanOrEqualTo(12);
        double out = 0;
        for (int i = 0; i < n.branchCount(); i++) {
            if (n.branchName(i).startsWith("r")) {
                out += w.flow(i);
            }
        }
        assertThat(out).isCloseTo(w.flow(n.branch("fan")), within(1e-12));
    }

    @Test
    void a_bridge_without_flow_is_no_trouble() {
        // symmetric loop: the middle branch carries nothing at all
        Network.Builder b = Network.builder(1.2);
        int house = b.fixedNode("house", 0);
        int sp = b.node("sp");
        int x = b.node("x");
        int y = b.node("y");
        b.blower("fan", house, sp, 200, -10, -100);
        b.quadratic("sx", sp, x, 100);
        b.quadratic("sy", sp, y, 100);
        int bridge = b.quadratic("xy", x, y, 50);
        b.quadratic("xh", x, house, 300);
        b.quadratic("yh", y, house, 300);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(1.2, 1.82e-5, w);
        assertThat(w.flow(bridge)).isCloseTo(0, within(1e-7));
        assertThat(w.flow(1)).isCloseTo(w.flow(2), within(1e-7));
        double q = w.flow(0);
        assertThat(200 - 10 * q - 100 * q * q).isCloseTo(100 * q * q, within(1e-6));
    }
}
