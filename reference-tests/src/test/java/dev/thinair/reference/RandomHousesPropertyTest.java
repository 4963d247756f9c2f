package dev.thinair.reference;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.litresPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.Component;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.Ground;
import dev.thinair.loads.HeatingDesignDay;
import dev.thinair.loads.House;
import dev.thinair.loads.HouseNetwork;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.LoadLine;
import dev.thinair.loads.Occupants;
import dev.thinair.loads.Room;
import dev.thinair.loads.Schedule;
import dev.thinair.loads.Setpoint;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Ventilation;
import dev.thinair.loads.Window;
import dev.thinair.units.Si;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Any valid house anywhere: no NaN, and every balance closed. */
class RandomHousesPropertyTest {

    private static final Assembly[] WALLS = {
        Assemblies.woodFrameWall(),
        Assemblies.brickVeneerWall(),
        Assemblies.blockWall(),
        Assemblies.studWall89(),
        Assemblies.adobeWall(),
        Assemblies.stoneWall(),
        Assemblies.concreteWallInsulatedOutside()
    };
    private static final Assembly[] ROOFS = {
        Assemblies.shingleRoof(), Assemblies.cathedralRoof(), Assemblies.metalRoof()
    };
    private static final Assembly[] FLOORS = {
        Assemblies.woodFloor(), Assemblies.insulatedFloor(), Assemblies.slab()
    };

    private static double between(Random r, double low, double high) {
        return low + (high - low) * r.nextDouble();
    }

    private static Site site(Random r) {
        double longitude = between(r, -175, 175);
        return Site.of(
                        "somewhere",
                        degrees(between(r, -60, 65)),
                        degrees(longitude),
                        ZoneOffset.ofHours((int) Math.round(longitude / 15)),
                        metres(between(r, -50, 4000)))
                .withGroundTemperature(celsius(between(r, 2, 20)));
    }

    private static House house(Random r) {
        int rooms = 1 + r.nextInt(5);
        boolean attic = r.nextBoolean();
        House.Builder house = House.named("house");
        double volume = 0;
        for (int i = 0; i < rooms; i++) {
            double area = between(r, 4, 60);
            double height = between(r, 2.1, 4);
            volume += area * height;
            double side = Math.sqrt(area);
            Room.Builder room =
                    Room.named("room " + i).floorArea(squareMetres(area)).height(metres(height));
            int walls = 1 + r.nextInt(3);
            for (int w = 0; w < walls; w++) {
                Surface.Builder wall =
                        Surface.wall("wall " + i + w, WALLS[r.nextInt(WALLS.length)])
                                .size(metres(side), metres(height))
                                .facing(degrees(between(r, 0, 359.9)));
                if (r.nextInt(3) > 0) {
                    wall.window(
                            Window.of(
                                    "window " + i + w,
                                    metres(between(r, 0.2, 0.8 * side)),
                                    metres(between(r, 0.2, 0.8 * height)),
                                    wattsPerSquareMetreKelvin(between(r, 0.8, 6)),
                                    Glazing.clearDouble()));
                }
                room.surface(wall);
            }
            if (attic) {
                room.surface(
                        Surface.ceiling("ceiling " + i, Assemblies.atticCeiling())
                                .area(squareMetres(area))
                                .under("attic"));
            } else {
                room.surface(
                        Surface.roof("roof " + i, ROOFS[r.nextInt(ROOFS.length)])
                                .area(squareMetres(area)));
            }
            Surface.Builder floor =
                    Surface.floor("floor " + i, FLOORS[r.nextInt(FLOORS.length)])
                            .area(squareMetres(area));
            room.surface(
                    r.nextBoolean()
                            ? floor.adiabatic()
                            : floor.onGround(
                                    Ground.slabOnGround(
                                            metres(between(r, 1, 4 * side)),
                                            metres(between(r, 0.2, 0.5)),
                                            wattsPerMetreKelvin(between(r, 0.8, 3)))));
            if (i > 0) {
                room.surface(
                        Surface.partition("partition " + i, Assemblies.partition())
                                .size(metres(side), metres(height))
                                .to("room " + (i - 1)));
            }
            if (r.nextBoolean()) {
                int from = r.nextInt(20);
                room.gain(
                        Occupants.of(
                                        r.nextInt(6),
                                        Occupants.Activity.values()[
                                                r.nextInt(Occupants.Activity.values().length)])
                                .on(Schedule.between(from, from + 1 + r.nextInt(4))));
                room.gain(
                        Appliances.of(
                                "things", watts(between(r, 0, 2000)), watts(between(r, 0, 500))));
            }
            house.room(room);
        }
        if (attic) {
            house.room(
                    Room.unconditioned("attic")
                            .volume(cubicMetres(between(r, 10, 200)))
                            .outdoorAir(airChangesPerHour(between(r, 0, 20)))
                            .surface(
                                    Surface.roof("attic roof", ROOFS[r.nextInt(ROOFS.length)])
                                            .area(squareMetres(between(r, 20, 300)))));
        }
        house.infiltration(
                Infiltration.airChanges(airChangesPerHour(between(r, 0, 3)), cubicMetres(volume)));
        if (r.nextBoolean()) {
            house.ventilation(Ventilation.balanced(litresPerSecond(between(r, 0, 200))));
        }
        return house.build();
    }

