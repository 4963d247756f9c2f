package dev.thinair.cycling;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** A remedy made of a function. */
record Change(
        String title,
        Remedy.Kind kind,
        Optional<String> caution,
        UnaryOperator<InstalledSystem> change)
        implements Remedy {

    @Override
    public InstalledSystem apply(InstalledSystem system) {
        return change.apply(system);
    }

    @Override
    public String toString() {
        return title;
    }
}
