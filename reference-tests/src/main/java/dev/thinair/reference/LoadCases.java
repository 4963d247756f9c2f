package dev.thinair.reference;

import dev.thinair.loads.kernel.DailyProfile;
import dev.thinair.loads.kernel.DesignConditions;
import dev.thinair.loads.kernel.DesignDays;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules for heat gain and loss; those for design conditions stand here. */
final class LoadCases {

    private static final DailyProfile PROFILE = DailyProfile.FUNDAMENTALS_2009_TO_2021;
    private static final Pattern SOLAR_TIME = Pattern.compile("(-?[0-9.]+) h.*");

    private LoadCases() {}

    static void register(CaseEvaluator to) {
        LoadSunCases.register(to);
        LoadAssemblyCases.register(to);
        LoadWindowCases.register(to);
        LoadAirCases.register(to);
        LoadRoomCases.register(to);
        design(to);
    }

    private static void design(CaseEvaluator to) {
        value(
                to,
                in ->
                        PROFILE.dryBulb(
                                in.si("design db"),
                                in.difference("daily range"),
                                LoadInputs.hour(in)),
                "hourly design dry-bulb temperature");
        value(to, in -> PROFILE.fraction(LoadInputs.hour(in)), "fraction of daily range");
        to.onEach("mean of the 24 fractions(?: .*)?", (in, w) -> Answer.si(PROFILE.meanFraction()));
        to.onEach(
                "hour-[0-9]+ daylight-saving design db with solar-time profile",
                (in, w) ->
                        Answer.si(
                                in.si("design db")
                                        - in.difference("range")
                                                * PROFILE.fractionAtSolarTime(solarTime(in))));
        value(
                to,
                in -> 3_600 * DesignDays.hoursBeyond(in.number("percentile") / 100),
                "hours per average year beyond the design percentile");
        value(to, in -> DesignConditions.COOLING_INDOOR, "indoor cooling design temperature");
        value(to, in -> DesignConditions.HEATING_INDOOR, "indoor heating design temperature");
        value(
                to,
                in -> DesignConditions.TRADE_COOLING_INDOOR,
                "indoor cooling design temperature, trade");
        value(
                to,
                in -> DesignConditions.STRICT_TRADE_COOLING_INDOOR,
                "indoor cooling design temperature, stricter trade habit");
        value(
                to,
                in -> DesignConditions.TRADE_HEATING_INDOOR,
                "indoor heating design temperature, trade");
        to.notOffered(
                "a record of the climate, which the library takes as input and does not compute",
                "outdoor cooling design, 1 percent",
                "outdoor heating design, 99 percent",
                "cooling daily range");
    }

    private static double solarTime(CaseInputs in) {
        Matcher hours = SOLAR_TIME.matcher(in.text("AST"));
        if (!hours.matches()) {
            throw new IllegalArgumentException("input \"AST\" is not a time in h");
        }
        return 3_600 * Double.parseDouble(hours.group(1));
    }

    private static void value(
            CaseEvaluator to, ToDoubleFunction<CaseInputs> of, String... wordings) {
        to.on(in -> Answer.si(of.applyAsDouble(in)), wordings);
    }
}
