package dev.thinair.reference;

import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assemblies;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.DesignLoad;
import dev.thinair.loads.House;
import dev.thinair.loads.Room;
import dev.thinair.loads.Schedule;
import dev.thinair.loads.Setpoint;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.kernel.HourlyInterpolation;
import dev.thinair.loads.kernel.HouseModel;
import dev.thinair.loads.kernel.HouseResponse;
import dev.thinair.loads.kernel.RadiantTimeSeries;
import dev.thinair.reference.LoadInputs.Layers;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules for what a room makes of its gains: time series, exact zones, peaks. */
final class LoadRoomCases {

    private static final Pattern HOURS = Pattern.compile("([0-9.]+) (\\S+) hours (\\d+)-(\\d+)");
    private static final Pattern CONDUCTION_FACTORS =
            Pattern.compile("CTS[^;(]*\\(([0-9./]+) percent\\)");

    private LoadRoomCases() {}

    static void register(CaseEvaluator to) {
        timeSeries(to);
        zones(to);
        peaks(to);
    }

    private static void timeSeries(CaseEvaluator to) {
        value(
                to,
                in -> conduction(in)[LoadInputs.hour(in)],
                "wall conductive heat gain by conduction time series");
        to.onEach(
                "wall cooling load radiant fraction ([0-9.]+) nonsolar rts.*",
                (in, w) -> Answer.si(load(in, conduction(in), Double.parseDouble(w.group(1)), "")));
        value(
                to,
                in -> load(in, constant(in), in.si("radiant fraction"), ""),
                "lighting cooling load by RTS");
        value(
                to,
                in -> load(in, LoadInputs.day(in, "beam gain"), 1, "solar "),
                "beam solar cooling load by solar RTS");
        value(
                to,
                in -> load(in, LoadInputs.day(in, "gain"), in.si("radiant fraction"), ""),
                "diffuse + conduction window cooling load by nonsolar RTS");
        to.onEach(
                "window cooling load total.*",
                (in, w) -> {
                    throw new CaseEvaluator.NotOffered(
                            "proves nothing: the case gives both summands, and no series to find"
                                    + " them from");
                });
    }

    private static double[] conduction(CaseInputs in) {
        Matcher factors = CONDUCTION_FACTORS.matcher(in.raw());
        if (!factors.find()) {
            throw new IllegalArgumentException("input \"CTS (... percent)\" is missing");
        }
        double[] gain = new double[24];
        RadiantTimeSeries.conductionGain(
                in.si("U"),
                in.si("A"),
                LoadInputs.day(in, "sol-air series"),
                in.si("t_room"),
                LoadInputs.factors(factors.group(1)),
                gain);
        return gain;
    }

    /** A gain that is on from one hour to another, both included. */
    private static double[] constant(CaseInputs in) {
        Matcher m = HOURS.matcher(in.text("gain"));
        if (!m.matches()) {
            throw new IllegalArgumentException("input \"gain\" is not \"110 W hours 7-18\"");
        }
        double[] gain = new double[24];
        double value = CaseUnit.of(m.group(2)).toSi(Double.parseDouble(m.group(1)));
        for (int h = Integer.parseInt(m.group(3)); h <= Integer.parseInt(m.group(4)); h++) {
            gain[h % 24] = value;
        }
        return gain;
    }

    /** The nonsolar series of medium construction, carpet and half glass where none is given. */
    private static double load(CaseInputs in, double[] gain, double radiant, String kind) {
        double[] load = new double[24];
        RadiantTimeSeries.coolingLoad(
                gain,
                radiant,
                LoadInputs.factors(
                        in.text(kind + "RTS percent", "49/17/9/5/3/2/2 then 1 x13 then 0 x4")),
                load);
        return load[LoadInputs.hour(in)];
    }

    /**
     * A room told in words: {@code floor 20 m2 concrete 0.1016 m, ceiling 20 m2 + walls 35 m2
     * gypsum}, an outer wall by its coded layers, a carpet, films and materials.
     */
    private record Zone(HouseModel model, int outerWall) {

