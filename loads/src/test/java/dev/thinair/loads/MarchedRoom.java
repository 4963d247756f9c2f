package dev.thinair.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * One room marched in time by node-centred finite differences and Runge-Kutta steps: shares no code
 * and no grid with the library, so that the frequency-domain balance can be held against it.
 */
final class MarchedRoom implements FirstOrderDifferentialEquations {
    private static final double STEP = 20; // s

    private static final class Face {
        double area;
        double hc;
        double hr;
        int node = -1; // state, if the face has mass
        double link; // W/(m2 K) to the next node or to the outside, if it has none
        int next = -1; // state behind a massless face; -1: outside series
        double[] outside;
        boolean glass;
    }

    private static final class Bond {
        int a;
        int b;
        double g; // W/K
    }

    private static final class Outer {
        int node;
        double g; // W/K
        double[] series;
    }

    private final List<Face> faces = new ArrayList<>();
    private final List<Bond> bonds = new ArrayList<>();
    private final List<Outer> outers = new ArrayList<>();
    private double[] capacity = new double[16];
    private int nodes;
    private final double[] air; // K, 24
    private final double[] sun; // radiant W onto opaque faces, 24
    private final double[] radiant; // radiant W onto all faces, 24

    MarchedRoom(double[] air, double[] sun, double[] radiant) {
        this.air = air;
        this.sun = sun;
        this.radiant = radiant;
    }

    private int node(double c) {
        if (nodes == capacity.length) {
            capacity = Arrays.copyOf(capacity, 2 * nodes);
        }
        capacity[nodes] = c;
        return nodes++;
    }

    /** Adds a wall; outside null means adiabatic, sameRoom means both faces here. */
    void wall(
            double area,
            double[] r,
            double[] c,
            double hc,
            double hr,
            double[] outside,
            boolean sameRoom,
            boolean glass) {
        Face front = new Face();
        front.area = area;
        front.hc = hc;
        front.hr = hr;
        front.glass = glass;
        faces.add(front);
        int last = -1; // last node so far
        double pending = 0; // massless resistance since the last node
        for (int l = 0; l < r.length; l++) {
            if (c[l] == 0) {
                pending += r[l];
                continue;
            }
            // RK4 is stable while 4 dt / (R C / n^2) is below 2.78
            int n = (int) Math.max(1, Math.floor(Math.sqrt(1.6 * r[l] * c[l] / (4 * STEP))));
            n = Math.min(n, 24);
            double half = area * c[l] / (2 * n);
            int start;
            if (last >= 0 && pending == 0) {
                start = last;
                capacity[start] += half;
            } else {
                start = node(half);
                if (last >= 0) {
                    bond(last, start, area / pending);
                } else if (pending == 0) {
                    front.node = start;
                } else {
                    front.link = 1 / pending;
                    front.next = start;
                }
            }
            pending = 0;
            last = start;
            for (int i = 1; i <= n; i++) {
                int next = node(i == n ? half : 2 * half);
                bond(last, next, area * n / r[l]);
                last = next;
            }
        }
        if (sameRoom) {
            Face back = new Face();
            back.area = area;
            back.hc = hc;
            back.hr = hr;
            if (pending == 0) {
                back.node = last;
            } else {
                back.link = 1 / pending;
                back.next = last;
            }
            faces.add(back);
        } else if (outside != null) {
            if (last < 0) {
                front.link = 1 / pending;
                front.outside = outside;
            } else {
                Outer outer = new Outer();
                outer.node = last;
                outer.g = area / pending;
                outer.series = outside;
                outers.add(outer);
            }
        }
    }

    private void bond(int a, int b, double g) {
        Bond bond = new Bond();
        bond.a = a;
        bond.b = b;
        bond.g = g;
        bonds.add(bond);
    }

    private static double at(double[] series, double t) {
        double h = t / 3600;
        double floor = Math.floor(h);
        int i = (int) (floor % 24);
        double f = h - floor;
        return series[i] * (1 - f) + series[(i + 1) % 24] * f;
    }

    @Override
    public int getDimension() {
        return nodes;
    }

    private double sunFlux(Face face, double t) {
        double opaque = 0;
        double all = 0;
        for (Face f : faces) {
            all += f.area;
            opaque += f.glass ? 0 : f.area;
        }
        return at(radiant, t) / all + (face.glass ? 0 : at(sun, t) / opaque);
    }

    private double star(double t, double[] y) {
        double ta = at(air, t);
        double top = 0;
        double bottom = 0;
        for (Face f : faces) {
            if (f.node >= 0) {
                top += f.area * f.hr * y[f.node];
                bottom += f.area * f.hr;
            } else {
                double behind = f.next >= 0 ? y[f.next] : at(f.outside, t);
                double sum = f.hc + f.hr + f.link;
                top += f.area * f.hr * (f.hc * ta + f.link * behind + sunFlux(f, t)) / sum;
                bottom += f.area * f.hr * (1 - f.hr / sum);
            }
        }
        return top / bottom;
    }

    private double faceTemperature(Face f, double t, double[] y, double tr) {
        if (f.node >= 0) {
            return y[f.node];
        }
        double behind = f.next >= 0 ? y[f.next] : at(f.outside, t);
        return (f.hc * at(air, t) + f.hr * tr + f.link * behind + sunFlux(f, t))
                / (f.hc + f.hr + f.link);
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] dot) {
        Arrays.fill(dot, 0);
        double ta = at(air, t);
        double tr = star(t, y);
        for (Bond b : bonds) {
            double q = b.g * (y[b.a] - y[b.b]);
            dot[b.a] -= q;
            dot[b.b] += q;
        }
        for (Outer o : outers) {
            dot[o.node] += o.g * (at(o.series, t) - y[o.node]);
        }
        for (Face f : faces) {
            if (f.node >= 0) {
                dot[f.node] +=
                        f.area
                                * (f.hc * (ta - y[f.node])
                                        + f.hr * (tr - y[f.node])
                                        + sunFlux(f, t));
            } else if (f.next >= 0) {
                dot[f.next] += f.area * f.link * (faceTemperature(f, t, y, tr) - y[f.next]);
            }
        }
        for (int i = 0; i < nodes; i++) {
            dot[i] /= capacity[i];
        }
    }

    /** Convection from the faces to the air at the 24 marks of the last day, W. */
    double[] march(int days) {
        double[] y = new double[nodes];
        Arrays.fill(y, Arrays.stream(air).average().orElseThrow());
        double[] load = new double[24];
        ClassicalRungeKuttaIntegrator rk = new ClassicalRungeKuttaIntegrator(STEP);
        for (int h = 0; h < 24 * days; h++) {
            if (h >= 24 * (days - 1)) {
                double t = 3600.0 * h;
                double tr = star(t, y);
                for (Face f : faces) {
                    load[h % 24] += f.area * f.hc * (faceTemperature(f, t, y, tr) - at(air, t));
                }
            }
            rk.integrate(this, 3600.0 * h, y, 3600.0 * (h + 1), y);
        }
        return load;
    }
}
