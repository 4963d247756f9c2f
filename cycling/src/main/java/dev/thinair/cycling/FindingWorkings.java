package dev.thinair.cycling;

import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Power;

/** Writes out how a finding follows from its numbers. */
final class FindingWorkings {

    static final String MASS_FLOW = "mass flow of dry air";
    static final String RATED = "rated capacity";
    static final String CARRIES = "tons the ducts carry";
    static final String INSTALLED = "tons installed";
    static final String CAPACITY = "capacity at the design hour";
    static final String LOAD = "load at the design hour";
    static final String DELIVERED = "heat taken from the rooms";
    static final String STEADY = "heat without start-up lag";

    private static final String DEFINITION = "by definition";

    private FindingWorkings() {}

    static Working of(Finding f) {
        Working.Builder w = Working.titled(f.title());
        if (f instanceof Finding.LowAirflow) {
            double m = Si.kilogramsPerSecond(cast(f, MASS_FLOW), MASS_FLOW);
            double q = watts(f, RATED);
            w.given(
                            "m",
                            MASS_FLOW,
                            Units.kilogramsPerSecond(m),
                            "duct network at this site's density")
                    .given("Q", RATED, Units.watts(q))
                    .given(
                            "rho",
                            "density of standard air",
                            Units.kilogramsPerCubicMetre(CoolingUnit.STANDARD_DENSITY),
                            "0.075 lb/ft3, the trade's standard air")
                    .step(
                            "standard airflow per capacity",
                            "v = m / (rho Q)",
                            Units.cubicMetresPerSecondPerWatt(
                                    m / (CoolingUnit.STANDARD_DENSITY * q)),
                            DEFINITION);
        } else if (f instanceof Finding.DuctsTooSmall) {
            double carries = watts(f, CARRIES);
            double installed = watts(f, INSTALLED);
            w.given("C", CARRIES, Units.watts(carries), "free things done, low limit of airflow")
                    .given("I", INSTALLED, Units.watts(installed))
                    .step("shortage", "S = I - C", Units.watts(installed - carries), DEFINITION);
        } else if (f instanceof Finding.UnitTooLarge || f instanceof Finding.UnitTooSmall) {
            double capacity = watts(f, CAPACITY);
            double load = watts(f, LOAD);
            w.given("Q", CAPACITY, Units.watts(capacity), "balance of coil and compressor here")
                    .given("L", LOAD, Units.watts(load), "design load at the wanted setpoint")
                    .step(
                            "capacity over load",
                            "r = Q / L",
                            Units.ratio(capacity / load),
                            DEFINITION);
        } else if (f instanceof Finding.ShortCycling) {
            double delivered = Si.joules(cast(f, DELIVERED), DELIVERED);
            double steady = Si.joules(cast(f, STEADY), STEADY);
            w.given("D", DELIVERED, Units.joules(delivered), "run of the design day")
                    .given("S", STEADY, Units.joules(steady), "run of the design day")
                    .step(
                            "share lost to starts",
                            "p = 1 - D / S",
                            Units.ratio(1 - delivered / steady),
                            DEFINITION);
        } else {
            List<String> symbols = new ArrayList<>();
            int i = 1;
            for (Evidence e : f.evidence()) {
                String symbol = "e_" + i++;
                w.given(symbol, e.name(), e.value(), "run of this system");
                symbols.add(symbol);
            }
            w.given("limit", f.criterion().name(), f.criterion().value(), f.criterion().source())
                    .stepInWords(
                            "x",
                            f.evidence().get(0).name(),
                            "taken from the run and held against the limit",
                            List.of("e_1", "limit"),
                            f.evidence().get(0).value(),
                            f.criterion().source());
            return w.note(severity(f)).build();
        }
        return w.note(
                        String.format(
                                Locale.ROOT,
                                "held against: %s (%s)",
                                f.criterion().name(),
                                f.criterion().source()))
                .note(severity(f))
                .build();
    }

    private static String severity(Finding f) {
        return "severity "
                + f.severity().name().toLowerCase(Locale.ROOT)
                + ", confidence "
                + f.confidence().name().toLowerCase(Locale.ROOT);
    }

    private static double watts(Finding f, String name) {
        Quantity<Power> q = cast(f, name);
        return Si.watts(q, name);
    }

    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Quantity<Q> cast(Finding f, String name) {
        for (Evidence e : f.evidence()) {
            if (e.name().equals(name)) {
                return (Quantity<Q>) e.value();
            }
        }
        throw new IllegalStateException("finding \"" + f.title() + "\" lacks evidence: " + name);
    }
}
