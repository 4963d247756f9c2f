package dev.thinair.altitude;

import dev.thinair.altitude.kernel.BurnerDerating;
import dev.thinair.altitude.kernel.DuctDerating;
import dev.thinair.altitude.kernel.ExchangerDerating;
import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;

/**
 * What thin air does to one piece of equipment, as the answer to one named question: the
 * <em>volume</em>, the <em>mass</em> and the <em>heat</em> it handles over what it handles at sea
 * level. The trade mixes the three up; here a customer can be shown which statement is true.
 *
 * <p>Ducts at 7000 ft, for example: with the same blower they carry the same volume and 22.8
 * percent less mass and heat; at the same pressure drop 13.8 percent <em>more</em> volume and 12.2
 * percent less mass.
 *
 * <p>Each factory states its assumption. Heat is at the same temperature difference unless the
 * question says otherwise. Pass the density ratio at constant temperature for indoor air.
 * Immutable.
 */
public final class Derating {

    /** The question asked; its assumption is part of the answer. */
    public enum Question {
        /** Ducts at the same pressure drop, losses proportional to density x velocity squared. */
        DUCTS_AT_SAME_PRESSURE_DROP(
                "ducts, same pressure drop",
                "Same ducts and the same pressure drop; losses proportional to density times velocity"
                        + " squared."),
        /** Ducts with the same blower at the same speed. */
        DUCTS_WITH_SAME_BLOWER_AND_SPEED(
                "ducts, same blower at the same speed",
                "Same ducts, same blower at the same speed; fan pressure and duct losses both fall with"
                        + " density."),
        /** The same with a share of the pressure drop that does not fall with density. */
        DUCTS_WITH_SAME_BLOWER_AND_A_VISCOUS_FILTER(
                "ducts, same blower at the same speed, loaded filter",
                "Same ducts, same blower at the same speed; a share of the pressure drop is viscous and"
                        + " does not fall with density."),
        /** Ducts at the same velocity. */
        DUCTS_AT_SAME_VELOCITY(
                "ducts, same velocity", "Same ducts and the same air velocity in them."),
        /** Airflow that carries the same heat. */
        AIRFLOW_FOR_SAME_HEAT(
                "airflow for the same heat",
                "Actual airflow that carries the same mass, and so the same heat at the same"
                        + " temperature difference."),
        /** Blower at the same speed. */
        BLOWER_AT_SAME_SPEED(
                "blower, same speed",
                "Same blower at the same speed on the same system: fan laws."),
        /** Blower sped up to the same pressure. */
        BLOWER_AT_SAME_PRESSURE(
                "blower, sped up to the same pressure",
                "Same blower on the same system, sped up until its pressure is that of sea level: fan"
                        + " laws."),
        /** Blower sped up to the same mass flow. */
        BLOWER_AT_SAME_MASS(
                "blower, sped up to the same mass flow",
                "Same blower on the same system, sped up until its mass flow is that of sea level: fan"
                        + " laws. A motor may meet its limit first."),
        /** Cooling coil at the same volume flow. */
        COIL_AT_SAME_VOLUME(
                "cooling coil, same airflow by volume",
                "Same volume through the coil; sensible heat at an unchanged surface temperature. The"
                        + " refrigerant side answers with a colder coil, so the total falls less."),
        /** Cooling coil at the same mass flow. */
        COIL_AT_SAME_MASS(
                "cooling coil, same airflow by mass",
                "Same mass through the coil: same Reynolds number, same heat; the face velocity rises,"
                        + " and with it the danger of blowing condensate off the fins."),
        /** Air-cooled condenser, same fan. */
        CONDENSER_WITH_SAME_FAN(
                "air-cooled condenser, same fan",
                "Same condenser fan at the same speed; heat rejected at an unchanged difference between"
                        + " condensing and outdoor temperature."),
        /** Gas burner under a rule. */
        BURNER("gas burner", "Gas input by the named rule; combustion air at the same excess air.");

        private final String title;
        private final String assumption;

        Question(String title, String assumption) {
            this.title = title;
            this.assumption = assumption;
        }

