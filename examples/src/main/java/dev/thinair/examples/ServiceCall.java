package dev.thinair.examples;

/** The main job: reads a job file, prints and draws the review. */
public final class ServiceCall {
    private ServiceCall() {}

    public static void main(String[] args) {
        System.out.println("not yet");
    }
}
