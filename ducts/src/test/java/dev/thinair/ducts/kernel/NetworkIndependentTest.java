package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The exact networks again, by Commons Math's Levenberg-Marquardt on the full nonlinear system of
 * flows and pressures, with branch laws written anew (Colebrook-White by Brent's method) and a
 * difference Jacobian: nothing is shared with the solver under test but the data.
 */
class NetworkIndependentTest {

    @TestFactory
    Stream<DynamicTest> a_general_optimiser_finds_the_same_flows() {
        return ReferenceNetworks.all().stream()
                .map(
                        c ->
                                DynamicTest.dynamicTest(
                                        c.name(),
                                        () ->
                                                compare(
                                                        c,
                                                        c.conditions()
                                                                .get(c.conditions().size() - 1))));
    }

    private static void compare(ReferenceNetworks.Case c, ReferenceNetworks.Condition k) {
        Network n = c.network();
        Network.Workspace w = n.workspace();
        n.solve(k.density(), k.viscosity(), w);
        ReferenceNetworks.Branch[] open =
                c.branches().stream()
                        .filter(b -> !c.closed().contains(b.name()))
                        .toArray(ReferenceNetworks.Branch[]::new);
        Map<String, Integer> unknown = new TreeMap<>();
        for (ReferenceNetworks.Branch b : open) {
            for (String end : new String[] {b.from(), b.to()}) {
                if (!c.fixed().containsKey(end) && !unknown.containsKey(end)) {
                    unknown.put(end, open.length + unknown.size());
                }
            }
        }
        int size = open.length + unknown.size();
        double[] start = new double[size];
        Arrays.fill(start, 0, open.length, 0.1);
        double[] x = LeastSquaresRoot.of(point -> residual(open, unknown, c, k, point), start);
        for (int i = 0; i < open.length; i++) {
            double q = w.flow(n.branch(open[i].name()));
            assertThat(q).as(open[i].name()).isCloseTo(x[i], within(1e-8 * Math.abs(x[i])));
        }
        unknown.forEach(
                (node, at) ->
                        assertThat(w.pressure(n.node(node)))
                                .as(node)
                                .isCloseTo(x[at], within(1e-8 * Math.abs(x[at]))));
    }

    private static double[] residual(
            ReferenceNetworks.Branch[] open,
            Map<String, Integer> unknown,
            ReferenceNetworks.Case c,
            ReferenceNetworks.Condition k,
            double[] x) {
        double[] r = new double[x.length];
        for (int i = 0; i < open.length; i++) {
            ReferenceNetworks.Branch b = open[i];
            double pa = c.fixed().getOrDefault(b.from(), 0.0);
            double pb = c.fixed().getOrDefault(b.to(), 0.0);
            Integer ia = unknown.get(b.from());
            Integer ib = unknown.get(b.to());
            pa = ia == null ? pa : x[ia];
            pb = ib == null ? pb : x[ib];
            r[i] = (law(b, x[i], pa - pb, k) - (b.type().equals("leak") ? 0 : pa - pb)) / 100;
            if (ia != null) {
                r[ia] -= x[i];
            }
            if (ib != null) {
                r[ib] += x[i];
            }
        }
        return r;
    }

    /** Pressure loss at a flow; for a leak its law solved for 0, times 100. */
    private static double law(
            ReferenceNetworks.Branch b, double q, double dp, ReferenceNetworks.Condition k) {
        double[] v = b.numbers();
        double ratio = k.density() / ReferenceNetworks.REFERENCE_DENSITY;
        switch (b.type()) {
            case "quad":
                return v[0] * ratio * q * Math.abs(q);
            case "filt":
                return v[0] * q + v[1] * ratio * q * Math.abs(q);
            case "fan":
                return -ratio * (v[0] + v[1] * q + v[2] * q * Math.abs(q));
            case "leak":
                return 100 * (q - v[0] * Math.signum(dp) * Math.pow(Math.abs(dp), v[1]));
            default:
                double velocity = q / (Math.PI * v[0] * v[0] / 4);
                double re = k.density() * Math.abs(velocity) * v[0] / k.viscosity();
                double f =
                        re < 3000
                                ? 0.04
                                : new BrentSolver(1e-15, 1e-16, 1e-16)
                                        .solve(
                                                200,
                                                y ->
                                                        1 / Math.sqrt(y)
                                                                + 2
                                                                        * Math.log10(
                                                                                v[2] / v[0] / 3.7
                                                                                        + 2.51
                                                                                                / (re
                                                                                                        * Math
                                                                                                                .sqrt(
                                                                                                                        y))),
                                                1e-3,
                                                0.5);
                return (f * v[1] / v[0] + v[3]) * k.density() / 2 * velocity * Math.abs(velocity);
        }
    }
}