        /**
         * The question in a few words.
         *
         * @return a phrase for reports
         */
        public String title() {
            return title;
        }

        /**
         * What is taken for granted.
         *
         * @return a sentence for reports
         */
        public String assumption() {
            return assumption;
        }
    }

    private static final String DARCY = "Darcy's equation with a constant loss coefficient";
    private static final String FAN_LAWS = "fan laws, AMCA Publication 201 (from memory)";
    private static final String EFFECTIVENESS =
            "effectiveness-NTU method, capacity-rate ratio zero";
    private static final String CONTINUITY = "continuity: mass = density x volume";
    private static final String SAME_DIFFERENCE = "heat = mass x specific heat x difference";

    private static final List<String> BURNER_CAUTIONS =
            List.of(
                    "The appliance maker's instructions and the local code come before this rule.",
                    "A burner set too high for its air makes carbon monoxide, which kills: input is set"
                            + " by a licensed gas technician with a combustion analyser, and carbon"
                            + " monoxide alarms belong in every house with a burner.",
                    "Gas sold at elevation may already be derated in heating value; ask the gas"
                            + " utility before derating twice.");

    private static final List<String> SPEED_CAUTIONS =
            List.of(
                    "Speeding up a blower loads its motor: stay within the motor's nameplate current and"
                            + " the maker's speed limit.",
                    "Work inside the air handler is electrical work with moving parts: disconnect the"
                            + " power first, and leave it to a licensed technician where the local"
                            + " code says so.");

    private final Question question;
    private final double densityRatio;
    private final double volume;
    private final double mass;
    private final double heat;
    private final double pressure;
    private final double power;
    private final double difference;
    private final List<String> cautions;
    private final Consumer<Working.Builder> steps;

    private Derating(
            Question question,
            double densityRatio,
            double volume,
            double mass,
            double heat,
            double pressure,
            double power,
            double difference,
            List<String> cautions,
            Consumer<Working.Builder> steps) {
        this.question = question;
        this.densityRatio = densityRatio;
        this.volume = volume;
        this.mass = mass;
        this.heat = heat;
        this.pressure = pressure;
        this.power = power;
        this.difference = difference;
        this.cautions = cautions;
        this.steps = steps;
    }

    private static Derating airflow(
            Question question, double r, double volume, Consumer<Working.Builder> first) {
        double mass = DuctDerating.mass(volume, r);
        return new Derating(
                question,
                r,
                volume,
                mass,
                mass,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                List.of(),
                builder -> {
                    first.accept(builder);
                    massAndHeat(builder, mass);
                });
    }

    private static void massAndHeat(Working.Builder builder, double mass) {
        builder.step("mass flow ratio", "m = r x", Units.ratio(mass), CONTINUITY)
                .step("heat ratio", "q = m", Units.ratio(mass), SAME_DIFFERENCE);
    }

