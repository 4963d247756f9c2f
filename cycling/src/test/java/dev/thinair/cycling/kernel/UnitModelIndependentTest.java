package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import java.util.Random;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The balance of coil, compressor and condenser written down a second time from its rating point,
 * and solved by nested bracketing of Commons Math instead of the model's own search.
 */
class UnitModelIndependentTest {

    private static final RatingPoint RATING = UnitModelTest.RATING;
    private static final UnitParameters GIVEN = UnitParameters.defaultsFor(RATING);

    /** What the second writing says of one state. */
    private record Balance(
            double surface, double suction, double condensing, double total, double power) {}

    /** A new one each time: a solver keeps its function while it is at work. */
    private static BrentSolver brent() {
        return new BrentSolver(1e-15, 1e-12, 1e-15);
    }

    private static double saturated(double t, double p) {
        return IdealMoistAir.saturationHumidityRatio(t, p);
    }

    private static double contactHeat(double surface, double t, double w, double p) {
        return IdealMoistAir.enthalpy(t, w)
                - IdealMoistAir.enthalpy(surface, Math.min(w, saturated(surface, p)));
    }

    /** Solves for a unit of displacement share and faults; the rated surface is taken as known. */
    private static Balance solve(
            double ratedSurface,
            double t,
            double w,
            double m,
            double outdoor,
            double p,
            double stage,
            FaultFactors faults) {
        Refrigerant fluid = GIVEN.refrigerant();
        double te0 = GIVEN.suctionAtRating();
        double tc0 = GIVEN.condensingAtRating();
        double q0 = RATING.totalCapacity();
        double compressor0 = RATING.power() - GIVEN.outdoorFanPower();
        double contact0 =
                q0
                        / RATING.dryAirMassFlow()
                        / contactHeat(
                                ratedSurface,
                                RATING.enteringDryBulb(),
                                RATING.enteringHumidityRatio(),
                                RATING.pressure());
        // (1 - BF) by the number of transfer units of the coil, which goes with 1/m.
        double units0 = -Math.log(1 - contact0);
        double contact =
                1 - Math.exp(-units0 * RATING.dryAirMassFlow() / m * faults.evaporatorActive());
        double coil = q0 / (ratedSurface - te0) * faults.evaporatorActive();
        double rho0 = fluid.suctionDensity(te0);
        double density = p / RATING.pressure() * RATING.outdoorDryBulb() / outdoor;
        double air = density * faults.condenserAirflow();
        double flow0 =
                (q0 + compressor0)
                        / GIVEN.condenserEffectiveness()
                        / (tc0 - RATING.outdoorDryBulb());
        // Transfer units with the square root of the flow: the film goes with its square root.
        double units =
                -Math.log(1 - GIVEN.condenserEffectiveness())
                        * faults.condenserConductance()
                        * faults.condenserActive()
                        / Math.sqrt(air);
        double condenser = flow0 * air * (1 - Math.exp(-units));
        java.util.function.DoubleBinaryOperator capacity =
                (te, tc) ->
                        stage
                                * q0
                                * fluid.suctionDensity(te)
                                / rho0
                                * fluid.refrigeratingEffect(te, tc)
                                / fluid.refrigeratingEffect(te0, tc0);
        java.util.function.DoubleBinaryOperator work =
                (te, tc) ->
                        stage
                                * compressor0
                                * (GIVEN.lossShare()
                                        + (1 - GIVEN.lossShare())
                                                * fluid.suctionDensity(te)
                                                / rho0
                                                * fluid.isentropicWork(te, tc)
                                                / fluid.isentropicWork(te0, tc0));
        java.util.function.DoubleUnaryOperator condensing =
                te -> {
                    double floor = Math.max(UnitModel.CONDENSING_FLOOR, te + 3);
                    java.util.function.DoubleUnaryOperator g =
                            tc ->
                                    condenser * (tc - outdoor)
                                            - capacity.applyAsDouble(te, tc)
                                            - work.applyAsDouble(te, tc);
                    if (g.applyAsDouble(floor) >= 0) {
                        return floor;
                    }
                    return brent().solve(
                                    500, g::applyAsDouble, floor, UnitModel.CONDENSING_CEILING);
                };
        java.util.function.DoubleUnaryOperator suction =
                s -> s - m * contact * contactHeat(s, t, w, p) / coil;
        double surface =
                brent().solve(
                                500,
                                s ->
                                        capacity.applyAsDouble(
                                                        suction.applyAsDouble(s),
                                                        condensing.applyAsDouble(
                                                                suction.applyAsDouble(s)))
                                                - m * contact * contactHeat(s, t, w, p),
                                248,
                                t - 1e-9);
        double te = suction.applyAsDouble(surface);
        double tc = condensing.applyAsDouble(te);
        return new Balance(
                surface,
                te,
                tc,
                m * contact * contactHeat(surface, t, w, p),
                work.applyAsDouble(te, tc) + GIVEN.outdoorFanPower() * density);
    }

