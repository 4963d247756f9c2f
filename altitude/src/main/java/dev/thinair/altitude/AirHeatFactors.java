package dev.thinair.altitude;

import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.altitude.kernel.AirFactors;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.AirLatentFactor;
import dev.thinair.units.AirSensibleFactor;
import dev.thinair.units.AirTotalFactor;
import dev.thinair.units.Density;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificEnthalpy;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/**
 * Heat per volume of air at its density: the trade's 1.08, 4840 (0.68 per grain) and 4.5 as they
 * are at sea level and as they become at elevation (0.83, 3700 and 3.5 at 7200 ft), derived from
 * the air's own density.
 *
 * <p>Factors are given in the unit system of their {@link HeatConstants}: W per L/s or BTU/h per
 * cfm. The volume is the actual one at the state the density belongs to. Immutable.
 */
public final class AirHeatFactors {

    private static final String METHOD =
            "ASHRAE Handbook - Fundamentals 2021 (SI), ch. 18, sec. 3.1 (method)";

    private final double dryAirDensity;
    private final double humidityRatio;
    private final HeatConstants constants;

    private AirHeatFactors(double dryAirDensity, double humidityRatio, HeatConstants constants) {
        this.dryAirDensity = dryAirDensity;
        this.humidityRatio = humidityRatio;
        this.constants = Objects.requireNonNull(constants, "constants is null");
    }

    /**
     * Factors of moist air at its state, with the SI handbook's constants.
     *
     * @param air the air whose volume flow is counted
     * @return the factors
     * @throws NullPointerException if air is null
     */
    public static AirHeatFactors of(MoistAir air) {
        return of(air, HeatConstants.SI_HANDBOOK);
    }

    /**
     * Factors of moist air at its state.
     *
     * @param air the air whose volume flow is counted
     * @param constants specific heats and latent heat
     * @return the factors
     * @throws NullPointerException if an argument is null
     */
    public static AirHeatFactors of(MoistAir air, HeatConstants constants) {
        double volume = Si.cubicMetresPerKilogram(air.specificVolume(), "specific volume");
        return new AirHeatFactors(1.0 / volume, air.humidityRatioNumber(), constants);
    }

    /**
     * Factors at a density.
     *
     * @param dryAirDensity dry air per volume of moist air, above zero
     * @param humidityRatio water vapour per dry air, in [0, 10]
     * @param constants specific heats and latent heat
     * @return the factors
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static AirHeatFactors of(
            Quantity<Density> dryAirDensity,
            Quantity<HumidityRatio> humidityRatio,
            HeatConstants constants) {
        double rho = Si.kilogramsPerCubicMetre(dryAirDensity, "density of dry air");
        double w = Si.humidityRatio(humidityRatio, "humidity ratio");
        Range.requireAbove("density of dry air", rho, 0, "kg/m3");
        Range.require("humidity ratio", w, 0, 10, "kg/kg");
        return new AirHeatFactors(rho, w, constants);
    }

    /**
     * The trade's sea-level factors: dry standard air of 0.075 lb/ft3, inch-pound constants.
     *
     * @return factors of 1.08, 4775 and 4.5
     */
    public static AirHeatFactors standardInchPound() {
        return new AirHeatFactors(
                AirDensity.STANDARD_INCH_POUND, 0.0, HeatConstants.INCH_POUND_HANDBOOK);
    }

    /**
     * The SI handbook's sea-level factors: dry standard air of 1.20 kg/m3.
     *
     * @return factors of 1.21 W/(L/s K), 3001 W/(L/s) and 1.20
     */
    public static AirHeatFactors standardSi() {
        return new AirHeatFactors(AirDensity.STANDARD_SI, 0.0, HeatConstants.SI_HANDBOOK);
    }

    /**
     * Dry air per volume of moist air.
     *
     * @return the density that the factors rest on
     */
    public Quantity<Density> dryAirDensity() {
        return Units.kilogramsPerCubicMetre(dryAirDensity);
    }

    private double sensibleSi() {
        return AirFactors.sensible(
                dryAirDensity,
                humidityRatio,
                constants.specificHeatAir(),
                constants.specificHeatVapor());
    }

    private double latentSi() {
        return AirFactors.latent(dryAirDensity, constants.latentHeat());
    }

    private double totalSi() {
        return AirFactors.total(dryAirDensity);
    }

    /**
     * Sensible factor.
     *
     * @return in W/(L/s K) or BTU/(h cfm F), by the constants' system
     */
    public Quantity<AirSensibleFactor> sensible() {
        double c = sensibleSi();
        return constants.inchPound()
                ? Units.btuPerHourCfmFahrenheit(AirFactors.sensibleInchPound(c))
                : Units.wattsPerLitrePerSecondKelvin(c / 1000);
    }

    /**
     * Latent factor.
     *
     * @return in W/(L/s) per kg/kg or BTU/(h cfm) per lb/lb, by the constants' system
     */
    public Quantity<AirLatentFactor> latent() {
        double c = latentSi();
        return constants.inchPound()
                ? Units.btuPerHourCfm(AirFactors.latentInchPound(c))
                : Units.wattsPerLitrePerSecond(c / 1000);
    }

    /**
     * Total factor.
     *
     * @return in W/(L/s kJ/kg) or BTU/(h cfm BTU/lb), by the constants' system
     */
    public Quantity<AirTotalFactor> total() {
        double c = totalSi();
        return constants.inchPound()
                ? Units.btuPerHourCfmBtuPerPound(AirFactors.totalInchPound(c))
                : Units.wattsPerLitrePerSecondKilojoulePerKilogram(c);
    }

