package dev.thinair.reference;

/** Evaluates a file of check cases. */
public final class CaseFileCheck {
    private CaseFileCheck() {}

    public static void main(String[] args) {
        System.out.println("not yet");
    }
}
