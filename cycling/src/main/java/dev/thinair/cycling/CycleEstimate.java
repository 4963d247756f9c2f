package dev.thinair.cycling;

import dev.thinair.cycling.kernel.LinearDecayEvaporation;
import dev.thinair.cycling.kernel.PartLoad;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;

/**
 * How a unit cycles at a load by closed forms: start-up losses under the thermostat parabola, no
 * house needed. The run of an {@code InstalledSystem} finds the same from the house itself.
 *
 * <p>Immutable.
 */
public final class CycleEstimate {

    private static final String PARABOLA = "NEMA DC 3 (from memory)";
    private static final String IMPLICIT =
            "Henderson, Parker and Huang 2000, FSEC-PF-409-00 (from memory), re-derived";

    private final double load;
    private final double capacity;
    private final double tau;
    private final double maximumRate;
    private final double offFraction;
    private final double wetTime;
    private final double gamma;
    private final double runTime;
    private final double partLoadFactor;

    private CycleEstimate(
            double load,
            double capacity,
            double tau,
            double maximumRate,
            double offFraction,
            double wetTime,
            double gamma) {
        Range.require("load", load, 0, 1e6, "W");
        Range.requireAbove("capacity", capacity, 0, "W");
        this.load = load;
        this.capacity = capacity;
        this.tau = tau;
        this.maximumRate = maximumRate;
        this.offFraction = offFraction;
        this.wetTime = wetTime;
        this.gamma = gamma;
        double factor = load / capacity;
        this.runTime = PartLoad.implicitRunTimeFraction(tau, maximumRate, factor);
        this.partLoadFactor = PartLoad.implicitPartLoadFactor(tau, maximumRate, factor);
    }

    /**
     * Of a unit at its lowest stage.
     *
     * @param unit the unit: start-up time constant, off-cycle power, moisture
     * @param thermostat the thermostat: cycle rate and fan mode
     * @param load the load to be met, not negative
     * @param capacity steady capacity under the present conditions
     * @return the estimate
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static CycleEstimate of(
            CoolingUnit unit,
            Thermostat thermostat,
            Quantity<Power> load,
            Quantity<Power> capacity) {
        if (unit == null || thermostat == null) {
            throw new IllegalArgumentException(
                    (unit == null ? "unit" : "thermostat") + " is missing");
        }
        return new CycleEstimate(
                Si.watts(load, "load"),
                Si.watts(capacity, "capacity"),
                unit.startUpSeconds(),
                thermostat.maximumCycleRate(),
                Math.min(1, unit.offCycleWatts() / Si.watts(unit.ratedPower(), "rated power")),
                unit.moistureHoldingSeconds(),
                thermostat.fanMode() == FanMode.CONTINUOUS ? unit.evaporationRatio() : 0);
    }

    /**
     * Load over capacity.
     *
     * @return ratio; above 1 if the unit is too small
     */
    public double loadFactor() {
        return load / capacity;
    }

    /**
     * Time on over total time.
     *
     * @return fraction in [0, 1]
     */
    public double runTimeFraction() {
        return runTime;
    }

    /**
     * Part-load factor: what start-up losses leave of the steady efficiency.
     *
     * @return factor in ]0, 1]
     */
    public double partLoadFactor() {
        return partLoadFactor;
    }

    /**
     * Cycles an hour.
     *
     * @return rate, 0 at no load and at full run
     */
    public double cyclesPerHour() {
        return PartLoad.cycleRate(maximumRate, runTime);
    }

    /**
     * Time on per cycle.
     *
     * @return time
     * @throws ArithmeticException if the unit runs without pause
     */
    public Quantity<Time> onTime() {
        requirePause();
        return Units.seconds(PartLoad.onTime(maximumRate, runTime));
    }

    /**
     * Time off per cycle.
     *
     * @return time
     * @throws ArithmeticException if the unit never starts
     */
    public Quantity<Time> offTime() {
        requireStart();
        return Units.seconds(PartLoad.offTime(maximumRate, runTime));
    }

    /**
     * Mean power over steady power, off-cycle power counted.
     *
     * @return ratio; not 0 at no load
     */
    public double averagePowerFraction() {
        return PartLoad.averagePowerFraction(runTime, offFraction);
    }

