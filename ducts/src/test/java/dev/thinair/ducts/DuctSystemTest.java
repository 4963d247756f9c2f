package dev.thinair.ducts;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.kilopascals;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;

class DuctSystemTest {

    private static double m3(Quantity<VolumeFlow> q) {
        return Si.cubicMetresPerSecond(q, "flow");
    }

    private static double pa(Quantity<javax.measure.quantity.Pressure> p) {
        return Si.pascals(p, "pressure");
    }

    @Test
    void the_house_settles_where_blower_and_ducts_agree() {
        DuctSystem s = Houses.house().build();
        Airflow a = s.solve();
        assertThat(a.steps()).isLessThanOrEqualTo(10);
        assertThat(a.imbalance()).isLessThan(1e-10);
        double in =
                a.runs().stream()
                        .filter(r -> r.isSupply())
                        .mapToDouble(RunFlow::cubicMetresPerSecond)
                        .sum();
        double out =
                a.runs().stream()
                        .filter(r -> !r.isSupply())
                        .mapToDouble(RunFlow::cubicMetresPerSecond)
                        .sum();
        assertThat(in + m3(a.supplyLeakage(Place.ATTIC)))
                .isCloseTo(a.cubicMetresPerSecond(), within(1e-12));
        assertThat(out + m3(a.returnLeakage(Place.CRAWL_SPACE)))
                .isCloseTo(a.cubicMetresPerSecond(), within(1e-12));
        // all pressure the blower gives is spent
        assertThat(
                        pa(a.pressureAt(DuctSystem.SUPPLY_PLENUM))
                                - pa(a.pressureAt(DuctSystem.RETURN_PLENUM))
                                + pa(a.filterDrop())
                                + pa(a.coilDrop()))
                .isCloseTo(pa(a.externalStaticPressure()), within(1e-9));
        assertThat(pa(a.filterDrop()))
                .isCloseTo(pa(s.filter().orElseThrow().drop(a.actual())), within(1e-9));
        assertThat(pa(a.coilDrop()))
                .isCloseTo(pa(s.coil().orElseThrow().drop(a.actual())), within(1e-9));
        // and the flow is what its table says for that pressure: between the rows for 0.6 and 0.8
        // in.
        assertThat(a.cubicMetresPerSecond())
                .isBetween(m3(cubicFeetPerMinute(1030)), m3(cubicFeetPerMinute(1200)));
        assertThat(a.watts())
                .isCloseTo(
                        a.cubicMetresPerSecond() * pa(a.externalStaticPressure()) / 0.16,
                        within(1e-9));
    }

