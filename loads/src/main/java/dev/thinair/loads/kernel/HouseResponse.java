package dev.thinair.loads.kernel;

import dev.thinair.units.Range;
import java.util.Arrays;

/**
 * What a house answers to every day-periodic drive: the heat that must be taken from each held zone
 * to keep its air temperature, and the air temperature of each free zone.
 *
 * <p>For each harmonic of the day the wall faces are eliminated by their admittances ({@link
 * Transmission}), which leaves a complex symmetric system of radiant and free air nodes; its
 * solution gives the transfer from every drive to every zone, exact at each harmonic computed.
 * Harmonics beyond the twelfth are folded back ({@link HourlyInterpolation}), so that 24 hourly
 * values joined by straight lines are answered at the hour marks; most of those harmonics are
 * interpolated, which is the only approximation and is measured at {@link #DEFAULT_CYCLES}. Nothing
 * is iterated and no table is used; being linear, the answers to single drives add up to the answer
 * to all.
 *
 * <p>Method: F. Alamdari, M. G. Davies and others' admittance procedure carried to all harmonics;
 * the room network with one radiant node is the star of M. G. Davies, Building Heat Transfer, 2004,
 * ch. 4 (from memory). Source of the wall matrices: ISO 13786:2017.
 *
 * <p>Drives, by index, with W walls and Z zones: {@link #wallDrive} temperature behind a wall (K);
 * {@link #radiantDrive} radiant heat spread over all faces of a zone by area (W); {@link #sunDrive}
 * radiant heat spread over the opaque faces of a zone by area (W); {@link #airDrive} heat to a
 * zone's air (W); {@link #holdDrive} air temperature of a held zone (K). Walls that share a drive
 * ({@link HouseModel.Builder#drive}) are answered together: the answer under any of them is that of
 * all.
 *
 * <p>Cost: at each of 21 frequencies the layers and wall types once, then a few multiplications per
 * wall, and one small system with as many unknowns as zones. Walls of the same type, place and
 * drive are merged, so the cost per wall is small; with zones it grows faster than linearly, as
 * every zone answers every drive. Immutable.
 */
public final class HouseResponse {
    /**
     * Cycles value for twelve plain harmonics without folding: rings at steps; for comparison only.
     */
    public static final int PLAIN = -1;

    /**
     * Folded cycles that {@link #solve(HouseModel)} uses: no harmonic beyond the twelfth is
     * computed as such, all are interpolated from eight frequencies.
     *
     * <p>Accuracy, measured against 60 cycles (1452 harmonics one by one) as the largest error of
     * an hour over the swing of the day, for a light room (gypsum board, framed walls) and a heavy
     * one (150 mm concrete), each with a window, under a free attic whose air has a time constant
     * of 20 s to hours or none: on a design day 1e-5 for a room's load and 5e-5 for the attic's
     * temperature; with a drive that is switched on and off within an hour 2e-4 for both, except
     * for heat switched into attic air that turns over within some 100 s, where the temperature
     * errs by up to 7e-4 of its swing. Tests hold these bounds.
     */
    public static final int DEFAULT_CYCLES = 0;

    private static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;

    private final int walls;
    private final int zones;
    private final boolean[] held;
    private final int[] column; // by drive; -1 if there is nothing to look up
    private final int columns;
    private final int dynamic; // columns before this one have harmonics, the rest a mean only
    private final double[][] real; // by harmonic: [column * zones + zone]
    private final double[][] imaginary;
    private final Followed followed;

    private HouseResponse(
            HouseModel model,
            Columns columns,
            double[][] real,
            double[][] imaginary,
            Followed followed) {
        walls = model.walls;
        zones = model.zones;
        held = model.held;
        column = columns.of;
        this.columns = columns.count;
        dynamic = columns.dynamic;
        this.real = real;
        this.imaginary = imaginary;
        this.followed = followed;
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
     *     to 1000; the rest is interpolated ({@link Tail}). Or {@link #PLAIN}
     * @return its response
     * @throws IllegalArgumentException if cycles is out of range or a free zone is cut off from
     *     everything held
     */
    public static HouseResponse solve(HouseModel model, int cycles) {
        Range.require("folded cycles", cycles, PLAIN, 1000, "");
        return solve(model, cycles, new int[0], null);
    }

    /** Keeps harmonics of the air temperatures of some held zones only, or of all if null. */
    static HouseResponse solve(HouseModel model, int cycles, int[] follow, int[] swinging) {
        Columns columns = new Columns(model, swinging);
        Solver solver = new Solver(model, columns);
        int size = columns.dynamic * model.zones;
        double[][] re = new double[HourlyInterpolation.HARMONICS][];
        double[][] im = new double[HourlyInterpolation.HARMONICS][];
        re[0] = new double[columns.count * model.zones];
        im[0] = re[0].clone();
        Followed followed = new Followed(model, columns, follow, 13 + Tail.NODES);
        solver.factor(0);
        solver.transfers(re[0], im[0], columns.count);
        followed.keep(0, model.zones, re[0], im[0]);
        for (int m = 1; m <= 12; m++) {
            re[m] = new double[size];
            im[m] = new double[size];
            solver.factor(m * Transmission.OMEGA_DAY);
            solver.transfers(re[m], im[m], columns.dynamic);
            followed.keep(m, model.zones, re[m], im[m]);
            scale(re[m], realWeight(m, cycles));
            scale(im[m], imaginaryWeight(m, cycles));
        }
        if (cycles == PLAIN) {
            return new HouseResponse(model, columns, re, im, followed);
        }
        double[][] hr = new double[2][size];
        double[][] hi = new double[2][size];
        for (int n = 13; n <= 12 + 24 * cycles; n++) {
            int m = HourlyInterpolation.folded(n);
            if (m != 0) { // else the weight is zero
                solver.factor(n * Transmission.OMEGA_DAY);
                solver.transfers(hr[0], hi[0], columns.dynamic);
                add(re[m], realWeight(n, cycles), hr[0]);
                add(im[m], imaginaryWeight(n, cycles), hi[0]);
            }
        }
        Tail tail = Tail.beyond(cycles);
        for (int k = 0; k < Tail.NODES; k += 2) {
            for (int i = 0; i < 2; i++) {
                solver.factor(tail.harmonic(k + i) * Transmission.OMEGA_DAY);
                solver.transfers(hr[i], hi[i], columns.dynamic);
                followed.keep(13 + k + i, model.zones, hr[i], hi[i]);
            }
            tail.fold(k, hr, hi, re, im);
        }
        return new HouseResponse(model, columns, re, im, followed);
    }

    /**
     * Solves the steady state only; harmonics are left at zero.
     *
     * @param model the house
     * @return its steady response
     * @throws IllegalArgumentException if a free zone is cut off from everything held
     */
    public static HouseResponse steady(HouseModel model) {
        return steady(model, new int[0]);
    }

    static HouseResponse steady(HouseModel model, int[] follow) {
        Columns columns = new Columns(model, new int[0]);
        Solver solver = new Solver(model, columns);
        double[][] re = new double[HourlyInterpolation.HARMONICS][];
        double[][] im = new double[HourlyInterpolation.HARMONICS][];
        re[0] = new double[columns.count * model.zones];
        im[0] = re[0].clone();
        solver.factor(0);
        solver.transfers(re[0], im[0], columns.count);
        Followed followed = new Followed(model, columns, follow, 1);
        followed.keep(0, model.zones, re[0], im[0]);
        Arrays.fill(re, 1, re.length, new double[columns.dynamic * model.zones]);
        Arrays.fill(im, 1, im.length, re[1]);
        return new HouseResponse(model, columns, re, im, followed);
    }

    static double realWeight(int n, int cycles) {
        if (cycles == PLAIN) {
            return 1;
        }
        // harmonic 12 and its like land on themselves, conjugated as well
        double w = HourlyInterpolation.weight(n);
        return HourlyInterpolation.folded(n) == 12 ? 2 * w : w;
    }

    static double imaginaryWeight(int n, int cycles) {
        if (HourlyInterpolation.folded(n) == 12) {
            return 0;
        }
        double w = cycles == PLAIN ? 1 : HourlyInterpolation.weight(n);
        return HourlyInterpolation.conjugated(n) ? -w : w;
    }

    private static void scale(double[] x, double by) {
        for (int i = 0; i < x.length; i++) {
            x[i] *= by;
        }
    }

    private static void add(double[] sum, double w, double[] x) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += w * x[i];
        }
    }

