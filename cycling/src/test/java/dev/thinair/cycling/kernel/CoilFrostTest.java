package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class CoilFrostTest {

    /** A0 of a 3-ton coil, kg/s. */
    private static final double THREE_TONS = 1.3;

    private static double filling() {
        return CoilFrost.fillingMass(
                CoilFrost.finnedArea(THREE_TONS, CoilFrost.FIN_COEFFICIENT),
                CoilFrost.FIN_GAP,
                CoilFrost.FROST_DENSITY);
    }

    @Test
    void the_area_found_from_the_bypass_factor_is_that_of_a_coil_one_can_count() {
        // Three rows of 22 mm deep fins, 14 an inch, on 4 ft2 of face: both sides of every fin.
        double counted = 3 * 2 * 0.022 * (14 / 0.0254) * 4 * 0.3048 * 0.3048;
        assertThat(CoilFrost.finnedArea(THREE_TONS, CoilFrost.FIN_COEFFICIENT))
                .isCloseTo(counted, within(0.2 * counted));
    }

    @Test
    void the_pressure_grows_as_between_plates_that_come_closer() {
        // Plane Poiseuille flow, 12 mu V L / g^2, at the same volume flow: V goes as 1/g.
        double gap = CoilFrost.FIN_GAP;
        for (double layer : new double[] {0, 0.1e-3, 0.3e-3, 0.6e-3}) {
            double free = gap - 2 * layer;
            double wanted = (1 / free / (free * free)) / (1 / gap / (gap * gap));
            double area = CoilFrost.finnedArea(THREE_TONS, CoilFrost.FIN_COEFFICIENT);
            double mass = layer * area * CoilFrost.FROST_DENSITY;
            assertThat(CoilFrost.pressureFactor(mass, filling()))
                    .isCloseTo(wanted, within(1e-9 * wanted));
        }
        assertThat(CoilFrost.pressureFactor(0, filling())).isEqualTo(1);
        assertThat(CoilFrost.pressureFactor(10 * filling(), filling()))
                .isCloseTo(Math.pow(CoilFrost.LEAST_GAP, -3), within(1e-6));
    }

    @Test
    void a_choked_coil_thaws_in_hours_at_rest_and_in_minutes_in_the_blowers_air() {
        double flow = 0.57;
        double room = 294;
        double idle =
                CoilFrost.thawRate(
                        CoilFrost.airConductance(CoilFrost.IDLE_SHARE * flow, THREE_TONS), room);
        double blown = CoilFrost.thawRate(CoilFrost.airConductance(flow, THREE_TONS), room);
        assertThat(filling() / idle / 3600).isBetween(1.5, 8.0);
        assertThat(filling() / blown / 60).isBetween(2.0, 20.0);
        assertThat(CoilFrost.thawRate(100, 273.15)).isZero();
        assertThat(CoilFrost.thawRate(100, 260)).isZero();
        // A kilogram takes its heat of fusion.
        assertThat(CoilFrost.thawRate(33.36, 283.15)).isCloseTo(1e-3, within(1e-12));
    }

    @Test
    void air_cannot_give_more_than_it_holds() {
        for (double flow : new double[] {0.01, 0.1, 1, 10}) {
            double g = CoilFrost.airConductance(flow, THREE_TONS);
            assertThat(g).isLessThanOrEqualTo(1006 * flow);
            assertThat(g).isLessThanOrEqualTo(CoilFrost.surfaceConductance(THREE_TONS));
        }
    }

    @Test
    void refuses_what_is_not_physical() {
        bad("bypass mass", () -> CoilFrost.finnedArea(0, 50));
        bad("bypass mass", () -> CoilFrost.finnedArea(-1, 50));
        bad("heat-transfer coefficient", () -> CoilFrost.finnedArea(1, 0));
        bad("finned area", () -> CoilFrost.fillingMass(0, 1e-3, 250));
        bad("gap between fins", () -> CoilFrost.fillingMass(20, 0, 250));
        bad("density of frost", () -> CoilFrost.fillingMass(20, 1e-3, 1000));
        bad("ice on the coil", () -> CoilFrost.pressureFactor(-1, 5));
        bad("ice that fills the coil", () -> CoilFrost.pressureFactor(1, 0));
        bad("conductance to the ice", () -> CoilFrost.thawRate(-1, 280));
        bad("temperature about the ice", () -> CoilFrost.thawRate(1, 20));
        bad("air over the ice", () -> CoilFrost.airConductance(0, 1));
        bad("bypass mass", () -> CoilFrost.airConductance(1, 0));
        bad("bypass mass", () -> CoilFrost.surfaceConductance(2000));
    }

    private static void bad(String named, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(named);
    }
}
