package dev.thinair.examples.shell;

import dev.thinair.cycling.Comparison;
import dev.thinair.cycling.DayRun;
import dev.thinair.cycling.Evidence;
import dev.thinair.cycling.Finding;
import dev.thinair.cycling.Review;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.RunFlow;
import dev.thinair.examples.report.Show;
import dev.thinair.examples.study.Table;
import dev.thinair.loads.DesignLoad;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The few words the interactive shell adds: a welcome, a cheat sheet, and results as tables. */
public final class Shell {
    /** What the welcome offers to try, in order; each uses what those before it made. */
    static final List<String> TRY =
            List.of(
                    "var site = SitePressure.standardAt(feet(7200))",
                    "var air = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(72), percent(40),"
                            + " site.pressure())",
                    "show(air.working())",
                    "var system = Job.shipped().installed()",
                    "show(system.airflow())",
                    "show(Review.of(system))");

    private Shell() {}

    /** Prints what to try first. */
    public static void welcome() {
        System.out.println(
                "thinair: home cooling where the air is thin. All packages are imported. Try, line by"
                        + " line:\n");
        TRY.forEach(line -> System.out.println("    " + line));
        System.out.println(
                "\ncheatSheet() lists what there is, show(x) prints any result as a table, /exit"
                        + " leaves.");
    }

    /** Prints all topics of the library with their types and factories. */
    public static void cheatSheet() {
        System.out.println(CheatSheet.text());
    }

    /**
     * Prints one topic, one type, or the kernel's functions.
     *
     * @param about a topic's or a type's name, or "kernel"
     */
    public static void cheatSheet(String about) {
        System.out.println(CheatSheet.text(about));
    }

    /**
     * A quantity as a plain number in a unit.
     *
     * @param <Q> its type
     * @param quantity the quantity
     * @param unit the unit
     */
    public static <Q extends Quantity<Q>> double in(Quantity<Q> quantity, Unit<Q> unit) {
        return Show.in(quantity, unit);
    }

    /**
     * Prints a result in the form that reads best: airflow by run, load by room, day by hour, a
     * review with its findings and remedies, a quantity in both unit systems.
     *
     * @param result any result of the library
     */
    public static void show(Object result) {
        System.out.println(text(result).stripTrailing());
    }

    static String text(Object result) {
        if (result instanceof Airflow airflow) {
            return airflow + "\n\n" + runs(airflow);
        } else if (result instanceof DesignLoad load) {
            return load + "\n\n" + load.table();
        } else if (result instanceof DayRun day) {
            return day + "\n\n" + hours(day);
        } else if (result instanceof Review review) {
            return review.summary()
                    + "\n\n"
                    + findings(review)
                    + "\n"
                    + remedies(review.comparison());
        } else if (result instanceof Comparison comparison) {
            return remedies(comparison);
        } else if (result instanceof Finding finding) {
            return finding(finding);
        } else if (result instanceof Working working) {
            return working.toText();
        } else if (result instanceof Quantity<?> quantity) {
            return QuantityText.formatBoth(quantity, 5);
        } else if (result instanceof Iterable<?> many) {
            StringBuilder out = new StringBuilder();
            many.forEach(one -> out.append(text(one).stripTrailing()).append('\n'));
            return out.toString();
        }
        return String.valueOf(result);
    }

    private static Table runs(Airflow airflow) {
        List<List<Object>> rows = new ArrayList<>();
        for (RunFlow run : airflow.runs()) {
            rows.add(
                    List.of(
                            run.name(),
                            run.isSupply() ? "to " + run.room() : "from " + run.room(),
                            in(run.actual(), Units.CUBIC_FOOT_PER_MINUTE),
                            in(run.standard(), Units.CUBIC_FOOT_PER_MINUTE),
                            in(run.velocity(), Units.FOOT_PER_MINUTE)));
        }
        return new Table(List.of("run", "room", "cfm", "standard cfm", "ft/min"), rows);
    }

    private static Table hours(DayRun day) {
        List<List<Object>> rows = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
            rows.add(
                    List.of(
                            (double) h,
                            in(day.setpoint(h), Units.FAHRENHEIT),
                            in(day.indoorTemperature(h), Units.FAHRENHEIT),
                            in(day.indoorRelativeHumidity(h), Units.PERCENT),
                            in(day.runFraction(h), Units.PERCENT),
                            (double) day.starts(h),
                            in(day.electricity(h), Units.KILOWATT_HOUR)));
        }
        return new Table(
                List.of(
                        "hour",
                        "setpoint, degF",
                        "indoors, degF",
                        "humidity, %",
                        "running, %",
                        "starts",
                        "kWh"),
                rows);
    }

    private static String findings(Review review) {
        StringBuilder out = new StringBuilder();
        review.findings().forEach(f -> out.append(finding(f)));
        return out.toString();
    }

    private static String finding(Finding finding) {
        StringBuilder out = new StringBuilder();
        out.append(finding.severity()).append(": ").append(finding.title()).append('\n');
        for (Evidence e : finding.evidence()) {
            out.append("    ").append(e.name()).append(": ");
            out.append(QuantityText.formatBoth(e.value(), 4)).append('\n');
        }
        out.append("    limit: ").append(finding.criterion().name()).append(' ');
        out.append(QuantityText.formatBoth(finding.criterion().value(), 4));
        out.append(" (").append(finding.criterion().source()).append(")\n");
        finding.caution().ifPresent(c -> out.append("    CAUTION: ").append(c).append('\n'));
        return out.toString();
    }

    private static String remedies(Comparison comparison) {
        List<List<Object>> rows = new ArrayList<>();
        StringBuilder titles = new StringBuilder();
        for (Comparison.Row row : comparison.rows()) {
            rows.add(
                    List.of(
                            (double) rows.size(),
                            in(row.standardAirflowPerTon(), Units.CUBIC_FOOT_PER_MINUTE_PER_TON),
                            in(row.capacity(), Units.TON_OF_REFRIGERATION),
                            in(row.minimumCoilTemperature(), Units.FAHRENHEIT),
                            (double) row.starts(),
                            in(row.longestRun(), Units.HOUR),
                            in(row.miss(), Units.FAHRENHEIT_DIFFERENCE),
                            in(row.electricity(), Units.KILOWATT_HOUR),
                            (double) row.remaining()));
            titles.append(String.format(Locale.ROOT, "%2d  %s\n", rows.size() - 1, row.title()));
        }
        return "On the design day\n"
                + new Table(
                        List.of(
                                "no",
                                "scfm/ton",
                                "tons",
                                "coil, degF",
                                "starts",
                                "longest, h",
                                "miss, degF",
                                "kWh",
                                "left to mend"),
                        rows)
                + titles;
    }
}
