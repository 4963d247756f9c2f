package dev.thinair.examples.job;

/**
 * A job file that cannot be used. The message is one line: the place, what is wrong, what is
 * allowed.
 */
public final class JobFileException extends Exception {
    private static final long serialVersionUID = 1L;

    JobFileException(String line) {
        super(oneLine(line));
    }

    static JobFileException at(Place place, String wrong, String allowed) {
        return new JobFileException(place + ": " + wrong + "; " + allowed);
    }

    /** What a user wrote may hold line breaks or control characters; the message must not. */
    static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\s]+", " ").trim();
    }
}
