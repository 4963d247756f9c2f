package dev.thinair.loads.kernel;
final class Placeholder {
    private Placeholder() {}
}
