package dev.thinair.reference;

import dev.thinair.loads.kernel.Sun;
import dev.thinair.reference.CaseEvaluator.NotOffered;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the inputs of load cases hold beyond single numbers: angles, lists, days, layers. */
final class LoadInputs {

    private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";
    private static final Pattern LIST =
            Pattern.compile("\\s*(" + NUMBER + "(?:/" + NUMBER + ")*)\\s*(.*)");
    private static final Pattern RUN = Pattern.compile("(" + NUMBER + ") x\\s*(\\d+)");
    private static final Pattern DAY_NAME =
            Pattern.compile("(.+?) h(\\d+)(?:\\.\\.|-)h(\\d+)(?: (\\S+))?");
    private static final Pattern POWER_UNIT = Pattern.compile("(\\w+)\\^n");
    private static final Pattern POWER_OF = Pattern.compile("\\((.*)\\)\\^n");
    private static final Pattern LAYER = Pattern.compile("\\w+\\(([^()]*)\\)");
    private static final Pattern LEGEND = Pattern.compile("\\((d \\S+,.*)\\)");
    private static final Pattern SOLID =
            Pattern.compile(
                    "d=("
                            + NUMBER
                            + ") (.*?)\\s+k=("
                            + NUMBER
                            + ") (.*?)\\s+rho=("
                            + NUMBER
                            + ") (.*?)\\s+c=("
                            + NUMBER
                            + ") (.*)");
    private static final Pattern SLASHED =
            Pattern.compile("\\s(" + NUMBER + "(?:/" + NUMBER + "){3})(?:\\s|$)");
    private static final Pattern MASSLESS =
            Pattern.compile("(?:R_si|R_se|.*\\bR)=(" + NUMBER + ")\\s*(.*)");

    private LoadInputs() {}

    /** Layers from inside to outside: resistance and areal heat capacity of each. */
    record Layers(double[] r, double[] c) {
        private static Layers of(List<double[]> pairs) {
            double[] r = new double[pairs.size()];
            double[] c = new double[pairs.size()];
            for (int i = 0; i < r.length; i++) {
                r[i] = pairs.get(i)[0];
                c[i] = pairs.get(i)[1];
            }
            return new Layers(r, c);
        }
    }

    /** An azimuth in radians from north, clockwise, whichever origin the case counts from. */
    static double azimuth(CaseInputs in, String name) {
        double angle = in.si(name);
        return in.text(name).contains("from south") ? Sun.fromSouth(angle) : angle;
    }

    /** Numbers parted by slashes, with one unit behind them; temperatures on their own scale. */
    static double[] list(CaseInputs in, String name) {
        return list(in.text(name), null);
    }

