package dev.thinair.loads;

import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.ThermalConductivity;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * How a floor or wall meets the ground. Each case gives a conductance between the room and a
 * temperature outside, by the handbook's residential practice or by ISO 13370. Immutable.
 */
public sealed interface Ground {

    /** Inside film of a floor, heat flowing down: 0.17 m2 K/W (ISO 6946). */
    double FLOOR_FILM = 0.17;

    /** Inside film of a wall: 0.13 m2 K/W (ISO 6946). */
    double WALL_FILM = 0.13;

    /** Outside film: 0.04 m2 K/W (ISO 6946). */
    double OUTSIDE_FILM = 0.04;

    /**
     * Conductance between the room air and the boundary temperature.
     *
     * @param area of the floor or wall, m2
     * @param constructionResistance of its layers, surface to surface, m2 K/W
     * @return W/K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    double conductance(double area, double constructionResistance);

    /**
     * Boundary temperature of a winter design.
     *
     * @param outdoorDesign outdoor design dry bulb, K
     * @param deepGround undisturbed ground, K
     * @return K
     */
    double boundaryTemperature(double outdoorDesign, double deepGround);

    /**
     * Boundary temperature over a series of hours.
     *
     * @param hours weather
     * @return K
     * @throws IllegalStateException if it needs a ground temperature and the site has none
     */
    double boundaryTemperature(OutdoorHours hours);

    /**
     * Slab on grade by its edge: <code>q = Fp P (ti - to)</code>; the area and the construction do
     * not matter, the factor holds them.
     *
     * @param edgeFactor Fp, W/(m K), in [0, 10] (Fundamentals 2021, ch. 18, Table 24)
     * @param perimeter exposed, m, in [0, 10000]
     */
    record SlabEdge(double edgeFactor, double perimeter) implements Ground {

