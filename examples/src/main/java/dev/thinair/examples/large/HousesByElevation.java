package dev.thinair.examples.large;

import static dev.thinair.units.Units.airChangesPerHour;
import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicMetres;
import static dev.thinair.units.Units.degrees;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.kilogramsPerSecond;
import static dev.thinair.units.Units.metres;
import static dev.thinair.units.Units.percent;
import static dev.thinair.units.Units.squareMetres;
import static dev.thinair.units.Units.tonsOfRefrigeration;
import static dev.thinair.units.Units.watts;
import static dev.thinair.units.Units.wattsPerMetreKelvin;
import static dev.thinair.units.Units.wattsPerSquareMetreKelvin;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.UnitState;
import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.examples.InventedDucts;
import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.Ground;
import dev.thinair.loads.House;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.Room;
import dev.thinair.loads.Setpoint;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Window;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * A million combinations of an invented house, an elevation, a duct system and a unit: load,
 * airflow, coil and fit of each. Cut into one part a house, computed from its number alone, so that
 * parts may be computed anywhere, in any order, again after a failure, and come out the same to the
 * last bit.
 */
public final class HousesByElevation {
    /** Number of parts: houses. */
    public static final int PARTS = 100;

    private static final int ELEVATIONS = 100;
    private static final double ELEVATION_STEP = 30; // m
    private static final int[] RUNS = {6, 8, 10, 12};
    private static final int SIZES = 25;

    /** Rows a part. */
    public static final int ROWS = ELEVATIONS * RUNS.length * SIZES;

    /** What the columns of a row are, in order. */
    public static final List<String> COLUMNS =
            List.of(
                    "house",
                    "elevation, m",
                    "supply runs",
                    "unit, tons",
                    "sensible load, W",
                    "standard airflow, m3/s",
                    "sensible capacity, W",
                    "coil surface, degC",
                    "capacity over load");

    private static final Assembly[] WALLS = {
        Assemblies.woodFrameWall(),
        Assemblies.studWall89(),
        Assemblies.studWall140(),
        Assemblies.adobeWall()
    };

    private HousesByElevation() {}

