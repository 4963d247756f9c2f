package dev.thinair.loads.kernel;

import dev.thinair.units.Range;
import java.util.Arrays;

/**
 * A house as a network of heat capacities and conductances, for simulation in time: {@code C dT/dt
 * = -K T + B u(t) + heat given to nodes}.
 *
 * <p>Each layer with mass is cut into cells, as many as keep a cell's Fourier number {@code a t /
 * dx^2} for a chosen time <var>t</var> at one or more: {@code N = ceil(sqrt(R C / t))}. A cell has
 * a sixth of its capacity at each end and two thirds in its middle, with half its resistance on
 * either side: that makes its transfer resistance {@code R (1 + i w R C / 6)} right to the first
 * order in frequency, and its capacity stand at the face where room and cell meet. Cells of layers
 * in contact share their ends. Walls that share zones, layers and coefficients are summed into one,
 * which changes nothing because the network is linear. Faces and radiant nodes that store nothing
 * are eliminated exactly. What is left are the cells' nodes and one air node per zone. K is
 * symmetric; its diagonal includes conductances to boundaries, so it is positive definite as soon
 * as something leads outdoors.
 *
 * <p>Inputs <var>u</var>, in this order: temperature of each boundary (K); radiant heat spread over
 * all faces of each zone (W); radiant heat spread over the opaque faces of each zone (W); heat to
 * each zone's air (W). Outdoor air through a zone is a conductance in K and an input to its air.
 *
 * <p>The error of the finite volumes is measured by test against the exact periodic response for
 * every assembly of the catalogue. Immutable.
 */
public final class ThermalNetwork {
    /** Time for which a cell's Fourier number is one, s, unless said otherwise. */
    public static final double DEFAULT_CELL_TIME = 1800;

    private final int zones;
    private final int boundaries;
    private final double[] capacity;
    private final double[][] conductance;
    private final double[][] input; // [node][u]

    private ThermalNetwork(
            int zones,
            int boundaries,
            double[] capacity,
            double[][] conductance,
            double[][] input) {
        this.zones = zones;
        this.boundaries = boundaries;
        this.capacity = capacity;
        this.conductance = conductance;
        this.input = input;
    }

    /**
     * Number of cells a layer is cut into; each has three nodes, of which it shares two.
     *
     * @param resistance m2 K/W, above 0
     * @param arealCapacity J/(m2 K), 0 or more
     * @param cellTime time for which a cell's Fourier number is at least one, s, above 0
     * @return cells; 0 for a layer without mass
     * @throws IllegalArgumentException if an argument is out of range or more than 10000 cells are
     *     asked
     */
    public static int cells(double resistance, double arealCapacity, double cellTime) {
        Range.requireAbove("layer resistance", resistance, 0, "m2 K/W");
        Range.require("layer heat capacity", arealCapacity, 0, 1e12, "J/(m2 K)");
        Range.requireAbove("cell time", cellTime, 0, "s");
        if (arealCapacity == 0) {
            return 0;
        }
        double n = Math.ceil(Math.sqrt(resistance * arealCapacity / cellTime));
        Range.require("cells in a layer", n, 0, 10_000, "");
        return Math.max(1, (int) n);
    }

