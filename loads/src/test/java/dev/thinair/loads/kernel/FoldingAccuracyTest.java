package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the usual folding leaves out, against 60 cycles of harmonics computed one by one: the
 * largest error of an hour over the swing of the answer.
 */
class FoldingAccuracyTest {
    private static final double[] BOARD_R = {0.0127 / 0.16};
    private static final double[] BOARD_C = {0.0127 * 800 * 1090};
    private static final double[] SLAB_R = {0.1524 / 1.95};
    private static final double[] SLAB_C = {0.1524 * 2240 * 900};
    private static final double[] LIGHT_R = {0.0127 / 0.16, 2.5, 0.08, 0.04};
    private static final double[] LIGHT_C = {0.0127 * 800 * 1090, 1500, 12_000, 0};
    private static final double[] HEAVY_R = {SLAB_R[0], 1.8, SLAB_R[0], 0.04};
    private static final double[] HEAVY_C = {SLAB_C[0], 1000, SLAB_C[0], 0};
    private static final double[] DECK_R = {0.0127 / 0.12, 0.05, 0.04};
    private static final double[] DECK_C = {0.0127 * 600 * 1600, 5000, 0};

    /**
     * A held room, light or heavy, under a free attic.
     *
     * @param heavy whether floor, partition and outer wall are of concrete
     * @param conductance of outdoor air to the attic, W/K
     * @param capacity of the attic's air, J/K
     */
    private static HouseModel house(boolean heavy, double conductance, double capacity) {
        HouseModel.Builder b = new HouseModel.Builder();
        int room = b.zone(true, 2e5, 0);
        int attic = b.zone(false, capacity, conductance);
        double[] r = heavy ? HEAVY_R : LIGHT_R;
        double[] c = heavy ? HEAVY_C : LIGHT_C;
        b.wall(room, HouseModel.BOUNDARY, 35, r, c, 2.5, 5.13, 0, 0, false);
        double[] pane = {0.003, 0.04};
        double[] paneC = {0.003 * 2500 * 840, 0};
        b.wall(room, HouseModel.BOUNDARY, 6, pane, paneC, 2.5, 5.13, 0, 0, true);
        double[] floorR = heavy ? SLAB_R : BOARD_R;
        double[] floorC = heavy ? SLAB_C : BOARD_C;
        b.wall(room, HouseModel.ADIABATIC, 25, floorR, floorC, 4, 5.13, 0, 0, false);
        b.wall(room, room, 15, floorR, floorC, 2.5, 5.13, 2.5, 5.13, false);
        double[] ceilingR = {BOARD_R[0], 5};
        double[] ceilingC = {BOARD_C[0], 3000};
        b.wall(room, attic, 25, ceilingR, ceilingC, 0.9, 5.13, 0.9, 5.13, false);
        b.wall(attic, HouseModel.BOUNDARY, 32, DECK_R, DECK_C, 0.9, 5.13, 0, 0, false);
        return b.build();
    }

    private static double[] sunlight() {
        double[] sun = new double[24];
        for (int h = 6; h <= 18; h++) {
            sun[h] = Math.sin((h - 6) * Math.PI / 12);
        }
        return sun;
    }

    private static double[] warmth(double absorbed) {
        double[] t = new double[24];
        double[] sun = sunlight();
        for (int h = 0; h < 24; h++) {
            t[h] =
                    DailyProfile.FUNDAMENTALS_2009_TO_2021.dryBulb(305, 15, h)
                            - 295
                            + absorbed * sun[h];
        }
        return t;
    }

    /** Everything of a design day at once: a load as it is asked for. */
    private static double[] designDay(HouseModel model, HouseResponse r, int zone) {
        double[] sum = new double[26];
        double[] wall = warmth(15);
        double[] air = warmth(0);
        double[] sun = sunlight();
        for (int w = 0; w < model.walls(); w++) {
            add(r, r.wallDrive(w), zone, model.glass[w] ? air : wall, 1, sum);
        }
        add(r, r.sunDrive(0), zone, sun, 2000, sum);
        add(r, r.airDrive(1), zone, air, model.airConductance(1), sum);
        return hours(sum);
    }

    private static void add(
            HouseResponse r, int drive, int zone, double[] x, double times, double[] sum) {
        double[] scaled = Arrays.stream(x).map(v -> times * v).toArray();
        double[] spectrum = new double[26];
        HourlyInterpolation.analyse(scaled, 0, spectrum, 0);
        r.addAnswer(drive, zone, spectrum, 0, sum, 0);
    }

