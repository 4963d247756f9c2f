package dev.thinair.ducts.kernel;

/**
 * Round elbows whose loss coefficient is tabulated against their diameter.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals 2009 (SI), chapter 21, tables of fittings CD3-1 to
 * CD3-14, pages 21.26 and 21.27. Compared with those tables: for CD3-1 75, 100, 150, 180, 250 mm;
 * CD3-3 75, 150, 200 mm; CD3-5 150, 200, 300, 400 mm; CD3-7 150, 200 mm; CD3-9 75, 150, 300, 600
 * mm; CD3-10 150, 300 mm; CD3-13 300 mm; CD3-14 150 mm. The other entries are from memory.
 *
 * <p>Between two diameters the tables are read linearly. The coefficients are on the velocity
 * pressure in the elbow.
 */
public enum RoundElbow {
    /** CD3-1: die-stamped, 90 degrees, r/D = 1.5; 75 to 250 mm. */
    DIE_STAMPED_90(
            "CD3-1",
            "die-stamped elbow, 90 degrees, r/D = 1.5",
            new double[] {75, 100, 125, 150, 180, 200, 230, 250},
            new double[] {0.30, 0.21, 0.16, 0.14, 0.12, 0.11, 0.11, 0.11}),
    /** CD3-3: die-stamped, 45 degrees, r/D = 1.5; 75 to 250 mm. */
    DIE_STAMPED_45(
            "CD3-3",
            "die-stamped elbow, 45 degrees, r/D = 1.5",
            new double[] {75, 100, 125, 150, 180, 200, 230, 250},
            new double[] {0.18, 0.13, 0.10, 0.08, 0.07, 0.07, 0.07, 0.07}),
    /** CD3-5: pleated, 90 degrees, r/D = 1.5; 100 to 400 mm. */
    PLEATED_90(
            "CD3-5",
            "pleated elbow, 90 degrees, r/D = 1.5",
            new double[] {100, 150, 200, 250, 300, 350, 400},
            new double[] {0.57, 0.43, 0.34, 0.28, 0.26, 0.25, 0.25}),
    /** CD3-7: pleated, 45 degrees, r/D = 1.5; 100 to 400 mm. */
    PLEATED_45(
            "CD3-7",
            "pleated elbow, 45 degrees, r/D = 1.5",
            new double[] {100, 150, 200, 250, 300, 350, 400},
            new double[] {0.34, 0.26, 0.21, 0.17, 0.16, 0.15, 0.15}),
    /** CD3-9: five gores, 90 degrees, r/D = 1.5; 75 to 750 mm. */
    FIVE_GORE_90(
            "CD3-9",
            "five-gore elbow, 90 degrees, r/D = 1.5",
            new double[] {75, 150, 230, 300, 380, 450, 530, 600, 690, 750},
            new double[] {0.51, 0.28, 0.21, 0.18, 0.16, 0.15, 0.14, 0.13, 0.12, 0.12}),
    /** CD3-10: seven gores, 90 degrees, r/D = 2.5; 75 to 1500 mm. */
    SEVEN_GORE_90(
            "CD3-10",
            "seven-gore elbow, 90 degrees, r/D = 2.5",
            new double[] {75, 150, 230, 300, 380, 450, 690, 1500},
            new double[] {0.16, 0.12, 0.10, 0.08, 0.07, 0.06, 0.05, 0.03}),
    /** CD3-13: three gores, 60 degrees, r/D = 1.5; 75 to 1500 mm. */
    THREE_GORE_60(
            "CD3-13",
            "three-gore elbow, 60 degrees, r/D = 1.5",
            new double[] {75, 150, 230, 300, 380, 450, 530, 600, 690, 1500},
            new double[] {0.40, 0.21, 0.16, 0.14, 0.12, 0.12, 0.11, 0.10, 0.09, 0.09}),
    /** CD3-14: three gores, 45 degrees, r/D = 1.5; 75 to 1500 mm. */
    THREE_GORE_45(
            "CD3-14",
            "three-gore elbow, 45 degrees, r/D = 1.5",
            new double[] {75, 150, 230, 300, 380, 450, 530, 600, 690, 1500},
            new double[] {0.31, 0.17, 0.13, 0.11, 0.11, 0.09, 0.08, 0.08, 0.07, 0.07});

    private final String code;
    private final String words;
    private final double[] diameter;
    private final double[] coefficient;

    RoundElbow(String code, String words, double[] millimetres, double[] coefficient) {
        this.code = code;
        this.words = words;
        this.diameter = new double[millimetres.length];
        for (int i = 0; i < millimetres.length; i++) {
            this.diameter[i] = millimetres[i] / 1000;
        }
        this.coefficient = coefficient;
    }

    /**
     * Number of the fitting in the handbook's fitting database.
     *
     * @return such as CD3-1
     */
    public String code() {
        return code;
    }

    /**
     * What it is in words.
     *
     * @return make, angle and radius
     */
    public String words() {
        return words;
    }

    /**
     * Loss coefficient.
     *
     * @param elbowDiameter m, inside the diameters of the table
     * @return C on the velocity pressure in the elbow
     * @throws IllegalArgumentException if the diameter is NaN or outside the table
     */
    public double coefficient(double elbowDiameter) {
        return Table.read("diameter of " + words, "m", diameter, coefficient, elbowDiameter);
    }
}
