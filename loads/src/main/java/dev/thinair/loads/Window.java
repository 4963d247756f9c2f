package dev.thinair.loads;

import dev.thinair.loads.kernel.GlazingOptics;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.Shading;
import dev.thinair.loads.kernel.Transposition;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * A window as bought: width and height over the frame, whole-product U-factor and solar heat gain
 * by angle, with what shades it inside and outside. It takes tilt and azimuth from the surface it
 * sits in. Immutable.
 *
 * <pre>{@code
 * Window west =
 *         Window.of("west", metres(1.2), metres(1.5), wattsPerSquareMetreKelvin(2.0),
 *                         Glazing.clearDouble().scaledTo(0.36))
 *                 .withShade(Shade.interior("light blind", ratio(0.68), ratio(0.5)))
 *                 .withOverhang(Overhang.alongWall(metres(0.6), metres(0.1)));
 * }</pre>
 */
public final class Window {

    private final String name;
    private final double width;
    private final double height;
    private final double transmittance;
    private final Glazing glazing;
    private final Shade shade;
    private final Overhang overhang;
    private final Fins fins;
    private final double screen;

    private Window(
            String name,
            double width,
            double height,
            double transmittance,
            Glazing glazing,
            Shade shade,
            Overhang overhang,
            Fins fins,
            double screen) {
        this.name = name;
        this.width = width;
        this.height = height;
        this.transmittance = transmittance;
        this.glazing = glazing;
        this.shade = shade;
        this.overhang = overhang;
        this.fins = fins;
        this.screen = screen;
    }

    /**
     * A window without shades.
     *
     * @param name what reports call it
     * @param width over the frame, in (0, 50] m
     * @param height over the frame, along the plane, in (0, 50] m
     * @param uFactor of the whole product with its films, in [0.1, 10] W/(m2 K)
     * @param glazing of the whole product
     * @return the window
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public static Window of(
            String name,
            Quantity<Length> width,
            Quantity<Length> height,
            Quantity<ThermalTransmittance> uFactor,
            Glazing glazing) {
        double w = Si.metres(width, "window width");
        double h = Si.metres(height, "window height");
        double u = Si.wattsPerSquareMetreKelvin(uFactor, "window U-factor");
        Range.requireAbove("window width", w, 0, "m");
        Range.require("window width", w, 0, 50, "m");
        Range.requireAbove("window height", h, 0, "m");
        Range.require("window height", h, 0, 50, "m");
        Range.require("window U-factor", u, 0.1, 10, "W/(m2 K)");
        return new Window(
                Objects.requireNonNull(name, "name"),
                w,
                h,
                u,
                Objects.requireNonNull(glazing, "glazing"),
                Shade.none(),
                Overhang.none(),
                Fins.none(),
                1);
    }

    /**
     * The same window with an interior shade.
     *
     * @param value shade
     * @return a new window
     */
    public Window withShade(Shade value) {
        return new Window(
                name,
                width,
                height,
                transmittance,
                glazing,
                Objects.requireNonNull(value, "shade"),
                overhang,
                fins,
                screen);
    }

    /**
     * The same window below an overhang.
     *
     * @param value overhang
     * @return a new window
     */
    public Window withOverhang(Overhang value) {
        return new Window(
                name,
                width,
                height,
                transmittance,
                glazing,
                shade,
                Objects.requireNonNull(value, "overhang"),
                fins,
                screen);
    }

    /**
     * The same window between fins.
     *
     * @param value fins
     * @return a new window
     */
    public Window withFins(Fins value) {
        return new Window(
                name,
                width,
                height,
                transmittance,
                glazing,
                shade,
                overhang,
                Objects.requireNonNull(value, "fins"),
                screen);
    }

    /**
     * The same window behind an exterior screen over all of it: an insect screen (0.64 in the
     * handbook's worked house) or a solar screen. It takes the same share of beam and of diffuse,
     * as the handbook's exterior attachments do.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, exterior attachments T<sub>x</sub>.
     *
     * @param transmission share of the sun that passes it, in [0, 1]; 1 for no screen
     * @return a new window
     * @throws IllegalArgumentException if the share is not finite or outside its range
     */
    public Window withScreen(Quantity<Dimensionless> transmission) {
        double share = Si.ratio(transmission, "transmission of the exterior screen");
        Range.require("transmission of the exterior screen", share, 0, 1, "-");
        return new Window(
                name, width, height, transmittance, glazing, shade, overhang, fins, share);
    }

