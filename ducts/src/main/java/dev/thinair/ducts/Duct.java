package dev.thinair.ducts;

import dev.thinair.ducts.kernel.FlexibleDuct;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * One length of duct with its fittings. Immutable; the {@code with} methods give changed copies.
 *
 * <p>Loss: {@code (m f (L + sum L_eq)/D_h + sum C) rho V^2/2}, with m the factor of compressed
 * flexible duct.
 */
public final class Duct {

    private final DuctShape shape;
    private final double length;
    private final DuctMaterial material;
    private final List<Fitting> fittings;
    private final double compression;
    private final double sag;
    private final double insulation;
    private final Place place;

    private Duct(
            DuctShape shape,
            double length,
            DuctMaterial material,
            List<Fitting> fittings,
            double compression,
            double sag,
            double insulation,
            Place place) {
        this.shape = shape;
        this.length = length;
        this.material = material;
        this.fittings = fittings;
        this.compression = compression;
        this.sag = sag;
        this.insulation = insulation;
        this.place = place;
    }

    /**
     * A straight duct in the conditioned space, without fittings or insulation.
     *
     * @param shape cross section
     * @param length distance it covers, above 0 and up to 500 m
     * @param material what it is made of
     * @return the duct
     * @throws IllegalArgumentException if an argument is null, the length out of range, or the
     *     material too rough for so small a duct (relative roughness above 0.05)
     */
    public static Duct of(DuctShape shape, Quantity<Length> length, DuctMaterial material) {
        if (shape == null || material == null) {
            throw new IllegalArgumentException("a duct needs a shape and a material");
        }
        double l = Si.metres(length, "duct length");
        Range.requireAbove("duct length", l, 0, "m");
        Range.require("duct length", l, 0, 500, "m");
        Range.require(
                "relative roughness of " + material.name() + " in a " + shape + " duct",
                material.roughnessSi() / shape.hydraulicDiameterSi(),
                0,
                0.05,
                "");
        return new Duct(shape, l, material, List.of(), 0, 0, 0, Place.CONDITIONED_SPACE);
    }

    /**
     * The same duct with one more fitting.
     *
     * @param fitting the fitting
     * @return changed copy
     * @throws IllegalArgumentException if the fitting is null
     */
    public Duct withFitting(Fitting fitting) {
        if (fitting == null) {
            throw new IllegalArgumentException("fitting is null");
        }
        List<Fitting> more = new ArrayList<>(fittings);
        more.add(fitting);
        return new Duct(
                shape, length, material, List.copyOf(more), compression, sag, insulation, place);
    }

    /**
     * The same duct with a further loss coefficient on its own velocity pressure.
     *
     * @param coefficient C, in [-1, 100000]
     * @return changed copy
     * @throws IllegalArgumentException if the coefficient is out of range
     */
    public Duct withLossCoefficient(double coefficient) {
        return withFitting(
                Fitting.ofCoefficient("loss coefficient", coefficient, "given by the user"));
    }

    /**
     * The same duct with a further equivalent length.
     *
     * @param extra equivalent length of its fittings
     * @return changed copy
     * @throws IllegalArgumentException if the length is out of range
     */
    public Duct withEquivalentLength(Quantity<Length> extra) {
        return withFitting(
                Fitting.ofEquivalentLength("equivalent length", extra, "given by the user"));
    }

    /**
     * The same duct, compressed lengthwise.
     *
     * @param fraction {@code 1 - L/L_stretched}, in [0, 50 %]; 4 % is a careful job, 15 % usual, 30
     *     % poor (ranges of Abushakra, Walker and Sherman 2004)
     * @return changed copy
     * @throws IllegalArgumentException if the duct is rigid or the fraction out of range
     */
    public Duct withCompression(Quantity<Dimensionless> fraction) {
        requireFlexible("compressed");
        double c = Si.ratio(fraction, "compression");
        FlexibleDuct.pressureDropCorrection(c, shape.hydraulicDiameterSi());
        return new Duct(shape, length, material, fittings, c, sag, insulation, place);
    }

    /**
     * The same duct sagging between its supports. What is counted is the longer way round the arc
     * ({@link FlexibleDuct#sagLengthRatio}); the loss of its bends is not, because the measured
     * regressions for sagging duct could not be had. Sagging duct is mostly compressed duct too:
     * give both.
     *
     * @param depth depth of the sag over the distance between supports, in [0, 100 %]
     * @return changed copy
     * @throws IllegalArgumentException if the duct is rigid or the depth out of range
     */
    public Duct withSag(Quantity<Dimensionless> depth) {
        requireFlexible("left to sag");
        double s = Si.ratio(depth, "sag");
        FlexibleDuct.sagLengthRatio(s);
        return new Duct(shape, length, material, fittings, compression, s, insulation, place);
    }