    /**
     * Computes a part.
     *
     * @param house number of the house, from 0 below {@link #PARTS}
     * @return {@link #ROWS} rows; where a unit finds no balance (too little air for its size), the
     *     last three columns are NaN, which the text form leaves empty
     * @throws IllegalArgumentException if there is no such house
     */
    public static List<double[]> part(int house) {
        if (house < 0 || house >= PARTS) {
            throw new IllegalArgumentException(
                    "house is " + house + ", but must lie in [0, " + (PARTS - 1) + "]");
        }
        double area = 80 + 40 * (house % 5); // m2
        double glass = 0.08 + 0.04 * (house / 5 % 5); // of the floor area
        Assembly wall = WALLS[house / 25];
        List<double[]> rows = new ArrayList<>(ROWS);
        House built = house(area, glass, wall);
        DuctSystem[] ducts = new DuctSystem[RUNS.length];
        for (int r = 0; r < RUNS.length; r++) {
            ducts[r] = InventedDucts.withRuns(RUNS[r]);
        }
        CoolingUnit[] units = new CoolingUnit[SIZES];
        for (int s = 0; s < SIZES; s++) {
            units[s] = CoolingUnit.typical(tonsOfRefrigeration(tons(s)), Staging.SINGLE);
        }
        for (int e = 0; e < ELEVATIONS; e++) {
            double elevation = ELEVATION_STEP * e;
            Site site =
                    Site.of(
                                    "somewhere",
                                    degrees(39),
                                    degrees(-105),
                                    ZoneOffset.ofHours(-7),
                                    metres(elevation))
                            .withGroundTemperature(celsius(13));
            CoolingDesignDay day = day(site);
            DesignLoad load = built.compile(site).coolingLoad(day, Setpoint.of(celsius(24)));
            double sensible =
                    Si.watts(load.sensible(load.peakHour()), "sensible load at the peak hour");
            MoistAir air =
                    MoistAir.ofDryBulbAndRelativeHumidity(
                            celsius(24), percent(45), site.pressure());
            for (int r = 0; r < RUNS.length; r++) {
                Airflow flow = ducts[r].solve(air);
                double dry = flow.kilogramsPerSecond() / (1 + air.humidityRatioNumber());
                for (int s = 0; s < SIZES; s++) {
                    double[] row = {
                        house,
                        elevation,
                        RUNS[r],
                        tons(s),
                        sensible,
                        flow.kilogramsPerSecond() / CoolingUnit.STANDARD_DENSITY,
                        Double.NaN,
                        Double.NaN,
                        Double.NaN
                    };
                    try {
                        UnitState state =
                                units[s].steady(air, kilogramsPerSecond(dry), day.dryBulb());
                        row[6] = Si.watts(state.sensibleCapacity(), "sensible capacity");
                        row[7] = Si.kelvins(state.apparatusDewPoint(), "coil surface") - 273.15;
                        row[8] = row[6] / sensible;
                    } catch (NoBalanceException none) {
                        // Stays NaN: there is no steady state to speak of.
                    }
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    /** Rows as CSV text, numbers in full, so that equal texts mean equal bits. */
    private static String text(List<double[]> rows) {
        StringBuilder out = new StringBuilder(120 * rows.size());
        for (double[] row : rows) {
            for (int c = 0; c < row.length; c++) {
                out.append(c == 0 ? "" : ",");
                out.append(Double.isNaN(row[c]) ? "" : Double.toString(row[c]));
            }
            out.append('\n');
        }
        return out.toString();
    }

    /**
     * A part as a file has it.
     *
     * @param rows its rows
     * @return bytes
     */
    public static byte[] bytes(List<double[]> rows) {
        StringBuilder head = new StringBuilder();
        for (String c : COLUMNS) {
            head.append(head.length() == 0 ? "" : ",").append('"').append(c).append('"');
        }
        return (head + "\n" + text(rows)).getBytes(StandardCharsets.UTF_8);
    }

    private static double tons(int size) {
        return (10 + 2 * size) / 10.0;
    }

    private static CoolingDesignDay day(Site site) {
        return CoolingDesignDay.at(site)
                .date(LocalDate.of(2026, 7, 21))
                .dryBulb(celsius(33))
                .dailyRange(kelvinDifference(14))
                .wetBulb(celsius(17))
                .opticalDepths(0.33, 2.35)
                .build();
    }

    private static House house(double area, double glass, Assembly wall) {
        double side = Math.sqrt(area);
        Room.Builder room = Room.named("house").floorArea(squareMetres(area)).height(metres(2.5));
        for (int i = 0; i < 4; i++) {
            room.surface(
                    Surface.wall("wall " + i, wall)
                            .size(metres(side), metres(2.5))
                            .facing(degrees(90 * i))
                            .window(
                                    Window.of(
                                            "window " + i,
                                            metres(glass * area / 4 / 1.4),
                                            metres(1.4),
                                            wattsPerSquareMetreKelvin(2.6),
                                            Glazing.clearDouble())));
        }
        room.surface(
                Surface.roof("roof", Assemblies.cathedralRoof())
                        .area(squareMetres(1.05 * area))
                        .facing(degrees(180))
                        .tilt(degrees(15)));
        room.surface(
                Surface.floor("floor", Assemblies.slab())
                        .area(squareMetres(area))
                        .onGround(
                                Ground.slabOnGround(
                                        metres(4 * side), metres(0.3), wattsPerMetreKelvin(2))));
        room.surface(
                Surface.mass("inside walls", Assemblies.partition())
                        .area(squareMetres(0.7 * area)));
        room.gain(Appliances.of("things", watts(3 * area), watts(area / 2)));
        return House.named("invented house")
                .room(room.build())
                .infiltration(
                        Infiltration.airChanges(airChangesPerHour(0.5), cubicMetres(2.5 * area)))
                .build();
    }
}
