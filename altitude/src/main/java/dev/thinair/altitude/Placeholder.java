package dev.thinair.altitude;

final class Placeholder {
    private Placeholder() {}
}
