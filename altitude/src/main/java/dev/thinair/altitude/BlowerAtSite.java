package dev.thinair.altitude;

import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;

/**
 * One point of a blower's catalogue, which is printed for standard air, as it is at a site: same
 * speed and volume, pressure and shaft power times the density ratio. Immutable.
 *
 * @param airflow actual volume flow, the same at both densities, in [0, 1000] m3/s
 * @param cataloguePressure static pressure with standard air, in [0, 50000] Pa
 * @param cataloguePower shaft power with standard air, not negative
 * @param ratio density ratio, site over standard air
 */
public record BlowerAtSite(
        Quantity<VolumeFlow> airflow,
        Quantity<Pressure> cataloguePressure,
        Quantity<Power> cataloguePower,
        DensityRatio ratio) {

    /**
     * Checks the point.
     *
     * @param airflow actual volume flow, the same at both densities, in [0, 1000] m3/s
     * @param cataloguePressure static pressure with standard air, in [0, 50000] Pa
     * @param cataloguePower shaft power with standard air, not negative
     * @param ratio density ratio, site over standard air
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public BlowerAtSite {
        Range.require("airflow", Si.cubicMetresPerSecond(airflow, "airflow"), 0, 1000, "m3/s");
        Range.require(
                "catalogue pressure",
                Si.pascals(cataloguePressure, "catalogue pressure"),
                0,
                50_000,
                "Pa");
        Range.require("catalogue power", Si.watts(cataloguePower, "catalogue power"), 0, 1e6, "W");
        FanLaws.pressureAtDensity(1, ratio.number());
    }

    /**
     * Static pressure at the site, in the unit of the catalogue's.
     *
     * @return catalogue pressure times density ratio
     */
    public Quantity<Pressure> pressure() {
        return Units.quantity(
                FanLaws.pressureAtDensity(
                        cataloguePressure.getValue().doubleValue(), ratio.number()),
                cataloguePressure.getUnit());
    }

    /**
     * Shaft power at the site, in the unit of the catalogue's.
     *
     * @return catalogue power times density ratio
     */
    public Quantity<Power> power() {
        return Units.quantity(
                FanLaws.powerAtDensity(cataloguePower.getValue().doubleValue(), ratio.number()),
                cataloguePower.getUnit());
    }

    /**
     * The static pressure to look up in a catalogue for one wanted at a site.
     *
     * @param sitePressure static pressure wanted at the site, in [0, 50000] Pa
     * @param ratio density ratio, site over standard air
     * @return site pressure over density ratio, in the same unit
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Quantity<Pressure> cataloguePressureFor(
            Quantity<Pressure> sitePressure, DensityRatio ratio) {
        Range.require(
                "site static pressure",
                Si.pascals(sitePressure, "site static pressure"),
                0,
                50_000,
                "Pa");
        return Units.quantity(
                FanLaws.cataloguePressure(sitePressure.getValue().doubleValue(), ratio.number()),
                sitePressure.getUnit());
    }

    /**
     * The steps behind pressure and power; the last is {@link #power}.
     *
     * @return the working
     */
    public Working working() {
        String source = "fan laws, AMCA Publication 201 (from memory)";
        return Working.titled("Blower at the site, same speed")
                .given("p_c", "catalogue pressure", cataloguePressure)
                .given("P_c", "catalogue shaft power", cataloguePower)
                .given("r", "density ratio: " + ratio.basis().words(), ratio.value())
                .step("static pressure at the site", "p = r p_c", pressure(), source)
                .step("shaft power at the site", "P = r P_c", power(), source)
                .note("The volume flow is the catalogue's; the mass flow falls with the density.")
                .build();
    }

    @Override
    public String toString() {
        return QuantityText.formatBoth(airflow, 4)
                + " at "
                + QuantityText.formatBoth(pressure(), 4)
                + " and "
                + QuantityText.formatBoth(power(), 4)
                + " ("
                + ratio
                + ")";
    }
}
