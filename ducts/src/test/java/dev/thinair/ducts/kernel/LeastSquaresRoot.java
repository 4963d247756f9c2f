package dev.thinair.ducts.kernel;

import java.util.function.UnaryOperator;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The root of a nonlinear system by Levenberg and Marquardt's method of Commons Math, with
 * derivatives by central differences: knows nothing of networks.
 */
final class LeastSquaresRoot {

    private LeastSquaresRoot() {}

    /** Where as many residuals as unknowns vanish. */
    static double[] of(UnaryOperator<double[]> residual, double[] start) {
        int size = start.length;
        LeastSquaresBuilder problem =
                new LeastSquaresBuilder()
                        .start(start)
                        .target(new double[size])
                        .maxEvaluations(5_000)
                        .maxIterations(5_000)
                        .model(
                                point -> {
                                    double[] x = point.toArray();
                                    double[] r = residual.apply(x);
                                    double[][] jacobian = new double[size][size];
                                    for (int m = 0; m < size; m++) {
                                        double h = 1e-6 * Math.max(Math.abs(x[m]), 1e-2);
                                        double[] up = x.clone();
                                        double[] down = x.clone();
                                        up[m] += h;
                                        down[m] -= h;
                                        double[] ru = residual.apply(up);
                                        double[] rd = residual.apply(down);
                                        for (int i = 0; i < size; i++) {
                                            jacobian[i][m] = (ru[i] - rd[i]) / (2 * h);
                                        }
                                    }
                                    return new Pair<>(
                                            new ArrayRealVector(r, false),
                                            new Array2DRowRealMatrix(jacobian, false));
                                });
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-15)
                .withParameterRelativeTolerance(1e-15)
                .withOrthoTolerance(1e-15)
                .optimize(problem.build())
                .getPoint()
                .toArray();
    }
}
