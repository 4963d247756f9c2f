package dev.thinair.loads;

final class Placeholder {
    private Placeholder() {}
}
