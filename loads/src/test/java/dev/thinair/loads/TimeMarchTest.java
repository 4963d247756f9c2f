package dev.thinair.loads;

import static dev.thinair.units.Units.celsius;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.kernel.OutdoorHours;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

/** The frequency-domain balance against an independent march in time of the same room. */
class TimeMarchTest {
    /**
     * Share of the day's peak. Asked is 0.005; the march's grid and the folding of high harmonics
     * leave 0.0003, measured, so a third of the asked width would already be a defect.
     */
    private static final double TOLERANCE = 0.001;

    private static void agrees(
            Assembly wall, Assembly roof, Assembly floor, Setpoint setpoint, int days) {
        Site site = SampleHouses.site(2000);
        House house = SampleHouses.shed(wall, roof, floor);
        CoolingDesignDay day = SampleHouses.hotDay(site);
        CompiledHouse compiled = house.compile(site);
        DesignLoad load = compiled.coolingLoad(day, setpoint);
        OutdoorHours hours = day.outdoorHours();

        double[] air = new double[24];
        for (int h = 0; h < 24; h++) {
            air[h] = setpoint.temperature("room", h).getValue().doubleValue();
        }
        double[] sun = new double[24];
        double[] radiant = new double[24];
        double[] direct = new double[24];
        Room room = house.rooms().get(0);
        double[] series = new double[24];
        for (Surface s : room.surfaces()) {
            for (Window w : s.windows()) {
                w.solarGain(hours, s.azimuthRadians(), s.tiltRadians(), series);
                for (int h = 0; h < 24; h++) {
                    sun[h] += w.solarRadiantFraction() * series[h];
                    direct[h] += (1 - w.solarRadiantFraction()) * series[h];
                }
            }
        }
        for (InternalGain g : room.gains()) {
            for (int h = 0; h < 24; h++) {
                radiant[h] += g.radiantFraction() * g.sensible(h);
                direct[h] += (1 - g.radiantFraction()) * g.sensible(h);
            }
        }
        MarchedRoom march = new MarchedRoom(air, sun, radiant);
        Films films = house.coolingFilms();
        for (Surface s : room.surfaces()) {
            double hc =
                    switch (s.kind()) {
                        case ROOF -> films.ceiling();
                        case FLOOR -> films.floor();
                        default -> films.wall();
                    };
            for (Assembly.Path path : s.assembly().paths()) {
                double[] r = path.resistances();
                double[] c = path.capacities();
                double[] outside = null;
                if (s.adjacency() instanceof Adjacency.Outdoors) {
                    r = Arrays.copyOf(r, r.length + 1);
                    r[r.length - 1] = 1 / films.outside();
                    c = Arrays.copyOf(c, r.length);
                    outside = new double[24];
                    hours.incident(s.azimuthRadians(), s.tiltRadians(), outside);
                    double sky = s.tiltRadians() < 1 ? 63 * Math.cos(s.tiltRadians()) : 0;
                    for (int h = 0; h < 24; h++) {
                        outside[h] =
                                hours.dryBulb(h)
                                        + (s.solarAbsorptance() * outside[h] - 0.9 * sky)
                                                / films.outside();
                    }
                }
                march.wall(
                        s.netSquareMetres() * path.fraction(),
                        r,
                        c,
                        hc,
                        films.radiant(),
                        outside,
                        s.kind() == Surface.Kind.MASS,
                        false);
            }
            for (Window w : s.windows()) {
                double[] outside = new double[24];
                for (int h = 0; h < 24; h++) {
                    outside[h] = hours.dryBulb(h);
                }
                double rest = 1 / w.transmittance() - 0.17 + 1 / films.outside();
                march.wall(
                        w.squareMetres(),
                        new double[] {rest},
                        new double[] {0},
                        hc,
                        films.radiant(),
                        outside,
                        false,
                        true);
            }
        }
        double[] marched = march.march(days);
        double peak = 0;
        for (int h = 0; h < 24; h++) {
            marched[h] += direct[h] + load.partAt("room", Component.INFILTRATION, h);
            double rise = (air[(h + 1) % 24] - air[(h + 23) % 24]) / 7200;
            marched[h] -= compiled.model.airCapacity(0) * rise;
            peak = Math.max(peak, Math.abs(marched[h]));
        }
        for (int h = 0; h < 24; h++) {
            assertThat(load.sensibleAt("room", h))
                    .as("hour " + h)
                    .isCloseTo(marched[h], within(TOLERANCE * peak));
        }
    }

    @Test
    void light_room() {
        agrees(
                Assemblies.woodFrameWall(),
                Assemblies.cathedralRoof(),
                Assemblies.woodFloor(),
                Setpoint.of(celsius(24)),
                6);
    }

    @Test
    void medium_room() {
        agrees(
                Assemblies.brickVeneerWall(),
                Assemblies.cathedralRoof(),
                Assemblies.slab(),
                Setpoint.of(celsius(24)),
                10);
    }

    @Test
    void heavy_room() {
        agrees(
                Assemblies.concreteWallInsulatedOutside(),
                Assemblies.cathedralRoof(),
                Assemblies.tiledSlab(),
                Setpoint.of(celsius(22)),
                25);
    }

    @Test
    void setpoint_that_moves_by_hour() {
        List<Quantity<Temperature>> t = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            t.add(celsius(h < 7 || h > 21 ? 22 : h < 16 ? 25 : 23.5));
        }
        agrees(
                Assemblies.brickVeneerWall(),
                Assemblies.cathedralRoof(),
                Assemblies.slab(),
                Setpoint.byHour(t),
                10);
    }
}