    /**
     * Cuts a house into a network.
     *
     * @param model the house; every zone needs an air capacity above 0
     * @param boundaryOf index of the boundary behind each wall; not read for other walls
     * @param boundaries number of boundaries
     * @param airLeak conductance from each zone's air to outdoor air beyond what the model holds,
     *     W/K, 0 or more (infiltration and ventilation of held zones)
     * @param cellTime time for which a cell's Fourier number is at least one, s, above 0
     * @return the network; nodes 0 to Z-1 are the zones' air
     * @throws IllegalArgumentException if an array has the wrong length or a value is out of range
     */
    public static ThermalNetwork of(
            HouseModel model, int[] boundaryOf, int boundaries, double[] airLeak, double cellTime) {
        if (boundaryOf.length != model.walls || airLeak.length != model.zones) {
            throw new IllegalArgumentException(
                    boundaryOf.length
                            + " boundaries and "
                            + airLeak.length
                            + " leaks for "
                            + model.walls
                            + " walls and "
                            + model.zones
                            + " zones");
        }
        for (int z = 0; z < model.zones; z++) {
            Range.requireAbove("heat capacity of zone air", model.airCapacity[z], 0, "J/K");
            Range.require("air leak", airLeak[z], 0, 1e9, "W/K");
        }
        int[] group = groups(model);
        int groups = 0;
        for (int g : group) {
            groups = Math.max(groups, g + 1);
        }
        int[] first = new int[groups];
        Arrays.fill(first, -1);
        double[] area = new double[groups];
        for (int w = 0; w < model.walls; w++) {
            int g = group[w];
            if (first[g] < 0) {
                first[g] = w;
            }
            area[g] += model.area[w];
        }
        // chains: per group the resistances between face, cells and back, and the cells' capacities
        double[][] between = new double[groups][];
        double[][] cell = new double[groups][];
        int cells = 0;
        int faces = 0;
        for (int g = 0; g < groups; g++) {
            int k = model.construction[first[g]];
            chain(model.resistance[k], model.capacity[k], cellTime, between, cell, g);
            int n = cell[g].length;
            cells += n;
            faces += n == 0 || between[g][0] > 0 ? 1 : 0;
            int behind = model.back[first[g]];
            if (behind >= 0) {
                faces += n == 0 || between[g][n] > 0 ? 1 : 0;
            } else if (behind == HouseModel.BOUNDARY && between[g][n] == 0) {
                throw new IllegalArgumentException(
                        "wall " + first[g] + " meets its boundary without a film, but needs one");
            }
        }
        int kept = model.zones + cells;
        int all = kept + model.zones + faces;
        int inputs = boundaries + 3 * model.zones;
        double[][] k = new double[all][all];
        double[][] b = new double[all][inputs];
        double[] c = new double[kept];
        System.arraycopy(model.airCapacity, 0, c, 0, model.zones);
        double[] faceArea = new double[model.zones];
        double[] opaqueArea = new double[model.zones];
        for (int g = 0; g < groups; g++) {
            int w = first[g];
            addArea(faceArea, opaqueArea, model.front[w], area[g], model.glass[w]);
            if (model.back[w] >= 0) {
                addArea(faceArea, opaqueArea, model.back[w], area[g], model.glass[w]);
            }
        }
        int cellAt = model.zones;
        int faceAt = kept + model.zones;
        for (int g = 0; g < groups; g++) {
            int w = first[g];
            double a = area[g];
            double[] r = between[g];
            int n = cell[g].length;
            int face = n == 0 || r[0] > 0 ? faceAt++ : cellAt;
            attach(
                    model,
                    boundaries,
                    k,
                    b,
                    face,
                    model.front[w],
                    a,
                    model.frontConvection[w],
                    model.frontRadiation[w],
                    model.glass[w],
                    kept,
                    faceArea,
                    opaqueArea);
            int node = face;
            for (int i = 0; i < n; i++) {
                c[cellAt] = a * cell[g][i];
                if (node != cellAt) {
                    link(k, node, cellAt, a / r[i]);
                }
                node = cellAt++;
            }
            double last = r[n];
            if (model.back[w] >= 0) {
                int far = n == 0 || last > 0 ? faceAt++ : node;
                attach(
                        model,
                        boundaries,
                        k,
                        b,
                        far,
                        model.back[w],
                        a,
                        model.backConvection[w],
                        model.backRadiation[w],
                        model.glass[w],
                        kept,
                        faceArea,
                        opaqueArea);
                if (far != node) {
                    link(k, node, far, a / last);
                }
            } else if (model.back[w] == HouseModel.BOUNDARY) {
                for (int v = 0; v < model.walls; v++) {
                    if (group[v] == g) {
                        Range.require("boundary of a wall", boundaryOf[v], 0, boundaries - 1, "");
                        k[node][node] += model.area[v] / last;
                        b[node][boundaryOf[v]] += model.area[v] / last;
                    }
                }
            }
        }
        for (int z = 0; z < model.zones; z++) {
            k[z][z] += model.airConductance[z] + airLeak[z];
            b[z][boundaries + 2 * model.zones + z] = 1;
        }
        for (int e = all - 1; e >= kept; e--) {
            eliminate(k, b, e, inputs);
        }
        double[][] kk = new double[kept][];
        double[][] bb = new double[kept][];
        for (int i = 0; i < kept; i++) {
            kk[i] = Arrays.copyOf(k[i], kept);
            bb[i] = b[i];
        }
        for (int i = 0; i < kept; i++) {
            for (int j = 0; j < i; j++) {
                double mean = 0.5 * (kk[i][j] + kk[j][i]);
                kk[i][j] = mean;
                kk[j][i] = mean;
            }
        }
        return new ThermalNetwork(model.zones, boundaries, c, kk, bb);
    }

