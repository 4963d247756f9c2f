package dev.thinair.cycling.kernel;

/**
 * Tables of the seasonal rating procedures: temperature bins with their fractional hours, and the
 * defaults that go with an edition.
 *
 * <p><b>From memory.</b> None of these tables was checked against the text of the standards; their
 * sums were. Every rating function takes the table as an argument, so that a user can supply the
 * table of the edition at hand.
 *
 * <p>Temperatures are bin representatives in &deg;F, as the standards print them. Immutable.
 */
public final class RatingBins {

    private static final double FAHRENHEIT_ZERO = 459.67;

    /**
     * The eight cooling bins, 67 to 102 &deg;F. AHRI 210/240 and 10 CFR 430 subpart B appendices M
     * and M1; from memory.
     */
    public static final RatingBins COOLING =
            new RatingBins(
                    "cooling, AHRI 210/240 and 10 CFR 430 app. M/M1 (from memory)",
                    new double[] {67, 72, 77, 82, 87, 92, 97, 102},
                    new double[] {0.214, 0.231, 0.216, 0.161, 0.104, 0.052, 0.018, 0.004});

    /**
     * Heating bins of climate region IV, 62 down to -8 &deg;F. 10 CFR 430 subpart B appendix M;
     * from memory.
     */
    public static final RatingBins HEATING_REGION_IV =
            new RatingBins(
                    "heating region IV, 10 CFR 430 app. M (from memory)",
                    new double[] {62, 57, 52, 47, 42, 37, 32, 27, 22, 17, 12, 7, 2, -3, -8},
                    new double[] {
                        0.132, 0.111, 0.103, 0.093, 0.100, 0.109, 0.126, 0.087, 0.055, 0.036, 0.026,
                        0.013, 0.006, 0.002, 0.001
                    });

    /**
     * Heating bins of climate region IV in appendix M1: as appendix M without the bins of 62 and 57
     * &deg;F, so that the fractions add up to 0.757; from memory.
     */
    public static final RatingBins HEATING_REGION_IV_M1 =
            new RatingBins(
                    "heating region IV, 10 CFR 430 app. M1 (from memory)",
                    new double[] {52, 47, 42, 37, 32, 27, 22, 17, 12, 7, 2, -3, -8},
                    new double[] {
                        0.103, 0.093, 0.100, 0.109, 0.126, 0.087, 0.055, 0.036, 0.026, 0.013, 0.006,
                        0.002, 0.001
                    });

    /** Default cooling degradation coefficient of the AHRI 210/240-2008 generation; from memory. */
    public static final double DEFAULT_COOLING_DEGRADATION_2008 = 0.25;

    /**
     * Default cooling degradation coefficient, single-speed and two-capacity units, appendix M1 and
     * AHRI 210/240-2023; from memory.
     */
    public static final double DEFAULT_COOLING_DEGRADATION_M1 = 0.20;

    /** Default heating degradation coefficient of all generations; from memory. */
    public static final double DEFAULT_HEATING_DEGRADATION = 0.25;

    /** Sizing factor of the cooling load line; from memory. */
    public static final double COOLING_SIZE_FACTOR = 1.1;

    private final String name;
    private final double[] kelvins;
    private final double[] fractions;

    private RatingBins(String name, double[] fahrenheit, double[] fractions) {
        this.name = name;
        this.kelvins = new double[fahrenheit.length];
        for (int i = 0; i < fahrenheit.length; i++) {
            kelvins[i] = (fahrenheit[i] + FAHRENHEIT_ZERO) / 1.8;
        }
        this.fractions = fractions.clone();
    }

    /**
     * A table of the user's own.
     *
     * @param name what the table is and where it comes from
     * @param fahrenheit bin temperatures, &deg;F, in [-60, 130]
     * @param fractions fractional hours, in [0, 1]; their sum must not exceed 1
     * @return the table
     * @throws IllegalArgumentException if the name is missing, the table empty, the lengths differ,
     *     or a number is out of range
     */
    public static RatingBins of(String name, double[] fahrenheit, double[] fractions) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("bin table name is missing");
        }
        if (fahrenheit.length == 0 || fahrenheit.length != fractions.length) {
            throw new IllegalArgumentException(
                    "bin table has "
                            + fahrenheit.length
                            + " temperatures and "
                            + fractions.length
                            + " fractions, but must have as many of both and at least one");
        }
        double sum = 0;
        for (int i = 0; i < fahrenheit.length; i++) {
            if (!(fahrenheit[i] >= -60 && fahrenheit[i] <= 130)) {
                throw new IllegalArgumentException(
                        "bin temperature is "
                                + fahrenheit[i]
                                + " degF, but must lie in [-60.0, 130.0] degF");
            }
            if (!(fractions[i] >= 0 && fractions[i] <= 1)) {
                throw new IllegalArgumentException(
                        "fractional hours of bin "
                                + fahrenheit[i]
                                + " degF are "
                                + fractions[i]
                                + ", but must lie in [0.0, 1.0]");
            }
            sum += fractions[i];
        }
        if (!(sum > 0 && sum <= 1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "fractional hours add up to " + sum + ", but must lie in ]0.0, 1.0]");
        }
        return new RatingBins(name, fahrenheit, fractions);
    }

    /**
     * What the table is.
     *
     * @return name with edition and provenance
     */
    public String name() {
        return name;
    }

    /**
     * Number of bins.
     *
     * @return count
     */
    public int size() {
        return kelvins.length;
    }

    /**
     * Temperature of a bin.
     *
     * @param bin index from 0
     * @return temperature, K
     */
    public double kelvin(int bin) {
        return kelvins[bin];
    }

    /**
     * Fractional hours of a bin.
     *
     * @param bin index from 0
     * @return fraction
     */
    public double fraction(int bin) {
        return fractions[bin];
    }

    /**
     * Sum of the fractional hours.
     *
     * @return sum, 1 for a complete table
     */
    public double sum() {
        double sum = 0;
        for (double f : fractions) {
            sum += f;
        }
        return sum;
    }

    /**
     * For shells.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return name;
    }
}
