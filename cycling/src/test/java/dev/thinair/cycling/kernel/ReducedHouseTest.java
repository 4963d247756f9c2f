package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The house by few modes against the house by all of them. */
class ReducedHouseTest {

    private static final int[] WATCHED = {0, 1};

    /** 27 walls of 6 layers: 164 nodes. */
    private static final TestHouse HOUSE = new TestHouse(27, 6, 0.5);

    private static final ModalHouse FULL = HOUSE.modal();

    private static ModalHouse reduced(double tolerance) {
        return ModalHouse.reduced(HOUSE.capacity, HOUSE.conductance, WATCHED, tolerance);
    }

    @Test
    void few_modes_are_left() {
        assertThat(FULL.modes()).isEqualTo(164);
        assertThat(reduced(1e-4).modes()).isLessThan(30);
        assertThat(reduced(1e-4).size()).isEqualTo(164);
        assertThat(reduced(1e-6).modes()).isGreaterThan(reduced(1e-2).modes());
    }

    @Test
    void steady_states_of_the_watched_nodes_are_exact_for_heat_into_any_node() {
        ModalHouse few = reduced(1e-2);
        for (int i = 0; i < HOUSE.n; i += 7) {
            double[] heat = new double[HOUSE.n];
            heat[i] = 1000;
            double[] exact = FULL.steady(heat);
            double[] found = few.steady(heat);
            for (int w : WATCHED) {
                assertThat(found[w]).isCloseTo(exact[w], within(1e-9 * exact[w]));
            }
        }
    }

    @Test
    void the_uniform_temperature_and_the_heat_of_the_whole_are_exact() {
        ModalHouse few = reduced(1e-2);
        double[] uniform = new double[HOUSE.n];
        Arrays.fill(uniform, 300);
        double[] z = new double[few.modes()];
        few.toModal(uniform, z);
        double[] back = new double[HOUSE.n];
        few.toNodes(z, back);
        for (double t : back) {
            assertThat(t).isCloseTo(300, within(1e-9));
        }
        double[] heat = new double[HOUSE.n];
        heat[17] = 5;
        heat[100] = 7;
        double[] f = new double[few.modes()];
        few.forcing(heat, f);
        double[] content = few.row(few.capacities());
        double stored = 0;
        for (int k = 0; k < f.length; k++) {
            stored += content[k] * f[k];
        }
        assertThat(stored).isCloseTo(12, within(1e-9));
    }

    // Steps and ramps, from seconds to months, of heat into rooms, inner and outer layers.
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 4, 7, 90, 163})
    void answers_in_time_stay_within_the_tolerance(int node) {
        double[] heat = new double[HOUSE.n];
        double[] slope = new double[HOUSE.n];
        heat[node] = 1000;
        double[] cold = new double[HOUSE.n];
        double settled = FULL.steady(heat)[0];
        for (double tolerance : new double[] {1e-3, 1e-4, 1e-5}) {
            ModalHouse few = reduced(tolerance);
            for (double t = 5; t < 5e6; t *= 2) {
                double exact = FULL.after(cold, heat, slope, t)[0];
                double found = few.after(cold, heat, slope, t)[0];
                assertThat(found).isCloseTo(exact, within(3 * tolerance * settled));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 2})
    void a_day_has_the_same_starts_at_the_same_times_and_uses_the_same_energy(double mass) {
        TestHouse house = new TestHouse(27, 6, mass);
        HouseDrive drive = house.day(29);
        CycleControl control = CycleControl.single(297.15, 1).withStartUp(60);
        UnitResponse unit = TestHouse.unit(0.9);
        double[] start = new double[house.n];
        Arrays.fill(start, 297.15);
        RunRecord all = house.engine().run(drive, control, unit, start, 0.009, 0);
        ModalHouse few = ModalHouse.reduced(house.capacity, house.conductance, WATCHED, 1e-4);
        RunRecord some =
                new ThermostatEngine(few, house.air(), house.air(), house.air())
                        .run(drive, control, unit, start, 0.009, 0);
        assertThat(all.totalStarts()).isGreaterThan(10);
        assertThat(some.eventCount()).isEqualTo(all.eventCount());
        // Nothing pulls a cycle that lags back into step: differences add up over the day.
        for (int e = 0; e < all.eventCount(); e++) {
            assertThat(some.eventTime(e)).isCloseTo(all.eventTime(e), within(15.0));
        }
        assertThat(some.totalElectricity())
                .isCloseTo(all.totalElectricity(), within(2e-5 * all.totalElectricity()));
        assertThat(Math.abs(some.heatImbalance())).isLessThan(1e-12);
        for (int h = 0; h < 24; h++) {
            assertThat(some.meanTemperature(h)).isCloseTo(all.meanTemperature(h), within(2e-3));
        }
    }

    @Test
    void the_grid_is_refined_until_the_tolerance_is_met_for_every_tolerance_allowed() {
        for (TestHouse house :
                new TestHouse[] {
                    HOUSE,
                    new TestHouse(27, 6, 0.05),
                    new TestHouse(9, 12, 5),
                    new TestHouse(60, 3, 1)
                }) {
            int last = 0;
            for (double tolerance : new double[] {1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6}) {
                int modes =
                        ModalHouse.reduced(house.capacity, house.conductance, WATCHED, tolerance)
                                .modes();
                assertThat(modes).isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(house.n);
                last = modes;
            }
        }
    }

    @Test
    void a_tolerance_that_is_not_reached_is_refused_and_not_passed_over() {
        for (double tolerance : new double[] {1e-12, Double.NaN}) {
            HouseReduction reduction =
                    new HouseReduction(HOUSE.capacity, HOUSE.conductance, WATCHED, tolerance);
            assertThatThrownBy(reduction::basis)
                    .isInstanceOf(ArithmeticException.class)
                    .hasMessageContaining("does not reach its tolerance " + tolerance)
                    .hasMessageContaining("watched node");
        }
    }

    @Test
    void a_small_house_loses_nothing() {
        TestHouse small = new TestHouse(1, 2, 1);
        ModalHouse all = small.modal();
        ModalHouse same =
                ModalHouse.reduced(small.capacity, small.conductance, new int[] {0, 1, 2, 3}, 1e-4);
        assertThat(same.modes()).isEqualTo(4);
        for (int k = 0; k < 4; k++) {
            assertThat(same.rates()[k]).isCloseTo(all.rates()[k], within(1e-9 * all.rates()[k]));
        }
    }

    @Test
    void bad_input_is_named() {
        assertThatThrownBy(
                        () ->
                                ModalHouse.reduced(
                                        HOUSE.capacity, HOUSE.conductance, new int[0], 1e-4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one watched node");
        assertThatThrownBy(() -> ModalHouse.reduced(HOUSE.capacity, HOUSE.conductance, null, 1e-4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one watched node");
        assertThatThrownBy(
                        () ->
                                ModalHouse.reduced(
                                        HOUSE.capacity, HOUSE.conductance, new int[] {164}, 1e-4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("watched node");
        for (double tolerance : new double[] {0, 1e-7, 0.2, Double.NaN}) {
            assertThatThrownBy(() -> reduced(tolerance))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("tolerance of the reduction");
        }
        assertThatThrownBy(() -> ModalHouse.reduced(null, HOUSE.conductance, WATCHED, 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
        // Without any loss to the surroundings there is no steady state.
        assertThatThrownBy(
                        () ->
                                ModalHouse.reduced(
                                        new double[] {1, 1},
                                        new double[][] {{1, -1}, {-1, 1}},
                                        new int[] {0},
                                        1e-4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("path of heat to the surroundings");
    }
}