    private static void agree(
            double t,
            double rh,
            double m,
            double outdoor,
            double p,
            double stage,
            FaultFactors faults) {
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(t, rh, p);
        UnitModel unit =
                UnitModel.anchored(RATING, GIVEN).withLowStage(0.25, true).withFaults(faults);
        double[] out = UnitModelTest.run(unit, t, w, m, outdoor, p, stage);
        Balance b = solve(unit.ratedApparatusDewPoint(), t, w, m, outdoor, p, stage, faults);
        String state =
                String.format(
                        "%.2f K, %.0f %%, %.3f kg/s, outdoor %.2f K, %.0f Pa, stage %.2f, %s",
                        t, 100 * rh, m, outdoor, p, stage, faults);
        assertThat(out[UnitModel.APPARATUS_DEW_POINT]).as(state).isCloseTo(b.surface, within(1e-6));
        assertThat(out[UnitModel.SATURATED_SUCTION]).as(state).isCloseTo(b.suction, within(1e-5));
        assertThat(out[UnitModel.CONDENSING]).as(state).isCloseTo(b.condensing, within(1e-5));
        assertThat(out[UnitModel.TOTAL]).as(state).isCloseTo(b.total, within(2e-6 * b.total));
        assertThat(out[UnitModel.POWER]).as(state).isCloseTo(b.power, within(2e-6 * b.power));
    }

    @Test
    void the_same_balance_by_nested_bracketing() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 300; i++) {
            agree(
                    288 + 20 * random.nextDouble(),
                    0.15 + 0.6 * random.nextDouble(),
                    RATING.dryAirMassFlow() * (0.4 + 1.1 * random.nextDouble()),
                    285 + 35 * random.nextDouble(),
                    65_000 + 40_000 * random.nextDouble(),
                    0.25 + 0.75 * random.nextDouble(),
                    i % 3 != 0
                            ? FaultFactors.NONE
                            : new FaultFactors(
                                    0.6 + 0.4 * random.nextDouble(),
                                    0.6 + 0.4 * random.nextDouble(),
                                    0.6 + 0.4 * random.nextDouble(),
                                    0.6 + 0.4 * random.nextDouble()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 2, 4.9})
    void far_from_the_rated_airflow_too(double share) {
        agree(297, 0.5, share * RATING.dryAirMassFlow(), 300, 90_000, 0.3, FaultFactors.NONE);
    }

    @Test
    void every_bad_argument_is_named() {
        UnitModel unit = UnitModel.anchored(RATING, GIVEN);
        double[] good = {297, 0.009, 0.6, 305, 90_000, 1};
        String[] names = {
            "entering dry bulb",
            "entering humidity ratio",
            "dry-air mass flow",
            "outdoor dry bulb",
            "pressure",
            "stage"
        };
        for (int i = 0; i < good.length; i++) {
            for (double spoilt : new double[] {Double.NaN, -1, 1e6}) {
                double[] a = good.clone();
                a[i] = spoilt;
                assertThatThrownBy(
                                () -> UnitModelTest.run(unit, a[0], a[1], a[2], a[3], a[4], a[5]))
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageStartingWith(names[i]);
            }
        }
        assertThatThrownBy(() -> UnitModelTest.run(unit, 290, 0.03, 0.6, 305, 90_000, 1))
                .hasMessageContaining("must not exceed saturation");
        // Five times and a twentieth of the rated airflow are just allowed, and saturated air is.
        UnitModel turned = unit.withLowStage(0.1, true);
        assertThat(UnitModelTest.run(turned, 297, 0.009, 0.05 * 0.68, 305, 90_000, 0.1))
                .isNotNull();
        assertThat(UnitModelTest.run(unit, 297, 0.009, 5 * 0.68, 305, 90_000, 1)).isNotNull();
        assertThat(
                        UnitModelTest.run(
                                unit,
                                290,
                                IdealMoistAir.saturationHumidityRatio(290, 90_000),
                                0.6,
                                305,
                                90_000,
                                1))
                .isNotNull();
    }

    @Test
    void a_low_stage_must_be_lower_but_not_nothing() {
        UnitModel unit = UnitModel.anchored(RATING, GIVEN);
        for (double bad : new double[] {Double.NaN, 0.09, 0.99}) {
            assertThatThrownBy(() -> unit.withLowStage(bad, false))
                    .hasMessageStartingWith("displacement fraction of the low stage");
        }
        RatingPoint trickle =
                new RatingPoint(
                        RATING.enteringDryBulb(),
                        RATING.enteringHumidityRatio(),
                        0.4,
                        RATING.outdoorDryBulb(),
                        RATING.pressure(),
                        600,
                        400,
                        400);
        assertThatThrownBy(() -> unit.withLowStage(trickle, false))
                .hasMessageStartingWith("displacement fraction of the low stage is 0.0");
    }

    @Test
    void the_model_tells_what_it_was_made_from() {
        FaultFactors dirty = new FaultFactors(0.7, 0.8, 0.9, 0.95);
        UnitModel unit =
                UnitModel.anchored(RATING, GIVEN).withLowStage(0.4, true).withFaults(dirty);
        assertThat(unit.rating()).isEqualTo(RATING);
        assertThat(unit.parameters()).isEqualTo(GIVEN);
        assertThat(unit.faults()).isEqualTo(dirty);
        assertThat(unit.ratedDryAirMassFlow()).isEqualTo(RATING.dryAirMassFlow());
        assertThat(unit.minimumStage()).isEqualTo(0.4);
        assertThat(unit.maximumStage()).isEqualTo(1);
        assertThat(unit.continuousStage()).isTrue();
        double[] rated = UnitModelTest.rated(UnitModel.anchored(RATING, GIVEN));
        assertThat(Math.exp(-unit.bypassMass() / RATING.dryAirMassFlow()))
                .isCloseTo(rated[UnitModel.BYPASS_FACTOR], within(1e-12));
        assertThat(unit.coilConductance())
                .isCloseTo(
                        RATING.totalCapacity()
                                / (unit.ratedApparatusDewPoint() - GIVEN.suctionAtRating()),
                        within(1e-9));
    }
}
