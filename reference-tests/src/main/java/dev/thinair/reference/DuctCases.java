package dev.thinair.reference;

/** Rules for ducts, blowers and networks. */
final class DuctCases {

    private DuctCases() {}

    static void register(CaseEvaluator to) {}
}
