package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * Irradiance under a cloudless sky.
 *
 * <p>The handbook's model of two optical depths: <code>Eb = Eo exp(-tb m^ab)</code> on a plane
 * facing the sun and <code>Ed = Eo exp(-td m^ad)</code> on the <b>horizontal</b>, with the relative
 * air mass m of Kasten and Young. The published optical depths of a place already hold its
 * elevation, so m is <b>not</b> corrected for pressure. Exponents and depths belong to one edition
 * of the handbook: {@link Edition} names it, and depths of one edition must not be used with
 * exponents of another.
 *
 * <p>For places without published depths the correlation of Hottel (1976) gives the trend with
 * elevation, below 2.5 km; its haze assumptions are those of the 1970s.
 *
 * <p>All functions are zero when the sun is at or below the horizon.
 */
public final class ClearSky {

    private static final double DEGREE = Math.PI / 180;

    private ClearSky() {}

    /** Edition of the handbook to which optical depths and air-mass exponents belong. */
    public enum Edition {
        /**
         * Fundamentals 2009: <code>ab = 1.219 - 0.043 tb - 0.151 td - 0.204 tb td</code>, <code>ad
         * = 0.202 + 0.852 tb - 0.007 td - 0.357 tb td</code> (coefficients from memory).
         */
        FUNDAMENTALS_2009(1.219, -0.043, -0.151, -0.204, 0.202, 0.852, -0.007, -0.357),
        /**
         * Fundamentals 2013, 2017 and 2021: <code>ab = 1.454 - 0.406 tb - 0.268 td + 0.021 tb
         * td</code>, <code>ad = 0.507 + 0.205 tb - 0.080 td - 0.190 tb td</code> (2021 SI, ch. 14,
         * Eq. (19) and (20)).
         */
        FUNDAMENTALS_2013_TO_2021(1.454, -0.406, -0.268, 0.021, 0.507, 0.205, -0.080, -0.190);

        private final double b0;
        private final double b1;
        private final double b2;
        private final double b3;
        private final double d0;
        private final double d1;
        private final double d2;
        private final double d3;

        Edition(
                double b0,
                double b1,
                double b2,
                double b3,
                double d0,
                double d1,
                double d2,
                double d3) {
            this.b0 = b0;
            this.b1 = b1;
            this.b2 = b2;
            this.b3 = b3;
            this.d0 = d0;
            this.d1 = d1;
            this.d2 = d2;
            this.d3 = d3;
        }

        /**
         * Air-mass exponent of the beam.
         *
         * @param taub beam optical depth, in [0, 3]
         * @param taud diffuse optical depth, in [0, 6]
         * @return ab
         * @throws IllegalArgumentException if an argument is NaN or outside its range
         */
        public double beamExponent(double taub, double taud) {
            requireDepths(taub, taud);
            return b0 + b1 * taub + b2 * taud + b3 * taub * taud;
        }

        /**
         * Air-mass exponent of the diffuse part.
         *
         * @param taub beam optical depth, in [0, 3]
         * @param taud diffuse optical depth, in [0, 6]
         * @return ad
         * @throws IllegalArgumentException if an argument is NaN or outside its range
         */
        public double diffuseExponent(double taub, double taud) {
            requireDepths(taub, taud);
            return d0 + d1 * taub + d2 * taud + d3 * taub * taud;
        }
    }

    /** Climate of Hottel's correlation, with its three correction factors. */
    public enum HottelClimate {
        /** Tropical: r0 0.95, r1 0.98, rk 1.02. */
        TROPICAL(0.95, 0.98, 1.02),
        /** Midlatitude summer: r0 0.97, r1 0.99, rk 1.02. */
        MIDLATITUDE_SUMMER(0.97, 0.99, 1.02),
        /** Subarctic summer: r0 0.99, r1 0.99, rk 1.01. */
        SUBARCTIC_SUMMER(0.99, 0.99, 1.01),
        /** Midlatitude winter: r0 1.03, r1 1.01, rk 1.00. */
        MIDLATITUDE_WINTER(1.03, 1.01, 1.00);

        private final double r0;
        private final double r1;
        private final double rk;

        HottelClimate(double r0, double r1, double rk) {
            this.r0 = r0;
            this.r1 = r1;
            this.rk = rk;
        }
    }

    /**
     * Relative optical air mass: <code>m = 1/(sin b + 0.50572 (6.07995 + b)^-1.6364)</code> with b
     * in degrees.
     *
     * <p>Source: Kasten and Young, Applied Optics 28 (1989) 4735; Fundamentals 2021 (SI), ch. 14,
     * Eq. (16).
     *
     * @param altitude solar altitude b, rad, in (0, pi/2] (a horizon sun gives about 38)
     * @return m, dimensionless
     * @throws IllegalArgumentException if altitude is NaN or outside [0, pi/2]
     */
    public static double airMass(double altitude) {
        Range.require("solar altitude", altitude, 0, Math.PI / 2, "rad");
        double degrees = altitude / DEGREE;
        return 1 / (Math.sin(altitude) + 0.50572 * Math.pow(6.07995 + degrees, -1.6364));
    }

