package dev.thinair.loads;

import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.PeriodicResponse;
import dev.thinair.loads.kernel.RadiantTimeSeries;
import dev.thinair.loads.kernel.Transmission;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/**
 * The sensible cooling load of a house by the handbook's radiant time series method, beside the
 * exact balance of {@link CompiledHouse#coolingLoad}: for class and for cross-check.
 *
 * <p>Conduction time factors are computed from each assembly's layers and radiant time factors from
 * each room, not copied from tables. The rest is the handbook's: gains are found one by one, split
 * by its table into a convective part that loads the air at once and a radiant part that the room
 * delays. As the method defines them, radiant factors are scaled to sum to 1: no radiant heat is
 * lost through the shell, which the exact balance knows better, so that this method is as a rule on
 * the safe side (peaks of three invented houses came out 13 to 20 percent above the exact balance).
 * Unconditioned spaces keep the temperature the exact balance finds for them. Each room is held at
 * one temperature all day; duct gains are left out.
 *
 * <p>Source: ASHRAE Handbook, Fundamentals, 2021 (SI), chapter 18, equations (30) to (34) and Table
 * 14 (radiant shares: walls, floors and doors 0.46, roofs and ceilings 0.60, windows 0.33 or 0.46,
 * sun through bare glass 1). Immutable.
 */
public final class TimeSeriesLoad {

    private static final double WALL_SHARE = 0.46;
    private static final double ROOF_SHARE = 0.60;

    private final List<String> rooms;
    private final double[][] loads;

    private TimeSeriesLoad(List<String> rooms, double[][] loads) {
        this.rooms = List.copyOf(rooms);
        this.loads = loads;
    }

    /**
     * Reckons the load.
     *
     * @param compiled house at its site
     * @param day design day
     * @param setpoint what the rooms are kept at, the same at every hour
     * @return hourly loads
     * @throws IllegalArgumentException if the setpoint changes through the day
     */
    public static TimeSeriesLoad of(
            CompiledHouse compiled, CoolingDesignDay day, Setpoint setpoint) {
        Objects.requireNonNull(compiled, "house");
        OutdoorHours hours = day.outdoorHours();
        House house = compiled.house();
        DesignLoad exact = compiled.coolingLoad(day, setpoint);
        List<Room> all = house.rooms();
        List<String> names = new ArrayList<>();
        List<double[]> sums = new ArrayList<>();
        for (int z = 0; z < all.size(); z++) {
            Room room = all.get(z);
            if (!room.conditioned()) {
                continue;
            }
            Rooms own = new Rooms(compiled, hours, exact, setpoint, z);
            names.add(room.name());
            sums.add(own.load());
        }
        return new TimeSeriesLoad(names, sums.toArray(new double[0][]));
    }

    /**
     * Time factors of radiant heat released in a room: what it becomes in all held rooms (what
     * passes a partition is booked where it came from), scaled to sum to 1 as the method has it.
     */
    private static double[] factors(CompiledHouse compiled, int drive) {
        List<Room> all = compiled.house().rooms();
        double[] total = new double[24];
        double sum = 0;
        for (int z = 0; z < all.size(); z++) {
            if (all.get(z).conditioned()) {
                double[] one = compiled.whole().timeFactors(drive, z);
                for (int k = 0; k < 24; k++) {
                    total[k] += one[k];
                    sum += one[k];
                }
            }
        }
        for (int k = 0; k < 24; k++) {
            total[k] /= sum;
        }
        return total;
    }

    /** Gathers one room's load. */
    private static final class Rooms {
        private final CompiledHouse compiled;
        private final House house;
        private final OutdoorHours hours;
        private final DesignLoad exact;
        private final Setpoint setpoint;
        private final int zone;
        private final Room room;
        private final double inside;
        private final double[] radiant;
        private final double[] solar;
        private final double[] sum = new double[24];

        Rooms(
                CompiledHouse compiled,
                OutdoorHours hours,
                DesignLoad exact,
                Setpoint setpoint,
                int zone) {
            this.compiled = compiled;
            this.house = compiled.house();
            this.hours = hours;
            this.exact = exact;
            this.setpoint = setpoint;
            this.zone = zone;
            this.room = house.rooms().get(zone);
            this.inside = held(room.name());
            this.radiant = factors(compiled, compiled.whole().radiantDrive(zone));
            this.solar = factors(compiled, compiled.whole().sunDrive(zone));
        }

