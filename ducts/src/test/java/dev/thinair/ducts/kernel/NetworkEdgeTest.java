package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Networks at the edge of their laws: no flow at all, blowers run backwards, closed forms. */
class NetworkEdgeTest {

    private static final double DENSITY = 1.2;
    private static final double VISCOSITY = 1.8e-5;

    private static int part(Network.Builder b, String kind, String name, int from, int to) {
        return switch (kind) {
            case "quadratic" -> b.quadratic(name, from, to, 400);
            case "filter" -> b.filter(name, from, to, 0, 400);
            case "leak" -> b.leak(name, from, to, 0.01, 0.6);
            case "bare leak" -> b.leak(name, from, to, 0.01, 0.5);
            case "fitting" ->
                    b.duct(name, from, to, 0.15, DuctGeometry.roundArea(0.15), 0, 0, 2, 1);
            default -> b.duct(name, from, to, 0.15, DuctGeometry.roundArea(0.15), 6, 9e-5, 2, 1);
        };
    }

    /** A bridge between two equal ways carries nothing, where its law is flat. */
    @ParameterizedTest
    @ValueSource(strings = {"quadratic", "filter", "leak", "bare leak", "fitting", "duct"})
    void a_bridge_between_equals_carries_nothing(String kind) {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("room", 0);
        int plenum = b.node("plenum");
        int left = b.node("left");
        int right = b.node("right");
        int blower = b.blower("blower", room, plenum, 200, -20, -300);
        b.quadratic("to left", plenum, left, 300);
        b.quadratic("to right", plenum, right, 300);
        int bridge = part(b, kind, "bridge", left, right);
        b.quadratic("from left", left, room, 500);
        b.quadratic("from right", right, room, 500);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        assertThat(n.solve(DENSITY, VISCOSITY, w)).isLessThan(30);
        // 200 - 20 q - 300 q^2 = 800 (q/2)^2
        double q = (-20 + Math.sqrt(400 + 4 * 500 * 200)) / 1000;
        assertThat(w.flow(blower)).isCloseTo(q, within(1e-11));
        assertThat(w.flow(bridge)).isCloseTo(0, within(1e-6 * q));
        assertThat(w.pressure(left)).isCloseTo(500 * q * q / 4, within(1e-8));
        assertThat(w.pressure(left)).isCloseTo(w.pressure(right), within(1e-8));
    }

    /** Two rooms at one pressure and nothing that drives: all stands still. */
    @ParameterizedTest
    @ValueSource(strings = {"quadratic", "filter", "leak", "fitting", "duct"})
    void without_a_drive_nothing_moves(String kind) {
        still(kind, 0);
        still(kind, 5);
    }

    private static void still(String kind, double pressure) {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("room", pressure);
        int other = b.fixedNode("other room", pressure);
        int node = b.node("node");
        part(b, kind, "one", room, node);
        part(b, kind, "two", node, other);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        assertThat(w.flow(0)).isCloseTo(0, within(1e-6));
        assertThat(w.pressure(node)).isCloseTo(pressure, within(1e-7));
    }

    /** Pushed backwards, a blower's curve goes straight on: its rise falls with flow everywhere. */
    @Test
    void a_blower_run_backwards_goes_straight_on() {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("room", 0);
        int node = b.node("node");
        int blower = b.blower("blower", room, node, 200, -20, -300);
        int strong = b.blower("strong", room, node, 230, -1, -4);
        Network n = b.build();
        assertThat(n.loss(blower, -0.5, DENSITY, VISCOSITY)).isCloseTo(-210, within(1e-12));
        assertThat(n.loss(blower, 0.5, DENSITY, VISCOSITY)).isCloseTo(-115, within(1e-12));
        assertThat(n.loss(blower, -0.5, DENSITY / 2, VISCOSITY)).isCloseTo(-105, within(1e-12));
        Network.Workspace w = n.workspace();
        n.solve(DENSITY, VISCOSITY, w);
        // 230 - q - 4 q^2 = 200 + 20 q
        double q = (-21 + Math.sqrt(441 + 4 * 4 * 30)) / 8;
        assertThat(w.flow(strong)).isCloseTo(q, within(1e-11));
        assertThat(w.flow(blower)).isCloseTo(-q, within(1e-11));
        assertThat(w.pressure(node)).isCloseTo(200 + 20 * q, within(1e-9));
    }

    /** A blower on a filter, an orifice and a table: the exact root, pressures to rounding. */
    @Test
    void closed_forms_are_met_to_rounding_in_few_steps() {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("room", 0);
        int node = b.node("node");
        int other = b.node("other");
        b.blower("blower", room, node, 300, -40, -250);
        b.filter("filter", node, other, 60, 150);
        b.quadratic("grille", other, room, 100);
        Network n = b.build();
        Network.Workspace w = n.workspace();
        assertThat(n.solve(DENSITY, VISCOSITY, w)).isLessThanOrEqualTo(4);
        double q = (-100 + Math.sqrt(1e4 + 4 * 500 * 300)) / 1000;
        assertThat(w.flow(0)).isCloseTo(q, within(1e-14));
        assertThat(w.pressure(node)).isCloseTo(300 - 40 * q - 250 * q * q, within(1e-12));
        assertThat(w.pressure(other)).isCloseTo(100 * q * q, within(1e-12));
        BlowerCurve table =
                BlowerCurve.through(
                        new double[] {20, 100, 180, 260}, new double[] {0.75, 0.62, 0.45, 0.15});
        Network t = n.withTable(0, table);
        Network.Workspace v = t.workspace();
        assertThat(t.solve(DENSITY, VISCOSITY, v)).isLessThanOrEqualTo(5);
        double p = v.pressure(node);
        assertThat(table.flowAt(p)).isCloseTo(v.flow(0), within(1e-13));
        assertThat((60 + 250 * v.flow(0)) * v.flow(0)).isCloseTo(p, within(1e-11));
        assertThat(v.pressure(other)).isCloseTo(100 * v.flow(0) * v.flow(0), within(1e-11));
    }

    /** A register opened again starts from what such a duct usually carries. */
    @Test
    void a_branch_opened_again_is_found_from_warm() {
        Network.Builder b = Network.builder(DENSITY);
        int room = b.fixedNode("room", 0);
        int plenum = b.node("plenum");
        b.blower("blower", room, plenum, 200, -20, -300);
        for (int i = 0; i < 6; i++) {
            part(b, "duct", "run " + i, plenum, room);
        }
        Network n = b.build();
        Network.Workspace w = n.workspace();
        n.withShut(2).solve(DENSITY, VISCOSITY, w);
        assertThat(w.flow(2)).isZero();
        assertThat(n.solve(DENSITY, VISCOSITY, w)).isLessThanOrEqualTo(5);
        assertThat(w.flow(2)).isCloseTo(w.flow(1), within(1e-13));
    }
}
