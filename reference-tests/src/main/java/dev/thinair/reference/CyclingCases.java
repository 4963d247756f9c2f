package dev.thinair.reference;

/** Rules for units, part load, seasons, thermostat events and bills. */
final class CyclingCases {

    private CyclingCases() {}

    static void register(CaseEvaluator to) {}
}
