package dev.thinair.loads;

import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * An interior shade: blind, drape, roller. It attenuates the sun that the glass lets in by its
 * interior attenuation coefficient (IAC), for beam and for diffuse, in proportion to how far it is
 * closed, and turns part of it into warm room air at once.
 *
 * @param name what reports call it
 * @param closedBeam IAC for beam when fully closed, in [0, 1]
 * @param closedDiffuse IAC for diffuse when fully closed, in [0, 1]
 * @param fractionClosed share of the glass it covers, in [0, 1]
 * @param radiantFraction share of the attenuated gain that is radiant, in [0, 1]; the rest warms
 *     the room air without delay
 */
public record Shade(
        String name,
        double closedBeam,
        double closedDiffuse,
        double fractionClosed,
        double radiantFraction) {

    private static final Shade NONE = new Shade("no shade", 1, 1, 0, 1);

    /**
     * Checks the values.
     *
     * @param name what reports call it
     * @param closedBeam IAC for beam when fully closed, in [0, 1]
     * @param closedDiffuse IAC for diffuse when fully closed, in [0, 1]
     * @param fractionClosed share of the glass it covers, in [0, 1]
     * @param radiantFraction share of the attenuated gain that is radiant, in [0, 1]; the rest
     *     warms the room air without delay
     * @throws IllegalArgumentException if a value is NaN or outside its range
     */
    public Shade {
        Range.require("interior attenuation for beam", closedBeam, 0, 1, "-");
        Range.require("interior attenuation for diffuse", closedDiffuse, 0, 1, "-");
        Range.require("closed fraction of the shade", fractionClosed, 0, 1, "-");
        Range.require("radiant fraction of the shaded gain", radiantFraction, 0, 1, "-");
    }

    /**
     * No shade at all.
     *
     * @return no shade
     */
    public static Shade none() {
        return NONE;
    }

    /**
     * An interior shade with one attenuation for beam and diffuse and a radiant fraction of 0.46
     * (Fundamentals 2021, ch. 18, Table 14, window row for SHGC up to 0.5).
     *
     * @param name what reports call it
     * @param closed IAC fully closed, in [0, 1]
     * @param fractionClosed share of the glass it covers, in [0, 1]
     * @return the shade
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Shade interior(
            String name, Quantity<Dimensionless> closed, Quantity<Dimensionless> fractionClosed) {
        double iac = Si.ratio(closed, "interior attenuation of the closed shade");
        double share = Si.ratio(fractionClosed, "closed fraction of the shade");
        return new Shade(name, iac, iac, share, 0.46);
    }

    /**
     * Attenuation in place for beam: <code>1 + F (IACcl - 1)</code>.
     *
     * @return IAC
     */
    public double beam() {
        return GlazingOptics.interiorAttenuation(closedBeam, fractionClosed);
    }

    /**
     * Attenuation in place for diffuse.
     *
     * @return IAC
     */
    public double diffuse() {
        return GlazingOptics.interiorAttenuation(closedDiffuse, fractionClosed);
    }

    /**
     * Attenuation in place for beam, as a quantity.
     *
     * @return IAC
     */
    public Quantity<Dimensionless> attenuation() {
        return Units.ratio(beam());
    }
}
