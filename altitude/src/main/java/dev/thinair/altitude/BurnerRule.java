package dev.thinair.altitude;

import dev.thinair.altitude.kernel.BurnerDerating;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * A rule for the gas input permitted at elevation. <b>The appliance maker's instructions ({@link
 * MakersTable}) and the local code come first</b>; the others are code rules with more than one
 * reading, so the reading is chosen by name and never assumed.
 *
 * <p>A burner set too high for its air makes carbon monoxide. Input is set by licensed gas
 * technicians with a combustion analyser.
 */
public sealed interface BurnerRule {

    /**
     * Permitted input over rated input.
     *
     * @param elevation elevation of the appliance, in [-500, 6000] m
     * @return the multiplier
     * @throws NullPointerException if elevation is null
     * @throws IllegalArgumentException if elevation is out of range or the rule says nothing there
     */
    Quantity<Dimensionless> multiplier(Quantity<Length> elevation);

    /**
     * The rule in words.
     *
     * @return a sentence for reports
     */
    String words();

    /**
     * Where the rule is published.
     *
     * @return the source
     */
    String source();

    /**
     * A point of a maker's table.
     *
     * @param elevation elevation
     * @param multiplier permitted input over rated input there
     */
    record Point(Quantity<Length> elevation, Quantity<Dimensionless> multiplier) {}

    /**
     * The maker's table, linear between its points: at least two, rising in elevation.
     *
     * @param points the table
     * @param source the maker's document and page
     */
    record MakersTable(List<Point> points, String source) implements BurnerRule {
        /**
         * Checks the table.
         *
         * @param points the table
         * @param source the maker's document and page
         * @throws IllegalArgumentException if there are fewer than two points, elevations do not
         *     rise, a multiplier is outside (0, 1.2], or the source is missing
         */
        public MakersTable {
            points = List.copyOf(points);
            if (source == null || source.isBlank()) {
                throw new IllegalArgumentException(
                        "the maker's table has no source: name the document and page");
            }
            if (points.size() < 2) {
                throw new IllegalArgumentException(
                        "maker's table has " + points.size() + " point(s), but needs at least two");
            }
            BurnerDerating.makersTable(elevations(points)[0], elevations(points), shares(points));
        }

        private static double[] elevations(List<Point> points) {
            return points.stream()
                    .mapToDouble(p -> Si.metres(p.elevation, "elevation of the maker's table"))
                    .toArray();
        }

        private static double[] shares(List<Point> points) {
            return points.stream()
                    .mapToDouble(p -> Si.ratio(p.multiplier, "multiplier of the maker's table"))
                    .toArray();
        }

        @Override
        public Quantity<Dimensionless> multiplier(Quantity<Length> elevation) {
            return Units.ratio(
                    BurnerDerating.makersTable(
                            Si.metres(elevation, "elevation"), elevations(points), shares(points)));
        }

        @Override
        public String words() {
            return "maker's table, linear between its points";
        }
    }

    /** Four percent per 1000 ft from sea level, once above 2000 ft: 0.80 at 5000 ft. */
    record FourPercentFromSeaLevel() implements BurnerRule {
        @Override
        public Quantity<Dimensionless> multiplier(Quantity<Length> elevation) {
            return Units.ratio(
                    BurnerDerating.fourPercentFromSeaLevel(Si.metres(elevation, "elevation")));
        }

        @Override
        public String words() {
            return "4 % per 1000 ft counted from sea level, once above 2000 ft";
        }

        @Override
        public String source() {
            return "ANSI Z223.1/NFPA 54, high-altitude rule (wording from memory)";
        }
    }

    /** Four percent per 1000 ft above 2000 ft: 0.88 at 5000 ft. */
    record FourPercentFromTwoThousandFeet() implements BurnerRule {
        @Override
        public Quantity<Dimensionless> multiplier(Quantity<Length> elevation) {
            return Units.ratio(
                    BurnerDerating.fourPercentFromTwoThousandFeet(
                            Si.metres(elevation, "elevation")));
        }

        @Override
        public String words() {
            return "4 % per 1000 ft counted from 2000 ft";
        }

        @Override
        public String source() {
            return "common practice, no source: the reading of some makers";
        }
    }

    /**
     * Another share per 1000 ft, from sea level once above 2000 ft, as some listings ask.
     *
     * @param sharePerThousandFeet reduction per 1000 ft, in [0, 5] percent
     * @param source the listing or maker's document
     */
    record ShareFromSeaLevel(Quantity<Dimensionless> sharePerThousandFeet, String source)
            implements BurnerRule {
        /**
         * Checks the rule.
         *
         * @param sharePerThousandFeet reduction per 1000 ft, in [0, 5] percent
         * @param source the listing or maker's document
         * @throws IllegalArgumentException if the share is out of range or the source is missing
         */
        public ShareFromSeaLevel {
            Range.require(
                    "reduction per 1000 ft",
                    Si.ratio(sharePerThousandFeet, "reduction per 1000 ft"),
                    0,
                    0.05,
                    "(ratio)");
            if (source == null || source.isBlank()) {
                throw new IllegalArgumentException(
                        "the reduction per 1000 ft has no source: name the listing or document");
            }
        }

        @Override
        public Quantity<Dimensionless> multiplier(Quantity<Length> elevation) {
            return Units.ratio(
                    BurnerDerating.fromSeaLevel(
                            Si.metres(elevation, "elevation"),
                            Si.ratio(sharePerThousandFeet, "reduction per 1000 ft")));
        }

        @Override
        public String words() {
            return String.format(
                    Locale.ROOT,
                    "%s per 1000 ft counted from sea level, once above 2000 ft",
                    QuantityText.format(sharePerThousandFeet));
        }
    }

    /**
     * One reduction for a band of elevations, as in Canadian practice (10 percent from 2000 to 4500
     * ft). Above the band the rule says nothing and is refused.
     *
     * @param low lower edge of the band, not in it
     * @param high upper edge of the band, in it
     * @param reduction share taken off in the band, in [0, 50] percent
     * @param source code or maker's document
     */
    record FlatBand(
            Quantity<Length> low,
            Quantity<Length> high,
            Quantity<Dimensionless> reduction,
            String source)
            implements BurnerRule {
        /**
         * Checks the band.
         *
         * @param low lower edge of the band, not in it
         * @param high upper edge of the band, in it
         * @param reduction share taken off in the band, in [0, 50] percent
         * @param source code or maker's document
         * @throws IllegalArgumentException if the edges do not rise, the reduction is out of range
         *     or the source is missing
         */
        public FlatBand {
            BurnerDerating.flatBand(
                    -500,
                    Si.metres(low, "lower edge of the band"),
                    Si.metres(high, "upper edge of the band"),
                    Si.ratio(reduction, "reduction"));
            if (source == null || source.isBlank()) {
                throw new IllegalArgumentException(
                        "the flat reduction has no source: name the code or document");
            }
        }

        @Override
        public Quantity<Dimensionless> multiplier(Quantity<Length> elevation) {
            return Units.ratio(
                    BurnerDerating.flatBand(
                            Si.metres(elevation, "elevation"),
                            Si.metres(low, "lower edge of the band"),
                            Si.metres(high, "upper edge of the band"),
                            Si.ratio(reduction, "reduction")));
        }

        @Override
        public String words() {
            return QuantityText.format(reduction)
                    + " off from "
                    + QuantityText.formatBoth(low, 4)
                    + " to "
                    + QuantityText.formatBoth(high, 4);
        }
    }
}
