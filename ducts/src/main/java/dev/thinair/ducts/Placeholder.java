package dev.thinair.ducts;
final class Placeholder {
    private Placeholder() {}
}
