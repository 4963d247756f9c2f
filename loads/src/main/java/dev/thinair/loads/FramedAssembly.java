package dev.thinair.loads;

import dev.thinair.loads.kernel.Resistance;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * An assembly bridged by framing of wood: studs, joists or rafters beside insulated cavities. Not
 * for metal framing, whose bridging none of the three methods describes.
 *
 * <p>Described from the outside in:
 *
 * <pre>{@code
 * FramedAssembly wall = FramedAssembly.named("stud wall")
 *         .layer(siding).layer(sheathing)
 *         .bridged(batt, stud)
 *         .layer(gypsum)
 *         .framing(percent(25))
 *         .build();
 * }</pre>
 *
 * <p>For the periodic balance the parallel-path method keeps two sections side by side; the other
 * two methods make one section in which each bridged layer has the area-weighted heat capacity and
 * the resistance that gives the method's total with the design films of ISO 6946. Immutable.
 */
public final class FramedAssembly implements Assembly {

    /** How the bridging is reckoned. */
    public enum Method {
        /**
         * Heat flows straight from air to air: the upper limit (ASHRAE Fundamentals 2021, ch. 27).
         */
        PARALLEL_PATH,
        /**
         * Planes between layers are isothermal: the lower limit (ASHRAE Fundamentals 2021, ch. 27).
         */
        ISOTHERMAL_PLANES,
        /** The mean of both limits (ISO 6946:2017, 6.7.2). */
        COMBINED
    }

    private final String name;
    private final double framing;
    private final Method method;
    private final List<Layer> cavitySection; // inside out
    private final List<Layer> framingSection; // inside out
    private final List<Path> paths;

    private FramedAssembly(
            String name,
            double framing,
            Method method,
            List<Layer> cavitySection,
            List<Layer> framingSection,
            List<Path> paths) {
        this.name = name;
        this.framing = framing;
        this.method = method;
        this.cavitySection = cavitySection;
        this.framingSection = framingSection;
        this.paths = paths;
    }

    /**
     * Starts the description.
     *
     * @param name what the assembly is called in tables, not blank
     * @return a builder
     * @throws IllegalArgumentException if the name is blank
     */
    public static Builder named(String name) {
        return new Builder(Texts.requireText("assembly name", name));
    }

    /** Collects layers from the outside in. Not thread-safe. */
    public static final class Builder {
        private final String name;
        private final List<Layer> cavity = new ArrayList<>();
        private final List<Layer> frame = new ArrayList<>();
        private double fraction = Double.NaN;
        private boolean bridged;
        private Method method = Method.COMBINED;

        private Builder(String name) {
            this.name = name;
        }

        /**
         * Adds a layer that runs past the framing.
         *
         * @param layer next layer inwards
         * @return this builder
         */
        public Builder layer(Layer layer) {
            cavity.add(requireLayer(layer));
            frame.add(layer);
            return this;
        }

        /**
         * Adds a layer that is cavity beside framing.
         *
         * @param between what fills the cavity (insulation, air gap)
         * @param member the framing beside it
         * @return this builder
         */
        public Builder bridged(Layer between, Layer member) {
            cavity.add(requireLayer(between));
            frame.add(requireLayer(member));
            bridged = true;
            return this;
        }

        /**
         * Share of the area taken by framing.
         *
         * @param fraction above 0 and below 100 %
         * @return this builder
         * @throws IllegalArgumentException if outside that range
         */
        public Builder framing(Quantity<Dimensionless> fraction) {
            double f = Si.ratio(fraction, "framing fraction of " + name);
            Range.require("framing fraction of " + name, f, 0.001, 0.999, "");
            this.fraction = f;
            return this;
        }

        /**
         * Chooses the method; {@link Method#COMBINED} unless said.
         *
         * @param method how the bridging is reckoned
         * @return this builder
         */
        public Builder method(Method method) {
            if (method == null) {
                throw new NullPointerException("method of " + name + " is null");
            }
            this.method = method;
            return this;
        }

        /**
         * Finishes the assembly.
         *
         * @return the assembly
         * @throws IllegalArgumentException if no layer is bridged, the framing fraction is missing,
         *     or the limits of the resistance are too far apart for the combined method
         */
        public FramedAssembly build() {
            if (!bridged) {
                throw new IllegalArgumentException(
                        "framed assembly \""
                                + name
                                + "\" has no bridged layer: use Assembly.outsideIn");
            }
            if (Double.isNaN(fraction)) {
                throw new IllegalArgumentException(
                        "framed assembly \"" + name + "\" has no framing fraction, but needs one");
            }
            List<Layer> cavityIn = reversed(cavity);
            List<Layer> frameIn = reversed(frame);
            return new FramedAssembly(
                    name,
                    fraction,
                    method,
                    cavityIn,
                    frameIn,
                    paths(name, fraction, method, cavityIn, frameIn));
        }

        private Layer requireLayer(Layer layer) {
            if (layer == null) {
                throw new NullPointerException("layer of " + name + " is null");
            }
            return layer;
        }

        private static List<Layer> reversed(List<Layer> layers) {
            List<Layer> copy = new ArrayList<>(layers);
            java.util.Collections.reverse(copy);
            return List.copyOf(copy);
        }
    }