    /**
     * The harmonics beyond those computed one by one. As a function of {@code s = 1/sqrt(n)} a
     * transfer is smooth down to s = 0 (thick layers go with s, capacities with s squared), so it
     * is taken as the polynomial through Chebyshev's points of the range of s, and the weights of
     * all aliases are gathered at those points beforehand.
     */
    static final class Tail {
        static final int NODES = 8; // even, as they are gathered in pairs
        private static final int EXPLICIT = 400;
        private static final Tail USUAL = new Tail(DEFAULT_CYCLES);
        private final double[] s = new double[NODES];
        private final double[][] real = new double[13][NODES];
        private final double[][] imaginary = new double[13][NODES];

        private Tail(int cycles) {
            double end = 1 / Math.sqrt(13 + 24.0 * cycles);
            for (int k = 0; k < NODES; k++) {
                s[k] = 0.5 * end * (1 + Math.cos((2 * k + 1) * Math.PI / (2 * NODES)));
            }
            double[] all = new double[13];
            for (int n = 1; n <= 12 + 24 * cycles; n++) {
                all[HourlyInterpolation.folded(n)] += realWeight(n, cycles);
            }
            int to = cycles + EXPLICIT;
            for (int n = 13 + 24 * cycles; n <= 12 + 24 * to; n++) {
                int m = HourlyInterpolation.folded(n);
                if (m != 0) {
                    double w = realWeight(n, cycles);
                    all[m] += w;
                    spread(m, n, w, imaginaryWeight(n, cycles));
                }
            }
            for (int m = 1; m <= 12; m++) {
                // weights sum to one; the rest falls as 1/j^2 and is taken at its centre in s
                spread(m, 24 * to * 2.25, 1 - all[m], 0);
            }
        }

        private void spread(int m, double n, double wr, double wi) {
            double x = 1 / Math.sqrt(n);
            for (int k = 0; k < NODES; k++) {
                double basis = 1;
                for (int i = 0; i < NODES; i++) {
                    if (i != k) {
                        basis *= (x - s[i]) / (s[k] - s[i]);
                    }
                }
                real[m][k] += wr * basis;
                imaginary[m][k] += wi * basis;
            }
        }

        static Tail beyond(int cycles) {
            return cycles == DEFAULT_CYCLES ? USUAL : new Tail(cycles);
        }

        double realAt(int node, int m) {
            return real[m][node];
        }

        double imaginaryAt(int node, int m) {
            return m == 12 ? 0 : imaginary[m][node];
        }

        double harmonic(int node) {
            return 1 / (s[node] * s[node]);
        }

        /** Adds the transfers at two nodes, from the k-th, to the harmonics they stand for. */
        void fold(int k, double[][] hr, double[][] hi, double[][] re, double[][] im) {
            for (int m = 1; m <= 12; m++) {
                gather(real[m][k], hr[0], real[m][k + 1], hr[1], re[m]);
                if (m < 12) {
                    gather(imaginary[m][k], hi[0], imaginary[m][k + 1], hi[1], im[m]);
                }
            }
        }

