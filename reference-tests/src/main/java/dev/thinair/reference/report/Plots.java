package dev.thinair.reference.report;

import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.ducts.kernel.Friction;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.reference.CaseInputs;
import dev.thinair.reference.independent.AtmosphereIntegration;
import dev.thinair.reference.independent.FrictionEquations;
import dev.thinair.reference.independent.MoistAirEquations;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** The plots of the report, all computed when it is written. */
final class Plots {

    private static final double ICE_POINT = 273.15;

    private Plots() {}

    static List<Plot> all(Validation validation) {
        List<Plot> plots = new ArrayList<>();
        plots.add(saturationOverDomain());
        plots.add(
                cases(
                        validation,
                        "saturation-cases",
                        "Saturation pressure: published values",
                        "temperature, \u00b0C",
                        q -> q.startsWith("saturation pressure") || q.startsWith("sublimation"),
                        in -> in.anySi("T", "t") - ICE_POINT));
        plots.add(wetBulbOverDomain());
        plots.add(
                cases(
                        validation,
                        "wet-bulb-cases",
                        "Wet bulb: published and computed values",
                        "dry bulb, \u00b0C",
                        q -> q.contains("wet bulb") && !q.startsWith("humidity"),
                        in -> in.anySi("t", "t1", "t2") - ICE_POINT));
        plots.add(frictionOverDomain());
        plots.add(frictionFormulas());
        plots.add(atmosphereOverDomain());
        plots.add(
                cases(
                        validation,
                        "atmosphere-cases",
                        "Standard atmosphere: published tables",
                        "altitude, m",
                        q -> q.startsWith("standard atmosphere"),
                        in -> in.anySi("H", "Z", "z", "elevation", "altitude")));
        return plots;
    }

    private static Plot saturationOverDomain() {
        return new Plot(
                "saturation",
                "Saturation pressure: against formulations of another form",
                "temperature, \u00b0C",
                false,
                "deviation, parts per million",
                "The library's default (Hyland and Wexler as in ASHRAE Fundamentals 2021, ch. 1,"
                        + " equations 5 and 6) less another formulation: over liquid water Wagner"
                        + " and Pruss, IAPWS SR1-86(1992); over ice Murphy and Koop (2005). This is"
                        + " how far apart the formulations are, not an arithmetic error: the"
                        + " library follows its own printed equation within 2e-13.",
                List.of(
                        over(
                                "over ice",
                                -100,
                                -0.5,
                                200,
                                t ->
                                        1e6
                                                * (Saturation.pressure(t + ICE_POINT)
                                                                / MoistAirEquations
                                                                        .murphyKoopPressure(
                                                                                t + ICE_POINT)
                                                        - 1)),
                        over(
                                "over liquid water",
                                0.01,
                                200,
                                200,
                                t ->
                                        1e6
                                                * (Saturation.pressure(t + ICE_POINT)
                                                                / MoistAirEquations
                                                                        .wagnerPrussPressure(
                                                                                t + ICE_POINT)
                                                        - 1))));
    }

    private static Plot wetBulbOverDomain() {
        List<Plot.Series> series = new ArrayList<>();
        double pressure = StandardAtmosphere.pressure(7200 * 0.3048);
        for (double share : new double[] {0.1, 0.5, 0.9}) {
            series.add(
                    over(
                            String.format(Locale.ROOT, "%.0f %% of saturation", share * 100),
                            -40,
                            80,
                            160,
                            t -> {
                                double k = t + ICE_POINT;
                                double w =
                                        share * IdealMoistAir.saturationHumidityRatio(k, pressure);
                                return 1e12
                                        * (WetBulb.temperature(k, w, pressure)
                                                - MoistAirEquations.wetBulb(k, w, pressure));
                            }));
        }
        return new Plot(
                "wet-bulb",
                "Wet bulb: against Brent's method on the printed equations",
                "dry bulb, \u00b0C",
                false,
                "deviation, 10\u207b\u00b9\u00b2 K",
                "The library less the root of ASHRAE Fundamentals 2021, ch. 1, equations 33 and 35,"
                        + " found by Brent's method of Apache Commons Math to 1e-13 K, at the"
                        + " standard pressure of 7,200 ft.",
                series);
    }

    private static Plot frictionOverDomain() {
        List<Plot.Series> series = new ArrayList<>();
        for (double roughness : new double[] {0, 1e-4, 1e-3, 0.05}) {
            series.add(
                    decades(
                            "\u03b5/D = " + plain(roughness),
                            2300,
                            1e8,
                            120,
                            re ->
                                    1e16
                                            * (Friction.colebrookWhite(re, roughness)
                                                            / FrictionEquations.colebrook(
                                                                    re, roughness)
                                                    - 1)));
        }
        return new Plot(
                "friction",
                "Friction factor: against Brent's method on Colebrook's equation",
                "Reynolds number",
                true,
                "relative deviation, 10\u207b\u00b9\u2076",
                "The library less the root of Colebrook (1939) found by Brent's method to the last"
                        + " digit. A double carries steps of 1.1 to 2.2 of these units: what is left"
                        + " is the rounding of both.",
                series);
    }