    /**
     * Air mass scaled by the station pressure, <code>m p/101325</code>: for models that ask for it.
     * <b>Never</b> use it with the handbook's optical depths, which hold the elevation already.
     *
     * @param altitude solar altitude, rad, in [0, pi/2]
     * @param pressure station pressure, Pa, in [30000, 110000]
     * @return pressure-corrected air mass, dimensionless
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double pressureCorrectedAirMass(double altitude, double pressure) {
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        return airMass(altitude) * pressure / 101_325;
    }

    /**
     * Beam irradiance on a plane facing the sun, <code>Eo exp(-tb m^ab)</code>; zero at or below
     * the horizon.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (17).
     *
     * @param edition edition of the optical depths
     * @param extraterrestrial Eo, W/m2, in [0, 1500]
     * @param altitude solar altitude, rad, in [-pi/2, pi/2]
     * @param taub beam optical depth, in [0, 3]
     * @param taud diffuse optical depth, in [0, 6]
     * @return Eb, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double beamNormal(
            Edition edition, double extraterrestrial, double altitude, double taub, double taud) {
        requireSun(extraterrestrial, altitude);
        double exponent = edition.beamExponent(taub, taud);
        if (altitude <= 0) {
            return 0;
        }
        return extraterrestrial * Math.exp(-taub * Math.pow(airMass(altitude), exponent));
    }

    /**
     * Diffuse irradiance on the horizontal, <code>Eo exp(-td m^ad)</code>; zero at or below the
     * horizon.
     *
     * <p>Source: Fundamentals 2021 (SI), ch. 14, Eq. (18).
     *
     * @param edition edition of the optical depths
     * @param extraterrestrial Eo, W/m2, in [0, 1500]
     * @param altitude solar altitude, rad, in [-pi/2, pi/2]
     * @param taub beam optical depth, in [0, 3]
     * @param taud diffuse optical depth, in [0, 6]
     * @return Ed, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double diffuseHorizontal(
            Edition edition, double extraterrestrial, double altitude, double taub, double taud) {
        requireSun(extraterrestrial, altitude);
        double exponent = edition.diffuseExponent(taub, taud);
        if (altitude <= 0) {
            return 0;
        }
        return extraterrestrial * Math.exp(-taud * Math.pow(airMass(altitude), exponent));
    }

    /**
     * Beam transmittance of the clear atmosphere at an elevation: <code>r0 a0 + r1 a1 exp(-rk k/sin
     * b)</code> with <code>a0 = 0.4237 - 0.00821 (6 - A)^2</code>, <code>a1 = 0.5055 + 0.00595 (6.5
     * - A)^2</code>, <code>k = 0.2711 + 0.01858 (2.5 - A)^2</code>, A in km, 23 km visibility; zero
     * at or below the horizon.
     *
     * <p>Source: Hottel, Solar Energy 18 (1976) 129 (coefficients from memory, checked against the
     * example in Duffie and Beckman, Solar Engineering of Thermal Processes, 2.8.1).
     *
     * @param climate climate class
     * @param elevation m, in [-100, 2500]
     * @param altitude solar altitude b, rad, in [-pi/2, pi/2]
     * @return transmittance, in [0, 1]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double hottelTransmittance(
            HottelClimate climate, double elevation, double altitude) {
        Range.require("elevation for the correlation of Hottel", elevation, -100, 2_500, "m");
        Range.require("solar altitude", altitude, -Math.PI / 2, Math.PI / 2, "rad");
        if (altitude <= 0) {
            return 0;
        }
        double a = elevation / 1_000;
        double a0 = climate.r0 * (0.4237 - 0.00821 * (6 - a) * (6 - a));
        double a1 = climate.r1 * (0.5055 + 0.00595 * (6.5 - a) * (6.5 - a));
        double k = climate.rk * (0.2711 + 0.01858 * (2.5 - a) * (2.5 - a));
        return a0 + a1 * Math.exp(-k / Math.sin(altitude));
    }

    /**
     * Diffuse horizontal irradiance that goes with a beam transmittance: <code>Eo sin b (0.271 -
     * 0.294 tau)</code>; zero at or below the horizon.
     *
     * <p>Source: Liu and Jordan, Solar Energy 4(3) (1960) 1, as used with Hottel's correlation in
     * Duffie and Beckman, 2.8 (from memory).
     *
     * @param extraterrestrial Eo, W/m2, in [0, 1500]
     * @param altitude solar altitude b, rad, in [-pi/2, pi/2]
     * @param transmittance beam transmittance tau, in [0, 0.92]
     * @return diffuse irradiance on the horizontal, W/m2
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double liuJordanDiffuse(
            double extraterrestrial, double altitude, double transmittance) {
        requireSun(extraterrestrial, altitude);
        Range.require("beam transmittance", transmittance, 0, 0.92, "-");
        if (altitude <= 0) {
            return 0;
        }
        return extraterrestrial * Math.sin(altitude) * (0.271 - 0.294 * transmittance);
    }

    private static void requireSun(double extraterrestrial, double altitude) {
        Range.require("extraterrestrial irradiance", extraterrestrial, 0, 1_500, "W/m2");
        Range.require("solar altitude", altitude, -Math.PI / 2, Math.PI / 2, "rad");
    }

    private static void requireDepths(double taub, double taud) {
        Range.require("beam optical depth", taub, 0, 3, "-");
        Range.require("diffuse optical depth", taud, 0, 6, "-");
    }
}
