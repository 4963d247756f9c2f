package dev.thinair.psychro.kernel;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Random unsaturated states over the whole domain, with 0 degC, saturation, dry air, 200 degC and
 * 50 kPa among them on purpose. Humidity is drawn evenly in relative humidity or, for dry states,
 * in its fourth power.
 */
final class States extends DomainContextBase {

    /** One state in SI. */
    record State(double dryBulb, double humidityRatio, double pressure) {

        double relativeHumidity() {
            return IdealMoistAir.relativeHumidity(dryBulb, humidityRatio, pressure);
        }
    }

    @Provide
    Arbitrary<State> states() {
        Arbitrary<Double> dryBulb =
                Arbitraries.frequencyOf(
                        tuple(12, Arbitraries.doubles().between(173.15, 473.15).ofScale(9)),
                        tuple(6, Arbitraries.doubles().between(253.15, 323.15).ofScale(9)),
                        tuple(2, Arbitraries.doubles().between(273.14, 279.15).ofScale(9)),
                        tuple(1, Arbitraries.of(273.15, 473.15, 173.15, 273.16)));
        Arbitrary<Double> humidity =
                Arbitraries.frequencyOf(
                        tuple(8, Arbitraries.doubles().between(0, 1).ofScale(9)),
                        tuple(
                                4,
                                Arbitraries.doubles()
                                        .between(0.001, 1)
                                        .ofScale(9)
                                        .map(x -> x * x * x * x)),
                        tuple(1, Arbitraries.of(0.0, 1.0)));
        Arbitrary<Double> pressure =
                Arbitraries.frequencyOf(
                        tuple(8, Arbitraries.doubles().between(50_000, 110_000).ofScale(3)),
                        tuple(4, Arbitraries.doubles().between(20_000, 200_000).ofScale(3)),
                        tuple(1, Arbitraries.of(50_000.0, 101_325.0, 110_000.0)));
        return Combinators.combine(dryBulb, humidity, pressure).as(States::state);
    }

    private static Tuple2<Integer, Arbitrary<? extends Double>> tuple(
            int weight, Arbitrary<Double> values) {
        return Tuple.of(weight, values);
    }

    private static State state(double dryBulb, double humidity, double pressure) {
        double most = pressure * 10 / (0.621945 + 10) * (1 - 1e-12);
        double vapor = humidity * Saturation.pressure(dryBulb);
        if (vapor > most) {
            vapor = humidity * most;
        }
        return new State(dryBulb, 0.621945 * vapor / (pressure - vapor), pressure);
    }
}
