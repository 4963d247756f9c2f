package dev.thinair.cycling;

import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.ducts.OutsideBlowerTableException;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A review under uncertain inputs: how often each finding holds when the inputs lie anywhere in the
 * ranges given, and which input matters most.
 *
 * <p>Inputs are drawn by Latin hypercube (McKay, Beckman and Conover 1979, Technometrics 21(2),
 * from memory): each range is cut into as many equal parts as there are draws, every part is used
 * once, in an order of its own for each input. Influence is Spearman's rank correlation between
 * input and outcome, equal values sharing their mean rank (Spearman 1904, American Journal of
 * Psychology 15(1), from memory). Same system, ranges, draws and seed give the same result,
 * whatever the number of threads. Immutable.
 */
public final class Uncertainty {

    /** Outcomes that inputs are held against. */
    public enum Outcome {
        /** Standard airflow per rated capacity. */
        AIRFLOW_PER_TON,
        /** Lowest temperature of the coil's surface while clear of ice. */
        MINIMUM_COIL_TEMPERATURE,
        /** How far the house gets above the thermostat's band. */
        MISS,
        /** Starts of the design day. */
        STARTS,
        /** Electricity of the design day. */
        ELECTRICITY
    }

    private record Input(
            String name,
            double low,
            double high,
            DoubleFunction<UnaryOperator<InstalledSystem>> change) {}

    private final List<String> names;
    private final int draws;
    private final int failed;
    private final Map<String, Integer> held;
    private final double[][] inputs;
    private final double[][] outcomes;

    private Uncertainty(
            List<String> names,
            int draws,
            int failed,
            Map<String, Integer> held,
            double[][] inputs,
            double[][] outcomes) {
        this.names = names;
        this.draws = draws;
        this.failed = failed;
        this.held = held;
        this.inputs = inputs;
        this.outcomes = outcomes;
    }

    /**
     * Starts a study.
     *
     * @param system the system in its middle state
     * @return an empty builder
     * @throws IllegalArgumentException if the system is missing
     */
    public static Builder of(InstalledSystem system) {
        if (system == null) {
            throw new IllegalArgumentException("the uncertain system must not be null");
        }
        return new Builder(system);
    }

    /**
     * Number of draws that could be run.
     *
     * @return draws less failures
     */
    public int completed() {
        return draws - failed;
    }

    /**
     * Number of draws with which the unit has no balance or the blower no operating point.
     *
     * @return failures
     */
    public int failed() {
        return failed;
    }

    /**
     * How often a kind of finding holds.
     *
     * @param kind the kind of finding, {@code Finding.CoilIce.class} for instance
     * @return share of the completed draws, 0 to 1
     */
    public double share(Class<? extends Finding> kind) {
        return completed() == 0
                ? 0
                : held.getOrDefault(kind.getSimpleName(), 0) / (double) completed();
    }

    /**
     * How often each kind of finding holds, by the simple name of its type.
     *
     * @return shares of the completed draws; kinds that never hold are left out
     */
    public Map<String, Double> shares() {
        Map<String, Double> shares = new TreeMap<>();
        held.forEach((k, v) -> shares.put(k, v / (double) completed()));
        return shares;
    }

    /**
     * Spearman's rank correlation of an input with an outcome over the completed draws.
     *
     * @param input name of the input
     * @param outcome the outcome
     * @return -1 to 1; 0 if the outcome never changes
     * @throws IllegalArgumentException if there is no such input or fewer than 3 draws were
     *     completed
     */
    public double influence(String input, Outcome outcome) {
        int i = names.indexOf(input);
        if (i < 0) {
            throw new IllegalArgumentException(
                    "there is no input \"" + input + "\"; known are " + names);
        }
        if (completed() < 3) {
            throw new IllegalArgumentException(
                    "influence needs 3 completed draws, there are " + completed());
        }
        return spearman(inputs[i], outcomes[outcome.ordinal()]);
    }

    /**
     * The input whose rank correlation with an outcome is strongest.
     *
     * @param outcome the outcome
     * @return its name; the first given among equals
     * @throws IllegalArgumentException if fewer than 3 draws were completed
     */
    public String mostInfluential(Outcome outcome) {
        String best = names.get(0);
        double most = -1;
        for (String name : names) {
            double r = Math.abs(influence(name, outcome));
            if (r > most + 1e-12) {
                most = r;
                best = name;
            }
        }
        return best;
    }

    /**
     * Outcomes of the completed draws in ascending order.
     *
     * @param outcome the outcome, in SI units (m3/s per W, K, K, count, J)
     * @return a fresh array
     */
    public double[] sorted(Outcome outcome) {
        double[] values = outcomes[outcome.ordinal()].clone();
        Arrays.sort(values);
        return values;
    }

    static double spearman(double[] x, double[] y) {
        return pearson(ranks(x), ranks(y));
    }

