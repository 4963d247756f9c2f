package dev.thinair.psychro;

final class Placeholder {
    private Placeholder() {}
}
