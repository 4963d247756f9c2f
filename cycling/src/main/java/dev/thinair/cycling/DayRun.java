package dev.thinair.cycling;

import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * An installed system through a design day that has come to repeat itself.
 *
 * <p>Hours count from 0, the hour that begins at midnight of local standard time. Immutable.
 */
public final class DayRun {

    /** Mean excess above the band, K, from which an hour's load counts as not met. */
    private static final double UNMET = 0.025;

    private final RunRecord record;
    private final double[] setpoint;
    private final double bandTop;
    private final double[] relativeHumidity;
    private final double[] load;
    private final Bill bill;
    private final CoilIcing icing;

    DayRun(
            RunRecord record,
            double[] setpoint,
            double bandTop,
            double[] relativeHumidity,
            double[] load,
            Bill bill,
            CoilIcing icing) {
        this.record = record;
        this.setpoint = setpoint;
        this.bandTop = bandTop;
        this.relativeHumidity = relativeHumidity;
        this.load = load;
        this.bill = bill;
        this.icing = icing;
    }

    /**
     * Setpoint in an hour.
     *
     * @param hour 0 to 23
     * @return the thermostat's setpoint
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Temperature> setpoint(int hour) {
        return Units.kelvins(setpoint[setpoint.length == 1 ? 0 : hour]);
    }

    /**
     * Mean temperature at the thermostat in an hour.
     *
     * @param hour 0 to 23
     * @return the mean, exact for the model
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Temperature> indoorTemperature(int hour) {
        return Units.kelvins(record.meanTemperature(hour));
    }

    /**
     * Highest temperature at the thermostat in an hour.
     *
     * @param hour 0 to 23
     * @return the highest temperature
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Temperature> maximumIndoorTemperature(int hour) {
        return Units.kelvins(record.maximumTemperature(hour));
    }

    /**
     * Indoor relative humidity in an hour: of the hour's mean temperature and the humidity ratio at
     * its end.
     *
     * @param hour 0 to 23
     * @return relative humidity
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Dimensionless> indoorRelativeHumidity(int hour) {
        return Units.percent(100 * relativeHumidity[hour]);
    }

    /**
     * Share of an hour in which the unit ran.
     *
     * @param hour 0 to 23
     * @return run fraction
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Dimensionless> runFraction(int hour) {
        return Units.ratio(record.onSeconds(hour) / record.interval());
    }

    /**
     * Starts in an hour.
     *
     * @param hour 0 to 23
     * @return how often the unit switched on
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public int starts(int hour) {
        return record.starts(hour);
    }

    /**
     * Time the unit ran.
     *
     * @return hours of the day
     */
    public Quantity<Time> hoursOn() {
        return Units.hours(record.totalOnSeconds() / 3600);
    }

    /**
     * Longest time without a stop. A unit that never stops shows a whole day.
     *
     * @return the longest run
     */
    public Quantity<Time> longestRun() {
        return Units.minutes(record.longestRun() / 60);
    }

    /**
     * Starts of the day.
     *
     * @return how often the unit switched on
     */
    public int starts() {
        return record.totalStarts();
    }

    /**
     * Starts in the busiest hour.
     *
     * @return the largest hourly count
     */
    public int startsInBusiestHour() {
        int most = 0;
        for (int h = 0; h < record.count(); h++) {
            most = Math.max(most, record.starts(h));
        }
        return most;
    }

    /**
     * How warm for how long: the temperature above the upper edge of the thermostat's band, summed
     * over time, K h. Zero (but for the short lag of a start) when the unit keeps up.
     *
     * @return kelvin hours
     */
    public double degreeHoursAboveSetpoint() {
        return record.totalAbove() / 3600;
    }

    /**
     * Highest temperature at the thermostat.
     *
     * @return the day's highest
     */
    public Quantity<Temperature> maximumIndoorTemperature() {
        double highest = Double.NEGATIVE_INFINITY;
        for (int h = 0; h < record.count(); h++) {
            highest = Math.max(highest, record.maximumTemperature(h));
        }
        return Units.kelvins(highest);
    }

