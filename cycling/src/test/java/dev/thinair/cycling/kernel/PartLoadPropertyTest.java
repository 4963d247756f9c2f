package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PartLoadPropertyTest {

    @Property
    void the_implicit_root_satisfies_its_equation_and_stays_in_its_domain(
            @ForAll @DoubleRange(min = 0, max = 3600) @Scale(3) double tau,
            @ForAll @DoubleRange(min = 0.1, max = 20) @Scale(3) double n,
            @ForAll @DoubleRange(min = 1e-6, max = 0.999999) @Scale(6) double clf) {
        double x = PartLoad.implicitRunTimeFraction(tau, n, clf);
        assertThat(x).isBetween(clf, 1.0);
        double plf = PartLoad.implicitPartLoadFactor(tau, n, clf);
        assertThat(x * plf).isCloseTo(clf, within(1e-12));
        assertThat(plf).isBetween(0.0, 1.0);
    }

    @Property
    void more_load_runs_longer_and_loses_less(
            @ForAll @DoubleRange(min = 1, max = 900) @Scale(2) double tau,
            @ForAll @DoubleRange(min = 0.5, max = 10) @Scale(2) double n,
            @ForAll @DoubleRange(min = 0.001, max = 0.98) @Scale(4) double clf) {
        assertThat(PartLoad.implicitRunTimeFraction(tau, n, clf + 0.01))
                .isGreaterThan(PartLoad.implicitRunTimeFraction(tau, n, clf));
        assertThat(PartLoad.implicitPartLoadFactor(tau, n, clf + 0.01))
                .isGreaterThanOrEqualTo(PartLoad.implicitPartLoadFactor(tau, n, clf));
    }

    @Property
    void oversizing_never_saves_cycling_energy_and_starts_peak_at_half_run_time(
            @ForAll @DoubleRange(min = 1, max = 4) @Scale(3) double r,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(3) double f,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double x) {
        assertThat(PartLoad.oversizedEnergyRatio(r, f, 60, 3)).isGreaterThanOrEqualTo(1 - 1e-14);
        assertThat(PartLoad.cycleRate(3, x)).isLessThanOrEqualTo(PartLoad.cycleRate(3, 0.5));
    }

    @Property
    void what_evaporates_never_exceeds_what_the_coil_holds(
            @ForAll @DoubleRange(min = 0, max = 50_000) @Scale(2) double off,
            @ForAll @DoubleRange(min = 1, max = 5_000) @Scale(2) double wet,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(3) double gamma,
            @ForAll @DoubleRange(min = 1, max = 10_000) @Scale(2) double on) {
        double refill = LinearDecayEvaporation.refill(off, wet, gamma);
        assertThat(refill).isBetween(0.0, wet);
        assertThat(LinearDecayEvaporation.refill(off + 10, wet, gamma))
                .isGreaterThanOrEqualTo(refill - 1e-9);
        assertThat(LinearDecayEvaporation.netLatentRatio(60, on, off, wet, gamma))
                .isBetween(0.0, 1.0);
    }

    @Property
    void degree_days_of_heating_and_cooling_differ_by_the_mean_excess(
            @ForAll @DoubleRange(min = 270, max = 310) @Scale(3) double mean,
            @ForAll @DoubleRange(min = 0, max = 15) @Scale(3) double amplitude) {
        double base = 291;
        double cooling = DegreeDays.coolingOfSinusoidalDay(mean, amplitude, base);
        double heating = DegreeDays.heatingOfSinusoidalDay(mean, amplitude, base);
        assertThat(cooling - heating).isCloseTo(mean - base, within(1e-9));
        assertThat(cooling).isGreaterThanOrEqualTo(Math.max(0, mean - base) - 1e-12);
    }
}
