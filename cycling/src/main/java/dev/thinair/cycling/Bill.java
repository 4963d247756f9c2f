package dev.thinair.cycling;

import java.util.Locale;

/**
 * What electricity costs.
 *
 * @param energyCharge charge for energy
 * @param demandCharge charge for the highest demand
 * @param fixedCharge charge independent of use
 * @param currency the currency's text
 */
public record Bill(double energyCharge, double demandCharge, double fixedCharge, String currency) {

    /**
     * The sum.
     *
     * @return energy, demand and fixed charge
     */
    public double total() {
        return energyCharge + demandCharge + fixedCharge;
    }

    /**
     * For shells and reports.
     *
     * @return the total with its parts
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f %s (energy %.2f, demand %.2f, fixed %.2f)",
                total(),
                currency,
                energyCharge,
                demandCharge,
                fixedCharge);
    }
}