    /**
     * Ducts at the same pressure drop: volume <var>r</var><sup>-1/2</sup>, mass and heat
     * <var>r</var> <sup>1/2</sup> (rough limit; friction at house flows gives a little less of
     * both).
     *
     * @param ratio density ratio, site over sea level
     * @return the answer
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating ductsAtSamePressureDrop(DensityRatio ratio) {
        double r = ratio.number();
        double x = DuctDerating.volumeAtSamePressureDrop(r);
        return airflow(
                Question.DUCTS_AT_SAME_PRESSURE_DROP,
                r,
                x,
                b -> b.step("volume ratio", "x = 1 / sqrt(r)", Units.ratio(x), DARCY));
    }

    /**
     * Ducts with the same blower at the same speed: volume unchanged, mass and heat <var>r</var>.
     *
     * @param ratio density ratio, site over sea level
     * @return the answer
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating ductsWithSameBlowerAndSpeed(DensityRatio ratio) {
        double r = ratio.number();
        double x = DuctDerating.volumeWithSameBlowerAndSpeed(r);
        return airflow(
                Question.DUCTS_WITH_SAME_BLOWER_AND_SPEED,
                r,
                x,
                b -> b.step("volume ratio", "x = 1", Units.ratio(x), FAN_LAWS));
    }

    /**
     * The same, with a share of the pressure drop that does not fall with density, as in a loaded
     * filter: volume a few percent less.
     *
     * @param ratio density ratio, site over sea level
     * @param viscousShare share of the sea-level pressure drop that is viscous, in [0, 1]
     * @param curveSteepness b Q2 over the pressure at the sea-level operating point of a blower
     *     curve a - b Q2: 0 for a flat curve, large for one that holds its volume; in [0, 100]
     * @return the answer
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Derating ductsWithSameBlowerAndAViscousFilter(
            DensityRatio ratio,
            Quantity<Dimensionless> viscousShare,
            Quantity<Dimensionless> curveSteepness) {
        double r = ratio.number();
        double s = Si.ratio(viscousShare, "viscous share of the pressure drop");
        double k = Si.ratio(curveSteepness, "steepness of the blower curve");
        double x = DuctDerating.volumeWithSameBlowerAndSpeed(r, s, k);
        return airflow(
                Question.DUCTS_WITH_SAME_BLOWER_AND_A_VISCOUS_FILTER,
                r,
                x,
                b ->
                        b.given("s", "viscous share of the pressure drop", Units.ratio(s))
                                .given("k", "steepness of the blower curve", Units.ratio(k))
                                .step(
                                        "volume ratio",
                                        "x = 2 r (1 + k) / (s + sqrt(s^2 + 4 r^2 (1 + k) (1 + k -"
                                                + " s)))",
                                        Units.ratio(x),
                                        "root of r (1 + k - k x2) = r (1 - s) x2 + s x: fan law,"
                                                + " Darcy, viscous filter"));
    }

    /**
     * Ducts at the same velocity: volume unchanged, mass and heat <var>r</var>.
     *
     * @param ratio density ratio, site over sea level
     * @return the answer
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating ductsAtSameVelocity(DensityRatio ratio) {
        double r = ratio.number();
        double x = DuctDerating.volumeAtSameVelocity(r);
        return airflow(
                Question.DUCTS_AT_SAME_VELOCITY,
                r,
                x,
                b -> b.step("volume ratio", "x = 1", Units.ratio(x), "by definition"));
    }

    /**
     * The airflow that carries the same heat: volume 1/<var>r</var>, mass and heat unchanged.
     *
     * @param ratio density ratio, site over sea level
     * @return the answer
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating airflowForSameHeat(DensityRatio ratio) {
        double r = ratio.number();
        double x = DuctDerating.volumeForSameHeat(r);
        return airflow(
                Question.AIRFLOW_FOR_SAME_HEAT,
                r,
                x,
                b -> b.step("volume ratio", "x = 1 / r", Units.ratio(x), CONTINUITY));
    }

    /**
     * Blower at the same speed: volume unchanged; mass, heat, pressure and shaft power
     * <var>r</var>.
     *
     * @param ratio density ratio, site over standard
     * @return the answer, with {@link #pressure} and {@link #power}
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating blowerAtSameSpeed(DensityRatio ratio) {
        double r = ratio.number();
        return blower(
                Question.BLOWER_AT_SAME_SPEED,
                r,
                DuctDerating.volumeWithSameBlowerAndSpeed(r),
                "x = 1",
                FanLaws.pressureAtDensity(1, r),
                "y = r",
                FanLaws.powerAtDensity(1, r),
                "z = r");
    }

    /**
     * Blower sped up to the same pressure: volume and power <var>r</var><sup>-1/2</sup>, mass and
     * heat <var>r</var><sup>1/2</sup>.
     *
     * @param ratio density ratio, site over standard
     * @return the answer, with {@link #pressure} and {@link #power}
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating blowerAtSamePressure(DensityRatio ratio) {
        double r = ratio.number();
        double x = FanLaws.ratioAtConstantPressure(r);
        return blower(
                Question.BLOWER_AT_SAME_PRESSURE,
                r,
                x,
                "x = 1 / sqrt(r)",
                1,
                "y = 1",
                x,
                "z = 1 / sqrt(r)");
    }

    /**
     * Blower sped up to the same mass flow: volume and pressure 1/<var>r</var>, mass and heat
     * unchanged, power 1/<var>r</var><sup>2</sup>.
     *
     * @param ratio density ratio, site over standard
     * @return the answer, with {@link #pressure} and {@link #power}
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating blowerAtSameMass(DensityRatio ratio) {
        double r = ratio.number();
        double x = FanLaws.ratioAtConstantMass(r);
        return blower(
                Question.BLOWER_AT_SAME_MASS,
                r,
                x,
                "x = 1 / r",
                x,
                "y = 1 / r",
                FanLaws.powerRatioAtConstantMass(r),
                "z = 1 / r^2");
    }

    private static Derating blower(
            Question question,
            double r,
            double volume,
            String volumeFormula,
            double pressure,
            String pressureFormula,
            double power,
            String powerFormula) {
        double mass = DuctDerating.mass(volume, r);
        return new Derating(
                question,
                r,
                volume,
                mass,
                mass,
                pressure,
                power,
                Double.NaN,
                question == Question.BLOWER_AT_SAME_SPEED ? List.of() : SPEED_CAUTIONS,
                b -> {
                    b.step("volume ratio", volumeFormula, Units.ratio(volume), FAN_LAWS)
                            .step(
                                    "pressure ratio",
                                    pressureFormula,
                                    Units.ratio(pressure),
                                    FAN_LAWS)
                            .step("shaft power ratio", powerFormula, Units.ratio(power), FAN_LAWS);
                    massAndHeat(b, mass);
                });
    }

    /**
     * Cooling coil at the same volume flow: mass <var>r</var>, sensible heat at an unchanged
     * surface temperature <var>r</var> <var>E</var>'/<var>E</var>.
     *
     * @param ratio density ratio, site over sea level
     * @param contactFactor one minus the coil's bypass factor at sea level, in (0, 1]
     * @param exponent of the air-side coefficient on mass velocity, in [0, 1]; about 0.6 for plain
     *     fins ({@link ExchangerDerating#PLAIN_FIN_EXPONENT})
     * @return the answer
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Derating coilAtSameVolume(
            DensityRatio ratio,
            Quantity<Dimensionless> contactFactor,
            Quantity<Dimensionless> exponent) {
        return exchanger(
                Question.COIL_AT_SAME_VOLUME,
                ratio,
                Si.ratio(contactFactor, "contact factor"),
                Si.ratio(exponent, "exponent of the air-side coefficient"));
    }

    /**
     * Cooling coil at the same mass flow: heat unchanged, volume and face velocity 1/<var>r</var>.
     *
     * @param ratio density ratio, site over sea level
     * @return the answer
     * @throws NullPointerException if ratio is null
     * @throws IllegalArgumentException if the ratio is outside (0, 2]
     */
    public static Derating coilAtSameMass(DensityRatio ratio) {
        double r = ratio.number();
        double x = DuctDerating.volumeForSameHeat(r);
        double limit = ExchangerDerating.carryOverVelocity(r);
        return airflow(
                Question.COIL_AT_SAME_MASS,
                r,
                x,
                b ->
                        b.step(
                                        "volume and face velocity ratio",
                                        "x = 1 / r",
                                        Units.ratio(x),
                                        CONTINUITY)
                                .note(
                                        "Condensate is pulled off at a face velocity of "
                                                + QuantityText.number(limit, 4)
                                                + " times the sea-level limit (r to the power -1/2);"
                                                + " this asks for "
                                                + QuantityText.number(x, 4)
                                                + " times the velocity."));
    }

