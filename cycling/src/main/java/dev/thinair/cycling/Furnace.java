package dev.thinair.cycling;

import dev.thinair.altitude.kernel.BurnerDerating;
import dev.thinair.cycling.kernel.FurnaceModel;
import dev.thinair.psychro.MoistAir;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.MassFlow;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;

/**
 * A gas furnace with its input at elevation.
 *
 * <p><b>Caution.</b> A burner fed more gas than its air can burn makes carbon monoxide, which
 * kills. The maker's instructions and the local code come before any rule here; setting the input
 * is work for a licensed gas technician with a combustion analyser. Immutable.
 */
public final class Furnace {

    /** The caution that goes with every change of input. */
    public static final String CAUTION =
            "Gas input at elevation: maker's instructions and local code first; a licensed gas"
                    + " technician sets it with a combustion analyser. Wrong input can make carbon"
                    + " monoxide.";

    private final String name;
    private final double ratedInput;
    private final double efficiency;
    private final double factor;
    private final String basis;

    private Furnace(
            String name, double ratedInput, double efficiency, double factor, String basis) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("furnace name is missing");
        }
        Range.require("rated furnace input", ratedInput, 1000, 200_000, "W");
        FurnaceModel.output(ratedInput, factor, efficiency);
        this.name = name;
        this.ratedInput = ratedInput;
        this.efficiency = efficiency;
        this.factor = factor;
        this.basis = basis;
    }

    /**
     * A furnace at its rated input.
     *
     * @param name free text
     * @param ratedInput gas input on the rating plate, 1 to 200 kW
     * @param efficiency steady efficiency, in [0.3, 1]
     * @return the furnace
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public static Furnace of(String name, Quantity<Power> ratedInput, double efficiency) {
        return new Furnace(
                name, Si.watts(ratedInput, "rated furnace input"), efficiency, 1, "as rated");
    }

    /**
     * The same furnace with its input by a rule.
     *
     * @param elevation elevation of the site, -500 to 6000 m
     * @param rule the reading of the rule
     * @return the changed furnace
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public Furnace at(Quantity<Length> elevation, InputRule rule) {
        if (rule == null) {
            throw new IllegalArgumentException("input rule is missing");
        }
        double z = Si.metres(elevation, "elevation");
        double f =
                switch (rule) {
                    case AS_RATED -> 1;
                    case FROM_SEA_LEVEL -> BurnerDerating.fourPercentFromSeaLevel(z);
                    case FROM_TWO_THOUSAND_FEET -> BurnerDerating.fourPercentFromTwoThousandFeet(z);
                };
        String text =
                switch (rule) {
                    case AS_RATED -> "as rated";
                    case FROM_SEA_LEVEL -> "4 percent per 1000 ft from sea level";
                    case FROM_TWO_THOUSAND_FEET -> "4 percent per 1000 ft from 2000 ft";
                };
        return new Furnace(name, ratedInput, efficiency, f, text);
    }

    /**
     * The same furnace with the maker's factor for the site, which comes before any rule.
     *
     * @param inputFactor permitted over rated input, in [0.3, 1]
     * @return the changed furnace
     * @throws IllegalArgumentException if the factor is out of range
     */
    public Furnace withMakersFactor(double inputFactor) {
        return new Furnace(name, ratedInput, efficiency, inputFactor, "maker's instructions");
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
     * Permitted over rated input.
     *
     * @return factor
     */
    public double inputFactor() {
        return factor;
    }

    /**
     * What the factor rests on.
     *
     * @return rule or maker's instructions
     */
    public String inputBasis() {
        return basis;
    }

    /**
     * Gas input at the site.
     *
     * @return power
     */
    public Quantity<Power> input() {
        return Units.watts(FurnaceModel.output(ratedInput, factor, 1));
    }

    /**
     * Heat output at the site.
     *
     * @return power
     */
    public Quantity<Power> output() {
        return Units.watts(FurnaceModel.output(ratedInput, factor, efficiency));
    }

    /**
     * Temperature rise of the air.
     *
     * @param air air entering the furnace
     * @param dryAirMassFlow dry-air mass flow
     * @return rise; hold it against the rating plate
     * @throws IllegalArgumentException if something is missing or out of range
     */
    public Quantity<TemperatureDifference> temperatureRise(
            MoistAir air, Quantity<MassFlow> dryAirMassFlow) {
        if (air == null) {
            throw new IllegalArgumentException("entering air is missing");
        }
        return Units.kelvinDifference(
                FurnaceModel.temperatureRise(
                        FurnaceModel.output(ratedInput, factor, efficiency),
                        Si.kilogramsPerSecond(dryAirMassFlow, "dry-air mass flow"),
                        IdealMoistAir.specificHeat(air.humidityRatioNumber())));
    }

    /**
     * For shells.
     *
     * @return name, input and output at the site, and what they rest on
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s: input %.0f W, output %.0f W (%s)",
                name,
                ratedInput * factor,
                ratedInput * factor * efficiency,
                basis);
    }
}
