package dev.thinair.reference.independent;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The standard atmosphere from its definition: the hydrostatic equation d<var>p</var> = -<var>
 * &#961; g</var> d<var>H</var> for an ideal gas with the prescribed temperature, marched upwards by
 * an integrator of Apache Commons Math. Constants: U.S. Standard Atmosphere 1976, tables 2 and 4.
 */
public final class AtmosphereIntegration {

    private AtmosphereIntegration() {}

    /** Pressure, Pa, at a geopotential altitude, m, up to 20 km. */
    public static double pressure(double altitude) {
        double[] p = {101_325};
        // The temperature profile has a kink at 11 km, which no integrator may step across.
        double first = Math.min(altitude, 11_000);
        march(p, 0, first);
        if (altitude > first) {
            march(p, first, altitude);
        }
        return p[0];
    }

    private static void march(double[] p, double from, double to) {
        if (Math.abs(to - from) < 1e-6) {
            return;
        }
        new DormandPrince853Integrator(1e-3, 1000, 1e-9, 1e-13)
                .integrate(new Hydrostatic(), from, p, to, p);
    }

    private static final class Hydrostatic implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public void computeDerivatives(double h, double[] p, double[] slope) {
            double temperature = h < 11_000 ? 288.15 - 0.0065 * h : 216.65;
            double density = p[0] * 28.9644 / (8314.32 * temperature);
            slope[0] = -9.80665 * density;
        }
    }
}
