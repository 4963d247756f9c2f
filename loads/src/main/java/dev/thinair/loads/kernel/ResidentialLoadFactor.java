package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * The quick residential method of the handbook: a load factor for each component, multiplied by its
 * area, summed. A regression over detailed runs of light frame houses, so it has limits: latitude
 * 20 to 60 degrees, light frame construction, moderate glass (below about 15 percent of the floor
 * on any one face), below 2,000 m unless the air factors are scaled, one zone that may swing a
 * little.
 *
 * <p><b>Exposure counts from north.</b> The print says the exposure angle is measured from south,
 * but its equations reproduce its own table and worked example only with 0 at north and 1 at south;
 * taken literally north and south windows would swap. Slab floors cool: their cooling factor is
 * negative.
 *
 * <p>Known misprints in the source, matched here to the method: one printing's irradiance table
 * sits one column off; the worked example uses 23 K where its stated temperatures give 23.5 K, and
 * 9.1 K where a table prints 9 K; it prints F_p and one U without decimal points.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 17; Barnaby, Spitler and Xiao,
 * ASHRAE Transactions 111(2) (2005).
 */
public final class ResidentialLoadFactor {

    private static final double DEGREE = Math.PI / 180;

    private ResidentialLoadFactor() {}

    /**
     * Normalized exposure of a surface: 0 facing north, 0.5 east or west, 1 south, linear in the
     * angle between.
     *
     * <p>South of the equator the sun's side is north, so the azimuth is mirrored there.
     *
     * @param azimuth rad from north, in [-100, 100]
     * @param latitude rad, sign tells the hemisphere
     * @return exposure f, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double exposure(double azimuth, double latitude) {
        Range.require("azimuth", azimuth, -100, 100, "rad");
        Range.require("latitude", latitude, -Math.PI / 2, Math.PI / 2, "rad");
        double fromNorth = Math.abs(Math.IEEEremainder(azimuth, 2 * Math.PI)) / Math.PI;
        return latitude < 0 ? 1 - fromNorth : fromNorth;
    }

    /**
     * Peak total irradiance on a vertical surface: <code>423.5 + 1240 f - 5143 f^3 + 3191 f^4 +
     * 35.25 f L + 0.1427 f L^2 - 12.89 L - 0.6172 L^2 + 0.7802 L^2/(f + 1)</code>, L in degrees.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Table 9.
     *
     * @param exposure f from north, in [0, 1]
     * @param latitude rad, its size in [20, 60] degrees
     * @return W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double peakTotal(double exposure, double latitude) {
        double f = exposure;
        Range.require("exposure", f, 0, 1, "-");
        double l = degrees(latitude);
        double l2 = l * l;
        return 423.5
                + 1_240 * f
                - 5_143 * f * f * f
                + 3_191 * f * f * f * f
                + 35.25 * f * l
                + 0.1427 * f * l2
                - 12.89 * l
                - 0.6172 * l2
                + 0.7802 * l2 / (f + 1);
    }

    /**
     * Peak diffuse irradiance on a vertical surface: <code>min(Et, 356.3 - 37.73 f^2 + 0.3022 f L -
     * 115.9 L^(1/4)/(f + 1))</code>.
     *
     * @param exposure f from north, in [0, 1]
     * @param latitude rad, its size in [20, 60] degrees
     * @return W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double peakDiffuse(double exposure, double latitude) {
        double f = exposure;
        double total = peakTotal(f, latitude);
        double l = degrees(latitude);
        double diffuse =
                356.3 - 37.73 * f * f + 0.3022 * f * l - 115.9 * Math.sqrt(Math.sqrt(l)) / (f + 1);
        return Math.min(total, diffuse);
    }

    /**
     * Peak total irradiance on a horizontal surface: <code>846.9 + 8.813 L - 0.166 L^2</code>, L in
     * degrees.
     *
     * <p>The 2021 formula could not be seen. This is the parabola through the two values of its
     * table that could (952 W/m2 at 35 degrees, 778 at 60; ch. 17, Table 10) with the curvature of
     * the 2009 edition's formula, <code>952 + 6.49 L - 0.166 L^2</code> (from memory). Between 35
     * and 60 degrees it is bound by the table; below it is an extrapolation.
     *
     * @param latitude rad, its size in [20, 60] degrees
     * @return W/m2
     * @throws IllegalArgumentException if latitude is NaN or outside its range
     */
    public static double peakHorizontalTotal(double latitude) {
        double l = degrees(latitude);
        return 846.895 + 8.813 * l - 0.166 * l * l;
    }

