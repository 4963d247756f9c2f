package dev.thinair.ducts;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.ducts.kernel.DuctDerating;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * How much less one round duct carries at elevation, on each of the bases that "less" can mean; air
 * at the same temperature, pressure by the standard atmosphere. Immutable.
 */
public final class DuctElevationTable {

    /** What is kept the same when the air gets thin. */
    public enum Basis {
        /** The pressure drop of the duct. */
        SAME_PRESSURE_DROP("same pressure drop"),
        /** The blower and its speed; friction is the only loss. */
        SAME_BLOWER("same blower, same speed, friction only"),
        /** The velocity in the duct. */
        SAME_VELOCITY("same velocity");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /**
         * The basis in words.
         *
         * @return plain text
         */
        public String words() {
            return words;
        }
    }

    /**
     * One elevation on one basis.
     *
     * @param elevation geopotential elevation
     * @param densityRatio density over that at sea level, at the same temperature
     * @param basis what is kept the same
     * @param volumeRatio volume flow over that at sea level
     * @param massRatio mass flow, and heat at the same temperature difference, over that at sea
     *     level
     */
    public record Row(
            Quantity<Length> elevation,
            double densityRatio,
            Basis basis,
            double volumeRatio,
            double massRatio) {

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%6.0f m (%5.0f ft), density ratio %.3f | %-38s | volume %+6.1f %% | mass, heat"
                            + " %+6.1f %%",
                    Si.metres(elevation, "elevation"),
                    Si.metres(elevation, "elevation") / 0.3048,
                    densityRatio,
                    basis.words,
                    100 * (volumeRatio - 1),
                    100 * (massRatio - 1));
        }
    }

    private final DuctShape shape;
    private final double flow;
    private final List<Row> rows;

    private DuctElevationTable(DuctShape shape, double flow, List<Row> rows) {
        this.shape = shape;
        this.flow = flow;
        this.rows = rows;
    }

    /**
     * The trade's usual question: a galvanised six-inch duct that carries 110 cubic feet per minute
     * at sea level (common practice, no source).
     *
     * @param elevations geopotential elevations, each in [-500, 6000 m]
     * @return the table
     * @throws IllegalArgumentException if an elevation is out of range or none given
     */
    public static DuctElevationTable ofSixInchDuct(List<Quantity<Length>> elevations) {
        return of(
                Units.inches(6),
                DuctMaterial.GALVANIZED,
                Units.cubicFeetPerMinute(110),
                elevations);
    }

    /**
     * Any round duct.
     *
     * @param diameter its diameter
     * @param material what it is made of
     * @param standardFlow volume flow it carries at sea level, above 0
     * @param elevations geopotential elevations, each in [-500, 6000 m]
     * @return the table, three rows per elevation
     * @throws IllegalArgumentException if an argument is out of range or no elevation given
     */
    public static DuctElevationTable of(
            Quantity<Length> diameter,
            DuctMaterial material,
            Quantity<VolumeFlow> standardFlow,
            List<Quantity<Length>> elevations) {
        if (material == null || elevations == null || elevations.isEmpty()) {
            throw new IllegalArgumentException("a material and at least one elevation are needed");
        }
        DuctShape shape = DuctShape.round(diameter);
        double d = Si.metres(diameter, "duct diameter");
        double q = Si.cubicMetresPerSecond(standardFlow, "airflow");
        Range.requireAbove("airflow", q, 0, "m3/s");
        double e = material.roughnessSi();
        double mu = StandardAir.VISCOSITY;
        List<Row> rows = new ArrayList<>();
        for (Quantity<Length> elevation : elevations) {
            double z = Si.metres(elevation, "elevation");
            Range.require("elevation", z, -500, 6_000, "m");
            double r = StandardAtmosphere.pressure(z) / StandardAtmosphere.pressure(0);
            for (Basis basis : Basis.values()) {
                double x =
                        switch (basis) {
                            case SAME_PRESSURE_DROP ->
                                    DuctDerating.samePressureDrop(q, d, e, r, mu);
                            case SAME_BLOWER -> DuctDerating.sameBlower(q, d, e, r, mu);
                            case SAME_VELOCITY -> 1;
                        };
                rows.add(new Row(elevation, r, basis, x, r * x));
            }
        }
        return new DuctElevationTable(shape, q, List.copyOf(rows));
    }

    /**
     * All rows: for each elevation, in the order given, one per basis.
     *
     * @return unmodifiable list
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Which statement the trade's "20 to 30 percent less" is: the rows whose volume or mass falls
     * by that much.
     *
     * @return plain text
     */
    public String verdict() {
        StringBuilder b = new StringBuilder();
        for (Row r : rows) {
            if (loses(r.volumeRatio) || loses(r.massRatio)) {
                b.append(
                        String.format(
                                Locale.ROOT,
                                "At %.0f m \"20 to 30 percent less\" is true of the %s at the %s.%n",
                                Si.metres(r.elevation, "elevation"),
                                loses(r.volumeRatio)
                                        ? "volume"
                                        : "mass and heat, not of the volume,",
                                r.basis.words));
            }
        }
        return b.isEmpty()
                ? "At none of these elevations is \"20 to 30 percent less\" true on any basis.\n"
                : b.toString();
    }

    private static boolean loses(double ratio) {
        return ratio >= 0.7 && ratio <= 0.8;
    }

    @Override
    public String toString() {
        StringBuilder b =
                new StringBuilder(
                        String.format(
                                Locale.ROOT,
                                "How much less does a %s duct of %.0f cfm at sea level carry?%n",
                                shape,
                                flow / 4.719474432e-4));
        rows.forEach(r -> b.append(r).append('\n'));
        return b.toString();
    }
}
