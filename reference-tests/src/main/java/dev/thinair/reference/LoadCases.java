package dev.thinair.reference;

/** Rules for heat gain and loss. */
final class LoadCases {

    private LoadCases() {}

    static void register(CaseEvaluator to) {}
}