    /**
     * The same window with another glazing.
     *
     * @param value glazing
     * @return a new window
     */
    public Window withGlazing(Glazing value) {
        return new Window(
                name,
                width,
                height,
                transmittance,
                Objects.requireNonNull(value, "glazing"),
                shade,
                overhang,
                fins,
                screen);
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
     * Width over the frame.
     *
     * @return width
     */
    public Quantity<Length> width() {
        return Units.metres(width);
    }

    /**
     * Height over the frame, along the plane.
     *
     * @return height
     */
    public Quantity<Length> height() {
        return Units.metres(height);
    }

    /**
     * Area over the frame.
     *
     * @return area
     */
    public Quantity<Area> area() {
        return Units.squareMetres(width * height);
    }

    /**
     * U-factor of the whole product with its films.
     *
     * @return U-factor
     */
    public Quantity<ThermalTransmittance> uFactor() {
        return Units.wattsPerSquareMetreKelvin(transmittance);
    }

    /**
     * Solar heat gain by angle.
     *
     * @return glazing
     */
    public Glazing glazing() {
        return glazing;
    }

    /**
     * Interior shade.
     *
     * @return shade
     */
    public Shade shade() {
        return shade;
    }

    /**
     * Overhang above.
     *
     * @return overhang
     */
    public Overhang overhang() {
        return overhang;
    }

    /**
     * Fins beside.
     *
     * @return fins
     */
    public Fins fins() {
        return fins;
    }

    /**
     * Share of the sun that passes the exterior screen.
     *
     * @return share, 0 to 1; 1 for no screen
     */
    public double screenTransmission() {
        return screen;
    }

    /**
     * Area for kernel calls.
     *
     * @return m2
     */
    public double squareMetres() {
        return width * height;
    }

    /**
     * U-factor for kernel calls.
     *
     * @return W/(m2 K)
     */
    public double transmittance() {
        return transmittance;
    }

    /**
     * Radiant share of the solar gain, the rest being convective at once: 1 for bare glass (the sun
     * falls on the room's surfaces), the shade's own share where one hangs inside, weighted by how
     * much of the glass it covers.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 18, Table 14.
     *
     * @return share, 0 to 1
     */
    public double solarRadiantFraction() {
        double covered = shade.fractionClosed();
        return 1 - covered * (1 - shade.radiantFraction());
    }

    /**
     * Radiant share of the heat conducted through the window: 0.33 for a normal SHGC above 0.5,
     * else 0.46.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 18, Table 14.
     *
     * @return share, 0 to 1
     */
    public double conductionRadiantFraction() {
        return glazing.normal() > 0.5 ? 0.33 : 0.46;
    }

    /**
     * Sun entering the room through the whole window at every hour mark: beam past overhang and
     * fins with the coefficient of its incidence, and diffuse with the hemispherical one, both
     * attenuated by the screen outside and the shade inside.
     *
     * @param hours weather
     * @param azimuth azimuth of the window's plane, rad from north
     * @param tilt tilt of the window's plane, rad
     * @param out receives one value an hour, W
     * @throws IllegalArgumentException if azimuth or tilt is out of range, or out is short
     */
    public void solarGain(OutdoorHours hours, double azimuth, double tilt, double[] out) {
        solar(hours, azimuth, tilt, out, null);
    }

    /**
     * The same in two parts, which the handbook's radiant time series delays differently.
     *
     * @param hours weather
     * @param azimuth azimuth of the window's plane, rad from north
     * @param tilt tilt of the window's plane, rad
     * @param beamOut receives the beam part, W
     * @param diffuseOut receives the diffuse part, sky and ground, W
     * @throws IllegalArgumentException if azimuth or tilt is out of range, or an array is short
     */
    public void solarParts(
            OutdoorHours hours,
            double azimuth,
            double tilt,
            double[] beamOut,
            double[] diffuseOut) {
        solar(hours, azimuth, tilt, beamOut, Objects.requireNonNull(diffuseOut, "diffuse array"));
    }

    /** Both parts in one pass without scratch arrays; the sum into the first if no second. */
    private void solar(
            OutdoorHours hours,
            double azimuth,
            double tilt,
            double[] beamOut,
            double[] diffuseOut) {
        Transposition.requirePlane(tilt, azimuth);
        int n = hours.count();
        if (beamOut.length < n || (diffuseOut != null && diffuseOut.length < n)) {
            throw new IllegalArgumentException(
                    "result array is shorter than the series of " + n + " hours");
        }
        double sinTilt = Math.sin(tilt);
        double cosTilt = Math.cos(tilt);
        double east = Math.sin(azimuth);
        double north = Math.cos(azimuth);
        double area = width * height;
        double beamAttenuation = screen * shade.beam();
        double diffuseAttenuation = screen * shade.diffuse();
        boolean projections = overhang.depth() > 0 || fins.leftDepth() > 0 || fins.rightDepth() > 0;
        for (int h = 0; h < n; h++) {
            double direct = hours.beamNormal(h);
            double sky = hours.diffuseHorizontal(h);
            double beam = 0;
            double diffuse = 0;
            if (direct > 0 || sky > 0) {
                double altitude = hours.sunAltitude(h);
                double onVertical = hours.cosIncidence(h, east, north, 0);
                double cosine = hours.cosIncidence(h, east * sinTilt, north * sinTilt, cosTilt);
                if (direct > 0 && altitude > 0 && cosine > 0) {
                    double sunlit =
                            projections ? sunlit(altitude, hours.sunAzimuth(h), azimuth, tilt) : 1;
                    beam =
                            GlazingOptics.beamGain(
                                    area,
                                    direct * cosine,
                                    sunlit,
                                    glazing.beamAt(cosine),
                                    beamAttenuation);
                }
                diffuse =
                        GlazingOptics.diffuseGain(
                                area,
                                hours.diffuseOnPlane(h, onVertical, sinTilt, cosTilt),
                                glazing.diffuse(),
                                diffuseAttenuation);
            }
            if (diffuseOut == null) {
                beamOut[h] = beam + diffuse;
            } else {
                beamOut[h] = beam;
                diffuseOut[h] = diffuse;
            }
        }
    }

    /**
     * How the heat through the window at a clock hour of a design day comes about, step by step:
     * beam, diffuse and conduction.
     *
     * @param day design day
     * @param hour local standard hour, 0 to 23
     * @param azimuth azimuth of the window's plane, from north, clockwise
     * @param tilt of the window's plane
     * @param indoor indoor temperature
     * @return the steps; the last gives the heat gain, negative for a loss
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    public Working gainWorking(
            CoolingDesignDay day,
            int hour,
            Quantity<Angle> azimuth,
            Quantity<Angle> tilt,
            Quantity<Temperature> indoor) {
        Range.require("hour", hour, 0, 23, "h");
        return SolarWorking.windowGain(this, day, hour, azimuth, tilt, indoor);
    }

    /**
     * Share of the window that beam reaches past overhang and fins.
     *
     * @param sunAltitude rad
     * @param sunAzimuth rad from north
     * @param azimuth azimuth of the window's plane, rad from north
     * @param tilt tilt of the window's plane, rad
     * @return share, 0 to 1
     */
    public double sunlit(double sunAltitude, double sunAzimuth, double azimuth, double tilt) {
        return Shading.sunlitShare(
                width,
                height,
                overhang.depth(),
                overhang.gap(),
                overhang.extension(),
                fins.leftDepth(),
                fins.leftGap(),
                fins.rightDepth(),
                fins.rightGap(),
                sunAltitude,
                sunAzimuth,
                tilt,
                azimuth);
    }

    /** Whether the same sun comes in per area on the same plane. */
    boolean seesAlike(Window that) {
        boolean plain = overhang.depth() == 0 && fins.leftDepth() == 0 && fins.rightDepth() == 0;
        boolean alsoPlain =
                that.overhang.depth() == 0
                        && that.fins.leftDepth() == 0
                        && that.fins.rightDepth() == 0;
        boolean shaded =
                width == that.width
                        && height == that.height
                        && overhang.equals(that.overhang)
                        && fins.equals(that.fins);
        return (glazing == that.glazing || glazing.equals(that.glazing))
                && shade.equals(that.shade)
                && screen == that.screen
                && (plain ? alsoPlain : shaded);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Window that
                && name.equals(that.name)
                && width == that.width
                && height == that.height
                && transmittance == that.transmittance
                && glazing.equals(that.glazing)
                && shade.equals(that.shade)
                && overhang.equals(that.overhang)
                && fins.equals(that.fins)
                && screen == that.screen;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                name, width, height, transmittance, glazing, shade, overhang, fins, screen);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "window %s, %.2f x %.2f m, U %.2f W/(m2 K), %s",
                name,
                width,
                height,
                transmittance,
                glazing);
    }
}
