package dev.thinair.loads.kernel;

import java.util.Arrays;

/**
 * Free zones on top of a response in which all air is held. A free zone's air takes the temperature
 * at which its balance closes: what its walls give at that temperature, heat to its air and outdoor
 * air against what the air stores,
 *
 * <pre>    (g + i w C) T_a - sum over b of H_ab T_b = sum over drives of H_ad X_d + g T_out,</pre>
 *
 * <p>and each zone answers that temperature. So the walls, which cost most, are solved once for air
 * of any density, and only this small balance is closed anew at another elevation.
 *
 * <p>A product of two transfers has to be folded as a product. Therefore the balance is kept at all
 * frequencies of {@link HouseResponse} and folded at the end: with a transfer P and weights of its
 * real and imaginary part, {@code y = (wr Re P + i wi Im P) X}, for which the sums of the drives
 * against the real and the imaginary part of their transfers are carried apart. Immutable.
 */
public final class FloatingAir {
    private static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;
    private static final Pairs STEADY = new Pairs(true);
    private static final Pairs ALL = new Pairs(false);

    private final int zones;
    private final int free;
    private final int[] zone; // by free zone
    private final int[] freeOf; // by zone, -1 if held
    private final HouseResponse walls;
    private final Pairs pairs;
    private final double[] real; // answer of a zone to heat in a free zone's air:
    private final double[] imaginary; // [(frequency * free + free zone) * zones + zone]

    /** Harmonics, and the frequencies folded onto them. */
    private static final class Pairs {
        final int count;
        final int[] harmonic;
        final int[] frequency;
        final double[] real;
        final double[] imaginary;

        Pairs(boolean steady) {
            int nodes = HouseResponse.Tail.NODES;
            count = steady ? 1 : 13 + 12 * nodes;
            harmonic = new int[count];
            frequency = new int[count];
            real = new double[count];
            imaginary = new double[count];
            real[0] = 1;
            HouseResponse.Tail tail = HouseResponse.Tail.beyond(HouseResponse.DEFAULT_CYCLES);
            int at = 1;
            for (int m = 1; m <= 12 && !steady; m++) {
                for (int k = -1; k < nodes; k++) {
                    harmonic[at] = m;
                    frequency[at] = k < 0 ? m : 13 + k;
                    real[at] = k < 0 ? HouseResponse.realWeight(m, 0) : tail.realAt(k, m);
                    imaginary[at] =
                            k < 0 ? HouseResponse.imaginaryWeight(m, 0) : tail.imaginaryAt(k, m);
                    at++;
                }
            }
        }
    }

    /** Drives with one temperature or flow in common, answered together by the free zones. */
    public static final class Drives {
        private final double[] real; // [frequency * free + free zone]
        private final double[] imaginary;
        private final HouseResponse walls;

        /**
         * Starts an empty group.
         *
         * @param walls response from {@link FloatingAir#walls} or {@link FloatingAir#steadyWalls}
         */
        public Drives(HouseResponse walls) {
            this.walls = walls;
            real = new double[walls.frequencies() * walls.followed().length];
            imaginary = new double[real.length];
        }

        /**
         * Adds a drive.
         *
         * @param drive index of the drive in the response
         * @param times its value as a multiple of what the drives have in common
         */
        public void add(int drive, double times) {
            walls.addRow(drive, times, real, imaginary);
        }

        /**
         * Sum of the steady answers of a free zone, its air held.
         *
         * @param freeZone which of the free zones
         * @return W per unit
         */
        public double steady(int freeZone) {
            return real[freeZone];
        }
    }

    private FloatingAir(HouseResponse walls, HouseModel model) {
        this.walls = walls;
        zones = model.zones;
        zone = walls.followed();
        free = zone.length;
        freeOf = new int[zones];
        Arrays.fill(freeOf, -1);
        for (int a = 0; a < free; a++) {
            freeOf[zone[a]] = a;
        }
        int frequencies = walls.frequencies();
        pairs = frequencies == 1 ? STEADY : ALL;
        real = new double[frequencies * zones * free];
        imaginary = new double[real.length];
        double[] mr = new double[free * free];
        double[] mi = new double[free * free];
        HouseResponse.Tail tail = HouseResponse.Tail.beyond(HouseResponse.DEFAULT_CYCLES);
        for (int f = 0; f < frequencies && free > 0; f++) {
            double omega = (f <= 12 ? f : tail.harmonic(f - 13)) * Transmission.OMEGA_DAY;
            for (int a = 0; a < free; a++) {
                for (int b = 0; b < free; b++) {
                    mr[a * free + b] = -walls.holdReal(f, b, zone[a]);
                    mi[a * free + b] = -walls.holdImaginary(f, b, zone[a]);
                }
                mr[a * free + a] += model.airConductance[zone[a]];
                mi[a * free + a] += omega * model.airCapacity[zone[a]];
            }
            invert(mr, mi);
            for (int a = 0; a < free; a++) {
                int at = (f * free + a) * zones;
                for (int b = 0; b < free; b++) {
                    double qr = mr[b * free + a];
                    double qi = mi[b * free + a];
                    for (int z = 0; z < zones; z++) {
                        double hr = walls.holdReal(f, b, z);
                        double hi = walls.holdImaginary(f, b, z);
                        real[at + z] += hr * qr - hi * qi;
                        imaginary[at + z] += hr * qi + hi * qr;
                    }
                }
                for (int b = 0; b < free; b++) {
                    // of a free zone its temperature is the answer
                    real[at + zone[b]] = mr[b * free + a];
                    imaginary[at + zone[b]] = mi[b * free + a];
                }
            }
        }
    }

