package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/** Arithmetic of electricity bills: marginal blocks, time of use, demand. Money is a number. */
public final class Tariffs {

    private Tariffs() {}

    /**
     * Energy charge in marginal blocks: each block's price applies to the energy within it.
     *
     * @param energy energy of the billing period, kWh, not negative
     * @param upperLimits rising upper limits of all blocks but the last, kWh
     * @param prices price of each block, per kWh; one more than the limits
     * @return charge
     * @throws IllegalArgumentException if the energy is NaN or negative, the limits do not rise, or
     *     the lengths do not match
     */
    public static double blockCharge(double energy, double[] upperLimits, double[] prices) {
        Range.require("energy", energy, 0, Double.MAX_VALUE, "kWh");
        if (prices.length != upperLimits.length + 1) {
            throw new IllegalArgumentException(
                    "block tariff has "
                            + upperLimits.length
                            + " limits and "
                            + prices.length
                            + " prices, but needs one price more than limits");
        }
        double charge = 0;
        double below = 0;
        for (int i = 0; i < prices.length; i++) {
            double above = i < upperLimits.length ? upperLimits[i] : Double.POSITIVE_INFINITY;
            if (!(above > below)) {
                throw new IllegalArgumentException(
                        "block limit is " + above + " kWh, but must be above " + below + " kWh");
            }
            if (energy > below) {
                charge += prices[i] * (Math.min(energy, above) - below);
            }
            below = above;
        }
        return charge;
    }

    /**
     * Time-of-use energy charge with a demand charge.
     *
     * @param peakEnergy energy in peak hours, kWh
     * @param offPeakEnergy energy in other hours, kWh
     * @param demand highest mean power of the metering interval (usually 15 minutes), kW
     * @param peakPrice price per kWh in peak hours
     * @param offPeakPrice price per kWh in other hours
     * @param demandPrice price per kW
     * @return charge
     * @throws IllegalArgumentException if an energy or the demand is NaN or negative
     */
    public static double timeOfUseCharge(
            double peakEnergy,
            double offPeakEnergy,
            double demand,
            double peakPrice,
            double offPeakPrice,
            double demandPrice) {
        Range.require("peak energy", peakEnergy, 0, Double.MAX_VALUE, "kWh");
        Range.require("off-peak energy", offPeakEnergy, 0, Double.MAX_VALUE, "kWh");
        Range.require("demand", demand, 0, Double.MAX_VALUE, "kW");
        return peakEnergy * peakPrice + offPeakEnergy * offPeakPrice + demand * demandPrice;
    }
}