    /**
     * What cycling adds to the energy of the compressor, against running at the steady efficiency.
     *
     * @return 1/PLF - 1; 0 at full run
     */
    public double penalty() {
        return 1 / partLoadFactor - 1;
    }

    /**
     * Load that the unit cannot meet.
     *
     * @return load above capacity, or 0
     */
    public Quantity<Power> unmetLoad() {
        return Units.watts(Math.max(0, load - capacity));
    }

    /**
     * Latent capacity left by re-evaporation, over latent capacity without it.
     *
     * @return ratio in [0, 1]; 1 with the fan on automatic, at full run, and for a unit that never
     *     starts
     */
    public double netLatentRatio() {
        if (runTime <= 0 || runTime >= 1) {
            return 1;
        }
        return LinearDecayEvaporation.netLatentRatio(
                tau,
                PartLoad.onTime(maximumRate, runTime),
                PartLoad.offTime(maximumRate, runTime),
                wetTime,
                gamma);
    }

    private void requirePause() {
        if (runTime >= 1) {
            throw new ArithmeticException(
                    "the unit runs without pause: load "
                            + load
                            + " W, capacity "
                            + capacity
                            + " W");
        }
    }

    private void requireStart() {
        if (runTime <= 0) {
            throw new ArithmeticException("the unit never starts: load " + load + " W");
        }
    }

    /**
     * The steps to the part-load factor.
     *
     * @return working that ends with the part-load factor
     */
    public Working partLoadWorking() {
        Working.Builder w =
                Working.titled("part-load factor")
                        .given("L", "load", Units.watts(load))
                        .given("Q", "steady capacity", Units.watts(capacity))
                        .given("tau", "start-up time constant", Units.seconds(tau))
                        .given("N_max", "cycles an hour at half load", rate(maximumRate));
        w.step(
                "load factor, at most 1",
                "CLF = min(1, L / Q)",
                Units.ratio(Math.min(1, loadFactor())),
                "by definition");
        w.step(
                "cycling number",
                "k = 4 tau N_max / 3600",
                Units.ratio(4 * tau * maximumRate / 3600),
                IMPLICIT);
        w.stepInWords(
                "X",
                "run-time fraction",
                "root of X (1 - z (1 - exp(-1/z))) = CLF with z = k (1 - X), bisected between CLF"
                        + " and 1",
                List.of("CLF", "k"),
                Units.ratio(runTime),
                IMPLICIT);
        if (runTime > 0 && runTime < 1 && tau > 0) {
            w.step(
                    "argument",
                    "z = k (1 - X)",
                    Units.ratio(4 * tau * maximumRate / 3600 * (1 - runTime)),
                    IMPLICIT);
            w.step(
                    "part-load factor",
                    "PLF = 1 - z (1 - exp(-1 / z))",
                    Units.ratio(partLoadFactor),
                    IMPLICIT);
        } else {
            w.stepInWords(
                    "PLF",
                    "part-load factor",
                    runTime > 0 ? "no start-up loss" : "factor of the shortest on-period",
                    List.of("X"),
                    Units.ratio(partLoadFactor),
                    IMPLICIT);
        }
        return w.build();
    }

    /**
     * The steps to the cycle rate.
     *
     * @return working that ends with the cycles an hour
     */
    public Working cycleRateWorking() {
        return Working.titled("cycle rate")
                .given("N_max", "cycles an hour at half load", rate(maximumRate), PARABOLA)
                .given("X", "run-time fraction", Units.ratio(runTime))
                .step("cycles an hour", "N = 4 N_max X (1 - X)", rate(cyclesPerHour()), PARABOLA)
                .note("A run of the installed system finds the rate from the house itself.")
                .build();
    }

    /** Cycles an hour as a plain number, so that formulas yield what is shown. */
    private static Quantity<Dimensionless> rate(double perHour) {
        return Units.ratio(perHour);
    }

    /**
     * For shells.
     *
     * @return load factor, run time, rate and penalty
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "load %.0f %% of capacity: on %.1f %% of the time, %.2f cycles/h, cycling adds"
                        + " %.1f %% energy",
                100 * loadFactor(),
                100 * runTime,
                cyclesPerHour(),
                100 * penalty());
    }
}
