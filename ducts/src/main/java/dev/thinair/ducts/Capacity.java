package dev.thinair.ducts;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.ducts.kernel.TonnageAirflow;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * The largest cooling capacity that a duct system can carry: its standard airflow over the standard
 * airflow that a ton wants. Immutable.
 *
 * <p>The usual wants are 350 to 450 standard cfm per ton, 400 in the middle, 300 where a lower coil
 * temperature is accepted (common practice, no source); the maker's data sheet comes first.
 */
public final class Capacity {

    /** 300 standard cubic feet per minute and ton. */
    public static final Quantity<FlowPerCapacity> LOW =
            Units.quantity(300, Units.CUBIC_FOOT_PER_MINUTE_PER_TON);

    /** 350 standard cubic feet per minute and ton. */
    public static final Quantity<FlowPerCapacity> MIDDLE =
            Units.quantity(350, Units.CUBIC_FOOT_PER_MINUTE_PER_TON);

    /** 400 standard cubic feet per minute and ton. */
    public static final Quantity<FlowPerCapacity> FULL =
            Units.quantity(400, Units.CUBIC_FOOT_PER_MINUTE_PER_TON);

    private final double elevation;
    private final Airflow airflow;

    private Capacity(double elevation, Airflow airflow) {
        this.elevation = elevation;
        this.airflow = airflow;
    }

    /**
     * Largest capacity for a known airflow.
     *
     * @param airflow operating point of the ducts
     * @param wanted standard airflow that each unit of capacity wants, in [0.07, 7450 cfm per ton]
     * @return capacity
     * @throws IllegalArgumentException if an argument is null or out of range
     */
    public static Quantity<Power> largest(Airflow airflow, Quantity<FlowPerCapacity> wanted) {
        if (airflow == null) {
            throw new IllegalArgumentException("airflow is null");
        }
        double w = Si.cubicMetresPerSecondPerWatt(wanted, "airflow per capacity");
        return Units.watts(TonnageAirflow.capacity(airflow.standardSi(), w));
    }

    /**
     * Capacities of one system at several elevations, at the blower speed it is set to.
     *
     * @param system the duct system
     * @param dryBulb temperature of the air in the ducts
     * @param relativeHumidity relative humidity of the air in the ducts
     * @param elevations geopotential elevations, each in [-500, 6000 m]; pressure by the standard
     *     atmosphere
     * @return one answer per elevation, in the order given
     * @throws IllegalArgumentException if an argument is out of range or no elevation given
     * @throws IllegalStateException if the system has no operating point
     */
    public static List<Capacity> byElevation(
            DuctSystem system,
            Quantity<Temperature> dryBulb,
            Quantity<Dimensionless> relativeHumidity,
            List<Quantity<Length>> elevations) {
        if (system == null || elevations == null || elevations.isEmpty()) {
            throw new IllegalArgumentException(
                    "a duct system and at least one elevation are needed");
        }
        List<Capacity> all = new ArrayList<>();
        for (Quantity<Length> e : elevations) {
            double z = Si.metres(e, "elevation");
            Range.require("elevation", z, -500, 6_000, "m");
            MoistAir air =
                    MoistAir.ofDryBulbAndRelativeHumidity(
                            dryBulb,
                            relativeHumidity,
                            Units.pascals(StandardAtmosphere.pressure(z)));
            all.add(new Capacity(z, system.solve(air)));
        }
        return List.copyOf(all);
    }

    /**
     * Elevation of this answer.
     *
     * @return geopotential elevation
     */
    public Quantity<Length> elevation() {
        return Units.metres(elevation);
    }

    /**
     * Operating point at that elevation.
     *
     * @return airflow
     */
    public Airflow airflow() {
        return airflow;
    }

    /**
     * Largest capacity at a wanted standard airflow per capacity.
     *
     * @param wanted {@link #LOW}, {@link #MIDDLE}, {@link #FULL} or one's own
     * @return capacity
     * @throws IllegalArgumentException if the want is out of range
     */
    public Quantity<Power> at(Quantity<FlowPerCapacity> wanted) {
        return largest(airflow, wanted);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f m (%.0f ft): %.0f scfm; %.2f tons at 300, %.2f at 350, %.2f at 400 scfm per ton",
                elevation,
                elevation / 0.3048,
                airflow.standard().to(Units.CUBIC_FOOT_PER_MINUTE).getValue().doubleValue(),
                tons(LOW),
                tons(MIDDLE),
                tons(FULL));
    }

    private double tons(Quantity<FlowPerCapacity> wanted) {
        return at(wanted).to(Units.TON_OF_REFRIGERATION).getValue().doubleValue();
    }
}