        /**
         * Checks the values.
         *
         * @param edgeFactor Fp, W/(m K), in [0, 10] (Fundamentals 2021, ch. 18, Table 24)
         * @param perimeter exposed, m, in [0, 10000]
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public SlabEdge {
            Range.require("edge factor", edgeFactor, 0, 10, "W/(m K)");
            Range.require("exposed perimeter", perimeter, 0, 10_000, "m");
        }

        @Override
        public double conductance(double area, double constructionResistance) {
            return GroundContact.slabEdgeLoss(edgeFactor, perimeter, 1);
        }

        @Override
        public double boundaryTemperature(double outdoorDesign, double deepGround) {
            return outdoorDesign;
        }

        @Override
        public double boundaryTemperature(OutdoorHours hours) {
            return hours.meanDryBulb();
        }
    }

    /**
     * Slab on ground by ISO 13370, against the undisturbed ground (the annual mean outdoors).
     *
     * @param perimeter exposed, m, above 0
     * @param wallThickness full thickness of the outer walls, m, in [0, 2]
     * @param soilConductivity W/(m K), in [0.1, 5]
     */
    record SlabOnGround(double perimeter, double wallThickness, double soilConductivity)
            implements Ground {

        /**
         * Checks the values.
         *
         * @param perimeter exposed, m, above 0
         * @param wallThickness full thickness of the outer walls, m, in [0, 2]
         * @param soilConductivity W/(m K), in [0.1, 5]
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public SlabOnGround {
            Range.requireAbove("exposed perimeter", perimeter, 0, "m");
            Range.require("wall thickness", wallThickness, 0, 2, "m");
            Range.require("soil conductivity", soilConductivity, 0.1, 5, "W/(m K)");
        }

        @Override
        public double conductance(double area, double constructionResistance) {
            double thickness =
                    GroundContact.equivalentThickness(
                            wallThickness,
                            soilConductivity,
                            FLOOR_FILM + constructionResistance + OUTSIDE_FILM);
            return area
                    * GroundContact.isoFloorTransmittance(
                            GroundContact.characteristicDimension(area, perimeter),
                            thickness,
                            0,
                            soilConductivity);
        }

        @Override
        public double boundaryTemperature(double outdoorDesign, double deepGround) {
            return deepGround;
        }

        @Override
        public double boundaryTemperature(OutdoorHours hours) {
            return hours.groundTemperature();
        }
    }

    /**
     * Below-grade wall by the handbook, between two depths.
     *
     * @param upperDepth m, in [0, 20]
     * @param lowerDepth m, in (upperDepth, 20]
     * @param soilConductivity W/(m K), in [0.1, 5]
     * @param groundAmplitude amplitude of the ground surface temperature over the year, K, in [0,
     *     40], taken off the ground temperature in a winter design
     */
    record BasementWall(
            double upperDepth, double lowerDepth, double soilConductivity, double groundAmplitude)
            implements Ground {

        /**
         * Checks the values.
         *
         * @param upperDepth m, in [0, 20]
         * @param lowerDepth m, in (upperDepth, 20]
         * @param soilConductivity W/(m K), in [0.1, 5]
         * @param groundAmplitude amplitude of the ground surface temperature over the year, K, in
         *     [0, 40], taken off the ground temperature in a winter design
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public BasementWall {
            Range.require("ground amplitude", groundAmplitude, 0, 40, "K");
            GroundContact.wallTransmittance(upperDepth, lowerDepth, soilConductivity, 1);
        }

        @Override
        public double conductance(double area, double constructionResistance) {
            Range.require("area", area, 0, 1e6, "m2");
            return area
                    * GroundContact.wallTransmittance(
                            upperDepth,
                            lowerDepth,
                            soilConductivity,
                            WALL_FILM + constructionResistance);
        }

        @Override
        public double boundaryTemperature(double outdoorDesign, double deepGround) {
            return deepGround - groundAmplitude;
        }

        @Override
        public double boundaryTemperature(OutdoorHours hours) {
            return hours.groundTemperature();
        }
    }

    /**
     * Basement floor by the handbook.
     *
     * @param width shorter side, m, in [0.5, 100]
     * @param depth below grade, m, in [0, 20]
     * @param soilConductivity W/(m K), in [0.1, 5]
     * @param groundAmplitude amplitude of the ground surface temperature over the year, K, in [0,
     *     40], taken off the ground temperature in a winter design
     */
    record BasementFloor(
            double width, double depth, double soilConductivity, double groundAmplitude)
            implements Ground {

        /**
         * Checks the values.
         *
         * @param width shorter side, m, in [0.5, 100]
         * @param depth below grade, m, in [0, 20]
         * @param soilConductivity W/(m K), in [0.1, 5]
         * @param groundAmplitude amplitude of the ground surface temperature over the year, K, in
         *     [0, 40], taken off the ground temperature in a winter design
         * @throws IllegalArgumentException if a value is NaN or outside its range
         */
        public BasementFloor {
            Range.require("ground amplitude", groundAmplitude, 0, 40, "K");
            GroundContact.floorTransmittance(width, depth, soilConductivity, 1);
        }

        @Override
        public double conductance(double area, double constructionResistance) {
            Range.require("area", area, 0, 1e6, "m2");
            return area
                    * GroundContact.floorTransmittance(
                            width, depth, soilConductivity, FLOOR_FILM + constructionResistance);
        }

        @Override
        public double boundaryTemperature(double outdoorDesign, double deepGround) {
            return deepGround - groundAmplitude;
        }

        @Override
        public double boundaryTemperature(OutdoorHours hours) {
            return hours.groundTemperature();
        }
    }

    /**
     * Slab on grade by its edge factor.
     *
     * @param edgeFactor Fp, in [0, 10] W/(m K)
     * @param perimeter exposed
     * @return the slab
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static SlabEdge slabEdge(Quantity<ThermalConductivity> edgeFactor, Quantity<Length> perimeter) {
        return new SlabEdge(
                Si.wattsPerMetreKelvin(edgeFactor, "edge factor"),
                Si.metres(perimeter, "exposed perimeter"));
    }

    /**
     * Slab on ground by ISO 13370.
     *
     * @param perimeter exposed
     * @param wallThickness full thickness of the outer walls
     * @param soilConductivity of the ground: clay 1.5, sand 2.0 W/(m K) (ISO 13370)
     * @return the slab
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static SlabOnGround slabOnGround(
            Quantity<Length> perimeter,
            Quantity<Length> wallThickness,
            Quantity<ThermalConductivity> soilConductivity) {
        return new SlabOnGround(
                Si.metres(perimeter, "exposed perimeter"),
                Si.metres(wallThickness, "wall thickness"),
                Si.wattsPerMetreKelvin(soilConductivity, "soil conductivity"));
    }

    /**
     * Below-grade wall from grade to a depth.
     *
     * @param depth of its lower end
     * @param soilConductivity of the ground; the handbook's tables use 1.4 W/(m K)
     * @param groundAmplitude amplitude of the ground surface temperature over the year
     * @return the wall
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static BasementWall basementWall(
            Quantity<Length> depth,
            Quantity<ThermalConductivity> soilConductivity,
            Quantity<TemperatureDifference> groundAmplitude) {
        return new BasementWall(
                0,
                Si.metres(depth, "depth"),
                Si.wattsPerMetreKelvin(soilConductivity, "soil conductivity"),
                Si.kelvinDifference(groundAmplitude, "ground amplitude"));
    }

    /**
     * Basement floor.
     *
     * @param width shorter side
     * @param depth below grade
     * @param soilConductivity of the ground; the handbook's tables use 1.4 W/(m K)
     * @param groundAmplitude amplitude of the ground surface temperature over the year
     * @return the floor
     * @throws IllegalArgumentException if a value is not finite or outside its range
     */
    static BasementFloor basementFloor(
            Quantity<Length> width,
            Quantity<Length> depth,
            Quantity<ThermalConductivity> soilConductivity,
            Quantity<TemperatureDifference> groundAmplitude) {
        return new BasementFloor(
                Si.metres(width, "width"),
                Si.metres(depth, "depth"),
                Si.wattsPerMetreKelvin(soilConductivity, "soil conductivity"),
                Si.kelvinDifference(groundAmplitude, "ground amplitude"));
    }
}
