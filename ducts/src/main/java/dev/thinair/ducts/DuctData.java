package dev.thinair.ducts;

import dev.thinair.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;

/**
 * Published numbers of the duct trade that are looked up, not computed: limits, classes, charts and
 * measurements, each with its source and how this library knows it. Immutable.
 *
 * <p>Limits for velocity and noise are advice. Local code and the maker's instructions come first.
 */
public final class DuctData {

    /** What a number is about. */
    public enum Topic {
        /** Absolute roughness by category of surface. */
        ROUGHNESS,
        /** Leakage class C_L: cfm per 100 ft2 at one inch of water. */
        LEAKAGE_CLASS,
        /** Largest velocity in a main duct for a room criterion (RC). */
        MAIN_DUCT_VELOCITY,
        /** Factor on the main-duct velocity for branches and run-outs. */
        MAIN_DUCT_VELOCITY_FACTOR,
        /** Largest velocity through the free opening of registers for a noise criterion (NC). */
        REGISTER_VELOCITY,
        /** Recommended velocity in residential ducts. */
        RECOMMENDED_VELOCITY,
        /** Residential velocity limits. */
        VELOCITY_LIMIT,
        /** Trade chart: airflow of flexible duct by nominal diameter. */
        TRADE_AIRFLOW_FLEXIBLE,
        /** Trade chart: airflow of round metal pipe by nominal diameter. */
        TRADE_AIRFLOW_METAL,
        /** Airflow that a branch usually carries. */
        TYPICAL_BRANCH_AIRFLOW,
        /** External static pressure, rated and measured. */
        EXTERNAL_STATIC,
        /** Pressure drop of filters, assumed and measured. */
        FILTER_DROP,
        /** Loaded over clean pressure drop when a filter is changed. */
        FILTER_CHANGE_OUT,
        /** Measured delivery efficiency of duct systems. */
        DELIVERY_EFFICIENCY
    }

    /** How this library knows a number. */
    public enum Known {
        /** Seen in a public copy of the source. */
        SEEN,
        /** Recalled; not checked against the text. */
        FROM_MEMORY,
        /** A rule of the trade without a source to check. */
        COMMON_PRACTICE
    }

    /**
     * One published number.
     *
     * @param topic what it is about
     * @param item what it holds for, in words
     * @param value the number with its unit
     * @param source where it is published
     * @param known how this library knows it
     */
    public record Entry(Topic topic, String item, Quantity<?> value, String source, Known known) {

        @Override
        public String toString() {
            return item
                    + ": "
                    + value.getValue()
                    + " "
                    + value.getUnit()
                    + " ("
                    + source
                    + ", "
                    + known.name().toLowerCase(Locale.ROOT).replace('_', ' ')
                    + ")";
        }
    }

    private static final String ROUGHNESS_TABLE =
            "ASHRAE Handbook - Fundamentals 2021, chapter Duct Design, table of duct roughness"
                    + " factors";
    private static final String LEAKAGE_TABLE =
            "SMACNA HVAC Air Duct Leakage Test Manual, table 4-1";
    private static final String NOISE_TABLE =
            "ASHRAE Handbook - HVAC Applications 2015, chapter 48, table 8";
    private static final String REGISTER_TABLE =
            "recommended air velocities at registers and grilles, free opening, published table of"
                    + " architectural acoustics (gammaelectronics.xyz)";
    private static final String MANUAL_D = "ANSI/ACCA 1 Manual D, table 3-1";
    private static final String VELOCITY_PAGE = "trade page on air velocity (hvacrschool.com)";
    private static final String CHART_PAGE =
            "field duct sizing chart seen on a public trade page; for flexible duct it reads the"
                    + " metal chart at 0.05 in. per 100 ft, for metal at 0.06";
    private static final String FILTER_PAGE = "trade page on filters (energyvanguard.com)";
    private static final String JUMP = "Jump, Walker and Modera (1996), ACEEE Summer Study";

    private static final Set<String> EMPTY_WORDS =
            Set.of("a", "an", "and", "at", "for", "in", "of", "on", "or", "the");

    private static final List<Entry> ALL = fill();

    private DuctData() {}

    private static List<Entry> fill() {
        List<Entry> to = new ArrayList<>();
        roughness(to);
        leakage(to);
        noise(to);
        velocity(to);
        trade(to);
        field(to);
        return List.copyOf(to);
    }

