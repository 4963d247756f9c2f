package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import dev.thinair.psychro.kernel.IdealMoistAir;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class UnitModelPropertyTest {

    private static final UnitModel UNIT = UnitModelTest.UNIT.withLowStage(0.35, true);

    private static double moisture(double t, double rh, double p) {
        return Math.min(0.05, IdealMoistAir.humidityRatioFromRelativeHumidity(t, rh, p));
    }

    private static double[] run(double t, double rh, double m, double to, double p, double s) {
        double w = moisture(t, rh, p);
        return UnitModelTest.run(UNIT, t, w, m, to, p, s);
    }

    @Property(tries = 200)
    void more_airflow_never_lowers_the_coil_temperature_and_never_the_capacity(
            @ForAll @DoubleRange(min = 285, max = 315) @Scale(3) double t,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(3) double rh,
            @ForAll @DoubleRange(min = 0.15, max = 1.2) @Scale(4) double m,
            @ForAll @DoubleRange(min = 1.0001, max = 2) @Scale(4) double more,
            @ForAll @DoubleRange(min = 280, max = 320) @Scale(2) double to,
            @ForAll @DoubleRange(min = 65_000, max = 103_000) @Scale(0) double p,
            @ForAll @DoubleRange(min = 0.35, max = 1) @Scale(3) double s) {
        double[] less = run(t, rh, m, to, p, s);
        double[] greater = run(t, rh, m * more, to, p, s);
        assertThat(greater[UnitModel.APPARATUS_DEW_POINT])
                .isGreaterThanOrEqualTo(less[UnitModel.APPARATUS_DEW_POINT] - 1e-7);
        assertThat(greater[UnitModel.SATURATED_SUCTION])
                .isGreaterThanOrEqualTo(less[UnitModel.SATURATED_SUCTION] - 1e-7);
        assertThat(greater[UnitModel.TOTAL]).isGreaterThanOrEqualTo(less[UnitModel.TOTAL] - 1e-3);
        assertThat(greater[UnitModel.FROST]).isLessThanOrEqualTo(less[UnitModel.FROST]);
    }

    @Property(tries = 150)
    void hotter_outdoors_never_raises_capacity_nor_lowers_the_coil(
            @ForAll @DoubleRange(min = 288, max = 312) @Scale(3) double t,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) @Scale(3) double rh,
            @ForAll @DoubleRange(min = 0.3, max = 1) @Scale(3) double m,
            @ForAll @DoubleRange(min = 275, max = 318) @Scale(2) double to,
            @ForAll @DoubleRange(min = 0.1, max = 8) @Scale(2) double hotter) {
        double[] mild = run(t, rh, m, to, 85_000, 1);
        double[] hot = run(t, rh, m, to + hotter, 85_000, 1);
        assertThat(hot[UnitModel.TOTAL]).isLessThanOrEqualTo(mild[UnitModel.TOTAL] + 1e-3);
        assertThat(hot[UnitModel.APPARATUS_DEW_POINT])
                .isGreaterThanOrEqualTo(mild[UnitModel.APPARATUS_DEW_POINT] - 1e-7);
        assertThat(hot[UnitModel.COMPRESSOR])
                .isGreaterThanOrEqualTo(mild[UnitModel.COMPRESSOR] - 1e-3);
    }

    @Property(tries = 150)
    void energy_and_moisture_close_everywhere(
            @ForAll @DoubleRange(min = 280, max = 320) @Scale(3) double t,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double rh,
            @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(3) double m,
            @ForAll @DoubleRange(min = 270, max = 322) @Scale(2) double to,
            @ForAll @DoubleRange(min = 65_000, max = 103_000) @Scale(0) double p,
            @ForAll @DoubleRange(min = 0.35, max = 1) @Scale(3) double s) {
        double[] out = run(t, rh, m, to, p, s);
        double w = moisture(t, rh, p);
        for (double v : out) {
            assertThat(v).isFinite();
        }
        double drop =
                IdealMoistAir.enthalpy(t, w)
                        - IdealMoistAir.enthalpy(
                                out[UnitModel.LEAVING_DRY_BULB],
                                out[UnitModel.LEAVING_HUMIDITY_RATIO]);
        assertThat(Math.abs(m * drop / out[UnitModel.TOTAL] - 1)).isLessThan(1e-9);
        assertThat(out[UnitModel.SENSIBLE]).isLessThanOrEqualTo(out[UnitModel.TOTAL]);
        assertThat(out[UnitModel.CONDENSATE]).isGreaterThanOrEqualTo(0);
        assertThat(out[UnitModel.SATURATED_SUCTION]).isLessThan(out[UnitModel.APPARATUS_DEW_POINT]);
        assertThat(out[UnitModel.APPARATUS_DEW_POINT]).isLessThan(t);
        assertThat(out[UnitModel.LEAVING_HUMIDITY_RATIO])
                .isLessThanOrEqualTo(
                        1.02
                                * IdealMoistAir.saturationHumidityRatio(
                                        out[UnitModel.LEAVING_DRY_BULB], p));
    }

    @Property(tries = 100)
    void thinner_air_over_the_condenser_never_helps(
            @ForAll @DoubleRange(min = 290, max = 305) @Scale(3) double t,
            @ForAll @DoubleRange(min = 60_000, max = 100_000) @Scale(0) double p) {
        double w = 0.006;
        double[] thin = UnitModelTest.run(UNIT, t, w, 0.6, 305, p, 1);
        double[] thick = UnitModelTest.run(UNIT, t, w, 0.6, 305, p + 1_000, 1);
        // Dry coil at the same mass flow: the pressure acts on the condenser only.
        if (thin[UnitModel.DRY] == 1 && thick[UnitModel.DRY] == 1) {
            assertThat(thin[UnitModel.CONDENSING]).isGreaterThan(thick[UnitModel.CONDENSING]);
            assertThat(thin[UnitModel.TOTAL]).isLessThan(thick[UnitModel.TOTAL]);
        }
    }

    @Property(tries = 100)
    void dirt_never_helps(
            @ForAll @DoubleRange(min = 0.4, max = 0.99) @Scale(3) double left,
            @ForAll @DoubleRange(min = 290, max = 313) @Scale(2) double to) {
        UnitModel dirty = UNIT.withFaults(new FaultFactors(left, left, 1, 1));
        double[] out = UnitModelTest.run(dirty, 298, 0.01, 0.6, to, 80_000, 1);
        double[] clean = UnitModelTest.run(UNIT, 298, 0.01, 0.6, to, 80_000, 1);
        assertThat(out[UnitModel.TOTAL]).isLessThanOrEqualTo(clean[UnitModel.TOTAL]);
        assertThat(out[UnitModel.COMPRESSOR]).isGreaterThanOrEqualTo(clean[UnitModel.COMPRESSOR]);
    }

    @Property(tries = 100)
    void every_consistent_rating_is_reproduced(
            @ForAll @DoubleRange(min = 3_000, max = 20_000) @Scale(1) double total,
            @ForAll @DoubleRange(min = 0.70, max = 0.82) @Scale(4) double shr,
            @ForAll @DoubleRange(min = 5.2e-5, max = 6.6e-5) @Scale(8) double flowPerWatt,
            @ForAll @DoubleRange(min = 3, max = 5) @Scale(3) double cop) {
        RatingPoint r =
                new RatingPoint(
                        UnitModelTest.RATED_IN,
                        UnitModelTest.RATED_W,
                        flowPerWatt * total,
                        UnitModelTest.RATED_OUT,
                        UnitModelTest.SEA,
                        total,
                        shr * total,
                        total / cop);
        UnitModel unit;
        try {
            UnitParameters d = UnitParameters.defaultsFor(r);
            unit =
                    UnitModel.anchored(
                            r,
                            new UnitParameters(
                                    d.refrigerant(),
                                    276.15,
                                    d.condensingAtRating(),
                                    d.condenserEffectiveness(),
                                    d.outdoorFanPower(),
                                    d.lossShare()));
        } catch (IllegalArgumentException e) {
            // Not every split has a coil state; then the message must say so.
            assertThat(e.getMessage())
                    .containsAnyOf("no coil state", "must lie at least 0.5 K below");
            return;
        }
        double[] out = new double[UnitModel.RESULTS];
        unit.steady(
                r.enteringDryBulb(),
                r.enteringHumidityRatio(),
                r.dryAirMassFlow(),
                r.outdoorDryBulb(),
                r.pressure(),
                1,
                out);
        assertThat(Math.abs(out[UnitModel.TOTAL] / total - 1)).isLessThan(1e-8);
        assertThat(Math.abs(out[UnitModel.SENSIBLE] / (shr * total) - 1)).isLessThan(1e-8);
        assertThat(Math.abs(out[UnitModel.POWER] / (total / cop) - 1)).isLessThan(1e-8);
    }
}
