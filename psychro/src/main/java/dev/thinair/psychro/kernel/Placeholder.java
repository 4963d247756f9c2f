package dev.thinair.psychro.kernel;
final class Placeholder {
    private Placeholder() {}
}
