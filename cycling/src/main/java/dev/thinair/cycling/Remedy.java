package dev.thinair.cycling;

import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Fitting;
import dev.thinair.ducts.Register;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * A change from system to system. What it does is found by running the changed system, never
 * guessed. Implementations must be immutable and deterministic. Those made here are; write your own
 * by implementing the interface.
 */
public interface Remedy {

    /** Sorts of change, in the order in which they should be thought of. */
    enum Kind {
        /** Nothing is changed. */
        NONE,
        /** Costs nothing or little: opening, cleaning, changing a filter. */
        FREE,
        /** Another setpoint or fan setting: free, but the customer gives something up. */
        SETTING,
        /** Work on ducts. */
        DUCTS,
        /** Other equipment. */
        EQUIPMENT
    }

    /**
     * What to do, in plain words.
     *
     * @return one line
     */
    String title();

    /**
     * What sort of change it is.
     *
     * @return the kind
     */
    Kind kind();

    /**
     * The changed system.
     *
     * @param system the system as it is
     * @return a changed copy
     * @throws IllegalArgumentException if the change cannot be made to this system
     */
    InstalledSystem apply(InstalledSystem system);

    /**
     * What to beware of while doing it.
     *
     * @return a caution, if the work can hurt someone
     */
    Optional<String> caution();

    /**
     * Leaves everything as it is: the first row of a comparison.
     *
     * @return the remedy that changes nothing
     */
    static Remedy nothing() {
        return new Change("as found", Kind.NONE, Optional.empty(), s -> s);
    }

    /**
     * Opens all registers and grilles.
     *
     * @return the remedy
     */
    static Remedy openRegisters() {
        return new Change(
                "open all registers and grilles",
                Kind.FREE,
                Optional.empty(),
                s -> s.withDucts(s.ducts().withRegistersOpened()));
    }

    /**
     * Puts a clean filter of the same kind in; a system without a filter stays as it is.
     *
     * @return the remedy
     */
    static Remedy cleanFilter() {
        return new Change(
                "put in a clean filter",
                Kind.FREE,
                Optional.empty(),
                s ->
                        s.ducts().filter().isPresent()
                                ? s.withDucts(
                                        s.ducts().withFilter(s.ducts().filter().get().cleaned()))
                                : s);
    }

    /**
     * Puts a clean filter of more face area in, in a wider rack.
     *
     * @param times face area over the present one, above 1
     * @return the remedy
     * @throws IllegalArgumentException if the number is out of the range that filters allow
     */
    static Remedy largerFilter(double times) {
        dev.thinair.units.Range.require("face area of the larger filter", times, 1, 10, "times");
        return new Change(
                String.format(Locale.ROOT, "fit a filter of %.1f times the face area", times),
                Kind.DUCTS,
                Optional.of(DUCT_CAUTION),
                s ->
                        s.ducts().filter().isPresent()
                                ? s.withDucts(
                                        s.ducts()
                                                .withFilter(
                                                        s.ducts()
                                                                .filter()
                                                                .get()
                                                                .cleaned()
                                                                .withFaceArea(times)))
                                : s);
    }

    /**
     * Washes the condenser.
     *
     * @return the remedy
     */
    static Remedy washCondenser() {
        return new Change(
                "wash the condenser",
                Kind.FREE,
                Optional.of(
                        "Switch the unit off at its disconnect and check that it is dead before opening"
                                + " the cabinet; water and electricity kill."),
                s -> s.withUnit(s.unit().withFaults(s.unit().faults().withCleanCondenser())));
    }

    /**
     * Has the refrigerant charge set right.
     *
     * @return the remedy
     */
    static Remedy correctCharge() {
        return new Change(
                "have the refrigerant charge set right, once the air is right",
                Kind.EQUIPMENT,
                Optional.of(UNIT_CAUTION),
                s -> s.withUnit(s.unit().withFaults(s.unit().faults().withRightCharge())));
    }

    /**
     * Adds supply runs from the supply plenum.
     *
     * @param count how many
     * @param diameter nominal round diameter
     * @param length length of each
     * @param room room served
     * @return the remedy
     * @throws IllegalArgumentException if something is missing
     */
    static Remedy addRuns(
            int count, Quantity<Length> diameter, Quantity<Length> length, String room) {
        Si.metres(diameter, "diameter of the added runs");
        Si.metres(length, "length of the added runs");
        if (room == null) {
            throw new IllegalArgumentException("room of the added runs must not be null");
        }
        return new Change(
                String.format(
                        Locale.ROOT,
                        "add %d supply run%s of %s to %s",
                        count,
                        count == 1 ? "" : "s",
                        QuantityText.format(diameter),
                        room),
                Kind.DUCTS,
                Optional.of(DUCT_CAUTION),
                s ->
                        s.withDucts(
                                s.ducts()
                                        .withAddedRuns(
                                                count,
                                                diameter,
                                                length,
                                                DuctSystem.SUPPLY_PLENUM,
                                                room)));
    }

