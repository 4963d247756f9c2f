package dev.thinair.loads;

import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/**
 * What the rooms are kept at: air temperature, steady or by hour, for the whole house with
 * exceptions by room, and relative humidity. Immutable.
 */
public final class Setpoint {
    private static final double LOWEST = 273.15;
    private static final double HIGHEST = 323.15;

    private final double[] house; // 24 values, K
    private final Map<String, double[]> rooms;
    private final double relativeHumidity;

    private Setpoint(double[] house, Map<String, double[]> rooms, double relativeHumidity) {
        this.house = house;
        this.rooms = rooms;
        this.relativeHumidity = relativeHumidity;
    }

    /**
     * One temperature all day in all rooms, at 50 % relative humidity.
     *
     * @param temperature 0 to 50 C
     * @return the setpoint
     * @throws IllegalArgumentException if outside that range
     */
    public static Setpoint of(Quantity<Temperature> temperature) {
        double[] day = new double[24];
        Arrays.fill(day, checked(temperature));
        return new Setpoint(day, Map.of(), 0.5);
    }

    /**
     * A temperature for every hour mark in all rooms, joined by straight lines, at 50 % relative
     * humidity.
     *
     * @param temperatures 24 temperatures, 0:00 to 23:00 local standard time, each 0 to 50 C
     * @return the setpoint
     * @throws IllegalArgumentException if there are not 24 or one is outside that range
     */
    public static Setpoint byHour(List<? extends Quantity<Temperature>> temperatures) {
        return new Setpoint(day(temperatures), Map.of(), 0.5);
    }

    /**
     * The usual residential summer setpoint: 24 C, 50 % (ASHRAE Handbook, Fundamentals 2021 SI, ch.
     * 17, design conditions).
     *
     * @return the setpoint
     */
    public static Setpoint residentialCooling() {
        return of(Units.celsius(24));
    }

    /**
     * The usual residential winter setpoint: 20 C, 30 % (ASHRAE Handbook, Fundamentals 2021 SI, ch.
     * 17, design conditions).
     *
     * @return the setpoint
     */
    public static Setpoint residentialHeating() {
        return of(Units.celsius(20)).withRelativeHumidity(Units.percent(30));
    }

    /**
     * The same with another relative humidity.
     *
     * @param relativeHumidity of the indoor air, 0 to 100 %
     * @return a copy
     * @throws IllegalArgumentException if outside that range
     */
    public Setpoint withRelativeHumidity(Quantity<Dimensionless> relativeHumidity) {
        double phi = Si.ratio(relativeHumidity, "indoor relative humidity");
        Range.require("indoor relative humidity", phi, 0, 1, "");
        return new Setpoint(house, rooms, phi);
    }

    /**
     * The same with one room kept otherwise.
     *
     * @param room name of the room
     * @param temperature 0 to 50 C
     * @return a copy
     * @throws IllegalArgumentException if outside that range
     */
    public Setpoint withRoom(String room, Quantity<Temperature> temperature) {
        double[] day = new double[24];
        Arrays.fill(day, checked(temperature));
        return with(room, day);
    }

    /**
     * The same with one room kept otherwise by hour.
     *
     * @param room name of the room
     * @param temperatures 24 temperatures, 0:00 to 23:00 local standard time, each 0 to 50 C
     * @return a copy
     * @throws IllegalArgumentException if there are not 24 or one is outside that range
     */
    public Setpoint withRoom(String room, List<? extends Quantity<Temperature>> temperatures) {
        return with(room, day(temperatures));
    }

    private Setpoint with(String room, double[] day) {
        Texts.requireText("room name", room);
        Map<String, double[]> copy = new TreeMap<>(rooms);
        copy.put(room, day);
        return new Setpoint(house, copy, relativeHumidity);
    }

    private static double[] day(List<? extends Quantity<Temperature>> temperatures) {
        if (temperatures.size() != 24) {
            throw new IllegalArgumentException(
                    "setpoint by hour has " + temperatures.size() + " values, but must have 24");
        }
        double[] day = new double[24];
        for (int h = 0; h < 24; h++) {
            day[h] = checked(temperatures.get(h));
        }
        return day;
    }

    private static double checked(Quantity<Temperature> temperature) {
        double t = Si.kelvins(temperature, "setpoint");
        Range.require("setpoint", t, LOWEST, HIGHEST, "K");
        return t;
    }

    /**
     * Temperature of a room at an hour.
     *
     * @param room name of the room
     * @param hour 0 to 23, local standard time
     * @return temperature, given in K
     * @throws IllegalArgumentException if the hour is outside its range
     */
    public Quantity<Temperature> temperature(String room, int hour) {
        Range.require("hour", hour, 0, 23, "h");
        return Units.kelvins(series(room)[hour]);
    }

    /**
     * Relative humidity of the indoor air.
     *
     * @return relative humidity, 0 to 1
     */
    public double relativeHumidity() {
        return relativeHumidity;
    }

    /** The room's day; not to be written to. */
    double[] series(String room) {
        double[] own = rooms.get(room);
        return own == null ? house : own;
    }

    /** Names that have a temperature of their own. */
    Iterable<String> namedRooms() {
        return rooms.keySet();
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Setpoint s)
                || relativeHumidity != s.relativeHumidity
                || !Arrays.equals(house, s.house)
                || !rooms.keySet().equals(s.rooms.keySet())) {
            return false;
        }
        for (Map.Entry<String, double[]> entry : rooms.entrySet()) {
            if (!Arrays.equals(entry.getValue(), s.rooms.get(entry.getKey()))) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(house) * 31 + rooms.keySet().hashCode();
    }

    @Override
    public String toString() {
        double low = Arrays.stream(house).min().orElseThrow() - 273.15;
        double high = Arrays.stream(house).max().orElseThrow() - 273.15;
        String degrees =
                low == high
                        ? String.format(Locale.ROOT, "%.1f C", low)
                        : String.format(Locale.ROOT, "%.1f to %.1f C", low, high);
        return String.format(
                        Locale.ROOT, "setpoint %s, %.0f %% rh", degrees, relativeHumidity * 100)
                + (rooms.isEmpty() ? "" : ", otherwise in " + rooms.keySet());
    }
}