    private static void roughness(List<Entry> to) {
        Object[][] rows = {
            {"smooth", 1.5e-6, Known.SEEN},
            {"medium smooth", 0.00015, Known.SEEN},
            {"galvanized", 0.0003, Known.SEEN},
            {"average", 0.0003, Known.SEEN},
            {"medium rough", 0.003, Known.SEEN},
            {"flexible, nonmetallic, extended", 0.003, Known.SEEN},
            {"rough", 0.01, Known.FROM_MEMORY}
        };
        for (Object[] row : rows) {
            add(
                    to,
                    Topic.ROUGHNESS,
                    (String) row[0],
                    Units.feet((Double) row[1]),
                    ROUGHNESS_TABLE,
                    (Known) row[2]);
        }
    }

    private static void leakage(List<Entry> to) {
        Object[][] rows = {
            {"rectangular metal, seal class C", 24},
            {"round metal, seal class C", 12},
            {"rectangular metal, unsealed", 48},
            {"flexible, unsealed", 30}
        };
        for (Object[] row : rows) {
            add(
                    to,
                    Topic.LEAKAGE_CLASS,
                    (String) row[0],
                    Units.ratio((Integer) row[1]),
                    LEAKAGE_TABLE,
                    Known.SEEN);
        }
    }

    private static void noise(List<Entry> to) {
        mainDuct(to, NoiseLimits.Location.SHAFT_OR_DRYWALL, "shaft or above drywall ceiling", 45);
        mainDuct(
                to, NoiseLimits.Location.SUSPENDED_CEILING, "above suspended acoustic ceiling", 45);
        mainDuct(to, NoiseLimits.Location.OCCUPIED_SPACE, "occupied space", 35);
        add(
                to,
                Topic.MAIN_DUCT_VELOCITY_FACTOR,
                "branch",
                Units.ratio(NoiseLimits.BRANCH_FACTOR),
                NOISE_TABLE + ", note 1",
                Known.SEEN);
        add(
                to,
                Topic.MAIN_DUCT_VELOCITY_FACTOR,
                "final run-out",
                Units.ratio(NoiseLimits.RUN_OUT_FACTOR),
                NOISE_TABLE + ", note 2 (at most)",
                Known.SEEN);
        for (int low : new int[] {20, 25, 35}) {
            String band = "NC " + low + "-" + (low + 5);
            add(
                    to,
                    Topic.REGISTER_VELOCITY,
                    "supply register, " + band,
                    NoiseLimits.register(low + 2.5, true),
                    REGISTER_TABLE,
                    Known.SEEN);
            add(
                    to,
                    Topic.REGISTER_VELOCITY,
                    "return grille, " + band,
                    NoiseLimits.register(low + 2.5, false),
                    REGISTER_TABLE,
                    Known.SEEN);
        }
    }

    private static void mainDuct(
            List<Entry> to, NoiseLimits.Location location, String words, int loudest) {
        for (int criterion : new int[] {loudest, 25}) {
            for (boolean round : new boolean[] {false, true}) {
                add(
                        to,
                        Topic.MAIN_DUCT_VELOCITY,
                        words + ", RC " + criterion + (round ? ", circular" : ", rectangular"),
                        NoiseLimits.mainDuct(location, criterion, round),
                        NOISE_TABLE,
                        Known.SEEN);
            }
        }
    }

    private static void velocity(List<Entry> to) {
        Object[][] recommended = {
            {"main duct, residential, low end", 700},
            {"main duct, residential, high end", 900},
            {"branch duct, residential, low end", 500},
            {"branch duct, residential, high end", 700}
        };
        for (Object[] row : recommended) {
            add(
                    to,
                    Topic.RECOMMENDED_VELOCITY,
                    (String) row[0],
                    Units.feetPerMinute((Integer) row[1]),
                    VELOCITY_PAGE,
                    Known.COMMON_PRACTICE);
        }
        Object[][] limits = {
            {"supply trunk, rigid, recommended", 700},
            {"supply trunk, rigid, maximum", 900},
            {"supply branch, rigid, recommended", 600},
            {"supply branch, rigid, maximum", 900},
            {"supply, flexible, maximum", 700},
            {"return trunk, recommended", 600},
            {"return trunk, maximum", 700},
            {"return branch, recommended", 400},
            {"filter grille face, maximum", 300}
        };
        for (Object[] row : limits) {
            add(
                    to,
                    Topic.VELOCITY_LIMIT,
                    (String) row[0],
                    Units.feetPerMinute((Integer) row[1]),
                    MANUAL_D,
                    Known.FROM_MEMORY);
        }
    }

