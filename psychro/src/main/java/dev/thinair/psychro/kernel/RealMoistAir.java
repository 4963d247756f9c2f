package dev.thinair.psychro.kernel;

import dev.thinair.units.Range;

/**
 * Moist air as a real mixture: the explicit alternative to {@link IdealMoistAir}, closer to
 * measurement and about ten times slower.
 *
 * <p>Formulas, <var>x</var> mole fractions, <var>B</var> second virial coefficients:
 *
 * <ul>
 *   <li>saturation: <var>p</var><sub>w</sub> = <var>f</var>(<var>T</var>, <var>p</var>)
 *       <var>e</var>(<var>T</var>) with {@link EnhancementFactor} and {@link IapwsSaturation};
 *   <li>relative humidity: <var>x</var><sub>w</sub> / <var>x</var><sub>ws</sub>, the mole-fraction
 *       ratio; where <var>e</var> is above <var>p</var>, vapor pressure over <var>e</var>;
 *   <li>volume: <var>v</var> = (1 + 1.607858 <var>W</var>) (287.042 <var>T</var>/<var>p</var> +
 *       <var>B</var><sub>m</sub>/<var>M</var><sub>da</sub>), <var>B</var><sub>m</sub> =
 *       <var>x</var><sub>a</sub><sup>2</sup> <var>B</var><sub>aa</sub> + 2 <var>x</var><sub>a</sub>
 *       <var>x</var><sub>w</sub> <var>B</var><sub>aw</sub> + <var>x</var><sub>w</sub><sup>2</sup>
 *       <var>B</var><sub>ww</sub>;
 *   <li>enthalpy: ideal-gas enthalpies of dry air and vapor plus (<var>B</var><sub>m</sub> -
 *       <var>T</var> d<var>B</var><sub>m</sub>/d<var>T</var>) <var>p</var> per mole; zero for dry
 *       air at 0 degC and 101.325 kPa and for liquid water at the triple point;
 *   <li>dew point and wet bulb from the same saturation; the wet bulb from the full balance
 *       <var>h</var> + (<var>W</var><sub>s</sub>* - <var>W</var>) <var>h</var><sub>w</sub>* =
 *       <var>h</var><sub>s</sub>*, liquid and ice by the rule of {@link WetBulb}.
 * </ul>
 *
 * <p>Accuracy, against published RP-1485 tables and IAPWS G8-10 computations at 54 to 101 kPa:
 * saturation humidity ratio within 0.025 % from -60 to 60 degC (0.045 % at 90 degC), specific
 * volume within 7e-5 relative, enthalpy of saturated air within 0.06 kJ/kg up to 60 degC (1.2 of
 * 3870 kJ/kg at 90 degC), dry air up to 200 degC within 0.01 kJ/kg. Where the saturation pressure
 * is above 0.9 of the air pressure it is an extrapolation.
 *
 * <p>Sources: see {@link EnhancementFactor}; ideal-gas heat capacities, own fits (0.02 J/(kg K) dry
 * air, 0.11 J/(kg K) vapor, 172 to 474 K) to the equations of Lemmon et al., Journal of Physical
 * and Chemical Reference Data 29 (2000) 331 (with the molar mass and gas constant of G8-10) and of
 * IAPWS-95, both coefficients from memory; enthalpy of liquid and ice, own fits within 0.05 kJ/kg
 * to ASHRAE Handbook - Fundamentals 2021 (SI), chapter 1, table 3.
 */
public final class RealMoistAir {

    private static final double MASS_RATIO = IdealMoistAir.MASS_RATIO;
    private static final double INVERSE_MASS_RATIO = 1.607858;
    private static final double MOLAR_MASS_DRY_AIR = 28.966e-3; // kg/mol, Fundamentals 2021 ch. 1
    private static final double STANDARD_PRESSURE = 101_325;

    /** Puts liquid water at the triple point at zero through the vapor saturated there. */
    private static final double VAPOR_AT_0 = 2_501_374.91;

    private static final double DRY_AIR_AT_0 = -departure(Domain.ICE_POINT, 0, STANDARD_PRESSURE);

    private static final double HIGHEST_VAPOR_SHARE =
            Domain.HIGHEST_HUMIDITY_RATIO / (MASS_RATIO + Domain.HIGHEST_HUMIDITY_RATIO);

    private static final int MOST_PASSES = 60;

    /** How far outside the domain a search for the dry bulb may pass, K. */
    private static final double MARGIN = 20;

    private RealMoistAir() {}

