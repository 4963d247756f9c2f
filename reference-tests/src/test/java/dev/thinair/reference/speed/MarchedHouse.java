package dev.thinair.reference.speed;

import dev.thinair.loads.Adjacency;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Films;
import dev.thinair.loads.House;
import dev.thinair.loads.InternalGain;
import dev.thinair.loads.Layer;
import dev.thinair.loads.Room;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Window;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A house marched through repeated design days by implicit time steps, as a general program would:
 * node-centred finite differences in every layer, trapezoidal rule where there is mass and fully
 * implicit where there is none, each wall's tridiagonal system factored once, radiant and free air
 * nodes gathered in one small system that is inverted once. It shares neither grid nor algebra with
 * the frequency-domain balance. Sensible loads without outdoor air.
 */
final class MarchedHouse {
    private static final double STEP = 300; // s

    private final int zones;
    private final int joints; // radiant nodes, then air nodes
    private final boolean[] held;
    private final List<Wall> walls = new ArrayList<>();
    private final double[] airMass; // J/K, of free zones
    private final double[] airVent; // W/K
    private final double[] dryBulb = new double[24];
    private final double[][] radiant; // W over all faces
    private final double[][] sun; // W over opaque faces
    private final double[][] direct; // W to the air
    private final double[] faceArea;
    private final double[] opaqueArea;
    private double[] inverse; // of the joints' system
    private double[] state; // joints

    /** One wall: nodes from the front face to the last one. */
    private static final class Wall {
        int front;
        int back = -1;
        boolean glass;
        double area;
        double hcFront;
        double hr;
        double hcBack;
        double toOutside; // W/K from the last node
        double[] outside;
        double[] mass; // J/K
        double[] link; // W/K between nodes i and i + 1
        double[] t;
        // tridiagonal factors and the answers to the joints it touches
        double[] lower;
        double[] pivot;
        double[] upper;
        double[] rhs;
        double[][] answer; // radiant front, air front, radiant back, air back
        int[] joint;
        double[] g; // to each joint, W/K
        int[] end; // node that joins it
    }

    MarchedHouse(House house, CoolingDesignDay day, double indoor, double pressure) {
        OutdoorHours hours = day.outdoorHours();
        List<Room> rooms = house.rooms();
        zones = rooms.size();
        joints = 2 * zones;
        held = new boolean[zones];
        airMass = new double[zones];
        airVent = new double[zones];
        radiant = new double[zones][24];
        sun = new double[zones][24];
        direct = new double[zones][24];
        faceArea = new double[zones];
        opaqueArea = new double[zones];
        state = new double[joints];
        Arrays.fill(state, indoor);
        for (int h = 0; h < 24; h++) {
            dryBulb[h] = hours.dryBulb(h);
        }
        Films films = house.coolingFilms();
        for (int z = 0; z < zones; z++) {
            Room room = rooms.get(z);
            held[z] = room.conditioned();
            double air = pressure / (287.042 * 298.15) * 1006 * room.volumeCubicMetres();
            airMass[z] =
                    air + room.furnitureJoulesPerSquareMetreKelvin() * room.floorSquareMetres();
            airVent[z] = air * room.airChangesPerSecond();
            for (InternalGain gain : room.gains()) {
                for (int h = 0; h < 24; h++) {
                    radiant[z][h] += gain.radiantFraction() * gain.sensible(h);
                    direct[z][h] += (1 - gain.radiantFraction()) * gain.sensible(h);
                }
            }
            for (Surface s : room.surfaces()) {
                add(house, z, s, films, hours);
            }
        }
        for (Wall wall : walls) {
            faceArea[wall.front] += wall.area;
            opaqueArea[wall.front] += wall.glass ? 0 : wall.area;
            if (wall.back >= 0) {
                faceArea[wall.back] += wall.area;
                opaqueArea[wall.back] += wall.area;
            }
        }
        for (Wall wall : walls) {
            Arrays.fill(wall.t, indoor);
            factor(wall);
        }
        join();
    }

