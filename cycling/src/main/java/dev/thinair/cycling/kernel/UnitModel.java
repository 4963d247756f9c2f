package dev.thinair.cycling.kernel;

import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.Range;

/**
 * Steady state of a direct-expansion cooling unit as one balance of compressor, evaporator and
 * condenser.
 *
 * <p>Unknowns are the coil's apparatus dew point <var>Ts</var>, the saturated suction temperature
 * <var>Te</var> and the condensing temperature <var>Tc</var>; the equations are
 *
 * <ul>
 *   <li>air side of the evaporator: <code>Q = m (1 - BF) (h(in) - h(s))</code> with <code>BF =
 *       exp(-A0/m)</code>, <code>h(s)</code> at <var>Ts</var> and the smaller of the entering and
 *       the saturated humidity ratio (bypass-factor form of the textbooks; the coil is dry when the
 *       entering dew point lies below <var>Ts</var>);
 *   <li>refrigerant side of the evaporator: <code>Q = U (Ts - Te)</code>;
 *   <li>compressor: <code>Q = s K rho(Te) (hv(Te) - hl(Tc))</code> and <code>P = s f [B rho(Te)
 *       w(Te, Tc) + L]</code>, <var>w</var> the isentropic work, <var>s</var> the displacement
 *       fraction (stage);
 *   <li>condenser: <code>Q + P = e C (Tc - To)</code>, <code>C = C0 x</code>, <code>e = 1 -
 *       exp(-N0 u x<sup>-1/2</sup>)</code>, <var>x</var> the air mass flow over the condenser
 *       relative to rating: a fan moves volume, so <var>x</var> follows the density of the outdoor
 *       air and any blockage; the conductance of the air side follows <var>x</var><sup>1/2</sup>
 *       (usual exponents are 0.4 to 0.65).
 * </ul>
 *
 * <p>The constants A0, U, K, B, C0 are found from one rating point, which the model reproduces to
 * rounding. Sensible heat is <code>m (1 - BF) (h(t(in), W(s)) - h(s))</code>.
 *
 * <p>Sensible to what is unknown: with the default parameters, capacity away from rating is a model
 * and not a maker's table; fit the parameters when expanded performance points are at hand. The
 * condensing temperature is held at or above {@value #CONDENSING_FLOOR} K (head-pressure control;
 * assumption) and 3 K above suction. Standing dry-bulb range -20 to 60 &deg;C outdoors, 5 to 55
 * &deg;C indoors.
 *
 * <p>Immutable; {@link #steady} allocates nothing and may be called from any thread. The same input
 * gives the same bits.
 */
public final class UnitModel {

    /** Index of the coil's total capacity (gross: indoor fan heat not taken off), W. */
    public static final int TOTAL = 0;

    /** Index of the coil's sensible capacity (gross), W. */
    public static final int SENSIBLE = 1;

    /** Index of the latent capacity, W. */
    public static final int LATENT = 2;

    /** Index of the power of compressor and outdoor fan, W. */
    public static final int POWER = 3;

    /** Index of the apparatus dew point: the coil's effective surface temperature, K. */
    public static final int APPARATUS_DEW_POINT = 4;

    /** Index of the saturated suction temperature, K. */
    public static final int SATURATED_SUCTION = 5;

    /** Index of the condensing temperature, K. */
    public static final int CONDENSING = 6;

    /** Index of the dry bulb of the air leaving the coil, K. */
    public static final int LEAVING_DRY_BULB = 7;

    /** Index of the humidity ratio of the air leaving the coil, kg/kg. */
    public static final int LEAVING_HUMIDITY_RATIO = 8;

    /** Index of the condensate rate, kg/s. */
    public static final int CONDENSATE = 9;

    /** Index of the bypass factor. */
    public static final int BYPASS_FACTOR = 10;

    /** Index of the dry-coil flag: 1 when no moisture is removed, else 0. */
    public static final int DRY = 11;