    /**
     * Adds a return of round duct with a grille of twice its area to the return plenum.
     *
     * @param diameter nominal round diameter
     * @param length length
     * @param room room that it draws from
     * @return the remedy
     * @throws IllegalArgumentException if something is missing
     */
    static Remedy addReturn(Quantity<Length> diameter, Quantity<Length> length, String room) {
        double d = Si.metres(diameter, "diameter of the added return");
        Si.metres(length, "length of the added return");
        if (room == null) {
            throw new IllegalArgumentException("room of the added return must not be null");
        }
        double side = Math.sqrt(2 * 0.25 * Math.PI * d * d);
        return new Change(
                String.format(
                        Locale.ROOT,
                        "add a return of %s from %s",
                        QuantityText.format(diameter),
                        room),
                Kind.DUCTS,
                Optional.of(DUCT_CAUTION),
                s -> {
                    String name = "added return";
                    for (int k = 2; s.ducts().runNames().contains(name); k++) {
                        name = "added return " + k;
                    }
                    Duct duct =
                            Duct.of(DuctShape.round(diameter), length, DuctMaterial.GALVANIZED)
                                    .withFitting(
                                            Fitting.ofCoefficient(
                                                    "two elbows and entry",
                                                    0.9,
                                                    Criterion.COMMON_PRACTICE));
                    return s.withDucts(
                            s.ducts()
                                    .withReturnAdded(
                                            name,
                                            room,
                                            DuctSystem.RETURN_PLENUM,
                                            duct,
                                            Register.of(Units.metres(side), Units.metres(side))));
                });
    }

    /**
     * Seals the duct leaks.
     *
     * @return the remedy
     */
    static Remedy sealDucts() {
        return new Change(
                "seal the duct leaks",
                Kind.DUCTS,
                Optional.of(DUCT_CAUTION),
                s -> s.withDucts(s.ducts().withoutLeaks()));
    }

    /**
     * Another unit on the same ducts.
     *
     * @param unit the other unit
     * @return the remedy
     * @throws IllegalArgumentException if it is missing
     */
    static Remedy otherUnit(CoolingUnit unit) {
        if (unit == null) {
            throw new IllegalArgumentException("the other unit must not be null");
        }
        String kind;
        switch (unit.staging()) {
            case SINGLE:
                kind = "single-stage";
                break;
            case TWO_STAGE:
                kind = "two-stage";
                break;
            default:
                kind = "variable-speed";
        }
        return new Change(
                String.format(Locale.ROOT, "fit a %s unit of %.1f tons", kind, unit.nominalTons()),
                Kind.EQUIPMENT,
                Optional.of(UNIT_CAUTION),
                s -> s.withUnit(unit));
    }

    /**
     * Another setpoint.
     *
     * @param setpoint what the customer is asked to accept, 5 to 40 &deg;C
     * @return the remedy
     * @throws IllegalArgumentException if it is missing
     */
    static Remedy otherSetpoint(Quantity<Temperature> setpoint) {
        double t = Si.kelvins(setpoint, "other setpoint");
        return new Change(
                String.format(
                        Locale.ROOT,
                        "set the thermostat to %.0f degF (%.1f degC)",
                        t * 1.8 - 459.67,
                        t - 273.15),
                Kind.SETTING,
                Optional.empty(),
                s ->
                        s.withThermostat(s.thermostat().withSetpoint(setpoint))
                                .withWantedSetpoint(setpoint));
    }

    /**
     * Fan on automatic instead of continuous.
     *
     * @return the remedy
     */
    static Remedy automaticFan() {
        return new Change(
                "set the fan to automatic",
                Kind.SETTING,
                Optional.empty(),
                s -> s.withThermostat(s.thermostat().withFanMode(FanMode.AUTOMATIC)));
    }

    /**
     * Several remedies, one after the other; of the kind of the heaviest.
     *
     * @param parts at least one
     * @return the remedy
     * @throws IllegalArgumentException if there is none
     */
    static Remedy combine(Remedy... parts) {
        if (parts == null || parts.length == 0) {
            throw new IllegalArgumentException("a combined remedy needs at least one part");
        }
        List<Remedy> list = List.of(parts);
        StringJoiner title = new StringJoiner("; ");
        StringJoiner caution = new StringJoiner(" ");
        Kind kind = Kind.NONE;
        for (Remedy r : list) {
            title.add(r.title());
            if (r.caution().isPresent() && !caution.toString().contains(r.caution().get())) {
                caution.add(r.caution().get());
            }
            if (r.kind().compareTo(kind) > 0) {
                kind = r.kind();
            }
        }
        String words = caution.toString();
        return new Change(
                title.toString(),
                kind,
                words.isEmpty() ? Optional.empty() : Optional.of(words),
                s -> {
                    InstalledSystem changed = s;
                    for (Remedy r : list) {
                        changed = r.apply(changed);
                    }
                    return changed;
                });
    }

    /** Caution for work on ducts. */
    String DUCT_CAUTION =
            "Cutting joists, studs or fire-rated floors and walls needs a licensed contractor and local"
                    + " code. After any change of the air side check that every fuel-burning appliance"
                    + " still drafts.";

    /** Caution for work on the unit. */
    String UNIT_CAUTION =
            "Refrigerant and supply wiring are work for licensed people; follow the maker's instructions"
                    + " and local code.";
}
