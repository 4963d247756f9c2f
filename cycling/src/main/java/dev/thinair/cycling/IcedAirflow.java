package dev.thinair.cycling;

import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.OutsideBlowerTableException;
import dev.thinair.ducts.WetCoil;

/**
 * What a blower still moves through an iced coil: airflow and blower power against the factor on
 * the coil's pressure drop, from the duct network, straight between the points over the logarithm
 * of the factor. Immutable.
 */
final class IcedAirflow {

    private static final int POINTS = 13;
    private static final double STEP = 2;

    /**
     * Exponent of a coil's drop against flow, for what lies past the blower's table. Assumption,
     * between laminar (1) and fully turbulent (2) flow; common practice, no source.
     */
    private static final double EXPONENT = 1.6;

    private final double[] share = new double[POINTS];
    private final double[] watts = new double[POINTS];

    private IcedAirflow() {}

    /**
     * Solves the ducts with the coil's drop doubled again and again. Past the end of the blower's
     * table the blower is taken to hold its last pressure.
     */
    static IcedAirflow of(DuctSystem ducts, double density, double viscosity, WetCoil coilIfNone) {
        IcedAirflow made = new IcedAirflow();
        WetCoil clear = ducts.coil().orElse(coilIfNone);
        WetCoil coil = clear;
        double flow = 0;
        boolean inTable = true;
        for (int i = 0; i < POINTS; i++) {
            if (i > 0) {
                coil = coil.fouled(STEP);
            }
            // Below that the air that finds its way past the ice decides, not this curve.
            inTable &= i == 0 || made.share[i - 1] > 0.05;
            if (inTable) {
                try {
                    Airflow a = ducts.withCoil(coil).solve(density, viscosity);
                    if (i == 0) {
                        flow = a.cubicMetresPerSecond();
                    }
                    made.share[i] = a.cubicMetresPerSecond() / flow;
                    made.watts[i] = a.watts();
                    continue;
                } catch (OutsideBlowerTableException pastTheTable) {
                    if (i == 0) {
                        throw pastTheTable;
                    }
                    inTable = false;
                }
            }
            made.share[i] = made.share[i - 1] * Math.pow(STEP, -1 / EXPONENT);
            made.watts[i] = made.watts[i - 1];
        }
        return made;
    }

    /** Share of the clear airflow that is left. */
    double share(double factor) {
        return at(share, factor);
    }

    /** Power of the blower, W. */
    double watts(double factor) {
        return at(watts, factor);
    }

    private static double at(double[] y, double factor) {
        double x = Math.log(factor) / Math.log(STEP);
        int i = Math.max(0, Math.min(POINTS - 2, (int) x));
        double f = Math.min(1, x - i);
        return y[i] + f * (y[i + 1] - y[i]);
    }
}
