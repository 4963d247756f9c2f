package dev.thinair.cycling.kernel;

import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds what a rating point does not say from expanded performance points.
 *
 * <p>Suction and condensing temperature at rating and the compressor's loss share are varied within
 * bounds until total capacity, sensible capacity and power of all points fit best (least squares of
 * relative deviations; Nelder and Mead 1965 on logit-transformed variables, so that the bounds
 * hold). The rating point stays exact whatever the points say. Deterministic.
 */
public final class UnitFit {

    private static final double[] LOW = {1.0, 3.0, 0.0};
    private static final double[] HIGH = {15.0, 25.0, 0.5};
    private static final int MAX_EVALUATIONS = 4000;

    private UnitFit() {}

    /**
     * Fits the parameters.
     *
     * @param rating the rating point
     * @param start first guess; refrigerant, condenser effectiveness and fan are kept
     * @param points performance points at full stage, at least two, gross as the rating point
     * @return fitted parameters
     * @throws IllegalArgumentException if there are fewer than two points, or one is outside the
     *     model's range
     * @throws ArithmeticException if a point has no balance, or the fit does not settle
     */
    public static UnitParameters fit(
            RatingPoint rating, UnitParameters start, RatingPoint[] points) {
        if (points.length < 2) {
            throw new IllegalArgumentException(
                    "performance points are "
                            + points.length
                            + ", but a fit needs at least 2 besides the rating point");
        }
        double surface = UnitModel.anchored(rating, start).ratedApparatusDewPoint();
        double[] guess = {
            surface - start.suctionAtRating(),
            start.condensingAtRating() - rating.outdoorDryBulb(),
            start.lossShare()
        };
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            double share = (guess[i] - LOW[i]) / (HIGH[i] - LOW[i]);
            share = Math.max(0.02, Math.min(0.98, share));
            x[i] = Math.log(share / (1 - share));
        }
        SimplexOptimizer optimizer =
                new SimplexOptimizer(new SimpleValueChecker(1e-12, 1e-16, MAX_EVALUATIONS));
        PointValuePair best;
        try {
            best =
                    optimizer.optimize(
                            new MaxEval(MAX_EVALUATIONS),
                            new ObjectiveFunction(
                                    v ->
                                            squares(
                                                    rating,
                                                    parameters(rating, start, surface, v),
                                                    points)),
                            GoalType.MINIMIZE,
                            new InitialGuess(x),
                            new NelderMeadSimplex(3, 0.7));
        } catch (org.apache.commons.math3.exception.TooManyEvaluationsException e) {
            throw new ArithmeticException(
                    "fit of the unit did not settle in " + MAX_EVALUATIONS + " evaluations");
        }
        return parameters(rating, start, surface, best.getPoint());
    }

    private static UnitParameters parameters(
            RatingPoint rating, UnitParameters start, double surface, double[] v) {
        double[] p = new double[3];
        for (int i = 0; i < 3; i++) {
            p[i] = LOW[i] + (HIGH[i] - LOW[i]) / (1 + Math.exp(-v[i]));
        }
        return new UnitParameters(
                start.refrigerant(),
                surface - p[0],
                rating.outdoorDryBulb() + p[1],
                start.condenserEffectiveness(),
                start.outdoorFanPower(),
                p[2]);
    }

    private static double squares(
            RatingPoint rating, UnitParameters parameters, RatingPoint[] points) {
        double rms = rootMeanSquare(UnitModel.anchored(rating, parameters), points);
        return rms * rms;
    }

    /**
     * Root mean square of the relative deviations of total capacity, sensible capacity and power.
     *
     * @param model the model
     * @param points performance points at full stage, at least one
     * @return deviation, 0 for a perfect fit
     * @throws IllegalArgumentException if there is no point, or one is outside the model's range
     * @throws ArithmeticException if a point has no balance
     */
    public static double rootMeanSquare(UnitModel model, RatingPoint[] points) {
        if (points.length == 0) {
            throw new IllegalArgumentException("performance points are missing");
        }
        double[] out = new double[UnitModel.RESULTS];
        double sum = 0;
        for (RatingPoint p : points) {
            model.steady(
                    p.enteringDryBulb(),
                    p.enteringHumidityRatio(),
                    p.dryAirMassFlow(),
                    p.outdoorDryBulb(),
                    p.pressure(),
                    1,
                    out);
            double q = out[UnitModel.TOTAL] / p.totalCapacity() - 1;
            double s = (out[UnitModel.SENSIBLE] - p.sensibleCapacity()) / p.totalCapacity();
            double w = out[UnitModel.POWER] / p.power() - 1;
            sum += q * q + s * s + w * w;
        }
        return Math.sqrt(sum / (3 * points.length));
    }
}