    /**
     * Index of the frost flag: 2 when the coil's effective surface is at or below 0 &deg;C and
     * below the entering dew point (it ices), 1 when only the refrigerant is at or below 0 &deg;C
     * (the early warning), else 0.
     */
    public static final int FROST = 12;

    /** Index of the compressor's power, W. */
    public static final int COMPRESSOR = 13;

    /** Length an output array must have at least. */
    public static final int RESULTS = 14;

    /** Least airflow over the coil that the balance is asked for, as a share of the rated one. */
    public static final double LEAST_AIRFLOW = 0.05;

    /** Most airflow over the coil that the balance is asked for, as a multiple of the rated one. */
    public static final double MOST_AIRFLOW = 5;

    /** Lowest condensing temperature, K (20 &deg;C). Assumption: head-pressure control. */
    public static final double CONDENSING_FLOOR = 293.15;

    /**
     * Condensing temperature, K (95 &deg;C), above which there is no operation at all: past the
     * critical point of the usual refrigerants. High-pressure controls open far below.
     */
    public static final double CONDENSING_CEILING = 368.15;

    private static final double FREEZING = 273.15;
    private static final double LOWEST_SURFACE = 213.15;
    private static final double LIFT_FLOOR = 3.0;
    private static final int MAX_STEPS = 100;

    /**
     * K; Newton's last step. The error left is some 1e-3 times its square: 1e-9 K, 1e-11 of the
     * capacity.
     */
    private static final double NEWTON_STEP = 1e-3;

    /**
     * K; last step of the search for the coil's temperature. The error left is a few percent of it
     * at most, 1e-9 of the capacity.
     */
    private static final double SURFACE_STEP = 1e-7;

    /** J/(kg K); slope of the saturation enthalpy near 10 degC, for the first step only. */
    private static final double ENTHALPY_SLOPE = 2500;

    private final RatingPoint rating;
    private final UnitParameters parameters;
    private final FaultFactors faults;
    private final Refrigerant fluid;
    private final double ratedSurface;
    private final double bypassMass;
    private final double coilConductance;
    private final double displacement;
    private final double workScale;
    private final double lossPower;
    private final double condenserFlow;
    private final double condenserUnits;
    private final double outdoorDensity;
    private final double lowStage;
    private final double lowPowerFactor;
    private final boolean continuous;
    private final double capacitySlope;

    private UnitModel(
            RatingPoint rating,
            UnitParameters parameters,
            FaultFactors faults,
            double[] anchors,
            double lowStage,
            double lowPowerFactor,
            boolean continuous) {
        this.rating = rating;
        this.parameters = parameters;
        this.faults = faults;
        this.fluid = parameters.refrigerant();
        this.ratedSurface = anchors[0];
        this.bypassMass = anchors[1];
        this.coilConductance = anchors[2];
        this.displacement = anchors[3];
        this.workScale = anchors[4];
        this.lossPower = anchors[5];
        this.condenserFlow = anchors[6];
        this.condenserUnits = anchors[7];
        this.outdoorDensity = rating.pressure() / rating.outdoorDryBulb();
        this.lowStage = lowStage;
        this.lowPowerFactor = lowPowerFactor;
        this.continuous = continuous;
        // Suction gas density grows by about 3 percent a kelvin.
        this.capacitySlope = 0.03 * rating.totalCapacity();
    }

