package dev.thinair.ducts;

import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.List;
import javax.measure.quantity.Speed;

/** Published velocity limits for ducts and registers, and the advice that follows from them. */
final class VelocityLimits {

    /** One foot per minute, m/s. */
    private static final double FPM = 0.00508;

    private static final String TRUNK = "supply trunk, rigid, maximum";

    /** All duct limits are of one table, and recalled ones. */
    private static final String MANUAL_D = entry(TRUNK).source() + " (from memory)";

    private static final String ACOUSTICS =
            "upper register velocities for NC 25-30, published table of architectural acoustics, see"
                    + " NoiseLimits";

    static final double SUPPLY_TRUNK = limit(TRUNK);
    static final double SUPPLY_BRANCH = limit("supply branch, rigid, maximum");
    static final double SUPPLY_FLEXIBLE = limit("supply, flexible, maximum");
    static final double RETURN_TRUNK = limit("return trunk, maximum");
    static final double RETURN_BRANCH = limit("return branch, recommended");
    static final double SUPPLY_REGISTER = 425 * FPM;
    static final double RETURN_GRILLE = 510 * FPM;

    private VelocityLimits() {}

    private static DuctData.Entry entry(String item) {
        return DuctData.find(DuctData.Topic.VELOCITY_LIMIT, item);
    }

    private static double limit(String item) {
        return Si.metresPerSecond(entry(item).value().asType(Speed.class), item);
    }

    static void trunk(
            List<VelocityAdvice> into, String name, Duct duct, boolean supply, double velocity) {
        double limit =
                !supply
                        ? RETURN_TRUNK
                        : duct.material().isFlexible() ? SUPPLY_FLEXIBLE : SUPPLY_TRUNK;
        add(into, name, velocity, limit, supply ? "a supply trunk" : "a return trunk", MANUAL_D);
    }

    static void run(List<VelocityAdvice> into, DuctSystem.Run run, RunFlow flow) {
        boolean flexible = run.duct().material().isFlexible();
        double limit = !run.supply() ? RETURN_BRANCH : flexible ? SUPPLY_FLEXIBLE : SUPPLY_BRANCH;
        add(
                into,
                run.name(),
                flow.velocitySi(),
                limit,
                run.supply() ? "a supply branch" : "a return branch",
                MANUAL_D);
        add(
                into,
                (run.supply() ? "register of " : "grille of ") + run.name(),
                flow.registerVelocitySi(),
                run.supply() ? SUPPLY_REGISTER : RETURN_GRILLE,
                "quiet rooms",
                ACOUSTICS);
    }

    private static void add(
            List<VelocityAdvice> into,
            String where,
            double velocity,
            double limit,
            String reason,
            String source) {
        if (velocity > limit) {
            into.add(
                    new VelocityAdvice(
                            where,
                            Units.metresPerSecond(velocity),
                            Units.metresPerSecond(limit),
                            reason,
                            source));
        }
    }
}
