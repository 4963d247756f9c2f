package dev.thinair.reference;

/** Rules for the standard atmosphere and what thin air does. */
final class AltitudeCases {
    private AltitudeCases() {}

    static void register(CaseEvaluator to) {}
}