    /**
     * Air-cooled condenser with the same fan: volume unchanged, mass <var>r</var>, heat rejected at
     * an unchanged temperature difference <var>r</var> <var>E</var>'/<var>E</var>; for the same
     * heat the difference rises by the inverse ({@link #differenceForSameHeat}).
     *
     * @param ratio density ratio of <em>outdoor</em> air, site over sea level at the same
     *     temperature
     * @param contactFactor effectiveness of the condenser's air side at sea level, in (0, 1]
     * @param exponent of the air-side coefficient on mass velocity, in [0, 1]; about 0.6 for plain
     *     fins
     * @return the answer
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Derating condenserWithSameFan(
            DensityRatio ratio,
            Quantity<Dimensionless> contactFactor,
            Quantity<Dimensionless> exponent) {
        return exchanger(
                Question.CONDENSER_WITH_SAME_FAN,
                ratio,
                Si.ratio(contactFactor, "contact factor"),
                Si.ratio(exponent, "exponent of the air-side coefficient"));
    }

    private static Derating exchanger(
            Question question, DensityRatio ratio, double contact, double exponent) {
        double r = ratio.number();
        double x = DuctDerating.volumeWithSameBlowerAndSpeed(r);
        double mass = DuctDerating.mass(x, r);
        double there = ExchangerDerating.contactFactor(contact, mass, exponent);
        double heat = ExchangerDerating.heatAtSameSurface(contact, mass, exponent);
        return new Derating(
                question,
                r,
                x,
                mass,
                heat,
                Double.NaN,
                Double.NaN,
                ExchangerDerating.differenceForSameHeat(contact, mass, exponent),
                List.of(),
                b ->
                        b.given("E", "contact factor at sea level", Units.ratio(contact))
                                .given(
                                        "n",
                                        "exponent of the air-side coefficient",
                                        Units.ratio(exponent))
                                .step("volume ratio", "x = 1", Units.ratio(x), FAN_LAWS)
                                .step("mass flow ratio", "m = r x", Units.ratio(mass), CONTINUITY)
                                .step(
                                        "contact factor at the site",
                                        "F = 1 - (1 - E)^(m^(n - 1))",
                                        Units.ratio(there),
                                        EFFECTIVENESS)
                                .step(
                                        "heat ratio",
                                        "q = m F / E",
                                        Units.ratio(heat),
                                        EFFECTIVENESS));
    }

    /**
     * Gas burner: heat by the rule; combustion air in the same proportion by mass, so by volume the
     * rule over <var>r</var>. The cautions come with the answer ({@link #cautions}).
     *
     * @param elevation elevation of the appliance, in [-500, 6000] m
     * @param rule the maker's table first; else the code's rule in the reading that applies locally
     * @param ratio density ratio of the combustion air, site over sea level
     * @return the answer
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the elevation is out of range or the rule says nothing
     *     there
     */
    public static Derating burner(Quantity<Length> elevation, BurnerRule rule, DensityRatio ratio) {
        double z = Si.metres(elevation, "elevation");
        double heat = Si.ratio(rule.multiplier(elevation), "multiplier");
        double r = ratio.number();
        double volume = DuctDerating.volumeForSameHeat(r) * heat;
        return new Derating(
                Question.BURNER,
                r,
                volume,
                heat,
                heat,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                BURNER_CAUTIONS,
                b -> {
                    b.given("Z", "elevation", Units.metres(z));
                    input(b, rule, z, heat);
                    b.step("mass of combustion air", "m = k", Units.ratio(heat), "same excess air")
                            .step(
                                    "volume of combustion air",
                                    "x = m / r",
                                    Units.ratio(volume),
                                    CONTINUITY)
                            .step("heat ratio", "q = k", Units.ratio(heat), "heat = gas input");
                });
    }