    /** Walls that may be summed: same zones, layers, coefficients and kind. */
    private static int[] groups(HouseModel m) {
        int[] group = new int[m.walls];
        int count = 0;
        for (int w = 0; w < m.walls; w++) {
            group[w] = -1;
            for (int v = 0; v < w && group[w] < 0; v++) {
                if (m.front[v] == m.front[w]
                        && m.back[v] == m.back[w]
                        && m.construction[v] == m.construction[w]
                        && m.frontConvection[v] == m.frontConvection[w]
                        && m.frontRadiation[v] == m.frontRadiation[w]
                        && m.backConvection[v] == m.backConvection[w]
                        && m.backRadiation[v] == m.backRadiation[w]
                        && m.glass[v] == m.glass[w]) {
                    group[w] = group[v];
                }
            }
            if (group[w] < 0) {
                group[w] = count++;
            }
        }
        return group;
    }

    /**
     * Nodes of a wall from its front: capacities, and resistances before, between and after them.
     */
    private static void chain(
            double[] r, double[] c, double cellTime, double[][] between, double[][] cell, int g) {
        int most = 1;
        int[] cut = new int[r.length];
        for (int l = 0; l < r.length; l++) {
            cut[l] = cells(r[l], c[l], cellTime);
            most += 2 * cut[l] + 1;
        }
        double[] gap = new double[most + 1];
        double[] heat = new double[most];
        int n = 0;
        for (int l = 0; l < r.length; l++) {
            if (cut[l] == 0) {
                gap[n] += r[l];
                continue;
            }
            double half = r[l] / (2 * cut[l]);
            double whole = c[l] / cut[l];
            if (n == 0 || gap[n] > 0) {
                n++; // a node of its own; a layer in contact shares the last one
            }
            for (int i = 0; i < cut[l]; i++) {
                heat[n - 1] += whole / 6;
                gap[n] = half;
                heat[n] = whole * 2 / 3;
                gap[n + 1] = half;
                heat[n + 1] = whole / 6;
                n += 2;
            }
        }
        between[g] = Arrays.copyOf(gap, n + 1);
        cell[g] = Arrays.copyOf(heat, n);
    }

    private static void addArea(
            double[] face, double[] opaque, int zone, double area, boolean glass) {
        face[zone] += area;
        if (!glass) {
            opaque[zone] += area;
        }
    }

    private static void attach(
            HouseModel model,
            int boundaries,
            double[][] k,
            double[][] b,
            int face,
            int zone,
            double area,
            double convection,
            double radiation,
            boolean glass,
            int kept,
            double[] faceArea,
            double[] opaqueArea) {
        link(k, face, zone, area * convection);
        link(k, face, kept + zone, area * radiation);
        b[face][boundaries + zone] += area / faceArea[zone];
        if (opaqueArea[zone] == 0) {
            b[face][boundaries + model.zones + zone] += area / faceArea[zone];
        } else if (!glass) {
            b[face][boundaries + model.zones + zone] += area / opaqueArea[zone];
        }
    }

    private static void link(double[][] k, int i, int j, double g) {
        k[i][i] += g;
        k[j][j] += g;
        k[i][j] -= g;
        k[j][i] -= g;
    }

    /** Removes a node without capacity: its balance gives its temperature from its neighbours'. */
    private static void eliminate(double[][] k, double[][] b, int e, int inputs) {
        double[] row = k[e];
        double inv = 1 / row[e];
        int[] near = new int[e];
        int count = 0;
        for (int j = 0; j < e; j++) {
            if (row[j] != 0) {
                near[count++] = j;
            }
        }
        for (int p = 0; p < count; p++) {
            int i = near[p];
            double f = row[i] * inv;
            double[] target = k[i];
            for (int q = 0; q < count; q++) {
                target[near[q]] -= f * row[near[q]];
            }
            for (int u = 0; u < inputs; u++) {
                if (b[e][u] != 0) {
                    b[i][u] -= f * b[e][u];
                }
            }
        }
    }

    /**
     * Number of nodes.
     *
     * @return nodes
     */
    public int size() {
        return capacity.length;
    }

    /**
     * Number of zones; nodes 0 to Z-1 are their air.
     *
     * @return zones
     */
    public int zones() {
        return zones;
    }

    /**
     * Number of inputs: boundaries, then thrice the zones.
     *
     * @return inputs
     */
    public int inputs() {
        return boundaries + 3 * zones;
    }

    /**
     * Input of a boundary's temperature.
     *
     * @param boundary index
     * @return index in u
     */
    public int boundaryInput(int boundary) {
        return boundary;
    }

    /**
     * Input of radiant heat over all faces of a zone.
     *
     * @param zone index
     * @return index in u
     */
    public int radiantInput(int zone) {
        return boundaries + zone;
    }

    /**
     * Input of radiant heat over the opaque faces of a zone.
     *
     * @param zone index
     * @return index in u
     */
    public int sunInput(int zone) {
        return boundaries + zones + zone;
    }