    @Test
    void with_the_same_blower_thin_air_keeps_the_volume_and_loses_the_mass() {
        DuctSystem s = Houses.house().build();
        MoistAir low =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        celsius(20), percent(40), pascals(StandardAtmosphere.pressure(0)));
        MoistAir high = low.atPressure(pascals(StandardAtmosphere.pressure(2_194.56)));
        Airflow a = s.solve(low);
        Airflow b = s.solve(high);
        double ratio = b.density / a.density;
        assertThat(ratio).isBetween(0.75, 0.78);
        double volume = b.cubicMetresPerSecond() / a.cubicMetresPerSecond();
        // a few per cent at 7,200 ft; the reference network N3 gives 0.986, N3F 0.964
        assertThat(volume).isBetween(0.95, 0.999);
        assertThat(b.kilogramsPerSecond() / a.kilogramsPerSecond())
                .isCloseTo(volume * ratio, within(1e-12));
        assertThat(m3(b.standard()) * StandardAir.DENSITY)
                .isCloseTo(b.kilogramsPerSecond(), within(1e-12));
    }

    @Test
    void closing_registers_lowers_the_total_less_than_in_proportion() {
        DuctSystem s = Houses.house().build();
        Airflow open = s.solve();
        DuctSystem t =
                s.withRegisterShut("run 2").withRegisterShut("run 5").withRegisterShut("run 7");
        Airflow shut = t.solve();
        double total = shut.cubicMetresPerSecond() / open.cubicMetresPerSecond();
        assertThat(total).isBetween(0.8, 0.97);
        assertThat(shut.run("run 1").cubicMetresPerSecond())
                .isGreaterThan(1.1 * open.run("run 1").cubicMetresPerSecond());
        assertThat(shut.run("run 2").cubicMetresPerSecond())
                .isLessThan(0.3 * open.run("run 2").cubicMetresPerSecond())
                .isGreaterThan(0);
        assertThat(pa(shut.externalStaticPressure()))
                .isGreaterThan(pa(open.externalStaticPressure()));
        assertThat(t.withRegistersOpened().solve().cubicMetresPerSecond())
                .isEqualTo(open.cubicMetresPerSecond());
        assertThat(t.withRegisterOpened("run 2").solve().cubicMetresPerSecond())
                .isBetween(shut.cubicMetresPerSecond(), open.cubicMetresPerSecond());
        assertThat(
                        s.withRegister("run 1", s.register("run 1").partlyOpen(percent(50)))
                                .solve()
                                .run("run 1")
                                .cubicMetresPerSecond())
                .isLessThan(open.run("run 1").cubicMetresPerSecond());
    }

    @Test
    void a_register_shut_tight_carries_nothing() {
        DuctSystem s = Houses.house().build();
        Register tight = s.register("run 3").withLeakWhenShut(percent(0)).shut();
        Airflow a = s.withRegister("run 3", tight).solve();
        assertThat(a.run("run 3").cubicMetresPerSecond()).isZero();
        assertThat(a.imbalance()).isLessThan(1e-10);
    }

    @Test
    void each_changed_copy_changes_what_it_says() {
        DuctSystem s = Houses.house().build();
        double base = s.solve().cubicMetresPerSecond();
        Filter f = s.filter().orElseThrow();
        assertThat(s.withFilter(f.loaded(3)).solve().cubicMetresPerSecond()).isLessThan(base);
        assertThat(s.withFilter(f.loaded(3).cleaned()).solve().cubicMetresPerSecond())
                .isEqualTo(base);
        assertThat(s.withFilter(f.withFaceArea(2)).solve().cubicMetresPerSecond())
                .isGreaterThan(base);
        assertThat(s.withoutFilter().solve().cubicMetresPerSecond()).isGreaterThan(base);
        assertThat(s.withCoil(s.coil().orElseThrow().dry()).solve().cubicMetresPerSecond())
                .isGreaterThan(base);
        assertThat(s.withCoil(s.coil().orElseThrow().fouled(2)).solve().cubicMetresPerSecond())
                .isLessThan(base);
        assertThat(s.withBlowerSpeed("low").solve().cubicMetresPerSecond()).isLessThan(base);
        DuctSystem more = s.withAddedRuns(2, inches(7), feet(15), "B", "living");
        assertThat(more.solve().cubicMetresPerSecond()).isGreaterThan(base);
        assertThat(more.runNames()).contains("added run 1", "added run 2");
        assertThat(more.withAddedRuns(1, inches(6), feet(9), "A", "den").runNames())
                .contains("added run 3");
        assertThat(
                        s.withReturnEnlarged("den return", DuctShape.round(inches(14)))
                                .solve()
                                .cubicMetresPerSecond())
                .isGreaterThan(base);
        assertThat(s.withDuct("trunk 1", Houses.trunk(28, 8, 10)).solve().cubicMetresPerSecond())
                .isGreaterThan(base);
        assertThat(s.withoutLeaks().solve().supplyLeakFraction()).isZero();
        assertThat(s.solve().cubicMetresPerSecond()).isEqualTo(base);
    }

    @Test
    void a_closed_door_costs_its_room_air() {
        DuctSystem s = Houses.house().build();
        Airflow open = s.solve();
        DuctSystem t =
                s.toBuilder().transfer("bed 3", TransferPath.ofArea(squareMetres(0.006))).build();
        Airflow shut = t.solve();
        assertThat(m3(shut.supplyTo("bed 3"))).isLessThan(0.9 * m3(open.supplyTo("bed 3")));
        double q = m3(shut.supplyTo("bed 3"));
        assertThat(pa(shut.pressureAt("bed 3")))
                .isCloseTo(StandardAir.DENSITY / 2 * Math.pow(q / (0.6 * 0.006), 2), within(1e-6));
        assertThat(shut.imbalance()).isLessThan(1e-10);
    }

    @Test
    void stack_pressure_in_the_attic_drives_the_leak() {
        Airflow calm = Houses.house().build().solve();
        Airflow pulled = Houses.house().placePressure(Place.ATTIC, pascals(-5)).build().solve();
        assertThat(m3(pulled.supplyLeakage(Place.ATTIC)))
                .isGreaterThan(m3(calm.supplyLeakage(Place.ATTIC)));
        double dp = pa(pulled.pressureAt(DuctSystem.SUPPLY_PLENUM)) + 5;
        assertThat(m3(pulled.supplyLeakage(Place.ATTIC)))
                .isCloseTo(m3(cubicFeetPerMinute(40)) * Math.pow(dp / 25, 0.6), within(1e-9));
    }

    /** Ducts meet a faster blower at flows nearly in proportion. */
    @Test
    void a_faster_blower_follows_the_fan_laws() {
        Blower half = Houses.blower().withSpeedRatio(percent(50));
        DuctSystem s =
                Houses.house().build().withoutFilter().withoutLeaks().withBlower(Houses.blower());
        Airflow a = s.solve();
        Airflow b = s.withBlower(half).solve();
        // friction factors rise at the lower Reynolds number, and the coil is partly viscous
        assertThat(b.cubicMetresPerSecond() / a.cubicMetresPerSecond()).isBetween(0.47, 0.5);
        double pa = Si.pascals(a.externalStaticPressure(), "static");
        double pb = Si.pascals(b.externalStaticPressure(), "static");
        assertThat(pb / pa).isBetween(0.25, 0.3);
        Blower.Builder table = Blower.builder().speed("only");
        table.point(pascals(50), cubicFeetPerMinute(1000), Units.watts(400));
        table.point(pascals(150), cubicFeetPerMinute(800), Units.watts(350));
        Blower fast = table.build().withSpeedRatio(percent(120));
        double q = Si.cubicMetresPerSecond(cubicFeetPerMinute(1200), "flow");
        assertThat(fast.running().curve.pressureAt(q)).isCloseTo(50 * 1.44, within(1e-9));
        assertThat(fast.powerSi(q, 72, 1)).isCloseTo(400 * 1.728, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Houses.blower().withSpeedRatio(percent(5)))
                .withMessageContaining("speed ratio");
    }

    @Test
    void a_run_says_its_velocity_pressure() {
        Airflow a = Houses.house().build().solve();
        double v = Si.metresPerSecond(a.run("run 1").velocity(), "velocity");
        assertThat(Si.pascals(a.run("run 1").velocityPressure(), "velocity pressure"))
                .isCloseTo(StandardAir.DENSITY * v * v / 2, within(1e-12));
    }

    /** Warm air rises by itself; what a riser gains, its trunk passes on to the runs behind it. */
    @Test
    void stack_effect_helps_the_riser_and_what_lies_behind_it() {
        DuctSystem still = Houses.house().build();
        DuctSystem riser =
                Houses.house()
                        .stackPressure("trunk 3", pascals(3))
                        .stackPressure("hall return", pascals(-2))
                        .build();
        Airflow a = still.solve();
        Airflow b = riser.solve();
        assertThat(b.run("run 6").cubicMetresPerSecond())
                .isGreaterThan(a.run("run 6").cubicMetresPerSecond());
        assertThat(b.run("run 1").cubicMetresPerSecond())
                .isLessThan(a.run("run 1").cubicMetresPerSecond());
        assertThat(b.run("hall return").cubicMetresPerSecond())
                .isLessThan(a.run("hall return").cubicMetresPerSecond());
        // the laws of the parts themselves stay: what is left of the pressure is their loss
        double q = Si.cubicMetresPerSecond(b.trunk("trunk 3"), "flow");
        int branch = riser.network().branch("trunk 3");
        double loss = riser.network().loss(branch, q, StandardAir.DENSITY, StandardAir.VISCOSITY);
        double drop = Si.pascals(b.pressureAt("B"), "B") - Si.pascals(b.pressureAt("C"), "C");
        assertThat(drop + 3).isCloseTo(loss, within(1e-8));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Houses.house().stackPressure("chimney", pascals(3)))
                .withMessageContaining("chimney");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Houses.house().stackPressure("trunk 3", pascals(300)))
                .withMessageContaining("stack pressure of trunk 3");
    }

    @Test
    void a_constant_airflow_motor_holds_until_its_limit() {
        Blower volume =
                Blower.builder()
                        .constantAirflow("comfort", cubicFeetPerMinute(1100), Blower.Holds.VOLUME)
                        .point(inchesOfWater(0.3), cubicFeetPerMinute(1400))
                        .point(inchesOfWater(0.6), cubicFeetPerMinute(1250))
                        .point(inchesOfWater(0.9), cubicFeetPerMinute(900))
                        .point(inchesOfWater(1.2), cubicFeetPerMinute(500))
                        .efficiency(percent(30))
                        .build();
        DuctSystem s = Houses.house().build().withBlower(volume);
        Airflow a = s.solve();
        assertThat(a.isMotorAtLimit()).isFalse();
        assertThat(a.cubicMetresPerSecond()).isCloseTo(m3(cubicFeetPerMinute(1100)), within(1e-12));
        // volume held: mass falls with density
        Airflow thin = s.solve(0.9, 1.8e-5);
        assertThat(thin.cubicMetresPerSecond()).isCloseTo(a.cubicMetresPerSecond(), within(1e-12));
        // choked ducts: the limit
        Airflow choked =
                s.withFilter(Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.9), percent(60)))
                        .solve();
        assertThat(choked.isMotorAtLimit()).isTrue();
        assertThat(choked.cubicMetresPerSecond()).isLessThan(m3(cubicFeetPerMinute(1100)));
        assertThat(choked.imbalance()).isLessThan(1e-10);
    }

    @Test
    void a_motor_that_holds_mass_meets_its_limit_in_thin_air() {
        Blower mass =
                Blower.builder()
                        .constantAirflow("comfort", cubicFeetPerMinute(1000), Blower.Holds.MASS)
                        .point(inchesOfWater(0.3), cubicFeetPerMinute(1400))
                        .point(inchesOfWater(0.6), cubicFeetPerMinute(1250))
                        .point(inchesOfWater(0.9), cubicFeetPerMinute(900))
                        .point(inchesOfWater(1.2), cubicFeetPerMinute(500))
                        .build();
        DuctSystem s = Houses.house().build().withBlower(mass);
        Airflow a = s.solve();
        Airflow b = s.solve(0.9 * StandardAir.DENSITY, 1.8e-5);
        assertThat(b.isMotorAtLimit()).isFalse();
        assertThat(b.kilogramsPerSecond()).isCloseTo(a.kilogramsPerSecond(), within(1e-12));
        assertThat(pa(b.externalStaticPressure())).isGreaterThan(pa(a.externalStaticPressure()));
        assertThat(s.solve(0.72 * StandardAir.DENSITY, 1.8e-5).isMotorAtLimit()).isTrue();
        assertThatThrownBy(a::blowerPower)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("efficiency");
    }

    @Test
    void the_blower_says_which_end_of_its_table_was_passed() {
        DuctSystem s = Houses.house().build();
        DuctSystem choked =
                s.withFilter(Filter.of(cubicFeetPerMinute(1000), inchesOfWater(9), percent(50)));
        assertThatThrownBy(choked::solve)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("high-pressure end")
                .hasMessageContaining("\"high\"");
        Blower small =
                Blower.builder()
                        .speed("only")
                        .point(inchesOfWater(0.5), cubicFeetPerMinute(300))
                        .point(inchesOfWater(0.8), cubicFeetPerMinute(200))
                        .build();
        assertThatThrownBy(() -> s.withBlower(small).solve())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("low-pressure end");
    }

    @Test
    void power_is_read_from_the_table_and_falls_with_density() {
        Blower b =
                Blower.builder()
                        .speed("high")
                        .point(inchesOfWater(0.1), cubicFeetPerMinute(1500), Units.watts(600))
                        .point(inchesOfWater(0.6), cubicFeetPerMinute(1200), Units.watts(520))
                        .point(inchesOfWater(1.2), cubicFeetPerMinute(400), Units.watts(380))
                        .build();
        DuctSystem s = Houses.house().build().withBlower(b);
        Airflow a = s.solve();
        double q = a.cubicMetresPerSecond() / m3(cubicFeetPerMinute(1));
        double expected = q >= 1200 ? 520 + 80 * (q - 1200) / 300 : 380 + 140 * (q - 400) / 800;
        assertThat(a.watts()).isCloseTo(expected, within(1e-6));
        assertThat(b.knowsPower()).isTrue();
        assertThat(s.solve(0.9, 1.82e-5).watts()).isLessThan(a.watts());
    }

    @Test
    void shares_of_design_and_advice_are_given() {
        DuctSystem s = Houses.house().designFlow("run 1", cubicFeetPerMinute(100)).build();
        Airflow a = s.solve();
        RunFlow r = a.run("run 1");
        assertThat(r.shareOfDesign().getAsDouble())
                .isCloseTo(m3(r.standard()) / m3(cubicFeetPerMinute(100)), within(1e-12));
        assertThat(a.run("run 2").shareOfDesign()).isEmpty();
        assertThat(a.advice()).isNotEmpty();
        assertThat(a.advice())
                .allSatisfy(
                        v ->
                                assertThat(Si.metresPerSecond(v.velocity(), "v"))
                                        .isGreaterThan(Si.metresPerSecond(v.limit(), "v")));
        assertThat(a.advice().get(0).toString()).contains("ft/min");
        assertThat(a.toString()).contains("cfm actual");
        assertThat(r.toString()).contains("run 1");
    }

    @Test
    void the_typed_layer_gives_what_the_kernel_gives() {
        DuctSystem s = Houses.house().build();
        MoistAir air =
                MoistAir.ofDryBulbAndRelativeHumidity(celsius(24), percent(50), kilopascals(80));
        Airflow a = s.solve(air);
        Airflow b =
                s.solve(
                        Si.kilogramsPerCubicMetre(air.density(), "density"),
                        Si.pascalSeconds(air.viscosity(), "viscosity"));
        assertThat(a.cubicMetresPerSecond()).isEqualTo(b.cubicMetresPerSecond());
        assertThat(m3(a.actual())).isEqualTo(a.cubicMetresPerSecond());
    }
}
