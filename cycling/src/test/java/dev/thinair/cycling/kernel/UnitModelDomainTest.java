package dev.thinair.cycling.kernel;

import static dev.thinair.cycling.kernel.UnitModelTest.RATED_IN;
import static dev.thinair.cycling.kernel.UnitModelTest.RATED_OUT;
import static dev.thinair.cycling.kernel.UnitModelTest.RATED_W;
import static dev.thinair.cycling.kernel.UnitModelTest.RATING;
import static dev.thinair.cycling.kernel.UnitModelTest.SEA;
import static dev.thinair.cycling.kernel.UnitModelTest.UNIT;
import static dev.thinair.cycling.kernel.UnitModelTest.f;
import static dev.thinair.cycling.kernel.UnitModelTest.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Edges and refusals of the unit model, of its fit and of the heating models. */
class UnitModelDomainTest {

    private static final UnitParameters DEFAULTS = UnitParameters.defaultsFor(RATING);

    private static void refused(String message, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    private static UnitParameters parameters(double suction, double condensing, double fan) {
        return new UnitParameters(Refrigerant.R410A, suction, condensing, 0.7, fan, 0.15);
    }

    private static RatingPoint point(double total, double sensible, double power, double flow) {
        return new RatingPoint(RATED_IN, RATED_W, flow, RATED_OUT, SEA, total, sensible, power);
    }

    @Test
    void rating_points_that_cannot_be_are_refused() {
        refused("sensible capacity is 12000.0 W", () -> point(11_000, 12_000, 2_700, 0.68));
        refused("total capacity is 0.0 W", () -> point(0, 0, 2_700, 0.68));
        refused(
                "power of compressor and outdoor fan is 0.0 W",
                () -> point(11_000, 8_000, 0, 0.68));
        refused("dry-air mass flow is 0.0 kg/s", () -> point(11_000, 8_000, 2_700, 0));
        refused(
                "indoor fan power is 3000.0 W",
                () ->
                        RatingPoint.ofNet(
                                RATED_IN, RATED_W, 0.68, RATED_OUT, SEA, 10_000, 7_500, 2_700,
                                3_000));
        refused("dry coil", () -> UnitModel.anchored(point(8_000, 8_000, 2_700, 0.68), DEFAULTS));
        refused(
                "is not reached by any coil temperature",
                () -> UnitModel.anchored(point(11_000, 4_000, 2_700, 0.68), DEFAULTS));
        refused(
                "the leaving air would lie beyond saturation",
                () -> UnitModel.anchored(point(11_000, 8_300, 2_700, 0.4), DEFAULTS));
        refused(
                "entering humidity ratio is 0.03 kg/kg",
                () ->
                        UnitModel.anchored(
                                new RatingPoint(
                                        RATED_IN, 0.03, 0.68, RATED_OUT, SEA, 11_000, 8_000, 2_700),
                                DEFAULTS));
    }

    @Test
    void parameters_must_fit_the_rating_point() {
        double surface = UNIT.ratedApparatusDewPoint();
        refused(
                "at least 0.5 K below",
                () -> UnitModel.anchored(RATING, parameters(surface - 0.4, f(115), 200)));
        assertThat(UnitModel.anchored(RATING, parameters(surface - 0.6, f(115), 200))).isNotNull();
        refused(
                "at least 1 K above the outdoor air",
                () -> UnitModel.anchored(RATING, parameters(f(45), f(96), 200)));
        RatingPoint cool =
                new RatingPoint(RATED_IN, RATED_W, 0.68, f(50), SEA, 11_000, 8_300, 2_700);
        refused(
                "at least 10 K above the saturated suction",
                () -> UnitModel.anchored(cool, parameters(f(45), f(60), 200)));
        refused(
                "outdoor fan power is 2700.0 W",
                () -> UnitModel.anchored(RATING, parameters(f(45), f(115), 2_700)));
        refused(
                "refrigerant is missing",
                () -> new UnitParameters(null, f(45), f(115), 0.7, 200, 0.15));
        refused("fault factors are missing", () -> UNIT.withFaults(null));
        refused("condenser airflow factor is 0.01", () -> new FaultFactors(1, 0.01, 1, 1));
    }

    @Test
    void stages_that_a_unit_does_not_have_are_refused() {
        refused("only stage 1.0", () -> run(UNIT, 297, 0.01, 0.6, 308, SEA, 0.7));
        UnitModel two = UNIT.withLowStage(0.6, false);
        refused("the stages 0.6 and 1.0", () -> run(two, 297, 0.01, 0.6, 308, SEA, 0.7));
        UnitModel variable = UNIT.withLowStage(0.6, true);
        refused("stages from 0.6 to 1.0", () -> run(variable, 297, 0.01, 0.6, 308, SEA, 0.5));
        refused("stage is NaN", () -> run(variable, 297, 0.01, 0.6, 308, SEA, Double.NaN));
        assertThat(run(variable, 297, 0.01, 0.6, 308, SEA, 0.7)).isNotNull();
        refused(
                "displacement fraction of the low stage is 0.99",
                () -> UNIT.withLowStage(0.99, true));
        refused(
                "power at the low stage",
                () -> UNIT.withLowStage(point(7_000, 5_000, 150, 0.4), false));
    }

    @Test
    void frost_airflow_at_its_ends() {
        // A tenth of the displacement cannot chill even a trickle of hot air that far.
        assertThat(
                        UNIT.withLowStage(0.1, true)
                                .frostAirflow(
                                        310,
                                        0.03,
                                        318,
                                        SEA,
                                        0.1,
                                        UnitModel.APPARATUS_DEW_POINT,
                                        263.15))
                .isZero();
        refused(
                "must be APPARATUS_DEW_POINT or SATURATED_SUCTION",
                () -> UNIT.frostAirflow(297, 0.01, 308, SEA, 1, UnitModel.POWER, 273.15));
        refused(
                "temperature limit is 200.0 K",
                () ->
                        UNIT.frostAirflow(
                                297, 0.01, 308, SEA, 1, UnitModel.APPARATUS_DEW_POINT, 200));
    }

    @Test
    void the_outdoor_fan_power_follows_the_density() {
        double[] sea = run(UNIT, RATED_IN, RATED_W, 0.68, RATED_OUT, SEA, 1);
        double[] high = run(UNIT, RATED_IN, RATED_W, 0.68, RATED_OUT, 0.8 * SEA, 1);
        double fan = sea[UnitModel.POWER] - sea[UnitModel.COMPRESSOR];
        assertThat(fan).isCloseTo(UnitParameters.OUTDOOR_FAN_SHARE * 11_000, within(1e-9));
        assertThat(high[UnitModel.POWER] - high[UnitModel.COMPRESSOR])
                .isCloseTo(0.8 * fan, within(1e-9));
    }

    @Test
    void the_power_factor_of_a_low_stage_fades_out_towards_full() {
        RatingPoint low = point(7_600, 5_700, 1_950, 0.48);
        UnitModel unit = UNIT.withLowStage(low, true);
        UnitModel ideal = UNIT.withLowStage(unit.minimumStage(), true);
        double mid = 0.5 * (1 + unit.minimumStage());
        double atLow = ratio(unit, ideal, unit.minimumStage());
        double atMid = ratio(unit, ideal, mid);
        double atFull = ratio(unit, ideal, 1);
        assertThat(atFull).isEqualTo(1);
        // Linear in the stage but for the small reaction of the condenser.
        assertThat(atMid - 1).isCloseTo(0.5 * (atLow - 1), within(0.1 * Math.abs(atLow - 1)));
    }

    private static double ratio(UnitModel unit, UnitModel ideal, double stage) {
        return run(unit, RATED_IN, RATED_W, 0.6, RATED_OUT, SEA, stage)[UnitModel.COMPRESSOR]
                / run(ideal, RATED_IN, RATED_W, 0.6, RATED_OUT, SEA, stage)[UnitModel.COMPRESSOR];
    }

    @Test
    void fits_are_refused_without_points() {
        refused(
                "a fit needs at least 2",
                () -> UnitFit.fit(RATING, DEFAULTS, new RatingPoint[] {RATING}));
        refused(
                "performance points are missing",
                () -> UnitFit.rootMeanSquare(UNIT, new RatingPoint[0]));
        assertThat(UnitFit.rootMeanSquare(UNIT, new RatingPoint[] {RATING}))
                .isCloseTo(0, within(1e-8));
        // Two percent off in capacity and power, none in the sensible part.
        RatingPoint off = point(11_000 / 1.02, 8_300, 2_700 / 1.02, 0.68);
        assertThat(UnitFit.rootMeanSquare(UNIT, new RatingPoint[] {off}))
                .isCloseTo(0.02 * Math.sqrt(2.0 / 3), within(1e-7));
    }

    @Test
    void season_tests_are_the_model_s_own_states() {
        double[] single = UnitSeason.tests(UNIT, 400);
        assertThat(single).hasSize(4);
        assertThat(single[0]).isCloseTo(11_000 - 400, within(1e-4));
        assertThat(single[1]).isCloseTo(2_700 + 400, within(1e-4));
        double[] two = UnitSeason.tests(UNIT.withLowStage(0.4, false), 400);
        assertThat(two).hasSize(8);
        double[] low = run(UNIT.withLowStage(0.4, false), RATED_IN, RATED_W, 0.34, f(82), SEA, 0.4);
        assertThat(two[4]).isCloseTo(low[UnitModel.TOTAL] - 200, within(1e-9));
        double[] variable = UnitSeason.tests(UNIT.withLowStage(0.4, true), 400);
        assertThat(variable).hasSize(10);
        assertThat(variable[8]).isBetween(two[4], single[2]);
        // The bins' heat adds up to what the rating divides by.
        double heat = 0;
        for (int i = 0; i < RatingBins.COOLING.size(); i++) {
            heat += UnitSeason.binHeat(single, 1, RatingBins.COOLING, i);
        }
        assertThat(heat).isBetween(0.2 * single[0], 0.5 * single[0]);
        refused("indoor fan power is -1.0 W", () -> UnitSeason.tests(UNIT, -1));
    }

    @Test
    void heat_pump_in_thin_air() {
        // Sea level: what is seen is what is there.
        assertThat(HeatPumpModel.seenOutdoor(270, 101_325, 0.8)).isEqualTo(270);
        double x = 0.75;
        double g = x * (1 - Math.exp(-1.2 / Math.sqrt(x))) / (1 - Math.exp(-1.2));
        assertThat(HeatPumpModel.seenOutdoor(270, 0.75 * 101_325, 0.8))
                .isCloseTo(270 - (1 / g - 1) * 8 * 0.8, within(1e-10));
        assertThat(HeatPumpModel.defaultCapacity35(10_000, 6_000))
                .isCloseTo(0.9 * 8_400, within(1e-9));
        assertThat(HeatPumpModel.defaultPower35(3_000, 2_500))
                .isCloseTo(0.985 * 2_800, within(1e-9));
        refused(
                "capacity at 47 degF is 0.0 W",
                () -> HeatPumpModel.value(270, SEA, 1, 1, 1, 0, 1, 1));
        refused("outdoor temperature is 200.0 K", () -> HeatPumpModel.seenOutdoor(200, SEA, 1));
        refused("capacity ratio is 3.0", () -> HeatPumpModel.seenOutdoor(270, SEA, 3));
    }

    @Test
    void furnace_output_and_rise() {
        assertThat(FurnaceModel.output(20_000, 0.8, 0.9)).isCloseTo(14_400, within(1e-9));
        assertThat(FurnaceModel.temperatureRise(14_400, 0.5, 1_020))
                .isCloseTo(14_400 / 510.0, within(1e-12));
        refused("rated furnace input is 0.0 W", () -> FurnaceModel.output(0, 1, 1));
        refused("altitude factor", () -> FurnaceModel.output(1, 0.2, 1));
        refused("specific heat is 1.0", () -> FurnaceModel.temperatureRise(1, 1, 1));
        refused("furnace output is -1.0 W", () -> FurnaceModel.temperatureRise(-1, 1, 1_010));
    }
}
