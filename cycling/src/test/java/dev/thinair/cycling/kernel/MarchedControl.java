package dev.thinair.cycling.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A thermostat and a unit whose figures depend on its stage alone, on a {@link MarchedHouse}: the
 * rules that {@link ThermostatEngine} and {@link CycleControl} state, written a second time.
 */
final class MarchedControl {

    final MarchedHouse house;
    private final HouseDrive drive;
    private final CycleControl c;
    private final UnitResponse unit;
    private final boolean two;
    private final boolean variable;

    final List<Double> events = new ArrayList<>();
    final int[] starts;
    final double[] on;
    final double[] mean;
    final double[] end;
    final double[] highest;
    final double[] lowest;
    final double[] delivered;
    final double[] steady;
    final double[] electricity;
    final double[] above;
    final double[] removed;
    final double[] coil;
    final double[] endWater;
    double heatIn;
    double waterIn;
    double suction = Double.POSITIVE_INFINITY;
    double condensed;
    double drained;
    double evaporated;
    double onCoil;
    double longestRun;
    double shortestRun = Double.POSITIVE_INFINITY;
    final List<Double> trace = new ArrayList<>();
    final List<Double> traceWater = new ArrayList<>();

    private double w;
    private double rest; // of the humidity, where the last stretch led
    private double pull; // 1/s
    private double stage;
    private double[] now = new double[UnitResponse.RESULTS];
    private boolean pressed;
    private double lowAge;
    private double runAge;
    private double refreshAge;
    private double lock;
    private double offAge;
    private double offWater;
    private double offRate;

    MarchedControl(MarchedHouse house, CycleControl c, UnitResponse unit, double w) {
        this.house = house;
        this.drive = house.drive;
        this.c = c;
        this.unit = unit;
        this.w = w;
        two = c.staging() == CycleControl.Staging.TWO;
        variable = c.staging() == CycleControl.Staging.VARIABLE;
        int count = drive.intervals();
        starts = new int[count];
        on = new double[count];
        mean = new double[count];
        end = new double[count];
        highest = new double[count];
        lowest = new double[count];
        delivered = new double[count];
        steady = new double[count];
        electricity = new double[count];
        above = new double[count];
        removed = new double[count];
        coil = new double[count];
        endWater = new double[count];
        Arrays.fill(coil, Double.POSITIVE_INFINITY);
    }

    private double[] figures(double of) {
        double[] out = new double[UnitResponse.RESULTS];
        unit.at(of, 300, 0.01, 297, 0.009, out);
        return out;
    }

    private void go(double to) {
        stage = to;
        now = figures(to);
        house.taken = now[UnitResponse.SENSIBLE];
    }

    MarchedControl run(double traceSeconds) {
        double interval = drive.interval;
        house.taken = -c.fanHeatOff();
        for (int i = 0; i < drive.intervals(); i++) {
            double set = c.setpointAt(i);
            double onEdge = set + 0.5 * c.differential();
            double offEdge = set - 0.5 * c.differential();
            double second = onEdge + c.secondStageDifferential();
            double begin = i * interval;
            double integral = house.y[house.n];
            double felt = house.felt();
            highest[i] = felt;
            lowest[i] = felt;
            refreshAge = 0;
            for (int node = 0; node < house.n; node++) {
                heatIn += 0.5 * interval * (drive.heat[i][node] + drive.heat[drive.end(i)][node]);
            }
            int stretches = 0;
            while (begin + interval - house.time > 1e-9) {
                if (++stretches > 10_000) {
                    throw new IllegalStateException(
                            "stands still at " + house.time + " s, stage " + stage + ", " + felt);
                }
                change(i, felt, onEdge, offEdge, second);
                boolean running = stage > 0;
                double left = begin + interval - house.time;
                double cap = left;
                double lo = Double.NEGATIVE_INFINITY;
                double hi = Double.POSITIVE_INFINITY;
                if (!running) {
                    if (lock > 0) {
                        cap = Math.min(cap, lock);
                    } else {
                        hi = onEdge;
                    }
                } else {
                    if (refreshAge >= c.refreshSeconds() - 1e-9) {
                        refreshAge = 0;
                    }
                    cap = Math.min(cap, c.refreshSeconds() - refreshAge);
                    lo = two && stage == 1 && !pressed ? onEdge : offEdge;
                    if (two && stage < 1) {
                        hi = second;
                        cap = Math.min(cap, c.secondStageSeconds() - lowAge);
                    }
                    if (variable) {
                        cap = Math.min(cap, Math.min(c.controlSeconds(), interval));
                        modulate(set, cap);
                    }
                }
                felt = stretch(i, cap, lo, hi, onEdge, traceSeconds);
                highest[i] = Math.max(highest[i], felt);
                lowest[i] = Math.min(lowest[i], felt);
            }
            mean[i] = (house.y[house.n] - integral) / interval;
            end[i] = felt;
            endWater[i] = w;
        }
        if (stage > 0) {
            longestRun = Math.max(longestRun, runAge);
        }
        if (traceSeconds > 0 && trace.size() * traceSeconds <= house.time + 1e-6) {
            trace.add(house.felt());
            traceWater.add(w);
        }
        return this;
    }

