package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
        assertThat(steps).isLessThan(10);
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

    /**
     * The whole house of the elevation table at 7,200 ft, same blower and speed: volume -1.4 and
     * mass -24.5 % with a clean filter, -3.6 and -26.1 % with a loaded one.
     */
    @ParameterizedTest
    @CsvSource({"N3, -1.4, -24.5", "N3F, -3.6, -26.1"})
    void a_house_carries_less_mass_but_hardly_less_volume(String name, double volume, double mass) {
        Network n =
                ReferenceNetworks.all().stream()
                        .filter(c -> c.name().equals(name))
                        .findFirst()
                        .orElseThrow()
                        .network();
        Network.Workspace w = n.workspace();
        int fan = n.branch("fan");
        n.solve(1.2041, 1.82e-5, w);
        double low = w.flow(fan);
        n.solve(0.9221, 1.82e-5, w);
        double high = w.flow(fan);
        assertThat(100 * (high / low - 1)).isCloseTo(volume, within(0.05));
        assertThat(100 * (high / low * 0.9221 / 1.2041 - 1)).isCloseTo(mass, within(0.05));
    }
}
