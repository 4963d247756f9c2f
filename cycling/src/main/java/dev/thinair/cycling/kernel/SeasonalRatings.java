package dev.thinair.cycling.kernel;

import dev.thinair.units.Range;

/**
 * Seasonal ratings by the bin procedures of the rating standards.
 *
 * <p>Capacities and powers in W, temperatures in K; results are heat over electricity in W/W (times
 * 3.412142 gives Btu/(W h)).
 *
 * <p>Source: 10 CFR 430 subpart B appendices M and M1, section 4, and AHRI 210/240; the procedures
 * are from memory and marked so; their arithmetic was checked against reference cases CYC-SEER and
 * CYC-HSPF.
 */
public final class SeasonalRatings {

    /** Btu per W h as the rating procedures print it, for resistance heat. */
    public static final double RATING_BTU_PER_WATT_HOUR = 3.413;

    private static final double BTU_PER_WATT_HOUR = 3600 / 1055.05585262;

    private static final double F17 = fahrenheit(17);
    private static final double F35 = fahrenheit(35);
    private static final double F40 = fahrenheit(40);
    private static final double F45 = fahrenheit(45);
    private static final double F47 = fahrenheit(47);
    private static final double F62 = fahrenheit(62);
    private static final double F65 = fahrenheit(65);
    private static final double F67 = fahrenheit(67);
    private static final double F82 = fahrenheit(82);
    private static final double F87 = fahrenheit(87);
    private static final double F95 = fahrenheit(95);

    private SeasonalRatings() {}

    private static double fahrenheit(double f) {
        return (f + 459.67) / 1.8;
    }

