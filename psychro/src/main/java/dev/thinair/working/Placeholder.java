package dev.thinair.working;

final class Placeholder {
    private Placeholder() {}
}
