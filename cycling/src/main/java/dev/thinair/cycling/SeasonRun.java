package dev.thinair.cycling;

import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;
import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** An installed system through a series of hourly weather. Immutable. */
public final class SeasonRun {

    private final RunRecord record;
    private final Bill bill;
    private final double[] airflow;
    private final double pressure;

    SeasonRun(RunRecord record, Bill bill, double[] airflow, double pressure) {
        this.record = record;
        this.bill = bill;
        this.airflow = airflow;
        this.pressure = pressure;
    }

    /**
     * Number of hours run through.
     *
     * @return count
     */
    public int hours() {
        return record.count();
    }

    /**
     * Time the unit ran.
     *
     * @return hours of the season
     */
    public Quantity<Time> hoursOn() {
        return Units.hours(record.totalOnSeconds() / 3600);
    }

    /**
     * Starts of the season.
     *
     * @return how often the unit switched on
     */
    public int starts() {
        return record.totalStarts();
    }

    /**
     * Starts in an hour.
     *
     * @param hour hour of the series, from 0
     * @return how often the unit switched on
     * @throws IndexOutOfBoundsException if the series does not have the hour
     */
    public int starts(int hour) {
        return record.starts(hour);
    }

    /**
     * Share of an hour in which the unit ran.
     *
     * @param hour hour of the series, from 0
     * @return run fraction
     * @throws IndexOutOfBoundsException if the series does not have the hour
     */
    public Quantity<Dimensionless> runFraction(int hour) {
        return Units.ratio(record.onSeconds(hour) / record.interval());
    }

    /**
     * Mean temperature at the thermostat in an hour.
     *
     * @param hour hour of the series, from 0
     * @return the mean, exact for the model
     * @throws IndexOutOfBoundsException if the series does not have the hour
     */
    public Quantity<Temperature> indoorTemperature(int hour) {
        return Units.kelvins(record.meanTemperature(hour));
    }

    /**
     * Indoor relative humidity in an hour: of the hour's mean temperature and the humidity ratio at
     * its end.
     *
     * @param hour hour of the series, from 0
     * @return relative humidity
     * @throws IndexOutOfBoundsException if the series does not have the hour
     */
    public Quantity<Dimensionless> indoorRelativeHumidity(int hour) {
        return Units.percent(
                100
                        * IdealMoistAir.relativeHumidity(
                                record.meanTemperature(hour),
                                record.endHumidityRatio(hour),
                                pressure));
    }

    /**
     * Whether the unit ran at all.
     *
     * @return true if it ran
     */
    public boolean ran() {
        return record.totalOnSeconds() > 0;
    }

    /**
     * Lowest temperature of the coil's surface.
     *
     * @return the lowest surface temperature
     * @throws IllegalStateException if the unit never ran
     */
    public Quantity<Temperature> minimumCoilTemperature() {
        requireRan();
        return Units.kelvins(record.minimumCoil());
    }

    /**
     * Lowest saturated suction temperature.
     *
     * @return the lowest temperature of the refrigerant in the coil
     * @throws IllegalStateException if the unit never ran
     */
    public Quantity<Temperature> minimumSuctionTemperature() {
        requireRan();
        return Units.kelvins(record.minimumSuction());
    }

    private void requireRan() {
        if (!ran()) {
            throw new IllegalStateException(
                    "the unit never ran in this season, so its coil has no state");
        }
    }

    /**
     * Mean number of starts of the days on which the unit ran.
     *
     * @return starts per day, 0 if it never ran
     */
    public double startsPerDay() {
        int days = 0;
        for (int d = 0; d * 24 < record.count(); d++) {
            double on = 0;
            for (int h = 24 * d; h < Math.min(record.count(), 24 * d + 24); h++) {
                on += record.onSeconds(h);
            }
            if (on > 0) {
                days++;
            }
        }
        return days == 0 ? 0 : (double) starts() / days;
    }

    /**
     * Longest time without a stop.
     *
     * @return the longest run
     */
    public Quantity<Time> longestRun() {
        return Units.hours(record.longestRun() / 3600);
    }

    /**
     * Temperature above the upper edge of the thermostat's band, summed over time, K h.
     *
     * @return kelvin hours
     */
    public double degreeHoursAboveSetpoint() {
        return record.totalAbove() / 3600;
    }

    /**
     * Hours in which ice takes more than a tenth of the airflow.
     *
     * @return number of hours
     * @see CoilIcing
     */
    public int hoursIced() {
        int count = 0;
        for (double share : airflow) {
            if (share < CoilIcing.CHOKED) {
                count++;
            }
        }
        return count;
    }

    /**
     * Electricity of the season.
     *
     * @return energy
     */
    public Quantity<Energy> electricity() {
        return Units.kilowattHours(record.totalElectricity() / 3.6e6);
    }

    /**
     * Heat taken from the rooms.
     *
     * @return sensible heat
     */
    public Quantity<Energy> delivered() {
        return Units.kilowattHours(record.totalDelivered() / 3.6e6);
    }

    /**
     * What the season costs by the tariff.
     *
     * @return money, in {@link #currency()}
     */
    public double cost() {
        return bill.total();
    }

    /**
     * The bill in its parts.
     *
     * @return the bill
     */
    public Bill bill() {
        return bill;
    }

    /**
     * Currency of the cost.
     *
     * @return the tariff's text
     */
    public String currency() {
        return bill.currency();
    }

    /**
     * Wear, as the share of a compressor's life in starts that the season uses up.
     *
     * @param lifeStarts number of starts a compressor is taken to last, above 0; a figure of the
     *     user's, common practice gives no agreed one
     * @return starts divided by life
     * @throws IllegalArgumentException if the life is not above 0
     */
    public double wear(double lifeStarts) {
        Range.requireAbove("life in starts", lifeStarts, 0, "");
        return starts() / lifeStarts;
    }

    /**
     * The primitive record: switch times, hourly numbers in SI units.
     *
     * @return the record
     */
    public RunRecord record() {
        return record;
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "season run: %d h, %.0f h on in %d starts, %.0f kWh",
                record.count(),
                record.totalOnSeconds() / 3600,
                starts(),
                record.totalElectricity() / 3.6e6);
    }
}
