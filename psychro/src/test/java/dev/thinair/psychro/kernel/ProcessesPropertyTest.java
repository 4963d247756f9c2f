package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(States.class)
@Domain(DomainContext.Global.class)
class ProcessesPropertyTest {

    private static final AirModel IDEAL = AirModel.IDEAL;

    @Property(tries = 1500)
    void mixing_conserves_water_and_energy_and_reports_fog(
            @ForAll States.State a,
            @ForAll States.State b,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(4) double share) {
        double p = a.pressure();
        Assume.that(IdealMoistAir.relativeHumidity(b.dryBulb(), b.humidityRatio(), p) <= 1);
        AirPoint mix =
                Mixing.adiabatic(
                        IDEAL,
                        share,
                        a.dryBulb(),
                        a.humidityRatio(),
                        1 - share,
                        b.dryBulb(),
                        b.humidityRatio(),
                        p);
        double water = share * a.humidityRatio() + (1 - share) * b.humidityRatio();
        double h1 = IdealMoistAir.enthalpy(a.dryBulb(), a.humidityRatio());
        double h2 = IdealMoistAir.enthalpy(b.dryBulb(), b.humidityRatio());
        double enthalpy = share * h1 + (1 - share) * h2;
        assertThat(mix.humidityRatio() + mix.liquid() + mix.ice())
                .isCloseTo(water, within(1e-12 * water));
        double carried =
                IdealMoistAir.enthalpy(mix.dryBulb(), mix.humidityRatio())
                        + (mix.liquid() > 0
                                ? mix.liquid() * IdealMoistAir.liquidEnthalpy(mix.dryBulb())
                                : 0)
                        + (mix.ice() > 0
                                ? mix.ice() * IdealMoistAir.iceEnthalpy(mix.dryBulb())
                                : 0);
        double scale = Math.abs(h1) + Math.abs(h2) + 1000;
        assertThat(carried).isCloseTo(enthalpy, within(1e-12 * scale));
        double rh = IdealMoistAir.relativeHumidity(mix.dryBulb(), mix.humidityRatio(), p);
        if (mix.isFog()) {
            assertThat(rh).isCloseTo(1, within(2e-4));
            assertThat(mix.dryBulb())
                    .isGreaterThan(IdealMoistAir.dryBulbFromEnthalpy(enthalpy, water));
            assertThat(mix.liquid() > 0 && mix.ice() > 0)
                    .isEqualTo(mix.dryBulb() == 273.15 && mix.ice() > 0 && mix.liquid() > 0);
            if (mix.liquid() > 0) {
                assertThat(mix.dryBulb()).isGreaterThanOrEqualTo(273.15);
            }
            if (mix.ice() > 0) {
                assertThat(mix.dryBulb()).isLessThanOrEqualTo(273.15);
            }
        } else {
            assertThat(rh).isLessThanOrEqualTo(1 + 2e-12);
        }
    }

    @Property(tries = 1000)
    void mixing_a_stream_with_itself_or_with_nothing_changes_nothing(@ForAll States.State s) {
        AirPoint self =
                Mixing.adiabatic(
                        IDEAL,
                        2,
                        s.dryBulb(),
                        s.humidityRatio(),
                        3,
                        s.dryBulb(),
                        s.humidityRatio(),
                        s.pressure());
        assertThat(self.humidityRatio()).isCloseTo(s.humidityRatio(), within(1e-15));
        assertThat(self.dryBulb()).isCloseTo(s.dryBulb(), within(1e-9));
        AirPoint alone =
                Mixing.adiabatic(
                        IDEAL, 2, s.dryBulb(), s.humidityRatio(), 0, 300, 0.001, s.pressure());
        assertThat(alone.dryBulb()).isCloseTo(s.dryBulb(), within(1e-9));
    }

