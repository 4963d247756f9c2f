package dev.thinair.cycling;

/** How a unit's compressor adapts to the load. */
public enum Staging {
    /** On or off. */
    SINGLE,
    /** A low and a high stage. */
    TWO_STAGE,
    /** Any displacement between the turndown limit and full. */
    VARIABLE
}
