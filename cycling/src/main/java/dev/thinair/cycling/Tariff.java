package dev.thinair.cycling;

import dev.thinair.cycling.kernel.Tariffs;
import dev.thinair.units.Range;
import java.time.DayOfWeek;

/**
 * An electricity tariff: energy in marginal blocks or by time of use, a demand charge, a fixed
 * charge. Money is a plain number with the currency's text.
 *
 * <p>Prices are the user's data. Immutable.
 */
public final class Tariff {

    private static final double[] NO_LIMITS = {};
    private static final int DAYS_IN_BILLING_MONTH = 30;

    private final String currency;
    private final double[] limits;
    private final double[] prices;
    private final int peakStart;
    private final int peakEnd;
    private final double peakPrice;
    private final boolean weekdaysOnly;
    private final double demandPrice;
    private final double fixedPerMonth;

    private Tariff(
            String currency,
            double[] limits,
            double[] prices,
            int peakStart,
            int peakEnd,
            double peakPrice,
            boolean weekdaysOnly,
            double demandPrice,
            double fixedPerMonth) {
        if (currency == null || currency.isBlank()) {
            throw new IllegalArgumentException("currency is missing");
        }
        for (double price : prices) {
            Range.require("price", price, -100, 1000, currency + "/kWh");
        }
        Range.require("peak price", peakPrice, -100, 1000, currency + "/kWh");
        Range.require("demand price", demandPrice, 0, 1e5, currency + "/kW");
        Range.require("fixed charge", fixedPerMonth, 0, 1e6, currency + "/month");
        // A trial run refuses limits that do not rise and lengths that do not match.
        Tariffs.blockCharge(0, limits, prices);
        this.currency = currency;
        this.limits = limits.clone();
        this.prices = prices.clone();
        this.peakStart = peakStart;
        this.peakEnd = peakEnd;
        this.peakPrice = peakPrice;
        this.weekdaysOnly = weekdaysOnly;
        this.demandPrice = demandPrice;
        this.fixedPerMonth = fixedPerMonth;
    }

    /**
     * One price for every kilowatt-hour.
     *
     * @param currency the currency's text
     * @param price price per kWh
     * @return the tariff
     * @throws IllegalArgumentException if the currency is missing or the price out of range
     */
    public static Tariff flat(String currency, double price) {
        return blocks(currency, NO_LIMITS, new double[] {price});
    }

    /**
     * Marginal blocks by month: each price applies to the energy within its block.
     *
     * @param currency the currency's text
     * @param upperLimits rising upper limits of all blocks but the last, kWh a month
     * @param prices price of each block per kWh, one more than limits
     * @return the tariff
     * @throws IllegalArgumentException if the currency is missing, a price is out of range, the
     *     limits do not rise, or the lengths do not match
     */
    public static Tariff blocks(String currency, double[] upperLimits, double[] prices) {
        return new Tariff(currency, upperLimits, prices, 0, 0, 0, false, 0, 0);
    }

    /**
     * Time of use: one price in the peak hours, one in the others.
     *
     * @param currency the currency's text
     * @param peakPrice price per kWh in peak hours
     * @param otherPrice price per kWh in other hours
     * @param peakStart first peak hour of the day, 0 to 23, local standard time
     * @param peakEnd hour of the day at which the peak ends, 0 to 24; below peakStart if the peak
     *     passes midnight
     * @param weekdaysOnly true if Saturdays and Sundays have no peak
     * @return the tariff
     * @throws IllegalArgumentException if the currency is missing or a number is out of range
     */
    public static Tariff timeOfUse(
            String currency,
            double peakPrice,
            double otherPrice,
            int peakStart,
            int peakEnd,
            boolean weekdaysOnly) {
        Range.require("first peak hour", peakStart, 0, 23, "h");
        Range.require("end of peak", peakEnd, 0, 24, "h");
        return new Tariff(
                currency,
                NO_LIMITS,
                new double[] {otherPrice},
                peakStart,
                peakEnd,
                peakPrice,
                weekdaysOnly,
                0,
                0);
    }

    /**
     * The same tariff with a demand charge.
     *
     * @param perKilowatt price per kW of the month's highest demand, not negative
     * @return the changed tariff
     * @throws IllegalArgumentException if the price is out of range
     */
    public Tariff withDemandPrice(double perKilowatt) {
        return new Tariff(
                currency,
                limits,
                prices,
                peakStart,
                peakEnd,
                peakPrice,
                weekdaysOnly,
                perKilowatt,
                fixedPerMonth);
    }

    /**
     * The same tariff with a fixed charge.
     *
     * @param perMonth charge per month, not negative
     * @return the changed tariff
     * @throws IllegalArgumentException if the charge is out of range
     */
    public Tariff withFixedCharge(double perMonth) {
        return new Tariff(
                currency,
                limits,
                prices,
                peakStart,
                peakEnd,
                peakPrice,
                weekdaysOnly,
                demandPrice,
                perMonth);
    }

