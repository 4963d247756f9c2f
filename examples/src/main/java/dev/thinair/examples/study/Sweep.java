package dev.thinair.examples.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Every combination of some values of some variables, and a question asked at each.
 *
 * <p>The points are worked out on all cores. The table's rows stand in the order of the sweep,
 * first variable slowest, and hold the same numbers whatever the number of cores.
 */
public final class Sweep {
    /** More rows than anybody reads; larger studies stream their points instead. */
    static final int MOST_POINTS = 100_000;

    private final List<String> names;
    private final List<double[]> values;

    private Sweep(List<String> names, List<double[]> values) {
        this.names = names;
        this.values = values;
    }

    /**
     * Begins with the variable that changes slowest.
     *
     * @param name of the variable, with its unit
     * @param values at least one
     * @return a sweep over one variable
     * @throws IllegalArgumentException if a value is not finite or there is none
     */
    public static Sweep over(String name, double... values) {
        return new Sweep(List.of(), List.of()).and(name, values);
    }

    /**
     * Adds a variable.
     *
     * @param name of the variable, with its unit
     * @param more its values
     * @return a sweep over all combinations
     * @throws IllegalArgumentException if a value is not finite, there is none, the name is taken,
     *     or there would be more than 100,000 points
     */
    public Sweep and(String name, double... more) {
        if (more.length == 0) {
            throw new IllegalArgumentException(name + " has no values");
        }
        for (double v : more) {
            if (!Double.isFinite(v)) {
                throw new IllegalArgumentException(name + " is " + v + ", but must be finite");
            }
        }
        if (names.contains(name)) {
            throw new IllegalArgumentException("there is already a variable \"" + name + "\"");
        }
        if ((long) size() * more.length > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "the sweep would have more than " + MOST_POINTS + " points");
        }
        List<String> allNames = new ArrayList<>(names);
        allNames.add(name);
        List<double[]> allValues = new ArrayList<>(values);
        allValues.add(more.clone());
        return new Sweep(List.copyOf(allNames), Collections.unmodifiableList(allValues));
    }

    /**
     * Number of combinations.
     *
     * @return at least 1
     */
    public int size() {
        int size = 1;
        for (double[] v : values) {
            size *= v.length;
        }
        return size;
    }

    /**
     * Asks the question at every point.
     *
     * @param answers names of the numbers answered, with their units
     * @param question what is to be computed; a point it cannot answer (it throws {@link
     *     IllegalArgumentException}, {@link IllegalStateException} or {@link ArithmeticException})
     *     has empty cells and the reason in a last column
     * @return one row per point: its variables, then its answers
     * @throws IllegalArgumentException if the question answers more or fewer numbers than named
     */
    public Table ask(List<String> answers, Function<Point, double[]> question) {
        List<List<Object>> rows =
                IntStream.range(0, size())
                        .parallel()
                        .mapToObj(i -> row(new Point(names, at(i)), answers, question))
                        .toList();
        List<String> columns = new ArrayList<>(names);
        columns.addAll(answers);
        boolean allAnswered = rows.stream().allMatch(r -> r.get(columns.size()).equals(""));
        if (allAnswered) {
            return new Table(
                    columns, rows.stream().map(r -> r.subList(0, columns.size())).toList());
        }
        columns.add("why not");
        return new Table(columns, rows);
    }

    private static List<Object> row(
            Point point, List<String> answers, Function<Point, double[]> question) {
        List<Object> row = new ArrayList<>();
        for (double v : point.values) {
            row.add(v);
        }
        double[] answer = new double[answers.size()];
        String why = "";
        try {
            answer = question.apply(point);
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException e) {
            Arrays.fill(answer, Double.NaN);
            why = String.valueOf(e.getMessage());
        }
        if (answer.length != answers.size()) {
            throw new IllegalArgumentException(
                    "the question answers "
                            + answer.length
                            + " numbers, but "
                            + answers.size()
                            + " are named: "
                            + answers);
        }
        for (double v : answer) {
            row.add(v);
        }
        row.add(why);
        return row;
    }

    private double[] at(int index) {
        double[] point = new double[values.size()];
        int left = index;
        for (int i = point.length - 1; i >= 0; i--) {
            double[] v = values.get(i);
            point[i] = v[left % v.length];
            left /= v.length;
        }
        return point;
    }

    @Override
    public String toString() {
        return "sweep of " + size() + " points over " + String.join("; ", names);
    }

    /** One combination of values. */
    public static final class Point {
        private final List<String> names;
        private final double[] values;

        private Point(List<String> names, double[] values) {
            this.names = names;
            this.values = values;
        }

        /**
         * A variable's value here.
         *
         * @param name the variable's name, or how it begins
         * @return its value
         * @throws IllegalArgumentException if no variable or more than one begins so
         */
        public double get(String name) {
            return values[Table.index(names, name)];
        }
    }
}