    @Property(tries = 1500)
    void coil_and_its_inverse_agree(
            @ForAll @DoubleRange(min = 278, max = 318) @Scale(4) double dryBulb,
            @ForAll @DoubleRange(min = 0.05, max = 0.8) @Scale(4) double rh,
            @ForAll @DoubleRange(min = 258, max = 295) @Scale(4) double surface,
            @ForAll @DoubleRange(min = 0, max = 0.6) @Scale(3) double bypass,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(1) double p) {
        Assume.that(surface < dryBulb - 1);
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(dryBulb, rh, p);
        double h = IdealMoistAir.enthalpy(dryBulb, w);
        CoilOutcome outcome = CoolingCoil.leaving(IDEAL, dryBulb, w, surface, bypass, p);
        double fastW = CoolingCoil.leavingHumidityRatio(w, surface, bypass, p);
        double fastH = CoolingCoil.leavingEnthalpy(dryBulb, w, surface, bypass, p);
        double saturated = IdealMoistAir.saturationHumidityRatio(surface, p);
        if (outcome instanceof CoilOutcome.Wet wet) {
            assertThat(saturated).isLessThan(w);
            assertThat(wet.humidityRatio())
                    .isCloseTo(bypass * w + (1 - bypass) * saturated, within(1e-15));
            assertThat(wet.enthalpy())
                    .isCloseTo(
                            bypass * h + (1 - bypass) * IdealMoistAir.enthalpy(surface, saturated),
                            within(1e-9 * Math.abs(h) + 1e-6));
            assertThat(fastW).isCloseTo(wet.humidityRatio(), within(1e-15));
            assertThat(fastH).isCloseTo(wet.enthalpy(), within(1e-7));
            Assume.that(w - wet.humidityRatio() > 1e-5);
            CoilLine line =
                    CoolingCoil.line(IDEAL, dryBulb, w, wet.dryBulb(), wet.humidityRatio(), p);
            CoilLine.Wet found = (CoilLine.Wet) line;
            // The first crossing beyond the leaving state: the surface itself, or a nearer one.
            assertThat(found.apparatusDewPoint()).isGreaterThan(surface - 1e-5);
            double at = IdealMoistAir.saturationHumidityRatio(found.apparatusDewPoint(), p);
            double atH = IdealMoistAir.enthalpy(found.apparatusDewPoint(), at);
            double along = (h - atH) * (w - wet.humidityRatio()) - (w - at) * (h - wet.enthalpy());
            assertThat(along / h).isCloseTo(0, within(1e-9));
            assertThat(found.bypassFactor())
                    .isCloseTo((wet.humidityRatio() - at) / (w - at), within(1e-12));
        } else if (outcome instanceof CoilOutcome.Dry dry) {
            assertThat(saturated).isGreaterThanOrEqualTo(w * (1 - 1e-12));
            assertThat(dry.dryBulb())
                    .isCloseTo(surface + bypass * (dryBulb - surface), within(1e-11));
            assertThat(dry.humidityRatio()).isEqualTo(w);
            assertThat(dry.enthalpy())
                    .isCloseTo(IdealMoistAir.enthalpy(dry.dryBulb(), w), within(1e-9));
            assertThat(fastW).isEqualTo(w);
            assertThat(fastH).isCloseTo(dry.enthalpy(), within(1e-7));
            assertThat(CoolingCoil.line(IDEAL, dryBulb, w, dry.dryBulb(), w, p))
                    .isEqualTo(new CoilLine.Dry(IdealMoistAir.dewPoint(w, p)));
        } else {
            double mixedW = bypass * w + (1 - bypass) * saturated;
            double mixedH = bypass * h + (1 - bypass) * IdealMoistAir.enthalpy(surface, saturated);
            double mixedT = IdealMoistAir.dryBulbFromEnthalpy(mixedH, mixedW);
            assertThat(IdealMoistAir.relativeHumidity(mixedT, mixedW, p)).isGreaterThan(1);
        }
    }