    private static List<Path> paths(
            String name, double f, Method method, List<Layer> cavity, List<Layer> frame) {
        if (method == Method.PARALLEL_PATH) {
            return List.of(new Path(1 - f, cavity), new Path(f, frame));
        }
        double plain = 0;
        double bridged = 0;
        for (int l = 0; l < cavity.size(); l++) {
            if (cavity.get(l).equals(frame.get(l))) {
                plain += cavity.get(l).squareMetreKelvinsPerWatt();
            } else {
                bridged += planes(f, cavity.get(l), frame.get(l));
            }
        }
        double in = Resistance.insideFilm(Resistance.HORIZONTAL);
        double stretch = 1;
        if (method == Method.COMBINED) {
            double wanted =
                    Resistance.combined(1 - f, withFilms(cavity, in), withFilms(frame, in))
                            - in
                            - Resistance.OUTSIDE_FILM;
            stretch = (wanted - plain) / bridged;
        }
        List<Layer> merged = new ArrayList<>();
        for (int l = 0; l < cavity.size(); l++) {
            Layer a = cavity.get(l);
            Layer b = frame.get(l);
            if (a.equals(b)) {
                merged.add(a);
            } else {
                merged.add(
                        new MergedLayer(
                                a.name() + " / " + b.name(),
                                stretch * planes(f, a, b),
                                (1 - f) * a.joulesPerSquareMetreKelvin()
                                        + f * b.joulesPerSquareMetreKelvin()));
            }
        }
        return List.of(new Path(1, merged));
    }

    private static double planes(double f, Layer a, Layer b) {
        return 1 / ((1 - f) / a.squareMetreKelvinsPerWatt() + f / b.squareMetreKelvinsPerWatt());
    }

    private static double[] withFilms(List<Layer> insideOut, double insideFilm) {
        return withFilms(insideOut, insideFilm, Resistance.OUTSIDE_FILM);
    }

    private static double[] withFilms(
            List<Layer> insideOut, double insideFilm, double outsideFilm) {
        double[] r = new double[insideOut.size() + 2];
        r[0] = insideFilm;
        for (int l = 0; l < insideOut.size(); l++) {
            r[l + 1] = insideOut.get(l).squareMetreKelvinsPerWatt();
        }
        r[r.length - 1] = outsideFilm;
        return r;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Path> paths() {
        return paths;
    }

    /**
     * Share of the area taken by framing.
     *
     * @return fraction
     */
    public double framingFraction() {
        return framing;
    }

    /**
     * How the bridging is reckoned.
     *
     * @return method
     */
    public Method method() {
        return method;
    }

    /**
     * Layers of the section through the cavity, from the inside out.
     *
     * @return layers
     */
    public List<Layer> cavitySection() {
        return cavitySection;
    }

    /**
     * Layers of the section through the framing, from the inside out.
     *
     * @return layers
     */
    public List<Layer> framingSection() {
        return framingSection;
    }

    @Override
    public Quantity<ThermalResistance> resistance() {
        return Units.squareMetreKelvinsPerWatt(squareMetreKelvinsPerWatt());
    }

    /**
     * Resistance from face to face: air to air with the horizontal design films, less the films.
     *
     * @return resistance, m2 K/W
     */
    @Override
    public double squareMetreKelvinsPerWatt() {
        double in = Resistance.insideFilm(Resistance.HORIZONTAL);
        return totalResistance(in, Resistance.OUTSIDE_FILM) - in - Resistance.OUTSIDE_FILM;
    }

    @Override
    public double totalResistance(double insideFilm, double outsideFilm) {
        Range.requireAbove("inside film resistance", insideFilm, 0, "m2 K/W");
        Range.requireAbove("outside film resistance", outsideFilm, 0, "m2 K/W");
        double[] a = withFilms(cavitySection, insideFilm, outsideFilm);
        double[] b = withFilms(framingSection, insideFilm, outsideFilm);
        switch (method) {
            case PARALLEL_PATH:
                return Resistance.upperLimit(1 - framing, a, b);
            case ISOTHERMAL_PLANES:
                return Resistance.lowerLimit(1 - framing, a, b);
            default:
                return Resistance.combined(1 - framing, a, b);
        }
    }

    @Override
    public Quantity<ThermalTransmittance> transmittance(HeatFlow flow) {
        return Units.wattsPerSquareMetreKelvin(
                1
                        / totalResistance(
                                Resistance.insideFilm(flow.ordinal()), Resistance.OUTSIDE_FILM));
    }

    @Override
    public double joulesPerSquareMetreKelvin() {
        double sum = 0;
        for (int l = 0; l < cavitySection.size(); l++) {
            sum +=
                    (1 - framing) * cavitySection.get(l).joulesPerSquareMetreKelvin()
                            + framing * framingSection.get(l).joulesPerSquareMetreKelvin();
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FramedAssembly a
                && name.equals(a.name)
                && framing == a.framing
                && method == a.method
                && cavitySection.equals(a.cavitySection)
                && framingSection.equals(a.framingSection);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + cavitySection.hashCode();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: framing %.1f %%, %s, R %.3f m2 K/W face to face",
                name,
                framing * 100,
                method,
                squareMetreKelvinsPerWatt());
    }
}
