package dev.thinair.examples.job;

import java.util.function.Supplier;

/** What the builders of the library's models share. */
final class Model {
    private Model() {}

    /** Runs a builder; what it refuses becomes a fault of the file at that part. */
    static <T> T at(Part part, Supplier<T> build) throws JobFileException {
        try {
            return build.get();
        } catch (IllegalArgumentException e) {
            throw JobFileException.at(
                    part.place(), e.getMessage(), "see job-file.md for what is allowed here");
        }
    }
}
