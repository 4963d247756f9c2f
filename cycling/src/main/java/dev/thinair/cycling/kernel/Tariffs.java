package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Arithmetic of electricity bills: marginal blocks, time of use, demand. Money is a number.
 *
 * <p>Source: definitions of the tariff's own terms; exact to rounding.
 */
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

    /** Days of the months of a common year. */
    private static final int[] MONTH_DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    /**
     * Splits hourly energies of a common year into months and into peak and other hours.
     *
     * <p>Hour 0 begins at midnight of 1 January, local standard time. Peak hours are those that
     * begin at {@code peakStart} or later and before {@code peakEnd}; the peak may pass midnight
     * ({@code peakStart} above {@code peakEnd}); equal values mean no peak.
     *
     * @param hourly energy of each hour, kWh, 8760 values, none negative
     * @param peakStart first peak hour of the day, 0 to 23
     * @param peakEnd hour of the day at which the peak ends, 0 to 24
     * @param firstWeekday weekday of 1 January, 1 for Monday to 7 for Sunday; 0 if the peak applies
     *     on every day
     * @param peak receives the peak energy of each month, kWh, 12 values
     * @param other receives the other energy of each month, kWh, 12 values
     * @param highest receives the highest hourly mean power of each month, kW, 12 values
     * @throws IllegalArgumentException if a length is wrong, an hour is out of range, or an energy
     *     is NaN, infinite or negative
     */
    public static void months(
            double[] hourly,
            int peakStart,
            int peakEnd,
            int firstWeekday,
            double[] peak,
            double[] other,
            double[] highest) {
        if (hourly.length != 8760) {
            throw new IllegalArgumentException(
                    "hourly energy has "
                            + hourly.length
                            + " values, but a common year has 8760 hours");
        }
        Range.require("first peak hour", peakStart, 0, 23, "h");
        Range.require("end of peak", peakEnd, 0, 24, "h");
        Range.require("first weekday", firstWeekday, 0, 7, "(Monday 1)");
        int hour = 0;
        int weekday = firstWeekday;
        for (int month = 0; month < 12; month++) {
            double inPeak = 0;
            double outside = 0;
            double most = 0;
            for (int day = 0; day < MONTH_DAYS[month]; day++) {
                boolean weekend = weekday >= 6;
                for (int h = 0; h < 24; h++, hour++) {
                    double e = hourly[hour];
                    if (!(e >= 0 && e <= Double.MAX_VALUE)) {
                        throw new IllegalArgumentException(
                                "energy of hour "
                                        + hour
                                        + " is "
                                        + e
                                        + " kWh, but must be finite and not negative");
                    }
                    if (!weekend && isPeak(h, peakStart, peakEnd)) {
                        inPeak += e;
                    } else {
                        outside += e;
                    }
                    most = Math.max(most, e);
                }
                if (firstWeekday != 0) {
                    weekday = weekday % 7 + 1;
                }
            }
            peak[month] = inPeak;
            other[month] = outside;
            highest[month] = most;
        }
    }

    /**
     * Whether an hour of the day is a peak hour.
     *
     * @param hour hour of the day, 0 to 23
     * @param peakStart first peak hour
     * @param peakEnd hour at which the peak ends
     * @return true from peakStart until before peakEnd, past midnight if peakStart is above peakEnd
     */
    public static boolean isPeak(int hour, int peakStart, int peakEnd) {
        return peakStart <= peakEnd
                ? hour >= peakStart && hour < peakEnd
                : hour >= peakStart || hour < peakEnd;
    }

    /**
     * Days of a month of a common year.
     *
     * @param month 0 for January to 11 for December
     * @return days
     */
    public static int monthDays(int month) {
        return MONTH_DAYS[month];
    }
}
