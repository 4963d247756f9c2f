package dev.thinair.cycling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.working.Working;
import org.junit.jupiter.api.Test;

class UncertaintyTest {

    private static Uncertainty.Builder study() {
        InstalledSystem s = Stories.at(true, 2, 4).build();
        return Uncertainty.of(s)
                .input(
                        "filter loading",
                        1,
                        8,
                        x -> t -> t.withDucts(t.ducts().withFilter(Stories.filter().loaded(x))))
                .input("condenser", 0.6, 1, x -> t -> t.withFaults(UnitFaults.dirtyCondenser(x)))
                .draws(14)
                .seed(7);
    }

    @Test
    void says_how_often_findings_hold_and_what_matters_most() {
        Uncertainty u = study().run();
        assertThat(u.completed()).isEqualTo(14);
        assertThat(u.share(Finding.LowAirflow.class)).isEqualTo(1);
        // A loading of 1.5 and more is a finding: 13 of 14 equal parts of the range from 1 to 8.
        assertThat(u.share(Finding.FilterLoaded.class)).isCloseTo(13 / 14.0, within(1.0 / 14));
        assertThat(u.mostInfluential(Uncertainty.Outcome.AIRFLOW_PER_TON))
                .isEqualTo("filter loading");
        assertThat(u.influence("filter loading", Uncertainty.Outcome.AIRFLOW_PER_TON))
                .isCloseTo(-1, within(1e-12));
        assertThat(u.mostInfluential(Uncertainty.Outcome.ELECTRICITY)).isEqualTo("condenser");
        assertThat(u.influence("condenser", Uncertainty.Outcome.ELECTRICITY)).isLessThan(-0.8);
    }

    @Test
    void the_same_seed_gives_the_same_study() {
        Uncertainty one = study().draws(6).run();
        Uncertainty two = study().draws(6).run();
        assertThat(two.toString()).isEqualTo(one.toString());
        for (Uncertainty.Outcome o : Uncertainty.Outcome.values()) {
            assertThat(two.sorted(o)).isEqualTo(one.sorted(o));
        }
        assertThat(study().draws(6).seed(8).run().sorted(Uncertainty.Outcome.ELECTRICITY))
                .isNotEqualTo(one.sorted(Uncertainty.Outcome.ELECTRICITY));
    }

    @Test
    void a_latin_hypercube_uses_every_part_of_every_range_once() {
        double[][] u = Uncertainty.Builder.hypercube(3, 50, 1);
        for (double[] column : u) {
            boolean[] used = new boolean[50];
            for (double x : column) {
                int part = (int) (x * 50);
                assertThat(used[part]).isFalse();
                used[part] = true;
            }
        }
        assertThat(u[0]).isNotEqualTo(u[1]);
    }

    @Test
    void rank_correlation_is_that_of_the_ranks() {
        double[] x = {1, 2, 3, 4, 5};
        assertThat(Uncertainty.spearman(x, new double[] {1, 8, 27, 64, 125})).isEqualTo(1);
        assertThat(Uncertainty.spearman(x, new double[] {5, 4, 3, 2, 1})).isEqualTo(-1);
        assertThat(Uncertainty.spearman(x, new double[] {2, 2, 2, 2, 2})).isZero();
        // Ranks 1, 2, 3, 4, 5 against 2, 1, 4, 3, 5: 1 - 6 x 4 / (5 x 24) = 0.8.
        assertThat(Uncertainty.spearman(x, new double[] {2, 1, 4, 3, 5}))
                .isCloseTo(0.8, within(1e-12));
    }

    @Test
    void refuses_what_it_cannot_draw() {
        InstalledSystem s = Stories.at(false, 2, 6).build();
        assertThatThrownBy(() -> Uncertainty.of(null)).hasMessageContaining("uncertain system");
        assertThatThrownBy(() -> Uncertainty.of(s).run())
                .hasMessageContaining("at least one input");
        assertThatThrownBy(() -> Uncertainty.of(s).draws(2))
                .hasMessageContaining("number of draws is 2");
        assertThatThrownBy(() -> Uncertainty.of(s).input("x", 1, 1, x -> t -> t))
                .hasMessageContaining("high end of x is 1.0");
        assertThatThrownBy(() -> Uncertainty.of(s).input(" ", 0, 1, x -> t -> t))
                .hasMessageContaining("needs a name");
        assertThatThrownBy(
                        () ->
                                Uncertainty.of(s)
                                        .input("x", 0, 1, x -> t -> t)
                                        .input("x", 0, 1, x -> t -> t))
                .hasMessageContaining("given twice");
    }

    @Test
    void every_finding_shows_its_steps() {
        InstalledSystem s = Stories.at(true, 5, 4).contents(1).build();
        InstalledSystem bad =
                s.withDucts(
                                s.ducts()
                                        .withRegisterShut("run 2")
                                        .withFilter(Stories.filter().loaded(4)))
                        .withFaults(UnitFaults.dirtyCondenser(0.7));
        Assessment a = new Assessment(bad);
        assertThat(a.findings.size()).isGreaterThanOrEqualTo(6);
        for (Finding f : a.findings) {
            Working w = f.working();
            assertThat(w.toText()).contains(f.criterion().source());
            for (Working.Step step : w.steps()) {
                step.recomputed()
                        .ifPresent(
                                x ->
                                        assertThat(x)
                                                .isCloseTo(
                                                        step.result().getValue().doubleValue(),
                                                        within(1e-9 * Math.abs(x))));
            }
        }
    }
}
