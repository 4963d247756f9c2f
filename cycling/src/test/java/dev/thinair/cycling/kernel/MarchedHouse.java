package dev.thinair.cycling.kernel;

/**
 * A house of a few nodes marched at its nodes by Runge-Kutta steps of a second or two: no modes, no
 * tables, no bounds. For houses whose quickest node takes minutes its error is below 1e-9 K a day,
 * so that it judges the engine as a closed form would.
 */
final class MarchedHouse {

    static final double STEP = 2;

    final int n;
    final double[] capacity;
    final double[][] conductance;
    final double[] sensor;
    final double[] returned;
    final double[] supply;
    final HouseDrive drive;
    final double tau; // start-up time constant, s; 0 for none

    /**
     * Node temperatures, then the integrals of thermostat, return air and missing share times it.
     */
    double[] y;

    double time;

    /** Heat taken, W, once up to capacity, and what is missing of it now. */
    double taken;

    double missing;

    private final double[][] k;
    private final double[] at;

    MarchedHouse(
            double[] capacity,
            double[][] conductance,
            double[] sensor,
            double[] returned,
            double[] supply,
            HouseDrive drive,
            double tau,
            double[] start) {
        n = capacity.length;
        this.capacity = capacity;
        this.conductance = conductance;
        this.sensor = sensor;
        this.returned = returned;
        this.supply = supply;
        this.drive = drive;
        this.tau = tau;
        y = java.util.Arrays.copyOf(start, n + 3);
        k = new double[4][n + 3];
        at = new double[n + 3];
    }

    /** Links a node to those before it and to outdoors at random; the latter conductance, W/K. */
    static double link(double[][] conductance, int node, java.util.Random random) {
        for (int j = 0; j < node; j++) {
            double g = 30 + 300 * random.nextDouble();
            conductance[node][j] -= g;
            conductance[j][node] -= g;
            conductance[node][node] += g;
            conductance[j][j] += g;
        }
        double out = 20 + 100 * random.nextDouble();
        conductance[node][node] += out;
        return out;
    }

    double felt() {
        return weigh(sensor, y);
    }

    double drawn() {
        return weigh(returned, y);
    }

    private double weigh(double[] by, double[] of) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += by[i] * of[i];
        }
        return sum;
    }

    double left(double seconds) {
        return tau > 0 ? missing * Math.exp(-seconds / tau) : 0;
    }

    /** What was missing over the next seconds, J. */
    double missed(double seconds) {
        return tau > 0 ? missing * tau * -Math.expm1(-seconds / tau) : 0;
    }

    private void slope(double[] of, double ahead, double[] out) {
        double mark = (time + ahead) / drive.interval;
        // A step ends at a mark at the latest: the interval is that of its middle.
        int i = (int) Math.floor((time + 0.5 * stepNow) / drive.interval);
        double f = mark - i;
        int j = drive.end(i);
        double short0 = left(ahead);
        for (int node = 0; node < n; node++) {
            double q =
                    (1 - f) * drive.heat[i][node]
                            + f * drive.heat[j][node]
                            - supply[node] * (taken - short0);
            for (int m = 0; m < n; m++) {
                q -= conductance[node][m] * of[m];
            }
            out[node] = q / capacity[node];
        }
        out[n] = weigh(sensor, of);
        out[n + 1] = weigh(returned, of);
        out[n + 2] = short0 * out[n + 1];
    }

    private double stepNow;

    /** State a while on, not beyond the next mark; nothing changes. */
    double[] look(double seconds) {
        stepNow = seconds;
        slope(y, 0, k[0]);
        for (int p = 1; p < 4; p++) {
            double part = p == 3 ? seconds : 0.5 * seconds;
            for (int i = 0; i < n; i++) {
                at[i] = y[i] + part * k[p - 1][i];
            }
            slope(at, part, k[p]);
        }
        double[] out = y.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] += seconds * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]) / 6;
        }
        return out;
    }

    double feltIn(double seconds) {
        return weigh(sensor, look(seconds));
    }

    void step(double seconds) {
        y = look(seconds);
        time += seconds;
        missing = left(seconds);
    }

    /** Longest step from here: to the next multiple of the step, or to the next mark. */
    double longest() {
        double to = (Math.floor(time / STEP + 1e-9) + 1) * STEP - time;
        double mark = (Math.floor(time / drive.interval + 1e-9) + 1) * drive.interval - time;
        return Math.min(to, mark);
    }

    void march(double seconds) {
        double end = time + seconds;
        while (end - time > 1e-9) {
            step(Math.min(longest(), end - time));
        }
    }

    /** First moment of a step at which the thermostat is past a level, which it is at its end. */
    double crossing(double level, boolean rising, double step) {
        double lo = 0;
        double hi = step;
        while (hi - lo > 1e-11) {
            double mid = 0.5 * (lo + hi);
            double felt = feltIn(mid);
            if (rising ? felt > level : felt < level) {
                hi = mid;
            } else {
                lo = mid;
            }
        }
        return hi;
    }

    /** Highest temperature at the thermostat in a step with one turning point at most. */
    double highest(double step) {
        double lo = 0;
        double hi = step;
        while (hi - lo > 1e-3) {
            double a = lo + (hi - lo) / 3;
            double b = hi - (hi - lo) / 3;
            if (feltIn(a) < feltIn(b)) {
                lo = a;
            } else {
                hi = b;
            }
        }
        return Math.max(feltIn(hi), Math.max(felt(), feltIn(step)));
    }
}
