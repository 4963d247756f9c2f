package dev.thinair.cycling.kernel;

import java.util.Arrays;

/** An invented house of one air node, one node of furniture and layered walls, for engine tests. */
final class TestHouse {

    final int n;
    final double[] capacity;
    final double[][] conductance;
    final double[] outside;

    TestHouse(int walls, int layers, double mass) {
        n = 2 + walls * layers;
        capacity = new double[n];
        conductance = new double[n][n];
        outside = new double[n];
        capacity[0] = 1.5e6;
        capacity[1] = 6e6 * mass;
        link(0, 1, 600);
        for (int w = 0; w < walls; w++) {
            int b = 2 + w * layers;
            double area = 180.0 / walls;
            for (int l = 0; l < layers; l++) {
                capacity[b + l] = area * mass * (l == 0 ? 8e3 : 15e3);
                if (l > 0) {
                    link(b + l - 1, b + l, area * (w % 2 == 0 ? 4 : 8));
                }
            }
            link(0, b, area * 7.7);
            lose(b + layers - 1, area * (w % 3 == 0 ? 0.6 : 0.9));
        }
        lose(0, 120);
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

    ModalHouse modal() {
        return ModalHouse.of(capacity, conductance);
    }

    double[] air() {
        double[] w = new double[n];
        w[0] = 1;
        return w;
    }

    ThermostatEngine engine() {
        return new ThermostatEngine(modal(), air(), air(), air());
    }

    /** A warm periodic day that begins at five in the morning, when little happens. */
    HouseDrive day(double mean) {
        double[][] q = new double[24][n];
        double[] outdoor = new double[24];
        for (int h = 0; h < 24; h++) {
            int clock = (h + 5) % 24;
            outdoor[h] = 273.15 + mean + 6 * Math.cos(2 * Math.PI * (clock - 15) / 24);
            double sun = Math.max(0, Math.sin(Math.PI * (clock - 6) / 12));
            for (int i = 0; i < n; i++) {
                q[h][i] = outside[i] * (outdoor[h] + (i > 1 ? 10 * sun : 0));
            }
            q[h][0] += 600 + 2500 * sun;
            q[h][1] += 1500 * sun;
        }
        return HouseDrive.of(3600, true, q, outdoor, fill(0.009), fill(0.05), fill(1e-4), 5000);
    }

    /** The same day on and on, with a seasonal swing: not periodic. */
    HouseDrive year(int hours) {
        double[][] q = new double[hours + 1][n];
        double[] outdoor = new double[hours + 1];
        for (int h = 0; h <= hours; h++) {
            outdoor[h] =
                    273.15
                            + 18
                            - 12 * Math.cos(2 * Math.PI * (h / 24.0 - 20) / 365)
                            + 6 * Math.cos(2 * Math.PI * (h - 15) / 24);
            double sun = Math.max(0, Math.sin(Math.PI * (h % 24 - 6) / 12));
            for (int i = 0; i < n; i++) {
                q[h][i] = outside[i] * (outdoor[h] + (i > 1 ? 10 * sun : 0));
            }
            q[h][0] += 600 + 2500 * sun;
            q[h][1] += 1500 * sun;
        }
        double[] w = new double[hours + 1];
        double[] f = new double[hours + 1];
        double[] g = new double[hours + 1];
        Arrays.fill(w, 0.009);
        Arrays.fill(f, 0.05);
        Arrays.fill(g, 1e-4);
        return HouseDrive.of(3600, false, q, outdoor, w, f, g, 5000);
    }

    private static double[] fill(double value) {
        double[] a = new double[24];
        Arrays.fill(a, value);
        return a;
    }

    /** A thermostat in a house of one node: C dT/dt = heat - T / R - cooling. */
    static ThermostatEngine oneNode(double resistance, double capacity) {
        double[] one = {1};
        return new ThermostatEngine(
                ModalHouse.of(new double[] {capacity}, new double[][] {{1 / resistance}}),
                one,
                one,
                one);
    }

    /** Told what a unit gave on each stretch, as {@link UnitResponse#passed}. */
    interface Passed {
        void on(double seconds, double[] state, double startUpFactor, double air);
    }

    /** The unit, with somebody who is told what it gave. */
    static UnitResponse watched(UnitResponse unit, Passed told) {
        return new UnitResponse() {
            @Override
            public void at(double stage, double to, double wo, double tr, double w, double[] out) {
                unit.at(stage, to, wo, tr, w, out);
            }

            @Override
            public void passed(double seconds, double[] state, double startUpFactor, double air) {
                told.on(seconds, state, startUpFactor, air);
            }
        };
    }

    /** A unit whose capacity follows outdoor air, return air and humidity; power constant. */
    static UnitResponse unit(double size) {
        return (stage, to, wo, tr, w, out) -> {
            out[UnitResponse.SENSIBLE] =
                    stage
                            * size
                            * (9000 * (1 - 0.012 * (to - 308))
                                    + 350 * (tr - 297)
                                    - 4e5 * (w - 0.0095));
            out[UnitResponse.MOISTURE] = Math.max(0, stage * size * 0.22 * (w - 0.0075));
            out[UnitResponse.MOISTURE_SLOPE] =
                    out[UnitResponse.MOISTURE] > 0 ? stage * size * 0.22 : 0;
            out[UnitResponse.POWER] = stage * size * 2600;
            out[UnitResponse.COIL] = 283;
            out[UnitResponse.SUCTION] = 278;
            out[UnitResponse.CONDENSATE] = out[UnitResponse.MOISTURE];
        };
    }
}
