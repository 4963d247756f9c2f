package dev.thinair.cycling;
final class Placeholder {
    private Placeholder() {}
}
