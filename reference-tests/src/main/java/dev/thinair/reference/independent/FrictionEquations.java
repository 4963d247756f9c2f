package dev.thinair.reference.independent;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Friction factors from the printed equations. */
public final class FrictionEquations {

    private FrictionEquations() {}

    /**
     * Darcy friction factor of Colebrook (1939), J. Inst. Civ. Eng. 11, 133-156: Brent's method of
     * Apache Commons Math on x = 1/&#8730;<var>f</var> to 1e-15, and one substitution of x into the
     * equation, which shrinks what error is left at least tenfold.
     */
    public static double colebrook(double reynolds, double relativeRoughness) {
        double x =
                new BrentSolver(1e-15, 1e-15)
                        .solve(200, y -> y - right(y, reynolds, relativeRoughness), 0.5, 40);
        x = right(x, reynolds, relativeRoughness);
        return 1 / (x * x);
    }

    private static double right(double x, double reynolds, double relativeRoughness) {
        return -2 * Math.log10(relativeRoughness / 3.7 + 2.51 * x / reynolds);
    }
}
