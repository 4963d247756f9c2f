package dev.thinair.loads;

/** Direction of the heat flow through a building element: films and air gaps depend on it. */
public enum HeatFlow {
    /** Through walls; also used up to 30 degrees from the horizontal (ISO 6946:2017, 6.8). */
    HORIZONTAL,
    /** Upward, as through a ceiling in winter. */
    UPWARD,
    /** Downward, as through a floor in winter or a ceiling in summer. */
    DOWNWARD
}