        private double held(String name) {
            double first = Si.kelvins(setpoint.temperature(name, 0), "setpoint");
            for (int h = 1; h < 24; h++) {
                double t = Si.kelvins(setpoint.temperature(name, h), "setpoint");
                Range.require(
                        "setpoint of " + name + " at hour " + h + " (radiant time series method)",
                        t,
                        first - 1e-9,
                        first + 1e-9,
                        "K");
            }
            return first;
        }

        double[] load() {
            for (Surface s : room.surfaces()) {
                surface(s);
            }
            for (Room other : house.rooms()) {
                for (Surface s : other.surfaces()) {
                    if (s.adjacency() instanceof Adjacency.Space space
                            && space.space().equals(room.name())) {
                        double[] behind = temperatures(other);
                        for (Assembly.Path path : s.assembly().paths()) {
                            conduct(s, path, reversed(path), behind);
                        }
                    }
                }
            }
            for (InternalGain gain : room.gains()) {
                double[] series = new double[24];
                for (int h = 0; h < 24; h++) {
                    series[h] = gain.sensible(h);
                }
                add(series, gain.radiantFraction(), radiant);
            }
            air();
            return sum;
        }

        private void surface(Surface s) {
            Adjacency adjacency = s.adjacency();
            double[] behind = new double[24];
            if (adjacency instanceof Adjacency.Earth earth) {
                Arrays.fill(behind, earth.ground().boundaryTemperature(hours));
                double conductance =
                        earth.ground()
                                .conductance(
                                        s.netSquareMetres(),
                                        s.assembly().squareMetreKelvinsPerWatt());
                for (int h = 0; h < 24; h++) {
                    behind[h] = conductance * (behind[h] - inside);
                }
                add(behind, WALL_SHARE, radiant);
            } else if (adjacency instanceof Adjacency.Outdoors) {
                new CompiledHouse.Boundary(
                                CompiledHouse.Boundary.SUN,
                                s.azimuthRadians(),
                                s.tiltRadians(),
                                s.solarAbsorptance(),
                                s.longwaveEmissivity(),
                                null,
                                0)
                        .fill(hours, house.coolingFilms().outside(), false, behind);
                for (Assembly.Path path : s.assembly().paths()) {
                    conduct(s, path, path, behind);
                }
            } else if (adjacency instanceof Adjacency.Other other) {
                Arrays.fill(behind, Si.kelvins(other.temperature(), "adjacent temperature"));
                for (Assembly.Path path : s.assembly().paths()) {
                    conduct(s, path, path, behind);
                }
            } else if (adjacency instanceof Adjacency.Space space) {
                double[] other = temperatures(house.room(space.space()));
                for (Assembly.Path path : s.assembly().paths()) {
                    conduct(s, path, path, other);
                }
            }
            for (Window w : s.windows()) {
                window(w, s);
            }
            for (Door d : s.doors()) {
                new CompiledHouse.Boundary(
                                CompiledHouse.Boundary.SUN,
                                s.azimuthRadians(),
                                s.tiltRadians(),
                                d.absorptance(),
                                s.longwaveEmissivity(),
                                null,
                                0)
                        .fill(hours, house.coolingFilms().outside(), false, behind);
                for (int h = 0; h < 24; h++) {
                    behind[h] = d.squareMetres() * d.transmittance() * (behind[h] - inside);
                }
                add(behind, WALL_SHARE, radiant);
            }
        }

        private double[] temperatures(Room other) {
            double[] t = new double[24];
            for (int h = 0; h < 24; h++) {
                t[h] =
                        Si.kelvins(
                                other.conditioned()
                                        ? setpoint.temperature(other.name(), h)
                                        : exact.temperature(other.name(), h),
                                "temperature of " + other.name());
            }
            return t;
        }

        private static Assembly.Path reversed(Assembly.Path path) {
            List<Layer> layers = new ArrayList<>(path.layers());
            Collections.reverse(layers);
            return new Assembly.Path(path.fraction(), layers);
        }

