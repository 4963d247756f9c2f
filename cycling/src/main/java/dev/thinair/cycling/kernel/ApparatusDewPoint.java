package dev.thinair.cycling.kernel;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;

/**
 * Apparatus dew point and bypass factor of a cooling coil, from a stated capacity and back.
 *
 * <p>Two uses: {@link #fit} finds them from one performance point; {@link #run} predicts the coil
 * temperature and the sensible split at another airflow when the total capacity is known. The full
 * balance, in which the capacity is found too, is {@link UnitModel}.
 */
public final class ApparatusDewPoint {

    /** Index of the apparatus dew point, K. */
    public static final int TEMPERATURE = 0;

    /** Index of the bypass factor. */
    public static final int BYPASS_FACTOR = 1;

    /** Index of the leaving dry bulb, K. */
    public static final int LEAVING_DRY_BULB = 2;

    /** Index of the leaving humidity ratio, kg/kg. */
    public static final int LEAVING_HUMIDITY_RATIO = 3;

    /** Index of the sensible heat ratio. */
    public static final int SENSIBLE_HEAT_RATIO = 4;

    /** Index of the bypass constant A0 in BF = exp(-A0/m), kg/s. */
    public static final int BYPASS_MASS = 5;

    /** Length an output array must have at least. */
    public static final int RESULTS = 6;

    private static final double COLDEST = 223.15;

    private ApparatusDewPoint() {}

    /**
     * Apparatus dew point, bypass factor and leaving air from total capacity and sensible heat
     * ratio.
     *
     * <p>The leaving state follows from <code>h2 = h1 - Q/m</code> and the moisture of the latent
     * part, <code>h(t1, W2) = h1 - (1 - SHR) Q/m</code>. The apparatus dew point is the first
     * saturation crossing of the straight line in dry bulb and humidity ratio, extended from the
     * entering through the leaving state; the bypass factor is then the enthalpy ratio <code>(h2 -
     * ha)/(h1 - ha)</code>.
     *
     * <p>Source: textbook form; convention of the project's reference cases CYC-ADP and CYC-BF.
     *
     * @param dryBulb entering dry bulb t1, K, in [273.15, 333.15]
     * @param humidityRatio entering humidity ratio, kg/kg, in [0, 0.05], not above saturation
     * @param pressure pressure, Pa, in [50000, 110000]
     * @param dryAirMassFlow dry-air mass flow, kg/s, above 0
     * @param capacity total capacity, W, above 0
     * @param sensibleHeatRatio sensible over total, in ]0, 1[
     * @param out receives the results at the indices of this class
     * @throws IllegalArgumentException if an argument is out of range, or there is no coil state;
     *     the message then begins "no coil state (leaving state supersaturated)" or "no coil state
     *     (line misses the saturation curve)"
     */
    public static void fit(
            double dryBulb,
            double humidityRatio,
            double pressure,
            double dryAirMassFlow,
            double capacity,
            double sensibleHeatRatio,
            double[] out) {
        checkAir(dryBulb, humidityRatio, pressure, dryAirMassFlow, capacity);
        if (!(sensibleHeatRatio > 0 && sensibleHeatRatio < 1)) {
            throw new IllegalArgumentException(
                    "sensible heat ratio is "
                            + sensibleHeatRatio
                            + ", but must lie in ]0.0, 1.0[: a dry coil does not fix the apparatus"
                            + " dew point");
        }
        double h1 = IdealMoistAir.enthalpy(dryBulb, humidityRatio);
        double drop = capacity / dryAirMassFlow;
        double h2 = h1 - drop;
        double w2 =
                IdealMoistAir.humidityRatioFromEnthalpy(
                        dryBulb, h1 - (1 - sensibleHeatRatio) * drop);
        double t2 = IdealMoistAir.dryBulbFromEnthalpy(h2, w2);
        if (t2 < COLDEST || w2 > IdealMoistAir.saturationHumidityRatio(t2, pressure)) {
            throw new IllegalArgumentException(
                    "no coil state (leaving state supersaturated): leaving "
                            + t2
                            + " K, "
                            + w2
                            + " kg/kg");
        }
        double slope = (humidityRatio - w2) / (dryBulb - t2);
        double warm = t2;
        double cold = t2;
        do {
            warm = cold;
            cold = warm - 0.1;
            if (cold < COLDEST || w2 + slope * (cold - t2) < 0) {
                throw new IllegalArgumentException(
                        "no coil state (line misses the saturation curve): entering "
                                + dryBulb
                                + " K, "
                                + humidityRatio
                                + " kg/kg, leaving "
                                + t2
                                + " K, "
                                + w2
                                + " kg/kg");
            }
        } while (IdealMoistAir.saturationHumidityRatio(cold, pressure) > w2 + slope * (cold - t2));
        for (int i = 0; i < 60; i++) {
            double mid = 0.5 * (warm + cold);
            if (IdealMoistAir.saturationHumidityRatio(mid, pressure) > w2 + slope * (mid - t2)) {
                warm = mid;
            } else {
                cold = mid;
            }
        }
        double t = 0.5 * (warm + cold);
        double ha = IdealMoistAir.enthalpy(t, IdealMoistAir.saturationHumidityRatio(t, pressure));
        double bypass = (h2 - ha) / (h1 - ha);
        out[TEMPERATURE] = t;
        out[BYPASS_FACTOR] = bypass;
        out[LEAVING_DRY_BULB] = t2;
        out[LEAVING_HUMIDITY_RATIO] = w2;
        out[SENSIBLE_HEAT_RATIO] = sensibleHeatRatio;
        out[BYPASS_MASS] = -dryAirMassFlow * Math.log(bypass);
    }

