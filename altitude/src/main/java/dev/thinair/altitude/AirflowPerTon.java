package dev.thinair.altitude;

import dev.thinair.altitude.kernel.DuctDerating;
import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/**
 * Airflow per ton of cooling: the actual airflow that carries the mass of a standard one. 400
 * standard cfm per ton are 499 actual cfm per ton at 6000 ft and 538 at 8000 ft.
 *
 * <p>The bases 400 (suggested), 350 (works) and 300 (minimum) standard cfm per ton are common
 * practice without a source. Immutable.
 *
 * @param standard airflow per capacity in standard air, above zero
 * @param ratio density ratio, site over standard
 */
public record AirflowPerTon(Quantity<FlowPerCapacity> standard, DensityRatio ratio) {

    /**
     * Checks the standard airflow.
     *
     * @param standard airflow per capacity in standard air, above zero
     * @param ratio density ratio, site over standard
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the standard airflow is not above zero
     */
    public AirflowPerTon {
        Range.requireAbove(
                "standard airflow per capacity",
                Si.cubicMetresPerSecondPerWatt(standard, "standard airflow per capacity"),
                0,
                "m3/s per W");
        DuctDerating.volumeForSameHeat(ratio.number());
    }

    /**
     * The actual airflow per capacity at the site, in the unit of the standard one.
     *
     * @return standard over density ratio
     */
    public Quantity<FlowPerCapacity> actual() {
        return Units.quantity(
                standard.getValue().doubleValue() * DuctDerating.volumeForSameHeat(ratio.number()),
                standard.getUnit());
    }

    /**
     * The actual airflow for a capacity.
     *
     * @param capacity cooling capacity
     * @return airflow at the site in m3/s
     * @throws NullPointerException if capacity is null
     * @throws IllegalArgumentException if capacity is not finite
     */
    public Quantity<VolumeFlow> actualFor(Quantity<Power> capacity) {
        return Units.cubicMetresPerSecond(
                Si.cubicMetresPerSecondPerWatt(actual(), "actual airflow per capacity")
                        * Si.watts(capacity, "capacity"));
    }

    /**
     * The steps behind {@link #actual}.
     *
     * @return the working
     */
    public Working working() {
        return Working.titled("Actual airflow per ton")
                .given("V_s", "standard airflow per capacity", standard)
                .given("r", "density ratio: " + ratio.basis().words(), ratio.value())
                .step(
                        "actual airflow per capacity",
                        "V = V_s / r",
                        actual(),
                        "continuity: the same mass carries the same heat")
                .build();
    }

    @Override
    public String toString() {
        return QuantityText.formatBoth(standard, 4)
                + " of standard air are "
                + QuantityText.formatBoth(actual(), 4)
                + " of site air";
    }
}
