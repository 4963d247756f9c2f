package dev.thinair.altitude;

import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Density;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * How dense the air is against a standard, with its basis named, because two ratios go by one name:
 * at 6000 ft the trade quotes 0.801 (constant temperature) and 0.836 (standard atmosphere).
 *
 * <p>Blowers, ducts and coils handle indoor air, whose temperature does not fall with elevation:
 * they want {@link #atConstantTemperature}. Immutable.
 */
public final class DensityRatio {

    /** What is compared with what. */
    public enum Basis {
        /**
         * Site against sea level at the same temperature and humidity ratio: the pressure ratio.
         */
        CONSTANT_TEMPERATURE("site over sea level at the same temperature"),
        /** Standard atmosphere at an altitude against that at sea level, which is warmer. */
        STANDARD_ATMOSPHERE("standard atmosphere over its own sea level"),
        /** Air at site pressure and a temperature against standard air, 0.075 lb/ft3 at 70 degF. */
        STANDARD_AIR("site pressure and temperature over standard air at 70 °F"),
        /** Moist air at the site against a stated density. */
        MOIST_AIR("moist air at the site over a standard density");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /**
         * The basis in words.
         *
         * @return a phrase for reports
         */
        public String words() {
            return words;
        }
    }

    private final Basis basis;
    private final double number;

    /** Pressure (Pa) or altitude (m), by basis. */
    private final double first;

    /** Temperature (K) or standard density (kg/m3), by basis. */
    private final double second;

    private final MoistAir air;

    private DensityRatio(Basis basis, double number, double first, double second, MoistAir air) {
        this.basis = basis;
        this.number = number;
        this.first = first;
        this.second = second;
        this.air = air;
    }

    /**
     * Site over sea level at the same air temperature and humidity ratio.
     *
     * @param site site pressure
     * @return the pressure ratio
     * @throws NullPointerException if site is null
     */
    public static DensityRatio atConstantTemperature(SitePressure site) {
        double p = site.pascals();
        return new DensityRatio(
                Basis.CONSTANT_TEMPERATURE,
                AirDensity.ratioAtConstantTemperature(p),
                p,
                Double.NaN,
                null);
    }

    /**
     * Standard atmosphere at an altitude over sea level.
     *
     * @param altitude geopotential altitude, in [-5000, 20000] m
     * @return the ratio
     * @throws NullPointerException if altitude is null
     * @throws IllegalArgumentException if altitude is out of range
     */
    public static DensityRatio ofStandardAtmosphere(Quantity<Length> altitude) {
        double h = Si.metres(altitude, "altitude");
        return new DensityRatio(
                Basis.STANDARD_ATMOSPHERE,
                AirDensity.ratioOfStandardAtmosphere(h),
                h,
                Double.NaN,
                null);
    }

    /**
     * Air at site pressure and a temperature over standard air at 70 degF: the fan maker's factor.
     *
     * @param site site pressure
     * @param temperature air temperature, in [173.15, 473.15] K
     * @return the ratio
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static DensityRatio toStandardAir(SitePressure site, Quantity<Temperature> temperature) {
        double t = Si.kelvins(temperature, "temperature");
        return new DensityRatio(
                Basis.STANDARD_AIR,
                AirDensity.ratioToStandardAir(site.pascals(), t),
                site.pascals(),
                t,
                null);
    }

    /**
     * Moist air at the site over the inch-pound trade's standard air, 0.075 lb/ft3.
     *
     * @param air the air
     * @return the ratio of its density (dry air and vapour together)
     * @throws NullPointerException if air is null
     */
    public static DensityRatio ofMoistAir(MoistAir air) {
        return ofMoistAir(air, Units.kilogramsPerCubicMetre(AirDensity.STANDARD_INCH_POUND));
    }

    /**
     * Moist air at the site over a standard density.
     *
     * @param air the air
     * @param standard the density to compare with, above zero
     * @return the ratio of its density (dry air and vapour together)
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the standard is not above zero
     */
    public static DensityRatio ofMoistAir(MoistAir air, Quantity<Density> standard) {
        double reference = Si.kilogramsPerCubicMetre(standard, "standard density");
        Range.requireAbove("standard density", reference, 0, "kg/m3");
        double density = Si.kilogramsPerCubicMetre(air.density(), "air density");
        return new DensityRatio(Basis.MOIST_AIR, density / reference, density, reference, air);
    }

    /**
     * What is compared with what.
     *
     * @return the basis
     */
    public Basis basis() {
        return basis;
    }

    /**
     * The ratio.
     *
     * @return a number
     */
    public Quantity<Dimensionless> value() {
        return Units.ratio(number);
    }

    /**
     * The same number for kernel calls.
     *
     * @return the ratio
     */
    public double number() {
        return number;
    }

    /**
     * The steps behind the ratio; the last is {@link #value}.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder builder = Working.titled("Density ratio: " + basis.words);
        switch (basis) {
            case CONSTANT_TEMPERATURE ->
                    builder.given("p", "site pressure", Units.pascals(first))
                            .step("density ratio", "r = p / 101325", value(), "ideal gas law");
            case STANDARD_ATMOSPHERE -> {
                String source = "U.S. Standard Atmosphere, 1976";
                builder.given("H", "altitude (geopotential)", Units.metres(first))
                        .stepInWords(
                                "p",
                                "pressure",
                                "standard atmosphere",
                                List.of("H"),
                                Units.pascals(StandardAtmosphere.pressure(first)),
                                source)
                        .stepInWords(
                                "T",
                                "temperature",
                                "standard atmosphere",
                                List.of("H"),
                                Units.kelvins(StandardAtmosphere.temperature(first)),
                                source)
                        .step(
                                "density ratio",
                                "r = p / 101325 288.15 / T",
                                value(),
                                "ideal gas law");
            }
            case STANDARD_AIR ->
                    builder.given("p", "site pressure", Units.pascals(first))
                            .given("T", "air temperature", Units.kelvins(second))
                            .given(
                                    "T_0",
                                    "temperature of standard air, 70 °F",
                                    Units.kelvins(AirDensity.STANDARD_TEMPERATURE),
                                    "standard air of the inch-pound trade")
                            .step(
                                    "density ratio",
                                    "r = p / 101325 (T_0 / T)",
                                    value(),
                                    "ideal gas law");
            case MOIST_AIR ->
                    builder.given("rho", "density of " + air, Units.kilogramsPerCubicMetre(first))
                            .given(
                                    "rho_0",
                                    "standard density",
                                    Units.kilogramsPerCubicMetre(second))
                            .step("density ratio", "r = rho / rho_0", value(), "by definition");
        }
        return builder.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DensityRatio that
                && basis == that.basis
                && Double.compare(number, that.number) == 0
                && Double.compare(first, that.first) == 0
                && Double.compare(second, that.second) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * basis.hashCode() + Double.hashCode(number);
    }

    @Override
    public String toString() {
        return "density ratio " + QuantityText.number(number, 4) + " (" + basis.words + ")";
    }
}
