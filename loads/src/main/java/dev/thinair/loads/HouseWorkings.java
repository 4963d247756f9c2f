package dev.thinair.loads;

import dev.thinair.loads.kernel.Resistance;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Shows how U-values and room peaks come about. */
final class HouseWorkings {
    private static final String ISO_6946 = "ISO 6946:2017, 6.7";
    private static final String FILMS = "ISO 6946:2017, table 7, from memory";
    private static final String HARMONIC =
            "periodic heat balance of the room, transmission matrices of ISO 13786:2017";
    private static final String CH1 = "ASHRAE Handbook, Fundamentals 2021 SI, ch. 1";

    private HouseWorkings() {}

    static Working transmittance(Assembly assembly, HeatFlow flow) {
        Working.Builder work =
                Working.titled(
                        "U-value of "
                                + assembly.name()
                                + ", heat flow "
                                + flow.name().toLowerCase(Locale.ROOT));
        work.given(
                "R_si",
                "inside film",
                Units.squareMetreKelvinsPerWatt(Resistance.insideFilm(flow.ordinal())),
                FILMS);
        work.given(
                "R_se",
                "outside film",
                Units.squareMetreKelvinsPerWatt(Resistance.OUTSIDE_FILM),
                FILMS);
        if (assembly instanceof FramedAssembly framed) {
            framed(work, framed, flow);
        } else {
            List<Layer> layers = assembly.paths().get(0).layers();
            StringBuilder sum = new StringBuilder("R_T = R_si");
            for (int l = 0; l < layers.size(); l++) {
                resistance(work, layers.get(l), Integer.toString(l + 1));
                sum.append(" + R_").append(l + 1);
            }
            work.step(
                    "total resistance",
                    sum.append(" + R_se").toString(),
                    Units.squareMetreKelvinsPerWatt(
                            assembly.totalResistance(
                                    Resistance.insideFilm(flow.ordinal()),
                                    Resistance.OUTSIDE_FILM)),
                    ISO_6946);
        }
        work.step("thermal transmittance", "U = 1 / R_T", assembly.transmittance(flow), ISO_6946);
        return work.build();
    }

    private static void resistance(Working.Builder work, Layer layer, String index) {
        if (layer instanceof SolidLayer solid
                && solid.squareMetreKelvinsPerWatt()
                        == solid.thickness() / solid.material().wattsPerMetreKelvin()) {
            String source = solid.material().source();
            work.given(
                    "d_" + index,
                    "thickness of " + solid.material().name(),
                    Units.metres(solid.thickness()));
            work.given(
                    "k_" + index,
                    "conductivity of " + solid.material().name(),
                    solid.material().conductivity(),
                    source);
            work.step(
                    "resistance of " + solid.material().name(),
                    "R_" + index + " = d_" + index + " / k_" + index,
                    solid.resistance(),
                    ISO_6946);
        } else {
            work.given(
                    "R_" + index,
                    "resistance of " + layer.name(),
                    layer.resistance(),
                    "as described");
        }
    }

