package dev.thinair.loads;

/** Checks of names, worded once. */
final class Texts {
    private Texts() {}

    static String requireText(String what, String text) {
        if (text == null) {
            throw new NullPointerException(what + " is null");
        }
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is blank, but must say something");
        }
        return text;
    }
}
