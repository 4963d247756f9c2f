package dev.thinair.reference;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A unit as case files write it, reduced to {@code SI = value * scale + offset}.
 *
 * <p>The factors are typed here once more, apart from {@code dev.thinair.units}, so that a slip
 * there cannot hide itself in a check. Exact by definition unless noted: NIST Special Publication
 * 811 (2008), appendix B.
 */
record CaseUnit(double scale, double offset) {

    private static final Map<String, Double> SYMBOLS = new HashMap<>();
    private static final Map<String, String> SPELLED = new HashMap<>();

    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double BTU = 1055.05585262; // International Table
    private static final double FAHRENHEIT = 5.0 / 9.0;
    private static final double GRAVITY = 9.80665;
    private static final double PSI = POUND * GRAVITY / (INCH * INCH);
    private static final double CFM = FOOT * FOOT * FOOT / 60;

    static {
        put("1", 1);
        put("-", 1);
        put("percent", 0.01);
        put("%", 0.01);
        put("m", 1);
        put("mm", 1e-3);
        put("cm", 1e-2);
        put("km", 1e3);
        put("ft", FOOT);
        put("in", INCH);
        put("m2", 1);
        put("cm2", 1e-4);
        put("ft2", FOOT * FOOT);
        put("in2", INCH * INCH);
        put("m3", 1);
        put("ft3", FOOT * FOOT * FOOT);
        put("L", 1e-3);
        put("kg", 1);
        put("kg_da", 1);
        put("g", 1e-3);
        put("lb", POUND);
        put("lb_da", POUND);
        put("gr", POUND / 7000);
        put("s", 1);
        put("s2", 1);
        put("min", 60);
        put("h", 3600);
        put("d", 86_400);
        put("K", 1);
        put("degC", 1);
        put("C", 1);
        put("degF", FAHRENHEIT);
        put("F", FAHRENHEIT);
        put("degR", FAHRENHEIT);
        put("Pa", 1);
        put("hPa", 100);
        put("kPa", 1000);
        put("psi", PSI);
        put("lbf", POUND * GRAVITY);
        put("in_wg", 249.08891); // conventional, SP 811
        put("inH2O_conventional", 249.08891);
        put("inH2O_60F", 248.84); // inch of water at 60 degF, SP 811
        put("inHg", 3386.389); // conventional, 32 degF, SP 811
        put("W", 1);
        put("kW", 1000);
        put("hp", 745.6998715822702); // 550 ft lbf/s
        put("J", 1);
        put("kJ", 1000);
        put("MJ", 1e6);
        put("Wh", 3600);
        put("kWh", 3.6e6);
        put("Btu", BTU);
        put("ton", 12_000 * BTU / 3600);
        put("cfm", CFM);
        put("scfm", CFM);
        put("fpm", FOOT / 60);
        put("mph", 1609.344 / 3600);
        put("deg", Math.PI / 180);
        put("rad", 1);
        put("rpm", 2 * Math.PI / 60);
        put("person", 1);
        put("persons", 1);
        put("homes", 1);
        put("systems", 1);
        put("currency", 1);

        SPELLED.put("W/(m2K)", "W/(m2 K)");
        SPELLED.put("W/m2K", "W/(m2 K)");
        SPELLED.put("m2K/W", "m2 K/W");
        SPELLED.put("W/mK", "W/(m K)");
        SPELLED.put("W/(mK)", "W/(m K)");
        SPELLED.put("J/(m2K)", "J/(m2 K)");
        SPELLED.put("J/kgK", "J/(kg K)");
        SPELLED.put("Pa.s", "Pa s");
        SPELLED.put("Btu/h.ft2.F", "Btu/(h ft2 degF)");
        SPELLED.put("in_wg/100ft", "0.01 in_wg/ft");
        SPELLED.put("cfm/100ft2", "0.01 cfm/ft2");
        SPELLED.put("in_wg/cfm2", "in_wg/(cfm cfm)");
        SPELLED.put("Pa/(m/s)", "Pa s/m");
        SPELLED.put("Pa/(m/s)2", "Pa s s/(m m)");
        SPELLED.put("Pa/(m3/s)2", "Pa s s/(m3 m3)");
        SPELLED.put("(L/s)2/(cm4 K)", "L L/(s s cm2 cm2 K)");
        SPELLED.put("(L/s)2/(cm4 (m/s)2)", "L L/(cm2 cm2 m m)");
        SPELLED.put("cfm2/(in4 F)", "cfm cfm/(in2 in2 F)");
        SPELLED.put("cfm2/(in4 mph2)", "cfm cfm/(in2 in2 mph mph)");
        SPELLED.put("W/(L/s K)", "W s/(L K)");
        SPELLED.put("Btu/h sensible", "Btu/h");
    }

    private static void put(String symbol, double scale) {
        SYMBOLS.put(symbol, scale);
    }

    /** The symbols that products and quotients may be made of, sorted. */
    static Set<String> known() {
        return new TreeSet<>(SYMBOLS.keySet());
    }

    /** Reads a unit; what follows a bracket, an arrow, an origin or "constant" is a remark. */
    static CaseUnit of(String text) {
        String unit = withoutRemark(text);
        if (unit.isEmpty()) {
            return new CaseUnit(1, 0);
        }
        switch (unit) {
            case "degC", "C":
                return new CaseUnit(1, 273.15);
            case "degF", "F":
                return new CaseUnit(FAHRENHEIT, 459.67 * FAHRENHEIT);
            case "psig":
                return new CaseUnit(PSI, 101_325);
            default:
                return difference(unit);
        }
    }

    /** Reads a unit as one of differences: a degree is a size, not a place on a scale. */
    static CaseUnit difference(String text) {
        String unit = withoutRemark(text);
        String spelled = SPELLED.getOrDefault(unit, unit);
        return new CaseUnit(new Parser(spelled).product(), 0);
    }

    private static String withoutRemark(String text) {
        String unit = text.strip();
        return SPELLED.containsKey(unit)
                ? unit
                : unit.replaceFirst("(?:^|\\s+)(?:\\(|->|constant|from (?:south|north)).*$", "");
    }

    double toSi(double value) {
        return value * scale + offset;
    }

    double fromSi(double si) {
        return (si - offset) / scale;
    }

    /** Products by spaces, one level of brackets; everything after a slash divides. */
    private static final class Parser {
        private final String text;
        private int at;

        Parser(String text) {
            this.text = text;
        }

        double product() {
            double value = 1;
            boolean divide = false;
            while (at < text.length() && text.charAt(at) != ')') {
                char c = text.charAt(at);
                if (c == ' ') {
                    at++;
                } else if (c == '/') {
                    divide = true;
                    at++;
                } else if (c == '(') {
                    at++;
                    double inner = product();
                    at++;
                    value = divide ? value / inner : value * inner;
                } else {
                    int end = at;
                    while (end < text.length() && " /()".indexOf(text.charAt(end)) < 0) {
                        end++;
                    }
                    double one = symbol(text.substring(at, end));
                    value = divide ? value / one : value * one;
                    at = end;
                }
            }
            return value;
        }

        private double symbol(String name) {
            Double known = SYMBOLS.get(name);
            if (known != null) {
                return known;
            }
            try {
                return Double.parseDouble(name);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "unit \"%s\" is not known", text), e);
            }
        }
    }
}
