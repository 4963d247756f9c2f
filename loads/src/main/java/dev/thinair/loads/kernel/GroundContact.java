package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Heat between a house and the ground: slab edges, below-grade walls and floors, by the handbook
 * and by ISO 13370.
 *
 * <p>Sources: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 18, equations (38) and (39) (after
 * Latta and Boileau) and Table 24; ISO 13370:2007 (2017 equivalent), equations (4) to (6) and 9.3.
 */
public final class GroundContact {

    private GroundContact() {}

    /**
     * Mean transmittance of a below-grade wall between two depths: <code>
     * U = 2k/(pi (z2 - z1)) (ln(z2
     * + 2kR/pi) - ln(z1 + 2kR/pi))</code>.
     *
     * @param upperDepth z1 of the upper end of the part below grade, m, in [0, 20]
     * @param lowerDepth z2 of its lower end, m, in (z1, 20]
     * @param soilConductivity k, W/(m K), in [0.1, 5]
     * @param resistance R of wall, insulation and inside film, m2 K/W, in [0.01, 50]
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double wallTransmittance(
            double upperDepth, double lowerDepth, double soilConductivity, double resistance) {
        Range.require("upper depth", upperDepth, 0, 20, "m");
        Range.require("lower depth", lowerDepth, 0, 20, "m");
        Range.requireAbove("lower depth", lowerDepth, upperDepth, "m");
        requireSoil(soilConductivity, resistance);
        double offset = 2 * soilConductivity * resistance / Math.PI;
        return 2
                * soilConductivity
                / (Math.PI * (lowerDepth - upperDepth))
                * Math.log((lowerDepth + offset) / (upperDepth + offset));
    }

    /**
     * Mean transmittance of a basement floor: <code>U = 2k/(pi w) (ln(w/2 + z/2 + kR/pi) - ln(z/2 +
     * kR/pi))</code>.
     *
     * @param width w, shorter side of the floor, m, in [0.5, 100]
     * @param depth z of the floor below grade, m, in [0, 20]
     * @param soilConductivity k, W/(m K), in [0.1, 5]
     * @param resistance R of floor, insulation and inside film, m2 K/W, in [0.01, 50]
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double floorTransmittance(
            double width, double depth, double soilConductivity, double resistance) {
        Range.require("width of the floor", width, 0.5, 100, "m");
        Range.require("depth of the floor", depth, 0, 20, "m");
        requireSoil(soilConductivity, resistance);
        double offset = depth / 2 + soilConductivity * resistance / Math.PI;
        return 2 * soilConductivity / (Math.PI * width) * Math.log((width / 2 + offset) / offset);
    }

    /**
     * Heat lost at the edge of a slab on grade: <code>q = Fp P dt</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 18, Eq. (40), with edge factors of its Table 24.
     *
     * @param edgeFactor Fp, W/(m K), in [0, 10]
     * @param perimeter P exposed, m, in [0, 10000]
     * @param temperatureDifference indoors less outdoors, K, in [-100, 100]
     * @return W, positive out of the house
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double slabEdgeLoss(
            double edgeFactor, double perimeter, double temperatureDifference) {
        Range.require("edge factor", edgeFactor, 0, 10, "W/(m K)");
        Range.require("exposed perimeter", perimeter, 0, 10_000, "m");
        Range.require("temperature difference", temperatureDifference, -100, 100, "K");
        return edgeFactor * perimeter * temperatureDifference;
    }

    /**
     * Lowest ground surface temperature of the year, against which the handbook reckons below-grade
     * losses: mean ground temperature less the amplitude of its swing.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 18, Eq. (37).
     *
     * @param mean mean ground surface temperature, about the annual mean of the air, K, in [230,
     *     320]
     * @param amplitude of the ground surface temperature, K, in [0, 40]
     * @return K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double designGroundTemperature(double mean, double amplitude) {
        Range.require("mean ground temperature", mean, 230, 320, "K");
        Range.require("amplitude of the ground temperature", amplitude, 0, 40, "K");
        return mean - amplitude;
    }

    // ---- ISO 13370

    /**
     * Characteristic dimension of a floor: <code>B' = 2A/P</code>.
     *
     * @param area A, m2, above 0
     * @param perimeter P exposed, m, above 0
     * @return B', m
     * @throws IllegalArgumentException if an argument is NaN, infinite or not above 0
     */
    public static double characteristicDimension(double area, double perimeter) {
        Range.requireAbove("floor area", area, 0, "m2");
        Range.requireAbove("exposed perimeter", perimeter, 0, "m");
        return 2 * area / perimeter;
    }

