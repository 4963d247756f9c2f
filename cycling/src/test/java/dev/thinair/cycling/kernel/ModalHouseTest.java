package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class ModalHouseTest {

    private static final TestHouse HOUSE = new TestHouse(4, 3, 0.7);
    private static final ModalHouse MODAL = HOUSE.modal();

    private static double[] some(double scale) {
        double[] x = new double[HOUSE.n];
        for (int i = 0; i < x.length; i++) {
            x[i] = scale * Math.sin(1 + 3.7 * i);
        }
        return x;
    }

    @Test
    void modes_are_sorted_and_as_many_as_the_nodes() {
        double[] rates = MODAL.rates();
        assertThat(MODAL.size()).isEqualTo(HOUSE.n);
        assertThat(MODAL.modes()).isEqualTo(HOUSE.n);
        assertThat(rates).hasSize(HOUSE.n).isSorted();
        assertThat(rates[0]).isPositive();
        rates[0] = -1;
        assertThat(MODAL.rates()[0]).isPositive();
        assertThat(MODAL.capacities()).isEqualTo(HOUSE.capacity);
        assertThat(MODAL.losses()[0]).isCloseTo(HOUSE.outside[0], within(1e-9));
        assertThat(MODAL.losses()[4]).isCloseTo(HOUSE.outside[4], within(1e-9));
        assertThat(MODAL.losses()[2]).isCloseTo(0, within(1e-9));
    }

    @Test
    void to_modes_and_back_is_the_same() {
        double[] z = new double[HOUSE.n];
        double[] back = new double[HOUSE.n];
        MODAL.toModal(some(20), z);
        MODAL.toNodes(z, back);
        assertThat(back).containsExactly(some(20), within(1e-11));
        double[] g = MODAL.row(some(0.3));
        double direct = 0;
        double modal = 0;
        for (int i = 0; i < HOUSE.n; i++) {
            direct += some(0.3)[i] * some(20)[i];
            modal += g[i] * z[i];
        }
        assertThat(modal).isCloseTo(direct, within(1e-10));
        double[] f = new double[HOUSE.n];
        MODAL.forcing(some(0.3), f);
        assertThat(f).containsExactly(g, within(1e-14));
    }

    @Test
    void the_steady_state_solves_the_balance() {
        RealVector exact =
                new LUDecomposition(new Array2DRowRealMatrix(HOUSE.conductance))
                        .getSolver()
                        .solve(new ArrayRealVector(some(500)));
        assertThat(MODAL.steady(some(500))).containsExactly(exact.toArray(), within(1e-10));
    }

    @Test
    void time_under_a_ramp_solves_the_equation() {
        double t = 5000;
        double dt = 0.5;
        double[] before = MODAL.after(some(10), some(500), some(0.05), t - dt);
        double[] at = MODAL.after(some(10), some(500), some(0.05), t);
        double[] after = MODAL.after(some(10), some(500), some(0.05), t + dt);
        for (int i = 0; i < HOUSE.n; i++) {
            double balance = some(500)[i] + some(0.05)[i] * t;
            for (int j = 0; j < HOUSE.n; j++) {
                balance -= HOUSE.conductance[i][j] * at[j];
            }
            assertThat((after[i] - before[i]) / (2 * dt) * HOUSE.capacity[i])
                    .isCloseTo(balance, within(1e-3));
        }
        assertThat(MODAL.after(some(10), some(500), some(0.05), 0))
                .containsExactly(some(10), within(1e-11));
    }

    private static void refused(String message, double[] capacity, double[][] conductance) {
        assertThatThrownBy(() -> ModalHouse.of(capacity, conductance))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void bad_houses_are_named() {
        double[][] good = {{3, -1}, {-1, 2}};
        assertThat(ModalHouse.of(new double[] {1, 1}, good).size()).isEqualTo(2);
        refused("not null", null, good);
        refused("not null", new double[] {1, 1}, null);
        refused("0 nodes", new double[0], new double[0][]);
        refused("2 rows for 3 nodes", new double[] {1, 1, 1}, good);
        refused("heat capacity of node 1", new double[] {1, 0}, good);
        refused(
                "row 1 does not have 2 entries",
                new double[] {1, 1},
                new double[][] {{3, -1}, {-1}});
        refused(
                "row 0 does not have 2 entries",
                new double[] {1, 1},
                new double[][] {null, {1, 1}});
        refused(
                "between nodes 1 and 0 is NaN W/K",
                new double[] {1, 1},
                new double[][] {{3, -1}, {Double.NaN, 2}});
        refused(
                "between nodes 0 and 0 is Infinity W/K",
                new double[] {1, 1},
                new double[][] {{Double.POSITIVE_INFINITY, -1}, {-1, 2}});
        refused(
                "not symmetric: entries (0, 1) and (1, 0) are -1.0 and -1.1",
                new double[] {1, 1},
                new double[][] {{3, -1}, {-1.1, 2}});
        refused(
                "path of heat to the surroundings",
                new double[] {1, 1},
                new double[][] {{1, -1}, {-1, 1}});
        double[] two = {1, 1};
        double[] three = {1, 1, 1};
        ModalHouse house = ModalHouse.of(two, good);
        assertThatThrownBy(() -> house.row(three)).hasMessageContaining("weights");
        assertThatThrownBy(() -> house.row(null)).hasMessageContaining("not null");
        assertThatThrownBy(() -> house.row(new double[] {1, Double.NaN}))
                .hasMessageContaining("weight of node 1 is NaN");
        assertThatThrownBy(() -> house.steady(three)).hasMessageContaining("heat must have");
        assertThatThrownBy(() -> house.after(three, two, two, 1))
                .hasMessageContaining("temperatures must have");
        assertThatThrownBy(() -> house.after(two, three, two, 1))
                .hasMessageContaining("heat must have");
        assertThatThrownBy(() -> house.after(two, two, three, 1))
                .hasMessageContaining("slope of heat must have");
        assertThatThrownBy(() -> house.after(two, two, two, -1)).hasMessageContaining("time");
    }
}