    private static void framed(Working.Builder work, FramedAssembly framed, HeatFlow flow) {
        List<Layer> cavity = framed.cavitySection();
        List<Layer> frame = framed.framingSection();
        double in = Resistance.insideFilm(flow.ordinal());
        double[] a = new double[cavity.size() + 2];
        double[] b = new double[a.length];
        a[0] = in;
        b[0] = in;
        a[a.length - 1] = Resistance.OUTSIDE_FILM;
        b[b.length - 1] = Resistance.OUTSIDE_FILM;
        work.given("f", "share of framing", Units.ratio(framed.framingFraction()));
        StringBuilder sumA = new StringBuilder("R_a = R_si");
        StringBuilder sumB = new StringBuilder("R_b = R_si");
        StringBuilder planes = new StringBuilder("R_low = R_si");
        List<Runnable> bridged = new ArrayList<>();
        double totalA = in + Resistance.OUTSIDE_FILM;
        double totalB = totalA;
        for (int l = 0; l < cavity.size(); l++) {
            a[l + 1] = cavity.get(l).squareMetreKelvinsPerWatt();
            b[l + 1] = frame.get(l).squareMetreKelvinsPerWatt();
            totalA += a[l + 1];
            totalB += b[l + 1];
            int n = l + 1;
            if (cavity.get(l).equals(frame.get(l))) {
                resistance(work, cavity.get(l), Integer.toString(n));
                sumA.append(" + R_").append(n);
                sumB.append(" + R_").append(n);
                planes.append(" + R_").append(n);
            } else {
                resistance(work, cavity.get(l), n + "a");
                resistance(work, frame.get(l), n + "b");
                sumA.append(" + R_").append(n).append("a");
                sumB.append(" + R_").append(n).append("b");
                planes.append(" + R_").append(n).append("m");
                double mean =
                        1
                                / ((1 - framed.framingFraction()) / a[l + 1]
                                        + framed.framingFraction() / b[l + 1]);
                bridged.add(
                        () ->
                                work.step(
                                        "bridged layer, area-weighted",
                                        "R_"
                                                + n
                                                + "m = 1 / ((1 - f) / R_"
                                                + n
                                                + "a + f / R_"
                                                + n
                                                + "b)",
                                        Units.squareMetreKelvinsPerWatt(mean),
                                        ISO_6946));
            }
        }
        FramedAssembly.Method method = framed.method();
        if (method != FramedAssembly.Method.ISOTHERMAL_PLANES) {
            work.step(
                    "through the cavity, air to air",
                    sumA.append(" + R_se").toString(),
                    Units.squareMetreKelvinsPerWatt(totalA),
                    ISO_6946);
            work.step(
                    "through the framing, air to air",
                    sumB.append(" + R_se").toString(),
                    Units.squareMetreKelvinsPerWatt(totalB),
                    ISO_6946);
            work.step(
                    "upper limit, parallel paths",
                    (method == FramedAssembly.Method.PARALLEL_PATH ? "R_T" : "R_up")
                            + " = 1 / ((1 - f) / R_a + f / R_b)",
                    Units.squareMetreKelvinsPerWatt(
                            Resistance.upperLimit(1 - framed.framingFraction(), a, b)),
                    ISO_6946);
        }
        if (method != FramedAssembly.Method.PARALLEL_PATH) {
            bridged.forEach(Runnable::run);
            String formula = planes.append(" + R_se").toString();
            work.step(
                    "lower limit, isothermal planes",
                    method == FramedAssembly.Method.ISOTHERMAL_PLANES
                            ? formula.replace("R_low", "R_T")
                            : formula,
                    Units.squareMetreKelvinsPerWatt(
                            Resistance.lowerLimit(1 - framed.framingFraction(), a, b)),
                    ISO_6946);
        }
        if (method == FramedAssembly.Method.COMBINED) {
            work.step(
                    "total resistance, mean of both limits",
                    "R_T = (R_up + R_low) / 2",
                    Units.squareMetreKelvinsPerWatt(
                            Resistance.combined(1 - framed.framingFraction(), a, b)),
                    ISO_6946);
            work.note("Not for insulation bridged by metal.");
        }
    }

    static Working roomPeak(
            DesignLoad load,
            String room,
            int hour,
            double roomTemperature,
            double supply,
            double humidityRatio) {
        Working.Builder work =
                Working.titled(
                        String.format(
                                Locale.ROOT,
                                "Sensible %s peak of %s at %02d:00",
                                load.heating() ? "heating" : "cooling",
                                room,
                                hour));
        List<LoadLine> lines = load.lines(room, hour);
        StringBuilder sum = new StringBuilder("q_s =");
        double total = 0;
        for (int i = 0; i < lines.size(); i++) {
            LoadLine line = lines.get(i);
            String symbol = "q_" + (i + 1);
            String what = line.name();
            if (line.area() > 0) {
                what += String.format(Locale.ROOT, ", %.2f m2", line.area());
            }
            if (line.transmittance() > 0) {
                what +=
                        String.format(
                                Locale.ROOT,
                                ", U %.3f W/(m2 K), outside %.1f C",
                                line.transmittance(),
                                line.outside());
            }
            work.given(symbol, what, Units.watts(line.load()), HARMONIC);
            sum.append(i == 0 ? " " : " + ").append(symbol);
            total += line.load();
        }
        work.step("sensible load", sum.toString(), Units.watts(total), "sum of the lines");
        double cp = 1006 + 1860 * humidityRatio;
        work.given(
                "W",
                "humidity ratio of the supply air",
                Units.kilogramsPerKilogram(humidityRatio),
                "room air, or saturated at the supply temperature if that is drier");
        work.given("c_pa", "specific heat of dry air", Units.joulesPerKilogramKelvin(1006), CH1);
        work.given(
                "c_pv", "specific heat of water vapour", Units.joulesPerKilogramKelvin(1860), CH1);
        work.given(
                "DeltaT",
                "room less supply temperature",
                Units.kelvinDifference(roomTemperature - supply));
        work.step(
                "specific heat of the supply air",
                "c_p = c_pa + W c_pv",
                Units.joulesPerKilogramKelvin(cp),
                CH1);
        work.step(
                "dry-air mass flow",
                "m_a = q_s / (c_p DeltaT)",
                load.airMass(room, Units.kelvins(supply)),
                CH1);
        work.note(
                "Heat into the room counts positive. What the mass delays is in each line already.");
        return work.build();
    }
}