    /**
     * A single-stage unit anchored to its rating point.
     *
     * @param rating the rating point
     * @param parameters what the rating point does not say
     * @return the model
     * @throws IllegalArgumentException if the rating point has no coil state (its sensible split
     *     cannot be reached, or the leaving air would be beyond saturation), or the parameters do
     *     not fit it
     */
    public static UnitModel anchored(RatingPoint rating, UnitParameters parameters) {
        double hIn =
                IdealMoistAir.enthalpy(rating.enteringDryBulb(), rating.enteringHumidityRatio());
        double surface = ratedApparatusDewPoint(rating, hIn);
        double p = rating.pressure();
        double drop =
                hIn
                        - IdealMoistAir.enthalpy(
                                surface, IdealMoistAir.saturationHumidityRatio(surface, p));
        double contact = rating.totalCapacity() / rating.dryAirMassFlow() / drop;
        if (!(contact < 0.9999)) {
            throw new IllegalArgumentException(
                    "rating point has no coil state: the leaving air would lie beyond saturation"
                            + " (total capacity "
                            + rating.totalCapacity()
                            + " W at dry-air flow "
                            + rating.dryAirMassFlow()
                            + " kg/s needs a contact factor of "
                            + contact
                            + "); check airflow and sensible capacity");
        }
        double te = parameters.suctionAtRating();
        double tc = parameters.condensingAtRating();
        if (!(te < surface - 0.5)) {
            throw new IllegalArgumentException(
                    "saturated suction at rating is "
                            + te
                            + " K, but must lie at least 0.5 K below"
                            + " the apparatus dew point of the rating point, "
                            + surface
                            + " K");
        }
        if (!(tc > rating.outdoorDryBulb() + 1)) {
            throw new IllegalArgumentException(
                    "condensing temperature at rating is "
                            + tc
                            + " K, but must lie at least 1 K above the outdoor air, "
                            + rating.outdoorDryBulb()
                            + " K");
        }
        if (!(tc > te + 10)) {
            throw new IllegalArgumentException(
                    "condensing temperature at rating is "
                            + tc
                            + " K, but must lie at least 10 K above the saturated suction, "
                            + te
                            + " K");
        }
        double compressor = rating.power() - parameters.outdoorFanPower();
        if (!(compressor > 0)) {
            throw new IllegalArgumentException(
                    "outdoor fan power is "
                            + parameters.outdoorFanPower()
                            + " W, but must be below the power of compressor and outdoor fan, "
                            + rating.power()
                            + " W");
        }
        Refrigerant fluid = parameters.refrigerant();
        double rho = fluid.suctionDensity(te);
        double heat = rating.totalCapacity() + compressor;
        double effectiveness = parameters.condenserEffectiveness();
        double[] anchors = {
            surface,
            -rating.dryAirMassFlow() * Math.log1p(-contact),
            rating.totalCapacity() / (surface - te),
            rating.totalCapacity() / (rho * fluid.refrigeratingEffect(te, tc)),
            compressor * (1 - parameters.lossShare()) / (rho * fluid.isentropicWork(te, tc)),
            compressor * parameters.lossShare(),
            heat / (effectiveness * (tc - rating.outdoorDryBulb())),
            -Math.log1p(-effectiveness)
        };
        return new UnitModel(rating, parameters, FaultFactors.NONE, anchors, 1, 1, false);
    }

    private static double ratedApparatusDewPoint(RatingPoint rating, double hIn) {
        double p = rating.pressure();
        double tIn = rating.enteringDryBulb();
        double wIn = rating.enteringHumidityRatio();
        double ratio = rating.sensibleCapacity() / rating.totalCapacity();
        if (wIn > IdealMoistAir.saturationHumidityRatio(tIn, p)) {
            throw new IllegalArgumentException(
                    "entering humidity ratio is "
                            + wIn
                            + " kg/kg, but must not exceed saturation at "
                            + tIn
                            + " K, "
                            + IdealMoistAir.saturationHumidityRatio(tIn, p)
                            + " kg/kg");
        }
        if (ratio >= 1) {
            throw new IllegalArgumentException(
                    "rating point has a dry coil (sensible capacity equals total capacity), which"
                            + " does not fix the apparatus dew point; give a point with a wet coil");
        }
        double warm = tIn;
        double cold = warm;
        while (true) {
            cold = warm - 0.25;
            if (cold < 248.15) {
                throw new IllegalArgumentException(
                        "rating point has no coil state: sensible heat ratio "
                                + ratio
                                + " is not reached by any coil temperature at these entering"
                                + " conditions");
            }
            if (splitExcess(cold, tIn, wIn, hIn, p, ratio) <= 0) {
                break;
            }
            warm = cold;
        }
        for (int i = 0; i < 80; i++) {
            double mid = 0.5 * (warm + cold);
            if (splitExcess(mid, tIn, wIn, hIn, p, ratio) <= 0) {
                cold = mid;
            } else {
                warm = mid;
            }
        }
        return 0.5 * (warm + cold);
    }