    /**
     * Peak diffuse irradiance on a horizontal surface: <code>min(Et, 170)</code> (2009 edition,
     * from memory).
     *
     * @param latitude rad, its size in [20, 60] degrees
     * @return W/m2
     * @throws IllegalArgumentException if latitude is NaN or outside its range
     */
    public static double peakHorizontalDiffuse(double latitude) {
        return Math.min(peakHorizontalTotal(latitude), 170);
    }

    /**
     * Share of a window shaded by its overhang: <code>(SLF Doh - Xoh)/h</code>, kept within [0, 1].
     *
     * @param shadeLineFactor SLF, at least 0
     * @param depth Doh, m, in [0, 50]
     * @param offset Xoh, from window top to overhang, m, in [0, 50]
     * @param height h of the window, m, above 0
     * @return Fshd
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double shadedFraction(
            double shadeLineFactor, double depth, double offset, double height) {
        Range.require("shade line factor", shadeLineFactor, 0, 100, "-");
        Range.require("overhang depth", depth, 0, 50, "m");
        Range.require("overhang offset", offset, 0, 50, "m");
        Range.requireAbove("window height", height, 0, "m");
        return Math.max(0, Math.min(1, (shadeLineFactor * depth - offset) / height));
    }

    /**
     * Peak irradiance behind exterior attachments and overhang: <code>PXI = Tx (Ed + (1 - Fshd)
     * ED)</code>.
     *
     * @param transmission Tx of an exterior screen, in [0, 1]; 1 for none
     * @param diffuse Ed, W/m2, in [0, 1500]
     * @param direct ED = Et - Ed, W/m2, in [0, 1500]
     * @param shadedFraction Fshd, in [0, 1]
     * @return PXI, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double peakExteriorIrradiance(
            double transmission, double diffuse, double direct, double shadedFraction) {
        Range.require("exterior transmission", transmission, 0, 1, "-");
        Range.require("diffuse irradiance", diffuse, 0, 1_500, "W/m2");
        Range.require("direct irradiance", direct, 0, 1_500, "W/m2");
        Range.require("shaded fraction", shadedFraction, 0, 1, "-");
        return transmission * (diffuse + (1 - shadedFraction) * direct);
    }

    /**
     * Cooling factor of a window: <code>U (dt - 0.46 DR) + PXI SHGC IAC FFs</code>.
     *
     * @param transmittance U, W/(m2 K), in [0, 20]
     * @param temperatureDifference dt outdoors less indoors, K, in [-50, 50]
     * @param dailyRange DR, K, in [0, 45]
     * @param irradiance PXI, W/m2, in [0, 1500]
     * @param shgc in [0, 1]
     * @param attenuation IAC, in [0, 1]
     * @param solarLoadFactor FFs, in [0, 1]
     * @return CF, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double windowCooling(
            double transmittance,
            double temperatureDifference,
            double dailyRange,
            double irradiance,
            double shgc,
            double attenuation,
            double solarLoadFactor) {
        requireConduction(transmittance, temperatureDifference, dailyRange);
        Range.require("peak irradiance", irradiance, 0, 1_500, "W/m2");
        Range.require("solar heat gain coefficient", shgc, 0, 1, "-");
        Range.require("interior attenuation", attenuation, 0, 1, "-");
        Range.require("fenestration solar load factor", solarLoadFactor, 0, 1, "-");
        return transmittance * (temperatureDifference - 0.46 * dailyRange)
                + irradiance * shgc * attenuation * solarLoadFactor;
    }

    /**
     * Cooling factor of an opaque part: <code>U (OFt dt + OFb + OFr DR)</code>.
     *
     * @param transmittance U, W/(m2 K), in [0, 20]
     * @param temperatureDifference dt outdoors less indoors, K, in [-50, 50]
     * @param dailyRange DR, K, in [0, 45]
     * @param part kind of part
     * @param roofAbsorptance solar absorptance of the roof, in [0, 1]; not used by other parts
     * @return CF, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double opaqueCooling(
            double transmittance,
            double temperatureDifference,
            double dailyRange,
            OpaquePart part,
            double roofAbsorptance) {
        requireConduction(transmittance, temperatureDifference, dailyRange);
        Range.require("roof absorptance", roofAbsorptance, 0, 1, "-");
        return transmittance
                * (part.factorOfDifference * temperatureDifference
                        + part.perAbsorptance * roofAbsorptance
                        + part.offset
                        + part.factorOfRange * dailyRange);
    }

    /** Opaque parts of the method with their factors OFt, OFb and OFr. */
    public enum OpaquePart {
        /** Ceiling or wall next to a vented attic: 0.62, 14.3 a - 4.5, -0.19. */
        CEILING_UNDER_ATTIC(0.62, 14.3, -4.5, -0.19),
        /** Ceiling that is the roof: 1, 38.3 a - 7.0, -0.36. */
        CEILING_ROOF(1, 38.3, -7.0, -0.36),
        /** Frame wall or door in the sun: 1, 8.2, -0.36. */
        SUNLIT_WALL_OR_DOOR(1, 0, 8.2, -0.36),
        /** Frame wall or door in the shade: 1, 0, -0.36. */
        SHADED_WALL_OR_DOOR(1, 0, 0, -0.36),
        /** Floor over outdoor air: 1, 0, -0.06. */
        FLOOR_OVER_AMBIENT(1, 0, 0, -0.06),
        /** Floor over a crawl space: 0.33, 0, -0.28. */
        FLOOR_OVER_CRAWL_SPACE(0.33, 0, 0, -0.28);

