package dev.thinair.psychro;

import static dev.thinair.units.Units.kelvins;
import static dev.thinair.units.Units.kilogramsPerKilogram;
import static dev.thinair.units.Units.pascals;
import static dev.thinair.units.Units.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.units.Si;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class MoistAirPropertyTest {

    /** Each usual pair as a way out and in again. */
    private enum Pair {
        RELATIVE_HUMIDITY {
            @Override
            MoistAir again(MoistAir a) {
                double rh = Math.min(1, Si.ratio(a.relativeHumidity(), "RH"));
                return MoistAir.ofDryBulbAndRelativeHumidity(
                        a.dryBulb(), ratio(rh), a.pressure(), a.formulation());
            }
        },
        WET_BULB {
            @Override
            MoistAir again(MoistAir a) {
                double bulb = Math.min(celsius(a), a.wetBulb().getValue().doubleValue());
                return MoistAir.ofDryBulbAndWetBulb(
                        a.dryBulb(),
                        dev.thinair.units.Units.celsius(bulb),
                        a.pressure(),
                        a.formulation());
            }

            private double celsius(MoistAir a) {
                return a.dryBulb().getValue().doubleValue();
            }

            @Override
            boolean applies(MoistAir a) {
                double bulb = Si.kelvins(a.wetBulb(), "wet bulb");
                return bulb >= 173.15 && bulb != 273.15;
            }
        },
        DEW_POINT {
            @Override
            MoistAir again(MoistAir a) {
                return MoistAir.ofDryBulbAndDewPoint(
                        a.dryBulb(), a.dewPoint(), a.pressure(), a.formulation());
            }

            @Override
            boolean applies(MoistAir a) {
                return a.hasDewPoint() && Si.kelvins(a.dewPoint(), "dew point") != 273.15;
            }
        },
        HUMIDITY_RATIO {
            @Override
            MoistAir again(MoistAir a) {
                return MoistAir.ofDryBulbAndHumidityRatio(
                        a.dryBulb(), a.humidityRatio(), a.pressure(), a.formulation());
            }
        },
        ENTHALPY {
            @Override
            MoistAir again(MoistAir a) {
                return MoistAir.ofDryBulbAndEnthalpy(
                        a.dryBulb(), a.enthalpy(), a.pressure(), a.formulation());
            }
        },
        VAPOR_PRESSURE {
            @Override
            MoistAir again(MoistAir a) {
                return MoistAir.ofDryBulbAndVaporPressure(
                        a.dryBulb(), a.vaporPressure(), a.pressure(), a.formulation());
            }
        },
        ENTHALPY_AND_HUMIDITY_RATIO {
            @Override
            MoistAir again(MoistAir a) {
                return MoistAir.ofEnthalpyAndHumidityRatio(
                        a.enthalpy(), a.humidityRatio(), a.pressure(), a.formulation());
            }
        };

        abstract MoistAir again(MoistAir a);

        boolean applies(MoistAir a) {
            return true;
        }
    }

    private static void roundTrips(MoistAir air) {
        for (Pair first : Pair.values()) {
            if (!first.applies(air)) {
                continue;
            }
            MoistAir once = first.again(air);
            same(first + "", once, air);
            for (Pair second : Pair.values()) {
                if (second.applies(once)) {
                    same(first + " then " + second, second.again(once), air);
                }
            }
        }
    }

    private static void same(String how, MoistAir actual, MoistAir expected) {
        assertThat(actual.dryBulbKelvins())
                .as("%s: dry bulb of %s", how, expected)
                .isCloseTo(expected.dryBulbKelvins(), within(1e-9 * expected.dryBulbKelvins()));
        assertThat(actual.humidityRatioNumber())
                .as("%s: humidity ratio of %s", how, expected)
                .isCloseTo(
                        expected.humidityRatioNumber(),
                        // 1e-12 kg/kg: what rounding leaves of h - c_p t and of the wet-bulb
                        // equation, both differences of large terms.
                        within(1e-9 * expected.humidityRatioNumber() + 1e-12));
        assertThat(actual.pressurePascals()).isEqualTo(expected.pressurePascals());
        assertThat(actual.formulation()).isEqualTo(expected.formulation());
    }

    private static MoistAir air(double t, double humidity, double p, Formulation formulation) {
        double vapor = humidity * Math.min(Saturation.pressure(t) * 0.999, p * 0.9);
        return MoistAir.ofSi(t, 0.621945 * vapor / (p - vapor), p, formulation);
    }

    @Property(tries = 2000)
    void every_pair_comes_back_through_every_other_over_the_whole_domain(
            @ForAll @DoubleRange(min = 173.2, max = 473.15) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double humidity,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(2) double p) {
        roundTrips(air(t, humidity, p, Formulation.IDEAL));
    }

    @Property(tries = 1000)
    void every_pair_comes_back_in_air_of_everyday(
            @ForAll @DoubleRange(min = 243, max = 323) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double humidity,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(2) double p) {
        roundTrips(air(t, humidity, p, Formulation.IDEAL));
    }

    @Property(tries = 1000)
    void every_pair_comes_back_in_the_real_formulation_too(
            @ForAll @DoubleRange(min = 223, max = 453) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 0.99) @Scale(6) double humidity,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(2) double p) {
        roundTrips(air(t, humidity, p, Formulation.REAL));
    }

    @net.jqwik.api.Example
    void edges_come_back() {
        for (double t : new double[] {173.2, 273.15, 273.1500001, 300, 373.15, 473.15}) {
            for (double humidity : new double[] {0, 1e-4, 0.5, 1}) {
                for (double p : new double[] {20_000, 50_000, 101_325, 200_000}) {
                    roundTrips(air(t, humidity, p, Formulation.IDEAL));
                }
            }
        }
        for (double t : new double[] {174, 250, 272, 274, 310, 350}) {
            MoistAir saturated = MoistAir.saturated(kelvins(t), pascals(101_325));
            assertThat(Si.ratio(saturated.relativeHumidity(), "RH")).isCloseTo(1, within(1e-14));
            roundTrips(saturated);
        }
    }

    @net.jqwik.api.Example
    void a_wet_bulb_of_exactly_0_degC_and_a_dew_point_of_exactly_0_degC_come_back() {
        MoistAir bulb =
                MoistAir.ofDryBulbAndWetBulb(kelvins(280), kelvins(273.15), pascals(90_000));
        assertThat(Si.kelvins(bulb.wetBulb(), "wet bulb")).isEqualTo(273.15);
        MoistAir dew =
                MoistAir.ofDryBulbAndDewPoint(kelvins(280), kelvins(273.15), pascals(90_000));
        assertThat(Si.kelvins(dew.dewPoint(), "dew point")).isCloseTo(273.15, within(1e-11));
    }

    @Property(tries = 1000)
    void properties_agree_with_each_other(
            @ForAll @DoubleRange(min = 173.2, max = 473.15) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double humidity,
            @ForAll @DoubleRange(min = 50_000, max = 110_000) @Scale(2) double p) {
        List<MoistAir> both = new ArrayList<>();
        both.add(air(t, humidity, p, Formulation.IDEAL));
        if (humidity < 0.95 && t > 213) {
            both.add(both.get(0).with(Formulation.REAL));
        }
        for (MoistAir a : both) {
            double w = a.humidityRatioNumber();
            double v = Si.cubicMetresPerKilogram(a.specificVolume(), "v");
            double rho = Si.kilogramsPerCubicMetre(a.density(), "rho");
            assertThat(rho * v).isCloseTo(1 + w, within(1e-14 * (1 + w)));
            assertThat(Si.kelvins(a.wetBulb(), "t*")).isLessThanOrEqualTo(a.dryBulbKelvins());
            if (a.hasDewPoint()) {
                assertThat(Si.kelvins(a.dewPoint(), "t_d"))
                        .isLessThanOrEqualTo(Si.kelvins(a.wetBulb(), "t*") + 0.5e-3);
            }
            assertThat(Si.pascals(a.vaporPressure(), "p_w"))
                    .isCloseTo(p * w / (0.621945 + w), within(1e-9));
            assertThat(Si.joulesPerKilogramKelvin(a.specificHeat(), "cp"))
                    .isCloseTo(1006 + 1860 * w, within(1e-9));
            assertThat(a.humidityRatio()).isEqualTo(kilogramsPerKilogram(w));
        }
    }
}
