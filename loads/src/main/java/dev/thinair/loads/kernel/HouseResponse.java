package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * What a house answers to every drive, day-periodic and exact: the heat that must be taken from
 * each held zone to keep its air temperature, and the air temperature of each free zone.
 *
 * <p>For each harmonic of the day the wall faces are eliminated by their admittances ({@link
 * Transmission}), which leaves a complex symmetric system of radiant and free air nodes; its
 * solution gives the transfer from every drive to every zone. Harmonics beyond the twelfth are
 * folded back ({@link HourlyInterpolation}), so that 24 hourly values joined by straight lines are
 * answered exactly at the hour marks. Nothing is iterated and no table is used; being linear, the
 * answers to single drives add up to the answer to all.
 *
 * <p>Method: F. Alamdari, M. G. Davies and others' admittance procedure carried to all harmonics;
 * the room network with one radiant node is the star of M. G. Davies, Building Heat Transfer, 2004,
 * ch. 4 (from memory). Source of the wall matrices: ISO 13786:2017.
 *
 * <p>Drives, by index, with W walls and Z zones: {@link #wallDrive} temperature behind a wall (K);
 * {@link #radiantDrive} radiant heat spread over all faces of a zone by area (W); {@link #sunDrive}
 * radiant heat spread over the opaque faces of a zone by area (W); {@link #airDrive} heat to a
 * zone's air (W); {@link #holdDrive} air temperature of a held zone (K). Immutable.
 */
public final class HouseResponse {
    /**
     * Cycles value for twelve plain harmonics without folding: rings at steps; for comparison only.
     */
    public static final int PLAIN = -1;

    /**
     * Folded cycles that {@link #solve(HouseModel)} uses; the remainder is below 1e-4 of a load's
     * swing.
     */
    public static final int DEFAULT_CYCLES = 1;

    private static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;

    private final int walls;
    private final int zones;
    private final boolean[] held;
    private final double[] folded; // [(drive * zones + output) * WIDTH]

    private HouseResponse(HouseModel model) {
        walls = model.walls;
        zones = model.zones;
        held = model.held;
        folded = new double[(walls + 4 * zones) * zones * WIDTH];
    }

    /**
     * Solves a house with the usual folding.
     *
     * @param model the house
     * @return its response
     * @throws IllegalArgumentException if a free zone is cut off from everything held
     */
    public static HouseResponse solve(HouseModel model) {
        return solve(model, DEFAULT_CYCLES);
    }

    /**
     * Solves a house.
     *
     * @param model the house
     * @param cycles how many times 24 harmonics beyond the first twelve are computed one by one, 0
     *     to 1000; the rest is gathered in blocks ({@link Tail}). Or {@link #PLAIN}
     * @return its response
     * @throws IllegalArgumentException if cycles is out of range or a free zone is cut off from
     *     everything held
     */
    public static HouseResponse solve(HouseModel model, int cycles) {
        Range.require("folded cycles", cycles, PLAIN, 1000, "");
        HouseResponse response = new HouseResponse(model);
        Solver solver = new Solver(model);
        int top = 12 + 24 * Math.max(cycles, 0);
        for (int n = 0; n <= top; n++) {
            int m = HourlyInterpolation.folded(n);
            if (m == 0 && n > 0) {
                continue; // weight zero
            }
            double w = cycles == PLAIN ? 1 : HourlyInterpolation.weight(n);
            solver.factor(n * Transmission.OMEGA_DAY);
            if (m == 0) {
                solver.collect(m, w, 0);
            } else if (m == 12) {
                // lands on itself, conjugated as well
                solver.collect(m, cycles == PLAIN ? w : 2 * w, 0);
            } else {
                solver.collect(m, w, HourlyInterpolation.conjugated(n) ? -w : w);
            }
        }
        if (cycles != PLAIN) {
            Tail tail = Tail.beyond(cycles);
            for (int b = 0; b < tail.blocks(); b++) {
                solver.factor(tail.harmonic(b) * Transmission.OMEGA_DAY);
                solver.collect(tail, b);
            }
        }
        solver.deliver(response);
        return response;
    }

    /**
     * The harmonics beyond those computed one by one, in blocks of cycles that double: each block's
     * weights are summed exactly and the transfer is taken at one harmonic, so placed that a
     * transfer falling with the root of frequency, as that of a thick layer does, comes out right.
     */
    private static final class Tail {
        private static final int FAR = 1 << 14;
        private static final Tail USUAL = new Tail(DEFAULT_CYCLES);
        private final double[] harmonic;
        private final double[] real; // [block * 13 + m]
        private final double[] imaginary;

        private Tail(int cycles) {
            int count = 0;
            for (int from = cycles + 1; from < FAR; from = 2 * from) {
                count++;
            }
            count = Math.min(count, 5);
            harmonic = new double[count];
            real = new double[13 * count];
            imaginary = new double[13 * count];
            double[] all = new double[13];
            for (int n = 1; n <= 12 + 24 * cycles; n++) {
                int m = HourlyInterpolation.folded(n);
                all[m] += (m == 12 ? 2 : 1) * HourlyInterpolation.weight(n);
            }
            int from = cycles + 1;
            for (int b = 0; b < count; b++) {
                int to = b == count - 1 ? FAR : 2 * from;
                double sum = 0;
                double rootSum = 0;
                for (int j = from; j < to; j++) {
                    double w = 1.0 / ((double) j * j);
                    sum += w;
                    rootSum += w / Math.sqrt(j);
                    for (int m = 1; m <= 12; m++) {
                        double up = HourlyInterpolation.weight(24 * j + m);
                        if (m == 12) {
                            real[13 * b + m] += 2 * up;
                        } else {
                            double down = HourlyInterpolation.weight(24 * j - m);
                            real[13 * b + m] += up + down;
                            imaginary[13 * b + m] += up - down;
                        }
                    }
                }
                double ratio = sum / rootSum;
                harmonic[b] = 24 * ratio * ratio;
                for (int m = 1; m <= 12; m++) {
                    all[m] += real[13 * b + m];
                }
                from = to;
            }
            for (int m = 1; m <= 12; m++) {
                // weights sum to one: what lies beyond FAR goes to the last block
                real[13 * (count - 1) + m] += 1 - all[m];
            }
        }

        static Tail beyond(int cycles) {
            return cycles == DEFAULT_CYCLES ? USUAL : new Tail(cycles);
        }

        int blocks() {
            return harmonic.length;
        }

        double harmonic(int block) {
            return harmonic[block];
        }

        double real(int block, int m) {
            return real[13 * block + m];
        }

        double imaginary(int block, int m) {
            return imaginary[13 * block + m];
        }
    }

    /**
     * Solves the steady state only; harmonics are left at zero.
     *
     * @param model the house
     * @return its steady response
     * @throws IllegalArgumentException if a free zone is cut off from everything held
     */
    public static HouseResponse steady(HouseModel model) {
        HouseResponse response = new HouseResponse(model);
        Solver solver = new Solver(model);
        solver.factor(0);
        solver.collect(0, 1, 0);
        solver.deliver(response);
        return response;
    }

    /**
     * Number of drives.
     *
     * @return W + 4 Z
     */
    public int drives() {
        return walls + 4 * zones;
    }

    /**
     * Drive of the temperature behind a wall, K; zero response unless the wall is at a boundary.
     *
     * @param wall index of the wall
     * @return index of the drive
     */
    public int wallDrive(int wall) {
        return wall;
    }

    /**
     * Drive of radiant heat spread by area over all faces of a zone, W.
     *
     * @param zone index of the zone
     * @return index of the drive
     */
    public int radiantDrive(int zone) {
        return walls + zone;
    }

    /**
     * Drive of radiant heat spread by area over the opaque faces of a zone, W.
     *
     * @param zone index of the zone
     * @return index of the drive
     */
    public int sunDrive(int zone) {
        return walls + zones + zone;
    }

    /**
     * Drive of heat given to a zone's air, W.
     *
     * @param zone index of the zone
     * @return index of the drive
     */
    public int airDrive(int zone) {
        return walls + 2 * zones + zone;
    }

    /**
     * Drive of the air temperature of a held zone, K; zero response for a free zone.
     *
     * @param zone index of the zone
     * @return index of the drive
     */
    public int holdDrive(int zone) {
        return walls + 3 * zones + zone;
    }

    /**
     * Steady answer of a zone to a drive of one unit.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @return load in W of a held zone, temperature in K of a free one, per unit of the drive
     */
    public double steady(int drive, int zone) {
        return folded[(drive * zones + zone) * WIDTH];
    }

    /**
     * Folded transfer from a drive to a zone.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @param out receives re and im for m = 0..12 (26 numbers)
     */
    public void transfer(int drive, int zone, double[] out) {
        System.arraycopy(folded, (drive * zones + zone) * WIDTH, out, 0, WIDTH);
    }

    /**
     * Adds the answer of a zone to a drive, as spectrum.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @param spectrum of the drive, re and im of X(0) to X(12)
     * @param at index of its first number
     * @param sum spectrum that is added to
     * @param sumAt index of its first number
     */
    public void addAnswer(int drive, int zone, double[] spectrum, int at, double[] sum, int sumAt) {
        int base = (drive * zones + zone) * WIDTH;
        for (int i = 0; i < WIDTH; i += 2) {
            double hr = folded[base + i];
            double hi = folded[base + i + 1];
            double xr = spectrum[at + i];
            double xi = spectrum[at + i + 1];
            sum[sumAt + i] += hr * xr - hi * xi;
            sum[sumAt + i + 1] += hr * xi + hi * xr;
        }
    }

    /**
     * Time factors of a drive: what a zone answers 0 to 23 hours after a daily pulse of one unit
     * that rises and falls linearly within an hour.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @return 24 factors, whose sum is the steady answer
     */
    public double[] timeFactors(int drive, int zone) {
        double[] spectrum = new double[WIDTH];
        int base = (drive * zones + zone) * WIDTH;
        for (int i = 0; i < WIDTH; i++) {
            spectrum[i] = folded[base + i] / HourlyInterpolation.HOURS;
        }
        double[] factors = new double[HourlyInterpolation.HOURS];
        HourlyInterpolation.addSynthesis(spectrum, 0, factors, 0);
        return factors;
    }

    /**
     * Radiant time factors of a held zone: shares of a radiant gain, spread over its faces by area,
     * that become load 0 to 23 hours later. They sum to less than one where faces lose heat
     * elsewhere.
     *
     * @param zone index of the zone
     * @return 24 factors
     * @throws IllegalArgumentException if the zone is free
     */
    public double[] radiantTimeFactors(int zone) {
        if (!held[zone]) {
            throw new IllegalArgumentException(
                    "zone " + zone + " is free, but must be held at a temperature");
        }
        return timeFactors(radiantDrive(zone), zone);
    }

    /** One frequency: nodal system, its factors, and the answers read from it. */
    private static final class Solver {
        private final HouseModel model;
        private final int zones;
        private final int nodes; // radiant nodes 0..Z-1, air nodes Z..2Z-1
        private final int unknowns;
        private final int[] unknownOf; // node -> unknown, -1 for a held air node
        private final double[] gr;
        private final double[] gi;
        private final double[] y; // admittances by construction
        private final double[] fr; // factor of the unknown part, row major lower
        private final double[] fi;
        private final double[] pr; // output row -> unknown
        private final double[] pi;
        private final double[] er; // radiant injections [(2 Z drives) * nodes]
        private final double[] ei;
        private final double[] wallStarR;
        private final double[] wallStarI;
        private final double[] wallAirR;
        private final double[] wallAirI;
        private final double[][] sum; // folded transfers by harmonic
        private final int[] boundaryWalls;
        private final int[][] near; // by zone: unknown nodes that its faces reach
        private final double[] now; // transfers at this frequency, re and im by zone and drive
        private final double[] faceArea;
        private final double[] opaqueArea;
        private final double[] matrix = new double[Transmission.matrixLength()];
        private final double[] four = new double[8];

        Solver(HouseModel model) {
            this.model = model;
            zones = model.zones;
            nodes = 2 * zones;
            unknownOf = new int[nodes];
            int u = 0;
            for (int i = 0; i < nodes; i++) {
                unknownOf[i] = i < zones || !model.held[i - zones] ? u++ : -1;
            }
            unknowns = u;
            gr = new double[nodes * nodes];
            gi = new double[nodes * nodes];
            y = new double[8 * model.resistance.length];
            fr = new double[u * u];
            fi = new double[u * u];
            pr = new double[zones * u];
            pi = new double[zones * u];
            er = new double[2 * zones * nodes];
            ei = new double[2 * zones * nodes];
            wallStarR = new double[model.walls];
            wallStarI = new double[model.walls];
            wallAirR = new double[model.walls];
            wallAirI = new double[model.walls];
            now = new double[(model.walls + 4 * zones) * zones * 2];
            sum = new double[HourlyInterpolation.HARMONICS][now.length];
            boundaryWalls =
                    java.util.stream.IntStream.range(0, model.walls)
                            .filter(w -> model.back[w] == HouseModel.BOUNDARY)
                            .toArray();
            near = neighbours();
            faceArea = new double[zones];
            opaqueArea = new double[zones];
            for (int w = 0; w < model.walls; w++) {
                addFaceArea(model.front[w], model.area[w], model.glass[w]);
                if (model.back[w] >= 0) {
                    addFaceArea(model.back[w], model.area[w], model.glass[w]);
                }
            }
        }

        private void addFaceArea(int zone, double area, boolean glass) {
            faceArea[zone] += area;
            if (!glass) {
                opaqueArea[zone] += area;
            }
        }

        /** Fills and factors the system at one angular frequency and solves the output rows. */
        void factor(double omega) {
            for (int k = 0; k < model.resistance.length; k++) {
                Transmission.admittances(
                        model.resistance[k],
                        model.capacity[k],
                        model.resistance[k].length,
                        omega,
                        matrix,
                        four);
                System.arraycopy(four, 0, y, 8 * k, 8);
            }
            java.util.Arrays.fill(gr, 0);
            java.util.Arrays.fill(gi, 0);
            java.util.Arrays.fill(er, 0);
            java.util.Arrays.fill(ei, 0);
            for (int w = 0; w < model.walls; w++) {
                if (model.back[w] >= 0) {
                    twoSided(w);
                } else {
                    oneSided(w);
                }
            }
            for (int z = 0; z < zones; z++) {
                if (!model.held[z]) {
                    int at = (zones + z) * (nodes + 1);
                    gr[at] += model.airConductance[z];
                    gi[at] += omega * model.airCapacity[z];
                }
            }
            decompose();
            rows();
            transfers();
        }

        private void oneSided(int w) {
            int zone = model.front[w];
            double a = model.area[w];
            double hc = model.frontConvection[w];
            double hr = model.frontRadiation[w];
            int at = 8 * model.construction[w] + (model.back[w] == HouseModel.ADIABATIC ? 6 : 0);
            double dr = y[at] + hc + hr;
            double di = y[at + 1];
            double inv = 1 / (dr * dr + di * di);
            double qr = dr * inv; // 1 / D
            double qi = -di * inv;
            add(zone, zone, a * hr * (1 - hr * qr), -a * hr * hr * qi);
            add(zones + zone, zones + zone, a * hc * (1 - hc * qr), -a * hc * hc * qi);
            addBoth(zone, zones + zone, -a * hc * hr * qr, -a * hc * hr * qi);
            radiant(zone, w, zone, a * hr * qr, a * hr * qi);
            radiant(zone, w, zones + zone, a * hc * qr, a * hc * qi);
            if (model.back[w] == HouseModel.BOUNDARY) {
                double tr = y[at + 2] * qr - y[at + 3] * qi;
                double ti = y[at + 2] * qi + y[at + 3] * qr;
                wallStarR[w] = a * hr * tr;
                wallStarI[w] = a * hr * ti;
                wallAirR[w] = a * hc * tr;
                wallAirI[w] = a * hc * ti;
            }
        }

        private void twoSided(int w) {
            int z1 = model.front[w];
            int z2 = model.back[w];
            double a = model.area[w];
            double hc1 = model.frontConvection[w];
            double hr1 = model.frontRadiation[w];
            double hc2 = model.backConvection[w];
            double hr2 = model.backRadiation[w];
            int at = 8 * model.construction[w];
            double ar = y[at] + hc1 + hr1;
            double ai = y[at + 1];
            double tr = y[at + 2];
            double ti = y[at + 3];
            double br = y[at + 4] + hc2 + hr2;
            double bi = y[at + 5];
            double detr = ar * br - ai * bi - (tr * tr - ti * ti);
            double deti = ar * bi + ai * br - 2 * tr * ti;
            double inv = 1 / (detr * detr + deti * deti);
            double ir = detr * inv;
            double ii = -deti * inv;
            double f11r = br * ir - bi * ii;
            double f11i = br * ii + bi * ir;
            double f22r = ar * ir - ai * ii;
            double f22i = ar * ii + ai * ir;
            double f12r = tr * ir - ti * ii;
            double f12i = tr * ii + ti * ir;
            int s1 = z1;
            int a1 = zones + z1;
            int s2 = z2;
            int a2 = zones + z2;
            add(s1, s1, a * hr1 * (1 - hr1 * f11r), -a * hr1 * hr1 * f11i);
            add(a1, a1, a * hc1 * (1 - hc1 * f11r), -a * hc1 * hc1 * f11i);
            addBoth(s1, a1, -a * hr1 * hc1 * f11r, -a * hr1 * hc1 * f11i);
            add(s2, s2, a * hr2 * (1 - hr2 * f22r), -a * hr2 * hr2 * f22i);
            add(a2, a2, a * hc2 * (1 - hc2 * f22r), -a * hc2 * hc2 * f22i);
            addBoth(s2, a2, -a * hr2 * hc2 * f22r, -a * hr2 * hc2 * f22i);
            addBoth(s1, s2, -a * hr1 * hr2 * f12r, -a * hr1 * hr2 * f12i);
            addBoth(s1, a2, -a * hr1 * hc2 * f12r, -a * hr1 * hc2 * f12i);
            addBoth(a1, s2, -a * hc1 * hr2 * f12r, -a * hc1 * hr2 * f12i);
            addBoth(a1, a2, -a * hc1 * hc2 * f12r, -a * hc1 * hc2 * f12i);
            radiant(z1, w, s1, a * hr1 * f11r, a * hr1 * f11i);
            radiant(z1, w, a1, a * hc1 * f11r, a * hc1 * f11i);
            radiant(z1, w, s2, a * hr2 * f12r, a * hr2 * f12i);
            radiant(z1, w, a2, a * hc2 * f12r, a * hc2 * f12i);
            radiant(z2, w, s2, a * hr2 * f22r, a * hr2 * f22i);
            radiant(z2, w, a2, a * hc2 * f22r, a * hc2 * f22i);
            radiant(z2, w, s1, a * hr1 * f12r, a * hr1 * f12i);
            radiant(z2, w, a1, a * hc1 * f12r, a * hc1 * f12i);
        }

        private void add(int i, int j, double re, double im) {
            gr[i * nodes + j] += re;
            gi[i * nodes + j] += im;
        }

        /**
         * Adds at (i, j) and (j, i); twice in one place if they coincide, as the sum over faces
         * asks.
         */
        private void addBoth(int i, int j, double re, double im) {
            add(i, j, re, im);
            add(j, i, re, im);
        }

        /**
         * Heat reaching a node when each square metre of the drive zone's faces absorbs one watt /
         * area.
         */
        private void radiant(int driveZone, int wall, int node, double re, double im) {
            double share = 1 / faceArea[driveZone];
            int at = driveZone * nodes + node;
            er[at] += re * share;
            ei[at] += im * share;
            // a zone of glass alone has to take the sun on its glass
            if (!model.glass[wall] || opaqueArea[driveZone] == 0) {
                double opaque = opaqueArea[driveZone] == 0 ? share : 1 / opaqueArea[driveZone];
                at += zones * nodes;
                er[at] += re * opaque;
                ei[at] += im * opaque;
            }
        }

        /** L D L^T of the unknown part, complex symmetric; its real part is positive definite. */
        private void decompose() {
            int u = unknowns;
            for (int i = 0; i < nodes; i++) {
                int ui = unknownOf[i];
                if (ui < 0) {
                    continue;
                }
                for (int j = 0; j <= i; j++) {
                    int uj = unknownOf[j];
                    if (uj >= 0) {
                        fr[ui * u + uj] = gr[i * nodes + j];
                        fi[ui * u + uj] = gi[i * nodes + j];
                    }
                }
            }
            for (int j = 0; j < u; j++) {
                double djr = fr[j * u + j];
                double dji = fi[j * u + j];
                double size = djr * djr + dji * dji;
                if (!(size > 1e-24)) {
                    throw new IllegalArgumentException(
                            "a free zone is cut off: nothing links it to a temperature that is known");
                }
                double invr = djr / size;
                double invi = -dji / size;
                for (int i = j + 1; i < u; i++) {
                    double lr = fr[i * u + j];
                    double li = fi[i * u + j];
                    if (lr == 0 && li == 0) {
                        continue;
                    }
                    double qr = lr * invr - li * invi;
                    double qi = lr * invi + li * invr;
                    // row i minus q times column j, below the diagonal
                    for (int k = j + 1; k <= i; k++) {
                        double cr = fr[k * u + j];
                        double ci = fi[k * u + j];
                        fr[i * u + k] -= qr * cr - qi * ci;
                        fi[i * u + k] -= qr * ci + qi * cr;
                    }
                }
                for (int i = j + 1; i < u; i++) {
                    double lr = fr[i * u + j];
                    double li = fi[i * u + j];
                    fr[i * u + j] = lr * invr - li * invi;
                    fi[i * u + j] = lr * invi + li * invr;
                }
                fr[j * u + j] = invr;
                fi[j * u + j] = invi;
            }
        }

        /** Solves for every zone the row that turns injections into its answer. */
        private void rows() {
            int u = unknowns;
            for (int z = 0; z < zones; z++) {
                int at = z * u;
                int air = zones + z;
                if (model.held[z]) {
                    for (int i = 0; i < nodes; i++) {
                        int ui = unknownOf[i];
                        if (ui >= 0) {
                            pr[at + ui] = -gr[air * nodes + i];
                            pi[at + ui] = -gi[air * nodes + i];
                        }
                    }
                } else {
                    java.util.Arrays.fill(pr, at, at + u, 0);
                    java.util.Arrays.fill(pi, at, at + u, 0);
                    pr[at + unknownOf[air]] = 1;
                }
                for (int i = 0; i < u; i++) {
                    double sr = pr[at + i];
                    double si = pi[at + i];
                    for (int k = 0; k < i; k++) {
                        double lr = fr[i * u + k];
                        double li = fi[i * u + k];
                        sr -= lr * pr[at + k] - li * pi[at + k];
                        si -= lr * pi[at + k] + li * pr[at + k];
                    }
                    pr[at + i] = sr;
                    pi[at + i] = si;
                }
                for (int i = u - 1; i >= 0; i--) {
                    double sr = pr[at + i] * fr[i * u + i] - pi[at + i] * fi[i * u + i];
                    double si = pr[at + i] * fi[i * u + i] + pi[at + i] * fr[i * u + i];
                    for (int k = i + 1; k < u; k++) {
                        double lr = fr[k * u + i];
                        double li = fi[k * u + i];
                        sr -= lr * pr[at + k] - li * pi[at + k];
                        si -= lr * pi[at + k] + li * pr[at + k];
                    }
                    pr[at + i] = sr;
                    pi[at + i] = si;
                }
            }
        }

        /** Works out every transfer at this frequency, once: by zone, then by drive. */
        private void transfers() {
            int u = unknowns;
            int drives = model.walls + 4 * zones;
            for (int z = 0; z < zones; z++) {
                int row = z * u;
                int place = 2 * z * drives;
                for (int w : boundaryWalls) {
                    int a = model.front[w];
                    double sr = wallStarR[w];
                    double si = wallStarI[w];
                    double re = pr[row + a] * sr - pi[row + a] * si;
                    double im = pr[row + a] * si + pi[row + a] * sr;
                    int ua = unknownOf[zones + a];
                    if (ua >= 0) {
                        double cr = wallAirR[w];
                        double ci = wallAirI[w];
                        re += pr[row + ua] * cr - pi[row + ua] * ci;
                        im += pr[row + ua] * ci + pi[row + ua] * cr;
                    } else if (a == z) {
                        re += wallAirR[w];
                        im += wallAirI[w];
                    }
                    now[place + 2 * w] = re;
                    now[place + 2 * w + 1] = im;
                }
                int at = place + 2 * model.walls;
                for (int d = 0; d < 2 * zones; d++) {
                    // what is absorbed in a zone, and what of it reaches this zone's own air
                    // directly
                    int from = d * nodes;
                    int own = from + zones + z;
                    boolean direct = model.held[z];
                    double re = direct ? er[own] : 0;
                    double im = direct ? ei[own] : 0;
                    for (int i : near[d % zones]) {
                        int ui = unknownOf[i];
                        double xr = er[from + i];
                        double xi = ei[from + i];
                        re += pr[row + ui] * xr - pi[row + ui] * xi;
                        im += pr[row + ui] * xi + pi[row + ui] * xr;
                    }
                    now[at] = re;
                    now[at + 1] = im;
                    at += 2;
                }
                for (int d = 0; d < zones; d++) {
                    int ua = unknownOf[zones + d];
                    if (ua >= 0) {
                        now[at] = pr[row + ua];
                        now[at + 1] = pi[row + ua];
                    } else {
                        now[at] = d == z ? 1 : 0;
                    }
                    at += 2;
                }
                for (int d = 0; d < zones; d++, at += 2) {
                    if (!model.held[d]) {
                        continue;
                    }
                    // held temperature: -(G(z, d) + p . G(u, d)) for a load, -p . G(u, d) for a
                    // temperature
                    int air = (zones + d) * nodes;
                    double re = model.held[z] ? -gr[air + zones + z] : 0;
                    double im = model.held[z] ? -gi[air + zones + z] : 0;
                    for (int i : near[d]) {
                        int ui = unknownOf[i];
                        double xr = gr[air + i];
                        double xi = gi[air + i];
                        re -= pr[row + ui] * xr - pi[row + ui] * xi;
                        im -= pr[row + ui] * xi + pi[row + ui] * xr;
                    }
                    now[at] = re;
                    now[at + 1] = im;
                }
            }
        }

        /** Unknown nodes of a zone and of those it shares a wall with. */
        private int[][] neighbours() {
            boolean[][] linked = new boolean[zones][zones];
            for (int z = 0; z < zones; z++) {
                linked[z][z] = true;
            }
            for (int w = 0; w < model.walls; w++) {
                if (model.back[w] >= 0) {
                    linked[model.front[w]][model.back[w]] = true;
                    linked[model.back[w]][model.front[w]] = true;
                }
            }
            int[][] lists = new int[zones][];
            int[] list = new int[nodes];
            for (int z = 0; z < zones; z++) {
                int n = 0;
                for (int i = 0; i < nodes; i++) {
                    if (linked[z][i % zones] && unknownOf[i] >= 0) {
                        list[n++] = i;
                    }
                }
                lists[z] = java.util.Arrays.copyOf(list, n);
            }
            return lists;
        }

        /** Adds wr Re + i wi Im of every transfer at this frequency to harmonic m. */
        void collect(int m, double wr, double wi) {
            double[] to = sum[m];
            for (int i = 0; i < to.length; i += 2) {
                to[i] += wr * now[i];
                to[i + 1] += wi * now[i + 1];
            }
        }

        /** Adds a block of the tail to all harmonics. */
        void collect(Tail tail, int block) {
            for (int m = 1; m <= 12; m++) {
                collect(m, tail.real(block, m), tail.imaginary(block, m));
            }
        }

        /** Hands the sums over, harmonics of a transfer side by side. */
        void deliver(HouseResponse response) {
            double[] out = response.folded;
            for (int m = 0; m < sum.length; m++) {
                double[] from = sum[m];
                int i = 0;
                for (int z = 0; z < zones; z++) {
                    int at = z * WIDTH + 2 * m;
                    for (int end = i + from.length / zones; i < end; i += 2) {
                        out[at] = from[i];
                        out[at + 1] = from[i + 1];
                        at += zones * WIDTH;
                    }
                }
            }
        }
    }
}
