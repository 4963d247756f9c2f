package dev.thinair.examples.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The shipped job file as text, so that tests can spoil it. */
public final class DemoText {
    private DemoText() {}

    public static String read() {
        try (InputStream in =
                DemoText.class.getResourceAsStream("/dev/thinair/examples/larkspur-bench.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces the first occurrence, and insists that there is one. */
    public static String with(String text, String old, String fresh) {
        int at = text.indexOf(old);
        if (at < 0) {
            throw new IllegalArgumentException("the demo file does not hold: " + old);
        }
        return text.substring(0, at) + fresh + text.substring(at + old.length());
    }
}
