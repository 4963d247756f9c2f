package dev.thinair.cycling;

import dev.thinair.cycling.kernel.CoilFrost;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.cycling.kernel.UnitResponse;
import java.util.Arrays;
import java.util.function.Supplier;

/**
 * Keeps account of the ice on one coil through one run: what freezes on, what thaws, what air is
 * left, hour by hour. Mutable: one per run.
 */
final class IceBook {

    private final Supplier<IcedAirflow> ducts;
    private final UnitModel model;
    private final double bypassMass;
    private final double dryAirMassFlow;
    private final double filling;
    private final double idleConductance;
    private final boolean fanRunsOn;
    private IcedAirflow curve;
    private double mass;
    private double share = 1;
    private double watts = Double.NaN;
    private double elapsed;
    private double[] ice = new double[24];
    private double[] air = new double[24];

    IceBook(
            UnitModel model,
            double dryAirMassFlow,
            boolean fanRunsOn,
            double frostDensity,
            Supplier<IcedAirflow> ducts) {
        this.model = model;
        this.ducts = ducts;
        this.dryAirMassFlow = dryAirMassFlow;
        this.fanRunsOn = fanRunsOn;
        bypassMass = model.bypassMass();
        filling =
                CoilFrost.fillingMass(
                        CoilFrost.finnedArea(bypassMass, CoilFrost.FIN_COEFFICIENT),
                        CoilFrost.FIN_GAP,
                        frostDensity);
        idleConductance =
                CoilFrost.airConductance(CoilFrost.IDLE_SHARE * dryAirMassFlow, bypassMass);
        Arrays.fill(air, 1);
    }

    /** Share of the clear coil's airflow that is left now. */
    double share() {
        return share;
    }

    /** Blower's power now, W; NaN while the coil is clear. */
    double watts() {
        return watts;
    }

    void passed(double seconds, double[] state, double startUpFactor, double airTemperature) {
        double before = mass;
        if (state == null) {
            if (mass > 0) {
                double g =
                        fanRunsOn
                                ? CoilFrost.airConductance(share * dryAirMassFlow, bypassMass)
                                : idleConductance;
                mass = Math.max(0, mass - seconds * CoilFrost.thawRate(g, airTemperature));
            }
        } else if (state[UnitResponse.COIL] < CoilFrost.FREEZING) {
            double most = (1 - CoilFrost.LEAST_GAP) * filling;
            double frozen = seconds * startUpFactor * state[UnitResponse.CONDENSATE];
            mass = Math.max(mass, Math.min(most, mass + frozen));
        } else if (mass > 0) {
            double g = CoilFrost.surfaceConductance(bypassMass);
            mass = Math.max(0, mass - seconds * CoilFrost.thawRate(g, state[UnitResponse.COIL]));
        }
        if (mass != before) {
            if (mass == 0) {
                share = 1;
                watts = Double.NaN;
            } else {
                if (curve == null) {
                    curve = ducts.get();
                }
                double factor = CoilFrost.pressureFactor(mass, filling);
                share =
                        InstalledUnit.through(model, dryAirMassFlow, curve.share(factor))
                                / dryAirMassFlow;
                watts = curve.watts(factor);
            }
        }
        // The stretch belongs to the hour in which it ends; the engine ends one at each hour.
        elapsed += seconds;
        int hour = Math.max(0, (int) Math.ceil(elapsed / 3600 - 1e-9) - 1);
        if (hour >= ice.length) {
            int was = ice.length;
            ice = Arrays.copyOf(ice, 2 * was);
            air = Arrays.copyOf(air, 2 * was);
            Arrays.fill(air, was, 2 * was, 1);
        }
        ice[hour] = Math.max(ice[hour], mass);
        air[hour] = Math.min(air[hour], share);
    }

    /** Whether no ice ever formed. */
    boolean dry() {
        return curve == null;
    }

    /** Most ice in each hour, kg. */
    double[] ice(int hours) {
        return Arrays.copyOf(ice, hours);
    }

    /** Least share of the airflow in each hour. */
    double[] air(int hours) {
        double[] a = new double[hours];
        Arrays.fill(a, 1);
        System.arraycopy(air, 0, a, 0, Math.min(hours, air.length));
        return a;
    }
}