    private static double splitExcess(
            double t, double tIn, double wIn, double hIn, double p, double ratio) {
        double ws = Math.min(wIn, IdealMoistAir.saturationHumidityRatio(t, p));
        double hs = IdealMoistAir.enthalpy(t, ws);
        return IdealMoistAir.enthalpy(tIn, ws) - hs - ratio * (hIn - hs);
    }

    /**
     * The same unit with a lower stage, found from a second rating point: the displacement fraction
     * and the power factor that reproduce it.
     *
     * @param point steady state at the lower stage
     * @param variable true when every displacement between the two is possible, false for two
     *     stages
     * @return the model with the lower stage
     * @throws IllegalArgumentException if the point needs a displacement outside [0.1, 0.98] of
     *     full, or has no coil state
     */
    public UnitModel withLowStage(RatingPoint point, boolean variable) {
        double hIn = IdealMoistAir.enthalpy(point.enteringDryBulb(), point.enteringHumidityRatio());
        double m = point.dryAirMassFlow() * -Math.expm1(-bypassMass / point.dryAirMassFlow());
        double target = point.totalCapacity();
        double warm = point.enteringDryBulb();
        double cold = LOWEST_SURFACE;
        double p = point.pressure();
        for (int i = 0; i < 100; i++) {
            double mid = 0.5 * (warm + cold);
            if (airHeat(mid, point.enteringHumidityRatio(), hIn, p, m) >= target) {
                cold = mid;
            } else {
                warm = mid;
            }
        }
        double te = warm - target / coilConductance;
        double compressor =
                point.power()
                        - parameters.outdoorFanPower()
                                * densityRatio(point.pressure(), point.outdoorDryBulb());
        if (!(compressor > 0)) {
            throw new IllegalArgumentException(
                    "power at the low stage is "
                            + point.power()
                            + " W, but must exceed the outdoor fan power, "
                            + parameters.outdoorFanPower()
                            + " W");
        }
        double x = densityRatio(point.pressure(), point.outdoorDryBulb());
        double tc =
                Math.max(
                        floor(te),
                        point.outdoorDryBulb() + (target + compressor) / condenserConductance(x));
        double rho = fluid.suctionDensity(te);
        double stage = target / (displacement * rho * fluid.refrigeratingEffect(te, tc));
        Range.require("displacement fraction of the low stage", stage, 0.1, 0.98, "1");
        double factor =
                compressor / (stage * (workScale * rho * fluid.isentropicWork(te, tc) + lossPower));
        return new UnitModel(rating, parameters, faults, anchors(), stage, factor, variable);
    }

    /**
     * The same unit with a lower stage of stated displacement, its compressor as efficient as at
     * full displacement under the same pressures.
     *
     * @param fraction displacement fraction, in [0.1, 0.98]
     * @param variable true when every displacement between the two is possible
     * @return the model with the lower stage
     * @throws IllegalArgumentException if the fraction is out of range
     */
    public UnitModel withLowStage(double fraction, boolean variable) {
        Range.require("displacement fraction of the low stage", fraction, 0.1, 0.98, "1");
        return new UnitModel(rating, parameters, faults, anchors(), fraction, 1, variable);
    }

    /**
     * The same unit with faults.
     *
     * @param factors the faults, counted from the healthy unit
     * @return the model with exactly these faults
     */
    public UnitModel withFaults(FaultFactors factors) {
        if (factors == null) {
            throw new IllegalArgumentException("fault factors are missing");
        }
        return new UnitModel(
                rating, parameters, factors, anchors(), lowStage, lowPowerFactor, continuous);
    }

    private double[] anchors() {
        return new double[] {
            ratedSurface,
            bypassMass,
            coilConductance,
            displacement,
            workScale,
            lossPower,
            condenserFlow,
            condenserUnits
        };
    }

    private double densityRatio(double pressure, double outdoor) {
        return pressure / outdoor / outdoorDensity;
    }