    private static void input(Working.Builder b, BurnerRule rule, double z, double heat) {
        boolean high = z > BurnerDerating.THRESHOLD;
        if (rule instanceof BurnerRule.FourPercentFromSeaLevel && high) {
            b.step("input ratio", "k = 1 - 0.04 Z / 304.8", Units.ratio(heat), rule.source());
        } else if (rule instanceof BurnerRule.FourPercentFromTwoThousandFeet && high) {
            b.step(
                    "input ratio",
                    "k = 1 - 0.04 (Z - 609.6) / 304.8",
                    Units.ratio(heat),
                    rule.source());
        } else {
            b.stepInWords(
                    "k",
                    "input ratio",
                    rule.words(),
                    List.of("Z"),
                    Units.ratio(heat),
                    rule.source());
        }
    }

    /**
     * The question answered.
     *
     * @return the question, with its assumption
     */
    public Question question() {
        return question;
    }

    /**
     * The density ratio answered for.
     *
     * @return a ratio
     */
    public Quantity<Dimensionless> densityRatio() {
        return Units.ratio(densityRatio);
    }

    /**
     * Volume of air handled over that at sea level.
     *
     * @return a ratio
     */
    public Quantity<Dimensionless> volume() {
        return Units.ratio(volume);
    }

    /**
     * Mass of air handled over that at sea level.
     *
     * @return a ratio
     */
    public Quantity<Dimensionless> mass() {
        return Units.ratio(mass);
    }