    private static Plot frictionFormulas() {
        double roughness = 1e-3;
        return new Plot(
                "friction-formulas",
                "Friction factor: explicit formulas against Colebrook",
                "Reynolds number",
                true,
                "relative deviation, %",
                "Three explicit formulas that the library offers beside Colebrook-White, at \u03b5/D"
                        + " = 0.001: Haaland (1983), Swamee and Jain (1976), Churchill (1977), each"
                        + " less the root of Colebrook's equation.",
                List.of(
                        explicit("Haaland", roughness, Friction::haaland),
                        explicit("Swamee and Jain", roughness, Friction::swameeJain),
                        explicit("Churchill", roughness, Friction::churchill)));
    }

    private static Plot.Series explicit(
            String name, double roughness, java.util.function.DoubleBinaryOperator formula) {
        return decades(
                name,
                5000,
                1e8,
                80,
                re ->
                        100
                                * (formula.applyAsDouble(re, roughness)
                                                / FrictionEquations.colebrook(re, roughness)
                                        - 1));
    }

    private static Plot atmosphereOverDomain() {
        return new Plot(
                "atmosphere",
                "Standard atmosphere: against the hydrostatic equation, integrated",
                "geopotential altitude, m",
                false,
                "relative deviation, 10\u207b\u00b9\u2075",
                "The library's closed form less dp = -\u03c1 g dH marched from sea level by an"
                        + " eighth-order Runge-Kutta integrator of Apache Commons Math (tolerance"
                        + " 1e-13 relative); constants of U.S. Standard Atmosphere 1976.",
                List.of(
                        over(
                                "pressure",
                                -5000,
                                20000,
                                125,
                                h ->
                                        1e15
                                                * (StandardAtmosphere.pressure(h)
                                                                / AtmosphereIntegration.pressure(h)
                                                        - 1))));
    }

    /**
     * Deviation over tolerance of all evaluated cases of some quantities, one series a standing.
     */
    private static Plot cases(
            Validation validation,
            String key,
            String title,
            String across,
            Predicate<String> quantity,
            ToDoubleFunction<CaseInputs> along) {
        List<Plot.Series> series = new ArrayList<>();
        for (boolean published : new boolean[] {true, false}) {
            List<double[]> points = new ArrayList<>();
            for (Entry e : validation.entries()) {
                if (!quantity.test(e.outcome().checked().quantity())
                        || !(e.share() >= 0)
                        || isPublished(e) != published) {
                    continue;
                }
                try {
                    double x = along.applyAsDouble(new CaseInputs(e.outcome().checked().inputs()));
                    points.add(new double[] {x, e.outcome().deviation() / e.outcome().allowed()});
                } catch (IllegalArgumentException notAlongThisAxis) {
                    continue;
                }
            }
            if (!points.isEmpty()) {
                series.add(
                        new Plot.Series(
                                published ? "looked up" : "computed elsewhere",
                                points.stream().mapToDouble(p -> p[0]).toArray(),
                                points.stream().mapToDouble(p -> p[1]).toArray(),
                                false));
            }
        }
        return new Plot(
                key,
                title,
                across,
                false,
                "deviation / tolerance",
                "Each mark is a shipped case; inside its tolerance it lies between -1 and 1. The"
                        + " tolerance is the source's own rounding.",
                series);
    }

    private static boolean isPublished(Entry e) {
        return e.outcome().checked().provenance().contains("looked-up");
    }

    private static Plot.Series over(
            String name, double from, double to, int steps, DoubleUnaryOperator deviation) {
        double[] x = new double[steps + 1];
        double[] y = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            x[i] = from + (to - from) * i / steps;
            y[i] = deviation.applyAsDouble(x[i]);
        }
        return new Plot.Series(name, x, y, true);
    }

    private static Plot.Series decades(
            String name, double from, double to, int steps, DoubleUnaryOperator deviation) {
        double[] x = new double[steps + 1];
        double[] y = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            x[i] = from * Math.pow(to / from, (double) i / steps);
            y[i] = deviation.applyAsDouble(Math.min(x[i], to));
        }
        return new Plot.Series(name, x, y, true);
    }

    private static String plain(double v) {
        return v == 0 ? "0" : String.format(Locale.ROOT, "%.4g", v).replaceAll("\\.?0+$", "");
    }
}
