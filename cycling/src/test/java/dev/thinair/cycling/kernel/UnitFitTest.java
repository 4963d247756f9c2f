package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.IdealMoistAir;
import org.junit.jupiter.api.Test;

/** A unit whose inner figures are known is found again from what it does. */
class UnitFitTest {

    private static final RatingPoint RATING = UnitModelTest.RATING;
    private static final UnitParameters START = UnitParameters.defaultsFor(RATING);

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    private static RatingPoint point(UnitModel unit, double wetBulb, double flow, double outdoor) {
        double w = IdealMoistAir.humidityRatioFromWetBulb(f(80), f(wetBulb), UnitModelTest.SEA);
        double[] out = UnitModelTest.run(unit, f(80), w, flow, f(outdoor), UnitModelTest.SEA, 1);
        return new RatingPoint(
                f(80),
                w,
                flow,
                f(outdoor),
                UnitModelTest.SEA,
                out[UnitModel.TOTAL],
                out[UnitModel.SENSIBLE],
                out[UnitModel.POWER]);
    }

    private static RatingPoint[] points(UnitModel unit) {
        return new RatingPoint[] {
            point(unit, 67, 0.68, 82),
            point(unit, 67, 0.68, 115),
            point(unit, 63, 0.60, 95),
            point(unit, 71, 0.75, 105),
            point(unit, 57, 0.68, 75)
        };
    }

    @Test
    void known_figures_are_found_again() {
        UnitParameters known =
                new UnitParameters(
                        START.refrigerant(),
                        START.suctionAtRating() - 1.5,
                        START.condensingAtRating() + 3,
                        START.condenserEffectiveness(),
                        START.outdoorFanPower(),
                        0.25);
        UnitModel unit = UnitModel.anchored(RATING, known);
        RatingPoint[] points = points(unit);
        assertThat(UnitFit.rootMeanSquare(UnitModel.anchored(RATING, START), points))
                .isGreaterThan(1e-3);
        UnitParameters found = UnitFit.fit(RATING, START, points);
        assertThat(UnitFit.rootMeanSquare(UnitModel.anchored(RATING, found), points))
                .isLessThan(1e-6);
        assertThat(found.suctionAtRating()).isCloseTo(known.suctionAtRating(), within(1e-2));
        assertThat(found.condensingAtRating()).isCloseTo(known.condensingAtRating(), within(1e-2));
        assertThat(found.lossShare()).isCloseTo(known.lossShare(), within(1e-3));
        // What the points do not tell is kept.
        assertThat(found.refrigerant()).isEqualTo(START.refrigerant());
        assertThat(found.condenserEffectiveness()).isEqualTo(START.condenserEffectiveness());
        assertThat(found.outdoorFanPower()).isEqualTo(START.outdoorFanPower());
    }

    @Test
    void deviation_is_the_root_mean_square_of_three_figures_a_point() {
        UnitModel unit = UnitModel.anchored(RATING, START);
        RatingPoint p = point(unit, 67, 0.68, 82);
        assertThat(UnitFit.rootMeanSquare(unit, new RatingPoint[] {p})).isLessThan(1e-12);
        // Total 2 % less, sensible 3 % of total more, power 5 % less than the model does.
        double total = p.totalCapacity() / 1.02;
        RatingPoint off =
                new RatingPoint(
                        p.enteringDryBulb(),
                        p.enteringHumidityRatio(),
                        p.dryAirMassFlow(),
                        p.outdoorDryBulb(),
                        p.pressure(),
                        total,
                        p.sensibleCapacity() - 0.03 * total,
                        p.power() / 1.05);
        double expected = Math.sqrt((0.02 * 0.02 + 0.03 * 0.03 + 0.05 * 0.05) / 3);
        assertThat(UnitFit.rootMeanSquare(unit, new RatingPoint[] {off}))
                .isCloseTo(expected, within(1e-10));
        // The same point twice weighs no more than once; beside a perfect one it weighs half.
        assertThat(UnitFit.rootMeanSquare(unit, new RatingPoint[] {off, off}))
                .isCloseTo(expected, within(1e-10));
        assertThat(UnitFit.rootMeanSquare(unit, new RatingPoint[] {off, p}))
                .isCloseTo(expected / Math.sqrt(2), within(1e-10));
    }

    @Test
    void too_few_points_are_refused() {
        UnitModel unit = UnitModel.anchored(RATING, START);
        assertThatThrownBy(
                        () ->
                                UnitFit.fit(
                                        RATING,
                                        START,
                                        new RatingPoint[] {point(unit, 67, 0.68, 82)}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("performance points are 1");
        assertThatThrownBy(() -> UnitFit.rootMeanSquare(unit, new RatingPoint[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("missing");
        RatingPoint[] two = {point(unit, 67, 0.68, 82), point(unit, 63, 0.60, 95)};
        assertThat(
                        UnitFit.rootMeanSquare(
                                UnitModel.anchored(RATING, UnitFit.fit(RATING, START, two)), two))
                .isLessThan(1e-5);
    }
}