    /**
     * Heat handled over that at sea level.
     *
     * @return a ratio
     */
    public Quantity<Dimensionless> heat() {
        return Units.ratio(heat);
    }

    /**
     * Pressure over that at sea level, where the question is about a blower.
     *
     * @return a ratio, or empty
     */
    public Optional<Quantity<Dimensionless>> pressure() {
        return optional(pressure);
    }

    /**
     * Shaft power over that at sea level, where the question is about a blower.
     *
     * @return a ratio, or empty
     */
    public Optional<Quantity<Dimensionless>> power() {
        return optional(power);
    }

    /**
     * Difference between surface and entering air over that at sea level that would restore the
     * heat, where the question is about a coil or condenser at the same volume.
     *
     * @return a ratio, or empty
     */
    public Optional<Quantity<Dimensionless>> differenceForSameHeat() {
        return optional(difference);
    }

    private static Optional<Quantity<Dimensionless>> optional(double ratio) {
        return Double.isNaN(ratio) ? Optional.empty() : Optional.of(Units.ratio(ratio));
    }

    /**
     * A sea-level heat flow (capacity, input) as it is at the site.
     *
     * @param seaLevel heat flow at sea level
     * @return heat flow at the site, in the same unit
     * @throws NullPointerException if seaLevel is null
     * @throws IllegalArgumentException if it is not finite
     */
    public Quantity<Power> heatOf(Quantity<Power> seaLevel) {
        Si.watts(seaLevel, "heat at sea level");
        return Units.quantity(seaLevel.getValue().doubleValue() * heat, seaLevel.getUnit());
    }

    /**
     * What can hurt, and who has to do the work.
     *
     * @return sentences for reports; empty where nothing is dangerous
     */
    public List<String> cautions() {
        return cautions;
    }

    /**
     * The steps behind the answer; the last is {@link #heat}.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder builder =
                Working.titled("Derating: " + question.title)
                        .given("r", "density ratio", Units.ratio(densityRatio));
        steps.accept(builder);
        builder.note(question.assumption);
        cautions.forEach(builder::note);
        return builder.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Derating that
                && question == that.question
                && numbers().equals(that.numbers());
    }

    @Override
    public int hashCode() {
        return Objects.hash(question, numbers());
    }

    private List<Double> numbers() {
        return List.of(densityRatio, volume, mass, heat, pressure, power, difference);
    }

    @Override
    public String toString() {
        List<String> parts = new ArrayList<>();
        parts.add("volume " + change(volume));
        parts.add("mass " + change(mass));
        parts.add("heat " + change(heat));
        percent(pressure).ifPresent(p -> parts.add("pressure " + change(p)));
        percent(power).ifPresent(p -> parts.add("power " + change(p)));
        return question.title
                + ": "
                + String.join(", ", parts)
                + " (density ratio "
                + QuantityText.number(densityRatio, 4)
                + ")";
    }

    private static OptionalDouble percent(double ratio) {
        return Double.isNaN(ratio) ? OptionalDouble.empty() : OptionalDouble.of(ratio);
    }

    private static String change(double ratio) {
        return String.format(Locale.ROOT, "%+.1f %%", 100.0 * (ratio - 1.0));
    }
}
