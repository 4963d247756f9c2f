package dev.thinair.ducts;

import dev.thinair.psychro.MoistAir;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * What each register that is not fully open, and the dirt in the filter, cost a duct system: the
 * system is solved again with just that one thing put right. Immutable.
 */
public final class Effects {

    /**
     * Gain from one thing put right.
     *
     * @param what what was put right
     * @param total actual airflow of the whole system then
     * @param gain total airflow then over now, at least 1 but for rounding
     * @param run actual airflow of the run concerned then; of the whole system for the filter
     */
    public record Effect(
            String what, Quantity<VolumeFlow> total, double gain, Quantity<VolumeFlow> run) {

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%s: total airflow %+.2f %%", what, 100 * (gain - 1));
        }
    }

    private final Airflow now;
    private final Airflow allOpen;
    private final List<Effect> registers;
    private final Effect filter;

    private Effects(Airflow now, Airflow allOpen, List<Effect> registers, Effect filter) {
        this.now = now;
        this.allOpen = allOpen;
        this.registers = registers;
        this.filter = filter;
    }

    /**
     * Solves a system as it is and with each thing put right in turn.
     *
     * @param system the duct system
     * @param air state of the air in the ducts
     * @return the effects
     * @throws IllegalArgumentException if an argument is null
     * @throws IllegalStateException if the system has no operating point
     */
    public static Effects of(DuctSystem system, MoistAir air) {
        if (system == null) {
            throw new IllegalArgumentException("duct system is null");
        }
        Airflow now = system.solve(air);
        List<Effect> registers = new ArrayList<>();
        for (DuctSystem.Run r : system.runs()) {
            if (r.register().position() != Register.Position.OPEN) {
                Airflow then = system.withRegisterOpened(r.name()).solve(air);
                registers.add(
                        new Effect(
                                "open the register of " + r.name(),
                                then.actual(),
                                then.flow / now.flow,
                                then.run(r.name()).actual()));
            }
        }
        Effect filter = null;
        if (system.filter().isPresent() && system.filter().get().loading() > 1) {
            Airflow then = system.withFilter(system.filter().get().cleaned()).solve(air);
            filter =
                    new Effect(
                            "clean or replace the filter",
                            then.actual(),
                            then.flow / now.flow,
                            then.actual());
        }
        return new Effects(
                now, system.withRegistersOpened().solve(air), List.copyOf(registers), filter);
    }

    /**
     * Operating point as it is.
     *
     * @return airflow
     */
    public Airflow now() {
        return now;
    }

    /**
     * Operating point with all registers fully open.
     *
     * @return airflow
     */
    public Airflow allOpen() {
        return allOpen;
    }

    /**
     * Effect of opening each register that is not fully open.
     *
     * @return unmodifiable list, in the order of the runs
     */
    public List<Effect> registers() {
        return registers;
    }

    /**
     * Effect of a clean filter.
     *
     * @return effect, empty if there is no filter or it is clean
     */
    public Optional<Effect> filter() {
        return Optional.ofNullable(filter);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "all registers open: %+.2f %%", 100 * (allOpen.flow / now.flow - 1));
    }
}