    /**
     * Solves the walls of a house with all air held, and keeps what its free zones need.
     *
     * @param model the house
     * @return response of {@code model.allHeld()}
     */
    public static HouseResponse walls(HouseModel model) {
        return walls(model, true);
    }

    /**
     * The same for air temperatures of the model's held zones that may be steady.
     *
     * @param model the house
     * @param swings whether to answer harmonics of those temperatures, which costs time and memory;
     *     else their mean alone is answered
     * @return response of {@code model.allHeld()}
     */
    public static HouseResponse walls(HouseModel model, boolean swings) {
        int[] free = freeZones(model);
        return HouseResponse.solve(
                model.allHeld(), HouseResponse.DEFAULT_CYCLES, free, swings ? null : free);
    }

    /**
     * The same, steady only.
     *
     * @param model the house
     * @return steady response of {@code model.allHeld()}
     */
    public static HouseResponse steadyWalls(HouseModel model) {
        return HouseResponse.steady(model.allHeld(), freeZones(model));
    }

    /**
     * Lets the air of the free zones float.
     *
     * @param walls response from {@link #walls} or {@link #steadyWalls} of a house with the same
     *     walls and free zones
     * @param model the house with the air conductances and capacities that count
     * @return the free zones' balance
     * @throws IllegalArgumentException if the response follows other zones, or a free zone is cut
     *     off from everything held
     */
    public static FloatingAir on(HouseResponse walls, HouseModel model) {
        int[] free = freeZones(model);
        if (!Arrays.equals(walls.followed(), free)) {
            throw new IllegalArgumentException(
                    "the response follows zones "
                            + Arrays.toString(walls.followed())
                            + ", but the free zones are "
                            + Arrays.toString(free));
        }
        return new FloatingAir(walls, model);
    }

    private static int[] freeZones(HouseModel model) {
        int[] list = new int[model.zones];
        int n = 0;
        for (int z = 0; z < model.zones; z++) {
            if (!model.held[z]) {
                list[n++] = z;
            }
        }
        return Arrays.copyOf(list, n);
    }

    /** Inverts a complex symmetric matrix whose real part is positive definite, in place. */
    private void invert(double[] mr, double[] mi) {
        int n = free;
        double before = 0;
        for (int k = 0; k < n; k++) {
            before = Math.max(before, Math.abs(mr[k * n + k]));
        }
        for (int k = 0; k < n; k++) {
            double pr = mr[k * n + k];
            double pi = mi[k * n + k];
            double size = pr * pr + pi * pi;
            // what rounding leaves of conductances that cancel is no link
            if (!(size > 1e-22 * Math.max(1, before * before))) {
                throw HouseResponse.cutOff(zone[k]);
            }
            double ir = pr / size;
            double ii = -pi / size;
            mr[k * n + k] = 1;
            mi[k * n + k] = 0;
            for (int j = k * n; j < (k + 1) * n; j++) {
                double xr = mr[j];
                mr[j] = xr * ir - mi[j] * ii;
                mi[j] = xr * ii + mi[j] * ir;
            }
            for (int i = 0; i < n; i++) {
                if (i == k) {
                    continue;
                }
                double fr = mr[i * n + k];
                double fi = mi[i * n + k];
                mr[i * n + k] = 0;
                mi[i * n + k] = 0;
                for (int j = 0; j < n; j++) {
                    double xr = mr[k * n + j];
                    double xi = mi[k * n + j];
                    mr[i * n + j] -= fr * xr - fi * xi;
                    mi[i * n + j] -= fr * xi + fi * xr;
                }
            }
        }
    }

    /**
     * Number of free zones.
     *
     * @return free zones
     */
    public int count() {
        return free;
    }

    /**
     * Which of the free zones a zone is.
     *
     * @param z index of the zone
     * @return index among the free zones, -1 if its air is held
     */
    public int freeIndex(int z) {
        return freeOf[z];
    }