        private static final String NUMBER = "([0-9.]+)";
        private static final Pattern NAME = Pattern.compile("zone (\\w+): *(.*)");
        private static final Pattern ALL_OF = Pattern.compile("all (\\w+): ([0-9.+]+) m2");
        private static final Pattern PART =
                Pattern.compile(
                        "(?<!outer )(floor|ceiling|walls|wall) "
                                + NUMBER
                                + " m2(?: (\\w+) "
                                + NUMBER
                                + " m\\b)?");
        private static final Pattern OUTER =
                Pattern.compile(
                        "(?:outer wall "
                                + NUMBER
                                + " m2|with "
                                + NUMBER
                                + " m2 of the walls replaced by wall) (\\S+)");
        private static final Pattern CARPET = Pattern.compile("carpet R=" + NUMBER);
        private static final Pattern FILMS =
                Pattern.compile("hc=" + NUMBER + "(?:,| and) hr=" + NUMBER);
        private static final Pattern GYPSUM =
                Pattern.compile("gypsum " + NUMBER + "/" + NUMBER + "/" + NUMBER + "/" + NUMBER);
        private static final Pattern CONCRETE =
                Pattern.compile("concrete k=" + NUMBER + " rho=" + NUMBER + " c=" + NUMBER);
        // Zone B of the case file, which its other zones refer to.
        private static final String ZONE_B =
                "floor 20 m2 concrete 0.1016 m, ceiling 20 m2 and walls 45 m2 gypsum";

        static Zone of(CaseInputs in) {
            String raw = in.raw();
            String words = found(NAME, raw).group(2).replace("as B", ZONE_B);
            Matcher films = found(FILMS, raw);
            double hc = number(films, 1);
            double hr = number(films, 2);
            // 12.7 mm gypsum 0.16/800/1090 and concrete 1.95/2240/900 unless the case says else.
            double[] gypsum = properties(GYPSUM, raw, 0.0127, 0.16, 800, 1090);
            double[] concrete = properties(CONCRETE, raw, 1.95, 2240, 900);
            double[] gypsumR = {gypsum[0] / gypsum[1]};
            double[] gypsumC = {gypsum[0] * gypsum[2] * gypsum[3]};
            HouseModel.Builder house = new HouseModel.Builder();
            int room = house.zone(true, 0, 0);
            Matcher all = ALL_OF.matcher(words);
            if (all.find()) {
                for (String area : all.group(2).split("\\+")) {
                    inner(house, room, Double.parseDouble(area), gypsumR, gypsumC, hc, hr);
                }
                return new Zone(house.build(), -1);
            }
            Matcher carpet = CARPET.matcher(words);
            boolean carpeted = carpet.find();
            Matcher outer = OUTER.matcher(words);
            boolean open = outer.find();
            double replaced = open && outer.group(2) != null ? number(outer, 2) : 0;
            Matcher part = PART.matcher(words);
            while (part.find()) {
                double area = number(part, 2);
                double[] r = gypsumR;
                double[] c = gypsumC;
                if (part.group(3) != null) {
                    double thickness = number(part, 4);
                    r = new double[] {thickness / concrete[0]};
                    c = new double[] {thickness * concrete[1] * concrete[2]};
                }
                if (part.group(1).equals("floor") && carpeted) {
                    r = new double[] {number(carpet, 1), r[0]};
                    c = new double[] {0, c[0]};
                }
                if (part.group(1).startsWith("wall")) {
                    area -= replaced;
                }
                inner(house, room, area, r, c, hc, hr);
            }
            int wall = -1;
            if (open) {
                Layers layers = LoadInputs.coded(outer.group(3));
                wall =
                        house.wall(
                                room,
                                HouseModel.BOUNDARY,
                                outer.group(1) == null ? replaced : number(outer, 1),
                                layers.r(),
                                layers.c(),
                                hc,
                                hr,
                                0,
                                0,
                                false);
            }
            return new Zone(house.build(), wall);
        }

        private static void inner(
                HouseModel.Builder house,
                int room,
                double area,
                double[] r,
                double[] c,
                double hc,
                double hr) {
            house.wall(room, HouseModel.ADIABATIC, area, r, c, hc, hr, 0, 0, false);
        }

        private static Matcher found(Pattern pattern, String text) {
            Matcher m = pattern.matcher(text);
            if (!m.find()) {
                throw new IllegalArgumentException("input \"" + text + "\" tells no such room");
            }
            return m;
        }

        private static double number(Matcher m, int group) {
            return Double.parseDouble(m.group(group));
        }

        private static double[] properties(Pattern pattern, String text, double... otherwise) {
            Matcher m = pattern.matcher(text);
            if (!m.find()) {
                return otherwise;
            }
            double[] values = new double[otherwise.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = number(m, i + 1);
            }
            return values;
        }

        double[] timeFactors() {
            // Enough folded cycles that the rest is far below the cases' fourth digit.
            return HouseResponse.solve(model, 125).radiantTimeFactors(0);
        }
    }