    /**
     * Humidity ratio of saturated air: <var>W</var><sub>s</sub> = 0.621945 <var>f e</var> /
     * (<var>p</var> - <var>f e</var>).
     *
     * @param temperature dry bulb of the saturated air, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return saturation humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if no
     *     humidity ratio up to 10 kg/kg saturates the air
     */
    public static double saturationHumidityRatio(double temperature, double pressure) {
        return IdealMoistAir.humidityRatioFromVaporPressure(
                saturationVaporPressure(temperature, pressure), pressure);
    }

    /**
     * Vapor pressure in saturated air, <var>f e</var>.
     *
     * @param temperature dry bulb of the saturated air, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return vapor pressure (mole fraction times air pressure), Pa; above the air pressure where
     *     no saturated mixture exists
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double saturationVaporPressure(double temperature, double pressure) {
        Domain.dryBulb(temperature);
        Domain.pressure(pressure);
        return saturation(temperature, pressure, temperature >= Domain.ICE_POINT);
    }

    private static double saturation(double temperature, double pressure, boolean liquid) {
        return EnhancementFactor.value(temperature, pressure, liquid)
                * EnhancementFactor.purePressure(temperature, liquid);
    }

    /**
     * Humidity ratio from relative humidity, the mole-fraction ratio.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param relativeHumidity relative humidity, in [0, 1]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the vapor
     *     pressure leaves no room for a humidity ratio up to 10 kg/kg
     */
    public static double humidityRatioFromRelativeHumidity(
            double dryBulb, double relativeHumidity, double pressure) {
        Range.require("relative humidity", relativeHumidity, 0, 1, "(ratio)");
        return IdealMoistAir.humidityRatioFromVaporPressure(
                relativeHumidity * saturationVaporPressure(dryBulb, pressure), pressure);
    }

    /**
     * Relative humidity, the mole-fraction ratio; above 1 the mixture is supersaturated (fog).
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return relative humidity, 0 or more
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double relativeHumidity(double dryBulb, double humidityRatio, double pressure) {
        return IdealMoistAir.vaporPressure(humidityRatio, pressure)
                / saturationVaporPressure(dryBulb, pressure);
    }

    /**
     * Degree of saturation, <var>W</var>/<var>W</var><sub>s</sub>.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return degree of saturation, 0 or more
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if no
     *     saturated state exists at this dry bulb and pressure
     */
    public static double degreeOfSaturation(double dryBulb, double humidityRatio, double pressure) {
        Domain.humidityRatio(humidityRatio);
        return humidityRatio / saturationHumidityRatio(dryBulb, pressure);
    }

    /**
     * Specific volume.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return volume of the mixture per mass of dry air, m3/kg
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double specificVolume(double dryBulb, double humidityRatio, double pressure) {
        check(dryBulb, humidityRatio, pressure);
        double xWater = humidityRatio / (MASS_RATIO + humidityRatio);
        double xAir = 1 - xWater;
        double virial =
                xAir * xAir * SecondVirial.air(dryBulb)
                        + 2 * xAir * xWater * SecondVirial.cross(dryBulb)
                        + xWater * xWater * SecondVirial.vapor(dryBulb);
        return (1 + INVERSE_MASS_RATIO * humidityRatio)
                * (IdealMoistAir.GAS_CONSTANT_DRY_AIR * dryBulb / pressure
                        + virial / MOLAR_MASS_DRY_AIR);
    }

    /**
     * Density, the mixture's whole mass per volume.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return density, kg/m3
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double density(double dryBulb, double humidityRatio, double pressure) {
        return (1 + humidityRatio) / specificVolume(dryBulb, humidityRatio, pressure);
    }

    /**
     * Specific enthalpy. Unlike the ideal mixture's it depends on the pressure, by about 0.1 kJ/kg
     * between sea level and 5000 m.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return specific enthalpy, J/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double enthalpy(double dryBulb, double humidityRatio, double pressure) {
        check(dryBulb, humidityRatio, pressure);
        return enthalpyUnchecked(dryBulb, humidityRatio, pressure);
    }

    private static double enthalpyUnchecked(double dryBulb, double ratio, double pressure) {
        double t = dryBulb - Domain.ICE_POINT;
        double dry =
                DRY_AIR_AT_0
                        + t
                                * (1003.668426582955
                                        + t
                                                * (0.03308557660011835 / 2
                                                        + t
                                                                * (0.00027626705968541825 / 3
                                                                        + t
                                                                                * (6.927489631756482e-07
                                                                                                / 4
                                                                                        + t
                                                                                                * (-1.5409289525854048e-09
                                                                                                        / 5)))));
        double vapor =
                VAPOR_AT_0
                        + t
                                * (1859.1318277950588
                                        + t
                                                * (0.1845558914800874 / 2
                                                        + t
                                                                * (0.0011679123064273543 / 3
                                                                        + t
                                                                                * (1.246938372640588e-06
                                                                                                / 4
                                                                                        + t
                                                                                                * (-8.008323951729055e-09
                                                                                                        / 5)))));
        return dry + ratio * vapor + departure(dryBulb, ratio, pressure);
    }

    /** What attraction between molecules takes from the enthalpy, J/kg of dry air. */
    private static double departure(double t, double ratio, double pressure) {
        double xWater = ratio / (MASS_RATIO + ratio);
        double xAir = 1 - xWater;
        double virial =
                xAir * xAir * SecondVirial.airEnthalpy(t)
                        + 2 * xAir * xWater * SecondVirial.crossEnthalpy(t)
                        + xWater * xWater * SecondVirial.vaporEnthalpy(t);
        return (1 + INVERSE_MASS_RATIO * ratio) * virial * pressure / MOLAR_MASS_DRY_AIR;
    }

