package dev.thinair.loads;

import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.units.Range;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * What a window as a whole (glass and frame) lets in of the sun, by angle of incidence: its solar
 * heat gain coefficient (SHGC) for beam, read linearly between entries, and its hemispherical value
 * for diffuse. Immutable.
 *
 * <p>A rated product is described by {@link #clearDouble()} or another glass <b>scaled</b> to the
 * rated coefficient at normal incidence: its shape over the angle is that of the glass chosen.
 */
public final class Glazing {

    private static final double GLASS_INDEX = 1.526;
    private static final double CLEAR_GLASS_EXTINCTION = 32; // 1/m, Duffie and Beckman ch. 5

    private final String name;
    private final double[] angles;
    private final double[] values;
    private final double diffuse;

    private Glazing(String name, double[] angles, double[] values, double diffuse) {
        this.name = name;
        this.angles = angles;
        this.values = values;
        this.diffuse = diffuse;
    }

    /**
     * A glazing from a table; the hemispherical value is integrated from it.
     *
     * @param name what reports call it
     * @param degrees ascending angles of incidence from 0 to 90, degrees
     * @param shgc SHGC at each, in [0, 1]
     * @return the glazing
     * @throws IllegalArgumentException if the table cannot be read
     */
    public static Glazing ofTable(String name, double[] degrees, double[] shgc) {
        double[] radians = radians(degrees);
        double[] copy = shgc.clone();
        return new Glazing(
                Objects.requireNonNull(name, "name"),
                radians,
                copy,
                GlazingOptics.hemispherical(radians, copy));
    }

    /**
     * A glazing from a table that prints its own hemispherical value.
     *
     * @param name what reports call it
     * @param degrees ascending angles of incidence from 0 to 90, degrees
     * @param shgc SHGC at each, in [0, 1]
     * @param diffuse hemispherical SHGC, in [0, 1]
     * @return the glazing
     * @throws IllegalArgumentException if the table cannot be read
     */
    public static Glazing ofTable(String name, double[] degrees, double[] shgc, double diffuse) {
        double[] radians = radians(degrees);
        double[] copy = shgc.clone();
        GlazingOptics.requireTable(radians, copy);
        Range.require("hemispherical solar heat gain coefficient", diffuse, 0, 1, "-");
        return new Glazing(Objects.requireNonNull(name, "name"), radians, copy, diffuse);
    }

    /**
     * Single clear glass, 3 mm, from the optics of a pane (refractive index 1.526, extinction 32
     * 1/m) and an inward-flowing share of 0.27 of what it absorbs (films of 8.3 and 23 W/(m2 K)).
     *
     * @return the glazing
     */
    public static Glazing clearSingle() {
        return ofPanes("single clear glass 3 mm", 1, 0.27, 0);
    }

    /**
     * Two panes of clear glass, 3 mm each, from the optics of panes; inward-flowing shares 0.14 of
     * the outer and 0.67 of the inner pane's absorption (films and a gap of 0.17 m2 K/W).
     *
     * @return the glazing
     */
    public static Glazing clearDouble() {
        return ofPanes("double clear glass 3 mm", 2, 0.14, 0.67);
    }

    private static Glazing ofPanes(String name, int panes, double outer, double inner) {
        int n = 19;
        double[] angles = new double[n];
        double[] values = new double[n];
        double[] scratch = new double[3];
        for (int i = 0; i < n; i++) {
            angles[i] = Math.toRadians(5.0 * i);
            values[i] =
                    i == n - 1
                            ? 0
                            : GlazingOptics.shgcOfPanes(
                                    panes,
                                    Math.cos(angles[i]),
                                    GLASS_INDEX,
                                    CLEAR_GLASS_EXTINCTION * 0.003,
                                    outer,
                                    inner,
                                    scratch);
        }
        return new Glazing(name, angles, values, GlazingOptics.hemispherical(angles, values));
    }

    /**
     * The same glass with all coefficients scaled so that the one at normal incidence is the rated
     * one of a whole product.
     *
     * @param shgc rated SHGC at normal incidence, in (0, 1]
     * @return a new glazing
     * @throws IllegalArgumentException if shgc is outside its range or this glazing passes nothing
     */
    public Glazing scaledTo(double shgc) {
        Range.require("solar heat gain coefficient", shgc, 0, 1, "-");
        Range.requireAbove("solar heat gain coefficient", shgc, 0, "-");
        Range.requireAbove("normal solar heat gain coefficient to scale", values[0], 0, "-");
        double ratio = shgc / values[0];
        double[] scaled = new double[values.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = Math.min(1, values[i] * ratio);
        }
        return new Glazing(
                String.format(Locale.ROOT, "%s scaled to SHGC %.2f", name, shgc),
                angles,
                scaled,
                Math.min(1, diffuse * ratio));
    }

    /**
     * What reports call it.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * SHGC for beam at an angle of incidence.
     *
     * @param degrees angle of incidence, in [0, 90]
     * @return SHGC
     * @throws IllegalArgumentException if the angle is NaN or outside its range
     */
    public double beam(double degrees) {
        Range.require("angle of incidence", degrees, 0, 90, "deg");
        return degrees == 90
                ? values[values.length - 1]
                : beamAt(Math.cos(Math.toRadians(degrees)));
    }

    /**
     * SHGC at normal incidence.
     *
     * @return SHGC
     */
    public double normal() {
        return values[0];
    }

    /**
     * Hemispherical SHGC, for sky and ground diffuse.
     *
     * @return SHGC
     */
    public double diffuse() {
        return diffuse;
    }

    double beamAt(double cosIncidence) {
        return GlazingOptics.atIncidence(angles, values, cosIncidence);
    }

    private static double[] radians(double[] degrees) {
        double[] radians = new double[degrees.length];
        for (int i = 0; i < degrees.length; i++) {
            radians[i] = Math.toRadians(degrees[i]);
        }
        return radians;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Glazing that
                && name.equals(that.name)
                && Arrays.equals(angles, that.angles)
                && Arrays.equals(values, that.values)
                && diffuse == that.diffuse;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, Arrays.hashCode(angles), Arrays.hashCode(values), diffuse);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%s (SHGC %.3f normal, %.3f diffuse)", name, values[0], diffuse);
    }
}
