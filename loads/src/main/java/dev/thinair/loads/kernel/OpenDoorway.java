package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/** Heat that two rooms at different temperatures exchange through an open doorway. */
public final class OpenDoorway {

    /** Share of the ideal flow that passes a plain doorway; from memory, 0.6 to 1 is reported. */
    public static final double DISCHARGE = 0.6;

    private static final double GRAVITY = 9.80665;
    private static final double CP_AIR = 1006;

    private OpenDoorway() {}

    /**
     * Volume of air that moves each way through an open doorway between two rooms, warm above and
     * cool below: <var>V</var> = (<var>C</var>/3) <var>w</var> &radic;(<var>g</var>
     * <var>h</var><sup>3</sup> &Delta;<var>T</var>/<var>T</var>).
     *
     * <p>The pressure difference grows linearly from the middle of the doorway; the orifice flow
     * through each half, integrated over its height, gives the formula. Accuracy: the discharge is
     * known to about a third. Source: Brown and Solvason (1962), Int. J. Heat and Mass Transfer
     * 5:859-868, from memory; the integral is derived again by a test.
     *
     * @param width width, m, in (0, 10]
     * @param height height, m, in (0, 5]
     * @param difference temperature difference of the rooms, K, in [0, 30]
     * @param temperature mean temperature of the rooms, K, in [250, 330]
     * @return volume flow each way, m3/s
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double volumeFlow(
            double width, double height, double difference, double temperature) {
        Range.requireAbove("doorway width", width, 0, "m");
        Range.require("doorway width", width, 0, 10, "m");
        Range.requireAbove("doorway height", height, 0, "m");
        Range.require("doorway height", height, 0, 5, "m");
        Range.require("temperature difference of the rooms", difference, 0, 30, "K");
        Range.require("mean temperature of the rooms", temperature, 250, 330, "K");
        return DISCHARGE
                / 3
                * width
                * Math.sqrt(GRAVITY * height * height * height * difference / temperature);
    }

    /**
     * Conductance that carries the same heat at one temperature difference: <var>&rho;</var>
     * <var>c</var><sub>p</sub> <var>V</var>. It grows with the square root of the difference, so a
     * linear model holds exactly at the difference given only.
     *
     * @param width width, m, in (0, 10]
     * @param height height, m, in (0, 5]
     * @param difference temperature difference at which it holds, K, in [0, 30]
     * @param temperature mean temperature of the rooms, K, in [250, 330]
     * @param density density of the air, kg/m3, in [0.4, 1.6]
     * @return conductance, W/K
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double conductance(
            double width, double height, double difference, double temperature, double density) {
        Range.require("air density", density, 0.4, 1.6, "kg/m3");
        return density * CP_AIR * volumeFlow(width, height, difference, temperature);
    }
}