    private void change(int i, double felt, double onEdge, double offEdge, double second) {
        if (stage == 0) {
            if (felt >= onEdge && lock <= 1e-9) {
                events.add(house.time);
                starts[i]++;
                runAge = 0;
                lowAge = 0;
                refreshAge = 0;
                go(variable || two && felt < second ? c.lowStage() : 1);
                house.missing = house.tau > 0 ? house.taken : 0;
            }
        } else if (felt <= offEdge) {
            events.add(house.time);
            longestRun = Math.max(longestRun, runAge);
            shortestRun = Math.min(shortestRun, runAge);
            offWater = onCoil;
            offRate = c.reevaporation() * now[UnitResponse.CONDENSATE];
            offAge = 0;
            lock = c.minimumOffSeconds();
            stage = 0;
            pressed = false;
            house.taken = -c.fanHeatOff();
            house.missing = 0;
        } else if (two
                && stage < 1
                && (felt >= second || lowAge >= c.secondStageSeconds() - 1e-9)) {
            double was = house.taken;
            pressed = felt < second;
            go(1);
            house.missing += house.tau > 0 ? house.taken - was : 0;
            refreshAge = 0;
        } else if (two && stage == 1 && !pressed && felt <= onEdge) {
            double was = house.taken;
            go(c.lowStage());
            house.missing *= house.taken / was;
            lowAge = 0;
            refreshAge = 0;
        }
    }

