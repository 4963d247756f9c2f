package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every branch and node of the exact networks. The printed values carry 12 to 13 digits. */
class NetworkReferenceTest {

    @TestFactory
    Stream<DynamicTest> every_branch_and_node_of_the_exact_networks() {
        return ReferenceNetworks.all().stream()
                .flatMap(
                        c ->
                                c.conditions().stream()
                                        .map(
                                                k ->
                                                        DynamicTest.dynamicTest(
                                                                c.name() + " " + k.name(),
                                                                () -> check(c, k))));
    }

    private static void check(ReferenceNetworks.Case c, ReferenceNetworks.Condition k) {
        Network n = c.network();
        Network.Workspace w = n.workspace();
        int steps = n.solve(k.density(), k.viscosity(), w);
        assertThat(steps).isLessThanOrEqualTo(10);
        assertThat(k.flows()).isNotEmpty();
        k.flows()
                .forEach(
                        (name, q) ->
                                assertThat(w.flow(n.branch(name)))
                                        .as(name)
                                        .isCloseTo(q, within(1e-10 * Math.abs(q))));
        k.pressures()
                .forEach(
                        (name, p) ->
                                assertThat(w.pressure(n.node(name)))
                                        .as(name)
                                        .isCloseTo(p, within(1e-10 * Math.abs(p) + 1e-11)));
    }
}