    private static void zones(CaseEvaluator to) {
        to.onEach(
                "exact radiant time factor r([0-9]+)(?: zone .*)?",
                (in, w) -> Answer.si(Zone.of(in).timeFactors()[Integer.parseInt(w.group(1))]));
        to.onEach(
                "sum of 24 exact radiant time factors(?: zone .*)?",
                (in, w) -> Answer.si(Arrays.stream(Zone.of(in).timeFactors()).sum()));
        to.onEach(
                "room sensible load by harmonic heat balance hour ([0-9]+)",
                (in, w) -> Answer.si(harmonicLoad(in)[Integer.parseInt(w.group(1)) % 24]));
        to.onEach(
                "24 h mean room load.*",
                (in, w) -> Answer.si(Arrays.stream(harmonicLoad(in)).average().orElseThrow()));
    }

    private static final Pattern LIGHTS =
            Pattern.compile("lighting ([0-9.]+) W h(\\d+)-h(\\d+), ([0-9.]+) percent radiant");

    /** Twelve plain harmonics of the hourly samples; the convective part of the lights at once. */
    private static double[] harmonicLoad(CaseInputs in) {
        Zone zone = Zone.of(in);
        HouseResponse response = HouseResponse.solve(zone.model(), HouseResponse.PLAIN);
        Matcher lights = Zone.found(LIGHTS, in.raw());
        double watts = Double.parseDouble(lights.group(1));
        double radiant = Double.parseDouble(lights.group(4)) / 100;
        double[] outside = LoadInputs.day(in, "sol-air series");
        double room = in.si("t_air");
        double[] gain = new double[24];
        double[] load = new double[24];
        for (int h = 0; h < 24; h++) {
            outside[h] -= room;
        }
        for (int h = Integer.parseInt(lights.group(2));
                h <= Integer.parseInt(lights.group(3));
                h++) {
            gain[h % 24] = radiant * watts;
            load[h % 24] = (1 - radiant) * watts;
        }
        double[] spectrum = new double[2 * (HourlyInterpolation.HARMONICS + 1)];
        double[] sum = new double[spectrum.length];
        HourlyInterpolation.analyse(outside, 0, spectrum, 0);
        response.addAnswer(response.wallDrive(zone.outerWall()), 0, spectrum, 0, sum, 0);
        HourlyInterpolation.analyse(gain, 0, spectrum, 0);
        response.addAnswer(response.radiantDrive(0), 0, spectrum, 0, sum, 0);
        HourlyInterpolation.addSynthesis(sum, 0, load, 0);
        return load;
    }

    private static void peaks(CaseEvaluator to) {
        value(to, in -> Si.watts(twoRooms(in).peak(), "block peak"), "block peak of two rooms");
        value(
                to,
                in -> Si.watts(twoRooms(in).sumOfRoomPeaks(), "sum of room peaks"),
                "sum of room peaks");
    }

    /** Two closed rooms on a day without sun or difference, loaded by convective gains alone. */
    private static DesignLoad twoRooms(CaseInputs in) {
        double[] a = LoadInputs.day(in, "room A");
        double[] b;
        if (in.text("room B", "").startsWith("A reversed in time")) {
            b = new double[24];
            for (int h = 1; h <= 24; h++) {
                b[h % 24] = a[(25 - h) % 24];
            }
        } else {
            b = LoadInputs.day(in, "room B");
        }
        Site site =
                Site.of(
                        "anywhere",
                        Units.degrees(40),
                        Units.degrees(0),
                        ZoneOffset.UTC,
                        Units.metres(0));
        CoolingDesignDay day =
                CoolingDesignDay.at(site)
                        .date(LocalDate.of(2026, 7, 21))
                        .dryBulbs(Collections.nCopies(24, Units.celsius(24)))
                        .wetBulb(Units.celsius(12))
                        .withoutSun()
                        .build();
        return House.named("two rooms")
                .room(room("A", a))
                .room(room("B", b))
                .build()
                .compile(site)
                .coolingLoad(day, Setpoint.of(Units.celsius(24)));
    }

    private static Room room(String name, double[] watts) {
        double most = Arrays.stream(watts).max().orElseThrow();
        double[] shares = new double[24];
        for (int h = 0; h < 24; h++) {
            shares[h] = watts[h] / most;
        }
        return Room.named(name)
                .floorArea(Units.squareMetres(20))
                .height(Units.metres(2.5))
                .surface(
                        Surface.floor("floor", Assemblies.slab())
                                .area(Units.squareMetres(20))
                                .adiabatic())
                .gain(new Appliances("gain", most, 0, 0, Schedule.of(shares)))
                .build();
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }
}
