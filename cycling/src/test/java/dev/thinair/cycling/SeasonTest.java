package dev.thinair.cycling;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.gramsPerKilogram;
import static dev.thinair.units.Units.kelvinDifference;
import static dev.thinair.units.Units.metresPerSecond;
import static dev.thinair.units.Units.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.Site;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.Month;
import org.junit.jupiter.api.Test;

class SeasonTest {

    /** An invented year: 2 to 27 degC in the monthly mean. */
    private static HourlyWeather year(Site site) {
        return year(site, 2);
    }

    /** The same with another January. */
    private static HourlyWeather year(Site site, double coldest) {
        HourlyWeather.Year builder = HourlyWeather.yearAt(site);
        for (Month m : Month.values()) {
            double summer = 0.5 - 0.5 * Math.cos((m.getValue() - 1) / 6.0 * Math.PI);
            builder.month(
                    m,
                    celsius(coldest + 25 * summer),
                    kelvinDifference(11),
                    gramsPerKilogram(coldest < 0 ? 0.5 : 4 + 9 * summer),
                    metresPerSecond(3),
                    percent(60),
                    0.4,
                    2.1);
        }
        return builder.build();
    }

    @Test
    void a_year_balances_bills_and_wears() {
        InstalledSystem s = Stories.at(false, 2, 5).build();
        HourlyWeather year = year(Stories.site(0));
        SeasonRun run = s.runSeason(year);
        assertThat(run.starts()).isGreaterThan(300);
        assertThat(Math.abs(run.record().heatImbalance())).isLessThan(1e-6);
        assertThat(Math.abs(run.record().waterImbalance())).isLessThan(1e-6);
        double kilowattHours = Si.joules(run.electricity(), "electricity") / 3.6e6;
        // The last hour of the year is billed like the one before.
        assertThat(run.cost()).isCloseTo(0.2 * kilowattHours, within(0.001 * kilowattHours));
        assertThat(run.wear(100_000)).isEqualTo(run.starts() / 100_000.0);
        assertThat(run.startsPerDay()).isBetween(1.0, 60.0);
        // January is not for cooling, July is.
        double january = 0;
        double july = 0;
        for (int h = 0; h < 744; h++) {
            january += run.record().onSeconds(h);
            july += run.record().onSeconds(4344 + h);
        }
        assertThat(january).isZero();
        assertThat(july).isGreaterThan(100 * 3600.0);
        assertThat(s.runSeason(year).cost()).isEqualTo(run.cost());
        assertThatThrownBy(() -> run.wear(0)).hasMessageContaining("life in starts is 0.0");
        assertThat(run.hoursIced()).isZero();
        // Hours add up to the season, and the humidity is that of the air the records tell of.
        int starts = 0;
        double on = 0;
        double most = 0;
        for (int h = 0; h < run.hours(); h++) {
            starts += run.starts(h);
            double share = Si.ratio(run.runFraction(h), "run fraction");
            most = Math.max(most, share);
            on += share;
        }
        assertThat(most).isBetween(0.5, 1 + 1e-12);
        assertThat(starts).isEqualTo(run.starts());
        assertThat(on).isCloseTo(Si.seconds(run.hoursOn(), "on") / 3600, within(1e-6));
        int noon = 4344 + 15 * 24 + 15;
        double t = Si.kelvins(run.indoorTemperature(noon), "indoor");
        assertThat(t).isCloseTo(s.thermostat().setpointKelvin(), within(1.0));
        double phi = Si.ratio(run.indoorRelativeHumidity(noon), "humidity");
        double w = run.record().endHumidityRatio(noon);
        double vapour = 101_325 * w / (0.621945 + w);
        assertThat(phi * Saturation.pressure(t)).isCloseTo(vapour, within(1e-4 * vapour));
        assertThat(Si.kelvins(run.minimumSuctionTemperature(), "suction"))
                .isLessThan(Si.kelvins(run.minimumCoilTemperature(), "coil"));
        assertThat(Si.kelvins(run.minimumCoilTemperature(), "coil")).isGreaterThan(273.15);
        // Water: in by people and leaks of the house = off the coil, on the coil, in the air.
        double in = run.record().waterIn();
        assertThat(
                        run.record().drainedWater()
                                + run.record().retainedWater()
                                + run.record().waterStored())
                .isCloseTo(in, within(1e-6 * in));
        assertThat(run.record().drainedWater()).isGreaterThan(10);
    }

    @Test
    void a_season_without_a_call_for_cooling_says_so() {
        InstalledSystem s =
                Stories.at(false, 2, 5).thermostat(Thermostat.at(Units.celsius(40))).build();
        SeasonRun run = s.runSeason(year(Stories.site(0), -20));
        assertThat(run.ran()).isFalse();
        assertThat(run.starts()).isZero();
        assertThat(run.startsPerDay()).isZero();
        assertThatThrownBy(run::minimumCoilTemperature).hasMessageContaining("never ran");
        assertThatThrownBy(run::minimumSuctionTemperature).hasMessageContaining("never ran");
    }

    @Test
    void a_season_counts_the_hours_in_which_ice_takes_the_air() {
        InstalledSystem s =
                Stories.at(true, 4, 4).thermostat(Thermostat.at(Units.fahrenheit(70))).build();
        SeasonRun run = s.runSeason(year(Stories.site(2200)));
        assertThat(run.hoursIced()).isPositive();
        assertThat(Math.abs(run.record().heatImbalance())).isLessThan(1e-6);
        assertThat(Math.abs(run.record().waterImbalance())).isLessThan(1e-6);
    }
}
