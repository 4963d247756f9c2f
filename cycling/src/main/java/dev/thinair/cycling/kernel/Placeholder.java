package dev.thinair.cycling.kernel;
final class Placeholder {
    private Placeholder() {}
}
