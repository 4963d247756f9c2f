package dev.thinair.cycling;

import dev.thinair.cycling.kernel.CoilFrost;
import dev.thinair.units.Range;
import dev.thinair.units.Units;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/**
 * What ice does on a day on which the coil freezes. The day begins at midnight with a clear coil in
 * the house that the same system would keep if ice did not matter; from there on ice gathers while
 * the coil is below freezing, takes away airflow and with it capacity, and thaws while the unit
 * rests. Immutable.
 *
 * @see CoilFrost for the model and what it leaves out
 */
public final class CoilIcing {

    /** Share of the airflow below which a coil counts as choked. Common practice, no source. */
    public static final double CHOKED = 0.9;

    private final DayRun clear;
    private final double[] ice;
    private final double[] air;

    CoilIcing(DayRun clear, double[] ice, double[] air) {
        this.clear = clear;
        this.ice = ice;
        this.air = air;
    }

    /**
     * The same day if ice did not matter: what no iced coil delivers. For comparison only.
     *
     * @return the run with a coil that is always clear
     */
    public DayRun clearCoil() {
        return clear;
    }

    /**
     * Most ice on the coil in an hour.
     *
     * @param hour 0 to 23
     * @return mass of ice
     * @throws IllegalArgumentException if there is no such hour
     */
    public Quantity<Mass> ice(int hour) {
        Range.require("hour", hour, 0, ice.length - 1, "");
        return Units.kilograms(ice[hour]);
    }

    /**
     * Least airflow in an hour.
     *
     * @param hour 0 to 23
     * @return share of the airflow through the clear coil
     * @throws IllegalArgumentException if there is no such hour
     */
    public Quantity<Dimensionless> airflow(int hour) {
        return Units.percent(100 * share(hour));
    }

    double share(int hour) {
        Range.require("hour", hour, 0, air.length - 1, "");
        return air[hour];
    }

    /**
     * Most ice of the day.
     *
     * @return mass of ice
     */
    public Quantity<Mass> mostIce() {
        double most = 0;
        for (double m : ice) {
            most = Math.max(most, m);
        }
        return Units.kilograms(most);
    }

    double leastShare() {
        double least = 1;
        for (double s : air) {
            least = Math.min(least, s);
        }
        return least;
    }

    /**
     * Least airflow of the day.
     *
     * @return share of the airflow through the clear coil
     */
    public Quantity<Dimensionless> leastAirflow() {
        return Units.percent(100 * leastShare());
    }

    /**
     * First hour in which ice takes more than a tenth of the airflow: from then on the system does
     * not do what it would do with a clear coil.
     *
     * @return hour, 0 to 23, or empty if every rest thaws the coil in time
     */
    public OptionalInt chokedFrom() {
        for (int h = 0; h < air.length; h++) {
            if (air[h] < CHOKED) {
                return OptionalInt.of(h);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Whether ice takes more than a tenth of the airflow at some time of the day.
     *
     * @return true if it does
     */
    public boolean chokes() {
        return leastShare() < CHOKED;
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "ice on the coil: at most %.2f kg, airflow down to %.0f %%%s",
                mostIce().getValue().doubleValue(),
                100 * leastShare(),
                chokes() ? ", choked from hour " + chokedFrom().getAsInt() : "");
    }
}
