package dev.thinair.cycling;

import dev.thinair.cycling.kernel.HeatPumpModel;
import dev.thinair.cycling.kernel.RatingBins;
import dev.thinair.cycling.kernel.SeasonalRatings;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * An air-source heat pump in heating, from its rating points at 47, 35 and 17 &deg;F. Immutable.
 *
 * @see HeatPumpModel for the effect of thin air
 */
public final class HeatPump {

    private static final double REGION_IV_OUTDOOR = (5 + 459.67) / 1.8;
    private static final double REGION_IV_ZERO_LOAD = (55 + 459.67) / 1.8;
    private static final double NEVER = 150;

    private final String name;
    private final double capacity47;
    private final double power47;
    private final double capacity35;
    private final double power35;
    private final double capacity17;
    private final double power17;

    private HeatPump(
            String name,
            double capacity47,
            double power47,
            double capacity35,
            double power35,
            double capacity17,
            double power17) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("heat pump name is missing");
        }
        check("47 degF", capacity47, power47);
        check("35 degF", capacity35, power35);
        check("17 degF", capacity17, power17);
        if (!(capacity17 < capacity47)) {
            throw new IllegalArgumentException(
                    "heating capacity at 17 degF is "
                            + capacity17
                            + " W, but must be below that at 47 degF, "
                            + capacity47
                            + " W");
        }
        this.name = name;
        this.capacity47 = capacity47;
        this.power47 = power47;
        this.capacity35 = capacity35;
        this.power35 = power35;
        this.capacity17 = capacity17;
        this.power17 = power17;
    }

    private static void check(String where, double capacity, double power) {
        Range.require("heating capacity at " + where, capacity, 500, 200_000, "W");
        Range.require("heating power at " + where, power, 100, 100_000, "W");
    }

    /**
     * From the points at 47 and 17 &deg;F; the point at 35 &deg;F by the rating procedure's
     * default.
     *
     * @param name free text
     * @param capacity47 capacity at 47 &deg;F
     * @param power47 power at 47 &deg;F
     * @param capacity17 capacity at 17 &deg;F, below that at 47 &deg;F
     * @param power17 power at 17 &deg;F
     * @return the heat pump
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static HeatPump of(
            String name,
            Quantity<Power> capacity47,
            Quantity<Power> power47,
            Quantity<Power> capacity17,
            Quantity<Power> power17) {
        double c47 = Si.watts(capacity47, "heating capacity at 47 degF");
        double p47 = Si.watts(power47, "heating power at 47 degF");
        double c17 = Si.watts(capacity17, "heating capacity at 17 degF");
        double p17 = Si.watts(power17, "heating power at 17 degF");
        return new HeatPump(
                name,
                c47,
                p47,
                HeatPumpModel.defaultCapacity35(c47, c17),
                HeatPumpModel.defaultPower35(p47, p17),
                c17,
                p17);
    }

    /**
     * From all three points.
     *
     * @param name free text
     * @param capacity47 capacity at 47 &deg;F
     * @param power47 power at 47 &deg;F
     * @param capacity35 capacity at 35 &deg;F, defrost counted
     * @param power35 power at 35 &deg;F
     * @param capacity17 capacity at 17 &deg;F, below that at 47 &deg;F
     * @param power17 power at 17 &deg;F
     * @return the heat pump
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static HeatPump of(
            String name,
            Quantity<Power> capacity47,
            Quantity<Power> power47,
            Quantity<Power> capacity35,
            Quantity<Power> power35,
            Quantity<Power> capacity17,
            Quantity<Power> power17) {
        return new HeatPump(
                name,
                Si.watts(capacity47, "heating capacity at 47 degF"),
                Si.watts(power47, "heating power at 47 degF"),
                Si.watts(capacity35, "heating capacity at 35 degF"),
                Si.watts(power35, "heating power at 35 degF"),
                Si.watts(capacity17, "heating capacity at 17 degF"),
                Si.watts(power17, "heating power at 17 degF"));
    }

    /**
     * The name.
     *
     * @return free text
     */
    public String name() {
        return name;
    }

    /**
     * Heating capacity.
     *
     * @param outdoor outdoor dry bulb, -50 to 30 &deg;C
     * @param pressure air pressure at the site, 50 to 110 kPa
     * @return capacity
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public Quantity<Power> capacity(Quantity<Temperature> outdoor, Quantity<Pressure> pressure) {
        return Units.watts(
                HeatPumpModel.value(
                        Si.kelvins(outdoor, "outdoor dry bulb"),
                        Si.pascals(pressure, "pressure"),
                        capacity47,
                        capacity35,
                        capacity17,
                        capacity47,
                        capacity35,
                        capacity17));
    }

    /**
     * Electric power in heating.
     *
     * @param outdoor outdoor dry bulb, -50 to 30 &deg;C
     * @param pressure air pressure at the site, 50 to 110 kPa
     * @return power
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public Quantity<Power> power(Quantity<Temperature> outdoor, Quantity<Pressure> pressure) {
        return Units.watts(
                HeatPumpModel.value(
                        Si.kelvins(outdoor, "outdoor dry bulb"),
                        Si.pascals(pressure, "pressure"),
                        power47,
                        power35,
                        power17,
                        capacity47,
                        capacity35,
                        capacity17));
    }

    /**
     * Coefficient of performance in heating.
     *
     * @param outdoor outdoor dry bulb, -50 to 30 &deg;C
     * @param pressure air pressure at the site, 50 to 110 kPa
     * @return heat over electricity
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public double coefficientOfPerformance(
            Quantity<Temperature> outdoor, Quantity<Pressure> pressure) {
        return Si.watts(capacity(outdoor, pressure), "capacity")
                / Si.watts(power(outdoor, pressure), "power");
    }

    /**
     * Seasonal heating rating by appendix M, climate region IV, never cut out.
     *
     * @param designRequirement design heating requirement
     * @param degradation degradation coefficient, in [0, 1]
     * @param bins heating bins, {@link RatingBins#HEATING_REGION_IV} or the user's own
     * @return heat over electricity, in Btu/(W h)
     * @throws IllegalArgumentException if something is missing or out of range
     * @see SeasonalRatings#heatingM
     */
    public Quantity<Dimensionless> heatingSeason(
            Quantity<Power> designRequirement, double degradation, RatingBins bins) {
        requireBins(bins);
        return Units.btuPerWattHour(
                Trade.BTU_PER_WATT_HOUR
                        * SeasonalRatings.heatingM(
                                capacity47,
                                power47,
                                capacity35,
                                power35,
                                capacity17,
                                power17,
                                degradation,
                                Si.watts(designRequirement, "design heating requirement"),
                                REGION_IV_OUTDOOR,
                                NEVER,
                                NEVER,
                                1,
                                bins));
    }

    /**
     * Seasonal heating rating by appendix M1, climate region IV, never cut out.
     *
     * @param coolingCapacity cooling capacity at 95 &deg;F
     * @param slopeFactor factor C of the load line; 1.15 for single and two stages, from memory
     * @param degradation degradation coefficient, in [0, 1]
     * @param bins heating bins, {@link RatingBins#HEATING_REGION_IV_M1} or the user's own
     * @return heat over electricity, in Btu/(W h)
     * @throws IllegalArgumentException if something is missing or out of range
     * @see SeasonalRatings#heatingM1
     */
    public Quantity<Dimensionless> heatingSeasonM1(
            Quantity<Power> coolingCapacity,
            double slopeFactor,
            double degradation,
            RatingBins bins) {
        requireBins(bins);
        return Units.btuPerWattHour(
                Trade.BTU_PER_WATT_HOUR
                        * SeasonalRatings.heatingM1(
                                capacity47,
                                power47,
                                capacity35,
                                power35,
                                capacity17,
                                power17,
                                degradation,
                                Si.watts(coolingCapacity, "cooling capacity"),
                                slopeFactor,
                                REGION_IV_ZERO_LOAD,
                                REGION_IV_OUTDOOR,
                                NEVER,
                                NEVER,
                                1,
                                bins));
    }

    private static void requireBins(RatingBins bins) {
        if (bins == null) {
            throw new IllegalArgumentException("bin table is missing");
        }
    }

    /**
     * For shells.
     *
     * @return name and the points at 47 and 17 &deg;F
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: %.0f W at 47 degF (COP %.2f), %.0f W at 17 degF (COP %.2f)",
                name,
                capacity47,
                capacity47 / power47,
                capacity17,
                capacity17 / power17);
    }
}