    private double condenserConductance(double densityRatio) {
        double x = densityRatio * faults.condenserAirflow();
        double units =
                condenserUnits
                        * faults.condenserConductance()
                        * faults.condenserActive()
                        / Math.sqrt(x);
        return condenserFlow * x * -Math.expm1(-units);
    }

    private static double floor(double suction) {
        return Math.max(CONDENSING_FLOOR, suction + LIFT_FLOOR);
    }

    private static double airHeat(double surface, double wIn, double hIn, double p, double m) {
        double ws = Math.min(wIn, IdealMoistAir.saturationHumidityRatio(surface, p));
        return m * (hIn - IdealMoistAir.enthalpy(surface, ws));
    }

    private double powerFactor(double stage) {
        if (stage >= 1) {
            return 1;
        }
        return lowPowerFactor + (1 - lowPowerFactor) * (stage - lowStage) / (1 - lowStage);
    }

    /**
     * Root of the condenser balance for a given suction temperature: Newton inside a bracket, from
     * a guess.
     */
    private double condensing(
            double te,
            double outdoor,
            double conductance,
            double stage,
            double factor,
            double guess) {
        double rho = fluid.suctionDensity(te);
        double capacityScale = stage * displacement * rho;
        double hv = fluid.vapourEnthalpy(te);
        double lnPe = fluid.lnPressure(te);
        double k = fluid.exponent();
        double work = stage * factor * workScale * Math.exp(lnPe) / k;
        double loss = stage * factor * lossPower;
        double lowest = floor(te);
        double low = lowest;
        double high = CONDENSING_CEILING;
        double tc = Math.max(low, Math.min(high, guess));
        for (int i = 0; i < MAX_STEPS; i++) {
            double inverse = 1 / tc;
            double ratio = Math.exp(k * (fluid.lnPressure(tc, inverse) - lnPe));
            double g =
                    conductance * (tc - outdoor)
                            - capacityScale * (hv - fluid.liquidEnthalpy(tc))
                            - work * (ratio - 1)
                            - loss;
            if (g > 0) {
                if (tc == lowest) {
                    return lowest;
                }
                high = tc;
            } else {
                if (tc == CONDENSING_CEILING) {
                    return CONDENSING_CEILING;
                }
                low = tc;
            }
            double slope =
                    conductance
                            + capacityScale * fluid.liquidEnthalpySlope(tc)
                            - work * ratio * k * fluid.lnPressureSlope(tc, inverse);
            double next = tc - g / slope;
            if (Math.abs(next - tc) <= NEWTON_STEP) {
                return Math.max(low, Math.min(high, next));
            }
            if (next <= lowest && low == lowest) {
                next = lowest;
            } else if (next >= CONDENSING_CEILING && high == CONDENSING_CEILING) {
                next = CONDENSING_CEILING;
            } else if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            tc = next;
        }
        throw new ArithmeticException(
                "condensing temperature not found: suction "
                        + te
                        + " K, outdoor "
                        + outdoor
                        + " K, last "
                        + tc
                        + " K");
    }

    /** Compressor capacity less air-side heat; leaves the condensing temperature in scratch. */
    private double excess(
            double surface,
            double wIn,
            double hIn,
            double p,
            double mEff,
            double conductance,
            double outdoor,
            double condenser,
            double stage,
            double factor,
            double[] scratch) {
        double q = airHeat(surface, wIn, hIn, p, mEff);
        double te = surface - q / conductance;
        double tc = condensing(te, outdoor, condenser, stage, factor, scratch[CONDENSING]);
        scratch[CONDENSING] = tc;
        return stage * displacement * fluid.suctionDensity(te) * fluid.refrigeratingEffect(te, tc)
                - q;
    }