    /**
     * How far the house got above the upper edge of the thermostat's band at worst; 0 if never.
     *
     * @return the largest miss
     */
    public Quantity<TemperatureDifference> miss() {
        double worst = 0;
        for (int h = 0; h < record.count(); h++) {
            double set = setpoint[setpoint.length == 1 ? 0 : h];
            worst = Math.max(worst, record.maximumTemperature(h) - set - bandTop);
        }
        return Units.kelvinDifference(worst);
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

    /**
     * Heat taken from the rooms.
     *
     * @return sensible heat of the day
     */
    public Quantity<Energy> delivered() {
        return Units.kilowattHours(record.totalDelivered() / 3.6e6);
    }

    /**
     * Electricity: compressor, both fans, and what is used while off.
     *
     * @return energy of the day
     */
    public Quantity<Energy> electricity() {
        return Units.kilowattHours(record.totalElectricity() / 3.6e6);
    }

    /**
     * Electricity of an hour.
     *
     * @param hour 0 to 23
     * @return energy of the hour
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Energy> electricity(int hour) {
        return Units.kilowattHours(record.electricity(hour) / 3.6e6);
    }

    /**
     * Heat taken from the rooms in an hour.
     *
     * @param hour 0 to 23
     * @return sensible heat of the hour
     * @throws IndexOutOfBoundsException if the hour is not 0 to 23
     */
    public Quantity<Energy> delivered(int hour) {
        return Units.kilowattHours(record.delivered(hour) / 3.6e6);
    }

    /**
     * Load that was not met: the design load at the setpoint less what was delivered, summed over
     * the hours that ended above the thermostat's band. Never counted as delivered.
     *
     * @return sensible heat
     */
    public Quantity<Energy> unmetLoad() {
        double unmet = 0;
        for (int h = 0; h < record.count(); h++) {
            if (record.above(h) > UNMET * record.interval()) {
                unmet += Math.max(0, load[h] * record.interval() - record.delivered(h));
            }
        }
        return Units.kilowattHours(unmet / 3.6e6);
    }

    /**
     * What the day costs by the tariff: the thirtieth part of a month of such days.
     *
     * @return money, in {@link #currency()}
     */
    public double cost() {
        return bill.total();
    }

    /**
     * The bill of the day, in its parts.
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
     * Mean of the hourly relative humidities.
     *
     * @return relative humidity
     */
    public Quantity<Dimensionless> meanRelativeHumidity() {
        double sum = 0;
        for (double r : relativeHumidity) {
            sum += r;
        }
        return Units.percent(100 * sum / relativeHumidity.length);
    }

    /**
     * Highest of the hourly relative humidities.
     *
     * @return relative humidity
     */
    public Quantity<Dimensionless> peakRelativeHumidity() {
        double most = 0;
        for (double r : relativeHumidity) {
            most = Math.max(most, r);
        }
        return Units.percent(100 * most);
    }

    /**
     * Share of the running unit's heat that its starts cost: the cycling penalty, found by running
     * and not by a rule.
     *
     * @return share of the heat a unit without start-up lag would have taken in the same time
     */
    public Quantity<Dimensionless> cyclingPenalty() {
        return Units.percent(100 * record.startUpLoss());
    }

    /**
     * Mean length of the runs that ended; the day's running time if none did.
     *
     * @return mean run
     */
    public Quantity<Time> meanRun() {
        int starts = record.totalStarts();
        return Units.minutes(record.totalOnSeconds() / 60 / Math.max(1, starts));
    }

    /**
     * How many days were run until the day repeated itself, ice left out.
     *
     * @return at least 1
     */
    public int repeatedDays() {
        return clearCoil().record.repeatedDays();
    }

    /**
     * Whether the day, ice left out, came to repeat itself to a hundredth of a kelvin. A
     * thermostat's cycle, cut at the day's end, may have no such day but days that take turns, a
     * few hundredths apart; the figures then are those of the last one run, and {@link
     * RunRecord#repeatError()} says how far it missed.
     *
     * @return true if the next day would be the same
     */
    public boolean repeats() {
        return clearCoil().record.repeats();
    }

    /**
     * What ice does on this day. All other numbers of the day are those of the iced coil.
     *
     * @return the ice, or empty if none forms
     */
    public Optional<CoilIcing> icing() {
        return Optional.ofNullable(icing);
    }

    /** This day, or the same with a coil that is always clear if ice forms. */
    DayRun clearCoil() {
        return icing == null ? this : icing.clearCoil();
    }

    /**
     * The primitive record: switch times, traces, hourly numbers in SI units.
     *
     * @return the record
     */
    public RunRecord record() {
        return record;
    }

    private void requireRan() {
        if (!ran()) {
            throw new IllegalStateException(
                    "the unit never ran on this day, so its coil has no state");
        }
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "day run: %.1f h on in %d starts, longest %.0f min, highest %.1f degC, %.1f kWh",
                record.totalOnSeconds() / 3600,
                starts(),
                record.longestRun() / 60,
                maximumIndoorTemperature().getValue().doubleValue() - 273.15,
                record.totalElectricity() / 3.6e6);
    }
}
