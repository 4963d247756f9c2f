package dev.thinair.ducts;

import dev.thinair.ducts.kernel.DuctGeometry;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/** Cross section of a duct: round, rectangular or flat oval. Immutable. */
public sealed interface DuctShape
        permits DuctShape.Round, DuctShape.Rectangular, DuctShape.FlatOval {

    /**
     * A round duct.
     *
     * @param diameter inside diameter
     * @return the shape
     * @throws IllegalArgumentException if the diameter is not in [1 mm, 20 m]
     */
    static Round round(Quantity<Length> diameter) {
        return new Round(Si.metres(diameter, "duct diameter"));
    }

    /**
     * A rectangular duct.
     *
     * @param width one inside side
     * @param height the other inside side
     * @return the shape
     * @throws IllegalArgumentException if a side is not in [1 mm, 20 m]
     */
    static Rectangular rectangular(Quantity<Length> width, Quantity<Length> height) {
        return new Rectangular(Si.metres(width, "duct width"), Si.metres(height, "duct height"));
    }

    /**
     * A flat oval duct.
     *
     * @param major major axis
     * @param minor minor axis, at most the major axis
     * @return the shape
     * @throws IllegalArgumentException if an axis is out of range, or minor exceeds major
     */
    static FlatOval flatOval(Quantity<Length> major, Quantity<Length> minor) {
        return new FlatOval(Si.metres(major, "major axis"), Si.metres(minor, "minor axis"));
    }

    /**
     * Cross section.
     *
     * @return area
     */
    default Quantity<Area> area() {
        return Units.squareMetres(areaSi());
    }

    /**
     * Four areas over perimeter: goes with the true mean velocity.
     *
     * @return hydraulic diameter
     */
    default Quantity<Length> hydraulicDiameter() {
        return Units.metres(hydraulicDiameterSi());
    }

    /**
     * Diameter of the round duct with the same friction rate at the same airflow.
     *
     * @return circular equivalent
     */
    default Quantity<Length> equivalentDiameter() {
        return Units.metres(equivalentDiameterSi());
    }

    /**
     * Inside perimeter.
     *
     * @return perimeter
     */
    default Quantity<Length> perimeter() {
        return Units.metres(perimeterSi());
    }

    /**
     * Cross section for kernel calls.
     *
     * @return m2
     */
    double areaSi();

    /**
     * Hydraulic diameter for kernel calls.
     *
     * @return m
     */
    double hydraulicDiameterSi();

    /**
     * Circular equivalent for kernel calls.
     *
     * @return m
     */
    double equivalentDiameterSi();

    /**
     * Inside perimeter for kernel calls.
     *
     * @return m
     */
    double perimeterSi();

    /** A round duct. */
    final class Round implements DuctShape {
        private final double diameter;

        private Round(double diameter) {
            DuctGeometry.roundArea(diameter);
            this.diameter = diameter;
        }

        /**
         * Inside diameter.
         *
         * @return diameter
         */
        public Quantity<Length> diameter() {
            return Units.metres(diameter);
        }

        @Override
        public double areaSi() {
            return DuctGeometry.roundArea(diameter);
        }

        @Override
        public double hydraulicDiameterSi() {
            return diameter;
        }

        @Override
        public double equivalentDiameterSi() {
            return diameter;
        }

        @Override
        public double perimeterSi() {
            return Math.PI * diameter;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Round r && r.diameter == diameter;
        }

        @Override
        public int hashCode() {
            return Double.hashCode(diameter);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT, "round %.4g in. (%.0f mm)", diameter / 0.0254, diameter * 1000);
        }
    }

    /** A rectangular duct. */
    final class Rectangular implements DuctShape {
        private final double width;
        private final double height;

        private Rectangular(double width, double height) {
            DuctGeometry.rectangularHydraulicDiameter(width, height);
            this.width = width;
            this.height = height;
        }

        /**
         * One inside side.
         *
         * @return width
         */
        public Quantity<Length> width() {
            return Units.metres(width);
        }

        /**
         * The other inside side.
         *
         * @return height
         */
        public Quantity<Length> height() {
            return Units.metres(height);
        }

        @Override
        public double areaSi() {
            return width * height;
        }

        @Override
        public double hydraulicDiameterSi() {
            return DuctGeometry.rectangularHydraulicDiameter(width, height);
        }

        @Override
        public double equivalentDiameterSi() {
            return DuctGeometry.rectangularEquivalentDiameter(width, height);
        }

        @Override
        public double perimeterSi() {
            return 2 * (width + height);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Rectangular r && r.width == width && r.height == height;
        }

        @Override
        public int hashCode() {
            return 31 * Double.hashCode(width) + Double.hashCode(height);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "rectangular %.4g x %.4g in. (%.0f x %.0f mm)",
                    width / 0.0254,
                    height / 0.0254,
                    width * 1000,
                    height * 1000);
        }
    }

    /** A flat oval duct. */
    final class FlatOval implements DuctShape {
        private final double major;
        private final double minor;

        private FlatOval(double major, double minor) {
            DuctGeometry.flatOvalArea(major, minor);
            this.major = major;
            this.minor = minor;
        }

        /**
         * Major axis.
         *
         * @return major axis
         */
        public Quantity<Length> major() {
            return Units.metres(major);
        }

        /**
         * Minor axis.
         *
         * @return minor axis
         */
        public Quantity<Length> minor() {
            return Units.metres(minor);
        }

        @Override
        public double areaSi() {
            return DuctGeometry.flatOvalArea(major, minor);
        }

        @Override
        public double hydraulicDiameterSi() {
            return DuctGeometry.flatOvalHydraulicDiameter(major, minor);
        }

        @Override
        public double equivalentDiameterSi() {
            return DuctGeometry.flatOvalEquivalentDiameter(major, minor);
        }

        @Override
        public double perimeterSi() {
            return DuctGeometry.flatOvalPerimeter(major, minor);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof FlatOval r && r.major == major && r.minor == minor;
        }

        @Override
        public int hashCode() {
            return 31 * Double.hashCode(major) + Double.hashCode(minor);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "flat oval %.4g x %.4g in. (%.0f x %.0f mm)",
                    major / 0.0254,
                    minor / 0.0254,
                    major * 1000,
                    minor * 1000);
        }
    }
}