    /**
     * Steady state at the given conditions.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil, K, in [278.15, 328.15]
     * @param enteringHumidityRatio humidity ratio of that air, kg/kg, in [0, 0.08] and not above
     *     saturation
     * @param dryAirMassFlow dry-air mass flow over the coil, kg/s, 0.05 to 5 times the rated one
     * @param outdoorDryBulb dry bulb of the outdoor air, K, in [253.15, 333.15]
     * @param pressure air pressure at the site, Pa, in [50000, 110000]
     * @param stage compressor displacement fraction: 1, or the low stage, or (variable speed)
     *     anything between
     * @param out receives the results at the indices of this class; at least {@link #RESULTS} long
     * @throws IllegalArgumentException if an argument is out of range or not a number, the entering
     *     air is beyond saturation, or the unit does not have the stage
     * @throws NoBalanceException if there is no balance: the coil would have to be colder than -60
     *     &deg;C, or the condensing temperature would pass 95 &deg;C; the message holds the state
     * @throws ArithmeticException if the search for the balance fails; the message says where
     */
    public void steady(
            double enteringDryBulb,
            double enteringHumidityRatio,
            double dryAirMassFlow,
            double outdoorDryBulb,
            double pressure,
            double stage,
            double[] out) {
        Range.require("entering dry bulb", enteringDryBulb, 278.15, 328.15, "K");
        Range.require("entering humidity ratio", enteringHumidityRatio, 0, 0.08, "kg/kg");
        Range.require(
                "dry-air mass flow",
                dryAirMassFlow,
                LEAST_AIRFLOW * rating.dryAirMassFlow(),
                MOST_AIRFLOW * rating.dryAirMassFlow(),
                "kg/s");
        Range.require("outdoor dry bulb", outdoorDryBulb, 253.15, 333.15, "K");
        Range.require("pressure", pressure, 50_000, 110_000, "Pa");
        requireStage(stage);
        double saturated = IdealMoistAir.saturationHumidityRatio(enteringDryBulb, pressure);
        if (enteringHumidityRatio > saturated * (1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "entering humidity ratio is "
                            + enteringHumidityRatio
                            + " kg/kg, but must not exceed saturation at "
                            + enteringDryBulb
                            + " K, "
                            + saturated
                            + " kg/kg");
        }
        double hIn = IdealMoistAir.enthalpy(enteringDryBulb, enteringHumidityRatio);
        double active = faults.evaporatorActive();
        double bypass = Math.exp(-bypassMass * active / dryAirMassFlow);
        double mEff = dryAirMassFlow * (1 - bypass);
        double conductance = coilConductance * active;
        double density = densityRatio(pressure, outdoorDryBulb);
        double condenser = condenserConductance(density);
        double factor = powerFactor(stage);

        double surface =
                surface(
                        enteringDryBulb,
                        enteringHumidityRatio,
                        hIn,
                        pressure,
                        mEff,
                        conductance,
                        outdoorDryBulb,
                        condenser,
                        stage,
                        factor,
                        out);
        double ws = IdealMoistAir.saturationHumidityRatio(surface, pressure);
        boolean dry = ws >= enteringHumidityRatio;
        if (dry) {
            ws = enteringHumidityRatio;
        }
        double hs = IdealMoistAir.enthalpy(surface, ws);
        double total = mEff * (hIn - hs);
        double te = surface - total / conductance;
        double tc = condensing(te, outdoorDryBulb, condenser, stage, factor, out[CONDENSING]);
        if (tc >= CONDENSING_CEILING) {
            throw new NoBalanceException(
                    "no balance: the condensing temperature would pass "
                            + CONDENSING_CEILING
                            + " K at outdoor "
                            + outdoorDryBulb
                            + " K (condenser conductance "
                            + condenser
                            + " W/K); a real unit stops on its high-pressure control");
        }
        double compressor =
                stage
                        * factor
                        * (workScale * fluid.suctionDensity(te) * fluid.isentropicWork(te, tc)
                                + lossPower);
        double sensible = dry ? total : mEff * (IdealMoistAir.enthalpy(enteringDryBulb, ws) - hs);
        double wOut = enteringHumidityRatio - (1 - bypass) * (enteringHumidityRatio - ws);
        out[TOTAL] = total;
        out[SENSIBLE] = sensible;
        out[LATENT] = total - sensible;
        out[POWER] = compressor + parameters.outdoorFanPower() * density;
        out[APPARATUS_DEW_POINT] = surface;
        out[SATURATED_SUCTION] = te;
        out[CONDENSING] = tc;
        out[LEAVING_DRY_BULB] =
                IdealMoistAir.dryBulbFromEnthalpy(hIn - total / dryAirMassFlow, wOut);
        out[LEAVING_HUMIDITY_RATIO] = wOut;
        out[CONDENSATE] = mEff * (enteringHumidityRatio - ws);
        out[BYPASS_FACTOR] = bypass;
        out[DRY] = dry ? 1 : 0;
        out[FROST] = !dry && surface <= FREEZING ? 2 : !dry && te <= FREEZING ? 1 : 0;
        out[COMPRESSOR] = compressor;
    }

