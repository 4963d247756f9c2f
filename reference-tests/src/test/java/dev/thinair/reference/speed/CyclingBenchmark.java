package dev.thinair.reference.speed;

import dev.thinair.cycling.kernel.CycleControl;
import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.cycling.kernel.ThermostatEngine;
import dev.thinair.cycling.kernel.UnitResponse;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A year of a 60-state house with a thermostat: exact events against stepping by the minute.
 *
 * <p>All three include the eigen decomposition or the matrix exponential, use the same weather and
 * the same unit, whose capacity follows outdoor and return air. The engine keeps the water balance
 * and the hourly records besides, the peers only starts and hours of running.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CyclingBenchmark {

    private static final int STATES = 60;
    private static final int HOURS = 8760;
    private static final double HALF_BAND = 0.5;
    private static final double SETPOINT = 297.15;
    private static final double TAU = 60;

    /** Mass of furniture and walls: at 1.3 about 4,000 starts a year, at 0.4 about 13,000. */
    @Param({"1.3", "0.4"})
    public double mass;

    final double[] capacity = new double[STATES];
    final double[][] conductance = new double[STATES][STATES];
    private final double[] outside = new double[STATES];
    private double[] outdoor;
    private double[] start;
    double[][] heat;
    HouseDrive drive;
    private final double[] out = new double[UnitResponse.RESULTS];

    /** Builds the house and its year. */
    @Setup
    public void build() {
        capacity[0] = 3e6 * mass;
        capacity[1] = 7e6 * mass;
        link(0, 1, 1500);
        int node = 2;
        for (int w = 0; w < 14; w++) {
            int layers = w < 10 ? 5 : 2;
            double area = 14;
            for (int l = 0; l < layers; l++) {
                capacity[node] = area * mass * (l == 0 ? 9e3 : 16e3);
                link(l == 0 ? 0 : node - 1, node, area * (l == 0 ? 7.7 : w % 2 == 0 ? 5 : 10));
                node++;
            }
            lose(node - 1, area * (w % 3 == 0 ? 0.6 : 0.9));
        }
        lose(0, 130);
        outdoor = new double[HOURS + 1];
        heat = new double[HOURS + 1][STATES];
        for (int h = 0; h <= HOURS; h++) {
            double day = h / 24.0;
            outdoor[h] =
                    287.15
                            - 11 * Math.cos(2 * Math.PI * (day - 20) / 365)
                            + 7 * Math.cos(2 * Math.PI * (h - 15) / 24)
                            + 3 * Math.sin(2 * Math.PI * day / 5.3);
            double sun = Math.max(0, Math.sin(Math.PI * (h % 24 - 6) / 12));
            for (int i = 0; i < STATES; i++) {
                heat[h][i] = outside[i] * (outdoor[h] + (i > 0 ? 10 * sun : 0));
            }
            heat[h][0] += 700 + 3000 * sun;
            heat[h][1] += 2000 * sun;
        }
        double[] humid = new double[HOURS + 1];
        double[] flow = new double[HOURS + 1];
        double[] gain = new double[HOURS + 1];
        Arrays.fill(humid, 0.009);
        Arrays.fill(flow, 0.05);
        Arrays.fill(gain, 1e-4);
        drive = HouseDrive.of(3600, false, heat, outdoor, humid, flow, gain, 5000);
        start = engine().heldAtSetpoint(drive, control());
    }

    private void link(int i, int j, double g) {
        conductance[i][i] += g;
        conductance[j][j] += g;
        conductance[i][j] -= g;
        conductance[j][i] -= g;
    }

    private void lose(int i, double g) {
        conductance[i][i] += g;
        outside[i] += g;
    }

    private static CycleControl control() {
        return CycleControl.single(SETPOINT, 2 * HALF_BAND).withStartUp(TAU);
    }

    private ThermostatEngine engine() {
        double[] air = new double[STATES];
        air[0] = 1;
        return new ThermostatEngine(ModalHouse.of(capacity, conductance), air, air, air);
    }

    /** Capacity follows outdoor and return air. */
    static void unit(
            double stage, double to, double wo, double returned, double w, double[] result) {
        result[UnitResponse.SENSIBLE] =
                stage * (9500 * (1 - 0.012 * (to - 308)) + 350 * (returned - 297));
        result[UnitResponse.MOISTURE] = Math.max(0, stage * 0.22 * (w - 0.0075));
        result[UnitResponse.MOISTURE_SLOPE] = result[UnitResponse.MOISTURE] > 0 ? stage * 0.22 : 0;
        result[UnitResponse.POWER] = stage * 2600;
        result[UnitResponse.COIL] = 283;
        result[UnitResponse.SUCTION] = 278;
        result[UnitResponse.CONDENSATE] = result[UnitResponse.MOISTURE];
    }

    /** The year with exact events, eigen decomposition included. */
    @Benchmark
    public RunRecord exactEvents() {
        return engine().run(drive, control(), CyclingBenchmark::unit, start, 0.009, 0);
    }

    /** The eigen decomposition alone. */
    @Benchmark
    public ModalHouse eigen() {
        return ModalHouse.of(capacity, conductance);
    }

    /** Stepping by the minute, temperatures advanced by a stored matrix exponential. */
    @Benchmark
    public double[] denseMinutes() {
        return new Minutes(true, 60).year();
    }

    /** Stepping by the minute in modal coordinates. */
    @Benchmark
    public double[] modalMinutes() {
        return new Minutes(false, 60).year();
    }

    /** A thermostat looked at once a step; between looks the linear house is exact. */
    final class Minutes {
        private final boolean dense;
        private final double dt;
        private final double[] rate = new double[STATES];
        private final double[][] vector = new double[STATES][STATES];
        private final double[] decay = new double[STATES];
        private final double[][] phi = new double[STATES][STATES];
        private final double[] sensor = new double[STATES];
        private final double[] result = new double[UnitResponse.RESULTS];

        Minutes(boolean dense, double dt) {
            this.dense = dense;
            this.dt = dt;
            double[][] s = new double[STATES][STATES];
            for (int i = 0; i < STATES; i++) {
                for (int j = 0; j < STATES; j++) {
                    s[i][j] = conductance[i][j] / Math.sqrt(capacity[i] * capacity[j]);
                }
            }
            EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(s, false));
            for (int k = 0; k < STATES; k++) {
                rate[k] = eigen.getRealEigenvalue(k);
                decay[k] = Math.exp(-rate[k] * dt);
                for (int i = 0; i < STATES; i++) {
                    vector[i][k] = eigen.getV().getEntry(i, k);
                }
                sensor[k] = vector[0][k] / Math.sqrt(capacity[0]);
            }
            if (dense) {
                for (int i = 0; i < STATES; i++) {
                    for (int j = 0; j < STATES; j++) {
                        double sum = 0;
                        for (int k = 0; k < STATES; k++) {
                            sum += vector[i][k] * decay[k] * vector[j][k];
                        }
                        phi[i][j] = sum * Math.sqrt(capacity[j] / capacity[i]);
                    }
                }
            }
        }

        /** Hours of running and starts in a year. */
        double[] year() {
            int steps = (int) Math.round(3600 / dt);
            double[] x = new double[STATES];
            double[] y = new double[STATES];
            double[] push = new double[STATES];
            double[] ramp = new double[STATES];
            double[] cool = new double[STATES];
            double[] f0 = new double[STATES];
            double[] f1 = new double[STATES];
            double[] z = new double[STATES];
            for (int i = 0; i < STATES; i++) {
                x[i] = start[i];
            }
            toModal(x, z);
            forcing(heat[0], f0);
            // What 1 W into the air does in one step.
            for (int k = 0; k < STATES; k++) {
                cool[k] = sensor[k] * (1 - decay[k]) / rate[k];
            }
            double[] coolNodes = new double[STATES];
            toNodes(cool, coolNodes);
            double[] pushNodes = new double[STATES];
            double[] rampNodes = new double[STATES];
            boolean on = false;
            double age = 0;
            double running = 0;
            int starts = 0;
            double air = x[0];
            for (int h = 0; h < HOURS; h++) {
                forcing(heat[h + 1], f1);
                for (int k = 0; k < STATES; k++) {
                    double slope = (f1[k] - f0[k]) / 3600;
                    double gain = (1 - decay[k]) / rate[k];
                    // Exact for linear forcing: constant part and what a step adds to it.
                    push[k] = f0[k] * gain + slope * (dt - gain) / rate[k];
                    ramp[k] = slope * gain * dt;
                }
                if (dense) {
                    toNodes(push, pushNodes);
                    toNodes(ramp, rampNodes);
                }
                for (int m = 0; m < steps; m++) {
                    if (on ? air <= SETPOINT - HALF_BAND : air >= SETPOINT + HALF_BAND) {
                        on = !on;
                        age = 0;
                        starts += on ? 1 : 0;
                    }
                    double q = 0;
                    if (on) {
                        double f = (m + 0.5) / steps;
                        unit(
                                1,
                                outdoor[h] + f * (outdoor[h + 1] - outdoor[h]),
                                0.009,
                                air,
                                0.009,
                                result);
                        double lag =
                                age > 20 * TAU
                                        ? 0
                                        : TAU / dt * Math.exp(-age / TAU) * -Math.expm1(-dt / TAU);
                        q = result[UnitResponse.SENSIBLE] * (1 - lag);
                        age += dt;
                        running += dt;
                    }
                    if (dense) {
                        for (int i = 0; i < STATES; i++) {
                            double[] row = phi[i];
                            double sum = 0;
                            for (int j = 0; j < STATES; j++) {
                                sum += row[j] * x[j];
                            }
                            y[i] = sum + pushNodes[i] + m * rampNodes[i] - q * coolNodes[i];
                        }
                        double[] swap = x;
                        x = y;
                        y = swap;
                        air = x[0];
                    } else {
                        double sum = 0;
                        for (int k = 0; k < STATES; k++) {
                            double v = z[k] * decay[k] + push[k] + m * ramp[k] - q * cool[k];
                            z[k] = v;
                            sum += sensor[k] * v;
                        }
                        air = sum;
                    }
                }
                double[] swap = f0;
                f0 = f1;
                f1 = swap;
            }
            return new double[] {running / 3600, starts};
        }

        private void toModal(double[] t, double[] z) {
            for (int k = 0; k < STATES; k++) {
                double sum = 0;
                for (int i = 0; i < STATES; i++) {
                    sum += vector[i][k] * Math.sqrt(capacity[i]) * t[i];
                }
                z[k] = sum;
            }
        }

        private void forcing(double[] q, double[] f) {
            Arrays.fill(f, 0);
            for (int i = 0; i < STATES; i++) {
                if (q[i] != 0) {
                    double v = q[i] / Math.sqrt(capacity[i]);
                    for (int k = 0; k < STATES; k++) {
                        f[k] += v * vector[i][k];
                    }
                }
            }
        }

        private void toNodes(double[] z, double[] t) {
            for (int i = 0; i < STATES; i++) {
                double sum = 0;
                for (int k = 0; k < STATES; k++) {
                    sum += vector[i][k] * z[k];
                }
                t[i] = sum / Math.sqrt(capacity[i]);
            }
        }
    }

    /**
     * Prints starts and hours of the engine and of ever finer stepping.
     *
     * @param args masses; those of the benchmark if there are none
     */
    public static void main(String[] args) {
        for (String arg : args.length > 0 ? args : new String[] {"1.3", "0.4"}) {
            CyclingBenchmark b = new CyclingBenchmark();
            b.mass = Double.parseDouble(arg);
            b.build();
            RunRecord run = b.exactEvents();
            System.out.println(
                    arg
                            + " exact: "
                            + run.totalStarts()
                            + " starts, "
                            + run.totalOnSeconds() / 3600
                            + " h");
            for (double dt : new double[] {60, 10, 1}) {
                System.out.println(dt + " s: " + Arrays.toString(b.new Minutes(false, dt).year()));
            }
        }
    }
}
