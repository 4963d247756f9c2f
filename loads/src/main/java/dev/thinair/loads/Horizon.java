package dev.thinair.loads;

import static dev.thinair.units.Units.DEGREE;

import dev.thinair.loads.kernel.Shading;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Arrays;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;

/**
 * The skyline round a house: mountains, woods, neighbours far enough away to hide the sun from the
 * whole house at once. It takes away the beam; sky diffuse stays, which errs on the high side.
 * Between the given directions it runs straight, all round the compass. Immutable.
 */
public final class Horizon {

    private static final Horizon LEVEL = new Horizon(new double[0], new double[0]);

    private final double[] azimuths;
    private final double[] altitudes;

    private Horizon(double[] azimuths, double[] altitudes) {
        this.azimuths = azimuths;
        this.altitudes = altitudes;
    }

    /**
     * A level horizon, as at sea.
     *
     * @return the level horizon
     */
    public static Horizon level() {
        return LEVEL;
    }

    /**
     * The same skyline with one more direction; a direction given twice takes the later value.
     *
     * @param azimuth from north, clockwise, in [0, 360) degrees
     * @param altitude of the skyline there, in [-5, 89] degrees
     * @return a new horizon
     * @throws IllegalArgumentException if an angle is not finite or outside its range
     */
    public Horizon with(Quantity<Angle> azimuth, Quantity<Angle> altitude) {
        double a = Si.radians(azimuth, "azimuth of the skyline");
        double b = Si.radians(altitude, "altitude of the skyline");
        Range.require("azimuth of the skyline", Math.toDegrees(a), 0, 359.999999, "deg");
        Range.require("altitude of the skyline", Math.toDegrees(b), -5, 89, "deg");
        int at = Arrays.binarySearch(azimuths, a);
        if (at >= 0) {
            double[] changed = altitudes.clone();
            changed[at] = b;
            return new Horizon(azimuths, changed);
        }
        int place = -at - 1;
        int n = azimuths.length;
        double[] newAzimuths = new double[n + 1];
        double[] newAltitudes = new double[n + 1];
        System.arraycopy(azimuths, 0, newAzimuths, 0, place);
        System.arraycopy(altitudes, 0, newAltitudes, 0, place);
        newAzimuths[place] = a;
        newAltitudes[place] = b;
        System.arraycopy(azimuths, place, newAzimuths, place + 1, n - place);
        System.arraycopy(altitudes, place, newAltitudes, place + 1, n - place);
        return new Horizon(newAzimuths, newAltitudes);
    }

    /**
     * Altitude of the skyline in a direction.
     *
     * @param azimuth from north, clockwise, in [0, 360) degrees
     * @return altitude
     * @throws IllegalArgumentException if the azimuth is not finite or outside its range
     */
    public Quantity<Angle> altitude(Quantity<Angle> azimuth) {
        double a = Si.radians(azimuth, "azimuth");
        Range.require("azimuth", Math.toDegrees(a), 0, 359.999999, "deg");
        return Units.quantity(
                Math.toDegrees(Shading.horizonAltitude(azimuths, altitudes, a)), DEGREE);
    }

    double[] azimuths() {
        return azimuths.clone();
    }

    double[] altitudes() {
        return altitudes.clone();
    }

    boolean isLevel() {
        return azimuths.length == 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Horizon that
                && Arrays.equals(azimuths, that.azimuths)
                && Arrays.equals(altitudes, that.altitudes);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(azimuths) + Arrays.hashCode(altitudes);
    }

    @Override
    public String toString() {
        if (isLevel()) {
            return "level horizon";
        }
        StringBuilder text = new StringBuilder("horizon");
        for (int i = 0; i < azimuths.length; i++) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%s %.0f° at %.0f°",
                            i == 0 ? "" : ",",
                            Math.toDegrees(altitudes[i]),
                            Math.toDegrees(azimuths[i])));
        }
        return text.toString();
    }
}
