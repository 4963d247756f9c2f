package dev.thinair.ducts;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareFeet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.kernel.Leakage;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import org.junit.jupiter.api.Test;

class EffectsTest {

    private static final MoistAir AIR =
            MoistAir.ofDryBulbAndRelativeHumidity(celsius(20), percent(40), kilopascals(78));

    @Test
    void each_shut_register_and_the_dirty_filter_cost_airflow() {
        DuctSystem s = Houses.house().build();
        DuctSystem worn =
                s.withFilter(s.filter().orElseThrow().loaded(2.5))
                        .withRegisterShut("run 1")
                        .withRegister("run 4", s.register("run 4").partlyOpen(percent(30)));
        Effects e = Effects.of(worn, AIR);
        assertThat(e.registers()).hasSize(2);
        assertThat(e.registers()).allSatisfy(x -> assertThat(x.gain()).isGreaterThan(1));
        assertThat(e.filter().orElseThrow().gain()).isGreaterThan(1);
        assertThat(e.allOpen().cubicMetresPerSecond())
                .isGreaterThan(Si.cubicMetresPerSecond(e.registers().get(0).total(), "total"));
        assertThat(Si.cubicMetresPerSecond(e.registers().get(0).run(), "run"))
                .isGreaterThan(e.now().run("run 1").cubicMetresPerSecond());
        assertThat(e.registers().get(0).toString()).contains("run 1");
        assertThat(e.toString()).contains("%");
        Effects none = Effects.of(s, AIR);
        assertThat(none.registers()).isEmpty();
        assertThat(none.filter()).isEmpty();
        assertThat(none.allOpen().cubicMetresPerSecond())
                .isEqualTo(none.now().cubicMetresPerSecond());
    }

    @Test
    void noise_limits_are_the_rows_seen_and_no_others() {
        // DUCT-VEL-001, 004, 011, 014, 019
        assertThat(fpm(NoiseLimits.mainDuct(NoiseLimits.Location.SHAFT_OR_DRYWALL, 45, false)))
                .isCloseTo(3500, within(1e-9));
        assertThat(fpm(NoiseLimits.mainDuct(NoiseLimits.Location.SHAFT_OR_DRYWALL, 25, true)))
                .isCloseTo(2500, within(1e-9));
        assertThat(fpm(NoiseLimits.mainDuct(NoiseLimits.Location.OCCUPIED_SPACE, 25, false)))
                .isCloseTo(950, within(1e-9));
        assertThat(fpm(NoiseLimits.register(22, true))).isCloseTo(350, within(1e-9));
        assertThat(fpm(NoiseLimits.register(38, false))).isCloseTo(690, within(1e-9));
        assertThatThrownBy(() -> NoiseLimits.register(32, true)).hasMessageContaining("rows known");
        assertThatThrownBy(
                        () -> NoiseLimits.mainDuct(NoiseLimits.Location.OCCUPIED_SPACE, 45, true))
                .hasMessageContaining("RC 45");
    }

    private static double fpm(javax.measure.Quantity<javax.measure.quantity.Speed> v) {
        return Si.metresPerSecond(v, "velocity") / 0.00508;
    }

    @Test
    void a_leakage_class_leaks_its_class_at_any_pressure() {
        DuctLeak l = DuctLeak.ofLeakageClass(24, squareFeet(200), Place.ATTIC);
        double area = 200 * 0.09290304;
        for (double p : new double[] {5, 25, 124.5}) {
            assertThat(l.coefficientSi() * Math.pow(p, l.exponent()))
                    .isCloseTo(Leakage.factor(24, p) * area, within(1e-12));
        }
        assertThat(l.toString()).contains("attic");
        assertThat(DuctLeak.at25Pascals(cubicFeetPerMinute(10), Place.ATTIC)).isNotEqualTo(l);
    }
}
