package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * The handbook's radiant time series method for a design day: conduction delayed by 24 conduction
 * time factors, radiant gains delayed by 24 radiant time factors, both repeating every day.
 *
 * <p>Factors are shares of 1 (not percent). They may be the handbook's tables or, better, computed
 * from the layers and the room ({@code PeriodicResponse} and {@code RoomBalance} of this package).
 * Tables sum to 1 by definition; an exact room with a conducting outer wall returns less, so the
 * tables are on the safe side there.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 18, equations (30) to (34).
 */
public final class RadiantTimeSeries {

    private RadiantTimeSeries() {}

    /**
     * A daily series delayed by response factors: <code>out(h) = sum over k of f(k) in(h -
     * k)</code>, round the clock.
     *
     * @param series 24 values
     * @param factors 24 factors, k hours ago
     * @param out receives 24 values; must not be {@code series}
     * @throws IllegalArgumentException if an array is too short, out is series, or a value is NaN
     */
    public static void delay(double[] series, double[] factors, double[] out) {
        requireDay("series", series);
        requireDay("time factors", factors);
        if (out.length < 24 || out == series) {
            throw new IllegalArgumentException(
                    "result array has "
                            + out.length
                            + " places, but must be another array of at least 24");
        }
        for (int h = 0; h < 24; h++) {
            double sum = 0;
            for (int k = 0; k < 24; k++) {
                sum += factors[k] * series[h >= k ? h - k : h - k + 24];
            }
            out[h] = sum;
        }
    }

    /**
     * Heat conducted into a room held at one temperature: <code>q(h) = U A sum over k of c(k)
     * (te(h - k) - ti)</code>.
     *
     * @param transmittance U, W/(m2 K), in [0, 20]
     * @param area A, m2, in [0, 1e6]
     * @param solAir sol-air temperatures te at the 24 hour marks, K
     * @param room room temperature ti, K, in [250, 330]
     * @param conductionFactors conduction time factors c, shares of 1
     * @param out receives 24 heat gains, W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void conductionGain(
            double transmittance,
            double area,
            double[] solAir,
            double room,
            double[] conductionFactors,
            double[] out) {
        Range.require("U-factor", transmittance, 0, 20, "W/(m2 K)");
        Range.require("area", area, 0, 1e6, "m2");
        Range.require("room temperature", room, 250, 330, "K");
        delay(solAir, conductionFactors, out);
        double sum = 0;
        for (int k = 0; k < 24; k++) {
            sum += conductionFactors[k];
        }
        for (int h = 0; h < 24; h++) {
            out[h] = transmittance * area * (out[h] - sum * room);
        }
    }

    /**
     * Cooling load of a gain: its convective part at once, its radiant part delayed: <code>Q(h) =
     * (1 - F) q(h) + F sum over k of r(k) q(h - k)</code>.
     *
     * @param gain 24 heat gains, W
     * @param radiantFraction F, in [0, 1]
     * @param radiantFactors radiant time factors r, shares of 1: the solar series for beam sun, the
     *     nonsolar series for everything else
     * @param out receives 24 loads, W; must not be {@code gain}
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static void coolingLoad(
            double[] gain, double radiantFraction, double[] radiantFactors, double[] out) {
        Range.require("radiant fraction", radiantFraction, 0, 1, "-");
        delay(gain, radiantFactors, out);
        for (int h = 0; h < 24; h++) {
            out[h] = (1 - radiantFraction) * gain[h] + radiantFraction * out[h];
        }
    }

    private static void requireDay(String name, double[] values) {
        if (values.length < 24) {
            throw new IllegalArgumentException(
                    "number of " + name + " is " + values.length + ", but must be 24");
        }
        for (int h = 0; h < 24; h++) {
            Range.require(name + " at " + h, values[h], -1e12, 1e12, "-");
        }
    }
}