    @Property(tries = 1000)
    void sensible_heat_comes_back_from_the_leaving_state(
            @ForAll States.State s,
            @ForAll @DoubleRange(min = -20_000, max = 20_000) @Scale(2) double heat) {
        double t = s.dryBulb() + heat / IdealMoistAir.specificHeat(s.humidityRatio());
        Assume.that(t > 173.2 && t < 473.1);
        Assume.that(
                heat >= 0
                        || IdealMoistAir.relativeHumidity(t, s.humidityRatio(), s.pressure()) < 1);
        double leaving =
                SensibleHeating.leavingDryBulb(
                        IDEAL, s.dryBulb(), s.humidityRatio(), heat, s.pressure());
        assertThat(leaving).isCloseTo(t, within(1e-9));
    }

    @Property(tries = 1000)
    void evaporative_cooling_keeps_wet_bulb_and_energy(
            @ForAll @DoubleRange(min = 288, max = 340) @Scale(6) double dryBulb,
            @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double rh,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(1) double p,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double effectiveness) {
        States.State s =
                new States.State(
                        dryBulb,
                        IdealMoistAir.humidityRatioFromRelativeHumidity(dryBulb, rh, p),
                        p);
        double wetBulb = IdealMoistAir.wetBulb(s.dryBulb(), s.humidityRatio(), s.pressure());
        Assume.that(wetBulb > 273.16);
        AirPoint out =
                Humidifying.evaporative(
                        IDEAL, s.dryBulb(), s.humidityRatio(), effectiveness, s.pressure());
        assertThat(out.dryBulb())
                .isCloseTo(s.dryBulb() - effectiveness * (s.dryBulb() - wetBulb), within(1e-10));
        double h1 = IdealMoistAir.enthalpy(s.dryBulb(), s.humidityRatio());
        double h2 = IdealMoistAir.enthalpy(out.dryBulb(), out.humidityRatio());
        double added = out.humidityRatio() - s.humidityRatio();
        assertThat(h2 - h1)
                .isCloseTo(
                        added * IdealMoistAir.liquidEnthalpy(wetBulb),
                        within(1e-9 * Math.abs(h1) + 1e-6));
        assertThat(out.isFog()).isFalse();
    }

    @Property(tries = 1000)
    void injection_keeps_water_and_energy(
            @ForAll @DoubleRange(min = 260, max = 330) @Scale(4) double dryBulb,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double rh,
            @ForAll @DoubleRange(min = 0, max = 0.02) @Scale(6) double added,
            @ForAll @DoubleRange(min = 0, max = 2_700_000) @Scale(1) double water) {
        double p = 80_000;
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(dryBulb, rh, p);
        AirPoint out = Humidifying.injection(IDEAL, dryBulb, w, added, water, p);
        assertThat(out.humidityRatio() + out.liquid() + out.ice())
                .isCloseTo(w + added, within(1e-15));
        double carried =
                IdealMoistAir.enthalpy(out.dryBulb(), out.humidityRatio())
                        + (out.liquid() > 0
                                ? out.liquid() * IdealMoistAir.liquidEnthalpy(out.dryBulb())
                                : 0)
                        + (out.ice() > 0
                                ? out.ice() * IdealMoistAir.iceEnthalpy(out.dryBulb())
                                : 0);
        assertThat(carried)
                .isCloseTo(IdealMoistAir.enthalpy(dryBulb, w) + added * water, within(1e-12 * 2e5));
    }

    @Property(tries = 1000)
    void roots_are_found_in_few_steps(
            @ForAll @DoubleRange(min = -3, max = 3) @Scale(6) double root) {
        int[] calls = {0};
        double found =
                Roots.find(
                        "test",
                        x -> {
                            calls[0]++;
                            return Math.exp(x) - Math.exp(root);
                        },
                        -4,
                        4,
                        1e-12);
        assertThat(found).isCloseTo(root, within(1e-11));
        assertThat(calls[0]).isLessThan(25);
    }
}