    private void requireStage(double stage) {
        boolean known =
                stage == 1 || stage == lowStage || (continuous && stage >= lowStage && stage <= 1);
        if (!known) {
            throw new IllegalArgumentException(
                    "stage is "
                            + stage
                            + ", but this unit has "
                            + (lowStage == 1
                                    ? "only stage 1.0"
                                    : continuous
                                            ? "stages from " + lowStage + " to 1.0"
                                            : "the stages " + lowStage + " and 1.0"));
        }
    }

    /** Bracketed Anderson-Bjorck search; the residual rises with the surface temperature. */
    private double surface(
            double tIn,
            double wIn,
            double hIn,
            double p,
            double mEff,
            double conductance,
            double outdoor,
            double condenser,
            double stage,
            double factor,
            double[] scratch) {
        double a = Math.min(ratedSurface + 0.8 * (tIn - rating.enteringDryBulb()), tIn - 0.5);
        scratch[CONDENSING] = outdoor + stage * 1.25 * rating.totalCapacity() / condenser;
        double fa =
                excess(
                        a,
                        wIn,
                        hIn,
                        p,
                        mEff,
                        conductance,
                        outdoor,
                        condenser,
                        stage,
                        factor,
                        scratch);
        // A little beyond the linear estimate, so that the root is soon between two points.
        double step = -1.2 * fa / (stage * capacitySlope + mEff * ENTHALPY_SLOPE);
        step = Math.copySign(Math.max(Math.abs(step), 1e-3), step);
        double b = a;
        double fb = fa;
        while (fb * fa > 0) {
            if (b <= LOWEST_SURFACE || b >= tIn) {
                throw new NoBalanceException(
                        "no balance: the coil would have to be at "
                                + b
                                + " K with entering air "
                                + tIn
                                + " K, outdoor "
                                + outdoor
                                + " K, effective air flow "
                                + mEff
                                + " kg/s, stage "
                                + stage);
            }
            a = b;
            fa = fb;
            b = Math.max(LOWEST_SURFACE, Math.min(tIn, b + step));
            step *= 2;
            fb =
                    excess(
                            b,
                            wIn,
                            hIn,
                            p,
                            mEff,
                            conductance,
                            outdoor,
                            condenser,
                            stage,
                            factor,
                            scratch);
        }
        for (int i = 0; i < MAX_STEPS; i++) {
            if (fb == 0 || Math.abs(b - a) < SURFACE_STEP) {
                return b;
            }
            // Past a dozen steps the root sits on the jump of the saturation curve at 0 degC,
            // where only halving closes in.
            boolean secant = i < 12;
            double c = secant ? b - fb * (b - a) / (fb - fa) : 0.5 * (a + b);
            if (secant && Math.abs(c - b) < SURFACE_STEP) {
                return c;
            }
            double fc =
                    excess(
                            c,
                            wIn,
                            hIn,
                            p,
                            mEff,
                            conductance,
                            outdoor,
                            condenser,
                            stage,
                            factor,
                            scratch);
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else if (secant) {
                double g = 1 - fc / fb;
                fa *= g > 0 ? g : 0.5;
            }
            b = c;
            fb = fc;
        }
        throw new ArithmeticException(
                "coil balance not found: bracket "
                        + a
                        + " K to "
                        + b
                        + " K, entering air "
                        + tIn
                        + " K, outdoor "
                        + outdoor
                        + " K");
    }