    private void requireFlexible(String what) {
        if (!material.isFlexible()) {
            throw new IllegalArgumentException(
                    "only flexible duct can be " + what + ", not " + material.name());
        }
    }

    /**
     * The same duct insulated.
     *
     * @param resistance thermal resistance from the air inside to the air around it, in [0.02, 10]
     *     m2K/W; bare metal is about 0.1
     * @return changed copy
     * @throws IllegalArgumentException if the resistance is out of range
     */
    public Duct withInsulation(Quantity<ThermalResistance> resistance) {
        double r = Si.squareMetreKelvinsPerWatt(resistance, "duct insulation");
        Range.require("duct insulation", r, 0.02, 10, "m2K/W");
        return new Duct(shape, length, material, fittings, compression, sag, r, place);
    }

    /**
     * The same duct running through another place.
     *
     * @param where place it runs through
     * @return changed copy
     * @throws IllegalArgumentException if the place is null
     */
    public Duct in(Place where) {
        if (where == null) {
            throw new IllegalArgumentException("place of duct is null");
        }
        return new Duct(shape, length, material, fittings, compression, sag, insulation, where);
    }

    /**
     * The same duct with another cross section.
     *
     * @param other new cross section
     * @return changed copy
     * @throws IllegalArgumentException if the material is too rough for it
     */
    public Duct withShape(DuctShape other) {
        Duct check = of(other, length(), material);
        Duct changed = new Duct(check.shape, length, material, fittings, 0, sag, insulation, place);
        return compression > 0 ? changed.withCompression(Units.ratio(compression)) : changed;
    }

    /**
     * Cross section.
     *
     * @return shape
     */
    public DuctShape shape() {
        return shape;
    }

    /**
     * Distance it covers.
     *
     * @return length without fittings
     */
    public Quantity<Length> length() {
        return Units.metres(length);
    }

    /**
     * Straight length, sag and equivalent lengths together.
     *
     * @return total effective length
     */
    public Quantity<Length> effectiveLength() {
        return Units.metres(effectiveLengthSi());
    }

    double lengthSi() {
        return length;
    }

    double effectiveLengthSi() {
        double sum = length * FlexibleDuct.sagLengthRatio(sag);
        for (Fitting f : fittings) {
            sum += f.lengthSi();
        }
        return sum;
    }

    /**
     * Sum of the loss coefficients of all fittings.
     *
     * @return C on the duct's own velocity pressure
     */
    public double lossCoefficient() {
        double sum = 0;
        for (Fitting f : fittings) {
            sum += f.coefficient();
        }
        return sum;
    }

    /**
     * Factor that compression puts on the friction.
     *
     * @return factor, 1 for rigid and fully stretched duct
     */
    public double frictionMultiplier() {
        return compression > 0
                ? FlexibleDuct.pressureDropCorrection(compression, shape.hydraulicDiameterSi())
                : 1;
    }

    /** The factor of compression at another diameter. */
    double frictionMultiplierAt(double diameter) {
        return compression > 0 ? FlexibleDuct.pressureDropCorrection(compression, diameter) : 1;
    }

    /**
     * What it is made of.
     *
     * @return material
     */
    public DuctMaterial material() {
        return material;
    }

    /**
     * Its fittings.
     *
     * @return unmodifiable list
     */
    public List<Fitting> fittings() {
        return fittings;
    }

    /**
     * Where it runs.
     *
     * @return place
     */
    public Place place() {
        return place;
    }

    /** Thermal resistance, m2K/W; 0 if none was given. */
    double insulationSi() {
        return insulation;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Duct d
                && d.shape.equals(shape)
                && d.length == length
                && d.material.equals(material)
                && d.fittings.equals(fittings)
                && d.compression == compression
                && d.sag == sag
                && d.insulation == insulation
                && d.place == place;
    }

    @Override
    public int hashCode() {
        return Objects.hash(shape, length, material, fittings, compression, sag, insulation, place);
    }

    @Override
    public String toString() {
        return shape
                + ", "
                + length
                + " m of "
                + material.name()
                + (compression > 0 ? ", compressed " + compression * 100 + " %" : "")
                + ", C = "
                + lossCoefficient()
                + ", in "
                + place;
    }
}
