package dev.thinair.cycling;

/**
 * How a burner's permitted input falls with elevation. The maker's instructions and the local code
 * come first.
 */
public enum InputRule {
    /** The rated input at any elevation, as some listed appliances are approved. */
    AS_RATED,
    /** Four percent per 1000 ft counted from sea level, above 2000 ft. */
    FROM_SEA_LEVEL,
    /** Four percent per 1000 ft counted from 2000 ft. */
    FROM_TWO_THOUSAND_FEET
}