    /**
     * Cooling load line, <code>BL = V (T - 65)/(95 - 65) QA/1.1</code> in &deg;F.
     *
     * @param temperature outdoor temperature, K, in [200, 350]
     * @param fullCapacity capacity at 95 &deg;F and full stage, W, above 0
     * @param factor factor V, in ]0, 1.5]: 1, or less for variable speed in appendix M1
     * @return load, W; negative below 65 &deg;F
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double coolingLoad(double temperature, double fullCapacity, double factor) {
        Range.require("outdoor temperature", temperature, 200, 350, "K");
        Range.requireAbove("full capacity", fullCapacity, 0, "W");
        Range.require("load factor V", factor, 1e-3, 1.5, "1");
        return factor
                * (temperature - F65)
                / (F95 - F65)
                * fullCapacity
                / RatingBins.COOLING_SIZE_FACTOR;
    }

    /**
     * SEER of a single-speed unit with a constant fan by the short form <code>(1 - Cd/2) QB/PB
     * </code>.
     *
     * @param capacity82 capacity at 82 &deg;F (B test), W, above 0
     * @param power82 power at 82 &deg;F, W, above 0
     * @param degradation degradation coefficient, in [0, 1]
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double singleSpeedShort(double capacity82, double power82, double degradation) {
        positive("82 degF", capacity82, power82);
        Range.require("degradation coefficient", degradation, 0, 1, "1");
        return PartLoad.partLoadFactor(degradation, 0.5) * capacity82 / power82;
    }

    /**
     * SEER of a single-speed unit summed over the bins, capacity and power linear in outdoor
     * temperature through 82 and 95 &deg;F.
     *
     * @param capacity95 capacity at 95 &deg;F (A test), W, above 0
     * @param power95 power at 95 &deg;F, W, above 0
     * @param capacity82 capacity at 82 &deg;F (B test), W, above 0
     * @param power82 power at 82 &deg;F, W, above 0
     * @param degradation degradation coefficient, in [0, 1]
     * @param bins cooling bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range, or capacity or power
     *     is not above 0 at a bin
     */
    public static double singleSpeed(
            double capacity95,
            double power95,
            double capacity82,
            double power82,
            double degradation,
            RatingBins bins) {
        positive("95 degF", capacity95, power95);
        positive("82 degF", capacity82, power82);
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double load = Math.max(0, coolingLoad(t, capacity95, 1));
            double q = line(t, F82, capacity82, F95, capacity95);
            double p = line(t, F82, power82, F95, power95);
            positiveAt(t, q, p);
            double n = bins.fraction(i);
            heat += n * Math.min(load, q);
            energy += n * p * PartLoad.runTimeFraction(degradation, load / q);
        }
        return heat / energy;
    }

    /**
     * SEER of a two-stage unit. Low stage linear through 67 and 82 &deg;F, high stage through 82
     * and 95 &deg;F. At each bin the low stage cycles when it meets the load; else both stages
     * alternate; when the low stage is locked out the high stage cycles; the high stage runs
     * without pause when it cannot meet the load.
     *
     * @param high95 high-stage capacity at 95 &deg;F, W
     * @param highPower95 high-stage power at 95 &deg;F, W
     * @param high82 high-stage capacity at 82 &deg;F, W
     * @param highPower82 high-stage power at 82 &deg;F, W
     * @param low82 low-stage capacity at 82 &deg;F, W
     * @param lowPower82 low-stage power at 82 &deg;F, W
     * @param low67 low-stage capacity at 67 &deg;F (F test), W
     * @param lowPower67 low-stage power at 67 &deg;F, W
     * @param lowDegradation degradation coefficient of the low stage, in [0, 1]
     * @param highDegradation degradation coefficient of the high stage, in [0, 1]
     * @param lockOut outdoor temperature at and above which the low stage is locked out, K;
     *     infinite if never
     * @param bins cooling bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range, or capacity or power
     *     is not above 0 at a bin
     */
    public static double twoStage(
            double high95,
            double highPower95,
            double high82,
            double highPower82,
            double low82,
            double lowPower82,
            double low67,
            double lowPower67,
            double lowDegradation,
            double highDegradation,
            double lockOut,
            RatingBins bins) {
        positive("95 degF, high stage", high95, highPower95);
        positive("82 degF, high stage", high82, highPower82);
        positive("82 degF, low stage", low82, lowPower82);
        positive("67 degF, low stage", low67, lowPower67);
        Range.require("degradation coefficient of the low stage", lowDegradation, 0, 1, "1");
        Range.require("degradation coefficient of the high stage", highDegradation, 0, 1, "1");
        if (Double.isNaN(lockOut)) {
            throw new IllegalArgumentException("lock-out temperature is NaN K");
        }
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double n = bins.fraction(i);
            double load = Math.max(0, coolingLoad(t, high95, 1));
            double q1 = line(t, F67, low67, F82, low82);
            double p1 = line(t, F67, lowPower67, F82, lowPower82);
            double q2 = line(t, F82, high82, F95, high95);
            double p2 = line(t, F82, highPower82, F95, highPower95);
            positiveAt(t, q2, p2);
            if (load < q2 && t < lockOut) {
                positiveAt(t, q1, p1);
            }
            if (load >= q2) {
                heat += n * q2;
                energy += n * p2;
            } else if (t >= lockOut) {
                heat += n * load;
                energy += n * p2 * PartLoad.runTimeFraction(highDegradation, load / q2);
            } else if (load <= q1) {
                heat += n * load;
                energy += n * p1 * PartLoad.runTimeFraction(lowDegradation, load / q1);
            } else {
                double x1 = (q2 - load) / (q2 - q1);
                heat += n * (x1 * q1 + (1 - x1) * q2);
                energy += n * (x1 * p1 + (1 - x1) * p2);
            }
        }
        return heat / energy;
    }

    /**
     * SEER of a variable-speed unit. Low speed linear through 67 and 82 &deg;F, full speed through
     * 82 and 95 &deg;F, intermediate speed through its 87 &deg;F test with a slope between the two.
     * At each bin the low speed cycles when it meets the load; else the unit matches the load with
     * an efficiency linear in delivered capacity between low, intermediate and full speed (appendix
     * M1 form); full speed runs without pause when it cannot meet the load.
     *
     * @param full95 full-speed capacity at 95 &deg;F, W
     * @param fullPower95 full-speed power at 95 &deg;F, W
     * @param full82 full-speed capacity at 82 &deg;F, W
     * @param fullPower82 full-speed power at 82 &deg;F, W
     * @param low82 low-speed capacity at 82 &deg;F, W
     * @param lowPower82 low-speed power at 82 &deg;F, W
     * @param low67 low-speed capacity at 67 &deg;F, W
     * @param lowPower67 low-speed power at 67 &deg;F, W
     * @param intermediate87 intermediate-speed capacity at 87 &deg;F, W
     * @param intermediatePower87 intermediate-speed power at 87 &deg;F, W
     * @param degradation degradation coefficient of the low speed, in [0, 1]
     * @param loadFactor factor V on the load line, in ]0, 1.5]
     * @param bins cooling bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range, or the intermediate
     *     capacity does not lie between low and full at 87 &deg;F, or capacity or power is not
     *     above 0 at a bin
     */
    public static double variableSpeed(
            double full95,
            double fullPower95,
            double full82,
            double fullPower82,
            double low82,
            double lowPower82,
            double low67,
            double lowPower67,
            double intermediate87,
            double intermediatePower87,
            double degradation,
            double loadFactor,
            RatingBins bins) {
        return variable(
                full95,
                fullPower95,
                full82,
                fullPower82,
                low82,
                lowPower82,
                low67,
                lowPower67,
                intermediate87,
                intermediatePower87,
                degradation,
                loadFactor,
                false,
                bins);
    }

    /**
     * SEER of a variable-speed unit with the intermediate efficiency quadratic in outdoor
     * temperature (appendix M form): through the three temperatures at which the load line meets
     * the capacity of low, intermediate and full speed. Otherwise as {@link #variableSpeed}.
     *
     * @param full95 full-speed capacity at 95 &deg;F, W
     * @param fullPower95 full-speed power at 95 &deg;F, W
     * @param full82 full-speed capacity at 82 &deg;F, W
     * @param fullPower82 full-speed power at 82 &deg;F, W
     * @param low82 low-speed capacity at 82 &deg;F, W
     * @param lowPower82 low-speed power at 82 &deg;F, W
     * @param low67 low-speed capacity at 67 &deg;F, W
     * @param lowPower67 low-speed power at 67 &deg;F, W
     * @param intermediate87 intermediate-speed capacity at 87 &deg;F, W
     * @param intermediatePower87 intermediate-speed power at 87 &deg;F, W
     * @param degradation degradation coefficient of the low speed, in [0, 1]
     * @param loadFactor factor V on the load line, in ]0, 1.5]
     * @param bins cooling bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range, or the intermediate
     *     capacity does not lie between low and full at 87 &deg;F, or capacity or power is not
     *     above 0 at a bin
     */
    public static double variableSpeedQuadratic(
            double full95,
            double fullPower95,
            double full82,
            double fullPower82,
            double low82,
            double lowPower82,
            double low67,
            double lowPower67,
            double intermediate87,
            double intermediatePower87,
            double degradation,
            double loadFactor,
            RatingBins bins) {
        return variable(
                full95,
                fullPower95,
                full82,
                fullPower82,
                low82,
                lowPower82,
                low67,
                lowPower67,
                intermediate87,
                intermediatePower87,
                degradation,
                loadFactor,
                true,
                bins);
    }

    private static double variable(
            double full95,
            double fullPower95,
            double full82,
            double fullPower82,
            double low82,
            double lowPower82,
            double low67,
            double lowPower67,
            double intermediate87,
            double intermediatePower87,
            double degradation,
            double loadFactor,
            boolean quadratic,
            RatingBins bins) {
        positive("95 degF, full speed", full95, fullPower95);
        positive("82 degF, full speed", full82, fullPower82);
        positive("82 degF, low speed", low82, lowPower82);
        positive("67 degF, low speed", low67, lowPower67);
        positive("87 degF, intermediate speed", intermediate87, intermediatePower87);
        double low87 = line(F87, F67, low67, F82, low82);
        double full87 = line(F87, F82, full82, F95, full95);
        if (!(intermediate87 > low87 && intermediate87 < full87)) {
            throw new IllegalArgumentException(
                    "intermediate capacity at 87 degF is "
                            + intermediate87
                            + " W, but must lie in ]"
                            + low87
                            + ", "
                            + full87
                            + "[ W");
        }
        double capacitySlope =
                between(
                        intermediate87,
                        low87,
                        full87,
                        (low82 - low67) / (F82 - F67),
                        (full95 - full82) / (F95 - F82));
        double powerSlope =
                between(
                        intermediatePower87,
                        line(F87, F67, lowPower67, F82, lowPower82),
                        line(F87, F82, fullPower82, F95, fullPower95),
                        (lowPower82 - lowPower67) / (F82 - F67),
                        (fullPower95 - fullPower82) / (F95 - F82));
        double lowSlope = (low82 - low67) / (F82 - F67);
        double fullSlope = (full95 - full82) / (F95 - F82);
        double t1 = balance(full95, loadFactor, F82, low82, lowSlope);
        double tv = balance(full95, loadFactor, F87, intermediate87, capacitySlope);
        double t2 = balance(full95, loadFactor, F95, full95, fullSlope);
        double e1 = line(t1, F67, low67, F82, low82) / line(t1, F67, lowPower67, F82, lowPower82);
        double ev =
                (intermediate87 + capacitySlope * (tv - F87))
                        / (intermediatePower87 + powerSlope * (tv - F87));
        double e2 =
                line(t2, F82, full82, F95, full95) / line(t2, F82, fullPower82, F95, fullPower95);
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double n = bins.fraction(i);
            double load = Math.max(0, coolingLoad(t, full95, loadFactor));
            double q1 = line(t, F67, low67, F82, low82);
            double p1 = line(t, F67, lowPower67, F82, lowPower82);
            double q2 = line(t, F82, full82, F95, full95);
            double p2 = line(t, F82, fullPower82, F95, fullPower95);
            positiveAt(t, q2, p2);
            if (load < q2) {
                positiveAt(t, q1, p1);
            }
            if (load >= q2) {
                heat += n * q2;
                energy += n * p2;
            } else if (load <= q1) {
                heat += n * load;
                energy += n * p1 * PartLoad.runTimeFraction(degradation, load / q1);
            } else {
                double qv = intermediate87 + capacitySlope * (t - F87);
                double pv = intermediatePower87 + powerSlope * (t - F87);
                double ratio =
                        quadratic
                                ? e1 * (t - tv) * (t - t2) / ((t1 - tv) * (t1 - t2))
                                        + ev * (t - t1) * (t - t2) / ((tv - t1) * (tv - t2))
                                        + e2 * (t - t1) * (t - tv) / ((t2 - t1) * (t2 - tv))
                                : load < qv
                                        ? line(load, q1, q1 / p1, qv, qv / pv)
                                        : line(load, qv, qv / pv, q2, q2 / p2);
                heat += n * load;
                energy += n * load / ratio;
            }
        }
        return heat / energy;
    }

    /** Where the load line meets a capacity line through (at, value) with a slope. */
    private static double balance(
            double full95, double loadFactor, double at, double value, double slope) {
        double rise = loadFactor * full95 / RatingBins.COOLING_SIZE_FACTOR / (F95 - F65);
        return (value - slope * at + rise * F65) / (rise - slope);
    }

    private static double between(
            double value, double low, double full, double lowSlope, double fullSlope) {
        double along = (value - low) / (full - low);
        return lowSlope + along * (fullSlope - lowSlope);
    }

    /**
     * Heating load line of appendix M, <code>BL = (65 - T)/(65 - Tod) 0.77 DHR</code> in &deg;F.
     *
     * @param temperature outdoor temperature, K, in [200, 350]
     * @param designOutdoor outdoor design temperature Tod, K, below 65 &deg;F; 5 &deg;F in region
     *     IV
     * @param designRequirement design heating requirement DHR, W, above 0
     * @return load, W; negative above 65 &deg;F
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double heatingLoadM(
            double temperature, double designOutdoor, double designRequirement) {
        Range.require("outdoor temperature", temperature, 200, 350, "K");
        Range.require("design outdoor temperature", designOutdoor, 200, F65 - 1, "K");
        Range.requireAbove("design heating requirement", designRequirement, 0, "W");
        return (F65 - temperature) / (F65 - designOutdoor) * 0.77 * designRequirement;
    }

    /**
     * Heating load line of appendix M1, <code>BL = (Tzl - T)/(Tzl - Tod) C QA</code> in &deg;F, not
     * below 0.
     *
     * @param temperature outdoor temperature, K, in [200, 350]
     * @param zeroLoad zero-load temperature Tzl, K; 55 &deg;F for region IV, from memory
     * @param designOutdoor outdoor design temperature Tod, K, below the zero-load temperature; 5
     *     &deg;F in region IV
     * @param slopeFactor factor C; 1.15 for single and two stages, from memory
     * @param coolingCapacity cooling capacity at 95 &deg;F QA, W, above 0
     * @return load, W
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double heatingLoadM1(
            double temperature,
            double zeroLoad,
            double designOutdoor,
            double slopeFactor,
            double coolingCapacity) {
        Range.require("outdoor temperature", temperature, 200, 350, "K");
        Range.require("zero-load temperature", zeroLoad, 250, F65, "K");
        Range.require("design outdoor temperature", designOutdoor, 200, zeroLoad - 1, "K");
        Range.require("load line factor C", slopeFactor, 0.1, 3, "1");
        Range.requireAbove("cooling capacity", coolingCapacity, 0, "W");
        return Math.max(
                0,
                (zeroLoad - temperature)
                        / (zeroLoad - designOutdoor)
                        * slopeFactor
                        * coolingCapacity);
    }

    /**
     * Heating capacity or power of a single-speed heat pump at an outdoor temperature: linear
     * through 17 and 47 &deg;F outside ]17, 45[ &deg;F, and through 17 and 35 &deg;F inside, where
     * frost and defrost cost.
     *
     * @param temperature outdoor temperature, K, in [200, 350]
     * @param at47 value at 47 &deg;F
     * @param at35 value at 35 &deg;F, defrost counted
     * @param at17 value at 17 &deg;F
     * @return value in the same unit
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double heatingLine(double temperature, double at47, double at35, double at17) {
        Range.require("outdoor temperature", temperature, 200, 350, "K");
        boolean frost = temperature > F17 && temperature < F45;
        return frost
                ? line(temperature, F17, at17, F35, at35)
                : line(temperature, F17, at17, F47, at47);
    }

    /**
     * HSPF of a single-speed heat pump by appendix M: load line of {@link #heatingLoadM}.
     *
     * @param capacity47 capacity at 47 &deg;F, W
     * @param power47 power at 47 &deg;F, W
     * @param capacity35 capacity at 35 &deg;F, W
     * @param power35 power at 35 &deg;F, W
     * @param capacity17 capacity at 17 &deg;F, W
     * @param power17 power at 17 &deg;F, W
     * @param degradation degradation coefficient, in [0, 1]
     * @param designRequirement design heating requirement, W, above 0
     * @param designOutdoor outdoor design temperature, K; 5 &deg;F in region IV
     * @param cutOut outdoor temperature at and below which the compressor is off, K
     * @param cutIn outdoor temperature above which it always may run, K, not below the cut-out
     * @param defrostCredit demand-defrost factor, in [1, 1.05]
     * @param bins heating bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double heatingM(
            double capacity47,
            double power47,
            double capacity35,
            double power35,
            double capacity17,
            double power17,
            double degradation,
            double designRequirement,
            double designOutdoor,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        double[] loads = new double[bins.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = Math.max(0, heatingLoadM(bins.kelvin(i), designOutdoor, designRequirement));
        }
        return heating(
                capacity47,
                power47,
                capacity35,
                power35,
                capacity17,
                power17,
                degradation,
                loads,
                cutOut,
                cutIn,
                defrostCredit,
                bins);
    }

    /**
     * HSPF2 of a single-speed heat pump by appendix M1: load line of {@link #heatingLoadM1}.
     *
     * @param capacity47 capacity at 47 &deg;F, W
     * @param power47 power at 47 &deg;F, W
     * @param capacity35 capacity at 35 &deg;F, W
     * @param power35 power at 35 &deg;F, W
     * @param capacity17 capacity at 17 &deg;F, W
     * @param power17 power at 17 &deg;F, W
     * @param degradation degradation coefficient, in [0, 1]
     * @param coolingCapacity cooling capacity at 95 &deg;F, W, above 0
     * @param slopeFactor factor C of the load line
     * @param zeroLoad zero-load temperature, K
     * @param designOutdoor outdoor design temperature, K
     * @param cutOut outdoor temperature at and below which the compressor is off, K
     * @param cutIn outdoor temperature above which it always may run, K, not below the cut-out
     * @param defrostCredit demand-defrost factor, in [1, 1.05]
     * @param bins heating bins, without those above the zero-load temperature
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN or out of range
     */
    public static double heatingM1(
            double capacity47,
            double power47,
            double capacity35,
            double power35,
            double capacity17,
            double power17,
            double degradation,
            double coolingCapacity,
            double slopeFactor,
            double zeroLoad,
            double designOutdoor,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        double[] loads = new double[bins.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] =
                    heatingLoadM1(
                            bins.kelvin(i), zeroLoad, designOutdoor, slopeFactor, coolingCapacity);
        }
        return heating(
                capacity47,
                power47,
                capacity35,
                power35,
                capacity17,
                power17,
                degradation,
                loads,
                cutOut,
                cutIn,
                defrostCredit,
                bins);
    }

    /**
     * Seasonal heating ratio of a two-stage heat pump. At each bin the low stage cycles when it
     * meets the load; else both alternate; when the low stage is locked out the high stage cycles;
     * the high stage runs without pause and resistance heat makes up the rest when it cannot meet
     * the load.
     *
     * <p>High stage as {@link #heatingLine}. Low stage: through 47 and 62 &deg;F from 40 &deg;F up,
     * through 17 and 35 &deg;F from 17 to 40 &deg;F, through 17 and 47 &deg;F below. From memory of
     * appendix M section 4.2.3; there is no reference case for it.
     *
     * @param high capacity and power of the high stage in W: Q47, P47, Q35, P35, Q17, P17
     * @param low capacity and power of the low stage in W: Q62, P62, Q47, P47, Q35, P35, Q17, P17
     * @param lowDegradation degradation coefficient of the low stage, in [0, 1]
     * @param highDegradation degradation coefficient of the high stage, in [0, 1]
     * @param lowLockOut outdoor temperature at and below which the low stage is locked out, K;
     *     negative infinity if never
     * @param loads load of each bin, W, from {@link #heatingLoadM} or {@link #heatingLoadM1}, not
     *     negative
     * @param cutOut outdoor temperature at and below which the compressor is off, K
     * @param cutIn outdoor temperature above which it always may run, K, not below the cut-out
     * @param defrostCredit demand-defrost factor, in [1, 1.05]
     * @param bins heating bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN, out of range or of the wrong length,
     *     or capacity or power is not above 0 at a bin
     */
    public static double heatingTwoStage(
            double[] high,
            double[] low,
            double lowDegradation,
            double highDegradation,
            double lowLockOut,
            double[] loads,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        checkStaged(high, low, 8, loads, cutOut, cutIn, defrostCredit, bins);
        Range.require("degradation coefficient of the low stage", lowDegradation, 0, 1, "1");
        Range.require("degradation coefficient of the high stage", highDegradation, 0, 1, "1");
        if (Double.isNaN(lowLockOut)) {
            throw new IllegalArgumentException("lock-out temperature is NaN K");
        }
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double n = bins.fraction(i);
            double load = loads[i];
            double q1 = lowHeatingLine(t, low, 0);
            double p1 = lowHeatingLine(t, low, 1);
            double q2 = heatingLine(t, high[0], high[2], high[4]);
            double p2 = heatingLine(t, high[1], high[3], high[5]);
            positiveAt(t, q2, p2);
            if (load < q2 && t > lowLockOut) {
                positiveAt(t, q1, p1);
            }
            double available = t <= cutOut ? 0 : t <= cutIn ? 0.5 : 1;
            double power;
            double pumped = load;
            if (load >= q2) {
                power = p2;
                pumped = q2;
            } else if (t <= lowLockOut) {
                power = p2 * PartLoad.runTimeFraction(highDegradation, load / q2);
            } else if (load <= q1) {
                power = p1 * PartLoad.runTimeFraction(lowDegradation, load / q1);
            } else {
                double x1 = (q2 - load) / (q2 - q1);
                power = x1 * p1 + (1 - x1) * p2;
            }
            heat += n * load;
            energy += n * (available * power + backup(load - available * pumped));
        }
        return heat / energy * defrostCredit;
    }

    private static double lowHeatingLine(double t, double[] low, int which) {
        double at62 = low[which];
        double at47 = low[2 + which];
        double at35 = low[4 + which];
        double at17 = low[6 + which];
        if (t >= F40) {
            return line(t, F47, at47, F62, at62);
        }
        return t >= F17 ? line(t, F17, at17, F35, at35) : line(t, F17, at17, F47, at47);
    }

    /**
     * Seasonal heating ratio of a variable-speed heat pump. Low speed through 47 and 62 &deg;F at
     * all temperatures, full speed as {@link #heatingLine}, intermediate speed through its 35
     * &deg;F test with a slope between the two; between low and full the efficiency is linear in
     * delivered heat through the intermediate speed (appendix M1 form). From memory of section
     * 4.2.4; there is no reference case for it.
     *
     * @param full capacity and power of full speed in W: Q47, P47, Q35, P35, Q17, P17
     * @param low capacity and power of low speed in W: Q62, P62, Q47, P47
     * @param intermediate35 capacity of intermediate speed at 35 &deg;F, W, between low and full
     *     there
     * @param intermediatePower35 power of intermediate speed at 35 &deg;F, W, above 0
     * @param degradation degradation coefficient of the low speed, in [0, 1]
     * @param loads load of each bin, W, from {@link #heatingLoadM} or {@link #heatingLoadM1}, not
     *     negative
     * @param cutOut outdoor temperature at and below which the compressor is off, K
     * @param cutIn outdoor temperature above which it always may run, K, not below the cut-out
     * @param defrostCredit demand-defrost factor, in [1, 1.05]
     * @param bins heating bins
     * @return seasonal ratio, W/W
     * @throws IllegalArgumentException if an argument is NaN, out of range or of the wrong length,
     *     or capacity or power is not above 0 at a bin
     */
    public static double heatingVariableSpeed(
            double[] full,
            double[] low,
            double intermediate35,
            double intermediatePower35,
            double degradation,
            double[] loads,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        checkStaged(full, low, 4, loads, cutOut, cutIn, defrostCredit, bins);
        Range.require("degradation coefficient", degradation, 0, 1, "1");
        positive("35 degF, intermediate speed", intermediate35, intermediatePower35);
        double low35 = line(F35, F47, low[2], F62, low[0]);
        if (!(intermediate35 > low35 && intermediate35 < full[2])) {
            throw new IllegalArgumentException(
                    "intermediate heating capacity at 35 degF is "
                            + intermediate35
                            + " W, but must lie in ]"
                            + low35
                            + ", "
                            + full[2]
                            + "[ W");
        }
        double capacitySlope =
                between(
                        intermediate35,
                        low35,
                        full[2],
                        (low[0] - low[2]) / (F62 - F47),
                        (full[2] - full[4]) / (F35 - F17));
        double powerSlope =
                between(
                        intermediatePower35,
                        line(F35, F47, low[3], F62, low[1]),
                        full[3],
                        (low[1] - low[3]) / (F62 - F47),
                        (full[3] - full[5]) / (F35 - F17));
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double n = bins.fraction(i);
            double load = loads[i];
            double q1 = line(t, F47, low[2], F62, low[0]);
            double p1 = line(t, F47, low[3], F62, low[1]);
            double q2 = heatingLine(t, full[0], full[2], full[4]);
            double p2 = heatingLine(t, full[1], full[3], full[5]);
            positiveAt(t, q2, p2);
            double available = t <= cutOut ? 0 : t <= cutIn ? 0.5 : 1;
            double power;
            double pumped = load;
            if (load >= q2) {
                power = p2;
                pumped = q2;
            } else if (load <= q1) {
                positiveAt(t, q1, p1);
                power = p1 * PartLoad.runTimeFraction(degradation, load / q1);
            } else {
                double qv = intermediate35 + capacitySlope * (t - F35);
                double pv = intermediatePower35 + powerSlope * (t - F35);
                positiveAt(t, qv, pv);
                if (load < qv) {
                    positiveAt(t, q1, p1);
                }
                double ratio =
                        load < qv
                                ? line(load, q1, q1 / p1, qv, qv / pv)
                                : line(load, qv, qv / pv, q2, q2 / p2);
                power = load / ratio;
            }
            heat += n * load;
            energy += n * (available * power + backup(load - available * pumped));
        }
        return heat / energy * defrostCredit;
    }

    private static double backup(double heat) {
        return heat * BTU_PER_WATT_HOUR / RATING_BTU_PER_WATT_HOUR;
    }

    private static void checkStaged(
            double[] high,
            double[] low,
            int lowLength,
            double[] loads,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        if (high.length != 6 || low.length != lowLength || loads.length != bins.size()) {
            throw new IllegalArgumentException(
                    "heating data have "
                            + high.length
                            + ", "
                            + low.length
                            + " and "
                            + loads.length
                            + " numbers, but need 6, "
                            + lowLength
                            + " and "
                            + bins.size());
        }
        for (double v : high) {
            Range.requireAbove("high-stage heating datum", v, 0, "W");
        }
        for (double v : low) {
            Range.requireAbove("low-stage heating datum", v, 0, "W");
        }
        for (double v : loads) {
            Range.require("heating load of a bin", v, 0, 1e7, "W");
        }
        Range.require("cut-out temperature", cutOut, 150, 330, "K");
        Range.require("cut-in temperature", cutIn, cutOut, 330, "K");
        Range.require("defrost credit", defrostCredit, 1, 1.05, "1");
    }

    private static double heating(
            double capacity47,
            double power47,
            double capacity35,
            double power35,
            double capacity17,
            double power17,
            double degradation,
            double[] loads,
            double cutOut,
            double cutIn,
            double defrostCredit,
            RatingBins bins) {
        positive("47 degF", capacity47, power47);
        positive("35 degF", capacity35, power35);
        positive("17 degF", capacity17, power17);
        Range.require("cut-out temperature", cutOut, 150, 330, "K");
        Range.require("cut-in temperature", cutIn, cutOut, 330, "K");
        Range.require("defrost credit", defrostCredit, 1, 1.05, "1");
        double heat = 0;
        double energy = 0;
        for (int i = 0; i < bins.size(); i++) {
            double t = bins.kelvin(i);
            double n = bins.fraction(i);
            double load = loads[i];
            double q = heatingLine(t, capacity47, capacity35, capacity17);
            double p = heatingLine(t, power47, power35, power17);
            positiveAt(t, q, p);
            double available = t <= cutOut ? 0 : t <= cutIn ? 0.5 : 1;
            if (q * BTU_PER_WATT_HOUR / (RATING_BTU_PER_WATT_HOUR * p) < 1) {
                available = 0;
            }
            double clf = Math.min(1, load / q);
            double pumped = clf * q * available;
            heat += n * load;
            energy +=
                    n
                            * (available * p * PartLoad.runTimeFraction(degradation, load / q)
                                    + backup(load - pumped));
        }
        return heat / energy * defrostCredit;
    }

    private static double line(double x, double x0, double y0, double x1, double y1) {
        return y0 + (x - x0) / (x1 - x0) * (y1 - y0);
    }

    /** Straight lines through tests may cross zero far from them. */
    private static void positiveAt(double t, double capacity, double power) {
        if (!(capacity > 0 && power > 0)) {
            positive("bin " + t + " K", capacity, power);
        }
    }

    private static void positive(String where, double capacity, double power) {
        Range.requireAbove("capacity at " + where, capacity, 0, "W");
        Range.requireAbove("power at " + where, power, 0, "W");
    }
}