    private static double[] hours(double[] spectrum) {
        double[] out = new double[24];
        HourlyInterpolation.addSynthesis(spectrum, 0, out, 0);
        return out;
    }

    /** One drive on from 8:00 to 17:00, off otherwise. */
    private static double[] switched(HouseResponse r, int drive, int zone) {
        double[] on = new double[24];
        Arrays.fill(on, 8, 18, 1);
        double[] sum = new double[26];
        add(r, drive, zone, on, 1, sum);
        return hours(sum);
    }

    private static double error(double[] got, double[] expected) {
        double worst = 0;
        for (int h = 0; h < 24; h++) {
            worst = Math.max(worst, Math.abs(got[h] - expected[h]));
        }
        double high = Arrays.stream(expected).max().orElseThrow();
        double low = Arrays.stream(expected).min().orElseThrow();
        return worst / (high - low);
    }

    // The attic's air: time constants of about 20 s, 1, 5 and 30 min and 3 h (its faces give some
    // 50 W/K), and none at all.
    @ParameterizedTest
    @CsvSource({
        "false, 300, 0",
        "false, 2000, 4e4",
        "false, 500, 4e4",
        "false, 80, 4e4",
        "false, 20, 1e5",
        "false, 300, 1e5",
        "false, 0, 4e5",
        "false, 0, 3e4",
        "true, 300, 0",
        "true, 2000, 4e4",
        "true, 500, 4e4",
        "true, 80, 4e4",
        "true, 20, 1e5",
        "true, 300, 1e5",
        "true, 0, 4e5",
        "true, 0, 3e4",
    })
    void usual_folding_against_sixty_cycles(boolean heavy, double conductance, double capacity) {
        HouseModel model = house(heavy, conductance, capacity);
        HouseResponse usual = HouseResponse.solve(model);
        HouseResponse far = HouseResponse.solve(model, 60);
        for (int z = 0; z < 2; z++) {
            assertThat(error(designDay(model, usual, z), designDay(model, far, z)))
                    .as("design day, zone " + z)
                    .isLessThan(z == 0 ? 1e-5 : 5e-5);
            int[] drives = {
                far.radiantDrive(0),
                far.sunDrive(0),
                far.holdDrive(0),
                far.radiantDrive(1),
                far.airDrive(1),
                far.wallDrive(0),
                far.wallDrive(1),
                far.wallDrive(5)
            };
            for (int d : drives) {
                boolean ownAir = z == 1 && d == far.airDrive(1);
                assertThat(error(switched(usual, d, z), switched(far, d, z)))
                        .as("drive " + d + " switched, zone " + z)
                        .isLessThan(ownAir ? 7e-4 : 2e-4);
            }
        }
    }

    /** The reference itself: twice the harmonics change it by far less than the bounds. */
    @Test
    void sixty_cycles_are_enough() {
        for (boolean heavy : new boolean[] {false, true}) {
            HouseModel model = house(heavy, 500, 4e4);
            HouseResponse far = HouseResponse.solve(model, 60);
            HouseResponse farther = HouseResponse.solve(model, 120);
            for (int z = 0; z < 2; z++) {
                for (int d : new int[] {far.radiantDrive(0), far.airDrive(1), far.wallDrive(1)}) {
                    assertThat(error(switched(far, d, z), switched(farther, d, z)))
                            .as("drive " + d + " switched, zone " + z)
                            .isLessThan(2e-6);
                }
            }
        }
    }

    /** The default is what is measured here, and the bounds are not idle: less breaks them. */
    @Test
    void the_default_is_zero_cycles_beside_eight_points() {
        assertThat(HouseResponse.DEFAULT_CYCLES).isZero();
        HouseModel model = house(true, 500, 4e4);
        HouseResponse usual = HouseResponse.solve(model);
        HouseResponse asked = HouseResponse.solve(model, 0);
        HouseResponse plain = HouseResponse.solve(model, HouseResponse.PLAIN);
        HouseResponse far = HouseResponse.solve(model, 60);
        int d = far.radiantDrive(0);
        assertThat(switched(usual, d, 0)).containsExactly(switched(asked, d, 0));
        assertThat(error(switched(plain, d, 0), switched(far, d, 0))).isGreaterThan(0.005);
    }
}