    private static double convection(Surface.Kind kind, Films films, boolean back) {
        switch (kind) {
            case CEILING:
            case ROOF:
                return back ? films.floor() : films.ceiling();
            case FLOOR:
                return back ? films.ceiling() : films.floor();
            default:
                return films.wall();
        }
    }

    private void add(House house, int z, Surface s, Films films, OutdoorHours hours) {
        double[] behind = null;
        double film = 0;
        int back = -1;
        if (s.adjacency() instanceof Adjacency.Outdoors) {
            behind = new double[24];
            hours.incident(s.azimuthRadians(), s.tiltRadians(), behind);
            double sky = Math.cos(s.tiltRadians()) > 1e-9 ? 63 * Math.cos(s.tiltRadians()) : 0;
            for (int h = 0; h < 24; h++) {
                behind[h] =
                        hours.dryBulb(h)
                                + (s.solarAbsorptance() * behind[h] - s.longwaveEmissivity() * sky)
                                        / films.outside();
            }
            film = 1 / films.outside();
        } else if (s.adjacency() instanceof Adjacency.Other other) {
            behind = new double[24];
            Arrays.fill(behind, Si.kelvins(other.temperature(), "temperature behind"));
            film = 0.13;
        } else if (s.adjacency() instanceof Adjacency.Space space) {
            back = house.rooms().indexOf(house.room(space.space()));
        } else if (s.kind() == Surface.Kind.MASS) {
            back = z;
        }
        for (Assembly.Path path : s.assembly().paths()) {
            Wall wall = new Wall();
            wall.front = z;
            wall.back = back;
            wall.area = s.netSquareMetres() * path.fraction();
            wall.hcFront = convection(s.kind(), films, false);
            wall.hcBack = convection(s.kind(), films, s.adjacency() instanceof Adjacency.Space);
            wall.hr = films.radiant();
            wall.outside = behind;
            cut(wall, path.layers(), film);
            walls.add(wall);
        }
        for (Window window : s.windows()) {
            Wall pane = new Wall();
            pane.front = z;
            pane.glass = true;
            pane.area = window.squareMetres();
            pane.hcFront = convection(s.kind(), films, false);
            pane.hr = films.radiant();
            pane.outside = dryBulb;
            pane.mass = new double[1];
            pane.link = new double[0];
            pane.t = new double[1];
            pane.toOutside = pane.area / (1 / window.transmittance() - 0.17 + 1 / films.outside());
            walls.add(pane);
            double[] in = new double[24];
            window.solarGain(hours, s.azimuthRadians(), s.tiltRadians(), in);
            double share = window.solarRadiantFraction();
            for (int h = 0; h < 24; h++) {
                sun[z][h] += share * in[h];
                direct[z][h] += (1 - share) * in[h];
            }
        }
    }

    /** Cells of about one Fourier number per step, at least two and at most ten a layer. */
    private static void cut(Wall wall, List<Layer> layers, double film) {
        List<Double> mass = new ArrayList<>();
        List<Double> link = new ArrayList<>();
        mass.add(0.0);
        double pending = 0;
        for (Layer layer : layers) {
            double r = layer.squareMetreKelvinsPerWatt();
            double c = layer.joulesPerSquareMetreKelvin();
            if (c == 0) {
                pending += r;
                continue;
            }
            if (pending > 0) {
                link.add(wall.area / pending);
                mass.add(0.0);
                pending = 0;
            }
            int n = (int) Math.max(2, Math.min(10, Math.ceil(Math.sqrt(r * c / STEP))));
            double half = wall.area * c / (2 * n);
            mass.set(mass.size() - 1, mass.get(mass.size() - 1) + half);
            for (int i = 1; i <= n; i++) {
                link.add(wall.area * n / r);
                mass.add(i == n ? half : 2 * half);
            }
        }
        if (wall.outside != null) {
            wall.toOutside = wall.area / (pending + film);
        } else if (pending > 0 && wall.back >= 0) {
            link.add(wall.area / pending);
            mass.add(0.0);
        }
        wall.mass = mass.stream().mapToDouble(Double::doubleValue).toArray();
        wall.link = link.stream().mapToDouble(Double::doubleValue).toArray();
        wall.t = new double[wall.mass.length];
    }

