package dev.thinair.loads;

import dev.thinair.units.Units;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * Generic assemblies, built of {@link Materials}. Those with a number are entries of ASHRAE
 * Handbook, Fundamentals 2021 SI, ch. 18, Tables 16 to 18 (layers only, films left out); the others
 * are common practice, no source. Immutable.
 */
public final class Assemblies {
    private Assemblies() {}

    private static Quantity<Length> mm(double value) {
        return Units.millimetres(value);
    }

    private static Layer r(String name, double value) {
        return Layer.ofResistance(name, Units.squareMetreKelvinsPerWatt(value));
    }

    /**
     * Wood frame wall with 89 mm batt, wood siding, between studs (Table 16, wall 11).
     *
     * @return the assembly
     */
    public static Assembly woodFrameWall() {
        return Assembly.outsideIn(
                "wood frame wall",
                Materials.WOOD_SIDING.layer(mm(12.7)),
                Materials.PLYWOOD.layer(mm(15.9)),
                Materials.BATT.layer(mm(89.4)),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Frame wall with stucco, fibreboard and 89 mm batt, between studs (Table 16, wall 13).
     *
     * @return the assembly
     */
    public static Assembly stuccoFrameWall() {
        return Assembly.outsideIn(
                "stucco frame wall",
                Materials.STUCCO.layer(mm(25.4)),
                Materials.FIBREBOARD.layer(mm(12.7)),
                Materials.BATT.layer(mm(89.4)),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Frame wall with brick veneer, air space, fibreboard and 89 mm batt, between studs (Table 16,
     * wall 23).
     *
     * @return the assembly
     */
    public static Assembly brickVeneerWall() {
        return Assembly.outsideIn(
                "brick veneer wall",
                Materials.BRICK.layer(mm(101.6)),
                r("air space", 0.15),
                Materials.FIBREBOARD.layer(mm(12.7)),
                Materials.BATT.layer(mm(89.4)),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Two leaves of brick, air space and 25 mm insulation board (Table 16, wall 33).
     *
     * @return the assembly
     */
    public static Assembly brickCavityWall() {
        return Assembly.outsideIn(
                "brick cavity wall",
                Materials.BRICK.layer(mm(101.6)),
                r("air space", 0.15),
                Materials.INSULATION_BOARD.layer(mm(25.4)),
                Materials.BRICK.layer(mm(101.6)));
    }

    /**
     * Lightweight block with 89 mm batt inside (Table 16, wall 58).
     *
     * @return the assembly
     */
    public static Assembly blockWall() {
        return Assembly.outsideIn(
                "insulated block wall",
                Materials.LIGHT_BLOCK.layer(mm(203.2)),
                Materials.BATT.layer(mm(89.4)),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Spandrel glass, insulation board, air spaces, gypsum (Table 16, wall 1).
     *
     * @return the assembly
     */
    public static Assembly spandrelWall() {
        return Assembly.outsideIn(
                "spandrel wall",
                Materials.SPANDREL_GLASS.layer(mm(6.4)),
                r("air space", 0.15),
                Materials.INSULATION_BOARD.layer(mm(50.8)),
                r("air space", 0.15),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Frame wall of 38 x 140 mm studs, 25 % framing, 140 mm batt, siding.
     *
     * @return the assembly
     */
    public static Assembly studWall140() {
        return FramedAssembly.named("stud wall 140 mm")
                .layer(Materials.WOOD_SIDING.layer(mm(12.7)))
                .layer(Materials.ORIENTED_STRAND_BOARD.layer(mm(11.1)))
                .bridged(Materials.BATT.layer(mm(140)), Materials.SOFTWOOD.layer(mm(140)))
                .layer(Materials.GYPSUM_BOARD.layer(mm(12.7)))
                .framing(Units.percent(25))
                .build();
    }

    /**
     * Frame wall of 38 x 89 mm studs, 25 % framing, 89 mm batt, siding.
     *
     * @return the assembly
     */
    public static Assembly studWall89() {
        return FramedAssembly.named("stud wall 89 mm")
                .layer(Materials.WOOD_SIDING.layer(mm(12.7)))
                .layer(Materials.ORIENTED_STRAND_BOARD.layer(mm(11.1)))
                .bridged(Materials.BATT.layer(mm(89)), Materials.SOFTWOOD.layer(mm(89)))
                .layer(Materials.GYPSUM_BOARD.layer(mm(12.7)))
                .framing(Units.percent(25))
                .build();
    }

    /**
     * Adobe of 400 mm, bare.
     *
     * @return the assembly
     */
    public static Assembly adobeWall() {
        return Assembly.outsideIn("adobe wall", Materials.ADOBE.layer(mm(400)));
    }

    /**
     * Stone of 500 mm with plaster.
     *
     * @return the assembly
     */
    public static Assembly stoneWall() {
        return Assembly.outsideIn(
                "stone wall", Materials.STONE.layer(mm(500)), Materials.STUCCO.layer(mm(15)));
    }

    /**
     * Concrete of 200 mm with 100 mm expanded polystyrene and render outside.
     *
     * @return the assembly
     */
    public static Assembly concreteWallInsulatedOutside() {
        return Assembly.outsideIn(
                "concrete wall, insulated outside",
                Materials.RENDER.layer(mm(5)),
                Materials.EXPANDED_POLYSTYRENE.layer(mm(100)),
                Materials.CONCRETE.layer(mm(200)));
    }

    /**
     * Asphalt shingles on plywood, as over a ventilated attic.
     *
     * @return the assembly
     */
    public static Assembly shingleRoof() {
        return Assembly.outsideIn(
                "shingle roof",
                Materials.ASPHALT_SHINGLE.layer(mm(6.4)),
                Materials.PLYWOOD.layer(mm(15.9)));
    }

    /**
     * Shingles, deck, air space, 154 mm batt, air space, gypsum (Table 17, roof 7).
     *
     * @return the assembly
     */
    public static Assembly cathedralRoof() {
        return Assembly.outsideIn(
                "cathedral roof",
                Materials.ASPHALT_SHINGLE.layer(mm(3.2)),
                Materials.WOOD_DECK.layer(mm(25.4)),
                r("air space", 0.18),
                Materials.BATT.layer(mm(154.4)),
                r("air space", 0.18),
                Materials.GYPSUM_BOARD.layer(mm(15.9)));
    }

    /**
     * Steel sheet, fibreboard, air space, 154 mm batt (Table 17, roof 5).
     *
     * @return the assembly
     */
    public static Assembly metalRoof() {
        return Assembly.outsideIn(
                "metal roof",
                Materials.STEEL_SHEET.layer(mm(0.8)),
                Materials.FIBREBOARD.layer(mm(12.7)),
                r("air space", 0.18),
                Materials.BATT.layer(mm(154.4)));
    }

    /**
     * Ceiling under an attic: 250 mm loose fill over and between 89 mm joists, gypsum.
     *
     * @return the assembly
     */
    public static Assembly atticCeiling() {
        return FramedAssembly.named("attic ceiling")
                .layer(Materials.CELLULOSE.layer(mm(161)))
                .bridged(Materials.CELLULOSE.layer(mm(89)), Materials.SOFTWOOD.layer(mm(89)))
                .layer(Materials.GYPSUM_BOARD.layer(mm(12.7)))
                .framing(Units.percent(9))
                .build();
    }

    /**
     * Partition of two gypsum boards and an air space.
     *
     * @return the assembly
     */
    public static Assembly partition() {
        return Assembly.outsideIn(
                "partition",
                Materials.GYPSUM_BOARD.layer(mm(12.7)),
                AirGap.of(mm(89), HeatFlow.HORIZONTAL),
                Materials.GYPSUM_BOARD.layer(mm(12.7)));
    }

    /**
     * Floor of carpet on plywood over joists, open below.
     *
     * @return the assembly
     */
    public static Assembly woodFloor() {
        return Assembly.outsideIn(
                "wood floor", Materials.PLYWOOD.layer(mm(19)), r("carpet and pad", 0.22));
    }

    /**
     * Floor of hardwood on plywood over 140 mm batt.
     *
     * @return the assembly
     */
    public static Assembly insulatedFloor() {
        return Assembly.outsideIn(
                "insulated floor",
                Materials.BATT.layer(mm(140)),
                Materials.PLYWOOD.layer(mm(19)),
                Materials.HARDWOOD.layer(mm(19)));
    }

    /**
     * Concrete slab of 100 mm with carpet, laid on the ground.
     *
     * @return the assembly
     */
    public static Assembly slab() {
        return Assembly.outsideIn(
                "slab, carpet", Materials.CONCRETE.layer(mm(101.6)), r("carpet and pad", 0.22));
    }

    /**
     * Concrete slab of 100 mm with tile, laid on the ground.
     *
     * @return the assembly
     */
    public static Assembly tiledSlab() {
        return Assembly.outsideIn(
                "slab, tile",
                Materials.CONCRETE.layer(mm(101.6)),
                Materials.CLAY_TILE.layer(mm(10)));
    }

    /**
     * Concrete basement wall of 200 mm with 50 mm insulation board inside.
     *
     * @return the assembly
     */
    public static Assembly basementWall() {
        return Assembly.outsideIn(
                "basement wall",
                Materials.CONCRETE.layer(mm(200)),
                Materials.INSULATION_BOARD.layer(mm(50)),
                Materials.GYPSUM_BOARD.layer(mm(12.7)));
    }

    /**
     * All assemblies listed here.
     *
     * @return assemblies
     */
    public static List<Assembly> all() {
        return List.of(
                woodFrameWall(),
                stuccoFrameWall(),
                brickVeneerWall(),
                brickCavityWall(),
                blockWall(),
                spandrelWall(),
                studWall140(),
                studWall89(),
                adobeWall(),
                stoneWall(),
                concreteWallInsulatedOutside(),
                shingleRoof(),
                cathedralRoof(),
                metalRoof(),
                atticCeiling(),
                partition(),
                woodFloor(),
                insulatedFloor(),
                slab(),
                tiledSlab(),
                basementWall());
    }
}