    @Property(tries = 60, seed = "73", edgeCases = EdgeCasesMode.NONE)
    void components_and_rooms_add_up(@ForAll long seed) {
        Random r = new Random(seed);
        Site site = site(r);
        CompiledHouse house = house(r).compile(site);
        double dryBulb = between(r, 12, 48);
        double range = between(r, 0, 22);
        CoolingDesignDay hot =
                CoolingDesignDay.at(site)
                        .date(LocalDate.of(2026, 1 + r.nextInt(12), 1 + r.nextInt(28)))
                        .dryBulb(celsius(dryBulb))
                        .dailyRange(kelvinDifference(range))
                        .wetBulb(celsius(dryBulb - between(r, 2, 8)))
                        .opticalDepths(between(r, 0.2, 0.6), between(r, 1.6, 2.6))
                        .build();
        Setpoint setpoint = Setpoint.of(celsius(between(r, 15, 30)));
        closed(house.coolingLoad(hot, setpoint));
        HeatingDesignDay cold = HeatingDesignDay.of(site, celsius(between(r, -40, 12)));
        closed(house.heatingLoad(cold, Setpoint.of(celsius(between(r, 15, 26)))));
        network(house.network(), hot);
    }

    private static void closed(DesignLoad load) {
        for (int h = 0; h < 24; h++) {
            double house = Si.watts(load.sensible(h), "load");
            double latent = Si.watts(load.latent(h), "latent load");
            assertThat(house).isFinite();
            assertThat(latent).isFinite();
            double largest = 1;
            double ofRooms = 0;
            double latentOfRooms = 0;
            for (String room : load.rooms()) {
                double whole = Si.watts(load.sensible(room, h), "load");
                double ofComponents = 0;
                for (Component c : Component.values()) {
                    double part = Si.watts(load.component(room, c, h), "part");
                    assertThat(part).as("%s of %s", c, room).isFinite();
                    largest = Math.max(largest, Math.abs(part));
                    ofComponents += part;
                }
                assertThat(ofComponents)
                        .as("components of %s at %s h", room, h)
                        .isCloseTo(whole, within(1e-9 * largest));
                if (h % 8 == 0) {
                    double ofLines = load.lines(room, h).stream().mapToDouble(LoadLine::load).sum();
                    assertThat(ofLines)
                            .as("lines of %s at %s h", room, h)
                            .isCloseTo(whole, within(1e-9 * largest));
                }
                ofRooms += whole;
                latentOfRooms += Si.watts(load.latent(room, h), "latent load");
            }
            assertThat(Si.watts(load.sumOfRoomPeaks(), "sum of room peaks"))
                    .as("sensible peaks of rooms cover any hour of the house")
                    .isGreaterThanOrEqualTo((load.heating() ? -house : house) - 1e-9 * largest);
            assertThat(ofRooms).isCloseTo(house, within(1e-9 * largest));
            assertThat(latentOfRooms).isCloseTo(latent, within(1e-9 * Math.max(1, latent)));
        }
        assertThat(load.table()).doesNotContain("NaN", "Infinity");
    }

    /** Conductances symmetric, no negative loss to the outside, capacities above zero. */
    private static void network(HouseNetwork network, CoolingDesignDay day) {
        double[][] k = network.conductance();
        for (int i = 0; i < network.size(); i++) {
            assertThat(network.capacity()[i]).isFinite().isPositive();
            double loss = 0;
            for (int j = 0; j < network.size(); j++) {
                assertThat(k[i][j]).isFinite().isCloseTo(k[j][i], within(1e-12 * k[i][i]));
                loss += k[i][j];
            }
            assertThat(loss).isGreaterThanOrEqualTo(-1e-9 * k[i][i]);
        }
        for (double[] hour : network.forcing(day)) {
            for (double q : hour) {
                assertThat(q).isFinite();
            }
        }
    }
}