    private static double[] list(String text, String unit) {
        Matcher m = LIST.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("input \"" + text + "\" is not a list of numbers");
        }
        CaseUnit scale = CaseUnit.of(unit == null ? m.group(2) : unit);
        return Arrays.stream(m.group(1).split("/"))
                .mapToDouble(Double::parseDouble)
                .map(scale::toSi)
                .toArray();
    }

    /**
     * A day by clock hour, hour 24 at 0, from an input like {@code gain h1..h24 W=...}; hours that
     * the name leaves out are zero.
     */
    static double[] day(CaseInputs in, String prefix) {
        for (String name : in.names()) {
            Matcher m = DAY_NAME.matcher(name);
            if (m.matches() && m.group(1).equals(prefix)) {
                int from = Integer.parseInt(m.group(2));
                int to = Integer.parseInt(m.group(3));
                String text = in.text(name).replaceFirst("\\s+else 0$", "");
                double[] values = list(text, m.group(4));
                if (values.length != to - from + 1) {
                    throw new IllegalArgumentException(
                            "input \"" + name + "\" has " + values.length + " values");
                }
                double[] day = new double[24];
                for (int i = 0; i < values.length; i++) {
                    day[(from + i) % 24] = values[i];
                }
                return day;
            }
        }
        throw new IllegalArgumentException("input \"" + prefix + " h1..h24\" is missing");
    }

    /** The clock hour of a case, hour 24 as 0. */
    static int hour(CaseInputs in) {
        return (int) Math.round(in.number("hour")) % 24;
    }

    /** Time factors in percent, {@code 49/17 then 1 x13 then 0 x4}, as 24 shares. */
    static double[] factors(String text) {
        String[] parts = text.strip().split("\\s+then\\s+");
        List<Double> shares = new ArrayList<>();
        for (double v : list(parts[0], "percent")) {
            shares.add(v);
        }
        for (int i = 1; i < parts.length; i++) {
            Matcher run = RUN.matcher(parts[i]);
            if (!run.matches()) {
                throw new IllegalArgumentException("input \"" + text + "\" is not a time series");
            }
            shares.addAll(
                    Collections.nCopies(
                            Integer.parseInt(run.group(2)),
                            Double.parseDouble(run.group(1)) / 100));
        }
        if (shares.size() > 24) {
            throw new IllegalArgumentException("input \"" + text + "\" has more than 24 factors");
        }
        double[] factors = new double[24];
        for (int i = 0; i < shares.size(); i++) {
            factors[i] = shares.get(i);
        }
        return factors;
    }

    /** A flow coefficient in m3/(s Pa^n), from a unit that may name another pressure to the n. */
    static double flowCoefficient(CaseInputs in, String name, double exponent) {
        String unit = in.unit(name);
        double value = in.number(name);
        Matcher power = POWER_UNIT.matcher(unit);
        if (!power.find()) {
            throw new IllegalArgumentException(
                    "unit \"" + unit + "\" of a flow coefficient names no pressure to the n");
        }
        double pressure = CaseUnit.of(power.group(1)).toSi(1);
        double flow = CaseUnit.of(power.replaceAll("1")).toSi(value);
        return flow / Math.pow(pressure, exponent);
    }

    /** A coefficient of pressure to the n, {@code 0.05 (in_wg/F)^n}; without a unit it is SI. */
    static double toThePower(CaseInputs in, String name, double exponent) {
        String unit = in.unit(name);
        if (unit.isEmpty()) {
            return in.number(name);
        }
        Matcher m = POWER_OF.matcher(unit);
        if (!m.matches()) {
            throw new IllegalArgumentException("unit \"" + unit + "\" is not \"(Pa/K)^n\"");
        }
        return in.number(name) * Math.pow(CaseUnit.difference(m.group(1)).toSi(1), exponent);
    }

    /** A number whose unit a case may leave out where its source's table has only one. */
    static double inTableUnit(CaseInputs in, String name, double tableUnit) {
        return in.unit(name).isEmpty() ? in.number(name) * tableUnit : in.si(name);
    }

    /** The air factor of the residential method; a case that brings another is refused. */
    static void requireAirFactor(CaseInputs in) {
        String factor = in.text("C_s", "1.23");
        if (!factor.startsWith("1.23") && !factor.startsWith("1.1 Btu/(h cfm F)")) {
            throw new NotOffered("not offered: the method's air factor is 1.23, not " + factor);
        }
    }

    /**
     * Layers as the handbook's Table 18 codes them, {@code F07(d0.0254,k0.72,rho1856,c840)} or
     * {@code F04(R0.15)}, outdoors to indoors, parted by {@code >}; a legend in brackets behind
     * them names the units, without one they are SI.
     */
    static Layers coded(String text) {
        Map<String, CaseUnit> units = new HashMap<>();
        for (String symbol : List.of("d", "k", "rho", "c", "R")) {
            units.put(symbol, CaseUnit.of("1"));
        }
        Matcher legend = LEGEND.matcher(text);
        if (legend.find()) {
            for (String entry : legend.group(1).split(",\\s*")) {
                String[] symbol = entry.split(" ", 2);
                units.put(symbol[0], CaseUnit.difference(symbol[1]));
            }
        }
        List<double[]> pairs = new ArrayList<>();
        Matcher layer = LAYER.matcher(legend.reset().replaceAll(""));
        while (layer.find()) {
            Map<String, Double> values = new HashMap<>();
            for (String entry : layer.group(1).split(",")) {
                Matcher m = Pattern.compile("(rho|[dkcR])(" + NUMBER + ")").matcher(entry.strip());
                if (!m.matches()) {
                    throw new IllegalArgumentException("input \"" + entry + "\" is no layer value");
                }
                String symbol = m.group(1);
                values.put(symbol, units.get(symbol).toSi(Double.parseDouble(m.group(2))));
            }
            double thickness = values.getOrDefault("d", 0.0);
            // Where the table prints a resistance it goes before the rounded conductivity.
            double resistance =
                    values.containsKey("R") ? values.get("R") : thickness / values.get("k");
            pairs.add(
                    new double[] {
                        resistance,
                        thickness * values.getOrDefault("rho", 0.0) * values.getOrDefault("c", 0.0)
                    });
        }
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("input \"" + text + "\" holds no layers");
        }
        Collections.reverse(pairs);
        return Layers.of(pairs);
    }

    /** Layers between {@code R_si} and {@code R_se}, one an input, inside to outside or back. */
    static Layers listed(CaseInputs in) {
        List<double[]> pairs = new ArrayList<>();
        boolean fromOutside = false;
        for (String raw : in.raw().split(";")) {
            String part = raw.strip();
            if (part.startsWith("inside to outside:")) {
                part = part.substring(part.indexOf(':') + 1).strip();
            }
            if (part.startsWith("period")) {
                continue;
            }
            Matcher m = SOLID.matcher(part);
            if (m.find()) {
                double[] v = new double[4];
                for (int i = 0; i < 4; i++) {
                    v[i] =
                            CaseUnit.difference(m.group(2 * i + 2))
                                    .toSi(Double.parseDouble(m.group(2 * i + 1)));
                }
                pairs.add(new double[] {v[0] / v[1], v[0] * v[2] * v[3]});
                continue;
            }
            m = SLASHED.matcher(part);
            if (m.find()) {
                double[] v = list(m.group(1), "1");
                pairs.add(new double[] {v[0] / v[1], v[0] * v[2] * v[3]});
                continue;
            }
            m = MASSLESS.matcher(part);
            if (!m.matches()) {
                throw new IllegalArgumentException("input \"" + part + "\" is no layer");
            }
            fromOutside |= pairs.isEmpty() && part.startsWith("R_se");
            pairs.add(
                    new double[] {
                        CaseUnit.difference(m.group(2)).toSi(Double.parseDouble(m.group(1))), 0
                    });
        }
        if (fromOutside) {
            Collections.reverse(pairs);
        }
        return Layers.of(pairs);
    }
}