    /**
     * The currency.
     *
     * @return its text
     */
    public String currency() {
        return currency;
    }

    /**
     * Cost of one month from its sums.
     *
     * @param peakEnergy energy in peak hours, kWh; 0 without time of use
     * @param otherEnergy energy in other hours, kWh
     * @param demand highest mean power of the metering interval, kW
     * @return the bill, fixed charge of one month counted
     * @throws IllegalArgumentException if a number is NaN or negative, or the tariff has no peak
     *     hours and there is energy in them
     */
    public Bill costOfMonth(double peakEnergy, double otherEnergy, double demand) {
        if (peakStart == peakEnd) {
            Range.require("peak energy under a tariff without peak hours", peakEnergy, 0, 0, "kWh");
        }
        double energy =
                Tariffs.timeOfUseCharge(peakEnergy, 0, 0, peakPrice, 0, 0)
                        + Tariffs.blockCharge(otherEnergy, limits, prices);
        return new Bill(
                energy,
                Tariffs.timeOfUseCharge(0, 0, demand, 0, 0, demandPrice),
                fixedPerMonth,
                currency);
    }

    /**
     * Cost of one day, as the thirtieth part of a month of such days. Fixed charge and demand
     * charge are counted in the same way; the highest hourly mean stands for the demand, which is
     * at or below the 15-minute mean that is usually metered.
     *
     * @param hourly energy of each hour, kWh, 24 values from midnight, local standard time; a
     *     weekday
     * @return the bill
     * @throws IllegalArgumentException if there are not 24 values, or one is NaN or negative
     */
    public Bill costOfDay(double[] hourly) {
        if (hourly.length != 24) {
            throw new IllegalArgumentException(
                    "hourly energy has " + hourly.length + " values, but a day has 24 hours");
        }
        double peak = 0;
        double other = 0;
        double highest = 0;
        for (int h = 0; h < 24; h++) {
            Range.require("energy of an hour", hourly[h], 0, Double.MAX_VALUE, "kWh");
            if (Tariffs.isPeak(h, peakStart, peakEnd)) {
                peak += hourly[h];
            } else {
                other += hourly[h];
            }
            highest = Math.max(highest, hourly[h]);
        }
        Bill month =
                costOfMonth(DAYS_IN_BILLING_MONTH * peak, DAYS_IN_BILLING_MONTH * other, highest);
        return new Bill(
                month.energyCharge() / DAYS_IN_BILLING_MONTH,
                month.demandCharge() / DAYS_IN_BILLING_MONTH,
                month.fixedCharge() / DAYS_IN_BILLING_MONTH,
                currency);
    }

    /**
     * Cost of a common year that begins on a Monday; the highest hourly mean stands for the demand.
     *
     * @param hourly energy of each hour, kWh, 8760 values from midnight of 1 January, local
     *     standard time
     * @return the bill of the year
     * @throws IllegalArgumentException if there are not 8760 values, or one is NaN or negative
     */
    public Bill costOfYear(double[] hourly) {
        return costOfYear(hourly, DayOfWeek.MONDAY, null);
    }

    /**
     * Cost of a common year.
     *
     * @param hourly energy of each hour, kWh, 8760 values from midnight of 1 January, local
     *     standard time
     * @param firstDay weekday of 1 January
     * @param monthlyDemand highest mean power of the metering interval in each month, kW, 12
     *     values; null to take the highest hourly mean
     * @return the bill of the year
     * @throws IllegalArgumentException if a length is wrong, the weekday is missing, or a number is
     *     NaN or negative
     */
    public Bill costOfYear(double[] hourly, DayOfWeek firstDay, double[] monthlyDemand) {
        if (firstDay == null) {
            throw new IllegalArgumentException("weekday of 1 January is missing");
        }
        if (monthlyDemand != null && monthlyDemand.length != 12) {
            throw new IllegalArgumentException(
                    "monthly demand has "
                            + monthlyDemand.length
                            + " values, but a year has 12 months");
        }
        double[] peak = new double[12];
        double[] other = new double[12];
        double[] highest = new double[12];
        Tariffs.months(
                hourly,
                peakStart,
                peakEnd,
                weekdaysOnly ? firstDay.getValue() : 0,
                peak,
                other,
                highest);
        double energy = 0;
        double demand = 0;
        for (int m = 0; m < 12; m++) {
            Bill month =
                    costOfMonth(
                            peak[m],
                            other[m],
                            monthlyDemand == null ? highest[m] : monthlyDemand[m]);
            energy += month.energyCharge();
            demand += month.demandCharge();
        }
        return new Bill(energy, demand, 12 * fixedPerMonth, currency);
    }
}
