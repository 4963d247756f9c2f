package dev.thinair.ducts;

import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;

/**
 * The register of a supply run or the grille of a return: its free area, its loss, and whether it
 * stands open. Immutable.
 *
 * <p>Loss: {@code K rho/2 (Q/(s A_free))^2}, where s is 1 when open, the open part when partly
 * open, and the leak of the closed damper when shut. K includes the velocity pressure lost to the
 * room.
 */
public final class Register {

    /** How a register stands. */
    public enum Position {
        /** Fully open. */
        OPEN,
        /** Its damper partly closed. */
        PARTLY,
        /** Its damper closed; what is left is the damper's leak. */
        SHUT
    }

    /** Share of a face that is open between the bars. Common practice, 0.70 to 0.75, no source. */
    private static final double USUAL_FREE_AREA = 0.7;

    /** Loss coefficient on the free-area velocity pressure. Common practice, no source. */
    private static final double USUAL_COEFFICIENT = 3;

    /** Leak of a closed damper as a share of the free area. Common practice, no source. */
    private static final double USUAL_LEAK = 0.1;

    private final double faceArea;
    private final double freeFraction;
    private final double coefficient;
    private final Position position;
    private final double openFraction;
    private final double leakFraction;

    private Register(
            double faceArea,
            double freeFraction,
            double coefficient,
            Position position,
            double openFraction,
            double leakFraction) {
        this.faceArea = faceArea;
        this.freeFraction = freeFraction;
        this.coefficient = coefficient;
        this.position = position;
        this.openFraction = openFraction;
        this.leakFraction = leakFraction;
    }

    /**
     * An open register or grille with usual free area (0.7 of its face), loss coefficient (3) and
     * damper leak (0.1 of the free area). Those three are common practice without a source.
     *
     * @param width face width
     * @param height face height
     * @return the register
     * @throws IllegalArgumentException if a side is not in [10 mm, 3 m]
     */
    public static Register of(Quantity<Length> width, Quantity<Length> height) {
        double w = Si.metres(width, "register width");
        double h = Si.metres(height, "register height");
        Range.require("register width", w, 0.01, 3, "m");
        Range.require("register height", h, 0.01, 3, "m");
        return new Register(
                w * h, USUAL_FREE_AREA, USUAL_COEFFICIENT, Position.OPEN, 1, USUAL_LEAK);
    }

    /**
     * The same register with another free area.
     *
     * @param fraction free area over face area, in [5, 100 %]
     * @return changed copy
     * @throws IllegalArgumentException if the fraction is out of range
     */
    public Register withFreeArea(Quantity<Dimensionless> fraction) {
        double f = Si.ratio(fraction, "free area of register");
        Range.require("free area of register", f, 0.05, 1, "");
        return new Register(faceArea, f, coefficient, position, openFraction, leakFraction);
    }

    /**
     * The same register with another loss coefficient.
     *
     * @param k coefficient on the velocity pressure in the free area, in [0, 1000]
     * @return changed copy
     * @throws IllegalArgumentException if the coefficient is out of range
     */
    public Register withLossCoefficient(double k) {
        Range.require("loss coefficient of register", k, 0, 1_000, "");
        return new Register(faceArea, freeFraction, k, position, openFraction, leakFraction);
    }

    /**
     * The same register with the loss that a catalogue gives for one flow of standard air.
     *
     * @param flow volume flow, above 0
     * @param drop total pressure lost at that flow with the register open, above 0
     * @return changed copy
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Register withPressureDrop(Quantity<VolumeFlow> flow, Quantity<Pressure> drop) {
        double q = Si.cubicMetresPerSecond(flow, "register airflow");
        double p = Si.pascals(drop, "register pressure drop");
        Range.requireAbove("register airflow", q, 0, "m3/s");
        Range.requireAbove("register pressure drop", p, 0, "Pa");
        double v = q / (faceArea * freeFraction);
        return withLossCoefficient(2 * p / (StandardAir.DENSITY * v * v));
    }

    /**
     * The same register with another leak through its closed damper.
     *
     * @param fraction open area left when shut over free area, in [0, 50 %]; 0 is tight
     * @return changed copy
     * @throws IllegalArgumentException if the fraction is out of range
     */
    public Register withLeakWhenShut(Quantity<Dimensionless> fraction) {
        double f = Si.ratio(fraction, "leak of shut register");
        Range.require("leak of shut register", f, 0, 0.5, "");
        return new Register(faceArea, freeFraction, coefficient, position, openFraction, f);
    }

    /**
     * The same register fully open.
     *
     * @return changed copy
     */
    public Register opened() {
        return new Register(faceArea, freeFraction, coefficient, Position.OPEN, 1, leakFraction);
    }

    /**
     * The same register shut.
     *
     * @return changed copy
     */
    public Register shut() {
        return new Register(faceArea, freeFraction, coefficient, Position.SHUT, 0, leakFraction);
    }

    /**
     * The same register partly open.
     *
     * @param fraction share of its free area left open, in [1, 100 %]
     * @return changed copy
     * @throws IllegalArgumentException if the fraction is out of range
     */
    public Register partlyOpen(Quantity<Dimensionless> fraction) {
        double f = Si.ratio(fraction, "open part of register");
        Range.require("open part of register", f, 0.01, 1, "");
        return new Register(faceArea, freeFraction, coefficient, Position.PARTLY, f, leakFraction);
    }

    /**
     * How it stands.
     *
     * @return position
     */
    public Position position() {
        return position;
    }

    /**
     * Free area, fully open.
     *
     * @return area between the bars
     */
    public Quantity<Area> freeArea() {
        return Units.squareMetres(faceArea * freeFraction);
    }

    /**
     * Face area.
     *
     * @return width times height
     */
    public Quantity<Area> faceArea() {
        return Units.squareMetres(faceArea);
    }

    /** The same register with its face grown in proportion. */
    Register scaled(double times) {
        return new Register(
                faceArea * times, freeFraction, coefficient, position, openFraction, leakFraction);
    }

    double freeAreaSi() {
        return faceArea * freeFraction;
    }

    /** Share of the free area that air can pass as the register stands; 0 if shut tight. */
    double passable() {
        return position == Position.SHUT ? leakFraction : openFraction;
    }

    /** Loss coefficient referred to the velocity pressure of a duct; infinite if shut tight. */
    double coefficientOn(double ductArea) {
        double r = ductArea / (freeAreaSi() * passable());
        return coefficient * r * r;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Register r
                && r.faceArea == faceArea
                && r.freeFraction == freeFraction
                && r.coefficient == coefficient
                && r.position == position
                && r.openFraction == openFraction
                && r.leakFraction == leakFraction;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                faceArea, freeFraction, coefficient, position, openFraction, leakFraction);
    }

    @Override
    public String toString() {
        String stands =
                switch (position) {
                    case OPEN -> "open";
                    case SHUT -> "shut";
                    case PARTLY -> String.format(Locale.ROOT, "%.0f %% open", openFraction * 100);
                };
        return String.format(
                Locale.ROOT,
                "register of %.0f in2 free area, %s",
                freeAreaSi() / 0.00064516,
                stands);
    }
}
