package dev.thinair.ducts.kernel;
final class Placeholder {
    private Placeholder() {}
}