    /**
     * Equivalent thickness of soil: <code>w + lambda (Rsi + R + Rse)</code>.
     *
     * @param wallThickness w, full thickness of the walls, m, in [0, 2]; 0 for a basement wall
     * @param soilConductivity lambda, W/(m K), in [0.1, 5]
     * @param resistance Rsi + R + Rse, m2 K/W, in [0.01, 50]
     * @return m
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double equivalentThickness(
            double wallThickness, double soilConductivity, double resistance) {
        Range.require("wall thickness", wallThickness, 0, 2, "m");
        requireSoil(soilConductivity, resistance);
        return wallThickness + soilConductivity * resistance;
    }

    /**
     * Transmittance of a slab on ground or, with a depth, of a basement floor. With <code>e = dt +
     * z/2</code>: <code>2 lambda/(pi B' + e) ln(pi B'/e + 1)</code> if e &lt; B', else <code>
     * lambda/(0.457 B' + e)</code>.
     *
     * <p>Source: ISO 13370:2007, Eq. (4), (5), (10) and (11).
     *
     * @param characteristicDimension B', m, above 0
     * @param equivalentThickness dt, m, above 0
     * @param depth z of the floor below grade, m, in [0, 20]; 0 for a slab on ground
     * @param soilConductivity lambda, W/(m K), in [0.1, 5]
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double isoFloorTransmittance(
            double characteristicDimension,
            double equivalentThickness,
            double depth,
            double soilConductivity) {
        Range.requireAbove("characteristic dimension", characteristicDimension, 0, "m");
        Range.requireAbove("equivalent thickness", equivalentThickness, 0, "m");
        Range.require("depth of the floor", depth, 0, 20, "m");
        Range.require("soil conductivity", soilConductivity, 0.1, 5, "W/(m K)");
        double e = equivalentThickness + depth / 2;
        if (e < characteristicDimension) {
            return 2
                    * soilConductivity
                    / (Math.PI * characteristicDimension + e)
                    * Math.log(Math.PI * characteristicDimension / e + 1);
        }
        return soilConductivity / (0.457 * characteristicDimension + e);
    }

    /**
     * Transmittance of a basement wall: <code>2 lambda/(pi z) (1 + 0.5 d/(d + z)) ln(z/dw +
     * 1)</code> with d the smaller of dt and dw.
     *
     * <p>Source: ISO 13370:2007, Eq. (13).
     *
     * @param floorThickness dt, equivalent thickness of the floor, m, above 0
     * @param wallThickness dw, equivalent thickness of the wall, m, above 0
     * @param depth z of the floor below grade, m, in (0, 20]
     * @param soilConductivity lambda, W/(m K), in [0.1, 5]
     * @return U, W/(m2 K)
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double isoWallTransmittance(
            double floorThickness, double wallThickness, double depth, double soilConductivity) {
        Range.requireAbove("equivalent thickness of the floor", floorThickness, 0, "m");
        Range.requireAbove("equivalent thickness of the wall", wallThickness, 0, "m");
        Range.require("depth of the floor", depth, 0, 20, "m");
        Range.requireAbove("depth of the floor", depth, 0, "m");
        Range.require("soil conductivity", soilConductivity, 0.1, 5, "W/(m K)");
        double d = Math.min(floorThickness, wallThickness);
        return 2
                * soilConductivity
                / (Math.PI * depth)
                * (1 + 0.5 * d / (d + depth))
                * Math.log(depth / wallThickness + 1);
    }

    private static void requireSoil(double soilConductivity, double resistance) {
        Range.require("soil conductivity", soilConductivity, 0.1, 5, "W/(m K)");
        Range.require("resistance", resistance, 0.01, 50, "m2 K/W");
    }
}
