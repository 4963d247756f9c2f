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
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.Month;
import org.junit.jupiter.api.Test;

class SeasonTest {

    /** An invented year: 2 to 27 degC in the monthly mean. */
    private static HourlyWeather year(Site site) {
        HourlyWeather.Year builder = HourlyWeather.yearAt(site);
        for (Month m : Month.values()) {
            double summer = 0.5 - 0.5 * Math.cos((m.getValue() - 1) / 6.0 * Math.PI);
            builder.month(
                    m,
                    celsius(2 + 25 * summer),
                    kelvinDifference(11),
                    gramsPerKilogram(4 + 9 * summer),
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
