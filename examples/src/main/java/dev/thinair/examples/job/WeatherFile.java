package dev.thinair.examples.job;

import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.Site;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.units.HeatFlux;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;

/**
 * Reads hourly weather from a plain text table: values parted by commas, one row an hour, a first
 * row with the name and unit of each column, such as {@code dry bulb [degF]}. Lines that begin with
 * # are remarks. The columns may stand in any order; they are named on the page of the job file.
 * The first fault ends the reading with one line: place, column, what is wrong, what is allowed.
 */
public final class WeatherFile {

    private static final String TIME = "time";
    private static final String DRY_BULB = "dry bulb";
    private static final String RELATIVE_HUMIDITY = "relative humidity";
    private static final String DEW_POINT = "dew point";
    private static final String HUMIDITY_RATIO = "humidity ratio";
    private static final String WIND = "wind";
    private static final String BEAM = "beam normal";
    private static final String DIFFUSE = "diffuse horizontal";
    private static final List<String> MOISTURE =
            List.of(RELATIVE_HUMIDITY, DEW_POINT, HUMIDITY_RATIO);
    private static final int LEAST_ROWS = 24;
    private static final int MOST_ROWS = 8784;

    /** What a column holds, and its range in SI. */
    private record Kind<Q extends Quantity<Q>>(
            Class<Q> type, String example, double low, double high, String allowed) {

        double si(String text) {
            Quantity<Q> q = QuantityText.parse(text, type);
            return q.toSystemUnit().getValue().doubleValue();
        }
    }