        private final double factorOfDifference;
        private final double perAbsorptance;
        private final double offset;
        private final double factorOfRange;

        OpaquePart(
                double factorOfDifference,
                double perAbsorptance,
                double offset,
                double factorOfRange) {
            this.factorOfDifference = factorOfDifference;
            this.perAbsorptance = perAbsorptance;
            this.offset = offset;
            this.factorOfRange = factorOfRange;
        }
    }

    /**
     * Cooling factor of a slab floor: <code>1.9 - 1.4/(Rcvr + 0.12)</code>, mostly <b>negative</b>:
     * the ground cools.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (23).
     *
     * @param coverResistance Rcvr of the floor cover, m2 K/W, in [0, 10]
     * @return CF, W/m2
     * @throws IllegalArgumentException if the resistance is NaN or outside its range
     */
    public static double slabCooling(double coverResistance) {
        Range.require("resistance of the floor cover", coverResistance, 0, 10, "m2 K/W");
        return 1.9 - 1.4 / (coverResistance + 0.12);
    }

    /** Direction a window faces, for the tables of the method. */
    public enum Facing {
        /** North. */
        NORTH,
        /** North-east. */
        NORTH_EAST,
        /** East. */
        EAST,
        /** South-east. */
        SOUTH_EAST,
        /** South. */
        SOUTH,
        /** South-west. */
        SOUTH_WEST,
        /** West. */
        WEST,
        /** North-west. */
        NORTH_WEST,
        /** Up, a skylight. */
        HORIZONTAL;

        /**
         * The nearest of the eight directions; south of the equator mirrored about east-west, so
         * that the sun's side is the table's south.
         *
         * @param azimuth rad from north, in [-100, 100]
         * @param latitude rad
         * @return a direction
         */
        public static Facing nearest(double azimuth, double latitude) {
            Range.require("azimuth", azimuth, -100, 100, "rad");
            double seen = latitude < 0 ? Math.PI - azimuth : azimuth;
            int eighth = (int) Math.floorMod(Math.round(seen / (Math.PI / 4)), 8L);
            return values()[eighth];
        }
    }

    // Fundamentals 2021 (SI), ch. 17, table of fenestration solar load factors: detached houses;
    // the attached column is from memory.
    private static final double[] DETACHED = {.44, .21, .31, .37, .47, .58, .56, .46, .58};
    private static final double[] ATTACHED = {.27, .43, .56, .54, .53, .61, .65, .57, .73};

    /**
     * Fenestration solar load factor FFs.
     *
     * @param facing direction
     * @param detached true for a detached house, false for an attached one
     * @return FFs
     */
    public static double solarLoadFactor(Facing facing, boolean detached) {
        return (detached ? DETACHED : ATTACHED)[facing.ordinal()];
    }

    // Fundamentals, ch. 17, table of shade line factors, latitudes 20 to 60 by 5 (from memory; the
    // east-west entry at 35 degrees is confirmed by the worked example).
    private static final double[][] SHADE_LINE = {
        {2.8, 2.1, 1.4, 1.5, 1.7, 1.0, 0.8, 0.9, 0.8},
        {1.4, 1.5, 1.6, 1.2, 1.3, 1.3, 0.9, 0.9, 0.8},
        {1.2, 1.2, 1.1, 1.1, 1.1, 1.0, 1.0, 0.9, 0.8},
        {2.1, 1.8, 2.0, 1.7, 1.5, 1.6, 1.4, 1.2, 1.1},
        {20.0, 14.0, 6.9, 4.7, 3.3, 2.7, 2.1, 1.7, 1.4},
    };

