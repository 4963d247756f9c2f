package dev.thinair.ducts;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
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
 * The same duct system at several elevations, told in volume, mass, pressure, power and heat,
 * because the trade's "20 to 30 percent less" is true of some of these and false of others.
 * Immutable.
 *
 * <p>With the same blower at the same speed the ducts carry nearly the same volume and, about in
 * proportion to density, less mass and heat. A constant-airflow motor set to hold mass carries the
 * same heat until it meets its limit, for a pressure and a power that rise.
 */
public final class ElevationComparison {

    /**
     * One elevation.
     *
     * @param elevation geopotential elevation
     * @param air state of the air in the ducts
     * @param airflow operating point
     * @param volumeRatio actual flow over that of the first row
     * @param massRatio mass flow over that of the first row
     * @param pressureRatio external static pressure over that of the first row
     * @param airPowerRatio flow times external static pressure over that of the first row
     * @param heatRatio sensible heat carried at the same temperature difference over that of the
     *     first row
     */
    public record Row(
            Quantity<Length> elevation,
            MoistAir air,
            Airflow airflow,
            double volumeRatio,
            double massRatio,
            double pressureRatio,
            double airPowerRatio,
            double heatRatio) {

        /**
         * Sensible heat that the blower's air carries.
         *
         * @param difference temperature difference between room and supply air
         * @return mass flow of dry air times specific heat of moist air times the difference
         * @throws IllegalArgumentException if the difference is out of range
         */
        public Quantity<Power> sensibleHeat(Quantity<TemperatureDifference> difference) {
            double dt = Si.kelvinDifference(difference, "temperature difference");
            Range.require("temperature difference", dt, -100, 100, "K");
            return Units.watts(heatPerKelvin(air, airflow) * dt);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s: volume %+.1f %%, mass %+.1f %%, static pressure %+.1f %%, air power %+.1f %%,"
                            + " heat %+.1f %%",
                    elevation,
                    100 * (volumeRatio - 1),
                    100 * (massRatio - 1),
                    100 * (pressureRatio - 1),
                    100 * (airPowerRatio - 1),
                    100 * (heatRatio - 1));
        }
    }

    private final List<Row> rows;

    private ElevationComparison(List<Row> rows) {
        this.rows = rows;
    }

    /**
     * Solves one system at each elevation.
     *
     * @param system the duct system
     * @param dryBulb temperature of the air in the ducts
     * @param relativeHumidity relative humidity of the air in the ducts
     * @param elevations geopotential elevations, each in [-500, 6000 m]; the first is the one
     *     compared with; pressure by the standard atmosphere
     * @return the comparison
     * @throws IllegalArgumentException if an argument is out of range or no elevation given
     * @throws IllegalStateException if the system has no operating point
     */
    public static ElevationComparison of(
            DuctSystem system,
            Quantity<Temperature> dryBulb,
            Quantity<Dimensionless> relativeHumidity,
            List<Quantity<Length>> elevations) {
        if (system == null || elevations == null || elevations.isEmpty()) {
            throw new IllegalArgumentException(
                    "a duct system and at least one elevation are needed");
        }
        List<Row> rows = new ArrayList<>();
        Airflow first = null;
        double firstHeat = 0;
        for (Quantity<Length> e : elevations) {
            double z = Si.metres(e, "elevation");
            Range.require("elevation", z, -500, 6_000, "m");
            MoistAir air =
                    MoistAir.ofDryBulbAndRelativeHumidity(
                            dryBulb,
                            relativeHumidity,
                            Units.pascals(StandardAtmosphere.pressure(z)));
            Airflow a = system.solve(air);
            double heat = heatPerKelvin(air, a);
            if (first == null) {
                first = a;
                firstHeat = heat;
            }
            rows.add(
                    new Row(
                            e,
                            air,
                            a,
                            a.flow / first.flow,
                            a.flow * a.density / (first.flow * first.density),
                            a.rise / first.rise,
                            a.flow * a.rise / (first.flow * first.rise),
                            heat / firstHeat));
        }
        return new ElevationComparison(List.copyOf(rows));
    }

    /** Heat capacity rate of the blower's air, W/K: dry-air mass flow times cp per dry air. */
    private static double heatPerKelvin(MoistAir air, Airflow a) {
        double w = air.humidityRatioNumber();
        double cp = Si.joulesPerKilogramKelvin(air.specificHeat(), "specific heat");
        return a.flow * a.density / (1 + w) * cp;
    }

    /**
     * All elevations, in the order given.
     *
     * @return unmodifiable list
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * The comparison in one sentence, with its numbers: which statement about thin air is true of
     * these ducts.
     *
     * @return plain text
     */
    public String verdict() {
        Row last = rows.get(rows.size() - 1);
        return String.format(
                Locale.ROOT,
                "At %s against %s, with this blower, these ducts move %+.1f %% of volume and carry %+.1f %%"
                        + " of mass and %+.1f %% of heat at the same temperature difference; the external"
                        + " static pressure reads %+.1f %%. \"20 to 30 percent less\" is %s of the volume"
                        + " and %s of the mass.",
                last.elevation,
                rows.get(0).elevation,
                100 * (last.volumeRatio - 1),
                100 * (last.massRatio - 1),
                100 * (last.heatRatio - 1),
                100 * (last.pressureRatio - 1),
                isTwentyToThirtyLess(last.volumeRatio) ? "true" : "not true",
                isTwentyToThirtyLess(last.massRatio) ? "true" : "not true");
    }

    private static boolean isTwentyToThirtyLess(double ratio) {
        return ratio >= 0.7 && ratio <= 0.8;
    }

    @Override
    public String toString() {
        StringBuilder b = new StringBuilder();
        for (Row r : rows) {
            b.append(r).append('\n');
        }
        return b.toString();
    }
}
