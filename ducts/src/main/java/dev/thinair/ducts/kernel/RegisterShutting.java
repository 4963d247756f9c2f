package dev.thinair.ducts.kernel;

import dev.thinair.units.Range;

/**
 * The closed form behind "shut the registers you do not need": why it does not help.
 *
 * <p>Source: own derivation from losses that go with the square of the flow.
 */
public final class RegisterShutting {

    private RegisterShutting() {}

    /**
     * Flow of each open register relative to before, when some of many equal ones are shut tight
     * and the blower's pressure stays.
     *
     * <p>Formula: with N registers, k shut, and a share s of the pressure lost in the branches,
     * {@code [ s + (1 - s)(1 - k/N)^2 ]^-1/2} (all losses quadratic).
     *
     * @param registers N, in [1, 10000]
     * @param closed k, at least 0 and below N
     * @param branchShare s, in [0, 1]
     * @return factor, at least 1
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double openRegisterGain(int registers, int closed, double branchShare) {
        Range.require("number of registers", registers, 1, 10_000, "");
        Range.require("number of closed registers", closed, 0, registers - 1, "");
        Range.require("share of pressure in the branches", branchShare, 0, 1, "");
        double open = 1 - (double) closed / registers;
        return 1 / Math.sqrt(branchShare + (1 - branchShare) * open * open);
    }
}
