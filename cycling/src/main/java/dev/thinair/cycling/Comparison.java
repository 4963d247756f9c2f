package dev.thinair.cycling;

import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.TemperatureDifference;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * What each remedy does, side by side: every row is a run of the changed system on the same design
 * day.
 *
 * @param rows the system as found first (if it runs at all), then the remedies: free ones, then
 *     ducts, then equipment
 * @param runsAsFound whether the system as found runs, so that the first row is its
 */
public record Comparison(List<Row> rows, boolean runsAsFound) {

    /**
     * Copies the rows.
     *
     * @param rows as the component
     * @param runsAsFound as the component
     * @throws IllegalArgumentException if there are none although the system as found runs
     */
    public Comparison {
        if (rows == null || (rows.isEmpty() && runsAsFound)) {
            throw new IllegalArgumentException("a comparison needs at least the system as found");
        }
        rows = List.copyOf(rows);
    }

    /**
     * One system on the design day.
     *
     * @param title what was changed
     * @param kind what sort of change it is
     * @param system the changed system
     * @param airflowPerTon actual airflow per unit of rated capacity
     * @param standardAirflowPerTon the same mass of air as a flow of standard air
     * @param capacity total capacity at the design hour, with the airflow that ice leaves then
     * @param minimumCoilTemperature lowest coil surface temperature of the day while clear of ice
     * @param minimumSuctionTemperature lowest saturated suction temperature of the day while clear
     *     of ice
     * @param ices whether the coil's surface falls below freezing
     * @param airflowLeft least share of the airflow that ice leaves on that day, 100 % without ice
     * @param starts starts of the day
     * @param longestRun longest time without a stop
     * @param runFraction share of the day the unit ran
     * @param miss how far above the thermostat's band the house got
     * @param degreeHours temperature above the band, summed over time, K h
     * @param peakRelativeHumidity highest indoor relative humidity
     * @param electricity electricity of the day
     * @param cost what the day costs
     * @param remaining number of findings of severity warning or worse that remain
     */
    public record Row(
            String title,
            Remedy.Kind kind,
            InstalledSystem system,
            Quantity<FlowPerCapacity> airflowPerTon,
            Quantity<FlowPerCapacity> standardAirflowPerTon,
            Quantity<Power> capacity,
            Quantity<Temperature> minimumCoilTemperature,
            Quantity<Temperature> minimumSuctionTemperature,
            boolean ices,
            Quantity<Dimensionless> airflowLeft,
            int starts,
            Quantity<Time> longestRun,
            Quantity<Dimensionless> runFraction,
            Quantity<TemperatureDifference> miss,
            double degreeHours,
            Quantity<Dimensionless> peakRelativeHumidity,
            Quantity<Energy> electricity,
            double cost,
            int remaining) {}

    /**
     * The system as found.
     *
     * @return the first row
     * @throws IllegalStateException if the system as found does not run
     */
    public Row asFound() {
        if (!runsAsFound) {
            throw new IllegalStateException(
                    "the system as found does not run, so it has no row; see the findings");
        }
        return rows.get(0);
    }
}