    /**
     * Coil temperature and sensible split at an airflow, the capacity being known: <code>BF =
     * exp(-A0/m)</code>, <code>ha = h1 - (Q/m)/(1 - BF)</code>, <code>SHR = (h(t1, Wa) - ha)/(h1 -
     * ha)</code>. When the apparatus dew point lies above the entering dew point the coil is dry:
     * SHR is 1 and the surface temperature follows from dry-bulb temperatures alone.
     *
     * @param dryBulb entering dry bulb t1, K, in [273.15, 333.15]
     * @param humidityRatio entering humidity ratio, kg/kg, in [0, 0.05], not above saturation
     * @param pressure pressure, Pa, in [50000, 110000]
     * @param dryAirMassFlow dry-air mass flow, kg/s, above 0
     * @param capacity total capacity, W, above 0
     * @param bypassMass A0, kg/s, above 0
     * @param out receives the results at the indices of this class
     * @throws IllegalArgumentException if an argument is out of range, or the coil would have to be
     *     colder than -50 &deg;C
     */
    public static void run(
            double dryBulb,
            double humidityRatio,
            double pressure,
            double dryAirMassFlow,
            double capacity,
            double bypassMass,
            double[] out) {
        checkAir(dryBulb, humidityRatio, pressure, dryAirMassFlow, capacity);
        Range.requireAbove("bypass constant", bypassMass, 0, "kg/s");
        double h1 = IdealMoistAir.enthalpy(dryBulb, humidityRatio);
        double bypass = Math.exp(-bypassMass / dryAirMassFlow);
        double drop = capacity / dryAirMassFlow;
        double ha = h1 - drop / (1 - bypass);
        double warm = dryBulb;
        double cold = COLDEST;
        if (surfaceEnthalpy(cold, humidityRatio, pressure) > ha) {
            throw new IllegalArgumentException(
                    "capacity is "
                            + capacity
                            + " W at dry-air flow "
                            + dryAirMassFlow
                            + " kg/s, but the coil would have to be colder than "
                            + COLDEST
                            + " K");
        }
        for (int i = 0; i < 70; i++) {
            double mid = 0.5 * (warm + cold);
            if (surfaceEnthalpy(mid, humidityRatio, pressure) > ha) {
                warm = mid;
            } else {
                cold = mid;
            }
        }
        double t = 0.5 * (warm + cold);
        double ws = Math.min(humidityRatio, IdealMoistAir.saturationHumidityRatio(t, pressure));
        double w2 = humidityRatio - (1 - bypass) * (humidityRatio - ws);
        out[TEMPERATURE] = t;
        out[BYPASS_FACTOR] = bypass;
        out[LEAVING_DRY_BULB] = IdealMoistAir.dryBulbFromEnthalpy(h1 - drop, w2);
        out[LEAVING_HUMIDITY_RATIO] = w2;
        out[SENSIBLE_HEAT_RATIO] =
                ws == humidityRatio ? 1 : (IdealMoistAir.enthalpy(dryBulb, ws) - ha) / (h1 - ha);
        out[BYPASS_MASS] = bypassMass;
    }

    private static double surfaceEnthalpy(double t, double humidityRatio, double pressure) {
        return IdealMoistAir.enthalpy(
                t, Math.min(humidityRatio, IdealMoistAir.saturationHumidityRatio(t, pressure)));
    }

    private static void checkAir(
            double dryBulb,
            double humidityRatio,
            double pressure,
            double dryAirMassFlow,
            double capacity) {
        Range.require("entering dry bulb", dryBulb, 273.15, 333.15, "K");
        Range.require("entering humidity ratio", humidityRatio, 0, 0.05, "kg/kg");
        Range.require("pressure", pressure, 50_000, 110_000, "Pa");
        Range.requireAbove("dry-air mass flow", dryAirMassFlow, 0, "kg/s");
        Range.requireAbove("total capacity", capacity, 0, "W");
        double saturated = IdealMoistAir.saturationHumidityRatio(dryBulb, pressure);
        if (humidityRatio > saturated * (1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "entering humidity ratio is "
                            + humidityRatio
                            + " kg/kg, but must not exceed saturation at "
                            + dryBulb
                            + " K, "
                            + saturated
                            + " kg/kg");
        }
    }
}