        private static void gather(double w0, double[] h0, double w1, double[] h1, double[] sum) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += w0 * h0[i] + w1 * h1[i];
            }
        }
    }

    /** Which drives have transfers to keep. */
    private static final class Columns {
        final int[] of; // by drive, -1 for none
        final int dynamic;
        final int count;
        final int radiant; // column of the first zone
        final int sun;
        final int steadyWalls; // column of the first

        Columns(HouseModel model, int[] swinging) {
            int walls = model.walls;
            int zones = model.zones;
            of = new int[walls + 4 * zones];
            Arrays.fill(of, -1);
            int[] ofDrive = new int[model.steadyDrive.length];
            Arrays.fill(ofDrive, -1);
            int next = walls(model, ofDrive, false, 0);
            radiant = next;
            sun = next + zones;
            for (int i = 0; i < 2 * zones; i++) {
                of[walls + i] = next++;
            }
            for (int z = 0; z < zones; z++) {
                if (!model.held[z]) {
                    of[walls + 2 * zones + z] = next++;
                }
            }
            boolean[] swings = new boolean[zones];
            Arrays.fill(swings, swinging == null);
            for (int z : swinging == null ? new int[0] : swinging) {
                swings[z] = true;
            }
            next = holds(model, swings, true, next);
            dynamic = next;
            steadyWalls = holds(model, swings, false, next);
            count = walls(model, ofDrive, true, steadyWalls);
        }

        private int holds(HouseModel model, boolean[] swings, boolean swinging, int first) {
            int next = first;
            for (int z = 0; z < model.zones; z++) {
                if (model.held[z] && swings[z] == swinging) {
                    of[model.walls + 3 * model.zones + z] = next++;
                }
            }
            return next;
        }

        private int walls(HouseModel model, int[] ofDrive, boolean steady, int first) {
            int next = first;
            for (int w = 0; w < model.walls; w++) {
                int drive = model.drive[w];
                if (model.back[w] == HouseModel.BOUNDARY && model.steadyDrive[drive] == steady) {
                    if (ofDrive[drive] < 0) {
                        ofDrive[drive] = next++;
                    }
                    of[w] = ofDrive[drive];
                }
            }
            return next;
        }
    }

    /**
     * Transfers before folding to and from a few zones, at every frequency, for {@link
     * FloatingAir}.
     */
    private static final class Followed {
        final int[] zone;
        final double[][] rowRe; // by frequency: [zone * columns + column]
        final double[][] rowIm;
        final double[][] holdRe; // by frequency: [zone * zones + zone answering]
        final double[][] holdIm;
        private final int[] holdColumn;

        Followed(HouseModel model, Columns columns, int[] zone, int frequencies) {
            this.zone = zone;
            rowRe = new double[frequencies][];
            rowIm = new double[frequencies][];
            holdRe = new double[frequencies][];
            holdIm = new double[frequencies][];
            holdColumn = new int[zone.length];
            for (int a = 0; a < zone.length; a++) {
                holdColumn[a] = columns.of[model.walls + 3 * model.zones + zone[a]];
            }
        }

        void keep(int frequency, int zones, double[] re, double[] im) {
            if (zone.length == 0) {
                return;
            }
            int n = re.length / zones;
            double[] rr = new double[zone.length * n];
            double[] ri = new double[zone.length * n];
            double[] hr = new double[zone.length * zones];
            double[] hi = new double[zone.length * zones];
            for (int a = 0; a < zone.length; a++) {
                for (int d = 0; d < n; d++) {
                    rr[a * n + d] = re[d * zones + zone[a]];
                    ri[a * n + d] = im[d * zones + zone[a]];
                }
                System.arraycopy(re, holdColumn[a] * zones, hr, a * zones, zones);
                System.arraycopy(im, holdColumn[a] * zones, hi, a * zones, zones);
            }
            rowRe[frequency] = rr;
            rowIm[frequency] = ri;
            holdRe[frequency] = hr;
            holdIm[frequency] = hi;
        }
    }

    /** Refusal of a free zone without any link; with several that touch, the last is named. */
    static IllegalArgumentException cutOff(int zone) {
        return new IllegalArgumentException(
                "free zone "
                        + zone
                        + " is cut off: nothing links it, nor the free zones it touches, to a"
                        + " temperature that is known");
    }

    /** Zones whose transfers before folding were kept. */
    int[] followed() {
        return followed.zone;
    }

    /** Frequencies at which they were kept: harmonics 0 to 12, then the tail's; one if steady. */
    int frequencies() {
        return followed.rowRe.length;
    }

    /**
     * Adds what followed zones answer to a drive, times a factor: [frequency * followed + zone].
     */
    void addRow(int drive, double factor, double[] re, double[] im) {
        int c = column[drive];
        int n = followed.zone.length;
        for (int f = 0; f < followed.rowRe.length && c >= 0; f++) {
            int width = f == 0 ? columns : dynamic;
            if (c < width) {
                for (int a = 0; a < n; a++) {
                    re[f * n + a] += factor * followed.rowRe[f][a * width + c];
                    im[f * n + a] += factor * followed.rowIm[f][a * width + c];
                }
            }
        }
    }

    /** What a zone answers to the air temperature of a followed zone at a frequency. */
    double holdReal(int frequency, int followedZone, int zone) {
        return followed.holdRe[frequency][followedZone * zones + zone];
    }

    double holdImaginary(int frequency, int followedZone, int zone) {
        return followed.holdIm[frequency][followedZone * zones + zone];
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
     * Drive of the temperature behind a wall, K; zero response unless the wall is at a boundary. It
     * stands for all walls that share the drive.
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
        int c = column[drive];
        return c >= 0 ? real[0][c * zones + zone] : ownAir(drive, zone);
    }

    /** Heat to the air of a held zone is load at once; other drives without column do nothing. */
    private double ownAir(int drive, int zone) {
        return drive == airDrive(zone) && held[zone] ? 1 : 0;
    }

    /**
     * Folded transfer from a drive to a zone; of a steady drive the mean only.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @param out receives re and im for m = 0..12 (26 numbers)
     */
    public void transfer(int drive, int zone, double[] out) {
        int c = column[drive];
        int at = c * zones + zone;
        for (int m = 0; m < HourlyInterpolation.HARMONICS; m++) {
            boolean there = c >= 0 && (m == 0 || c < dynamic);
            out[2 * m] = there ? real[m][at] : c < 0 ? ownAir(drive, zone) : 0;
            out[2 * m + 1] = there ? imaginary[m][at] : 0;
        }
    }

    /**
     * Adds the answer of a zone to a drive, as spectrum.
     *
     * @param drive index of the drive
     * @param zone index of the zone
     * @param spectrum of the drive, re and im of X(0) to X(12); of a steady drive X(0) counts
     * @param at index of its first number
     * @param sum spectrum that is added to
     * @param sumAt index of its first number
     */
    public void addAnswer(int drive, int zone, double[] spectrum, int at, double[] sum, int sumAt) {
        int c = column[drive];
        if (c < 0) {
            double direct = ownAir(drive, zone);
            for (int i = 0; i < WIDTH; i++) {
                sum[sumAt + i] += direct * spectrum[at + i];
            }
            return;
        }
        int place = c * zones + zone;
        int harmonics = c < dynamic ? HourlyInterpolation.HARMONICS : 1;
        for (int m = 0; m < harmonics; m++) {
            double hr = real[m][place];
            double hi = imaginary[m][place];
            double xr = spectrum[at + 2 * m];
            double xi = spectrum[at + 2 * m + 1];
            sum[sumAt + 2 * m] += hr * xr - hi * xi;
            sum[sumAt + 2 * m + 1] += hr * xi + hi * xr;
        }
    }

    /**
     * Adds the answers of all zones to a drive, that of one zone apart.
     *
     * @param drive index of the drive, not heat to the air of a held zone
     * @param apart zone whose answer goes to its own place, or -1
     * @param spectrum of the drive, re and im of X(0) to X(12); of a steady drive X(0) counts
     * @param at index of its first number
     * @param sums for harmonic m and zone z, re at {@code (2 m) Z + z} and im at {@code (2 m + 1) Z
     *     + z} beyond the first are added to
     * @param sumsAt index of their first number
     * @param own spectrum, re and im of 0 to 12, that the answer of the zone apart is added to
     * @param ownAt index of its first number
     */
    public void addAnswers(
            int drive,
            int apart,
            double[] spectrum,
            int at,
            double[] sums,
            int sumsAt,
            double[] own,
            int ownAt) {
        int c = column[drive];
        if (c < 0) {
            return;
        }
        int place = c * zones;
        int harmonics = c < dynamic ? HourlyInterpolation.HARMONICS : 1;
        for (int m = 0; m < harmonics; m++) {
            double[] hr = real[m];
            double[] hi = imaginary[m];
            double xr = spectrum[at + 2 * m];
            double xi = spectrum[at + 2 * m + 1];
            if (xr == 0 && xi == 0) {
                continue;
            }
            int to = sumsAt + 2 * m * zones;
            if (apart >= 0) {
                double gr = hr[place + apart];
                double gi = hi[place + apart];
                own[ownAt + 2 * m] += gr * xr - gi * xi;
                own[ownAt + 2 * m + 1] += gr * xi + gi * xr;
                addRange(hr, hi, place, xr, xi, sums, to, 0, apart);
                addRange(hr, hi, place, xr, xi, sums, to, apart + 1, zones);
            } else {
                addRange(hr, hi, place, xr, xi, sums, to, 0, zones);
            }
        }
    }

    private void addRange(
            double[] hr,
            double[] hi,
            int place,
            double xr,
            double xi,
            double[] sums,
            int to,
            int from,
            int end) {
        for (int z = from; z < end; z++) {
            double gr = hr[place + z];
            double gi = hi[place + z];
            sums[to + z] += gr * xr - gi * xi;
            sums[to + zones + z] += gr * xi + gi * xr;
        }
    }

    /**
     * What zones answer to one temperature, or one heat flow per zone, behind several drives, each
     * zone to the drives of other zones only: {@link #addAnswers} of all of them with the sums over
     * drives formed beforehand. Not thread-safe while drives are added.
     */
    public static final class Others {
        private final HouseResponse response;
        private final int harmonics;
        private final double[] re; // [harmonic * zones + zone]
        private final double[] im;

        /**
         * Starts an empty sum.
         *
         * @param response whose drives are added
         * @param steady whether what the drives have in common is the same at all hours
         */
        public Others(HouseResponse response, boolean steady) {
            this.response = response;
            harmonics = steady ? 1 : HourlyInterpolation.HARMONICS;
            re = new double[harmonics * response.zones];
            im = new double[re.length];
        }

        /**
         * Adds a drive.
         *
         * @param drive index of the drive, not heat to the air of a held zone
         * @param apart zone whose answer is left out, or -1
         */
        public void add(int drive, int apart) {
            int c = response.column[drive];
            if (c < 0) {
                return;
            }
            int zones = response.zones;
            int count = c < response.dynamic ? harmonics : 1;
            for (int m = 0; m < count; m++) {
                for (int z = 0; z < zones; z++) {
                    if (z != apart) {
                        re[m * zones + z] += response.real[m][c * zones + z];
                        im[m * zones + z] += response.imaginary[m][c * zones + z];
                    }
                }
            }
        }

        /**
         * Adds the answers of all zones.
         *
         * @param spectrum of what the drives have in common, re and im of X(0) to X(12); X(0)
         *     counts if steady
         * @param at index of its first number
         * @param sums for harmonic m and zone z, re at {@code (2 m) Z + z} and im at {@code (2 m +
         *     1) Z + z} beyond the first are added to
         * @param sumsAt index of their first number
         */
        public void addAnswers(double[] spectrum, int at, double[] sums, int sumsAt) {
            int zones = response.zones;
            for (int m = 0; m < harmonics; m++) {
                double xr = spectrum[at + 2 * m];
                double xi = spectrum[at + 2 * m + 1];
                int to = sumsAt + 2 * m * zones;
                int from = m * zones;
                for (int z = 0; z < zones; z++) {
                    double gr = re[from + z];
                    double gi = im[from + z];
                    sums[to + z] += gr * xr - gi * xi;
                    sums[to + zones + z] += gr * xi + gi * xr;
                }
            }
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
        transfer(drive, zone, spectrum);
        for (int i = 0; i < WIDTH; i++) {
            spectrum[i] /= HourlyInterpolation.HOURS;
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

    /**
     * What walls have in common: layers, films, and whether a zone, a boundary or nothing is
     * behind.
     */
    private static final class Types {
        static final int LINKS = 26;
        final int[] of; // by wall
        int count;
        int[] wall = new int[16]; // one that is of the type
        // by type at one frequency: 1/D and Y12/D of a one-sided wall; the inverse of the faces'
        // 2 x 2 system (11, 22, 12) of a two-sided one
        final double[] now;
        // by type at one frequency, per area: what faces do between their nodes, and apart from
        // these what a wall does whose two faces look into one zone
        final double[] links;
        private final int[] layerOf; // by construction and place
        private final int[] firstLayer;
        private final double[] layerR;
        private final double[] layerC;
        private final double[] layers; // five numbers each
        private final HouseModel model;

        Types(HouseModel model) {
            this.model = model;
            of = new int[model.walls];
            for (int w = 0; w < model.walls; w++) {
                int t = 0;
                while (t < count && !alike(wall[t], w)) {
                    t++;
                }
                if (t == count) {
                    if (count == wall.length) {
                        wall = Arrays.copyOf(wall, 2 * count);
                    }
                    wall[count++] = w;
                }
                of[w] = t;
            }
            now = new double[6 * count];
            links = new double[LINKS * count];
            int n = 0;
            firstLayer = new int[model.resistance.length];
            for (int k = 0; k < firstLayer.length; k++) {
                firstLayer[k] = n;
                n += model.resistance[k].length;
            }
            layerOf = new int[n];
            double[] r = new double[n];
            double[] c = new double[n];
            int distinct = 0;
            for (int k = 0; k < firstLayer.length; k++) {
                for (int l = 0; l < model.resistance[k].length; l++) {
                    double rl = model.resistance[k][l];
                    double cl = model.capacity[k][l];
                    int i = 0;
                    while (i < distinct && !(r[i] == rl && c[i] == cl)) {
                        i++;
                    }
                    if (i == distinct) {
                        r[distinct] = rl;
                        c[distinct++] = cl;
                    }
                    layerOf[firstLayer[k] + l] = i;
                }
            }
            layerR = Arrays.copyOf(r, distinct);
            layerC = Arrays.copyOf(c, distinct);
            layers = new double[5 * distinct];
        }

        private boolean alike(int a, int b) {
            return model.construction[a] == model.construction[b]
                    && side(model.back[a]) == side(model.back[b])
                    && model.frontConvection[a] == model.frontConvection[b]
                    && model.frontRadiation[a] == model.frontRadiation[b]
                    && model.backConvection[a] == model.backConvection[b]
                    && model.backRadiation[a] == model.backRadiation[b];
        }

        private static int side(int back) {
            return Math.min(back, 0);
        }

        void at(double omega) {
            for (int i = 0; i < layerR.length; i++) {
                double y = omega * layerR[i] * layerC[i];
                if (y > 0) {
                    Transmission.layer(y, layers, 5 * i);
                } else {
                    layers[5 * i] = Double.NaN; // marks a layer without capacity
                }
            }
            for (int t = 0; t < count; t++) {
                int w = wall[t];
                int k = model.construction[w];
                double h = model.frontConvection[w] + model.frontRadiation[w];
                if (model.back[w] == HouseModel.BOUNDARY) {
                    boundary(t, k, omega, h);
                    linkFront(t, w);
                } else if (model.back[w] == HouseModel.ADIABATIC) {
                    adiabatic(t, k, omega, h);
                    linkFront(t, w);
                } else {
                    double back = model.backConvection[w] + model.backRadiation[w];
                    between(t, k, omega, h, back);
                    linkFront(t, w);
                    linkBoth(t, w);
                }
            }
        }

        /** Star to star, air to air and star to air of a front face. */
        private void linkFront(int t, int w) {
            double hc = model.frontConvection[w];
            double hr = model.frontRadiation[w];
            int at = LINKS * t;
            own(at, hr, hc, now[6 * t], now[6 * t + 1]);
        }

        private void own(int at, double hr, double hc, double re, double im) {
            links[at] = hr * (1 - hr * re);
            links[at + 1] = -hr * hr * im;
            links[at + 2] = hc * (1 - hc * re);
            links[at + 3] = -hc * hc * im;
            links[at + 4] = -hr * hc * re;
            links[at + 5] = -hr * hc * im;
        }

        /** The same of the back face; then between the two; then all within one zone. */
        private void linkBoth(int t, int w) {
            double hc1 = model.frontConvection[w];
            double hr1 = model.frontRadiation[w];
            double hc2 = model.backConvection[w];
            double hr2 = model.backRadiation[w];
            int at = LINKS * t;
            own(at + 6, hr2, hc2, now[6 * t + 2], now[6 * t + 3]);
            across(at + 12, -hr1 * hr2, t);
            across(at + 14, -hr1 * hc2, t);
            across(at + 16, -hc1 * hr2, t);
            across(at + 18, -hc1 * hc2, t);
            for (int i = 0; i < 2; i++) {
                links[at + 20 + i] = links[at + i] + links[at + 6 + i] + 2 * links[at + 12 + i];
                links[at + 22 + i] = links[at + 2 + i] + links[at + 8 + i] + 2 * links[at + 18 + i];
                links[at + 24 + i] =
                        links[at + 4 + i]
                                + links[at + 10 + i]
                                + links[at + 14 + i]
                                + links[at + 16 + i];
            }
        }

        private void across(int at, double factor, int t) {
            links[at] = factor * now[6 * t + 4];
            links[at + 1] = factor * now[6 * t + 5];
        }

        // a column of the heat transfer matrix, carried layer by layer from the back
        private double ur;
        private double ui;
        private double vr;
        private double vi;
        private double scale;

        private void carry(int k, double omega, double u, double v) {
            double xr = u;
            double xi = 0;
            double yr = v;
            double yi = 0;
            double s = 0;
            for (int l = model.resistance[k].length - 1; l >= 0; l--) {
                int i = layerOf[firstLayer[k] + l];
                double res = layerR[i];
                double chr = layers[5 * i];
                if (Double.isNaN(chr)) {
                    xr += res * yr;
                    xi += res * yi;
                    continue;
                }
                double chi = layers[5 * i + 1];
                double sr = layers[5 * i + 2];
                double si = layers[5 * i + 3];
                s += layers[5 * i + 4];
                double y = omega * layerC[i];
                double nxr = chr * xr - chi * xi + res * (sr * yr - si * yi);
                double nxi = chr * xi + chi * xr + res * (sr * yi + si * yr);
                double nyr = chr * yr - chi * yi - y * (sr * xi + si * xr);
                double nyi = chr * yi + chi * yr + y * (sr * xr - si * xi);
                xr = nxr;
                xi = nxi;
                yr = nyr;
                yi = nyi;
            }
            ur = xr;
            ui = xi;
            vr = yr;
            vi = yi;
            scale = s;
        }

        /** q = 1 / (Y11 + h) = B / (D + h B) and Y12 q = 1 / (D + h B). */
        private void boundary(int t, int k, double omega, double h) {
            carry(k, omega, 0, 1);
            double dr = vr + h * ur;
            double di = vi + h * ui;
            double inv = 1 / (dr * dr + di * di);
            now[6 * t] = (ur * dr + ui * di) * inv;
            now[6 * t + 1] = (ui * dr - ur * di) * inv;
            double down = scale == 0 ? inv : inv * Math.exp(-scale);
            now[6 * t + 2] = dr * down;
            now[6 * t + 3] = -di * down;
        }

        /** q = 1 / (C / A + h). */
        private void adiabatic(int t, int k, double omega, double h) {
            carry(k, omega, 1, 0);
            double dr = vr + h * ur;
            double di = vi + h * ui;
            double inv = 1 / (dr * dr + di * di);
            now[6 * t] = (ur * dr + ui * di) * inv;
            now[6 * t + 1] = (ui * dr - ur * di) * inv;
        }

        /**
         * Inverse of ((Y11 + h1, -Y12), (-Y12, Y22 + h2)); with the matrix' determinant of one its
         * denominator is {@code C + h1 A + h2 D + h1 h2 B}, which cancels nothing.
         */
        private void between(int t, int k, double omega, double h1, double h2) {
            carry(k, omega, 1, 0);
            double ar = ur;
            double ai = ui;
            double cr = vr;
            double ci = vi;
            carry(k, omega, 0, 1);
            double nr = cr + h1 * ar + h2 * (vr + h1 * ur);
            double ni = ci + h1 * ai + h2 * (vi + h1 * ui);
            double inv = 1 / (nr * nr + ni * ni);
            double ir = nr * inv;
            double ii = -ni * inv;
            double xr = ar + h2 * ur;
            double xi = ai + h2 * ui;
            double yr = vr + h1 * ur;
            double yi = vi + h1 * ui;
            double down = scale == 0 ? 1 : Math.exp(-scale);
            int at = 6 * t;
            now[at] = xr * ir - xi * ii;
            now[at + 1] = xr * ii + xi * ir;
            now[at + 2] = yr * ir - yi * ii;
            now[at + 3] = yr * ii + yi * ir;
            now[at + 4] = ir * down;
            now[at + 5] = ii * down;
        }
    }

    /** Sums areas under whole-number keys. */
    private static final class Areas {
        private final int[] slot; // place + 1, 0 for empty
        long[] key;
        double[] area;
        int count;

        Areas(int most) {
            slot = new int[Integer.highestOneBit(4 * most + 4)];
            key = new long[most];
            area = new double[most];
        }

        void add(long k, double a) {
            int mask = slot.length - 1;
            int i = (int) ((k * 0x9E3779B97F4A7C15L) >>> 40) & mask;
            while (slot[i] != 0 && key[slot[i] - 1] != k) {
                i = (i + 1) & mask;
            }
            if (slot[i] == 0) {
                key[count] = k;
                slot[i] = ++count;
            }
            area[slot[i] - 1] += a;
        }
    }

    /** One frequency: nodal system, its factors, and the answers read from it. */
    private static final class Solver {
        private final HouseModel model;
        private final Columns columns;
        private final Types types;
        private final int zones;
        private final int nodes; // radiant nodes 0..Z-1, air nodes Z..2Z-1
        private final int unknowns;
        private final int[] unknownOf; // node -> unknown, -1 for a held air node
        private final int[] nodeOf; // unknown -> node
        private final double[] gr;
        private final double[] gi;
        private final double[] fr; // factor of the unknown part, row major lower
        private final double[] fi;
        private final double[] pr; // [unknown * zones + zone]: zone's answer to heat at a node
        private final double[] pi;
        private final double[] or; // heat at nodes if opaque faces absorb 1 W/m2, [zone * nodes]
        private final double[] oi;
        private final double[] xr; // the same for faces of glass
        private final double[] xi;
        private final double[] starR; // by column of walls: what it gives to its zone's nodes
        private final double[] starI;
        private final double[] airR;
        private final double[] airI;
        private final int[] columnZone;
        private final int[] elementType;
        private final int[] elementFront;
        private final int[] elementBack;
        private final boolean[] elementGlass;
        private final double[] elementArea;
        private final int[] entryType;
        private final int[] entryColumn;
        private final double[] entryArea;
        private final int[][] near; // by zone: nodes that its faces reach
        private final double[] faceArea;
        private final double[] opaqueArea;
        // radiation coefficient of all faces of a zone, 0 before the first, NaN if they differ
        private final double[] radiation;

        Solver(HouseModel model, Columns columns) {
            this.model = model;
            this.columns = columns;
            types = new Types(model);
            zones = model.zones;
            nodes = 2 * zones;
            unknownOf = new int[nodes];
            nodeOf = new int[nodes];
            boolean[] linked = linked();
            near = neighbours(linked);
            int u = order(linked);
            unknowns = u;
            gr = new double[nodes * nodes];
            gi = new double[nodes * nodes];
            fr = new double[u * u];
            fi = new double[u * u];
            pr = new double[zones * u];
            pi = new double[zones * u];
            or = new double[zones * nodes];
            oi = new double[zones * nodes];
            xr = new double[zones * nodes];
            xi = new double[zones * nodes];
            starR = new double[columns.count];
            starI = new double[columns.count];
            airR = new double[columns.count];
            airI = new double[columns.count];
            columnZone = new int[columns.count];
            faceArea = new double[zones];
            opaqueArea = new double[zones];
            radiation = new double[zones];
            Areas elements = new Areas(model.walls);
            Areas entries = new Areas(model.walls);
            for (int w = 0; w < model.walls; w++) {
                int back = model.back[w];
                double area = model.area[w];
                long k = (long) types.of[w] * zones + model.front[w];
                k = 2 * (k * (zones + 2) + back + 2) + (model.glass[w] ? 1 : 0);
                elements.add(k, area);
                if (back == HouseModel.BOUNDARY) {
                    int c = columns.of[w];
                    columnZone[c] = model.front[w];
                    entries.add((long) types.of[w] * columns.count + c, area);
                }
                addFace(model.front[w], area, model.glass[w], model.frontRadiation[w]);
                if (back >= 0) {
                    addFace(back, area, model.glass[w], model.backRadiation[w]);
                }
            }
            elementArea = Arrays.copyOf(elements.area, elements.count);
            elementType = new int[elements.count];
            elementFront = new int[elements.count];
            elementBack = new int[elements.count];
            elementGlass = new boolean[elements.count];
            for (int e = 0; e < elementType.length; e++) {
                long k = elements.key[e];
                elementGlass[e] = (k & 1) == 1;
                k >>= 1;
                elementBack[e] = (int) (k % (zones + 2)) - 2;
                k /= zones + 2;
                elementFront[e] = (int) (k % zones);
                elementType[e] = (int) (k / zones);
            }
            entryArea = Arrays.copyOf(entries.area, entries.count);
            entryType = new int[entries.count];
            entryColumn = new int[entries.count];
            for (int e = 0; e < entryType.length; e++) {
                entryType[e] = (int) (entries.key[e] / columns.count);
                entryColumn[e] = (int) (entries.key[e] % columns.count);
            }
        }

        private void addFace(int zone, double area, boolean glass, double coefficient) {
            faceArea[zone] += area;
            if (radiation[zone] == 0) {
                radiation[zone] = coefficient;
            } else if (radiation[zone] != coefficient) {
                radiation[zone] = Double.NaN;
            }
            if (!glass) {
                opaqueArea[zone] += area;
            }
        }

        /** Fills and factors the system at one angular frequency and solves the output rows. */
        void factor(double omega) {
            types.at(omega);
            Arrays.fill(gr, 0);
            Arrays.fill(gi, 0);
            Arrays.fill(or, 0);
            Arrays.fill(oi, 0);
            Arrays.fill(xr, 0);
            Arrays.fill(xi, 0);
            for (int e = 0; e < elementArea.length; e++) {
                if (elementBack[e] >= 0) {
                    twoSided(e);
                } else {
                    oneSided(e);
                }
            }
            for (int z = 0; z < zones; z++) {
                if (!model.held[z]) {
                    int at = (zones + z) * (nodes + 1);
                    gr[at] += model.airConductance[z];
                    gi[at] += omega * model.airCapacity[z];
                }
            }
            Arrays.fill(starR, 0);
            Arrays.fill(starI, 0);
            Arrays.fill(airR, 0);
            Arrays.fill(airI, 0);
            for (int e = 0; e < entryArea.length; e++) {
                int t = entryType[e];
                int c = entryColumn[e];
                int w = types.wall[t];
                double tr = entryArea[e] * types.now[6 * t + 2];
                double ti = entryArea[e] * types.now[6 * t + 3];
                starR[c] += model.frontRadiation[w] * tr;
                starI[c] += model.frontRadiation[w] * ti;
                airR[c] += model.frontConvection[w] * tr;
                airI[c] += model.frontConvection[w] * ti;
            }
            decompose();
            rows();
        }

        private void oneSided(int e) {
            int t = elementType[e];
            int zone = elementFront[e];
            double a = elementArea[e];
            own(zone, a, Types.LINKS * t);
            if (absorbs(e, zone)) {
                int w = types.wall[t];
                boolean glass = elementGlass[e];
                double hc = model.frontConvection[w];
                double hr = model.frontRadiation[w];
                double qr = a * types.now[6 * t]; // area / D
                double qi = a * types.now[6 * t + 1];
                absorbed(glass, zone, zone, hr * qr, hr * qi);
                absorbed(glass, zone, zones + zone, hc * qr, hc * qi);
            }
        }

        /** Adds star to star, air to air and star to air of a zone. */
        private void own(int zone, double a, int from) {
            double[] links = types.links;
            int star = zone * nodes + zone;
            int air = star + zones * nodes;
            add(star, a * links[from], a * links[from + 1]);
            add(air + zones, a * links[from + 2], a * links[from + 3]);
            double re = a * links[from + 4];
            double im = a * links[from + 5];
            add(star + zones, re, im);
            add(air, re, im);
        }

        private void twoSided(int e) {
            int t = elementType[e];
            double a = elementArea[e];
            int from = Types.LINKS * t;
            int s1 = elementFront[e];
            int s2 = elementBack[e];
            if (s1 == s2) {
                own(s1, a, from + 20);
            } else {
                own(s1, a, from);
                own(s2, a, from + 6);
                across(s1, s2, a, from + 12);
                across(s1, zones + s2, a, from + 14);
                across(zones + s1, s2, a, from + 16);
                across(zones + s1, zones + s2, a, from + 18);
            }
            boolean one = absorbs(e, s1);
            boolean other = absorbs(e, s2);
            if (one || other) {
                absorbedBoth(e, one, other);
            }
        }

        private void across(int i, int j, double a, int from) {
            double re = a * types.links[from];
            double im = a * types.links[from + 1];
            add(i * nodes + j, re, im);
            add(j * nodes + i, re, im);
        }

        private void absorbedBoth(int e, boolean one, boolean other) {
            int t = elementType[e];
            int w = types.wall[t];
            double a = elementArea[e];
            double hc1 = model.frontConvection[w];
            double hr1 = model.frontRadiation[w];
            double hc2 = model.backConvection[w];
            double hr2 = model.backRadiation[w];
            double f11r = a * types.now[6 * t];
            double f11i = a * types.now[6 * t + 1];
            double f22r = a * types.now[6 * t + 2];
            double f22i = a * types.now[6 * t + 3];
            double f12r = a * types.now[6 * t + 4];
            double f12i = a * types.now[6 * t + 5];
            int s1 = elementFront[e];
            int a1 = zones + s1;
            int s2 = elementBack[e];
            int a2 = zones + s2;
            boolean glass = elementGlass[e];
            if (one) {
                absorbed(glass, s1, s1, hr1 * f11r, hr1 * f11i);
                absorbed(glass, s1, a1, hc1 * f11r, hc1 * f11i);
                absorbed(glass, s1, s2, hr2 * f12r, hr2 * f12i);
                absorbed(glass, s1, a2, hc2 * f12r, hc2 * f12i);
            }
            if (other) {
                absorbed(glass, s2, s2, hr2 * f22r, hr2 * f22i);
                absorbed(glass, s2, a2, hc2 * f22r, hc2 * f22i);
                absorbed(glass, s2, s1, hr1 * f12r, hr1 * f12i);
                absorbed(glass, s2, a1, hc1 * f12r, hc1 * f12i);
            }
        }

        /**
         * Whether heat absorbed on the faces of this element in a zone has to be followed. Where
         * all faces of a zone exchange radiation by the same coefficient hr, heat spread evenly
         * over them does what it would do at the radiant node, as raising that node by 1/hr stands
         * for 1 W/m2 on every face; then only glass, which is taken off, is followed.
         */
        private boolean absorbs(int e, int zone) {
            return elementGlass[e] || Double.isNaN(radiation[zone]);
        }

        private void add(int at, double re, double im) {
            gr[at] += re;
            gi[at] += im;
        }

        /** Heat reaching a node when each square metre of the zone's faces absorbs one watt. */
        private void absorbed(boolean glass, int zone, int node, double re, double im) {
            int at = zone * nodes + node;
            if (glass) {
                xr[at] += re;
                xi[at] += im;
            } else {
                or[at] += re;
                oi[at] += im;
            }
        }

        /** L D L^T of the unknown part, complex symmetric; its real part is positive definite. */
        private void decompose() {
            int u = unknowns;
            for (int ui = 0; ui < u; ui++) {
                int row = nodeOf[ui] * nodes;
                for (int uj = 0; uj <= ui; uj++) {
                    fr[ui * u + uj] = gr[row + nodeOf[uj]];
                    fi[ui * u + uj] = gi[row + nodeOf[uj]];
                }
            }
            for (int j = 0; j < u; j++) {
                double djr = fr[j * u + j];
                double dji = fi[j * u + j];
                double size = djr * djr + dji * dji;
                double before = gr[nodeOf[j] * (nodes + 1)];
                // what rounding leaves of conductances that cancel is no link
                if (!(size > 1e-22 * before * before)) {
                    throw cutOff(nodeOf[j] % zones);
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

        /** Solves for every zone what turns heat at the nodes into its answer. */
        private void rows() {
            int u = unknowns;
            for (int i = 0; i < nodes; i++) {
                int ui = unknownOf[i];
                if (ui < 0) {
                    continue;
                }
                for (int z = 0; z < zones; z++) {
                    int at = ui * zones + z;
                    if (model.held[z]) {
                        pr[at] = -gr[i * nodes + zones + z];
                        pi[at] = -gi[i * nodes + zones + z];
                    } else {
                        pr[at] = i == zones + z ? 1 : 0;
                        pi[at] = 0;
                    }
                }
            }
            for (int j = 0; j < u; j++) {
                for (int i = j + 1; i < u; i++) {
                    subtract(i, j, fr[i * u + j], fi[i * u + j]);
                }
                double dr = fr[j * u + j];
                double di = fi[j * u + j];
                for (int at = j * zones; at < (j + 1) * zones; at++) {
                    double re = pr[at];
                    pr[at] = re * dr - pi[at] * di;
                    pi[at] = re * di + pi[at] * dr;
                }
            }
            for (int i = u - 1; i >= 0; i--) {
                for (int k = i + 1; k < u; k++) {
                    subtract(i, k, fr[k * u + i], fi[k * u + i]);
                }
            }
        }

        private void subtract(int i, int k, double lr, double li) {
            if (lr == 0 && li == 0) {
                return;
            }
            int to = i * zones;
            int from = k * zones;
            for (int z = 0; z < zones; z++) {
                double re = pr[from + z];
                double im = pi[from + z];
                pr[to + z] -= lr * re - li * im;
                pi[to + z] -= lr * im + li * re;
            }
        }

        /** Works out every transfer at this frequency: by column, then by zone. */
        void transfers(double[] re, double[] im, int count) {
            for (int c = 0; c < columns.radiant; c++) {
                wall(c, re, im);
            }
            for (int c = columns.steadyWalls; c < count; c++) {
                wall(c, re, im);
            }
            int air = (columns.radiant + 2 * zones) * zones;
            for (int d = 0; d < zones; d++) {
                int ua = unknownOf[zones + d];
                if (ua >= 0) {
                    System.arraycopy(pr, ua * zones, re, air, zones);
                    System.arraycopy(pi, ua * zones, im, air, zones);
                    air += zones;
                }
            }
            for (int d = 0; d < zones; d++) {
                if (Double.isNaN(radiation[d])) {
                    radiationFaceByFace(d, re, im);
                } else {
                    radiation(d, re, im);
                }
                int hold = columns.of[model.walls + 3 * zones + d];
                if (hold >= 0 && hold < count) {
                    hold(d, hold * zones, re, im);
                }
            }
        }

        /**
         * Held temperature: -(G(z, d) + p . G(u, d)) for a load, -p . G(u, d) for a temperature.
         */
        private void hold(int zone, int at, double[] re, double[] im) {
            int row = (zones + zone) * nodes;
            clear(re, im, at);
            for (int i : near[zone]) {
                spread(i, at, -gr[row + i], -gi[row + i], re, im);
            }
        }

        private void wall(int c, double[] re, double[] im) {
            int zone = columnZone[c];
            atStar(zone, c * zones, starR[c], starI[c], re, im);
            spread(zones + zone, c * zones, airR[c], airI[c], re, im);
        }

        /** Radiant heat to a zone whose faces are alike in {@link #absorbs}. */
        private void radiation(int zone, double[] re, double[] im) {
            int all = (columns.radiant + zone) * zones;
            int sun = (columns.sun + zone) * zones;
            int star = unknownOf[zone] * zones;
            System.arraycopy(pr, star, re, all, zones);
            System.arraycopy(pi, star, im, all, zones);
            if (opaqueArea[zone] == 0 || opaqueArea[zone] == faceArea[zone]) {
                // a zone of glass alone has to take the sun on its glass
                System.arraycopy(pr, star, re, sun, zones);
                System.arraycopy(pi, star, im, sun, zones);
                return;
            }
            double share = 1 / opaqueArea[zone];
            atStar(zone, sun, faceArea[zone] * share, 0, re, im);
            int from = zone * nodes;
            for (int i : near[zone]) {
                if (xr[from + i] != 0 || xi[from + i] != 0) {
                    spread(i, sun, -share * xr[from + i], -share * xi[from + i], re, im);
                }
            }
        }

        private void radiationFaceByFace(int zone, double[] re, double[] im) {
            int all = (columns.radiant + zone) * zones;
            int sun = (columns.sun + zone) * zones;
            clear(re, im, all);
            clear(re, im, sun);
            int from = zone * nodes;
            boolean glass = false;
            for (int i : near[zone]) {
                if (or[from + i] != 0 || oi[from + i] != 0) {
                    spread(i, sun, or[from + i], oi[from + i], re, im);
                }
                if (xr[from + i] != 0 || xi[from + i] != 0) {
                    spread(i, all, xr[from + i], xi[from + i], re, im);
                    glass = true;
                }
            }
            double share = 1 / faceArea[zone];
            // a zone of glass alone has to take the sun on its glass
            boolean glassAlone = opaqueArea[zone] == 0;
            double opaque = glassAlone ? 0 : 1 / opaqueArea[zone];
            for (int z = 0; z < zones; z++) {
                double ar = share * (glass ? re[all + z] + re[sun + z] : re[sun + z]);
                double ai = share * (glass ? im[all + z] + im[sun + z] : im[sun + z]);
                re[all + z] = ar;
                im[all + z] = ai;
                re[sun + z] = glassAlone ? ar : re[sun + z] * opaque;
                im[sun + z] = glassAlone ? ai : im[sun + z] * opaque;
            }
        }

        /** What all zones answer to heat at a radiant node, in place of what was there. */
        private void atStar(int zone, int at, double hr, double hi, double[] re, double[] im) {
            int from = unknownOf[zone] * zones;
            for (int z = 0; z < zones; z++) {
                double qr = pr[from + z];
                double qi = pi[from + z];
                re[at + z] = qr * hr - qi * hi;
                im[at + z] = qr * hi + qi * hr;
            }
        }

        private void clear(double[] re, double[] im, int at) {
            for (int z = 0; z < zones; z++) {
                re[at + z] = 0;
                im[at + z] = 0;
            }
        }

        /**
         * Adds what all zones answer to heat at a node; at a held zone's air it is load at once.
         */
        private void spread(int node, int at, double hr, double hi, double[] re, double[] im) {
            int u = unknownOf[node];
            if (u < 0) {
                re[at + node - zones] += hr;
                im[at + node - zones] += hi;
                return;
            }
            int from = u * zones;
            for (int z = 0; z < zones; z++) {
                double qr = pr[from + z];
                double qi = pi[from + z];
                re[at + z] += qr * hr - qi * hi;
                im[at + z] += qr * hi + qi * hr;
            }
        }

        /** Which zones share a wall: [zone * zones + zone]. */
        private boolean[] linked() {
            boolean[] linked = new boolean[zones * zones];
            for (int z = 0; z < zones; z++) {
                linked[z * zones + z] = true;
            }
            for (int w = 0; w < model.walls; w++) {
                if (model.back[w] >= 0) {
                    linked[model.front[w] * zones + model.back[w]] = true;
                    linked[model.back[w] * zones + model.front[w]] = true;
                }
            }
            return linked;
        }

        /** Nodes of a zone and of those it shares a wall with. */
        private int[][] neighbours(boolean[] linked) {
            int[][] lists = new int[zones][];
            int[] list = new int[nodes];
            for (int z = 0; z < zones; z++) {
                int n = 0;
                for (int i = 0; i < nodes; i++) {
                    if (linked[z * zones + i % zones]) {
                        list[n++] = i;
                    }
                }
                lists[z] = Arrays.copyOf(list, n);
            }
            return lists;
        }

        /**
         * Numbers the unknowns zone by zone, a zone with the fewest links first among those left
         * (minimum degree), which keeps the factors sparse; returns their number.
         */
        private int order(boolean[] linked) {
            boolean[] graph = linked.clone();
            boolean[] done = new boolean[zones];
            Arrays.fill(unknownOf, -1);
            int u = 0;
            for (int step = 0; step < zones; step++) {
                int best = -1;
                int fewest = Integer.MAX_VALUE;
                for (int z = 0; z < zones; z++) {
                    int links = 0;
                    for (int i = 0; i < zones && !done[z]; i++) {
                        links += graph[z * zones + i] && !done[i] ? 1 : 0;
                    }
                    if (!done[z] && links < fewest) {
                        best = z;
                        fewest = links;
                    }
                }
                done[best] = true;
                for (int i = 0; i < zones; i++) {
                    for (int j = 0; j < zones && graph[best * zones + i]; j++) {
                        graph[i * zones + j] |= graph[best * zones + j];
                    }
                }
                unknownOf[best] = u;
                nodeOf[u++] = best;
                if (!model.held[best]) {
                    unknownOf[zones + best] = u;
                    nodeOf[u++] = zones + best;
                }
            }
            return u;
        }
    }
}
