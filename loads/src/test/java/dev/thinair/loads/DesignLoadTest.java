package dev.thinair.loads;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class DesignLoadTest {
    private static final Site SITE = SampleHouses.site(2200);
    private static final CompiledHouse TEN = SampleHouses.tenRooms().compile(SITE);
    private static final CoolingDesignDay DAY = SampleHouses.hotDay(SITE);

    @Test
    void components_and_lines_add_up_to_the_load_of_every_room_and_hour() {
        List<Quantity<Temperature>> moving = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            moving.add(celsius(h > 8 && h < 17 ? 26 : 23));
        }
        for (Setpoint s :
                List.of(
                        Setpoint.of(celsius(24)),
                        Setpoint.of(celsius(21)).withRoom("room 3", celsius(27)),
                        Setpoint.byHour(moving).withRoom("room 7", celsius(20)))) {
            DesignLoad load = TEN.coolingLoad(DAY, s);
            for (String room : load.rooms()) {
                for (int h = 0; h < 24; h++) {
                    double total = Si.watts(load.sensible(room, h), "load");
                    double sum = 0;
                    for (Component c : Component.values()) {
                        sum += Si.watts(load.component(room, c, h), "part");
                    }
                    assertThat(sum).isCloseTo(total, within(1e-9));
                }
                double lines = load.lines(room, 15).stream().mapToDouble(LoadLine::load).sum();
                assertThat(lines)
                        .isCloseTo(Si.watts(load.sensible(room, 15), "load"), within(1e-9));
            }
        }
    }

    @Test
    void rooms_add_up_to_the_house() {
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.residentialCooling());
        for (int h = 0; h < 24; h++) {
            double sum = 0;
            double latent = 0;
            for (String room : load.rooms()) {
                sum += load.sensibleWatts(room)[h];
                latent += Si.watts(load.latent(room, h), "latent");
            }
            assertThat(load.sensibleWatts()[h]).isCloseTo(sum, within(1e-9));
            assertThat(load.latentWatts()[h]).isCloseTo(latent, within(1e-9));
            double parts = 0;
            for (Component c : Component.values()) {
                parts += Si.watts(load.component(c, h), "part");
            }
            assertThat(parts).isCloseTo(sum, within(1e-9));
        }
        assertThat(Si.watts(load.sumOfRoomPeaks(), "sum"))
                .isGreaterThan(Si.watts(load.sensible(load.peakHour()), "block"));
    }

    @Test
    void a_room_kept_warmer_takes_less_and_its_neighbours_more() {
        DesignLoad even = TEN.coolingLoad(DAY, Setpoint.of(celsius(24)));
        DesignLoad uneven =
                TEN.coolingLoad(DAY, Setpoint.of(celsius(24)).withRoom("room 2", celsius(28)));
        for (int h = 0; h < 24; h++) {
            assertThat(uneven.sensibleWatts("room 2")[h])
                    .isLessThan(even.sensibleWatts("room 2")[h]);
            assertThat(uneven.sensibleWatts("room 1")[h])
                    .isGreaterThan(even.sensibleWatts("room 1")[h]);
            assertThat(uneven.sensibleWatts("room 7")[h])
                    .isGreaterThan(even.sensibleWatts("room 7")[h]);
        }
    }

    @Test
    void heat_that_moves_between_rooms_is_lost_by_none() {
        // rooms of equal losses: raising one only moves heat through partitions and its own shell
        DesignLoad even = TEN.coolingLoad(DAY, Setpoint.of(celsius(24)));
        DesignLoad uneven =
                TEN.coolingLoad(DAY, Setpoint.of(celsius(24)).withRoom("room 2", celsius(25)));
        double toOthers = 0;
        for (String room : even.rooms()) {
            if (!room.equals("room 2")) {
                toOthers += (uneven.sensibleWatts(room)[12] - even.sensibleWatts(room)[12]) / 1.08;
            }
        }
        double own = 0;
        for (Component c : List.of(Component.OTHER_ROOMS)) {
            own -=
                    Si.watts(uneven.component("room 2", c, 12), "part")
                            - Si.watts(even.component("room 2", c, 12), "part");
        }
        // some of what leaves room 2 reaches the outdoors by way of the others' faces
        assertThat(toOthers).isBetween(0.9 * own, 1.2 * own);
    }

    @Test
    void heating_is_steady_and_without_sun_or_gains() {
        DesignLoad load =
                TEN.heatingLoad(SampleHouses.coldDay(SITE), Setpoint.residentialHeating());
        assertThat(load.heating()).isTrue();
        double[] q = load.sensibleWatts();
        for (double one : q) {
            assertThat(one).isCloseTo(q[0], within(1e-9)).isNegative();
        }
        assertThat(Si.watts(load.peak(), "peak")).isCloseTo(-q[0], within(1e-9));
        for (Component c :
                List.of(
                        Component.WINDOW_SUN,
                        Component.PEOPLE,
                        Component.APPLIANCES,
                        Component.LIGHTS)) {
            assertThat(Si.watts(load.component(c, 3), "part")).isZero();
        }
        assertThat(Si.watts(load.sumOfRoomPeaks(), "sum")).isCloseTo(-q[0], within(1e-6));
    }

    @Test
    void heating_load_of_a_plain_box_is_u_times_area_times_difference() {
        Room room =
                Room.named("box")
                        .floorArea(squareMetres(10))
                        .height(metres(2.5))
                        .surface(
                                Surface.wall("wall", Assemblies.woodFrameWall())
                                        .area(squareMetres(30))
                                        .facing(degrees(0)))
                        .build();
        House house =
                House.named("box")
                        .room(room)
                        .infiltration(
                                Infiltration.airChanges(airChangesPerHour(1), cubicMetres(25)))
                        .build();
        DesignLoad load =
                house.compile(SITE)
                        .heatingLoad(
                                HeatingDesignDay.of(SITE, celsius(-20)), Setpoint.of(celsius(20)));
        // one wall alone is its own radiant surroundings: only convection reaches the air
        double r = Assemblies.woodFrameWall().squareMetreKelvinsPerWatt() + 1 / 34.0 + 1 / 2.5;
        double expected = 30 * 40 / r;
        assertThat(Si.watts(load.component(Component.WALLS, 0), "walls"))
                .isCloseTo(-expected, within(1e-9));
        double density = SITE.pascals() / (287.042 * 253.15);
        assertThat(Si.watts(load.component(Component.INFILTRATION, 0), "leak"))
                .isCloseTo(-25.0 / 3600 * density * 1006 * 40, within(3.0));
    }

    @Test
    void airflow_carries_the_room_peak_and_grows_as_air_thins() {
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.of(celsius(24)));
        double flow = Si.cubicMetresPerSecond(load.airflow("room 4", celsius(13)), "flow");
        double mass = Si.kilogramsPerSecond(load.airMass("room 4", celsius(13)), "mass");
        double peak = Si.watts(load.roomPeak("room 4"), "peak");
        assertThat(mass * (1006 + 1860 * 0.0094) * 11).isCloseTo(peak, within(0.02 * peak));
        double density = SITE.pascals() / (287.042 * 286.15);
        assertThat(flow * density).isCloseTo(mass, within(0.02 * mass));
        // same room at sea level: same load within the change of its leaks, denser air
        Site low = SampleHouses.site(0);
        DesignLoad below =
                TEN.at(low).coolingLoad(SampleHouses.hotDay(low), Setpoint.of(celsius(24)));
        assertThat(Si.cubicMetresPerSecond(below.airflow("room 4", celsius(13)), "flow"))
                .isLessThan(0.8 * flow);
    }

    @Test
    void another_site_is_the_same_as_compiling_there() {
        Site low = SampleHouses.site(100);
        CoolingDesignDay day = SampleHouses.hotDay(low);
        double[] a = TEN.at(low).coolingLoad(day, Setpoint.of(celsius(24))).sensibleWatts();
        double[] b =
                SampleHouses.tenRooms()
                        .compile(low)
                        .coolingLoad(day, Setpoint.of(celsius(24)))
                        .sensibleWatts();
        double peak = java.util.Arrays.stream(b).max().orElseThrow();
        assertThat(a).isNotEqualTo(TEN.coolingLoad(DAY, Setpoint.of(celsius(24))).sensibleWatts());
        for (int h = 0; h < 24; h++) {
            assertThat(a[h]).isCloseTo(b[h], within(1e-11 * peak));
        }
    }

    @Test
    void the_attic_runs_hot_and_feeds_the_ceilings() {
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.of(celsius(24)));
        double top = 0;
        for (int h = 0; h < 24; h++) {
            top = Math.max(top, Si.kelvins(load.temperature("attic", h), "attic"));
        }
        assertThat(top - 273.15).isBetween(40.0, 75.0);
        assertThat(Si.watts(load.component(Component.UNCONDITIONED_SPACES, 17), "attic"))
                .isPositive();
    }

    @Test
    void setpoint_by_hour_costs_no_energy_over_the_day_beyond_its_mean() {
        List<Quantity<Temperature>> moving = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            moving.add(celsius(24 + 2 * Math.sin(h)));
        }
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.byHour(moving));
        double sum = 0;
        double size = 0;
        for (int h = 0; h < 24; h++) {
            double q = Si.watts(load.component(Component.SETPOINT_CHANGE, h), "change");
            sum += q;
            size += Math.abs(q);
        }
        assertThat(size).isGreaterThan(1000);
        assertThat(Math.abs(sum)).isLessThan(1e-9 * size);
    }

    @Test
    void forcing_of_the_network_holds_the_same_energy() {
        // the network with its air held gives, over the day, what the balance gives
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.of(celsius(24)));
        HouseNetwork network = TEN.network();
        double[][] q = network.forcing(DAY);
        double[] mean = new double[network.size()];
        for (double[] row : q) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += row[i] / 24;
            }
        }
        double[] got = heldLoads(network, mean, 297.15);
        double sum = Arrays.stream(got).sum();
        double expected = 0;
        for (int h = 0; h < 24; h++) {
            expected +=
                    load.sensibleWatts()[h] / 24
                            - Si.watts(load.component(Component.DUCTS, h), "ducts") / 24;
        }
        assertThat(sum).isCloseTo(expected, within(1e-7));
    }

    private static double[] heldLoads(HouseNetwork network, double[] q, double held) {
        int n = network.size();
        double[][] k = network.conductance();
        boolean[] fixed = new boolean[n];
        for (int i : network.airNodes()) {
            fixed[i] = true;
        }
        double[][] a = new double[n][n];
        double[] b = new double[n];
        for (int i = 0; i < n; i++) {
            if (fixed[i]) {
                a[i][i] = 1;
                b[i] = held;
            } else {
                a[i] = k[i].clone();
                b[i] = q[i];
            }
        }
        double[] t =
                new org.apache.commons.math3.linear.LUDecomposition(
                                org.apache.commons.math3.linear.MatrixUtils.createRealMatrix(a))
                        .getSolver()
                        .solve(new org.apache.commons.math3.linear.ArrayRealVector(b))
                        .toArray();
        int[] nodes = network.airNodes();
        double[] out = new double[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            out[i] = q[nodes[i]];
            for (int j = 0; j < n; j++) {
                out[i] -= k[nodes[i]][j] * t[j];
            }
        }
        return out;
    }

    @Test
    void block_network_is_small_and_definite() {
        HouseNetwork block = TEN.blockNetwork();
        assertThat(block.size()).isLessThan(130).isLessThan(TEN.network().size() / 5);
        assertThat(block.airNodes()).containsOnly(0);
        assertThat(block.airNode("attic")).isEqualTo(1);
        new org.apache.commons.math3.linear.CholeskyDecomposition(
                org.apache.commons.math3.linear.MatrixUtils.createRealMatrix(block.conductance()),
                1e-12,
                1e-12);
        assertThat(block.forcing(DAY)).hasDimensions(24, block.size());
        assertThat(block.moistureGain(DAY.outdoorHours())).hasSize(24).doesNotContain(Double.NaN);
        assertThat(block.airVolume()).isCloseTo(400, within(1e-9));
        assertThat(block.airConductance(DAY.outdoorHours())[15]).isPositive();
    }

    @Test
    void tables_print_every_room_and_line() {
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.residentialCooling());
        assertThat(load.table())
                .contains("room 9", "windows, sun", "block peak", "Btu/h", "attic at that hour");
        assertThat(load.table("room 4"))
                .contains("side window 4", "sun, side window 4", "floors and ground", "sum");
        assertThat(load.toString()).contains("cooling load of ten rooms");
        assertThat(TEN.toString()).contains("11 zones");
        assertThat(TEN.network().toString()).contains("nodes");
    }

    @Test
    void every_line_of_a_component_belongs_to_it() {
        DesignLoad load = TEN.coolingLoad(DAY, Setpoint.residentialCooling());
        for (int hour : new int[] {2, 9, 17}) {
            for (Component k : Component.values()) {
                double sum =
                        load.lines("room 4", hour).stream()
                                .filter(line -> line.component() == k)
                                .mapToDouble(LoadLine::load)
                                .sum();
                assertThat(sum)
                        .as("%s at %d", k, hour)
                        .isCloseTo(
                                Si.watts(load.component("room 4", k, hour), "part"), within(1e-8));
            }
        }
        // the west window alone sees the evening sun
        java.util.Map<String, Double> evening =
                load.lines("room 4", 17).stream()
                        .collect(java.util.stream.Collectors.toMap(LoadLine::name, LoadLine::load));
        assertThat(evening.get("sun, side window 4"))
                .isGreaterThan(2 * evening.get("sun, front window a4"));
    }

    @Test
    void results_do_not_depend_on_the_locale() {
        java.util.Locale before = java.util.Locale.getDefault();
        String here = TEN.coolingLoad(DAY, Setpoint.residentialCooling()).table();
        try {
            java.util.Locale.setDefault(java.util.Locale.forLanguageTag("ar-EG"));
            assertThat(TEN.coolingLoad(DAY, Setpoint.residentialCooling()).table()).isEqualTo(here);
        } finally {
            java.util.Locale.setDefault(before);
        }
    }

    @Test
    void latent_load_is_people_and_air() {
        Room room =
                Room.named("den")
                        .floorArea(squareMetres(10))
                        .height(metres(2.5))
                        .surface(
                                Surface.wall("wall", Assemblies.woodFrameWall())
                                        .area(squareMetres(10))
                                        .facing(degrees(0)))
                        .gain(Appliances.of("kettle", watts(100), watts(40)))
                        .build();
        DesignLoad load =
                House.named("den")
                        .room(room)
                        .build()
                        .compile(SITE)
                        .coolingLoad(DAY, Setpoint.of(celsius(24)));
        for (int h = 0; h < 24; h++) {
            assertThat(load.latentWatts()[h]).isCloseTo(40, within(1e-9));
        }
        DesignLoad dry =
                House.named("den")
                        .room(room)
                        .infiltration(
                                Infiltration.airChanges(airChangesPerHour(1), cubicMetres(25)))
                        .build()
                        .compile(SITE)
                        .coolingLoad(
                                DAY, Setpoint.of(celsius(24)).withRelativeHumidity(percent(60)));
        assertThat(dry.latentWatts()[15]).as("dry mountain air").isLessThan(40);
    }
}