        private void conduct(
                Surface s, Assembly.Path path, Assembly.Path fromInside, double[] behind) {
            Films films = house.coolingFilms();
            double face = 1 / (films.radiant() + convection(s.kind(), films));
            boolean outdoors = s.adjacency() instanceof Adjacency.Outdoors;
            double[] inner = fromInside.resistances();
            double[] capacities = fromInside.capacities();
            double[] r = new double[inner.length + 2];
            double[] c = new double[inner.length + 2];
            r[0] = face;
            System.arraycopy(inner, 0, r, 1, inner.length);
            System.arraycopy(capacities, 0, c, 1, inner.length);
            r[inner.length + 1] = outdoors ? 1 / films.outside() : face;
            double[] gain = new double[24];
            RadiantTimeSeries.conductionGain(
                    Transmission.transmittance(r),
                    s.netSquareMetres() * path.fraction(),
                    behind,
                    inside,
                    PeriodicResponse.conductionTimeFactors(r, c),
                    gain);
            boolean above = s.kind() == Surface.Kind.ROOF || s.kind() == Surface.Kind.CEILING;
            add(gain, above ? ROOF_SHARE : WALL_SHARE, radiant);
        }

        private static double convection(Surface.Kind kind, Films films) {
            return switch (kind) {
                case ROOF, CEILING -> films.ceiling();
                case FLOOR -> films.floor();
                default -> films.wall();
            };
        }

        private void window(Window w, Surface s) {
            double[] beam = new double[24];
            double[] diffuse = new double[24];
            w.solarParts(hours, s.azimuthRadians(), s.tiltRadians(), beam, diffuse);
            add(beam, w.solarRadiantFraction(), solar);
            add(diffuse, w.solarRadiantFraction(), radiant);
            double[] conduction = new double[24];
            for (int h = 0; h < 24; h++) {
                conduction[h] = w.squareMetres() * w.transmittance() * (hours.dryBulb(h) - inside);
            }
            add(conduction, w.conductionRadiantFraction(), radiant);
        }

        private void air() {
            double pressure = hours.pressure();
            Ventilation fans = house.ventilation();
            for (int h = 0; h < 24; h++) {
                double moist =
                        CompiledHouse.CP_AIR + CompiledHouse.CP_VAPOUR * hours.humidityRatio(h);
                double leak =
                        fans.combinedInfiltration(
                                house.infiltration()
                                        .dryAirMassFlow(
                                                inside,
                                                hours.dryBulb(h),
                                                hours.humidityRatio(h),
                                                hours.windSpeed(h),
                                                pressure),
                                pressure);
                double fan =
                        fans.supplyDryAirMassFlow(pressure) * (1 - fans.sensibleEffectiveness());
                sum[h] +=
                        (leak * compiled.leakShare[zone] + fan * compiled.fanShare[zone])
                                * moist
                                * (hours.dryBulb(h) - inside);
            }
        }

        private void add(double[] gain, double share, double[] factors) {
            double[] load = new double[24];
            RadiantTimeSeries.coolingLoad(gain, share, factors, load);
            for (int h = 0; h < 24; h++) {
                sum[h] += load[h];
            }
        }
    }

    /**
     * Conditioned rooms, in the order of the house.
     *
     * @return names
     */
    public List<String> rooms() {
        return rooms;
    }

    /**
     * Sensible load of the whole house at an hour, without ducts.
     *
     * @param hour local standard hour, in [0, 23]
     * @return load
     * @throws IllegalArgumentException if the hour is outside its range
     */
    public Quantity<Power> sensible(int hour) {
        return Units.watts(block(hour));
    }

    /**
     * Sensible load of a room at an hour, without ducts.
     *
     * @param room its name
     * @param hour local standard hour, in [0, 23]
     * @return load
     * @throws IllegalArgumentException if the house has no such conditioned room or the hour is
     *     outside its range
     */
    public Quantity<Power> sensible(String room, int hour) {
        Range.require("hour", hour, 0, 23, "h");
        int at = rooms.indexOf(room);
        if (at < 0) {
            throw new IllegalArgumentException(
                    "no conditioned room \"" + room + "\", but there are " + rooms);
        }
        return Units.watts(loads[at][hour]);
    }

    private double block(int hour) {
        Range.require("hour", hour, 0, 23, "h");
        double sum = 0;
        for (double[] load : loads) {
            sum += load[hour];
        }
        return sum;
    }

    /**
     * Hour of the greatest sensible load of the whole house.
     *
     * @return local standard hour
     */
    public int peakHour() {
        int best = 0;
        for (int h = 1; h < 24; h++) {
            if (block(h) > block(best)) {
                best = h;
            }
        }
        return best;
    }

    /**
     * Greatest sensible load of the whole house, without ducts.
     *
     * @return load
     */
    public Quantity<Power> peak() {
        return sensible(peakHour());
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "radiant time series load, peak %.0f W sensible at %02d:00",
                block(peakHour()),
                peakHour());
    }
}
