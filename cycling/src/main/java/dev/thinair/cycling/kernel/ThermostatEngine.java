package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Runs a linear house with a thermostat, every switch time exact.
 *
 * <p>Between two events each mode of the house ({@link ModalHouse}) has a closed solution, because
 * all that acts on it is constant, linear in time or a decaying exponential: forcing is linear
 * between marks, the capacity is held, and its growth after a start, <code>
 * Q (1 - e<sup>-t/&tau;</sup>)</code>, is one more exponential. The temperature at the thermostat
 * is then a line plus a sum of exponentials. Its first exit from the thermostat's band is isolated
 * by bounds that cannot miss one (terms split by sign bound value, slope and curvature over an
 * interval) and refined by Halley steps inside a bracket.
 *
 * <p><b>Accuracy.</b> Switch times are those of the model to about 1e-7 s. A touch of the band that
 * lasts less than 2<sup>-18</sup> of an interval (14 ms of an hour) may pass unseen. If a mode
 * decays at the rate of the start-up within 1e-5, that time constant is moved by 2e-5 of itself.
 *
 * <p><b>Capacity rule.</b> The unit's state is looked up when it starts, changes stage, at every
 * mark, and at least every {@link CycleControl#refreshSeconds()} while it runs, and held in
 * between. It is looked up for the middle of what lies ahead: outdoor air half-way to the next mark
 * (or half the last run, if that is shorter), return air at the middle of the way down to the
 * switch-off temperature; if the return air turns out to differ by more than 0.02 K on average, the
 * stretch is run once more with the average found.
 *
 * <p><b>Two stages.</b> A call for cooling starts the low stage. The high stage comes in when the
 * thermostat gets {@link CycleControl#secondStageDifferential()} above the switch-on temperature,
 * or at once if it is there when the unit starts (after a delay of the compressor, or at a lower
 * setpoint), and goes out when it has fallen back to that; or when the low stage has run for {@link
 * CycleControl#secondStageSeconds()}, and then stays until the unit stops. Without the second rule
 * a load between the stages would keep the house above the band for good.
 *
 * <p><b>Variable speed.</b> The control corrects the speed every {@link
 * CycleControl#controlSeconds()} to the constant capacity that brings the thermostat to its
 * setpoint at the next correction, between the lowest speed and full; at the lowest speed it
 * switches off at the bottom of the band.
 *
 * <p><b>Moisture.</b> One well-mixed humidity ratio; removal by the coil is linear in it about the
 * state looked up, so that the balance is solved exactly over each stretch; the coil's water,
 * filled by what condenses there and not by what the rooms lose (the two differ wherever ducts
 * leak), is kept account of and evaporates by a linearly falling rate while the fan runs on.
 *
 * <p>Holds scratch memory: one engine per thread. Results depend on nothing but the arguments.
 */
public final class ThermostatEngine {

    private static final double RESOLUTION = 1.0 / (1 << 18);
    private static final double UNSEEN = 1e-13; // share of the largest, of a mode at the thermostat
    private static final double RETURN_MISS = 0.02; // K, from which a look-up is put right
    private static final double OUTDOOR_MISS = 0.1; // K
    private static final double INSTANT = 1e-3; // s, or share of start-up time: too short a mean
    private static final double PEAK_MISS = 1e-6; // K
    private static final int DEEPEST = 18; // halvings in search of a turning point
    private static final double HUMIDITY_DRIFT = 2e-5; // kg/kg from day to day
    private static final int GIVE_UP = 20; // passes without progress
    private static final double ROOT_ERROR = 1e-9; // s
    private static final double LEAST_BEND = 1e-3; // 1/s, where the curvature vanishes
    private static final int STAGE_OFF = 0;
    private static final int STAGE_LOW = 1;
    private static final int STAGE_HIGH = 2;
    private static final int STAGE_MODULATING = 3;

    private final ModalHouse house;
    private final int nodes;
    private final int n; // modes
    private final int seen; // modes that the thermostat feels; they come first
    private final int coupled; // those and modes that the unit acts on or draws from come next
    private final int[] order; // of the house's modes
    private final double[][] driven; // row i: what 1 W into node i does to every mode, if asked
    private final int[] warmed; // nodes that get heat now
    private final double[] scratch;
    private final double[] rate;
    private final double[] inverseRate;
    private final double[] lagging; // supply / (rate - start-up rate)
    private final double[] inverseLagged; // 1 / (rate + start-up rate)
    private final double[] sensor;
    private final double[] returned;
    private final double[] supply;
    private final double[] lost;
    private final double[] content;

    // State carried through a run.
    private final double[] z;
    private int stage;
    private boolean pressed; // second stage called by time: it stays until the unit stops
    private double lowAge;
    private double deficit;
    private double humidityRatio;
    private double coilWater;
    private double offWater;
    private double offRate;
    private double offAge;
    private double onAge;
    private double lastRun;
    private double lastOff; // off time before the last start, for the first guess of the next
    private double lastOver; // time above the band after the last start, a first guess as well
    private double lastPeak; // time of the last highest point, a first guess of the next
    private double lastFall; // of the return air, from the start of the last run to its mean
    private double lockLeft;
    private double refreshAge;

    // Capacity now.
    private final double[] low = new double[UnitResponse.RESULTS];
    private final double[] mid = new double[UnitResponse.RESULTS];
    private final double[] high = new double[UnitResponse.RESULTS];
    private final double[] now = new double[UnitResponse.RESULTS];
    private double lookedUpHumidityRatio;
    private double lookedUpReturn;
    private double lookedUpOutdoor;
    private boolean fresh;

    // Forcing of the interval; steady answer a + b s to it, s seconds after its start.
    private double[] fStart;
    private double[] fEnd;
    private final double[] aStart;
    private final double[] supplied; // steady answer to 1 W of cooling
    private double lineOfInterval;
    private double lineSlope;
    private double lineSupplied;
    private double lagGain; // of the start-up term at the thermostat, for 1 W

    // Stretch: z_k(t) = a + b t + p e^(-mu t) + d e^(-lambda t).
    private final double[] a;
    private final double[] b;
    private final double[] p;
    private final double[] d;
    private double lineStart;
    private final double[] amplitude; // sensor * d
    private double lagAmplitude; // sensor p
    private final double[] e; // decays at time eTime, of the first eCount modes
    private double eTime = Double.NaN;
    private int eCount;
    private final double[] zIntegral;
    private final double[] dayIntegral;
    private double sensorIntegral;
    private double aboveOnStretch;
    private double highestOnStretch;
    private double lastCrossing;

    // Decay tables for the interval and the start-up in use.
    private DecayTable table;
    private double tableInterval = Double.NaN;
    private double startUpRate = Double.NaN;
    private double startUpAsked = Double.NaN;
    private double controlTable = Double.NaN;
    private double controlReach;
    private double controlReachStart;

    // Sums at the left and right end of a search interval.
    private double leftTime;
    private boolean leftCurved;
    private double leftValue;
    private double leftSlope;
    private double leftPos;
    private double leftNeg;
    private double leftSlopePos;
    private double leftSlopeNeg;
    private double leftCurvePos;
    private double leftCurveNeg;
    private double value; // at the time of the last evaluation, as are the next
    private double slope;
    private double curvature;
    private double sum0;
    private double abs0;
    private double sum1;
    private double abs1;
    private double sum2;
    private double abs2;
    private boolean exitHigh;
    private double[] traceSlots;
    private int traceNext;

    /**
     * Makes an engine.
     *
     * @param house the house
     * @param sensorWeights share of each node in what the thermostat feels, sum 1
     * @param returnWeights share of each node in the air that goes back to the unit, sum 1
     * @param supplyShares share of the cooling that each node gets, sum 1
     * @throws IllegalArgumentException if a length differs from the number of nodes, or a sum from
     *     1 by more than 1e-6, or a share is negative
     */
    public ThermostatEngine(
            ModalHouse house,
            double[] sensorWeights,
            double[] returnWeights,
            double[] supplyShares) {
        if (house == null) {
            throw new IllegalArgumentException("engine needs a house, not null");
        }
        this.house = house;
        nodes = house.size();
        n = house.modes();
        requireShares("thermostat weights", sensorWeights);
        requireShares("return weights", returnWeights);
        requireShares("supply shares", supplyShares);
        double[] felt = house.row(sensorWeights);
        double[] drawn = house.row(returnWeights);
        double[] cooled = house.row(supplyShares);
        order = new int[n];
        boolean[] taken = new boolean[n];
        seen = take(felt, taken, order, 0);
        coupled = take(cooled, taken, order, take(drawn, taken, order, seen));
        int next = coupled;
        for (int k = 0; k < n; k++) {
            if (!taken[k]) {
                order[next++] = k;
            }
        }
        scratch = new double[n];
        sensor = ordered(felt);
        returned = ordered(drawn);
        supply = ordered(cooled);
        driven = new double[nodes][];
        warmed = new int[nodes];
        lost = ordered(house.lossRow());
        content = ordered(house.row(house.capacities()));
        rate = ordered(house.sharedRates());
        inverseRate = new double[n];
        supplied = new double[n];
        for (int k = 0; k < n; k++) {
            inverseRate[k] = 1 / rate[k];
            supplied[k] = supply[k] * inverseRate[k];
        }
        lineSupplied = dot(sensor, supplied, seen);
        lagging = new double[n];
        inverseLagged = new double[n];
        z = new double[n];
        fStart = new double[n];
        fEnd = new double[n];
        aStart = new double[n];
        a = new double[n];
        b = new double[n];
        p = new double[n];
        d = new double[n];
        amplitude = new double[n];
        e = new double[n];
        zIntegral = new double[n];
        dayIntegral = new double[n];
    }

    /** Takes the modes that a row feels and that are not taken yet, slowest first. */
    private static int take(double[] row, boolean[] taken, int[] order, int next) {
        double most = 0;
        for (double g : row) {
            most = Math.max(most, Math.abs(g));
        }
        for (int k = 0; k < row.length; k++) {
            if (!taken[k] && Math.abs(row[k]) > UNSEEN * most) {
                taken[k] = true;
                order[next++] = k;
            }
        }
        return next;
    }

    private double[] ordered(double[] of) {
        double[] out = new double[n];
        for (int k = 0; k < n; k++) {
            out[k] = of[order[k]];
        }
        return out;
    }

    /** Modal forcing in the engine's order; gives the sum of the heat. */
    private double forcing(double[] heat, double[] out) {
        java.util.Arrays.fill(out, 0);
        double sum = 0;
        int warm = 0;
        for (int i = 0; i < nodes; i++) {
            // Inner layers get no heat of their own: most rows are skipped.
            if (heat[i] != 0) {
                if (driven[i] == null) {
                    driven[i] = house.driven(i, order);
                }
                warmed[warm++] = i;
                sum += heat[i];
            }
        }
        // Four rows at a time, so that the output is read and written a quarter as often.
        int w = 0;
        for (; w + 3 < warm; w += 4) {
            double q0 = heat[warmed[w]];
            double q1 = heat[warmed[w + 1]];
            double q2 = heat[warmed[w + 2]];
            double q3 = heat[warmed[w + 3]];
            double[] r0 = driven[warmed[w]];
            double[] r1 = driven[warmed[w + 1]];
            double[] r2 = driven[warmed[w + 2]];
            double[] r3 = driven[warmed[w + 3]];
            for (int k = 0; k < out.length; k++) {
                out[k] += (q0 * r0[k] + q1 * r1[k]) + (q2 * r2[k] + q3 * r3[k]);
            }
        }
        for (; w < warm; w++) {
            double q = heat[warmed[w]];
            double[] row = driven[warmed[w]];
            for (int k = 0; k < out.length; k++) {
                out[k] += q * row[k];
            }
        }
        return sum;
    }

    /** Node temperatures from modal coordinates in the engine's order. */
    private void toNodes(double[] modal, double[] out) {
        for (int k = 0; k < n; k++) {
            scratch[order[k]] = modal[k];
        }
        house.toNodes(scratch, out);
    }

    /** Decays over a time of at most the interval, of the first so many modes, into {@link #e}. */
    private void decays(double time, int count) {
        if (time == 0) {
            java.util.Arrays.fill(e, 0, count, 1);
            eTime = 0;
            eCount = count;
        } else if (time != eTime) {
            table.at(time, 0, count, e);
            eTime = time;
            eCount = count;
        } else if (eCount < count) {
            table.at(time, eCount, count, e);
            eCount = count;
        }
    }

    private void requireShares(String name, double[] shares) {
        if (shares == null || shares.length != nodes) {
            throw new IllegalArgumentException(
                    name
                            + " must have one entry for each of the "
                            + nodes
                            + " nodes, not "
                            + (shares == null ? "null" : String.valueOf(shares.length)));
        }
        double sum = 0;
        for (int i = 0; i < nodes; i++) {
            Range.require(name + " of node " + i, shares[i], 0, 1 + 1e-9, "");
            sum += shares[i];
        }
        Range.require("sum of " + name, sum, 1 - 1e-6, 1 + 1e-6, "");
    }

    /**
     * Runs through the whole drive once.
     *
     * @param drive what acts on the house
     * @param control how the thermostat switches
     * @param unit what the unit does
     * @param temperature node temperatures at the start, K; the unit is off then
     * @param humidityRatioAtStart humidity ratio of the house at the start, kg/kg
     * @param traceSeconds time between points of the trace, s; 0 for none
     * @return what happened
     * @throws IllegalArgumentException if sizes do not fit together or a value is out of range
     * @throws ArithmeticException if the unit has no steady state on the way, or a search does not
     *     end
     */
    public RunRecord run(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            double[] temperature,
            double humidityRatioAtStart,
            double traceSeconds) {
        check(drive, control, unit, temperature, humidityRatioAtStart);
        Range.require("time between points of the trace", traceSeconds, 0, 1e9, "s");
        prepare(drive.interval, control);
        reset(temperature, humidityRatioAtStart);
        return pass(drive, control, unit, traceSeconds);
    }

    /**
     * Runs a periodic drive until it repeats itself. A pass that repeats itself has mean node
     * temperatures <code>K<sup>-1</sup>(q - b Q)</code> of the mean forcing and the one mean
     * cooling <var>Q</var> that goes with its mean temperature at the thermostat. What the means of
     * a pass differ from that is both the measure of the error and the correction that the next
     * pass starts with, so that a heavy house needs no more passes than a light one. The humidity
     * is led to its cycle by secants.
     *
     * <p>A thermostat's cycle may have no day that repeats itself, but days that take turns, a few
     * hundredths of a kelvin apart: with 20 passes that come no nearer the search ends, and the
     * record says that the day does not repeat and by how much it misses.
     *
     * @param drive what acts on the house, periodic
     * @param control how the thermostat switches
     * @param unit what the unit does
     * @param humidityRatioAtStart first guess of the humidity ratio, kg/kg
     * @param tolerance on the mean temperature of a node, K, in [1e-6, 1]; the humidity ratio must
     *     come back to 2e-5 kg/kg
     * @param maximumPasses largest number of passes, in [1, 1000]; if it is used up the record says
     *     so by {@link RunRecord#repeats()} and {@link RunRecord#repeatError()}
     * @param traceSeconds time between points of the trace, s; 0 for none
     * @return the last pass
     * @throws IllegalArgumentException if the drive is not periodic, sizes do not fit together or a
     *     value is out of range
     * @throws ArithmeticException if the unit has no steady state on the way, or a search does not
     *     end
     */
    public RunRecord repeat(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            double humidityRatioAtStart,
            double tolerance,
            int maximumPasses,
            double traceSeconds) {
        if (drive == null || !drive.periodic) {
            throw new IllegalArgumentException("a drive that is to be repeated must be periodic");
        }
        Range.require("tolerance of the repeated day", tolerance, 1e-6, 1, "K");
        Range.require("largest number of passes", maximumPasses, 1, 1000, "");
        Range.require("time between points of the trace", traceSeconds, 0, 1e9, "s");
        double[] start = heldAtSetpoint(drive, control);
        check(drive, control, unit, start, humidityRatioAtStart);
        prepare(drive.interval, control);
        reset(start, humidityRatioAtStart);
        double duration = drive.intervals() * drive.interval;
        double[] meanForcing = new double[n];
        double[] correction = new double[n];
        double[] atNodes = new double[nodes];
        double[] before = new double[n];
        double gain = 0;
        double free = 0;
        meanForcing(drive, meanForcing);
        for (int k = 0; k < n; k++) {
            free += sensor[k] * meanForcing[k] * inverseRate[k];
            gain += sensor[k] * supply[k] * inverseRate[k];
        }
        double lastStart = Double.NaN;
        double lastDrift = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        int since = 0;
        RunRecord record = null;
        for (int pass = 1; pass <= maximumPasses && since < GIVE_UP; pass++) {
            double startHumidity = humidityRatio;
            System.arraycopy(z, 0, before, 0, n);
            record = pass(drive, control, unit, traceSeconds);
            record.repeatedDays = pass;
            double mean = 0;
            for (int k = 0; k < n; k++) {
                mean += sensor[k] * dayIntegral[k] / duration;
            }
            double implied = (free - mean) / gain;
            double found =
                    (record.totalDelivered() - fanHeatOff * (duration - record.totalOnSeconds()))
                            / duration;
            // A unit that never switches holds nothing: its cooling is what it is.
            double cooling = record.eventCount() == 0 ? found : implied;
            for (int k = 0; k < n; k++) {
                correction[k] =
                        (meanForcing[k] - supply[k] * cooling) * inverseRate[k]
                                - dayIntegral[k] / duration;
            }
            toNodes(correction, atNodes);
            // In a cycling house the two differ by what the cycle cut at the end holds: no error.
            double error = record.eventCount() == 0 ? Math.abs(implied - found) * gain : 0;
            for (int i = 0; i < nodes; i++) {
                error = Math.max(error, Math.abs(atNodes[i]));
            }
            record.repeatError = error;
            double drift = humidityRatio - startHumidity;
            boolean dry = Math.abs(drift) < HUMIDITY_DRIFT;
            if (error < tolerance && dry) {
                record.longestRun = Math.min(record.longestRun, duration);
                record.repeats = true;
                return record;
            }
            double miss = Math.max(error / tolerance, Math.abs(drift) / HUMIDITY_DRIFT);
            since = miss < 0.9 * least ? 0 : since + 1;
            least = Math.min(least, miss);
            if (error >= tolerance) {
                for (int k = 0; k < n; k++) {
                    // What a mode is off on average is left of it at the end by this part.
                    double x = rate[k] * duration;
                    z[k] += correction[k] * (x < 1e-6 ? 1 - 0.5 * x : x / Math.expm1(x));
                }
            }
            if (!dry) {
                double step = 0;
                if (lastDrift == lastDrift && startHumidity != lastStart) {
                    double slope = (drift - lastDrift) / (startHumidity - lastStart);
                    step = slope < -0.01 ? -drift / slope - drift : 0;
                }
                step = Math.max(-0.003, Math.min(0.003, step));
                lastStart = startHumidity;
                lastDrift = drift;
                humidityRatio = Math.max(0, Math.min(0.04, humidityRatio + step));
            }
            if (since > 0 && since % 2 == 0) {
                // Two days may take turns; half-way between them there may be one that repeats.
                for (int k = 0; k < n; k++) {
                    z[k] = 0.5 * (before[k] + z[k]);
                }
                humidityRatio = 0.5 * (startHumidity + humidityRatio);
            }
        }
        record.longestRun = Math.min(record.longestRun, duration);
        record.repeats = false;
        return record;
    }

    /** Mean of a periodic drive's forcing in modal coordinates. */
    private void meanForcing(HouseDrive drive, double[] out) {
        double[] mean = new double[nodes];
        int marks = Math.min(drive.heat.length, drive.periodic ? drive.heat.length : 24);
        for (int i = 0; i < marks; i++) {
            for (int j = 0; j < nodes; j++) {
                mean[j] += drive.heat[i][j] / marks;
            }
        }
        forcing(mean, out);
    }

    /**
     * Node temperatures that a house has in the mean of a drive when the thermostat is held at its
     * mean setpoint, or runs free if it stays below: a good start for a run.
     *
     * @param drive what acts on the house
     * @param control the thermostat
     * @return node temperatures, K, a fresh array
     * @throws IllegalArgumentException if the drive is for another number of nodes
     */
    public double[] heldAtSetpoint(HouseDrive drive, CycleControl control) {
        if (drive == null || control == null || drive.nodes() != nodes) {
            throw new IllegalArgumentException(
                    "drive is for "
                            + (drive == null ? "no" : String.valueOf(drive.nodes()))
                            + " nodes, the house has "
                            + nodes);
        }
        double set = 0;
        for (int i = 0; i < control.setpoints(); i++) {
            set += control.setpointAt(i) / control.setpoints();
        }
        double[] f = new double[n];
        meanForcing(drive, f);
        double free = 0;
        double gain = 0;
        for (int k = 0; k < n; k++) {
            free += sensor[k] * f[k] * inverseRate[k];
            gain += sensor[k] * supply[k] * inverseRate[k];
        }
        double q = Math.max(0, (free - set) / gain);
        for (int k = 0; k < n; k++) {
            f[k] = (f[k] - supply[k] * q) * inverseRate[k];
        }
        double[] out = new double[nodes];
        toNodes(f, out);
        return out;
    }

    private void check(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            double[] temperature,
            double humidityRatioAtStart) {
        if (drive == null || control == null || unit == null) {
            throw new IllegalArgumentException(
                    "a run needs a drive, a control and a unit, not null");
        }
        if (drive.nodes() != nodes) {
            throw new IllegalArgumentException(
                    "drive is for " + drive.nodes() + " nodes, the house has " + nodes);
        }
        if (control.setpoints() != 1 && control.setpoints() != drive.intervals()) {
            throw new IllegalArgumentException(
                    "setpoint has "
                            + control.setpoints()
                            + " values, but must have 1 or one for each of "
                            + drive.intervals()
                            + " intervals");
        }
        if (temperature == null || temperature.length != nodes) {
            throw new IllegalArgumentException(
                    "starting temperatures must have one entry for each of the "
                            + nodes
                            + " nodes, not "
                            + (temperature == null ? "null" : String.valueOf(temperature.length)));
        }
        for (int i = 0; i < nodes; i++) {
            if (!(Math.abs(temperature[i]) < 1e6)) {
                throw new IllegalArgumentException(
                        "starting temperature of node "
                                + i
                                + " is "
                                + temperature[i]
                                + " K, but must be finite");
            }
        }
        Range.require("humidity ratio at the start", humidityRatioAtStart, 0, 0.2, "kg/kg");
    }

    private void reset(double[] temperature, double humidityRatioAtStart) {
        house.toModal(temperature, scratch);
        for (int k = 0; k < n; k++) {
            z[k] = scratch[order[k]];
        }
        stage = STAGE_OFF;
        pressed = false;
        lowAge = 0;
        deficit = 0;
        humidityRatio = humidityRatioAtStart;
        coilWater = 0;
        offWater = 0;
        offRate = 0;
        offAge = 0;
        onAge = 0;
        lastRun = 600;
        lastOff = Double.POSITIVE_INFINITY;
        lastFall = Double.NaN;
        lastOver = Double.POSITIVE_INFINITY;
        lastPeak = Double.NaN;
        java.util.Arrays.fill(now, 0);
        lockLeft = 0;
        refreshAge = 0;
    }

    private void prepare(double interval, CycleControl control) {
        fanHeatOff = control.fanHeatOff();
        double asked = control.startUpSeconds();
        if (interval != tableInterval) {
            table = new DecayTable(rate, n, interval);
            tableInterval = interval;
            eTime = Double.NaN;
            controlTable = Double.NaN;
        }
        if (asked != startUpAsked) {
            double mu = 0;
            if (asked > 0) {
                mu = 1 / asked;
                for (int k = 0; k < n; k++) {
                    if (Math.abs(rate[k] - mu) < 1e-5 * mu) {
                        mu *= 1 + 2e-5;
                    }
                }
                for (int k = 0; k < n; k++) {
                    lagging[k] = supply[k] / (rate[k] - mu);
                    inverseLagged[k] = 1 / (rate[k] + mu);
                }
            }
            lagGain = asked > 0 ? dot(sensor, lagging, seen) : 0;
            startUpRate = mu;
            startUpAsked = asked;
            controlTable = Double.NaN;
        }
        if (control.staging() == CycleControl.Staging.VARIABLE) {
            double every = Math.min(control.controlSeconds(), interval);
            if (every != controlTable) {
                controlTable = every;
                reach(every);
            }
        }
    }

    /**
     * How far constant capacity 1 W pulls the thermostat down in a time, settled and from a start.
     */
    private void reach(double seconds) {
        double settled = 0;
        double starting = 0;
        double em = startUpRate > 0 ? Math.exp(-startUpRate * seconds) : 0;
        decays(seconds, seen);
        for (int k = 0; k < seen; k++) {
            settled += sensor[k] * supplied[k] * (1 - e[k]);
            if (startUpRate > 0) {
                starting += sensor[k] * lagging[k] * (em - e[k]);
            }
        }
        controlReach = settled;
        controlReachStart = settled - starting;
    }

    private RunRecord pass(
            HouseDrive drive, CycleControl control, UnitResponse unit, double traceSeconds) {
        int count = drive.intervals();
        double interval = drive.interval;
        RunRecord record = new RunRecord(count, interval);
        if (traceSeconds > 0) {
            int points = (int) Math.floor(count * interval / traceSeconds + 1e-9) + 1;
            record.traceTime = new double[points];
            record.traceTemperature = new double[points];
            record.traceHumidityRatio = new double[points];
            for (int i = 0; i < points; i++) {
                record.traceTime[i] = i * traceSeconds;
            }
        }
        traceSlots = record.traceTime;
        traceNext = 0;
        double contentBefore = dot(content, z, n);
        double inverseInterval = 1 / interval;
        double waterBefore = humidityRatio;
        double coilBefore = coilWater;
        java.util.Arrays.fill(dayIntegral, 0);
        double heatStart = forcing(drive.heat[0], fStart);
        for (int i = 0; i < count; i++) {
            int j = drive.end(i);
            double heatEnd = forcing(drive.heat[j], fEnd);
            for (int k = 0; k < n; k++) {
                double slope = (fEnd[k] - fStart[k]) * inverseInterval * inverseRate[k];
                b[k] = slope;
                aStart[k] = (fStart[k] - slope) * inverseRate[k];
                zIntegral[k] = 0;
            }
            lineOfInterval = dot(sensor, aStart, seen);
            lineSlope = dot(sensor, b, seen);
            record.heatIn += 0.5 * (heatStart + heatEnd) * interval;
            interval(drive, control, unit, record, i, j);
            freeModes(interval);
            record.meanTemperature[i] = dot(sensor, zIntegral, seen) / interval;
            for (int k = 0; k < n; k++) {
                dayIntegral[k] += zIntegral[k];
            }
            double[] swap = fStart;
            fStart = fEnd;
            fEnd = swap;
            heatStart = heatEnd;
        }
        record.heatLost = dot(lost, dayIntegral, n);
        record.heatStored = dot(content, z, n) - contentBefore;
        record.waterStored = drive.moistureCapacity * (humidityRatio - waterBefore);
        record.retainedWater = coilWater - coilBefore;
        if (stage != STAGE_OFF) {
            record.longestRun = Math.max(record.longestRun, onAge);
        }
        record.endNodes = new double[nodes];
        toNodes(z, record.endNodes);
        if (traceNext < traceSlots.length) {
            record.traceTemperature[traceNext] = dot(sensor, z, seen);
            record.traceHumidityRatio[traceNext] = humidityRatio;
            traceNext++;
        }
        return record;
    }

    /** Takes the modes that neither thermostat nor unit have to do with over a whole interval. */
    private void freeModes(double interval) {
        double half = 0.5 * interval;
        // Entries that the cache of decays, which counts up to the coupled modes, does not hold.
        table.at(interval, coupled, n, e);
        for (int k = coupled; k < n; k++) {
            double dk = z[k] - aStart[k];
            double rest = dk * e[k];
            zIntegral[k] = interval * (aStart[k] + b[k] * half) + (dk - rest) * inverseRate[k];
            z[k] = aStart[k] + b[k] * interval + rest;
        }
    }

    private void interval(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            RunRecord record,
            int i,
            int j) {
        double interval = drive.interval;
        double begin = i * interval;
        double set = control.setpointAt(i);
        double half = 0.5 * control.differential();
        double on = set + half;
        double off = set - half;
        double second = on + control.secondStageDifferential();
        CycleControl.Staging staging = control.staging();
        double s = 0;
        double temperature = dot(sensor, z, seen);
        record.maximumTemperature[i] = temperature;
        record.minimumTemperature[i] = temperature;
        record.coil[i] = Double.POSITIVE_INFINITY;
        boolean lookUp = stage != STAGE_OFF;
        int events = 0;
        while (s < interval) {
            // A changed setpoint, a lock that has run out or an exit may call for a switch here.
            if (stage == STAGE_OFF) {
                if (temperature >= on && lockLeft <= 0) {
                    // A delay of the compressor or a lower setpoint can leave it too warm for the
                    // low stage.
                    stage =
                            staging == CycleControl.Staging.VARIABLE
                                    ? STAGE_MODULATING
                                    : staging == CycleControl.Staging.TWO && temperature < second
                                            ? STAGE_LOW
                                            : STAGE_HIGH;
                    onAge = 0;
                    lastOff = offAge > 0 ? offAge : Double.POSITIVE_INFINITY;
                    lowAge = 0;
                    record.starts[i]++;
                    record.event(begin + s, true);
                    lookUp(drive, control, unit, i, j, s, temperature, off, on, set, Double.NaN, 0);
                    deficit = startUpRate > 0 ? now[UnitResponse.SENSIBLE] : 0;
                    lookUp = false;
                }
            } else if (temperature <= off) {
                stop(control, record, begin + s);
                lookUp = false;
            } else if (stage == STAGE_LOW
                    && (temperature >= second || lowAge >= control.secondStageSeconds())) {
                double was = now[UnitResponse.SENSIBLE];
                stage = STAGE_HIGH;
                pressed = temperature < second;
                boolean inBand = temperature <= on;
                lookUp(
                        drive,
                        control,
                        unit,
                        i,
                        j,
                        s,
                        temperature,
                        inBand ? off : on,
                        inBand ? on : second,
                        set,
                        Double.NaN,
                        0);
                if (startUpRate > 0) {
                    deficit += Math.max(0, now[UnitResponse.SENSIBLE] - was);
                }
                lookUp = false;
            } else if (stage == STAGE_HIGH
                    && staging == CycleControl.Staging.TWO
                    && !pressed
                    && temperature <= on) {
                double was = now[UnitResponse.SENSIBLE];
                double missing = deficit;
                stage = STAGE_LOW;
                lowAge = 0;
                lookUp(drive, control, unit, i, j, s, temperature, off, on, set, Double.NaN, 0);
                // The same share of the lower capacity is missing.
                double share = was > 0 ? Math.min(1, now[UnitResponse.SENSIBLE] / was) : 0;
                deficit = missing * Math.max(0, share);
                lookUp = false;
            }
            if (lookUp || (stage != STAGE_OFF && refreshAge >= control.refreshSeconds())) {
                lookUp(drive, control, unit, i, j, s, temperature, off, on, set, Double.NaN, 0);
                lookUp = false;
            }
            double left = interval - s;
            double lo;
            double hi;
            double cap;
            boolean tracking = false;
            if (stage == STAGE_OFF) {
                lo = Double.NEGATIVE_INFINITY;
                hi = lockLeft > 0 ? Double.POSITIVE_INFINITY : on;
                cap = lockLeft > 0 ? Math.min(left, lockLeft) : left;
            } else {
                cap = Math.min(left, Math.max(control.refreshSeconds() - refreshAge, 1e-3));
                // The high stage of two gives way at the upper edge, unless it was called by time.
                boolean second0 = stage == STAGE_HIGH && staging == CycleControl.Staging.TWO;
                lo = second0 && !pressed ? on : off;
                hi = stage == STAGE_LOW ? second : Double.POSITIVE_INFINITY;
                if (stage == STAGE_LOW) {
                    cap = Math.min(cap, Math.max(control.secondStageSeconds() - lowAge, 1e-3));
                }
                if (stage == STAGE_MODULATING) {
                    cap = Math.min(cap, controlTable);
                    tracking = true;
                }
            }
            if (tracking) {
                modulate(s, cap, set);
            }
            double tried = lookedUpReturn;
            // Only what was looked up just now is put right, and only once.
            boolean mayCorrect = fresh && stage != STAGE_OFF && stage != STAGE_MODULATING;
            double length;
            boolean exit;
            double zero = deficit;
            double capacityWas = now[UnitResponse.SENSIBLE];
            prepareStretch(s);
            double guess = stage == STAGE_OFF ? lastOff - offAge : lastRun - onAge;
            double found = firstExit(cap, lo, hi, guess);
            exit = found <= cap;
            length = exit ? found : cap;
            if (mayCorrect) {
                fresh = false;
                double mean = length > 0 ? meanReturn(length) : tried;
                if (onAge == 0 && exit) {
                    lastFall = mean - dot(returned, z, coupled);
                }
                double outdoorSlope =
                        (drive.outdoorDryBulb[j] - drive.outdoorDryBulb[i]) / interval;
                double outdoorMiss =
                        drive.outdoorDryBulb[i]
                                + outdoorSlope * (s + 0.5 * length)
                                - lookedUpOutdoor;
                if (Math.abs(mean - tried) > RETURN_MISS || Math.abs(outdoorMiss) > OUTDOOR_MISS) {
                    lookUp(drive, control, unit, i, j, s, temperature, off, on, set, mean, length);
                    if (zero == capacityWas && startUpRate > 0 && onAge == 0) {
                        deficit = now[UnitResponse.SENSIBLE];
                    }
                    prepareStretch(s);
                    found = firstExit(cap, lo, hi, length);
                    exit = found <= cap;
                    length = exit ? found : cap;
                }
            }
            double humidityBefore = humidityRatio;
            boolean high0 = exitHigh;
            aboveEdge(length, hi > on ? on : Double.POSITIVE_INFINITY);
            record.above[i] += aboveOnStretch;
            record.maximumTemperature[i] = Math.max(record.maximumTemperature[i], highestOnStretch);
            if (onAge == 0 && stage != STAGE_OFF && lastCrossing > 0) {
                lastOver = lastCrossing;
            }
            advance(length);
            account(drive, control, unit, record, i, j, s, length);
            trace(record, begin + s, length, humidityBefore);
            s = exit || length < left ? s + length : interval;
            temperature = dot(sensor, z, seen);
            if (exit) {
                double edge = high0 ? hi : lo;
                // The state carries rounding errors; the exit does not.
                if (Math.abs(temperature - edge) > 1e-6) {
                    throw new ArithmeticException(
                            "switch search went astray in interval "
                                    + i
                                    + " at "
                                    + s
                                    + " s: thermostat at "
                                    + temperature
                                    + " K instead of "
                                    + edge
                                    + " K");
                }
                temperature = edge;
            }
            record.maximumTemperature[i] = Math.max(record.maximumTemperature[i], temperature);
            record.minimumTemperature[i] = Math.min(record.minimumTemperature[i], temperature);
            if (++events > 200_000) {
                throw new ArithmeticException(
                        "more than 200000 switches in interval "
                                + i
                                + ": thermostat differential "
                                + control.differential()
                                + " K is too small for this unit and house");
            }
        }
        record.endTemperature[i] = temperature;
        record.endHumidityRatio[i] = humidityRatio;
    }

    private void stop(CycleControl control, RunRecord record, double time) {
        stage = STAGE_OFF;
        pressed = false;
        deficit = 0;
        record.event(time, false);
        record.run(onAge);
        lastRun = onAge;
        lockLeft = control.minimumOffSeconds();
        offAge = 0;
        offWater = coilWater;
        offRate = control.reevaporation() * Math.max(0, now[UnitResponse.CONDENSATE]);
    }

    private void lookUp(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            int i,
            int j,
            double s,
            double temperature,
            double bottom,
            double top,
            double set,
            double knownReturn,
            double knownLength) {
        boolean known = knownReturn == knownReturn;
        double ahead = Math.min(drive.interval - s, control.refreshSeconds());
        if (known) {
            ahead = knownLength;
        } else if (stage != STAGE_MODULATING && temperature <= top + 1e-9) {
            ahead = Math.min(ahead, Math.max(lastRun, 60));
        }
        double f = (s + 0.5 * ahead) / drive.interval;
        double outdoor =
                drive.outdoorDryBulb[i] + f * (drive.outdoorDryBulb[j] - drive.outdoorDryBulb[i]);
        double outdoorHumidity = mix(drive.outdoorHumidityRatio, i, j, f);
        double returnAir;
        if (known) {
            returnAir = knownReturn;
        } else {
            returnAir = dot(returned, z, coupled);
            if (stage == STAGE_MODULATING) {
                returnAir += temperature <= top + 1e-9 ? set - temperature : 0;
            } else if (onAge == 0 && temperature <= top + 1e-9) {
                returnAir += lastFall == lastFall ? lastFall : 0.5 * (bottom + top) - temperature;
            } else if (temperature <= top + 0.25 * (top - bottom)) {
                returnAir += 0.5 * (bottom - temperature);
            }
        }
        lookedUpReturn = returnAir;
        lookedUpOutdoor = outdoor;
        fresh = !known;
        // Mean humidity of what lies ahead, by the rates of the last look-up.
        double flow = mix(drive.infiltration, i, j, f);
        double relax = (flow + now[UnitResponse.MOISTURE_SLOPE]) / drive.moistureCapacity;
        double x = relax * ahead;
        double phi2 = x < 1e-4 ? 0.5 - x / 6 : (1 + Math.expm1(-x) / x) / x;
        double change =
                (flow * (outdoorHumidity - humidityRatio)
                                + mix(drive.moistureGain, i, j, f)
                                - now[UnitResponse.MOISTURE]
                                - now[UnitResponse.MOISTURE_SLOPE]
                                        * (humidityRatio - lookedUpHumidityRatio))
                        / drive.moistureCapacity;
        double humid = Math.max(0, humidityRatio + change * ahead * phi2);
        lookedUpHumidityRatio = humid;
        refreshAge = 0;
        switch (stage) {
            case STAGE_HIGH:
                unit.at(1, outdoor, outdoorHumidity, returnAir, humid, now);
                break;
            case STAGE_LOW:
                unit.at(control.lowStage(), outdoor, outdoorHumidity, returnAir, humid, now);
                break;
            default:
                unit.at(control.lowStage(), outdoor, outdoorHumidity, returnAir, humid, low);
                unit.at(
                        0.5 * (1 + control.lowStage()),
                        outdoor,
                        outdoorHumidity,
                        returnAir,
                        humid,
                        mid);
                unit.at(1, outdoor, outdoorHumidity, returnAir, humid, high);
                // Until the next correction of the speed a new look starts from full.
                System.arraycopy(high, 0, now, 0, UnitResponse.RESULTS);
        }
        double q = now[UnitResponse.SENSIBLE];
        if (!(q > -1e9 && q < 1e9)) {
            throw new ArithmeticException(
                    "unit gives a sensible capacity of "
                            + q
                            + " W at outdoor "
                            + outdoor
                            + " K, return "
                            + returnAir
                            + " K, humidity ratio "
                            + humidityRatio);
        }
        if (!known) {
            deficit = Math.min(deficit, Math.max(0, q));
        }
    }

    /** Chooses the speed that reaches the setpoint at the end of the control interval. */
    private void modulate(double s, double length, double set) {
        if (length != controlTable) {
            reach(length);
        }
        boolean starting = onAge == 0 && startUpRate > 0;
        // Where the thermostat would be without the unit, what is left of the start-up allowed for.
        double free = 0;
        double em = startUpRate > 0 ? Math.exp(-startUpRate * length) : 0;
        double hold = starting ? 0 : deficit;
        decays(length, seen);
        for (int k = 0; k < seen; k++) {
            double ak = aStart[k] + b[k] * s;
            double end = ak + b[k] * length + (z[k] - ak) * e[k];
            if (hold > 0) {
                end += hold * (em - e[k]) * lagging[k];
            }
            free += sensor[k] * end;
        }
        double gain = starting ? controlReachStart : controlReach;
        if (length != controlTable) {
            reach(controlTable);
        }
        double qLow = low[UnitResponse.SENSIBLE];
        double qHigh = high[UnitResponse.SENSIBLE];
        double wanted = (free - set) / gain;
        double q = Math.max(qLow, Math.min(qHigh, wanted));
        double x = speedFraction(q);
        for (int r = 0; r < UnitResponse.RESULTS; r++) {
            now[r] = quadratic(low[r], mid[r], high[r], x);
        }
        now[UnitResponse.SENSIBLE] = q;
        now[UnitResponse.MOISTURE_SLOPE] = Math.max(0, now[UnitResponse.MOISTURE_SLOPE]);
        if (starting) {
            deficit = q;
        }
    }

    private static double quadratic(double y0, double y1, double y2, double x) {
        // Through (0, y0), (1/2, y1), (1, y2).
        return y0 + x * (4 * y1 - 3 * y0 - y2 + x * (2 * y0 - 4 * y1 + 2 * y2));
    }

    /** Position between lowest speed (0) and full (1) that has this capacity. */
    private double speedFraction(double q) {
        double y0 = low[UnitResponse.SENSIBLE];
        double y2 = high[UnitResponse.SENSIBLE];
        if (!(y2 > y0)) {
            return 0;
        }
        double y1 = mid[UnitResponse.SENSIBLE];
        double lo = 0;
        double hi = 1;
        double x = (q - y0) / (y2 - y0);
        for (int iteration = 0; iteration < 60; iteration++) {
            double f = quadratic(y0, y1, y2, x) - q;
            if (f > 0) {
                hi = x;
            } else {
                lo = x;
            }
            double slope = 4 * y1 - 3 * y0 - y2 + 2 * x * (2 * y0 - 4 * y1 + 2 * y2);
            double nextX = slope > 0 ? x - f / slope : 0.5 * (lo + hi);
            if (!(nextX >= lo && nextX <= hi)) {
                nextX = 0.5 * (lo + hi);
            }
            if (Math.abs(nextX - x) < 1e-12) {
                return nextX;
            }
            x = nextX;
        }
        return x;
    }

    /** Sets up the closed solution from the present state under the present capacity. */
    private void prepareStretch(double s) {
        double q = stage == STAGE_OFF ? -fanHeatOff : now[UnitResponse.SENSIBLE];
        double lag = stage == STAGE_OFF ? 0 : deficit;
        if (lag < 1e-12 * Math.abs(q)) {
            lag = 0;
        }
        for (int k = 0; k < coupled; k++) {
            double ak = aStart[k] + b[k] * s - supplied[k] * q;
            double pk = lag * lagging[k];
            a[k] = ak;
            p[k] = pk;
            double dk = z[k] - ak - pk;
            d[k] = dk;
            amplitude[k] = sensor[k] * dk;
        }
        lineStart = lineOfInterval + lineSlope * s - lineSupplied * q;
        lagAmplitude = lag * lagGain;
    }

    private double fanHeatOff;

    /** Value at the thermostat and sums over the decaying terms and their first derivative. */
    private void evaluate(double t) {
        decays(t, seen);
        double s0 = 0;
        double a0 = 0;
        double s1 = 0;
        double a1 = 0;
        for (int k = 0; k < seen; k++) {
            double v = amplitude[k] * e[k];
            double w = v * rate[k];
            s0 += v;
            a0 += Math.abs(v);
            s1 += w;
            a1 += Math.abs(w);
        }
        if (lagAmplitude != 0) {
            double v = lagAmplitude * Math.exp(-startUpRate * t);
            double w = v * startUpRate;
            s0 += v;
            a0 += Math.abs(v);
            s1 += w;
            a1 += Math.abs(w);
        }
        sum0 = s0;
        abs0 = a0;
        sum1 = s1;
        abs1 = a1;
        value = lineStart + lineSlope * t + s0;
    }

    /** Sums of the second derivative's terms at the time of the last evaluation. */
    private void evaluateCurvature(double t) {
        decays(t, seen);
        double s2 = 0;
        double a2 = 0;
        for (int k = 0; k < seen; k++) {
            double u = amplitude[k] * e[k] * rate[k] * rate[k];
            s2 += u;
            a2 += Math.abs(u);
        }
        if (lagAmplitude != 0) {
            double u = lagAmplitude * Math.exp(-startUpRate * t) * startUpRate * startUpRate;
            s2 += u;
            a2 += Math.abs(u);
        }
        sum2 = s2;
        abs2 = a2;
    }

    /** Value, slope and curvature at a time of the stretch, for a search by derivatives. */
    private void derivatives(double t) {
        decays(t, seen);
        double f = lineStart + lineSlope * t;
        double f1 = lineSlope;
        double f2 = 0;
        for (int k = 0; k < seen; k++) {
            double v = amplitude[k] * e[k];
            double w = v * rate[k];
            f += v;
            f1 -= w;
            f2 += w * rate[k];
        }
        if (lagAmplitude != 0) {
            double v = lagAmplitude * Math.exp(-startUpRate * t);
            double w = v * startUpRate;
            f += v;
            f1 -= w;
            f2 += w * startUpRate;
        }
        value = f;
        slope = f1;
        curvature = f2;
    }

    private void takeLeft(double t) {
        leftTime = t;
        leftCurved = false;
        leftValue = value;
        leftSlope = lineSlope - sum1;
        leftPos = 0.5 * (abs0 + sum0);
        leftNeg = 0.5 * (sum0 - abs0);
        leftSlopePos = 0.5 * (abs1 - sum1);
        leftSlopeNeg = -0.5 * (abs1 + sum1);
    }

    /** The left end's curvature, which is not always asked for. */
    private void takeLeftCurvature() {
        if (!leftCurved) {
            evaluateCurvature(leftTime);
            leftCurvePos = 0.5 * (abs2 + sum2);
            leftCurveNeg = 0.5 * (sum2 - abs2);
            leftCurved = true;
        }
    }

    /**
     * First time in (0, length] at which the thermostat leaves [lo, hi]; more than length if it
     * stays. Sets {@link #exitHigh}. The stretch starts inside or on an edge. The guess only says
     * where to look first.
     */
    private double firstExit(double length, double lo, double hi, double guess) {
        evaluate(0);
        return exitFrom(0, length, guess, lo, hi);
    }

    /**
     * What lies above an edge of the band on a stretch: its integral, its highest point, and when
     * the thermostat last crossed the edge.
     */
    private void aboveEdge(double length, double edge) {
        aboveOnStretch = 0;
        highestOnStretch = Double.NEGATIVE_INFINITY;
        lastCrossing = 0;
        if (edge == Double.POSITIVE_INFINITY) {
            return;
        }
        double at = 0;
        evaluate(0);
        double slopeHere = lineSlope - sum1;
        double fallingHere = 0.5 * (abs1 + sum1);
        boolean over = value > edge || (value > edge - 1e-9 && slopeHere > 0);
        for (int piece = 0; ; piece++) {
            if (piece > 100_000) {
                throw new ArithmeticException(
                        "thermostat does not leave the edge at " + edge + " K within " + at + " s");
            }
            double before = over ? integral(at) : 0;
            double valueHere = value;
            double to =
                    exitFrom(
                            at,
                            length,
                            over && at == 0 ? lastOver : 0,
                            over ? edge : Double.NEGATIVE_INFINITY,
                            over ? Double.POSITIVE_INFINITY : edge);
            boolean stays = to > length;
            double end = stays ? length : to;
            if (over) {
                evaluate(end);
                aboveOnStretch += integral(end) - before - edge * (end - at);
                double slopeThere = lineSlope - sum1;
                highestOnStretch =
                        highest(
                                at,
                                valueHere,
                                slopeHere,
                                fallingHere,
                                end,
                                value,
                                slopeThere,
                                0.5 * (abs1 + sum1),
                                Math.max(highestOnStretch, Math.max(valueHere, value)),
                                0);
            }
            if (stays) {
                return;
            }
            at = to;
            lastCrossing = to;
            if (!over || at < length) {
                evaluate(to);
                slopeHere = lineSlope - sum1;
                fallingHere = 0.5 * (abs1 + sum1);
            }
            over = !over;
        }
    }

    /**
     * First exit after a time of the stretch at which the thermostat is inside or on an edge;
     * {@link #evaluate} was last asked for that time.
     */
    private double exitFrom(double start, double length, double guess, double lo, double hi) {
        exitHigh = false;
        if (lo == Double.NEGATIVE_INFINITY && hi == Double.POSITIVE_INFINITY) {
            return Double.POSITIVE_INFINITY;
        }
        double shortest = tableInterval * RESOLUTION;
        takeLeft(start);
        double at = start;
        // All at once if no event is expected: most hours have none.
        double width = guess > 0 && 1.5 * guess < length - start ? 1.2 * guess : length - start;
        int guard = 0;
        while (at < length) {
            if (++guard > 2_000_000) {
                throw new ArithmeticException(
                        "search for a switch time does not end: at "
                                + at
                                + " s of "
                                + length
                                + " s");
            }
            double to = width >= length - at ? length : at + width;
            width = to - at;
            evaluate(to);
            int verdict = verdict(to, width, lo, hi);
            if (verdict == UNCLEAR && width <= shortest) {
                verdict = value > hi ? EXIT_HIGH : value < lo ? EXIT_LOW : INSIDE;
            }
            if (verdict == INSIDE) {
                at = to;
                if (at < length) {
                    takeLeft(to);
                    width *= 2;
                }
            } else if (verdict == UNCLEAR) {
                width *= 0.5;
            } else {
                exitHigh = verdict == EXIT_HIGH;
                return root(at, to, exitHigh ? hi : lo);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static final int INSIDE = 0;
    private static final int UNCLEAR = 1;
    private static final int EXIT_HIGH = 2;
    private static final int EXIT_LOW = 3;

    /**
     * What bounds up to a time say; the sums of that end are in the fields. The temperature is a
     * line plus a convex part (terms above 0, which fall) plus a concave one (terms below 0); the
     * convex part lies between its end tangents and its chord, the concave one between its chord
     * and its end tangents. The same holds for the slope, the other way round.
     */
    private int verdict(double to, double width, double lo, double hi) {
        double right = value;
        double rightPos = 0.5 * (abs0 + sum0);
        double rightNeg = 0.5 * (sum0 - abs0);
        double rightSlope = lineSlope - sum1;
        double rightSlopePos = 0.5 * (abs1 - sum1);
        double rightSlopeNeg = -0.5 * (abs1 + sum1);
        double lineLeft = leftValue - leftPos - leftNeg;
        double concaveMeet = meet(leftNeg, leftSlopePos, rightNeg, rightSlopePos, width);
        double convexMeet = meet(leftPos, leftSlopeNeg, rightPos, rightSlopeNeg, width);
        double upper =
                lineLeft
                        + lineSlope * concaveMeet
                        + leftPos
                        + (rightPos - leftPos) * concaveMeet / width
                        + leftNeg
                        + leftSlopePos * concaveMeet;
        double lower =
                lineLeft
                        + lineSlope * convexMeet
                        + leftNeg
                        + (rightNeg - leftNeg) * convexMeet / width
                        + leftPos
                        + leftSlopeNeg * convexMeet;
        boolean rightInside = right >= lo && right <= hi;
        // What begins on an edge is not on the way out by that.
        boolean above = Math.min(lower, right) >= Math.min(lo, leftValue);
        boolean below = Math.max(upper, right) <= Math.max(hi, leftValue);
        if (above && below && rightInside) {
            return INSIDE;
        }
        int byEnd = rightInside ? INSIDE : right > hi ? EXIT_HIGH : EXIT_LOW;
        if (lineSlope + rightSlopePos + leftSlopeNeg >= 0
                || lineSlope + leftSlopePos + rightSlopeNeg <= 0) {
            return byEnd;
        }
        takeLeftCurvature();
        evaluateCurvature(to);
        double rightCurvePos = 0.5 * (abs2 + sum2);
        double rightCurveNeg = 0.5 * (sum2 - abs2);
        concaveMeet = meet(leftSlopeNeg, leftCurvePos, rightSlopeNeg, rightCurvePos, width);
        convexMeet = meet(leftSlopePos, leftCurveNeg, rightSlopePos, rightCurveNeg, width);
        double slopeUpper =
                lineSlope
                        + leftSlopePos
                        + (rightSlopePos - leftSlopePos) * concaveMeet / width
                        + leftSlopeNeg
                        + leftCurvePos * concaveMeet;
        double slopeLower =
                lineSlope
                        + leftSlopeNeg
                        + (rightSlopeNeg - leftSlopeNeg) * convexMeet / width
                        + leftSlopePos
                        + leftCurveNeg * convexMeet;
        if (Math.min(slopeLower, Math.min(leftSlope, rightSlope)) >= 0
                || Math.max(slopeUpper, Math.max(leftSlope, rightSlope)) <= 0) {
            return byEnd;
        }
        double curveUpper = leftCurvePos + rightCurveNeg;
        double curveLower = rightCurvePos + leftCurveNeg;
        if (right < lo
                && below
                && passesOnce(leftValue - lo, leftSlope, rightSlope, curveLower, width)) {
            return EXIT_LOW;
        }
        if (right > hi
                && above
                && passesOnce(hi - leftValue, -leftSlope, -rightSlope, -curveUpper, width)) {
            return EXIT_HIGH;
        }
        if (curveUpper > 0 && curveLower < 0) {
            return UNCLEAR;
        }
        // Curvature of one sign: between its chord and the meeting point of its end tangents.
        double from = Math.max(lo, Math.min(hi, leftValue));
        double meet =
                leftSlope == rightSlope
                        ? 0
                        : (right - from - rightSlope * width) / (leftSlope - rightSlope);
        meet = Math.max(0, Math.min(width, meet));
        double tip = from + leftSlope * meet;
        if (curveLower >= 0) {
            if (right > hi) {
                return tip > lo ? EXIT_HIGH : UNCLEAR;
            }
            if (right < lo) {
                return EXIT_LOW;
            }
            return tip > lo ? INSIDE : UNCLEAR;
        }
        if (right < lo) {
            return tip < hi ? EXIT_LOW : UNCLEAR;
        }
        if (right > hi) {
            return EXIT_HIGH;
        }
        return tip < hi ? INSIDE : UNCLEAR;
    }

    /**
     * Whether what begins at y above 0 and ends below it passes 0 only once, given its slopes at
     * both ends and the least it can be curved: from where its parabola meets 0 on it must fall.
     */
    private static boolean passesOnce(
            double y, double slope, double endSlope, double curvature, double width) {
        if (!(curvature < 0)) {
            return false;
        }
        double root = Math.sqrt(slope * slope - 2 * curvature * Math.max(0, y));
        double safe = (-slope - root) / curvature;
        return safe < width && endSlope - (width - safe) * curvature < 0;
    }

    /** Where the tangents at both ends of an interval meet, from its left end. */
    private static double meet(double y0, double slope0, double y1, double slope1, double width) {
        double x = (y1 - y0 - slope1 * width) / (slope0 - slope1);
        return x > 0 ? Math.min(x, width) : 0;
    }

    /**
     * Crossing of a level between two times with exactly one. The sums of both ends are in the
     * fields.
     */
    private double root(double from, double to, double levelWanted) {
        double width = to - from;
        double fLeft = leftValue - levelWanted;
        double fRight = value - levelWanted;
        double lo = from;
        double hi = to;
        boolean rising = fRight > 0;
        double rightSlope = lineSlope - sum1;
        double x;
        if (rising ? leftSlope <= 0 || rightSlope <= 0 : leftSlope >= 0 || rightSlope >= 0) {
            // The stretch begins on the edge and turns back to it: the beginning is no crossing.
            x = rightSlope != 0 ? to - fRight / rightSlope : from;
        } else {
            // Time as a cubic of the temperature, by value and slope at both ends.
            double rise = fRight - fLeft;
            double u = -fLeft / rise;
            double v = 1 - u;
            x =
                    from
                            + u * u * (3 - 2 * u) * width
                            + u * v * rise * (v / leftSlope - u / rightSlope);
            if (!(x > from && x < to)) {
                x = from + u * width;
            }
        }
        if (!(x > from && x < to)) {
            x = 0.5 * (from + to);
        }
        for (int iteration = 0; iteration < 100; iteration++) {
            derivatives(x);
            double f = value - levelWanted;
            if (f == 0) {
                return x;
            }
            if ((f > 0) == rising) {
                hi = x;
            } else {
                lo = x;
            }
            double denominator = 2 * slope * slope - f * curvature;
            double move = denominator != 0 ? -2 * f * slope / denominator : Double.NaN;
            double next = x + move;
            if (!(next > lo && next < hi)) {
                if (Math.abs(move) < 1e-7) {
                    return Math.max(lo, Math.min(hi, next));
                }
                next = 0.5 * (lo + hi);
                move = next - x;
            }
            // What is left is about the cube of the step over the square of a time constant.
            double step = Math.abs(move);
            double bend =
                    Math.abs(curvature / slope)
                            + Math.max(LEAST_BEND, lagAmplitude != 0 ? startUpRate : 0);
            if (step * step * step * bend * bend < ROOT_ERROR || hi - lo < 1e-9) {
                return next;
            }
            x = next;
        }
        throw new ArithmeticException(
                "switch time did not converge between " + lo + " and " + hi + " s");
    }

    /**
     * Highest temperature between two times with known values and slopes. The slope is the line's,
     * less falling terms that fade, plus rising terms that fade: that bounds it between two times,
     * and the bounds say where no turning point can be higher than the best known. Where it rises
     * at the first time and falls at the last one turning point is looked for; elsewhere the time
     * is halved.
     *
     * @param falling the falling terms of the slope at the first time, as a positive number
     * @param fallingEnd the same at the last time
     */
    private double highest(
            double from,
            double first,
            double left,
            double falling,
            double to,
            double last,
            double right,
            double fallingEnd,
            double known,
            int depth) {
        if (left > 0 && right < 0) {
            // After a start it turns about as long on as it did the last time.
            double guess = from == 0 && onAge == 0 ? lastPeak : Double.NaN;
            return peak(from, left, to, right, guess, known);
        }
        double width = to - from;
        double upper = left + falling - fallingEnd;
        double lower = right + fallingEnd - falling;
        if (upper <= 0 || lower >= 0 || depth == DEEPEST) {
            return known;
        }
        // Between two lines of the steepest slopes it cannot be higher than where they meet.
        double meet = (last - first - lower * width) / (upper - lower);
        if (first + upper * meet <= known + PEAK_MISS) {
            return known;
        }
        double mid = 0.5 * (from + to);
        evaluate(mid);
        double there = value;
        double slopeThere = lineSlope - sum1;
        double fallingThere = 0.5 * (abs1 + sum1);
        double best =
                highest(
                        from,
                        first,
                        left,
                        falling,
                        mid,
                        there,
                        slopeThere,
                        fallingThere,
                        Math.max(known, there),
                        depth + 1);
        return highest(
                mid, there, slopeThere, fallingThere, to, last, right, fallingEnd, best, depth + 1);
    }

    /** Turning point between a time when it rises and one when it falls, if above what is known. */
    private double peak(
            double from, double left, double to, double right, double guess, double known) {
        double best = known;
        double lo = from;
        double hi = to;
        double fLo = left;
        double fHi = right;
        double newton = guess;
        for (int iteration = 1; iteration <= 60; iteration++) {
            double x = newton;
            if (!(x > lo && x < hi)) {
                x = iteration % 3 == 0 ? 0.5 * (lo + hi) : (lo * fHi - hi * fLo) / (fHi - fLo);
            }
            derivatives(x);
            best = Math.max(best, value);
            lastPeak = x;
            if (curvature < 0 && slope * slope < -2 * curvature * PEAK_MISS) {
                break;
            }
            newton = curvature < 0 ? x - slope / curvature : Double.NaN;
            if (slope > 0) {
                lo = x;
                fLo = slope;
            } else {
                hi = x;
                fHi = slope;
            }
        }
        return best;
    }

    /** Integral of the thermostat's temperature from the start of the stretch. */
    private double integral(double t) {
        if (t == 0) {
            return 0;
        }
        decays(t, seen);
        double sum = t * (lineStart + 0.5 * lineSlope * t);
        for (int k = 0; k < seen; k++) {
            sum += amplitude[k] * (1 - e[k]) * inverseRate[k];
        }
        if (lagAmplitude != 0) {
            sum += lagAmplitude * -Math.expm1(-startUpRate * t) / startUpRate;
        }
        return sum;
    }

    private double valueOnStretch(double t) {
        derivatives(t);
        return value;
    }

    /**
     * Mean temperature of the return air on the stretch, weighted by the share of the capacity that
     * is there: what the air is like just after a start matters little.
     */
    private double meanReturn(double length) {
        if (length < (startUpRate > 0 ? INSTANT / startUpRate : INSTANT)) {
            // A start just before a mark: the mean would be a small difference of large numbers.
            return dot(returned, z, coupled);
        }
        decays(length, coupled);
        double half = 0.5 * length;
        double mu = startUpRate;
        double lag = mu > 0 ? -Math.expm1(-mu * length) / mu : 0;
        double whole = 0;
        for (int k = 0; k < coupled; k++) {
            whole +=
                    returned[k]
                            * (length * (a[k] + b[k] * half)
                                    + p[k] * lag
                                    + d[k] * (1 - e[k]) * inverseRate[k]);
        }
        double missing = now[UnitResponse.SENSIBLE] > 0 ? deficit / now[UnitResponse.SENSIBLE] : 0;
        if (!(mu > 0 && missing > 1e-9)) {
            return whole / length;
        }
        double em = Math.exp(-mu * length);
        double ramp = (lag - length * em) / mu;
        double twice = 0.5 * lag * (1 + em);
        double early = 0;
        for (int k = 0; k < coupled; k++) {
            early +=
                    returned[k]
                            * (a[k] * lag
                                    + b[k] * ramp
                                    + p[k] * twice
                                    + d[k] * (1 - em * e[k]) * inverseLagged[k]);
        }
        return (whole - missing * early) / (length - missing * lag);
    }

    private void advance(double length) {
        double em = startUpRate > 0 ? Math.exp(-startUpRate * length) : 0;
        double lag = startUpRate > 0 ? (1 - em) / startUpRate : 0;
        double half = 0.5 * length;
        sensorIntegral = integral(length);
        decays(length, coupled);
        for (int k = 0; k < coupled; k++) {
            double rest = d[k] * e[k];
            zIntegral[k] +=
                    length * (a[k] + b[k] * half) + p[k] * lag + (d[k] - rest) * inverseRate[k];
            z[k] = a[k] + b[k] * length + p[k] * em + rest;
        }
    }

    private void account(
            HouseDrive drive,
            CycleControl control,
            UnitResponse unit,
            RunRecord record,
            int i,
            int j,
            double s,
            double length) {
        boolean running = stage != STAGE_OFF;
        double startFactor = 1;
        if (running) {
            double q = now[UnitResponse.SENSIBLE];
            double lag = deficit;
            double em = startUpRate > 0 ? Math.exp(-startUpRate * length) : 0;
            double lagTime = startUpRate > 0 ? (1 - em) / startUpRate : 0;
            record.delivered[i] += q * length - lag * lagTime;
            record.steady[i] += q * length;
            record.electricity[i] += now[UnitResponse.POWER] * length;
            record.onSeconds[i] += length;
            record.coil[i] = Math.min(record.coil[i], now[UnitResponse.COIL]);
            record.minimumCoil = Math.min(record.minimumCoil, now[UnitResponse.COIL]);
            record.minimumSuction = Math.min(record.minimumSuction, now[UnitResponse.SUCTION]);
            if (q > 0 && length > 0) {
                startFactor = Math.max(0, 1 - lag / q * lagTime / length);
            }
            deficit *= em;
            onAge += length;
            if (stage == STAGE_LOW) {
                lowAge += length;
            }
            refreshAge += length;
        } else {
            record.electricity[i] += control.offPower() * length;
            record.heatIn += fanHeatOff * length;
            lockLeft -= length;
            if (lockLeft < 1e-9) {
                lockLeft = 0;
            }
        }
        moisture(drive, control, record, i, j, s, length, running, startFactor);
        if (length > 0) {
            double air = length < INSTANT ? dot(sensor, z, seen) : sensorIntegral / length;
            unit.passed(length, running ? now : null, startFactor, air);
        }
    }

    private void moisture(
            HouseDrive drive,
            CycleControl control,
            RunRecord record,
            int i,
            int j,
            double s,
            double length,
            boolean running,
            double startFactor) {
        double f = (s + 0.5 * length) / drive.interval;
        double flow = mix(drive.infiltration, i, j, f);
        double outdoor = mix(drive.outdoorHumidityRatio, i, j, f);
        double gain = mix(drive.moistureGain, i, j, f);
        double capacity = drive.moistureCapacity;
        double evaporated = 0;
        double r0 = 0;
        double r1 = 0;
        if (running) {
            r0 = startFactor * now[UnitResponse.MOISTURE];
            r1 = r0 > 0 ? startFactor * now[UnitResponse.MOISTURE_SLOPE] : 0;
        } else {
            evaporated = Math.min(coilWater, evaporated(offAge + length) - evaporated(offAge));
            offAge += length;
            coilWater -= evaporated;
        }
        double w0 = humidityRatio;
        double in = flow * outdoor + gain + (length > 0 ? evaporated / length : 0);
        double w;
        double integral;
        double removed;
        double k = (flow + r1) / capacity;
        double x = k * length;
        double drive0 = in - r0 + r1 * lookedUpHumidityRatio - (flow + r1) * w0;
        // phi1 = (1 - e^-x)/x, phi2 = (1 - phi1)/x: safe for slow houses.
        double phi1 = x < 1e-5 ? 1 - 0.5 * x : -Math.expm1(-x) / x;
        double phi2 = x < 1e-4 ? 0.5 - x / 6 : (1 - phi1) / x;
        w = w0 + drive0 / capacity * length * phi1;
        integral = w0 * length + drive0 / capacity * length * length * phi2;
        removed = r0 * length + r1 * (integral - lookedUpHumidityRatio * length);
        if (r0 > 0 && removed < 0) {
            // The air got drier than the coil on the way: nothing condenses.
            removed = 0;
            k = flow / capacity;
            x = k * length;
            drive0 = in - flow * w0;
            phi1 = x < 1e-5 ? 1 - 0.5 * x : -Math.expm1(-x) / x;
            phi2 = x < 1e-4 ? 0.5 - x / 6 : (1 - phi1) / x;
            w = w0 + drive0 / capacity * length * phi1;
            integral = w0 * length + drive0 / capacity * length * length * phi2;
        }
        humidityRatio = w;
        record.waterIn += (flow * outdoor + gain) * length - flow * integral;
        record.removedWater[i] += removed - evaporated;
        record.evaporatedWater += evaporated;
        if (running) {
            // What ducts bring in or carry off on the way differs from what condenses; both follow
            // the rooms' humidity alike.
            double difference = startFactor * now[UnitResponse.CONDENSATE] - r0;
            double condensed = Math.max(0, removed + difference * length);
            double steady = Math.max(0, now[UnitResponse.CONDENSATE]);
            double holds = Math.max(control.retainedWaterSeconds() * steady, coilWater);
            double drained = Math.max(0, coilWater + condensed - holds);
            record.condensedWater += condensed;
            record.drainedWater += drained;
            coilWater += condensed - drained;
        }
    }

    /**
     * Water given back since the unit stopped: a rate that falls linearly until the coil is dry.
     */
    private double evaporated(double age) {
        if (offRate <= 0 || offWater <= 0) {
            return 0;
        }
        double dry = 2 * offWater / offRate;
        double t = Math.min(age, dry);
        return offRate * t * (1 - 0.5 * t / dry);
    }

    /** Points of the trace on the stretch that has just been run; a straight line of humidity. */
    private void trace(RunRecord record, double begin, double length, double humidityBefore) {
        while (traceNext < traceSlots.length && traceSlots[traceNext] < begin + length) {
            double t = Math.max(0, traceSlots[traceNext] - begin);
            record.traceTemperature[traceNext] = valueOnStretch(t);
            record.traceHumidityRatio[traceNext] =
                    humidityBefore + (t > 0 ? t / length : 0) * (humidityRatio - humidityBefore);
            traceNext++;
        }
    }

    private static double mix(double[] values, int i, int j, double f) {
        return values[i] + f * (values[j] - values[i]);
    }

    /**
     * Scalar product of the first so many entries; four sums at a time, so that an addition need
     * not wait for the last one.
     */
    static double dot(double[] x, double[] y, int count) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            s0 += x[k] * y[k];
            s1 += x[k + 1] * y[k + 1];
            s2 += x[k + 2] * y[k + 2];
            s3 += x[k + 3] * y[k + 3];
        }
        for (; k < count; k++) {
            s0 += x[k] * y[k];
        }
        return (s0 + s1) + (s2 + s3);
    }
}