    /**
     * Input of heat to a zone's air.
     *
     * @param zone index
     * @return index in u
     */
    public int airInput(int zone) {
        return boundaries + 2 * zones + zone;
    }

    /**
     * Heat capacities.
     *
     * @return capacities by node, J/K, a fresh copy
     */
    public double[] capacity() {
        return capacity.clone();
    }

    /**
     * Conductance matrix K.
     *
     * @return matrix, W/K, a fresh copy
     */
    public double[][] conductance() {
        double[][] copy = new double[conductance.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = conductance[i].clone();
        }
        return copy;
    }

    /**
     * Share of an input that reaches a node.
     *
     * @param node index
     * @param u index of the input
     * @return W/K for a temperature, W/W for a heat
     */
    public double input(int node, int u) {
        return input[node][u];
    }

    /**
     * Heat into the nodes for given inputs: {@code q = B u}.
     *
     * @param u inputs
     * @param q receives the heat by node, W
     */
    public void forcing(double[] u, double[] q) {
        for (int i = 0; i < input.length; i++) {
            double[] row = input[i];
            double sum = 0;
            for (int j = 0; j < row.length; j++) {
                sum += row[j] * u[j];
            }
            q[i] = sum;
        }
    }

    /**
     * Periodic answer of the network itself at one frequency, for judging it against the exact one:
     * the complex temperatures of the nodes solve {@code (K + i w C) T = B u}; held nodes are kept
     * at zero.
     *
     * @param omega angular frequency, rad/s, 0 or more
     * @param u index of the input of one unit
     * @param held nodes kept at zero
     * @return heat that flows into each held node, re and im in turn, in the order of {@code held}
     * @throws ArithmeticException if the system is singular
     */
    public double[] periodicAnswer(double omega, int u, int[] held) {
        int n = capacity.length;
        boolean[] fixed = new boolean[n];
        for (int h : held) {
            fixed[h] = true;
        }
        int[] index = new int[n];
        int m = 0;
        for (int i = 0; i < n; i++) {
            index[i] = fixed[i] ? -1 : m++;
        }
        double[][] re = new double[m][m];
        double[][] im = new double[m][m];
        double[] xr = new double[m];
        double[] xi = new double[m];
        for (int i = 0; i < n; i++) {
            if (index[i] < 0) {
                continue;
            }
            for (int j = 0; j < n; j++) {
                if (index[j] >= 0) {
                    re[index[i]][index[j]] = conductance[i][j];
                }
            }
            im[index[i]][index[i]] = omega * capacity[i];
            xr[index[i]] = input[i][u];
        }
        for (int p = 0; p < m; p++) {
            double size = re[p][p] * re[p][p] + im[p][p] * im[p][p];
            if (!(size > 0)) {
                throw new ArithmeticException(
                        "network is singular at node " + p + " for " + omega + " rad/s");
            }
            double ir = re[p][p] / size;
            double ii = -im[p][p] / size;
            for (int i = p + 1; i < m; i++) {
                double fr = re[i][p] * ir - im[i][p] * ii;
                double fi = re[i][p] * ii + im[i][p] * ir;
                if (fr == 0 && fi == 0) {
                    continue;
                }
                for (int j = p; j < m; j++) {
                    double ar = re[p][j];
                    double ai = im[p][j];
                    re[i][j] -= fr * ar - fi * ai;
                    im[i][j] -= fr * ai + fi * ar;
                }
                double br = xr[p];
                double bi = xi[p];
                xr[i] -= fr * br - fi * bi;
                xi[i] -= fr * bi + fi * br;
            }
        }
        for (int p = m - 1; p >= 0; p--) {
            double sr = xr[p];
            double si = xi[p];
            for (int j = p + 1; j < m; j++) {
                sr -= re[p][j] * xr[j] - im[p][j] * xi[j];
                si -= re[p][j] * xi[j] + im[p][j] * xr[j];
            }
            double size = re[p][p] * re[p][p] + im[p][p] * im[p][p];
            xr[p] = (sr * re[p][p] + si * im[p][p]) / size;
            xi[p] = (si * re[p][p] - sr * im[p][p]) / size;
        }
        double[] out = new double[2 * held.length];
        for (int h = 0; h < held.length; h++) {
            double sr = input[held[h]][u];
            double si = 0;
            for (int j = 0; j < n; j++) {
                if (index[j] >= 0) {
                    sr -= conductance[held[h]][j] * xr[index[j]];
                    si -= conductance[held[h]][j] * xi[index[j]];
                }
            }
            out[2 * h] = sr;
            out[2 * h + 1] = si;
        }
        return out;
    }
}