    private static double theta(double mass) {
        return mass > 0 ? 0.5 : 1;
    }

    private void factor(Wall w) {
        int n = w.mass.length;
        boolean two = w.back >= 0;
        w.joint =
                two
                        ? new int[] {w.front, zones + w.front, w.back, zones + w.back}
                        : new int[] {w.front, zones + w.front};
        w.g =
                two
                        ? new double[] {
                            w.area * w.hr, w.area * w.hcFront, w.area * w.hr, w.area * w.hcBack
                        }
                        : new double[] {w.area * w.hr, w.area * w.hcFront};
        w.end = two ? new int[] {0, 0, n - 1, n - 1} : new int[] {0, 0};
        double[] own = new double[n]; // sum of conductances
        for (int i = 0; i < n - 1; i++) {
            own[i] += w.link[i];
            own[i + 1] += w.link[i];
        }
        own[n - 1] += w.toOutside;
        for (int j = 0; j < w.g.length; j++) {
            own[w.end[j]] += w.g[j];
        }
        w.lower = new double[n];
        w.upper = new double[n];
        w.pivot = new double[n];
        w.rhs = new double[n];
        double before = 0;
        for (int i = 0; i < n; i++) {
            double th = theta(w.mass[i]);
            double diagonal = w.mass[i] / STEP + th * own[i];
            double low = i > 0 ? -th * w.link[i - 1] : 0;
            double up = i < n - 1 ? -th * w.link[i] : 0;
            w.lower[i] = i > 0 ? low / before : 0;
            before = diagonal - (i > 0 ? w.lower[i] * w.upper[i - 1] : 0);
            w.upper[i] = up;
            w.pivot[i] = 1 / before;
        }
        w.answer = new double[w.g.length][n];
        for (int j = 0; j < w.g.length; j++) {
            int e = w.end[j];
            w.answer[j][e] = theta(w.mass[e]) * w.g[j];
            solve(w, w.answer[j]);
        }
    }

    private static void solve(Wall w, double[] x) {
        int n = x.length;
        for (int i = 1; i < n; i++) {
            x[i] -= w.lower[i] * x[i - 1];
        }
        x[n - 1] *= w.pivot[n - 1];
        for (int i = n - 2; i >= 0; i--) {
            x[i] = (x[i] - w.upper[i] * x[i + 1]) * w.pivot[i];
        }
    }

    /** The joints' balances with the walls eliminated; radiant nodes and free air are unknown. */
    private void join() {
        double[][] a = new double[joints][joints];
        for (Wall w : walls) {
            for (int i = 0; i < w.g.length; i++) {
                a[w.joint[i]][w.joint[i]] += w.g[i];
                for (int j = 0; j < w.g.length; j++) {
                    a[w.joint[i]][w.joint[j]] -= w.g[i] * w.answer[j][w.end[i]];
                }
            }
        }
        for (int z = 0; z < zones; z++) {
            int air = zones + z;
            if (held[z]) {
                Arrays.fill(a[air], 0);
                a[air][air] = 1;
            } else {
                a[air][air] += airMass[z] / STEP + airVent[z];
            }
        }
        double[][] inv =
                new org.apache.commons.math3.linear.LUDecomposition(
                                org.apache.commons.math3.linear.MatrixUtils.createRealMatrix(a))
                        .getSolver()
                        .getInverse()
                        .getData();
        inverse = new double[joints * joints];
        for (int i = 0; i < joints; i++) {
            System.arraycopy(inv[i], 0, inverse, i * joints, joints);
        }
    }

    private static double at(double[] series, int h, double f) {
        return series[h] * (1 - f) + series[(h + 1) % 24] * f;
    }