    /**
     * Dry-air mass flow below which the coil's effective surface is at or below 0 &deg;C, by
     * bisection: more airflow never lowers the coil temperature.
     *
     * @param enteringDryBulb dry bulb of the air entering the coil, K
     * @param enteringHumidityRatio humidity ratio of that air, kg/kg
     * @param outdoorDryBulb dry bulb of the outdoor air, K
     * @param pressure air pressure at the site, Pa
     * @param stage compressor displacement fraction
     * @param index {@link #APPARATUS_DEW_POINT} for ice on the coil, or {@link #SATURATED_SUCTION}
     *     for the early warning
     * @param limit temperature of the limit, K; 273.15 for ice
     * @return mass flow, kg/s, to 1e-9 relative; 0 if the limit is not reached at 0.05 of the rated
     *     airflow, positive infinity if five times the rated airflow does not keep above it
     * @throws IllegalArgumentException as for {@link #steady}, or if the index is another one
     */
    public double frostAirflow(
            double enteringDryBulb,
            double enteringHumidityRatio,
            double outdoorDryBulb,
            double pressure,
            double stage,
            int index,
            double limit) {
        if (index != APPARATUS_DEW_POINT && index != SATURATED_SUCTION) {
            throw new IllegalArgumentException(
                    "index is " + index + ", but must be APPARATUS_DEW_POINT or SATURATED_SUCTION");
        }
        Range.require("temperature limit", limit, 243.15, 293.15, "K");
        double[] out = new double[RESULTS];
        double low = LEAST_AIRFLOW * rating.dryAirMassFlow();
        double high = MOST_AIRFLOW * rating.dryAirMassFlow();
        steady(enteringDryBulb, enteringHumidityRatio, high, outdoorDryBulb, pressure, stage, out);
        if (out[index] <= limit) {
            return Double.POSITIVE_INFINITY;
        }
        steady(enteringDryBulb, enteringHumidityRatio, low, outdoorDryBulb, pressure, stage, out);
        if (out[index] > limit) {
            return 0;
        }
        while (high - low > 1e-9 * high) {
            double mid = 0.5 * (low + high);
            steady(
                    enteringDryBulb,
                    enteringHumidityRatio,
                    mid,
                    outdoorDryBulb,
                    pressure,
                    stage,
                    out);
            if (out[index] > limit) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return high;
    }

    /**
     * The rating point the model is anchored to.
     *
     * @return the point
     */
    public RatingPoint rating() {
        return rating;
    }

    /**
     * The parameters.
     *
     * @return what was given at anchoring
     */
    public UnitParameters parameters() {
        return parameters;
    }

    /**
     * The faults.
     *
     * @return the factors; all ones when healthy
     */
    public FaultFactors faults() {
        return faults;
    }

    /**
     * The rated dry-air mass flow.
     *
     * @return kg/s
     */
    public double ratedDryAirMassFlow() {
        return rating.dryAirMassFlow();
    }

    /**
     * The lower stage.
     *
     * @return smallest displacement fraction; 1 for a single-stage unit
     */
    public double minimumStage() {
        return lowStage;
    }

    /**
     * The upper stage.
     *
     * @return 1
     */
    public double maximumStage() {
        return 1;
    }

    /**
     * Whether every displacement between the lower and the upper stage is possible.
     *
     * @return true for variable speed
     */
    public boolean continuousStage() {
        return continuous;
    }

    /**
     * Apparatus dew point at the rating point.
     *
     * @return temperature, K
     */
    public double ratedApparatusDewPoint() {
        return ratedSurface;
    }

    /**
     * The constant A0 in <code>BF = exp(-A0/m)</code>.
     *
     * @return kg/s of dry air, healthy coil
     */
    public double bypassMass() {
        return bypassMass;
    }

    /**
     * Conductance between coil surface and refrigerant.
     *
     * @return W/K, healthy coil
     */
    public double coilConductance() {
        return coilConductance;
    }
}
