package dev.thinair.loads.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseResponseTest {
    private static final double[] GYPSUM_R = {0.0127 / 0.16};
    private static final double[] GYPSUM_C = {0.0127 * 800 * 1090};
    private static final double[] CONCRETE_R = {0.1016 / 1.95};
    private static final double[] CONCRETE_C = {0.1016 * 2240 * 900};
    private static final double[] WALL_R = {0.0159 / 0.16, 1.94, 0.14, 0.14, 0.04};
    private static final double[] WALL_C = {
        0.0159 * 800 * 1090, 0.0894 * 19 * 960, 0.0159 * 544 * 1210, 0.0127 * 592 * 1170, 0
    };

    /**
     * Reference zones: hc 3.0, hr 5.1 W/(m2 K), floor 20, ceiling 20, walls 45 m2, backs adiabatic.
     */
    private static HouseModel zone(char kind) {
        HouseModel.Builder b = new HouseModel.Builder();
        int z = b.zone(true, 0, 0);
        boolean light = kind == 'A';
        double[] r = light ? GYPSUM_R : CONCRETE_R;
        double[] c = light ? GYPSUM_C : CONCRETE_C;
        if (kind == 'D') {
            r = new double[] {0.22, CONCRETE_R[0]};
            c = new double[] {0, CONCRETE_C[0]};
        }
        b.wall(z, HouseModel.ADIABATIC, 20, r, c, 3, 5.1, 0, 0, false);
        b.wall(z, HouseModel.ADIABATIC, 20, GYPSUM_R, GYPSUM_C, 3, 5.1, 0, 0, false);
        b.wall(
                z,
                HouseModel.ADIABATIC,
                kind == 'E' ? 35 : 45,
                GYPSUM_R,
                GYPSUM_C,
                3,
                5.1,
                0,
                0,
                false);
        if (kind == 'E') {
            b.wall(z, HouseModel.BOUNDARY, 10, WALL_R, WALL_C, 3, 5.1, 0, 0, false);
        }
        return b.build();
    }

    // Reference cases LD-E030 to E047, zones A, B, D, E; independent computation with 3000
    // harmonics.
    @ParameterizedTest
    @CsvSource({
        "A, 38.997, 36.31, 5.953, 100",
        "B, 29.583, 24.448, 5.214, 100",
        "D, 40.625, 28.493, 4.068, 100",
        "E, 29.02, 23.864, 5.241, 98.4361"
    })
    void radiant_time_factors(char kind, double r0, double r1, double r3, double sum) {
        double[] f = HouseResponse.solve(zone(kind), 20).radiantTimeFactors(0);
        assertThat(100 * f[0]).isCloseTo(r0, within(0.02));
        assertThat(100 * f[1]).isCloseTo(r1, within(0.02));
        assertThat(100 * f[3]).isCloseTo(r3, within(0.02));
        assertThat(100 * Arrays.stream(f).sum()).isCloseTo(sum, within(0.0001));
        // the usual folding, where a switched gain feels it most
        double[] usual = HouseResponse.solve(zone(kind)).radiantTimeFactors(0);
        for (int k = 0; k < 24; k++) {
            assertThat(usual[k]).isCloseTo(f[k], within(0.002));
        }
    }

    // Reference cases LD-E048 to E054 (zone E with 110 W of light, sol-air series S1), twelve plain
    // harmonics; the source confirmed them by a finite-volume march within 0.01 W.
    @Test
    void room_load_by_plain_harmonics() {
        double[] solAir = {
            23.9, 23.2, 22.8, 22.4, 22.1, 21.9, 22.7, 25.4, 29.2, 32.9, 36.1, 38.8,
            41.1, 50.0, 59.0, 64.7, 65.8, 62.1, 52.9, 37.5, 27.5, 26.5, 25.5, 24.7
        };
        double[] light = new double[24];
        Arrays.fill(light, 7, 19, 110);
        HouseResponse r = HouseResponse.solve(zone('E'), HouseResponse.PLAIN);
        double[] load = new double[24];
        for (int h = 0; h < 24; h++) {
            solAir[h] -= 23.9;
            load[h] = 0.43 * light[h];
            light[h] *= 0.57;
        }
        double[] sum = new double[26];
        double[] x = new double[26];
        HourlyInterpolation.analyse(solAir, 0, x, 0);
        r.addAnswer(r.wallDrive(3), 0, x, 0, sum, 0);
        HourlyInterpolation.analyse(light, 0, x, 0);
        r.addAnswer(r.radiantDrive(0), 0, x, 0, sum, 0);
        HourlyInterpolation.addSynthesis(sum, 0, load, 0);
        int[] hour = {3, 6, 9, 15, 18, 21};
        double[] expected = {21.715, 9.968, 103.675, 186.139, 234.083, 84.459};
        for (int i = 0; i < hour.length; i++) {
            assertThat(load[hour[i]]).isCloseTo(expected[i], within(0.001));
        }
        assertThat(Arrays.stream(load).average().orElseThrow()).isCloseTo(101.8838, within(1e-4));
    }

    /** Two held rooms and a free attic, walls of every kind. */
    private static HouseModel house(double atticAir) {
        HouseModel.Builder b = new HouseModel.Builder();
        int a = b.zone(true, 2e5, 0);
        int c = b.zone(true, 3e5, 0);
        int attic = b.zone(false, 1e5, atticAir);
        b.wall(a, HouseModel.BOUNDARY, 12, WALL_R, WALL_C, 2.5, 5.13, 0, 0, false);
        b.wall(
                a,
                HouseModel.BOUNDARY,
                3,
                new double[] {0.4},
                new double[] {0},
                2.5,
                5.13,
                0,
                0,
                true);
        b.wall(c, HouseModel.BOUNDARY, 20, WALL_R, WALL_C, 2.5, 5.13, 0, 0, false);
        b.wall(
                a,
                c,
                10,
                new double[] {0.08, 0.18, 0.08},
                new double[] {11_000, 0, 11_000},
                2.5,
                5.13,
                2.5,
                5.13,
                false);
        b.wall(
                a,
                attic,
                15,
                new double[] {0.08, 5},
                new double[] {11_000, 15_000},
                0.7,
                5.13,
                0.7,
                5.13,
                false);
        b.wall(
                c,
                attic,
                25,
                new double[] {0.08, 5},
                new double[] {11_000, 15_000},
                0.7,
                5.13,
                0.7,
                5.13,
                false);
        b.wall(
                attic,
                HouseModel.BOUNDARY,
                50,
                new double[] {0.14, 0.1, 0.06},
                new double[] {10_000, 9_000, 0},
                0.7,
                5.13,
                0,
                0,
                false);
        b.wall(c, c, 15, GYPSUM_R, GYPSUM_C, 2.5, 5.13, 2.5, 5.13, false);
        b.wall(a, HouseModel.ADIABATIC, 15, CONCRETE_R, CONCRETE_C, 0.7, 5.13, 0, 0, false);
        return b.build();
    }

    @Test
    void one_temperature_everywhere_needs_no_load() {
        HouseModel model = house(40);
        HouseResponse r = HouseResponse.solve(model);
        for (int z = 0; z < 3; z++) {
            double sum = 40 * r.steady(r.airDrive(2), z);
            for (int w = 0; w < model.walls(); w++) {
                sum += r.steady(r.wallDrive(w), z);
            }
            for (int d = 0; d < 2; d++) {
                sum += r.steady(r.holdDrive(d), z);
            }
            // a load of zero in held zones, that temperature in the free one
            assertThat(sum).isCloseTo(model.held(z) ? 0 : 1, within(1e-11));
        }
    }

    /**
     * Two held rooms under a loft and over a crawlspace that touch each other by a chimney wall.
     */
    private static HouseModel twoFreeZones(double loft, double crawl, double air) {
        HouseModel.Builder b = new HouseModel.Builder();
        int a = b.zone(true, 5e5, 0);
        int c = b.zone(false, air, loft);
        int d = b.zone(true, 5e5, 0);
        int e = b.zone(false, 2 * air, crawl);
        int shared = b.drive(a, false);
        b.wall(a, HouseModel.BOUNDARY, 8, GYPSUM_R, GYPSUM_C, 2.5, 5.13, 0, 0, false, shared);
        b.wall(a, HouseModel.BOUNDARY, 6, CONCRETE_R, CONCRETE_C, 2.5, 5.1, 0, 0, false, shared);
        b.wall(
                d,
                HouseModel.BOUNDARY,
                9,
                CONCRETE_R,
                CONCRETE_C,
                2.5,
                5.13,
                0,
                0,
                false,
                b.drive(d, true));
        b.wall(a, c, 20, GYPSUM_R, GYPSUM_C, 0.7, 5.13, 0.7, 5.13, false);
        b.wall(d, c, 20, GYPSUM_R, GYPSUM_C, 0.7, 5.13, 0.7, 5.13, false);
        b.wall(a, e, 20, CONCRETE_R, CONCRETE_C, 0.7, 5.13, 0.7, 5.13, false);
        b.wall(c, e, 5, CONCRETE_R, CONCRETE_C, 2.5, 5.13, 2.5, 5.13, false);
        b.wall(a, d, 10, GYPSUM_R, GYPSUM_C, 2.5, 5.13, 2.5, 5.13, false);
        b.wall(c, HouseModel.BOUNDARY, 50, GYPSUM_R, GYPSUM_C, 0.7, 5.13, 0, 0, false);
        return b.build();
    }

    @Test
    void free_air_floats_on_held_walls_as_if_solved_with_them() {
        HouseModel one = twoFreeZones(40, 15, 9e4);
        HouseModel other =
                one.withAir(new double[] {0, 28, 0, 10}, new double[] {5e5, 6e4, 5e5, 1.3e5});
        HouseResponse walls = FloatingAir.walls(one);
        Random random = new Random(7);
        for (HouseModel model : java.util.List.of(one, other)) {
            HouseResponse solved = HouseResponse.solve(model);
            FloatingAir floating = FloatingAir.on(walls, model);
            assertThat(floating.count()).isEqualTo(2);
            assertThat(floating.freeIndex(3)).isEqualTo(1);
            assertThat(floating.freeIndex(0)).isEqualTo(-1);
            double[] x = new double[26];
            for (int i = 0; i < 26; i++) {
                x[i] = i == 1 || i == 25 ? 0 : random.nextDouble() - 0.5;
            }
            int[] drives = {
                walls.wallDrive(0),
                walls.wallDrive(8),
                walls.radiantDrive(0),
                walls.sunDrive(1),
                walls.holdDrive(2),
                -1
            };
            for (int drive : drives) {
                double[] heat = floating.heat();
                double[] got = new double[4 * 26];
                if (drive >= 0) {
                    FloatingAir.Drives group = new FloatingAir.Drives(walls);
                    group.add(drive, 1);
                    floating.add(group, x, 0, false, heat);
                    walls.addAnswer(drive, 0, x, 0, got, 0);
                    walls.addAnswer(drive, 2, x, 0, got, 2 * 26);
                } else {
                    floating.addHeat(1, 1, x, 0, heat);
                }
                floating.answer(heat, got, 0);
                double[] expected = new double[4 * 26];
                for (int z = 0; z < 4; z++) {
                    int d = drive >= 0 ? drive : solved.airDrive(3);
                    solved.addAnswer(d, z, x, 0, expected, z * 26);
                }
                double size = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
                for (int i = 0; i < expected.length; i++) {
                    // folded as a product at the same frequencies: rounding alone may differ
                    assertThat(got[i]).isCloseTo(expected[i], within(1e-9 * size));
                }
            }
            for (int z = 0; z < 4; z++) {
                assertThat(floating.steadyHold(0, z))
                        .isCloseTo(solved.steady(solved.holdDrive(0), z), within(1e-9));
            }
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FloatingAir.on(walls, house(40)))
                .withMessageContaining("follows zones [1, 3], but the free zones are [2]");
    }

    /**
     * Where all faces of a zone radiate alike, heat spread over them is taken as heat at the
     * radiant node; a negligible face that radiates otherwise makes the solver go face by face.
     */
    @Test
    void radiant_heat_by_the_node_is_that_face_by_face() {
        HouseModel[] models = new HouseModel[2];
        for (int i = 0; i < 2; i++) {
            HouseModel.Builder b = new HouseModel.Builder();
            int a = b.zone(true, 2e5, 0);
            int attic = b.zone(false, 1e5, 40);
            double[] glass = {0.4};
            double[] none = {0};
            b.wall(a, HouseModel.BOUNDARY, 12, WALL_R, WALL_C, 2.5, 5.13, 0, 0, false);
            b.wall(a, HouseModel.BOUNDARY, 6, glass, none, 2.5, 5.13, 0, 0, true);
            b.wall(a, attic, 15, GYPSUM_R, GYPSUM_C, 0.7, 5.13, 2.5, 5.13, false);
            b.wall(a, attic, 4, glass, none, 0.7, 5.13, 2.5, 5.13, true);
            b.wall(a, a, 20, CONCRETE_R, CONCRETE_C, 2.5, 5.13, 0.7, 5.13, false);
            b.wall(attic, HouseModel.BOUNDARY, 30, WALL_R, WALL_C, 0.7, 5.13, 0, 0, false);
            double other = i == 0 ? 5.13 : 9;
            b.wall(a, HouseModel.ADIABATIC, 1e-11, WALL_R, WALL_C, 2.5, other, 0, 0, false);
            b.wall(attic, HouseModel.ADIABATIC, 1e-11, WALL_R, WALL_C, 2.5, other, 0, 0, false);
            models[i] = b.build();
        }
        HouseResponse node = HouseResponse.solve(models[0]);
        HouseResponse faces = HouseResponse.solve(models[1]);
        double[] one = new double[26];
        double[] other = new double[26];
        for (int drive = node.radiantDrive(0); drive < node.airDrive(0); drive++) {
            for (int z = 0; z < 2; z++) {
                node.transfer(drive, z, one);
                faces.transfer(drive, z, other);
                for (int i = 0; i < 26; i++) {
                    assertThat(one[i]).isCloseTo(other[i], within(1e-10));
                }
            }
        }
        // glass that leads the sun back out, so that the two drives do differ
        assertThat(node.steady(node.sunDrive(0), 0) - node.steady(node.radiantDrive(0), 0))
                .isGreaterThan(0.01);
    }

    @Test
    void sums_of_drives_answer_as_the_drives_one_by_one() {
        HouseModel model = house(40);
        HouseResponse r = FloatingAir.walls(model, false);
        double[] x = new double[26];
        for (int i = 0; i < 26; i++) {
            x[i] = i == 1 || i == 25 ? 0 : Math.sin(i);
        }
        double[] expected = new double[26 * 3];
        r.addAnswers(r.wallDrive(0), 0, x, 0, expected, 0, new double[26], 0);
        r.addAnswers(r.wallDrive(2), 1, x, 0, expected, 0, new double[26], 0);
        r.addAnswers(r.wallDrive(6), -1, x, 0, expected, 0, new double[26], 0);
        HouseResponse.Others others = new HouseResponse.Others(r, false);
        others.add(r.wallDrive(0), 0);
        others.add(r.wallDrive(2), 1);
        others.add(r.wallDrive(6), -1);
        others.add(r.wallDrive(7), 0); // between zones: answers nothing
        double[] got = new double[26 * 3 + 5];
        others.addAnswers(x, 0, got, 5);
        HouseResponse.Others mean = new HouseResponse.Others(r, true);
        mean.add(r.wallDrive(0), 0);
        double[] steady = new double[26 * 3];
        mean.addAnswers(x, 0, steady, 0);
        for (int i = 0; i < expected.length; i++) {
            assertThat(got[5 + i]).isCloseTo(expected[i], within(1e-14));
        }
        assertThat(steady[1]).isCloseTo(x[0] * r.steady(r.wallDrive(0), 1), within(1e-14));
        assertThat(Arrays.stream(steady, 3, steady.length).allMatch(v -> v == 0)).isTrue();
    }

    @Test
    void held_air_that_does_not_swing_has_its_steady_answer() {
        HouseModel model = house(40);
        HouseResponse all = FloatingAir.walls(model);
        HouseResponse some = FloatingAir.walls(model, false);
        double[] full = new double[26];
        double[] mean = new double[26];
        for (int z = 0; z < 3; z++) {
            for (int drive = 0; drive < all.drives(); drive++) {
                all.transfer(drive, z, full);
                some.transfer(drive, z, mean);
                boolean swings = drive != all.holdDrive(0) && drive != all.holdDrive(1);
                if (!swings) {
                    Arrays.fill(full, 1, 26, 0);
                }
                assertThat(mean).containsExactly(full);
            }
        }
        assertThat(some.steady(some.holdDrive(0), 0)).isNegative();
    }

    @Test
    void walls_that_share_a_drive_answer_as_their_sum() {
        HouseModel shared = twoFreeZones(40, 15, 9e4);
        HouseResponse together = HouseResponse.solve(shared);
        HouseResponse apart = HouseResponse.solve(shared.separated());
        double[] both = new double[26];
        double[] first = new double[26];
        double[] second = new double[26];
        for (int z = 0; z < 4; z++) {
            together.transfer(together.wallDrive(0), z, both);
            apart.transfer(apart.wallDrive(0), z, first);
            apart.transfer(apart.wallDrive(1), z, second);
            for (int i = 0; i < 26; i++) {
                assertThat(both[i]).isCloseTo(first[i] + second[i], within(1e-10));
            }
            // a steady drive: the same mean, no harmonics
            together.transfer(together.wallDrive(2), z, both);
            apart.transfer(apart.wallDrive(2), z, first);
            assertThat(both[0]).isCloseTo(first[0], within(1e-10));
            assertThat(Arrays.stream(both, 1, 26).allMatch(v -> v == 0)).isTrue();
            assertThat(first[2]).isNotZero();
            // all zones at once, one apart
            double[] x = new double[26];
            Arrays.fill(x, 0.5);
            double[] sums = new double[2 * 13 * 4];
            double[] own = new double[26];
            double[] one = new double[26];
            apart.addAnswers(0, z, x, 0, sums, 0, own, 0);
            apart.addAnswer(0, z, x, 0, one, 0);
            assertThat(own).containsExactly(one);
            for (int m = 0; m < 26; m++) {
                assertThat(sums[m * 4 + z]).isZero();
            }
            int next = (z + 1) % 4;
            Arrays.fill(one, 0);
            apart.addAnswer(0, next, x, 0, one, 0);
            for (int m = 0; m < 26; m++) {
                assertThat(sums[m * 4 + next]).isEqualTo(one[m]);
            }
        }
        HouseModel.Builder b = new HouseModel.Builder();
        b.zone(true, 1, 0);
        b.zone(true, 1, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.drive(2, false))
                .withMessageContaining("zone of a drive is 2");
        int drive = b.drive(1, false);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, -1, 1, GYPSUM_R, GYPSUM_C, 3, 5, 0, 0, false, drive))
                .withMessageContaining("belongs to zone 1, but the wall is in zone 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, -1, 1, GYPSUM_R, GYPSUM_C, 3, 5, 0, 0, false, 9))
                .withMessageContaining("drive of a wall is 9");
    }

    @Test
    void gains_come_out_through_loads_and_losses() {
        // with nothing else driving, what a radiant watt does not make load leaves to the
        // boundaries, so a
        // house without losses returns it whole
        HouseResponse sealed = HouseResponse.solve(zone('D'));
        assertThat(sealed.steady(sealed.radiantDrive(0), 0)).isCloseTo(1, within(1e-12));
        HouseResponse leaky = HouseResponse.solve(zone('E'));
        assertThat(leaky.steady(leaky.radiantDrive(0), 0)).isLessThan(1).isGreaterThan(0.9);
    }

    @Property(tries = 30)
    void transfers_between_rooms_are_reciprocal(
            @ForAll @LongRange(min = 0, max = 10_000) long seed) {
        double g = 1 + new Random(seed).nextDouble() * 200;
        HouseResponse r = HouseResponse.solve(house(g));
        double[] ab = new double[26];
        double[] ba = new double[26];
        r.transfer(r.holdDrive(0), 1, ab);
        r.transfer(r.holdDrive(1), 0, ba);
        for (int i = 0; i < 26; i++) {
            assertThat(ab[i]).isCloseTo(ba[i], within(1e-10));
        }
    }

    @Test
    void folding_converges() {
        HouseModel model = house(40);
        HouseResponse far = HouseResponse.solve(model, 60);
        double[] a = new double[26];
        double[] b = new double[26];
        double before = Double.POSITIVE_INFINITY;
        for (int cycles : new int[] {0, 1, 3, 8}) {
            HouseResponse near = HouseResponse.solve(model, cycles);
            double worst = 0;
            for (int d = 0; d < near.drives(); d++) {
                for (int z = 0; z < 2; z++) {
                    near.transfer(d, z, a);
                    far.transfer(d, z, b);
                    double size = Arrays.stream(b).map(Math::abs).max().orElseThrow();
                    for (int i = 0; i < 26; i++) {
                        worst = Math.max(worst, size < 1e-6 ? 0 : Math.abs(a[i] - b[i]) / size);
                    }
                }
            }
            assertThat(worst).as("after " + cycles + " cycles").isLessThan(before);
            before = worst;
        }
        assertThat(before).isLessThan(1e-4);
    }

    @Test
    void joining_zones_keeps_the_steady_loss() {
        HouseModel model = house(40);
        HouseModel one = model.joined(new int[] {0, 0, 1});
        HouseResponse r = HouseResponse.steady(model);
        HouseResponse s = HouseResponse.steady(one);
        double apart = 0;
        for (int z = 0; z < 2; z++) {
            for (int d = 0; d < 2; d++) {
                apart += r.steady(r.holdDrive(d), z);
            }
        }
        // radiation is shared otherwise, so a fraction of a percent may differ
        assertThat(s.steady(s.holdDrive(0), 0)).isCloseTo(apart, within(0.01 * Math.abs(apart)));
        assertThat(one.airCapacity(0)).isEqualTo(5e5);
        assertThat(one.airConductance(1)).isEqualTo(40);
    }

    @Test
    void network_of_the_house_is_positive_definite_and_steady_alike() {
        HouseModel model = house(40);
        int[] boundary = new int[model.walls()];
        ThermalNetwork n = ThermalNetwork.of(model, boundary, 1, new double[3], 900);
        double[][] k = n.conductance();
        new org.apache.commons.math3.linear.CholeskyDecomposition(
                org.apache.commons.math3.linear.MatrixUtils.createRealMatrix(k), 1e-12, 1e-12);
        for (double c : n.capacity()) {
            assertThat(c).isPositive();
        }
        double[] got = n.periodicAnswer(0, n.boundaryInput(0), new int[] {0, 1});
        HouseResponse r = HouseResponse.steady(model);
        for (int z = 0; z < 2; z++) {
            double sum = 0;
            for (int w = 0; w < model.walls(); w++) {
                sum += r.steady(r.wallDrive(w), z);
            }
            assertThat(got[2 * z]).isCloseTo(sum, within(1e-9));
        }
        double[] sun = n.periodicAnswer(0, n.sunInput(0), new int[] {0, 1});
        assertThat(sun[0]).isCloseTo(r.steady(r.sunDrive(0), 0), within(1e-10));
        assertThat(sun[2]).isCloseTo(r.steady(r.sunDrive(0), 1), within(1e-10));
    }

    @Test
    void a_space_that_is_cut_off_is_refused() {
        HouseModel.Builder b = new HouseModel.Builder();
        b.zone(true, 1, 0);
        b.zone(false, 1, 0);
        b.wall(0, HouseModel.BOUNDARY, 1, GYPSUM_R, GYPSUM_C, 3, 5, 0, 0, false);
        b.wall(1, HouseModel.ADIABATIC, 1, GYPSUM_R, GYPSUM_C, 3, 5, 0, 0, false);
        HouseModel model = b.build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HouseResponse.solve(model))
                .withMessageContaining("free zone 1 is cut off");
        HouseResponse walls = FloatingAir.walls(model);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FloatingAir.on(walls, model))
                .withMessageContaining("free zone 1 is cut off");
    }

    @Test
    void spaces_that_are_cut_off_together_are_refused() {
        HouseModel.Builder b = new HouseModel.Builder();
        b.zone(false, 1, 0);
        b.zone(true, 1, 0);
        b.zone(false, 1, 0);
        b.wall(1, HouseModel.BOUNDARY, 1, GYPSUM_R, GYPSUM_C, 3, 5, 0, 0, false);
        b.wall(0, 2, 700, GYPSUM_R, GYPSUM_C, 3, 5, 3, 5, false);
        b.wall(0, HouseModel.ADIABATIC, 30, CONCRETE_R, CONCRETE_C, 3, 5, 0, 0, false);
        HouseModel model = b.build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HouseResponse.solve(model))
                .withMessageContaining("free zone 2 is cut off")
                .withMessageContaining("nor the free zones it touches");
        HouseResponse walls = FloatingAir.walls(model);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FloatingAir.on(walls, model))
                .withMessageContaining("free zone 2 is cut off");
        // a thread of outdoor air is link enough
        HouseModel thread = model.withAirConductance(new double[] {1e-3, 0, 0});
        HouseResponse solved = HouseResponse.solve(thread);
        assertThat(solved.steady(solved.airDrive(2), 0)).isCloseTo(1000, within(1e-3));
    }

    @Test
    void free_air_takes_drives_of_its_own_walls_and_heat_of_free_zones_only() {
        HouseModel model = twoFreeZones(40, 15, 9e4);
        HouseResponse walls = FloatingAir.walls(model);
        FloatingAir floating = FloatingAir.on(walls, model);
        double[] heat = floating.heat();
        double[] x = new double[26];
        FloatingAir.Drives steady = new FloatingAir.Drives(FloatingAir.steadyWalls(model));
        FloatingAir.Drives again = new FloatingAir.Drives(FloatingAir.walls(model));
        for (FloatingAir.Drives foreign : java.util.List.of(steady, again)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> floating.add(foreign, x, 0, true, heat))
                    .withMessageContaining("drives are of another response");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> floating.addHeat(floating.freeIndex(0), 1, x, 0, heat))
                .withMessageContaining(
                        "free zone is -1 (a zone whose air is held), but there are 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> floating.addHeat(2, 1, x, 0, heat))
                .withMessageContaining("free zone is 2, but there are 2");
        Arrays.fill(x, 1);
        floating.addHeat(0, 1, x, 0, heat);
        floating.addHeat(1, 3, x, 0, heat);
        assertThat(Arrays.copyOf(heat, 8)).containsExactly(1, 1, 0, 0, 3, 3, 0, 0);
    }

    @Test
    void bad_models_are_refused_by_name() {
        HouseModel.Builder b = new HouseModel.Builder();
        assertThatIllegalArgumentException()
                .isThrownBy(b::build)
                .withMessageContaining("at least one zone");
        b.zone(true, 1, 0);
        assertThatIllegalArgumentException().isThrownBy(b::build).withMessageContaining("no face");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.zone(true, -1, 0))
                .withMessageContaining("heat capacity of zone air");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.zone(true, 1, 5))
                .withMessageContaining("air conductance");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(3, 0, 1, GYPSUM_R, GYPSUM_C, 3, 5, 3, 5, false))
                .withMessageContaining("front zone is 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, 7, 1, GYPSUM_R, GYPSUM_C, 3, 5, 3, 5, false))
                .withMessageContaining("zone behind is 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, -1, 0, GYPSUM_R, GYPSUM_C, 3, 5, 3, 5, false))
                .withMessageContaining("wall area");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, -1, 1, GYPSUM_R, GYPSUM_C, 0, 5, 3, 5, false))
                .withMessageContaining("convection");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> b.wall(0, 0, 1, GYPSUM_R, GYPSUM_C, 3, 5, 3, 0, false))
                .withMessageContaining("radiation");
        HouseModel model = house(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HouseResponse.solve(model, 5000))
                .withMessageContaining("folded cycles");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HouseResponse.solve(model).radiantTimeFactors(2))
                .withMessageContaining("is free");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> model.joined(new int[] {0, 1, 1}))
                .withMessageContaining("joins a held with a free zone");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> model.withAirConductance(new double[1]))
                .withMessageContaining("1 conductances");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThermalNetwork.of(model, new int[1], 1, new double[3], 900))
                .withMessageContaining("1 boundaries");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThermalNetwork.cells(1, 1, 0))
                .withMessageContaining("cell time");
    }

    @Test
    void sol_air_and_supply_air() {
        // ASHRAE Handbook, Fundamentals 2021 SI, ch. 18, Table 29B hour 15 (LD-B148); 0.05 is its
        // rounding
        assertThat(33.1 + SolAir.excess(0.901, 597.1, 0.9, 0, 17)).isCloseTo(64.7, within(0.06));
        assertThat(SolAir.longwaveLoss(0)).isEqualTo(63);
        assertThat(SolAir.longwaveLoss(Math.PI / 2)).isZero();
        assertThat(SolAir.longwaveLoss(3)).isZero();
        // LD-E057 to E059
        assertThat(1000 * SupplyAir.volumeFlowByFactor(1000, 11, 1))
                .isCloseTo(73.9098, within(1e-3));
        assertThat(
                        1000
                                * SupplyAir.volumeFlowByFactor(
                                        1000, 11, Math.pow(1 - 2.25577e-5 * 3030, 5.2559)))
                .isCloseTo(107.2275, within(1e-3));
        assertThat(SupplyAir.dryAirMassFlow(1006, 298, 288, 0)).isCloseTo(0.1, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SupplyAir.dryAirMassFlow(1000, 290, 300, 0))
                .withMessageContaining("cannot carry");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SolAir.excess(1.2, 0, 0, 0, 17))
                .withMessageContaining("solar absorptance");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SolAir.longwaveLoss(-1))
                .withMessageContaining("tilt");
    }
}