    private static void trade(List<Entry> to) {
        int[][] flexible = {{5, 50}, {6, 75}, {7, 110}, {8, 160}};
        for (int[] row : flexible) {
            add(
                    to,
                    Topic.TRADE_AIRFLOW_FLEXIBLE,
                    row[0] + " in",
                    Units.cubicFeetPerMinute(row[1]),
                    CHART_PAGE,
                    Known.COMMON_PRACTICE);
        }
        int[][] metal = {{6, 85}, {7, 125}, {8, 180}};
        for (int[] row : metal) {
            add(
                    to,
                    Topic.TRADE_AIRFLOW_METAL,
                    row[0] + " in",
                    Units.cubicFeetPerMinute(row[1]),
                    CHART_PAGE,
                    Known.COMMON_PRACTICE);
        }
        add(
                to,
                Topic.TYPICAL_BRANCH_AIRFLOW,
                "6 in round metal",
                Units.cubicFeetPerMinute(105),
                "trade rule of 100 to 110 cfm: 0.09 to 0.10 in. per 100 ft",
                Known.COMMON_PRACTICE);
        add(
                to,
                Topic.TYPICAL_BRANCH_AIRFLOW,
                "6 in flexible",
                Units.cubicFeetPerMinute(80),
                "trade rule of 75 to 85 cfm",
                Known.COMMON_PRACTICE);
    }

    private static void field(List<Entry> to) {
        add(
                to,
                Topic.EXTERNAL_STATIC,
                "rated, residential",
                Units.inchesOfWater(0.5),
                FILTER_PAGE,
                Known.SEEN);
        add(
                to,
                Topic.EXTERNAL_STATIC,
                "measured, mean",
                Units.inchesOfWater(0.82),
                "field tests of a contractors' institute, quoted on a " + FILTER_PAGE,
                Known.SEEN);
        add(
                to,
                Topic.FILTER_DROP,
                "allowance in the trade method",
                Units.inchesOfWater(0.10),
                "assumption of ANSI/ACCA 1 Manual D, quoted on a " + FILTER_PAGE,
                Known.SEEN);
        add(
                to,
                Topic.FILTER_DROP,
                "measured, mean, 34 systems",
                Units.inchesOfWater(0.28),
                "Proctor (2012), ASHRAE Journal, October, as summarised on a " + FILTER_PAGE,
                Known.SEEN);
        add(
                to,
                Topic.FILTER_DROP,
                "20x20x2 MERV 13 pleated, 144 fpm",
                Units.inchesOfWater(0.0274),
                "measurement quoted on a " + FILTER_PAGE,
                Known.SEEN);
        add(
                to,
                Topic.FILTER_CHANGE_OUT,
                "residential pleated",
                Units.ratio(2),
                "changed when the drop has doubled",
                Known.COMMON_PRACTICE);
        add(
                to,
                Topic.DELIVERY_EFFICIENCY,
                "24 houses, mean, before retrofit",
                Units.percent(64),
                JUMP,
                Known.SEEN);
        add(
                to,
                Topic.DELIVERY_EFFICIENCY,
                "24 houses, mean, after retrofit",
                Units.percent(76),
                JUMP,
                Known.SEEN);
    }

    private static void add(
            List<Entry> to,
            Topic topic,
            String item,
            Quantity<?> value,
            String source,
            Known known) {
        to.add(new Entry(topic, item, value, source, known));
    }

    /**
     * Every number.
     *
     * @return entries by topic
     */
    public static List<Entry> all() {
        return ALL;
    }

    /**
     * The numbers on one topic.
     *
     * @param topic the topic
     * @return its entries
     */
    public static List<Entry> of(Topic topic) {
        return ALL.stream().filter(e -> e.topic() == topic).toList();
    }

    /**
     * The number for something described in words.
     *
     * <p>An entry fits if all its words are among those given, in any order and case. The one with
     * most words wins: "medium smooth" before "smooth".
     *
     * @param topic the topic
     * @param words description; more words than the entry has do no harm
     * @return the entry that fits best
     * @throws IllegalArgumentException if the topic or the words are missing, none fits, or two
     *     with different values fit equally well; the message lists the items known
     */
    public static Entry find(Topic topic, String words) {
        if (topic == null || words == null) {
            throw new IllegalArgumentException("a topic and words are needed");
        }
        Set<String> asked = words(words);
        Entry best = null;
        int most = 0;
        boolean tie = false;
        for (Entry entry : of(topic)) {
            Set<String> own = words(entry.item());
            if (!asked.containsAll(own) || own.size() < most) {
                continue;
            }
            tie = own.size() == most && !entry.value().equals(best.value());
            best = entry;
            most = own.size();
        }
        if (best == null || tie) {
            throw new IllegalArgumentException(
                    "\""
                            + words
                            + "\" "
                            + (tie ? "fits more than one entry" : "fits no entry")
                            + " of "
                            + topic
                            + "; known are "
                            + of(topic).stream().map(Entry::item).toList());
        }
        return best;
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+")) {
            if (!word.isEmpty() && !EMPTY_WORDS.contains(word)) {
                words.add(word);
            }
        }
        return words;
    }
}
