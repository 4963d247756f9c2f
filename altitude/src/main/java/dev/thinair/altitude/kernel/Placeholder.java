package dev.thinair.altitude.kernel;
final class Placeholder {
    private Placeholder() {}
}
