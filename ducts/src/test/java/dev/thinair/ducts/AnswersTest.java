package dev.thinair.ducts;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.feetPerMinute;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.kelvins;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Capacity, retrofit, sizing, elevation, heat along the ducts, shown work. */
class AnswersTest {

    private static final double CFM = 4.719474432e-4;

    private static double tons(javax.measure.Quantity<javax.measure.quantity.Power> p) {
        return Si.watts(p, "capacity") / (12_000 * 0.29307107017222);
    }

    @Test
    void capacity_is_standard_airflow_over_what_a_ton_wants() {
        Airflow a = Houses.house().build().solve(0.93, 1.82e-5);
        double scfm = Si.cubicMetresPerSecond(a.standard(), "flow") / CFM;
        assertThat(tons(Capacity.largest(a, Capacity.FULL))).isCloseTo(scfm / 400, within(1e-9));
        assertThat(tons(Capacity.largest(a, Capacity.MIDDLE))).isCloseTo(scfm / 350, within(1e-9));
        assertThat(tons(Capacity.largest(a, Capacity.LOW))).isCloseTo(scfm / 300, within(1e-9));
    }

    @Test
    void capacity_falls_with_elevation_by_about_the_density() {
        List<Capacity> all =
                Capacity.byElevation(
                        Houses.house().build(),
                        celsius(15),
                        percent(60),
                        List.of(metres(0), metres(1_500), metres(2_200), metres(2_500)));
        assertThat(all).hasSize(4);
        for (int i = 1; i < 4; i++) {
            assertThat(tons(all.get(i).at(Capacity.FULL)))
                    .isLessThan(tons(all.get(i - 1).at(Capacity.FULL)));
        }
        double loss = 1 - tons(all.get(2).at(Capacity.FULL)) / tons(all.get(0).at(Capacity.FULL));
        assertThat(loss).isBetween(0.23, 0.28);
        assertThat(all.get(2).toString()).contains("tons");
    }

    @Test
    void elevation_is_told_in_volume_mass_and_pressure() {
        ElevationComparison c =
                ElevationComparison.of(
                        Houses.house().build(),
                        celsius(20),
                        percent(40),
                        List.of(metres(0), metres(1_500), metres(2_200), metres(2_500)));
        ElevationComparison.Row first = c.rows().get(0);
        assertThat(first.volumeRatio()).isEqualTo(1);
        assertThat(first.heatRatio()).isEqualTo(1);
        for (ElevationComparison.Row r : c.rows()) {
            assertThat(r.volumeRatio()).isBetween(0.95, 1.0);
            assertThat(r.massRatio())
                    .isCloseTo(
                            r.volumeRatio() * r.airflow().density / first.airflow().density,
                            within(1e-12));
            assertThat(r.airPowerRatio())
                    .isCloseTo(r.volumeRatio() * r.pressureRatio(), within(1e-12));
            // humidity ratio rises a little with elevation at the same relative humidity
            assertThat(r.heatRatio()).isCloseTo(r.massRatio(), within(0.01));
        }
        assertThat(c.rows().get(2).massRatio()).isBetween(0.72, 0.77);
        assertThat(c.verdict()).contains("volume").contains("mass");
        assertThat(Si.watts(first.sensibleHeat(Units.celsiusDifference(10)), "heat")).isPositive();
    }

