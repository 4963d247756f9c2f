package dev.thinair.loads;

import java.util.List;

/**
 * Generic building materials, each with its source. Where a handbook prints resistance for a
 * thickness and the conductivity with one digit only, the conductivity here is thickness over
 * resistance.
 *
 * <p>Products differ: take the maker's figures where they are known ({@link Material#of}).
 */
public final class Materials {

    /** Stucco or cement plaster. */
    public static final Material STUCCO =
            Material.ofSi(
                    "stucco",
                    0.72,
                    1856,
                    840,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, F07");

    /** Steel sheet. */
    public static final Material STEEL_SHEET =
            Material.ofSi(
                    "steel sheet",
                    45.28,
                    7824,
                    500,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, F08");

    /** Opaque spandrel glass. */
    public static final Material SPANDREL_GLASS =
            Material.ofSi(
                    "opaque spandrel glass",
                    0.99,
                    2528,
                    880,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, F09");

    /** Wood siding, lapped. */
    public static final Material WOOD_SIDING =
            Material.ofSi(
                    "wood siding",
                    0.090714,
                    592,
                    1170,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, F11 (R 0.14 for 12.7 mm)");

    /** Asphalt shingles. */
    public static final Material ASPHALT_SHINGLE =
            Material.ofSi(
                    "asphalt shingles",
                    0.04,
                    1120,
                    1260,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, F12 (R 0.08 for 3.2 mm)");

    /** Gypsum board. */
    public static final Material GYPSUM_BOARD =
            Material.ofSi(
                    "gypsum board",
                    0.16,
                    800,
                    1090,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, G01");

    /** Plywood. */
    public static final Material PLYWOOD =
            Material.ofSi(
                    "plywood",
                    0.113571,
                    544,
                    1210,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, G02 (R 0.14 for 15.9 mm)");

    /** Fibreboard sheathing. */
    public static final Material FIBREBOARD =
            Material.ofSi(
                    "fibreboard sheathing",
                    0.066842,
                    400,
                    1300,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, G03 (R 0.19 for 12.7 mm)");

    /** Wood boards, as of a roof deck. */
    public static final Material WOOD_DECK =
            Material.ofSi(
                    "wood deck",
                    0.15,
                    608,
                    1630,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, G05");

    /** Rigid insulation board. */
    public static final Material INSULATION_BOARD =
            Material.ofSi(
                    "insulation board",
                    0.028864,
                    43,
                    1210,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, I01 (R 0.88 for 25.4 mm)");

    /** Mineral fibre batt insulation. */
    public static final Material BATT =
            Material.ofSi(
                    "batt insulation",
                    0.046082,
                    19,
                    960,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, I04 (R 1.94 for 89.4 mm)");

    /** Fired clay brick. */
    public static final Material BRICK =
            Material.ofSi(
                    "brick",
                    0.89,
                    1920,
                    790,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, M01");

    /** Lightweight concrete block. */
    public static final Material LIGHT_BLOCK =
            Material.ofSi(
                    "lightweight concrete block",
                    0.53,
                    1280,
                    840,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, M13");

    /** Heavyweight concrete. */
    public static final Material CONCRETE =
            Material.ofSi(
                    "concrete",
                    1.95,
                    2240,
                    900,
                    "ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 18, heavyweight concrete");

    /** Softwood, as of studs, joists and rafters. */
    public static final Material SOFTWOOD =
            Material.ofSi("softwood", 0.13, 500, 1600, "ISO 10456:2007, from memory");

    /** Hardwood flooring. */
    public static final Material HARDWOOD =
            Material.ofSi("hardwood", 0.18, 700, 1600, "ISO 10456:2007, from memory");

    /** Oriented strand board. */
    public static final Material ORIENTED_STRAND_BOARD =
            Material.ofSi("oriented strand board", 0.13, 650, 1700, "ISO 10456:2007, from memory");

    /** Expanded polystyrene. */
    public static final Material EXPANDED_POLYSTYRENE =
            Material.ofSi(
                    "expanded polystyrene",
                    0.038,
                    20,
                    1450,
                    "ISO 10456:2007, from memory; usual product");

    /** Mineral render. */
    public static final Material RENDER =
            Material.ofSi("render", 1.0, 1800, 1000, "ISO 10456:2007, from memory");

    /** Loose-fill cellulose insulation. */
    public static final Material CELLULOSE =
            Material.ofSi(
                    "cellulose insulation",
                    0.042,
                    50,
                    1600,
                    "ISO 10456:2007, from memory; usual product");

    /** Sun-dried earth brick. */
    public static final Material ADOBE =
            Material.ofSi("adobe", 0.75, 1700, 900, "usual value, from memory");

    /** Dense sandstone. */
    public static final Material STONE =
            Material.ofSi("stone", 2.3, 2600, 1000, "ISO 10456:2007, from memory");

    /** Clay floor or roof tile. */
    public static final Material CLAY_TILE =
            Material.ofSi("clay tile", 1.0, 2000, 800, "ISO 10456:2007, from memory");

    /** Sand or gravel ground. */
    public static final Material SOIL =
            Material.ofSi(
                    "soil",
                    2.0,
                    1000,
                    2000,
                    "ISO 13370:2017, table of ground properties, from memory: 2.0 W/(m K), 2.0 MJ/(m3 K)");

    private static final List<Material> ALL =
            List.of(
                    STUCCO,
                    STEEL_SHEET,
                    SPANDREL_GLASS,
                    WOOD_SIDING,
                    ASPHALT_SHINGLE,
                    GYPSUM_BOARD,
                    PLYWOOD,
                    FIBREBOARD,
                    WOOD_DECK,
                    INSULATION_BOARD,
                    BATT,
                    BRICK,
                    LIGHT_BLOCK,
                    CONCRETE,
                    SOFTWOOD,
                    HARDWOOD,
                    ORIENTED_STRAND_BOARD,
                    EXPANDED_POLYSTYRENE,
                    RENDER,
                    CELLULOSE,
                    ADOBE,
                    STONE,
                    CLAY_TILE,
                    SOIL);

    private Materials() {}

    /**
     * All materials listed here.
     *
     * @return materials
     */
    public static List<Material> all() {
        return ALL;
    }
}