    /**
     * Starts the sums of heat to the free zones' air.
     *
     * @return zeros, for {@link #add}, {@link #addHeat} and {@link #answer}
     */
    public double[] heat() {
        return new double[4 * pairs.count * free];
    }

    /**
     * Adds what drives give to the free zones' air.
     *
     * @param drives the drives
     * @param spectrum of what they have in common, re and im of X(0) to X(12)
     * @param at index of its first number
     * @param steady whether X(0) alone counts
     * @param heat is added to
     * @throws IllegalArgumentException if the drives are of another response than this balance
     */
    public void add(Drives drives, double[] spectrum, int at, boolean steady, double[] heat) {
        if (drives.walls != walls) {
            throw new IllegalArgumentException(
                    "the drives are of another response of the walls than the free zones' balance");
        }
        int end = steady ? 1 : pairs.count;
        for (int p = 0; p < end; p++) {
            double xr = spectrum[at + 2 * pairs.harmonic[p]];
            double xi = spectrum[at + 2 * pairs.harmonic[p] + 1];
            int from = pairs.frequency[p] * free;
            for (int a = 0; a < free; a++) {
                double hr = drives.real[from + a];
                double hi = drives.imaginary[from + a];
                int to = 4 * (p * free + a);
                heat[to] += hr * xr;
                heat[to + 1] += hr * xi;
                heat[to + 2] += hi * xr;
                heat[to + 3] += hi * xi;
            }
        }
    }

    /**
     * Adds heat given to a free zone's air.
     *
     * @param freeZone which of the free zones, as {@link #freeIndex} says
     * @param times factor
     * @param spectrum of the heat, re and im of X(0) to X(12)
     * @param at index of its first number
     * @param heat is added to
     * @throws IllegalArgumentException if there is no such free zone, as for a held zone's index of
     *     -1
     */
    public void addHeat(int freeZone, double times, double[] spectrum, int at, double[] heat) {
        if (freeZone < 0 || freeZone >= free) {
            throw new IllegalArgumentException(
                    "free zone is "
                            + freeZone
                            + (freeZone == -1 ? " (a zone whose air is held)" : "")
                            + ", but there are "
                            + free
                            + ", counted from 0");
        }
        for (int p = 0; p < pairs.count; p++) {
            int to = 4 * (p * free + freeZone);
            heat[to] += times * spectrum[at + 2 * pairs.harmonic[p]];
            heat[to + 1] += times * spectrum[at + 2 * pairs.harmonic[p] + 1];
        }
    }

    /**
     * Closes the balances: adds, as spectra, the loads of held zones by way of the free zones' air,
     * and the air temperatures of the free zones.
     *
     * @param heat sums of all heat to the free zones' air
     * @param out spectrum of zone z, re and im of 0 to 12, at {@code at + 26 z}
     * @param at index of the first number of zone 0
     */
    public void answer(double[] heat, double[] out, int at) {
        for (int p = 0; p < pairs.count; p++) {
            double wr = pairs.real[p];
            double wi = pairs.imaginary[p];
            for (int a = 0; a < free; a++) {
                int q = 4 * (p * free + a);
                // with P = pr + i pi and sums A, B: Re P X = pr A - pi B, Im P X = pr B + pi A
                double ar = heat[q];
                double ai = heat[q + 1];
                double br = heat[q + 2];
                double bi = heat[q + 3];
                int from = (pairs.frequency[p] * free + a) * zones;
                int to = at + 2 * pairs.harmonic[p];
                for (int z = 0; z < zones; z++) {
                    double pr = real[from + z];
                    double pi = imaginary[from + z];
                    out[to] += pr * (wr * ar - wi * bi) - pi * (wr * br + wi * ai);
                    out[to + 1] += pr * (wr * ai + wi * br) - pi * (wr * bi - wi * ar);
                    to += WIDTH;
                }
            }
        }
    }

    /**
     * Steady answer of a zone to heat in a free zone's air.
     *
     * @param freeZone which of the free zones
     * @param z index of the zone
     * @return load of a held zone, W/W; temperature of a free one, K/W
     */
    public double steady(int freeZone, int z) {
        return real[freeZone * zones + z];
    }

    /**
     * Steady answer of a zone to the air temperature of a held zone, by way of the free zones too.
     *
     * @param held index of the held zone
     * @param z index of the zone
     * @return load of a held zone, W/K; temperature of a free one, K/K
     */
    public double steadyHold(int held, int z) {
        double sum = freeOf[z] < 0 ? walls.steady(walls.holdDrive(held), z) : 0;
        for (int a = 0; a < free; a++) {
            sum += steady(a, z) * walls.steady(walls.holdDrive(held), zone[a]);
        }
        return sum;
    }
}
