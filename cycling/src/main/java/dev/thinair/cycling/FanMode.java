package dev.thinair.cycling;

/** What the indoor fan does while the compressor is off. */
public enum FanMode {
    /** The fan stops with the compressor. */
    AUTOMATIC,
    /** The fan runs on, and the coil's water evaporates back into the house. */
    CONTINUOUS
}
