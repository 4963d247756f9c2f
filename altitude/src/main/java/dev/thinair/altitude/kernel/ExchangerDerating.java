package dev.thinair.altitude.kernel;

import dev.thinair.units.Range;

/**
 * What thin air does to a DX coil or an air-cooled condenser: heat exchangers with one side at the
 * (nearly) constant temperature of a boiling or condensing refrigerant and air on the other.
 *
 * <p>With contact factor <var>E</var> = 1 - exp(-NTU) (one minus the trade's bypass factor), heat =
 * mass flow x specific heat x <var>E</var> x (air - surface). When the air's mass flow changes by
 * <var>m</var>, NTU changes by <var>m</var><sup>n-1</sup>, where the air-side coefficient goes with
 * mass velocity to the power <var>n</var>: about 0.6 for plain plate fins (from memory: j-factor
 * correlations for plain fins give 0.5 to 0.7), 0 if the coefficient is taken as constant. At the
 * same mass flow the coefficient, Reynolds number and NTU are unchanged, whatever the density.
 *
 * <p>This is the air side alone. The refrigerant side answers with another coil temperature: at
 * less air mass the coil runs colder and takes more moisture, so the total falls less than the
 * sensible heat. That balance is the work of module {@code cycling}. Source: effectiveness-NTU
 * method, capacity-rate ratio zero (any heat-transfer text). All functions are pure and
 * allocation-free.
 */
public final class ExchangerDerating {

    /** Exponent of the air-side coefficient on mass velocity for plain plate fins, from memory. */
    public static final double PLAIN_FIN_EXPONENT = 0.6;

    private ExchangerDerating() {}

    /**
     * Contact factor at another air mass flow: 1 - (1 - <var>E</var>)<sup>m^(n-1)</sup>.
     *
     * @param contactFactor contact factor (1 - bypass factor) at sea level, in (0, 1]
     * @param massRatio mass flow over that at sea level, in (0, 10]
     * @param exponent n of the air-side coefficient, in [0, 1]
     * @return contact factor at the site
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double contactFactor(double contactFactor, double massRatio, double exponent) {
        Range.require("contact factor", contactFactor, Double.MIN_NORMAL, 1, "(ratio)");
        Range.require("mass flow ratio", massRatio, Double.MIN_NORMAL, 10, "(ratio)");
        Range.require("exponent of the air-side coefficient", exponent, 0, 1, "(number)");
        return -Math.expm1(Math.pow(massRatio, exponent - 1.0) * Math.log1p(-contactFactor));
    }

    /**
     * Heat at the same surface and air temperatures: <var>m</var> <var>E</var>'/<var>E</var>. For a
     * coil this is the sensible heat at an unchanged surface temperature; for a condenser the heat
     * it rejects at an unchanged condensing temperature.
     *
     * @param contactFactor contact factor at sea level, in (0, 1]
     * @param massRatio mass flow over that at sea level, in (0, 10]
     * @param exponent n of the air-side coefficient, in [0, 1]
     * @return heat over that at sea level
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double heatAtSameSurface(
            double contactFactor, double massRatio, double exponent) {
        return massRatio * contactFactor(contactFactor, massRatio, exponent) / contactFactor;
    }

    /**
     * Temperature difference between surface and entering air for the same heat: the inverse of
     * {@link #heatAtSameSurface}. A condenser that rejects its heat into thin air condenses that
     * much further above the outdoor temperature.
     *
     * @param contactFactor contact factor at sea level, in (0, 1]
     * @param massRatio mass flow over that at sea level, in (0, 10]
     * @param exponent n of the air-side coefficient, in [0, 1]
     * @return temperature difference over that at sea level
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double differenceForSameHeat(
            double contactFactor, double massRatio, double exponent) {
        return 1.0 / heatAtSameSurface(contactFactor, massRatio, exponent);
    }

    /**
     * Highest face velocity over that at sea level at which the air's pull on condensate is the
     * same: <var>r</var><sup>-1/2</sup>, since the pull goes with density times velocity squared.
     *
     * @param densityRatio site density over sea level, in (0, 2]
     * @return face velocity over that at sea level
     * @throws IllegalArgumentException if the ratio is NaN or outside its range
     */
    public static double carryOverVelocity(double densityRatio) {
        FanLaws.requireDensity(densityRatio);
        return 1.0 / Math.sqrt(densityRatio);
    }
}