    /**
     * Sensible heat that an airflow carries.
     *
     * @param airflow actual volume flow at this density
     * @param difference temperature difference
     * @return heat flow in W
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Quantity<Power> sensibleHeat(
            Quantity<VolumeFlow> airflow, Quantity<TemperatureDifference> difference) {
        return Units.watts(
                AirFactors.heat(
                        sensibleSi(),
                        Si.cubicMetresPerSecond(airflow, "airflow"),
                        Si.kelvinDifference(difference, "temperature difference")));
    }

    /**
     * Latent heat that an airflow carries.
     *
     * @param airflow actual volume flow at this density
     * @param difference difference of humidity ratio
     * @return heat flow in W
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Quantity<Power> latentHeat(
            Quantity<VolumeFlow> airflow, Quantity<HumidityRatio> difference) {
        return Units.watts(
                AirFactors.heat(
                        latentSi(),
                        Si.cubicMetresPerSecond(airflow, "airflow"),
                        Si.humidityRatio(difference, "difference of humidity ratio")));
    }

    /**
     * Total heat that an airflow carries.
     *
     * @param airflow actual volume flow at this density
     * @param difference difference of specific enthalpy, from one datum
     * @return heat flow in W
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public Quantity<Power> totalHeat(
            Quantity<VolumeFlow> airflow, Quantity<SpecificEnthalpy> difference) {
        return Units.watts(
                AirFactors.heat(
                        totalSi(),
                        Si.cubicMetresPerSecond(airflow, "airflow"),
                        Si.joulesPerKilogram(difference, "difference of specific enthalpy")));
    }

    /**
     * Airflow that carries a sensible heat.
     *
     * @param heat heat flow, of the sign of the difference
     * @param difference temperature difference, not zero
     * @return actual volume flow at this density, m3/s
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the difference is zero or of the other sign
     */
    public Quantity<VolumeFlow> airflowForSensibleHeat(
            Quantity<Power> heat, Quantity<TemperatureDifference> difference) {
        return Units.cubicMetresPerSecond(
                AirFactors.airflow(
                        Si.watts(heat, "sensible heat"),
                        sensibleSi(),
                        Si.kelvinDifference(difference, "temperature difference")));
    }

    /**
     * The steps behind the sensible factor; the last is {@link #sensible}.
     *
     * @return the working
     */
    public Working sensibleWorking() {
        Working.Builder builder =
                start("Air sensible heat factor")
                        .given("W", "humidity ratio", Units.kilogramsPerKilogram(humidityRatio))
                        .given(
                                "c_a",
                                "specific heat of dry air",
                                Units.joulesPerKilogramKelvin(constants.specificHeatAir()),
                                constants.source())
                        .given(
                                "c_v",
                                "specific heat of water vapour",
                                Units.joulesPerKilogramKelvin(constants.specificHeatVapor()),
                                constants.source())
                        .step(
                                "heat per volume and kelvin",
                                "C = rho (c_a + c_v W)",
                                Units.joulesPerCubicMetreKelvin(sensibleSi()),
                                METHOD);
        return (constants.inchPound()
                        ? builder.step(
                                "sensible factor",
                                "C_s = C 60 0.028316846592 / (1.8 1055.05585262)",
                                sensible(),
                                "units, NIST SP 811")
                        : builder.step("sensible factor", "C_s = C / 1000", sensible(), "units"))
                .build();
    }

    /**
     * The steps behind the latent factor; the last is {@link #latent}.
     *
     * @return the working
     */
    public Working latentWorking() {
        Working.Builder builder =
                start("Air latent heat factor")
                        .given(
                                "h_fg",
                                "latent heat",
                                Units.joulesPerKilogram(constants.latentHeat()),
                                constants.source())
                        .step(
                                "heat per volume and humidity ratio",
                                "C = rho h_fg",
                                Units.joulesPerCubicMetre(latentSi()),
                                METHOD);
        return (constants.inchPound()
                        ? builder.step(
                                "latent factor",
                                "C_l = C 60 0.028316846592 / 1055.05585262",
                                latent(),
                                "units, NIST SP 811")
                        : builder.step("latent factor", "C_l = C / 1000", latent(), "units"))
                .build();
    }

    /**
     * The steps behind the total factor; the last is {@link #total}.
     *
     * @return the working
     */
    public Working totalWorking() {
        Working.Builder builder = start("Air total heat factor");
        return (constants.inchPound()
                        ? builder.step(
                                "total factor",
                                "C_t = rho 60 0.028316846592 / 0.45359237",
                                total(),
                                METHOD + "; units, NIST SP 811")
                        : builder.step("total factor", "C_t = rho", total(), METHOD))
                .build();
    }

    private Working.Builder start(String title) {
        return Working.titled(title)
                .given("rho", "dry air per volume of moist air", dryAirDensity());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AirHeatFactors that
                && Double.compare(dryAirDensity, that.dryAirDensity) == 0
                && Double.compare(humidityRatio, that.humidityRatio) == 0
                && constants == that.constants;
    }

    @Override
    public int hashCode() {
        return Objects.hash(dryAirDensity, humidityRatio, constants);
    }

    @Override
    public String toString() {
        return "air-side factors: sensible "
                + QuantityText.formatBoth(sensible(), 4)
                + ", latent "
                + QuantityText.formatBoth(latent(), 4)
                + ", total "
                + QuantityText.formatBoth(total(), 4);
    }
}
