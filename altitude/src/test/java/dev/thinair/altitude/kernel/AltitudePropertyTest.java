package dev.thinair.altitude.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class AltitudePropertyTest {

    @Property(tries = 1000)
    void pressure_and_altitude_undo_each_other(
            @ForAll @DoubleRange(min = -5_000, max = 20_000) @Scale(6) double h) {
        assertThat(StandardAtmosphere.altitude(StandardAtmosphere.pressure(h)))
                .isCloseTo(h, within(2e-8));
    }

    @Property(tries = 1000)
    void geometric_and_geopotential_undo_each_other(
            @ForAll @DoubleRange(min = -5_000, max = 20_000) @Scale(6) double h) {
        double z = StandardAtmosphere.geometricFromGeopotential(h);
        assertThat(StandardAtmosphere.geopotentialFromGeometric(z)).isCloseTo(h, within(1e-9));
        assertThat(z).isGreaterThanOrEqualTo(h);
    }

    @Property(tries = 1000)
    void air_is_always_thinner_a_metre_higher(
            @ForAll @DoubleRange(min = -5_000, max = 19_999) @Scale(6) double h) {
        assertThat(StandardAtmosphere.pressure(h + 1)).isLessThan(StandardAtmosphere.pressure(h));
        assertThat(StandardAtmosphere.density(h + 1)).isLessThan(StandardAtmosphere.density(h));
    }

    // Hydrostatics: dp/dH = -g rho, the law the formulas integrate.
    @Property(tries = 1000)
    void pressure_falls_by_the_weight_of_the_air(
            @ForAll @DoubleRange(min = -4_999, max = 19_999) @Scale(6) double h) {
        double slope =
                (StandardAtmosphere.pressure(h + 0.5) - StandardAtmosphere.pressure(h - 0.5));
        assertThat(slope)
                .isCloseTo(
                        -9.80665 * StandardAtmosphere.density(h),
                        within(2e-7 * 9.80665 * StandardAtmosphere.density(h)));
    }

    @Property(tries = 1000)
    void altimeter_setting_and_station_pressure_undo_each_other(
            @ForAll @DoubleRange(min = 90_000, max = 108_000) @Scale(3) double setting,
            @ForAll @DoubleRange(min = -400, max = 5_000) @Scale(3) double elevation) {
        double station = StandardAtmosphere.stationPressure(setting, elevation);
        assertThat(StandardAtmosphere.altimeterSetting(station, elevation))
                .isCloseTo(setting, within(1e-7));
    }

    @Property(tries = 1000)
    void heat_and_airflow_undo_each_other(
            @ForAll @DoubleRange(min = 0.3, max = 1.5) @Scale(6) double density,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double w,
            @ForAll @DoubleRange(min = 0.001, max = 10) @Scale(6) double airflow,
            @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(6) double difference) {
        double factor = AirFactors.sensible(density, w);
        double heat = AirFactors.heat(factor, airflow, -difference);
        assertThat(AirFactors.airflow(heat, factor, -difference))
                .isCloseTo(airflow, within(1e-14 * airflow));
    }

    @Property(tries = 1000)
    void the_three_bases_keep_their_order(
            @ForAll @DoubleRange(min = 0.3, max = 0.999) @Scale(6) double r,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(6) double viscous,
            @ForAll @DoubleRange(min = 0, max = 50) @Scale(6) double steepness) {
        double drop = DuctDerating.volumeAtSamePressureDrop(r);
        double blower = DuctDerating.volumeWithSameBlowerAndSpeed(r);
        double loaded = DuctDerating.volumeWithSameBlowerAndSpeed(r, viscous, steepness);
        assertThat(drop).isGreaterThan(1);
        assertThat(DuctDerating.mass(drop, r)).isBetween(r, 1.0);
        assertThat(loaded).isLessThan(blower).isGreaterThan(r * 0.999);
        assertThat(DuctDerating.volumeForSameHeat(r)).isGreaterThan(drop);
    }

    // The root must satisfy the balance it was solved from.
    @Property(tries = 1000)
    void the_loaded_blower_balances(
            @ForAll @DoubleRange(min = 0.3, max = 1.2) @Scale(6) double r,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double s,
            @ForAll @DoubleRange(min = 0, max = 50) @Scale(6) double k) {
        double x = DuctDerating.volumeWithSameBlowerAndSpeed(r, s, k);
        double fan = r * (1 + k - k * x * x);
        double system = r * (1 - s) * x * x + s * x;
        assertThat(fan).isCloseTo(system, within(1e-12 * (1 + k)));
    }

    // Blasius-like power law, whose roots are closed: f = Re^-1/4 gives x = r^(-3/7) at the same
    // drop.
    @Property(tries = 1000)
    void a_power_law_of_friction_gives_its_closed_root(
            @ForAll @DoubleRange(min = 0.3, max = 1.2) @Scale(6) double r,
            @ForAll @DoubleRange(min = 4000, max = 1e6) @Scale(2) double reynolds) {
        double x =
                DuctDerating.volumeAtSamePressureDrop(
                        r, reynolds, re -> 0.3164 * Math.pow(re, -0.25));
        assertThat(x).isCloseTo(Math.pow(r, -3.0 / 7.0), within(1e-12));
        double flat =
                DuctDerating.volumeWithSameBlowerAndSpeed(
                        r, 0, reynolds, re -> 0.3164 * Math.pow(re, -0.25));
        // Flat curve: 1 = x^2 (r x)^-1/4, so x = r^(1/7).
        assertThat(flat).isCloseTo(Math.pow(r, 1.0 / 7.0), within(1e-12));
    }

    @Property(tries = 1000)
    void an_exchanger_loses_less_than_the_air_and_differences_undo_it(
            @ForAll @DoubleRange(min = 0.05, max = 0.98) @Scale(6) double contact,
            @ForAll @DoubleRange(min = 0.3, max = 0.999) @Scale(6) double m,
            @ForAll @DoubleRange(min = 0, max = 0.999) @Scale(6) double n) {
        double heat = ExchangerDerating.heatAtSameSurface(contact, m, n);
        assertThat(heat).isBetween(m, 1.0);
        assertThat(heat * ExchangerDerating.differenceForSameHeat(contact, m, n))
                .isCloseTo(1, within(1e-14));
        // NTU goes with m^(n-1).
        double ntu = -Math.log1p(-contact);
        double there = -Math.log1p(-ExchangerDerating.contactFactor(contact, m, n));
        assertThat(there).isCloseTo(ntu * Math.pow(m, n - 1), within(1e-9 * there));
    }

    @Property(tries = 1000)
    void burner_rules_never_rise_with_elevation(
            @ForAll @DoubleRange(min = -500, max = 5_900) @Scale(3) double z) {
        assertThat(BurnerDerating.fourPercentFromSeaLevel(z + 1))
                .isLessThanOrEqualTo(BurnerDerating.fourPercentFromSeaLevel(z));
        assertThat(BurnerDerating.fourPercentFromTwoThousandFeet(z + 1))
                .isLessThanOrEqualTo(BurnerDerating.fourPercentFromTwoThousandFeet(z));
        assertThat(BurnerDerating.fourPercentFromSeaLevel(z))
                .isLessThanOrEqualTo(BurnerDerating.fourPercentFromTwoThousandFeet(z));
    }
}