    private static double[] ranks(double[] x) {
        Integer[] order = new Integer[x.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> x[i]));
        double[] rank = new double[x.length];
        int i = 0;
        while (i < order.length) {
            int j = i;
            while (j + 1 < order.length && x[order[j + 1]] == x[order[i]]) {
                j++;
            }
            for (int k = i; k <= j; k++) {
                rank[order[k]] = 0.5 * (i + j);
            }
            i = j + 1;
        }
        return rank;
    }

    private static double pearson(double[] x, double[] y) {
        double mx = Arrays.stream(x).average().orElse(0);
        double my = Arrays.stream(y).average().orElse(0);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
            yy += (y[i] - my) * (y[i] - my);
        }
        return xx == 0 || yy == 0 ? 0 : xy / Math.sqrt(xx * yy);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d draws of %s, %d failed; findings hold in these shares: %s",
                draws,
                names,
                failed,
                shares());
    }

    /** Builder of a study. */
    public static final class Builder {

        private final InstalledSystem system;
        private final List<Input> inputs = new ArrayList<>();
        private int draws = 200;
        private long seed = 1;

        private Builder(InstalledSystem system) {
            this.system = system;
        }

        /**
         * An uncertain input.
         *
         * @param name what it is
         * @param low lowest value
         * @param high highest value, above the lowest
         * @param change the change that a value makes; changes are made in the order given
         * @return this builder
         * @throws IllegalArgumentException if something is missing, the name is taken or the range
         *     is empty
         */
        public Builder input(
                String name,
                double low,
                double high,
                DoubleFunction<UnaryOperator<InstalledSystem>> change) {
            if (name == null || name.isBlank() || change == null) {
                throw new IllegalArgumentException("an uncertain input needs a name and a change");
            }
            if (inputs.stream().anyMatch(i -> i.name.equals(name))) {
                throw new IllegalArgumentException("input \"" + name + "\" is given twice");
            }
            Range.requireAbove("high end of " + name, high, low, "");
            inputs.add(new Input(name, low, high, change));
            return this;
        }

        /**
         * Number of draws; 200 if not said.
         *
         * @param count in [3, 100000]
         * @return this builder
         * @throws IllegalArgumentException if out of range
         */
        public Builder draws(int count) {
            Range.require("number of draws", count, 3, 100_000, "");
            draws = count;
            return this;
        }

        /**
         * Seed of the drawing; 1 if not said.
         *
         * @param value any number
         * @return this builder
         */
        public Builder seed(long value) {
            seed = value;
            return this;
        }

        /** Points of the Latin hypercube, by input and draw. */
        static double[][] hypercube(int inputs, int draws, long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            double[][] u = new double[inputs][draws];
            for (double[] column : u) {
                for (int i = 0; i < draws; i++) {
                    column[i] = (i + random.nextDouble()) / draws;
                }
                for (int i = draws - 1; i > 0; i--) {
                    int j = random.nextInt(i + 1);
                    double swap = column[i];
                    column[i] = column[j];
                    column[j] = swap;
                }
            }
            return u;
        }

        /**
         * Runs the design day and the findings for every draw, on all cores.
         *
         * @return the result
         * @throws IllegalArgumentException if there is no input, or a change refuses a value of its
         *     range, or a draw lies outside what the model is made for
         * @throws ArithmeticException if a search of the simulation fails in a draw
         */
        public Uncertainty run() {
            if (inputs.isEmpty()) {
                throw new IllegalArgumentException("an uncertain review needs at least one input");
            }
            double[][] u = hypercube(inputs.size(), draws, seed);
            Assessment[] found = new Assessment[draws];
            RuntimeException[] thrown = new RuntimeException[draws];
            IntStream.range(0, draws)
                    .parallel()
                    .forEach(
                            k -> {
                                InstalledSystem s = system;
                                try {
                                    for (int i = 0; i < u.length; i++) {
                                        Input in = inputs.get(i);
                                        s = in.change.apply(value(in, u[i][k])).apply(s);
                                    }
                                    Assessment a = new Assessment(s);
                                    found[k] = a.stopped == null ? a : null;
                                } catch (NoBalanceException | OutsideBlowerTableException stopped) {
                                    found[k] = null;
                                } catch (RuntimeException noDiagnosis) {
                                    thrown[k] = noDiagnosis;
                                }
                            });
            // The first draw's, whichever thread came first, and with its own words.
            for (RuntimeException e : thrown) {
                if (e != null) {
                    throw e;
                }
            }
            int failed = 0;
            for (Assessment a : found) {
                failed += a == null ? 1 : 0;
            }
            double[][] x = new double[u.length][draws - failed];
            double[][] y = new double[Outcome.values().length][draws - failed];
            Map<String, Integer> held = new TreeMap<>();
            int n = 0;
            for (int k = 0; k < draws; k++) {
                Assessment a = found[k];
                if (a == null) {
                    continue;
                }
                for (int i = 0; i < u.length; i++) {
                    x[i][n] = value(inputs.get(i), u[i][k]);
                }
                y[Outcome.AIRFLOW_PER_TON.ordinal()][n] =
                        Si.cubicMetresPerSecondPerWatt(a.system.standardAirflowPerTon(), "airflow");
                y[Outcome.MINIMUM_COIL_TEMPERATURE.ordinal()][n] =
                        a.day.clearCoil().record().minimumCoil();
                y[Outcome.MISS.ordinal()][n] = Assessment.miss(a.day);
                y[Outcome.STARTS.ordinal()][n] = a.day.starts();
                y[Outcome.ELECTRICITY.ordinal()][n] = a.day.record().totalElectricity();
                a.findings.stream()
                        .map(f -> f.getClass().getSimpleName())
                        .distinct()
                        .forEach(name -> held.merge(name, 1, Integer::sum));
                n++;
            }
            return new Uncertainty(
                    inputs.stream().map(Input::name).toList(), draws, failed, held, x, y);
        }

        private static double value(Input in, double u) {
            return in.low + u * (in.high - in.low);
        }
    }
}