    /**
     * Marches.
     *
     * @param days how many days from a uniform start
     * @return sensible load of the conditioned rooms at the marks of the last day, W
     */
    double[] march(int days) {
        double[] load = new double[24];
        double[] right = new double[joints];
        double[] next = new double[joints];
        int perHour = (int) (3600 / STEP);
        for (int step = 1; step <= days * 24 * perHour; step++) {
            int before = step - 1;
            int h0 = before / perHour % 24;
            double f0 = (double) (before % perHour) / perHour;
            int h1 = step / perHour % 24;
            double f1 = (double) (step % perHour) / perHour;
            Arrays.fill(right, 0);
            for (Wall w : walls) {
                wallStep(w, h0, f0, h1, f1, right);
            }
            for (int z = 0; z < zones; z++) {
                int air = zones + z;
                right[air] =
                        held[z]
                                ? state[air]
                                : right[air]
                                        + airMass[z] / STEP * state[air]
                                        + airVent[z] * at(dryBulb, h1, f1)
                                        + at(direct[z], h1, f1);
            }
            for (int i = 0; i < joints; i++) {
                double sum = 0;
                for (int j = 0; j < joints; j++) {
                    sum += inverse[i * joints + j] * right[j];
                }
                next[i] = sum;
            }
            for (Wall w : walls) {
                for (int i = 0; i < w.t.length; i++) {
                    double t = w.rhs[i];
                    for (int j = 0; j < w.joint.length; j++) {
                        t += w.answer[j][i] * next[w.joint[j]];
                    }
                    w.t[i] = t;
                }
            }
            System.arraycopy(next, 0, state, 0, joints);
            if (step % perHour == 0) {
                load[h1] = load(h1);
            }
        }
        return load;
    }

    private void wallStep(Wall w, int h0, double f0, int h1, double f1, double[] right) {
        int n = w.t.length;
        double out0 = 0;
        double out1 = 0;
        if (w.outside != null) {
            out0 = at(w.outside, h0, f0);
            out1 = at(w.outside, h1, f1);
        }
        double[] t = w.t;
        for (int i = 0; i < n; i++) {
            double th = theta(w.mass[i]);
            double flow = 0;
            if (th < 1) {
                if (i > 0) {
                    flow += w.link[i - 1] * (t[i - 1] - t[i]);
                }
                if (i < n - 1) {
                    flow += w.link[i] * (t[i + 1] - t[i]);
                }
            }
            w.rhs[i] = w.mass[i] / STEP * t[i] + (1 - th) * flow;
        }
        for (int j = 0; j < w.joint.length; j++) {
            int e = w.end[j];
            w.rhs[e] += (1 - theta(w.mass[e])) * w.g[j] * (state[w.joint[j]] - t[e]);
        }
        double last = theta(w.mass[n - 1]);
        w.rhs[n - 1] += w.toOutside * ((1 - last) * (out0 - t[n - 1]) + last * out1);
        absorb(w, 0, w.front, h0, f0, h1, f1);
        if (w.back >= 0) {
            absorb(w, n - 1, w.back, h0, f0, h1, f1);
        }
        solve(w, w.rhs);
        for (int j = 0; j < w.joint.length; j++) {
            right[w.joint[j]] += w.g[j] * w.rhs[w.end[j]];
        }
    }

    private void absorb(Wall w, int node, int zone, int h0, double f0, int h1, double f1) {
        double all = w.area / faceArea[zone];
        double opaque = w.glass || opaqueArea[zone] == 0 ? 0 : w.area / opaqueArea[zone];
        double th = theta(w.mass[node]);
        w.rhs[node] +=
                th * (all * at(radiant[zone], h1, f1) + opaque * at(sun[zone], h1, f1))
                        + (1 - th)
                                * (all * at(radiant[zone], h0, f0)
                                        + opaque * at(sun[zone], h0, f0));
    }

    private double load(int hour) {
        double sum = 0;
        for (int z = 0; z < zones; z++) {
            if (held[z]) {
                sum += direct[z][hour];
            }
        }
        for (Wall w : walls) {
            for (int j = 1; j < w.joint.length; j += 2) {
                if (held[w.joint[j] - zones]) {
                    sum += w.g[j] * (w.t[w.end[j]] - state[w.joint[j]]);
                }
            }
        }
        return sum;
    }
}