    /**
     * Shade line factor SLF, linear in latitude between the table's columns: the shadow's length
     * below an overhang over its depth, at the window's peak.
     *
     * @param facing direction; not for skylights
     * @param latitude rad, its size in [20, 60] degrees
     * @return SLF
     * @throws IllegalArgumentException if latitude is NaN or outside its range, or for a skylight
     */
    public static double shadeLineFactor(Facing facing, double latitude) {
        double l = degrees(latitude);
        int row =
                switch (facing) {
                    case NORTH -> 0;
                    case NORTH_EAST, NORTH_WEST -> 1;
                    case EAST, WEST -> 2;
                    case SOUTH_EAST, SOUTH_WEST -> 3;
                    case SOUTH -> 4;
                    case HORIZONTAL ->
                            throw new IllegalArgumentException(
                                    "shade line factor of a skylight does not exist: it has no"
                                            + " overhang");
                };
        double place = Math.max(0, (l - 20) / 5);
        int column = Math.min(7, (int) place);
        double share = place - column;
        return SHADE_LINE[row][column] * (1 - share) + SHADE_LINE[row][column + 1] * share;
    }

    /**
     * Infiltration driving force: <code>IDF = (I0 + H |dt| (I1 + I2 Aflue/AL))/1000</code>, there
     * in L/(s cm2), here in m/s (times 10): flow over leakage area.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (10), at winds of 6.7 m/s for heating and 3.4
     * m/s for cooling.
     *
     * @param heating true for heating (I 51, 0.35, 0.23), false for cooling (25, 0.38, 0.12)
     * @param height mean stack height, m, in [0, 30]
     * @param temperatureDifference dt, K, in [-100, 100]; its size counts
     * @param flueShare Aflue/AL, in [0, 1]
     * @return m3/s of air per m2 of leakage area
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double infiltrationDrivingForce(
            boolean heating, double height, double temperatureDifference, double flueShare) {
        Range.require("stack height", height, 0, 30, "m");
        Range.require("temperature difference", temperatureDifference, -100, 100, "K");
        Range.require("flue area over leakage area", flueShare, 0, 1, "-");
        double i0 = heating ? 51 : 25;
        double i1 = heating ? 0.35 : 0.38;
        double i2 = heating ? 0.23 : 0.12;
        return (i0 + height * Math.abs(temperatureDifference) * (i1 + i2 * flueShare)) / 100;
    }

    /**
     * Leakage area from the exposed surface: <code>AL = Aes Aul</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (7): unit leakage 0.7 (tight), 1.4 (good), 2.8
     * (average), 5.6 (leaky), 10.4 (very leaky) cm2/m2.
     *
     * @param exposedSurface Aes, m2, in [0, 10000]
     * @param unitLeakage Aul, m2/m2 (1.4 cm2/m2 is 1.4e-4), in [0, 0.01]
     * @return AL, m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double leakageArea(double exposedSurface, double unitLeakage) {
        Range.require("exposed surface", exposedSurface, 0, 10_000, "m2");
        Range.require("unit leakage", unitLeakage, 0, 0.01, "m2/m2");
        return exposedSurface * unitLeakage;
    }

    /**
     * Sensible internal gain: <code>136 + 2.2 A + 22 N</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (30).
     *
     * @param floorArea A, m2, in [0, 10000]
     * @param occupants N, in [0, 1000]
     * @return W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double internalSensible(double floorArea, double occupants) {
        requireGain(floorArea, occupants);
        return 136 + 2.2 * floorArea + 22 * occupants;
    }

    /**
     * Latent internal gain: <code>20 + 0.22 A + 12 N</code>.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 17, Eq. (31).
     *
     * @param floorArea A, m2, in [0, 10000]
     * @param occupants N, in [0, 1000]
     * @return W
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double internalLatent(double floorArea, double occupants) {
        requireGain(floorArea, occupants);
        return 20 + 0.22 * floorArea + 12 * occupants;
    }

    /**
     * Load of house and ducts together: <code>(1 + Fdl) load</code>.
     *
     * @param load W
     * @param ductLossFactor Fdl, in [0, 5]
     * @return W
     * @throws IllegalArgumentException if the factor is NaN or outside its range
     */
    public static double withDucts(double load, double ductLossFactor) {
        Range.require("distribution loss factor", ductLossFactor, 0, 5, "-");
        return load * (1 + ductLossFactor);
    }

    private static double degrees(double latitude) {
        double l = Math.abs(latitude) / DEGREE;
        Range.require(
                "latitude (size) for residential load factors", l, 20 - 1e-9, 60 + 1e-9, "deg");
        return l;
    }

    private static void requireConduction(
            double transmittance, double temperatureDifference, double dailyRange) {
        Range.require("U-factor", transmittance, 0, 20, "W/(m2 K)");
        Range.require("temperature difference", temperatureDifference, -50, 50, "K");
        Range.require("daily range", dailyRange, 0, 45, "K");
    }

    private static void requireGain(double floorArea, double occupants) {
        Range.require("floor area", floorArea, 0, 10_000, "m2");
        Range.require("occupants", occupants, 0, 1_000, "-");
    }
}
