package dev.thinair.ducts;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * The way air takes from a room with its door closed back to the rest of the house: door undercut,
 * transfer grille, jumper duct. Immutable.
 *
 * <p>Orifice law: {@code dp = rho/2 (Q/(Cd A))^2}.
 */
public final class TransferPath {

    /** Discharge coefficient of a sharp-edged opening: textbook value (from memory). */
    private static final double DISCHARGE = 0.6;

    private final double area;

    private TransferPath(double area) {
        this.area = area;
    }

    /**
     * An opening of a given free area, discharge coefficient 0.6 (from memory).
     *
     * @param area free area, in [1 cm2, 5 m2]
     * @return the path
     * @throws IllegalArgumentException if the area is out of range
     */
    public static TransferPath ofArea(Quantity<Area> area) {
        double a = Si.squareMetres(area, "area of transfer path");
        Range.require("area of transfer path", a, 1e-4, 5, "m2");
        return new TransferPath(a);
    }

    /** Resistance for standard air, Pa s2/m6. */
    double resistanceSi() {
        double effective = DISCHARGE * area;
        return StandardAir.DENSITY / (2 * effective * effective);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TransferPath t && t.area == area;
    }

    @Override
    public int hashCode() {
        return Objects.hash(area);
    }

    @Override
    public String toString() {
        return "transfer path of " + area * 1e4 + " cm2";
    }
}