    private static final Map<String, Kind<?>> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put(
                DRY_BULB,
                new Kind<>(Temperature.class, "degF", 213.15, 333.15, "-60 degC to 60 degC"));
        KINDS.put(RELATIVE_HUMIDITY, new Kind<>(Dimensionless.class, "%", 0, 1, "0 % to 100 %"));
        KINDS.put(
                DEW_POINT,
                new Kind<>(Temperature.class, "degF", 193.15, 313.15, "-80 degC to 40 degC"));
        KINDS.put(
                HUMIDITY_RATIO,
                new Kind<>(HumidityRatio.class, "g/kg", 0, 0.05, "0 g/kg to 50 g/kg"));
        KINDS.put(WIND, new Kind<>(Speed.class, "mph", 0, 60, "0 m/s to 60 m/s"));
        KINDS.put(BEAM, new Kind<>(HeatFlux.class, "W/m2", 0, 1500, "0 W/m2 to 1500 W/m2"));
        KINDS.put(DIFFUSE, new Kind<>(HeatFlux.class, "W/m2", 0, 1500, "0 W/m2 to 1500 W/m2"));
    }

    /** A column of one file: number to SI is a straight line. */
    private record Column(String name, String unit, Kind<?> kind, double zero, double one) {
        double si(double number) {
            return zero + number * (one - zero);
        }
    }

    private final String file;
    private final Site site;

    private WeatherFile(String file, Site site) {
        this.file = file;
        this.site = site;
    }

    /**
     * Reads a weather file.
     *
     * @param path the file
     * @param site where it holds
     * @return the weather
     * @throws JobFileException if the file cannot be used; the message is one line
     */
    public static HourlyWeather read(Path path, Site site) throws JobFileException {
        String name = path.toString();
        try {
            return new WeatherFile(name, site)
                    .read(Files.readAllLines(path, StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            throw new JobFileException(name + ": no such file; give the path of a weather file");
        } catch (MalformedInputException e) {
            throw new JobFileException(name + ": is not UTF-8 text; save the file as UTF-8");
        } catch (IOException e) {
            throw new JobFileException(
                    name + ": cannot be read (" + e.getMessage() + "); give a weather file");
        }
    }

    /**
     * Reads weather held in memory.
     *
     * @param text the file's text
     * @param name what errors call it
     * @param site where it holds
     * @return the weather
     * @throws JobFileException if the text cannot be used; the message is one line
     */
    public static HourlyWeather read(String text, String name, Site site) throws JobFileException {
        return new WeatherFile(name, site).read(text.lines().toList());
    }

    private HourlyWeather read(List<String> lines) throws JobFileException {
        Map<Integer, Column> columns = null;
        int timeColumn = -1;
        List<double[]> rows = new ArrayList<>();
        LocalDateTime start = null;
        List<String> names = new ArrayList<>(KINDS.keySet());
        for (int i = 0; i < lines.size(); i++) {
            String line = i == 0 ? lines.get(i).replace("\uFEFF", "") : lines.get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            if (columns == null) {
                columns = header(i + 1, line, cells);
                for (int c = 0; c < cells.length; c++) {
                    if (cells[c].strip().equalsIgnoreCase(TIME)) {
                        timeColumn = c;
                    }
                }
                continue;
            }
            if (cells.length != columns.size() + 1) {
                throw fault(
                        i + 1,
                        1,
                        "",
                        "row has " + cells.length + " values",
                        "the first row names " + (columns.size() + 1) + " columns");
            }
            LocalDateTime time = time(cells[timeColumn].strip(), i + 1, at(cells, timeColumn));
            if (start == null) {
                start = time;
            }
            if (!time.equals(start.plusHours(rows.size()))) {
                throw fault(
                        i + 1,
                        at(cells, timeColumn),
                        TIME,
                        "is " + time + " after " + start.plusHours(rows.size() - 1L),
                        "rows must follow each other hour by hour, in local standard time");
            }
            if (rows.size() == MOST_ROWS) {
                throw fault(i + 1, 1, "", "more than " + MOST_ROWS + " rows", "at most a year");
            }
            double[] row = new double[names.size()];
            for (Map.Entry<Integer, Column> e : columns.entrySet()) {
                int c = e.getKey();
                row[names.indexOf(e.getValue().name())] =
                        value(e.getValue(), cells[c].strip(), i + 1, at(cells, c));
            }
            rows.add(row);
        }
        if (columns == null) {
            throw fault(1, 1, "", "the file holds no row", "the first row names the columns");
        }
        if (rows.size() < LEAST_ROWS) {
            throw fault(
                    lines.size(),
                    1,
                    "",
                    "only " + rows.size() + " hours",
                    "at least " + LEAST_ROWS + " hours");
        }
        return weather(start, rows, names, columns);
    }

    private HourlyWeather weather(
            LocalDateTime start,
            List<double[]> rows,
            List<String> names,
            Map<Integer, Column> columns)
            throws JobFileException {
        int n = rows.size();
        String moisture =
                columns.values().stream()
                        .map(Column::name)
                        .filter(MOISTURE::contains)
                        .findFirst()
                        .orElseThrow();
        double[][] v = new double[names.size()][n];
        for (int i = 0; i < n; i++) {
            for (int c = 0; c < names.size(); c++) {
                v[c][i] = rows.get(i)[c];
            }
        }
        double[] dryBulb = v[names.indexOf(DRY_BULB)];
        double[] given = v[names.indexOf(moisture)];
        double[] humidityRatio = new double[n];
        double p = Si.pascals(site.pressure(), "site pressure");
        for (int i = 0; i < n; i++) {
            double saturated = IdealMoistAir.saturationHumidityRatio(dryBulb[i], p);
            humidityRatio[i] =
                    switch (moisture) {
                        case RELATIVE_HUMIDITY ->
                                IdealMoistAir.humidityRatioFromRelativeHumidity(
                                        dryBulb[i], given[i], p);
                        case DEW_POINT ->
                                IdealMoistAir.humidityRatioFromVaporPressure(
                                        Saturation.pressure(given[i]), p);
                        default -> given[i];
                    };
            if (humidityRatio[i] > saturated * (1 + 1e-9)) {
                throw new JobFileException(
                        file
                                + ": "
                                + start.plusHours(i)
                                + ": "
                                + moisture
                                + ": more moisture than the air can hold at its dry bulb; allowed is up"
                                + " to saturation");
            }
        }
        try {
            return HourlyWeather.of(
                    site,
                    start,
                    dryBulb,
                    humidityRatio,
                    v[names.indexOf(WIND)],
                    v[names.indexOf(BEAM)],
                    v[names.indexOf(DIFFUSE)]);
        } catch (IllegalArgumentException e) {
            throw new JobFileException(
                    file + ": " + e.getMessage() + "; see job-file.md for what is allowed here");
        }
    }

    private Map<Integer, Column> header(int line, String text, String[] cells)
            throws JobFileException {
        Map<Integer, Column> columns = new LinkedHashMap<>();
        boolean time = false;
        for (int c = 0; c < cells.length; c++) {
            String cell = cells[c].strip();
            if (cell.equalsIgnoreCase(TIME)) {
                if (time) {
                    throw fault(line, at(cells, c), TIME, "column given twice", "give it once");
                }
                time = true;
                continue;
            }
            int open = cell.indexOf('[');
            String name = (open < 0 ? cell : cell.substring(0, open)).strip();
            Kind<?> kind = KINDS.get(name);
            if (kind == null) {
                throw fault(
                        line,
                        at(cells, c),
                        name,
                        "unknown column",
                        "known are " + TIME + ", " + String.join(", ", KINDS.keySet()));
            }
            if (open < 0 || !cell.endsWith("]")) {
                throw fault(
                        line,
                        at(cells, c),
                        name,
                        "column has no unit",
                        "write it in brackets, as in " + name + " [" + kind.example() + "]");
            }
            for (Column known : columns.values()) {
                boolean both = MOISTURE.contains(known.name()) && MOISTURE.contains(name);
                if (known.name().equals(name) || both) {
                    throw fault(
                            line,
                            at(cells, c),
                            name,
                            known.name().equals(name)
                                    ? "column given twice"
                                    : "moisture is given already by " + known.name(),
                            "give one of " + String.join(", ", MOISTURE));
                }
            }
            String unit = cell.substring(open + 1, cell.length() - 1).strip();
            try {
                columns.put(
                        c,
                        new Column(name, unit, kind, kind.si("0 " + unit), kind.si("1 " + unit)));
            } catch (IllegalArgumentException e) {
                throw fault(
                        line,
                        at(cells, c),
                        name,
                        "unit [" + unit + "] cannot be used",
                        "write for example [" + kind.example() + "]");
            }
        }
        if (!time) {
            throw fault(line, 1, TIME, "column missing", "local standard time of each row");
        }
        for (String needed : List.of(DRY_BULB, WIND, BEAM, DIFFUSE)) {
            if (columns.values().stream().noneMatch(c -> c.name().equals(needed))) {
                throw fault(
                        line,
                        1,
                        needed,
                        "column missing",
                        "add a column " + needed + " [" + KINDS.get(needed).example() + "]");
            }
        }
        if (columns.values().stream().noneMatch(c -> MOISTURE.contains(c.name()))) {
            throw fault(
                    line,
                    1,
                    "moisture",
                    "column missing",
                    "add one of " + String.join(", ", MOISTURE));
        }
        return columns;
    }

    private double value(Column column, String cell, int line, int at) throws JobFileException {
        double number;
        try {
            number = Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            number = Double.NaN;
        }
        if (!Double.isFinite(number)) {
            throw fault(line, at, column.name(), "\"" + cell + "\" is no number", "a plain number");
        }
        double si = column.si(number);
        if (!(si >= column.kind().low() - 1e-9 && si <= column.kind().high() + 1e-9)) {
            throw fault(
                    line,
                    at,
                    column.name(),
                    "is " + cell + " " + column.unit(),
                    "allowed is " + column.kind().allowed());
        }
        return Math.max(column.kind().low(), Math.min(column.kind().high(), si));
    }

    private LocalDateTime time(String cell, int line, int at) throws JobFileException {
        try {
            return LocalDateTime.parse(cell.replace(' ', 'T'));
        } catch (DateTimeParseException e) {
            throw fault(
                    line, at, TIME, "\"" + cell + "\" is no time", "write it as 2026-07-01T13:00");
        }
    }

    private static int at(String[] cells, int c) {
        int column = 1;
        for (int i = 0; i < c; i++) {
            column += cells[i].length() + 1;
        }
        return column;
    }

    private JobFileException fault(
            int line, int column, String name, String wrong, String allowed) {
        return JobFileException.at(new Place(file, line, column, name), wrong, allowed);
    }
}