    /**
     * Dry bulb from enthalpy and humidity ratio.
     *
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return dry bulb, K
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the dry
     *     bulb falls outside [173.15, 473.15] K
     * @throws ArithmeticException if the iteration does not converge (not seen)
     */
    public static double dryBulbFromEnthalpy(
            double enthalpy, double humidityRatio, double pressure) {
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
        if (!(Math.abs(enthalpy) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "specific enthalpy is " + enthalpy + " J/kg, but must be finite");
        }
        double heatCapacity = IdealMoistAir.specificHeat(humidityRatio);
        double t = Domain.ICE_POINT + (enthalpy - VAPOR_AT_0 * humidityRatio) / heatCapacity;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            // Outside the domain the virial fits run wild; a root in it is not there.
            Range.require(
                    "dry bulb from enthalpy and humidity ratio",
                    t,
                    Domain.LOWEST_TEMPERATURE - MARGIN,
                    Domain.HIGHEST_TEMPERATURE + MARGIN,
                    "K");
            double step = (enthalpy - enthalpyUnchecked(t, humidityRatio, pressure)) / heatCapacity;
            t += step;
            if (Math.abs(step) < 1e-11) {
                return Domain.dryBulbFound(t);
            }
        }
        throw new ArithmeticException(
                "dry bulb from an enthalpy of "
                        + enthalpy
                        + " J/kg and a humidity ratio of "
                        + humidityRatio
                        + " kg/kg did not converge; last "
                        + t
                        + " K");
    }

    /**
     * Humidity ratio from dry bulb and enthalpy.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param enthalpy specific enthalpy, J/kg of dry air
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the pair
     *     implies a humidity ratio below 0, above saturation or above 10 kg/kg
     * @throws ArithmeticException if the iteration does not converge (not seen)
     */
    public static double humidityRatioFromEnthalpy(
            double dryBulb, double enthalpy, double pressure) {
        check(dryBulb, 0, pressure);
        double vapor = saturationVaporPressure(dryBulb, pressure);
        double most =
                vapor < HIGHEST_VAPOR_SHARE * pressure
                        ? MASS_RATIO * vapor / (pressure - vapor)
                        : Domain.HIGHEST_HUMIDITY_RATIO;
        double highest = enthalpyUnchecked(dryBulb, most, pressure);
        Range.require(
                "specific enthalpy at this dry bulb",
                enthalpy,
                enthalpyUnchecked(dryBulb, 0, pressure),
                highest + 1e-9 * Math.abs(highest),
                "J/kg");
        return ratioAtEnthalpy(dryBulb, enthalpy, 0, pressure);
    }

    /** Solves h(T, W, p) - W water = balance for W. */
    private static double ratioAtEnthalpy(
            double dryBulb, double balance, double water, double pressure) {
        double perRatio = 2_501_000 + 1860 * (dryBulb - Domain.ICE_POINT) - water;
        double ratio = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double step =
                    (balance - (enthalpyUnchecked(dryBulb, ratio, pressure) - ratio * water))
                            / perRatio;
            ratio += step;
            if (Math.abs(step) <= 1e-15 * (1 + Math.abs(ratio))) {
                return ratio;
            }
        }
        throw new ArithmeticException(
                "humidity ratio from an enthalpy of "
                        + balance
                        + " J/kg at "
                        + dryBulb
                        + " K did not converge; last "
                        + ratio
                        + " kg/kg");
    }

    /**
     * Dew point (frost point below 0 degC): the temperature at which <var>f e</var> equals the
     * vapor pressure.
     *
     * @param humidityRatio humidity ratio, kg/kg, in (0, 10]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return dew point, K, in [173.15, 473.15]; 273.15 for the few states between the ice and the
     *     liquid curve at 0 degC
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     too dry to have a dew point of 173.15 K or more
     */
    public static double dewPoint(double humidityRatio, double pressure) {
        double vapor = IdealMoistAir.vaporPressure(humidityRatio, pressure);
        double lowest = lowestVaporPressure(pressure);
        Range.require("vapor pressure", vapor, lowest, pressure, "Pa");
        if (vapor >= saturation(Domain.ICE_POINT, pressure, true)) {
            double t = Domain.ICE_POINT;
            for (int pass = 0; pass < MOST_PASSES; pass++) {
                double pure = vapor / EnhancementFactor.value(t, pressure, true);
                double next =
                        Math.max(
                                IapwsSaturation.liquidTemperature(
                                        Math.max(pure, IapwsSaturation.LOWEST_PRESSURE)),
                                Domain.ICE_POINT);
                if (Math.abs(next - t) < 1e-11) {
                    return next;
                }
                t = next;
            }
            throw notConverged("dew point", humidityRatio, pressure);
        }
        if (vapor <= saturation(Domain.ICE_POINT, pressure, false)) {
            double log = Math.log(vapor);
            double t = Saturation.temperature(Math.max(vapor, Saturation.ICE_AT_LOWEST));
            for (int pass = 0; pass < MOST_PASSES; pass++) {
                double step =
                        (log - Math.log(saturation(t, pressure, false)))
                                / IapwsSaturation.iceLogSlope(t);
                t += step;
                if (Math.abs(step) < 1e-11) {
                    return Math.min(Math.max(t, Domain.LOWEST_TEMPERATURE), Domain.ICE_POINT);
                }
            }
            throw notConverged("frost point", humidityRatio, pressure);
        }
        return Domain.ICE_POINT;
    }

    /** Lowest vapor pressure with a frost point in range, a rounding below the curve's end. */
    static double lowestVaporPressure(double pressure) {
        return saturation(Domain.LOWEST_TEMPERATURE, pressure, false) * (1 - 1e-13);
    }

    private static ArithmeticException notConverged(
            String what, double humidityRatio, double pressure) {
        return new ArithmeticException(
                what
                        + " at a humidity ratio of "
                        + humidityRatio
                        + " kg/kg and "
                        + pressure
                        + " Pa did not converge in "
                        + MOST_PASSES
                        + " passes");
    }

    /**
     * Humidity ratio from dew point: saturation at that temperature.
     *
     * @param dewPoint dew or frost point, K, in [173.15, 473.15]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg of dry air
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the vapor
     *     pressure leaves no room for a humidity ratio up to 10 kg/kg
     */
    public static double humidityRatioFromDewPoint(double dewPoint, double pressure) {
        Range.require(
                "dew point", dewPoint, Domain.LOWEST_TEMPERATURE, Domain.HIGHEST_TEMPERATURE, "K");
        return saturationHumidityRatio(dewPoint, pressure);
    }

    /**
     * Thermodynamic wet bulb from the full balance with real enthalpies. The root is found to 1e-10
     * K.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param humidityRatio humidity ratio, kg/kg, in [0, 10], not above saturation
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return thermodynamic wet bulb, K, at most the dry bulb
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the air is
     *     supersaturated
     * @throws ArithmeticException if the root search does not converge (not seen)
     */
    public static double wetBulb(double dryBulb, double humidityRatio, double pressure) {
        check(dryBulb, humidityRatio, pressure);
        double saturation = relativeHumidity(dryBulb, humidityRatio, pressure);
        if (saturation > 1 + 1e-10) {
            throw new IllegalArgumentException(
                    "humidity ratio is "
                            + humidityRatio
                            + " kg/kg, but must not be above "
                            + saturationHumidityRatio(dryBulb, pressure)
                            + " kg/kg, saturation at a dry bulb of "
                            + dryBulb
                            + " K and an air pressure of "
                            + pressure
                            + " Pa: fog has no wet bulb of its own");
        }
        double enthalpy = enthalpyUnchecked(dryBulb, humidityRatio, pressure);
        boolean liquid =
                dryBulb >= Domain.ICE_POINT
                        && excess(Domain.ICE_POINT, enthalpy, humidityRatio, pressure, true)
                                <= 1e-13 * Math.abs(enthalpy) * pressure;
        double low = liquid ? Domain.ICE_POINT : Domain.LOWEST_TEMPERATURE - 0.01;
        double high = liquid ? dryBulb : Math.min(dryBulb, Domain.ICE_POINT);
        double atHigh = excess(high, enthalpy, humidityRatio, pressure, liquid);
        if (atHigh <= 0) {
            return high;
        }
        if (excess(low, enthalpy, humidityRatio, pressure, liquid) >= 0) {
            return low;
        }
        return Roots.find(
                "real wet bulb",
                t -> excess(t, enthalpy, humidityRatio, pressure, liquid),
                low,
                high,
                1e-12);
    }

    /**
     * Humidity and heat that air saturated at t would have too much, times p - f e; rises with t.
     */
    private static double excess(
            double t, double enthalpy, double humidityRatio, double pressure, boolean liquid) {
        double vapor = saturation(t, pressure, liquid);
        double room = pressure - vapor;
        if (room <= 0) {
            return pressure * 1e6;
        }
        double ratio = MASS_RATIO * vapor / room;
        double water = liquid ? liquidEnthalpy(t) : iceEnthalpy(t);
        return (enthalpyUnchecked(t, ratio, pressure) - enthalpy - (ratio - humidityRatio) * water)
                * room;
    }

    /**
     * Humidity ratio from dry bulb and thermodynamic wet bulb: the balance of {@link
     * #wetBulb(double, double, double)} solved for the humidity ratio; over liquid water from 0
     * degC up, over ice below.
     *
     * @param dryBulb dry bulb, K, in [173.15, 473.15]
     * @param wetBulb thermodynamic wet bulb, K, in [173.15, dry bulb]
     * @param pressure air pressure, Pa, in [20000, 200000]
     * @return humidity ratio, kg/kg, in [0, 10]
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or if the pair
     *     implies a humidity ratio outside [0, 10] kg/kg
     */
    public static double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
        check(dryBulb, 0, pressure);
        Range.require(
                "wet bulb (not above dry bulb)", wetBulb, Domain.LOWEST_TEMPERATURE, dryBulb, "K");
        boolean liquid = wetBulb >= Domain.ICE_POINT;
        double vapor = saturation(wetBulb, pressure, liquid);
        if (!(vapor < pressure)) {
            throw new IllegalArgumentException(
                    "wet bulb is "
                            + wetBulb
                            + " K, but must be below the boiling point at an air pressure of "
                            + pressure
                            + " Pa");
        }
        double saturated = MASS_RATIO * vapor / (pressure - vapor);
        double water = liquid ? liquidEnthalpy(wetBulb) : iceEnthalpy(wetBulb);
        double balance = enthalpyUnchecked(wetBulb, saturated, pressure) - saturated * water;
        double ratio = ratioAtEnthalpy(dryBulb, balance, water, pressure);
        // Rounding of a wet bulb that was computed for dry air.
        if (ratio < 0 && ratio > -1e-12) {
            return 0;
        }
        Range.require(
                "humidity ratio implied by dry and wet bulb",
                ratio,
                0,
                Domain.HIGHEST_HUMIDITY_RATIO,
                "kg/kg");
        return ratio;
    }

    /**
     * Specific enthalpy of liquid water near saturation, zero at the triple point.
     *
     * @param temperature temperature, K, in [273.15, 393.15]
     * @return specific enthalpy, J/kg of water; within 0.1 kJ/kg of the tables
     */
    static double liquidEnthalpy(double temperature) {
        double t = temperature - Domain.ICE_POINT;
        return -15.64677 + t * (4208.593 + t * (-0.7742203 + t * (7.747008e-3 + t * -1.666156e-5)));
    }

    /**
     * Specific enthalpy of ice, on the scale of liquid water at the triple point.
     *
     * @param temperature temperature, K, in [173.15, 273.15]
     * @return specific enthalpy, J/kg of ice; within 0.05 kJ/kg of the tables down to -60 degC
     */
    static double iceEnthalpy(double temperature) {
        double t = temperature - Domain.ICE_POINT;
        return -333_470 + t * (2096 + 3.65 * t);
    }

    private static void check(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        Domain.humidityRatio(humidityRatio);
        Domain.pressure(pressure);
    }
}
