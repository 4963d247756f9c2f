package dev.thinair.loads;

import dev.thinair.loads.kernel.DesignDays;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;

/**
 * The winter condition a heating load is reckoned for: one dry bulb, wind, no sun, steady.
 * Immutable.
 */
public final class HeatingDesignDay {

    /** Station wind of a heating day when none is given: 6.7 m/s (Fundamentals 2021, ch. 17). */
    public static final double USUAL_WIND = 6.7;

    private final Site site;
    private final double dryBulb;
    private final double relativeHumidity;
    private final double wind;
    private final double humidityRatio;
    private final OutdoorHours hours;

    private HeatingDesignDay(Site site, double dryBulb, double relativeHumidity, double wind) {
        this.site = site;
        this.dryBulb = dryBulb;
        this.relativeHumidity = relativeHumidity;
        this.wind = wind;
        this.humidityRatio =
                IdealMoistAir.humidityRatioFromRelativeHumidity(
                        dryBulb, relativeHumidity, site.pascals());
        double[] altitude = new double[24];
        double[] azimuth = new double[24];
        DesignDays.sunPositions(
                DesignDays.SunMethod.HANDBOOK,
                LocalDate.of(2025, site.latitudeRadians() < 0 ? 6 : 12, 21),
                site.zone().getTotalSeconds(),
                site.latitudeRadians(),
                site.longitudeRadians(),
                site.elevationMetres(),
                altitude,
                azimuth);
        this.hours =
                new OutdoorHours(
                        true,
                        0,
                        filled(dryBulb),
                        filled(humidityRatio),
                        filled(wind),
                        altitude,
                        azimuth,
                        new double[24],
                        new double[24],
                        site.pascals(),
                        site.groundKelvins().orElse(Double.NaN),
                        site.reflectance());
    }

    private static double[] filled(double value) {
        double[] values = new double[24];
        Arrays.fill(values, value);
        return values;
    }

    /**
     * A heating design day with 80 percent relative humidity (common practice, no source) and a
     * wind of 6.7 m/s (Fundamentals 2021, ch. 17).
     *
     * @param site where
     * @param dryBulb design dry bulb, in [-70, 30] C; the handbook's residential choice is the 99
     *     percent value
     * @return the day
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public static HeatingDesignDay of(Site site, Quantity<Temperature> dryBulb) {
        Objects.requireNonNull(site, "site");
        double t = Si.kelvins(dryBulb, "design dry bulb");
        Range.require("design dry bulb", t, 203.15, 303.15, "K");
        return new HeatingDesignDay(site, t, 0.8, USUAL_WIND);
    }

    /**
     * The same day with another station wind.
     *
     * @param value in [0, 60] m/s
     * @return a new day
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public HeatingDesignDay withWind(Quantity<Speed> value) {
        double v = Si.metresPerSecond(value, "wind speed");
        Range.require("wind speed", v, 0, 60, "m/s");
        return new HeatingDesignDay(site, dryBulb, relativeHumidity, v);
    }

    /**
     * The same day with another relative humidity outdoors.
     *
     * @param value in [0, 1]
     * @return a new day
     * @throws IllegalArgumentException if the value is not finite or outside its range
     */
    public HeatingDesignDay withRelativeHumidity(Quantity<Dimensionless> value) {
        double phi = Si.ratio(value, "relative humidity");
        Range.require("relative humidity", phi, 0, 1, "-");
        return new HeatingDesignDay(site, dryBulb, phi, wind);
    }

    /**
     * The same conditions at another site.
     *
     * @param value where
     * @return a new day
     */
    public HeatingDesignDay withSite(Site value) {
        return new HeatingDesignDay(
                Objects.requireNonNull(value, "site"), dryBulb, relativeHumidity, wind);
    }

    /**
     * Where the day belongs.
     *
     * @return site
     */
    public Site site() {
        return site;
    }

    /**
     * Design dry bulb.
     *
     * @return dry bulb
     */
    public Quantity<Temperature> dryBulb() {
        return Units.kelvins(dryBulb);
    }

    /**
     * Station wind.
     *
     * @return wind speed
     */
    public Quantity<Speed> wind() {
        return Units.metresPerSecond(wind);
    }

    /**
     * Outdoor humidity ratio.
     *
     * @return humidity ratio
     */
    public Quantity<HumidityRatio> humidityRatio() {
        return Units.kilogramsPerKilogram(humidityRatio);
    }

    /**
     * Dry bulb for kernel calls.
     *
     * @return K
     */
    public double kelvins() {
        return dryBulb;
    }

    /**
     * Humidity ratio for kernel calls.
     *
     * @return kg/kg
     */
    public double kilogramsPerKilogram() {
        return humidityRatio;
    }

    /**
     * Wind speed for kernel calls.
     *
     * @return m/s
     */
    public double metresPerSecond() {
        return wind;
    }

    /**
     * Station pressure for kernel calls.
     *
     * @return Pa
     */
    public double pascals() {
        return site.pascals();
    }

    /**
     * Undisturbed ground temperature for kernel calls.
     *
     * @return K
     * @throws IllegalStateException if the site does not have one
     */
    public double groundKelvins() {
        return hours.groundTemperature();
    }

    /**
     * The condition as 24 equal dark hours, so that one method serves cooling and heating.
     *
     * @return 24 repeating hours without sun
     */
    public OutdoorHours outdoorHours() {
        return hours;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "heating design day at %s, %.1f °C (%.1f °F)",
                site,
                dryBulb - 273.15,
                dryBulb * 1.8 - 459.67);
    }
}