    private static Retrofit.Builder search(DuctSystem s, double scfm) {
        return Retrofit.of(s, cubicFeetPerMinute(scfm))
                .air(0.93, 1.82e-5)
                .addedRuns(
                        8,
                        List.of(inches(5), inches(6), inches(7), inches(8)),
                        feet(15),
                        List.of(),
                        "living")
                .trunk("trunk 1", DuctShape.rectangular(inches(24), inches(8)))
                .trunk("trunk 1", DuctShape.rectangular(inches(28), inches(8)))
                .enlargedReturn("den return", DuctShape.round(inches(14)))
                .addedReturn(
                        "new return",
                        "living",
                        DuctSystem.RETURN_PLENUM,
                        Duct.of(DuctShape.round(inches(12)), feet(15), DuctMaterial.GALVANIZED)
                                .withLossCoefficient(1),
                        Register.of(inches(20), inches(12)))
                .filter(Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.08), percent(60)));
    }

    @Test
    void the_retrofit_options_reach_the_target_and_nothing_smaller_does() {
        DuctSystem s = Houses.house().build();
        double target = 920 * CFM;
        Retrofit.Result r = search(s, 920).keep(6, 10).search();
        assertThat(Si.cubicMetresPerSecond(r.before().standard(), "q")).isLessThan(target);
        assertThat(r.options()).hasSize(6);
        double last = 0;
        for (Retrofit.Option o : r.options()) {
            assertThat(Si.cubicMetresPerSecond(o.airflow().standard(), "q"))
                    .isGreaterThanOrEqualTo(target);
            assertThat(o.effort()).isGreaterThanOrEqualTo(last);
            assertThat(o.airflow().cubicMetresPerSecond())
                    .isEqualTo(o.system().solve(0.93, 1.82e-5).cubicMetresPerSecond());
            last = o.effort();
            assertThat(o.changes()).isNotEmpty();
            assertThat(o.toString()).contains("effort");
        }
        assertThat(r.best()).isSameAs(r.options().get(0));
    }

    @Test
    void the_best_option_is_as_cheap_as_an_exhaustive_search_finds() {
        DuctSystem s = Houses.house().build();
        double target = 905 * CFM;
        Retrofit.Result r =
                Retrofit.of(s, cubicFeetPerMinute(905))
                        .air(0.93, 1.82e-5)
                        .addedRuns(4, List.of(inches(6), inches(8)), feet(15), List.of(), "living")
                        .filter(
                                Filter.of(
                                        cubicFeetPerMinute(1000), inchesOfWater(0.1), percent(60)))
                        .keep(1, 10)
                        .search();
        double cheapest = Double.POSITIVE_INFINITY;
        for (int withFilter = 0; withFilter <= 1; withFilter++) {
            DuctSystem t =
                    withFilter == 1
                            ? s.withFilter(
                                    Filter.of(
                                            cubicFeetPerMinute(1000),
                                            inchesOfWater(0.1),
                                            percent(60)))
                            : s;
            for (String node : s.supplyNodes()) {
                for (int d : new int[] {6, 8}) {
                    for (int n = 0; n <= 4; n++) {
                        DuctSystem u =
                                n == 0
                                        ? t
                                        : t.withAddedRuns(n, inches(d), feet(15), node, "living");
                        double q = Si.cubicMetresPerSecond(u.solve(0.93, 1.82e-5).standard(), "q");
                        if (q >= target) {
                            cheapest = Math.min(cheapest, withFilter + n);
                        }
                    }
                }
            }
        }
        assertThat(r.best().effort()).isEqualTo(cheapest);
    }

    @Test
    void a_target_met_already_needs_no_change_and_an_impossible_one_is_said() {
        DuctSystem s = Houses.house().build();
        Retrofit.Result easy = search(s, 700).search();
        assertThat(easy.best().changes()).isEmpty();
        Retrofit.Result never =
                Retrofit.of(s, cubicFeetPerMinute(1_500))
                        .addedRuns(2, List.of(inches(5)), feet(15), List.of("A"), "living")
                        .search();
        assertThat(never.options()).isEmpty();
        assertThatThrownBy(never::best)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("none of the changes");
    }

    private static DuctSystem toSize() {
        DuctSystem.Builder b = Houses.house().build().withoutLeaks().toBuilder();
        double[] cfm = {120, 110, 140, 130, 60, 120, 110, 110};
        for (int i = 0; i < cfm.length; i++) {
            b.designFlow("run " + (i + 1), cubicFeetPerMinute(cfm[i]));
        }
        return b.build();
    }

    @Test
    void equal_friction_gives_every_duct_the_rate_before_rounding() {
        Sizing.Result r =
                Sizing.of(toSize())
                        .equalFriction(Units.quantity(0.08, Units.INCH_OF_WATER_PER_HUNDRED_FEET));
        double rate = 0.08 * 249.08891 / 30.48;
        for (Sizing.Sized d : r.ducts()) {
            double q = Si.cubicMetresPerSecond(d.designFlow(), "q");
            double exact = Si.metres(d.exactDiameter(), "d");
            assertThat(
                            dev.thinair.ducts.kernel.Friction.lossPerLength(
                                    q / (Math.PI / 4 * exact * exact),
                                    exact,
                                    0.0003 * 0.3048,
                                    StandardAir.DENSITY,
                                    StandardAir.VISCOSITY))
                    .as(d.name())
                    .isCloseTo(rate, within(1e-10));
            // nominal is larger, so it loses less (rectangles by their hydraulic diameter: +0.6 %)
            assertThat(Si.pascalsPerMetre(d.frictionRate(), "r")).isLessThan(rate * 1.01);
        }
        assertThat(r.ducts()).anySatisfy(d -> assertThat(d.name()).isEqualTo("trunk 1"));
    }

    @Test
    void a_balanced_system_delivers_its_design_flows() {
        Sizing.Result r =
                Sizing.of(toSize())
                        .equalFriction(Units.quantity(0.08, Units.INCH_OF_WATER_PER_HUNDRED_FEET));
        Blower exact =
                Blower.builder()
                        .constantAirflow("design", cubicFeetPerMinute(900), Blower.Holds.VOLUME)
                        .point(inchesOfWater(0.01), cubicFeetPerMinute(2000))
                        .point(inchesOfWater(4), cubicFeetPerMinute(100))
                        .build();
        Airflow a = r.balanced().withBlower(exact).solve();
        for (RunFlow f : a.runs()) {
            if (f.isSupply()) {
                assertThat(f.shareOfDesign().getAsDouble()).as(f.name()).isCloseTo(1, within(1e-9));
            }
        }
        assertThat(Si.pascals(a.externalStaticPressure(), "p"))
                .isCloseTo(Si.pascals(r.externalStatic(), "p"), within(1e-6));
        assertThat(r.damperCoefficients().get(r.worstSupply())).isZero();
        assertThat(r.damperCoefficients().values()).allMatch(c -> c >= 0);
    }

    @Test
    void a_static_budget_is_just_used_up_before_rounding() {
        Sizing.Result r = Sizing.of(toSize()).staticBudget(pascals(60));
        // rounding up to nominal sizes leaves some of it
        assertThat(Si.pascals(r.ductLoss(), "p")).isLessThan(60).isGreaterThan(25);
        Sizing.Result less = Sizing.of(toSize()).staticBudget(pascals(40));
        assertThat(Si.pascalsPerMetre(less.frictionRate(), "r"))
                .isLessThan(Si.pascalsPerMetre(r.frictionRate(), "r"));
        assertThatThrownBy(() -> Sizing.of(toSize()).staticBudget(pascals(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leave nothing");
    }

    @Test
    void velocity_limits_bind() {
        Sizing.Result r =
                Sizing.of(toSize())
                        .withVelocityLimits(
                                feetPerMinute(600), feetPerMinute(450), feetPerMinute(400))
                        .equalFriction(Units.quantity(0.2, Units.INCH_OF_WATER_PER_HUNDRED_FEET));
        for (Sizing.Sized d : r.ducts()) {
            double limit =
                    d.name().startsWith("trunk") ? 600 : d.name().startsWith("run") ? 450 : 400;
            assertThat(Si.metresPerSecond(d.velocity(), "v"))
                    .as(d.name())
                    .isLessThanOrEqualTo(limit * 0.00508);
        }
    }

    private static DuctSystem oneDuct() {
        return DuctSystem.builder()
                .blower(Houses.blower())
                .supplyRun(
                        "supply",
                        DuctSystem.SUPPLY_PLENUM,
                        "room",
                        Duct.of(DuctShape.round(inches(14)), feet(40), DuctMaterial.GALVANIZED)
                                .in(Place.ATTIC)
                                .withInsulation(
                                        Units.quantity(0.7, Units.SQUARE_METRE_KELVIN_PER_WATT)),
                        Register.of(inches(20), inches(12)))
                .returnRun(
                        "return",
                        "room",
                        DuctSystem.RETURN_PLENUM,
                        Duct.of(DuctShape.round(inches(16)), feet(20), DuctMaterial.GALVANIZED)
                                .in(Place.ATTIC)
                                .withInsulation(
                                        Units.quantity(0.5, Units.SQUARE_METRE_KELVIN_PER_WATT)),
                        Register.of(inches(24), inches(20)))
                .leak(
                        DuctSystem.SUPPLY_PLENUM,
                        DuctLeak.at25Pascals(cubicFeetPerMinute(60), Place.ATTIC))
                .leak(
                        DuctSystem.RETURN_PLENUM,
                        DuctLeak.at25Pascals(cubicFeetPerMinute(60), Place.ATTIC))
                .build();
    }

    @Test
    void following_the_air_agrees_with_the_standard_formula_where_both_mean_the_same() {
        DuctSystem s = oneDuct();
        Airflow a = s.solve();
        MoistAir indoor =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        celsius(24), percent(45), Units.kilopascals(101.325));
        DuctHeat h = DuctHeat.of(s, a, indoor, celsius(13), Map.of(Place.ATTIC, celsius(50)));
        assertThat(h.deliveryEffectiveness()).isBetween(0.4, 0.95);
        assertThat(h.standardDeliveryEffectiveness())
                .isCloseTo(h.deliveryEffectiveness(), within(1e-9));
        assertThat(Si.kelvins(h.leaving("supply"), "t")).isBetween(286.15, 323.15);
        assertThat(Si.watts(h.supplyGain(), "q")).isPositive();
        assertThat(Si.watts(h.returnGain(), "q")).isPositive();
        assertThat(Si.watts(h.delivered(), "q")).isNegative();
        assertThat(Si.kelvins(h.mixedReturn(), "t")).isGreaterThan(297.15);
    }

    @Test
    void thin_air_warms_more_on_its_way() {
        DuctSystem s = oneDuct().withoutLeaks();
        MoistAir indoor =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        celsius(24), percent(45), Units.kilopascals(101.325));
        Map<Place, javax.measure.Quantity<javax.measure.quantity.Temperature>> attic =
                Map.of(Place.ATTIC, celsius(50));
        double low =
                Si.kelvins(
                        DuctHeat.of(s, s.solve(1.2, 1.82e-5), indoor, celsius(13), attic)
                                .leaving("supply"),
                        "t");
        double high =
                Si.kelvins(
                        DuctHeat.of(s, s.solve(0.9, 1.82e-5), indoor, celsius(13), attic)
                                .leaving("supply"),
                        "t");
        assertThat(high).isGreaterThan(low);
        assertThatThrownBy(() -> DuctHeat.of(s, s.solve(), indoor, celsius(13), Map.of()))
                .hasMessageContaining("temperature of the attic");
        assertThat(
                        DuctHeat.of(
                                        s,
                                        s.solve(),
                                        indoor,
                                        celsius(24),
                                        Map.of(Place.ATTIC, celsius(24)))
                                .toString())
                .contains("plenum");
    }

    @Test
    void heat_follows_trunks_and_mixes_at_nodes() {
        DuctSystem s = Houses.house().build();
        Airflow a = s.solve();
        MoistAir indoor =
                MoistAir.ofDryBulbAndRelativeHumidity(
                        celsius(24), percent(45), Units.kilopascals(101.325));
        DuctHeat h =
                DuctHeat.of(
                        s,
                        a,
                        indoor,
                        celsius(13),
                        Map.of(Place.ATTIC, celsius(50), Place.CRAWL_SPACE, celsius(22)));
        double t1 = Si.kelvins(h.leaving("trunk 1"), "t");
        double t3 = Si.kelvins(h.leaving("trunk 3"), "t");
        assertThat(t1).isGreaterThan(286.15).isLessThan(t3);
        assertThat(Si.kelvins(h.leaving("run 8"), "t")).isGreaterThan(t3);
        // energy: what reaches the rooms is the plenum's heat, less the leak, plus the gain
        double cp = 1006 + 1860 * indoor.humidityRatioNumber();
        cp = cp / (1 + indoor.humidityRatioNumber());
        double kept = a.cubicMetresPerSecond() * (1 - a.supplyLeakFraction()) * a.density;
        double expected = kept * cp * (286.15 - 297.15) + Si.watts(h.supplyGain(), "q");
        assertThat(Si.watts(h.delivered(), "q"))
                .isCloseTo(expected, within(0.002 * Math.abs(expected)));
    }

    @Test
    void workings_end_with_what_the_library_computes() {
        DuctShape round = DuctShape.round(inches(6));
        Working w =
                DuctWorkings.friction(
                        round,
                        DuctMaterial.GALVANIZED,
                        cubicFeetPerMinute(110),
                        Units.quantity(0.0579, Units.POUND_PER_CUBIC_FOOT),
                        Units.quantity(1.82e-5, Units.PASCAL_SECOND));
        // reference case DUCT-PRESS-014
        assertThat(w.result().getValue().doubleValue()).isCloseTo(0.655345862, within(6.6e-8));
        for (Working.Step s : w.steps()) {
            s.recomputed()
                    .ifPresent(
                            x ->
                                    assertThat(x)
                                            .isCloseTo(
                                                    s.result().getValue().doubleValue(),
                                                    within(1e-12 * Math.abs(x))));
        }
        Working d =
                DuctWorkings.deratingAtSamePressureDrop(
                        inches(6),
                        DuctMaterial.GALVANIZED,
                        cubicFeetPerMinute(110),
                        Units.quantity(
                                0.771629 * StandardAir.DENSITY, Units.KILOGRAM_PER_CUBIC_METRE),
                        Units.quantity(1.82e-5, Units.PASCAL_SECOND));
        // reference case DUCT-ALT-018
        assertThat(d.result().getValue().doubleValue()).isCloseTo(0.86610325, within(2e-6));
        assertThat(
                        DuctWorkings.equivalentDiameter(
                                        DuctShape.rectangular(inches(8), inches(20)))
                                .result()
                                .getValue()
                                .doubleValue())
                .isCloseTo(13.4812087513 * 0.0254, within(1e-11));
        assertThat(
                        DuctWorkings.fittingLoss(
                                        Fitting.ofCoefficient("elbow", 0.22, "a table"),
                                        round,
                                        cubicFeetPerMinute(110),
                                        Units.quantity(1.2, Units.KILOGRAM_PER_CUBIC_METRE))
                                .toText())
                .contains("elbow");
        Airflow a = Houses.house().build().solve();
        assertThat(a.working().result()).isEqualTo(a.standard());
        assertThat(a.working().toHtml()).contains("Operating point");
        assertThat(kelvins(300)).isNotNull();
    }

    /**
     * The table "how much less does a six-inch duct carry at elevation" by the library's own calls.
     */
    @Test
    void a_six_inch_duct_carries_less_mass_but_more_volume_at_the_same_pressure_drop() {
        double[] ratio = {0.832048, 0.801378, 0.771629, 0.742782};
        double[] volume = {1.0854294, 1.1037173, 1.1224342, 1.1415931};
        double d = 6 * 0.0254;
        double area = Math.PI / 4 * d * d;
        double e = 0.0003 * 0.3048;
        double rate =
                dev.thinair.ducts.kernel.Friction.lossPerLength(
                        110 * CFM / area, d, e, StandardAir.DENSITY, 1.82e-5);
        for (int i = 0; i < ratio.length; i++) {
            double q =
                    dev.thinair.ducts.kernel.FrictionChart.flow(
                            d, rate, e, ratio[i] * StandardAir.DENSITY, 1.82e-5);
            assertThat(q / (110 * CFM)).isCloseTo(volume[i], within(2e-6));
        }
    }
}