    /** The constant capacity that brings the thermostat to its setpoint at the next correction. */
    private void modulate(double set, double cap) {
        boolean starting = runAge == 0 && house.tau > 0;
        double[] at = house.y.clone();
        double time = house.time;
        double hold = starting ? 0 : house.missing;
        double[] felt = new double[2];
        for (int k = 0; k < 2; k++) {
            house.taken = k;
            house.missing = starting ? k : hold;
            house.march(cap);
            felt[k] = house.felt();
            house.y = at.clone();
            house.time = time;
        }
        double wanted = (felt[0] - set) / (felt[0] - felt[1]);
        double lowest = figures(c.lowStage())[UnitResponse.SENSIBLE];
        double full = figures(1)[UnitResponse.SENSIBLE];
        double q = Math.max(lowest, Math.min(full, wanted));
        // The speed at which the unit gives that, by halving.
        double lo = c.lowStage();
        double hi = 1;
        while (hi - lo > 1e-14) {
            double mid = 0.5 * (lo + hi);
            if (figures(mid)[UnitResponse.SENSIBLE] < q) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        go(hi);
        house.taken = q;
        house.missing = starting ? q : hold;
    }

    /** Runs for so long at most, or until the thermostat leaves the band; what it feels then. */
    private double stretch(
            int i, double cap, double lo, double hi, double onEdge, double traceSeconds) {
        double begin = house.time;
        double end = begin + cap;
        double q = house.taken;
        double missedBefore = house.missed(1e9);
        boolean watch = hi > onEdge;
        boolean left = false;
        // On an edge it counts as what it is about to be.
        boolean over = house.feltIn(1e-3) > onEdge;
        while (!left && end - house.time > 1e-9) {
            double step = Math.min(house.longest(), end - house.time);
            double next = house.feltIn(step);
            if (next > hi || next < lo) {
                step = house.crossing(next > hi ? hi : lo, next > hi, step);
                left = true;
            }
            boolean crosses = false;
            next = house.feltIn(step);
            if (watch && !left && next > onEdge != over) {
                step = house.crossing(onEdge, next > onEdge, step);
                crosses = true;
            }
            while (traceSeconds > 0 && trace.size() * traceSeconds < house.time + step - 1e-12) {
                trace.add(house.feltIn(trace.size() * traceSeconds - house.time));
            }
            if (watch && over) {
                highest[i] = Math.max(highest[i], house.highest(step));
            }
            double was = house.y[house.n];
            house.step(step);
            if (watch && over) {
                above[i] += house.y[house.n] - was - onEdge * step;
            }
            over = crosses != over;
        }
        double length = house.time - begin;
        double reached = house.felt();
        account(i, begin, length, q, missedBefore - house.missed(1e9));
        while (traceWater.size() < trace.size()) {
            double ago = house.time - traceWater.size() * traceSeconds;
            traceWater.add(rest + (w - rest) * Math.exp(pull * ago));
        }
        return left ? (Math.abs(reached - hi) < Math.abs(reached - lo) ? hi : lo) : reached;
    }

    private void account(int i, double begin, double length, double q, double missed) {
        double given = 0;
        double lost = 0;
        double condenses = 0;
        if (stage > 0) {
            double share = 1 - missed / (q * length);
            delivered[i] += q * length - missed;
            steady[i] += q * length;
            electricity[i] += now[UnitResponse.POWER] * length;
            on[i] += length;
            coil[i] = Math.min(coil[i], now[UnitResponse.COIL]);
            suction = Math.min(suction, now[UnitResponse.SUCTION]);
            lost = now[UnitResponse.MOISTURE] * share;
            condenses = now[UnitResponse.CONDENSATE] * share * length;
            double holds =
                    Math.max(onCoil, c.retainedWaterSeconds() * now[UnitResponse.CONDENSATE]);
            condensed += condenses;
            double runsOff = Math.max(0, onCoil + condenses - holds);
            drained += runsOff;
            onCoil += condenses - runsOff;
            runAge += length;
            refreshAge += length;
            lowAge += two && stage < 1 ? length : 0;
        } else {
            // A rate that falls along a line to nothing when the coil is dry: a triangle's area.
            double dry = offRate > 0 ? 2 * offWater / offRate : 0;
            double r0 = dry > 0 ? offRate * Math.max(0, 1 - offAge / dry) : 0;
            double r1 = dry > 0 ? offRate * Math.max(0, 1 - (offAge + length) / dry) : 0;
            double until = dry > 0 ? Math.min(length, Math.max(0, dry - offAge)) : 0;
            given = 0.5 * (r0 + r1) * until;
            evaporated += given;
            onCoil -= given;
            offAge += length;
            lock = lock - length < 1e-9 ? 0 : lock - length;
            electricity[i] += c.offPower() * length;
            heatIn += c.fanHeatOff() * length;
        }
        removed[i] += lost * length - given;
        // Outdoor air and gains as in the middle of the stretch; then an exponential.
        double mid = (begin + 0.5 * length) / drive.interval - i;
        int j = drive.end(i);
        double flow = drive.infiltration[i] + mid * (drive.infiltration[j] - drive.infiltration[i]);
        double outdoor =
                drive.outdoorHumidityRatio[i]
                        + mid * (drive.outdoorHumidityRatio[j] - drive.outdoorHumidityRatio[i]);
        double gain = drive.moistureGain[i] + mid * (drive.moistureGain[j] - drive.moistureGain[i]);
        rest = outdoor + (gain - lost + given / length) / flow;
        pull = flow / drive.moistureCapacity;
        double decay = Math.exp(-pull * length);
        double start = w;
        w = rest + (start - rest) * decay;
        double integral =
                rest * length + (start - rest) * (1 - decay) * drive.moistureCapacity / flow;
        waterIn += (flow * outdoor + gain) * length - flow * integral;
    }
}
